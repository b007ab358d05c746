"""What speaks for and against `odometer`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "odometer"
BIAS = -127
WEIGHTS = """\
#abou:26 #alio:24 #anda:48 #ange:22 #apen:25 #aren:22 #bout:26 #busc:-31 #chec:-29 #cien:28 #come:26 #como:42
#cord:33 #cuar:23 #cuer:-29 #deme:-28 #dome:44 #dred:73 #ecor:33 #ecue:-29 #eigh:34 #enas:25 #enta:46 #erde:-28
#eter:37 #four:29 #hace:49 #hang:23 #hous:43 #hund:73 #ight:35 #iles:52 #just:38 #like:27 #lled:27 #lleg:22 #mete:38
#mile:47 #morn:25 #ndre:73 #ocho:24 #odom:44 #olle:31 #omet:22 #only:94 #ords:33 #orni:25 #ousa:44 #pena:25 #ping:25
#quie:-23 #rdem:-27 #reco:32 #recu:-29 #rent:26 #rnin:24 #roll:28 #sand:44 #says:59 #shes:79 #sold:-27 #stop:-31
#ters:25 #text:-27 #thou:58 #toca:34 #uare:24 #uerd:-29 #undr:73 #usan:44 #usco:-31 #with:-30 #your:38
%again_later:-22 %again_later%odometer:-22 %agree%call_off:31 %agree%odometer:36 %away:-44 %bring%leave_me:-29
%busy:-26 %call_off%do_it:-30 %call_off%on_way:41 %car:27 %car%refuse:-49 %car_part%odometer:-25
%car_part%shift_it:27 %do_it:44 %do_it%refuse:36 %do_it%shift_it:27 %family:-26 %family%odometer:-32 %gone_car:-44
%how_long%odometer:27 %leave_me:-54 %message:-38 %odometer:73 %odometer%question:-40 %on_way:27 %phone:-26
%question:-38 %question%refuse:-23 %question%who:-42 %refuse:-23 %thanks:-24 %who:-51 @confirm:-43 @day:-33
@odometer_:39 @offers:-32 @reading:788 @time:-49 ^_$:49 ^_a:-36 ^_about:29 ^_and:39 ^_anda:35 ^_at:-60 ^_bien:25
^_cuarenta:22 ^_for:23 ^_i:-25 ^_ill:-28 ^_it:22 ^_k:38 ^_le:27 ^_mil:65 ^_only:26 ^_shes:36 ^_sold:-24 ^_stop:-25
^_who:-28 a:25 a_$:36 a__mil:-63 a__with:-22 a_car:-23 about:26 al:-27 and:59 anda:39 apenas:25 ask:29 ask_me:31
at:183 at_$:100 at_for:26 at_k:-35 bien_todo:25 btw:25 btw_$:22 busco:-31 busco_$:-31 car:-53 change:26 come:28
como:43 como_en:46 cuarenta:25 cuarenta__ocho:25 cuarenta_y:25 de:-25 did:30 did_it:38 do:-45 do_it:-23 do_you:-22
done__at:24 el__a:24 en:90 en_$:32 en_mil:47 eso:-28 for:22 for_your:50 four:29 get:23 got:32 got_on:31 hace:24
hundred:74 i:27 id:31 ill:-37 ill__it:-25 im:41 im__at:23 im__friday:24 im_at:56 is__at:28 it_$:-27 it__only:37
it_at:-24 it_is:56 just:38 just_rolled:28 k:29 k_$:-34 las:77 las_$:62 las_mil:-41 le:43 le__las:28 le_toca:35
like:27 llego_a:24 lo:-26 me_at:62 mi:-76 mil:191 mil_$:65 mil_millas:-46 mil_y:43 miles:39 miles_$:29 millas_$:33
morning:29 my:-62 no_$:-24 not:-23 not_yet:23 now:69 now_$:22 now__me:27 ocho:24 ocho_mil:25 on__now:22 only:94
only_at:100 puedo:23 records:35 records_$:35 recuerdeme:-27 right_now:24 rolled:29 salio:24 says:59 se:-33 shes:79
so:29 sold:-27 sold_it:-25 stop:-28 stop_$:-24 te:-32 text_me:-23 the:-56 this_morning:39 thousand:45
thousand__hundred:24 toca:34 todo__con:25 trae_$:25 two:25 two_hundred:28 va:70 va__en:24 va_en:44 who:-29 with:-30
y:61 y__mil:26 y_ocho:25 ya:40 ya__a:24 ya__las:36 yet:31 you:-40 your:40 your_records:35
"""
