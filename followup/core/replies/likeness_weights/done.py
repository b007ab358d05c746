"""What speaks for and against `done`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "done"
BIAS = -180
WEIGHTS = """\
#aban:46 #acab:39 #aced:92 #acer:72 #acue:42 #aded:-32 #aigh:28 #aken:121 #alan:75 #alar:-28 #alat:27 #aled:-29
#alig:56 #alio:34 #alle:27 #alre:119 #alta:33 #ambi:72 #ance:107 #andl:73 #ando:30 #ania:25 #anic:58 #anot:29
#anta:44 #ante:28 #appe:71 #appr:-28 #arad:58 #arag:-38 #arch:27 #aren:-86 #arma:-33 #aron:140 #arro:-57 #asad:90
#asnt:-35 #asol:23 #asse:29 #atas:24 #atch:33 #aten:44 #ater:58 #atio:33 #atis:25 #atte:78 #atur:38 #avor:24
#ayer:158 #back:-36 #bala:102 #bank:-32 #base:24 #bate:60 #batt:57 #bber:29 #beat:129 #been:135 #bers:-30 #biar:46
#body:-24 #bout:-22 #bran:40 #brot:33 #budd:34 #cabo:29 #calc:27 #camb:71 #came:30 #canc:45 #cani:24 #cant:-40
#care:129 #carr:-54 #casa:-34 #casi:-35 #ceip:26 #cemb:25 #chan:43 #char:26 #chec:47 #ched:27 #cher:-24 #ciat:-28
#cibo:23 #cien:49 #cked:32 #cker:48 #coch:-24 #comi:29 #como:23 #comp:95 #cono:-48 #cord:46 #cous:45 #crap:-28
#ctio:69 #ctob:45 #cuan:23 #cuer:39 #cump:25 #cupe:24 #ddle:-26 #dece:24 #desd:65 #didn:-23 #dier:37 #dire:-72
#divo:-31 #dled:86 #doll:24 #domi:22 #done:170 #dont:-23 #driv:-86 #drop:-26 #duen:-31 #eady:86 #eaki:23 #ease:29
#eave:-31 #ebod:-23 #ecal:42 #ecan:24 #ecei:25 #ecem:25 #echa:47 #ecia:-29 #ecie:46 #ecor:45 #ecti:71 #edal:-26
#edan:24 #eded:22 #edes:33 #eede:22 #eeke:26 #egar:23 #eglo:-44 #egue:-22 #eipt:26 #ejar:24 #eken:27 #ella:36
#eman:54 #embe:64 #emem:24 #enar:23 #enci:30 #endi:-46 #ener:37 #engo:-23 #enle:-51 #enos:48 #enou:-29 #ensa:-28
#entr:-30 #eone:48 #eopl:27 #epar:61 #epla:78 #erda:78 #eria:61 #erno:22 #eron:60 #erra:-23 #erso:-30 #erto:-29
#ervi:44 #esda:42 #esde:65 #esia:-37 #esol:50 #esta:39 #evas:72 #ever:-105 #eway:-55 #falt:37 #favo:24 #fice:23
#fill:35 #filt:32 #fini:35 #firs:-36 #fixe:119 #four:38 #fren:30 #fres:50 #frie:34 #frio:-23 #fron:-23 #game:-29
#gara:-34 #garo:24 #gaso:23 #gett:-23 #gged:28 #gles:-50 #gnme:56 #goin:-36 #gone:-22 #grat:25 #guen:-22 #guys:30
#habl:-22 #hace:179 #hago:-39 #hand:76 #hani:35 #have:-59 #hech:32 #heck:38 #hera:-24 #here:43 #hice:126 #hici:43
#hile:31 #hing:-35 #hizo:109 #hold:33 #hora:-51 #hose:69 #hous:22 #iaro:49 #iate:-28 #iced:26 #icie:28 #icio:83
#icke:63 #ideo:28 #idnt:-23 #iend:31 #ient:40 #iern:22 #iero:53 #iert:-22 #ight:-94 #igle:-37 #ignm:56 #ille:40
#imos:43 #ince:43 #iner:36 #ingo:22 #inis:35 #insp:103 #insu:-25 #iper:42 #ires:55 #irst:-36 #ishe:36 #ismo:-90
#ista:-40 #ivew:-53 #ivor:-31 #ixed:116 #jaro:26 #just:61 #kend:27 #kids:-27 #lace:88 #lado:26 #lanc:83 #larm:-36
#lars:24 #last:96 #lata:26 #late:30 #lcom:25 #leak:41 #leas:31 #leav:-40 #lena:27 #lesi:-37 #lets:-38 #leve:60
#levo:-38 #ligh:-50 #lign:56 #like:-38 #line:46 #list:54 #llan:40 #llar:22 #lled:31 #llen:49 #ller:29 #look:31
#lrea:119 #lsew:27 #lube:61 #mana:55 #mani:41 #mber:-29 #mbia:88 #mbie:46 #mbio:-63 #mebo:-23 #meca:24 #mech:35
#memb:24 #mens:-26 #meon:48 #mero:-22 #mien:31 #mill:-22 #ming:51 #mism:-98 #mond:57 #mple:30 #mpli:24 #much:-22
#myse:-32 #nada:-26 #naro:26 #nced:30 #ncel:45 #ncle:40 #nday:114 #nded:36 #nden:-38 #ndie:40 #ndle:85 #nera:37
#nero:45 #neve:-71 #nged:84 #nger:23 #nges:-38 #ngin:-23 #nico:30 #nish:35 #nmen:56 #noth:28 #noug:-29 #nozc:-29
#nsaj:-26 #nspe:103 #nsur:-25 #ntas:55 #nten:39 #ntes:40 #nuev:179 #numb:-98 #nume:-31 #ober:42 #ocke:25 #octo:44
#ocup:25 #offi:23 #oing:-33 #oked:49 #olan:-32 #olin:23 #olla:24 #olvi:26 #oman:25 #omeb:-23 #omeo:48 #omet:-25
#omin:51 #ompl:24 #ompr:25 #ompu:25 #onda:56 #ones:67 #oney:25 #onge:29 #onoz:-29 #ooke:49 #oola:-26 #ople:27
#oppe:22 #orce:-26 #ords:30 #orks:-22 #orqu:22 #orte:28 #osse:23 #otal:-29 #othe:29 #otor:41 #otra:-26 #ough:-24
#ould:-76 #ount:22 #ouse:23 #ousi:45 #outu:32 #over:23 #oxim:38 #ozco:-29 #pads:83 #para:39 #pare:-92 #part:29
#pasa:93 #pass:39 #past:22 #pecc:26 #pect:77 #peda:-28 #pena:22 #peop:27 #plac:84 #plea:29 #plet:29 #plug:32 #porq:25
#pped:93 #ppre:-28 #prec:-35 #prim:33 #prox:38 #pudd:-24 #pued:-84 #pues:27 #pusi:29 #qued:137 #quic:64 #rade:-41
#rado:55 #rage:-40 #raig:36 #rand:44 #raro:-35 #rati:25 #rdan:29 #rday:96 #read:73 #reca:47 #reci:29 #reco:27
#rene:26 #renl:-51 #reno:39 #repa:50 #repl:81 #repo:-22 #resh:39 #reso:46 #rien:32 #righ:-79 #rimo:33 #rive:-84
#rong:-53 #ront:-25 #rota:26 #roth:33 #roto:39 #roxi:38 #rreg:-22 #rson:-30 #rted:26 #rubb:29 #ruck:40 #rvic:44
#sada:46 #sado:45 #said:-40 #saje:-27 #sali:51 #satu:40 #scra:-30 #sday:57 #seda:25 #seen:29 #self:-22 #sema:53
#serv:42 #sewh:27 #shed:35 #shop:23 #sier:25 #sinc:47 #sion:25 #sist:29 #snow:-23 #sold:-29 #soli:28 #solo:-104
#solv:40 #sona:-26 #sort:27 #spec:103 #sque:25 #ssed:63 #sses:-22 #sted:35 #ster:55 #stic:44 #stop:-60 #stoy:-26
#stra:30 #stre:36 #sund:57 #sura:-25 #swap:78 #take:73 #tale:-26 #tard:-28 #tche:30 #tede:33 #tenc:29 #tend:53
#teng:-24 #tera:28 #terd:55 #teri:57 #tery:57 #text:-30 #that:69 #them:107 #ther:54 #they:40 #thin:-46 #this:-22
#thos:63 #tick:59 #time:-126 #tion:99 #tire:37 #tobe:45 #todo:68 #took:-39 #tors:44 #tota:-29 #trad:-37 #trae:40
#trai:33 #truc:40 #tten:22 #tter:44 #ttin:-32 #tube:32 #tues:37 #turd:40 #twic:-25 #uary:26 #ubbe:29 #uddl:-24
#uddy:34 #uede:-22 #uedo:87 #ueno:-36 #uerd:39 #uesd:40 #ueva:94 #uevo:69 #uick:64 #umbe:-88 #umer:-31 #umpl:25
#uncl:40 #unda:55 #unte:32 #uran:-22 #urda:40 #usie:26 #usin:23 #uste:34 #veci:34 #vend:-110 #vewa:-53 #vice:-39
#vici:83 #vide:27 #ving:-23 #vise:24 #vorc:-31 #wait:26 #want:-23 #wapp:87 #wasn:-30 #week:62 #went:47 #were:66
#what:-22 #whil:31 #wice:-25 #wife:-31 #will:-59 #wipe:29 #work:26 #woul:-31 #wron:-53 #ximo:24 #yest:55 #yout:32
#ysel:-32 %again_later:49 %again_later%agree:51 %again_later%bad:30 %again_later%bring:-33 %again_later%car:-33
%again_later%car_part:37 %again_later%do_it:-28 %again_later%elsewhere:34 %again_later%gone_car:-51
%again_later%lift:22 %again_later%on_way:-29 %again_later%pay_day:-30 %again_later%place:107 %again_later%question:38
%again_later%refuse:44 %again_later%season:-23 %again_later%staff:-23 %again_later%start_again:-28
%again_later%who:35 %again_later%wrong_one:32 %agree:-35 %agree%away:29 %agree%call_off:47 %agree%car:26
%agree%car_part:102 %agree%elsewhere:26 %agree%family:-31 %agree%gone_car:-22 %agree%odometer:-25 %agree%pay_day:23
%agree%season:37 %agree%shift_it:45 %away:-38 %away%family:23 %away%question:23 %away%wrong_one:33 %bad:-66
%bad%bring:23 %bad%busy:-32 %bad%call_off:32 %bad%car_part:-30 %bad%do_it:-89 %bad%family:-23 %bad%shift_it:31
%bad%staff:-60 %bring%call_off:58 %bring%car_part:30 %bring%family:83 %bring%leave_me:-36 %bring%odometer:33
%bring%place:40 %bring%question:28 %bring%refuse:59 %bring%season:-41 %bring%shift_it:28 %bring%staff:32
%bring%start_again:-26 %bring%wrong_one:26 %busy:45 %busy%call_off:27 %busy%do_it:37 %busy%elsewhere:28
%busy%family:29 %busy%place:28 %busy%staff:46 %busy%wrong_one:28 %call_off%car:-59 %call_off%car_part:172
%call_off%do_it:125 %call_off%elsewhere:70 %call_off%fails:113 %call_off%family:92 %call_off%gone_car:-95
%call_off%how_long:-30 %call_off%leave_me:-42 %call_off%message:51 %call_off%money:50 %call_off%odometer:31
%call_off%opening:-27 %call_off%phone:-45 %call_off%place:24 %call_off%question:52 %call_off%refuse:23
%call_off%season:-31 %call_off%shift_it:72 %call_off%staff:-23 %call_off%start_again:-48 %call_off%thanks:81
%call_off%who:41 %car:-69 %car%do_it:-96 %car%gone_car:-71 %car%shift_it:-56 %car%thanks:23 %car_part:53
%car_part%do_it:104 %car_part%elsewhere:60 %car_part%fails:-86 %car_part%family:90 %car_part%gone_car:238
%car_part%leak:-51 %car_part%odometer:22 %car_part%pay_day:-23 %car_part%refuse:-60 %car_part%season:23
%car_part%thanks:-28 %car_part%wrong_one:196 %do_it:459 %do_it%doubt:-24 %do_it%elsewhere:178 %do_it%fails:28
%do_it%family:321 %do_it%gone_car:156 %do_it%how_long:-38 %do_it%leak:-29 %do_it%message:25 %do_it%noise:27
%do_it%odometer:73 %do_it%on_way:75 %do_it%opening:25 %do_it%pay_day:128 %do_it%place:25 %do_it%question:22
%do_it%refuse:29 %do_it%season:128 %do_it%shift_it:-30 %do_it%staff:70 %do_it%start_again:-36 %do_it%thanks:83
%do_it%wrong_one:50 %doubt:-72 %doubt%refuse:-24 %elsewhere:186 %elsewhere%fails:52 %elsewhere%gone_car:-73
%elsewhere%how_long:44 %elsewhere%leave_me:26 %elsewhere%lift:22 %elsewhere%money:49 %elsewhere%odometer:-33
%elsewhere%on_way:25 %elsewhere%phone:28 %elsewhere%question:35 %elsewhere%refuse:-60 %elsewhere%season:-28
%elsewhere%shift_it:-26 %fails%odometer:-24 %fails%question:25 %fails%refuse:75 %fails%shift_it:24 %fails%staff:22
%fails%thanks:60 %fails%wrong_one:-28 %family:54 %family%noise:36 %family%odometer:-26 %family%on_way:34
%family%opening:22 %family%refuse:92 %family%shift_it:27 %family%wrong_one:-83 %gone_car:-119 %gone_car%message:-22
%gone_car%odometer:-22 %gone_car%on_way:32 %gone_car%question:25 %gone_car%shift_it:42 %gone_car%thanks:35
%gone_car%wrong_one:121 %how_long%lift:22 %how_long%place:28 %leak:-27 %leak%refuse:30 %leak%staff:25 %leave_me:-164
%leave_me%staff:23 %machine:-26 %message:-25 %message%wrong_one:-24 %money:46 %money%question:74 %money%staff:28
%money%wrong_one:40 %odometer:-67 %odometer%refuse:26 %odometer%wrong_one:-34 %on_way:26 %on_way%place:-28
%on_way%refuse:62 %on_way%staff:38 %on_way%wrong_one:57 %opening:-27 %pay_day:56 %pay_day%refuse:35
%pay_day%shift_it:-23 %pay_day%staff:33 %phone:-63 %phone%staff:-25 %place%refuse:25 %place%shift_it:78
%place%wrong_one:45 %question:-85 %question%refuse:40 %question%season:-35 %question%wrong_one:73 %refuse:-57
%refuse%season:52 %refuse%staff:-22 %refuse%wrong_one:-119 %season:40 %season%shift_it:-24 %shift_it:-94
%shift_it%staff:-36 %shift_it%who:22 %shift_it%wrong_one:-94 %staff:71 %staff%wrong_one:41 %start_again:-62
%who%wrong_one:27 %wrong_one:125 @?:-107 @after_visit:-239 @car:59 @confirm:-90 @confirm_stop:-28 @day:-50 @later:62
@odometer:-54 @offers:-81 @reading:-40 @time:-50 @times:-25 @walk_in:41 ^_all:113 ^_already:65 ^_bank:-26 ^_been:65
^_can:-56 ^_cant:-31 ^_changed:41 ^_coolant:-22 ^_could:-28 ^_desde:43 ^_do:-75 ^_done:25 ^_el:65 ^_enough:-28
^_eso:125 ^_fui:32 ^_going:-25 ^_got:-26 ^_hace:24 ^_had:141 ^_hey:-28 ^_how:-56 ^_id:-59 ^_ill:-82 ^_im:-49 ^_in:-48
^_is:-73 ^_it:93 ^_just:33 ^_las:24 ^_le:35 ^_lets:-29 ^_lo:-79 ^_me:-27 ^_my:-62 ^_new:37 ^_oil:55 ^_put:-26
^_que:-31 ^_quick:25 ^_se:-90 ^_si:-29 ^_sold:-26 ^_solo:-27 ^_someone:76 ^_stop:-39 ^_thanks:-73 ^_that:47 ^_the:41
^_they:35 ^_this:-35 ^_those:63 ^_took:50 ^_traded:-31 ^_truck:23 ^_what:-78 ^_when:-22 ^_will:-23 ^_ya:31 ^_yes:-23
^_yo:-202 ^_you:-22 a:-47 a__battery:22 a__for:-23 a__iglesia:-41 a__on:-26 a_buddy:32 a_guy:-27 a_la:-66 a_mi:-30
a_new:44 acaban:24 acaban_de:24 acabo:29 aceite_$:-77 ago:34 ahi:38 alarma:-32 alignment:56 all:113 all__my:-23
all_day:-22 all_four:26 all_over:-25 already:119 already__it:43 already_did:22 an:-33 an_appointment:-37 and__it:39
and_a:22 and_it:-53 another:33 another_shop:44 antes:27 antes_de:35 any:-22 appreciate:-27 appreciate_it:-24
are_on:30 arreglo:-44 arreglo_$:-35 as:58 as_a:24 as_of:27 ask:-32 at:93 at_my:26 at_the:70 ayer:165 ayer_$:57
ayer_me:26 back:-31 balatas:24 bank:-32 base:24 bateria:61 bateria_$:24 battery:59 be:-63 be_done:-49 beat:129
beat__to:136 beat_you:113 been:135 been__since:24 been_done:74 brakes:28 brakes__done:22 brakes_were:24 brand:33
brand_new:34 buddy:29 but:46 by:86 by_my:62 call:-40 call_me:-25 cambiaron:49 cambiaron_la:22 cambie:46
cambie__una:-26 cambie_por:-93 cambio:-47 cambio__aceite:-53 cambio_el:-38 came:31 came__the:24 came_on:-40 can:-69
can_you:-48 cant:-40 car:-87 car_$:-55 care:144 care_of:147 carro:-62 carro_$:-50 casa:-34 casa_$:-46 casi:-35
change:-42 changed:84 changed_it:64 changed_my:-32 changed_the:40 changes:-37 changes_$:-31 cochera:-24 coming:29
como:23 compre:26 con:69 con__mecanico:39 con_la:25 conozco:-29 conozco_ese:-26 coolant:-26 could:-33 cousin:40
cuanto_por:22 dad:27 dan:-22 day:-42 day_$:-28 de__el:30 de__ya:-31 de_aceite:-36 de_hacer:41 de_la:36 de_nuevo:-27
december:25 december_$:25 dejaron:26 del:39 desde:65 desde__le:38 di:28 dia:-48 dia_$:-32 did:277 did__at:22
did__for:37 did__in:67 did__last:37 did_it:275 did_my:-48 did_that:108 did_the:50 did_you:-87 didnt:-23 divorce:-29
divorce_$:-29 do__need:-26 do__own:-35 do_it:51 do_my:-35 do_they:-24 dollars:24 domingo:25 done:171 done_$:-29
done__the:28 done_already:26 done_at:37 done_in:52 done_last:32 dont:-23 down__street:27 down_the:24 driveway:-51
driveway_$:-42 dueno:-31 dueno_$:-24 echo:-33 el:82 el__dia:-31 el__la:22 el__mes:-24 el__pasado:42 el__ya:61
el_de:26 el_domingo:25 el_mes:31 el_mismo:-49 el_recibo:23 el_servicio:24 el_viernes:24 else_$:-39 elsewhere:27
en:115 en__casa:-45 en__gasolinera:39 en__lado:38 en__taller:67 en_el:-31 en_eso:22 en_la:-28 en_otra:28 en_otro:115
enero:38 enough:-29 es:-71 es__mismo:-24 es_lo:-24 es_mecanico:-28 esa:24 ese:-42 ese__lo:-46 ese_servicio:32
ese_taller:-32 ese_ya:-43 eso:246 eso_$:35 eso__lo:56 eso__se:27 eso_se:22 eso_ya:104 esta:35 esta_$:58 esta_hecho:25
este:-28 estoy:-26 ex:-98 ex_wife:-26 falta:36 favor:24 fell:-25 fella:30 fella__the:25 filled:35 filled_it:22
finished:36 first:-36 fix:-90 fix_it:-74 fixed:119 fixed_it:28 for:27 for_a:24 for_me:39 for_that:-65 for_the:51
four:38 frenos:48 fresh:39 friend:25 frio:-23 frio_$:-23 fue:54 fui:45 game:-25 garage:-38 garage_$:-32 gasolinera:38
gasolinera_$:32 get:-140 get__done:-87 get_it:-40 getting:-23 go:-57 go__the:-28 go_to:-27 going:-36 gomas:27
gone:-22 got:-22 got__done:36 got__guy:-27 got__in:-41 got__new:35 got__of:-50 got__on:23 got_it:25 got_on:-23
got_rid:-56 got_to:-45 gracias__lo:26 gracias_ya:32 gratis:25 guy:54 guy__it:79 guys:30 hace:101 hace_falta:28
hace_un:29 hacer:74 hacer_en:39 had:285 had__done:61 had_it:117 had_my:75 had_that:45 had_to:-31 hago:-39 handled:86
handled_$:43 has:-31 have:-52 have__it:36 have__service:-23 have_an:-38 have_it:-26 he:-45 hecho:48 her:40
hermano_$:-23 hey:-28 hice:133 hice_$:27 hizo:109 hizo_el:44 hizo_mi:32 how:-52 how_much:-31 i:44 i__done:39
i__down:22 i__in:26 i__it:79 i__the:44 i__them:24 i__to:-25 i_bought:30 i_do:-37 i_go:-23 i_had:98 i_have:44
i_need:-25 i_should:-33 i_was:47 id:-64 id__to:-36 id_like:-36 if:-40 if_i:-23 iglesia:-37 ill:-85 ill__it:-72
ill_do:-23 im:-79 in:131 in__divorce:-29 in__garage:-35 in__the:22 in__weeks:-22 in_october:24 in_the:-41
inspeccion:26 inspection:68 insurance:-25 insurance__it:-25 is:-49 is__done:39 is__on:-23 is_a:-22 is_been:89
is_done:37 is_got:-24 is_handled:29 is_his:-29 is_it:-39 is_my:-26 is_that:-31 it:99 it_$:76 it__already:24 it__at:42
it__been:45 it__got:-24 it__handled:29 it__in:45 it__me:-23 it__morning:26 it__my:28 it__on:32 it__the:-26
it__totaled:-22 it_already:-34 it_and:-23 it_be:-47 it_fixed:36 it_is:46 it_myself:-32 it_now:-33 it_off:-23
it_sunday:25 it_this:24 it_to:28 it_was:24 just:64 just__that:43 kids:-26 knocked:22 la:23 la__con:26 la__es:24
la__pasada:46 la__por:-30 la__ya:28 la_alarma:-32 la_bateria:27 la_casa:-46 la_gasolinera:27 la_iglesia:-37
la_inspeccion:26 la_lista:-27 la_semana:42 lado:27 las:79 last:98 last_month:33 last_time:-60 last_week:82 late:22
le:130 le__las:23 le__los:43 le__todo:28 le_cambie:84 le_cambio:-45 le_echo:-25 leaking:23 leave:-28 les:-68 lets:-38
lets__it:-27 lets_get:-37 light:-61 light__on:-35 light_came:-32 like:-38 like_to:-33 list:59 lista:-33 lista_$:-24
listo:30 llanta:-22 llantas:56 llantas_nuevas:30 llegaron:25 lleve:62 lleve__otro:35 lleve_con:40 llevo:-38 lo:199
lo__a:-47 lo__de:44 lo__el:22 lo__en:109 lo__hacer:33 lo__listo:26 lo__por:-72 lo_arreglaron:37 lo_arreglo:-55
lo_cambie:-27 lo_dejaron:22 lo_hago:-38 lo_hice:122 lo_hicieron:81 lo_hizo:106 lo_lleve:46 lo_llevo:-41 lo_mande:28
lo_mismo:-31 lo_tiene:-43 lo_vendi:-92 longer:26 looked:46 los:55 los_frenos:30 lot:25 lube:61 mal:-86 mal_el:-24
mande:27 me_$:-38 me__arreglo:23 me__hicieron:59 me__hizo:65 me__mal:-44 me__nada:-26 me_hicieron:-51 me_la:31
me_lo:162 mecanico:25 mechanic:35 mes_$:-25 mes_pasado:33 mi:-28 mi__es:-33 mi__le:29 mi__ya:51 mi_ex:-29
mi_hermano:-24 mi_primo:28 millas:-24 mismo:-97 mismo_dia:-34 mom:-27 monday:58 monday_$:42 month_$:-35 much:-36
my:34 my__did:42 my__do:95 my__fixed:47 my__go:-25 my__oil:-36 my__put:26 my_car:-32 my_cousin:35 my_dad:27
my_driveway:-25 my_ex:-43 my_mechanic:27 my_number:-27 my_office:23 my_oil:-30 my_own:-41 my_uncle:22 myself:-32
myself_$:-80 nada:-33 need__be:-24 needed:22 never:-68 new:259 new__in:38 new__on:55 new_battery:60 new_ones:51
new_tires:70 ni:-52 no:-111 no_$:-64 no__ese:-35 no__falta:30 no__for:33 no__lo:-39 no__to:22 no__ya:41
no_conozco:-26 no_gracias:-35 no_hace:40 no_lo:-22 no_longer:30 no_me:-32 no_need:47 no_se:37 no_soy:-29 no_voy:37
not:-34 not__it:-23 now:-27 now_$:-35 nueva:23 nuevas:72 nuevas_$:47 nuevo:22 number:-68 numbers:-30 numero:-30 o:-43
october:45 october_$:46 of:53 of_$:71 of_it:-30 of_that:-24 of_the:-37 off:-29 off_$:-33 off__list:36 off_the:22
office:23 oil_changes:-37 ok:-25 old:44 on:78 on__th:22 on_in:48 on_it:-38 on_saturday:31 on_sunday:37 ones:61 or:-56
otra_parte:28 otro_$:-63 otro_carro:-40 otro_lado:58 otro_mes:-28 otro_taller:84 out:46 out_last:23 over_my:-24
own:-56 own_oil:-36 pads:83 pads_are:33 paren:-34 paren_$:-33 parenle:-51 pasada:45 pasada_$:32 pasado:39 pasado_$:27
passed:38 pedal:-26 pendiente:22 people:27 pero_ya:-23 persona:-22 please:29 por:-44 por_eso:22 por_otro:-63
por_una:-38 primo:33 proximo:24 puddle:-24 puedo:-62 put:-40 put_me:-38 put_new:35 que:-42 que__el:-24
que__hicieron:-29 que_pase:-26 quedo:149 quedo_$:39 quedo_mi:-24 quick:64 quick_lube:61 ready:-33 ready_$:-29
recall:59 recall_$:39 receipt:26 recibo:23 recien:46 records:31 remember:24 remember_$:24 replaced:92 replaced_in:36
replaced_it:24 rid:-56 rid_of:-56 right:-79 right_now:-30 rotors:44 rubber:29 said:-40 salio:34 sat:37 sat_$:42
saturday:38 saturday_$:57 se:24 se__hice:36 se__hicieron:27 se__puse:24 se__quedo:-27 se_las:27 se_lo:78 se_los:33
se_me:-50 see:-37 see_the:-25 seen:30 semana:39 semana_pasada:47 service:-67 service_guy:-23 serviced:27 servicio:83
set:40 shop:26 should:-26 si:-26 since:47 snow:-23 so:81 so__is:25 so_i:54 sold:-34 solo:-104 somebody:-23 someone:42
sorted:28 soy:-46 sticker:37 stop:-46 stop_it:-35 straight:22 sunday:65 sunday_$:69 swapped:87 take:-37 taken:122
taken__of:122 taken_care:116 taller:25 tengo:-23 tengo_el:23 tengo_otro:-27 that:69 that_$:-46 that__been:40
that__the:51 that_done:-44 that_is:66 that_last:45 that_off:46 the__for:-46 the__guy:-25 the__light:-26 the__of:-31
the_brakes:30 the_car:-38 the_divorce:-29 the_first:-31 the_game:-25 the_garage:-49 the_list:24 the_oil:41
the_pads:36 the_recall:24 the_texts:-22 the_tires:24 the_wrong:-34 them:107 there__that:27 they:34 they__to:-24
this:-22 this__his:-25 this_is:-27 this_morning:26 those:63 those_tires:27 though:30 tiene_mi:-49 time:-106
time_$:-43 time_i:-25 tire:-24 tires:56 tires_on:29 to_$:36 to__it:-47 to__that:-24 to__the:-24 to_get:-47 to_it:139
todo:76 too_$:-28 took:-39 took__of:34 took__to:57 took_care:37 took_the:-40 topped:28 topped_it:22 totaled:-26
traded:-32 traded__in:-23 traded_it:-23 trae:40 truck:36 try:-22 tuesday:41 tuesday_$:30 twice:-25 two__ago:22
un_mes:31 una:-41 uncle:36 use:-37 use_the:-31 ustedes:33 vendi:-100 vendi_$:-81 video:28 was:203 was__and:-41
was__at:27 was__for:24 was__last:32 was_done:48 was_in:40 wasnt:-30 we__the:-31 we_got:50 week:24 week_$:33
weekend:27 weekend_$:25 weeks_$:-33 weeks_ago:22 went:47 went__the:26 were:69 were__in:46 were_done:29 what:-24
what_did:-38 what_do:27 when:31 when__was:28 when_i:43 while:31 why:-35 wife:-29 wife__it:-26 will:-59 will__be:-23
will_it:-25 wipers:34 with_the:-28 work:39 works:-22 would:-30 wrong:-53 y:48 y__lo:55 y__quedo:28 y_ya:24 ya:317
ya_$:-122 ya__cambie:22 ya__de:-30 ya__di:27 ya__hace:34 ya__hice:65 ya__hicieron:33 ya__lleve:54 ya__lo:98
ya__otro:-44 ya__por:22 ya__tiene:-39 ya__vendi:-84 ya_casi:-35 ya_esta:91 ya_fue:72 ya_la:40 ya_le:123 ya_les:-59
ya_lo:118 ya_me:86 ya_no:-85 ya_parenle:-51 ya_pase:38 ya_que:-39 ya_quedo:149 ya_se:99 ya_tengo:-28 ya_tiene:30
ya_voy:-25 yeah_$:-32 yes:-36 yesterday:55 yesterday_$:52 yo:-330 yo__la:-54 yo__le:-70 yo_le:-31 yo_lo:-81 yo_no:-60
you:-71 you__did:48 you__for:23 you__it:37 you__my:-28 you__on:-42 you__the:-57 you_guys:27 you_put:-52 you_said:-40
you_see:-24 you_to:121 your_records:24 your_shop:-23
"""
