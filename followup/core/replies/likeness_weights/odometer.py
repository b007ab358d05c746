"""What speaks for and against `odometer`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "odometer"
BIAS = -140
WEIGHTS = """\
#acta:22 #adas:18 #adin:20 #alio:28 #ambi:24 #anda:54 #anta:-26 #apen:28 #aren:25 #avad:18 #bien:20 #book:20 #camb:25
#chec:-23 #chen:21 #clav:18 #como:46 #cuan:-19 #cuar:27 #cuer:-39 #dame:19 #deme:-37 #ding:20 #dome:38 #dred:31
#eadi:20 #ecue:-39 #eigh:20 #enas:27 #enda:20 #enta:52 #erde:-37 #erto:22 #eter:31 #exac:21 #gend:19 #hace:50
#hous:28 #hund:31 #iaro:18 #iert:23 #ight:24 #iles:81 #illa:22 #lava:18 #lego:21 #like:33 #lleg:25 #mete:31 #mile:75
#mill:28 #ndam:19 #ndre:31 #ocho:28 #odom:39 #omet:35 #only:73 #orta:19 #orth:-18 #ould:22 #ousa:29 #paso:19 #pena:27
#poco:22 #prec:-19 #quie:-22 #rdem:-36 #read:24 #reci:-20 #recu:-39 #rent:31 #rtan:19 #said:20 #sali:25 #sand:29
#says:54 #shes:31 #stop:-25 #tant:18 #text:-33 #then:-26 #thou:28 #toca:37 #todo:22 #uare:28 #udge:18 #uedo:21
#uerd:-39 #undr:31 #unta:18 #usan:29 #were:18 #what:-22 #with:-27 #wort:-18 #xact:21 #yeah:20 %again_later:-68
%again_later%odometer:-40 %again_later%shift_it:-22 %agree:18 %agree%call_off:32 %agree%odometer:29 %agree%place:20
%agree%question:20 %away:-60 %away%message:-27 %bad%money:18 %bad%question:22 %bring%call_off:18 %bring%leave_me:-23
%busy:-19 %call_off:25 %call_off%meaning:21 %call_off%on_way:29 %call_off%place:22 %car%refuse:-29 %car_part:-19
%car_part%do_it:20 %car_part%odometer:-20 %car_part%shift_it:23 %do_it:29 %do_it%refuse:37 %do_it%shift_it:21
%elsewhere:-26 %fails:-26 %family:-28 %family%odometer:-32 %gone_car:-35 %how_long%odometer:20 %leave_me:-50
%lift%odometer:19 %message:-46 %money:-19 %odometer:113 %odometer%question:-43 %odometer%refuse:18 %on_way:21
%on_way%place:19 %phone:-28 %question:-44 %question%who:-28 %shift_it:-18 %staff:-21 %thanks:-26 %who:-37
%wrong_one:-47 @after_visit:22 @confirm:-56 @day:-26 @nothing:41 @odometer_:46 @offers:-22 @reading:896 @time:-30
@times:-26 ^_$:66 ^_and:36 ^_anda:39 ^_at:-64 ^_bien:29 ^_ill:-32 ^_im:25 ^_it:30 ^_k:39 ^_le:30 ^_mil:66
^_odometer:20 ^_only:18 ^_stop:-20 ^_tiene:18 ^_va:18 ^_were:19 ^_what:-20 ^_who:-18 a:47 a_$:40 a__a:18 a__mil:-47
a__puedo:19 a__with:-18 a_car:-19 al:-23 am:24 am_$:25 and:63 anda:42 apenas:28 are_$:18 ask:20 ask_me:22 at:148
at_$:93 at_k:-41 bien:22 book:21 cambiaron:18 car:-32 cien_$:20 cierto:21 come_at:18 como:46 como__las:19 como_en:50
con:18 cuarenta:28 cuarenta__ocho:28 cuarenta_y:28 de:-47 do:-45 do__at:-22 do_it:-28 do_you:-19 el__a:21
el_jueves:18 en:105 en_$:35 en__manana:19 en_las:21 en_mil:50 es__ya:20 eso:-30 every:18 hace:22 hoy:19 hoy__la:20
hoy_en:21 hundred:31 i:27 i__be:18 i_said:21 i_should:18 id:41 id__to:22 id_like:22 ill:-40 ill__it:-27 ill_do:-27
im:67 im__at:28 im__friday:28 im_at:68 in_$:20 is:21 is__at:22 it_$:-27 it_is:42 it_on:-18 k:40 k_$:-23 la:-18 las:61
las_$:44 las_mil:-23 las_puedo:19 le:50 le__las:30 le_toca:37 like:33 like_to:22 llego:21 llego_a:27 lo:-20
lo__hace:22 los_$:22 mas:-19 me__cambiaron:22 me_at:43 me_lo:18 me_then:-27 mi:-84 mil:198 mil_$:65 mil_millas:-27
mil_y:30 miles:65 miles_$:36 millas:21 millas_$:31 my:-24 no_$:-24 no_le:20 not_yet:28 now:27 now__me:18 ocho:28
ocho_mil:28 on_a:-19 only:73 para__martes:20 para_el:20 para_su:21 paso:19 poco:22 por_cierto:21 puedo:24 que_tan:19
recuerdeme:-36 right_now:18 said:20 salio:28 says:54 se:-33 shes:31 si_ya:22 stop:-23 stop_$:-19 su:20 tan:18
tan__es:19 tap:19 text:-27 text_me:-28 the:-48 then:-26 then_$:-25 this_morning:19 thousand:29 thousand__hundred:18
tiene:20 to__in:22 to_get:25 toca:37 todo:23 todo__con:29 trae_$:28 va:71 va_en:46 were:18 what:-21 who:-19 with:-27
with__on:-18 worth:-18 y:43 y__mil:30 y_ocho:28 ya:40 ya__a:27 ya_paso:20 yeah:20 yet:36 you:-28
"""
