"""What speaks for and against `resume`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "resume"
BIAS = -139
WEIGHTS = """\
#abia:22 #acci:46 #acti:222 #ages:23 #agre:27 #ajes:30 #algo:-23 #alta:136 #anda:-29 #ando:-27 #anks:-23 #anme:45
#arme:59 #aron:-26 #ator:42 #back:51 #baja:34 #birl:32 #birm:31 #bscr:86 #call:-40 #ccid:46 #ceiv:33 #cibi:50
#cide:46 #come:173 #cons:23 #cord:39 #crib:124 #ctiv:222 #dato:42 #deje:-51 #deme:39 #denm:34 #dent:41 #ders:64
#dont:-37 #eact:139 #earm:35 #ecei:33 #ecib:49 #ecor:37 #eden:72 #egre:66 #egue:34 #eive:33 #ejen:-37 #elva:40
#emin:47 #empe:72 #enga:-22 #enme:68 #erer:53 #esen:56 #esta:35 #este:-32 #ever:-58 #exte:33 #exts:65 #ezar:79
#from:-35 #game:36 #gres:52 #guen:34 #habi:22 #hank:-36 #have:-35 #here:-42 #hese:-23 #iado:-23 #ibed:25 #ibir:46
#icia:58 #iden:41 #ight:-24 #imes:-28 #inde:54 #inic:58 #irlo:32 #irme:35 #isos:28 #ista:74 #iten:-33 #iven:85
#june:-23 #just:-22 #keep:23 #lama:-23 #late:-38 #list:88 #llam:-25 #lvan:32 #lver:70 #mero:-23 #mind:78 #mist:24
#more:23 #mpez:79 #much:-23 #ndan:-39 #nder:47 #neve:-31 #ngam:37 #nged:25 #nici:58 #nsta:23 #nsto:307 #nsub:-83
#nuda:83 #nuev:124 #oble:-22 #olve:70 #omen:177 #oner:22 #onga:50 #opal:-24 #oppe:23 #orda:42 #orio:42 #othe:-22
#otra:66 #otro:-27 #ough:-25 #ould:-28 #pall:-24 #peza:79 #plea:33 #pone:23 #pong:50 #pued:65 #quer:50 #rdat:42
#reac:136 #rece:30 #reci:39 #reco:36 #regr:66 #regu:35 #remi:46 #rese:55 #rest:44 #resu:191 #ribe:91 #rios:42
#rlos:41 #rmis:-24 #scri:121 #send:24 #senm:58 #sign:-47 #sion:-25 #some:-27 #ssio:-24 #stak:25 #star:62 #stop:272
#subs:86 #sume:73 #tart:66 #tear:32 #teng:-25 #tenm:-27 #text:43 #than:-37 #ther:-39 #thes:-23 #thin:-23 #this:-22
#time:-50 #ting:-35 #tiva:124 #tive:98 #topa:-24 #tori:49 #turn:22 #ubsc:86 #udar:83 #uede:61 #uelv:49 #uere:52
#uevo:111 #uite:-25 #unst:307 #unsu:-83 #vame:23 #vanm:24 #viso:-31 #volv:68 #vuel:59 #want:65 #week:-24 #what:-40
#with:-32 #wont:-59 #xtea:32 %again_later:-80 %again_later%agree:69 %again_later%away:-29 %again_later%bring:61
%again_later%busy:-23 %again_later%call_off:26 %again_later%car_part:-47 %again_later%do_it:24 %again_later%doubt:77
%again_later%fails:41 %again_later%gone_car:-37 %again_later%how_long:-57 %again_later%leave_me:141
%again_later%message:234 %again_later%money:-45 %again_later%noise:-33 %again_later%pay_day:-27
%again_later%question:-77 %again_later%season:-41 %again_later%shift_it:-33 %again_later%start_again:45
%again_later%thanks:-34 %again_later%who:-26 %agree:-30 %agree%leave_me:-48 %agree%message:108 %agree%shift_it:28
%agree%start_again:106 %away:-71 %away%call_off:-25 %away%leave_me:-24 %away%start_again:-25 %bad:-27 %bring:-53
%bring%call_off:54 %bring%do_it:51 %bring%on_way:25 %bring%shift_it:-25 %bring%start_again:57 %busy:-41
%busy%start_again:-28 %call_off:-158 %call_off%how_long:-27 %call_off%leave_me:88 %call_off%money:-25
%call_off%noise:-22 %call_off%place:28 %call_off%refuse:-135 %call_off%shift_it:-25 %call_off%start_again:-58
%call_off%wrong_one:56 %car:-57 %car%start_again:-29 %car_part:-80 %car_part%leave_me:-24 %car_part%start_again:-27
%do_it:29 %do_it%gone_car:28 %do_it%message:58 %do_it%start_again:56 %do_it%wrong_one:35 %doubt:61
%doubt%elsewhere:91 %doubt%fails:24 %doubt%leave_me:35 %doubt%message:94 %doubt%shift_it:70 %doubt%start_again:28
%doubt%wrong_one:84 %elsewhere%fails:29 %elsewhere%leave_me:39 %elsewhere%message:72 %elsewhere%start_again:23
%elsewhere%wrong_one:69 %fails:-55 %fails%leave_me:23 %fails%refuse:-58 %fails%start_again:26 %family%leave_me:27
%family%odometer:25 %family%phone:22 %gone_car:31 %gone_car%message:120 %gone_car%odometer:23 %gone_car%refuse:33
%gone_car%start_again:23 %gone_car%wrong_one:94 %how_long:-66 %how_long%start_again:-44 %leave_me:-60
%leave_me%message:-191 %leave_me%on_way:40 %leave_me%start_again:130 %leave_me%wrong_one:48 %message:167
%message%on_way:-32 %message%place:31 %message%refuse:-46 %message%shift_it:81 %message%start_again:348
%message%wrong_one:136 %money:-55 %money%start_again:-27 %noise:-55 %noise%start_again:-40 %on_way:-50
%on_way%wrong_one:-24 %pay_day:-33 %phone:-48 %place%question:-28 %question:-76 %question%refuse:28
%question%start_again:-29 %refuse:-253 %refuse%start_again:-134 %season:-43 %season%start_again:-24 %shift_it:27
%shift_it%wrong_one:47 %staff:-48 %staff%wrong_one:-29 %start_again:631 %thanks:-52 %who:-34 @?:-67 @after_visit:-68
@car:-22 @confirm:-130 @confirm_stop:-63 @day:-28 @later:-133 @nothing:142 @offers:-52 @times:-100 @walk_in:-30
^_ask:-43 ^_can:-23 ^_dejen:-26 ^_deme:33 ^_empezar:85 ^_i:64 ^_im:-24 ^_la:-29 ^_me:-25 ^_mi:29 ^_no:-92 ^_opt:174
^_para:-26 ^_put:27 ^_quiero:24 ^_re:61 ^_sign:-32 ^_start:114 ^_stop:-66 ^_stopall:-24 ^_turn:23 ^_unsubscribe:-90
^_vuelvan:22 ^_what:-31 ^_wont:-41 ^_yo:-32 a:61 a_bit:-22 a_la:78 a_mandarme:29 accident:47 add:56 again_$:77
again__a:-23 again_in:-69 alta:137 are:-43 ask:-54 ask__again:-44 ask_me:-47 at:-38 aviso:-58 aviso_$:-48 avisos:28
back:52 back_$:-40 back__i:34 back__the:22 back_in:76 back_on:60 back_up:50 baja:37 bit:-22 by:46 by__put:25
by_accident:47 can__me:37 can_text:36 car:-30 changed:25 changed__mind:32 changed_my:32 con:-33 de:58 de__a:26
de__lista:-71 de__textos:-34 de_alta:57 de_baja:36 de_la:-54 de_mandarme:-26 de_nuevo:148 de_su:-31 dejen:-33
dejen_de:-33 deme:33 denme:24 denme_de:24 di:41 di_de:42 do:-34 dont:-37 empezar:79 en__lista:39 en_la:33 end:-24
es:-24 escribir:-33 escribir_$:-42 este:-29 for:-42 from:-35 get:-23 get_back:-22 got:-28 habia:22 have:-35 hit:36
i:67 i__in:22 i__it:-33 i__stop:36 i__the:43 i_hit:42 i_want:63 im:-26 in:105 in_$:190 in_june:-23 is:-76 it:-142
it_back:-31 june:-23 june_$:-29 keep:24 la__vez:-33 la_lista:84 la_otra:-30 le:-36 les:-35 les_aviso:-31 list:38
list_$:31 lista:54 lista_$:39 lo:-36 los:146 los_avisos:24 los_mensajes:53 mas:-22 me:-24 me__again:22 me__de:30
me__on:28 me__up:42 me_back:137 me_up:-73 mensaje:-22 mensajes:30 mensajes__vez:28 mensajes_otra:28 messages:23
mind:32 mistake:25 more:25 more_$:22 my:53 my_mind:32 never:-29 no:-120 no__a:-30 no_quiero:-37 no_sigan:-24
no_vuelvan:-29 not:-42 nuevo:112 nuevo_$:61 off:-28 on:33 on_$:46 on__list:33 opt:204 opt_me:38 opt_out:-27 otra:66
otra_vez:94 otro:-27 out:-40 out_$:-31 para:-23 pero__si:25 please:33 please_$:51 please_unsubscribe:-23 poner:25
pongame:37 pueden:72 pueden__a:22 pueden__de:32 put:46 put__back:56 put_me:55 que_me:31 querer:53 quiero__a:40
quitenme:-25 re:61 receive:33 recordatorios:43 recordatorios_$:22 reminders:65 reminders_again:28 restart:35 se:-22
send:23 si:27 sign:-43 sign__up:-68 sign_me:-28 sin:62 sin_querer:53 start:39 stop:-34 stop_$:-27 stop__me:-25
stop_by:42 stop_texting:-28 stopall:-24 stopall_$:-24 stopped:25 su:-34 su_lista:-30 sus:29 text:-49 text__again:38
textearme:36 texts:65 texts_again:66 the__again:28 the__please:22 the_back:-27 the_list:48 the_messages:27
the_reminders:49 the_texts:47 these:-23 this:-22 to:-32 to__list:30 to_receive:33 turn:32 turn_the:23
unsubscribe:-109 unsubscribe_$:-69 unsubscribed:25 up:-35 up_$:-46 vez:76 vez_$:100 volver:70 volver_a:71
vuelvan__mandarme:22 want:66 want_the:25 want_to:25 way:-30 what:-37 with:-26 wont:-59 wont_start:-55 ya_no:-24
yo:-32 yo__aviso:-28 yo_les:-27 you:-61 you_$:-29 you__text:33 you_can:35
"""
