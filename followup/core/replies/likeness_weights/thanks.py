"""What speaks for and against `thanks`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "thanks"
BIAS = -156
WEIGHTS = """\
#abra:29 #acia:76 #adec:126 #adez:41 #agra:176 #aken:-36 #alme:84 #alre:-29 #alud:162 #amab:39 #amil:31 #ando:-53
#anks:107 #ante:-25 #anyw:-84 #appr:43 #appy:99 #arda:-26 #arro:-26 #asen:34 #aski:58 #asta:47 #ated:35 #aten:-40
#atro:40 #avid:74 #avis:56 #avor:-41 #bajo:-26 #been:-28 #bend:68 #best:47 #bien:-46 #blem:39 #bles:193 #blig:36
#braz:34 #bsup:30 #buen:225 #cele:-37 #cent:25 #chee:47 #chis:58 #chri:71 #cias:81 #ciat:55 #cion:-28 #cita:-37
#comp:-36 #crew:44 #crib:-33 #cuan:-34 #dato:45 #days:36 #dece:135 #dezc:41 #dici:39 #each:32 #eads:41 #eady:-30
#ease:-41 #ecen:25 #ecia:39 #edes:43 #eeke:83 #eers:47 #eken:83 #elen:-29 #eliz:146 #elli:32 #ello:142 #eman:28
#emin:-26 #emoj:63 #enas:25 #enci:-34 #enga:47 #enta:-32 #ente:103 #erad:61 #erfe:28 #erry:71 #essi:93 #esta:-43
#esto:-70 #etti:36 #evok:-32 #exce:-28 #ezco:40 #fami:31 #favo:-41 #fect:25 #feli:160 #fies:37 #folk:40 #givi:38
#good:124 #grac:80 #grad:172 #grea:83 #gual:96 #guys:89 #habl:-29 #hace:-31 #hank:129 #happ:93 #hast:49 #have:67
#head:27 #heer:47 #hell:148 #help:-27 #here:-47 #hing:-102 #hola:146 #holi:50 #hone:-28 #hris:71 #humb:26 #iate:55
#icio:25 #idad:68 #iday:46 #idea:-40 #iged:37 #ight:71 #igua:95 #ilia:28 #illa:-26 #inde:-27 #indl:-39 #indo:57
#info:-54 #ings:78 #ingu:-26 #ione:39 #isar:46 #isim:66 #istm:71 #ivin:34 #jove:28 #keep:35 #kend:83 #king:91
#know:34 #ksem:63 #ksgi:32 #leas:-37 #lent:-25 #less:175 #lett:31 #lida:49 #lige:37 #lind:57 #llin:32 #lmen:84
#look:82 #lrea:-29 #ludo:141 #lueg:40 #mabl:39 #made:31 #many:39 #mbsu:30 #ment:39 #mess:-46 #mili:27 #moji:63
#more:-25 #move:-28 #much:77 #nada:-79 #navi:74 #ncio:-44 #ndic:36 #ndly:-39 #ndos:48 #ngun:-26 #nigh:83 #ning:-46
#nkse:63 #nksg:32 #noch:30 #noth:-125 #nter:45 #nywa:-84 #oble:31 #obli:36 #oche:30 #odos:78 #okin:87 #olid:50
#olks:40 #ones:31 #ooki:88 #open:-62 #orda:29 #orio:25 #orri:225 #othi:-117 #ould:-32 #oure:73 #over:-30 #pase:25
#patr:43 #peac:26 #perf:28 #phon:-27 #plea:-49 #ppre:27 #prec:30 #prob:42 #pued:-28 #pues:-28 #qued:-26 #quie:-55
#quit:-28 #raci:79 #rade:161 #rado:54 #razo:28 #rdat:26 #read:-38 #reat:86 #reci:47 #remi:-28 #remo:-27 #revo:-33
#rfec:28 #ries:248 #rist:71 #robl:42 #rock:111 #rong:-31 #room:-26 #rrie:233 #sale:33 #salu:162 #save:30 #scri:-37
#sema:28 #semo:62 #sgiv:32 #sima:66 #sing:80 #skin:58 #ssin:92 #sted:49 #stil:-37 #stma:71 #stoy:-54 #supe:35
#take:-38 #tard:-41 #tede:43 #tell:56 #tenc:-37 #teng:32 #tera:61 #text:-91 #than:123 #then:-65 #ther:-25 #thin:-131
#this:-32 #thro:-26 #thum:26 #till:-41 #ting:39 #tion:-31 #tmas:71 #todo:61 #tron:40 #ttin:52 #ualm:72 #udos:141
#uede:-31 #uedo:-26 #uego:34 #ught:26 #uier:-37 #umbs:26 #uper:35 #uste:60 #vend:-30 #very:26 #vida:74 #ving:26
#visa:38 #voke:-32 #week:96 #well:61 #were:-32 #with:-27 #worr:234 #wron:-31 #xcel:-28 #your:62 #yway:-84
%again_later%agree:36 %again_later%elsewhere:-25 %again_later%question:-41 %again_later%refuse:131
%again_later%season:-38 %again_later%shift_it:-42 %again_later%start_again:26 %again_later%thanks:129 %agree:38
%agree%away:63 %agree%busy:-35 %agree%car_part:-34 %agree%how_long:41 %agree%opening:91 %agree%refuse:-57
%agree%thanks:-153 %away%call_off:-25 %bad:-92 %bad%staff:-45 %bring:-126 %bring%refuse:-56 %bring%thanks:-36
%busy:-48 %call_off%on_way:-37 %call_off%refuse:-32 %call_off%thanks:-319 %car:-96 %car_part:-184
%car_part%question:-28 %car_part%refuse:-32 %car_part%thanks:-41 %do_it:-159 %do_it%refuse:-63 %do_it%staff:-26
%do_it%thanks:-74 %doubt:-51 %elsewhere%shift_it:-29 %fails:-85 %fails%leave_me:-25 %family:65 %family%refuse:64
%family%thanks:71 %gone_car:-135 %gone_car%thanks:-29 %how_long:-38 %how_long%opening:-37 %how_long%question:-31
%how_long%refuse:36 %how_long%thanks:91 %leave_me:-165 %machine:-43 %meaning%thanks:34 %message:-106
%message%refuse:37 %message%start_again:-40 %message%thanks:34 %money:-82 %odometer:-87 %on_way:-82 %opening:-37
%opening%question:-30 %opening%thanks:26 %pay_day:-28 %phone:-77 %phone%thanks:33 %place:-70 %question:-38
%question%refuse:58 %question%shift_it:-25 %question%thanks:202 %question%who:-25 %refuse:-100 %refuse%start_again:31
%refuse%wrong_one:63 %season:186 %shift_it:-78 %smoke_smell:-41 %staff:51 %staff%thanks:26 %start_again:-39
%start_again%thanks:41 %thanks:437 %thanks%wrong_one:50 %who:-40 @?:-72 @after_visit:-171 @car:-68 @confirm:-39
@day:-59 @later:-90 @nothing:215 @nothing_info:-62 @odometer:-38 @offers:-160 @reading:-48 @time:-40 @times:-167
@walk_in:-127 ^_all:-48 ^_appreciate:51 ^_are:-61 ^_asi:-29 ^_ayuda:-28 ^_bendiciones:59 ^_bless:25 ^_buen:131
^_buenas:25 ^_cheers:54 ^_do:-91 ^_el:-26 ^_estoy:-30 ^_everything:-33 ^_feliz:139 ^_good:181 ^_got:72 ^_gracias:143
^_happy:113 ^_hasta:42 ^_have:102 ^_hello:148 ^_help:-25 ^_hola:146 ^_how:-29 ^_i:-43 ^_id:-79 ^_igualmente:54
^_im:-160 ^_info:-63 ^_is:-37 ^_it:-29 ^_kindly:-31 ^_la:-27 ^_les:27 ^_me:-35 ^_might:-30 ^_mil:47 ^_much:68
^_muchas:43 ^_muy:60 ^_nice:-116 ^_no:83 ^_ok:63 ^_opt:-35 ^_que:97 ^_revoke:-32 ^_sale:37 ^_se:51 ^_si:-101
^_sounds:-35 ^_tell:30 ^_thank:145 ^_thanks:112 ^_thanksemoji:63 ^_that:44 ^_thumbsup:30 ^_un:33 ^_were:-42
^_what:-41 ^_ya:-41 ^_yes:-29 ^_you:174 ^_your:46 ^_youre:54 a:77 a__day:50 a__one:61 a__weekend:97 a_good:80
a_nice:36 agradece:112 agradece_$:58 agradezco:41 ahi:-26 all:93 all_$:97 all__you:30 already:-29 and:-68
and__you:-40 and_thank:-37 anyway:-84 anyway_$:-84 appreciated:47 are:-58 are_the:25 are_you:-89 as:70 as_well:68
asi:-40 ask:26 ask_$:30 asking:58 asking_$:30 atencion:-37 avisar:33 avisar_$:44 aviso_$:25 be:-61 been:-28
bendiciones:45 bendiciones_$:34 best:47 best_$:61 bien:-47 bien_gracias:-61 bless:63 bless_you:33 bonito_dia:29
buen:215 buen_dia:126 buenas:25 but:-108 but_ill:-30 but_no:-67 by:-34 can:-31 cheers:47 cheers_$:26 christmas:71
cita:-30 crew:44 day_$:41 de_que:33 de_semana:52 dia:105 dia_$:122 did:-55 do:-196 do_$:-47 do__have:-39 do_you:-102
el:-60 el_aviso:26 en:-70 en_el:25 enterado:64 es:-66 esta:-31 estoy:-54 estoy_bien:-43 everything_$:34 excelente:-28
familia:28 familia_$:28 favor:-37 favor_$:-33 feliz:146 feliz_navidad:69 fiestas:25 fin:141 fin__semana:59 fin_de:58
folks:40 for:93 for__me:91 for_a:-27 for_asking:58 for_nothing:-115 for_now:-29 for_the:28 get:-25 good:126
good_to:31 got:66 got_it:89 gracias:81 gracias_$:-35 gracias__avisar:33 gracias__el:66 gracias__nada:-83
gracias__todo:32 gracias_por:67 great:75 great_$:65 guy:-25 guy_$:-28 guys:89 guys_$:62 guys_are:31 happy:92 hasta:49
have:67 have_a:172 hay:28 hay__que:41 heads:45 heads_up:46 hello:148 help:-27 here:-30 here_$:-27 hola:146
holidays:53 how:-46 how__of:29 how_much:-49 i:-101 id:-84 idea:-40 idea_$:-39 igual:25 igualmente:72 ill:-51
ill__it:-31 ill__you:-26 ill_take:-30 im:-189 im__for:-25 im_good:-97 info:-52 info_$:-52 is:-40 is__of:54 it:36
it_$:78 it__been:-26 it_to:-28 job:-28 joven:28 joven_$:52 keep:37 kind:49 kind__you:33 kind_of:28 kindly:-39 know:39
la:-84 la_atencion:-27 las:-33 last_week:32 les:56 let:-28 letting:31 lo:-52 lol_$:-29 luego:40 made:31 many:39
mas:-45 me:-99 me_in:32 messed:-27 mi:-51 might:-30 might__well:-30 might_as:-30 mil:29 mil_gracias:35 mind:37
mind_$:35 much_obliged:37 muchas:25 muchas__por:33 muchas_gracias:25 muy_amable:30 my:-82 nada:-79 nada_$:-74
navidad:74 navidad_$:57 nice__you:62 nice_of:62 night:92 night_$:81 no:-64 no_$:-66 no__de:40 no__you:-54
no_gracias:-117 no_hay:55 no_soy:31 no_thank:-54 no_thanks:-110 no_worries:242 not:-63 nothing:-117 nothing_$:-115
now:-31 obliged:37 obliged_$:34 of:86 of_you:158 ok:56 ok_$:-32 ok__a:32 ok__you:-73 ok_gracias:29 on:-49 one:52
one_$:57 open:-57 open_on:-28 opt:-36 opt_out:-28 out:46 out_$:73 patron:43 pero:-27 pero_no:-35 please:-49
please__you:-28 please_and:-27 por_avisar:33 por_el:64 por_favor:-34 por_nada:-83 por_todo:32 problema:25 que:47
que_$:26 que__bonito:25 que_tenga:42 reminder_$:28 revoke:-32 revoke_$:-32 rock:111 sale:34 saludos:141
se_agradece:58 se_le:36 see:43 see__then:-57 see_you:-47 semana:35 semana_$:54 set:-38 set_for:-25 si:-132
si_gracias:-80 so:47 so_much:28 soy:29 still:-37 super:36 take_it:-26 taken:-36 taken__of:-36 taken_care:-35 te:32
tell_the:30 telling:36 telling_me:36 tenga:40 tenga__dia:42 text:-61 thank__for:45 thank_you:-30 thanks_$:-80
thanks__no:-54 thanks__nothing:-115 thanks__the:70 thanks_a:27 thanks_but:-92 thanks_for:160 thanksemoji:63
thanksemoji_$:63 thanksgiving:32 thanksgiving_$:32 that_$:-63 that__be:-36 that__so:34 that_in:42 that_is:97
that_would:-36 the:40 the__thanks:26 the__up:49 the_best:78 the_heads:49 then:-65 then_$:-47 this:-32 thumbsup:30
thumbsup_$:30 to:49 to__all:104 to_know:37 to_the:32 to_you:100 todo_$:38 todos:57 too:156 too_$:198 too_much:-32
try:-110 una:-27 up_$:39 ustedes:43 ustedes_$:40 very:26 weekend:83 weekend_$:79 well:62 well_$:70 were:-31
will_do:-60 worries:242 would_be:-27 would_it:32 wrong:-31 y:-49 ya:45 ya_$:106 yeah_$:37 yes:-73 yes_$:-50 yes_it:26
you:138 you_$:-66 you__are:26 you__the:-29 you_all:116 you_folks:42 you_for:56 you_guys:86 you_have:-55 you_open:-51
you_text:-29 you_then:-57 your_the:54 youre:62
"""
