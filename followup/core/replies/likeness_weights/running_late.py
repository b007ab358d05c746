"""What speaks for and against `running_late`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "running_late"
BIAS = -216
WEIGHTS = """\
#abaj:-22 #abou:44 #acto:27 #adin:36 #affi:46 #afic:31 #afte:-32 #agar:45 #agua:28 #ahea:23 #akes:-25 #alar:47
#algo:34 #alla:32 #alle:28 #almo:22 #ambi:-40 #amin:57 #amos:-41 #anan:-30 #anca:22 #ance:-51 #ando:144 #anni:-22
#anti:35 #apen:46 #apol:25 #apon:27 #ardo:45 #arli:-25 #arly:-23 #arou:24 #arro:50 #asad:138 #atel:-29 #ator:38
#atra:137 #ause:35 #aves:37 #avia:32 #avin:51 #away:67 #ayed:30 #baby:23 #back:-33 #behi:38 #bloc:41 #bout:51
#brak:-28 #brid:71 #bsup:-34 #camb:-38 #cami:53 #canc:-70 #cand:22 #cant:-35 #carr:24 #caus:35 #cerc:40 #chan:46
#choo:32 #cita:-36 #cito:38 #ckin:38 #come:-40 #comi:-22 #cour:-38 #cros:24 #ctor:47 #cuan:-26 #cuel:26 #dame:42
#davi:32 #deja:25 #dela:29 #demo:63 #dent:27 #desp:59 #ding:35 #doin:28 #dont:31 #draw:27 #dria:-49 #drop:33 #eadi:36
#earl:-48 #eavi:52 #ecit:22 #edia:63 #eeti:25 #eewa:35 #egan:22 #ehin:38 #ejor:-31 #elay:30 #elta:49 #emor:71
#emos:-23 #enas:43 #ende:-25 #endo:28 #engo:87 #enme:63 #erca:37 #erdi:39 #erdo:29 #erne:-23 #erno:-28 #erry:24
#ersl:30 #escu:23 #espa:32 #espu:26 #esta:-82 #esto:120 #etin:25 #etra:61 #etti:27 #even:23 #ever:73 #eves:-26
#eway:39 #fast:23 #ferr:24 #ffic:54 #fico:31 #find:23 #firm:-47 #forg:31 #free:28 #frid:-30 #from:-23 #fter:-32
#gand:24 #gare:27 #garr:48 #ghwa:29 #gies:25 #gimm:42 #give:58 #goin:29 #guan:27 #half:87 #hall:34 #hanc:24 #hang:36
#have:-38 #head:59 #held:73 #help:-26 #high:25 #hind:38 #hing:-38 #hizo:40 #hold:34 #hool:32 #houl:28 #hour:75
#hous:23 #humb:-34 #hurs:-44 #hway:29 #ible:-30 #iday:-23 #idge:72 #iern:-23 #ight:84 #ighw:29 #igue:-26 #imme:42
#inos:49 #inut:61 #irme:-22 #itch:-23 #ittl:31 #jaja:27 #juev:-26 #just:102 #king:36 #land:24 #lann:-27 #larg:27
#larm:31 #late:41 #lave:34 #laye:30 #leav:44 #left:59 #lego:-38 #lept:30 #lier:-25 #ligh:52 #like:37 #litt:31
#llav:34 #lleg:-47 #llet:28 #lluv:24 #lmos:22 #lock:46 #logi:25 #lost:27 #luga:42 #luvi:24 #mana:-42 #mart:-37
#mbia:-33 #mbsu:-34 #medi:61 #meet:25 #mejo:-31 #mile:24 #mino:44 #mins:116 #minu:61 #more:28 #moro:54 #morr:-36
#move:-22 #movi:31 #nada:22 #nana:-31 #ncel:-70 #nday:-22 #nigh:-23 #nino:62 #nnin:28 #noma:39 #ntit:44 #nuto:23
#nuts:36 #ocki:39 #odav:32 #oder:-33 #odri:-49 #ogie:25 #oing:57 #olan:25 #olog:25 #omas:39 #omin:-23 #omor:-36
#oque:29 #oqui:23 #orad:42 #orit:23 #orre:-25 #orri:31 #orro:-36 #orry:83 #ours:-44 #ouse:23 #over:104 #ovin:31
#paci:31 #pasa:22 #past:86 #pena:52 #perd:80 #pero:70 #ping:22 #plan:-37 #pode:-46 #podr:-53 #polo:25 #poqu:24
#pued:-106 #pues:24 #quar:50 #quit:32 #ract:27 #rado:33 #raff:55 #rafi:31 #rain:23 #rake:-28 #rasa:134 #rase:56
#rdec:22 #rdid:22 #rdon:39 #reck:23 #reew:35 #retr:58 #rida:-25 #ridg:65 #rien:44 #rita:23 #rlie:-25 #rnes:-23
#rnoo:-28 #road:55 #roll:25 #rong:41 #ross:24 #rque:24 #rrec:-25 #rrie:37 #rrow:-36 #rsda:-42 #rsle:30 #rter:50
#rtes:-40 #runn:52 #sado:117 #salg:53 #sali:30 #scan:22 #scho:32 #scue:24 #sday:-38 #shal:34 #shou:28 #sibl:-30
#sigu:-26 #slep:30 #slow:48 #smok:-23 #sorr:83 #spac:32 #spot:23 #spue:26 #stam:-42 #stop:-30 #stoy:108 #stuc:-28
#swit:-23 #tamo:-42 #tant:33 #tapo:33 #tard:109 #tart:35 #tely:-32 #that:-38 #then:43 #thin:-39 #thum:-35 #thur:-44
#ting:45 #tito:63 #toda:28 #tomo:-36 #took:46 #tora:39 #town:23 #trac:37 #traf:86 #trai:59 #tras:193 #tren:43
#ttin:28 #ttle:29 #tuck:-28 #turn:35 #uart:67 #uede:-61 #uedo:-59 #uela:36 #uelt:49 #ugar:42 #uito:23 #umbs:-34
#unni:52 #unos:46 #urno:24 #ursd:-42 #urse:-35 #usca:22 #utos:23 #uvia:24 #veng:83 #vers:29 #very:55 #ving:91
#vola:26 #vuel:60 #wall:27 #week:-58 #were:-32 #witc:-23 #work:28 #wrec:27 #wron:41 %again_later:47
%again_later%agree:38 %again_later%bring:147 %again_later%call_off:56 %again_later%car_part:40 %again_later%do_it:27
%again_later%doubt:24 %again_later%elsewhere:27 %again_later%lift:-27 %again_later%on_way:55 %again_later%place:111
%again_later%question:83 %again_later%refuse:78 %again_later%start_again:-28 %again_later%wrong_one:22 %agree:-170
%agree%bring:-24 %agree%call_off:-33 %agree%how_long:54 %agree%refuse:42 %agree%wrong_one:35 %away:110
%away%call_off:-82 %away%elsewhere:25 %away%fails:32 %away%how_long:30 %away%leak:26 %away%leave_me:26
%away%on_way:-38 %away%phone:25 %away%place:-28 %away%wrong_one:65 %bad:38 %bad%on_way:31 %bring:-44
%bring%call_off:54 %bring%leak:23 %bring%leave_me:-60 %bring%odometer:41 %bring%on_way:32 %bring%question:36 %busy:76
%busy%how_long:34 %busy%leave_me:25 %busy%on_way:65 %busy%place:34 %call_off:37 %call_off%car:35 %call_off%fails:41
%call_off%lift:31 %call_off%on_way:61 %call_off%question:68 %call_off%smoke_smell:28 %call_off%start_again:-45
%call_off%wrong_one:-37 %car:84 %car%family:47 %car%how_long:24 %car%lift:27 %car%on_way:32 %car%refuse:49
%car_part:69 %car_part%place:-44 %car_part%refuse:50 %car_part%wrong_one:41 %do_it%on_way:29 %do_it%place:45
%do_it%question:35 %do_it%wrong_one:31 %doubt%on_way:27 %doubt%shift_it:26 %elsewhere:32 %elsewhere%on_way:50
%elsewhere%wrong_one:25 %fails:32 %fails%on_way:-26 %fails%start_again:36 %fails%wrong_one:22 %family:140
%family%how_long:34 %family%odometer:30 %family%on_way:32 %gone_car:35 %gone_car%on_way:35 %how_long:117
%how_long%odometer:23 %how_long%on_way:56 %how_long%opening:-23 %how_long%place:23 %how_long%who:22
%leak%wrong_one:23 %leave_me%on_way:22 %leave_me%refuse:36 %lift:32 %lift%refuse:35 %money%place:24 %odometer:46
%odometer%place:-28 %on_way:335 %on_way%opening:-30 %on_way%phone:41 %on_way%place:59 %on_way%question:60
%on_way%refuse:-51 %on_way%shift_it:34 %on_way%start_again:32 %on_way%who:41 %on_way%wrong_one:101 %opening:-45
%phone%refuse:34 %place:141 %place%question:-27 %place%who:36 %place%wrong_one:61 %question:-66 %question%refuse:73
%refuse%wrong_one:56 %shift_it:-82 %wrong_one:101 @?:-124 @confirm:271 @confirm_:-87 @confirm_stop:-30
@confirm_thumbsup:-33 @day:-48 @nothing:129 @offers:-151 @reading:-43 @time:-103 @times:86 @walk_in:-159 ^_$:-89
^_ahi:-134 ^_ando:55 ^_any:-27 ^_asi:-24 ^_be:184 ^_can:-32 ^_cant:-39 ^_coming:34 ^_como:-31 ^_en:-29 ^_estoy:46
^_going:44 ^_got:-51 ^_gps:33 ^_had:32 ^_half:48 ^_hay:50 ^_held:75 ^_help:-25 ^_hit:55 ^_how:-50 ^_hoy:-35 ^_i:-48
^_ill:-54 ^_is:-78 ^_it:-27 ^_just:61 ^_llego:31 ^_me:-59 ^_mi:24 ^_min:77 ^_my:43 ^_no:-35 ^_ok:-27 ^_on:45
^_perdon:31 ^_podria:-43 ^_puedo:-39 ^_que:-23 ^_running:42 ^_se:-23 ^_see:-23 ^_si:-91 ^_still:-32 ^_stop:-36
^_that:-23 ^_thumbsup:-34 ^_too:-33 ^_took:24 ^_traffic:25 ^_vengo:34 ^_voy:107 ^_we:-26 ^_were:-35 ^_will:-65
^_y:-86 ^_ya:-39 ^_yep:-35 ^_yes:-47 ^_you:-34 a:33 a__late:55 a_bit:39 a_few:29 a_las:-25 a_little:27 a_poder:-33
a_quarter:22 about:44 afternoon:-28 agarro:31 agarro_el:22 ahead:23 ahi:-247 ahi_$:36 ahi_el:-25 ahi_estare:-43
ahi_estoy:-34 ahi_le:-28 alarm:35 all:-52 all_set:-22 alla:35 alla_$:47 almost:22 an:25 ando:63 ando__en:24 any:-34
any__to:-26 apenas:46 apologies:25 are:-29 around:24 as__as:25 asi:-22 asi_es:-23 at:139 at_$:39 at_the:34 at_work:33
atrasado:62 away:67 away_$:55 back:-33 back_out:-23 be:198 be__at:72 be__by:69 be__in:48 be_a:70 be_coming:-22
be_late:62 be_there:44 behind:38 behind_the:-30 bit:45 blocking:30 bridge:46 bus:46 buscando:22 but:70 by:106 by_$:76
by_a:32 c:-82 camino:44 can:-35 cancel:-45 cant:-35 car:22 cerca:40 cerca_$:45 chance:24 chance_de:29 cita:-35
cita_$:-31 come:-40 come_in:-30 coming:-22 coming_$:-61 coming_just:23 como_llego:-55 con:58 con_los:54 count:-22
dame:38 day:-55 day_$:-32 de:76 de__escuela:22 de__hora:23 de_la:30 delayed:30 despues:28 dia:-49 dia_$:-32 do:-41
doing:28 dont:31 dont__my:24 dont_give:24 door:24 drop:24 drop_off:32 earlier:-25 earlier_$:-23 el:90 el_bus:22
el_freeway:34 el_lugar:38 el_martes:-35 el_tapon:27 en:51 en__freeway:30 en__tarde:-58 en_camino:35 en_el:49
en_la:-49 en_pie:-34 es:-33 escuela:26 ese:-28 ese_dia:-25 estamos:-42 estare:-29 estare_$:-27 estoy:108 estoy_$:-23
estoy_a:25 estoy_ahi:55 estoy_en:22 every:51 every__light:53 every_red:53 fast:24 ferry:24 few:44 find:23 freeway:35
freeway_$:23 friday:-22 from:-23 gas:33 gimme:42 gimme_a:22 give:40 give_me:23 going:29 going__be:53 going_to:30
got:-26 got_to:-29 gps:40 had:78 had_to:72 half:90 half_past:26 have:-37 have_to:-39 hay:59 hay_un:29 heading:36
held:73 held__at:73 held_up:75 help:-26 help__stuck:-25 help_im:-25 highway:29 hit:52 hizo:40 hizo_tarde:24 hold:35
hold__spot:22 hold_my:31 hora:30 hora_$:35 hour:84 house:23 how:-55 hoy:-55 hoy__la:-25 hoy_en:-25 i_know:24
i_shall:34 i_wont:-31 ill:-26 ill__a:23 ill__there:-69 ill_be:-31 im:49 im__coming:-38 im__on:-29 im_late:38
im_not:-45 im_stuck:-24 im_there:24 in_$:27 in__week:-36 in_the:-50 ir:-63 ir_$:-27 is:23 is__a:-24 is_nuts:36
is_there:-37 is_up:58 it:-94 it_$:-48 jueves:-26 just:102 kid:25 la__no:46 la_cita:-22 la_escuela:26 la_tarde:-111
las:25 las_$:-39 las_llaves:34 late:100 late_$:-25 late__a:22 late__the:-42 late_afternoon:-23 late_in:-48
late_sorry:28 lately:-29 lately_$:-27 later:-27 le:-32 leaving:52 leaving_now:26 leaving_the:31 left:59 left_$:66
light:42 like:37 like_$:28 little:31 little_late:33 llaves:34 llegando:24 llegar:-46 llego:-38 llego_$:-83
llego_en:33 lluvia:24 lo:-57 los:64 los_ninos:49 lost:27 lugar:42 manana:-30 martes:-37 martes_$:-30 mas:-36
mas_$:103 mas__a:-30 mas_tarde:-158 me:113 me__con:47 me__el:46 me__la:29 me__tarde:31 me__un:23 me_agarro:31
me_fue:26 me_hizo:40 me_la:-25 me_late:-173 me_voy:-23 media:65 media_hora:36 meeting:25 mejor:-31 mero:24 mi:22
mi__ya:25 min:373 min_$:148 min_late:29 min_tarde:27 mins:116 minutos:23 more:35 moving:31 mph:24 mucho:22 mueve:22
my:120 my_spot:26 my_wallet:28 my_way:25 nada:22 ninos:49 ninos_$:49 no__a:-53 no_llego:-33 no_me:66 no_se:23
no_voy:-143 nomas:39 not:-56 not_coming:-74 now:172 now_$:84 nuts:36 of:42 of_me:38 off:35 ok_$:28 on_$:-103
on__road:32 on_it:-23 on_the:83 out:108 out_$:60 out__door:31 out_the:25 over:83 overslept:30 para_alla:62
para_el:-24 past:86 past_$:48 perdon:40 pero:85 pero_no:31 pie:-35 pie_$:-31 planning:-22 planning__it:-22
planning_on:-22 poder:-33 podria:-44 podria_ser:-43 poquito:24 por:-29 puede:-64 puedo:-47 puedo_ir:-30 quarter:50
ran:24 ran_over:24 red:45 red_light:52 retrasado:48 road:49 running:50 running_late:35 salgo:53 school:32 se:67
se__fue:22 se__hizo:40 se__mas:-27 se_me:58 se_mueve:22 se_puede:-47 ser:-42 ser_mas:-49 set:-26 set_$:-29 shall:34
shall_be:34 should:24 si:-58 si_ahi:-22 si_voy:-42 sigue:-22 sin:-39 slow:48 so:39 so_i:34 sorry:83 spot:25 start:37
still_on:-40 stop:-45 stop_$:-23 stuck:-28 stuck_on:-25 switch:-22 take:23 tantito:36 tapon:27 tarde_$:-67
tardecito:23 tardecito_$:23 tardo:45 ten:49 that:-38 the:59 the__now:89 the_car:33 the_door:26 the_highway:30
the_house:24 the_road:40 the_way:-37 the_week:-38 the_wrong:32 then:43 there_$:-164 there__traffic:25 there_at:76
there_by:77 there_in:59 thumbsup:-34 thumbsup_$:-34 thursday:-39 thursday_$:-24 to:38 to__in:-27 to__late:27
to__the:25 to_back:-23 to_be:47 to_come:-26 todavia:32 todo:-27 tomorrow:-35 too:-39 too_late:-31 took:46 tractor:28
traffic:49 traffic_is:42 trafico:31 trafico_$:27 train:31 tren:43 tren_$:28 turno:24 ugh:28 un:85 un__en:27 unos:46
up:117 up__the:28 up_at:71 vengo:83 viernes:-23 volando:26 voy:46 voy_$:-88 voy__alla:41 voy__camino:22
voy__poder:-33 voy__y:25 voy_a:-128 voy_para:33 voy_saliendo:23 voy_tarde:87 vuelta:43 wallet:28 way:-54 way_$:-30
way_to:-40 we:-55 week:-52 week_$:-48 were:-32 will__there:-64 will_be:-47 wont_be:-40 work:31 wreck:27 wrong:41 y:36
y_$:-85 ya:116 ya__para:33 ya__voy:-52 ya_estoy:42 ya_me:-23 ya_no:-39 ya_voy:147 yep:-40 yes:-49 you:-42
you_there:-25
"""
