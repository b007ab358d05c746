"""What speaks for and against `thanks`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "thanks"
BIAS = -134
WEIGHTS = """\
#able:24 #acia:70 #adec:94 #adez:39 #agra:140 #aken:-19 #alme:67 #alre:-21 #alud:117 #amab:34 #amil:19 #ando:-40
#anks:69 #ante:-19 #anyw:-62 #appr:39 #appy:73 #arro:-24 #asen:28 #asta:39 #ated:24 #aten:-24 #atio:-19 #ator:18
#atro:27 #avid:56 #avis:42 #avor:-28 #awes:27 #bajo:-18 #bend:49 #best:36 #bido:19 #bien:-30 #blem:33 #bles:145
#blig:29 #bscr:-19 #bsup:25 #buen:167 #carr:-24 #cele:-28 #chee:40 #chis:41 #chri:49 #cias:72 #ciat:49 #cion:-19
#cita:-31 #comp:-20 #cord:21 #crew:18 #crib:-34 #cuan:-19 #dato:37 #days:31 #dece:87 #dezc:39 #dici:31 #done:-18
#each:22 #eads:35 #eady:-22 #ease:-67 #ecia:37 #edes:31 #eeke:59 #eers:40 #eken:59 #elen:-21 #eliz:103 #elli:20
#ello:104 #eman:22 #emoj:43 #enci:-23 #enga:27 #ente:77 #erad:39 #erfe:19 #erry:46 #esom:27 #essi:67 #esta:-42
#esto:-47 #etti:31 #evok:-29 #exce:-21 #ezco:38 #fami:19 #favo:-28 #fect:18 #feli:109 #fies:25 #folk:22 #from:-18
#givi:35 #goin:-20 #good:96 #grac:72 #grad:137 #grea:51 #gual:78 #guys:67 #habl:-24 #hace:-21 #hank:92 #happ:70
#hast:40 #have:57 #head:28 #heer:40 #hell:108 #help:-22 #here:-48 #hing:-79 #hola:101 #holi:39 #hone:-19 #houg:-22
#hris:49 #humb:23 #iate:49 #icio:21 #idad:50 #iday:30 #idea:-29 #iged:29 #ight:41 #igua:77 #ilia:19 #illa:-23
#indl:-25 #indo:25 #info:-42 #ings:61 #ione:32 #isar:40 #isim:48 #istm:49 #ivin:33 #jove:18 #keep:22 #kend:59
#know:35 #ksem:43 #ksgi:30 #last:-24 #leas:-65 #lema:19 #less:130 #lett:26 #lida:38 #lige:29 #like:-18 #lind:27
#llin:20 #lmen:67 #look:59 #lrea:-21 #ludo:99 #lueg:28 #mabl:34 #made:28 #mand:-18 #many:30 #mber:-21 #mbsu:25
#ment:37 #mess:-31 #mili:18 #moji:43 #much:83 #nada:-63 #navi:56 #ncio:-30 #nder:-26 #ndic:29 #ndly:-25 #nigh:54
#ning:-30 #nkse:43 #nksg:30 #noch:21 #noth:-85 #nter:29 #nton:18 #nywa:-62 #oble:25 #obli:29 #oche:21 #odos:43
#oing:-23 #okin:62 #olid:39 #olks:22 #ones:27 #ooki:62 #open:-35 #orda:31 #orio:19 #orri:149 #othi:-77 #ough:-21
#ould:-35 #oure:37 #over:-23 #pase:22 #patr:29 #peac:22 #perf:19 #phon:-19 #plea:-63 #ppre:24 #prec:29 #prob:35
#pued:-20 #quie:-36 #quit:-20 #raci:71 #rade:130 #rado:34 #rdat:20 #read:-26 #reat:55 #reci:44 #revo:-29 #rfec:19
#ribe:-23 #ries:156 #ring:-28 #rist:49 #robl:35 #rock:72 #rong:-20 #rrie:149 #sale:22 #salu:117 #save:21 #scri:-38
#sema:22 #semo:42 #sgiv:30 #sima:48 #sing:57 #some:21 #ssin:67 #star:-25 #sted:39 #stil:-19 #stma:49 #stop:-23
#stoy:-39 #subs:-19 #supe:29 #take:-35 #tard:-28 #tede:31 #tell:27 #tenc:-25 #teng:21 #tera:40 #text:-61 #than:87
#then:-39 #ther:-21 #thin:-94 #this:-31 #thou:-21 #thum:23 #till:-22 #ting:39 #tion:-25 #tire:-21 #tmas:49 #todo:40
#tori:19 #tron:27 #ttin:44 #ualm:56 #ubsc:-19 #udos:99 #uede:-24 #uego:23 #uier:-24 #umbs:23 #unch:18 #uper:29
#uste:47 #vend:-21 #very:24 #vida:55 #ving:29 #visa:33 #voke:-29 #week:54 #well:44 #were:-20 #weso:27 #what:-21
#with:-20 #worr:157 #woul:-29 #wron:-20 #xcel:-21 #yeah:23 #your:51 #yway:-62 %again_later%agree:22
%again_later%bring:-19 %again_later%question:-19 %again_later%refuse:97 %again_later%season:-23
%again_later%shift_it:-31 %again_later%thanks:96 %agree%away:40 %agree%busy:-22 %agree%car_part:-22
%agree%how_long:27 %agree%message:-19 %agree%opening:64 %agree%refuse:-48 %agree%thanks:-119 %away%leave_me:-24
%away%refuse:-20 %away%thanks:-23 %bad:-73 %bad%staff:-30 %bad%thanks:-18 %bring:-118 %bring%call_off:-28
%bring%refuse:-53 %bring%thanks:-47 %busy:-46 %busy%thanks:-22 %call_off:-21 %call_off%on_way:-23
%call_off%refuse:-69 %call_off%thanks:-265 %car:-85 %car%gone_car:-20 %car_part:-138 %car_part%question:-22
%car_part%refuse:-33 %car_part%thanks:-34 %do_it:-128 %do_it%gone_car:-21 %do_it%refuse:-47 %do_it%thanks:-76
%doubt:-40 %doubt%thanks:-20 %elsewhere:-24 %fails:-85 %fails%leave_me:-19 %fails%refuse:-23 %family:62
%family%refuse:31 %family%thanks:40 %gone_car:-97 %gone_car%thanks:-23 %how_long:-31 %how_long%opening:-29
%how_long%question:-21 %how_long%refuse:30 %how_long%thanks:59 %leave_me:-137 %machine:-32 %meaning:-18 %message:-80
%message%refuse:20 %message%start_again:-30 %message%thanks:20 %money:-65 %money%question:-26 %noise:-30
%odometer:-71 %on_way:-71 %on_way%refuse:-24 %opening%question:-22 %opening%thanks:23 %pay_day:-40 %phone:-51
%phone%thanks:21 %place:-65 %question:-45 %question%refuse:26 %question%thanks:116 %question%who:-23 %refuse:-135
%refuse%start_again:20 %refuse%thanks:29 %refuse%wrong_one:24 %season:143 %shift_it:-67 %smoke_smell:-26 %staff:51
%staff%thanks:38 %start_again:-34 %start_again%thanks:25 %thanks:383 %thanks%wrong_one:24 %who:-33 %wrong_one:-25
@?:-67 @after_visit:-142 @car:-43 @confirm:-70 @confirm_stop:-22 @day:-40 @later:-45 @nothing:219 @nothing_info:-48
@nothing_thanks:18 @odometer:-22 @offers:-125 @reading:-49 @time:-47 @times:-179 @walk_in:-127 ^_$:-21 ^_all:-29
^_appreciate:43 ^_are:-41 ^_asi:-22 ^_ayuda:-26 ^_bendiciones:47 ^_bless:25 ^_buen:97 ^_buenas:18 ^_do:-59 ^_el:-19
^_estoy:-22 ^_everything:-21 ^_feliz:100 ^_good:124 ^_got:55 ^_gracias:103 ^_great:18 ^_hasta:29 ^_have:73
^_hello:108 ^_help:-23 ^_hola:101 ^_how:-21 ^_i:-39 ^_id:-49 ^_im:-93 ^_info:-49 ^_is:-21 ^_it:-33 ^_la:-18 ^_les:24
^_me:-26 ^_might:-22 ^_mil:33 ^_much:44 ^_muchas:34 ^_muy:49 ^_no:30 ^_not:-24 ^_ok:52 ^_opt:-30 ^_please:-22
^_que:73 ^_revoke:-29 ^_sale:25 ^_se:49 ^_si:-67 ^_sounds:-21 ^_thank:137 ^_thanks:154 ^_thanksemoji:43 ^_that:34
^_thumbsup:25 ^_were:-30 ^_what:-31 ^_ya:-27 ^_yes:-27 ^_you:142 ^_your:36 ^_youre:37 a:60 a__day:39 a__one:41
a__weekend:65 a_blessed:21 a_good:51 agradece:81 agradece_$:42 agradezco:39 ahi:-18 all:50 all_$:73 already:-21
amable:22 an:-18 and:-58 and__you:-25 and_thank:-21 anyway:-62 anyway_$:-62 appreciated:32 are:-59 are_you:-63 as:58
as_well:48 asi:-31 at:-32 atencion:-25 avisar:31 avisar_$:33 awesome:27 ayuda_$:-20 be:-39 bendiciones:37
bendiciones_$:26 best:36 best_$:42 bien:-32 bien_gracias:-46 bless:44 bless_you:24 blessed:21 bonito_dia:19 buen:162
buen_dia:99 buenas:18 but:-107 but_ill:-18 but_no:-42 by:-23 can:-27 car:-18 care_of:-19 carro:-21 cheers:40
christmas:49 cita:-25 crew:18 day:26 day_$:34 de_que:31 de_semana:33 dia:89 dia_$:94 did:-37 do:-134 do_$:-29
do__have:-26 do_you:-69 el:-44 en:-57 es:-42 esta:-22 estoy:-39 estoy_bien:-31 everything_$:28 excelente:-21
familia:19 favor:-24 favor_$:-22 feliz:103 fin:94 fin__semana:38 fin_de:38 folks:22 for:27 for__me:64 for_nothing:-76
for_the:29 from:-18 god:21 going:-20 good:97 good_to:26 got:45 got_it:62 gracias:73 gracias__avisar:31 gracias__el:47
gracias__nada:-67 gracias__todo:26 gracias_por:50 great:55 great_$:43 guys:67 guys_$:48 happy:73 hasta:40 have:57
have_a:126 hay:38 hay__que:34 heads:38 heads_up:38 hello:108 help:-22 help_$:-22 here:-20 here_$:-19 hola:101
holidays:41 how:-31 how_much:-29 i:-82 id:-52 idea:-29 idea_$:-28 igual:22 igualmente:56 ill:-46 ill__it:-19
ill_take:-18 im:-107 im_good:-60 in:-20 info:-40 info_$:-40 is:-69 it_$:66 it_is:-26 joven:18 joven_$:35 keep:23
kind:25 kindly:-25 know:39 know_$:19 la:-64 las:-25 last:-22 les:51 letting:26 like:-18 lo:-27 lo_agradezco:21
luego:28 made:28 many:30 mas:-32 me:-121 me_in:18 messed:-18 mi:-45 might:-22 mil:27 mil_gracias:28 mind:23 mind_$:28
modos_$:18 much:30 much_obliged:29 muchas:19 muchas__por:25 muchas_gracias:19 muy:22 muy_amable:26 my:-76 nada:-62
nada_$:-58 navidad:56 navidad_$:40 night:61 night_$:59 no:-71 no_$:-42 no__de:34 no__you:-34 no_gracias:-88 no_hay:46
no_problem:18 no_soy:28 no_thank:-34 no_thanks:-82 no_worries:157 not:-48 nothing:-77 nothing_$:-76 obliged:29 of:28
of_you:79 ok:46 ok_$:-31 ok__you:-42 on:-57 on_the:-21 one:47 one_$:49 open:-32 opt:-30 opt_out:-24 out:34 out_$:44
patron:29 pero_no:-27 please:-64 please_and:-26 por_avisar:31 por_el:46 por_favor:-23 por_nada:-67 por_todo:26
problema:21 que:58 que_$:24 que_tenga:27 reminder_$:23 revoke:-29 revoke_$:-28 rock:72 sale:23 saludos:99 se:19
se_agradece:40 se_le:23 see:29 see__then:-34 see_you:-33 semana:26 semana_$:36 si:-87 si_gracias:-53 so:45 so_much:22
son:23 soy:26 still:-19 super:30 taken:-19 taken__of:-19 taken_care:-19 te:22 tenga:26 tenga__dia:27 text:-37
thanks_$:-38 thanks__no:-35 thanks__nothing:-76 thanks__the:34 thanks_a:19 thanks_but:-54 thanks_for:82
thanksemoji:43 thanksemoji_$:43 thanksgiving:30 thanksgiving_$:30 that_$:-34 that__be:-20 that__so:34 that_in:28
that_is:43 that_would:-20 the__up:40 the_best:50 the_heads:40 then:-39 then_$:-29 this:-31 though:-26 though_$:-25
thumbsup:25 thumbsup_$:25 time:-26 to:23 to__all:76 to_know:28 to_the:18 to_you:74 todo_$:30 todos:26 too:112
too_$:137 too_much:-21 try:-69 un:-28 una:-20 up_$:32 ustedes:31 ustedes_$:29 we:-28 weekend:59 weekend_$:56 well:44
well_$:50 were:-19 what:-20 will_do:-38 worries:157 would:-29 would_be:-22 wrong:-20 y:-34 ya:31 ya_$:72 yeah:23
yeah_$:30 yes:-62 yes_$:-33 you:113 you__much:18 you__the:-24 you_all:88 you_folks:23 you_guys:64 you_have:-32
you_open:-35 you_text:-21 you_then:-34 youre:37
"""
