"""What speaks for and against `explain`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "explain"
BIAS = -156
WEIGHTS = """\
#abaj:-49 #aben:43 #abin:92 #able:-20 #abor:-55 #abou:-29 #abre:-24 #acei:-69 #acer:79 #acin:28 #acta:31 #actl:74
#acue:20 #addr:-30 #adel:-17 #adio:-19 #ados:73 #afte:-28 #agai:24 #agar:-27 #agua:84 #ague:-22 #ahor:-22 #ails:71
#ains:22 #ajan:-16 #ajar:53 #akin:-37 #aler:-19 #ales:61 #algo:31 #alid:-16 #alig:-14 #alle:-72 #allp:-23 #ally:64
#alta:37 #amab:-26 #amag:-14 #amos:-18 #ance:-47 #anda:48 #ando:-31 #anej:82 #aner:-20 #ange:81 #angi:22 #anic:-17
#anol:32 #anta:70 #anto:58 #anua:44 #anyw:62 #apag:-27 #apid:-47 #appe:90 #apto:31 #aqui:-41 #arca:-67 #arda:-68
#arde:-23 #argi:-28 #ario:15 #arla:24 #arlo:-22 #aron:30 #arou:-18 #arra:-23 #arro:-14 #asta:121 #aste:14 #asur:54
#atan:-23 #atar:-15 #atch:14 #ated:-34 #ater:-34 #athe:-18 #atio:-28 #atis:-71 #ator:70 #atte:-50 #atur:-14 #auto:-18
#avin:19 #avor:19 #bajo:-29 #ball:-17 #befo:63 #belt:47 #betw:-35 #bien:-28 #bina:16 #blem:77 #bles:-17 #blig:76
#book:-18 #bout:-31 #brak:29 #bran:-55 #brea:42 #bren:-26 #brin:-55 #buen:-15 #busi:-56 #cabi:92 #cada:27 #cale:19
#call:15 #camb:19 #cant:-25 #carg:-15 #caro:-49 #caso:27 #ccio:-31 #ceit:-69 #cept:-14 #cesa:26 #cesi:19 #cess:89
#chai:15 #chan:40 #char:-42 #chec:-30 #cias:15 #ciem:23 #cien:-26 #cing:28 #cion:-22 #cita:47 #ckin:14 #clar:-16
#clos:-18 #cluy:50 #cobr:-20 #coge:-25 #come:73 #comi:19 #como:-97 #cont:40 #cosa:50 #cost:-97 #coul:83 #creo:-19
#crib:-37 #ctam:32 #ctly:74 #cual:70 #cuan:-65 #cuen:22 #cuer:40 #dado:-63 #dale:-15 #dama:-14 #dang:47 #days:-22
#ddre:-30 #deci:67 #defi:-18 #deja:-18 #dejo:20 #demo:19 #depe:-26 #desd:-22 #dias:-27 #dice:19 #dici:18 #dier:32
#digo:-29 #dijo:-15 #ding:-20 #dios:-14 #dire:-30 #does:81 #doin:146 #dome:47 #dond:-40 #done:34 #door:-18 #down:60
#dres:-39 #driv:93 #drop:-23 #dura:130 #each:-16 #eady:-28 #eaki:-18 #eale:-17 #eall:85 #earl:-17 #ease:32 #easu:54
#eave:-14 #eavi:42 #ecal:16 #ecci:-30 #eces:116 #echa:-20 #ecio:-17 #ecir:74 #ecks:-18 #ecog:-24 #ecta:16 #ecue:20
#eeds:71 #eels:-14 #efin:-18 #efor:63 #egas:25 #egoc:-51 #egre:-30 #egue:-27 #egui:59 #egur:30 #eite:-69 #ejan:48
#ejar:24 #ejel:-17 #elig:54 #elta:-16 #eman:-30 #embl:-15 #embr:18 #emen:58 #emin:44 #empo:-14 #empr:-25 #enco:77
#ends:-26 #enen:-15 #enga:-33 #engi:22 #engo:-50 #enme:-14 #enos:15 #ensa:-31 #ensi:-22 #ente:58 #enti:31 #epen:-27
#epla:51 #erar:65 #eras:72 #erda:100 #erdi:25 #eren:77 #eres:-18 #erio:43 #erni:-15 #eros:-59 #erou:47 #erpe:28
#erso:18 #erte:32 #ervi:29 #erza:21 #esar:14 #esas:20 #escr:-24 #esde:-22 #esit:18 #esnt:-47 #esos:-14 #espa:30
#espe:37 #essa:86 #essi:15 #esta:45 #este:-45 #esto:-76 #etal:28 #eter:37 #etro:19 #etti:27 #etwe:-35 #even:64
#ever:44 #exac:105 #exit:-47 #expe:-20 #expl:179 #exti:-23 #falt:38 #fast:-16 #favo:19 #fere:24 #fica:47 #fill:23
#filt:108 #find:64 #fine:-18 #fini:-20 #firs:-23 #five:44 #flui:60 #flus:68 #fore:71 #four:67 #free:-100 #fren:-14
#from:17 #fron:49 #fter:-29 #fuer:24 #gain:24 #gara:-15 #gast:102 #gato:70 #gent:74 #gero:47 #gett:28 #gine:18
#gnif:43 #gnme:-14 #gnor:37 #goci:-51 #goin:-38 #gone:-17 #good:-15 #grac:15 #gran:16 #grat:-71 #grav:51 #gres:-30
#guan:105 #guen:-28 #guro:28 #hace:101 #hago:53 #hang:53 #happ:95 #hard:-28 #harg:-38 #harm:26 #hast:26 #have:38
#heck:-27 #heel:-30 #hell:-21 #here:-23 #hese:40 #hice:-14 #hich:31 #high:16 #hing:86 #hink:-14 #hitc:-14 #hold:-20
#hoos:15 #hora:-57 #hors:18 #hose:15 #houg:55 #houl:38 #hour:-37 #hous:-20 #hurs:-20 #ible:-29 #ices:-16 #icie:22
#idea:-34 #iemp:-17 #iend:22 #iene:74 #ient:27 #iere:116 #iero:-22 #ieto:15 #ific:46 #igam:25 #ight:-40 #igni:43
#ignm:-14 #igno:39 #igro:54 #iles:36 #illa:22 #ilte:77 #iltr:33 #imin:14 #impo:18 #incl:50 #ingl:-15 #ingu:-16
#init:-20 #insu:-25 #inte:49 #invo:50 #ione:-15 #ious:41 #ippe:15 #iqui:19 #irad:14 #irec:-30 #ires:42 #irst:-23
#irve:-61 #isan:16 #isen:-21 #itch:-16 #itel:-18 #ivew:-15 #jand:100 #jelo:-17 #jueg:-15 #just:-33 #keep:25 #kids:22
#king:-45 #labo:-55 #laci:27 #lain:82 #lama:-21 #lame:-33 #lant:-18 #laro:-33 #last:43 #late:-45 #ldnt:-30 #leak:-23
#leas:26 #leav:31 #leep:15 #left:64 #legu:-22 #lema:69 #lest:-18 #leva:-18 #libr:-16 #lica:110 #lida:-17 #lies:18
#life:51 #lign:-14 #ligr:54 #limi:15 #line:-27 #liqu:25 #lish:17 #llam:-52 #llas:46 #lled:-15 #lleg:-23 #ller:-38
#llet:-15 #llow:25 #llpa:-23 #loan:-19 #loca:-16 #long:18 #lpar:-23 #lter:70 #ltos:14 #ltro:33 #luga:-21 #luid:60
#lush:68 #luye:50 #mabl:-26 #mage:-14 #make:64 #malo:109 #mana:-42 #mane:77 #mano:-25 #many:30 #maqu:-28 #marc:-74
#mate:-18 #matt:-46 #mber:-62 #mbia:19 #mbie:-23 #mbla:-15 #mbre:16 #mean:-15 #meno:-22 #mens:-29 #ment:63 #mero:-46
#meta:28 #mete:39 #meti:-16 #metr:21 #mien:59 #mile:38 #mili:20 #mind:38 #mine:-25 #mism:-15 #modo:-14 #mole:-18
#mont:19 #mora:14 #more:91 #morr:15 #moun:14 #mpan:-25 #mpor:21 #mpre:-22 #much:-91 #muer:29 #must:61 #nclu:50
#ncon:76 #ndar:27 #nden:-28 #nder:-15 #ndin:-14 #nece:135 #need:163 #nego:-51 #neja:84 #next:-22 #nged:25 #nger:56
#ngin:44 #ngle:-15 #ngun:-16 #niet:14 #nifi:43 #nigh:-28 #nite:-20 #nmen:-14 #nois:17 #noma:22 #nore:34 #norm:52
#nsaj:-28 #nsur:-25 #ntas:-23 #nter:58 #ntes:-16 #nths:23 #ntin:26 #nton:20 #ntra:61 #ntro:-15 #numb:-62 #nume:-42
#nver:35 #nvoi:18 #nywa:62 #oane:-15 #oble:62 #obli:76 #obot:-23 #obra:-24 #ocat:-14 #ocio:-51 #oday:-21 #odom:48
#odos:-22 #oesn:-47 #oger:-25 #oice:18 #oing:108 #oint:39 #oise:17 #okin:-14 #olan:-17 #oles:-14 #olve:30 #omas:22
#omat:-15 #omet:43 #omor:15 #ompa:-14 #onde:-45 #onge:15 #onjo:17 #onte:17 #onto:19 #ontr:49 #opci:15 #open:-33
#oqui:28 #ored:20 #orio:71 #orit:-14 #orks:-16 #orma:47 #orre:-14 #orri:36 #orro:30 #orse:35 #orta:29 #oser:-52
#ossi:-15 #otor:25 #otro:36 #ough:35 #ould:51 #oure:18 #ouse:-17 #ousl:-44 #over:-22 #paga:-15 #pagu:-22 #pano:32
#pany:-18 #para:31 #pare:-16 #park:-23 #pasa:126 #pase:-15 #pass:-25 #peak:-19 #peed:16 #peli:54 #pend:-32 #pens:45
#pent:26 #pera:59 #pero:46 #pers:20 #pick:-16 #pido:-51 #plac:18 #plai:82 #plan:-15 #plea:30 #plic:109 #poco:31
#poin:28 #poqu:29 #poss:-17 #pped:15 #ppen:98 #prec:-22 #pren:-16 #pres:-21 #pric:-47 #prin:24 #prob:71 #pron:19
#pued:135 #pues:-49 #pull:-51 #push:30 #quea:-22 #qued:71 #quic:-75 #quid:20 #quin:-29 #quit:14 #raba:-51 #rada:-15
#radi:-23 #rain:15 #rake:34 #ranc:-30 #rand:-15 #rans:33 #rapi:-51 #raro:78 #rata:41 #rati:-75 #rato:-38 #rave:51
#rdad:32 #rday:-16 #reak:42 #real:61 #rear:24 #reat:-17 #reca:16 #recc:-28 #reci:-29 #reco:-32 #recu:20 #reet:-42
#regr:-30 #reme:54 #remi:44 #renc:14 #rend:-17 #repl:39 #resa:-39 #ress:-30 #rest:-20 #rgen:80 #rgin:-28 #ribe:-23
#rice:-47 #ried:51 #rien:-14 #ring:-40 #riou:41 #ripp:14 #rive:99 #rmal:52 #road:33 #roba:15 #robl:66 #robo:-23
#roca:-14 #rong:88 #ront:68 #room:-18 #rose:-52 #roso:45 #rota:31 #roto:18 #roun:-18 #rous:47 #rpen:28 #rran:-26
#rrie:39 #rrow:15 #rsda:-15 #rson:18 #rtan:28 #ruid:-18 #rumb:-19 #runk:-18 #runs:-16 #rven:-17 #rvic:29 #sabe:44
#safe:21 #saje:-28 #sari:25 #sary:90 #savi:-22 #says:49 #scom:14 #scra:-15 #scri:-37 #sday:-19 #segu:108 #self:-21
#sema:-30 #seri:39 #sero:-52 #serp:28 #serv:26 #shak:-19 #shin:38 #shop:-36 #shou:38 #sibl:-24 #side:-15 #sien:26
#sign:53 #sigo:66 #sirv:-62 #sitt:-17 #skip:32 #slee:15 #snow:-15 #sold:-16 #some:-21 #soon:46 #sorr:-14 #span:32
#spea:-19 #spee:16 #sper:43 #spri:25 #ssib:-15 #ssin:15 #stad:75 #stal:-14 #stan:32 #star:-23 #stat:-18 #stee:-22
#stil:-14 #stop:-47 #stoy:-23 #stra:21 #stre:-42 #supp:21 #sura:-25 #sure:28 #tado:67 #tain:20 #take:-54 #tall:-52
#tamb:-19 #tame:27 #tand:-23 #tant:31 #tara:15 #tard:-90 #taro:-18 #tate:-14 #tech:38 #tell:87 #tely:-20 #tend:21
#teng:-77 #ters:-19 #text:-57 #that:87 #them:117 #then:28 #ther:-39 #thes:40 #they:175 #thin:46 #this:32 #thos:19
#thou:44 #thur:-24 #tiem:-36 #tien:51 #till:-16 #time:-143 #timi:14 #tine:28 #tire:44 #toca:56 #toda:-30 #todo:-24
#toma:-36 #tomo:15 #toni:31 #took:-14 #tori:68 #tors:18 #town:-18 #trab:-46 #trad:-19 #trai:14 #tran:49 #trar:77
#tras:53 #trat:40 #trea:37 #tree:-43 #trip:43 #troc:-14 #trun:-16 #tter:-66 #tues:-20 #turn:-39 #tuve:-19 #twee:-35
#uall:-19 #uand:-85 #uant:123 #ucho:22 #ueda:61 #uede:37 #uedo:100 #uego:-27 #uelt:-16 #ueme:16 #uena:-20 #uent:22
#uerd:40 #uert:24 #uerz:21 #ugar:-21 #uick:-75 #uido:16 #uien:-67 #uier:73 #uina:-30 #uito:24 #ular:20 #uldn:-30
#ulls:-35 #umbe:-62 #umer:-42 #unch:-14 #unde:-19 #uran:94 #urge:30 #ursd:-15 #usan:-71 #ushi:27 #usly:-44 #uste:-30
#utom:-15 #vale:-22 #vece:-19 #vega:25 #vera:73 #verd:111 #verl:14 #vewa:-15 #viaj:64 #vice:31 #vida:37 #vien:30
#visa:15 #vise:-20 #voic:18 #vola:-28 #volv:29 #vuel:-15 #wait:65 #wall:-16 #want:20 #week:-34 #ween:-35 #were:16
#what:164 #whee:-30 #when:-103 #whic:31 #wifi:-71 #will:66 #wint:47 #with:53 #wont:-31 #work:-21 #worn:30 #worr:62
#wors:22 #woul:-67 #wron:88 #xact:105 #xpla:36 #xpli:143 #xtin:-23 #yell:14 #your:-36 #yway:62 %again_later:67
%again_later%agree:18 %again_later%bring:-37 %again_later%car:-33 %again_later%car_part:-22 %again_later%do_it:24
%again_later%elsewhere:41 %again_later%how_long:45 %again_later%lift:114 %again_later%meaning:64
%again_later%money:-79 %again_later%odometer:-27 %again_later%question:14 %again_later%refuse:20
%again_later%season:61 %again_later%staff:-17 %agree:-32 %agree%call_off:74 %agree%do_it:16 %agree%how_long:-38
%agree%leave_me:-19 %agree%lift:18 %agree%machine:-14 %agree%meaning:51 %agree%money:58 %agree%place:65
%agree%question:46 %agree%season:24 %agree%shift_it:31 %agree%wrong_one:43 %away:-24 %away%call_off:20
%away%elsewhere:-18 %away%odometer:44 %away%on_way:52 %away%place:37 %away%refuse:-35 %away%start_again:-16
%away%wrong_one:-15 %bad:27 %bad%busy:-21 %bad%call_off:20 %bad%car:-31 %bad%car_part:-47 %bad%do_it:-28
%bad%fails:-26 %bad%leak:-23 %bad%machine:-16 %bad%noise:-18 %bad%phone:21 %bad%place:61 %bad%question:111
%bad%refuse:-44 %bad%shake:-14 %bad%who:26 %bring:-61 %bring%busy:-16 %bring%call_off:-52 %bring%car_part:-32
%bring%do_it:-40 %bring%fails:16 %bring%family:16 %bring%leave_me:-44 %bring%lift:-14 %bring%meaning:15
%bring%money:-29 %bring%phone:17 %bring%question:51 %bring%shift_it:-60 %bring%start_again:-36 %busy:-80
%busy%do_it:-20 %busy%question:-26 %busy%shift_it:-14 %call_off:-28 %call_off%car:-42 %call_off%car_part:28
%call_off%do_it:-38 %call_off%doubt:17 %call_off%family:-17 %call_off%gone_car:-19 %call_off%how_long:15
%call_off%leave_me:-20 %call_off%lift:23 %call_off%meaning:56 %call_off%message:-50 %call_off%money:-28
%call_off%odometer:-54 %call_off%pay_day:18 %call_off%question:32 %call_off%refuse:-69 %call_off%season:20
%call_off%shift_it:-14 %call_off%staff:16 %call_off%start_again:39 %call_off%thanks:51 %call_off%wrong_one:22 %car:27
%car%fails:-16 %car%gone_car:-17 %car%lift:-37 %car%meaning:27 %car%question:76 %car%refuse:40 %car%staff:22
%car_part:53 %car_part%do_it:-30 %car_part%gone_car:-23 %car_part%how_long:-22 %car_part%leak:-30
%car_part%machine:-25 %car_part%meaning:-15 %car_part%money:-53 %car_part%noise:-36 %car_part%odometer:44
%car_part%on_way:44 %car_part%pay_day:-14 %car_part%question:141 %car_part%refuse:66 %car_part%shake:-40
%car_part%smoke_smell:-16 %car_part%staff:-16 %car_part%start_again:44 %car_part%wrong_one:23 %do_it:-39
%do_it%elsewhere:-39 %do_it%family:-24 %do_it%gone_car:27 %do_it%leak:-22 %do_it%lift:-36 %do_it%money:-34
%do_it%pay_day:-17 %do_it%place:-16 %do_it%question:119 %do_it%refuse:101 %do_it%season:-30 %do_it%shift_it:14
%do_it%staff:67 %do_it%start_again:42 %doubt:-22 %doubt%family:15 %doubt%pay_day:-14 %doubt%question:-14
%elsewhere:-93 %elsewhere%family:-15 %elsewhere%pay_day:42 %elsewhere%place:-20 %elsewhere%question:-86
%elsewhere%season:50 %elsewhere%shift_it:54 %elsewhere%staff:-14 %fails:49 %fails%how_long:89 %fails%machine:-19
%fails%noise:17 %fails%on_way:19 %fails%question:139 %fails%shift_it:-15 %family:-44 %family%on_way:15 %gone_car:-90
%gone_car%lift:-19 %gone_car%money:-30 %gone_car%start_again:24 %how_long:-233 %how_long%lift:54 %how_long%meaning:28
%how_long%opening:-22 %how_long%question:-100 %how_long%refuse:-53 %how_long%season:33 %leak:-34 %leak%refuse:17
%leave_me:-80 %leave_me%meaning:18 %leave_me%question:-70 %leave_me%refuse:-16 %lift:44 %lift%meaning:29
%lift%money:-36 %lift%on_way:-21 %lift%pay_day:17 %lift%place:15 %lift%question:-49 %lift%season:55 %machine:-42
%machine%refuse:68 %machine%shake:-14 %machine%staff:-23 %machine%wrong_one:-14 %meaning:437 %meaning%message:-14
%meaning%money:-30 %meaning%on_way:-28 %meaning%pay_day:-18 %meaning%phone:-34 %meaning%place:20
%meaning%question:307 %meaning%refuse:42 %meaning%season:18 %meaning%thanks:37 %meaning%wrong_one:27 %message:-107
%message%question:-61 %message%refuse:-38 %money:-240 %money%place:159 %money%question:-160 %money%refuse:-45
%money%season:-15 %money%shift_it:-29 %money%staff:-14 %noise:-41 %noise%refuse:-22 %odometer%on_way:28
%odometer%question:17 %odometer%refuse:20 %odometer%season:-17 %odometer%shift_it:22 %odometer%staff:-16
%odometer%wrong_one:-14 %on_way:-37 %on_way%place:48 %on_way%question:56 %on_way%refuse:15 %on_way%shift_it:-14
%opening:-104 %opening%question:-78 %pay_day:-44 %pay_day%question:-50 %pay_day%season:19 %pay_day%shift_it:48
%phone:-122 %phone%question:-41 %phone%shift_it:-18 %phone%staff:-27 %phone%start_again:-16 %phone%wrong_one:-14
%place:-92 %place%question:-66 %place%season:15 %question:262 %question%refuse:17 %question%season:-21
%question%shake:-17 %question%shift_it:-45 %question%staff:58 %question%start_again:20 %question%thanks:-16
%question%who:-173 %question%wrong_one:73 %refuse%start_again:-44 %refuse%thanks:31 %season:78 %season%shift_it:69
%shake:-37 %shift_it:-21 %shift_it%wrong_one:28 %smoke_smell:-24 %staff:-18 %start_again:20 %thanks:-44 %who:-162
%wrong_one:-60 @?:215 @after_visit:-63 @car:-85 @confirm:-54 @confirm_stop:-146 @nothing:-36 @odometer:45 @offers:-14
@reading:-74 @time:-116 @times:-76 @walk_in:-37 ^_a:-36 ^_ahi:14 ^_alright:15 ^_and:-16 ^_ballpark:-23 ^_cada:35
^_can:74 ^_cant:-16 ^_car:-25 ^_claro:-32 ^_como:-15 ^_could:84 ^_cual:21 ^_cuando:-33 ^_cuanto:67 ^_dale:-14
^_de:117 ^_definitely:-18 ^_depends:-25 ^_do:120 ^_doesnt:-54 ^_donde:-22 ^_el:-70 ^_en:-40 ^_es:20 ^_esta:54
^_estan:-28 ^_front:30 ^_got:-21 ^_hableme:15 ^_hay:43 ^_hello:-20 ^_hey:-14 ^_hold:-21 ^_how:56 ^_i:-124 ^_in:19
^_is:122 ^_it:-128 ^_le:-16 ^_left:15 ^_llevo:14 ^_lo:-62 ^_martes:17 ^_mas:-16 ^_monday:14 ^_necesito:-15 ^_need:-51
^_no:14 ^_not:-57 ^_odometer:38 ^_para:46 ^_por:59 ^_puede:28 ^_puedo:123 ^_pues:-34 ^_que:44 ^_quien:-25 ^_se:28
^_si:-120 ^_so:15 ^_sure:-17 ^_that:-54 ^_the:-15 ^_they:-15 ^_tienen:-21 ^_tire:-19 ^_va:-15 ^_we:-14 ^_what:-99
^_when:-30 ^_which:51 ^_who:-64 ^_why:119 ^_will:82 ^_would:27 ^_y:20 ^_ya:-64 ^_yes:-30 ^_yo:-25 ^_you:-30 a:46
a_$:-23 a__belt:15 a__filter:60 a__me:-16 a__of:-19 a__off:-35 a__person:19 a__thing:-23 a_cabin:67 a_car:27 a_day:15
a_esa:16 a_esas:14 a_few:17 a_hacer:67 a_las:-16 a_mi:20 a_month:-16 a_new:-15 a_price:16 a_que:-32 a_rip:-48
about:-40 about_$:-80 about_it:38 about_the:17 abren:-24 abren_$:-17 aceite:-80 acuerdo:22 address:-30 address_$:-24
adelante:-14 after:-26 again:14 again_$:27 aguanta:95 ahi:-19 ahi_$:-22 ahora:-14 al__que:-17 al_rato:-15 algo:34
all:17 all_day:-48 already__it:-14 am:42 am_i:32 amables:-25 an:-62 an_appointment:-23 an_hour:-38 and__are:24
and__like:14 and__me:15 and__much:20 and_how:17 and_it:-18 and_tell:16 and_where:18 and_why:34 anda:14 andar:27
ando:-14 ano:-15 anyway:62 anyway_$:62 appointment_$:-30 appointment_for:28 are:55 are__doing:38 are__the:14
are_the:22 are_they:80 are_you:-41 asi:117 asi_$:133 asi_que:-19 at_$:-16 at__it:15 at__speed:16 at_is:16 at_that:25
at_the:-16 atras_$:14 ballpark:-23 ballpark_$:-20 banda:14 be_$:-66 be__to:25 be_doing:78 been_there:17 before:63
before_it:88 belt:36 between:-35 big:25 brake_$:-20 brake__flush:22 brake_fluid:24 brakes:30 brakes_$:18
brakes_are:-19 brand:-34 break:42 bring:-46 buen:-20 buen_dia:-15 but_how:-14 but_what:29 cabin:76 cabin_filter:63
cabina:16 cada:23 call__and:15 cambia:16 came:-18 can:172 can__come:-15 can__do:-17 can__drive:89 can__get:26
can__make:-26 can__wait:123 can_i:110 can_it:95 can_you:-29 cant:-23 car_is:14 caro:-47 carro_$:22 caso:27 catch:14
change_$:-20 changed:25 changing:23 charging:-28 check:-24 checks:-18 choose:15 cien:-22 cien_$:-16 cita:44 cita_$:24
claro:-32 claro__si:-25 claro_que:-25 close:-17 cobran:-20 cobran_por:-15 come:87 come_$:122 coming_in:15 como:-97
como__que:50 company:-18 con:-34 con_ustedes:-16 cosa:55 cosa_$:40 cost:-87 cost_$:-38 cost_me:-24 could:85
could_you:85 creo:-19 creo_que:-24 cual__la:-21 cual_es:31 cuando:-85 cuando_lo:-21 cuanto:41 cuanto_$:-14
cuanto__me:106 cuanto__y:22 cuanto_demora:14 cuanto_es:-20 cuanto_me:-40 cuanto_por:-30 cuanto_vale:-17 dale:-14
damage:-14 dan:-59 dangerous:52 day:-63 day_$:-44 days:-18 de:74 de__a:16 de__como:-16 de__lo:54 de__me:26
de__taller:-15 de_a:32 de_esos:-14 de_las:-15 de_llantas:-65 de_que:60 de_verdad:85 deal:27 decir:67 definitely:-18
dejelo:-17 dejelo_asi:-15 dejo:21 del:36 demora:14 demora_$:14 depends:-25 desde:-22 desde_que:-20 dia:-91 dia_$:-58
dias:-27 dice_que:15 diciembre:23 diciembre_$:14 did:74 did__find:65 did_it:-28 did_the:43 did_you:58 digame:25
digo:-23 dijo:-15 direccion:-28 direccion_$:-21 do:90 do__charge:-22 do__get:-38 do__go:-22 do__need:138 do__use:-37
do_i:84 do_it:-57 do_the:16 do_they:34 do_you:-75 does:128 does__mean:24 does__need:19 does__take:-30 does_it:23
does_that:66 doesnt:-47 doing:146 doing_$:76 doing__it:51 doing_to:51 donde:-37 donde__escriben:17 donde_es:-21
donde_estan:-21 done:34 done_$:17 dont_need:-18 door:-16 dos:-18 down:68 down_$:-18 down_for:29 drive:126 drive_it:37
drive_to:50 driveway:-15 drop:-21 drop_it:-15 due:67 dura:15 el:-90 el__es:27 el__mes:-33 el__que:-47 el__sea:-18
el_dia:-17 el_mes:-16 el_otro:-35 el_que:-38 el_volante:-23 en:14 en__de:17 en__que:-20 en_cuanto:-26 en_el:53
en_lo:-21 en_los:14 en_que:-15 en_un:-21 engine:22 entendi:15 entra:-24 entra_$:-18 era:49 era_lo:18 es:236 es_$:-124
es__de:21 es__mismo:19 es__o:33 es__que:58 es__y:28 es_de:72 es_el:52 es_eso:96 es_este:-37 es_gratis:-67 es_grave:30
es_lo:48 es_mi:-26 es_necesario:14 es_peligroso:45 es_que:-39 es_tan:14 es_un:23 es_urgente:28 es_usted:-22 es_y:29
esa__no:15 esa_hora:16 esas:21 ese:50 ese_dia:-14 ese_servicio:51 eso:228 eso_$:80 eso__que:20 eso_de:29 eso_del:46
eso_que:22 eso_y:26 eso_ya:-20 esos:-14 espanol:32 esperar:57 esperar_$:39 esta:58 esta_$:18 esta_muy:64 estan:33
este:-52 este_$:-34 esto:-42 esto_$:-41 estoy:-22 even:73 even__a:34 even_is:43 ever:16 every:15 exactamente:33
exactamente_$:28 exactly:74 exactly_$:24 exit:-47 explain:43 explica:85 falta:50 falta_$:22 fast:-16 favor:26
favor_$:51 few:24 fill:14 filter:71 filtro:33 find:50 fine:-18 first:-23 first_$:-15 five:44 fix:-40 fix_it:-26
fluid:52 fluid_flush:22 flush:68 flush_$:44 for:56 for_$:109 for_it:-34 for_me:24 for_tomorrow:14 for_what:34 four:67
free:-107 free_$:-93 freno:-41 freno_$:-26 frenos:37 frenos_$:41 from:17 front:49 fue:62 fue__que:55 fue_lo:55
fuerza:21 fuerza_$:21 get:-44 get_there:-14 get_to:-20 getting:28 go:14 go_for:-23 going:-38 going__be:-36
going__cost:-30 going_to:-42 gone:-17 gone_$:-15 good:-15 gracias:15 gratis:-71 gratis_$:-67 grave:51 grinding:-21
habla:15 habla_$:15 hableme:15 hace_falta:21 hacer:89 hacer_$:42 had:-28 hago:53 hago_$:44 happen:26 happens:75
happens__i:68 happens_if:68 hard:-15 hard_to:-14 has:-16 has_a:-14 hasta:26 hasta_que:-34 have:28 have_it:-18
have_to:79 hay:23 hay_que:-25 hello:-20 hey:-14 hice:-14 hicieron_$:-19 hit_k:14 hitch:-14 hold:-20 hold_off:-18
home_$:14 hora:-21 hora_no:17 hour:-39 house:-17 how:68 how__are:60 how__can:87 how__does:-19 how__for:-56
how__i:-111 how__is:-41 how__the:27 how__to:-32 how__will:-27 how__would:-18 how__you:-24 how_bad:25 how_do:-37
how_low:47 how_many:32 how_much:-104 hoy:-39 hoy_mismo:-22 i__a:-30 i__all:61 i__an:17 i__for:-34 i__have:54 i__it:47
i__need:71 i__on:114 i__out:22 i__that:-20 i__the:-28 i__there:-23 i__these:-45 i__this:21 i__to:-93 i__you:-40
i_be:34 i_can:-23 i_come:-15 i_drive:69 i_drop:-16 i_get:-27 i_go:51 i_just:25 i_know:-23 i_mean:-50 i_need:58
i_owe:-16 i_pick:-15 i_skip:38 i_stop:-23 i_thought:25 i_turn:-16 i_use:-15 i_wait:29 i_was:-51 idea:-34 if:129
if__skip:38 if_i:116 ill:-23 im:55 im__a:24 im__on:37 im_not:22 in:-37 in_$:-17 in__car:15 in__fall:17 in_a:-14
insurance:-25 invoice:18 is:98 is__a:48 is__about:-67 is__address:-28 is__an:-20 is__bad:65 is__cabin:52 is__cost:-30
is__damage:-14 is__dangerous:52 is__do:51 is__for:58 is__free:-70 is__how:-20 is__like:-32 is__now:-15 is__off:23
is__oil:-36 is__ok:56 is__on:58 is__price:-41 is__really:-48 is__safe:33 is__so:14 is__something:24 is__still:-16
is__with:62 is_a:109 is_due:25 is_fine:-33 is_for:45 is_gone:-14 is_in:-16 is_it:92 is_leaking:-22 is_that:84
is_the:-105 is_there:17 is_this:-65 is_wrong:65 is_your:-43 it:155 it_$:-44 it__a:-17 it__all:-37 it__an:-37
it__done:-26 it__for:52 it__free:-34 it__if:23 it__in:-20 it__is:27 it__it:50 it__like:-22 it__that:46 it__this:30
it__to:75 it_a:39 it_an:-26 it_back:-24 it_bad:45 it_be:-66 it_cost:-28 it_dangerous:33 it_down:29 it_is:-86
it_need:28 it_now:44 it_ok:60 it_on:-18 it_over:18 it_pulls:-17 it_really:-35 it_safe:33 it_so:14 it_still:-16
it_take:-37 it_the:-21 it_to:73 it_wait:93 je:-16 job:-18 just:-33 just__it:19 k:43 k_$:43 keep:15 kids:22
know__is:27 know_it:27 know_you:-21 la:-42 la__de:-31 la__pasar:15 la__se:16 la_banda:14 la_cita:69 la_direccion:-19
la_luz:-22 la_troca:-14 labor:-55 labor_$:-41 las:-39 last:35 last_time:-17 late:-22 later:-21 le:223 le__a:90
le__de:15 le__en:18 le__y:20 le_digo:-15 le_falta:38 le_hacen:48 le_hicieron:22 le_toca:60 le_van:62 leaking:-18
leave_it:-17 leaving:42 left:64 left__the:15 left_on:65 les:87 lets__it:-16 lets_do:-15 life:51 light__on:-14
like:-16 like_an:-35 liquido:20 list:20 llamen:-18 llanta_trae:14 llantas_$:73 llegue:-17 llevo_a:17 lo:45 lo__le:23
lo_dejo:26 lo_hacen:-19 lo_hago:51 lo_mas:-15 lo_mismo:16 lo_necesito:55 lo_que:19 long__i:57 long__it:53
long__you:-18 long_do:-24 long_does:-23 long_is:-14 long_will:-24 look:19 los:-32 low:72 low_$:20 lugar:-21 luz:-24
luz_de:-18 make:70 make__to:86 make_it:102 mal:81 mal_$:147 malo:109 mando:17 manejando:86 manejar:33 mano:-15
many:30 maquina:-28 marca:-59 mas:71 mas__menos:-16 mas_de:-19 mas_o:-16 mas_tarde:-22 matter:-36 me_$:-29 me__a:16
me__algo:17 me__con:16 me__el:-16 me__it:39 me__mal:-15 me__para:21 me__por:63 me__this:19 me_and:17 me_back:-28
me_explica:85 me_in:-20 me_le:19 me_lo:-32 me_paguen:-22 me_puede:26 me_sirve:-59 me_urge:-40 me_van:15 me_what:65
me_who:-15 mean:-17 mean_$:-15 menos:-22 mensaje:-22 mensaje_$:-18 mes:40 mes_$:34 mes__entra:-18 mes_que:-20
metal:28 metal_$:14 metal__metal:16 mi:-68 mi_carro:18 mientras:49 mil:30 miles:36 millas:15 mine:-15 mis:53 modo:-14
month:-18 month_$:-19 months:23 more:102 more_$:78 much:-114 much__it:-40 much_for:-47 much_is:-56 much_to:-35
mucho:24 must:61 muy:43 muy_mal:51 my:-73 my_brakes:20 my_wallet:-14 near:15 near_the:15 necesario:26
necesito__me:-22 necesito_que:-22 need:97 need__bring:-30 need__for:-49 need__oil:40 need_a:-25 need_it:-16
need_that:33 need_the:-15 need_to:-74 needs:72 negocio:-51 new:-23 next:-22 ni:-21 night:-14 no:-39 no_$:-59
no__but:17 no__esa:16 no__hago:65 no__is:50 no__la:-19 no__lo:20 no__nada:16 no__que:-22 no_es:-29 no_gracias:20
no_le:17 no_lo:33 no_need:-21 no_para:-30 no_thanks:23 no_what:68 noise:19 noise_at:24 nomas:22 normal:53 not:-193
not_$:-147 not__car:27 not__me:14 now:102 now_$:80 number:-77 number_$:-37 number_is:-30 numero:-36 numero_es:-25
o:189 o_es:69 o_menos:-16 o_que:44 odometer:48 of:-21 of_the:-17 of_them:33 off:14 off_of:38 oil:-34 oil_light:14
ok:63 ok__drive:69 ok__it:-32 ok_but:18 ok_to:78 on:120 on_$:-48 on__list:26 on__road:40 on_a:35 on_me:55 on_my:28
on_that:-20 one_$:23 opcion:15 open:-26 open_$:-15 opt:-16 opt__of:-15 opt_out:-15 or:74 or_$:-26 or__that:24
or_is:39 or_no:41 otro:36 otro_mes:43 out:-25 owe:-16 paguen:-22 para:46 para__es:48 para__lo:29 para__no:-31
para__sirve:29 para_cuando:-28 para_el:-14 para_que:96 part:14 pasa:120 pasa_si:74 pasar_al:15 peligroso:45 pero:47
pero__es:28 pero__que:31 pero_digame:18 pero_que:44 person:30 person_$:18 pick:-16 pie:30 place:-30 please:35
please_$:16 poco:31 point:30 poquito:29 por:55 por__no:-39 por_favor:32 por_las:-14 por_que:91 porque_se:18
possible:-15 precio:-16 price:-36 price_on:-24 problema:76 pronto:19 pueda:-14 puede:47 puede_$:-17 puedo:123
puedo__hoy:-24 puedo_ir:-18 puedo_llevar:-15 pues:-37 pulls:-35 put_on:-27 q:14 que:90 que_$:-104 que__a:-21
que__abren:-20 que__con:-19 que__de:-46 que__decir:72 que__el:-26 que__en:43 que__es:-91 que__ese:58 que__eso:110
que__estan:-34 que__grave:15 que__hacen:36 que__hicieron:30 que__la:26 que__le:75 que__lo:84 que__mal:64 que__me:-28
que__mi:-20 que__no:-16 que__por:-26 que__que:-18 que__si:67 que__son:-15 que__toca:47 que__trabajo:-17 que__un:29
que__urgente:14 que__van:73 que_cobran:-18 que_entra:-24 que_era:54 que_es:273 que_fue:55 que_hora:-30 que_la:-23
que_le:225 que_me:-70 que_no:-114 que_pasa:73 que_quiere:72 que_sea:-23 que_si:-52 que_significa:29 que_sirve:29
que_taller:-18 que_tan:143 que_tenga:-15 que_tiene:82 que_va:-29 queda:82 queda_$:89 quedo:-23 quick:-70 quien:-60
quien_es:-39 quiere:61 quiere_decir:72 quieren:55 quiero:-30 quiero_que:-22 radio:-19 rapido:-47 rato:-36 rato_$:16
ready:-18 ready_$:-15 real:-24 really:85 rear:29 rear_$:30 recall:18 remind:51 remind__in:-16 remind__what:60
remind_me:51 right_now:31 rip:-48 road:33 robot:-23 robot_$:-23 rotors:18 run:-205 run_$:-157 run_me:-45 runs:-16
saben:43 safe:28 safe__drive:24 safe_to:33 salida:-16 saving:-22 says:49 se:52 se__a:-15 se__que:-24 se__un:19
se_lo:14 se_va:-19 sea:-26 see:-40 see__my:-31 seguro:28 semana:-26 serious:86 serious_$:57 serpentine:28
serpentine_belt:28 service:34 service_$:24 set:-42 set__back:-27 set_me:-27 shop:-47 shop_$:-14 shop__this:-18
shop_is:-28 should:39 should__be:43 should_i:48 si:59 si_$:-50 si__bien:19 si__cuanto:-17 si__dejo:31 si__le:25
si__lo:50 si__que:-36 si_lo:82 si_me:-38 si_no:72 siendo:20 siente__el:17 siente_que:-19 significa:43 sigo:66 sin:14
sirve:-45 sirve_$:-45 sirven:-17 skip:33 skip_it:21 snow:-15 so:77 so__is:23 sold:-15 son:-26 son_$:-18 soon:55
sorry:-14 soy:-16 speak:-19 speed:16 spring:25 spring_$:24 still:-27 stop:-43 stop_$:-23 stop_these:-17 street:-42
street_$:-25 su:-20 sure:-20 take:-47 take_$:-33 take_it:14 taller:-33 tambien:-19 tan:207 tan__es:-20 tan__esta:43
tan_grave:22 tan_mal:62 tan_malo:41 tan_urgente:14 tarde:-22 te:-19 tech:40 tell:91 tell_me:95 tenga:-18
tenga__dia:-15 tengo:-50 tengo_que:-39 text:-21 texting:-23 texting_me:-16 than:-17 thanks_but:14 that:87 that_$:72
that__do:35 that__to:-16 that_and:20 that_done:-17 that_is:-24 that_one:22 the:43 the__are:-23 the__as:15 the__for:33
the__if:23 the__in:23 the__is:37 the__need:16 the__of:17 the__on:-24 the__says:19 the__that:18 the__thing:19
the__were:15 the__what:19 the__when:-14 the_address:-14 the_am:24 the_brakes:-16 the_car:24 the_damage:-14
the_fall:17 the_house:-17 the_kids:15 the_list:26 the_other:15 the_price:-33 the_tech:43 the_thing:70 the_tires:76
the_trunk:-16 the_wait:-46 them:117 them_$:122 then:28 there:-16 there_$:-47 these:40 these_$:63 they:167 they_$:77
they__it:-18 they__the:57 thing:41 thing_$:-29 think:-14 this:32 this_$:-76 this__for:41 this_about:-67
this_number:-32 this_one:18 those:19 though:37 though_$:43 thought:18 thursday:-15 thursday_at:15 tiembla:-18
tiene:58 tiene_$:67 tienen:-14 tienen_$:-33 til:39 time:-135 time_$:-28 time__i:-14 time__it:-36 time__you:-25
time_do:-29 timing:14 tirado:15 tires:54 tires_$:34 to:77 to_$:-34 to__a:-24 to__and:19 to__me:-52 to__this:43
to__to:41 to_be:34 to_bring:-39 to_cost:-30 to_do:106 to_drive:85 to_fix:-39 to_it:50 to_me:-25 to_say:-16 to_see:-26
to_set:-21 to_the:-15 to_you:-22 toca:66 toca_$:39 today:-21 today_$:-19 todos:-22 toma:-17 tomorrow:15 too:-31
too_$:-24 took:-14 top:65 top_off:67 tow_hitch:-14 town:-15 trabajo:-34 tread:43 trip:43 troca:-14 trunk:-16 tu:-18
tuesday__is:15 turn:-16 tuve:-18 tuve_que:-18 two_weeks:14 un_poquito:32 una:-41 under:-23 up:-31 up_$:-40 urge:-48
urgent:32 urgent_$:35 urgente:49 use:-63 usted:-24 va:-66 va_$:-29 va_a:-24 vale:-20 van:58 van__hacer:53 van_a:66
veces:-19 vegas:25 vegas_$:27 verdad:93 vida:39 viene:35 viernes__de:18 volante:-23 wait:59 wait_for:-20 wait_on:24
wait_or:22 wallet:-14 want:24 want_it:21 was:36 was_the:74 we__a:16 we__it:-15 week:-36 were:16 what:166 what__a:97
what__do:-22 what__if:68 what__it:60 what__that:-53 what__this:-56 what__wrong:70 what__you:88 what__your:-40
what_a:-68 what_about:-25 what_am:28 what_company:-18 what_did:123 what_do:-55 what_does:123 what_exactly:52
what_happens:77 what_i:-22 what_street:-32 what_this:30 what_time:-73 what_was:94 what_would:-57 wheel:-23 when:-101
when__hit:17 when__i:-16 when_i:-36 where__i:-16 where__the:32 where__you:-14 where_do:-16 which:32 which__are:38
which__do:-28 which__is:-60 which_exit:-46 which_shop:-26 who:-67 who__this:-39 who_is:-45 why:263 why_$:66 why__i:32
why__it:65 why__you:36 why_do:77 why_does:46 why_is:53 why_not:-147 why_would:46 wifi:-71 wifi_$:-58 will:66
will__be:-25 will_the:42 winter:47 winter_$:59 with:60 with_it:41 with_my:21 with_the:14 wont:-31 wont_be:-20
works:-16 worn:30 worse:22 would:-39 would__have:-17 would__need:43 would_that:-68 would_you:74 wouldnt:-28 wrong:88
wrong_with:75 y:98 y__de:30 y__es:-14 y__que:64 y_cuanto:25 y_de:15 y_donde:-20 y_el:25 y_es:17 y_eso:22 y_le:-16
y_para:20 y_por:32 y_que:33 y_si:20 ya:-124 ya_esta:-39 ya_lo:-14 ya_que:-23 yes:-73 yes_$:-45 yes__i:-15
yes__what:26 yes_i:-22 yes_lets:15 yet:37 yet_$:37 yo:-46 you:-96 you_$:-59 you__for:-24 you__it:-44 you__me:89
you__on:-25 you__that:26 you__the:-26 you__to:18 you_be:81 you_charge:-23 you_close:-16 you_do:-25 you_find:65
you_get:-15 you_have:-23 you_know:14 you_need:-50 you_on:-24 you_open:-21 you_tell:71 your:-53 your_address:-14
youre:18
"""
