"""What speaks for and against `running_late`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "running_late"
BIAS = -207
WEIGHTS = """\
#abou:20 #adin:23 #ados:22 #affi:34 #afic:30 #agar:23 #ahor:18 #aigh:19 #alar:51 #alca:25 #ambi:-26 #amen:18 #amin:56
#amos:-39 #anan:-21 #ance:-45 #ande:-18 #ando:117 #angi:22 #anti:33 #anzo:25 #apen:42 #apol:23 #arad:24 #arli:-20
#arma:23 #arme:20 #arou:22 #arqu:20 #arro:27 #arto:20 #asad:107 #atel:-20 #ator:24 #atra:114 #avia:23 #avin:52
#away:61 #ayed:27 #baby:21 #back:-25 #behi:46 #bloc:29 #bout:30 #brid:37 #bsup:-27 #camb:-25 #cami:51 #canc:-59
#cant:-38 #canz:25 #carr:19 #cela:-25 #cerc:34 #chan:32 #choo:26 #choq:20 #cita:-28 #cito:25 #ckin:42 #come:-22
#como:-23 #conf:-18 #corr:37 #ctor:27 #cuan:-18 #cuar:19 #cuel:20 #dame:20 #davi:23 #deja:30 #dela:27 #demo:56
#desp:34 #ding:26 #doct:25 #draw:20 #dria:-44 #drop:27 #eadi:23 #earl:-31 #eavi:52 #econ:18 #edia:48 #eeti:21
#eewa:28 #egan:23 #ehin:46 #ejor:-26 #elta:37 #emor:67 #emos:-20 #enas:40 #endo:51 #engo:82 #enme:60 #enor:23
#erca:30 #erdi:34 #erne:-18 #erry:18 #ersl:24 #escu:20 #espa:18 #esta:-57 #esto:82 #etin:21 #etra:42 #etti:18
#even:21 #ever:65 #eves:-24 #eway:35 #ffic:44 #fico:30 #firm:-22 #free:24 #frid:-24 #from:-20 #gand:24 #gare:30
#garr:24 #gett:18 #ging:22 #give:66 #goin:53 #good:-19 #guar:23 #half:73 #hall:18 #have:-23 #head:32 #held:70
#help:-18 #here:-35 #hind:46 #hing:-38 #hizo:39 #hold:41 #hool:26 #hoqu:20 #hori:21 #hour:67 #hous:18 #humb:-27
#hurs:-39 #iday:-21 #idge:37 #iend:41 #iern:-18 #ight:94 #inos:43 #inut:75 #isim:19 #ittl:21 #ivin:22 #jaja:35
#juev:-24 #just:87 #king:34 #lace:20 #land:18 #larg:19 #larm:37 #late:37 #lcan:25 #leav:50 #left:52 #lept:24
#lier:-20 #ligh:42 #litt:21 #lock:23 #logi:23 #luga:30 #mana:-28 #marq:20 #mart:-32 #mbsu:-27 #medi:47 #meet:21
#mejo:-26 #mela:-18 #menm:19 #mino:40 #mins:88 #minu:75 #modo:18 #moke:-18 #morr:-31 #move:-19 #nada:33 #nana:-22
#ncel:-59 #nday:-19 #ngin:20 #ning:47 #nino:39 #nnin:48 #noma:47 #ntan:18 #ntit:41 #ntro:20 #ntua:24 #nute:18
#nuto:41 #nuts:28 #ocki:44 #octo:24 #odav:23 #oder:-32 #odri:-44 #oing:67 #olan:19 #olog:23 #omas:47 #omor:-31
#oque:27 #oqui:24 #orad:24 #orit:33 #orri:36 #orro:-31 #orry:59 #ound:21 #ours:-43 #ouse:19 #over:90 #paci:18
#para:28 #past:68 #pena:50 #perd:51 #pero:62 #ping:19 #plac:20 #plan:-20 #pode:-48 #podr:-51 #polo:23 #poqu:25
#pued:-90 #quar:28 #quit:38 #rada:18 #rado:22 #raff:44 #rafi:30 #raig:26 #rain:23 #rasa:97 #rase:50 #reew:28 #retr:42
#rida:-24 #ride:22 #ridg:37 #rien:44 #righ:19 #rita:33 #rlie:-20 #rnes:-18 #road:55 #rong:33 #roun:22 #rque:31
#rrie:36 #rrow:-31 #rsda:-37 #rsle:24 #rter:28 #rtes:-32 #runn:66 #sado:97 #salg:26 #sali:27 #scho:26 #scue:20
#sday:-40 #seno:20 #shal:18 #show:19 #sibl:-18 #slep:24 #slow:30 #smok:-18 #some:-25 #sorr:59 #spac:19 #spot:33
#stam:-41 #stil:-19 #stop:-22 #stoy:83 #stra:19 #tamo:-41 #tant:33 #tard:34 #tart:31 #tely:-24 #text:-21 #that:-43
#then:24 #ther:-23 #thin:-39 #thum:-28 #thur:-39 #till:-20 #ting:24 #tire:-18 #tito:57 #toda:29 #todo:-30 #tomo:-31
#took:36 #tora:25 #torn:19 #town:27 #traf:75 #trai:54 #tras:150 #tren:24 #ttle:20 #tual:23 #turn:33 #uard:23 #uart:48
#uede:-46 #uedo:-53 #uela:20 #uelt:37 #ugar:30 #uite:22 #uito:24 #umbs:-27 #unni:66 #unos:21 #urno:24 #ursd:-37
#urse:-33 #utos:41 #vemo:-18 #veng:75 #vers:23 #very:48 #vier:-19 #ving:63 #vola:20 #vuel:37 #week:-41 #will:-18
#work:36 #wron:33 %again_later:75 %again_later%agree:39 %again_later%bring:122 %again_later%call_off:48
%again_later%car_part:43 %again_later%do_it:34 %again_later%doubt:23 %again_later%elsewhere:18 %again_later%leak:26
%again_later%lift:-21 %again_later%odometer:37 %again_later%on_way:60 %again_later%place:95 %again_later%question:66
%again_later%refuse:32 %again_later%start_again:-20 %again_later%wrong_one:39 %agree:-209 %agree%away:-24
%agree%bring:-29 %agree%call_off:-34 %agree%how_long:53 %agree%on_way:-54 %agree%place:-24 %agree%refuse:25
%agree%shift_it:18 %agree%wrong_one:22 %away:97 %away%bring:24 %away%call_off:-57 %away%elsewhere:27 %away%fails:30
%away%how_long:37 %away%leak:36 %away%leave_me:23 %away%on_way:-33 %away%wrong_one:44 %bad:24 %bad%on_way:23
%bring%call_off:31 %bring%how_long:23 %bring%leak:35 %bring%leave_me:-44 %bring%odometer:36 %bring%on_way:24
%bring%question:30 %bring%refuse:-53 %bring%shift_it:-21 %busy:83 %busy%leave_me:32 %busy%on_way:61 %busy%place:47
%call_off:19 %call_off%car:49 %call_off%car_part:44 %call_off%on_way:86 %call_off%place:28 %call_off%question:84
%call_off%smoke_smell:29 %call_off%start_again:-38 %car:55 %car%family:38 %car%lift:36 %car%on_way:28 %car%refuse:65
%car_part:43 %car_part%how_long:19 %car_part%place:-30 %do_it:31 %do_it%leak:20 %do_it%place:30 %do_it%question:30
%do_it%refuse:18 %do_it%wrong_one:30 %elsewhere:23 %elsewhere%on_way:36 %elsewhere%wrong_one:21 %fails:19
%fails%start_again:32 %family:96 %family%how_long:24 %family%odometer:21 %family%on_way:37 %gone_car%on_way:42
%gone_car%place:18 %how_long:140 %how_long%odometer:18 %how_long%on_way:77 %how_long%place:39 %how_long%who:21
%how_long%wrong_one:21 %leak:36 %leak%wrong_one:25 %leave_me%on_way:22 %leave_me%refuse:38 %lift:22 %lift%refuse:27
%message:-36 %message%on_way:-21 %money:-41 %odometer:22 %odometer%place:-19 %on_way:351 %on_way%opening:-20
%on_way%phone:38 %on_way%place:76 %on_way%question:31 %on_way%refuse:-90 %on_way%start_again:35 %on_way%thanks:-31
%on_way%who:56 %on_way%wrong_one:70 %opening:-32 %phone%refuse:28 %place:141 %place%question:-23 %place%refuse:24
%place%who:47 %place%wrong_one:46 %question:-59 %question%refuse:56 %refuse:-71 %refuse%shift_it:-23
%refuse%thanks:-21 %refuse%wrong_one:23 %season:18 %shift_it:-134 %thanks:-31 %who:25 %who%wrong_one:18 %wrong_one:57
@?:-154 @confirm:296 @confirm_stop:-25 @confirm_thumbsup:-27 @day:-37 @nothing:100 @offers:-137 @reading:-54
@time:-64 @times:63 @walk_in:-80 ^_$:-32 ^_ahi:-115 ^_ando:50 ^_any:-19 ^_asi:-20 ^_be:118 ^_can:-23 ^_cancel:-19
^_cant:-36 ^_coming:29 ^_como:-49 ^_couldnt:19 ^_estoy:28 ^_eta:-18 ^_going:51 ^_got:-32 ^_half:46 ^_hay:34
^_help:-18 ^_hit:46 ^_how:-45 ^_hoy:-23 ^_i:-53 ^_ill:-38 ^_is:-36 ^_it:-19 ^_just:53 ^_late:-26 ^_llego:42 ^_me:-42
^_my:45 ^_no:-48 ^_not:-19 ^_ok:-19 ^_on:28 ^_puedo:-33 ^_que:-19 ^_running:43 ^_si:-84 ^_still:-22 ^_stop:-28
^_thumbsup:-27 ^_todo:-18 ^_too:-20 ^_took:23 ^_traffic:19 ^_voy:69 ^_were:-21 ^_will:-50 ^_y:-71 ^_yep:-31 ^_yes:-53
a:42 a__late:38 a__si:24 a_bit:36 a_few:26 a_little:21 a_poder:-32 about:20 ahi:-203 ahi_$:20 ahi_el:-21
ahi_estare:-37 ahi_le:-32 ahorita:21 al:-26 alarm:31 alcanzo:25 all:-47 all_set:-18 ando:47 any:-22 apenas:42 are:-19
around:22 asi:-21 at:119 at_$:25 at_the:31 at_work:37 atrasado:56 away:61 away_$:49 back:-25 be:142 be__at:57
be__by:58 be__in:41 be_a:57 be_late:50 be_there:18 behind:46 behind_$:24 bit:36 blocking:27 bridge:20 bus:18 but:33
by:84 by_$:66 by_a:30 call__if:22 camino:40 camino_$:18 can:-22 can_we:-19 cancel:-45 cant:-38 cerca:34 chance_de:19
changing:24 choque:20 choque_en:21 cita:-27 cita_$:-28 come:-21 come_in:-22 coming_$:-29 como:-23 con:75 con_los:49
cuarto:20 day:-42 day_$:-27 de:69 de__hora:24 de_la:24 deja:19 dia:-43 dia_$:-29 do:-39 dont__my:24 drop:20
earlier:-20 el:90 el_freeway:23 el_martes:-31 en:51 en_$:21 en__freeway:23 en__tarde:-44 en_camino:36 en_el:45
en_la:-39 es:-27 escuela:20 ese:-23 ese_dia:-20 estamos:-41 estare:-22 estare_$:-23 estoy:83 estoy__el:18
estoy_ahi:42 eta:-18 every:42 few:34 freeway:28 freeway_$:18 friday:-20 from:-20 fue:31 gas:30 get_there:-20
getting:18 give:56 give_me:28 give_my:22 going:53 going__be:62 going_to:55 good:-19 got:-20 had:42 had_to:43 half:73
have:-23 have_to:-26 hay:42 hay__choque:21 hay_un:21 held:70 help:-18 hit:44 hizo:39 hold:41 hold_my:37 hora:21
hora_$:35 hour:76 house:19 how:-44 hoy:-36 hoy__la:-23 hoy_en:-23 i:-90 i__be:-23 i__there:-23 i_get:-19 i_shall:18
i_wont:-24 ill:-23 ill__a:21 ill__there:-64 ill_be:-27 im:31 im__on:-25 im_not:-40 in_$:32 in__car:25 in__week:-30
in_the:-27 ir:-56 ir_$:-25 is__a:-18 is__me:18 is_there:-21 is_up:40 it:-102 it_$:-47 jueves:-24 just:87 la__no:42
la_escuela:20 la_tarde:-78 las:27 las_$:-38 las_si:24 late:77 late_$:-18 late_sorry:20 lately:-19 lately_$:-19
later:-18 le:-44 leaving:52 left:52 left_$:57 light:30 little:21 llamenme:19 llegando:24 llegar:-37 llegar_$:-19
llego_$:-62 llego_en:32 lo:-32 los:40 los_ninos:43 lugar:30 manana:-21 martes:-32 martes_$:-26 mas:-27 mas_$:89
mas_tarde:-134 me:106 me_$:-32 me__con:43 me__el:53 me__tarde:22 me_fue:32 me_hizo:39 me_if:24 media:49 media_hora:23
meeting:21 mejor:-26 mil:-23 mil_millas:-19 millas_$:-20 min:273 min_$:117 min_late:39 min_tarde:21 mins:88
minutos:41 minutos_$:23 modo:18 my:86 my__away:20 my_spot:36 nada:33 need:-20 ni_modo:18 ninos:43 ninos_$:43 no:22
no_$:-19 no__a:-36 no__nada:19 no_alcanzo:25 no_me:56 no_voy:-104 nomas:47 nomas_que:18 nos_vemos:-18 not:-56
not_coming:-61 now:133 now_$:71 nuts:28 of:20 of_an:18 of_me:24 of_the:23 off:43 ok_$:25 on_$:-64 on__road:27
on_the:69 orden:-18 out:88 out_$:56 over:74 over_$:18 overslept:24 para:19 para_alla:36 para_el:-24 past:68 past_$:40
past_the:18 perdi:21 pero:71 pero_no:23 pero_ya:18 place:21 poder:-32 podria:-44 podria_ser:-44 poquito:25 por:-22
puede:-53 puedo:-45 puedo_ir:-25 quarter:28 que__a:22 que_la:19 red:39 red_light:43 retrasado:32 ride:22 right:20
road:47 running:63 running_late:33 salgo:26 school:26 se:48 se__fue:32 se__hizo:40 se_me:50 se_puede:-42 ser:-40
set_$:-21 shall:18 si:-63 si__no:20 si_ahi:-23 si_voy:-30 sin:-18 slow:30 so:18 sorry:59 spot:35 start:32 still:-19
still_on:-33 stop:-35 stop_$:-21 straight:19 tantito:33 tarde_$:-49 ten:39 that:-43 the:118 the__now:64 the_car:21
the_house:20 the_road:35 the_week:-30 the_wrong:26 then:24 there_$:-157 there_at:61 there_by:67 there_in:51
there_is:-20 thumbsup:-27 thumbsup_$:-27 thursday:-34 thursday_$:-24 to:30 to__in:-19 to__late:29 to_be:60
to_come:-19 todavia:23 todo:-29 todo_en:-18 tomorrow:-30 too:-22 too_late:-19 took:36 town:19 traffic:45
traffic_is:35 trafico:30 trafico_$:25 train:33 tren:24 tren_$:21 turno:24 un:72 un__en:21 un_choque:21 un_poquito:22
unos:21 up:109 up__the:31 up_at:66 vemos:-18 vengo:75 viernes:-18 voy:33 voy_$:-67 voy__alla:30 voy__camino:27
voy__poder:-31 voy_a:-89 voy_en:24 voy_para:32 voy_tarde:39 vuelta:36 was:25 way:-29 way_$:-28 way_to:-27 we:-41
week:-39 week_$:-38 will__there:-46 will_be:-45 wont_be:-31 work:38 wrong:33 y:-25 y_$:-70 ya:95 ya__voy:-32
ya_estoy:37 ya_no:-18 ya_voy:94 yep:-37 yes:-55 yo:21 you:-54 you_there:-26
"""
