"""What speaks for and against `stop`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "stop"
BIAS = -144
WEIGHTS = """\
#abaj:24 #abin:-22 #abla:-29 #able:-24 #abou:-80 #acar:-27 #acte:24 #acti:-35 #acto:41 #ados:-34 #agai:40 #agen:-23
#ages:45 #agin:49 #agre:19 #ajes:51 #ajit:26 #aken:41 #akes:-29 #alir:54 #alls:-21 #ally:-45 #alon:37 #alre:50
#alta:-21 #alto:26 #ambi:-18 #anan:-24 #anda:-19 #ande:20 #andl:-29 #ando:18 #ange:-28 #angi:20 #anks:-26 #anme:-23
#anno:-27 #anta:-47 #anyt:45 #aque:34 #aqui:59 #arar:37 #aras:22 #arde:-31 #arel:-25 #aren:64 #arin:20 #ario:-22
#arly:-34 #arme:-22 #aron:-30 #aske:26 #asta:31 #asti:-31 #atev:25 #atin:-32 #ator:-33 #atos:45 #augh:19 #aven:-18
#avis:-49 #avor:69 #away:54 #back:-62 #baja:50 #bare:-25 #base:77 #bast:28 #been:-23 #befo:-21 #bein:25 #bien:-46
#bloc:-48 #blow:29 #body:26 #book:-29 #borr:136 #both:-18 #bout:-80 #brak:-24 #bscr:18 #busy:-43 #cabi:-22 #call:-99
#camb:-18 #came:58 #canc:47 #cant:-54 #cela:67 #cele:-27 #cell:33 #celo:-42 #chan:-30 #chec:-31 #ched:-20 #chos:-18
#cibi:48 #cita:-70 #cked:-62 #clar:24 #come:-20 #comi:-25 #como:-86 #comp:-25 #cons:33 #cont:162 #cosa:24 #crap:31
#cras:-21 #crib:93 #cten:28 #ctio:-21 #ctiv:-35 #cult:-24 #dand:-26 #daug:23 #days:-19 #deje:-36 #dele:29 #dema:-30
#dent:-28 #ders:-30 #dije:42 #dine:-30 #ding:52 #dire:-25 #dled:-20 #does:-41 #done:28 #dont:23 #drop:44 #dule:-21
#eact:-22 #eady:32 #eari:20 #earl:-35 #ease:33 #eave:-109 #ecib:44 #ecio:-20 #eden:-38 #edul:-21 #efon:22 #efor:-21
#egat:-23 #egre:-23 #eing:25 #ejen:58 #elar:81 #elef:22 #elen:-28 #elet:27 #elim:55 #else:44 #elva:42 #emas:-30
#embe:-19 #emer:43 #emin:-29 #emov:79 #empr:-32 #enci:34 #ende:-18 #endi:46 #enga:45 #engo:-19 #enle:90 #enlo:-44
#enme:172 #ensa:26 #envi:34 #eone:-23 #epor:86 #equi:-21 #erer:-29 #eres:28 #erge:43 #ermi:64 #eron:-18 #erso:25
#esad:21 #escr:56 #esnt:-19 #espo:-18 #essa:26 #este:81 #esto:25 #eten:48 #etir:34 #ette:-19 #ever:96 #evok:159
#exte:153 #exti:27 #exto:66 #favo:69 #feel:-28 #filt:-22 #fine:-19 #foll:116 #fono:23 #fore:-38 #forg:-18 #frai:18
#frid:-37 #from:116 #furt:55 #gain:40 #gand:27 #gati:-23 #genc:41 #gend:-20 #ghte:23 #ging:82 #gned:21 #goin:-44
#gone:23 #good:-20 #grea:-20 #gree:23 #gust:-29 #habl:-46 #hago:-37 #hanc:-28 #hand:-22 #hank:-20 #have:-22 #head:-20
#hear:30 #heav:-18 #heck:-19 #hedu:-21 #here:-19 #hese:142 #hing:46 #hold:-43 #hone:39 #hops:21 #hora:-43 #hour:21
#hter:23 #iado:-32 #iban:26 #ibir:93 #iday:-38 #iden:31 #iene:-24 #iero:24 #igan:-62 #ight:-36 #igne:21 #ilte:-22
#imes:91 #imin:55 #inat:-23 #indl:38 #inen:48 #iner:-30 #info:64 #ious:24 #iper:-35 #ippe:-24 #ires:-42 #irve:-37
#isar:-23 #isco:27 #isnt:-61 #issi:48 #ista:22 #iten:41 #itos:19 #iven:-25 #jenl:-39 #jenm:44 #jito:26 #just:-114
#keep:-75 #kill:42 #kind:29 #knoc:-18 #know:-28 #lace:19 #lama:-23 #lame:-31 #lant:-53 #laro:25 #last:29 #late:-20
#leas:21 #leav:-97 #lefo:22 #less:-33 #lest:38 #lete:27 #ligh:-20 #like:-76 #limi:56 #list:60 #live:19 #llam:-43
#llan:-45 #llow:108 #lock:-54 #lone:38 #long:46 #lrea:50 #lsew:-20 #lter:-22 #ltos:-19 #ltur:-24 #lvan:31 #lver:-37
#lvid:45 #make:-36 #mana:-30 #mand:-19 #many:28 #mber:63 #mens:27 #ment:24 #meon:-23 #merg:43 #mero:60 #mess:29
#mind:-38 #mine:40 #ming:-29 #miso:22 #miss:40 #moki:-27 #mole:38 #mone:-22 #mont:-19 #more:167 #move:75 #mpra:-32
#much:-55 #mute:133 #nada:65 #nana:-24 #ncel:49 #nces:-27 #ncie:39 #ndan:-35 #nded:-18 #nden:57 #nder:-27 #ndin:53
#ndle:-20 #ndly:38 #need:-54 #nega:-23 #nero:-27 #neve:48 #ngan:59 #nger:35 #ngin:25 #ning:-23 #nlos:-34 #nnoy:-27
#noch:-38 #nock:-18 #noma:-22 #noyi:-26 #nsaj:27 #nsen:52 #nsto:-41 #nsub:70 #ntac:153 #ntas:-31 #nted:33 #nten:-18
#ntin:20 #ntry:23 #nuev:-86 #numb:83 #nume:63 #nunc:23 #nvie:22 #nyth:46 #obot:19 #oche:-38 #ocke:-72 #oesn:-19
#oing:-48 #okin:-31 #oles:36 #ollo:115 #olve:-37 #olvi:40 #omas:-23 #omeo:-23 #omin:-32 #onde:-19 #oney:-25 #onge:37
#onse:49 #onta:150 #onth:-19 #onti:20 #opal:91 #opte:32 #orda:-42 #orio:-31 #orks:-21 #orma:23 #orre:146 #orry:-58
#orte:65 #osas:23 #othe:-28 #over:-25 #oyin:-26 #pall:95 #pare:69 #pedi:22 #perm:65 #pero:-35 #phon:43 #plea:37
#port:91 #pped:-22 #pran:-32 #prec:-21 #proc:-20 #prom:20 #pued:-88 #pull:53 #qued:-18 #quen:35 #quer:-26 #quit:81
#quiv:-20 #raba:19 #rake:-24 #rano:-32 #rast:-20 #rdat:-31 #reac:-24 #reci:31 #reco:-18 #refr:19 #regr:-23 #regu:-19
#rely:-27 #remi:-29 #remo:78 #renl:78 #renm:36 #repo:86 #resu:-52 #reti:34 #reve:-19 #revo:165 #rgen:41 #riba:37
#ribe:19 #ribi:38 #rida:-38 #rios:-28 #ripp:-24 #rmis:67 #robo:29 #romo:21 #rong:-56 #rren:81 #rryi:-26 #rson:25
#rted:57 #rthe:55 #rven:-20 #ryin:-26 #saca:52 #sage:-22 #sagi:50 #said:62 #saji:27 #sali:41 #saqu:35 #sche:-21
#scon:26 #scra:37 #scri:104 #sday:-19 #send:112 #sent:48 #sewh:-20 #shop:-22 #shut:-18 #siga:-51 #simo:20 #sion:46
#sirv:-37 #sked:27 #smok:-31 #sold:35 #some:-27 #sona:32 #sorr:-32 #spam:51 #spon:-27 #ssag:28 #ssio:47 #stan:26
#star:-18 #sted:32 #stem:56 #sten:38 #stil:38 #stin:-31 #stop:139 #stuf:30 #sual:-33 #subs:18 #sume:-19 #susc:22
#syst:41 #taba:35 #tact:153 #take:105 #tand:34 #tard:-37 #tart:-56 #teen:37 #tell:-28 #temp:-32 #teng:32 #tenm:61
#tere:31 #teve:25 #text:180 #than:-32 #that:-46 #them:-55 #ther:34 #thes:136 #they:-19 #thin:35 #this:76 #tien:26
#till:32 #time:51 #tina:-24 #ting:-56 #tion:-26 #tire:-47 #tiro:23 #tive:-28 #tmen:-20 #todo:31 #topa:91 #tops:-19
#trab:25 #truc:-18 #tter:-24 #tuff:30 #ture:-24 #uall:-35 #ubsc:18 #ucho:-24 #uede:-49 #uedo:-53 #uelv:40 #uenm:31
#uere:-32 #uevo:-71 #ught:25 #uido:-21 #uien:-43 #uier:38 #uite:40 #uivo:-20 #umbe:83 #umer:63 #unfo:111 #unst:-41
#unsu:70 #untr:23 #urth:55 #uscr:22 #usua:-33 #utor:37 #vide:52 #visa:-32 #viso:-21 #voke:159 #volv:-39 #vuel:30
#wait:-27 #want:104 #what:-25 #when:-57 #wher:-22 #wife:-20 #wint:-26 #wipe:32 #wish:45 #with:30 #work:-30 #worr:-29
#wron:-51 #xted:26 #xtee:119 #xtos:51 #yard:18 #yeah:28 #ying:-42 #your:86 #yste:41 #ythi:36 %again_later:-162
%again_later%bad:25 %again_later%bring:-46 %again_later%call_off:-110 %again_later%doubt:-25 %again_later%fails:-23
%again_later%family:23 %again_later%leave_me:-52 %again_later%message:-77 %again_later%money:21
%again_later%on_way:-40 %again_later%phone:35 %again_later%refuse:40 %again_later%start_again:-23
%again_later%wrong_one:112 %agree%away:26 %agree%bring:-42 %agree%busy:-29 %agree%call_off:35 %agree%car:75
%agree%car_part:-44 %agree%elsewhere:26 %agree%fails:-31 %agree%family:19 %agree%gone_car:84 %agree%leave_me:26
%agree%message:-64 %agree%phone:28 %agree%question:36 %agree%refuse:-83 %agree%shift_it:31 %agree%staff:30
%agree%start_again:-87 %agree%wrong_one:23 %away:46 %away%bring:-30 %away%fails:-19 %away%leave_me:49
%away%message:38 %away%on_way:30 %away%phone:21 %away%season:38 %away%wrong_one:32 %bad:56 %bad%call_off:24
%bad%fails:48 %bad%leave_me:75 %bad%message:45 %bad%wrong_one:26 %bring:-94 %bring%busy:-41 %bring%call_off:-96
%bring%car_part:-93 %bring%fails:-52 %bring%family:-18 %bring%gone_car:26 %bring%leave_me:-19 %bring%meaning:-25
%bring%money:-18 %bring%odometer:-56 %bring%on_way:-28 %bring%phone:29 %bring%question:-32 %bring%refuse:-138
%bring%thanks:21 %bring%who:37 %bring%wrong_one:-76 %busy:-103 %busy%fails:-19 %busy%leave_me:-33 %busy%odometer:23
%call_off:114 %call_off%car_part:-49 %call_off%do_it:-24 %call_off%family:-36 %call_off%how_long:22
%call_off%leave_me:-20 %call_off%message:238 %call_off%money:-33 %call_off%on_way:-47 %call_off%opening:27
%call_off%phone:-36 %call_off%refuse:-97 %call_off%start_again:101 %call_off%who:69 %call_off%wrong_one:-57 %car:-24
%car%gone_car:71 %car%leave_me:32 %car%message:74 %car%phone:-19 %car%staff:-20 %car_part:-235 %car_part%fails:-43
%car_part%leave_me:-121 %car_part%message:-97 %car_part%refuse:-47 %do_it:-50 %do_it%elsewhere:36 %do_it%leave_me:54
%do_it%meaning:-20 %do_it%message:67 %doubt:-54 %doubt%message:-18 %doubt%refuse:-18 %doubt%wrong_one:-29
%elsewhere:39 %elsewhere%leave_me:25 %elsewhere%message:43 %elsewhere%phone:35 %elsewhere%shift_it:18
%elsewhere%who:30 %elsewhere%wrong_one:21 %fails%leave_me:44 %fails%message:23 %fails%money:-20 %fails%phone:52
%fails%question:-40 %fails%smoke_smell:-28 %fails%start_again:-40 %fails%wrong_one:100 %family:-86
%family%odometer:-33 %family%start_again:24 %gone_car:-48 %gone_car%leave_me:61 %gone_car%question:-23
%gone_car%thanks:18 %gone_car%wrong_one:-29 %how_long:-60 %how_long%leave_me:-25 %how_long%opening:21
%how_long%question:-18 %leave_me:518 %leave_me%lift:-27 %leave_me%meaning:-42 %leave_me%message:28
%leave_me%noise:-20 %leave_me%on_way:-22 %leave_me%pay_day:-28 %leave_me%phone:177 %leave_me%place:-24
%leave_me%refuse:-63 %leave_me%season:-21 %leave_me%smoke_smell:-22 %leave_me%staff:31 %leave_me%start_again:24
%leave_me%thanks:35 %leave_me%who:54 %leave_me%wrong_one:119 %lift:-45 %meaning:-46 %message:236 %message%odometer:24
%message%pay_day:-28 %message%question:-106 %message%refuse:211 %message%shift_it:-29 %message%staff:-29
%message%start_again:-62 %message%thanks:67 %message%wrong_one:19 %money:-100 %money%question:-27 %money%refuse:18
%money%start_again:23 %noise:-58 %odometer:49 %odometer%phone:37 %odometer%question:29 %odometer%wrong_one:92
%on_way:-84 %on_way%refuse:-20 %on_way%wrong_one:36 %opening:-20 %pay_day:-61 %pay_day%season:-30 %phone:-21
%phone%staff:-20 %phone%wrong_one:-30 %place:-85 %place%question:-40 %question:-212 %question%refuse:54
%question%season:27 %question%start_again:50 %refuse:32 %refuse%shift_it:-25 %refuse%start_again:188
%refuse%thanks:23 %refuse%who:21 %refuse%wrong_one:36 %season:-49 %season%smoke_smell:-20 %season%wrong_one:-29
%shift_it:-74 %smoke_smell:-39 %staff:-30 %staff%wrong_one:34 %start_again:-135 %start_again%wrong_one:123 %who:-28
@?:-80 @after_visit:71 @confirm_stop:290 @confirm_stop_si:40 @day:-18 @later:-23 @nothing:52 @odometer:22 @offers:-52
@reading:-43 @time:-24 @times:-276 @walk_in:-30 ^_already:-18 ^_alto:46 ^_baja:28 ^_basta:30 ^_borre:22 ^_can:-37
^_cancel:157 ^_cancelar:94 ^_cancele:21 ^_cant:-24 ^_car:-37 ^_claro:31 ^_como:-91 ^_cut:28 ^_de:-66 ^_dejame:19
^_deje:-82 ^_dejen:59 ^_delete:-29 ^_do:85 ^_dont:-89 ^_drop:38 ^_end:51 ^_enough:56 ^_ese:-34 ^_estoy:-18 ^_get:69
^_go:80 ^_got:-26 ^_how:-88 ^_i:69 ^_ill:-52 ^_im:20 ^_info:-40 ^_is:-37 ^_kill:33 ^_leave:-48 ^_me:-74 ^_my:-86
^_nel:-23 ^_new:-21 ^_no:-162 ^_nobody:18 ^_not:-76 ^_one:-25 ^_opt:-42 ^_parar:43 ^_please:-21 ^_por:36 ^_que:20
^_quiero:-64 ^_quit:80 ^_remove:18 ^_revoke:149 ^_salir:54 ^_se:-42 ^_si:41 ^_sold:38 ^_stop:205 ^_stopall:91
^_take:42 ^_text:-49 ^_texting:49 ^_that:35 ^_this:-26 ^_un:21 ^_unsubscribe:41 ^_what:-73 ^_who:30 ^_wrong:-40
^_yeah:35 ^_yes:29 a:-72 a_car:19 a_este:39 a_los:22 a_month:-21 about:-80 about_the:-19 about_tires:-24 again:40
ahi:30 ahi_$:41 al:-28 alone:38 already:50 already_$:32 already__the:33 already_with:25 alto:46 alto_$:45 altos:-19
altos_$:-19 am:-38 am_$:-36 am_i:32 an:-24 and:129 and__is:30 and__text:-30 and_i:62 and_it:24 and_please:18
and_stop:33 annoying:-26 annoying_$:-23 any_more:18 anymore_$:-23 anything:46 aqui:60 aqui_$:65 are:57 as:35 asi:-42
asi_$:-39 asked:27 at:-111 at_work:-20 away:54 away_$:66 back:-61 baja:45 barely:-25 base:40 basta:28 be:132 be__a:21
be__your:43 be_in:35 be_on:22 been:-23 been__your:-22 been_to:-22 before:-21 before_i:28 being:25 bien:-39
bien_asi:-19 book:-28 book_me:-26 borre:28 borre_mi:29 borren:58 borrenme:29 brakes:-22 brakes__stop:-28 busy:-43
but:-22 by:-86 by_$:-33 by_friday:-19 cabin:-22 cabin_filter:-21 call:-83 call_$:-34 call__me:-32 call_me:-75
call_my:32 came:-19 can:-69 can__be:54 can__stop:-45 can__take:-41 can_stop:27 can_you:-46 cancel:57 cancel_$:115
cancel__please:-33 cancel_it:-55 cancel_please:50 cancelar:82 cancelar_$:80 cancelen:-23 cancelo:-42 cant:-54
cant_stop:-19 car:25 cel:23 cell:34 changing:21 cita:-69 cita_$:-42 cita__favor:-22 cita_por:-22 claro:25
claro__si:23 claro_que:23 come:-18 coming:-18 como:-86 como__hago:-24 como__los:-24 como_le:-24 con_los:49 con_mi:-18
consent:39 contact:85 contact_me:52 contacten:28 contacten_$:26 contacto:24 cosas:23 country:23 cut:35 datos:46
datos_$:42 daughter:23 de:163 de__base:40 de__lista:50 de__llantas:-27 de__textos:21 de_ahi:31 de_aqui:67 de_baja:36
de_estar:26 de_las:-32 de_mandar:19 de_mandarme:21 de_nuevo:-68 de_su:89 de_sus:23 deje:-86 dejen:64 dejen__estar:26
dejen_de:64 dejenme:38 del:-27 delete__number:20 delete_my:32 dia:-24 dije:45 dije_que:36 dinero:-30 do__contact:39
do__get:-20 do__have:32 do__take:-20 do__text:-23 do__want:34 do_i:-50 do_not:168 do_you:-56 does:-22 doesnt:-19
done:28 dont:23 dont__a:30 dont__any:18 dont__in:23 dont__it:42 dont__me:84 dont__texting:-90 dont__to:21
dont__your:22 dont_call:-41 dont_do:-22 dont_need:35 dont_stop:-179 dont_text:53 dont_want:42 drop:44 drop__from:49
drop_me:44 early:-30 early_$:-25 el:-125 else:51 else_$:57 elsewhere:-20 elsewhere_$:-22 en:-50 en__altos:-19
en__noche:-33 en__ya:19 en_la:-51 en_los:-33 en_otro:23 en_paz:36 end_$:32 enough__with:23 enough_already:23 es:-67
es__mi:-18 es_para:-20 escriban:29 escriban_$:49 escribir_$:24 escribirme:19 escribirme_$:19 ese:-63 eso:-20
eso_$:-22 esta:-53 esta_bien:-21 estar:26 este:25 esto:24 esto_$:28 ever:54 ever_$:20 favor:70 favor__no:18 feel:-20
filter:-22 fine:-19 for:65 for_me:-31 for_these:19 friday:-37 friday_$:-27 from:116 from__text:35 from_the:23
from_you:27 from_your:48 fue:-44 fuera_de:19 further:55 get:79 get__number:26 get_me:33 get_my:35 get_off:-28
get_these:32 getting_these:28 go:68 go_away:84 going:-44 going_to:-29 gone:23 good:-23 got:-44 got__cancel:-20
got_in:-18 got_to:18 great:-18 hace:-19 had:-23 had__done:22 had_it:24 hago:-37 hago_para:-29 handled:-20
handled_$:-19 hate:-20 have:-22 have__car:31 have__no:-21 have__say:34 have__to:47 have_a:24 have_had:-24 have_it:-23
have_the:24 he:-21 hear:27 hearing:20 here_$:-21 his:-27 hold:-43 horario:-18 hours:24 how:-103 how__i:-112
how_do:-122 how_many:78 i:-18 i__by:-40 i__do:-25 i__getting:28 i__got:-20 i__had:-24 i__in:-25 i__it:42 i__longer:44
i__my:31 i__no:58 i__not:48 i__out:18 i__smoking:-23 i__stop:-24 i__the:-28 i__them:-21 i__these:-72 i__to:-20
i__want:82 i__you:49 i_am:-27 i_be:61 i_cant:-24 i_do:41 i_dont:18 i_feel:-19 i_just:-22 i_like:-71 i_make:-19
i_mean:41 i_never:67 i_no:44 i_quit:-28 i_said:85 i_still:29 i_stop:-103 i_text:-31 i_want:-25 ill:-64 ill_take:-27
in:-73 in_$:-104 in_your:32 info:49 info_please:45 interesa:-28 interesa_$:-22 interest:18 interested:24
interested_$:-26 interested_in:38 ir:-28 ir_$:-26 is:-28 is_a:-24 is_for:46 is_getting:-23 is_gone:19 is_there:-20
is_this:-18 is_what:29 isnt:-61 it:-20 it_$:-27 it__i:32 it__with:26 it_again:29 it_for:41 it_is:19 it_out:18 job:-34
job_$:-21 just:-113 just__on:-33 just__this:-20 just_got:-20 keep:-72 keep_me:-35 keep_them:-23 kill:42 kindly:38
know:-26 la:-139 la_noche:-33 las:-54 las_llantas:-28 le:-37 le__para:-20 le_hago:-24 leave:-91 leave__alone:39
leave_it:-46 leave_me:-23 les:53 les__que:50 les_dije:42 less:-35 like:-76 list:42 list_$:24 lista:33 live:22
live__the:23 live_in:20 llantas:-29 llantas_$:-27 lo:-40 lo__en:22 lol:-71 lol_$:-45 longer:38 longer__to:40 los:-54
los__de:-21 los_altos:-19 los_avisos:-25 los_mensajes:33 make:-35 make_it:-19 manana:-23 mandan:-22 mandando:-26
mandando_$:-73 mandar:20 mandarme_recordatorios:-20 manden:51 manden_mas:31 manden_mensajes:-28 manden_nada:47
many:28 many__do:75 many_texts:-48 many_times:79 mas:276 mas_$:103 mas_mensajes:20 mas_por:82 mas_textos:20 me:87
me_$:91 me__a:26 me__am:-34 me__de:-28 me__el:-23 me__en:-41 me__i:23 me__in:-19 me__like:-28 me__los:-19 me__mas:132
me__mensajes:-26 me__nada:38 me__no:21 me__of:23 me__please:-32 me__por:-27 me__this:31 me__your:34 me_a:-38
me_about:-45 me_again:42 me_and:26 me_at:-26 me_back:-34 me_before:-35 me_contacten:28 me_from:63 me_i:-41 me_in:-23
me_interesa:-26 me_off:141 me_on:-18 me_sirven:-19 me_so:-34 me_the:-19 me_vuelvan:24 mean:32 mensaje:-50 mensajes:51
mensajes_$:104 mensajitos:20 message:-66 message_$:-48 message_me:40 messages:45 messages_$:41 messaging:50
messaging_this:23 mi:55 mi__para:29 mi_cita:-47 mi_contacto:28 mi_numero:100 mi_telefono:25 mis:19 money:-22
month:-27 month_is:-20 more:165 more_$:34 more__i:43 more__please:22 more_messages:23 more_of:22 more_texts:25
much:-28 muy:-28 my:85 my__dont:20 my__from:20 my__off:19 my__out:58 my__phone:23 my__please:62 my__said:-19
my_car:-18 my_cell:30 my_daughter:27 my_info:87 my_number:140 my_phone:26 my_wife:-22 my_work:26 nada:68 nada_$:59
need:-37 need_to:-67 nel:-23 never:49 never__me:31 never__to:35 never_been:-27 never_want:39 new:-36 ni:55 no_$:-156
no__a:51 no__and:42 no__bien:-22 no__con:18 no__de:-86 no__escriban:-18 no__ir:-35 no__like:-26 no__mas:18 no__me:-20
no__mensajes:33 no__messages:28 no__no:24 no__para:-24 no__por:82 no__que:57 no__quiten:-29 no__recibir:72
no__texts:32 no__them:-46 no__to:-57 no__vuelvan:23 no_es:-57 no_esta:-21 no_further:52 no_i:-59 no_keep:-34
no_longer:40 no_los:-24 no_manden:40 no_mas:114 no_me:193 no_more:192 no_need:-59 no_no:-24 no_paren:-38 no_puedo:-33
no_quiero:108 no_sigan:-23 no_trabajo:19 no_vuelvan:35 no_you:-21 noche:-37 noche_$:-36 nomas:-22 non:-36 not__in:38
not__me:59 not__to:25 not_contact:39 not_for:-21 not_going:-19 not_interested:34 nuevo:-70 nuevo_$:-50 number:84
number_again:38 number_from:27 number_is:31 number_off:22 numero:63 numero_$:58 o:108 of:33 of__system:42 of_the:-21
of_these:39 of_this:-19 of_your:39 off:180 off_$:87 off__and:-41 off_before:30 off_of:21 off_this:63 off_your:39
on:-145 on_$:-59 on__list:-27 on_a:20 on_me:-43 on_my:-18 on_the:-18 one:-23 one_of:18 opt:-55 opt_out:34 or:57
or__call:33 out:87 out_$:34 out__your:34 out_last:33 out_of:23 own:-21 para:-51 para_nada:-24 para_que:-22 parar:29
parar_$:43 parenle:78 parenle__los:28 parte:26 parte_de:21 paz:36 permiso:22 permission:45 pero:-34 persona:32
phone:56 phone_$:42 phone_belongs:19 phone_me:-19 place:22 place_$:28 please:38 please_$:-24 please__the:-29
please__these:21 please_dont:-40 please_stop:53 please_take:21 por:-25 por_favor:41 precio:-19 pueden:-38 puedo:-42
pull:55 que:110 que__borren:31 que__de:20 que__manden:26 que_les:19 que_me:76 que_paren:20 que_si:25 querer:-29
quien:-33 quiero:43 quiero__a:-25 quiero__de:31 quiero__me:34 quiero__mensajes:-20 quiero_ir:-21 quiero_que:20
quiero_recibir:60 quit:49 quit_$:21 quit_it:51 quit_on:-43 quit_sending:34 quit_smoking:-27 quit_texting:30
quiten:-20 quiten__cita:-29 quiten__numero:27 quitenme:61 quitenme_$:40 quitenme_de:18 ready:-18 receive:18
receive_these:44 recibir:50 recibir_mensajes:-19 recordatorios:-29 recordatorios_$:-28 reminders:-25 reminders_$:-29
remove:63 remove__number:24 remove_me:20 remove_my:22 remove_the:-31 report:25 restart:-23 revoke:159 revoke_$:116
ripped:-18 robot:20 sacar:-18 said:62 said_no:58 salir:54 salir_$:46 saquenme:35 say:63 schedule:-18 se:-89 se_me:-32
see:-20 send:58 send_me:50 sending:55 sending_me:31 shop:-43 shop_$:-32 shops:21 si:25 si_$:18 si__favor:-49
si__no:23 si__todo:20 si_por:-49 si_quiero:-27 si_ya:37 sigan:-37 sigan_mandando:-28 sign:-20 sin:-33 sin_querer:-29
sirven:-20 smoking:-27 so:-61 so__can:20 so_you:21 sold:43 sold__car:41 sold_the:39 someone:-23 son:-20 sorry:-32
soy__persona:30 spam:48 start:-31 start__me:-19 still:38 stop:88 stop_$:240 stop__friday:-19 stop__here:-37
stop__it:-42 stop__texts:-60 stop_by:-79 stop_it:37 stop_messaging:21 stop_sending:42 stop_texting:-23 stop_the:-61
stop_these:-36 stop_worrying:-23 stopall:91 stopall_$:91 stops:-18 stuff:30 stuff_$:36 su:61 su__de:45 su_lista:27
sus:44 sus_mensajes:22 system:40 system_$:36 t:125 take:75 take__number:29 take__off:116 take_me:92 take_us:23
taken:50 tan:-58 tarde:-30 tarde_$:-26 te:-19 telefono:23 tell:-27 tell_me:-26 temprano:-31 temprano_$:-30 text:-66
text_$:-20 text__again:39 text_list:29 text_me:-32 text_to:-31 texted:26 texteen:38 texto:18 textos:53 textos_$:42
texts_$:-32 texts_again:-56 thanks:-22 that:-54 that__text:-56 that__the:23 that__what:29 that_is:48 that_last:-34
the:-112 the__again:-21 the__anymore:22 the__filter:-21 the__i:-41 the_cabin:-21 the_car:48 the_country:23
the_job:-21 the_messages:-23 the_reminders:-44 them:-55 them_$:-49 there_$:19 these:142 these_$:65 these_messages:62
thing:30 thing_$:24 this:76 this_$:31 this__again:44 this__his:-20 this__is:40 this_isnt:-29 this_list:-19
this_number:56 this_phone:36 this_thing:20 tiene:-18 time:-37 times:91 tires:-41 to:-32 to__daughter:29 to__from:30
to__in:31 to__on:21 to__shop:-19 to__the:-69 to__these:61 to_be:67 to_cancel:-46 to_get:23 to_hear:28 to_my:24
to_say:73 to_stop:-21 to_take:28 to_your:-23 todo:22 too:-50 too__texts:-18 too_many:-19 too_much:-18 trabajo:20
two:-25 una:-37 unsubscribe:84 unsubscribe_$:49 us:42 us_off:23 use:37 use_it:43 ustedes_$:-23 ustedes__mi:18
usually:-33 vendi__carro:19 volver:-37 volver_a:-36 vuelvan:35 vuelvan_a:35 want:69 want__be:46 want__hear:28
want_to:55 was:-43 way_too:-20 we__need:21 we_dont:19 what:-51 what__i:-31 what_do:-29 what_i:29 what_is:-22
whatever:26 when:-56 when__stop:-31 when_i:-42 who:25 who__you:25 who_are:31 why:19 why__i:33 wife:-24 will__you:26
winter:-32 winter_$:-32 wipe:67 wipe_my:67 wipers:-31 wipers_$:-23 wish:45 with:24 with__texts:52 with_the:57
work_phone:25 works:-21 worrying:-26 wrong:-51 wrong_number:-20 y:43 y__me:29 y__no:18 y_no:23 ya:70 ya__con:19
ya__dije:51 ya__es:-21 ya__manden:23 ya__me:114 ya_les:22 ya_lo:-22 ya_no:69 ya_parenle:73 yeah:28 yeah_i:18
year_$:-21 yes:49 yes_$:22 yes_all:36 yes_please:-19 yo:24 you:19 you__me:-49 you__stop:56 you_dont:32 you_have:32
you_kindly:31 you_people:19 you_take:-43 you_tell:-21 you_text:-41 you_to:18 your:98 your_list:20 your_records:19
your_reminders:23 your_shop:-36 your_system:35
"""
