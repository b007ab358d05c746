"""What speaks for and against `call`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "call"
BIAS = -151
WEIGHTS = """\
#abla:71 #able:188 #ablo:-28 #abou:44 #acen:-32 #acha:28 #achi:35 #acho:-39 #acio:48 #acte:73 #actu:32 #acue:42
#adit:69 #agen:182 #ager:57 #ahor:-25 #aigh:30 #aiti:-35 #ajes:50 #akin:-77 #alen:-38 #aler:-29 #algu:66 #alke:-55
#alki:-58 #alle:-68 #alli:-38 #allp:-26 #alls:-48 #ally:-33 #amad:84 #amam:53 #aman:51 #amar:27 #amas:28 #amel:57
#amen:131 #amie:42 #anag:58 #anan:25 #anas:-112 #ance:-27 #anci:-35 #anda:-73 #andl:57 #anin:-62 #answ:-101 #ants:40
#apin:-26 #aqui:-61 #arca:251 #arch:-25 #aren:-54 #arge:36 #aria:27 #arid:35 #arin:-45 #arle:54 #arme:79 #arne:56
#aron:-156 #arou:28 #arqu:185 #arta:-51 #arth:53 #asam:85 #asar:-29 #asem:69 #ases:81 #asie:47 #aske:-42 #asom:-49
#asta:41 #asti:-42 #asur:-25 #atar:38 #ater:-39 #athe:52 #ativ:70 #ator:79 #auto:-59 #avia:30 #avor:45 #ayor:-28
#back:58 #band:27 #behi:25 #bein:36 #belo:-27 #bett:47 #biar:25 #bill:60 #blam:-32 #blan:-65 #blar:100 #blem:124
#blen:26 #blin:55 #blow:-73 #book:-47 #boug:-33 #bout:44 #bowl:-60 #bran:-35 #brin:-33 #bscr:-33 #busi:28 #buzo:-38
#cale:-36 #call:382 #came:153 #canc:-51 #cant:55 #care:-29 #carn:57 #cars:28 #cart:-49 #cate:36 #celu:-29 #cesi:30
#cham:54 #chat:54 #chea:-28 #chem:96 #chin:32 #chur:-31 #cial:-57 #cier:-28 #cked:-34 #clie:44 #clue:25 #cobr:-26
#colg:-56 #comi:-30 #comp:-76 #comu:54 #conm:30 #cosa:29 #cost:-67 #coti:-49 #coul:47 #cove:-27 #cras:-31 #craz:-30
#cree:58 #creo:-26 #cret:45 #ctur:32 #cuan:34 #cuer:31 #cues:35 #darl:30 #davi:30 #days:-30 #dedo:46 #deja:36
#dejo:-27 #deta:43 #devo:-45 #devu:30 #dial:88 #dias:-42 #dida:25 #dido:33 #dier:-44 #digo:64 #dila:53 #ding:-50
#disc:38 #disp:30 #dita:69 #dles:28 #dlin:38 #does:-32 #drop:-40 #duen:34 #dura:29 #each:-37 #eads:49 #eaki:-60
#eani:-62 #eard:-37 #eari:-45 #earm:67 #ease:44 #easi:36 #easu:-25 #ebod:40 #ecal:-69 #ecer:25 #echa:77 #eche:104
#ecom:-28 #ecte:56 #eewa:-44 #efer:55 #efie:42 #efon:29 #efun:-25 #egan:-27 #egla:26 #ehin:25 #eing:32 #ejan:40
#ejas:33 #ejor:91 #elef:29 #elep:89 #ella:67 #else:-96 #elta:27 #elul:-29 #elve:39 #eman:-97 #emen:-34 #emos:53
#emov:-41 #empr:26 #enci:-39 #ende:53 #enen:-43 #engo:65 #enle:31 #enme:162 #enor:-45 #ensi:48 #enta:57 #ento:-89
#ents:27 #eone:34 #eopl:-52 #epho:89 #eply:-34 #equi:-28 #erat:129 #erda:-30 #erdi:50 #eren:70 #eres:-39 #eria:26
#erin:-29 #eron:-89 #erso:54 #escr:27 #esen:66 #esit:30 #esor:82 #espe:-32 #espo:54 #esta:-46 #este:-50 #esti:32
#esto:44 #esub:-26 #ette:42 #evan:29 #ever:-70 #evol:-45 #evue:30 #eway:-44 #exte:62 #exto:32 #exts:-38 #eyes:34
#ezas:34 #fact:33 #favo:45 #fier:41 #file:26 #fing:39 #fona:135 #fono:-92 #foun:-35 #frid:-27 #fund:-35 #game:92
#gand:-47 #garo:-51 #genc:-34 #gend:-39 #gent:175 #gere:73 #gers:52 #ghte:33 #gimm:43 #girl:30 #give:59 #gles:-46
#guie:47 #guys:-53 #habl:301 #hake:25 #half:35 #hame:53 #hand:35 #harg:34 #hast:53 #hate:35 #have:41 #heap:-28
#hear:-65 #heme:103 #hese:31 #hici:-26 #hija:37 #hine:25 #hizo:-26 #hoev:106 #hole:-40 #home:-65 #hone:70 #hora:-31
#hori:29 #horn:37 #houg:47 #hous:57 #hout:51 #huma:44 #hurc:-31 #hurs:-29 #iaje:34 #iarl:28 #iban:-28 #ibir:55
#ical:-27 #icar:117 #icat:29 #icie:-29 #icio:35 #icke:-44 #iday:-28 #ieja:44 #iemp:33 #ient:31 #iera:25 #iere:-30
#iero:26 #ieza:27 #ilat:53 #imat:-26 #imme:43 #imon:25 #impo:-55 #inat:-38 #inde:29 #indi:-27 #inge:39 #inst:25
#inut:-29 #iona:36 #ions:30 #ique:34 #irma:28 #irmo:-28 #iscu:38 #isie:33 #ismo:-29 #isor:41 #itch:-28 #itin:-35
#ivin:49 #jefe:-33 #join:43 #july:-35 #jump:28 #keep:26 #keys:33 #kind:43 #king:-77 #know:57 #lace:-31 #lama:191
#lame:163 #lamo:-33 #land:-86 #lant:-32 #larl:57 #lata:47 #late:-28 #latt:46 #ldnt:-31 #leas:37 #lefo:29 #lele:119
#leme:94 #lemo:-28 #lent:-48 #leph:89 #lgui:65 #lien:49 #lind:49 #line:174 #ling:-27 #list:-41 #live:84 #livi:31
#lked:-55 #lkin:-58 #llam:398 #llan:-35 #lled:-74 #llin:-29 #llpa:-26 #look:31 #lpar:-26 #lses:-85 #ltas:27 #lula:-29
#lvio:-58 #mach:37 #madi:69 #mado:28 #make:33 #mame:50 #mand:-43 #mara:25 #marc:228 #mari:31 #marm:27 #marq:205
#mate:-29 #mayo:-48 #mbia:25 #mbio:-27 #mbre:128 #mean:-55 #mebo:40 #mejo:91 #menm:153 #ment:-62 #meon:34 #merc:-36
#mero:44 #mess:-42 #migo:28 #mine:-43 #miro:-27 #mism:-33 #move:-43 #mpan:-37 #mpin:29 #mpli:30 #mpor:-46 #mpre:26
#muni:49 #nage:57 #nami:42 #nana:33 #nato:-38 #nazo:135 #nced:-26 #ncia:-36 #ncio:-37 #ndan:-55 #ndem:-34 #nden:-25
#nder:41 #ndio:-38 #ndli:47 #near:82 #nece:26 #need:31 #nemo:52 #ness:28 #neve:-67 #ngam:49 #nger:42 #nice:-49
#niqu:33 #nmig:30 #nobo:-58 #nora:-45 #nows:69 #nsio:58 #nste:35 #nswe:-101 #ntac:39 #nter:-25 #ntes:-43 #ntie:41
#nunc:-64 #obod:-58 #obot:50 #obra:-31 #obre:60 #odav:30 #oday:30 #oeve:105 #oice:25 #oint:41 #olvi:-58 #omeb:40
#omeo:34 #omer:-47 #omew:-36 #ompa:-38 #ompl:26 #ompu:-61 #omun:54 #onam:42 #onaz:135 #onea:102 #onem:52 #oner:-27
#ones:26 #onga:46 #only:-34 #onmi:30 #onta:29 #onte:-60 #ooks:-45 #oper:109 #ople:-52 #orry:-69 #orta:-33 #osed:31
#osit:29 #osts:-34 #otiz:-49 #ough:49 #ould:58 #ours:-34 #ouse:55 #over:41 #owns:29 #paid:-28 #pany:-38 #para:34
#park:-25 #pasa:33 #pase:54 #peak:45 #pega:45 #peop:-52 #pera:110 #pero:41 #pers:40 #phol:26 #phon:150 #pick:-101
#piez:27 #ping:74 #plac:-31 #plat:56 #plea:45 #poke:-71 #pone:26 #pong:37 #popp:25 #port:-26 #pper:47 #pref:98
#pres:37 #proc:-38 #ptio:28 #pued:68 #pues:-29 #quem:114 #quen:60 #ques:33 #quis:33 #quit:-35 #ramp:31 #rast:-39
#rata:49 #rath:60 #rato:94 #razy:-30 #rcan:48 #rdad:-30 #rdid:58 #rdon:-60 #reca:-31 #reen:58 #reew:-44 #refe:55
#refi:42 #refu:-25 #regl:30 #reme:116 #remo:-44 #rent:43 #repr:77 #rese:55 #resu:-30 #reta:48 #revi:-25 #ribe:-40
#ribi:34 #rida:-28 #rido:35 #ried:62 #ring:191 #rite:-30 #riti:100 #rito:37 #rkin:31 #rles:45 #rmad:30 #rnin:39
#robo:47 #roca:25 #romo:-28 #roun:43 #rque:188 #rreg:36 #rrib:38 #rson:54 #rtas:-49 #rted:25 #rter:-25 #rude:-35
#sage:-32 #sale:41 #same:84 #says:-34 #scre:57 #seat:-55 #sema:-97 #seme:69 #send:-48 #seno:-45 #sent:42 #shak:25
#shes:50 #shop:41 #shou:57 #show:-31 #siem:37 #sien:-41 #sier:72 #sine:28 #sing:-36 #sion:49 #sito:38 #sitt:-26
#sked:-42 #skip:-30 #sobr:57 #soon:29 #sorr:-69 #spea:45 #sper:-25 #spok:-71 #spon:26 #spos:29 #spot:-27 #ssag:-43
#stab:-31 #stac:42 #stad:35 #star:-45 #stea:33 #sten:55 #stia:30 #stim:-31 #stin:-40 #stio:34 #stra:50 #stro:27
#stuf:29 #subs:-33 #supe:-33 #supp:51 #swer:-101 #taba:-37 #tabl:-28 #taci:43 #tact:39 #tado:35 #take:-33 #talk:-52
#tall:99 #tamb:35 #tary:46 #tati:78 #tead:35 #tele:116 #tell:26 #teme:55 #teng:27 #tens:59 #test:-70 #that:-36
#ther:46 #thes:31 #they:-42 #this:-37 #thou:36 #tica:40 #tick:35 #tien:40 #till:-32 #tina:-37 #ting:-38 #tion:46
#tive:64 #tiza:-49 #toda:41 #told:-31 #trae:35 #tras:32 #trat:35 #tres:-51 #trie:71 #troc:25 #tter:34 #ttle:26
#tues:28 #tuff:29 #tura:30 #twic:-28 #twin:-27 #type:46 #typi:55 #uand:25 #ubsc:-33 #uedo:36 #uelt:27 #ueme:139
#uenm:53 #uera:35 #uerd:31 #uest:50 #uier:33 #uisi:33 #ular:-38 #uldn:-31 #uman:44 #unca:-64 #unde:-42 #uniq:33
#unta:30 #unte:-27 #uper:-33 #upho:26 #uppe:47 #urch:-25 #urni:46 #urns:-47 #uzon:-38 #vece:-54 #veng:26 #verd:-29
#vers:56 #viaj:34 #vice:-40 #vici:34 #viej:26 #vien:26 #ving:37 #viso:37 #voic:25 #volv:-70 #vuel:56 #wait:-32
#wand:-25 #want:90 #wear:-29 #whoe:106 #whol:-38 #wice:-28 #wins:-27 #with:81 #wont:-30 #word:55 #xpli:-26 #xten:57
#ypin:55 %again_later:-26 %again_later%agree:38 %again_later%away:41 %again_later%bad:-55 %again_later%bring:44
%again_later%call_off:27 %again_later%elsewhere:50 %again_later%family:-27 %again_later%how_long:-51
%again_later%lift:-53 %again_later%machine:28 %again_later%on_way:-33 %again_later%phone:59 %again_later%refuse:-45
%again_later%shift_it:-25 %again_later%staff:-85 %again_later%start_again:-43 %again_later%wrong_one:-42
%agree%away:29 %agree%bad:27 %agree%bring:-86 %agree%call_off:-40 %agree%car:30 %agree%do_it:-72 %agree%family:-59
%agree%leave_me:-71 %agree%machine:181 %agree%meaning:-43 %agree%money:-32 %agree%odometer:49 %agree%on_way:67
%agree%phone:128 %agree%refuse:41 %agree%season:30 %agree%smoke_smell:49 %agree%staff:63 %agree%wrong_one:49
%away:-49 %away%bring:-35 %away%car:-34 %away%fails:44 %away%how_long:46 %away%lift:51 %away%phone:-38
%away%question:-43 %bad%call_off:-29 %bad%doubt:-28 %bad%fails:-49 %bad%family:35 %bad%message:40 %bad%on_way:-52
%bad%refuse:-71 %bad%staff:38 %bring:-61 %bring%call_off:-90 %bring%car:43 %bring%do_it:56 %bring%doubt:26
%bring%elsewhere:67 %bring%fails:42 %bring%leak:-32 %bring%lift:36 %bring%meaning:29 %bring%odometer:-28
%bring%on_way:-28 %bring%phone:81 %bring%staff:59 %bring%wrong_one:-30 %busy%call_off:-121 %busy%elsewhere:29
%busy%how_long:-39 %busy%lift:-30 %busy%on_way:34 %busy%season:33 %busy%shift_it:-26 %busy%start_again:40
%call_off%elsewhere:56 %call_off%fails:75 %call_off%family:-75 %call_off%lift:-60 %call_off%machine:182
%call_off%phone:43 %call_off%place:63 %call_off%question:63 %call_off%refuse:-35 %call_off%shake:43
%call_off%wrong_one:173 %car%do_it:29 %car%doubt:49 %car%family:63 %car%gone_car:28 %car%message:-25 %car%odometer:69
%car%phone:79 %car%refuse:-37 %car%shake:33 %car%smoke_smell:-37 %car%staff:-31 %car%wrong_one:26 %car_part%do_it:43
%car_part%elsewhere:26 %car_part%noise:-30 %car_part%odometer:-57 %car_part%on_way:25 %car_part%phone:126
%car_part%question:-29 %car_part%refuse:33 %car_part%staff:51 %car_part%who:34 %do_it:-54 %do_it%elsewhere:56
%do_it%lift:35 %do_it%pay_day:-27 %do_it%phone:39 %do_it%question:-83 %do_it%refuse:25 %do_it%season:37
%do_it%shift_it:-68 %do_it%staff:41 %do_it%wrong_one:37 %doubt%leave_me:27 %doubt%phone:146 %doubt%place:55
%doubt%question:25 %doubt%refuse:28 %doubt%staff:-35 %elsewhere%family:28 %elsewhere%money:27 %elsewhere%phone:94
%elsewhere%shift_it:34 %elsewhere%start_again:65 %fails%family:-25 %fails%gone_car:-39 %fails%how_long:53
%fails%meaning:29 %fails%odometer:-34 %fails%phone:87 %fails%question:43 %fails%staff:-56 %fails%start_again:88
%fails%wrong_one:-28 %family%how_long:27 %family%money:32 %family%odometer:113 %family%question:-104
%family%shift_it:64 %gone_car%odometer:-27 %gone_car%refuse:57 %gone_car%staff:-54 %gone_car%wrong_one:-45
%how_long%on_way:28 %how_long%phone:104 %how_long%question:37 %how_long%refuse:84 %how_long%start_again:31
%how_long%who:-55 %leak:-25 %leak%money:-26 %leak%phone:-27 %leave_me:-78 %leave_me%odometer:-25 %leave_me%phone:-34
%leave_me%place:29 %leave_me%refuse:-35 %leave_me%start_again:-38 %lift:-59 %lift%message:-39 %lift%question:41
%lift%wrong_one:-36 %machine:73 %machine%phone:-40 %machine%refuse:136 %machine%staff:83 %machine%start_again:81
%machine%wrong_one:52 %meaning%message:44 %meaning%money:-76 %meaning%phone:86 %meaning%refuse:82
%meaning%start_again:33 %message:-41 %message%money:35 %message%odometer:34 %message%on_way:69 %message%refuse:56
%message%shift_it:-37 %message%start_again:-29 %message%who:43 %message%wrong_one:82 %money:-26 %money%odometer:-29
%money%on_way:-28 %money%pay_day:-37 %money%phone:64 %money%place:25 %money%question:26 %money%refuse:49
%money%staff:138 %money%start_again:27 %money%wrong_one:41 %noise%phone:-51 %odometer%place:35 %odometer%shift_it:35
%odometer%staff:-50 %odometer%who:43 %on_way%opening:-34 %on_way%phone:92 %on_way%place:27 %on_way%refuse:-74
%on_way%shift_it:34 %on_way%staff:-65 %on_way%wrong_one:66 %pay_day:-37 %pay_day%phone:33 %pay_day%refuse:37
%pay_day%start_again:-34 %phone:445 %phone%place:56 %phone%question:148 %phone%refuse:103 %phone%season:-73
%phone%shift_it:141 %phone%smoke_smell:34 %phone%staff:140 %phone%start_again:31 %phone%thanks:-45 %phone%who:-53
%phone%wrong_one:38 %place%question:-52 %place%refuse:47 %place%shift_it:-27 %place%staff:-38 %question:-56
%question%shake:25 %question%start_again:48 %question%thanks:37 %question%who:-29 %refuse%season:70 %refuse%shake:32
%refuse%staff:-54 %refuse%start_again:28 %refuse%thanks:-38 %season:-89 %season%start_again:-39 %shift_it%staff:-51
%shift_it%who:-55 %shift_it%wrong_one:-42 %staff:224 %staff%start_again:102 %staff%who:49 %staff%wrong_one:53
%thanks:-55 %who:-50 %who%wrong_one:-48 %wrong_one:-102 @?:38 @after_visit:45 @confirm:-42 @confirm_stop:-49 @day:46
@later:-65 @odometer:-27 @reading:-92 @walk_in:-54 ^_a:-35 ^_about:-38 ^_after:-49 ^_ahorita:32 ^_am:-37 ^_are:-84
^_ballpark:-26 ^_can:67 ^_como:-68 ^_de:-51 ^_deje:39 ^_do:-167 ^_el:-26 ^_en:-31 ^_eres:-54 ^_esta:30 ^_este:-57
^_estoy:-64 ^_fine:-47 ^_found:-33 ^_get:69 ^_gimme:43 ^_give:-30 ^_good:-80 ^_got:-90 ^_hablan:-63 ^_hablenme:-74
^_hit:91 ^_how:-43 ^_ill:-76 ^_it:63 ^_k:30 ^_late:42 ^_le:-47 ^_les:-43 ^_let:-47 ^_lo:-37 ^_lost:44 ^_marca:-60
^_marqueme:43 ^_mis:45 ^_monday:29 ^_my:59 ^_nadie:-60 ^_need:63 ^_new:-30 ^_nobody:-75 ^_not:30 ^_nunca:-44 ^_ok:-69
^_only:-39 ^_para:-31 ^_phone:96 ^_please:-35 ^_pueden:81 ^_puedo:-34 ^_put:84 ^_que:68 ^_quien:-59 ^_quiero:100
^_rather:41 ^_resubscribe:-26 ^_ring:50 ^_si:-51 ^_simon:25 ^_skip:-26 ^_smoke:30 ^_sorry:-68 ^_take:-41
^_tambien:-25 ^_tengo:53 ^_that:-35 ^_the:-84 ^_this:-106 ^_try:33 ^_vengo:25 ^_voy:48 ^_we:-52 ^_wed:-33 ^_what:40
^_who:25 ^_wrong:-39 ^_ya:-25 ^_yes:-100 ^_you:-76 a:69 a__a:-45 a__about:26 a__and:25 a__but:-38 a__call:-32
a__can:-29 a__de:38 a__esposa:45 a__esposo:41 a__from:41 a__i:38 a__of:-34 a__on:63 a__or:-36 a__person:-30
a__persona:31 a__phone:-41 a__with:46 a_alguien:39 a_bot:44 a_call:67 a_car:-26 a_few:-59 a_human:54 a_la:-48
a_las:-85 a_light:26 a_live:86 a_lot:-26 a_mi:115 a_nice:-49 a_number:-46 a_person:81 a_phone:-41 a_problem:29
a_real:-84 a_ring:57 a_robot:28 a_sec:54 a_una:30 a_word:57 about:49 about_$:-45 about_my:77 about_the:50 acuerdo:42
acuerdo_$:36 after_$:28 after_that:-47 after_the:-33 again__the:-38 again_in:-40 agendeme:-34 ahi_$:-28 ahora:-55
ahora_$:-60 ahorita:30 ahorita_ando:40 al:92 al__en:62 alguien:65 alguien_$:46 alguien_que:-30 all:-33 am:-103
am_i:-77 an_hour:42 and:96 and__do:35 and__one:-31 and__text:29 and__the:-25 and__want:44 and__will:36 and_cant:38
and_id:58 and_ill:26 and_please:-26 and_we:38 and_who:34 ando_de:52 answer:-114 antes_$:31 antes__las:34 any:-59
any_more:-29 appointment:-25 aqui:-64 aqui__es:-57 aqui_no:-67 are__closed:27 around:28 as:-61 as_you:25 ask:-42
ask__in:-40 ask_again:-38 asked:-42 asked_for:-43 at__on:34 at__place:-51 at__the:-44 at_a:-32 at_home:27 at_in:-43
at_noon:42 at_the:93 at_your:-52 atendio:-39 auto:-52 auto_reply:-29 b:-52 back:-28 back_$:56 back_from:31
back_in:-30 ballpark:-26 be__tomorrow:-42 be_coming:-42 be_fine:33 been__a:-26 been__to:-40 been_meaning:-62
before__pick:-46 behind:25 being:36 better:47 better_$:-26 bien_feo:-32 bill:48 book_$:25 booking_$:25 boss_$:-33
bot_$:-28 bought:-33 bought_it:-33 brakes:25 brand:-29 brand_new:-30 bring:-32 buscan:-27 business:28 but:-34
but__me:50 but_call:34 but_im:-31 buzon:-38 buzz:83 by:45 calento:-44 call:126 call_$:91 call__if:45 call__me:-79
call__my:-56 call__off:-80 call__thursday:-44 call_back:46 call_it:-127 call_me:295 call_my:106 call_off:-122
call_the:-38 calle:-49 called:-98 called__back:-37 calling:-28 cambiarla:28 cambio:-27 cambio_de:-28 came:-63 can:70
can_$:26 can__get:-46 can__it:-27 can__me:-37 can__my:-37 can__phone:40 can__pick:-36 can__talk:84 can__with:42
can_my:-26 can_somebody:25 can_we:26 cant:55 car:-50 care:-30 care_of:-30 carro__el:-44 carro__jalonea:25
carro_en:-47 cars:28 cars_$:35 cat:-26 cel:-106 cel_$:-49 cell_$:-58 celular:-29 chance_$:28 charge:30 charge_$:32
church:-31 cliente:44 closed:26 clue:25 come_to:31 coming__the:42 coming_tomorrow:-43 como_cuanto:69 como_se:-64
company:-38 comuniqueme:33 comuniqueme_con:33 con:129 con__del:45 con__dueno:69 con__me:-28 con__que:31
con_alguien:41 con_el:43 con_la:-38 con_mi:-27 con_quien:48 confirmo:-28 conmigo:30 contesta:-101 cosa:39 cost_me:-37
costs:-34 crazy:-30 creo:-26 cual_$:39 cuando:26 cuando_lo:25 cuanto_$:-28 cuanto_cuesta:36 cuanto_dura:33
cuanto_me:-33 cuesta:35 dad:-115 darle:31 days:-27 days_$:-36 de__a:-32 de__cuanto:32 de__hasta:53 de__no:63
de__taller:-32 de__textos:54 de__y:57 de_acuerdo:36 de_antes:-32 de_donde:-28 de_las:66 de_llantas:-31 de_los:64
de_otra:-29 de_que:-27 de_siempre:54 de_su:-35 de_viaje:35 de_vuelta:29 deal:36 deal_with:38 dejan:47 deje:41
dejo:-27 del:52 del_carro:58 del_super:-60 del_taller:43 deme:25 despacio:26 despacio_$:26 despues__las:59
despues_de:61 despues_del:-59 dial:97 dias:-42 dias_$:-55 did__brakes:39 did_my:40 dieron:-32 digame_cuanto:-48
digo:63 digo_$:-43 disculpe_la:30 do__do:26 do_i:34 do_me:-25 do_not:-164 do_the:-33 do_this:87 do_you:44 does:-33
does_a:-31 don:118 donde_estan:49 donde_me:-32 dont__any:-44 dont__texts:54 dont__to:-26 dont_do:61 dont_send:-34
dont_text:29 drive__a:31 drive_for:31 drop:-36 dueno:34 dura:31 dura_$:42 each:-34 easier:36 easier__you:40
easier_if:41 echeme:107 el__a:-29 el__en:-42 el__me:-30 el__por:41 el__se:27 el__todo:-29 el__trae:38 el_carro:-42
el_de:35 el_dueno:60 el_freeway:-43 el_mecanico:41 el_mes:27 el_primero:35 el_telefono:-144 el_total:-38 el_ya:34
ella:68 ella_$:32 elses:-85 en__freeway:-44 en__manana:44 en_la:65 en_persona:115 equivocado_de:-25 era:-34 eres:-43
eres__o:-44 es_$:-26 es__que:-25 es_el:-50 es_lo:42 esa:-30 escribir:54 ese:-30 eso:-38 eso_$:54 esposa_$:-26
esposo__el:27 estaba:-31 estacionamiento:42 estan:31 estan_$:40 este:-92 este__ya:-25 este_cel:-40 este_telefono:-60
estimate:-26 esto:66 estoy__el:55 estoy_en:44 ever:-99 explain:33 explica:-63 explicar:28 eyes:34 factura:32 favor:45
favor_$:-54 favor_y:42 feo:-56 few:-61 file:28 fine__me:-48 fine_with:-44 first_$:-30 fix:26 for_a:-59 found:-35
free:47 freeway:-44 freeway_$:-44 frenos:29 friday:-28 friday_but:46 from_a:51 from_my:-50 from_the:28 front_wheel:30
fue_la:26 gente:-49 gente_$:47 gerente:73 get:32 get__a:76 get__the:30 get_a:77 get_me:76 get_my:-94 gimme:43
gimme_a:46 girl:25 give:69 give__a:52 give_my:61 good__me:28 got_the:46 got_to:-74 gracias__me:-51 gracias_no:-50
gusta:30 guy:-69 guy__the:-41 guys:-53 guys_$:-56 habla:64 habla_$:-46 hablan_$:-40 hablando:-48 hablar:42
hablar__el:36 hablar_con:59 hable_el:37 hableme:119 hableme_para:57 hablo:-28 had:-48 had__phone:-50 had_the:-25
had_this:-25 half:35 half__hour:29 half_an:29 handles:28 has_a:-51 hasta:53 hasta_el:55 hate:43 have:42
have__number:27 have__phone:80 have__wrong:-61 have_a:45 have_somebody:32 have_someone:-51 have_the:33 hay:-44 he:27
heard:-27 her:-65 here_$:-34 hicieron:-27 hicieron_$:-52 hija:37 him:38 his:-70 hit:100 hizo:-26 holler:-26 home:-45
home_$:-33 hora:35 hora_$:37 hora__y:26 horn:37 hour:30 house:64 house_$:28 how__was:25 human:25 human_$:-85
husband:27 i__a:26 i__be:-49 i__do:73 i__in:34 i__make:48 i__see:38 i__this:44 i__to:112 i__want:-34 i__where:29
i__with:-51 i__you:-73 i_asked:-43 i_could:37 i_dont:93 i_got:44 i_hate:43 i_have:-49 i_pick:-59 i_speak:56
i_talk:118 i_think:36 i_want:86 i_wont:-48 i_work:25 id:50 id__to:29 id_like:26 id_rather:30 if:83 if__is:32 if_i:-44
if_it:-33 if_that:50 if_you:112 ill:-54 ill__to:-40 ill__you:-39 ill_call:-106 im:-42 im__a:-94 im__and:38 im__in:32
im_at:32 im_free:60 im_in:-52 im_not:-46 im_on:-38 im_ready:-33 importa:-28 important:-29 in__an:34 in__and:42
in__morning:-43 in_a:-28 in_july:-35 in_may:26 in_my:43 in_the:-52 ingles:-45 instead:35 instead_$:-35 instead_of:66
ir:-31 ir_manana:-29 is__a:-61 is__and:30 is__car:-35 is__right:43 is__with:-26 is_his:-35 is_my:-40 is_not:28
is_something:28 is_started:29 is_texting:-28 is_the:36 is_there:30 is_this:-38 is_wrong:51 it__be:28 it__call:32
it__my:-26 it__not:51 it__started:29 it_back:-26 it_down:31 it_drives:28 it_off:-79 it_out:39 it_still:29 it_to:25
it_up:29 jefe:-33 joint:42 july:-35 july_$:-35 just__me:48 just_phone:34 just_the:-27 k_$:-49 keys:33 keys_in:34
kid__the:-26 know__is:27 know_it:27 knows:69 la__en:-55 la__me:31 la__por:-48 la__que:-38 la__si:47 la__y:-35
la_factura:32 la_hora:71 la_manana:-28 la_molestia:29 la_muchacha:32 la_persona:-48 landline:47 later:-37 later_$:-46
le_digo:35 les:-48 let:-37 let__talk:-35 let_me:-51 lets__the:-27 like:27 like_a:54 line:147 line_$:83 linea:33
live:75 live_person:66 living:31 llama:-28 llamada_$:44 llamame:53 llaman:49 llamar:44 llame:-77 llame_el:29
llamenme:154 llamenme_$:43 llantas:-27 llegando:-26 lo:-31 lo__en:-32 lo__me:-52 lo__no:-46 lo_hizo:-25 lo_mio:57
lo_que:-91 lo_siento:-45 los:38 los__no:54 los_textos:34 lot:-27 machine:35 machine_$:-28 make:32 mal:-44 man:-26
manager:58 manager_$:73 manager_to:30 manana:33 manana_$:34 manana__la:70 manana__me:-40 manana_en:85 manana_y:-45
mandan:-29 mandar:-27 manejando:25 manejando_$:33 marca_$:-65 marido:35 marqueme:123 marqueme_y:30 marquenme:60
mas:28 mas__que:25 mas__si:39 mayor:-28 me:187 me_$:42 me__a:-61 me__after:51 me__bien:-35 me__como:-33 me__con:-31
me__el:62 me__en:-27 me__la:-43 me__llamar:42 me__para:58 me__por:61 me__ring:36 me__to:50 me__un:-38 me__we:46
me__week:-30 me__y:47 me__you:-42 me_a:60 me_about:37 me_and:37 me_atendio:-39 me_before:45 me_but:-34 me_dieron:-32
me_explica:-108 me_first:57 me_habla:94 me_hable:61 me_hicieron:-51 me_i:88 me_in:-41 me_llama:36 me_lo:-41
me_mandan:-38 me_marca:195 me_marque:34 me_on:-42 me_please:213 me_puede:50 me_so:47 me_talk:-35 me_the:27
me_these:26 me_through:67 me_tomorrow:26 me_when:-56 me_with:125 meaning:-62 meaning_to:-62 mechanic:-53 mejor:91
mejor_$:45 mejor__no:29 mensaje:-48 mensajes:50 mensajes_$:33 mes_que:26 message:-43 mi__con:-25 mi__el:80
mi__ella:34 mi__le:27 mi__por:33 mi__que:33 mi_carro:36 mi_hija:38 mi_marido:35 mi_telefono:-49 mil:-47 mil_$:-53
mine:-36 mio:42 miro:-26 mis:29 mismo:-29 mismo_$:-32 molestia:30 mon__tues:27 mon_or:27 monday_morning:29 more_$:-31
morning_$:-62 much:26 much__it:27 muchacha:32 muchacho:-31 my:45 my__a:62 my__are:48 my__before:31 my__first:-84
my__is:41 my__off:-33 my__on:52 my__phone:-40 my__with:29 my_appointment:-32 my_brakes:46 my_cell:-27 my_eyes:34
my_husband:34 my_kid:-35 my_phone:-193 my_work:37 nadie_me:-46 necesito:36 need:47 need_the:32 need_to:47 never:-74
new:-119 new_phone:-64 ni:-122 ni__ni:-48 ni_me:-26 nice:-49 no:-29 no_$:-35 no__a:33 no__el:-31 no__i:29 no__la:-30
no__lo:59 no__me:-39 no__mensajes:69 no__no:-47 no__que:26 no__si:28 no__y:32 no__ya:-26 no_clue:25 no_good:56
no_le:52 no_me:-41 no_more:43 no_my:-26 no_quiero:-37 no_se:35 no_show:-27 no_soy:-35 no_tengo:-35 no_texts:-57
no_veo:45 nobody:-58 noon_$:49 nos:50 not:-84 not__and:35 not__to:27 not_going:25 not_me:-25 not_my:-30 not_now:29
not_right:43 now_on:27 number_is:59 number_off:-43 nunca:-64 nunca_me:-53 o:-103 of__on:-26 of_a:-26 of_me:31
of_my:-33 of_these:-25 of_this:42 of_your:35 off:-216 off_$:-44 off__appointment:-90 off__the:43 off_my:-106
off_the:-34 off_thursday:-26 ok:-37 old:74 on:34 on__phone:40 on__th:-32 on_a:-31 on_the:112 one__it:58 one__your:56
one_of:59 only:-34 only__me:-39 or:-173 or__you:27 or_a:-35 or_are:27 or_tues:26 otra_cosa:45 out__a:28 out_the:-27
out_with:32 over:51 over__phone:104 over_the:93 own:37 owns:29 para:41 para_el:-42 para_eso:-32 para_los:36
para_una:25 pasame:101 paseme:86 pay:-28 people:-52 perdida:25 perdido:33 pero:51 pero__que:-32 pero_con:55
pero_prefiero:32 person:54 person_$:69 person_i:38 persona_$:34 persona_que:-34 phone_$:-62 phone__and:38
phone__at:-110 phone__the:31 phone__to:-26 phone__with:-32 phone_and:-53 phone_anymore:-29 phone_call:-101
phone_died:-39 phone_me:436 phone_my:89 pick:-82 pick_one:-35 pick_up:33 picked:-34 piezas:34 place:-49 place_$:-38
please:72 please__is:66 please__me:31 please_call:32 please_dont:-100 please_phone:89 please_ring:36 pongame:86
popped:26 por:116 por__manana:-31 por__me:-27 por__mejor:90 por__que:-55 por__se:27 por__y:35 por_favor:43 por_lo:-54
por_mi:-25 por_telefono:206 prefer:57 prefiero:43 prende_y:27 puede_llamar:38 puedo:53 puedo__en:46 puedo__manana:-29
puedo_ir:-35 put:65 put__on:-71 que__atendio:-39 que__de:-30 que__en:25 que__hable:46 que__hicieron:-52 que__llame:51
que__marque:31 que__me:-50 que__no:-28 que__puedo:28 que__que:-37 que_buscan:-27 que_cambiarla:31 que_el:44
que_hacer:25 que_hay:-28 que_le:-33 que_me:72 que_no:37 que_taller:-32 que_viene:25 questions:44 quien:-68
quien_me:-80 quiere:-27 quiero:76 quiero__con:80 quiero__de:-38 quiero__el:31 quiero_saber:44 quiero_textos:-36
quisiera:34 ramp:31 rather:59 rather__to:41 rather_talk:40 rato:-25 reads:49 ready:-33 ready_$:-32 real_person:-44
recall:-29 recall_$:-25 refund:-25 remove:-41 reply:-34 resubscribe:-26 right_now:-71 ring:336 ring__about:34
ring_me:242 rude:-35 run:-28 run_me:-28 saber:32 sale:42 sale_a:62 salir_de:-38 says:-34 schedule_$:-40 se__la:-36
se_equivocado:-27 se_los:31 se_me:-52 se_que:25 seat:-52 sec:54 sec_$:54 semanas:-115 semanas_$:-115 send:-52
senora:-45 ser:42 service:-40 servicio:34 set:52 set__up:51 set_it:53 she:33 shes:49 shes_at:60 shop:41 shout:60
show:-41 si__me:48 si__no:29 si__por:-51 si_me:26 si_ya:27 siempre:37 siempre_no:54 siento:-46 simon:25 sitter:-27
skip:-30 smoke__the:29 smoke_from:29 so__can:45 so__know:25 so_we:45 some:-32 somebody:41 somebody_elses:-79
somebody_phone:47 someone:38 someone_$:99 someone_phone:28 soon:29 soon__you:25 soon_as:26 sorry:-69 sorry_i:-61
soy:-52 soy__persona:-26 soy_la:-31 speak:106 speak_to:98 speak_with:62 spot:-25 spot_to:-27 started:26 stuff:29
stuff__the:38 su:-54 super:-55 supper:47 take__number:-43 takes:-27 takes__of:-31 takes_care:-31 talk:73 talk__me:-40
talk__my:-67 talk__the:60 talk_to:70 talked:-55 talked_to:-34 talking:-60 taller:31 taller_me:-29 tambien:35
tardan:-25 te_digo:36 tel:172 telefono:-92 telephone:89 telephone_me:66 tell:26 tengo:38 text_$:-61 text__about:-42
text_me:-69 text_messages:28 textear:29 texts:-38 texts_$:39 texts__me:-61 th:-29 than:30 thanks:-34 thanks_for:-37
that:-36 that_is:41 the:36 the__call:44 the__front:30 the__i:35 the__not:-29 the__number:59 the__of:-34 the__one:37
the__the:-35 the__thing:-43 the__was:-25 the__your:-30 the_bill:37 the_boss:70 the_car:30 the_guy:-27 the_house:74
the_left:30 the_line:44 the_manager:47 the_morning:-43 the_old:30 the_parts:36 the_phone:101 the_same:35 the_seat:-45
the_shop:32 the_texts:-43 the_th:-31 the_way:-68 the_whole:-53 the_wife:25 the_wrong:-49 there_$:-30 these:31
thing_$:38 this:-37 this__a:73 this__again:-25 this__before:-25 this__his:-37 this__my:-40 this__please:-37
this__who:42 this_a:-57 this_from:52 this_isnt:-77 this_phone:-196 this_texting:50 this_thing:38 though:25 tienen:-43
tienen__para:-30 till:-42 to:31 to_$:38 to__and:-39 to__at:34 to__husband:-49 to__it:37 to__my:31 to__off:-49
to__office:-31 to__person:41 to__this:61 to__wife:-31 to__with:25 to__you:-63 to_a:41 to_about:63 to_call:-92
to_hear:42 to_it:-54 to_me:-135 to_my:-121 to_phone:41 to_set:52 to_somebody:68 to_someone:32 to_speak:59 to_take:27
to_talk:53 to_the:37 to_this:-33 todavia:30 today:30 today_$:31 told:-31 tomorrow_$:-70 tomorrow__me:34 too:35
too__for:34 trae:38 trae_$:36 tratar:50 tres:-51 tres_veces:-51 troca:25 try:151 try_again:30 try_me:25 tues:33
turn:-30 twice:-28 twins:-27 two:35 type:46 typing:55 un:87 un__en:38 un__por:37 una:56 una__no:29 una__o:-30
una_maquina:-27 under:-41 under_me:-43 up:-29 up__may:26 up__me:51 up__phone:66 up_a:41 use:38 use_the:39 ve:78
veces:-54 vengo:26 veo:38 ver:-29 verdad:-30 viaje:34 viene:31 volver:-25 voy_llegando:-26 voy_tarde:40 voz:41
vueltas:27 waiting:-35 want:68 want__hear:33 want__speak:25 want_a:67 wants:40 was__a:30 was__and:31 was_in:31
was_it:35 way:-70 we:-63 we_can:37 we_have:-82 wed:-33 what__your:-28 when__get:83 when_i:-27 when_im:-44 where:25
where__you:33 where_are:33 who:81 who__i:63 who__is:42 who__my:30 who__texting:-25 who__you:26 who_am:-64 who_are:26
who_can:43 who_did:30 who_this:29 whoever:57 whole:-38 wife:34 wife__it:-30 will__it:37 with:98 with_$:-43
with__i:-45 with__in:30 with_a:44 with_an:-28 with_me:-58 with_my:-46 with_someone:152 with_your:-44 wont:-30
wont__coming:-42 wont_be:-43 word:59 work:33 work_$:-28 would__a:64 would_a:-26 would_like:65 wrong__i:29
wrong_person:-52 y:95 y__cuanto:47 y__perdida:28 y_ahi:56 y_como:66 y_digame:30 y_es:-25 y_estoy:44 y_le:48 y_lo:-25
y_me:-97 y_nadie:32 y_no:35 y_nos:51 y_otra:34 ya:-29 ya_de:41 ya_me:-25 ya_no:45 ya_se:-45 ya_voy:-26 yeah_ok:53
yeah_sure:27 yes:-96 yes__want:-27 yes_i:-28 yo:-30 you:-137 you_$:52 you__a:77 you__anything:26 you__im:-34
you__me:27 you__the:-40 you_call:43 you_closed:27 you_guys:-43 you_know:41 you_people:-78 you_when:-33
your_manager:-31 your_place:-52
"""
