"""What speaks for and against `thanks`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "thanks"
BIAS = -164
WEIGHTS = """\
#ablo:-25 #abra:110 #abre:-37 #aced:-27 #acep:-91 #acia:64 #acio:-38 #acor:34 #adec:127 #ades:-35 #adli:-36 #agra:149
#aint:-32 #aken:-80 #alie:25 #alki:30 #alme:100 #almo:32 #alre:-30 #alud:183 #alwa:54 #amal:49 #amar:-27 #amen:43
#amil:36 #anag:-30 #anda:-42 #ande:-31 #andi:45 #andl:32 #ando:-72 #andp:-28 #ange:68 #anks:82 #ante:-36 #anto:-36
#anul:-34 #anyt:77 #anyw:-95 #aper:-26 #apol:89 #appe:-37 #appo:-32 #appy:55 #apre:60 #aran:-25 #arav:-25 #argi:-37
#arin:-26 #ario:92 #arle:-25 #arlo:-42 #arme:-55 #aron:110 #arri:32 #arro:-42 #arse:39 #asdf:-132 #asen:123 #asis:-52
#aski:108 #asta:74 #aste:-39 #asto:-35 #atar:49 #atch:65 #aten:-57 #athe:-31 #atie:38 #ativ:-50 #ator:30 #atro:49
#attl:44 #aved:75 #avid:44 #avil:-25 #avis:59 #avor:-44 #awes:62 #awfu:25 #azon:-43 #baby:-44 #baja:-41 #bcap:-45
#bein:62 #bend:102 #best:35 #bido:84 #birt:-45 #blem:62 #bles:172 #blig:48 #boni:-46 #book:-107 #bout:29 #brar:50
#braz:119 #brea:55 #bren:-39 #brin:-26 #bsup:30 #buen:186 #cand:34 #card:39 #care:41 #casa:-30 #cate:-55 #cele:-57
#cent:74 #cept:-91 #chec:38 #ched:-39 #chee:50 #chev:33 #chid:68 #chis:64 #chri:59 #cias:46 #ciat:41 #cibi:60
#cido:53 #cion:-65 #cita:-76 #cket:-35 #clas:-36 #clie:47 #clin:-25 #cobr:-78 #comi:-27 #como:30 #comp:-79 #conf:-62
#cool:29 #cora:-43 #cord:30 #corr:-49 #crew:159 #crib:-39 #cuan:-26 #cupe:29 #curi:35 #dade:-34 #dads:53 #dame:35
#dand:-31 #dari:57 #darm:-31 #dars:55 #dato:109 #days:39 #deal:27 #dece:130 #deci:52 #decl:-26 #deja:-55 #dejo:-30
#deri:40 #ders:28 #desa:-59 #desd:-27 #dese:37 #desp:-38 #dici:45 #dito:30 #dlig:-26 #dnes:-36 #dobl:-71 #domi:36
#driv:-33 #dson:31 #duen:45 #each:61 #eadl:-37 #eads:27 #eari:-26 #ears:34 #eart:31 #east:32 #eath:-27 #ecen:76
#ecer:-28 #echa:-29 #echi:-37 #ecia:105 #ecib:61 #ecid:72 #edes:66 #edne:-29 #eeds:-31 #eeke:72 #eeks:-41 #eers:50
#efer:-29 #eful:56 #egat:-49 #egui:45 #eigh:65 #eing:52 #ejar:-55 #ejor:44 #eken:72 #elen:-51 #eler:-28 #eliz:110
#elli:25 #ello:136 #else:-49 #emin:-50 #emoj:44 #empo:-27 #enar:-63 #enas:32 #enci:-29 #enes:-27 #enga:44 #enme:30
#enta:-48 #ente:101 #ento:68 #entr:-27 #eopl:-26 #epla:-27 #equi:35 #erad:70 #erda:33 #erdo:36 #eren:-34 #eres:-47
#erfe:34 #eria:-52 #erie:33 #erin:60 #eros:-38 #erry:86 #erte:75 #ervi:47 #esde:-27 #eseo:37 #esom:62 #esor:-30
#espo:-26 #espu:-30 #esse:-25 #essi:133 #esto:-72 #esub:29 #etal:-72 #etir:-34 #etti:28 #ever:53 #evok:-37 #ewhe:-32
#exce:-56 #exte:-40 #fami:36 #faro:87 #favo:-44 #fect:30 #feli:117 #fell:-38 #fies:90 #fire:-32 #firm:-55 #firs:40
#flat:-32 #foco:-35 #folk:79 #free:-50 #fren:-31 #game:-39 #gati:-49 #ghin:25 #ghly:28 #ghts:28 #givi:38 #gles:-37
#gold:-42 #gone:54 #good:83 #grac:62 #grad:140 #grat:49 #grea:45 #gros:-52 #gual:94 #guno:-38 #gunt:68 #guys:79
#habl:-34 #hace:-34 #hake:50 #hall:-30 #hank:159 #hast:90 #hate:44 #have:28 #hday:-45 #heck:31 #heer:50 #hell:178
#help:-52 #heve:33 #hido:68 #hina:-37 #hine:42 #hing:-55 #hiri:-33 #hirr:46 #hoev:28 #hola:148 #holi:58 #home:40
#hone:-25 #houg:43 #hout:46 #hris:59 #hrou:-32 #hubc:-45 #humb:33 #iado:57 #iate:41 #ibir:-39 #ibra:40 #ices:36
#icke:-26 #iday:61 #idea:-89 #idit:29 #idos:79 #iemp:-25 #ient:88 #iera:-25 #iern:-28 #iest:61 #iged:46 #ight:87
#igua:90 #igue:-48 #ilen:45 #ilia:47 #illa:-63 #imag:-75 #imie:27 #inan:-37 #inar:-69 #inde:-71 #indl:-39 #indo:173
#info:-47 #ingo:41 #ings:87 #ingu:-37 #inte:-31 #intm:-32 #invi:-43 #iona:-33 #ione:30 #iosi:61 #ious:29 #ique:56
#irin:-33 #irle:83 #irme:-45 #irri:46 #irst:40 #irth:-45 #isar:76 #isim:89 #isit:38 #isti:-53 #istm:59 #ital:-25
#itte:31 #ivin:26 #jaja:81 #keep:52 #kend:72 #kick:-27 #kind:25 #king:101 #ksem:44 #lain:85 #lama:-33 #lass:-36
#lata:-46 #late:32 #lela:-33 #lend:38 #less:146 #levo:-43 #libr:46 #lice:48 #lici:-56 #lida:60 #lien:70 #life:-29
#lige:46 #ligh:-25 #like:-31 #lind:159 #ling:31 #liqu:57 #lkin:30 #llas:-43 #ller:36 #llev:-64 #llin:29 #lmen:100
#lmos:32 #loca:-52 #logi:89 #lood:-31 #look:45 #loor:41 #lose:-49 #losi:-49 #love:54 #lrea:-30 #lsew:-32 #lude:34
#ludo:109 #lueg:64 #lune:-29 #lway:54 #made:87 #mage:-75 #maki:-28 #male:48 #mana:-30 #mand:-38 #many:91 #mara:-25
#mbio:30 #mbsu:30 #mejo:44 #mell:-31 #mess:-45 #meta:-47 #mete:-27 #migh:-71 #mili:48 #mind:40 #moji:44 #mome:-49
#mond:-36 #mont:32 #morr:25 #most:31 #mpre:-27 #much:91 #mult:52 #nada:-59 #nage:-34 #nand:-47 #navi:44 #nces:37
#nche:-39 #ncio:-61 #ndan:-27 #ndic:40 #ndid:28 #ndle:36 #ndly:-39 #ndos:138 #ndso:31 #nega:-49 #nesd:-29 #neve:39
#nfir:-54 #nged:26 #ngel:75 #ngun:-37 #nice:39 #nigh:57 #ning:-57 #nito:-61 #nkse:44 #noch:50 #noma:-42 #nori:-29
#note:52 #noth:-170 #nsta:-27 #nste:44 #nsub:-43 #ntac:-27 #ntam:-32 #ntar:52 #ntem:-30 #nter:34 #ntes:-59 #ntme:-32
#nton:39 #nudg:31 #nule:-34 #nyti:59 #nywa:-95 #obli:48 #obro:-70 #ocat:-52 #oche:49 #odos:82 #oeve:28 #oger:31
#oint:-32 #okin:57 #olid:58 #olks:79 #olog:89 #omas:-42 #omen:-47 #omor:27 #ompa:-34 #ompr:-40 #onda:-34 #ones:33
#onfi:-57 #onit:-46 #onta:-27 #onth:33 #ooki:60 #opal:-35 #open:-38 #ople:-26 #opto:-34 #oras:-37 #orda:59 #orde:47
#orio:30 #orit:-46 #orks:-52 #orme:-39 #orre:-25 #orri:145 #orte:-30 #osed:-29 #osin:-48 #osit:45 #ospo:-33
#othi:-149 #oubl:30 #ough:66 #oure:129 #outs:45 #oved:-27 #ovel:76 #over:-48 #pain:-34 #pall:-35 #pape:-28 #para:47
#pare:-54 #pase:81 #pass:31 #past:-48 #pati:40 #patr:55 #peac:45 #peop:-26 #perf:34 #pero:28 #plai:33 #plea:-29
#plen:29 #pliq:55 #plum:-38 #poin:-33 #polo:89 #pone:-28 #ponl:-32 #posp:-33 #pour:39 #ppoi:-32 #prec:64 #pref:-29
#preg:68 #prim:-51 #prob:69 #ptou:-34 #pued:-34 #pues:-35 #puro:-32 #push:-55 #quie:-51 #raci:63 #rade:149 #rado:55
#rari:36 #rato:-43 #ratt:44 #ravi:-25 #razo:76 #rdat:28 #rday:26 #rden:42 #read:-40 #reak:60 #reas:28 #reat:76
#rech:-53 #reci:126 #rect:-27 #refe:-29 #regu:67 #rell:-28 #relo:39 #remi:-51 #remo:-27 #rena:-64 #renc:-25 #rent:-42
#repl:-26 #rest:-27 #resu:29 #reti:-34 #reve:-37 #revo:-36 #rfec:34 #rged:42 #rgin:-37 #ribe:-32 #ries:185 #rifa:87
#righ:45 #rimo:-43 #riou:28 #rist:59 #rita:-45 #rmed:-45 #rmer:-39 #robl:65 #roce:34 #rock:159 #roge:41 #room:-26
#roso:-53 #roub:38 #rrec:-27 #rrie:175 #rrin:47 #rrow:25 #rsta:39 #rthd:-45 #ruin:-46 #runs:-42 #rvic:-35 #rvir:81
#sale:50 #sali:44 #salu:183 #sarm:80 #save:100 #scri:-54 #seat:42 #seen:-34 #semo:44 #serv:32 #sewh:-32 #shak:50
#shal:-30 #shes:-67 #shou:43 #sigu:-48 #sile:45 #sima:95 #sing:81 #sion:-28 #sist:-52 #sito:37 #skin:108 #smel:-31
#some:56 #sorr:-33 #spar:-44 #sper:66 #spon:-53 #spue:-30 #ssed:-36 #ssin:131 #stan:32 #stas:61 #stat:-28 #stea:44
#sted:53 #stil:-34 #stir:-52 #stma:59 #stor:-38 #stoy:-36 #stre:-25 #such:52 #suit:54 #supe:72 #swee:40 #tact:-27
#tail:28 #take:-42 #taki:40 #tama:49 #tame:-37 #tand:37 #taro:53 #tcha:49 #tead:45 #tede:66 #tele:-25 #tell:87
#teme:-29 #tenc:-47 #tend:-46 #teng:37 #tera:77 #terd:39 #tere:-30 #tero:-38 #text:-112 #tful:97 #than:162 #thda:-45
#then:-150 #ther:-37 #thin:-133 #thou:28 #thro:-34 #thum:33 #tiem:-30 #tien:43 #till:-36 #time:58 #ting:34 #tire:-41
#tiro:-33 #tive:-48 #tmas:59 #tmen:-32 #todo:64 #tonc:37 #topa:-35 #tori:30 #tory:-27 #tout:-34 #trai:-32 #trea:61
#tron:50 #trou:38 #tten:28 #ttin:29 #tues:28 #turn:-35 #ualm:49 #uant:-38 #ubca:-45 #uble:30 #uchi:95 #udam:34
#udos:109 #ueda:39 #uede:-65 #uedo:-32 #uego:42 #uert:80 #uesd:29 #ughi:25 #ughl:28 #ught:54 #uidi:28 #uier:-25
#uimi:51 #uina:-46 #uits:60 #ulel:-33 #ulti:60 #umbs:33 #unch:53 #unde:56 #undo:-27 #unes:-29 #unsu:-43 #unta:32
#uper:72 #urch:-25 #ured:49 #urio:31 #ushy:-51 #uste:79 #vacu:47 #vaya:52 #vely:76 #vemo:35 #vend:-61 #vere:36
#vers:-43 #vida:46 #vien:33 #vier:-32 #vill:-25 #visa:48 #visi:37 #voke:-37 #vuel:-26 #want:-26 #watc:-34 #ways:48
#weat:-28 #wedn:-29 #week:74 #weet:40 #well:72 #were:-52 #weso:62 #wful:25 #what:31 #whin:36 #whir:46 #whoe:28
#wife:-42 #with:-32 #woke:-46 #wond:31 #wont:48 #work:-30 #worr:167 #writ:-30 #xcel:-56 #ximo:52 #xtee:-33 #year:26
#yern:40 #yest:39 #ying:41 #youd:40 #your:63 #ythi:29 #ytim:59 #yway:-95 %again_later%bring:-60 %again_later%car:51
%again_later%car_part:40 %again_later%do_it:-37 %again_later%elsewhere:-31 %again_later%family:-69
%again_later%lift:27 %again_later%message:-59 %again_later%money:-32 %again_later%on_way:-35 %again_later%opening:-33
%again_later%question:-77 %again_later%refuse:107 %again_later%season:-86 %again_later%shift_it:-59
%again_later%start_again:36 %again_later%thanks:117 %agree:56 %agree%away:83 %agree%bring:57 %agree%busy:-37
%agree%call_off:55 %agree%car_part:-47 %agree%family:-33 %agree%how_long:35 %agree%meaning:48 %agree%opening:100
%agree%pay_day:-30 %agree%place:52 %agree%refuse:33 %agree%season:-29 %agree%shake:45 %agree%staff:37
%agree%start_again:-30 %agree%thanks:-173 %agree%who:-26 %agree%wrong_one:39 %away%bring:71 %away%call_off:-89
%away%family:50 %away%how_long:25 %away%lift:26 %away%on_way:-46 %away%question:34 %away%who:35 %away%wrong_one:-33
%bad:-105 %bad%family:-61 %bad%how_long:26 %bad%lift:25 %bad%staff:-65 %bring:-151 %bring%call_off:-57
%bring%how_long:31 %bring%leave_me:58 %bring%question:36 %bring%refuse:-115 %bring%wrong_one:52 %busy:-26
%busy%pay_day:38 %busy%refuse:56 %busy%who:31 %call_off%car_part:112 %call_off%do_it:73 %call_off%fails:39
%call_off%gone_car:-26 %call_off%how_long:-29 %call_off%meaning:32 %call_off%noise:41 %call_off%on_way:-87
%call_off%question:-100 %call_off%season:-38 %call_off%start_again:36 %call_off%thanks:-281 %call_off%who:-49
%car:-108 %car%doubt:62 %car%family:-25 %car%message:27 %car%noise:-25 %car%place:28 %car%refuse:81 %car%staff:-36
%car%thanks:69 %car_part:-153 %car_part%do_it:-31 %car_part%elsewhere:26 %car_part%fails:29 %car_part%how_long:-40
%car_part%machine:-36 %car_part%noise:56 %car_part%refuse:-27 %car_part%start_again:72 %car_part%thanks:-97
%do_it:-83 %do_it%elsewhere:60 %do_it%family:141 %do_it%money:40 %do_it%noise:45 %do_it%odometer:33 %do_it%refuse:-52
%do_it%season:-27 %do_it%staff:-71 %do_it%thanks:-26 %do_it%wrong_one:-46 %doubt%staff:-31 %doubt%thanks:-62
%doubt%wrong_one:-32 %elsewhere%family:38 %elsewhere%question:-36 %elsewhere%shift_it:-32 %elsewhere%staff:34
%elsewhere%thanks:41 %elsewhere%wrong_one:35 %fails:-93 %fails%leave_me:-40 %fails%meaning:42 %fails%money:-26
%fails%noise:55 %fails%pay_day:39 %fails%refuse:26 %fails%thanks:119 %family:40 %family%odometer:-26
%family%opening:-26 %family%phone:28 %family%refuse:88 %family%season:-27 %family%thanks:117 %family%who:31
%family%wrong_one:-33 %gone_car:-127 %gone_car%question:25 %gone_car%thanks:-52 %how_long:-49 %how_long%lift:28
%how_long%opening:-37 %how_long%place:50 %how_long%question:-55 %how_long%refuse:38 %how_long%shift_it:29
%how_long%staff:-43 %how_long%thanks:97 %leak:-54 %leak%thanks:-25 %leave_me:-169 %leave_me%lift:-42
%leave_me%on_way:41 %leave_me%refuse:33 %leave_me%staff:35 %leave_me%thanks:33 %leave_me%wrong_one:114 %lift:-28
%lift%refuse:59 %machine:-33 %machine%refuse:-37 %machine%staff:-33 %meaning%refuse:35 %meaning%thanks:83
%message:-64 %message%phone:-26 %message%place:28 %message%refuse:98 %message%start_again:-54 %message%thanks:62
%message%wrong_one:-27 %money:-41 %money%pay_day:-69 %money%phone:27 %money%question:-46 %money%refuse:-35
%money%staff:-32 %money%thanks:41 %noise%question:-36 %noise%refuse:72 %noise%thanks:72 %noise%wrong_one:37
%odometer:-51 %odometer%refuse:25 %on_way:-29 %on_way%pay_day:39 %on_way%question:44 %on_way%refuse:-30
%on_way%staff:-64 %on_way%thanks:28 %opening:-44 %opening%question:-30 %opening%refuse:45 %opening%season:-34
%opening%staff:-39 %opening%thanks:45 %pay_day:-27 %pay_day%question:-35 %pay_day%refuse:-54 %pay_day%shift_it:36
%pay_day%thanks:54 %phone:-95 %phone%question:53 %phone%staff:-36 %phone%thanks:77 %phone%wrong_one:-44 %place:-80
%place%question:37 %place%refuse:-68 %place%staff:-25 %place%thanks:39 %question%refuse:30 %question%season:41
%question%shift_it:-32 %question%smoke_smell:-49 %question%thanks:278 %question%who:-35 %question%wrong_one:-27
%refuse:-116 %refuse%season:-39 %refuse%shift_it:44 %refuse%staff:33 %refuse%start_again:51 %refuse%thanks:49
%refuse%who:78 %refuse%wrong_one:95 %season:164 %season%shift_it:-36 %season%thanks:39 %shake:35 %shake%thanks:51
%shift_it%staff:42 %shift_it%thanks:123 %smoke_smell:-48 %smoke_smell%wrong_one:33 %staff:61 %staff%wrong_one:49
%start_again:-31 %start_again%thanks:49 %thanks:417 %thanks%who:60 %thanks%wrong_one:58 %who:-59 %wrong_one:-41
@?:-74 @after_visit:-121 @car:-60 @confirm_stop:31 @confirm_thumbsup:-38 @day:-51 @later:-92 @nothing:224
@nothing_gracias:-31 @nothing_info:-55 @nothing_opt_out:-45 @odometer:-59 @offers:-152 @reading:-56 @time:-64
@times:-112 @walk_in:-112 ^_$:-51 ^_a:37 ^_all:-148 ^_and:-32 ^_any:52 ^_anytime:61 ^_appreciate:76 ^_are:-60
^_asi:-36 ^_ay:-41 ^_ayuda:-84 ^_bendiciones:164 ^_bet:32 ^_bless:39 ^_buen:106 ^_buenas:31 ^_bueno:-38 ^_buenos:30
^_bus:36 ^_can:-33 ^_cancel:-68 ^_cant:29 ^_cheers:95 ^_como:-25 ^_con:37 ^_confirmed:-45 ^_cool:26 ^_de:104
^_did:-57 ^_dios:125 ^_do:-35 ^_done:-30 ^_el:-32 ^_end:-26 ^_eso:-29 ^_estoy:-44 ^_everything:-64 ^_feliz:138
^_good:245 ^_got:92 ^_gracias:122 ^_happy:172 ^_hasta:82 ^_have:66 ^_hay:-26 ^_headlights:-25 ^_hello:181 ^_help:-57
^_hi:-99 ^_hola:148 ^_how:26 ^_i:-43 ^_id:-192 ^_igualmente:36 ^_ill:51 ^_im:-186 ^_info:-56 ^_is:-57 ^_it:-30
^_kindly:-31 ^_last:-36 ^_les:100 ^_lol:-65 ^_luego:-31 ^_lunes:-42 ^_me:-36 ^_might:-76 ^_mil:110 ^_mornings:-42
^_much:66 ^_muchas:132 ^_muy:124 ^_my:45 ^_negative:-49 ^_nel:-106 ^_never:-49 ^_nice:-177 ^_ninguno:-38 ^_no:96
^_oh:27 ^_ok:63 ^_opt:-49 ^_optout:-34 ^_para:55 ^_perfect:-31 ^_perfecto:28 ^_que:151 ^_quedo:-29 ^_re:-37
^_resubscribe:29 ^_retiro:-34 ^_revoke:-37 ^_right:74 ^_ring:-28 ^_roger:41 ^_sale:72 ^_se:63 ^_shes:-47 ^_si:-89
^_so:-64 ^_son:28 ^_sounds:-75 ^_stopall:-35 ^_take:46 ^_tell:82 ^_tengo:-28 ^_thank:167 ^_thanks:85 ^_thanksemoji:44
^_that:-38 ^_the:26 ^_thumbsup:30 ^_todo:-81 ^_un:105 ^_unsubscribe:-46 ^_ustedes:65 ^_we:-44 ^_well:-80 ^_were:-106
^_what:-93 ^_who:-27 ^_wont:42 ^_works:-49 ^_ya:-116 ^_yeah:-25 ^_yes:33 ^_you:109 ^_youre:92 a:77 a__en:68 a__for:44
a__hora:32 a__la:-31 a__now:50 a__of:-58 a__one:107 a__to:-25 a__weekend:88 a_dios:-59 a_good:53 a_la:45 a_las:-27
a_los:42 a_nice:25 a_no:-35 a_person:-25 a_que:30 a_ustedes:48 a_week:-44 able__make:27 abren:-39 add:-41 agradece:99
air:-59 al__de:38 al_frenar:-40 all:41 all_$:71 all__you:76 all_the:70 almost:32 already:-30 already__it:-28
already_did:-36 always:54 amable:56 amables:-42 an_hour:26 and__are:-91 and__the:30 and__to:30 and__you:-66
and_all:42 and_thank:-87 and_where:-55 and_you:-37 anda_$:-54 andan:-28 ano:33 ano_$:35 anulela:-33 any:33 anytime:59
anyway:-95 anyway_$:-95 appointment:-32 appreciate:-63 appreciate_the:77 appreciate_you:64 appreciated:66 are_$:-58
are__for:45 are__located:-55 are__talking:34 are_best:-42 are_the:74 are_you:-121 as:103 as_well:150 asi:-54
asi__dejo:-30 asi_lo:-30 ask:109 ask_$:94 asking:108 asking_$:57 at:49 at_$:44 at__moment:-32 at_my:51 at_ten:63
at_the:-49 at_this:-26 atencion:-47 atencion_$:-44 avisar_$:79 avisarme:80 aviso_$:28 awesome:62 awful:25 ay:-41
ayuda_$:-80 baby:-45 baby_$:-45 back:51 baja:-43 basta_$:-48 be:-58 be_$:85 be__to:46 be_there:-29 been__to:-36
been_a:25 been_done:47 being:62 bendiciones:55 best:35 best_$:91 best__to:-27 bet_$:-45 bien_$:37 bien_gracias:-88
bien_todo:-44 birthday:-45 bless:87 bless_you:93 bonito:-61 bonito_dia:31 book:-54 book_it:-56 booking:-25 break:60
break_down:79 bring:-26 bring__in:-31 bring_it:-30 buen:185 buen_dia:83 buenas:32 buenas_noches:39 bueno:-40 bus:29
but:-54 but__a:46 but__is:53 but__it:54 but__you:105 but_have:46 but_how:-34 but_ill:-66 but_im:-58 but_it:-60
but_no:-100 but_that:93 but_were:-40 by:-65 bye:126 calendar:-53 calendar_$:-45 call_me:-43 cambio:38 cambio_el:42
came_back:35 can:-28 can__be:53 can_it:53 can_you:-43 cancel_$:-73 cancel_me:52 cancel_my:41 cant:31 car_but:73
card:29 care:42 care_$:89 care_of:-42 carro:-40 carro_$:34 casa:-30 catch:25 changed:26 changed_it:36 charge_$:-25
charged:47 charging:-37 check:25 check_$:42 checking_$:-70 cheers:50 cheers_$:-25 chevere:38 christmas:59 cita:-43
cliente:49 cliente_$:89 closed:-29 cobro:-70 come_in:-50 coming:-28 como:30 como__que:37 como_a:38 como_nuevo:27
con_su:89 con_un:-42 con_ustedes:-27 confirmed:-45 cool:29 cool_$:25 cost:39 cost__i:38 could_we:36 crew:161
cuanto:-31 cuanto__las:-28 cuanto_anda:-54 curious:28 dads:53 daughter__it:25 day_$:45 de:45 de__carro:26 de_baja:-36
de_la:-41 de_maravilla:-25 de_mi:40 de_que:78 de_semana:39 de_thanksgiving:-35 dear_$:92 dejo:-31 desde:-27 deseo:37
despues:-30 dia:88 dia_$:117 dia_despues:-26 dias_$:-36 did:-77 did__at:58 did__find:28 did_it:-61 dios:-63
dios_$:-30 dios_los:27 do:-156 do_$:-59 do__owe:-32 do_it:-33 do_you:-55 doble:-70 domingo:42 don:28 dont_stop:33
down__road:-27 down_on:79 down_the:-42 dueno:45 dueno_$:44 eh:-52 eh_$:-51 el:-53 el__cuanto:35 el__de:-61
el__hasta:59 el__que:-29 el__todo:-53 el_aviso:25 el_carro:-50 el_dia:-40 el_domingo:41 el_fin:-47 el_jueves:-33
el_taller:69 elsewhere:-32 en:-82 en__anda:-54 en__taller:62 en_cuanto:-81 en_el:110 en_otro:-33 enterado:76
entonces:37 entonces_$:31 es__que:28 es_lo:29 esa:-27 ese:-43 eso:38 eso__lo:-28 eso_ya:-29 esta:-41 este:-29
estoy:-36 estoy_bien:-45 everything_$:73 everything_was:-61 ex:-25 ex_wife:-27 excelente:-56 excelente_servicio:-25
familia:47 familia_$:47 favor:-31 feliz:110 feliz_navidad:28 fiestas:61 fin:148 fin__semana:43 fin_de:38 find:26
find_a:28 fine_$:59 fine_but:64 first:40 fixed_the:123 flat:-32 floor:41 foco:-34 folks:79 for:81 for_$:-32
for__at:47 for__lol:35 for__me:44 for__reminder:-44 for_a:-51 for_asking:125 for_checking:41 for_good:39 for_me:35
for_nothing:-152 for_now:-33 for_that:-26 free:-50 frenar:-41 frenar_$:-41 friday_$:-35 friday_instead:54
from__the:56 from_under:56 game:-40 get:-57 go:-68 go_$:-48 god:-62 gone:54 good:92 good__it:35 good__the:52
good_to:54 got:42 got_a:-49 got_it:134 got_to:-28 gracias:62 gracias_$:49 gracias__a:45 gracias__dios:-58
gracias__el:96 gracias__la:70 gracias__nada:-263 gracias__no:-40 gracias__que:-52 gracias__su:-35 gracias__todo:75
gracias__todos:35 gracias__ya:40 gracias_de:31 gracias_joven:53 gracias_ya:-46 grandma:-25 grandson:31 grease:37
great_$:183 great__you:-27 great_job:-38 guy:-52 guy_$:-30 guys:79 guys_$:85 guys__on:-46 guys_are:88 guys_open:-27
hablo:-25 had:45 happy:30 happy_with:-25 has:-38 hasta:90 hasta_el:-30 hasta_entonces:52 hate:54 have:27 have_a:173
have_had:-25 hay:78 hay__que:164 hay_que:-35 headlights:-26 heads:46 heads_up:48 hello:181 help:-52 help_$:-57
her:-43 her_$:-44 hes:29 hiring:-33 hiring_$:-29 hola:148 holidays:65 home:40 horas:-33 hour:27 how__of:63
how_long:-35 how_much:-34 hubcap:-45 i:-86 i__a:25 i__had:-25 i__them:36 i_have:-51 i_like:36 i_owe:-32
i_remember:-54 i_was:31 i_will:-35 i_would:-38 id:-193 idea:-89 idea_$:-89 if:31 if_i:42 igual:45 igualmente:49
ill__a:35 ill__in:53 ill__it:-66 ill__the:-47 ill__there:-49 ill_be:-49 ill_let:-49 ill_pass:54 ill_stop:62
ill_take:-57 im:-203 im_good:-208 in:31 in_$:-40 in__morning:27 in__that:38 in__the:-32 in__you:65 in_law:27
in_my:-57 in_your:-36 info:-46 info_$:-46 instead:44 is:-62 is__a:-34 is__done:47 is__no:-39 is__of:159 is__off:27
is__something:25 is__the:-35 is__you:75 is_a:-62 is_fine:-46 is_good:-124 is_in:-52 is_it:26 is_this:34 is_your:-33
it:77 it_$:65 it__a:-52 it__at:34 it__be:72 it__been:-30 it__if:32 it__just:-26 it__last:43 it__long:52 it__me:32
it__no:32 it__of:26 it__over:-25 it__though:-42 it__you:91 it_be:73 it_but:-39 it_cost:38 it_down:-27 it_for:36
it_go:-48 it_home:32 it_in:-38 it_is:36 it_take:55 it_thank:100 it_thanks:-40 it_thursday:-34 it_to:-39 it_today:45
it_was:117 it_went:29 it_would:63 jaja:74 jaja_$:-27 jaja_no:90 job:-41 joven_$:134 jug:38 just__that:-25
just__what:80 just_curious:28 keep:54 key:-44 key_$:-44 kid:53 kind:95 kind__you:56 kind_of:44 kindly:-39 know_it:-32
la_persona:55 las:-42 last__so:50 last_week:118 lata:-48 late:26 law:27 law__it:44 le__la:-25 le__pero:40 least:47
les:189 let:-64 let_it:-47 life:-27 life_$:-27 light:31 like:-31 like_them:36 list_$:-28 llamenme__favor:27
llamenme_por:27 llevo:-43 lo__al:-29 lo__con:-36 lo__el:39 lo__gracias:-78 lo__que:27 lo_agradezco:32 lo_cambio:40
lo_dejo:-29 lo_hace:-25 lo_llevo:-34 lo_que:28 located:-55 located_$:-55 lol:-29 lol_$:-85 long_$:49 look:-29
look_at:-31 lookin:124 looking:-40 looking_for:-25 los:37 los__en:58 lose:-40 lose_my:-42 losing:-49 lovely:76
luego:63 lunes:-29 made:87 make__thursday:-34 make__today:45 make_it:29 making:-28 man_$:-35 many:91 maravilla:-25
mas:-60 mate:36 maybe__the:-28 me:-58 me__a:-27 me__cambio:40 me__can:54 me__de:-28 me__in:42 me__it:-34 me__of:-39
me__the:32 me__we:-30 me__you:-48 me_for:-40 me_in:39 me_off:38 me_out:-39 me_please:76 me_trataron:51 mejor:39
mejor_$:58 mensajes_$:-31 messed:-39 metal:-47 mi__me:25 mi_carro:28 mi_yerno:40 might:-77 might__well:-76
might_as:-76 mil_gracias:56 mind:90 mind_$:75 modos_$:34 mom:-41 moment:-32 monday:-37 monday_is:-45 morning:48
mornings:-41 mph:-27 much_$:115 much_for:-62 much_obliged:46 muchas__por:111 muy:53 muy__el:-28 muy_amable:83
muy_bien:-65 my:-33 my__but:73 my__in:35 my__is:-26 my__key:-45 my__put:45 my__this:34 my__yesterday:38 my_car:55
my_day:60 my_grandson:32 my_hubcap:-45 my_life:-26 my_seat:46 my_spare:-45 my_tires:-37 nada:-59 nada_$:-55 nao:-35
navidad:44 need:66 need_to:103 needs:-31 negative:-49 nel:-106 never:39 never__back:34 never_came:25 ni:30 ni_un:39
nice:41 nice__you:93 nice_of:93 night:85 night_$:51 night_so:51 ninguno:-38 no:-107 no_$:-91 no__cliente:-33
no__de:144 no__gracias:-82 no__i:-52 no__im:29 no__just:-26 no__la:88 no__like:36 no__on:102 no__que:-62 no__to:94
no__yo:66 no__you:-54 no_gracias:-159 no_hay:150 no_i:50 no_me:-29 no_need:83 no_pero:-29 no_problem:111 no_soy:78
no_thank:-54 no_thanks:-140 no_worries:166 noches:39 noise:-26 nomas:-42 nomas_que:-40 nos_vemos:33 not:-33
not__car:63 not__month:44 not__the:-31 not_at:-31 not_my:73 not_this:44 nothing:-149 nothing_$:-152 now:-33 now_$:79
nudge:31 number:27 obliged:46 of:60 of__but:-53 of_that:-60 of_the:-32 of_you:265 off__list:56 off_of:27 oh:29 ok:44
ok__a:40 ok__can:-41 ok__good:78 ok__you:-245 ok_gracias:95 ok_thanks:-30 ok_you:-41 old:67 on__for:-43 on__it:31
on__list:-27 on__rd:39 on__seat:47 on__tires:52 on_friday:-46 on_last:42 on_me:70 on_my:43 one:74 one_$:78 open:-37
open__the:-30 open_on:-49 open_today:-27 open_tomorrow:39 opt:-49 opt_out:-46 optout:-34 optout_$:-34 orden:60
orden_$:68 our:-57 out_$:116 out__im:-54 out__me:-37 out__the:38 out_for:-35 out_of:-58 out_to:50 over:-27 owe:64
own:-60 paint:-34 para:67 para__de:-26 para__el:41 para__y:30 para_un:-34 pase:-30 pass:49 patron:55 pendiente:37
people:-26 perdon:41 perdon_$:49 perfecto:26 perfecto_$:-36 pero:-32 pero__es:80 pero_lo:-36 pero_no:-103 pero_que:46
pero_se:-27 pero_ya:39 person:-40 person_$:-26 persona:30 please:-28 please_$:-55 please__me:60 please__my:35
please__thank:-95 please__you:-114 please_and:48 please_do:-34 please_take:59 por:65 por__el:-96 por__en:-54
por__gracias:-52 por_el:99 por_favor:-31 por_la:58 por_lo:49 por_nada:-263 por_todo:74 prefer:-29 preguntar:64
preguntar_$:72 primo:-43 problem:75 puede:-43 put:33 put__on:50 put_it:50 que__a:-26 que__abren:-25 que__bonito:30
que__con:-59 que__son:-37 que_amables:-33 que_dios:-60 que_es:40 que_hora:27 que_les:52 que_sigue:-41 que_tenga:32
queda:38 queda_$:47 quedo:-45 quedo_$:-33 quedo_como:27 rattle:44 rd:30 re:-36 rechinando:-40 recibir:-26
recordatorios:-26 records:-29 records_$:-28 remember:-55 remember_$:-55 reminder:-44 reminder_$:102 replaced:-27
resubscribe:29 retiro:-34 retiro_mi:-34 revoke:-37 revoke_$:-37 right:47 right_now:-25 rock:159 roger:41 roughly:28
ruidito:28 runs:-42 sale:65 sale_$:-43 saliendo:30 saliendo_$:29 saludos:109 saved:75 se__agradezco:33 se__el:34
se_le:50 se_les:45 seat:42 see:122 see__then:-149 see_you:-136 seen:-34 segun:-29 semana:27 semana_$:43 senor:40
senorita:-29 set:-26 shakes:53 shall:-30 shes:-48 shes_a:-45 shout:62 si:-128 si__que:-26 si__todo:69 si_gracias:-129
si_senor:64 sigue:-45 sir:-35 sir_$:-27 so:36 so__for:-44 so__me:82 so__to:50 so_cancel:45 son:80 son_$:-38
son__law:33 son_in:33 sorry:-33 sorry_$:-25 sort:34 sorted:-30 sounds_good:71 soy:56 soy__persona:68 soy_cliente:-33
soy_la:66 soy_yo:64 spare:-45 spare_key:-45 still:-34 still_on:-43 stop:52 stop_in:58 stopall:-35 stopall_$:-35
su_cliente:88 such:52 suits:65 sunday:37 super:70 sweet:27 ta:143 take:68 take_it:-57 take_long:52 take_me:40
take_the:-79 taken:-80 taken__of:-80 taken_care:-80 taking:40 talk__a:-26 talking:32 talking_$:33 taller:41
taller_$:59 te:56 tell:43 tell_the:116 telling:44 telling_me:45 ten:63 tenga:29 tenga__dia:31 tengan:25 text:-72
text__again:-29 th:-30 thank__for:56 thank_you:-48 thanks_$:-68 thanks__is:31 thanks__no:-92 thanks__nothing:-152
thanks__the:100 thanks_a:48 thanks_anyway:-72 thanks_but:-124 thanks_for:213 thanksemoji:44 thanksemoji_$:44
thanksgiving_$:38 that:46 that_$:-61 that__be:-142 that__been:47 that__me:47 that__tuesday:49 that_in:93 that_is:178
that_one:-42 that_would:-142 the:56 the__appointment:-38 the__are:59 the__at:-42 the__but:-47 the__from:53
the__is:-66 the__it:40 the__man:45 the__thanks:105 the__that:40 the__time:68 the__up:52 the__where:47 the__who:33
the__will:34 the_baby:-46 the_best:122 the_calendar:-47 the_cost:35 the_day:-25 the_first:37 the_floor:48
the_game:-31 the_heads:56 the_kid:51 the_last:-29 the_list:47 the_moment:-32 the_rd:30 the_reminder:-44 the_road:-26
the_th:-29 the_tires:44 the_wait:25 the_young:45 then:-150 then_$:-143 this_$:-38 this_month:45 this_one:-28
thought:-50 through:-32 thumbsup:30 thursday_$:-63 tiempo:-27 time_$:-35 time__you:117 to_$:-25 to__again:-35
to__all:107 to__but:-35 to__guy:-26 to__in:-51 to__it:-51 to__kid:60 to__my:-41 to__out:-36 to__person:-26 to__to:-32
to_a:-37 to_ask:53 to_bring:-25 to_call:-41 to_check:59 to_come:-26 to_do:-33 to_know:58 to_make:26 to_me:-43
to_talk:-26 to_the:76 to_thursday:35 to_you:82 today_$:-31 todo_$:105 todo__con:66 todo__gracias:-48 todo_bien:66
todos:67 tomorrow:26 tomorrow_$:39 too:152 too_$:201 too_much:-39 trataron:51 trouble:38 trust:-26 try:-131
tuesday:28 tuesday_at:64 two:27 un__a:66 un__de:-43 un_amigo:-36 un_foco:-34 un_ruidito:28 under_the:44 undo:-28
unsubscribe:-43 unsubscribe_me:-44 up_my:-49 us_$:27 ustedes:66 ustedes_$:75 van:-25 vaya:52 vemos:35 viene:31
visit:41 wait:29 want:-39 want_to:-28 was:65 watch:-34 way:-49 we:-71 we__that:44 we__to:31 we_had:34 we_have:-35
we_talking:34 wednesday:-26 week:41 week_$:-39 weekend:68 weekend_$:79 weeks:-41 well:71 well_$:117 were:-52
were_happy:-33 what:41 what__i:-27 what__it:40 what__the:-30 what__would:71 what__your:-26 what_a:64 what_do:-36
what_is:-54 what_it:52 what_time:-26 what_was:-26 what_would:48 what_you:-28 when__i:29 where:27 where__are:46
where__i:41 where__you:-62 where_are:-55 where_do:29 which__is:25 whine:45 whirring:46 who__it:39 who__my:30
who__the:-47 who__this:55 who_is:31 whoever:28 wife:-42 will_do:-69 woke:-46 wont:48 wont__able:26 wont__there:39
wont_be:49 work:41 works:-52 worries:164 would__be:27 would__cost:33 would_be:-72 would_it:119 wrong_$:-48
wrong_number:53 y:-49 y__cuanto:-26 y_el:-29 y_en:-29 ya:59 ya_$:192 ya__lo:-32 ya__otro:51 ya_lo:-65 ya_los:59
ya_no:-37 ya_quedo:-39 ya_se:-26 ya_tiene:33 yeah_$:40 years:33 yerno:40 yes:-147 yes_$:-235 yes__and:124 yes__is:26
yes__on:-43 yes_it:159 yes_still:-42 yesterday:39 yesterday_$:44 yo:36 you:108 you_$:-93 you__a:52 you__are:89
you__for:-47 you__it:-78 you__much:-50 you__my:58 you__now:-42 you__on:-27 you__open:-25 you__text:-26 you__that:66
you__the:-55 you__today:-27 you_all:147 you_bet:-46 you_can:-31 you_charge:-25 you_did:66 you_find:28 you_folks:98
you_for:118 you_got:-37 you_guys:72 you_have:-53 you_just:71 you_know:-39 you_located:-55 you_open:-83 you_text:-35
you_the:34 you_then:-150 you_up:-115 youd:40 your_records:-29 your_the:33 youre:91
"""
