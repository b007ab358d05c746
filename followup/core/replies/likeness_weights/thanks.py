"""What speaks for and against `thanks`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "thanks"
BIAS = -167
WEIGHTS = """\
#abaj:-22 #able:28 #acia:88 #adec:125 #adez:42 #agra:176 #aken:-26 #alme:82 #alre:-28 #alud:160 #amab:45 #amil:23
#ando:-52 #anks:86 #ante:-24 #anyw:-90 #appr:49 #appy:103 #arda:-27 #arro:-30 #asen:40 #asta:54 #ated:34 #aten:-35
#atio:-27 #ator:26 #atro:40 #avid:75 #avis:54 #avor:-36 #awes:32 #bajo:-24 #been:-23 #bend:62 #best:50 #bido:23
#bien:-42 #blem:41 #bles:188 #blig:38 #bscr:-24 #bsup:33 #buen:224 #carr:-30 #cele:-35 #chee:55 #ches:24 #chis:58
#chri:68 #cias:91 #ciat:61 #cion:-24 #cita:-38 #comp:-25 #cord:28 #crew:22 #crib:-44 #cuan:-22 #dato:48 #days:44
#dece:117 #dezc:42 #dici:42 #done:-22 #each:27 #eads:48 #eady:-29 #ease:-84 #ecia:42 #edes:39 #eeke:80 #eers:55
#eken:80 #elen:-26 #eliz:141 #elli:30 #ello:151 #eman:29 #emoj:58 #enas:24 #enci:-33 #enga:39 #ente:96 #erad:56
#erfe:28 #erry:64 #esom:32 #essi:97 #esta:-54 #esto:-65 #etti:42 #evok:-37 #exce:-26 #ezco:42 #fami:23 #favo:-36
#fect:26 #feli:147 #fies:30 #fixe:-23 #folk:27 #from:-24 #givi:48 #goin:-26 #good:126 #grac:91 #grad:172 #grea:74
#gual:94 #guys:92 #habl:-31 #hace:-28 #hank:109 #happ:99 #hast:57 #have:74 #head:38 #heer:55 #hell:155 #help:-28
#here:-68 #hing:-102 #hola:147 #holi:55 #hone:-25 #houg:-32 #hris:68 #humb:29 #iate:61 #icio:30 #idad:69 #iday:44
#idea:-45 #iged:39 #ight:54 #igua:93 #ilia:23 #illa:-29 #indl:-34 #indo:31 #info:-55 #ings:87 #ione:44 #isar:51
#isim:68 #istm:68 #ivin:45 #ixed:-23 #jove:25 #keep:34 #kend:80 #know:51 #ksem:58 #ksgi:41 #last:-36 #leas:-81
#lema:25 #less:167 #lett:35 #lida:54 #lige:39 #like:-23 #lind:33 #ling:22 #llin:30 #lmen:82 #look:85 #lrea:-28
#ludo:138 #lueg:41 #mabl:45 #made:33 #mage:-22 #mand:-23 #many:46 #mber:-28 #mbsu:33 #ment:42 #mess:-42 #migh:-22
#mili:23 #mind:22 #modo:23 #moji:58 #move:-24 #much:91 #nada:-80 #navi:75 #ncio:-43 #nder:-37 #ndic:40 #ndly:-34
#nigh:78 #ning:-41 #nkse:58 #nksg:41 #noch:30 #noth:-115 #nter:43 #nton:22 #nywa:-90 #oble:32 #obli:38 #oche:29
#odos:59 #oing:-30 #okin:88 #olid:55 #olks:27 #ones:37 #ooki:88 #open:-51 #orda:41 #orio:27 #orri:212 #othi:-105
#ough:-31 #ould:-46 #oure:45 #oven:23 #over:-31 #pase:32 #patr:43 #peac:27 #perf:28 #phon:-24 #plea:-79 #ppre:30
#prec:34 #prob:44 #pued:-25 #pues:-23 #quie:-50 #quit:-25 #raci:89 #rade:161 #rado:49 #rdat:28 #read:-35 #reat:79
#reci:52 #remo:-23 #revo:-37 #rfec:28 #ribe:-29 #ries:223 #ring:-36 #rist:68 #robl:44 #rock:103 #rong:-28 #room:-26
#rrie:212 #sale:33 #salu:160 #save:26 #scri:-48 #sema:28 #semo:58 #sgiv:41 #sima:68 #sing:84 #some:25 #spon:-22
#ssin:97 #star:-30 #sted:50 #stil:-28 #stma:68 #stop:-29 #stoy:-54 #subs:-24 #supe:44 #take:-51 #tard:-41 #tede:39
#tell:38 #tenc:-36 #teng:30 #tera:57 #text:-82 #than:104 #then:-56 #ther:-29 #thin:-120 #this:-38 #thou:-30 #thro:-25
#thum:29 #till:-32 #ting:51 #tion:-34 #tire:-27 #tmas:68 #toda:-22 #todo:53 #tori:26 #tron:40 #ttin:58 #ualm:68
#ubsc:-24 #udos:138 #uede:-30 #uedo:-22 #uego:35 #uier:-35 #umbs:29 #unch:26 #uper:44 #uste:59 #vend:-29 #very:35
#vida:75 #ving:39 #visa:42 #voke:-37 #week:71 #well:63 #were:-29 #weso:32 #what:-23 #with:-25 #worr:222 #woul:-38
#wron:-28 #xcel:-26 #yeah:36 #your:67 #yway:-90 %again_later:27 %again_later%agree:37 %again_later%bring:-24
%again_later%question:-24 %again_later%refuse:133 %again_later%season:-33 %again_later%shift_it:-41
%again_later%thanks:128 %agree:22 %agree%away:58 %agree%busy:-29 %agree%car_part:-29 %agree%how_long:41
%agree%message:-23 %agree%opening:89 %agree%refuse:-61 %agree%thanks:-152 %away%leave_me:-32 %away%refuse:-29
%away%thanks:-30 %bad:-100 %bad%staff:-41 %bad%thanks:-26 %bring:-147 %bring%call_off:-34 %bring%refuse:-70
%bring%thanks:-63 %busy:-60 %busy%thanks:-30 %call_off%on_way:-31 %call_off%refuse:-69 %call_off%staff:22
%call_off%thanks:-349 %call_off%wrong_one:23 %car:-107 %car%gone_car:-25 %car_part:-172 %car_part%question:-25
%car_part%refuse:-42 %car_part%thanks:-44 %do_it:-166 %do_it%gone_car:-26 %do_it%refuse:-66 %do_it%thanks:-104
%doubt:-52 %doubt%thanks:-26 %elsewhere:-30 %elsewhere%shift_it:-22 %fails:-106 %fails%leave_me:-24 %fails%refuse:-29
%fails%thanks:-22 %family:81 %family%refuse:44 %family%thanks:55 %gone_car:-126 %gone_car%thanks:-30 %how_long:-42
%how_long%opening:-38 %how_long%question:-26 %how_long%refuse:40 %how_long%thanks:78 %leave_me:-176
%leave_me%thanks:-23 %machine:-42 %meaning:-25 %message:-107 %message%refuse:29 %message%start_again:-38
%message%thanks:26 %money:-79 %money%question:-32 %money%refuse:28 %noise:-42 %odometer:-91 %on_way:-92
%on_way%refuse:-33 %opening:-22 %opening%question:-28 %opening%thanks:26 %pay_day:-54 %phone:-66 %phone%thanks:25
%place:-80 %question:-55 %question%refuse:34 %question%thanks:148 %question%who:-29 %refuse:-149
%refuse%start_again:30 %refuse%thanks:24 %refuse%wrong_one:33 %season:186 %shift_it:-84 %smoke_smell:-39 %staff:64
%staff%thanks:52 %start_again:-41 %start_again%thanks:34 %thanks:450 %thanks%wrong_one:31 %who:-41 %wrong_one:-23
@?:-80 @after_visit:-182 @car:-55 @confirm:-100 @confirm_stop:-25 @day:-50 @later:-61 @nothing:240 @nothing_info:-63
@odometer:-25 @offers:-148 @reading:-59 @time:-61 @times:-218 @walk_in:-169 ^_$:-26 ^_all:-43 ^_appreciate:63
^_are:-55 ^_asi:-31 ^_ayuda:-33 ^_bendiciones:63 ^_bless:27 ^_buen:130 ^_buenas:25 ^_do:-83 ^_el:-23 ^_estoy:-31
^_everything:-30 ^_feliz:138 ^_good:173 ^_got:80 ^_gracias:123 ^_great:22 ^_hasta:43 ^_have:99 ^_hello:155 ^_help:-29
^_hola:147 ^_how:-30 ^_i:-50 ^_id:-72 ^_im:-134 ^_info:-64 ^_is:-27 ^_it:-45 ^_la:-26 ^_les:29 ^_me:-31 ^_might:-32
^_mil:44 ^_much:58 ^_muchas:41 ^_muy:64 ^_no:56 ^_not:-30 ^_ok:65 ^_opt:-39 ^_please:-29 ^_que:92 ^_revoke:-37
^_sale:37 ^_se:52 ^_si:-90 ^_sounds:-32 ^_thank:187 ^_thanks:197 ^_thanksemoji:58 ^_that:46 ^_thumbsup:33 ^_were:-43
^_what:-36 ^_ya:-34 ^_yes:-35 ^_you:197 ^_your:53 ^_youre:46 a:68 a__day:54 a__one:60 a__weekend:90 a_blessed:24
a_good:73 agradece:109 agradece_$:55 agradezco:42 ahi:-23 all:68 all_$:104 already:-28 amable:27 an:-24 and:-74
and__you:-33 and_thank:-29 anyway:-90 anyway_$:-90 appreciated:44 are:-81 are_you:-81 as:78 as_well:70 asi:-40 at:-40
atencion:-36 avisar:39 avisar_$:42 awesome:32 ayuda_$:-26 be:-56 been:-23 bendiciones:50 bendiciones_$:37 best:50
best_$:59 bien:-44 bien_gracias:-62 bless:49 bless_you:26 blessed:24 bonito_dia:28 buen:216 buen_dia:129 buenas:25
but:-144 but_ill:-26 but_no:-58 by:-30 can:-33 car:-24 care_of:-27 carro:-26 cheers:55 christmas:68 cita:-31 crew:22
day:34 day_$:46 de__modos:24 de_que:37 de_semana:47 de_todos:24 del:-22 dia:110 dia_$:119 did:-51 do:-180 do_$:-42
do__have:-40 do_you:-95 el:-53 el_aviso:22 en:-74 end:-22 es:-60 esta:-29 este:-22 estoy:-54 estoy_bien:-43
everything_$:41 excelente:-26 familia:23 favor:-31 favor_$:-28 feliz:141 fin:133 fin__semana:54 fin_de:53 fixed:-23
folks:27 for:33 for__me:87 for_nothing:-104 for_now:-24 for_the:37 from:-24 god:24 going:-26 good:128 good_to:38
got:67 got_it:90 gracias:91 gracias_$:-22 gracias__avisar:39 gracias__el:64 gracias__nada:-84 gracias__no:-22
gracias__todo:34 gracias_de:25 gracias_por:66 great:79 great_$:63 guy:-25 guy_$:-22 guys:92 guys_$:67 happy:103
hasta:57 have:74 have_a:172 hay:46 hay__que:43 heads:52 heads_up:53 hello:155 help:-28 help_$:-28 here:-31 here_$:-29
hola:147 holidays:57 how:-43 how_much:-42 i:-103 id:-76 idea:-45 idea_$:-45 igual:26 igualmente:68 ill:-67
ill__it:-26 ill__you:-22 ill_take:-25 im:-150 im_good:-84 info:-53 info_$:-52 is:-80 it_$:94 it_is:-35 it_to:-24
job:-23 joven:25 joven_$:47 keep:36 kind:31 kindly:-34 know:56 know_$:24 la:-87 la_atencion:-26 las:-32 last:-34
les:62 let:-23 letting:35 like:-23 lo:-41 lo_agradezco:24 luego:41 made:33 many:46 mas:-43 me:-145 me_in:22
messed:-25 mi:-59 might:-32 mil:37 mil_gracias:38 mind:37 mind_$:42 modos:24 modos_$:25 much:29 much_obliged:39
muchas:22 muchas__por:34 muchas_gracias:22 muy:26 muy_amable:33 my:-100 nada:-80 nada_$:-75 nao:-22 navidad:75
navidad_$:57 night:86 night_$:85 no:-70 no_$:-55 no__de:42 no__you:-43 no_gracias:-112 no_hay:58 no_problem:22
no_soy:35 no_thank:-43 no_thanks:-104 no_worries:224 not:-61 nothing:-105 nothing_$:-104 obliged:39 of:40 of_you:106
ok:58 ok_$:-46 ok__you:-67 on:-75 on_the:-27 one:65 one_$:68 open:-46 opt:-40 opt_out:-31 out:51 out_$:64 patron:43
perfect:26 pero_no:-35 please:-80 please_and:-35 por_avisar:39 por_el:62 por_favor:-30 por_nada:-84 por_todo:34
problema:26 que:70 que_$:28 que__bonito:25 que_tenga:40 reminder_$:33 revoke:-37 revoke_$:-37 rock:103 sale:35
saludos:138 se_agradece:53 se_le:35 see:43 see__then:-50 see_you:-49 semana:34 semana_$:51 set:-24 si:-114
si_gracias:-73 so:60 so_much:26 son:27 soy:32 still:-28 super:45 take:-24 taken:-26 taken__of:-26 taken_care:-26
te:26 tenga:38 tenga__dia:40 text:-53 thank_you:-32 thanks_$:-50 thanks__no:-48 thanks__nothing:-104 thanks__the:42
thanks_a:28 thanks_but:-74 thanks_for:110 thanksemoji:58 thanksemoji_$:58 thanksgiving:41 thanksgiving_$:41
that_$:-54 that__be:-27 that__so:50 that_in:41 that_is:60 that_would:-27 the__up:56 the_best:72 the_heads:56 then:-56
then_$:-43 there:-25 this:-38 though:-36 though_$:-36 thumbsup:33 thumbsup_$:33 time:-34 to:40 to__all:109 to_know:42
to_the:22 to_you:106 todo_$:41 todos:35 todos_modos:24 too:157 too_$:198 too_much:-33 try:-104 un:-40 una:-25 up_$:45
ustedes:39 ustedes_$:36 very:24 we:-37 weekend:80 weekend_$:76 well:63 well_$:71 were:-29 what:-22 will_do:-53
worries:224 would:-38 would_be:-30 wrong:-28 y:-43 ya:53 ya_$:104 yeah:36 yeah_$:44 yes:-85 yes_$:-47 you:141
you__much:25 you__the:-34 you_all:123 you_folks:28 you_guys:88 you_have:-50 you_open:-46 you_text:-32 you_then:-50
your:25 youre:45
"""
