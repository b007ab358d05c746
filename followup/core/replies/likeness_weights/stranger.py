"""What speaks for and against `stranger`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "stranger"
BIAS = -166
WEIGHTS = """\
#aban:37 #abla:93 #able:-49 #ably:28 #abue:49 #acab:73 #acar:29 #acce:-68 #acco:42 #acer:-46 #ache:126 #acho:43
#acia:-25 #acio:-59 #acto:73 #ader:58 #ador:-35 #aile:-35 #aine:33 #ajaj:26 #aken:55 #akes:-38 #alga:-28 #alki:63
#alle:56 #allo:54 #alon:-31 #amar:-35 #amas:30 #amed:210 #anad:84 #ance:28 #ande:38 #andl:29 #ando:33 #anej:72
#ange:36 #anic:-25 #anks:-38 #anno:-36 #anse:32 #answ:-75 #anto:30 #appe:-30 #appo:28 #appy:-31 #aqui:174 #arag:34
#arca:120 #arda:-74 #aren:90 #arme:26 #aron:29 #arqu:-52 #arri:-26 #arro:-45 #arte:-46 #arth:53 #asdf:-28 #aske:-32
#asnt:106 #ason:26 #aste:27 #asti:27 #asun:31 #atar:-29 #atev:-31 #atin:37 #auto:-52 #aved:-108 #aven:58 #avor:-27
#away:39 #ayin:-25 #babl:28 #ball:-30 #been:49 #befo:27 #beli:49 #belo:46 #bici:-35 #bicy:66 #bien:-36 #bill:-25
#blan:81 #bles:-41 #bloc:-60 #blow:-40 #boar:83 #body:96 #book:50 #born:-29 #borr:-32 #boss:-27 #bran:51 #brin:56
#buel:49 #buen:-52 #buil:-26 #busc:85 #butt:-51 #caba:33 #cabo:37 #cado:58 #call:-92 #came:-79 #cana:26 #cand:116
#card:-34 #caro:46 #cars:-36 #casa:-38 #cast:30 #ccep:-66 #ccou:42 #cell:53 #cept:-66 #cerc:53 #cesa:-26 #chac:42
#chec:41 #ched:82 #choo:49 #cier:-32 #cion:-37 #cita:60 #ckin:-64 #ckup:25 #clie:88 #cobr:46 #code:27 #comi:-60
#como:-35 #comp:26 #comu:46 #conf:61 #cono:103 #cons:-28 #cont:49 #coot:37 #corr:28 #cosa:-60 #coun:52 #cret:55
#cros:44 #ctio:-28 #ctor:37 #cupo:-29 #cust:67 #cycl:100 #dado:-50 #deje:35 #dent:69 #deri:56 #didn:35 #dier:25
#digi:71 #dije:40 #ding:-29 #dome:41 #done:26 #dont:-40 #dora:-39 #driv:83 #dude:116 #duen:-34 #dule:-37 #each:69
#eage:-30 #eand:-42 #eant:84 #eard:45 #easo:26 #eave:-35 #eces:-25 #echa:-33 #ecio:47 #ecir:-36 #econ:-91 #ecta:49
#ecti:-28 #ecto:-32 #edad:27 #edul:-37 #eeds:-28 #eels:58 #efie:-30 #efon:63 #efor:27 #egro:30 #egur:37 #eith:30
#ejen:43 #ejor:-30 #elef:63 #elie:49 #ella:59 #elli:26 #elon:47 #emov:30 #ence:-49 #ende:-50 #endo:-52 #enes:29
#engo:62 #enia:27 #enid:36 #enle:65 #enme:-73 #enor:114 #ensa:31 #enta:39 #ente:44 #enti:36 #eone:-34 #epta:-30
#eque:-25 #equi:110 #erca:53 #erdo:32 #ered:27 #eres:-36 #esar:-26 #esas:27 #esen:27 #esnt:78 #espe:-28 #espo:-31
#este:77 #estu:29 #eter:34 #etti:45 #evad:33 #even:60 #exas:75 #exte:-35 #exti:39 #exto:-26 #fall:151 #fast:32
#fath:48 #favo:-27 #ffic:58 #fice:59 #fier:-31 #fixe:-26 #flat:-35 #fogg:43 #fono:62 #foot:34 #forg:-56 #four:-34
#frie:26 #from:-63 #fron:36 #fund:108 #fuse:-26 #game:-43 #gara:34 #gets:94 #gett:53 #gies:43 #gimm:-35 #girl:-35
#give:-49 #givi:-35 #goes:-27 #gone:-25 #grac:-28 #guar:-70 #guna:37 #guro:37 #guys:-44 #hace:-29 #hach:42 #haga:-39
#happ:-34 #hasn:32 #hate:-38 #have:119 #hear:47 #heck:41 #hedu:-37 #heel:28 #hell:27 #help:-44 #here:61 #hers:98
#hese:-46 #hicl:40 #hijo:-27 #hile:-32 #hing:-34 #hink:47 #hoev:60 #hone:87 #hool:56 #hops:38 #hose:45 #hosp:27
#huma:26 #iban:41 #icen:46 #icku:25 #icle:40 #icyc:66 #idea:112 #idio:31 #idnt:35 #iene:59 #iens:35 #ient:75
#iero:-63 #iest:37 #ieta:43 #ieto:-27 #ieve:62 #igam:-35 #igan:29 #igit:71 #ildi:-26 #ilea:-31 #iled:-35 #ilen:-30
#imme:-35 #inar:46 #inda:83 #inea:61 #ingu:105 #iniv:51 #inos:-25 #inte:-30 #intm:28 #invo:-27 #ires:53 #isnt:189
#ista:60 #ital:29 #ithe:30 #itor:-46 #itte:49 #ivan:51 #iver:38 #ives:26 #ivin:-39 #ivoc:128 #ixed:30 #izza:60
#jaja:27 #jama:30 #keep:34 #king:87 #know:89 #lado:-39 #lama:-51 #land:70 #last:28 #late:27 #ldin:-25 #ldnt:41
#leag:-31 #leav:-35 #leci:74 #lefo:63 #left:-31 #lega:32 #lego:31 #lenc:-30 #less:-28 #lest:-41 #levo:-26 #lice:47
#lien:68 #liev:49 #life:78 #lind:83 #line:107 #lito:34 #live:89 #lkin:63 #llam:-63 #llec:74 #lled:-55 #lleg:62
#ller:43 #lock:-59 #lome:79 #look:47 #love:-26 #lvid:-41 #made:-44 #mana:-25 #mane:64 #marc:129 #mari:35 #marq:-52
#mate:30 #mber:70 #mbie:-32 #mbio:42 #mbre:-32 #mean:112 #mejo:-30 #menm:-28 #meon:-34 #mero:71 #mete:39 #migo:31
#mind:-51 #ming:-67 #mini:51 #mist:73 #mixe:56 #mmat:33 #mole:-41 #mome:-34 #mone:-27 #moni:-35 #more:-59 #move:54
#mput:-34 #much:36 #muni:46 #muri:40 #must:103 #nada:32 #name:138 #naro:43 #nced:-30 #ncom:-35 #ndar:-55 #nden:85
#ndie:31 #near:-34 #nece:-63 #need:-112 #neit:28 #nejo:51 #neve:73 #news:-28 #nfun:109 #nged:37 #nger:-25 #ngun:105
#nica:30 #nice:50 #nido:38 #ning:43 #nino:-26 #niva:51 #nnoy:-36 #nobo:106 #nois:-34 #nomb:-27 #nora:31 #nore:26
#nove:30 #noyi:-35 #nozc:107 #nswe:-75 #nter:-52 #ntis:27 #ntit:59 #ntme:28 #ntra:71 #ntry:31 #numb:44 #nume:45
#nvoi:-27 #oard:83 #obab:28 #obod:106 #obra:43 #ocad:90 #ocas:34 #oche:-35 #ocki:-59 #ocup:-40 #odom:41 #oesn:78
#oeve:60 #offi:59 #oice:-34 #oing:-29 #oise:-34 #okin:74 #oles:-56 #olvi:-40 #ombr:-27 #omen:-34 #omeo:-34 #omer:101
#omet:32 #omew:41 #omin:-59 #omma:33 #ompr:26 #ompu:-34 #omun:46 #onda:-43 #onfu:83 #onge:-49 #ongs:66 #onit:-26
#onoc:27 #onoz:107 #onse:-35 #ontr:78 #ooki:76 #oomm:33 #ores:26 #orge:-38 #orth:-58 #ospi:27 #osse:50 #oter:33
#othe:-45 #otra:-42 #otro:87 #ough:-28 #ound:-25 #ount:53 #oure:54 #ouve:95 #oved:35 #ovem:30 #owne:83 #oyin:-35
#ozco:107 #pabl:34 #pais:39 #pana:58 #pany:26 #pare:71 #part:-41 #pasa:-25 #paso:-58 #peac:-25 #pedi:32 #peri:-31
#phon:53 #pien:48 #ping:-30 #pisa:35 #pita:33 #pizz:60 #ponl:-26 #pped:-27 #ppoi:28 #pref:-42 #pres:-30 #prob:30
#prop:-25 #pued:-61 #pull:-36 #quej:-49 #quen:-28 #quer:-27 #quin:-26 #quiv:118 #raci:-33 #ract:38 #rade:-26 #rage:34
#rand:-31 #rata:46 #rath:-31 #rcan:102 #rcar:34 #rdad:-69 #rdon:32 #reac:102 #read:-47 #reas:26 #reat:-26 #reco:-102
#refi:-30 #regi:31 #rely:-28 #remo:30 #renl:66 #repl:-29 #ress:-42 #rest:-29 #reta:48 #revi:-27 #rget:-38 #rida:-27
#rike:-32 #rima:25 #rive:86 #roba:28 #rong:229 #ront:36 #ross:44 #rque:-35 #rrib:-29 #rror:33 #rros:-41 #rsel:-58
#rtil:27 #ruck:-54 #rust:-58 #saca:-43 #sado:67 #said:-30 #saro:-31 #save:-106 #scan:69 #sche:-37 #scho:56 #scoo:37
#seda:-26 #seni:27 #seno:93 #shop:89 #siga:26 #sile:-30 #sing:47 #sita:25 #sitt:47 #sive:-31 #sked:-31 #sold:-48
#some:25 #somo:34 #sona:52 #sons:35 #spit:29 #spos:-36 #ssag:25 #ssed:46 #stak:73 #stan:-25 #sted:47 #sten:-31
#ster:-41 #stid:31 #stil:-27 #stom:75 #stop:-52 #stoy:29 #stri:-34 #stuv:28 #sueg:26 #suen:39 #sund:41 #swer:-75
#tado:52 #take:79 #taro:-25 #tary:55 #tean:-42 #tele:40 #tend:-30 #teng:93 #teni:33 #tere:-32 #teve:28 #texa:75
#ther:44 #thes:-46 #they:-38 #this:65 #thol:53 #thos:57 #tidi:31 #tien:59 #till:25 #time:-27 #tina:46 #ting:26
#tion:-34 #tist:27 #tmen:28 #tome:74 #tore:-45 #tort:27 #trac:39 #trat:42 #tres:30 #trik:-32 #truc:-54 #trus:-58
#tter:41 #ttin:28 #tuvo:28 #twin:62 #uard:-70 #ucha:53 #uede:-45 #uegr:26 #ueja:-49 #uena:40 #uenm:-29 #ueno:-55
#ueri:-26 #uier:-35 #uild:-26 #uina:-25 #uivo:118 #uldn:41 #uled:-37 #uman:26 #umbe:49 #umer:44 #unda:42 #unde:54
#undi:50 #undo:-36 #unic:46 #unte:-26 #unto:31 #untr:31 #urio:41 #urse:-59 #usad:32 #usca:128 #usco:-43 #usin:53
#uste:76 #usto:66 #vece:25 #vemb:30 #vent:59 #vers:27 #vida:29 #vide:-41 #ving:-36 #vive:47 #vivo:84 #voca:124
#voic:-34 #wand:51 #wasn:74 #went:58 #weve:39 #whee:28 #when:-47 #wher:-90 #whil:-32 #whoe:60 #whom:-46 #wife:82
#wifi:-31 #will:-65 #wire:48 #wned:54 #wner:30 #word:-26 #work:-39 #wors:-27 #wort:-58 #wron:91 #xtea:-28 #xtin:39
#xtos:-26 #ycle:100 #ying:-59 #your:59 #youv:95 %again_later:-61 %again_later%away:37 %again_later%bring:-40
%again_later%car:-70 %again_later%family:70 %again_later%phone:35 %again_later%refuse:-123 %again_later%season:-35
%again_later%shift_it:61 %again_later%who:-30 %again_later%wrong_one:66 %agree:-102 %agree%bring:53 %agree%fails:-28
%agree%family:46 %agree%gone_car:-57 %agree%leave_me:51 %agree%machine:-26 %agree%meaning:-37 %agree%message:-33
%agree%on_way:33 %agree%refuse:-88 %agree%season:32 %agree%shift_it:-46 %agree%staff:-29 %agree%who:-86
%agree%wrong_one:-60 %away%bad:30 %away%call_off:55 %away%do_it:28 %away%elsewhere:29 %away%family:66 %away%phone:48
%away%shift_it:45 %away%wrong_one:-67 %bad%call_off:69 %bad%do_it:36 %bad%gone_car:-50 %bad%meaning:-40
%bad%message:-26 %bad%on_way:-35 %bad%question:30 %bad%staff:-43 %bad%start_again:38 %bad%wrong_one:37
%bring%car_part:-46 %bring%leave_me:-76 %bring%meaning:26 %bring%message:49 %bring%on_way:-65 %bring%question:55
%bring%refuse:88 %busy:-33 %busy%wrong_one:-33 %call_off:-74 %call_off%car:-87 %call_off%car_part:-41
%call_off%elsewhere:27 %call_off%gone_car:25 %call_off%on_way:89 %call_off%phone:100 %call_off%place:77
%call_off%question:68 %call_off%refuse:43 %call_off%season:-35 %call_off%start_again:-28 %call_off%thanks:-88
%call_off%who:75 %call_off%wrong_one:-111 %car:169 %car%car_part:-25 %car%fails:-44 %car%family:-78 %car%gone_car:42
%car%lift:37 %car%money:-26 %car%odometer:-100 %car%on_way:-41 %car%phone:56 %car%question:90 %car%refuse:216
%car%staff:-43 %car%thanks:64 %car%who:45 %car%wrong_one:-28 %car_part:-33 %car_part%do_it:-25
%car_part%elsewhere:-37 %car_part%family:43 %car_part%leave_me:39 %car_part%money:36 %car_part%on_way:-28
%car_part%phone:-33 %car_part%staff:50 %car_part%thanks:51 %car_part%wrong_one:-84 %do_it%doubt:-56 %do_it%fails:37
%do_it%family:43 %do_it%gone_car:73 %do_it%meaning:26 %do_it%refuse:95 %do_it%shift_it:26 %do_it%thanks:-36
%do_it%who:68 %do_it%wrong_one:84 %doubt:63 %doubt%elsewhere:46 %doubt%gone_car:29 %doubt%message:79 %doubt%money:-33
%doubt%place:-25 %doubt%question:35 %doubt%shift_it:33 %doubt%staff:107 %doubt%who:69 %doubt%wrong_one:45
%elsewhere%family:-57 %elsewhere%gone_car:47 %elsewhere%money:-41 %elsewhere%place:37 %elsewhere%refuse:103
%elsewhere%staff:-27 %elsewhere%who:-42 %elsewhere%wrong_one:73 %fails%gone_car:57 %fails%leave_me:32
%fails%odometer:-26 %fails%on_way:-29 %fails%question:29 %fails%refuse:-52 %family:202 %family%message:-34
%family%phone:57 %family%question:-55 %family%season:35 %family%shift_it:25 %family%staff:-26 %family%thanks:40
%family%who:26 %family%wrong_one:-107 %gone_car%leave_me:-43 %gone_car%on_way:-27 %gone_car%phone:107
%gone_car%place:25 %gone_car%question:-51 %gone_car%refuse:-51 %gone_car%staff:63 %gone_car%who:-93
%gone_car%wrong_one:-85 %how_long:-42 %how_long%refuse:-32 %leak:-30 %leave_me:-150 %leave_me%message:81
%leave_me%odometer:-25 %leave_me%phone:31 %leave_me%question:25 %leave_me%refuse:100 %leave_me%season:34
%leave_me%shift_it:27 %leave_me%staff:76 %leave_me%wrong_one:-86 %lift%staff:43 %lift%wrong_one:33 %machine:-77
%machine%message:46 %machine%staff:-33 %meaning:-52 %meaning%refuse:-99 %meaning%wrong_one:34 %message:53
%message%on_way:36 %message%pay_day:40 %message%phone:-95 %message%place:47 %message%shift_it:-32 %message%staff:92
%message%start_again:-27 %message%wrong_one:-47 %money:-85 %money%staff:-29 %money%who:29 %money%wrong_one:-89
%noise:-28 %noise%odometer:29 %noise%phone:32 %noise%wrong_one:-33 %odometer:-31 %odometer%phone:40
%odometer%refuse:97 %odometer%who:-36 %odometer%wrong_one:54 %on_way:-26 %on_way%question:29 %on_way%refuse:64
%on_way%season:-30 %on_way%smoke_smell:-25 %on_way%who:31 %pay_day%refuse:30 %pay_day%season:-37 %pay_day%who:39
%phone%place:-36 %phone%season:35 %phone%shift_it:58 %phone%start_again:-52 %phone%who:-62 %place:-26
%place%refuse:68 %place%who:55 %place%wrong_one:-31 %question:-85 %question%refuse:56 %question%staff:82
%question%start_again:35 %question%thanks:-41 %question%who:-35 %question%wrong_one:-186 %refuse:40 %refuse%shake:-31
%refuse%start_again:-45 %refuse%who:284 %refuse%wrong_one:25 %season:-27 %season%staff:-41 %shake:-43
%shift_it%staff:54 %shift_it%who:89 %shift_it%wrong_one:33 %smoke_smell:-41 %staff%start_again:-29 %staff%who:131
%staff%wrong_one:65 %start_again:-35 %start_again%who:-54 %start_again%wrong_one:-49 %thanks%who:-33 %who:114
%wrong_one:329 @?:-26 @after_visit:-76 @car:-47 @confirm:-73 @confirm_stop:-61 @day:-58 @odometer:-48 @offers:-88
@time:-57 @times:-92 @walk_in:-35 ^_a:-31 ^_ando:-35 ^_aqui:108 ^_ask:-67 ^_before:-29 ^_could:-42 ^_creo:27
^_cual:28 ^_de:-96 ^_do:-119 ^_dont:-52 ^_el:45 ^_es:-38 ^_esa:27 ^_ese:153 ^_esta:43 ^_este:34 ^_gimme:-35 ^_got:-41
^_had:-32 ^_have:-26 ^_he:90 ^_hello:27 ^_how:-33 ^_i:72 ^_im:65 ^_in:-29 ^_is:-36 ^_le:-35 ^_never:33 ^_ni:28
^_nice:47 ^_nobody:142 ^_nomas:34 ^_nombre:-35 ^_not:55 ^_number:-76 ^_numero:31 ^_nunca:54 ^_pull:-39 ^_que:-50
^_quien:-56 ^_quienes:-131 ^_remove:-58 ^_ring:-31 ^_somebody:72 ^_sorry:60 ^_soy:48 ^_stop:-179 ^_te:88 ^_that:101
^_the:-41 ^_there:148 ^_third:32 ^_this:204 ^_those:35 ^_usted:49 ^_who:25 ^_wrong:244 ^_y:-32 ^_ya:-248 ^_yes:29
^_yo:99 ^_your:-36 ^_youve:83 a:53 a__and:32 a__call:-36 a__car:-39 a__casa:-32 a__escuela:26 a__le:46 a__me:46
a__no:54 a__numero:-41 a__of:33 a__old:40 a__person:-50 a__persona:-37 a__since:47 a__taller:32 a_bot:-29 a_car:98
a_customer:39 a_different:-28 a_este:-59 a_flat:-36 a_guy:-57 a_hacer:-28 a_la:-38 a_lot:31 a_new:-50 a_number:-38
a_otra:-32 a_person:-46 a_phone:-39 a_pickup:25 a_quien:46 a_tractor:39 a_year:27 abajo:-26 abajo_$:-26 about_$:52
about_the:-55 about_this:26 aca:26 acaban:37 acaban_de:37 acabo:37 acabo_de:39 account:45 after_my:50 ahora_$:29
al:53 al__que:46 am:87 am_$:73 an:-43 and:31 and__a:68 and__does:40 and__dont:63 and__is:60 and__not:-30
and__want:-27 and__was:52 and_have:73 and_im:-43 and_it:64 and_nobody:-41 and_that:50 and_this:48 and_who:-38
and_you:35 and_your:-29 andar:-41 ando:-35 ando_en:-36 annoying:-35 annoying_$:-35 ano:-30 answer:-73 antes:25 any:64
any__this:-32 any_of:-32 anymore_$:-29 anything_else:-36 appointment:34 appointment_$:32 aqui:198 aqui__es:46
aqui__hay:85 aqui__vive:33 aqui_no:144 are_$:51 are_you:-29 arriba:-26 asi:-45 ask:-52 ask_then:29 asked:-31
asked_for:-42 at:-28 at_$:-41 at_a:30 at_all:25 at_your:-37 auto:-29 avisar:35 avisar_que:34 away:39 bad:-40 be:68
be__my:38 be_after:51 be_there:-28 been:49 been__a:33 been__your:56 been_to:103 before:27 before_me:50 before_the:-34
believe:62 belongs:66 belongs__a:32 belongs_to:66 bici:-35 bicycle:77 bien:-25 bill:-25 bill_was:-52 bit:-36
bit_much:-28 blocking:-60 bonito:26 bonito_dia:26 book:49 booking_$:-43 boss:-27 bot:-28 bring:56 bring_it:26
buen:-32 building:-26 bus:51 busca:78 buscan:37 busco:-43 busco_$:-39 business_$:36 but:81 but_im:31 but_the:-27
by__name:88 by_phone:-26 by_that:88 call:-42 call_$:-32 call__at:56 call_off:28 called:-35 cambie:-34 cambie_de:-34
cambio:50 cambio_$:25 cambio_de:29 can:-93 can_you:-26 cancel:38 cancel__appointment:51 cancel_my:-29 car_$:-36
car__you:42 car_and:-36 car_at:25 car_but:29 car_to:47 card:-32 carro_$:85 carro__de:-33 carro__no:-104 carro_el:27
carro_tengo:40 carro_ya:-102 carros:-41 cars:-36 casa:-38 cat:49 cel:208 cel_$:28 cell:53 cell_$:35 cerca:53
changed:37 changed__oil:59 changed_the:59 check:50 check_the:39 cita:62 cita__que:31 cliente:78 cliente_$:28
cobran:49 cobran_por:51 code:27 coming:-25 como:-34 company:26 company__this:35 compre:33 con:43 con__hablo:-25
con__persona:36 con_la:38 con_mi:-31 con_una:-31 con_ustedes:82 conozco:168 conozco_$:27 contacto:35 contacto_$:42
correcto:-25 cosa:-46 cosa_$:-43 could:-25 couldnt:35 country:31 creo_que:43 cual__el:-53 cual_es:-49 cuanto:30
cuanto__por:50 cuanto_cobran:50 cuenta:42 customer:86 customer_$:54 dad:47 de:77 de__carro:28 de__es:-51 de__este:37
de__hermano:31 de__no:31 de__nomas:-29 de__o:-32 de__taller:97 de__textos:-30 de_abajo:-26 de_ahi:29 de_antes:33
de_aqui:-71 de_el:60 de_ese:86 de_eso:41 de_la:-57 de_los:-70 de_otra:57 de_quien:-40 de_su:40 de_un:37 de_una:62
de_ustedes:-40 decir:-27 decir_$:-27 dejen:43 dejen_de:43 descanse:32 di:43 dia:-36 did__get:-28 did_the:-31
did_you:-27 didnt:35 digame:-35 digame__es:-31 digo_$:-42 dije:41 do:-166 do__contact:-38 do__have:-64 do__own:-41
do_my:-41 do_you:-81 does:-56 doesnt:78 don:27 dont:-40 dont__a:162 dont__any:96 dont__it:-43 dont__me:-41
dont__that:-171 dont__the:-38 dont__this:-118 dont__what:62 dont__you:50 dont_do:-27 dont_drive:29 dont_even:90
dont_have:-81 dont_know:238 dont_think:-54 dont_want:-42 dos:-31 down_for:26 drive:85 drive_$:112 dude:116 dueno:-34
dueno_$:-39 el_$:36 el__bien:-29 el__de:130 el__es:-42 el__llego:37 el__lo:-36 el__mi:-28 el__no:80 el__o:-46
el__que:34 el__se:-34 el__tienen:35 el__trae:-25 el_carro:-103 el_dueno:-27 el_numero:74 el_otro:-35 el_senor:36
el_taller:-58 el_telefono:-45 el_ya:117 ella:65 en__ya:-35 en_el:-41 en_la:46 en_paz:33 equivocada:31 equivocado:59
era:77 era_$:84 era_para:-77 error:33 es:144 es_$:-35 es__de:-25 es__el:70 es__mi:103 es__numero:55 es__que:-30
es__taller:-46 es_de:118 es_el:88 es_este:-108 es_la:48 es_lo:-44 es_mi:75 es_mio:-35 es_para:74 es_una:25 esa:87
esa__que:27 esa_persona:65 esas:27 esas_horas:25 escriban:41 escriban_$:39 escribe:-36 ese:177 ese__no:102
ese_carro:-95 ese_senor:113 ese_ya:-36 eso:-69 eso_$:-33 eso_no:36 esta:62 esta__a:27 esta__y:29 esta_bien:-31
esta_muy:-30 este:172 este_$:-55 este__de:-44 este__es:69 este__quien:-67 este__ya:72 este_cel:85 este_no:71
este_telefono:137 esto:-52 estoy:29 estoy_de:52 estuvo:28 even:73 ever:-51 ex:62 ex_wife:49 falta_de:28 father:48
favor:-27 favor_$:45 favor__no:-62 favor_de:-31 fixed:-26 flat:-35 foot:34 for:37 for_$:56 for__car:-28 for_me:-41
for_that:-48 forget:-38 from:-63 from__text:55 from_this:54 from_you:-25 from_your:-41 front:36 front_desk:29
garage:34 get:-31 gets:94 getting:53 gimme:-35 gimme_the:-35 girl:-53 give:-30 giving:-36 god:71 goes:-27 gone:-25
gone_$:-25 got:-124 got_$:-30 got__guy:-40 got__in:-30 got__number:64 got__wrong:45 got_a:-84 got_my:-47 got_the:44
got_this:67 got_to:-29 guardado:-70 guy:60 guy_$:-67 guy__it:30 guy__me:59 guys:-44 guys_$:-47 habla:35 hablan:86
hablan_$:74 hablar_con:-26 hable:-27 hable_el:-27 hablo:-41 hacer:-39 had:-82 had_a:35 had_my:-28 had_that:-54
had_this:41 haga:-32 happy:-31 has:-44 hasnt:32 have:58 have_$:52 have__a:-35 have__car:42 have__done:31
have__number:-33 have__wrong:82 have_a:60 have_got:-33 have_never:109 have_no:25 have_someone:-31 have_that:-36
have_to:-33 havent:60 hay__que:-31 hay_ninguna:57 he:376 he__the:67 he_llevado:27 heard:57 heard__you:39 heard_of:57
hello:27 help:-43 her:195 her_$:29 here:76 here_$:-32 hermana:-32 hermana_$:-64 hes:79 hijo:-27 him:198 his:270
hospital:29 hospital_$:-26 how:-32 how__you:-34 human:26 human_$:50 i:81 i__asked:-26 i__drive:36 i__have:-26
i__in:63 i__know:112 i__my:-46 i__never:73 i__no:26 i__own:73 i__the:93 i__there:29 i__this:46 i__to:-27 i__want:-62
i__you:30 i_am:93 i_couldnt:29 i_didnt:59 i_do:-25 i_drive:42 i_have:-25 i_just:31 i_know:-35 i_live:52 i_mean:-27
i_meant:-45 i_never:-102 i_only:92 i_ride:43 i_take:66 i_want:-51 i_was:-34 id_rather:-32 idea:112 idea_$:-38
idea_who:119 if:-46 if_you:-41 ill:-30 im:135 im__a:-38 im__of:-32 im__the:95 im_at:-44 im_in:-41 im_not:134
in__car:-65 in__garage:29 in__hospital:-25 in__i:25 in__life:65 in__state:36 in_another:61 in_my:-68 in_the:-40
in_your:27 interested:-30 invoice:-27 ire:-34 ire_$:-34 is:53 is__a:27 is__bill:50 is__car:-25 is__is:-31 is__not:34
is__on:39 is__with:-38 is_a:75 is_about:31 is_an:-28 is_for:32 is_getting:-36 is_gone:-25 is_his:97 is_it:-29
is_my:54 is_no:145 is_not:139 is_the:43 is_this:-108 is_wrong:-55 isnt:189 it:-91 it_$:-72 it__his:54 it__my:42
it__this:-34 it__to:-36 it_down:-27 it_in:-26 it_is:54 it_on:-32 it_please:60 it_was:40 jaja:-26 jajaja:26
jajaja_$:35 jamas:30 just__this:52 just_the:50 keep:45 keep_getting:39 kid:-40 kid__the:-34 know:152 know_$:-69
know__is:-32 know__this:-34 know_it:-28 know_what:62 know_you:104 la__el:38 la__mi:34 la__ya:31 la_casa:-34
la_persona:99 lado:-30 last:28 last_week:39 late:28 le:-48 le__al:27 left:-31 les:27 les_digo:30 let:-52 life:87
life_$:57 like:-25 like_that:31 linda:84 line:35 linea:64 lista:-31 live:35 live_in:33 llamar:-31 llamenme:-28
llamenme_$:-42 llego:31 llego_a:34 llevado:27 llevo:-26 lo:-101 lo__a:-35 lo__en:-25 lo__yo:-25 lo_mio:-31 lo_que:-33
lo_trae:-34 lol:-41 longer:-49 longer__the:-32 longer_have:-32 looking:72 looking_for:101 los__no:-31 los_conozco:45
los_mensajes:-42 los_ninos:-25 lot:28 love:-26 lugar_$:35 made:-44 mail:46 mal:191 mal_$:84 mal_el:89 manejo:51
marquenme:-41 mas:-75 me:-44 me_$:100 me__con:78 me__en:-27 me__i:-33 me__llamar:-31 me_a:-27 me_hable:-27 me_in:55
me_puede:-43 me_pueden:27 mean:38 mean_my:30 meant:81 mechanic_$:-27 mejor:-30 message:28 messaging_me:27 mi_$:98
mi__a:-28 mi__de:-26 mi__ella:58 mi__es:51 mi__no:-73 mi__para:-25 mi__ya:33 mi_hermana:-48 mi_hijo:-40 mi_lugar:-28
mi_nieta:-31 mi_nieto:-27 mi_numero:-46 mi_rey:60 mi_suegro:30 mi_vida:36 mileage:-31 mind:-53 mine:25 mine_$:75
minivan:51 mio:-51 mixed:56 momento:-35 monday_$:-28 monday_please:27 money:-28 money_$:-30 more:-49 mother:-34
mothers:41 moved:40 much:-29 muchacho:40 murio:40 must:84 must_be:108 muy:-67 muy_mal:-52 my:-59 my__but:28
my__car:-32 my__from:-31 my__im:47 my__is:65 my__it:45 my__not:25 my__this:34 my__was:-52 my__who:25 my_bill:-52
my_booking:-28 my_car:25 my_dad:38 my_father:48 my_guy:-33 my_husband:-25 my_life:65 my_own:-57 my_roommate:37
my_son:-33 my_whole:34 my_wife:-45 my_work:-27 nada_$:-31 nada__eso:42 name__your:-48 near:-34 necesario:-26 need:-63
needs:-28 neither:28 never:84 never__a:70 never__of:57 never__to:45 never_asked:-26 never_been:58 never_heard:57
never_mind:-52 never_want:-36 new:-109 new_one:-27 new_phone:27 news:-28 ni:130 ni__conozco:42 ni__tengo:40
ni_carro:40 ni_los:42 ni_tengo:27 nice:50 nieta:43 nieto:-27 ningun:64 ninguna:37 ninguna_$:31 ninguna_cita:32
ninos:-25 no:134 no_$:-63 no__a:-56 no__at:47 no__carro:141 no__cliente:55 no__conmigo:30 no__conozco:114 no__de:49
no__el:36 no__esa:60 no__este:185 no__guardado:-58 no__have:-32 no__here:159 no__i:-27 no__is:-134 no__lo:-47
no__mi:37 no__mio:-132 no__ni:-93 no__ningun:57 no__ninguna:41 no__no:-58 no__on:35 no__para:55 no__que:-45
no__quien:93 no__the:-49 no__what:34 no__yo:84 no__you:-27 no_and:-74 no_car:59 no_era:65 no_es:241 no_esta:85
no_gracias:-38 no_hay:29 no_idea:51 no_ire:-34 no_lo:27 no_longer:-48 no_more:-41 no_no:-60 no_one:123 no_pedi:50
no_se:91 no_soy:309 no_tengo:96 no_thanks:-48 no_that:-31 no_tiene:39 no_vive:48 no_voy:-26 no_what:-29 nobody:106
nobody_here:51 noise:-34 nomas_el:-29 nomas_para:34 nombre:-26 not:196 not__and:36 not__car:60 not__customer:80
not__it:46 not__me:-58 not__my:-61 not_a:-26 not_contact:-38 not_for:-69 not_happy:-32 not_her:126 not_him:115
not_in:-58 not_interested:-30 not_me:256 not_my:204 not_now:-28 not_the:118 not_this:-45 not_worth:-29 not_yet:-36
november:30 now:-146 now_$:-41 number:48 number_$:-48 number__it:51 number__me:27 number__the:-44 number__your:-25
number_before:-25 numero:46 numero_$:-101 numero__es:-56 numero__no:57 numero__quien:-52 numero_equivocado:78
numero_es:-62 nunca_$:-77 nunca_mas:-30 nunca_me:-35 o:-122 o__de:-28 o_el:-27 o_es:-44 ocupo:-30 odometer:40 of:41
of_that:50 of_the:-38 of_those:25 of_you:28 off_tomorrow:28 office:59 office_$:66 oil:-45 old:-25 on:-81 on_a:35
on_me:-38 on_this:-29 one:35 one_$:25 one__it:-29 one__the:60 one_is:-37 one_text:-34 one_with:60 only__a:51 otra:-42
otra_$:40 otra_cosa:-44 otra_vez:-55 otro:87 otro_$:55 our:43 out:-44 out_of:-38 own:-53 own_$:-41 own__car:32
own_a:61 own_that:-104 owner:45 pais:39 para__que:33 para_eso:-32 para_mi:27 parenle:66 parte:-43 paso:-58 paz:33
pedi:32 people_are:32 pero__no:38 pero_llamenme:-41 pero_me:27 pero_ya:29 person:-37 person_$:-118 persona:62
persona_que:41 phone:87 phone__to:39 phone_anymore:76 phone_belongs:39 phone_me:-124 phone_my:-25 pick:-26 pickup:25
pizza:59 place_$:-39 please_$:82 please__is:-30 please__it:-41 please_cancel:28 please_im:-39 please_remove:-25
please_stop:34 pls:-45 por:-46 por__no:-32 por_telefono:-35 por_un:45 prefiero:-30 probably:28 puede:-78 puede__a:-31
puede__mi:-28 puede_dar:-28 puede_llamar:-31 pull:-38 pull_my:-38 put:-35 put_the:-72 que:63 que_$:-34 que__bonito:25
que__decir:-27 que__era:44 que__es:-74 que__hable:-27 que__me:-56 que__mi:-26 que__no:31 que__pero:31 que__son:-34
que__soy:49 que__ya:25 que_busca:68 que_buscan:37 que_este:66 que_falta:28 que_le:34 que_numero:-62 que_quiere:-27
que_taller:44 queja:-49 queja_$:-49 queria:-26 quien__usted:38 quien_es:-32 quien_hablo:-25 quien_me:-36 quienes:31
quiere_decir:-27 quit:49 quit__me:30 quit_it:32 rather:-31 reached:121 reason:26 remove:30 remove_my:31 rey:60
ring:-41 ring_me:-28 roommate:33 sacar:29 said:-30 saved:-108 say:-35 say_$:29 school_$:25 se:132 se__con:45
se__es:67 se__mas:-25 se__que:77 se_equivocado:54 se_lo:-38 se_quienes:165 sea:-26 sedan:-26 see:-40 seguro:37
seguro_$:25 semana__la:38 senor:38 senor_$:-114 senora:31 sent:32 shop:51 shop__my:27 shops:38 si:40 si_yo:25
sigan:30 silenced:-30 sitter:48 so:-30 so_$:-28 so__know:-31 sold:-48 sold_the:-36 some:82 somebody_else:29
somebody_elses:-61 someone:-34 someone_$:-61 someone__me:-29 someone_elses:59 someone_phone:-29 son:32 son_in:69
sorry__the:43 soy:442 soy__persona:99 soy_de:-56 soy_el:34 soy_esa:95 soy_la:103 soy_su:29 soy_yo:44 state:30
still:-27 stop:-52 stop_$:55 stop__me:29 stop_messaging:48 stop_texting:29 strike:-32 su:66 su_taller:52 suegro:30
suena:39 sunday:41 sunday_$:56 take:32 take__number:-37 take_the:72 tal:52 talk:-34 talk_to:-34 talking:62
taller_son:-34 te:66 telefono:62 telefono_$:40 tenga__dia:25 tengo:73 tengo_$:31 tengo__con:43 tengo__me:-25
tengo_carro:165 tengo_guardado:-58 tengo_quien:-25 texas:75 text_this:-26 texting:39 texting_me:29 textos:-26
texts_about:-26 thank:46 thank_you:-36 thanks:-36 thanks__you:-39 that_$:34 that__a:-26 that__anymore:-124
that__be:32 that__it:50 that__my:-29 that_car:-44 that_isnt:78 that_name:88 that_one:-36 that_would:32 the:-26
the__anymore:-77 the__appointment:-26 the__guy:26 the__i:-47 the__my:34 the__no:34 the__of:43 the__off:-30
the__oil:-63 the__person:81 the__phone:25 the__the:-57 the__time:-38 the__went:75 the__with:34 the_boss:-27
the_bus:49 the_car:-33 the_garage:-32 the_guy:41 the_hospital:-36 the_office:37 the_oil:54 the_owner:80 the_phone:-99
the_right:52 the_same:-39 the_third:-46 the_truck:-34 the_wife:48 the_work:-28 the_wrong:33 there:50 there_$:-29
there__a:-62 there__no:150 there_is:99 these:-46 they:-38 thing:-43 think:26 think_$:-46 think__is:46 think_so:-31
think_this:39 think_you:124 this:65 this_$:-59 this__a:130 this__before:41 this__belongs:85 this__for:41 this__his:72
this__last:45 this__my:26 this__not:48 this__the:81 this__who:-38 this_is:197 this_isnt:156 this_phone:76
this_texting:-27 this_was:67 this_week:-48 those:57 tiene:31 tiene_mi:-26 tienen__el:46 till:25 time:-45 time_im:26
to:-55 to_$:-49 to__in:47 to__me:-37 to__my:29 to__shop:31 to_a:34 to_be:-25 to_know:-42 to_me:53 to_my:-26 to_our:66
to_tell:-26 to_text:95 to_you:41 to_your:57 tomorrow_please:28 trabajo_en:29 tractor:38 trae:-49 tres:30 tres__que:30
tres_veces:30 truck:-49 trust:-58 try:30 un:48 un__en:-27 un_cambio:28 una:58 una__en:37 una_persona:-74
una_semana:38 up:-66 up_$:50 usa:139 used:32 usted:70 usted_$:27 ustedes_$:27 ustedes__el:25 van:-36 veces:25
veces_que:30 vehicle:46 vez:-27 vez_no:27 vida:30 visita:25 vive:48 vivo:84 voy:-57 voy_$:-25 voy__hacer:-28
voy_a:-33 want_it:30 want_the:54 want_to:-30 was:44 was__to:47 was_my:36 wasnt:74 way:-26 we:-50 we__have:-34
we_have:-49 went:58 went_to:75 weve:39 what__wrong:-50 what__your:66 what_i:-38 what_is:-35 whatever:-31
whatever__is:-27 wheel:-27 wheels:55 when:-36 where:-61 where__the:-26 where_is:-28 while:-32 who__are:53 who__is:-49
who__it:-82 who__texting:31 who__this:-45 who__you:-54 who_is:-103 who_this:-53 who_you:104 whoever:60 whoever_you:52
whom:-46 wife:81 wife__it:-38 wifi:-31 will:-65 will__be:-25 wires:48 with__car:32 with_a:35 with_you:49 work:-28
worth:-58 worth_it:-29 would_be:33 wrong:91 wrong__i:-57 wrong__stop:36 wrong_guy:62 wrong_number:101 wrong_with:-53
y:-56 y__digo:-26 y_el:31 y_me:-34 y_te:-26 y_ustedes:-27 y_yo:25 ya:-34 ya__es:-55 ya__que:65 ya__tengo:-53
ya__tiene:37 ya_estuvo:30 ya_no:-152 ya_que:33 yes_$:-42 yes__am:-27 yes_i:-25 yesterday_$:-31 yet:-65 yet_$:-27
yo:225 yo__de:34 yo__la:29 yo__los:38 yo__manejo:61 yo__se:-39 yo__soy:45 yo__tengo:25 yo_el:31 yo_le:-48 yo_ni:163
yo_no:103 yo_paso:-30 yo_soy:70 yo_tengo:-25 you:115 you__a:-78 you__are:32 you__even:-25 you__have:70 you__is:27
you__my:-48 you__stop:62 you__the:127 you__this:59 you__to:64 you__wifi:-31 you__your:25 you_a:37 you_do:37
you_dont:35 you_from:55 you_get:-27 you_guys:-44 you_have:116 you_in:25 you_keep:30 you_mean:29 you_must:42
you_my:-28 you_never:-31 you_put:-63 you_think:67 you_want:125 your__and:-35 your_customer:46 your_garage:82
your_list:29 your_shop:28 youre:54 yours:48 yourself:-59 youve:95 youve__a:75 youve__me:-36 youve_got:61
"""
