"""What speaks for and against `move`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "move"
BIAS = -297
WEIGHTS = """\
#abad:46 #abor:-18 #abou:66 #acei:-19 #acia:-22 #adel:48 #afte:35 #agen:38 #alen:18 #alte:23 #amar:39 #ambi:159
#amel:72 #amos:62 #anan:28 #ance:-96 #anch:18 #anks:-19 #anme:20 #anta:20 #ante:-27 #anto:25 #anym:18 #apar:26
#appo:40 #arde:72 #arli:68 #arte:34 #asel:78 #asem:57 #asen:21 #asis:-33 #athe:58 #atio:18 #atra:34 #atur:38 #avor:79
#away:-25 #bado:46 #befo:-26 #biar:68 #biem:63 #bien:24 #blem:-20 #body:23 #book:54 #borr:-38 #bout:67 #brin:-128
#bsup:-24 #cale:20 #call:-20 #camb:169 #came:50 #canc:-143 #ceit:-19 #cela:-19 #cele:-36 #cesi:38 #chan:36 #ched:35
#cier:-19 #cita:58 #cole:25 #come:42 #como:-22 #corr:91 #coul:60 #cupo:18 #dame:18 #date:27 #days:39 #deja:54
#dejo:-18 #dela:52 #deme:20 #demo:35 #desp:-43 #dias:42 #diff:30 #diga:26 #does:62 #domi:18 #dont:-35 #doub:18
#down:41 #dria:54 #dule:36 #eady:-21 #eage:45 #earl:80 #ease:70 #ebod:20 #eces:31 #echa:46 #ecit:23 #ecor:59 #edul:36
#efor:-26 #egar:-21 #eite:-19 #ejar:40 #elan:48 #eman:32 #emel:64 #emor:-33 #emos:73 #enda:52 #engo:35 #enla:35
#enti:23 #eral:18 #erco:25 #eria:20 #erla:65 #erne:27 #erno:24 #esch:57 #esda:51 #esit:38 #esnt:53 #espe:-46
#espu:-42 #esto:-22 #etal:21 #ethi:72 #evam:43 #evar:-18 #eves:51 #falt:-20 #favo:79 #fech:48 #fere:30 #ffer:30
#fije:22 #find:19 #fine:-23 #firm:-27 #floo:20 #fore:-28 #forg:43 #frid:40 #fter:38 #fune:18 #game:27 #gamo:68
#ganm:18 #gare:-37 #gend:39 #goin:-57 #good:-40 #grac:-21 #habl:-24 #haga:21 #half:-19 #hanc:39 #hank:-29 #have:50
#hedu:36 #here:-41 #hing:57 #hizo:-29 #hora:26 #humb:-24 #hurs:61 #iaje:25 #ible:27 #iday:44 #ieme:63 #iera:28
#ierc:25 #iern:25 #iffe:30 #info:-25 #ingo:18 #ings:-18 #inst:58 #intm:40 #into:21 #inut:-38 #irme:-19 #isie:18
#isit:21 #ismo:55 #isti:-33 #ital:20 #itch:52 #juev:42 #juni:22 #junt:18 #just:-22 #king:21 #labo:-18 #lame:-23
#land:20 #lant:51 #ldnt:-26 #leas:71 #lega:-23 #lets:67 #leva:-21 #lide:44 #lier:67 #like:31 #llam:-25 #lled:20
#lleg:-18 #llev:-26 #lock:32 #long:-20 #luga:79 #lune:75 #lvid:-29 #make:94 #malo:27 #mana:58 #mand:-20 #mbia:113
#mbie:58 #mbsu:-24 #mebo:20 #mela:151 #ment:46 #meta:20 #meth:72 #mier:25 #mine:36 #ming:20 #mins:-63 #minu:-38
#mism:59 #miss:-29 #mond:57 #more:31 #morn:39 #morr:35 #move:110 #muev:95 #nana:40 #ncel:-143 #ncho:19 #ndam:18
#ndar:42 #nday:48 #nded:21 #nece:32 #next:40 #ngam:67 #nges:-26 #nito:25 #nnin:-25 #noon:42 #nste:56 #ntar:25
#ntes:-41 #ntme:40 #nuto:-29 #nymo:18 #odem:64 #odri:56 #oesn:53 #oger:-25 #oing:-58 #oint:39 #oles:33 #olvi:-32
#omeb:20 #omet:71 #omor:35 #ompl:22 #onda:54 #oner:55 #onga:71 #oone:31 #oras:-21 #orge:-28 #orgo:72 #orni:39
#orra:71 #orre:-18 #orri:-22 #orro:35 #orry:-18 #ossi:28 #othe:105 #otra:-37 #oubl:18 #ould:123 #ound:-18 #ours:-47
#over:67 #para:99 #part:20 #pasa:41 #pase:121 #pere:-50 #pero:35 #plea:67 #pode:67 #podr:65 #poin:39 #pone:39
#pong:71 #poss:28 #ppoi:40 #pued:99 #pues:-50 #push:72 #quem:26 #quie:29 #quis:18 #quit:-23 #raci:-21 #rade:37
#rama:51 #rame:27 #rani:28 #rano:-37 #rath:58 #rcol:25 #rday:38 #read:-21 #reco:55 #rect:-19 #rent:28 #repr:51
#resc:57 #rget:-28 #rgot:72 #rida:44 #ries:-21 #ring:-102 #rlie:68 #rnes:27 #rnin:38 #rnoo:26 #road:26 #roge:-23
#rows:18 #rrec:-19 #rrer:35 #rrie:-21 #rrow:35 #rsda:28 #rwar:22 #saba:45 #same:71 #satu:39 #sche:36 #sday:79
#sela:68 #sema:27 #seme:26 #sibl:27 #sist:-33 #sito:38 #slid:44 #slot:27 #some:88 #soon:29 #sorr:-18 #sper:-46
#spon:117 #spue:-42 #ssib:28 #stea:55 #stil:-27 #stir:-33 #stop:-52 #stoy:-20 #stri:-18 #surg:20 #swap:26 #swit:52
#take:-21 #tard:73 #tead:56 #teng:33 #tern:26 #than:23 #that:53 #ther:143 #thin:52 #this:-29 #thum:-24 #thur:60
#tien:-18 #till:-23 #time:109 #tmen:40 #tmrw:-19 #toca:25 #tomo:35 #trab:23 #trad:40 #tras:34 #tues:36 #turd:39
#turn:43 #uble:18 #uede:42 #uedo:55 #ueme:21 #uesd:39 #ueva:54 #ueve:80 #ugar:79 #uier:28 #uisi:18 #uldn:-26
#umbs:-24 #uner:18 #unes:75 #unio:22 #urda:39 #urge:33 #urns:19 #ursd:28 #urse:-35 #utos:-29 #vame:43 #verl:34
#viaj:24 #vide:-36 #vier:23 #visi:40 #wait:-41 #ward:22 #week:57 #were:-35 #will:-23 #witc:52 #work:90 #worr:-21
#woul:69 #ymor:18 #your:-18 %again_later:76 %again_later%bring:21 %again_later%call_off:26 %again_later%doubt:-33
%again_later%elsewhere:-23 %again_later%family:23 %again_later%gone_car:-25 %again_later%how_long:59
%again_later%message:-29 %again_later%on_way:75 %again_later%phone:22 %again_later%place:-26 %again_later%refuse:55
%again_later%shift_it:69 %agree:-53 %agree%away:19 %agree%call_off:88 %agree%how_long:27 %agree%on_way:-20
%agree%question:21 %agree%refuse:89 %agree%shift_it:63 %agree%wrong_one:33 %away:59 %away%busy:36 %away%elsewhere:30
%away%on_way:22 %away%place:36 %away%question:24 %away%shift_it:98 %away%wrong_one:25 %bad:39 %bad%elsewhere:28
%bad%how_long:26 %bad%meaning:23 %bad%shift_it:19 %bring%busy:-31 %bring%call_off:-79 %bring%do_it:41
%bring%elsewhere:38 %bring%how_long:48 %bring%leave_me:-38 %bring%question:-26 %bring%refuse:-90 %bring%shift_it:92
%busy:132 %busy%do_it:30 %busy%fails:53 %busy%how_long:22 %busy%refuse:39 %call_off:-39 %call_off%do_it:-20
%call_off%doubt:18 %call_off%fails:-20 %call_off%gone_car:-18 %call_off%on_way:-20 %call_off%phone:-27
%call_off%place:52 %call_off%question:53 %call_off%wrong_one:-22 %car:-39 %car%question:-28 %car%shift_it:-43
%car_part:-68 %car_part%do_it:-61 %car_part%shift_it:-24 %do_it%elsewhere:-25 %do_it%gone_car:-43 %do_it%phone:18
%do_it%question:-21 %do_it%refuse:-23 %doubt:-40 %doubt%elsewhere:-66 %doubt%message:-24 %doubt%shift_it:-29
%doubt%wrong_one:-52 %elsewhere:52 %elsewhere%how_long:74 %elsewhere%meaning:22 %elsewhere%message:-25
%elsewhere%phone:26 %elsewhere%refuse:20 %elsewhere%shift_it:-21 %elsewhere%wrong_one:-30 %fails%shift_it:22
%family:42 %family%gone_car:24 %family%how_long:43 %family%refuse:22 %family%wrong_one:27 %gone_car:25
%gone_car%how_long:39 %gone_car%question:43 %how_long:91 %how_long%lift:-39 %how_long%meaning:25
%how_long%opening:-33 %how_long%phone:30 %how_long%question:-25 %how_long%refuse:71 %how_long%shift_it:127
%how_long%staff:18 %how_long%wrong_one:88 %leave_me:-65 %lift:-29 %meaning:36 %message:-65 %message%shift_it:-31
%message%wrong_one:-25 %noise:25 %noise%shift_it:27 %odometer:80 %odometer%on_way:22 %odometer%place:19
%odometer%refuse:32 %odometer%shift_it:40 %on_way:-161 %on_way%shift_it:84 %opening:-32 %phone%refuse:29
%place%refuse:26 %question:58 %question%season:45 %question%shift_it:44 %question%start_again:-26 %question%who:-18
%refuse:121 %refuse%shift_it:34 %refuse%start_again:23 %refuse%thanks:-45 %refuse%wrong_one:19 %season:60
%season%shift_it:25 %shift_it:401 %shift_it%smoke_smell:26 %shift_it%start_again:87 %shift_it%wrong_one:51
%smoke_smell:27 %thanks:-56 %who:-22 %wrong_one:31 @?:183 @after_visit:-29 @confirm:424 @confirm_stop:-20
@confirm_thumbsup:-22 @day:-77 @later:81 @nothing:326 @odometer:-20 @offers:-292 @reading:-30 @time:-131 @times:156
@walk_in:-30 ^_$:-110 ^_a:-46 ^_all:-24 ^_antes:-25 ^_any:33 ^_be:-30 ^_can:61 ^_cancel:-30 ^_cancele:-20 ^_como:-18
^_could:55 ^_despues:-25 ^_did:-18 ^_do:-56 ^_dont:-24 ^_el:-106 ^_en:61 ^_end:-19 ^_ese:19 ^_esta:19 ^_eta:-44
^_forget:-21 ^_friday:-27 ^_going:-23 ^_hmm:-24 ^_how:-36 ^_i:65 ^_id:31 ^_im:-21 ^_info:-24 ^_lets:57 ^_llego:-18
^_lo:-22 ^_make:31 ^_move:32 ^_my:35 ^_necesito:41 ^_need:95 ^_no:78 ^_ok:-27 ^_olvide:-35 ^_para:-64 ^_podemos:32
^_por:-23 ^_puedo:53 ^_push:20 ^_quiero:37 ^_reschedule:32 ^_se:31 ^_see:-56 ^_si:-49 ^_something:59 ^_still:-27
^_tengo:44 ^_thanks:-22 ^_thumbsup:-24 ^_thursday:27 ^_tienen:-19 ^_tomorrows:19 ^_voy:-21 ^_we:-22 ^_were:-27
^_what:-30 ^_would:20 ^_wouldnt:-22 ^_y:-100 ^_ya:-40 ^_ye:-21 ^_yep:-42 ^_yes:-76 ^_you:-31 a:168 a__hora:-22
a__no:25 a__si:30 a__tarde:27 a__time:31 a__to:-19 a_different:22 a_esa:18 a_ir:-20 a_la:33 a_las:52 a_new:37
a_que:-33 a_week:35 able:-18 able_to:-18 about:66 aceite:-19 afternoon:27 ahi:-27 al:203 al__y:37 al_lunes:44
alcanzo_a:-19 all:-29 all__for:-23 am:19 an__change:-28 an_hour:26 an_oil:-28 and:48 another_day:33 antes:-51
antes_de:-21 antes_del:-28 any:90 any__of:22 any_chance:33 any_day:-25 anymore:18 anything_$:-45 appointment:40
appointment_$:-23 asistir:-18 at:54 at_$:-31 at_work:25 away:-25 away_$:-25 back_an:31 bad:23 be_$:22 be__by:-18
be_there:-54 before:-26 borre:-26 borre_mi:-26 bring:-127 bring_it:-46 but:27 by:-35 by_$:-24 by_a:18 call:-34
call_me:-19 called:19 cambia:25 cambiar:71 cambiar_la:48 cambie:-41 cambie_por:-28 cambieme:33 cambieme_la:19 came:51
came_up:52 can:202 can__be:36 can__bring:-28 can__come:-19 can__do:66 can__make:18 can_do:-19 can_i:53 can_it:36
can_we:125 can_you:27 cancel:-96 cancel_$:-27 cancel_my:-19 cancele:-24 cant__it:-21 cant_make:34 cant_wait:-23
car:-21 chance:40 change:35 change__to:23 change_it:47 changes:-26 cita:19 cita_$:36 cita__el:-31 cita__jueves:-33
cita_del:-38 cita_para:-31 come:45 come__friday:-53 come__instead:18 come_at:46 como:-23 could:63 could_i:19
could_we:24 day:134 day_$:47 day__week:-18 day_after:21 days:31 de:62 de__en:18 de__que:22 de_hoy:19 de_las:-29
de_mi:24 de_viaje:25 dejar:31 dejo:-18 del__el:38 del_jueves:22 deme:21 despues:-42 despues__las:-26 despues_de:-26
dia:193 dia_$:64 dia__mi:20 dias:42 dias_$:44 did:-24 did_you:-20 different:30 different_day:23 do__need:-55 do_i:-66
do_instead:-33 doesnt:53 doesnt__anymore:44 doesnt_work:44 domingo:19 domingo_$:23 dont:-35 dont_need:-22 double:18
down:41 down_the:32 earlier:68 el:95 el__a:-54 el__despues:-24 el__dia:33 el__el:27 el__que:27 el__se:-27
el__temprano:-22 el_dia:18 el_lunes:24 el_miercoles:20 el_mismo:37 el_sabado:29 en:22 en__de:35 en__del:75 en_la:-19
en_lugar:78 en_vez:38 end:-25 end_$:-19 entra:19 ese:70 ese_dia:60 estoy:-20 eta:-44 favor:80 favor_$:55 fecha:48
find:20 fine:-23 fine_$:-22 for:-40 for_an:-19 for_thursday:-36 for_tomorrow:-18 forget:-28 forgot:72 friday:44
friday_$:-19 friday__the:18 friday_and:20 funeral:18 going:-57 going__have:-22 going_to:-57 good:-40 good_$:-19
good_for:-36 got:45 got_$:21 got_anything:20 got_it:-26 half:-19 have:50 have_a:44 have_to:-23 have_you:24 hay:19
hizo:-29 hmm:-24 hora:51 hora_$:20 horas:-20 hour:25 how:52 how_about:76 hoy:56 i:57 i__a:66 i__at:46 i__friday:32
i__i:22 i__in:-70 i__to:-63 i_bring:-34 i_cant:-18 i_do:21 i_forgot:50 i_have:70 i_need:-77 i_wont:-22 i_would:19
id:29 id_rather:18 if:49 ill:-21 in:-41 in_$:-25 in_friday:-70 in_the:33 info:-25 info_$:-25 instead:56 instead_of:28
into:21 ir:-40 ir_$:-65 is:59 is__now:25 is_it:-19 is_out:38 is_the:-21 is_there:20 it:113 it_$:-116 it__an:43
it__how:47 it__the:23 it_anymore:-23 it_be:73 it_in:-28 it_is:22 it_to:45 it_up:25 jueves:42 jueves__las:-23
jueves__viernes:30 jueves_a:-23 junio:22 junio_$:22 just:-22 la:156 la__antes:-18 la__del:-25 la__el:-23 la__para:26
la__pasar:25 la__por:22 la__que:18 la__y:23 la_cita:44 la_hora:41 la_otra:-21 la_puede:20 la_tarde:20 labor:-18
las:26 las_$:22 las_a:21 las_no:24 late:-30 late_$:-18 le:-29 lets:67 lets__it:37 lets_do:18 like:32 like_$:18
like_to:20 llegar_a:20 lo:-63 lo__por:-23 lo_cambie:-23 long:-21 los:-20 lugar:79 lugar_de:34 lunes:75 lunes_$:59
make:95 make_it:28 malo:28 manana:40 martes__el:22 mas:193 mas_$:-19 mas_tarde:162 me:138 me__cambiar:26 me__el:-22
me__puede:19 me__tarde:-27 me__the:26 me_down:27 me_hizo:-28 me_la:41 me_to:73 mejor_no:-30 metal:21 mi:77
mi__del:-26 mi__para:20 miercoles:25 min:-110 min_$:-38 min_tarde:-32 mine:44 mins:-63 minutos:-29 mismo:55
mismo_dia:57 miss:-37 miss_it:-37 mon:37 monday:58 morning:41 morning_$:33 move:62 move__to:36 move_it:28 move_me:28
mover:30 moverla:34 my:70 my__to:18 my_appointment:28 necesito:38 need__appointment:-19 need__bring:-53
need__cancel:-25 new:49 next:40 next_week:18 no:91 no_$:138 no__asistir:-18 no__el:62 no__ir:-56 no__manana:20
no_good:18 no_hay:-18 no_llego:26 no_me:-26 no_worries:-21 nos:-18 nos_vemos:-20 not_$:24 not__to:-25 not_going:-18
now:35 of:52 of_$:19 of_my:29 oil:-24 oil_change:-29 olvide:-35 on:-41 on_$:-33 on__th:37 on_the:39 or:-21 other:79
other_day:39 otra:-37 otra_vez:-62 otro_$:-26 otro_dia:41 out_$:-32 para:112 para__de:22 para_despues:20 para_el:82
pasado:19 pasar_al:21 pasela:69 pero:27 pero__la:18 please:67 please_$:70 pm:21 podemos:64 podria:56 podria_ser:50
por_el:-19 por_favor:68 por_la:-20 possible:28 puede:37 puede_$:-43 puede__el:-22 puede_ser:18 puedo:58 puedo__a:23
puedo__el:32 puedo_llegar:24 puedo_manana:19 push:67 push__back:31 push_it:55 put:24 put_me:29 que:47 que__la:28
que_cambiar:22 que_entra:19 que_era:-19 que_hora:-34 que_le:-23 que_sea:41 quiero:28 quiero__la:19 quisiera:18
rather:58 rather_than:31 reschedule:64 reschedule_$:23 reschedule_please:24 ring:21 sabado:46 salgo_de:22 same:62
same_time:61 saturday:34 saturday_$:22 schedule:-20 se:32 se__hizo:-28 sea:41 see:-112 see__then:-29 see_you:-108
semana:33 semana_$:18 semana_que:20 ser:72 ser_el:-21 set:-21 si:80 si_$:32 si_es:18 si_hay:20 slot:27 so:32
something:72 something__up:52 something_came:52 sooner:31 sorry:-18 sorry_$:-18 still:-27 still_on:-20 stop:-36
su:-22 swap:27 switch:52 switch__to:20 switch_me:23 take:-22 tan:33 tarde:81 tempranito:28 tempranito_$:20
temprano:-35 temprano_$:-40 tengo:37 tengo_que:24 th:46 than:52 thanks:-26 that:53 that_day:28 the:157 the__after:51
the__is:23 the_appointment:-36 the_day:28 the_same:23 the_th:48 then_$:-33 there:-30 there_by:-20 this:-29
thumbsup:-24 thumbsup_$:-24 thurs:33 thursday:19 thursday_$:-54 thursday__work:49 thursday_after:-21 thursday_at:-35
thursday_is:22 time:119 time_$:118 tmrw:-19 to:206 to__in:42 to__on:-22 to_be:-19 to_bring:-57 to_cancel:-50
to_change:47 to_come:49 to_friday:36 to_have:-22 to_make:-34 to_monday:35 to_move:20 to_next:28 to_reschedule:19
to_the:46 toca:25 tomorrow_$:-62 tomorrows:18 trabajo:20 trade:42 tuesday:39 tuesday_$:45 turns:19 up:58 up_at:28
vez:-27 vez_$:-18 viaje:25 viernes:27 viernes_$:52 viernes__las:-23 viernes_a:-27 voy:-46 wait:-33 wait_$:-24 way:33
way_to:42 we:131 we__instead:-29 we__it:79 we_do:52 we_make:35 wednesday_$:18 week:59 week_$:41 were:-35 who:-18
will:-22 wont__it:-28 wont_work:47 work:100 work_$:-39 worries:-21 would:92 wouldnt:-23 y_$:-84 y__cuanto:20 y__el:20
y__me:19 ya:-36 ye:-21 yep:-42 yep_$:-23 yes:-79 yes_$:-23 yo:24 yo__el:23 you:-113 you_$:-27 you_then:-31
you_tomorrow:-29
"""
