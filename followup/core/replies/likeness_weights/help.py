"""What speaks for and against `help`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "help"
BIAS = -143
WEIGHTS = """\
#aben:-32 #abla:-31 #acar:34 #achi:-18 #acio:35 #algo:23 #alki:35 #alle:40 #also:19 #anda:-22 #anoc:-20 #anto:-43
#ants:36 #arag:62 #aron:22 #arte:-30 #aski:37 #ated:-30 #atio:-19 #auto:-39 #aved:36 #ayud:163 #blar:-35 #body:-23
#caro:30 #cell:41 #celo:22 #cess:-24 #chin:-19 #cibi:42 #cion:29 #come:-21 #comi:34 #como:47 #comp:29 #cons:23
#crib:59 #cuan:-58 #culp:45 #deje:-20 #dejo:18 #dent:73 #dijo:-20 #disc:35 #dond:47 #dont:-25 #eall:23 #ease:20
#eces:-35 #ecib:42 #efon:35 #egoc:47 #elef:35 #empr:19 #engo:25 #enti:71 #eply:21 #eres:43 #erio:-23 #eron:39
#escr:67 #essa:-19 #esta:-26 #este:68 #esto:152 #exti:21 #find:-33 #fono:35 #form:46 #gano:-19 #gara:62 #gave:22
#goci:47 #guar:22 #guen:19 #guie:26 #gust:22 #guys:25 #habl:-20 #haga:-19 #hago:82 #help:166 #here:-49 #hese:105
#hich:24 #hine:-19 #hing:-21 #hora:-28 #iben:58 #ibir:44 #idea:-45 #iden:60 #iero:54 #igui:34 #illa:-24 #info:259
#ious:-26 #iscu:45 #isnt:-31 #just:26 #king:84 #know:45 #lace:31 #last:-20 #leas:31 #lefo:35 #legu:21 #lkin:35
#ller:49 #loca:-19 #long:-30 #luga:36 #lvid:-20 #mach:-18 #maci:52 #make:39 #mate:-31 #mber:53 #ment:-21 #mero:40
#ming:32 #mpan:37 #mpre:20 #much:-57 #name:25 #ndar:-21 #nden:20 #nece:-32 #nego:47 #nfor:50 #nsig:30 #ntif:79
#nuev:-26 #numb:55 #nume:47 #ocio:47 #olvi:-22 #omat:-32 #omin:33 #ompa:35 #onde:46 #onsi:29 #orde:-21 #orma:47
#orry:26 #ould:25 #ours:49 #pany:27 #para:26 #part:-40 #peak:-33 #plac:29 #plea:32 #pued:-36 #qued:-20 #ques:24
#quie:103 #rage:62 #rata:-37 #rden:-20 #rdon:28 #read:-20 #reci:36 #resa:19 #ribe:65 #riou:-26 #rmac:52 #rong:-33
#rsel:53 #sabe:-40 #saca:32 #salg:25 #sary:-24 #save:39 #scam:58 #scri:59 #scul:45 #self:61 #seri:-24 #shop:94
#sigu:32 #skin:37 #sorr:26 #spea:-33 #ssar:-24 #stan:-29 #stop:-37 #stos:50 #take:-24 #tall:48 #tele:34 #tell:22
#teng:18 #text:28 #that:-58 #ther:-31 #thes:105 #thin:-34 #this:102 #tien:-32 #tifi:24 #tify:54 #time:-29 #ting:46
#toma:-34 #trat:-38 #turn:37 #tuvi:23 #uand:-22 #uant:-37 #uard:22 #uedo:-42 #ugar:36 #uien:92 #uier:37 #ulpe:45
#umbe:55 #umer:47 #urse:53 #uste:18 #usto:22 #utom:-32 #uvie:23 #vier:19 #wait:33 #want:46 #when:-39 #whic:24
#with:32 #woul:25 #wron:-31 #xtin:21 #your:23 #yuda:163 %again_later%how_long:24 %again_later%lift:31
%again_later%who:60 %agree%question:37 %agree%refuse:21 %agree%start_again:26 %agree%who:83 %away%leave_me:37
%bad%question:-35 %bring:-36 %bring%leave_me:-33 %bring%who:-83 %call_off:-37 %call_off%elsewhere:-18
%call_off%family:-43 %call_off%gone_car:43 %call_off%leave_me:31 %call_off%message:69 %call_off%phone:-36
%call_off%place:46 %call_off%question:67 %call_off%refuse:-52 %call_off%who:-62 %call_off%wrong_one:23 %car:-46
%car%question:-28 %car_part:-81 %car_part%question:-61 %do_it%message:23 %do_it%place:42 %do_it%question:42
%do_it%staff:-20 %do_it%who:-34 %do_it%wrong_one:25 %doubt:-29 %doubt%question:-20 %doubt%refuse:-19 %elsewhere:111
%elsewhere%family:37 %elsewhere%place:-49 %elsewhere%question:53 %elsewhere%refuse:-46 %elsewhere%staff:24
%elsewhere%who:-66 %elsewhere%wrong_one:-34 %fails:-31 %fails%leave_me:29 %fails%question:19 %family%odometer:-26
%family%place:32 %family%question:44 %family%refuse:-54 %gone_car%question:23 %gone_car%refuse:40 %gone_car%who:31
%gone_car%wrong_one:21 %how_long:-58 %how_long%lift:32 %how_long%question:-33 %how_long%who:46 %leave_me:-38
%leave_me%message:-25 %leave_me%question:113 %leave_me%refuse:23 %leave_me%who:-90 %leave_me%wrong_one:-45
%lift%question:19 %lift%who:29 %machine:-58 %meaning:-83 %meaning%question:-48 %message:31 %message%on_way:26
%message%place:27 %message%question:192 %message%staff:20 %message%who:29 %money:-92 %money%question:-64
%odometer%phone:30 %odometer%place:30 %odometer%question:36 %odometer%who:-24 %odometer%wrong_one:18 %on_way:-42
%on_way%question:-43 %opening:-37 %opening%question:-26 %phone:-35 %phone%staff:-24 %phone%who:-40 %place:-57
%place%question:-27 %place%who:-29 %place%wrong_one:59 %question:138 %question%shift_it:-26 %question%staff:24
%question%who:211 %question%wrong_one:186 %refuse:-86 %refuse%staff:26 %refuse%who:-64 %season:-19 %shift_it:-25
%staff%who:-37 %staff%wrong_one:-23 %thanks:-41 %who:319 %wrong_one:-35 @?:99 @after_visit:-48 @car:-36 @confirm:-89
@nothing:24 @nothing_info:38 @odometer:39 @offers:-40 @reading:-75 @time:-36 @times:-115 @walk_in:-37 ^_and:64
^_ayuda:169 ^_cancel:-18 ^_como:133 ^_de:150 ^_disculpe:40 ^_do:30 ^_donde:-85 ^_el:-18 ^_en:-29 ^_es:21 ^_help:163
^_how:47 ^_i:-65 ^_im:-28 ^_info:196 ^_is:45 ^_me:-42 ^_no:-31 ^_para:-32 ^_please:-25 ^_por:-28 ^_quien:57
^_quienes:37 ^_sorry:36 ^_this:-59 ^_unsubscribe:-21 ^_wait:29 ^_what:38 ^_why:-72 ^_y:29 ^_ya:-18 ^_you:-18 a:-74
about_$:39 about_this:-38 also:19 am:40 am_$:-24 am__talking:41 am_i:69 and:63 and__are:72 and_you:68 anoche:-20
anoche_$:-19 any:-26 are:69 are_$:40 are__guys:37 are_you:36 asking:37 asking_$:28 at:-37 ayuda:163 ayuda_$:159
by:-21 can:-22 can__talk:-37 can__tell:18 can_i:-26 cancel:-19 cancelo:22 car:-24 cell:41 cell_$:42 coming:35 como:48
como__de:24 como__hago:52 como__mi:55 como__que:-22 como_le:52 como_me:42 como_no:-34 company:27 con:-24
con__hablo:18 cuando:-22 cuanto:-25 de:66 de__es:19 de__me:39 de__taller:52 de_donde:145 de_la:24 de_que:89
de_una:-46 dejo:20 dejo_de:25 did__find:-33 did__get:68 did_you:36 dijo:-20 dis:21 dis_$:21 disculpe:45 do__get:-54
do__know:67 do__turn:23 do_i:110 do_you:-53 donde:47 donde__el:-26 donde__escriben:41 donde_me:40 dont:-25
dont__any:-29 dont__this:30 dont_have:29 dont_know:-61 el:-75 el__de:-24 el_gusto:23 en:-95 en__parte:-25 en_que:-29
eres:39 es:105 es_$:68 es_el:-26 es_este:80 escriben:59 escriben_$:65 ese:-19 eso:-36 estan:-34 estan_$:-27 este:73
este_$:60 esto:108 esto_$:98 estos:50 estos_mensajes:25 favor_$:22 find:-33 for:-78 for_$:-33 from_$:19 gano:-19
garage:62 gave:22 gave_you:22 get:62 get__number:39 get__you:-43 get_my:86 get_off:28 get_there:-30 get_to:-43
got:-20 guardado:22 gusto:23 gusto_$:23 guy:-19 guys:25 guys_$:35 habla_$:18 hablar:-35 hablo:18 hago:82 hago_para:67
have_my:22 have_to:-19 hay:-18 help:166 help_$:169 how:20 how__are:-29 how__i:120 how__you:50 how_did:42 how_do:85
how_long:-35 how_much:-53 i:66 i__know:-64 i__out:27 i__there:-30 i__these:92 i__to:-53 i__you:78 i_am:-28 i_dont:-38
i_get:-62 i_know:91 i_make:24 i_speak:-45 i_stop:38 i_talk:-39 i_talking:41 i_turn:23 idea:-45 identify:54 if:19
im:-38 in:-36 in_$:-19 info:208 info_$:175 info_please:38 informacion:52 informacion_$:54 is:72 is__a:30 is__about:36
is__and:25 is__me:22 is__really:34 is_a:-28 is_asking:18 is_texting:28 is_that:-20 is_the:-31 is_this:205 is_your:-20
isnt:-31 it:-77 it_is:-27 just:26 know:37 know_$:43 know_who:-35 know_you:79 la:-46 la_lista:20 las:-22 last:-20
le:36 le__para:52 le_hago:52 lista_$:18 lleguen:24 lo:-90 long:-36 los:-20 lugar:36 machine:-18 make:39 manden:20
manden_$:32 mas:-20 me:18 me__de:38 me_doy:18 me_escriben:59 me_lo:-26 me_manden:23 me_who:35 mensajes_$:21 mi:22
mi_numero:24 mi_telefono:34 mil:-20 much:-54 much_$:-23 my:68 my_cell:43 my_info:32 my_number:37 name:33
necessary:-24 necessary_$:-24 negocio:47 ni:-25 no:-36 no_$:-39 no__manden:30 no__quien:-26 no_idea:-27 no_me:34
no_se:-66 no_tengo:23 not:-26 number:63 number_$:23 number__this:29 number_is:26 numero:53 numero_$:27 numero_es:35
of_this:27 off:40 off_$:37 on:-29 opt:27 opt__of:29 opt_out:27 or:19 or_the:31 out:21 out_of:22 para:34 para__es:-26
para__no:32 para_no:23 para_que:20 parte:-21 place:39 please:23 please_$:56 por:-24 por_favor:21 por_que:-20
puedo:-36 puedo_hablar:-27 que:-96 que_$:-23 que__es:130 que__me:74 que__no:21 que__que:19 que__son:42 que_es:-63
que_me:-48 que_no:21 que_numero:35 que_parte:-21 que_taller:65 que_ya:19 quien:93 quien_eres:21 quien_es:73
quien_hablo:18 really:23 recibir:44 reply:21 saben:-31 salgo:26 salgo__la:26 salgo_de:26 saved:36 se:-82 se__es:-30
serious:-26 serious_$:-24 shop:94 shop__this:28 shop_is:40 son:75 son_$:67 sorry:26 speak:-45 speak_to:-45 stop:-33
stop_$:-65 stop_these:31 take:-18 talk:-40 talk_to:-40 talking:39 talking_to:41 taller:42 taller_$:-31 tanto:-18
telefono:35 telefono_$:32 tell:22 tell_me:23 tengo:25 tengo__gusto:23 tengo__me:-19 tengo_el:23 tengo_guardado:20
tengo_quien:-19 texting:21 texts_$:-22 that:-58 that_$:-18 the:-49 the__place:18 the_garage:22 the_shop:27 there:-28
there_$:-28 these:105 these_$:21 this:102 this_$:134 this__the:32 this_a:20 this_about:36 this_is:-36 this_isnt:-28
this_number:28 tiene:-19 time:-27 to__this:-33 to_about:-41 to_know:35 to_turn:19 to_you:-45 turn:40 una:-50 wait:23
wants:36 wants_to:36 what__i:20 what__is:57 what__that:-19 what__this:57 what__you:-47 what_company:28 what_did:-40
what_do:25 what_is:-19 when:-38 when_i:-18 where_did:34 where_is:-19 which:24 which_shop:53 who:79 who__are:-33
who__i:-25 who__it:18 who__texting:22 who__the:-30 who__this:27 who__to:34 who__you:83 who_am:54 who_are:61
who_can:-42 who_dis:21 who_is:90 who_you:-58 why:-71 why_$:-34 with:33 with_$:40 won:-20 would:26 wrong:-31
wrong_number:-24 y__es:23 y_ustedes:19 ya:-28 ya_no:20 you:61 you_$:36 you__i:-19 you__me:22 you__my:114 you__this:18
you_are:48 you_find:-33 you_get:107 you_guys:25 you_my:20 your:-28 yourself:53
"""
