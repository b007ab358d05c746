"""What speaks for and against `done`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "done"
BIAS = -178
WEIGHTS = """\
#aban:37 #acab:38 #aced:107 #acer:63 #acia:26 #acue:35 #aded:-30 #ahor:-24 #aigh:26 #aken:127 #alan:43 #aled:-30
#aler:24 #alig:45 #alin:24 #alio:37 #alle:41 #alre:142 #alta:36 #ambi:62 #ance:84 #andl:69 #ania:27 #anic:55 #anot:43
#anta:36 #ante:36 #appe:64 #appo:-26 #appr:-27 #arad:58 #arag:-31 #aren:-83 #arma:-25 #aron:121 #arro:-73 #asad:88
#asnt:-35 #asse:26 #aten:46 #ater:51 #atio:28 #atis:25 #atte:80 #atur:35 #avor:23 #ayer:137 #back:-36 #bala:64
#bank:-31 #base:29 #bate:53 #batt:65 #beat:113 #been:150 #biar:49 #body:-28 #brak:23 #bran:37 #brot:25 #budd:34
#cabo:34 #calc:29 #camb:61 #came:39 #canc:50 #cani:24 #cant:-31 #care:141 #carr:-71 #casa:-31 #casi:-29 #cemb:25
#chan:24 #chec:44 #cher:-22 #ciat:-27 #cibo:25 #cien:31 #cker:53 #coch:-22 #coma:23 #comi:28 #como:33 #comp:107
#conf:-22 #cono:-44 #cord:40 #cous:49 #crap:-28 #ctio:66 #ctob:45 #cuer:33 #cump:26 #cupe:27 #ddle:-23 #dece:25
#desd:61 #dien:22 #dier:39 #dire:-73 #divo:-25 #dled:81 #doll:26 #domi:24 #done:153 #dont:-26 #driv:-85 #drop:-25
#duen:-26 #eady:109 #eaki:23 #ease:23 #eave:-23 #ebod:-26 #ecal:41 #ecan:24 #ecem:25 #echa:45 #ecia:-28 #ecie:28
#ecor:38 #ecti:67 #edal:-24 #eded:23 #eede:23 #eeke:25 #egar:24 #egla:22 #eglo:-43 #ejar:26 #eken:25 #eman:53
#embe:68 #emem:25 #enci:34 #endi:-42 #ener:39 #engo:-25 #enle:-50 #enme:-26 #enos:50 #enou:-24 #ensa:-31 #ente:22
#entr:-26 #eone:49 #epar:62 #epla:92 #eral:22 #erda:76 #eria:47 #eron:62 #erso:-33 #erto:-30 #ervi:48 #esda:43
#esde:61 #esia:-39 #esol:54 #esta:46 #este:30 #evas:61 #ever:-92 #eway:-56 #falt:40 #favo:23 #fice:24 #fill:37
#filt:27 #fini:28 #firs:-31 #fixe:123 #fren:34 #fres:41 #frie:32 #frio:-23 #fron:-22 #game:-28 #gara:-26 #garo:25
#gles:-53 #gnme:45 #goin:-37 #goma:23 #grat:25 #guen:-24 #guys:33 #habl:-34 #hace:178 #hago:-42 #hand:72 #hani:32
#have:-62 #hech:23 #heck:37 #hera:-22 #here:37 #hice:100 #hici:45 #hile:29 #hing:-31 #hizo:119 #hold:32 #hora:-49
#hose:55 #hous:22 #hurs:24 #iaro:50 #iate:-27 #ible:-24 #iced:30 #icie:28 #icio:90 #icke:54 #iend:26 #ient:45
#iero:50 #iert:-22 #ight:-76 #igle:-39 #ignm:45 #illa:-24 #ille:47 #imos:50 #ince:45 #inea:24 #iner:25 #ingo:24
#inis:29 #insp:87 #insu:-23 #intm:-26 #iper:32 #ires:81 #irst:-31 #ishe:30 #ismo:-78 #ista:-44 #isto:38 #iter:22
#ivew:-54 #ivor:-25 #ixed:121 #janu:22 #jaro:28 #just:64 #kend:25 #kids:-25 #lace:108 #lado:36 #lanc:48 #larm:-26
#lars:26 #last:111 #late:32 #lcom:27 #ldnt:22 #leak:29 #leas:24 #leav:-30 #lesi:-39 #lets:-39 #leve:54 #levo:-35
#ligh:-36 #lign:45 #like:-23 #line:38 #list:52 #lite:22 #llan:32 #llar:24 #lled:36 #llen:31 #ller:38 #long:23
#look:24 #lrea:142 #lsew:32 #lube:54 #mana:50 #mani:44 #mayo:23 #mber:-36 #mbia:90 #mbie:40 #mbio:-68 #mebo:-26
#meca:24 #mech:32 #memb:25 #mens:-29 #meon:49 #mero:-40 #mien:34 #mill:-30 #ming:60 #mism:-85 #mond:28 #moun:24
#mple:30 #mpli:26 #much:-33 #myse:-23 #nada:-27 #ncel:50 #ncia:25 #ncle:22 #nday:79 #nden:-36 #ndie:41 #ndle:81
#nera:27 #nero:48 #neve:-57 #nged:79 #nger:26 #nges:-39 #nico:30 #nish:29 #nmen:45 #noth:40 #noug:-24 #nozc:-26
#nsaj:-29 #nspe:87 #nsur:-23 #ntas:52 #nten:43 #ntes:44 #ntme:-26 #nuar:22 #nuev:156 #numb:-103 #nume:-34 #ober:40
#ocke:22 #octo:44 #ocup:25 #offi:24 #oing:-42 #oint:-27 #oked:44 #olan:-28 #olla:26 #olvi:31 #oman:27 #omeb:-26
#omeo:49 #omet:-25 #omin:52 #ompl:26 #ompr:32 #ompu:28 #onda:26 #ones:24 #oney:27 #onge:32 #onoz:-26 #onte:25
#ooke:44 #oola:-22 #ords:27 #orks:-22 #orqu:25 #orte:24 #otal:-30 #othe:46 #otra:-35 #ould:-78 #ouse:26 #ousi:49
#over:36 #ozco:-26 #pads:86 #paid:24 #para:47 #pare:-89 #part:35 #pasa:97 #pass:45 #past:25 #pect:75 #peda:-25
#plac:104 #plet:31 #plug:25 #poin:-27 #porq:28 #pped:81 #ppoi:-26 #ppre:-27 #prec:-31 #prim:30 #pudd:-22 #pued:-79
#pues:34 #pusi:25 #qued:124 #quic:56 #rade:-40 #rado:56 #rage:-33 #raig:40 #rake:23 #rall:22 #rand:40 #raro:-23
#rati:25 #rday:95 #read:98 #reca:41 #reco:24 #rega:-23 #rene:29 #renl:-50 #reno:40 #repa:53 #repl:95 #reso:50
#rien:30 #righ:-78 #rimo:39 #rive:-83 #rong:-54 #ront:-23 #rota:27 #roth:25 #rque:24 #rsda:27 #rson:-33 #rted:22
#rvic:48 #sada:45 #sado:47 #said:-44 #saje:-28 #sali:47 #same:-22 #satu:37 #scra:-36 #sday:70 #seen:31 #sema:53
#serv:46 #sewh:32 #shed:26 #ship:26 #shop:35 #sinc:49 #sion:26 #sist:33 #smog:22 #snow:-24 #sold:-41 #solo:-93
#sona:-28 #sort:23 #spec:87 #ssed:64 #sses:-24 #stem:23 #ster:60 #stic:52 #stop:-58 #stoy:-26 #stra:28 #stre:32
#stud:22 #sund:52 #sura:-23 #sure:-24 #swap:72 #take:82 #tale:-26 #tall:25 #tenc:30 #tend:48 #teng:-26 #tera:32
#terd:57 #teri:52 #tery:65 #text:-31 #that:87 #them:93 #then:-22 #ther:62 #they:39 #thin:-41 #this:-27 #thos:53
#thur:24 #tick:52 #time:-110 #ting:-28 #tion:95 #tire:58 #tmen:-26 #tobe:45 #todo:66 #took:-34 #tore:25 #tota:-30
#trad:-34 #trae:35 #trai:42 #tter:53 #ttin:-29 #tues:33 #turd:37 #uary:29 #uddl:-22 #uddy:34 #uede:-27 #uedo:87
#ueno:-30 #uerd:33 #uesd:36 #uest:22 #ueva:84 #uevo:62 #uick:56 #uier:-22 #uldn:22 #umbe:-103 #umer:-34 #umpl:26
#uncl:22 #unda:51 #urda:37 #ursd:27 #usin:33 #veci:30 #vend:-108 #vewa:-54 #vice:-43 #vici:91 #vorc:-25 #wapp:79
#wasn:-32 #week:83 #went:40 #were:72 #what:-29 #when:27 #whil:29 #wife:-24 #will:-59 #woul:-31 #wron:-54 #yest:57
#ysel:-23 %again_later%agree:40 %again_later%bad:37 %again_later%bring:-29 %again_later%call_off:28
%again_later%car:-41 %again_later%doubt:-32 %again_later%gone_car:-59 %again_later%message:-22
%again_later%on_way:-29 %again_later%pay_day:-29 %again_later%place:93 %again_later%question:34
%again_later%refuse:41 %again_later%season:-22 %again_later%staff:-29 %again_later%start_again:-31
%again_later%who:35 %again_later%wrong_one:30 %agree:-50 %agree%away:25 %agree%call_off:56 %agree%car_part:63
%agree%doubt:-26 %agree%family:-24 %agree%gone_car:-33 %agree%on_way:22 %agree%season:45 %agree%shift_it:34
%agree%wrong_one:22 %away:-31 %away%family:26 %away%question:29 %away%staff:22 %away%wrong_one:35 %bad:-57
%bad%bring:28 %bad%busy:-26 %bad%call_off:41 %bad%car_part:-24 %bad%do_it:-75 %bad%shift_it:35 %bad%staff:-65
%bring:-49 %bring%call_off:29 %bring%do_it:-25 %bring%family:75 %bring%leave_me:-54 %bring%odometer:28
%bring%place:29 %bring%question:36 %bring%refuse:25 %bring%season:-35 %bring%staff:28 %bring%start_again:-29
%bring%wrong_one:34 %busy:40 %busy%call_off:27 %busy%do_it:38 %busy%place:31 %busy%staff:49 %busy%wrong_one:28
%call_off:50 %call_off%car:-75 %call_off%car_part:142 %call_off%do_it:139 %call_off%elsewhere:93 %call_off%fails:104
%call_off%family:90 %call_off%gone_car:-88 %call_off%how_long:-25 %call_off%leave_me:-48 %call_off%money:33
%call_off%odometer:34 %call_off%opening:-24 %call_off%phone:-38 %call_off%place:34 %call_off%question:67
%call_off%refuse:-33 %call_off%shift_it:65 %call_off%staff:-27 %call_off%start_again:-53 %call_off%thanks:96
%call_off%who:44 %call_off%wrong_one:29 %car:-113 %car%do_it:-98 %car%gone_car:-90 %car%shift_it:-49 %car%thanks:26
%car_part:112 %car_part%do_it:107 %car_part%elsewhere:50 %car_part%fails:-87 %car_part%family:91
%car_part%gone_car:231 %car_part%leak:-50 %car_part%pay_day:-23 %car_part%refuse:-84 %car_part%season:33
%car_part%shift_it:-22 %car_part%start_again:-26 %car_part%thanks:-27 %car_part%wrong_one:223 %do_it:443
%do_it%doubt:-40 %do_it%elsewhere:198 %do_it%fails:23 %do_it%family:304 %do_it%gone_car:126 %do_it%how_long:-42
%do_it%leak:-27 %do_it%noise:28 %do_it%odometer:77 %do_it%on_way:60 %do_it%pay_day:133 %do_it%question:-22
%do_it%season:141 %do_it%shift_it:-54 %do_it%staff:67 %do_it%start_again:-40 %do_it%thanks:76 %do_it%wrong_one:67
%doubt:-97 %doubt%elsewhere:-30 %doubt%refuse:-24 %doubt%shift_it:-29 %doubt%wrong_one:-38 %elsewhere:258
%elsewhere%fails:47 %elsewhere%gone_car:-78 %elsewhere%how_long:34 %elsewhere%leave_me:25 %elsewhere%money:50
%elsewhere%odometer:-31 %elsewhere%on_way:30 %elsewhere%phone:32 %elsewhere%question:39 %elsewhere%refuse:-42
%elsewhere%season:-26 %fails:-25 %fails%question:27 %fails%refuse:59 %fails%thanks:62 %fails%wrong_one:-31 %family:78
%family%noise:39 %family%on_way:26 %family%refuse:73 %family%wrong_one:-69 %gone_car:-143 %gone_car%how_long:-26
%gone_car%odometer:-27 %gone_car%on_way:28 %gone_car%shift_it:41 %gone_car%thanks:31 %gone_car%wrong_one:122
%how_long:-25 %how_long%place:28 %how_long%question:-23 %leak:-35 %leak%staff:26 %leave_me:-170 %leave_me%message:-25
%machine:-22 %meaning:-22 %message:-61 %message%wrong_one:-25 %money:28 %money%question:55 %money%staff:30
%money%wrong_one:26 %odometer:-60 %odometer%shift_it:-25 %odometer%wrong_one:-34 %on_way%place:-24 %on_way%refuse:48
%on_way%staff:33 %on_way%wrong_one:54 %opening:-30 %pay_day:67 %pay_day%refuse:36 %pay_day%season:29
%pay_day%staff:39 %phone:-63 %phone%staff:-25 %place%question:-28 %place%refuse:33 %place%shift_it:69
%place%wrong_one:43 %question:-128 %question%refuse:34 %question%season:-30 %question%wrong_one:64 %refuse:-59
%refuse%season:46 %refuse%shift_it:-28 %refuse%staff:-25 %refuse%wrong_one:-112 %season:70 %season%wrong_one:26
%shake:-27 %shift_it:-125 %shift_it%staff:-37 %shift_it%who:22 %shift_it%wrong_one:-87 %staff:65 %staff%wrong_one:56
%start_again:-70 %thanks:34 %who%wrong_one:30 %wrong_one:159 @?:-127 @after_visit:-245 @car:37 @confirm:-121 @day:-42
@later:49 @nothing:-23 @odometer:-56 @offers:-91 @reading:-69 @time:-27 @walk_in:50 ^_all:113 ^_already:64 ^_bank:-25
^_been:73 ^_can:-56 ^_cant:-25 ^_changed:33 ^_could:-28 ^_desde:45 ^_do:-72 ^_done:27 ^_el:54 ^_enough:-24 ^_eso:116
^_going:-22 ^_had:152 ^_hey:-27 ^_how:-73 ^_i:34 ^_id:-58 ^_ill:-79 ^_im:-45 ^_in:-41 ^_is:-75 ^_it:105 ^_just:29
^_lets:-31 ^_lo:-73 ^_me:-36 ^_my:-45 ^_new:22 ^_no:-22 ^_oil:59 ^_que:-25 ^_se:-70 ^_si:-27 ^_sold:-24 ^_someone:77
^_stop:-29 ^_thanks:-64 ^_that:50 ^_the:28 ^_they:42 ^_this:-35 ^_those:64 ^_took:42 ^_traded:-28 ^_what:-88
^_when:-23 ^_will:-27 ^_ya:107 ^_yep:24 ^_yes:-22 ^_yo:-239 ^_you:-22 a:-46 a__battery:22 a__for:-24 a__on:-27
a_buddy:32 a_guy:-28 a_la:-66 a_mi:-25 a_new:40 acabo:34 aceite_$:-69 ago:39 ahi:38 ahora:-22 alarma:-25 alignment:45
all:103 all__my:-22 all_day:-22 all_over:-23 already:142 already__it:48 already_did:26 an:-31 an__change:-25
an_alignment:23 an_appointment:-33 an_oil:-25 and__it:37 and_it:-51 ando:23 another:43 another_shop:44 antes:28
antes_de:37 any:-22 appointment:-24 appreciate:-26 appreciate_it:-23 arreglo:-43 arreglo_mi:24 as:54 ask:-26 at:79
at_$:-27 at_the:72 ayer:145 ayer_$:46 back:-31 bank:-31 base:30 bateria:54 bateria_$:23 battery:68 be:-70 be_done:-55
beat:113 beat__to:120 beat_you:96 been:150 been__since:25 been__to:22 been_done:65 bien:-22 brakes:34 brakes__done:23
brakes_were:25 brand:29 brother:23 buddy:28 but:33 by:73 by_my:46 call:-39 call_me:-26 cambiaron:50 cambie:39
cambie__una:-28 cambie_por:-90 cambio:-53 cambio__aceite:-49 cambio_el:-36 came:40 came_on:-38 can:-74 can_you:-51
cancel:24 cant:-31 car:-83 car_$:-44 care:158 care__it:23 care_of:161 carro:-79 carro_$:-51 casa:-31 casa_$:-46
casi:-29 change:-51 changed:79 changed_it:59 changed_my:-31 changed_the:36 changes:-38 changes_$:-31 cochera:-22
coming:28 como:33 compre:30 con:63 con__mecanico:31 con_la:22 conozco:-26 coolant:-22 could:-34 cousin:44 dad:28
day:-48 day_$:-32 de:22 de__el:31 de_aceite:-22 de_la:32 de_nuevo:-24 december:25 december_$:25 dejaron:28 del:42
desde:61 di:32 dia:-51 dia_$:-35 did:256 did__get:-29 did__in:56 did__last:41 did_i:-22 did_it:271 did_my:-46
did_that:108 did_the:37 did_you:-91 divorce:-23 do__need:-29 do__own:-33 do_it:60 do_my:-33 do_they:-26 dollars:26
domingo:25 done:154 done_$:-37 done__the:30 done_already:31 done_at:36 done_in:45 done_last:35 dont:-26 down:22
down__street:30 down_the:27 driveway:-54 driveway_$:-36 dueno:-26 echo:-27 el:65 el__dia:-36 el__pasado:50 el__ya:41
el_de:31 el_dealer:22 el_domingo:25 el_mes:37 el_mismo:-57 el_recibo:25 el_servicio:27 el_viernes:25 else_$:-36
elsewhere:32 en:116 en__casa:-46 en__gasolinera:27 en__lado:33 en__taller:66 en_el:-26 en_eso:23 en_la:-27 en_otra:28
en_otro:107 enero:40 enough:-24 es:-64 es_mecanico:-25 esa:26 ese:-36 ese__lo:-47 ese_servicio:34 ese_taller:-29
ese_ya:-42 eso:248 eso_$:38 eso__lo:50 eso__se:28 eso_se:22 eso_ya:105 esta:38 esta_$:51 esta_hecho:27 estoy:-26
ex:-89 falta:38 favor:23 fell:-25 filled:37 filled_it:23 finished:30 first:-31 fix:-94 fix_it:-83 fixed:123
fixed_it:25 for_that:-59 for_the:50 frenos:50 friend:29 frio:-23 frio_$:-23 front:-22 fue:46 fui:56 game:-24
garage:-31 garage_$:-30 gasolinera:27 gasolinera_$:27 get:-154 get__done:-90 get_it:-40 go:-46 go__the:-23 go_to:-23
going:-37 gomas:26 got__done:35 got__in:-34 got__new:34 got__of:-48 got_it:37 got_on:-22 got_rid:-50 got_to:-41
gracias__lo:30 gracias_ya:30 gratis:25 guy:55 guy_$:-22 guy__it:78 guys:33 hace:109 hace_falta:35 hace_un:28 hacer:74
had:294 had__done:63 had_it:113 had_my:76 had_that:34 had_the:23 hago:-42 hago_$:-26 handled:81 handled_$:45 has:-23
have:-53 have__it:35 have__service:-25 have_an:-33 have_it:-25 he:-31 hecho:40 her:42 hey:-27 hice:108 hice_$:31
hice_el:22 hizo:119 hizo_el:46 hizo_mi:33 how:-68 how_much:-39 i:25 i__done:39 i__down:24 i__in:27 i__it:63 i__the:33
i__them:25 i__to:-31 i_bought:27 i_do:-34 i_go:-23 i_had:100 i_have:39 i_need:-29 i_should:-36 i_was:49 id:-62
id__to:-36 id_like:-35 if:-28 iglesia:-39 ill:-91 ill__it:-78 ill_do:-22 im:-63 in:114 in__garage:-35 in__the:30
in_for:26 in_january:22 in_october:24 in_the:-32 inspection:64 insurance:-23 insurance__it:-22 is:-47 is__done:32
is_been:89 is_done:37 is_got:-22 is_his:-26 is_it:-33 is_my:-29 is_that:-26 it:130 it_$:74 it__at:44 it__been:52
it__done:-26 it__got:-22 it__in:53 it__on:37 it_and:-23 it_be:-55 it_fixed:39 it_is:67 it_myself:-36 it_now:-32
it_sunday:28 it_to:26 january:22 just:68 kids:-25 la__pasada:42 la__por:-29 la__ya:31 la_bateria:23 la_casa:-46
la_cita:25 la_cochera:-22 la_iglesia:-39 la_lista:-29 la_llanta:-22 la_semana:39 lado:27 las:53 las__en:24 last:113
last_month:38 last_time:-57 last_week:85 late:23 le:104 le__los:49 le__todo:28 le_cambiaron:27 le_cambie:65
le_cambio:-46 leaking:23 les:-70 lets:-39 lets__it:-28 lets_get:-40 light:-48 light__on:-32 light_came:-28 like:-22
like_to:-33 list:42 lista:-36 lista_$:-25 listo:47 literally:22 llanta:-28 llantas:53 lleve:54 lleve__otro:37
llevo:-35 lo:206 lo__a:-54 lo__de:40 lo__el:28 lo__en:121 lo__hacer:36 lo__listo:28 lo__por:-68 lo_arreglaron:36
lo_arreglo:-62 lo_dejaron:24 lo_hago:-41 lo_hice:99 lo_hicieron:75 lo_hizo:115 lo_lleve:48 lo_llevo:-33 lo_mande:33
lo_mismo:-24 lo_tiene:-45 lo_vendi:-88 longer:28 looked:39 los:71 los_frenos:28 lot:23 lube:54 mal:-75 mande:32
me:-24 me_$:-48 me__hicieron:52 me__hizo:71 me__mal:-38 me__nada:-25 me_hicieron:-42 me_la:28 me_lo:163 mecanico:25
mechanic:32 mes:27 mes_$:-24 mes_pasado:41 mi__es:-29 mi__le:31 mi__ya:51 mi_hermano:-26 mi_primo:34 millas:-32
millas_$:-24 mismo:-85 mismo_dia:-38 mom:-25 monday:28 month_$:-31 much:-42 my__and:22 my__did:34 my__do:97
my__fixed:42 my__go:-24 my__oil:-34 my_car:-36 my_cousin:38 my_dad:28 my_driveway:-27 my_ex:-38 my_number:-30
my_office:24 my_oil:-24 my_own:-40 myself:-23 myself_$:-73 nada:-35 need__be:-26 need_that:-25 needed:23 never:-54
new:247 new__in:26 new__on:53 new_battery:59 new_tires:80 ni:-61 no:-144 no_$:-63 no__ese:-34 no__falta:37 no__lo:-43
no__to:24 no__ya:40 no_conozco:-23 no_gracias:-27 no_hace:48 no_longer:33 no_me:-27 no_need:46 no_se:31 no_soy:-42
no_voy:23 not:-23 now:-23 now_$:-24 nueva:23 nuevas:61 nuevas_$:46 number:-73 number_$:-26 numero:-33 o:-37
october:45 october_$:46 of:69 of_$:77 of_the:-31 off:-27 off_$:-30 off__list:24 office:24 oil_changed:23
oil_changes:-37 ok:-27 old:27 on:72 on_it:-34 on_monday:24 on_saturday:32 on_sunday:36 ones:23 or:-53 otra:-28
otra_parte:28 otro_$:-64 otro_carro:-39 otro_lado:55 otro_mes:-26 otro_taller:88 out:54 out_last:23 over:29
over_my:-23 over_the:22 own:-52 own_oil:-34 pads:86 pads_are:37 paid:24 paren:-33 paren_$:-31 parenle:-50
parts_store:22 pasada:41 pasada_$:34 pasado:41 pasado_$:29 passed:43 pedal:-23 pero_ya:-24 persona:-23 place:24
please:22 por:-40 por_eso:23 por_otro:-59 por_una:-39 porque:22 primo:39 puddle:-22 puedo:-52 put:-27 put__in:23
put_me:-30 put_new:36 que:-48 que__el:-25 que_pase:-25 quedo:139 quedo_$:38 quick:56 quick_lube:54 ready:-33
ready_$:-28 recall:57 recall_$:41 recibo:25 recien:28 records:28 remember:25 remember_$:25 replaced:107
replaced_in:38 rid:-50 rid_of:-50 right:-77 right_now:-32 said:-44 salio:37 sat:37 sat_$:41 saturday:34 saturday_$:58
say:-25 se:30 se__cambie:24 se__hice:22 se__hicieron:26 se__quedo:-27 se_lo:75 se_los:37 se_me:-48 see:-48
see_the:-24 semana:41 semana_pasada:43 service:-75 serviced:31 servicio:91 servicio_$:23 set:48 set_$:22 shop:36
should:-28 since:49 sistema:23 smog:22 snow:-24 so:57 so__is:29 so_i:49 sold:-40 solo:-93 somebody:-26 someone:43
sorted:25 soy:-57 sticker:41 stop:-49 stop_it:-27 store:25 su_sistema:23 sunday:61 sunday_$:62 swapped:79 take:-31
taken:128 taken__of:129 taken_care:122 taller:34 tengo:-25 tengo_el:24 tengo_otro:-27 thanks_$:24 that:87
that__been:31 that__the:42 that_done:-39 that_is:59 that_last:52 that_off:37 the:70 the__changed:22 the__for:-45
the__guy:-28 the__of:-24 the__on:27 the__was:22 the_brakes:28 the_car:-33 the_dealership:22 the_driveway:-22
the_first:-27 the_game:-24 the_garage:-39 the_oil:30 the_pads:35 the_street:22 the_tires:33 the_wrong:-33 them:93
then:-22 there__that:29 they:34 this:-27 this__his:-26 this_is:-28 this_morning:25 those:53 those_tires:27
thursday:27 tiene:25 time:-97 time_$:-38 tire:-25 tires:82 tires__on:23 to:30 to_$:32 to__it:-43 to__that:-25
to__the:-23 to_be:-22 to_get:-44 to_it:125 todo:71 too_$:-29 took:-34 took__of:41 took__to:53 took_care:45
took_the:-32 topped:23 topped_it:24 totaled:-26 traded:-30 traded__in:-23 traded_it:-23 trae:36 truck:22 tuesday:36
tuesday_$:25 two__ago:23 un_mes:28 una:-35 use:-39 vendi:-96 vendi_$:-79 vez:-22 voy:-24 was:205 was__and:-45
was__at:30 was__for:30 was__last:35 was_done:38 was_in:47 wasnt:-32 we__the:-31 we_got:49 week:36 week_$:45
weekend:26 weekend_$:30 weeks:22 weeks_$:-27 went:40 went__the:29 were:75 were__in:46 were_done:30 what:-37
what_did:-40 what_do:30 when:38 when__was:34 when_i:51 while:29 why:-28 wife:-23 wife__it:-24 will:-59 will__be:-28
will_it:-30 work:26 works:-22 would:-30 wrong:-54 y:40 y__lo:45 y__quedo:30 y_no:31 ya:369 ya_$:-132 ya__de:-27
ya__hace:35 ya__hice:57 ya__hicieron:31 ya__la:-22 ya__lleve:46 ya__lo:97 ya__los:26 ya__otro:-37 ya__tengo:22
ya__tiene:-41 ya__vendi:-81 ya_casi:-28 ya_esta:87 ya_fue:74 ya_la:35 ya_le:107 ya_les:-59 ya_lo:114 ya_me:91
ya_no:-75 ya_parenle:-50 ya_pase:34 ya_que:-34 ya_quedo:137 ya_se:95 ya_tengo:-28 ya_tiene:38 ya_voy:-24 yeah_$:-36
yep:23 yes:-34 yesterday:57 yesterday_$:52 yo:-353 yo__la:-56 yo__le:-62 yo_le:-40 yo_lo:-90 yo_mismo:25 yo_ni:-22
yo_no:-64 you:-101 you__did:44 you__for:25 you__my:-34 you__on:-42 you__the:-50 you_got:-22 you_guys:30 you_put:-43
you_said:-44 you_see:-24 you_to:105 your_shop:-25
"""
