"""What speaks for and against `gone`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "gone"
BIAS = -163
WEIGHTS = """\
#abaj:-26 #acci:88 #acer:-27 #aded:134 #adez:-45 #adio:22 #agon:31 #agra:-66 #agua:22 #ahor:-31 #aigo:46 #ajaj:28
#akes:-30 #akin:-23 #aled:115 #algo:-25 #alle:-39 #alon:25 #alre:-27 #amos:49 #ance:49 #anch:41 #anco:32 #anda:27
#andl:-24 #ando:-26 #ands:49 #anej:58 #anic:-34 #ante:-50 #anym:90 #apar:30 #appe:109 #arec:24 #aren:-26 #arki:26
#aron:84 #arra:33 #arre:-23 #asse:76 #asta:-31 #atar:60 #atch:51 #ated:75 #aven:44 #back:73 #baja:27 #banc:33
#bank:162 #baro:68 #beat:-23 #befo:-27 #both:46 #bott:22 #boug:108 #brot:35 #call:-34 #came:47 #canc:25 #cani:-33
#cant:-70 #care:-42 #ccid:89 #chan:25 #char:37 #chat:53 #cide:72 #cked:35 #comp:116 #cono:-52 #cord:24 #crap:83
#cuan:22 #culo:23 #dash:-22 #dead:-32 #dece:-25 #deja:-23 #dent:86 #desh:38 #dezc:-45 #dida:34 #died:-91 #diff:28
#dime:-28 #dimo:95 #dine:-25 #divo:57 #does:-39 #dona:67 #done:-192 #driv:62 #drop:-30 #dson:57 #duen:66 #eady:-37
#ease:44 #ecan:-33 #ecke:28 #edes:-25 #efor:-27 #egre:23 #egur:34 #ehic:31 #eith:43 #elli:-28 #endi:191 #ener:39
#enga:41 #engo:-181 #enos:-32 #ensa:-86 #enta:25 #entr:40 #epos:37 #erdi:65 #erso:-27 #esia:61 #esol:-35 #espo:-38
#esta:-37 #este:-62 #esto:-22 #etti:-31 #ever:-43 #eves:-22 #eway:31 #exis:50 #exti:42 #ezco:-45 #fell:33 #fere:26
#ffer:25 #fine:-25 #fixi:27 #floo:43 #fore:-28 #foun:46 #fren:-36 #frid:-23 #from:33 #gamo:36 #ganc:42 #gave:25
#gett:-31 #ghwa:-35 #gles:60 #goin:-28 #gone:249 #grad:-65 #gran:63 #grua:23 #guag:23 #guro:35 #hang:28 #hari:29
#hast:-30 #hata:53 #hatc:29 #have:46 #heav:33 #here:-54 #hicu:23 #high:-36 #hija:49 #hist:23 #hizo:-52 #hoca:24
#hold:-29 #hone:-37 #hori:-29 #hubb:-40 #hway:-35 #ible:-41 #icie:23 #icul:23 #iday:-23 #iden:88 #iero:-26 #iffe:28
#ight:-25 #ighw:-35 #igle:61 #imos:54 #iner:-28 #insu:32 #into:-34 #iste:41 #isto:37 #ithe:43 #iver:35 #ivew:28
#ivor:57 #ixin:27 #jaja:54 #juev:-22 #junk:74 #kids:-33 #king:-22 #kyar:34 #lado:-29 #lant:-26 #last:78 #leas:49
#leav:-33 #lemo:76 #lesi:61 #lets:-24 #levo:28 #like:-30 #ling:-40 #llas:23 #lled:32 #ller:-60 #llin:-38 #long:171
#lood:47 #lrea:-27 #make:-69 #mane:58 #mano:34 #mark:23 #mber:-69 #mbre:26 #meca:-33 #ment:27 #mero:-52 #mine:67
#more:210 #moto:45 #mpra:31 #mpre:44 #much:-28 #nate:58 #ncel:25 #nche:39 #nded:50 #ndie:-23 #ndim:67 #ndle:-23
#ndso:57 #need:-70 #neit:44 #nejo:63 #ngan:40 #nger:100 #nico:-33 #nino:-22 #nkya:34 #nozc:-52 #nsar:-68 #nsur:32
#ntes:-46 #ntre:49 #nuev:-52 #numb:-58 #nume:-49 #nymo:90 #obar:57 #ocar:23 #oday:-52 #ohio:24 #oing:-29 #olen:53
#olvi:-35 #ompa:22 #ompr:92 #onat:59 #ones:30 #onge:109 #onoz:-52 #orce:31 #orci:25 #orit:-24 #osib:-45 #osse:46
#otal:57 #otor:27 #otro:98 #otto:22 #ough:79 #ound:47 #over:-25 #owns:54 #ozco:-52 #paid:34 #para:39 #part:52
#paso:30 #pass:81 #pens:-60 #perd:60 #pers:-31 #phon:-37 #plea:22 #posi:-46 #poss:49 #pped:110 #pron:-22 #pued:-59
#putt:-25 #qued:88 #quie:-39 #raba:-27 #rade:62 #radi:34 #raig:41 #ranc:22 #rand:59 #rapp:62 #rcio:25 #rdid:34
#read:-46 #reck:28 #rega:46 #regr:23 #reno:-29 #repo:91 #reso:-37 #rest:29 #rida:-28 #rita:-24 #rite:28 #rive:68
#rkin:25 #roba:71 #robo:-23 #rong:-29 #rota:27 #rote:53 #roth:35 #rson:-27 #rted:30 #ruck:24 #rush:36 #said:26
#saqu:22 #says:-32 #scra:97 #segu:31 #sell:-81 #sher:26 #shop:-26 #sibl:-47 #sold:220 #some:49 #soon:-29 #spos:-38
#ssed:91 #sses:47 #stol:98 #stor:42 #sura:39 #swap:58 #take:-30 #tale:116 #tall:-36 #tarr:53 #tede:-25 #teng:-188
#that:131 #them:46 #they:25 #this:-88 #till:-51 #time:-66 #tire:-22 #toda:-61 #tole:72 #took:156 #tory:33 #tota:57
#trab:-24 #trad:141 #trai:63 #tree:28 #treg:50 #truc:24 #ttin:-32 #ttom:22 #twic:-43 #uagu:23 #uand:24 #ubby:-40
#uede:-37 #uedo:72 #ueno:65 #ueva:65 #ueve:-29 #uevo:-114 #ught:97 #uier:-28 #uled:27 #umbe:-58 #umer:-49 #unde:31
#unke:22 #unky:34 #uran:31 #used:-37 #ushe:33 #vehi:31 #vend:189 #very:-24 #vewa:28 #vida:30 #ving:-28 #vorc:57
#wago:31 #want:-37 #wapp:47 #went:56 #when:-50 #wice:-43 #will:-50 #with:-41 #woul:-25 #wrec:28 #writ:33 #wron:-29
#wrot:53 #xing:27 #xist:50 #xtin:55 #yard:77 #ymor:90 %again_later:-115 %again_later%agree:-34
%again_later%call_off:38 %again_later%car:-35 %again_later%car_part:-28 %again_later%do_it:65 %again_later%doubt:-38
%again_later%elsewhere:78 %again_later%family:-64 %again_later%gone_car:37 %again_later%how_long:-29
%again_later%money:42 %again_later%pay_day:-27 %again_later%place:-37 %again_later%refuse:-59 %again_later%season:-34
%again_later%shift_it:49 %again_later%start_again:32 %again_later%wrong_one:-34 %agree:-97 %agree%call_off:26
%agree%doubt:31 %agree%family:-32 %agree%refuse:51 %agree%wrong_one:54 %away%call_off:-24 %away%car:35 %bad:-41
%bad%money:-22 %bring:-93 %bring%call_off:-62 %bring%car:63 %bring%fails:29 %bring%family:-33 %bring%gone_car:55
%bring%on_way:-62 %bring%place:-26 %bring%question:-36 %bring%refuse:33 %busy:-26 %busy%do_it:23 %call_off:53
%call_off%car:251 %call_off%car_part:-73 %call_off%do_it:-120 %call_off%doubt:-26 %call_off%elsewhere:38
%call_off%fails:-24 %call_off%family:-51 %call_off%gone_car:77 %call_off%how_long:-30 %call_off%message:-41
%call_off%money:53 %call_off%noise:-40 %call_off%phone:-44 %call_off%place:-46 %call_off%refuse:-23
%call_off%shift_it:-43 %call_off%staff:69 %call_off%start_again:36 %call_off%who:-23 %call_off%wrong_one:119 %car:204
%car%do_it:25 %car%doubt:-29 %car%elsewhere:43 %car%fails:-68 %car%gone_car:221 %car%how_long:42 %car%leave_me:110
%car%message:103 %car%money:39 %car%noise:-26 %car%on_way:58 %car%phone:-44 %car%shake:-30 %car%shift_it:127
%car%who:34 %car_part:-134 %car_part%fails:-47 %car_part%gone_car:-30 %car_part%staff:31 %car_part%wrong_one:-25
%do_it:-144 %do_it%family:-69 %do_it%gone_car:-190 %do_it%leak:23 %do_it%money:89 %do_it%odometer:-35
%do_it%on_way:25 %do_it%question:46 %do_it%start_again:81 %do_it%wrong_one:-48 %doubt:-59 %doubt%on_way:-33
%elsewhere:-48 %elsewhere%gone_car:143 %elsewhere%odometer:-31 %elsewhere%on_way:37 %elsewhere%place:-24
%elsewhere%refuse:43 %elsewhere%shift_it:82 %elsewhere%who:29 %elsewhere%wrong_one:-32 %fails:-75 %fails%family:34
%fails%gone_car:-74 %fails%leave_me:56 %fails%message:33 %fails%odometer:48 %fails%place:-36 %fails%refuse:-25
%family:153 %family%gone_car:41 %family%odometer:69 %family%phone:-46 %family%question:24 %gone_car:655
%gone_car%leave_me:44 %gone_car%money:-79 %gone_car%on_way:-32 %gone_car%phone:-32 %gone_car%refuse:40
%gone_car%season:86 %gone_car%shift_it:59 %gone_car%staff:33 %gone_car%thanks:38 %gone_car%wrong_one:-103
%how_long:-22 %how_long%question:-31 %leak%refuse:26 %leave_me%message:47 %leave_me%wrong_one:27 %lift:-26
%machine:-23 %meaning:-68 %message%refuse:-34 %message%wrong_one:-36 %money%question:-55 %money%start_again:87
%money%wrong_one:23 %noise:-113 %noise%refuse:-30 %odometer%question:32 %odometer%who:30 %on_way:-24
%on_way%shift_it:29 %phone:-155 %phone%refuse:-22 %phone%staff:-26 %phone%wrong_one:-48 %place%shift_it:-22
%question:-100 %question%refuse:-23 %refuse:-55 %refuse%shift_it:54 %refuse%start_again:-30 %refuse%wrong_one:76
%season%staff:22 %shake:-51 %shift_it%wrong_one:58 %smoke_smell:-36 %staff%wrong_one:60 %start_again%wrong_one:-26
%thanks:-81 %who%wrong_one:-31 %wrong_one:76 @?:-156 @after_visit:-95 @car:-71 @confirm:-118 @confirm_stop:30
@day:-41 @later:-48 @odometer:62 @offers:-85 @reading:-183 @time:-70 @times:-85 @walk_in:-42 ^_a:-22 ^_bank:130
^_can:-74 ^_cant:-39 ^_cuanto:-28 ^_do:-86 ^_donated:51 ^_el:34 ^_es:-25 ^_eso:-26 ^_este:-33 ^_gave:35 ^_got:42
^_had:-32 ^_hold:-22 ^_how:-24 ^_i:-52 ^_im:-55 ^_in:-28 ^_is:-101 ^_it:57 ^_la:32 ^_lo:176 ^_los:26 ^_me:32 ^_my:53
^_neither:44 ^_no:-178 ^_not:-50 ^_quedo:28 ^_se:99 ^_she:25 ^_sold:41 ^_somebody:24 ^_tengo:-56 ^_that:41 ^_the:-44
^_this:-34 ^_traded:85 ^_we:58 ^_what:-45 ^_when:-22 ^_will:-36 ^_yo:-78 ^_you:-52 a:94 a__and:-23 a__car:38 a__no:24
a__now:45 a__one:38 a_car:-87 a_different:34 a_la:102 a_mi:45 a_new:48 a_otro:-22 accident:89 after:29 after_the:44
agencia_$:22 agradezco:-45 ahorita:-29 al:70 all:-44 along:22 already:-27 an__change:25 an_oil:25 and:74 and__it:50
and_i:31 and_never:25 anda:26 antes:-43 any_more:27 anymore:90 anymore_$:61 aparecio:26 aparecio_$:26 are:-41 asi:37
asi_que:34 ask:-59 at:-44 back:44 back_$:58 back__the:29 back_on:-22 back_to:23 baja:32 banco:33 bank:149 be:-28
before:-27 both:48 both_$:24 bottom:22 bought:108 bought_it:108 bring_it:-26 brother:36 brother__law:-25
brother_in:-25 by:-32 call:-29 cambie__una:72 cambie_por:116 came:49 can:-54 can_i:-36 can_my:-43 cant:-70
cant__it:-57 car:71 car_$:-46 car__i:23 car__to:34 car_and:46 car_is:78 car_was:25 care:-38 care__it:-30 care_of:-44
carro_ya:71 cars_$:-46 chocaron:24 compre:49 con__y:23 conozco:-52 conozco_$:-39 cuando:24 cuando_me:24 de:32
de__para:35 de_baja:37 de_mi:-31 de_nuevo:-46 dead:-32 del:30 di:102 di_a:50 di_de:49 dia:-44 did:-33 did_it:-25
died:-91 died__the:-39 died_on:-39 different:28 dime:-28 dinero:-25 divorce:31 do:-114 do__sell:-44 do__work:28
do_it:-59 does_it:-22 donated:61 done:-192 done_$:-87 done_in:-26 done_last:-23 dont__a:-108 dont__it:28
dont__that:104 dont__the:37 dont_have:88 dont_need:-25 dont_own:29 dont_want:-28 dos:45 driver:25 driveway:28
drop:-29 drop__off:-25 drop_it:-27 dueno:66 dueno_$:51 el:76 el__lo:29 el__ni:24 el_dueno:36 el_seguro:41
el_total:-41 en:125 en__taller:-44 en_el:67 en_enero:45 en_la:-32 en_otro:-42 ended:32 enero:44 enero_$:40 es_el:-32
es_mio:63 esa:73 ese:206 ese_$:62 ese__lo:70 ese__ya:26 ese_carro:122 ese_ya:40 eso:-25 eso__lo:-32 eso_ya:-22
esta:-30 este:-64 este_numero:-35 ex:189 existe:51 fine:-25 fine_$:-25 fixing:27 for_a:64 for_now:-27 for_that:-50
for_the:-23 found:46 free:-25 frenos:-27 friday:-22 from:33 from_me:33 fue:89 fyi:27 gave:25 gave_it:32 get:-65
get_it:-28 getting:-31 going:-28 gone:245 gone_$:151 got:97 got__done:-26 got__in:46 got__of:164 got_it:-27
got_on:-22 got_rid:154 got_to:-60 got_totaled:38 grandson:57 grua:23 guagua:23 hace:26 hacer:-24 had:-57
had__done:-44 had_it:-33 has:33 has_it:58 has_the:-24 hasta:-30 have:36 have__car:24 have__no:49 have_a:-52
have_it:33 have_that:39 have_the:96 have_to:-24 he:-23 here:-23 highway:-35 highway_$:-29 hija:41 hit:24 hizo:-52
hizo_mi:-40 hold:-24 how:-31 hubby:-40 i:-50 i__have:36 i__the:-27 i__to:-34 i__up:25 i_drive:45 i_got:-27 i_have:-61
i_let:27 i_sold:46 iglesia:61 ill:-23 im:-101 im__the:-28 im_not:-33 in:136 in_law:-28 in_ohio:24 in_spring:22
in_the:43 insurance:32 insurance__it:25 into:-34 ir:-22 is:-39 is__total:-30 is_fine:-30 is_gone:174 is_got:-27
is_in:24 is_it:-71 is_my:-27 is_not:51 is_that:-32 is_the:-47 is_totaled:32 it:288 it_$:-50 it__a:47 it__after:48
it__by:-31 it__friday:-34 it__got:-27 it__it:-31 it__me:78 it__more:62 it__not:56 it__on:-24 it__the:54 it__to:78
it__totaled:53 it_back:74 it_be:-22 it_died:-40 it_done:-81 it_for:37 it_from:43 it_got:47 it_in:83 it_is:45
it_last:49 it_no:49 it_now:97 it_off:76 it_on:47 it_out:26 it_to:45 it_went:28 jajaja:28 jueves:-22 junkyard:34 k:-38
k_$:-22 kids:-33 la:179 la__en:27 la__la:35 la__por:76 la_grua:26 la_iglesia:62 lado:-28 lado_$:-23 las:-36 last:76
last_night:28 le:-49 lease:33 leave:-30 leave_it:-22 let:37 lets:-24 like:-45 lleve:-22 lleve__otro:-24 llevo:28
llevo_$:-29 llevo_a:27 llevo_la:26 lo:272 lo__a:169 lo__al:54 lo__de:43 lo__mi:37 lo__por:114 lo__y:26 lo__yo:-25
lo_agradezco:-45 lo_cambie:-40 lo_cambio:24 lo_choque:28 lo_di:96 lo_hizo:-58 lo_llevo:25 lo_que:-27 lo_robaron:51
lo_tiene:49 lo_vendi:103 lo_vendimos:40 lo_voy:-39 lol:-25 lol_$:-22 long:28 longer:114 longer__it:53 longer__the:63
longer_have:64 los__los:27 los_conozco:-41 los_dos:28 lot:27 make:-57 make__to:-28 make_it:-51 manejo:63 me:-47
me_$:26 me__el:-31 me__la:-35 me__robaron:50 me_la:39 me_lo:26 me_off:27 mecanico:-33 mecanico_$:-25 mi__se:53
mi_carro:-43 mi_hija:46 mine:62 mio:56 mio_$:22 more:120 more_$:61 my__drop:-22 my__says:-27 my_brother:38 my_car:-85
my_ex:90 my_wife:-38 need:-76 need_it:-24 neither:44 new:105 new_one:89 ni__conozco:-40 ni_el:23 ni_los:-40 no:-31
no_$:-117 no__carro:-66 no__de:-29 no__esa:27 no__ese:125 no__have:67 no__la:24 no__mio:58 no_es:55 no_existe:51
no_longer:118 no_manejo:61 no_me:-25 no_more:93 no_soy:22 no_tengo:-90 no_traigo:30 no_ya:-24 nos:23 not:-58
not_my:-28 not_the:-25 now:189 now_$:140 nueva:66 nueva_$:58 nuevo:-83 nuevo_$:-71 number:-58 numero:-49 of:81
of_the:74 off:79 off__the:47 off_for:-22 off_me:38 off_the:-26 ohio:24 oil_change:24 ok:-28 old:63 on:-80
on__highway:-34 on__it:-35 on_it:-54 on_the:-42 one:175 one_is:35 ones:26 otra:-27 otro:98 otro_$:128 otro_carro:39
otro_lado:-26 otro_taller:-51 our:22 out:51 out_of:40 own:85 own_a:-51 own_it:72 own_that:72 owns:47 paid:34 para:54
para_otro:31 parking:26 parking_lot:22 paso:30 paso_a:41 passed:79 perdi:32 perdida:34 perdida_total:22 phone:-34
place:-25 please:23 please_$:-22 please__my:29 por:208 por_el:25 por_otro:37 por_una:114 posible:-45 posible_$:-44
puedo:-29 putting:-25 que_ya:25 quedo:102 quit:28 quit_texting:44 radio:22 rid:154 rid_of:154 robaron:57 said:26
saque:22 says:-32 scrapped:52 se:90 se__agradezco:-38 se__cambie:-34 se__con:22 se__llevo:86 se__quedo:38 se_fue:44
se_le:-22 se_lo:136 se_me:-22 see:-26 seguro:35 sell:-54 senor:-24 shop:-28 so:59 sold:225 sold_$:-24 sold__car:51
sold__the:28 sold_but:35 sold_it:103 sold_that:37 sold_the:41 some:22 someone_$:-24 son:-27 soon:-26 soy_el:31
stolen:54 su:-23 swapped:47 take_me:32 taller:-60 taller_$:-40 tax:-22 tax_$:-34 tengo:-187 tengo_$:-31
tengo_carro:-64 tengo_otro:36 tengo_que:-26 texting:55 texting_$:50 that:132 that_$:-86 that__is:32 that__sold:26
that_car:86 that_done:-36 that_is:-40 that_one:54 the:148 the__and:58 the__anymore:26 the__of:-43 the__one:43
the__till:-25 the_highway:-34 the_new:35 the_old:33 the_owner:-25 the_total:-30 the_van:68 them:46 there:-31 they:26
they__it:28 this:-88 this_number:-37 tiene:25 till:-33 time:-69 to__it:-45 to__the:-42 to_a:31 to_ask:-39 to_my:114
to_the:70 today:-52 today_$:-50 took:156 took__of:-38 took_care:-38 took_it:96 took_the:101 total:-95 total_$:-51
totaled:116 traded:134 traded__in:49 traded_it:66 traigo:47 tree:22 truck:26 truck_$:-54 twice:-43 twice_today:-47
una:123 under:24 uno:33 up:53 up__a:22 use:-30 used:-37 used_cars:-41 ustedes:-25 van:85 van_$:59 vehiculo:23
vender:-37 vendi:171 vendi_$:45 vendimos:67 vez:-24 vida:27 voy:-70 voy_a:-55 wagon:31 want:-29 was:43 we:87
we__that:40 we_dont:22 we_have:-31 we_sold:45 went:56 went__the:30 went_to:50 what__the:-31 what_is:-33 when:-44
wife__it:30 will:-50 will_it:-32 with:-40 with_tax:-34 work_on:28 would_i:-24 wrecked:29 wrecked_it:22 wrong:-29
wrote:53 wrote_it:56 y:66 ya:76 ya__a:35 ya__cambie:-67 ya__es:78 ya__existe:51 ya__la:32 ya__lleve:-29 ya__lo:-67
ya__me:-30 ya__mi:-25 ya__otro:54 ya__tengo:103 ya__tiene:28 ya__vendi:40 ya_lo:-83 ya_ni:24 ya_no:309 ya_paso:31
ya_se:-69 yo:-108 yo__tengo:-34 yo_ni:-34 yo_no:-42 you:-158 you_$:-23 you__it:-26 you__me:-26 you__my:-23 you__on:26
you__used:-42 you_can:26 you_sell:-45 you_work:28
"""
