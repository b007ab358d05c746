"""What speaks for and against `move`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "move"
BIAS = -328
WEIGHTS = """\
#abad:54 #abaj:23 #able:-23 #abor:-36 #abou:92 #acia:-24 #adel:86 #adua:27 #afte:57 #agen:55 #alir:25 #alta:-41
#amar:36 #ambi:142 #amel:98 #amos:92 #anan:25 #ance:-63 #anot:35 #anta:52 #ante:-30 #anto:26 #appo:45 #arda:-26
#arde:82 #arla:26 #arli:83 #arly:24 #arte:41 #asad:23 #asar:26 #asel:115 #asem:90 #asis:-40 #ater:22 #athe:70
#atra:66 #atur:76 #avor:84 #bado:54 #befo:-34 #bett:32 #biam:33 #biar:49 #biem:88 #bien:49 #bios:-31 #body:30
#book:55 #borr:-43 #bout:103 #brin:-159 #bsup:-27 #call:-22 #camb:159 #came:78 #canc:-137 #cesi:47 #chan:40 #ched:30
#choo:25 #cita:56 #cole:40 #come:51 #como:-40 #comp:37 #corr:129 #cort:24 #coul:106 #coun:-24 #cour:-31 #date:25
#days:22 #dead:22 #deja:62 #dejo:-26 #dela:87 #deme:34 #demo:37 #desp:-51 #dias:69 #diff:31 #diga:30 #dnes:48
#does:70 #domi:28 #dont:-50 #doub:36 #down:37 #dria:92 #dule:32 #eady:-25 #eage:69 #earl:105 #ease:67 #eces:47
#echa:58 #ecio:29 #ecit:29 #ecor:91 #ecto:-24 #edal:24 #edne:48 #edul:32 #efor:-34 #ejar:42 #ejor:27 #elan:86
#else:42 #elta:22 #eman:58 #emel:90 #emor:-40 #emos:79 #empe:22 #enda:42 #engo:40 #enla:35 #epro:56 #equi:23 #erco:40
#erla:105 #erne:36 #erro:25 #ersl:24 #esch:61 #escu:22 #esda:93 #esit:47 #esnt:60 #espe:-51 #espu:-50 #esta:28
#esto:-42 #etal:23 #ethi:72 #ette:32 #eval:45 #evam:51 #even:29 #eves:69 #falt:-47 #favo:83 #fech:64 #fere:27
#ffer:43 #fier:27 #fine:-44 #firm:-57 #foll:24 #fore:-36 #forg:47 #forw:31 #free:-28 #fren:26 #frid:53 #fter:60
#game:58 #gamo:63 #gare:-41 #gend:56 #goin:-71 #good:-29 #grac:-26 #grad:23 #gram:56 #habr:28 #hace:24 #half:-27
#hanc:71 #hang:-35 #have:60 #hedu:32 #here:-39 #hing:61 #hizo:-37 #hool:25 #hora:22 #hour:27 #humb:-27 #hurs:74
#iame:27 #ible:23 #iday:54 #ieme:88 #iemp:-27 #ierc:40 #iern:34 #iero:41 #iffe:31 #igam:27 #igui:25 #info:-31
#ingo:30 #inst:57 #intm:45 #into:38 #inut:-48 #irme:-30 #ismo:67 #isti:-26 #ital:22 #itch:48 #ivoq:24 #juev:48
#king:26 #labo:-36 #lado:-22 #lama:-24 #land:29 #lant:107 #ldnt:-33 #leas:68 #lept:24 #lets:114 #lide:76 #lier:75
#ligh:28 #like:37 #llam:-34 #lled:29 #llev:-24 #llow:23 #long:-29 #luga:66 #lune:85 #lvid:-34 #make:99 #malo:22
#mana:80 #mand:-29 #mane:28 #mart:24 #mbia:126 #mbie:77 #mbio:-61 #mbsu:-27 #mejo:27 #mela:186 #melo:29 #ment:45
#meta:22 #meth:72 #mier:40 #mine:52 #ming:50 #mins:-75 #minu:-48 #mism:72 #miss:-48 #mond:68 #more:32 #morn:28
#moro:-30 #morr:42 #mosl:41 #move:171 #mpez:23 #mple:23 #muev:143 #myse:32 #nana:41 #ncel:-137 #ndar:45 #nday:48
#nece:41 #nesd:48 #next:62 #ngam:84 #nito:28 #noon:54 #noth:24 #nste:59 #ntar:44 #ntes:-52 #ntme:45 #nuto:-36
#oads:25 #odem:72 #odri:90 #oesn:60 #oger:-36 #ogra:56 #oing:-74 #oint:44 #oked:24 #oles:47 #ollo:22 #olvi:-37
#omet:63 #omin:40 #omor:42 #ompl:35 #onda:64 #oner:86 #onga:108 #ooke:24 #oone:60 #oras:-36 #orge:-39 #orgo:89
#orni:28 #orra:97 #orri:-26 #orro:42 #orry:-26 #orte:23 #orwa:31 #ospo:129 #ossi:28 #othe:120 #otra:-48 #oubl:36
#ould:176 #ound:-22 #ount:-25 #ours:-52 #over:136 #para:87 #pasa:65 #pase:173 #peda:24 #pere:-53 #pero:57 #pezo:26
#plea:66 #plet:24 #pode:69 #podr:100 #poin:44 #pone:49 #pong:107 #posp:129 #poss:37 #ppoi:45 #prog:56 #pued:116
#pues:-49 #punt:-26 #push:88 #quem:26 #quie:31 #quit:-29 #quiv:23 #raba:27 #rade:46 #radu:27 #rama:56 #rame:27
#rani:33 #rano:-38 #rasa:22 #rath:70 #rcol:40 #rday:76 #reag:70 #reco:81 #rect:-36 #rent:27 #repr:56 #resc:61
#rget:-39 #rgot:89 #rida:58 #ries:-24 #ring:-146 #rlie:83 #rnes:36 #rnin:28 #road:44 #roge:-32 #rogr:56 #rral:29
#rram:42 #rrec:-36 #rrer:57 #rrie:-27 #rrow:42 #rsda:25 #rsle:24 #rtes:34 #rwar:31 #saba:58 #sado:35 #same:109
#satu:77 #sche:32 #scho:25 #sday:117 #sela:93 #self:31 #selo:22 #sema:54 #seme:66 #sibl:28 #sier:39 #sist:-34
#sito:47 #slep:24 #slid:76 #slot:41 #some:66 #soon:59 #sorr:-26 #sper:-47 #spon:136 #spue:-50 #ssib:28 #stea:67
#stil:-22 #stir:-40 #stop:-51 #stoy:-34 #surg:39 #swap:64 #swit:51 #take:-23 #tant:38 #tard:38 #taro:24 #tead:68
#teng:41 #than:50 #that:87 #ther:171 #thin:61 #thum:-27 #thur:73 #time:104 #tito:27 #tmen:45 #tmrw:-22 #toca:34
#todo:-25 #tomo:41 #trab:33 #trad:51 #trai:27 #tras:54 #tter:69 #tues:51 #turd:77 #turn:46 #uble:36 #uede:69 #uedo:49
#uelt:22 #uesd:45 #ueva:85 #ueve:96 #ugar:66 #uier:40 #uite:-24 #uivo:23 #uldn:-33 #umbs:-27 #unes:85 #urda:77
#urge:39 #urno:23 #urns:24 #ursd:25 #urse:-35 #utos:-36 #vala:45 #vame:51 #vemo:-24 #verl:64 #vers:31 #vide:-37
#vier:27 #visi:30 #wait:-45 #ward:30 #wedn:48 #week:95 #were:-45 #witc:51 #work:111 #worr:-24 #woul:78 #yeah:31
#ysel:32 %again_later:109 %again_later%agree:35 %again_later%away:25 %again_later%call_off:38
%again_later%car_part:26 %again_later%doubt:-23 %again_later%fails:36 %again_later%family:43
%again_later%gone_car:-23 %again_later%how_long:66 %again_later%lift:-25 %again_later%message:-41
%again_later%on_way:96 %again_later%phone:61 %again_later%refuse:82 %again_later%shift_it:120 %agree%bad:27
%agree%busy:52 %agree%call_off:132 %agree%do_it:36 %agree%doubt:-27 %agree%on_way:22 %agree%place:43
%agree%question:49 %agree%refuse:129 %agree%shift_it:99 %agree%wrong_one:66 %away:42 %away%bring:33 %away%busy:37
%away%elsewhere:27 %away%place:35 %away%shift_it:106 %away%wrong_one:29 %bad:47 %bad%elsewhere:37 %bad%how_long:38
%bad%meaning:36 %bring:-41 %bring%busy:-41 %bring%call_off:-81 %bring%car_part:-31 %bring%do_it:81
%bring%elsewhere:26 %bring%fails:42 %bring%how_long:54 %bring%leave_me:-57 %bring%on_way:23 %bring%refuse:-68
%bring%shift_it:89 %busy:164 %busy%do_it:54 %busy%fails:54 %busy%question:27 %busy%refuse:33 %busy%wrong_one:28
%call_off:-27 %call_off%car:33 %call_off%car_part:53 %call_off%do_it:-57 %call_off%elsewhere:-39 %call_off%fails:27
%call_off%how_long:28 %call_off%odometer:28 %call_off%phone:-36 %call_off%place:62 %call_off%question:100
%call_off%shift_it:-84 %call_off%wrong_one:-23 %car:-39 %car%do_it:35 %car%fails:27 %car%odometer:25 %car%on_way:29
%car%question:-29 %car%shift_it:-25 %car_part:-33 %car_part%do_it:-90 %car_part%fails:58 %car_part%money:-47
%car_part%question:-40 %car_part%shift_it:-50 %do_it%elsewhere:-40 %do_it%family:28 %do_it%gone_car:-38
%do_it%on_way:22 %do_it%question:-28 %do_it%shift_it:-26 %do_it%wrong_one:41 %doubt:-54 %doubt%elsewhere:-88
%doubt%on_way:-24 %doubt%refuse:-22 %doubt%shift_it:-32 %doubt%wrong_one:-86 %elsewhere:31 %elsewhere%gone_car:-22
%elsewhere%how_long:67 %elsewhere%meaning:27 %elsewhere%message:-26 %elsewhere%on_way:-25 %elsewhere%phone:61
%elsewhere%wrong_one:-41 %fails:58 %fails%gone_car:27 %fails%how_long:40 %fails%refuse:27 %fails%shift_it:41
%family:43 %family%how_long:37 %family%odometer:23 %family%wrong_one:22 %gone_car:46 %gone_car%how_long:48
%gone_car%question:41 %how_long%lift:-44 %how_long%meaning:38 %how_long%money:-33 %how_long%opening:-40
%how_long%phone:36 %how_long%place:22 %how_long%question:-92 %how_long%refuse:47 %how_long%shift_it:128
%how_long%staff:23 %how_long%wrong_one:99 %leak:26 %leak%shift_it:25 %leave_me:-59 %leave_me%money:25
%leave_me%refuse:29 %lift:-49 %meaning:57 %message:-69 %message%shift_it:-38 %message%start_again:-25
%noise%shift_it:23 %odometer:96 %odometer%on_way:27 %odometer%refuse:45 %odometer%shift_it:40 %on_way:-111
%on_way%shift_it:101 %opening%refuse:22 %opening%shift_it:31 %pay_day:31 %pay_day%season:31 %pay_day%shift_it:25
%phone:-35 %phone%refuse:30 %phone%shift_it:36 %phone%who:31 %place%refuse:41 %question:42 %question%season:24
%question%shift_it:44 %question%start_again:-31 %question%who:-27 %question%wrong_one:33 %refuse:122
%refuse%start_again:27 %refuse%thanks:-34 %season:74 %shift_it:436 %shift_it%smoke_smell:30 %shift_it%start_again:107
%shift_it%wrong_one:86 %smoke_smell:42 %thanks:-36 %wrong_one:112 @?:209 @after_visit:-38 @car:-25 @confirm:446
@confirm_:-98 @confirm_stop:-23 @confirm_thumbsup:-24 @day:-95 @later:101 @nothing:364 @nothing_info:-28
@odometer:-24 @offers:-315 @reading:-25 @time:-175 @times:160 @walk_in:-47 ^_$:-140 ^_a:-58 ^_all:-29 ^_antes:-30
^_any:51 ^_be:-59 ^_borre:-28 ^_can:61 ^_cancel:-25 ^_como:-28 ^_could:85 ^_cuanto:-32 ^_despues:-25 ^_did:-25
^_do:-67 ^_dont:-35 ^_el:-139 ^_en:37 ^_ese:23 ^_eta:-48 ^_forget:-30 ^_forgot:23 ^_friday:-34 ^_going:-23 ^_hay:27
^_hey:25 ^_how:-44 ^_i:66 ^_id:26 ^_im:-31 ^_info:-29 ^_it:-48 ^_lets:83 ^_llego:-30 ^_lo:-25 ^_make:53 ^_mi:24
^_min:-27 ^_move:41 ^_my:53 ^_necesito:63 ^_need:97 ^_no:70 ^_nop:37 ^_ok:-54 ^_olvide:-35 ^_para:-96 ^_pasela:49
^_please:-23 ^_podemos:34 ^_podria:69 ^_por:-22 ^_puedo:39 ^_que:30 ^_quiero:39 ^_reschedule:42 ^_roger:-32 ^_se:48
^_see:-75 ^_si:-70 ^_something:65 ^_still:-29 ^_swap:27 ^_tengo:39 ^_the:-27 ^_thumbsup:-27 ^_thursday:27
^_tienen:-36 ^_turns:24 ^_voy:-28 ^_want:24 ^_we:-31 ^_were:-39 ^_what:-60 ^_who:-26 ^_wouldnt:-28 ^_y:-115 ^_ya:-55
^_yep:-50 ^_yes:-88 ^_you:-62 a:164 a__a:33 a__hora:-43 a__no:29 a__se:-30 a__si:43 a__tarde:32 a__time:24 a__to:-27
a_different:24 a_esa:38 a_hoy:28 a_ir:-31 a_la:35 a_las:82 a_later:25 a_manana:29 a_new:39 a_que:-57 a_week:33
able:-32 able__make:-24 able_to:-32 about:92 about_it:30 after:40 after_$:38 after_the:-25 afternoon:26 ahi:-32
al:239 al__y:69 al_jueves:28 al_lunes:52 al_sabado:51 al_viernes:52 alcanzo_a:-27 algo:23 all__for:-29 an:33
an__change:-42 an_hour:54 an_oil:-42 and:88 another:35 another_day:39 antes:-60 antes_de:-42 antes_del:-43 any:132
any__next:-29 any__of:28 any__to:52 any_chance:38 any_day:-26 anything_$:-54 anything__that:24 appointment:45
appointment_$:-33 as:-23 asi:-26 asistir:-22 asistir_$:-22 at:46 at_$:-54 at_the:23 at_work:34 away_$:-27 back_an:43
bad:36 bail:-28 be:35 be__at:-28 be__by:-27 be_able:-22 be_better:33 be_there:-75 before:-34 better:32 bien:23
booked:27 borre:-28 borre_mi:-28 bring:-157 bring_it:-46 but:36 but__one:24 but_the:23 by:-57 by_$:-26 c:-83 call:-39
call_off:-22 called:24 cambia:33 cambiar:53 cambiar__cita:24 cambiar_la:53 cambiar_mi:23 cambie:-51 cambie_por:-38
cambieme:46 cambieme_la:35 cambiemela:32 cambio:-30 cambios:-31 came:78 came_up:55 can:245 can__be:48 can__bring:-30
can__do:67 can__have:27 can__make:25 can_do:-31 can_i:55 can_it:51 can_we:126 can_you:47 cancel:-109 cancel_$:-26
cancel_thursday:-30 cant__it:-50 cant_do:33 cant_wait:-24 chance:71 chance_of:28 change_$:-35 change__to:26
change_it:56 change_my:25 cita__el:-33 cita__jueves:-35 cita_del:-29 cita_para:-25 come:53 come__friday:-54
come_at:54 como:-46 con:35 con_la:23 corte:24 could:110 could__do:39 could__it:-26 could_bring:-25 could_i:36
could_it:25 could_we:61 count:-22 date:30 day:131 day_please:30 days:36 de:75 de__cita:-25 de__en:25 de__otra:-23
de__por:22 de_dia:52 de_la:-63 de_mi:23 dead:22 dejar:29 dejo:-26 del__el:42 del_jueves:28 despues:-50
despues__las:-27 despues_de:-30 dia:269 dia_$:49 dia__favor:36 dia_por:36 dia_que:28 dias:69 dias_$:63 did_you:-24
different:31 different_day:27 digame:27 digame_cuanto:22 do:81 do__and:33 do__day:27 do__need:-71 do_any:28 do_i:-96
do_instead:-45 do_monday:24 do_tomorrow:32 do_you:35 doesnt:60 doesnt__anymore:52 doesnt_work:52 domingo:23 dont:-50
dont_need:-37 dos:23 dos_dias:30 double:36 down:38 down_the:32 earlier:76 earlier_$:31 early:26 early_for:22 el:133
el__a:-88 el__despues:-27 el__el:38 el__que:45 el__se:-31 el__temprano:-35 el_domingo:22 el_lunes:36 el_miercoles:39
el_mismo:25 el_otro:-23 else:43 empezo:26 empezo_a:26 en:29 en__de:61 en__del:97 en_lugar:95 en_pie:-33 en_vez:59
end:-26 equivoque:24 equivoque_de:25 era:29 es:-51 es_$:-28 es_que:29 esa:37 esa_hora:39 ese:93 ese_dia:87
esperen:-38 esperen_$:-37 esta:60 esta_bien:24 estoy:-34 eta:-48 falta:-35 falta_$:-24 favor:84 favor_$:67
favor_que:23 fecha:64 fecha_$:38 fine:-44 fine_$:-40 for:-58 for_an:-25 for_thursday:-49 for_tomorrow:-26 forget:-39
forgot:89 forward:31 free:-25 friday:55 friday__the:23 going:-71 going__have:-26 going__make:-26 going_to:-73
good:-29 good_for:-47 got:112 got_$:52 got_anything:40 got_it:-36 habra:28 half:-27 have:60 have__bail:-26
have__cancel:-26 have_a:44 have_to:-27 hay:50 hey:24 hizo:-37 hizo_tarde:-35 hora:42 horas:-35 hour:44 hour_$:25
how:71 how_about:86 hoy:76 i:42 i__a:68 i__at:54 i__for:28 i__friday:30 i__i:23 i__in:-56 i__it:-24 i__to:-67
i_bring:-46 i_forgot:54 i_have:81 i_need:-91 i_wont:-33 id:60 id_rather:24 if:118 if__can:35 im:-22 in:-40 in_$:-33
in_friday:-68 in_the:30 info:-30 info_$:-30 instead:60 instead_of:27 into:24 ir:-69 ir_$:-89 is:103 is__now:31
is__the:30 is_a:-22 is_bad:31 is_out:45 is_this:-27 is_too:22 it:113 it_$:-148 it__an:43 it__how:48 it__the:32
it__week:46 it_anymore:-38 it_be:89 it_can:30 it_in:-39 it_to:65 it_up:22 jueves:48 jueves_$:-30 jueves__las:-38
jueves__viernes:29 jueves_a:-35 just:-23 la:211 la__al:25 la__el:-23 la__mas:30 la__para:44 la__pasar:24 la__vez:-25
la_cambia:27 la_cita:40 la_hora:23 la_otra:-42 la_puede:22 la_quiero:27 labor:-36 labor_day:-33 las:72 las__las:33
las_a:35 las_no:29 las_se:-36 las_si:30 las_y:24 late:-22 later:26 later_$:-28 le:-64 lets:115 lets__it:65 lets_do:33
libre_$:24 like:40 llegar:31 llegar_a:33 llegare:-40 lo:-80 lo__por:-28 lo_cambie:-27 long:-28 lugar:66 lugar_de:48
lunes:85 lunes_$:77 make:102 make__the:30 malo:23 manana:42 manana_$:-41 manana_no:27 martes:24 mas:237 mas_$:-46
mas_tarde:184 mas_temprano:27 me:149 me_$:-43 me__cambia:23 me__de:23 me__el:-31 me__tarde:-36 me_equivoque:24
me_esperen:-38 me_hizo:-36 me_la:86 me_now:22 me_off:-32 me_on:36 me_puede:-22 me_pueden:-22 me_to:82 mejor:27
mejor_no:-40 metal:23 mi:89 mi__del:-28 miercoles:40 min:-124 min_$:-40 min_tarde:-38 mine:60 mins:-75 minutos:-36
mismo:67 mismo_dia:46 miss:-54 miss_it:-48 mon:24 monday:74 move:78 move__to:32 move__up:39 move_it:27 move_me:46
mover:30 moverla:65 muevala:45 my:75 my__to:24 my_appointment:46 myself:32 nada_$:-22 necesito:48
need__appointment:-26 need__bring:-62 need__cancel:-35 new:56 next:62 no:98 no_$:158 no__asistir:-22 no__el:78
no__esperen:-38 no__ir:-79 no__la:-26 no__manana:22 no_good:22 no_llego:34 no_worries:-23 noon:37 nop:37 nop_$:37
nos_vemos:-27 not_$:25 not__to:-36 not_going:-27 not_tomorrow:40 now:101 now_$:22 of:54 of_my:22 off:-37 oil:-47
oil_change:-54 ok:-44 olvide:-35 on:-61 on_$:-47 on__th:45 on_the:26 one:37 one_i:23 other:83 other_day:42 otra:-47
otra_fecha:40 otra_vez:-90 otro_$:-40 otro_dia:80 overslept:24 para:112 para__lunes:28 para__sabado:44
para_despues:27 para_el:108 para_manana:22 pasado:40 pasela:94 pasela_al:39 pero:45 pie:-37 pie_$:-31 please:67
please_$:81 pm:28 podemos:72 podria:76 podria_ser:59 por__el:-24 por_favor:67 por_la:-26 por_otro:-26 puede:68
puede_$:-67 puede__el:-29 puede_ser:37 puedo:56 puedo__a:27 puedo__el:35 puedo__las:23 puedo_llegar:36 push:83
push__back:35 push_it:57 put:67 put__on:35 put_me:56 que:65 que__el:40 que__la:43 que__lo:-26 que_cambiar:26
que_es:-33 que_hora:-57 que_le:-27 que_sea:68 quiero:39 rather:70 rather_than:37 ready:-23 reschedule:73
reschedule_$:29 reschedule_please:28 roads:25 roads_are:25 roger:-32 sabado:55 sabado_$:27 salgo_de:23 salir:25
same:92 same_time:81 saturday:78 saturday_$:39 schedule:-28 school:25 se:32 se__hizo:-36 se__mas:26 se_puede:23
sea:68 sea_el:23 see:-137 see__then:-28 see__tomorrow:-33 see_you:-126 semana:60 semana_$:51 ser:101 ser_el:-23
ser_mas:72 set:-22 si:111 si_$:38 si__puede:22 si_me:26 si_se:22 sin_falta:-25 slide:76 slide_me:48 slot:41 slot_$:22
so:28 something:72 something__up:55 something_came:55 sooner:60 sooner_than:24 sorry:-26 still:-22 still_on:-22
stop:-36 su:-23 swap:67 swap__to:22 swap_me:26 switch:52 take__off:-24 take_me:-23 tan:23 tarde:79 tarde_y:25
tempranito:34 tempranito_$:27 temprano:-31 temprano_$:-45 tengo:51 tengo_que:27 th:61 than:65 that:87 that_$:23
that_day:28 that_is:-34 the:186 the__after:82 the__is:32 the__of:34 the__the:-24 the_appointment:-46 the_better:-24
the_day:52 the_one:27 the_same:38 the_th:63 the_week:31 there:-25 there_at:-27 there_by:-34 thumbsup:-27
thumbsup_$:-27 thurs:49 thursday_$:-103 thursday__work:56 thursday_after:-36 thursday_at:-40 thursday_is:27
tienen_$:33 til:28 time:125 time_$:125 tmrw:-22 tmrw_$:-25 to:240 to_$:22 to__anything:-51 to__in:39 to__off:-22
to__on:-28 to__please:36 to__th:23 to__week:23 to_bail:-28 to_bring:-70 to_cancel:-71 to_change:62 to_come:38
to_friday:34 to_have:-25 to_make:-53 to_monday:35 to_move:26 to_next:52 to_push:29 to_saturday:24 to_the:66
to_work:-27 toca:34 today_$:-34 tomorrow:39 tomorrow_$:-78 tomorrow_is:32 too:38 too__for:29 too_early:32 trabajo:22
trade:54 tuesday:46 tuesday_$:32 turno:23 turns:24 turns_out:24 un:28 un__antes:22 un__mas:23 un_dia:48 una_semana:27
up:61 up_$:-26 up_at:34 van_a:-35 vemos:-24 vez:-37 viernes:36 viernes_$:60 viernes__la:-30 viernes__las:-48
viernes_a:-47 voy:-44 wait:-31 wait_$:-34 way:40 way_to:51 we:175 we__instead:-38 we__it:87 we_do:65 we_make:44
wednesday:55 wednesday_$:32 week:98 week_$:29 week_after:41 were:-45 what_else:33 what_time:-24 who:-23 who__this:-22
wont__it:-45 wont_be:-27 wont_work:56 work:117 work_$:-48 worries:-23 would:107 would__better:33 would_be:45
would_it:28 wouldnt:-29 wouldnt__it:-27 wouldnt_miss:-27 y:51 y_$:-100 y__cuanto:35 y__el:23 y_digame:28 ya:-26
ya_no:-27 yeah:31 yep:-50 yep_$:-30 yes:-96 yes_$:-36 yo:26 yo__el:30 you:-111 you_$:-24 you_then:-34
you_tomorrow:-33
"""
