"""What speaks for and against `running_late`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "running_late"
BIAS = -220
WEIGHTS = """\
#abaj:-18 #abou:21 #acio:16 #aden:14 #adin:26 #ados:25 #adra:18 #affi:37 #afic:34 #agar:25 #agua:18 #ahor:22 #aigh:21
#ajaj:19 #akes:-19 #alar:57 #alca:29 #algo:17 #ally:14 #almo:19 #ambi:-29 #amel:-16 #amen:20 #amin:63 #amos:-38
#anan:-25 #ance:-50 #ande:-20 #ando:132 #ange:-17 #angi:26 #anni:-17 #anos:15 #ante:15 #anti:37 #anto:-14 #anzo:29
#apen:47 #apol:26 #appo:-18 #arad:28 #arar:-16 #arde:16 #ardo:14 #argo:16 #arli:-21 #arma:25 #arme:23 #arou:26
#arqu:23 #arre:17 #arro:28 #arto:22 #asad:119 #asem:-14 #atel:-21 #ator:26 #atra:121 #ause:18 #aves:14 #avia:26
#avin:57 #away:66 #ayed:32 #baby:25 #back:-31 #bajo:-16 #beca:14 #behi:48 #biar:-14 #bloc:32 #body:-17 #bout:33
#brak:-17 #brid:44 #brok:-15 #bsup:-28 #camb:-29 #came:-17 #cami:58 #canc:-66 #cant:-44 #canz:29 #carr:21 #caus:18
#cela:-28 #cele:15 #cerc:36 #chan:37 #choo:30 #choq:23 #cita:-31 #cito:29 #ckin:48 #clos:15 #come:-23 #como:-24
#conf:-20 #corr:42 #ctor:30 #cuad:18 #cuan:-20 #cuar:22 #cuel:23 #culp:15 #dame:22 #davi:26 #deci:18 #deja:35
#dela:32 #demo:62 #denm:16 #dent:14 #desp:40 #dido:18 #ding:30 #disc:15 #doct:28 #doin:17 #dont:16 #draw:23 #dria:-46
#driv:19 #drop:31 #eadi:26 #earl:-33 #eavi:57 #ecau:14 #ecit:18 #econ:20 #edia:55 #eeti:24 #eewa:30 #egan:27 #ehin:48
#ejar:14 #ejor:-29 #elta:42 #emor:74 #emos:-22 #empr:-17 #enas:45 #encu:14 #ende:-15 #endo:56 #engo:94 #enme:69
#enor:26 #ente:-14 #entr:18 #erca:32 #erda:-15 #erdi:40 #ermo:-17 #erne:-21 #erno:-17 #erry:21 #ersl:26 #escu:22
#espa:21 #espu:18 #esta:-58 #esto:88 #ethi:-14 #etin:24 #etra:47 #etti:21 #even:24 #ever:71 #eves:-26 #eway:37
#exit:14 #expe:15 #ffic:49 #fico:34 #find:19 #firm:-25 #forg:20 #free:25 #frid:-27 #from:-22 #gand:27 #gare:32
#garr:25 #gett:21 #gimm:17 #ging:25 #give:74 #goin:56 #good:-21 #guan:17 #guar:26 #half:83 #hall:20 #hanc:19 #hang:18
#harm:18 #have:-28 #head:36 #held:77 #help:-20 #here:-27 #hind:48 #hing:-43 #hizo:43 #hold:47 #hool:30 #hoqu:23
#hora:17 #hori:25 #hour:74 #hous:21 #humb:-28 #hurs:-42 #ible:-15 #iday:-23 #idge:42 #iemp:-15 #iend:44 #ierd:-14
#iern:-21 #ight:98 #igue:-17 #ills:14 #imme:17 #inos:46 #intm:-18 #inut:79 #irme:-15 #iscu:16 #isim:22 #itos:18
#ittl:25 #ivin:25 #jaja:39 #juev:-26 #just:93 #keep:-14 #king:36 #lace:23 #lame:17 #land:20 #lann:-17 #larg:21
#larm:41 #late:44 #lcan:29 #ldnt:15 #leav:55 #left:56 #lega:19 #lept:26 #levo:-14 #lier:-21 #ligh:42 #like:20
#ling:15 #litt:25 #llam:19 #lleg:20 #lmos:19 #lock:25 #loco:-14 #logi:26 #lose:15 #lost:-14 #ltim:16 #luga:35
#lune:-19 #mana:-32 #mand:-16 #marq:23 #mart:-35 #mbia:-18 #mbsu:-28 #medi:54 #meet:24 #mejo:-29 #mela:-21 #menm:21
#meth:-14 #mino:45 #mins:96 #minu:79 #modo:22 #moke:-20 #mond:-19 #mora:19 #morr:-37 #most:19 #move:-22 #mpre:-14
#nada:37 #nana:-25 #ncel:-66 #ncue:14 #nday:-21 #need:-17 #ngin:22 #ning:52 #nino:40 #nnin:53 #noma:55 #noon:-18
#noth:-16 #ntan:21 #ntie:17 #ntit:47 #ntme:-18 #ntro:23 #ntua:28 #nute:17 #nuto:43 #nuts:31 #ocki:50 #octo:28
#odav:26 #oder:-36 #odri:-46 #oing:73 #oint:-18 #olan:22 #olog:26 #olvi:-14 #omas:55 #omet:-16 #omor:-37 #oque:31
#oqui:27 #orad:26 #orit:38 #orri:42 #orro:-37 #orry:64 #oser:16 #ound:24 #ours:-49 #ouse:22 #ovel:16 #over:100
#paci:21 #para:31 #pasa:19 #pase:-17 #past:77 #pect:15 #pena:56 #perd:58 #pero:71 #pier:-14 #ping:22 #pint:15
#plac:23 #plan:-23 #pode:-55 #podr:-53 #poin:-18 #polo:26 #poqu:28 #posa:14 #ppoi:-18 #pued:-99 #pues:16 #quar:32
#qued:-14 #quen:19 #quit:43 #rada:20 #rado:22 #raff:50 #rafi:34 #raig:29 #rain:25 #rake:-17 #rasa:107 #rase:53
#rdec:19 #rder:17 #rdid:17 #rdon:17 #read:-14 #reco:-14 #rect:-15 #reew:30 #remo:19 #renm:15 #retr:48 #rida:-28
#ride:25 #ridg:42 #rien:51 #righ:20 #rita:38 #rive:18 #rlie:-21 #rmac:18 #rnes:-21 #rnoo:-16 #road:60 #roke:-15
#rong:36 #roug:-14 #roun:25 #rque:35 #rrec:-19 #rrie:42 #rrow:-37 #rsda:-41 #rsle:26 #rter:32 #rtes:-35 #runn:72
#sado:108 #salg:29 #sali:29 #scho:30 #scue:22 #scul:16 #sday:-44 #sema:20 #seno:23 #shal:20 #show:22 #sibl:-20
#sigu:-17 #slep:26 #slow:34 #smok:-20 #snow:17 #some:-30 #sorr:64 #spac:22 #spot:36 #spue:18 #stam:-42 #stan:-18
#sted:20 #stil:-17 #stop:-24 #stoy:89 #stra:21 #tamo:-42 #tand:16 #tant:37 #tard:42 #tare:-15 #tart:36 #tely:-25
#tenm:16 #tern:-16 #text:-23 #that:-49 #then:28 #thin:-45 #thum:-29 #thur:-42 #till:-19 #timo:17 #ting:29 #tion:15
#tire:-22 #tito:65 #tmen:-18 #toda:35 #todo:-35 #tomo:-37 #took:40 #tops:15 #tora:26 #torn:22 #town:30 #traf:83
#trai:60 #tras:162 #tren:26 #ttin:14 #ttle:23 #tual:27 #turn:36 #uadr:18 #uall:17 #uard:26 #uart:54 #ucho:18
#uede:-51 #uedo:-58 #uela:23 #uelt:42 #ueve:-15 #ugar:35 #uite:26 #uito:27 #uldn:15 #ulpe:16 #ulti:16 #umbs:-28
#unes:-19 #unni:72 #unos:24 #unti:16 #urno:27 #ursd:-41 #urse:-38 #uste:20 #utos:43 #vemo:-20 #veng:85 #vent:17
#vers:25 #very:51 #vier:-21 #ving:70 #vola:23 #vuel:41 #wait:-16 #week:-45 #were:-15 #will:-16 #work:39 #wron:36
#xpec:16 %again_later:91 %again_later%agree:46 %again_later%bring:137 %again_later%busy:15 %again_later%call_off:52
%again_later%car:16 %again_later%car_part:48 %again_later%do_it:38 %again_later%doubt:25 %again_later%elsewhere:22
%again_later%leak:29 %again_later%lift:-27 %again_later%money:15 %again_later%odometer:43 %again_later%on_way:72
%again_later%place:106 %again_later%question:76 %again_later%refuse:38 %again_later%start_again:-24
%again_later%wrong_one:44 %agree:-221 %agree%away:-29 %agree%bring:-27 %agree%call_off:-32 %agree%how_long:63
%agree%on_way:-53 %agree%phone:19 %agree%place:-24 %agree%refuse:30 %agree%shift_it:22 %agree%wrong_one:26 %away:97
%away%bad:-14 %away%bring:24 %away%call_off:-70 %away%elsewhere:29 %away%fails:35 %away%family:-21 %away%how_long:42
%away%leak:39 %away%leave_me:25 %away%money:-17 %away%on_way:-37 %away%refuse:17 %away%wrong_one:49 %bad:27
%bad%bring:14 %bad%call_off:15 %bad%money:-17 %bad%on_way:24 %bring%busy:15 %bring%call_off:30 %bring%do_it:20
%bring%how_long:25 %bring%leak:39 %bring%leave_me:-48 %bring%odometer:41 %bring%on_way:23 %bring%phone:19
%bring%question:33 %bring%refuse:-60 %bring%shift_it:-21 %bring%wrong_one:16 %busy:90 %busy%call_off:-15
%busy%how_long:20 %busy%leave_me:36 %busy%on_way:65 %busy%place:53 %busy%refuse:20 %call_off:19 %call_off%car:54
%call_off%car_part:49 %call_off%family:-17 %call_off%lift:14 %call_off%on_way:91 %call_off%place:24
%call_off%question:94 %call_off%refuse:15 %call_off%season:16 %call_off%smoke_smell:33 %call_off%start_again:-46
%call_off%thanks:-14 %call_off%who:-16 %call_off%wrong_one:-17 %car:60 %car%family:44 %car%how_long:18 %car%lift:41
%car%on_way:30 %car%refuse:73 %car_part:37 %car_part%how_long:21 %car_part%place:-39 %car_part%season:17
%car_part%wrong_one:19 %do_it:34 %do_it%leak:22 %do_it%on_way:18 %do_it%place:34 %do_it%question:34 %do_it%refuse:21
%do_it%who:15 %do_it%wrong_one:33 %doubt%on_way:19 %doubt%shift_it:18 %elsewhere:25 %elsewhere%on_way:41
%elsewhere%question:19 %elsewhere%wrong_one:24 %fails:19 %fails%start_again:36 %fails%who:16 %family:104
%family%how_long:27 %family%odometer:23 %family%on_way:38 %family%place:15 %gone_car:15 %gone_car%leave_me:16
%gone_car%on_way:47 %gone_car%place:21 %how_long:153 %how_long%lift:-17 %how_long%odometer:20 %how_long%on_way:83
%how_long%opening:-17 %how_long%place:42 %how_long%refuse:19 %how_long%thanks:18 %how_long%who:22
%how_long%wrong_one:23 %leak:39 %leak%odometer:15 %leak%refuse:17 %leak%wrong_one:28 %leave_me:-16
%leave_me%on_way:25 %leave_me%question:17 %leave_me%refuse:43 %lift:22 %lift%refuse:31 %message:-39
%message%on_way:-24 %money:-45 %money%question:-17 %odometer:26 %odometer%place:-22 %on_way:411 %on_way%opening:-24
%on_way%phone:42 %on_way%place:81 %on_way%question:40 %on_way%refuse:-99 %on_way%season:17 %on_way%smoke_smell:15
%on_way%start_again:39 %on_way%thanks:-35 %on_way%who:60 %on_way%wrong_one:76 %opening:-38 %phone%place:17
%phone%refuse:33 %place:143 %place%question:-21 %place%refuse:27 %place%shift_it:16 %place%thanks:-16 %place%who:48
%place%wrong_one:51 %question:-58 %question%refuse:65 %question%wrong_one:17 %refuse:-60 %refuse%shift_it:-25
%refuse%smoke_smell:17 %refuse%thanks:-24 %refuse%wrong_one:27 %season:23 %shift_it:-148 %shift_it%who:16
%staff%thanks:19 %thanks:-34 %who:26 %who%wrong_one:20 %wrong_one:60 @?:-169 @after_visit:-15 @confirm:309
@confirm_stop:-28 @confirm_thumbsup:-28 @day:-39 @later:-16 @nothing:98 @offers:-152 @reading:-59 @time:-72 @times:64
@walk_in:-86 ^_$:-39 ^_ahi:-122 ^_ando:55 ^_any:-20 ^_asi:-22 ^_be:134 ^_can:-25 ^_cancel:-22 ^_cant:-43 ^_coming:34
^_como:-52 ^_could:-16 ^_couldnt:21 ^_donde:-14 ^_end:-16 ^_estoy:32 ^_eta:-22 ^_going:56 ^_got:-38 ^_had:16
^_half:54 ^_hay:38 ^_help:-19 ^_hit:49 ^_hmm:-20 ^_how:-53 ^_hoy:-25 ^_i:-61 ^_ill:-36 ^_is:-41 ^_it:-21 ^_just:58
^_la:17 ^_late:-28 ^_llego:47 ^_me:-57 ^_mejor:-16 ^_mi:20 ^_my:51 ^_need:-14 ^_ni:-14 ^_no:-45 ^_not:-20 ^_ok:-21
^_on:30 ^_perdon:18 ^_puedo:-35 ^_que:-20 ^_running:48 ^_se:-22 ^_see:-14 ^_si:-91 ^_sorry:16 ^_still:-23 ^_stop:-30
^_thumbsup:-28 ^_todo:-21 ^_too:-21 ^_took:26 ^_traffic:20 ^_voy:77 ^_were:-23 ^_who:-15 ^_will:-54 ^_y:-80 ^_ya:-22
^_ye:-20 ^_yep:-35 ^_yes:-61 ^_you:-14 a:55 a__late:44 a__of:18 a__pero:16 a__se:16 a__si:28 a_bit:40 a_few:29
a_ir:-14 a_little:25 a_poder:-36 about:21 after_$:17 afternoon:-16 agarro:16 agarro_el:16 ahi:-220 ahi_$:21
ahi__vemos:-17 ahi_el:-23 ahi_estare:-43 ahi_le:-35 ahi_nos:-17 ahorita:25 al:-30 alarm:34 alcanzo:29 alcanzo_a:16
all:-55 all_set:-20 alla_$:18 almost:19 an:17 an_hour:17 and:15 ando:51 any:-23 apenas:47 appointment:-17 are:-21
around:26 as:19 as__as:18 asi:-24 at:128 at_$:30 at_the:32 at_this:18 at_work:39 atrasado:62 away:66 away_$:53 ay:17
back:-31 back_out:-20 be:164 be_$:-15 be__at:63 be__by:64 be__in:47 be_a:64 be_coming:-14 be_late:57 be_there:25
because:14 behind:48 behind_$:27 behind_the:-21 bit:40 blocking:30 bridge:23 broke:-15 bus:20 but:39 by:92 by_$:73
by_a:33 by_the:-16 caigo_$:-16 call:-14 call__if:25 came:-17 camino:45 camino_$:20 can:-24 can_i:-19 can_we:-21
cancel:-51 cancel_$:-18 cancelen:17 cant:-44 cant__it:-15 cant_wait:-16 car:18 cerca:36 chance:20 chance_de:22
changing:27 choque:23 choque_en:24 cita:-30 cita_$:-30 come:-22 come_in:-24 coming_$:-28 coming__the:-16 como:-24
con:81 con_los:52 could:-18 cuarto:22 dame:19 dar:17 day:-46 day_$:-30 de:78 de_$:15 de__casa:17 de__escuela:16
de__hora:28 de_ahi:-14 de_la:26 deja:22 demora:19 despues:18 dia:-46 dia_$:-31 do:-42 do__get:-14 do_i:-17 doctor:18
dog:15 doing:17 dont:16 dont__my:27 dot:17 down__the:-14 drop:24 earlier:-21 el:96 el_freeway:25 el_jueves:-15
el_martes:-34 el_turno:18 el_ultimo:17 en:51 en_$:23 en__freeway:25 en__tarde:-49 en__y:15 en_camino:40 en_el:46
en_la:-43 en_pie:-16 encuentro:14 end_$:-20 era_$:-16 es:-29 es_$:-18 escuela:23 ese:-24 ese_dia:-21 esposa:14
estamos:-42 estare:-24 estare_$:-27 estoy:89 estoy__el:20 estoy_ahi:47 eta:-22 every:44 exit:14 expect:16 favor_$:-17
few:38 find:19 freeway:30 freeway_$:19 friday:-23 from:-22 fue:36 fue_el:21 gas:33 gas_$:14 get:-17 get_there:-24
getting:21 gimme:17 give:62 give_me:33 give_my:24 go:14 going:56 going__be:68 going_to:59 good:-21 good_$:-16 got:-24
got_to:-18 gps:16 had:48 had__get:14 had_to:48 half:83 half_past:16 half_the:14 has:-15 have:-28 have__back:-20
have_to:-32 hay:48 hay__choque:24 hay_un:25 held:77 help:-20 help__stuck:-19 help_im:-19 hit:47 hizo:43 hmm:-20
hold:47 hold_my:43 hora:23 hora_$:39 hour:85 house:22 how:-51 how__are:-17 how__i:-14 how_do:-15 how_late:-17
how_much:-17 hoy:-39 hoy__la:-24 hoy_en:-24 i:-101 i__be:-27 i__make:17 i__there:-28 i_get:-23 i_shall:20 i_wont:-28
if:17 if_you:14 ill:-20 ill__a:24 ill__there:-69 ill_be:-26 im:36 im__on:-29 im_not:-43 im_stuck:-15 in:23 in_$:38
in__car:29 in__of:18 in__week:-34 in_the:-29 ir:-61 ir_$:-28 is:16 is__a:-20 is__going:-17 is__me:20 is_at:16
is_it:-19 is_there:-23 is_this:-16 is_up:47 it:-111 it_$:-52 it__to:-14 jajaja:19 jueves:-26 just:93 just_not:14
la__no:49 la__ya:16 la_casa:16 la_cita:-18 la_escuela:23 la_tarde:-87 las:33 las_$:-42 las__me:16 las_si:28 late:87
late_$:-24 late__you:-16 late_afternoon:-15 late_are:-16 late_sorry:22 lately:-20 lately_$:-20 later:-20 le:-49
le_caigo:-16 leaving:57 left:56 left_$:63 light:29 like:20 line:15 little:25 llamenme:21 llamenme_para:14 llegando:27
llegar:-41 llegar_$:-21 llego_$:-69 llego_a:-16 llego_en:36 llevo:-14 lo:-35 loco:-14 los:42 los_ninos:46 lost:-14
lugar:35 lugar_$:17 lunes:-19 manana:-24 mande:-15 marquenme:14 martes:-35 martes_$:-29 mas:-24 mas_$:100
mas_tarde:-146 me:99 me_$:-38 me__con:45 me__el:57 me__tarde:23 me__to:16 me__un:18 me__you:14 me_fue:37 me_hizo:44
me_if:27 media:56 media_hora:25 meeting:24 mejor:-29 mero:19 mi:18 mi_esposa:14 mil:-25 mil_millas:-21 millas_$:-22
min:296 min_$:126 min_late:44 min_tarde:22 mins:96 minutos:43 minutos_$:24 modo:22 monday:-19 more:14 mucho:18 my:92
my__away:22 my__i:16 my__on:15 my_spot:39 nada:38 need:-22 ni_modo:22 ninos:46 ninos_$:46 no:36 no_$:-17 no__a:-40
no__nada:21 no_alcanzo:29 no_me:64 no_voy:-121 nomas:55 nomas_$:14 nomas_el:17 nomas_que:21 nos_vemos:-19 not:-60
not_coming:-67 now:149 now_$:79 nuts:31 of:22 of_an:21 of_me:29 of_the:25 off:48 ok:14 ok_$:30 on_$:-69 on__road:28
on_it:-18 on_the:76 one:15 orden:-20 out:88 out_$:54 out__me:16 over:83 over_$:20 overslept:26 para:19 para_alla:40
para_el:-28 parar:-16 past:77 past_$:46 past_the:20 perdi:24 perdon:17 pero:81 pero_no:26 pero_ya:21 pie:-17 place:24
poder:-36 podria:-46 podria_ser:-46 poquito:28 por:-24 puede:-59 puedo:-48 puedo_ir:-26 quarter:32 que:22 que__a:26
que_la:22 quite:17 red:40 red_light:44 retrasado:36 ride:25 ride_to:14 right:21 right_after:18 right_now:15 road:51
running:70 running_behind:19 running_late:37 salgo:29 school:30 se:52 se__fue:37 se__hizo:44 se_me:53 se_puede:-48
second_$:17 see:-14 senor:18 sent:15 ser:-41 set_$:-23 shall:20 si:-64 si__no:23 si_ahi:-26 si_voy:-29 sigue:-17
sigue__pie:-16 sigue_en:-16 sin:-21 slow:34 smoke:-20 snow:18 so:23 something:-14 sorry:64 spot:39 start:37 still:-17
still_coming:14 still_on:-36 stop:-38 stop_$:-24 straight:21 tantito:38 tantito_$:17 tarde:-16 tarde_$:-55 ten:44
that:-49 that_day:-15 the:119 the__be:19 the__now:72 the_car:23 the_day:-14 the_dog:17 the_house:23 the_road:39
the_way:-15 the_week:-34 the_wrong:28 then:28 then_$:-15 there_$:-167 there_a:-17 there_at:69 there_by:74 there_in:59
there_is:-23 this_$:-14 this_one:18 thumbsup:-28 thumbsup_$:-28 thursday:-37 thursday_$:-26 to:25 to__in:-20
to__late:32 to__the:15 to_be:66 to_cancel:-16 to_come:-20 todavia:26 todo:-34 todo_en:-20 tomorrow:-36 tomorrow_$:-15
too:-23 too_late:-20 took:40 town:20 traffic:50 traffic_is:39 trafico:34 trafico_$:28 train:37 tren:26 tren_$:23
turno:27 ultimo:17 un:83 un__en:24 un_choque:24 un_poquito:25 unos:24 up:124 up_$:18 up__the:34 up_at:71 usted:19
vemos:-20 vemos_$:-16 vengo:85 vez:18 viernes:-21 voy:32 voy_$:-76 voy__alla:33 voy__camino:30 voy__poder:-36
voy_a:-98 voy_en:27 voy_para:35 voy_saliendo:15 voy_tarde:43 vuelta:40 wait_$:-16 was:29 way:-34 way_$:-33 way_to:-29
we:-47 week:-43 week_$:-42 were:-15 who__this:-14 who_is:-15 will:-15 will__it:17 will__there:-49 will_be:-48
wont__it:14 wont__there:-18 wont_be:-36 wont_make:15 work:42 wrong:36 y:-28 y_$:-78 y_cuarto:14 ya:99 ya__a:-15
ya__voy:-38 ya_estoy:38 ya_no:-19 ya_voy:105 ye:-20 yep:-41 yep_$:-15 yes:-64 yo:25 you:-58 you__have:15 you__my:14
you_in:17 you_still:15 you_then:-14 you_there:-30
"""
