"""What speaks for and against `done`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "done"
BIAS = -166
WEIGHTS = """\
#aban:101 #abia:-39 #abou:-30 #abri:30 #abus:38 #acab:94 #aced:114 #acei:40 #acen:-40 #acer:102 #acha:-43 #acio:-41
#acro:-51 #acue:115 #adas:34 #ader:-51 #adua:42 #ager:-27 #agre:-31 #ahor:-42 #aigh:68 #aine:37 #ajar:29 #aken:111
#alam:-28 #alan:124 #alar:-70 #aled:-39 #alen:-35 #algo:-28 #alid:36 #alie:-37 #alig:88 #alin:69 #alio:50 #alir:32
#alis:-27 #alle:42 #ally:31 #alre:138 #alta:30 #aman:37 #ambi:40 #ambr:-28 #amil:-43 #amos:32 #anag:-27 #anas:32
#ance:131 #ande:41 #andl:34 #ando:26 #anec:42 #aner:44 #ania:68 #anic:62 #anit:62 #anme:-34 #anoc:33 #anot:37
#anta:40 #apar:-26 #apen:50 #appe:76 #appr:-31 #appy:-27 #apri:25 #aque:28 #aqui:45 #arad:79 #arag:-30 #aran:52
#arat:29 #arch:45 #arco:-26 #arda:-57 #area:64 #aren:-35 #argo:45 #arid:29 #arin:50 #arke:-27 #arki:42 #arma:-69
#aron:143 #arra:-37 #arro:-32 #arse:41 #arts:34 #arty:26 #asad:107 #asar:48 #aske:76 #asnt:-55 #asol:28 #asta:-40
#atch:90 #atem:-52 #aten:82 #ater:59 #atio:54 #atis:32 #ator:-33 #atos:63 #atra:-31 #atro:31 #atte:89 #attl:66
#atur:34 #avar:44 #aven:-79 #avia:-42 #avid:28 #avin:-28 #avis:40 #avor:46 #away:-27 #ayer:180 #ayin:-43 #baja:-58
#bala:147 #band:37 #bank:-80 #bara:30 #baro:-31 #base:54 #bast:-34 #bate:59 #batt:26 #bber:73 #beat:145 #bebe:27
#beca:33 #been:90 #bend:28 #bers:-38 #biad:33 #bier:29 #bike:-47 #bile:36 #blow:-47 #boat:-32 #body:-36 #bota:-39
#bott:-27 #bout:-30 #brab:36 #bran:67 #brar:-56 #bres:-27 #brot:79 #buck:27 #budd:46 #buen:-27 #buil:45 #buji:30
#bulb:51 #busq:35 #caba:29 #cabo:72 #cada:-27 #cado:32 #cafe:-36 #calc:66 #cale:-38 #cali:32 #call:73 #camb:67
#came:137 #cant:-39 #care:117 #carg:56 #carr:-34 #casi:-41 #ceip:49 #ceit:40 #celo:43 #cerl:-27 #cerr:-36 #cesi:50
#cham:44 #chan:50 #chec:56 #ched:71 #chee:26 #cher:-44 #ches:-26 #chic:-40 #choc:-50 #chur:32 #ciat:-31 #cibo:56
#cien:115 #cita:-35 #cked:89 #cker:102 #clam:30 #clav:44 #cloc:-48 #coch:-47 #cold:39 #coma:43 #come:-61 #como:34
#comp:124 #cond:51 #conf:-33 #cont:35 #cool:35 #cord:69 #coup:25 #cous:61 #cros:52 #cted:38 #ctio:27 #ctob:26
#ctua:27 #cual:-26 #cubr:50 #cuer:96 #cump:86 #cuna:47 #cupe:98 #cupo:-38 #cure:54 #dado:-35 #dars:40 #davi:-42
#days:-46 #deal:-35 #dear:28 #dece:30 #deja:37 #dema:-44 #deme:-30 #deri:29 #desd:86 #desh:-66 #desk:-32 #didn:-45
#dien:44 #dier:65 #dijo:-84 #dimo:-42 #dios:48 #dire:-107 #disc:25 #dito:53 #dled:77 #dles:-33 #doll:45 #domi:56
#done:176 #door:-42 #dore:29 #down:37 #dria:-29 #driv:-97 #drop:-41 #dshi:27 #dson:43 #dude:-30 #duen:-62 #eads:29
#eady:91 #eaks:35 #eals:48 #eand:-26 #eari:50 #eave:-31 #eblo:-34 #ecal:74 #ecau:33 #ecei:48 #eces:-25 #echa:78
#eche:-28 #echo:-46 #ecia:-31 #ecib:46 #ecie:101 #ecio:25 #ecke:48 #econ:51 #ecor:55 #ecte:35 #ecti:29 #edal:-29
#edan:56 #eded:66 #eden:-29 #edia:-29 #eede:66 #eeds:-35 #eeks:106 #eers:42 #eeze:54 #egan:-33 #egar:32 #egra:-34
#egre:-36 #egro:40 #egue:-49 #egui:27 #ehic:-25 #eipt:49 #eite:40 #ejan:38 #ejar:52 #ella:74 #elto:35 #emal:-52
#eman:46 #emas:-48 #embe:42 #embr:35 #emem:28 #emen:-25 #enan:26 #enas:44 #enca:60 #ench:-26 #enci:41 #ende:60
#engi:-42 #enim:31 #enla:-30 #enle:-28 #enos:43 #enou:-27 #ensa:-40 #entr:-31 #eocu:37 #eopl:40 #epar:83 #ephe:37
#epla:69 #epor:-33 #epos:-33 #erca:33 #erda:95 #eres:33 #eria:66 #erlo:-26 #erno:80 #eron:71 #erra:-46 #erse:35
#ersi:36 #erta:-25 #erto:-41 #erve:27 #ervi:62 #eryt:36 #esad:-51 #esan:38 #esda:52 #esde:86 #esia:-28 #esnt:31
#esol:91 #esor:26 #esos:-43 #esqu:42 #essu:-26 #este:-43 #estr:52 #estu:50 #eten:31 #eteo:-28 #etti:-33 #evam:33
#evas:75 #ever:-84 #eway:-59 #ewhe:39 #exic:31 #exti:35 #exto:-26 #fall:-48 #falt:50 #fami:-43 #favo:46 #febr:39
#fech:38 #fice:26 #file:33 #fill:100 #filt:79 #fine:59 #fini:52 #firm:-30 #firs:-28 #fitt:31 #fixe:108 #fixi:-34
#flas:54 #flat:42 #floo:-32 #flor:28 #flui:57 #form:26 #foun:-49 #four:95 #fres:149 #frid:42 #frie:86 #gado:-30
#galo:-62 #game:-45 #gara:-25 #garo:41 #gaso:28 #gast:-34 #gett:-42 #gged:108 #gine:-42 #gist:-74 #give:-33
#gles:-136 #glov:46 #gnme:88 #goin:-43 #golp:-28 #gone:-49 #good:60 #grad:55 #gran:29 #grat:31 #gret:-32 #grua:-47
#guad:29 #guat:-52 #guen:-38 #habi:-39 #hace:146 #hago:-60 #hain:48 #hair:-31 #half:27 #hanc:-26 #hand:40 #hani:42
#happ:-38 #harc:-27 #haro:45 #hasn:-40 #have:-105 #heat:27 #hech:68 #heck:55 #heel:-44 #heer:26 #hera:-44 #here:57
#hers:38 #hice:113 #hici:51 #hico:-26 #hiel:27 #hile:52 #himm:-29 #hing:-29 #hist:-51 #hizo:118 #hock:-29 #hoco:-28
#hola:-31 #hold:71 #hole:-33 #hone:30 #hood:-28 #hora:-89 #hose:81 #hous:37 #hurc:32 #iaja:29 #iate:-31 #iced:38
#icie:50 #icio:90 #icke:107 #idad:32 #iday:43 #ideo:68 #idnt:-45 #iejo:-33 #ield:27 #iend:67 #ient:71 #iera:46
#iern:49 #iero:41 #iert:-40 #ight:-34 #igle:-28 #ignm:88 #ille:95 #iltr:73 #imer:26 #imie:49 #imin:-30 #ince:34
#inds:27 #inea:68 #iner:65 #ines:-29 #ingo:56 #inis:52 #inne:26 #insp:127 #invi:42 #iona:27 #ione:-37 #iper:60
#ippe:-32 #irec:-37 #ires:41 #irme:-31 #irst:-28 #isan:-30 #isen:35 #ishe:62 #ismo:-83 #issu:62 #ista:-81 #iste:-31
#itad:44 #itar:31 #itas:-30 #itin:32 #itte:31 #itti:-41 #ivew:-51 #ixed:100 #ixin:-34 #jack:-27 #jalo:41 #jaro:68
#jefe:30 #jeje:32 #jias:35 #jump:-44 #june:-31 #just:35 #keep:-28 #kers:55 #keys:-36 #kids:-52 #kill:53 #kind:-29
#knoc:60 #lace:56 #laid:-26 #lamb:-28 #lame:44 #lamp:32 #lanc:118 #larm:-70 #lars:45 #lash:53 #last:78 #late:66
#lava:40 #lcom:65 #ldin:40 #ldnt:66 #leak:75 #leav:-50 #lega:40 #lego:-26 #lena:37 #leno:47 #lent:-35 #lers:-25
#lesi:-28 #lete:48 #leve:59 #libr:-25 #lied:-31 #lien:-26 #ligh:-39 #lign:88 #lina:-53 #line:83 #list:44 #llam:40
#llan:29 #llar:30 #lled:55 #llen:96 #ller:39 #llet:44 #llev:59 #loca:-42 #lock:-52 #lone:28 #long:37 #lood:-29
#look:29 #lopp:28 #lori:28 #lpet:-28 #lrea:138 #lses:-48 #lsew:30 #ltro:73 #lube:96 #luce:-27 #luga:-31 #luid:57
#lvie:-25 #main:26 #mala:-52 #mana:39 #mane:60 #mani:127 #mant:27 #mart:32 #mate:36 #mayo:43 #mber:-46 #mbia:59
#mbie:46 #mbio:-65 #mech:42 #medi:-34 #memb:28 #mens:-36 #merc:34 #meti:94 #mexi:31 #mien:87 #mily:-32 #mind:-40
#ming:31 #mira:-31 #mire:-37 #mism:-93 #mita:44 #mobi:36 #mond:50 #mone:28 #more:37 #moth:-72 #moto:-48 #moun:32
#move:-47 #mpan:29 #mple:61 #mpli:79 #mpra:-41 #mpue:32 #must:-43 #nage:-27 #nanc:26 #naro:37 #nato:-36 #navi:28
#ncar:72 #ncea:29 #nced:54 #nche:-42 #ncia:26 #ncle:65 #ndar:-40 #nday:78 #nded:105 #nden:-40 #nder:29 #ndie:76
#ndit:53 #ndle:71 #ndro:44 #ndsh:27 #ndso:43 #near:36 #neci:42 #need:52 #negr:-25 #neja:41 #nemo:33 #neph:37 #nera:78
#ness:-29 #nest:52 #neve:-41 #next:36 #nfia:-26 #nged:97 #nger:60 #ngin:-59 #nico:40 #niet:-38 #nigh:44 #nimi:31
#ning:-31 #nish:53 #nito:66 #nive:36 #nkin:-36 #nmen:88 #nock:60 #noth:31 #noug:-27 #novi:41 #nsaj:-37 #nspe:127
#ntan:-30 #ntas:59 #ntem:34 #nten:71 #ntes:59 #ntre:-27 #nuev:254 #numb:-110 #nume:-43 #nunc:-39 #nute:29 #nuts:26
#nvie:45 #oads:25 #obar:-28 #ober:26 #obil:36 #obra:-27 #obri:-28 #ocal:-28 #ocar:-35 #oche:-31 #ocke:72 #ocup:64
#odav:-42 #odia:33 #oesn:31 #offi:26 #oiga:26 #oils:28 #oked:50 #oldi:58 #olid:33 #olin:28 #olla:45 #olpe:-28
#olvi:30 #oman:65 #omas:31 #omat:95 #omet:-28 #omin:79 #ompl:44 #ompu:54 #onar:28 #onda:50 #ones:103 #oney:66
#onge:59 #onke:29 #onse:28 #onte:44 #ooke:50 #ools:91 #oper:-30 #ople:40 #oppe:61 #oppi:-26 #oppy:28 #oras:-26
#orda:39 #ords:55 #ores:30 #orid:28 #orke:39 #orki:-37 #orks:-37 #orqu:44 #orry:29 #orte:66 #osse:68 #otal:-26
#otat:38 #oted:35 #otor:80 #otra:-31 #otto:-27 #ould:-57 #ount:38 #oupo:35 #ours:31 #ouse:34 #ousi:61 #outu:100
#ouve:33 #oved:-37 #over:93 #owed:35 #oxim:47 #pack:25 #pads:154 #paid:42 #papa:32 #paqu:32 #pare:-48 #part:49
#pasa:84 #pase:70 #past:79 #pecc:53 #pect:74 #peda:-38 #pedi:-53 #pena:57 #pend:38 #peop:40 #perm:28 #pers:25
#phew:37 #phon:-39 #pide:-38 #pill:-25 #ping:-33 #plac:38 #plea:39 #plet:58 #plug:107 #plum:40 #pone:-66 #pool:48
#porq:48 #poss:-34 #pour:30 #pped:106 #ppin:-27 #ppre:-31 #prec:-47 #preo:37 #pres:-30 #pril:25 #prim:46 #prox:46
#pueb:-34 #pued:-102 #puer:-25 #pues:55 #pull:33 #puse:42 #pusi:26 #qued:146 #quee:61 #quen:44 #quer:28 #quic:70
#quie:-33 #quin:36 #quit:30 #rade:-41 #rado:63 #radu:43 #rage:-35 #raia:-26 #raig:69 #rand:80 #raro:-92 #rash:33
#rati:28 #ratt:66 #rdan:75 #rdar:36 #rday:78 #rder:-25 #read:72 #reca:94 #recc:-37 #rece:31 #reci:112 #reco:46
#reet:36 #rega:-47 #regr:-36 #renc:-33 #rend:-30 #rene:99 #renl:-28 #reno:36 #reoc:37 #repa:71 #repl:79 #repo:-66
#resa:34 #resc:27 #resh:123 #reso:94 #ress:-26 #rest:-52 #rial:31 #rica:-26 #rida:71 #rien:85 #rifa:37 #righ:-91
#rima:-30 #rime:26 #rimo:50 #ring:64 #rino:-28 #ripp:-33 #rive:-93 #rmer:34 #rnat:-36 #road:35 #roba:-42 #roma:44
#rong:-60 #ross:52 #rota:66 #roth:79 #roto:98 #roun:34 #roxi:47 #rque:45 #rran:-27 #rrar:-32 #rrow:25 #rted:56
#rten:-38 #rubb:73 #ruck:30 #runk:-38 #rvic:62 #ryth:36 #sada:52 #sado:49 #said:-68 #saje:-37 #sali:65 #same:-25
#sant:28 #saro:27 #satu:44 #sday:55 #seco:51 #seda:66 #seen:89 #seis:32 #sema:44 #senm:35 #seri:-35 #serv:41 #sett:40
#sewh:30 #shed:29 #shie:27 #shim:-29 #shoc:-29 #shoe:65 #side:49 #sinc:40 #sine:-29 #sing:-41 #sion:50 #sirv:-42
#sist:82 #sito:28 #sits:-41 #sity:42 #sked:43 #sket:32 #skin:25 #slop:28 #smog:50 #sobr:-44 #soli:51 #solo:-146
#solv:62 #sona:-33 #sorr:32 #sort:63 #spec:127 #spit:-25 #sque:60 #squi:40 #ssed:114 #sses:-56 #ssue:62 #ssur:-26
#stab:49 #stas:-68 #stat:31 #sted:51 #stem:51 #ster:41 #stic:110 #stop:-80 #stor:-79 #stos:-25 #stoy:-37 #stra:68
#stre:87 #stri:-32 #stud:55 #sueg:31 #suel:59 #sund:28 #supe:32 #sure:-40 #swap:42 #taba:34 #tala:-25 #tale:-29
#tamb:-27 #tant:-35 #tare:84 #tart:28 #tche:85 #tean:-25 #tech:36 #teme:26 #tena:26 #tenc:49 #tend:101 #teni:30
#tenm:-33 #tera:27 #terd:35 #tere:33 #teri:59 #tery:27 #that:69 #them:65 #then:-27 #ther:48 #thes:-25 #they:59
#thin:-51 #thos:51 #tick:125 #tiem:-25 #till:-75 #tima:-34 #time:-112 #timi:-28 #ting:-38 #tion:78 #tira:-26
#titu:-28 #tobe:26 #toca:-48 #todo:73 #took:-25 #topp:34 #tors:106 #tota:-26 #trad:-54 #trae:68 #trai:29 #trea:-29
#tren:52 #tres:-26 #trip:30 #tron:-25 #truc:30 #tten:50 #ttin:-74 #ttle:81 #ttom:-27 #tual:27 #tube:100 #tude:28
#turd:44 #turn:-79 #tuvo:39 #twic:-38 #uado:29 #uall:27 #uary:48 #uatr:31 #ubbe:73 #ucha:25 #ucks:46 #uddy:46
#uden:28 #ueak:-37 #uebl:-34 #ueda:-33 #uede:-43 #uedo:119 #ueez:53 #uegr:31 #uelo:56 #uelt:49 #ueno:-56 #uerd:96
#ueri:28 #uert:-26 #uesd:45 #uest:62 #ueva:137 #uevo:93 #ugar:-31 #ugge:79 #uick:70 #uier:-36 #uina:43 #uite:29
#ujia:30 #uldn:66 #ulle:45 #ulsa:39 #umbe:-82 #umbr:-25 #umer:-43 #umpe:-30 #umpl:86 #unad:39 #unca:-39 #uncl:65
#unda:28 #unde:53 #undr:62 #univ:36 #unte:68 #uper:32 #urch:32 #urda:44 #ured:93 #urge:-26 #urgi:36 #urno:-25
#usca:25 #usie:26 #usqu:35 #uste:32 #usto:-44 #utes:28 #utor:31 #vamo:29 #vece:-41 #veci:29 #vehi:-25 #vend:-101
#vent:-64 #vere:28 #vewa:-51 #vibr:40 #vice:-42 #vici:104 #vida:37 #vide:60 #viej:-44 #ving:-50 #vino:42 #visa:-26
#vise:65 #volv:-34 #vuel:28 #wait:29 #want:-68 #wapp:70 #wear:37 #week:111 #went:52 #whee:-44 #whil:52 #whys:45
#wice:-38 #wife:-27 #will:-55 #wint:-47 #wond:28 #wont:36 #woul:-66 #wren:-26 #wron:-60 #xico:31 #ximo:34 #xing:-34
#xtin:36 #yard:-29 #yeah:62 #year:-54 #yern:33 #yest:35 #ying:-63 #yonk:29 #youd:29 #yout:100 #youv:33
%again_later:29 %again_later%agree:83 %again_later%bad:71 %again_later%bring:-81 %again_later%busy:-66
%again_later%elsewhere:92 %again_later%fails:-33 %again_later%gone_car:-25 %again_later%how_long:36
%again_later%leak:25 %again_later%leave_me:32 %again_later%lift:31 %again_later%money:27 %again_later%noise:-45
%again_later%odometer:-56 %again_later%on_way:-44 %again_later%pay_day:-56 %again_later%place:115
%again_later%refuse:32 %again_later%staff:-42 %again_later%who:48 %again_later%wrong_one:53 %agree:-124
%agree%away:80 %agree%car:84 %agree%car_part:144 %agree%doubt:-27 %agree%elsewhere:27 %agree%family:-49
%agree%how_long:-25 %agree%leave_me:35 %agree%message:26 %agree%odometer:-111 %agree%pay_day:72 %agree%phone:43
%agree%season:80 %agree%thanks:32 %away:-25 %away%bring:54 %away%car_part:30 %away%do_it:38 %away%gone_car:-49
%away%money:30 %away%on_way:-49 %away%opening:-48 %away%phone:39 %away%question:53 %away%season:41
%away%smoke_smell:56 %away%staff:43 %away%wrong_one:53 %bad:-67 %bad%bring:28 %bad%busy:-54 %bad%call_off:27
%bad%car:-25 %bad%car_part:-78 %bad%do_it:-57 %bad%shift_it:84 %bad%staff:-107 %bad%thanks:-39 %bring:-52
%bring%busy:25 %bring%car_part:84 %bring%elsewhere:-56 %bring%family:128 %bring%how_long:-29 %bring%leak:51
%bring%lift:-32 %bring%money:-83 %bring%noise:-62 %bring%odometer:45 %bring%on_way:44 %bring%phone:44 %bring%place:59
%bring%question:59 %bring%refuse:66 %bring%season:-36 %bring%staff:51 %bring%start_again:-47 %bring%thanks:54
%bring%who:39 %busy%call_off:102 %busy%do_it:47 %busy%elsewhere:28 %busy%family:72 %busy%leak:-27 %busy%money:50
%busy%odometer:64 %busy%place:34 %busy%question:-58 %busy%staff:56 %busy%thanks:46 %call_off:83 %call_off%car:-73
%call_off%car_part:110 %call_off%do_it:58 %call_off%doubt:-30 %call_off%elsewhere:78 %call_off%fails:75
%call_off%family:99 %call_off%gone_car:-52 %call_off%how_long:-63 %call_off%leak:29 %call_off%leave_me:-81
%call_off%message:65 %call_off%money:78 %call_off%odometer:52 %call_off%on_way:-66 %call_off%opening:-38
%call_off%pay_day:48 %call_off%phone:-71 %call_off%place:53 %call_off%refuse:-45 %call_off%season:-90
%call_off%shake:61 %call_off%shift_it:60 %call_off%smoke_smell:-55 %call_off%staff:-32 %call_off%start_again:-36
%call_off%thanks:86 %call_off%who:84 %car%do_it:-154 %car%fails:-63 %car%family:-92 %car%gone_car:-79 %car%leak:36
%car%lift:-42 %car%message:37 %car%money:35 %car%odometer:28 %car%on_way:-35 %car%pay_day:56 %car%shift_it:-74
%car%staff:56 %car%thanks:74 %car%who:-27 %car%wrong_one:-25 %car_part:91 %car_part%do_it:94 %car_part%doubt:57
%car_part%elsewhere:81 %car_part%fails:-90 %car_part%family:45 %car_part%gone_car:258 %car_part%meaning:37
%car_part%noise:53 %car_part%odometer:67 %car_part%on_way:-41 %car_part%pay_day:-69 %car_part%phone:-57
%car_part%place:-26 %car_part%question:-44 %car_part%refuse:-116 %car_part%season:88 %car_part%shake:-29
%car_part%shift_it:-41 %car_part%smoke_smell:-27 %car_part%thanks:-59 %car_part%who:-57 %car_part%wrong_one:140
%do_it:428 %do_it%doubt:-45 %do_it%elsewhere:136 %do_it%fails:30 %do_it%family:336 %do_it%gone_car:105
%do_it%how_long:-69 %do_it%lift:38 %do_it%message:56 %do_it%odometer:83 %do_it%on_way:62 %do_it%opening:28
%do_it%pay_day:114 %do_it%place:-29 %do_it%refuse:43 %do_it%season:66 %do_it%smoke_smell:-35 %do_it%staff:60
%do_it%thanks:131 %doubt:-83 %doubt%elsewhere:25 %doubt%noise:-31 %doubt%odometer:-36 %doubt%refuse:-43
%doubt%shift_it:26 %elsewhere:207 %elsewhere%fails:107 %elsewhere%gone_car:-90 %elsewhere%how_long:40
%elsewhere%leak:-46 %elsewhere%leave_me:68 %elsewhere%lift:79 %elsewhere%money:67 %elsewhere%odometer:-32
%elsewhere%on_way:36 %elsewhere%phone:56 %elsewhere%place:-37 %elsewhere%question:54 %elsewhere%refuse:-38
%elsewhere%season:-46 %elsewhere%shift_it:-55 %elsewhere%staff:26 %elsewhere%start_again:-32 %elsewhere%thanks:-49
%fails:-56 %fails%family:65 %fails%gone_car:-49 %fails%message:25 %fails%odometer:-41 %fails%on_way:25
%fails%refuse:43 %fails%season:26 %fails%shift_it:55 %fails%thanks:38 %fails%who:29 %fails%wrong_one:-113 %family:66
%family%gone_car:-29 %family%how_long:31 %family%money:-46 %family%noise:31 %family%on_way:-36 %family%pay_day:-31
%family%question:-93 %family%refuse:61 %family%shift_it:66 %family%smoke_smell:34 %family%staff:-32 %family%thanks:41
%family%who:-28 %family%wrong_one:-58 %gone_car:-164 %gone_car%leave_me:39 %gone_car%message:-26 %gone_car%noise:39
%gone_car%odometer:-65 %gone_car%on_way:34 %gone_car%opening:-58 %gone_car%place:-60 %gone_car%question:49
%gone_car%refuse:-30 %gone_car%staff:-32 %gone_car%start_again:29 %gone_car%thanks:36 %gone_car%wrong_one:103
%how_long:-31 %how_long%leave_me:35 %how_long%money:40 %how_long%on_way:-50 %how_long%opening:39 %how_long%place:72
%how_long%refuse:-30 %how_long%thanks:-45 %leak%money:31 %leak%odometer:-25 %leak%opening:26 %leak%phone:36
%leak%place:44 %leak%question:32 %leak%refuse:71 %leak%wrong_one:53 %leave_me:-52 %leave_me%machine:31
%leave_me%odometer:-34 %leave_me%refuse:-38 %leave_me%shift_it:-26 %leave_me%staff:48 %lift%on_way:-59
%lift%pay_day:-37 %lift%place:32 %lift%refuse:66 %lift%shift_it:34 %meaning%phone:28 %meaning%wrong_one:34
%message:-34 %message%odometer:-26 %message%thanks:67 %message%wrong_one:-27 %money%on_way:43 %money%pay_day:-41
%money%place:36 %money%question:65 %money%shift_it:-25 %money%staff:70 %money%wrong_one:79 %noise:-40
%noise%question:34 %noise%refuse:-33 %noise%wrong_one:36 %odometer:-36 %odometer%on_way:31 %odometer%pay_day:-34
%odometer%place:-30 %odometer%season:38 %odometer%staff:27 %odometer%thanks:35 %odometer%who:-25
%odometer%wrong_one:-69 %on_way%pay_day:36 %on_way%place:-44 %on_way%question:30 %on_way%refuse:86
%on_way%shift_it:-26 %on_way%staff:77 %on_way%wrong_one:100 %opening:-34 %opening%wrong_one:-30 %pay_day:50
%pay_day%question:-43 %pay_day%staff:35 %pay_day%wrong_one:38 %phone:-52 %phone%staff:-47 %place%refuse:40
%place%season:42 %place%shift_it:74 %place%wrong_one:86 %question:-112 %question%season:-42 %question%start_again:-51
%question%wrong_one:48 %refuse:-73 %refuse%season:55 %refuse%shake:50 %refuse%shift_it:-34 %refuse%smoke_smell:-32
%refuse%start_again:-25 %refuse%thanks:38 %refuse%wrong_one:-91 %season:52 %season%staff:-67 %shake%wrong_one:-27
%shift_it:-54 %shift_it%staff:-74 %shift_it%start_again:-32 %shift_it%wrong_one:-144 %smoke_smell%start_again:-31
%smoke_smell%wrong_one:54 %staff:31 %staff%start_again:-32 %staff%thanks:-38 %start_again:-66
%start_again%wrong_one:29 %thanks:68 %who:-31 %who%wrong_one:52 %wrong_one:139 @?:-79 @after_visit:-266 @confirm:-136
@confirm_stop:-31 @day:-46 @nothing:-46 @odometer:-114 @offers:-94 @time:-57 @times:-43 ^_a:-58 ^_about:-53
^_acabo:41 ^_after:-30 ^_all:40 ^_already:114 ^_another:34 ^_are:-42 ^_ayer:-48 ^_bank:-58 ^_both:35 ^_brakes:-29
^_cada:-34 ^_can:-60 ^_changed:28 ^_check:-42 ^_cheers:-30 ^_como:36 ^_cuanto:-35 ^_deme:-25 ^_dios:-38 ^_do:-121
^_does:-31 ^_done:73 ^_en:-62 ^_enough:-28 ^_esa:38 ^_eso:72 ^_esta:68 ^_este:-32 ^_filled:35 ^_fui:92 ^_fyi:40
^_going:-41 ^_had:153 ^_have:-30 ^_he:-36 ^_hey:-56 ^_how:-47 ^_id:-32 ^_if:-42 ^_ill:-51 ^_im:-62 ^_in:-53 ^_is:-139
^_it:40 ^_jueves:-40 ^_las:74 ^_last:87 ^_le:57 ^_lease:-32 ^_lo:-80 ^_los:31 ^_mi:-44 ^_mil:-32 ^_my:-53 ^_no:-47
^_not:25 ^_oil:54 ^_otra:-44 ^_please:-26 ^_pues:-41 ^_put:-70 ^_que:-30 ^_scratch:28 ^_se:-100 ^_see:39 ^_she:50
^_si:-53 ^_sold:-44 ^_somebody:55 ^_someone:66 ^_still:-37 ^_stop:-38 ^_tengo:-34 ^_thank:46 ^_thanks:-66 ^_the:31
^_they:106 ^_this:-31 ^_those:100 ^_tire:52 ^_todo:33 ^_too:55 ^_took:84 ^_trae:68 ^_truck:53 ^_was:58 ^_were:-68
^_what:-110 ^_whatever:33 ^_when:-55 ^_which:-30 ^_why:-45 ^_y:39 ^_ya:56 ^_yep:30 ^_yes:-25 ^_yo:-119 ^_you:-35
^_your:-31 a__and:39 a__at:31 a__back:45 a__battery:32 a__belt:26 a__casa:44 a__el:-61 a__en:-53 a__for:-36
a__from:48 a__iglesia:-36 a__mi:-26 a__no:-34 a__now:40 a__on:-71 a__one:49 a__que:44 a__se:32 a__yo:-34 a_boat:-32
a_buddy:25 a_charge:-26 a_como:-44 a_coupon:39 a_dar:34 a_dios:34 a_eso:27 a_favor:43 a_guy:-57 a_hacer:-38 a_la:-50
a_las:-27 a_mechanic:-52 a_mi:-58 a_month:-48 a_new:67 a_person:29 a_real:31 a_rotation:29 a_while:42 able:25
able_to:25 about:-30 ac:28 acaba:-25 acaban:54 acaban_de:52 acabo:72 acabo_de:31 aceite:40 aceite_$:-148 aceite_el:79
aceite_en:-54 across:-51 across_the:-31 actually:27 again_$:-28 ago:57 ahi:41 ahi_con:31 ahora:-38 al:-33 al_cien:37
al_frenar:-26 alarma:-70 algo:-30 alignment:88 alineacion_$:-28 all:67 all_$:25 all__for:-25 all__my:-44 all_four:87
all_of:-30 all_over:-49 all_that:-63 already:138 already__it:48 already_got:-33 alternator:-36 amanecio:42 amor:-39
an:-47 an_appointment:-110 and__had:-29 and__need:38 and__not:-26 and__so:-28 and__was:-25 and__you:-37 and_a:46
and_all:37 and_i:-42 and_it:-93 and_no:39 and_thank:-31 and_the:-25 and_took:-44 and_you:-52 ando:35 ando_con:42
anoche:33 another:42 another_$:-27 another_day:-26 another_shop:103 antes:46 antes_de:86 anule:35 any:-65
any_morning:-25 apenas:50 appointment_$:65 appointment_for:49 appreciate:-32 appreciate_it:-32 april:25 april_$:27
aqui:45 are:57 are__to:25 are_on:89 are_you:-32 arreglo_$:-31 arreglo_mi:39 as:114 as__as:-27 as_a:78 as_long:-29
as_of:79 asi:-33 ask:-42 asked:43 at:34 at_$:-42 at__and:-25 at__other:31 at_my:111 at_on:-44 at_the:107 at_work:41
atendieron:37 atras:-32 avisenme:36 away:-27 ayer:187 ayer_$:55 ayer_me:41 back_$:37 back_on:-41 baja:-57 bank:-73
barato:30 base:55 bateria:76 battery:47 be:-65 be__for:-30 be__to:46 be_coming:73 be_done:-67 be_the:48 beat:143
beat__to:176 beat_you:104 bebe:27 because:33 been:90 been__to:64 been_done:87 been_fixed:31 before_$:-26
before_the:55 belt:26 bien_$:48 bit:34 blanca__la:27 boat:-32 bomba_de:36 book_$:42 book_me:-34 bota:-34 bottom:-27
brakes:31 brand:72 brand_new:72 bro:43 brothers:68 bucks:44 bucks_and:51 buen:-27 bujias:35 bulb:51 busca:25
business:-29 but:33 but__it:-38 but_how:28 but_i:29 but_ill:34 but_that:30 by:132 by_a:29 by_my:76 cada:-27 cafe:-36
calienta:-31 call:-36 called__back:29 called_me:26 cambia:-42 cambiado:-31 cambie:71 cambie__una:-52 cambie_de:-47
cambie_el:27 cambie_por:-140 cambie_yo:76 cambio:-42 cambio__aceite:-49 cambio_el:-39 came:141 came__the:68
came__yesterday:-44 came_on:-87 can:-52 can__it:-25 can__texting:34 can_you:-51 cancel_please:39 cancele__favor:42
cancele_por:41 cancelen:26 cancelo:43 cant:-28 cap:-26 car:-97 car_$:-36 care:125 care_of:131 carro:-50 carro_$:-74
casa_$:-76 casi:-41 cel:-28 cerraron:-36 chain:48 chance:-26 change:-66 changed:97 changed_$:-58 changed__mind:-51
changed_it:113 changed_my:-85 changed_on:29 changed_the:87 charco:-27 charge:-26 charge__the:-44 charged:37
check_$:27 check__in:-42 checked:58 cheers:26 cheers_$:27 cheque:-28 cheque_$:-28 chico:-26 chilla:34 choco:-28
church:32 church_$:37 cien:37 cierto:-27 clock:-56 cobraron:-51 cobre:28 cobre_$:33 cochera:-44 cold:39 cold_$:49
come:-33 come__the:33 come__to:27 como:34 como__mi:41 como__se:-31 como_el:-61 compre:25 con:61 con__dueno:-34
con__el:26 con__frenos:-44 con_los:-26 con_ustedes:58 cool:58 cool_$:39 could:-53 couldnt:39 coupon:36 cousin:40
covered:27 cual:-37 cuando__en:41 cuando_cobre:33 cuando_me:-27 cuanto_por:66 cuanto_se:-50 cuatro:31 cuatro_$:44
dad:27 dan:-33 day_after:32 days_$:-47 de__bateria:-27 de__con:28 de__del:57 de__dos:83 de__el:66 de__le:53
de__llantas:-37 de__mi:25 de__no:-34 de__porque:37 de__que:28 de__taller:43 de__y:-33 de__ya:-95 de_aceite:-57
de_agua:30 de_ahi:27 de_el:-34 de_eso:25 de_hacer:94 de_la:32 de_las:-50 de_lo:40 de_manana:43 de_nuevo:-75
de_otro:46 de_que:38 deal:-50 deal_$:-31 dealer:39 dealers:-34 dear:28 decir:-28 dejaron:68 dejo_de:36 del:87
demas:-37 desde:86 desde__le:34 desde_ayer:-36 desde_el:-26 desk:-32 despues_$:-29 despues__que:36 despues_de:33
devolvieron:-25 di:106 dia:-41 did:209 did__for:68 did__get:-25 did__in:153 did__move:-32 did__myself:25 did__oil:50
did_i:-47 did_it:339 did_my:-128 did_that:146 did_the:60 did_you:-163 didnt:-45 dieron:31 dijo:-84 dio:-28 dios:47
dios_$:54 direccion:-37 do__get:25 do__need:-52 do__own:-27 do__work:-34 do_it:114 do_my:-27 do_they:-54 does:-35
does__take:-32 does_all:26 does_it:-38 doesnt:31 dog:-29 doing_the:42 dollars:45 domingo:56 domingo_$:38 done:182
done_$:-36 done__a:-47 done__my:25 done__the:70 done_already:39 done_at:52 done_elsewhere:40 done_in:47 done_last:43
done_with:-89 dont_need:29 door:-44 dos_semanas:55 dos_veces:-38 down:55 down_$:36 down__street:78 down_the:70
drive:-26 driveway:-51 driveway_$:-37 dude:-30 dueno:-62 dueno_$:-51 eche:-38 echo:-108 el:70 el__a:-26 el__ano:47
el__de:-53 el__el:31 el__era:38 el__ese:-32 el__esta:-25 el__la:51 el__lo:-91 el__mes:-41 el__no:32 el__pasado:55
el__salio:31 el__ya:100 el_aceite:44 el_carro:63 el_cheque:-28 el_de:57 el_domingo:55 el_driveway:25 el_filtro:36
el_lunes:25 el_martes:32 el_mecanico:-49 el_mes:26 el_mismo:-73 el_proximo:27 el_recibo:68 el_ruido:-28 el_sabado:32
el_trabajo:25 el_viernes:39 else_$:-73 elses:-39 elsewhere:30 elsewhere_$:-73 en:70 en_$:-29 en__casa:-37
en__cochera:-32 en__cuando:39 en__driveway:25 en__esquina:25 en__gasolinera:91 en__lado:51 en__lista:-41
en__mismo:-34 en__parte:38 en__que:-43 en__sale:28 en__se:-64 en__taller:59 en__trabajo:39 en__y:-35 en_cuanto:-32
en_el:-103 en_eso:30 en_la:-33 en_lo:-41 en_mayo:26 en_mexico:40 en_mil:48 en_otra:39 en_otro:132 end:-28 ended:34
engine:-42 engine__on:-42 engine_light:-26 enough:-27 era:61 es:-95 es__el:-39 es_gratis:26 es_mecanico:-58 esa:117
esa__ya:37 ese_$:39 ese__lo:-62 ese__se:48 ese_servicio:85 ese_ya:-91 eso:254 eso_$:51 eso__el:52 eso__lo:66
eso__que:26 eso__se:32 eso_con:55 eso_en:-29 eso_se:28 eso_ya:99 esos:-43 esposo_$:38 esquina:42 esta:43 esta_$:53
esta__el:-34 esta__no:44 esta_en:-64 esta_hecho:44 esta_semana:-30 estan:36 estan__el:44 estas:-82 este:-74
este_cel:-26 este_numero:-29 estoy:-37 even:25 ever:-45 everything:36 everything_$:55 ex:-79 falta:48 family:-32
favor:46 fecha:38 fecha_$:39 fell:-60 fella:88 fella__the:88 file:33 filled:100 filled_it:46 filtro:73 fine:59
fine_$:81 finished:62 firme:-31 first:-28 fix:-129 fix_it:-86 fixed:108 fixed_it:72 fixing:-34 flat:42 florida:28
fluid:30 fluid_is:33 for_$:-47 for__at:42 for__i:-25 for__oil:-31 for_all:-25 for_it:31 for_me:94 for_my:-33
for_the:53 found:-49 four:99 four_$:65 frenar:-26 frenos:40 frenos_$:-43 frenos_ya:44 fresh:123 friday:42 friday_$:29
friday_morning:27 friend:79 from__list:28 fue:70 fue_lo:33 fui:136 fyi:40 galon:-62 game:-34 garage:-30 garage_$:-38
gas:-31 gasolina:-51 gasolinera:78 gasolinera_$:61 get:-130 get__done:-81 get_for:25 get_that:-76 get_your:31
getting:-42 give:-33 go:-33 going:-43 golpeteo:-28 goma:-35 gomas:47 gone:-49 good:67 good_to:31 got:45 got_$:-27
got__done:82 got__guy:-52 got__new:72 got__on:63 got__wait:-26 got_a:-40 got_any:-28 got_it:28 got_my:27 got_rid:-27
got_that:40 got_the:33 got_to:-48 goteando:-25 gracias_$:-27 gracias__dios:34 gracias__lo:40 gracias__todo:-33
gracias_a:64 gracias_por:26 grandson:43 gratis:32 grua:-47 guatemala:-52 gusto:-26 guy:75 guy_$:-47 hace:70
hace_falta:28 hace_ruido:30 hace_un:30 hacen:-40 hacer:110 hacer_$:59 hacer_en:112 hacerlo:-26 had:257 had__done:49
had_a:28 had_it:133 had_my:70 had_that:72 had_the:31 had_this:57 had_to:-109 hago:-60 half:30 handled:77 handles:-33
has__now:-26 has_it:-39 hasnt:-40 hasta_la:41 have:-26 have__got:-47 have__it:85 have_an:-110 have_it:-27 havent:-79
he:-102 he__the:-36 heads:29 heads_up:29 hecho:76 her:90 here:29 hermano_$:-39 hes:-40 hey:-50 hice:127 hice_en:29
hice_yo:40 hicieron_el:54 hicieron_en:36 hicieron_todo:35 hijo_me:-29 hit:-38 hizo:118 hizo_el:69 hizo_tarde:-27
hola:-31 hold__spot:32 hold_my:32 holding:58 hood:-28 hora:-32 hose:30 house:26 house_$:27 how:-36 how__of:27
how_much:-33 hoy:28 hoy_$:41 husband__it:32 i__a:25 i__already:-63 i__be:57 i__done:104 i__down:55 i__for:28
i__get:-32 i__got:-36 i__it:87 i__need:66 i__see:-31 i__that:-60 i__the:67 i__there:62 i__to:-48 i__wait:43
i__what:28 i_bought:48 i_can:-25 i_couldnt:44 i_do:-31 i_got:-30 i_had:109 i_have:83 i_need:-61 i_paid:-45
i_should:-47 i_sold:31 i_still:45 i_want:-31 i_was:43 i_wont:68 iba:-26 iba_a:-26 id:-61 if:-114 if_i:-84 iglesia:-28
iglesia_$:-39 ill:-78 ill__for:33 ill__it:-61 ill__on:-32 ill__the:33 im:-129 im__in:-28 im_a:-32 im_done:-59 in:143
in__car:-32 in__garage:-72 in__i:56 in__month:-43 in__morning:-28 in__new:-32 in__parking:26 in__that:43
in__weeks:-25 in_a:-64 in_april:28 in_for:26 in_may:36 in_my:29 in_october:28 in_spring:-25 inspeccion:53
inspection:57 invierno:45 ir_$:-28 is:-52 is__as:25 is__done:63 is__in:-80 is__inspection:-26 is__my:-32 is__new:-28
is__shop:-32 is__to:26 is_a:-59 is_been:119 is_done:61 is_fixed:41 is_got:-25 is_his:-45 is_in:58 is_it:-60 is_my:-33
is_nuts:26 is_that:-52 is_there:-38 is_your:31 it:72 it_$:35 it__a:-62 it__after:46 it__already:51 it__and:-46
it__be:28 it__been:59 it__by:35 it__day:27 it__done:26 it__for:-80 it__good:53 it__his:-26 it__i:-34 it__in:97
it__is:57 it__last:35 it__me:-40 it__morning:54 it__my:68 it__night:25 it__no:37 it__same:28 it__to:-31
it__totaled:-26 it__week:31 it__you:72 it_already:-76 it_and:-32 it_at:31 it_be:-39 it_done:-28 it_down:-31
it_fixed:59 it_for:32 it_in:71 it_is:98 it_looked:70 it_myself:-59 it_now:-38 it_on:-61 it_sunday:66 it_take:-31
it_thanks:-33 it_that:55 it_the:33 it_this:57 it_thursday:-28 it_under:32 it_was:31 it_went:-44 it_would:48 jaja_$:32
january_$:43 jefe:30 jeje:32 jueves_$:33 jug:39 june:-31 just:56 just__a:-25 just__it:54 just__that:91 just_had:-37
keys:-36 kid:-46 kids:-50 kill:52 knocked:60 knocked__out:60 la__al:-29 la__anda:30 la__con:57 la__de:-31 la__es:62
la__me:37 la__o:-26 la__pasada:64 la__por:-79 la__que:-37 la__se:-27 la__semana:-34 la__vez:-25 la__y:55 la__ya:69
la_alarma:-70 la_bateria:38 la_casa:-31 la_cochera:-39 la_direccion:-36 la_esquina:42 la_fuga:26 la_gasolinera:49
la_goma:-35 la_grua:-47 la_iglesia:-28 la_inspeccion:57 la_lista:-53 la_llantera:54 la_manana:26 la_puerta:-26
la_semana:36 lado_$:-27 lado_y:44 laid:-26 las:111 las_$:-39 las__el:60 las__en:52 las__lo:-27 las__se:30 las__si:39
las__y:41 las__ya:56 las__yo:59 las_gomas:29 last:85 last__so:29 last__why:-47 last__you:-82 last_month:66
last_night:42 last_time:-81 last_week:56 last_year:-30 late:42 law__it:36 le:88 le__a:-28 le__cuando:32 le__eso:30
le__las:32 le__los:26 le__nada:-42 le__servicio:34 le__su:-29 le__todo:44 le_cambiaron:26 le_cambie:105
le_cambio:-104 le_di:61 le_eche:-27 le_echo:-72 le_gusto:-26 le_hice:45 le_hicieron:26 le_puse:34 leak_is:33 leaks:37
lease:-42 lease_is:-41 leave:-26 les:-40 les__que:49 lied:-31 lied_to:-31 light:-84 light__on:-45 light_came:-45
lights__on:-36 like_to:-25 line:-45 list:106 lista:-69 lista_$:-56 listo:36 llame:46 llanta:-37 llantas:60
llantas_$:-28 llegaron:46 llego:-26 lleno:65 lleve:63 lleve__otro:59 lleve_con:37 llevo__grua:-51 llevo__lunes:35
llevo_el:67 llevo_la:-51 lo:137 lo__a:-48 lo__ahi:26 lo__antes:39 lo__asi:-30 lo__ayer:-27 lo__de:85 lo__el:52
lo__en:127 lo__gracias:-29 lo__hace:25 lo__hacer:84 lo__listo:75 lo__lo:-56 lo__me:-66 lo__mi:-41 lo__no:-39
lo__para:-25 lo__por:-87 lo__si:-41 lo__un:27 lo__ustedes:45 lo__y:45 lo__yo:61 lo_arreglaron:36 lo_arreglo:-49
lo_cambiaron:38 lo_cambie:-25 lo_dan:-32 lo_dejaron:84 lo_demas:-37 lo_hace:-68 lo_hago:-61 lo_hice:147
lo_hicieron:102 lo_hizo:148 lo_llevo:-46 lo_mande:80 lo_mismo:-42 lo_robaron:-29 lo_tiene:-70 lo_traigo:50
lo_vendi:-69 lo_vendimos:-27 lo_voy:-38 local:-28 lol:-31 lol_$:35 long__the:-32 long_as:-29 longer:60
longer__the:-44 looked:50 los:72 los__a:-27 los__por:32 los__se:26 los_dos:28 los_frenos:36 lot:59 love:-37 lube:96
lugar:-31 mal:-105 mal_$:-29 mal_la:-41 man:-42 manager:-27 manana_y:-34 mande:78 manden:-29 manden_mas:-25 mano:25
mantenimiento:31 marido:29 martes:32 martes_no:26 mas_barato:46 may_$:33 mayo:26 me__already:-25 me__arreglo:104
me__cambia:-29 me__cambio:85 me__dan:-32 me__dejaron:55 me__eso:31 me__favor:43 me__hace:-62 me__hicieron:111
me__hizo:96 me__in:55 me__las:27 me__mal:-57 me__nada:-25 me__of:-28 me__oil:-61 me__otra:27 me__robaron:-25
me__so:75 me__tarde:-27 me__to:-47 me__un:-42 me__una:37 me_atendieron:37 me_cambiaron:25 me_cobraron:-40
me_hicieron:-78 me_hizo:-36 me_la:52 me_lo:144 me_the:-27 me_through:-35 me_up:-26 mecanico:34 mecanico_$:48
mechanic:50 mes_pasado:34 mexico:31 mi__es:-59 mi__le:85 mi__lo:27 mi__pero:-30 mi__por:27 mi__se:-55 mi__y:-36
mi__ya:104 mi_casa:32 mi_cita:37 mi_ex:-57 mi_jefe:33 mi_marido:29 mi_papa:32 mi_sobrino:-28 mi_suegra:-34
mi_suegro:65 mi_trabajo:31 mi_yerno:33 mil:27 millas:-27 mind:-37 minutes:28 mismo:-81 mismo_$:-27 mobile:38 mom:-99
mom__you:-41 monday:55 monday_$:60 monday_so:43 money:29 money_$:45 month_$:-25 more:28 more__please:37 more_texts:38
morning_$:34 mother:-47 mothers:-25 move:-31 much:-49 my:34 my__already:27 my__and:47 my__appointment:41 my__did:48
my__do:139 my__does:37 my__drop:-28 my__fixed:30 my__i:32 my__in:-42 my__just:-26 my__now:34 my__oil:-27 my__put:81
my__says:41 my__so:85 my__with:25 my__yesterday:27 my_appointment:33 my_brothers:68 my_cousin:34 my_dad:27
my_driveway:-29 my_garage:-37 my_grandson:-72 my_guy:64 my_mechanic:88 my_mind:-51 my_money:46 my_mother:-47
my_mothers:-25 my_neighbor:29 my_nephew:37 my_number:-39 my_oil:-46 my_own:-62 my_sister:36 my_spot:33 my_tires:-37
my_uncle:28 my_warranty:-31 my_work:69 myself_$:-94 nada:-59 nada_$:-30 navidad:27 nd:27 necesito:28 need_$:-25
need__be:-52 need_for:49 need_i:39 need_that:-51 need_the:27 need_you:30 needed:66 needs:-35 needs_it:-27 negro:-25
neighbor__it:35 nephew:37 never:-32 never__me:29 never_called:29 new:240 new_$:65 new__and:29 new__in:89 new__on:34
new_battery:41 new_ones:107 new_phone:-43 new_tires:80 new_year:-59 next:38 next_year:50 ni:-53 night:42 night_$:-36
night_so:30 no:-76 no_$:-78 no__cita:-55 no__desde:28 no__ese:-33 no__falta:40 no__for:99 no__i:38 no__la:-67
no__lo:-47 no__me:69 no__nada:41 no__on:42 no__preocupe:66 no__quien:-25 no__se:-56 no__texts:38 no__to:52 no__ya:76
no__you:-33 no_appointment:49 no_como:46 no_gracias:-88 no_hace:49 no_just:25 no_le:-64 no_lo:-88 no_longer:85
no_manden:-27 no_manejo:-29 no_me:-97 no_more:37 no_necesito:37 no_need:78 no_se:116 no_si:63 no_thank:-32
no_thanks:-34 no_voy:72 no_ya:33 nos:-26 not:-34 not__it:-36 not_the:-25 now:51 now__it:30 now_and:50 now_it:27
nueva:62 nueva_$:-49 nuevas:75 nuevas_$:31 number:-72 number__me:-27 numbers:-38 numero:-43 nunca:-39 nuts:26 o:-112
o_se:-34 october:26 october_$:26 ocupo:-26 of:36 of_$:27 of__please:-34 of__tire:-33 of__week:-27 of_it:-33
of_that:-58 of_the:-68 of_this:31 of_you:28 off_$:-32 off__list:46 off__my:-37 off_me:-33 off_my:26 office:26 oiga:27
oil_$:-44 oil__came:-34 oil__on:30 oil__you:-29 oil_cap:-35 oil_changed:67 oil_light:-34 ok:-42 old:114 old_$:59
on:37 on__it:-37 on__morning:28 on__th:52 on__tires:-40 on__to:37 on__way:52 on_and:43 on_friday:46 on_in:82
on_it:-41 on_me:-36 on_monday:36 on_saturday:29 on_those:-34 on_yesterday:-44 on_you:25 on_your:42 once:-25
one__and:-38 ones:114 or:-99 or__that:-26 or_the:-50 otra_$:-26 otra__el:-34 otra__no:28 otra_parte:39 otras:-36
otro__y:54 otro_carro:-54 otro_en:-28 otro_lado:61 otro_taller:90 our:-44 out__me:27 out__my:36 out_and:-37
out_for:37 out_in:34 out_the:-25 out_to:39 over:67 over_my:-50 own:-83 own_oil:-27 pads:154 pads_are:107 paid:42
papa:32 para:-40 para_ir:-29 parenle:-28 parenle_$:-28 parking:42 parking_lot:43 part:36 parte:31 party:26 pasa:-31
pasada:43 pasado:47 pasado_$:62 pasar:36 pase:69 past:67 past_$:93 pay:-29 pay_for:-29 pedal:-29 pedi:-52
pendiente:44 people:40 pero__por:33 pero_el:36 pero_no:27 pero_si:25 pero_ya:-28 person:26 phone:-38 pieza:30
pieza_$:49 piezas:-30 pizza:36 place__the:-25 please:38 please_$:-55 please__thank:-31 please_and:-39 please_have:-27
plug:-32 por:-128 por__que:-45 por__ya:-44 por_cierto:-27 por_eso:37 por_lo:-48 por_otro:-72 por_que:29 por_todo:-33
por_una:-93 por_unas:27 porque_ustedes:26 pregunteme:36 preocupe:66 primero:30 primero_que:33 primo:50 primo_$:29
problem_$:74 proxima_semana:-26 proximo:34 proximo_mes:-28 pueblo:-34 pueden:-29 puedo:-65 puerta:-26 pues_$:46
pues_si:-38 puse:42 put:-62 put_in:-30 put_me:-72 put_new:46 put_the:74 que__a:46 que__en:26 que__hicieron:-57
que__lo:27 que__pusieron:-25 que__sale:54 que__toca:27 que_le:88 que_les:26 que_va:44 quedo:184 quedo_$:36
quedo__la:42 quedo_el:32 quedo_mi:-54 quick:71 quick_lube:96 quiero:-31 quiet__a:37 quiet_as:37 quit__me:31
quit_texting:31 quite:25 quite__cita:33 quoted:35 rattle:70 ready:-48 ready_$:-33 rears:30 recall:93 recall_$:62
receipt:49 rechinan:-40 recibo:56 recien:112 records:55 remember:30 remember_$:30 replace:-36 replaced:114
replaced_in:29 replaced_it:78 replaced_the:-42 report:-32 rest:-32 rid:-27 rid_of:-27 right:-93 right__you:-34
right_after:-34 right_now:-52 robaron:-28 robaron_en:-25 rotors:114 round:36 rubber:73 ruido:-26 rush:25 said:-68
sale__barato:33 sale_mas:33 salio:50 salir:32 salir_del:58 same_day:32 santa:28 sat:50 sat_$:68 saturdays:38 say:-41
se__acaba:-25 se__con:-44 se__de:-43 se__hice:51 se__hicieron:54 se__hizo:38 se__puse:76 se__que:-46 se__quedo:-64
se_acabo:42 se_calienta:-31 se_cambiaron:-65 se_hizo:-29 se_las:101 se_le:-44 se_lo:134 se_los:25 se_me:-70
se_preocupe:66 se_puso:-28 se_va:-34 sea:59 second:51 see:-31 see_the:-34 see_yeah:35 see_you:-30 seen:93 semana_$:39
semana_pasada:68 semana_santa:28 semanas:37 semanas_$:42 senor__la:25 service:-80 serviced:39 servicio:104
servicio_$:-25 set:79 set_$:36 she:51 shop:29 shop__it:71 shop__the:-25 si:-60 si_$:-54 si__le:39 si_me:81 si_ya:33
since:40 since_i:-36 since_you:-30 sistema:55 sister:36 six:38 sloppy:28 smog:50 so__is:69 so__my:62 so_cancel:41
so_i:160 so_im:41 so_that:49 so_what:44 sobrino:-28 sold:-38 solo:-146 some:30 someone_else:44 someone_elses:-39
son:-35 sorry:32 sorted:66 soy:-37 spot:27 spring_$:-49 squeak:-28 st:-25 starts:35 state:38 sticker:67 still:-29
still__the:36 stop_it:-38 stopped:-39 stopped__the:-30 straight:51 straight_$:37 street:36 street_$:46 su:48
su__de:30 su_sistema:55 suegra:-34 suegro:65 sunday:85 sunday_$:95 sundays:-57 swap:-28 swapped:70 take:-85 taken:112
taken__of:120 taken_care:113 takes:-36 takes__of:-30 takes_care:-30 taller:38 taller_$:28 tambien:-27 tan:41 tech:36
tengo_el:69 tengo_la:40 tengo_otro:-41 texting:36 texting_me:31 texts_please:37 th_$:69 thank__for:49 thanks:37
thanks_$:73 thanks__is:29 thanks_for:-34 thanksgiving_$:-26 that:69 that_$:-34 that__been:49 that__in:-31
that__me:-58 that__the:127 that_done:-76 that_for:-47 that_is:105 that_noise:26 that_off:137 that_you:55 the:64
the__at:-48 the__belt:-32 the__changed:67 the__desk:-27 the__for:-36 the__from:26 the__got:-93 the__home:27 the__i:51
the__in:49 the__is:-41 the__it:-35 the__just:35 the__last:42 the__late:-26 the__light:-73 the__lights:-36 the__lot:28
the__monday:33 the__of:-45 the__oil:25 the__on:54 the__out:26 the__since:-26 the__store:-34 the__then:31
the__thing:27 the__this:-29 the__time:49 the__to:-28 the__up:37 the__when:40 the__who:-51 the__year:-44 the__you:33
the_battery:35 the_brakes:25 the_bulb:54 the_dealer:44 the_door:-29 the_engine:-40 the_game:-34 the_garage:-68
the_guy:-37 the_heads:37 the_last:-48 the_line:-25 the_list:57 the_morning:-27 the_nd:31 the_new:-61 the_oil:59
the_other:28 the_pads:42 the_parking:28 the_rears:30 the_rest:-32 the_second:56 the_shop:-31 the_squeal:25
the_street:37 the_tech:-51 the_texts:-27 the_timing:-37 the_tires:78 the_truck:34 the_windshield:39 the_winter:-25
the_wipers:35 the_wrong:-39 them:65 them_$:-63 then:-27 then_$:-28 then_i:32 there__charge:-26 there__that:66
there_a:-26 there_for:54 there_on:37 they:60 they__the:45 they__to:-54 this__his:-38 this__me:34 this__the:-30
this__to:57 this_for:34 this_is:-66 this_morning:68 this_place:-31 this_the:-32 this_week:-46 those:51 those_$:-60
those_tires:39 though:48 thought:-27 through_$:-49 thursday_$:-48 thursday__it:28 thursday_and:-36 tiene__y:28
tiene_mi:-93 tiene_una:58 til:30 till:-43 time:-79 time_$:-28 time_and:-26 time_i:-54 timing:-29 tire:-40
tire__flat:-52 tires:44 tires_$:37 tires__on:52 tires_are:26 tires_on:27 tires_were:31 to:25 to_$:107 to__a:-25
to__at:-35 to__but:27 to__for:-50 to__guy:35 to__it:-49 to__list:37 to__out:25 to__that:-31 to_change:-56 to_do:33
to_get:-79 to_go:46 to_hold:45 to_it:167 to_my:-27 to_somebody:-40 to_wait:-38 to_you:59 toca:-36 toda:25 todavia:-42
todo:88 todo__gracias:38 todo_bien:51 too_$:-57 too_late:46 took:-25 took__of:62 took__to:45 took_care:68 took_it:-26
took_the:-39 top:-53 topped:87 topped_it:55 totaled:-29 trabajo_$:30 trabajo_en:-51 trade:-39 trae:83 traia:-26
tree:-53 tres:-26 trip:62 trip_$:65 truck:28 try:-29 tues:-25 tues_$:-26 tuesday:72 tuesday_$:111 tuesday_the:-29
tuesdays:-27 turn:-48 turno:-25 twice:-38 two__ago:52 two_days:-31 un:28 un__a:-26 un__por:-32 un_ano:-30
un_mecanico:33 un_mes:60 una:-105 una__de:-29 una__y:44 una_llanta:-33 una_semana:40 uncle:65 under:53 up:39
up__the:33 us:-32 use:-44 use_the:-43 usted:-28 ustedes__me:37 ustedes_nunca:27 ustedes_y:-31 va:-28 va__la:44
va_a:45 van:-28 ve:-51 veces:-41 veces_$:-39 ven:-35 vendi:-72 vendi_$:-25 vez_$:-34 vez_el:-29 vez_no:33 vez_que:28
vibra:46 video:68 viejo:-33 viernes_$:31 viernes__de:31 vino:42 voy:-54 voy__hacer:-32 voy_a:-57 wait_for:-27
waiting__the:37 want:-53 want_to:-32 was:193 was__and:-71 was__at:80 was__for:26 was__in:49 was__my:52 was__so:32
was__the:27 was__there:37 was_done:112 was_fixed:-70 was_in:56 washer:25 watch:27 way:30 we:27 we__that:43
we__the:-45 we__to:-27 we_got:77 we_had:44 we_just:-31 wednesday_$:29 weekend_$:38 weeks:110 weeks_$:-55 weeks_ago:31
went:52 went__the:73 went_off:-38 went_out:-30 were__last:26 were_done:41 what__a:-27 what__you:46 what__your:32
what_did:-68 what_do:55 what_else:47 what_i:-29 wheel_bearing:36 when__i:-31 when__it:-30 when__was:42 when_i:89
when_my:-27 while:52 while__was:25 who__my:-40 why:-101 whys:45 whys_it:46 wife__it:-28 will:-55 win:-104
windshield:27 winter:-47 wiper:-28 wipers:25 wipers_$:-33 with__at:-44 with__texts:-28 with_a:45 with_the:-35 wont:36
wont__coming:74 wont_be:39 work:35 work__on:-44 work_at:-44 work_on:-34 working:-37 works:-37 works_$:-39 would:-63
would__the:48 would_be:45 would_you:-35 wrenches:-26 wrong:-60 y__bien:33 y__es:30 y__las:40 y__le:-27 y__lo:83
y__me:-31 y__no:-58 y__quedo:53 y__quiero:-30 y__se:-35 y__vez:79 y_como:-31 y_la:-44 y_las:29 y_le:-30 y_lo:27
y_me:31 y_no:44 y_otra:79 y_quedo:31 y_se:25 y_ya:-30 y_yo:-25 ya:303 ya_$:-234 ya__arreglo:35 ya__cambie:34
ya__con:64 ya__de:-34 ya__di:94 ya__el:31 ya__hace:75 ya__hice:50 ya__hicieron:80 ya__las:36 ya__le:-76 ya__lleve:61
ya__lo:40 ya__manden:-28 ya__manejo:-29 ya__no:-26 ya__otro:-76 ya__por:61 ya__tengo:76 ya__tiene:-64 ya__toca:-54
ya__todo:-38 ya__vendi:-45 ya__voy:28 ya_casi:-41 ya_esta:104 ya_estuvo:30 ya_fue:121 ya_la:141 ya_le:137 ya_les:-64
ya_lo:165 ya_me:64 ya_no:-31 ya_parenle:-29 ya_pase:81 ya_paso:51 ya_pedi:-51 ya_que:-58 ya_quedo:206 ya_se:161
ya_tengo:-48 ya_tiene:-25 ya_trae:45 ya_voy:-38 yeah:62 yeah_$:-50 yeah__it:51 year:-47 year_$:25 yerno:33 yes:-65
yes__my:44 yes_i:-48 yes_please:45 yesterday:35 yesterday_$:46 yesterday_and:-29 yet:-96 yo:-307 yo_$:34 yo__el:39
yo__la:-106 yo__le:-139 yo_la:-25 yo_le:-46 yo_lo:-98 yo_no:-43 yonke:29 yonke_$:37 you:-45 you_$:27 you__about:46
you__did:73 you__for:44 you__in:-37 you__it:-45 you__late:26 you__me:48 you__my:-32 you__on:-72 you__the:-54
you_again:30 you_are:28 you_can:46 you_do:-25 you_for:44 you_had:-83 you_left:50 you_move:-32 you_my:-25 you_put:-74
you_quoted:35 you_said:-71 you_see:-34 you_to:124 you_were:33 you_with:28 you_work:-34 youd:29 your:33
your_records:41 youve:33
"""
