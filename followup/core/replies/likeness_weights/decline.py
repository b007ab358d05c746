"""What speaks for and against `decline`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "decline"
BIAS = -126
WEIGHTS = """\
#abad:-41 #abla:-32 #able:-31 #abou:64 #acci:-18 #aced:-32 #acei:46 #acer:31 #acha:23 #acia:-19 #acom:21 #actu:29
#ador:18 #afte:24 #agar:-40 #agen:-36 #agra:24 #agua:-24 #ahor:-139 #aigo:-53 #ains:33 #ajes:-28 #aken:-19 #aler:55
#algu:34 #alir:-18 #alle:-38 #alls:76 #alqu:-25 #also:27 #alta:-23 #amab:-36 #amos:98 #anag:21 #anan:-30 #anca:-20
#ance:55 #anda:50 #ando:-21 #ands:-21 #anej:-40 #ange:28 #anic:45 #anks:-44 #anne:-18 #anot:-25 #answ:33 #ante:-28
#anym:-25 #anyw:81 #apen:18 #aper:24 #appo:25 #appy:-39 #aqui:-136 #arag:30 #arat:18 #arca:-24 #arch:-54 #arde:19
#ardl:24 #arel:18 #arge:-24 #aria:-21 #ario:31 #arli:-31 #arlo:30 #arly:54 #arra:-55 #asad:23 #asse:-32 #aste:85
#athe:28 #atis:22 #ativ:114 #atte:-36 #atur:27 #auge:-24 #aunq:18 #avia:-28 #away:26 #ayer:-28 #bado:-41 #bara:18
#bare:18 #been:-34 #befo:-31 #bien:93 #bios:-32 #blan:-27 #blem:-78 #bles:-33 #both:-27 #bout:64 #brak:-26 #brin:-21
#bsup:-23 #buck:18 #buen:-32 #busy:-31 #call:18 #came:-20 #canc:-44 #cand:-35 #cani:36 #cant:93 #card:28 #caro:164
#cars:27 #casa:53 #caso:61 #ceit:46 #cesa:37 #cesi:-20 #cess:26 #chan:126 #char:-30 #chas:-18 #chea:28 #chec:-23
#cher:20 #choq:-28 #chur:19 #cias:-22 #ciat:20 #cibi:-69 #cide:31 #cido:42 #cita:38 #clas:20 #clie:-32 #cobr:18
#coch:21 #comi:28 #como:-90 #comp:40 #cond:-25 #conm:19 #cono:-40 #cont:-39 #conv:51 #cool:-19 #corr:-18 #cost:-45
#cran:-20 #crat:29 #creo:40 #crib:-54 #ctob:-19 #ctua:34 #cual:-33 #cuan:-24 #cupe:50 #cupo:32 #curi:33 #cust:-32
#dale:-19 #dand:47 #davi:-22 #days:70 #ddle:-21 #deal:46 #deci:75 #deja:73 #deje:112 #dejo:66 #delo:48 #denm:23
#dent:-31 #ders:56 #dese:18 #desp:-22 #dial:37 #diga:-19 #dime:43 #ding:92 #dled:-20 #dles:30 #does:62 #doin:43
#done:-26 #dont:44 #doub:-89 #down:28 #dson:-18 #dule:-20 #eady:-29 #eale:54 #eape:26 #earl:19 #eate:18 #eave:100
#ecal:66 #ecan:35 #eces:45 #ecib:-73 #ecid:62 #econ:-25 #ecto:-24 #edan:-18 #eded:45 #edes:-33 #edin:23 #edul:-20
#eede:45 #eedi:23 #eepi:28 #efie:44 #efor:-31 #egat:137 #egla:-36 #eglo:40 #ehic:-21 #eite:46 #eith:56 #ejal:44
#ejar:21 #ejel:103 #ejen:20 #ejor:66 #ejos:47 #elli:34 #else:60 #eman:-21 #emin:57 #emos:-33 #empo:-21 #empr:86
#ench:30 #ende:-68 #endo:-29 #enen:33 #engo:21 #enin:25 #enlo:19 #enme:-22 #ensa:-30 #ensi:60 #ente:-55 #enti:-29
#ento:-66 #entr:-33 #eocu:43 #eone:40 #eopl:-22 #epin:28 #epla:-24 #eras:-24 #erdo:-31 #eren:-31 #eres:53 #erfe:-34
#eria:-33 #erra:18 #erse:-26 #erso:-41 #erta:35 #ervi:23 #esar:34 #esas:59 #escr:-54 #esit:-29 #esnt:80 #esos:47
#esse:-24 #este:-62 #esto:35 #even:21 #ever:31 #eves:26 #ewhe:72 #exac:-29 #exis:-21 #expe:58 #exte:-45 #exti:31
#exts:-38 #falt:-24 #fect:-37 #feel:-23 #fere:-23 #feri:-50 #fert:20 #fier:45 #fine:131 #firm:-34 #firs:-63 #fixe:-57
#folk:18 #fore:-24 #forg:36 #fort:18 #foun:66 #fren:-71 #frid:21 #fter:24 #full:35 #gall:23 #gara:30 #garr:-39
#gast:23 #gati:137 #gaug:-24 #gave:35 #gend:-29 #glar:-29 #goin:61 #good:77 #grac:-22 #grad:23 #grat:18 #gual:-28
#guan:-22 #guie:18 #guna:83 #guno:82 #habl:-37 #hace:-27 #haga:37 #hago:38 #hanc:99 #hand:21 #hank:44 #hard:76
#harg:-26 #have:29 #heap:32 #heat:-32 #hedu:-20 #hera:21 #hich:-25 #hicl:-19 #hijo:25 #hile:-33 #hing:47 #hink:-27
#hist:23 #hole:24 #hoqu:-28 #hori:-86 #horr:23 #hose:81 #houg:61 #hour:32 #hree:37 #hrou:-33 #humb:73 #hurc:19
#hurs:18 #iaja:-19 #iate:20 #iban:-39 #ibir:-75 #ible:26 #ices:50 #icle:-19 #iday:19 #idea:-65 #ided:55 #iden:-19
#iend:-41 #ierr:18 #igan:47 #igua:-29 #imer:-28 #impo:44 #inda:-21 #inde:39 #ingu:111 #inki:30 #insi:18 #inst:20
#inte:32 #intm:27 #into:41 #invi:25 #ione:-22 #iosi:26 #iper:52 #ires:23 #irma:-25 #irst:-63 #irve:27 #ises:26
#isim:-20 #ismo:24 #isnt:18 #ithe:56 #ixed:-58 #jaja:19 #jalo:43 #jaro:36 #jelo:103 #jenl:22 #juev:25 #just:55
#keep:67 #know:-46 #lace:-29 #laro:-43 #leav:105 #leep:21 #lejo:38 #lema:-34 #less:30 #lets:22 #leve:-25 #levo:40
#lgui:21 #lien:-40 #lier:-29 #ligh:-21 #like:23 #lind:-27 #ling:20 #llan:38 #lleg:-29 #ller:-30 #llin:40 #loco:114
#long:-112 #lood:23 #look:-24 #lqui:-25 #lsew:38 #ltas:22 #lune:-23 #lvid:44 #mabl:-36 #mana:-31 #mane:-42 #mano:27
#many:-24 #marc:-93 #mari:-22 #mati:-26 #matt:-25 #mber:-41 #mbre:18 #mbsu:-23 #meca:36 #mejo:66 #mens:-29 #ment:-59
#meon:40 #mero:-74 #mess:-20 #mewh:34 #migo:27 #mind:70 #ming:19 #mism:18 #moda:21 #mome:-93 #mone:22 #more:-175
#morn:-37 #mpan:29 #mpla:-18 #mpos:40 #mpra:56 #much:-61 #muer:29 #myse:73 #nada:30 #nage:21 #name:-81 #ncel:-44
#nces:82 #nche:20 #ndan:51 #ndem:-28 #nden:-25 #nder:41 #ndin:64 #ndso:-18 #nece:43 #need:-30 #nega:132 #neit:146
#neja:-18 #nejo:-21 #nero:-18 #next:-19 #nger:-59 #nges:30 #ngin:-22 #ngun:111 #nice:77 #nico:33 #ning:133 #nles:30
#nmig:19 #noma:47 #nomb:54 #none:208 #noth:32 #nozc:-85 #nsaj:-29 #nswe:33 #ntac:-20 #ntas:38 #nter:44 #ntes:-43
#ntme:27 #ntra:-35 #numb:-25 #nume:-46 #nvie:47 #nymo:-25 #nywa:83 #ober:-33 #oble:-74 #obra:32 #ocid:25 #ocup:75
#odav:-22 #oday:-38 #odos:27 #oesn:80 #ofer:19 #oing:104 #oint:39 #oles:-26 #olks:18 #olvi:41 #omas:53 #ombr:25
#omen:-94 #omeo:40 #omer:-34 #omew:34 #omin:18 #omod:21 #ompa:42 #onda:26 #ones:28 #oney:22 #onfi:-18 #onge:-73
#only:71 #onmi:19 #onoc:46 #onoz:-85 #onta:-24 #onve:18 #onvi:33 #ople:-23 #opti:-28 #oque:-28 #oras:40 #orda:19
#orge:44 #orit:-92 #orks:-37 #orni:-37 #orre:-19 #orri:-77 #orry:69 #orta:19 #orth:130 #osib:45 #othe:32 #othi:27
#oton:-19 #ould:-27 #ound:70 #owne:-39 #ozco:-85 #para:60 #part:-22 #pass:169 #pena:64 #pend:30 #peni:24 #pens:51
#peop:-22 #perd:-31 #perf:-34 #pero:101 #plac:-29 #plea:-33 #poin:41 #poke:28 #posi:44 #pped:-26 #ppen:28 #ppoi:25
#ppre:20 #pran:61 #pref:34 #pren:-35 #preo:43 #pres:-50 #pric:40 #prim:-45 #prob:-83 #ptio:-28 #pues:-40 #punt:-18
#putt:47 #quea:53 #quie:-74 #quit:33 #raci:-22 #rage:30 #raig:-46 #rake:-26 #ranc:-29 #rand:-25 #rano:55 #ratc:29
#rath:33 #rati:18 #rato:32 #rcha:-34 #rdar:28 #rday:20 #rdly:24 #rdon:-24 #reca:65 #reci:-67 #rect:-21 #refi:44
#rely:23 #remi:50 #rend:-35 #reno:-48 #reoc:43 #repl:-41 #resa:-38 #ress:-18 #rest:28 #rfec:-34 #rget:44 #riba:-42
#rice:37 #rida:19 #ries:-82 #righ:70 #rime:-28 #ring:-41 #rios:30 #rita:-89 #rito:23 #rlie:-31 #rman:18 #rmat:-22
#rnin:-33 #robl:-87 #rong:-22 #ropi:19 #roug:-45 #roun:29 #rque:-23 #rrec:-20 #rrie:-92 #rsda:30 #rson:-41 #rtan:21
#ruck:-20 #ruid:-21 #runs:22 #saba:-41 #saje:-26 #sali:-38 #sari:29 #sary:26 #satu:25 #says:38 #sche:-20 #scri:-55
#sday:18 #seas:-22 #seco:-24 #self:75 #sell:32 #sema:-21 #serv:20 #sewh:38 #shop:-48 #sibl:34 #sida:27 #siem:31
#sien:30 #siga:57 #sign:-30 #sima:-19 #simo:-22 #sirv:24 #sito:-29 #skip:66 #slee:21 #sold:-82 #solo:63 #some:59
#sona:-27 #soon:22 #sorr:63 #soun:-23 #spen:40 #spok:28 #sque:50 #ssar:26 #ssed:-56 #stam:74 #stan:-18 #stay:19
#sted:-23 #stil:-28 #stom:-32 #stop:-34 #stoy:82 #stri:22 #stuf:38 #supe:-20 #swer:33 #tact:-20 #take:32 #talk:-20
#tall:-38 #tamo:81 #tand:-39 #tard:25 #teac:20 #tede:-33 #tell:-35 #temp:54 #tend:-25 #teng:21 #tere:47 #text:-74
#than:34 #that:19 #ther:44 #thin:19 #thos:71 #thou:65 #thre:33 #thro:-35 #thum:71 #thur:18 #tiem:-18 #tien:-39
#tier:22 #till:-30 #time:35 #ting:69 #tion:-48 #tira:-24 #tire:31 #tive:75 #tivo:36 #tmen:27 #tobe:-19 #toda:-47
#tome:-30 #tono:-19 #took:-25 #town:-24 #trai:-44 #tran:-22 #tres:26 #truc:-20 #tter:-47 #ttin:50 #tual:31 #tues:-26
#tuff:38 #turd:25 #turn:-33 #uall:25 #ualq:-25 #uand:-22 #ucha:-23 #ueak:56 #ueda:50 #uedo:-34 #uere:40 #ueve:25
#uier:-63 #umbe:-26 #umbs:73 #umer:-46 #unds:-18 #unes:-23 #unle:30 #uper:-21 #uras:20 #urch:19 #urda:25 #urio:32
#ursd:30 #usin:18 #usta:28 #uste:-41 #usto:-58 #utti:47 #vale:36 #vehi:-21 #vemo:-20 #vera:-32 #vers:-26 #viaj:-29
#vide:38 #vido:29 #vien:29 #vier:44 #ving:31 #visi:-18 #vive:-35 #want:-26 #wapp:-24 #week:-63 #were:126 #what:24
#when:43 #wher:88 #whic:-25 #whil:-33 #whol:29 #wipe:54 #wner:-33 #wont:51 #work:24 #worr:-84 #wort:125 #wren:30
#wron:-22 #xact:-29 #xist:-21 #xtee:-42 #xtin:41 #year:33 #ying:28 #ymor:-25 #your:31 #ysel:73 #yway:83 #zero:54
%again_later:-125 %again_later%agree:-33 %again_later%away:-46 %again_later%bad:24 %again_later%bring:-26
%again_later%busy:-35 %again_later%car:43 %again_later%do_it:-18 %again_later%doubt:29 %again_later%family:25
%again_later%money:-46 %again_later%on_way:100 %again_later%opening:23 %again_later%pay_day:-37 %again_later%phone:23
%again_later%place:-23 %again_later%staff:23 %again_later%start_again:21 %again_later%wrong_one:63 %agree:-87
%agree%away:33 %agree%bring:-105 %agree%call_off:56 %agree%car:88 %agree%car_part:176 %agree%doubt:-51
%agree%fails:-26 %agree%how_long:-47 %agree%leave_me:-31 %agree%lift:-28 %agree%money:-37 %agree%odometer:23
%agree%place:46 %agree%question:147 %agree%refuse:-55 %agree%shift_it:-20 %agree%staff:27 %agree%thanks:91
%agree%wrong_one:59 %away%bring:-21 %away%do_it:74 %away%doubt:-33 %away%elsewhere:-20 %away%fails:22
%away%how_long:-19 %away%leave_me:-22 %away%lift:-22 %away%money:23 %away%noise:38 %away%on_way:-35 %away%place:25
%away%refuse:124 %away%staff:24 %away%thanks:41 %away%wrong_one:24 %bad%call_off:52 %bad%car_part:39 %bad%doubt:41
%bad%question:31 %bad%refuse:35 %bad%shift_it:18 %bad%staff:-24 %bad%start_again:19 %bad%wrong_one:18 %bring:21
%bring%busy:-22 %bring%call_off:-54 %bring%car_part:50 %bring%doubt:-40 %bring%elsewhere:44 %bring%gone_car:24
%bring%leak:32 %bring%meaning:18 %bring%message:63 %bring%odometer:-18 %bring%on_way:-20 %bring%question:30
%bring%refuse:45 %bring%shift_it:-28 %bring%who:25 %bring%wrong_one:25 %busy:38 %busy%fails:24 %busy%how_long:19
%busy%question:-21 %busy%refuse:-24 %busy%staff:-21 %call_off:-18 %call_off%car:-19 %call_off%car_part:35
%call_off%do_it:-21 %call_off%doubt:41 %call_off%elsewhere:-27 %call_off%fails:-88 %call_off%family:46
%call_off%gone_car:29 %call_off%how_long:56 %call_off%leave_me:22 %call_off%lift:34 %call_off%meaning:31
%call_off%message:-53 %call_off%on_way:52 %call_off%opening:62 %call_off%question:129 %call_off%staff:52
%call_off%start_again:58 %call_off%thanks:417 %call_off%wrong_one:51 %car:-22 %car%gone_car:-81 %car%question:27
%car%refuse:-111 %car%season:24 %car%thanks:38 %car%who:21 %car%wrong_one:-68 %car_part:-57 %car_part%do_it:19
%car_part%fails:-49 %car_part%how_long:-24 %car_part%leak:-20 %car_part%leave_me:129 %car_part%meaning:-35
%car_part%message:184 %car_part%money:-27 %car_part%on_way:-27 %car_part%place:-33 %car_part%question:38
%car_part%refuse:89 %car_part%shift_it:61 %car_part%smoke_smell:-39 %car_part%start_again:40 %car_part%thanks:50
%car_part%wrong_one:53 %do_it%doubt:24 %do_it%elsewhere:-85 %do_it%fails:22 %do_it%family:-82 %do_it%gone_car:-34
%do_it%leak:-22 %do_it%leave_me:39 %do_it%question:18 %do_it%refuse:19 %do_it%staff:-53 %do_it%start_again:37
%do_it%thanks:41 %doubt:31 %doubt%gone_car:18 %doubt%money:30 %doubt%on_way:-30 %doubt%question:105 %doubt%refuse:114
%doubt%staff:-20 %doubt%start_again:27 %doubt%thanks:32 %doubt%wrong_one:52 %elsewhere:85 %elsewhere%family:55
%elsewhere%gone_car:21 %elsewhere%money:-32 %elsewhere%odometer:44 %elsewhere%phone:-18 %elsewhere%place:-34
%elsewhere%question:-32 %elsewhere%staff:20 %elsewhere%thanks:39 %elsewhere%wrong_one:-19 %fails:-107
%fails%on_way:28 %fails%place:-21 %fails%refuse:-27 %fails%shift_it:21 %family%gone_car:-19 %family%odometer:38
%family%refuse:35 %family%staff:84 %family%start_again:22 %family%who:-30 %gone_car:-103 %gone_car%odometer:46
%gone_car%on_way:37 %gone_car%question:65 %gone_car%refuse:41 %gone_car%thanks:64 %gone_car%who:69
%gone_car%wrong_one:43 %how_long%opening:32 %how_long%refuse:65 %leak%wrong_one:30 %leave_me%message:50
%leave_me%money:-26 %leave_me%refuse:31 %leave_me%shift_it:24 %leave_me%start_again:-33 %leave_me%wrong_one:31
%lift:-36 %machine:-38 %machine%staff:-22 %meaning:-28 %meaning%question:-21 %message:-49 %message%question:-26
%message%refuse:-136 %message%start_again:-71 %message%wrong_one:-52 %money:52 %money%on_way:60 %money%pay_day:-21
%money%refuse:120 %money%season:19 %money%staff:18 %money%thanks:23 %money%wrong_one:44 %noise:-50
%noise%odometer:-18 %noise%thanks:18 %odometer:28 %odometer%question:24 %odometer%season:21 %odometer%staff:52
%on_way%place:-34 %on_way%refuse:98 %on_way%shift_it:47 %on_way%start_again:42 %opening%refuse:69 %pay_day:-82
%pay_day%refuse:-27 %pay_day%season:-33 %phone:-110 %phone%shift_it:-37 %phone%staff:-22 %phone%wrong_one:-29
%place%refuse:34 %question:-143 %question%refuse:18 %question%staff:61 %question%start_again:32 %question%thanks:105
%question%who:28 %question%wrong_one:65 %refuse:385 %refuse%season:-28 %refuse%staff:23 %refuse%start_again:27
%refuse%thanks:32 %refuse%who:-23 %refuse%wrong_one:-32 %season:-66 %shake:-18 %shift_it:55 %shift_it%start_again:24
%shift_it%thanks:31 %smoke_smell:-50 %staff:52 %staff%who:28 %staff%wrong_one:54 %start_again:-29
%start_again%wrong_one:54 %thanks%who:37 %thanks%wrong_one:45 %who%wrong_one:23 %wrong_one:-63 @?:-108
@after_visit:-437 @car:-44 @confirm:-605 @confirm_stop:135 @day:34 @later:-185 @nothing:-289 @odometer:-49 @offers:63
@offers_:-41 @reading:-47 @times:-256 @walk_in:41 ^_$:-60 ^_a:64 ^_actually:20 ^_ahora:-40 ^_ahorita:-44 ^_any:-78
^_anything:27 ^_appreciate:40 ^_aqui:-73 ^_are:-21 ^_as:109 ^_asi:156 ^_both:-55 ^_call:-19 ^_can:-53 ^_cant:94
^_cars:20 ^_como:-130 ^_cost:-18 ^_count:23 ^_cualquiera:-19 ^_cuanto:-34 ^_de:-65 ^_dejelo:30 ^_did:-31 ^_do:-110
^_does:-19 ^_dont:89 ^_either:-112 ^_eso:23 ^_fine:-22 ^_first:-27 ^_forget:27 ^_found:43 ^_going:89 ^_good:-29
^_gracias:-139 ^_had:-20 ^_hard:41 ^_how:-62 ^_id:42 ^_if:-23 ^_ill:35 ^_im:78 ^_imposible:25 ^_is:-100 ^_it:-68
^_just:-26 ^_la:-68 ^_last:-39 ^_leave:58 ^_lets:33 ^_lo:-54 ^_me:-141 ^_mejor:98 ^_mi:26 ^_mil:-36 ^_muchas:-22
^_muy:121 ^_my:-39 ^_nd:-24 ^_need:-30 ^_negative:86 ^_negativo:51 ^_neither:144 ^_nel:114 ^_never:27 ^_ni:205
^_ninguna:69 ^_ninguno:57 ^_no:221 ^_nombre:30 ^_none:125 ^_nop:56 ^_not:76 ^_nothing:55 ^_ok:-125 ^_on:20 ^_only:52
^_option:-21 ^_para:98 ^_paso:35 ^_pass:53 ^_por:-117 ^_prefiero:38 ^_puedo:-39 ^_put:-19 ^_que:-23 ^_quit:21
^_scratch:19 ^_se:-49 ^_si:-174 ^_skip:39 ^_solo:24 ^_someone:-23 ^_st:-22 ^_sure:55 ^_tengo:49 ^_thanks:-193
^_that:97 ^_there:-48 ^_those:-18 ^_thumbsup:-23 ^_thursday:37 ^_todavia:-35 ^_too:166 ^_we:97 ^_were:127 ^_what:-112
^_why:-63 ^_will:-50 ^_wont:20 ^_works:-31 ^_y:-36 ^_ya:-87 ^_yeah:105 ^_yep:-40 ^_yes:-117 ^_yo:71 ^_you:-56
^_your:-55 ^_zero:33 a:71 a__hora:38 a__horas:27 a__que:35 a__time:-39 a_customer:-20 a_esa:48 a_esas:30 a_good:-53
a_guy:82 a_hacer:32 a_la:-27 a_mechanic:23 a_mi:21 a_no:26 a_ser:21 about:64 about__tires:36 about_it:-59
about_oil:31 about_the:40 aceite:46 aceite_$:38 acomoda:22 actually:25 after:31 after_all:27 again_$:-34 agarra:-24
agendeme:-27 ahi_$:57 ahi_paso:-26 ahi_voy:-26 ahora:-65 ahora_$:-33 ahora_no:-65 ahorita:-81 ahorita_$:-32
ahorita_no:-45 aint:23 al:33 alguien:21 alguien_que:24 all:139 all__them:-27 all_day:-36 all_set:140 all_that:24
already_did:-26 already_got:22 alright:23 also:27 am:-30 am_$:-19 amable_$:-18 amables:-21 amor:18 an:25
an_appointment:46 and:42 and__is:32 and_did:-20 and_not:20 another:-23 answer:34 antes:-34 antes_de:-18 any:-65
any__them:24 any__those:-49 anymore:-25 anymore_$:-21 anything_but:32 anyway:83 anyway_$:80 apenas:18 appointment:28
appreciate:22 aqui:-132 aqui_$:-54 aqui__vive:-35 aqui_no:-82 are:-22 are_$:-25 are_fine:-18 arreglaron:-41
arreglo:40 as:129 as_soon:18 asi:295 asi_$:35 asi__bien:57 asi__no:20 ask:-25 at:-61 at_all:-31 at_the:-31 away:26
ayer:-28 back:20 back_$:-28 barato:18 barely:18 be:48 be_$:47 be__that:18 be__there:31 be_back:49 be_there:-20
been:-34 before:-31 bien:98 bien_asi:30 bien_gracias:49 bien_no:31 book:-30 book_it:-25 both:-70 both_are:-21
bother:43 brakes:-22 bring:-18 buen:-28 busy:-31 but:186 but__much:18 but_i:20 but_ill:31 but_no:54 but_what:27
buy:21 by:-44 by__name:-25 by_that:-25 call:-40 call_me:-32 cambio:35 cambio__aceite:32 cambio_el:40 cambios:-32
can__it:21 cant:94 cant_do:121 cant_make:23 cant_say:-49 car_$:-24 car_is:65 caro:172 caro_$:99 carro_$:-21 cars:28
casa:49 casa_$:46 caso:69 caso_$:65 change_$:-18 changed__mind:33 changed_my:30 changes:32 changes_$:47 charge:-24
cheaper:26 check:-24 choque:-28 church:19 cita:36 cita_el:20 cliente:-31 cochera:21 cochera_$:22 coming:26 como:-111
como_esta:33 como_no:-134 como_si:19 con:40 con__mecanico:-26 con__que:21 con_un:49 conmigo:19 conozco:-85
conozco_$:-50 conviene:33 conviene_$:33 cost:-33 count:22 count__out:25 count_me:22 creo:40 cualquiera:-20 cuando:-22
cuanto_es:18 customer:-30 da:-54 day_$:-21 day__me:39 day_for:39 days:29 de:40 de__dos:21 de__llantas:49 de__me:41
de__no:-40 de__que:38 de__taller:-23 de__ya:24 de_aceite:19 de_aqui:-24 de_las:46 de_los:34 de_noche:22 de_que:-27
de_veras:-22 dealer:52 decided:55 dejaron:24 dejelo:103 dejelo_asi:41 dejo:66 dejo_$:55 despues:-22 dia_$:19 did:-108
did_it:-44 did_that:-22 did_the:-31 dije:24 dije_que:22 dime:43 dinero_$:-24 do:35 do_$:-59 do__do:19 do__guys:-21
do__instead:-18 do__need:-39 do__of:60 do__own:96 do_any:36 do_friday:18 do_i:-60 do_my:96 do_not:-34 do_that:22
do_thursday:33 does_it:-20 doesnt:80 doesnt_matter:-23 doesnt_work:84 doing:43 doing_it:21 done:-25 dont:44
dont__any:-20 dont__it:76 dont__me:-50 dont__you:-25 dont__your:66 dont_have:-57 dont_know:-42 dont_need:40
dont_own:-19 dont_see:-20 dont_stop:50 dont_text:-38 dont_think:75 dont_want:45 dos_me:22 down:-72 down_$:-48
drive_$:-27 earlier:-29 early:56 early_$:62 early_for:25 echo:18 either:-85 either_$:-33 el:-34 el__es:29 el__lo:22
el_aceite:38 el_carro:18 el_dia:-20 el_jueves:39 el_otro:-18 el_sabado:-31 el_viernes:33 else:26 else_$:37
elsewhere:38 elsewhere_$:34 en__casa:61 en__garage:23 en_el:33 en_la:26 en_otro:-18 end:-28 entiendo:-34 entran:-34
es:-56 es_$:-62 es__de:18 es_de:-25 es_mecanico:45 es_mi:-23 es_necesario:29 esa:65 esa__no:25 esa_hora:41 esas:63
esas_horas:34 escriban:-39 escriban_$:-22 ese_carro:24 ese_dia:18 ese_senor:-21 eso:71 eso_$:21 eso_de:19 eso_me:19
esos:47 esta__caro:77 esta_bien:-53 esta_muy:29 estamos:74 este:-56 esto:-22 estoy:80 estoy_bien:122 even:24 ever:47
ever_$:51 existe:-21 falta:-20 far:26 favor_$:23 feria:-49 fine:131 fine_$:65 fine__me:-31 fine_with:-24 first:-63
first_$:-32 fix:53 fix_it:43 fixed:-57 fixed_it:-21 flat_out:20 folks:18 for:123 for__me:-23 for__of:18 for_it:-57
for_me:158 for_my:26 for_nothing:-18 for_now:31 for_that:90 for_the:-27 for_this:24 forget:44 forget_it:63 found:66
free_$:-18 freno:-39 freno_$:-32 friday:24 friday_$:76 friday_instead:-18 full:23 garage:30 garage_$:27 gauge:-24
gauge_is:-23 gave:35 gave_you:43 get:-41 go:-39 go__the:31 go_for:-22 go_to:42 going:61 going__be:-21 going__have:31
going_on:-18 going_to:74 good:77 good_$:97 good_for:-33 got:20 got_a:97 got_it:-19 gracias:-22 gracias_$:-19
gracias__no:23 gracias__ya:31 gracias_pero:46 gracias_por:-26 gracias_ya:19 grandson:-18 gratis:22 gusta:22 gusto:-24
guy:82 guy_$:56 guy__it:-20 guys_$:-25 hablan:-18 hace:-61 hacer_$:18 had__done:20 hago:38 hago_$:41 handled:-20
happen:20 happening:18 happy:-39 hard:52 hard_no:38 hardly:24 have:34 have__no:-24 have__say:26 have_a:-25 have_an:42
have_it:-28 have_never:-19 have_no:-30 have_someone:47 have_to:18 hay:-44 hay_problema:-23 heat:-22 here:-33 hijo:26
him:-22 hora:26 horas:40 hot:-24 hours:20 house_$:18 how:27 how__is:35 how__was:25 how_about:-21 how_long:-18 i:-21
i__a:28 i__be:23 i__do:28 i__got:23 i__have:-18 i__my:45 i__never:20 i__no:-25 i__on:18 i__want:24 i_can:19 i_do:63
i_dont:-38 i_get:-20 i_go:34 i_got:46 i_like:22 i_need:-90 i_never:-18 i_said:-26 i_want:-64 i_will:37 id:64
id__not:34 id__talk:-29 idea:-60 idea_$:-24 if:65 if_i:-33 igual_$:-29 ill:67 ill__it:69 ill__there:-27 ill__you:-20
ill_be:-23 ill_let:19 ill_pass:56 ill_take:60 im:154 im__a:-18 im__it:18 im__of:-21 im__the:-54 im_all:33 im_down:-45
im_good:209 im_not:-86 im_out:-22 imposible:40 in_$:-21 in__day:47 in_the:74 interesa:-40 interesa_$:-63 into:41
is_$:40 is__a:-48 is__going:-40 is__how:52 is__no:27 is_a:58 is_fine:62 is_full:20 is_good:-45 is_not:-56 is_ok:23
is_that:-35 is_there:-33 is_too:89 isnt:18 it:83 it_$:-35 it__a:24 it__fine:52 it__me:-25 it__more:-23 it__this:34
it__to:-67 it_be:20 it_but:28 it_done:25 it_for:-32 it_going:-24 it_is:78 it_myself:50 it_no:-19 it_on:29 it_take:-19
it_wont:-33 jueves:26 just:60 just_the:22 keep:65 keep_me:26 know:-56 know_you:-25 la:51 la__de:-21 la__no:-26
la_casa:51 la_cochera:21 la_luz:-25 la_pena:40 las:40 las_$:-31 las__el:23 las_llantas:36 late:30 late__me:23
late__the:39 late_in:39 later:-18 le:38 le__el:33 le__que:18 le_cambio:40 le_echo:18 le_falta:-34 le_voy:23 leave:91
leave_it:102 leave_me:-33 lejos:38 let_me:-38 lets:22 light:-20 like:25 like_a:18 like_i:18 llantas:38 llantas_$:34
lleve:-27 llevo:40 lo:51 lo__con:26 lo__mi:-25 lo__para:18 lo__y:-21 lo__ya:-22 lo__yo:52 lo_arreglo:41 lo_choque:-28
lo_hago:51 lo_hicieron:-18 lo_lleve:-26 lo_llevo:24 lo_necesito:-27 lo_uso:31 lo_voy:30 loco:101 lol:43 lol_$:28
long:-28 longer:-72 longer__it:-35 longer__the:-23 longer_have:-28 looking:-21 los__me:29 los_cambios:-31
los_conozco:-39 los_dos:20 los_frenos:-21 lunes:-23 luz:-27 luz_de:-23 make_it:-18 mal_$:-31 manana:-32 manana_$:-20
mandando:32 mandando_$:44 manden:-39 manden_mensajes:24 manden_nada:-29 mandenme:24 manejo:-21 many:-24 marcha:-48
marcha_$:-43 mas:-93 mas_$:-73 matter:-24 me_$:-60 me__la:43 me__mas:-41 me__mensajes:25 me__nada:-74 me__the:21
me__y:18 me_about:118 me_acomoda:22 me_but:23 me_conviene:26 me_dejaron:24 me_escriban:-21 me_gusto:-24 me_in:-30
me_interesa:-44 me_llame:18 me_lo:51 me_now:35 me_off:-24 me_out:20 me_queda:62 me_rayaron:18 me_sale:-20 me_sirve:41
mecanico:37 mecanico_$:42 mejor:69 mejor_no:20 mensajes:-28 mensajes_$:-52 mes:-20 mi:26 mi__es:39 mi__me:34
mi_amor:18 mi_hijo:26 mi_mecanico:18 mil:-32 mil_gracias:-21 mismo:25 momento:-82 momento_no:-45 monday:-29
mondays:46 money:23 more:-150 more_$:-84 more_texts:-19 mornings:-24 much_$:-20 much_is:-18 muchas:-18
muchas_gracias:-18 muere:25 muy:206 muy_caro:97 muy_temprano:101 my:103 my__do:-19 my__in:20 my__oil:30 my__says:45
my_car:-23 my_mind:36 my_number:25 my_own:107 my_wife:26 myself:73 myself_$:65 n:214 nada:34 nada__eso:19 name:-41
nd:-29 necesario:37 necesario_$:31 necesito:-27 necesito_$:-27 necessary:26 necessary_$:26 need:-97 need_$:30
need_a:-31 need_that:-28 need_to:-82 needed:45 needed_$:65 needing:19 negative:86 negativo:51 neither:146
neither_$:91 nel:114 nel_$:57 never_mind:25 new:-24 next:-19 ni:229 ni_el:34 ni_la:25 ni_lo:21 ni_loco:81 nice:83
ningun:-48 ninguna:83 ninguno:76 ninguno__los:37 ninguno_de:40 no:86 no_$:293 no__ahora:-40 no__and:-22 no__at:-47
no__bien:-32 no__carro:-18 no__cita:26 no__cliente:-22 no__conozco:-55 no__de:-31 no__dont:22 no__el:-58 no__en:-34
no__ese:-18 no__good:35 no__gracias:23 no__gusto:-24 no__hago:-25 no__have:-24 no__here:-66 no__i:43 no__interesa:60
no__is:143 no__me:56 no__mensajes:-32 no__necesario:34 no__necesito:21 no__ningun:-52 no__para:-29 no__problema:-28
no__que:-33 no__quien:-21 no__recibir:-50 no__texts:-22 no__that:-42 no__the:50 no__them:22 no__to:-23 no__voy:50
no__was:28 no__what:21 no__y:42 no__yet:-73 no__yo:-47 no__you:110 no_agarra:-24 no_and:95 no_but:63 no_car:-31
no_conozco:-27 no_creo:42 no_entiendo:-23 no_es:-114 no_esta:-32 no_existe:-21 no_gracias:203 no_hay:-51 no_i:108
no_idea:-58 no_im:42 no_it:18 no_just:30 no_keep:34 no_le:31 no_longer:-72 no_los:-25 no_manden:-24 no_mas:-39
no_me:-84 no_mi:24 no_more:-155 no_my:39 no_need:52 no_not:-63 no_ocupo:59 no_on:31 no_one:-63 no_perdon:-20
no_pero:41 no_problem:-44 no_puedo:50 no_quiere:-21 no_quiero:-19 no_se:-71 no_si:35 no_sigan:20 no_soy:-178
no_tengo:-92 no_thank:64 no_thanks:150 no_that:41 no_tiene:-31 no_traigo:-46 no_va:18 no_vive:-35 no_way:43
no_what:92 no_worries:-87 no_y:30 no_ya:69 noise:-21 noises:26 nomas:47 none:146 none__them:32 none__those:39
none_of:89 nop:60 nop_$:49 not:-51 not__at:22 not__car:-32 not__customer:-29 not__in:19 not__it:58 not__me:27
not__now:-47 not__that:19 not__the:55 not__this:-21 not__to:72 not__with:-31 not__yet:-31 not__you:-19 not_a:-55
not_at:40 not_coming:18 not_doing:28 not_for:45 not_friday:21 not_going:57 not_happy:-31 not_in:18 not_interested:70
not_monday:41 not_my:-42 not_right:-61 not_sure:-31 not_the:-53 not_to:24 not_today:-35 not_worth:70 not_yet:-114
nothing:27 nothing_$:-23 now:-101 now_$:-125 now__me:-28 number:-24 numero:-46 nunca_$:21 o_no:-18 october:-19
october_$:-18 ocupo:36 ocupo_$:21 of_them:21 of_those:36 of_you:-19 off:-26 off_$:-51 off_my:23 oil:42 oil_changes:34
ok:-20 ok_$:79 old:22 on_my:-33 on_that:36 on_this:40 one:-19 one_of:19 only:71 only__me:43 opcion_$:-19 option:-28
or:-43 or_anything:22 or_no:-21 otono:-19 otro_$:-20 otro_dia:41 our:25 out_of:-28 over_$:-25 over_here:49 own:62
own_$:29 own_it:-25 own_oil:30 owner:-33 para:58 para__lo:-30 para__sabado:-23 para__si:20 para_el:-42 para_nada:115
pasa:-31 pasa__no:-30 pasa_si:-24 pass:190 pass_$:102 passed:-32 pena:47 people:-22 perdon:-27 perdon_$:-21
perfect:-19 pero:96 pero_no:38 pero_ya:18 persona:-29 please:-33 please_$:-25 por:-89 por__no:-106 por_ahora:-50
por_que:-116 por_un:19 precio:-18 prefiero:44 prefiero_no:26 prende:-36 prende_$:-22 price:-43 prices:51 problem:-45
problem_$:-42 problema:-34 puedo_$:39 puedo_el:21 put:-49 put__in:-24 putting:41 que:-53 que__si:-25 que__ya:20
que_cobran:19 que_es:-24 que_lo:-23 que_no:-32 que_pasa:-24 que_si:33 que_va:49 queda:74 queda_$:51 queda__lejos:33
quedo:-37 quien_es:-21 quien_me:35 quienes:-26 quienes_son:-26 quiero:-45 quiero_cita:20 quiero_recibir:-49 quit:21
quit_sending:27 rather:33 rather__to:-30 rather_not:33 rather_talk:-34 ready:-30 ready_$:-27 recibir:-62 reminders:56
reminders_$:57 replaced:-32 right:54 right_$:176 right_now:-100 runs:22 sabado:-40 sabado_$:-32 said_no:-19 sale:-18
sale_$:-20 salir:-18 saturday:20 saturday_$:25 says:38 schedule:-19 scratch:18 scratch_that:20 se:-103 se__que:-24
se_lo:-27 se_me:27 second:-24 second_$:-38 see:-42 send:-23 send_me:-27 sending:34 sending_me:24 ser:21 set:134
set_$:106 set_for:30 shop:-54 shop_$:-19 si:-157 si_$:-49 si__interesa:-19 si__no:-76 si_como:-22 si_gracias:-22
si_no:-33 si_ya:-37 siempre:31 siempre_no:25 sigan:37 sigan_mandando:20 sin:21 sir:28 sir_$:28 sits:18 skip:67
skip_it:27 so:121 so_$:20 so_much:-23 so_no:113 sold:-82 solo:63 someone:41 someone_$:23 somewhere:34 son:-41
son_$:-20 soon:26 sorry:63 sorry_$:66 sounds_good:-23 soy:-177 soy__persona:-32 soy_cliente:-23 soy_el:-27
soy_esa:-19 soy_yo:-45 squeak:42 st:-25 st_$:-22 still:-28 stop:-29 stop_$:-72 stop__me:50 stop__the:51 stop_with:51
stuff:38 su:24 super:-20 swapped:-24 take:36 take__off:-34 take_it:19 take_me:-35 take_my:82 take_the:-19 talk:-37
talk_to:-28 taller:-27 tarde:24 tell:-22 temprano:62 temprano_$:49 tengo:20 tengo__me:29 tengo_carro:-26
tengo_quien:29 text__about:63 texting:41 texting_$:-26 texting_me:46 texts:-38 texts_$:-39 th:-36 th_$:-20 thank:52
thank_you:55 thanks:-34 thanks_$:-43 thanks__no:18 thanks__nothing:-18 thanks_but:52 thanks_for:-61 that:19
that__you:28 that_is:47 that_name:-25 that_old:23 that_one:18 that_wont:34 that_would:-22 the__for:108 the__is:55
the__of:-28 the__one:-18 the__went:28 the_car:47 the_day:48 the_dealer:47 the_earlier:-18 the_oil:18 the_owner:-31
the_same:19 the_th:-35 the_tire:35 the_tires:33 the_wheels:18 the_wiper:23 the_work:-21 them_$:25 then_$:21 there:-70
there__a:-18 there__no:-33 there_a:-26 there_is:-47 these_days:21 thing:24 thing_$:20 think:-51 think__it:-65
think_about:-50 think_so:40 think_this:-18 thinking:25 thinking_of:26 this_is:-42 this_one:42 this_time:49
this_week:-27 those:71 though:36 thought:25 three:37 three_$:31 through:-33 thumbsup:-23 thumbsup_$:-23 thursday:33
thursday__work:44 thursday_at:-18 tiempo:-21 tiene:-37 tienen:30 time:26 time_$:45 tires:25 tires_$:27 to:-55
to__in:19 to__it:53 to__me:-29 to__no:40 to_be:-35 to_do:38 to_have:30 to_say:60 to_stop:-19 to_that:-46 to_the:20
todavia:-22 todavia_no:-36 today:-37 today_$:-36 todos:20 too:240 too_$:-39 too__for:135 too_early:105 too_far:31
too_late:52 took:-25 took__of:-19 top:34 town:-22 trabajando:21 traigo:-45 trip:-18 truck:-20 try:102 turn:-20 un:30
unless:30 up:-50 up_$:-31 up_the:24 use:18 uso:31 uso_$:25 ustedes:-33 ustedes_$:-56 va:77 va_$:35 vale:37 van:-22
ve:28 vehicle:-28 vemos:-20 vemos_$:-19 vendi:-28 veras:-22 vez:20 viernes_$:29 vive:-35 voy_$:-32 voy__hacer:24
voy_a:52 vueltas:22 vuelvo:18 want:-30 want_it:42 was_it:21 was_the:19 way:50 we:112 we__the:34 we_dont:-19
we_have:57 we_sold:-33 we_will:79 week:-50 week_$:-42 went_away:32 were:126 what:33 what__it:37 wheel:-24 when:46
when_i:-27 while:-30 who:36 who__are:-26 who__this:25 who__you:40 who_is:22 who_you:-42 whole:29 why:-64 why_not:-80
wife:19 wife_says:32 will__be:34 will_do:-40 will_it:-23 wiper:25 wipers:31 wipers_$:33 with:-26 with_me:-27
with_the:35 wont:51 wont__over:-21 wont_be:72 wont_go:-25 wont_work:42 work:55 work_$:24 work__me:39 work_for:38
works:-37 works_$:-44 worries:-88 worth:125 would_be:-27 wrong:-22 y:20 y_$:-19 y__no:-23 y_que:22 y_ya:-21 ya:-79
ya__de:23 ya__existe:-21 ya__gracias:25 ya__hace:-31 ya__lleve:-24 ya__lo:-25 ya__me:-18 ya_le:-18 ya_lo:-38
ya_no:-78 ya_tengo:66 yeah_$:-122 yeah_no:21 year:24 year_$:21 yep:-41 yes:-156 yes_$:-76 yet:-159 yet_$:-123 yo:101
yo_$:-42 yo__la:53 yo__le:44 yo__soy:-45 yo_lo:119 yo_mismo:24 yo_ni:-32 yo_no:-81 you:-29 you_$:-46 you__do:-19
you__it:-40 you__used:19 you__what:23 you_are:-24 you_can:42 you_know:23 you_my:48 you_think:-32 you_to:-19 your:32
your__have:-23 your__is:-20 your_shop:-26 yours_$:-18 zero:54
"""
