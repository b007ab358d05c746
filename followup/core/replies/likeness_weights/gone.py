"""What speaks for and against `gone`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "gone"
BIAS = -153
WEIGHTS = """\
#abaj:-26 #able:-17 #abra:14 #abue:-20 #acci:85 #acro:23 #actu:25 #adec:-14 #aded:107 #adez:-49 #adio:22 #agai:-14
#ages:14 #agon:28 #agra:-62 #agua:15 #ahor:-19 #aigo:46 #aila:17 #airp:-14 #ajaj:36 #akes:-31 #akin:-14 #aled:100
#alen:-16 #algo:-25 #alle:-43 #allo:14 #ally:14 #alon:27 #alre:-29 #ambi:18 #amio:16 #amos:47 #anan:-16 #anca:-19
#ance:43 #anch:30 #anco:23 #anda:31 #ande:16 #andl:-23 #ando:-24 #ands:45 #anej:55 #anic:-28 #anks:-14 #anos:14
#anot:-15 #anse:27 #ante:-49 #anym:83 #apar:29 #appe:94 #aque:18 #arca:16 #arda:-18 #arde:15 #arec:21 #aren:-21
#arki:32 #army:19 #aron:73 #arra:34 #arre:-15 #arri:18 #asse:76 #asta:-29 #atar:71 #atbe:20 #atch:34 #ated:72
#aten:-16 #auto:15 #aven:40 #avin:-14 #avor:-16 #back:70 #baja:24 #bajo:-17 #banc:24 #band:-16 #bank:139 #baro:51
#beat:-20 #befo:-14 #bend:-15 #bici:-31 #blan:-15 #blue:18 #boat:24 #both:29 #bott:27 #boug:105 #brak:-15 #brid:18
#brot:25 #buck:15 #buel:-20 #cach:14 #call:-26 #camb:22 #came:39 #camp:17 #canc:19 #cani:-30 #cans:25 #cant:-49
#care:-46 #carp:18 #casa:-15 #ccid:85 #cela:-17 #chan:19 #char:41 #chat:61 #chec:-29 #choq:19 #cide:68 #ciem:14
#cked:31 #ckup:14 #cobr:-17 #comp:124 #cono:-47 #cord:19 #corr:22 #crap:60 #cros:19 #ctor:-15 #ctur:18 #cuan:27
#cuen:21 #culo:19 #cycl:14 #daro:15 #dash:-20 #days:15 #ddle:-17 #dead:-27 #deal:-24 #dece:-15 #deja:-20 #dejo:-14
#dent:81 #dere:16 #desc:24 #desd:21 #desh:40 #dezc:-49 #dida:39 #died:-86 #diff:23 #diga:16 #dime:-31 #dimo:94
#dine:-23 #divo:55 #does:-25 #dona:62 #done:-159 #dont:14 #driv:58 #drop:-32 #dson:54 #duen:53 #dura:19 #eady:-37
#ease:51 #ecan:-30 #ecar:-23 #ecei:-16 #eces:-16 #ecib:-14 #ecid:-18 #ecir:15 #ecke:28 #eden:-20 #edes:-28 #eels:-20
#efon:-15 #efor:-14 #egal:19 #egre:25 #egun:-19 #egur:32 #ehic:24 #eigh:14 #eith:42 #ejar:-16 #elef:-15 #ella:15
#elli:-31 #else:21 #embe:-14 #ende:-31 #endi:172 #enen:-16 #ener:39 #enga:30 #engo:-153 #enos:-31 #ensa:-88 #ense:22
#enta:25 #ente:-18 #entr:27 #ephe:21 #epos:35 #erdi:78 #eria:-16 #erma:19 #erro:16 #erso:-22 #esca:25 #esde:21
#esia:52 #esnt:-15 #espo:-32 #essi:17 #esta:-41 #este:-60 #esto:-29 #estr:20 #etal:18 #ethi:14 #etti:-27 #ever:-38
#eves:-23 #eway:35 #exis:50 #exti:40 #exts:-20 #ezco:-49 #fact:19 #fall:-21 #favo:-16 #feel:-15 #fell:47 #fere:22
#ffer:21 #fine:-22 #firm:14 #fixe:-20 #flat:18 #flee:16 #floo:55 #fono:-15 #fore:-15 #foun:53 #fren:-30 #frid:-27
#from:33 #gain:-14 #gale:18 #gamo:30 #gave:36 #gett:-27 #ghbo:16 #ghwa:-36 #gles:51 #goin:-30 #gone:197 #good:-14
#grad:-63 #gran:52 #grea:14 #grua:15 #guag:14 #gunt:-18 #guro:34 #hace:27 #hall:15 #hang:18 #hank:-22 #hast:-29
#hata:61 #hatc:18 #have:28 #hbor:16 #heav:26 #heca:-23 #hech:14 #heel:-20 #here:-51 #herm:21 #hers:-15 #hice:23
#hicu:19 #high:-37 #hija:31 #hijo:18 #hist:30 #hizo:-51 #hoca:20 #hoco:-17 #hold:-31 #hole:-15 #hone:-36 #hoqu:19
#hora:17 #hori:-27 #houl:22 #hubb:-41 #hurs:-14 #husb:-15 #hway:-36 #ible:-37 #ibra:-15 #icia:14 #icie:26 #icku:14
#icul:19 #iday:-28 #idea:24 #ided:-17 #iden:83 #iend:-19 #ient:-30 #iere:-14 #iero:-16 #iffe:23 #igam:15 #ighb:14
#ight:-35 #ighw:-36 #igle:52 #iles:-22 #illa:24 #imos:45 #iner:-24 #iniv:14 #insu:33 #inte:18 #into:-40 #ione:14
#ious:-16 #ires:-18 #irme:20 #irpo:-14 #ismo:-18 #isnt:-30 #ista:-18 #iste:41 #isto:48 #ithe:42 #itti:15 #ivan:14
#iver:36 #ivew:29 #ivor:55 #ixed:-20 #jaja:69 #juev:-23 #juni:22 #junk:49 #kids:-32 #kyar:22 #lado:-29 #laje:15
#lanc:-14 #lant:-23 #laro:-19 #last:69 #leas:52 #leav:-32 #leet:16 #lefo:-15 #left:15 #lemo:79 #lesi:52 #lets:-24
#levo:27 #lici:15 #like:-29 #ling:-38 #live:15 #llaj:15 #llam:-17 #llan:-18 #llas:30 #lled:31 #ller:-60 #llin:-37
#long:160 #lood:59 #lost:19 #lrea:-29 #lune:-16 #make:-64 #mala:17 #mana:-16 #mane:55 #mano:39 #mark:17 #mate:23
#mbar:22 #mber:-68 #mbio:25 #mbre:27 #mean:-15 #meca:-30 #meet:14 #ment:34 #mero:-54 #meta:18 #meth:14 #mile:-17
#mill:26 #mine:67 #mini:14 #mion:16 #mism:-18 #mmat:16 #mome:-15 #more:198 #moto:38 #mpan:25 #mper:16 #mple:20
#mpra:39 #mpre:35 #much:-29 #nana:-16 #nate:50 #ncel:19 #nche:28 #ncie:-14 #nday:-16 #nded:39 #ndie:-23 #ndim:73
#ndle:-22 #ndso:54 #nece:-15 #need:-64 #neig:14 #neit:43 #nejo:58 #neph:21 #nero:15 #neta:17 #ngam:-16 #ngan:29
#nger:91 #nges:-19 #nico:-31 #nino:-27 #niva:14 #nked:23 #nkya:22 #nois:-15 #noma:-20 #nomb:15 #nora:14 #noth:-22
#nozc:-46 #nsar:-73 #nsur:33 #nter:19 #ntes:-44 #ntil:-16 #ntre:39 #nuev:-36 #numb:-54 #nume:-52 #nymo:83 #obar:36
#obra:-17 #obri:16 #ocar:19 #octo:-16 #oday:-51 #oesn:-15 #ohio:27 #oing:-32 #oise:-15 #olen:44 #olic:15 #olvi:-40
#omas:-21 #ombr:14 #omen:-14 #omma:16 #ompa:35 #ompl:18 #ompr:85 #ompu:-14 #onat:52 #ones:14 #onet:18 #onga:-17
#onge:97 #onke:14 #only:-19 #onoz:-46 #onto:-17 #oomm:16 #oque:19 #oras:16 #orce:26 #orci:29 #orcy:16 #orit:-22
#orra:16 #osib:-42 #osse:49 #otal:53 #otat:21 #otor:15 #otro:85 #otto:27 #ough:81 #ould:18 #ound:61 #ouse:-19
#over:-38 #owed:18 #owns:42 #ozco:-46 #paid:44 #pany:21 #para:42 #part:45 #pase:25 #paso:31 #pass:84 #pdat:14
#pect:-15 #peda:16 #pens:-59 #perd:72 #pers:-27 #phew:21 #phon:-35 #plea:16 #plet:20 #poli:15 #pong:-18 #posa:-20
#posi:-42 #poss:50 #pped:97 #prec:-17 #preg:-18 #prim:-21 #prin:20 #pron:-23 #pued:-52 #qued:83 #quic:-14 #quie:-43
#quit:15 #raba:-26 #ract:25 #rade:45 #radi:20 #raig:39 #rail:15 #rake:-15 #ranc:26 #rand:48 #rapp:55 #raro:17
#rcio:29 #rcyc:16 #rdid:39 #read:-43 #real:-14 #reat:14 #rece:-18 #reci:-14 #reck:29 #rega:42 #regr:25 #reno:-27
#repa:-14 #repo:81 #reso:-44 #rest:22 #rida:-36 #ride:-15 #rimo:-19 #rita:-22 #rite:37 #rive:66 #rkin:31 #rman:21
#roba:44 #robo:-20 #rong:-28 #ront:-14 #room:14 #ross:19 #rota:34 #rote:53 #roth:25 #rren:14 #rson:-22 #rted:26
#ruck:19 #runk:19 #rush:31 #rwar:-19 #sabe:-14 #sado:15 #said:34 #same:-18 #saqu:19 #says:-26 #sban:-15 #scan:25
#scra:67 #segu:30 #sell:-73 #seri:-15 #shop:-29 #shou:21 #sibl:-44 #sien:-20 #sion:15 #sitt:16 #sobr:15 #sold:179
#solo:-14 #some:37 #soon:-34 #soun:-14 #spos:-31 #spri:20 #ssed:83 #sses:52 #ssio:16 #stan:-16 #stic:-16 #stil:-19
#stol:88 #stor:59 #stoy:-14 #sueg:14 #sura:33 #swap:53 #take:-38 #tale:102 #talk:-15 #tall:-37 #taro:24 #tarr:61
#tati:15 #tede:-28 #tele:-16 #tema:20 #tend:-21 #teng:-155 #tera:15 #tery:-15 #that:114 #them:43 #then:-18 #ther:14
#they:28 #this:-100 #thou:-14 #thur:-14 #till:-52 #time:-53 #tire:-20 #toda:-62 #tole:55 #tomo:14 #took:144 #torc:16
#tory:43 #tota:53 #trab:-22 #trad:107 #trai:66 #tras:21 #tree:38 #treg:39 #truc:19 #ttin:-27 #ttom:27 #tues:18
#ture:19 #twic:-40 #uagu:14 #uand:33 #ubby:-41 #ucho:-14 #ucks:15 #uebl:-14 #uede:-34 #uedo:72 #uegr:14 #ueno:52
#uent:21 #uesd:19 #ueva:68 #ueve:-33 #uevo:-94 #ught:92 #uick:-14 #uien:-22 #uier:-28 #umbe:-54 #umer:-52 #unde:46
#unes:-16 #unio:22 #unke:27 #unky:22 #unta:-15 #unti:-16 #upda:14 #uran:31 #urre:16 #usba:-15 #used:-29 #ushe:28
#utti:-16 #vehi:24 #vend:171 #vent:18 #very:-24 #vewa:29 #vida:30 #vier:-22 #ving:-24 #vorc:55 #vuel:-20 #wago:28
#want:-42 #wapp:40 #ward:-19 #went:66 #were:-22 #what:-25 #whee:-20 #when:-60 #wice:-40 #will:-48 #wish:-14 #with:-41
#woul:-28 #wrec:29 #writ:38 #wron:-28 #wrot:53 #xist:50 #xtin:53 #yard:37 #ycle:14 #ymor:83 #yonk:14 #your:19
%again_later:-101 %again_later%agree:-32 %again_later%away:-15 %again_later%call_off:38 %again_later%car:-48
%again_later%car_part:-28 %again_later%do_it:53 %again_later%doubt:-39 %again_later%elsewhere:70
%again_later%fails:18 %again_later%family:-58 %again_later%gone_car:33 %again_later%how_long:-30
%again_later%lift:-18 %again_later%message:-15 %again_later%money:45 %again_later%pay_day:-35 %again_later%phone:-15
%again_later%place:-39 %again_later%refuse:-70 %again_later%season:-40 %again_later%shift_it:54 %again_later%staff:18
%again_later%start_again:32 %again_later%who:-18 %again_later%wrong_one:-24 %agree:-99 %agree%call_off:45
%agree%car:-16 %agree%doubt:28 %agree%fails:22 %agree%family:-24 %agree%leak:14 %agree%leave_me:18 %agree%money:-18
%agree%on_way:-22 %agree%refuse:62 %agree%wrong_one:53 %away%car:50 %away%do_it:21 %away%elsewhere:19 %away%family:21
%away%gone_car:20 %away%who:14 %away%wrong_one:19 %bad:-45 %bad%car:-18 %bad%money:-19 %bad%question:-16 %bring:-52
%bring%call_off:-62 %bring%car:63 %bring%elsewhere:24 %bring%fails:34 %bring%family:-33 %bring%gone_car:47
%bring%message:23 %bring%odometer:26 %bring%on_way:-44 %bring%place:-28 %bring%question:-36 %bring%refuse:46
%bring%shift_it:21 %busy:-30 %busy%who:15 %call_off:45 %call_off%car:212 %call_off%car_part:-70 %call_off%do_it:-111
%call_off%doubt:-15 %call_off%elsewhere:25 %call_off%fails:-18 %call_off%family:-45 %call_off%gone_car:49
%call_off%how_long:-28 %call_off%message:-41 %call_off%money:42 %call_off%noise:-38 %call_off%on_way:16
%call_off%opening:16 %call_off%pay_day:-15 %call_off%phone:-34 %call_off%place:-38 %call_off%question:-14
%call_off%shift_it:-37 %call_off%staff:80 %call_off%start_again:36 %call_off%who:-18 %call_off%wrong_one:127 %car:204
%car%do_it:29 %car%doubt:-28 %car%elsewhere:32 %car%fails:-56 %car%gone_car:193 %car%how_long:44 %car%leave_me:111
%car%message:105 %car%money:47 %car%noise:-23 %car%odometer:-22 %car%on_way:54 %car%phone:-28 %car%season:33
%car%shake:-26 %car%shift_it:103 %car%smoke_smell:-15 %car%thanks:18 %car%who:40 %car_part:-138 %car_part%fails:-51
%car_part%family:-15 %car_part%gone_car:-42 %car_part%lift:15 %car_part%noise:-14 %car_part%refuse:-15
%car_part%season:-15 %car_part%shift_it:-16 %car_part%staff:27 %do_it:-119 %do_it%elsewhere:-14 %do_it%family:-62
%do_it%gone_car:-180 %do_it%how_long:30 %do_it%leak:23 %do_it%lift:19 %do_it%money:82 %do_it%odometer:-24
%do_it%on_way:32 %do_it%question:45 %do_it%refuse:34 %do_it%shift_it:22 %do_it%start_again:77 %do_it%who:26
%do_it%wrong_one:-38 %doubt:-54 %doubt%gone_car:-16 %doubt%on_way:-35 %doubt%question:-16 %doubt%shift_it:-17
%elsewhere:-64 %elsewhere%gone_car:119 %elsewhere%odometer:-24 %elsewhere%on_way:24 %elsewhere%place:-19
%elsewhere%refuse:31 %elsewhere%shift_it:83 %elsewhere%who:20 %fails:-59 %fails%family:21 %fails%gone_car:-84
%fails%leave_me:50 %fails%message:33 %fails%money:16 %fails%odometer:36 %fails%pay_day:15 %fails%place:-34
%fails%question:17 %fails%refuse:-16 %fails%start_again:-16 %family:125 %family%gone_car:49 %family%lift:-14
%family%odometer:76 %family%phone:-38 %family%question:38 %family%start_again:-17 %gone_car:604 %gone_car%leave_me:30
%gone_car%money:-91 %gone_car%odometer:-14 %gone_car%on_way:-38 %gone_car%phone:-24 %gone_car%refuse:54
%gone_car%season:76 %gone_car%shift_it:41 %gone_car%smoke_smell:-15 %gone_car%thanks:38 %gone_car%wrong_one:-97
%how_long%question:-29 %leak%refuse:25 %leak%wrong_one:24 %leave_me:15 %leave_me%message:49 %leave_me%question:-18
%leave_me%refuse:20 %leave_me%wrong_one:26 %lift:-20 %lift%refuse:-17 %lift%shift_it:15 %machine:-26 %meaning:-62
%meaning%refuse:-17 %message%refuse:-29 %message%shift_it:15 %message%start_again:-26 %message%wrong_one:-33
%money%place:17 %money%question:-48 %money%refuse:-17 %money%season:-18 %money%start_again:89 %money%who:16
%money%wrong_one:27 %noise:-109 %noise%refuse:-32 %noise%wrong_one:-21 %odometer%phone:-14 %odometer%question:45
%odometer%staff:-17 %odometer%who:29 %on_way:-30 %on_way%question:-22 %on_way%shift_it:27 %pay_day:14
%pay_day%shift_it:-17 %phone:-146 %phone%refuse:-15 %phone%staff:-28 %phone%wrong_one:-49 %place%shift_it:-17
%question:-89 %question%refuse:-23 %question%shift_it:22 %question%who:-23 %refuse:-31 %refuse%shift_it:50
%refuse%staff:-21 %refuse%start_again:-36 %refuse%thanks:-18 %refuse%who:-17 %refuse%wrong_one:64 %season:33
%season%shift_it:-15 %season%staff:25 %season%wrong_one:18 %shake:-45 %shift_it%wrong_one:57 %smoke_smell:-42
%staff%wrong_one:63 %start_again%wrong_one:-20 %thanks:-83 %who:20 %who%wrong_one:-23 %wrong_one:77 @?:-143
@after_visit:-70 @car:-78 @confirm:-144 @day:-35 @later:-41 @nothing:-20 @odometer:53 @offers:-104 @reading:-177
@time:-14 @times:-88 @walk_in:-42 ^_a:-17 ^_ahorita:-16 ^_already:-17 ^_can:-73 ^_cancel:20 ^_cant:-24 ^_couldnt:16
^_cual:14 ^_cuanto:-19 ^_desde:22 ^_dios:-16 ^_do:-76 ^_el:42 ^_en:-14 ^_es:-23 ^_esa:20 ^_eso:-17 ^_esta:-14
^_este:-31 ^_gave:34 ^_got:17 ^_had:-22 ^_hold:-23 ^_how:-25 ^_i:-55 ^_ill:-15 ^_im:-59 ^_in:-24 ^_is:-92 ^_it:30
^_la:33 ^_leave:-19 ^_lets:-21 ^_lo:155 ^_los:36 ^_me:42 ^_my:31 ^_neither:43 ^_never:-17 ^_ninguno:14 ^_no:-173
^_not:-40 ^_oh:16 ^_ok:-14 ^_opt:-17 ^_que:-16 ^_quedo:34 ^_se:69 ^_sedan:-20 ^_she:35 ^_shes:14 ^_si:-18 ^_sold:18
^_someone:21 ^_soy:-16 ^_tengo:-47 ^_that:37 ^_the:-38 ^_this:-43 ^_took:-24 ^_traded:70 ^_two:20 ^_un:17
^_ustedes:-18 ^_we:51 ^_what:-41 ^_when:-21 ^_will:-36 ^_would:-22 ^_yo:-66 ^_you:-48 a:95 a__and:-22 a__car:36
a__en:18 a__for:-23 a__from:-19 a__home:19 a__i:15 a__lado:-24 a__no:28 a__now:29 a__one:31 a_car:-87 a_different:29
a_la:96 a_las:-17 a_mi:43 a_new:48 a_otro:-25 accident:85 across:23 after:18 after_the:38 agradezco:-49 ahorita:-27
ahorita_no:-15 airport:-14 al:73 algo:-17 all:-49 along:18 already:-29 already__it:-14 an__change:15 an_oil:15 and:63
and__is:-28 and__it:52 and__was:18 and_i:24 and_it:-18 and_never:31 and_the:25 and_what:18 anda:28 ando:-26 ano:15
ano_$:17 another:-15 antes:-39 any:24 any_more:35 anymore:83 anymore_$:52 are:-41 army:19 asi:31 asi__no:18
asi_que:24 ask:-56 ask__in:-18 ask_me:-16 at:-46 b:14 back:43 back_$:57 back__the:21 back_by:-16 back_on:-25
back_to:16 baja:31 baja_$:14 banco:24 banco_$:19 bank:122 be:-24 be_done:-15 been_done:-16 before:-14 before_$:-15
bici:-31 bless:14 blue:18 blue_one:25 boat:24 both:30 both_$:23 bottom:27 bought:105 bought_it:106 bring_it:-16
brother:25 bucks:17 by:-33 by_$:-16 call:-23 cambie_por:105 cambio:26 came:41 camioneta:18 can:-72 can_i:-34
can_my:-36 cancel:21 cancel_it:22 cant:-49 cant__it:-44 car:60 car_$:-27 car__to:24 car__totaled:22 car_and:41
car_is:75 car_was:31 care:-41 care_of:-47 carro_$:20 carro__lo:20 carro_ya:59 cars_$:-41 casa:-15 cel:-18 charge:14
charge_for:15 chocaron:20 chocaron_y:15 choco:-17 choque:19 compa:19 company:21 compre:34 con__y:18 con_el:18
conozco:-46 conozco_$:-40 could:-15 couldnt:15 cual:14 cuando:33 cuando_me:32 cuantas:14 cuanto:-18 days:18 days_$:22
de:59 de__de:-18 de__el:15 de__para:32 de_ahi:17 de_baja:36 de_los:21 de_mi:-33 de_nuevo:-37 dead:-27 decided:-17
dejo:-14 del:15 desde:21 di:81 di_de:39 dia:-36 diciembre:14 did:-34 did_it:-23 died:-86 died__the:-40 dieron:17
different:23 digame:15 dime:-31 dinero:-23 dios_lo:-15 do:-110 do__charge:14 do__sell:-38 do__work:16 do_i:-17
do_it:-44 do_you:-25 doesnt:-15 donated:54 done:-159 done_$:-75 done__the:-19 done_by:-14 done_in:-22 done_last:-17
dont:14 dont__a:-108 dont__it:27 dont__that:101 dont__the:29 dont_have:82 dont_know:-16 dont_need:-21 dont_own:14
dont_want:-27 dos:52 drive:14 driver:23 driveway:29 drop:-31 drop__car:-14 drop__off:-24 drop_it:-25 drop_the:-14
dueno:53 dueno_$:43 el:81 el__de:-14 el__ese:21 el__lo:26 el__no:-14 el__pasado:20 el__y:29 el_carro:-18 el_dueno:25
el_jueves:-20 el_lunes:-16 el_total:-37 en:132 en__de:23 en__el:16 en__parte:-23 en__taller:-49 en__y:20
en_diciembre:14 en_dos:17 en_el:77 en_enero:41 en_la:-33 en_otra:-25 en_otro:-40 en_paz:25 en_una:14 end:14 end_of:14
ended:15 enero:40 enero_$:34 entregue:19 era:17 es__el:-21 es__ya:14 es_el:-26 es_mio:57 es_un:-18 esa:51 ese:189
ese_$:60 ese__lo:63 ese__ya:19 ese_carro:115 eso__lo:-31 eso_de:14 eso_ya:-18 esposa:-20 esta:-25 esta_$:-15
esta_en:23 este:-63 este_cel:-17 este_numero:-36 estoy:-14 ex:156 favor:-16 fell:30 fine:-22 fine_$:-27 fixed:-20
fleet:16 for_$:20 for__oil:15 for_a:51 for_an:15 for_me:-18 for_now:-31 for_that:-52 found:53 found_a:19 free:-18
frenos:-24 friday:-27 friday_$:-21 from:33 from_me:30 fue:95 fui:14 fyi:30 gave:36 gave_it:24 get:-55 get__done:-18
get_it:-27 getting:-27 going:-30 going_to:-22 gone:197 gone_$:125 good:-14 got:82 got__done:-22 got__in:32
got__of:146 got_it:-31 got_my:-16 got_on:-20 got_rid:130 got_to:-55 got_totaled:32 great:15 grua:15 guagua:14 hace:41
had:-35 had__done:-37 had_it:-30 had_to:14 has:29 has_it:46 has_the:-21 hasta:-29 have:14 have__back:-16 have__car:19
have__it:-14 have_a:-52 have_it:37 have_someone:-26 have_that:39 have_the:72 have_to:-19 havent:14 he:-22 hecho:14
here:-20 here_$:-16 hes:16 highway:-36 highway_$:-29 hija:31 hijo:19 history:25 hit:17 hizo:-51 hizo_mi:-42 hold:-25
hold_off:-19 home_$:18 horas:16 horas_$:17 how:-30 hubby:-41 i:-40 i__have:36 i__the:-30 i__to:-31 i__up:21
i_cant:-15 i_changed:14 i_drive:44 i_drop:-16 i_get:-19 i_got:-31 i_had:-14 i_have:-55 i_let:23 i_need:-15
i_should:14 i_sold:34 i_take:-16 idea:24 if:-18 if_i:-14 iglesia:52 ill:-22 im:-103 im__it:-17 im__the:-31
im__with:-14 im_driving:-15 im_not:-36 in:123 in_$:15 in__car:-14 in_law:-28 in_the:15 insurance:33 insurance__it:20
into:-40 is:-43 is__a:-22 is__at:-18 is__in:22 is__now:-20 is__of:18 is__on:-22 is__total:-23 is_been:14 is_fine:-31
is_gone:143 is_got:-31 is_it:-62 is_my:-37 is_not:50 is_out:17 is_that:-30 is_the:-39 isnt:-30 it:285 it_$:-31
it__a:33 it__after:44 it__been:19 it__by:-29 it__done:-15 it__for:23 it__friday:-32 it__got:-31 it__i:26 it__it:-30
it__me:69 it__next:14 it__not:50 it__the:47 it__to:82 it__totaled:43 it_a:-15 it_and:18 it_back:85 it_be:-20
it_died:-39 it_done:-63 it_for:22 it_got:51 it_in:67 it_is:33 it_now:77 it_off:49 it_on:45 it_out:32 it_to:27
it_went:34 jajaja:36 jueves:-23 jueves_$:-20 junio:22 junked:23 junked_it:16 junkyard:22 just:-14 k:-35 k_$:-24
kids:-32 know_$:19 la:148 la__del:19 la__el:19 la__en:21 la__la:38 la__mi:-16 la__pero:14 la__por:83 la_bici:-19
la_iglesia:53 la_troca:-17 lado:-28 lado_$:-23 las:-19 last:68 last_month:24 last_night:17 last_week:15 le:-48
lease:45 leave:-29 leave_it:-20 left:15 les:-17 let:30 lets:-24 lets__it:-18 lets_get:-17 like:-49 llevar_el:15
lleve:-20 lleve__otro:-24 llevo:27 llevo_$:-22 llevo_a:20 lo:261 lo__a:156 lo__al:53 lo__de:48 lo__hace:22 lo__mi:28
lo__por:102 lo__y:18 lo__yo:-22 lo_cambie:-46 lo_cambio:29 lo_choque:29 lo_di:83 lo_entregue:18 lo_hice:-14
lo_hicieron:15 lo_hizo:-58 lo_lleve:-18 lo_llevo:18 lo_mande:21 lo_mas:-17 lo_que:-23 lo_tiene:48 lo_vendi:109
lo_vendimos:49 lo_voy:-35 lol:-26 lol_$:-21 long:30 longer:103 longer__it:53 longer__the:57 longer_have:58 los:30
los__me:23 los_conozco:-42 los_dos:27 lost:19 lot:35 lunes:-16 make:-50 make__to:-33 make_it:-49 man:24 manana:-16
mandaron:16 mande:21 manejo:58 mano:15 me:-52 me_$:20 me__de:15 me__el:-36 me__en:-14 me__la:-38 me__mas:18 me__of:14
me_dieron:19 me_in:-25 me_la:44 me_lo:23 me_off:16 me_out:14 mecanico:-30 mecanico_$:-23 mejor__y:14 mes_$:-14
metal:18 mi__choco:-21 mi__se:56 mi__ya:-19 mi_carro:-39 mi_esposa:-19 mi_hermano:14 mi_hija:38 mi_hijo:18
mi_mecanico:-17 mi_primo:-17 mi_suegro:14 mi_vecino:14 mil:16 miles:-22 millaje:15 mine:61 mine_$:-19 minivan:14
mio:52 mio_$:26 mismo:-17 mom:14 more:114 more_$:53 more__i:15 more_than:14 my:18 my__back:-17 my__in:-24
my__says:-22 my_brother:27 my_car:-71 my_ex:79 my_mom:17 my_nephew:17 my_wife:-35 need:-71 need_it:-20 need_to:-18
neighbor:15 neither:43 nephew:21 new:89 new__in:15 new_one:57 ni__conozco:-40 ni_los:-40 ninguno:14 nino:-14 no:-47
no_$:-114 no__a:-18 no__carro:-67 no__con:15 no__de:-31 no__esa:20 no__ese:107 no__este:-20 no__have:62 no__here:-15
no__it:25 no__la:21 no__the:19 no_car:-15 no_es:53 no_hay:15 no_idea:19 no_la:17 no_longer:107 no_manden:-15
no_manejo:57 no_me:-25 no_more:78 no_puedo:-17 no_tengo:-93 no_tiene:-19 no_traigo:26 no_ya:-20 noise:-15 nomas:-20
nombre:15 nos:27 not:-45 not__car:-15 not__it:-14 not__now:14 not_a:-18 not_my:-22 not_now:-15 not_the:-25 now:181
now_$:122 nueva:70 nueva_$:59 nuevo:-74 nuevo_$:-65 number:-54 numero:-52 numero_$:-19 nunca:14 o:-16 of:68 of_it:15
of_the:68 off:63 off_$:16 off__now:-22 off__the:45 off_for:-24 off_me:33 off_the:-19 oh:16 ohio:27 oil_change:14
ok:-20 old:54 on:-85 on_$:-16 on__highway:-35 on_it:-50 on_sunday:16 on_the:-48 one:160 one__my:16 one_is:32 only:-19
opt:-18 or:-16 otra:-19 otra_$:19 otro:85 otro_$:118 otro_carro:27 otro_lado:-27 otro_taller:-50 our:26 out:52
out__the:28 out_of:35 out_on:15 over:-14 own:62 owns:34 paid:44 paid_$:26 para:58 para_otro:30 parking:32
parking_lot:27 parte:-21 partes:15 pasado:19 paso:31 paso_a:44 passed:77 past:-18 past_$:-17 paz:25 perdi:40
perdida:39 perdida_total:27 pero_digame:15 phone:-35 pickup:14 pie:23 place:-26 please:16 please_$:-16 please__my:33
pongame:-16 por:224 por__y:19 por_el:32 por_favor:-15 por_un:21 por_una:122 posible:-41 posible_$:-40 primo:-19
pronto:-17 pueden:-20 pueden__de:-17 puedo:-26 que__eso:15 que_cobran:-16 que_lo:20 que_no:15 que_ya:28 quedo:98
quick:-14 quit:26 quit_texting:42 radio:21 rid:130 rid_of:130 ride:-14 robaron:36 robaron_la:-17 robo:-17 rotated:16
said:34 same:-15 saque:20 says:-26 scrapped:42 se:82 se__cambie:-32 se__con:25 se__hizo:-19 se__llevo:69 se_fue:49
se_le:-22 se_lo:110 se_me:-16 se_quedo:19 see:-28 see__then:-15 see_you:-15 seguro:34 sell:-46 senor:-21 senora:14
shop:-23 shop_$:-15 should:22 si__llevo:-16 si__que:14 si_lo:-17 siempre_$:18 sin:-16 sitting:16 sky:20 so:22
so__is:15 so_i:17 sold:181 sold_$:-29 sold__car:48 sold__the:27 sold_it:88 sold_that:24 sold_the:42 solo:-14 some:16
something:14 son:-26 soon:-29 soy_el:21 soy_la:-17 spring:20 still:-19 stolen:44 su:-22 suegro:14 sunday_$:-17
swap:14 swapped:40 take:-18 talk:-14 taller:-60 taller_$:-42 tarde:16 tax:-16 tax_$:-33 telefono:-15 tengo:-153
tengo_$:-33 tengo_carro:-64 tengo_que:-22 texting:53 texting_$:49 texts:-20 texts_$:-24 th:-16 that:114 that_$:-79
that__in:18 that__is:30 that__my:14 that__to:16 that_car:55 that_done:-30 that_is:-28 that_one:54 the:135 the__and:73
the__anymore:23 the__are:-16 the__before:-15 the__car:16 the__for:-28 the__got:20 the__no:-14 the__of:-38 the__one:33
the_airport:-14 the_bank:14 the_blue:16 the_bus:-14 the_car:21 the_dealer:-21 the_highway:-35 the_kids:-15 the_new:22
the_next:14 the_old:25 the_owner:-28 the_sedan:14 the_sky:20 the_texts:-14 the_th:-15 the_total:-23 the_van:60
the_white:18 the_wrong:-16 them:43 then:-18 there:-35 there_$:-20 these_$:-16 these_days:24 they:29 they__it:32
think_$:15 this:-100 this_number:-32 this_phone:-14 tiene:22 tienen:-16 till:-33 time:-58 time_$:-20 to:17
to__and:-15 to__daughter:16 to__it:-38 to__the:-33 to__to:-14 to_a:29 to_ask:-38 to_be:-15 to_bring:14 to_drive:-18
to_my:108 to_that:16 to_the:71 today:-51 today_$:-50 todo:-15 too:-18 took:144 took__of:-45 took__to:-23
took_care:-45 took_it:84 took_the:108 total:-81 total_$:-40 totaled:102 trabajo:-16 traded:107 traded__in:40
traded_it:65 traigo:47 tree:31 troca_$:-17 truck:21 truck_$:-49 tuesday:20 tuesday_$:14 twice:-40 twice_today:-47
two:19 un:32 una:119 under:38 uno:23 until:-16 up:23 up__a:18 update:14 use:-30 used:-29 ustedes:-28 van:67
vehiculo:19 vender:-40 vendi:151 vendi_$:43 vendimos:73 vez:-21 vida:26 voy:-58 voy_a:-52 wagon:28 want:-33
want_it:-21 was:59 we:79 we__it:16 we__that:41 we__to:16 we_are:-16 we_dont:18 we_have:-34 went:66 went__the:37
went_to:53 were:-22 what:-24 what__the:-25 what__you:14 what_do:14 what_is:-34 what_was:19 when:-54 when_the:-21
who:-14 wife__it:15 wife_says:-14 will:-48 will_be:14 will_it:-32 with:-40 with__i:20 with__texts:-14 with_someone:19
with_the:-15 work_on:16 would:-20 would__have:-15 would_i:-24 write:20 wrong:-28 wrote:53 wrote_it:53 y:75 y__ahi:18
y__en:26 y__no:21 y_de:18 y_me:-15 ya:74 ya__a:32 ya__cambie:-66 ya__de:23 ya__en:23 ya__es:70 ya__la:32
ya__lleve:-31 ya__lo:-57 ya__manden:-14 ya__me:-23 ya__mi:-24 ya__tengo:83 ya__tiene:25 ya__vendi:45 ya_es:14
ya_lo:-83 ya_me:-26 ya_ni:19 ya_no:277 ya_paso:30 ya_quedo:-14 ya_se:-59 ya_tengo:16 ya_vendi:14 yes:-27 yo:-103
yo_$:-18 yo__tengo:-27 yo_ni:-30 yo_no:-35 yonke:14 you:-176 you_$:-19 you__for:15 you__it:-25 you__me:-15 you__on:14
you__the:-24 you_can:18 you_charge:14 you_sell:-39 you_then:-15 you_work:16 your_list:19
"""
