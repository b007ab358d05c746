"""What speaks for and against `choose`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "choose"
BIAS = -309
WEIGHTS = """\
#abad:-27 #abou:-80 #acer:24 #acia:23 #afte:25 #agar:24 #alqu:46 #anda:26 #ante:29 #anyt:-90 #apun:26 #arar:-31
#arde:-30 #arli:44 #arly:-92 #arro:30 #asie:40 #asta:-32 #ater:-23 #atev:46 #atte:76 #atur:-39 #avor:63 #aybe:-61
#back:37 #bado:-27 #bast:-31 #befo:27 #best:45 #blem:38 #body:28 #boss:-47 #both:67 #bout:-84 #brak:40 #brin:45
#cant:-136 #carr:22 #casa:24 #cesi:40 #chev:35 #chin:34 #cias:23 #cion:62 #cita:-29 #clar:-29 #cloc:39 #clos:38
#coja:27 #cond:78 #coul:-47 #crib:-25 #cupo:34 #dale:22 #dejo:24 #digo:-23 #dito:23 #dnes:34 #does:-27 #down:24
#dria:-35 #driv:25 #drop:25 #each:-36 #earl:-44 #easi:41 #ebod:30 #eces:39 #econ:78 #ecto:31 #edne:25 #efer:49
#efor:27 #egun:65 #eith:-81 #ejor:-82 #emos:23 #empr:-48 #ence:26 #endi:28 #endr:-27 #enta:40 #ente:32 #ento:22
#eone:22 #eres:-29 #erfe:65 #erne:43 #erno:22 #esas:-25 #esda:35 #esit:40 #esnt:-45 #espe:35 #esta:47 #este:-31
#etal:54 #evar:31 #ever:82 #eves:24 #favo:63 #fect:65 #fine:65 #fore:27 #forg:-22 #fren:22 #fter:25 #goin:33 #grac:34
#guna:-131 #gund:69 #guno:-55 #hace:31 #hank:26 #hate:46 #have:24 #here:28 #heve:35 #hich:43 #hing:-72 #hola:-43
#home:29 #hora:25 #hose:-59 #houl:27 #hour:-42 #hurs:32 #ible:-46 #iche:35 #iera:61 #iern:35 #iero:40 #iest:61
#ight:52 #imer:65 #impo:-36 #ingu:-190 #inst:-70 #inte:-24 #iste:34 #ithe:-81 #juev:23 #laro:-30 #last:56 #late:-75
#leva:39 #leve:30 #lier:24 #like:-41 #llev:67 #lock:43 #long:39 #lose:38 #lqui:46 #ltim:80 #lune:-48 #mana:-23
#mand:35 #mart:-22 #matt:76 #mayb:-61 #mber:62 #mebo:30 #mejo:-82 #meon:22 #mera:35 #mero:53 #meta:45 #morn:29
#mpos:-36 #mpra:-43 #nada:-32 #nday:-35 #nece:40 #need:116 #neit:-212 #nesd:25 #next:-91 #ngun:-190 #nigh:36
#ning:-187 #none:-135 #noon:-29 #nste:-58 #ntad:23 #ntem:23 #nter:-24 #ntes:26 #nton:28 #numb:63 #nume:23 #nyth:-83
#oble:39 #ocho:22 #oclo:32 #ocup:41 #oesn:-45 #oing:45 #omeb:30 #omeo:22 #omor:-25 #opci:46 #open:49 #opti:58
#orks:47 #orni:28 #orqu:24 #orry:-59 #osib:-48 #ossi:-26 #ould:-49 #over:23 #pcio:46 #perf:65 #pero:-32 #plan:29
#porq:24 #posi:-38 #poss:-26 #pran:-53 #pref:68 #pres:39 #prim:65 #prob:39 #ptio:58 #punt:34 #qued:30 #quie:45
#quit:-34 #raci:23 #rake:40 #rano:-41 #rday:-47 #rech:30 #refe:49 #rfec:65 #ribe:-23 #rime:65 #ring:69 #rlie:44
#rnes:35 #rnin:29 #rnoo:22 #robl:39 #ront:22 #rque:32 #rtes:-22 #saba:-27 #sale:-23 #same:-33 #satu:-39 #scoj:27
#scri:-25 #sday:44 #seco:78 #segu:59 #sent:27 #shou:27 #sibl:-73 #sies:41 #sito:44 #slot:48 #some:33 #sorr:-59
#soun:23 #sper:29 #ssib:-26 #stad:30 #star:33 #stea:-58 #stil:51 #suit:25 #tado:36 #take:72 #tard:-35 #tart:27
#teac:-22 #tead:-58 #teme:37 #temp:-57 #teng:26 #tere:-22 #tern:22 #teve:46 #than:25 #them:33 #ther:-67 #thin:-78
#this:-46 #thos:-59 #thur:41 #till:58 #tima:53 #timo:29 #tion:66 #tres:25 #tter:66 #turd:-39 #ualq:46 #uant:22
#uedo:30 #ueve:36 #uier:76 #uits:27 #ulti:80 #umbe:63 #umer:23 #unda:22 #undo:30 #unds:23 #unes:-48 #unte:26
#urda:-39 #uste:24 #vemo:25 #vier:41 #wedn:25 #week:-96 #well:26 #were:-23 #what:-28 #whic:43 #will:55 #with:71
#wont:-29 #woul:-28 #your:32 #ythi:-83 %again_later:25 %again_later%agree:66 %again_later%away:23
%again_later%bring:59 %again_later%busy:34 %again_later%call_off:60 %again_later%car_part:37 %again_later%how_long:22
%again_later%lift:52 %again_later%opening:42 %again_later%phone:29 %again_later%question:34 %again_later%refuse:51
%again_later%season:-34 %again_later%staff:26 %again_later%start_again:45 %again_later%wrong_one:32 %agree:185
%agree%away:79 %agree%bad:22 %agree%bring:49 %agree%busy:77 %agree%call_off:41 %agree%car:24 %agree%car_part:82
%agree%do_it:24 %agree%doubt:23 %agree%elsewhere:27 %agree%gone_car:38 %agree%how_long:117 %agree%lift:63
%agree%money:33 %agree%noise:37 %agree%odometer:31 %agree%on_way:54 %agree%opening:37 %agree%phone:39 %agree%place:29
%agree%question:136 %agree%refuse:52 %agree%shift_it:95 %agree%staff:39 %agree%start_again:41 %agree%thanks:63
%agree%wrong_one:35 %away:182 %away%busy:29 %away%lift:61 %away%on_way:48 %away%refuse:34 %away%wrong_one:28
%bring:154 %bring%call_off:71 %bring%do_it:32 %bring%lift:48 %bring%money:24 %bring%on_way:46 %bring%opening:28
%bring%shift_it:57 %bring%start_again:32 %bring%thanks:23 %busy:-31 %busy%fails:-28 %busy%lift:31 %busy%question:24
%busy%refuse:41 %call_off:-140 %call_off%gone_car:22 %call_off%how_long:44 %call_off%lift:31 %call_off%on_way:50
%call_off%question:55 %call_off%refuse:-67 %call_off%shift_it:63 %call_off%staff:29 %call_off%start_again:57
%car%gone_car:-28 %car%lift:41 %car%odometer:24 %car%question:26 %car%refuse:56 %car_part:204 %car_part%fails:61
%car_part%noise:23 %car_part%on_way:32 %doubt:-27 %doubt%how_long:37 %doubt%question:35 %doubt%shift_it:34
%elsewhere%staff:28 %fails:74 %fails%refuse:-35 %fails%start_again:27 %gone_car%money:22 %gone_car%refuse:29
%how_long%on_way:-36 %how_long%question:28 %how_long%refuse:23 %how_long%thanks:32 %leave_me:-92 %lift:181
%lift%odometer:28 %lift%on_way:57 %lift%refuse:97 %lift%shift_it:25 %meaning:103 %meaning%question:31 %money:57
%money%on_way:35 %noise:76 %odometer:98 %odometer%on_way:48 %odometer%question:31 %on_way:78 %on_way%opening:24
%on_way%question:38 %opening:94 %phone:47 %phone%staff:31 %place:63 %place%question:30 %question%refuse:84
%question%shift_it:88 %question%who:-68 %question%wrong_one:42 %refuse:-63 %refuse%shift_it:42 %refuse%start_again:45
%refuse%thanks:31 %season:-67 %shift_it:-66 %staff%wrong_one:31 %start_again:90 %thanks:180 %who:-75 %wrong_one:24
@?:-95 @after_visit:-41 @car:-30 @confirm:-103 @confirm_stop:-26 @day:-63 @later:-53 @nothing:-74 @offers:730
@offers_:30 @time:-67 @times:184 @walk_in:-44 ^_afternoon:28 ^_ahi:22 ^_all:52 ^_am:40 ^_antes:-23 ^_any:23
^_anything:-27 ^_basta:-31 ^_both:46 ^_call:-23 ^_can:-82 ^_cant:-133 ^_could:-61 ^_cualquiera:53 ^_cuanto:-22
^_de:-25 ^_do:-35 ^_doesnt:52 ^_either:131 ^_el:164 ^_esa:22 ^_first:64 ^_friday:137 ^_got:-46 ^_hm:-46 ^_hmm:-57
^_hola:-43 ^_how:-164 ^_ill:88 ^_im:-24 ^_is:-92 ^_jueves:26 ^_la:213 ^_las:26 ^_last:45 ^_let:-38 ^_make:-30
^_maybe:-52 ^_me:60 ^_mejor:-106 ^_muy:-90 ^_nada:-25 ^_nd:36 ^_neither:-211 ^_ninguna:-126 ^_ninguno:-47 ^_no:-114
^_none:-120 ^_not:-119 ^_numero:24 ^_option:24 ^_parar:-31 ^_put:38 ^_que:-32 ^_quit:-28 ^_se:-22 ^_second:34 ^_si:53
^_sure:26 ^_the:200 ^_thurs:30 ^_thursday:-27 ^_too:-169 ^_viernes:34 ^_what:-144 ^_whatever:42 ^_whichever:36
^_who:-35 ^_works:25 ^_y:-54 a:35 a__casa:27 a__home:24 a__to:28 a_las:-115 a_mi:32 about:-80 afternoon:30 ahi:101
al:67 all__them:48 all_of:47 am:32 and:122 and__need:47 and_ill:36 antes:28 any__those:62 any_of:56 anything:-82
anything_but:-26 apunteme:26 ask:-79 at:31 at_$:-24 back:38 basta:-31 be:-25 be_$:-38 be_best:30 be_better:-43
be_there:28 before:27 before_$:23 best:45 best_$:34 boss:-47 boss_$:-41 both:67 bring:38 but:-116 but__it:-52
but_i:22 cae:36 can:-86 can__be:-53 can__do:-72 can_it:-57 can_we:-36 can_you:-35 cant:-136 cant_do:-80 carro:22
carro__para:24 carro_prestado:31 casa:24 casa_$:25 cita:-36 claro:-29 close:30 con:70 could:-58 could__do:-40
could_you:-39 cual:-26 cualquiera:57 cualquiera_de:51 da:44 da_igual:23 day:-78 day_$:-31 day__me:-27 day_for:-27
de:114 de__dos:36 de_las:91 dejo:24 del:75 del_viernes:29 dia:-59 dia_$:-32 digo:-23 digo_$:-22 do:-67 do_$:-23
do__at:30 do__need:23 do_friday:-36 do_i:35 do_instead:-42 do_you:42 does_it:26 doesnt:-45 doesnt_matter:69
doesnt_work:-112 dos:54 dos_$:53 down:25 down_for:24 drop:25 earlier:24 earlier_one:23 early:-106 early_$:-136 eh:24
either:122 either_$:49 el:92 el__a:-24 el__las:24 el__me:38 el__mejor:-23 el__pero:-101 el_de:50 el_lunes:-78
el_martes:-45 el_mas:47 el_primero:55 el_que:39 el_sabado:-30 el_segundo:30 el_ultimo:29 en__tarde:-39 es__cita:-24
esa:42 esas:-29 esta:29 favor:63 favor_$:35 fine:65 fine__me:39 fine_with:28 first_$:-61 first_one:40 for:-52
for_$:-27 for_me:-82 for_thursday:23 for_you:41 friday_$:-137 friday__and:38 friday_afternoon:23 friday_but:-47
friday_is:22 go:71 go__friday:30 go_with:53 going:33 going_to:26 got:-79 got_anything:-43 gracias:23 hacer:25 have:25
hm:-46 hmm:-57 hola:-43 home:29 hour:-36 how:-45 how__is:-28 how__will:26 how_about:-29 how_long:35 how_much:-38 i:90
i__do:27 i__for:32 i_can:63 i_need:27 i_plan:24 id__the:34 id_prefer:34 if:25 if_it:23 ill:176 ill__a:32 ill__the:25
ill__there:32 ill_be:33 ill_have:24 ill_need:32 ill_take:36 ill_wait:22 imposible:-36 in:-50 in__day:-29 in_the:-41
instead:-58 instead_$:-64 is:91 is__a:31 is__going:26 is__with:27 is_better:22 is_fine:31 is_it:-38 is_still:26
is_this:-31 is_too:-56 it__the:-37 it_be:-67 it_is:84 it_take:30 jueves:24 jueves_$:45 jueves__a:-74 jueves_pero:-75
la:288 la__en:30 la_de:50 la_del:42 la_primera:36 la_segunda:34 la_tarde:-36 la_ultima:41 las_$:-101 las_dos:50
last:56 last_one:34 late:-85 late__me:-45 late__the:-27 late_in:-27 later_one:35 le:62 le__a:39 le_van:28 les:24
let:-49 let_me:-50 like:-41 like_$:-53 lleven:31 long:34 long__it:33 long_will:27 lunes:-48 lunes_$:-62 martes:-22
mas:24 mas_temprano:40 matter:69 matter_$:23 maybe:-61 maybe_next:-51 me:136 me__a:29 me__el:-24 me__for:30
me__igual:23 me__mejor:31 me__my:-45 me_da:44 me_down:27 me_lleven:31 me_quedo:23 me_the:30 mejor:-82
mejor__lunes:-54 mejor_el:-59 metal:45 mi:66 monday__be:-46 morning:37 much:-25 much__it:-35 muy:-90 muy_temprano:-91
my_boss:-55 nada:-32 nd:33 necesito:35 necesito__me:36 necesito_que:36 need:117 need_a:64 neither:-212 neither_$:-87
next:-91 next_week:-68 ni:-43 ni_la:-26 ninguna:-131 ninguno:-59 ninguno__los:-24 ninguno_de:-24 no:-104 no_$:-73
no__el:22 no__la:29 no_good:-30 no_me:-22 no_tengo:30 none:-135 none__those:-74 none_of:-95 noon:-51 noon_$:-60
nos:33 nos_vemos:26 not:-118 not_friday:-63 number:63 numero:23 o:26 ocho:22 oclock:32 ocupo:35 of:48 of_them:35
of_those:-22 ok_$:-27 on:-27 on_$:23 on_friday:-54 one:228 one_$:27 one__much:42 one_and:30 one_how:38 one_please:26
opcion:46 open:50 open_$:48 option:58 or:23 otra_vez:23 otro_dia:-24 out:22 para:46 parar:-31 parar_$:-31 perfect:25
perfecto:31 pero:-42 pero__a:29 pero__las:-93 pero__que:26 pero_a:-95 pero_voy:29 pick:36 plan:23 please_$:-68
please_and:29 pm:41 por:50 por_favor:65 porque:24 possible:-23 possible_$:-23 prefer:34 prestado:31 prestado_para:23
primera:35 primero:30 put:38 put__down:27 put_me:34 que:136 que__lleven:31 que__van:28 que_me:31 que_si:-23
queda_$:-70 quedan:26 quedo:26 quien:-25 quiero:22 quit:-29 quit_$:-27 ride_to:22 sabado:-27 sale:-22 same:-38
saturday:-39 saturday_$:-40 se:22 second:78 second_$:39 see:24 see__then:32 see_you:34 segunda:40 segundo:30
segundo_$:24 should:27 should__plan:24 should_i:27 si:-38 si_$:-83 si_pero:30 slot:51 so:41 somebody:30 someone:22
sorry:-59 sorry_$:-53 sounds:23 still:51 still_open:48 suits:27 suits_me:24 take:77 take_$:30 take_the:39 tarde:-37
tarde_$:-27 te:-28 temprano:-40 temprano_$:-50 th:-120 th_$:-81 that_day:-25 that_time:32 that_works:23 the:252
the__for:-30 the__if:24 the__one:88 the_am:22 the_day:-27 the_earlier:25 the_first:48 the_friday:45 the_later:36
the_pm:29 the_second:34 the_th:-119 them:33 there:27 thing:22 this:-46 this_$:-27 those:-59 those_$:28 thurs:23
thursday__it:29 thursday__work:-53 thursday_at:41 to:165 to__it:28 to__me:44 to_me:35 tomorrow:-28 tomorrow_$:-34
too:-202 too_$:27 too__for:-61 too_early:-154 too_late:-72 tres:25 tres__media:22 tres_y:22 tuesday__is:22 two:66
two_$:39 ultima:49 ultimo:29 un:53 van:26 van_a:27 vemos:25 vemos_$:26 vez:27 viernes:35 viernes__favor:23
viernes_me:35 viernes_pero:-25 voy:33 voy_a:27 wait_for:22 we:-45 we__instead:-31 we_do:-36 wednesday:26 week:-89
week_$:-67 were:-23 what:-74 what_about:-59 whatever:41 whichever:35 who:-42 who__this:-33 who_is:-36 will:55
will_it:24 with:76 with_me:34 wont:-29 wont_work:-27 work:-56 work_$:-71 work__me:-30 work_for:-33 works:47
works_$:32 would:-28 would__better:-53 y:43 y_me:30 y_te:-27 yes_but:25 yes_please:-43 you:88 you_$:63 you_do:-62
you_then:32
"""
