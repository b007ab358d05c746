"""What speaks for and against `done`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "done"
BIAS = -189
WEIGHTS = """\
#aban:46 #acab:41 #aced:105 #acer:72 #acia:26 #acue:42 #aded:-30 #aigh:28 #aken:132 #alan:76 #alar:-28 #alat:28
#aled:-30 #alig:57 #alio:34 #alle:35 #alre:147 #alta:33 #ambi:78 #ance:106 #andl:74 #ando:25 #ania:25 #anic:63
#anot:32 #anta:50 #ante:29 #appe:74 #appr:-27 #arad:58 #arag:-37 #arch:28 #aren:-87 #arma:-33 #aron:150 #arro:-67
#asad:94 #asnt:-35 #asse:31 #atas:25 #atch:33 #aten:43 #ater:57 #atio:32 #atis:25 #atte:83 #atur:41 #ayer:161
#back:-43 #bala:104 #bank:-31 #bate:60 #batt:62 #bber:30 #beat:128 #been:154 #bers:-28 #biar:53 #bout:-25 #bran:40
#brot:37 #budd:36 #cabo:30 #calc:28 #camb:77 #came:32 #canc:43 #cani:27 #cant:-42 #care:148 #carr:-64 #casa:-32
#casi:-34 #ceip:26 #cemb:25 #chec:47 #ched:26 #ciat:-27 #cien:50 #cked:33 #cker:49 #comi:29 #comp:98 #cono:-47
#cord:45 #cous:48 #crap:-29 #ctio:69 #ctob:46 #cuer:40 #cump:26 #cupe:25 #ddle:-26 #dece:25 #desd:64 #didn:-26
#dier:36 #dire:-70 #divo:-31 #dled:87 #done:173 #driv:-93 #drop:-25 #duen:-31 #eady:112 #ease:28 #eave:-30 #ecal:43
#ecan:27 #ecei:25 #ecem:25 #echa:48 #ecia:-28 #ecie:46 #ecor:44 #ecti:70 #edal:-28 #edes:33 #eeke:29 #eglo:-41
#eipt:26 #eken:29 #ella:36 #eman:57 #embe:66 #emem:25 #enci:33 #endi:-56 #ener:36 #engo:-32 #enle:-51 #enos:49
#enou:-31 #ensa:-34 #entr:-33 #eone:49 #eopl:27 #epar:61 #epla:91 #erda:81 #eria:60 #eron:71 #erso:-33 #erto:-30
#ervi:48 #esda:44 #esde:64 #esia:-37 #esol:50 #esta:40 #evas:72 #ever:-105 #eway:-62 #ewhe:25 #falt:38 #fill:36
#filt:31 #fini:36 #firs:-35 #fixe:131 #four:39 #fren:33 #fres:51 #frie:35 #game:-28 #gara:-33 #garo:25 #gged:28
#gles:-50 #gnme:57 #goin:-37 #grat:25 #guys:28 #habl:-30 #hace:178 #hago:-47 #hand:77 #hani:36 #have:-62 #hech:34
#heck:39 #here:43 #hice:128 #hici:52 #hile:31 #hing:-37 #hizo:114 #hold:33 #hora:-53 #hose:70 #iaro:55 #iate:-27
#iced:28 #icie:35 #icio:84 #icke:64 #ideo:28 #idnt:-26 #iend:33 #ient:39 #iero:62 #ight:-94 #igle:-37 #ignm:57
#ille:41 #imos:44 #ince:46 #iner:36 #inis:36 #insp:104 #insu:-25 #iper:42 #ires:66 #irst:-35 #ishe:37 #ismo:-95
#ista:-49 #ivew:-59 #ivor:-31 #ixed:129 #jaro:25 #just:63 #kend:29 #kids:-26 #lace:106 #lado:33 #lanc:84 #larm:-36
#last:119 #lata:26 #late:30 #lcom:25 #leak:42 #leas:30 #leav:-39 #lena:26 #lesi:-37 #lets:-40 #leve:58 #levo:-35
#ligh:-51 #lign:57 #like:-37 #line:47 #list:47 #llan:46 #lled:32 #llen:49 #ller:36 #look:30 #lrea:147 #lsew:32
#lube:61 #mana:57 #mani:41 #mber:-33 #mbia:96 #mbie:46 #mbio:-64 #meca:27 #mech:36 #memb:25 #mens:-31 #meon:49
#mero:-26 #mien:31 #ming:52 #mism:-103 #mond:57 #mple:31 #much:-30 #myse:-28 #nada:-26 #naro:26 #nced:31 #ncel:43
#ncle:40 #nday:113 #nded:37 #nden:-39 #ndie:38 #ndle:86 #nera:38 #nero:44 #neve:-69 #nged:85 #nges:-40 #nico:33
#nish:36 #nmen:57 #noth:28 #noug:-31 #nozc:-29 #nsaj:-31 #nspe:104 #nsur:-25 #ntas:60 #nten:38 #ntes:39 #nuev:182
#numb:-104 #nume:-35 #ober:40 #ocke:27 #octo:44 #ocup:25 #oing:-33 #oked:49 #olan:-30 #olvi:27 #oman:25 #omeo:49
#omet:-27 #omin:52 #ompr:27 #ompu:25 #onda:56 #ones:65 #oney:25 #onge:28 #onoz:-29 #ooke:49 #oola:-25 #ople:27
#orce:-27 #ords:30 #orte:27 #osse:25 #otal:-31 #othe:37 #otor:43 #otra:-29 #ould:-83 #ousi:48 #outu:32 #over:26
#oxim:36 #ozco:-29 #pads:85 #para:39 #pare:-93 #part:32 #pasa:97 #pass:41 #pecc:26 #pect:77 #peda:-28 #peop:27
#plac:102 #plea:28 #plet:29 #plug:33 #pped:96 #ppre:-27 #prec:-33 #prim:35 #prox:36 #pued:-85 #pues:27 #pusi:32
#qued:138 #quic:63 #rade:-38 #rado:55 #rage:-39 #raig:37 #rand:45 #raro:-34 #rati:25 #rdan:29 #rday:100 #read:98
#reca:48 #reci:31 #reco:27 #rene:27 #renl:-51 #reno:41 #repa:51 #repl:94 #resh:40 #reso:46 #rien:33 #righ:-79
#rimo:35 #rive:-90 #rong:-57 #ront:-26 #rota:27 #roth:37 #roto:40 #roxi:36 #rson:-33 #rted:25 #rubb:30 #ruck:39
#rvic:48 #sada:47 #sado:48 #said:-40 #saje:-32 #sali:53 #satu:44 #scra:-31 #sday:61 #seda:25 #seen:29 #sema:56
#serv:46 #sewh:32 #shed:36 #shop:28 #sier:27 #sinc:50 #sion:25 #sist:30 #sold:-31 #soli:29 #solo:-102 #solv:40
#sona:-28 #sort:26 #spec:103 #sque:25 #ssed:66 #sted:35 #ster:57 #stic:44 #stop:-64 #stoy:-27 #stra:30 #stre:37
#sund:56 #sura:-25 #swap:81 #take:83 #tale:-27 #tard:-26 #tche:31 #tede:33 #tenc:29 #tend:52 #teng:-33 #tera:29
#terd:56 #teri:57 #tery:62 #text:-35 #that:97 #them:111 #ther:61 #they:43 #thin:-47 #this:-27 #thos:64 #tick:59
#time:-128 #tion:98 #tire:47 #tobe:46 #todo:71 #took:-33 #tors:45 #tota:-31 #trad:-35 #trae:40 #trai:33 #truc:39
#tter:48 #ttin:-31 #tube:32 #tues:38 #turd:44 #twic:-27 #uary:27 #ubbe:30 #uddy:36 #uedo:92 #ueno:-35 #uerd:40
#uesd:41 #ueva:97 #uevo:69 #uick:63 #umbe:-95 #umer:-35 #umpl:26 #uncl:40 #unda:54 #unte:32 #urda:44 #usie:29
#usin:28 #uste:34 #veci:34 #vend:-120 #vewa:-59 #vice:-37 #vici:85 #vide:27 #vorc:-31 #wait:25 #wapp:90 #wasn:-30
#week:88 #went:49 #were:68 #what:-31 #whil:31 #wice:-27 #wife:-32 #will:-64 #wipe:29 #work:26 #woul:-36 #wron:-56
#yest:56 #yout:32 #ysel:-28 %again_later:26 %again_later%agree:49 %again_later%bad:30 %again_later%bring:-37
%again_later%car:-33 %again_later%car_part:43 %again_later%do_it:-35 %again_later%elsewhere:38
%again_later%gone_car:-52 %again_later%on_way:-27 %again_later%pay_day:-31 %again_later%place:111
%again_later%question:34 %again_later%refuse:43 %again_later%start_again:-38 %again_later%who:34
%again_later%wrong_one:30 %agree:-51 %agree%away:29 %agree%call_off:48 %agree%car:25 %agree%car_part:102
%agree%elsewhere:30 %agree%family:-29 %agree%gone_car:-26 %agree%season:38 %agree%shift_it:41 %away:-38
%away%wrong_one:34 %bad:-67 %bad%busy:-31 %bad%call_off:32 %bad%car_part:-30 %bad%do_it:-88 %bad%shift_it:31
%bad%staff:-62 %bring:-31 %bring%call_off:54 %bring%car_part:33 %bring%family:86 %bring%leave_me:-42
%bring%odometer:33 %bring%place:39 %bring%question:27 %bring%refuse:59 %bring%season:-40 %bring%staff:31
%bring%start_again:-31 %busy:44 %busy%call_off:26 %busy%do_it:36 %busy%elsewhere:29 %busy%family:29 %busy%place:28
%busy%staff:46 %busy%wrong_one:28 %call_off:34 %call_off%car:-70 %call_off%car_part:182 %call_off%do_it:143
%call_off%elsewhere:83 %call_off%fails:116 %call_off%family:101 %call_off%gone_car:-108 %call_off%how_long:-31
%call_off%leave_me:-50 %call_off%message:43 %call_off%money:50 %call_off%odometer:40 %call_off%opening:-26
%call_off%phone:-49 %call_off%place:30 %call_off%question:53 %call_off%season:-27 %call_off%shift_it:73
%call_off%start_again:-57 %call_off%thanks:94 %call_off%who:41 %car:-97 %car%do_it:-111 %car%gone_car:-91
%car%shift_it:-59 %car_part:85 %car_part%do_it:125 %car_part%elsewhere:71 %car_part%fails:-92 %car_part%family:93
%car_part%gone_car:240 %car_part%leak:-50 %car_part%refuse:-57 %car_part%season:29 %car_part%thanks:-26
%car_part%wrong_one:211 %do_it:467 %do_it%doubt:-26 %do_it%elsewhere:200 %do_it%fails:25 %do_it%family:345
%do_it%gone_car:152 %do_it%how_long:-45 %do_it%leak:-36 %do_it%noise:30 %do_it%odometer:78 %do_it%on_way:76
%do_it%opening:25 %do_it%pay_day:135 %do_it%season:142 %do_it%shift_it:-51 %do_it%staff:71 %do_it%start_again:-40
%do_it%thanks:91 %do_it%wrong_one:65 %doubt:-78 %doubt%refuse:-25 %elsewhere:245 %elsewhere%fails:54
%elsewhere%gone_car:-71 %elsewhere%how_long:44 %elsewhere%leave_me:27 %elsewhere%money:50 %elsewhere%odometer:-31
%elsewhere%on_way:27 %elsewhere%phone:29 %elsewhere%question:40 %elsewhere%refuse:-50 %fails%question:25
%fails%refuse:75 %fails%thanks:61 %fails%wrong_one:-28 %family:90 %family%noise:36 %family%on_way:34
%family%refuse:99 %family%shift_it:29 %family%wrong_one:-82 %gone_car:-143 %gone_car%on_way:31 %gone_car%shift_it:42
%gone_car%thanks:39 %gone_car%wrong_one:131 %how_long:-28 %how_long%place:29 %leak:-34 %leak%refuse:29 %leave_me:-186
%leave_me%message:-29 %machine:-26 %message:-54 %message%wrong_one:-28 %money:40 %money%question:70 %money%staff:27
%money%wrong_one:41 %odometer:-57 %odometer%refuse:25 %odometer%wrong_one:-36 %on_way%place:-28 %on_way%refuse:61
%on_way%staff:37 %on_way%wrong_one:58 %opening:-27 %pay_day:68 %pay_day%refuse:36 %pay_day%staff:35 %phone:-71
%phone%staff:-26 %place%refuse:26 %place%shift_it:81 %place%wrong_one:47 %question:-118 %question%refuse:36
%question%season:-34 %question%wrong_one:68 %refuse:-67 %refuse%season:53 %refuse%wrong_one:-118 %season:71
%season%wrong_one:26 %shift_it:-123 %shift_it%staff:-39 %shift_it%wrong_one:-97 %staff:72 %staff%wrong_one:41
%start_again:-75 %thanks:40 %who%wrong_one:28 %wrong_one:147 @?:-120 @after_visit:-273 @car:56 @confirm:-126
@confirm_stop:-31 @day:-48 @later:65 @odometer:-63 @offers:-92 @reading:-51 @time:-47 @walk_in:46 ^_all:116
^_already:77 ^_bank:-25 ^_been:73 ^_can:-60 ^_cant:-33 ^_changed:41 ^_could:-28 ^_desde:42 ^_do:-74 ^_done:25 ^_el:64
^_enough:-30 ^_eso:127 ^_fui:32 ^_had:151 ^_hey:-27 ^_how:-72 ^_id:-56 ^_ill:-82 ^_im:-51 ^_in:-43 ^_is:-79 ^_it:105
^_just:34 ^_le:35 ^_lets:-30 ^_lo:-82 ^_me:-28 ^_my:-50 ^_new:42 ^_no:-32 ^_oil:56 ^_put:-27 ^_que:-30 ^_quick:25
^_se:-86 ^_si:-29 ^_sold:-27 ^_solo:-25 ^_someone:75 ^_stop:-38 ^_thanks:-72 ^_that:51 ^_the:46 ^_they:38 ^_this:-35
^_those:63 ^_took:49 ^_traded:-29 ^_what:-87 ^_will:-28 ^_ya:62 ^_yo:-246 ^_you:-27 a:-48 a__iglesia:-41 a__on:-25
a_buddy:32 a_guy:-27 a_la:-66 a_mi:-29 a_new:44 acaban:25 acaban_de:25 acabo:30 aceite_$:-76 ago:39 ahi:37 alarma:-33
alignment:57 all:121 all_four:27 already:147 already__it:51 already_did:27 an:-43 an__change:-27 an_appointment:-37
an_oil:-27 and__it:41 and_it:-52 another:35 another_shop:44 antes:27 antes_de:35 appreciate:-26 are_on:30 arreglo:-41
arreglo_$:-33 as:59 as_of:28 ask:-34 at:106 at_my:27 at_the:80 ayer:168 ayer_$:58 ayer_me:26 back:-38 balatas:25
bank:-31 bateria:61 battery:64 be:-72 be_done:-57 beat:128 beat__to:135 beat_you:112 been:154 been__since:25
been_done:77 brakes:32 brakes_were:25 brand:34 brand_new:34 buddy:31 but:46 by:86 by_my:62 call:-43 call_me:-27
cambiaron:55 cambie:46 cambie__una:-29 cambie_por:-94 cambio:-48 cambio__aceite:-51 cambio_el:-38 came:33 came_on:-39
can:-74 can_you:-50 cant:-42 car:-93 car_$:-53 care:164 care_of:166 carro:-72 carro_$:-52 casa:-32 casa_$:-44
casi:-34 change:-60 changed:85 changed_it:64 changed_my:-33 changed_the:40 changes:-40 changes_$:-31 coming:29
compre:28 con:68 con__mecanico:39 con_la:26 conozco:-29 conozco_ese:-25 coolant:-25 could:-36 cousin:43 dad:29
day:-44 day_$:-30 de__el:30 de__ya:-30 de_aceite:-35 de_hacer:41 de_la:31 de_nuevo:-26 december:25 december_$:25
dejaron:25 del:39 desde:64 desde__le:37 di:28 dia:-57 dia_$:-38 did:284 did__for:37 did__get:-32 did__in:66
did__last:41 did_it:285 did_my:-46 did_that:113 did_the:52 did_you:-101 didnt:-26 divorce:-29 divorce_$:-29
do__need:-26 do__own:-33 do_it:53 do_my:-33 domingo:25 done:175 done_$:-33 done__the:29 done_already:27 done_at:38
done_in:53 done_last:34 down__street:27 down_the:25 driveway:-57 driveway_$:-45 dueno:-30 echo:-33 el:87 el__dia:-37
el__pasado:45 el__ya:62 el_de:26 el_domingo:26 el_mes:34 el_mismo:-58 el_servicio:25 else_$:-37 elsewhere:32 en:122
en__casa:-44 en__gasolinera:39 en__lado:43 en__taller:67 en_el:-31 en_la:-26 en_otra:27 en_otro:119 enero:36
enough:-31 es:-72 es_mecanico:-26 ese:-44 ese__lo:-46 ese_servicio:32 ese_taller:-30 ese_ya:-42 eso:247 eso_$:35
eso__lo:57 eso__se:27 eso_ya:105 esta:35 esta_$:56 esta_hecho:26 este:-29 estoy:-27 ex:-97 ex_wife:-27 falta:36
fell:-27 fella:30 fella__the:25 filled:36 finished:37 first:-35 fix:-97 fix_it:-80 fixed:131 fixed_it:30 for:36
for_a:25 for_me:39 for_that:-62 for_the:53 four:39 frenos:51 fresh:40 friend:27 fue:55 fui:45 garage:-37 garage_$:-33
gasolinera:38 gasolinera_$:32 get:-153 get__done:-87 get_it:-41 go:-56 go__the:-26 go_to:-26 going:-37 gomas:27
got__done:37 got__guy:-26 got__in:-42 got__new:35 got__of:-48 got_it:30 got_rid:-55 got_to:-47 gracias__lo:26
gracias_ya:33 gratis:25 guy:54 guy__it:78 guys:28 hace:100 hace_falta:28 hace_un:29 hacer:74 hacer_en:40 had:302
had__done:68 had_it:124 had_my:74 had_that:47 had_to:-30 hago:-47 handled:87 handled_$:44 has:-33 have:-54
have__it:35 have_an:-38 have_it:-27 he:-45 hecho:49 her:39 hey:-27 hice:136 hice_$:30 hicieron:26 hizo:114 hizo_el:44
hizo_mi:33 how:-69 how_much:-38 i:45 i__done:38 i__in:28 i__it:77 i__the:45 i__to:-25 i_bought:29 i_do:-36 i_had:100
i_have:43 i_need:-27 i_should:-32 i_was:48 id:-61 id__to:-35 id_like:-34 if:-38 iglesia:-37 ill:-85 ill__it:-71
im:-81 in:147 in__divorce:-29 in__garage:-34 in__the:25 in_the:-39 inspeccion:26 inspection:68 insurance:-25 is:-48
is__done:41 is_been:97 is_done:37 is_handled:29 is_his:-28 is_it:-41 is_my:-29 is_that:-30 it:132 it_$:79
it__already:25 it__at:42 it__been:52 it__handled:29 it__in:48 it__morning:26 it__my:28 it__on:33 it_already:-33
it_be:-54 it_fixed:37 it_is:58 it_myself:-30 it_now:-34 it_sunday:26 it_this:25 it_to:25 just:66 just__that:42
kids:-25 la__con:27 la__pasada:47 la__por:-30 la__ya:28 la_alarma:-33 la_bateria:27 la_casa:-45 la_gasolinera:28
la_iglesia:-37 la_inspeccion:26 la_lista:-32 la_semana:43 lado:33 las:87 las_llantas:26 last:120 last_month:39
last_time:-59 last_week:92 le:135 le__los:43 le__todo:30 le_cambie:83 le_cambio:-44 leave:-27 les:-71 lets:-40
lets__it:-27 lets_get:-39 light:-62 light__on:-35 light_came:-31 like:-37 like_to:-32 list:57 lista:-40 lista_$:-30
listo:32 llantas:61 llantas_nuevas:30 llegaron:26 lleve:60 lleve__otro:34 lleve_con:39 llevo:-35 lo:213 lo__a:-46
lo__de:43 lo__en:114 lo__hacer:34 lo__listo:27 lo__por:-74 lo_arreglaron:37 lo_arreglo:-53 lo_cambie:-26 lo_hago:-46
lo_hice:125 lo_hicieron:86 lo_hizo:111 lo_lleve:43 lo_llevo:-39 lo_mande:29 lo_mismo:-30 lo_tiene:-41 lo_vendi:-96
longer:25 looked:46 los:58 los_frenos:33 lot:25 lube:61 mal:-83 mande:28 me_$:-37 me__hicieron:62 me__hizo:70
me__mal:-42 me__nada:-26 me_hicieron:-52 me_la:30 me_lo:170 mecanico:28 mechanic:36 mes_pasado:36 mi__es:-31
mi__le:29 mi__ya:52 mi_ex:-27 mi_primo:29 mismo:-102 mismo_dia:-40 mom:-25 monday:58 monday_$:42 month_$:-27 much:-43
my:33 my__did:43 my__do:95 my__fixed:48 my__oil:-34 my__put:27 my_car:-38 my_cousin:38 my_dad:29 my_driveway:-29
my_ex:-43 my_mechanic:28 my_number:-29 my_oil:-28 my_own:-40 myself:-28 myself_$:-79 nada:-33 never:-65 new:266
new__in:38 new__on:54 new_battery:60 new_ones:50 new_tires:74 ni:-62 no:-134 no_$:-62 no__ese:-35 no__falta:31
no__for:34 no__lo:-39 no__ya:42 no_conozco:-25 no_gracias:-28 no_hace:40 no_longer:30 no_me:-32 no_need:46 no_se:37
no_soy:-41 no_voy:35 not:-35 now:-31 now_$:-37 nueva:25 nuevas:72 nuevas_$:48 number:-76 number_$:-27 numbers:-28
numero:-34 o:-44 october:46 october_$:46 of:78 of_$:80 of_the:-35 off:-27 off_$:-32 off__list:36 oil_changes:-38
ok:-27 old:45 on:84 on_in:47 on_it:-37 on_saturday:31 on_sunday:37 ones:60 or:-57 otra_parte:27 otro_$:-63
otro_carro:-39 otro_lado:62 otro_mes:-28 otro_taller:85 out:46 own:-55 own_oil:-34 pads:85 pads_are:34 paren:-35
paren_$:-33 parenle:-51 pasada:46 pasada_$:33 pasado:42 pasado_$:28 passed:39 pedal:-27 people:27 please:28 por:-48
por_otro:-63 por_una:-40 primo:35 puedo:-61 put:-39 put_me:-42 put_new:35 que:-41 que__hicieron:-28 quedo:152
quedo_$:39 quick:63 quick_lube:61 ready:-35 ready_$:-29 recall:61 recall_$:41 receipt:26 recien:46 records:31
remember:25 remember_$:25 replaced:105 replaced_in:38 replaced_it:25 rid:-55 rid_of:-55 right:-78 right_now:-30
rotors:45 rubber:30 said:-40 salio:34 sat:37 sat_$:42 saturday:40 saturday_$:57 se:33 se__hice:36 se__hicieron:29
se__puse:25 se__quedo:-26 se_las:28 se_lo:85 se_los:35 se_me:-49 see:-36 seen:30 semana:41 semana_pasada:48
service:-67 serviced:29 servicio:85 set:40 shop:31 should:-25 si:-25 since:50 so:84 so__is:26 so_i:55 sold:-36
solo:-102 someone:44 sorted:28 soy:-60 sticker:38 stop:-50 stop_it:-34 sunday:64 sunday_$:70 swapped:90 take:-36
taken:133 taken__of:133 taken_care:127 taller:32 tengo:-31 tengo_otro:-26 that:97 that_$:-41 that__been:42
that__the:52 that_done:-40 that_is:68 that_last:52 that_off:47 the:41 the__for:-42 the__guy:-26 the__light:-26
the__of:-29 the_brakes:32 the_car:-38 the_divorce:-29 the_first:-30 the_garage:-49 the_oil:43 the_pads:36
the_recall:26 the_tires:27 the_wrong:-35 them:111 there__that:27 they:38 this:-27 this_is:-27 this_morning:26
those:64 those_tires:26 though:32 tiene_mi:-47 time:-110 time_$:-43 time_i:-26 tire:-25 tires:67 tires_on:28 to_$:36
to__it:-50 to__the:-26 to_get:-45 to_it:138 todo:79 too_$:-28 took:-33 took__of:42 took__to:55 took_care:46
took_the:-39 topped:28 totaled:-27 traded:-30 trae:41 truck:36 tuesday:41 tuesday_$:31 twice:-27 un_mes:32 una:-43
uncle:37 use:-38 use_the:-29 ustedes:33 vendi:-107 vendi_$:-85 video:28 was:215 was__and:-41 was__at:27 was__for:27
was__last:33 was_done:48 was_in:43 wasnt:-30 we__the:-30 we_got:49 week:40 week_$:43 weekend:29 weekend_$:26
weeks_$:-28 went:49 went__the:26 were:70 were__in:47 were_done:30 what:-33 what_did:-41 what_do:27 when:31
when__was:30 when_i:45 while:31 why:-34 wife:-30 wife__it:-27 will:-63 will__be:-27 will_it:-29 wipers:33
with_the:-30 work:39 would:-35 wrong:-56 y:50 y__lo:55 y__quedo:28 y_ya:25 ya:366 ya_$:-124 ya__de:-29 ya__di:28
ya__hace:33 ya__hice:68 ya__hicieron:34 ya__lleve:52 ya__lo:108 ya__otro:-43 ya__tiene:-38 ya__vendi:-88 ya_casi:-33
ya_esta:91 ya_fue:73 ya_la:40 ya_le:131 ya_les:-56 ya_lo:125 ya_me:95 ya_no:-81 ya_parenle:-51 ya_pase:38 ya_que:-36
ya_quedo:150 ya_se:104 ya_tengo:-28 ya_tiene:29 yeah_$:-32 yes:-40 yesterday:56 yesterday_$:53 yo:-379 yo__la:-54
yo__le:-69 yo_le:-39 yo_lo:-88 yo_no:-71 you:-95 you__did:50 you__it:37 you__my:-36 you__on:-41 you__the:-56
you_get:-25 you_guys:25 you_put:-50 you_said:-41 you_to:120
"""
