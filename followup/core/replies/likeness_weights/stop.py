"""What speaks for and against `stop`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "stop"
BIAS = -147
WEIGHTS = """\
#abaj:30 #abin:-28 #abla:-24 #able:-20 #abou:-94 #acar:-32 #acce:-18 #acte:32 #acti:-41 #acto:30 #ados:-32 #agai:55
#agan:18 #agen:-26 #ages:56 #agin:44 #agre:20 #ahor:-20 #ajes:50 #ajit:27 #aken:49 #akes:-30 #alir:71 #alls:-23
#ally:-48 #alon:35 #alre:57 #also:18 #alta:-20 #amas:18 #ambi:-25 #amen:-22 #anan:-24 #andl:-35 #ando:22 #ange:-24
#angi:30 #anks:-29 #anno:-33 #anta:-54 #ante:27 #anto:-19 #anyt:56 #appo:-18 #aque:42 #aqui:83 #aran:21 #arar:39
#arde:-37 #arel:-22 #aren:89 #arin:21 #ario:-31 #arly:-37 #arme:-43 #aron:-44 #arte:20 #aske:28 #asta:21 #aste:-19
#asti:-28 #atev:24 #atin:-38 #ator:-39 #atos:53 #augh:30 #auto:19 #aven:-19 #avis:-42 #avor:65 #away:58 #ayor:18
#back:-53 #baja:60 #bajo:21 #bare:-22 #base:90 #been:-33 #befo:-29 #bein:36 #bett:-18 #bien:-44 #bloc:-68 #book:-38
#borr:123 #both:-32 #boug:-21 #bout:-94 #brak:-24 #busy:-52 #cabi:-28 #cado:-22 #call:-104 #camb:-21 #came:76
#canc:42 #cant:-54 #cela:74 #cele:-33 #cell:38 #celo:-56 #celu:19 #chan:-31 #chec:-38 #ched:-22 #chos:-22 #cibi:57
#cita:-78 #cked:-90 #ckin:18 #clar:25 #come:-22 #comi:-22 #como:-114 #comp:-19 #cons:31 #cont:163 #cord:-26 #cosa:28
#crap:28 #cras:-25 #crib:84 #cros:-19 #cten:32 #ctio:-25 #ctiv:-51 #cult:-34 #dand:-30 #daug:31 #days:-18 #deja:24
#deje:-56 #dent:-31 #ders:-21 #dici:24 #dije:43 #dine:-34 #ding:60 #dire:-32 #disc:28 #dled:-25 #does:-57 #dond:-21
#done:24 #dont:26 #drop:56 #dule:-25 #eady:36 #eari:21 #earl:-39 #ease:37 #eave:-113 #ecib:53 #ecio:-18 #ecor:-19
#eden:-42 #edes:24 #edul:-25 #efon:25 #efor:-29 #egan:-18 #egat:-22 #egre:-30 #eing:35 #ejam:25 #ejen:43 #elar:96
#elef:25 #elen:-34 #elim:59 #else:43 #elul:19 #elva:43 #embe:-21 #emem:-19 #emen:22 #emer:56 #emin:-21 #emov:75
#empr:-45 #enci:48 #ende:-22 #endi:61 #enga:60 #engo:-21 #enle:93 #enme:195 #ensa:19 #envi:39 #eone:-24 #eply:19
#epor:110 #eque:20 #equi:-30 #erer:-25 #eres:23 #erge:56 #ermi:62 #erso:27 #esad:24 #escr:56 #esnt:-31 #espo:-21
#esta:18 #este:86 #esto:42 #eten:64 #etir:36 #ette:-22 #ever:103 #evok:135 #exte:193 #exti:36 #exto:58 #exts:-27
#favo:65 #feel:-36 #filt:-28 #fine:-21 #foll:149 #fono:26 #fore:-47 #forg:-21 #frai:20 #frid:-41 #from:138 #furt:70
#gain:55 #gand:30 #gati:-22 #genc:54 #gend:-24 #ghte:31 #ging:87 #goin:-53 #gone:26 #good:-21 #grea:-20 #gree:24
#guen:18 #habl:-41 #hace:-25 #hago:-45 #hanc:-43 #hand:-27 #hank:-19 #have:-22 #head:-21 #hear:33 #heav:-18 #heck:-22
#hedu:-25 #here:-22 #hers:-26 #hese:144 #hill:-19 #hing:51 #hold:-58 #hone:27 #hops:31 #hora:-54 #hour:25 #hter:31
#huts:-19 #iado:-32 #iban:29 #ibir:114 #ible:-22 #icie:18 #iday:-42 #idea:19 #iden:39 #iend:18 #iene:-19 #iero:29
#igan:-67 #ight:-59 #ilte:-27 #imes:114 #imin:59 #imon:19 #inat:-29 #inde:-18 #indl:40 #inen:52 #iner:-34 #info:68
#inst:-18 #ious:22 #iper:-37 #ippe:-33 #ires:-46 #irve:-40 #isar:-34 #isco:32 #isnt:-92 #issi:46 #ista:18 #itch:20
#iten:30 #itos:27 #iven:-25 #ivoc:-19 #jama:18 #jame:26 #jenl:-51 #jenm:41 #jito:27 #jove:19 #just:-135 #keep:-56
#kill:42 #kind:33 #king:-23 #knoc:-24 #know:-25 #lace:19 #lama:-24 #lame:-31 #lant:-56 #laro:26 #last:31 #late:-30
#ldnt:-19 #leas:22 #leav:-100 #lefo:25 #lega:-19 #legu:18 #less:-46 #lest:57 #ligh:-18 #like:-89 #limi:61 #list:56
#live:20 #llam:-46 #llan:-51 #llow:140 #loca:-20 #lock:-74 #lone:36 #long:60 #lrea:57 #lsew:-26 #lter:-28 #ltos:-23
#ltur:-34 #lula:19 #lvan:35 #lver:-42 #lvid:61 #make:-42 #mana:-34 #many:39 #marc:-20 #mber:53 #mean:30 #memb:-19
#mens:20 #meon:-24 #merg:56 #mero:62 #mien:18 #mind:-32 #mine:43 #ming:-20 #miso:18 #miss:39 #mist:-18 #moki:-32
#mole:57 #mone:-26 #mont:-23 #more:182 #move:71 #mpra:-41 #much:-60 #must:-18 #nada:70 #nana:-24 #ncel:45 #nces:-42
#ncie:52 #ndan:-22 #nded:-22 #nden:54 #ndin:66 #ndle:-25 #ndly:40 #need:-72 #nega:-22 #nero:-31 #neve:54 #ngan:74
#nged:-18 #nger:52 #ngin:38 #ning:-34 #nnoy:-33 #noch:-49 #nock:-24 #noti:18 #noyi:-33 #nsaj:20 #nsen:52 #nsto:-69
#nsub:74 #ntac:149 #ntas:-38 #nted:39 #ntin:23 #ntry:31 #nuda:-24 #nuev:-102 #numb:73 #nume:67 #nunc:26 #nvie:24
#nyth:57 #obot:25 #ocad:-19 #ocat:-18 #oche:-50 #ocke:-91 #ocki:19 #ocup:-22 #oesn:-31 #offe:-18 #oing:-57 #okin:-42
#oles:55 #ollo:149 #olve:-42 #olvi:55 #omeo:-24 #omin:-24 #once:-18 #onde:-23 #oner:-19 #oney:-25 #onge:53 #ongs:18
#onse:48 #onta:146 #onth:-23 #opte:42 #orar:-24 #orda:-45 #orev:-18 #orio:-37 #orks:-24 #orma:29 #orre:143 #orry:-59
#orte:85 #osas:27 #oses:-18 #othe:-37 #ould:-33 #ousl:23 #oven:19 #over:-25 #ower:-19 #oyin:-33 #pare:92 #perd:-21
#perm:64 #pero:-25 #phil:-18 #phon:28 #plea:40 #pone:-19 #port:114 #powe:-19 #pped:-30 #ppoi:-18 #pran:-41 #proc:-25
#prop:19 #pued:-97 #pull:68 #puro:-19 #qued:-19 #quen:41 #quer:-25 #ques:18 #quit:80 #quiv:-29 #raba:26 #rake:-23
#rano:-41 #rari:-24 #raro:-18 #rast:-25 #rdat:-36 #reac:-23 #reci:48 #reco:-20 #rect:18 #regr:-30 #rely:-24 #remi:-21
#remo:74 #renl:83 #renm:30 #repo:106 #resu:-72 #reti:36 #reve:-20 #revo:143 #rgen:54 #riba:30 #ribi:52 #rida:-41
#rios:-34 #ripp:-34 #rmis:65 #robo:37 #rong:-63 #ross:-19 #rrec:20 #rren:77 #rryi:-28 #rson:27 #rted:73 #rthe:70
#ruid:-19 #ryin:-28 #saca:64 #sage:-29 #sagi:45 #said:63 #saji:27 #sali:58 #saqu:42 #sarm:-23 #sche:-25 #scon:31
#scra:34 #scri:97 #sday:-19 #send:127 #sent:49 #sewh:-26 #shop:-24 #shut:-23 #siga:-50 #simo:18 #sion:44 #sirv:-41
#sist:18 #sked:28 #smok:-37 #sold:33 #some:-38 #sona:37 #sorr:-31 #spam:54 #sper:-18 #spon:-34 #ssio:46 #stak:-18
#stan:50 #star:-18 #stas:18 #sted:35 #stem:52 #sten:50 #stil:50 #stin:-39 #stop:239 #stos:24 #stuf:23 #sual:-40
#sume:-21 #sure:-20 #susc:28 #syst:40 #taba:39 #tact:149 #take:89 #tand:45 #tard:-41 #tart:-58 #tede:24 #teen:29
#tell:-32 #temp:-41 #teng:48 #tenm:72 #tere:28 #teve:24 #text:187 #than:-38 #that:-50 #them:-44 #ther:50 #thes:144
#they:-22 #thin:49 #this:63 #tien:41 #till:44 #time:75 #timi:18 #tina:-30 #ting:-76 #tion:-26 #tire:-47 #tive:-28
#todo:33 #topa:208 #topp:21 #trab:31 #tter:-28 #ttin:-20 #tuff:23 #ture:-34 #twic:-18 #uall:-42 #ucho:-25 #udar:-24
#uede:-52 #uedo:-59 #uelv:47 #uenm:37 #uere:-26 #ueva:-18 #uevo:-84 #ught:27 #uido:-23 #uien:-40 #uier:41 #uite:30
#uivo:-29 #ular:19 #uldn:-19 #umbe:73 #umer:67 #unfo:142 #unst:-69 #unsu:74 #untr:31 #uphi:-18 #urth:70 #uscr:28
#usly:23 #uste:18 #usua:-40 #utor:44 #vaca:-18 #vide:62 #visa:-43 #voca:-19 #voke:135 #volv:-43 #vuel:36 #wait:-34
#want:119 #week:-23 #what:-30 #when:-69 #wher:-25 #wice:-18 #wife:-32 #wint:-34 #wipe:44 #wish:52 #with:40 #work:-34
#worr:-34 #woul:-22 #wron:-57 #xtea:24 #xted:38 #xtee:143 #xtos:50 #yeah:30 #year:26 #ying:-50 #your:82 #yste:40
#ythi:48 %again_later:-162 %again_later%bad:31 %again_later%bring:-46 %again_later%call_off:-119
%again_later%doubt:-25 %again_later%fails:-25 %again_later%family:30 %again_later%leave_me:-44
%again_later%message:-65 %again_later%money:18 %again_later%on_way:-42 %again_later%phone:44 %again_later%refuse:59
%again_later%wrong_one:136 %agree:-52 %agree%away:21 %agree%bad:20 %agree%bring:-60 %agree%busy:-36
%agree%call_off:74 %agree%car:70 %agree%car_part:-45 %agree%do_it:26 %agree%elsewhere:37 %agree%fails:-25
%agree%gone_car:84 %agree%leave_me:18 %agree%message:-60 %agree%phone:27 %agree%question:31 %agree%refuse:-112
%agree%start_again:-80 %agree%wrong_one:24 %away:55 %away%bring:-41 %away%fails:-32 %away%leave_me:56
%away%message:42 %away%on_way:40 %away%phone:19 %away%season:42 %away%staff:-19 %away%wrong_one:49 %bad:62
%bad%call_off:31 %bad%fails:56 %bad%leave_me:79 %bad%message:45 %bad%phone:30 %bad%wrong_one:28 %bring:-109
%bring%busy:-56 %bring%call_off:-93 %bring%car_part:-94 %bring%elsewhere:28 %bring%fails:-59 %bring%gone_car:31
%bring%leave_me:-21 %bring%meaning:-30 %bring%message:23 %bring%odometer:-65 %bring%on_way:-26 %bring%phone:27
%bring%refuse:-143 %bring%thanks:30 %bring%who:47 %bring%wrong_one:-57 %busy:-121 %busy%fails:-22 %busy%leave_me:-41
%busy%message:-18 %busy%money:-18 %busy%odometer:29 %busy%phone:18 %call_off:157 %call_off%car_part:-71
%call_off%family:-40 %call_off%how_long:28 %call_off%meaning:30 %call_off%message:232 %call_off%money:-30
%call_off%on_way:-43 %call_off%opening:34 %call_off%pay_day:-21 %call_off%phone:-24 %call_off%question:26
%call_off%refuse:-80 %call_off%shift_it:-18 %call_off%start_again:110 %call_off%who:82 %call_off%wrong_one:-86
%car:-23 %car%gone_car:69 %car%leave_me:45 %car%message:100 %car%phone:-23 %car%staff:-21 %car_part:-267
%car_part%fails:-37 %car_part%leave_me:-120 %car_part%message:-118 %car_part%refuse:-67 %do_it:-47
%do_it%elsewhere:44 %do_it%leave_me:67 %do_it%meaning:-24 %do_it%message:55 %do_it%wrong_one:38 %doubt:-56
%doubt%wrong_one:-22 %elsewhere:32 %elsewhere%gone_car:27 %elsewhere%leave_me:32 %elsewhere%message:55
%elsewhere%phone:28 %elsewhere%refuse:18 %elsewhere%who:28 %fails%leave_me:57 %fails%message:20 %fails%money:-23
%fails%phone:60 %fails%question:-36 %fails%season:-24 %fails%smoke_smell:-32 %fails%start_again:-42
%fails%wrong_one:122 %family:-100 %family%leave_me:-21 %family%message:21 %family%odometer:-31 %family%refuse:29
%family%start_again:36 %gone_car:-76 %gone_car%leave_me:58 %gone_car%start_again:-20 %gone_car%wrong_one:-37
%how_long:-59 %how_long%leave_me:-23 %how_long%opening:25 %how_long%question:-21 %leave_me:471 %leave_me%lift:-26
%leave_me%meaning:-53 %leave_me%noise:-20 %leave_me%on_way:-18 %leave_me%opening:-24 %leave_me%pay_day:-29
%leave_me%phone:169 %leave_me%place:-21 %leave_me%refuse:-85 %leave_me%season:-36 %leave_me%smoke_smell:-24
%leave_me%staff:37 %leave_me%start_again:27 %leave_me%thanks:43 %leave_me%who:58 %leave_me%wrong_one:118 %lift:-47
%machine%wrong_one:22 %meaning:-32 %meaning%refuse:25 %message:242 %message%odometer:33 %message%pay_day:-33
%message%question:-105 %message%refuse:236 %message%shift_it:-34 %message%staff:-31 %message%start_again:-54
%message%thanks:85 %money:-105 %money%odometer:-19 %money%question:-24 %money%refuse:22 %money%start_again:23
%noise:-69 %odometer:40 %odometer%opening:-24 %odometer%phone:46 %odometer%question:39 %odometer%wrong_one:111
%on_way:-99 %on_way%wrong_one:51 %opening:-23 %pay_day:-67 %pay_day%season:-31 %phone:-42 %phone%staff:-33
%phone%start_again:19 %phone%wrong_one:-54 %place:-99 %place%question:-47 %question:-237 %question%refuse:94
%question%season:40 %question%staff:-23 %question%start_again:47 %question%who:23 %question%wrong_one:24 %refuse:56
%refuse%shift_it:-23 %refuse%staff:30 %refuse%start_again:196 %refuse%thanks:32 %refuse%who:33 %refuse%wrong_one:37
%season:-63 %season%smoke_smell:-24 %season%wrong_one:-40 %shift_it:-106 %shift_it%wrong_one:18 %smoke_smell:-41
%staff:-35 %staff%wrong_one:33 %start_again:-158 %start_again%thanks:18 %start_again%who:23
%start_again%wrong_one:143 %who:-20 @?:-61 @after_visit:44 @car:-28 @confirm:24 @confirm_stop:281 @later:-26
@nothing:36 @offers:-58 @reading:-61 @times:-292 @walk_in:-50 ^_already:-20 ^_alto:54 ^_baja:30 ^_basta:30 ^_can:-51
^_cancel:178 ^_cancelar:110 ^_cancele:20 ^_cant:-22 ^_car:-47 ^_claro:30 ^_como:-112 ^_de:-74 ^_dejame:26 ^_deje:-88
^_dejen:70 ^_delete:-35 ^_do:80 ^_dont:-92 ^_drop:54 ^_el:-19 ^_end:58 ^_enough:72 ^_ese:-41 ^_estoy:-25 ^_get:75
^_go:101 ^_got:-25 ^_how:-105 ^_i:72 ^_ill:-68 ^_im:28 ^_info:-53 ^_is:-39 ^_it:-26 ^_kill:42 ^_leave:-49 ^_les:24
^_mande:-19 ^_me:-89 ^_my:-97 ^_new:-27 ^_no:-138 ^_nobody:22 ^_not:-112 ^_ok:-24 ^_one:-27 ^_opt:-57 ^_parar:44
^_please:-24 ^_por:37 ^_quien:-21 ^_quiero:-77 ^_quit:97 ^_quiten:-27 ^_quitenme:20 ^_remove:23 ^_revoke:131
^_salir:59 ^_se:-54 ^_si:41 ^_simon:19 ^_sold:42 ^_stop:223 ^_take:42 ^_text:-66 ^_texting:60 ^_that:42 ^_this:-37
^_un:28 ^_unsubscribe:49 ^_what:-76 ^_who:39 ^_wrong:-54 ^_yeah:40 ^_yes:19 ^_yo:20 a:-63 a__is:-21 a__y:21 a_car:28
a_este:46 a_ir:19 a_los:26 a_month:-22 about:-94 about_the:-19 again:55 again_$:19 ahi_$:28 al:-29 alone:36
already:57 already_$:33 already__the:44 already_with:31 also:18 alto:38 alto_$:37 am:-37 am_$:-48 am_i:42 an:-27
and:132 and__dont:18 and__is:20 and__text:-48 and__the:26 and_i:79 and_it:21 and_please:27 and_stop:31 annoying:-33
any:23 any_more:20 anymore_$:-40 anything:57 apaga:-22 aqui:84 aqui_$:92 are:70 are_you:20 as:29 asi:-36 asi_$:-24
asked:28 at:-119 at_work:-19 avisarme:-23 away:58 away_$:72 back:-51 baja:52 baja_$:23 barely:-22 base:47 be:157
be__a:21 be__your:49 be_in:39 be_on:22 been:-33 been__your:-30 been_to:-30 before:-29 before_i:34 being:36 belongs:18
belongs_to:18 better:-18 bien:-36 blocking:19 book:-33 book_me:-31 borre:28 borre_mi:29 borren:63 borrenme:21
bought:-21 bought_it:-20 brakes:-21 brakes__stop:-32 busy:-52 but:-18 by:-94 by_$:-41 by_friday:-24 cabin:-27
cabin_filter:-27 call:-87 call_$:-39 call__me:-42 call_me:-83 call_my:43 came:-20 can:-95 can__be:65 can__stop:-53
can__take:-55 can_stop:28 can_text:-19 can_you:-62 cancel:65 cancel_$:136 cancel__please:-48 cancel_it:-79
cancelar:96 cancelar_$:99 cancelar__cita:-22 cancelen:-27 cancelo:-56 cant:-54 cant_stop:-21 car:29 car_is:26 cel:24
cell:39 celular:19 changed:-18 changing:30 cita:-78 cita_$:-54 cita__favor:-25 cita_por:-25 claro:25 claro__si:26
claro_que:26 come:-20 como:-113 como__hago:-30 como_le:-30 con_los:53 con_mi:-22 consent:34 contact:81 contacten:32
contacten_$:30 contacto:20 cosas:27 country:31 cut:23 datos:53 datos_$:49 daughter:31 de:162 de__base:47 de__en:-18
de__lista:48 de__recordatorios:-23 de__textos:27 de_ahi:29 de_baja:37 de_donde:-18 de_estar:25 de_las:-37
de_mandar:23 de_mi:23 de_nuevo:-81 de_numero:-23 de_su:97 de_sus:24 de_ustedes:20 dejame:26 deje:-91 dejen:58
dejen__estar:25 dejen__mandarme:-20 dejen_de:58 dejenme:35 del:-33 delete__number:19 delete_my:33 dia:-23 dije:46
dije_que:34 dinero:-34 do__contact:35 do__get:-31 do__have:41 do__take:-30 do__want:39 do_i:-59 do_not:189 do_you:-64
does:-25 doesnt:-31 donde:-21 done:24 dont:26 dont__a:42 dont__any:21 dont__it:53 dont__me:80 dont__texting:-114
dont__to:20 dont__your:19 dont_call:-49 dont_do:-28 dont_have:18 dont_need:45 dont_stop:-193 dont_text:57
dont_want:34 drop:57 drop_me:63 early:-34 early_$:-32 el:-110 el_$:-19 el_carro:18 else:69 else_$:80 elsewhere:-26
elsewhere_$:-28 en:-65 en__noche:-44 en_la:-64 en_los:-40 en_otro:19 en_paz:39 end_$:32 ended:-20 equivocado:-19
equivocado__numero:-20 equivocado_de:-21 es:-81 es__mi:-23 es__ya:19 es_para:-26 escriban:31 escriban_$:61
escribir_$:35 escribirme:19 escribirme_$:20 ese:-77 eso:-22 eso_$:-22 esta:-47 esta_bien:-20 estar:24 este:26
este_numero:-18 esto:29 esto_$:33 estos:24 ever:68 ever_$:25 favor:65 feel:-28 filter:-27 fine:-21 for:88 for_me:-44
for_these:24 forever:-18 friday:-41 friday_$:-34 from:138 from__text:47 from_the:38 from_you:32 from_your:53 fue:-48
fuera:22 further:70 get:91 get__number:32 get_me:33 get_my:41 get_off:-34 get_these:33 getting_these:36 go:87
go_away:101 going:-53 going_to:-35 gone:26 good:-25 got:-41 got__cancel:-25 got_in:-25 got_to:26 great:-18 hace:-20
had:-27 had__done:34 had_it:29 hago:-45 hago_para:-37 handled:-25 handled_$:-24 hate:-25 have:-22 have__cancel:-24
have__car:42 have__say:46 have__to:60 have__wrong:20 have_a:32 have_had:-32 have_it:-28 have_the:29 he:-24 hear:31
hearing:21 here:-24 here_$:-31 him:-19 his:-34 hold:-57 horario:-25 horario_$:-25 hours:28 how:-126 how__i:-150
how_do:-160 how_i:-18 how_many:101 i:-27 i__by:-47 i__do:-31 i__getting:36 i__got:-27 i__had:-32 i__in:-31 i__it:68
i__longer:62 i__my:49 i__need:23 i__no:77 i__not:51 i__off:-23 i__out:24 i__smoking:-27 i__stop:-24 i__the:-32
i__these:-87 i__want:88 i__you:57 i_am:-30 i_be:73 i_cant:-25 i_do:44 i_feel:-27 i_get:-20 i_got:19 i_had:18
i_have:-28 i_just:-29 i_like:-76 i_mean:56 i_never:73 i_no:62 i_quit:-27 i_said:90 i_still:39 i_stop:-126 i_want:-26
idea:19 ill:-87 ill_take:-41 im_not:-19 im_out:-20 in:-78 in_$:-128 in_your:35 info:51 info_please:50 interesa:-25
interesa_$:-25 interested:19 interested_$:-38 ir:-38 ir_$:-39 ire:-22 ire_$:-22 is:-32 is_a:-27 is_for:58
is_getting:-32 is_gone:28 is_there:-23 isnt:-92 it:-25 it_$:-31 it__how:-18 it__i:44 it__with:28 it_again:36
it_done:23 it_for:53 it_out:19 jamas:18 job:-42 job_$:-27 joven:19 just:-134 just__on:-44 just__this:-28 just_got:-27
keep:-53 keep_them:-19 kill:42 kindly:40 knock:-21 know:-25 la:-169 la_noche:-44 las:-59 las_llantas:-34 last:-29
last_year:19 le:-31 le__para:-24 le_hago:-31 leave:-94 leave__alone:41 leave_it:-35 leave_me:-31 les:66 les__que:54
les_dije:42 like:-89 list:47 list_$:21 lista:28 live:24 live__the:32 live_in:29 llantas:-36 llantas_$:-34 lo:-38
lol:-85 lol_$:-56 longer:54 longer__to:54 los:-55 los__de:-30 los_mensajes:35 make:-40 manana:-23 mandando:-30
mandando_$:-88 mandar:20 mandarme_recordatorios:-32 mande:-20 manden:53 manden_mas:35 manden_mensajes:-40
manden_nada:51 many:39 many__do:103 many_texts:-60 mas:339 mas_$:105 mas_mensajes:27 mayor:18 me:72 me_$:119 me__a:36
me__am:-46 me__de:-48 me__en:-69 me__i:28 me__in:-18 me__like:-39 me__mas:162 me__mensajes:-36 me__nada:39 me__no:22
me__of:22 me__please:-48 me__por:-36 me__que:18 me__this:29 me__your:37 me_a:-55 me_about:-56 me_again:43 me_and:31
me_at:-21 me_back:-31 me_before:-47 me_contacten:32 me_from:85 me_i:-53 me_in:-25 me_interesa:-21 me_off:141
me_on:-26 me_sirve:-25 me_so:-41 me_the:-18 mean:46 mensaje:-57 mensajes:50 mensajes_$:111 message:-85 message_$:-61
message_me:44 messages:56 messages_$:36 messaging:45 messaging_this:26 mi:52 mi__para:27 mi_cita:-56 mi_contacto:22
mi_numero:116 mi_telefono:36 min:-23 mis:20 money:-25 month:-28 month_is:-22 more:183 more_$:58 more__i:60
more__please:30 more_messages:20 more_texts:22 much:-31 must:-18 muy:-32 my:77 my__are:22 my__dont:30 my__from:21
my__out:70 my__phone:27 my__please:80 my_car:-19 my_cell:32 my_daughter:34 my_info:103 my_number:148 my_phone:26
my_wife:-28 my_work:25 nada:73 nada_$:65 need:-53 need_to:-85 never:55 never__me:36 never__to:35 never_been:-31
never_want:51 new:-44 ni:60 no:42 no_$:-188 no__a:62 no__bien:-21 no__con:21 no__de:-115 no__escriban:-30 no__ese:-20
no__gusta:19 no__interesa:-20 no__ir:-53 no__manden:-21 no__me:-24 no__mensajes:52 no__messages:27 no__para:-31
no__por:110 no__que:69 no__recibir:80 no__texts:26 no__them:-44 no__to:-72 no_es:-70 no_esta:-20 no_gracias:-22
no_i:-48 no_ire:-22 no_keep:-32 no_longer:55 no_los:-40 no_manden:51 no_mas:143 no_me:214 no_more:219 no_need:-77
no_puedo:-38 no_quiero:116 no_sigan:-34 no_trabajo:23 no_vuelvan:37 no_you:-27 noche:-48 noche_$:-48 non:-46
not__in:44 not__me:57 not__to:21 not_at:-18 not_contact:35 not_for:-31 not_going:-25 not_interested:34 now_$:-24
nuevo:-84 nuevo_$:-60 number:74 number_again:44 number_from:30 number_is:42 number_off:19 numero:67 numero_$:58
nunca:18 o:156 of:22 of__system:41 of_the:-21 of_them:29 of_these:33 of_this:-26 of_town:-20 of_your:42 off:186
off_$:96 off__and:-55 off_of:23 off_the:-23 off_this:68 off_your:46 ok_$:27 on:-151 on_$:-47 on__list:-31 on_a:22
on_me:-52 on_the:-26 once:-18 one:-18 one_$:-18 one_of:20 opt:-73 opt_out:37 or:80 out:103 out_$:53 out__town:-19
out__your:31 out_last:43 para:-55 para__no:-19 para_que:-37 parar:28 parar_$:44 paren_$:29 parenle:83 parenle__los:28
parte:30 parte_de:26 paz:39 permiso:18 permission:47 pero:-23 persona:38 phone:40 phone_$:31 phone__to:22
phone_belongs:24 place:26 place_$:32 please:40 please_$:-39 please__texting:21 please__the:-33 please_dont:-58
please_stop:60 please_unsubscribe:25 poner:-18 por:-21 por_favor:35 power:-19 pueden:-42 puedo:-47 puedo_ir:-18
pull:70 puro:-18 que:135 que__borren:37 que__de:29 que__manden:29 que__mi:18 que_me:85 que_paren:18 que_parte:19
que_si:24 querer:-25 quien:-38 quien_me:-20 quiero:46 quiero__a:-32 quiero__de:30 quiero__me:38 quiero__mensajes:-29
quiero_ir:-33 quiero_que:19 quiero_recibir:66 quit:59 quit_$:30 quit_it:68 quit_on:-52 quit_sending:38
quit_smoking:-31 quit_texting:33 quiten:-42 quiten__cita:-35 quiten__numero:33 quitenme:72 quitenme_$:46
quitenme_de:20 read:-19 ready:-21 ready_$:-18 receive_these:54 recibir:54 recordatorios:-35 recordatorios_$:-38
records:18 records_$:19 remember:-18 remember_$:-18 reminders_$:-23 remove:57 remove_$:19 remove_me:19 remove_the:-38
reply:19 report:32 restart:-23 revoke:135 revoke_$:101 robot:26 ruido:-18 said:63 said_no:77 salir:71 salir_$:56
say:94 schedule:-22 schedule_$:-18 se:-91 se_me:-35 see:-27 send:64 send_me:52 sending:62 sending_me:42 shop:-54
shop_$:-41 shops:31 shuts:-19 shuts_off:-19 si_$:43 si__favor:-60 si__no:22 si_por:-60 si_quiero:-30 si_ya:43
sigan:-50 sigan_mandando:-41 sign:-22 simon:19 sin:-19 sin_querer:-25 sirve:-26 sirve_$:-24 smoking:-32 so:-73
so__can:29 so_you:31 sold:38 sold__car:37 sold_the:37 someone:-24 sorry:-31 soy__persona:31 start:-35 start__me:-19
still:50 stop:86 stop_$:284 stop__friday:-24 stop__here:-48 stop__it:-49 stop__texts:-73 stop_by:-89
stop_messaging:20 stop_sending:46 stop_texting:-34 stop_the:-62 stop_these:-41 stop_worrying:-28 stuff:23 stuff_$:32
su:74 su__de:54 su_lista:29 sure:-19 sus:48 sus_mensajes:23 system:39 t:171 take:52 take__off:126 take_me:87 taken:60
tan:-73 tarde:-36 tarde_$:-32 te:-23 telefono:26 tell:-32 tell_me:-31 temprano:-40 temprano_$:-39 text:-73 text_$:-28
text__again:54 text_list:29 text_me:-57 texted:38 textos:55 textos_$:42 texts:-27 texts_$:-44 texts_again:-73
than:-19 thanks:-26 thanks_$:-18 that:-63 that__text:-69 that__the:25 that_is:57 that_last:-41 the:-114
the__again:-25 the__anymore:30 the__filter:-27 the__i:-51 the_cabin:-27 the_car:50 the_country:32 the_job:-27
the_messages:-24 the_reminders:-35 them:-44 them_$:-49 there:28 there_$:23 these:144 these_$:78 these_messages:66
these_texts:-23 thing:22 thing_$:20 this:63 this_$:35 this__a:-20 this__again:54 this__belongs:18 this__is:50
this_isnt:-45 this_list:-22 this_number:55 this_phone:35 tiene:-20 time:-36 times:115 tire:-18 tires:-46 to:-39
to_$:-23 to__daughter:36 to__from:35 to__in:33 to__on:21 to__shop:-25 to__the:-83 to__these:70 to_be:76 to_cancel:-57
to_get:22 to_hear:31 to_my:30 to_say:99 to_stop:-25 to_take:33 to_text:23 to_this:-18 to_your:-30 todo:24 too:-54
too__texts:-18 too_many:-19 too_much:-19 trabajo:23 twice:-18 two:-26 una:-39 unsubscribe:88 unsubscribe_$:48
uphill:-18 us:46 use:51 ustedes:24 ustedes_$:-25 ustedes__mi:22 usually:-40 vendi__carro:22 volver:-42 volver_a:-42
voy__ir:19 vuelvan:39 vuelvan_a:39 want:79 want__be:53 want__hear:31 want_it:-18 want_my:18 want_the:-19 want_to:58
was:-46 way_too:-19 we_dont:23 week:-19 what:-54 what__i:-33 what_do:-31 what_i:25 what_is:-21 whatever:24 when:-68
when_i:-54 who:29 who__this:18 who__you:30 who_are:36 why:27 why__i:43 wife:-32 will__you:31 winter:-42 winter_$:-42
wipe:81 wipe_my:81 wipers:-36 with:26 with__texts:57 with_the:71 work_phone:30 works:-24 works_$:-18 worrying:-28
would:-20 wrong:-57 wrong_guy:20 wrong_number:-18 y:52 y__me:38 y_no:29 ya:59 ya__a:18 ya__con:20 ya__dije:54
ya__es:-24 ya__manden:30 ya__me:93 ya_lo:-22 ya_no:53 ya_parenle:83 yeah:30 yeah_$:29 year:20 year_$:-24 yes:25
yes_$:25 yes__it:-21 yes_all:53 yes_i:25 yes_please:-19 yo:44 you__me:-70 you__stop:58 you__the:24 you_have:44
you_kindly:39 you_people:20 you_take:-65 you_tell:-25 you_text:-50 your:104 your__is:-24 your_list:25 your_records:24
your_reminders:28 your_shop:-46 your_system:31
"""
