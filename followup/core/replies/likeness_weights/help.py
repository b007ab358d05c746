"""What speaks for and against `help`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "help"
BIAS = -194
WEIGHTS = """\
#aben:-49 #abla:-26 #acar:48 #achi:-31 #acio:53 #algo:37 #alki:63 #alle:57 #ally:29 #also:31 #anda:-42 #anic:44
#anoc:-31 #anto:-49 #ants:67 #arag:98 #arte:-49 #aski:57 #ated:-53 #atio:-25 #auto:-66 #aved:49 #avor:29 #ayud:230
#blar:-62 #body:-26 #caro:42 #carr:27 #cell:63 #celo:31 #cess:-40 #chin:-33 #cibi:72 #cion:45 #come:-40 #comi:58
#como:42 #comp:43 #cons:38 #crib:74 #cuan:-69 #culp:68 #deje:-38 #dent:118 #deso:-28 #dijo:-27 #disc:56 #dond:70
#dont:-38 #eall:37 #eces:-57 #ecib:69 #edes:27 #efon:61 #egoc:67 #egue:44 #ejen:-26 #elef:61 #empr:38 #engo:40
#enti:117 #eply:28 #eres:47 #erio:-41 #eron:62 #escr:91 #esor:-27 #espo:25 #essa:-38 #esta:-55 #este:99 #esto:245
#exti:32 #favo:29 #find:-55 #fono:61 #form:75 #gano:-31 #gara:98 #gave:32 #goci:67 #guar:31 #guen:45 #guie:37
#gust:36 #guys:33 #haga:-38 #hago:136 #hani:32 #help:238 #here:-84 #hese:164 #hich:44 #hine:-32 #hing:-30 #hora:-41
#iben:91 #ibir:63 #idea:-69 #iden:101 #iero:85 #igui:52 #illa:-39 #info:375 #ious:-44 #ique:35 #ires:-25 #iscu:68
#isnt:-43 #just:32 #keep:-30 #king:129 #know:82 #lace:37 #last:-28 #lefo:61 #legi:78 #lego:-28 #legu:49 #lind:-26
#lkin:63 #ller:65 #loca:-27 #long:-40 #luga:58 #lvid:-28 #mach:-31 #maci:83 #make:87 #mand:-33 #many:-30 #mate:-55
#mber:81 #mech:32 #ment:-29 #mero:42 #ming:55 #mpan:56 #mpre:37 #much:-76 #name:47 #ndar:-38 #ndin:27 #nece:-45
#nego:67 #nfor:81 #noch:-25 #nsig:46 #ntac:28 #ntif:128 #nuev:-38 #numb:84 #nume:51 #oche:-25 #ocio:67 #olvi:-31
#omat:-56 #omin:56 #ompa:53 #onde:69 #ondi:28 #onsi:46 #onta:28 #orde:-33 #orma:76 #orry:55 #othe:25 #ould:44
#ours:72 #pany:41 #para:58 #part:-61 #peak:-49 #plac:34 #pond:28 #pres:32 #pued:-69 #qued:-38 #ques:47 #quie:135
#rage:98 #rata:-59 #rden:-32 #rdon:50 #reci:63 #reco:25 #resa:38 #resp:25 #ribe:95 #riou:-44 #rmac:84 #rong:-43
#rsel:78 #sabe:-63 #saca:44 #salg:41 #sary:-40 #save:53 #scam:90 #scri:73 #scul:68 #self:89 #seri:-44 #shop:149
#sigu:47 #skin:57 #sorr:55 #spea:-49 #spon:25 #ssar:-40 #stan:-41 #stop:-70 #stos:84 #tact:28 #take:-32 #tall:64
#tede:27 #tele:59 #tell:31 #teng:30 #text:27 #than:-26 #that:-76 #thes:164 #thin:-51 #this:136 #tien:-49 #tifi:47
#tify:80 #time:-45 #ting:60 #toma:-59 #town:-33 #trat:-60 #turn:51 #tuvi:36 #uand:-31 #uant:-39 #uard:31 #ueda:-29
#uedo:-68 #ugar:58 #uien:119 #uier:53 #ulpe:63 #umbe:84 #umer:51 #urse:78 #uste:31 #usto:37 #utom:-56 #uvie:36
#vier:28 #wait:47 #want:78 #when:-62 #wher:-30 #whic:44 #whom:74 #whos:32 #with:46 #word:37 #work:-26 #woul:36
#wron:-42 #xtin:32 #your:34 #yuda:230 %again_later:26 %again_later%how_long:36 %again_later%lift:45
%again_later%question:45 %again_later%who:92 %agree%call_off:40 %agree%question:46 %agree%refuse:32
%agree%start_again:34 %agree%who:99 %away:-36 %away%leave_me:63 %bad%question:-56 %bring:-33 %bring%call_off:60
%bring%leave_me:-65 %bring%who:-119 %call_off:-33 %call_off%fails:32 %call_off%family:-65 %call_off%gone_car:68
%call_off%leave_me:66 %call_off%message:85 %call_off%on_way:25 %call_off%phone:-47 %call_off%place:67
%call_off%question:109 %call_off%refuse:-66 %call_off%who:-94 %call_off%wrong_one:25 %car:-36 %car%who:33
%car_part:-88 %car_part%elsewhere:41 %car_part%question:-82 %do_it%family:-26 %do_it%leave_me:-26 %do_it%message:34
%do_it%place:55 %do_it%question:79 %do_it%staff:-33 %do_it%who:-35 %do_it%wrong_one:26 %doubt:-50 %doubt%question:-38
%doubt%refuse:-33 %doubt%who:-25 %elsewhere:186 %elsewhere%family:53 %elsewhere%machine:60 %elsewhere%place:-82
%elsewhere%question:71 %elsewhere%refuse:-67 %elsewhere%staff:62 %elsewhere%who:-102 %elsewhere%wrong_one:-67
%fails:-29 %fails%leave_me:46 %fails%message:31 %fails%question:35 %family%odometer:-42 %family%place:46
%family%question:77 %family%refuse:-72 %gone_car%question:48 %gone_car%refuse:76 %gone_car%who:50
%gone_car%wrong_one:36 %how_long:-75 %how_long%lift:46 %how_long%question:-42 %how_long%who:68 %leave_me:-83
%leave_me%message:-61 %leave_me%on_way:29 %leave_me%question:180 %leave_me%refuse:27 %leave_me%who:-150
%leave_me%wrong_one:-80 %lift%question:28 %lift%who:38 %machine:-91 %meaning:-134 %meaning%question:-80
%message%odometer:-25 %message%on_way:46 %message%place:33 %message%question:288 %message%staff:25
%message%start_again:-26 %message%who:49 %money:-104 %money%question:-78 %noise:-32 %odometer:-27 %odometer%phone:48
%odometer%place:43 %odometer%question:62 %on_way:-30 %on_way%question:-57 %opening:-50 %opening%question:-35
%phone%question:46 %phone%staff:-45 %phone%who:-36 %place:-101 %place%question:-60 %place%who:-40 %place%wrong_one:83
%question:157 %question%shift_it:-31 %question%staff:37 %question%start_again:25 %question%who:238
%question%wrong_one:284 %refuse:-90 %refuse%staff:35 %refuse%who:-85 %season:-26 %shift_it:-32 %staff%who:-63
%staff%wrong_one:-46 %thanks:-58 %who:434 %wrong_one:-51 @?:154 @after_visit:-76 @car:-26 @confirm:-93 @nothing:52
@nothing_info:55 @odometer:50 @offers:-54 @reading:-108 @time:-46 @times:-119 @walk_in:-62 ^_and:111 ^_ayuda:237
^_cancel:-29 ^_como:183 ^_de:199 ^_disculpe:52 ^_do:52 ^_donde:-137 ^_el:-30 ^_en:-44 ^_es:28 ^_help:239 ^_how:36
^_i:-94 ^_im:-43 ^_info:282 ^_is:65 ^_me:-67 ^_no:-62 ^_para:-56 ^_please:-44 ^_por:-41 ^_quien:104 ^_quienes:56
^_remind:32 ^_sorry:70 ^_this:-83 ^_unsubscribe:-46 ^_wait:51 ^_what:55 ^_who:-109 ^_whose:32 ^_why:-111 ^_y:52
^_you:-25 a:-97 a_como:-33 about_$:60 about_this:-67 also:31 am:84 am_$:-33 am__talking:67 am_i:125 and:119
and__are:129 and_you:118 anoche:-31 anoche_$:-31 any:-38 are:118 are_$:71 are__guys:59 are__in:-29 are_you:63
asking:57 asking_$:45 at:-46 automated:-53 ayuda:231 ayuda_$:229 by:-29 can:-45 can__talk:-67 can__tell:26 can_i:-42
cancel:-25 cancelo:31 car:-26 carro:29 cell:63 cell_$:65 come:-34 come_$:-29 coming:59 coming_$:31 como:42
como__de:34 como__hago:90 como__mi:88 como__que:-42 como_le:90 como_me:62 como_mil:-25 como_no:-65 como_saben:-46
company:41 con:-41 con__hablo:30 con__tengo:30 cuando:-31 de:44 de__como:-27 de__es:34 de__me:68 de__son:42
de__taller:72 de_a:-26 de_donde:231 de_la:30 de_que:129 de_una:-81 dejen:-26 dejen_de:-26 dejo_de:36 did__find:-52
did__get:92 did_you:31 dijo:-27 dis:36 dis_$:36 disculpe:64 do_$:-29 do__get:-96 do__keep:-28 do__know:116
do__turn:33 do_i:129 do_you:-95 donde:71 donde__el:-45 donde__escriben:57 donde_es:-36 donde_me:69 dont:-38
dont__any:-41 dont__this:49 dont_have:39 dont_know:-100 el:-108 el__anoche:-31 el__de:-37 el_de:30 el_gusto:38
el_taller:-39 en:-138 en__parte:-37 en_que:-44 eres:47 es:183 es_$:72 es_el:-28 es_este:115 es_y:26 escriben:94
escriben_$:95 ese:-28 eso:-56 estan:-48 estan_$:-36 este:108 este_$:90 este__quien:29 esto:163 esto_$:151 estos:85
estos_mensajes:39 favor:29 favor_$:39 find:-55 for:-121 for_$:-48 from_$:31 gano:-31 garage:98 gave:32 gave_you:33
get:74 get__number:60 get__this:40 get__you:-69 get_my:134 get_off:41 get_there:-54 get_to:-68 got:-25 guardado:32
gusto:38 gusto_$:38 guy:-35 guys:34 guys_$:51 habla_$:29 hablar:-62 hablo:29 hablo_$:28 haga:-35 hago:136
hago__que:84 hago_para:118 have__number:67 have_my:30 have_to:-28 hay:-32 help:238 help_$:250 his:-26 how__are:-43
how__i:166 how__you:74 how_come:-30 how_did:60 how_do:116 how_long:-47 how_many:-29 how_much:-70 i:100 i__know:-104
i__out:52 i__there:-53 i__these:128 i__to:-74 i__you:110 i_am:-40 i_dont:-64 i_get:-105 i_know:133 i_make:30
i_speak:-71 i_stop:54 i_talk:-70 i_talking:67 i_turn:33 idea:-69 idea_who:-50 identify:80 identify__please:68
identify_yourself:68 if:33 im:-45 in:-59 in_$:-39 in_my:29 info:294 info_$:246 info_please:54 informacion:84
informacion_$:86 is:145 is__a:64 is__about:57 is__and:52 is__me:45 is__number:41 is__really:52 is__serious:-35
is_a:-38 is_asking:31 is_it:27 is_texting:50 is_that:-33 is_the:-25 is_there:27 is_this:292 is_your:-32 isnt:-43
it:-61 it_is:-33 just:32 keep:-30 keep__me:-28 keep_texting:-28 know:74 know_$:68 know__you:-53 know_who:-53
know_you:118 la:-74 la_lista:26 last:-28 le:52 le__para:99 le_hago:90 les:-27 lista_$:25 llego:-28 lleguen:54
lleguen_$:53 lo:-130 lo_que:-26 long:-48 los:-28 lugar:58 machine:-31 machine_$:-31 make:88 make_it:27 make_these:52
mal:-29 manden_$:38 many:-30 mas:-30 me__de:54 me__por:-25 me_escriben:94 me_esta:25 me_lleguen:35 me_lo:-48
me_who:65 mensajes_$:34 mi:33 mi_numero:33 mi_telefono:54 mil:-29 much:-72 much_$:-29 my:129 my_cell:65 my_info:43
my_number:57 name:40 necessary:-40 necessary_$:-40 negocio:67 new_phone:28 ni:-31 no:-51 no_$:-75 no__guardado:30
no__lleguen:35 no__manden:31 no__quien:-59 no_idea:-46 no_me:61 no_se:-119 no_tengo:40 not:-25 now:-36 now_$:-31
number:87 number_$:42 number__this:37 number_is:35 numero:60 numero_$:30 numero_de:-26 numero_es:51 o__de:31 o_el:32
of_this:43 off:44 off_$:47 on:-27 opt:50 opt__of:55 opt_out:52 or:27 or_the:44 other:34 out:26 out_of:40 para:69
para__es:-42 para__no:63 para__ya:48 para_no:39 para_que:38 parte:-35 place:47 please_$:69 por:-42 por_favor:37
por_que:-36 puedo:-59 puedo_hablar:-46 que:-142 que_$:-46 que__de:-30 que__es:189 que__me:124 que__no:37 que__para:26
que__que:28 que__son:67 que_es:-99 que_le:-30 que_me:-62 que_no:36 que_numero:51 que_parte:-32 que_taller:96
que_tengo:27 que_ya:27 quien:123 quien__lo:-34 quien__y:38 quien_es:140 quien_habla:35 quien_hablo:30 quien_tengo:30
quit:28 really:37 recibir:75 reply:28 saben:-49 salgo:41 salgo__la:42 salgo_de:41 saved:49 se:-132 se__es:-50
se_quienes:-70 serious:-44 serious_$:-37 shop:149 shop__this:42 shop_is:55 son:117 son_$:100 sorry:55 speak:-71
speak_to:-71 stop:-64 stop_$:-104 stop_these:47 take:-25 talk:-71 talk_to:-70 talking:62 talking_to:67 taller:59
taller_$:-62 taller_son:68 tanto:-27 telefono:61 telefono_$:51 tell:32 tell_me:32 tengo:40 tengo__gusto:38
tengo__me:-44 tengo_el:38 tengo_guardado:30 tengo_quien:-44 texting:32 texts_$:-33 that:-76 that_$:-26 the:-67
the__place:30 the__who:-31 the_garage:30 the_shop:40 the_tire:29 there:-43 there_$:-53 there_a:27 these:164
these_$:40 these_off:56 this:136 this_$:165 this__the:50 this_a:32 this_about:57 this_is:-50 this_isnt:-38
this_number:39 this_the:33 tiene:-25 time:-36 tire:25 tires:-25 to__these:35 to__this:-57 to_about:-66 to_know:66
to_make:50 to_turn:25 to_you:-71 turn:56 una:-87 unsubscribe_$:28 ustedes:27 va:-34 wait:48 wants:67 wants__know:67
wants_to:67 what__i:32 what__is:79 what__that:-29 what__this:87 what__you:-83 what_company:42 what_did:-72 what_do:35
when:-60 when_i:-26 where:-28 where_did:47 where_is:-28 which:45 which__is:33 which_garage:47 which_shop:77 who:75
who__are:-52 who__i:-38 who__is:26 who__it:50 who__texting:27 who__the:-65 who__this:33 who__to:57 who__you:148
who_am:93 who_are:108 who_can:-74 who_dis:36 who_is:143 who_this:32 who_you:-87 whom:74 whose:32 why:-109 why_$:-51
why_do:-25 with:47 with_$:56 won:-65 word:40 would:38 wrong:-42 wrong_number:-34 y:52 y__es:37 y_eso:-25 y_ustedes:31
ya:-50 ya_no:40 you:62 you_$:50 you__i:-27 you__me:28 you__my:170 you__texting:-28 you_are:80 you_find:-52
you_get:157 you_guys:34 you_in:-30 you_keep:-28 you_know:-31 you_my:29 you_tell:25 your:-42 yourself:78
yourself_please:68
"""
