"""What speaks for and against `choose`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "choose"
BIAS = -276
WEIGHTS = """\
#abad:-25 #able:20 #abou:-52 #acer:24 #ados:19 #agar:22 #aldr:-19 #algu:20 #alqu:27 #anda:30 #ante:30 #anto:25
#anyt:-62 #apun:24 #arar:-33 #arde:-20 #arli:42 #arly:-71 #arou:-21 #arro:29 #asie:41 #ater:-33 #atev:47 #atte:76
#atur:-31 #avor:57 #aybe:-51 #back:27 #bado:-25 #befo:18 #best:43 #blem:42 #body:24 #boss:-38 #both:57 #bout:-54
#brak:32 #brin:48 #cant:-101 #carr:21 #cesi:32 #chan:-21 #ched:-20 #cheq:21 #chev:24 #chin:35 #cion:32 #cita:-35
#clar:-33 #cloc:34 #clos:30 #cond:67 #cort:20 #coul:-35 #crib:-23 #cuan:21 #cupo:36 #dale:27 #dejo:24 #digo:-20
#dito:26 #dnes:35 #down:20 #dria:-33 #driv:22 #drop:25 #each:-37 #earl:-26 #easi:41 #ebod:25 #eces:31 #econ:67
#ecto:22 #edne:26 #efer:48 #efor:18 #egun:54 #eith:-56 #ejor:-78 #emos:26 #empr:-45 #ence:29 #endi:30 #endr:-28
#engo:24 #enta:33 #eone:24 #eque:21 #eren:22 #eres:-21 #erfe:48 #erne:37 #esas:-25 #esda:40 #esit:32 #esnt:-27
#espe:33 #esta:37 #este:-22 #etal:59 #evar:21 #ever:73 #favo:57 #fect:48 #fere:22 #fine:52 #firs:23 #fore:18
#forg:-22 #fren:23 #game:18 #goin:21 #gone:-20 #grac:27 #guna:-105 #gund:59 #guno:-50 #hace:32 #hate:46 #have:26
#hequ:21 #heve:24 #hich:30 #hing:-44 #hone:19 #hose:-34 #houl:26 #hour:-30 #hurs:29 #ible:-57 #iche:24 #iera:35
#iern:29 #iero:29 #iest:66 #ight:42 #imer:62 #impo:-36 #ings:-20 #ingu:-159 #inst:-56 #irst:23 #iste:34 #ithe:-56
#keys:20 #kind:23 #laro:-33 #last:43 #late:-63 #ldri:-19 #lema:22 #leva:29 #leve:22 #lier:18 #lies:24 #like:-28
#llev:52 #lock:38 #long:33 #lose:30 #lqui:27 #ltim:77 #lune:-50 #mage:-19 #mand:40 #matt:75 #mayb:-51 #mber:55
#mebo:25 #mejo:-78 #meon:24 #mera:27 #mero:54 #meta:49 #mism:21 #morn:24 #morr:-31 #mpos:-36 #mpra:-39 #nada:-34
#nday:-34 #ndra:-20 #nece:32 #need:84 #neit:-162 #nesd:26 #next:-81 #ngun:-159 #nigh:32 #ning:-163 #none:-109
#noon:-32 #nste:-45 #ntem:21 #ntes:24 #nton:21 #numb:55 #nume:19 #nyth:-54 #oble:44 #ocho:20 #oclo:27 #ocup:35
#oesn:-27 #oing:33 #omeb:25 #omeo:24 #omor:-37 #opci:41 #open:43 #opti:49 #orge:-21 #orks:42 #orni:23 #orqu:25
#orro:-32 #orry:-44 #osib:-48 #ossi:-27 #ould:-28 #oure:19 #over:36 #pcio:40 #perf:48 #pero:-43 #phon:19 #plan:28
#porq:25 #posi:-37 #poss:-27 #pran:-50 #pref:60 #pres:38 #prim:61 #prob:44 #ptio:49 #pued:-24 #pues:24 #punt:23
#quie:25 #quit:-35 #rake:32 #rano:-35 #rday:-36 #rech:24 #refe:48 #renc:23 #rfec:48 #rget:-21 #ribe:-21 #rime:62
#ring:77 #rise:25 #rlie:42 #rnes:29 #rnin:24 #robl:44 #roun:-21 #rque:34 #rrow:-31 #saba:-25 #sald:-19 #same:-25
#satu:-30 #scri:-23 #sday:43 #seco:67 #segu:48 #sent:21 #shou:26 #sibl:-74 #side:23 #sito:36 #slot:45 #some:32
#sorr:-44 #sper:28 #ssib:-26 #stad:28 #star:27 #stea:-45 #sted:19 #stil:46 #suit:26 #sund:-18 #tado:33 #take:54
#tard:-24 #tart:29 #tead:-45 #tely:20 #teme:35 #temp:-54 #tend:-21 #teng:29 #teve:47 #that:18 #them:32 #then:-18
#ther:-49 #they:19 #thin:-52 #this:-31 #thos:-34 #thur:38 #till:52 #tima:53 #timo:27 #tion:58 #toca:-22 #tomo:-23
#tres:20 #tter:61 #turd:-30 #ualq:27 #uant:26 #uede:-19 #uedo:20 #ueve:22 #uier:55 #uits:28 #ulti:76 #umbe:55
#umer:19 #undo:27 #unes:-50 #unte:24 #urda:-30 #vemo:28 #vier:28 #wedn:26 #weds:24 #week:-86 #well:26 #were:-19
#whic:30 #will:51 #with:56 #wont:-28 #woul:-18 #your:35 #ythi:-55 #zero:-22 %again_later:44 %again_later%agree:63
%again_later%away:20 %again_later%bring:55 %again_later%busy:33 %again_later%call_off:39 %again_later%car_part:39
%again_later%do_it:30 %again_later%doubt:18 %again_later%lift:46 %again_later%meaning:19 %again_later%opening:33
%again_later%phone:24 %again_later%question:52 %again_later%refuse:23 %again_later%season:-32 %again_later%staff:26
%again_later%start_again:41 %again_later%wrong_one:28 %agree:191 %agree%away:54 %agree%bring:41 %agree%busy:70
%agree%car_part:78 %agree%elsewhere:21 %agree%fails:18 %agree%gone_car:25 %agree%how_long:93 %agree%lift:42
%agree%meaning:19 %agree%money:52 %agree%noise:26 %agree%odometer:27 %agree%on_way:31 %agree%opening:21
%agree%pay_day:18 %agree%phone:27 %agree%question:134 %agree%season:-22 %agree%shift_it:66 %agree%staff:42
%agree%start_again:32 %agree%thanks:53 %agree%wrong_one:29 %away:138 %away%busy:23 %away%lift:37 %away%on_way:36
%away%wrong_one:25 %bad:-36 %bring:126 %bring%call_off:51 %bring%do_it:30 %bring%lift:36 %bring%money:29
%bring%on_way:29 %bring%opening:23 %bring%shift_it:46 %bring%start_again:35 %bring%thanks:25 %bring%wrong_one:20
%busy%fails:-26 %busy%lift:22 %busy%question:26 %busy%refuse:38 %busy%wrong_one:21 %call_off:-123 %call_off%do_it:-25
%call_off%gone_car:26 %call_off%how_long:53 %call_off%lift:21 %call_off%on_way:20 %call_off%phone:-19
%call_off%question:29 %call_off%refuse:-40 %call_off%shift_it:52 %call_off%staff:30 %call_off%start_again:48
%car%gone_car:-27 %car%lift:28 %car%question:28 %car%refuse:38 %car_part:166 %car_part%fails:44 %car_part%noise:24
%car_part%on_way:30 %car_part%start_again:21 %do_it:20 %doubt:-23 %doubt%how_long:24 %doubt%question:25
%doubt%shift_it:29 %elsewhere%phone:18 %elsewhere%staff:24 %fails:62 %fails%refuse:-35 %fails%start_again:30
%family%shift_it:19 %gone_car%refuse:31 %how_long%lift:23 %how_long%on_way:-28 %how_long%question:23
%how_long%thanks:24 %leave_me:-72 %leave_me%opening:18 %leave_me%start_again:20 %lift:149 %lift%on_way:37
%lift%question:27 %lift%refuse:80 %lift%shift_it:22 %meaning:96 %meaning%question:29 %meaning%wrong_one:18 %money:66
%money%on_way:37 %noise:68 %odometer:80 %odometer%on_way:25 %odometer%question:36 %on_way:43 %on_way%question:27
%opening:79 %pay_day%season:-20 %phone:48 %phone%shift_it:24 %phone%staff:34 %place:45 %place%question:26
%question%refuse:73 %question%shift_it:60 %question%start_again:19 %question%who:-62 %question%wrong_one:39
%refuse:-55 %refuse%shift_it:44 %refuse%start_again:35 %season:-66 %season%shift_it:-18 %shift_it:-62 %staff:26
%staff%wrong_one:34 %start_again:88 %thanks:147 %who:-69 %wrong_one:27 @?:-89 @after_visit:-28 @car:-28 @confirm:-100
@confirm_stop:-21 @day:-50 @later:-54 @nothing:-67 @odometer:-20 @offers:607 @offers_:34 @reading:-20 @time:-55
@times:160 @walk_in:-30 ^_after:-19 ^_afternoon:25 ^_ahi:26 ^_all:45 ^_am:34 ^_antes:-25 ^_anything:-18 ^_both:42
^_call:-23 ^_can:-69 ^_cant:-98 ^_claro:-20 ^_could:-50 ^_cualquiera:37 ^_dale:22 ^_de:-29 ^_do:-35 ^_doesnt:50
^_either:111 ^_el:163 ^_en:-19 ^_first:65 ^_forget:-21 ^_fri:19 ^_friday:115 ^_got:-37 ^_have:-18 ^_hm:-49 ^_hmm:-61
^_how:-150 ^_ill:66 ^_im:-25 ^_is:-81 ^_la:184 ^_las:21 ^_last:39 ^_let:-32 ^_make:-31 ^_maybe:-43 ^_me:51
^_mejor:-86 ^_muy:-76 ^_nada:-26 ^_nd:39 ^_neither:-161 ^_ni:-18 ^_ninguna:-101 ^_ninguno:-42 ^_no:-80 ^_none:-99
^_noon:-22 ^_not:-102 ^_numero:20 ^_ok:18 ^_parar:-33 ^_put:36 ^_que:-26 ^_quiero:18 ^_quit:-29 ^_se:-23 ^_second:36
^_si:78 ^_sure:22 ^_the:180 ^_thurs:29 ^_thursday:-31 ^_too:-134 ^_tuesday:23 ^_viernes:27 ^_what:-124 ^_whichever:25
^_who:-36 ^_works:27 ^_y:-53 ^_yes:-18 ^_zero:-22 a__day:-18 a__home:18 a__hora:-20 a__por:23 a_las:-91 a_mi:25
a_que:-20 about:-52 after__th:-18 after_you:20 afternoon:24 afternoon_$:-18 again_$:22 ahi:88 ahi_nos:25 al:62
all__them:44 all_of:43 am:42 and:92 and__need:35 and_ill:20 and_what:19 antes:26 antes_$:22 any:-18 any__those:58
any_day:-23 any_of:55 anything:-54 apunteme:24 are:-25 around:-21 around_$:-19 ask:-68 ask_me:-22 at:30 at_$:-25
back:28 back_$:21 be:-19 be_$:-42 before:18 before_$:24 before_i:-19 best:43 best_$:30 better_$:-21 boss:-38
boss_$:-31 both:57 brakes:21 bring:41 but:-103 but__have:20 but__me:18 but_i:23 cae:38 came_on:19 can:-67 can__be:-47
can__do:-52 can_do:18 can_it:-51 can_we:-27 can_you:-26 cant:-100 cant_do:-53 carro:21 carro__para:20
carro_prestado:28 cheque:21 cita:-35 claro:-33 claro__si:-21 claro_que:-21 close:21 con:69 could:-47 could__do:-40
could_you:-39 cual:-28 cualquiera:35 cualquiera_de:35 cuanto:25 da:41 da_igual:19 dale:22 day:-69 day_$:-32
day_for:-25 de:104 de__dos:23 de__me:-20 de_eso:-18 de_la:18 de_las:82 decide:23 dejo:24 del:66 del_viernes:24
dia:-39 dia_$:-25 digame:19 digo:-20 digo_$:-19 do:-30 do_$:-22 do__at:27 do__need:25 do_friday:-23 do_i:35
do_instead:-31 do_they:20 do_you:40 does_it:21 doesnt:-27 doesnt_work:-93 dos:38 dos_$:38 down:21 down_for:20 drop:26
earlier:18 early:-87 early_$:-105 eh:20 either:106 el:90 el__las:24 el__me:20 el__mejor:-25 el__no:19 el__pero:-83
el__temprano:18 el_de:49 el_lunes:-74 el_martes:-40 el_mas:44 el_primero:52 el_que:39 el_sabado:-29 el_segundo:28
el_ultimo:27 en:-20 en__tarde:-27 en_la:-20 es_$:-21 es__cita:-26 esa:31 esas:-29 eso_$:20 esta:23 favor:57
favor_$:34 fine:52 fine__me:33 fine_with:22 first:23 first_$:-53 first_one:44 for:-26 for_$:-22 for_me:-59
for_thursday:20 for_you:41 forget:-21 forget_it:-20 fri:18 friday:19 friday_$:-103 friday__and:26 friday__it:19
friday_afternoon:18 friday_but:-40 friday_is:21 go:52 go__friday:21 go_with:41 going:21 going_to:22 gone:-20 got:-64
got_anything:-28 hacer:25 have:27 have_a:-18 have_to:19 hm:-49 hmm:-61 hour:-26 how:-21 how__is:-21 how__should:18
how__will:24 how_about:-21 how_long:29 how_much:-23 hoy:21 i:64 i__do:26 i__for:31 i__make:21 i__to:21 i_can:50
i_plan:23 id__the:29 id_prefer:29 if:20 if_it:23 ill:128 ill__a:20 ill__the:18 ill_have:24 ill_need:20 ill_take:31
im:-26 imposible:-36 in:-58 in_$:-19 in__afternoon:-19 in__day:-26 in_for:19 in_the:-50 instead:-45 instead_$:-51
is:79 is__a:34 is__cost:-20 is__for:18 is__going:23 is__open:18 is__with:20 is_fine:25 is_it:-36 is_no:-22
is_still:25 is_this:-27 is_too:-42 is_your:19 it__the:-25 it_be:-50 it_is:69 it_take:22 jueves_$:46 jueves__a:-67
jueves_pero:-67 keys:20 la:243 la__en:25 la_cita:-18 la_de:40 la_del:38 la_primera:27 la_segunda:27 la_ultima:41
las_$:-85 las_dos:39 last:43 last_one:27 late:-66 late__me:-34 later:-24 later_one:28 le:73 le__a:42 le_toca:-19
le_van:29 les:23 let:-41 let_me:-45 like:-28 like_$:-43 lleven:22 lo_espero:18 long:28 long__it:26 long_will:24
lunes:-50 lunes_$:-53 make_it:-21 mas_temprano:32 matter:68 maybe:-51 maybe_next:-42 me:99 me__ahi:19 me__al:19
me__el:-31 me__for:28 me__igual:19 me__mejor:22 me__my:-32 me_back:22 me_da:42 me_down:23 me_queda:-23 me_quedo:21
me_sale:-21 me_the:31 mejor:-78 mejor__lunes:-45 mejor_el:-50 metal:49 metal__metal:21 mi:49 monday:-18 monday_$:18
monday__be:-41 monday_but:-20 morning:31 much__it:-30 muy:-75 muy_temprano:-77 my:19 my_boss:-46 nada:-34 nada_de:-21
nd:35 necesito:26 necesito__me:28 necesito_que:28 need:86 need_a:36 neither:-162 next:-81 next_week:-58 ni:-46
ni_la:-29 ninguna:-105 ninguno:-54 ninguno__los:-20 ninguno_de:-21 no:-80 no_$:-57 no__el:25 no__la:30
no__problema:22 no_good:-29 no_me:-21 no_puedo:-20 no_tengo:33 none:-109 none__those:-50 none_of:-71 noon:-47
noon_$:-57 nos:35 nos_vemos:28 not:-100 not_friday:-49 number:56 numero:19 o:18 ocho:20 oclock:27 ocupo:36 of:76
of_them:34 ok_$:-23 on:-37 on_$:19 on_friday:-49 one:206 one_$:23 one__much:39 one_and:31 one_how:33 one_please:24
opcion:41 open:44 open_$:41 option:49 otra__que:19 otra_vez:18 out:26 over:20 over_$:18 para:42 parar:-33 parar_$:-32
perfect:26 perfecto:22 pero:-51 pero__las:-76 pero__que:21 pero_a:-78 pero_que:-19 pick:21 plan:23 please_$:-71
please_and:24 pm:38 por:51 por_favor:59 porque:25 possible:-24 possible_$:-23 prefer:29 prestado:28 primera:27
primero:35 problem:23 problema:22 put:34 put__down:23 put_me:31 que:92 que__toca:-19 que__van:29 que_hora:-19
que_me:23 que_si:-23 queda:-24 queda_$:-60 quedo:25 quien:-25 quiero:23 quit:-30 quit_$:-29 ring:23 run_me:20
sabado:-25 saldria:-19 same:-25 same_time:-18 saturday:-30 saturday_$:-33 second:67 second_$:25 see:22 see__then:32
see_you:32 segunda:31 segundo:28 segundo_$:23 should:26 should__plan:23 should_i:26 si_$:-80 si__bien:-18 si_pero:21
sirve_$:-19 slot:47 so:38 somebody:25 somebody__me:18 someone:24 sorry:-44 sorry_$:-43 still:46 suits:28 sunday:-18
take:58 take_$:21 take_it:20 take_the:27 tarde:-19 te:-30 te_digo:-19 temprano:-35 temprano_$:-38 tengo:25 th:-78
th_$:-41 that:18 that_day:-18 that_time:31 the:220 the__before:24 the__for:-26 the__if:19 the__one:76 the_am:23
the_day:-24 the_earlier:20 the_first:41 the_friday:35 the_later:25 the_pm:31 the_second:26 the_th:-76 them:32
then:-18 they:19 thing:21 this:-31 this_$:-28 this_one:20 those:-34 those_$:36 three_$:-19 thurs:26
thursday__work:-44 thursday_at:40 to:135 to__it:19 to__me:41 to_me:36 toca:-21 toca_$:-19 tomorrow:-35 tomorrow_$:-32
too:-152 too_$:28 too__for:-46 too_early:-118 too_late:-59 tres:20 tuesday__is:24 two:59 two_$:32 ultima:49 ultimo:27
un:55 uno:24 van:28 van_a:29 vemos:28 vemos_$:28 vez:21 vez_que:19 viernes:29 viernes_me:26 was:-18 we:-34
we__instead:-21 we_do:-26 wednesday:26 weds:24 week:-80 week_$:-57 were:-19 what:-61 what__your:19 what_about:-42
whatever:41 whichever:24 who:-39 who__this:-34 who_is:-36 why:18 will:51 will_it:24 with:61 with_me:25 wont:-28
wont_work:-26 work:-33 work_$:-65 work__me:-22 works:42 works_$:29 would:-18 y:29 y__digo:-19 y__me:18 y_me:33
y_no:18 y_te:-29 ya:-18 yes_but:18 yes_please:-41 you:59 you_$:67 you_do:-61 you_then:32 youre:19 zero:-22
"""
