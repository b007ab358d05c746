"""What speaks for and against `running_late`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "running_late"
BIAS = -209
WEIGHTS = """\
#abou:42 #acio:18 #adin:25 #affi:35 #afic:26 #agar:39 #agua:22 #alar:36 #alca:18 #algo:21 #ambi:-32 #amin:50
#amos:-24 #anan:-23 #ance:-58 #ando:108 #ante:21 #anti:27 #anzo:19 #apen:34 #apol:22 #arde:21 #ardo:23 #arou:23
#arro:33 #asad:99 #ator:28 #atra:95 #aves:19 #avia:26 #avin:48 #away:49 #ayed:26 #back:-24 #behi:36 #bloc:24 #bout:49
#brid:47 #bsup:-23 #busc:19 #camb:-30 #cami:47 #canc:-65 #cand:20 #cant:-36 #canz:18 #cela:-19 #cerc:26 #chan:33
#choo:20 #cita:-29 #cito:28 #ckin:33 #come:-25 #corr:20 #ctor:31 #cuan:-22 #culp:19 #davi:26 #dela:26 #demo:44
#desp:42 #ding:19 #disc:19 #doct:18 #doin:22 #dria:-33 #drop:26 #eadi:25 #earl:-27 #eavi:49 #edia:47 #eeti:22
#eewa:22 #egan:21 #ehin:36 #ejor:-21 #elay:27 #elta:47 #emor:52 #emos:-19 #enas:32 #endo:36 #engo:57 #enme:55
#erca:24 #erdi:24 #erne:-19 #erry:21 #ersl:26 #espa:27 #esta:-60 #esto:78 #etin:22 #etra:42 #etti:20 #ever:49
#eves:-23 #eway:26 #ferr:21 #ffic:43 #fico:26 #firm:-30 #forg:18 #frid:-22 #gand:22 #gare:24 #garr:39 #gies:22
#gimm:22 #give:41 #goin:42 #good:-18 #guan:20 #guar:18 #half:70 #hall:19 #hang:27 #have:-28 #head:30 #held:55
#here:-36 #hind:36 #hing:-31 #hizo:32 #hold:31 #hool:20 #hour:58 #hous:21 #humb:-23 #hurs:-34 #ible:-18 #iday:-18
#idge:44 #iend:25 #iern:-19 #ight:68 #iles:18 #imme:22 #inos:33 #inut:66 #iscu:20 #itos:18 #ittl:23 #jaja:25
#juev:-23 #just:70 #king:36 #larg:21 #larm:22 #late:65 #laye:27 #lcan:18 #leav:46 #left:42 #lega:25 #lept:26 #ligh:35
#like:23 #litt:23 #lleg:23 #lock:24 #logi:22 #luga:27 #mana:-32 #mart:-26 #mbia:-22 #mbsu:-23 #medi:45 #meet:22
#mejo:-21 #mile:18 #mino:39 #mins:68 #minu:66 #moro:37 #morr:-24 #move:-19 #nana:-24 #ncel:-65 #ning:28 #nino:42
#nnin:39 #noma:35 #ntit:34 #nuto:32 #nuts:24 #ocki:34 #odav:26 #oder:-30 #odri:-32 #ogie:22 #oing:63 #olog:22
#omas:35 #omor:-24 #oque:25 #oqui:21 #orad:31 #orit:19 #orri:24 #orro:-25 #orry:81 #ound:20 #ours:-33 #ouse:22
#over:86 #paci:27 #para:25 #past:59 #pena:40 #perd:43 #pero:54 #ping:21 #plan:-22 #pode:-42 #podr:-37 #polo:22
#poqu:21 #pued:-77 #quar:31 #quit:30 #rado:27 #raff:43 #rafi:26 #raig:19 #rain:23 #rasa:92 #rase:39 #rdon:18 #reck:21
#reew:22 #retr:40 #rida:-21 #ridg:44 #rien:32 #rita:19 #rnes:-19 #road:46 #rong:23 #roun:21 #rque:20 #rrie:25
#rrow:-24 #rsda:-33 #rsle:26 #rter:31 #rtes:-26 #runn:53 #sado:86 #salg:34 #sali:43 #scan:20 #scho:20 #scul:20
#sday:-37 #shal:19 #sibl:-22 #slep:26 #slow:32 #some:-24 #sorr:81 #spac:27 #stam:-26 #stoy:79 #tamo:-26 #tant:27
#tapo:19 #tard:69 #tare:-20 #tart:24 #tely:-19 #text:-21 #that:-31 #then:36 #ther:-29 #thin:-32 #thum:-24 #thur:-34
#ting:33 #tito:52 #toda:24 #tomo:-25 #took:27 #tora:28 #town:20 #traf:69 #trai:46 #tras:135 #tren:31 #ttle:22
#turn:36 #uard:18 #uart:47 #uede:-41 #uedo:-47 #uela:24 #uelt:47 #ugar:27 #uito:20 #umbs:-23 #unni:53 #unos:28
#urno:18 #ursd:-33 #urse:-25 #usca:20 #utos:32 #vamo:18 #vemo:-18 #veng:53 #vers:26 #very:39 #vier:-19 #ving:68
#vuel:57 #week:-36 #work:22 #wrec:24 #wron:23 %again_later:63 %again_later%agree:26 %again_later%bring:107
%again_later%call_off:44 %again_later%car_part:30 %again_later%do_it:30 %again_later%doubt:22 %again_later%leak:20
%again_later%lift:-22 %again_later%odometer:22 %again_later%on_way:63 %again_later%place:79 %again_later%question:63
%again_later%refuse:48 %again_later%wrong_one:29 %agree:-218 %agree%call_off:-19 %agree%how_long:39 %agree%on_way:-45
%agree%place:-20 %agree%refuse:18 %away:74 %away%call_off:-60 %away%fails:29 %away%how_long:25 %away%leak:20
%away%leave_me:21 %away%on_way:-42 %away%wrong_one:45 %bad:20 %bad%on_way:20 %bring:-18 %bring%call_off:43
%bring%leak:19 %bring%leave_me:-33 %bring%odometer:25 %bring%on_way:35 %bring%question:18 %bring%refuse:-45 %busy:63
%busy%how_long:27 %busy%leave_me:23 %busy%on_way:53 %busy%place:39 %call_off%car:30 %call_off%car_part:23
%call_off%fails:20 %call_off%lift:20 %call_off%on_way:82 %call_off%place:19 %call_off%question:60
%call_off%smoke_smell:25 %call_off%start_again:-34 %call_off%wrong_one:-23 %car:66 %car%family:42 %car%how_long:18
%car%lift:26 %car%on_way:22 %car%refuse:45 %car%wrong_one:19 %car_part:37 %car_part%place:-31 %do_it%on_way:19
%do_it%place:25 %do_it%question:31 %do_it%wrong_one:20 %elsewhere:21 %elsewhere%on_way:39 %elsewhere%wrong_one:20
%fails%start_again:25 %fails%wrong_one:24 %family:91 %family%how_long:26 %family%odometer:20 %family%on_way:24
%gone_car:35 %gone_car%on_way:42 %how_long:127 %how_long%odometer:20 %how_long%on_way:80 %how_long%place:32
%how_long%who:22 %leak:18 %leak%wrong_one:18 %leave_me%on_way:18 %leave_me%refuse:29 %lift%refuse:19 %message:-36
%message%on_way:-22 %money:-25 %odometer:25 %on_way:422 %on_way%phone:30 %on_way%place:89 %on_way%question:41
%on_way%refuse:-101 %on_way%shift_it:19 %on_way%start_again:31 %on_way%thanks:-25 %on_way%who:40 %on_way%wrong_one:49
%opening:-28 %phone%refuse:21 %place:153 %place%who:33 %place%wrong_one:52 %question:-61 %question%refuse:48
%refuse:-89 %shift_it:-87 %thanks:-27 %wrong_one:54 @?:-106 @confirm:266 @confirm_stop:-21 @confirm_thumbsup:-22
@day:-38 @nothing:86 @offers:-122 @reading:-43 @time:-90 @times:58 @walk_in:-99 ^_$:-44 ^_ahi:-90 ^_ando:44 ^_be:126
^_can:-27 ^_cancel:-19 ^_cant:-32 ^_coming:23 ^_como:-27 ^_estoy:27 ^_going:44 ^_got:-34 ^_gps:20 ^_had:26 ^_half:36
^_hay:39 ^_held:56 ^_hit:38 ^_how:-46 ^_hoy:-29 ^_i:-47 ^_ill:-27 ^_is:-57 ^_just:44 ^_llego:36 ^_me:-27 ^_mi:21
^_my:31 ^_no:-44 ^_ok:-24 ^_on:38 ^_podria:-28 ^_puedo:-28 ^_running:40 ^_si:-75 ^_still:-24 ^_stop:-23
^_thumbsup:-23 ^_took:18 ^_voy:81 ^_we:-19 ^_were:-21 ^_will:-37 ^_y:-62 ^_yep:-29 ^_yes:-58 a:36 a__late:39 a__si:18
a_bit:29 a_few:21 a_little:24 a_poder:-30 a_quarter:20 about:42 agarro:21 ahi:-166 ahi_$:20 ahi_estare:-38 ahi_le:-25
alarm:22 alcanzo:19 all:-40 alla:19 alla_$:31 ando:49 any:-22 apenas:34 apologies:22 are:-25 around:23 as:19
as__as:18 asi:-18 at:96 at_$:23 at_the:27 at_work:26 atrasado:48 away:49 away_$:41 back:-24 be:130 be__at:51
be__by:44 be__in:36 be_a:57 be_late:43 behind:36 behind_$:20 behind_the:-20 bit:29 blocking:23 bridge:34 buscando:20
but:33 by:80 by_$:51 by_a:28 camino:39 can:-26 cancel:-40 cant:-36 car:22 cerca:26 changing:18 cita:-28 cita_$:-26
come:-24 come_in:-19 coming_$:-32 como_llego:-39 con:52 con_los:37 day:-40 day_$:-25 de:54 delayed:27 dia:-34
dia_$:-22 do:-32 dog:19 doing:22 drop:19 drop_off:23 el:65 el_freeway:21 el_lugar:31 el_martes:-25 en:51
en__freeway:21 en__tarde:-45 en_camino:30 en_el:38 en_la:-31 en_pie:-19 es:-18 ese:-19 estamos:-26 estare:-27
estare_$:-23 estoy:80 estoy_ahi:41 every:34 every__light:35 every_red:35 ferry:21 few:31 freeway:22 friday:-18 fue:18
gas:22 gimme:22 give:34 give_me:20 going:42 going__be:57 going_to:44 good:-18 gps:21 had:46 had_to:46 half:70
half_past:21 have:-28 have_to:-28 hay:47 hay_un:27 heading:25 held:55 held__at:55 held_up:56 hit:36 hizo:32
hizo_tarde:18 hold:31 hold__spot:20 hold_my:28 hora:19 hora_$:27 hour:66 house:22 how:-50 how_late:-18 hoy:-43
hoy__la:-20 hoy_en:-20 i:-59 i__be:-21 i__there:-21 i_shall:19 i_wont:-25 if:18 ill__a:18 ill__there:-56 ill_be:-25
im:48 im__coming:-27 im__on:-21 im_not:-28 in_$:24 in__car:19 in__of:19 in__week:-20 in_the:-24 ir:-50 ir_$:-23
is__a:-18 is_it:-18 is_nuts:24 is_there:-29 is_up:42 it:-79 it_$:-36 jueves:-23 just:70 la__no:41 la_cita:-18
la_tarde:-83 las:23 las_$:-27 las_llaves:18 las_si:18 late:101 late__the:-27 late_in:-26 late_sorry:23 later:-18
le:-24 leaving:49 leaving_the:30 left:42 left_$:47 light:27 like:23 like_$:18 little:23 llaves:18 llegando:22
llegar:-28 llego_$:-40 llego_en:26 lo:-39 los:35 los_ninos:33 lugar:27 manana:-23 martes:-26 martes_$:-20 mas:-21
mas_$:67 mas__a:-21 mas_tarde:-106 me:92 me_$:-18 me__con:31 me__el:41 me__la:21 me__tarde:25 me_agarro:21 me_fue:23
me_hizo:34 me_if:19 me_late:-103 media:49 media_hora:27 meeting:22 mejor:-21 miles:18 min:264 min_$:106 min_late:32
min_tarde:18 mins:68 minutos:32 minutos_$:20 more:21 mph:22 my:65 my_spot:21 ninos:33 ninos_$:33 no__a:-42
no_alcanzo:19 no_llego:-24 no_me:53 no_voy:-104 nomas:35 nos_vemos:-18 not:-49 not_coming:-50 now:136 now_$:71
nuts:24 of_me:29 off:35 ok_$:19 on_$:-65 on__road:23 on__way:24 on_the:75 out:76 out_$:45 over:65 overslept:26
para:21 para_alla:43 para_el:-18 past:59 past_$:40 perdon:18 pero:62 pie:-19 pie_$:-18 poder:-30 podria:-28
podria_ser:-28 poquito:21 por:-31 puede:-45 puedo:-37 puedo_ir:-20 quarter:31 ran:20 ran_over:21 red:28 red_light:34
retrasado:32 road:40 running:52 running_late:31 salgo:34 school:20 se:56 se__fue:19 se__hizo:34 se__mas:-22 se_me:51
se_puede:-32 ser:-26 ser_mas:-32 set_$:-20 shall:19 shall_be:20 si:-54 si__estare:-19 si_ahi:-22 si_voy:-22 sin:-20
slow:32 so:27 sorry:81 spot:19 start:25 still_on:-30 stop:-28 tantito:27 tarde_$:-50 tardo:23 ten:36 that:-31 the:88
the__now:81 the_car:27 the_house:22 the_road:30 the_week:-21 the_wrong:20 then:36 there:-22 there_$:-149
there__traffic:20 there_at:55 there_by:51 there_in:45 thumbsup:-23 thumbsup_$:-23 thursday:-30 thursday_$:-20 to:36
to__late:26 to_be:55 todavia:26 todo:-23 tomorrow:-24 too:-23 took:27 traffic:38 traffic_is:30 trafico:26
trafico_$:23 train:26 tren:31 turno:18 ugh:25 un:68 un__en:26 un_poquito:19 unos:28 up:90 up_$:22 up__the:29 up_at:53
vamos:18 vemos:-18 vengo:53 viernes:-19 voy:45 voy_$:-50 voy__alla:25 voy__camino:22 voy__poder:-30 voy__y:18
voy_a:-88 voy_en:20 voy_para:20 voy_saliendo:20 voy_tarde:42 vuelta:41 was:23 way_to:-25 we:-44 week:-32 week_$:-28
will__there:-45 will_be:-29 wont_be:-36 work:25 wrong:23 y_$:-61 ya:91 ya__voy:-39 ya_estoy:33 ya_no:-21 ya_voy:93
yep:-33 yes:-61 you:-46 you_there:-25
"""
