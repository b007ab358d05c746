"""What speaks for and against `stop`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "stop"
BIAS = -160
WEIGHTS = """\
#abaj:33 #abin:-31 #abla:-35 #able:-31 #abou:-114 #acar:-38 #acte:37 #acti:-53 #acto:52 #ados:-39 #agai:77 #agen:-27
#ages:60 #agin:65 #ajes:64 #ajit:37 #aken:56 #akes:-30 #alir:80 #alls:-28 #ally:-61 #alon:55 #alre:73 #alta:-28
#alto:33 #anan:-51 #anda:-43 #ande:32 #andl:-25 #ange:-40 #angi:31 #aniz:-50 #anno:-44 #anta:-66 #ante:30 #anyt:68
#aque:47 #aqui:89 #arar:46 #aras:31 #arde:-47 #arel:-33 #aren:112 #arin:25 #ario:-31 #arly:-47 #arme:-30 #aron:-29
#arte:30 #asia:-36 #aske:38 #asta:44 #asti:-42 #atev:30 #atin:-57 #ator:-53 #atos:73 #augh:25 #aven:-31 #avis:-69
#avor:82 #away:81 #back:-80 #baja:70 #bajo:25 #bare:-33 #base:116 #bast:34 #befo:-30 #bein:38 #bien:-65 #bloc:-75
#blow:38 #body:33 #book:-44 #borr:173 #both:-30 #bout:-114 #busy:-60 #bvio:26 #cabi:-31 #call:-120 #came:94 #canc:57
#cant:-79 #cela:96 #cele:-53 #cell:43 #celo:-62 #chan:-45 #chec:-45 #chos:-25 #cibi:64 #cita:-94 #cked:-97 #clar:38
#como:-127 #comp:-31 #cons:45 #cont:211 #crap:35 #cras:-31 #crib:99 #cten:39 #ctio:-27 #ctiv:-54 #cult:-32 #dand:-38
#daug:31 #deje:-48 #dele:37 #dema:-40 #dent:-37 #ders:-45 #dije:63 #dine:-43 #ding:77 #dire:-34 #does:-56 #done:45
#drop:62 #dule:-29 #eact:-30 #eady:59 #eari:25 #earl:-49 #ease:29 #eave:-178 #ecib:58 #ecio:-25 #ecor:-34 #eden:-56
#edes:26 #edul:-29 #efon:44 #efor:-30 #egat:-28 #egre:-26 #eing:37 #ejen:89 #elar:116 #elef:44 #elen:-43 #elet:34
#elim:79 #else:57 #elva:59 #emas:-40 #embe:-26 #emer:62 #emin:-46 #emov:90 #empr:-51 #enci:51 #ende:-25 #endi:58
#enga:65 #enle:134 #enlo:-69 #enme:262 #ensa:30 #envi:47 #eone:-29 #eply:25 #epor:124 #equi:-28 #erer:-35 #eres:27
#erge:62 #ermi:97 #erso:37 #esad:29 #escr:68 #esnt:-29 #este:101 #esto:25 #esub:-46 #eted:25 #eten:68 #etir:47
#ette:-27 #evan:33 #ever:140 #evok:200 #exte:220 #exti:45 #exto:89 #favo:82 #feel:-36 #filt:-34 #fine:-25 #foll:169
#fono:44 #fore:-54 #frai:26 #frid:-49 #from:147 #furt:80 #gain:77 #gand:38 #gati:-28 #genc:60 #gend:-25 #ghte:31
#ging:113 #goin:-69 #gone:33 #good:-28 #grea:-25 #gree:31 #gust:-36 #habl:-55 #hago:-53 #hanc:-42 #have:-27 #hear:40
#heav:-27 #heck:-26 #hedu:-29 #hese:183 #hing:47 #hold:-65 #hone:41 #hops:33 #hora:-54 #hour:31 #hter:31 #iado:-38
#iban:29 #ibir:137 #iday:-50 #iden:45 #igan:-93 #ight:-54 #ilte:-33 #imes:128 #imin:78 #inat:-34 #inde:-28 #indl:49
#inen:70 #iner:-43 #info:95 #ings:-25 #ious:37 #iper:-50 #ippe:-32 #ires:-58 #irve:-57 #isar:-36 #isco:33 #isnt:-96
#issi:62 #iten:32 #itos:29 #iven:-34 #jenl:-57 #jenm:78 #jito:37 #just:-163 #keep:-97 #kill:61 #kind:39 #know:-42
#lace:31 #lama:-31 #lame:-41 #lant:-73 #laro:38 #last:35 #late:-30 #ldnt:-27 #leav:-157 #lefo:44 #less:-50 #lest:55
#lete:33 #ligh:-25 #like:-118 #limi:77 #list:54 #live:30 #llam:-59 #llan:-63 #llow:160 #lock:-83 #lone:55 #long:65
#lrea:73 #lsew:-29 #lter:-33 #ltos:-28 #ltur:-32 #lvan:46 #lver:-53 #lvid:63 #make:-61 #mana:-55 #mand:-37 #many:42
#masi:-36 #mber:67 #mean:25 #menm:-25 #mens:31 #ment:33 #meon:-29 #merg:62 #mero:86 #mind:-58 #mine:61 #ming:-28
#miso:37 #miss:53 #mist:-28 #moki:-44 #mole:55 #mone:-31 #mont:-27 #more:239 #move:86 #mpra:-46 #much:-70 #muev:27
#mute:185 #nada:90 #nana:-51 #ncel:63 #nces:-44 #ncie:57 #ndan:-67 #nden:80 #nder:-51 #ndin:78 #ndly:49 #need:-83
#nega:-28 #nero:-40 #neve:70 #ngan:85 #nged:-28 #nger:50 #ngin:36 #ning:-30 #nlos:-57 #nnoy:-44 #noch:-58 #noma:-34
#noyi:-39 #nozc:26 #nsaj:32 #nsen:69 #nsto:-40 #nsub:86 #ntac:205 #ntas:-46 #nted:47 #ntin:25 #ntry:35 #nuda:-26
#nuev:-118 #numb:93 #nume:83 #nunc:25 #nvie:31 #nyth:69 #obot:28 #obvi:26 #oche:-59 #ocke:-109 #oesn:-29 #oing:-73
#okin:-49 #oles:53 #ollo:169 #olve:-53 #olvi:56 #omas:-35 #omeo:-29 #omin:-31 #oney:-33 #onge:52 #onoz:26 #onse:65
#onta:200 #onth:-27 #onti:25 #opal:133 #opte:47 #opto:158 #orda:-63 #orev:-25 #orio:-51 #orks:-31 #orma:33 #orre:191
#orry:-82 #orte:91 #osas:32 #othe:-42 #ousl:27 #over:-29 #oyin:-39 #ozco:26 #pall:138 #para:-25 #pare:117 #part:30
#pedi:28 #perm:98 #pero:-46 #phon:44 #plac:29 #plea:41 #port:130 #pped:-35 #pran:-45 #proc:-30 #ptou:158 #pued:-124
#pull:80 #qued:-26 #quen:48 #quer:-31 #quit:87 #quiv:-27 #rano:-46 #rass:31 #rast:-30 #rdat:-51 #reac:-31 #read:25
#reci:42 #reco:-37 #reed:29 #refr:27 #regr:-26 #rely:-36 #remi:-46 #remo:88 #renl:119 #renm:40 #repl:25 #repo:125
#resu:-76 #reti:47 #reve:-28 #revo:208 #rgan:-50 #rgen:60 #riba:40 #ribi:64 #rida:-50 #rios:-47 #ripp:-32 #rmat:25
#rmis:99 #robo:43 #rong:-77 #rren:100 #rryi:-35 #rson:37 #rted:82 #rthe:80 #rven:-31 #ryin:-35 #saca:83 #sage:-47
#sagi:66 #said:89 #saji:38 #sali:63 #saqu:48 #sche:-29 #scon:32 #scra:38 #scri:112 #send:156 #sent:65 #sewh:-29
#shop:-29 #siga:-78 #simo:29 #sion:59 #sirv:-58 #sist:32 #sked:38 #smok:-48 #sold:59 #some:-25 #sona:36 #sorr:-47
#spam:75 #spon:-34 #ssio:61 #stak:-28 #stan:44 #sted:41 #stem:83 #sten:54 #stil:46 #stin:-43 #stop:243 #stuf:41
#sual:-46 #sume:-29 #susc:37 #syst:53 #taba:50 #tact:204 #take:105 #tand:47 #tard:-53 #tart:-75 #tede:26 #teen:54
#tele:29 #tell:-36 #tema:30 #temp:-46 #teng:53 #tenm:89 #teve:30 #text:247 #than:-31 #that:-67 #them:-65 #ther:55
#thes:177 #they:-35 #thin:55 #this:74 #tien:40 #till:40 #time:65 #tina:-35 #ting:-75 #tion:-40 #tire:-67 #tiro:33
#tiva:-26 #tive:-39 #todo:27 #topa:133 #tout:158 #trab:35 #truc:-25 #ttin:-25 #tuff:41 #ture:-32 #uall:-48 #ucho:-32
#udar:-27 #uede:-69 #uedo:-75 #uelv:55 #uenm:43 #uere:-38 #uevo:-99 #ught:31 #uido:-34 #uien:-57 #uier:29 #uite:29
#uivo:-27 #uldn:-27 #ultu:-32 #umbe:93 #umer:83 #unfo:161 #unst:-40 #unsu:86 #untr:35 #urth:80 #uscr:37 #usly:27
#usua:-46 #utor:49 #vanm:28 #vide:71 #vier:-27 #visa:-50 #voke:200 #volv:-55 #vuel:45 #wait:-35 #want:130 #what:-30
#when:-67 #wher:-31 #wife:-29 #wint:-39 #wipe:46 #wish:63 #with:60 #work:-33 #worr:-39 #wron:-72 #xted:36 #xtee:177
#xtos:75 #yeah:52 #year:34 #ying:-51 #your:105 #yste:53 #ythi:51 %again_later:-161 %again_later%bad:40
%again_later%bring:-57 %again_later%call_off:-146 %again_later%doubt:-29 %again_later%fails:-28
%again_later%family:35 %again_later%leave_me:-54 %again_later%message:-90 %again_later%money:33
%again_later%on_way:-50 %again_later%phone:46 %again_later%refuse:74 %again_later%wrong_one:175 %agree%away:39
%agree%bring:-35 %agree%busy:-40 %agree%call_off:52 %agree%car:97 %agree%car_part:-57 %agree%elsewhere:31
%agree%fails:-35 %agree%gone_car:107 %agree%leave_me:39 %agree%message:-113 %agree%phone:45 %agree%question:63
%agree%refuse:-100 %agree%season:34 %agree%shift_it:38 %agree%staff:47 %agree%start_again:-117 %agree%thanks:28
%agree%wrong_one:33 %away:75 %away%bring:-32 %away%fails:-29 %away%leave_me:59 %away%message:55 %away%on_way:44
%away%phone:30 %away%season:61 %away%wrong_one:45 %bad:80 %bad%call_off:37 %bad%fails:69 %bad%leave_me:102
%bad%message:57 %bad%phone:27 %bad%wrong_one:44 %bring:-67 %bring%busy:-61 %bring%call_off:-116 %bring%car_part:-130
%bring%elsewhere:26 %bring%fails:-71 %bring%gone_car:36 %bring%meaning:-34 %bring%message:40 %bring%odometer:-64
%bring%on_way:-29 %bring%phone:54 %bring%question:-46 %bring%refuse:-181 %bring%thanks:29 %bring%who:44
%bring%wrong_one:-92 %busy:-138 %busy%leave_me:-47 %busy%money:-25 %busy%odometer:36 %call_off:113
%call_off%car_part:-70 %call_off%do_it:-31 %call_off%family:-50 %call_off%how_long:34 %call_off%leave_me:-71
%call_off%meaning:28 %call_off%message:294 %call_off%money:-48 %call_off%on_way:-56 %call_off%opening:37
%call_off%phone:-33 %call_off%refuse:-158 %call_off%start_again:131 %call_off%who:108 %call_off%wrong_one:-111
%car%gone_car:96 %car%leave_me:47 %car%message:96 %car%phone:-25 %car_part:-303 %car_part%fails:-42
%car_part%leave_me:-165 %car_part%message:-134 %car_part%refuse:-76 %do_it:-42 %do_it%elsewhere:48 %do_it%gone_car:26
%do_it%leave_me:78 %do_it%meaning:-28 %do_it%message:74 %do_it%wrong_one:26 %doubt:-40 %doubt%leave_me:-28
%doubt%question:26 %doubt%wrong_one:-27 %elsewhere:57 %elsewhere%leave_me:34 %elsewhere%message:72
%elsewhere%phone:46 %elsewhere%who:47 %fails%leave_me:68 %fails%message:45 %fails%money:-29 %fails%phone:72
%fails%question:-49 %fails%smoke_smell:-44 %fails%start_again:-51 %fails%wrong_one:132 %family:-124
%family%odometer:-48 %family%phone:25 %family%start_again:39 %gone_car:-41 %gone_car%leave_me:98 %gone_car%message:28
%gone_car%thanks:28 %gone_car%wrong_one:-40 %how_long:-61 %how_long%leave_me:-25 %how_long%opening:31 %leave_me:570
%leave_me%lift:-33 %leave_me%meaning:-58 %leave_me%noise:-27 %leave_me%odometer:-25 %leave_me%on_way:-29
%leave_me%opening:-27 %leave_me%pay_day:-36 %leave_me%phone:226 %leave_me%place:-31 %leave_me%question:-29
%leave_me%refuse:-149 %leave_me%season:-25 %leave_me%smoke_smell:-34 %leave_me%staff:34 %leave_me%start_again:47
%leave_me%thanks:49 %leave_me%who:58 %leave_me%wrong_one:136 %lift:-54 %meaning:-59 %message:238 %message%money:33
%message%odometer:32 %message%on_way:-26 %message%pay_day:-37 %message%phone:-27 %message%question:-147
%message%refuse:255 %message%shift_it:-40 %message%staff:-44 %message%start_again:-73 %message%thanks:87 %money:-102
%money%refuse:29 %money%start_again:41 %money%wrong_one:28 %noise:-67 %odometer:82 %odometer%opening:-25
%odometer%phone:75 %odometer%question:36 %odometer%wrong_one:132 %on_way:-96 %on_way%wrong_one:65 %opening:-25
%pay_day:-81 %pay_day%season:-42 %phone%refuse:-55 %phone%staff:-26 %phone%wrong_one:-75 %place:-89
%place%question:-47 %question:-269 %question%refuse:82 %question%season:47 %question%start_again:69 %question%who:26
%question%wrong_one:29 %refuse%shift_it:-37 %refuse%staff:34 %refuse%start_again:246 %refuse%thanks:54 %refuse%who:30
%refuse%wrong_one:50 %season:-44 %season%smoke_smell:-30 %season%wrong_one:-26 %shift_it:-91 %smoke_smell:-55
%staff%wrong_one:44 %start_again:-203 %start_again%wrong_one:170 %thanks:28 %who:-40 @?:-87 @confirm_stop:356
@confirm_stop_please_do:27 @confirm_stop_si:48 @later:-41 @nothing:32 @odometer:52 @offers:-41 @reading:-46
@times:-294 @walk_in:-47 ^_alto:58 ^_baja:34 ^_basta:40 ^_borre:28 ^_can:-49 ^_cancel:229 ^_cancelar:134 ^_cant:-36
^_car:-47 ^_claro:44 ^_como:-130 ^_cut:38 ^_de:-95 ^_deje:-113 ^_dejen:74 ^_delete:-39 ^_do:99 ^_dont:-123 ^_drop:55
^_end:61 ^_enough:86 ^_ese:-43 ^_get:90 ^_go:119 ^_got:-36 ^_he:-29 ^_how:-135 ^_i:95 ^_ill:-72 ^_im:42 ^_info:-55
^_is:-49 ^_kill:41 ^_leave:-93 ^_me:-109 ^_my:-114 ^_nel:-44 ^_new:-31 ^_no:-176 ^_nobody:27 ^_not:-125 ^_one:-31
^_opt:-60 ^_optout:158 ^_parar:55 ^_please:-52 ^_por:53 ^_pull:83 ^_que:28 ^_quiero:-94 ^_quit:102 ^_quiten:-28
^_re:-27 ^_resubscribe:-46 ^_revoke:187 ^_salir:81 ^_saquenme:42 ^_se:-59 ^_si:50 ^_sold:55 ^_stop:288 ^_stopall:133
^_take:66 ^_text:-68 ^_texting:69 ^_that:42 ^_this:-48 ^_unstop:-37 ^_unsubscribe:55 ^_what:-81 ^_who:60 ^_wrong:-49
^_yeah:53 ^_yes:32 ^_yo:32 a:-66 a_car:31 a_escribir:40 a_este:54 a_los:30 a_month:-28 about:-113 about_the:-26
about_tires:-33 again:77 again_$:38 agreed:29 ahi:45 ahi_$:59 al:-34 alone:56 already:73 already_$:44 already__the:46
already_with:35 alto:62 alto_$:53 altos:-28 altos_$:-28 am:-47 am_$:-51 am_i:46 an:-31 and:203 and__is:31
and__text:-45 and_dont:26 and_i:95 and_please:34 and_stop:43 annoying:-39 annoying_$:-33 any_more:25 anymore_$:-29
anything:69 aqui:89 aqui_$:93 are:76 as:38 asi:-51 asi_$:-47 asked:38 at:-141 at_work:-28 away:81 away_$:99 back:-79
baja:64 barely:-33 base:61 basta:34 be:182 be__a:29 be__your:62 be_in:52 be_on:30 been__your:-36 been_to:-37
before:-29 before_i:39 being:38 bien:-57 blocked:-95 book:-40 book_me:-38 borre:46 borre_mi:47 borren:73 borrenme:32
bother:-27 brakes__stop:-37 busy:-60 but:-35 by:-133 by_$:-51 by_friday:-26 cabin:-31 cabin_filter:-31 call:-100
call_$:-43 call__me:-46 call_me:-95 call_my:51 came:-25 can:-89 can__be:77 can__stop:-61 can__take:-61 can_stop:39
can_you:-66 cancel:88 cancel_$:165 cancel__please:-47 cancel_culture:-32 cancel_it:-84 cancel_please:74 cancelar:117
cancelar_$:121 cancelen:-37 cancelo:-62 cant:-79 cant_stop:-27 car:49 car_is:27 car_just:-44 car_quit:35 cel:40
cell:46 chances:-41 chances_$:-41 changed:-28 changing:32 cita:-93 cita_$:-62 cita__favor:-38 cita_por:-38 cita_y:29
claro:39 claro__si:30 claro_que:30 como:-126 como__hago:-35 como__los:-37 como_le:-35 con__mensajes:31 con_los:66
con_mi:-25 conozco:26 consent:54 contact:114 contact__again:75 contact_me:73 contacten:39 contacten_$:32 contacto:33
cosas:32 couldnt:-26 country:35 culture:-32 cut:45 datos:74 datos_$:64 daughter:31 de:211 de__base:61 de__lista:58
de__llantas:-40 de__textos:40 de_ahi:46 de_aqui:95 de_baja:52 de_estar:39 de_las:-46 de_manana:-27 de_mandar:26
de_mandarme:27 de_nuevo:-95 de_numero:-26 de_su:120 de_sus:30 deje:-129 dejen:81 dejen__estar:39 dejen_de:82
dejenlos:-51 dejenme:72 del:-53 delete__number:25 delete_my:37 dia:-31 dije:66 dije_que:56 dinero:-43 do__contact:49
do__get:-36 do__got:56 do__have:48 do__take:-47 do__text:-35 do__want:51 do_i:-88 do_not:230 do_you:-81 does:-27
doesnt:-29 done:46 dont__a:40 dont__in:35 dont__it:66 dont__me:109 dont__texting:-133 dont__to:28 dont__your:31
dont_call:-58 dont_do:-35 dont_have:26 dont_need:44 dont_stop:-247 dont_text:69 dont_want:53 drop:63 drop__from:68
drop_me:62 early:-44 early_$:-37 el:-150 else:70 else_$:80 elsewhere:-29 elsewhere_$:-31 en:-62 en__altos:-28
en__noche:-48 en_la:-71 en_los:-44 en_otro:29 en_paz:64 end_$:36 enough__with:34 enough_already:34 equivocado_de:-25
es:-81 es__mi:-26 es_para:-29 escriban:34 escriban_$:66 escribir_$:34 escribirme:26 escribirme_$:26 ese:-79 eso_$:-25
esta:-63 esta_bien:-26 estar:39 este:36 esto:34 esto_$:38 ever:75 favor:75 feel:-26 filter:-33 fine:-25 for:88
for_me:-52 for_these:29 forever:-25 friday:-49 friday_$:-35 from:147 from__place:43 from__text:52 from_the:33
from_this:34 from_you:30 from_your:59 fue:-54 further:80 get:108 get__number:40 get__off:47 get__this:-45 get_me:45
get_my:52 get_off:-44 get_these:44 getting_these:43 go:102 go_away:121 going:-69 going_to:-47 gone:33 good:-32
got:-59 got__cancel:-31 got_in:-25 got_this:-33 had:-30 had__done:27 had_it:31 hago:-53 hago_para:-45 handled_$:-27
hate:-26 have__car:45 have__no:-25 have__say:51 have__to:67 have_a:28 have_had:-37 have_it:-27 have_the:28 he:-27
hear:39 hearing:25 here_$:-30 his:-42 hold:-63 horario:-26 horario_$:-25 hours:34 hours_to:42 how:-156 how__i:-170
how_do:-191 how_many:111 i:-58 i__by:-55 i__do:-38 i__getting:42 i__got:-32 i__had:-37 i__in:-34 i__it:57
i__longer:60 i__my:50 i__no:86 i__not:67 i__off:-30 i__smoking:-33 i__stop:-31 i__the:-33 i__them:-27 i__these:-98
i__to:-27 i__want:110 i__you:67 i_am:-36 i_be:85 i_cant:-36 i_do:58 i_feel:-25 i_get:-32 i_hate:-26 i_just:-34
i_like:-94 i_mean:61 i_never:84 i_no:60 i_quit:-38 i_said:119 i_still:36 i_stop:-139 i_text:-45 i_want:-42 ill:-85
ill__my:-40 ill_take:-41 in:-92 in_$:-139 in_the:30 in_your:46 info:72 info_please:63 interesa:-42 interesa_$:-37
interested:25 interested_$:-45 interested_in:54 ir:-47 ir_$:-45 is:-30 is_a:-28 is_for:65 is_getting:-39 is_gone:29
is_there:-27 is_what:35 isnt:-96 it__i:47 it__with:38 it_again:42 it_for:59 it_or:48 it_out:27 job:-48 job_$:-29
just:-163 just__on:-45 just__this:-32 just_got:-32 keep:-94 keep_me:-45 keep_them:-31 kill:63 kindly:49 know:-32
la:-211 la_cita:-31 la_noche:-49 las:-79 las_llantas:-43 last:-26 last__why:49 le:-53 le__para:-34 le_hago:-35
leave:-151 leave__alone:58 leave_it:-66 leave_me:-37 les:66 les__que:72 les_dije:62 less:-52 like:-117 like_them:-34
list:45 lista:36 live:34 live__the:35 live_in:30 llamenme:-25 llantas:-44 llantas_$:-39 lo:-74 lo__en:28 lo_de:-29
lol:-100 lol_$:-62 longer:52 longer__to:55 los:-64 los__de:-32 los_altos:-28 los_avisos:-31 los_mensajes:45 make:-54
make_it:-27 manana:-50 mandan:-44 mandando:-38 mandando_$:-105 mandar:28 mandarme_recordatorios:-33 manden:72
manden_mas:45 manden_mensajes:-37 manden_nada:58 many:42 many__do:108 many_texts:-67 many_times:113 mas:403 mas_$:166
mas_mensajes:31 mas_por:118 mas_textos:30 me:81 me_$:129 me__a:36 me__am:-49 me__before:42 me__de:-39 me__en:-67
me__i:31 me__in:-29 me__like:-41 me__mas:200 me__mensajes:-42 me__nada:49 me__no:29 me__of:25 me__please:-49
me__por:-43 me__this:43 me__your:50 me_a:-59 me_about:-65 me_again:81 me_alone:45 me_and:34 me_at:-34 me_back:-40
me_before:-51 me_contacten:39 me_from:81 me_i:-61 me_in:-32 me_interesa:-40 me_off:182 me_on:-26 me_sirve:-25
me_sirven:-31 me_so:-50 me_texteen:43 me_the:-27 me_vuelvan:33 mean:48 mean_it:63 mensaje:-70 mensajes:64
mensajes_$:145 mensajes_por:27 mensajitos:30 message:-108 message_$:-73 message_me:50 messages:60 messages_$:52
messaging:66 messaging_this:31 mi:85 mi__para:34 mi_cita:-54 mi_contacto:35 mi_numero:125 mi_telefono:47 mis:28
money:-31 month:-36 month_is:-27 more:234 more_$:52 more__i:64 more__please:35 more_messages:36 more_of:29
more_texts:26 much:-34 muy:-32 my:107 my__dont:27 my__out:83 my__phone:31 my__please:88 my__said:-25 my_cell:40
my_chances:-41 my_daughter:36 my_info:126 my_list:-27 my_number:187 my_phone:33 my_wife:-30 my_work:35 nada:94
nada_$:79 need:-60 need_to:-102 nel:-44 never:72 never__me:60 never__to:43 never_been:-35 never_text:38 never_want:54
new:-43 ni:77 no_$:-229 no__a:64 no__and:62 no__bien:-27 no__con:28 no__contacten:29 no__de:-123 no__escriban:-27
no__ir:-54 no__like:-33 no__me:-27 no__mensajes:48 no__messages:44 no__no:30 no__para:-34 no__por:113 no__que:77
no__quiten:-47 no__recibir:96 no__texteen:32 no__texts:38 no__them:-62 no__to:-85 no__vuelvan:34 no_es:-61
no_esta:-26 no_further:76 no_i:-80 no_keep:-43 no_longer:55 no_los:-43 no_manden:57 no_mas:168 no_me:278 no_more:270
no_need:-90 no_no:-38 no_paren:-51 no_puedo:-46 no_quiero:146 no_sigan:-34 no_trabajo:30 no_vuelvan:47 noche:-54
noche_$:-52 nomas:-34 non:-51 not__in:54 not__me:77 not__to:30 not_contact:49 not_for:-32 not_going:-31
not_interested:37 not_me:-32 not_text:48 nuevo:-98 nuevo_$:-73 number:98 number_again:51 number_from:33 number_is:46
number_off:34 numero:83 numero_$:71 o:154 of:33 of__system:54 of_the:-30 of_these:40 of_this:-32 of_your:52 off:227
off_$:119 off__and:-61 off_before:42 off_of:25 off_this:83 off_your:56 on:-189 on_$:-82 on__list:-31 on_a:28
on_me:-59 one__a:-26 one_of:32 opt:-88 opt_out:33 optout:158 optout_$:158 or:86 or__call:48 out:117 out_$:47
out__your:45 out_last:48 own:-25 para:-74 para__no:-25 para_nada:-28 para_que:-35 parar:37 parar_$:55 paren_$:30
parenle:119 parenle__los:41 parte:43 parte_de:36 paz:64 permiso:37 permission:62 pero:-45 persona:37 phone:54
phone_$:49 phone__to:27 phone_belongs:30 phone_me:-29 place:31 place_$:41 please:42 please_$:-34 please__texting:27
please__the:-36 please__these:26 please_dont:-56 please_stop:73 por:-36 por_favor:39 pueden:-56 puedo:-60 pull:82
pull_my:71 que:156 que__borren:45 que__de:31 que__manden:36 que_me:99 que_paren:31 que_si:39 querer:-35 quien:-48
quiero:36 quiero__a:-35 quiero__de:45 quiero__me:46 quiero__mensajes:-30 quiero_ir:-34 quiero_los:-42 quiero_que:31
quiero_recibir:81 quit:57 quit_$:30 quit_it:72 quit_on:-58 quit_sending:53 quit_smoking:-43 quit_texting:42
quiten:-58 quiten__cita:-49 quiten__numero:26 quitenme:90 quitenme_$:54 quitenme_de:31 re:-27 read:-25 receive:26
receive_these:62 recibir:68 recibir_mensajes:-31 recordatorios:-48 recordatorios_$:-38 reminders:-40 reminders_$:-43
remove:68 remove__number:28 remove_my:26 remove_the:-40 reply:25 report:37 restart:-32 resubscribe:-46 revoke:200
revoke_$:142 ripped:-25 robot:29 sacar:-26 said:89 said_no:86 salir:80 salir_$:72 saquenme:48 saquenme_de:41 say:89
schedule:-25 se:-128 se_me:-42 see:-30 send:85 send_me:69 sending:79 sending_me:48 shop:-62 shop_$:-50 shops:33 si:34
si_$:41 si__favor:-67 si__no:29 si_por:-67 si_quiero:-44 si_ya:47 sigan:-58 sigan_mandando:-48 sin:-44 sin_querer:-34
sirve:-26 sirve_$:-25 sirven:-31 sistema:30 sistema_$:30 smoking:-44 so:-96 so__can:31 so_you:33 sold:67 sold__car:57
sold_the:55 someone:-29 sorry:-47 soy__persona:36 spam:71 start:-42 start__me:-27 still:46 stop:147 stop_$:339
stop__friday:-26 stop__here:-48 stop__it:-56 stop__texts:-87 stop_by:-113 stop_it:52 stop_messaging:26
stop_sending:54 stop_the:-83 stop_these:-45 stop_worrying:-32 stopall:133 stopall_$:133 stuff:41 stuff_$:54 su:88
su__de:68 su_lista:34 sus:59 sus_mensajes:27 system:52 system_$:47 t:173 take:72 take__chances:-41 take__number:41
take__off:158 take_me:124 take_us:33 taken:67 tan:-88 tan_tarde:-32 tarde:-45 tarde_$:-41 telefono:44 telefono_$:29
tell:-35 tell_me:-33 temprano:-44 temprano_$:-43 text:-94 text_$:-28 text__again:77 text_list:37 text_me:-26
text_to:-45 texted:36 texteen:55 texteen_$:44 textos:77 textos_$:65 texts_$:-52 texts_about:-34 texts_again:-85
that:-78 that__text:-74 that__the:27 that__what:35 that_is:60 that_last:-46 the:-126 the__anymore:33 the__filter:-30
the__i:-54 the_cabin:-31 the_car:66 the_country:35 the_job:-28 the_messages:-35 the_reminders:-59 the_text:68
them:-65 them_$:-44 there:27 there_$:34 these:183 these_$:82 these_anymore:47 these_messages:85 thing:39 thing_$:30
this:74 this_$:28 this__again:65 this__his:-32 this__is:57 this_isnt:-52 this_list:-33 this_number:72 this_phone:52
this_thing:27 time:-60 times:128 tires:-58 to:-47 to_$:-25 to__daughter:42 to__from:43 to__in:47 to__on:27
to__shop:-32 to__the:-99 to__these:86 to_be:95 to_cancel:-67 to_get:28 to_hear:41 to_my:38 to_say:106 to_stop:-33
to_take:39 to_your:-31 too:-63 trabajo:29 two:-32 una:-55 unstop:-37 unsubscribe:103 unsubscribe_$:47
unsubscribe_me:31 us:58 us_off:33 use:49 use_it:62 ustedes:26 ustedes_$:-32 ustedes__mi:29 usually:-46 volver:-49
volver_a:-49 vuelvan:51 vuelvan_a:51 want:82 want__be:68 want__hear:41 want_the:-25 want_to:78 was:-51 way:-27
way_too:-29 we__need:30 we_dont:28 what:-59 what__i:-49 what_do:-29 what_i:32 what_is:-29 whatever:30 when:-66
when__stop:-44 when_i:-58 who:44 who__you:37 who_are:44 why:32 why__i:48 wife:-33 will__you:37 will_get:45 winter:-46
winter_$:-46 wipe:96 wipe_my:96 wipers:-47 wipers_$:-34 wish:63 wish_to:63 with:49 with__texts:78 with_the:90
work_phone:35 works:-31 worrying:-35 wrong:-72 wrong_number:-34 y:69 y__me:41 y__no:25 y_no:28 ya:68 ya__a:25
ya__con:28 ya__dije:73 ya__es:-33 ya__manden:34 ya__me:155 ya_les:32 ya_lo:-28 ya_no:75 ya_parenle:101 ya_pueden:-36
yeah:52 yeah_$:33 year:28 year_$:-30 yes:54 yes_$:26 yes_all:47 yes_please:-26 yo:40 you:39 you__me:-59 you__stop:80
you_dont:42 you_have:43 you_kindly:45 you_people:33 you_take:-84 you_tell:-27 you_text:-56 you_to:28 your:123
your_list:37 your_reminders:31 your_shop:-55 your_system:45 your_texts:65
"""
