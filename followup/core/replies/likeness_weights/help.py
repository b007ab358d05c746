"""What speaks for and against `help`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "help"
BIAS = -173
WEIGHTS = """\
#aben:-45 #abla:-29 #acar:47 #achi:-26 #acio:55 #algo:35 #alki:60 #alle:47 #ally:27 #also:28 #anda:-39 #anic:38
#anoc:-28 #anto:-43 #ants:59 #arag:79 #aron:25 #arte:-42 #aski:49 #ated:-46 #atio:-22 #atis:-23 #auto:-60 #aved:43
#avor:26 #ayud:131 #blar:-55 #caro:43 #carr:22 #cell:61 #celo:31 #cess:-36 #chin:-28 #cibi:70 #cion:49 #come:-38
#comi:40 #como:51 #comp:37 #cons:36 #crib:54 #cuan:-56 #culp:59 #deje:-36 #dent:109 #deso:-25 #dice:-22 #dijo:-22
#disc:48 #dond:64 #dont:-33 #eall:34 #eces:-50 #echa:22 #ecib:70 #edes:29 #efon:56 #egoc:64 #egue:29 #ejen:-23
#elef:56 #empr:34 #engo:39 #enti:108 #eply:24 #eres:43 #erio:-34 #eron:61 #escr:81 #esor:-25 #espo:22 #essa:-33
#esta:-47 #este:87 #esto:228 #favo:26 #find:-50 #fono:56 #form:74 #gano:-28 #gara:79 #gave:29 #goci:64 #grat:-23
#guar:30 #guen:28 #guie:36 #gust:33 #guys:30 #haga:-34 #hago:123 #hani:28 #help:171 #here:-90 #hese:143 #hich:33
#hine:-27 #hing:-27 #hink:-22 #hora:-33 #iben:81 #ibir:64 #idea:-60 #iden:92 #iero:80 #igui:49 #illa:-37 #info:269
#ious:-37 #ique:32 #ires:-22 #iscu:59 #isnt:-34 #just:28 #keep:-31 #king:112 #know:84 #lace:34 #last:-24 #lefo:56
#legi:71 #lego:-25 #legu:33 #lkin:60 #llas:-22 #ller:53 #loca:-23 #long:-32 #luga:55 #lvid:-26 #mach:-26 #maci:81
#make:70 #many:-29 #mate:-49 #mber:63 #mech:28 #ment:-26 #mero:40 #mill:-23 #ming:37 #mpan:47 #mpre:32 #much:-58
#name:44 #ndar:-37 #nden:26 #ndin:25 #nece:-40 #nego:64 #nfor:79 #noch:-22 #nsig:43 #ntac:26 #ntif:117 #nuev:-36
#numb:65 #nume:46 #oche:-22 #ocio:64 #olvi:-29 #omat:-49 #omin:38 #ompa:45 #onde:64 #ondi:24 #onsi:43 #onta:26
#orde:-30 #orma:75 #orry:49 #othe:23 #ould:39 #ours:69 #pany:37 #para:55 #part:-52 #peak:-50 #plac:31 #pond:24
#pres:29 #pued:-57 #qued:-29 #ques:42 #quie:105 #rage:79 #rata:-53 #rati:-23 #rden:-30 #rdon:39 #reci:65 #reco:22
#resa:34 #resp:22 #ribe:75 #riou:-37 #rmac:82 #rong:-34 #rsel:74 #sabe:-58 #saca:43 #salg:38 #sary:-35 #save:47
#scam:80 #scri:54 #scul:59 #self:83 #seri:-36 #shop:134 #sigu:44 #skin:49 #sorr:49 #spea:-50 #spon:23 #ssar:-35
#stan:-31 #sted:26 #stop:-48 #stos:80 #tact:26 #take:-28 #tall:52 #tede:29 #tele:55 #tell:28 #teng:31 #that:-58
#ther:-28 #thes:143 #thin:-48 #this:129 #tien:-40 #tifi:41 #tify:75 #time:-41 #ting:45 #toma:-51 #town:-30 #trat:-54
#turn:48 #tuvi:34 #uand:-27 #uant:-29 #uard:30 #ueda:-23 #uedo:-60 #ugar:55 #uien:94 #uier:47 #ulpe:55 #umbe:65
#umer:46 #urse:74 #uste:29 #usto:34 #utom:-49 #uvie:34 #vier:27 #wait:49 #want:64 #when:-44 #wher:-36 #whic:33
#whom:64 #whos:26 #with:43 #work:-23 #woul:32 #wron:-33 #your:43 #yuda:131 %again_later:32 %again_later%how_long:39
%again_later%lift:47 %again_later%question:46 %again_later%who:93 %agree%call_off:26 %agree%leave_me:-22
%agree%question:48 %agree%refuse:31 %agree%start_again:30 %agree%who:95 %away:-25 %away%leave_me:56 %bad%question:-51
%bring%call_off:57 %bring%leave_me:-43 %bring%who:-102 %call_off:-23 %call_off%family:-59 %call_off%gone_car:65
%call_off%leave_me:56 %call_off%message:85 %call_off%phone:-41 %call_off%place:60 %call_off%question:109
%call_off%refuse:-55 %call_off%who:-82 %call_off%wrong_one:30 %car:-23 %car%who:27 %car_part:-70
%car_part%elsewhere:39 %car_part%question:-68 %do_it%family:-23 %do_it%leave_me:-24 %do_it%message:24 %do_it%place:44
%do_it%question:54 %do_it%staff:-29 %do_it%who:-26 %doubt:-43 %doubt%question:-34 %doubt%refuse:-30 %doubt%who:-24
%elsewhere:162 %elsewhere%family:42 %elsewhere%machine:57 %elsewhere%place:-83 %elsewhere%question:51
%elsewhere%refuse:-54 %elsewhere%staff:57 %elsewhere%who:-85 %elsewhere%wrong_one:-57 %fails:-27 %fails%leave_me:33
%fails%message:28 %fails%question:28 %family:24 %family%odometer:-37 %family%place:46 %family%question:69
%family%refuse:-66 %gone_car%question:47 %gone_car%refuse:71 %gone_car%who:49 %gone_car%wrong_one:36 %how_long:-46
%how_long%lift:48 %how_long%question:-22 %how_long%who:68 %leave_me:-69 %leave_me%message:-52 %leave_me%odometer:-22
%leave_me%question:165 %leave_me%refuse:27 %leave_me%who:-129 %leave_me%wrong_one:-83 %lift%question:32 %lift%who:44
%machine:-77 %meaning:-110 %meaning%question:-60 %message%odometer:-23 %message%on_way:30 %message%place:27
%message%question:251 %message%staff:22 %message%start_again:-22 %message%who:39 %money:-77 %money%question:-57
%noise:-28 %noise%question:-22 %odometer%phone:45 %odometer%place:42 %odometer%question:63 %odometer%wrong_one:24
%on_way:-49 %on_way%question:-59 %opening:-39 %opening%question:-26 %phone%question:43 %phone%staff:-41
%phone%who:-39 %place:-78 %place%question:-57 %place%who:-37 %place%wrong_one:73 %question:175 %question%refuse:22
%question%shift_it:-26 %question%staff:37 %question%who:184 %question%wrong_one:248 %refuse:-51 %refuse%staff:34
%refuse%who:-66 %shift_it:-25 %staff%who:-55 %staff%wrong_one:-36 %start_again:-23 %thanks:-48 %who:364
%wrong_one:-33 @?:129 @after_visit:-68 @car:-23 @confirm:-93 @nothing:28 @nothing_info:31 @odometer:45 @offers:-47
@reading:-97 @time:-39 @times:-101 @walk_in:-52 ^_and:106 ^_ayuda:136 ^_cancel:-24 ^_como:184 ^_de:164 ^_disculpe:49
^_do:48 ^_donde:-120 ^_el:-27 ^_en:-39 ^_help:170 ^_how:29 ^_i:-86 ^_im:-40 ^_info:175 ^_is:48 ^_me:-61 ^_no:-57
^_para:-50 ^_perdon:22 ^_please:-42 ^_por:-33 ^_quien:88 ^_quienes:51 ^_remind:29 ^_sorry:61 ^_this:-62
^_unsubscribe:-43 ^_wait:43 ^_what:62 ^_where:-26 ^_who:-102 ^_whose:26 ^_why:-92 ^_y:43 a:-90 a_como:-29 about_$:61
about_this:-58 also:28 am:69 am_$:-33 am__talking:61 am_i:107 and:117 and__are:121 and_you:112 anoche:-28
anoche_$:-28 any:-33 are:105 are_$:69 are__guys:50 are__in:-25 are_you:50 asking:49 asking_$:39 at:-34 automated:-47
ayuda:131 ayuda_$:126 by:-23 can:-41 can__talk:-57 can__tell:23 can_i:-40 cancelo:31 car:-22 carro:24 cell:61
cell_$:61 come:-32 come_$:-29 coming:41 como:51 como__de:35 como__hago:83 como__mi:83 como__que:-39 como_le:82
como_me:56 como_mil:-23 como_no:-54 como_saben:-43 como_se:22 company:37 con:-37 con__hablo:23 con__tengo:28
cuando:-27 de:30 de__como:-23 de__es:26 de__me:55 de__son:41 de__taller:60 de_donde:204 de_la:26 de_que:115
de_una:-77 dejen:-23 dejen_de:-23 dejo:22 dejo_de:36 did__find:-47 did__get:70 dijo:-22 dis:26 dis_$:26 disculpe:55
do_$:-29 do__get:-85 do__keep:-29 do__know:112 do__turn:32 do_i:128 do_you:-89 donde:65 donde__el:-43
donde__escriben:46 donde_es:-41 donde_me:56 dont:-33 dont__any:-36 dont__this:43 dont_have:35 dont_know:-88 el:-99
el__anoche:-28 el__de:-33 el_de:24 el_gusto:35 el_taller:-36 en:-120 en__parte:-34 en_que:-40 eres:40 es:152 es_$:62
es_el:-29 es_este:104 es_gratis:-22 es_usted:-22 es_y:23 escriben:82 escriben_$:87 ese:-23 eso:-48 estan:-37
estan_$:-26 este:93 este_$:88 este__quien:27 esto:151 esto_$:141 estos:80 estos_mensajes:33 favor:26 favor_$:34
find:-50 for:-100 for_$:-44 from_$:26 gano:-28 garage:79 gave:29 gave_you:30 get:52 get__number:39 get__this:34
get__you:-59 get_my:111 get_off:36 get_there:-47 get_to:-59 got:-24 gratis:-23 gratis_$:-22 guardado:30 gusto:34
gusto_$:35 guy:-27 guys:30 guys_$:47 habla_$:23 hablar:-55 hablo:23 hablo_$:22 haga:-32 hago:123 hago_para:106
have_my:32 have_to:-28 hay:-28 help:171 help_$:175 his:-26 how__are:-40 how__i:151 how__you:61 how_come:-30
how_did:44 how_do:113 how_long:-39 how_many:-28 how_much:-54 i:82 i__know:-91 i__out:45 i__there:-48 i__these:119
i__to:-78 i__you:110 i_am:-37 i_dont:-56 i_get:-93 i_know:130 i_make:30 i_speak:-64 i_stop:47 i_talk:-60 i_talking:61
i_turn:32 idea:-60 identify:75 identify__please:64 identify_yourself:64 if:28 im:-37 in:-52 in_$:-34 in_my:25
info:189 info_$:145 info_please:49 informacion:82 informacion_$:84 is:134 is__a:44 is__about:58 is__and:43 is__me:32
is__number:36 is__really:49 is__serious:-33 is__shop:-26 is_a:-30 is_asking:26 is_it:27 is_texting:34 is_that:-24
is_the:-23 is_this:250 is_your:-29 isnt:-34 it:-52 it_is:-29 just:28 keep:-31 keep__me:-29 keep_texting:-29 know:77
know_$:61 know__you:-47 know_who:-47 know_you:115 la:-60 la__de:-22 la_lista:23 last:-24 le:55 le__para:91 le_hago:83
les:-24 lista_$:23 llego:-25 lleguen:37 lo:-107 long:-40 los:-25 lugar:55 machine:-26 machine_$:-26 make:70
make_it:23 make_these:39 mal:-28 mal_$:-23 mandar:-22 manden:27 manden_$:46 many:-29 mas:-25 me:32 me__de:50
me__por:-24 me__you:25 me_escriben:82 me_esta:22 me_lo:-42 me_manden:31 me_who:52 mensajes_$:33 mi:34 mi_numero:32
mi_telefono:50 mil:-26 much:-55 much_$:-26 my:124 my_cell:62 my_info:39 my_number:48 name:37 necessary:-35
necessary_$:-35 negocio:64 new_phone:24 ni:-27 no:-36 no_$:-62 no__guardado:29 no__manden:39 no__quien:-54
no_idea:-40 no_me:55 no_se:-109 no_tengo:38 now:-33 now_$:-29 number:68 number_$:24 number__this:27 number_is:25
numero:53 numero_$:22 numero_de:-26 numero_es:49 o__de:25 o_el:27 of_this:40 off:34 off_$:46 on:-34 opt:45 opt__of:47
opt_out:45 or:25 or_the:38 other:30 out:28 out_of:38 para:65 para__es:-38 para__no:62 para_no:34 para_que:36
parte:-33 place:42 please_$:62 por:-33 por_favor:32 por_que:-31 puedo:-51 puedo_hablar:-41 que:-94 que_$:-36
que__de:-27 que__es:177 que__estan:-22 que__me:121 que__no:28 que__para:23 que__que:24 que__son:55 que_es:-87
que_le:-23 que_me:-55 que_no:38 que_numero:50 que_parte:-30 que_taller:83 que_tengo:24 quien:95 quien__lo:-31
quien__y:33 quien_es:121 quien_habla:30 quien_hablo:23 quien_tengo:28 really:34 recibir:73 reply:24 saben:-45
salgo:38 salgo__la:39 salgo_de:39 saved:43 se:-113 se__es:-45 se_quienes:-64 serious:-37 serious_$:-36 shop:134
shop__this:30 shop_is:43 son:107 son_$:88 sorry:49 speak:-64 speak_to:-64 stop:-42 stop_$:-82 stop_these:40 su:-22
take:-22 talk:-61 talk_to:-61 talking:57 talking_to:61 taller:48 taller_$:-59 taller_es:23 tanto:-28 telefono:56
telefono_$:47 tell:28 tell_me:29 tengo:39 tengo__este:24 tengo__gusto:35 tengo__me:-40 tengo_el:35 tengo_guardado:29
tengo_quien:-40 texts_$:-25 that:-58 the:-52 the__place:26 the_garage:26 the_shop:37 the_tire:25 there:-47
there_$:-46 these:143 these_$:35 these_off:52 think:-22 this:129 this_$:133 this__his:-25 this__the:47 this_a:27
this_about:58 this_is:-38 this_isnt:-30 this_number:33 this_the:29 time:-31 tire:23 tires:-22 to__this:-51
to_about:-56 to_know:59 to_make:32 to_turn:22 to_you:-62 turn:52 una:-84 ustedes:29 va:-28 wait:38 wants:59
wants__know:59 wants_to:59 what__are:24 what__i:31 what__is:63 what__that:-24 what__this:84 what__you:-75
what_company:38 what_did:-64 what_do:33 when:-42 where:-35 where_did:39 where_is:-27 which:34 which_shop:65 who:51
who__are:-47 who__i:-39 who__is:23 who__it:42 who__texting:22 who__the:-61 who__this:24 who__to:51 who__you:127
who_am:78 who_are:91 who_can:-64 who_dis:26 who_is:127 who_this:28 who_you:-81 whom:64 whose:26 why:-89 why_$:-40
why__you:-23 why_do:-26 with:44 with_$:46 won:-58 word:23 would:33 wrong:-33 wrong_number:-26 y:43 y__es:32 y_eso:-23
y_ustedes:30 ya:-43 ya_no:31 you:60 you_$:53 you__i:-26 you__me:24 you__my:148 you__texting:-29 you_are:77
you_find:-47 you_from:-25 you_get:127 you_guys:30 you_in:-26 you_keep:-29 you_know:-28 you_my:27 you_tell:22
you_think:-22 your:-30 your_shop:-22 yourself:74 yourself_please:64
"""
