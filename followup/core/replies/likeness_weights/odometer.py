"""What speaks for and against `odometer`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "odometer"
BIAS = -118
WEIGHTS = """\
#abou:23 #alio:19 #anda:38 #apen:21 #aren:18 #bout:23 #busc:-25 #chec:-22 #cien:23 #come:19 #como:34 #cord:26
#cuar:19 #cuer:-23 #deme:-23 #dome:37 #dred:57 #ecor:26 #ecue:-23 #eigh:27 #enas:21 #enta:37 #erde:-22 #eter:32
#four:23 #hace:38 #hang:19 #hous:36 #hund:57 #ight:28 #iles:49 #just:32 #like:22 #lled:23 #lleg:18 #mete:32 #mile:47
#morn:20 #ndre:57 #ocho:20 #odom:37 #olle:26 #omet:20 #only:72 #ords:25 #orni:20 #ousa:37 #pena:21 #ping:19 #quie:-21
#rdem:-21 #reco:25 #recu:-23 #rent:22 #rnin:19 #roll:23 #sand:37 #says:48 #shes:61 #sold:-22 #stop:-23 #ters:19
#text:-23 #thou:48 #toca:26 #trae:19 #uare:20 #uerd:-23 #undr:57 #usan:37 #usco:-25 #with:-26 #your:28
%again_later:-22 %agree%call_off:25 %agree%odometer:32 %away:-38 %bring%leave_me:-22 %busy:-22 %call_off%do_it:-22
%call_off%on_way:33 %car%refuse:-41 %car_part:-20 %car_part%odometer:-18 %car_part%shift_it:19 %do_it:32
%do_it%refuse:28 %do_it%shift_it:21 %family:-20 %family%odometer:-23 %gone_car:-39 %how_long%odometer:22
%leave_me:-44 %message:-33 %odometer:97 %odometer%question:-28 %on_way:22 %phone:-24 %question:-43
%question%refuse:-20 %question%who:-35 %refuse:-28 %thanks:-19 %who:-43 %wrong_one:-20 @confirm:-37 @day:-31
@nothing:23 @odometer:47 @odometer_:37 @offers:-30 @reading:729 @time:-36 ^_$:50 ^_a:-28 ^_about:24 ^_and:31
^_anda:28 ^_at:-56 ^_bien:20 ^_cuarenta:18 ^_for:18 ^_i:-21 ^_ill:-23 ^_it:20 ^_k:32 ^_le:22 ^_mil:52 ^_only:21
^_shes:27 ^_sold:-19 ^_stop:-18 ^_what:-19 ^_who:-22 a_$:28 a__mil:-50 a__with:-18 a_car:-19 about:23 al:-21 and:47
anda:31 apenas:21 ask:21 ask_me:24 at:114 at_$:54 at_for:21 at_k:-29 bien_todo:20 btw:20 btw_$:18 busco:-25
busco_$:-24 car:-44 change:20 come:21 como:35 como_en:36 cuarenta:20 cuarenta__ocho:20 cuarenta_y:20 de:-25 did:24
did_it:30 do:-39 do_it:-19 do_you:-19 done__at:19 el__a:18 en:73 en_$:27 en_mil:38 eso:-24 for_your:39 four:23 get:18
got:25 got_on:24 hace:19 hundred:58 i:18 id:23 ill:-30 ill__it:-20 im:30 im__at:18 im__friday:19 im_at:44 is__at:22
it_$:-21 it__only:28 it_at:-19 it_is:47 just:32 just_rolled:23 k:29 k_$:-24 las:57 las_$:47 las_mil:-33 le:33
le__las:22 le_toca:27 like:22 llego_a:19 lo:-20 me_at:47 mi:-52 mil:155 mil_$:52 mil_millas:-34 mil_y:36 miles:39
miles_$:28 millas_$:33 morning:24 my:-53 not:-21 not_yet:18 now:53 now_$:18 now__me:21 ocho:20 ocho_mil:20 on__now:18
only:72 only_at:77 records:27 records_$:27 recuerdeme:-21 right_now:19 rolled:24 salio:19 says:48 se:-26 shes:61
so:22 sold:-22 sold_it:-20 stop:-21 te:-26 text_me:-19 the:-52 this_morning:30 thousand:38 thousand__hundred:20
thursday_at:-18 tiene:18 toca:26 todo__con:20 trae:19 trae_$:20 two:19 two_hundred:22 va:54 va__en:18 va_en:37
who:-23 with:-25 y:49 y__mil:21 y_ocho:20 ya:33 ya__a:19 ya__las:28 yet:24 you:-36 your:31 your_records:27
"""
