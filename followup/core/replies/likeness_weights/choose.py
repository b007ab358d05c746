"""What speaks for and against `choose`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "choose"
BIAS = -354
WEIGHTS = """\
#abad:-32 #abou:-88 #acer:25 #afte:34 #agar:26 #alqu:56 #anda:28 #ante:26 #anyt:-82 #apun:29 #arar:-33 #arde:-36
#arli:45 #arly:-85 #arro:33 #asie:46 #asta:-34 #ater:-32 #atev:49 #atte:93 #atur:-60 #avor:66 #aybe:-64 #back:38
#bado:-32 #bast:-32 #best:52 #blem:41 #body:29 #boss:-49 #both:86 #bout:-88 #brak:41 #brin:61 #cant:-146 #casa:31
#cesi:47 #chev:49 #chin:38 #cias:25 #cion:71 #cita:-32 #clar:-36 #cloc:37 #clos:40 #coin:35 #coja:29 #come:-27
#cond:84 #coul:-51 #crib:-26 #cual:28 #cupo:35 #digo:-25 #dnes:37 #does:-27 #down:29 #dria:-40 #driv:27 #drop:39
#each:-39 #earl:-36 #easi:46 #ebod:31 #eces:47 #econ:85 #ecto:40 #edne:28 #efer:52 #egun:68 #eith:-73 #ejor:-81
#emos:33 #empr:-55 #ence:28 #endi:41 #endr:-32 #engo:25 #enta:43 #ente:34 #eres:-30 #erfe:74 #erne:45 #erno:27
#esas:-29 #esda:39 #esit:48 #esnt:-43 #espe:35 #esta:51 #este:-33 #etal:57 #evar:32 #ever:98 #eves:28 #evok:-25
#favo:66 #fect:73 #fine:78 #firs:30 #fter:34 #goin:41 #grab:28 #grac:36 #guna:-137 #gund:77 #guno:-56 #hace:33
#hank:32 #hate:49 #have:26 #here:30 #heve:49 #hich:56 #hing:-66 #hird:30 #hola:-45 #home:34 #hose:-55 #houl:30
#hour:-46 #hurs:39 #ible:-71 #iche:49 #iera:73 #iern:37 #iero:45 #iest:65 #ight:60 #imer:62 #impo:-45 #ingu:-198
#inst:-82 #inte:-25 #irst:30 #iste:32 #ithe:-73 #juev:28 #laro:-36 #last:58 #late:-95 #leav:26 #leva:54 #leve:32
#like:-44 #llev:86 #lock:46 #long:33 #lose:40 #lqui:56 #ltim:84 #lune:-40 #mana:-26 #mand:37 #matt:91 #mayb:-64
#mber:67 #mebo:31 #medi:28 #mejo:-81 #mera:39 #mero:47 #meta:48 #morn:39 #mpos:-45 #mpra:-50 #nada:-34 #nana:-29
#nday:-27 #ndin:26 #nece:47 #need:122 #neit:-227 #nesd:28 #next:-96 #ngun:-198 #nigh:40 #ning:-195 #none:-144
#noon:-28 #nste:-70 #ntad:25 #ntem:26 #nter:-25 #nton:29 #numb:67 #nyth:-75 #oble:41 #oclo:29 #ocup:43 #oesn:-43
#oing:53 #omeb:31 #opci:52 #open:68 #opti:58 #orks:45 #orni:37 #orqu:25 #orry:-67 #osib:-50 #ossi:-50 #ould:-69
#pcio:52 #perf:74 #pero:-41 #plan:31 #porq:25 #posi:-39 #poss:-50 #pran:-61 #pref:72 #pres:40 #prim:61 #prob:42
#ptio:58 #pues:26 #punt:37 #qued:32 #quie:53 #quit:-36 #raci:25 #rake:42 #rano:-41 #rday:-67 #rech:32 #refe:52
#revo:-25 #rfec:74 #rime:62 #ring:84 #rlie:45 #rnes:37 #rnin:39 #rnoo:27 #robl:42 #rque:33 #saba:-32 #same:-35
#satu:-59 #scoj:29 #scri:-26 #sday:54 #seco:85 #segu:64 #sent:29 #shou:30 #sibl:-99 #sies:44 #sito:52 #slot:49
#some:34 #sorr:-67 #sper:29 #ssib:-50 #stad:32 #star:43 #stea:-70 #stil:58 #suit:30 #tado:38 #take:73 #tard:-38
#tart:28 #tead:-70 #teme:40 #temp:-66 #tend:-25 #teng:30 #tern:27 #teve:49 #than:30 #them:36 #ther:-47 #thin:-73
#thir:31 #this:-46 #thos:-55 #thur:48 #till:64 #tima:56 #timo:31 #tion:68 #tres:27 #tter:69 #turd:-59 #ualq:56
#uedo:33 #ueve:53 #uier:87 #uits:32 #ulti:84 #umbe:67 #unda:29 #undo:31 #unds:25 #unes:-40 #unte:29 #urda:-59
#uste:25 #vemo:36 #vier:44 #voke:-25 #wedn:28 #week:-102 #well:27 #what:-43 #whic:56 #will:70 #with:84 #wont:-32
#woul:-48 #your:37 #ythi:-76 %again_later%agree:60 %again_later%bring:58 %again_later%busy:35
%again_later%call_off:61 %again_later%car_part:40 %again_later%lift:45 %again_later%opening:41 %again_later%phone:30
%again_later%question:38 %again_later%refuse:63 %again_later%season:-37 %again_later%staff:26
%again_later%start_again:47 %again_later%wrong_one:33 %agree:147 %agree%away:84 %agree%bring:63 %agree%busy:79
%agree%call_off:57 %agree%car_part:87 %agree%elsewhere:41 %agree%gone_car:37 %agree%how_long:114 %agree%lift:52
%agree%money:46 %agree%noise:39 %agree%odometer:27 %agree%on_way:62 %agree%opening:39 %agree%phone:40 %agree%place:29
%agree%question:139 %agree%refuse:76 %agree%shift_it:114 %agree%staff:40 %agree%start_again:42 %agree%thanks:69
%agree%wrong_one:37 %away:143 %away%busy:28 %away%lift:57 %away%on_way:54 %away%refuse:30 %away%wrong_one:29
%bring:179 %bring%call_off:87 %bring%do_it:36 %bring%family:31 %bring%lift:48 %bring%money:26 %bring%on_way:47
%bring%opening:29 %bring%shift_it:68 %bring%start_again:34 %busy:-31 %busy%fails:-31 %busy%lift:36 %busy%refuse:33
%call_off:-123 %call_off%how_long:46 %call_off%lift:31 %call_off%on_way:62 %call_off%question:59 %call_off%refuse:-70
%call_off%shift_it:66 %call_off%staff:31 %call_off%start_again:59 %car%gone_car:-29 %car%lift:49 %car%question:26
%car%refuse:58 %car_part:219 %car_part%fails:65 %car_part%on_way:34 %doubt%how_long:38 %doubt%question:35
%doubt%shift_it:36 %elsewhere%staff:30 %fails:86 %fails%refuse:-38 %fails%start_again:28 %family:46
%family%shift_it:26 %gone_car:28 %gone_car%refuse:31 %how_long:-26 %how_long%on_way:-43 %how_long%thanks:37
%leave_me:-86 %lift:182 %lift%odometer:28 %lift%on_way:55 %lift%refuse:103 %lift%shift_it:25 %meaning:119
%meaning%question:43 %money:28 %money%on_way:32 %noise:80 %odometer:126 %odometer%on_way:49 %odometer%question:29
%on_way:78 %on_way%question:28 %on_way%refuse:40 %opening:116 %phone:45 %phone%staff:33 %place:49 %question:-49
%question%refuse:95 %question%shift_it:92 %question%who:-72 %question%wrong_one:46 %refuse:-51 %refuse%shift_it:54
%refuse%start_again:46 %refuse%thanks:33 %season:-71 %shift_it:-70 %staff%wrong_one:32 %start_again:94 %thanks:197
%who:-80 @?:-107 @after_visit:-47 @car:-28 @confirm:-119 @confirm_stop:-29 @day:-67 @later:-68 @nothing:-78
@offers:821 @offers_:29 @time:-73 @times:179 @walk_in:-52 ^_afternoon:35 ^_ahi:33 ^_all:66 ^_am:54 ^_basta:-32
^_both:45 ^_can:-81 ^_cant:-143 ^_could:-65 ^_cualquiera:64 ^_de:-27 ^_do:-38 ^_doesnt:49 ^_either:154 ^_el:183
^_first:73 ^_friday:165 ^_got:-52 ^_hm:-48 ^_hmm:-51 ^_hola:-45 ^_how:-177 ^_ill:100 ^_is:-143 ^_la:238 ^_las:28
^_last:45 ^_let:-42 ^_lets:25 ^_make:-31 ^_maybe:-55 ^_me:64 ^_mejor:-107 ^_muy:-93 ^_nada:-27 ^_nd:37 ^_neither:-226
^_ninguna:-131 ^_ninguno:-48 ^_no:-115 ^_none:-129 ^_not:-118 ^_numero:25 ^_parar:-32 ^_put:45 ^_que:-35 ^_quit:-29
^_revoke:-25 ^_second:35 ^_si:52 ^_sure:30 ^_the:200 ^_thurs:31 ^_thursday:-36 ^_too:-178 ^_viernes:42 ^_what:-168
^_whatever:44 ^_which:-27 ^_whichever:50 ^_who:-36 ^_works:27 ^_y:-68 a__casa:27 a__home:29 a__hora:-26 a__to:34
a_las:-131 a_mi:31 a_ride:25 about:-88 afternoon:35 ahi:124 ahi_nos:32 al:71 all__them:52 all_of:50 am:49 and:139
and__need:55 and_i:25 and_ill:44 antes:25 any:-25 any__those:69 any_of:64 anything:-74 apunteme:30 are_fine:27
ask:-86 ask_me:-25 ask_my:-59 at_$:-38 back:38 basta:-32 basta_$:-32 be:-28 be_$:-37 be_best:32 be_better:-52
be_there:31 before_i:-33 best:52 best_$:40 boss:-49 boss_$:-43 both:86 bring:54 but:-116 but__it:-56 but_i:27 cae:39
can:-77 can__be:-57 can__do:-77 can_it:-62 can_we:-36 can_you:-45 cant:-146 cant_do:-90 carro__para:25
carro_prestado:32 casa:31 cita:-40 claro:-35 close:31 con:75 could:-62 could__do:-40 could_you:-42 cual:-28
cualquiera:68 cualquiera_de:50 da:52 da_igual:30 day:-86 day_$:-37 day__me:-29 day_for:-29 de:116 de__dos:35
de_las:104 del:84 del_viernes:30 dia:-63 dia_$:-34 digo:-25 do:-74 do__at:31 do__need:25 do_friday:-37 do_i:36
do_instead:-41 do_you:47 does_it:25 doesnt:-43 doesnt_matter:85 doesnt_work:-126 dos:62 dos_$:59 down:29 down_for:26
drop:26 early:-99 early_$:-124 eh:26 either:144 either_$:52 el:79 el__a:-30 el__las:26 el__me:41 el__pero:-108
el_de:54 el_lunes:-71 el_martes:-46 el_mas:50 el_primero:59 el_que:42 el_sabado:-35 el_segundo:31 el_ultimo:31
el_viernes:-30 en__tarde:-48 es__cita:-26 esa:45 esas:-33 esta:26 favor:66 favor_$:36 fine:78 fine__me:42
fine_with:31 first:30 first_$:-60 first_one:42 for:-50 for_$:-28 for_me:-88 for_you:52 friday_$:-135 friday__and:39
friday_afternoon:28 friday_but:-50 friday_same:-32 friday_would:32 go:72 go__friday:30 go_with:55 going:41
going_to:27 good_$:-26 got:-88 got_anything:-49 grab:28 gracias:25 hacer:26 have:27 hm:-48 hmm:-51 hola:-45 home:34
hour:-39 how:-55 how__is:-35 how__will:27 how_about:-33 how_long:32 how_much:-45 i:118 i__a:34 i__do:28 i__for:33
i_can:82 i_need:38 i_plan:25 id__the:35 id_prefer:35 if:31 if__open:27 if_it:29 ill:186 ill__a:29 ill__the:32
ill__there:33 ill_be:36 ill_have:27 ill_need:29 ill_take:42 imposible:-38 in:-62 in__day:-31 in_the:-53 instead:-70
instead_$:-75 is:67 is_$:26 is__a:32 is__cost:-31 is__early:-42 is__for:26 is__going:34 is__with:30 is_better:30
is_fine:35 is_it:-54 is_out:-37 is_still:33 is_this:-32 is_too:-42 it__still:27 it__the:-41 it_be:-73 it_is:104
it_take:26 jueves:28 jueves_$:51 jueves__a:-80 jueves_pero:-81 la:311 la__en:34 la__las:26 la__viernes:25 la_de:67
la_del:54 la_mas:28 la_primera:40 la_segunda:40 la_tarde:-46 la_ultima:43 las_$:-114 las_dos:56 las_nueve:25 last:58
last_one:35 late:-90 late__me:-50 late__the:-29 late_in:-29 later:-31 later_one:36 le:66 le__a:41 le_van:29 les:25
let:-53 let_me:-53 like:-44 like_$:-56 lleven:38 long:29 long__it:29 long_will:27 lunes:-40 lunes_$:-59 manana:-30
mas:28 mas_temprano:42 matter:84 matter_$:30 maybe:-64 maybe_next:-54 me:142 me__a:40 me__el:-26 me__for:33
me__igual:25 me__mejor:34 me__my:-48 me_da:47 me_down:33 me_lleven:38 me_quedo:25 me_the:32 mejor:-81
mejor__lunes:-58 mejor_el:-62 metal:48 mi:73 monday__be:-44 morning:49 morning_one:28 much:-31 much__it:-43 muy:-93
muy_temprano:-94 my:33 my_boss:-58 nada:-34 nd:33 necesito:42 necesito__me:44 necesito_que:44 need:123 need__lift:28
need_a:69 neither:-227 neither_$:-86 next:-96 next_week:-72 ni:-58 ni_la:-28 ninguna:-137 ninguna_$:-70 ninguno:-61
no:-117 no_$:-75 no__la:30 no_good:-39 no_tengo:33 none:-144 none__those:-76 none_of:-97 noon:-54 noon_$:-63 nos:43
nos_vemos:36 not:-121 not_friday:-70 nueve:25 number:68 o:29 oclock:29 ocupo:36 of:60 of_them:38 ok_$:-32 on:-51
on_friday:-62 one:236 one_$:25 one__much:46 one_and:32 one_how:42 one_please:27 opcion:52 open:69 open_$:48 option:58
or:41 otro_dia:-26 out:-25 out_$:-28 para:30 parar:-33 parar_$:-32 perfecto:40 pero:-51 pero__a:30 pero__las:-100
pero__que:26 pero_a:-103 pero_voy:30 pick:45 please_$:-91 please_and:31 pm:37 por:45 por_favor:68 porque:25
possible:-40 possible_$:-40 prefer:34 prestado:32 prestado_para:25 primera:39 put:44 put__down:33 put_me:39 que:139
que__lleven:38 que__van:29 que_hora:-25 que_me:38 que_si:-26 queda_$:-77 quedan:29 quedo:29 quien:-27 quit:-30
quit_$:-29 revoke:-25 ride_to:28 sabado:-32 same:-41 saturday:-58 saturday_$:-58 second:85 second_$:37 see__then:34
see_you:31 segunda:46 segundo:31 segundo_$:25 should:30 should__plan:25 should_i:30 si:-52 si_$:-89 si_pero:33
slot:52 so:43 somebody:31 sorry:-67 sorry_$:-62 sounds:25 still:58 still_open:48 suits:32 suits_me:25 take:79
take_$:28 take_the:46 tarde:-43 tarde_$:-35 te:-30 temprano:-41 temprano_$:-51 tengo:26 th:-128 th_$:-80 that_day:-29
that_time:33 that_works:26 the:265 the__for:-37 the__one:80 the_day:-31 the_earlier:25 the_early:28 the_first:49
the_friday:27 the_later:39 the_pm:31 the_second:40 the_th:-127 them:36 there:29 third:30 this:-46 this_$:-28
those:-55 those_$:39 thursday:31 thursday__it:29 thursday__work:-61 thursday_at:44 thursday_but:-57 to:167 to__it:29
to__me:45 to_me:30 tomorrow:-26 tomorrow_$:-38 too:-203 too_$:29 too__for:-66 too_early:-150 too_late:-79 tres:27
tuesday__is:25 two:83 two_$:42 ultima:52 ultimo:31 un:55 up:26 van:27 van_a:28 vemos:36 vemos_$:36 vez:29 viernes:37
viernes_me:38 viernes_pero:-28 voy:34 voy_a:28 we:-47 we__instead:-30 we_do:-35 wednesday:29 week:-94 week_$:-70
what:-91 what_about:-64 what_would:-25 whatever:44 whichever:49 who:-44 who__this:-35 who_is:-37 will:70 with:90
with_me:38 wont:-32 wont_work:-30 work:-57 work_$:-64 work__me:-36 work_for:-39 works:45 works_$:31 would:-48
would__better:-64 y:40 y_me:31 y_te:-29 yes_please:-43 you:113 you_$:83 you_do:-67 you_then:29
"""
