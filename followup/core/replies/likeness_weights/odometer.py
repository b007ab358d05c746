"""What speaks for and against `odometer`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "odometer"
BIAS = -138
WEIGHTS = """\
#abou:17 #acen:14 #acer:19 #acia:-16 #acta:25 #adas:20 #adin:23 #agen:21 #agua:-15 #alio:33 #ambi:27 #anda:62
#ando:-16 #anta:-27 #ante:18 #apen:32 #arch:21 #aren:29 #arro:-15 #avad:21 #avis:20 #band:20 #beat:16 #biar:18
#bien:23 #book:23 #bout:17 #camb:29 #carr:-15 #cerl:20 #chec:-27 #chen:24 #cheq:17 #cier:20 #clav:20 #cloc:19
#come:20 #comi:15 #como:52 #cuan:-21 #cuar:31 #cuer:-47 #cues:14 #cuna:20 #dame:23 #deme:-45 #ding:24 #dome:43
#dred:37 #eadi:23 #ecio:-19 #ecta:-17 #ecue:-47 #egun:19 #eigh:24 #elve:20 #enas:31 #enda:23 #enta:59 #eque:17
#erde:-45 #erlo:18 #erto:26 #ervi:18 #eter:35 #ever:16 #eves:20 #exac:25 #fect:-20 #file:18 #gend:23 #ghte:15
#good:-16 #gunt:19 #hace:58 #hequ:17 #houl:20 #hous:30 #howl:17 #hund:37 #iaro:21 #icio:18 #idea:-15 #idle:16
#iene:15 #iere:-14 #iert:26 #ight:28 #iles:92 #illa:21 #impo:19 #info:-14 #ippi:16 #ismo:14 #juev:20 #know:-15
#lava:20 #lego:24 #like:38 #ling:16 #lleg:28 #lock:18 #mart:17 #mbia:14 #mete:35 #mile:85 #mill:27 #ming:15 #mism:14
#morn:17 #mpor:20 #nado:20 #ndam:23 #ndre:37 #near:15 #nois:17 #ntre:17 #oche:20 #ocho:31 #odom:43 #oise:17 #omet:40
#only:84 #orni:17 #orta:22 #orth:-22 #ould:26 #ousa:31 #owli:17 #paso:22 #pena:31 #ping:15 #poco:26 #port:14 #ppin:16
#prec:-22 #preg:19 #pued:21 #quie:-25 #rato:-19 #rdem:-43 #read:29 #reci:-23 #recu:-47 #regu:18 #rent:35 #righ:17
#rnin:16 #rtan:22 #rtes:15 #rvic:19 #said:23 #sali:29 #sand:32 #says:61 #serv:18 #shes:37 #shou:20 #skip:16 #stop:-28
#tant:21 #teen:15 #ters:19 #text:-39 #that:-20 #then:-32 #thou:30 #tien:15 #toca:42 #todo:26 #trae:23 #uant:-19
#uare:32 #udge:21 #uedo:25 #uelv:20 #uerd:-47 #ueve:19 #uier:-16 #unad:20 #undr:37 #unta:20 #usan:31 #very:18
#vici:19 #visa:19 #vuel:19 #wait:20 #were:21 #what:-23 #when:15 #with:-32 #wlin:17 #wort:-22 #xact:25 #yeah:22
%again_later:-75 %again_later%how_long:20 %again_later%lift:17 %again_later%odometer:-44 %again_later%shift_it:-23
%agree:16 %agree%call_off:37 %agree%odometer:35 %agree%on_way:20 %agree%place:23 %agree%question:22 %away:-69
%away%message:-32 %bad%money:20 %bad%question:25 %bring%call_off:20 %bring%family:17 %bring%leave_me:-27
%bring%odometer:-16 %bring%refuse:14 %busy:-22 %call_off:29 %call_off%do_it:-18 %call_off%meaning:24
%call_off%on_way:32 %call_off%place:25 %call_off%question:19 %car:-17 %car%refuse:-35 %car_part:-20
%car_part%do_it:22 %car_part%fails:-14 %car_part%gone_car:16 %car_part%odometer:-19 %car_part%place:18
%car_part%question:15 %car_part%shift_it:25 %do_it:33 %do_it%refuse:42 %do_it%shift_it:24 %elsewhere:-28
%elsewhere%odometer:-16 %elsewhere%shift_it:-14 %fails:-29 %family:-30 %family%odometer:-34 %family%on_way:19
%gone_car:-36 %gone_car%odometer:-14 %gone_car%shift_it:15 %how_long%lift:19 %how_long%odometer:24 %leave_me:-56
%lift:15 %lift%odometer:22 %meaning%question:17 %message:-54 %money:-24 %noise:15 %noise%odometer:14 %noise%on_way:18
%odometer:139 %odometer%pay_day:16 %odometer%question:-44 %odometer%refuse:21 %on_way:23 %on_way%place:21
%opening:-17 %phone:-32 %question:-48 %question%refuse:-19 %question%who:-35 %refuse%thanks:-14 %season:-16
%shake:-14 %shift_it:-19 %staff:-23 %start_again:-18 %thanks:-32 %who:-43 %wrong_one:-52 @?:-14 @after_visit:25
@car:-18 @confirm:-64 @day:-30 @nothing:47 @odometer:-23 @odometer_:49 @offers:-24 @reading:957 @time:-39 @times:-23
@walk_in:-16 ^_$:70 ^_about:18 ^_al:-15 ^_and:41 ^_anda:46 ^_at:-71 ^_bien:34 ^_coming:16 ^_el:-14 ^_i:-20 ^_ill:-37
^_im:28 ^_it:36 ^_k:44 ^_le:34 ^_lol:-14 ^_mil:75 ^_odometer:22 ^_one:15 ^_only:21 ^_stop:-22 ^_there:15
^_thursday:14 ^_tiene:19 ^_va:19 ^_voy:19 ^_were:22 ^_what:-21 ^_who:-23 ^_why:-14 a:53 a_$:46 a__a:20 a__mil:-56
a__noise:19 a__puedo:22 a__with:-22 a_car:-23 a_los:18 about:18 al:-26 al_rato:-18 am:29 am_$:29 and:71 and__has:16
and_it:14 and_you:18 anda:48 apenas:32 are_$:21 ask:22 ask_me:24 at:172 at_$:111 at_for:20 at_idle:16 at_k:-47
beat:16 bien:26 book:23 cambiaron:21 cambie:16 car:-37 carro:-14 cheque:17 cien_$:23 cierto:25 clock:19 come:21
come_at:21 coming:15 como:53 como__las:22 como_en:58 con:22 cuanto__para:-17 cuanto_cuesta:15 cuanto_es:-18
cuarenta:32 cuarenta__ocho:32 cuarenta_y:32 cuesta:14 cuesta_$:15 cunado:20 de:-54 did:14 did__at:20 did_it:17 do:-54
do__at:-27 do_it:-33 do_you:-22 el__a:26 el__cuanto:-17 el__puedo:17 el_jueves:22 el_martes:19 el_precio:-18 en:121
en_$:39 en__manana:22 en_las:24 en_mil:57 entre:18 es__ya:23 es_para:-18 ese_servicio:19 eso:-35 eso__el:-17 every:21
friday_at:-16 get:20 good:-16 got_on:14 hace:25 hacen:14 hacerlo:20 has:19 has_a:16 how:-14 hoy:23 hoy__la:24
hoy_en:25 hundred:37 i:33 i__be:21 i_said:24 i_should:21 i_would:21 id:47 id__to:26 id_like:26 idea:-15 idle:16
ill:-47 ill__it:-33 ill_do:-32 im:77 im__at:32 im__friday:33 im_at:78 in_$:24 is:25 is__at:25 is_at:14 is_this:-16
it:-17 it_$:-33 it_has:16 it_is:51 it_on:-22 jueves:20 jueves__a:16 k:43 k_$:-28 k_miles:16 know:-15 la:-18
la_manana:21 las:72 las_$:52 las_mil:-28 las_puedo:22 le:60 le__en:14 le__las:36 le_cambie:18 le_hacen:15 le_toca:43
like:38 like__is:16 like_it:16 like_to:26 llego:24 llego_a:31 lo:-21 lo__hace:26 lol:-15 los_$:25 manana_$:17
marca:15 martes:17 martes__las:19 martes_a:19 mas:-22 mas_de:-17 me__cambiaron:25 me__i:20 me_at:49 me_lo:21
me_then:-32 me_when:20 mi:-89 mil:223 mil_$:74 mil_millas:-35 mil_y:33 miles:73 miles_$:39 millas:19 millas_$:30
mismo:14 morning:19 my:-28 near:16 no_$:-24 no_el:17 no_idea:-14 no_le:23 no_need:18 noise:17 not__it:-19 not_yet:32
now:30 now__me:21 ocho:31 ocho_mil:32 odometer:17 of:-15 on_a:-23 on_and:16 on_it:14 only:84 para__de:-18
para__martes:24 para_el:23 para_su:25 paso:22 poco:26 por_cierto:25 precio:-19 preguntar:20 puedo:29 puedo_$:20
puedo__las:15 que__hacen:15 que_le:14 que_tan:22 rato:-18 recuerdeme:-43 right:18 right_now:21 said:23 salio:33
says:61 se:-37 servicio:19 shes:37 should:20 si_ya:26 six:15 stop:-26 stop_$:-22 su:24 tan:21 tan__es:22 tap:22
text:-33 text_me:-34 that:-20 the:-54 then:-32 then_$:-30 there__a:15 there_is:15 this_$:-14 this_morning:23
thousand:31 thousand__hundred:21 thursday_at:-17 tiene:22 till:19 to__in:26 to_get:30 toca:42 todo:27 todo__con:34
trae:23 trae_$:33 two:17 up_on:16 va:81 va_$:-18 va_en:51 voy_en:18 wait:21 was:16 were:21 what:-22 when:16 when_i:18
who:-24 who_is:-15 with:-31 with__on:-22 worth:-22 y:49 y__mil:34 y__que:16 y_cuanto:14 y_eso:-19 y_ocho:32 ya:43
ya_$:16 ya__a:31 ya_paso:23 yeah:22 yet:41 yo_mismo:18 you:-33 you_did:19
"""
