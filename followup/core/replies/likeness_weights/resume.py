"""What speaks for and against `resume`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "resume"
BIAS = -162
WEIGHTS = """\
#acci:63 #acei:26 #acti:258 #ages:27 #agre:39 #ajes:38 #alta:156 #anda:-53 #ando:-38 #ange:28 #anme:69 #anot:-27
#arme:64 #aron:-29 #arre:29 #ator:50 #back:55 #baja:35 #birl:35 #birm:42 #bscr:79 #call:-44 #ccid:63 #ceit:26
#ceiv:34 #chan:26 #cibi:48 #cide:63 #come:195 #cord:45 #crib:125 #ctiv:258 #dand:-30 #dato:50 #deje:-52 #deme:45
#denm:41 #dent:57 #ders:83 #dont:-51 #eact:163 #earm:35 #ecei:34 #ecib:34 #ecor:42 #eden:89 #egre:75 #egue:37
#eite:26 #eive:34 #ejen:-37 #elva:58 #emin:60 #empe:90 #enga:-25 #enme:80 #erer:65 #ermi:-36 #esen:63 #esta:39
#este:-34 #esub:111 #ever:-65 #exte:32 #exts:85 #ezar:98 #from:-44 #game:45 #ganm:26 #gres:60 #guen:36 #hang:28
#hank:-30 #have:-37 #here:-48 #ibed:27 #ibir:38 #icia:64 #iden:58 #ight:-30 #imes:-30 #inde:68 #indl:26 #inic:64
#inst:33 #irlo:35 #irme:46 #isos:33 #issi:-30 #ista:88 #iten:-33 #iven:103 #june:-25 #just:-26 #king:-29 #late:-44
#leas:25 #list:100 #llam:-25 #lvan:49 #lver:81 #mand:-41 #mind:108 #mist:30 #mpez:97 #much:-26 #ndan:-63 #nder:61
#ndly:26 #neve:-33 #ngam:41 #nged:41 #nici:64 #ning:-26 #nsta:39 #nsto:251 #nsub:-93 #nuda:93 #nuev:149 #olve:81
#omen:197 #oner:31 #onga:61 #oppe:25 #orda:50 #orio:50 #othe:-26 #otra:73 #otro:-30 #ough:-28 #ould:-36 #perm:-36
#peza:98 #plea:44 #pone:32 #pong:61 #pued:73 #quer:62 #quit:-28 #rdat:50 #reac:159 #rece:30 #reco:40 #regr:75
#regu:38 #remi:59 #rese:58 #rest:52 #resu:196 #ribe:88 #rios:50 #rlos:44 #rmis:-52 #scri:122 #senm:64 #sign:-58
#sion:-33 #some:-33 #ssio:-33 #stak:31 #star:85 #stat:35 #stop:252 #subs:79 #sume:84 #tart:90 #tate:36 #tear:31
#teng:-28 #tenm:-27 #text:69 #than:-31 #them:39 #ther:-47 #thin:-28 #this:-31 #time:-52 #ting:-42 #tiva:141 #tive:117
#tori:57 #turn:55 #ubsc:79 #udar:93 #uede:68 #uelv:68 #uere:65 #uevo:133 #uite:-26 #unst:251 #unsu:-93 #vame:26
#vanm:41 #viso:-34 #volv:79 #vuel:78 #want:84 #week:-30 #what:-41 #with:-54 #wont:-69 #woul:-25 #xtea:31
%again_later:-96 %again_later%agree:62 %again_later%away:-40 %again_later%bring:74 %again_later%call_off:35
%again_later%car_part:-35 %again_later%do_it:34 %again_later%doubt:86 %again_later%fails:44 %again_later%gone_car:-35
%again_later%how_long:-60 %again_later%leave_me:159 %again_later%message:283 %again_later%money:-51
%again_later%noise:-38 %again_later%pay_day:-33 %again_later%question:-67 %again_later%season:-54
%again_later%shift_it:-38 %again_later%start_again:66 %again_later%thanks:-44 %again_later%who:-25 %agree:-41
%agree%leave_me:-61 %agree%message:129 %agree%start_again:121 %away:-87 %away%call_off:-35 %away%start_again:-35
%bad:-27 %bad%message:-25 %bring:-31 %bring%call_off:64 %bring%do_it:60 %bring%on_way:40 %bring%shift_it:-38
%bring%start_again:73 %busy:-45 %busy%start_again:-27 %call_off:-172 %call_off%gone_car:27 %call_off%how_long:-32
%call_off%leave_me:101 %call_off%money:-31 %call_off%place:43 %call_off%refuse:-150 %call_off%shift_it:-27
%call_off%start_again:-61 %call_off%wrong_one:70 %car:-58 %car%start_again:-27 %car_part:-64 %car_part%leave_me:-30
%car_part%message:27 %do_it:47 %do_it%gone_car:29 %do_it%message:84 %do_it%start_again:67 %do_it%wrong_one:53
%doubt:67 %doubt%elsewhere:103 %doubt%leave_me:39 %doubt%message:107 %doubt%shift_it:80 %doubt%start_again:32
%doubt%wrong_one:94 %elsewhere%fails:26 %elsewhere%leave_me:43 %elsewhere%message:80 %elsewhere%start_again:38
%elsewhere%wrong_one:86 %fails:-71 %fails%refuse:-74 %fails%start_again:31 %family%leave_me:29 %family%odometer:26
%gone_car:46 %gone_car%message:125 %gone_car%odometer:25 %gone_car%refuse:30 %gone_car%start_again:29
%gone_car%wrong_one:109 %how_long:-70 %how_long%start_again:-46 %leave_me:-49 %leave_me%message:-234
%leave_me%on_way:57 %leave_me%question:28 %leave_me%start_again:130 %leave_me%wrong_one:59 %machine:-27 %message:188
%message%on_way:-43 %message%place:41 %message%refuse:-59 %message%shift_it:89 %message%start_again:410
%message%wrong_one:148 %money:-62 %money%start_again:-36 %noise:-61 %noise%start_again:-45 %on_way:-56
%on_way%wrong_one:-28 %pay_day:-41 %pay_day%start_again:-27 %phone:-54 %place%question:-33 %question:-82
%question%refuse:33 %question%start_again:-28 %refuse:-286 %refuse%start_again:-150 %refuse%wrong_one:-27 %season:-59
%season%start_again:-36 %shift_it%wrong_one:51 %staff:-54 %staff%wrong_one:-30 %start_again:736 %thanks:-37 %who:-39
@?:-76 @after_visit:-100 @confirm:-155 @confirm_stop:-94 @day:-38 @later:-149 @nothing:161 @offers:-55 @times:-94
@walk_in:-40 ^_alta:97 ^_ask:-48 ^_can:-28 ^_changed:35 ^_deme:38 ^_denme:27 ^_do:-28 ^_empezar:105 ^_i:72 ^_im:-30
^_kindly:27 ^_la:-29 ^_me:-35 ^_mi:32 ^_no:-105 ^_opt:204 ^_para:-29 ^_put:40 ^_re:69 ^_resubscribe:111 ^_sign:-36
^_start:152 ^_stop:-69 ^_turn:29 ^_unstop:256 ^_unsubscribe:-102 ^_vuelvanme:33 ^_what:-39 ^_wont:-47 ^_yo:-35 a:78
a__en:29 a__mensajes:27 a_escribir:-49 a_la:84 a_mandarme:33 a_poner:29 accident:63 aceite:26 add:62 again_$:56
again_in:-74 alta:157 are:-39 ask:-65 ask__again:-50 ask_me:-53 at:-50 aviso:-66 aviso_$:-54 avisos:33 avisos_$:25
back:59 back_$:-47 back__i:37 back_in:78 back_on:80 back_up:57 baja:38 by:66 by__put:27 by_accident:64 by_mistake:31
can__me:45 can_text:53 car:-33 changed:41 changed__mind:49 changed_my:49 con:-39 de:50 de__a:28 de__en:25
de__lista:-75 de__textos:-41 de_alta:67 de_baja:36 de_la:-65 de_mandarme:-30 de_nuevo:170 de_su:-32 dejen:-33
dejen_de:-33 deme:38 denme:28 denme_de:28 di:46 di_de:47 dont:-51 empezar:98 en__lista:41 en_la:35 en_los:28 end:-28
es:-25 escribir:-40 escribir_$:-50 este:-29 for:-31 from:-44 got:-40 have:-37 hit:39 i:69 i__it:-35 i__stop:53
i__the:51 i_hit:45 i_want:75 im:-30 in:125 in_$:225 in_june:-25 is:-76 it:-161 it_back:-32 june:-25 june_$:-31
just:-25 kindly:26 la:-33 la__vez:-42 la_lista:93 la_otra:-43 le:-37 les:-45 les_aviso:-35 list:45 list_$:37 lista:61
lista_$:48 lo:-41 los:183 los_avisos:29 los_mensajes:75 mandan:-32 mandando:-30 mandarme_mensajes:26 mas:-27 me:-29
me__again:27 me__de:33 me__mensajes:-25 me__on:41 me__up:46 me_again:-26 me_back:154 me_mandan:-26 me_up:-82
mensaje:-27 mensajes:38 mensajes__vez:40 mensajes_otra:40 messages:27 mind:49 mistake:31 more:26 my:54 my_mind:49
my_texts:31 never:-31 no:-143 no__a:-29 no_me:-31 no_quiero:-45 no_vuelvan:-29 not:-57 nuevo:134 nuevo_$:73 of:-27
on:83 on_$:51 on__list:37 opt:238 opt_me:43 opt_out:-26 otra:73 otra_vez:105 otro:-30 out:-50 out_$:-35 para:-30
permission:-28 pero__si:26 please:44 please_$:32 poner:34 pongame:42 pueden:89 pueden__a:27 pueden__de:36 put:57
put__back:71 put_me:70 que_me:35 querer:65 quiero__a:44 quiero__me:27 quiero_los:26 quiero_que:26 quiero_volver:50
quitenme:-25 re:69 receive:34 recordatorios:51 reminders:83 reminders_again:39 restart:44 resubscribe:111 se:-28
si:40 sigan_mandando:-30 sign:-54 sign__back:43 sign__up:-77 sign_me:-33 sin:75 sin_querer:65 start:58 stop_$:-27
stop__accident:59 stop__me:-27 stop_by:59 stop_texting:-29 stopped:28 su:-36 su_lista:-32 text:-43 text__again:36
textearme:36 texts:85 texts_$:-28 texts_again:87 the__again:37 the__back:25 the_back:-27 the_list:54 the_messages:34
the_reminders:57 the_texts:60 them:39 this:-31 to:-43 to__list:34 to_receive:34 turn:55 turn__texts:27 turn_the:25
unstop:256 unsubscribe:-121 unsubscribe_$:-70 unsubscribe_please:-34 unsubscribed:27 up:-43 up_$:-57 vez:87 vez_$:104
volver:82 volver_a:83 vuelvan__escribir:-48 vuelvanme:42 vuelvanme_a:42 want:84 want_the:28 want_to:27 way:-33
what:-38 with:-40 wont:-69 wont_start:-64 would:-25 ya_no:-28 ya_pueden:58 yo:-38 yo__aviso:-32 yo_les:-31 you:-65
you_$:-30 you__text:49 you_can:50
"""
