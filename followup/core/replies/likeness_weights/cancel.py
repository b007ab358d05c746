"""What speaks for and against `cancel`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "cancel"
BIAS = -310
WEIGHTS = """\
#abaj:55 #able:65 #abou:-65 #acio:51 #afte:27 #agen:40 #ahor:-37 #aigo:-22 #aiti:22 #ajar:23 #alar:-27 #alca:38
#aled:26 #algo:26 #alio:31 #alla:-55 #alli:37 #alto:-23 #ambi:-42 #amin:-29 #anan:82 #ance:208 #ando:43 #anoc:29
#anto:-24 #anul:190 #anym:74 #anzo:33 #appe:42 #appo:59 #apun:40 #arme:22 #arre:24 #asad:-50 #asis:134 #asta:-38
#atch:57 #ater:41 #atio:28 #atra:-34 #atte:37 #avis:23 #aybe:32 #baby:28 #back:-49 #bail:53 #baja:29 #bajo:30
#bebe:25 #befo:-37 #biar:-51 #blem:-31 #body:54 #book:75 #borr:84 #bout:-65 #brin:-24 #bsup:-27 #busc:24 #camb:-41
#came:28 #canc:238 #cant:68 #canz:38 #carg:28 #cayo:23 #cela:36 #cele:178 #celo:34 #cita:123 #come:91 #comi:152
#como:-25 #conf:-30 #conm:38 #corr:-42 #coul:-29 #coun:35 #covi:36 #crap:29 #crat:62 #crib:27 #cuen:25 #culp:50
#cupe:-30 #days:56 #deje:67 #desa:24 #desp:39 #ding:38 #disc:50 #does:-31 #dont:-28 #draw:59 #drop:-37 #dule:22
#ease:96 #ebod:24 #ecto:23 #edul:22 #eeds:25 #efec:34 #efor:-37 #egar:51 #ejel:25 #ejem:28 #ejor:47 #elar:-57
#elel:31 #else:42 #elvo:28 #emos:47 #empr:37 #enca:25 #enci:28 #enda:81 #endi:27 #enfe:27 #engo:-29 #enin:35 #enla:32
#enme:39 #ensa:-24 #eocu:-34 #epen:22 #eran:41 #erda:31 #eren:61 #ermo:30 #erne:-30 #erva:85 #esch:-24 #escr:29
#eser:94 #espa:28 #espe:88 #espu:47 #esti:30 #ever:39 #eves:38 #exti:-31 #exts:-33 #falt:-28 #fect:31 #fell:24
#ferm:27 #firm:-41 #fixe:27 #fore:-37 #forg:61 #frid:-37 #from:52 #fter:27 #gamo:-45 #gast:-31 #genc:31 #gend:41
#give:26 #goin:37 #good:-37 #guna:-30 #hank:-25 #happ:22 #have:92 #hdra:60 #hedu:22 #hese:-29 #hing:42 #hold:27
#hora:28 #hori:-31 #hosp:31 #howi:24 #humb:-27 #ible:81 #iday:-28 #iemp:48 #iern:-30 #iero:26 #impo:68 #info:-25
#ingu:-40 #inst:-28 #intm:60 #iscu:51 #isit:31 #isti:133 #isto:31 #ital:29 #itel:31 #iten:64 #ithd:60 #itin:22
#ixed:27 #juev:42 #just:38 #kids:27 #kill:33 #king:72 #lado:45 #lame:48 #lamo:31 #lann:-25 #larm:-24 #last:31
#late:-74 #lcan:38 #leas:99 #left:-22 #lega:25 #lego:27 #lela:91 #lema:-28 #lest:25 #lets:28 #ling:36 #llam:25
#lleg:38 #llin:37 #lost:-23 #lune:-48 #lvid:64 #mana:62 #mayb:32 #mbia:-61 #mbre:25 #mbsu:-27 #mebo:24 #mejo:47
#mens:-23 #ment:79 #migo:36 #mind:45 #ming:147 #mino:-29 #mins:-28 #miss:-63 #mole:25 #more:61 #morr:93 #move:-62
#mpos:72 #mpre:29 #nada:-26 #name:24 #nana:82 #ncar:24 #ncel:239 #ndan:33 #nday:29 #need:66 #nfer:27 #ngam:-47
#nged:56 #ngun:-40 #ning:-38 #nmig:42 #nnin:-29 #nobo:24 #nomb:24 #nsaj:-23 #nste:-23 #ntam:24 #ntme:60 #ntra:-22
#nule:153 #nymo:74 #oble:-33 #obod:24 #ocup:-30 #oday:119 #oder:101 #odre:104 #oing:28 #oint:57 #okin:64 #oles:30
#olvi:62 #ombr:24 #omeb:24 #omin:150 #omor:93 #onga:-46 #onmi:38 #ooki:66 #orge:61 #orit:-32 #orre:49 #orri:-46
#orro:98 #orry:105 #osib:82 #ospi:31 #ospo:-47 #otal:24 #otro:48 #ould:-54 #ount:33 #ovid:36 #paci:31 #paso:-25
#peni:28 #pent:24 #pere:81 #pita:31 #plea:87 #pode:114 #podr:101 #poin:58 #pong:-46 #posi:102 #posp:-47 #ppen:26
#ppoi:59 #preo:-34 #prob:-38 #pued:-26 #pues:37 #pull:23 #punt:36 #push:-25 #qued:25 #quit:165 #raba:52 #raig:-26
#rasa:-40 #ratc:62 #remo:36 #reoc:-34 #repe:24 #resc:-24 #rese:101 #revo:24 #rgen:31 #rget:61 #ribo:29 #rida:-22
#ries:-49 #rike:29 #ring:-37 #rita:-32 #rnes:-30 #robl:-38 #rong:-30 #rows:23 #rren:41 #rrep:25 #rrie:-46 #rrow:93
#rsda:60 #sado:-49 #saje:-23 #same:-35 #sche:22 #scra:92 #scul:51 #sday:66 #serv:99 #show:39 #sibl:80 #sick:36
#siem:41 #sist:151 #skip:31 #slot:39 #sold:40 #some:59 #sorr:93 #spac:30 #sper:91 #spit:31 #spon:-48 #spot:58
#spue:47 #star:-63 #stea:-23 #sted:-27 #ster:37 #stil:-39 #stir:134 #stop:-111 #stri:29 #tach:30 #take:69 #tale:26
#tame:40 #tard:-52 #tart:-27 #tead:-23 #tela:26 #tele:22 #tend:38 #terd:37 #text:-76 #than:-32 #that:44 #thdr:60
#then:-39 #thes:-30 #thin:36 #thum:-27 #till:-47 #time:-33 #tion:29 #tire:71 #tmen:59 #toda:118 #todo:26 #tomo:93
#tota:24 #trab:59 #trai:-34 #tras:-61 #trik:29 #tten:35 #turn:39 #uand:42 #uant:-24 #uede:-37 #uedo:35 #uelv:27
#uent:23 #ueve:29 #uite:170 #ulel:58 #ulen:60 #ulpe:52 #umbs:-27 #undo:31 #unes:-48 #unta:23 #urio:26 #urno:34
#ursd:60 #urse:-24 #usco:27 #uste:-22 #vemo:-44 #vera:25 #vide:51 #visi:30 #were:-28 #wipe:22 #with:49 #wont:65
#work:-66 #worr:-37 #woul:-25 #wron:-30 #xtin:-27 #yest:37 #ymor:74 %again_later:77 %again_later%away:79
%again_later%bring:34 %again_later%elsewhere:34 %again_later%fails:22 %again_later%message:24 %again_later%money:27
%again_later%odometer:45 %again_later%pay_day:46 %again_later%question:46 %again_later%refuse:32
%again_later%season:45 %again_later%shift_it:81 %again_later%start_again:-33 %again_later%wrong_one:57 %agree:-153
%agree%away:32 %agree%busy:23 %agree%car:33 %agree%car_part:26 %agree%elsewhere:28 %agree%leave_me:-33
%agree%on_way:-87 %agree%phone:64 %agree%refuse:-87 %agree%staff:30 %away:161 %away%bad:24 %away%bring:66
%away%busy:-43 %away%call_off:134 %away%do_it:23 %away%fails:37 %away%family:94 %away%odometer:25 %away%on_way:-46
%away%place:22 %away%question:40 %away%refuse:35 %away%start_again:47 %away%wrong_one:-72 %bad:124 %bad%bring:29
%bad%call_off:125 %bad%gone_car:26 %bad%money:29 %bad%on_way:36 %bad%question:50 %bad%refuse:50 %bring:194
%bring%busy:38 %bring%call_off:41 %bring%fails:73 %bring%family:54 %bring%gone_car:72 %bring%leak:57 %bring%money:31
%bring%odometer:120 %bring%on_way:-31 %bring%phone:59 %bring%question:-40 %bring%refuse:72 %bring%shift_it:-106
%bring%staff:47 %bring%start_again:-26 %bring%wrong_one:35 %busy:76 %busy%call_off:69 %busy%fails:-40 %call_off:339
%call_off%car_part:43 %call_off%do_it:64 %call_off%elsewhere:46 %call_off%fails:80 %call_off%family:83
%call_off%gone_car:101 %call_off%lift:-25 %call_off%meaning:28 %call_off%message:-72 %call_off%money:114
%call_off%noise:-30 %call_off%on_way:-113 %call_off%opening:32 %call_off%pay_day:43 %call_off%phone:41
%call_off%place:42 %call_off%question:97 %call_off%refuse:-31 %call_off%season:59 %call_off%shift_it:43
%call_off%start_again:23 %call_off%thanks:38 %call_off%who:61 %call_off%wrong_one:-55 %car%gone_car:53
%car%odometer:-23 %car%on_way:24 %car%wrong_one:34 %car_part%do_it:47 %car_part%elsewhere:31 %car_part%gone_car:26
%do_it:38 %do_it%elsewhere:36 %do_it%family:40 %do_it%how_long:25 %do_it%on_way:56 %do_it%question:67
%do_it%shift_it:-37 %do_it%start_again:-30 %do_it%wrong_one:38 %elsewhere:122 %elsewhere%leave_me:29
%elsewhere%on_way:47 %elsewhere%refuse:33 %elsewhere%shift_it:51 %elsewhere%staff:46 %elsewhere%wrong_one:48
%fails:36 %fails%gone_car:46 %fails%on_way:109 %fails%refuse:63 %fails%start_again:-31 %family:102 %family%on_way:46
%family%refuse:76 %gone_car:133 %gone_car%refuse:58 %gone_car%staff:26 %gone_car%wrong_one:66 %how_long:-39
%how_long%odometer:24 %how_long%refuse:35 %leak:45 %leave_me%odometer:40 %leave_me%question:34 %leave_me%refuse:-28
%leave_me%shift_it:28 %leave_me%staff:35 %leave_me%start_again:-30 %message:-76 %message%on_way:23
%message%refuse:-31 %message%start_again:-22 %money:83 %money%on_way:31 %money%question:35 %money%refuse:25
%noise:-47 %noise%refuse:-23 %odometer:108 %odometer%refuse:-27 %odometer%shift_it:22 %on_way:-179 %on_way%phone:39
%on_way%place:40 %on_way%question:22 %on_way%refuse:316 %on_way%season:34 %on_way%shift_it:36 %on_way%staff:31
%on_way%wrong_one:-33 %pay_day:76 %pay_day%refuse:33 %pay_day%season:38 %phone%refuse:-22 %phone%shift_it:25
%phone%staff:-37 %phone%who:48 %place%question:-33 %place%refuse:104 %question:-34 %question%shift_it:53
%question%staff:23 %refuse:129 %refuse%season:43 %refuse%shift_it:-93 %refuse%staff:22 %refuse%start_again:-27
%refuse%wrong_one:-54 %season:88 %season%shift_it:34 %season%wrong_one:33 %shift_it:-208 %shift_it%staff:22
%shift_it%start_again:-36 %staff:67 %staff%wrong_one:37 %start_again:-58 %thanks:-44 %who:66 %wrong_one:23 @?:-207
@after_visit:-41 @confirm:371 @confirm_stop:-60 @confirm_thumbsup:-22 @day:-88 @later:130 @nothing:382
@nothing_info:-25 @odometer:-44 @offers:-81 @reading:-36 @time:-95 @walk_in:-41 ^_$:-43 ^_a:-32 ^_ahi:-45 ^_all:-24
^_borre:37 ^_can:-139 ^_cancel:-143 ^_cancelar:-91 ^_cancele:89 ^_changed:44 ^_could:-30 ^_count:26 ^_do:-29
^_drop:24 ^_el:-40 ^_forget:25 ^_give:27 ^_how:-31 ^_id:28 ^_ill:-29 ^_imposible:22 ^_info:-26 ^_is:-29 ^_kill:26
^_la:-26 ^_make:-28 ^_me:29 ^_mejor:27 ^_necesito:-23 ^_need:-84 ^_no:-126 ^_nop:-40 ^_olvide:37 ^_on:-27 ^_opt:-43
^_perdon:-30 ^_please:55 ^_puedo:-54 ^_quite:48 ^_quiten:34 ^_quitenme:26 ^_scratch:38 ^_see:-42 ^_si:-45
^_siempre:24 ^_skip:22 ^_still:-37 ^_stop:-45 ^_the:29 ^_thumbsup:-27 ^_thursday:-34 ^_voy:-57 ^_were:-26 ^_what:-53
^_wont:50 ^_y:-79 ^_yep:-25 ^_yes:-48 ^_yo:-24 a:80 a__ir:25 a_ir:73 a_las:-51 a_otro:41 a_poder:101 able:67
able_to:67 about:-65 after:34 after_$:-23 after_all:59 again_in:22 agenda:47 ahi:-73 ahi__vemos:-34 ahi_nos:-34
ahorita:-31 alcanzo:33 alcanzo_a:39 algo:31 all_$:25 all_set:-42 alla:-46 alla_$:-23 an:-23 an_appointment:-31
and:104 and_im:37 anoche:29 anule:33 anulela:60 any:-33 anymore:74 anymore_$:63 appointment:59 arrepenti:25 asi:43
asi_que:24 asistir:66 at:-77 at_$:-41 atrasado:-28 back:-46 back_in:-23 back_out:50 bail:54 be:100 be__to:47
be_able:47 be_coming:34 be_late:-25 bebe:25 before:-37 before_$:-24 booking:71 booking_$:30 borre:38 borre_mi:38
borren:22 bring:-24 busco:27 but__need:23 call:-43 call__my:33 call_me:-99 call_off:71 calling:30 cambiar:-53
cambiar__cita:-39 cambiar_mi:-27 cambie:23 came:26 camino:-29 can:-86 can__come:-30 can__drop:-36 can__make:-27
can__me:26 can__my:27 can_i:-77 can_my:-24 can_we:-26 cancel_$:-71 cancel__appointment:-42 cancel__you:29
cancel_it:60 cancel_my:-24 cancel_please:-39 cancel_thursday:26 cancelar:-51 cancelar_$:-75 cancele:136 cancele_$:23
cancele__favor:30 cancele_lo:27 cancele_por:37 cancelela:31 cancelo:34 cant:69 cant__it:81 cant_come:82 cant_do:37
cant_make:32 cant_wait:-40 car:22 car_$:33 cayo:23 change:-61 change__appointment:-38 change_my:-39 changed:56
changed__mind:44 changed_my:51 cita:131 cita_$:53 cita__jueves:42 cita_del:51 cita_y:34 come:106 come_$:46
come_at:-24 come_in:45 coming:152 coming_$:89 coming_in:24 como:-23 con:31 conmigo:38 could:-26 count:38
count__out:40 count_me:40 covid:36 cuando:42 cuanto:-22 day:-40 de:188 de__agenda:47 de_hoy:33 de_la:32 de_manana:71
de_que:-23 del:181 del_jueves:67 del_trabajo:25 despues:40 did:32 did_it:32 disculpe:48 disculpe_$:27 do:-26 do_i:-25
dont:-28 dont__it:23 dont__my:-91 dont__to:60 dont_need:101 dont_want:28 drop:-35 drop__off:-38 drop_it:-52
drop_my:28 el:37 el__no:42 el_carro:24 el_jueves:-22 el_lunes:-41 el_viernes:-31 else:33 else_$:29 en_camino:-27
end:-27 end_$:-22 enfermo:30 es:-48 es_mi:-22 escribo:29 escribo_$:23 eso:-34 eso_$:-23 espacio:32 esperen:71
esperen_$:71 este:-34 falta_$:-22 fell:28 fixed:27 for:114 for__th:30 for_now:24 for_someone:23 for_the:33 forget:61
free:23 free__my:23 friday:-31 from:52 gastar:-28 going:37 going__be:-27 going__have:45 going__make:46 going_to:32
good:-36 got:47 got__cancel:30 got_it:-35 got_to:71 guy:25 happening:29 have:92 have__back:42 have__cancel:25
have_a:-24 have_to:114 hay:-30 hay_problema:-22 here:-26 hice_$:28 hold:23 hora:24 hospital:31 how:-79 how_about:-35
hoy:78 i:83 i__a:-28 i__an:-25 i__at:-25 i__be:94 i__come:27 i__make:23 i__that:24 i_cant:62 i_come:-37 i_dont:-25
i_drop:-49 i_have:28 i_was:35 i_wont:34 id:33 id__to:31 id_like:22 ill:-103 ill__there:-85 ill_be:-74 im:54
im__coming:48 im_not:60 im_out:27 imposible:72 in:115 in_june:22 in_tomorrow:24 info:-30 info_$:-30 instead:-23
ir:298 ir_$:154 ire:82 ire_$:72 is:-62 is__going:-22 it:169 it__how:-26 it__is:23 it_anymore:74 it_in:35 it_to:-23
it_today:25 it_you:29 jueves:42 jueves_$:86 just:36 just__it:57 kids:27 kill:33 la:121 la__a:43 la__del:33
la__pero:22 la__que:54 la__y:26 la_agenda:47 la_cita:97 las:-24 las_$:-26 last:31 last_night:39 late:-67 late_$:-39
le:52 le__la:29 left:-22 les:36 let:31 let_the:25 lets:28 like_to:32 llegar:54 llegar_$:49 llego:27 lo:136 lo__a:-35
lo__en:25 lo__hoy:34 lo__manana:43 lo_de:81 lo_del:53 lo_mio:31 lo_voy:-36 los:-33 lost:-23 lunes:-48 lunes_$:-36
make__today:25 make_it:72 manana:82 manana_$:52 mas:-36 maybe:32 me:144 me_$:-81 me__algo:25 me__el:39 me__the:40
me_arrepenti:25 me_back:-41 me_es:50 me_esperen:71 me_la:-23 me_lo:22 me_off:44 me_out:45 me_salio:33 me_to:-25
mejor:47 mejor_no:29 mes:27 mi:144 mi__del:33 mi__y:26 mi_cita:80 mi_hora:22 min:-92 min_$:-37 mind:56 mins:-28
mio:28 miss:-59 miss_it:-69 mon:-26 move:-52 mover:-24 much:-25 my:171 my__dont:46 my__for:26 my_appointment:-49
my_booking:51 my_mind:44 my_name:25 my_spot:36 my_time:30 nada:-24 name:24 need__cancel:61 need__change:-28
need__the:22 need_it:37 need_the:22 need_to:-61 needs:25 ni:27 ninguna:-30 no_$:-259 no__a:152 no__asistir:66
no__conmigo:39 no__el:-30 no__esperen:71 no__for:28 no__ir:147 no__llegar:45 no__no:-25 no__preocupe:-32
no__problema:-22 no__si:-51 no__va:29 no__voy:-23 no_alcanzo:34 no_es:-34 no_hay:-27 no_ire:82 no_llego:59 no_lo:-31
no_me:28 no_podre:104 no_puedo:86 no_quiero:26 no_show:23 no_soy:-23 no_tengo:-22 no_va:35 no_voy:274 no_worries:-49
nombre:24 nop:-40 nop_$:-40 nos:-68 nos_vemos:-58 not:110 not_$:-32 not__in:26 not__the:-26 not__to:40 not_be:37
not_coming:158 not_going:30 not_tomorrow:-22 now:-40 now_$:-32 off:94 off_$:-30 off__appointment:29 off__schedule:46
off_my:27 off_the:62 ok_$:-23 olvide:37 on_$:-38 on__way:-27 on_it:-27 on_my:-27 on_the:-34 on_thursday:25 opt:-44
opt_out:-25 otra_persona:22 otro:48 out:61 para_alla:-23 paso:-25 pena:22 please:87 please_$:-42 please__me:44
please__my:50 please_cancel:48 please_dont:-74 please_take:37 poder:101 poder_ir:23 podre:104 podre_asistir:38 por:32
preocupe:-32 problema:-28 puede:-34 puedo__el:-22 puedo_ir:27 pull:26 push:-25 put:-24 que:86 que_me:33 quiero_ir:29
quit__me:23 quite:74 quite_la:52 quiten:31 quiten__cita:30 quiten_mi:25 quitenme:22 reschedule:-23 salio:31 same:-35
same_time:-25 say:-35 say_no:-32 scrap:30 scratch:64 se__a:22 se_preocupe:-32 se_va:22 see:-100 see__tomorrow:-33
see_you:-54 set:-53 set_$:-43 showing:24 si:-123 si_voy:-79 sick:36 siempre:41 siempre_no:33 sin:33 skip:31 slot:39
so:164 so__can:25 so__me:29 so_cancel:27 so_i:33 sold:41 sold__car:40 sold_the:40 somebody:25 somebody_else:23
son:-22 sorry:93 sorry_$:53 soy:-32 spot:58 spot_$:25 start:-25 still:-39 stop:-97 stop_$:-34 stop__me:-37
stop_texting:-38 strike:29 ta:22 take:59 take__off:49 take_me:28 tarde:-31 tengo:-22 texting:-27 texting_me:-24
texts:-33 texts_$:-27 th:22 thanks_$:-26 thanks_but:24 that:44 the:192 the__for:29 the__i:37 the__off:-22
the__thing:35 the_appointment:124 the_car:25 the_schedule:41 the_th:22 then:-39 these:-29 these_texts:-24 thing:33
thumbsup:-27 thumbsup_$:-27 thurs:-44 thursday:61 thursday_$:92 thursday__work:-31 time:-33 time_$:-44 to:179
to__else:32 to__in:30 to__it:23 to__my:-29 to__off:32 to__on:61 to__out:47 to__to:34 to_bail:54 to_be:-23 to_call:31
to_cancel:95 to_change:-52 to_come:64 to_have:48 to_make:58 to_move:-45 to_somebody:31 to_the:-37 today:84 todays:35
tomorrow:71 tomorrow_please:27 tomorrows:23 totaled:26 trabajar:24 trabajo:33 turno:34 up:86 up_my:33 va:58 va_a:61
vemos:-44 vemos_$:-33 verano:22 viernes:-30 viernes_$:-22 voy:-37 voy_$:-72 voy__alla:-26 voy__camino:-27 voy__ir:34
voy__poder:62 voy_a:63 voy_en:-27 voy_para:-23 voy_saliendo:-23 vuelvo:28 wait:-31 wait_$:-40 waiting:22 was:66
we:-37 we__it:-25 we_make:-22 week:-22 week_$:-33 were:-27 will__be:29 wipe:26 wipe_my:26 withdraw:37 wont:65
wont__able:29 wont__coming:23 wont__it:-26 wont__there:71 wont_be:161 wont_make:27 wont_work:-35 work:-80 worries:-49
wrong:-30 y:53 y_$:-77 y__me:29 ya:-90 ya_$:-54 ya__lo:24 ya__quiero:46 ya__voy:99 ya_estoy:-23 ya_me:27 ya_no:105
ya_voy:-88 yep:-25 yes:-61 yesterday:37 you:-23 you_can:47 you_tomorrow:-33
"""
