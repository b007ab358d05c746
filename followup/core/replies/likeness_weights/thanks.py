"""What speaks for and against `thanks`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "thanks"
BIAS = -140
WEIGHTS = """\
#abaj:-19 #abla:-15 #able:21 #abou:-15 #abra:20 #acep:-19 #acer:-14 #acia:92 #acio:-22 #adec:111 #adez:33 #afte:-17
#agra:154 #ague:-14 #aint:-22 #aken:-18 #ales:14 #alme:72 #alre:-22 #alud:167 #amab:31 #amen:15 #amil:27 #amos:-16
#anan:-22 #ance:-16 #anda:-22 #ando:-47 #anks:146 #anta:-17 #ante:-25 #anul:-16 #anyt:17 #anyw:-91 #apol:26 #appr:52
#appy:91 #arda:-21 #arde:-15 #ario:16 #arlo:-14 #arme:-14 #aron:25 #arre:-14 #arro:-34 #asen:34 #asta:60 #atch:27
#ated:35 #aten:-41 #atio:-22 #ator:27 #atro:38 #aver:16 #avid:66 #avis:48 #avor:-36 #awes:24 #ayud:-22 #back:22
#bajo:-20 #been:-21 #bein:18 #bend:59 #best:51 #bien:-25 #blem:48 #bles:168 #blig:43 #book:-21 #bout:-16 #bscr:-18
#bsup:25 #budd:16 #buen:167 #camb:-14 #carr:-32 #cele:-31 #cept:-20 #chan:-15 #ches:26 #chev:15 #chin:-14 #chis:52
#chri:60 #cias:95 #ciat:66 #cion:-26 #cita:-39 #clie:26 #clin:-15 #cobr:-22 #comp:-21 #cool:19 #cord:26 #corr:-18
#crew:14 #crib:-36 #cual:-16 #cuan:-16 #dari:14 #dato:40 #days:44 #dece:91 #deja:-16 #desd:-14 #dese:16 #desp:-17
#dezc:33 #dici:34 #diga:15 #dobl:-16 #done:-23 #down:-16 #driv:-15 #each:17 #eads:44 #eady:-24 #ease:-77 #ecia:50
#ecio:-16 #ecor:18 #edes:46 #eeke:69 #eers:83 #eing:18 #ejor:21 #eken:69 #elen:-26 #eliz:121 #elli:27 #ello:137
#eman:21 #embe:-14 #emin:-17 #emor:-17 #emov:-16 #enas:22 #enci:-31 #enga:39 #ente:91 #entr:-17 #erad:53 #eres:-20
#erfe:29 #erry:60 #erte:25 #eryt:14 #esde:-14 #esom:24 #espu:-14 #essa:-18 #essi:87 #esta:-59 #este:-23 #esto:-56
#etal:-15 #etir:-15 #etti:42 #evok:-37 #exce:-25 #ezco:33 #fami:27 #faro:23 #favo:-36 #fect:28 #feli:114 #fies:25
#fixe:-33 #folk:22 #fore:-21 #fren:-17 #from:-25 #fter:-17 #givi:34 #gles:-14 #goin:-24 #good:89 #grac:95 #grad:149
#grea:63 #gual:79 #guys:71 #habl:-32 #hace:-24 #hank:154 #happ:89 #hast:58 #have:57 #head:32 #heck:-14 #hell:140
#help:-36 #here:-81 #heve:15 #hing:-90 #holi:52 #hone:-23 #houg:-26 #hris:60 #humb:22 #iado:14 #iate:66 #ibir:-17
#icio:22 #idad:59 #iday:42 #idea:-57 #idos:20 #iero:-20 #ight:41 #igua:77 #igue:-16 #ilia:27 #illa:-35 #imag:-28
#imos:-14 #inar:-18 #inde:-19 #indl:-25 #indo:16 #info:-57 #ingl:-14 #ings:78 #inte:-14 #ione:36 #iosi:16 #ique:18
#irle:22 #isar:43 #isim:62 #istm:60 #ivin:31 #ixed:-33 #jaja:23 #jove:24 #just:-20 #keep:35 #kend:69 #king:-14
#know:54 #ksgi:25 #lain:14 #lama:-16 #lant:-21 #last:-32 #leas:-75 #lela:-15 #lema:26 #lent:-28 #less:146 #lett:34
#lici:-16 #lida:52 #lien:29 #lige:43 #like:-23 #lind:20 #ling:24 #liqu:18 #llas:-20 #llev:-16 #llin:27 #lmen:72
#logi:26 #long:-14 #look:75 #lrea:-22 #ludo:142 #lueg:38 #mabl:31 #made:29 #mage:-29 #mala:-17 #mall:-14 #many:44
#mber:-31 #mbsu:25 #mejo:21 #memo:-16 #ment:41 #mess:-47 #meta:-16 #migh:-34 #mili:27 #mind:23 #modo:27 #mome:-15
#more:-21 #mori:-20 #move:-25 #much:81 #nada:-77 #nana:-22 #nand:-14 #navi:66 #nces:16 #ncio:-35 #nder:-28 #ndic:31
#ndig:16 #ndly:-25 #ngle:-14 #nigh:67 #ning:-28 #nksg:25 #noch:25 #noma:-16 #noth:-111 #nten:-16 #nter:38 #ntes:-14
#nton:26 #nule:-16 #numb:-17 #nyti:21 #nywa:-91 #oble:34 #obli:43 #obro:-16 #oche:25 #oday:-20 #odos:65 #oger:21
#oing:-28 #okin:79 #olid:52 #olks:22 #olog:26 #omas:-16 #omen:-15 #once:15 #ones:32 #onta:-14 #onth:-18 #ooki:79
#open:-50 #orda:31 #orde:20 #oria:-16 #orio:27 #orit:-17 #orri:166 #osit:16 #othi:-99 #ough:-20 #ould:-41 #oure:39
#oven:21 #over:-28 #pain:-18 #pare:-26 #pase:22 #perf:29 #phon:-22 #plea:-67 #pliq:19 #polo:26 #ppre:29 #prec:38
#pres:-18 #prob:49 #pued:-30 #pues:-22 #quie:-42 #quit:-21 #raci:94 #rade:147 #rado:50 #rata:16 #rato:-15 #rdat:28
#rden:20 #read:-25 #real:-15 #reat:67 #rech:-19 #reci:43 #reco:22 #remi:-19 #remo:-17 #reti:-17 #revo:-38 #rfec:29
#rial:-16 #ribe:-21 #ried:-18 #ries:184 #ring:-31 #rios:-15 #rist:60 #rita:-17 #robl:49 #rock:97 #roge:25 #rong:-30
#room:-22 #rrie:166 #rvic:-15 #ryth:14 #sage:-16 #sale:35 #salu:167 #save:17 #scri:-42 #sday:-15 #sema:21 #semo:149
#sgiv:25 #sigu:-17 #sima:62 #sing:73 #sion:-14 #some:16 #spec:-14 #spon:-21 #spue:-14 #ssag:-17 #ssin:86 #star:-29
#sted:56 #stil:-31 #stma:60 #stop:-18 #stor:-16 #stoy:-48 #subs:-18 #supe:43 #take:-40 #tard:-37 #taro:16 #tede:46
#tell:35 #tenc:-34 #tend:-23 #teng:30 #tera:52 #text:-83 #than:148 #then:-54 #ther:-41 #thin:-108 #this:-29 #thou:-25
#thro:-20 #thum:22 #till:-35 #ting:48 #tion:-29 #tire:-24 #tmas:60 #toda:-22 #todo:53 #tonc:16 #topa:-15 #tori:27
#trat:16 #tron:37 #ttin:53 #ualm:57 #ubsc:-18 #ucha:18 #ucho:-15 #uddy:16 #udos:142 #uede:-35 #uedo:-18 #uego:30
#uert:26 #uier:-30 #ulti:17 #umbe:-17 #umbs:22 #unch:22 #uper:43 #uste:65 #vaya:16 #vend:-31 #very:28 #vida:66
#ving:28 #visa:36 #voke:-37 #vuel:-16 #week:63 #well:52 #went:-16 #were:-22 #weso:24 #what:-16 #wher:-14 #wifi:-14
#with:-17 #work:-14 #worr:180 #woul:-31 #wron:-30 #xcel:-25 #ximo:15 #yeah:26 #ying:15 #your:60 #ytim:21 #yuda:-21
#yway:-91 %again_later%agree:36 %again_later%bring:-26 %again_later%call_off:23 %again_later%elsewhere:-18
%again_later%family:-14 %again_later%on_way:-22 %again_later%question:-17 %again_later%refuse:126
%again_later%season:-34 %again_later%shift_it:-43 %again_later%staff:14 %again_later%start_again:19
%again_later%thanks:108 %again_later%wrong_one:19 %agree%away:55 %agree%busy:-27 %agree%car_part:-22 %agree%fails:-16
%agree%how_long:34 %agree%leave_me:16 %agree%message:-26 %agree%money:23 %agree%on_way:-17 %agree%opening:85
%agree%question:25 %agree%refuse:-31 %agree%staff:30 %agree%thanks:-119 %agree%wrong_one:23 %away:-20
%away%call_off:-26 %away%leave_me:-37 %away%on_way:-19 %away%refuse:-34 %away%staff:-19 %away%thanks:-34 %bad:-101
%bad%staff:-44 %bad%thanks:-28 %bring:-148 %bring%call_off:-49 %bring%odometer:-14 %bring%refuse:-80
%bring%shift_it:-18 %bring%thanks:-57 %bring%wrong_one:23 %busy:-55 %busy%thanks:-27 %call_off%car:-14
%call_off%fails:-18 %call_off%gone_car:-25 %call_off%message:-18 %call_off%on_way:-39 %call_off%refuse:-81
%call_off%staff:29 %call_off%start_again:17 %call_off%thanks:-316 %call_off%wrong_one:27 %car:-105 %car%gone_car:-21
%car%thanks:-15 %car_part:-158 %car_part%do_it:-18 %car_part%fails:-18 %car_part%question:-23 %car_part%refuse:-50
%car_part%start_again:21 %car_part%thanks:-52 %do_it:-154 %do_it%gone_car:-26 %do_it%refuse:-55 %do_it%shift_it:-17
%do_it%staff:-15 %do_it%thanks:-90 %doubt:-47 %doubt%refuse:-21 %doubt%thanks:-23 %elsewhere:-26
%elsewhere%shift_it:-24 %elsewhere%thanks:15 %fails:-102 %fails%leave_me:-25 %fails%refuse:-28 %fails%thanks:-17
%family:65 %family%gone_car:-15 %family%odometer:-19 %family%refuse:19 %family%thanks:31 %gone_car:-110
%gone_car%refuse:-16 %gone_car%thanks:-27 %how_long:-37 %how_long%opening:-41 %how_long%question:-21
%how_long%refuse:42 %how_long%staff:-17 %how_long%thanks:73 %leak:-17 %leave_me:-157 %leave_me%staff:17
%leave_me%wrong_one:23 %lift%refuse:22 %lift%thanks:15 %machine:-42 %machine%staff:-15 %meaning:-28
%meaning%thanks:14 %message:-106 %message%refuse:31 %message%start_again:-42 %message%thanks:28 %money:-69
%money%pay_day:-21 %money%question:-28 %money%refuse:29 %noise:-59 %noise%question:-16 %noise%refuse:-20
%odometer:-93 %odometer%refuse:-14 %on_way:-101 %on_way%question:16 %on_way%refuse:-35 %opening:-17
%opening%question:-23 %opening%refuse:26 %opening%staff:-18 %opening%thanks:34 %pay_day:-54 %pay_day%refuse:-23
%pay_day%season:-17 %pay_day%thanks:-24 %phone:-47 %phone%staff:-14 %phone%thanks:31 %place:-70 %place%staff:-17
%place%thanks:14 %question:-36 %question%shift_it:-19 %question%thanks:139 %question%who:-31 %refuse:-181
%refuse%season:-14 %refuse%smoke_smell:15 %refuse%staff:24 %refuse%start_again:29 %refuse%thanks:15
%refuse%wrong_one:38 %season:141 %season%shift_it:-21 %shift_it:-79 %smoke_smell:-36 %smoke_smell%wrong_one:14
%staff:49 %staff%thanks:63 %staff%wrong_one:20 %start_again:-35 %start_again%thanks:32 %thanks:403
%thanks%wrong_one:37 %who:-42 %wrong_one:-18 @?:-54 @after_visit:-187 @car:-38 @confirm:-92 @confirm_stop:-25
@day:-45 @later:-55 @nothing:241 @nothing_thanks:19 @odometer:-17 @offers:-141 @reading:-54 @time:-34 @times:-216
@walk_in:-146 ^_$:-34 ^_all:-36 ^_anytime:21 ^_appreciate:58 ^_are:-54 ^_asi:-15 ^_ayuda:-41 ^_bendiciones:60
^_bless:28 ^_buen:106 ^_buenas:22 ^_can:-14 ^_cool:20 ^_de:16 ^_dios:19 ^_do:-75 ^_el:-23 ^_end:-14 ^_estoy:-27
^_everything:-27 ^_excelente:-25 ^_feliz:124 ^_good:143 ^_got:70 ^_gracias:111 ^_great:20 ^_hasta:42 ^_have:89
^_hello:140 ^_help:-37 ^_hi:-24 ^_how:-23 ^_i:-49 ^_id:-77 ^_im:-123 ^_info:-64 ^_is:-14 ^_it:-39 ^_kindly:-17
^_la:-26 ^_les:37 ^_me:-31 ^_might:-34 ^_mil:40 ^_much:64 ^_muchas:27 ^_muy:56 ^_no:38 ^_not:-35 ^_ok:53 ^_opt:-45
^_para:17 ^_please:-27 ^_que:74 ^_revoke:-37 ^_sale:38 ^_se:37 ^_si:-80 ^_sounds:-33 ^_stop:-16 ^_take:24 ^_te:15
^_thank:157 ^_thanks:153 ^_that:38 ^_the:-15 ^_thumbsup:25 ^_todo:-14 ^_un:22 ^_ustedes:14 ^_were:-42 ^_what:-35
^_will:-17 ^_wrong:-14 ^_y:-14 ^_ya:-36 ^_yes:-26 ^_you:141 ^_your:53 ^_youre:39 a:58 a__day:43 a__of:-16 a__one:53
a_blessed:21 a_good:58 a_la:15 a_las:-19 about:-15 after:-15 agradece:93 agradece_$:53 agradezco:33 ahi:-21 al:-18
all:62 all_$:100 already:-22 amable:16 amable_$:14 amables:16 an:-23 and:-69 and__you:-29 any:-14 anytime:21
anyway:-91 anyway_$:-91 appreciate:-18 appreciate_it:21 are:-82 are__guys:-15 are_you:-80 as:56 as_well:62 asi:-27
at:-35 atencion:-34 avisar:36 aviso:18 aviso_$:20 awesome:24 ayuda:-21 ayuda_$:-33 back:24 be:-62 be_there:-24
been:-21 being:18 bendiciones:43 bendiciones_$:26 bendiga:16 bendiga_$:16 best:51 best_$:53 bien:-28 bien_gracias:-52
bless:44 blessed:21 bonito_dia:30 buddy:16 buen:168 buen_dia:100 buenas:22 bueno:-18 but:-137 but_ill:-26 but_im:-17
but_no:-51 by:-32 by_the:-15 call:14 can:-27 car:-25 care_of:-18 carro:-30 christmas:60 cita:-29 cliente:26 cobro:-16
come:-16 como__que:14 como_a:14 cool:20 day:23 day_$:35 de_la:-16 de_que:26 de_semana:35 de_todos:27 del:-21
desde:-14 despues:-14 dia:90 dia_$:91 did:-40 did_that:-15 dios__bendiga:22 do:-165 do_$:-40 do__guys:-16
do__have:-38 do_you:-84 doble:-16 done:-21 dont_stop:18 dos:-14 el:-74 el__hasta:16 el_carro:-20 en:-64 end:-16
end_$:-14 entonces:16 entonces_$:16 es:-49 esta:-27 este:-17 estoy:-48 estoy_bien:-36 everything:14 everything_$:41
everything_was:-16 excelente:-25 favor:-31 favor_$:-29 feliz:121 fin:110 fin__semana:43 fin_de:43 fine_$:21 fixed:-33
folks:22 for:21 for__me:77 for_a:-17 for_nothing:-97 for_now:-22 for_the:32 from:-25 get:-23 go:-16 god:22 going:-24
going_to:-15 good:90 good_$:-21 good_to:35 got:58 got_it:82 gracias:96 gracias__avisar:36 gracias__el:51
gracias__la:21 gracias__no:-14 gracias__todo:31 gracias_por:47 great:67 great_$:58 guy:-24 guy_$:-20 guys:71
guys_$:71 guys_open:-17 happy:91 hasta:58 have:57 have__wrong:-17 have_a:147 have_the:-17 hay:37 hay__que:29
hay_problema:18 heads:44 heads_up:45 hello:140 help:-36 help_$:-36 here:-29 here_$:-27 hi:-24 holidays:55 how:-35
how_much:-39 i:-104 i__to:-20 i_have:-15 i_would:-14 id:-81 idea:-57 igual:23 igualmente:57 ill:-69 ill__it:-27
ill__there:-18 ill__you:-17 ill_be:-18 ill_let:-17 ill_take:-25 im:-153 im__for:-17 im_good:-83 in:-33 in_$:-19
info:-55 info_$:-55 is:-59 is__of:22 is_been:-19 is_good:-15 it:-28 it_$:79 it__been:-18 it__my:-18 it_is:-36
it_to:-23 it_was:27 jaja:23 jaja_no:27 job:-21 joven:24 joven_$:44 just:-19 keep:35 kind:24 kind_of:17 kindly:-25
know:57 know_$:25 la:-65 la__es:-14 la_atencion:-24 la_persona:18 las:-36 last:-29 les:76 let:-22 like:-23 lo:-21
lol_$:-15 los__en:16 luego:38 made:29 mall:-14 manana:-21 many:44 mas:-44 me:-130 me_$:-15 me_again:-15 me_in:17
me_trataron:17 mejor_$:20 memorial:-16 memorial_day:-16 metal:-16 mi:-63 might:-34 mil:37 mil_gracias:38 mind:40
mind_$:42 month:-14 more:-15 much:20 much_$:-14 much_for:-16 muchas:14 muchas__por:20 muchas_gracias:14 mucho:-15
muy:28 muy_amable:26 my:-114 my_day:16 nada:-77 nada_$:-71 nao:-25 navidad:66 need_to:18 new_year:14 night:76
night_$:75 no:-95 no_$:-54 no__de:28 no__la:27 no__problema:19 no__to:26 no__yo:26 no__you:-41 no_gracias:-110
no_hay:48 no_me:-17 no_need:20 no_soy:44 no_thank:-41 no_thanks:-108 no_worries:188 nomas:-16 not:-66 nothing:-99
nothing_$:-97 now:-16 now_$:18 number:-17 of:36 of_you:90 ok:45 ok_$:-51 ok__you:-72 on:-63 on_the:-24 one:69
one_$:66 open:-45 open_on:-20 open_today:-16 opt:-45 opt_out:-36 orden:21 other:18 out:27 out_$:51 owe:18 paint:-18
pare:-14 perfect:23 pero__es:20 pero_no:-28 phone:-15 please:-75 please_and:-32 por__el:-19 por_avisar:36 por_el:48
por_favor:-30 por_la:16 por_lo:17 por_nada:-84 por_todo:31 precio:-14 problem:23 problem_$:23 problema:33 puede:-18
que:47 que_tenga:25 queda_$:14 quedo:-15 remove:-16 revoke:-37 revoke_$:-37 right:14 rock:97 sale:36 se_le:34
se_lo:-19 see:44 see__then:-51 see_you:-52 semana:26 semana_$:41 set:-22 should__be:-18 si:-105 si_gracias:-65
si_senor:17 sigue:-15 so:46 so_much:22 son:31 soy:43 soy__persona:20 soy_la:20 soy_yo:27 still:-31 still__the:-16
super:44 take:-21 take_it:-18 taken:-18 taken__of:-18 taken_care:-18 tan:-15 te:24 tenga:25 tenga__dia:25 tengan:14
text:-55 thank_you:-41 thanks:-28 thanks_$:-46 thanks__nothing:-97 thanks__the:38 thanks_a:23 thanks_but:-70
thanks_for:114 thanksgiving:25 thanksgiving_$:25 that_$:-60 that__be:-28 that_in:42 that_is:56 that_would:-28 the:-19
the__up:48 the_best:64 the_heads:48 the_mall:-14 the_other:18 then:-54 then_$:-44 there:-38 there_$:-27 this:-29
though:-33 though_$:-33 thumbsup:25 thumbsup_$:25 time:-28 to__in:-15 to__it:-14 to_know:41 to_me:-14 to_my:-22
to_the:17 to_you:102 today:-20 today_$:-19 todo:16 todo_$:41 todo__con:15 todos:38 too:135 too_$:171 too_much:-32
trataron:17 try:-111 un:-34 una:-20 up_$:53 up_my:-22 ustedes:46 ustedes_$:33 vaya:16 way:-17 we:-36 weekend:69
weekend_$:64 well:52 well_$:52 went:-16 were:-22 what:-14 what_is:-15 who:-19 wifi:-14 will_do:-53 with:-14
worries:188 would:-31 would_be:-29 wrong:-30 wrong_$:-16 y:-48 ya:44 ya_$:97 ya_lo:-22 ya_los:16 ya_no:-17 yeah:26
yeah_$:36 yes:-78 yes_$:-51 yes_it:28 yes_please:-18 yo:20 you:111 you__for:-15 you__me:-16 you__much:21
you__open:-18 you__text:-15 you__the:-29 you__today:-17 you_a:-16 you_all:125 you_folks:22 you_guys:67 you_have:-54
you_open:-47 you_text:-32 you_then:-51 your:23 youre:39
"""
