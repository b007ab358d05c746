"""What speaks for and against `resume`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "resume"
BIAS = -140
WEIGHTS = """\
#abia:19 #acci:41 #acti:219 #agre:23 #ajes:23 #alta:101 #anda:-26 #ando:-25 #anks:-18 #anme:35 #arme:47 #aron:-24
#arre:22 #ator:35 #back:42 #baja:23 #birl:29 #birm:24 #bscr:72 #call:-35 #ccid:41 #ceiv:19 #cela:-18 #cibi:45
#cide:41 #come:164 #cons:27 #cord:34 #crib:100 #ctiv:219 #dato:36 #deje:-40 #deme:31 #denm:27 #dent:38 #ders:47
#dont:-29 #earm:31 #ecei:19 #ecib:44 #ecor:32 #eden:62 #egre:63 #egue:22 #eive:19 #ejen:-28 #elar:-18 #elva:37
#emin:39 #empe:52 #enga:-19 #enme:58 #erer:38 #esen:51 #esta:27 #este:-23 #eten:-18 #ever:-50 #exte:33 #exto:21
#exts:62 #ezar:60 #from:-31 #game:32 #gres:48 #guen:21 #habi:19 #hank:-28 #have:-34 #here:-39 #iado:-19 #ibed:20
#ibir:35 #icho:19 #icia:61 #iden:38 #ight:-23 #imes:-24 #inde:41 #irlo:29 #irme:27 #isos:21 #ista:64 #iten:-25
#iven:68 #just:-20 #lama:-19 #late:-30 #like:-26 #list:70 #llam:-21 #lvan:28 #lver:59 #mero:-21 #mind:59 #mist:19
#mpez:60 #ndan:-27 #nder:38 #neve:-29 #ngam:33 #nsto:267 #nsub:-75 #nuda:69 #nuev:108 #nume:-19 #olve:59 #omen:166
#oner:29 #onga:43 #oppe:26 #orda:36 #orio:36 #otra:54 #otro:-22 #ough:-20 #ould:-23 #pent:18 #peza:60 #plea:28
#pone:27 #pong:43 #pped:24 #pued:59 #quer:38 #rdat:36 #reac:150 #rece:18 #reci:33 #reco:31 #regr:63 #regu:34 #remi:38
#rese:49 #rest:42 #resu:164 #ribe:72 #rios:35 #rlos:39 #scri:97 #send:22 #senm:52 #sign:-44 #sion:-20 #some:-22
#ssio:-20 #stak:20 #star:66 #stop:232 #subs:72 #sume:54 #tart:70 #tear:28 #teng:-22 #tenm:-21 #text:42 #than:-29
#ther:-30 #thin:-21 #time:-42 #ting:-31 #tive:77 #topa:-20 #tori:42 #ubsc:72 #udar:69 #uede:53 #uelv:35 #uere:38
#uevo:93 #uite:-25 #umer:-19 #unst:267 #unsu:-75 #vame:26 #viso:-21 #volv:58 #vuel:46 #want:51 #week:-20 #what:-30
#with:-25 #wont:-59 #xtea:28 %again_later:-60 %again_later%agree:48 %again_later%away:-22 %again_later%bring:51
%again_later%car_part:-38 %again_later%doubt:69 %again_later%fails:39 %again_later%gone_car:-27
%again_later%how_long:-51 %again_later%leave_me:114 %again_later%message:170 %again_later%money:-37
%again_later%noise:-27 %again_later%pay_day:-24 %again_later%question:-63 %again_later%season:-35
%again_later%shift_it:-27 %again_later%start_again:34 %again_later%thanks:-24 %again_later%who:-19
%again_later%wrong_one:18 %agree:-44 %agree%leave_me:-41 %agree%message:71 %agree%question:23 %agree%shift_it:31
%agree%start_again:90 %away:-64 %away%call_off:-19 %away%leave_me:-22 %bad:-22 %bring:-49 %bring%call_off:46
%bring%do_it:36 %bring%message:-20 %bring%on_way:22 %bring%phone:19 %bring%shift_it:-20 %bring%start_again:51
%busy:-33 %busy%start_again:-19 %call_off:-126 %call_off%gone_car:20 %call_off%how_long:-23 %call_off%leave_me:72
%call_off%money:-23 %call_off%noise:-18 %call_off%place:19 %call_off%refuse:-108 %call_off%shift_it:-29
%call_off%start_again:-37 %call_off%wrong_one:52 %car:-52 %car%start_again:-22 %car_part:-79 %car_part%do_it:-22
%car_part%leave_me:-21 %car_part%refuse:22 %car_part%shift_it:-24 %car_part%start_again:-19 %do_it%gone_car:28
%do_it%message:55 %do_it%question:-20 %do_it%start_again:36 %do_it%wrong_one:30 %doubt:52 %doubt%elsewhere:70
%doubt%fails:19 %doubt%leave_me:30 %doubt%message:71 %doubt%shift_it:58 %doubt%wrong_one:65 %elsewhere%fails:23
%elsewhere%leave_me:40 %elsewhere%message:62 %elsewhere%shift_it:18 %elsewhere%wrong_one:60 %fails:-52
%fails%message:23 %fails%refuse:-63 %fails%start_again:29 %family:19 %family%leave_me:22 %family%odometer:22
%family%phone:23 %family%start_again:19 %gone_car:32 %gone_car%message:108 %gone_car%odometer:21 %gone_car%refuse:32
%gone_car%start_again:20 %gone_car%wrong_one:79 %how_long:-57 %how_long%start_again:-36 %leave_me:-50
%leave_me%message:-150 %leave_me%on_way:34 %leave_me%phone:21 %leave_me%question:24 %leave_me%shift_it:21
%leave_me%start_again:104 %leave_me%wrong_one:44 %lift:-20 %machine:-19 %message:133 %message%on_way:-25
%message%place:23 %message%refuse:-47 %message%shift_it:63 %message%start_again:266 %message%wrong_one:127 %money:-57
%money%start_again:-20 %noise:-47 %noise%start_again:-32 %on_way:-45 %on_way%wrong_one:-19 %pay_day:-31 %phone:-39
%place:-19 %place%question:-24 %question:-62 %question%refuse:22 %refuse:-217 %refuse%start_again:-117
%refuse%wrong_one:-20 %season:-47 %season%start_again:-25 %shift_it:21 %shift_it%wrong_one:40 %staff:-39
%staff%wrong_one:-22 %start_again:526 %thanks:-40 %who:-27 @?:-59 @after_visit:-48 @confirm:-102 @confirm_stop:-29
@day:-18 @later:-103 @nothing:104 @offers:-53 @reading:-22 @times:-92 @walk_in:-18 ^_ask:-35 ^_can:-26 ^_dejen:-23
^_empezar:66 ^_i:52 ^_im:-22 ^_la:-25 ^_mi:27 ^_no:-77 ^_opt:154 ^_para:-25 ^_put:21 ^_quiero:19 ^_sign:-36
^_start:107 ^_stop:-61 ^_unsubscribe:-81 ^_what:-26 ^_wont:-42 ^_yo:-25 a:39 a_bit:-22 a_la:72 a_mandarme:20
accident:41 add:45 again_$:72 again_in:-57 alta:101 are:-34 ask:-44 ask__again:-37 ask_me:-39 at:-29 aviso:-41
aviso_$:-34 avisos:21 avisos_$:18 back:43 back_$:-34 back_in:60 back_on:42 back_up:39 baja:24 bit:-22 by:42
by__put:20 by_accident:41 call:-19 can__me:27 can_text:25 cancelar:-18 car:-25 changed__mind:21 changed_my:21 con:-21
de:44 de__a:22 de__lista:-55 de__textos:-32 de_alta:43 de_baja:31 de_la:-40 de_mandar:-19 de_mandarme:-23
de_nuevo:116 de_su:-23 dejen:-28 dejen_de:-28 deme:24 denme:18 denme_de:19 di:37 di_de:37 do:-29 dont:-29 empezar:60
en__lista:26 en_la:20 end:-18 es:-18 escribir:-20 escribir_$:-26 este:-22 for:-28 from:-31 get:-18 have:-34 here:-18
hit:33 i:59 i__it:-20 i__stop:33 i__the:38 i_hit:37 i_want:49 im:-26 in:93 in_$:165 in_a:-20 is:-64 it:-115
it_back:-18 june_$:-22 just:-20 la__vez:-25 la_lista:71 la_otra:-23 le:-27 les:-28 les_aviso:-23 like:-26 list:26
list_$:28 lista:48 lista_$:42 lo:-31 los:112 los_avisos:21 los_mensajes:39 mas:-20 me__again:24 me__de:31 me__on:24
me__up:32 me_back:108 me_up:-64 mensajes:23 mensajes__vez:23 mensajes_otra:23 mind:21 mistake:20 more:19 my:43
my__to:19 my_mind:21 never:-26 no:-90 no__a:-25 no_quiero:-24 no_sigan:-20 no_vuelvan:-24 not:-35 nuevo:94 nuevo_$:48
numero:-19 off:-25 ok_$:-18 on:30 on_$:40 on__list:32 opt:174 opt_me:30 opt_out:-24 otra:54 otra_vez:71 otro:-22
out:-35 out_$:-33 para:-18 please:28 please_$:44 please_stop:-18 please_unsubscribe:-21 poner:30 pongame:33 pueden:62
pueden__a:20 pueden__de:28 put:36 put__back:44 put_me:43 que:22 que_me:26 querer:38 quiero__a:33 quiero_cancelar:-18
quitenme:-19 receive:20 recordatorios:36 reminders:48 reminders_again:21 restart:31 se:-22 send:24 sign:-41
sign__up:-60 sign_me:-30 sin:50 sin_querer:38 start:42 start__me:19 stop:-31 stop_$:-23 stop__me:-25 stop_by:37
stop_texting:-27 stopped:26 su:-27 su_lista:-23 sus:30 text:-58 text__again:19 textearme:32 texts:62 texts_again:58
the__again:19 the_back:-20 the_list:29 the_messages:24 the_reminders:38 the_texts:35 to:-43 to_receive:20 turn:23
unsubscribe:-95 unsubscribe_$:-61 unsubscribed:20 up:-36 up_$:-48 vez:62 vez_$:82 volver:59 volver_a:59 want:51
want_the:19 want_to:21 way:-22 what:-30 with:-20 wont:-59 wont_start:-55 ya_no:-18 yo:-31 yo_les:-21 you:-49
you_$:-25 you__text:23 you_can:26
"""
