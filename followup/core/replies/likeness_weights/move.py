"""What speaks for and against `move`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "move"
BIAS = -302
WEIGHTS = """\
#abad:36 #able:-18 #abor:-20 #abou:55 #abra:20 #acei:-21 #acia:-22 #adel:63 #adua:19 #afte:46 #agen:35 #alen:18
#alir:18 #alta:-18 #amar:29 #ambi:147 #amel:76 #amos:61 #anan:20 #ance:-76 #ando:18 #anks:-22 #anot:23 #anta:29
#anti:20 #anul:-18 #anym:18 #apar:18 #appo:33 #arde:60 #arla:23 #arli:56 #arte:21 #asad:23 #asel:72 #asem:65
#asis:-28 #ater:19 #athe:53 #atra:43 #atur:45 #avor:68 #away:-20 #bado:36 #befo:-23 #biam:25 #biar:52 #biem:64
#bien:28 #bios:-28 #book:40 #borr:-28 #boss:18 #bout:58 #brin:-110 #bsup:-27 #cale:19 #camb:157 #came:63 #canc:-131
#ceit:-21 #cela:-22 #cele:-37 #cesi:40 #chan:48 #ched:40 #cias:-19 #cita:57 #cole:29 #come:35 #como:-21 #comp:33
#corr:108 #cort:24 #coul:71 #date:23 #days:28 #deja:56 #dela:64 #demo:34 #desp:-52 #dias:60 #diff:30 #diga:25
#dnes:28 #does:52 #domi:25 #dont:-35 #doub:23 #down:26 #dria:47 #dule:41 #eady:-22 #eage:45 #earl:71 #ease:66
#ebod:18 #eces:33 #echa:43 #ecio:27 #ecit:27 #ecor:76 #edne:28 #edul:41 #efor:-23 #eite:-21 #ejar:38 #ejor:30
#elan:63 #else:28 #eman:35 #emel:66 #emor:-25 #emos:57 #enda:40 #engo:46 #enla:30 #erco:29 #erla:68 #erne:34 #esch:62
#esda:66 #esit:40 #esnt:41 #espe:-35 #espu:-51 #esta:35 #esto:-32 #ethi:56 #evam:35 #eves:59 #falt:-27 #favo:68
#fech:48 #fere:30 #ffer:30 #fine:-22 #firm:-39 #floo:18 #fore:-25 #forg:42 #forw:20 #free:-21 #frid:48 #from:-19
#fter:48 #game:35 #gamo:44 #gare:-28 #gend:36 #goin:-55 #good:-24 #grac:-21 #habr:26 #hanc:52 #hank:-31 #have:40
#hedu:41 #here:-33 #hing:50 #hizo:-26 #hora:38 #hour:27 #humb:-28 #hurs:67 #iame:19 #ible:26 #ibre:20 #iday:52
#ieme:64 #iera:23 #ierc:29 #iern:32 #iero:34 #iffe:30 #igam:18 #info:-19 #ingo:27 #inst:63 #intm:33 #into:28
#inut:-35 #irme:-23 #ismo:53 #ital:20 #itch:46 #juev:41 #junt:18 #king:19 #labo:-20 #lado:-21 #lame:-26 #land:25
#lant:71 #ldnt:-22 #leas:67 #lets:63 #libr:20 #lide:48 #lier:49 #ligh:24 #like:32 #llam:-34 #lled:21 #lleg:-20
#llev:-21 #lock:19 #long:-19 #luga:60 #lune:61 #lvid:-21 #make:72 #malo:19 #mana:52 #mand:-21 #mbia:111 #mbie:65
#mbio:-29 #mbsu:-27 #mebo:18 #mejo:30 #mela:140 #melo:25 #ment:33 #meth:56 #mier:29 #mind:-19 #mine:38 #ming:44
#mins:-42 #minu:-35 #mism:60 #miss:-30 #mond:55 #more:26 #morn:25 #moro:-18 #morr:34 #mosl:35 #move:134 #mple:20
#muev:99 #myse:19 #nana:30 #ncel:-131 #ndar:41 #nday:43 #nece:34 #need:23 #nesd:28 #next:33 #ngam:52 #nges:-18
#nnin:-21 #noon:44 #nste:63 #ntar:35 #nten:21 #ntes:-36 #ntit:18 #ntme:33 #nuto:-25 #nymo:18 #odem:55 #odri:49
#oesn:41 #oger:-21 #oing:-58 #oint:32 #oles:34 #olvi:-23 #omeb:18 #omet:48 #omin:34 #omor:34 #ompl:30 #onda:52
#oner:63 #onga:63 #oone:40 #oras:-18 #orge:-25 #orgo:69 #orni:25 #orra:83 #orri:-19 #orro:34 #orry:-30 #orte:23
#orwa:20 #ospo:90 #ossi:21 #othe:86 #otra:-43 #oubl:23 #ould:130 #ound:-20 #ours:-40 #over:91 #para:91 #pasa:47
#pase:116 #pere:-38 #pero:41 #plea:64 #plet:21 #pode:53 #podr:58 #poin:32 #pone:38 #pong:62 #posp:90 #poss:21
#ppoi:33 #pued:118 #pues:-50 #push:72 #quem:18 #quit:-25 #rade:40 #radu:19 #rama:45 #rame:22 #rani:20 #rano:-33
#rath:53 #rcol:29 #rday:45 #reco:68 #rect:-21 #rent:27 #repr:45 #resc:62 #rget:-25 #rgot:69 #rida:52 #ring:-97
#rlie:56 #rnes:34 #rnin:24 #rnoo:19 #road:25 #roge:-18 #rral:25 #rram:35 #rrec:-21 #rrer:43 #rrie:-19 #rrow:34
#rsda:22 #rwar:20 #saba:35 #sado:27 #same:78 #satu:46 #sche:41 #sday:88 #sela:52 #self:18 #selo:19 #sema:32 #seme:44
#sibl:27 #sier:35 #sist:-23 #sito:40 #slid:48 #slot:36 #some:52 #soon:38 #sorr:-30 #sper:-34 #spon:96 #spue:-51
#ssib:21 #stea:63 #stil:-28 #stir:-28 #stop:-49 #stoy:-25 #swap:43 #swit:48 #tant:29 #tard:37 #taro:24 #tead:63
#teng:46 #tern:18 #text:-18 #than:19 #that:76 #ther:123 #thin:49 #this:-28 #thum:-28 #thur:66 #time:83 #tito:20
#tmen:33 #tmrw:-18 #toca:31 #todo:-20 #tomo:34 #trab:18 #trad:43 #tras:33 #tter:32 #tues:42 #turd:46 #turn:37
#uble:23 #uede:77 #uedo:43 #uesd:38 #ueva:55 #ueve:78 #ugar:60 #uier:20 #uldn:-22 #umbs:-28 #unes:61 #urda:46
#urge:31 #urns:20 #ursd:22 #urse:-26 #utos:-25 #vame:35 #verl:40 #vide:-27 #vier:28 #visi:26 #wait:-22 #ward:20
#wedn:28 #week:66 #were:-33 #will:-19 #witc:48 #work:74 #woul:62 #ymor:18 #ysel:19 %again_later:98
%again_later%bring:18 %again_later%call_off:24 %again_later%doubt:-29 %again_later%fails:26 %again_later%family:39
%again_later%how_long:77 %again_later%message:-33 %again_later%on_way:76 %again_later%phone:42 %again_later%refuse:52
%again_later%shift_it:92 %agree:-74 %agree%away:18 %agree%busy:30 %agree%call_off:73 %agree%do_it:24
%agree%question:37 %agree%refuse:72 %agree%shift_it:65 %agree%wrong_one:38 %away:39 %away%busy:25 %away%elsewhere:24
%away%on_way:21 %away%place:30 %away%shift_it:87 %bad:24 %bad%elsewhere:23 %bad%how_long:21 %bring:-27
%bring%busy:-28 %bring%call_off:-79 %bring%car_part:-23 %bring%do_it:64 %bring%elsewhere:29 %bring%how_long:39
%bring%leave_me:-46 %bring%refuse:-49 %bring%shift_it:80 %busy:103 %busy%do_it:36 %busy%fails:41 %busy%refuse:27
%busy%wrong_one:18 %call_off:-39 %call_off%car_part:31 %call_off%do_it:-37 %call_off%elsewhere:-23 %call_off%fails:19
%call_off%gone_car:-18 %call_off%how_long:35 %call_off%phone:-26 %call_off%place:51 %call_off%question:60
%call_off%wrong_one:-23 %car:-36 %car%odometer:24 %car%question:-25 %car%shift_it:-30 %car_part:-64
%car_part%do_it:-71 %car_part%money:-34 %car_part%shift_it:-41 %do_it:25 %do_it%elsewhere:-36 %do_it%gone_car:-37
%do_it%wrong_one:20 %doubt:-48 %doubt%elsewhere:-67 %doubt%message:-24 %doubt%shift_it:-29 %doubt%wrong_one:-65
%elsewhere:28 %elsewhere%how_long:56 %elsewhere%meaning:18 %elsewhere%message:-26 %elsewhere%odometer:-19
%elsewhere%phone:43 %elsewhere%place:-20 %elsewhere%wrong_one:-39 %fails%refuse:18 %fails%shift_it:18 %family:34
%family%how_long:30 %family%odometer:23 %gone_car:36 %gone_car%how_long:30 %gone_car%question:41 %how_long:99
%how_long%lift:-20 %how_long%meaning:20 %how_long%opening:-31 %how_long%phone:31 %how_long%question:-49
%how_long%refuse:44 %how_long%shift_it:137 %how_long%start_again:27 %how_long%wrong_one:83 %leave_me:-52
%leave_me%money:18 %lift:-19 %meaning:25 %message:-65 %message%shift_it:-34 %message%start_again:-19
%message%wrong_one:-19 %odometer:75 %odometer%on_way:24 %odometer%refuse:30 %odometer%shift_it:30 %on_way:-147
%on_way%place:-22 %on_way%shift_it:82 %opening:-19 %opening%shift_it:21 %phone:-25 %phone%refuse:22 %phone%who:23
%place%refuse:20 %question:41 %question%season:26 %question%shift_it:58 %question%start_again:-25 %question%who:-18
%refuse:110 %refuse%shift_it:48 %refuse%thanks:-46 %season:42 %season%shift_it:19 %shift_it:448
%shift_it%smoke_smell:22 %shift_it%start_again:82 %shift_it%wrong_one:70 %smoke_smell:21 %thanks:-57
%who%wrong_one:18 %wrong_one:65 @?:186 @after_visit:-33 @car:-22 @confirm:434 @confirm_stop:-23 @confirm_thumbsup:-24
@day:-91 @later:81 @nothing:345 @nothing_info:-18 @odometer:-23 @offers:-271 @reading:-37 @time:-154 @times:170
@walk_in:-39 ^_$:-124 ^_a:-34 ^_all:-20 ^_antes:-20 ^_any:41 ^_be:-43 ^_borre:-19 ^_can:73 ^_cancel:-21 ^_cancele:-18
^_change:19 ^_could:58 ^_cuanto:-26 ^_despues:-25 ^_did:-19 ^_do:-42 ^_dont:-19 ^_el:-108 ^_en:33 ^_ese:22 ^_eta:-42
^_forget:-19 ^_forgot:19 ^_friday:-30 ^_got:-20 ^_have:19 ^_how:-36 ^_i:39 ^_id:25 ^_im:-24 ^_info:-19 ^_it:-26
^_lets:44 ^_llego:-20 ^_make:41 ^_mi:18 ^_move:31 ^_my:46 ^_necesito:46 ^_need:82 ^_no:49 ^_nop:32 ^_ok:-38
^_olvide:-26 ^_para:-65 ^_podemos:28 ^_podria:37 ^_por:-19 ^_puede:22 ^_puedo:36 ^_que:24 ^_quiero:28 ^_reschedule:39
^_roger:-18 ^_se:38 ^_see:-47 ^_si:-54 ^_something:49 ^_still:-29 ^_stop:-19 ^_tengo:36 ^_thanks:-22 ^_thumbsup:-27
^_tienen:-23 ^_turns:21 ^_voy:-26 ^_we:-20 ^_were:-28 ^_what:-38 ^_who:-19 ^_wouldnt:-19 ^_y:-88 ^_ya:-49 ^_yep:-36
^_yes:-77 ^_you:-41 a:140 a__hora:-27 a__no:22 a__si:27 a__tarde:25 a__time:26 a__to:-18 a__y:20 a_different:23
a_esa:19 a_ir:-18 a_la:33 a_las:67 a_later:24 a_new:35 a_que:-33 a_week:22 able:-24 able_to:-24 about:55 about_it:22
aceite:-21 after:27 after_$:24 afternoon:23 ahi:-32 al:193 al__y:49 al_jueves:24 al_lunes:39 al_sabado:40
al_viernes:34 alcanzo_a:-18 all:-32 all__for:-19 an:35 an__change:-28 an_hour:49 an_oil:-28 and:74 and__me:18
another:23 another_day:29 antes:-42 antes_de:-29 antes_del:-29 any:97 any__but:18 any__of:20 any__to:40 any_chance:29
anymore:18 anything_$:-31 anything__that:21 appointment:34 appointment_$:-19 at:18 at_$:-40 at_work:22 away:-20
away_$:-20 back__hour:23 back_an:39 bail:-19 be__at:-21 be_better:21 be_there:-57 before:-23 borre:-20 borre_mi:-20
boss:18 bring:-108 bring_it:-31 but:28 but__one:20 but_the:21 by:-42 call:-27 called:22 cambia:24 cambiar:56
cambiar__cita:20 cambiar_la:50 cambiar_mi:18 cambie:-38 cambie_por:-26 cambieme:36 cambieme_la:26 cambios:-28 came:63
came_up:42 can:214 can__be:33 can__bring:-22 can__do:55 can__have:24 can__make:19 can_i:51 can_it:36 can_we:116
can_you:30 cancel:-78 cancel_$:-25 cancel_thursday:-18 cancele:-22 cant__it:-23 cant_make:22 car:-18 chance:52
change:20 change_$:-22 change__to:21 change_it:44 change_my:19 changes:-18 cita__el:-26 cita__jueves:-25 cita_del:-19
cita_para:-23 come:37 come__friday:-38 come_at:40 como:-27 con:23 con_la:20 corte:24 could:74 could_i:35 could_we:37
date:26 day:132 day_$:39 day_please:24 days:26 de:34 de__a:19 de__cita:-18 de__en:23 de__que:18 de_dia:38 de_la:-33
de_las:-27 de_mi:20 dejar:23 del__el:30 despues:-51 despues__las:-29 despues_de:-28 dia:188 dia_$:39 dia_no:18
dia_por:26 dias:60 dias_$:54 did:-23 did_you:-21 different:30 different_day:24 digame:18 do:61 do__do:21 do__need:-46
do_i:-61 do_instead:-27 do_the:18 do_you:24 doesnt:41 doesnt__anymore:35 doesnt_work:34 domingo:21 dont:-35
dont_need:-24 dos:18 dos_dias:26 double:23 down:27 down_the:23 earlier:50 early_for:19 el:95 el__a:-53
el__despues:-19 el__dia:23 el__el:22 el__jueves:18 el__que:32 el__se:-20 el__temprano:-28 el_domingo:21 el_lunes:27
el_miercoles:30 el_mismo:27 else:29 en:23 en__de:44 en__del:71 en_lugar:70 en_pie:-19 en_vez:41 end:-20 es_que:28
ese:63 ese_dia:54 esperen:-27 esperen_$:-27 esta:44 estoy:-25 eta:-42 falta:-18 favor:68 favor_$:51 fecha:48
fecha_$:25 fine:-22 fine_$:-20 for:-30 for_an:-19 for_thursday:-30 forget:-25 forgot:69 forward:20 free:-19 friday:45
from:-19 going:-55 going__have:-18 going_to:-53 good:-24 good_$:-20 good_for:-28 got:60 got_$:36 got_anything:21
got_it:-22 gracias:-19 habra:26 have:40 have_a:30 have_got:18 hay:22 hizo:-26 hizo_tarde:-25 hora:47 hora_$:21
hour:41 hour_$:27 how:44 how_about:67 hoy:49 huh:-19 i:53 i__a:48 i__at:39 i__for:19 i__friday:22 i__got:18 i__in:-44
i__to:-42 i_bring:-30 i_forgot:40 i_have:62 i_need:-62 i_wont:-23 id:32 if:60 if__can:19 im:-26 in:-50 in_$:-27
in_friday:-50 in_the:23 info:-19 info_$:-19 instead:63 instead_of:22 ir:-39 ir_$:-55 is:81 is__now:20 is__the:22
is_a:-20 is_out:29 is_this:-18 is_too:19 it:103 it_$:-106 it__an:41 it__how:32 it__the:23 it_a:19 it_anymore:-24
it_be:63 it_can:22 it_in:-25 it_to:58 it_up:22 jueves:41 jueves_$:-25 jueves__las:-23 jueves__viernes:23 jueves_a:-21
la:186 la__para:25 la__pasar:20 la__y:18 la_cambia:19 la_cita:37 la_hora:30 la_otra:-24 la_tarde:18 labor:-20 las:45
las__las:24 las_a:26 las_no:22 las_se:-23 las_y:20 late:-24 later:22 le:-43 lets:64 lets__it:42 lets_do:24 libre:20
libre_$:21 like:34 like_to:18 llegar:25 llegar_a:26 lo:-81 lo__por:-19 lo_cambie:-20 lo_de:-20 long:-21 los:-18
lugar:60 lugar_de:35 lunes:61 lunes_$:56 make:74 make__the:27 make_it:18 malo:20 manana:30 manana_$:-19 martes__el:19
mas:169 mas_tarde:137 mas_temprano:19 me:125 me_$:-31 me__cambia:19 me__cambiar:20 me__el:-21 me__tarde:-26
me_down:18 me_esperen:-27 me_hizo:-25 me_la:53 me_now:19 me_on:18 me_to:61 mejor:30 mejor_no:-24 mi:73 mi__del:-20
mi__para:18 mia:18 miercoles:29 min:-90 min_$:-31 min_tarde:-25 mine:45 mins:-42 minutos:-25 mismo:54 mismo_dia:39
miss:-36 miss_it:-31 mon:21 monday:61 morning:27 morning_$:19 move:64 move__to:32 move_it:28 move_me:28 mover:27
moverla:41 my:48 my__and:18 my_appointment:27 myself:19 necesito:40 need:18 need__appointment:-19 need__bring:-40
need__cancel:-23 new:48 next:33 no:86 no_$:110 no__el:60 no__esperen:-27 no__ir:-48 no__manana:20 no_good:20 noon:26
nop:32 nop_$:32 not_$:19 not__to:-24 not_tomorrow:21 now:58 of:55 of_my:21 off:-28 oil:-34 oil_change:-35 ok:-29
olvide:-26 on:-61 on_$:-39 on__th:24 one_i:20 other:59 other_day:32 otra:-42 otra_fecha:26 otra_vez:-69 otro_$:-26
otro_dia:53 out_$:-27 para:106 para__lunes:23 para__sabado:25 para_despues:23 para_el:84 pasado:31 pasar_al:18
pasela:53 pero:36 pie:-21 pie_$:-18 please:65 please_$:71 pm:28 podemos:55 podria:44 podria_ser:38 por_favor:61
por_la:-18 possible:21 puede:69 puede_$:-40 puede_ser:30 puedo:49 puedo__a:20 puedo__el:24 puedo_llegar:29 push:69
push__back:31 push_it:52 put:42 put__on:19 put_me:37 que:68 que__el:19 que__la:38 que__lo:-19 que_cambiar:23
que_es:-24 que_hora:-34 que_le:-19 que_sea:42 que_ya:18 quiero__la:19 rather:53 rather_than:36 ready:-20
reschedule:70 reschedule_$:23 reschedule_please:28 roger:-18 sabado:37 sabado_$:21 salgo_de:20 salir:18 same:70
same_time:59 saturday:45 saturday_$:22 schedule:-19 se:39 se__hizo:-25 se__mas:24 se_puede:28 sea:41 see:-96
see__then:-21 see__tomorrow:-21 see_you:-87 semana:36 semana_$:27 semana_que:22 ser:66 ser_mas:54 set:-18 si:61
si_$:21 slide:48 slot:36 slot_$:20 so:29 something:56 something__up:43 something_came:43 sooner:40 sorry:-30
sorry_$:-21 still:-28 still_on:-21 stop:-36 su:-20 swap:44 switch:49 switch_me:19 tan:21 tantito:20 tarde:62
tarde_y:20 tempranito:21 temprano:-26 temprano_$:-42 tengo:48 tengo_que:26 th:36 than:50 thanks:-26 that:76
that_day:30 the:129 the__after:53 the__is:20 the__of:29 the_appointment:-34 the_better:-19 the_day:31 the_same:24
the_th:38 the_week:25 there:-22 there_at:-21 there_by:-22 this:-28 thumbsup:-27 thumbsup_$:-27 thurs:45
thursday_$:-63 thursday__work:37 thursday_after:-20 thursday_at:-26 tienen_$:24 til:26 time:98 time_$:95 tmrw:-18
to:206 to__in:25 to__please:30 to__th:20 to_bail:-19 to_bring:-44 to_cancel:-48 to_change:45 to_come:27 to_friday:31
to_have:-19 to_make:-35 to_monday:31 to_move:22 to_next:26 to_push:22 to_the:51 to_work:-18 toca:31 today_$:-18
tomorrow:21 tomorrow_$:-45 tomorrow_is:19 too:24 too__for:25 too_early:19 trade:44 tuesday:38 tuesday_$:31
tuesday_and:19 turns:20 turns_out:20 un_dia:29 up:35 up_$:-18 up_at:23 van_a:-25 vez:-32 vez_$:-20 viernes:34
viernes_$:39 viernes__las:-31 viernes_a:-29 voy:-40 wait_$:-20 way:28 way_to:40 we:141 we__instead:-23 we__it:69
we_do:52 we_make:26 wednesday:31 wednesday_$:30 week:67 week_$:31 week_after:25 were:-33 what_else:20 wont__it:-29
wont_be:-20 wont_work:41 work:76 work_$:-35 would:81 would__better:21 would_be:32 wouldnt:-19 wouldnt__it:-18
wouldnt_miss:-18 y:22 y_$:-69 y__cuanto:23 y_digame:19 ya:-29 ya_no:-22 yep:-36 yes:-80 yes_$:-21 yo:18 yo__el:19
you:-87 you_$:-20 you_then:-23 you_tomorrow:-21
"""
