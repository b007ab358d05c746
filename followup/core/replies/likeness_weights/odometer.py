"""What speaks for and against `odometer`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "odometer"
BIAS = -144
WEIGHTS = """\
#anda:34 #ange:22 #apen:26 #busc:-28 #chec:-23 #cien:34 #cier:27 #cord:39 #cuer:-25 #deme:-25 #dome:26 #dred:62
#ecor:40 #ecue:-25 #eigh:28 #enas:25 #enta:37 #ento:26 #erde:-25 #erto:33 #four:40 #hace:25 #hang:24 #hous:47
#hund:61 #ient:28 #iert:33 #ight:34 #igue:24 #iles:30 #illa:-29 #just:63 #llas:-32 #lled:38 #mile:37 #mill:-25
#myse:25 #ndre:61 #oday:33 #odom:26 #olle:43 #only:43 #ords:40 #ousa:48 #pena:26 #rdem:-24 #read:23 #reco:39
#recu:-25 #righ:22 #roll:41 #rvic:22 #sand:48 #says:40 #self:24 #shes:135 #sigu:24 #sold:-27 #stop:-26 #text:-25
#thin:-22 #thou:59 #toca:32 #toda:36 #trae:36 #uerd:-25 #undr:62 #usan:48 #usco:-27 #when:53 #with:-29 #your:31
#ysel:25 %again_later%car:22 %again_later%question:23 %agree:47 %agree%call_off:42 %agree%car:45 %agree%meaning:25
%agree%odometer:47 %agree%on_way:27 %agree%refuse:27 %agree%wrong_one:23 %away:-38 %bring:-24 %bring%leave_me:-24
%busy:-23 %call_off:34 %call_off%on_way:30 %call_off%refuse:23 %car:102 %car%wrong_one:26 %car_part%odometer:-30
%car_part%question:33 %car_part%shift_it:26 %do_it:78 %do_it%gone_car:29 %do_it%refuse:33 %family:-51
%family%odometer:-43 %gone_car:-33 %gone_car%shift_it:30 %how_long%odometer:24 %leave_me:-49 %message:-37
%odometer%question:-50 %on_way:43 %phone:-22 %question:-31 %question%who:-29 %shift_it:-23 %thanks:-26 %who:-35
@?:-37 @day:-27 @nothing:30 @odometer:38 @odometer_:32 @reading:647 @time:-37 @times:26 ^_$:42 ^_a:-31 ^_about:25
^_bien:24 ^_for:49 ^_fyi:23 ^_ill:-25 ^_just:33 ^_le:25 ^_mil:33 ^_not:-35 ^_one:33 ^_only:27 ^_por:30 ^_see:-28
^_shes:31 ^_sold:-23 ^_what:-22 a__mil:-54 a_car:-22 a_los:31 about_it:-28 ahi:27 al:-24 and:74 and_it:25 apenas:26
ask:29 ask_me:32 at:99 at_$:34 at_and:28 at_k:-54 bien_todo:24 busco:-27 busco_$:-27 car:-52 cierto:32 de:-26 did:29
did_it:37 do:-27 done__at:23 el:-32 en:27 en_$:30 es:-26 eso:-26 for:32 for_your:44 four:40 fyi:24 got:40 got_on:42
hace:23 her:30 hundred:62 i:26 ill:-30 ill__it:-22 im:-29 in:-38 is:25 it_$:-30 it__at:39 it__k:-26 it_at:-48
it_is:61 it_myself:27 just:63 just_rolled:40 k_$:-42 las:48 las_$:53 las__millas:-54 las_mil:-37 le:47 le__las:26
le_toca:33 llego_a:22 lo__mi:-24 los_$:34 me:-27 me_about:-25 me_when:32 mi:-90 mil:122 mil_$:54 mil_millas:-66
mil_y:56 miles:30 miles_$:24 millas:-28 morning:24 my:-46 myself:25 no_$:-23 not:-40 now:83 now__me:48 now_ask:32
on:39 one:26 only:43 only_at:45 por:55 por_cierto:32 por_si:35 records:41 records_$:32 recuerdeme:-24 right:24
right_now:26 rolled:41 says:40 se:-29 see:-34 see_me:-27 shes:134 shes_at:77 si:35 sigue:25 so:41 sold:-26
sold_it:-24 stop:-23 te:-30 the:-30 this_morning:34 thousand:49 toca:32 today:33 todo__con:24 trae:36 trae_$:39
two:36 two_hundred:22 va:54 va_en:46 when:54 when__is:31 when_i:28 when_it:29 with:-28 y:46 ya:58 ya__a:22 ya__las:50
your:34 your_records:41
"""
