"""What speaks for and against `help`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "help"
BIAS = -155
WEIGHTS = """\
#aben:-28 #abla:-46 #acar:36 #achi:-26 #acio:54 #ador:19 #algo:26 #alki:42 #alle:39 #ally:24 #also:25 #anda:-20
#ando:-23 #anto:-52 #ants:45 #arag:64 #aron:25 #arte:-25 #aski:34 #ated:-41 #atis:-18 #auto:-45 #avad:19 #aved:49
#ayud:152 #blar:-43 #body:-21 #book:22 #busi:-20 #caro:31 #cell:56 #celo:25 #cess:-37 #chin:-27 #cibi:50 #cion:47
#come:-27 #comi:39 #como:65 #comp:31 #cons:30 #cosa:19 #crib:55 #cuan:-74 #culp:49 #deje:-30 #dejo:24 #dent:80
#dice:-21 #digi:19 #dijo:-29 #disc:36 #dond:51 #dont:-41 #dora:19 #down:-18 #eall:29 #eces:-47 #ecib:49 #edes:18
#efon:43 #egoc:55 #egue:28 #elef:43 #empr:19 #engo:30 #enti:77 #eply:31 #eres:51 #erio:-29 #eron:46 #escr:65
#essa:-30 #esta:-36 #este:65 #esto:171 #exti:23 #ffle:-20 #find:-39 #fono:43 #form:59 #gara:64 #gave:30 #goci:55
#grat:-18 #guar:20 #guen:24 #guie:37 #gust:19 #guys:30 #habl:-33 #haga:-23 #hago:105 #hani:18 #have:18 #help:157
#here:-60 #hese:126 #hich:32 #hine:-27 #hing:-22 #hora:-27 #iben:59 #ibir:52 #idea:-51 #iden:61 #iene:-24 #iero:61
#ight:-20 #igit:19 #igui:43 #illa:-35 #ines:-18 #info:247 #ious:-34 #ires:-19 #iscu:49 #isnt:-32 #just:42 #keep:-27
#king:92 #know:46 #lace:36 #last:-19 #lava:19 #lefo:43 #lego:-26 #legu:29 #lkin:42 #llas:-20 #ller:44 #long:-29
#luga:47 #lvid:-29 #mach:-26 #maci:67 #make:44 #mate:-37 #mber:46 #mech:18 #ment:-20 #mero:44 #mill:-21 #ming:38
#mpan:37 #mpre:20 #much:-50 #name:22 #ndar:-30 #nden:18 #ndin:18 #nece:-45 #nego:55 #ness:-18 #nfor:65 #nted:22
#ntif:86 #nuev:-27 #numb:48 #nume:52 #ocio:55 #okin:19 #olvi:-32 #omat:-37 #omin:38 #ompa:34 #onde:50 #onsi:36
#ooki:19 #orde:-21 #orma:61 #orry:29 #ould:31 #ound:18 #ours:61 #pany:25 #para:37 #part:-25 #peak:-43 #plac:34
#pres:20 #pued:-53 #ques:18 #quie:114 #raff:-20 #rage:64 #rata:-48 #rati:-18 #rden:-21 #rdon:29 #real:18 #reci:42
#repl:27 #resa:19 #ribe:61 #riou:-34 #rmac:67 #rong:-37 #rsel:68 #sabe:-34 #saca:34 #salg:30 #sary:-37 #save:54
#scri:55 #scul:49 #self:79 #seri:-31 #serv:-18 #shop:100 #shut:19 #sigu:41 #sine:-18 #skin:34 #sorr:29 #spea:-43
#stan:-36 #stop:-54 #stos:54 #suen:-19 #take:-31 #tall:43 #tard:-20 #tede:18 #tele:42 #tell:19 #teng:22 #text:24
#that:-62 #ther:-28 #thes:126 #thin:-38 #this:100 #tien:-33 #time:-28 #ting:56 #toma:-40 #town:-23 #trat:-49 #turn:45
#tuvi:24 #uand:-28 #uant:-47 #uard:20 #uedo:-55 #ugar:47 #uien:106 #uier:45 #ulpe:49 #umbe:48 #umer:52 #urse:68
#usin:-18 #usto:20 #utom:-37 #uvie:24 #vado:19 #vide:-20 #vier:19 #wait:36 #want:61 #when:-38 #wher:-22 #whic:32
#with:43 #woul:25 #wron:-36 #xtin:23 #your:38 #yuda:152 %again_later%how_long:33 %again_later%lift:33
%again_later%question:23 %again_later%who:68 %agree%call_off:20 %agree%leave_me:-21 %agree%question:62
%agree%refuse:31 %agree%start_again:32 %agree%who:108 %away%leave_me:48 %away%question:25 %bad%question:-44
%bring:-29 %bring%call_off:18 %bring%leave_me:-50 %bring%who:-110 %call_off:-49 %call_off%family:-50
%call_off%gone_car:51 %call_off%leave_me:36 %call_off%message:64 %call_off%odometer:-18 %call_off%phone:-42
%call_off%place:50 %call_off%question:64 %call_off%refuse:-53 %call_off%who:-81 %call_off%wrong_one:25 %car:-33
%car%question:-19 %car_part:-82 %car_part%question:-64 %do_it%message:28 %do_it%place:35 %do_it%question:31
%do_it%staff:-18 %do_it%who:-36 %doubt:-37 %doubt%question:-27 %doubt%refuse:-21 %elsewhere:129 %elsewhere%family:35
%elsewhere%place:-54 %elsewhere%question:41 %elsewhere%refuse:-50 %elsewhere%staff:40 %elsewhere%who:-65
%elsewhere%wrong_one:-30 %fails:-37 %fails%leave_me:23 %family:26 %family%odometer:-24 %family%place:40
%family%question:55 %family%refuse:-52 %gone_car%question:35 %gone_car%refuse:51 %gone_car%who:43
%gone_car%wrong_one:34 %how_long:-59 %how_long%lift:35 %how_long%question:-31 %how_long%who:62 %leave_me:-61
%leave_me%message:-32 %leave_me%question:116 %leave_me%refuse:25 %leave_me%who:-117 %leave_me%wrong_one:-53 %lift:21
%lift%question:34 %machine:-75 %meaning:-104 %meaning%question:-61 %message%odometer:-18 %message%on_way:35
%message%place:35 %message%question:206 %message%staff:31 %message%start_again:-22 %message%who:32 %money:-100
%money%question:-69 %noise:-18 %odometer%phone:39 %odometer%place:32 %odometer%question:45 %odometer%wrong_one:19
%on_way:-37 %on_way%question:-52 %opening:-44 %opening%question:-31 %phone:-32 %phone%staff:-26 %phone%who:-58
%place:-60 %place%question:-42 %place%who:-31 %place%wrong_one:50 %question:170 %question%shift_it:-32
%question%staff:37 %question%start_again:27 %question%who:196 %question%wrong_one:190 %refuse:-68 %refuse%staff:35
%refuse%who:-68 %season:-19 %shift_it:-24 %shift_it%who:-18 %staff%who:-44 %staff%wrong_one:-19 %thanks:-35 %who:302
%wrong_one:-37 @?:102 @after_visit:-34 @car:-39 @confirm:-70 @confirm_stop:24 @nothing:-20 @odometer:34 @offers:-57
@reading:-74 @times:-100 @walk_in:-19 ^_and:85 ^_ayuda:153 ^_cancel:-24 ^_como:139 ^_con:-23 ^_cuanto:-21 ^_de:148
^_disculpe:44 ^_do:34 ^_donde:-101 ^_el:-24 ^_en:-33 ^_eres:19 ^_es:34 ^_help:153 ^_how:48 ^_i:-73 ^_im:-32
^_info:173 ^_is:59 ^_me:-39 ^_no:-38 ^_para:-46 ^_please:-41 ^_por:-29 ^_quien:90 ^_remind:22 ^_sorry:43 ^_sounds:18
^_that:-19 ^_this:-53 ^_unsubscribe:-33 ^_wait:41 ^_what:36 ^_who:-55 ^_why:-82 ^_y:42 ^_ya:-20 ^_your:23 a:-64
a_person:20 about_$:53 about_this:-55 also:25 am:50 am_$:-31 am__talking:49 am_i:85 and:88 and__are:93 and_you:90
any:-34 are:80 are_$:42 are__guys:44 are_you:33 asking:34 at:-32 ayuda:153 ayuda_$:143 booking:23 business:-18
can:-32 can__talk:-53 can_i:-31 cancel:-25 cancelo:25 carro__el:19 cell:56 cell_$:56 cita_$:18 come:-24 come_$:-21
coming:40 como:65 como__de:26 como__hago:69 como__mi:63 como__que:-23 como_le:69 como_no:-40 company:25 con:-24
con__hablo:20 cosa:19 cuando:-28 cuanto:-31 de:54 de__de:21 de__es:21 de__me:34 de__taller:49 de_donde:161 de_la:27
de_mandar:-18 de_que:93 de_una:-58 dejo:25 dejo_de:26 del_carro:19 dice:-21 dice_que:-20 did__find:-38 did__get:56
dijo:-29 dis:24 dis_$:24 disculpe:49 do__get:-80 do__keep:-26 do__know:77 do_i:119 do_you:-65 donde:51
donde__escriben:35 donde_es:-27 donde_me:34 dont:-41 dont__any:-38 dont__this:40 dont_have:38 dont_know:-79 el:-55
el__de:-20 el__la:18 el_de:18 el_del:19 el_taller:-19 en:-88 en__parte:-24 en_que:-23 eres:45 es:114 es_$:78
es_el:-31 es_este:84 es_la:-19 es_usted:-28 escriben:59 escriben_$:65 eso:-29 estan:-41 estan_$:-32 este:68 este_$:69
esto:122 esto_$:111 estos:54 estos_mensajes:27 favor_$:23 find:-39 for:-66 for_$:-34 from_$:24 garage:64 garage_$:19
gave:30 get:41 get__number:31 get_my:95 get_off:25 get_there:-38 get_to:-56 got:-20 gratis:-18 gratis_$:-18 gusto:20
gusto_$:20 guy:-27 guys:30 guys_$:43 hablar:-42 hablo:19 hago:105 hago_para:85 have:25 have_my:25 have_to:-19
help:157 help_$:156 his:-21 how:28 how__are:-30 how__i:133 how__you:47 how_did:35 how_do:89 how_long:-38 how_much:-45
i:86 i__know:-83 i__out:34 i__there:-39 i__these:103 i__to:-72 i__you:90 i_am:-34 i_dont:-51 i_get:-89 i_know:109
i_speak:-57 i_stop:48 i_talk:-53 i_talking:49 i_turn:24 idea:-51 if:28 if_i:19 im:-38 im_not:-19 in:-34 in_$:-25
info:181 info_$:153 info_please:36 informacion:67 informacion_$:69 is:69 is__a:45 is__about:52 is__and:25 is__me:27
is__really:44 is_a:-27 is_texting:34 is_that:-20 is_the:-42 is_this:212 is_your:-21 isnt:-32 it:-75 it_is:-28 just:42
keep:-27 keep__me:-26 keep_texting:-26 know:47 know_$:57 know_who:-40 know_you:89 la:-48 la__de:-18 la_lavadora:19
la_lista:20 last:-19 lavadora:19 le:44 le__para:60 le_hago:69 lista_$:19 llego:-26 llego_$:-19 lleguen:32 lo:-82
lo_que:-19 long:-39 los:-22 lugar:47 machine:-26 make:44 mal:-24 mal_$:-20 mandar:-20 manden:19 manden_$:36 mas:-26
me:22 me_$:-19 me__de:36 me__you:23 me_escriben:59 me_lo:-27 me_manden:22 me_who:39 mechanic:18 mensajes_$:19 mi:29
mi_numero:26 mi_telefono:43 millas:-20 much:-46 much_$:-19 my:94 my_cell:57 my_info:28 my_number:39 name:28
negocio:55 new__and:18 ni:-24 no:-35 no_$:-46 no__manden:32 no__quien:-41 no_idea:-32 no_me:41 no_se:-78 no_tengo:24
not:-22 now:-18 number:57 number_$:23 number_is:20 numero:62 numero_$:28 numero_de:-23 numero_es:41 o:20 o__de:18
o_el:19 of_this:34 off:45 off_$:45 on:-21 one:21 opt:34 opt__of:35 opt_out:35 or:34 or_the:42 out:35 out_of:27
para:47 para__es:-31 para__no:38 para_que:27 parte:-18 pero_ya:-19 place:38 please_$:56 por:-21 por_favor:22
por_que:-23 puedo:-51 puedo_hablar:-40 que:-82 que__de:-27 que__es:144 que__estan:-24 que__mal:-18 que__me:82
que__no:27 que__para:18 que__que:30 que__son:44 que_es:-71 que_me:-49 que_no:29 que_parte:-20 que_taller:59
que_tengo:18 que_ya:23 quien:105 quien_eres:23 quien_es:64 quien_hablo:20 quiero:18 really:29 recibir:51 reply:31
saben:-28 salgo:30 salgo__la:30 salgo_de:30 saved:49 se:-100 se__es:-43 serious:-33 serious_$:-32 shop:100
shop__this:28 shop_is:36 shut:20 so_i:19 son:86 son_$:68 sorry:29 speak:-57 speak_to:-57 stop:-49 stop_$:-87
stop_these:38 suena:-19 take:-24 talk:-54 talk_to:-53 talking:46 talking_to:49 taller:36 taller_$:-37 tanto:-19
telefono:43 telefono_$:41 tell:19 tell_me:19 tengo:31 tengo_el:20 texting:23 texts_$:-29 that:-62 that_$:-18 the:-31
the__place:25 the_garage:31 the_shop:38 there:-28 there_$:-36 these:126 these_$:26 this:100 this_$:132 this__the:43
this_a:30 this_about:52 this_is:-33 this_isnt:-30 this_number:34 tiene:-24 time:-30 tires:-19 to:-20 to_$:19
to__these:23 to__this:-54 to_know:45 to_turn:26 to_you:-57 turn:49 una:-64 usted_$:-26 ustedes:18 wait:30 wants:45
what__are:23 what__i:22 what__is:51 what__that:-22 what__this:66 what__you:-47 what_company:26 what_did:-44
what_do:27 what_is:-21 when:-38 where:-21 where_are:-19 where_did:29 where_is:-20 which:32 which__is:29 which_shop:39
who:45 who__are:-41 who__i:-37 who__it:26 who__texting:27 who__you:97 who_am:63 who_are:66 who_dis:24 who_is:62
who_you:-74 why:-87 why_$:-32 why__you:-27 why_do:-29 with:44 with_$:50 won:-30 would:26 wrong:-36 wrong_number:-23
y:36 y__es:30 y_ustedes:21 ya:-33 ya_no:26 you:55 you_$:41 you__i:-19 you__my:121 you__texting:-26 you_are:56
you_find:-38 you_from:-20 you_get:110 you_guys:30 you_in:-21 you_keep:-26 you_know:-18 you_my:26 you_with:20 your:-27
yourself:68
"""
