"""What speaks for and against `resume`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "resume"
BIAS = -188
WEIGHTS = """\
#abia:18 #acci:34 #acti:162 #ages:21 #agre:19 #ajes:30 #alta:113 #anda:-18 #ando:-19 #anks:-18 #anme:35 #arme:47
#aron:-20 #ator:33 #back:36 #baja:23 #birl:23 #birm:28 #bscr:71 #call:-31 #ccid:34 #ceiv:23 #cibi:38 #cide:34
#come:117 #cons:18 #cord:30 #crib:107 #ctiv:162 #dato:33 #deje:-37 #deme:30 #denm:28 #dent:30 #ders:54 #dont:-29
#eact:102 #earm:25 #ease:22 #ecei:23 #ecib:37 #ecor:29 #eden:59 #egre:48 #egue:25 #eive:23 #ejen:-27 #elva:33
#emin:40 #empe:64 #enme:53 #erer:38 #esen:39 #esta:29 #este:-23 #ever:-46 #exte:23 #exts:53 #ezar:69 #from:-26
#game:25 #gres:37 #guen:24 #habi:18 #hank:-30 #have:-26 #here:-34 #ibir:41 #icia:40 #iden:30 #ight:-20 #imes:-19
#inde:45 #inic:40 #irlo:23 #irme:31 #isos:24 #ista:56 #iten:-22 #iven:61 #keep:19 #late:-29 #leas:23 #list:67
#llam:-18 #lvan:27 #lver:56 #mind:64 #more:18 #mpez:69 #much:-18 #ndan:-29 #nder:40 #neve:-26 #ngam:26 #nged:19
#nici:40 #nsta:18 #nsto:213 #nsub:-54 #nuda:60 #nuev:98 #olve:56 #omen:119 #oner:18 #onga:35 #oppe:18 #orda:33
#orio:33 #otra:56 #otro:-21 #ough:-19 #ould:-23 #peza:69 #plea:34 #pone:19 #pong:35 #pued:54 #quer:36 #rdat:34
#reac:99 #rece:21 #reci:28 #reco:28 #regr:48 #regu:25 #remi:39 #rese:38 #rest:37 #resu:140 #ribe:75 #rios:33 #rlos:29
#scri:104 #send:22 #senm:40 #sign:-32 #sion:-18 #some:-20 #star:69 #stop:199 #subs:71 #sume:57 #tart:73 #tear:22
#teng:-18 #tenm:-18 #text:39 #than:-31 #ther:-31 #thin:-18 #this:-19 #time:-37 #ting:-27 #tiva:90 #tive:71 #tori:39
#turn:18 #ubsc:71 #udar:60 #uede:50 #uelv:40 #uere:38 #uevo:87 #unst:213 #unsu:-54 #vame:19 #vanm:19 #viso:-20
#volv:55 #vuel:48 #want:46 #week:-20 #what:-34 #with:-26 #wont:-44 #xtea:22 %again_later:-54 %again_later%agree:51
%again_later%away:-25 %again_later%bring:45 %again_later%busy:-19 %again_later%car:-18 %again_later%car_part:-37
%again_later%do_it:19 %again_later%doubt:64 %again_later%fails:33 %again_later%gone_car:-27 %again_later%how_long:-43
%again_later%leave_me:102 %again_later%message:187 %again_later%money:-35 %again_later%noise:-24
%again_later%pay_day:-21 %again_later%question:-63 %again_later%season:-34 %again_later%shift_it:-21
%again_later%start_again:40 %again_later%thanks:-27 %again_later%who:-20 %agree:-18 %agree%leave_me:-30
%agree%message:94 %agree%shift_it:21 %agree%start_again:87 %away:-57 %away%call_off:-21 %away%start_again:-21
%bad:-22 %bring:-34 %bring%call_off:39 %bring%do_it:39 %bring%shift_it:-19 %bring%start_again:41 %busy:-34
%busy%start_again:-23 %call_off:-138 %call_off%how_long:-23 %call_off%leave_me:62 %call_off%money:-20
%call_off%place:21 %call_off%refuse:-108 %call_off%shift_it:-19 %call_off%start_again:-43 %call_off%wrong_one:39
%car:-47 %car%start_again:-24 %car_part:-65 %car_part%leave_me:-18 %car_part%start_again:-21 %do_it:25
%do_it%gone_car:21 %do_it%message:49 %do_it%start_again:41 %do_it%wrong_one:25 %doubt:52 %doubt%elsewhere:75
%doubt%leave_me:24 %doubt%message:76 %doubt%shift_it:59 %doubt%start_again:25 %doubt%wrong_one:71 %elsewhere%fails:19
%elsewhere%leave_me:28 %elsewhere%message:61 %elsewhere%shift_it:22 %elsewhere%start_again:23 %elsewhere%wrong_one:58
%fails:-28 %fails%refuse:-44 %fails%start_again:39 %family%leave_me:22 %family%odometer:19 %family%phone:18
%gone_car:32 %gone_car%message:89 %gone_car%odometer:19 %gone_car%refuse:25 %gone_car%start_again:19
%gone_car%wrong_one:75 %how_long:-52 %how_long%start_again:-34 %leave_me:-34 %leave_me%message:-136
%leave_me%on_way:29 %leave_me%start_again:96 %leave_me%wrong_one:35 %message:162 %message%on_way:-23
%message%place:23 %message%refuse:-38 %message%shift_it:69 %message%start_again:290 %message%wrong_one:107 %money:-45
%money%start_again:-21 %noise:-42 %noise%start_again:-29 %on_way:-40 %on_way%wrong_one:-18 %pay_day:-27 %phone:-39
%place%question:-22 %question:-71 %question%refuse:20 %question%start_again:-27 %refuse:-211 %refuse%start_again:-102
%refuse%thanks:-18 %season:-37 %season%start_again:-20 %shift_it:29 %shift_it%wrong_one:41 %staff:-39
%staff%wrong_one:-22 %start_again:534 %thanks:-45 %who:-29 @?:-52 @after_visit:-57 @car:-19 @confirm:-107
@confirm_stop:-54 @day:-26 @later:-104 @nothing:105 @offers:-46 @times:-87 @walk_in:-26 ^_ask:-30 ^_can:-18 ^_deme:25
^_empezar:74 ^_i:49 ^_la:-19 ^_me:-22 ^_mi:23 ^_no:-71 ^_opt:124 ^_para:-18 ^_put:22 ^_re:49 ^_sign:-20 ^_start:102
^_stop:-46 ^_unsubscribe:-60 ^_what:-25 ^_wont:-30 ^_yo:-22 a:43 a_la:53 a_mandarme:23 accident:34 add:43 again_$:61
again_in:-51 alta:113 are:-34 ask:-40 ask__again:-32 ask_me:-34 at:-32 aviso:-43 aviso_$:-34 avisos:24 avisos_$:18
back:37 back_$:-33 back__i:24 back_in:54 back_on:48 back_up:39 baja:26 by:33 by_accident:35 can__me:29 can_text:27
car:-24 changed:19 changed__mind:25 changed_my:25 con:-27 de:49 de__a:18 de__lista:-47 de__textos:-23 de_alta:44
de_baja:25 de_la:-38 de_mandarme:-19 de_nuevo:111 de_su:-21 dejen:-24 dejen_de:-24 deme:25 denme:19 denme_de:19 di:29
di_de:30 do:-28 dont:-29 empezar:69 en__lista:30 en_la:26 end:-18 es:-18 escribir:-25 escribir_$:-31 este:-20 for:-33
from:-26 got:-21 habia:18 have:-26 hit:26 i:46 i__in:18 i__it:-24 i__stop:27 i__the:32 i_hit:30 i_want:44 im:-19
in:74 in_$:140 is:-65 it:-112 it_back:-21 june_$:-20 keep:19 la__vez:-22 la_lista:63 la_otra:-20 le:-30 les:-25
les_aviso:-21 list:28 list_$:22 lista:43 lista_$:31 lo:-30 los:114 los_avisos:21 los_mensajes:39 mas:-20 me__again:19
me__de:21 me__on:22 me__up:32 me_back:99 me_up:-50 mensajes:30 mensajes__vez:22 mensajes_otra:22 messages:21 mind:25
more:20 more_$:18 my:40 my_mind:25 never:-24 no:-98 no__a:-21 no_quiero:-30 no_vuelvan:-20 not:-34 nuevo:87
nuevo_$:48 of:-18 off:-24 on:26 on_$:36 on__list:26 opt:145 opt_me:28 opt_out:-19 otra:56 otra_vez:77 otro:-21
out:-31 out_$:-22 pero__si:20 please:34 please_$:41 poner:20 pongame:26 pueden:59 pueden__a:20 pueden__de:22 put:35
put__back:41 put_me:40 que_me:24 querer:38 quiero__a:30 re:49 receive:23 recordatorios:34 recordatorios_$:18
reminders:54 reminders_again:20 restart:30 se:-19 send:20 si:22 sign:-29 sign__up:-46 sin:46 sin_querer:38 start:50
stop_$:-18 stop__me:-20 stop_by:31 stop_texting:-21 stopped:21 su:-24 su_lista:-21 sus:24 text:-37 text__again:28
textearme:26 texts:53 texts_again:50 the__again:20 the__please:18 the_back:-20 the_list:35 the_messages:22
the_reminders:40 the_texts:35 this:-19 to:-25 to__list:22 to_receive:23 turn:24 unsubscribe:-71 unsubscribe_$:-46
up:-23 up_$:-34 vez:65 vez_$:77 volver:56 volver_a:57 want:46 way:-22 what:-31 with:-21 wont:-44 wont_start:-41
ya_no:-20 yo:-22 yo__aviso:-18 yo_les:-18 you:-51 you_$:-22 you__text:25 you_can:27
"""
