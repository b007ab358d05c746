"""What speaks for and against `move`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "move"
BIAS = -324
WEIGHTS = """\
#abad:50 #abla:-15 #able:-15 #abor:-21 #abou:75 #acei:-22 #acer:-14 #acia:-25 #actu:-21 #adel:56 #adua:16 #affi:-17
#afte:39 #agai:-16 #agam:15 #agen:43 #aite:14 #ajes:-15 #alen:21 #algo:14 #alio:-19 #alla:-17 #alta:-17 #alte:27
#amar:44 #ambi:180 #amel:78 #amos:70 #anan:34 #ance:-105 #anch:21 #ando:15 #anit:20 #anks:-23 #anme:23 #anot:18
#anta:22 #ante:-28 #anto:28 #anym:17 #apar:30 #appo:41 #arar:-15 #arde:69 #arla:14 #arli:74 #arly:16 #arou:-16
#arte:39 #asad:14 #asel:88 #asem:66 #asen:24 #asis:-36 #ater:16 #athe:65 #atio:22 #atra:40 #atur:44 #augh:14 #avor:89
#away:-26 #ayed:19 #ayud:-19 #bado:50 #bail:-17 #baja:-16 #bajo:18 #base:15 #beat:14 #befo:-30 #biam:17 #biar:73
#biem:72 #bien:26 #bios:-16 #blem:-23 #body:27 #book:62 #borr:-43 #boss:15 #bout:76 #brin:-140 #bsup:-30 #bump:15
#busq:15 #cale:23 #call:-25 #camb:190 #came:54 #camp:-15 #canc:-160 #ceit:-22 #cela:-23 #cele:-40 #cesi:43 #chan:48
#ched:40 #cias:-20 #cier:-23 #cita:65 #ckin:18 #cloc:19 #cole:29 #come:50 #como:-22 #comp:20 #corr:104 #cort:15
#cost:15 #coul:68 #crib:-18 #ctua:-18 #cuan:18 #cupo:20 #dame:21 #date:31 #daug:15 #days:46 #deja:61 #dejo:-19
#dela:60 #deme:23 #demo:39 #desp:-47 #dias:50 #diff:33 #diga:30 #dime:16 #dnes:14 #does:69 #domi:22 #dont:-39
#doub:21 #down:47 #dria:59 #dule:40 #eady:-25 #eage:51 #earl:88 #ease:81 #ebod:23 #eces:35 #echa:53 #ecit:27 #ecor:66
#edal:16 #edne:14 #edul:40 #efor:-30 #egar:-26 #eite:-22 #ejar:45 #ejor:15 #elan:55 #eman:37 #emel:72 #emen:15
#emor:-35 #emos:81 #empr:-18 #enda:59 #engo:40 #enla:40 #ensa:-18 #ente:-16 #enti:27 #eral:21 #erco:29 #eren:-14
#eria:24 #erla:74 #erne:34 #erno:26 #eron:-19 #erra:-17 #erva:16 #esch:64 #esda:55 #eser:16 #esit:43 #esnt:59
#espe:-52 #espu:-46 #esta:16 #esto:-25 #etal:24 #ethi:78 #evam:46 #evar:-21 #ever:-19 #eves:58 #exam:17 #falt:-23
#favo:89 #fech:55 #fell:16 #fere:33 #ffer:33 #fije:25 #find:22 #fine:-26 #firm:-32 #floo:22 #foll:20 #fore:-32
#forg:46 #form:15 #frid:43 #from:-15 #fter:42 #fund:15 #fune:21 #gado:15 #gain:-16 #game:30 #gamo:78 #ganm:21
#gare:-42 #gend:44 #ghte:15 #goin:-66 #good:-42 #grac:-24 #guan:14 #habl:-28 #habr:16 #haga:24 #half:-22 #hanc:45
#hank:-34 #harp:-16 #have:58 #hedu:40 #help:-15 #here:-46 #hija:14 #hing:66 #hizo:-35 #hool:14 #hora:25 #hour:15
#hrou:14 #hter:15 #humb:-30 #hurs:67 #iaje:29 #ible:31 #iday:48 #ieme:72 #iemp:-17 #iera:32 #ierc:29 #iern:31
#iero:17 #ierr:-20 #iffe:33 #igam:16 #ight:-15 #impo:-16 #inal:15 #info:-26 #ingo:22 #ings:-21 #inst:69 #intm:41
#into:24 #inut:-42 #irme:-22 #isie:21 #isit:24 #ismo:61 #isnt:19 #isti:-36 #ital:23 #itch:59 #iten:-16 #jove:14
#juev:48 #juni:25 #junt:21 #just:-24 #king:25 #labo:-21 #lado:-17 #lame:-28 #land:23 #lant:59 #late:-15 #ldnt:-27
#leas:81 #left:-16 #lega:-28 #lend:17 #lets:74 #leva:-25 #lico:16 #lide:50 #lier:73 #like:36 #llam:-30 #lled:22
#lleg:-21 #llev:-31 #llow:19 #lock:37 #long:-22 #lood:15 #loud:18 #lowi:20 #luga:90 #lunc:-17 #lune:83 #lvid:-33
#make:102 #malo:32 #mana:70 #mand:-23 #mbia:124 #mbie:69 #mbsu:-30 #mebo:23 #mejo:15 #mela:168 #mens:-17 #ment:48
#meta:24 #meth:78 #mier:29 #mine:41 #ming:24 #mins:-72 #minu:-42 #mism:65 #miss:-29 #moke:15 #mond:65 #more:32
#morn:44 #morr:38 #move:123 #mpli:16 #muev:106 #myse:14 #nana:47 #ncel:-160 #ncho:23 #ndam:22 #ndar:48 #nday:54
#nded:24 #nece:36 #need:22 #nera:20 #nesd:14 #next:42 #nfir:-14 #nfun:15 #ngam:76 #nges:-28 #nine:16 #nito:29
#nnin:-28 #noon:46 #nsaj:-17 #nste:67 #ntar:28 #ntem:16 #nten:14 #ntes:-44 #ntis:15 #ntme:41 #nuto:-32 #nymo:17
#ocki:19 #odem:70 #odri:61 #oesn:59 #oger:-27 #oing:-67 #oint:40 #oles:39 #ollo:20 #olvi:-36 #omeb:23 #omet:75
#omin:16 #omor:38 #ompl:24 #onda:61 #oner:63 #onfi:-14 #onfu:15 #onga:81 #oone:36 #oras:-22 #orde:-14 #orge:-33
#orgo:80 #orma:15 #orni:44 #orra:83 #orre:-21 #orri:-24 #orro:38 #orry:-19 #orte:15 #ossi:31 #osto:15 #othe:114
#othi:-15 #otra:-41 #oubl:21 #ould:139 #ound:-21 #ours:-52 #ouse:14 #oved:-15 #oven:14 #over:75 #owin:19 #para:105
#part:23 #pasa:45 #pase:137 #paso:-17 #peda:16 #pere:-56 #pero:38 #plan:-15 #plea:76 #plic:15 #pode:73 #podr:69
#poin:40 #pone:45 #pong:80 #poss:32 #post:18 #ppoi:41 #pued:105 #pues:-54 #push:80 #quem:31 #quie:32 #quis:21
#quit:-27 #raba:16 #raci:-24 #rade:43 #radu:16 #rain:18 #rama:58 #rame:31 #ranc:20 #rani:33 #rano:-44 #rath:65
#rato:15 #raye:14 #rcol:29 #rday:44 #rden:-19 #read:-26 #reci:15 #reco:61 #rect:-22 #rent:32 #repr:58 #resc:64
#rete:14 #revo:-17 #rget:-33 #rgot:80 #rida:48 #ries:-23 #rike:-14 #ring:-110 #rlie:74 #rnes:34 #rnin:44 #rnoo:29
#road:30 #roge:-24 #roun:-17 #rows:20 #rrec:-21 #rren:-16 #rrer:39 #rrie:-24 #rrow:38 #rsda:28 #runn:-18 #rwar:25
#saba:50 #sado:17 #saje:-16 #sala:15 #same:75 #satu:45 #save:14 #sche:40 #scho:14 #scri:-18 #sday:82 #segu:15
#sela:77 #self:14 #sema:32 #seme:29 #semo:20 #serv:17 #shar:-16 #sibl:31 #sick:16 #sier:18 #simo:-17 #sist:-36
#sito:44 #slid:50 #slot:31 #smok:14 #some:94 #soon:33 #sorr:-19 #sper:-52 #spon:136 #spue:-46 #ssib:32 #stea:66
#stil:-32 #stir:-36 #stop:-60 #stoy:-23 #stri:-21 #surg:23 #swap:29 #swit:59 #take:-25 #tand:-14 #tant:15 #tard:70
#taro:17 #tead:67 #teme:16 #teng:38 #tern:28 #ters:15 #text:-17 #than:24 #that:61 #ther:156 #thin:61 #this:-32
#thro:14 #thum:-30 #thur:67 #tien:-21 #till:-28 #time:117 #tion:20 #tist:15 #tmen:41 #tmrw:-20 #toca:29 #tomo:38
#trab:25 #trad:47 #trai:19 #tras:41 #trik:-14 #tual:-19 #tues:37 #turd:45 #turn:49 #uall:-18 #uand:20 #uart:-14
#uble:21 #uede:47 #uedo:58 #ueme:25 #uesd:41 #ueva:58 #ueve:92 #ugar:90 #uier:30 #uisi:21 #uite:-18 #uldn:-27
#umbs:-30 #unch:-18 #undi:16 #uner:21 #unes:83 #unio:25 #unni:-18 #unta:15 #urda:45 #urge:37 #urno:16 #urns:21
#ursd:28 #urse:-38 #usqu:15 #utos:-32 #vame:46 #vemo:-19 #verl:38 #vers:19 #viaj:28 #vide:-41 #vier:30 #visi:47
#vuel:18 #wait:-47 #ward:25 #wedn:14 #week:60 #were:-40 #will:-26 #wing:18 #witc:59 #work:87 #worr:-23 #woul:79
#ymor:17 #your:-20 #ysel:14 #yuda:-19 %again_later:83 %again_later%bring:26 %again_later%busy:-23
%again_later%call_off:27 %again_later%car:16 %again_later%doubt:-37 %again_later%elsewhere:-22 %again_later%family:27
%again_later%gone_car:-26 %again_later%how_long:64 %again_later%leave_me:-14 %again_later%lift:-20
%again_later%message:-35 %again_later%money:-15 %again_later%on_way:73 %again_later%pay_day:-15 %again_later%phone:25
%again_later%place:-29 %again_later%refuse:59 %again_later%shift_it:85 %again_later%start_again:-21 %agree:-59
%agree%away:22 %agree%busy:17 %agree%call_off:95 %agree%car_part:17 %agree%how_long:28 %agree%on_way:-24
%agree%phone:18 %agree%question:23 %agree%refuse:99 %agree%shift_it:66 %agree%wrong_one:38 %away:70 %away%busy:39
%away%car_part:18 %away%elsewhere:35 %away%family:15 %away%odometer:18 %away%on_way:26 %away%place:42
%away%question:28 %away%shift_it:113 %away%wrong_one:30 %bad:44 %bad%doubt:16 %bad%elsewhere:29 %bad%how_long:27
%bad%meaning:24 %bad%shift_it:22 %bring:-19 %bring%busy:-35 %bring%call_off:-90 %bring%do_it:46 %bring%elsewhere:42
%bring%how_long:54 %bring%leave_me:-45 %bring%lift:14 %bring%meaning:15 %bring%place:-15 %bring%question:-31
%bring%refuse:-99 %bring%season:15 %bring%shift_it:108 %busy:133 %busy%do_it:34 %busy%fails:56 %busy%how_long:23
%busy%lift:-19 %busy%odometer:20 %busy%phone:19 %busy%refuse:36 %call_off:-57 %call_off%do_it:-17 %call_off%doubt:21
%call_off%fails:-23 %call_off%family:14 %call_off%gone_car:-21 %call_off%lift:-15 %call_off%on_way:-26
%call_off%phone:-32 %call_off%place:59 %call_off%question:55 %call_off%wrong_one:-26 %car:-43 %car%do_it:20
%car%how_long:16 %car%question:-32 %car%shift_it:-50 %car_part:-73 %car_part%do_it:-69 %car_part%how_long:-17
%car_part%money:-17 %car_part%question:-16 %car_part%shift_it:-26 %do_it:14 %do_it%elsewhere:-25 %do_it%family:14
%do_it%gone_car:-46 %do_it%on_way:15 %do_it%phone:20 %do_it%question:-25 %do_it%refuse:-21 %do_it%wrong_one:14
%doubt:-45 %doubt%elsewhere:-74 %doubt%message:-29 %doubt%on_way:-14 %doubt%phone:16 %doubt%question:18
%doubt%shift_it:-32 %doubt%start_again:-16 %doubt%wrong_one:-59 %elsewhere:59 %elsewhere%family:16
%elsewhere%gone_car:-16 %elsewhere%how_long:80 %elsewhere%leave_me:-17 %elsewhere%meaning:22 %elsewhere%message:-30
%elsewhere%money:-17 %elsewhere%phone:29 %elsewhere%refuse:22 %elsewhere%shift_it:-21 %elsewhere%start_again:-17
%elsewhere%wrong_one:-33 %fails:-21 %fails%shift_it:24 %family:50 %family%gone_car:29 %family%how_long:50
%family%odometer:19 %family%refuse:26 %family%wrong_one:32 %gone_car:34 %gone_car%how_long:45 %gone_car%question:50
%how_long:89 %how_long%lift:-44 %how_long%meaning:26 %how_long%opening:-38 %how_long%phone:33 %how_long%question:-32
%how_long%refuse:76 %how_long%season:17 %how_long%shift_it:142 %how_long%staff:20 %how_long%thanks:-15
%how_long%wrong_one:102 %leave_me:-75 %lift:-33 %meaning:38 %meaning%shift_it:14 %message:-74 %message%refuse:-15
%message%shift_it:-37 %message%start_again:-19 %message%wrong_one:-30 %noise:29 %noise%shift_it:31 %odometer:94
%odometer%on_way:26 %odometer%place:22 %odometer%question:16 %odometer%refuse:36 %odometer%shift_it:46 %on_way:-191
%on_way%place:-19 %on_way%shift_it:94 %opening:-38 %pay_day%season:16 %phone:-18 %phone%refuse:33 %place:22
%place%refuse:30 %question:61 %question%season:52 %question%shift_it:48 %question%start_again:-32 %question%who:-20
%refuse:135 %refuse%shift_it:44 %refuse%start_again:25 %refuse%thanks:-53 %refuse%who:17 %refuse%wrong_one:22
%season:71 %season%shift_it:30 %shift_it:463 %shift_it%smoke_smell:30 %shift_it%start_again:97 %shift_it%thanks:-15
%shift_it%wrong_one:58 %smoke_smell:32 %thanks:-65 %who:-24 %wrong_one:40 @?:185 @after_visit:-32 @car:-15
@confirm:447 @confirm_stop:-24 @confirm_thumbsup:-27 @day:-87 @later:95 @nothing:376 @odometer:-21 @offers:-324
@reading:-33 @time:-150 @times:179 @walk_in:-33 ^_$:-127 ^_a:-56 ^_all:-25 ^_antes:-26 ^_any:37 ^_asi:-15 ^_ayuda:-18
^_be:-34 ^_buenas:14 ^_can:72 ^_cancel:-35 ^_cancele:-21 ^_como:-20 ^_could:61 ^_cuanto:-17 ^_despues:-30 ^_did:-21
^_do:-59 ^_dont:-27 ^_el:-119 ^_en:69 ^_end:-21 ^_ese:23 ^_esta:22 ^_eta:-50 ^_forget:-24 ^_friday:-31 ^_going:-26
^_got:-17 ^_hableme:-15 ^_have:16 ^_help:-16 ^_hmm:-27 ^_how:-40 ^_i:69 ^_id:36 ^_im:-24 ^_info:-25 ^_just:-17
^_later:-15 ^_lets:63 ^_llego:-21 ^_lo:-24 ^_make:36 ^_manana:15 ^_mande:-15 ^_me:-21 ^_mi:16 ^_move:37 ^_my:41
^_necesito:47 ^_need:111 ^_no:88 ^_nop:17 ^_nos:-14 ^_ok:-30 ^_olvide:-39 ^_on:-16 ^_para:-72 ^_podemos:36 ^_por:-26
^_puedo:59 ^_push:22 ^_quiero:41 ^_reschedule:37 ^_se:34 ^_see:-58 ^_si:-57 ^_something:63 ^_still:-32 ^_stop:-19
^_tengo:51 ^_thanks:-28 ^_this:-19 ^_thumbsup:-30 ^_thursday:23 ^_tienen:-23 ^_tomorrows:22 ^_un:-15 ^_voy:-24
^_we:-24 ^_were:-31 ^_what:-35 ^_who:-19 ^_will:-17 ^_would:21 ^_wouldnt:-23 ^_y:-112 ^_ya:-46 ^_ye:-24 ^_yep:-47
^_yes:-87 ^_you:-34 a:177 a__a:17 a__hora:-28 a__hour:-15 a__i:16 a__manana:-14 a__no:29 a__si:35 a__tarde:30
a__time:36 a__to:-24 a__y:15 a_different:25 a_esa:21 a_ir:-22 a_la:32 a_las:58 a_medio:-14 a_new:43 a_que:-39
a_week:39 able:-22 able__make:-16 able_to:-22 about:75 about_$:14 about_it:17 aceite:-22 actually:-18 after_$:19
after_work:-15 afternoon:30 again:-16 ahi:-31 al:231 al__y:42 al_lunes:49 al_rato:15 alcanzo_a:-21 all:-33
all__for:-24 all__it:17 all_good:-17 all_set:-21 alla:-15 am:23 an:16 an__change:-31 an_hour:29 an_oil:-31 and:54
and_how:19 another:18 another_day:36 antes:-56 antes__las:-18 antes_de:-23 antes_del:-31 any:102 any__next:-18
any__of:26 any_chance:38 any_day:-29 anymore:17 anything_$:-46 appointment:42 appointment_$:-29 are:-17 around:-16
asi:-19 asistir:-20 at:62 at_$:-33 at_the:14 at_work:27 away:-26 away_$:-25 ayuda:-19 back_an:35 bad:24 be_$:25
be__at:-18 be__by:-21 be_there:-62 beat:14 before:-30 borre:-29 borre_mi:-29 boss:15 bring:-139 bring__in:-15
bring_it:-51 bring_my:-16 buenas:14 bump:16 but:29 but_the:15 by:-40 by_$:-27 by_a:21 calendar:17 call:-39
call_me:-23 call_off:-18 called:22 cambia:28 cambiar:76 cambiar_la:54 cambiar_para:18 cambie:-44 cambie_por:-29
cambieme:39 cambieme_la:23 cambio__aceite:-15 cambios:-16 came:54 came_up:56 can:233 can__be:42 can__bring:-32
can__come:-20 can__do:74 can__make:20 can__stop:-17 can_do:-18 can_i:62 can_it:42 can_we:140 can_you:31 cancel:-108
cancel_$:-31 cancel_my:-22 cancel_thursday:-16 cancele:-25 cancele__favor:-14 cancele_por:-14 cant__it:-24
cant_make:37 cant_wait:-25 car:-23 chance:46 change:42 change__to:25 change_it:54 change_my:18 changes:-28
cierran:-14 cita:20 cita_$:39 cita__el:-36 cita__favor:20 cita__jueves:-37 cita_del:-43 cita_para:-36 cita_por:20
clock:14 come:53 come__friday:-60 come__instead:21 come_at:54 come_in:-15 como:-25 con_la:18 costo:15 could:71
could__be:18 could__come:19 could_i:21 could_it:18 could_we:25 cuando:20 day:143 day_$:45 day__week:-21 day_after:23
days:37 days_$:15 de:77 de__a:20 de__cuando:14 de__en:21 de__escuela:14 de__manana:16 de__por:15 de__que:26
de_aceite:-14 de_hoy:22 de_las:-29 de_mi:28 de_viaje:29 dejar:35 dejo:-19 del__el:43 del_jueves:26 deme:25 dentist:15
despues:-45 despues_$:-17 despues__las:-27 despues_de:-27 dia:215 dia_$:66 dia__la:17 dia__mi:23 dia_no:17 dias:50
dias_$:53 did:-28 did_you:-23 different:33 different_day:27 digame:17 dime:16 do__at:14 do__but:17 do__need:-57
do_i:-69 do_instead:-35 do_the:18 doesnt:59 doesnt__anymore:49 doesnt_work:48 domingo:22 domingo_$:26 dont:-39
dont__to:-14 dont_need:-25 dos:18 double:21 down:47 down_for:14 down_the:37 drop__off:15 earlier:74 early:16
early_for:16 el:105 el__a:-61 el__despues:-24 el__dia:36 el__el:29 el__que:30 el__se:-31 el__temprano:-26 el_costo:16
el_dia:18 el_domingo:18 el_lunes:26 el_miercoles:24 el_mismo:40 el_sabado:31 en:28 en__de:40 en__del:87 en_el:-17
en_la:-23 en_lugar:89 en_vez:45 end:-28 end_$:-21 entra:21 es:-18 es_$:-16 es__ya:14 es_que:14 es_tan:15 esa:16
escuela_$:14 ese:78 ese_dia:66 eso:-19 esta:17 estoy:-23 eta:-50 falta:-17 falta_$:-14 favor:89 favor_$:60 fecha:55
fell:17 final:16 find:22 fine:-26 fine_$:-25 for:-40 for_an:-22 for_me:15 for_thursday:-36 for_tomorrow:-20
forget:-33 forgot:80 friday:49 friday_$:-21 friday__the:19 friday_and:23 from:-15 funeral:21 get_it:-14 go:-14
going:-66 going__be:-18 going__have:-24 going__make:-19 going_to:-65 good:-42 good_$:-23 good_for:-37 got:52 got_$:25
got_anything:23 got_it:-29 gracias:-20 habra:16 half:-22 has_to:19 have:59 have__cancel:-18 have_a:49 have_to:-24
have_you:27 hay:22 help:-15 help_$:-16 here_$:-19 hija:14 hizo:-35 hmm:-27 hora:52 hora_$:23 hora_cierran:-14
horas:-21 hour:28 house:14 how:61 how_about:89 how_long:-16 hoy:65 hoy__la:-16 hoy_en:-16 hoy_por:20 i:62 i__a:72
i__all:14 i__at:54 i__by:-15 i__for:19 i__friday:36 i__i:24 i__in:-81 i__it:-15 i__like:18 i__to:-68 i_bring:-38
i_can:-15 i_cant:-22 i_do:23 i_forgot:54 i_have:78 i_need:-84 i_stop:-17 i_wont:-24 i_would:21 id:34 id__to:16
id_rather:21 if:56 if_possible:16 ill:-24 im:-17 im_good:-15 im_off:14 in:-47 in_$:-28 in__at:-14 in_friday:-79
in_the:36 info:-26 info_$:-26 instead:67 instead_$:16 instead_of:33 into:24 ir:-49 ir_$:-73 is:61 is__a:15
is__going:-16 is__now:26 is__oil:-15 is_an:-15 is_it:-21 is_out:41 is_the:-24 is_there:24 is_this:-18 is_too:16
isnt:19 it:127 it_$:-127 it__an:48 it__how:54 it__in:15 it__my:15 it__next:15 it__the:26 it_anymore:-27 it_be:84
it_can:17 it_down:18 it_in:-32 it_is:25 it_to:50 it_up:29 joven:14 jueves:48 jueves_$:-19 jueves__las:-27
jueves__viernes:34 jueves_a:-27 jueves_y:14 junio:25 junio_$:25 just:-24 la:166 la__al:14 la__antes:-21 la__de:-17
la__del:-29 la__el:-28 la__para:29 la__pasar:28 la__por:27 la__que:18 la__y:26 la_cita:49 la_hora:44 la_otra:-21
la_puede:22 la_semana:17 la_tarde:20 labor:-21 labor_day:-15 lado:-16 las:32 las_$:27 las_a:24 las_no:28 las_y:14
late:-34 late_$:-20 later:19 later_$:-17 le:-33 le_van:-18 left:-16 left_$:-15 les:-17 let:14 lets:74 lets__it:42
lets_do:19 like:38 like_$:21 like_to:23 llegar:17 llegar_a:22 llego_en:-19 llevar:-15 lo:-71 lo__le:-19 lo__por:-25
lo_cambie:-25 lo_que:-19 long:-23 los:-22 lugar:90 lugar_de:38 lunch:-17 lunes:83 lunes_$:66 make:103 make_it:28
malo:32 manana:47 manana_se:16 manana_si:16 manana_temprano:-19 mande:-15 martes_$:15 martes__el:25 mas:216 mas_$:-20
mas_tarde:178 me:149 me_$:-20 me__am:18 me__cambiar:28 me__de:20 me__el:-26 me__puede:22 me__tarde:-33 me__the:28
me__y:19 me_down:31 me_hizo:-34 me_la:42 me_off:-17 me_on:18 me_to:83 me_toca:19 me_urge:18 medio:-15 medio_dia:-15
mejor:16 mejor_no:-32 mensajes:-15 mes:15 mes__entra:14 mes_que:14 metal:25 mi:88 mi__del:-29 mi__para:23 mi__se:14
mi_hija:14 miercoles:29 min:-123 min_$:-42 min_tarde:-37 mine:52 mins:-72 minutos:-32 mismo:61 mismo_dia:64 miss:-38
miss_it:-37 mon:41 monday:65 monday_$:16 more:15 morning:47 morning_$:38 move:69 move__to:40 move_it:31 move_me:32
mover:33 moverla:39 my:80 my__to:21 my__will:-14 my_appointment:31 myself:14 necesito:44 necesito__me:14 need:19
need__appointment:-22 need__bring:-55 need__cancel:-27 need__different:20 need__reschedule:19 need_the:-16 need_to:15
new:56 next:42 next__please:14 next_thursday:17 next_week:18 nine:16 no:103 no_$:157 no__asistir:-20 no__but:15
no__el:68 no__ir:-65 no__la:-14 no__manana:23 no__para:14 no__si:19 no_es:-17 no_good:20 no_hay:-20 no_it:20
no_llego:31 no_me:-32 no_se:16 no_traigo:16 no_worries:-23 noon:18 nop:17 nop_$:17 nos:-20 nos_vemos:-23 not:15
not_$:28 not__to:-29 not_at:16 not_going:-20 nothing:-15 now:39 now__it:16 of:62 of_$:23 of_my:34 off:-15
off__schedule:-16 off_the:-17 oil:-27 oil_change:-32 ok:-15 olvide:-39 on:-45 on_$:-39 on__th:43 on__way:-15
on_it:-15 on_my:-14 on_the:46 or:-23 orden:-14 other:84 other_day:41 otra:-40 otra_vez:-71 otro_$:-28 otro_dia:47
out_$:-39 para:121 para__de:25 para__lunes:14 para_cuando:14 para_despues:23 para_el:88 para_la:-17 para_que:-16
pasado:22 pasar_al:24 pasela:77 paso:-17 pedal:16 pedal_$:14 pero:30 pero__la:20 pero_no:17 pie:-16 please:76
please_$:81 pm:24 pm_$:20 podemos:70 podria:61 podria_ser:54 por__el:-14 por_el:-23 por_favor:76 por_la:-23
possible:32 puede:42 puede_$:-48 puede__el:-22 puede_ser:23 pueden__de:20 puedo:60 puedo__a:25 puedo__el:36
puedo__las:15 puedo_llegar:27 puedo_manana:21 push:74 push__back:35 push_it:61 put:28 put__down:14 put__on:19
put_me:33 que:44 que__cierran:-14 que__el:16 que__la:31 que__lo:-15 que__van:-18 que_cambiar:25 que_entra:21
que_era:-24 que_es:-21 que_hora:-40 que_le:-27 que_me:17 que_sea:47 que_ya:17 quiero:30 quiero__cita:-16
quiero__la:22 quisiera:21 rather:65 rather_than:34 rato:15 ready:-21 reschedule:73 reschedule_$:26
reschedule_please:28 ring:24 road:18 running:-17 sabado:51 sabado_$:19 salgo_de:26 salio:-19 same:64 same_day:-16
same_time:67 saturday:39 saturday_$:25 save:15 schedule:-23 school:14 se:36 se__cuando:14 se__hizo:-34 sea:47
see:-118 see__then:-31 see_you:-114 semana:39 semana_$:19 semana_que:22 ser:80 ser_el:-21 set:-24 set_$:-17 sharp:-16
sharp_$:-16 si:92 si_$:36 si__puede:17 si__tan:15 si_es:21 si_hay:22 si_se:17 sick:16 sir:-19 sir_$:-14 slot:31
smoke:15 so:36 so__is:-15 something:78 something__up:56 something_came:56 son:-14 sooner:36 sorry:-19 sorry_$:-21
st:15 st_$:16 still:-32 still_on:-24 stop:-43 stop_$:-18 stop_by:-18 strike:-14 su:-25 swap:29 switch:59
switch__to:22 switch_me:26 take:-26 take__off:-15 take_me:-19 tan:39 tanto:14 tarde:80 tarde_y:19 tempranito:33
tempranito_$:23 temprano:-42 temprano_$:-47 tengo:42 tengo_que:27 th:51 th__the:18 than:58 thanks:-32 thanks_$:-14
thanks_for:-14 that:61 that_day:33 that_is:-17 the:163 the__after:57 the__by:14 the__if:14 the__is:25 the__of:19
the_afternoon:18 the_appointment:-43 the_calendar:18 the_day:30 the_morning:15 the_oil:14 the_road:19 the_same:22
the_schedule:-16 the_st:16 the_th:54 the_thing:14 then_$:-35 there:-33 there_$:-15 there_at:-18 there_by:-23 this:-32
this_is:-15 through:14 thumbsup:-30 thumbsup_$:-30 thurs:40 thurs_$:-18 thursday:17 thursday_$:-57 thursday__work:51
thursday_after:-24 thursday_at:-38 thursday_is:23 tienen_$:19 til:15 time:128 time_$:129 tmrw:-20 tmrw_$:-17 to:238
to_$:17 to__at:17 to__in:48 to__my:14 to__off:-17 to__on:-25 to__the:17 to__this:17 to_be:-21 to_bring:-59
to_call:-17 to_cancel:-55 to_change:53 to_come:56 to_do:15 to_friday:42 to_have:-24 to_make:-39 to_monday:39
to_move:21 to_next:31 to_reschedule:22 to_the:52 to_work:-22 toca:29 todavia_no:14 tomorrow:18 tomorrow_$:-68
tomorrows:20 too__for:16 too_early:16 trabajo:23 trade:49 tuesday:41 tuesday_$:50 turno:16 turns:21 un_dia:19 una:-18
una_cita:-18 up:64 up_at:29 urge:17 van_a:-21 vemos:-19 ver:14 vez:-30 vez_$:-22 viaje:29 viernes:34 viernes_$:58
viernes__la:-18 viernes__las:-24 viernes_a:-28 voy:-51 wait:-37 wait_$:-27 was__again:-15 was_it:-15 way:38 way_to:48
we:146 we__instead:-30 we__it:86 we_do:59 we_make:38 wednesday:18 wednesday_$:20 week:63 week_$:45 week_please:14
were:-40 what__it:15 what_time:-17 who:-21 who__this:-16 who_is:-16 will:-26 will__it:-15 with_my:14 wont__it:-30
wont_be:-19 wont_work:50 work:97 work_$:-49 worries:-23 would:102 would_be:19 would_it:15 would_like:18 wouldnt:-23
y_$:-94 y__cuanto:23 y__el:24 y__me:21 y_me:19 ya:-41 ya__le:14 ya_no:-16 ye:-24 yep:-47 yep_$:-24 yep__you:-15
yes:-90 yes_$:-26 yes_sir:-19 yo:29 yo__el:26 you:-115 you_$:-28 you__it:19 you__me:19 you_at:-14 you_got:19
you_then:-33 you_tomorrow:-29 your:-15
"""
