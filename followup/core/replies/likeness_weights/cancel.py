"""What speaks for and against `cancel`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "cancel"
BIAS = -353
WEIGHTS = """\
#abaj:58 #able:66 #abou:-75 #acio:66 #adie:25 #afra:33 #agai:39 #agen:53 #ahor:-53 #ajar:25 #alar:-37 #alca:42
#aled:28 #algo:31 #alio:39 #alla:-59 #alli:48 #alto:-29 #ambi:-35 #amin:-29 #anan:91 #ance:208 #ando:56 #anoc:35
#anto:-26 #anul:204 #anym:78 #anzo:32 #appe:78 #appo:60 #apun:65 #arde:-37 #aron:33 #arra:-30 #arre:27 #asad:-58
#asis:146 #asta:-38 #atch:58 #ater:49 #atev:29 #atio:34 #atra:-45 #atte:31 #avis:40 #aybe:29 #ayer:29 #baby:29
#back:-63 #bail:67 #baja:34 #bajo:31 #bebe:25 #befo:-43 #biar:-73 #blem:-32 #body:56 #book:93 #borr:118 #bout:-75
#brin:-29 #bsup:-30 #burs:25 #busc:28 #cale:25 #camb:-41 #canc:238 #cant:77 #canz:39 #carg:28 #cayo:27 #cela:33
#cele:177 #celo:37 #cide:37 #cita:116 #cobr:25 #come:109 #comi:153 #como:-31 #conf:-35 #conm:45 #corr:-56 #coul:-38
#coun:33 #covi:51 #crap:26 #crat:65 #crib:36 #cuan:29 #cuen:29 #culp:58 #cupe:-32 #days:70 #deje:88 #depo:31 #desa:50
#desp:37 #ding:47 #disc:58 #dnes:26 #does:-31 #dond:-25 #draw:67 #drop:-47 #earl:-25 #ease:126 #ecto:39 #edne:26
#efec:56 #efor:-43 #egar:52 #ejel:29 #ejem:33 #ejor:55 #elal:26 #elam:40 #elar:-59 #elea:28 #elel:47 #elen:40
#elle:-31 #else:56 #elvo:28 #emer:28 #emos:55 #empr:54 #enca:25 #enci:36 #enda:102 #enfe:28 #engo:-35 #enin:52
#enla:33 #enme:82 #ensa:-27 #eocu:-36 #epos:30 #eran:40 #erda:25 #eren:65 #erge:28 #ermo:32 #erne:-30 #eron:28
#erva:112 #esch:-28 #escr:40 #eser:122 #espa:38 #espe:107 #espu:46 #esta:33 #esti:30 #esto:-27 #ever:64 #eves:35
#expe:39 #exti:-31 #exts:-42 #falt:-41 #fect:51 #fell:45 #ferm:28 #firm:-58 #fixe:30 #fore:-44 #forg:99 #frai:34
#free:40 #from:60 #gain:39 #gamo:-47 #gast:-25 #genc:39 #gend:54 #give:45 #goin:73 #good:-46 #grac:25 #guar:30
#guna:-36 #happ:55 #hate:28 #have:97 #hdra:68 #hese:-38 #hing:59 #hold:41 #hole:26 #home:70 #hora:38 #hori:-44
#hosp:39 #hrou:33 #humb:-30 #iber:55 #ible:99 #ided:25 #iemp:71 #iern:-25 #iero:49 #impo:85 #info:-30 #ingu:-49
#intm:63 #irme:-29 #iscu:59 #isit:37 #ista:55 #isti:146 #isto:30 #ital:37 #itel:32 #iten:87 #ithd:68 #ixed:30
#jemo:35 #juev:39 #just:33 #kids:36 #kill:45 #king:106 #know:-31 #lado:51 #lala:33 #lame:47 #lann:-25 #larm:-34
#last:37 #late:-92 #lcan:42 #leas:130 #lega:33 #lego:53 #lela:110 #lest:25 #lets:39 #lien:-25 #ling:59 #lleg:65
#llin:54 #lock:32 #lune:-55 #lvid:65 #mana:61 #mayb:29 #mbia:-86 #mbio:30 #mbre:29 #mbsu:-30 #mejo:55 #ment:78
#merg:28 #mero:-31 #migo:50 #mind:36 #ming:148 #mino:-34 #mins:-63 #miss:-68 #mole:25 #more:64 #morr:103 #move:-74
#mpos:90 #mpre:52 #muev:-27 #nada:-45 #nadi:25 #name:32 #nana:92 #ncel:236 #ncia:29 #ndan:30 #nday:43 #need:80
#nesd:26 #nfer:28 #nfir:-26 #ngam:-63 #nged:58 #ngun:-49 #nigh:32 #ning:-25 #nmig:49 #nnin:-30 #nobo:29 #nomb:31
#noon:-30 #nste:-28 #ntam:25 #ntme:63 #nule:167 #nymo:78 #oble:-35 #obod:29 #oclo:30 #ocup:-34 #oday:160 #oder:124
#odre:130 #oing:64 #oint:59 #okin:80 #oles:30 #olvi:63 #ombr:30 #omin:154 #omor:103 #onda:26 #onde:-25 #onfi:-26
#onga:-56 #onmi:45 #ooki:77 #orge:103 #orit:-45 #orre:64 #orri:-50 #orro:107 #orry:117 #osib:101 #osit:30 #ospi:39
#ospo:-53 #otra:34 #otro:55 #ough:25 #ould:-59 #ount:30 #ourt:31 #over:-38 #ovid:51 #owed:25 #paci:41 #pasa:-27
#paso:-30 #pect:35 #peni:45 #pera:26 #perd:28 #pere:91 #pita:39 #plea:106 #pode:140 #podr:127 #poin:60 #pong:-56
#posi:132 #posp:-53 #ppen:60 #ppoi:60 #preo:-36 #prob:-39 #pued:-26 #pues:33 #pull:68 #punt:58 #push:-27 #puso:31
#qued:31 #quit:180 #raba:53 #raid:34 #raig:-30 #ranc:-33 #rand:41 #rasa:-51 #ratc:65 #remo:60 #rend:-25 #renm:33
#reoc:-36 #repe:25 #resc:-28 #rese:128 #revo:25 #rgen:40 #rget:103 #ribo:30 #ries:-50 #rike:30 #ring:-53 #rita:-45
#rnes:-30 #robl:-39 #rong:-43 #roug:33 #rows:34 #rran:-28 #rren:64 #rrep:25 #rrie:-50 #rrow:103 #rsda:67 #sado:-54
#sali:29 #same:-48 #scra:90 #scul:59 #sday:87 #serv:125 #show:58 #sibl:98 #sick:40 #siem:59 #sist:163 #skip:30
#slot:52 #sold:44 #some:66 #sorr:106 #spac:41 #sper:110 #spit:39 #spon:-56 #spot:62 #spue:46 #star:-84 #stea:-27
#sted:-27 #ster:40 #stil:-56 #stir:147 #stop:-131 #stri:30 #tach:29 #take:86 #tale:28 #tame:40 #tard:-88 #tart:-32
#tead:-27 #tela:27 #tend:46 #tenm:33 #terd:34 #teve:29 #text:-82 #that:76 #thdr:68 #then:-60 #thes:-40 #thin:35
#thro:39 #thum:-30 #till:-71 #tion:33 #tire:72 #tmen:62 #tmrw:33 #toda:156 #todo:39 #tomo:102 #took:-25 #trab:61
#trai:-41 #tras:-73 #trik:30 #tten:36 #turn:40 #uand:54 #uant:-25 #uard:30 #uede:-40 #uedo:46 #uelv:25 #uent:25
#uest:26 #ueva:-26 #ueve:28 #uite:202 #ulel:61 #ulen:71 #ulpe:60 #umbs:-30 #undo:72 #unes:-55 #unte:41 #urno:37
#ursd:67 #urst:25 #usco:26 #vamo:33 #vemo:-62 #vera:34 #vide:59 #visi:36 #viso:26 #wate:27 #wedn:26 #whol:29 #with:67
#wont:57 #work:-80 #worr:-40 #wron:-43 #xpec:39 #xtin:-26 #yest:34 #ying:50 #ymor:78 %again_later:86
%again_later%away:95 %again_later%bring:29 %again_later%call_off:-30 %again_later%elsewhere:49 %again_later%fails:33
%again_later%leave_me:34 %again_later%message:27 %again_later%money:28 %again_later%odometer:65
%again_later%pay_day:54 %again_later%question:48 %again_later%refuse:66 %again_later%season:39
%again_later%shift_it:101 %again_later%start_again:-29 %again_later%wrong_one:110 %agree:-171 %agree%away:26
%agree%busy:43 %agree%car:41 %agree%elsewhere:28 %agree%family:52 %agree%gone_car:28 %agree%leave_me:-41
%agree%on_way:-103 %agree%phone:87 %agree%refuse:-100 %agree%staff:28 %agree%wrong_one:-25 %away:173 %away%bring:78
%away%busy:-41 %away%call_off:126 %away%fails:34 %away%family:108 %away%money:38 %away%on_way:-80 %away%place:27
%away%question:39 %away%refuse:36 %away%start_again:54 %away%wrong_one:-66 %bad:129 %bad%bring:26 %bad%call_off:118
%bad%family:26 %bad%money:37 %bad%on_way:39 %bad%question:61 %bad%refuse:44 %bring:198 %bring%busy:53 %bring%car:25
%bring%car_part:26 %bring%elsewhere:54 %bring%fails:65 %bring%family:39 %bring%gone_car:80 %bring%leak:56
%bring%money:52 %bring%odometer:122 %bring%on_way:-37 %bring%phone:55 %bring%question:-67 %bring%refuse:26
%bring%shift_it:-91 %bring%staff:79 %bring%thanks:40 %busy:109 %busy%call_off:91 %busy%fails:-31 %busy%on_way:25
%busy%place:28 %busy%shift_it:30 %busy%who:25 %call_off:371 %call_off%car_part:46 %call_off%do_it:47
%call_off%doubt:34 %call_off%elsewhere:39 %call_off%fails:93 %call_off%family:90 %call_off%gone_car:122
%call_off%how_long:39 %call_off%lift:-30 %call_off%meaning:37 %call_off%message:-97 %call_off%money:132
%call_off%noise:-44 %call_off%on_way:-77 %call_off%opening:57 %call_off%pay_day:44 %call_off%phone:58
%call_off%place:51 %call_off%question:104 %call_off%refuse:-37 %call_off%season:69 %call_off%shift_it:74
%call_off%start_again:28 %call_off%thanks:63 %call_off%who:90 %call_off%wrong_one:-69 %car%gone_car:56
%car%odometer:-35 %car%on_way:40 %car%question:25 %car%refuse:-26 %car%wrong_one:35 %car_part%do_it:71
%car_part%elsewhere:45 %car_part%fails:-27 %car_part%gone_car:25 %car_part%leave_me:32 %car_part%on_way:26 %do_it:61
%do_it%elsewhere:36 %do_it%family:45 %do_it%how_long:33 %do_it%leave_me:34 %do_it%odometer:26 %do_it%on_way:58
%do_it%question:60 %do_it%start_again:-32 %do_it%wrong_one:34 %doubt:46 %doubt%season:25 %elsewhere:140
%elsewhere%fails:27 %elsewhere%leave_me:30 %elsewhere%odometer:39 %elsewhere%on_way:58 %elsewhere%refuse:26
%elsewhere%shift_it:75 %elsewhere%staff:61 %elsewhere%wrong_one:60 %fails:26 %fails%gone_car:43 %fails%on_way:119
%fails%phone:-31 %fails%question:-33 %fails%staff:38 %fails%start_again:-25 %fails%wrong_one:36 %family:134
%family%on_way:54 %family%refuse:104 %gone_car:146 %gone_car%leave_me:28 %gone_car%money:-26 %gone_car%refuse:66
%gone_car%shift_it:25 %gone_car%staff:31 %gone_car%wrong_one:54 %how_long%on_way:27 %how_long%refuse:54
%how_long%wrong_one:32 %leak:49 %leak%staff:35 %leave_me%odometer:59 %leave_me%question:51 %leave_me%refuse:-42
%leave_me%shift_it:30 %leave_me%staff:32 %leave_me%start_again:-28 %lift%refuse:42 %lift%wrong_one:41 %message:-68
%message%on_way:32 %message%refuse:-38 %message%start_again:-26 %money:87 %money%on_way:43 %money%question:33
%money%refuse:38 %noise:-66 %noise%refuse:-31 %odometer:102 %odometer%refuse:-56 %odometer%shift_it:38
%odometer%who:29 %on_way:-213 %on_way%pay_day:32 %on_way%phone:49 %on_way%place:61 %on_way%question:33
%on_way%refuse:370 %on_way%season:57 %on_way%shift_it:77 %on_way%staff:40 %on_way%start_again:35 %on_way%thanks:35
%on_way%wrong_one:-39 %opening:57 %pay_day:85 %pay_day%refuse:43 %pay_day%season:40 %phone%staff:-53 %phone%who:73
%phone%wrong_one:29 %place%question:-25 %place%refuse:119 %question:-70 %question%shift_it:45 %question%staff:27
%question%start_again:-31 %refuse:134 %refuse%season:52 %refuse%shift_it:-79 %refuse%wrong_one:-75 %season:93
%season%shift_it:45 %shift_it:-203 %shift_it%staff:29 %shift_it%start_again:-36 %staff:85 %staff%wrong_one:54
%start_again:-71 %who:97 %wrong_one:35 @?:-256 @after_visit:-56 @confirm:467 @confirm_:-91 @confirm_stop:-69
@confirm_thumbsup:-25 @day:-111 @later:118 @nothing:438 @nothing_info:-28 @nothing_opt_out:-33 @odometer:-64
@offers:-97 @reading:-35 @time:-111 @walk_in:-69 ^_$:-95 ^_a:-38 ^_ahi:-54 ^_all:-28 ^_borre:39 ^_borren:28
^_can:-161 ^_cancel:-167 ^_cancelar:-114 ^_cancele:86 ^_cancelen:25 ^_changed:47 ^_could:-33 ^_count:35 ^_do:-37
^_drop:29 ^_el:-47 ^_en:-25 ^_forget:52 ^_give:32 ^_how:-34 ^_id:28 ^_ill:-33 ^_im:-25 ^_imposible:27 ^_info:-29
^_is:-38 ^_it:-41 ^_kids:26 ^_kill:25 ^_la:-39 ^_make:-44 ^_mejor:26 ^_min:-43 ^_necesito:-32 ^_need:-104 ^_no:-162
^_nop:-45 ^_olvide:35 ^_on:-33 ^_opt:-56 ^_please:58 ^_puedo:-77 ^_pull:31 ^_quit:-32 ^_quite:59 ^_quiten:41
^_quitenme:33 ^_scratch:35 ^_see:-58 ^_si:-56 ^_siempre:46 ^_still:-44 ^_stop:-49 ^_the:28 ^_thumbsup:-30
^_thursday:-40 ^_voy:-80 ^_what:-65 ^_wont:49 ^_y:-91 ^_ya:29 ^_yep:-29 ^_yes:-54 ^_yo:-32 a:83 a__cita:29 a__ir:30
a_ir:69 a_las:-55 a_no:33 a_otro:51 a_poder:124 able:72 able_to:72 about:-75 afraid:34 after:32 after_$:-39
after_all:71 agenda:66 ahi:-106 ahi__vemos:-41 ahi_nos:-41 ahi_voy:-33 ahorita:-41 alcanzo:32 alcanzo_a:39 algo:38
all:48 all_$:38 all_set:-49 alla:-49 alla_$:-25 am:28 an_appointment:-44 and:128 and_i:28 and_im:38 ando:27 anoche:35
anule:33 anulela:64 anulen:56 any:-38 anymore:78 anymore_$:72 appointment:63 appointment_$:37 arrepenti:25 asi:53
asi_que:34 asistir:71 asistir_$:63 at:-54 at_$:-47 at_all:31 atrasado:-29 aviso:27 ayer:26 back:-66 back_out:55
bail:63 be:96 be__to:53 be_able:53 be_coming:54 be_late:-31 bebe:25 before:-43 before_$:-25 booking:81 booking_$:48
borre:41 borre_mi:41 borren:31 borrenme:33 bring:-32 burst:25 busco:26 but:-38 c:-69 call:-50 call__my:32
call__off:38 call_it:30 call_me:-131 call_off:85 called:33 calling:41 cambiar:-68 cambiar__cita:-53 cambiar_mi:-36
cambie:31 camino:-34 can:-62 can__come:-31 can__drop:-39 can__make:-28 can__my:30 can_i:-87 can_my:-27 can_we:-32
can_you:-25 cancel_$:-107 cancel__appointment:-52 cancel__thursday:25 cancel__you:31 cancel_it:82 cancel_please:-50
cancelar:-62 cancelar_$:-97 cancele:118 cancele_$:25 cancele__favor:32 cancele_por:39 cancelela:47 cancelled:-30
cancelo:37 cant:77 cant__it:89 cant_come:99 cant_do:33 cant_make:40 cant_wait:-51 car_$:30 carro_$:-26 cayo:27
change:-50 change__appointment:-50 change_my:-51 changed:58 changed__mind:46 changed_my:53 cita:120 cita_$:47
cita__jueves:44 cita_del:54 cita_y:36 come:122 come_$:48 come_in:48 coming:153 coming_$:103 como:-29 con:56
conmigo:45 could:-34 count:44 count__out:48 count_me:48 covid:51 cuando:54 day:-57 de:197 de__agenda:66 de__lista:27
de__no:32 de__por:26 de_hoy:40 de_la:68 de_manana:80 de_que:-33 decided:26 del:209 del_jueves:65 del_trabajo:27
del_viernes:25 despues:39 did:30 did_it:35 disculpe:48 disculpe_$:26 do:-41 do_i:-25 donde:-25 dont__my:-110
dont__the:32 dont__to:59 dont_give:-28 dont_need:116 dont_want:25 drop:-33 drop__appointment:29 drop__off:-41
drop_it:-56 drop_my:43 el:51 el__no:40 el__y:30 el_carro:27 el_lunes:-47 el_viernes:-46 else:48 else_$:35
en_camino:-31 en_otro:25 end:-34 end_$:-26 enfermo:32 es:-88 es_mi:-28 escribo:30 ese_carro:-25 eso:-38 eso_$:-25
espacio:43 esperen:82 esperen_$:74 este:-41 expect:39 expect_me:40 falta_$:-29 fell:51 fell_through:35 fixed:30
for:188 for__th:30 for_now:35 for_the:54 for_today:40 forget:103 forget_about:38 free:37 free__my:38 friday_$:-26
from:60 gastar:-29 give:40 give_me:-30 give_my:29 going:73 going__be:-33 going__have:55 going__make:49 going_to:51
good:-44 good_for:-26 got:65 got__cancel:30 got_it:-43 got_to:76 hacer_$:26 happening:46 has_a:26 have:103
have__back:40 have__bail:57 have__cancel:25 have_a:-30 have_to:135 hay:-36 here:-28 hice_$:28 hold:26 home:71 hora:29
hospital:39 how:-88 how_about:-38 hoy:73 i:105 i__a:-36 i__an:-28 i__at:-25 i__be:88 i__come:28 i__make:30 i__not:28
i__that:29 i_booked:27 i_cant:63 i_come:-44 i_drop:-53 i_was:41 i_wont:31 id:32 id__to:32 if_i:27 ill:-127
ill__there:-117 ill_be:-106 im:87 im__coming:50 im_afraid:34 im_coming:-29 im_not:72 im_out:30 imposible:90 in:128
info:-35 info_$:-35 instead:-27 ir:351 ir_$:169 ir_manana:32 ire:86 ire_$:75 is:-61 is__going:-30 is_out:-30 it:166
it_$:-26 it__how:-27 it__is:27 it_anymore:83 it_in:31 it_so:34 it_to:-40 it_today:30 it_you:29 jueves:39 jueves_$:83
just:31 just__it:59 kids:36 kill:41 know:-29 la:117 la__a:35 la__ahi:-26 la__de:37 la__del:46 la__que:58 la__y:26
la_agenda:66 la_cita:95 la_lista:30 la_manana:-30 la_voy:37 las_$:-26 last:37 last_night:54 late:-83 late_$:-47 le:68
le__la:30 les:33 let:48 lets:39 like_to:33 lista:27 llegar:58 llegar_$:53 llego:53 lo:114 lo__a:-30 lo__hoy:35
lo__manana:34 lo_de:71 lo_del:46 lo_mio:32 lo_voy:-27 los:-38 lunes:-55 lunes_$:-40 make__today:30 make_it:84
manana:92 manana_$:55 mas:-64 mas_$:-30 maybe:29 me:164 me_$:-99 me__el:80 me__for:27 me__the:56 me__today:27
me_about:-35 me_arrepenti:25 me_back:-56 me_es:54 me_esperen:82 me_from:36 me_la:-36 me_off:53 me_out:68 me_salio:29
me_to:-33 mejor:55 mejor_no:37 mes:31 mi:159 mi__a:29 mi__del:37 mi__y:27 mi_cita:94 mi_nombre:34 min:-113 min_$:-45
mind:55 mins:-63 mio:27 miss:-63 miss_it:-74 mon:-27 move:-63 mover:-29 much:-26 my:239 my__dont:47 my__for:55
my__off:27 my_appointment:-61 my_booking:48 my_mind:46 my_name:36 my_slot:35 my_spot:29 my_time:56 nada:-42 nadie:25
name:36 need__cancel:53 need__change:-30 need_for:29 need_it:38 need_the:29 need_to:-71 night:33 ninguna:-36
no_$:-273 no__a:186 no__asistir:71 no__cancele:-44 no__conmigo:51 no__el:-34 no__esperen:82 no__for:26 no__ir:203
no__llegar:44 no__ninguna:-25 no__no:-27 no__preocupe:-33 no__si:-54 no__va:37 no_alcanzo:32 no_es:-46 no_hay:-30
no_ire:86 no_llego:90 no_lo:-26 no_podre:130 no_puedo:125 no_quiero:36 no_show:44 no_soy:-37 no_tengo:-39 no_va:35
no_vamos:40 no_voy:346 no_worries:-50 nombre:31 nop:-45 nop_$:-45 nos:-90 nos__manana:-27 nos_vemos:-76 not:105
not_$:-32 not__the:-32 not__to:58 not_be:47 not_coming:176 not_going:50 not_tomorrow:-43 now:-51 now_$:-34 oclock:30
of:36 off:107 off__appointment:31 off__schedule:53 off_the:66 off_tomorrow:25 olvide:35 on_$:-39 on__way:-28
on_it:-27 on_my:-31 on_the:-44 on_thursday:28 one_$:32 opt:-58 opt_out:-35 other:-25 otra:34 otra_persona:32 otro:55
otro_dia:-33 out:66 out_$:-48 out_for:59 out_of:37 paso:-30 pena:33 please:107 please_$:-45 please__me:42
please__my:79 please_cancel:52 please_dont:-84 please_take:43 pm_$:-25 poder:124 poder_$:29 poder_ir:28 podre:130
podre_asistir:43 podre_ir:61 por:37 preocupe:-33 puede:-33 puedo_ir:47 pull:50 push:-35 put:-29 put_me:-26 que:112
que_me:36 quedo:25 quiero_ir:27 quit_$:-28 quite:83 quite__cita:39 quite_la:56 quiten:41 quiten__cita:48 quiten_mi:36
quitenme:33 reschedule:-27 salio:39 same:-38 same_time:-29 say:-42 say_no:-37 scrap:29 scratch:67 scratch_me:29
se_preocupe:-33 see:-123 see__tomorrow:-42 see_you:-67 set:-70 set_$:-49 show:35 si:-153 si_voy:-83 sick:40
siempre:59 siempre_no:55 sin:53 skip:30 slot:53 so:208 so__can:43 so__i:25 so__me:36 so_cancel:30 so_i:36 sold:45
sold__car:43 sold_the:49 somebody_else:29 son:-30 sorry:106 sorry_$:70 soy:-48 spot:62 spot_$:25 start:-28 still:-56
stop:-118 stop_$:-39 stop__me:-42 stop_texting:-43 strike:30 take:62 take__off:55 take_me:31 tarde:-62 tarde_$:-26
texting:-26 texting_me:-29 texts:-42 texts_$:-34 thanks_$:-32 that:76 that_appointment:35 the:213 the__after:-26
the__for:55 the__i:48 the__off:-28 the__thing:50 the_appointment:121 the_car:30 the_day:-28 the_schedule:45
the_whole:33 then:-60 then_$:-37 there_$:-37 these:-38 these_texts:-27 thing:46 through:33 thumbsup:-30
thumbsup_$:-30 thurs:-48 thursday:67 thursday_$:91 thursday__work:-36 til:-33 time_$:-42 tmrw:33 to:192 to__else:38
to__in:33 to__me:-27 to__my:-32 to__off:41 to__on:74 to__out:62 to__to:41 to_back:55 to_bail:63 to_call:39
to_cancel:85 to_change:-64 to_come:72 to_have:57 to_make:65 to_move:-49 to_somebody:37 to_the:-48 today:123
today_$:50 todays:37 todo:29 todo_$:26 tomorrow:68 tomorrow_$:-45 tomorrow_and:46 tomorrow_please:30 tomorrows:34
took:-25 totaled:28 trabajar:26 trabajo:34 turno:37 un:28 undo:73 up:132 up_at:-29 up_my:78 va:61 va_a:66 vamos:33
vemos:-62 vemos_$:-35 vemos_manana:-27 viernes:-30 voy:-34 voy_$:-59 voy__alla:-28 voy__camino:-30 voy__me:27
voy__poder:79 voy_a:60 voy_en:-30 voy_saliendo:-26 voy_tarde:-26 vuelvo:28 wait:-40 wait_$:-52 was:73 water:27 we:-34
we__it:-28 wednesdays:28 week:-41 week_$:-36 whatever:29 whole:29 whole_thing:25 will__be:36 will_not:31 wipe:25
wipe_my:25 withdraw:44 wont:57 wont__able:34 wont__coming:44 wont__there:81 wont_be:177 wont_make:36 wont_work:-42
work:-90 worries:-50 wrong:-43 y:70 y_$:-89 y__me:35 ya:-87 ya_$:-50 ya__quiero:50 ya__tengo:-30 ya__voy:125
ya_estoy:-25 ya_me:32 ya_no:127 ya_quedo:25 ya_voy:-117 yep:-29 yes:-71 yesterday:34 yo:-27 yo_no:-42 you__give:35
you_can:92 you_tomorrow:-41
"""
