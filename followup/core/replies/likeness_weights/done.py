"""What speaks for and against `done`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "done"
BIAS = -158
WEIGHTS = """\
#aban:29 #acab:32 #aced:89 #acer:49 #acia:23 #acue:28 #aded:-22 #ahor:-21 #aigh:20 #aken:96 #alan:34 #aled:-24
#aler:25 #alig:36 #alin:20 #alio:29 #alle:35 #alre:129 #alta:28 #ambi:51 #ance:65 #andl:49 #ania:22 #anic:44 #anks:25
#anot:31 #anta:28 #ante:27 #appe:46 #appo:-19 #appr:-19 #arad:40 #arag:-24 #aren:-55 #arma:-20 #aron:93 #arro:-57
#asad:68 #asnt:-23 #asse:18 #asta:-18 #aten:36 #ater:38 #atio:22 #atis:19 #atte:64 #atur:29 #ayer:106 #back:-30
#bala:52 #bank:-24 #base:24 #bate:41 #batt:52 #beat:83 #been:115 #biar:36 #body:-21 #brak:21 #bran:29 #brot:21
#budd:26 #cabo:27 #calc:23 #camb:50 #came:32 #canc:37 #cani:19 #cant:-28 #care:111 #carr:-56 #casa:-19 #casi:-21
#cemb:18 #chec:35 #cher:-18 #ciat:-19 #cibo:20 #cien:25 #cker:42 #coma:18 #comi:21 #como:25 #comp:83 #conf:-18
#cono:-30 #cord:31 #cous:38 #crap:-21 #ctio:49 #ctob:31 #cuer:26 #cump:20 #cupe:21 #dece:18 #desd:45 #dien:18
#dier:30 #dire:-51 #dled:59 #doll:21 #domi:19 #done:120 #dont:-22 #driv:-66 #drop:-21 #duen:-21 #eady:105 #eale:23
#ebod:-20 #ecal:32 #ecan:19 #ecem:18 #echa:36 #ecia:-20 #ecie:22 #ecor:29 #ecti:49 #edal:-18 #eded:19 #eede:19
#eeke:20 #eeks:22 #egar:19 #eglo:-24 #ejar:22 #eken:20 #else:20 #eman:41 #embe:48 #emem:18 #enci:28 #endi:-31
#ener:27 #engo:-22 #enle:-33 #enme:-22 #enos:39 #ensa:-26 #entr:-21 #eone:34 #epar:43 #epla:77 #erda:58 #eria:35
#eron:54 #erso:-25 #erto:-21 #ervi:40 #esda:32 #esde:45 #esia:-28 #esol:38 #esta:35 #este:19 #evas:48 #ever:-67
#eway:-44 #ewhe:19 #falt:32 #fice:19 #fill:30 #filt:22 #fini:22 #firs:-23 #fixe:101 #fren:28 #fres:33 #frie:26
#game:-21 #gara:-20 #garo:20 #gles:-39 #gnme:36 #goin:-29 #goma:18 #grat:18 #guen:-19 #guys:22 #habl:-27 #hace:134
#hago:-33 #hand:51 #hani:25 #have:-48 #hech:20 #heck:29 #hera:-18 #here:30 #hice:78 #hici:42 #hile:24 #hing:-27
#hizo:95 #hold:25 #hora:-43 #hose:40 #hurs:18 #iaro:38 #iate:-19 #ible:-18 #iced:25 #icie:28 #icio:71 #icke:42
#ient:35 #iero:43 #ight:-55 #igle:-28 #ignm:36 #ille:37 #imos:36 #ince:32 #inea:20 #iner:20 #ingo:19 #inis:22
#insp:66 #intm:-19 #iper:23 #ires:67 #irst:-23 #ishe:23 #ismo:-63 #ista:-37 #isto:31 #ivew:-41 #ixed:98 #janu:18
#jaro:23 #just:45 #kend:20 #kids:-18 #lace:89 #lado:32 #lanc:38 #larm:-20 #lars:21 #last:88 #late:26 #lcom:22
#leak:19 #leav:-21 #lesi:-28 #lets:-28 #leve:40 #levo:-25 #ligh:-27 #lign:36 #line:31 #list:42 #llan:25 #llar:19
#lled:28 #llen:25 #ller:33 #long:18 #lrea:129 #lsew:27 #lube:41 #mana:39 #mani:36 #mayo:18 #mber:-30 #mbia:68
#mbie:32 #mbio:-49 #mebo:-20 #meca:19 #mech:25 #memb:18 #mens:-24 #meon:34 #mero:-34 #mien:27 #mill:-21 #ming:46
#mism:-70 #mond:21 #moun:19 #mple:24 #mpli:21 #much:-26 #nada:-20 #ncel:37 #ncia:20 #nday:59 #nden:-28 #ndie:32
#ndle:59 #nera:22 #nero:33 #neve:-40 #nged:62 #nger:20 #nges:-28 #nico:25 #nish:22 #nmen:36 #noth:29 #nozc:-18
#nsaj:-24 #nspe:66 #ntas:41 #nten:34 #ntes:34 #ntme:-19 #nuar:18 #nuev:126 #numb:-77 #nume:-29 #ober:26 #octo:29
#ocup:19 #offi:19 #oing:-33 #oint:-20 #oked:33 #olan:-20 #olla:21 #olvi:19 #oman:22 #omeb:-20 #omeo:34 #omet:-20
#omin:40 #ompl:20 #ompr:24 #ompu:23 #onda:20 #oney:22 #onge:25 #onoz:-18 #onte:20 #ooke:33 #ords:21 #orqu:20 #orte:19
#otal:-24 #othe:35 #otra:-27 #ould:-60 #ouse:20 #ousi:38 #over:28 #ozco:-18 #pads:68 #paid:18 #para:29 #pare:-60
#part:30 #pasa:74 #pass:31 #past:20 #pect:55 #peda:-19 #plac:85 #plet:24 #plug:20 #poin:-19 #porq:22 #pped:60
#ppoi:-19 #ppre:-19 #prec:-23 #prim:22 #pued:-64 #pues:25 #pusi:21 #qued:94 #quic:43 #rade:-31 #rado:38 #rage:-25
#raig:31 #rake:21 #rand:31 #raro:-19 #rati:18 #rday:74 #read:96 #reca:32 #reco:20 #rega:-19 #rene:23 #renl:-33
#reno:32 #repa:36 #repl:79 #reso:35 #rien:24 #righ:-59 #rimo:29 #rive:-64 #rong:-42 #ront:-18 #rota:21 #roth:21
#rque:19 #rsda:20 #rson:-25 #rvic:40 #sada:34 #sado:37 #said:-30 #saje:-24 #sali:36 #same:-18 #satu:30 #scra:-27
#sday:52 #seen:26 #sema:40 #serv:39 #sewh:27 #shed:20 #ship:22 #shop:30 #sinc:36 #sion:19 #sist:26 #smog:18 #sold:-33
#solo:-69 #sona:-21 #sort:18 #spec:65 #ssed:46 #sses:-19 #stem:18 #ster:45 #stic:43 #stop:-45 #stoy:-22 #stra:22
#stre:26 #stud:18 #sund:38 #sure:-19 #swap:52 #take:60 #tale:-21 #tall:23 #tard:-18 #tenc:24 #tend:37 #teng:-23
#tera:25 #terd:43 #teri:39 #tery:52 #text:-25 #that:73 #them:68 #then:-18 #ther:45 #they:35 #thin:-35 #this:-20
#thos:38 #thur:18 #tick:42 #time:-82 #ting:-22 #tion:71 #tire:51 #tmen:-19 #tobe:31 #todo:51 #took:-22 #tore:19
#tota:-24 #trad:-25 #trae:27 #trai:33 #tter:41 #ttin:-22 #tues:25 #turd:30 #uary:23 #uddy:26 #uede:-23 #uedo:66
#ueno:-24 #uerd:26 #uesd:27 #ueva:69 #uevo:49 #uick:43 #uier:-20 #umbe:-77 #umer:-29 #umpl:20 #unda:37 #urda:30
#ursd:20 #usie:18 #usin:25 #veci:23 #vend:-82 #vewa:-41 #vice:-31 #vici:71 #wapp:57 #wasn:-21 #week:74 #went:31
#were:51 #what:-27 #when:21 #whil:24 #will:-43 #woul:-27 #wron:-41 #yest:43 %again_later%agree:29 %again_later%bad:29
%again_later%bring:-23 %again_later%call_off:26 %again_later%car:-29 %again_later%doubt:-27 %again_later%elsewhere:21
%again_later%gone_car:-40 %again_later%message:-19 %again_later%on_way:-25 %again_later%pay_day:-24
%again_later%place:71 %again_later%question:22 %again_later%refuse:27 %again_later%season:-18
%again_later%shift_it:20 %again_later%staff:-22 %again_later%start_again:-28 %again_later%who:28
%again_later%wrong_one:21 %agree:-53 %agree%away:19 %agree%call_off:41 %agree%car_part:46 %agree%doubt:-21
%agree%gone_car:-24 %agree%season:35 %agree%shift_it:22 %away:-24 %away%family:21 %away%question:22
%away%wrong_one:29 %bad:-45 %bad%bring:22 %bad%busy:-20 %bad%call_off:31 %bad%car_part:-19 %bad%do_it:-55
%bad%shift_it:28 %bad%staff:-51 %bring:-43 %bring%do_it:-19 %bring%family:59 %bring%leave_me:-43 %bring%odometer:20
%bring%place:21 %bring%question:25 %bring%season:-25 %bring%staff:21 %bring%start_again:-24 %bring%wrong_one:26
%busy:28 %busy%call_off:21 %busy%do_it:28 %busy%place:24 %busy%staff:37 %busy%wrong_one:20 %call_off:56
%call_off%car:-61 %call_off%car_part:109 %call_off%do_it:131 %call_off%elsewhere:80 %call_off%fails:78
%call_off%family:74 %call_off%gone_car:-65 %call_off%how_long:-22 %call_off%leave_me:-32 %call_off%money:22
%call_off%odometer:37 %call_off%phone:-32 %call_off%place:32 %call_off%question:47 %call_off%refuse:-43
%call_off%shift_it:55 %call_off%staff:-22 %call_off%start_again:-43 %call_off%thanks:71 %call_off%who:34
%call_off%wrong_one:21 %car:-96 %car%do_it:-76 %car%fails:-18 %car%gone_car:-74 %car%refuse:-22 %car%shift_it:-36
%car%thanks:21 %car_part:108 %car_part%do_it:100 %car_part%elsewhere:40 %car_part%fails:-63 %car_part%family:72
%car_part%gone_car:174 %car_part%leak:-37 %car_part%leave_me:-18 %car_part%pay_day:-18 %car_part%refuse:-65
%car_part%season:31 %car_part%start_again:-19 %car_part%thanks:-21 %car_part%wrong_one:178 %do_it:402
%do_it%doubt:-32 %do_it%elsewhere:169 %do_it%fails:18 %do_it%family:247 %do_it%gone_car:97 %do_it%how_long:-36
%do_it%leak:-21 %do_it%noise:19 %do_it%odometer:60 %do_it%on_way:47 %do_it%pay_day:101 %do_it%question:-24
%do_it%season:109 %do_it%shift_it:-40 %do_it%staff:49 %do_it%start_again:-31 %do_it%thanks:59 %do_it%wrong_one:62
%doubt:-80 %doubt%elsewhere:-24 %doubt%refuse:-20 %doubt%shift_it:-25 %doubt%wrong_one:-31 %elsewhere:229
%elsewhere%fails:38 %elsewhere%gone_car:-52 %elsewhere%how_long:24 %elsewhere%money:37 %elsewhere%odometer:-22
%elsewhere%on_way:23 %elsewhere%phone:25 %elsewhere%question:29 %elsewhere%refuse:-31 %elsewhere%season:-18
%fails:-22 %fails%question:20 %fails%refuse:40 %fails%thanks:43 %fails%wrong_one:-23 %family:80 %family%noise:28
%family%on_way:20 %family%refuse:55 %family%wrong_one:-45 %gone_car:-118 %gone_car%how_long:-20
%gone_car%odometer:-23 %gone_car%on_way:21 %gone_car%refuse:-18 %gone_car%shift_it:33 %gone_car%thanks:24
%gone_car%wrong_one:96 %how_long:-28 %how_long%place:22 %how_long%question:-21 %leak:-29 %leak%staff:18
%leave_me:-125 %leave_me%message:-21 %meaning:-21 %message:-56 %message%wrong_one:-19 %money%question:38
%money%staff:24 %money%wrong_one:19 %odometer:-41 %odometer%shift_it:-19 %odometer%wrong_one:-29 %on_way%place:-19
%on_way%refuse:34 %on_way%staff:26 %on_way%wrong_one:42 %opening:-24 %pay_day:50 %pay_day%refuse:25
%pay_day%season:22 %pay_day%staff:30 %phone:-56 %phone%staff:-21 %place%question:-22 %place%refuse:26
%place%shift_it:53 %place%wrong_one:33 %question:-125 %question%refuse:21 %question%season:-24 %question%wrong_one:44
%refuse:-54 %refuse%season:32 %refuse%shift_it:-25 %refuse%staff:-21 %refuse%thanks:20 %refuse%wrong_one:-88
%season:62 %season%wrong_one:22 %shake:-21 %shift_it:-98 %shift_it%staff:-29 %shift_it%wrong_one:-66 %staff:44
%staff%wrong_one:37 %start_again:-60 %thanks:41 %who%wrong_one:24 %wrong_one:145 @?:-107 @after_visit:-205 @car:21
@confirm:-119 @confirm_stop:-21 @day:-40 @later:31 @nothing:-36 @odometer:-56 @offers:-82 @reading:-54 @time:-29
@walk_in:31 ^_all:77 ^_already:59 ^_bank:-19 ^_been:52 ^_can:-43 ^_cant:-23 ^_changed:22 ^_could:-21 ^_desde:32
^_do:-56 ^_done:22 ^_el:40 ^_eso:86 ^_had:120 ^_hey:-20 ^_how:-59 ^_i:23 ^_id:-43 ^_ill:-55 ^_im:-35 ^_in:-25
^_is:-61 ^_it:77 ^_just:23 ^_lets:-22 ^_lo:-53 ^_me:-29 ^_my:-26 ^_no:-24 ^_oil:42 ^_que:-21 ^_se:-49 ^_si:-25
^_sold:-19 ^_someone:52 ^_stop:-20 ^_thanks:-39 ^_that:36 ^_the:22 ^_they:34 ^_this:-25 ^_those:47 ^_took:30
^_traded:-20 ^_what:-72 ^_will:-21 ^_ya:119 ^_yep:19 ^_yo:-180 a:-38 a__for:-18 a__on:-20 a_buddy:24 a_guy:-21
a_la:-49 a_mi:-19 a_new:31 acabo:27 aceite_$:-50 ago:32 ahi:29 ahora:-19 alarma:-20 alignment:36 all:70 already:129
already__it:42 already_did:23 an:-24 an__change:-22 an_alignment:18 an_appointment:-23 an_oil:-22 and__it:29
and_it:-36 another:32 another_shop:32 antes:22 antes_de:29 any:-19 appreciate:-19 arreglo:-24 arreglo_mi:18 as:42
ask:-19 at:61 at_$:-22 at_the:60 ayer:113 ayer_$:34 back:-26 bank:-24 base:24 bateria:41 battery:54 be:-55
be_done:-41 beat:83 beat__to:89 beat_you:69 been:115 been__to:18 been_done:46 brakes:28 brakes_were:18 brand:23
brother:20 buddy:22 but:22 by:58 by_my:35 call:-32 call_me:-21 cambiaron:38 cambie:31 cambie__una:-20 cambie_por:-62
cambio:-37 cambio__aceite:-34 cambio_el:-23 came:33 came_on:-28 can:-59 can_you:-37 cant:-28 car:-63 car_$:-31
care:123 care__it:20 care_of:126 carro:-62 carro_$:-36 casa:-19 casa_$:-31 casi:-21 change:-45 changed:62
changed_it:44 changed_my:-25 changed_the:28 changes:-27 changes_$:-21 coming:21 como:25 compre:23 con:46
con__mecanico:22 conozco:-18 could:-27 cousin:34 dad:23 day:-35 day_$:-23 de__el:24 de_aceite:-18 de_la:23
de_nuevo:-18 december:18 december_$:18 dejaron:23 del:32 desde:45 di:26 dia:-42 dia_$:-27 did:200 did__get:-24
did__in:45 did__last:30 did_it:216 did_my:-34 did_that:80 did_the:28 did_you:-72 do__need:-21 do__own:-23 do_it:43
do_my:-23 do_they:-18 dollars:21 domingo:19 done:121 done_$:-31 done__the:25 done_already:24 done_at:29 done_in:34
done_last:27 dont:-22 down__street:24 down_the:22 driveway:-41 driveway_$:-27 dueno:-20 echo:-23 el:51 el__dia:-28
el__pasado:39 el__ya:32 el_de:25 el_domingo:20 el_mes:28 el_mismo:-46 el_recibo:20 el_servicio:21 el_viernes:19
else_$:-25 elsewhere:27 en:89 en__casa:-31 en__gasolinera:22 en__lado:29 en__taller:50 en_el:-18 en_la:-20 en_otra:22
en_otro:84 enero:27 es:-53 esa:20 ese:-24 ese__lo:-33 ese_servicio:27 ese_taller:-20 ese_ya:-29 eso:188 eso_$:30
eso__lo:38 eso__se:20 eso_se:18 eso_ya:78 esta:28 esta_$:36 esta_hecho:22 este:-18 estoy:-21 ex:-63 falta:31 fell:-19
filled:30 filled_it:18 finished:23 first:-23 fix:-67 fix_it:-58 fixed:101 fixed_$:18 fixed_it:21 for_that:-40
for_the:37 frenos:39 friend:24 fue:29 fui:45 game:-18 garage:-24 garage_$:-22 gasolinera:22 gasolinera_$:22 get:-113
get__done:-63 get_it:-28 go:-33 going:-29 gomas:21 got:24 got__done:27 got__in:-24 got__new:26 got__of:-32 got_it:36
got_rid:-34 got_to:-30 gracias__lo:22 gracias_ya:22 gratis:19 guy:40 guy__it:53 guys:22 hace:81 hace_falta:28
hace_un:19 hacer:58 had:228 had__done:50 had_it:89 had_my:54 had_that:28 had_the:19 had_to:-18 hago:-33 hago_$:-19
handled:59 handled_$:33 have:-41 have__it:24 have__service:-18 have_an:-23 have_it:-18 he:-22 hecho:32 her:32 hey:-20
hice:85 hice_$:23 hicieron:20 hizo:95 hizo_el:37 hizo_mi:25 how:-56 how_much:-31 i__done:27 i__down:19 i__in:20
i__it:45 i__the:26 i__to:-24 i_bought:20 i_do:-24 i_had:71 i_have:27 i_need:-22 i_should:-25 i_was:37 id:-47
id__to:-27 id_like:-25 if:-24 iglesia:-28 ill:-66 ill__it:-53 im:-52 in:95 in__garage:-25 in__the:23 in_for:19
in_january:18 in_the:-20 inspection:47 is:-45 is__done:23 is_been:68 is_done:29 is_his:-18 is_it:-28 is_my:-22
is_that:-21 it:114 it_$:54 it__at:33 it__been:42 it__done:-18 it__in:43 it__on:27 it_be:-41 it_fixed:31 it_is:54
it_myself:-23 it_now:-25 it_sunday:22 january:18 just:48 kids:-18 la__pasada:31 la__por:-21 la__ya:25 la_bateria:19
la_casa:-32 la_cita:19 la_iglesia:-27 la_lista:-23 la_llanta:-18 la_semana:29 lado:24 lado_$:18 las:42 las__en:20
last:89 last_month:31 last_time:-41 last_week:64 late:19 le:85 le__los:36 le__todo:21 le_cambiaron:20 le_cambie:48
le_cambio:-31 les:-50 lets:-28 lets__it:-20 lets_get:-28 light:-36 light__on:-24 light_came:-20 like_to:-23 list:33
lista:-30 lista_$:-21 listo:40 llanta:-23 llantas:42 lleve:40 lleve__otro:28 llevo:-25 lo:178 lo__a:-39 lo__de:32
lo__el:24 lo__en:97 lo__hacer:28 lo__listo:24 lo__por:-48 lo_arreglaron:26 lo_arreglo:-39 lo_dejaron:21 lo_hago:-32
lo_hice:78 lo_hicieron:63 lo_hizo:90 lo_lleve:35 lo_llevo:-24 lo_mande:26 lo_mismo:-18 lo_tiene:-31 lo_vendi:-64
longer:22 looked:29 los:54 los_frenos:23 lot:18 lube:41 mal:-56 mande:25 me:-24 me_$:-37 me__hicieron:43 me__hizo:57
me__mal:-28 me_hicieron:-32 me_la:22 me_lo:131 mecanico:20 mechanic:25 mes_$:-18 mes_pasado:31 mi__es:-21 mi__le:25
mi__ya:41 mi_hermano:-18 mi_primo:25 millas:-23 mismo:-69 mismo_dia:-30 mom:-18 monday:22 month_$:-20 much:-34
my__did:28 my__do:71 my__fixed:32 my__oil:-24 my_car:-26 my_cousin:29 my_dad:23 my_driveway:-20 my_ex:-28
my_number:-22 my_office:19 my_own:-29 myself_$:-52 nada:-26 need__be:-18 needed:19 never:-37 new:186 new__in:21
new__on:39 new_battery:44 new_tires:60 ni:-52 no:-124 no_$:-48 no__ese:-24 no__falta:31 no__lo:-29 no__to:19
no__ya:29 no_gracias:-21 no_hace:38 no_longer:26 no_me:-21 no_need:36 no_se:24 no_soy:-34 no_voy:18 not:-19 now:-18
nueva:21 nuevas:48 nuevas_$:36 number:-56 number_$:-21 numero:-28 o:-31 october:31 october_$:31 of:59 of_$:55
of_the:-22 off:-22 off_$:-24 off__list:19 office:19 oil_changed:19 oil_changes:-26 ok:-24 old:21 on:59 on_it:-25
on_monday:19 on_saturday:25 on_sunday:26 or:-44 otra:-21 otra_parte:22 otro_$:-45 otro_carro:-26 otro_lado:44
otro_mes:-20 otro_taller:67 out:36 over:22 own:-38 own_oil:-24 pads:68 pads_are:30 paid:18 paren:-21 paren_$:-19
parenle:-33 parts_store:18 pasada:30 pasada_$:25 pasado:33 pasado_$:24 passed:31 pedal:-18 pero_ya:-18 persona:-18
place:18 por:-30 por_eso:19 por_otro:-40 por_una:-30 primo:29 puedo:-41 put:-23 put_me:-26 put_new:27 que:-44
que__el:-18 que_pase:-19 quedo:107 quedo_$:31 quick:43 quick_lube:41 ready:-24 ready_$:-20 recall:44 recall_$:31
recibo:20 recien:22 records:22 remember:18 remember_$:18 replaced:89 replaced_in:29 rid:-34 rid_of:-34 right:-58
right_now:-25 said:-30 salio:29 sat:25 sat_$:28 saturday:26 saturday_$:42 say:-19 se:24 se__cambie:19 se__hice:18
se__hicieron:22 se__quedo:-19 se_lo:63 se_los:27 se_me:-33 see:-35 semana:31 semana_pasada:32 service:-57 serviced:25
servicio:71 set:38 set_$:18 shop:32 should:-19 si:-24 since:36 sistema:18 smog:18 so:43 so__is:23 so_i:39 sold:-33
solo:-69 somebody:-20 someone:29 sorted:19 soy:-46 sticker:33 stop:-38 stop_it:-18 store:20 su_sistema:18 sunday:46
sunday_$:47 swapped:57 take:-25 taken:97 taken__of:97 taken_care:92 taller:30 tengo:-21 tengo_el:19 tengo_otro:-19
thanks:24 thanks_$:26 that:73 that__been:22 that__the:34 that_done:-24 that_is:43 that_last:39 that_off:29 the:68
the__changed:18 the__for:-31 the__guy:-19 the__of:-19 the__on:21 the_brakes:22 the_car:-24 the_dealership:18
the_driveway:-18 the_first:-19 the_game:-18 the_garage:-29 the_oil:24 the_pads:27 the_tires:29 the_wrong:-24 them:68
then:-18 there__that:24 they:30 this:-20 this__his:-18 this_is:-20 this_morning:20 those:38 those_tires:19
thursday:20 tiene:21 time:-72 time_$:-28 tire:-18 tires:67 tires__on:20 to_$:25 to__it:-34 to__that:-19 to_get:-33
to_it:93 todo:55 too_$:-20 took:-22 took__of:36 took__to:37 took_care:39 took_the:-23 topped:19 topped_it:20
totaled:-21 traded:-22 traded_it:-18 trae:28 tuesday:27 tuesday_$:19 two__ago:18 un_mes:20 una:-29 use:-28 vendi:-72
vendi_$:-55 vez:-18 voy:-20 was:156 was__and:-31 was__at:23 was__for:24 was__last:27 was_done:30 was_in:36 wasnt:-21
we__the:-22 we_got:34 week:31 week_$:37 weekend:20 weekend_$:23 weeks:24 went:31 went__the:23 were:54 were__in:33
were_done:21 what:-34 what_did:-31 what_do:23 when:30 when__was:25 when_i:40 while:24 why:-24 will:-43 will__be:-20
will_it:-22 work:19 would:-26 wrong:-41 y:25 y__lo:35 y__quedo:24 y_no:25 ya:328 ya_$:-101 ya__de:-19 ya__hace:28
ya__hice:44 ya__hicieron:25 ya__la:-19 ya__lleve:33 ya__lo:83 ya__los:21 ya__otro:-27 ya__tengo:18 ya__tiene:-28
ya__vendi:-57 ya_casi:-20 ya_esta:67 ya_fue:52 ya_la:28 ya_le:87 ya_les:-39 ya_lo:97 ya_me:76 ya_no:-52
ya_parenle:-33 ya_pase:27 ya_que:-26 ya_quedo:105 ya_se:77 ya_tengo:-20 ya_tiene:27 ya_voy:-18 yeah_$:-25 yes:-26
yesterday:43 yesterday_$:39 yo:-269 yo__la:-39 yo__le:-43 yo_le:-33 yo_lo:-63 yo_mismo:18 yo_ni:-18 yo_no:-51 you:-84
you__did:34 you__for:20 you__my:-27 you__on:-30 you__the:-36 you_get:-18 you_guys:20 you_put:-29 you_said:-30
you_to:76
"""
