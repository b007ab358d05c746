"""What speaks for and against `stop`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "stop"
BIAS = -173
WEIGHTS = """\
#abaj:39 #abin:-35 #abla:-40 #able:-34 #abou:-127 #acar:-45 #acce:-25 #acte:37 #acti:-59 #acto:55 #ados:-45 #agai:75
#agen:-31 #ages:63 #agin:69 #agre:25 #ahor:-25 #ajes:69 #ajit:44 #aken:62 #akes:-33 #alir:79 #alls:-33 #ally:-72
#alon:65 #alre:67 #alta:-30 #alto:36 #amen:-28 #anan:-58 #anda:-45 #ande:31 #andl:-30 #ando:28 #ange:-48 #angi:28
#aniz:-56 #anno:-51 #anot:30 #anta:-74 #ante:34 #anyt:76 #aque:50 #aqui:98 #arar:52 #aras:30 #arde:-47 #arel:-40
#aren:112 #arin:25 #ario:-33 #arly:-53 #aron:-36 #arqu:-27 #arro:28 #arte:31 #asia:-44 #aske:42 #aski:31 #asta:42
#asti:-47 #atev:46 #atin:-64 #ator:-53 #atos:72 #augh:26 #aven:-34 #avis:-69 #avor:104 #away:89 #ayin:26 #back:-92
#baja:82 #bajo:29 #bare:-40 #base:118 #bast:31 #befo:-36 #bein:43 #bien:-77 #bloc:-76 #blow:45 #body:32 #book:-48
#borr:206 #both:-31 #boug:-25 #bout:-127 #busy:-71 #bvio:29 #cabi:-35 #call:-127 #came:105 #canc:65 #cant:-86
#ceas:25 #cela:105 #cele:-62 #cell:41 #celo:-66 #celu:26 #cero:27 #chan:-57 #chec:-49 #chin:28 #chos:-29 #cibi:74
#cide:-25 #cita:-107 #cked:-98 #clar:39 #comi:-30 #como:-139 #comp:-29 #cono:27 #cons:49 #cont:218 #corr:25 #coul:-34
#crap:41 #cras:-35 #crib:120 #cten:42 #ctio:-28 #ctiv:-60 #cult:-36 #dand:-45 #daug:34 #days:-27 #deje:-51 #dele:43
#dema:-49 #dent:-41 #ders:-44 #dije:69 #dine:-49 #ding:88 #dire:-38 #disp:-27 #does:-64 #dond:-25 #done:51 #dont:25
#drop:67 #dule:-32 #eact:-34 #eady:52 #eant:-25 #eari:25 #earl:-55 #eati:-25 #eave:-191 #ecib:68 #ecio:-29 #ecor:-28
#eden:-62 #edes:28 #edul:-32 #efon:48 #efor:-36 #egat:-30 #egre:-30 #eing:42 #ejen:102 #elar:127 #elef:48 #elen:-55
#elet:39 #elim:81 #else:65 #elul:26 #elva:59 #emas:-49 #embe:-27 #emem:-25 #emer:72 #emin:-45 #emov:100 #empr:-58
#enci:61 #ende:-33 #endi:71 #enga:73 #engo:-25 #enle:141 #enlo:-75 #enme:278 #enos:-28 #ensa:44 #envi:51 #eone:-34
#epor:131 #equi:-26 #erer:-39 #eres:38 #erge:72 #ermi:113 #erne:-27 #eron:-25 #erso:43 #esad:32 #escr:63 #esnt:-32
#espo:-26 #este:134 #esto:28 #esub:-44 #eted:25 #eten:77 #etir:56 #ette:-27 #evan:38 #ever:166 #evok:232 #exte:233
#exto:95 #exts:-31 #favo:104 #feel:-42 #filt:-42 #fine:-31 #foll:192 #fono:48 #fore:-66 #frai:26 #fren:-29 #frid:-55
#from:183 #furt:87 #gain:75 #gand:42 #ganm:-36 #gati:-30 #genc:70 #gend:-29 #ghte:33 #ging:112 #gned:28 #goin:-75
#gone:33 #good:-26 #grea:-30 #gree:33 #gust:-44 #habl:-61 #hago:-61 #hanc:-46 #hand:-32 #hank:-27 #have:-31 #head:-27
#hear:46 #heav:-29 #heck:-28 #hedu:-32 #here:-27 #hers:-25 #hese:182 #hill:-25 #hing:48 #hold:-75 #hone:58 #hops:31
#hora:-65 #hour:32 #hter:34 #iado:-47 #iban:29 #ibir:144 #iday:-55 #iden:46 #iene:-31 #iern:-27 #igan:-102 #ight:-57
#igne:28 #ilte:-40 #imes:143 #imin:81 #inat:-38 #indl:51 #inen:64 #iner:-49 #info:102 #ings:-27 #inst:-26 #inue:26
#ious:40 #iper:-57 #ippe:-38 #ires:-63 #irve:-62 #isar:-35 #isco:35 #isnt:-99 #issi:69 #iten:39 #itos:35 #iven:-40
#jenl:-66 #jenm:86 #jito:44 #just:-183 #keep:-125 #kill:68 #kind:37 #know:-48 #lace:25 #lama:-34 #lame:-50 #lant:-82
#laro:41 #last:45 #late:-35 #ldnt:-36 #leav:-169 #lefo:48 #less:-53 #lest:76 #lete:39 #ligh:-28 #like:-114 #limi:79
#list:56 #live:32 #llam:-70 #llan:-70 #llow:182 #lock:-85 #lone:66 #long:73 #lrea:67 #lsew:-33 #lter:-40 #ltos:-32
#ltur:-36 #lula:26 #lvan:49 #lver:-64 #lvid:66 #maci:25 #make:-66 #mana:-61 #mand:-44 #many:50 #marc:-25 #marq:-27
#masi:-44 #mber:88 #mbre:-44 #mean:27 #memb:-25 #menm:-32 #mens:45 #meon:-34 #merg:72 #mero:100 #mind:-60 #mine:60
#ming:-38 #miso:46 #miss:58 #mist:-32 #moki:-49 #mole:76 #mone:-35 #mont:-33 #more:256 #move:96 #mpra:-52 #much:-81
#muev:32 #mute:218 #nada:90 #nana:-57 #ncel:71 #nces:-47 #ncie:67 #ndan:-85 #nded:-25 #nden:82 #nder:-52 #ndin:91
#ndly:51 #need:-81 #nega:-30 #nenm:51 #nero:-40 #neve:72 #ngan:96 #nged:-32 #nger:54 #ngin:35 #ning:-30 #nlos:-62
#nnoy:-51 #noch:-78 #noma:-38 #nomb:-37 #noyi:-45 #nozc:29 #nsaj:45 #nsen:75 #nsto:-51 #nsub:99 #ntac:213 #ntas:-51
#nted:52 #nten:-27 #ntin:28 #ntry:38 #nuda:-29 #nuev:-135 #numb:116 #nume:97 #nunc:32 #nvie:34 #nyth:77 #obot:26
#obvi:29 #oche:-79 #ocke:-114 #oesn:-32 #offe:-26 #oing:-80 #okin:-57 #oles:73 #ollo:192 #olve:-64 #olvi:58 #omas:-38
#ombr:-37 #omeo:-34 #omin:-41 #once:-25 #onde:-28 #oney:-38 #onge:57 #only:25 #onoz:29 #onse:70 #onta:207 #onth:-32
#onti:26 #opal:136 #opte:52 #opto:161 #orar:-26 #orda:-63 #orev:-30 #orio:-50 #orks:-30 #orma:36 #orre:220 #orry:-96
#orte:98 #osas:36 #othe:-38 #ould:-35 #ousl:29 #over:-34 #ower:-25 #oyin:-45 #ozco:29 #pall:142 #pare:122 #part:28
#pedi:30 #perd:-26 #perm:115 #pero:-50 #phon:62 #plea:30 #port:138 #pped:-41 #pran:-52 #prec:-27 #proc:-34 #prom:26
#ptou:161 #pued:-136 #pull:88 #qued:-28 #quen:50 #quer:-35 #quie:-27 #quit:102 #quiv:-25 #raba:27 #rano:-52 #rari:-26
#raro:-25 #rass:30 #rast:-34 #rdat:-50 #reac:-36 #reat:-31 #reci:50 #reco:-31 #reed:31 #refr:27 #regr:-30 #regu:-25
#rely:-42 #remi:-45 #remo:98 #renl:130 #renm:47 #repo:132 #resu:-78 #reti:56 #reve:-34 #revo:239 #rgan:-56 #rgen:70
#riba:42 #ribi:59 #rida:-55 #rios:-46 #ripp:-39 #rmac:25 #rmat:27 #rmis:116 #rnes:-27 #robo:42 #romo:27 #rong:-81
#rren:111 #rryi:-41 #rson:43 #rted:88 #rthe:87 #rven:-36 #ryin:-41 #saca:89 #sage:-50 #sagi:70 #said:102 #saji:44
#sali:59 #saqu:50 #sayi:26 #sche:-32 #scon:34 #scra:44 #scri:135 #sday:-25 #segu:-25 #send:170 #sent:70 #sewh:-33
#shop:-35 #shut:-26 #siga:-87 #simo:33 #sion:66 #sirv:-63 #sist:41 #sked:42 #skin:31 #smok:-54 #sold:60 #some:-30
#sona:42 #sorr:-55 #spam:79 #sper:-25 #spon:-39 #ssio:68 #stak:-32 #stan:50 #sted:49 #stem:100 #sten:79 #stil:52
#stin:-49 #stop:209 #stuf:49 #sual:-54 #sume:-33 #susc:47 #syst:59 #taba:53 #tact:213 #take:130 #tand:53 #tard:-53
#tart:-83 #tede:28 #teen:65 #tele:31 #tell:-46 #tema:41 #temp:-52 #teng:56 #tenm:102 #tere:33 #teve:46 #text:235
#than:-50 #that:-76 #them:-71 #ther:60 #thes:175 #they:-39 #thin:56 #this:105 #tien:42 #till:45 #time:69 #tina:-39
#ting:-86 #tion:-35 #tire:-74 #tiro:40 #tiva:-27 #tive:-43 #tmen:-27 #todo:39 #topa:136 #tops:-26 #tout:161 #trab:40
#tuff:49 #ture:-36 #uall:-57 #ucho:-35 #udar:-29 #uede:-75 #uedo:-82 #uelv:55 #uenm:44 #uere:-43 #uevo:-111 #ught:32
#uido:-36 #uien:-62 #uier:28 #uite:37 #uivo:-25 #uldn:-36 #ultu:-36 #umbe:115 #umer:97 #unfo:183 #unst:-51 #unsu:99
#untr:38 #urth:87 #uscr:47 #usly:29 #usua:-53 #utor:55 #vanm:33 #vide:75 #vier:-32 #visa:-48 #viso:-27 #voke:232
#volv:-65 #vuel:44 #wait:-38 #want:141 #when:-76 #wher:-36 #wife:-33 #wint:-43 #wipe:49 #wish:65 #with:65 #work:-34
#worr:-45 #wron:-75 #xted:39 #xtee:187 #xtin:-35 #xtos:79 #yeah:55 #year:39 #ying:-60 #your:130 #yste:59 #ythi:55
%again_later:-182 %again_later%bad:45 %again_later%bring:-64 %again_later%call_off:-159 %again_later%doubt:-35
%again_later%elsewhere:33 %again_later%fails:-33 %again_later%family:38 %again_later%leave_me:-67
%again_later%message:-110 %again_later%money:39 %again_later%on_way:-50 %again_later%phone:58 %again_later%refuse:94
%again_later%shift_it:31 %again_later%wrong_one:195 %agree%away:37 %agree%bring:-52 %agree%busy:-45
%agree%call_off:39 %agree%car:108 %agree%car_part:-68 %agree%elsewhere:43 %agree%fails:-37 %agree%gone_car:118
%agree%leave_me:44 %agree%meaning:-25 %agree%message:-142 %agree%phone:39 %agree%question:75 %agree%refuse:-117
%agree%season:38 %agree%shift_it:41 %agree%staff:48 %agree%start_again:-133 %agree%who:-26 %agree%wrong_one:46
%away:59 %away%bring:-37 %away%fails:-28 %away%leave_me:75 %away%message:59 %away%on_way:46 %away%phone:26
%away%season:68 %away%staff:-28 %away%wrong_one:52 %bad:85 %bad%call_off:39 %bad%fails:74 %bad%leave_me:109
%bad%message:61 %bad%phone:28 %bad%wrong_one:48 %bring:-115 %bring%busy:-70 %bring%call_off:-138 %bring%car_part:-150
%bring%fails:-82 %bring%family:-25 %bring%gone_car:46 %bring%leave_me:-60 %bring%meaning:-34 %bring%message:41
%bring%odometer:-75 %bring%on_way:-30 %bring%phone:61 %bring%question:-58 %bring%refuse:-212 %bring%thanks:34
%bring%who:48 %bring%wrong_one:-116 %busy:-154 %busy%leave_me:-56 %busy%money:-26 %busy%odometer:40 %call_off:140
%call_off%car_part:-82 %call_off%do_it:-26 %call_off%family:-57 %call_off%how_long:37 %call_off%leave_me:-74
%call_off%meaning:27 %call_off%message:276 %call_off%money:-52 %call_off%on_way:-48 %call_off%opening:38
%call_off%refuse:-146 %call_off%smoke_smell:-26 %call_off%start_again:155 %call_off%who:103 %call_off%wrong_one:-108
%car:-30 %car%gone_car:105 %car%leave_me:46 %car%message:103 %car%phone:-31 %car%staff:-28 %car_part:-348
%car_part%do_it:-29 %car_part%fails:-49 %car_part%leave_me:-197 %car_part%message:-161 %car_part%refuse:-92
%do_it:-47 %do_it%elsewhere:56 %do_it%gone_car:34 %do_it%leave_me:90 %do_it%meaning:-34 %do_it%message:84
%do_it%wrong_one:31 %doubt:-35 %doubt%leave_me:-33 %doubt%question:30 %doubt%wrong_one:-33 %elsewhere:70
%elsewhere%gone_car:27 %elsewhere%leave_me:35 %elsewhere%message:90 %elsewhere%phone:53 %elsewhere%refuse:25
%elsewhere%shift_it:34 %elsewhere%who:50 %fails%leave_me:73 %fails%message:51 %fails%money:-31 %fails%phone:83
%fails%question:-56 %fails%smoke_smell:-50 %fails%start_again:-58 %fails%wrong_one:149 %family:-150
%family%odometer:-51 %family%phone:27 %family%start_again:42 %gone_car:-53 %gone_car%leave_me:116
%gone_car%message:53 %gone_car%thanks:30 %gone_car%wrong_one:-40 %how_long:-73 %how_long%leave_me:-30
%how_long%opening:32 %leave_me:611 %leave_me%lift:-37 %leave_me%meaning:-58 %leave_me%noise:-31
%leave_me%odometer:-31 %leave_me%on_way:-33 %leave_me%opening:-29 %leave_me%pay_day:-45 %leave_me%phone:252
%leave_me%place:-32 %leave_me%question:-31 %leave_me%refuse:-157 %leave_me%season:-32 %leave_me%smoke_smell:-38
%leave_me%staff:32 %leave_me%start_again:49 %leave_me%thanks:55 %leave_me%who:50 %leave_me%wrong_one:151 %lift:-60
%machine%refuse:-25 %meaning:-65 %message:229 %message%money:37 %message%odometer:43 %message%pay_day:-46
%message%phone:-31 %message%question:-154 %message%refuse:239 %message%shift_it:-40 %message%staff:-56
%message%start_again:-85 %message%thanks:101 %message%wrong_one:39 %money:-124 %money%odometer:-27 %money%refuse:37
%money%start_again:47 %money%wrong_one:33 %noise:-73 %odometer:95 %odometer%opening:-27 %odometer%phone:86
%odometer%question:43 %odometer%wrong_one:153 %on_way:-102 %on_way%wrong_one:73 %opening:-28 %pay_day:-96
%pay_day%season:-53 %phone%refuse:-43 %phone%staff:-35 %phone%wrong_one:-68 %place:-98 %place%question:-54
%question:-294 %question%refuse:89 %question%season:53 %question%staff:-26 %question%start_again:76
%refuse%shift_it:-32 %refuse%smoke_smell:-26 %refuse%staff:47 %refuse%start_again:271 %refuse%thanks:64
%refuse%wrong_one:77 %season:-52 %season%smoke_smell:-32 %season%wrong_one:-28 %shift_it:-96
%shift_it%start_again:-25 %smoke_smell:-59 %staff:-30 %staff%wrong_one:45 %start_again:-229
%start_again%wrong_one:189 %who:-61 %wrong_one:29 @?:-100 @after_visit:56 @confirm_stop:390
@confirm_stop_please_do:31 @confirm_stop_si:58 @day:-27 @later:-47 @nothing:80 @nothing_opt_out:28 @odometer:57
@offers:-44 @reading:-54 @time:-25 @times:-323 @walk_in:-40 ^_alto:64 ^_baja:37 ^_basta:46 ^_borre:32 ^_can:-58
^_cancel:262 ^_cancelar:150 ^_cancele:25 ^_cant:-39 ^_car:-53 ^_claro:49 ^_como:-142 ^_cut:42 ^_de:-111 ^_dejame:25
^_deje:-126 ^_dejen:83 ^_delete:-44 ^_do:123 ^_dont:-124 ^_drop:60 ^_end:68 ^_enough:92 ^_ese:-51 ^_get:109 ^_go:127
^_got:-39 ^_he:-33 ^_how:-149 ^_i:97 ^_ill:-77 ^_im:45 ^_info:-68 ^_is:-56 ^_keep:-25 ^_kill:46 ^_leave:-93 ^_me:-120
^_my:-135 ^_nel:-49 ^_new:-32 ^_no:-200 ^_nobody:27 ^_nombre:-27 ^_not:-116 ^_one:-35 ^_opt:-70 ^_optout:161
^_parar:63 ^_pare:25 ^_phone:-26 ^_please:-52 ^_por:58 ^_pull:92 ^_quien:-26 ^_quiero:-117 ^_quit:105 ^_quiten:-31
^_re:-26 ^_resubscribe:-44 ^_retiro:41 ^_revoke:217 ^_salir:81 ^_saquenme:44 ^_se:-66 ^_send:-28 ^_si:58 ^_sold:59
^_sorry:-26 ^_start:-26 ^_stop:305 ^_stopall:136 ^_take:101 ^_text:-72 ^_texting:73 ^_that:48 ^_this:-47 ^_un:27
^_unstop:-48 ^_unsubscribe:60 ^_what:-88 ^_who:63 ^_wrong:-59 ^_yeah:55 ^_yes:45 ^_yo:46 a:-56 a__and:32 a_car:34
a_escribir:44 a_este:58 a_favor:37 a_los:32 a_month:-31 a_recibir:-38 about:-126 about_the:-32 about_tires:-35
again:75 again_$:37 agreed:31 ahi:56 ahi_$:70 al:-42 alone:66 alone_already:44 already:67 already_$:39
already__the:50 already_with:38 alto:68 alto_$:59 altos:-32 altos_$:-32 am:-56 am_$:-55 am_i:50 an:-33 and:213
and__is:33 and__text:-52 and_dont:32 and_i:103 and_it:26 and_please:38 and_stop:48 annoying:-45 annoying_$:-38
another:32 any_more:26 anymore_$:-32 anything:77 anything_else:82 apaga:-27 apaga__los:-26 apaga_en:-26 aqui:98
aqui_$:103 are:76 as:39 asi:-52 asi_$:-54 asked:42 asking:31 at:-162 at_work:-30 away:89 away_$:112 back:-90
back_on:-28 baja:74 barely:-40 base:59 base__datos:59 base_de:59 basta:32 basta_$:35 be:211 be__a:31 be__your:66
be_in:56 be_on:33 been__your:-39 been_to:-39 before:-36 before_i:41 being:43 bien:-68 bien_asi:-28 blocked:-95
blowing:25 book:-44 book_me:-42 borre:52 borre_mi:53 borren:80 borrenme:37 bother:-28 bought:-25 brakes__stop:-42
busy:-71 but:-37 by:-153 by_$:-58 by_friday:-31 cabin:-35 cabin_filter:-34 call:-105 call_$:-52 call__me:-47
call_me:-98 call_my:55 came:-27 can:-94 can__be:87 can__stop:-70 can__take:-70 can_stop:50 can_text:-28 can_you:-77
cancel:101 cancel_$:190 cancel__please:-54 cancel_culture:-36 cancel_it:-91 cancel_please:81 cancelar:128
cancelar_$:130 cancelen:-48 cancelo:-66 cant:-85 cant_stop:-29 car:59 car__gone:29 car_is:44 car_just:-50 car_quit:39
carro:30 cease:26 cel:45 cell:44 celular:26 chances:-43 chances_$:-43 changed:-32 changing:30 cita:-107 cita_$:-67
cita__favor:-47 cita_por:-47 cita_y:33 claro:41 claro__si:32 claro_que:32 como:-138 como__hago:-41 como__los:-39
como_le:-41 con__mensajes:33 con__textos:40 con_los:77 con_mi:-26 conozco:29 consent:58 contact:121 contact_$:27
contact__again:84 contact_me:83 contacten:42 contacten_$:35 contacto:34 correct:29 cosas:36 cosas_$:25 couldnt:-30
country:38 culture:-36 cut:50 datos:73 datos_$:62 daughter:34 de:214 de__base:59 de__lista:66 de__llantas:-43
de__mensajes:33 de__sistema:37 de__textos:40 de_ahi:56 de_aqui:106 de_baja:63 de_datos:59 de_estar:41 de_las:-50
de_manana:-28 de_mandar:27 de_mandarme:43 de_mas:-29 de_no:31 de_nuevo:-108 de_su:122 de_sus:33 deje:-143 dejen:91
dejen__estar:41 dejen_de:94 dejenlos:-55 dejenme:79 del:-50 delete__number:26 delete_my:47 dia:-36 dije:72
dije_que:61 dinero:-49 do__a:37 do__contact:54 do__get:-36 do__got:64 do__have:54 do__take:-52 do__text:-35
do__want:55 do_i:-92 do_me:37 do_not:256 do_you:-91 does:-33 doesnt:-32 donde:-25 done:52 dont:25 dont__a:45
dont__any:27 dont__in:38 dont__it:73 dont__me:131 dont__texting:-147 dont__to:38 dont__your:35 dont_call:-60
dont_do:-37 dont_need:51 dont_stop:-294 dont_text:85 dont_want:66 drop:68 drop__from:74 drop_me:68 early:-49
early_$:-42 el:-161 eliminenme:51 else:80 else_$:90 elsewhere:-33 elsewhere_$:-35 en:-57 en__altos:-32 en__noche:-53
en__ya:25 en_la:-78 en_los:-50 en_otro:32 en_paz:74 end_$:37 enough__with:36 enough_already:36 equivocado_$:-27
es:-90 es__mi:-32 es_para:-30 escriban:34 escriban_$:77 escriban_tan:-47 escribir_$:34 escribirme_$:27 ese:-89
eso_$:-29 esta:-72 esta__asi:-28 esta_bien:-31 estar:41 este:38 esto:39 esto_$:44 ever:81 ever_$:25 every:31 favor:96
favor_and:37 feel:-31 filter:-40 fine:-31 for:101 for_me:-57 for_these:28 forever:-30 forever_$:-33 friday:-54
friday_$:-40 from:183 from__place:42 from__text:55 from_my:-28 from_the:33 from_this:33 from_you:77 from_your:68
fue:-59 further:87 get:127 get__number:38 get__off:50 get__this:-47 get_me:48 get_my:63 get_off:-46 get_these:46
getting_these:51 go:109 go_away:134 going:-75 going_to:-51 gone:33 good:-30 got:-60 got__cancel:-33 got_in:-28
got_this:-36 got_to:29 gracias_y:25 great:-28 had:-33 had__done:33 had_it:37 hago:-61 hago__que:-47 hago_para:-52
handled_$:-33 hate:-29 have:-25 have__cancel:-25 have__car:50 have__no:-31 have__number:-38 have__say:57 have__to:67
have_a:31 have_had:-39 have_it:-34 have_the:39 he:-34 hear:46 hear_from:52 hearing:26 here:-25 here_$:-36 him:-25
his:-43 hold:-72 horario:-27 horario_$:-27 hours:35 hours_to:44 how:-171 how__i:-187 how_do:-215 how_many:126 i:-60
i__by:-63 i__do:-41 i__getting:46 i__got:-34 i__had:-40 i__in:-38 i__it:63 i__longer:63 i__my:56 i__no:97 i__not:74
i__smoking:-36 i__stop:-35 i__the:-38 i__them:-38 i__these:-113 i__to:-36 i__want:111 i__you:71 i_am:-43 i_be:95
i_cant:-38 i_do:62 i_feel:-30 i_hate:-29 i_just:-36 i_keep:26 i_like:-107 i_make:-27 i_mean:68 i_never:90 i_no:65
i_quit:-42 i_said:136 i_still:39 i_stop:-167 i_text:-49 i_want:-50 ill:-102 ill__my:-41 ill_take:-54 im_out:-25
in:-106 in_$:-160 in_the:33 in_your:49 info:77 info_please:67 informacion:25 informacion_$:25 interesa:-44
interesa_$:-38 interest:25 interested:33 interested_$:-51 interested_in:62 ir:-48 ir_$:-48 ir_y:25 is:-26 is_a:-37
is_for:75 is_getting:-47 is_gone:28 is_not:-34 is_there:-30 is_this:-27 is_what:42 isnt:-99 it_$:-34 it__i:51
it__with:40 it_again:47 it_for:68 it_or:51 it_out:28 it_please:-42 job:-52 job_$:-33 just:-182 just__on:-50
just__this:-35 just_got:-34 keep:-121 keep_me:-48 keep_texting:-30 keep_them:-35 kill:70 kindly:51 know:-37 la:-230
la_cita:-34 la_noche:-53 las:-88 las_llantas:-46 last__why:53 le:-60 le__para:-40 le_hago:-41 lease:-25 leave:-161
leave__alone:67 leave__the:-25 leave_it:-75 leave_me:-35 les:76 les__que:81 les_dije:69 less:-56 like:-114
like_them:-45 list:48 list_$:25 lista:41 live:37 live__the:38 live_in:33 llamenme:-32 llantas:-47 llantas_$:-42
lo:-74 lo__en:37 lo_de:-31 lol:-113 lol_$:-70 longer:58 longer__to:57 los:-77 los__de:-37 los_altos:-32
los_avisos:-35 los_mensajes:46 make:-58 make_it:-27 manana:-57 mandan:-58 mandando:-45 mandando_$:-125 mandar:29
mandarme_recordatorios:-31 manden:77 manden_mas:52 manden_mensajes:-37 manden_nada:54 many:50 many__do:123
many_texts:-74 many_times:128 mas:449 mas_$:177 mas_mensajes:31 mas_por:146 mas_textos:35 me:88 me_$:150 me__a:44
me__am:-53 me__before:44 me__de:-49 me__en:-66 me__favor:28 me__i:35 me__in:-32 me__like:-43 me__mas:209
me__mensajes:-46 me__nada:47 me__no:29 me__of:30 me__please:-53 me__por:-44 me__tan:-47 me__this:49 me__your:54
me_a:-51 me_about:-75 me_again:84 me_alone:53 me_and:38 me_at:-37 me_back:-47 me_before:-55 me_contacten:42
me_from:89 me_i:-62 me_in:-35 me_interesa:-41 me_mandan:-37 me_off:195 me_on:-26 me_sirve:-25 me_sirven:-36 me_so:-57
me_texteen:52 me_the:-31 me_up:-26 me_vuelvan:39 mean:53 mean_it:70 meant:-25 mensaje:-68 mensajes:69 mensajes_$:171
mensajes_a:25 mensajes_por:32 mensajitos:36 message:-113 message_$:-78 message_me:56 messages:63 messages_$:50
messaging:70 messaging__number:30 messaging_this:32 mi:99 mi__para:43 mi__por:33 mi_cel:35 mi_cita:-64 mi_contacto:38
mi_numero:145 mi_telefono:53 mis:30 money:-34 month:-41 month_is:-30 more:250 more_$:37 more__i:65 more__please:38
more_messages:40 more_of:48 more_texts:32 much:-42 muy:-35 my:118 my__dont:28 my__from:29 my__off:31 my__out:98
my__phone:33 my__please:98 my__said:-29 my_car:-28 my_cell:39 my_chances:-43 my_daughter:39 my_info:144 my_list:-31
my_number:211 my_phone:59 my_wife:-34 my_work:36 nada:94 nada_$:81 need:-55 need_to:-105 nel:-49 never:73
never__me:68 never__to:42 never_been:-36 never_text:42 never_want:53 new:-44 ni:96 ni__conozco:26 no_$:-244 no__a:71
no__and:63 no__bien:-32 no__con:32 no__contacten:32 no__de:-133 no__escriban:-38 no__ir:-57 no__like:-37
no__mandando:-44 no__manden:-25 no__mas:29 no__me:-34 no__mensajes:48 no__messages:51 no__no:32 no__para:-35
no__por:130 no__que:87 no__quiten:-53 no__recibir:107 no__texteen:41 no__texts:47 no__them:-68 no__to:-90
no__vuelvan:40 no_dont:-29 no_es:-65 no_esta:-31 no_further:83 no_i:-88 no_keep:-70 no_longer:57 no_los:-36
no_manden:62 no_mas:185 no_me:288 no_more:306 no_need:-94 no_no:-54 no_paren:-67 no_puedo:-50 no_quiero:154
no_sigan:-30 no_texts:46 no_trabajo:34 no_vuelvan:48 no_you:-28 noche:-73 noche_$:-57 nomas:-38 nombre:-37 non:-60
not__in:62 not__me:86 not__to:33 not_contact:54 not_for:-34 not_going:-34 not_interested:48 not_me:-32 not_my:-28
not_text:55 nuevo:-110 nuevo_$:-81 number:121 number_again:58 number_from:35 number_is:53 number_off:39 number_out:70
numero:98 numero_$:67 numero_por:26 nunca_mas:25 o:177 of:49 of__on:25 of__system:53 of_it:29 of_the:-35 of_them:30
of_these:39 of_this:-29 of_your:66 off:259 off_$:138 off__and:-70 off_before:44 off_of:27 off_this:96 off_your:69
on:-208 on_$:-95 on__list:-36 on__phone:29 on__text:28 on_a:29 on_me:-67 one__a:-28 one_of:33 one_text:-37 only:25
opt:-101 opt_out:35 optout:161 optout_$:161 or:92 or__call:51 out:116 out_$:45 out__your:60 out_last:53 out_with:25
own:-30 para:-69 para__no:-28 para_nada:-33 para_que:-33 parar:42 parar_$:63 parenle:130 parenle__los:46 parte:45
parte_de:37 paz:74 people_$:29 permiso:46 permission:70 permission_to:28 pero:-49 persona:42 phone:75 phone_$:69
phone__to:30 phone_belongs:34 phone_me:-40 place:28 place_$:39 please:31 please_$:-38 please__texting:29
please__the:-41 please__these:30 please_dont:-61 please_stop:84 por_favor:48 precio:-25 pueden:-62 puedo:-65 pull:90
pull_my:78 que:175 que__borren:47 que__de:38 que__manden:45 que_les:26 que_me:109 que_paren:35 que_parte:25 que_si:43
querer:-39 quien:-51 quiero:34 quiero__a:-43 quiero__de:52 quiero__me:47 quiero__mensajes:-35 quiero__nada:68
quiero_ir:-37 quiero_los:-48 quiero_que:29 quiero_recibir:101 quiero_volver:-40 quit:61 quit_$:35 quit_it:78
quit_my:-25 quit_on:-71 quit_sending:58 quit_smoking:-49 quit_texting:48 quiten:-63 quiten__cita:-54
quiten__numero:29 quitenme:103 quitenme_$:58 quitenme_de:40 re:-26 read:-27 receive__messages:29 receive_these:67
recibir:79 recibir_mensajes:-34 recordatorios:-47 recordatorios_$:-37 reminders:-38 reminders_$:-39 remove:81
remove__number:32 remove_my:29 remove_the:-45 reply_$:40 report:38 restart:-35 resubscribe:-44 retiro:41 retiro_mi:41
revoke:232 revoke_$:157 ripped:-30 robot:28 sacar:-31 said:102 said_no:98 salir:80 salir_$:70 salir_de:27 saquenme:51
saquenme_de:43 say:99 saying:26 schedule:-27 se:-137 se_me:-49 see:-34 send:88 send_me:81 sending:91 sending_me:55
sending_these:25 shop:-65 shop_$:-50 shops:31 si:38 si_$:36 si__favor:-77 si__no:32 si__todo:36 si_por:-77
si_quiero:-48 si_ya:54 sigan:-55 sigan_mandando:-45 siganme:-32 sign:-29 sin:-50 sin_querer:-39 sirve:-26 sirve_$:-25
sirven:-36 sistema:41 sistema_$:41 smoking:-49 so:-111 so__can:40 so_you:42 sold:70 sold__car:58 sold_the:55
someone:-33 son:-34 sorry:-55 sorry_$:-25 soy__persona:41 spam:76 start:-47 start__me:-30 still:52 stop:122
stop_$:354 stop__friday:-31 stop__here:-57 stop__it:-64 stop__texts:-99 stop__these:26 stop_by:-131 stop_it:57
stop_messaging:27 stop_sending:64 stop_texting:-25 stop_the:-91 stop_these:-61 stop_worrying:-38 stopall:136
stopall_$:136 stops:-25 stuff:49 stuff_$:61 su:85 su__de:66 su_base:59 su_lista:36 sus:65 sus_mensajes:28 system:58
system_$:52 t:199 take:94 take__chances:-43 take__number:47 take__off:169 take_a:30 take_me:131 take_this:30
take_us:36 taken:74 tan:-109 tan_tarde:-31 tarde:-45 tarde_$:-41 te:-26 telefono:48 telefono_$:32 tell:-45
tell_me:-42 temprano:-51 temprano_$:-50 text:-88 text_$:-35 text__again:82 text_list:41 text_to:-49 texted:39
texteen:66 texteen_$:53 texting:-35 textos:83 textos_$:68 texts:-31 texts_$:-54 texts_about:-37 texts_again:-102
that:-88 that__text:-83 that__the:31 that__what:41 that_is:70 that_last:-51 the:-140 the__again:-29 the__anymore:36
the__filter:-38 the__i:-61 the_cabin:-34 the_car:69 the_country:38 the_job:-32 the_messages:-40 the_reminders:-59
the_text:75 them:-71 them_$:-47 there:26 there_$:32 these:182 these_$:84 these_anymore:49 these_messages:89 they:-26
thing:39 thing_$:29 this:105 this_$:36 this__a:-25 this__again:74 this__his:-32 this__is:67 this_isnt:-48
this_list:-33 this_number:80 this_phone:59 this_place:42 this_thing:30 this_time:-25 time:-71 times:144 tire:-25
tires:-62 to:-46 to_$:-27 to__daughter:46 to__from:52 to__in:50 to__on:29 to__shop:-34 to__the:-96 to__these:88
to_be:112 to_cancel:-72 to_get:28 to_hear:48 to_my:40 to_say:120 to_stop:-33 to_take:40 to_your:-33 todo:25 too:-76
too_many:-26 too_much:-30 trabajo:33 two:-39 un__mas:25 una:-61 unstop:-48 unsubscribe:118 unsubscribe_$:53
unsubscribe_me:37 up__phone:25 up_my:26 us:63 us_off:36 use:58 use_it:71 ustedes:28 ustedes_$:-37 ustedes__mi:33
usually:-53 vendi__carro:26 viernes:-27 volver:-60 volver_a:-59 voy_a:28 vuelvan:54 vuelvan__escribir:37 vuelvan_a:54
want:87 want__be:73 want__hear:48 want_the:-31 want_to:76 was:-56 way:-30 way_too:-32 we__need:33 we_dont:31
week_$:-25 what:-61 what__i:-53 what__is:-25 what_do:-30 what_i:38 what_is:-33 whatever:46 when:-75 when__stop:-51
when_i:-67 who:44 who__you:38 who_are:47 why:36 why__i:53 wife:-38 will__you:39 will_get:48 winter:-50 winter_$:-50
wipe:107 wipe_my:107 wipers:-51 wipers_$:-37 wish:65 wish_to:66 with:50 with__texts:90 with_the:101 with_these:30
work_phone:37 works:-30 worrying:-41 wrong:-75 wrong_number:-28 y:75 y__me:44 y__no:29 y_no:31 ya:82 ya__a:27
ya__con:34 ya__dije:81 ya__es:-36 ya__manden:38 ya__me:174 ya_estuvo:26 ya_les:35 ya_lo:-31 ya_no:94 ya_parenle:110
ya_pueden:-40 yeah:55 yeah_$:38 year:32 year_$:-33 yes:61 yes_all:62 yes_please:-37 yo:54 you:44 you__me:-76
you__stop:93 you_dont:44 you_have:49 you_kindly:47 you_people:50 you_take:-99 you_tell:-35 you_text:-66 you_think:26
you_to:35 your:133 your__again:-27 your__is:-28 your_list:36 your_records:27 your_reminders:33 your_shop:-61
your_system:52 your_texts:70
"""
