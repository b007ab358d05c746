"""What speaks for and against `cancel`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "cancel"
BIAS = -285
WEIGHTS = """\
#abaj:48 #abla:-22 #able:70 #abou:-49 #acan:15 #acer:21 #ache:19 #acio:41 #aded:18 #adez:14 #afra:18 #afte:23
#agai:23 #agen:37 #ahor:-41 #aigo:-17 #aiti:23 #ajar:14 #akes:-15 #alar:-16 #alca:27 #aled:16 #algo:30 #alie:-15
#alio:28 #alla:-45 #alli:27 #ally:-14 #also:-14 #alto:-15 #ambi:-58 #amil:14 #amin:-21 #anan:71 #ance:197 #ando:-17
#ange:15 #anks:-14 #anoc:34 #anul:76 #anyh:20 #anym:66 #anyt:-19 #anzo:27 #appe:21 #appo:51 #apun:34 #ario:15
#arli:-14 #arme:20 #arra:-14 #asad:-37 #asis:121 #asta:-32 #atch:49 #atel:19 #ater:32 #atev:16 #atio:34 #atra:-32
#atte:36 #atur:-14 #ause:16 #avis:20 #avor:20 #away:-15 #aybe:19 #ayud:-14 #baby:16 #back:-35 #bail:48 #bajo:33
#bebe:16 #beca:17 #befo:-29 #biar:-46 #blem:-20 #body:27 #book:54 #borr:56 #boss:14 #bout:-50 #bran:14 #brin:-20
#bsup:-17 #camb:-57 #came:27 #cami:-17 #canc:215 #cant:59 #canz:27 #casa:16 #caus:16 #cela:45 #cele:143 #celo:31
#cerc:-17 #chan:16 #ched:19 #chem:19 #chis:14 #cion:-14 #cita:100 #cole:16 #come:66 #comi:117 #como:-20 #conf:-30
#conm:35 #corr:-27 #coul:-24 #coun:23 #crap:25 #crat:53 #cuen:26 #culp:38 #cupe:-26 #days:36 #dead:20 #deje:49
#dejo:18 #desp:15 #dezc:14 #dine:19 #ding:37 #disc:40 #dnes:26 #does:-29 #dont:-28 #draw:40 #drop:-32 #dule:21
#ease:92 #eate:18 #ebod:18 #ecau:17 #edam:14 #edes:-16 #edin:14 #edne:26 #edul:21 #eedi:14 #eeds:25 #eeks:14 #efec:16
#efor:-29 #egar:51 #egre:17 #ejem:31 #ejor:31 #elar:-51 #elea:19 #elel:45 #elen:19 #elle:-18 #else:36 #emer:21
#emor:-20 #emos:54 #emov:22 #empr:32 #enda:65 #endi:26 #endo:-16 #enga:22 #engo:-14 #enin:16 #enme:45 #ensa:-15
#ente:21 #eocu:-24 #eone:20 #eran:15 #erca:-17 #erco:16 #erda:22 #eren:72 #eres:-14 #erge:21 #ermo:23 #erne:-26
#eron:20 #erva:96 #esch:-18 #esda:15 #eser:108 #esnt:-20 #espa:23 #espe:92 #espu:16 #esto:-15 #eted:15 #ethi:20
#ever:28 #eves:39 #evok:19 #exti:-21 #exts:-26 #ezco:14 #fall:-21 #falt:-18 #fami:14 #favo:20 #fect:14 #fell:17
#fine:14 #firm:-34 #flor:14 #fore:-29 #forg:57 #form:14 #fort:19 #frai:18 #free:15 #frid:-32 #from:55 #fter:23
#full:19 #gain:23 #gamo:-44 #gast:-21 #genc:20 #gend:37 #give:24 #goin:30 #good:-39 #grac:21 #guar:28 #guna:-19
#hace:22 #haga:15 #hago:14 #hall:17 #hank:-21 #hate:15 #have:91 #heat:17 #hedu:21 #help:-17 #hese:-20 #high:-15
#hing:23 #hist:26 #home:15 #hora:25 #hori:-23 #hosp:30 #howi:30 #hrou:18 #humb:-18 #hurs:19 #ible:64 #icar:14
#iday:-14 #iemp:44 #iend:-21 #iene:-14 #ierc:16 #iern:-26 #iero:32 #impo:62 #iner:19 #info:-19 #ingu:-31 #inst:-15
#inte:-17 #intm:52 #inut:-16 #ious:19 #irme:-17 #isar:14 #iscu:40 #isit:29 #isti:121 #isto:18 #ital:29 #iten:65
#itin:23 #itte:18 #juev:41 #june:28 #just:19 #kids:29 #kill:31 #king:85 #lado:42 #lame:63 #lamo:25 #larm:-14 #last:35
#late:-69 #lati:14 #lcan:27 #ldnt:-14 #leas:94 #left:-14 #lega:35 #lela:76 #lema:-24 #lenm:19 #lets:22 #lida:19
#lien:-18 #lier:-14 #lift:15 #ling:30 #llam:22 #lleg:32 #llin:31 #long:-19 #lori:14 #lost:-38 #lune:-45 #lvid:66
#malo:15 #mana:60 #mand:-18 #mayb:19 #mbia:-52 #mbre:14 #mbsu:-17 #mebo:18 #mejo:31 #mens:-14 #ment:64 #meon:20
#merg:21 #meth:20 #mier:16 #migo:34 #mind:41 #ming:110 #mino:-21 #mins:-25 #minu:-16 #miss:-71 #mist:15 #mont:25
#more:60 #morr:72 #move:-50 #mpos:64 #mpre:27 #must:18 #nada:-31 #name:29 #nana:71 #nate:19 #ncel:215 #ndan:17
#nday:14 #ndin:19 #need:57 #nera:14 #nero:18 #nesd:26 #next:14 #nfir:-22 #nfor:26 #ngam:-46 #nged:64 #ngun:-31
#ning:-36 #nino:18 #nmig:40 #nnin:-26 #noch:24 #nomb:16 #nsaj:-14 #nste:-15 #ntam:32 #nten:20 #nths:23 #ntme:52
#ntra:-16 #nule:76 #nyho:20 #nymo:66 #nyth:-17 #oble:-33 #oche:20 #ocup:-25 #oday:74 #oder:84 #odos:15 #odre:81
#oesn:-20 #oiga:-16 #oing:24 #oint:49 #okin:71 #oles:28 #olvi:65 #ombr:16 #omeb:18 #omeo:20 #omet:18 #omin:110
#omor:72 #onfi:-23 #onga:-44 #onmi:35 #onth:25 #ooki:72 #orar:17 #orge:53 #orit:-23 #orma:14 #orre:33 #orri:-35
#orro:79 #orry:85 #osib:64 #ospi:30 #otal:16 #othe:-33 #otra:16 #otro:37 #ough:14 #ould:-35 #ound:17 #ount:21
#ours:-20 #over:-21 #ovid:32 #owed:23 #owin:23 #paci:26 #pads:15 #para:-23 #paso:-22 #pena:23 #pend:18 #peni:16
#pere:88 #pita:30 #plat:14 #plea:77 #pode:94 #podr:79 #poin:50 #pong:-44 #posi:72 #ppen:15 #ppoi:51 #preo:-24
#prob:-32 #pued:-14 #pull:25 #punt:32 #push:-17 #qued:24 #quit:108 #raba:47 #raca:15 #rade:21 #raig:-20 #rari:17
#rasa:-34 #ratc:53 #rcol:16 #regr:17 #remo:48 #renm:14 #reoc:-24 #resc:-18 #rese:109 #revo:33 #rgen:20 #rget:53
#ries:-39 #righ:-14 #rike:36 #ring:-27 #riou:20 #rita:-23 #rlie:-14 #rnes:-26 #robl:-32 #rong:-26 #room:14 #roug:17
#roun:19 #rows:30 #rren:29 #rrie:-35 #rrow:72 #rsda:57 #runn:-16 #sado:-37 #saje:-14 #sali:22 #same:-28 #satu:-14
#sche:21 #scra:78 #scul:40 #sday:72 #serv:107 #shal:17 #show:37 #sibl:62 #sick:36 #siem:35 #sist:126 #sita:18
#sitt:17 #skip:34 #slot:23 #snow:15 #sold:39 #some:59 #sorr:86 #spac:26 #spen:19 #sper:95 #spit:30 #spon:-45 #spot:41
#spue:16 #stak:15 #stan:-17 #star:-47 #stea:-15 #sted:-27 #ster:31 #stil:-36 #stir:121 #stop:-94 #stri:36 #susp:19
#tach:19 #take:41 #tale:16 #tame:53 #tard:-27 #tart:-29 #tead:-15 #tede:-16 #tely:15 #tend:38 #teng:26 #teni:15
#tenm:21 #terd:27 #teve:16 #text:-59 #than:-26 #then:-44 #ther:-24 #thes:-20 #thin:21 #this:-17 #thro:18 #thum:-18
#thur:19 #tica:14 #tien:-16 #till:-37 #time:-33 #tion:23 #tire:63 #tmen:52 #toda:85 #todo:27 #tomo:72 #tota:16
#trab:57 #trai:-25 #tras:-49 #trik:36 #tten:31 #tter:21 #turd:-14 #turn:39 #uard:28 #uede:-29 #uedo:30 #uent:26
#ueve:25 #uite:94 #uldn:-14 #ulpe:41 #umbs:-18 #undo:39 #unes:-45 #unfo:19 #unni:-16 #unta:23 #urda:-14 #urio:32
#urno:26 #urns:17 #ursd:57 #urse:-18 #uspe:19 #uste:-22 #vemo:-37 #veng:-16 #vide:54 #vier:-21 #visa:14 #visi:29
#voke:19 #wate:22 #wedn:26 #were:-15 #what:15 #when:-24 #wipe:30 #with:50 #wont:39 #work:-71 #worr:-39 #woul:-18
#wron:-26 #xtin:-18 #yest:27 #yhow:20 #ymor:66 #yuda:-14 %again_later:34 %again_later%away:61 %again_later%bring:20
%again_later%call_off:20 %again_later%car:17 %again_later%elsewhere:37 %again_later%fails:44
%again_later%how_long:-20 %again_later%odometer:43 %again_later%on_way:-24 %again_later%refuse:58
%again_later%shift_it:44 %again_later%wrong_one:38 %agree:-107 %agree%away:15 %agree%busy:18 %agree%call_off:-31
%agree%car:27 %agree%car_part:38 %agree%do_it:16 %agree%elsewhere:26 %agree%fails:18 %agree%gone_car:25
%agree%leave_me:-31 %agree%money:15 %agree%on_way:-76 %agree%phone:62 %agree%refuse:-100 %agree%staff:37
%agree%wrong_one:-30 %away:117 %away%bring:65 %away%busy:-42 %away%call_off:94 %away%fails:30 %away%family:85
%away%leak:16 %away%odometer:34 %away%on_way:-33 %away%place:20 %away%refuse:56 %away%staff:15 %away%start_again:49
%away%wrong_one:-64 %bad:106 %bad%bring:30 %bad%call_off:100 %bad%fails:21 %bad%leave_me:18 %bad%money:28
%bad%on_way:22 %bad%phone:14 %bad%question:19 %bad%refuse:66 %bring:172 %bring%busy:35 %bring%call_off:57
%bring%car_part:26 %bring%do_it:27 %bring%elsewhere:23 %bring%fails:70 %bring%family:19 %bring%gone_car:54
%bring%leak:41 %bring%money:35 %bring%odometer:79 %bring%on_way:-28 %bring%phone:66 %bring%place:36
%bring%question:-43 %bring%refuse:45 %bring%shift_it:-106 %bring%staff:51 %bring%start_again:-17 %bring%thanks:21
%bring%wrong_one:22 %busy:66 %busy%call_off:70 %busy%do_it:19 %busy%elsewhere:15 %busy%fails:-47 %busy%leave_me:24
%busy%money:19 %busy%place:18 %busy%shift_it:27 %busy%staff:19 %busy%who:19 %busy%wrong_one:16 %call_off:293
%call_off%car:-16 %call_off%car_part:34 %call_off%elsewhere:32 %call_off%fails:104 %call_off%family:61
%call_off%gone_car:91 %call_off%leave_me:-30 %call_off%lift:-24 %call_off%message:-50 %call_off%money:85
%call_off%noise:-26 %call_off%odometer:34 %call_off%on_way:-96 %call_off%opening:26 %call_off%pay_day:26
%call_off%phone:27 %call_off%place:46 %call_off%question:61 %call_off%refuse:-22 %call_off%shift_it:26
%call_off%start_again:15 %call_off%thanks:46 %call_off%who:56 %call_off%wrong_one:-64 %car%gone_car:45
%car%how_long:14 %car%leave_me:18 %car%refuse:-19 %car%wrong_one:27 %car_part%do_it:25 %car_part%elsewhere:17
%car_part%fails:-14 %car_part%family:21 %do_it%elsewhere:30 %do_it%family:32 %do_it%on_way:14 %do_it%place:18
%do_it%question:34 %do_it%shift_it:-42 %do_it%staff:31 %do_it%start_again:-28 %do_it%wrong_one:43 %elsewhere:91
%elsewhere%fails:18 %elsewhere%leave_me:24 %elsewhere%place:31 %elsewhere%shift_it:48 %elsewhere%staff:39
%elsewhere%wrong_one:28 %fails:47 %fails%gone_car:35 %fails%how_long:16 %fails%leave_me:16 %fails%message:17
%fails%on_way:94 %fails%place:19 %fails%refuse:57 %fails%staff:17 %fails%start_again:-30 %fails%wrong_one:15
%family:79 %family%on_way:37 %family%question:22 %family%refuse:55 %gone_car:125 %gone_car%money:-14
%gone_car%question:21 %gone_car%refuse:36 %gone_car%shift_it:15 %gone_car%wrong_one:41 %how_long:-46
%how_long%odometer:27 %how_long%refuse:17 %how_long%shift_it:-20 %leak:34 %leak%staff:23 %leak%wrong_one:20
%leave_me:-15 %leave_me%money:16 %leave_me%odometer:47 %leave_me%on_way:-21 %leave_me%opening:26 %leave_me%refuse:-23
%leave_me%shift_it:14 %leave_me%staff:19 %leave_me%start_again:-22 %leave_me%who:17 %lift%refuse:18 %message:-67
%message%on_way:18 %money:61 %money%question:47 %money%refuse:36 %money%season:16 %money%wrong_one:17 %noise:-36
%noise%refuse:-14 %odometer:105 %odometer%opening:17 %odometer%shift_it:16 %odometer%who:14 %odometer%wrong_one:15
%on_way:-167 %on_way%phone:27 %on_way%place:24 %on_way%refuse:254 %on_way%staff:19 %on_way%start_again:17
%on_way%thanks:21 %on_way%wrong_one:-29 %opening:21 %pay_day:28 %pay_day%refuse:21 %pay_day%season:28
%phone%shift_it:32 %phone%staff:-27 %phone%start_again:-18 %phone%who:37 %place:36 %place%question:-21
%place%refuse:89 %place%shift_it:16 %question:-51 %question%refuse:26 %question%shift_it:24 %question%staff:27
%question%wrong_one:14 %refuse:132 %refuse%season:24 %refuse%shift_it:-73 %refuse%staff:21 %refuse%start_again:-17
%refuse%thanks:15 %refuse%who:26 %refuse%wrong_one:-46 %season:30 %season%start_again:16 %shift_it:-197
%shift_it%staff:16 %shift_it%start_again:-30 %staff:60 %staff%who:15 %staff%wrong_one:35 %start_again:-48 %thanks:-15
%who:60 %wrong_one:26 @?:-188 @after_visit:-34 @car:-18 @confirm:344 @confirm_stop:-48 @confirm_thumbsup:-14 @day:-69
@later:130 @nothing:342 @nothing_thanks:-14 @odometer:-27 @offers:-80 @reading:-28 @time:-60 @walk_in:-27 ^_$:-39
^_a:-15 ^_ahi:-32 ^_all:-19 ^_ay:15 ^_ayuda:-14 ^_be:-14 ^_boss:16 ^_call:19 ^_can:-134 ^_cancel:-91 ^_cancelar:-73
^_cancele:67 ^_cancelen:14 ^_changed:42 ^_con:19 ^_could:-21 ^_count:19 ^_do:-18 ^_drop:22 ^_el:-30 ^_end:-17
^_forget:14 ^_free:16 ^_gracias:-14 ^_have:-15 ^_help:-17 ^_hi:-19 ^_hmm:-16 ^_how:-23 ^_ill:-27 ^_info:-23 ^_is:-19
^_it:-29 ^_just:-17 ^_kids:17 ^_kill:21 ^_la:-22 ^_le:26 ^_let:14 ^_lo:-16 ^_make:-16 ^_me:22 ^_necesito:-23
^_need:-68 ^_no:-113 ^_nobody:14 ^_nop:-20 ^_not:19 ^_olvide:36 ^_on:-15 ^_opt:-43 ^_perdon:-24 ^_please:35
^_puedo:-48 ^_que:-16 ^_quiero:-16 ^_quit:-25 ^_quiten:39 ^_quitenme:24 ^_revoke:19 ^_scratch:36 ^_se:-18 ^_see:-40
^_si:-35 ^_siempre:29 ^_something:21 ^_still:-27 ^_stop:-34 ^_take:-15 ^_the:24 ^_thumbsup:-17 ^_thursday:-38
^_voy:-40 ^_were:-14 ^_what:-35 ^_wont:32 ^_y:-67 ^_ya:22 ^_ye:-16 ^_yep:-22 ^_yes:-37 ^_yo:-14 a:54 a__ir:15
a__la:18 a__persona:19 a_hacer:22 a_ir:69 a_la:-15 a_las:-34 a_mi:-15 a_otro:24 a_poder:84 able:62 able__make:20
able_to:62 about:-49 add:-17 after:27 after_$:-14 after_all:45 again:23 again_in:25 agenda:41 agradezco:14 ahi:-66
ahi__vemos:-25 ahi_nos:-25 ahora:-19 ahorita:-23 al:-19 alcanzo:27 alcanzo_a:28 algo:32 all_$:18 all__for:-16
all_set:-40 alla:-34 alla_$:-17 also:-14 am:-16 an_appointment:-30 and:82 and_i:21 and_im:45 anoche:34 any:-19
anyhow:20 anymore:66 anymore_$:53 anything:-17 appointment:50 asi:28 asi_que:22 asistir:57 at:-81 at_$:-37
atrasado:-24 avisar:15 away:-15 ay:14 ayuda:-14 back:-34 back_$:-15 back_in:-22 back_out:44 be:86 be__to:40
be_able:41 be_coming:18 be_late:-20 bebe:16 because:17 before:-29 before_$:-20 booking:74 borre:22 borre_mi:22
borren:14 borrenme:15 boss:14 bring:-19 but__need:21 but_i:16 call:-40 call__about:-21 call__my:32 call_me:-82
call_off:62 cambiar:-44 came:24 came_up:18 camino:-21 camino_$:-15 camion:15 can:-87 can__come:-27 can__do:-14
can__make:-19 can__me:19 can_i:-88 can_my:-21 can_we:-25 can_you:-15 cancel:16 cancel_$:-64 cancel__appointment:-29
cancel__please:23 cancel_it:79 cancel_the:26 cancel_thursday:32 cancel_tomorrow:21 cancelar:-45 cancelar_$:-55
cancelar__cita:18 cancele:86 cancele__cita:16 cancele__favor:29 cancele_lo:30 cancele_por:29 cancelela:45
cancelen:-16 cancelled:-18 cancelo:31 cant:59 cant__in:16 cant__it:55 cant_come:63 cant_do:35 cant_wait:-34 car:26
car_$:35 carro_$:-23 casa:16 cerca:-17 change:-44 change__appointment:-29 change_my:-30 changed:64 changed__mind:42
changed_my:52 check_with:15 chiste:15 cita:108 cita__jueves:41 cita_de:17 cita_del:55 cita_y:40 cobran:14 come:76
come_$:36 come_at:-22 come_in:33 coming:117 coming_$:67 coming_in:14 como:-19 conmigo:35 conmigo_$:19 could:-22
count:24 count_me:24 dar:17 day:-31 day_$:-14 de:164 de__agenda:41 de_ese:17 de_hoy:14 de_la:33 de_manana:74
de_que:-19 dead:20 dejo:18 del:184 del__de:24 del__por:23 del_dia:17 del_jueves:64 del_trabajo:34 despues:16
dia_de:23 did:25 did_it:18 dinero:19 disculpe:50 disculpe_$:27 do:-33 do__need:-15 do_i:-26 doesnt:-20
doesnt__anymore:-20 doesnt_work:-20 dont:-28 dont__it:26 dont__my:-85 dont__the:16 dont__to:49 dont_need:87
dont_want:28 drop:-31 drop__car:-23 drop__off:-30 drop_it:-35 drop_my:24 earlier:-14 el__del:28 el__el:-22 el__no:31
el_carro:29 el_jueves:-21 el_lunes:-38 el_mes:19 el_viernes:-30 else:29 else_$:23 en:33 en__casa:23 en__del:-15
en__manana:-15 en__no:28 en_camino:-21 en_el:28 en_la:18 en_otro:16 end:-21 end_$:-18 er:17 es:-37 es_de:-16
es_mi:-19 ese:-20 ese_carro:-17 eso:-19 eso_$:-14 espacio:27 espacio_$:16 este:-29 estoy_en:16 falta_$:-19 favor:21
fell:17 fine:14 for:40 for_now:23 for_someone:29 for_the:19 forget:53 free:18 free__my:29 friday:-27 from:55
get_there:24 give:14 give_my:26 go:20 going:30 going__have:27 going__make:42 going_to:22 good:-38 good_$:-16
good_for:-15 got:29 got__cancel:37 got_it:-40 got_my:-19 got_to:77 guy:24 hace_falta:14 hacer:21 hacer_$:23 hago:14
hago_$:14 have:91 have__back:44 have__cancel:27 have_a:-24 have_an:17 have_no:-18 have_to:93 hay:-29 hay_problema:-17
heater:18 help:-17 here:-24 here_$:-23 hi:-19 hice_$:21 hmm:-16 home:15 hora:28 hora_$:32 horario:17 horario_$:17
hospital:30 how:-66 how_about:-36 how_much:-15 hoy:53 hoy_$:23 i:58 i__a:-24 i__an:-24 i__at:-22 i__be:90 i__come:18
i__no:-19 i__that:21 i__the:-21 i__to:17 i__up:16 i_cant:58 i_come:-31 i_dont:-17 i_drop:-39 i_have:31 i_need:-14
i_shall:17 i_skip:14 i_wont:24 id__to:30 id_like:20 if__skip:14 ill:-103 ill__there:-72 ill_be:-72 ill_call:-17 im:72
im__going:-16 im__of:17 im_good:-15 im_not:56 im_out:28 imposible:64 in:125 in__hospital:15 in_an:15 in_june:29
in_tomorrow:28 info:-26 info_$:-26 instead:-15 ir:244 ir_$:145 ire:74 ire_$:59 is:-70 is__going:-16 is_out:-17
is_the:-14 it:113 it__how:-25 it__is:18 it_anymore:70 it_in:31 it_is:-20 it_off:27 it_to:-23 it_tomorrow:15 jaja_$:21
jueves:41 jueves_$:80 june:28 june_$:28 just:19 just__it:36 kid:21 kids:29 kill:31 la:76 la__a:27 la__de:28
la__del:45 la__me:16 la__que:38 la__si:-15 la__y:21 la_agenda:41 la_cita:83 la_manana:-16 lado:18 lado_$:19 las:-32
las_$:-18 last:35 last_night:29 late:-62 late_$:-35 le:39 le__a:-19 le_agradezco:14 left:-14 let:25 let_the:24
lets:22 lets__it:-20 lift:15 like_to:30 llame:19 llame_el:21 llantera:14 llegar:54 llegar_$:43 lo:151 lo__a:-16
lo__de:16 lo__en:34 lo__manana:33 lo_de:58 lo_del:51 lo_mio:39 lo_voy:-24 longer_have:-14 lost:-38 lunes:-45
lunes_$:-34 make:14 make_it:70 manana:71 manana_$:32 manana_no:15 mas:-35 maybe:19 me:131 me_$:-72 me__algo:24
me__el:41 me__for:18 me__la:-22 me__the:33 me__y:17 me_about:-18 me_again:25 me_back:-33 me_cobran:15 me_es:49
me_from:20 me_la:-19 me_llame:19 me_lo:19 me_off:20 me_out:32 me_salio:34 me_so:14 me_to:-19 mejor:31 mejor_no:21
mejor_que:15 mensajes_$:-17 mes:18 mi:132 mi__de:17 mi__del:24 mi__lo:-14 mi__y:29 mi_cita:64 mi_turno:14
miercoles:16 miercoles_$:17 mil:-14 min:-81 min_$:-33 mind:46 mine:-18 mins:-25 mio:33 miss:-69 miss_it:-68
mistake:15 mon:-26 months:23 move:-50 mover:-19 much:-19 mucho_$:19 must:18 my:169 my__dont:44 my__for:32 my__off:27
my__to:15 my_appointment:-41 my_booking:50 my_mind:42 my_name:30 my_slot:25 my_spot:41 nada:-28 nada_$:-24 name:30
name_off:21 need:21 need__appointment:16 need__cancel:64 need__change:-20 need_it:39 need_the:25 need_to:-52
needing:14 needs:25 needs_it:17 next:14 ni:16 night_$:21 ninguna:-19 nino:17 no_$:-253 no__a:130 no__asistir:57
no__cita:-17 no__conmigo:35 no__dinero:16 no__el:-27 no__esa:-18 no__ese:-16 no__falta:18 no__hago:14 no__have:-14
no__ir:125 no__llegar:41 no__manana:23 no__ninguna:-15 no__no:-14 no__preocupe:-24 no__problema:-17 no__que:16
no__si:-43 no__voy:-17 no_alcanzo:27 no_es:-31 no_gracias:-17 no_hay:-25 no_ire:74 no_it:-16 no_le:-17 no_llego:34
no_me:58 no_podre:81 no_puedo:83 no_quiero:23 no_se:-16 no_soy:-23 no_tengo:-14 no_traigo:-15 no_va:23 no_voy:211
no_worries:-39 no_ya:-15 nombre:16 nop:-20 nop_$:-20 nos:-55 nos_vemos:-49 not:108 not_$:-21 not__in:17 not__the:-17
not__to:33 not_be:35 not_coming:129 not_going:23 now:-28 now_$:-27 of_town:16 off:87 off_$:-18 off__schedule:41
off_my:27 off_the:42 ok_$:-14 olvide:36 on:15 on_$:-31 on__way:-16 on_a:17 on_friday:22 on_it:-19 on_monday:17
on_my:-17 on_the:-40 on_thursday:20 opt:-44 opt_me:-16 opt_out:-20 or:-16 other:-25 otra:16 otra_persona:19 otro:37
otro_lado:19 out:32 out__the:18 out__town:17 out_of:17 pads:15 para:-14 para_alla:-17 paso:-22 pena:23 person:-18
person_$:-18 please:78 please_$:-28 please__me:22 please__my:49 please__the:20 please_cancel:38 please_dont:-75
please_remove:16 please_take:27 pm_$:-20 poder:84 podre:81 por:35 por_avisar:17 por_telefono:21 preocupe:-24
problema:-24 puede:-29 puedo:20 puedo__a:-20 puedo__el:-15 puedo_ir:16 puedo_manana:15 pull:27 push:-17 push_it:-14
put_me:-19 que:88 que__llame:19 que_me:29 que_tenga:14 que_tengo:15 quedamos:14 quiero_ir:24 quit_$:-18 quit__me:29
quit_texting:19 quite:29 quiten:43 quiten__cita:25 quiten_mi:33 quitenme:22 remove_the:16 reschedule:-16 revoke:19
revoke_$:19 room:14 running:-15 saliendo:-15 salio:28 salir__trabajo:15 salir_del:15 same:-28 same_time:-27
saturday:-14 say:-29 say_no:-26 schedule_for:17 scrap:34 scratch:55 se__a:14 se__mi:16 se_preocupe:-24 se_puede:-15
se_va:14 see:-86 see_you:-53 ser_$:18 set:-38 set_$:-38 shall:17 showing:30 si:-103 si_voy:-70 sick:36 siempre:35
siempre_no:30 skip:34 skip_it:20 slot:23 so:121 so__me:18 so_i:30 so_no:23 sold:39 sold__car:40 sold_the:40
somebody:18 somebody_else:16 someone:20 someone__me:-16 something:20 something__up:18 something_came:18 sorry:86
sorry_$:59 soy:-31 spot:41 start:-28 start_$:-18 still:-36 still_on:-14 stop:-82 stop_$:-29 stop__me:-35
stop_texting:-35 strike:36 take:27 take__off:20 take_me:16 take_my:14 tan:21 tarde:-17 tenga:25 tenga__dia:14
tengo__el:15 texting:-18 texting_me:-16 texts:-26 texts_$:-23 th:15 th_$:22 thanks_$:-25 thanks_but:21 that_$:-25
the:174 the__anymore:16 the__before:-19 the__for:25 the__guy:15 the__i:20 the__off:-23 the__thing:21
the_appointment:117 the_car:27 the_day:-15 the_hospital:15 the_next:15 the_pads:15 the_schedule:31 the_texts:-14
the_th:15 the_thursday:21 the_visit:17 then:-44 then_$:-23 there:25 these:-20 these_texts:-19 thing:25 this:-17
through:18 thumbsup:-17 thumbsup_$:-17 thurs:-38 thursday:57 thursday_$:85 thursday__work:-36 til:-17 time:-28
time_$:-49 to:145 to__else:27 to__in:19 to__it:14 to__my:-23 to__off:29 to__on:65 to__out:39 to__to:19 to_bring:-16
to_call:34 to_cancel:92 to_change:-37 to_come:54 to_do:-22 to_have:35 to_keep:15 to_make:58 to_move:-46
to_somebody:16 to_that:-15 to_the:-21 today:67 today_$:19 todos:15 tomorrow:42 tomorrow_$:-19 tomorrow_after:20
tomorrow_please:34 tomorrows:30 totaled:16 trabajar:15 trabajo:35 trabajo_en:18 traded:18 traded_it:19 traigo:-15
turno:26 turns:17 two:28 una:-15 up:69 up_$:34 up__i:16 up_and:17 up_at:-18 up_my:28 ustedes:-16 va:45 va_a:46
vemos:-37 vemos_$:-24 vengo:-16 viernes:-26 viernes_$:-19 visit:19 voy:-27 voy_$:-57 voy__alla:-19 voy__camino:-20
voy__ir:40 voy__poder:50 voy_a:71 voy_en:-20 voy_para:-18 voy_saliendo:-14 wait:-26 wait_$:-34 waiting:23
waiting_room:14 want_to:15 was:22 water:22 we:-46 we__it:-30 we_make:-17 wednesdays:22 week:-17 week_$:-23 weeks:14
weeks_$:15 were:-15 were__in:17 what__it:19 what_is:-14 whatever:16 when:-21 who__it:17 will__be:16 wipe:32
wipe_my:32 wont:39 wont__able:29 wont__coming:21 wont__it:-38 wont__there:59 wont_be:139 wont_make:19 wont_start:-20
wont_work:-38 work:-73 worries:-39 wrong:-26 wrong_person:-15 y:32 y_$:-66 y__a:14 y__en:15 y__me:18 y_lo:17 y_no:23
ya:-74 ya_$:-44 ya__hace:15 ya__lo:30 ya__quiero:38 ya__tengo:-16 ya__voy:84 ya_estoy:-20 ya_me:24 ya_no:97
ya_voy:-65 ye:-16 yep:-22 yes:-51 yes_$:-14 yes__it:23 yesterday:27 yo:-24 you:-60 you__me:-18 you_can:38
you_tomorrow:-34
"""
