"""What speaks for and against `help`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "help"
BIAS = -157
WEIGHTS = """\
#aben:-66 #aber:47 #acar:35 #acco:-41 #achi:-32 #acio:26 #ador:53 #agar:-30 #ajes:47 #aken:-44 #akin:36 #alab:38
#algo:33 #algu:-28 #alir:25 #alki:59 #alle:61 #ally:45 #also:50 #alta:-34 #ambi:-30 #anda:-38 #andl:25 #anic:79
#anoc:-62 #anot:-38 #ants:76 #anyb:-41 #anyh:45 #apet:-25 #arag:118 #ardo:34 #arle:-28 #arou:26 #arro:45 #aski:76
#asta:-42 #ater:43 #atie:-26 #atio:-50 #auto:-58 #avad:51 #aved:87 #aves:-31 #avis:-47 #avor:32 #ayud:132 #back:-26
#baja:32 #behi:-28 #beli:25 #belo:35 #biar:-43 #bien:35 #blan:53 #blar:-98 #body:-60 #book:50 #cado:-32 #camb:-26
#caro:31 #carr:65 #cate:30 #cati:-49 #cell:60 #cess:-52 #chan:33 #chin:-30 #cibi:47 #cing:-25 #cita:37 #ckin:-25
#clar:-34 #coja:-29 #come:-58 #comi:62 #comu:40 #conf:27 #cono:78 #cont:35 #corn:27 #corr:38 #cosa:30 #coul:25
#coun:-31 #crib:51 #ctio:28 #cual:31 #cuan:-77 #culp:59 #dand:46 #days:-31 #deci:35 #deja:-45 #deje:-35 #dent:91
#ders:-26 #desc:30 #deso:-41 #dias:-35 #dice:-63 #didn:36 #dier:-38 #digi:49 #dijo:-97 #disc:33 #dlin:26 #dond:52
#dora:52 #drop:-27 #each:67 #eaki:40 #eall:51 #eces:-66 #ecib:44 #ecir:28 #ecog:57 #ecoj:-30 #econ:61 #eeti:33
#efon:52 #egoc:58 #egue:35 #egun:37 #ehin:-28 #ejar:-41 #ejen:-30 #elef:52 #elie:25 #ello:-36 #ells:-37 #elon:35
#emai:-34 #empr:67 #ends:-25 #engl:-51 #enor:-46 #enti:84 #entr:-31 #epla:-32 #eply:72 #erda:-25 #erdo:31 #eres:102
#eria:-30 #erio:-43 #eron:66 #eros:-54 #erst:-53 #erte:36 #esco:32 #escr:57 #esel:41 #esnt:-28 #esor:-42 #espo:48
#essa:-33 #esta:39 #este:27 #esto:200 #etes:-25 #etin:33 #even:-40 #expl:-41 #exti:27 #falt:-28 #favo:32 #fech:-46
#find:-58 #fono:52 #form:54 #free:-30 #gale:-25 #game:33 #gano:-62 #gara:118 #garr:-29 #gave:45 #gits:49 #glis:-52
#goci:58 #grab:-27 #guar:34 #guen:43 #guie:32 #gunt:34 #gust:50 #haga:-57 #hago:119 #hani:69 #help:135 #here:-46
#hese:132 #hind:-28 #hine:-32 #hing:-28 #hitc:-37 #hora:-50 #iben:58 #ibie:36 #ibir:44 #icar:-29 #ices:41 #idad:-30
#idea:-120 #iden:73 #ider:-56 #idio:-81 #idnt:36 #iero:67 #ieve:25 #igam:40 #igit:49 #igue:-27 #igui:60 #illa:-37
#inda:-56 #inde:-26 #info:232 #inst:51 #inte:-25 #inue:-25 #invi:58 #ions:30 #ious:-43 #ique:44 #ires:-46 #irme:37
#isco:-25 #iscu:58 #isnt:-51 #isos:-42 #itch:-37 #jaro:-27 #jueg:-43 #june:44 #just:64 #keep:-37 #king:99 #know:60
#labr:37 #laro:-33 #late:32 #latt:-30 #lava:41 #lave:-31 #leas:25 #lefo:52 #legi:168 #lego:-27 #legu:45 #leve:43
#lgui:-28 #liev:25 #lind:-57 #liqu:-40 #list:40 #lkin:59 #llam:36 #llav:-31 #ller:72 #llev:46 #loca:-30 #look:-47
#luga:85 #lvid:-38 #mach:-32 #maci:84 #mail:-37 #make:114 #mand:-61 #many:-29 #mari:-45 #mate:-47 #mber:48 #mbia:-42
#meas:-42 #mech:69 #meet:33 #menm:37 #ming:60 #mist:-44 #movi:41 #mpan:35 #mpre:54 #much:-62 #muni:40 #name:115
#ndar:-25 #nder:-44 #ndin:39 #ndli:26 #need:-34 #nego:58 #nfor:64 #ngan:-28 #ngli:-52 #nico:49 #noch:-39 #noth:-37
#noti:32 #nozc:67 #nsig:42 #nstr:41 #nsub:25 #ntac:49 #nted:49 #nter:-51 #ntif:136 #ntin:-25 #ntit:-46 #nuev:-41
#numb:55 #nume:25 #nybo:-41 #nyho:45 #obot:-26 #obre:-29 #oche:-38 #ocio:58 #oesn:-28 #olvi:-47 #omat:-40 #omin:60
#ompa:35 #omun:40 #onde:52 #ondi:47 #onga:-25 #ongo:56 #onoz:67 #onsi:38 #onta:49 #onti:-25 #opti:42 #orde:-54
#ordi:-41 #orma:58 #orne:27 #orre:33 #orry:25 #othe:47 #otic:40 #otro:-25 #ould:45 #ound:46 #ount:-32 #ours:47
#ovin:41 #owns:-31 #ozco:67 #pabl:-46 #pala:37 #pany:27 #para:41 #part:-53 #peak:-49 #pend:-26 #perd:42 #pero:44
#pert:44 #pete:-25 #plat:-29 #plea:27 #pliq:-29 #pond:43 #pong:31 #preg:34 #pres:41 #pued:-51 #quej:-44 #ques:71
#quie:73 #raba:-33 #rage:118 #rata:-85 #rday:-27 #rden:-54 #rdon:78 #read:-26 #real:30 #reci:41 #reco:109 #repl:41
#resa:64 #resp:45 #ribe:74 #ribo:-33 #riou:-43 #riti:26 #rmac:84 #rner:27 #robo:-26 #rong:-31 #roun:26 #rsel:51
#rten:44 #ruct:41 #runs:34 #sabe:-66 #saca:32 #salg:38 #same:-30 #sary:-52 #save:92 #scam:196 #scri:50 #scul:59
#self:91 #sell:-38 #seno:-46 #seri:-43 #shop:133 #shou:-32 #shut:49 #sigu:34 #sill:-25 #skin:76 #sobr:-30 #some:35
#sorr:25 #soun:28 #spea:-49 #spon:29 #ssar:-52 #staf:43 #stak:-44 #stee:-33 #stil:-27 #stop:-90 #stos:50 #stru:41
#tact:49 #take:-52 #talk:-25 #tall:74 #tand:31 #tape:-25 #tard:-26 #tche:-38 #tele:47 #tell:27 #tene:27 #text:38
#that:-60 #them:38 #thes:132 #thin:-29 #this:112 #thos:-36 #tica:-29 #tice:40 #tien:-65 #tifi:52 #tify:64 #till:-34
#time:-37 #ting:122 #tion:-25 #todo:-39 #toma:-40 #town:-27 #trae:-29 #trat:-85 #truc:42 #turn:35 #tuvi:62 #type:64
#uand:-58 #uard:34 #ucti:41 #uede:27 #uedo:-83 #uego:-34 #ueja:-44 #uevo:-32 #ugar:85 #uido:-34 #uien:61 #uier:44
#ulpe:54 #umbe:55 #umer:25 #unds:29 #unic:38 #unsu:25 #unta:28 #urse:50 #uste:37 #usto:55 #utch:-33 #utom:-40
#uvie:62 #vacu:-32 #vado:54 #vers:-51 #vida:-31 #vier:54 #ving:30 #viso:-49 #wait:35 #want:86 #weve:25 #when:-60
#wher:-25 #whom:201 #whos:46 #wise:-26 #with:30 #word:79 #work:-53 #woul:34 #writ:26 #wron:-29 #xpli:-40 #xtin:27
#ybod:-26 #year:-33 #yhow:45 #your:26 #yuda:132 %again_later%away:-29 %again_later%call_off:-27
%again_later%do_it:-57 %again_later%gone_car:-28 %again_later%lift:35 %again_later%question:37 %again_later%refuse:65
%again_later%who:72 %again_later%wrong_one:42 %agree%bad:-32 %agree%call_off:63 %agree%elsewhere:-28
%agree%leave_me:43 %agree%lift:-37 %agree%message:-31 %agree%noise:31 %agree%on_way:-31 %agree%place:-52
%agree%question:42 %agree%refuse:57 %agree%shift_it:32 %agree%start_again:72 %agree%wrong_one:-25 %away:-39
%away%leave_me:79 %away%question:44 %bad:52 %bad%elsewhere:-37 %bad%on_way:-26 %bad%phone:-47 %bad%question:-47
%bad%refuse:-56 %bad%start_again:-45 %bring:25 %bring%call_off:112 %bring%car:43 %bring%do_it:-38
%bring%elsewhere:-27 %bring%leave_me:-89 %bring%message:36 %bring%odometer:-63 %bring%shift_it:-31
%bring%start_again:-27 %bring%who:-181 %busy%call_off:33 %busy%refuse:40 %busy%who:59 %busy%wrong_one:33
%call_off:-40 %call_off%do_it:31 %call_off%elsewhere:-60 %call_off%fails:26 %call_off%family:-40
%call_off%gone_car:69 %call_off%how_long:-44 %call_off%leave_me:77 %call_off%lift:-38 %call_off%message:31
%call_off%phone:-28 %call_off%place:68 %call_off%question:116 %call_off%refuse:-54 %call_off%shift_it:30
%call_off%thanks:39 %call_off%who:-44 %car:-31 %car%do_it:39 %car%fails:25 %car%gone_car:-38 %car%message:-27
%car%on_way:30 %car%question:-44 %car%refuse:50 %car%who:69 %car_part:-32 %car_part%do_it:-35 %car_part%elsewhere:59
%car_part%question:-77 %car_part%staff:38 %do_it%elsewhere:-63 %do_it%family:-62 %do_it%how_long:-33
%do_it%leave_me:-49 %do_it%meaning:27 %do_it%noise:38 %do_it%odometer:-30 %do_it%on_way:38 %do_it%phone:43
%do_it%place:60 %do_it%question:54 %do_it%staff:-46 %doubt:-36 %doubt%question:-37 %doubt%refuse:-30 %doubt%staff:29
%elsewhere:182 %elsewhere%how_long:-33 %elsewhere%machine:101 %elsewhere%noise:-25 %elsewhere%phone:-67
%elsewhere%place:-53 %elsewhere%question:67 %elsewhere%refuse:-90 %elsewhere%shift_it:-52 %elsewhere%staff:70
%elsewhere%who:-125 %elsewhere%wrong_one:-105 %fails%gone_car:-37 %fails%leave_me:42 %fails%message:44
%fails%question:59 %fails%staff:36 %family:-35 %family%odometer:-44 %family%place:58 %family%question:55
%family%refuse:-72 %family%staff:-26 %gone_car:-37 %gone_car%leave_me:-40 %gone_car%lift:-29 %gone_car%refuse:127
%gone_car%who:37 %gone_car%wrong_one:34 %how_long:-71 %how_long%lift:36 %how_long%question:-31 %how_long%who:112
%how_long%wrong_one:26 %leave_me:-70 %leave_me%message:-45 %leave_me%odometer:-26 %leave_me%on_way:43
%leave_me%question:210 %leave_me%who:-343 %leave_me%wrong_one:-49 %lift:-32 %lift%refuse:-36 %lift%who:25
%machine:-177 %machine%question:44 %meaning:-115 %meaning%question:-85 %message%odometer:-48 %message%on_way:102
%message%phone:-35 %message%place:73 %message%question:262 %message%refuse:-68 %message%shift_it:25 %message%staff:36
%message%start_again:-57 %money:-96 %money%on_way:-30 %money%question:-57 %money%staff:-28 %odometer%phone:40
%odometer%place:41 %odometer%question:37 %odometer%wrong_one:33 %on_way%question:-35 %on_way%refuse:-42
%on_way%shift_it:37 %opening:-32 %opening%question:-27 %phone:-51 %phone%place:-27 %phone%question:37
%phone%staff:-85 %phone%start_again:-53 %place:-40 %place%question:-81 %place%shift_it:41 %place%wrong_one:91
%question:204 %question%shift_it:-82 %question%staff:62 %question%start_again:40 %question%who:127
%question%wrong_one:129 %refuse:-34 %refuse%staff:118 %refuse%who:-84 %refuse%wrong_one:-37 %season:-30 %shift_it:-26
%shift_it%wrong_one:27 %staff%who:-89 %staff%wrong_one:-29 %start_again:-46 %start_again%thanks:47
%start_again%who:29 %start_again%wrong_one:-33 %thanks:-40 %thanks%who:32 %who:392 @?:81 @car:-29 @confirm:-66
@later:45 @nothing:40 @reading:-67 @time:-61 @times:-105 @walk_in:-54 ^_a:77 ^_and:87 ^_are:-33 ^_ayuda:151
^_cancel:-54 ^_claro:-34 ^_como:219 ^_con:-37 ^_cual:69 ^_de:163 ^_disculpe:54 ^_do:47 ^_donde:-155 ^_dont:25
^_el:-63 ^_en:-28 ^_eres:52 ^_es:53 ^_eso:-44 ^_este:47 ^_estoy:-36 ^_gracias:-38 ^_help:127 ^_how:28 ^_i:-47
^_im:-25 ^_info:179 ^_is:95 ^_me:-112 ^_mi:-25 ^_my:-41 ^_ni:-61 ^_no:-31 ^_nombre:-54 ^_not:-26 ^_para:-55
^_perdon:44 ^_please:-50 ^_quien:102 ^_quienes:108 ^_quiero:-61 ^_remind:27 ^_se:46 ^_si:-61 ^_so:-82 ^_sorry:90
^_sounds:44 ^_take:-25 ^_tengo:-29 ^_that:-69 ^_unsubscribe:-76 ^_wait:85 ^_what:74 ^_which:-86 ^_who:-168 ^_whose:46
^_why:-61 ^_wrong:27 ^_y:94 ^_you:-26 ^_your:26 a:-104 a__and:-46 a__but:49 a__es:-39 a__le:25 a__lol:-37 a__no:-26
a__off:-26 a__or:-31 a__phone:42 a__que:-37 a_como:-51 a_dos:69 a_garage:65 a_new:37 a_person:32 a_que:46
a_recibir:-52 a_rip:-26 a_robot:-53 about_$:79 about_the:-45 about_this:-68 again_$:-27 agarro:-26 ago:25 ai:-97
alguien:-28 also:50 am:38 am_$:-59 am__talking:56 am_i:115 an_appointment:27 and:40 and__are:117 and__i:-26
and__you:25 and_did:25 and_lost:27 and_what:29 and_who:48 and_you:112 anda:30 anoche:-62 anoche_$:-62 another:-38
anybody:-41 anyhow:45 anyhow_$:50 are:107 are_$:87 are__guys:51 are__in:-75 are__located:30 are__on:-30
are__talking:-37 are_the:27 are_we:-30 are_you:55 around:29 asking:76 asking_$:59 at:-35 at__number:-33 at_this:-37
automated:-40 avisos:-42 avisos_$:-41 ayuda:134 ayuda_$:85 back:-27 baja:38 baja_$:46 be_$:31 be__that:39 been_to:33
behind:-28 believe:25 booking:37 business_$:-42 but__one:49 but_this:-62 by:-52 by__name:-33 by_that:-33 call:25
call_me:29 cambiar:-43 cambiar_la:-43 cambie:25 can__stop:47 can__talk:-70 cancel_it:36 cancela:25 car:-90 car_is:-81
carro:71 carro__de:-42 carro__el:53 cel:-40 cell:60 cell_$:73 cita:37 cita_$:41 cita__no:39 claro:-34 come:-48
come_to:-51 coming:72 coming_$:51 coming_from:27 como__de:75 como__hago:67 como__mi:127 como__que:-70 como_cuanto:-33
como_es:-40 como_le:66 como_me:101 como_no:-56 como_que:-25 como_saben:-65 como_se:64 company:27 company__this:28
company_is:30 con__hablo:38 con__me:39 con__tengo:49 contact:-56 corner:27 cosa:31 cosa_$:29 could:31 cual:38
cual__el:-27 cual__la:25 cual_de:-44 cual_es:-25 cuando:-59 dando:45 day_i:39 days:-32 days_$:-31 de:65 de__como:-47
de__de:61 de__dos:-36 de__lista:39 de__llantas:37 de__me:73 de__mensajes:31 de__son:31 de__taller:42 de_a:-48
de_baja:44 de_donde:303 de_la:55 de_los:28 de_otra:-25 de_que:89 de_una:-46 decir:32 dejaron:-27 dejen:-30
dejen_de:-30 dejo_de:79 del_carro:53 despues__que:37 di:-26 dia__mi:-30 dia__que:57 dias:-35 dice:-49 dice_que:-49
did:-29 did__find:-57 did__get:67 didnt:36 dieron:-38 digame:40 digame__es:25 digits:49 dijo:-97 disculpe:56 do:39
do__contact:-39 do__get:-110 do__go:30 do__have:39 do__keep:-36 do__know:155 do__owe:-28 do_i:70 do_this:-25
doesnt:-28 donde:52 donde__el:-70 donde__escriben:41 donde__que:-28 donde_es:-60 donde_me:74 dont__any:-38
dont__this:111 dont_have:86 dont_know:-161 dont_own:31 dont_want:55 dos_$:69 doy:34 due:25 due_for:47 each:79 el:-60
el__anoche:-62 el__carro:53 el__de:-100 el__la:40 el__las:38 el__llego:-26 el__o:77 el_carro:-34 el_de:64 el_del:53
el_gusto:66 el_mecanico:30 el_taller:-51 email:-34 en:-171 en__taller:-32 en_cual:-33 en_la:-29 en_persona:-29
equivocado:-28 era:-40 era_$:-26 eres:86 es:160 es_$:25 es__numero:-73 es_de:-37 es_el:-60 es_en:-28 es_este:99
es_la:-35 es_mi:-59 es_tardado:-34 es_un:-31 es_una:42 es_usted:-48 es_y:37 esa:-27 escriben:61 escriben_$:74
escribo:-33 ese:-38 eso:-49 eso_es:-32 esta:41 esta_el:-26 este:68 este_$:95 este__el:48 este__ya:-26 este_cel:-40
este_es:47 esto:168 esto_$:158 estos:51 even:-36 expliqueme:-29 falta:-28 favor:33 favor_$:47 fecha:-46 fecha_$:-46
find:-59 for:-118 for_$:-55 for__and:48 for_the:-26 for_what:47 free:-29 from_$:86 from_the:-26 fui:-58 gano:-62
garage:118 garage_$:27 garage__the:27 gave:45 gave_you:44 get:68 get__number:49 get__this:43 get__you:-93 get_my:146
get_off:57 get_there:-55 get_these:39 get_to:-93 getting_these:36 go:51 go_$:-26 go_on:-36 go_to:56 got__new:42
got_a:29 got_this:-30 got_to:-35 gracias__la:-28 gracias_por:-25 guardado:35 gusto:53 gusto_$:65 guy:-46 guy_who:-34
habla:25 habla_$:74 hablan:57 hablan_$:58 hablar:-98 hablo:35 hablo_$:57 hace_falta:-28 had__done:32 haga:-57
hago:119 hago__que:111 hago_para:71 have__do:-27 have__number:111 have_the:28 have_to:-51 hay:-62 hay_quien:-31 he:44
he_ido:46 help:135 help_$:157 here__week:25 hey__i:31 home:28 horas:-25 how__a:35 how__are:-31 how__can:-41
how__i:176 how__is:-30 how__you:104 how_did:63 how_do:97 how_long:-54 how_many:-27 how_much:-66 i:59 i__an:26
i__getting:46 i__got:-35 i__have:54 i__it:-28 i__know:-166 i__on:-57 i__out:69 i__own:30 i__them:28 i__there:-54
i__these:90 i__to:-58 i__want:53 i__yes:-25 i__you:73 i_am:-78 i_come:-42 i_dont:-32 i_get:-114 i_just:-57 i_know:140
i_owe:-43 i_speak:-91 i_stop:92 i_talk:-88 i_talking:56 idea:-120 idea_who:-59 identify:64 ido:46 if:85 if__dont:34
if_i:45 im:-30 im_not:29 in:-73 in_$:-77 in_my:99 info:162 info_$:82 info_please:96 informacion:84 informacion_$:107
is:64 is__a:90 is__about:40 is__again:30 is__and:118 is__appointment:-37 is__for:-69 is__from:34 is__me:79 is__my:30
is__not:-51 is__number:34 is__on:-31 is__one:-44 is__really:80 is__serious:-33 is__shop:-34 is__the:25 is_a:-53
is_it:60 is_no:-28 is_texting:57 is_that:-27 is_there:68 is_this:239 is_your:-43 isnt:-51 it:-31 it_$:-33 it__what:42
it__you:-25 it_and:68 it_done:31 it_from:34 it_is:-38 juego:-42 june:44 just:64 just__i:42 just__this:-42
just_got:-30 just_so:45 keep:-37 keep__me:-36 keep_texting:-36 know:30 know_$:90 know__you:-107 know_who:-91
know_you:122 la:-99 la__de:-31 la__para:38 la_lavadora:53 la_lista:42 landline:26 las_llantas:42 las_llaves:-31
later:42 later_on:48 lavadora:53 le__para:81 le_hace:28 le_hago:65 les:-69 let:-34 like_a:32 linda:-55 lista:30
lista_$:41 llamenme:37 llamenme_$:63 llantas:26 llantas_$:35 llaves:-31 llego:-27 llegue:-26 lleguen:71 lleguen_$:132
lleve:43 lo:-163 lo__y:-57 lo_que:-30 located:30 located_$:30 location:-50 lol:34 lol_$:53 long:-51 long__i:-37
looking:-26 los:-45 los__que:46 los_dos:-26 lugar:85 machine:-32 machine_$:-32 make:119 make_it:66 make_these:65
manda:-40 manden_$:41 many:-29 mas:-59 me:-35 me_$:-30 me__a:-46 me__de:73 me__el:-39 me__it:-31 me__por:-74
me__you:26 me_dejaron:-27 me_doy:48 me_escriben:61 me_esta:86 me_habla:-67 me_lo:-54 me_manda:-45 me_puede:41
me_va:-51 me_what:-27 me_who:82 mechanic:30 meeting:33 mensajes:47 mensajes_$:64 messages_$:-38 mi_cita:-61
mi_numero:64 mi_telefono:43 much:-56 my:54 my__to:-26 my__who:43 my_cell:83 my_info:52 my_mechanic:30 my_name:-36
my_number:44 nada_$:-54 name:61 name__your:46 necessary:-52 necessary_$:-52 negocio:58 never__to:33 never_been:35
new__and:40 new_phone:39 ni:-83 no:-60 no_$:-50 no__carro:54 no__con:45 no__conozco:28 no__el:44 no__guardado:34
no__lleguen:29 no__manden:27 no__mensajes:69 no__nada:51 no__que:-31 no__quien:-110 no__want:31 no__who:-28
no_era:-26 no_idea:-56 no_me:35 no_one:-39 no_quiero:34 no_sale:25 no_se:-177 no_soy:29 no_tengo:35 no_thanks:27
no_wait:-25 not__my:74 not__the:39 not__this:-52 not_contact:-39 not_in:74 not_me:-51 now:-25 now_$:-27 nuevo:-32
number:41 number__whatever:-28 numero:80 numero_$:69 numero__quien:36 numero_de:-59 numero_es:66 o:55 o__de:71
o_el:77 o_es:39 o_que:-44 of__business:30 of_my:28 of_these:-26 of_this:34 off:57 off_$:32 off__on:53 oil__the:-28
on:-33 on_$:62 on__corner:27 one:34 one_$:47 one_by:-27 one_i:26 opt:32 opt__of:47 opt_out:40 or_a:-42 or_the:92
other:92 otra_cosa:56 otro:-25 out_$:-29 out__the:-33 out_to:-30 owe:-43 own:25 own__car:30 owns:-31 palabra:37
para:57 para__de:43 para__es:-54 para__la:-46 para__no:124 para__se:26 para__ya:87 para_que:64 paren_$:-30 perdon:43
pero:44 pero_llamenme:106 person_$:-36 person_i:31 phone:26 phone_and:40 pin:-35 place:30 place__the:38 please_$:79
please_quit:-25 please_unsubscribe:-35 pongo:56 por:-47 por_donde:-37 por_favor:49 por_la:-27 pregunta:36 puede:35
puedo:-78 puedo__en:-29 puedo_hablar:-57 que:-133 que_$:-58 que__de:-44 que__es:164 que__hay:-37 que__me:164
que__no:38 que__para:81 que__que:93 que__son:48 que_dia:-29 que_es:-103 que_estan:-28 que_le:-43 que_me:-48 que_no:37
que_numero:66 que_taller:54 que_tengo:77 que_va:-48 que_ya:42 queja:-44 quien:62 quien__lo:-43 quien__usted:-47
quien__y:43 quien_eres:27 quien_es:158 quien_habla:96 quien_hablo:38 quien_tengo:49 quienes:27 quienes_son:33
quiero_nada:55 quiero_que:43 quiten_$:26 really:51 recibir:56 recibir_mensajes:35 remind__what:-25 reminders:-26
reply:72 rip:-26 robot:-26 runs:34 sabe:-48 saben:-66 saber:47 salgo:45 salgo__la:55 salgo_de:50 same:-30 saved:87
says_$:48 se:-65 se__de:-28 se__es:-156 se__hace:42 se__que:-56 se__yo:44 se_le:36 se_quienes:-107 sea:71 sea_$:-25
send:40 senor:-43 serious:-44 serious_$:-35 shop:142 shop_$:-92 shop__it:43 shop__the:-37 shop__this:37 shop_is:53
shut:49 si:25 si__dia:57 si__lo:-27 si__no:28 si__quiero:37 silla:-25 silla_de:-25 sin:-39 so__are:37 so__know:46
so_i:52 son:93 son_$:26 sorry:25 sounds:29 sounds__a:31 sounds_like:30 soy:28 speak:-90 speak_to:-90 still:-27
stop:-84 stop_$:-213 stop__these:40 stop_these:47 street__you:-28 street_are:-28 su:-25 su__y:39 su_nombre:39 sus:-31
take_$:31 tal:-46 talk:-84 talk_to:-85 talkin:42 talking_to:56 taller:38 taller_$:-98 taller_me:29 taller_son:51
tardado:-34 telefono:52 telefono_$:27 tell:27 tell_me:32 tengo__gusto:66 tengo__me:-86 tengo_el:60 tengo_guardado:34
tengo_que:46 tengo_quien:-86 texting:27 texts_$:-54 thanks__you:25 that:-60 that__at:-31 that__i:39 that_day:39
that_isnt:-47 that_name:-33 that_the:-28 the:-62 the__for:42 the__now:-31 the__of:26 the__off:54 the__on:27
the__place:79 the__to:69 the__who:-68 the__with:-42 the_corner:27 the_garage:68 the_guy:-36 the_place:-30
the_texts:54 the_tire:64 the_tires:-28 them:38 there_$:-48 there__no:-28 there_a:68 there_is:-31 these:132
these_days:-32 these_off:64 these_texts:-37 thing:-33 this:112 this_$:144 this__for:-34 this__i:34 this__it:51
this__my:28 this__the:32 this__who:58 this_about:40 this_again:31 this_and:25 this_for:-68 this_is:-45 this_list:34
this_the:58 this_to:26 those:-36 til:37 time:-28 tire:55 tire_place:61 tires:-45 tires_$:-30 to:41 to__it:79
to__shop:28 to__the:53 to__these:84 to__this:-50 to__what:-50 to_about:-64 to_do:-26 to_know:61 to_make:87 to_send:26
to_stop:25 to_the:-36 to_turn:74 to_you:-99 tow:-37 town_$:62 trae:-29 turn:60 turn__texts:53 turn_the:54 two:-31
type:64 un__o:-27 un_dia:44 un_robot:27 una:-44 una__o:47 unsubscribe:25 unsubscribe_$:64 unsubscribe_please:-31
up:41 use:25 use_a:25 usted:51 usted_$:-47 ustedes_$:-48 va:-100 va_$:-48 va_a:-50 voy_a:38 wait:44 want:-40
want_them:31 want_to:-48 wanted:49 wanted_to:51 wants:76 wants__know:75 wants_to:74 was:-47 way:41 way_to:54 we:43
we_talking:-29 weve:25 what:-33 what_$:-44 what__is:119 what__it:-47 what__the:44 what__this:66 what__we:-25
what__you:-78 what__your:-35 what_am:-30 what_did:-117 what_do:92 what_is:-35 what_it:-26 what_would:-51 when:-54
where:-25 where__are:-30 where_did:56 where_is:-33 where_you:-26 which__do:-55 which__is:-48 which_garage:70
which_shop:76 who:37 who__are:-29 who__i:-25 who__it:69 who__texting:28 who__the:-86 who__to:62 who__you:248
who_am:116 who_are:176 who_can:-72 who_did:-30 who_is:160 who_this:63 who_you:-105 whom:201 whose:46 why:-63
why_$:-32 wise:-26 wise_$:-26 with:35 with_$:66 with_my:-27 with_the:-42 with_these:-25 won:-181 word:100 would:35
would__be:39 would_a:39 would_i:42 wrong:-29 wrong_number:-33 wrong_person:31 y:45 y_$:-32 y__donde:28 y__es:124
y__le:27 y__para:-37 y__un:56 y_como:-72 y_cuanto:33 y_de:41 y_eso:-34 y_me:-25 y_si:48 y_ustedes:41 ya:-33
ya__de:-25 ya__quien:-52 ya_no:91 ya_tengo:-56 yes:-37 yes_what:-25 yo:-34 yo__se:-26 yo__soy:44 yo_no:47 you:31
you_$:50 you__have:34 you__i:-26 you__it:-26 you__my:142 you__texting:-40 you_and:34 you_are:84 you_find:-57
you_from:-28 you_get:151 you_in:-75 you_keep:-36 you_know:-65 you_located:30 you_my:43 you_want:-46 your__is:-31
your_business:30 your_garage:-39 your_shop:-44 yourself:51
"""
