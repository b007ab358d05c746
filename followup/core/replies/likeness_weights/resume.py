"""What speaks for and against `resume`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "resume"
BIAS = -180
WEIGHTS = """\
#acci:59 #acti:241 #ages:30 #agre:38 #ajes:39 #alta:140 #anda:-51 #ando:-38 #ange:25 #anme:65 #arme:71 #aron:-28
#arre:25 #ator:46 #back:53 #baja:30 #birl:35 #birm:39 #bscr:76 #call:-43 #ccid:59 #ceiv:31 #cibi:53 #cide:59
#come:172 #cord:43 #crib:121 #ctiv:241 #dand:-29 #dato:46 #deje:-54 #deme:43 #denm:38 #dent:52 #ders:77 #dont:-47
#eact:153 #earm:38 #ecei:31 #ecib:41 #ecor:41 #eden:87 #egre:68 #egue:36 #eive:31 #ejen:-38 #elva:55 #emin:56
#empe:78 #enme:76 #erer:59 #esen:58 #esta:33 #este:-31 #esub:106 #ever:-58 #exte:35 #exts:80 #ezar:85 #from:-37
#game:40 #ganm:26 #gres:55 #guen:35 #hang:26 #hank:-30 #have:-38 #here:-47 #ibed:26 #ibir:51 #icia:64 #iden:53
#ight:-27 #imes:-27 #inde:64 #inic:64 #inst:28 #irlo:35 #irme:43 #isos:31 #ista:88 #iten:-33 #iven:96 #june:-25
#king:-25 #late:-41 #list:98 #lvan:47 #lver:75 #mand:-34 #mind:100 #mist:29 #mpez:84 #ndan:-59 #nder:57 #neve:-28
#ngam:38 #nged:37 #nici:64 #nsta:34 #nsto:238 #nsub:-85 #nuda:90 #nuev:147 #olve:75 #omen:174 #oner:27 #onga:58
#orda:47 #orio:47 #othe:-25 #otra:71 #otro:-29 #ough:-27 #ould:-35 #peza:85 #plea:36 #pone:27 #pong:58 #pued:71
#quer:56 #quit:-29 #rdat:47 #reac:150 #rece:28 #reci:30 #reco:40 #regr:68 #regu:38 #remi:56 #rese:54 #rest:47
#resu:187 #ribe:83 #rios:46 #rlos:43 #rmis:-31 #scri:119 #send:26 #senm:60 #sign:-44 #some:-33 #stak:29 #star:77
#stat:30 #stop:237 #subs:76 #sume:81 #susc:25 #tard:-25 #tart:82 #tate:31 #tear:34 #teng:-26 #tenm:-26 #text:72
#than:-31 #them:35 #ther:-45 #thin:-28 #this:-27 #time:-50 #ting:-41 #tiva:131 #tive:109 #tori:53 #turn:52 #ubsc:76
#udar:90 #uede:67 #uelv:64 #uere:58 #uevo:134 #uite:-26 #unst:238 #unsu:-85 #uscr:25 #vanm:37 #viso:-32 #volv:73
#vuel:73 #want:71 #week:-28 #what:-37 #with:-39 #wont:-64 #xtea:34 %again_later:-82 %again_later%agree:61
%again_later%away:-33 %again_later%bring:71 %again_later%call_off:36 %again_later%car_part:-33 %again_later%do_it:34
%again_later%doubt:82 %again_later%fails:41 %again_later%gone_car:-33 %again_later%how_long:-57
%again_later%leave_me:151 %again_later%message:268 %again_later%money:-50 %again_later%noise:-35
%again_later%pay_day:-28 %again_later%question:-66 %again_later%season:-48 %again_later%shift_it:-34
%again_later%start_again:74 %again_later%thanks:-41 %agree:-51 %agree%leave_me:-59 %agree%message:117
%agree%start_again:118 %away:-74 %away%call_off:-32 %away%start_again:-28 %bad:-31 %bad%message:-25 %bring:-35
%bring%call_off:60 %bring%do_it:58 %bring%on_way:39 %bring%shift_it:-35 %bring%start_again:71 %busy:-42
%call_off:-163 %call_off%gone_car:28 %call_off%how_long:-29 %call_off%leave_me:98 %call_off%money:-29
%call_off%place:40 %call_off%refuse:-144 %call_off%shift_it:-27 %call_off%start_again:-54 %call_off%wrong_one:65
%car:-59 %car%start_again:-25 %car_part:-67 %car_part%leave_me:-26 %do_it:46 %do_it%gone_car:33 %do_it%message:86
%do_it%start_again:66 %do_it%wrong_one:55 %doubt:65 %doubt%elsewhere:97 %doubt%leave_me:35 %doubt%message:100
%doubt%shift_it:76 %doubt%start_again:31 %doubt%wrong_one:90 %elsewhere%fails:25 %elsewhere%leave_me:39
%elsewhere%message:75 %elsewhere%start_again:35 %elsewhere%wrong_one:80 %fails:-70 %fails%refuse:-70
%fails%start_again:29 %family%leave_me:26 %gone_car:59 %gone_car%message:129 %gone_car%refuse:31
%gone_car%start_again:33 %gone_car%wrong_one:116 %how_long:-69 %how_long%start_again:-43 %leave_me:-42
%leave_me%message:-213 %leave_me%on_way:53 %leave_me%start_again:133 %leave_me%wrong_one:49 %machine:-25 %message:202
%message%on_way:-42 %message%place:37 %message%refuse:-53 %message%shift_it:84 %message%start_again:400
%message%wrong_one:149 %money:-65 %money%start_again:-36 %noise:-58 %noise%start_again:-41 %on_way:-52 %pay_day:-35
%phone:-51 %place%question:-32 %question:-85 %question%refuse:26 %refuse:-265 %refuse%start_again:-138 %season:-54
%season%start_again:-31 %shift_it%wrong_one:51 %staff:-55 %staff%wrong_one:-31 %start_again:719 %thanks:-39 %who:-40
@?:-78 @after_visit:-97 @confirm:-142 @confirm_stop:-85 @day:-33 @later:-140 @nothing:148 @offers:-52 @times:-90
@walk_in:-39 ^_alta:83 ^_ask:-44 ^_can:-27 ^_changed:31 ^_dejen:-25 ^_deme:37 ^_empezar:91 ^_i:71 ^_im:-26 ^_la:-29
^_me:-38 ^_mi:28 ^_no:-99 ^_opt:196 ^_put:37 ^_quiero:29 ^_re:62 ^_resubscribe:106 ^_sign:-27 ^_start:137 ^_stop:-65
^_turn:29 ^_unstop:241 ^_unsubscribe:-88 ^_vuelvanme:30 ^_what:-35 ^_wont:-44 ^_yo:-35 a:71 a__en:26 a_escribir:-42
a_la:83 a_mandarme:30 a_poner:26 accident:59 add:57 again_$:63 again_in:-72 alta:141 are:-38 ask:-57 ask__again:-45
ask_me:-48 at:-47 aviso:-62 aviso_$:-51 avisos:31 back:57 back_$:-45 back__i:35 back_in:81 back_on:73 back_up:53
baja:33 by:60 by__put:25 by_accident:59 by_mistake:30 can__me:44 can_text:51 car:-31 changed:38 changed__mind:44
changed_my:44 con:-37 de:53 de__a:29 de__lista:-69 de__textos:-40 de_alta:64 de_baja:32 de_la:-59 de_mandarme:-25
de_nuevo:162 de_su:-31 dejen:-34 dejen_de:-33 deme:37 denme:26 denme_de:26 di:41 di_de:42 dont:-47 empezar:85
en__lista:41 en_la:34 en_los:26 escribir:-33 escribir_$:-43 este:-26 from:-37 got:-38 have:-38 hit:36 i:64 i__it:-35
i__stop:51 i__the:44 i_hit:42 i_want:63 im:-26 in:126 in_$:217 is:-72 it:-153 it_back:-32 june:-25 june_$:-30 la:-26
la__vez:-39 la_lista:93 la_otra:-37 le:-35 les:-39 les_aviso:-34 list:41 list_$:35 lista:62 lista_$:47 lo:-41 los:161
los_avisos:27 los_mensajes:62 mandan:-29 mandando:-29 mandarme_mensajes:29 me__de:31 me__on:38 me__up:43 me_back:146
me_up:-67 mensaje:-25 mensajes:39 mensajes__vez:36 mensajes_otra:36 messages:30 mind:44 mistake:30 my:52 my_mind:44
my_texts:28 never:-26 no:-132 no__a:-28 no_quiero:-40 no_vuelvan:-27 not:-48 nuevo:135 nuevo_$:75 on:75 on_$:45
on__list:35 opt:228 opt_me:42 otra:71 otra_vez:99 otro:-29 out:-41 out_$:-26 please:36 please_$:30 poner:29
pongame:38 pueden:87 pueden__de:35 put:55 put__back:67 put_me:65 que_me:34 querer:59 quiero__a:45 quiero_los:25 re:62
receive:31 recordatorios:48 reminders:77 reminders_again:37 restart:40 resubscribe:106 se:-29 si:32
sigan_mandando:-29 sign:-40 sign__up:-63 sin:68 sin_querer:59 start:53 stop__accident:55 stop__me:-26 stop_by:55
stop_texting:-29 su:-35 su_lista:-30 sus:28 text:-32 text__again:35 textearme:39 texts:80 texts_again:78
the__again:36 the_back:-26 the_list:52 the_messages:31 the_reminders:53 the_texts:54 them:35 this:-27 to:-38
to__list:33 to_receive:31 turn:49 turn__texts:27 turn_the:25 unstop:241 unsubscribe:-111 unsubscribe_$:-70
unsubscribed:26 up:-34 up_$:-43 vez:83 vez_$:100 volver:77 volver_a:78 vuelvanme:38 vuelvanme_a:38 want:72 way:-31
what:-35 with:-32 wont:-64 wont_start:-59 ya_no:-25 ya_pueden:56 yo:-38 yo__aviso:-31 yo_les:-30 you:-59 you_$:-31
you__text:46 you_can:49
"""
