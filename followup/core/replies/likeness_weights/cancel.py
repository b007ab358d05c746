"""What speaks for and against `cancel`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "cancel"
BIAS = -301
WEIGHTS = """\
#abaj:51 #able:50 #abou:-66 #acio:59 #aded:22 #adie:22 #agai:32 #agen:40 #ahor:-47 #aiti:25 #ajar:22 #alar:-35
#alca:38 #aled:26 #alen:26 #algo:30 #alio:36 #alla:-50 #alli:41 #also:-27 #alta:-24 #ambi:-34 #anan:82 #ance:155
#ando:45 #anoc:33 #anto:-22 #anul:182 #anym:73 #anzo:30 #appe:62 #appo:52 #apun:56 #arde:-24 #aron:33 #arra:-31
#asad:-45 #asis:136 #asta:-39 #atch:49 #ater:45 #atev:24 #atio:29 #atra:-41 #atte:30 #avis:34 #aybe:26 #ayer:26
#baby:26 #back:-57 #bail:61 #baja:30 #bajo:28 #bebe:22 #befo:-41 #biar:-65 #blem:-31 #body:50 #book:80 #borr:96
#bout:-67 #brin:-24 #burs:23 #busc:25 #cale:27 #camb:-39 #canc:185 #cant:49 #canz:36 #carg:24 #cayo:24 #cela:25
#cele:157 #celo:34 #ched:24 #cide:31 #cita:105 #cobr:23 #come:90 #comi:133 #como:-24 #conf:-26 #conm:40 #corr:-55
#coul:-34 #coun:28 #covi:43 #crap:23 #crat:56 #crib:31 #cuan:28 #cuen:24 #culp:51 #cupe:-29 #days:59 #deje:77
#depo:27 #desa:42 #desp:33 #ding:41 #disc:51 #dnes:26 #does:-30 #dond:-23 #draw:58 #drop:-46 #dule:26 #ease:114
#ebod:24 #ecto:32 #edne:26 #edul:26 #efec:48 #efor:-41 #egar:47 #ejel:25 #ejem:30 #ejor:51 #elam:37 #elar:-58
#elea:25 #elel:40 #elen:32 #elle:-27 #else:51 #elvo:25 #emer:25 #emor:-23 #emos:47 #empr:44 #enca:22 #enci:32
#enda:89 #enfe:25 #engo:-31 #enin:44 #enla:28 #enme:73 #eocu:-33 #epos:27 #eran:36 #erda:23 #eren:67 #erge:25
#ermo:28 #erne:-28 #eron:28 #erva:99 #escr:35 #eser:107 #espa:33 #espe:99 #espu:41 #esta:24 #esti:26 #esto:-25
#ever:50 #eves:33 #expe:32 #exti:-31 #exts:-34 #falt:-40 #fect:44 #fell:32 #ferm:25 #firm:-48 #fixe:28 #fore:-41
#forg:86 #free:34 #from:51 #gain:32 #gamo:-41 #gast:-27 #genc:36 #gend:41 #give:42 #goin:55 #good:-34 #grac:25
#guar:26 #guna:-32 #hago:24 #happ:42 #hate:24 #have:80 #hdra:60 #hedu:26 #hese:-31 #hing:51 #hold:34 #home:61
#hora:35 #hori:-39 #hosp:38 #hrou:22 #iber:47 #ible:89 #ided:22 #iemp:58 #iern:-24 #iero:50 #impo:76 #info:-28
#ingu:-42 #intm:55 #irme:-25 #iscu:53 #isit:32 #ista:48 #isti:135 #isto:26 #ital:36 #itel:28 #iten:78 #ithd:60
#itin:24 #ixed:27 #jemo:31 #juev:37 #just:24 #kids:26 #kill:40 #king:87 #know:-22 #lado:44 #lame:43 #lann:-24
#larm:-32 #last:39 #late:-76 #lcan:38 #leas:117 #left:-22 #lega:33 #lego:47 #lela:96 #lest:22 #lets:29 #ling:49
#llam:22 #lleg:62 #llin:45 #lock:28 #lune:-50 #lvid:63 #mana:53 #mayb:26 #mbia:-75 #mbio:25 #mbre:26 #mebo:24
#mejo:51 #ment:68 #merg:25 #mero:-26 #migo:43 #mind:32 #ming:128 #mins:-34 #miss:-59 #mole:22 #more:62 #moro:-23
#morr:85 #move:-74 #mpos:81 #mpre:41 #muev:-24 #nada:-37 #nadi:22 #name:30 #nana:82 #ncel:183 #ncia:26 #ndan:28
#nday:39 #need:72 #nesd:26 #nfer:25 #nfor:23 #ngam:-55 #nged:50 #ngun:-42 #nigh:26 #ning:-23 #nmig:43 #nnin:-26
#nobo:25 #noch:23 #nomb:28 #noon:-28 #ntme:55 #nule:149 #nymo:73 #oble:-33 #obod:25 #oclo:26 #ocup:-30 #oday:140
#oder:105 #odre:121 #oing:47 #oint:51 #okin:66 #oles:25 #olvi:61 #ombr:28 #omeb:24 #omin:133 #omor:85 #onda:24
#onde:-23 #onga:-49 #onmi:40 #ooki:68 #orge:90 #orit:-39 #orre:54 #orri:-49 #orro:89 #orry:93 #osib:90 #osit:26
#ospi:38 #ospo:-46 #otal:24 #otra:30 #otro:46 #ould:-52 #ount:26 #ourt:25 #over:-37 #ovid:43 #paci:36 #pasa:-24
#paso:-28 #pect:28 #pena:25 #peni:39 #pera:23 #perd:26 #pere:86 #pita:38 #plea:94 #pode:121 #podr:118 #poin:52
#pong:-49 #posi:117 #posp:-46 #ppen:46 #ppoi:52 #preo:-33 #prob:-37 #pued:-28 #pues:29 #pull:60 #punt:49 #push:-22
#puso:27 #qued:31 #quit:165 #raba:46 #raig:-26 #ranc:-34 #rand:36 #rasa:-38 #rase:-23 #ratc:56 #reco:-22 #remo:48
#rend:-24 #renm:29 #reoc:-33 #rese:112 #rgen:36 #rget:90 #ribo:26 #ries:-49 #rike:25 #ring:-42 #rita:-39 #rnes:-28
#robl:-37 #rong:-38 #roug:22 #rows:28 #rran:-28 #rren:56 #rrep:22 #rrie:-49 #rrow:85 #rsda:51 #sado:-43 #sali:33
#same:-42 #sche:26 #scra:78 #scul:53 #sday:68 #serv:110 #show:45 #sibl:87 #sick:27 #siem:48 #sist:150 #slot:46
#sold:38 #some:58 #sorr:84 #spac:35 #sper:101 #spit:38 #spon:-49 #spot:57 #spue:41 #stad:22 #star:-79 #sted:-25
#ster:39 #stil:-39 #stir:136 #stop:-120 #stri:25 #tach:26 #take:78 #tale:26 #tame:35 #tard:-68 #tart:-29 #tela:23
#tend:42 #tenm:31 #terd:32 #teve:24 #text:-75 #that:62 #thdr:60 #then:-50 #thes:-34 #thin:31 #thro:28 #till:-53
#time:-23 #tion:27 #tire:64 #tmen:53 #toda:135 #todo:36 #tomo:84 #took:-24 #tota:24 #trab:52 #trai:-33 #tras:-60
#trik:25 #tten:32 #turn:37 #uand:49 #uard:26 #uede:-38 #uedo:42 #uest:23 #ueva:-24 #ueve:27 #uite:181 #ulel:53
#ulen:63 #ulpe:54 #undo:62 #unes:-50 #unte:35 #urio:24 #urno:34 #ursd:51 #urse:-26 #urst:23 #usco:23 #vamo:30
#vemo:-56 #vera:30 #vide:57 #visi:32 #viso:22 #wate:24 #wedn:26 #with:57 #wont:42 #work:-72 #worr:-41 #wron:-38
#xpec:33 #xtin:-27 #yest:32 #ying:42 #ymor:73 %again_later:72 %again_later%away:95 %again_later%bring:22
%again_later%call_off:-30 %again_later%elsewhere:39 %again_later%fails:26 %again_later%leave_me:27
%again_later%message:24 %again_later%money:27 %again_later%odometer:60 %again_later%pay_day:49
%again_later%question:47 %again_later%refuse:44 %again_later%season:35 %again_later%shift_it:85
%again_later%start_again:-30 %again_later%wrong_one:87 %agree:-104 %agree%away:24 %agree%busy:37 %agree%car:36
%agree%elsewhere:26 %agree%family:48 %agree%gone_car:26 %agree%leave_me:-34 %agree%on_way:-81 %agree%phone:79
%agree%refuse:-83 %agree%staff:27 %away:163 %away%bad:23 %away%bring:65 %away%busy:-38 %away%call_off:105
%away%fails:30 %away%family:93 %away%lift:22 %away%money:36 %away%on_way:-67 %away%place:24 %away%question:29
%away%refuse:27 %away%start_again:52 %away%wrong_one:-61 %bad:115 %bad%bring:25 %bad%call_off:104 %bad%family:23
%bad%gone_car:23 %bad%money:37 %bad%on_way:36 %bad%question:56 %bad%refuse:40 %bad%season:22 %bring:167
%bring%busy:48 %bring%elsewhere:42 %bring%fails:50 %bring%family:34 %bring%gone_car:73 %bring%leak:52 %bring%money:47
%bring%odometer:96 %bring%phone:47 %bring%place:24 %bring%question:-59 %bring%shift_it:-93 %bring%staff:64
%bring%start_again:-26 %bring%thanks:37 %busy:85 %busy%call_off:78 %busy%fails:-32 %busy%on_way:23 %busy%place:26
%busy%shift_it:29 %busy%who:23 %call_off:324 %call_off%car_part:35 %call_off%do_it:41 %call_off%doubt:29
%call_off%elsewhere:31 %call_off%fails:75 %call_off%family:67 %call_off%gone_car:105 %call_off%how_long:39
%call_off%lift:-26 %call_off%meaning:31 %call_off%message:-85 %call_off%money:122 %call_off%noise:-40
%call_off%on_way:-71 %call_off%opening:48 %call_off%pay_day:36 %call_off%phone:40 %call_off%place:49
%call_off%question:87 %call_off%refuse:-31 %call_off%season:59 %call_off%shift_it:67 %call_off%smoke_smell:22
%call_off%thanks:55 %call_off%who:74 %call_off%wrong_one:-71 %car%gone_car:52 %car%odometer:-26 %car%on_way:31
%car%question:23 %car%wrong_one:28 %car_part:-23 %car_part%do_it:64 %car_part%elsewhere:41 %car_part%fails:-24
%car_part%gone_car:23 %car_part%leave_me:27 %car_part%on_way:23 %do_it:51 %do_it%elsewhere:34 %do_it%family:44
%do_it%how_long:32 %do_it%leave_me:29 %do_it%odometer:24 %do_it%on_way:56 %do_it%question:55 %do_it%start_again:-32
%do_it%wrong_one:30 %doubt:39 %doubt%season:22 %elsewhere:119 %elsewhere%fails:22 %elsewhere%leave_me:27
%elsewhere%odometer:32 %elsewhere%on_way:52 %elsewhere%shift_it:62 %elsewhere%staff:54 %elsewhere%wrong_one:54
%fails%gone_car:39 %fails%on_way:108 %fails%phone:-29 %fails%question:-31 %fails%staff:35 %fails%start_again:-23
%fails%wrong_one:27 %family:114 %family%on_way:49 %family%refuse:88 %family%wrong_one:23 %gone_car:133
%gone_car%leave_me:24 %gone_car%question:25 %gone_car%refuse:51 %gone_car%shift_it:23 %gone_car%staff:28
%gone_car%wrong_one:48 %how_long%on_way:29 %how_long%refuse:46 %how_long%wrong_one:28 %leak:39 %leak%staff:31
%leak%wrong_one:22 %leave_me%odometer:50 %leave_me%opening:22 %leave_me%question:46 %leave_me%refuse:-38
%leave_me%shift_it:27 %leave_me%staff:30 %leave_me%start_again:-26 %lift%refuse:33 %lift%wrong_one:34 %message:-56
%message%on_way:28 %message%refuse:-27 %money:91 %money%on_way:41 %money%question:35 %money%refuse:38 %noise:-59
%noise%refuse:-29 %odometer:88 %odometer%refuse:-48 %odometer%shift_it:29 %odometer%who:25 %on_way:-129
%on_way%pay_day:28 %on_way%phone:44 %on_way%place:60 %on_way%question:30 %on_way%refuse:303 %on_way%season:49
%on_way%shift_it:67 %on_way%staff:33 %on_way%start_again:31 %on_way%thanks:33 %on_way%wrong_one:-31 %opening:48
%pay_day:74 %pay_day%refuse:41 %pay_day%season:36 %phone:-25 %phone%refuse:-34 %phone%staff:-45 %phone%who:58
%place%refuse:112 %question:-52 %question%shift_it:40 %question%staff:26 %question%start_again:-29 %refuse:88
%refuse%season:48 %refuse%shift_it:-78 %refuse%smoke_smell:29 %refuse%wrong_one:-71 %season:82 %season%shift_it:38
%shift_it:-167 %shift_it%staff:24 %shift_it%start_again:-32 %staff:72 %staff%wrong_one:47 %start_again:-67 %who:83
@?:-225 @after_visit:-46 @confirm:415 @confirm_:-79 @confirm_stop:-58 @day:-97 @later:128 @nothing:354
@nothing_info:-26 @odometer:-53 @offers:-75 @reading:-28 @time:-97 @walk_in:-44 ^_$:-92 ^_a:-33 ^_ahi:-49 ^_all:-26
^_borre:37 ^_borren:25 ^_can:-135 ^_cancel:-168 ^_cancelar:-104 ^_cancele:75 ^_changed:41 ^_could:-29 ^_count:32
^_do:-31 ^_drop:24 ^_el:-41 ^_en:-26 ^_forget:46 ^_give:30 ^_how:-31 ^_id:23 ^_ill:-32 ^_im:-25 ^_imposible:25
^_info:-27 ^_is:-31 ^_it:-37 ^_kill:23 ^_la:-34 ^_make:-32 ^_mejor:24 ^_min:-39 ^_necesito:-33 ^_need:-89 ^_no:-131
^_nop:-39 ^_olvide:35 ^_on:-27 ^_opt:-48 ^_please:53 ^_puedo:-66 ^_pull:28 ^_quit:-27 ^_quite:53 ^_quiten:36
^_quitenme:30 ^_scratch:33 ^_see:-46 ^_si:-37 ^_siempre:39 ^_still:-31 ^_stop:-43 ^_tengo:25 ^_thursday:-39 ^_voy:-55
^_were:-22 ^_what:-56 ^_wont:30 ^_y:-80 ^_ya:45 ^_yep:-25 ^_yes:-37 ^_yo:-28 a:57 a__cita:26 a__ir:23 a_ir:67
a_las:-51 a_no:29 a_otro:43 a_poder:105 able:55 able_to:55 about:-66 after:27 after_$:-29 after_all:56 agenda:50
ahi:-90 ahi__vemos:-40 ahi_nos:-40 ahi_voy:-28 ahorita:-36 alcanzo:30 alcanzo_a:38 algo:36 all:29 all_$:30
all_set:-45 alla:-41 alla_$:-22 also:-27 am:24 an_appointment:-34 and:100 and_i:24 and_im:35 ando:25 anoche:33
anule:31 anulela:56 anulen:51 any:-32 anymore:73 anymore_$:68 appointment:54 appointment_$:27 arrepenti:22 asi:47
asi_que:30 asistir:68 asistir_$:60 at:-51 at_$:-38 at_all:28 atrasado:-24 aviso:23 ayer:22 back:-60 back_out:50
bail:57 be:64 be__to:36 be_able:38 be_coming:39 be_late:-28 bebe:22 before:-41 before_$:-24 booking:72 booking_$:42
borre:39 borre_mi:39 borren:27 borrenme:30 bring:-24 burst:23 busco:23 but:-30 c:-61 call:-45 call__my:30
call__off:33 call_it:25 call_me:-113 call_off:78 called:23 calling:36 cambiar:-63 cambiar__cita:-51 cambiar_mi:-36
cambie:27 can:-52 can__come:-30 can__drop:-31 can__make:-23 can__me:22 can__my:27 can_i:-74 can_my:-28 can_we:-22
cancel_$:-95 cancel__appointment:-44 cancel__you:27 cancel_it:63 cancel_please:-48 cancelar:-60 cancelar_$:-92
cancele:109 cancele_$:23 cancele__favor:29 cancele_por:35 cancelela:40 cancelled:-26 cancelo:34 cant:50 cant__it:76
cant_come:87 cant_do:34 cant_make:28 cant_wait:-46 car_$:28 cayo:24 change:-47 change__appointment:-47 change_my:-47
changed:50 changed__mind:41 changed_my:47 cita:107 cita_$:41 cita__jueves:42 cita_del:50 cita_y:31 cobran:22 come:103
come_$:40 come_at:-25 come_in:41 coming:133 coming_$:81 como:-22 con:44 conmigo:40 could:-30 count:38 count__out:43
count_me:43 covid:43 cuando:49 day:-49 de:178 de__agenda:50 de__lista:24 de__no:27 de__por:22 de_hoy:35 de_la:62
de_manana:70 de_que:-28 decided:22 del:190 del_jueves:61 del_trabajo:24 del_viernes:22 despues:34 did:31 did_it:34
disculpe:43 disculpe_$:25 do:-32 do_it:22 donde:-22 dont__my:-92 dont__the:30 dont__to:53 dont_give:-23 dont_need:105
drop:-33 drop__off:-34 drop_it:-48 drop_my:33 el:36 el__no:32 el__y:25 el_carro:24 el_lunes:-43 el_viernes:-42
else:43 else_$:32 en_otro:23 end:-31 end_$:-24 enfermo:28 es:-77 es_$:-23 es_mi:-24 escribo:26 eso:-37 eso_$:-25
espacio:37 esperen:78 esperen_$:71 este:-34 expect:33 expect_me:33 falta_$:-28 fell:39 fell_through:24 fixed:28
for:160 for__th:26 for_now:30 for_the:46 for_today:34 forget:90 forget_about:36 free:31 free__my:33 from:51
gastar:-30 give:37 give_me:-25 give_my:28 go:26 going:55 going__be:-24 going__have:45 going__make:40 going_to:36
good:-33 good_for:-23 got:50 got__cancel:27 got_it:-35 got_to:68 hago:24 happening:40 has_a:23 have:85 have__back:37
have__bail:50 have__cancel:22 have_a:-26 have_to:115 hay:-30 here:-23 hice_$:26 home:61 hora:27 hospital:38 how:-79
how_about:-33 hoy:65 i:87 i__a:-31 i__an:-25 i__at:-26 i__be:79 i__come:28 i__make:28 i__that:27 i_booked:23
i_cant:59 i_come:-42 i_dont:-22 i_drop:-42 i_was:35 i_wont:29 id:25 id__to:28 if_i:24 ill:-113 ill__there:-99
ill_be:-88 im:50 im__coming:39 im_coming:-25 im_not:54 im_out:27 imposible:81 in:107 info:-33 info_$:-33 ir:317
ir_$:156 ir_manana:28 ire:76 ire_$:66 is:-65 is__going:-26 is_out:-26 it:127 it__how:-25 it__week:-24 it_anymore:78
it_in:31 it_so:29 it_to:-31 it_today:26 it_you:25 jueves:37 jueves_$:79 just:22 just__it:50 kids:26 kill:36 la:101
la__a:32 la__ahi:-22 la__cancele:22 la__de:24 la__del:41 la__que:52 la__y:22 la_agenda:50 la_cita:89 la_lista:27
la_manana:-22 la_voy:33 las_$:-25 last:39 last_night:47 late:-70 late_$:-39 le:63 le__la:26 left:-22 les:30 let:43
lets:30 like_to:28 lista:24 llegar:52 llegar_$:49 llego:47 lo:101 lo__a:-33 lo__hoy:31 lo__manana:36 lo_de:69
lo_del:44 lo_mio:28 lo_voy:-29 los:-34 lunes:-50 lunes_$:-36 make__today:26 make_it:64 manana:82 manana_$:53 mas:-54
mas_$:-27 maybe:26 me:132 me_$:-97 me__algo:22 me__el:71 me__for:23 me__the:53 me__today:23 me_about:-32
me_arrepenti:22 me_back:-53 me_es:47 me_esperen:78 me_from:30 me_la:-32 me_lo:22 me_off:49 me_out:61 me_salio:27
me_to:-31 mejor:51 mejor_no:32 mes:28 mi:137 mi__a:25 mi__del:34 mi__y:25 mi_cita:80 mi_nombre:31 min:-95 min_$:-38
mind:47 mins:-34 mio:24 miss:-54 miss_it:-63 mon:-25 move:-60 mover:-28 much:-24 my:204 my__dont:42 my__drop:-24
my__for:47 my__off:25 my_appointment:-62 my_booking:45 my_mind:41 my_name:34 my_slot:31 my_spot:29 my_time:48
my_way:-22 nada:-35 nadie:22 name:33 name_off:22 need__appointment:22 need__cancel:43 need__change:-30 need_for:25
need_it:34 need_the:28 need_to:-65 night:28 ninguna:-31 no_$:-227 no__a:163 no__asistir:68 no__cancele:-36
no__conmigo:45 no__el:-32 no__esperen:78 no__for:23 no__ir:178 no__llegar:42 no__no:-22 no__preocupe:-29 no__si:-49
no__va:32 no_alcanzo:30 no_es:-38 no_hay:-28 no_ire:76 no_llego:80 no_lo:-27 no_podre:121 no_puedo:105 no_quiero:37
no_se:-23 no_show:33 no_soy:-31 no_tengo:-34 no_va:31 no_vamos:36 no_voy:296 no_worries:-49 nombre:28 nop:-39
nop_$:-39 nos:-79 nos__manana:-24 nos_vemos:-68 not:76 not_$:-32 not__in:24 not__the:-26 not__to:41 not_be:33
not_coming:157 not_going:34 not_tomorrow:-33 now:-46 now_$:-29 oclock:26 off:95 off__appointment:29 off__schedule:47
off_my:23 off_the:65 off_tomorrow:22 olvide:35 on_$:-35 on__way:-28 on_it:-26 on_my:-31 on_the:-37 on_thursday:29
one_$:24 opt:-50 opt_out:-29 or:-22 other:-23 otra:30 otra_persona:28 otro:46 otro_dia:-32 out:72 out_for:52
out_of:33 para_alla:-22 paso:-28 pena:29 please:95 please_$:-43 please__me:38 please__my:66 please_cancel:47
please_dont:-72 please_take:39 poder:105 poder_$:24 podre:121 podre_asistir:40 podre_ir:56 por:30 preocupe:-29
puede:-30 puedo__a:-23 puedo__el:-26 puedo_ir:40 puedo_llevar:-22 pull:45 push:-28 put:-26 put_me:-24 que:107
que_me:34 quedo:26 quiero:22 quiero_ir:25 quit_$:-24 quite:75 quite__cita:36 quite_la:51 quiten:37 quiten__cita:41
quiten_mi:31 quitenme:31 salio:36 same:-35 same_time:-27 say:-39 say_no:-36 scrap:26 scratch:58 scratch_me:25
se_preocupe:-29 see:-103 see__tomorrow:-39 see_you:-57 set:-64 set_$:-46 show:26 si:-121 si_voy:-68 sick:27
siempre:48 siempre_no:46 sin:45 slot:46 so:180 so__can:39 so__me:31 so_cancel:26 so_i:32 sold:39 sold__car:38
sold_the:44 somebody:24 somebody_else:26 son:-27 son__it:-22 sorry:84 sorry_$:54 soy:-40 spot:57 spot_$:22 spot_to:22
start:-25 still:-39 stop:-108 stop_$:-35 stop__me:-41 stop_texting:-41 strike:25 take:58 take__off:50 take_me:30
tarde:-46 texting:-27 texting_me:-31 texts:-34 texts_$:-28 th_$:23 thanks_$:-23 that:62 that_$:-23
that_appointment:29 the:174 the__for:49 the__i:40 the__off:-26 the__thing:40 the_appointment:111 the_calendar:26
the_day:-24 the_schedule:44 the_whole:26 then:-50 then_$:-28 there_$:-26 these:-31 these_texts:-23 thing:40
through:22 thurs:-45 thursday:51 thursday_$:76 thursday__work:-35 til:-27 time:-22 time_$:-38 to:141 to__else:34
to__in:26 to__my:-37 to__off:35 to__on:70 to__out:57 to__there:22 to__to:34 to_back:51 to_bail:57 to_call:34
to_cancel:73 to_change:-61 to_come:60 to_have:47 to_make:47 to_move:-48 to_somebody:33 to_the:-44 today:108
today_$:42 todays:31 todo:27 todo_$:23 tomorrow:57 tomorrow_$:-39 tomorrow_and:41 tomorrow_please:26 tomorrows:28
took:-24 totaled:26 trabajar:22 trabajo:31 traded:22 tuesday_$:-23 turno:34 un:25 undo:63 up:113 up_at:-24 up_my:66
urge:-22 va:54 va_a:58 vamos:30 vemos:-56 vemos_$:-31 vemos_manana:-24 viernes:-28 voy_$:-56 voy__alla:-24 voy__me:24
voy__poder:66 voy_a:42 voy_tarde:-22 vuelvo:25 wait:-37 wait_$:-47 waiting:25 was:61 water:24 we:-30 wednesdays:23
week:-37 week_$:-36 whatever:24 will__be:24 wipe:22 wipe_my:22 withdraw:39 wont:42 wont__coming:30 wont__there:80
wont_be:149 wont_make:32 wont_work:-43 work:-83 worries:-49 wrong:-38 y:60 y_$:-79 y__me:32 y_no:23 ya:-59 ya_$:-45
ya__quiero:48 ya__tengo:-27 ya__voy:111 ya_estoy:-24 ya_me:28 ya_no:130 ya_quedo:23 ya_voy:-99 yep:-25 yes:-51
yesterday:32 yo:-23 yo_no:-36 you__give:30 you_can:81 you_tomorrow:-38
"""
