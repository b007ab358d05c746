"""What speaks for and against `resume`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "resume"
BIAS = -215
WEIGHTS = """\
#acci:58 #acei:23 #acti:234 #ages:24 #agre:38 #ajes:33 #alta:108 #ance:-23 #anda:-49 #ando:-35 #ange:23 #anme:64
#anot:-23 #arme:63 #aron:-27 #arre:26 #ater:-22 #ator:43 #back:56 #baja:30 #birl:35 #birm:32 #bscr:62 #call:-39
#ccid:59 #ceit:23 #ceiv:31 #cela:-24 #chan:22 #cibi:51 #cide:58 #come:169 #cons:22 #cord:39 #crib:96 #ctiv:234
#dand:-28 #dato:43 #deje:-52 #deme:40 #denm:31 #dent:52 #ders:65 #dont:-41 #eact:151 #earm:38 #ecei:31 #ecib:39
#ecor:37 #eden:76 #egre:69 #egue:36 #eite:23 #eive:31 #ejen:-36 #elar:-24 #elva:52 #emin:46 #empe:56 #enga:-24
#enme:68 #erer:59 #escr:-22 #esen:59 #esta:29 #este:-31 #esub:107 #eten:-23 #ever:-51 #exte:36 #exts:75 #ezar:63
#from:-34 #game:40 #ganm:26 #gres:56 #guen:36 #hang:23 #hank:-25 #have:-36 #here:-42 #iado:-23 #ibed:26 #ibir:39
#icia:65 #iden:53 #ight:-26 #imes:-28 #inde:54 #indl:22 #inic:65 #inst:27 #irlo:35 #irme:35 #isos:28 #ista:83
#iten:-33 #iven:94 #just:-23 #king:-24 #late:-39 #list:89 #llam:-22 #lvan:44 #lver:67 #mand:-30 #mero:-23 #mind:88
#mist:28 #mpez:62 #much:-23 #ndan:-52 #nder:47 #ndly:22 #neve:-25 #ngam:37 #nged:35 #nici:65 #ning:-23 #nsta:33
#nsto:204 #nsub:-90 #nuda:88 #nuev:138 #olve:67 #omen:172 #oner:27 #onga:57 #orda:43 #orio:43 #othe:-24 #otra:59
#otro:-28 #ough:-22 #ould:-32 #pers:-22 #peza:63 #plea:30 #pone:27 #pong:57 #pued:60 #quer:56 #quit:-25 #rdat:43
#reac:147 #rece:28 #reci:28 #reco:36 #regr:69 #regu:37 #remi:46 #rese:54 #rest:42 #resu:178 #ribe:68 #rios:43
#rlos:43 #rmis:-32 #scri:94 #send:23 #senm:60 #sign:-48 #sion:-25 #some:-32 #ssio:-25 #stak:29 #star:55 #stat:30
#stop:207 #subs:62 #sume:71 #tart:61 #tate:30 #tear:35 #teng:-27 #tenm:-27 #text:70 #than:-26 #them:34 #ther:-42
#thin:-26 #time:-47 #ting:-35 #tiva:126 #tive:108 #tori:50 #turn:48 #ubsc:62 #udar:88 #uede:57 #uelv:61 #uere:59
#uevo:125 #uite:-26 #unst:204 #unsu:-90 #vame:22 #vanm:37 #viso:-33 #volv:65 #vuel:70 #want:71 #week:-27 #what:-31
#with:-35 #wont:-63 #woul:-22 #xtea:35 %again_later:-65 %again_later%agree:62 %again_later%away:-28
%again_later%bring:68 %again_later%call_off:42 %again_later%car_part:-30 %again_later%do_it:26 %again_later%doubt:71
%again_later%fails:39 %again_later%gone_car:-34 %again_later%how_long:-52 %again_later%leave_me:148
%again_later%message:236 %again_later%money:-46 %again_later%noise:-32 %again_later%pay_day:-22
%again_later%question:-50 %again_later%season:-41 %again_later%shift_it:-38 %again_later%start_again:81
%again_later%thanks:-36 %agree:-46 %agree%leave_me:-55 %agree%message:113 %agree%start_again:106 %away:-66
%away%call_off:-29 %away%start_again:-24 %bad:-29 %bad%message:-25 %bring:-32 %bring%call_off:57 %bring%do_it:53
%bring%on_way:39 %bring%shift_it:-35 %bring%start_again:68 %busy:-39 %busy%start_again:-24 %call_off:-122
%call_off%gone_car:28 %call_off%how_long:-24 %call_off%leave_me:96 %call_off%money:-27 %call_off%place:37
%call_off%refuse:-119 %call_off%shift_it:-24 %call_off%start_again:-42 %call_off%wrong_one:67 %car:-53
%car%start_again:-22 %car_part:-59 %car_part%leave_me:-27 %car_part%message:24 %do_it:39 %do_it%gone_car:34
%do_it%message:73 %do_it%start_again:60 %do_it%wrong_one:54 %doubt:55 %doubt%elsewhere:84 %doubt%leave_me:35
%doubt%message:90 %doubt%shift_it:65 %doubt%start_again:25 %doubt%wrong_one:78 %elsewhere%fails:25
%elsewhere%leave_me:39 %elsewhere%message:65 %elsewhere%start_again:29 %elsewhere%wrong_one:69 %fails:-79
%fails%refuse:-69 %family%leave_me:26 %family%odometer:23 %gone_car:54 %gone_car%message:127 %gone_car%odometer:23
%gone_car%refuse:29 %gone_car%start_again:25 %gone_car%wrong_one:108 %how_long:-63 %how_long%start_again:-39
%leave_me:-31 %leave_me%message:-201 %leave_me%on_way:53 %leave_me%question:22 %leave_me%start_again:130
%leave_me%wrong_one:49 %machine:-25 %message:165 %message%on_way:-34 %message%place:33 %message%question:22
%message%refuse:-38 %message%shift_it:74 %message%start_again:336 %message%wrong_one:139 %money:-58
%money%start_again:-32 %noise:-54 %noise%start_again:-39 %on_way:-40 %on_way%wrong_one:-24 %pay_day:-28 %phone:-43
%place%question:-28 %place%start_again:23 %question:-64 %question%refuse:29 %refuse:-211 %refuse%start_again:-118
%season:-46 %season%start_again:-25 %shift_it%wrong_one:39 %staff:-50 %staff%wrong_one:-28 %start_again:612
%thanks:-33 %who:-35 @?:-74 @after_visit:-91 @confirm:-120 @confirm_stop:-77 @day:-28 @later:-120 @nothing:121
@offers:-48 @times:-80 @walk_in:-36 ^_alta:59 ^_ask:-40 ^_can:-24 ^_changed:31 ^_dejen:-24 ^_deme:34 ^_empezar:69
^_i:69 ^_im:-25 ^_kindly:23 ^_la:-28 ^_me:-31 ^_mi:28 ^_no:-88 ^_opt:193 ^_para:-25 ^_put:32 ^_quiero:24 ^_re:56
^_resubscribe:107 ^_si:-22 ^_sign:-30 ^_start:123 ^_stop:-62 ^_turn:26 ^_unstop:207 ^_unsubscribe:-92 ^_vuelvanme:30
^_what:-31 ^_wont:-45 ^_ya:23 ^_yo:-36 a:63 a__en:26 a_bit:-23 a_escribir:-43 a_la:83 a_mandarme:25 a_poner:25
accident:59 aceite:23 add:55 again_$:63 again__a:-25 again_in:-68 alta:109 are:-34 ask:-50 ask__again:-40 ask_me:-43
at:-44 aviso:-60 aviso_$:-49 avisos:28 back:60 back_$:-39 back__i:35 back_in:79 back_on:65 back_up:51 baja:33 bit:-24
by:62 by__put:25 by_accident:59 by_mistake:29 can__me:39 can_text:46 cancelar:-24 car:-27 changed:35 changed__mind:42
changed_my:42 con:-34 de:36 de__a:29 de__en:23 de__lista:-72 de__textos:-40 de_alta:56 de_baja:32 de_la:-61
de_mandarme:-26 de_nuevo:154 de_su:-32 dejen:-32 dejen_de:-32 deme:34 di:42 di_de:42 dont:-41 empezar:63 en__lista:39
en_la:33 en_los:26 end:-23 escribir:-34 escribir_$:-44 este:-26 for:-22 from:-34 got:-36 have:-36 hit:36 i:70
i__it:-31 i__stop:51 i__the:42 i_hit:42 i_want:62 im:-23 in:131 in_$:215 in__bit:-23 in_a:-22 is:-61 it:-137
it_back:-28 june_$:-26 just:-23 kindly:22 la:-27 la__vez:-39 la_lista:90 la_otra:-38 le:-32 les:-40 les_aviso:-35
list:36 list_$:30 lista:58 lista_$:45 lo:-38 los:154 los_avisos:25 los_mensajes:56 mandan:-24 mandando:-28
mandarme_mensajes:26 me__de:30 me__on:33 me__up:42 me_again:-24 me_back:141 me_up:-70 mensaje:-25 mensajes:33
mensajes__vez:34 mensajes_otra:34 messages:24 mind:41 mistake:29 more:23 my:50 my_mind:42 my_texts:24 never:-24
no:-110 no__a:-28 no_quiero:-32 no_sigan:-22 no_vuelvan:-28 not:-39 nuevo:126 nuevo_$:67 of:-23 on:68 on_$:42
on__list:30 opt:226 opt_me:41 otra:59 otra_vez:86 otro:-28 out:-39 out_$:-26 para:-25 pero__si:23 please:31
please_$:26 please_unsubscribe:-22 poner:29 pongame:38 pueden:76 pueden__de:35 put:51 put__back:62 put_me:60 que:22
que_me:36 querer:59 quiero__a:43 quiero__me:25 quiero_cancelar:-24 quiero_los:22 quiero_que:24 quitenme:-25 re:56
receive:31 recordatorios:44 reminders:66 reminders_again:34 restart:34 resubscribe:107 se:-27 si:32
sigan_mandando:-28 sign:-44 sign__up:-66 sign_me:-26 sin:68 sin_querer:59 start:37 stop_$:-22 stop__accident:55
stop__me:-23 stop_by:54 stop_texting:-25 stopped:24 su:-36 su_lista:-31 sus:27 text:-36 text__again:26 textearme:39
textos_$:-22 texts:75 texts_$:-23 texts_again:74 the__again:34 the_back:-26 the_list:47 the_messages:28
the_reminders:45 the_texts:51 them:34 to:-36 to__list:31 to_receive:31 turn:45 turn__texts:24 turn_the:22 unstop:207
unsubscribe:-115 unsubscribe_$:-73 unsubscribed:26 up:-37 up_$:-44 vez:71 vez_$:90 volver:68 volver_a:69 vuelvanme:38
vuelvanme_a:38 want:71 want_the:23 want_to:22 way:-30 what:-28 with:-28 wont:-63 wont_start:-59 ya_pueden:56 yo:-38
yo__aviso:-32 yo_les:-32 you:-54 you_$:-29 you__text:42 you_can:44
"""
