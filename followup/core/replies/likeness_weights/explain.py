"""What speaks for and against `explain`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "explain"
BIAS = -162
WEIGHTS = """\
#abaj:-62 #aben:58 #aber:31 #abin:97 #able:-56 #abor:-53 #abou:-52 #abus:-47 #acei:-73 #acer:93 #acta:25 #actl:105
#addr:-33 #adio:-23 #ados:58 #afec:23 #agai:45 #agar:-30 #agua:154 #ague:-22 #ails:68 #ajar:58 #akes:26 #ales:63
#algo:62 #algu:-26 #alle:-76 #ally:86 #alta:59 #amab:-27 #anas:22 #ance:-52 #anda:44 #ando:-50 #ands:24 #anej:100
#aner:-25 #ange:67 #anol:22 #anta:119 #ante:28 #anto:53 #anua:56 #anyh:23 #anyw:58 #apag:-30 #apid:-60 #appe:114
#aqui:-42 #arag:-22 #arca:-64 #arda:-64 #arde:-36 #arge:-22 #argi:-34 #ario:22 #aron:56 #arou:-24 #arra:-36 #arzo:34
#asta:145 #asur:66 #ated:-44 #ater:-55 #atis:-82 #ator:75 #atte:-41 #auto:-26 #avor:31 #back:-39 #baja:-29 #bajo:-37
#befo:61 #belt:80 #betw:-70 #bien:-53 #bina:32 #blan:-23 #blem:76 #bles:-23 #blig:82 #blow:35 #boot:26 #bout:-56
#brak:32 #bran:-70 #brar:22 #brea:58 #brin:-68 #busi:-55 #cabi:97 #cada:32 #camb:34 #caro:-44 #ccio:-37 #ceit:-73
#cesa:37 #cesi:26 #cess:73 #chan:24 #char:-66 #cien:-23 #cita:59 #ckin:24 #cluy:65 #cobr:-28 #coge:-26 #come:73
#comi:40 #como:-90 #cont:55 #cosa:49 #cost:-135 #coul:119 #crib:-49 #ctam:29 #ctly:105 #cual:58 #cuan:-57 #cuen:23
#cuer:33 #cupo:-32 #dado:-48 #dale:-23 #dang:56 #days:-38 #dder:29 #ddre:-33 #deal:24 #debe:39 #deci:59 #deja:-34
#dejo:32 #depe:-32 #ders:23 #desd:-28 #dias:-30 #dice:34 #dier:25 #dife:26 #digo:-50 #dire:-35 #does:80 #doin:150
#dome:47 #dond:-38 #done:33 #down:71 #dres:-41 #driv:140 #drop:-27 #dura:123 #eale:-23 #eall:91 #earl:-22 #ease:43
#easu:66 #eavi:37 #ecci:-32 #eces:105 #ecir:73 #ecki:29 #ecog:-28 #ecom:50 #ecta:23 #eden:-22 #eeds:68 #efor:61
#egas:31 #egoc:-50 #egre:-28 #egue:-37 #egui:68 #eite:-82 #ejan:52 #ejar:39 #elig:55 #eman:-30 #emen:54 #emin:50
#empr:-23 #enco:76 #enda:42 #ende:-28 #ends:-24 #enen:-30 #enga:-38 #engi:24 #engo:-55 #ensa:-31 #ensi:-26 #ente:25
#enti:40 #ento:40 #entr:-41 #epen:-34 #epla:58 #erar:68 #eras:71 #erda:102 #eren:92 #eria:-35 #erio:61 #erne:26
#eros:-62 #erou:50 #erpe:31 #erte:37 #ervi:37 #esar:22 #esas:31 #escr:-36 #esde:-28 #esit:22 #esnt:-57 #espe:26
#essa:77 #esta:65 #este:-57 #esto:-79 #eter:45 #etti:28 #etwe:-70 #evar:-25 #even:93 #ever:37 #exac:126 #exit:-53
#expe:-23 #expl:207 #exti:-27 #fail:77 #falt:61 #favo:30 #fect:29 #fere:31 #fica:44 #fill:23 #filt:109 #find:79
#fini:-22 #five:30 #flui:92 #flus:71 #fore:66 #foun:31 #four:58 #free:-136 #fron:33 #fuer:22 #gain:45 #gara:-25
#gast:120 #gato:76 #gent:68 #gero:50 #gett:31 #ghts:-24 #gnif:41 #gnor:43 #goci:-50 #goin:-70 #gone:-25 #grat:-82
#grav:52 #gres:-28 #guan:170 #guen:-34 #gues:37 #guir:59 #guro:23 #hace:130 #hago:56 #hang:25 #happ:111 #hard:-39
#harg:-57 #harm:31 #hast:32 #have:47 #heel:-23 #heet:42 #hell:-30 #here:-44 #hese:48 #hice:-25 #hich:36 #hing:69
#hist:26 #hora:-53 #hose:42 #houg:46 #houl:54 #hour:-47 #hudd:29 #hurs:-27 #iaja:63 #iaje:39 #ible:-25 #icam:30
#idea:-41 #iend:27 #iene:75 #iere:136 #iern:27 #iero:-29 #ifer:26 #ific:43 #igam:32 #ight:-66 #igni:41 #igno:45
#igro:55 #iles:59 #ilte:64 #iltr:46 #imet:36 #incl:66 #insu:-27 #inte:52 #inve:22 #invo:51 #ione:-26 #ious:45
#iqui:46 #irec:-31 #ires:31 #irve:-89 #isen:-31 #itch:-23 #ivew:-23 #jand:101 #join:24 #juni:23 #keep:30 #kids:23
#labo:-53 #lain:80 #lama:-23 #lame:-31 #lanc:-22 #laro:-33 #last:61 #late:-22 #leak:-33 #leas:38 #leav:32 #left:61
#legu:-31 #lema:67 #leva:-31 #lica:127 #life:76 #ligh:-43 #ligr:55 #lime:36 #line:-31 #liqu:61 #llam:-48 #llas:36
#lleg:-36 #ller:-41 #llev:-32 #llow:33 #loan:-23 #long:39 #look:31 #lter:57 #ltro:46 #luid:92 #lush:71 #luye:65
#mabl:-27 #make:79 #malo:137 #mana:-49 #mane:87 #mano:-27 #manu:55 #many:49 #maqu:-31 #marc:-65 #marz:34 #mate:-25
#matt:-56 #mber:-89 #mbia:30 #mean:-28 #meas:71 #mell:-22 #mend:27 #meno:-46 #mens:-29 #ment:47 #mero:-63 #mete:45
#metr:22 #mien:71 #mile:66 #mili:24 #mill:26 #mind:38 #more:84 #moto:26 #mpan:-30 #much:-91 #muer:32 #must:65
#nclu:61 #ncon:75 #ndar:28 #nden:-30 #ndin:-25 #nece:136 #need:147 #nego:-50 #neja:103 #neve:22 #nged:27 #nger:65
#ngin:38 #nifi:41 #nigh:-25 #nite:-36 #noma:36 #nore:41 #norm:76 #nsaj:-28 #nsur:-27 #ntar:29 #ntas:-33 #nten:38
#nter:60 #nths:23 #ntin:30 #nton:25 #ntra:37 #nual:55 #numb:-86 #nume:-49 #nven:22 #nver:31 #nyho:23 #nywa:58
#oble:79 #obli:82 #obot:-31 #obre:-22 #ocio:-53 #ocup:-30 #odom:47 #oesn:-57 #oger:-25 #oiga:22 #oing:80 #oint:52
#oked:30 #oles:-28 #olve:35 #omas:42 #omet:43 #ompa:-26 #onde:-34 #ontr:61 #ooke:30 #ooks:-22 #oqui:30 #orio:77
#orma:69 #orri:35 #orro:22 #orse:41 #osed:22 #oser:-51 #otar:26 #othe:31 #otor:49 #otro:35 #ould:112 #ound:26
#oure:25 #ousl:-44 #over:-45 #pagu:-27 #pano:22 #pany:-23 #park:-24 #pasa:170 #pase:-27 #pass:-29 #peli:55 #pend:-41
#pens:43 #pent:30 #pera:45 #pero:95 #pido:-58 #plai:80 #play:26 #plea:41 #plic:125 #poco:33 #poin:28 #poqu:33
#pose:27 #ppen:113 #ppos:23 #pres:-30 #pric:-60 #prin:22 #prob:84 #pued:142 #pues:-48 #pull:-55 #push:27 #quea:-34
#qued:70 #quem:25 #quic:-86 #quid:44 #quie:43 #quin:-36 #raba:-60 #rada:-35 #radi:-25 #rage:-24 #rake:24 #ranc:-34
#rand:-32 #rans:35 #rapi:-64 #raro:89 #rata:53 #rati:-85 #rato:-44 #rave:52 #rdad:43 #read:42 #reak:59 #real:64
#rear:36 #reat:-27 #recc:-29 #reet:-55 #regl:-22 #regr:-28 #reme:45 #remi:50 #repl:49 #resa:-45 #ress:-36 #rest:-24
#rgen:77 #rgin:-34 #ribe:-34 #rice:-61 #ride:-23 #ried:49 #ring:-22 #riou:45 #risk:38 #rive:113 #rivi:22 #rmal:76
#rnes:26 #road:40 #robl:82 #robo:-36 #rong:96 #ront:42 #rose:-51 #roso:49 #rota:44 #rous:50 #rpen:31 #rque:-31
#rran:-32 #rreg:-22 #rrie:37 #rumb:-31 #runk:-24 #rven:-22 #rvic:38 #sabe:83 #safe:46 #saje:-35 #sali:-43 #same:-27
#sari:35 #sary:73 #says:55 #scri:-49 #segu:105 #self:-23 #sema:-33 #sens:26 #sera:29 #seri:60 #sero:-51 #serp:31
#serv:34 #shee:42 #shin:31 #shop:-58 #shou:54 #shud:29 #sibl:-22 #sign:48 #sigo:58 #sirv:-89 #skip:39 #smel:-22
#snow:-23 #sold:-24 #soon:54 #sper:37 #spri:24 #sque:-29 #ssar:73 #stad:92 #stan:57 #star:-30 #stop:-44 #stre:-56
#supp:30 #sura:-27 #sure:49 #tada:27 #tado:57 #take:-59 #tall:-55 #tamb:-28 #tame:23 #tant:24 #tara:37 #tard:-97
#tech:48 #tell:100 #temp:-22 #teng:-86 #text:-62 #that:111 #them:139 #then:39 #thes:48 #they:233 #thin:53 #this:67
#thos:44 #thou:39 #thur:-30 #tien:61 #time:-130 #tine:31 #tire:37 #toca:79 #toma:-38 #tori:75 #town:-22 #trab:-55
#trad:-32 #tran:49 #trar:75 #tras:39 #trat:51 #trea:47 #tree:-56 #tres:-22 #trip:49 #truc:-24 #trun:-22 #trut:23
#tter:-59 #turn:-22 #twee:-70 #uand:-85 #uant:195 #udde:28 #ueda:52 #uede:41 #uedo:102 #uego:-27 #uerd:33 #uert:24
#uess:37 #uick:-86 #uido:56 #uien:-53 #uier:78 #uina:-35 #uito:26 #ulls:-39 #umbe:-86 #umbo:-35 #umer:-49 #unio:22
#uppo:23 #uran:72 #usan:-70 #ushi:27 #usly:-44 #uste:-30 #vale:-26 #vece:-31 #vega:31 #vent:30 #vera:79 #verd:111
#vewa:-23 #viaj:102 #vice:37 #vida:51 #vien:27 #ving:30 #vise:-30 #volv:34 #wait:57 #ween:-70 #were:28 #what:206
#whee:-23 #when:-128 #whic:36 #whys:29 #wifi:-69 #will:102 #wint:56 #with:45 #wont:-31 #worn:25 #worr:56 #wors:37
#woul:-59 #wron:96 #xact:126 #xpla:43 #xpli:164 #xtin:-27 #yeah:-26 #year:29 #yell:25 #yhow:23 #your:-53 #yway:58
%again_later:92 %again_later%call_off:-60 %again_later%elsewhere:54 %again_later%how_long:26 %again_later%lift:98
%again_later%meaning:95 %again_later%money:-68 %again_later%place:-44 %again_later%question:-47
%again_later%season:61 %agree:-47 %agree%away:34 %agree%call_off:124 %agree%car:47 %agree%car_part:30 %agree%do_it:30
%agree%fails:33 %agree%how_long:-54 %agree%leave_me:-30 %agree%money:95 %agree%odometer:-35 %agree%place:91
%agree%refuse:-36 %agree%season:35 %agree%shake:27 %agree%shift_it:68 %agree%wrong_one:30 %away%call_off:36
%away%car:28 %away%odometer:56 %away%on_way:49 %away%place:54 %away%refuse:-35 %away%start_again:-22 %bad%car:-35
%bad%car_part:-56 %bad%do_it:-22 %bad%leak:-27 %bad%meaning:-84 %bad%money:-33 %bad%noise:-25 %bad%place:71
%bad%question:78 %bad%refuse:-29 %bring:-73 %bring%call_off:-36 %bring%do_it:-29 %bring%fails:28 %bring%leave_me:-28
%bring%meaning:27 %bring%money:-30 %bring%odometer:-23 %bring%question:47 %bring%shift_it:-65 %busy:-68 %call_off:-26
%call_off%car_part:28 %call_off%do_it:-38 %call_off%elsewhere:29 %call_off%meaning:74 %call_off%message:-37
%call_off%odometer:-74 %call_off%refuse:-56 %call_off%season:27 %call_off%shift_it:27 %call_off%start_again:22
%call_off%thanks:38 %car%gone_car:-24 %car%how_long:-25 %car%lift:-58 %car%machine:-22 %car%meaning:23
%car%odometer:28 %car%question:98 %car%refuse:40 %car_part:61 %car_part%do_it:-54 %car_part%fails:-31
%car_part%gone_car:-39 %car_part%leak:-33 %car_part%machine:-31 %car_part%meaning:-29 %car_part%money:-61
%car_part%noise:-75 %car_part%odometer:30 %car_part%on_way:65 %car_part%pay_day:-38 %car_part%place:48
%car_part%question:182 %car_part%refuse:52 %car_part%shake:-26 %car_part%shift_it:-39 %car_part%start_again:43
%do_it:-44 %do_it%elsewhere:-30 %do_it%gone_car:25 %do_it%leak:-30 %do_it%lift:-38 %do_it%question:159
%do_it%refuse:126 %do_it%shift_it:-27 %do_it%staff:92 %do_it%start_again:36 %do_it%wrong_one:26 %elsewhere:-98
%elsewhere%pay_day:35 %elsewhere%question:-101 %elsewhere%season:72 %elsewhere%shift_it:64 %elsewhere%wrong_one:22
%fails:73 %fails%how_long:92 %fails%machine:-25 %fails%meaning:22 %fails%question:109 %fails%shift_it:-27 %family:-44
%family%odometer:-29 %family%question:-23 %gone_car:-96 %gone_car%phone:23 %gone_car%question:-27 %how_long:-246
%how_long%lift:45 %how_long%meaning:41 %how_long%on_way:-24 %how_long%question:-92 %how_long%refuse:-62
%how_long%season:30 %how_long%shift_it:-22 %leak:-51 %leave_me:-85 %leave_me%meaning:23 %leave_me%question:-84
%leave_me%refuse:-23 %lift%meaning:34 %lift%money:-30 %lift%on_way:-35 %lift%pay_day:36 %lift%question:-81
%lift%season:66 %machine:-69 %machine%refuse:80 %machine%staff:-29 %meaning:364 %meaning%money:-34
%meaning%on_way:-28 %meaning%phone:-52 %meaning%place:25 %meaning%question:277 %meaning%refuse:35 %meaning%season:29
%meaning%shift_it:25 %meaning%thanks:29 %message:-112 %message%question:-51 %message%refuse:-26 %message%shift_it:-22
%money:-249 %money%place:183 %money%question:-178 %money%shift_it:-27 %money%wrong_one:24 %noise:-36
%noise%question:-22 %odometer%refuse:27 %on_way:-37 %on_way%place:54 %on_way%question:63 %on_way%refuse:27
%opening:-67 %opening%question:-60 %pay_day:-63 %pay_day%question:-74 %pay_day%shift_it:42 %phone:-139
%phone%question:-26 %phone%shift_it:-28 %place:-59 %place%question:-78 %question:282 %question%refuse:51
%question%season:-24 %question%shift_it:-73 %question%staff:99 %question%thanks:-37 %question%who:-120
%question%wrong_one:88 %refuse:-48 %refuse%shift_it:24 %refuse%staff:22 %refuse%start_again:-43 %refuse%thanks:27
%season:82 %season%shift_it:65 %shift_it%wrong_one:30 %smoke_smell:-30 %thanks:-43 %who:-104 %wrong_one:-59 @?:195
@after_visit:-47 @car:-87 @confirm:-77 @confirm_stop:-191 @later:-25 @nothing:-35 @odometer:44 @offers:-34
@reading:-68 @time:-81 @times:-82 @walk_in:-44 ^_aguanta:92 ^_cada:27 ^_can:87 ^_car:-31 ^_claro:-35 ^_could:97
^_cual:28 ^_cuando:-25 ^_cuanto:81 ^_de:143 ^_depends:-28 ^_do:115 ^_doesnt:-53 ^_dont:-23 ^_el:-59 ^_esta:56
^_estan:-24 ^_got:-27 ^_hay:28 ^_hello:-30 ^_i:-123 ^_if:-27 ^_is:109 ^_it:-140 ^_lo:-76 ^_need:-62 ^_no:25 ^_not:-48
^_odometer:40 ^_para:59 ^_pero:36 ^_por:48 ^_puede:24 ^_puedo:150 ^_pues:-33 ^_que:30 ^_se:35 ^_should:60 ^_si:-133
^_that:-69 ^_tienen:-23 ^_tire:-25 ^_top:28 ^_va:-25 ^_what:-227 ^_when:-32 ^_which:40 ^_why:79 ^_will:108 ^_would:30
^_ya:-67 ^_yes:-35 ^_yo:-31 a:26 a__belt:24 a__carro:25 a__deal:25 a__filter:54 a__of:-31 a__off:-32 a__thing:-29
a__to:27 a__trip:60 a_big:34 a_cabin:60 a_como:-25 a_hacer:78 a_nice:22 a_que:-26 a_rip:-40 a_road:52 a_serpentine:25
about:-58 about_$:-67 about_it:33 aceite:-88 acuerdo:25 address:-33 after:-25 again:39 again_$:50 aguanta:132
aguanta_hasta:32 ahi:-41 ahi_$:-29 algo:70 all:42 all_day:-35 all_four:68 am:51 am_i:37 amables:-23 an:-56
an_hour:-42 and:102 and__is:30 and__it:49 and__much:47 and_how:45 and_i:-23 and_is:41 and_it:-34 and_what:58
and_why:53 and_you:-24 andar:35 andar_asi:26 anyhow:23 anyway:58 anyway_$:54 appointment_$:-28 are:67 are_$:-29
are__charging:-35 are__doing:51 are_they:83 are_we:34 are_you:-22 as:-22 asi:153 asi_$:138 at_that:25 at_the:-23
back:-39 bad:-88 bad_$:-23 be:-32 be_$:-78 be__to:39 be_doing:81 before:61 before_it:79 belt:74 belt_$:34 between:-70
between_and:-30 big:47 big_deal:42 boot:26 brake_$:-28 brake__flush:22 brake_fluid:23 brakes:43 brakes_$:36
brakes__grinding:-22 brand:-38 break:60 bring:-55 but:33 but_what:51 cabin:65 cabin_filter:56 cabina:32 cabina_$:27
cada:30 cambiar:22 can:179 can__come:-23 can__drive:108 can__get:34 can__wait:144 can_i:144 can_it:130 can_you:-38
car:-26 caro:-46 carro_$:33 changed:27 charge:-24 charging:-35 checking:29 cita:58 cita_$:27 claro:-31 claro__si:-34
claro_que:-35 cobran:-29 come:79 come_$:105 come_to:-35 como:-96 como__que:67 como_saben:66 company:-23 cosa:56
cosa_$:32 cost:-119 cost_$:-53 cost_me:-33 could:117 could_do:30 could_you:87 creo_que:-31 cual__el:57 cual_es:26
cuando:-85 cuanto:50 cuanto__las:-22 cuanto__me:88 cuanto__queda:111 cuanto_es:-46 cuanto_mas:111 cuanto_me:-53
cuanto_por:-39 dan:-43 dangerous:55 dangerous_$:28 dangerous_to:22 day:-77 day_$:-36 day_thing:-37 days:-31 de:100
de__a:27 de__cita:22 de__como:-22 de__lo:54 de__me:24 de__o:45 de_freno:-24 de_la:48 de_las:-30 de_llantas:-55
de_que:68 de_veras:56 de_verdad:81 de_vida:59 deal:49 debe:45 decir:68 decir_$:59 dejo:33 del:49 depends:-29
desde:-28 desde_que:-32 dia:-87 dia_$:-54 dias:-30 dicen:22 did:74 did__find:76 did_it:-29 did_that:-26 did_the:28
did_you:87 digame:32 digo:-46 direccion:-28 direccion_$:-29 do:87 do__charge:-29 do__get:-55 do__need:143 do__use:-35
do_i:48 do_it:-76 do_they:48 do_this:47 do_you:-66 does:137 does__take:-37 does_that:67 doesnt:-57 doesnt_matter:-58
doing:150 doing_$:57 doing__it:66 doing_to:66 donde:-36 donde_es:-30 donde_estan:-23 done:33 done_$:30 dont_$:49
dont_need:-24 down:80 down_for:40 down_on:54 drive:145 drive_it:61 drive_to:56 driveway:-23 driving:22 drop:-26
due:100 due_for:35 dura:24 el:-86 el__mes:-27 el__que:-66 el_que:-35 else:22 en:37 en_el:34 en_junio:23 en_lo:-23
encontraron:76 encontraron_$:68 engine:29 entra:-25 entrada:-23 era:41 es:209 es_$:-151 es__de:38 es__del:27
es__direccion:-23 es__o:37 es__que:84 es__un:-27 es__y:37 es_de:37 es_el:53 es_eso:137 es_este:-43 es_gratis:-78
es_grave:23 es_lo:61 es_malo:72 es_mi:-28 es_muy:22 es_normal:43 es_peligroso:39 es_que:-51 es_tardado:-57 es_un:38
es_una:-38 es_usted:-22 es_y:35 esa:42 esa__que:22 esas:31 ese:47 ese_servicio:48 eso:294 eso_$:104 eso__que:30
eso_de:48 eso_del:51 eso_y:33 espanol:22 esperar:52 esperar_$:43 espero_$:25 esta:69 esta_$:24 esta_muy:69 estan:62
estan_$:22 este:-62 este_$:-40 esto:-49 esto_$:-48 even:96 even__a:30 even_is:37 exactamente:29 exactamente_$:25
exactly:105 exactly_$:38 exactly__you:24 exit:-53 explain:48 explica:104 falta:72 falta_$:35 favor:36 favor_$:53
filter:62 filter_$:46 filtro:48 find:61 first_$:-23 five:30 five_$:22 fix:-35 fix_it:-27 fluid:84 flush:72 flush_$:35
for:52 for_$:109 for__and:29 for_a:-26 for_again:28 for_it:-40 for_me:29 for_that:-25 for_what:22 found:31 four:58
four_$:58 free:-141 free_$:-107 freno:-57 freno_$:-41 frenos:57 frenos_$:56 front:42 fue:60 fue__que:55 fue_lo:51
game:-24 garage:-22 get:-66 get__you:-22 get_for:-26 get_it:-22 get_to:-26 getting:31 go_for:-38 go_on:64 going:-70
going__be:-44 going__cost:-40 going_to:-75 gone:-25 gratis:-82 gratis_$:-76 grave:52 guess:37 hace:34 hace_$:27
hace_falta:26 hacer:95 hacer_$:41 hago:56 hago_$:58 happen:38 happens:78 happens__i:74 happens_if:74 hard:-23 has:-24
hasta:32 hasta_entonces:23 hasta_que:-59 have:41 have__do:108 have_it:-24 have_to:68 hay__si:69 hay_que:-36 hello:-30
hice:-25 hold_off:-22 hold_up:26 home_$:23 hora:-23 hour:-44 how:64 how__are:57 how__can:91 how__does:-36
how__for:-53 how__i:-104 how__is:-69 how__it:39 how__to:-34 how__will:-39 how__you:-27 how_come:116 how_do:-37
how_low:48 how_many:50 how_much:-85 hoy:-51 hoy_mismo:-24 i:-34 i__a:-36 i__all:61 i__do:27 i__for:-24 i__have:50
i__it:39 i__need:77 i__on:122 i__there:-23 i__these:-33 i__to:-126 i__you:-32 i_be:54 i_can:-38 i_come:-35 i_do:-26
i_dont:31 i_drive:76 i_go:55 i_just:28 i_know:-30 i_mean:-60 i_need:27 i_owe:-27 i_skip:28 i_thought:23 i_wait:34
i_was:-49 idea:-41 idea_$:-30 if:136 if__dont:44 if__skip:28 if_i:134 if_you:-22 ignore:35 ill:-31 im__on:44 in:-54
in_$:-37 in_that:40 incluye:67 incluye__servicio:44 insurance:-27 is:140 is__a:60 is__about:-66 is__address:-30
is__appointment:27 is__bad:72 is__cabin:50 is__cost:-42 is__dangerous:43 is__do:54 is__fluid:35 is__for:74
is__free:-81 is__going:-51 is__labor:-41 is__like:-40 is__number:-28 is__oil:-47 is__ok:72 is__on:63 is__price:-45
is__really:-48 is__run:-153 is__safe:42 is__serious:46 is__something:27 is__thing:34 is__urgent:26 is__wait:-46
is__what:32 is__wifi:-56 is__with:74 is_a:139 is_due:38 is_fine:-44 is_for:45 is_it:117 is_leaking:-26 is_that:90
is_the:-118 is_this:-48 is_what:-26 is_wrong:77 is_your:-56 it:179 it_$:-63 it__a:-28 it__all:-23 it__an:-40
it__done:-27 it__due:23 it__for:59 it__free:-46 it__if:22 it__in:-28 it__is:52 it__it:44 it__k:45 it__leaking:-25
it__quick:-31 it__that:68 it__this:39 it__to:58 it_a:53 it_an:-22 it_back:-29 it_bad:45 it_be:-60 it_cost:-55
it_dangerous:27 it_do:26 it_down:39 it_due:38 it_how:30 it_is:-95 it_need:32 it_now:39 it_ok:69 it_or:-23
it_quick:-46 it_really:-31 it_safe:36 it_take:-38 it_the:-24 it_to:60 it_urgent:26 it_wait:114 it_what:30 junio:23
k:52 k_$:42 keep:26 kids:23 know__is:23 know_it:23 know_you:-26 la:-92 la__de:-43 la_cita:71 labor:-53 labor_$:-38
las:-22 las_$:-24 last:56 later:-27 le:201 le__a:99 le__y:25 le_digo:-28 le_falta:51 le_hacen:46 le_pasa:51
le_toca:74 le_van:75 leaking:-23 leaving:37 left:61 left_on:73 les:75 life:60 like_an:-39 like_im:31 liquido:47
llamen:-23 llamen_$:-22 llantas_$:63 llegue:-24 lo:69 lo__asi:24 lo__pronto:-24 lo_dejo:36 lo_hago:67 lo_mas:-31
lo_necesito:63 long:34 long__i:65 long__it:44 long__need:-41 long_do:-26 long_does:-40 long_will:-25 long_you:-45
look:46 low:113 low_$:31 luz_de:-22 make:78 make__to:80 make_it:90 mal:98 mal_$:150 mal_servicio:-52 malo:130
malo_$:29 manejando:90 manejando_$:47 manejar:32 manual:55 many:49 maquina:-31 marca:-54 marzo:34 mas:37
mas__menos:-25 mas__que:-23 mas_o:-25 mas_pronto:-25 mas_tarde:-23 matter:-54 matter_$:-29 me_$:-30 me__el:-31
me__it:51 me__por:63 me_acuerdo:26 me_back:-31 me_explica:106 me_llamen:-22 me_lo:-49 me_paguen:-26 me_puede:26
me_sirve:-64 me_urge:-52 me_what:95 mean:-26 menos:-46 mensaje:-25 mes:32 mes_$:29 mi:-92 mi_carro:37 mientras:36
miles:59 miles__i:46 mis:32 mm:50 months:23 more:96 more_$:75 motor:36 much:-97 much_$:26 much__is:53 much__it:-49
much_for:-43 much_is:-77 much_to:-36 muerte:38 must:65 muy:65 muy_mal:48 my:-27 my_brakes:22 my_sheet:25 necesario:37
necesito_$:73 necesito__me:-26 necesito_que:-28 necessary:73 necessary_$:73 need:93 need__be:22 need__bring:-32
need__for:-51 need__oil:41 need_a:-39 need_an:35 need_that:56 need_to:-102 needs:69 needs_to:37 negocio:-50 new:-40
ni:-44 no_$:-67 no__acuerdo:26 no__hago:79 no__is:55 no__la:-22 no__necesario:-40 no_entiendo:22 no_es:-38
no_gracias:26 no_lo:64 no_para:-32 no_what:89 nomas:36 normal:69 normal_$:27 not:-265 not_$:-194 now:113 now_$:92
now__i:42 number:-97 number_$:-50 number__this:-26 number_is:-32 numero:-42 numero_es:-28 o:233 o_es:56 o_menos:-25
o_nomas:47 o_que:38 ocupo:-37 odometer:47 of__do:-36 of_oil:-36 of_them:42 off_of:26 oiga:25 oil:-67 ok:88 ok_$:-28
ok__drive:70 ok__it:-29 ok_to:105 on:118 on_$:-50 on__list:28 on__road:40 on__sheet:22 on_me:48 on_my:35 on_that:-26
or:124 or_$:-28 or__that:22 or_a:36 or_is:54 or_no:39 or_the:33 or_what:-44 otra:24 otro:36 otro_mes:37 owe:-27
paguen:-26 paper:22 para:27 para__es:53 para__lo:34 para__no:-34 para__quieren:42 para__sirve:28 para_cuando:-35
para_que:120 pasa:161 pasa__no:66 pasa_si:102 peligroso:49 pero:90 pero__es:32 pero__que:28 pero_que:63 pie:29
place:-39 please:47 please_$:31 poco:27 point:30 poquito:33 por:57 por__no:-58 por__rumbo:-35 por__tan:54
por_favor:41 por_que:155 price:-56 price_on:-34 problema:75 pueda:-22 puede:65 puede_esperar:53 pueden:-22 puedo:131
puedo__asi:83 puedo__hoy:-23 puedo_esperar:56 puedo_seguir:60 pues:-26 pulls:-39 put__off:29 que:64 que_$:-101
que__caro:-45 que__con:-25 que__de:-55 que__decir:72 que__el:22 que__en:34 que__es:-111 que__ese:54 que__eso:162
que__estan:-30 que__hacen:36 que__hicieron:25 que__le:75 que__llamen:-22 que__lo:94 que__mal:71 que__malo:45
que__me:-30 que__paguen:-23 que__pasa:38 que__por:-30 que__que:-24 que__si:90 que__toca:67 que__un:35 que__van:82
que_amables:-23 que_cobran:-24 que_dicen:24 que_entra:-23 que_era:51 que_es:350 que_esperar:-29 que_esta:33
que_fue:64 que_hora:-27 que_incluye:68 que_la:-31 que_le:254 que_mal:-60 que_me:-84 que_no:-140 que_numero:-28
que_pasa:96 que_quiere:72 que_quieren:42 que_sea:-30 que_si:-76 que_significa:31 que_sirve:28 que_taller:-22
que_tan:168 que_tiene:97 que_va:-35 queda:86 queda_$:86 quedo:-28 quick:-82 quick_$:-46 quick__or:-24 quien:-33
quien_es:-32 quiere:58 quiere_decir:72 quieren:63 quiero:-26 quiero_que:-24 radio:-23 rapido:-56 rato:-41 real:-26
really:91 really_free:-36 rear:33 recoger:-22 remind:58 remind__what:73 remind_me:60 ride:-22 right_now:33 rip:-40
road:44 road_trip:53 robot:-31 robot_$:-29 rumbo:-35 run:-229 run_$:-159 run_me:-60 saben:60 saber:30 safe:45
safe_to:29 salida:-22 same:-27 says:55 se:27 se__eso:22 sea:-36 see:-47 see__my:-43 seguir:59 seguro:23 semana:-41
sera:34 serious:96 serious_$:62 serpentine:31 serpentine_belt:31 service:41 set:-46 set__back:-27 set_me:-27 sheet:42
sheet_$:26 shop:-63 shop_is:-26 should:53 should__be:55 should_i:54 shudders:23 si:77 si_$:-64 si__dejo:45 si__lo:77
si__que:-46 si_lo:96 si_me:-32 si_no:101 significa:41 sigo:59 sirve:-68 sirve_$:-51 sirven:-22 skip:25 so:74
so__is:27 so_soon:58 so_what:36 sold:-24 something_that:25 soon:66 soy:-22 speak:-27 spring:24 stop:-38 stop_$:-27
street:-55 street_$:-34 su:-23 supposed:24 supposed_to:24 take:-56 take_$:-36 taller:-37 tambien:-28 tan:250
tan__es:-24 tan__esta:50 tan__estan:91 tan_caro:-43 tan_grave:26 tan_mal:88 tan_malo:43 tan_pronto:38 tardado:-57
tarde:-30 tax:-29 tax_$:-23 tech:51 tell:87 tell_me:91 tengo:-55 tengo_que:-48 texting:-27 th_or:28 that:111
that_$:43 that__do:31 that__to:-22 that_a:26 that_and:27 that_bad:42 that_be:-54 that_going:-33 that_is:-54
that_it:22 that_service:23 that_the:31 that_was:-22 the:58 the__is:31 the__on:-26 the__one:32 the__or:32 the__says:33
the__stuff:22 the__that:22 the__thing:45 the__with:31 the_belt:38 the_other:33 the_price:-37 the_tech:53 the_thing:51
the_tires:78 the_trunk:-22 the_wait:-48 the_winter:59 them:139 them_$:126 then:39 then_$:38 there:-25 there_$:-44
these:48 these_$:74 they:223 they_$:67 they__the:54 they__to:44 thing:30 thing_$:-37 thing__the:24 this:67 this_$:-89
this__for:52 this_about:-71 this_number:-45 those:44 though:33 though_$:40 tiene:78 tiene_$:77 tienen:-29
tienen_$:-32 til:32 time:-130 time__it:-38 tires:48 tires_$:39 to:89 to_$:-37 to__anything:-23 to__me:-63 to__this:39
to__to:44 to__what:22 to_bring:-44 to_cost:-40 to_do:99 to_drive:89 to_fix:-30 to_it:69 to_know:26 to_me:-29
to_see:-27 to_the:-27 to_you:-29 toca:81 toca_$:62 today_$:-27 too:-28 top:47 top_off:51 trabajo:-32 tread:58
tres:-22 trip:51 trunk:-22 un__a:27 un_robot:-23 una:-33 una_maquina:-29 under:-23 urge:-52 urgent:35 urgent_$:26
urgente:41 use:-61 va:-81 va_$:-26 vale:-24 van:78 van__hacer:66 van_a:84 veces:-31 vegas:31 vegas_$:33 veo:22
veras:56 verdad:100 viaje:39 vida:54 viene:32 viernes:26 wait:47 wait_for:-31 wait_on:30 wait_or:22 wait_til:26
was:57 was__there:-31 was_just:-27 was_the:98 week:-30 were:28 what:194 what__a:122 what__i:-24 what__if:74
what__is:-26 what__it:63 what__that:-89 what__they:24 what__this:-45 what__wrong:90 what__you:124 what__your:-58
what_a:-52 what_about:-46 what_am:35 what_are:32 what_company:-23 what_did:177 what_do:-83 what_does:114 what_even:31
what_exactly:61 what_for:62 what_happens:74 what_i:-45 what_it:-26 what_my:-37 what_needs:55 what_street:-38
what_this:38 what_time:-87 what_was:144 what_would:-89 when:-135 when__i:-23 when_i:-79 where__the:23 which:37
which__are:26 which__do:-27 which__is:-68 which_exit:-41 which_shop:-36 who:-38 who__this:-31 who_is:-46 why:245
why_$:47 why__i:42 why__is:24 why__it:78 why__soon:56 why__you:35 why_do:78 why_does:56 why_is:55 why_not:-190
why_so:56 why_would:62 whys:29 whys_it:31 wifi:-69 wifi_$:-52 will:102 will__be:-40 will__make:50 will_it:31
will_the:42 winter:56 winter_$:60 with:50 with_it:39 with_my:23 with_the:23 wont:-31 wont_be:-25 worn:25 worried:50
worse:32 would:-36 would__need:40 would_that:-76 would_you:79 wouldnt:-22 wrong:96 wrong__it:30 wrong_with:87 y:140
y__cuanto:26 y__de:29 y__que:78 y_cuanto:23 y_de:43 y_donde:-23 y_para:30 y_por:45 y_que:43 y_si:27 ya:-145
ya_esta:-43 ya_que:-26 yeah:-26 yellow:25 yes:-94 yes_$:-56 yes__what:34 yet:39 yet_$:40 yo:-63 you:-85 you_$:-63
you__for:-60 you__it:-47 you__me:115 you__that:26 you__the:-41 you_are:-27 you_be:83 you_charge:-32 you_charging:-35
you_do:-24 you_doing:23 you_find:74 you_get:-39 you_have:-35 you_need:-33 you_on:-26 you_tell:63 your:-77 youre:25
"""
