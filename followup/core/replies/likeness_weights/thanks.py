"""What speaks for and against `thanks`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "thanks"
BIAS = -121
WEIGHTS = """\
#abaj:-18 #acia:78 #acio:-19 #adec:98 #adez:29 #agra:136 #aint:-19 #alme:63 #alre:-19 #alud:151 #amab:27 #amil:24
#anan:-20 #anda:-19 #ando:-44 #anks:133 #ante:-22 #anyw:-79 #apol:22 #appr:49 #appy:87 #arda:-19 #aron:19 #arro:-30
#asen:30 #asta:52 #atch:23 #ated:33 #aten:-37 #atio:-20 #ator:22 #atro:36 #avid:60 #avis:44 #avor:-33 #awes:19
#ayud:-19 #back:18 #bajo:-19 #been:-20 #bend:57 #best:45 #bien:-25 #blem:40 #bles:150 #blig:37 #bsup:21 #buen:154
#carr:-28 #cele:-29 #ches:23 #chis:45 #chri:55 #cias:81 #ciat:61 #cion:-24 #cita:-34 #clie:21 #cobr:-19 #comp:-18
#cord:22 #crib:-32 #cual:-18 #dato:33 #days:40 #dece:81 #dezc:29 #dici:30 #diga:19 #done:-20 #eads:38 #eady:-20
#ease:-66 #ecia:48 #edes:40 #eeke:63 #eers:71 #eken:63 #elen:-24 #eliz:114 #elli:24 #ello:122 #eman:20 #enas:20
#enci:-28 #enga:38 #ente:78 #erad:49 #eres:-18 #erfe:25 #erry:56 #erte:21 #esom:19 #essi:78 #esta:-53 #este:-21
#esto:-50 #etti:39 #evok:-33 #exce:-23 #ezco:29 #fami:24 #faro:20 #favo:-33 #fect:25 #feli:108 #fies:22 #fixe:-30
#folk:18 #fore:-19 #from:-22 #givi:32 #goin:-22 #good:92 #grac:81 #grad:132 #grea:59 #gual:69 #guys:64 #habl:-28
#hace:-22 #hank:126 #happ:86 #hast:51 #have:52 #head:28 #hell:125 #help:-31 #here:-66 #hing:-81 #holi:47 #hone:-20
#houg:-24 #hris:55 #humb:19 #iate:61 #icio:19 #idad:54 #iday:39 #idea:-46 #iero:-18 #ight:40 #igua:67 #ilia:24
#illa:-32 #imag:-24 #indl:-22 #info:-50 #ings:71 #ione:31 #irle:19 #isar:40 #isim:54 #istm:55 #ivin:30 #ixed:-30
#jaja:19 #jove:21 #keep:30 #kend:63 #know:50 #ksgi:24 #lant:-19 #last:-27 #leas:-65 #lema:22 #lent:-26 #less:130
#lett:31 #lida:47 #lien:22 #lige:37 #like:-20 #ling:22 #llas:-18 #llin:24 #lmen:63 #logi:22 #look:70 #lrea:-19
#ludo:130 #lueg:35 #mabl:27 #made:25 #mage:-24 #many:38 #mber:-25 #mbsu:21 #ment:35 #mess:-42 #migh:-27 #mili:24
#mind:21 #modo:24 #more:-18 #mori:-18 #move:-22 #much:69 #nada:-67 #nana:-20 #navi:60 #ncio:-32 #nder:-24 #ndic:27
#ndig:20 #ndly:-22 #nigh:63 #ning:-25 #nksg:24 #noch:23 #noth:-99 #nter:35 #nton:23 #nyti:18 #nywa:-79 #oble:28
#obli:37 #oche:22 #odos:58 #oger:18 #oing:-25 #okin:73 #olid:47 #olks:18 #olog:22 #ones:28 #ooki:73 #open:-46
#orda:26 #orio:23 #orri:167 #othi:-88 #ough:-20 #ould:-38 #oure:34 #oven:18 #over:-25 #pare:-23 #pase:20 #perf:25
#phon:-20 #plea:-58 #polo:22 #ppre:29 #prec:37 #prob:41 #pued:-27 #pues:-19 #quie:-40 #quit:-19 #raci:80 #rade:130
#rado:46 #rdat:23 #read:-21 #reat:63 #reci:41 #reco:18 #revo:-33 #rfec:25 #ribe:-19 #ries:181 #ring:-26 #rist:55
#robl:41 #rock:86 #roge:21 #rong:-25 #room:-18 #rrie:167 #sale:30 #salu:151 #scri:-37 #sema:20 #semo:132 #sgiv:24
#sima:54 #sing:66 #spon:-19 #ssin:78 #star:-26 #sted:49 #stil:-28 #stma:55 #stoy:-43 #supe:38 #take:-39 #tard:-33
#tede:41 #tell:31 #tenc:-31 #tend:-20 #teng:30 #tera:48 #text:-76 #than:121 #then:-46 #ther:-32 #thin:-97 #this:-26
#thou:-24 #thum:19 #till:-32 #ting:44 #tion:-26 #tire:-22 #tmas:55 #toda:-19 #todo:44 #tori:22 #tron:34 #ttin:48
#ualm:49 #udos:130 #uede:-30 #uego:27 #uert:21 #uier:-30 #umbs:19 #unch:20 #uper:38 #uste:57 #vend:-28 #very:23
#vida:60 #ving:27 #visa:33 #voke:-33 #week:58 #well:48 #were:-22 #weso:19 #worr:178 #woul:-30 #wron:-25 #xcel:-23
#yeah:24 #your:51 #ytim:18 #yuda:-18 #yway:-79 %again_later%agree:32 %again_later%bring:-23 %again_later%call_off:18
%again_later%elsewhere:-18 %again_later%on_way:-20 %again_later%refuse:115 %again_later%season:-31
%again_later%shift_it:-40 %again_later%start_again:18 %again_later%thanks:98 %agree%away:50 %agree%busy:-24
%agree%car_part:-21 %agree%how_long:30 %agree%message:-24 %agree%opening:78 %agree%question:20 %agree%refuse:-36
%agree%staff:25 %agree%thanks:-118 %agree%wrong_one:19 %away%call_off:-18 %away%leave_me:-33 %away%refuse:-26
%away%staff:-18 %away%thanks:-30 %bad:-89 %bad%staff:-39 %bad%thanks:-26 %bring:-127 %bring%call_off:-37
%bring%refuse:-66 %bring%thanks:-50 %bring%wrong_one:19 %busy:-50 %busy%thanks:-24 %call_off%gone_car:-22
%call_off%on_way:-30 %call_off%refuse:-60 %call_off%staff:24 %call_off%thanks:-279 %call_off%wrong_one:22 %car:-94
%car%gone_car:-19 %car_part:-143 %car_part%question:-21 %car_part%refuse:-46 %car_part%start_again:18
%car_part%thanks:-47 %do_it:-139 %do_it%gone_car:-23 %do_it%refuse:-53 %do_it%thanks:-82 %doubt:-42 %doubt%refuse:-19
%doubt%thanks:-21 %elsewhere:-26 %elsewhere%shift_it:-23 %fails:-92 %fails%leave_me:-22 %fails%refuse:-26 %family:59
%family%refuse:19 %family%thanks:29 %gone_car:-100 %gone_car%thanks:-24 %how_long:-36 %how_long%opening:-37
%how_long%question:-20 %how_long%refuse:36 %how_long%thanks:63 %leave_me:-141 %leave_me%wrong_one:19 %lift%refuse:19
%machine:-37 %meaning:-23 %message:-97 %message%refuse:28 %message%start_again:-39 %message%thanks:25 %money:-66
%money%pay_day:-18 %money%question:-27 %money%refuse:24 %noise:-49 %odometer:-85 %on_way:-86 %on_way%refuse:-27
%opening%question:-20 %opening%refuse:22 %opening%thanks:29 %pay_day:-49 %pay_day%refuse:-20 %pay_day%thanks:-21
%phone:-45 %phone%thanks:26 %place:-63 %question:-34 %question%shift_it:-18 %question%thanks:121 %question%who:-28
%refuse:-154 %refuse%staff:18 %refuse%start_again:27 %refuse%wrong_one:30 %season:134 %season%shift_it:-19
%shift_it:-73 %smoke_smell:-34 %staff:43 %staff%thanks:52 %start_again:-32 %start_again%thanks:30 %thanks:345
%thanks%wrong_one:30 %who:-38 @?:-46 @after_visit:-176 @car:-33 @confirm:-72 @confirm_stop:-22 @day:-40 @later:-50
@nothing:198 @offers:-128 @reading:-50 @time:-32 @times:-196 @walk_in:-141 ^_$:-29 ^_all:-34 ^_anytime:18
^_appreciate:52 ^_are:-49 ^_ayuda:-35 ^_bendiciones:52 ^_bless:25 ^_buen:96 ^_buenas:20 ^_dios:21 ^_do:-66 ^_el:-21
^_estoy:-24 ^_everything:-22 ^_excelente:-23 ^_feliz:115 ^_good:137 ^_got:63 ^_gracias:105 ^_great:21 ^_hasta:37
^_have:80 ^_hello:125 ^_help:-32 ^_hi:-20 ^_how:-20 ^_i:-44 ^_id:-67 ^_im:-111 ^_info:-55 ^_it:-35 ^_la:-25 ^_les:31
^_me:-28 ^_might:-27 ^_mil:34 ^_much:58 ^_muchas:24 ^_muy:48 ^_no:46 ^_not:-32 ^_ok:52 ^_opt:-40 ^_please:-23
^_que:71 ^_revoke:-33 ^_sale:32 ^_se:31 ^_si:-74 ^_sounds:-28 ^_take:20 ^_thank:130 ^_thanks:139 ^_that:32
^_thumbsup:21 ^_un:19 ^_were:-38 ^_what:-32 ^_ya:-34 ^_yes:-25 ^_you:129 ^_your:46 ^_youre:34 a:46 a__day:37
a__one:46 a_good:52 a_las:-18 agradece:83 agradece_$:45 agradezco:29 ahi:-19 all:56 all_$:93 already:-19 an:-21
and:-59 and__you:-24 anytime:18 anyway:-79 anyway_$:-79 appreciate_it:18 are:-72 are_you:-70 as:51 as_well:57 asi:-24
at:-33 atencion:-31 avisar:33 aviso_$:19 awesome:19 ayuda:-18 ayuda_$:-28 back:21 be:-51 been:-20 bendiciones:37
bendiciones_$:23 bendiga:20 bendiga_$:20 best:45 best_$:47 bien:-28 bien_gracias:-46 bless:39 bonito_dia:27 buen:154
buen_dia:88 buenas:20 but:-120 but_ill:-24 but_no:-43 by:-28 can:-25 car:-23 carro:-27 christmas:55 cita:-26
cliente:21 day:18 day_$:28 de_que:23 de_semana:34 de_todos:24 del:-19 dia:77 dia_$:78 did:-35 dios__bendiga:25
do:-148 do_$:-37 do__have:-33 do_you:-75 done:-18 el:-68 en:-58 es:-45 esta:-25 estoy:-43 estoy_bien:-32
everything_$:35 excelente:-23 favor:-28 favor_$:-27 feliz:114 fin:105 fin__semana:41 fin_de:41 fine_$:19 fixed:-30
folks:18 for__me:71 for_nothing:-86 for_now:-20 for_the:28 from:-22 get:-20 god:19 going:-22 good:92 good_to:32
got:53 got_it:74 gracias:81 gracias__avisar:33 gracias__el:45 gracias__la:18 gracias__todo:27 gracias_por:47 great:63
great_$:53 guy:-22 guy_$:-19 guys:64 guys_$:62 happy:87 hasta:51 have:52 have_a:133 hay:30 hay__que:25 heads:38
heads_up:39 hello:125 help:-31 help_$:-31 here:-26 here_$:-24 hi:-20 holidays:50 how:-30 how_much:-31 i:-91 id:-71
idea:-46 igual:20 igualmente:49 ill:-58 ill__it:-25 ill_take:-24 im:-138 im_good:-74 in:-27 info:-48 info_$:-48
is:-56 is__of:18 it:-26 it_$:75 it_is:-33 it_to:-22 it_was:21 jaja:20 jaja_no:22 job:-18 joven:21 joven_$:39 keep:30
kind:20 kindly:-22 know:54 know_$:24 la:-62 la_atencion:-21 las:-33 last:-25 les:65 let:-19 like:-20 lo:-18 luego:35
made:25 manana:-20 many:38 mas:-39 me:-116 mi:-57 might:-27 mil:32 mil_gracias:33 mind:35 mind_$:36 much:18 muy:24
muy_amable:22 my:-103 nada:-66 nada_$:-61 nao:-22 navidad:60 night:71 night_$:70 no:-70 no_$:-46 no__de:24 no__la:24
no__to:22 no__yo:22 no__you:-40 no_gracias:-100 no_hay:40 no_soy:37 no_thank:-39 no_thanks:-91 no_worries:185 not:-60
nothing:-88 nothing_$:-86 of:27 of_you:76 ok:45 ok_$:-42 ok__you:-64 on:-58 on_the:-22 one:59 one_$:57 open:-42
open_on:-18 opt:-41 opt_out:-32 orden:18 out:27 out_$:48 perfect:20 pero_no:-23 please:-64 please_and:-27
por_avisar:33 por_el:43 por_favor:-27 por_nada:-71 por_todo:27 problem:19 problem_$:19 problema:27 que:45
que_tenga:27 revoke:-33 revoke_$:-32 rock:86 sale:30 se_le:31 see:40 see__then:-44 see_you:-45 semana:25 semana_$:39
set:-21 si:-96 si_gracias:-60 so:40 so_much:20 son:27 soy:36 soy_yo:22 still:-27 super:38 take:-22 te:22 tenga:27
tenga__dia:27 text:-51 thank_you:-50 thanks:-23 thanks_$:-47 thanks__nothing:-86 thanks__the:35 thanks_a:21
thanks_but:-60 thanks_for:103 thanksgiving:24 thanksgiving_$:25 that_$:-52 that__be:-26 that_in:37 that_is:48
that_would:-25 the:-22 the__up:42 the_best:56 the_heads:42 then:-46 then_$:-37 there:-28 there_$:-18 this:-26
though:-30 though_$:-30 thumbsup:21 thumbsup_$:21 time:-24 to_know:37 to_my:-21 to_you:95 todo_$:36 todos:34 too:120
too_$:154 too_much:-30 try:-97 un:-31 una:-19 up_$:46 up_my:-19 ustedes:41 ustedes_$:29 we:-31 weekend:63
weekend_$:59 well:48 well_$:48 were:-21 will_do:-49 worries:185 would:-29 would_be:-26 wrong:-25 y:-44 ya:36 ya_$:85
ya_lo:-19 yeah:24 yeah_$:32 yes:-69 yes_$:-44 yes_it:22 you:89 you__the:-24 you_all:114 you_folks:19 you_guys:60
you_have:-48 you_open:-42 you_text:-30 you_then:-44 your:18 youre:34
"""
