"""What speaks for and against `resume`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "resume"
BIAS = -152
WEIGHTS = """\
#abia:23 #acci:45 #acei:19 #acte:16 #acti:245 #ados:-14 #ages:19 #agre:25 #ajes:26 #akes:-17 #algo:-18 #alta:117
#amar:-19 #amen:16 #anda:-27 #ando:-28 #anks:-21 #anme:39 #anot:-15 #aque:-17 #aran:19 #arar:21 #arde:-15 #aren:-16
#arme:51 #aron:-27 #arre:26 #ater:-17 #ator:40 #ause:18 #back:46 #baja:26 #birl:31 #birm:27 #brar:-15 #bscr:87
#call:-38 #ccid:45 #ceit:19 #ceiv:23 #cela:-20 #chec:-14 #cibi:48 #cide:45 #cobr:-17 #come:191 #como:-17 #cons:32
#cord:39 #crib:119 #cted:19 #ctiv:245 #dand:-18 #dato:41 #deje:-43 #deme:35 #denm:32 #dent:41 #ders:54 #dont:-32
#earm:32 #ecei:23 #ecib:47 #ecor:36 #eden:66 #eeks:-14 #egre:70 #egue:23 #eite:19 #eive:23 #ejen:-31 #ejor:15
#elar:-19 #elva:43 #emin:44 #empe:60 #enga:-21 #enme:62 #enti:16 #epen:20 #erdo:20 #erer:43 #esen:56 #esta:31
#este:-28 #eten:-19 #evam:19 #ever:-56 #exte:35 #exti:-16 #exto:25 #exts:73 #ezar:69 #forg:19 #from:-33 #game:36
#gand:18 #ganm:18 #gres:53 #guen:23 #habi:23 #hank:-33 #have:-37 #here:-43 #hese:-18 #hing:-17 #home:-14 #hone:17
#hora:-16 #iado:-21 #ibed:22 #ibir:36 #icho:23 #icia:67 #iden:42 #ider:19 #ight:-26 #imes:-27 #inde:47 #indl:15
#info:-18 #irlo:31 #irme:30 #isos:23 #issi:-17 #ista:66 #iten:-28 #iven:76 #june:-18 #just:-22 #keep:19 #king:-19
#lama:-22 #late:-33 #leas:15 #like:-29 #list:75 #llam:-25 #lvan:32 #lver:65 #mart:15 #mejo:15 #mero:-23 #meti:-14
#mind:67 #mist:21 #mont:-15 #more:20 #morn:-14 #mpez:69 #mpre:-14 #much:-19 #nada:-16 #ndan:-30 #nder:43 #ndly:15
#neve:-32 #ngam:37 #nged:19 #ning:-18 #noth:-16 #nsid:19 #nsta:15 #nsto:282 #nsub:-78 #ntar:14 #nuda:75 #nuev:117
#nume:-21 #oble:-19 #obra:-16 #oing:-15 #olve:65 #omen:193 #omet:-17 #once:15 #oner:34 #onga:48 #onsi:19 #onth:-15
#oppe:30 #oque:18 #orda:41 #orio:41 #orni:-14 #othe:-18 #otra:60 #otro:-25 #ough:-22 #ould:-25 #pent:20 #pera:-18
#perd:18 #pero:15 #pers:-17 #peza:69 #phon:17 #plan:19 #plea:31 #pone:32 #pong:48 #posa:14 #pped:28 #pued:64
#quen:-17 #quer:42 #quie:-15 #quit:-18 #raro:-16 #rdat:41 #rdon:20 #reac:168 #rece:22 #reci:35 #reco:35 #regr:70
#regu:38 #remi:44 #rese:54 #rest:48 #resu:183 #revo:-16 #riba:14 #ribe:87 #rios:39 #rlos:42 #rmis:-19 #rnin:-14
#rtes:15 #same:-17 #saqu:-16 #scri:116 #send:25 #senm:57 #side:15 #sign:-49 #sion:-23 #some:-24 #sper:-16 #spos:14
#ssio:-22 #stak:22 #star:79 #stop:233 #subs:87 #sume:61 #tard:-16 #tarm:15 #tart:84 #tear:30 #teng:-25 #tenm:-23
#text:52 #than:-34 #them:15 #ther:-33 #thes:-18 #thin:-23 #thum:-17 #time:-48 #ting:-33 #tire:-15 #tive:86 #topa:-27
#tori:48 #turn:16 #ubsc:87 #udar:74 #uede:56 #uelv:41 #uere:42 #ueva:18 #uevo:99 #uite:-28 #uito:15 #umer:-21
#unca:19 #undo:15 #unst:282 #unsu:-78 #vame:31 #vanm:20 #visa:16 #viso:-24 #volv:64 #vuel:54 #want:59 #week:-22
#what:-34 #will:-19 #with:-29 #wont:-63 #woul:-18 #xtea:30 #xtin:-16 #your:-16 %again_later:-70 %again_later%agree:52
%again_later%away:-24 %again_later%bring:55 %again_later%busy:-19 %again_later%car:-18 %again_later%car_part:-42
%again_later%do_it:17 %again_later%doubt:77 %again_later%fails:45 %again_later%family:16 %again_later%gone_car:-30
%again_later%how_long:-58 %again_later%leave_me:126 %again_later%lift:-16 %again_later%message:190
%again_later%money:-41 %again_later%noise:-29 %again_later%pay_day:-27 %again_later%question:-71
%again_later%refuse:-15 %again_later%season:-40 %again_later%shift_it:-30 %again_later%start_again:36
%again_later%thanks:-29 %again_later%who:-21 %again_later%wrong_one:17 %agree:-46 %agree%call_off:14
%agree%elsewhere:16 %agree%leave_me:-42 %agree%message:82 %agree%on_way:17 %agree%question:29 %agree%shift_it:36
%agree%start_again:102 %away:-73 %away%call_off:-21 %away%leave_me:-26 %away%start_again:-18 %bad:-22
%bad%question:16 %bad%refuse:-16 %bring:-59 %bring%call_off:50 %bring%do_it:40 %bring%family:16 %bring%message:-19
%bring%on_way:23 %bring%phone:21 %bring%shift_it:-23 %bring%start_again:55 %busy:-38 %busy%start_again:-23
%call_off:-144 %call_off%car:-17 %call_off%do_it:18 %call_off%elsewhere:-15 %call_off%fails:18 %call_off%gone_car:20
%call_off%how_long:-27 %call_off%leave_me:79 %call_off%money:-26 %call_off%noise:-20 %call_off%pay_day:-14
%call_off%place:21 %call_off%refuse:-121 %call_off%shift_it:-33 %call_off%start_again:-43 %call_off%who:-14
%call_off%wrong_one:55 %car:-59 %car%fails:-15 %car%gone_car:-14 %car%refuse:-16 %car%start_again:-25 %car_part:-87
%car_part%do_it:-25 %car_part%doubt:-19 %car_part%elsewhere:-19 %car_part%fails:-14 %car_part%leave_me:-24
%car_part%message:21 %car_part%question:14 %car_part%refuse:26 %car_part%shift_it:-27 %car_part%start_again:-20
%do_it%gone_car:29 %do_it%leave_me:-21 %do_it%message:58 %do_it%question:-23 %do_it%shift_it:-16
%do_it%start_again:39 %do_it%wrong_one:29 %doubt:58 %doubt%elsewhere:77 %doubt%fails:22 %doubt%leave_me:34
%doubt%message:79 %doubt%question:-14 %doubt%shift_it:64 %doubt%start_again:17 %doubt%wrong_one:72
%elsewhere%fails:26 %elsewhere%leave_me:46 %elsewhere%message:69 %elsewhere%question:-15 %elsewhere%shift_it:20
%elsewhere%start_again:15 %elsewhere%wrong_one:67 %fails:-50 %fails%how_long:-15 %fails%leave_me:16 %fails%message:25
%fails%on_way:-15 %fails%refuse:-68 %fails%shift_it:18 %fails%start_again:37 %family:23 %family%leave_me:25
%family%message:16 %family%odometer:25 %family%phone:26 %family%refuse:14 %family%start_again:22 %gone_car:28
%gone_car%message:118 %gone_car%odometer:24 %gone_car%refuse:36 %gone_car%start_again:24 %gone_car%wrong_one:83
%how_long:-63 %how_long%shift_it:-19 %how_long%start_again:-41 %how_long%wrong_one:-14 %leave_me:-59
%leave_me%message:-163 %leave_me%on_way:37 %leave_me%phone:24 %leave_me%question:29 %leave_me%shift_it:24
%leave_me%start_again:114 %leave_me%wrong_one:49 %lift:-23 %machine:-21 %machine%message:-15 %message:156
%message%on_way:-26 %message%place:25 %message%refuse:-50 %message%season:-18 %message%shift_it:69
%message%start_again:300 %message%wrong_one:140 %money:-63 %money%start_again:-22 %noise:-52 %noise%start_again:-35
%odometer%phone:14 %on_way:-51 %on_way%wrong_one:-22 %pay_day:-35 %pay_day%season:-14 %pay_day%start_again:-17
%phone:-44 %phone%start_again:16 %place:-22 %place%question:-28 %question:-66 %question%refuse:27
%question%wrong_one:14 %refuse:-242 %refuse%start_again:-128 %refuse%thanks:-18 %refuse%wrong_one:-22 %season:-53
%season%start_again:-29 %shift_it:22 %shift_it%wrong_one:44 %smoke_smell:-15 %staff:-44 %staff%wrong_one:-24
%start_again:596 %start_again%thanks:-21 %thanks:-46 %thanks%wrong_one:14 %who:-30 @?:-64 @after_visit:-53 @car:-18
@confirm:-114 @confirm_stop:-34 @day:-20 @later:-116 @nothing:122 @odometer:-18 @offers:-58 @reading:-24 @time:-16
@times:-101 @walk_in:-19 ^_ask:-39 ^_can:-29 ^_changed:14 ^_dejen:-25 ^_do:-18 ^_dont:-16 ^_empezar:77 ^_i:62
^_im:-24 ^_info:-17 ^_it:-15 ^_kindly:15 ^_la:-27 ^_mi:31 ^_my:16 ^_never:-18 ^_no:-87 ^_not:-15 ^_opt:164 ^_para:-28
^_please:-15 ^_pueden:15 ^_put:23 ^_quiero:21 ^_quitenme:-16 ^_se:-15 ^_si:-15 ^_sign:-40 ^_start:121 ^_stop:-70
^_thanks:-16 ^_the:-14 ^_turn:17 ^_unsubscribe:-86 ^_vuelvan:15 ^_what:-29 ^_wont:-45 ^_wrong:-14 ^_yo:-28 a:42
a__en:15 a__from:-15 a__that:14 a_bit:-24 a_la:78 a_mandarme:22 accident:45 aceite:19 add:52 again_$:80
again__june:-19 again_in:-64 all:-14 alta:118 another:-15 are:-39 asi:-18 ask:-49 ask__again:-41 ask_me:-43 at:-33
aviso:-46 aviso_$:-38 avisos:23 avisos_$:20 back:47 back_$:-38 back__the:17 back__you:-15 back_in:65 back_on:47
back_up:44 baja:27 bit:-24 by:47 by__put:22 by_accident:46 call:-21 can__me:30 can_text:29 can_you:-18 cancelar:-19
car:-29 changed:19 changed__mind:23 changed_my:23 cobraron:-15 como:-17 con:-23 contact:-17 cuanto__el:14 de:49
de__a:24 de__de:17 de__en:16 de__lista:-63 de__textos:-35 de_alta:50 de_baja:35 de_la:-47 de_mandar:-20
de_mandarme:-26 de_nuevo:128 de_su:-26 dejen:-30 dejen_de:-30 del:-15 deme:27 denme:22 denme_de:22 di:41 di_de:42
do:-33 dont:-32 dont_have:-14 doy:20 el_martes:16 empezar:69 en__lista:29 en_la:23 en_los:18 end:-20 end_$:-14 es:-23
escribir:-23 escribir_$:-29 esposa:14 este:-26 ever:-16 favor_$:14 for:-33 from:-33 from__back:-14 from_the:-15
get:-19 get__to:-16 get_back:-17 got:-16 have:-37 have__back:-15 here:-20 hit:36 home:-14 i:70 i__in:19 i__it:-21
i__stop:36 i__the:43 i_have:-15 i_hit:41 i_stopped:18 i_want:56 im:-28 in:98 in_$:179 in_a:-21 in_june:-18 info:-17
info_$:-16 ir:15 ir_el:17 is:-72 it:-125 it_back:-19 june:-18 june_$:-24 just:-22 keep:20 kindly:15 kindly__my:16
la:-23 la__vez:-27 la_lista:75 la_otra:-25 late:-16 later:-16 le:-32 lease:-16 les:-31 les_aviso:-25 like:-29 list:31
list_$:32 lista:49 lista_$:44 lo:-35 los:128 los_avisos:23 los_mensajes:45 los_recordatorios:15 los_textos:15
mandando:-18 martes:15 martes_$:17 mas:-23 may:14 me__a:-14 me__again:27 me__de:35 me__favor:14 me__in:-15 me__on:27
me__to:16 me__up:36 me_back:119 me_cobraron:-15 me_in:-17 me_on:14 me_up:-71 mejor:15 mensaje:-18 mensajes:26
mensajes__vez:25 mensajes_otra:25 message:-18 messages:19 mi_esposa:14 mind:23 mistake:22 more:22 more_$:18 my:50
my__i:16 my__on:15 my__please:15 my__to:22 my_mind:23 my_number:14 nada:-16 never:-30 no:-102 no__a:-28
no__mensajes:-15 no_me:-19 no_quiero:-29 no_sigan:-22 no_vuelvan:-27 not:-40 nuevo:100 nuevo_$:50 number__your:15
numero:-21 of:-19 off:-28 ok_$:-20 on:34 on_$:45 on__list:36 on_your:16 once:15 opt:186 opt_me:33 opt_out:-29 otra:60
otra_vez:79 otro:-25 out:-42 out_$:-39 para:-19 para__me:15 perdon:20 permission:-16 pero:16 phone:18 plan:20
please:31 please_$:47 please__me:16 please_stop:-20 please_unsubscribe:-21 poner:35 pongame:37 por:20 por_texto:15
pueden:66 pueden__a:23 pueden__de:29 puedo__el:17 puedo_ir:17 put:40 put__back:48 put_me:47 que:27 que_me:30
querer:43 quiero__a:36 quiero_cancelar:-19 quit:-14 quitenme:-21 quitenme_de:-17 quito:15 receive:23 recibir:17
recordatorios:41 recordatorios_$:15 reminders:54 reminders_again:24 restart:35 same:-17 se:-25 send:28 send_me:16
si:22 si_$:20 sigan_mandando:-18 sign:-46 sign__up:-67 sign_me:-33 sin:56 sin_querer:43 start:52 start__me:21
start_texting:16 stop:-38 stop_$:-30 stop__me:-28 stop_by:41 stop_sending:-19 stop_texting:-29 stopped:31 su:-30
su_lista:-26 sus:34 tarde:-14 text:-65 text__again:22 textearme:33 texting:-16 textos_$:-15 texts:73 texts_again:66
thanks:-20 that_$:14 the:-16 the__again:21 the_back:-22 the_list:32 the_messages:28 the_reminders:44 the_texts:38
them:15 these:-18 time:-17 times:-16 to:-44 to_be:14 to_receive:23 to_start:-16 to_you:-16 too:-16 try:-16
try__again:-14 try_me:-15 turn:25 turn_the:16 un:-19 unsubscribe:-100 unsubscribe_$:-65 unsubscribed:22 up:-39
up_$:-53 vez:69 vez_$:91 volver:65 volver_a:65 vuelvan__mandarme:15 want:59 want_the:21 want_to:25 was__a:14 way:-25
weeks:-14 what:-33 will:-19 with:-22 wont:-63 wont_start:-59 would:-17 ya_no:-21 yo:-34 yo_les:-23 you:-53 you_$:-27
you__have:-14 you__text:26 you_can:30 you_text:-17
"""
