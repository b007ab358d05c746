"""What speaks for and against `cancel`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "cancel"
BIAS = -325
WEIGHTS = """\
#abaj:52 #able:56 #abou:-65 #acio:58 #agai:34 #agen:39 #ahor:-47 #aiti:25 #alar:-34 #alca:39 #aled:26 #alen:26
#algo:30 #alio:36 #alla:-53 #alli:41 #also:-26 #ambi:-37 #anan:88 #ance:196 #ando:42 #anoc:33 #anul:182 #anym:74
#anzo:30 #appe:63 #appo:56 #apun:56 #arde:-32 #aron:34 #arra:-29 #asad:-50 #asis:135 #asta:-34 #atch:51 #ater:44
#atev:25 #atio:29 #atra:-41 #atte:31 #avis:35 #aybe:26 #ayer:27 #baby:26 #back:-56 #bail:59 #baja:30 #bajo:29
#befo:-40 #biar:-67 #blem:-31 #body:51 #book:83 #borr:97 #bout:-65 #brin:-30 #bsup:-26 #busc:25 #cale:27 #camb:-42
#canc:223 #cant:61 #canz:36 #cayo:25 #cela:32 #cele:164 #celo:34 #cide:32 #cita:120 #come:95 #comi:159 #como:-26
#conf:-30 #conm:40 #corr:-53 #coul:-34 #coun:28 #covi:43 #crat:57 #crib:31 #cuan:28 #cuen:25 #culp:54 #cupe:-29
#days:60 #deje:76 #depo:27 #desa:43 #desp:33 #ding:42 #disc:54 #dnes:27 #does:-29 #draw:59 #drop:-51 #ease:118
#ecto:32 #edne:27 #efec:48 #efor:-40 #egar:48 #ejel:25 #ejem:29 #ejor:49 #elam:37 #elar:-51 #elea:25 #elel:41
#elen:34 #elle:-27 #else:51 #elvo:25 #emer:25 #emos:46 #empr:47 #enci:32 #enda:88 #enfe:26 #engo:-28 #enin:45
#enla:28 #enme:76 #ensa:-25 #eocu:-32 #epos:27 #eran:36 #eren:64 #erge:25 #ermo:29 #erne:-27 #eron:28 #erva:99
#escr:35 #eser:108 #espa:33 #espe:97 #espu:41 #esti:26 #esto:-26 #ever:53 #eves:36 #expe:33 #exti:-33 #exts:-38
#falt:-38 #fect:44 #fell:33 #ferm:26 #firm:-52 #fixe:28 #fore:-40 #forg:87 #free:33 #from:53 #gain:34 #gamo:-41
#genc:36 #gend:40 #give:42 #goin:61 #good:-39 #guar:26 #guna:-31 #happ:43 #have:83 #hdra:60 #hese:-34 #hing:52
#hold:35 #home:62 #hora:32 #hori:-38 #hosp:38 #humb:-26 #iber:47 #ible:88 #iemp:62 #iero:44 #impo:75 #info:-28
#ingu:-42 #intm:58 #irme:-26 #iscu:55 #isit:33 #ista:49 #isti:135 #isto:26 #ital:35 #itel:28 #iten:81 #ithd:60
#ixed:27 #jemo:31 #juev:39 #just:27 #kids:31 #kill:40 #king:88 #lado:45 #lame:44 #larm:-32 #last:39 #late:-82
#lcan:39 #leas:121 #lega:32 #lego:42 #lela:97 #lets:31 #ling:50 #lleg:56 #llin:46 #lock:29 #lune:-50 #lvid:62
#mana:61 #mayb:26 #mbia:-78 #mbio:25 #mbre:27 #mbsu:-26 #mejo:49 #ment:72 #merg:25 #mero:-28 #migo:44 #mind:32
#ming:155 #mino:-28 #mins:-33 #miss:-61 #more:61 #morr:101 #move:-74 #mpos:80 #mpre:45 #nada:-39 #name:30 #nana:88
#ncel:221 #ncia:26 #ndan:28 #nday:39 #need:66 #nesd:27 #nfer:26 #ngam:-55 #nged:51 #ngun:-42 #nigh:26 #ning:-25
#nmig:44 #nnin:-29 #nobo:26 #nomb:28 #noon:-27 #nste:-26 #ntme:58 #nule:149 #nymo:74 #oble:-33 #obod:26 #oclo:26
#ocup:-30 #oday:142 #oder:111 #odre:124 #oing:54 #oint:55 #okin:67 #oles:26 #olvi:60 #ombr:28 #omin:160 #omor:101
#onda:25 #onga:-48 #onmi:40 #ooki:69 #orge:91 #orit:-38 #orre:56 #orri:-48 #orro:105 #orry:100 #osib:89 #osit:26
#ospi:38 #ospo:-47 #otra:30 #otro:49 #ould:-55 #ount:26 #ourt:26 #over:-38 #ovid:43 #paci:36 #paso:-27 #pect:29
#peni:40 #pere:84 #pita:38 #plea:98 #pode:127 #podr:121 #poin:56 #pong:-49 #posi:116 #posp:-47 #ppen:47 #ppoi:56
#preo:-32 #prob:-37 #pued:-26 #pues:30 #pull:61 #punt:50 #push:-25 #puso:28 #qued:32 #quit:168 #raba:48 #raig:-27
#ranc:-32 #rand:36 #rasa:-44 #ratc:57 #remo:50 #renm:29 #reoc:-32 #rese:113 #rgen:36 #rget:91 #ribo:26 #ries:-48
#rike:26 #ring:-48 #rita:-38 #rnes:-27 #robl:-37 #rong:-38 #rows:29 #rran:-27 #rren:57 #rrie:-48 #rrow:101 #rsda:59
#sado:-47 #sali:29 #same:-42 #scra:80 #scul:55 #sday:78 #serv:110 #show:45 #sibl:86 #sick:31 #siem:51 #sist:150
#skip:25 #slot:46 #sold:40 #some:60 #sorr:91 #spac:36 #sper:99 #spit:38 #spon:-49 #spot:57 #spue:41 #star:-78
#stea:-25 #sted:-25 #ster:39 #stil:-46 #stir:135 #stop:-124 #stri:26 #tach:26 #take:80 #tale:26 #tame:35 #tard:-77
#tart:-29 #tead:-25 #tend:41 #tenm:30 #terd:32 #teve:25 #text:-80 #than:-26 #that:62 #thdr:60 #then:-50 #thes:-37
#thin:31 #thro:28 #thum:-26 #till:-60 #tion:28 #tire:65 #tmen:57 #toda:138 #todo:35 #tomo:100 #trab:54 #trai:-37
#tras:-64 #trik:26 #tten:32 #turn:37 #uand:49 #uard:26 #uede:-38 #uedo:44 #ueve:30 #uite:184 #ulel:53 #ulen:63
#ulpe:56 #umbs:-26 #undo:63 #unes:-50 #unte:36 #urno:34 #ursd:59 #urse:-25 #vamo:30 #vemo:-57 #vera:30 #vide:55
#visi:32 #wate:25 #wedn:27 #with:58 #wont:62 #work:-69 #worr:-39 #wron:-38 #xpec:34 #xtin:-29 #yest:32 #ying:43
#ymor:74 %again_later:79 %again_later%away:98 %again_later%bring:26 %again_later%elsewhere:43 %again_later%fails:29
%again_later%leave_me:28 %again_later%money:26 %again_later%odometer:61 %again_later%pay_day:49
%again_later%question:49 %again_later%refuse:54 %again_later%season:37 %again_later%shift_it:85
%again_later%start_again:-27 %again_later%wrong_one:92 %agree:-156 %agree%away:25 %agree%bring:-25 %agree%busy:37
%agree%car:36 %agree%elsewhere:26 %agree%family:48 %agree%gone_car:26 %agree%leave_me:-34 %agree%on_way:-90
%agree%phone:78 %agree%refuse:-89 %agree%staff:26 %away:185 %away%bring:73 %away%busy:-35 %away%call_off:122
%away%fails:31 %away%family:99 %away%money:37 %away%on_way:-62 %away%place:25 %away%question:31 %away%refuse:39
%away%start_again:53 %away%wrong_one:-58 %bad:117 %bad%bring:26 %bad%call_off:107 %bad%money:37 %bad%on_way:35
%bad%question:56 %bad%refuse:42 %bring:181 %bring%busy:52 %bring%elsewhere:50 %bring%fails:57 %bring%family:37
%bring%gone_car:76 %bring%leak:52 %bring%money:48 %bring%odometer:109 %bring%on_way:-27 %bring%phone:50
%bring%place:25 %bring%question:-53 %bring%refuse:25 %bring%shift_it:-95 %bring%staff:67 %bring%thanks:38 %busy:95
%busy%call_off:83 %busy%fails:-30 %busy%place:26 %busy%shift_it:30 %call_off:334 %call_off%car_part:40
%call_off%do_it:44 %call_off%doubt:31 %call_off%elsewhere:39 %call_off%fails:86 %call_off%family:81
%call_off%gone_car:115 %call_off%how_long:36 %call_off%meaning:32 %call_off%message:-94 %call_off%money:127
%call_off%noise:-39 %call_off%on_way:-80 %call_off%opening:48 %call_off%pay_day:40 %call_off%phone:43
%call_off%place:50 %call_off%question:97 %call_off%refuse:-25 %call_off%season:65 %call_off%shift_it:60
%call_off%thanks:52 %call_off%who:76 %call_off%wrong_one:-68 %car%gone_car:54 %car%odometer:-26 %car%on_way:32
%car%wrong_one:28 %car_part%do_it:64 %car_part%elsewhere:41 %car_part%leave_me:28 %do_it:55 %do_it%elsewhere:36
%do_it%family:46 %do_it%how_long:33 %do_it%leave_me:29 %do_it%odometer:26 %do_it%on_way:54 %do_it%question:56
%do_it%start_again:-30 %do_it%wrong_one:32 %doubt:40 %elsewhere:128 %elsewhere%leave_me:27 %elsewhere%odometer:34
%elsewhere%on_way:53 %elsewhere%refuse:25 %elsewhere%shift_it:65 %elsewhere%staff:56 %elsewhere%wrong_one:55
%fails:38 %fails%gone_car:41 %fails%on_way:118 %fails%phone:-27 %fails%question:-29 %fails%refuse:29 %fails%staff:35
%fails%wrong_one:28 %family:130 %family%on_way:51 %family%refuse:100 %family%wrong_one:25 %gone_car:146
%gone_car%question:26 %gone_car%refuse:58 %gone_car%staff:29 %gone_car%wrong_one:50 %how_long%refuse:49
%how_long%wrong_one:28 %leak:39 %leak%staff:31 %leave_me%odometer:54 %leave_me%question:46 %leave_me%refuse:-37
%leave_me%shift_it:27 %leave_me%staff:29 %leave_me%start_again:-27 %lift%refuse:35 %lift%wrong_one:35 %message:-70
%message%on_way:28 %message%refuse:-34 %money:94 %money%on_way:43 %money%question:37 %money%refuse:40 %noise:-59
%noise%refuse:-28 %odometer:106 %odometer%refuse:-40 %odometer%shift_it:31 %odometer%who:26 %on_way:-174
%on_way%pay_day:29 %on_way%phone:45 %on_way%place:55 %on_way%question:31 %on_way%refuse:357 %on_way%season:51
%on_way%shift_it:67 %on_way%staff:33 %on_way%start_again:31 %on_way%thanks:34 %on_way%wrong_one:-28 %opening:47
%pay_day:78 %pay_day%refuse:42 %pay_day%season:38 %phone%refuse:-29 %phone%staff:-43 %phone%who:59 %place%refuse:117
%question:-50 %question%shift_it:41 %question%staff:27 %question%start_again:-26 %refuse:118 %refuse%season:51
%refuse%shift_it:-84 %refuse%smoke_smell:30 %refuse%start_again:-25 %refuse%wrong_one:-67 %season:88
%season%shift_it:40 %shift_it:-197 %shift_it%staff:25 %shift_it%start_again:-34 %staff:76 %staff%wrong_one:49
%start_again:-71 %thanks:-30 %who:81 %wrong_one:27 @?:-229 @after_visit:-51 @confirm:441 @confirm_:-79
@confirm_stop:-63 @day:-98 @later:128 @nothing:361 @nothing_info:-26 @odometer:-55 @offers:-85 @reading:-31 @time:-98
@walk_in:-47 ^_$:-93 ^_a:-33 ^_ahi:-50 ^_all:-25 ^_borre:37 ^_borren:25 ^_can:-150 ^_cancel:-157 ^_cancelar:-99
^_cancele:78 ^_changed:41 ^_could:-29 ^_count:31 ^_do:-35 ^_drop:25 ^_el:-42 ^_en:-25 ^_forget:46 ^_give:29 ^_how:-32
^_ill:-30 ^_imposible:25 ^_info:-27 ^_is:-33 ^_it:-37 ^_la:-34 ^_make:-32 ^_min:-39 ^_necesito:-31 ^_need:-90
^_no:-143 ^_nop:-39 ^_olvide:34 ^_on:-29 ^_opt:-47 ^_please:53 ^_puedo:-65 ^_pull:28 ^_quit:-27 ^_quite:53
^_quiten:38 ^_quitenme:30 ^_scratch:34 ^_see:-46 ^_si:-48 ^_siempre:41 ^_still:-36 ^_stop:-46 ^_thumbsup:-26
^_thursday:-38 ^_voy:-68 ^_what:-57 ^_wont:40 ^_y:-80 ^_yep:-27 ^_yes:-47 ^_yo:-28 a:83 a__cita:27 a__ir:25 a_ir:71
a_las:-51 a_no:30 a_otro:45 a_poder:111 able:62 able_to:62 about:-65 after:31 after_$:-28 after_all:58 agenda:50
ahi:-93 ahi__vemos:-39 ahi_nos:-39 ahi_voy:-28 ahorita:-35 alcanzo:30 alcanzo_a:37 algo:36 all:32 all_$:31
all_set:-45 alla:-44 also:-26 am:25 an_appointment:-35 and:106 and_i:25 and_im:36 anoche:33 anule:30 anulela:56
anulen:51 any:-32 anymore:74 anymore_$:68 appointment:58 appointment_$:27 asi:47 asi_que:31 asistir:68 asistir_$:60
at:-49 at_$:-40 at_all:28 atrasado:-25 back:-59 back_out:49 bail:55 be:80 be__to:43 be_able:44 be_coming:47
be_late:-27 before:-40 booking:73 booking_$:42 borre:39 borre_mi:39 borren:27 borrenme:30 bring:-29 but:-30 c:-61
call:-47 call__my:29 call__off:33 call_it:25 call_me:-114 call_off:76 calling:36 cambiar:-62 cambiar__cita:-49
cambiar_mi:-34 cambie:27 camino:-28 can:-63 can__come:-30 can__drop:-35 can__make:-26 can__my:27 can_i:-83 can_my:-27
can_we:-27 cancel_$:-89 cancel__appointment:-41 cancel__you:27 cancel_it:68 cancel_please:-45 cancelar:-54
cancelar_$:-88 cancele:112 cancele__favor:29 cancele_por:35 cancelela:41 cancelled:-26 cancelo:34 cant:62 cant__it:83
cant_come:87 cant_do:33 cant_make:33 cant_wait:-45 car_$:28 cayo:25 change:-48 change__appointment:-46 change_my:-48
changed:51 changed__mind:41 changed_my:47 cita:123 cita_$:49 cita__jueves:41 cita_del:50 cita_y:32 come:107 come_$:40
come_in:44 coming:159 coming_$:101 coming_in:25 como:-25 con:47 conmigo:40 could:-30 count:38 count__out:42
count_me:42 covid:43 cuando:49 day:-50 de:181 de__agenda:50 de__lista:25 de__no:28 de_hoy:36 de_la:62 de_manana:70
de_que:-28 del:191 del_jueves:61 despues:34 did:30 did_it:34 disculpe:46 disculpe_$:25 do:-39 dont__my:-93
dont__the:30 dont__to:53 dont_need:105 drop:-39 drop__off:-39 drop_it:-53 drop_my:33 el:45 el__no:33 el__y:26
el_lunes:-43 el_viernes:-41 else:43 else_$:32 en_camino:-25 end:-31 enfermo:30 es:-79 escribo:26 eso:-35 espacio:38
esperen:76 esperen_$:69 este:-35 expect:34 expect_me:34 falta_$:-27 fell:39 fixed:28 for:167 for__th:26 for_now:31
for_the:48 for_today:35 forget:91 forget_about:36 free:31 free__my:33 from:53 gastar:-28 give:37 give_me:-26
give_my:28 go:26 going:61 going__have:43 going__make:45 going_to:41 good:-37 got:54 got__cancel:29 got_it:-36
got_to:70 happening:41 have:89 have__back:37 have__bail:48 have_a:-26 have_to:115 hay:-31 hice_$:25 home:62
hospital:38 how:-79 how_about:-32 hoy:65 i:87 i__a:-32 i__an:-25 i__at:-25 i__be:87 i__come:28 i__make:29 i__that:27
i_cant:61 i_come:-42 i_drop:-48 i_was:35 i_wont:36 id:27 id__to:28 ill:-109 ill__there:-99 ill_be:-88 im:60
im__coming:47 im_not:62 im_out:27 imposible:80 in:126 info:-33 info_$:-32 instead:-25 ir:327 ir_$:160 ir_manana:29
ire:75 ire_$:65 is:-68 is__going:-25 is_out:-25 it:141 it_anymore:77 it_in:31 it_so:30 it_to:-34 it_today:26
it_you:25 jueves:39 jueves_$:79 just:25 just__it:51 kids:31 kill:36 la:116 la__a:31 la__del:42 la__que:53
la_agenda:50 la_cita:94 la_lista:27 la_voy:32 las_$:-25 last:39 last_night:46 late:-74 late_$:-42 le:64 le__la:26
les:30 let:44 lets:31 like_to:29 llegar:54 llegar_$:50 llego:42 lo:109 lo__a:-29 lo__hoy:31 lo__manana:37 lo_de:70
lo_del:43 lo_mio:28 lo_voy:-26 los:-36 lunes:-50 lunes_$:-36 make__today:26 make_it:75 manana:88 manana_$:55 mas:-57
mas_$:-27 maybe:26 me:161 me_$:-94 me__el:75 me__the:55 me_about:-31 me_back:-52 me_es:46 me_esperen:76 me_from:31
me_la:-32 me_off:53 me_out:60 me_salio:27 me_to:-31 mejor:49 mejor_no:31 mes:29 mi:154 mi__a:25 mi__del:34 mi__y:26
mi_cita:87 mi_nombre:31 min:-100 min_$:-41 mind:48 mins:-33 miss:-57 miss_it:-66 move:-59 mover:-28 much:-25 my:213
my__dont:42 my__for:49 my_appointment:-58 my_booking:45 my_mind:41 my_name:34 my_slot:31 my_spot:29 my_time:48
nada:-37 name:33 need__cancel:48 need__change:-30 need_for:25 need_it:35 need_the:27 need_to:-69 night:28 ninguna:-31
no_$:-245 no__a:179 no__asistir:68 no__cancele:-37 no__conmigo:45 no__el:-31 no__esperen:76 no__ir:181 no__llegar:41
no__preocupe:-29 no__si:-49 no__va:32 no_alcanzo:31 no_es:-39 no_hay:-26 no_ire:75 no_llego:81 no_lo:-25 no_podre:124
no_puedo:107 no_quiero:33 no_show:33 no_soy:-32 no_tengo:-34 no_va:32 no_vamos:36 no_voy:312 no_worries:-48 nombre:28
nop:-39 nop_$:-39 nos:-81 nos_vemos:-69 not:98 not_$:-31 not__in:28 not__the:-26 not__to:46 not_be:34 not_coming:173
not_going:39 not_tomorrow:-33 now:-46 now_$:-31 oclock:26 off:97 off__appointment:28 off__schedule:47 off_the:65
olvide:34 on_$:-38 on__way:-29 on_it:-26 on_my:-32 on_the:-35 on_thursday:28 one_$:25 opt:-49 opt_out:-28 otra:30
otra_persona:28 otro:49 otro_dia:-30 out:78 out_for:53 out_of:33 paso:-27 pena:29 please:98 please_$:-40
please__me:38 please__my:66 please_cancel:48 please_dont:-72 please_take:39 poder:111 poder_$:26 podre:124
podre_asistir:41 podre_ir:58 por:33 preocupe:-29 puede:-32 puedo__el:-25 puedo_ir:41 pull:45 push:-31 que:112
que_me:35 quedo:26 quiero_ir:25 quite:75 quite__cita:36 quite_la:51 quiten:39 quiten__cita:43 quiten_mi:33
quitenme:31 salio:36 same:-35 same_time:-27 say:-38 say_no:-34 scrap:26 scratch:59 scratch_me:26 se_preocupe:-29
see:-104 see__tomorrow:-37 see_you:-58 set:-63 set_$:-45 show:26 si:-134 si_voy:-73 sick:31 siempre:51 siempre_no:47
sin:46 skip:25 slot:46 so:184 so__can:39 so__me:32 so_cancel:26 so_i:33 sold:41 sold__car:39 sold_the:44
somebody_else:26 son:-26 sorry:91 sorry_$:59 soy:-41 spot:57 start:-26 still:-46 stop:-111 stop_$:-35 stop__me:-41
stop_texting:-42 strike:26 take:60 take__off:53 take_me:33 tarde:-54 texting:-29 texting_me:-31 texts:-38 texts_$:-31
thanks_$:-29 that:62 that_appointment:28 the:199 the__for:50 the__i:41 the__off:-25 the__thing:41 the_appointment:111
the_calendar:26 the_schedule:44 the_whole:26 then:-50 then_$:-29 there_$:-27 these:-34 these_texts:-26 thing:41
thumbsup:-26 thumbsup_$:-26 thurs:-44 thursday:59 thursday_$:82 thursday__work:-34 til:-27 time_$:-39 to:156
to__else:34 to__in:29 to__my:-34 to__off:35 to__on:69 to__out:56 to__to:31 to_back:50 to_bail:55 to_call:34
to_cancel:81 to_change:-61 to_come:64 to_have:45 to_make:56 to_move:-47 to_somebody:33 to_the:-42 today:111
today_$:44 todays:32 todo:26 tomorrow:72 tomorrow_$:-31 tomorrow_and:41 tomorrow_please:27 tomorrows:29 totaled:26
trabajo:31 turno:34 undo:64 up:116 up_my:67 va:54 va_a:59 vamos:30 vemos:-57 vemos_$:-33 viernes:-27 voy:-25
voy_$:-60 voy__alla:-25 voy__camino:-25 voy__ir:25 voy__poder:72 voy_a:59 voy_en:-25 vuelvo:25 wait:-36 wait_$:-46
waiting:25 was:63 water:25 we:-32 we__it:-25 week:-36 week_$:-36 whatever:25 will__be:25 withdraw:39 wont:62
wont__able:27 wont__coming:37 wont__there:80 wont_be:164 wont_make:33 wont_work:-41 work:-80 worries:-48 wrong:-38
y:68 y_$:-79 y__me:31 ya:-81 ya_$:-47 ya__quiero:46 ya__tengo:-27 ya__voy:111 ya_me:29 ya_no:118 ya_voy:-106 yep:-28
yes:-62 yesterday:32 yo_no:-36 you__give:31 you_can:82 you_tomorrow:-36
"""
