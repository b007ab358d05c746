"""What speaks for and against `choose`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "choose"
BIAS = -286
WEIGHTS = """\
#abad:-22 #abou:-58 #acer:19 #agar:19 #alqu:31 #anda:20 #ando:-18 #ante:20 #anto:22 #anyt:-66 #apun:18 #arar:-24
#arde:-18 #arli:34 #arly:-60 #arro:22 #asie:28 #asta:-26 #ater:-18 #atev:33 #atte:52 #atur:-28 #avor:53 #aybe:-42
#back:27 #bado:-22 #bast:-24 #befo:19 #best:31 #blem:29 #body:21 #boss:-31 #both:50 #bout:-60 #brak:29 #brin:35
#cant:-102 #casa:18 #cesi:30 #chev:25 #chin:27 #cion:47 #cita:-23 #cloc:31 #clos:30 #coja:22 #come:-18 #cond:59
#coul:-37 #crib:-20 #cupo:26 #dale:19 #dejo:18 #digo:-19 #dito:18 #dnes:26 #does:-20 #dria:-28 #driv:19 #drop:19
#each:-28 #earl:-23 #ease:22 #easi:28 #ebod:23 #eces:29 #econ:59 #ecto:30 #edne:19 #efer:37 #efor:19 #egun:51
#eith:-60 #ejor:-62 #emos:18 #empr:-34 #ence:21 #endi:21 #endr:-21 #enta:31 #ente:24 #eres:-22 #erfe:57 #erne:33
#esas:-21 #esda:28 #esit:30 #esnt:-32 #espe:27 #esta:43 #este:-24 #etal:42 #evar:23 #ever:57 #eves:23 #favo:53
#fect:57 #fine:51 #firs:20 #fore:18 #forg:-18 #goin:24 #grac:26 #guna:-90 #gund:54 #guno:-42 #hace:24 #hank:18
#hate:32 #heve:25 #hich:31 #hing:-54 #hola:-34 #home:20 #hose:-46 #houl:21 #hour:-34 #hurs:25 #ible:-36 #iche:25
#iera:43 #iern:27 #iero:29 #iest:44 #ight:39 #imer:49 #impo:-28 #ingu:-135 #inst:-52 #inte:-18 #irst:20 #iste:27
#ithe:-60 #juev:23 #last:43 #late:-51 #leas:25 #leva:30 #leve:23 #lier:18 #like:-28 #llev:50 #lock:34 #long:30
#lose:29 #lqui:31 #ltim:62 #lune:-32 #mana:-18 #mand:27 #matt:51 #mayb:-42 #mber:45 #mebo:23 #mejo:-61 #mera:27
#mero:40 #meta:35 #morn:21 #mpos:-28 #mpra:-30 #nada:-27 #nday:-29 #nece:29 #need:81 #neit:-147 #nesd:19 #next:-67
#ngun:-135 #nigh:27 #ning:-136 #none:-104 #noon:-26 #nste:-43 #ntad:18 #nter:-18 #ntes:18 #nton:22 #numb:45 #nyth:-61
#oble:31 #ocho:18 #oclo:25 #ocup:32 #oesn:-32 #oing:33 #omeb:23 #omor:-21 #opci:35 #open:30 #opti:43 #orks:46
#orni:20 #orqu:18 #orry:-42 #osib:-38 #ossi:-21 #ould:-38 #over:23 #pcio:35 #perf:57 #pero:-18 #plan:23 #plea:22
#porq:18 #posi:-30 #poss:-21 #pran:-38 #pref:51 #pres:30 #prim:49 #prob:31 #ptio:43 #punt:24 #qued:21 #quie:28
#quit:-28 #rake:29 #rano:-28 #rday:-35 #rech:23 #refe:37 #rfec:57 #ribe:-18 #rime:49 #ring:52 #rlie:34 #rnes:27
#rnin:21 #robl:31 #rque:25 #saba:-22 #same:-27 #satu:-28 #scoj:22 #scri:-20 #sday:32 #seco:59 #segu:46 #sent:21
#shou:21 #sibl:-58 #sies:28 #sito:33 #slot:36 #some:24 #sorr:-42 #sper:23 #ssib:-21 #stad:24 #star:26 #stea:-43
#stil:34 #suit:19 #tado:27 #take:52 #tard:-22 #tart:20 #tead:-43 #teme:26 #temp:-41 #teng:18 #teve:33 #them:20
#ther:-56 #thin:-59 #this:-39 #thos:-45 #thur:32 #till:38 #tima:43 #timo:22 #tion:49 #tres:19 #tter:46 #turd:-28
#ualq:31 #uant:22 #uedo:21 #ueve:33 #uier:53 #uits:22 #ulti:62 #umbe:45 #undo:23 #unes:-32 #unte:18 #urda:-28
#uste:19 #vemo:20 #vier:31 #wedn:19 #week:-71 #well:20 #were:-19 #what:-21 #whic:31 #will:43 #with:44 #wont:-23
#woul:-22 #your:24 #ythi:-61 %again_later%agree:55 %again_later%bring:44 %again_later%busy:25
%again_later%call_off:40 %again_later%car_part:28 %again_later%lift:40 %again_later%on_way:19 %again_later%opening:32
%again_later%phone:22 %again_later%question:23 %again_later%refuse:34 %again_later%season:-28 %again_later%staff:19
%again_later%start_again:31 %again_later%wrong_one:23 %agree:306 %agree%away:57 %agree%bring:39 %agree%busy:58
%agree%call_off:20 %agree%car_part:58 %agree%do_it:18 %agree%elsewhere:21 %agree%gone_car:28 %agree%how_long:90
%agree%lift:45 %agree%money:38 %agree%noise:28 %agree%odometer:23 %agree%on_way:43 %agree%opening:29 %agree%phone:28
%agree%place:21 %agree%question:128 %agree%refuse:24 %agree%shift_it:67 %agree%staff:28 %agree%start_again:31
%agree%thanks:46 %agree%wrong_one:25 %away:127 %away%busy:20 %away%lift:41 %away%on_way:34 %away%refuse:20
%away%wrong_one:18 %bring:106 %bring%call_off:51 %bring%do_it:21 %bring%lift:33 %bring%money:19 %bring%on_way:33
%bring%opening:21 %bring%shift_it:42 %bring%start_again:25 %bring%thanks:18 %busy:-23 %busy%fails:-21 %busy%lift:22
%busy%refuse:30 %call_off:-129 %call_off%how_long:35 %call_off%lift:21 %call_off%on_way:34 %call_off%question:36
%call_off%refuse:-61 %call_off%shift_it:47 %call_off%staff:22 %call_off%start_again:42 %car%gone_car:-24 %car%lift:27
%car%odometer:18 %car%question:19 %car%refuse:40 %car_part:141 %car_part%fails:45 %car_part%on_way:24 %doubt:-19
%doubt%how_long:26 %doubt%question:25 %doubt%shift_it:26 %elsewhere%staff:21 %fails:52 %fails%refuse:-28
%fails%start_again:21 %gone_car%refuse:22 %how_long%on_way:-27 %how_long%question:21 %how_long%thanks:25
%leave_me:-77 %lift:128 %lift%odometer:21 %lift%on_way:43 %lift%refuse:66 %lift%shift_it:18 %meaning:69
%meaning%question:25 %money:53 %money%on_way:27 %noise:57 %odometer:70 %odometer%on_way:37 %odometer%question:23
%on_way:60 %on_way%opening:18 %on_way%question:27 %opening:64 %pay_day%season:-18 %phone:26 %phone%staff:23 %place:42
%place%question:21 %question%refuse:58 %question%shift_it:64 %question%who:-54 %question%wrong_one:31 %refuse:-73
%refuse%shift_it:30 %refuse%start_again:32 %refuse%thanks:19 %season:-56 %shift_it:-52 %staff%wrong_one:21
%start_again:64 %thanks:133 %who:-61 @?:-80 @after_visit:-34 @car:-29 @confirm:-96 @confirm_stop:-20 @day:-57
@later:-46 @nothing:-70 @odometer:-19 @offers:585 @offers_:28 @reading:-20 @time:-61 @times:160 @walk_in:-34
^_afternoon:21 ^_all:36 ^_am:32 ^_antes:-20 ^_anything:-18 ^_basta:-24 ^_both:34 ^_call:-19 ^_can:-63 ^_cant:-99
^_could:-48 ^_cualquiera:36 ^_de:-21 ^_do:-30 ^_doesnt:33 ^_either:86 ^_el:134 ^_first:47 ^_friday:93 ^_got:-34
^_hm:-36 ^_hmm:-45 ^_hola:-34 ^_how:-123 ^_ill:63 ^_im:-20 ^_is:-67 ^_jueves:20 ^_la:167 ^_las:19 ^_last:35 ^_let:-27
^_make:-24 ^_maybe:-34 ^_me:41 ^_mejor:-76 ^_muy:-64 ^_nada:-20 ^_nd:28 ^_neither:-146 ^_ninguna:-85 ^_ninguno:-36
^_no:-89 ^_none:-92 ^_not:-87 ^_numero:18 ^_ok:22 ^_parar:-24 ^_put:27 ^_que:-24 ^_quit:-22 ^_se:-18 ^_second:27
^_si:64 ^_sure:20 ^_the:160 ^_thurs:25 ^_too:-118 ^_viernes:30 ^_what:-112 ^_whatever:29 ^_whichever:26 ^_who:-27
^_works:21 ^_y:-45 a__casa:21 a__to:20 a_las:-84 a_mi:24 about:-58 afternoon:21 ahi:78 al:51 all__them:33 all_of:32
am:28 and:84 and__need:32 and_ill:26 antes:20 any__those:47 any_of:41 anything:-60 anything_but:-18 apunteme:18
ask:-58 ask_me:-18 at_$:-23 back:27 basta:-24 be_$:-24 be_best:19 be_better:-28 be_there:19 before:19 before_$:18
best:31 best_$:22 boss:-31 boss_$:-26 both:50 bring:29 but:-79 but__it:-35 cae:29 can:-64 can__be:-36 can__do:-52
can_it:-39 can_we:-25 can_you:-27 cant:-102 cant_do:-58 carro__para:18 carro_prestado:24 casa:18 casa_$:19 cita:-29
close:23 con:51 could:-46 could__do:-31 could_you:-31 cual:-21 cualquiera:39 cualquiera_de:36 cuanto:22 da:33 day:-59
day_$:-26 day__me:-18 day_for:-18 de:76 de__dos:26 de_las:67 dejo:18 del:56 del_viernes:21 dia:-47 dia_$:-24 digo:-19
digo_$:-18 do:-49 do_$:-19 do__at:19 do__need:18 do_friday:-26 do_i:27 do_instead:-30 do_you:32 does_it:19 doesnt:-32
doesnt_matter:46 doesnt_work:-77 dos:40 dos_$:38 drop:19 earlier:18 earlier_one:18 early:-70 early_$:-93 eh:19
either:79 either_$:30 el:69 el__a:-20 el__las:19 el__me:27 el__mejor:-18 el__pero:-71 el_de:40 el_lunes:-56
el_martes:-34 el_mas:36 el_primero:43 el_que:31 el_sabado:-24 el_segundo:23 el_ultimo:22 el_viernes:-20 en__tarde:-28
es__cita:-19 esa:31 esas:-24 esta:28 favor:53 favor_$:31 fine:51 fine__me:28 fine_with:20 first:20 first_$:-39
first_one:30 for:-42 for_$:-22 for_me:-56 for_you:28 friday_$:-95 friday__and:24 friday_but:-32 go:51 go__friday:20
go_with:35 going:24 going_to:19 got:-61 got_anything:-31 hacer:19 hm:-36 hmm:-45 hola:-34 home:20 hour:-29 how:-29
how__will:20 how_about:-22 how_long:27 how_much:-24 i:52 i__for:26 i_can:46 i_need:18 i_plan:19 id__the:23
id_prefer:23 ill:126 ill__a:19 ill__the:19 ill__there:22 ill_be:23 ill_have:19 ill_need:19 ill_take:28 im:-19
imposible:-28 in:-40 in__day:-20 in_the:-31 instead:-43 instead_$:-47 is:61 is__a:24 is__going:20 is__with:18
is_fine:21 is_it:-25 is_this:-25 is_too:-37 it__the:-30 it_be:-47 it_is:59 it_take:21 jueves:23 jueves_$:32
jueves__a:-50 jueves_pero:-50 la:222 la__en:22 la_de:40 la_del:32 la_primera:27 la_segunda:27 la_tarde:-22
la_ultima:33 las_$:-73 las_dos:36 last:43 last_one:26 late:-59 late__me:-30 late__the:-19 late_in:-19 later_one:25
le:47 le__a:31 le_van:22 les:18 let:-36 let_me:-36 like:-28 like_$:-36 lleven:23 long:26 long__it:23 long_will:21
lunes:-32 lunes_$:-43 mas_temprano:30 matter:46 maybe:-42 maybe_next:-34 me:86 me__a:21 me__el:-23 me__for:21
me__mejor:21 me__my:-30 me_da:33 me_down:18 me_lleven:23 me_the:23 mejor:-61 mejor__lunes:-36 mejor_el:-40 metal:35
mi:47 monday__be:-30 morning:27 much__it:-22 muy:-65 muy_temprano:-65 my_boss:-38 nada:-27 nd:26 necesito:26
necesito__me:27 necesito_que:27 need:82 need_a:42 neither:-147 neither_$:-62 next:-67 next_week:-48 ni:-35 ni_la:-21
ninguna:-90 ninguno:-45 no:-89 no_$:-52 no__el:18 no__la:22 no_good:-24 no_me:-20 no_tengo:23 none:-104
none__those:-55 none_of:-71 noon:-41 noon_$:-48 nos:25 nos_vemos:20 not:-87 not_friday:-42 number:45 o:20 ocho:18
oclock:25 ocupo:27 of:31 of_them:22 ok:21 on:-23 on_$:18 on_friday:-38 one:178 one_$:25 one__much:31 one_and:24
one_how:28 one_please:20 opcion:35 open:31 open_$:30 option:43 para:30 parar:-24 parar_$:-24 perfect:20 perfecto:30
pero:-27 pero__a:22 pero__las:-65 pero__que:20 pero_a:-67 pero_voy:22 pick:26 plan:19 please:23 please_$:-37
please_and:19 pm:32 por:43 por_favor:55 porque:18 possible:-18 possible_$:-18 prefer:23 prestado:24 prestado_para:18
primera:27 primero:23 put:26 put__down:18 put_me:23 que:109 que__lleven:23 que__van:22 que_me:22 queda_$:-49
quedan:20 quedo:19 quien:-21 quit:-23 quit_$:-22 sabado:-22 same:-31 saturday:-28 saturday_$:-28 second:59
second_$:27 see__then:24 see_you:25 segunda:31 segundo:23 segundo_$:19 should:21 should__plan:19 should_i:21 si_$:-50
si_pero:25 slot:38 so:30 somebody:23 sorry:-42 sorry_$:-37 still:34 still_open:31 suits:22 suits_me:19 take:56
take_$:21 take_the:28 tarde:-24 te:-23 temprano:-27 temprano_$:-34 th:-88 th_$:-58 that_day:-18 that_time:25
that_works:18 the:181 the__for:-21 the__one:70 the_am:19 the_day:-19 the_earlier:19 the_first:35 the_friday:33
the_later:27 the_pm:24 the_second:25 the_th:-87 them:20 this:-39 this_$:-21 those:-45 those_$:21 thurs:21
thursday__it:21 thursday__work:-36 thursday_at:26 to:114 to__it:22 to__me:34 to_me:23 tomorrow:-23 tomorrow_$:-28
too:-139 too_$:21 too__for:-44 too_early:-108 too_late:-48 tres:19 tuesday__is:18 two:49 two_$:28 ultima:39 ultimo:22
un:40 van:20 van_a:21 vemos:20 vemos_$:20 vez:20 viernes:27 viernes__favor:18 viernes_me:24 viernes_pero:-20 voy:24
voy_a:20 we:-33 we__instead:-20 we_do:-24 wednesday:20 week:-65 week_$:-47 were:-19 what:-54 what_about:-42
whatever:28 whichever:25 who:-34 who__this:-26 who_is:-28 will:43 will_it:20 with:48 with_me:25 wont:-23
wont_work:-21 work:-40 work_$:-52 work__me:-23 work_for:-25 works:46 works_$:30 would:-21 would__better:-36 y:28
y_me:24 y_te:-22 yes:24 yes_but:20 yes_please:-20 you:57 you_$:46 you_do:-48 you_then:24
"""
