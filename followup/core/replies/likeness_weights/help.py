"""What speaks for and against `help`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "help"
BIAS = -173
WEIGHTS = """\
#aben:-44 #abla:-25 #acar:46 #achi:-26 #acio:54 #algo:34 #alki:57 #alle:55 #ally:26 #also:27 #anda:-40 #anic:38
#anoc:-28 #anto:-48 #ants:57 #arag:79 #arte:-45 #aski:49 #ated:-47 #auto:-59 #aved:42 #avor:25 #ayud:200 #blar:-56
#caro:42 #cell:60 #celo:30 #cess:-35 #chin:-28 #cibi:70 #cion:46 #come:-36 #comi:40 #como:62 #comp:36 #cons:35
#crib:60 #cuan:-66 #culp:59 #deje:-36 #dent:108 #disc:48 #dond:68 #dont:-36 #eall:34 #eces:-50 #ecib:69 #efon:55
#egoc:63 #egue:29 #elef:55 #empr:32 #engo:37 #enti:107 #eres:45 #erio:-33 #eron:59 #escr:87 #essa:-33 #esta:-53
#este:95 #esto:227 #favo:25 #find:-47 #fono:55 #form:72 #gano:-28 #gara:79 #gave:29 #goci:63 #guar:29 #guen:29
#guie:35 #gust:32 #guys:30 #haga:-35 #hago:122 #hani:28 #help:212 #here:-91 #hese:149 #hich:38 #hine:-27 #hing:-28
#hora:-36 #iben:84 #ibir:64 #idea:-60 #iden:92 #iero:77 #igui:48 #illa:-35 #info:330 #ious:-37 #ique:31 #iscu:59
#isnt:-40 #just:29 #keep:-30 #king:111 #know:83 #lace:33 #lefo:55 #legi:69 #legu:34 #lkin:57 #ller:63 #long:-36
#luga:55 #lvid:-25 #mach:-26 #maci:79 #make:70 #many:-28 #mate:-48 #mber:70 #mech:28 #ment:-28 #mero:45 #ming:37
#mpan:47 #mpre:31 #much:-65 #name:40 #ndar:-37 #nden:26 #ndin:25 #nece:-40 #nego:63 #nfor:78 #nsig:42 #ntac:25
#ntif:116 #nuev:-35 #numb:72 #nume:52 #ocio:63 #olvi:-28 #omat:-49 #omin:38 #ompa:44 #onde:67 #onsi:42 #onta:25
#orde:-29 #orma:73 #orry:48 #ould:38 #ours:66 #pany:36 #para:56 #part:-55 #peak:-51 #plac:31 #pres:27 #pued:-60
#qued:-31 #ques:41 #quie:111 #rage:79 #rata:-51 #rden:-29 #rdon:39 #reci:64 #resa:32 #ribe:77 #riou:-36 #rmac:80
#rong:-40 #rsel:72 #sabe:-57 #saca:42 #salg:37 #sary:-35 #save:46 #scam:80 #scri:60 #scul:59 #self:82 #seri:-36
#shop:135 #sigu:44 #skin:49 #sorr:48 #spea:-51 #ssar:-35 #stan:-37 #stop:-54 #stos:78 #tact:25 #take:-30 #tall:62
#tele:54 #tell:27 #teng:27 #that:-70 #ther:-27 #thes:149 #thin:-50 #this:128 #tien:-44 #tifi:41 #tify:74 #time:-42
#ting:44 #toma:-52 #town:-29 #trat:-52 #turn:47 #tuvi:33 #uand:-29 #uant:-37 #uard:29 #ueda:-25 #uedo:-62 #ugar:55
#uien:99 #uier:46 #ulpe:55 #umbe:72 #umer:52 #urse:72 #uste:25 #usto:32 #utom:-49 #uvie:33 #vier:27 #wait:45 #want:64
#when:-48 #wher:-36 #whic:38 #whom:64 #whos:27 #with:42 #woul:31 #wron:-38 #your:39 #yuda:200
%again_later%how_long:35 %again_later%lift:43 %again_later%question:38 %again_later%who:88 %agree%call_off:26
%agree%question:43 %agree%refuse:29 %agree%start_again:30 %agree%who:93 %away:-26 %away%leave_me:56 %bad%question:-51
%bring%call_off:58 %bring%leave_me:-48 %bring%who:-107 %call_off:-27 %call_off%family:-58 %call_off%gone_car:62
%call_off%leave_me:57 %call_off%message:89 %call_off%phone:-43 %call_off%place:62 %call_off%question:113
%call_off%refuse:-58 %call_off%who:-91 %call_off%wrong_one:26 %car:-33 %car%who:27 %car_part:-82
%car_part%elsewhere:39 %car_part%question:-73 %do_it%leave_me:-25 %do_it%place:47 %do_it%question:65 %do_it%staff:-30
%do_it%who:-30 %doubt:-48 %doubt%question:-37 %doubt%refuse:-31 %doubt%who:-25 %elsewhere:171 %elsewhere%family:47
%elsewhere%machine:55 %elsewhere%place:-79 %elsewhere%question:65 %elsewhere%refuse:-56 %elsewhere%staff:55
%elsewhere%who:-90 %elsewhere%wrong_one:-59 %fails:-31 %fails%leave_me:32 %fails%message:27 %fails%question:29
%family:26 %family%odometer:-37 %family%place:46 %family%question:72 %family%refuse:-65 %gone_car%question:43
%gone_car%refuse:69 %gone_car%who:46 %gone_car%wrong_one:34 %how_long:-59 %how_long%lift:44 %how_long%question:-32
%how_long%who:67 %leave_me:-78 %leave_me%message:-54 %leave_me%question:166 %leave_me%refuse:27 %leave_me%who:-133
%leave_me%wrong_one:-81 %lift%question:28 %lift%who:42 %machine:-76 %meaning:-116 %meaning%question:-66
%message%on_way:30 %message%place:28 %message%question:259 %message%who:41 %money:-99 %money%question:-73 %noise:-30
%odometer%phone:44 %odometer%place:42 %odometer%question:63 %odometer%wrong_one:25 %on_way:-52 %on_way%question:-56
%opening:-46 %opening%question:-32 %phone:-25 %phone%question:35 %phone%staff:-43 %phone%who:-43 %place:-91
%place%question:-57 %place%who:-41 %place%wrong_one:77 %question:176 %question%shift_it:-27 %question%staff:35
%question%who:193 %question%wrong_one:257 %refuse:-76 %refuse%staff:33 %refuse%who:-77 %shift_it:-29 %staff%who:-56
%staff%wrong_one:-38 %thanks:-52 %who:366 %wrong_one:-42 @?:137 @after_visit:-67 @car:-26 @confirm:-98
@nothing_info:42 @odometer:43 @offers:-51 @reading:-96 @time:-43 @times:-116 @walk_in:-53 ^_and:104 ^_ayuda:205
^_como:189 ^_de:186 ^_disculpe:49 ^_do:52 ^_donde:-122 ^_el:-28 ^_en:-41 ^_help:211 ^_how:44 ^_i:-87 ^_im:-40
^_info:236 ^_is:47 ^_me:-63 ^_no:-60 ^_para:-50 ^_please:-43 ^_por:-35 ^_quien:98 ^_quienes:49 ^_remind:28 ^_sorry:60
^_this:-78 ^_unsubscribe:-44 ^_wait:42 ^_what:62 ^_where:-25 ^_who:-88 ^_whose:27 ^_why:-103 ^_y:42 a:-101 a_como:-29
about_$:58 about_this:-57 also:27 am:66 am_$:-32 am__talking:59 am_i:105 and:110 and__are:118 and_you:110 anoche:-28
anoche_$:-28 any:-34 are:101 are_$:65 are__guys:50 are__in:-25 are_you:50 asking:49 asking_$:39 at:-41 automated:-46
ayuda:201 ayuda_$:196 by:-26 can:-40 can__talk:-57 can_i:-37 cancelo:30 cell:60 cell_$:61 come:-31 come_$:-27
coming:41 como:62 como__de:34 como__hago:83 como__mi:82 como__que:-38 como_le:83 como_me:56 como_no:-52
como_saben:-41 company:36 con:-39 con__hablo:25 con__tengo:26 cuando:-29 de:60 de__es:31 de__me:57 de__son:41
de__taller:66 de_donde:209 de_la:26 de_que:122 de_una:-72 dejo_de:36 did__find:-44 did__get:80 did_you:28 dis:32
dis_$:32 disculpe:55 do_$:-28 do__get:-80 do__keep:-28 do__know:113 do__turn:32 do_i:138 do_you:-86 donde:68
donde__el:-41 donde__escriben:47 donde_es:-34 donde_me:57 dont:-36 dont__any:-36 dont__this:42 dont_have:33
dont_know:-89 el:-101 el__anoche:-28 el__de:-33 el_de:25 el_gusto:34 el_taller:-32 en:-125 en__parte:-36 en_que:-41
eres:43 es:162 es_$:66 es_el:-27 es_este:108 escriben:84 escriben_$:88 eso:-50 estan:-44 estan_$:-32 este:100
este_$:86 este__quien:27 esto:151 esto_$:141 estos:78 estos_mensajes:33 favor:26 favor_$:33 find:-47 for:-100
for_$:-42 from_$:27 gano:-28 garage:79 gave:29 gave_you:30 get:69 get__number:47 get__this:34 get__you:-58 get_my:118
get_off:35 get_there:-44 get_to:-58 guardado:29 gusto:33 gusto_$:33 guy:-27 guys:30 guys_$:47 habla_$:25 hablar:-55
haga:-32 hago:122 hago_para:105 have_my:31 have_to:-27 hay:-29 help:212 help_$:217 his:-26 how__are:-39 how__i:156
how__you:69 how_come:-28 how_did:52 how_do:118 how_long:-42 how_many:-27 how_much:-60 i:90 i__know:-92 i__out:45
i__there:-44 i__these:118 i__to:-76 i__you:110 i_am:-37 i_dont:-57 i_get:-87 i_know:130 i_make:30 i_speak:-64
i_stop:47 i_talk:-60 i_talking:59 i_turn:32 idea:-60 identify:74 identify__please:63 identify_yourself:63 if:27
im:-39 in:-54 in_$:-33 in_my:25 info:252 info_$:210 info_please:47 informacion:80 informacion_$:82 is:124 is__a:44
is__about:56 is__and:43 is__me:32 is__number:37 is__really:48 is__serious:-32 is_a:-33 is_asking:27 is_texting:35
is_that:-27 is_the:-27 is_this:266 is_your:-30 isnt:-40 it:-65 it_is:-30 just:29 keep:-30 keep__me:-28
keep_texting:-28 know:77 know_$:60 know__you:-47 know_who:-47 know_you:114 la:-65 le:55 le__para:91 le_hago:83
lleguen:37 lo:-116 long:-43 los:-26 lugar:55 machine:-26 machine_$:-26 make:70 make_these:38 mal:-26 manden:27
manden_$:46 many:-28 mas:-26 me__de:49 me_escriben:84 me_lo:-44 me_manden:31 me_who:50 mensajes_$:32 mi:34
mi_numero:33 mi_telefono:49 mil:-25 much:-61 much_$:-27 my:126 my_cell:62 my_info:41 my_number:53 name:35
necessary:-35 necessary_$:-35 negocio:63 ni:-28 no:-41 no_$:-61 no__guardado:27 no__manden:39 no__quien:-54
no_idea:-40 no_me:54 no_se:-108 no_tengo:36 now:-34 now_$:-30 number:75 number_$:30 number__this:30 number_is:28
numero:59 numero_$:28 numero_de:-25 numero_es:49 o__de:26 o_el:27 of_this:39 off:39 off_$:47 on:-33 opt:44 opt__of:47
opt_out:45 or_the:39 other:30 out:28 out_of:39 para:66 para__es:-37 para__no:62 para_no:35 para_que:36 parte:-33
place:42 please_$:61 por:-37 por_favor:32 por_que:-32 puedo:-53 puedo_hablar:-41 que:-111 que_$:-37 que__de:-26
que__es:173 que__me:120 que__no:28 que__que:25 que__son:59 que_es:-89 que_me:-54 que_no:38 que_numero:49
que_parte:-31 que_taller:88 quien:104 quien__lo:-31 quien__y:32 quien_es:124 quien_habla:30 quien_hablo:25
quien_tengo:26 really:34 recibir:72 saben:-44 salgo:38 salgo__la:38 salgo_de:38 saved:42 se:-118 se__es:-45
se_quienes:-64 serious:-36 serious_$:-35 shop:136 shop__this:34 shop_is:47 son:108 son_$:90 sorry:48 speak:-64
speak_to:-64 stop:-48 stop_$:-85 stop_these:40 talk:-61 talk_to:-61 talking:56 talking_to:59 taller:58 taller_$:-55
tanto:-25 telefono:55 telefono_$:47 tell:27 tell_me:28 tengo:37 tengo__gusto:34 tengo__me:-40 tengo_el:33
tengo_guardado:27 tengo_quien:-40 texts_$:-25 that:-70 the:-64 the__place:26 the_garage:26 the_shop:37 the_tire:25
there:-45 there_$:-42 these:149 these_$:37 these_off:52 this:128 this_$:151 this__the:45 this_a:28 this_about:56
this_is:-46 this_isnt:-36 this_number:36 this_the:29 time:-33 to__this:-49 to_about:-56 to_know:57 to_make:33
to_you:-60 turn:52 una:-80 va:-29 wait:35 wants:57 wants__know:57 wants_to:57 what__i:32 what__is:68 what__that:-26
what__this:84 what__you:-71 what_company:37 what_did:-61 what_do:34 when:-46 where:-35 where_did:41 where_is:-26
which:39 which_shop:68 who:61 who__are:-49 who__i:-40 who__it:40 who__the:-62 who__this:34 who__to:49 who__you:129
who_am:76 who_are:93 who_can:-64 who_dis:32 who_is:136 who_this:29 who_you:-83 whom:64 whose:27 why:-102 why_$:-46
why_do:-26 with:43 with_$:46 won:-59 would:32 wrong:-38 wrong_number:-31 y:39 y__es:32 y_ustedes:28 ya:-42 ya_no:32
you:68 you_$:55 you__i:-26 you__my:152 you__texting:-28 you_are:73 you_find:-44 you_get:137 you_guys:31 you_in:-26
you_keep:-28 you_know:-26 you_my:26 your:-32 yourself:73 yourself_please:63
"""
