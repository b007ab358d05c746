"""What speaks for and against `choose`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "choose"
BIAS = -280
WEIGHTS = """\
#abad:-28 #abou:-81 #acia:22 #afte:26 #alqu:46 #anda:23 #ando:-22 #ante:25 #anto:27 #anyt:-84 #apun:27 #arar:-26
#arli:37 #arly:-90 #arro:29 #asie:41 #asta:-30 #ater:-22 #atev:47 #atte:80 #atur:-40 #avor:54 #aybe:-61 #back:31
#bado:-28 #bast:-26 #befo:25 #best:42 #blem:33 #body:25 #boss:-43 #both:63 #bout:-85 #brak:34 #brin:41 #cant:-108
#casa:22 #cesi:37 #chev:33 #chin:29 #cias:22 #cion:54 #cita:-25 #clar:-30 #cloc:36 #clos:34 #coja:26 #cond:73
#coul:-46 #crib:-22 #cupo:32 #dejo:22 #digo:-22 #dnes:32 #down:26 #dria:-36 #driv:24 #each:-33 #earl:-49 #easi:41
#ebod:27 #eces:36 #econ:73 #ecto:25 #edne:24 #efer:48 #efor:25 #egun:57 #eith:-72 #ejor:-86 #empr:-49 #ence:24
#endi:23 #endr:-25 #enta:34 #ente:29 #eres:-25 #erfe:57 #erne:39 #erno:23 #esas:-27 #esda:33 #esit:37 #esnt:-32
#espe:38 #esta:44 #este:-28 #etal:49 #evar:27 #ever:80 #favo:54 #fect:57 #fine:62 #firs:25 #fore:25 #fter:26 #goin:30
#grac:31 #guna:-128 #gund:61 #guno:-57 #hace:27 #hank:27 #hate:47 #here:29 #heve:33 #hich:39 #hing:-70 #hola:-36
#home:28 #hose:-40 #houl:24 #hour:-41 #hurs:46 #ible:-44 #iche:33 #iera:61 #iern:33 #iero:39 #iest:61 #ight:46
#imer:56 #impo:-33 #ingu:-190 #inst:-68 #irst:25 #iste:33 #ithe:-72 #laro:-31 #last:51 #late:-76 #leva:34 #leve:27
#like:-40 #llev:60 #lock:40 #long:35 #lose:34 #lqui:46 #ltim:74 #lune:-52 #mand:32 #matt:79 #mayb:-61 #mber:59
#mebo:27 #mejo:-86 #mera:28 #mero:49 #meta:41 #morn:29 #mpos:-33 #mpra:-45 #nada:-31 #nday:-35 #nece:36 #need:112
#neit:-191 #nesd:24 #next:-88 #ngun:-190 #nigh:33 #ning:-184 #none:-112 #noon:-23 #nste:-58 #ntem:24 #ntes:22
#nton:26 #numb:60 #nyth:-78 #oble:35 #oclo:29 #ocup:39 #oesn:-32 #oing:40 #omeb:27 #omor:-25 #opci:38 #open:51
#opti:51 #orks:33 #orni:27 #orry:-52 #osib:-44 #ossi:-24 #ould:-48 #over:22 #para:23 #pcio:38 #perf:57 #pero:-30
#plan:26 #posi:-35 #poss:-24 #pran:-54 #pref:67 #pres:36 #prim:56 #prob:35 #ptio:51 #punt:34 #quie:43 #quit:-29
#raci:22 #rake:34 #rano:-41 #rday:-47 #rech:26 #refe:48 #rfec:57 #rime:56 #ring:63 #rlie:37 #rnes:33 #rnin:29
#rnoo:23 #robl:35 #rque:26 #rsda:23 #saba:-28 #same:-30 #satu:-39 #scoj:25 #scri:-22 #sday:56 #seco:73 #segu:51
#sent:24 #shou:24 #sibl:-68 #sies:42 #sito:40 #slot:44 #some:30 #sorr:-52 #sper:32 #ssib:-24 #stad:28 #star:30
#stea:-58 #sted:22 #stil:54 #tado:34 #take:71 #tard:-22 #tart:24 #tead:-58 #teme:35 #temp:-58 #tern:23 #teve:47
#than:26 #them:36 #ther:-58 #thin:-76 #this:-44 #thos:-40 #thur:54 #till:60 #tima:50 #timo:27 #tion:58 #tres:24
#tter:72 #turd:-39 #ualq:46 #uant:26 #uedo:26 #ueve:33 #uier:73 #uits:23 #ulti:74 #umbe:60 #undo:25 #unes:-52
#unte:26 #urda:-39 #ursd:23 #uste:24 #vemo:24 #vier:37 #wedn:24 #week:-94 #well:23 #what:-25 #whic:39 #will:53
#with:71 #wont:-26 #woul:-26 #your:30 #ythi:-78 %again_later:31 %again_later%agree:59 %again_later%away:22
%again_later%bring:50 %again_later%busy:31 %again_later%call_off:46 %again_later%car_part:32 %again_later%how_long:25
%again_later%lift:60 %again_later%on_way:30 %again_later%opening:36 %again_later%phone:26 %again_later%question:34
%again_later%refuse:46 %again_later%season:-33 %again_later%staff:24 %again_later%start_again:37
%again_later%wrong_one:27 %agree:23 %agree%away:68 %agree%bring:50 %agree%busy:67 %agree%car:23 %agree%car_part:75
%agree%elsewhere:23 %agree%gone_car:30 %agree%how_long:98 %agree%lift:55 %agree%money:44 %agree%odometer:25
%agree%on_way:48 %agree%opening:32 %agree%phone:33 %agree%question:134 %agree%refuse:34 %agree%shift_it:79
%agree%staff:32 %agree%start_again:37 %agree%thanks:56 %agree%wrong_one:31 %away:168 %away%busy:24 %away%lift:60
%away%on_way:46 %away%refuse:33 %away%wrong_one:28 %bring:150 %bring%call_off:61 %bring%do_it:33 %bring%lift:44
%bring%money:23 %bring%on_way:42 %bring%opening:25 %bring%shift_it:52 %bring%start_again:28 %busy%fails:-25
%busy%lift:27 %busy%refuse:37 %call_off:-99 %call_off%how_long:38 %call_off%lift:26 %call_off%on_way:44
%call_off%question:43 %call_off%refuse:-41 %call_off%shift_it:59 %call_off%staff:25 %call_off%start_again:49
%car%gone_car:-26 %car%lift:39 %car%odometer:22 %car%question:24 %car%refuse:54 %car_part:167 %car_part%fails:52
%car_part%on_way:29 %doubt:-38 %doubt%how_long:32 %doubt%question:28 %doubt%shift_it:30 %elsewhere%staff:26 %fails:65
%fails%refuse:-32 %fails%start_again:24 %gone_car%refuse:26 %how_long%lift:25 %how_long%on_way:-39
%how_long%question:23 %how_long%thanks:28 %leave_me:-78 %lift:181 %lift%odometer:26 %lift%on_way:56 %lift%question:22
%lift%refuse:93 %meaning:111 %meaning%question:32 %money:67 %money%on_way:32 %noise:53 %odometer:87
%odometer%on_way:44 %odometer%question:28 %on_way:75 %on_way%question:30 %opening:88 %phone:39 %phone%staff:29
%place:36 %place%question:30 %question%refuse:77 %question%shift_it:75 %question%who:-63 %question%wrong_one:37
%refuse%shift_it:41 %refuse%start_again:41 %refuse%thanks:30 %season:-63 %shift_it:-90 %staff%wrong_one:30
%start_again:78 %thanks:169 %who:-72 %wrong_one:22 @?:-93 @after_visit:-34 @car:-33 @confirm:-83 @confirm_stop:-22
@day:-49 @later:-54 @nothing:-63 @offers:623 @offers_:25 @time:-55 @times:125 @walk_in:-36 ^_afternoon:27 ^_all:51
^_am:36 ^_any:27 ^_anything:-23 ^_basta:-26 ^_both:45 ^_can:-79 ^_cant:-106 ^_could:-57 ^_cualquiera:52 ^_do:-33
^_doesnt:58 ^_either:116 ^_el:158 ^_first:60 ^_friday:129 ^_got:-46 ^_hm:-37 ^_hmm:-49 ^_hola:-36 ^_how:-153 ^_ill:80
^_im:-23 ^_is:-85 ^_jueves:24 ^_la:185 ^_las:23 ^_last:40 ^_let:-32 ^_make:-27 ^_maybe:-52 ^_me:58 ^_mejor:-107
^_muy:-87 ^_nada:-23 ^_nd:32 ^_neither:-190 ^_ninguna:-124 ^_ninguno:-50 ^_no:-83 ^_none:-103 ^_not:-107 ^_numero:22
^_parar:-26 ^_put:40 ^_que:-24 ^_quit:-24 ^_second:31 ^_si:47 ^_sure:23 ^_the:181 ^_thurs:29 ^_too:-163 ^_viernes:33
^_what:-139 ^_whatever:42 ^_whichever:34 ^_who:-31 ^_works:23 ^_y:-51 ^_yes:-36 a__casa:24 a__home:23 a__hora:-23
a__to:25 a_las:-111 a_mi:30 about:-81 afternoon:31 ahi:96 al:58 all__them:48 all_of:47 am:26 and:112 and__need:43
and_ill:32 antes:24 any__those:60 any_of:57 anything:-77 anything_but:-23 apunteme:27 ask:-72 ask_my:-50 at:33
back:31 basta:-26 be:-24 be_$:-36 be_best:30 be_better:-41 be_there:26 before:25 best:42 best_$:32 boss:-43
boss_$:-37 both:63 bring:35 but:-106 but__it:-48 cae:33 can:-72 can__be:-49 can__do:-67 can_it:-54 can_we:-36
can_you:-30 cant:-108 cant_do:-60 carro__para:22 carro_prestado:29 casa:22 casa_$:22 cita:-31 claro:-30 close:26
con:61 could:-55 could__do:-37 could_you:-36 cual:-25 cualquiera:56 cualquiera_de:51 cuanto:27 da:40 da_igual:22
day:-74 day_$:-28 day__me:-28 day_for:-28 de:101 de__dos:31 de_las:88 dejo:22 del:62 del_viernes:25 dia:-58 dia_$:-32
digo:-22 do:-44 do__at:30 do__need:22 do_friday:-24 do_i:32 do_instead:-43 do_you:38 does_it:23 doesnt:-32
doesnt_matter:73 doesnt_work:-104 dos:49 dos_$:53 down:26 down_for:26 early:-102 early_$:-132 eh:22 either:111
either_$:43 el:74 el__a:-26 el__las:24 el__me:33 el__pero:-95 el_de:49 el_lunes:-78 el_martes:-38 el_mas:44
el_primero:49 el_que:35 el_sabado:-31 el_segundo:25 el_ultimo:27 en__tarde:-32 esa:33 esas:-30 esta:22 favor:54
favor_$:31 fine:62 fine__me:38 fine_with:29 first:25 first_$:-58 first_one:40 for:-52 for_$:-27 for_me:-81
for_thursday:26 for_you:42 friday:22 friday_$:-119 friday__and:34 friday__it:22 friday_afternoon:24 friday_but:-44
friday_is:22 go:71 go__friday:28 go_with:52 going:30 going_to:23 got:-76 got_anything:-43 gracias:22 hacer:22 hm:-37
hmm:-49 hola:-36 home:28 hour:-34 how:-37 how__is:-22 how__will:25 how_about:-28 how_long:32 how_much:-32 i:86
i__do:27 i__for:28 i_can:62 i_need:25 id__the:34 id_prefer:34 if:29 if__open:28 if_it:24 ill:167 ill__a:33
ill__the:24 ill__there:30 ill_be:31 ill_have:22 ill_need:33 ill_take:33 imposible:-33 in:-49 in__day:-31 in_the:-42
instead:-58 instead_$:-63 is:105 is_$:22 is__a:27 is__going:23 is__open:22 is__with:27 is_better:25 is_fine:32
is_it:-33 is_still:27 is_this:-29 is_too:-55 it__still:22 it__the:-34 it_be:-64 it_is:84 it_take:28 jueves_$:45
jueves__a:-71 jueves_pero:-71 la:257 la__en:24 la_de:46 la_del:37 la_primera:28 la_segunda:31 la_tarde:-24
la_ultima:39 las_$:-98 las_dos:49 last:51 last_one:29 late:-85 late__me:-44 late__the:-29 late_in:-29 later_one:32
le:58 le__a:35 le_van:25 les:22 let:-42 let_me:-42 like:-40 like_$:-50 lleven:28 long:30 long__it:31 long_will:25
los__me:-22 lunes:-52 lunes_$:-62 mas:22 mas_temprano:39 matter:73 matter_$:25 maybe:-61 maybe_next:-51 me:118
me__a:26 me__for:33 me__igual:22 me__mejor:26 me__my:-40 me_da:40 me_down:29 me_lleven:28 me_queda:-36 me_quedo:22
me_the:28 mejor:-86 mejor__lunes:-53 mejor_el:-60 metal:41 mi:58 monday__be:-44 morning:35 much__it:-30 muy:-88
muy_temprano:-89 my_boss:-50 nada:-31 nd:29 necesito:32 necesito__me:33 necesito_que:33 need:113 need_a:65
neither:-191 neither_$:-76 next:-88 next_week:-67 ni:-38 ni_la:-22 ninguna:-128 ninguno:-61 ninguno__los:-27
ninguno_de:-27 no:-76 no_$:-53 no__la:26 no_good:-31 no_tengo:27 none:-112 none__those:-57 none_of:-75 noon:-46
noon_$:-54 nos:31 nos_vemos:24 not:-105 not_friday:-57 number:60 o:23 oclock:29 ocupo:32 of:68 of_them:38 ok_$:-25
on:-29 on_friday:-54 one:208 one__much:41 one_and:28 one_how:37 one_please:22 opcion:38 open:52 open_$:50 option:51
otro_dia:-24 para:43 parar:-26 parar_$:-26 perfect:23 perfecto:25 pero:-46 pero__a:26 pero__las:-90 pero__que:24
pero_a:-93 pero_voy:26 pick:33 please_$:-82 please_and:28 pm:36 por:45 por_favor:56 prefer:34 prestado:29
prestado_para:22 primera:28 primero:28 put:39 put__down:29 put_me:35 que:125 que__lleven:28 que__van:25 que_me:28
queda:-37 queda_$:-76 quedan:24 quedo:25 quien:-24 quit:-24 quit_$:-23 sabado:-28 same:-34 saturday:-38
saturday_$:-39 second:73 second_$:36 see:23 see__then:31 see_you:32 segunda:36 segundo:25 should:24 should_i:25
si:-47 si_$:-80 si_pero:28 slot:47 so:35 somebody:27 sorry:-52 sorry_$:-49 still:54 still_open:50 suits:23 take:74
take_$:27 take_the:39 tarde:-25 te:-27 temprano:-41 temprano_$:-47 th:-103 th_$:-70 that_day:-22 that_time:27 the:236
the__for:-31 the__if:25 the__one:76 the_day:-30 the_early:25 the_first:49 the_friday:42 the_later:35 the_pm:27
the_second:32 the_th:-102 them:36 there:27 this:-44 this_$:-24 those:-40 those_$:32 thurs:22 thursday:22
thursday__it:29 thursday__work:-50 thursday_at:42 to:150 to__it:25 to__me:40 to_me:38 tomorrow:-28 tomorrow_$:-33
too:-198 too_$:24 too__for:-59 too_early:-147 too_late:-72 tres:24 two:65 two_$:40 ultima:46 ultimo:27 un:47 van:23
van_a:24 vemos:24 vemos_$:24 vez:23 viernes:33 viernes_me:30 viernes_pero:-25 voy:30 voy_a:24 we:-46 we__instead:-31
we_do:-35 wednesday:25 week:-87 week_$:-65 what:-72 what_about:-61 whatever:42 whichever:33 who:-39 who__this:-30
who_is:-33 will:53 will_it:23 with:76 with_me:35 wont:-26 wont_work:-24 work:-39 work_$:-52 work__me:-27 work_for:-30
works:33 works_$:26 would:-26 would__better:-51 y:33 y_me:28 y_te:-26 yes:-28 yes_but:23 yes_please:-55 you:81
you_$:62 you_do:-55 you_then:31
"""
