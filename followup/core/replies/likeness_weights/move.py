"""What speaks for and against `move`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "move"
BIAS = -349
WEIGHTS = """\
#abad:48 #able:-23 #abor:-25 #abou:79 #abra:25 #acei:-27 #acia:-26 #adel:79 #adua:24 #afte:55 #agen:47 #alen:23
#alir:22 #alta:-23 #amar:41 #ambi:177 #amel:102 #amos:84 #anan:26 #ance:-98 #ando:26 #anks:-25 #anot:28 #anta:36
#anti:25 #anul:-23 #anym:24 #apar:22 #appo:43 #arde:77 #arla:29 #arli:76 #arte:28 #asad:30 #asel:95 #asem:82
#asis:-43 #athe:68 #atra:55 #atur:58 #avor:94 #away:-30 #bado:48 #befo:-29 #biam:30 #biar:59 #biem:83 #bien:37
#bios:-36 #book:61 #borr:-39 #boss:24 #bout:83 #brin:-152 #bsup:-37 #cale:23 #camb:189 #came:84 #canc:-168 #ceit:-27
#cela:-28 #cele:-48 #cesi:50 #chan:54 #ched:44 #cias:-22 #cita:71 #cole:37 #come:44 #como:-32 #comp:43 #corr:136
#cort:30 #coul:92 #date:29 #days:36 #deja:74 #dejo:-22 #dela:80 #demo:44 #desp:-66 #dias:75 #diff:35 #diga:32
#dnes:37 #does:72 #domi:33 #dont:-46 #doub:29 #down:34 #dria:66 #dule:45 #eady:-27 #eage:60 #earl:95 #ease:88
#ebod:23 #eces:42 #echa:54 #ecio:34 #ecit:33 #ecor:96 #edne:37 #edul:45 #efor:-29 #eite:-27 #ejar:52 #ejor:31
#elan:78 #else:36 #eman:44 #emel:83 #emor:-36 #emos:77 #enda:54 #engo:58 #enla:38 #erco:37 #erla:87 #erne:39 #esch:73
#esda:90 #esit:50 #esnt:59 #espe:-48 #espu:-65 #esta:47 #esto:-40 #ethi:76 #evam:51 #eves:77 #falt:-34 #favo:94
#fech:59 #fere:35 #ffer:35 #fine:-27 #firm:-49 #flig:22 #floo:23 #fore:-31 #forg:55 #forw:25 #free:-26 #frid:57
#from:-22 #fter:58 #game:44 #gamo:64 #gare:-41 #gend:48 #goin:-73 #good:-34 #grac:-25 #habr:31 #hanc:65 #hank:-35
#have:56 #hedu:45 #here:-39 #hing:63 #hizo:-36 #hora:44 #hour:29 #humb:-37 #hurs:90 #iame:24 #ible:30 #ibre:25
#iday:62 #ieme:83 #iera:29 #ierc:37 #iern:37 #iero:46 #iffe:35 #igam:23 #info:-27 #ingo:35 #inst:73 #intm:43 #into:35
#inut:-47 #irme:-29 #ismo:69 #isti:-27 #ital:25 #itch:56 #juev:55 #junt:23 #king:24 #labo:-25 #lado:-25 #lame:-33
#land:31 #lant:89 #ldnt:-30 #leas:89 #lets:88 #libr:25 #lide:60 #lier:67 #ligh:31 #like:40 #llam:-41 #lled:27
#lleg:-26 #llev:-24 #lock:25 #long:-25 #luga:80 #lune:80 #lvid:-31 #make:97 #malo:24 #mana:67 #mand:-25 #mbia:131
#mbie:81 #mbio:-36 #mbsu:-37 #mebo:23 #mejo:31 #mela:182 #melo:31 #ment:43 #meth:76 #mier:37 #mind:-24 #mine:47
#ming:56 #mins:-63 #minu:-47 #mism:76 #miss:-45 #mond:67 #more:35 #morn:33 #moro:-27 #morr:44 #mosl:44 #move:172
#mple:25 #muev:131 #myse:24 #nana:41 #ncel:-168 #ndar:54 #nday:52 #nece:43 #nesd:37 #next:44 #ngam:75 #nges:-22
#nito:23 #nnin:-26 #noon:56 #nste:73 #ntar:43 #nten:27 #ntes:-47 #ntit:23 #ntme:43 #nuto:-34 #nymo:24 #odem:74
#odri:68 #oesn:59 #oger:-32 #oing:-75 #oint:42 #oles:43 #olvi:-34 #omeb:23 #omet:66 #omin:44 #omor:44 #ompl:38
#onda:63 #oner:80 #onga:87 #oone:51 #oras:-25 #orge:-35 #orgo:93 #orni:33 #orra:103 #orri:-27 #orro:44 #orry:-36
#orte:29 #orwa:25 #ospo:121 #ossi:25 #othe:117 #otra:-57 #oubl:29 #ould:166 #ound:-23 #ours:-56 #over:117 #para:116
#pasa:59 #pase:151 #pere:-53 #pero:53 #plea:86 #plet:26 #pode:72 #podr:79 #poin:42 #pone:48 #pong:87 #posp:121
#poss:25 #ppoi:43 #pued:136 #pues:-63 #push:95 #quem:22 #quit:-31 #rade:50 #radu:24 #rama:60 #rame:27 #rani:28
#rano:-42 #rath:68 #rcol:37 #rday:58 #reco:87 #rect:-26 #rent:31 #repr:60 #resc:73 #rget:-35 #rgot:93 #rida:62
#ries:-25 #ring:-135 #rlie:76 #rnes:39 #rnin:32 #rnoo:23 #road:31 #roge:-27 #rral:31 #rram:43 #rrec:-25 #rrer:55
#rrie:-27 #rrow:44 #rsda:27 #rwar:25 #saba:46 #sado:35 #same:100 #satu:59 #sche:45 #sday:117 #sela:70 #self:23
#selo:24 #sema:40 #seme:56 #sibl:30 #sier:43 #sist:-36 #sito:50 #slid:60 #slot:47 #some:72 #soon:50 #sorr:-35
#sper:-47 #spon:129 #spue:-65 #ssib:26 #stea:73 #stil:-35 #stir:-43 #stop:-63 #stoy:-32 #swap:55 #swit:59 #take:-23
#tant:36 #tard:47 #taro:31 #tead:73 #teng:58 #tern:23 #than:28 #that:97 #ther:167 #thin:61 #this:-36 #thum:-37
#thur:89 #time:110 #tito:25 #tmen:43 #tmrw:-24 #toca:39 #todo:-23 #tomo:43 #trab:24 #trad:53 #tras:41 #tter:40
#tues:59 #turd:59 #turn:49 #uble:29 #uede:87 #uedo:54 #uesd:52 #ueva:75 #ueve:102 #ugar:80 #uier:28 #uldn:-30
#umbs:-37 #unes:80 #urda:59 #urge:38 #urns:26 #ursd:27 #urse:-38 #utos:-34 #vame:51 #verl:51 #vers:22 #vide:-40
#vier:33 #visi:33 #wait:-31 #ward:25 #wedn:37 #week:86 #were:-46 #will:-23 #witc:59 #work:103 #worr:-25 #woul:77
#ymor:24 #ysel:24 %again_later:106 %again_later%bring:24 %again_later%busy:-25 %again_later%call_off:31
%again_later%doubt:-38 %again_later%fails:34 %again_later%family:50 %again_later%gone_car:-24
%again_later%how_long:87 %again_later%message:-41 %again_later%on_way:100 %again_later%phone:53
%again_later%refuse:67 %again_later%shift_it:106 %again_later%wrong_one:-22 %agree:-72 %agree%away:23 %agree%busy:41
%agree%call_off:103 %agree%do_it:35 %agree%question:52 %agree%refuse:96 %agree%shift_it:89 %agree%wrong_one:50
%away:52 %away%busy:38 %away%elsewhere:31 %away%on_way:29 %away%place:39 %away%shift_it:112 %bad:35 %bad%elsewhere:32
%bad%how_long:30 %bad%meaning:24 %bring:-35 %bring%busy:-38 %bring%call_off:-100 %bring%car_part:-28 %bring%do_it:82
%bring%elsewhere:43 %bring%how_long:49 %bring%leave_me:-60 %bring%on_way:25 %bring%refuse:-72 %bring%shift_it:95
%busy:139 %busy%do_it:46 %busy%fails:57 %busy%refuse:36 %busy%wrong_one:22 %call_off:-36 %call_off%car_part:40
%call_off%do_it:-44 %call_off%doubt:23 %call_off%elsewhere:-28 %call_off%fails:24 %call_off%how_long:34
%call_off%phone:-32 %call_off%place:65 %call_off%question:85 %call_off%wrong_one:-28 %car:-42 %car%odometer:31
%car%question:-31 %car%shift_it:-39 %car_part:-76 %car_part%do_it:-89 %car_part%fails:24 %car_part%money:-43
%car_part%shift_it:-52 %do_it:28 %do_it%elsewhere:-49 %do_it%gone_car:-47 %do_it%wrong_one:31 %doubt:-59
%doubt%elsewhere:-86 %doubt%message:-30 %doubt%shift_it:-38 %doubt%wrong_one:-84 %elsewhere:40
%elsewhere%gone_car:-22 %elsewhere%how_long:74 %elsewhere%meaning:26 %elsewhere%message:-33 %elsewhere%odometer:-23
%elsewhere%phone:53 %elsewhere%place:-24 %elsewhere%shift_it:-23 %elsewhere%wrong_one:-52 %fails%how_long:23
%fails%refuse:23 %fails%shift_it:24 %family:49 %family%how_long:39 %family%odometer:32 %family%wrong_one:22
%gone_car:49 %gone_car%how_long:38 %gone_car%question:51 %how_long:90 %how_long%lift:-30 %how_long%meaning:29
%how_long%money:-24 %how_long%opening:-43 %how_long%phone:38 %how_long%question:-73 %how_long%refuse:51
%how_long%shift_it:160 %how_long%start_again:30 %how_long%wrong_one:102 %leave_me:-63 %leave_me%money:23 %lift:-28
%lift%refuse:-22 %meaning:38 %message:-78 %message%shift_it:-42 %message%start_again:-23 %message%wrong_one:-24
%odometer:98 %odometer%on_way:31 %odometer%refuse:40 %odometer%shift_it:38 %on_way:-166 %on_way%place:-23
%on_way%shift_it:111 %opening:-24 %opening%shift_it:24 %phone:-27 %phone%refuse:28 %phone%who:30 %place%refuse:25
%question:55 %question%refuse:22 %question%season:33 %question%shift_it:70 %question%start_again:-34
%question%who:-24 %refuse:146 %refuse%shift_it:41 %refuse%thanks:-54 %season:56 %season%shift_it:22 %shift_it:511
%shift_it%smoke_smell:28 %shift_it%start_again:107 %shift_it%wrong_one:88 %smoke_smell:28 %thanks:-65
%who%wrong_one:22 %wrong_one:86 @?:232 @after_visit:-35 @car:-24 @confirm:469 @confirm_stop:-29 @confirm_thumbsup:-33
@day:-102 @later:107 @nothing:413 @nothing_info:-25 @odometer:-24 @offers:-333 @reading:-41 @time:-180 @times:180
@walk_in:-42 ^_$:-151 ^_a:-46 ^_all:-27 ^_antes:-27 ^_any:51 ^_be:-57 ^_borre:-28 ^_cambio:22 ^_can:77 ^_cancel:-24
^_cancele:-25 ^_change:24 ^_como:-25 ^_could:74 ^_cuanto:-32 ^_despues:-31 ^_did:-24 ^_do:-59 ^_dont:-27 ^_el:-139
^_en:45 ^_ese:27 ^_eta:-53 ^_forget:-27 ^_forgot:24 ^_friday:-42 ^_going:-22 ^_got:-26 ^_have:23 ^_how:-46 ^_i:55
^_id:32 ^_im:-28 ^_info:-26 ^_it:-31 ^_lets:63 ^_llego:-24 ^_lo:-23 ^_make:50 ^_me:-29 ^_mi:23 ^_move:39 ^_my:59
^_necesito:59 ^_need:106 ^_no:74 ^_nop:40 ^_ok:-48 ^_olvide:-38 ^_on:-22 ^_para:-90 ^_podemos:36 ^_podria:53
^_por:-23 ^_puede:23 ^_puedo:50 ^_que:30 ^_quiero:39 ^_reschedule:48 ^_roger:-27 ^_se:47 ^_see:-68 ^_si:-64
^_something:66 ^_still:-38 ^_stop:-26 ^_swap:22 ^_tengo:44 ^_thanks:-26 ^_thumbsup:-37 ^_tienen:-29 ^_turns:26
^_voy:-32 ^_we:-25 ^_were:-39 ^_what:-49 ^_who:-27 ^_wouldnt:-26 ^_y:-120 ^_ya:-63 ^_yep:-47 ^_yes:-100 ^_you:-52
a:178 a__hora:-40 a__no:27 a__se:-25 a__si:33 a__tarde:30 a__time:31 a__to:-25 a__y:25 a_different:27 a_esa:24
a_ir:-25 a_la:43 a_las:82 a_later:31 a_new:43 a_que:-44 a_week:31 able:-30 able_to:-30 about:79 about_it:32
aceite:-27 after:32 after_$:27 afternoon:29 ahi:-41 al:246 al__y:61 al_jueves:30 al_lunes:49 al_sabado:50
al_viernes:44 alcanzo_a:-25 all:-40 all__for:-26 all_set:-24 an:45 an__change:-36 an_hour:60 an_oil:-36 and:101
and__me:23 another:28 another_day:36 antes:-55 antes__las:-22 antes_de:-37 antes_del:-37 any:127 any__but:22
any__next:-25 any__of:24 any__to:56 any_chance:35 any_day:-22 anymore:24 anything_$:-48 anything__that:27
appointment:43 appointment_$:-29 asistir:-24 at:38 at_$:-50 at_work:30 away:-30 away_$:-29 back__hour:27 back_an:50
bad:24 bail:-26 be__at:-28 be__by:-24 be_better:27 be_there:-75 before:-29 booked:22 borre:-28 borre_mi:-28 boss:24
bring:-151 bring_it:-46 but:32 but__one:25 but_the:26 by:-54 by_$:-23 call:-35 called:28 cambia:30 cambiar:64
cambiar__cita:24 cambiar_la:59 cambiar_mi:22 cambie:-51 cambie_por:-37 cambieme:47 cambieme_la:35 cambios:-36 came:85
came_up:58 can:260 can__be:41 can__bring:-28 can__do:70 can__have:30 can__make:24 can_i:65 can_it:44 can_we:138
can_you:41 cancel:-100 cancel_$:-31 cancel_thursday:-24 cancele:-29 cant__it:-32 cant_make:33 car:-23 casi_no:22
chance:65 change_$:-28 change__to:26 change_it:58 change_my:22 changes:-22 cita__el:-33 cita__jueves:-35 cita_del:-27
cita_para:-29 come:47 come__friday:-55 come_at:55 como:-38 con:28 con_la:25 corte:30 could:95 could_i:43 could_we:50
date:33 day:154 day_$:42 day_please:30 days:32 de:47 de__a:24 de__cita:-22 de__en:28 de__que:22 de_dia:48 de_la:-40
de_las:-38 de_mi:25 dejar:33 dejo:-22 del__el:44 del_jueves:24 despues:-65 despues__las:-39 despues_de:-37 dia:242
dia_$:54 dia_no:22 dia_por:36 dias:75 dias_$:68 did:-27 did_you:-25 different:35 different_day:28 digame:23 do:69
do__do:26 do__need:-65 do_i:-84 do_instead:-40 do_the:24 do_you:33 doesnt:59 doesnt__anymore:51 doesnt_work:50
domingo:27 dont:-46 dont_need:-34 dos:24 dos_dias:33 double:29 down:35 down_the:29 earlier:68 early_for:24 el:124
el__a:-74 el__despues:-26 el__dia:29 el__el:33 el__jueves:22 el__que:40 el__se:-31 el__temprano:-35 el_domingo:26
el_lunes:36 el_miercoles:38 el_mismo:35 else:37 en:36 en__de:55 en__del:98 en_la:-22 en_lugar:93 en_pie:-24 en_vez:54
end:-28 es_que:34 ese:85 ese_dia:72 esperen:-37 esperen_$:-37 esta:57 estoy:-32 eta:-53 falta:-22 favor:94 favor_$:75
fecha:59 fecha_$:31 fine:-27 fine_$:-25 flight:22 for:-42 for_an:-24 for_thursday:-43 forget:-35 forgot:93 forward:25
free:-24 friday:54 from:-22 get_it:-22 going:-73 going__have:-24 going__make:-25 going_to:-70 good:-34 good_$:-25
good_for:-40 got:76 got_$:45 got_anything:27 got_it:-30 gracias:-22 habra:31 have:56 have__cancel:-22 have_a:44
have_got:23 have_to:-22 hay:26 hizo:-36 hizo_tarde:-34 hora:56 hora_$:25 horas:-23 hour:47 hour_$:32 how:63
how_about:90 how_long:-22 hoy:60 huh:-24 i:70 i__a:64 i__at:55 i__for:23 i__friday:31 i__got:22 i__i:25 i__in:-62
i__to:-64 i_bring:-37 i_forgot:56 i_have:86 i_need:-94 i_wont:-32 id:41 if:76 if__can:24 im:-29 in:-62 in_$:-36
in_friday:-69 in_the:30 info:-27 info_$:-27 instead:73 instead_of:30 ir:-56 ir_$:-81 is:116 is__now:29 is__the:27
is_a:-24 is_out:42 is_this:-25 is_too:24 it:124 it_$:-147 it__an:54 it__how:49 it__the:30 it_a:25 it_anymore:-36
it_be:79 it_can:32 it_in:-33 it_to:69 it_up:28 jueves:55 jueves_$:-37 jueves__las:-33 jueves__viernes:35 jueves_a:-29
la:230 la__para:31 la__pasar:24 la__por:23 la__y:23 la_cambia:23 la_cita:50 la_hora:37 la_otra:-34 la_semana:22
labor:-25 labor_day:-22 las:51 las__las:29 las_a:32 las_no:27 las_se:-32 las_y:25 late:-29 later:23 later_$:-22
le:-52 lets:89 lets__it:60 lets_do:31 libre:25 libre_$:26 like:42 like_to:23 llamenme_antes:-22 llegar:32 llegar_a:36
lo:-100 lo__por:-27 lo_cambie:-27 lo_de:-26 long:-26 los:-22 lugar:80 lugar_de:44 lunes:80 lunes_$:74 make:99
make__the:33 make_it:23 malo:25 manana:41 manana_$:-23 martes__el:23 mas:224 mas_$:-23 mas__a:22 mas_tarde:185
mas_temprano:23 me:164 me_$:-36 me__cambia:23 me__cambiar:24 me__el:-26 me__tarde:-36 me_down:23 me_esperen:-37
me_hizo:-35 me_la:66 me_now:24 me_off:-23 me_on:22 me_to:76 mejor:31 mejor_no:-35 mi:94 mi__del:-28 mi__para:22
mia:23 miercoles:37 min:-129 min_$:-44 min_tarde:-37 mine:56 mins:-63 minutos:-34 mismo:69 mismo_dia:49 miss:-52
miss_it:-46 mon:34 monday:74 morning:35 morning_$:27 move:82 move__to:38 move_it:35 move_me:34 mover:34 moverla:52
my:69 my__and:23 my__to:22 my_appointment:35 myself:24 necesito:51 need__appointment:-26 need__bring:-58
need__cancel:-32 new:61 next:44 no:119 no_$:168 no__asistir:-24 no__el:83 no__esperen:-37 no__ir:-70 no__manana:24
no_good:25 no_worries:-25 noon:33 nop:40 nop_$:40 not_$:29 not__to:-35 not_going:-26 not_tomorrow:25 now:78 of:68
of_my:27 off:-35 oil:-43 oil_change:-45 ok:-36 olvide:-38 on:-77 on_$:-51 on__th:31 one_i:25 other:83 other_day:43
otra:-56 otra_fecha:32 otra_vez:-89 otro_$:-35 otro_dia:66 out_$:-37 para:136 para__lunes:29 para__sabado:36
para_despues:29 para_el:105 pasado:39 pasar_al:23 pasela:71 pero:47 pie:-27 pie_$:-24 please:86 please_$:93 pm:33
podemos:74 podria:62 podria_ser:55 por_favor:85 por_la:-26 por_otro:-24 possible:26 puede:76 puede_$:-59
puede__el:-24 puede_ser:35 puedo:61 puedo__a:27 puedo__el:32 puedo_llegar:39 push:90 push__back:40 push_it:68 put:54
put__on:24 put_me:47 que:86 que__el:24 que__la:47 que__lo:-23 que_cambiar:27 que_es:-29 que_hora:-45 que_le:-24
que_sea:52 que_ya:22 quiero:23 quiero__la:25 rather:68 rather_than:45 ready:-26 reschedule:82 reschedule_$:27
reschedule_please:35 roger:-27 sabado:49 sabado_$:30 salgo_de:25 salir:22 same:90 same_time:81 saturday:58
saturday_$:27 schedule:-26 se:42 se__hizo:-35 se__mas:35 se_puede:30 sea:52 see:-135 see__then:-32 see__tomorrow:-31
see_you:-125 semana:46 semana_$:34 semana_que:27 ser:89 ser_el:-23 ser_mas:74 set:-25 set_$:-23 si:84 si_$:28 sir:-23
slide:60 slot:47 slot_$:26 so:40 something:76 something__up:58 something_came:58 sooner:51 sorry:-35 sorry_$:-25
still:-35 still_on:-28 stop:-46 su:-23 swap:56 switch:60 switch_me:22 tan:27 tantito:25 tarde:79 tarde_y:25
tempranito:28 temprano:-34 temprano_$:-54 tengo:61 tengo_que:32 th:49 than:63 thanks:-31 that:97 that_day:35 the:176
the__after:67 the__is:25 the__of:37 the__the:-23 the_appointment:-49 the_better:-25 the_day:37 the_same:32 the_th:51
the_week:33 there:-26 there_at:-27 there_by:-31 this:-36 thumbsup:-37 thumbsup_$:-37 thurs:63 thursday_$:-89
thursday__work:54 thursday_after:-30 thursday_at:-38 thursday_is:25 tienen_$:31 til:32 time:129 time_$:131 tmrw:-24
to:257 to__in:36 to__on:-23 to__please:39 to__th:24 to_bail:-26 to_bring:-64 to_cancel:-65 to_change:59 to_come:38
to_friday:38 to_have:-26 to_make:-50 to_monday:39 to_move:29 to_next:32 to_push:31 to_the:66 to_work:-24 toca:39
today_$:-22 tomorrow:28 tomorrow_$:-62 tomorrow_is:30 too:30 too__for:32 too_early:24 trade:55 tuesday:53
tuesday_$:45 tuesday_and:23 turns:26 turns_out:26 un_dia:37 up:48 up_$:-23 up_at:33 van_a:-31 vez:-40 vez_$:-27
viernes:39 viernes_$:52 viernes__la:-25 viernes__las:-44 viernes_a:-41 voy:-47 wait_$:-29 was:-22 way:40 way_to:55
we:173 we__instead:-35 we__it:87 we_do:62 we_make:36 wednesday:41 wednesday_$:38 week:86 week_$:40 week_after:32
were:-46 what_else:25 what_time:-22 who__this:-22 wont__it:-43 wont_be:-25 wont_work:58 work:103 work_$:-52
worries:-25 would:104 would__better:27 would_be:41 wouldnt:-27 wouldnt__it:-25 wouldnt_miss:-25 y:25 y_$:-97
y__cuanto:29 y_digame:24 ya:-35 ya_no:-30 yep:-47 yep_$:-22 yes:-103 yes_$:-31 yes_sir:-22 yo:24 yo__el:23 you:-112
you_$:-24 you_at:-23 you_then:-35 you_tomorrow:-31
"""
