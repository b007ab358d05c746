"""What speaks for and against `choose`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "choose"
BIAS = -316
WEIGHTS = """\
#abad:-30 #abou:-81 #afte:28 #alqu:47 #ante:28 #anto:25 #anyt:-90 #apun:26 #arar:-28 #arli:41 #arly:-97 #arro:29
#asie:40 #asta:-31 #atev:46 #atte:77 #atur:-40 #avor:63 #aybe:-61 #back:35 #bado:-30 #bast:-28 #befo:25 #best:43
#blem:34 #body:26 #boss:-43 #both:63 #bout:-86 #brak:37 #brin:42 #cant:-128 #cesi:38 #chev:33 #chin:30 #cion:59
#cita:-25 #clar:-34 #cloc:37 #clos:35 #coja:26 #cond:76 #coul:-46 #cupo:33 #dnes:33 #down:25 #dria:-35 #each:-33
#earl:-53 #easi:40 #ebod:28 #eces:37 #econ:76 #ecto:28 #edne:25 #efer:47 #efor:25 #egun:63 #eith:-88 #ejor:-86
#empr:-49 #endr:-26 #enta:36 #ente:29 #eres:-27 #erfe:63 #erne:43 #esas:-26 #esda:34 #esit:38 #esnt:-37 #espe:36
#esta:47 #este:-30 #etal:50 #evar:28 #ever:79 #favo:63 #fect:63 #fine:64 #firs:28 #fore:25 #fter:28 #goin:32 #grac:32
#guna:-135 #gund:67 #guno:-58 #hace:28 #hank:25 #hate:46 #here:30 #heve:33 #hich:40 #hing:-75 #hola:-38 #home:30
#hose:-58 #houl:25 #hour:-40 #hurs:39 #ible:-43 #iche:33 #iera:62 #iern:37 #iero:39 #iest:60 #ight:50 #imer:65
#impo:-33 #ingu:-197 #inst:-71 #irst:28 #iste:33 #ithe:-88 #laro:-34 #last:53 #late:-75 #leva:36 #leve:28 #like:-39
#llev:62 #lock:41 #long:37 #lose:35 #lqui:47 #ltim:77 #lune:-52 #mand:33 #matt:77 #mayb:-61 #mber:60 #mebo:28
#mejo:-86 #mera:35 #mero:51 #meta:42 #morn:30 #mpos:-33 #mpra:-45 #nada:-31 #nday:-37 #nece:38 #need:116 #neit:-206
#nesd:25 #next:-90 #ngun:-197 #nigh:34 #ning:-191 #none:-127 #nste:-60 #nton:26 #numb:61 #nyth:-83 #oble:36 #oclo:30
#ocup:40 #oesn:-37 #oing:42 #omeb:28 #opci:43 #open:50 #opti:53 #orks:44 #orni:29 #orry:-57 #osib:-44 #ould:-49
#pcio:43 #perf:63 #pero:-29 #plan:27 #posi:-36 #pran:-54 #pref:67 #pres:37 #prim:65 #prob:36 #ptio:53 #punt:33
#quie:46 #quit:-30 #rake:37 #rano:-42 #rday:-47 #rech:27 #refe:47 #rfec:63 #rime:65 #ring:63 #rlie:41 #rnes:37
#rnin:30 #robl:36 #rque:28 #saba:-30 #same:-31 #satu:-39 #scoj:26 #sday:51 #seco:76 #segu:56 #sent:25 #shou:25
#sibl:-68 #sies:41 #sito:42 #slot:47 #some:32 #sorr:-57 #sper:31 #stad:29 #star:31 #stea:-61 #stil:54 #tado:35
#take:76 #tard:-25 #tart:25 #tead:-61 #teme:35 #temp:-58 #teve:46 #them:32 #ther:-72 #thin:-81 #this:-45 #thos:-58
#thur:47 #till:60 #tima:53 #timo:28 #tion:61 #tres:25 #tter:68 #turd:-39 #ualq:47 #uant:25 #ueve:35 #uier:75 #ulti:77
#umbe:61 #undo:27 #unes:-52 #unte:26 #urda:-39 #vier:42 #wedn:25 #week:-96 #what:-26 #whic:40 #will:53 #with:71
#wont:-26 #woul:-28 #your:31 #ythi:-84 %again_later:36 %again_later%agree:62 %again_later%bring:54
%again_later%busy:32 %again_later%call_off:54 %again_later%car_part:35 %again_later%how_long:25 %again_later%lift:56
%again_later%on_way:29 %again_later%opening:37 %again_later%phone:28 %again_later%question:33 %again_later%refuse:49
%again_later%season:-34 %again_later%staff:25 %again_later%start_again:41 %again_later%wrong_one:29 %agree:107
%agree%away:74 %agree%bring:52 %agree%busy:72 %agree%call_off:27 %agree%car_part:78 %agree%elsewhere:25
%agree%gone_car:32 %agree%how_long:108 %agree%lift:57 %agree%money:43 %agree%noise:26 %agree%odometer:27
%agree%on_way:48 %agree%opening:33 %agree%phone:35 %agree%question:131 %agree%refuse:43 %agree%shift_it:87
%agree%staff:34 %agree%start_again:38 %agree%thanks:60 %agree%wrong_one:33 %away:178 %away%busy:27 %away%lift:61
%away%on_way:47 %away%refuse:34 %away%wrong_one:28 %bring:156 %bring%call_off:64 %bring%do_it:32 %bring%lift:46
%bring%on_way:43 %bring%opening:26 %bring%shift_it:53 %bring%start_again:31 %busy:-28 %busy%fails:-25 %busy%lift:29
%busy%refuse:39 %call_off:-152 %call_off%how_long:38 %call_off%lift:27 %call_off%on_way:46 %call_off%question:48
%call_off%refuse:-72 %call_off%shift_it:58 %call_off%staff:27 %call_off%start_again:53 %car%gone_car:-27 %car%lift:40
%car%question:25 %car%refuse:55 %car_part:183 %car_part%fails:57 %car_part%on_way:31 %doubt:-34 %doubt%how_long:34
%doubt%question:31 %doubt%shift_it:31 %elsewhere%staff:26 %fails:69 %fails%refuse:-33 %fails%start_again:25
%gone_car%refuse:27 %how_long%on_way:-37 %how_long%question:25 %how_long%thanks:29 %leave_me:-82 %lift:181
%lift%odometer:27 %lift%on_way:57 %lift%refuse:96 %meaning:107 %meaning%question:32 %money:67 %money%on_way:33
%noise:61 %odometer:90 %odometer%on_way:46 %odometer%question:28 %on_way:79 %on_way%question:33 %opening:88 %phone:42
%phone%staff:30 %place:46 %place%question:32 %question%refuse:80 %question%shift_it:81 %question%who:-64
%question%wrong_one:39 %refuse:-60 %refuse%shift_it:40 %refuse%start_again:42 %refuse%thanks:27 %season:-65
%shift_it:-83 %staff%wrong_one:30 %start_again:83 %thanks:169 %who:-72 @?:-99 @after_visit:-31 @car:-35 @confirm:-94
@day:-57 @later:-55 @nothing:-69 @offers:719 @offers_:30 @time:-67 @times:153 @walk_in:-38 ^_afternoon:27 ^_all:49
^_am:37 ^_anything:-27 ^_basta:-27 ^_both:44 ^_can:-81 ^_cant:-125 ^_could:-58 ^_cualquiera:53 ^_do:-33 ^_doesnt:55
^_either:120 ^_el:168 ^_first:62 ^_friday:133 ^_got:-46 ^_hm:-40 ^_hmm:-51 ^_hola:-38 ^_how:-154 ^_ill:87 ^_is:-88
^_jueves:25 ^_la:208 ^_las:25 ^_last:42 ^_let:-33 ^_make:-27 ^_maybe:-51 ^_me:58 ^_mejor:-107 ^_muy:-87 ^_nd:33
^_neither:-204 ^_ninguna:-128 ^_ninguno:-50 ^_no:-114 ^_none:-113 ^_not:-111 ^_parar:-28 ^_put:39 ^_que:-26
^_quit:-25 ^_second:32 ^_si:48 ^_the:195 ^_thurs:29 ^_too:-168 ^_viernes:33 ^_what:-139 ^_whatever:41 ^_whichever:34
^_who:-32 ^_works:25 ^_y:-50 ^_yes:-34 a:32 a__casa:25 a__home:25 a__to:27 a_las:-106 a_mi:31 about:-81 afternoon:31
ahi:98 al:61 all__them:46 all_of:44 am:28 and:117 and__need:46 and_ill:35 antes:26 any__those:59 any_of:54
anything:-83 anything_but:-26 apunteme:26 ask:-73 ask_my:-51 at:32 back:35 basta:-27 be_$:-35 be_best:28
be_better:-41 be_there:27 before:25 best:43 best_$:33 boss:-43 boss_$:-37 both:63 bring:36 but:-109 but__it:-48
cae:33 can:-83 can__be:-50 can__do:-71 can_it:-54 can_we:-37 can_you:-34 cant:-128 cant_do:-76 carro_prestado:30
cita:-31 claro:-34 close:27 con:64 could:-55 could__do:-38 could_you:-37 cual:-25 cualquiera:57 cualquiera_de:51
da:41 day:-76 day_$:-29 day__me:-27 day_for:-27 de:112 de__dos:32 de_las:91 del:66 del_viernes:28 dia:-59 dia_$:-32
do:-67 do__at:29 do_friday:-34 do_i:34 do_instead:-43 do_you:38 does_it:25 doesnt:-37 doesnt_matter:71
doesnt_work:-105 dos:51 dos_$:52 down:25 down_for:25 early:-109 early_$:-137 either:110 either_$:43 el:83 el__me:34
el__pero:-95 el_de:51 el_lunes:-78 el_martes:-40 el_mas:45 el_primero:51 el_que:37 el_sabado:-33 el_segundo:27
el_ultimo:28 en__tarde:-33 esa:35 esas:-29 esta:26 favor:63 favor_$:38 fine:64 fine__me:38 fine_with:29 first:28
first_$:-58 first_one:41 for:-50 for_$:-26 for_me:-82 for_thursday:25 for_you:41 friday_$:-134 friday__and:36
friday_but:-45 go:71 go__friday:29 go_with:53 going:32 going_to:25 got:-78 got_anything:-43 hm:-40 hmm:-51 hola:-38
home:30 hour:-34 how:-37 how__will:27 how_about:-29 how_long:35 how_much:-32 i:90 i__do:26 i__for:29 i_can:61
i_need:28 id__the:35 id_prefer:35 if:30 if__open:28 ill:175 ill__a:32 ill__the:26 ill__there:31 ill_be:32 ill_need:32
ill_take:36 imposible:-33 in:-50 in__day:-30 in_the:-41 instead:-60 instead_$:-66 is:101 is__a:28 is__with:26
is_fine:32 is_it:-34 is_still:27 is_this:-29 is_too:-56 it__the:-35 it_be:-64 it_is:84 it_take:30 jueves_$:45
jueves__a:-71 jueves_pero:-71 la:284 la__en:28 la_de:52 la_del:40 la_primera:36 la_segunda:36 la_tarde:-27
la_ultima:40 las_$:-94 las_dos:49 last:53 last_one:31 late:-85 late__me:-45 late__the:-28 late_in:-28 later_one:33
le:59 le__a:36 le_van:26 let:-42 let_me:-43 like:-39 like_$:-50 lleven:29 long:33 long__it:33 long_will:27 lunes:-52
lunes_$:-62 mas_temprano:38 matter:71 maybe:-61 maybe_next:-51 me:126 me__a:27 me__for:32 me__mejor:27 me__my:-40
me_da:41 me_down:29 me_lleven:29 me_queda:-30 me_the:28 mejor:-86 mejor__lunes:-53 mejor_el:-59 metal:42 mi:61
monday__be:-44 morning:37 much__it:-30 muy:-88 muy_temprano:-89 my_boss:-50 nada:-31 nd:30 necesito:33
necesito__me:35 necesito_que:34 need:117 need_a:66 neither:-206 neither_$:-84 next:-90 next_week:-68 ni:-39
ninguna:-135 ninguno:-62 ninguno__los:-26 ninguno_de:-26 no:-108 no_$:-62 no__la:27 no_good:-29 no_tengo:28 none:-127
none__those:-70 none_of:-89 noon:-47 noon_$:-55 nos:31 not:-110 not_friday:-59 number:61 oclock:30 ocupo:33 of:47
of_them:33 on:-27 on_friday:-53 one:221 one_$:27 one__much:40 one_and:28 one_how:37 one_please:25 opcion:43 open:50
open_$:49 option:53 otro_dia:-25 para:40 parar:-28 parar_$:-28 perfect:26 perfecto:28 pero:-43 pero__a:27
pero__las:-89 pero__que:25 pero_a:-92 pero_voy:27 pick:35 please_$:-71 please_and:29 pm:38 por:51 por_favor:65
prefer:35 prestado:29 primera:35 primero:30 put:39 put__down:29 put_me:35 que:128 que__lleven:29 que__van:26
que_me:30 que_si:-25 queda:-30 queda_$:-74 quedo:25 quit:-26 quit_$:-25 sabado:-30 same:-35 saturday:-39
saturday_$:-39 second:76 second_$:37 see__then:32 see_you:34 segunda:41 segundo:27 should:25 should_i:26 si:-49
si_$:-85 si_pero:28 slot:50 so:36 somebody:28 sorry:-57 sorry_$:-52 still:55 still_open:50 take:79 take_$:30
take_the:40 tarde:-27 te:-27 temprano:-41 temprano_$:-48 th:-108 th_$:-74 that_time:28 the:254 the__for:-30
the__if:25 the__one:86 the_day:-28 the_early:25 the_first:50 the_friday:46 the_later:36 the_pm:28 the_second:34
the_th:-107 them:32 there:28 this:-45 this_$:-25 those:-58 those_$:26 thursday__it:29 thursday__work:-50
thursday_at:39 to:159 to__it:26 to__me:41 to_me:36 tomorrow:-27 tomorrow_$:-32 too:-205 too__for:-60 too_early:-154
too_late:-72 tres:25 two:65 two_$:40 ultima:47 ultimo:28 un:49 van_a:25 viernes:37 viernes_me:31 voy:31 voy_a:25
we:-46 we__instead:-31 we_do:-36 wednesday:26 week:-88 week_$:-67 what:-72 what_about:-59 whatever:41 whichever:33
who:-40 who__this:-31 who_is:-34 will:53 with:76 with_me:34 wont:-26 wont_work:-25 work:-51 work_$:-65 work__me:-27
work_for:-30 works:44 works_$:30 would:-27 would__better:-51 y:38 y_me:29 y_te:-26 yes_please:-55 you:80 you_$:63
you_do:-59 you_then:32
"""
