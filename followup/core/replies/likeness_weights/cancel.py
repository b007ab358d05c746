"""What speaks for and against `cancel`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "cancel"
BIAS = -264
WEIGHTS = """\
#abaj:42 #able:54 #abou:-49 #acio:40 #afte:21 #agen:31 #ahor:-27 #aiti:18 #ajar:19 #alar:-22 #alca:27 #aled:20
#algo:18 #alio:22 #alla:-42 #alli:29 #alto:-19 #ambi:-32 #amin:-25 #anan:62 #ance:181 #ando:32 #anoc:22 #anto:-20
#anul:151 #anym:54 #anzo:23 #appe:33 #appo:46 #apun:32 #arre:21 #asad:-41 #asis:95 #asta:-27 #atch:42 #ater:32
#atio:22 #atra:-25 #atte:29 #avis:18 #aybe:25 #baby:22 #back:-34 #bail:38 #baja:23 #bajo:22 #bebe:20 #befo:-27
#biar:-37 #blem:-22 #body:42 #book:62 #borr:64 #bout:-49 #brin:-20 #bsup:-20 #busc:18 #camb:-31 #came:21 #cami:-18
#canc:206 #cant:56 #canz:27 #carg:22 #cayo:19 #cela:31 #cele:142 #celo:26 #cita:99 #come:68 #comi:116 #como:-21
#conf:-25 #conm:30 #corr:-33 #coul:-22 #coun:28 #covi:28 #crap:22 #crat:46 #crib:21 #cuen:20 #culp:37 #cupe:-23
#days:44 #deje:53 #desa:19 #desp:29 #ding:29 #disc:37 #does:-23 #draw:47 #drop:-26 #ease:74 #ebod:18 #ecto:18
#eeds:20 #efec:27 #efor:-27 #egar:37 #ejel:20 #ejem:23 #ejor:35 #elar:-38 #elel:24 #else:32 #elvo:22 #emos:40
#empr:28 #enca:19 #enci:22 #enda:60 #endi:20 #enfe:19 #engo:-24 #enin:27 #enla:26 #enme:29 #ensa:-20 #eocu:-26
#epen:18 #eran:32 #erda:24 #eren:42 #ermo:22 #erne:-20 #erva:67 #esch:-20 #escr:23 #eser:74 #espa:21 #espe:65
#espu:36 #esti:24 #ever:31 #eves:28 #exti:-23 #exts:-25 #falt:-21 #fect:24 #fell:19 #ferm:19 #firm:-34 #fixe:21
#fore:-28 #forg:45 #frid:-27 #from:41 #fter:21 #gamo:-31 #gast:-20 #genc:25 #gend:32 #give:19 #goin:35 #good:-30
#guna:-24 #hank:-23 #have:73 #hdra:48 #hese:-21 #hing:32 #hold:21 #hora:22 #hori:-23 #hosp:24 #howi:19 #humb:-20
#ible:59 #iday:-19 #iemp:38 #iern:-20 #iero:19 #impo:48 #info:-18 #ingu:-32 #inst:-23 #intm:48 #irme:-18 #iscu:38
#isit:24 #isti:94 #isto:25 #ital:23 #itel:25 #iten:47 #ithd:48 #itin:18 #ixed:21 #juev:31 #just:32 #kids:21 #kill:26
#king:54 #lado:35 #lame:38 #lamo:21 #larm:-20 #last:23 #late:-58 #lcan:27 #leas:76 #lego:21 #lela:72 #lema:-19
#lest:20 #lets:24 #ling:29 #llam:19 #lleg:27 #llin:29 #lune:-36 #lvid:46 #mana:47 #mayb:25 #mbia:-47 #mbre:19
#mbsu:-20 #mebo:18 #mejo:35 #mens:-19 #ment:63 #migo:29 #mind:32 #ming:112 #mino:-24 #mins:-19 #miss:-43 #mole:20
#more:44 #morr:74 #move:-43 #mpos:52 #mpre:22 #nada:-23 #name:19 #nana:62 #ncar:19 #ncel:207 #ndan:26 #nday:20
#need:52 #nfer:19 #nfir:-19 #ngam:-33 #nged:41 #ngun:-32 #ning:-30 #nmig:33 #nnin:-21 #nobo:19 #nomb:19 #nsaj:-19
#nste:-19 #ntam:19 #ntme:48 #ntra:-18 #nule:121 #nymo:54 #oble:-23 #obod:19 #ocup:-24 #oday:94 #oder:77 #odre:75
#oing:28 #oint:45 #okin:50 #oles:23 #olvi:45 #ombr:18 #omeb:18 #omin:114 #omor:74 #onfi:-19 #onga:-32 #onmi:30
#ooki:51 #orge:46 #orit:-24 #orre:37 #orri:-32 #orro:78 #orry:84 #osib:60 #ospi:24 #ospo:-32 #otal:18 #otro:36
#ould:-44 #ount:26 #ovid:28 #paci:24 #paso:-20 #peni:22 #pent:19 #perd:18 #pere:59 #pita:24 #plea:66 #pode:87
#podr:73 #poin:46 #pong:-32 #posi:76 #posp:-32 #ppen:21 #ppoi:46 #preo:-26 #prob:-27 #pued:-18 #pues:27 #pull:18
#punt:28 #push:-20 #qued:19 #quit:123 #raba:40 #raig:-19 #rasa:-33 #ratc:46 #remo:29 #reoc:-26 #repe:19 #resc:-20
#rese:79 #revo:19 #rgen:25 #rget:46 #ribo:23 #ries:-33 #rike:23 #ring:-29 #rita:-24 #rnes:-20 #robl:-27 #rong:-25
#rows:18 #rren:33 #rrep:20 #rrie:-32 #rrow:74 #rsda:47 #sado:-40 #saje:-18 #same:-26 #scra:68 #scul:38 #sday:53
#serv:78 #show:30 #sibl:58 #sick:28 #siem:32 #sist:109 #skip:23 #slot:30 #sold:29 #some:45 #sorr:75 #spac:24 #sper:67
#spit:24 #spon:-33 #spot:44 #spue:36 #star:-46 #stea:-20 #sted:-22 #ster:29 #stil:-31 #stir:95 #stop:-82 #stri:23
#tach:24 #take:52 #tale:20 #tame:31 #tard:-47 #tart:-21 #tead:-19 #tela:21 #tend:31 #terd:29 #text:-59 #than:-29
#that:32 #thdr:48 #then:-30 #thes:-23 #thin:28 #thum:-20 #till:-37 #time:-23 #tion:22 #tire:50 #tmen:47 #toda:93
#todo:19 #tomo:74 #tota:18 #trab:46 #trai:-26 #tras:-48 #trik:23 #tten:28 #turn:31 #uand:32 #uant:-21 #uede:-27
#uedo:28 #uelv:21 #uent:18 #ueve:20 #uite:130 #ulel:45 #ulen:47 #ulpe:39 #umbs:-20 #undo:24 #unes:-36 #unta:18
#urio:20 #urno:27 #ursd:47 #usco:21 #uste:-18 #vemo:-32 #vera:19 #vide:35 #visi:23 #were:-18 #with:38 #wont:57
#work:-45 #worr:-24 #woul:-21 #wron:-25 #xtin:-19 #yest:29 #ymor:54 %again_later:58 %again_later%away:59
%again_later%bring:24 %again_later%car:18 %again_later%elsewhere:26 %again_later%fails:18 %again_later%message:18
%again_later%money:21 %again_later%odometer:34 %again_later%pay_day:37 %again_later%question:34
%again_later%refuse:27 %again_later%season:35 %again_later%shift_it:58 %again_later%start_again:-21
%again_later%wrong_one:46 %agree:-138 %agree%away:24 %agree%car:26 %agree%car_part:20 %agree%elsewhere:18
%agree%leave_me:-22 %agree%on_way:-67 %agree%phone:47 %agree%refuse:-60 %agree%staff:22 %away:127 %away%bad:18
%away%bring:50 %away%busy:-31 %away%call_off:104 %away%fails:28 %away%family:70 %away%odometer:19 %away%on_way:-35
%away%question:31 %away%refuse:30 %away%start_again:36 %away%wrong_one:-54 %bad:90 %bad%bring:19 %bad%call_off:93
%bad%gone_car:20 %bad%money:21 %bad%on_way:28 %bad%question:39 %bad%refuse:39 %bring:161 %bring%busy:27
%bring%call_off:37 %bring%elsewhere:18 %bring%fails:57 %bring%family:41 %bring%gone_car:55 %bring%leak:43
%bring%money:25 %bring%odometer:93 %bring%on_way:-25 %bring%phone:44 %bring%question:-33 %bring%refuse:65
%bring%shift_it:-73 %bring%staff:37 %bring%wrong_one:29 %busy:63 %busy%call_off:50 %busy%fails:-27 %call_off:277
%call_off%car_part:32 %call_off%do_it:47 %call_off%elsewhere:33 %call_off%fails:63 %call_off%family:67
%call_off%gone_car:80 %call_off%lift:-18 %call_off%meaning:21 %call_off%message:-55 %call_off%money:85
%call_off%noise:-24 %call_off%on_way:-83 %call_off%opening:25 %call_off%pay_day:34 %call_off%phone:33
%call_off%place:31 %call_off%question:73 %call_off%refuse:-21 %call_off%season:45 %call_off%shift_it:29
%call_off%start_again:20 %call_off%thanks:22 %call_off%who:49 %call_off%wrong_one:-33 %car%gone_car:37
%car%odometer:-19 %car%on_way:19 %car%refuse:-20 %car%wrong_one:24 %car_part:-19 %car_part%do_it:36
%car_part%elsewhere:23 %car_part%gone_car:20 %do_it:22 %do_it%elsewhere:22 %do_it%family:34 %do_it%how_long:20
%do_it%on_way:43 %do_it%question:51 %do_it%shift_it:-29 %do_it%start_again:-23 %do_it%wrong_one:26 %elsewhere:91
%elsewhere%leave_me:19 %elsewhere%on_way:37 %elsewhere%refuse:21 %elsewhere%shift_it:37 %elsewhere%staff:35
%elsewhere%wrong_one:36 %fails:32 %fails%gone_car:35 %fails%on_way:78 %fails%refuse:60 %fails%start_again:-24
%family:82 %family%on_way:35 %family%refuse:60 %gone_car:98 %gone_car%refuse:46 %gone_car%staff:20
%gone_car%wrong_one:48 %how_long:-39 %how_long%odometer:19 %how_long%refuse:26 %leak:33 %leave_me%odometer:28
%leave_me%question:26 %leave_me%refuse:-18 %leave_me%shift_it:21 %leave_me%staff:27 %leave_me%start_again:-23
%message:-61 %message%on_way:18 %message%refuse:-27 %message%start_again:-18 %money:55 %money%on_way:22
%money%question:24 %money%refuse:18 %noise:-39 %noise%refuse:-18 %odometer:82 %odometer%refuse:-18
%odometer%shift_it:19 %on_way:-156 %on_way%phone:31 %on_way%place:28 %on_way%refuse:246 %on_way%season:26
%on_way%shift_it:27 %on_way%staff:25 %on_way%wrong_one:-22 %pay_day:60 %pay_day%refuse:25 %pay_day%season:31
%phone%shift_it:18 %phone%staff:-28 %phone%who:39 %place%question:-28 %place%refuse:77 %question:-40
%question%shift_it:40 %question%staff:18 %refuse:118 %refuse%season:32 %refuse%shift_it:-66 %refuse%staff:18
%refuse%start_again:-19 %refuse%wrong_one:-36 %season:67 %season%shift_it:26 %season%wrong_one:25 %shift_it:-166
%shift_it%start_again:-27 %staff:52 %staff%wrong_one:28 %start_again:-40 %thanks:-40 %who:52 %wrong_one:18 @?:-160
@after_visit:-38 @car:-18 @confirm:334 @confirm_stop:-47 @day:-74 @later:105 @nothing:305 @nothing_info:-19
@odometer:-39 @offers:-75 @reading:-34 @time:-79 @walk_in:-37 ^_$:-35 ^_a:-25 ^_ahi:-32 ^_all:-19 ^_borre:26
^_can:-105 ^_cancel:-93 ^_cancelar:-63 ^_cancele:69 ^_changed:31 ^_could:-23 ^_count:20 ^_do:-22 ^_drop:19 ^_el:-34
^_give:22 ^_how:-24 ^_id:22 ^_ill:-21 ^_imposible:18 ^_info:-19 ^_is:-24 ^_kill:20 ^_la:-22 ^_make:-23 ^_me:21
^_mejor:20 ^_need:-60 ^_no:-98 ^_nop:-33 ^_not:29 ^_olvide:24 ^_on:-19 ^_opt:-36 ^_perdon:-20 ^_please:44 ^_puedo:-40
^_quite:38 ^_quiten:24 ^_quitenme:20 ^_scratch:27 ^_see:-30 ^_si:-39 ^_siempre:20 ^_still:-28 ^_stop:-32 ^_the:23
^_thumbsup:-20 ^_thursday:-22 ^_voy:-48 ^_what:-44 ^_wont:42 ^_y:-56 ^_yep:-20 ^_yes:-43 ^_yo:-19 a:59 a__ir:22
a_ir:52 a_las:-40 a_otro:33 a_poder:77 able:55 able_to:55 about:-49 after:27 after_$:-19 after_all:46 agenda:37
ahi:-57 ahi__vemos:-24 ahi_nos:-24 ahorita:-23 alcanzo:23 alcanzo_a:27 algo:22 all_$:18 all_set:-30 alla:-35 an:-20
an_appointment:-24 and:80 and_im:29 anoche:22 anule:26 anulela:48 any:-26 anymore:54 anymore_$:47 appointment:47
arrepenti:20 asi:34 asi_que:19 asistir:46 at:-55 at_$:-29 atrasado:-21 back:-33 back_out:37 bail:39 be:79 be__to:39
be_able:39 be_coming:27 be_late:-19 bebe:20 before:-27 booking:55 booking_$:23 borre:27 borre_mi:27 borren:18
bring:-19 busco:21 call:-35 call__my:23 call_me:-75 call_off:49 calling:24 cambiar:-39 cambiar__cita:-27
cambiar_mi:-19 cambie:18 came:19 camino:-24 can:-67 can__come:-21 can__drop:-26 can__make:-19 can__me:21 can__my:21
can_i:-56 can_we:-23 cancel:22 cancel_$:-49 cancel__appointment:-26 cancel__you:22 cancel_it:41 cancel_please:-26
cancel_thursday:19 cancelar:-34 cancelar_$:-54 cancele:104 cancele_$:18 cancele__favor:23 cancele_lo:20
cancele_por:28 cancelela:24 cancelo:26 cant:57 cant__it:63 cant_come:62 cant_do:26 cant_make:29 cant_wait:-29
car_$:22 cayo:19 change:-45 change__appointment:-28 change_my:-29 changed:41 changed__mind:31 changed_my:37 cita:105
cita_$:48 cita__jueves:29 cita_del:37 cita_y:27 come:80 come_$:33 come_in:32 coming:116 coming_$:68 coming_in:18
como:-20 con:26 conmigo:30 could:-19 count:30 count__out:32 count_me:31 covid:28 cuando:32 cuanto:-18 day:-34 de:137
de__agenda:37 de_hoy:26 de_la:23 de_manana:55 de_que:-19 del:136 del_jueves:48 del_trabajo:20 despues:31 did:24
did_it:25 disculpe:34 disculpe_$:19 do:-24 do_i:-19 dont__my:-64 dont__to:41 dont_need:73 dont_want:20 drop:-24
drop__off:-28 drop_it:-39 drop_my:22 el:28 el__no:31 el_carro:19 el_lunes:-30 el_viernes:-22 else:25 else_$:23
en_camino:-22 end:-23 end_$:-18 enfermo:22 es:-44 es_mi:-18 escribo:23 escribo_$:18 ese_carro:-18 eso:-25 espacio:25
esperen:52 esperen_$:52 este:-28 fell:22 fixed:21 for:89 for__th:24 for_now:19 for_someone:18 for_the:27 forget:46
free__my:18 friday:-22 from:41 gastar:-19 going:35 going__be:-19 going__have:35 going__make:36 going_to:31 good:-29
got:34 got__cancel:23 got_it:-24 got_to:54 guy:20 happening:23 have:73 have__back:30 have__cancel:18 have_to:86
hay:-23 here:-19 hice_$:22 hold:18 hora:18 hospital:24 how:-60 how_about:-24 hoy:61 i:66 i__a:-20 i__an:-18 i__be:69
i__come:21 i__that:19 i_cant:48 i_come:-26 i_drop:-35 i_have:21 i_was:28 i_wont:27 id:25 id__to:24 ill:-74
ill__there:-61 ill_be:-53 im:48 im__coming:37 im_not:46 im_out:21 imposible:52 in:93 in_tomorrow:18 info:-22
info_$:-22 instead:-19 ir:217 ir_$:109 ire:63 ire_$:54 is:-53 it:138 it__is:18 it_anymore:51 it_in:26 it_off:18
it_to:-19 it_today:20 it_you:23 jueves:31 jueves_$:59 just:30 just__it:45 kids:21 kill:26 la:90 la__a:30 la__del:26
la__pero:18 la__que:42 la__y:21 la_agenda:37 la_cita:82 las:-20 las_$:-19 last:23 last_night:30 late:-52 late_$:-30
le:38 le__la:23 les:27 let:24 let_the:20 lets:25 like_to:24 llegar:40 llegar_$:33 llego:21 lo:104 lo__a:-24 lo__en:19
lo__hoy:27 lo__manana:33 lo_de:63 lo_del:38 lo_mio:25 lo_voy:-25 los:-26 lunes:-36 lunes_$:-26 make__today:20
make_it:62 manana:62 manana_$:41 mas:-31 maybe:25 me:116 me_$:-52 me__el:28 me__the:30 me_arrepenti:20 me_back:-30
me_es:34 me_esperen:52 me_la:-19 me_lo:18 me_off:32 me_out:36 me_salio:23 me_to:-20 mejor:36 mejor_no:23 mes:20
mi:111 mi__del:23 mi__y:21 mi_cita:60 min:-68 min_$:-27 mind:41 mins:-19 mio:22 miss:-39 miss_it:-48 move:-37
much:-19 my:130 my__dont:32 my__for:21 my_appointment:-29 my_booking:40 my_mind:31 my_name:20 my_spot:27 my_time:24
nada:-21 name:19 need__cancel:43 need__change:-19 need_it:25 need_to:-42 needs:20 ni:20 ninguna:-24 no_$:-185
no__a:115 no__asistir:46 no__conmigo:31 no__el:-19 no__esperen:52 no__for:22 no__ir:106 no__llegar:32 no__no:-22
no__preocupe:-25 no__si:-35 no__va:24 no__voy:-19 no_alcanzo:23 no_es:-27 no_hay:-19 no_ire:63 no_llego:47 no_lo:-21
no_me:18 no_podre:75 no_puedo:66 no_show:18 no_soy:-20 no_tengo:-18 no_va:28 no_voy:213 no_worries:-33 nombre:19
nop:-33 nop_$:-33 nos:-51 nos_vemos:-43 not:103 not_$:-23 not__in:20 not__the:-21 not__to:33 not_be:29 not_coming:122
not_going:26 not_tomorrow:-19 now:-29 now_$:-26 off:70 off_$:-18 off__appointment:20 off__schedule:32 off_my:18
off_the:47 olvide:24 on_$:-27 on__way:-19 on_it:-19 on_my:-20 on_the:-27 opt:-37 opt_out:-22 otro:36 out:45 paso:-20
pena:18 please:66 please_$:-34 please__me:31 please__my:39 please_cancel:35 please_dont:-50 please_take:25 poder:77
poder_ir:20 podre:75 podre_asistir:28 por:22 preocupe:-25 problema:-19 puede:-25 puedo_ir:18 pull:20 push:-20 put:-19
que:61 que_me:26 quiero_ir:21 quit__me:18 quite:58 quite_la:41 quiten:21 quiten__cita:21 reschedule:-19 salio:22
same:-26 same_time:-18 say:-23 say_no:-20 scrap:23 scratch:47 se__a:18 se_preocupe:-25 se_va:18 see:-74
see__tomorrow:-24 see_you:-41 set:-40 set_$:-31 showing:19 si:-98 si_voy:-58 sick:28 siempre:32 siempre_no:27 sin:27
skip:23 slot:30 so:126 so__can:20 so__me:23 so_cancel:21 so_i:26 sold:30 sold__car:27 sold_the:27 somebody:18
somebody_else:18 sorry:75 sorry_$:46 soy:-27 spot:44 spot_$:20 start:-19 still:-31 stop:-71 stop_$:-23 stop__me:-26
stop_texting:-28 strike:23 take:44 take__off:37 take_me:20 tarde:-29 texting:-19 texts:-25 texts_$:-21 th:18 th_$:18
thanks_$:-21 that:32 the:147 the__for:23 the__i:28 the__thing:28 the_appointment:91 the_car:18 the_schedule:29
the_th:18 then:-30 these:-21 thing:26 thumbsup:-20 thumbsup_$:-20 thurs:-31 thursday:48 thursday_$:66
thursday__work:-20 time:-24 time_$:-31 to:148 to__else:25 to__in:23 to__it:24 to__my:-19 to__off:24 to__on:44
to__out:34 to__to:28 to_bail:39 to_call:21 to_cancel:67 to_change:-37 to_come:47 to_have:37 to_make:46 to_move:-31
to_somebody:24 to_the:-28 today:66 todays:28 tomorrow:56 tomorrow_please:22 tomorrows:18 totaled:20 trabajar:19
trabajo:25 turno:27 up:67 up_my:27 va:46 va_a:49 vemos:-32 vemos_$:-22 viernes:-20 voy:-29 voy_$:-52 voy__alla:-19
voy__camino:-22 voy__ir:24 voy__poder:46 voy_a:47 voy_en:-22 voy_saliendo:-18 vuelvo:22 wait:-22 wait_$:-29
waiting:18 was:52 we:-29 we__it:-18 week_$:-23 will__be:23 wipe:20 wipe_my:20 withdraw:29 wont:57 wont__able:25
wont__coming:18 wont__there:49 wont_be:123 wont_make:19 wont_work:-22 work:-55 worries:-33 wrong:-25 y:43 y_$:-55
y__me:23 ya:-74 ya_$:-40 ya__lo:20 ya__quiero:33 ya__voy:79 ya_me:21 ya_no:76 ya_voy:-66 yep:-20 yes:-54 yesterday:29
you:-21 you_can:37 you_tomorrow:-23
"""
