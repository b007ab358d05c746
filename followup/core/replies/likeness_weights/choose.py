"""What speaks for and against `choose`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "choose"
BIAS = -301
WEIGHTS = """\
#abad:-28 #abla:-14 #able:23 #abou:-55 #acer:28 #ache:-20 #acia:18 #actl:14 #ados:22 #afte:16 #agar:26 #akes:18
#aldr:-22 #algu:22 #alle:16 #alqu:29 #alre:-17 #amos:-15 #ance:-18 #anda:35 #ando:-15 #anot:15 #ante:33 #anto:23
#anyt:-71 #apar:18 #apun:27 #arar:-39 #arat:-19 #arde:-31 #arli:48 #arly:-78 #arme:15 #arou:-24 #arro:33 #arta:19
#asie:46 #atel:16 #ater:-35 #atev:52 #atte:82 #atur:-32 #ause:17 #avor:62 #aybe:-54 #back:29 #bado:-28 #beca:17
#befo:19 #bend:16 #best:49 #bett:-15 #blem:50 #body:27 #boss:-43 #both:66 #bout:-58 #brak:36 #brin:55 #bscr:-19
#bsup:16 #cant:-117 #carr:24 #cars:-14 #casa:16 #cati:-15 #caus:17 #cesi:37 #chan:-22 #ched:-23 #cheq:25 #ches:15
#chev:29 #chil:14 #chin:41 #cias:18 #cide:14 #cion:34 #cita:-43 #clar:-31 #clas:-20 #cloc:39 #clos:35 #come:-19
#cond:74 #cort:24 #cost:15 #coul:-38 #crib:-26 #ctly:14 #cuan:17 #cuen:14 #cues:-16 #cupo:40 #dale:32 #deja:-15
#dejo:27 #desc:20 #dial:-19 #didn:18 #diga:16 #digo:-23 #dime:16 #dine:-16 #dios:15 #disc:15 #dito:31 #dnes:41
#does:-18 #doin:14 #down:22 #dria:-37 #driv:25 #drop:30 #each:-43 #eads:15 #eady:-18 #earl:-27 #easi:46 #ebod:29
#ecau:17 #eces:36 #echi:20 #echo:17 #ecid:14 #econ:74 #ecto:27 #edia:17 #edne:30 #efer:54 #efie:14 #efor:19 #egun:59
#eith:-55 #ejor:-82 #emos:30 #empr:-42 #ence:34 #endi:37 #endr:-31 #engo:28 #enme:18 #enta:38 #ente:14 #enti:15
#ento:18 #entr:-18 #eone:26 #eque:25 #erar:16 #eren:26 #eres:-24 #erfe:54 #eria:-18 #erne:39 #erno:17 #ervi:-16
#esas:-28 #esco:17 #esda:46 #esit:37 #esnt:-33 #esos:-16 #espe:32 #esta:41 #este:-25 #etal:67 #ette:-15 #evar:25
#ever:83 #eves:18 #eway:15 #exac:14 #favo:62 #fect:54 #fere:26 #fier:16 #fine:57 #firs:21 #floo:14 #fore:19 #forg:-26
#form:16 #free:19 #fren:27 #from:16 #fter:16 #game:21 #goin:23 #gone:-23 #grab:20 #grac:32 #grea:15 #grin:19 #guie:16
#guna:-116 #gund:64 #guno:-52 #hace:37 #hanc:-19 #hank:19 #hate:52 #have:29 #head:14 #hech:17 #hequ:25 #hese:-18
#heve:29 #hich:35 #hift:17 #hina:20 #hing:-48 #hird:18 #hold:-18 #home:19 #hone:22 #hora:14 #hose:-40 #houl:30
#hour:-34 #humb:14 #hurs:25 #ible:-64 #iche:29 #idit:14 #idnt:18 #iemp:14 #iera:38 #iern:30 #iero:32 #iest:74
#igam:17 #ight:48 #igue:17 #illo:14 #imag:-20 #imer:65 #impo:-42 #indi:19 #indl:15 #iner:-16 #ings:-23 #ingu:-173
#insi:14 #inst:-62 #inte:-19 #ique:14 #irst:21 #isco:18 #ismo:18 #iste:39 #ithe:-55 #jaja:17 #juev:18 #keys:22
#kind:26 #lama:-16 #laro:-31 #last:48 #late:-65 #lave:14 #ldnt:14 #ldri:-22 #lema:26 #lets:16 #leva:34 #leve:24
#lgui:18 #lier:20 #lies:28 #lift:16 #ligh:14 #like:-30 #liqu:14 #list:19 #llav:14 #llev:59 #loca:-15 #lock:43
#lonc:19 #long:34 #loor:14 #lose:35 #lqui:29 #lrea:-17 #ltim:85 #lune:-50 #mage:-22 #mana:-20 #mand:47 #mart:-18
#matt:81 #mayb:-54 #mber:61 #mbsu:16 #mebo:29 #mejo:-82 #meon:26 #mera:26 #mero:61 #meta:57 #mism:26 #mond:-15
#morn:31 #morr:-34 #mpos:-41 #mpra:-35 #muev:14 #nada:-39 #nana:-15 #nces:17 #nday:-35 #nder:15 #ndid:21 #ndin:17
#ndly:15 #ndra:-23 #near:18 #nece:36 #need:89 #neit:-185 #nero:-17 #nesd:30 #next:-88 #ngun:-173 #nigh:36 #nill:14
#ning:-174 #nito:-18 #noma:18 #none:-127 #noon:-37 #note:17 #nsid:14 #nste:-49 #nsub:-19 #ntad:18 #ntem:24 #nter:-19
#ntes:26 #ntit:14 #nton:24 #numb:62 #nume:21 #nyth:-62 #oble:52 #ocat:-15 #ocho:22 #oclo:30 #ocup:39 #oesn:-33
#oice:15 #oing:37 #okin:15 #omas:18 #omeb:29 #omeo:26 #omet:-15 #omor:-39 #ongo:19 #opci:45 #open:46 #opti:56
#orge:-25 #orks:48 #orme:16 #orni:29 #orqu:30 #orro:-34 #orry:-50 #orte:15 #osib:-54 #ossi:-30 #ould:-28 #ound:-16
#oure:22 #over:41 #paga:18 #para:17 #part:17 #pasa:-15 #pcio:45 #pedi:14 #pera:21 #perd:15 #perf:54 #pero:-53
#phon:22 #pidi:15 #plan:33 #pliq:14 #pong:19 #porq:30 #posi:-43 #poss:-30 #pran:-49 #pref:68 #pren:17 #pres:42
#pric:14 #prim:65 #prob:52 #ptio:56 #pued:-21 #pues:27 #punt:27 #qued:24 #quic:14 #quie:26 #quit:-41 #raci:18
#rack:19 #rake:36 #ranc:19 #rani:-17 #rano:-31 #rday:-38 #rdon:15 #read:-19 #reat:15 #rech:28 #refe:54 #refi:14
#renc:27 #rend:17 #rest:14 #rfec:54 #rget:-25 #ribe:-24 #rice:14 #rime:65 #rind:19 #ring:86 #rise:29 #rive:16
#rlie:48 #rnes:30 #rnin:30 #rnoo:17 #robl:52 #ront:16 #roun:-25 #rque:41 #rrow:-34 #rted:18 #rtes:-18 #rued:15
#rven:18 #rvic:-15 #saba:-28 #sald:-22 #salg:15 #same:-29 #satu:-32 #says:14 #scri:-26 #sday:46 #seco:74 #seda:-16
#segu:51 #sell:14 #sent:24 #serv:-16 #shif:17 #shou:30 #sibl:-84 #side:25 #sigu:15 #sito:42 #slot:51 #smok:17
#some:36 #sorr:-50 #sper:26 #ssib:-30 #stad:31 #star:31 #stea:-49 #sted:23 #stil:49 #subs:-19 #suit:31 #sund:-20
#tach:-20 #tado:36 #take:56 #tard:-35 #tart:34 #tche:15 #tead:-49 #tele:20 #tely:24 #teme:41 #temp:-53 #tend:-23
#teng:34 #tere:-17 #tern:17 #teve:52 #text:-18 #than:18 #that:22 #them:37 #then:-23 #ther:-49 #thes:-18 #they:21
#thin:-57 #thir:20 #this:-34 #thos:-39 #thum:14 #thur:35 #till:55 #tima:59 #timo:30 #tion:66 #tito:14 #toca:-25
#tomo:-23 #tonc:17 #trae:20 #tres:22 #tter:67 #tues:18 #turd:-32 #ualq:29 #uant:23 #ubsc:-19 #uede:-21 #uedo:28
#uesd:16 #ueve:23 #uick:14 #uien:-17 #uier:59 #uito:-14 #uits:33 #uldn:14 #ulti:85 #umbe:62 #umbs:14 #umer:21
#unde:16 #undo:31 #unes:-50 #unsu:-19 #unte:27 #urda:-32 #urse:15 #uste:16 #utch:15 #vale:-19 #vemo:32 #vers:15
#vier:29 #wedn:30 #weds:28 #week:-92 #well:31 #were:-22 #what:-21 #whic:35 #will:55 #wise:19 #with:61 #wont:-33
#woul:-20 #xact:14 #your:41 #ythi:-63 #zero:-26 %again_later:25 %again_later%agree:59 %again_later%away:19
%again_later%bring:63 %again_later%busy:38 %again_later%call_off:44 %again_later%car_part:45 %again_later%do_it:34
%again_later%doubt:20 %again_later%gone_car:17 %again_later%lift:38 %again_later%meaning:22 %again_later%money:-18
%again_later%odometer:16 %again_later%opening:38 %again_later%pay_day:-18 %again_later%phone:27
%again_later%question:47 %again_later%refuse:25 %again_later%season:-37 %again_later%staff:28
%again_later%start_again:44 %again_later%wrong_one:30 %agree:253 %agree%away:60 %agree%bring:46 %agree%busy:80
%agree%car:16 %agree%car_part:88 %agree%do_it:17 %agree%doubt:19 %agree%elsewhere:25 %agree%fails:20
%agree%gone_car:29 %agree%how_long:104 %agree%leave_me:14 %agree%lift:40 %agree%meaning:21 %agree%money:49
%agree%noise:27 %agree%odometer:31 %agree%on_way:31 %agree%opening:24 %agree%pay_day:21 %agree%phone:30
%agree%place:25 %agree%question:140 %agree%refuse:15 %agree%season:-26 %agree%shake:15 %agree%shift_it:77
%agree%smoke_smell:17 %agree%staff:48 %agree%start_again:36 %agree%thanks:60 %agree%wrong_one:30 %away:147
%away%busy:26 %away%car_part:17 %away%lift:34 %away%on_way:41 %away%refuse:14 %away%wrong_one:26 %bad:-39
%bad%question:-15 %bring:138 %bring%busy:17 %bring%call_off:60 %bring%do_it:31 %bring%fails:18 %bring%family:16
%bring%leave_me:18 %bring%lift:42 %bring%money:33 %bring%on_way:34 %bring%opening:26 %bring%shift_it:52
%bring%staff:14 %bring%start_again:39 %bring%thanks:29 %bring%wrong_one:21 %busy%car_part:18 %busy%fails:-32
%busy%family:14 %busy%leave_me:16 %busy%lift:26 %busy%phone:16 %busy%question:28 %busy%refuse:42 %busy%wrong_one:24
%call_off:-129 %call_off%do_it:-28 %call_off%gone_car:31 %call_off%how_long:61 %call_off%lift:25
%call_off%message:-15 %call_off%money:14 %call_off%on_way:23 %call_off%phone:-21 %call_off%question:33
%call_off%refuse:-42 %call_off%shift_it:60 %call_off%staff:35 %call_off%start_again:53 %car%doubt:14
%car%gone_car:-31 %car%lift:29 %car%meaning:14 %car%odometer:16 %car%question:32 %car%refuse:42 %car%staff:-18
%car_part:195 %car_part%fails:50 %car_part%leak:17 %car_part%noise:27 %car_part%odometer:16 %car_part%on_way:34
%car_part%start_again:23 %do_it:24 %do_it%on_way:20 %do_it%wrong_one:-20 %doubt:-20 %doubt%elsewhere:19
%doubt%how_long:27 %doubt%money:-15 %doubt%question:27 %doubt%shift_it:34 %elsewhere%meaning:14 %elsewhere%phone:20
%elsewhere%staff:27 %elsewhere%wrong_one:14 %fails:71 %fails%how_long:14 %fails%leave_me:-19 %fails%money:15
%fails%noise:19 %fails%place:16 %fails%question:19 %fails%refuse:-40 %fails%start_again:35 %family%shift_it:22
%gone_car:18 %gone_car%how_long:-15 %gone_car%refuse:36 %gone_car%wrong_one:-14 %how_long%lift:19 %how_long%money:-20
%how_long%odometer:19 %how_long%on_way:-30 %how_long%question:19 %how_long%refuse:15 %how_long%thanks:27
%how_long%wrong_one:19 %leak:16 %leave_me:-84 %leave_me%message:-14 %leave_me%opening:20 %leave_me%start_again:23
%lift:150 %lift%on_way:39 %lift%phone:19 %lift%question:20 %lift%refuse:85 %lift%shift_it:26 %meaning:104
%meaning%question:32 %meaning%shift_it:14 %meaning%wrong_one:20 %message:-16 %money:59 %money%on_way:42
%money%pay_day:14 %money%staff:16 %noise:76 %odometer:92 %odometer%on_way:28 %odometer%question:41 %on_way:43
%on_way%question:31 %opening:89 %pay_day%season:-24 %phone:53 %phone%shift_it:27 %phone%staff:37 %phone%wrong_one:17
%place:58 %place%question:30 %place%refuse:-18 %place%start_again:18 %question:-25 %question%refuse:80
%question%shift_it:67 %question%start_again:19 %question%who:-70 %question%wrong_one:44 %refuse:-64
%refuse%shift_it:49 %refuse%staff:16 %refuse%start_again:37 %refuse%thanks:21 %season:-75 %season%shift_it:-20
%shake:16 %shift_it:-56 %smoke_smell:19 %staff:29 %staff%wrong_one:37 %start_again:98 %thanks:170 %who:-76
%wrong_one:28 @?:-100 @after_visit:-31 @car:-24 @confirm:-108 @confirm_stop:-21 @day:-56 @later:-60 @nothing:-71
@odometer:-21 @offers:640 @offers_:36 @reading:-22 @time:-63 @times:197 @walk_in:-33 ^_$:17 ^_after:-23
^_afternoon:29 ^_ahi:30 ^_all:53 ^_am:39 ^_and:14 ^_antes:-30 ^_any:18 ^_anything:-22 ^_ask:-17 ^_both:49 ^_call:-26
^_can:-76 ^_cant:-114 ^_claro:-20 ^_could:-56 ^_couldnt:14 ^_cual:-20 ^_cualquiera:40 ^_cuanto:-14 ^_dale:26 ^_de:-35
^_do:-40 ^_doesnt:53 ^_done:15 ^_either:136 ^_el:183 ^_en:-23 ^_esa:15 ^_ese:-19 ^_first:73 ^_forget:-24 ^_fri:22
^_friday:130 ^_go:17 ^_got:-40 ^_have:-22 ^_hm:-59 ^_hmm:-72 ^_hold:-15 ^_how:-171 ^_ill:73 ^_im:-27 ^_is:-92
^_la:205 ^_las:23 ^_last:43 ^_let:-37 ^_lets:17 ^_lunes:16 ^_make:-36 ^_mas:-17 ^_maybe:-45 ^_me:59 ^_mejor:-93
^_monday:-15 ^_morning:17 ^_muy:-82 ^_nada:-31 ^_nd:45 ^_neither:-184 ^_ni:-22 ^_ninguna:-111 ^_ninguno:-44 ^_no:-88
^_none:-115 ^_noon:-26 ^_nop:-20 ^_not:-116 ^_numero:23 ^_ok:23 ^_on:-14 ^_only:-17 ^_option:19 ^_parar:-38
^_perfect:18 ^_perfecto:21 ^_prefiero:14 ^_put:39 ^_que:-32 ^_quien:-18 ^_quiero:20 ^_quit:-34 ^_saturday:18 ^_se:-27
^_second:39 ^_si:91 ^_sure:25 ^_take:16 ^_that:-16 ^_the:192 ^_those:-19 ^_thumbsup:16 ^_thurs:28 ^_thursday:-38
^_too:-148 ^_tuesday:26 ^_unsubscribe:-16 ^_viernes:29 ^_wednesday:15 ^_weds:14 ^_were:-19 ^_what:-139 ^_which:-16
^_whichever:29 ^_who:-41 ^_works:30 ^_y:-62 ^_ya:-15 ^_yeah:-14 ^_zero:-26 a__casa:18 a__day:-21 a__home:20
a__hora:-23 a__por:28 a_hacer:16 a_la:15 a_las:-105 a_lift:17 a_mi:28 a_que:-24 about:-55 about_the:18 abran:14
abran_$:14 after_$:-19 after__th:-21 after_the:-15 after_you:23 afternoon:28 afternoon_$:-21 again:16 again_$:25
ahi:98 ahi__vemos:19 ahi_nos:28 al:72 al_trabajo:15 alguien:18 all:17 all__them:51 all_of:50 already:-17 am:46
an_hour:-18 and:96 and__need:40 and__up:15 and_have:19 and_i:17 and_ill:22 and_my:16 and_what:21 ando:-17 antes:28
antes_$:25 antes__que:14 any:-19 any__those:68 any_chance:-18 any_day:-27 any_of:64 anything:-62 appointment_$:-14
apunteme:27 are:-29 are_fine:14 around:-24 around_$:-22 ask:-78 ask_me:-25 at:32 at_$:-28 at__is:19 at_all:18 back:29
back_$:23 be:-18 be_$:-47 be_there:17 because:17 before:19 before_$:27 before_i:-23 best:49 best_$:34 better:-15
better_$:-22 boss:-43 boss_$:-35 both:67 brakes:24 bring:47 bus_stop:14 but:-119 but__have:23 but__me:20 but_i:26
cae:44 call__please:-19 came_on:23 can:-74 can__be:-52 can__bring:19 can__do:-60 can_do:21 can_it:-57 can_we:-31
can_you:-30 cant:-117 cant_do:-62 carro:24 carro__para:23 carro_prestado:31 cars:-14 casa:16 casa_$:16 chance:-19
cheque:25 cita:-42 cita_$:-21 claro:-31 claro__si:-21 claro_que:-21 close:24 come:-16 con:80 con_la:14 could:-52
could__do:-45 could_you:-44 couldnt:14 couldnt_be:14 cual:-33 cualquiera:38 cualquiera__los:14 cualquiera_de:38
cuanto:22 cuesta:-15 da:49 da_igual:22 dale:26 day:-77 day_$:-37 day_for:-26 day_off:14 de:111 de__abran:14
de__dos:27 de__es:-20 de__me:-23 de__que:19 de__si:-14 de__tarde:15 de__y:16 de_eso:-21 de_la:20 de_las:90 de_que:-19
decide:27 dejo:27 dejo__llave:17 dejo_la:17 del:78 del_viernes:27 den:20 dia:-44 dia_$:-29 didnt:18 digame:22
digo:-23 digo_$:-22 dime:16 dinero:-16 dios:16 do:-32 do_$:-25 do__at:32 do__need:28 do__of:-15 do__sell:14
do__take:16 do_friday:-28 do_i:39 do_instead:-34 do_they:23 do_you:48 does:15 does_it:23 doesnt:-33 doesnt_work:-105
doing:14 doing_$:19 dos:45 dos_$:42 down:22 down_for:21 drop:30 each:-17 earlier:20 early:-97 early_$:-117
early_for:-15 eh:22 either:130 el:103 el__cuanto:14 el__ese:16 el__las:26 el__me:24 el__mejor:-29 el__no:22
el__para:16 el__pero:-93 el__porque:14 el__se:15 el__sea:17 el__tempranito:-17 el__temprano:22 el_de:56 el_del:15
el_lunes:-79 el_martes:-48 el_mas:51 el_primero:60 el_que:45 el_sabado:-32 el_segundo:31 el_ultimo:30 el_viernes:-21
en:-26 en__de:-17 en__tarde:-35 en_cuanto:-15 en_la:-28 end_$:16 entonces:17 es:-14 es_$:-25 es__cita:-32 es__o:14
es_la:-21 esa:37 esas:-32 ese_dia:-14 eso_$:23 eso_me:-15 esos:-16 espera:14 esta:28 evening:14 exactly:14 favor:62
favor_$:36 favor_y:14 fin:-19 fin_de:-18 fine:57 fine__me:38 fine_with:24 first:21 first_$:-60 first_one:48 floor:14
for:-28 for_$:-25 for_it:16 for_me:-63 for_the:17 for_thursday:21 for_you:46 forget:-25 forget_it:-23 fri:21
friday:24 friday_$:-114 friday__and:30 friday__it:20 friday_afternoon:20 friday_but:-46 friday_is:24 fridays:-16
from:16 fue_el:-19 go:59 go__friday:26 go_with:46 going:23 going_to:24 gone:-23 good_$:-22 got:-71 got_anything:-31
got_it:-16 grab:20 gracias:18 gracias__me:15 gracias_y:14 great:15 grinding:19 hacer:28 hacer_$:16 had:-17 had_it:-15
has:18 have:30 have_a:-21 have_to:21 heads:15 heads_up:15 hecho:17 hm:-59 hmm:-72 hold:-15 home:19 home_$:19 hour:-30
how:-28 how__is:-24 how__should:22 how__will:25 how_about:-23 how_long:28 how_much:-27 hoy:24 i:71 i__do:30 i__for:36
i__make:24 i__one:-17 i__to:24 i__you:-16 i_bring:19 i_can:58 i_never:15 i_plan:27 iba:16 iba_a:16 id:15 id__the:31
id_prefer:31 if:17 if_it:24 ill:135 ill__a:18 ill__it:19 ill__the:19 ill__there:17 ill_be:19 ill_have:28 ill_need:18
ill_take:34 ill_wait:18 im:-28 im_in:-15 imposible:-41 in:-62 in_$:-21 in__afternoon:-22 in__day:-28 in_for:21
in_the:-54 inside:14 instead:-49 instead_$:-57 interested:-16 interested_$:-14 is:79 is__a:40 is__cost:-25 is__for:19
is__going:26 is__open:19 is__the:16 is__with:22 is_better:19 is_fine:26 is_good:17 is_it:-41 is_my:-16 is_no:-25
is_still:26 is_this:-30 is_too:-46 is_your:22 it__at:-14 it__the:-30 it__to:15 it_and:-15 it_be:-55 it_for:-19
it_is:77 it_take:23 jaja:19 jaja_$:20 jueves:18 jueves_$:51 jueves__a:-74 jueves_pero:-74 keys:22 keys_$:19 kindly:15
la:258 la__a:14 la__en:28 la__las:15 la__me:14 la__no:18 la__pero:16 la__y:15 la_cita:-22 la_de:43 la_del:44
la_llave:17 la_primera:27 la_rueda:15 la_segunda:28 la_tarde:-28 la_ultima:45 las_$:-98 las__el:-17 las__me:17
las_dos:44 las_pero:19 las_que:19 last:48 last__and:14 last_one:30 late:-70 late__me:-36 lately:19 lately_$:19
later:-27 later_one:33 le:81 le__a:48 le_toca:-22 le_van:33 les:26 les_dejo:14 let:-47 let_me:-52 let_the:15 lets:16
lift:16 light:15 like:-30 like_$:-49 llave:17 llave_en:17 lleven:25 lo_espero:19 lo_mismo:15 location:-14 long:27
long_$:14 long__it:27 long_will:25 los:16 los__me:-14 lunes:-50 lunes_$:-56 make_it:-25 make_that:16 mal:-18
manana:-16 mando:15 martes:-18 martes__la:-14 martes_en:-14 mas__el:-16 mas_pronto:14 mas_temprano:39 matter:74
maybe:-54 maybe_next:-44 me:110 me_$:17 me__a:18 me__ahi:21 me__al:22 me__el:-37 me__for:30 me__igual:22 me__la:19
me__mejor:26 me__my:-37 me__the:16 me_a:-15 me_about:14 me_and:14 me_back:24 me_da:50 me_down:25 me_fue:-19
me_hace:14 me_please:-19 me_queda:-22 me_quedo:24 me_sale:-24 me_sirve:-17 me_sirven:18 me_the:35 me_tienen:17
media:17 mejor:-82 mejor__lunes:-47 mejor_el:-51 mes:-15 metal:57 metal__metal:25 mi:55 mi_$:16 mi_casa:17 mismo:18
monday:-17 monday_$:23 monday__be:-46 monday_at:-15 monday_but:-23 morning:38 much:-20 much__it:-33 muy:-81
muy_temprano:-82 my:23 my__off:14 my__phone:18 my_boss:-53 my_day:14 my_work:16 nada:-39 nada_de:-24 nd:40 nearly:18
necesito:30 necesito__me:32 necesito_que:32 need:90 need_a:35 need_to:16 neither:-185 next:-88 next_week:-61 ni:-55
ni_la:-35 night:16 ninguna:-116 ninguno:-56 ninguno__los:-21 ninguno_de:-21 no:-86 no_$:-68 no__a:-17 no__el:30
no__en:19 no__la:34 no__problema:26 no_good:-33 no_me:-25 no_mejor:17 no_puedo:-22 no_tengo:38 nomas:18 none:-127
none__those:-61 none_of:-85 noon:-53 noon_$:-65 nop:-20 nos:40 nos_vemos:32 not:-113 not_friday:-55
not_interested:-14 not_the:-20 not_this:17 number:62 numero:21 o:22 ocho:22 oclock:30 ocupo:40 of:84 of_the:16
of_them:39 off_so:14 oil:17 ok_$:-25 on:-39 on_$:22 on_friday:-53 on_my:16 on_the:-16 one:232 one_$:26 one__is:14
one__much:45 one_and:34 one_how:38 one_of:-14 one_please:26 opcion:45 opcion_$:15 open:47 open_$:42 option:56 or:20
otra__que:22 otra_vez:21 otro_$:14 otro_dia:-20 out:30 out_of:20 over:23 over_$:20 pagar:19 para:47 para__jueves:18
para_el:19 parar:-38 parar_$:-38 pasa:-15 perdon:16 perdon_$:20 perfect:27 perfect_$:14 perfecto:27 pero:-56
pero__la:-18 pero__las:-84 pero__que:24 pero_a:-86 pero_en:-16 pero_necesito:17 pero_que:-23 pick:23 plan:27
please_$:-76 please__is:18 please_and:26 pm:43 pongo:19 por:53 por__y:14 por_favor:65 por_la:-23 porque:30
porque_no:14 possible:-27 possible_$:-27 prefer:31 prefiero:14 prestado:31 price:15 primera:26 primero:39
primero_$:-16 problem:26 problema:26 puede:-15 puedo_$:-17 put:37 put__down:25 put_me:33 que:98 que__a:18 que__de:15
que__la:-20 que__le:19 que__me:14 que__por:-15 que__toca:-22 que__van:33 que_abran:14 que_hora:-22 que_me:24
que_no:14 que_precio:20 que_se:14 que_si:-22 que_viene:-18 queda:-23 queda_$:-63 quedan:20 quedo:29 quick:14
quien:-28 quien_me:-15 quiero:25 quit:-35 quit_$:-34 red:16 ride_to:18 ring:26 rueda:15 run_me:22 sabado:-27
saldria:-22 salgo:15 same:-29 same_time:-21 saturday:-31 saturday_$:-35 says:14 se__fue:-19 se_la:14 se_me:-18
second:74 second_$:28 sedan:-16 see:22 see__then:34 see_you:35 segunda:33 segundo:31 segundo_$:26 sell:14 seria:-15
set__back:14 should:30 should__plan:27 should_i:31 si_$:-81 si__bien:-17 si__en:-14 si_gracias:14 si_la:14 si_pero:23
si_puedo:21 sigue:17 sirve:-16 sirve_$:-23 sirven:18 slot:53 so:46 so_friday:17 sold__the:-14 somebody:29
somebody__me:21 someone:26 sorry:-50 sorry_$:-48 start:16 started:19 still:49 stop_$:-14 suits:33 sunday:-20
sure__long:17 sure_how:17 take:61 take_$:23 take_it:22 take_the:30 tarde:-30 tarde_$:-20 te:-34 te_digo:-22
tempranito:-17 tempranito_$:-17 temprano:-31 temprano_$:-37 tengo:28 th:-99 th_$:-54 thank:16 thank_you:16 that:22
that__be:15 that__my:-15 that_day:-22 that_is:-15 that_time:36 that_works:19 that_would:15 the:215 the__after:-19
the__and:17 the__before:26 the__for:-28 the__if:20 the__is:-18 the__one:83 the__was:-14 the__what:16
the_afternoon:-17 the_am:26 the_back:17 the_brakes:18 the_car:-14 the_cost:-14 the_day:-25 the_earlier:22
the_first:43 the_friday:41 the_later:28 the_one:18 the_pm:35 the_rd:-14 the_second:29 the_sedan:-15 the_th:-97
them:37 then:-23 these:-18 they:21 thing:26 third:18 this:-34 this_$:-32 this_one:23 those:-39 those_$:43 three_$:-22
thumbsup:16 thumbsup_$:16 thurs:24 thursday__work:-50 thursday_and:14 thursday_at:45 til_the:-19 time:18 time_$:-20
to:148 to__it:22 to__me:46 to_bring:19 to_me:39 toca:-25 toca_$:-22 tomorrow:-39 tomorrow_$:-35 too:-166 too_$:33
too__for:-51 too_early:-133 too_late:-62 total_$:18 trae:21 tres:22 tuesday__is:27 two:64 two_$:35 ultima:54
ultimo:30 un:63 uno:27 unsubscribe:-19 unsubscribe_$:-16 van:31 van__hacer:16 van_a:32 vemos:32 vemos_$:32 vez:25
vez_que:22 viene:-18 viernes:30 viernes_$:15 viernes__la:-16 viernes_me:31 viernes_no:14 viernes_pero:-18 voy:14
wait_$:-17 wait__it:17 wait_for:18 was:-21 was__on:-14 we:-38 we__instead:-24 we_do:-29 wednesday:31 weds:28 week:-85
week_$:-60 well:15 were:-22 what:-73 what__i:18 what__it:-17 what__you:-15 what__your:22 what_about:-44
what_would:-17 whatever:46 whichever:29 who:-44 who__this:-39 who_is:-41 why:21 why_do:19 will:55 will__be:19
will__take:16 will_do:18 will_it:23 with:67 with_me:27 with_that:15 wont:-33 wont_work:-31 work:-37 work_$:-73
work__me:-26 work_on:17 work_phone:18 works:48 works_$:34 would:-20 would_i:-15 y:32 y__digo:-22 y__me:19 y_me:38
y_media:18 y_no:20 y_te:-33 ya:-19 yes_but:21 yes_please:-40 you:70 you_$:76 you_do:-70 you_sell:14 you_take:16
you_then:34 your:19 your_address:16 youre:22 zero:-26
"""
