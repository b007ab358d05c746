"""What speaks for and against `stop`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "stop"
BIAS = -150
WEIGHTS = """\
#abaj:35 #abin:-29 #abla:-28 #able:-23 #abou:-106 #acac:-16 #acar:-38 #acce:-20 #acci:-17 #acei:-14 #acte:35
#acti:-42 #acto:33 #ados:-38 #agai:59 #agan:22 #agen:-30 #ages:62 #agin:51 #agre:23 #ahor:-23 #aili:15 #ajan:14
#ajes:61 #ajit:32 #aken:55 #akes:-35 #alin:-17 #alir:79 #allo:-14 #alls:-26 #ally:-54 #alon:46 #alre:65 #also:20
#alta:-21 #alto:16 #amas:20 #ambi:-29 #amen:-26 #anan:-27 #anas:14 #andl:-41 #ando:26 #anej:-17 #ange:-26 #angi:31
#anks:-32 #anme:-19 #anno:-36 #anot:15 #anse:15 #anta:-61 #ante:31 #anto:-20 #anyt:62 #apag:-16 #appo:-21 #aque:45
#aqui:93 #aran:23 #arar:43 #arca:-18 #arde:-42 #arel:-26 #aren:97 #arin:23 #ario:-34 #arly:-43 #arme:-38 #aron:-55
#arre:-20 #arro:15 #arte:21 #asap:-15 #aske:30 #aski:18 #asta:23 #aste:-22 #asti:-30 #atch:15 #atel:-19 #atev:27
#atic:-15 #atin:-42 #ator:-38 #atos:56 #augh:32 #auto:21 #aved:-16 #aven:-21 #avis:-45 #avor:75 #away:58 #ayor:20
#back:-61 #baja:68 #bajo:24 #bare:-26 #base:96 #bast:15 #been:-33 #befo:-34 #bein:38 #belo:15 #bett:-19 #bien:-51
#bloc:-74 #blow:18 #body:17 #book:-41 #borr:139 #both:-34 #boug:-25 #bout:-107 #brak:-28 #brar:-16 #busy:-61 #bvio:14
#cabi:-29 #cado:-23 #call:-115 #camb:-25 #came:85 #camp:17 #canc:40 #cant:-62 #carr:16 #ccep:-14 #ccid:-17 #ceit:-14
#cela:76 #cele:-36 #cell:40 #celo:-59 #celu:21 #cept:-17 #chan:-30 #chec:-41 #ched:-24 #chen:14 #chin:15 #chos:-24
#cibi:62 #cide:-18 #cita:-86 #cked:-98 #ckin:20 #clar:27 #coff:-22 #come:-25 #comi:-26 #como:-123 #comp:-23 #cons:37
#cont:176 #conv:-16 #cord:-23 #corr:18 #cosa:31 #coul:-15 #coun:16 #crap:32 #cras:-27 #crat:18 #crib:95 #crip:16
#cros:-24 #cten:36 #ctio:-28 #ctiv:-54 #cult:-38 #dand:-34 #dato:21 #daug:34 #days:-20 #deja:29 #deje:-58 #dele:18
#dent:-35 #ders:-21 #desh:-19 #dici:27 #diga:-15 #dije:46 #dine:-38 #ding:68 #dire:-38 #disc:32 #dled:-30 #does:-65
#dond:-25 #done:23 #dont:27 #driv:21 #drop:63 #dule:-28 #eady:40 #eali:-14 #eand:17 #eant:-17 #eard:-15 #eari:23
#earl:-45 #earm:-18 #ease:49 #eati:-15 #eave:-116 #ecal:-14 #ecib:58 #ecie:15 #ecio:-21 #ecor:-14 #eden:-46 #edes:24
#edul:-28 #eeds:-14 #efon:29 #efor:-34 #egan:-22 #egat:-25 #egre:-33 #egue:15 #eing:37 #eite:-14 #eith:-18 #ejam:30
#ejen:52 #elar:100 #elef:29 #elen:-37 #elep:-14 #elet:15 #elim:63 #elon:16 #else:50 #elta:-14 #elul:21 #elva:45
#embe:-23 #emem:-21 #emen:26 #emer:63 #emin:-21 #emov:88 #empr:-51 #enci:55 #ende:-27 #endi:69 #enga:69 #engo:-24
#enle:99 #enme:211 #enos:-17 #enou:17 #ensa:26 #enti:18 #entr:-15 #envi:42 #eone:-27 #epai:15 #epho:-14 #eply:18
#epor:117 #eque:23 #equi:-33 #erdo:-18 #erer:-29 #eres:27 #erge:63 #ermi:69 #eron:-20 #erso:32 #esad:25 #escr:55
#esen:14 #esnt:-35 #espo:-24 #essa:28 #esta:18 #este:96 #esti:-14 #esto:44 #eted:17 #eten:74 #etir:41 #ette:-24
#ever:116 #evok:166 #ewhe:-16 #exac:15 #expl:-18 #exte:213 #exti:38 #exto:62 #exts:-28 #eyre:-16 #favo:75 #feel:-42
#ffee:-22 #fica:15 #filt:-30 #fine:-25 #foll:167 #fono:30 #fore:-54 #forg:-24 #frai:23 #fren:-16 #frid:-46 #from:149
#fuer:20 #furt:78 #gain:59 #gand:32 #gati:-25 #genc:61 #gend:-28 #ghte:33 #ging:97 #give:-16 #goin:-56 #gone:29
#good:-24 #grea:-24 #gree:27 #gres:-16 #grin:17 #guen:20 #gust:-19 #habl:-47 #hace:-28 #hago:-50 #hanc:-42 #hand:-33
#hank:-22 #have:-29 #head:-25 #hear:36 #heav:-21 #heck:-25 #hedu:-28 #here:-21 #hers:-30 #hese:157 #heyr:-16
#hill:-19 #hing:55 #hird:16 #hitc:14 #hold:-66 #hone:35 #hops:32 #hora:-59 #hose:-19 #hour:27 #hter:34 #hurs:-16
#huts:-22 #iado:-37 #iban:28 #ibed:-16 #ibir:124 #ible:-25 #icie:20 #icos:16 #iday:-47 #idea:22 #iden:41 #iend:19
#iene:-21 #iero:25 #ieve:14 #ific:14 #igan:-74 #ight:-66 #ilin:15 #illa:-17 #ille:14 #ilte:-29 #imes:129 #imin:63
#imon:21 #inat:-31 #inde:-18 #indi:15 #indl:42 #inen:55 #iner:-38 #info:74 #ingu:-16 #inst:-22 #intm:-20 #ious:24
#iper:-43 #ippe:-39 #ires:-52 #irve:-42 #isar:-36 #isco:37 #isnt:-101 #issi:51 #ista:20 #isti:-17 #itch:24 #iten:35
#ithe:-18 #itos:32 #iven:-29 #ivin:18 #ivoc:-20 #jama:20 #jame:31 #jenl:-59 #jenm:45 #jito:32 #jove:22 #june:-17
#just:-148 #keep:-68 #keys:-16 #kill:48 #kind:35 #king:-22 #knoc:-27 #know:-29 #lace:20 #lama:-28 #lame:-37 #lant:-64
#laro:28 #last:38 #late:-33 #ldnt:-21 #leas:32 #leav:-101 #lefo:29 #lega:-21 #legu:18 #leme:16 #leph:-14 #less:-50
#lest:62 #lete:15 #ligh:-21 #like:-98 #limi:65 #line:-17 #list:63 #live:22 #llam:-54 #llan:-58 #llas:-14 #llow:156
#loca:-25 #lock:-82 #lone:48 #long:63 #lose:-15 #lrea:65 #lsew:-28 #lter:-29 #ltos:-25 #ltur:-38 #lula:21 #lvan:36
#lver:-49 #lvid:65 #maci:15 #make:-46 #mana:-38 #mane:-18 #many:46 #marc:-23 #mayo:17 #mber:59 #mbie:-14 #mean:28
#memb:-21 #menm:-18 #mens:28 #ment:16 #meon:-27 #merg:63 #mero:63 #mess:27 #mien:21 #mijo:14 #mind:-32 #mine:44
#ming:-23 #miso:20 #miss:42 #mist:-22 #moki:-34 #mole:62 #mone:-29 #mont:-25 #more:182 #morn:-15 #moth:-17 #move:84
#mpra:-47 #much:-66 #must:-21 #nada:63 #nana:-27 #nate:-14 #ncel:43 #nces:-42 #ncie:60 #ndan:-25 #ndar:25 #nday:-15
#nded:-26 #nden:50 #nder:-15 #ndin:75 #ndle:-30 #ndly:42 #need:-73 #nega:-25 #neit:-16 #nero:-34 #neve:61 #ngan:84
#nged:-20 #nger:56 #ngin:41 #ngun:-16 #nigh:-15 #ning:-38 #nnoy:-36 #nobo:17 #noch:-57 #nock:-27 #noma:-15 #none:16
#norm:16 #noti:21 #noug:17 #noyi:-35 #nsaj:28 #nsen:61 #nsta:-15 #nsto:-89 #nstr:-18 #nsub:82 #ntac:160 #ntas:-42
#nted:45 #nten:-19 #ntie:15 #ntif:-16 #ntin:25 #ntme:-20 #ntry:35 #nuda:-25 #nuev:-113 #numb:82 #nume:69 #nunc:29
#nvie:27 #nyth:64 #obod:17 #obot:25 #obvi:14 #ocad:-20 #ocat:-22 #oche:-58 #ocke:-100 #ocki:21 #ocup:-25 #oesn:-35
#offe:-23 #oiga:20 #oing:-60 #oint:-17 #okin:-45 #oles:61 #ollo:166 #olve:-49 #olvi:59 #omas:-15 #omeo:-27 #omet:-19
#omin:-28 #ompa:-17 #once:-23 #onde:-26 #oner:-22 #oney:-29 #onge:57 #ongs:18 #onse:56 #onst:-17 #onta:156 #onth:-24
#opte:49 #orar:-26 #orda:-44 #ords:18 #orev:-21 #orge:-17 #orio:-35 #orks:-27 #orma:30 #orni:-15 #orqu:16 #orre:162
#orry:-71 #orst:21 #orte:91 #osas:29 #oses:-19 #osse:-20 #othe:-43 #otif:15 #ould:-42 #ound:-14 #ount:16 #ousl:25
#oven:21 #over:-27 #ower:-20 #oyin:-35 #paid:15 #pana:14 #pare:99 #pedi:19 #perd:-24 #perm:71 #pero:-30 #pete:17
#phil:-19 #phon:36 #pido:20 #plac:18 #plea:51 #poin:-15 #pone:-21 #porq:16 #port:122 #powe:-20 #pped:-34 #ppoi:-21
#pran:-47 #prec:-19 #pric:-14 #proc:-26 #prop:22 #pued:-104 #pues:-17 #pull:77 #puro:-20 #qued:-21 #quen:43 #quer:-29
#ques:20 #quit:94 #quiv:-31 #raba:30 #rain:14 #rake:-28 #rale:16 #rand:-15 #rano:-47 #rari:-26 #raro:-23 #rast:-27
#ratc:18 #rdat:-35 #rday:-15 #rdon:-15 #reac:-26 #read:14 #reca:-17 #reci:52 #reco:-16 #rect:20 #regl:-16 #regr:-33
#rely:-28 #remi:-22 #remo:87 #renl:88 #renm:33 #repo:113 #resu:-77 #reti:41 #reve:-22 #revo:175 #rgen:62 #rget:-17
#riba:29 #ribi:55 #rida:-46 #rike:20 #rind:17 #ring:-17 #rios:-32 #ripp:-39 #rivi:20 #rmac:15 #rmal:16 #rmat:14
#rmis:72 #rnin:-16 #robo:38 #rong:-74 #ross:-24 #rrec:22 #rreg:-16 #rren:87 #rryi:-34 #rsda:-14 #rsel:-16 #rson:32
#rted:79 #rthe:78 #ruct:-18 #ruid:-21 #rven:-16 #ryin:-34 #saca:70 #sage:-24 #sagi:52 #said:69 #saji:32 #sali:64
#saqu:45 #sarm:-24 #save:-17 #sche:-28 #scon:36 #scra:40 #scri:110 #sday:-21 #self:-17 #send:142 #sent:58 #sewh:-28
#ship:14 #shop:-25 #shut:-27 #siga:-55 #simo:20 #sion:49 #sirv:-43 #sist:20 #sked:31 #skin:18 #smok:-39 #sold:35
#solo:-14 #some:-43 #sona:43 #sorr:-37 #spam:59 #sper:-18 #spon:-40 #spos:-14 #ssag:29 #ssio:51 #stak:-22 #stal:-14
#stan:57 #star:-25 #stas:22 #sted:39 #stem:57 #sten:55 #ster:-14 #stil:57 #stin:-44 #stop:249 #stos:28 #stru:-18
#stuf:25 #sual:-44 #sume:-23 #sure:-23 #susc:32 #syst:43 #taba:41 #tact:160 #take:110 #tall:-17 #tand:51 #tard:-46
#tart:-67 #tean:17 #tede:24 #teen:33 #tele:15 #tell:-39 #tely:-14 #tema:14 #temp:-47 #teng:54 #tenm:81 #tere:33
#teve:27 #text:214 #than:-46 #that:-54 #them:-50 #ther:57 #thes:157 #they:-25 #thin:56 #thir:16 #this:79 #thur:-16
#tien:41 #tigh:-15 #till:50 #time:84 #timi:21 #tina:-32 #ting:-81 #tion:-28 #tire:-53 #tive:-31 #tmen:-20 #todo:38
#topa:232 #topp:24 #tori:16 #trab:36 #tras:-14 #trik:20 #truc:-17 #tter:-31 #ttin:-17 #tuff:25 #ture:-39 #twic:-21
#uall:-46 #uand:15 #uant:-16 #ucho:-27 #ucti:-18 #udar:-25 #ueal:-14 #uede:-56 #uedo:-63 #uelt:-15 #uelv:51 #uenm:40
#uera:20 #uere:-29 #uest:18 #ueva:-21 #uevo:-92 #ught:29 #uido:-26 #uien:-44 #uier:39 #uite:35 #uivo:-31 #ular:21
#uldn:-21 #umbe:82 #umer:69 #unfo:159 #unst:-89 #unsu:82 #untr:35 #uphi:-19 #ursd:-14 #urse:-18 #urth:78 #uscr:32
#usly:25 #usta:15 #uste:19 #usua:-44 #utor:51 #vaca:-21 #vers:-17 #very:-19 #vide:65 #vien:18 #viou:19 #visa:-46
#voca:-20 #voke:166 #volv:-51 #vuel:37 #wait:-38 #want:124 #week:-25 #what:-29 #when:-79 #wher:-27 #wice:-21
#wife:-36 #wint:-36 #wipe:49 #wish:56 #with:41 #wont:-14 #work:-36 #worr:-41 #wors:18 #woul:-25 #wron:-67 #xact:15
#xpli:-14 #xtea:28 #xted:41 #xtee:157 #xtin:-19 #xtos:54 #yeah:34 #year:33 #ying:-58 #your:91 #yste:43 #ythi:52
#zero:14 %again_later:-181 %again_later%bad:36 %again_later%bring:-53 %again_later%call_off:-133
%again_later%doubt:-29 %again_later%elsewhere:18 %again_later%fails:-28 %again_later%family:32
%again_later%gone_car:19 %again_later%how_long:-19 %again_later%leave_me:-51 %again_later%lift:-14
%again_later%message:-77 %again_later%money:21 %again_later%on_way:-47 %again_later%phone:49 %again_later%question:16
%again_later%refuse:66 %again_later%wrong_one:150 %agree:-74 %agree%away:23 %agree%bad:24 %agree%bring:-71
%agree%busy:-39 %agree%call_off:75 %agree%car:78 %agree%car_part:-50 %agree%do_it:31 %agree%elsewhere:43
%agree%fails:-28 %agree%gone_car:95 %agree%leave_me:18 %agree%message:-61 %agree%odometer:-17 %agree%phone:31
%agree%question:37 %agree%refuse:-128 %agree%season:17 %agree%staff:17 %agree%start_again:-90 %agree%wrong_one:31
%away:50 %away%bring:-47 %away%call_off:17 %away%car:-20 %away%fails:-35 %away%leave_me:61 %away%message:49
%away%on_way:44 %away%phone:17 %away%question:17 %away%refuse:17 %away%season:49 %away%staff:-23 %away%wrong_one:54
%bad:70 %bad%call_off:32 %bad%car_part:14 %bad%fails:61 %bad%leave_me:89 %bad%message:50 %bad%phone:32
%bad%wrong_one:31 %bring:-126 %bring%busy:-63 %bring%call_off:-108 %bring%car_part:-110 %bring%doubt:-20
%bring%elsewhere:28 %bring%fails:-65 %bring%family:-19 %bring%gone_car:32 %bring%how_long:-14 %bring%leave_me:-30
%bring%meaning:-36 %bring%message:27 %bring%money:-18 %bring%odometer:-73 %bring%on_way:-28 %bring%phone:32
%bring%place:-14 %bring%question:-19 %bring%refuse:-163 %bring%shift_it:-14 %bring%staff:17 %bring%start_again:14
%bring%thanks:33 %bring%who:51 %bring%wrong_one:-73 %busy:-132 %busy%call_off:-18 %busy%fails:-24 %busy%leave_me:-43
%busy%message:-21 %busy%money:-19 %busy%odometer:33 %busy%phone:22 %call_off:127 %call_off%car_part:-75
%call_off%elsewhere:-16 %call_off%family:-45 %call_off%how_long:31 %call_off%meaning:32 %call_off%message:240
%call_off%money:-35 %call_off%odometer:15 %call_off%on_way:-48 %call_off%opening:37 %call_off%pay_day:-25
%call_off%phone:-23 %call_off%question:24 %call_off%refuse:-114 %call_off%shift_it:-18 %call_off%start_again:110
%call_off%who:89 %call_off%wrong_one:-96 %car:-24 %car%gone_car:79 %car%leave_me:49 %car%message:110 %car%phone:-27
%car%refuse:22 %car%staff:-27 %car_part:-299 %car_part%fails:-42 %car_part%family:14 %car_part%leave_me:-140
%car_part%message:-133 %car_part%money:-14 %car_part%question:-15 %car_part%refuse:-72 %do_it:-51 %do_it%elsewhere:50
%do_it%family:16 %do_it%leave_me:77 %do_it%meaning:-30 %do_it%message:65 %do_it%staff:17 %do_it%wrong_one:44
%doubt:-62 %doubt%leave_me:-19 %doubt%message:-15 %doubt%thanks:18 %doubt%wrong_one:-24 %elsewhere:37
%elsewhere%gone_car:31 %elsewhere%leave_me:34 %elsewhere%message:59 %elsewhere%phone:31 %elsewhere%question:14
%elsewhere%refuse:22 %elsewhere%shift_it:18 %elsewhere%who:30 %fails%leave_me:66 %fails%message:20 %fails%money:-25
%fails%phone:68 %fails%question:-39 %fails%season:-25 %fails%smoke_smell:-34 %fails%start_again:-48 %fails%thanks:14
%fails%wrong_one:138 %family:-115 %family%leave_me:-23 %family%message:22 %family%odometer:-34 %family%question:20
%family%refuse:32 %family%start_again:40 %gone_car:-84 %gone_car%leave_me:60 %gone_car%question:-21
%gone_car%start_again:-21 %gone_car%thanks:16 %gone_car%wrong_one:-39 %how_long:-66 %how_long%leave_me:-26
%how_long%message:15 %how_long%opening:27 %how_long%question:-22 %how_long%refuse:-19 %leak:-14 %leave_me:566
%leave_me%lift:-31 %leave_me%meaning:-59 %leave_me%noise:-22 %leave_me%on_way:-21 %leave_me%opening:-26
%leave_me%pay_day:-32 %leave_me%phone:193 %leave_me%place:-23 %leave_me%refuse:-90 %leave_me%season:-34
%leave_me%smoke_smell:-24 %leave_me%staff:46 %leave_me%start_again:27 %leave_me%thanks:48 %leave_me%who:63
%leave_me%wrong_one:130 %lift:-54 %machine:15 %machine%wrong_one:24 %meaning:-40 %meaning%refuse:27 %message:290
%message%odometer:37 %message%pay_day:-36 %message%question:-111 %message%refuse:239 %message%shift_it:-38
%message%staff:-35 %message%start_again:-71 %message%thanks:93 %money:-117 %money%odometer:-22 %money%pay_day:-15
%money%question:-25 %money%refuse:27 %money%start_again:27 %money%wrong_one:15 %noise:-76 %noise%on_way:17
%noise%question:-17 %noise%refuse:-16 %odometer:45 %odometer%opening:-26 %odometer%phone:53 %odometer%place:-17
%odometer%question:44 %odometer%refuse:15 %odometer%wrong_one:120 %on_way:-106 %on_way%place:-18 %on_way%wrong_one:57
%opening:-26 %pay_day:-74 %pay_day%season:-34 %phone:-44 %phone%refuse:16 %phone%staff:-39 %phone%start_again:20
%phone%wrong_one:-54 %place:-113 %place%question:-53 %place%start_again:-16 %question:-259 %question%refuse:101
%question%season:47 %question%staff:-24 %question%start_again:49 %question%who:21 %question%wrong_one:27 %refuse:27
%refuse%shift_it:-24 %refuse%staff:30 %refuse%start_again:209 %refuse%thanks:38 %refuse%who:35 %refuse%wrong_one:40
%season:-63 %season%smoke_smell:-25 %season%wrong_one:-42 %shift_it:-116 %shift_it%start_again:-14
%shift_it%wrong_one:22 %smoke_smell:-43 %staff:-40 %staff%wrong_one:40 %start_again:-189 %start_again%thanks:20
%start_again%who:26 %start_again%wrong_one:155 %who:-28 @?:-69 @after_visit:63 @car:-28 @confirm_stop:300 @day:-16
@later:-23 @nothing:51 @offers:-61 @reading:-69 @times:-317 @walk_in:-56 ^_already:-23 ^_alto:59 ^_baja:34 ^_basta:32
^_better:-16 ^_call:-17 ^_can:-58 ^_cancel:197 ^_cancelar:120 ^_cancele:22 ^_cant:-26 ^_car:-54 ^_claro:34
^_como:-122 ^_con:-18 ^_cut:17 ^_de:-87 ^_dejame:31 ^_deje:-99 ^_dejen:84 ^_delete:-38 ^_do:100 ^_dont:-105 ^_drop:60
^_el:-19 ^_end:66 ^_enough:82 ^_es:-17 ^_ese:-48 ^_esta:-18 ^_este:-19 ^_estoy:-31 ^_fine:-15 ^_get:84 ^_go:108
^_got:-28 ^_great:-15 ^_how:-109 ^_i:69 ^_ill:-69 ^_im:29 ^_info:-58 ^_is:-43 ^_it:-28 ^_kill:49 ^_la:-20 ^_leave:-47
^_les:29 ^_llamenme:-16 ^_mande:-23 ^_me:-97 ^_my:-113 ^_neither:-15 ^_nel:-19 ^_new:-30 ^_no:-170 ^_nobody:24
^_none:17 ^_not:-122 ^_oh:-15 ^_oiga:18 ^_ok:-27 ^_one:-30 ^_opt:-64 ^_parar:48 ^_please:-20 ^_por:44 ^_pueden:-15
^_puro:-18 ^_quien:-24 ^_quiero:-85 ^_quit:107 ^_quiten:-30 ^_quitenme:22 ^_remove:26 ^_revoke:162 ^_salir:64
^_se:-59 ^_si:40 ^_simon:22 ^_sold:45 ^_something:-17 ^_soy:-17 ^_start:-19 ^_stop:261 ^_take:45 ^_te:-21 ^_tengo:-18
^_text:-73 ^_texting:66 ^_thanks:-15 ^_that:50 ^_the:-14 ^_this:-39 ^_un:34 ^_unsubscribe:54 ^_vuelvan:-19 ^_we:16
^_what:-83 ^_who:41 ^_why:-15 ^_wrong:-68 ^_ya:-15 ^_yeah:45 ^_yo:24 ^_youre:-18 ^_zero:14 a:-66 a__and:16
a__call:-16 a__is:-23 a__off:-21 a__y:24 a_car:31 a_este:53 a_favor:19 a_ir:21 a_los:27 a_mandarme:-14 a_month:-24
a_rip:-17 a_stop:-16 about:-106 about__tires:-18 about_the:-23 accident:-17 aceite:-14 again:59 again_$:20 agenda:-14
ahi:16 ahi_$:30 ahora:-16 al:-33 all:-14 alone:48 alone_$:14 already:65 already_$:37 already__the:49 already_with:34
also:20 alto:41 alto_$:40 am:-43 am_$:-54 am_i:48 an:-29 an__change:14 and:142 and__dont:22 and__is:24 and__text:-55
and__the:31 and_i:85 and_it:25 and_please:30 and_stop:36 ando:-15 annoying:-35 another:15 any:27 any__of:16
any_more:21 anymore_$:-45 anything:64 apaga:-23 appointment:-20 appointment_$:-14 aqui:94 aqui_$:103 are:78
are_you:21 as:31 asap:-15 asi:-42 asi_$:-29 asked:31 asked_for:15 asking:18 at:-137 at_that:-15 at_this:-18
at_work:-22 auto:-18 avisarme:-24 away:58 away_$:74 back:-59 back_on:-19 baja:58 baja_$:24 barely:-26 base:50
basta:15 be:174 be__a:24 be__your:53 be_in:42 be_on:25 been:-33 been__your:-30 been_to:-30 before:-34 before_i:36
being:38 belongs:18 belongs_to:18 best_$:17 better:-19 bien:-41 bien_asi:-21 blocking:22 blowing:19 book:-36
book_me:-33 borre:34 borre_mi:34 borren:72 borrenme:22 both:-18 bother:-15 bought:-25 bought_it:-24 brakes:-25
brakes__stop:-38 brakes_are:17 bus:-15 busy:-61 but:-20 by:-106 by_$:-46 by__way:18 by_accident:-16 by_friday:-28
by_the:17 cabin:-29 cabin_filter:-29 call:-96 call_$:-44 call__me:-46 call_me:-92 call_my:48 came:-22 came_up:-16
can:-108 can__be:74 can__stop:-60 can__take:-63 can_i:-15 can_stop:30 can_text:-21 can_you:-71 cancel:69 cancel_$:152
cancel__please:-56 cancel_it:-91 cancelar:101 cancelar_$:104 cancelar__cita:-25 cancelen:-28 cancelo:-59 cant:-62
cant__it:-16 cant_stop:-25 car:27 car_is:27 carro:17 carro__me:17 carro_no:17 cel:28 cell:41 celular:21 changed:-20
changing:32 cita:-86 cita_$:-58 cita__favor:-29 cita_por:-29 cita_y:15 claro:27 claro_$:-18 claro__si:30 claro_que:30
cobraron:-15 cobraron__mas:-14 cobraron_de:-14 coffee:-22 come:-22 coming:-14 como:-122 como__hago:-33 como_le:-33
con_los:60 con_mi:-25 consent:40 contact:85 contacten:36 contacten_$:34 contacto:22 cosas:29 cosas_$:16 could_you:14
couldnt:-19 count:-15 count_me:-15 country:35 cuando:18 cuando_me:14 cut:28 dar:14 datos:56 datos_$:52 daughter:34
days:-14 de:175 de__agenda:-14 de__base:50 de__en:-21 de__este:14 de__lista:55 de__mensajes:17 de__recordatorios:-18
de__textos:30 de__y:-16 de_ahi:31 de_baja:43 de_donde:-21 de_estar:26 de_las:-41 de_mandar:26 de_mandarme:27
de_mas:-15 de_mi:25 de_nuevo:-89 de_numero:-25 de_su:105 de_sus:27 de_una:-19 de_ustedes:21 dejame:31 deje:-102
dejen:72 dejen__estar:26 dejen__mandarme:-14 dejen_de:72 dejenme:38 del:-39 delete__number:21 delete_my:38 dia:-27
did_the:15 dije:50 dije_que:36 dinero:-38 do__a:19 do__contact:43 do__get:-32 do__have:45 do__take:-27 do__want:42
do_i:-61 do_it:-14 do_me:19 do_not:214 do_you:-66 does:-29 doesnt:-35 donde:-25 done:24 done_already:-17 dont:27
dont__a:47 dont__any:26 dont__it:54 dont__me:94 dont__texting:-129 dont__texts:-16 dont__the:-20 dont__this:14
dont__to:20 dont__you:14 dont__your:22 dont_call:-56 dont_do:-31 dont_have:15 dont_need:53 dont_stop:-224
dont_text:69 dont_want:36 driving:20 drop:63 drop_me:70 early:-38 early_$:-36 eating:-14 el:-121 el_$:-20 el_carro:21
el_precio:-16 el_ruido:-17 else:79 else_$:92 elsewhere:-28 elsewhere_$:-31 en:-68 en__noche:-51 en__taller:15
en_la:-73 en_los:-45 en_otro:22 en_paz:46 end_$:35 ended:-23 enough:17 equivocado:-20 equivocado__numero:-22
equivocado_de:-23 es:-91 es__el:-17 es__mi:-26 es__que:17 es__ya:21 es_de:-16 es_para:-29 es_que:15 escriban:30
escriban_$:67 escribir_$:38 escribirme:20 escribirme_$:21 ese:-84 ese_$:-15 ese__ya:-17 eso:-25 eso_$:-26 esta:-53
esta_bien:-24 estar:26 este:29 este_cel:17 este_numero:-21 este_telefono:15 esto:34 esto_$:39 estos:29 estoy_de:-19
ever:77 ever_$:29 falta:-15 favor:76 favor_and:19 favor_de:16 favor_ya:16 feel:-33 filter:-29 fin:15 fine:-25 for:93
for__lol:-21 for_good:14 for_me:-54 for_these:26 forever:-21 forget:-17 friday:-46 friday_$:-39 friday_but:17
friday_works:-15 from:149 from__text:52 from_me:-16 from_the:44 from_you:34 from_your:59 fue:-52 fuera:26 further:78
get:102 get__number:35 get_me:38 get_my:44 get_off:-36 get_these:36 getting_these:42 give:-14 go:92 go_away:109
going:-56 going_to:-37 gone:29 good:-28 got:-41 got__cancel:-29 got__wrong:16 got_in:-28 got_the:16 got_to:30
gracias_y:18 great:-21 grinding:17 guy:17 habla:-19 hace:-22 had:-27 had__done:38 had_it:33 hago:-50 hago_para:-40
handled:-30 handled_$:-29 hasta_el:14 hate:-28 have:-29 have__cancel:-27 have__car:47 have__say:52 have__to:66
have__wrong:24 have_a:35 have_had:-33 have_it:-35 have_my:-18 have_the:34 have_to:14 he:-28 hear:33 heard:-15
heard_of:-15 hearing:24 here:-28 here_$:-36 hicieron__en:16 him:-22 his:-37 hit:-15 hitch:14 hold:-65 hora:-16
horario:-27 horario_$:-27 hours:30 how:-133 how__i:-163 how_do:-175 how_i:-20 how_many:114 hoy:-19 i:-32 i__by:-53
i__do:-34 i__getting:42 i__got:-29 i__had:-33 i__in:-34 i__it:72 i__know:-14 i__longer:67 i__my:55 i__need:28
i__no:84 i__not:56 i__off:-24 i__out:32 i__smoking:-29 i__stop:-28 i__the:-36 i__them:-23 i__these:-94 i__to:-20
i__want:96 i__you:65 i_am:-37 i_be:83 i_cant:-28 i_do:48 i_dont:16 i_feel:-31 i_get:-19 i_got:22 i_had:21 i_have:-29
i_just:-31 i_keep:18 i_like:-84 i_mean:58 i_never:79 i_no:67 i_only:-14 i_quit:-28 i_said:100 i_sold:18 i_still:45
i_stop:-143 i_think:15 i_want:-34 id__not:14 idea:22 ill:-91 ill_take:-40 im__a:15 im__of:-14 im_not:-21 im_on:16
im_out:-24 in:-84 in_$:-139 in_june:-16 in_may:18 in_the:19 in_your:37 info:59 info_$:-16 info_please:56
informacion:15 informacion_$:15 interesa:-26 interesa_$:-26 interested:23 interested_$:-43 ir:-40 ir_$:-44 ire:-24
ire_$:-24 is:-36 is__an:-18 is_a:-33 is_for:66 is_getting:-34 is_gone:30 is_in:21 is_texting:-17 is_the:15
is_there:-24 is_this:-14 is_tight:-14 isnt:-101 it:-31 it_$:-36 it__how:-20 it__i:49 it__in:17 it__me:-18 it__with:34
it_again:40 it_done:27 it_for:61 it_out:22 it_was:-16 jamas:20 job:-45 job_$:-29 job_so:-14 joven:22 joven_$:17
june:-17 june_$:-17 just:-148 just__on:-48 just__this:-30 just_got:-29 keep:-64 keep_them:-23 keys:-16 keys_$:-16
kid:-16 kill:49 kindly:42 kindly_remove:17 knock:-23 know:-29 know_you:-16 la:-188 la_agenda:-14 la_cita:-19
la_noche:-51 las:-65 las_llantas:-38 last:-28 last_year:25 late:-19 le:-34 le__para:-27 le_hago:-34 lease:-18
leave:-95 leave__alone:53 leave__the:-16 leave_it:-41 leave_me:-25 les:74 les__que:60 les_dije:47 let:-17
lets__the:14 light:-19 like:-98 like_the:-16 list:52 list_$:22 list_please:18 lista:33 live:26 live__the:35
live_in:33 llamenme:-18 llamenme_por:-14 llanta:-17 llantas:-40 llantas_$:-38 lo:-39 lo__en:14 lo_que:16 location:-21
location_$:-21 lol:-99 lol_$:-65 lol_friday:-15 longer:58 longer__to:58 los:-60 los__de:-33 los__me:-17 los__por:-21
los_avisos:-18 los_mensajes:42 mailing:15 mailing_list:14 make:-44 make_it:-18 manana:-26 mandando:-34
mandando_$:-102 mandar:23 mandarme_recordatorios:-29 mande:-24 manden:51 manden_mas:38 manden_mensajes:-46
manden_nada:56 many:46 many__do:115 many_texts:-66 mas:361 mas_$:106 mas_mensajes:27 mayor:20 me:91 me_$:149 me__a:42
me__am:-52 me__dar:16 me__de:-57 me__el:-19 me__en:-77 me__hasta:15 me__i:31 me__in:-21 me__june:-15 me__like:-40
me__mas:174 me__mensajes:-42 me__nada:40 me__no:24 me__of:24 me__please:-53 me__por:-41 me__que:19 me__this:34
me__todo:15 me__your:41 me_a:-56 me_about:-66 me_again:50 me_and:35 me_at:-25 me_back:-37 me_be:15 me_before:-52
me_cobraron:-15 me_contacten:36 me_from:95 me_habla:-19 me_hicieron:14 me_i:-55 me_in:-28 me_interesa:-23 me_off:157
me_on:-29 me_sirve:-25 me_sirven:-15 me_so:-46 me_the:-22 me_tienen:15 me_up:-17 me_van:14 mean:46 meant:-17
mensaje:-64 mensajes:61 mensajes_$:127 mensajes__vez:-14 mensajes_a:20 mensajes_otra:-14 message:-85 message_$:-65
message_me:53 messages:62 messages_$:39 messages_please:14 messaging:52 messaging_this:30 mi:61 mi_$:-14 mi__para:31
mi__por:14 mi_cita:-62 mi_contacto:25 mi_numero:127 mi_telefono:42 mijo:14 min:-28 mine:-17 mio:-14 mis:22 money:-29
money__tight:-14 money_is:-14 month:-30 month_is:-23 more:183 more_$:55 more__i:63 more__please:33 more_messages:22
more_texts:26 more_than:-16 mother:-16 much:-34 much_$:-19 must:-21 must_have:-14 muy:-38 my:75 my__are:25
my__dont:32 my__for:20 my__from:24 my__off:15 my__on:-15 my__out:76 my__phone:32 my__please:91 my__so:-14
my_brakes:-15 my_car:-23 my_cell:34 my_daughter:37 my_info:115 my_job:-15 my_kid:-16 my_number:166 my_old:-14
my_own:-15 my_phone:30 my_wife:-33 my_work:30 nada:66 nada_$:63 need:-51 need__cancel:-19 need__oil:14 need_it:-16
need_to:-91 needs:-14 neither:-16 nel:-19 never:63 never__me:43 never__of:-15 never__to:41 never_been:-31
never_heard:-15 never_want:56 new:-49 new_phone:-16 ni:69 ni_un:17 no_$:-208 no__a:69 no__bien:-25 no__con:25
no__de:-126 no__escriban:-37 no__ese:-18 no__este:-15 no__gusta:21 no__interesa:-21 no__ir:-58 no__is:-16
no__manden:-28 no__mas:14 no__me:-27 no__mensajes:55 no__messages:30 no__mi:-18 no__no:16 no__para:-35 no__por:127
no__que:75 no__recibir:89 no__texts:30 no__them:-51 no__to:-76 no_and:20 no_es:-79 no_esta:-24 no_gracias:-23
no_i:-53 no_ire:-24 no_keep:-37 no_longer:59 no_los:-46 no_manden:53 no_mas:158 no_me:229 no_more:231 no_need:-82
no_no:-18 no_por:-15 no_puedo:-40 no_quiero:119 no_sigan:-37 no_thank:16 no_tiene:-16 no_trabajo:26 no_vuelvan:40
no_you:-32 nobody:17 noche:-56 noche_$:-55 nomas:-15 non:-54 none:16 none_of:17 normal:16 not:-14 not__car:-15
not__in:48 not__me:63 not__to:23 not_a:-17 not_at:-21 not_contact:43 not_for:-36 not_going:-27 not_interested:41
not_my:-17 not_now:-14 now:-15 now_$:-29 now__me:22 nueva:-19 nuevo:-92 nuevo_$:-65 number:83 number__your:14
number_again:49 number_from:34 number_is:47 number_off:21 numero:69 numero_$:58 numero__su:17 numero_de:18 nunca:19
nunca_mas:18 o:181 of:27 of__system:45 of_the:-23 of_them:36 of_these:37 of_this:-27 of_town:-24 of_you:-14
of_your:46 off:208 off_$:105 off__and:-63 off__i:16 off__schedule:-16 off_of:25 off_the:-26 off_this:81 off_your:52
oh:-16 oiga:20 oil_$:15 ok:-19 ok_$:31 on:-170 on_$:-52 on__list:-36 on_a:25 on_me:-57 on_my:-19 on_the:-30 once:-22
one:-21 one_$:-21 one__me:15 one_of:22 opt:-81 opt_out:38 or:89 otro_taller:15 out:109 out_$:54 out__town:-24
out__your:33 out_last:50 out_of:17 out_with:19 own:-19 para:-63 para__no:-21 para_mi:-16 para_que:-42 parar:30
parar_$:48 paren:19 paren_$:30 parenle:88 parenle__los:29 parte:32 parte_de:28 pass:-15 paz:46 people_$:18 perdon:-15
permiso:20 permission:52 pero:-28 persona:43 phone:50 phone_$:37 phone__to:23 phone_belongs:26 place:27 place_$:35
please:52 please_$:-45 please__my:15 please__texting:24 please__the:-36 please_dont:-65 please_stop:67 please_take:20
please_unsubscribe:27 poner:-21 por:-23 por__ya:16 por_favor:41 porque:16 power:-20 precio:-19 pueden:-46
pueden__a:-15 pueden__el:-16 puedo:-50 puedo_ir:-19 pull:79 puro:-20 put:-18 put__back:-15 que:142 que_$:-16
que__borren:42 que__de:32 que__los:21 que__manden:32 que__mi:22 que_me:93 que_paren:19 que_parte:20 que_si:27
querer:-29 quien:-42 quien_me:-22 quiero:46 quiero__a:-36 quiero__de:34 quiero__me:40 quiero__mensajes:-31
quiero_ir:-38 quiero_que:16 quiero_recibir:74 quit:68 quit_$:34 quit__job:-15 quit_it:77 quit_on:-58 quit_sending:42
quit_smoking:-33 quit_texting:37 quiten:-46 quiten__cita:-39 quiten__numero:38 quitenme:81 quitenme_$:52
quitenme_de:22 read:-21 ready:-24 ready_$:-21 receive_these:58 recibir:59 recordatorios:-33 recordatorios_$:-36
records:22 records_$:22 remember:-20 remember_$:-20 reminders:-16 reminders_$:-25 remove:70 remove_$:21
remove__from:18 remove__number:18 remove_me:25 remove_my:17 remove_the:-41 reply:18 report:33 restart:-27 revoke:166
revoke_$:124 right:-16 ring:-18 rip:-17 robot:27 ruido:-21 ruido_$:-18 saber:14 said:69 said_no:84 salir:79
salir_$:61 saved:-16 say:104 schedule:-24 schedule_$:-20 se:-99 se__de:-14 se_equivocado:-14 se_me:-38 see:-33
send:71 send_me:57 sending:70 sending_me:46 senor:-14 set:-16 shop:-56 shop_$:-42 shop_is:-18 shops:32 shuts:-22
shuts_off:-22 si_$:45 si__favor:-71 si__no:23 si_es:14 si_por:-71 si_quiero:-32 si_ya:47 sigan:-55 sigan_mandando:-45
sign:-25 sign__up:-14 sign_me:-17 simon:21 sin:-21 sin_querer:-29 sirve:-26 sirve_$:-25 sirven:-16 smoking:-34 so:-84
so__can:31 so_you:32 sold:42 sold__car:40 sold_the:40 solo:-14 someone:-27 someone_else:-16 something__up:-16
something_came:-16 sorry:-37 sorry_$:-20 soy__persona:35 soy_esa:16 start:-39 start__me:-21 start_texting:-17
still:57 stop:90 stop_$:322 stop__at:-20 stop__friday:-28 stop__here:-55 stop__it:-58 stop__me:19 stop__texts:-81
stop__these:19 stop_by:-103 stop_in:-18 stop_messaging:22 stop_sending:54 stop_texting:-39 stop_the:-72
stop_these:-46 stop_worrying:-34 strike:20 stuff:25 stuff_$:36 su:79 su__de:57 su_lista:32 sure:-22 sure_$:-15 sus:51
sus_mensajes:23 system:42 t:198 take:68 take__off:141 take_me:96 taken:70 tan:-83 tarde:-41 tarde_$:-36 te:-29
telefono:30 telefono_$:15 telephone:-14 tell:-39 tell_me:-38 temprano:-46 temprano_$:-44 tengo:-16 tengo_el:14
tengo_que:-21 text:-72 text_$:-32 text__again:61 text_list:33 text_me:-58 textearme:-18 texted:41 texting:-19
texting_$:-17 textos:60 textos_$:47 texts:-28 texts_$:-42 texts_again:-86 than:-23 thanks:-28 thanks_$:-19 that:-69
that_$:-16 that__my:-20 that__text:-77 that__the:29 that_car:-15 that_is:64 that_last:-46 that_one:-14 the:-117
the__again:-29 the__anymore:33 the__filter:-28 the__guy:15 the__i:-59 the__time:17 the_cabin:-29 the_car:55
the_country:35 the_job:-28 the_keys:-16 the_lease:-14 the_messages:-26 the_reminders:-40 the_schedule:-18
the_stop:-14 the_tire:-17 the_tires:-19 the_way:17 the_wrong:15 them:-50 them_$:-57 there:35 there_$:25 these:157
these_$:88 these_messages:73 these_texts:-25 theyre:-16 thing:26 thing_$:23 think__is:16 third:16 this:79 this_$:40
this__a:-23 this__again:60 this__belongs:18 this__is:58 this__me:15 this_isnt:-47 this_list:-22 this_number:63
this_phone:41 this_time:-16 tiene:-23 tight:-15 tight_$:-14 time:-41 times:130 tire:-20 tires:-52 tires_$:-20 to:-45
to_$:-24 to__daughter:39 to__from:37 to__in:35 to__my:-17 to__on:23 to__shop:-24 to__the:-92 to__these:74 to_be:79
to_call:-16 to_cancel:-63 to_get:22 to_hear:33 to_my:33 to_say:112 to_stop:-26 to_take:36 to_text:26 to_this:-19
to_your:-31 todo:27 todo_en:15 too:-58 too__texts:-19 too_many:-20 too_much:-22 tow:14 tow_hitch:14 trabajan:14
trabajo:26 troca_$:-18 twice:-21 two:-31 un:14 una:-45 unsubscribe:98 unsubscribe_$:54 unsubscribed:-16 up:-17
up_$:-19 up_my:17 uphill:-19 us:54 use:58 ustedes:24 ustedes_$:-29 ustedes__mi:25 usually:-44 vacaciones:-16 van:17
vendi__carro:25 vez_$:-14 volver:-49 volver_a:-49 voy_$:-18 voy__ir:22 voy_a:20 vuelta:-14 vuelvan:40
vuelvan__mandarme:-19 vuelvan_a:40 want:79 want__be:56 want__hear:33 want_it:-21 want_my:19 want_the:-22 want_to:56
was:-51 way_too:-19 we_dont:27 week:-21 week_$:-15 went__in:20 what:-56 what__i:-36 what_do:-34 what_i:30 what_is:-23
whatever:27 when:-78 when_i:-63 who:29 who__texting:-16 who__this:16 who__you:33 who_are:40 why:32 why__i:50 wife:-36
will__you:33 winter:-46 winter_$:-45 wipe:91 wipe_my:91 wipers:-41 with:24 with__texts:65 with_me:-14 with_my:-19
with_the:80 wont:-14 work_$:-14 work_phone:35 works:-27 works_$:-20 worrying:-34 worst:21 would:-23 wrong:-67
wrong_guy:24 wrong_number:-21 y:57 y__me:43 y_no:33 ya:58 ya__a:19 ya__con:24 ya__dije:61 ya__es:-26 ya__hicieron:14
ya__manden:31 ya__me:100 ya__tengo:19 ya_les:16 ya_lo:-22 ya_ni:18 ya_no:65 ya_parenle:88 yeah:34 yeah_$:34 year:25
year_$:-26 yes:18 yes_$:19 yes__it:-24 yes__you:-17 yes_all:63 yes_do:-16 yes_i:30 yes_please:-23 yo:53 yo__soy:14
yo_ni:15 you__me:-82 you__stop:66 you__the:30 you__this:-17 you_from:-15 you_got:15 you_have:50 you_kindly:43
you_must:-16 you_people:23 you_take:-68 you_tell:-32 you_text:-56 you_to:20 your:114 your__is:-29 your__list:15
your_list:27 your_mailing:14 your_records:28 your_reminders:33 your_shop:-49 your_system:33 yourself:-14 zero:14
"""
