"""What speaks for and against `help`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "help"
BIAS = -170
WEIGHTS = """\
#aben:-32 #abla:-50 #able:-17 #acar:38 #achi:-30 #acio:53 #ador:22 #akin:14 #algo:28 #alki:50 #alle:44 #ally:25
#also:29 #anda:-21 #ando:-25 #anic:18 #anoc:-20 #ante:14 #anto:-57 #ants:54 #anym:-15 #arag:73 #ardo:18 #aron:27
#arte:-28 #aski:40 #ated:-48 #ater:18 #atis:-21 #auto:-52 #avad:22 #aved:58 #avor:19 #ayud:178 #birm:-14 #blar:-46
#bloc:-16 #body:-25 #book:26 #busi:-23 #caro:33 #cell:61 #celo:27 #cess:-43 #char:-18 #chin:-31 #cibi:52 #cion:46
#cita:16 #ckin:-18 #come:-29 #comi:46 #como:52 #comp:33 #conf:17 #cons:31 #corr:14 #cosa:22 #crib:67 #cuan:-83
#cuid:-18 #culp:54 #deje:-31 #dejo:26 #dele:-16 #dent:87 #dice:-24 #digi:22 #dijo:-36 #ding:16 #disc:38 #dond:53
#dont:-44 #dora:22 #down:-19 #driv:-16 #eady:-17 #eaki:16 #eall:32 #eard:-14 #eces:-54 #echa:20 #ecib:51 #econ:15
#edes:22 #efon:47 #egoc:59 #egue:31 #ejen:-18 #elef:47 #elet:-16 #empr:22 #engo:35 #enor:-14 #enti:84 #eply:36
#equi:-18 #eres:58 #erio:-33 #eron:49 #eros:-14 #ervi:-20 #escr:71 #espo:15 #essa:-36 #esta:-36 #este:68 #esto:182
#etal:-14 #expl:-20 #exti:27 #favo:19 #ffle:-22 #find:-45 #fono:47 #form:61 #gano:-20 #gara:73 #gave:34 #ging:-16
#goci:59 #grat:-21 #guar:22 #guen:27 #guie:40 #gust:22 #guys:31 #habl:-36 #haga:-26 #hago:113 #hani:21 #harg:-17
#have:19 #help:184 #here:-62 #hese:132 #hich:32 #hine:-31 #hing:-23 #hink:-17 #hora:-31 #iben:64 #ibir:56 #idea:-57
#iden:65 #iene:-25 #iero:65 #igam:15 #ight:-22 #igit:22 #igui:47 #illa:-40 #ines:-21 #info:275 #inst:17 #ious:-38
#ires:-21 #isco:-16 #iscu:54 #isnt:-36 #iten:-16 #ivoc:-17 #jueg:-20 #just:50 #keep:-29 #king:110 #know:47 #lace:41
#last:-21 #lava:22 #leas:22 #lefo:47 #lego:-28 #legu:32 #lete:-16 #line:-16 #liqu:-17 #lkin:50 #llas:-23 #ller:50
#loca:-16 #lock:-17 #long:-34 #lose:-14 #lost:19 #luga:53 #lvid:-34 #mach:-30 #maci:69 #make:50 #mand:-15 #many:-18
#mari:-16 #mate:-43 #mber:51 #mech:21 #menm:14 #ment:-23 #mero:44 #meta:-14 #mill:-23 #ming:44 #movi:14 #mpan:40
#mpre:22 #much:-54 #name:25 #ndar:-31 #nden:14 #ndin:20 #nece:-52 #need:-17 #nego:59 #ness:-21 #nfor:67 #nobo:-16
#noch:-14 #nstr:14 #ntas:-20 #nted:25 #ntif:94 #ntin:-17 #ntow:-15 #nuev:-31 #numb:53 #nume:53 #nymo:-15 #obod:-16
#ocad:-16 #oche:-15 #ocio:59 #ocki:-15 #okin:23 #olvi:-37 #omat:-43 #omin:45 #ompa:37 #onde:53 #ondi:18 #ongo:17
#onsi:39 #ooki:23 #open:-14 #opti:15 #orde:-24 #orma:62 #orre:15 #orry:33 #otic:14 #ould:38 #ound:21 #ours:66
#ovin:14 #ownt:-15 #pabl:-15 #pany:27 #para:37 #part:-29 #peak:-46 #perd:15 #plac:39 #plea:22 #pliq:-16 #pond:17
#pres:23 #pued:-58 #qued:-19 #quem:-17 #ques:21 #quie:132 #quiv:-18 #raff:-23 #rage:73 #rata:-56 #rati:-21 #rden:-24
#rdon:34 #read:-19 #real:18 #reci:43 #reco:21 #repl:32 #resa:22 #resp:15 #ribe:72 #ribi:15 #riou:-38 #rive:-16
#rmac:69 #rong:-40 #rsel:73 #ruct:14 #rvic:-20 #sabe:-39 #saca:36 #salg:32 #sary:-43 #save:63 #scri:67 #scul:54
#self:86 #seno:-14 #seri:-35 #serv:-21 #shop:108 #shut:22 #sigu:44 #sine:-21 #skin:40 #sona:-17 #sorr:33 #soun:20
#spea:-46 #spon:16 #stan:-39 #sted:17 #stop:-65 #stos:57 #stru:14 #suen:-21 #take:-34 #tall:49 #tard:-24 #tede:22
#tele:46 #tell:22 #teng:25 #text:28 #that:-68 #them:20 #ther:-30 #thes:132 #they:-14 #thin:-41 #this:108 #tice:14
#tien:-37 #tifi:20 #time:-30 #ting:66 #toca:-16 #toma:-47 #tori:-15 #town:-28 #trat:-57 #turn:50 #tuvi:25 #uand:-32
#uant:-52 #uard:22 #ucti:14 #uedo:-61 #uego:-16 #ueme:-16 #uena:-18 #ueva:-15 #uevo:-15 #ugar:53 #uide:-17 #uien:122
#uier:49 #uite:-16 #uivo:-18 #ulpe:54 #umbe:53 #umer:53 #unds:20 #urse:73 #used:19 #usin:-21 #uste:20 #usto:22
#utom:-43 #uvie:25 #vado:22 #vida:-15 #vide:-23 #vier:20 #voca:-17 #wait:42 #want:74 #week:-16 #when:-43 #wher:-19
#whic:33 #wifi:-15 #will:-16 #with:51 #wnto:-15 #woul:31 #wron:-38 #xpli:-18 #xtin:27 #ymor:-15 #your:42 #yuda:178
%again_later%how_long:38 %again_later%lift:39 %again_later%question:29 %again_later%who:75 %again_later%wrong_one:19
%agree%bring:-14 %agree%call_off:26 %agree%do_it:17 %agree%gone_car:17 %agree%leave_me:-18 %agree%noise:19
%agree%place:-16 %agree%question:72 %agree%refuse:39 %agree%start_again:38 %agree%who:118 %away:-15
%away%elsewhere:-15 %away%leave_me:54 %away%question:25 %bad%meaning:-16 %bad%question:-50 %bring:-34
%bring%call_off:20 %bring%elsewhere:-16 %bring%leave_me:-61 %bring%question:-14 %bring%refuse:-17 %bring%who:-127
%bring%wrong_one:-14 %busy%who:14 %call_off:-64 %call_off%do_it:-18 %call_off%elsewhere:-16 %call_off%family:-56
%call_off%gone_car:58 %call_off%leave_me:41 %call_off%message:63 %call_off%odometer:-21 %call_off%phone:-43
%call_off%place:57 %call_off%question:67 %call_off%refuse:-62 %call_off%shift_it:18 %call_off%who:-82
%call_off%wrong_one:29 %car:-35 %car%question:-20 %car%wrong_one:-16 %car_part:-89 %car_part%do_it:-16
%car_part%elsewhere:16 %car_part%question:-71 %car_part%who:-15 %do_it%gone_car:-14 %do_it%leave_me:-16
%do_it%message:33 %do_it%noise:19 %do_it%place:42 %do_it%question:35 %do_it%refuse:-19 %do_it%staff:-20
%do_it%who:-42 %do_it%wrong_one:18 %doubt:-41 %doubt%question:-30 %doubt%refuse:-23 %doubt%who:-17 %elsewhere:141
%elsewhere%family:39 %elsewhere%phone:-15 %elsewhere%place:-57 %elsewhere%question:42 %elsewhere%refuse:-57
%elsewhere%staff:44 %elsewhere%who:-74 %elsewhere%wrong_one:-34 %fails:-43 %fails%gone_car:-14 %fails%leave_me:27
%fails%message:15 %fails%question:18 %family:31 %family%odometer:-26 %family%place:44 %family%question:63
%family%refuse:-57 %gone_car%question:40 %gone_car%refuse:58 %gone_car%who:48 %gone_car%wrong_one:39 %how_long:-66
%how_long%lift:41 %how_long%opening:-15 %how_long%question:-35 %how_long%who:71 %how_long%wrong_one:15 %leave_me:-63
%leave_me%message:-31 %leave_me%odometer:-16 %leave_me%question:129 %leave_me%refuse:28 %leave_me%who:-134
%leave_me%wrong_one:-56 %lift:26 %lift%question:40 %machine:-90 %machine%wrong_one:-14 %meaning:-117
%meaning%question:-70 %message%odometer:-20 %message%on_way:41 %message%place:41 %message%question:225
%message%staff:36 %message%start_again:-26 %message%who:35 %money:-110 %money%question:-75 %money%who:15 %noise:-19
%odometer:-23 %odometer%phone:42 %odometer%place:34 %odometer%question:43 %odometer%who:-19 %odometer%wrong_one:19
%on_way:-38 %on_way%question:-56 %on_way%shift_it:18 %on_way%who:14 %opening:-49 %opening%question:-35 %pay_day:-18
%phone:-27 %phone%question:20 %phone%staff:-29 %phone%who:-54 %place:-65 %place%question:-46 %place%who:-34
%place%wrong_one:55 %question:165 %question%shift_it:-35 %question%staff:41 %question%start_again:32
%question%who:232 %question%wrong_one:208 %refuse:-71 %refuse%staff:41 %refuse%who:-65 %season:-21 %shift_it:-23
%shift_it%who:-21 %staff%who:-50 %staff%wrong_one:-20 %start_again:-14 %start_again%who:18 %thanks:-38 %thanks%who:16
%who:348 %who%wrong_one:-16 %wrong_one:-40 @?:106 @after_visit:-36 @car:-44 @confirm:-72 @confirm_stop:28 @day:19
@later:-14 @nothing:-28 @odometer:43 @offers:-61 @reading:-83 @times:-108 @walk_in:-23 ^_and:93 ^_ayuda:179
^_cancel:-30 ^_como:136 ^_con:-25 ^_cuanto:-24 ^_de:157 ^_disculpe:49 ^_do:29 ^_donde:-114 ^_el:-27 ^_en:-37
^_eres:22 ^_es:36 ^_get:-15 ^_gracias:-18 ^_help:179 ^_how:49 ^_i:-81 ^_im:-34 ^_info:200 ^_is:66 ^_me:-45 ^_mi:-15
^_my:-14 ^_ni:-17 ^_no:-34 ^_nobody:-15 ^_para:-53 ^_perdon:16 ^_please:-43 ^_por:-33 ^_que:-20 ^_quien:99
^_quiten:-14 ^_remind:25 ^_si:-17 ^_sorry:49 ^_sounds:20 ^_suena:-14 ^_take:-19 ^_that:-21 ^_this:-62
^_unsubscribe:-33 ^_wait:46 ^_what:35 ^_who:-60 ^_why:-90 ^_y:49 ^_ya:-24 ^_yes:-18 ^_you:-16 ^_your:27 a:-69
a__but:19 a__person:-17 a__to:20 a_como:-18 a_person:23 about_$:55 about_this:-60 all:-14 also:29 am:60 am_$:-35
am__talking:57 am_i:99 and:98 and__are:101 and_you:97 anoche:-20 anoche_$:-20 any:-38 anymore:-15 anymore_$:-15
are:85 are_$:45 are__guys:47 are_you:33 asking:40 at:-36 ayuda:178 ayuda_$:169 bad:-16 baja:14 baja_$:15 blocking:-15
booking:27 business:-21 but__one:19 by:-15 can:-33 can__stop:14 can__talk:-57 can_i:-34 cancel:-30 cancelo:27 car:-17
carro:14 carro__el:23 cell:61 cell_$:62 cita:16 cita_$:23 come:-26 come_$:-23 coming:47 coming_from:15 como:52
como_$:-14 como__de:28 como__hago:74 como__mi:67 como__que:-27 como_le:74 como_no:-49 company:27 company__this:14
company_is:18 con:-26 con__hablo:21 cosa:22 cosa_$:17 cuando:-32 cuantas:-15 cuanto:-34 cuide:-17 de:51 de__como:-14
de__de:24 de__es:22 de__lista:20 de__me:38 de__taller:55 de_a:-14 de_baja:15 de_donde:177 de_la:32 de_mandar:-19
de_parte:15 de_que:98 de_una:-64 dejen:-17 dejen_de:-17 dejo:27 dejo_de:28 del_carro:22 delete:-16 delete_my:-15
dice:-24 dice_que:-23 did__find:-44 did__get:65 did_you:18 digame:15 dijo:-36 dis:25 dis_$:25 disculpe:55 do_$:-15
do__get:-92 do__have:14 do__keep:-27 do__know:79 do_i:123 do_you:-74 donde:53 donde__escriben:38 donde_es:-29
donde_me:38 dont:-44 dont__any:-43 dont__this:46 dont_have:45 dont_know:-90 dont_want:17 downtown:-15 doy:14 el:-57
el__de:-23 el__la:22 el__o:18 el_de:22 el_del:22 el_taller:-21 en:-100 en__parte:-27 en_la:-19 en_que:-25 eres:52
es:123 es_$:85 es_de:-16 es_el:-35 es_este:91 es_gratis:-20 es_la:-22 es_usted:-31 es_y:14 escriben:64 escriben_$:71
escribir:18 escribirme:-14 escribirme_$:-14 ese:-21 eso:-31 estan:-46 estan_$:-35 este:72 este_$:73 esto:132
esto_$:120 estos:58 estos_mensajes:29 far:-14 favor:19 favor_$:28 find:-45 for:-76 for_$:-39 for_the:-14 from_$:28
gano:-20 garage:73 garage_$:22 gave:34 get:47 get__number:36 get_my:107 get_off:28 get_there:-42 get_to:-65
getting_these:14 go:19 go_to:17 got:-21 gracias__ya:-19 gratis:-21 gratis_$:-21 gusto:23 gusto_$:23 guy:-31 guys:32
guys_$:46 habla_$:18 hablar:-46 hablo:21 hablo_$:16 hago:113 hago_para:91 have:27 have_my:25 have_to:-21 help:184
help_$:184 here:-14 his:-23 how:27 how__are:-33 how__can:-19 how__i:144 how__you:52 how_did:41 how_do:92 how_long:-45
how_many:-17 how_much:-48 i:99 i__getting:14 i__got:-18 i__know:-94 i__on:-19 i__out:38 i__there:-43 i__these:111
i__to:-76 i__want:18 i__who:16 i__with:17 i__you:93 i_am:-39 i_dont:-56 i_get:-102 i_just:-16 i_know:115 i_speak:-62
i_stop:53 i_talk:-57 i_talking:57 i_turn:25 idea:-57 if:34 if_i:24 im:-44 im_not:-21 in:-40 in_$:-30 in_my:17
info:207 info_$:176 info_please:40 informacion:69 informacion_$:73 is:81 is_$:14 is__a:53 is__about:53 is__and:29
is__for:-18 is__me:31 is__my:17 is__really:48 is__the:17 is_a:-31 is_texting:38 is_that:-22 is_the:-43 is_there:19
is_this:229 is_your:-22 isnt:-36 it:-79 it_and:15 it_is:-31 juego:-20 just:50 keep:-28 keep__me:-27 keep_texting:-27
know:48 know_$:69 know_who:-45 know_you:92 la:-53 la__de:-21 la_lavadora:23 la_lista:22 last:-21 later:19 lavadora:23
le:45 le__para:64 le_hago:74 le_toca:-15 like_a:14 line:-15 lista:18 lista_$:22 llamenme:14 llamenme_$:17 llego:-28
llego_$:-21 lleguen:36 lo:-92 lo_que:-22 long:-46 long__i:-19 los:-26 lost:19 lost_my:20 lugar:53 machine:-30 make:50
mal:-26 mal_$:-22 mandar:-21 manden:15 manden_$:36 many:-18 mas:-31 may:14 me:18 me_$:-19 me__de:40 me__por:-16
me__this:-15 me__you:26 me_escriben:64 me_lo:-31 me_manden:19 me_who:45 me_with:15 mechanic:21 mechanic_$:16
mensajes_$:19 metal:-14 mi:28 mi_numero:27 mi_telefono:46 mil:-20 millas:-22 much:-50 much_$:-20 my:105 my_cell:63
my_info:33 my_mechanic:17 my_number:40 nada_$:-14 name:33 negocio:59 new:14 new__and:21 new_phone:19 ni:-27 no:-42
no_$:-56 no__con:14 no__el:14 no__manden:31 no__que:-17 no__quien:-45 no_idea:-34 no_me:40 no_se:-86 no_tengo:28
nobody:-16 not:-23 not__you:-18 not_doing:14 now:-19 now_$:-16 nueva:-14 nuevo:-15 number:64 number_$:24 number_is:22
numero:65 numero_$:30 numero_de:-26 numero_es:43 o:24 o__de:21 o_el:22 o_es:16 of_this:38 off:50 off_$:48 on:-26
on_$:16 one:24 one_$:14 open:-14 opt:38 opt__of:39 opt_out:39 or:39 or_the:48 out:37 out_of:30 para:48 para__es:-36
para__no:41 para_que:28 parte:-20 parte__quien:16 perdon:16 pero_llamenme:18 pero_ya:-21 person_$:-17 persona:-17
place:43 place__the:15 please_$:65 pongo:17 por:-22 por_favor:27 por_que:-26 puedo:-57 puedo_hablar:-43 que:-108
que_$:-20 que__de:-32 que__es:156 que__eso:-15 que__estan:-27 que__mal:-20 que__me:88 que__no:28 que__para:20
que__que:35 que__son:49 que_es:-80 que_le:-19 que_me:-56 que_no:30 que_paren:17 que_parte:-22 que_taller:66
que_tan:-16 que_tengo:21 que_tiene:-14 que_ya:22 quien:118 quien_eres:26 quien_es:73 quien_hablo:21 quiero:20
quiero__me:-16 quiero_nada:16 quiten:-14 quiten_mi:-14 really:32 recibir:53 remind:18 remind_me:18 reply:36 saben:-32
salgo:33 salgo__la:33 salgo_de:33 saved:58 say:-15 se:-110 se__es:-48 serious:-37 serious_$:-36 shop:108 shop_$:-16
shop__this:31 shop_is:40 shut:23 si__dia:20 so__know:16 so_i:23 son:98 son_$:76 sorry:33 sounds:20 sounds__a:19
sounds_like:19 soy:-14 speak:-63 speak_to:-62 stop:-61 stop_$:-101 stop_these:40 suena:-21 take:-27 tal:-16 talk:-59
talk_to:-58 talking:54 talking_to:57 taller:41 taller_$:-42 tan:-16 tanto:-21 telefono:47 telefono_$:44 tell:22
tell_me:23 tengo:35 tengo_el:23 tengo_que:15 texting:27 texts_$:-37 that:-68 that_$:-20 the:-30 the__off:20
the__place:29 the_garage:36 the_guy:-17 the_shop:42 the_texts:20 the_tire:19 them:20 there:-29 there_$:-40 there_a:20
these:132 these_$:26 these_texts:-18 they:-14 think:-17 this:108 this_$:149 this__a:-15 this__the:47 this_a:35
this_about:53 this_is:-36 this_isnt:-34 this_number:40 this_phone:-17 tiene:-27 time:-33 tire:15 tire_place:15
tires:-21 tires_$:-14 to_$:25 to__the:20 to__these:27 to__this:-60 to_do:-16 to_know:54 to_turn:30 to_you:-67
toca:-16 town_$:14 turn:54 turn_the:20 un_dia:20 una:-71 unsubscribe_$:21 usted_$:-29 ustedes:22 wait:35 wants:54
way:15 way_to:20 we:-19 week:-14 what_$:-18 what__are:21 what__i:26 what__is:59 what__it:-15 what__that:-24
what__this:68 what__you:-55 what_company:29 what_did:-51 what_do:31 what_is:-23 what_time:-14 what_would:-15 when:-42
when_i:-17 where:-17 where_are:-20 where_did:35 where_is:-22 which:33 which__do:-14 which__is:31 which_shop:42 who:61
who__are:-45 who__i:-35 who__it:30 who__texting:30 who__you:109 who_am:74 who_are:74 who_dis:25 who_is:70 who_you:-83
why:-96 why_$:-37 why__you:-29 why_do:-30 wifi:-15 will:-16 with:52 with_$:55 with_the:-17 won:-34 word:14 would:32
would_i:16 wrong:-38 wrong_number:-27 y:45 y__a:-14 y__es:35 y_si:17 y_ustedes:24 ya:-42 ya_no:25 ya_tengo:-19
yes:-16 yo:-15 you:46 you_$:36 you__i:-22 you__me:20 you__my:135 you__texting:-27 you__this:14 you_are:61
you_find:-44 you_from:-22 you_get:125 you_guys:32 you_in:-27 you_keep:-27 you_know:-20 you_my:30 you_tell:14
you_think:-19 you_want:-14 you_with:21 your:-29 your_shop:-19 yourself:73
"""
