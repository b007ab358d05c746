"""What speaks for and against `cancel`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "cancel"
BIAS = -259
WEIGHTS = """\
#abaj:43 #abla:-18 #able:62 #abou:-44 #acio:35 #afte:20 #agai:21 #agen:31 #ahor:-36 #aiti:20 #alca:26 #algo:26
#alio:25 #alla:-38 #alli:23 #ambi:-54 #amin:-18 #anan:66 #ance:173 #anoc:31 #anul:66 #anym:59 #anzo:26 #appe:18
#appo:42 #apun:28 #asad:-32 #asis:110 #asta:-30 #atch:43 #ater:27 #atio:29 #atra:-27 #atte:30 #avor:18 #back:-29
#bail:44 #bajo:30 #befo:-26 #biar:-43 #blem:-19 #body:24 #book:48 #borr:51 #bout:-45 #camb:-53 #came:25 #canc:188
#cant:52 #canz:26 #cela:40 #cele:128 #celo:27 #ched:20 #cita:91 #come:55 #comi:108 #conf:-26 #conm:29 #corr:-24
#coul:-22 #coun:20 #crap:22 #crat:46 #cuen:22 #culp:35 #cupe:-23 #days:30 #deje:42 #ding:32 #disc:37 #dnes:22
#does:-26 #dont:-23 #draw:34 #drop:-29 #dule:22 #ease:86 #edne:22 #edul:22 #eeds:21 #efor:-26 #egar:47 #ejem:27
#ejor:26 #elar:-45 #elel:39 #else:32 #emer:18 #emos:45 #emov:18 #empr:27 #enda:56 #endi:23 #enga:19 #enme:39
#eocu:-21 #eone:18 #erda:19 #eren:64 #erge:18 #ermo:21 #erne:-23 #erva:83 #eser:93 #esnt:-18 #espa:19 #espe:80
#ethi:18 #ever:25 #eves:38 #exti:-22 #exts:-21 #fall:-18 #favo:18 #firm:-29 #fore:-27 #forg:51 #frid:-31 #from:47
#fter:20 #gain:21 #gamo:-39 #gast:-20 #gend:32 #give:22 #goin:27 #good:-34 #grac:19 #guar:24 #hank:-18 #have:83
#hedu:22 #hing:20 #hist:22 #hora:19 #hori:-19 #hosp:27 #howi:26 #ible:59 #iemp:38 #iend:-18 #iern:-22 #iero:28
#impo:57 #ingu:-27 #intm:43 #iscu:37 #isit:26 #isti:110 #ital:26 #iten:58 #itin:20 #juev:40 #june:25 #kids:25
#kill:27 #king:75 #lado:35 #lame:55 #lamo:24 #last:31 #late:-61 #lcan:26 #leas:88 #lega:33 #lela:65 #lema:-22
#lets:18 #ling:26 #llam:19 #lleg:29 #llin:26 #lost:-33 #lune:-40 #lvid:59 #mana:57 #mbia:-49 #mejo:26 #ment:55
#meon:18 #merg:18 #meth:18 #migo:29 #mind:36 #ming:102 #mino:-18 #mins:-21 #miss:-62 #mont:22 #more:53 #morr:69
#move:-49 #mpos:59 #mpre:23 #nada:-27 #name:26 #nana:66 #ncel:188 #need:48 #nesd:22 #nfir:-18 #nfor:23 #ngam:-40
#nged:56 #ngun:-27 #ning:-32 #nmig:34 #nnin:-23 #noch:23 #ntam:27 #nths:20 #ntme:43 #nule:66 #nymo:59 #oble:-30
#oche:19 #ocup:-22 #oday:67 #oder:74 #odre:75 #oesn:-18 #oing:22 #oint:41 #okin:63 #oles:24 #olvi:58 #omeo:18
#omin:103 #omor:69 #onfi:-19 #onga:-39 #onmi:29 #onth:22 #ooki:64 #orge:48 #orit:-20 #orre:29 #orri:-32 #orro:75
#orry:77 #osib:59 #ospi:27 #othe:-29 #otro:31 #ould:-31 #ount:19 #ours:-18 #over:-20 #ovid:28 #owed:20 #owin:19
#paci:22 #para:-20 #paso:-20 #pena:20 #pere:78 #pita:27 #plea:74 #pode:83 #podr:74 #poin:42 #pong:-39 #posi:66
#ppoi:42 #preo:-21 #prob:-29 #pull:22 #punt:27 #qued:21 #quit:96 #raba:41 #rade:19 #rasa:-29 #ratc:46 #remo:41
#reoc:-21 #rese:94 #revo:28 #rgen:18 #rget:48 #ries:-36 #rike:31 #ring:-23 #rita:-20 #rnes:-22 #robl:-29 #rong:-22
#rows:26 #rren:26 #rrie:-32 #rrow:69 #rsda:48 #sado:-31 #sali:20 #same:-26 #sche:22 #scra:69 #scul:37 #sday:59
#serv:92 #show:31 #sibl:57 #sick:31 #siem:30 #sist:114 #skip:28 #slot:20 #sold:35 #some:53 #sorr:77 #spac:22 #sper:83
#spit:27 #spon:-39 #spot:36 #star:-46 #sted:-23 #ster:28 #stil:-30 #stir:110 #stop:-86 #stri:31 #take:39 #tame:45
#tard:-25 #tart:-28 #tend:33 #teng:24 #tenm:19 #terd:24 #text:-55 #than:-22 #then:-38 #ther:-20 #thin:18 #till:-31
#time:-32 #tion:20 #tire:56 #tmen:43 #toda:76 #todo:22 #tomo:68 #trab:50 #trai:-21 #tras:-42 #trik:31 #tten:26
#tter:18 #turn:32 #uard:24 #uede:-26 #uedo:29 #uent:22 #ueve:27 #uite:83 #ulpe:37 #undo:34 #unes:-40 #unta:19
#urio:28 #urno:23 #ursd:48 #uste:-19 #vemo:-33 #vide:49 #vier:-18 #visi:25 #wate:19 #wedn:22 #when:-20 #wipe:26
#with:43 #wont:33 #work:-65 #worr:-36 #wron:-22 #xtin:-19 #yest:24 #ymor:59 %again_later:30 %again_later%away:57
%again_later%call_off:20 %again_later%elsewhere:31 %again_later%fails:38 %again_later%how_long:-18
%again_later%odometer:39 %again_later%on_way:-22 %again_later%refuse:53 %again_later%shift_it:38
%again_later%wrong_one:32 %agree:-93 %agree%busy:19 %agree%call_off:-29 %agree%car:23 %agree%car_part:34
%agree%elsewhere:25 %agree%gone_car:23 %agree%leave_me:-27 %agree%on_way:-66 %agree%phone:55 %agree%refuse:-89
%agree%staff:34 %agree%wrong_one:-24 %away:111 %away%bring:59 %away%busy:-36 %away%call_off:91 %away%fails:27
%away%family:77 %away%odometer:32 %away%on_way:-27 %away%refuse:52 %away%start_again:46 %away%wrong_one:-54 %bad:93
%bad%bring:27 %bad%call_off:88 %bad%fails:18 %bad%money:26 %bad%on_way:20 %bad%refuse:58 %bring:145 %bring%busy:35
%bring%call_off:51 %bring%car_part:22 %bring%do_it:24 %bring%elsewhere:20 %bring%fails:62 %bring%gone_car:49
%bring%leak:36 %bring%money:30 %bring%odometer:71 %bring%on_way:-25 %bring%phone:58 %bring%place:32
%bring%question:-35 %bring%refuse:36 %bring%shift_it:-100 %bring%staff:46 %bring%thanks:19 %bring%wrong_one:21
%busy:59 %busy%call_off:63 %busy%fails:-43 %busy%leave_me:22 %busy%shift_it:24 %call_off:259 %call_off%car_part:29
%call_off%elsewhere:29 %call_off%fails:93 %call_off%family:58 %call_off%gone_car:82 %call_off%leave_me:-30
%call_off%lift:-22 %call_off%message:-47 %call_off%money:78 %call_off%noise:-22 %call_off%odometer:35
%call_off%on_way:-86 %call_off%opening:22 %call_off%pay_day:24 %call_off%phone:24 %call_off%place:42
%call_off%question:57 %call_off%refuse:-18 %call_off%shift_it:22 %call_off%thanks:38 %call_off%who:49
%call_off%wrong_one:-54 %car%gone_car:41 %car%wrong_one:25 %car_part%do_it:23 %car_part%family:20 %do_it%elsewhere:26
%do_it%family:29 %do_it%question:31 %do_it%shift_it:-39 %do_it%staff:26 %do_it%start_again:-24 %do_it%wrong_one:37
%elsewhere:81 %elsewhere%leave_me:21 %elsewhere%place:27 %elsewhere%shift_it:40 %elsewhere%staff:36
%elsewhere%wrong_one:25 %fails:40 %fails%gone_car:33 %fails%on_way:86 %fails%refuse:50 %fails%start_again:-28
%family:74 %family%on_way:34 %family%question:21 %family%refuse:53 %gone_car:114 %gone_car%question:21
%gone_car%refuse:32 %gone_car%wrong_one:38 %how_long:-44 %how_long%odometer:23 %how_long%shift_it:-18 %leak:30
%leak%staff:21 %leak%wrong_one:18 %leave_me:-19 %leave_me%odometer:42 %leave_me%on_way:-19 %leave_me%opening:22
%leave_me%refuse:-20 %leave_me%start_again:-19 %message:-62 %money:59 %money%question:44 %money%refuse:36 %noise:-32
%odometer:98 %on_way:-146 %on_way%phone:24 %on_way%place:20 %on_way%refuse:225 %on_way%staff:18 %on_way%thanks:19
%on_way%wrong_one:-25 %opening:18 %pay_day:25 %pay_day%refuse:19 %pay_day%season:24 %phone%shift_it:27
%phone%staff:-21 %phone%who:31 %place:32 %place%question:-18 %place%refuse:81 %question:-41 %question%refuse:26
%question%shift_it:20 %question%staff:24 %refuse:117 %refuse%season:22 %refuse%shift_it:-72 %refuse%staff:20
%refuse%who:23 %refuse%wrong_one:-38 %season:26 %shift_it:-182 %shift_it%start_again:-28 %staff:56
%staff%wrong_one:31 %start_again:-42 %who:52 %wrong_one:26 @?:-171 @after_visit:-31 @confirm:314 @confirm_stop:-44
@day:-59 @later:117 @nothing:297 @odometer:-24 @offers:-71 @reading:-25 @time:-51 @walk_in:-24 ^_$:-33 ^_ahi:-29
^_can:-119 ^_cancel:-85 ^_cancelar:-67 ^_cancele:58 ^_changed:37 ^_could:-19 ^_drop:18 ^_el:-27 ^_how:-21 ^_ill:-23
^_info:-21 ^_it:-25 ^_kill:18 ^_la:-19 ^_le:23 ^_me:24 ^_necesito:-22 ^_need:-61 ^_no:-100 ^_not:27 ^_olvide:33
^_opt:-39 ^_perdon:-23 ^_please:36 ^_puedo:-41 ^_quit:-21 ^_quiten:35 ^_quitenme:21 ^_scratch:32 ^_see:-35 ^_si:-31
^_siempre:25 ^_something:19 ^_still:-22 ^_stop:-30 ^_the:20 ^_thursday:-35 ^_voy:-35 ^_what:-30 ^_wont:26 ^_y:-59
^_ya:19 ^_yep:-19 ^_yes:-33 a:46 a_ir:65 a_las:-30 a_otro:20 a_poder:75 able:55 able_to:55 about:-44 after:24
after_all:38 again:21 again_in:23 agenda:35 ahi:-59 ahi__vemos:-23 ahi_nos:-23 ahorita:-19 al:-18 alcanzo:26
alcanzo_a:27 algo:28 all_set:-36 alla:-29 an_appointment:-25 and:72 and_i:18 and_im:40 anoche:31 any:-18 anymore:59
anymore_$:48 appointment:41 asi:24 asi_que:20 asistir:53 at:-73 at_$:-34 atrasado:-20 back:-28 back_in:-19
back_out:40 be:79 be__to:35 be_able:36 be_late:-18 before:-26 before_$:-18 booking:66 borre:20 borre_mi:20 call:-34
call__about:-18 call__my:28 call_me:-71 call_off:55 cambiar:-41 came:22 camino:-18 can:-80 can__come:-25 can_i:-78
can_my:-20 can_we:-22 cancel_$:-56 cancel__appointment:-27 cancel__please:19 cancel_it:66 cancel_the:22
cancel_thursday:27 cancel_tomorrow:18 cancelar:-40 cancelar_$:-51 cancelar__cita:18 cancele:78 cancele__favor:26
cancele_lo:28 cancele_por:26 cancelela:39 cancelo:27 cant:52 cant__it:52 cant_come:55 cant_do:31 cant_wait:-30 car:23
car_$:31 carro_$:-19 change:-39 change__appointment:-26 change_my:-27 changed:56 changed__mind:37 changed_my:45
cita:98 cita__jueves:38 cita_del:50 cita_y:35 come:65 come_$:31 come_at:-21 come_in:29 coming:108 coming_$:59
conmigo:29 could:-20 count:21 count_me:21 day:-26 de:147 de__agenda:35 de_la:29 de_manana:66 del:165 del__de:21
del__por:20 del_jueves:60 del_trabajo:30 dia_de:20 did:23 disculpe:45 disculpe_$:24 do:-29 do_i:-22 doesnt:-18
doesnt__anymore:-18 doesnt_work:-18 dont:-23 dont__it:22 dont__my:-73 dont__to:43 dont_need:77 dont_want:24 drop:-28
drop__car:-21 drop__off:-27 drop_it:-32 drop_my:21 el__del:25 el__el:-19 el__no:29 el_carro:26 el_jueves:-19
el_lunes:-34 el_viernes:-25 else:26 else_$:20 en:30 en__casa:20 en__no:24 en_el:24 end:-19 es:-28 ese:-19 espacio:23
este:-24 favor:19 for:42 for_now:21 for_someone:25 for_the:18 forget:48 free__my:25 friday:-27 from:47 get_there:20
give_my:23 go:18 going:27 going__have:24 going__make:37 going_to:21 good:-33 got:27 got__cancel:33 got_it:-34
got_to:67 guy:21 hacer_$:18 have:83 have__back:40 have__cancel:24 have_a:-21 have_to:84 hay:-25 here:-21 here_$:-21
hice_$:18 hora:23 hora_$:27 hospital:27 how:-60 how_about:-32 hoy:47 hoy_$:21 i:46 i__a:-22 i__an:-20 i__at:-21
i__be:81 i__that:18 i__the:-19 i_cant:51 i_come:-29 i_drop:-33 i_have:28 i_wont:23 id__to:26 ill:-88 ill__there:-63
ill_be:-62 im:63 im_not:49 im_out:24 imposible:59 in:111 in_june:25 in_tomorrow:24 info:-23 info_$:-23 ir:226
ir_$:134 ire:64 ire_$:52 is:-62 it:96 it__how:-23 it_anymore:63 it_in:29 it_off:23 it_to:-20 jaja_$:18 jueves:40
jueves_$:74 june:25 june_$:25 just__it:30 kid:19 kids:25 kill:27 la:66 la__a:23 la__de:25 la__del:39 la__que:33
la__y:19 la_agenda:35 la_cita:75 las:-29 last:32 last_night:26 late:-55 late_$:-31 le:34 let:22 let_the:21 lets:18
lets__it:-18 like_to:26 llame_el:18 llegar:49 llegar_$:40 lo:132 lo__en:28 lo__manana:30 lo_de:52 lo_del:47 lo_mio:34
lo_voy:-22 lost:-33 lunes:-40 lunes_$:-30 make_it:63 manana:67 manana_$:30 mas:-30 me:130 me_$:-62 me__algo:21
me__el:37 me__la:-19 me__the:32 me_again:23 me_back:-30 me_es:46 me_off:20 me_out:28 me_salio:30 mejor:26 mejor_no:18
mi:122 mi__del:22 mi__y:25 mi_cita:57 min:-71 min_$:-29 mind:41 mins:-21 mio:28 miss:-60 miss_it:-59 mon:-23
months:20 move:-46 mover:-19 my:150 my__dont:38 my__for:28 my__off:24 my_appointment:-38 my_booking:45 my_mind:37
my_name:27 my_slot:22 my_spot:36 nada:-25 nada_$:-22 name:27 name_off:19 need__cancel:56 need__change:-18 need_it:35
need_the:22 need_to:-47 needs:21 night_$:19 no_$:-227 no__a:119 no__asistir:53 no__conmigo:30 no__el:-25 no__ir:111
no__llegar:39 no__manana:20 no__preocupe:-21 no__si:-39 no_alcanzo:26 no_es:-26 no_hay:-22 no_ire:64 no_llego:29
no_me:51 no_podre:75 no_puedo:75 no_quiero:20 no_soy:-19 no_va:20 no_voy:188 no_worries:-36 nos:-48 nos_vemos:-43
not:105 not_$:-20 not__to:30 not_be:30 not_coming:114 not_going:20 now:-23 now_$:-25 off:78 off__schedule:37
off_my:24 off_the:38 olvide:33 on_$:-27 on_friday:18 on_the:-34 on_thursday:18 opt:-39 opt_out:-19 other:-22 otro:31
out:32 paso:-20 pena:20 please:75 please_$:-26 please__me:24 please__my:44 please__the:18 please_cancel:33
please_dont:-64 please_take:26 pm_$:-19 poder:75 podre:75 por:31 por_telefono:18 preocupe:-21 problema:-22 puede:-26
puedo:19 puedo__a:-18 pull:24 que:81 que_me:26 quiero_ir:22 quit__me:25 quite:26 quiten:39 quiten__cita:22
quiten_mi:29 quitenme:19 salio:25 same:-26 same_time:-25 say:-28 say_no:-25 scrap:30 scratch:48 se_preocupe:-21
see:-76 see_you:-46 set:-35 set_$:-35 showing:26 si:-91 si_voy:-61 sick:31 siempre:30 siempre_no:25 skip:28 slot:20
so:107 so_i:26 so_no:20 sold:35 sold__car:36 sold_the:36 someone:18 something:18 sorry:77 sorry_$:51 soy:-26 spot:36
start:-27 still:-30 stop:-75 stop_$:-27 stop__me:-33 stop_texting:-33 strike:31 take:26 take__off:19 tan:18 tenga:21
texting:-19 texting_me:-18 texts:-21 texts_$:-19 th_$:19 thanks_$:-21 that_$:-23 the:162 the__before:-18 the__for:23
the__off:-21 the_appointment:102 the_car:25 the_schedule:31 the_thursday:18 then:-38 then_$:-20 there:23 thing:21
thurs:-34 thursday:48 thursday_$:76 thursday__work:-33 time:-28 time_$:-45 to:128 to__else:24 to__my:-23 to__off:26
to__on:58 to__out:36 to_call:30 to_cancel:81 to_change:-34 to_come:47 to_do:-20 to_have:31 to_make:51 to_move:-42
today:61 today_$:19 tomorrow:43 tomorrow_please:31 tomorrows:26 trabajo:31 turno:23 two:24 up:60 up_$:29 up_my:24
va:38 va_a:40 vemos:-33 vemos_$:-22 viernes:-22 voy:-24 voy_$:-51 voy__ir:37 voy__poder:46 voy_a:61 wait:-24
wait_$:-31 waiting:20 was:19 water:19 we:-42 we__it:-27 wednesdays:19 week_$:-22 when:-18 wipe:28 wipe_my:28 wont:33
wont__able:26 wont__coming:19 wont__it:-33 wont__there:54 wont_be:124 wont_make:18 wont_start:-19 wont_work:-36
work:-67 worries:-36 wrong:-22 y:27 y_$:-58 y_no:20 ya:-71 ya_$:-40 ya__lo:24 ya__quiero:33 ya__voy:74 ya_estoy:-18
ya_me:20 ya_no:83 ya_voy:-58 yep:-19 yes:-45 yes__it:19 yesterday:24 yo:-21 you:-54 you_can:33 you_tomorrow:-30
"""
