"""What speaks for and against `odometer`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "odometer"
BIAS = -147
WEIGHTS = """\
#alio:28 #anda:47 #ange:26 #apen:37 #busc:-34 #chec:-31 #cien:46 #cier:35 #cuer:-30 #deme:-30 #dome:39 #dred:76
#ecue:-31 #enas:36 #enta:51 #ento:37 #erde:-30 #erto:45 #ervi:29 #eter:32 #ewhe:26 #four:34 #hace:36 #hang:28
#hous:52 #hund:76 #ient:40 #iert:45 #ight:25 #igue:31 #iles:31 #illa:-37 #just:64 #llas:-41 #lled:34 #mete:32
#mile:41 #mill:-33 #myse:28 #ndre:76 #oday:44 #odom:39 #olle:41 #only:42 #ousa:54 #pena:37 #quie:-25 #rdem:-29
#read:29 #recu:-31 #righ:26 #roll:38 #rote:25 #rvic:30 #sand:54 #says:54 #self:27 #serv:29 #shes:73 #sigu:31
#sold:-32 #stop:-32 #text:-29 #thou:68 #toca:41 #toda:52 #trae:58 #uerd:-30 #undr:76 #unta:28 #usan:54 #usco:-34
#when:63 #with:-34 #wrot:25 #ysel:28 %again_later%question:33 %agree:38 %agree%call_off:53 %agree%car:26
%agree%meaning:32 %agree%odometer:68 %agree%on_way:28 %agree%wrong_one:36 %away:-48 %bring%leave_me:-31 %busy:-28
%call_off:34 %call_off%car_part:-25 %call_off%do_it:-31 %call_off%on_way:34 %call_off%refuse:33 %car:40
%car%refuse:-54 %car%wrong_one:35 %car_part%odometer:-32 %car_part%question:40 %car_part%shift_it:29 %do_it:50
%do_it%gone_car:30 %do_it%refuse:46 %family:-59 %family%odometer:-55 %gone_car:-40 %gone_car%shift_it:33
%how_long%odometer:33 %leave_me:-56 %meaning%odometer:28 %message:-41 %odometer:41 %odometer%question:-50
%odometer%refuse:29 %on_way:51 %pay_day:-35 %question%who:-46 %who:-52 @day:-30 @nothing:47 @odometer:129
@odometer_:40 @reading:1152 @time:-45 ^_a:-39 ^_about:33 ^_and:28 ^_at:26 ^_bien:30 ^_fyi:31 ^_i:-30 ^_ill:-32
^_just:46 ^_k:26 ^_mil:49 ^_not:-44 ^_one:44 ^_only:35 ^_por:41 ^_see:-34 ^_sold:-28 ^_stop:-27 ^_who:-30 ^_works:25
a:31 a_$:27 a__mil:-67 a__with:-26 a_car:-27 a_las:-25 a_los:41 about_it:-35 ahi:32 al:-30 and:67 and_it:32 apenas:37
ask:37 ask_me:41 at:71 at__now:35 at_and:27 at_k:-56 bien_todo:31 btw:30 btw_$:26 busco:-34 busco_$:-33 car:-63
car_with:-26 cierto:42 de:-26 did:30 did_it:43 do_it:-26 do_you:-25 done__at:32 el:-26 en:35 en_$:42 es:-29 eso:-36
four:34 fyi:34 got:57 got_on:58 hace:32 her:41 hit:26 hundred:79 i:46 ill:-43 ill__it:-30 im:-29 in:-38 is:29
it_$:-33 it__at:56 it__k:-33 it_at:-60 it_is:57 it_myself:34 just:64 just_rolled:34 k_$:-44 la:-27 las:48 las_$:63
las__millas:-65 las_mil:-46 le:45 le_toca:42 llego_a:28 lo__mi:-29 lo_cambiaron:25 los_$:47 me:-32 me_about:-30
me_when:41 mi:-107 mil:184 mil_$:73 mil_millas:-76 mil_y:77 miles:31 miles_$:30 millas:-37 my:-50 myself:28 no_$:-29
not:-49 now:110 now__me:60 now_ask:40 on:65 on__now:25 on_it:27 one:36 only:42 only_at:42 por:75 por_cierto:42
por_si:45 recuerdeme:-29 right:29 right_now:32 rolled:37 salio:28 says:54 se:-30 see:-37 see_me:-34 shes:72 si:28
sigue:32 so:41 sold:-32 sold_it:-29 stop:-30 stop_$:-26 te:-36 text_me:-25 thousand:56 thousand__hundred:27 tiene:26
to:-33 toca:41 today:44 todo__con:31 trae:58 trae_$:51 two:47 two_hundred:28 va:72 va_en:70 when:65 when__is:38
when_i:32 when_it:35 who:-32 with:-33 wrote:25 y:77 ya:64 ya__a:28 ya__las:65
"""
