"""What speaks for and against `thanks`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "thanks"
BIAS = -154
WEIGHTS = """\
#abaj:-24 #abra:28 #abre:-23 #acia:72 #adec:122 #adez:22 #agra:153 #aken:-36 #alme:76 #alre:-27 #alud:163 #amab:31
#amil:32 #amos:-22 #ando:-52 #anks:110 #ante:-24 #anyw:-84 #appr:33 #appy:101 #arda:-24 #arro:-24 #asdf:-23 #asen:33
#aski:58 #asta:47 #ated:31 #aten:-41 #ator:24 #atro:40 #avid:71 #avis:51 #avor:-40 #awes:23 #bajo:-26 #been:-29
#bend:62 #best:46 #bido:24 #bien:-39 #blem:37 #bles:174 #blig:34 #braz:33 #bren:-23 #bsup:25 #buen:205 #cele:-37
#cent:25 #chee:47 #chis:58 #chri:71 #cias:76 #ciat:45 #cion:-29 #cita:-36 #comp:-36 #crew:44 #crib:-33 #cuan:-32
#dato:44 #days:39 #dece:131 #dezc:22 #dici:37 #each:32 #eads:37 #eady:-28 #ease:-33 #ecen:25 #ecia:31 #edes:41
#eeke:79 #eers:46 #eken:79 #elen:-28 #eliz:142 #elli:33 #ello:141 #eman:25 #emin:-25 #emoj:64 #enas:25 #enci:-34
#enga:47 #enta:-32 #ente:95 #erad:62 #erfe:29 #erry:72 #esom:23 #essi:93 #esta:-43 #esto:-68 #etti:37 #evok:-32
#exce:-28 #fami:32 #favo:-40 #fect:26 #feli:156 #fies:38 #folk:40 #fore:-23 #givi:36 #good:119 #grac:76 #grad:149
#grea:83 #gual:86 #guno:-25 #guys:84 #habl:-29 #hace:-30 #hank:132 #happ:96 #hast:49 #have:64 #head:23 #heer:47
#hell:148 #help:-26 #here:-39 #hing:-101 #hola:146 #holi:51 #hone:-26 #hora:-23 #hris:71 #iate:45 #icio:24 #idad:65
#iday:49 #idea:-40 #iest:25 #iged:35 #ight:69 #igua:85 #ilia:28 #illa:-27 #inde:-26 #indl:-40 #indo:56 #info:-55
#ings:77 #ingu:-26 #ione:38 #isar:43 #isim:66 #istm:71 #ivin:33 #jove:26 #keep:35 #kend:79 #king:89 #know:36 #ksem:64
#ksgi:30 #lant:-22 #leas:-29 #lema:22 #lent:-25 #less:158 #lett:32 #lice:22 #lida:49 #lige:35 #lind:56 #ling:25
#llin:32 #lmen:76 #look:81 #lrea:-27 #ludo:142 #lueg:39 #mabl:31 #made:31 #many:40 #mbsu:25 #ment:31 #mess:-48
#migh:-23 #mili:27 #moji:64 #more:-25 #move:-27 #much:71 #nada:-78 #navi:71 #ncio:-44 #ndic:34 #ndly:-40 #ndos:48
#ngun:-26 #nigh:83 #ning:-45 #nkse:64 #nksg:30 #noch:31 #noth:-126 #nter:46 #nywa:-84 #oble:29 #obli:34 #oche:30
#odos:77 #oing:-24 #okin:86 #olid:51 #olks:40 #omen:-22 #ones:29 #ooki:86 #open:-60 #orda:28 #orio:25 #orri:223
#othi:-118 #ould:-33 #oure:73 #ovel:22 #over:-30 #pare:-22 #pase:25 #patr:44 #peac:26 #perf:29 #phon:-26 #plea:-41
#prec:22 #prob:39 #pued:-27 #pues:-29 #qued:-25 #quie:-53 #quit:-27 #raci:75 #rade:139 #rado:56 #razo:27 #rdat:25
#read:-36 #reat:86 #reci:39 #remi:-27 #remo:-26 #reve:-22 #revo:-33 #rfec:29 #ries:247 #rist:71 #robl:39 #rock:112
#rong:-30 #room:-22 #rrie:231 #sale:34 #salu:163 #save:30 #scri:-37 #sema:25 #semo:64 #sgiv:30 #sima:66 #sing:80
#skin:57 #some:23 #spon:-22 #ssin:92 #stas:24 #sted:47 #stil:-41 #stma:71 #stoy:-51 #supe:35 #take:-41 #tard:-39
#tede:41 #tell:56 #tenc:-38 #teng:32 #tera:62 #text:-92 #than:128 #then:-65 #thin:-129 #this:-31 #thro:-23 #till:-44
#ting:43 #tion:-28 #tire:-22 #tmas:71 #todo:56 #tori:24 #tron:40 #ttin:53 #ualm:63 #udos:142 #uede:-30 #uedo:-25
#uego:33 #ught:25 #uien:-22 #uier:-36 #unch:23 #uper:35 #uste:58 #vely:23 #vend:-30 #very:27 #vida:71 #ving:23
#visa:34 #voke:-32 #week:92 #well:59 #were:-33 #weso:23 #with:-26 #worr:233 #woul:-22 #wron:-30 #xcel:-28 #yeah:23
#your:60 #yway:-84 %again_later%agree:36 %again_later%elsewhere:-25 %again_later%question:-41 %again_later%refuse:127
%again_later%season:-41 %again_later%shift_it:-43 %again_later%start_again:24 %again_later%thanks:123 %agree:44
%agree%away:62 %agree%busy:-34 %agree%car_part:-33 %agree%how_long:43 %agree%opening:90 %agree%refuse:-37
%agree%thanks:-129 %away%call_off:-22 %bad:-89 %bad%staff:-45 %bring:-110 %bring%refuse:-51 %bring%thanks:-31
%busy:-44 %call_off:49 %call_off%gone_car:-22 %call_off%on_way:-30 %call_off%thanks:-305 %call_off%wrong_one:22
%car:-92 %car%thanks:23 %car_part:-169 %car_part%question:-24 %car_part%refuse:-30 %car_part%thanks:-40 %do_it:-151
%do_it%refuse:-64 %do_it%staff:-27 %do_it%thanks:-74 %doubt:-49 %doubt%thanks:-25 %elsewhere%shift_it:-28 %fails:-77
%fails%leave_me:-24 %family:65 %family%refuse:64 %family%thanks:71 %gone_car:-127 %gone_car%thanks:-27 %how_long:-37
%how_long%opening:-37 %how_long%question:-29 %how_long%refuse:36 %how_long%thanks:84 %leak:-23 %leave_me:-155
%leave_me%wrong_one:22 %machine:-41 %meaning%thanks:34 %message:-106 %message%refuse:39 %message%start_again:-40
%message%thanks:32 %money:-74 %money%refuse:24 %noise%thanks:23 %odometer:-86 %on_way:-69 %opening:-37
%opening%question:-29 %opening%thanks:25 %pay_day:-29 %pay_day%season:-22 %pay_day%thanks:24 %phone:-73
%phone%thanks:33 %place:-66 %place%thanks:23 %question%refuse:60 %question%shift_it:-25 %question%thanks:194
%question%who:-24 %refuse:-61 %refuse%start_again:34 %refuse%who:23 %refuse%wrong_one:64 %season:178 %shift_it:-74
%smoke_smell:-39 %staff:46 %staff%thanks:27 %start_again:-38 %start_again%thanks:41 %thanks:360 %thanks%who:24
%thanks%wrong_one:49 %who:-39 @?:-66 @after_visit:-158 @car:-65 @confirm:-39 @day:-56 @later:-86 @nothing:195
@nothing_info:-62 @odometer:-36 @offers:-146 @reading:-43 @time:-42 @times:-149 @walk_in:-124 ^_all:-49
^_appreciate:47 ^_are:-57 ^_asi:-28 ^_ayuda:-28 ^_bendiciones:57 ^_buen:122 ^_buenas:25 ^_cheers:54 ^_do:-81 ^_el:-24
^_estoy:-29 ^_everything:-33 ^_feliz:136 ^_good:184 ^_got:73 ^_gracias:131 ^_happy:114 ^_hasta:42 ^_have:94
^_hello:148 ^_help:-24 ^_hola:146 ^_i:-41 ^_id:-80 ^_igualmente:48 ^_im:-161 ^_info:-63 ^_is:-37 ^_it:-27
^_kindly:-31 ^_la:-27 ^_les:27 ^_me:-33 ^_might:-32 ^_mil:47 ^_much:64 ^_muchas:39 ^_muy:58 ^_nice:-119 ^_ninguno:-24
^_no:99 ^_ok:58 ^_opt:-36 ^_que:97 ^_revoke:-32 ^_sale:38 ^_se:44 ^_si:-94 ^_sounds:-36 ^_tell:29 ^_thank:141
^_thanks:101 ^_thanksemoji:64 ^_that:43 ^_thumbsup:25 ^_todo:-23 ^_un:33 ^_were:-44 ^_what:-40 ^_ya:-41 ^_yes:-28
^_you:164 ^_your:46 ^_youre:54 a:74 a__day:45 a__en:22 a__one:61 a__weekend:95 a_good:78 a_nice:36 abren:-23
agradece:109 agradece_$:55 agradezco:22 ahi:-22 all:92 all_$:98 all__you:30 already:-27 and:-57 and__you:-36
and_thank:-34 anyway:-84 anyway_$:-84 appreciate:-27 appreciate_the:22 appreciated:44 are:-51 are_the:25 are_you:-82
as:68 as_well:66 asi:-38 ask:25 ask_$:30 asking:58 asking_$:29 atencion:-38 avisar:30 avisar_$:40 aviso:23 aviso_$:25
awesome:23 ayuda_$:-22 be:-58 been:-29 bendiciones:43 bendiciones_$:33 best:46 best_$:60 bien:-40 bien_gracias:-55
bless:53 bless_you:29 bonito_dia:28 buen:200 buen_dia:111 buenas:25 bueno:-24 but:-111 but_ill:-31 but_im:-22
but_no:-68 but_that:23 by:-36 can:-30 cheers:47 cheers_$:25 christmas:71 cita:-28 crew:44 day_$:35 de_que:33
de_semana:50 dear_$:23 del:-25 dia:84 dia_$:101 did:-56 did_it:-22 dios:-28 do:-180 do_$:-48 do__have:-32 do_you:-90
el:-56 el_aviso:26 el_dia:-24 el_taller:22 en:-69 en_el:25 enterado:65 es:-62 esta:-32 este:-23 estoy:-51
estoy_bien:-41 everything_$:34 excelente:-28 familia:28 familia_$:28 favor:-36 favor_$:-33 feliz:142 feliz_navidad:66
fiestas:25 fin:139 fin__semana:57 fin_de:56 folks:40 for:86 for__me:92 for_a:-27 for_asking:58 for_nothing:-116
for_now:-30 for_the:25 get:-25 go:-24 good:121 good_to:31 got:65 got_it:90 gracias:77 gracias_$:-29
gracias__avisar:30 gracias__el:66 gracias__nada:-82 gracias__no:-22 gracias__todo:31 gracias_de:22 gracias_pero:-24
gracias_por:62 great:76 great_$:66 great_job:-24 guy:-27 guy_$:-30 guys:84 guys_$:63 guys_are:31 happy:95 hasta:49
have:64 have_a:168 have_the:-22 hay:26 hay__que:41 heads:41 heads_up:42 hello:148 help:-26 help_$:-23 here:-30
here_$:-27 hola:146 holidays:54 how:-34 how__of:28 how_much:-40 i:-93 i_have:-24 id:-85 idea:-40 idea_$:-39 igual:23
igualmente:63 ill:-48 ill__it:-32 ill__you:-26 ill_take:-31 im:-189 im__for:-26 im_good:-98 in:23 info:-53 info_$:-53
is:-37 is__of:53 is_good:-22 it:33 it_$:75 it__been:-26 it__my:-25 it_to:-29 job:-29 joven:26 joven_$:52 keep:37
kind:49 kind__you:34 kind_of:28 kindly:-40 know:42 la:-79 la_atencion:-27 las:-34 last_week:31 les:55 let:-28
letting:32 lo:-59 lo__gracias:-22 lol_$:-27 lovely:23 luego:39 made:31 many:40 mas:-45 me:-91 me_in:32 messed:-28
mi:-49 might:-32 might__well:-32 might_as:-32 mil:29 mil_gracias:34 mind:37 mind_$:35 modos_$:23 much_obliged:35
muchas__por:31 muy_amable:27 my:-79 nada:-77 nada_$:-74 navidad:71 navidad_$:54 nice__you:62 nice_of:62 night:93
night_$:82 ninguno:-25 no:-42 no_$:-68 no__de:40 no__on:23 no__you:-57 no_gracias:-110 no_hay:54 no_soy:30
no_thank:-57 no_thanks:-95 no_worries:241 not:-61 nothing:-118 nothing_$:-116 now:-30 obliged:35 obliged_$:33 of:85
of_you:158 ok:50 ok_$:-39 ok__a:31 ok__you:-71 ok_gracias:31 on:-46 one:54 one_$:57 open:-56 open_on:-30 opt:-36
opt_out:-28 or:-22 out:44 out_$:71 patron:44 perfect:24 pero:-29 pero_no:-38 please:-41 please__you:-28
please_and:-22 por_avisar:30 por_el:63 por_favor:-34 por_nada:-82 por_todo:31 problema:24 que:47 que_$:23
que__bonito:25 que_tenga:42 quedo:-23 reminder_$:29 revoke:-32 revoke_$:-32 rock:112 sale:35 saludos:142
se_agradece:55 se_le:36 se_lo:-22 see:44 see__then:-57 see_you:-47 semana:32 semana_$:53 set:-38 set_for:-26 si:-125
si_gracias:-80 so:44 so_much:24 son:22 soy:28 still:-41 super:36 ta:22 take_it:-27 taken:-36 taken__of:-36
taken_care:-36 te:26 tell_the:30 telling:36 telling_me:37 tenga:40 tenga__dia:42 text:-64 thank__for:45 thank_you:-30
thanks_$:-71 thanks__no:-55 thanks__nothing:-116 thanks__the:66 thanks_a:27 thanks_but:-94 thanks_for:155
thanksemoji:64 thanksemoji_$:64 thanksgiving:30 thanksgiving_$:31 that_$:-65 that__be:-37 that__so:35 that_in:42
that_is:95 that_would:-37 the:31 the__thanks:26 the__up:45 the_best:76 the_heads:46 then:-65 then_$:-47 this:-31
though:-24 though_$:-23 thumbsup:25 thumbsup_$:25 to:45 to__all:104 to__guy:-25 to_know:38 to_my:-25 to_the:32
to_you:100 todo_$:38 todos:56 too:155 too_$:201 too_much:-34 try:-113 una:-27 up_$:37 ustedes:41 ustedes_$:38 very:27
weekend:80 weekend_$:76 well:59 well_$:68 were:-33 what:22 will_do:-61 worries:241 would_be:-28 would_it:32 wrong:-30
y:-47 ya:47 ya_$:107 yeah:23 yeah_$:36 yes:-71 yes_$:-50 yes_it:26 you:145 you_$:-67 you__are:26 you__the:-30
you_all:116 you_folks:42 you_for:55 you_guys:80 you_have:-49 you_open:-48 you_text:-31 you_then:-58 your_the:54
youre:62
"""
