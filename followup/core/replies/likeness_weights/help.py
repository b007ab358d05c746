"""What speaks for and against `help`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "help"
BIAS = -169
WEIGHTS = """\
#aben:-44 #abla:-45 #acar:46 #achi:-29 #acio:52 #algo:33 #alki:52 #alle:51 #ally:28 #also:28 #anda:-36 #anoc:-24
#anto:-55 #ants:52 #arag:78 #aron:31 #arte:-41 #aski:47 #ated:-44 #atio:-23 #auto:-55 #aved:49 #ayud:200 #blar:-48
#body:-29 #caro:40 #cell:61 #celo:32 #cess:-35 #chin:-30 #cibi:59 #cion:44 #come:-30 #comi:44 #como:54 #comp:38
#cons:35 #crib:66 #cuan:-69 #culp:62 #deje:-32 #dejo:26 #dent:100 #deso:-24 #dijo:-25 #disc:49 #dond:60 #dont:-38
#eall:36 #eces:-49 #ecib:58 #edes:26 #efon:50 #egoc:62 #elef:50 #empr:28 #engo:35 #enti:97 #eply:26 #eres:52
#erio:-34 #eron:57 #escr:84 #esor:-24 #essa:-30 #esta:-40 #este:86 #esto:209 #find:-48 #fono:50 #form:67 #gano:-24
#gara:78 #gave:32 #goci:62 #guar:30 #guen:23 #guie:39 #gust:28 #guys:35 #habl:-28 #haga:-25 #hago:113 #help:215
#here:-74 #hese:140 #hich:29 #hine:-30 #hing:-28 #hora:-34 #iben:77 #ibir:58 #idea:-61 #iden:80 #iero:77 #igui:48
#illa:-35 #info:322 #ious:-38 #iscu:62 #isnt:-42 #just:33 #keep:-28 #king:114 #know:57 #lace:42 #last:-24 #leas:25
#lefo:50 #lego:-24 #legu:26 #lkin:52 #llas:-23 #ller:61 #loca:-24 #long:-36 #luga:50 #lvid:-28 #mach:-29 #maci:74
#make:55 #many:-24 #mate:-45 #mber:70 #ment:-28 #mero:45 #mill:-23 #ming:41 #mpan:47 #mpre:29 #much:-69 #name:31
#ndar:-33 #nden:25 #nece:-46 #nego:62 #nfor:73 #nsig:43 #ntif:106 #nuev:-36 #numb:72 #nume:53 #ocio:62 #olvi:-30
#omat:-46 #omin:42 #ompa:45 #onde:59 #onsi:42 #orde:-29 #orma:68 #orry:36 #ould:35 #ours:69 #pany:36 #para:37
#part:-53 #peak:-49 #plac:39 #plea:26 #pres:24 #pued:-51 #qued:-26 #ques:30 #quie:116 #rage:78 #rata:-57 #rden:-28
#rdon:34 #read:-24 #real:23 #reci:52 #resa:28 #ribe:77 #riou:-38 #rmac:75 #rong:-42 #rsel:74 #sabe:-54 #saca:42
#salg:36 #sary:-35 #save:53 #scam:86 #scri:65 #scul:62 #self:84 #seri:-36 #shop:126 #sigu:46 #skin:47 #sorr:36
#spea:-49 #ssar:-35 #stan:-38 #sted:22 #stop:-56 #stos:68 #take:-29 #tall:61 #tard:-22 #tede:26 #tele:48 #tell:30
#teng:27 #text:23 #than:-22 #that:-68 #ther:-43 #thes:140 #thin:-45 #this:116 #tien:-39 #tifi:30 #tify:75 #time:-37
#ting:53 #toma:-48 #town:-27 #trat:-57 #turn:50 #tuvi:32 #uand:-27 #uant:-43 #uard:30 #uedo:-58 #ugar:50 #uien:102
#uier:53 #ulpe:62 #umbe:72 #umer:53 #unta:22 #urse:74 #uste:24 #usto:29 #utom:-46 #uvie:32 #vier:28 #wait:44 #want:64
#when:-44 #wher:-24 #whic:30 #with:41 #woul:33 #wron:-40 #your:38 #yuda:200 %again_later%how_long:34
%again_later%lift:42 %again_later%question:30 %again_later%who:84 %agree%leave_me:-26 %agree%question:52
%agree%refuse:31 %agree%start_again:33 %agree%who:113 %away%leave_me:53 %away%question:22 %bad%question:-50
%bring:-49 %bring%leave_me:-50 %bring%question:-22 %bring%who:-123 %call_off:-46 %call_off%family:-60
%call_off%gone_car:61 %call_off%leave_me:46 %call_off%message:87 %call_off%odometer:-24 %call_off%phone:-48
%call_off%place:63 %call_off%question:89 %call_off%refuse:-67 %call_off%who:-84 %call_off%wrong_one:36 %car:-52
%car%question:-33 %car_part:-95 %car_part%question:-74 %do_it%family:-22 %do_it%leave_me:-23 %do_it%message:27
%do_it%place:55 %do_it%question:53 %do_it%staff:-25 %do_it%who:-42 %do_it%wrong_one:28 %doubt:-35 %doubt%question:-25
%doubt%refuse:-25 %elsewhere:143 %elsewhere%family:50 %elsewhere%place:-71 %elsewhere%question:60
%elsewhere%refuse:-62 %elsewhere%staff:39 %elsewhere%who:-91 %elsewhere%wrong_one:-48 %fails:-40 %fails%leave_me:37
%fails%question:23 %family:27 %family%odometer:-33 %family%place:45 %family%question:64 %family%refuse:-74
%gone_car%question:36 %gone_car%refuse:58 %gone_car%who:46 %gone_car%wrong_one:33 %how_long:-66 %how_long%lift:43
%how_long%question:-35 %how_long%who:63 %leave_me:-71 %leave_me%message:-42 %leave_me%question:145
%leave_me%refuse:29 %leave_me%who:-131 %leave_me%wrong_one:-70 %lift%question:27 %lift%who:42 %machine:-80
%meaning:-108 %meaning%question:-59 %message%on_way:33 %message%place:34 %message%question:242 %message%staff:26
%message%who:36 %money:-104 %money%question:-72 %noise:-22 %odometer:-23 %odometer%phone:44 %odometer%place:40
%odometer%question:50 %odometer%who:-30 %on_way:-57 %on_way%question:-63 %opening:-42 %opening%question:-30
%phone:-34 %phone%staff:-28 %phone%who:-62 %place:-77 %place%question:-43 %place%who:-39 %place%wrong_one:77
%question:148 %question%shift_it:-31 %question%staff:39 %question%start_again:23 %question%who:225
%question%wrong_one:248 %refuse:-94 %refuse%staff:34 %refuse%who:-84 %shift_it:-27 %staff%who:-45
%staff%wrong_one:-28 %thanks:-50 %who:365 %wrong_one:-51 @?:116 @after_visit:-58 @car:-41 @confirm:-107
@nothing_info:41 @odometer:59 @offers:-42 @reading:-103 @time:-42 @times:-127 @walk_in:-43 ^_and:95 ^_ayuda:206
^_cancel:-27 ^_como:171 ^_de:184 ^_disculpe:56 ^_do:35 ^_donde:-119 ^_en:-39 ^_es:35 ^_help:212 ^_how:57 ^_i:-85
^_im:-37 ^_info:232 ^_is:66 ^_me:-54 ^_no:-41 ^_para:-47 ^_please:-40 ^_por:-37 ^_quien:63 ^_quienes:51 ^_remind:23
^_sorry:49 ^_this:-80 ^_unsubscribe:-35 ^_wait:42 ^_what:53 ^_who:-45 ^_why:-97 ^_y:39 ^_ya:-23 ^_you:-22 a:-84
about_$:57 about_this:-54 also:28 am:57 am_$:-32 am__talking:59 am_i:94 and:97 and__are:105 and_you:101 anoche:-24
anoche_$:-24 any:-39 are:86 are_$:56 are__guys:53 are__in:-24 are_you:40 asking:47 asking_$:36 at:-44 ayuda:200
ayuda_$:195 booking:22 by:-26 can:-29 can__talk:-53 can__tell:25 can_i:-36 cancel:-28 cancelo:32 car:-28 cell:61
cell_$:61 come:-25 come_$:-25 coming:45 como:54 como__de:33 como__hago:73 como__mi:77 como__que:-32 como_le:72
como_me:56 como_mil:-22 como_no:-50 company:36 con:-32 con__hablo:26 con__tengo:22 cuando:-27 cuanto:-28 de:56
de__es:28 de__me:49 de__taller:70 de_donde:195 de_la:30 de_que:113 de_una:-68 dejo:27 dejo_de:34 did__find:-48
did__get:86 did_you:39 dijo:-25 dis:24 dis_$:24 disculpe:62 do_$:-23 do__get:-81 do__keep:-26 do__know:92 do__turn:33
do_i:142 do_you:-83 donde:60 donde__el:-36 donde__escriben:51 donde_es:-26 donde_me:50 dont:-38 dont__any:-43
dont__this:43 dont_have:41 dont_know:-90 el:-92 el__de:-31 el_gusto:29 el_taller:-24 en:-119 en__parte:-35 en_que:-39
eres:47 es:133 es_$:83 es_el:-35 es_este:103 es_usted:-26 escriben:77 escriben_$:87 ese:-22 eso:-46 estan:-44
estan_$:-36 este:92 este_$:80 esto:151 esto_$:140 estos:68 estos_mensajes:34 favor_$:27 find:-48 for:-98 for_$:-44
from_$:23 gano:-24 garage:78 gave:32 gave_you:32 get:71 get__number:49 get__you:-62 get_my:117 get_off:36
get_there:-44 get_to:-62 got:-25 guardado:31 gusto:29 gusto_$:29 guy:-24 guys:36 guys_$:51 habla_$:22 hablar:-48
hablo:25 hablo_$:24 hago:113 hago_para:95 have:22 have_my:31 have_to:-26 help:215 help_$:221 his:-24 how:29
how__are:-41 how__i:163 how__you:63 how_come:-25 how_did:52 how_do:112 how_long:-43 how_many:-23 how_much:-64 i:89
i__know:-93 i__out:39 i__there:-44 i__these:128 i__to:-81 i__you:108 i_am:-36 i_dont:-60 i_get:-93 i_know:124
i_make:36 i_speak:-64 i_stop:52 i_talk:-56 i_talking:59 i_turn:32 idea:-61 identify:75 if:24 im:-49 im_not:-22 in:-44
in_$:-27 info:249 info_$:206 info_please:50 informacion:75 informacion_$:77 is:91 is__a:44 is__about:53 is__and:31
is__me:27 is__really:51 is_a:-36 is_asking:23 is_texting:35 is_that:-25 is_the:-40 is_this:249 is_your:-25 isnt:-42
it:-86 it_is:-36 just:33 keep:-27 keep__me:-26 keep_texting:-26 know:47 know_$:60 know_who:-50 know_you:109 la:-55
la_lista:25 las:-25 last:-24 le:53 le__para:71 le_hago:73 lista_$:22 llego:-24 lleguen:29 lo:-110 long:-44 los:-25
lugar:51 machine:-29 make:55 mal:-26 mal_$:-22 manden:26 manden_$:43 many:-24 mas:-24 me:31 me__de:51 me__you:25
me_escriben:78 me_lo:-33 me_manden:29 me_who:48 mensajes_$:25 mi:29 mi_numero:27 mi_telefono:48 mil:-28 millas:-22
much:-65 much_$:-31 my:100 my_cell:62 my_info:42 my_number:50 name:41 necessary:-35 necessary_$:-35 negocio:62 ni:-31
no:-43 no_$:-56 no__manden:38 no__quien:-37 no_idea:-39 no_me:44 no_se:-94 no_tengo:33 not:-28 number:83 number_$:32
number__this:36 number_is:33 numero:60 numero_$:25 numero_de:-25 numero_es:48 of_this:41 off:50 off_$:49 on:-37
opt:41 opt__of:43 opt_out:41 or:25 or_the:38 out:33 out_of:32 para:46 para__es:-36 para__no:43 para_no:34 para_que:26
parte:-31 place:51 please_$:66 por:-30 por_favor:26 por_que:-28 puedo:-50 puedo_hablar:-39 que:-113 que_$:-27
que__de:-23 que__es:174 que__estan:-24 que__me:101 que__no:27 que__que:24 que__son:57 que_es:-85 que_me:-61 que_no:30
que_numero:48 que_parte:-30 que_taller:86 que_ya:23 quien:101 quien__usted:-25 quien_eres:25 quien_es:85
quien_hablo:26 quien_tengo:22 really:36 recibir:61 reply:26 saben:-43 salgo:37 salgo__la:37 salgo_de:37 saved:49
se:-115 se__es:-43 serious:-38 serious_$:-36 shop:126 shop__this:34 shop_is:48 son:104 son_$:94 sorry:36 speak:-65
speak_to:-64 stop:-50 stop_$:-96 stop_these:42 take:-23 talk:-57 talk_to:-57 talking:56 talking_to:59 taller:53
taller_$:-44 tanto:-26 telefono:50 telefono_$:46 tell:30 tell_me:30 tengo:35 tengo__este:23 tengo__gusto:29
tengo__me:-26 tengo_el:29 tengo_guardado:29 tengo_quien:-26 texts_$:-30 that:-68 that_$:-23 the:-45 the__place:22
the_garage:28 the_shop:41 there:-41 there_$:-42 these:140 these_$:28 this:116 this_$:164 this__his:-22 this__the:49
this_a:30 this_about:53 this_is:-45 this_isnt:-38 this_number:38 tiene:-24 time:-33 to__this:-50 to_about:-58
to_know:52 to_turn:24 to_you:-65 turn:54 una:-72 usted_$:-24 ustedes:26 wait:33 wants:52 wants_to:52 what__are:27
what__i:27 what__is:70 what__that:-24 what__this:80 what__you:-69 what_company:37 what_did:-57 what_do:32 when:-43
where:-22 where_did:45 where_is:-25 which:30 which_shop:65 who:73 who__are:-50 who__i:-38 who__it:27 who__texting:28
who__the:-38 who__to:50 who__you:108 who_am:75 who_are:76 who_can:-59 who_dis:24 who_is:94 who_you:-84 why:-96
why_$:-46 why__you:-23 why_do:-23 with:42 with_$:50 won:-25 would:34 wrong:-40 wrong_number:-31 y__es:28 y_eso:-23
y_ustedes:28 ya:-40 ya_no:23 you:68 you_$:38 you__i:-25 you__me:30 you__my:155 you__texting:-26 you__this:22
you_are:66 you_find:-48 you_from:-22 you_get:144 you_guys:36 you_in:-24 you_keep:-26 you_know:-26 you_my:29
you_tell:24 your:-34 yourself:74
"""
