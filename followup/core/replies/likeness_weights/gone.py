"""What speaks for and against `gone`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "gone"
BIAS = -144
WEIGHTS = """\
#abaj:-21 #acci:78 #acro:19 #actu:20 #aded:96 #adez:-43 #adio:20 #agon:25 #agra:-55 #aigo:42 #ajaj:31 #akes:-27
#aled:89 #algo:-23 #alle:-40 #alon:24 #alre:-25 #amos:44 #ance:39 #anch:29 #anco:21 #anda:25 #andl:-20 #ando:-21
#ands:41 #anej:51 #anic:-25 #anse:23 #ante:-45 #anym:77 #apar:26 #appe:81 #arec:19 #aren:-18 #arki:28 #aron:64
#arra:29 #asse:69 #asta:-24 #atar:61 #atch:28 #ated:64 #aven:36 #back:64 #baja:21 #banc:22 #bank:124 #baro:46
#beat:-18 #bici:-26 #boat:20 #both:26 #bott:23 #boug:97 #brot:29 #call:-23 #camb:18 #came:33 #canc:18 #cani:-27
#cans:22 #cant:-47 #care:-39 #ccid:78 #char:35 #chat:53 #chec:-26 #cide:63 #cked:27 #comp:110 #cono:-42 #corr:20
#crap:54 #cuan:22 #cuen:18 #dead:-23 #deal:-20 #dent:75 #desc:21 #desd:18 #desh:35 #dezc:-43 #dida:35 #died:-82
#diff:22 #dime:-27 #dimo:84 #dine:-19 #divo:50 #does:-23 #dona:56 #done:-133 #driv:56 #drop:-32 #dson:48 #duen:52
#eady:-33 #ease:46 #ecan:-27 #ecar:-20 #ecke:24 #eden:-19 #edes:-25 #egre:21 #egur:29 #ehic:24 #eith:39 #elli:-27
#else:18 #ende:-27 #endi:153 #ener:33 #enga:29 #engo:-140 #enos:-28 #ensa:-78 #ense:19 #enta:22 #entr:27 #ephe:19
#epos:30 #erdi:69 #erso:-19 #esca:22 #esde:18 #esia:46 #espo:-27 #esta:-39 #este:-49 #esto:-25 #etti:-25 #ever:-34
#eves:-20 #eway:30 #exis:46 #exti:38 #ezco:-43 #fall:-18 #fell:39 #fere:22 #ffer:20 #fine:-21 #fixe:-19 #floo:47
#foun:47 #fren:-28 #frid:-25 #from:34 #gamo:29 #gave:34 #gett:-25 #ghwa:-35 #gles:45 #goin:-27 #gone:184 #grad:-56
#gran:47 #guro:30 #hace:23 #hank:-20 #hast:-25 #hata:53 #have:27 #heav:24 #heca:-20 #here:-48 #herm:19 #hice:19
#high:-36 #hija:29 #hist:26 #hizo:-46 #hold:-26 #hone:-32 #hori:-23 #houl:19 #hubb:-39 #hway:-35 #ible:-36 #icie:22
#iday:-26 #idea:21 #iden:77 #ient:-26 #iffe:22 #ight:-33 #ighw:-35 #igle:46 #iles:-21 #illa:19 #imos:40 #iner:-19
#insu:28 #into:-34 #isnt:-26 #iste:37 #isto:41 #ithe:39 #iver:32 #ivew:25 #ivor:50 #ixed:-19 #jaja:59 #juev:-20
#juni:19 #junk:44 #kids:-28 #kyar:20 #lado:-26 #lant:-20 #last:61 #leas:47 #leav:-29 #lemo:72 #lesi:46 #lets:-22
#levo:26 #like:-27 #ling:-34 #llas:25 #lled:25 #ller:-54 #llin:-33 #long:150 #lood:50 #lrea:-25 #make:-60 #mane:50
#mano:35 #mate:21 #mbar:19 #mber:-60 #mbio:22 #mbre:24 #meca:-27 #ment:28 #mero:-46 #mill:21 #mine:60 #more:185
#moto:33 #mpan:22 #mpra:34 #mpre:33 #much:-25 #nate:45 #ncel:18 #nche:27 #nded:34 #ndie:-21 #ndim:65 #ndle:-19
#ndso:48 #need:-60 #neit:40 #nejo:53 #neph:19 #ngan:28 #nger:87 #nico:-27 #nino:-23 #nked:20 #nkya:20 #noth:-20
#nozc:-41 #nsar:-65 #nsur:29 #ntes:-41 #ntre:37 #nuev:-33 #numb:-48 #nume:-44 #nymo:77 #obar:33 #oday:-47 #ohio:24
#oing:-28 #olen:38 #olvi:-35 #omas:-18 #ompa:30 #ompr:77 #onat:46 #onge:92 #onoz:-41 #orce:24 #orci:26 #orit:-19
#osib:-40 #osse:42 #otal:41 #otat:18 #otro:78 #otto:23 #ough:75 #ound:53 #over:-34 #owns:39 #ozco:-41 #paid:37
#pany:18 #para:39 #part:38 #pase:22 #paso:27 #pass:77 #pens:-53 #perd:64 #pers:-24 #phew:19 #phon:-32 #plet:18
#posi:-40 #poss:43 #pped:84 #prim:-18 #prin:18 #pron:-21 #pued:-47 #qued:77 #quie:-37 #raba:-22 #ract:21 #rade:41
#radi:18 #raig:36 #ranc:22 #rand:44 #rapp:48 #rcio:26 #rdid:35 #read:-38 #reck:26 #rega:39 #regr:21 #reno:-25
#repo:71 #reso:-38 #rest:19 #rida:-33 #rita:-19 #rite:32 #rive:61 #rkin:27 #rman:19 #roba:39 #robo:-18 #rong:-25
#rota:29 #rote:48 #roth:29 #rson:-19 #rted:23 #ruck:20 #rush:26 #said:29 #saqu:18 #says:-23 #scan:22 #scra:59
#segu:26 #sell:-69 #shop:-25 #shou:19 #sibl:-43 #sien:-18 #sold:162 #some:36 #soon:-31 #spos:-26 #spri:18 #ssed:75
#sses:45 #stol:78 #stor:50 #sura:29 #swap:45 #take:-35 #tale:90 #tall:-35 #taro:21 #tarr:53 #tede:-25 #tend:-18
#teng:-141 #that:116 #them:39 #they:23 #this:-89 #till:-47 #time:-48 #tire:-18 #toda:-57 #tole:49 #took:132 #tory:37
#tota:41 #trab:-19 #trad:96 #trai:60 #tras:18 #tree:32 #treg:37 #truc:20 #ttin:-25 #ttom:23 #twic:-39 #uand:29
#ubby:-39 #uede:-32 #uedo:68 #ueno:51 #uent:18 #ueva:61 #ueve:-29 #uevo:-86 #ught:87 #uien:-19 #uier:-25 #umbe:-48
#umer:-44 #unde:40 #unio:19 #unke:24 #unky:20 #uran:27 #used:-30 #ushe:24 #vehi:24 #vend:155 #very:-20 #vewa:25
#vida:26 #vier:-19 #ving:-20 #vorc:50 #wago:25 #want:-38 #wapp:33 #went:57 #were:-19 #what:-25 #when:-53 #wice:-39
#will:-45 #with:-39 #woul:-26 #wrec:26 #writ:32 #wron:-25 #wrot:48 #xist:46 #xtin:49 #yard:35 #ymor:77
%again_later:-84 %again_later%agree:-28 %again_later%call_off:36 %again_later%car:-42 %again_later%car_part:-24
%again_later%do_it:51 %again_later%doubt:-34 %again_later%elsewhere:65 %again_later%family:-52
%again_later%gone_car:25 %again_later%how_long:-27 %again_later%money:43 %again_later%pay_day:-30
%again_later%place:-35 %again_later%refuse:-62 %again_later%season:-33 %again_later%shift_it:50
%again_later%start_again:31 %again_later%wrong_one:-23 %agree:-91 %agree%call_off:40 %agree%doubt:25 %agree%fails:20
%agree%family:-20 %agree%on_way:-18 %agree%refuse:56 %agree%wrong_one:47 %away%car:44 %away%do_it:18 %bad:-43
%bad%car:-18 %bad%money:-18 %bring:-53 %bring%call_off:-60 %bring%car:57 %bring%elsewhere:19 %bring%fails:30
%bring%family:-32 %bring%gone_car:42 %bring%message:20 %bring%odometer:23 %bring%on_way:-41 %bring%place:-26
%bring%question:-31 %bring%refuse:41 %busy:-28 %call_off:46 %call_off%car:185 %call_off%car_part:-63
%call_off%do_it:-101 %call_off%elsewhere:20 %call_off%family:-42 %call_off%gone_car:26 %call_off%how_long:-24
%call_off%message:-38 %call_off%money:42 %call_off%noise:-33 %call_off%phone:-30 %call_off%place:-34
%call_off%shift_it:-41 %call_off%staff:75 %call_off%start_again:35 %call_off%wrong_one:115 %car:177 %car%do_it:29
%car%doubt:-24 %car%elsewhere:29 %car%fails:-50 %car%gone_car:162 %car%how_long:40 %car%leave_me:100 %car%message:95
%car%money:41 %car%noise:-19 %car%odometer:-21 %car%on_way:46 %car%phone:-26 %car%season:30 %car%shake:-22
%car%shift_it:93 %car%who:35 %car%wrong_one:-22 %car_part:-125 %car_part%fails:-44 %car_part%gone_car:-38
%car_part%staff:23 %do_it:-101 %do_it%family:-54 %do_it%gone_car:-148 %do_it%how_long:26 %do_it%leak:19
%do_it%money:74 %do_it%odometer:-23 %do_it%on_way:27 %do_it%question:38 %do_it%refuse:27 %do_it%start_again:70
%do_it%who:22 %do_it%wrong_one:-31 %doubt:-49 %doubt%on_way:-32 %elsewhere:-51 %elsewhere%gone_car:104
%elsewhere%odometer:-21 %elsewhere%on_way:21 %elsewhere%place:-19 %elsewhere%refuse:27 %elsewhere%shift_it:76
%fails:-54 %fails%family:22 %fails%gone_car:-80 %fails%leave_me:46 %fails%message:31 %fails%odometer:35
%fails%place:-34 %family:116 %family%gone_car:45 %family%odometer:71 %family%phone:-34 %family%question:34
%gone_car:532 %gone_car%leave_me:28 %gone_car%money:-83 %gone_car%on_way:-34 %gone_car%phone:-19 %gone_car%refuse:40
%gone_car%season:67 %gone_car%shift_it:30 %gone_car%thanks:33 %gone_car%wrong_one:-91 %how_long%question:-27
%leak%refuse:21 %leak%wrong_one:21 %leave_me%message:45 %leave_me%refuse:18 %leave_me%wrong_one:23 %lift:-18
%machine:-23 %meaning:-56 %message%refuse:-25 %message%start_again:-23 %message%wrong_one:-30 %money%question:-47
%money%start_again:81 %money%wrong_one:23 %noise:-95 %noise%refuse:-27 %noise%wrong_one:-18 %odometer%question:39
%odometer%who:25 %on_way:-30 %on_way%question:-19 %on_way%shift_it:23 %phone:-130 %phone%staff:-26
%phone%wrong_one:-43 %question:-86 %question%refuse:-21 %question%shift_it:20 %question%who:-20 %refuse%shift_it:43
%refuse%start_again:-32 %refuse%thanks:-18 %refuse%wrong_one:60 %season:31 %season%staff:22 %shake:-39
%shift_it%wrong_one:50 %smoke_smell:-39 %staff%wrong_one:63 %start_again%wrong_one:-18 %thanks:-77 %who%wrong_one:-20
%wrong_one:66 @?:-129 @after_visit:-64 @car:-72 @confirm:-138 @day:-31 @later:-42 @odometer:45 @offers:-94
@reading:-164 @times:-78 @walk_in:-37 ^_can:-69 ^_cant:-24 ^_cuanto:-18 ^_desde:19 ^_do:-72 ^_el:33 ^_es:-21
^_este:-25 ^_gave:30 ^_got:18 ^_had:-18 ^_hold:-20 ^_how:-22 ^_i:-47 ^_im:-52 ^_in:-21 ^_is:-79 ^_it:24 ^_la:31
^_leave:-18 ^_lets:-19 ^_lo:141 ^_los:30 ^_me:36 ^_my:35 ^_neither:40 ^_no:-147 ^_not:-32 ^_quedo:30 ^_se:62
^_sedan:-18 ^_she:31 ^_si:-18 ^_someone:18 ^_tengo:-38 ^_that:38 ^_the:-38 ^_this:-39 ^_took:-21 ^_traded:62 ^_we:47
^_what:-38 ^_when:-18 ^_will:-34 ^_would:-20 ^_yo:-53 ^_you:-42 a:86 a__and:-19 a__car:33 a__for:-19 a__lado:-22
a__no:24 a__now:27 a__one:30 a_car:-82 a_different:28 a_la:88 a_mi:39 a_new:45 a_otro:-23 accident:78 across:19
after:18 after_the:36 agradezco:-43 ahorita:-23 al:64 all:-43 already:-25 and:56 and__is:-23 and__it:44 and_i:21
and_never:27 and_the:23 anda:23 ando:-22 antes:-37 any:21 any_more:31 anymore:77 anymore_$:48 are:-36 asi:25
asi_que:20 ask:-53 at:-42 back:41 back_$:53 back__the:19 back_on:-23 baja:26 banco:22 bank:110 be:-22 bici:-26
blue_one:20 boat:20 both:27 both_$:21 bottom:23 bought:97 bought_it:98 brother:29 by:-29 call:-21 cambie_por:96
cambio:23 came:35 can:-70 can_i:-32 can_my:-36 cancel:18 cancel_it:19 cant:-47 cant__it:-42 car:56 car_$:-21
car__to:22 car__totaled:19 car_and:36 car_is:68 car_was:27 care:-34 care_of:-39 carro__lo:18 carro_ya:53 cars_$:-41
company:18 compre:33 conozco:-41 conozco_$:-37 cuando:29 cuando_me:28 days_$:19 de:46 de__para:30 de_baja:31
de_los:18 de_mi:-28 de_nuevo:-34 dead:-23 desde:18 di:73 di_de:36 dia:-30 did:-30 did_it:-21 died:-82 died__the:-39
different:23 dime:-27 dinero:-19 do:-104 do__sell:-37 do_it:-40 do_you:-27 donated:48 done:-132 done_$:-62
done_in:-20 dont__a:-101 dont__it:22 dont__that:91 dont__the:27 dont_have:71 dont_need:-21 dont_want:-25 dos:45
driver:20 driveway:25 drop:-31 drop__off:-23 drop_it:-24 dueno:52 dueno_$:43 el:76 el__ese:18 el__lo:23 el__pasado:18
el__y:25 el_carro:-18 el_dueno:27 el_total:-33 en:118 en__de:19 en__parte:-20 en__taller:-43 en_el:68 en_enero:35
en_la:-25 en_otra:-21 en_otro:-36 en_paz:21 enero:34 enero_$:29 es_el:-23 es_mio:50 esa:43 ese:171 ese_$:55
ese__lo:55 ese__ya:19 ese_carro:102 eso__lo:-29 esta:-24 esta_en:20 este:-51 este_numero:-29 ex:140 fell:25 fine:-21
fine_$:-25 fixed:-19 for_a:44 for_now:-26 for_that:-46 found:47 frenos:-23 friday:-25 friday_$:-20 from:34 from_me:30
fue:83 fyi:26 gave:34 gave_it:22 get:-49 get_it:-24 getting:-25 going:-27 going_to:-19 gone:184 gone_$:114 got:74
got__done:-18 got__in:29 got__of:131 got_it:-25 got_on:-20 got_rid:118 got_to:-53 got_totaled:29 hace:36 had:-30
had__done:-31 had_it:-25 has:23 has_it:40 has_the:-20 hasta:-25 have_a:-48 have_it:34 have_someone:-21 have_that:34
have_the:67 he:-20 here:-19 highway:-35 highway_$:-29 hija:29 history:21 hizo:-46 hizo_mi:-39 hold:-21 how:-27
hubby:-39 i:-37 i__have:32 i__the:-29 i__to:-29 i__up:19 i_drive:41 i_got:-27 i_have:-49 i_let:20 i_sold:30 idea:21
iglesia:46 ill:-20 im:-92 im__the:-27 im_not:-32 in:113 in_law:-23 insurance:29 insurance__it:18 into:-34 is:-25
is__a:-19 is__in:19 is__on:-23 is__total:-22 is_fine:-29 is_gone:131 is_got:-29 is_it:-56 is_my:-30 is_not:46
is_that:-26 is_the:-36 isnt:-26 it:245 it_$:-36 it__a:29 it__after:40 it__by:-25 it__for:19 it__friday:-30
it__got:-29 it__i:22 it__it:-28 it__me:65 it__not:46 it__the:44 it__to:73 it__totaled:38 it_back:79 it_died:-38
it_done:-55 it_for:20 it_got:44 it_in:60 it_is:31 it_now:66 it_off:46 it_on:41 it_out:28 it_to:24 it_went:29
jajaja:31 jueves:-20 jueves_$:-18 junio:19 junked:21 junkyard:20 k:-33 k_$:-23 kids:-28 la:143 la__el:18 la__en:19
la__la:35 la__por:74 la_iglesia:47 lado:-25 lado_$:-21 last:59 last_month:22 le:-41 lease:40 leave:-27 leave_it:-20
let:26 lets:-22 like:-44 lleve:-20 lleve__otro:-22 llevo:26 llevo_$:-19 llevo_a:19 lo:234 lo__a:139 lo__al:47
lo__de:44 lo__hace:19 lo__mi:24 lo__por:91 lo__yo:-21 lo_cambie:-43 lo_cambio:26 lo_choque:25 lo_di:75 lo_hizo:-52
lo_lleve:-18 lo_mande:19 lo_que:-21 lo_tiene:42 lo_vendi:98 lo_vendimos:43 lo_voy:-33 lol:-25 lol_$:-20 long:27
longer:97 longer__it:49 longer__the:54 longer_have:54 los:23 los__me:19 los_conozco:-38 los_dos:23 lot:30 make:-49
make__to:-31 make_it:-47 man:20 mande:18 manejo:53 me:-41 me_$:22 me__el:-32 me__la:-32 me_in:-22 me_la:38 me_lo:21
mecanico:-27 mecanico_$:-21 mi__choco:-18 mi__se:51 mi_carro:-36 mi_hija:35 miles:-21 mine:56 mio:46 mio_$:22
more:109 more_$:52 my:20 my__in:-20 my__says:-19 my_brother:30 my_car:-59 my_ex:68 my_wife:-33 need:-65 need_it:-20
neither:40 nephew:19 new:79 new_one:53 ni__conozco:-37 ni_los:-36 no:-24 no_$:-97 no__carro:-62 no__de:-26 no__ese:95
no__have:57 no__it:21 no__la:18 no_es:48 no_longer:101 no_manejo:53 no_me:-21 no_more:77 no_tengo:-88 no_traigo:24
no_ya:-18 nos:24 not:-35 not_my:-19 not_the:-22 now:174 now_$:119 nueva:64 nueva_$:54 nuevo:-67 nuevo_$:-59
number:-48 numero:-44 of:66 of_the:59 off:57 off__now:-19 off__the:41 off_for:-20 off_me:32 ohio:24 ok:-18 old:50
on:-86 on__highway:-35 on_it:-48 on_the:-46 one:146 one_is:31 otro:78 otro_$:104 otro_carro:25 otro_lado:-24
otro_taller:-45 our:22 out:44 out__the:24 out_of:30 own:55 owns:31 paid:37 paid_$:22 para:54 para_otro:29 parking:28
parking_lot:23 paso:27 paso_a:37 passed:69 paz:21 perdi:35 perdida:35 perdida_total:25 phone:-31 pie:19 place:-22
please__my:29 por:198 por_el:27 por_un:19 por_una:109 posible:-39 posible_$:-39 pueden:-19 puedo:-22 que_lo:18
que_ya:24 quedo:90 quit:25 quit_texting:39 radio:19 rid:118 rid_of:118 robaron:33 said:29 saque:18 says:-23
scrapped:37 se:73 se__cambie:-29 se__con:22 se__hizo:-18 se__llevo:63 se_fue:44 se_le:-19 se_lo:97 se_quedo:18
see:-25 seguro:30 sell:-44 shop:-19 should:19 so:20 sold:164 sold_$:-23 sold__car:43 sold__the:24 sold_it:78
sold_that:22 sold_the:38 son:-25 soon:-27 soy_el:23 spring:18 stolen:39 su:-18 swapped:33 take:-18 taller:-53
taller_$:-38 tax_$:-31 tengo:-140 tengo_$:-27 tengo_carro:-59 tengo_que:-18 texting:49 texting_$:45 texts_$:-20
that:116 that_$:-70 that__is:28 that_car:50 that_done:-26 that_is:-21 that_one:49 the:119 the__and:64 the__anymore:21
the__for:-25 the__got:18 the__of:-31 the__one:27 the_car:20 the_highway:-35 the_new:19 the_old:21 the_owner:-25
the_total:-22 the_van:52 them:39 there:-32 there_$:-20 these_days:21 they:24 they__it:27 this:-89 this_number:-29
till:-30 time:-52 time_$:-18 to__it:-34 to__the:-32 to_a:25 to_ask:-37 to_my:96 to_the:64 today:-47 today_$:-47
took:132 took__of:-38 took__to:-19 took_care:-37 took_it:79 took_the:95 total:-75 total_$:-38 totaled:90 traded:96
traded__in:36 traded_it:57 traigo:42 tree:26 truck:22 truck_$:-44 twice:-39 twice_today:-44 un:27 una:106 under:33
uno:20 up:20 use:-26 used:-30 ustedes:-25 van:58 vender:-34 vendi:135 vendi_$:39 vendimos:65 vez:-18 vida:23 voy:-54
voy_a:-48 wagon:25 want:-30 want_it:-20 was:54 we:72 we__that:35 we_have:-28 went:57 went__the:32 went_to:46 were:-19
what:-24 what__the:-24 what_is:-32 when:-46 will:-45 will_it:-30 with:-38 would:-19 would_i:-21 wrong:-25 wrote:48
wrote_it:48 y:68 y__en:23 y__no:18 ya:55 ya__a:28 ya__cambie:-60 ya__de:19 ya__en:20 ya__es:61 ya__la:28
ya__lleve:-29 ya__lo:-53 ya__me:-19 ya__mi:-23 ya__tengo:65 ya__tiene:23 ya__vendi:40 ya_lo:-75 ya_me:-23 ya_no:250
ya_paso:25 ya_se:-56 yes:-22 yo:-89 yo_$:-18 yo__tengo:-22 yo_ni:-24 yo_no:-29 you:-160 you__it:-22 you__the:-21
you_sell:-38
"""
