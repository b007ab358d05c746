"""What speaks for and against `stop`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "stop"
BIAS = -152
WEIGHTS = """\
#abaj:35 #abin:-32 #abla:-32 #able:-31 #abou:-103 #acar:-40 #acte:32 #acti:-55 #acto:47 #ados:-39 #agai:76 #agen:-27
#ages:50 #agin:64 #agre:24 #ajes:67 #ajit:37 #aken:52 #akes:-24 #alir:82 #alls:-23 #ally:-59 #alon:56 #alre:69
#alta:-26 #alto:29 #amen:-22 #anan:-48 #anda:-22 #ande:22 #andl:-23 #ando:24 #ange:-37 #angi:32 #aniz:-51 #anno:-45
#anta:-59 #ante:32 #anyt:67 #aque:46 #aqui:90 #arar:45 #aras:32 #arde:-44 #arel:-32 #aren:107 #arin:25 #ario:-32
#arly:-47 #aron:-30 #arqu:-23 #arro:23 #arte:31 #asia:-36 #aske:34 #asta:45 #asti:-43 #atev:28 #atin:-58 #ator:-45
#atos:74 #augh:25 #aven:-32 #avis:-69 #avor:75 #away:78 #ayin:24 #back:-61 #baja:70 #bajo:27 #bare:-32 #base:116
#bast:34 #befo:-29 #bein:37 #bett:-24 #bien:-56 #bloc:-75 #blow:35 #body:33 #book:-43 #borr:161 #both:-30 #boug:-22
#bout:-104 #busy:-60 #bvio:26 #cabi:-32 #call:-105 #came:94 #canc:48 #cant:-75 #care:-22 #cars:22 #ceiv:22 #cela:95
#cele:-49 #cell:42 #celo:-64 #celu:25 #cero:23 #chan:-44 #chec:-45 #chos:-26 #cibi:61 #cita:-88 #cked:-97 #clar:39
#como:-127 #comp:-29 #cono:25 #cons:39 #cont:176 #coul:-25 #crap:35 #cras:-32 #crib:80 #cten:33 #ctio:-26 #ctiv:-53
#cult:-35 #dand:-41 #dato:31 #daug:31 #days:-24 #deje:-55 #dele:31 #dema:-40 #dent:-33 #ders:-33 #dije:64 #dine:-43
#ding:67 #dire:-34 #disp:-24 #does:-57 #dond:-22 #done:47 #dont:33 #drop:65 #dule:-27 #eact:-30 #eady:55 #eant:-22
#eard:-22 #eari:25 #earl:-48 #ease:23 #eati:-23 #eave:-166 #ecib:57 #ecio:-23 #ecor:-32 #eden:-46 #edes:23 #edul:-27
#efon:44 #efor:-29 #egat:-29 #egre:-27 #eing:36 #eive:22 #ejen:83 #elar:114 #elef:44 #elen:-39 #elet:27 #elim:78
#else:54 #elul:25 #elva:64 #emas:-41 #embe:-24 #emem:-22 #emer:61 #emin:-33 #emov:74 #empr:-50 #enci:51 #ende:-22
#endi:48 #enga:66 #enle:131 #enlo:-70 #enme:254 #ensa:35 #envi:48 #eone:-27 #eply:25 #epor:125 #equi:-24 #erdo:-22
#erer:-35 #eres:22 #erge:61 #ermi:98 #erne:-22 #eron:-24 #erso:39 #esad:30 #escr:56 #esnt:-30 #espo:-24 #este:95
#esto:23 #esub:-45 #eted:26 #eten:68 #etir:47 #ette:-27 #evan:32 #ever:125 #evok:157 #ewhe:-23 #exte:217 #exti:57
#exto:85 #exts:-28 #favo:75 #feel:-35 #filt:-35 #fine:-25 #foll:168 #fono:44 #fore:-57 #form:22 #frai:26 #frid:-45
#from:139 #furt:81 #gain:76 #gand:39 #ganm:-24 #gati:-29 #genc:59 #gend:-25 #ghte:31 #ging:114 #gned:22 #goin:-68
#gone:34 #good:-27 #grea:-25 #gree:32 #gust:-34 #habl:-51 #hago:-54 #hanc:-44 #have:-28 #head:-23 #hear:38 #heav:-28
#heck:-25 #hedu:-27 #hers:-24 #hese:160 #hill:-24 #hing:45 #hold:-66 #hone:28 #hops:34 #hora:-50 #hour:32 #hter:31
#iado:-38 #ibir:130 #iday:-46 #iden:49 #iene:-24 #iern:-22 #igan:-97 #ight:-42 #igne:22 #ilte:-33 #imes:131 #imin:77
#inat:-35 #indl:45 #inen:68 #iner:-44 #info:95 #ings:-25 #ious:37 #iper:-46 #ippe:-34 #ires:-56 #irma:22 #irve:-58
#isar:-38 #isco:33 #isnt:-98 #issi:63 #iten:27 #itos:29 #iven:-33 #jenl:-59 #jenm:78 #jito:37 #just:-160 #keep:-91
#kill:59 #kind:33 #king:-24 #know:-41 #lace:32 #lama:-29 #lame:-42 #lant:-66 #laro:40 #last:37 #late:-26 #ldnt:-28
#leav:-145 #lefo:44 #less:-51 #lest:55 #lete:27 #like:-105 #limi:76 #list:38 #live:29 #llam:-57 #llan:-56 #llow:159
#lock:-81 #lone:56 #long:65 #lrea:69 #lsew:-31 #lter:-34 #ltos:-28 #ltur:-35 #lula:25 #lvan:52 #lver:-48 #lvid:64
#maci:24 #make:-60 #mana:-51 #mand:-27 #many:46 #marc:-22 #marq:-23 #masi:-36 #mber:64 #mbre:-24 #mean:26 #memb:-22
#menm:-25 #mens:37 #ment:37 #meon:-27 #merg:61 #mero:76 #mind:-45 #mine:59 #ming:-25 #miso:37 #miss:55 #mist:-29
#moki:-45 #mole:55 #mone:-32 #mont:-26 #more:223 #move:71 #mpra:-45 #much:-68 #muev:26 #mute:182 #nada:78 #nana:-48
#ncel:54 #nces:-46 #ncie:56 #ndan:-59 #ndar:24 #nden:70 #nder:-37 #ndin:69 #ndly:45 #need:-80 #nega:-29 #nero:-41
#neve:62 #ngan:87 #nged:-28 #nger:50 #ngin:38 #ning:-26 #nlos:-59 #nnoy:-45 #noch:-58 #noma:-34 #noyi:-40 #nozc:27
#nsaj:37 #nsen:64 #nsto:-39 #nsub:81 #ntac:171 #ntas:-44 #nted:48 #nten:-25 #nter:-22 #ntin:26 #ntry:36 #nuda:-26
#nuev:-119 #numb:88 #nume:73 #nunc:25 #nvie:31 #nyth:68 #obot:26 #obvi:26 #oche:-59 #ocke:-110 #ocki:23 #oesn:-30
#offe:-22 #oing:-71 #okin:-51 #oles:53 #ollo:167 #olve:-48 #olvi:56 #omas:-34 #omeo:-27 #omin:-27 #onde:-24 #oney:-34
#onge:51 #only:24 #onoz:27 #onse:60 #onta:166 #onth:-26 #onti:26 #opal:131 #opte:47 #opto:156 #orar:-25 #orda:-55
#orev:-27 #orio:-43 #orks:-30 #orma:33 #orre:176 #orry:-72 #orte:92 #osas:31 #oses:-22 #othe:-46 #ousl:27 #over:-26
#ower:-23 #oyin:-40 #ozco:27 #pall:136 #para:-26 #pare:109 #part:31 #pedi:27 #perd:-23 #perm:99 #pero:-43 #phil:-22
#phon:31 #plac:30 #plea:38 #port:132 #powe:-22 #pped:-36 #pran:-44 #prec:-22 #proc:-31 #prom:23 #ptou:156 #pued:-108
#pull:80 #qued:-22 #quen:45 #quer:-31 #quie:-39 #quit:77 #quiv:-23 #raba:25 #rano:-45 #rari:-25 #rass:32 #rast:-32
#rdat:-43 #reac:-31 #reat:-24 #reci:43 #reco:-34 #reed:30 #refr:27 #regr:-27 #regu:-23 #rely:-34 #remi:-34 #remo:73
#renl:116 #renm:37 #repl:26 #repo:126 #resu:-75 #reti:47 #reve:-30 #revo:165 #rgan:-51 #rgen:59 #riba:32 #ribi:59
#rida:-46 #rios:-40 #ripp:-34 #rmac:24 #rmat:25 #rmis:100 #rnes:-22 #robo:41 #romo:24 #rong:-60 #rren:95 #rryi:-33
#rson:39 #rted:84 #rthe:81 #rven:-31 #ryin:-33 #saca:81 #sage:-59 #sagi:65 #said:86 #saji:37 #sali:67 #saqu:46
#sarm:-25 #sayi:24 #sche:-27 #scon:32 #scra:36 #scri:93 #segu:-23 #send:145 #sent:60 #sewh:-31 #shop:-31 #siga:-81
#simo:29 #sion:60 #sirv:-58 #sist:26 #sked:34 #smok:-49 #sold:49 #some:-24 #sona:36 #sorr:-39 #spam:72 #sper:-22
#spon:-34 #ssio:61 #stak:-29 #stan:44 #sted:37 #stem:76 #sten:53 #stil:46 #stin:-43 #stop:216 #stuf:39 #sual:-45
#sume:-29 #susc:34 #syst:50 #taba:48 #tact:171 #take:68 #tand:47 #tard:-49 #tart:-68 #tede:23 #teen:54 #tele:28
#tell:-37 #tema:26 #temp:-45 #teng:57 #tenm:85 #teve:28 #text:248 #than:-25 #that:-62 #them:-51 #ther:54 #thes:154
#they:-31 #thin:51 #this:53 #tien:42 #till:40 #time:70 #tina:-36 #ting:-70 #tion:-41 #tire:-62 #tiro:33 #tiva:-26
#tive:-38 #tmen:-22 #todo:27 #topa:131 #tout:156 #trab:37 #truc:-25 #tter:-23 #ttin:-26 #tuff:39 #ture:-35 #tuvo:22
#uall:-47 #ucho:-31 #udar:-26 #uede:-56 #uedo:-69 #uelv:60 #uenm:41 #uere:-38 #uevo:-99 #ught:30 #uido:-33 #uien:-54
#uite:26 #uivo:-23 #uldn:-28 #ultu:-35 #umbe:88 #umer:73 #unfo:159 #unst:-39 #unsu:81 #untr:36 #uphi:-22 #urth:81
#uscr:34 #usly:27 #usua:-45 #utor:48 #vanm:27 #vide:71 #vien:24 #vier:-25 #viou:22 #visa:-52 #viso:-22 #voke:157
#volv:-49 #vuel:51 #wait:-35 #want:114 #what:-27 #when:-61 #wher:-32 #wife:-29 #wint:-40 #wipe:50 #wish:63 #with:50
#work:-34 #worr:-36 #wron:-55 #xted:35 #xtee:175 #xtos:70 #yeah:50 #year:32 #ying:-49 #your:76 #yste:50 #ythi:49
%again_later:-118 %again_later%bad:40 %again_later%bring:-45 %again_later%call_off:-123 %again_later%doubt:-26
%again_later%elsewhere:23 %again_later%fails:-24 %again_later%family:36 %again_later%leave_me:-38
%again_later%message:-69 %again_later%money:34 %again_later%on_way:-41 %again_later%phone:47 %again_later%refuse:65
%again_later%shift_it:23 %again_later%wrong_one:176 %agree:31 %agree%away:34 %agree%bring:-31 %agree%busy:-37
%agree%call_off:65 %agree%car:96 %agree%car_part:-51 %agree%elsewhere:31 %agree%fails:-29 %agree%gone_car:105
%agree%leave_me:31 %agree%message:-99 %agree%phone:49 %agree%question:68 %agree%refuse:-87 %agree%season:36
%agree%shift_it:39 %agree%staff:48 %agree%start_again:-108 %agree%thanks:27 %agree%who:-23 %agree%wrong_one:33
%away:56 %away%bring:-28 %away%fails:-31 %away%leave_me:62 %away%message:50 %away%on_way:45 %away%phone:30
%away%season:61 %away%staff:-22 %away%wrong_one:40 %bad:74 %bad%call_off:36 %bad%fails:69 %bad%leave_me:98
%bad%message:53 %bad%phone:27 %bad%wrong_one:42 %bring:-52 %bring%busy:-63 %bring%call_off:-84 %bring%car_part:-110
%bring%elsewhere:30 %bring%fails:-65 %bring%gone_car:35 %bring%meaning:-31 %bring%message:50 %bring%odometer:-62
%bring%phone:45 %bring%question:-32 %bring%refuse:-145 %bring%thanks:28 %bring%who:47 %bring%wrong_one:-66 %busy:-137
%busy%leave_me:-50 %busy%money:-25 %busy%odometer:36 %call_off:112 %call_off%car_part:-64 %call_off%family:-50
%call_off%how_long:37 %call_off%leave_me:-45 %call_off%meaning:28 %call_off%message:247 %call_off%money:-43
%call_off%on_way:-37 %call_off%opening:37 %call_off%refuse:-146 %call_off%smoke_smell:-22 %call_off%start_again:131
%call_off%who:107 %call_off%wrong_one:-108 %car%gone_car:90 %car%leave_me:42 %car%message:93 %car%phone:-27
%car_part:-252 %car_part%fails:-31 %car_part%leave_me:-136 %car_part%message:-123 %car_part%refuse:-67
%do_it%elsewhere:49 %do_it%gone_car:29 %do_it%leave_me:79 %do_it%meaning:-27 %do_it%message:77 %do_it%wrong_one:23
%doubt:-33 %doubt%leave_me:-28 %doubt%question:26 %doubt%wrong_one:-24 %elsewhere:59 %elsewhere%gone_car:22
%elsewhere%leave_me:38 %elsewhere%message:76 %elsewhere%phone:45 %elsewhere%question:22 %elsewhere%shift_it:24
%elsewhere%who:48 %fails%leave_me:66 %fails%message:45 %fails%money:-26 %fails%phone:71 %fails%question:-48
%fails%season:-23 %fails%smoke_smell:-46 %fails%start_again:-46 %fails%wrong_one:130 %family:-122
%family%leave_me:-22 %family%odometer:-47 %family%phone:25 %family%start_again:39 %gone_car:-45 %gone_car%leave_me:91
%gone_car%question:-22 %gone_car%thanks:25 %gone_car%wrong_one:-45 %how_long:-53 %how_long%leave_me:-22
%how_long%opening:32 %leave_me:489 %leave_me%lift:-26 %leave_me%meaning:-56 %leave_me%noise:-24
%leave_me%odometer:-29 %leave_me%opening:-28 %leave_me%pay_day:-36 %leave_me%phone:215 %leave_me%place:-27
%leave_me%refuse:-128 %leave_me%season:-28 %leave_me%smoke_smell:-36 %leave_me%staff:38 %leave_me%start_again:60
%leave_me%thanks:44 %leave_me%who:60 %leave_me%wrong_one:143 %lift:-46 %meaning:-53 %message:232 %message%money:35
%message%odometer:31 %message%pay_day:-37 %message%phone:-31 %message%question:-140 %message%refuse:224
%message%shift_it:-33 %message%staff:-41 %message%start_again:-49 %message%thanks:88 %message%wrong_one:23 %money:-84
%money%odometer:-23 %money%refuse:30 %money%start_again:40 %money%wrong_one:27 %noise:-59 %odometer:78
%odometer%opening:-26 %odometer%phone:74 %odometer%question:36 %odometer%wrong_one:128 %on_way:-59
%on_way%wrong_one:64 %opening:-23 %pay_day:-77 %pay_day%season:-40 %phone:-24 %phone%refuse:-60 %phone%staff:-22
%phone%wrong_one:-71 %place:-76 %place%question:-46 %question:-233 %question%refuse:82 %question%season:48
%question%start_again:64 %question%who:34 %question%wrong_one:30 %refuse:-26 %refuse%shift_it:-34
%refuse%smoke_smell:-22 %refuse%staff:38 %refuse%start_again:212 %refuse%thanks:66 %refuse%who:30
%refuse%wrong_one:49 %season:-40 %season%smoke_smell:-31 %season%wrong_one:-28 %shift_it:-73 %smoke_smell:-54
%staff%wrong_one:48 %start_again:-185 %start_again%who:22 %start_again%wrong_one:166 %thanks:36 %who:-30
%wrong_one:22 @?:-68 @confirm_stop:342 @confirm_stop_please_do:29 @confirm_stop_si:48 @later:-37 @nothing:24
@odometer:50 @offers:-29 @reading:-38 @times:-233 @walk_in:-41 ^_alto:53 ^_baja:32 ^_basta:42 ^_borre:25 ^_can:-43
^_cancel:221 ^_cancelar:133 ^_cancele:22 ^_cant:-33 ^_car:-46 ^_claro:46 ^_como:-131 ^_cut:34 ^_de:-100 ^_deje:-115
^_dejen:70 ^_delete:-40 ^_do:87 ^_dont:-117 ^_drop:58 ^_end:57 ^_enough:83 ^_ese:-43 ^_get:88 ^_go:119 ^_got:-35
^_he:-30 ^_how:-130 ^_i:73 ^_ill:-73 ^_im:38 ^_info:-57 ^_is:-48 ^_keep:-23 ^_kill:39 ^_leave:-85 ^_me:-93 ^_my:-111
^_nel:-43 ^_never:-24 ^_new:-29 ^_no:-155 ^_nobody:28 ^_not:-126 ^_one:-32 ^_opt:-58 ^_optout:156 ^_parar:54
^_please:-55 ^_por:48 ^_pull:83 ^_que:28 ^_quien:-23 ^_quiero:-101 ^_quit:96 ^_quiten:-29 ^_re:-26 ^_resubscribe:-45
^_revoke:144 ^_salir:83 ^_saquenme:40 ^_se:-56 ^_si:38 ^_sold:48 ^_start:-23 ^_stop:241 ^_stopall:131 ^_take:54
^_text:-67 ^_texting:70 ^_that:42 ^_this:-50 ^_un:22 ^_unstop:-36 ^_unsubscribe:50 ^_what:-78 ^_who:64 ^_wrong:-37
^_yeah:51 ^_yes:22 ^_yo:30 ^_youre:-22 a:-40 a_car:31 a_escribir:39 a_este:53 a_los:28 a_month:-28 about:-103
about_the:-22 about_tires:-34 again:76 again_$:36 agreed:30 ahi:46 ahi_$:58 al:-31 alone:57 already:69 already_$:40
already__the:44 already_with:34 alto:57 alto_$:46 altos:-28 altos_$:-28 am:-49 am_$:-51 am_i:46 an:-31 and:192
and__is:31 and__text:-46 and_dont:24 and_i:97 and_it:24 and_please:32 and_stop:40 annoying:-40 annoying_$:-34
any_more:24 anymore_$:-34 anything:68 apaga:-24 apaga__los:-24 apaga_en:-24 aqui:91 aqui_$:93 are:78 are_you:24 as:39
asi:-49 asi_$:-46 asked:34 at:-126 at_work:-28 avisarme:-25 away:78 away_$:96 back:-60 baja:64 barely:-32 base:61
basta:34 be:180 be__a:30 be__your:62 be_in:51 be_on:31 been__your:-39 been_to:-40 before:-29 before_i:39 being:37
better:-24 bien:-47 bien_asi:-23 blocked:-95 blocking:24 book:-39 book_me:-37 borre:43 borre_mi:43 borren:72
borrenme:28 borrenme_$:23 bother:-28 bought:-22 brakes__stop:-32 busy:-60 but:-30 by:-120 by_$:-51 by_friday:-26
cabin:-32 cabin_filter:-31 call:-89 call_$:-40 call__i:-22 call__me:-46 call_me:-89 call_my:52 came:-26 can:-78
can__be:76 can__stop:-57 can__take:-62 can__texting:24 can_stop:41 can_text:-22 can_you:-63 cancel:77 cancel_$:159
cancel__please:-47 cancel_culture:-35 cancel_it:-86 cancel_please:75 cancelar:115 cancelar_$:121 cancelar__cita:-23
cancelar_mi:-22 cancelen:-33 cancelo:-64 cant:-75 cant_stop:-26 car:47 car_is:28 car_just:-45 car_quit:36 carro:25
cars:22 cel:39 cell:45 celular:25 chances:-43 chances_$:-43 changed:-28 changing:34 cita:-87 cita_$:-59
cita__favor:-37 cita_por:-37 cita_y:29 claro:40 claro__si:31 claro_que:31 como:-126 como__hago:-36 como__los:-38
como_le:-36 con__mensajes:28 con_los:64 con_mi:-25 conozco:27 consent:49 contact:96 contact__again:69 contact_me:66
contacten:33 contacten_$:27 contacto:28 cosas:31 cosas_$:22 couldnt:-26 country:36 culture:-35 cut:41 datos:75
datos_$:65 daughter:31 de:188 de__base:62 de__lista:55 de__llantas:-39 de__textos:39 de_ahi:46 de_aqui:95 de_baja:50
de_estar:40 de_las:-44 de_manana:-28 de_mandar:24 de_mandarme:26 de_nuevo:-97 de_numero:-26 de_su:113 de_sus:30
deje:-131 dejen:77 dejen__estar:40 dejen_de:78 dejenlos:-53 dejenme:71 del:-47 delete__number:24 delete_my:30 dia:-30
dije:67 dije_que:58 dinero:-43 do__contact:38 do__get:-36 do__got:57 do__have:50 do__take:-50 do__text:-35
do__want:51 do_i:-84 do_not:217 do_you:-80 does:-27 doesnt:-30 donde:-22 done:48 dont:33 dont__a:40 dont__any:22
dont__in:36 dont__it:63 dont__me:111 dont__texting:-130 dont__to:28 dont__your:30 dont_call:-57 dont_do:-36
dont_have:27 dont_need:43 dont_stop:-233 dont_text:70 dont_want:49 drop:66 drop__from:70 drop_me:65 early:-44
early_$:-37 el:-131 else:70 else_$:79 elsewhere:-31 elsewhere_$:-33 en:-56 en__altos:-28 en__noche:-48 en_la:-70
en_los:-43 en_otro:28 en_paz:63 end_$:32 end__this:-24 end_the:-23 enough__with:32 enough_already:32
equivocado__numero:-24 equivocado_de:-24 es:-75 es__mi:-26 es_de:-22 es_para:-29 escriban:27 escriban_$:65
escribir_$:32 escribirme:26 escribirme_$:27 ese:-76 eso_$:-25 esta:-58 esta__asi:-23 esta_bien:-25 estar:40 este:31
esto:34 esto_$:37 estuvo:22 ever:74 ever_$:24 every:22 favor:69 feel:-28 filter:-33 fine:-25 for:85 for_me:-56
for_these:29 forever:-27 friday:-45 friday_$:-32 from:139 from__place:43 from__text:54 from_the:36 from_this:33
from_you:30 from_your:51 fue:-56 further:81 get:107 get__number:39 get__off:47 get__this:-45 get_me:45 get_my:50
get_off:-45 get_these:44 getting_these:42 go:102 go_away:119 going:-68 going_to:-45 going_uphill:-22 gone:35 good:-31
got:-55 got__cancel:-30 got_in:-27 got_this:-30 got_to:25 gracias_y:23 great:-24 had:-30 had__done:27 had_it:31
hago:-54 hago_para:-46 handled_$:-26 hate:-27 have:-23 have__cancel:-27 have__car:46 have__no:-26 have__say:52
have__to:67 have_a:29 have_had:-38 have_it:-28 have_the:29 he:-30 hear:39 heard:-22 heard_of:-22 hearing:25
here_$:-29 him:-24 his:-42 hold:-63 horario:-27 horario_$:-26 hours:34 hours_to:42 how:-149 how__i:-171 how_do:-190
how_i:-22 how_many:114 i:-54 i__by:-52 i__do:-40 i__getting:42 i__got:-28 i__had:-39 i__in:-36 i__it:58 i__longer:60
i__my:53 i__no:86 i__not:64 i__off:-32 i__smoking:-35 i__stop:-31 i__the:-33 i__these:-99 i__to:-30 i__want:107
i__you:64 i_am:-37 i_be:84 i_cant:-35 i_do:55 i_feel:-27 i_get:-31 i_hate:-27 i_have:-23 i_just:-29 i_keep:25
i_like:-86 i_make:-24 i_mean:62 i_never:82 i_no:60 i_quit:-40 i_remember:-22 i_said:115 i_still:36 i_stop:-134
i_text:-45 i_want:-53 id:-24 ill:-83 ill__my:-41 ill_take:-43 in:-79 in_$:-133 in_the:33 in_your:46 info:71
info_please:63 informacion:24 informacion_$:24 interesa:-40 interesa_$:-35 interested:24 interested_$:-47
interested_in:54 ir:-47 ir_$:-45 ir_y:22 ire:-22 ire_$:-22 is_a:-27 is_for:64 is_getting:-40 is_gone:30 is_my:25
is_not:-25 is_there:-27 is_what:35 isnt:-98 it__how:-22 it__i:48 it__with:34 it_again:43 it_for:59 it_or:48 it_out:23
job:-49 job_$:-30 just:-159 just__on:-46 just__this:-28 just_got:-28 keep:-88 keep__on:-23 keep_me:-45 keep_them:-27
kill:61 kindly:45 know:-31 la:-188 la_cita:-25 la_noche:-49 las:-72 las_llantas:-41 last:-26 last__why:48 le:-50
le__para:-35 le_hago:-36 lease:-23 leave:-138 leave__alone:60 leave_it:-63 leave_me:-32 les:67 les__que:74
les_dije:63 less:-53 like:-105 like_them:-23 list:36 lista:32 live:34 live__the:36 live_in:30 llamenme:-25
llantas:-42 llantas_$:-38 lo:-67 lo__en:28 lo_de:-31 lol:-102 lol_$:-65 longer:52 longer__to:55 los:-56 los__a:23
los__de:-33 los_altos:-28 los_avisos:-31 los_mensajes:43 make:-54 make_it:-25 make_these:-22 manana:-47 mandan:-34
mandando:-40 mandando_$:-105 mandar:27 mandarme_recordatorios:-31 manden:60 manden_mas:41 manden_mensajes:-39
manden_nada:56 many:46 many__do:111 many_texts:-67 many_times:115 mas:388 mas_$:158 mas_mensajes:28 mas_por:116
mas_textos:27 me:56 me_$:109 me__a:36 me__am:-50 me__before:42 me__de:-40 me__en:-68 me__i:33 me__in:-25 me__like:-42
me__mas:194 me__mensajes:-38 me__nada:45 me__no:29 me__of:25 me__please:-49 me__por:-38 me__this:42 me__your:44
me_a:-62 me_about:-55 me_again:80 me_alone:45 me_and:35 me_at:-30 me_back:-31 me_before:-51 me_contacten:33
me_from:80 me_i:-63 me_in:-29 me_interesa:-38 me_off:160 me_on:-26 me_sirve:-26 me_sirven:-31 me_so:-48 me_texteen:43
me_vuelvan:32 mean:48 mean_it:63 meant:-22 mensaje:-68 mensajes:68 mensajes_$:138 mensajes_a:26 mensajes_por:27
mensajitos:30 message:-109 message_$:-74 message_me:50 messages:50 messages_$:44 messaging:65 messaging_this:31 mi:72
mi__para:33 mi_cita:-55 mi_contacto:30 mi_numero:121 mi_telefono:46 mis:30 money:-31 month:-35 month_is:-27 more:222
more_$:48 more__i:65 more__please:34 more_messages:35 more_of:27 more_texts:23 much:-33 muy:-31 my:77 my__dont:31
my__out:80 my__phone:28 my__please:87 my__said:-26 my_car:-23 my_cell:40 my_chances:-43 my_daughter:37 my_info:127
my_list:-27 my_number:176 my_phone:26 my_wife:-29 my_work:32 nada:83 nada_$:70 need:-57 need_to:-100 nel:-43 never:63
never__me:60 never__of:-22 never__to:41 never_been:-39 never_heard:-22 never_text:38 never_want:54 new:-40 ni:77
ni__conozco:23 no:33 no_$:-222 no__a:65 no__and:63 no__bien:-26 no__con:29 no__contacten:23 no__de:-124
no__escriban:-33 no__ir:-55 no__like:-29 no__manden:-23 no__me:-27 no__mensajes:45 no__messages:43 no__no:30
no__para:-34 no__por:112 no__que:75 no__quiten:-47 no__recibir:95 no__texteen:32 no__texts:35 no__them:-59 no__to:-86
no__vuelvan:33 no__want:-24 no_es:-59 no_esta:-26 no_further:77 no_i:-76 no_ire:-22 no_keep:-40 no_longer:54
no_los:-42 no_manden:53 no_mas:164 no_me:258 no_more:261 no_need:-89 no_no:-39 no_paren:-51 no_puedo:-44
no_quiero:135 no_sigan:-35 no_trabajo:30 no_vuelvan:46 no_you:-24 noche:-54 noche_$:-52 nomas:-34 non:-50 not:-40
not__in:54 not__me:69 not__to:27 not_contact:38 not_for:-35 not_going:-31 not_interested:36 not_me:-35 not_text:48
nuevo:-99 nuevo_$:-74 number:92 number_again:49 number_from:28 number_is:45 number_off:32 numero:73 numero_$:64 o:152
of__system:51 of_the:-30 of_them:23 of_these:38 of_this:-33 of_your:49 off:190 off_$:104 off__and:-62 off__i:24
off_before:42 off_of:25 off_this:78 off_your:50 on:-174 on_$:-80 on__list:-30 on_a:29 on_me:-58 on_my:-23 one__a:-26
one_of:31 only:24 opt:-84 opt_out:33 optout:156 optout_$:156 or:88 or__call:48 out:101 out_$:44 out__your:42
out_last:48 own:-24 para:-73 para__no:-26 para_nada:-29 para_que:-35 parar:36 parar_$:54 paren_$:30 parenle:116
parenle__los:37 parte:43 parte_de:36 paz:63 permiso:37 permission:63 pero:-42 persona:36 phone:42 phone_$:35
phone__to:27 phone_belongs:30 phone_me:-30 place:31 place_$:40 please:39 please_$:-33 please__texting:24
please__the:-36 please__these:24 please_dont:-53 please_stop:68 por:-29 por_favor:38 power:-22 pueden:-46 puedo:-56
pull:82 pull_my:71 que:156 que__borren:46 que__de:30 que__manden:35 que_les:22 que_me:94 que_paren:32 que_parte:24
que_si:41 querer:-35 quien:-45 quiero__a:-36 quiero__de:43 quiero__me:41 quiero__mensajes:-32 quiero_ir:-35
quiero_los:-43 quiero_que:26 quiero_recibir:79 quit:50 quit_$:29 quit_it:70 quit_my:-23 quit_on:-58 quit_sending:52
quit_smoking:-45 quit_texting:42 quiten:-59 quiten__cita:-49 quiten__numero:25 quitenme:86 quitenme_$:51
quitenme_de:30 re:-26 read:-26 receive:25 receive_these:61 recibir:65 recibir_mensajes:-32 recordatorios:-41
recordatorios_$:-36 remember:-22 remember_$:-22 reminders:-28 reminders_$:-37 remove:54 remove__number:24
remove_the:-41 reply:25 report:37 restart:-30 resubscribe:-45 revoke:157 revoke_$:101 ripped:-27 robot:27 sacar:-28
said:86 said_no:86 salir:83 salir_$:74 salir_de:23 saquenme:47 saquenme_de:40 say:93 saying:24 schedule:-24 se:-118
se_me:-41 see:-31 send:84 send_me:68 sending:69 sending_me:48 shop:-66 shop_$:-53 shops:34 si:26 si_$:39
si__favor:-70 si__no:28 si__todo:24 si_por:-70 si_quiero:-46 si_ya:43 sigan:-60 sigan_mandando:-50 sin:-43
sin_querer:-35 sirve:-26 sirve_$:-25 sirven:-31 sistema:26 sistema_$:26 smoking:-45 so:-91 so__can:33 so_you:34
sold:58 sold__car:50 sold_the:49 someone:-27 son:-25 sorry:-39 soy__persona:36 spam:69 start:-37 start__me:-24
still:46 stop:122 stop_$:313 stop__friday:-26 stop__here:-47 stop__it:-54 stop__texts:-87 stop_by:-105 stop_it:43
stop_messaging:24 stop_sending:45 stop_texting:-23 stop_the:-74 stop_these:-44 stop_worrying:-30 stopall:131
stopall_$:131 stuff:39 stuff_$:55 su:83 su__de:69 su_lista:31 sus:58 sus_mensajes:25 system:49 system_$:45 t:169
take:38 take__chances:-43 take__number:38 take__off:135 take_me:103 take_us:32 taken:63 tan:-90 tan_tarde:-35
tarde:-42 tarde_$:-38 telefono:44 telefono_$:29 tell:-36 tell_me:-33 temprano:-44 temprano_$:-43 text:-83 text_$:-28
text__again:80 text_list:38 text_to:-45 texted:35 texteen:55 texteen_$:44 textos:74 textos_$:63 texts:-28 texts_$:-65
texts_about:-35 texts_again:-84 that:-73 that__text:-74 that__the:27 that__what:34 that_is:59 that_last:-46
that_you:-22 the:-82 the__again:-24 the__anymore:34 the__filter:-31 the__i:-51 the_cabin:-31 the_car:62
the_country:36 the_job:-29 the_messages:-34 the_reminders:-52 the_text:70 them:-51 them_$:-34 there:29 there_$:35
these:160 these_$:78 these_anymore:46 these_messages:79 these_texts:-23 thing:38 thing_$:29 this:53 this_$:27
this__again:64 this__his:-32 this__is:56 this_isnt:-53 this_list:-36 this_number:69 this_phone:50 this_thing:26
time:-59 times:131 tires:-56 to:-49 to_$:-27 to__daughter:42 to__from:43 to__in:47 to__on:29 to__shop:-35 to__the:-95
to__these:86 to_be:95 to_cancel:-68 to_get:28 to_hear:40 to_my:33 to_say:109 to_stop:-34 to_take:39 to_text:24
to_your:-34 too:-62 too__texts:-23 too_many:-24 too_much:-23 trabajo:31 two:-33 una:-55 unstop:-36 unsubscribe:97
unsubscribe_$:42 unsubscribe_me:31 uphill:-22 us:58 us_off:32 use:48 use_it:61 ustedes:23 ustedes_$:-33
ustedes__mi:29 usually:-45 volver:-44 volver_a:-44 voy_a:24 vuelvan:57 vuelvan_a:57 want:66 want__be:66 want__hear:40
want_it:-23 want_my:22 want_the:-27 want_to:71 was:-47 way:-25 way_too:-28 we__need:29 we_dont:28 what:-55
what__i:-50 what_do:-30 what_i:31 what_is:-26 whatever:29 when:-60 when__stop:-41 when_i:-54 who:50 who__this:24
who__you:36 who_are:44 why:35 why__i:48 wife:-33 will__you:37 will_get:45 winter:-47 winter_$:-47 wipe:96 wipe_my:96
wipers:-44 wipers_$:-31 wish:63 wish_to:64 with:38 with__texts:70 with_the:85 work_phone:31 works:-30 worrying:-33
wrong:-55 y:73 y__me:40 y__no:26 y_no:28 ya:46 ya__a:24 ya__con:26 ya__dije:74 ya__es:-32 ya__manden:32 ya__me:144
ya_estuvo:23 ya_les:31 ya_lo:-26 ya_no:57 ya_parenle:98 ya_pueden:-34 yeah:50 yeah_$:34 yeah_i:22 year:26 year_$:-32
yes:47 yes_$:26 yes__you:-22 yes_all:46 yes_please:-25 yo:39 you:36 you__me:-62 you__stop:75 you_dont:42 you_have:43
you_kindly:46 you_people:32 you_take:-90 you_tell:-28 you_text:-57 you_think:22 your:94 your__is:-25 your_list:32
your_reminders:30 your_shop:-58 your_system:43 your_texts:67
"""
