"""What speaks for and against `move`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "move"
BIAS = -401
WEIGHTS = """\
#abad:54 #abor:-38 #abou:121 #abra:26 #acia:-30 #adel:103 #adua:30 #afte:69 #agen:57 #alir:27 #alta:-46 #amar:36
#ambi:201 #amel:102 #amos:104 #ance:-81 #ando:30 #anks:-27 #anot:40 #anta:63 #ante:-28 #anto:32 #anym:27 #appo:50
#arda:-31 #arde:83 #arla:116 #arli:82 #arly:31 #arte:43 #asar:45 #asel:126 #asem:101 #asis:-42 #ater:35 #athe:77
#atra:85 #atur:87 #avor:91 #bado:54 #befo:-38 #bett:39 #biam:35 #biar:115 #biem:95 #bien:53 #bios:-37 #body:34
#book:66 #borr:-50 #bout:121 #brin:-175 #bsup:-42 #call:-30 #camb:221 #came:87 #canc:-175 #cela:-28 #cesi:53 #chan:66
#ched:48 #choo:28 #cias:-26 #cita:67 #cloc:25 #cole:50 #come:58 #como:-38 #comp:46 #corr:148 #cort:26 #coul:127
#coun:-28 #date:30 #days:30 #dead:25 #deja:65 #dejo:-26 #dela:104 #deme:40 #demo:46 #desp:-68 #dias:83 #diff:45
#diga:34 #dnes:46 #does:72 #domi:31 #dont:-54 #doub:41 #down:41 #dria:102 #dule:50 #eady:-32 #eage:76 #earl:110
#ease:81 #eces:57 #echa:70 #ecio:32 #ecit:37 #ecor:103 #ecto:-27 #edal:28 #edne:47 #edul:50 #eeds:29 #efor:-38
#ejar:43 #ejor:46 #elan:102 #else:49 #eman:64 #emel:98 #emor:-43 #emos:91 #empr:-26 #enda:37 #engo:68 #enla:39
#epro:60 #equi:26 #eran:-26 #erco:50 #erla:120 #erne:52 #erro:29 #ersl:27 #esch:84 #escu:26 #esda:99 #esit:53
#esnt:62 #espe:-57 #espu:-67 #esta:27 #esto:-52 #etal:26 #ethi:80 #ette:39 #eval:53 #evam:52 #even:32 #eves:84
#falt:-52 #favo:91 #fech:77 #fere:41 #ffer:59 #fier:34 #fine:-51 #firm:-71 #foll:27 #fore:-41 #forg:50 #forw:37
#free:-31 #fren:31 #frid:60 #fter:72 #game:65 #gamo:69 #gare:-45 #gend:58 #goin:-81 #good:-31 #grac:-33 #grad:27
#gram:60 #habr:34 #hace:29 #half:-33 #hanc:90 #hang:-29 #hank:-27 #have:69 #hedu:50 #here:-47 #hing:73 #hizo:-46
#hool:28 #hora:36 #hour:38 #humb:-42 #hurs:92 #iame:29 #iarl:88 #ible:26 #iday:61 #ieme:95 #iemp:-29 #ierc:50
#iern:50 #iero:54 #iffe:45 #igam:29 #igui:29 #info:-33 #ingo:33 #inst:76 #intm:50 #into:43 #inut:-56 #irme:-39
#ismo:75 #isti:-25 #ital:26 #itch:62 #ivoq:28 #juev:60 #king:31 #labo:-38 #lado:-26 #land:35 #lant:127 #ldnt:-33
#leas:82 #lept:27 #lets:127 #lide:84 #lier:73 #ligh:31 #like:43 #llam:-30 #lled:29 #llev:-31 #llow:26 #lock:39
#long:-32 #luga:76 #lune:85 #lvid:-39 #make:113 #malo:26 #mana:85 #mand:-26 #mane:35 #mart:26 #mbia:195 #mbie:77
#mbio:-72 #mbsu:-42 #mejo:46 #mela:199 #melo:31 #ment:47 #meta:25 #meth:80 #mier:50 #mine:60 #ming:55 #mins:-59
#minu:-56 #mism:81 #miss:-48 #mond:87 #more:36 #morn:32 #moro:-33 #morr:49 #mosl:47 #move:208 #mpez:25 #muev:156
#myse:36 #nana:41 #ncel:-175 #ndar:42 #nday:62 #nece:50 #need:37 #nera:32 #nesd:47 #next:71 #ngam:93 #nito:31
#noon:63 #noth:30 #nste:80 #ntar:52 #ntes:-52 #ntme:50 #nuto:-40 #nymo:27 #oads:28 #odem:83 #odri:100 #oesn:62
#oger:-36 #ogra:60 #oing:-84 #oint:49 #oked:27 #oles:58 #ollo:25 #olvi:-40 #omet:68 #omin:44 #omor:49 #ompl:41
#onda:83 #oner:106 #onga:120 #ooke:27 #oone:75 #oras:-37 #orge:-41 #orgo:94 #orni:32 #orra:107 #orri:-28 #orro:49
#orry:-41 #orte:25 #orwa:37 #ospo:146 #ossi:34 #othe:129 #otra:-57 #oubl:41 #ould:198 #ound:-26 #ount:-28 #ours:-50
#over:156 #para:94 #pasa:74 #pase:191 #peda:27 #pere:-57 #pero:64 #pezo:30 #plan:-26 #plea:80 #plet:26 #pode:79
#podr:112 #poin:49 #pone:56 #pong:119 #posp:146 #poss:45 #ppoi:50 #prog:60 #pued:146 #pues:-64 #punt:-32 #push:100
#quem:29 #quie:36 #quit:-35 #quiv:26 #raba:25 #raci:-27 #rade:53 #radu:30 #rama:60 #rame:26 #rani:37 #rano:-54
#rasa:34 #rath:77 #rcol:50 #rday:87 #reag:77 #reco:92 #rect:-40 #rent:41 #repr:60 #resc:84 #rget:-41 #rgot:94
#rida:66 #ries:-25 #ring:-163 #rlie:82 #rnes:52 #rnin:31 #road:49 #roge:-31 #rogr:60 #rral:32 #rram:44 #rrec:-39
#rrer:67 #rrie:-30 #rrow:49 #rsda:40 #rsle:27 #rtes:37 #rwar:37 #saba:59 #sado:37 #sale:26 #same:113 #satu:88
#sche:50 #scho:28 #sday:138 #sela:101 #self:35 #sema:60 #seme:74 #sibl:31 #sier:42 #sigu:25 #simo:-27 #sist:-33
#sito:53 #slep:27 #slid:84 #slot:47 #some:67 #soon:73 #sorr:-41 #sper:-53 #spon:154 #spue:-67 #ssib:34 #stea:88
#stil:-41 #stir:-42 #stop:-66 #stoy:-42 #sund:-25 #surg:46 #swap:70 #swit:65 #tant:44 #tard:29 #taro:27 #tead:89
#teng:69 #than:40 #that:113 #ther:183 #thin:73 #thum:-42 #thur:91 #time:114 #tito:30 #tmen:50 #toca:39 #todo:-29
#tomo:48 #trab:32 #trad:57 #trai:31 #tras:73 #tter:79 #tues:55 #turd:88 #turn:48 #uble:41 #uede:95 #uedo:56 #uesd:53
#ueva:92 #ueve:113 #ugar:76 #uier:45 #uite:-28 #uivo:26 #uldn:-33 #umbs:-42 #unes:85 #urda:88 #urge:44 #urgi:26
#urns:27 #ursd:40 #urse:-30 #utos:-40 #vala:53 #vame:52 #vemo:-28 #verl:74 #vers:35 #vide:-40 #vier:37 #visi:34
#wait:-43 #ward:37 #wedn:47 #week:107 #were:-52 #witc:65 #work:123 #worr:-26 #woul:82 #yeah:36 #ymor:27 #ysel:36
%again_later:122 %again_later%agree:38 %again_later%away:27 %again_later%call_off:54 %again_later%car_part:33
%again_later%doubt:-31 %again_later%fails:41 %again_later%family:51 %again_later%gone_car:-30
%again_later%how_long:93 %again_later%message:-57 %again_later%on_way:104 %again_later%phone:74
%again_later%question:27 %again_later%refuse:101 %again_later%shift_it:134 %agree:-54 %agree%bad:32 %agree%busy:48
%agree%call_off:148 %agree%do_it:42 %agree%doubt:-32 %agree%money:29 %agree%on_way:28 %agree%place:53
%agree%question:49 %agree%refuse:155 %agree%shift_it:129 %agree%wrong_one:72 %away:63 %away%bring:34 %away%busy:39
%away%elsewhere:31 %away%place:40 %away%shift_it:117 %away%wrong_one:32 %bad:50 %bad%elsewhere:38 %bad%how_long:39
%bad%meaning:37 %bring:-49 %bring%busy:-41 %bring%call_off:-92 %bring%car_part:-32 %bring%do_it:92
%bring%elsewhere:32 %bring%fails:50 %bring%how_long:63 %bring%leave_me:-72 %bring%refuse:-77 %bring%shift_it:123
%busy:167 %busy%do_it:58 %busy%fails:63 %busy%question:35 %busy%refuse:28 %busy%wrong_one:29 %call_off:-29
%call_off%car:40 %call_off%car_part:64 %call_off%do_it:-63 %call_off%elsewhere:-42 %call_off%fails:32
%call_off%gone_car:-26 %call_off%how_long:35 %call_off%odometer:28 %call_off%phone:-45 %call_off%place:70
%call_off%question:100 %call_off%shift_it:-65 %call_off%wrong_one:-28 %car:-43 %car%do_it:33 %car%fails:32
%car%odometer:31 %car%on_way:34 %car%question:-32 %car%shift_it:-37 %car_part:-30 %car_part%do_it:-97
%car_part%fails:65 %car_part%money:-52 %car_part%question:-43 %car_part%shift_it:-55 %do_it%elsewhere:-48
%do_it%family:32 %do_it%gone_car:-46 %do_it%question:-33 %do_it%shift_it:-25 %do_it%wrong_one:49 %doubt:-71
%doubt%elsewhere:-107 %doubt%message:-34 %doubt%on_way:-27 %doubt%phone:27 %doubt%refuse:-25 %doubt%shift_it:-53
%doubt%wrong_one:-105 %elsewhere:36 %elsewhere%gone_car:-33 %elsewhere%how_long:69 %elsewhere%meaning:25
%elsewhere%message:-39 %elsewhere%on_way:-26 %elsewhere%phone:69 %elsewhere%refuse:28 %elsewhere%wrong_one:-52
%fails:66 %fails%gone_car:30 %fails%how_long:52 %fails%on_way:28 %fails%shift_it:48 %family:42 %family%how_long:43
%family%odometer:27 %family%refuse:28 %family%wrong_one:26 %gone_car:75 %gone_car%how_long:56 %gone_car%question:73
%gone_car%shift_it:-26 %how_long:66 %how_long%lift:-40 %how_long%meaning:39 %how_long%money:-35 %how_long%opening:-44
%how_long%phone:42 %how_long%place:25 %how_long%question:-93 %how_long%refuse:50 %how_long%shift_it:181
%how_long%staff:27 %how_long%start_again:26 %how_long%wrong_one:120 %leak:28 %leak%shift_it:29 %leave_me:-83
%leave_me%money:28 %leave_me%refuse:30 %lift:-47 %meaning:60 %message:-88 %message%shift_it:-53
%message%start_again:-30 %message%wrong_one:-28 %noise%shift_it:26 %odometer:134 %odometer%on_way:32
%odometer%refuse:59 %odometer%shift_it:42 %on_way:-164 %on_way%shift_it:123 %opening%refuse:29 %opening%shift_it:34
%pay_day:30 %pay_day%season:32 %phone:-41 %phone%refuse:30 %phone%shift_it:29 %phone%who:31 %place%refuse:50
%question:68 %question%shift_it:33 %question%start_again:-35 %question%who:-28 %question%wrong_one:38 %refuse:158
%refuse%start_again:32 %refuse%thanks:-51 %season:80 %shift_it:540 %shift_it%smoke_smell:34 %shift_it%start_again:117
%shift_it%wrong_one:97 %smoke_smell:46 %thanks:-57 %wrong_one:132 @?:240 @after_visit:-44 @car:-29 @confirm:556
@confirm_:-112 @confirm_stop:-29 @confirm_thumbsup:-37 @day:-124 @later:116 @nothing:470 @nothing_info:-30
@odometer:-27 @offers:-389 @reading:-41 @time:-209 @times:231 @walk_in:-55 ^_$:-169 ^_a:-67 ^_all:-30 ^_antes:-34
^_any:67 ^_at:-25 ^_be:-63 ^_borre:-31 ^_can:81 ^_cancel:-38 ^_como:-31 ^_could:99 ^_cuanto:-38 ^_despues:-42
^_did:-27 ^_do:-68 ^_dont:-37 ^_el:-172 ^_en:44 ^_ese:27 ^_eta:-60 ^_forget:-33 ^_forgot:25 ^_friday:-40 ^_going:-29
^_have:25 ^_hay:45 ^_hey:26 ^_how:-44 ^_i:73 ^_id:30 ^_im:-42 ^_info:-31 ^_it:-56 ^_la:38 ^_lets:91 ^_llego:-37
^_lo:-26 ^_make:65 ^_mi:27 ^_min:-27 ^_move:54 ^_my:69 ^_necesito:69 ^_need:109 ^_no:80 ^_nop:41 ^_of:-30 ^_ok:-61
^_olvide:-38 ^_on:-27 ^_para:-102 ^_pasela:53 ^_please:-31 ^_podemos:42 ^_podria:77 ^_puede:27 ^_puedo:48 ^_push:28
^_que:33 ^_quiero:45 ^_reschedule:57 ^_roger:-31 ^_se:58 ^_see:-83 ^_si:-94 ^_something:74 ^_still:-48 ^_stop:-26
^_swap:29 ^_tengo:73 ^_thanks:-25 ^_the:-32 ^_thumbsup:-42 ^_tienen:-47 ^_tomorrows:26 ^_turns:27 ^_voy:-33 ^_want:27
^_we:-33 ^_were:-44 ^_what:-69 ^_who:-29 ^_wouldnt:-28 ^_y:-132 ^_ya:-63 ^_yep:-59 ^_yes:-113 ^_you:-70 a:199 a__a:38
a__hora:-47 a__no:33 a__se:-32 a__si:48 a__tarde:37 a__time:36 a__to:-30 a_cambiar:-25 a_different:34 a_esa:42
a_hoy:32 a_ir:-34 a_la:38 a_las:90 a_later:34 a_manana:33 a_new:46 a_que:-64 a_week:35 able:-37 able__make:-26
able_to:-37 about:121 about_it:31 adelantar:26 after:45 after_$:38 after_the:-27 afternoon:34 ahi:-41 al:273 al__y:78
al_jueves:31 al_lunes:60 al_sabado:57 al_viernes:64 alcanzo_a:-29 algo:30 all:-30 all__for:-30 an:41 an__change:-44
an_hour:69 an_oil:-44 and:96 another:40 another_day:44 antes:-61 antes__las:-25 antes_de:-47 antes_del:-47 any:158
any__next:-32 any__of:33 any__to:58 any_chance:52 any_day:-32 any_way:61 anymore:27 anything_$:-52 anything__that:27
appointment:50 appointment_$:-38 as:-25 asi:-28 at:47 at_$:-45 at_work:41 away_$:-29 back__hour:28 back_an:51 bad:37
bail:-33 be:36 be__at:-31 be__by:-30 be_able:-26 be_better:35 be_there:-86 before:-38 better:39 bien:26 booked:30
borre:-31 borre_mi:-31 bring:-172 bring_it:-52 but:40 but__one:26 but_the:26 by:-63 by_$:-26 c:-95 call:-47
call_off:-25 cambia:35 cambiar:37 cambiar_$:-25 cambiar__cita:32 cambiar_la:40 cambiar_mi:26 cambiarla:88 cambie:-59
cambie_por:-38 cambieme:50 cambieme_la:36 cambiemela:33 cambio:-34 cambios:-37 came:87 came_up:60 can:307 can__be:55
can__bring:-34 can__do:86 can__have:31 can__make:27 can__switch:27 can_do:-26 can_i:59 can_it:58 can_we:153
can_you:61 cancel:-132 cancel_$:-36 cancel_thursday:-30 cant__it:-52 cant_do:38 chance:90 chance_of:33 change_$:-39
change__to:32 change_it:63 change_my:26 cita__el:-41 cita__jueves:-38 cita_del:-31 cita_para:-33 clock:33 come:61
come__friday:-61 come_at:67 come_in:-35 como:-51 con:45 con_la:27 corte:27 could:132 could__come:33 could__do:43
could_i:51 could_it:25 could_we:66 count:-25 course:-30 date:34 day:161 day_$:29 day_please:34 days:42 de:92 de__a:25
de__cita:-27 de__en:29 de_dia:59 de_la:-69 de_mi:27 dead:25 dejar:29 dejo:-26 del:27 del__el:47 del_jueves:33
despues:-67 despues_$:-28 despues__las:-29 despues_de:-34 dia:306 dia_$:55 dia__favor:38 dia_por:38 dia_que:31
dias:83 dias_$:76 did_you:-27 different:45 different_day:37 digame:30 do:118 do__and:38 do__day:31 do__do:25
do__need:-73 do_any:31 do_i:-101 do_instead:-46 do_monday:27 do_tomorrow:43 do_you:37 doesnt:62 doesnt__anymore:55
doesnt_work:55 domingo:26 dont:-54 dont_need:-40 dos:26 dos_dias:35 double:41 down:42 down_the:37 earlier:74
earlier_$:31 early:33 el:141 el__a:-99 el__despues:-27 el__el:41 el__que:49 el__se:-34 el__temprano:-42 el_domingo:25
el_lunes:29 el_miercoles:46 el_mismo:27 else:50 empezo:30 empezo_a:30 en:42 en__de:69 en__del:111 en_lugar:107
en_pie:-37 en_vez:69 end:-28 equivoque:28 equivoque_de:28 era:32 es:-52 es_$:-30 es_que:33 esa:43 esa_hora:44 ese:101
ese_dia:100 esperen:-41 esperen_$:-40 esta:67 esta_bien:27 estoy:-42 eta:-60 falta:-38 falta_$:-26 favor:91
favor_$:68 favor_que:25 fecha:77 fecha_$:47 fierro:25 fine:-51 fine_$:-46 for:-47 for_an:-27 for_thursday:-49
for_tomorrow:-28 forget:-41 forgot:94 forward:37 free:-27 friday:60 friday__time:36 friday_same:36 going:-81
going__have:-32 going__make:-30 going_to:-85 good:-31 good_$:-29 good_for:-48 got:126 got_$:61 got_anything:45
got_it:-40 gracias:-26 habra:34 hacerlo:25 half:-33 have:70 have__bail:-31 have__cancel:-26 have_a:53 have_to:-28
hay:68 hey:26 hizo:-46 hizo_tarde:-40 hora:54 hora_$:37 horas:-36 hour:58 hour_$:32 how:84 how_about:120 hoy:98
huh:-26 huh_$:-26 i:53 i__a:84 i__at:67 i__for:32 i__friday:30 i__i:25 i__in:-69 i__it:-29 i__to:-71 i_bring:-55
i_forgot:56 i_have:94 i_need:-95 i_wont:-36 id:68 id_rather:26 if:137 if__can:40 ill:-25 im:-30 in:-52 in_$:-41
in_friday:-78 in_the:33 info:-31 info_$:-31 instead:80 instead_of:29 into:27 ir:-83 ir_$:-102 is:112 is__now:30
is__the:34 is_a:-26 is_bad:30 is_out:45 is_there:26 is_this:-29 it:142 it_$:-160 it__an:55 it__how:52 it__the:34
it__week:49 it_anymore:-42 it_be:99 it_can:30 it_in:-42 it_to:78 it_up:28 jueves:61 jueves_$:-30 jueves__las:-39
jueves__viernes:32 jueves_a:-36 jueves_si:25 la:253 la__al:26 la__dos:33 la__mas:33 la__para:47 la__pasar:31
la__vez:-27 la_cambia:30 la_cita:51 la_otra:-40 la_podemos:36 la_puede:29 la_quiero:30 labor:-38 labor_day:-34 las:81
las__las:38 las_a:40 las_no:33 las_se:-39 las_si:34 las_y:25 late:-37 later:41 later_$:-27 le:-76 lets:128
lets__it:70 lets_do:38 libre_$:28 like:45 llegar:33 llegar_a:34 llegare:-45 lo:-93 lo__por:-29 lo_cambie:-29 long:-32
los:-25 lugar:76 lugar_de:54 lunes:85 lunes_$:84 make:116 make__the:34 make_it:27 malo:27 manana:42 manana_$:-43
manana_no:31 manana_temprano:-26 martes:26 mas:257 mas_$:-51 mas_tarde:201 mas_temprano:29 me:177 me_$:-52
me__cambia:26 me__cambiar:25 me__de:27 me__el:-37 me__tarde:-41 me_equivoque:28 me_esperen:-41 me_hizo:-45 me_la:99
me_off:-39 me_on:41 me_puede:-30 me_pueden:-27 me_sale:28 me_to:88 mejor:47 mejor_no:-37 metal:26 mi:100 mi__del:-32
mi__para:25 miercoles:50 min:-143 min_$:-51 min_tarde:-41 mine:69 mins:-59 minutos:-40 mismo:75 mismo_dia:51 miss:-54
miss_it:-48 mon:27 monday:95 move:96 move__to:38 move__up:49 move_it:34 move_me:54 mover:37 moverla:75 muevala:53
my:86 my__to:34 my_appointment:53 myself:36 nada_$:-25 necesito:53 need__appointment:-35 need__bring:-61
need__cancel:-38 need__different:26 need__push:26 needs:29 new:65 next:71 no:123 no_$:174 no__el:83 no__esperen:-41
no__ir:-90 no__la:-27 no__manana:25 no_good:33 no_llego:39 no_worries:-25 noon:40 nop:41 nop_$:41 nos_vemos:-30
not:26 not_$:27 not__to:-36 not_going:-26 not_tomorrow:48 now:108 now_$:26 of:79 of_course:-30 of_my:25 off:-46
off__schedule:-25 oil:-49 oil_change:-57 ok:-53 olvide:-38 on:-77 on_$:-54 on__th:52 on_the:29 one:40 one_i:26
other:85 other_day:42 otra:-56 otra_fecha:46 otra_vez:-110 otro_$:-42 otro_dia:93 overslept:27 para:122
para__lunes:30 para__sabado:45 para_despues:31 para_el:116 para_manana:25 para_que:-25 pasado:43 pasela:102
pasela_al:43 pero:51 pero_el:25 pie:-40 pie_$:-33 please:80 please_$:104 please_take:-26 podemos:83 podemos__al:32
podria:85 podria_ser:65 por:-26 por_favor:72 por_la:-27 por_otro:-33 puede:84 puede_$:-73 puede__el:-26 puede_ser:45
puedo:64 puedo__a:29 puedo__el:35 puedo_llegar:38 push:94 push__back:41 push_it:66 put:78 put__on:40 put_me:64 que:87
que__el:44 que__la:30 que__lo:-33 que_cambiarla:60 que_es:-39 que_hora:-65 que_le:-33 que_sea:75 quiero:45 rather:77
rather_than:41 ready:-28 recorrer:27 reschedule:98 reschedule_$:35 reschedule_please:40 roads:28 roads_are:28
roger:-31 sabado:56 sabado_$:28 sale:27 salgo_de:26 salir:27 same:95 same_time:89 saturday:88 saturday_$:43
schedule:-33 school:28 se:38 se__hizo:-45 se__mas:28 se_puede:33 sea:75 sea_el:26 see:-153 see__then:-31
see__tomorrow:-33 see_you:-137 semana:66 semana_$:59 ser:114 ser_mas:79 set:-27 si:110 si_$:32 si_me:28 sin_falta:-28
slide:84 slide_me:53 slot:47 slot_$:25 so:32 something:80 something__up:60 something_came:60 sooner:75 sooner_than:28
sorry:-41 sorry_$:-32 still:-41 still_on:-28 stop:-49 sunday:-25 swap:73 swap_me:28 switch:67 switch_to:26
take__off:-32 tan:27 tarde:79 tarde_y:27 tempranito:37 tempranito_$:30 temprano:-46 temprano_$:-61 tengo:81
tengo_que:59 th:69 than:67 thanks:-32 that:113 that_$:27 that_day:45 that_is:-39 the:189 the__after:85 the__is:35
the__of:39 the__the:-32 the_appointment:-50 the_better:-32 the_day:60 the_earlier:-26 the_one:31 the_same:36
the_th:73 the_week:32 there:-29 there_at:-30 there_by:-36 thumbsup:-42 thumbsup_$:-42 thurs:52 thursday:25
thursday_$:-104 thursday__work:54 thursday_after:-42 thursday_at:-43 thursday_is:26 tienen_$:35 til:33 time:138
time_$:142 tmrw_$:-26 to:293 to_$:30 to__anything:-49 to__in:40 to__off:-25 to__on:-29 to__please:39 to__th:32
to__week:25 to_bail:-33 to_bring:-70 to_cancel:-78 to_change:65 to_come:40 to_friday:42 to_have:-32 to_make:-60
to_monday:39 to_move:28 to_next:60 to_push:29 to_saturday:28 to_the:76 to_work:-25 toca:39 today_$:-45 tomorrow:42
tomorrow_$:-92 tomorrow_is:31 too:40 too__for:32 too_early:34 trade:61 tuesday:53 tuesday_$:30 turns:27 turns_out:27
un:45 un__antes:26 un__mas:25 un_dia:56 una_cita:-26 una_semana:29 up:76 up_$:-28 up_at:34 van__cambiar:-25 van_a:-43
vemos:-28 vez:-50 vez_$:-31 viernes:52 viernes_$:72 viernes__la:-26 viernes__las:-52 viernes_a:-51 voy:-53 wait:-30
wait_$:-35 way:45 way_to:58 we:211 we__instead:-40 we__it:102 we_do:72 we_make:48 wed:-30 wednesday:55 wednesday_$:36
week:109 week_$:34 week_after:45 were:-52 what_else:39 what_time:-27 wont__it:-48 wont_be:-31 wont_work:56 work:119
work_$:-58 worries:-25 would:111 would__better:36 would_be:49 would_it:31 wouldnt:-29 wouldnt__it:-26
wouldnt_miss:-26 y:63 y_$:-114 y__cuanto:41 y__el:28 y_digame:31 ya:-32 ya_no:-28 yeah:36 yep:-59 yep_$:-31 yes:-123
yes_$:-37 yo:33 yo__el:35 you:-108 you_$:-28 you_at:-25 you_do:36 you_then:-35 you_tomorrow:-33
"""
