"""What speaks for and against `resume`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "resume"
BIAS = -150
WEIGHTS = """\
#abia:56 #able:-26 #acan:-26 #acci:70 #acte:49 #acti:200 #ages:27 #agua:-27 #ahea:25 #aile:29 #aler:28 #algo:-25
#also:29 #alta:69 #amar:-31 #amen:26 #anda:-45 #anme:69 #anot:-46 #anto:25 #aran:37 #arar:41 #arme:70 #arre:40
#asad:26 #aske:29 #ated:26 #atur:-26 #ause:72 #bame:32 #banm:-25 #befo:-30 #bien:35 #birl:49 #birm:86 #bloc:-44
#book:-39 #bscr:41 #call:-37 #cate:29 #ccid:70 #ceiv:38 #cela:-40 #cele:-47 #chee:-27 #cibi:64 #cibo:-51 #cide:69
#come:265 #como:-29 #cons:58 #cont:37 #crib:105 #cted:55 #ctiv:192 #cupe:-28 #dato:32 #deja:-30 #deje:-27 #dejo:-27
#deme:48 #denm:-33 #dent:51 #ders:68 #desa:-32 #dich:52 #disc:-35 #dome:31 #dont:-45 #down:-34 #draw:-30 #eact:125
#earn:-31 #ecei:37 #eche:-27 #ecom:-34 #eden:67 #eeks:-30 #eers:-27 #eeti:-29 #efor:-30 #egre:137 #egue:38 #eive:38
#ejen:-27 #ejor:29 #elar:-38 #elos:28 #elta:33 #elva:66 #elve:50 #endi:-33 #endo:66 #ener:27 #enga:-43 #enos:-56
#equi:26 #erat:-28 #erdo:36 #erer:89 #ermi:-42 #escr:-44 #escu:-34 #esen:61 #esta:30 #esub:99 #eten:-44 #etin:-29
#etir:-47 #evam:38 #ever:-54 #evok:-37 #exte:25 #exto:57 #extr:43 #exts:56 #ezar:41 #fore:-30 #forg:52 #from:-57
#game:37 #gand:32 #ganm:38 #gara:-25 #give:44 #gres:64 #gret:71 #guen:42 #habi:56 #heer:-27 #here:-40 #hijo:25
#hing:-30 #home:-33 #hora:26 #hurs:29 #ibam:32 #ibed:37 #ibie:64 #icat:34 #ices:33 #icho:52 #icia:70 #iden:52
#ider:43 #iend:66 #igan:30 #ight:-65 #iler:30 #imes:-30 #imit:37 #inde:38 #indl:46 #inic:72 #inio:25 #inst:98
#inue:37 #ious:-30 #irlo:49 #irme:82 #isar:35 #isco:-35 #issi:-30 #ista:69 #itad:32 #ited:37 #iten:-27 #iven:106
#ivoq:35 #jado:32 #jaja:27 #keep:62 #kill:-38 #kind:44 #know:27 #lcom:-29 #legu:31 #lers:42 #like:-37 #limi:33
#list:46 #llam:-26 #lleg:30 #lock:-41 #lopp:28 #lost:-27 #lvan:44 #lver:60 #lves:28 #mand:-25 #mart:36 #meet:-29
#mejo:29 #mend:-35 #meno:-47 #mind:74 #mist:25 #mite:37 #more:62 #mper:-29 #mpez:40 #mpli:28 #mute:27 #ncan:97
#ndan:-57 #ndem:29 #nden:-31 #nder:37 #ndly:46 #neve:-36 #ngam:35 #ngan:-26 #nged:28 #nici:71 #nigh:-28 #ning:-25
#nlos:29 #noja:32 #note:-38 #noti:45 #nsid:40 #nsta:105 #nsto:114 #nsub:-59 #ntac:26 #nten:-25 #ntin:37 #nuda:120
#nuev:121 #ojad:32 #olve:59 #omen:337 #ompl:29 #once:48 #oner:63 #onga:53 #onig:-28 #onsi:43 #onta:27 #onte:-25
#onti:37 #opal:-26 #opin:25 #oppe:42 #oppy:28 #opte:28 #oque:25 #orda:27 #orgi:49 #oriz:30 #otem:-38 #othe:-25
#otic:39 #otra:49 #ould:-39 #oure:-32 #over:-29 #pabl:-27 #pall:-26 #pent:29 #pera:-43 #perd:34 #perm:-43 #pero:38
#peza:41 #pini:25 #plan:52 #plea:52 #pone:71 #pong:51 #posa:25 #pped:62 #pper:-31 #pued:48 #puse:27 #quer:86 #quit:28
#quiv:26 #rail:30 #rano:35 #rara:53 #ratu:-28 #rdat:31 #rdon:35 #reac:120 #rece:28 #regr:135 #regu:25 #rein:100
#repe:28 #rese:32 #rest:66 #resu:139 #reti:-47 #revo:-42 #rgiv:49 #riba:39 #ribe:72 #rios:37 #rite:51 #rlos:75
#rmis:-43 #rned:27 #roug:-25 #rrep:28 #rsda:29 #rtes:36 #runs:46 #saca:-31 #sado:27 #scon:-34 #scri:94 #sday:28
#send:34 #senm:80 #shop:35 #side:26 #sign:-59 #sion:-33 #sked:29 #slop:28 #some:-25 #ssio:-33 #stab:28 #stak:25
#star:65 #stat:98 #stop:174 #stor:39 #stos:-27 #subs:41 #sume:44 #taba:34 #tact:26 #tado:27 #tarm:29 #tart:84
#tate:93 #temp:-35 #tene:28 #teng:-46 #tenm:-25 #text:70 #them:73 #ther:-30 #thin:-27 #thur:29 #tice:40 #time:-47
#ting:-43 #tiro:-39 #tiva:84 #tive:107 #todo:-31 #toni:-28 #topa:-26 #topp:53 #tore:46 #tori:46 #trai:27 #tran:33
#tura:-26 #turn:80 #uant:35 #ubsc:41 #udar:119 #uelt:30 #uelv:87 #uere:87 #ueva:33 #uevo:83 #uita:30 #uivo:26
#unca:99 #undo:35 #unst:114 #unsu:-59 #ursd:29 #utor:30 #vame:53 #vanm:50 #vide:28 #visa:34 #vise:-25 #viso:-41
#voke:-37 #volv:58 #voqu:35 #vuel:119 #want:59 #week:-46 #wife:28 #with:-45 #wont:-39 #writ:49 #xtos:38 #xtra:43
#yeah:-71 %again_later:-38 %again_later%bring:32 %again_later%car_part:-30 %again_later%do_it:36
%again_later%doubt:76 %again_later%fails:69 %again_later%gone_car:-26 %again_later%how_long:-35
%again_later%leave_me:65 %again_later%message:195 %again_later%money:-42 %again_later%phone:30 %again_later%place:31
%again_later%question:-56 %again_later%refuse:48 %again_later%season:-54 %again_later%start_again:49
%again_later%thanks:-78 %again_later%who:-27 %again_later%wrong_one:-36 %agree%busy:-31 %agree%call_off:-44
%agree%fails:31 %agree%gone_car:-37 %agree%how_long:44 %agree%leave_me:-88 %agree%message:143 %agree%phone:-42
%agree%question:34 %agree%season:25 %agree%shift_it:43 %agree%start_again:51 %agree%thanks:33 %agree%who:-28
%agree%wrong_one:-29 %away:-61 %away%leave_me:-54 %away%on_way:30 %bad%bring:28 %bad%busy:25 %bad%call_off:46
%bad%elsewhere:54 %bad%leave_me:27 %bad%message:-44 %bad%question:29 %bring:-69 %bring%call_off:45 %bring%do_it:39
%bring%elsewhere:47 %bring%leave_me:34 %bring%on_way:33 %bring%phone:50 %bring%refuse:46 %bring%shift_it:-33
%bring%wrong_one:53 %busy:-35 %busy%elsewhere:27 %busy%fails:-26 %busy%message:-37 %busy%refuse:34
%busy%start_again:-49 %call_off:-88 %call_off%car:-26 %call_off%car_part:33 %call_off%fails:64 %call_off%gone_car:26
%call_off%how_long:-30 %call_off%leave_me:29 %call_off%message:-75 %call_off%money:-47 %call_off%on_way:-26
%call_off%phone:48 %call_off%place:33 %call_off%start_again:-68 %call_off%wrong_one:84 %car%wrong_one:-26
%car_part:-28 %car_part%do_it:-31 %car_part%doubt:-46 %car_part%elsewhere:-51 %car_part%gone_car:65
%car_part%leave_me:-51 %car_part%message:60 %car_part%money:31 %car_part%place:43 %car_part%question:34
%car_part%refuse:38 %car_part%shift_it:-57 %do_it%leave_me:30 %do_it%message:85 %do_it%odometer:45
%do_it%question:-41 %do_it%shift_it:-25 %do_it%start_again:43 %doubt:51 %doubt%elsewhere:73 %doubt%leave_me:36
%doubt%message:89 %doubt%shift_it:41 %doubt%start_again:34 %doubt%wrong_one:64 %elsewhere:28 %elsewhere%gone_car:-25
%elsewhere%leave_me:59 %elsewhere%message:66 %elsewhere%refuse:29 %elsewhere%start_again:56 %elsewhere%wrong_one:103
%fails:-54 %fails%leave_me:28 %fails%odometer:27 %fails%refuse:-35 %fails%start_again:26 %fails%who:54 %family:30
%family%leave_me:69 %family%odometer:56 %family%phone:46 %family%refuse:39 %family%start_again:36
%gone_car%message:119 %gone_car%odometer:36 %gone_car%place:33 %gone_car%wrong_one:40 %how_long%start_again:-55
%leave_me%message:-178 %leave_me%odometer:40 %leave_me%on_way:80 %leave_me%phone:45 %leave_me%question:44
%leave_me%refuse:-28 %leave_me%start_again:66 %leave_me%wrong_one:102 %lift%start_again:-27 %machine:-28 %message:143
%message%odometer:-28 %message%on_way:-42 %message%question:35 %message%refuse:-57 %message%shift_it:97
%message%start_again:188 %message%who:-25 %message%wrong_one:68 %money%start_again:-48 %noise:-29
%noise%start_again:-33 %odometer:-30 %odometer%start_again:-37 %odometer%wrong_one:37 %on_way%start_again:-25
%on_way%wrong_one:-29 %phone:-56 %phone%refuse:59 %place%question:-36 %place%start_again:27 %question:-60
%question%refuse:46 %question%shift_it:65 %question%wrong_one:63 %refuse:-123 %refuse%start_again:-121
%refuse%thanks:26 %season:-32 %season%start_again:-34 %shift_it%start_again:50 %smoke_smell:-28
%smoke_smell%start_again:-32 %staff:-33 %start_again:472 %start_again%thanks:-35 %thanks:-25 %wrong_one:-25 @?:-37
@after_visit:-76 @confirm:-61 @confirm_stop:-185 @day:-41 @later:-67 @nothing:88 @nothing_opt_out:-33 @offers:-48
@time:-49 @times:-62 @walk_in:-39 ^_alta:46 ^_ask:-30 ^_back:-28 ^_cambie:26 ^_can:-33 ^_changed:57 ^_do:-52
^_empezar:57 ^_i:29 ^_id:52 ^_im:-52 ^_kill:-38 ^_kindly:54 ^_me:-66 ^_mi:68 ^_never:-34 ^_ni:-31 ^_no:-47
^_olvide:29 ^_opt:158 ^_para:-59 ^_please:-54 ^_put:30 ^_quiero:-40 ^_re:117 ^_resubscribe:99 ^_retiro:-40 ^_si:-73
^_start:158 ^_stop:-74 ^_stopall:-26 ^_text:-40 ^_turned:-28 ^_un:-27 ^_unstop:141 ^_unsubscribe:36 ^_vuelvan:30
^_vuelvanme:65 ^_want:27 ^_what:-52 ^_wont:-38 ^_wrong:-28 ^_ya:30 ^_you:34 ^_youre:-32 a:52 a__en:49 a__from:-29
a__that:54 a_day:-31 a_escribir:-67 a_la:81 a_mandarme:31 a_meeting:-30 a_poner:59 accident:74 aceite:27
aceite_por:28 add:151 again_$:25 again__a:-25 again__i:-73 again_in:-77 again_please:52 agua:-28 agua_y:-28 ahead:25
ahora:28 ahora_si:34 all:-34 also:29 alta:72 alta_$:26 and__for:47 anoteme:-38 any:-33 apunteme:25 are:-36
are__still:26 arrepenti:28 asi:-52 asi__no:-29 asi_que:-35 ask:-29 ask__again:-31 ask_me:-29 asked:29 at:-67
avisarme:25 aviso:-59 aviso_$:-34 back:28 back_$:-78 back__i:44 back_on:82 back_up:98 back_when:34 before:-30 bit:-25
block:-60 by:80 by__put:35 by_accident:99 by_mistake:27 can__me:42 can_text:71 can_you:-35 cancelar:-38 car:-28
changed:30 changed__mind:57 changed_my:57 cheers:-27 cheers_$:-27 cita_el:27 cobraron__mas:-30 cobraron_de:-30
come:-43 como:-29 con:-61 con__textos:-35 con_los:-54 consent_to:34 cuanto:35 cuanto__el:42 day__the:47 de:30
de__en:34 de__la:-29 de__lista:-74 de__que:35 de__textos:-67 de_aceite:25 de_alta:54 de_la:-76 de_mandarme:-48
de_mas:-30 de_nuevo:195 de_su:-33 de_vuelta:32 dejo:-27 del:-30 di:51 di__baja:52 di_de:52 dia_que:32 dicho:52
do__do:53 do__on:52 do__text:-30 do_i:-33 do_not:-46 do_you:27 dont:-45 dont_text:-34 down:-34 down_the:-25 doy:40
due:33 eche:-28 el__por:26 el_aceite:27 el_martes:43 el_recibo:-51 elm:26 empezar:41 en_los:39 end:-28 equivoque:35
es:-25 escriban:31 escriban_$:45 escribanme:-25 escribir:-44 escribir_$:-68 esposa:25 estaba:34 estos:-27 for:-35
for__oil:48 for__reminder:-26 forgive:49 from:-57 from__text:-30 from_home:-30 from_my:28 go:36 go_ahead:36 habia:61
habia_dicho:57 had__phone:36 her:33 her_$:33 here:-34 home:-33 i:41 i__asked:29 i__back:53 i__in:43 i__it:-27
i__my:-33 i__no:38 i__the:74 i__to:-37 i__you:25 i__your:41 i_hit:33 i_miss:28 i_start:-43 i_stopped:37 i_want:38
i_was:43 id:65 id__to:28 im_in:-29 in:43 in_$:173 in__bit:-25 in__weeks:-31 ir:37 ir_el:44 is:-45 is__again:-46
is__on:31 is_due:27 it:-81 jaja:27 jaja_$:28 keep:64 keep__on:30 keep_me:30 kill:-38 kindly:46 kindly__me:36
kindly__my:30 la:-82 la__vez:-60 la_lista:92 la_otra:-62 le:-42 lease:-35 les:-39 like:-37 like_to:28 lista:57
lista_$:66 lleguen:37 lo:-65 lol:31 lol_$:-27 los:150 los__ya:25 los_mensajes:61 los_textos:27 lost:-27 mandan:-39
mandar_mensajes:-35 mandarme_mensajes:45 mandenme:-48 mando:29 martes:36 martes_$:47 mas:-40 may:56 me_$:59 me__a:-47
me__again:45 me__al:34 me__algo:-26 me__and:-60 me__favor:34 me__in:-36 me__it:27 me__los:28 me__on:34 me__please:38
me__text:37 me__up:91 me_arrepenti:28 me_back:143 me_dejo:-27 me_equivoque:35 me_escriban:32 me_for:36 me_if:28
me_in:-28 me_lleguen:37 me_lo:-45 me_mandan:-38 me_puede:-32 me_pueden:30 me_to:29 me_up:-73 me_vuelvan:-55
meeting:-29 mejor:29 menos:-47 mensajes_$:-29 mensajes__favor:-49 mensajes__vez:53 mensajes_otra:53 mensajes_por:-49
message:-30 messages:27 messages_$:-33 mi:-38 mi_esposa:25 mind:51 miss:29 mistake:27 more:68 more_$:74 my:52
my__go:64 my__i:30 my__on:31 my__please:56 my__to:51 my_list:-25 my_mind:56 my_number:27 n:61 never:-36
never_asked:30 never_text:-41 ni:-29 no:-50 no__a:-36 no__que:-42 no__sus:28 no__vuelvan:-37 no_me:-29 no_quiero:-55
no_vuelvan:-36 not:-73 not_text:-30 now_so:39 nuevo:102 nuevo_$:46 number__your:31 of:-44 off:-30 off__list:-32
off__the:28 off_in:30 off_the:-26 off_your:-26 oil:50 oil_$:47 ok_$:-31 olvide:29 on:89 on_$:59 on__and:47 on__i:27
on_again:38 on_and:29 on_my:-35 on_the:-77 once:50 opinion:25 opt:188 opt_out:-74 otra:49 otra__el:-38 otra__y:25
otra_vez:75 out:-64 out_$:-52 out_by:28 para:-39 para_los:30 pasado:25 perdon:36 permiso_de:-34 pero:36 pero__si:80
phone_me:-25 plan:59 please:53 please_$:36 please__a:-29 please__i:38 please__me:28 please__my:41
please_unsubscribe:-25 poner:74 pongame:41 por__me:-37 por_texto:37 puede:-47 puede__el:-41 pueden:67 pueden__de:25
puedo:27 puedo__el:46 puedo_ir:48 puse:27 put:34 put__back:83 put_me:72 que__escriban:30 que__lleguen:36 que__me:-37
que__pero:58 que_me:46 que_no:-29 querer:89 quiero_$:-38 quiero__a:39 quiero__de:-30 quiero__me:30
quiero_cancelar:-38 quiero_los:37 quiero_volver:56 quito:28 re:117 receive:38 receive__messages:-37 recibo:-51
recordatorios:39 recordatorios__favor:39 recordatorios_por:39 reminder:-28 reminder_$:-27 reminders:68
reminders_$:-34 reminders_again:35 restart:34 resubscribe:99 retiro:-40 retiro_mi:-40 revoke:-37 runs:46 sacan:-26
se:-43 send:41 sending_me:-25 shop:35 si:78 si_$:46 sign:-53 sign__back:82 sign__up:-69 sin:113 sin_querer:89
sloppy:28 start:68 start_$:-34 stop_$:-81 stop__accident:71 stop__me:-37 stop_by:64 stop_sending:-32 stop_sign:-36
stopall:-26 stopall_$:-26 stopped:64 su:-42 su_lista:-34 sus:58 temperatura:-28 tener:28 text:-66 text__again:-32
text_me:28 text_messages:-37 textos:38 textos_$:-32 texts:56 texts_again:101 thanks_$:37 that_$:44 that_day:55
the__and:25 the__in:-26 the__place:30 the__please:37 the_brakes:-26 the_first:31 the_lease:-27 the_list:33
the_messages:27 the_oil:42 the_reminder:-26 the_stop:46 the_texts:56 them:73 these_messages:-35 these_off:47
this__again:-27 this_again:-28 this_phone:-32 thursday:29 thursday__the:48 to__again:63 to__list:41 to__your:34
to_be:43 to_come:-26 to_me:62 to_receive:38 to_the:32 todo:-26 tonight:-28 turn:52 turn_them:47 turned:27
turned_the:-28 un:-40 una:-32 undo:35 unstop:141 unsubscribe:-96 unsubscribe_$:97 unsubscribe_me:-35
unsubscribe_please:-64 unsubscribed:37 up:-39 up_on:-29 vez:51 vez_$:84 vez__los:49 vez_el:-38 vez_y:25 volver:58
volver_a:73 voy:-25 voy_a:-27 vuelta:33 vuelvan:-37 vuelvan__escribir:-66 vuelvan__mandarme:30 vuelvan_a:-37
vuelvanme:76 vuelvanme_a:76 want:59 want_to:-26 want_your:53 was__a:52 was_in:51 way:-25 weeks:-30 weeks_$:-30
what__i:-26 what_is:34 who:27 who__this:40 why:-28 wife:25 wont:-39 wont_start:-45 work_$:32 write:50
wrong_number:-28 y:46 y__cita:27 y__cuanto:26 y_la:-28 y_puedo:51 y_quiero:28 ya:45 ya__que:39 ya__quiero:-28
ya_pueden:61 yeah:-71 yeah_$:-59 you__me:-43 you__my:27 you__text:50 you__to:-25 you_are:-26 you_can:50 you_do:53
you_from:30 you_still:27 you_text:-37 you_to:-25 your:37 your__again:66 youre:-32
"""
