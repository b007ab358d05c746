"""What speaks for and against `stop`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "stop"
BIAS = -152
WEIGHTS = """\
#abaj:35 #abin:-30 #abla:-38 #able:-29 #abou:-111 #acar:-38 #acte:30 #acti:-53 #acto:49 #ados:-47 #agai:58 #agen:-30
#ages:53 #agin:65 #agre:26 #ajes:59 #ajit:33 #aken:61 #akes:-39 #alir:79 #alls:-29 #ally:-63 #alon:54 #alre:71
#alta:-27 #alto:26 #anan:-28 #anda:-24 #andl:-41 #ando:29 #ange:-34 #angi:29 #anks:-31 #anme:-29 #anno:-37 #anta:-63
#ante:31 #anyt:67 #aque:47 #aqui:90 #arar:45 #aras:30 #arde:-42 #arel:-35 #aren:89 #arin:26 #ario:-31 #arly:-46
#arme:-34 #aron:-42 #arte:24 #aske:37 #asta:41 #asti:-43 #atev:32 #atin:-48 #ator:-46 #atos:64 #augh:27 #aven:-22
#avis:-64 #avor:84 #away:73 #back:-74 #baja:67 #bajo:27 #bare:-35 #base:110 #bast:36 #been:-31 #befo:-28 #bein:39
#bett:-22 #bien:-56 #bloc:-71 #blow:38 #body:37 #book:-41 #borr:173 #both:-26 #boug:-23 #bout:-111 #brak:-32
#busy:-63 #cabi:-30 #cado:-22 #call:-124 #camb:-22 #came:85 #canc:54 #cant:-75 #cela:91 #cele:-34 #cell:42 #celo:-62
#celu:22 #chan:-42 #chec:-43 #ched:-24 #chos:-27 #cibi:64 #cita:-98 #cked:-90 #clar:31 #coff:-22 #come:-23 #comi:-28
#como:-120 #comp:-31 #cons:43 #cont:204 #cord:-24 #cosa:32 #crap:39 #cras:-31 #crib:98 #cten:35 #ctio:-29 #ctiv:-54
#cult:-36 #dand:-38 #daug:34 #days:-24 #deje:-61 #dele:30 #dema:-43 #dent:-35 #ders:-36 #dije:57 #dine:-43 #ding:71
#dire:-35 #disc:22 #disp:-26 #dled:-29 #does:-55 #dond:-23 #done:37 #dont:27 #drop:66 #dule:-27 #eact:-30 #eady:46
#eari:26 #earl:-48 #ease:28 #eave:-150 #ecib:59 #ecio:-26 #ecor:-27 #eden:-53 #edes:24 #edul:-27 #efon:29 #efor:-28
#egat:-28 #egre:-32 #eing:38 #ejen:69 #elar:110 #elef:29 #elen:-37 #elet:27 #elim:74 #else:62 #elul:22 #elva:57
#emas:-44 #embe:-26 #emem:-24 #emer:63 #emin:-35 #emov:85 #empr:-46 #enci:52 #endi:59 #enga:67 #engo:-23 #enle:125
#enlo:-62 #enme:223 #ensa:22 #envi:47 #eone:-29 #epor:121 #equi:-29 #erer:-37 #eres:30 #erge:63 #ermi:87 #eron:-24
#erso:36 #esad:29 #escr:69 #esnt:-29 #espo:-24 #este:105 #esto:29 #eted:22 #eten:71 #etir:43 #ette:-26 #ever:126
#evok:204 #exte:209 #exti:34 #exto:88 #favo:84 #feel:-38 #ffee:-22 #filt:-31 #fine:-27 #fixe:23 #foll:170 #fono:30
#fore:-52 #forg:-22 #frai:27 #frid:-51 #from:152 #furt:78 #gain:58 #gand:39 #gati:-28 #genc:61 #gend:-28 #ghte:34
#ging:112 #gned:26 #goin:-62 #gone:31 #good:-26 #grea:-26 #gree:32 #gust:-34 #habl:-57 #hago:-51 #hanc:-43 #hand:-32
#hank:-25 #have:-26 #head:-26 #hear:44 #heav:-22 #heck:-24 #hedu:-27 #here:-27 #hese:178 #hill:-23 #hing:65 #hold:-63
#hone:51 #hops:30 #hora:-55 #hour:33 #hter:34 #iado:-46 #iban:28 #ibir:125 #ible:-25 #iday:-51 #iden:48 #iene:-29
#igan:-87 #ight:-47 #igne:26 #ilte:-30 #imes:129 #imin:74 #inat:-34 #indl:52 #inen:66 #iner:-43 #info:86 #ious:30
#iper:-47 #ippe:-35 #ires:-59 #irve:-51 #isar:-34 #isco:35 #isnt:-90 #issi:66 #ista:23 #iten:47 #itos:24 #iven:-36
#ixed:22 #jenl:-57 #jenm:57 #jito:33 #just:-159 #keep:-98 #kill:53 #kind:39 #know:-36 #lace:29 #lama:-31 #lame:-41
#lant:-70 #laro:31 #last:45 #late:-26 #ldnt:-26 #leav:-135 #lefo:29 #less:-49 #lest:57 #lete:26 #ligh:-22 #like:-102
#limi:76 #list:61 #live:28 #llam:-57 #llan:-60 #llow:161 #lock:-79 #lone:54 #long:63 #lrea:71 #lsew:-28 #lter:-31
#ltos:-28 #ltur:-36 #lula:22 #lvan:45 #lver:-51 #lvid:66 #make:-53 #mana:-34 #mand:-36 #many:41 #marc:-23 #mber:71
#mean:28 #memb:-25 #mens:23 #ment:33 #meon:-29 #merg:63 #mero:76 #mess:22 #mind:-46 #mine:56 #ming:-33 #miso:28
#miss:56 #mist:-22 #moki:-38 #mole:57 #mone:-32 #mont:-27 #more:212 #move:81 #mpra:-47 #much:-72 #mute:198 #nada:85
#nana:-28 #ncel:56 #nces:-42 #ncie:58 #ndan:-49 #nded:-22 #nden:62 #nder:-31 #ndin:72 #ndle:-30 #ndly:52 #need:-79
#nega:-29 #nero:-40 #neve:67 #ngan:87 #nged:-22 #nger:48 #ngin:36 #ning:-26 #nlos:-50 #nnoy:-37 #noch:-55 #noma:-27
#noyi:-37 #nsaj:23 #nsen:69 #nsto:-62 #nsub:85 #ntac:191 #ntas:-44 #nted:49 #nten:-22 #ntin:25 #ntry:34 #nuda:-26
#nuev:-119 #numb:98 #nume:80 #nunc:27 #nvie:31 #nyth:69 #obot:26 #oche:-56 #ocke:-105 #ocki:23 #oesn:-29 #offe:-24
#oing:-66 #okin:-43 #oles:55 #ollo:170 #olve:-51 #olvi:58 #omas:-28 #omeo:-29 #omin:-36 #onde:-25 #oney:-35 #onge:51
#onse:65 #onta:188 #onth:-27 #onti:25 #opal:126 #opte:48 #orar:-24 #orda:-57 #orev:-24 #orio:-44 #orks:-30 #orma:30
#orre:186 #orry:-79 #orte:91 #osas:31 #othe:-41 #over:-29 #ower:-23 #oyin:-37 #pall:131 #pare:95 #pedi:30 #perm:88
#pero:-41 #phon:54 #plac:26 #plea:35 #port:128 #powe:-22 #pped:-32 #pran:-46 #prec:-26 #proc:-30 #prom:24 #pued:-116
#pull:77 #quen:46 #quer:-33 #quit:93 #quiv:-28 #raba:28 #rake:-32 #rano:-47 #rari:-24 #rast:-30 #rdat:-44 #reac:-32
#reci:43 #reco:-29 #refr:28 #regr:-32 #regu:-24 #rely:-38 #remi:-35 #remo:83 #renl:110 #renm:43 #repo:122 #resu:-72
#reti:42 #reve:-27 #revo:212 #rgen:61 #riba:40 #ribi:53 #rida:-51 #rios:-40 #ripp:-35 #rmis:90 #robo:42 #romo:25
#rong:-81 #rren:103 #rryi:-37 #rson:36 #rted:82 #rthe:78 #ruid:-23 #rven:-25 #ryin:-37 #saca:74 #sage:-45 #sagi:66
#said:86 #saji:33 #sali:64 #saqu:47 #sarm:-24 #sayi:22 #sche:-27 #scon:33 #scra:45 #scri:114 #send:153 #sent:64
#sewh:-28 #shop:-30 #shut:-25 #siga:-71 #simo:26 #sion:64 #sirv:-52 #sked:38 #smok:-42 #sold:47 #some:-34 #sona:41
#sorr:-42 #spam:73 #spon:-37 #ssio:66 #stak:-22 #stan:40 #sted:42 #stem:70 #sten:56 #stil:56 #stin:-44 #stop:180
#stuf:42 #sual:-47 #sume:-27 #susc:25 #syst:53 #taba:50 #tact:191 #take:114 #tand:49 #tard:-48 #tart:-73 #tede:24
#teen:46 #tell:-40 #temp:-47 #teng:52 #tenm:75 #tere:34 #teve:32 #text:219 #than:-39 #that:-60 #them:-77 #ther:51
#thes:171 #they:-23 #thin:52 #this:85 #tien:40 #till:49 #time:75 #tina:-34 #ting:-83 #tion:-38 #tire:-70 #tiro:28
#tiva:-25 #tive:-39 #tmen:-24 #todo:39 #topa:125 #tops:-23 #trab:36 #truc:-24 #tter:-32 #tuff:42 #ture:-37 #uall:-50
#ucho:-33 #udar:-26 #uede:-65 #uedo:-68 #uelv:54 #uenm:42 #uere:-40 #uevo:-98 #ught:33 #uido:-29 #uien:-56 #uier:36
#uite:46 #uivo:-28 #uldn:-26 #umbe:98 #umer:80 #unfo:163 #unst:-62 #unsu:85 #untr:34 #urth:77 #uscr:25 #usua:-47
#utor:52 #vide:75 #vien:25 #visa:-45 #viso:-24 #voke:204 #volv:-52 #vuel:43 #wait:-35 #want:136 #what:-30 #when:-78
#wher:-30 #wife:-30 #wint:-39 #wipe:49 #wish:60 #with:52 #work:-38 #worr:-41 #wron:-76 #xted:41 #xtee:166 #xtos:69
#yard:22 #yeah:41 #year:23 #ying:-60 #your:100 #yste:53 #ythi:53 %again_later:-179 %again_later%bad:32
%again_later%bring:-55 %again_later%call_off:-140 %again_later%doubt:-29 %again_later%elsewhere:27
%again_later%fails:-27 %again_later%family:35 %again_later%leave_me:-61 %again_later%message:-99
%again_later%money:28 %again_later%on_way:-52 %again_later%phone:52 %again_later%refuse:56 %again_later%shift_it:26
%again_later%wrong_one:158 %agree%away:33 %agree%bring:-47 %agree%busy:-38 %agree%call_off:48 %agree%car:100
%agree%car_part:-56 %agree%do_it:26 %agree%elsewhere:33 %agree%fails:-35 %agree%family:24 %agree%gone_car:114
%agree%leave_me:33 %agree%message:-99 %agree%phone:43 %agree%question:51 %agree%refuse:-119 %agree%season:22
%agree%shift_it:42 %agree%staff:42 %agree%start_again:-111 %agree%wrong_one:23 %away:58 %away%bring:-39
%away%fails:-28 %away%leave_me:66 %away%message:50 %away%on_way:43 %away%phone:26 %away%season:55 %away%staff:-24
%away%wrong_one:47 %bad:75 %bad%call_off:34 %bad%fails:70 %bad%leave_me:104 %bad%message:57 %bad%phone:25
%bad%wrong_one:33 %bring:-105 %bring%busy:-60 %bring%call_off:-124 %bring%car_part:-132 %bring%doubt:-22
%bring%elsewhere:24 %bring%fails:-70 %bring%family:-26 %bring%gone_car:37 %bring%leave_me:-28 %bring%meaning:-36
%bring%odometer:-79 %bring%on_way:-33 %bring%phone:43 %bring%question:-44 %bring%refuse:-192 %bring%thanks:30
%bring%who:52 %bring%wrong_one:-99 %busy:-139 %busy%fails:-26 %busy%leave_me:-48 %busy%message:-23 %busy%money:-22
%busy%odometer:34 %call_off:115 %call_off%car_part:-65 %call_off%do_it:-26 %call_off%family:-46 %call_off%how_long:34
%call_off%leave_me:-40 %call_off%message:253 %call_off%money:-38 %call_off%on_way:-55 %call_off%opening:40
%call_off%phone:-42 %call_off%refuse:-140 %call_off%start_again:130 %call_off%who:95 %call_off%wrong_one:-89 %car:-28
%car%gone_car:94 %car%leave_me:45 %car%message:100 %car%phone:-26 %car%staff:-26 %car_part:-301 %car_part%fails:-49
%car_part%leave_me:-166 %car_part%message:-143 %car_part%refuse:-62 %do_it:-52 %do_it%elsewhere:47 %do_it%leave_me:71
%do_it%meaning:-30 %do_it%message:84 %doubt:-66 %doubt%leave_me:-26 %doubt%wrong_one:-33 %elsewhere:59
%elsewhere%gone_car:23 %elsewhere%leave_me:32 %elsewhere%message:64 %elsewhere%phone:50 %elsewhere%shift_it:28
%elsewhere%who:39 %elsewhere%wrong_one:32 %fails%leave_me:53 %fails%message:35 %fails%money:-28 %fails%phone:73
%fails%question:-50 %fails%season:-26 %fails%smoke_smell:-38 %fails%start_again:-51 %fails%wrong_one:141 %family:-108
%family%leave_me:-23 %family%odometer:-40 %family%start_again:37 %gone_car:-58 %gone_car%leave_me:86
%gone_car%question:-30 %gone_car%thanks:24 %gone_car%wrong_one:-43 %how_long:-62 %how_long%leave_me:-30
%how_long%opening:33 %leave_me:575 %leave_me%lift:-35 %leave_me%meaning:-61 %leave_me%noise:-29 %leave_me%on_way:-26
%leave_me%opening:-24 %leave_me%pay_day:-38 %leave_me%phone:239 %leave_me%place:-29 %leave_me%refuse:-110
%leave_me%season:-31 %leave_me%smoke_smell:-31 %leave_me%staff:35 %leave_me%start_again:43 %leave_me%thanks:46
%leave_me%who:73 %leave_me%wrong_one:139 %lift:-55 %meaning:-57 %message:231 %message%odometer:31 %message%on_way:-23
%message%pay_day:-38 %message%question:-152 %message%refuse:227 %message%shift_it:-40 %message%staff:-40
%message%start_again:-94 %message%thanks:91 %money:-123 %money%question:-30 %money%refuse:26 %money%start_again:32
%noise:-73 %odometer:59 %odometer%opening:-25 %odometer%phone:46 %odometer%question:37 %odometer%wrong_one:126
%on_way:-91 %on_way%refuse:-23 %on_way%wrong_one:53 %pay_day:-78 %pay_day%season:-40 %phone%refuse:-24
%phone%staff:-24 %phone%wrong_one:-53 %place:-104 %place%question:-49 %question:-260 %question%refuse:79
%question%season:43 %question%start_again:64 %question%who:23 %refuse%shift_it:-35 %refuse%staff:26
%refuse%start_again:227 %refuse%thanks:42 %refuse%who:27 %refuse%wrong_one:49 %season:-62 %season%smoke_smell:-29
%season%wrong_one:-42 %shift_it:-84 %shift_it%wrong_one:24 %smoke_smell:-50 %staff:-33 %staff%wrong_one:48
%start_again:-199 %start_again%wrong_one:166 %who:-30 @?:-82 @after_visit:62 @confirm_stop:324 @confirm_stop_si:54
@later:-25 @nothing:80 @odometer:43 @offers:-44 @reading:-44 @time:-23 @times:-299 @walk_in:-27 ^_already:-23
^_alto:54 ^_baja:38 ^_basta:38 ^_borre:29 ^_can:-49 ^_cancel:214 ^_cancelar:131 ^_cancele:29 ^_cant:-33 ^_car:-53
^_claro:39 ^_como:-128 ^_cut:37 ^_de:-94 ^_dejame:24 ^_deje:-116 ^_dejen:85 ^_delete:-44 ^_do:109 ^_dont:-118
^_drop:59 ^_end:62 ^_enough:78 ^_ese:-47 ^_estoy:-23 ^_get:94 ^_go:113 ^_got:-37 ^_how:-125 ^_i:81 ^_ill:-77 ^_im:30
^_info:-60 ^_is:-50 ^_kill:42 ^_leave:-75 ^_me:-107 ^_my:-118 ^_nel:-29 ^_new:-31 ^_no:-207 ^_nobody:25 ^_not:-124
^_one:-34 ^_opt:-63 ^_parar:55 ^_please:-49 ^_por:49 ^_que:31 ^_quien:-23 ^_quiero:-98 ^_quit:104 ^_quiten:-29
^_re:-24 ^_revoke:191 ^_salir:75 ^_se:-57 ^_si:45 ^_sold:52 ^_start:-23 ^_stop:284 ^_stopall:126 ^_take:50
^_tengo:-22 ^_text:-71 ^_texting:69 ^_that:48 ^_this:-40 ^_un:26 ^_unsubscribe:51 ^_vuelvan:-22 ^_what:-93 ^_who:47
^_wrong:-62 ^_yeah:51 ^_yes:27 ^_yo:26 ^_youre:-22 a:-71 a_car:29 a_este:52 a_favor:24 a_los:31 a_mandarme:-22
a_month:-29 about:-111 about__tires:-22 about_the:-26 about_tires:-34 again:58 ahi:43 ahi_$:55 al:-33 alone:55
already:71 already_$:47 already__the:43 already_with:32 alto:54 alto_$:52 altos:-28 altos_$:-28 am:-50 am_$:-53
am_i:48 an:-31 and:174 and__is:39 and__text:-46 and_i:87 and_it:32 and_please:26 and_stop:43 annoying:-37
annoying_$:-33 any_more:24 anymore_$:-40 anything:69 apaga:-24 aqui:91 aqui_$:96 are:86 are_you:25 as:49 asi:-52
asi_$:-49 asked:38 at:-142 at_work:-28 avisarme:-24 away:73 away_$:91 back:-72 baja:60 barely:-35 base:57 basta:36
be:185 be__a:30 be__your:60 be_in:50 be_on:31 been:-31 been__your:-30 been_to:-30 before:-28 before_i:41 being:39
better:-22 bien:-48 bien_asi:-26 blocking:24 book:-39 book_me:-37 borre:37 borre_mi:37 borren:75 borrenme:35
bother:-25 bought:-23 bought_it:-22 brakes:-30 brakes__stop:-39 busy:-63 but:-25 by:-120 by_$:-50 by_friday:-28
cabin:-30 cabin_filter:-30 call:-105 call_$:-46 call__me:-47 call_me:-101 call_my:46 came:-27 can:-88 can__be:80
can__stop:-64 can__take:-60 can_stop:37 can_you:-65 cancel:68 cancel_$:161 cancel__please:-50 cancel_it:-86
cancel_please:70 cancelar:110 cancelar_$:114 cancelar__cita:-25 cancelen:-31 cancelo:-62 cant:-75 cant__it:-23
cant_stop:-27 car:40 car_is:24 cel:29 cell:45 celular:22 changed:-22 changing:30 cita:-98 cita_$:-62 cita__favor:-32
cita_por:-32 claro:32 claro__si:28 claro_que:28 como:-119 como__hago:-32 como__los:-36 como_le:-32 con__mensajes:24
con_los:62 con_mi:-24 consent:52 contact:107 contact_me:72 contacten:35 contacten_$:32 contacto:30 cosas:31
couldnt:-24 country:34 cut:45 datos:64 datos_$:60 daughter:35 de:207 de__base:57 de__lista:62 de__llantas:-39
de__textos:32 de_ahi:42 de_aqui:99 de_baja:46 de_estar:36 de_las:-44 de_mandar:26 de_mandarme:28 de_nuevo:-95
de_numero:-26 de_su:115 de_sus:28 deje:-121 dejen:81 dejen__estar:36 dejen_de:81 dejenme:50 del:-33 delete__number:24
delete_my:37 dia:-29 dije:61 dije_que:50 dinero:-43 do__a:24 do__contact:48 do__get:-30 do__have:48 do__take:-39
do__text:-34 do__want:49 do_i:-73 do_me:24 do_not:231 do_you:-86 does:-26 doesnt:-29 donde:-23 done:38 dont:27
dont__a:44 dont__any:22 dont__in:34 dont__it:61 dont__me:115 dont__texting:-134 dont__to:30 dont__your:33
dont_call:-59 dont_do:-32 dont_have:22 dont_need:50 dont_stop:-251 dont_text:68 dont_want:56 drop:66 drop__from:71
drop_me:66 early:-42 early_$:-37 el:-142 else:74 else_$:84 elsewhere:-28 elsewhere_$:-31 en:-67 en__altos:-28
en__noche:-50 en__ya:24 en_la:-72 en_los:-45 en_otro:30 en_paz:44 end_$:34 end_the:-22 enough__with:31
enough_already:31 equivocado__numero:-23 equivocado_de:-24 es:-85 es__mi:-27 es_para:-29 escriban:32 escriban_$:69
escribir_$:34 escribirme:26 escribirme_$:26 ese:-88 eso:-25 eso_$:-27 esta:-69 esta_bien:-28 estar:36 este:28 esto:35
esto_$:39 ever:71 ever_$:26 favor:85 favor__no:22 favor_and:24 feel:-28 filter:-30 fine:-27 fixed:23 for:93
for_me:-49 for_these:26 forever:-24 friday:-50 friday_$:-37 from:152 from__text:54 from_the:36 from_you:35
from_your:53 fue:-57 fuera_de:22 further:78 get:111 get__number:38 get_me:43 get_my:49 get_off:-40 get_these:44
getting_these:43 go:97 go_away:120 going:-62 going_to:-40 gone:32 good:-30 got:-58 got__cancel:-32 got_in:-25
got_to:24 gracias_y:22 great:-24 hace:-23 had:-33 had__done:29 had_it:31 hago:-51 hago_para:-42 handled:-29
handled_$:-29 hate:-28 have:-26 have__cancel:-26 have__car:44 have__no:-32 have__say:50 have__to:69 have_a:36
have_had:-36 have_it:-34 have_the:30 he:-28 hear:39 hearing:26 here:-30 here_$:-34 his:-38 hold:-62 horario:-26
horario_$:-25 hours:36 how:-146 how__i:-165 how_do:-180 how_i:-24 how_many:113 i:-38 i__by:-57 i__do:-35
i__getting:42 i__got:-31 i__had:-36 i__in:-34 i__it:63 i__longer:59 i__my:47 i__no:83 i__not:65 i__off:-25 i__out:24
i__smoking:-33 i__stop:-33 i__the:-34 i__them:-29 i__these:-107 i__to:-31 i__want:112 i__you:70 i_am:-37 i_be:88
i_cant:-34 i_do:56 i_feel:-27 i_have:-23 i_just:-33 i_keep:22 i_like:-98 i_make:-29 i_mean:59 i_never:92 i_no:59
i_quit:-39 i_said:119 i_still:43 i_stop:-150 i_text:-45 i_want:-48 ill:-91 ill_take:-42 im_not:-22 in:-83 in_$:-143
in_the:28 in_your:46 info:67 info_please:63 interesa:-42 interesa_$:-33 interest:22 interested:29 interested_$:-42
interested_in:56 ir:-43 ir_$:-38 ire:-23 ire_$:-23 is:-32 is_a:-31 is_for:67 is_getting:-34 is_gone:27 is_how:-23
is_my:22 is_not:-22 is_there:-28 is_what:37 isnt:-90 it_$:-36 it__how:-24 it__i:47 it__with:36 it_again:42 it_for:61
it_out:25 job:-49 job_$:-30 just:-159 just__on:-48 just__this:-31 just_got:-30 keep:-94 keep_me:-44 keep_them:-30
kill:53 kindly:52 know:-35 la:-176 la_noche:-50 las:-70 las_llantas:-40 le:-45 le__para:-28 le_hago:-32 leave:-128
leave__alone:56 leave_it:-61 leave_me:-38 les:69 les__que:68 les_dije:58 less:-51 like:-102 list:43 lista:38 live:33
live__the:34 live_in:29 llantas:-41 llantas_$:-40 lo:-47 lo__en:29 lol:-103 lol_$:-68 longer:51 longer__to:54 los:-69
los__de:-32 los_altos:-28 los_avisos:-31 los_mensajes:45 make:-51 make_it:-26 manana:-27 mandan:-27 mandando:-38
mandando_$:-103 mandar:28 mandarme_recordatorios:-31 manden:52 manden_mas:41 manden_mensajes:-44 manden_nada:59
many:41 many__do:109 many_texts:-70 many_times:114 mas:379 mas_$:141 mas_mensajes:29 mas_por:120 mas_textos:26 me:85
me_$:132 me__a:33 me__am:-51 me__de:-40 me__el:-29 me__en:-65 me__i:31 me__in:-24 me__like:-42 me__los:-24
me__mas:185 me__mensajes:-42 me__nada:47 me__no:29 me__of:29 me__please:-48 me__por:-42 me__this:39 me__your:38
me_a:-56 me_about:-63 me_again:60 me_and:34 me_at:-33 me_back:-41 me_before:-52 me_contacten:35 me_from:86 me_i:-60
me_in:-30 me_interesa:-39 me_off:171 me_on:-23 me_sirve:-25 me_sirven:-25 me_so:-51 me_the:-25 me_vuelvan:29 mean:49
mensaje:-69 mensajes:59 mensajes_$:137 mensajes_a:24 mensajitos:25 message:-98 message_$:-71 message_me:58
messages:53 messages_$:47 messaging:66 messaging_this:33 mi:60 mi__para:36 mi_cita:-69 mi_contacto:34 mi_numero:135
mi_telefono:31 min:-25 mis:29 money:-32 month:-37 month_is:-29 more:215 more_$:50 more__i:62 more__please:29
more_messages:30 more_of:28 more_texts:26 much:-35 much_$:-22 muy:-34 my:110 my__dont:32 my__from:23 my__out:79
my__phone:33 my__please:90 my__said:-28 my_car:-26 my_cell:39 my_daughter:40 my_info:125 my_number:187 my_phone:34
my_wife:-32 my_work:36 nada:90 nada_$:80 need:-57 need_to:-99 nel:-29 never:69 never__me:44 never__to:51
never_been:-36 never_want:54 new:-48 ni:70 no_$:-219 no__a:70 no__and:61 no__bien:-29 no__con:27 no__de:-127
no__escriban:-34 no__ir:-54 no__like:-34 no__manden:-30 no__mas:23 no__me:-24 no__mensajes:49 no__messages:36
no__no:31 no__para:-35 no__por:119 no__que:78 no__quiten:-37 no__recibir:98 no__texts:34 no__them:-63 no__to:-85
no__vuelvan:29 no__want:-24 no_es:-77 no_esta:-28 no_further:74 no_i:-77 no_ire:-23 no_keep:-43 no_longer:53
no_los:-30 no_manden:51 no_mas:162 no_me:248 no_more:254 no_need:-89 no_no:-29 no_paren:-53 no_puedo:-46
no_quiero:138 no_sigan:-36 no_that:-23 no_trabajo:28 no_vuelvan:49 no_you:-26 noche:-54 noche_$:-54 nomas:-27 non:-53
not__in:56 not__me:81 not__to:31 not_contact:48 not_for:-31 not_going:-29 not_interested:42 nuevo:-97 nuevo_$:-72
number:100 number_again:51 number_from:32 number_is:45 number_off:28 numero:81 numero_$:76 o:163 of:38 of__system:54
of_the:-27 of_them:24 of_these:50 of_this:-29 of_your:51 off:222 off_$:113 off__and:-60 off__i:23 off_before:44
off_of:27 off_this:87 off_your:44 on:-182 on_$:-76 on__list:-33 on_a:29 on_me:-60 on_my:-24 one:-29 one_of:23 opt:-85
opt_out:39 or:87 or__call:48 out:120 out_$:44 out__your:45 out_last:49 out_of:28 out_with:22 own:-24 para:-66
para__no:-22 para_nada:-32 para_que:-32 parar:36 parar_$:55 parenle:110 parenle__los:41 parte:34 parte_de:28 paz:44
permiso:28 permission:62 pero:-40 persona:41 phone:70 phone_$:54 phone__to:25 phone_belongs:27 phone_me:-25 place:34
place_$:41 please:36 please_$:-32 please__texting:28 please__the:-38 please__these:27 please_dont:-64 please_stop:75
please_take:24 por:-32 por_favor:46 power:-22 precio:-25 pueden:-53 puedo:-55 pull:79 que:156 que__borren:43
que__de:28 que__manden:37 que_les:23 que_me:103 que_paren:30 que_parte:22 que_si:30 querer:-37 quien:-44 quiero:41
quiero__a:-35 quiero__de:43 quiero__me:43 quiero__mensajes:-31 quiero_ir:-33 quiero_que:26 quiero_recibir:83 quit:60
quit_$:25 quit_it:73 quit_my:-24 quit_on:-60 quit_sending:47 quit_smoking:-38 quit_texting:40 quiten:-28
quiten__cita:-42 quiten__numero:37 quitenme:76 quitenme_$:51 re:-24 read:-23 ready:-24 receive_these:61 recibir:66
recibir_mensajes:-28 recordatorios:-41 recordatorios_$:-39 remember:-24 remember_$:-24 reminders:-30 reminders_$:-40
remove:66 remove__number:29 remove_my:26 remove_the:-43 report:36 restart:-31 revoke:204 revoke_$:146 ripped:-27
robot:28 ruido:-23 sacar:-25 said:86 said_no:84 salir:79 salir_$:64 salir_de:24 saquenme:48 say:94 saying:22
schedule:-23 se:-109 se_me:-43 see:-28 send:82 send_me:72 sending:73 sending_me:43 shop:-60 shop_$:-45 shops:30 si:30
si_$:26 si__favor:-70 si__no:30 si__todo:25 si_por:-70 si_quiero:-36 si_ya:50 sigan:-52 sigan_mandando:-42 sign:-25
sin:-41 sin_querer:-37 sirve:-26 sirve_$:-25 sirven:-25 smoking:-38 so:-87 so__can:29 so_you:30 sold:58 sold__car:56
sold_the:54 someone:-29 son:-25 sorry:-42 sorry_$:-23 soy__persona:38 spam:70 start:-41 start__me:-26 still:56
stop:115 stop_$:332 stop__at:-23 stop__friday:-28 stop__here:-54 stop__it:-60 stop__texts:-89 stop_by:-110 stop_it:53
stop_messaging:27 stop_sending:55 stop_texting:-38 stop_the:-85 stop_these:-51 stop_worrying:-34 stopall:126
stopall_$:126 stops:-23 stuff:42 stuff_$:51 su:80 su__de:64 su_lista:32 sus:60 sus_mensajes:31 system:52 system_$:47
t:183 take:69 take__number:36 take__off:145 take_me:110 take_us:34 taken:73 tan:-84 tarde:-41 tarde_$:-37 te:-22
telefono:30 tell:-40 tell_me:-37 temprano:-46 temprano_$:-45 tengo_que:-22 text:-95 text_$:-25 text__again:55
text_list:39 text_me:-47 text_to:-45 texted:41 texteen:46 texto:22 textos:72 textos_$:57 texts_$:-58 texts_again:-81
thanks:-27 that:-71 that__text:-79 that__the:29 that__what:37 that_is:60 that_last:-49 the:-112 the__again:-26
the__anymore:32 the__filter:-30 the__i:-54 the_cabin:-30 the_car:66 the_country:34 the_job:-30 the_messages:-35
the_reminders:-57 the_tires:-22 them:-77 them_$:-67 there:25 there_$:31 these:178 these_$:85 these_messages:82
thing:40 thing_$:31 this:85 this_$:43 this__a:-22 this__again:60 this__his:-29 this__is:59 this_isnt:-46
this_list:-29 this_number:74 this_phone:45 this_thing:27 tiene:-24 time:-51 times:129 tire:-23 tires:-59 tires_$:-23
to:-37 to_$:-24 to__daughter:42 to__from:44 to__in:45 to__on:29 to__shop:-26 to__the:-100 to__these:84 to_be:93
to_cancel:-69 to_get:32 to_hear:41 to_my:34 to_say:107 to_stop:-29 to_take:41 to_text:22 to_your:-31 todo:26 too:-67
too__texts:-25 too_many:-26 too_much:-24 trabajo:30 two:-30 una:-53 unsubscribe:103 unsubscribe_$:60 up_my:22 us:59
us_off:34 use:56 use_it:63 ustedes:24 ustedes_$:-32 ustedes__mi:27 usually:-47 vendi__carro:24 volver:-51
volver_a:-50 vuelvan:48 vuelvan__mandarme:-22 vuelvan_a:48 want:85 want__be:63 want__hear:41 want_it:-23 want_to:70
was:-54 way:-22 way_too:-27 we__need:31 we_dont:29 what:-62 what__i:-44 what_do:-42 what_i:37 what_is:-25 whatever:32
when:-77 when__stop:-48 when_i:-62 who:41 who__you:38 who_are:46 why:31 why__i:49 wife:-34 will__you:37 winter:-46
winter_$:-46 wipe:97 wipe_my:97 wipers:-44 wipers_$:-35 wish:60 with:43 with__texts:79 with_the:85 work_phone:36
works:-30 works_$:-22 worrying:-37 wrong:-76 wrong_number:-30 y:63 y__me:36 y__no:22 y_no:28 ya:66 ya__a:25
ya__con:26 ya__dije:69 ya__es:-29 ya__manden:28 ya__me:146 ya_les:28 ya_lo:-33 ya_no:66 ya_parenle:105 yeah:41
yeah_$:28 yeah_i:23 year_$:-30 yes:54 yes_$:29 yes__it:-24 yes_all:57 yes_please:-24 yo:40 you__me:-72 you__stop:77
you_dont:44 you_have:46 you_kindly:46 you_people:24 you_take:-72 you_tell:-32 you_text:-57 you_to:26 your:119
your__is:-24 your_list:23 your_records:22 your_reminders:34 your_shop:-51 your_system:45
"""
