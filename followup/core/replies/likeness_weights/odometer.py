"""What speaks for and against `odometer`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "odometer"
BIAS = -140
WEIGHTS = """\
#able:-40 #acke:54 #adas:63 #adin:48 #afec:-48 #alan:34 #alio:57 #anda:75 #apen:41 #arle:54 #avad:57 #avis:-29
#band:58 #beat:45 #brin:59 #busc:-71 #cien:71 #cier:61 #cked:47 #clav:61 #cloc:36 #come:29 #comi:27 #cord:27 #cost:33
#crac:58 #cuer:-56 #cupa:33 #damo:34 #darl:60 #deja:-36 #deme:-59 #dice:29 #ding:45 #doce:40 #dome:36 #dosc:35
#dred:43 #eadi:48 #ecio:-40 #ecor:28 #ecta:-48 #ecue:-58 #eeke:-27 #ejar:-42 #eken:-27 #elve:53 #enas:37 #enme:-39
#enta:28 #ente:-37 #ento:53 #erde:-59 #erto:64 #ethi:-37 #ewhe:44 #fect:-48 #feri:33 #five:47 #foto:-33 #four:75
#hace:55 #hang:29 #head:-28 #heet:49 #here:32 #hing:-25 #home:-32 #hree:-37 #hund:42 #iene:38 #ient:63 #iert:65
#igue:46 #illa:-43 #inco:67 #ippi:38 #irve:26 #isen:-37 #jala:33 #jaro:-44 #just:42 #kend:-27 #lake:30 #land:31
#last:-37 #lava:54 #llas:-42 #llev:25 #lock:37 #look:-25 #lopp:63 #meth:-37 #mill:-39 #mone:27 #mont:-30 #myse:35
#ndam:42 #nday:-45 #ndre:43 #near:30 #next:38 #nine:121 #noon:27 #ntar:47 #ntos:48 #nudg:37 #ocup:33 #oday:37
#odom:36 #only:49 #onth:-30 #oppy:63 #orth:-41 #osci:35 #papa:-41 #para:-28 #peed:44 #pena:42 #ping:31 #poco:81
#ppin:34 #prec:-40 #rack:47 #rdem:-59 #read:74 #reci:-43 #reco:26 #recu:-57 #righ:29 #rinc:60 #rote:57 #sali:43
#says:95 #scie:31 #self:31 #senm:-38 #shee:49 #shes:61 #sien:-51 #sigu:46 #sirv:25 #skip:44 #slop:63 #sold:-53
#spee:44 #sund:-44 #tabl:-47 #ters:40 #text:-28 #them:-26 #then:-35 #ther:-25 #thin:-25 #thou:71 #thre:-34 #tien:35
#toca:58 #toda:45 #todo:48 #trae:81 #udge:37 #uelv:44 #uerd:-56 #unda:-45 #undr:42 #unta:33 #upan:36 #usco:-74
#vise:-41 #vuel:36 #when:30 #wher:30 #with:-48 #wort:-41 #wrot:58 #ysel:35 %again_later%away:53 %again_later%car:68
%again_later%do_it:-41 %again_later%gone_car:-28 %again_later%odometer:43 %again_later%season:42 %agree:37
%agree%bring:-34 %agree%call_off:26 %agree%car_part:-28 %agree%do_it:-26 %agree%elsewhere:31 %agree%meaning:53
%agree%odometer:106 %away%car_part:27 %away%fails:30 %away%leave_me:29 %away%message:-47 %away%season:35
%away%start_again:26 %bad:27 %bad%odometer:25 %bring%do_it:-27 %bring%odometer:38 %busy:-31 %call_off%car_part:-39
%call_off%do_it:-37 %call_off%odometer:48 %car%on_way:51 %car%question:27 %car%refuse:-90 %car_part%elsewhere:31
%car_part%gone_car:25 %car_part%odometer:-41 %car_part%place:40 %car_part%question:48 %car_part%refuse:-50
%car_part%shift_it:66 %car_part%start_again:32 %do_it:63 %do_it%gone_car:32 %do_it%odometer:38 %do_it%opening:-32
%do_it%refuse:57 %elsewhere%how_long:34 %elsewhere%meaning:36 %elsewhere%odometer:41 %elsewhere%shift_it:38
%elsewhere%wrong_one:-38 %fails:43 %family:-35 %family%odometer:-58 %gone_car:-28 %gone_car%on_way:45
%gone_car%pay_day:-41 %gone_car%season:-39 %gone_car%shift_it:58 %gone_car%wrong_one:32 %how_long%meaning:36
%how_long%odometer:89 %leak:-27 %lift%odometer:59 %meaning%odometer:72 %money%odometer:46 %money%refuse:42
%odometer:75 %odometer%question:-46 %on_way:42 %opening:-29 %pay_day:-28 %refuse%wrong_one:29 @car:-28 @nothing:29
@odometer:109 @reading:631 ^_a:-74 ^_about:81 ^_ahi:65 ^_ahorita:-25 ^_already:-38 ^_and:30 ^_ask:-28 ^_at:34
^_bien:96 ^_changed:40 ^_coming:43 ^_did:29 ^_fyi:128 ^_got:27 ^_i:-52 ^_ill:-61 ^_it:-46 ^_just:118 ^_me:26 ^_mil:32
^_ni:-47 ^_not:-84 ^_oil:31 ^_one:94 ^_only:71 ^_por:46 ^_see:-80 ^_sold:-54 ^_stop:-26 ^_that:-38 ^_today:-40
^_two:-30 ^_what:-28 ^_why:-29 ^_yes:-34 ^_you:28 a:36 a__a:49 a__at:46 a__mil:-144 a__with:-71 a_car:-66
a_hundred:56 a_los:113 about__at:-82 about_a:71 about_it:-80 ahi:34 already__it:-25 and:65 and__did:65 and__has:47
and__is:-54 and__would:-32 and_it:81 and_that:28 and_this:-49 and_why:-31 and_yes:41 and_you:50 andamos:38 apenas:41
ask:44 ask__when:49 ask_me:55 at:102 at__it:95 at__lake:30 at__now:78 at__so:63 at__your:51 at_and:72 at_for:51
at_idle:29 at_k:-70 at_now:130 avisenme:-38 beat:46 between__and:39 bien:27 bien_$:-36 bien_todo:104 brakes:-29
brakes_$:-39 busco:-74 busco_$:-74 cambie:32 cambie_yo:-44 can:27 can__come:30 car:-73 car_has:33 car_with:-72
changed_it:59 cien:-48 ciento:46 cierto:73 clock:42 come:33 coming:27 con:58 cuanto__para:-48 cuanto_es:-46 darle:60
de:-63 dejaron:-44 dice:29 did:36 did__at:68 did__myself:36 did_it:87 do:-31 do__at:-66 do_it:-59 doce:40 done__at:96
done_at:-29 done_elsewhere:49 dos:41 e:-35 el__a:-34 el__cuanto:-46 el__en:26 el__puedo:53 el_precio:-43
elsewhere_$:-27 en:36 en_$:90 en_mil:-27 es:-32 es_para:-48 eso:-60 eso__el:-49 feria:32 feria_$:33 five:47 five_$:44
for_your:52 foto:-33 four:76 fyi:114 got__done:39 got__it:27 got_on:29 got_that:45 hace:64 has:66 has__on:32 has_a:44
hay:47 hay_que:63 home:-32 hundred:54 i__be:41 i__wait:60 i_come:25 i_should:35 i_was:-28 i_would:56 ill:-38
ill__it:-63 ill_do:-63 in:-44 is_$:39 is__a:27 is__out:45 is_an:-26 is_my:-53 is_the:27 is_what:64 it__at:112
it__k:-64 it__on:-56 it__something:-49 it__when:32 it_at:-132 it_done:-25 it_has:43 it_is:63 it_myself:81 it_on:-42
jaja:25 jaja_$:26 jueves__a:50 just:43 k:-37 k_$:-86 k_miles:-26 lake:30 las:32 las_$:96 las__millas:-117 las__yo:57
las_mil:-54 last:-32 last_month:-52 le:45 le__las:47 le_cambie:29 le_toca:91 like__is:41 like_it:37 lleva:34
lleva_millas:27 lo__a:76 lo__hace:81 lo__mi:-50 lo__yo:-46 lo_cambiaron:65 lo_cambio:-41 lo_dejaron:-46 lo_ocupan:39
los:46 los_$:156 los_mil:-25 mas:-38 mas_de:-49 me__cambiaron:63 me__cambio:-41 me__i:42 me__it:-36 me_about:-65
me_lo:27 me_then:-51 me_when:80 mi:-98 mi_papa:-41 mil:201 mil_$:26 mil__lo:-29 mil_gracias:-28 mil_millas:-142
mil_y:150 millas:-37 millas_$:-52 money:29 month:-30 month_$:-51 morning:31 morning__i:61 my:-64 my__im:-49 my__it:67
my_car:-44 my_sheet:54 myself:35 myself__the:-25 n:54 near:31 next:38 ni:-39 ni_se:-46 no_$:-79 no_and:-31 no_el:49
no_le:49 no_need:42 not:-61 not__car:-49 not__it:-29 not_my:-49 not_worth:-42 now:97 now__me:110 now_ask:81 now_so:71
nudge:37 ocupan:36 ocupan_$:39 of:56 oh:97 oil_change:26 on:49 on__it:45 on__sheet:56 on__so:58 on_a:-47 on_and:47
on_it:44 on_my:51 on_sunday:-46 on_the:-27 one:51 only:49 only_at:91 papa:-41 para__de:-48 poco:84 por:67
por_cierto:74 por_que:-25 por_si:117 precio:-41 preguntar:42 puedo:25 puedo__las:45 puedo_a:54 que__toca:-29
que__ya:63 que_trae:-49 reading:59 records:31 records_$:41 recuerdeme:-59 right:36 right_now:63 salio:57 says:95
se:-40 se__cambie:44 se__que:-45 se_lo:28 se_siente:-45 see:-59 see_me:-82 sheet:49 shes:61 should_be:35 si__que:65
si_hay:62 si_le:38 si_lo:55 si_ya:-28 siente:-45 siente_que:-45 sigue:54 sirve:28 sloppy:63 so:51 so__i:50
so__you:-25 so_can:64 sold:-53 sold_it:-54 something:-37 somewhere__and:35 somewhere_between:35 son:25 soon_$:52
sunday:-45 sunday_$:-46 te:-74 text:-38 text_me:-54 that__the:28 that__what:62 that_done:30 that_is:39 the_lake:30
the_last:35 them:-26 then:-35 then_$:-36 this__my:-49 this_is:-46 this_morning:51 thousand:25 three:-36 tiene:43
tiene_millas:49 till:37 to__it:26 toca:65 today:39 today_$:53 todo:49 todo__con:107 trae:66 trae_$:108 trae_mil:30
trae_millas:34 tuesday__is:29 two:88 two_$:98 two_hundred:30 un:-37 up:34 up__the:30 up_at:27 up_on:41 va:87 va_$:-26
va_en:115 wait__it:-25 wait_till:47 week_$:40 weekend:-27 weekend_$:-28 when:32 when__is:34 when_i:28 when_it:27
why_would:-30 with:-52 with__on:-41 worth:-41 worth_it:-41 would_a:-30 wrote:58 y:62 y_eso:-45 ya:34 ya__cambie:-36
ya__las:64 ya__lo:25 ya__mil:80 ya__toca:-26 ya_le:-32 ya_se:38 yes_tuesday:45 yo:-29 yo_$:-27 yo__a:54 you:25
you__it:46 you__on:57 you_did:55 your_records:30
"""
