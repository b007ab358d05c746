"""What speaks for and against `odometer`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "odometer"
BIAS = -184
WEIGHTS = """\
#anda:37 #ange:25 #apen:28 #busc:-28 #chec:-29 #cien:36 #cier:29 #cord:41 #cuer:-25 #deme:-26 #dome:31 #dred:64
#ecor:41 #ecue:-26 #eigh:30 #enas:27 #enta:41 #ento:28 #erde:-25 #erto:35 #eter:25 #four:41 #hace:26 #hang:26
#hous:54 #hund:64 #ient:30 #iert:35 #ight:35 #igue:25 #iles:42 #just:66 #llas:-29 #lled:41 #mete:25 #mile:51 #myse:26
#ndre:64 #oday:35 #odom:31 #olle:47 #only:46 #ords:41 #ousa:56 #pena:28 #quie:-27 #read:26 #reco:40 #recu:-26
#roll:44 #rvic:25 #sand:56 #says:43 #self:25 #shes:139 #sigu:25 #sold:-28 #stop:-31 #text:-26 #thou:67 #toca:34
#toda:39 #trae:44 #uerd:-25 #undr:64 #usan:56 #usco:-28 #when:55 #with:-30 #your:33 #ysel:26 %agree:53
%agree%call_off:43 %agree%car:47 %agree%meaning:26 %agree%odometer:53 %agree%on_way:26 %agree%refuse:27 %away:-47
%bring:-27 %bring%leave_me:-29 %busy:-26 %call_off:28 %call_off%on_way:30 %car:102 %car%wrong_one:26
%car_part%odometer:-28 %car_part%question:34 %car_part%shift_it:27 %do_it:82 %do_it%gone_car:30 %do_it%refuse:35
%family:-56 %family%odometer:-47 %gone_car:-38 %gone_car%shift_it:30 %how_long%odometer:26 %leave_me:-58 %message:-40
%odometer:43 %odometer%question:-48 %on_way:42 %pay_day:-33 %phone:-25 %question:-52 %question%who:-41 %refuse:-28
%thanks:-26 %who:-48 @?:-41 @day:-34 @nothing:66 @odometer:28 @odometer_:39 @offers:-27 @reading:825 @time:-47 ^_$:49
^_a:-31 ^_about:28 ^_bien:25 ^_for:52 ^_ill:-26 ^_just:35 ^_mil:38 ^_not:-39 ^_one:34 ^_only:28 ^_por:32 ^_see:-29
^_shes:32 ^_who:-26 a:27 a__mil:-55 a_los:33 about_it:-29 ahi:28 al:-28 and:80 and_it:27 apenas:28 ask:29 ask_me:33
at:119 at_$:41 at_and:30 at_k:-50 bien_todo:25 busco:-28 busco_$:-28 car:-55 cierto:33 de:-30 did:29 did_it:38 do:-30
do_you:-25 el:-35 en:33 en_$:33 es:-30 eso:-30 for:34 for_your:46 four:41 fyi:25 got:43 got_on:44 her:31 hundred:65
i:29 ill:-36 im:-31 in:-41 is:29 it_$:-28 it__at:43 it__k:-27 it_at:-49 it_is:70 it_myself:29 just:66 just_rolled:43
k_$:-35 las:42 las_$:56 las__millas:-54 las_mil:-37 le:39 le_toca:34 lo__mi:-25 los_$:36 me:-32 me_about:-26
me_when:34 mi:-95 mil:144 mil_$:60 mil_millas:-60 mil_y:60 miles:42 miles_$:31 millas:-25 morning:25 my:-49 myself:26
no_$:-25 not:-45 now:90 now__me:49 now_ask:33 on:45 one:26 only:46 only_at:48 por:58 por_cierto:33 por_si:36
records:43 records_$:33 right:25 right_now:27 rolled:44 says:43 se:-33 see:-35 see_me:-28 shes:139 shes_at:80 si:34
sigue:26 so:43 sold:-28 sold_it:-25 stop:-28 te:-31 the:-37 this_morning:36 thousand:56 toca:34 today:35 todo__con:25
trae:44 trae_$:41 two:38 va:59 va_en:52 when:56 when__is:32 when_i:29 when_it:30 who:-28 with:-29 y:51 ya:61
ya__las:53 your:36 your_records:43
"""
