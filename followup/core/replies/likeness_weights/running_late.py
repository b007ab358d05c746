"""What speaks for and against `running_late`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "running_late"
BIAS = -231
WEIGHTS = """\
#abad:-31 #abaj:-48 #aban:35 #able:-30 #abou:58 #abue:29 #abys:30 #acci:31 #acio:34 #acit:38 #acto:60 #adie:-36
#adin:47 #adit:32 #ados:30 #adra:32 #affi:26 #afic:42 #afor:60 #afte:-43 #afue:-57 #agar:41 #aggi:34 #agua:42
#ahea:44 #ahor:27 #aigh:28 #aigo:49 #ajaj:35 #akes:-33 #alar:97 #alca:42 #alcu:77 #alen:-25 #alie:-40 #alki:-26
#alle:67 #ally:43 #almo:58 #alta:26 #ambi:-37 #amin:52 #anan:-48 #anca:43 #ance:-40 #ande:-51 #ando:120 #anti:38
#anyt:-29 #anzo:42 #apen:79 #apin:40 #apol:37 #apon:59 #arad:89 #arag:-43 #ardi:43 #ardo:67 #argo:44 #arki:-28
#arly:-48 #arma:45 #arme:36 #arms:-45 #aron:30 #arou:28 #arqu:40 #arre:27 #arro:30 #arto:30 #asad:193 #asar:-34
#asem:-40 #asta:-36 #ated:29 #atin:-25 #ator:47 #atra:99 #aunq:26 #ause:66 #aves:78 #avia:48 #avin:46 #avis:-46
#away:53 #ayed:76 #baby:68 #back:-40 #bado:-31 #baja:-30 #bajo:-48 #bear:40 #beca:30 #been:-61 #behi:38 #belt:25
#biad:-32 #blew:-29 #bloc:82 #blue:26 #body:-39 #bout:58 #brak:-52 #bras:32 #brid:119 #brok:-42 #buel:29 #buen:-33
#busc:30 #bysi:30 #cabo:-32 #cada:34 #cafe:-70 #caig:33 #calc:77 #cale:-25 #call:-62 #camb:-37 #came:-43 #cami:49
#canc:-43 #cand:47 #cant:-36 #canz:42 #cars:29 #casi:48 #caus:66 #ccid:37 #cela:-42 #cele:42 #cerc:61 #cerr:25
#chan:86 #choo:42 #cide:38 #cita:-33 #cito:71 #ckin:57 #clin:34 #clut:-29 #cobr:-26 #come:-28 #conf:-34 #cont:40
#cool:57 #corn:-29 #corr:61 #cost:34 #cour:-25 #crap:40 #cros:50 #ctio:25 #ctor:109 #cuad:32 #cuan:-75 #cuar:30
#cuel:35 #cuid:-32 #culp:31 #cupe:-35 #dame:89 #dang:51 #davi:48 #days:-39 #ddle:36 #deci:34 #dedo:-37 #deja:62
#dejo:40 #dela:76 #demo:73 #denm:32 #dent:44 #dese:31 #desp:108 #dias:-34 #didn:71 #disc:31 #dita:32 #dler:36
#doct:45 #does:25 #doin:76 #done:29 #dorm:50 #down:49 #drag:34 #dras:32 #draw:86 #dria:-46 #drop:93 #dshi:38 #eadi:47
#earl:-53 #easi:30 #eate:26 #eati:-25 #eavi:46 #ecau:30 #echo:-26 #ecit:34 #econ:29 #ecor:-44 #edad:-51 #edes:-68
#edia:75 #edio:-33 #eels:42 #eeti:51 #egue:-42 #ehin:38 #ejor:-48 #elay:76 #elta:58 #emaf:60 #emor:94 #emos:-32
#empo:-27 #enas:61 #enco:46 #encu:34 #enda:-37 #ende:-69 #endo:42 #engo:130 #enme:107 #enor:67 #enta:-25 #entu:49
#enty:-43 #eocu:-35 #erca:61 #erdi:67 #erin:-29 #erio:28 #erla:-43 #erma:30 #erna:52 #erno:-46 #erry:50 #ersl:25
#erst:39 #escu:28 #eses:30 #espa:62 #esto:117 #eter:79 #etin:51 #etra:72 #etti:59 #even:63 #ever:77 #eves:-33
#eway:26 #exte:30 #exti:-38 #extr:28 #falt:26 #fast:72 #ferr:50 #ffic:51 #ffir:-30 #fica:33 #figu:51 #fila:59
#file:38 #find:63 #firm:-69 #five:56 #foot:44 #forg:49 #foro:60 #fren:-25 #frid:-57 #from:-30 #fter:-43 #fuer:-59
#gand:25 #gara:-43 #gare:59 #garr:42 #gave:-52 #gett:38 #ggin:34 #ghwa:34 #gies:37 #gimm:80 #ging:53 #give:81
#guan:42 #guar:33 #gure:51 #half:128 #hall:59 #hang:72 #harm:34 #hast:-36 #have:-30 #head:88 #hech:-25 #heel:26
#held:86 #here:-34 #herm:30 #hiel:38 #hill:26 #hind:38 #hing:-32 #hirt:38 #hizo:62 #hold:35 #hook:-25 #hool:42
#hora:-25 #hori:36 #horr:-32 #hors:-31 #houl:51 #hour:67 #hous:32 #howe:33 #hrew:46 #humo:-44 #hurs:-29 #hway:34
#iado:-32 #ible:-57 #ical:33 #icia:36 #iden:37 #idge:136 #idnt:71 #ield:38 #iemp:-34 #ierd:-27 #ight:87 #ighw:34
#igur:51 #ikes:60 #iles:59 #illa:25 #ills:25 #imme:80 #imos:36 #impi:25 #inan:30 #inds:38 #inic:34 #inos:34 #inta:26
#inte:40 #into:-33 #inut:63 #irad:-27 #iscu:31 #ishe:-43 #isim:51 #iste:-42 #itas:29 #itos:58 #itte:31 #ittl:37
#ivoq:27 #jaja:73 #jala:-31 #jefe:-27 #juev:-33 #junt:-25 #just:76 #keep:-38 #kids:58 #king:30 #know:44 #lace:33
#laid:-27 #lame:29 #land:61 #larg:52 #larm:53 #last:-43 #late:128 #lave:52 #laye:76 #lcan:42 #lcul:77 #lder:-26
#ldnt:52 #left:89 #legu:-39 #lele:75 #lend:-31 #lept:25 #less:-36 #levo:-51 #lici:36 #lien:-40 #life:38 #ligh:58
#like:71 #limp:51 #line:61 #ling:35 #lini:34 #litt:37 #lkin:-26 #llas:25 #llav:52 #lleg:-69 #llet:66 #lley:38
#lluv:77 #lmos:58 #lock:76 #loco:-27 #logi:37 #lost:72 #ltim:33 #luga:60 #lutc:-29 #luvi:77 #lvid:-36 #made:54
#mafo:60 #make:30 #mana:-63 #mano:31 #marq:40 #mart:-30 #mbia:-47 #mean:33 #medi:59 #meet:51 #mejo:-48 #melt:35
#mero:76 #meto:-40 #mewh:47 #mile:73 #mina:52 #mind:-36 #mins:152 #minu:63 #mise:-29 #miss:28 #mito:53 #modo:55
#mora:67 #more:36 #morn:-42 #moro:28 #morr:-29 #mosl:-32 #most:57 #moto:-30 #move:-41 #movi:79 #muev:33 #nada:73
#nadi:-36 #nana:-48 #ncel:-43 #ncon:46 #ncue:34 #nder:-35 #ndsh:38 #need:-31 #neve:29 #next:-25 #nigh:-43 #nina:29
#nino:89 #nles:-36 #nloc:-26 #nnin:44 #nobo:-31 #noma:78 #noon:38 #nose:38 #nove:-51 #nque:25 #nsan:44 #nten:31
#nter:39 #ntes:-42 #ntie:46 #ntit:57 #ntow:37 #ntre:30 #ntro:44 #ntua:40 #numb:-26 #nute:25 #nuts:33 #nyth:-29
#oble:26 #obod:-31 #obra:26 #ocki:61 #octo:45 #ocup:-44 #odav:48 #oday:-31 #oddl:36 #odos:61 #odri:-46 #odys:42
#ogie:37 #oing:82 #okin:39 #olan:65 #oles:-26 #olic:36 #olle:47 #olli:53 #olog:37 #olvi:-36 #omas:78 #omew:47
#omis:-29 #omor:-29 #onar:28 #onde:-30 #ontr:46 #ooki:39 #oque:48 #orad:50 #orgi:36 #orgo:34 #orit:59 #ormi:50
#orne:-29 #orni:-42 #orre:-33 #orri:52 #orro:-29 #orry:119 #orse:-31 #oser:37 #osti:34 #otat:27 #othe:-25 #otor:-33
#ough:28 #oull:34 #ours:-45 #ouse:33 #oute:43 #oved:-58 #ovel:36 #over:107 #ovin:79 #ownt:37 #paci:62 #paga:38
#para:53 #park:-56 #pasa:73 #past:108 #pati:27 #pena:92 #perd:104 #pero:63 #pier:-49 #ping:58 #pint:26 #plac:33
#plan:-28 #plis:75 #poco:42 #pode:-66 #podr:-67 #poli:36 #polo:37 #poqu:30 #port:-30 #poss:-34 #powe:-32 #preo:-35
#pres:-27 #pric:28 #prob:27 #prom:-29 #pued:-131 #pull:-77 #puse:-29 #quar:43 #qued:-25 #quem:-28 #quen:65 #quie:27
#quit:30 #rack:41 #ract:64 #rade:120 #rado:30 #raff:56 #rafi:42 #rage:-43 #ragg:34 #raig:43 #rake:-52 #ranc:33
#rand:-28 #raro:49 #rasa:107 #rase:102 #rdar:-26 #rdec:34 #rden:-29 #rder:49 #rdes:-28 #rdon:37 #reci:34 #reck:62
#reco:-47 #rect:-25 #reoc:-35 #retr:72 #rgiv:36 #rgot:34 #rice:28 #rick:26 #rida:-40 #ridg:93 #rien:97 #rita:59
#rive:44 #rkin:-27 #rmac:34 #rman:30 #rmin:31 #rned:-44 #rner:-29 #rnoo:-42 #road:94 #robl:26 #rojo:64 #roke:-43
#roll:88 #romi:-29 #rong:45 #ross:50 #rota:27 #rout:43 #rque:40 #rrec:-36 #rrie:83 #rrow:-29 #rses:-31 #rsle:25
#rsta:39 #rter:43 #rtes:-32 #rued:38 #runn:45 #runs:-51 #saba:31 #sada:26 #sado:133 #salg:89 #sali:80 #same:-29
#save:59 #says:127 #scan:46 #scho:42 #scue:35 #scul:31 #seat:34 #sema:49 #semo:-40 #seno:71 #seri:28 #shal:59
#shed:-44 #shie:38 #shoe:32 #shop:-30 #shou:46 #show:32 #sibl:-47 #simo:31 #sing:37 #site:-33 #skip:82 #slep:25
#slip:32 #slow:74 #snow:52 #solo:-27 #solt:35 #sorr:117 #spac:62 #ssib:-35 #ssin:44 #stal:28 #stan:-30 #star:33
#stat:31 #sted:33 #ster:-28 #stil:39 #stin:27 #stoy:81 #stuc:-39 #subi:32 #take:53 #tall:27 #tant:33 #tapo:84
#tard:210 #tare:27 #tart:34 #tate:39 #term:31 #ters:29 #text:30 #than:42 #then:98 #ther:-42 #thes:-30 #thin:-35
#thou:36 #thre:58 #thur:-29 #tiem:-28 #time:33 #timo:33 #ting:56 #tion:42 #tira:-27 #tire:-47 #tito:115 #tmrw:-36
#toda:40 #todd:36 #tomo:-29 #took:74 #tora:47 #torn:65 #tory:36 #town:46 #trac:81 #trad:27 #traf:98 #trai:80
#tras:149 #tren:74 #trip:-40 #trol:61 #ttin:50 #ttle:37 #tuck:-39 #tuvi:33 #twen:-45 #uadr:32 #uall:36 #uand:-54
#uard:33 #uart:72 #ueda:27 #uede:-89 #uedo:-56 #uela:64 #uelo:67 #uelt:58 #ueme:-28 #uenm:48 #uera:-57 #ueva:-35
#ueve:35 #ugar:60 #uite:46 #uldn:52 #ulel:73 #ulli:-74 #ulti:33 #unle:-36 #unlo:-26 #unni:45 #unos:89 #unqu:26
#unti:48 #unto:-35 #urne:-44 #urni:34 #urno:32 #urns:-40 #usca:46 #usin:-28 #uste:39 #utch:-29 #uvia:77 #vamo:48
#veng:131 #vent:53 #very:50 #ving:120 #vise:-26 #vola:65 #voqu:27 #vuel:121 #wall:65 #wate:59 #week:-75 #went:-50
#what:44 #whee:26 #when:42 #wild:-31 #will:38 #wind:38 #with:27 #wnto:37 #wrec:74 #wron:45 #xtin:-39 #xtra:28
#yeah:-27 #year:29 #ying:-30 #youl:34 #ysit:30 #ythi:-28 %again_later%agree:76 %again_later%away:37
%again_later%bring:149 %again_later%call_off:55 %again_later%car:-26 %again_later%car_part:69 %again_later%doubt:40
%again_later%elsewhere:67 %again_later%fails:28 %again_later%gone_car:-28 %again_later%leak:45 %again_later%lift:-54
%again_later%money:38 %again_later%on_way:77 %again_later%place:124 %again_later%shift_it:-50
%again_later%smoke_smell:49 %again_later%staff:-38 %again_later%start_again:-47 %agree:-146 %agree%call_off:-33
%agree%car_part:26 %agree%fails:-34 %agree%how_long:80 %agree%on_way:-69 %agree%phone:47 %agree%place:-42
%agree%question:-32 %agree%refuse:79 %agree%shift_it:39 %agree%smoke_smell:50 %agree%staff:28 %agree%start_again:-28
%agree%thanks:37 %agree%wrong_one:59 %away:66 %away%bad:-33 %away%bring:-32 %away%call_off:-121 %away%car:35
%away%do_it:44 %away%elsewhere:30 %away%fails:106 %away%family:-53 %away%how_long:115 %away%leak:37 %away%odometer:59
%away%on_way:-57 %away%phone:83 %away%place:-91 %away%wrong_one:102 %bad:29 %bad%bring:47 %bad%meaning:51
%bad%money:-55 %bad%odometer:41 %bad%question:-41 %bring%busy:32 %bring%call_off:67 %bring%car_part:45
%bring%doubt:-45 %bring%elsewhere:-63 %bring%fails:47 %bring%leave_me:-53 %bring%odometer:87 %bring%phone:41 %busy:83
%busy%call_off:-43 %busy%do_it:-42 %busy%doubt:25 %busy%how_long:68 %busy%leave_me:83 %busy%on_way:36 %busy%place:106
%busy%staff:-28 %call_off:41 %call_off%do_it:-25 %call_off%doubt:-47 %call_off%elsewhere:-58 %call_off%fails:43
%call_off%family:-47 %call_off%how_long:-37 %call_off%leave_me:-38 %call_off%lift:93 %call_off%money:-38
%call_off%noise:29 %call_off%on_way:107 %call_off%opening:-32 %call_off%question:51 %call_off%refuse:-27
%call_off%shift_it:40 %call_off%smoke_smell:57 %call_off%staff:-44 %call_off%start_again:-60 %call_off%wrong_one:-60
%car:82 %car%car_part:50 %car%family:59 %car%how_long:50 %car%leave_me:-29 %car%lift:34 %car%phone:-25 %car%place:28
%car%refuse:55 %car%shift_it:-47 %car%who:40 %car%wrong_one:34 %car_part:35 %car_part%fails:-64 %car_part%family:-29
%car_part%leave_me:-32 %car_part%place:-106 %car_part%question:-67 %car_part%refuse:81 %car_part%season:32
%car_part%shift_it:46 %car_part%smoke_smell:39 %car_part%who:-39 %car_part%wrong_one:48 %do_it%family:-42
%do_it%gone_car:43 %do_it%leak:26 %do_it%message:-32 %do_it%money:56 %do_it%place:111 %do_it%question:68
%do_it%shift_it:44 %do_it%who:29 %do_it%wrong_one:40 %doubt:38 %doubt%elsewhere:27 %doubt%on_way:61 %doubt%refuse:-25
%doubt%shift_it:43 %doubt%who:28 %elsewhere%how_long:33 %elsewhere%money:-35 %elsewhere%on_way:82
%elsewhere%refuse:-37 %elsewhere%who:25 %elsewhere%wrong_one:57 %fails%gone_car:70 %fails%phone:28
%fails%smoke_smell:-39 %fails%staff:32 %fails%start_again:32 %fails%who:56 %fails%wrong_one:50 %family:141
%family%how_long:73 %family%on_way:31 %family%place:-27 %family%refuse:-51 %family%who:-29 %family%wrong_one:-26
%gone_car:41 %gone_car%how_long:-30 %gone_car%leave_me:33 %gone_car%odometer:27 %gone_car%on_way:38
%gone_car%phone:32 %gone_car%shift_it:40 %how_long:87 %how_long%leave_me:29 %how_long%lift:-37 %how_long%money:-38
%how_long%odometer:55 %how_long%on_way:57 %how_long%opening:-55 %how_long%place:-40 %how_long%refuse:-40
%how_long%season:38 %how_long%staff:26 %how_long%thanks:54 %how_long%who:49 %leak%odometer:33 %leak%on_way:-70
%leak%place:25 %leak%refuse:26 %leak%wrong_one:39 %leave_me%on_way:37 %leave_me%question:29 %leave_me%refuse:37
%leave_me%thanks:27 %lift:36 %lift%on_way:35 %lift%refuse:73 %meaning:74 %meaning%odometer:42 %meaning%on_way:49
%message%phone:35 %message%wrong_one:38 %money%refuse:-25 %money%shift_it:35 %money%start_again:27 %odometer:94
%odometer%phone:35 %odometer%place:-36 %odometer%question:-28 %odometer%shift_it:-27 %on_way:401 %on_way%opening:-48
%on_way%phone:101 %on_way%place:123 %on_way%question:106 %on_way%refuse:-87 %on_way%shift_it:32
%on_way%smoke_smell:59 %on_way%staff:-71 %on_way%thanks:-37 %on_way%who:55 %on_way%wrong_one:100 %opening:-59
%phone%place:45 %phone%refuse:77 %phone%who:38 %place:179 %place%thanks:-28 %place%who:37 %place%wrong_one:112
%question:-55 %question%refuse:78 %question%shift_it:34 %question%staff:-29 %question%who:49 %question%wrong_one:-25
%refuse%smoke_smell:38 %refuse%wrong_one:41 %season:50 %shift_it:-45 %shift_it%who:51 %shift_it%wrong_one:-43
%smoke_smell:-32 %staff%thanks:53 %staff%wrong_one:-35 %thanks%wrong_one:26 %wrong_one:41 @?:-167 @after_visit:-26
@confirm:283 @confirm_:-110 @day:-29 @nothing:84 @odometer:-31 @offers:-128 @reading:-42 @time:-144 @times:60
@walk_in:-142 ^_$:-109 ^_a:-56 ^_ahi:-163 ^_ahorita:-53 ^_already:-45 ^_ando:75 ^_any:-31 ^_are:-31 ^_as:-37
^_asi:-38 ^_at:33 ^_ay:35 ^_be:209 ^_been:-57 ^_broke:-42 ^_bus:27 ^_can:-48 ^_cant:-61 ^_coming:91 ^_could:-50
^_count:-60 ^_disculpe:34 ^_donde:-45 ^_el:31 ^_en:-64 ^_end:-43 ^_esta:-54 ^_estoy:67 ^_gave:-42 ^_give:-64
^_going:58 ^_got:-80 ^_gps:73 ^_had:59 ^_half:64 ^_hay:90 ^_held:106 ^_hit:64 ^_how:-32 ^_hoy:-80 ^_i:-73 ^_if:-35
^_ill:-149 ^_im:-34 ^_is:-123 ^_it:-40 ^_jajaja:28 ^_just:55 ^_kid:25 ^_kids:31 ^_la:31 ^_late:38 ^_llego:57
^_lost:56 ^_make:-27 ^_me:-82 ^_mi:51 ^_min:74 ^_my:45 ^_nada:-26 ^_need:-27 ^_nel:-39 ^_ni:-34 ^_no:-90 ^_nop:-50
^_ok:-51 ^_on:54 ^_para:40 ^_perdon:46 ^_podemos:-35 ^_podria:-27 ^_que:-38 ^_running:50 ^_school:38 ^_se:-42
^_see:-77 ^_si:-144 ^_sin:-56 ^_sorry:-74 ^_still:-71 ^_ten:-36 ^_that:-54 ^_the:-27 ^_tire:-28 ^_todo:-42 ^_too:-26
^_took:52 ^_trade:36 ^_traffic:38 ^_train:53 ^_turn:-26 ^_voy:122 ^_we:-30 ^_what:-66 ^_who:-32 ^_will:-142 ^_y:-109
^_ya:-83 ^_ye:-57 ^_yep:-37 ^_yes:-79 ^_you:-60 a:43 a__alla:-31 a__and:32 a__de:55 a__en:-34 a__hora:-30 a__hour:42
a__late:99 a__no:-53 a__old:38 a__pero:29 a__se:34 a__si:62 a__tarde:-62 a__trip:-34 a_bit:89 a_esa:-30 a_few:55
a_ir:-40 a_la:-40 a_little:36 a_llegar:-41 a_mi:-71 a_minute:32 a_problem:41 a_quarter:31 a_road:-35 a_tardar:-31
a_tuesday:51 a_year:29 abajo:-27 about:58 about_$:-32 acabo:-32 add:67 address_$:-25 after_$:39 afternoon:-43
afuera:-57 afuera_$:-43 agarrar:-64 agarre:36 agarro:26 ahead:44 ahead_of:34 ahi:-273 ahi_$:95 ahi__con:-27
ahi_estare:-43 ahi_estoy:-77 ahi_le:-88 ahi_voy:34 ahorita:35 al__y:63 al_carro:29 al_nino:53 al_rato:-29 alarm:87
alarms:-45 alcanzo:42 alcanzo_$:27 alcanzo_a:25 algo:-76 all:-48 all__my:-26 alla_$:58 almost:58 already__the:-25
and__am:41 and__the:29 and_im:26 and_nobody:-29 and_the:-32 ando:55 ando__el:-37 ando_en:-36 antes:-41 antes_para:-64
any:-44 any__of:-26 any_chance:-28 anything:-29 apaga:38 apaga_en:38 apenas:79 apologies:37 are:-45 are__guys:26
around:28 around_$:33 as:42 as__as:68 as_a:32 as_you:-25 asi:-27 asi_es:-37 asi_lo:31 at:78 at__gas:35 at__i:-30
at__of:38 at__the:35 at_a:29 at_instead:38 at_on:34 at_the:70 at_this:58 at_work:-35 atiende:-34 atrasado:73 aun:29
aunque:26 away:53 away_$:40 ay:29 b:33 baby:38 babysitter:30 back:-40 back_out:-37 bad:51 be:140 be__at:51 be__by:33
be__the:32 be__work:-26 be_a:78 be_at:-26 be_by:55 be_late:110 be_on:100 be_over:45 be_there:-57 because:30 been:-61
before_$:-25 before_noon:54 before_the:-33 behind:38 behind_$:41 behind_the:-88 bit:100 blew:-29 blocked:28
blocking:45 blue:26 brake:-26 brakes:-25 bridge:41 broke:-42 broke_down:-42 bus:47 buscando:46 but:157 but_i:73 by:71
by_$:37 by__time:54 by_a:96 c:-157 cada:34 cafe:-70 cafe_$:-70 caigo:34 calendar:-31 calendar_$:-31 call:-65
call__if:71 call_me:-59 cambiado:-26 came:-43 camino_$:-67 can:-26 can_$:58 can__make:29 can_i:-40 can_it:-26
can_you:32 cancel:-39 cancele:-31 cancele_$:-31 cant:-36 cant_make:-38 car_is:-27 carro__para:29 cars:29 casi:49
casi_llego:40 cause:36 cerca:61 cerca_$:96 chance_de:50 chance_of:-25 change:27 changing:56 choque_en:26 cita:-33
clinic:34 clock:35 clutch:-29 clutch_se:-29 come:-28 coming_$:-72 coming__the:-47 coming_in:-28 coming_just:31
como__me:-29 como__otra:-31 como_cuanto:-30 como_la:-31 como_llego:-55 con__ninos:39 con__no:-28 con_los:55 cool:57
cool_$:30 corner:-29 could:-61 could_be:-30 couldnt:38 count:-60 count__out:-60 count_me:-60 crossing:46 cuadras:32
cuando:-54 cuanto__voy:-32 cuanto_me:-28 cuarto:30 dame:77 dar_vuelta:36 day:-61 de:37 de__escuela:37 de__hora:78
de__tarde:-33 de__y:42 de_ahi:-30 de_las:-25 deja:46 dejar:25 dejo:40 delayed:76 demora:54 den:34 despacio:46
despacio_$:46 despacito:38 despues:28 despues_$:35 despues__la:52 despues__las:-61 dia:-67 dia_pero:-35 dias:-34
dias_$:-32 didnt:71 dios_quiere:35 disculpe_la:44 do__turn:33 do_i:38 doctor:25 does:25 dog:25 doing:76 donde_me:-46
done:42 dont__it:26 dont__my:56 dont__the:-49 dont_give:57 dont_want:26 dot:29 dot_$:33 down__the:-42 down_on:-42
downtown:37 dragging:34 drop:88 drop_off:110 early:-26 easier:30 easier_to:35 el:84 el__me:37 el__ni:65 el__pero:-27
el__salio:31 el__se:-26 el__y:-29 el_bus:41 el_clutch:-29 el_freeway:28 el_jale:26 el_lugar:63 el_sabado:-31
el_tapon:59 el_tren:39 el_ultimo:33 en:56 en__carro:25 en__con:-28 en__de:26 en__esquina:32 en__freeway:26
en__tarde:-52 en__y:25 en_la:-44 en_orden:-38 en_pie:-36 en_serio:30 en_un:46 en_vez:27 encuentro:34 end_$:-44
equivoque:27 equivoque_de:27 era_$:-32 es:-28 es__el:25 esa:-31 esa_hora:-31 escuela:35 ese:-35 ese_dia:-34 eso:-32
esperen:-32 esperen_$:-29 esta:41 estan:-50 esto:37 esto_$:37 estoy:81 estoy_$:-50 estoy__la:26 estoy_a:57
estoy_ahi:118 every:31 every__light:57 every_red:57 extra:28 falta:27 fast:72 ferry:50 few:81 figure:51 figure_$:30
fila:59 find:63 finished:-43 finished_$:-44 five:56 five_$:35 flat_on:25 foot:44 for:43 for_me:33 forgive:36
forgot:34 freeway_$:27 fridge:-34 from:-30 fue:42 fue_la:36 garage:-43 gas:78 gas_$:27 gave:-52 get:-37 get_there:-31
getting:38 gimme:80 gimme_a:58 give:45 give_me:68 going__be:77 got:-59 got__be:-26 got__on:-32 got_it:-30 got_to:-45
gps:88 ha:-35 had:129 had__get:28 had_to:129 half:128 half_the:46 hang:44 hang_on:40 hanging:-38 hasta:-36 have:-30
have__back:-39 have_me:32 have_to:-49 hay:85 hay__choque:26 hay_un:99 heading:47 hecho:-25 hecho_$:-25 held:86
held__at:87 held_up:106 hermano:30 hey__is:35 highway:34 hill:29 hit:61 hizo:62 hold:52 hold__spot:52 hold_my:96
hora_$:55 hora__a:-30 hour:89 house:33 how:-78 how__are:-30 how_late:-35 hoy:-116 hoy__de:-25 hoy_despues:-25
hoy_no:-69 humo:-44 i_$:26 i__i:38 i__make:36 i__out:-30 i__you:58 i_be:-41 i_know:91 i_said:-46 i_shall:74 i_text:27
i_told:58 i_was:-57 i_will:58 i_wont:-88 ice:48 if__is:31 if_im:-29 if_it:-29 if_that:26 if_you:56 ill__in:29
ill__there:-80 ill_be:-39 im:63 im__coming:-33 im__in:-50 im__it:59 im__of:-35 im_at:-26 im_coming:-68 im_in:36
im_late:51 im_not:-70 im_out:-36 im_still:35 im_there:105 in__car:58 in__morning:-36 in__now:-31 in__of:44 in__on:51
in__week:-37 in_front:44 in_the:-25 in_traffic:-28 interstate:39 into:-33 ir:-66 ir_$:-36 is:44 is_$:-52
is__cross:-26 is__like:55 is__the:-45 is_at:67 is_no:-26 is_nuts:33 is_right:-34 is_texting:-29 is_there:-64
is_up:127 is_wrong:27 it:-94 it_$:-58 it__already:49 it__be:60 it__if:27 it__in:-43 it__me:-36 it__on:-40
it__overheating:-25 it__then:29 it_a:30 it_off:-25 it_ok:26 it_take:65 it_the:-43 it_tuesday:-26 it_will:65 jajaja:35
jefe:-27 job:-34 jueves:-33 junta:50 junto:-29 just:76 just__in:-49 just_a:42 keep:-31 keep_me:-31 keys_$:55 kid:39
kids:58 know:49 know_$:41 la__en:38 la__no:100 la__por:42 la__ya:46 la_calle:26 la_escuela:35 la_hora:39 la_nina:29
la_otra:-28 la_rueda:-31 la_tarde:-177 la_y:25 laid:-27 las:47 las_$:-47 las__ahi:43 las__me:38 las__salgo:30
las_llaves:54 las_se:40 las_si:49 last:-40 late:179 late_$:-53 late__a:64 late__i:53 late__me:37 late__there:27
late_in:-38 late_sorry:34 later:-40 le:-74 le__a:-30 le__el:-30 le__para:67 leaving:46 leaving_now:51 leaving_the:48
left:89 left_$:147 life:38 like:71 like_$:101 like_i:-30 limp:26 line:40 little:37 little_late:37 llaves:54
llegar:-84 llegare:38 llego_$:-95 llego__las:32 llego_a:-26 llego_como:54 llego_en:63 llego_me:53 llego_tarde:38
llegue:-39 llevo:-51 lluvia:77 lo:-41 lo__hoy:28 loco:-27 lol:25 looking:38 los:74 los_ninos:34 lost:72 lost_my:45
lugar:60 made:54 make:37 make_it:41 manana:-48 marqueme:-26 marquenme:49 martes:-30 mas:47 mas_$:212 mas__a:-39
mas__ese:-25 mas_tarde:-226 me:120 me_$:-25 me__am:26 me__con:46 me__el:34 me__la:75 me__parado:25 me__tarde:35
me__the:-58 me__to:37 me__todo:-28 me__un:41 me__voy:35 me__you:48 me_again:34 me_agarro:27 me_and:32 me_at:43
me_atiende:-34 me_dejo:-30 me_equivoque:27 me_esperen:-32 me_fue:56 me_hizo:57 me_if:82 me_la:-25 me_late:-283
me_off:-28 me_out:-60 me_quede:33 me_quiten:32 me_salio:-33 me_voy:-66 means:33 media:93 meeting:51 mejor:-48 mero:91
mero_$:28 meto:-40 mi:-34 mi__que:-26 mi__ya:51 mi_jefe:-26 miles:60 millas:25 min:369 min_$:97 min_late:26 mins:152
minute:32 minutes_$:37 minutos_$:30 mismo__pero:-36 modo:55 monday:-25 more:49 more_minutes:28 morning:-42
morning__the:-36 motor:-30 moving:79 mph:66 mueve:70 my:62 my__now:29 my__out:25 my__says:34 my_life:38 my_phone:30
my_place:54 my_seat:28 my_spot:26 my_time:-34 my_wallet:66 nada:73 nada_$:40 nada__me:58 nadie:-36 nadie_me:-34
nel:-39 nel_$:-39 never:30 never__off:26 next:-25 next_week:-25 ni_loco:-27 ni_modo:55 night:-25 nina:29 nino:55
ninos:34 ninos_$:55 no_$:-38 no__donde:72 no__esperen:-32 no__nada:55 no__no:36 no__pero:39 no__quiten:30
no_alcanzo:42 no_la:-41 no_llego:-105 no_longer:-39 no_me:75 no_more:-48 no_podemos:30 no_se:60 no_voy:-217
no_way:-27 nobody:-74 nomas:78 nomas_el:33 nomas_que:32 noon:80 noon_$:28 nop:-50 nop_$:-50 nose:38 not:-87
not__to:-33 not_coming:-114 not_going:-33 now:199 now_$:43 now_so:30 number:-25 number_$:-25 nuts:33 o:-58 o_mas:-54
of:81 of__driveway:31 of__two:48 of_me:100 of_the:54 off:54 off_$:-30 oil:-26 ok_if:26 old:45 omw:56 on:85 on_$:-129
on__dot:29 on__hill:29 on__interstate:43 on__nose:38 on__road:34 on__the:37 on__to:53 on__way:25 on_for:51 on_the:97
on_time:92 onda:41 one:47 or:-60 orden:-38 otra_vez:38 our:35 out:112 out_$:82 out__a:32 out__door:57 out__me:25
out__town:-35 out_of:-34 out_the:44 over:117 over_$:32 over__the:-48 over_by:26 overheating:-25 overslept:25 oye:-31
para:-25 para__no:40 para_alla:117 para_la:-35 para_las:42 para_un:-26 parking:-28 parking_$:-60 parking_lot:25
pasar:25 pase:32 pass:28 past:108 past_$:81 perdi:63 perdon:50 perdon_$:-65 pero:86 pero__las:26 pero__se:32
pero__un:33 pero_a:25 pero_no:61 pero_se:-31 phone__sorry:52 phone_died:34 phone_me:-42 pie:-47 pie_$:-29 pierdo:-27
place:39 place_$:48 plis:75 plis_$:75 poco:42 podria:-27 podria_ser:-27 policia:36 poquito:30 por:-28 por_eso:-26
por_un:31 possible:-34 power:-26 price:28 primero_dios:-33 problem:37 puede:-83 pulled_over:68 puse:-29 quarter:43
que:32 que__a:36 que__me:-32 que__se:33 que_dejar:25 que_el:25 que_era:33 que_la:46 que_no:31 que_voy:-38 quede:33
quedo:-47 quiere_$:35 quit:-37 quit_on:-30 quite:25 ran:38 ran_over:38 red:27 red_light:48 retrasado:56
retrasado_$:31 right_$:-60 right_after:38 road:87 road_trip:-36 rolling:53 rotation:27 route:43 rueda:38 running:45
running_late:46 runs:-51 sabado:-31 salgo:90 salgo_$:41 salgo_ya:34 sali:75 salida:27 saliendo:-34 salio_una:-29
sat:-48 save:59 says:127 says_$:109 school:42 scraping:40 se:72 se__abajo:-29 se__en:37 se__fue:47 se__hizo:65
se__la:30 se__mas:-33 se__un:-25 se__una:30 se_apaga:46 se_esta:25 se_le:-31 se_me:52 se_mueve:70 se_oye:-31
se_puede:-72 se_quedo:-29 seat:34 second_$:27 see:-63 see__at:37 see__then:-72 see_me:65 see_my:-29 semaforo:67
senor:51 sent:35 ser_mas:-38 serio:30 set:-35 set_$:-45 shall:59 shall_be:75 should:66 should_be:42 should_i:26
showed:33 si:-65 si__ahi:43 si__no:66 si__quiere:35 si__voy:-88 si_dios:35 si_llego:-38 si_ya:-78 sin:-78 six:34
skip:82 skip_the:56 slow:74 snow:36 so__me:-29 so_i:52 solo:-27 soon__you:-25 sorry:117 sorry_$:-37 sorry__is:57
spot_away:-26 stalled:28 start:46 station_$:-30 still__the:40 still_have:34 still_on:-52 stop:-36 story:43
straight:28 stuck:-39 stuck_at:-25 take:54 tantito:38 tapon:59 tardar:-31 tarde:-28 tarde_$:-105 tarde__me:35
tardecito:34 tardecito_$:34 tardes:-28 tardo:67 ten:146 tengo__dejar:25 tengo_que:33 text:58 texting:-39
texting_me:-39 th:-29 th_$:-25 than:26 thanks:25 that__it:40 that_is:-32 the:55 the__and:-74 the__be:45
the__behind:-62 the__dont:-30 the__not:30 the__now:128 the__of:39 the__right:41 the__then:40 the__there:-61
the__this:26 the__though:40 the_appointment:-35 the_blue:26 the_car:85 the_clock:41 the_coffee:-34 the_corner:-29
the_door:31 the_dot:29 the_front:-26 the_highway:45 the_hill:29 the_hour:29 the_house:33 the_interstate:39
the_job:-33 the_kid:32 the_morning:-36 the_nose:38 the_price:41 the_road:42 the_th:-29 the_time:55 the_tires:-30
the_train:-45 the_two:48 the_week:-37 the_windshield:38 the_wrong:55 then:98 then_$:-73 then_ill:63 then_you:34
there:-37 there_$:-89 there__no:-26 there__the:-59 there__traffic:73 there_at:76 there_before:-34 there_by:30
there_in:85 there_is:-47 there_when:44 this_$:-36 this__me:34 this_one:49 threw:46 threw_up:46 tiempo:-27 tight_$:25
til:27 time:36 time_$:-39 time__i:98 time_im:54 tirado:-27 tire:-26 tire_blew:-28 tires_$:27 tmrw:-36 to:36
to__at:-38 to__in:-32 to__late:58 to__me:36 to__sorry:-40 to__the:46 to__there:-53 to_back:-37 to_be:30 to_get:-28
to_you:-47 todavia:48 todavia_me:26 today_$:-37 todays:-25 todo:-72 todo__orden:-38 todo_en:-38 todos:61 todos_los:62
told_you:58 tomorrow:-26 too__for:-25 too_late:-26 took:74 tractor:64 trade:37 traffic:27 traffic_is:54 tren:74
trip:-40 tues:-25 tuesday_$:-26 turned:-43 turning:33 turno:32 turno_$:29 turns:-40 turns_out:-40 twenty:-43
two_$:-27 ugh:61 ultimo:33 un:143 un__de:27 un__en:39 un__que:33 un_choque:26 un_poco:44 una:26 una__a:-30 una__en:31
unless:-36 unos:89 up:124 up__me:25 up__the:53 up_at:96 up_on:-30 us:33 usted:50 va:25 vamos:47 vengo:131 vez:41
vez_de:27 volando:75 voy_$:-133 voy__llegar:-41 voy__porque:32 voy__tarde:27 voy__y:28 voy_a:-150 voy_saliendo:43
voy_tarde:127 vuelta:49 vuelta_a:-30 wallet:66 want:25 want_it:27 was:33 was_it:28 water:59 way:-25 way_$:-54
way_now:28 way_to:-59 we:-78 wed:-34 week:-65 week_$:-66 went_off:26 what__it:34 what__this:38 wheels:42 when:45
when_im:56 where:37 where__i:33 where_do:33 which_garage:-29 will:38 will__be:-26 will__it:34 will__make:47
will__there:-121 will_be:-67 will_that:46 will_the:-30 windshield:38 with__and:40 with_me:25 wont__it:32
wont__there:-57 wont_be:-85 wont_make:32 would:-37 wreck:74 wrong:45 wrong_$:-33 y:51 y_$:-110 y__bien:30 y__me:36
y_le:67 y_nadie:-34 y_nos:25 y_voy:28 ya:82 ya_$:-64 ya__en:-66 ya__es:25 ya__la:-70 ya__llego:56 ya__para:35
ya__pero:33 ya__voy:-45 ya_casi:57 ya_estoy:46 ya_le:-26 ya_me:-59 ya_mero:63 ya_no:-37 ya_voy:182 ye:-57 yeah:-27
year:29 yep:-59 yes:-79 yes__my:-28 yes_i:-49 yes_im:29 yo:62 yo__que:41 you_$:-26 you__have:34 you__late:29
you__on:-49 you_at:-29 you_in:50 you_know:-30 you_said:40 you_still:29 you_there:-37 you_to:28 youll:34 your__is:27
your_lot:-41
"""
