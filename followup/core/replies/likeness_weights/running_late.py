"""What speaks for and against `running_late`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "running_late"
BIAS = -264
WEIGHTS = """\
#abou:61 #acci:31 #acto:32 #adin:40 #affi:49 #afic:35 #afte:-36 #afue:-29 #agar:48 #agua:32 #ahea:27 #akes:-27
#alar:55 #alca:25 #algo:39 #alla:36 #alle:37 #ally:27 #almo:32 #ambi:-49 #amin:60 #amos:-47 #anan:-33 #anca:25
#ance:-70 #ando:167 #anti:39 #anzo:26 #apen:54 #apol:28 #apon:30 #arad:26 #ardo:52 #arli:-25 #arly:-25 #arou:28
#arro:54 #asad:165 #atel:-29 #ator:40 #atra:146 #ause:39 #aves:43 #avia:36 #avin:67 #away:73 #ayed:36 #baby:27
#back:-39 #behi:47 #bloc:46 #bout:61 #brak:-31 #brid:84 #bsup:-35 #busc:25 #camb:-47 #cami:55 #canc:-92 #cand:26
#cant:-50 #canz:25 #carr:28 #caus:39 #ccid:33 #cela:-26 #cerc:41 #chan:55 #choo:37 #cide:33 #cita:-46 #cito:43
#ckin:43 #come:-45 #conf:-26 #cool:25 #corr:30 #cour:-35 #cros:25 #ctor:56 #cuan:-34 #cuel:30 #culp:26 #dame:47
#davi:36 #deja:30 #dela:35 #demo:66 #dent:42 #desp:69 #ding:38 #disc:26 #doin:33 #dont:36 #draw:32 #dria:-55 #drop:39
#eadi:40 #earl:-50 #eavi:67 #edia:71 #eeti:30 #eewa:36 #egan:28 #ehin:47 #ejor:-31 #elay:36 #elta:57 #emor:75
#emos:-30 #enas:51 #ende:-28 #endo:37 #engo:101 #enme:71 #erca:38 #erdi:46 #erdo:33 #erne:-28 #erno:-31 #erry:29
#ersl:32 #escu:27 #espa:37 #espu:30 #esta:-105 #esto:135 #etin:30 #etra:74 #etti:38 #even:29 #ever:78 #eves:-30
#eway:40 #fast:27 #ferr:29 #ffic:59 #fico:35 #find:27 #firm:-58 #forg:34 #free:28 #frid:-33 #from:-28 #fter:-36
#fuer:-31 #gand:29 #gare:28 #garr:51 #gett:29 #ghwa:30 #gies:28 #gimm:49 #ging:27 #give:66 #goin:43 #good:-27
#guan:31 #half:105 #hall:39 #hanc:27 #hang:40 #have:-49 #head:67 #held:82 #help:-25 #here:-33 #high:26 #hind:47
#hing:-41 #hizo:49 #hold:40 #hool:37 #houl:37 #hour:87 #hous:32 #humb:-35 #hurs:-48 #hway:30 #ible:-31 #iday:-26
#iden:33 #idge:86 #iemp:-28 #iern:-28 #ight:92 #ighw:30 #igue:-26 #imme:49 #inos:52 #inut:77 #irme:-28 #iscu:27
#ittl:31 #jaja:32 #juev:-30 #just:113 #king:41 #land:28 #lann:-26 #larg:30 #larm:37 #late:77 #lave:40 #laye:36
#lcan:25 #leav:59 #left:64 #lego:-32 #lept:32 #lier:-25 #ligh:49 #like:45 #litt:31 #llav:40 #lleg:-33 #llet:33
#lluv:29 #lmos:32 #lock:54 #logi:28 #lost:31 #luga:50 #luvi:29 #mana:-47 #mart:-37 #mbia:-42 #mbsu:-35 #medi:68
#meet:30 #mejo:-31 #mile:28 #mino:45 #mins:134 #minu:77 #more:32 #moro:55 #morr:-43 #most:31 #move:-25 #movi:36
#nada:26 #nana:-34 #ncel:-92 #nday:-25 #ning:32 #nino:68 #nnin:46 #noma:46 #ntit:50 #nuto:31 #nuts:38 #ocki:45
#odav:36 #oder:-46 #odri:-55 #ogie:28 #oing:77 #olan:27 #olog:28 #omas:46 #omin:-25 #omor:-43 #oque:32 #oqui:28
#orad:44 #orit:28 #orri:35 #orro:-43 #orry:114 #ours:-44 #ouse:32 #over:118 #ovin:36 #paci:37 #para:35 #pasa:27
#past:99 #pena:62 #perd:92 #pero:91 #ping:27 #plan:-36 #poco:25 #pode:-61 #podr:-60 #polo:28 #poqu:29 #pued:-120
#pues:28 #quar:56 #quit:38 #ract:33 #rado:34 #raff:60 #rafi:35 #rain:27 #rake:-31 #rasa:153 #rase:60 #rdid:25
#rdon:45 #reck:30 #reew:36 #retr:71 #rida:-28 #ridg:78 #rien:53 #rita:29 #rlie:-25 #rnes:-28 #rnoo:-31 #road:63
#roll:30 #rong:40 #ross:25 #rque:28 #rrec:-26 #rrie:42 #rrow:-43 #rsda:-47 #rsle:32 #rter:56 #rtes:-40 #runn:69
#sado:140 #salg:62 #sali:39 #scan:26 #scho:37 #scue:28 #scul:27 #sday:-41 #shal:39 #shou:36 #sibl:-30 #sigu:-26
#slep:32 #slow:50 #smok:-26 #sorr:114 #spac:38 #spot:25 #spue:30 #stam:-46 #stop:-27 #stoy:121 #stuc:-28 #tamo:-46
#tant:38 #tapo:37 #tard:130 #tare:-39 #tart:42 #tely:-35 #that:-44 #then:46 #ther:-30 #thin:-42 #thum:-36 #thur:-48
#ting:57 #tito:73 #toda:34 #tomo:-44 #took:52 #tora:41 #town:27 #trac:45 #traf:95 #trai:67 #tras:217 #tren:44
#ttin:38 #ttle:29 #tuck:-28 #turn:39 #uart:75 #uede:-73 #uedo:-61 #uela:42 #uelt:57 #uera:-30 #ugar:50 #uito:27
#umbs:-35 #unni:69 #unos:56 #urno:29 #ursd:-47 #urse:-32 #usca:26 #utos:31 #uvia:29 #vemo:-27 #veng:98 #vers:31
#very:56 #ving:112 #vola:28 #vuel:71 #wall:32 #week:-59 #were:-33 #work:26 #wrec:33 #wron:40 %again_later:57
%again_later%agree:40 %again_later%bring:180 %again_later%call_off:86 %again_later%car_part:46 %again_later%do_it:34
%again_later%doubt:28 %again_later%elsewhere:31 %again_later%leak:25 %again_later%lift:-31 %again_later%odometer:26
%again_later%on_way:62 %again_later%place:134 %again_later%question:96 %again_later%refuse:87
%again_later%start_again:-35 %again_later%wrong_one:29 %agree:-283 %agree%away:-26 %agree%bring:-32
%agree%call_off:-38 %agree%how_long:60 %agree%on_way:-57 %agree%refuse:47 %agree%wrong_one:43 %away:103
%away%call_off:-100 %away%elsewhere:29 %away%fails:39 %away%how_long:35 %away%leak:29 %away%leave_me:29
%away%on_way:-56 %away%phone:29 %away%place:-31 %away%wrong_one:72 %bad:39 %bad%on_way:31 %bring:-28
%bring%call_off:74 %bring%fails:26 %bring%leak:26 %bring%leave_me:-60 %bring%odometer:50 %bring%on_way:56
%bring%question:44 %bring%refuse:-27 %busy:86 %busy%how_long:35 %busy%leave_me:31 %busy%on_way:70 %busy%place:39
%call_off%car:39 %call_off%fails:47 %call_off%lift:40 %call_off%on_way:78 %call_off%question:83
%call_off%smoke_smell:34 %call_off%start_again:-52 %call_off%wrong_one:-44 %car:97 %car%family:53 %car%how_long:28
%car%lift:33 %car%on_way:39 %car%refuse:60 %car_part:75 %car_part%place:-56 %car_part%refuse:58
%car_part%wrong_one:46 %do_it:26 %do_it%on_way:34 %do_it%place:56 %do_it%question:38 %do_it%wrong_one:36
%doubt%on_way:37 %doubt%shift_it:30 %elsewhere:34 %elsewhere%on_way:58 %elsewhere%wrong_one:33 %fails:35
%fails%start_again:42 %fails%wrong_one:27 %family:166 %family%how_long:45 %family%odometer:34 %family%on_way:46
%gone_car:39 %gone_car%on_way:44 %how_long:148 %how_long%odometer:27 %how_long%on_way:77 %how_long%opening:-27
%how_long%place:26 %how_long%who:28 %leak%wrong_one:26 %leave_me%on_way:26 %leave_me%refuse:42 %lift:38
%lift%refuse:42 %odometer:56 %odometer%place:-32 %on_way:434 %on_way%opening:-39 %on_way%phone:46 %on_way%place:94
%on_way%question:59 %on_way%refuse:-85 %on_way%shift_it:47 %on_way%start_again:37 %on_way%who:52
%on_way%wrong_one:117 %opening:-58 %phone%refuse:41 %place:177 %place%who:45 %place%wrong_one:68 %question:-81
%question%refuse:87 %refuse%wrong_one:67 %shift_it:-87 %staff:-27 %wrong_one:114 @?:-142 @after_visit:-28
@confirm:324 @confirm_:-100 @confirm_stop:-31 @confirm_thumbsup:-35 @day:-54 @nothing:155 @offers:-189 @reading:-49
@time:-120 @times:113 @walk_in:-185 ^_$:-101 ^_ahi:-156 ^_ando:61 ^_any:-30 ^_asi:-25 ^_be:203 ^_can:-37 ^_cancel:-25
^_cant:-52 ^_coming:41 ^_como:-37 ^_en:-30 ^_estoy:62 ^_going:67 ^_got:-58 ^_gps:38 ^_had:36 ^_half:54 ^_hay:54
^_held:84 ^_hit:57 ^_how:-74 ^_hoy:-39 ^_i:-59 ^_ill:-68 ^_is:-88 ^_it:-27 ^_just:68 ^_llego:35 ^_me:-88 ^_mi:28
^_min:86 ^_my:51 ^_no:-48 ^_not:-30 ^_of:-32 ^_ok:-31 ^_on:46 ^_perdon:34 ^_podria:-49 ^_puedo:-39 ^_running:52
^_se:-29 ^_see:-27 ^_si:-125 ^_still:-34 ^_stop:-36 ^_the:-26 ^_thumbsup:-35 ^_too:-32 ^_took:26 ^_traffic:30
^_vengo:39 ^_voy:139 ^_we:-27 ^_were:-35 ^_will:-69 ^_y:-97 ^_ya:-49 ^_yep:-47 ^_yes:-80 ^_you:-43 a:58 a__late:59
a_bit:44 a_few:38 a_little:28 a_poder:-46 a_quarter:25 about:61 afternoon:-31 afuera:-29 agarro:32 ahead:27 ahi:-304
ahi_$:32 ahi__vemos:-25 ahi_estare:-65 ahi_estoy:-39 ahi_le:-32 ahi_nos:-25 alarm:40 alcanzo:26 all:-57 alla:39
alla_$:52 almost:32 an:33 ando:70 ando__en:25 any:-39 any__to:-25 any_way:-29 apenas:54 apologies:28 are:-37
around:28 as__as:29 asi:-26 at:152 at_$:42 at_the:39 at_work:32 atrasado:72 away:73 away_$:60 back:-39 back_out:-28
be:246 be__at:84 be__by:76 be__in:56 be_a:78 be_coming:-25 be_late:88 be_there:45 behind:47 behind_$:30
behind_the:-37 bit:50 blocking:34 bridge:54 bus:52 buscando:26 but:81 by:114 by_$:83 by_a:36 c:-91 camino:45 can:-45
can_i:-29 cancel:-61 cant:-50 cerca:41 cerca_$:46 chance:28 chance_de:33 cita:-45 cita_$:-39 come:-44 come_in:-31
coming_$:-66 coming_just:25 como_llego:-61 con:65 con_los:57 cool:25 could:-27 count:-25 course:-32 dame:43 day:-61
day_$:-36 de:83 de__escuela:25 de__hora:26 de_la:33 delayed:36 despues:32 dia:-58 dia_$:-39 do:-58 doing:33 dont:36
dont__my:27 dont_give:27 drop:30 drop_off:38 earlier:-25 el:101 el_bus:25 el_freeway:35 el_lugar:43 el_martes:-34
el_tapon:30 el_tren:34 en:47 en__freeway:32 en__tarde:-73 en_camino:33 en_el:53 en_la:-64 en_pie:-36 es:-35
escuela:30 ese:-32 ese_dia:-29 estamos:-46 estare:-47 estare_$:-41 estoy:121 estoy_$:-26 estoy_a:33 estoy_ahi:63
every:51 every__light:53 every_red:53 fast:28 ferry:29 few:54 find:27 freeway:36 from:-28 fue:26 gas:35 getting:29
gimme:49 gimme_a:26 give:45 give_me:26 going:43 going__be:77 going_to:45 good:-27 got:-28 got_to:-36 gps:44 had:88
had_to:81 half:107 half_past:30 have:-48 have_to:-47 hay:68 hay_un:34 heading:40 held:82 held__at:82 held_up:84
help:-25 highway:30 hit:55 hizo:49 hizo_tarde:25 hold:41 hold__spot:26 hold_my:37 hora:32 hora_$:36 hour:99 house:32
how:-78 how__are:-27 how_late:-32 hoy:-59 hoy__la:-28 hoy_en:-28 i__there:-32 i_know:30 i_shall:40 i_wont:-41 ill:-46
ill__there:-92 ill_be:-52 im:60 im__coming:-37 im__on:-30 im_late:41 im_not:-46 im_there:29 in_$:30 in__week:-37
in_the:-49 ir:-78 ir_$:-36 is:28 is__a:-29 is_nuts:38 is_there:-44 is_up:68 it:-102 it_$:-56 jueves:-30 just:113
kid:27 la__no:55 la_cita:-32 la_escuela:30 la_tarde:-134 las:47 las_$:-33 las_llaves:40 late:138 late_$:-30
late__a:25 late__the:-40 late_afternoon:-26 late_are:-27 late_in:-47 late_sorry:37 lately:-28 lately_$:-26 later:-30
le:-39 leaving:67 leaving_now:36 leaving_the:40 left:64 left_$:72 light:37 like:45 like_$:34 little:31 little_late:33
llaves:40 llegando:29 llegar:-43 llego:-32 llego_$:-92 llego_en:38 lluvia:29 lo:-64 los:69 los_ninos:52 lost:31
lugar:50 manana:-33 martes:-37 martes_$:-27 mas:-36 mas_$:120 mas__a:-32 mas_tarde:-178 me:118 me__con:50 me__el:50
me__la:33 me__tarde:32 me__un:29 me_agarro:32 me_fue:32 me_hizo:49 me_late:-214 me_voy:-25 media:74 media_hora:39
meeting:30 mejor:-31 mero:29 mi:27 mi__ya:28 min:431 min_$:166 min_late:42 min_tarde:30 mins:134 minutos:31
minutos_$:27 more:42 moving:36 mph:28 mueve:25 my:128 my_place:25 my_spot:30 my_wallet:33 nada:26 ninos:52 ninos_$:52
no__a:-74 no__donde:25 no_alcanzo:27 no_llego:-36 no_me:78 no_se:26 no_voy:-172 nomas:46 nos_vemos:-26 not:-72
not_coming:-87 now:207 now_$:100 nuts:38 of:60 of_course:-32 of_me:45 off:44 ok_$:33 on:28 on_$:-104 on__road:34
on_the:107 on_time:25 out:121 out_$:68 out__door:32 out_the:26 over:94 overslept:32 para:25 para_alla:69 past:99
past_$:55 perdon:45 pero:107 pero_no:37 pie:-37 pie_$:-33 poco:25 poder:-46 podria:-50 podria_ser:-49 poquito:29
por:-41 puede:-73 puedo:-48 puedo_ir:-31 quarter:56 ran:27 ran_over:28 red:41 red_light:52 retrasado:60 road:56
running:67 running_late:42 salgo:62 school:37 se:76 se__fue:28 se__hizo:49 se__mas:-29 se_me:70 se_mueve:25
se_puede:-55 ser:-47 ser_mas:-54 set:-25 set_$:-29 shall:39 shall_be:40 should:29 si:-83 si__estare:-26 si_ahi:-34
si_voy:-36 sin:-49 slow:51 so:44 so_i:36 sorry:114 spot:28 start:43 still_on:-39 stop:-45 stuck:-28 take:27
tantito:41 tapon:30 tarde_$:-86 tardecito:25 tardecito_$:25 tardo:52 ten:56 that:-43 the:92 the__now:105 the_car:35
the_door:27 the_highway:31 the_house:33 the_road:44 the_way:-31 the_week:-38 the_wrong:34 then:46 there_$:-205
there__traffic:25 there_a:-25 there_at:89 there_by:85 there_in:69 there_is:-28 thumbsup:-35 thumbsup_$:-35
thursday:-43 thursday_$:-28 to:51 to__in:-26 to__late:44 to__the:29 to_back:-28 to_be:70 to_come:-25 todavia:36
todo:-33 tomorrow:-43 too:-45 too_late:-29 took:52 tractor:33 traffic:53 traffic_is:45 trafico:35 trafico_$:28
train:35 tren:44 tren_$:27 turno:29 ugh:36 un:102 un__en:32 un__tarde:27 un_poco:25 un_poquito:26 unos:56 up:137
up_$:25 up__the:33 up_at:81 vemos:-27 vengo:98 viernes:-28 volando:31 voy:67 voy_$:-94 voy__alla:45 voy__poder:-46
voy__y:27 voy_a:-149 voy_para:37 voy_saliendo:28 voy_tarde:98 vuelta:49 wallet:33 was:28 way:-64 way_$:-47 way_to:-41
we:-64 week:-53 week_$:-49 were:-33 will__there:-61 will_be:-42 wont__there:-26 wont_be:-48 work:30 wreck:34 wrong:40
y:41 y_$:-96 ya:115 ya__para:35 ya__voy:-58 ya_estoy:36 ya_no:-40 ya_voy:158 yep:-52 yes:-83 you:-51 you_there:-34
"""
