"""What speaks for and against `running_late`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "running_late"
BIAS = -232
WEIGHTS = """\
#abou:52 #acio:22 #adin:30 #affi:45 #afic:33 #agar:49 #agua:27 #alar:45 #alca:23 #algo:26 #alla:24 #ambi:-38 #amin:60
#amos:-37 #anan:-27 #ance:-66 #ando:137 #ante:27 #anti:33 #anzo:24 #apen:42 #apol:28 #ardo:27 #arli:-23 #arou:29
#arro:44 #asad:123 #atel:-22 #ator:38 #atra:125 #aves:24 #avia:33 #avin:59 #away:66 #ayed:32 #back:-32 #behi:39
#bloc:33 #bout:61 #brak:-22 #brid:57 #bsup:-30 #buen:-22 #busc:23 #camb:-36 #cami:57 #canc:-74 #cand:24 #cant:-44
#canz:23 #carr:22 #cela:-22 #cerc:39 #chan:41 #choo:25 #cita:-34 #cito:35 #ckin:44 #come:-32 #corr:25 #ctor:38
#cuan:-24 #culp:24 #davi:33 #dela:32 #demo:60 #desp:52 #ding:24 #disc:24 #doct:22 #doin:27 #dria:-46 #drop:33
#eadi:30 #earl:-36 #eavi:60 #edia:57 #eeti:27 #eewa:29 #egan:26 #ehin:39 #ejor:-26 #elay:33 #elta:58 #emor:70
#emos:-24 #enas:40 #endo:44 #engo:71 #enme:70 #erca:36 #erdi:29 #erne:-23 #erry:25 #ersl:34 #espa:34 #esta:-82
#esto:99 #etin:27 #etra:51 #etti:25 #ever:64 #eves:-28 #eway:35 #ferr:25 #ffic:55 #fico:33 #firm:-37 #forg:23
#free:24 #frid:-27 #gand:27 #gare:32 #garr:49 #gies:28 #gimm:27 #give:51 #goin:47 #good:-22 #guan:25 #guar:22
#half:93 #hall:24 #hang:34 #have:-36 #head:38 #held:73 #help:-22 #here:-29 #hind:39 #hing:-39 #hizo:41 #hold:38
#hool:25 #hour:78 #hous:28 #humb:-30 #hurs:-43 #ible:-24 #iday:-22 #idge:54 #iend:29 #iern:-23 #ight:82 #iles:22
#imme:27 #inos:48 #inut:79 #iscu:25 #itos:22 #ittl:34 #jaja:31 #juev:-28 #just:98 #king:49 #lann:-25 #larg:26
#larm:27 #late:53 #lave:22 #laye:33 #lcan:23 #leav:57 #left:61 #lega:30 #lept:34 #lier:-22 #ligh:43 #like:29 #litt:34
#llav:22 #lock:33 #logi:28 #luga:34 #mana:-38 #mart:-36 #mbia:-26 #mbsu:-30 #medi:55 #meet:27 #mejo:-26 #mile:22
#mino:46 #mins:94 #minu:79 #moro:52 #morr:-32 #move:-23 #nana:-28 #ncel:-74 #ning:27 #nino:57 #nnin:38 #noma:44
#ntit:42 #nuto:39 #nuts:34 #ocki:45 #octo:22 #odav:33 #oder:-38 #odri:-46 #ogie:28 #oing:73 #olog:28 #omas:44
#omin:-22 #omor:-32 #oque:31 #oqui:25 #orad:41 #orit:23 #orri:30 #orro:-32 #orry:91 #ound:26 #ours:-46 #ouse:28
#over:108 #paci:34 #para:29 #past:73 #pena:50 #perd:55 #pero:67 #ping:26 #plan:-30 #pode:-52 #podr:-51 #polo:28
#poqu:26 #pued:-101 #quar:39 #quit:38 #rado:37 #raff:55 #rafi:33 #raig:23 #rain:32 #rake:-22 #rasa:113 #rase:55
#rdon:25 #reck:26 #reew:29 #retr:47 #rida:-25 #ridg:54 #rien:39 #rita:23 #rlie:-23 #rnes:-23 #road:56 #rong:28
#roun:26 #rque:25 #rrie:31 #rrow:-32 #rsda:-41 #rsle:34 #rter:39 #rtes:-36 #runn:59 #sado:107 #salg:42 #sali:51
#scan:24 #scho:25 #scul:25 #sday:-46 #shal:24 #sibl:-28 #slep:34 #slow:41 #some:-30 #sorr:91 #spac:34 #spot:22
#stam:-41 #stoy:100 #tamo:-41 #tant:34 #tapo:23 #tard:74 #tare:-28 #tart:32 #tely:-27 #text:-26 #that:-37 #then:44
#thin:-40 #thum:-31 #thur:-43 #ting:41 #tito:64 #toda:30 #tomo:-32 #took:34 #tora:39 #town:25 #traf:88 #trai:61
#tras:173 #tren:40 #ttle:32 #turn:45 #uard:22 #uart:58 #uede:-54 #uedo:-61 #uela:29 #uelt:58 #ugar:34 #uito:25
#umbs:-30 #unni:59 #unos:34 #urno:22 #ursd:-41 #urse:-36 #usca:24 #utos:39 #vamo:22 #vemo:-23 #veng:66 #vers:33
#very:50 #vier:-23 #ving:84 #vuel:70 #week:-48 #work:30 #wrec:29 #wron:28 %again_later:72 %again_later%agree:35
%again_later%bring:132 %again_later%call_off:46 %again_later%car_part:37 %again_later%do_it:41 %again_later%doubt:27
%again_later%leak:24 %again_later%lift:-29 %again_later%odometer:28 %again_later%on_way:67 %again_later%place:94
%again_later%question:81 %again_later%refuse:64 %again_later%start_again:-22 %again_later%wrong_one:36 %agree:-249
%agree%call_off:-24 %agree%how_long:55 %agree%on_way:-54 %agree%place:-22 %agree%refuse:26 %away:94
%away%call_off:-79 %away%elsewhere:22 %away%fails:36 %away%how_long:31 %away%leak:25 %away%leave_me:28
%away%on_way:-55 %away%wrong_one:56 %bad:30 %bad%on_way:29 %bring:-28 %bring%call_off:49 %bring%leak:24
%bring%leave_me:-46 %bring%odometer:32 %bring%on_way:35 %bring%question:25 %bring%refuse:-51 %busy:82
%busy%how_long:34 %busy%leave_me:29 %busy%on_way:72 %busy%place:48 %call_off%car:39 %call_off%car_part:27
%call_off%fails:26 %call_off%lift:28 %call_off%on_way:93 %call_off%place:23 %call_off%question:78
%call_off%smoke_smell:31 %call_off%start_again:-44 %call_off%wrong_one:-27 %car:84 %car%family:52 %car%how_long:22
%car%lift:32 %car%on_way:28 %car%refuse:58 %car%wrong_one:24 %car_part:47 %car_part%place:-41 %do_it%on_way:27
%do_it%place:30 %do_it%question:40 %do_it%wrong_one:26 %elsewhere:30 %elsewhere%on_way:49 %elsewhere%wrong_one:25
%fails%start_again:33 %fails%wrong_one:29 %family:123 %family%how_long:32 %family%odometer:26 %family%on_way:32
%gone_car:46 %gone_car%on_way:51 %how_long:157 %how_long%lift:-22 %how_long%odometer:25 %how_long%on_way:92
%how_long%place:37 %how_long%who:25 %leak:23 %leak%wrong_one:22 %leave_me%on_way:24 %leave_me%refuse:38 %lift:25
%lift%refuse:24 %message:-42 %message%on_way:-27 %money:-23 %odometer:32 %odometer%place:-24 %on_way:435
%on_way%phone:38 %on_way%place:84 %on_way%question:48 %on_way%refuse:-119 %on_way%start_again:41 %on_way%thanks:-30
%on_way%who:44 %on_way%wrong_one:62 %opening:-32 %phone%refuse:27 %place:171 %place%who:35 %place%wrong_one:64
%question:-66 %question%refuse:64 %refuse:-85 %shift_it:-103 %thanks:-30 %wrong_one:72 @?:-125 @confirm:295
@confirm_stop:-27 @confirm_thumbsup:-30 @day:-43 @nothing:107 @offers:-150 @reading:-56 @time:-105 @times:80
@walk_in:-120 ^_$:-56 ^_ahi:-122 ^_ando:58 ^_any:-24 ^_be:169 ^_can:-32 ^_cancel:-22 ^_cant:-40 ^_coming:29
^_como:-39 ^_estoy:29 ^_going:51 ^_got:-43 ^_gps:24 ^_had:32 ^_half:50 ^_hay:51 ^_held:75 ^_hit:52 ^_how:-58
^_hoy:-39 ^_i:-57 ^_ill:-36 ^_is:-71 ^_just:63 ^_late:-22 ^_llego:42 ^_me:-40 ^_mi:26 ^_my:37 ^_no:-44 ^_ok:-27
^_on:46 ^_perdon:24 ^_podria:-40 ^_puedo:-38 ^_running:45 ^_see:-23 ^_si:-97 ^_still:-33 ^_stop:-31 ^_thumbsup:-30
^_too:-25 ^_took:22 ^_traffic:24 ^_voy:92 ^_we:-22 ^_were:-28 ^_will:-53 ^_y:-87 ^_yep:-37 ^_yes:-71 a:45 a__late:53
a__si:22 a_bit:37 a_few:25 a_little:34 a_poder:-38 a_quarter:25 about:52 agarro:28 ahi:-218 ahi_$:26 ahi__vemos:-22
ahi_el:-22 ahi_estare:-50 ahi_le:-30 ahi_nos:-22 alarm:27 alcanzo:24 all:-51 alla:26 alla_$:41 ando:65 any:-29
apenas:42 apologies:28 are:-28 around:29 as:25 as__as:23 asi:-22 at:123 at_$:34 at_the:33 at_work:36 atrasado:61
away:66 away_$:56 back:-32 back_out:-22 be:168 be__at:70 be__by:64 be__in:49 be_a:75 be_late:51 be_there:23 behind:39
behind_$:22 behind_the:-25 bit:37 blocking:31 bridge:41 buscando:24 but:42 by:111 by_$:74 by_a:35 camino:46 can:-29
cancel:-47 cant:-44 car:25 cerca:39 changing:22 cita:-32 cita_$:-31 come:-32 come_in:-26 coming_$:-42 como_llego:-58
con:71 con_los:53 day:-52 day_$:-33 de:74 delayed:33 dia:-42 dia_$:-29 do:-37 dog:23 doing:27 drop:23 drop_off:28
earlier:-22 el:81 el_freeway:28 el_lugar:38 el_martes:-35 en:58 en__freeway:28 en__tarde:-58 en_camino:35 en_el:47
en_la:-41 en_pie:-24 es:-22 ese:-26 ese_dia:-22 estamos:-41 estare:-36 estare_$:-31 estoy:100 estoy_ahi:51 every:45
every__light:45 every_red:45 ferry:25 few:37 freeway:29 fue:23 gas:26 gimme:27 give:42 give_me:25 going:47
going__be:65 going_to:49 good:-22 got_to:-23 gps:25 had:58 had_to:57 half:93 half_past:26 have:-36 have_to:-38 hay:59
hay_un:32 heading:30 held:73 held__at:73 held_up:75 help:-22 hit:50 hizo:41 hizo_tarde:24 hold:38 hold__spot:24
hold_my:35 hora:23 hora_$:33 hour:87 house:28 how:-62 how_late:-22 hoy:-55 hoy__la:-28 hoy_en:-28 i:-67 i__be:-29
i__there:-28 i_shall:24 i_wont:-32 if:23 ill__a:27 ill__there:-75 ill_be:-32 im:52 im__coming:-37 im__on:-30
im_not:-38 in_$:35 in__car:24 in__of:23 in__week:-29 in_the:-35 ir:-65 ir_$:-29 is__a:-22 is_it:-24 is_nuts:34
is_there:-36 is_up:52 it:-93 it_$:-45 jueves:-28 just:98 la__no:51 la_tarde:-104 las:26 las_$:-39 las_llaves:22
las_si:22 late:101 late__the:-39 late_in:-39 late_sorry:27 lately:-22 later:-23 le:-28 leaving:60 leaving_the:38
left:61 left_$:67 light:33 like:29 like_$:22 little:34 llaves:22 llegando:27 llegar:-38 llego_$:-62 llego_en:31
lo:-43 los:50 los_ninos:48 lugar:34 manana:-27 martes:-36 martes_$:-29 mas:-35 mas_$:85 mas__a:-31 mas_tarde:-143
me:112 me_$:-28 me__con:46 me__el:52 me__la:26 me__tarde:32 me_agarro:28 me_fue:28 me_hizo:44 me_if:23 me_late:-145
media:60 media_hora:33 meeting:27 mejor:-26 mil:-23 miles:23 min:340 min_$:139 min_late:38 min_tarde:24 mins:94
minutos:39 minutos_$:23 more:25 mph:27 my:86 my_spot:26 ninos:48 ninos_$:48 no__a:-51 no_alcanzo:24 no_llego:-28
no_me:66 no_voy:-129 nomas:44 nos_vemos:-23 not:-61 not_coming:-65 now:169 now_$:88 nuts:34 of_me:36 off:44 ok_$:30
on_$:-87 on__road:28 on__way:26 on_the:91 out:94 out_$:57 over:82 overslept:34 para:27 para_alla:56 para_el:-26
past:73 past_$:50 perdon:25 pero:77 pie:-24 pie_$:-24 poder:-38 podria:-41 podria_ser:-40 poquito:26 por:-34
puede:-59 puedo:-48 puedo_ir:-27 quarter:39 ran:25 ran_over:26 red:37 red_light:44 retrasado:38 road:48 running:58
running_late:36 salgo:42 school:25 se:68 se__fue:24 se__hizo:44 se__mas:-32 se_me:62 se_puede:-43 ser:-37 ser_mas:-45
set:-22 set_$:-27 shall:24 shall_be:24 si:-68 si__estare:-25 si_ahi:-29 si_voy:-33 sin:-25 slow:41 so:35 sorry:91
spot:24 start:34 still_on:-40 stop:-37 stop_$:-22 tantito:34 tarde_$:-67 tardo:27 ten:44 that:-37 the:102
the__now:101 the_car:31 the_house:29 the_road:38 the_week:-30 the_wrong:25 then:44 there_$:-197 there__traffic:25
there_at:74 there_by:75 there_in:59 thumbsup:-30 thumbsup_$:-30 thursday:-38 thursday_$:-26 to:37 to__in:-23
to__late:31 to_be:63 todavia:33 todo:-27 tomorrow:-31 too:-32 too_late:-22 took:34 traffic:49 traffic_is:40
trafico:33 trafico_$:30 train:36 tren:40 tren_$:23 turn:22 turno:22 ugh:30 un:83 un__en:31 un_poquito:23 unos:34
up:115 up_$:25 up__the:36 up_at:69 vamos:22 vemos:-23 vengo:66 viernes:-23 voy:49 voy_$:-65 voy__alla:34
voy__camino:26 voy__poder:-38 voy__y:23 voy_a:-112 voy_en:24 voy_para:28 voy_saliendo:23 voy_tarde:50 vuelta:50
was:30 way:-28 way_to:-34 we:-53 week:-43 week_$:-39 will__there:-63 will_be:-44 wont_be:-44 work:34 wrong:28 y_$:-86
ya:118 ya__voy:-49 ya_estoy:48 ya_no:-26 ya_voy:120 yep:-42 yes:-74 you:-52 you_there:-31
"""
