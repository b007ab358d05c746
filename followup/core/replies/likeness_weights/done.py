"""What speaks for and against `done`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "done"
BIAS = -158
WEIGHTS = """\
#aban:21 #acab:36 #aced:87 #acer:55 #acia:28 #acue:31 #adua:18 #ahor:-20 #aken:86 #akes:28 #alar:-19 #alat:20
#aled:-18 #alig:35 #alin:20 #alio:43 #alir:19 #alle:39 #alre:118 #ambi:59 #ance:31 #andl:50 #ands:19 #ania:23
#anic:47 #anit:18 #anks:22 #anot:36 #anta:31 #apen:20 #appe:55 #appo:-22 #appr:-24 #arad:53 #arag:-25 #area:21
#aren:-71 #arge:21 #arma:-27 #aron:87 #arro:-58 #asad:64 #asnt:-25 #asse:19 #atch:23 #aten:42 #ater:34 #atio:22
#atis:24 #atte:66 #atur:26 #avor:31 #ayer:109 #back:-44 #bala:31 #bank:-18 #base:26 #bate:36 #batt:48 #beat:81
#been:127 #biar:37 #body:-38 #brak:28 #bran:27 #budd:28 #cabo:38 #calc:24 #camb:57 #came:38 #canc:32 #cani:24
#cant:-23 #care:102 #carg:18 #carr:-56 #casa:-19 #casi:-22 #cesi:23 #char:18 #chec:30 #ched:18 #cher:-19 #cias:21
#ciat:-24 #cibo:28 #cido:-19 #cien:40 #cked:18 #cker:34 #club:20 #coch:-19 #coma:20 #come:-20 #comi:31 #comp:111
#cono:-44 #cord:31 #coul:-25 #cous:30 #ctio:51 #ctob:37 #cuer:28 #cupe:31 #ddle:-23 #desd:54 #dien:19 #dier:38
#ding:20 #dire:-67 #divo:-24 #dled:57 #doll:18 #done:136 #driv:-68 #dson:21 #duen:-18 #eady:94 #ease:18 #eave:-24
#ebod:-32 #ecal:31 #ecan:24 #ecei:22 #echa:38 #ecia:-25 #ecib:26 #ecie:35 #ecor:28 #ecti:51 #eeke:18 #egar:20
#egla:18 #eglo:-37 #eken:18 #embe:43 #emem:23 #enas:19 #enca:19 #enci:37 #endi:-31 #ener:37 #enle:-43 #enos:42
#enou:-21 #ensa:-24 #ento:19 #eone:46 #epar:59 #epla:80 #erda:75 #eria:28 #eron:61 #ersi:19 #erso:-31 #erto:-22
#ervi:29 #esda:41 #esde:54 #esia:-28 #esta:40 #este:26 #estu:24 #evas:52 #ever:-75 #eway:-41 #favo:31 #fill:22
#filt:24 #firs:-27 #fixe:95 #fren:24 #frie:19 #fron:-19 #game:-25 #gara:-21 #garo:21 #gist:-18 #gles:-44 #gnme:35
#goin:-29 #goma:18 #gone:-22 #grac:21 #grat:24 #guys:24 #habl:-24 #hace:132 #hago:-31 #hand:54 #hani:23 #harg:20
#have:-38 #hech:30 #heck:25 #hera:-19 #here:28 #hice:87 #hici:23 #hijo:-19 #hizo:103 #hold:27 #hora:-37 #hose:55
#houl:-23 #hous:32 #hrou:-23 #iado:24 #iaro:39 #iate:-24 #iced:25 #icio:60 #icke:34 #ient:39 #iero:52 #ight:-74
#igle:-28 #ignm:35 #ille:21 #imos:46 #ince:23 #inds:23 #inea:20 #insp:67 #insu:-19 #intm:-22 #ires:69 #irst:-27
#ismo:-51 #ista:-29 #isto:24 #ivew:-40 #ivor:-24 #ixed:91 #jeje:19 #just:46 #kend:18 #kids:-20 #lace:89 #lado:30
#larm:-27 #laro:21 #lars:18 #last:83 #lata:18 #late:20 #lcom:24 #leak:24 #leas:20 #leav:-30 #lesi:-28 #lete:18
#lets:-27 #leve:42 #levo:-26 #ligh:-21 #lign:35 #like:-31 #line:25 #list:30 #llan:22 #lled:18 #ller:38 #look:30
#lrea:118 #mana:22 #mani:42 #mayo:28 #mber:-36 #mbia:81 #mbie:27 #mbio:-49 #mebo:-32 #meca:24 #mech:23 #memb:23
#mens:-22 #meon:46 #mero:-34 #meti:21 #mien:35 #mill:-23 #ming:49 #mism:-56 #mond:18 #mple:34 #mpli:18 #much:-24
#myse:-27 #nada:-21 #ncar:19 #ncel:32 #ncia:22 #ncle:21 #nday:59 #nded:21 #nden:-28 #ndie:34 #ndle:63 #ndso:21
#near:19 #nero:47 #neve:-48 #nged:56 #nges:-33 #nico:31 #nito:18 #nive:19 #nmen:35 #noth:34 #noug:-21 #nozc:-25
#nsaj:-22 #nspe:67 #nsur:-19 #ntas:40 #nten:32 #ntme:-22 #nuev:128 #numb:-78 #nume:-29 #ober:33 #ocid:-19 #ocke:23
#octo:35 #ocup:26 #oing:-32 #oint:-23 #oked:44 #olan:-26 #olla:18 #olvi:28 #oman:24 #omat:18 #omeb:-32 #omeo:46
#omet:-21 #omin:42 #ompl:29 #ompr:30 #ompu:30 #ones:20 #onoz:-25 #ooke:44 #oola:-20 #orce:-20 #orda:19 #orks:-20
#orqu:26 #orry:19 #otal:-23 #otat:25 #othe:31 #otor:22 #otra:-23 #ough:-33 #ould:-76 #ouse:35 #ousi:30 #over:38
#owed:18 #oxim:19 #ozco:-25 #pads:85 #para:45 #pare:-76 #part:35 #pasa:52 #pass:33 #past:28 #pect:52 #pena:21
#plac:89 #plet:34 #plug:28 #poin:-23 #porq:26 #pped:67 #ppoi:-22 #ppre:-24 #prec:-28 #prim:24 #prox:19 #pudd:-22
#pued:-56 #pues:40 #pusi:29 #puso:19 #qued:93 #quee:22 #quic:59 #quie:-20 #quit:-18 #raci:21 #rade:-27 #rado:51
#radu:18 #rage:-25 #raig:23 #rake:28 #ranc:-21 #rand:31 #raro:-18 #rati:24 #rdan:27 #rday:78 #read:91 #reca:30
#rece:18 #reci:32 #rega:-19 #reme:19 #renl:-43 #reno:32 #repa:53 #repl:80 #reso:47 #ress:-18 #righ:-71 #rimo:33
#rive:-65 #rong:-39 #ront:-21 #rota:30 #roug:-25 #roxi:19 #rque:25 #rson:-31 #rvic:29 #sada:31 #sado:41 #said:-35
#saje:-21 #sali:67 #satu:29 #scra:-21 #sday:54 #serv:27 #ship:18 #shop:30 #shou:-24 #sier:25 #sinc:24 #sion:23
#sist:34 #snow:-19 #sold:-40 #solo:-84 #sona:-23 #sorr:19 #spec:65 #ssed:37 #stem:20 #ster:57 #stic:34 #stop:-66
#stud:24 #sund:41 #sura:-19 #sure:-21 #swap:60 #take:59 #tale:-18 #tall:25 #tare:21 #tate:27 #tche:20 #tenc:22
#tend:47 #tera:22 #terd:49 #teri:35 #tery:48 #text:-28 #that:84 #them:76 #then:-19 #ther:48 #they:33 #thin:-23
#thos:50 #thro:-26 #tick:34 #time:-102 #ting:-31 #tion:77 #tire:54 #tmen:-22 #tobe:37 #todo:55 #took:-23 #tore:21
#tota:-23 #trad:-21 #trai:21 #tter:39 #ttin:-28 #tues:31 #turd:29 #tuvo:18 #ucha:19 #uddl:-22 #uddy:28 #uede:-23
#uedo:72 #uelt:21 #uerd:28 #uesd:34 #uest:26 #ueva:70 #uevo:48 #uick:59 #uier:-22 #umbe:-78 #umer:-29 #uncl:21
#unda:40 #undr:21 #urda:29 #usie:26 #veci:22 #vend:-90 #vewa:-40 #vice:-32 #vici:61 #vida:19 #vise:20 #vorc:-24
#want:-20 #wapp:66 #wasn:-23 #week:69 #went:23 #were:56 #what:-44 #when:18 #wife:-19 #will:-39 #woul:-23 #wron:-39
#yest:49 #your:-35 #ysel:-27 %again_later%agree:35 %again_later%away:30 %again_later%bad:27 %again_later%call_off:26
%again_later%car:-34 %again_later%car_part:22 %again_later%doubt:-26 %again_later%elsewhere:27
%again_later%gone_car:-43 %again_later%on_way:-19 %again_later%place:62 %again_later%question:35
%again_later%refuse:46 %again_later%shift_it:31 %again_later%staff:-24 %again_later%start_again:-45
%again_later%who:26 %again_later%wrong_one:26 %agree:-60 %agree%away:25 %agree%call_off:32 %agree%car_part:82
%agree%elsewhere:22 %agree%family:-19 %agree%gone_car:-29 %agree%refuse:-19 %agree%season:49 %agree%shift_it:34
%away%family:21 %away%money:19 %away%question:35 %away%refuse:18 %away%smoke_smell:23 %away%wrong_one:32 %bad:-60
%bad%bring:21 %bad%busy:-18 %bad%call_off:23 %bad%do_it:-45 %bad%shift_it:18 %bad%staff:-44 %bring:-55
%bring%call_off:29 %bring%family:61 %bring%leave_me:-62 %bring%odometer:25 %bring%place:31 %bring%question:45
%bring%refuse:34 %bring%season:-34 %bring%staff:23 %bring%start_again:-19 %bring%wrong_one:36 %busy:29
%busy%call_off:29 %busy%do_it:27 %busy%place:24 %busy%staff:36 %busy%wrong_one:23 %call_off:36 %call_off%car:-52
%call_off%car_part:133 %call_off%do_it:146 %call_off%elsewhere:76 %call_off%fails:74 %call_off%family:64
%call_off%gone_car:-81 %call_off%how_long:-21 %call_off%leave_me:-24 %call_off%message:23 %call_off%money:23
%call_off%odometer:34 %call_off%pay_day:27 %call_off%phone:-40 %call_off%place:32 %call_off%question:40
%call_off%refuse:-27 %call_off%shift_it:64 %call_off%staff:-24 %call_off%start_again:-51 %call_off%thanks:86
%call_off%who:26 %call_off%wrong_one:19 %car:-109 %car%do_it:-78 %car%fails:-18 %car%gone_car:-77 %car%shift_it:-40
%car%thanks:31 %car_part:109 %car_part%do_it:81 %car_part%elsewhere:22 %car_part%fails:-70 %car_part%family:85
%car_part%gone_car:176 %car_part%leak:-36 %car_part%noise:18 %car_part%refuse:-78 %car_part%start_again:-28
%car_part%thanks:-22 %car_part%wrong_one:169 %do_it:388 %do_it%doubt:-27 %do_it%elsewhere:152 %do_it%family:234
%do_it%gone_car:105 %do_it%how_long:-31 %do_it%leak:-18 %do_it%leave_me:-23 %do_it%noise:28 %do_it%odometer:79
%do_it%on_way:43 %do_it%pay_day:98 %do_it%place:24 %do_it%refuse:26 %do_it%season:103 %do_it%shift_it:-34
%do_it%staff:62 %do_it%start_again:-37 %do_it%thanks:47 %do_it%wrong_one:40 %doubt:-72 %doubt%elsewhere:-20
%doubt%shift_it:-22 %doubt%wrong_one:-26 %elsewhere:222 %elsewhere%fails:46 %elsewhere%gone_car:-76
%elsewhere%how_long:32 %elsewhere%money:36 %elsewhere%odometer:-24 %elsewhere%on_way:29 %elsewhere%phone:30
%elsewhere%place:30 %elsewhere%question:23 %elsewhere%refuse:-26 %elsewhere%season:-27 %fails:-25 %fails%refuse:45
%fails%shift_it:18 %fails%thanks:48 %fails%wrong_one:-19 %family:63 %family%message:24 %family%noise:35
%family%on_way:22 %family%refuse:69 %family%staff:-28 %family%wrong_one:-54 %gone_car:-113 %gone_car%how_long:-24
%gone_car%odometer:-25 %gone_car%on_way:27 %gone_car%refuse:-18 %gone_car%shift_it:30 %gone_car%thanks:23
%gone_car%wrong_one:102 %how_long%leave_me:24 %how_long%money:24 %how_long%question:-22 %leak:-27 %leak%staff:25
%leave_me:-158 %leave_me%message:-28 %leave_me%staff:19 %message:-69 %message%thanks:24 %money:34 %money%question:37
%money%staff:32 %money%wrong_one:25 %noise%odometer:24 %odometer:-42 %odometer%question:19 %odometer%shift_it:-20
%odometer%wrong_one:-26 %on_way:19 %on_way%refuse:27 %on_way%staff:37 %on_way%wrong_one:32 %opening:-27 %pay_day:39
%pay_day%refuse:41 %pay_day%season:31 %pay_day%staff:18 %phone:-68 %phone%staff:-25 %place%refuse:26
%place%shift_it:58 %place%wrong_one:43 %question:-130 %question%wrong_one:42 %refuse:-52 %refuse%season:34
%refuse%staff:-28 %refuse%wrong_one:-76 %season:40 %shift_it:-120 %shift_it%staff:-29 %shift_it%wrong_one:-62
%staff:74 %staff%wrong_one:63 %start_again:-80 %thanks:39 %who:-18 %who%wrong_one:24 %wrong_one:125 @?:-100
@after_visit:-166 @car:19 @confirm:-132 @confirm_stop:-27 @day:-29 @later:54 @odometer:-46 @offers:-83 @reading:-62
@time:-29 ^_all:92 ^_already:46 ^_been:54 ^_can:-50 ^_cant:-20 ^_coolant:-20 ^_could:-18 ^_desde:31 ^_do:-55
^_done:29 ^_el:42 ^_enough:-21 ^_ese:-25 ^_eso:123 ^_going:-18 ^_got:-29 ^_hace:19 ^_had:118 ^_hey:-27 ^_how:-53
^_i:30 ^_id:-46 ^_ill:-66 ^_im:-31 ^_in:-27 ^_is:-62 ^_it:98 ^_just:21 ^_le:19 ^_lets:-24 ^_lo:-65 ^_me:-27 ^_my:-25
^_new:20 ^_no:-43 ^_not:24 ^_oil:36 ^_se:-36 ^_si:-21 ^_sold:-23 ^_someone:69 ^_stop:-41 ^_thanks:-38 ^_that:44
^_the:25 ^_they:32 ^_this:-33 ^_those:55 ^_took:32 ^_was:25 ^_what:-59 ^_when:-18 ^_will:-19 ^_y:19 ^_ya:74 ^_yes:-21
^_yo:-185 ^_you:-27 a:-32 a__battery:20 a__for:-20 a__on:-19 a_favor:18 a_la:-45 a_mi:-27 a_new:24 acabo:38
aceite_$:-56 aceite_el:22 ago:23 ahi:43 alarma:-27 alignment:35 all:85 all__my:-22 all_over:-22 already:118
already__it:47 already_did:30 already_got:20 already_replaced:23 an:-47 an__change:-18 an_appointment:-31 an_oil:-18
and__it:45 and_did:19 and_it:-48 another:36 another_shop:35 apenas:20 appointment:-20 appreciate:-23
appreciate_it:-20 arreglo:-37 as:44 ask:-21 at:59 at_$:-20 at_the:73 ayer:117 ayer_$:42 back:-39 back_$:-18 bank:-18
base:27 bateria:36 bateria_$:18 battery:48 be:-44 be_done:-38 beat:81 been:127 been__since:22 been__to:29
been_done:36 before_the:24 brakes:35 brakes_were:18 brand:18 buddy:26 but:33 but_my:18 by:51 by_a:18 by_my:31
call:-40 call_me:-23 cambiaron:39 cambiaron_la:18 cambie:26 cambie_por:-76 cambio:-41 cambio__aceite:-36 came:39
came_on:-33 can:-72 can_you:-44 cant:-23 car:-69 car_$:-40 care:116 care_of:119 carro:-65 carro_$:-47 casa:-19
casa_$:-32 casi:-22 change:-36 changed:56 changed_my:-23 changes:-32 changes_$:-27 checked:23 club:20 cochera:-19
coming:31 compre:27 con:35 con__mecanico:23 conozco:-25 coolant:-20 could:-24 cousin:30 dad:27 day:-38 day_$:-27
days:21 de:43 de__del:25 de_la:44 de_nuevo:-19 del:46 desde:54 dia:-38 dia_$:-31 did:207 did__get:-19 did__in:46
did_it:228 did_my:-37 did_that:71 did_the:25 did_you:-61 do__need:-26 do_it:55 do_my:-32 do_they:-24 dollars:18
done:137 done_$:-33 done__the:31 done_already:23 done_at:31 done_in:37 done_last:28 driveway:-40 driveway_$:-32
dueno:-18 echo:-19 el:43 el__dia:-25 el__lo:-18 el__pasado:39 el__ya:29 el_de:26 el_mes:29 el_mismo:-38
el_servicio:21 el_viernes:25 else_$:-28 en:86 en__casa:-37 en__cochera:-19 en__lado:27 en__parte:20 en__taller:54
en_el:-34 en_la:-40 en_mayo:18 en_mi:21 en_otra:22 en_otro:94 enero:37 enough:-21 es:-61 esa:36 ese:-24 ese_$:22
ese__lo:-38 ese_servicio:22 ese_taller:-27 eso:221 eso_$:41 eso__lo:46 eso_ya:99 esta:28 esta_$:37 esta_hecho:24
este:-19 ex:-67 favor:31 fell:-22 filled:22 first:-27 fix:-74 fix_it:-68 fixed:95 for_that:-50 for_the:43 free:18
frenos:38 front:-19 fue:41 fui:59 game:-22 garage:-25 garage_$:-28 get:-124 get__done:-68 get_it:-27 go:-39
go__the:-21 go_to:-21 going:-29 gomas:19 gone:-22 got:-22 got__done:24 got__in:-27 got__new:23 got__of:-44 got_it:20
got_my:21 got_on:-18 got_rid:-46 got_to:-32 gracias:21 gracias_ya:28 gratis:25 guy:62 guys:24 hace:73 hace_un:30
hacer:65 hacer_$:18 had:256 had__done:59 had_it:100 had_that:27 had_the:22 had_this:19 had_to:-21 hago:-31 hago_$:-19
handled:57 handled_$:33 has_a:-19 have:-28 have__it:29 have_an:-31 he:-25 hecho:43 her:29 hey:-27 hice:94 hice_$:29
hijo:-19 hizo:103 hizo_el:35 hizo_mi:29 how:-42 how_much:-28 i:31 i__in:18 i__it:49 i__the:34 i__them:18 i__to:-35
i_do:-32 i_go:-21 i_had:92 i_have:54 i_need:-19 i_should:-21 i_was:29 id:-50 id__to:-32 id_like:-29 iglesia:-28
ill:-73 ill__it:-67 im:-52 in:80 in__garage:-37 in__i:21 in__the:22 in_for:18 in_march:21 in_the:-27 inspection:52
insurance:-19 insurance__it:-18 is:-27 is__on:-19 is_been:67 is_done:20 is_got:-18 is_it:-29 is_my:-19 is_that:-21
it:115 it_$:74 it__at:43 it__been:35 it__done:-29 it__got:-18 it__in:52 it__my:19 it__on:18 it_and:-18 it_be:-37
it_fixed:37 it_is:53 it_myself:-28 it_now:-19 jeje:19 just:50 kids:-20 la__con:19 la__pasada:22 la__por:-26 la__ya:31
la_casa:-38 la_cochera:-19 la_iglesia:-28 la_lista:-18 la_llanta:-21 la_semana:20 lado:25 lado_$:18 las:34 last:86
last_month:18 last_time:-43 last_week:69 le:81 le__las:18 le__los:49 le__todo:19 le_cambie:54 le_cambio:-36 leave:-22
les:-55 lets:-27 lets__it:-20 lets_get:-27 light:-37 light__on:-29 light_came:-28 like:-31 like_to:-29 list:20
lista:-23 listo:34 llanta:-27 llantas:42 lleno:18 lleve:42 lleve__otro:29 llevo:-26 lo:166 lo__a:-37 lo__ayer:20
lo__de:33 lo__el:19 lo__en:98 lo__hace:21 lo__por:-62 lo_arreglaron:33 lo_arreglo:-56 lo_hago:-30 lo_hice:89
lo_hicieron:43 lo_hizo:97 lo_lleve:35 lo_llevo:-25 lo_mande:30 lo_mismo:-18 lo_tiene:-40 lo_vendi:-72 looked:37
los:63 los_frenos:20 lot:18 mal:-56 mande:30 march:21 me_$:-36 me__favor:18 me__hicieron:40 me__hizo:57 me__mal:-31
me__nada:-19 me_hicieron:-35 me_in:22 me_la:37 me_lo:95 mecanico:24 mechanic:23 mes:34 mes_pasado:30 mi__es:-31
mi__le:34 mi__ya:36 mi_hermano:-22 mi_hijo:-19 mi_primo:27 millas:-27 millas_$:-18 mismo:-59 mismo_dia:-26 monday:18
much:-33 my__and:27 my__did:28 my__go:-18 my__oil:-32 my_brakes:-19 my_car:-25 my_cousin:23 my_dad:27 my_driveway:-24
my_ex:-31 my_number:-24 my_oil:-18 my_own:-36 myself:-27 myself_$:-60 nada:-29 never:-42 new:200 new__on:38
new_battery:49 new_tires:73 ni:-47 no:-118 no_$:-28 no__ese:-29 no__lo:-47 no__to:19 no_conozco:-22 no_gracias:-29
no_hace:23 no_me:-26 no_need:30 no_se:43 no_soy:-29 not_coming:19 now:-44 now_$:-29 nueva:18 nuevas:52 nuevas_$:47
number:-52 numero:-29 o:-23 october:37 october_$:37 of:69 of_$:58 of_the:-21 off_$:-20 off_my:21 oil:-21
oil_changes:-31 ok:-23 old:30 on:44 on_$:-18 on_it:-34 on_saturday:28 on_sunday:35 ones:21 or:-47 or_the:-18 otra:-20
otro_$:-61 otro_carro:-36 otro_lado:43 otro_taller:74 out:35 out_last:18 over:26 over_my:-22 own:-49 own_oil:-32
pads:85 pads_are:42 paren:-27 paren_$:-26 parenle:-43 parte:19 pasada:22 pasada_$:22 pasado:34 pasado_$:26 passed:29
past:21 past_$:23 pero_ya:-25 persona:-22 por:-47 por_una:-31 porque:26 primo:33 problem_$:24 puddle:-22 puedo:-33
pues:19 pues_$:19 pusieron:25 put_me:-25 put_new:34 que:-34 quedo:105 quedo_$:27 quick:59 ready:-23 ready_$:-21
recall:43 recibo:28 remember:23 remember_$:23 replaced:87 replaced_in:25 rid:-46 rid_of:-46 right:-70 right_now:-29
said:-35 salio:43 salir:19 salir_del:25 sat:27 sat_$:28 saturday:23 saturday_$:41 se:31 se__cambie:22 se_lo:52
se_los:33 se_me:-35 see:-38 service:-58 serviced:25 servicio:61 set:44 set_$:26 shop:31 should:-23 si:-31 since:24
snow:-18 so:22 so__is:22 so_i:32 so_that:22 sold:-40 sold_it:-18 solo:-84 somebody:-32 someone:42 sorry:19 soy:-43
sticker:39 stop:-57 store:21 su:21 sunday:52 sunday_$:53 swapped:66 take:-20 taken:86 taken__of:86 taken_care:79
taller:33 tengo_el:28 thanks:21 that:84 that__been:26 that_done:-21 that_is:47 that_last:41 the:38 the__for:-39
the__guy:-18 the__on:23 the__time:-23 the__was:18 the_brakes:34 the_car:-30 the_first:-24 the_garage:-36 the_pads:29
the_tires:32 the_wrong:-24 them:76 then:-19 they:27 this_is:-25 those:50 through:-23 time:-91 time_$:-37 tires:70
tires_$:21 tires__on:24 to:38 to_$:36 to__it:-35 to__that:-21 to_get:-41 to_it:91 todo:59 too_$:-25 too_late:19
took:-23 took__of:36 took__to:41 took_care:40 took_the:-28 totaled:-18 tree:-18 tuesday:34 tuesday_$:25 un:26
un_mes:28 una:-35 use:-34 vendi:-79 vendi_$:-66 voy:-21 was:133 was__and:-39 was__at:30 was__for:18 was__last:26
was_done:26 was_in:37 wasnt:-23 we__the:-26 week:39 week_$:34 weekend:18 weekend_$:23 weeks_$:-20 went:23 were:60
were__in:28 were_done:23 what:-43 what_did:-20 what_is:-19 when:29 when_i:43 why:-27 wife:-19 will:-39 will__be:-20
will_it:-22 works:-20 would:-21 wrong:-39 y:57 y__lo:53 y__no:-18 y_lo:20 y_no:32 ya:315 ya_$:-122 ya__de:-20
ya__hace:23 ya__hice:42 ya__hicieron:18 ya__la:-25 ya__lleve:37 ya__lo:64 ya__los:20 ya__tengo:25 ya__tiene:-36
ya__vendi:-67 ya_casi:-21 ya_esta:68 ya_la:37 ya_le:72 ya_les:-49 ya_lo:105 ya_los:20 ya_me:77 ya_no:-45
ya_parenle:-43 ya_quedo:99 ya_se:58 ya_tengo:-26 ya_tiene:30 ya_voy:-18 yeah_$:-21 yes:-30 yesterday:49
yesterday_$:42 yo:-287 yo__le:-56 yo_le:-21 yo_mismo:23 yo_no:-59 you:-81 you__it:24 you__my:-29 you__on:-31
you__the:-32 you_get:-19 you_guys:21 you_put:-30 you_said:-37 you_to:97 your:-33
"""
