"""What speaks for and against `done`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "done"
BIAS = -200
WEIGHTS = """\
#aban:52 #abou:-27 #acab:49 #aced:116 #acer:76 #acue:49 #aded:-37 #ahor:-28 #aigh:32 #aken:144 #alan:85 #alar:-31
#alat:30 #aled:-32 #alig:65 #alin:25 #alio:39 #alle:40 #alre:163 #alta:36 #ambi:82 #ance:118 #andl:79 #ania:29
#anic:68 #anot:38 #anta:53 #ante:33 #apen:28 #appe:78 #appr:-30 #arad:67 #arag:-38 #arch:30 #aren:-86 #arma:-37
#aron:152 #arro:-66 #asad:110 #asnt:-42 #asol:27 #asse:32 #atas:27 #atch:39 #aten:49 #ater:60 #atio:35 #atis:27
#atte:94 #atur:40 #ayer:178 #back:-39 #bala:116 #bank:-33 #base:27 #bate:64 #batt:70 #bber:35 #beat:143 #been:175
#bers:-31 #biar:47 #body:-25 #bout:-27 #bran:45 #brot:40 #budd:38 #cabo:35 #calc:32 #camb:82 #came:41 #canc:45
#cani:26 #cant:-49 #care:162 #carr:-64 #casa:-30 #casi:-36 #ceip:28 #cemb:27 #chan:27 #char:27 #chec:58 #ched:30
#cher:-32 #ciat:-30 #cibo:27 #cien:56 #cked:38 #cker:56 #coch:-35 #coma:25 #comi:32 #comp:107 #conf:-25 #cono:-48
#cord:57 #coul:-25 #cous:55 #crap:-32 #cros:25 #ctio:73 #ctob:47 #cuer:46 #cump:29 #cupe:28 #ddle:-26 #dece:26
#desd:79 #didn:-30 #dier:41 #dire:-75 #divo:-31 #dled:93 #doll:27 #domi:35 #done:185 #dont:-26 #driv:-98 #drop:-31
#duen:-36 #eady:121 #eaki:27 #ease:29 #eave:-34 #ecal:48 #ecan:26 #ecei:27 #ecem:27 #echa:56 #ecia:-31 #ecie:52
#ecor:55 #ecti:74 #edal:-29 #edan:29 #eded:25 #edes:39 #eede:25 #eeke:36 #eglo:-44 #eipt:28 #ejar:26 #eken:37
#ella:40 #eman:66 #embe:69 #emem:26 #enar:26 #enas:27 #enci:34 #endi:-52 #ener:38 #engo:-32 #enle:-52 #enos:54
#enou:-31 #ensa:-37 #entr:-44 #eone:52 #eopl:29 #epar:70 #epla:98 #erda:89 #eria:64 #erno:31 #eron:76 #erra:-25
#erso:-36 #erto:-32 #ervi:61 #esda:56 #esde:79 #esia:-41 #esol:56 #esta:31 #evas:85 #ever:-113 #eway:-67 #ewhe:27
#falt:42 #febr:25 #fice:25 #fill:41 #filt:26 #fini:40 #firs:-38 #fixe:143 #four:45 #fren:36 #fres:59 #frie:40
#frio:-25 #game:-31 #gara:-33 #garo:26 #gaso:27 #gged:31 #gles:-56 #gnme:65 #goin:-40 #grat:26 #guen:-26 #guys:29
#habl:-34 #hace:188 #hago:-52 #hand:81 #hani:42 #have:-74 #hech:37 #heck:48 #hera:-32 #here:50 #hice:145 #hici:61
#hile:31 #hing:-38 #hizo:125 #hold:39 #hora:-59 #hose:74 #houg:31 #iaro:50 #iate:-30 #iced:35 #icie:39 #icio:100
#icke:71 #ideo:32 #idnt:-30 #iend:39 #ient:44 #iern:26 #iero:68 #ight:-93 #igle:-41 #ignm:65 #ille:46 #imos:53
#ince:44 #inea:26 #iner:42 #ingo:35 #inis:41 #insp:118 #insu:-26 #iper:41 #ires:72 #irst:-38 #ishe:42 #ismo:-106
#ista:-55 #isto:26 #ivew:-63 #ivor:-31 #ixed:140 #jaro:28 #just:65 #kend:37 #kids:-29 #knoc:25 #lace:107 #lado:32
#lanc:94 #lant:26 #larm:-40 #lars:27 #last:123 #lata:28 #late:35 #lcom:29 #leak:50 #leas:27 #leav:-43 #lena:30
#lesi:-41 #lets:-45 #leve:65 #levo:-37 #ligh:-54 #lign:65 #like:-35 #line:55 #list:53 #llan:51 #llar:25 #lled:35
#llen:55 #ller:39 #look:35 #lrea:163 #lsew:33 #lube:71 #mana:59 #mani:48 #mayo:25 #mber:-42 #mbia:94 #mbie:56
#mbio:-68 #meca:26 #mech:42 #memb:26 #mens:-35 #meon:52 #mero:-28 #mien:35 #ming:66 #mism:-115 #mond:66 #mple:35
#mpli:27 #much:-32 #myse:-30 #nada:-28 #naro:30 #nced:35 #ncel:46 #ncle:46 #nday:129 #nded:43 #nden:-42 #ndie:44
#ndle:91 #nera:43 #nero:48 #neve:-73 #nged:98 #nger:25 #nges:-43 #ngin:-26 #nico:33 #nigh:27 #nish:41 #nmen:65
#nock:25 #noth:33 #noug:-31 #nozc:-29 #nsaj:-35 #nspe:118 #nsur:-26 #ntas:71 #nten:40 #ntes:45 #ntre:-27 #nuev:210
#numb:-118 #nume:-39 #ober:40 #oche:-27 #ocke:31 #octo:45 #ocup:28 #offi:25 #oing:-35 #oked:50 #olan:-31 #oldi:26
#olin:27 #olla:27 #olvi:30 #oman:29 #omeo:52 #omet:-29 #omin:67 #ompl:28 #ompr:28 #ompu:29 #onda:65 #ones:75 #oney:29
#onge:31 #onoz:-29 #ooke:50 #oola:-25 #ople:29 #orce:-25 #ords:40 #orks:-25 #orte:33 #osse:26 #otal:-32 #othe:42
#otor:50 #otra:-33 #ould:-100 #ount:27 #ouse:26 #ousi:55 #outu:37 #over:33 #oxim:42 #ozco:-29 #pads:97 #para:44
#pare:-94 #part:32 #pasa:114 #pass:43 #past:27 #pecc:29 #pect:88 #peda:-30 #pena:29 #peop:29 #plac:102 #plea:30
#plet:33 #plug:34 #porq:27 #pped:98 #ppre:-30 #prec:-37 #prim:35 #prox:42 #pued:-95 #pues:30 #pusi:34 #qued:156
#quic:73 #rade:-45 #rado:64 #rage:-40 #raig:40 #rand:50 #raro:-39 #rati:26 #rdan:34 #rday:103 #read:106 #reca:53
#reci:37 #reco:37 #rega:-30 #rene:30 #renl:-52 #reno:46 #repa:60 #repl:103 #repo:-28 #resh:46 #reso:53 #rien:38
#righ:-86 #rimo:36 #rive:-95 #roba:-26 #rong:-62 #ross:25 #rota:30 #roth:40 #roto:47 #roxi:42 #rson:-36 #rted:31
#rubb:35 #ruck:42 #rvic:61 #sada:59 #sado:52 #said:-48 #saje:-36 #sali:60 #satu:43 #scra:-33 #sday:74 #seda:30
#seen:32 #sema:64 #serv:58 #sewh:33 #shed:40 #shop:29 #sier:29 #sinc:50 #sion:29 #sist:34 #snow:-25 #sold:-35
#soli:33 #solo:-113 #solv:44 #sona:-30 #sort:32 #spec:117 #sque:27 #ssed:71 #sted:41 #ster:61 #stic:52 #stop:-69
#stoy:-30 #stra:33 #stre:41 #sund:62 #sura:-26 #swap:85 #take:85 #tale:-28 #tard:-31 #tche:35 #tede:39 #tenc:32
#tend:59 #teng:-33 #tera:33 #terd:59 #teri:61 #tery:70 #text:-34 #that:93 #them:119 #ther:69 #they:49 #thin:-49
#this:-45 #thos:67 #thou:26 #tick:70 #till:-29 #time:-144 #tion:104 #tire:46 #tobe:47 #todo:83 #took:-35 #tors:52
#tota:-32 #trad:-42 #trae:46 #trai:36 #truc:42 #tten:25 #tter:56 #ttin:-36 #tube:37 #tues:44 #turd:43 #twic:-31
#uary:39 #ubbe:35 #uddy:38 #uede:-28 #uedo:105 #ueno:-41 #uerd:46 #uesd:53 #uest:25 #ueva:113 #uevo:78 #ugge:25
#uick:73 #umbe:-107 #umer:-39 #umpl:29 #uncl:46 #unda:60 #unte:34 #urda:43 #usie:31 #usin:34 #uste:38 #veci:39
#vend:-126 #vewa:-63 #vice:-40 #vici:101 #vide:31 #vise:27 #vorc:-31 #wait:29 #want:-26 #wapp:95 #wasn:-36 #week:92
#went:55 #were:71 #what:-32 #when:30 #whil:31 #wice:-31 #wife:-35 #will:-69 #wipe:26 #woul:-47 #wron:-62 #ximo:27
#yest:59 #yout:37 #ysel:-30 %again_later:39 %again_later%agree:56 %again_later%bad:35 %again_later%bring:-40
%again_later%car:-33 %again_later%car_part:52 %again_later%do_it:-33 %again_later%elsewhere:42
%again_later%gone_car:-47 %again_later%message:-25 %again_later%on_way:-28 %again_later%pay_day:-30
%again_later%place:113 %again_later%question:36 %again_later%refuse:41 %again_later%season:-29
%again_later%start_again:-35 %again_later%who:39 %again_later%wrong_one:34 %agree:-70 %agree%away:38
%agree%call_off:45 %agree%car:28 %agree%car_part:105 %agree%elsewhere:32 %agree%family:-36 %agree%gone_car:-27
%agree%odometer:-28 %agree%pay_day:25 %agree%season:42 %agree%shift_it:45 %away:-33 %away%family:26 %away%question:26
%away%wrong_one:45 %bad:-72 %bad%bring:26 %bad%busy:-35 %bad%call_off:41 %bad%car_part:-35 %bad%do_it:-100
%bad%family:-27 %bad%shift_it:35 %bad%staff:-74 %bring:-40 %bring%call_off:49 %bring%car_part:41 %bring%do_it:-31
%bring%family:92 %bring%leak:25 %bring%leave_me:-44 %bring%odometer:37 %bring%place:47 %bring%question:33
%bring%refuse:65 %bring%season:-40 %bring%staff:38 %bring%start_again:-36 %bring%wrong_one:33 %busy:40
%busy%call_off:31 %busy%do_it:36 %busy%elsewhere:31 %busy%family:32 %busy%place:30 %busy%staff:47 %busy%wrong_one:30
%call_off:42 %call_off%car:-83 %call_off%car_part:192 %call_off%do_it:135 %call_off%elsewhere:90 %call_off%fails:129
%call_off%family:98 %call_off%gone_car:-102 %call_off%how_long:-35 %call_off%leave_me:-53 %call_off%message:49
%call_off%money:56 %call_off%odometer:43 %call_off%opening:-28 %call_off%phone:-52 %call_off%place:30
%call_off%question:50 %call_off%shift_it:83 %call_off%start_again:-55 %call_off%thanks:98 %call_off%who:48 %car:-110
%car%do_it:-134 %car%fails:-27 %car%gone_car:-107 %car%refuse:-26 %car%shift_it:-68 %car%thanks:28 %car_part:103
%car_part%do_it:136 %car_part%elsewhere:69 %car_part%fails:-100 %car_part%family:100 %car_part%gone_car:268
%car_part%leak:-55 %car_part%odometer:27 %car_part%phone:-25 %car_part%refuse:-71 %car_part%season:37
%car_part%thanks:-31 %car_part%wrong_one:232 %do_it:490 %do_it%doubt:-30 %do_it%elsewhere:215 %do_it%fails:27
%do_it%family:376 %do_it%gone_car:163 %do_it%how_long:-54 %do_it%leak:-40 %do_it%noise:27 %do_it%odometer:88
%do_it%on_way:82 %do_it%opening:31 %do_it%pay_day:155 %do_it%place:25 %do_it%season:157 %do_it%shift_it:-48
%do_it%staff:69 %do_it%start_again:-38 %do_it%thanks:110 %do_it%wrong_one:82 %doubt:-90 %doubt%refuse:-27
%doubt%wrong_one:-26 %elsewhere:262 %elsewhere%fails:61 %elsewhere%gone_car:-71 %elsewhere%how_long:47
%elsewhere%leave_me:36 %elsewhere%lift:26 %elsewhere%money:55 %elsewhere%odometer:-38 %elsewhere%on_way:30
%elsewhere%phone:31 %elsewhere%place:30 %elsewhere%question:37 %elsewhere%refuse:-56 %elsewhere%season:-29
%elsewhere%shift_it:-26 %fails:-27 %fails%odometer:-29 %fails%question:25 %fails%refuse:74 %fails%thanks:63
%fails%wrong_one:-33 %family:87 %family%noise:39 %family%on_way:29 %family%opening:28 %family%refuse:109
%family%shift_it:36 %family%wrong_one:-83 %gone_car:-156 %gone_car%odometer:-29 %gone_car%on_way:37
%gone_car%shift_it:54 %gone_car%thanks:46 %gone_car%wrong_one:146 %how_long:-29 %how_long%place:38 %leak:-35
%leak%refuse:35 %leak%staff:25 %leave_me:-189 %leave_me%message:-27 %leave_me%staff:27 %machine:-25 %message:-55
%message%wrong_one:-26 %money:43 %money%question:79 %money%staff:31 %money%wrong_one:46 %odometer:-69
%odometer%refuse:25 %odometer%wrong_one:-42 %on_way:30 %on_way%place:-31 %on_way%refuse:69 %on_way%staff:41
%on_way%wrong_one:64 %pay_day:66 %pay_day%refuse:34 %pay_day%shift_it:-29 %pay_day%staff:36 %phone:-74
%phone%staff:-33 %place%question:-27 %place%refuse:29 %place%shift_it:87 %place%wrong_one:61 %question:-142
%question%refuse:32 %question%season:-37 %question%wrong_one:70 %refuse:-74 %refuse%season:53 %refuse%shift_it:-26
%refuse%wrong_one:-122 %season:66 %season%shift_it:-28 %season%wrong_one:28 %shift_it:-127 %shift_it%staff:-44
%shift_it%wrong_one:-109 %staff:83 %staff%wrong_one:54 %start_again:-73 %thanks:51 %who%wrong_one:33 %wrong_one:179
@?:-131 @after_visit:-308 @car:58 @confirm:-136 @confirm_stop:-33 @day:-56 @later:66 @odometer:-73 @offers:-103
@reading:-51 @time:-53 @times:-62 @walk_in:50 ^_all:122 ^_already:85 ^_bank:-26 ^_been:79 ^_can:-65 ^_cant:-39
^_changed:45 ^_could:-32 ^_desde:45 ^_do:-80 ^_el:67 ^_enough:-30 ^_eso:143 ^_fui:37 ^_going:-25 ^_had:168 ^_hey:-30
^_how:-80 ^_id:-59 ^_ill:-87 ^_im:-57 ^_in:-50 ^_is:-91 ^_it:113 ^_just:42 ^_las:26 ^_le:39 ^_lets:-35 ^_lo:-92
^_me:-32 ^_my:-45 ^_new:44 ^_oil:60 ^_put:-32 ^_que:-32 ^_quick:26 ^_se:-95 ^_si:-32 ^_sold:-30 ^_solo:-26
^_someone:83 ^_stop:-40 ^_thanks:-72 ^_that:63 ^_the:57 ^_they:47 ^_this:-35 ^_those:68 ^_took:55 ^_traded:-34
^_what:-96 ^_when:-25 ^_why:-30 ^_will:-32 ^_ya:67 ^_yes:-28 ^_yo:-271 ^_you:-30 a:-52 a__for:-26 a__iglesia:-46
a__on:-30 a_buddy:34 a_guy:-28 a_la:-77 a_mi:-32 a_new:49 about:-27 acaban:28 acaban_de:28 acabo:35 aceite_$:-85
ago:45 ahi:41 alarma:-37 alignment:65 all:128 all_four:31 all_over:-25 already:163 already__it:54 already_did:32
an:-51 an__change:-31 an_appointment:-44 an_oil:-34 and__it:48 and_a:25 and_it:-65 another:41 another_shop:49
antes:31 antes_de:40 any:-30 apenas:28 appreciate:-29 appreciate_it:-25 are:25 are_on:35 arreglo:-44 arreglo_$:-35
as:67 as_a:27 as_of:32 ask:-35 at:107 at_my:30 at_the:86 ayer:186 ayer_$:69 ayer_me:29 back:-34 back_on:-25
balatas:27 bank:-33 base:27 bateria:65 bateria_$:26 battery:73 be:-87 be_done:-62 beat:143 beat__to:151 beat_you:125
been:175 been__since:25 been_done:81 been_fixed:28 brakes:38 brakes_were:27 brand:39 brand_new:39 buddy:33 but:52
by:107 by_my:71 call:-44 call_me:-28 cambiaron:50 cambie:56 cambie__una:-37 cambie_por:-106 cambio:-49
cambio__aceite:-58 cambio_de:-27 cambio_el:-35 came:43 came__the:27 came_on:-40 can:-80 can_you:-55 cant:-48 car:-100
car_$:-52 care:180 care__it:27 care_of:184 carro:-72 carro_$:-53 casa:-30 casa_$:-49 casi:-36 change:-73 change_$:-28
changed:98 changed_it:74 changed_my:-35 changed_the:46 changes:-43 changes_$:-33 cochera:-32 coming:32 compre:31
con:79 con__mecanico:44 con_la:28 conozco:-29 conozco_ese:-25 coolant:-25 could:-40 cousin:50 cuanto_por:25 dad:32
day:-44 day_$:-31 de__el:35 de__ya:-33 de_aceite:-40 de_hacer:48 de_la:33 de_nuevo:-27 december:27 december_$:27
dejaron:28 del:43 desde:79 desde__le:40 di:33 dia:-63 dia_$:-42 did:308 did__at:26 did__for:42 did__get:-38
did__in:75 did__last:45 did__oil:27 did_it:317 did_my:-51 did_that:122 did_the:61 did_you:-122 didnt:-30 divorce:-28
divorce_$:-28 do__need:-30 do__own:-35 do_it:63 do_my:-35 do_they:-26 dollars:27 domingo:38 done:187 done_$:-44
done__the:32 done_already:30 done_at:42 done_in:60 done_last:37 dont:-26 down__street:32 down_the:29 driveway:-62
driveway_$:-49 dueno:-36 dueno_$:-29 echo:-37 el:96 el__dia:-41 el__mes:-28 el__pasado:51 el__ya:69 el_de:28
el_domingo:38 el_mes:39 el_mismo:-65 el_recibo:28 el_servicio:33 el_viernes:26 else_$:-39 elsewhere:33 en:121
en__casa:-43 en__cochera:-26 en__gasolinera:45 en__lado:48 en__taller:71 en_el:-41 en_la:-34 en_otra:30 en_otro:132
enero:39 enough:-31 es:-79 es__mismo:-26 es_lo:-26 es_mecanico:-31 esa:27 ese:-45 ese__lo:-52 ese_servicio:37
ese_taller:-31 ese_ya:-48 eso:276 eso_$:40 eso__lo:61 eso__se:28 eso_ya:121 esta:32 esta_$:58 esta_hecho:28 este:-33
estoy:-30 ex:-104 ex_wife:-27 falta:39 favor:25 fell:-31 fella:35 fella__the:29 filled:41 filled_it:26 finished:42
first:-38 fix:-108 fix_it:-89 fixed:143 fixed_it:35 for:41 for_me:45 for_that:-65 for_the:57 four:45 frenos:57
fresh:46 friend:31 frio:-25 frio_$:-25 fue:63 fui:60 game:-26 garage:-38 garage_$:-34 gasolinera:44 gasolinera_$:37
get:-172 get__done:-95 get_it:-45 get_my:-26 go:-61 go__the:-29 go_to:-28 going:-40 gomas:30 got__done:40
got__guy:-28 got__in:-40 got__new:40 got__of:-47 got__on:25 got_it:38 got_rid:-54 got_to:-48 gracias__lo:29
gracias_ya:35 gratis:27 guy:70 guy_$:-25 guy__it:83 guys:29 hace:105 hace_falta:31 hace_un:29 hacer:79 hacer_en:45
had:335 had__done:80 had_it:152 had_my:80 had_that:51 had_the:25 had_to:-37 hago:-52 hago_$:-26 handled:93
handled_$:46 has:-37 has_it:-26 have:-61 have__it:39 have_an:-44 have_it:-31 he:-48 hecho:54 her:39 hermano_$:-26
hey:-30 hice:154 hice_$:32 hicieron:28 hicieron_el:26 hizo:125 hizo_el:48 hizo_mi:36 holding:26 how:-78 how_much:-42
i:44 i__done:42 i__down:26 i__in:30 i__it:96 i__that:-25 i__the:45 i__them:25 i__to:-29 i_bought:33 i_do:-39
i_had:121 i_have:47 i_need:-32 i_should:-38 i_was:61 id:-67 id__to:-36 id_like:-35 if:-49 if_i:-33 iglesia:-41
ill:-90 ill__it:-76 im:-90 in:183 in__divorce:-28 in__garage:-37 in__the:27 in_the:-32 inspeccion:29 inspection:72
insurance:-26 insurance__it:-25 is:-61 is__done:44 is_a:-25 is_been:106 is_done:43 is_got:-26 is_handled:31
is_his:-30 is_it:-46 is_my:-33 is_that:-34 it:146 it_$:93 it__already:27 it__at:47 it__been:59 it__got:-26
it__handled:31 it__in:54 it__morning:29 it__my:26 it__on:36 it_already:-35 it_be:-59 it_fixed:42 it_for:30 it_is:70
it_looked:50 it_myself:-33 it_now:-39 it_sunday:30 it_this:27 just:69 just__that:45 kids:-29 knocked:26 la__con:30
la__es:26 la__pasada:59 la__por:-35 la__ya:30 la_alarma:-37 la_bateria:28 la_casa:-44 la_cochera:-27 la_gasolinera:32
la_iglesia:-41 la_inspeccion:29 la_lista:-36 la_semana:54 lado:32 las:96 las__en:26 las_llantas:29 last:125
last_month:43 last_night:25 last_time:-66 last_week:97 late:26 le:147 le__las:25 le__los:45 le__todo:33
le_cambiaron:25 le_cambie:93 le_cambio:-49 le_echo:-27 leaking:28 leave:-29 les:-79 lets:-45 lets__it:-32
lets_get:-44 light:-66 light__on:-36 light_came:-31 like:-35 like_to:-32 list:65 lista:-46 lista_$:-34 listo:39
llanta:-28 llantas:72 llantas_nuevas:38 llegaron:30 lleve:68 lleve__otro:38 lleve_con:42 llevo:-37 lo:227 lo__a:-54
lo__de:50 lo__el:28 lo__en:126 lo__hacer:38 lo__listo:30 lo__por:-86 lo_arreglaron:39 lo_arreglo:-58 lo_cambie:-26
lo_dejaron:25 lo_hago:-51 lo_hice:141 lo_hicieron:94 lo_hizo:123 lo_lleve:49 lo_llevo:-42 lo_mande:33 lo_mismo:-33
lo_tiene:-47 lo_vendi:-97 longer:27 looked:49 los:60 los_frenos:39 lot:29 lube:71 mal:-91 mal_el:-26 mande:32
me_$:-43 me__arreglo:26 me__hicieron:69 me__hizo:79 me__mal:-46 me__nada:-28 me_hicieron:-56 me_la:35 me_lo:189
mecanico:27 mechanic:42 mes_$:-30 mes_pasado:42 mi:-28 mi__es:-36 mi__le:31 mi__ya:57 mi_ex:-34 mi_hermano:-27
mi_primo:30 mismo:-113 mismo_$:-26 mismo_dia:-43 mom:-42 monday:67 monday_$:50 month_$:-33 much:-48 my:49 my__did:45
my__do:104 my__fixed:53 my__go:-27 my__oil:-36 my__put:33 my__so:25 my_car:-38 my_cousin:44 my_dad:32 my_driveway:-31
my_ex:-44 my_mechanic:31 my_number:-35 my_office:26 my_own:-46 my_uncle:26 myself:-30 myself_$:-86 nada:-36
need__be:-26 need_that:-33 needed:25 never:-69 new:295 new__in:43 new__on:63 new_battery:64 new_ones:58 new_tires:82
ni:-71 no:-141 no_$:-67 no__ese:-37 no__falta:34 no__for:38 no__lo:-41 no__ya:46 no_conozco:-26 no_gracias:-34
no_hace:43 no_lo:-25 no_longer:35 no_me:-43 no_need:63 no_se:43 no_soy:-49 no_voy:40 not:-39 now:-35 now_$:-40
nueva:28 nuevas:85 nuevas_$:57 nuevo:28 number:-87 number_$:-29 numbers:-31 numero:-38 o:-57 october:47 october_$:47
of:80 of_$:87 of_the:-38 off:-25 off_$:-35 off__list:41 off_the:27 office:25 oil_changes:-41 ok:-30 old:53 on:96
on__th:25 on__tires:-39 on_in:51 on_it:-43 on_monday:27 on_saturday:34 on_sunday:38 ones:70 or:-67 otra_parte:30
otro_$:-68 otro_carro:-41 otro_lado:68 otro_mes:-34 otro_taller:95 out:47 own:-60 own_oil:-36 pads:97 pads_are:40
paren:-33 paren_$:-31 parenle:-52 pasada:58 pasada_$:33 pasado:46 pasado_$:32 passed:41 pedal:-28 pendiente:25
people:29 persona:-26 please:29 por:-67 por_otro:-67 por_una:-50 primo:36 proximo:28 puedo:-67 put:-49 put_me:-49
put_new:41 que:-52 que__el:-26 que__hicieron:-30 que_le:26 que_pase:-27 quedo:172 quedo_$:41 quedo_mi:-27 quick:73
quick_lube:71 ready:-42 ready_$:-33 recall:66 recall_$:44 receipt:28 recibo:27 recien:53 records:41 remember:26
remember_$:26 replaced:116 replaced_in:41 replaced_it:26 rid:-54 rid_of:-54 right:-85 right_now:-36 rotors:52
rubber:35 said:-48 salio:39 sat:40 sat_$:46 saturday:38 saturday_$:60 se__cambie:26 se__de:-28 se__hice:45
se__hicieron:32 se__puse:30 se__quedo:-31 se_las:32 se_lo:96 se_los:38 se_me:-57 see:-42 see_the:-26 seen:33
semana:48 semana_pasada:60 service:-77 serviced:36 servicio:101 set:46 shop:33 should:-30 si:-32 since:50 snow:-25
so:78 so__is:29 so_i:64 sold:-40 solo:-113 someone:47 sorted:34 soy:-69 sticker:43 stop:-53 stop_it:-36 straight:25
sunday:73 sunday_$:75 swapped:95 take:-43 taken:145 taken__of:145 taken_care:139 taller:34 tengo:-31 tengo_el:27
tengo_otro:-27 that:93 that_$:-47 that__been:44 that__the:59 that_done:-43 that_is:74 that_last:59 that_off:53 the:91
the__for:-45 the__guy:-30 the__light:-26 the__of:-33 the__on:28 the__was:25 the_brakes:35 the_car:-38 the_divorce:-28
the_first:-33 the_game:-26 the_garage:-47 the_list:26 the_oil:52 the_pads:41 the_quick:25 the_recall:28 the_tires:36
the_wrong:-36 them:119 there__that:33 they:43 they__to:-26 this:-45 this__his:-26 this_is:-34 this_morning:30
this_number:-26 those:67 those_tires:27 though:41 tiene_mi:-54 time:-122 time_$:-47 time_i:-27 tire:-27 tires:73
tires__on:25 tires_on:32 tires_were:27 to_$:41 to__it:-57 to__that:-25 to__the:-26 to_be:-26 to_get:-47 to_it:154
todo:87 too_$:-31 took:-35 took__of:49 took__to:59 took_care:53 took_the:-40 topped:32 totaled:-28 traded:-37
traded__in:-27 traded_it:-28 trae:47 truck:38 tuesday:59 tuesday_$:53 twice:-31 two__ago:28 un_mes:33 una:-55
uncle:42 use:-42 use_the:-32 ustedes:39 vendi:-112 vendi_$:-83 video:32 was:245 was__and:-49 was__at:31 was__for:30
was__in:30 was__last:36 was_done:60 was_in:47 wasnt:-36 we__the:-33 we_got:54 week:36 week_$:39 weekend:37
weekend_$:35 weeks_$:-35 weeks_ago:28 went:55 went__the:31 were:75 were__in:50 were_done:31 what:-34 what_did:-45
what_do:30 when:41 when__was:41 when_i:57 while:31 why:-46 wife:-34 wife__it:-29 will:-68 will__be:-30 will_it:-32
wipers:33 with__texts:-25 with_the:-27 work:39 works:-25 would:-46 wrong:-62 y:41 y__lo:61 y__no:-25 y__quedo:30
y_no:25 y_ya:25 ya:397 ya_$:-138 ya__cambie:25 ya__de:-33 ya__di:32 ya__hace:36 ya__hice:75 ya__hicieron:39
ya__lleve:58 ya__lo:119 ya__los:25 ya__otro:-45 ya__por:26 ya__tiene:-44 ya__vendi:-87 ya_casi:-35 ya_esta:95
ya_fue:84 ya_la:46 ya_le:150 ya_les:-60 ya_lo:141 ya_me:104 ya_no:-93 ya_parenle:-52 ya_pase:42 ya_que:-46
ya_quedo:175 ya_se:105 ya_tengo:-28 ya_tiene:32 ya_trae:25 ya_voy:-26 yeah_$:-38 yes:-45 yesterday:59 yesterday_$:56
yet:-27 yo:-417 yo__la:-54 yo__le:-75 yo_le:-44 yo_lo:-94 yo_ni:-25 yo_no:-79 you:-112 you__did:54 you__for:26
you__it:37 you__my:-39 you__on:-46 you__the:-65 you_can:25 you_get:-29 you_guys:26 you_put:-60 you_said:-48
you_see:-25 you_to:133 your_records:34
"""
