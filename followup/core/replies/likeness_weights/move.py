"""What speaks for and against `move`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "move"
BIAS = -358
WEIGHTS = """\
#abad:50 #abor:-36 #abou:91 #acia:-28 #adel:89 #adua:27 #afte:68 #agen:54 #alta:-41 #amar:35 #ambi:192 #amel:95
#amos:95 #ance:-83 #anks:-25 #anot:36 #anta:55 #ante:-28 #anto:28 #appo:48 #arda:-25 #arde:92 #arla:105 #arli:86
#arte:42 #asar:31 #asel:113 #asem:90 #asis:-39 #ater:29 #athe:69 #atra:66 #atur:78 #avor:86 #bado:50 #befo:-34
#bett:33 #biam:31 #biar:109 #biem:85 #bien:48 #bios:-32 #body:30 #book:55 #borr:-42 #bout:102 #brin:-160 #bsup:-35
#camb:210 #came:82 #canc:-159 #cesi:48 #chan:49 #ched:44 #choo:25 #cita:61 #cole:43 #come:49 #como:-34 #comp:40
#corr:131 #coul:112 #cour:-30 #date:26 #days:25 #deja:61 #dejo:-25 #dela:90 #deme:34 #demo:42 #desp:-66 #dias:72
#diff:39 #diga:30 #dnes:47 #does:69 #domi:28 #dont:-48 #doub:36 #down:36 #dria:90 #dule:46 #eady:-27 #eage:69
#earl:107 #ease:78 #eces:52 #echa:61 #ecio:29 #ecit:32 #ecor:91 #edne:47 #edul:46 #efor:-34 #ejar:41 #ejor:32
#elan:89 #else:42 #eman:59 #emel:88 #emor:-39 #emos:82 #enda:41 #engo:60 #enla:34 #epro:56 #erco:43 #erla:104
#erne:44 #erro:25 #esch:73 #esda:93 #esit:48 #esnt:59 #espe:-49 #espu:-65 #esto:-46 #ethi:75 #ette:33 #eval:46
#evam:49 #even:29 #eves:73 #falt:-46 #favo:85 #fech:67 #fere:35 #ffer:51 #fier:30 #fine:-44 #firm:-64 #fore:-36
#forg:48 #forw:32 #free:-28 #fren:27 #frid:57 #fter:70 #game:57 #gamo:62 #gare:-41 #gend:56 #goin:-72 #good:-35
#grac:-30 #gram:56 #habr:30 #hace:25 #half:-25 #hanc:73 #hang:-28 #hank:-25 #have:63 #hedu:46 #here:-42 #hing:66
#hizo:-36 #hool:25 #hora:31 #hour:36 #humb:-35 #hurs:82 #iame:26 #iarl:81 #iday:58 #ieme:85 #iemp:-26 #ierc:43
#iern:42 #iero:49 #iffe:39 #igam:26 #igui:25 #info:-31 #ingo:29 #inst:70 #intm:48 #into:38 #inut:-49 #irme:-35
#ismo:68 #itch:53 #ivoq:25 #juev:52 #king:26 #labo:-35 #land:31 #lant:111 #ldnt:-33 #leas:79 #lets:114 #lide:75
#lier:78 #ligh:27 #like:37 #llam:-26 #lled:28 #llev:-25 #long:-28 #luga:65 #lune:83 #lvid:-34 #make:104 #mana:76
#mand:-30 #mane:31 #mart:25 #mbia:183 #mbie:72 #mbio:-63 #mbsu:-35 #mejo:32 #mela:182 #melo:28 #ment:46 #meth:75
#mier:43 #mine:53 #ming:48 #mins:-75 #minu:-49 #mism:74 #miss:-47 #mond:73 #more:33 #morn:29 #moro:-30 #morr:43
#mosl:41 #move:183 #muev:142 #myse:32 #nana:36 #ncel:-159 #ndar:43 #nday:51 #nece:46 #need:26 #nera:25 #nesd:47
#next:64 #ngam:82 #nito:29 #noon:58 #noth:26 #nste:73 #ntar:46 #ntes:-50 #ntme:48 #nuto:-36 #oads:25 #odem:75
#odri:89 #oesn:59 #oger:-35 #ogra:56 #oing:-75 #oint:47 #oles:49 #olvi:-34 #omet:66 #omin:38 #omor:43 #ompl:34
#onda:69 #oner:88 #onga:106 #oone:61 #oras:-34 #orge:-38 #orgo:89 #orni:29 #orra:97 #orri:-26 #orro:43 #orry:-32
#orwa:32 #ospo:129 #ossi:30 #othe:120 #otra:-55 #oubl:36 #ould:183 #ount:-25 #ours:-51 #over:137 #para:98 #pasa:67
#pase:172 #pere:-51 #pero:59 #pezo:26 #plea:76 #pode:72 #podr:100 #poin:47 #pone:49 #pong:105 #posp:129 #poss:39
#ppoi:48 #prog:56 #pued:139 #pues:-64 #punt:-27 #push:92 #quem:25 #quie:33 #quit:-32 #raci:-25 #rade:46 #radu:27
#rama:56 #rame:27 #rani:34 #rano:-47 #rath:70 #rcol:43 #rday:78 #reag:69 #reco:81 #rect:-36 #rent:35 #repr:56
#resc:73 #rget:-38 #rgot:89 #rida:62 #ring:-149 #rlie:86 #rnes:44 #rnin:29 #road:43 #roge:-31 #rogr:56 #rral:28
#rram:42 #rrec:-36 #rrer:59 #rrie:-27 #rrow:43 #rsda:33 #rtes:35 #rwar:32 #saba:54 #sado:32 #same:111 #satu:79
#sche:46 #scho:25 #sday:125 #sela:91 #self:31 #sema:55 #seme:66 #sibl:29 #sier:41 #sist:-32 #sito:48 #slid:75
#slot:41 #some:69 #soon:60 #sorr:-32 #sper:-46 #spon:136 #spue:-65 #ssib:30 #stea:80 #stil:-29 #stir:-39 #stop:-59
#stoy:-37 #surg:39 #swap:65 #swit:56 #tant:39 #tard:50 #tead:81 #teng:61 #than:40 #that:97 #ther:170 #thin:66
#thum:-35 #thur:82 #time:115 #tito:27 #tmen:48 #toca:34 #todo:-26 #tomo:42 #trab:29 #trad:51 #trai:26 #tras:54
#tter:69 #tues:50 #turd:79 #turn:44 #uble:36 #uede:86 #uedo:57 #uesd:46 #ueva:85 #ueve:100 #ugar:65 #uier:42
#uite:-26 #uldn:-33 #umbs:-35 #unes:83 #urda:79 #urge:40 #ursd:33 #urse:-34 #utos:-36 #vala:46 #vame:49 #vemo:-25
#verl:64 #vers:31 #vide:-36 #vier:35 #visi:30 #wait:-42 #ward:32 #wedn:47 #week:100 #were:-48 #witc:56 #work:113
#woul:79 #yeah:31 #ysel:32 %again_later:109 %again_later%agree:35 %again_later%away:26 %again_later%call_off:45
%again_later%car_part:25 %again_later%doubt:-33 %again_later%fails:36 %again_later%family:44
%again_later%gone_car:-25 %again_later%how_long:89 %again_later%message:-49 %again_later%on_way:111
%again_later%phone:63 %again_later%refuse:84 %again_later%shift_it:109 %agree:-47 %agree%bad:27 %agree%busy:51
%agree%call_off:133 %agree%do_it:37 %agree%doubt:-28 %agree%place:46 %agree%question:48 %agree%refuse:130
%agree%shift_it:114 %agree%wrong_one:66 %away:36 %away%bring:32 %away%busy:36 %away%elsewhere:28 %away%place:36
%away%shift_it:107 %away%wrong_one:29 %bad:45 %bad%elsewhere:37 %bad%how_long:38 %bad%meaning:35 %bring:-47
%bring%busy:-38 %bring%call_off:-83 %bring%car_part:-31 %bring%do_it:84 %bring%elsewhere:26 %bring%fails:44
%bring%how_long:58 %bring%leave_me:-64 %bring%refuse:-69 %bring%shift_it:105 %busy:165 %busy%do_it:54 %busy%fails:53
%busy%question:27 %busy%refuse:34 %busy%wrong_one:28 %call_off%car:32 %call_off%car_part:54 %call_off%do_it:-60
%call_off%elsewhere:-40 %call_off%fails:29 %call_off%gone_car:-26 %call_off%how_long:39 %call_off%odometer:27
%call_off%phone:-38 %call_off%place:62 %call_off%question:98 %call_off%shift_it:-63 %call_off%wrong_one:-25 %car:-40
%car%do_it:34 %car%fails:27 %car%odometer:26 %car%on_way:29 %car%question:-30 %car%shift_it:-26 %car_part:-34
%car_part%do_it:-89 %car_part%fails:57 %car_part%money:-46 %car_part%question:-39 %car_part%shift_it:-49
%do_it%elsewhere:-43 %do_it%family:29 %do_it%gone_car:-41 %do_it%question:-27 %do_it%wrong_one:42 %doubt:-66
%doubt%elsewhere:-97 %doubt%message:-29 %doubt%shift_it:-50 %doubt%wrong_one:-96 %elsewhere%gone_car:-26
%elsewhere%how_long:69 %elsewhere%meaning:26 %elsewhere%message:-34 %elsewhere%phone:61 %elsewhere%wrong_one:-51
%fails:56 %fails%gone_car:26 %fails%how_long:40 %fails%refuse:27 %fails%shift_it:42 %family:38 %family%how_long:37
%gone_car:64 %gone_car%how_long:51 %gone_car%question:63 %gone_car%shift_it:-25 %how_long:74 %how_long%lift:-40
%how_long%meaning:38 %how_long%money:-30 %how_long%opening:-38 %how_long%phone:39 %how_long%question:-83
%how_long%refuse:54 %how_long%shift_it:161 %how_long%start_again:25 %how_long%wrong_one:107 %leak:25
%leak%shift_it:25 %leave_me:-71 %leave_me%money:25 %leave_me%refuse:27 %lift:-46 %meaning:56 %message:-80
%message%shift_it:-46 %message%start_again:-27 %odometer:96 %odometer%on_way:27 %odometer%refuse:45
%odometer%shift_it:37 %on_way:-137 %on_way%shift_it:115 %opening%refuse:26 %opening%shift_it:32 %pay_day:26
%pay_day%season:28 %phone:-29 %phone%refuse:29 %phone%who:30 %place%refuse:44 %question:65 %question%shift_it:36
%question%start_again:-31 %question%who:-29 %question%wrong_one:33 %refuse:138 %refuse%shift_it:25
%refuse%start_again:30 %refuse%thanks:-46 %season:69 %shift_it:472 %shift_it%smoke_smell:30 %shift_it%start_again:106
%shift_it%wrong_one:86 %smoke_smell:41 %thanks:-56 %wrong_one:111 @?:250 @after_visit:-41 @car:-27 @confirm:494
@confirm_:-99 @confirm_stop:-27 @confirm_thumbsup:-31 @day:-109 @later:100 @nothing:401 @nothing_info:-28
@odometer:-26 @offers:-348 @reading:-29 @time:-193 @times:181 @walk_in:-52 ^_$:-157 ^_a:-58 ^_all:-28 ^_antes:-30
^_any:55 ^_be:-57 ^_borre:-27 ^_can:79 ^_cancel:-33 ^_como:-29 ^_could:91 ^_cuanto:-33 ^_despues:-34 ^_do:-68
^_dont:-33 ^_el:-151 ^_en:36 ^_eta:-51 ^_forget:-30 ^_friday:-36 ^_hay:40 ^_hey:25 ^_how:-44 ^_i:69 ^_id:26 ^_im:-41
^_info:-29 ^_it:-48 ^_la:26 ^_lets:83 ^_llego:-32 ^_lo:-25 ^_make:53 ^_min:-27 ^_move:45 ^_my:52 ^_necesito:62
^_need:103 ^_no:73 ^_nop:37 ^_ok:-56 ^_olvide:-34 ^_para:-93 ^_pasela:48 ^_podemos:38 ^_podria:68 ^_puedo:44
^_push:25 ^_que:27 ^_quiero:42 ^_reschedule:49 ^_roger:-31 ^_se:54 ^_see:-75 ^_si:-72 ^_something:68 ^_still:-35
^_swap:28 ^_tengo:64 ^_the:-27 ^_thumbsup:-35 ^_thursday:27 ^_tienen:-36 ^_voy:-30 ^_we:-30 ^_were:-41 ^_what:-61
^_who:-27 ^_wouldnt:-28 ^_y:-116 ^_ya:-60 ^_yep:-54 ^_yes:-99 ^_you:-62 a:196 a__a:34 a__hora:-41 a__no:30 a__se:-29
a__si:43 a__tarde:33 a__time:31 a__to:-25 a_different:29 a_esa:38 a_hoy:28 a_ir:-30 a_la:41 a_las:88 a_later:30
a_manana:29 a_new:40 a_que:-56 a_week:34 able:-31 able_to:-31 about:91 about_it:30 after:46 after_$:38 afternoon:30
ahi:-37 al:244 al__y:69 al_jueves:28 al_lunes:55 al_sabado:51 al_viernes:57 alcanzo_a:-26 all__for:-27 an:42
an__change:-40 an_hour:60 an_oil:-41 and:88 another:37 another_day:41 antes:-57 antes_de:-42 antes_del:-42 any:136
any__next:-26 any__of:28 any__to:51 any_chance:39 any_day:-25 anything_$:-53 appointment:48 appointment_$:-33 asi:-26
at:37 at_$:-60 at_work:34 away_$:-27 back_an:46 bad:35 bail:-27 be:28 be__at:-28 be__by:-25 be_better:32 be_there:-78
before:-34 better:33 booked:27 borre:-28 borre_mi:-28 bring:-158 bring_it:-46 but:36 by:-57 by_$:-26 c:-84 call:-40
cambia:33 cambiar:36 cambiar__cita:26 cambiar_la:34 cambiarla:81 cambie:-51 cambie_por:-37 cambieme:44 cambieme_la:33
cambiemela:31 cambio:-30 cambios:-32 came:82 came_up:59 can:268 can__be:49 can__bring:-30 can__do:75 can__have:27
can__make:25 can_do:-26 can_i:59 can_it:52 can_we:137 can_you:48 cancel:-121 cancel_$:-30 cancel_thursday:-28
cant__it:-49 cant_do:34 chance:73 chance_of:28 change_$:-35 change__to:27 change_it:57 change_my:25 cita__el:-33
cita__jueves:-34 cita_del:-28 cita_para:-25 come:52 come__friday:-54 come_at:54 come_in:-25 como:-45 con:35 could:116
could__do:39 could_i:39 could_we:62 date:30 day:156 day_$:34 day_please:30 days:37 de:69 de__en:25 de_dia:52
de_la:-59 dejar:28 dejo:-25 del__el:41 del_jueves:28 despues:-65 despues__las:-33 despues_de:-39 dia:276 dia_$:54
dia__favor:36 dia_por:36 dia_que:28 dias:72 dias_$:66 different:39 different_day:33 digame:27 do:95 do__and:34
do__day:28 do__need:-71 do_any:28 do_i:-96 do_instead:-42 do_tomorrow:32 do_you:33 doesnt:59 doesnt__anymore:51
doesnt_work:51 dont:-48 dont_need:-35 dos_dias:31 double:36 down:37 down_the:32 earlier:79 earlier_$:31 early:25
el:134 el__a:-85 el__despues:-26 el__el:36 el__que:44 el__se:-30 el__temprano:-37 el_lunes:33 el_miercoles:39
el_mismo:25 else:43 empezo:26 empezo_a:26 en:32 en__de:60 en__del:96 en_lugar:94 en_pie:-34 en_vez:59 end:-25
equivoque:25 equivoque_de:25 era:28 es:-49 es_$:-29 es_que:29 esa:38 esa_hora:39 ese:93 ese_dia:87 esperen:-37
esperen_$:-36 esta:59 estoy:-37 eta:-51 falta:-35 favor:86 favor_$:69 fecha:67 fecha_$:41 fine:-44 fine_$:-40 for:-51
for_thursday:-47 for_tomorrow:-25 forget:-38 forgot:89 forward:32 friday:59 going:-72 going__have:-25 going__make:-25
going_to:-75 good:-35 good_for:-45 got:114 got_$:53 got_anything:40 got_it:-36 habra:30 half:-25 have:63
have__bail:-25 have__cancel:-25 have_a:43 hay:61 hey:25 hizo:-36 hizo_tarde:-35 hora:49 horas:-33 hour:52 hour_$:29
how:71 how_about:86 hoy:79 i:52 i__a:72 i__at:54 i__for:29 i__friday:29 i__in:-57 i__to:-65 i_bring:-47 i_forgot:55
i_have:81 i_need:-88 i_wont:-33 id:60 if:119 if__can:36 im:-33 in:-45 in_$:-36 in_friday:-67 in_the:32 info:-30
info_$:-30 instead:73 instead_of:27 ir:-67 ir_$:-87 is:107 is__now:30 is__the:30 is_bad:30 is_out:44 is_this:-27
it:134 it_$:-151 it__an:49 it__how:48 it__the:31 it__week:46 it_anymore:-37 it_be:90 it_can:29 it_in:-38 it_to:72
jueves:53 jueves_$:-28 jueves__las:-35 jueves__viernes:28 jueves_a:-32 la:241 la__mas:30 la__para:41 la__pasar:27
la__vez:-25 la_cambia:28 la_cita:44 la_otra:-39 la_puede:26 la_quiero:27 la_tarde:25 labor:-35 labor_day:-32 las:70
las__las:33 las_a:35 las_no:29 las_se:-35 las_si:29 late:-31 later:34 later_$:-26 le:-67 lets:116 lets__it:64
lets_do:34 like:39 llegar:30 llegar_a:32 llegare:-40 lo:-86 lo__por:-29 lo_cambie:-28 long:-27 lugar:65 lugar_de:48
lunes:83 lunes_$:73 make:106 make__the:30 manana:36 manana_$:-40 manana_no:27 martes:25 mas:234 mas_$:-45
mas_tarde:184 mas_temprano:26 me:173 me_$:-45 me__el:-32 me__tarde:-35 me_equivoque:25 me_esperen:-37 me_hizo:-35
me_la:92 me_off:-31 me_on:36 me_to:84 mejor:32 mejor_no:-36 mi:87 mi__del:-28 miercoles:43 min:-131 min_$:-45
min_tarde:-37 mine:60 mins:-75 minutos:-36 mismo:68 mismo_dia:46 miss:-53 miss_it:-47 mon:25 monday:80 move:86
move__to:35 move__up:43 move_it:32 move_me:48 mover:32 moverla:65 muevala:46 my:66 my_appointment:47 myself:32
necesito:49 need__appointment:-25 need__bring:-62 need__cancel:-36 new:56 next:64 no:108 no_$:156 no__el:77
no__esperen:-37 no__ir:-77 no_llego:34 noon:37 nop:37 nop_$:37 nos_vemos:-28 not_$:25 not__to:-35 not_going:-26
not_tomorrow:39 now:98 of:56 off:-36 oil:-46 oil_change:-53 ok:-46 olvide:-34 on:-69 on_$:-50 on__th:45 on_the:27
one:36 other:81 other_day:41 otra:-55 otra_fecha:40 otra_vez:-99 otro_$:-40 otro_dia:83 para:122 para__lunes:31
para__sabado:43 para_despues:27 para_el:115 pasado:38 pasela:92 pasela_al:38 pero:47 pie:-37 pie_$:-30 please:77
please_$:91 pm:27 podemos:75 podria:75 podria_ser:58 por_favor:69 por_otro:-26 puede:85 puede_$:-62 puede__el:-26
puede_ser:39 puedo:64 puedo__a:27 puedo__el:36 puedo_llegar:35 push:87 push__back:37 push_it:61 put:68 put__on:36
put_me:56 que:89 que__el:40 que__la:25 que__lo:-28 que_cambiarla:54 que_es:-34 que_hora:-56 que_le:-29 que_sea:68
quiero:42 rather:70 rather_than:37 reschedule:85 reschedule_$:32 reschedule_please:34 roads:25 roads_are:25 roger:-31
sabado:52 sabado_$:26 same:94 same_time:81 saturday:78 saturday_$:39 schedule:-27 school:25 se:42 se__hizo:-35
se__mas:27 se_puede:34 sea:67 see:-141 see__then:-29 see__tomorrow:-32 see_you:-128 semana:61 semana_$:51 ser:102
ser_mas:71 set:-25 si:110 si_$:38 si_me:25 sin_falta:-25 slide:75 slide_me:47 slot:42 so:30 something:75
something__up:59 something_came:59 sooner:62 sooner_than:25 sorry:-32 sorry_$:-25 still:-29 still_on:-25 stop:-43
swap:68 swap_me:26 switch:57 tarde:89 tarde_y:25 tempranito:35 tempranito_$:28 temprano:-39 temprano_$:-53 tengo:71
tengo_que:53 th:64 than:65 thanks:-29 that:97 that_day:36 that_is:-33 the:195 the__after:82 the__is:32 the__of:35
the_appointment:-44 the_day:55 the_one:27 the_same:37 the_th:66 the_week:30 there:-26 there_at:-27 there_by:-33
thumbsup:-35 thumbsup_$:-35 thurs:50 thursday_$:-98 thursday__work:55 thursday_after:-33 thursday_at:-39
thursday_is:26 tienen_$:32 til:29 time:137 time_$:130 tmrw_$:-25 to:264 to__anything:-50 to__in:38 to__on:-27
to__please:37 to_bail:-27 to_bring:-68 to_cancel:-73 to_change:63 to_come:38 to_friday:36 to_make:-51 to_monday:36
to_move:27 to_next:54 to_push:28 to_the:67 to_work:-25 toca:34 today_$:-34 tomorrow:39 tomorrow_$:-78 tomorrow_is:32
too:37 too__for:29 too_early:32 trade:54 tuesday:47 tuesday_$:30 un:32 un_dia:48 una_semana:27 up:69 up_$:-25
up_at:35 van_a:-37 vemos:-25 vez:-48 vez_$:-29 viernes:44 viernes_$:65 viernes__la:-26 viernes__las:-47 viernes_a:-46
voy:-49 wait:-27 wait_$:-33 way:37 way_to:51 we:188 we__instead:-36 we__it:94 we_do:70 we_make:45 wednesday:55
wednesday_$:32 week:103 week_$:33 week_after:41 were:-48 what_else:34 wont__it:-43 wont_be:-27 wont_work:55 work:119
work_$:-45 would:108 would__better:32 would_be:45 would_it:28 wouldnt:-29 wouldnt__it:-27 wouldnt_miss:-27 y:58
y_$:-101 y__cuanto:36 y_digame:28 ya:-34 ya_no:-25 yeah:31 yep:-54 yep_$:-29 yes:-108 yes_$:-35 yo:26 yo__el:30
you:-118 you_$:-26 you_then:-34 you_tomorrow:-32
"""
