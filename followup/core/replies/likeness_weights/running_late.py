"""What speaks for and against `running_late`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "running_late"
BIAS = -236
WEIGHTS = """\
#abou:46 #acto:27 #adin:35 #affi:46 #afic:33 #afte:-29 #agar:44 #agua:28 #akes:-25 #alar:47 #algo:35 #alla:31
#alle:30 #almo:26 #ambi:-41 #amin:60 #amos:-42 #anan:-31 #ance:-55 #ando:145 #anti:35 #apen:45 #apol:25 #apon:27
#ardo:45 #arli:-25 #arro:48 #asad:141 #atel:-28 #ator:37 #atra:134 #ause:35 #aves:37 #avia:32 #avin:56 #away:66
#ayed:30 #back:-32 #behi:45 #bloc:40 #bout:54 #brak:-28 #brid:71 #bsup:-33 #camb:-39 #cami:57 #canc:-74 #cant:-36
#caus:35 #cerc:39 #chan:49 #choo:32 #cita:-37 #cito:38 #ckin:37 #come:-38 #cour:-37 #ctor:47 #cuan:-27 #cuel:26
#dame:41 #davi:32 #deja:26 #dela:30 #demo:62 #dent:29 #desp:59 #ding:35 #doin:28 #dont:30 #draw:27 #dria:-48 #drop:33
#eadi:36 #earl:-47 #eavi:56 #edia:64 #eeti:25 #eewa:35 #ehin:45 #ejor:-31 #elay:30 #elta:49 #emor:69 #emos:-26
#enas:42 #ende:-25 #endo:31 #engo:87 #enme:62 #erca:36 #erdi:39 #erdo:29 #erne:-25 #erno:-26 #ersl:28 #espa:31
#espu:25 #esta:-93 #esto:118 #etin:25 #etra:63 #etti:27 #ever:71 #eves:-26 #eway:39 #ffic:55 #fico:33 #firm:-50
#forg:30 #free:27 #frid:-30 #fter:-29 #gare:26 #garr:47 #ghwa:28 #gies:25 #gimm:42 #give:57 #goin:35 #guan:27
#half:86 #hall:34 #hang:39 #have:-38 #head:58 #held:72 #here:-34 #high:25 #hind:45 #hing:-37 #hizo:40 #hold:34
#hool:32 #houl:28 #hour:74 #hous:25 #humb:-33 #hurs:-45 #hway:28 #ible:-27 #idge:72 #iern:-25 #ight:80 #ighw:28
#igue:-25 #imme:42 #inos:47 #inut:67 #ittl:31 #jaja:27 #juev:-26 #just:100 #king:36 #lann:-26 #larg:27 #larm:31
#late:66 #lave:34 #laye:30 #leav:49 #left:58 #lego:-25 #lept:28 #lier:-25 #ligh:46 #like:39 #litt:31 #llav:34
#lleg:-30 #llet:28 #lluv:25 #lmos:26 #lock:46 #logi:25 #lost:27 #luga:42 #luvi:25 #mana:-42 #mart:-36 #mbia:-35
#mbsu:-33 #medi:61 #meet:25 #mejo:-31 #mino:48 #mins:114 #minu:67 #more:27 #moro:52 #morr:-36 #most:26 #movi:31
#nana:-31 #ncel:-74 #ning:26 #nino:62 #nnin:37 #noma:39 #ntit:43 #nuto:27 #nuts:34 #ocki:39 #odav:32 #oder:-37
#odri:-48 #ogie:25 #oing:64 #olan:25 #olog:25 #omas:39 #omin:-25 #omor:-36 #oque:28 #orad:41 #orri:30 #orro:-36
#orry:92 #ours:-43 #ouse:26 #over:104 #ovin:31 #paci:31 #past:86 #pena:52 #perd:79 #pero:73 #plan:-35 #pode:-50
#podr:-54 #polo:25 #poqu:25 #pued:-106 #quar:49 #quit:33 #ract:28 #rado:32 #raff:55 #rafi:33 #rake:-28 #rasa:136
#rase:55 #rdon:39 #reew:35 #retr:60 #rida:-26 #ridg:65 #rien:45 #rlie:-25 #rnes:-25 #rnoo:-26 #road:56 #roll:25
#rong:36 #rrie:36 #rrow:-36 #rsda:-44 #rsle:28 #rter:49 #rtes:-39 #runn:60 #sado:119 #salg:54 #sali:33 #scho:32
#sday:-40 #shal:34 #shou:28 #sibl:-27 #sigu:-25 #slep:28 #slow:47 #sorr:92 #spac:32 #spue:25 #stam:-41 #stop:-27
#stoy:106 #tamo:-41 #tant:33 #tapo:33 #tard:101 #tare:-35 #tart:35 #tely:-31 #that:-35 #then:42 #ther:-29 #thin:-39
#thum:-34 #thur:-45 #ting:46 #tito:63 #toda:27 #tomo:-36 #took:45 #tora:38 #trac:38 #traf:88 #trai:60 #tras:193
#tren:41 #ttin:28 #ttle:29 #turn:35 #uart:66 #uede:-60 #uedo:-60 #uela:36 #uelt:49 #ugar:42 #umbs:-33 #unni:60
#unos:47 #ursd:-44 #urse:-34 #utos:27 #uvia:25 #veng:83 #vers:28 #very:53 #ving:96 #vola:25 #vuel:61 #wall:28
#week:-55 #were:-31 #work:27 #wrec:27 #wron:36 %again_later:44 %again_later%agree:35 %again_later%bring:151
%again_later%call_off:61 %again_later%car_part:40 %again_later%do_it:29 %again_later%elsewhere:26
%again_later%lift:-28 %again_later%on_way:53 %again_later%place:117 %again_later%question:86 %again_later%refuse:75
%again_later%start_again:-27 %agree:-215 %agree%bring:-26 %agree%call_off:-36 %agree%how_long:51 %agree%on_way:-40
%agree%refuse:37 %agree%wrong_one:35 %away:97 %away%call_off:-83 %away%elsewhere:25 %away%fails:33 %away%how_long:30
%away%leak:26 %away%on_way:-41 %away%phone:25 %away%place:-25 %away%wrong_one:64 %bad:36 %bad%on_way:30 %bring:-35
%bring%call_off:59 %bring%leave_me:-57 %bring%odometer:42 %bring%on_way:42 %bring%question:36 %busy:78
%busy%how_long:34 %busy%leave_me:25 %busy%on_way:68 %busy%place:35 %call_off%car:34 %call_off%fails:40
%call_off%lift:32 %call_off%on_way:72 %call_off%question:68 %call_off%smoke_smell:28 %call_off%start_again:-45
%call_off%wrong_one:-37 %car:79 %car%family:45 %car%lift:27 %car%on_way:35 %car%refuse:50 %car_part:69
%car_part%place:-42 %car_part%refuse:50 %car_part%wrong_one:40 %do_it%on_way:34 %do_it%place:45 %do_it%question:35
%do_it%wrong_one:31 %doubt%on_way:28 %doubt%shift_it:26 %elsewhere:30 %elsewhere%on_way:52 %elsewhere%wrong_one:25
%fails:33 %fails%start_again:35 %family:137 %family%how_long:34 %family%odometer:29 %family%on_way:34 %gone_car:31
%gone_car%on_way:35 %how_long:128 %how_long%on_way:68 %how_long%place:26 %how_long%who:25 %leave_me%refuse:35
%lift:31 %lift%refuse:35 %odometer:46 %odometer%place:-27 %on_way:387 %on_way%opening:-31 %on_way%phone:42
%on_way%place:86 %on_way%question:57 %on_way%refuse:-69 %on_way%shift_it:37 %on_way%start_again:32 %on_way%who:50
%on_way%wrong_one:104 %opening:-47 %phone%refuse:35 %place:166 %place%who:43 %place%wrong_one:61 %question:-70
%question%refuse:73 %refuse:-41 %refuse%wrong_one:55 %shift_it:-79 %wrong_one:96 @?:-126 @confirm:304 @confirm_:-88
@confirm_stop:-30 @confirm_thumbsup:-33 @day:-47 @nothing:121 @offers:-165 @reading:-43 @time:-105 @times:84
@walk_in:-160 ^_$:-90 ^_ahi:-138 ^_ando:54 ^_any:-26 ^_be:180 ^_can:-28 ^_cant:-40 ^_coming:34 ^_como:-32 ^_en:-29
^_estoy:46 ^_going:50 ^_got:-48 ^_gps:33 ^_had:32 ^_half:47 ^_hay:48 ^_held:74 ^_hit:53 ^_how:-57 ^_hoy:-37 ^_i:-50
^_ill:-54 ^_is:-76 ^_it:-25 ^_just:60 ^_llego:34 ^_me:-54 ^_min:76 ^_my:41 ^_no:-49 ^_ok:-27 ^_on:45 ^_perdon:30
^_podria:-43 ^_puedo:-38 ^_running:47 ^_si:-101 ^_still:-32 ^_stop:-35 ^_thumbsup:-33 ^_too:-31 ^_vengo:34 ^_voy:115
^_we:-26 ^_were:-34 ^_will:-64 ^_y:-86 ^_ya:-37 ^_yep:-39 ^_yes:-58 ^_you:-37 a:41 a__late:55 a_bit:39 a_few:31
a_little:27 a_poder:-37 about:46 afternoon:-26 agarro:30 ahi:-265 ahi_$:32 ahi_estare:-56 ahi_estoy:-33 ahi_le:-28
alarm:35 all:-52 alla:34 alla_$:46 almost:26 an:25 ando:62 any:-33 any__to:-25 apenas:45 apologies:25 are:-33
as__as:25 at:132 at_$:36 at_the:34 at_work:32 atrasado:61 away:66 away_$:54 back:-32 be:197 be__at:71 be__by:66
be__in:47 be_a:70 be_late:67 be_there:32 behind:45 behind_$:25 behind_the:-29 bit:45 blocking:30 bridge:46 bus:45
but:70 by:102 by_$:72 by_a:32 c:-82 camino:48 can:-33 cancel:-48 cant:-36 cerca:39 cerca_$:44 chance_de:28 cita:-35
cita_$:-31 come:-37 come_in:-29 coming_$:-62 como_llego:-53 con:58 con_los:53 dame:38 day:-52 day_$:-31 de:74
de_la:28 delayed:30 despues:28 dia:-49 dia_$:-33 do:-44 doing:28 dont:30 drop_off:32 earlier:-25 el:85 el_freeway:33
el_lugar:38 el_martes:-34 el_tapon:26 en:50 en__freeway:30 en__tarde:-64 en_camino:38 en_el:49 en_la:-57 en_pie:-33
es:-32 escuela:26 ese:-27 estamos:-41 estare:-42 estare_$:-37 estoy:106 estoy_a:26 estoy_ahi:53 every:49
every__light:49 every_red:49 few:46 freeway:35 gas:32 gimme:42 give:39 going:35 going__be:60 going_to:38 got:-25
got_to:-29 gps:39 had:78 had_to:72 half:89 half_past:26 have:-37 have_to:-38 hay:58 hay_un:28 heading:36 held:72
held__at:72 held_up:74 highway:28 hit:51 hizo:40 hold:35 hold_my:31 hora:31 hora_$:35 hour:83 house:26 how:-63
hoy:-56 hoy__la:-27 hoy_en:-27 i__there:-27 i_shall:34 i_wont:-35 ill:-34 ill__there:-77 ill_be:-39 im:51
im__coming:-37 im__on:-28 im_late:37 im_not:-44 in_$:29 in__week:-34 in_the:-46 ir:-68 ir_$:-29 is:26 is__a:-25
is_nuts:34 is_there:-38 is_up:58 it:-91 it_$:-48 jueves:-26 just:100 kid:25 la__no:47 la_escuela:26 la_tarde:-118
las:28 las_$:-37 las_llaves:34 late:121 late__the:-39 late_in:-45 late_sorry:31 lately:-27 lately_$:-26 later:-25
le:-34 leaving:56 leaving_now:27 leaving_the:33 left:58 left_$:65 light:36 like:39 like_$:29 little:31 little_late:32
llaves:34 llegando:25 llegar:-43 llego:-25 llego_$:-79 llego_en:36 lluvia:25 lo:-56 los:63 los_ninos:48 lost:27
lugar:42 manana:-31 martes:-36 martes_$:-28 mas:-38 mas_$:103 mas__a:-30 mas_tarde:-160 me:122 me__con:46 me__el:45
me__la:28 me__tarde:31 me_agarro:30 me_fue:26 me_hizo:40 me_late:-171 media:66 media_hora:37 meeting:25 mejor:-31
mero:26 mi__ya:25 min:377 min_$:149 min_late:34 min_tarde:27 mins:114 minutos:27 more:35 moving:31 my:115 my_spot:26
my_wallet:28 ninos:47 ninos_$:48 no__a:-58 no_llego:-32 no_me:64 no_voy:-146 nomas:39 not:-61 not_coming:-78 now:175
now_$:85 nuts:34 of:46 of_me:38 off:36 ok_$:28 on_$:-99 on__road:32 on_the:88 out:103 out_$:55 out__door:30
out_the:25 over:83 overslept:28 para_alla:61 past:86 past_$:48 perdon:39 pero:87 pero_no:31 pie:-34 pie_$:-30
poder:-37 podria:-43 podria_ser:-43 poquito:25 por:-30 puede:-64 puedo:-48 puedo_ir:-30 quarter:49 red:41
red_light:48 retrasado:51 road:50 running:58 running_late:37 salgo:54 school:32 se:66 se__hizo:40 se__mas:-27
se_me:58 se_puede:-48 ser:-42 ser_mas:-48 set:-25 set_$:-28 shall:34 shall_be:34 should:25 si:-70 si_ahi:-30
si_voy:-41 sin:-41 slow:47 so:40 so_i:34 sorry:92 start:36 still_on:-37 stop:-43 tantito:36 tapon:27 tarde_$:-78
tardo:45 ten:49 that:-35 the:76 the__now:92 the_car:30 the_door:25 the_highway:29 the_house:26 the_road:40
the_way:-31 the_week:-36 the_wrong:31 then:42 there_$:-185 there_at:75 there_by:74 there_in:58 thumbsup:-33
thumbsup_$:-33 thursday:-41 thursday_$:-27 to:47 to__in:-26 to__late:30 to__the:25 to_be:53 to_come:-25 todavia:32
todo:-28 tomorrow:-35 too:-38 too_late:-29 took:45 tractor:28 traffic:50 traffic_is:40 trafico:33 trafico_$:28
train:32 tren:42 tren_$:27 ugh:27 un:85 un__en:26 unos:47 up:118 up__the:29 up_at:70 vengo:83 viernes:-25 volando:26
voy:53 voy_$:-88 voy__alla:40 voy__camino:25 voy__poder:-36 voy__y:25 voy_a:-129 voy_para:32 voy_tarde:86 vuelta:42
wallet:28 way:-47 way_$:-30 way_to:-38 we:-53 week:-49 week_$:-46 were:-31 will__there:-61 will_be:-45 wont_be:-42
work:30 wreck:27 wrong:36 y:35 y_$:-85 ya:117 ya__para:31 ya__voy:-52 ya_estoy:41 ya_no:-40 ya_voy:146 yep:-44
yes:-60 you:-45 you_there:-31
"""
