"""What speaks for and against `thanks`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "thanks"
BIAS = -167
WEIGHTS = """\
#abaj:-26 #able:34 #abra:34 #abre:-27 #acia:86 #acio:-25 #adec:138 #adez:48 #agra:196 #aken:-40 #alme:96 #alre:-33
#alud:181 #amab:39 #amil:35 #ando:-55 #anks:88 #ante:-27 #anyw:-98 #appr:38 #appy:105 #arda:-28 #arro:-28 #asdf:-29
#asen:36 #aski:80 #asta:58 #ated:34 #aten:-44 #ator:27 #atro:42 #avid:79 #avis:59 #avor:-45 #awes:28 #bajo:-27
#been:-33 #bend:72 #best:54 #bido:26 #bien:-46 #blem:45 #bles:221 #blig:41 #book:-25 #braz:39 #bren:-26 #bsup:38
#buen:251 #cele:-44 #cent:30 #chee:56 #chis:65 #chri:77 #cias:90 #ciat:50 #cion:-33 #cita:-40 #comp:-41 #crew:51
#crib:-37 #cuan:-35 #dato:51 #days:35 #dece:148 #dezc:48 #dici:42 #each:36 #eads:46 #eady:-35 #ease:-43 #ecen:30
#ecia:32 #edes:50 #eeke:90 #eers:56 #eken:90 #elen:-36 #eliz:156 #elli:34 #ello:165 #eman:29 #emin:-34 #emoj:59
#enas:27 #enci:-38 #enga:47 #enta:-35 #ente:117 #erad:71 #eres:-27 #erfe:30 #erry:77 #esom:28 #essi:105 #esta:-47
#esto:-76 #etti:37 #evok:-36 #exce:-35 #ezco:47 #fami:35 #favo:-45 #fect:27 #feli:171 #fies:42 #folk:47 #givi:40
#good:122 #grac:90 #grad:192 #grea:88 #gual:109 #guno:-27 #guys:100 #habl:-31 #hace:-33 #hank:133 #happ:99 #hast:60
#have:71 #head:30 #heer:56 #hell:171 #help:-31 #here:-51 #hing:-117 #hola:165 #holi:56 #hone:-31 #hris:77 #humb:33
#iate:50 #idad:71 #iday:50 #idea:-48 #iest:27 #iged:42 #ight:79 #igua:108 #ilia:31 #illa:-27 #inde:-35 #indl:-45
#indo:66 #info:-66 #ings:88 #ingu:-29 #ione:43 #isar:50 #isim:74 #istm:77 #ivin:35 #jove:28 #keep:40 #kend:90
#king:114 #know:33 #ksem:59 #ksgi:34 #lant:-25 #leas:-38 #lema:27 #lent:-30 #less:193 #lett:31 #lice:25 #lida:54
#lige:42 #lind:67 #ling:25 #llin:34 #lmen:96 #look:85 #love:25 #lrea:-33 #ludo:157 #lueg:48 #mabl:39 #made:35
#many:41 #mbsu:38 #ment:46 #mess:-53 #migh:-25 #mili:30 #modo:28 #moji:59 #more:-26 #move:-34 #much:90 #nada:-91
#navi:79 #ncio:-48 #nder:-26 #ndic:39 #ndly:-45 #ndos:56 #ngun:-29 #nigh:91 #ning:-51 #nkse:59 #nksg:34 #noch:33
#noth:-142 #nter:51 #nywa:-98 #oble:35 #obli:41 #oche:33 #odos:100 #oing:-26 #okin:92 #olid:56 #olks:47 #ones:33
#ooki:93 #open:-69 #orda:34 #orio:28 #orri:215 #othi:-134 #ould:-33 #oure:87 #ovel:26 #over:-37 #pase:27 #patr:45
#peac:29 #perf:30 #phon:-31 #plea:-52 #prob:48 #pued:-30 #pues:-31 #qued:-30 #quie:-59 #quit:-30 #raci:88 #rade:179
#rado:63 #razo:33 #rdat:30 #read:-44 #reat:94 #reci:40 #remi:-36 #remo:-33 #revo:-37 #rfec:30 #ries:241 #rist:77
#robl:48 #rock:127 #rong:-34 #room:-29 #rrie:225 #sale:39 #salu:181 #save:35 #scri:-42 #sema:29 #semo:59 #sgiv:34
#sima:74 #sing:89 #skin:79 #some:27 #ssin:103 #stas:27 #sted:55 #stil:-44 #stma:77 #stoy:-59 #supe:38 #take:-40
#tard:-44 #tede:50 #tell:62 #tenc:-41 #tend:-26 #teng:30 #tera:71 #text:-101 #tful:25 #than:127 #that:29 #then:-74
#ther:-30 #thin:-149 #this:-36 #thro:-28 #thum:33 #till:-48 #ting:37 #tion:-32 #tmas:77 #todo:77 #tori:28 #tron:42
#ttin:52 #ualm:82 #uant:-25 #udos:157 #uede:-34 #uedo:-31 #uego:42 #ught:29 #uier:-40 #umbs:33 #uper:38 #uste:70
#vely:26 #vend:-34 #very:32 #vida:79 #ving:25 #visa:40 #voke:-36 #week:107 #well:71 #were:-33 #weso:28 #what:26
#with:-29 #wont:28 #worr:226 #wron:-34 #xcel:-35 #yeah:26 #your:76 #yway:-98 %again_later%agree:41
%again_later%elsewhere:-26 %again_later%message:-26 %again_later%question:-42 %again_later%refuse:134
%again_later%season:-40 %again_later%shift_it:-45 %again_later%start_again:28 %again_later%thanks:132 %agree:31
%agree%away:66 %agree%busy:-37 %agree%car_part:-35 %agree%how_long:45 %agree%on_way:-31 %agree%opening:97
%agree%refuse:-43 %agree%thanks:-156 %away%call_off:-29 %bad:-102 %bad%staff:-51 %bring:-146 %bring%refuse:-68
%bring%thanks:-45 %busy:-52 %call_off%gone_car:-25 %call_off%on_way:-43 %call_off%refuse:-55 %call_off%thanks:-353
%call_off%wrong_one:27 %car:-103 %car%thanks:25 %car_part:-201 %car_part%question:-32 %car_part%refuse:-33
%car_part%thanks:-45 %do_it:-150 %do_it%family:38 %do_it%refuse:-45 %do_it%staff:-30 %do_it%thanks:-57 %doubt:-56
%doubt%thanks:-26 %elsewhere%shift_it:-30 %fails:-84 %fails%leave_me:-27 %family:81 %family%refuse:86
%family%thanks:93 %gone_car:-146 %gone_car%thanks:-31 %how_long:-37 %how_long%opening:-39 %how_long%question:-31
%how_long%refuse:40 %how_long%thanks:102 %leak:-28 %leave_me:-197 %leave_me%wrong_one:27 %machine:-48
%meaning%thanks:39 %message:-122 %message%refuse:37 %message%start_again:-43 %message%thanks:29 %money:-86
%money%refuse:28 %money%thanks:30 %noise%thanks:26 %odometer:-90 %on_way:-94 %on_way%refuse:-26 %opening:-50
%opening%question:-31 %opening%thanks:30 %pay_day:-31 %pay_day%thanks:25 %phone:-87 %phone%thanks:37 %place:-76
%place%thanks:26 %question%refuse:67 %question%shift_it:-26 %question%thanks:231 %question%who:-25 %refuse:-148
%refuse%staff:25 %refuse%start_again:32 %refuse%thanks:31 %refuse%who:28 %refuse%wrong_one:84 %season:202
%shift_it:-71 %shift_it%thanks:32 %smoke_smell:-44 %staff:61 %staff%thanks:32 %start_again:-42 %start_again%thanks:44
%thanks:476 %thanks%who:27 %thanks%wrong_one:65 %who:-40 @?:-75 @after_visit:-169 @car:-74 @confirm:-42 @day:-67
@later:-97 @nothing:227 @nothing_info:-76 @nothing_opt_out:-33 @nothing_thanks:26 @odometer:-39 @offers:-185
@reading:-78 @time:-47 @times:-147 @walk_in:-132 ^_all:-55 ^_appreciate:52 ^_are:-65 ^_asi:-32 ^_ayuda:-33
^_bendiciones:65 ^_bless:28 ^_buen:145 ^_buenas:28 ^_cheers:65 ^_do:-96 ^_el:-29 ^_estoy:-32 ^_everything:-35
^_excelente:-27 ^_feliz:148 ^_good:191 ^_got:84 ^_gracias:135 ^_happy:122 ^_hasta:50 ^_have:109 ^_hello:172
^_help:-29 ^_hola:165 ^_how:-30 ^_i:-46 ^_id:-92 ^_igualmente:63 ^_im:-177 ^_info:-77 ^_is:-39 ^_it:-32 ^_kindly:-35
^_la:-27 ^_les:32 ^_me:-38 ^_might:-35 ^_mil:53 ^_much:74 ^_muchas:50 ^_muy:65 ^_nice:-133 ^_ninguno:-26 ^_no:66
^_ok:57 ^_opt:-42 ^_que:108 ^_revoke:-36 ^_sale:43 ^_se:58 ^_si:-108 ^_sounds:-40 ^_tell:35 ^_thank:170 ^_thanks:98
^_thanksemoji:59 ^_that:51 ^_thumbsup:38 ^_un:39 ^_were:-45 ^_what:-43 ^_wont:31 ^_ya:-46 ^_yes:-31 ^_you:196
^_your:49 ^_youre:65 a:89 a__day:57 a__en:25 a__one:65 a__weekend:105 a_blessed:28 a_good:84 a_nice:39 abren:-26
agradece:122 agradece_$:65 agradezco:48 ahi:-29 all:106 all_$:115 all__you:34 all_the:25 already:-33 and:-72
and__you:-42 and_thank:-39 anyway:-98 anyway_$:-98 appreciate:-30 appreciate_the:25 appreciated:48 are:-57 are_the:30
are_you:-95 as:81 as_well:78 asi:-44 ask:29 ask_$:35 asking:80 asking_$:47 atencion:-41 avisar:37 avisar_$:50
aviso_$:27 awesome:28 ayuda_$:-26 back:27 be:-58 been:-33 bendiciones:50 bendiciones_$:36 best:54 best_$:71 bien:-48
bien_gracias:-67 bless:74 bless_you:38 blessed:28 bonito_dia:28 buen:239 buen_dia:142 buenas:28 but:-114 but__is:25
but_ill:-35 but_im:-25 but_no:-84 but_that:29 by:-42 can:-33 cheers:56 christmas:77 cita:-32 crew:51 day:28 day_$:47
de__modos:30 de_que:39 de_semana:56 de_todos:30 dear_$:27 del:-26 dia:119 dia_$:139 did:-60 dios:-29 do:-217 do_$:-52
do__have:-41 do_you:-108 el:-54 el_aviso:28 el_dia:-25 el_taller:26 en:-75 en__taller:25 en_el:30 enterado:74 es:-71
esta:-33 estoy:-59 estoy_bien:-46 everything_$:38 excelente:-35 familia:31 familia_$:31 favor:-40 favor_$:-37
feliz:156 feliz_navidad:73 fiestas:28 fin:150 fin__semana:63 fin_de:62 fixed_the:25 folks:47 for:114 for__me:96
for_a:-31 for_asking:80 for_nothing:-131 for_now:-31 for_the:25 get:-28 go:-29 good:124 good_to:33 got:75 got_it:104
gracias:91 gracias_$:-29 gracias__avisar:37 gracias__el:73 gracias__nada:-96 gracias__todo:34 gracias__todos:32
gracias_de:31 gracias_joven:37 gracias_pero:-30 gracias_por:67 great:80 great_$:71 great_job:-25 guy:-29 guy_$:-33
guys:101 guys_$:69 guys_are:36 happy:97 hasta:60 have:71 have_a:188 have_the:-25 hay:33 hay__que:47 heads:51
heads_up:52 hello:172 help:-31 help_$:-28 here:-33 here_$:-30 hola:165 holidays:58 how:-51 how__of:34 how_much:-58
i:-111 i_have:-27 id:-96 idea:-48 idea_$:-47 igual:27 igualmente:82 ill:-54 ill__it:-35 ill__you:-27 ill_take:-34
im:-210 im__for:-26 im_good:-110 in:35 info:-64 info_$:-63 is:-36 is__of:64 is_good:-26 it:66 it_$:76 it__been:-29
it__my:-27 it_thank:28 it_to:-33 job:-30 joven:28 joven_$:57 just__what:25 keep:42 kind:57 kind__you:38 kind_of:32
kindly:-45 know:38 la:-87 la_atencion:-29 las:-38 last_week:37 les:66 let:-30 letting:31 lo:-52 lo__gracias:-29
lo_agradezco:27 lol_$:-33 lookin:85 lovely:26 luego:48 made:35 make_it:25 many:41 mas:-47 me:-90 me_in:36 messed:-29
mi:-51 might:-35 might__well:-34 might_as:-34 mil:33 mil_gracias:39 mind:42 mind_$:39 modos:30 modos_$:32
much_obliged:42 muchas:28 muchas__por:39 muchas_gracias:28 muy_amable:29 my:-79 nada:-90 nada_$:-85 navidad:79
navidad_$:61 nice__you:72 nice_of:72 night:100 night_$:87 ninguno:-27 no:-107 no_$:-74 no__de:45 no__on:28
no__you:-65 no_gracias:-127 no_hay:63 no_problem:25 no_soy:37 no_thank:-64 no_thanks:-138 no_worries:234 not:-68
nothing:-134 nothing_$:-131 now:-31 obliged:42 obliged_$:39 of:100 of_you:183 ok:49 ok_$:-46 ok__a:34 ok__you:-86
ok_gracias:35 on:-54 one:57 one_$:61 open:-64 open_on:-34 opt:-42 opt_out:-34 or:-25 out:43 out_$:72 patron:45
pero:-37 pero_no:-41 phone:-25 please:-52 please__thank:-45 please__you:-30 please_and:-25 por_avisar:37 por_el:70
por_favor:-37 por_nada:-96 por_todo:34 problema:28 que:55 que_$:28 que__bonito:25 que_tenga:42 quedo:-29
reminder_$:28 revoke:-36 revoke_$:-36 rock:127 sale:41 saludos:157 se_agradece:64 se_le:38 see:48 see__then:-65
see_you:-55 semana:37 semana_$:58 set:-40 set_for:-26 si:-141 si_gracias:-85 so:52 so_much:31 son:39 soy:34 still:-44
super:39 ta:26 take_it:-29 taken:-40 taken__of:-40 taken_care:-40 te:38 tell_the:35 telling:38 telling_me:38 tenga:40
tenga__dia:42 text:-67 thank:31 thank__for:64 thanks_$:-79 thanks__no:-70 thanks__nothing:-131 thanks__the:74
thanks_a:28 thanks_but:-112 thanks_for:163 thanksemoji:59 thanksemoji_$:59 thanksgiving:34 thanksgiving_$:34 that:30
that_$:-75 that__be:-40 that__so:38 that_in:48 that_is:113 that_would:-39 the:57 the__thanks:31 the__up:55
the_best:90 the_heads:55 then:-74 then_$:-55 this:-36 thumbsup:38 thumbsup_$:38 to:65 to__all:113 to__guy:-27
to_know:40 to_my:-27 to_the:38 to_you:109 todo_$:41 todos:70 todos_modos:30 too:177 too_$:221 too_much:-33 try:-126
un:-27 una:-28 up_$:44 ustedes:50 ustedes_$:46 very:32 weekend:90 weekend_$:86 well:72 well_$:82 were:-32 what:28
will_do:-65 wont:28 worries:233 would_be:-30 would_it:38 wrong:-34 y:-52 ya:52 ya_$:119 yeah:26 yeah_$:41 yes:-82
yes_$:-58 yes_it:32 you:188 you_$:-77 you__are:30 you__much:25 you__the:-32 you_all:136 you_folks:48 you_for:77
you_guys:96 you_have:-58 you_open:-55 you_text:-30 you_then:-66 your_the:58 youre:74
"""
