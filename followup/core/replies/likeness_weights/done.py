"""What speaks for and against `done`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "done"
BIAS = -172
WEIGHTS = """\
#aban:24 #abie:-16 #ablo:-17 #abri:14 #acab:42 #aced:98 #acer:63 #acho:15 #acia:20 #acro:-19 #acue:37 #aded:-19
#ador:18 #adua:22 #ague:18 #ahor:-23 #aigo:16 #aine:14 #ajes:-16 #aken:99 #akes:32 #akin:14 #alar:-22 #alat:21
#aled:-20 #aler:20 #alid:17 #alig:40 #alin:24 #alio:49 #alir:23 #alle:43 #alre:132 #ambi:68 #ance:36 #ande:14
#andl:55 #ands:22 #ange:-14 #ania:28 #anic:50 #anit:22 #anks:17 #anoc:15 #anot:41 #anta:31 #ante:17 #anua:18 #apen:23
#appe:60 #appo:-25 #appr:-26 #arad:61 #arag:-25 #arat:16 #arch:18 #area:25 #aren:-73 #arge:23 #argo:19 #arin:19
#arki:17 #arma:-31 #aron:88 #arro:-63 #arts:15 #asad:70 #asnt:-29 #asse:20 #asta:-18 #atas:17 #atch:28 #ated:18
#aten:47 #ater:35 #atio:24 #atis:27 #atte:72 #atur:24 #auto:16 #avor:35 #ayer:128 #ayor:14 #back:-49 #bala:35
#bank:-21 #bara:16 #baro:-17 #base:30 #bast:-15 #bate:38 #batt:52 #bber:15 #beat:90 #been:144 #befo:18 #bend:18
#biar:37 #bile:16 #blem:17 #blow:-16 #body:-43 #boug:17 #brak:31 #bran:31 #bril:15 #brin:-20 #brot:15 #budd:31
#cabo:44 #calc:28 #camb:66 #came:44 #canc:37 #cani:25 #cans:-19 #cant:-26 #care:116 #carg:22 #carr:-62 #casa:-18
#casi:-23 #cele:19 #cerr:-14 #cesi:26 #chac:16 #chai:15 #chan:18 #char:20 #chec:32 #ched:22 #cher:-21 #chos:-16
#ciat:-26 #cibo:34 #cido:-19 #cien:47 #cimo:19 #cino:14 #cito:14 #cked:21 #cker:39 #club:23 #cobr:16 #coch:-21
#coma:24 #come:-23 #comi:36 #como:14 #comp:124 #cono:-45 #cord:35 #coul:-29 #cous:33 #crap:-19 #ctio:55 #ctob:40
#cual:-16 #cuer:34 #cupe:36 #days:17 #ddle:-23 #dejo:18 #desd:60 #desh:-19 #didn:-17 #dien:22 #dier:44 #digo:-15
#ding:23 #dios:16 #dire:-75 #dito:18 #divo:-23 #dled:63 #doll:21 #dond:-19 #done:147 #driv:-74 #drop:-20 #dshi:18
#dson:24 #duen:-21 #eady:105 #eaki:17 #eale:20 #eari:19 #ease:23 #eave:-26 #ebod:-36 #ecal:35 #ecan:25 #ecei:25
#echa:44 #ecia:-28 #ecib:31 #ecie:41 #ecin:14 #ecor:31 #ecti:56 #edal:-14 #eded:19 #eden:-16 #eede:19 #eeke:20
#eeze:19 #efor:18 #egan:-19 #egar:23 #egla:18 #eglo:-38 #egue:-19 #eigh:14 #ejar:15 #ejor:-15 #eken:20 #elta:17
#eman:16 #embe:49 #emem:26 #empr:-15 #enas:22 #enca:22 #enci:41 #endi:-29 #ener:41 #engi:-14 #enle:-44 #enme:-19
#enos:42 #enou:-22 #ensa:-27 #ento:22 #entr:-16 #ents:14 #eocu:18 #eone:48 #epar:67 #epla:90 #equi:-16 #eral:14
#erca:16 #erda:84 #eria:29 #erma:-21 #erme:18 #eron:67 #eros:-17 #erra:-16 #ersh:19 #ersi:22 #erso:-34 #erto:-24
#ervi:33 #eryt:14 #esca:-14 #esda:48 #esde:60 #esia:-33 #esio:18 #essu:-18 #esta:40 #este:28 #estu:27 #etti:-17
#ettl:17 #evas:56 #ever:-80 #evis:15 #eway:-45 #exic:15 #fall:-14 #favo:35 #fech:18 #fill:25 #filt:27 #fine:16
#firs:-29 #fixe:103 #flas:15 #floo:-16 #flui:16 #free:17 #fren:21 #frie:21 #frio:-14 #from:-17 #fron:-21 #game:-28
#gara:-21 #garo:24 #genc:15 #gett:-19 #ghbo:14 #gine:-14 #gist:-22 #give:-17 #gles:-51 #gnme:40 #goin:-31 #goma:20
#gone:-26 #good:18 #grad:15 #gran:20 #grat:27 #guen:-16 #guno:17 #guys:24 #habl:-29 #hace:149 #hach:16 #hago:-38
#hand:59 #hani:26 #harg:23 #have:-43 #hbor:14 #head:15 #hech:33 #heck:27 #hera:-21 #here:33 #herm:-21 #hice:97
#hici:24 #hiel:18 #hijo:-21 #hile:19 #hing:-17 #hink:-14 #hizo:112 #hoev:-14 #hold:32 #hone:-17 #hora:-42 #hose:62
#houl:-27 #hous:37 #hrou:-26 #iado:27 #iaro:39 #iate:-26 #ible:-21 #iced:28 #icim:19 #icio:69 #icke:39 #idnt:-17
#ield:18 #iemp:-14 #iend:16 #iene:-16 #ient:45 #iero:58 #iert:-17 #ighb:14 #ight:-78 #igle:-33 #ignm:40 #illa:-17
#ille:25 #iltr:15 #imos:52 #ince:24 #inds:26 #inea:24 #iner:15 #insp:73 #insu:-20 #intm:-24 #iona:19 #irec:-15
#ires:73 #irst:-29 #ismo:-53 #ista:-34 #iste:15 #isto:26 #iter:15 #itti:-14 #ivew:-44 #ivoc:-16 #ivor:-23 #ixed:98
#janu:18 #jaro:17 #jeje:22 #just:50 #kend:20 #kids:-23 #knoc:16 #lace:95 #lado:30 #lanc:18 #larm:-31 #laro:21
#lars:21 #lash:15 #last:91 #lata:18 #late:23 #lcom:28 #ldin:17 #leak:26 #leas:24 #leav:-32 #lega:20 #lemo:-14
#leno:20 #lers:17 #lesi:-33 #lete:20 #leto:19 #lets:-29 #leve:45 #levo:-29 #lido:17 #lift:14 #ligh:-21 #lign:40
#like:-32 #lina:-16 #line:30 #list:34 #llan:20 #llar:18 #lled:20 #llen:20 #ller:43 #llet:20 #lood:-15 #look:33
#lrea:132 #lsew:16 #lter:15 #ltro:15 #luid:16 #make:-18 #mana:23 #mani:50 #mano:-14 #mayo:33 #mber:-38 #mbia:85
#mbie:36 #mbio:-53 #mebo:-36 #meca:25 #mech:26 #mejo:-15 #memb:26 #mens:-24 #meon:48 #mero:-38 #meti:26 #mexi:15
#mien:40 #mill:-24 #mind:-14 #ming:56 #mism:-59 #mond:21 #moth:-15 #mpan:16 #mple:39 #mpli:21 #mpre:16 #much:-29
#myse:-27 #nada:-23 #ncar:22 #ncel:37 #nces:14 #ncia:25 #ncle:24 #ndar:-18 #nday:68 #nded:25 #nden:-31 #ndie:39
#ndle:71 #ndsh:18 #ndso:24 #near:23 #neig:14 #nera:18 #nero:52 #neve:-49 #news:14 #nged:67 #nges:-36 #ngin:-15
#nico:33 #nigh:14 #nito:21 #nive:22 #nmen:40 #nock:16 #noth:38 #noug:-22 #nove:14 #nozc:-26 #nsaj:-24 #nspe:73
#nsur:-20 #ntas:43 #nten:37 #ntes:14 #ntme:-24 #ntre:-14 #nuar:18 #nuev:141 #numb:-86 #nume:-32 #ober:35 #oble:16
#obra:17 #ocad:-15 #ocid:-19 #ocke:26 #octo:38 #ocup:29 #oeve:-14 #oing:-34 #oint:-25 #oked:48 #olan:-27 #oldi:19
#olla:21 #olvi:32 #oman:28 #omat:21 #omeb:-36 #omeo:48 #omet:-23 #omin:48 #ompa:14 #ompl:33 #ompr:30 #ompu:35
#onda:20 #onde:-19 #ones:24 #onoz:-26 #onte:18 #ooke:48 #oola:-20 #oppe:14 #orce:-19 #orda:22 #ords:19 #orks:-22
#orqu:30 #orry:22 #orst:-16 #otal:-25 #otat:29 #othe:33 #otor:25 #otra:-26 #ough:-37 #ould:-89 #ouse:40 #ousi:33
#ovem:14 #over:49 #owed:20 #oxim:24 #ozco:-26 #pads:97 #pagu:19 #para:50 #pare:-78 #part:39 #pasa:57 #paso:19
#pass:37 #past:32 #pect:56 #peda:-16 #pena:24 #pend:18 #perm:18 #pers:-18 #phon:-17 #plac:94 #plea:15 #plet:39
#plug:34 #poin:-25 #porq:30 #pped:74 #ppoi:-25 #ppre:-26 #prec:-32 #pren:-14 #preo:18 #pric:-14 #prim:26 #prox:24
#pudd:-22 #pued:-63 #pues:47 #pull:14 #pusi:33 #puso:20 #qued:105 #quee:26 #quic:66 #quie:-22 #quit:-21 #quiv:-16
#rade:-30 #rado:59 #radu:22 #rage:-25 #raig:27 #rake:32 #rall:15 #ranc:-23 #rand:36 #raro:-22 #rath:-14 #rati:27
#rato:15 #rdan:32 #rday:80 #read:102 #reca:35 #recc:-15 #rece:21 #reci:38 #reck:-14 #reco:20 #reet:14 #rega:-22
#reme:21 #rend:-14 #renl:-44 #reno:31 #reoc:18 #repa:61 #repl:90 #repo:-20 #rero:-16 #resa:15 #reso:54 #ress:-20
#revi:18 #ribl:-15 #rice:-14 #rien:18 #righ:-78 #rimo:37 #rive:-71 #rkin:16 #rman:-21 #road:14 #roba:-15 #robl:17
#rong:-43 #ront:-23 #rota:35 #roth:15 #roto:16 #roug:-28 #roxi:24 #rque:28 #rrar:-14 #rrib:-15 #rsda:15 #rshi:19
#rson:-34 #rtos:-16 #rubb:15 #ruck:15 #rvic:34 #ryth:14 #sada:33 #sado:46 #said:-41 #saje:-24 #sali:78 #same:-14
#sant:18 #satu:26 #scan:-14 #scra:-23 #sday:63 #self:-14 #sema:16 #serv:32 #sett:17 #sewh:16 #shie:17 #ship:20
#shop:35 #shou:-28 #side:17 #sier:28 #sinc:25 #sion:26 #sist:40 #sits:-14 #snow:-21 #sold:-44 #solo:-93 #some:-16
#sona:-25 #sorr:22 #spec:72 #sque:17 #ssed:41 #sses:-20 #ssur:-18 #sted:17 #stem:23 #ster:62 #stic:40 #stop:-72
#stoy:-19 #stre:14 #stud:27 #stuf:-14 #stuv:14 #sund:47 #supe:16 #sura:-20 #sure:-24 #swap:65 #take:67 #tale:-20
#tall:27 #tard:-19 #tare:25 #tate:31 #tche:24 #tech:16 #tema:15 #tenc:25 #tend:55 #tera:25 #terd:53 #teri:37 #tery:52
#text:-29 #that:90 #them:84 #then:-24 #ther:52 #they:38 #thin:-26 #thos:56 #thro:-30 #tick:40 #tien:-14 #time:-112
#ting:-36 #tion:85 #tire:56 #tmen:-24 #tobe:40 #todo:61 #took:-23 #topp:14 #tore:23 #tors:16 #tota:-25 #trad:-23
#trae:18 #trai:25 #truc:15 #tten:20 #tter:42 #ttin:-31 #ttle:18 #tues:36 #tuff:-14 #turd:26 #turn:-15 #tuvo:21
#uary:18 #ubbe:15 #ucha:20 #uddl:-22 #uddy:31 #ueda:-14 #uede:-26 #uedo:81 #ueez:18 #uelt:24 #ueno:-18 #uerd:34
#uesd:39 #uest:30 #ueva:76 #uevo:53 #uick:66 #uido:14 #uier:-26 #uito:-15 #uivo:-16 #ulle:20 #umbe:-86 #umer:-32
#uncl:24 #unda:46 #undr:24 #uper:16 #uran:-15 #urda:26 #urge:-17 #ursd:15 #usie:29 #usin:19 #uste:14 #veci:26
#vemb:14 #vend:-97 #vewa:-44 #vice:-37 #vici:70 #vida:21 #vise:23 #voca:-16 #vorc:-23 #vuel:17 #want:-23 #wapp:72
#wasn:-27 #week:68 #went:26 #were:61 #what:-50 #when:21 #whil:19 #whoe:-14 #wife:-19 #will:-44 #wont:15 #woul:-26
#wrec:-14 #wron:-42 #xico:15 #xima:17 #yest:53 #your:-37 #ysel:-27 %again_later%agree:43 %again_later%away:35
%again_later%bad:32 %again_later%bring:-22 %again_later%call_off:29 %again_later%car:-36 %again_later%car_part:27
%again_later%doubt:-30 %again_later%elsewhere:30 %again_later%gone_car:-42 %again_later%leak:14
%again_later%message:-19 %again_later%money:18 %again_later%odometer:-14 %again_later%on_way:-20
%again_later%pay_day:-19 %again_later%phone:15 %again_later%place:68 %again_later%question:41 %again_later%refuse:49
%again_later%shift_it:35 %again_later%staff:-27 %again_later%start_again:-51 %again_later%who:29
%again_later%wrong_one:29 %agree:-66 %agree%away:29 %agree%bad:-19 %agree%call_off:36 %agree%car:15
%agree%car_part:91 %agree%do_it:-15 %agree%doubt:-19 %agree%elsewhere:24 %agree%fails:19 %agree%family:-23
%agree%gone_car:-33 %agree%odometer:-17 %agree%pay_day:15 %agree%place:-22 %agree%refuse:-24 %agree%season:56
%agree%shift_it:38 %away:-16 %away%family:24 %away%how_long:15 %away%money:22 %away%question:40 %away%refuse:21
%away%smoke_smell:27 %away%staff:14 %away%wrong_one:36 %bad:-68 %bad%bring:24 %bad%busy:-20 %bad%call_off:26
%bad%car_part:-20 %bad%do_it:-52 %bad%family:-20 %bad%place:14 %bad%shift_it:21 %bad%staff:-52 %bring:-57
%bring%busy:14 %bring%call_off:28 %bring%family:70 %bring%leave_me:-68 %bring%odometer:28 %bring%place:35
%bring%question:51 %bring%refuse:38 %bring%season:-39 %bring%staff:25 %bring%start_again:-22 %bring%thanks:17
%bring%wrong_one:42 %busy:32 %busy%call_off:32 %busy%car_part:15 %busy%do_it:29 %busy%elsewhere:18 %busy%odometer:14
%busy%place:27 %busy%staff:41 %busy%wrong_one:25 %call_off:48 %call_off%car:-56 %call_off%car_part:141
%call_off%do_it:151 %call_off%elsewhere:86 %call_off%fails:82 %call_off%family:70 %call_off%gone_car:-86
%call_off%how_long:-24 %call_off%leave_me:-26 %call_off%message:27 %call_off%money:25 %call_off%odometer:36
%call_off%opening:-16 %call_off%pay_day:29 %call_off%phone:-44 %call_off%place:36 %call_off%question:43
%call_off%refuse:-25 %call_off%season:-18 %call_off%shift_it:70 %call_off%smoke_smell:-15 %call_off%staff:-28
%call_off%start_again:-57 %call_off%thanks:101 %call_off%who:30 %call_off%wrong_one:22 %car:-118 %car%do_it:-85
%car%elsewhere:-17 %car%fails:-20 %car%family:14 %car%gone_car:-87 %car%message:14 %car%shift_it:-43 %car%staff:16
%car%thanks:37 %car_part:119 %car_part%do_it:94 %car_part%elsewhere:21 %car_part%fails:-80 %car_part%family:94
%car_part%gone_car:196 %car_part%leak:-37 %car_part%leave_me:-18 %car_part%noise:20 %car_part%odometer:17
%car_part%place:-18 %car_part%question:16 %car_part%refuse:-87 %car_part%shake:-14 %car_part%smoke_smell:-16
%car_part%staff:17 %car_part%start_again:-30 %car_part%thanks:-25 %car_part%who:-16 %car_part%wrong_one:189
%do_it:441 %do_it%doubt:-31 %do_it%elsewhere:169 %do_it%family:258 %do_it%gone_car:117 %do_it%how_long:-34
%do_it%leak:-20 %do_it%leave_me:-28 %do_it%message:-21 %do_it%money:17 %do_it%noise:29 %do_it%odometer:85
%do_it%on_way:49 %do_it%opening:18 %do_it%pay_day:109 %do_it%phone:-16 %do_it%place:24 %do_it%question:-26
%do_it%refuse:28 %do_it%season:112 %do_it%shift_it:-33 %do_it%smoke_smell:-18 %do_it%staff:67 %do_it%start_again:-42
%do_it%thanks:54 %do_it%wrong_one:48 %doubt:-85 %doubt%elsewhere:-24 %doubt%refuse:-15 %doubt%shift_it:-26
%doubt%wrong_one:-30 %elsewhere:245 %elsewhere%fails:52 %elsewhere%family:-17 %elsewhere%gone_car:-84
%elsewhere%how_long:35 %elsewhere%leave_me:20 %elsewhere%money:40 %elsewhere%odometer:-29 %elsewhere%on_way:33
%elsewhere%phone:34 %elsewhere%place:26 %elsewhere%question:23 %elsewhere%refuse:-23 %elsewhere%season:-31
%elsewhere%staff:-18 %elsewhere%who:14 %fails:-34 %fails%gone_car:-14 %fails%odometer:-19 %fails%on_way:14
%fails%refuse:50 %fails%season:18 %fails%shift_it:19 %fails%thanks:53 %fails%wrong_one:-24 %family:73
%family%gone_car:-14 %family%how_long:16 %family%message:28 %family%noise:38 %family%on_way:25 %family%opening:17
%family%refuse:77 %family%staff:-33 %family%wrong_one:-57 %gone_car:-121 %gone_car%how_long:-27
%gone_car%odometer:-29 %gone_car%on_way:31 %gone_car%place:-15 %gone_car%refuse:-20 %gone_car%shift_it:41
%gone_car%thanks:27 %gone_car%wrong_one:111 %how_long%leave_me:28 %how_long%money:28 %how_long%place:17
%how_long%question:-25 %leak:-30 %leak%money:19 %leak%question:19 %leak%refuse:19 %leak%staff:27 %leak%wrong_one:16
%leave_me:-169 %leave_me%message:-30 %leave_me%money:21 %leave_me%odometer:-17 %leave_me%staff:22 %lift:-17
%machine:-16 %meaning:-14 %meaning%wrong_one:14 %message:-75 %message%refuse:21 %message%thanks:28
%message%wrong_one:-19 %money:39 %money%on_way:16 %money%question:43 %money%staff:35 %money%start_again:-16
%money%wrong_one:26 %noise%odometer:27 %odometer:-50 %odometer%question:22 %odometer%shift_it:-23 %odometer%staff:14
%odometer%wrong_one:-29 %on_way:21 %on_way%place:-16 %on_way%refuse:32 %on_way%staff:42 %on_way%wrong_one:37
%opening:-30 %opening%place:-16 %pay_day:37 %pay_day%question:-14 %pay_day%refuse:44 %pay_day%season:30
%pay_day%staff:21 %phone:-72 %phone%question:16 %phone%staff:-27 %place%refuse:30 %place%shift_it:63 %place%staff:18
%place%wrong_one:49 %question:-149 %question%refuse:21 %question%season:-16 %question%start_again:-14
%question%wrong_one:45 %refuse:-66 %refuse%season:36 %refuse%shift_it:-21 %refuse%staff:-31 %refuse%start_again:-19
%refuse%wrong_one:-78 %season:35 %shake:-20 %shift_it:-127 %shift_it%staff:-34 %shift_it%who:18
%shift_it%wrong_one:-68 %smoke_smell%wrong_one:17 %staff:73 %staff%wrong_one:67 %start_again:-89 %thanks:26 %who:-21
%who%wrong_one:28 %wrong_one:148 @?:-111 @after_visit:-189 @car:23 @confirm:-147 @confirm_stop:-31 @day:-30 @later:61
@odometer:-52 @offers:-94 @reading:-66 @time:-34 @times:-27 @walk_in:20 ^_all:103 ^_already:49 ^_been:61 ^_can:-55
^_cant:-23 ^_changed:20 ^_coolant:-20 ^_could:-20 ^_desde:34 ^_do:-62 ^_done:33 ^_el:48 ^_enough:-22 ^_es:-14
^_esa:18 ^_ese:-28 ^_eso:136 ^_going:-18 ^_got:-25 ^_gracias:-22 ^_hace:21 ^_had:128 ^_have:-19 ^_hey:-31 ^_how:-61
^_i:29 ^_id:-49 ^_ill:-72 ^_im:-34 ^_in:-34 ^_is:-74 ^_it:107 ^_just:22 ^_le:22 ^_lets:-26 ^_lo:-69 ^_me:-27 ^_mi:15
^_my:-23 ^_new:22 ^_ninguno:17 ^_no:-46 ^_not:27 ^_oil:40 ^_ok:-20 ^_que:-17 ^_se:-48 ^_si:-22 ^_sold:-25
^_someone:77 ^_son:-15 ^_stop:-44 ^_thanks:-51 ^_that:49 ^_the:29 ^_they:37 ^_this:-36 ^_those:62 ^_tire:14 ^_too:20
^_took:34 ^_traded:-17 ^_was:30 ^_we:-15 ^_were:-17 ^_what:-66 ^_when:-20 ^_why:-19 ^_will:-22 ^_y:22 ^_ya:90
^_yes:-25 ^_yo:-210 ^_you:-30 a:-38 a__battery:21 a__for:-24 a__lado:15 a__of:17 a__on:-23 a_eso:14 a_favor:20
a_guy:-19 a_la:-51 a_lift:14 a_mi:-30 a_new:25 a_otro:17 abiertos:-16 abril:15 abril_$:15 acaban:14 acabo:44
aceite_$:-62 aceite_el:26 across:-19 after_i:18 agencia:15 ago:27 ahi:49 ahi_$:15 ahora:-19 alarma:-31 alignment:40
all:97 all__my:-23 all_day:-17 all_over:-23 all_set:20 already:132 already_$:16 already__it:52 already_did:32
already_got:20 already_replaced:25 already_with:-14 an:-52 an__change:-21 an_appointment:-35 an_oil:-21 and:14
and__it:51 and_all:14 and_did:22 and_it:-57 anoche:15 another:41 another_shop:39 antes_de:17 any:-19 apenas:23
appointment:-22 appreciate:-25 appreciate_it:-22 are_you:-14 arreglaron:14 arreglo:-38 as:52 ask:-23 at:61 at_$:-26
at__dealer:14 at_the:83 atencion:14 auto:16 ayer:138 ayer_$:52 back:-44 back_$:-20 back_on:-16 balatas:17 bank:-20
barato:16 base:31 bateria:39 bateria_$:19 battery:52 be:-49 be__to:19 be_coming:19 be_done:-43 beat:90 been:144
been__since:23 been__to:33 been_done:38 been_there:18 before:18 before_the:28 bit:15 book:-14 bought:17 brakes:39
brakes__done:18 brakes_were:20 brand:21 buddy:28 but:36 but_i:14 but_my:19 by:58 by_a:22 by_my:34 call:-44
call_me:-25 cambiaron:39 cambiaron_la:18 cambie:35 cambie_por:-84 cambio:-44 cambio__aceite:-37 came:46 came_on:-38
can:-81 can_you:-51 cancel:14 cancele:14 cant:-26 car:-74 car_$:-40 care:132 care_of:137 carro:-72 carro_$:-52
casa:-18 casa_$:-35 casi:-23 change:-43 change_$:-17 changed:67 changed_my:-25 changes:-35 changes_$:-29 charge:15
checked:27 club:23 cochera:-21 come:-20 coming:36 como:14 completo:19 compre:28 con:41 con__mecanico:24 con_la:14
con_todo:16 conozco:-26 coolant:-20 could:-27 cousin:33 dad:30 dan:-17 day:-42 day_$:-29 days:25 de:51 de__con:15
de__del:29 de__el:20 de__en:15 de__proxima:17 de__ya:-17 de_ahi:17 de_eso:14 de_la:52 de_nuevo:-21 de_semana:15
dealership:19 dejaron:17 dejo:18 del:52 desde:60 dia:-43 dia_$:-34 dias_$:14 did:227 did__find:-14 did__get:-23
did__in:52 did_i:-17 did_it:255 did_my:-42 did_that:79 did_the:26 did_you:-71 didnt:-17 digo:-14 dios:16
direccion:-15 do:-15 do__charge:19 do__need:-30 do_it:61 do_my:-34 do_the:16 do_they:-27 dollars:21 domingo_$:15
done:148 done_$:-41 done__the:35 done_already:26 done_at:34 done_in:43 done_last:31 down__street:20 down_the:17
driveway:-44 driveway_$:-34 dueno:-20 dueno_$:-19 echo:-23 el:51 el__dia:-28 el__la:19 el__lo:-21 el__me:18
el__mes:-17 el__pasado:46 el__se:15 el__ya:33 el_de:29 el_mes:34 el_mismo:-44 el_servicio:24 el_viernes:30 else_$:-30
elsewhere:16 en:90 en__casa:-40 en__cochera:-21 en__lado:29 en__parte:21 en__taller:58 en_el:-41 en_la:-45 en_mayo:21
en_mi:24 en_otra:24 en_otro:104 en_un:14 enero:41 engine:-14 enough:-22 equivocado:-14 es:-70 es__el:-14
es__mismo:-17 es_lo:-17 esa:43 ese:-24 ese_$:26 ese__lo:-42 ese_carro:-14 ese_servicio:26 ese_taller:-27 eso:246
eso_$:47 eso__el:16 eso__lo:51 eso_se:18 eso_ya:111 esta:27 esta_$:41 esta_en:-17 esta_hecho:26 estan_abiertos:-16
este:-21 estoy:-19 estuvo:14 everything:14 everything_$:14 ex:-70 favor:35 fecha:18 fell:-25 filled:25 filled_it:19
filtro:15 find:-16 fine:16 fine_$:18 first:-29 fix:-82 fix_it:-75 fixed:103 fixed_$:20 for:-22 for_$:-15
for__brakes:14 for__in:15 for_a:19 for_free:16 for_me:18 for_that:-55 for_the:48 free:18 frenos:37 friend:19 frio:-14
frio_$:-14 from:-17 front:-21 fue:47 fui:69 game:-25 garage:-25 garage_$:-29 gas:-17 gasolina:-16 get:-143
get__done:-74 get__number:-14 get_it:-30 get_my:-18 getting:-19 give:-16 give__a:-15 give_me:-16 go:-44 go__the:-23
go_to:-23 going:-31 gomas:21 gone:-26 good:18 good_to:14 got:-17 got__done:27 got__in:-27 got__new:26 got__of:-44
got_it:26 got_my:24 got_on:-20 got_rid:-46 got_to:-35 gracias_por:19 gracias_ya:32 gratis:27 guy:67 guy__me:-16
guys:24 hablo:-17 hablo_$:-16 hace:80 hace_como:17 hace_falta:14 hace_un:32 hacer:76 hacer_$:21 had:278 had__done:65
had_it:109 had_that:31 had_the:24 had_this:22 had_to:-26 hago:-38 hago_$:-24 handled:63 handled_$:37 has:-17
has_a:-20 has_it:-15 have:-31 have__it:32 have_an:-35 have_it:-19 he:-27 hecho:49 hecho_$:17 her:33 here:18
hermano:-21 hey:-31 hice:106 hice_$:32 hice_el:20 hicieron_el:14 hijo:-21 hizo:112 hizo_el:38 hizo_mi:31 hold_my:15
house:17 house_$:19 how:-48 how_did:-14 how_much:-33 hoy_mismo:-15 i:29 i__be:19 i__do:-15 i__got:-15 i__in:20
i__it:54 i__my:14 i__off:-15 i__the:39 i__them:19 i__there:16 i__to:-40 i_came:14 i_can:-18 i_do:-34 i_get:-14
i_go:-23 i_had:101 i_have:61 i_need:-23 i_should:-26 i_still:15 i_was:34 i_wont:19 id:-54 id__to:-34 id_like:-31
id_rather:-14 if:-19 iglesia:-33 ill:-80 ill__it:-74 ill_do:-18 im:-58 in:91 in_$:16 in__car:-15 in__garage:-39
in__i:24 in__month:-14 in__the:25 in__weeks:-19 in_a:-21 in_for:21 in_january:18 in_march:23 in_november:14
in_the:-24 in_two:-19 inspection:57 insurance:-20 insurance__it:-20 is:-35 is__a:-14 is__car:-15 is__on:-22
is__what:14 is_a:-18 is_been:74 is_done:24 is_got:-21 is_in:19 is_it:-33 is_my:-24 is_that:-24 is_this:-20 it:130
it_$:80 it__at:46 it__been:39 it__done:-32 it__for:-17 it__got:-21 it__in:57 it__my:22 it__on:22 it__the:-15
it__totaled:-16 it_and:-20 it_back:-19 it_be:-41 it_fixed:41 it_is:62 it_myself:-28 it_now:-22 it_this:14 it_to:16
january:18 january_$:14 jeje:22 just:55 kids:-23 knocked:17 la__con:21 la__me:16 la__pasada:23 la__por:-30 la__ya:35
la_agencia:15 la_bateria:14 la_casa:-40 la_cochera:-21 la_iglesia:-33 la_lista:-21 la_llanta:-25 la_proxima:17
la_semana:21 lado:25 lado_$:18 las:39 las__en:17 last:94 last__and:-15 last__you:-15 last_month:20 last_night:18
last_time:-47 last_week:77 le:92 le__de:14 le__el:-17 le__las:21 le__los:55 le__todo:23 le_cambiaron:17 le_cambie:60
le_cambio:-38 leaking:17 leave:-23 les:-62 les__que:16 lets:-29 lets__it:-22 lets_get:-30 lift:14 light:-40
light__on:-33 light_came:-31 like:-32 like_to:-31 list:23 lista:-27 lista_$:-18 listo:38 llanta:-32 llantas:45
lleno:20 lleve:45 lleve__otro:32 lleve_a:15 llevo:-29 lo:184 lo__a:-42 lo__ayer:23 lo__de:38 lo__el:22 lo__en:109
lo__hace:23 lo__mi:-17 lo__por:-67 lo__ya:18 lo_arreglaron:34 lo_arreglo:-60 lo_cambie:-14 lo_dan:-15 lo_hago:-37
lo_hice:100 lo_hicieron:46 lo_hizo:108 lo_lleve:38 lo_llevo:-27 lo_mande:35 lo_mismo:-20 lo_tiene:-45 lo_vendi:-77
lol:-19 looked:40 los:62 los_frenos:18 lot:21 make:-15 mal:-64 mal_el:-18 man:-16 mande:35 march:23 mayo:19 mayor:14
me_$:-40 me__cambiaron:15 me__dan:-15 me__de:14 me__favor:20 me__hicieron:44 me__hizo:65 me__mal:-32 me__nada:-21
me_hicieron:-38 me_in:26 me_la:43 me_lo:106 me_pusieron:14 mecanico:25 mechanic:26 mejor:-15 mensajes:-16 mes:36
mes_$:-15 mes_pasado:35 mexico:15 mi__es:-35 mi__le:39 mi__lo:15 mi__por:14 mi__se:-15 mi__y:-20 mi__ya:40
mi_hermano:-26 mi_hijo:-21 mi_primo:30 millas:-29 millas_$:-19 mind:-16 mismo:-61 mismo_$:-15 mismo_dia:-29 mom:-19
monday:21 money_$:14 month_$:-17 morning:14 mother:-15 much:-38 muchacho:16 my:22 my__and:31 my__did:31 my__go:-19
my__oil:-34 my_brakes:-21 my_car:-29 my_cousin:24 my_dad:30 my_driveway:-26 my_ex:-31 my_mind:-14 my_mother:-14
my_neighbor:16 my_number:-27 my_oil:-19 my_own:-38 my_sister:17 my_son:19 my_spot:15 myself:-27 myself_$:-65 nada:-33
need:-14 need_that:-18 needed:19 neighbor:15 never:-43 new:222 new__and:15 new__in:19 new__on:44 new_battery:53
new_tires:80 news:14 ni:-55 night:17 ninguno:17 no:-125 no_$:-32 no__ese:-30 no__falta:14 no__lo:-51 no__on:17
no__preocupe:20 no__to:22 no__ya:15 no_conozco:-23 no_gracias:-31 no_hace:26 no_le:-16 no_longer:14 no_me:-28
no_need:34 no_se:50 no_soy:-34 no_tengo:-14 no_voy:14 not__it:-19 not_coming:21 november:14 now:-49 now_$:-30
nueva:20 nuevas:56 nuevas_$:52 nuevo:15 number:-57 number_$:-17 numero:-32 o:-27 october:40 october_$:40 of:81
of_$:68 of__all:17 of_the:-25 off_$:-23 off_my:25 oil:-20 oil_changed:18 oil_changes:-34 ok:-26 old:35 on:53 on_$:-21
on__so:15 on__th:19 on_and:16 on_friday:18 on_it:-38 on_monday:17 on_saturday:30 on_sunday:41 ones:25 or:-54
or_the:-21 otra:-22 otra_persona:-16 otra_vez:-17 otro_$:-68 otro_carro:-40 otro_lado:48 otro_mes:-18 otro_taller:81
out:38 out_in:15 out_last:20 over:34 over_my:-23 over_the:19 own:-52 own_oil:-34 pads:97 pads_are:49 pague:19
paren:-28 paren_$:-27 parenle:-44 parking:17 parking_lot:18 parte:20 parts:15 pasada:22 pasada_$:23 pasado:38
pasado_$:29 pase:14 paso:19 passed:31 past:24 past_$:27 pedal:-14 pero_cuanto:17 pero_ya:-29 persona:-24
persona_$:-18 phone:-16 pieza:14 please:17 por:-53 por_favor:15 por_una:-36 porque:30 preocupe:20 primo:37 problem:18
problem_$:28 proxima:17 puddle:-22 pueden:-16 puedo:-37 pues:22 pues_$:22 pusieron:27 puso:14 put__in:15 put_me:-28
put_new:39 put_the:19 que:-40 que__el:-14 que__hicieron:-16 que_me:-17 quedo:118 quedo_$:30 quick:67 quiero:-19
quito:-14 rather:-14 ready:-27 ready_$:-24 recall:48 recibo:34 records:20 remember:26 remember_$:26 replaced:98
replaced_in:29 rid:-46 rid_of:-46 right:-77 right_now:-33 rotated:15 rotation:14 rotors:16 rubber:15 said:-41
salio:49 salir:23 salir_del:29 same:-14 sat:29 sat_$:31 saturday:20 saturday_$:42 say:-17 se:23 se__cambie:26
se__de:-20 se__hicieron:18 se__llevo:-18 se_lo:55 se_los:35 se_me:-43 se_preocupe:20 sea:20 see:-43 semana:19
service:-66 serviced:29 servicio:70 set:51 set_$:31 shop:35 should:-27 si:-33 since:25 sister:17 snow:-21 so:24
so__is:24 so_i:37 so_that:24 sold:-44 sold_it:-20 solo:-93 somebody:-36 someone:43 sorry:22 soy:-49 soy__persona:-15
soy_yo:-15 spot:14 state:19 sticker:45 still__the:14 stop:-63 store:24 street:14 street_$:15 stuff:-14 su:26
sunday:60 sunday_$:61 swapped:72 take:-23 taken:99 taken__of:100 taken_care:92 taller:38 tech:16 tengo_el:33
tengo_la:16 th_$:16 thanks:15 that:90 that_$:-16 that__been:27 that__my:14 that_done:-23 that_is:52 that_last:46
that_was:19 the:58 the__already:16 the__changed:17 the__for:-42 the__guy:-20 the__light:-14 the__of:-18 the__on:26
the__time:-24 the__was:20 the_battery:14 the_brakes:38 the_car:-31 the_first:-25 the_garage:-38 the_oil:15
the_pads:33 the_service:-15 the_street:15 the_texts:-16 the_tires:37 the_week:-15 the_windshield:18 the_wrong:-26
them:84 then:-24 there:18 they:31 they__the:18 this__me:14 this_is:-28 this_morning:19 those:56 thought:-15
through:-26 through_$:-17 thursday:16 til:16 time:-100 time_$:-40 tire:-20 tires:74 tires_$:24 tires__on:27 to:48
to_$:42 to__it:-40 to__that:-23 to__to:-14 to_a:16 to_ask:-14 to_be:-20 to_do:14 to_get:-46 to_go:14 to_hold:15
to_it:102 to_the:-21 to_you:18 toda:15 todo:66 todo_$:17 too_$:-28 too_late:22 took:-23 took__of:41 took__to:44
took_care:46 took_the:-29 totaled:-20 traded:-19 traded__in:-15 traded_it:-16 trae:19 traigo:16 tree:-22 truck:15
tuesday:39 tuesday_$:29 un:30 un_mes:30 una:-40 uncle:19 under:16 use:-38 ve:-15 vecino:14 vendi:-85 vendi_$:-71
vez:-20 viernes__de:17 voy:-23 vuelta:17 want:-17 was:148 was__and:-45 was__at:34 was__for:20 was__last:29
was__the:14 was_done:29 was_in:42 wasnt:-27 we__the:-29 week:37 week_$:32 weekend:20 weekend_$:26 weeks_$:-27 went:26
went__in:-16 went__the:19 were:66 were__in:32 were_done:25 what:-49 what_did:-23 what_do:19 what_is:-22 when:33
when_i:49 while:19 whoever:-14 why:-31 wife:-19 wife__it:-16 will:-44 will__be:-22 will_it:-25 windshield:18
wipers:16 with__texts:-16 wont:15 wont__coming:19 wont_be:18 work:15 works:-22 works_$:-19 worst:-16 would:-25
would__be:-17 would_it:-16 wrong:-42 y:60 y__es:14 y__lo:61 y__no:-22 y__se:-14 y_lo:23 y_no:37 ya:353 ya_$:-141
ya__arreglo:16 ya__de:-22 ya__hace:26 ya__hice:47 ya__hicieron:18 ya__la:-29 ya__le:-16 ya__lleve:40 ya__lo:68
ya__los:21 ya__puse:19 ya__pusieron:19 ya__tengo:30 ya__tiene:-41 ya__vendi:-72 ya__voy:14 ya_casi:-22 ya_esta:74
ya_la:43 ya_le:80 ya_les:-54 ya_lo:119 ya_los:21 ya_me:83 ya_no:-49 ya_parenle:-44 ya_que:-19 ya_quedo:111 ya_se:63
ya_tengo:-28 ya_tiene:31 ya_voy:-21 yeah_$:-25 year_$:17 yes:-35 yes_$:-17 yes_i:-16 yesterday:53 yesterday_$:46
yet:-19 yo:-318 yo__le:-59 yo__soy:-17 yo_le:-26 yo_les:-15 yo_mismo:31 yo_ni:-19 yo_no:-65 you:-89 you__have:-14
you__it:25 you__my:-33 you__on:-35 you__the:-34 you_charge:19 you_find:-14 you_get:-23 you_got:-15 you_guys:22
you_have:-15 you_never:-16 you_put:-32 you_said:-44 you_to:109 your:-35 your_shop:-14
"""
