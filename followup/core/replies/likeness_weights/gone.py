"""What speaks for and against `gone`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "gone"
BIAS = -144
WEIGHTS = """\
#abaj:-22 #acci:62 #acer:-21 #aded:106 #adez:-33 #adio:18 #agon:25 #agra:-46 #agua:18 #ahor:-24 #aigo:34 #ajaj:23
#akes:-25 #akin:-19 #aled:93 #algo:-19 #alle:-29 #alon:19 #alre:-24 #amos:36 #ance:35 #anch:29 #anco:28 #anda:22
#ande:20 #andl:-20 #ando:-21 #ands:33 #anej:40 #anic:-24 #ante:-36 #anym:72 #apar:23 #appe:88 #arec:18 #aren:-19
#arki:20 #aron:70 #arra:27 #arre:-19 #asse:53 #asta:-26 #atar:48 #atch:41 #ated:58 #aven:31 #back:58 #baja:21
#banc:28 #bank:120 #baro:53 #beat:-18 #befo:-22 #both:35 #boug:81 #brot:26 #call:-29 #came:37 #cani:-24 #cant:-50
#care:-30 #ccid:62 #chan:19 #char:27 #chat:43 #cide:49 #cked:27 #comp:90 #cono:-38 #cord:19 #crap:67 #culo:18
#dead:-26 #deja:-20 #dent:59 #desh:29 #dezc:-33 #dida:27 #died:-66 #diff:19 #dime:-20 #dimo:76 #dine:-20 #divo:45
#does:-30 #dona:52 #done:-159 #dont:23 #driv:41 #drop:-19 #dson:39 #duen:49 #eady:-32 #ease:34 #ecan:-25 #ecke:22
#edes:-21 #efor:-22 #egre:18 #egur:26 #ehic:26 #eith:31 #elli:-21 #endi:163 #ener:30 #enga:29 #engo:-144 #enos:-24
#ensa:-60 #enta:20 #entr:29 #epos:29 #erdi:52 #erso:-22 #esia:44 #esol:-24 #espo:-28 #esta:-29 #este:-46 #esto:-18
#etti:-20 #ever:-33 #eway:24 #exis:38 #exti:31 #ezco:-33 #fell:26 #fere:18 #fixi:21 #floo:35 #fore:-22 #foun:36
#fren:-26 #from:24 #gamo:25 #ganc:30 #gave:23 #gett:-20 #ghwa:-25 #gles:44 #goin:-23 #gone:180 #grad:-45 #gran:45
#guag:18 #guro:27 #hang:21 #hari:21 #hast:-24 #hata:43 #hatc:24 #have:37 #heav:23 #here:-43 #hicu:18 #high:-26
#hija:37 #hist:19 #hizo:-35 #hoca:20 #hold:-20 #hone:-29 #hori:-23 #hubb:-27 #hway:-25 #ible:-26 #icie:18 #icul:18
#iden:61 #iero:-21 #iffe:19 #ight:-19 #ighw:-25 #igle:44 #imos:48 #iner:-22 #insu:26 #into:-26 #iste:30 #isto:30
#ithe:31 #iver:26 #ivew:22 #ivor:45 #ixin:21 #jaja:43 #junk:61 #kids:-26 #king:-19 #kyar:28 #lado:-21 #lant:-21
#last:62 #leas:38 #leav:-25 #lemo:55 #lesi:44 #lets:-19 #levo:23 #like:-25 #ling:-30 #llas:18 #lled:23 #ller:-43
#llin:-28 #long:124 #lood:38 #lrea:-24 #make:-50 #mane:39 #mano:26 #mark:18 #mber:-53 #mbre:20 #mean:-18 #meca:-24
#ment:22 #mero:-39 #mine:48 #more:162 #moto:36 #mpra:25 #mpre:31 #much:-24 #nate:45 #nche:28 #nded:41 #ndim:55
#ndle:-19 #ndso:39 #need:-51 #neit:32 #nejo:43 #ngan:28 #nger:75 #nico:-25 #nino:-18 #nkya:28 #nozc:-37 #nsar:-46
#nsur:26 #ntes:-32 #ntre:37 #nuev:-45 #numb:-44 #nume:-37 #nymo:72 #obar:44 #ocar:19 #oday:-37 #ohio:20 #oing:-25
#olen:43 #olvi:-23 #ompa:20 #ompr:69 #onat:45 #ones:23 #onge:81 #onoz:-37 #orce:25 #orci:21 #orit:-19 #osib:-30
#osse:37 #otal:52 #otor:21 #otro:75 #ough:58 #ound:37 #over:-20 #owns:41 #ozco:-37 #paid:27 #para:27 #part:42
#pase:18 #paso:24 #pass:57 #pens:-39 #perd:48 #pers:-26 #phon:-28 #posi:-30 #poss:39 #pped:88 #pued:-46 #putt:-18
#qued:68 #quie:-35 #raba:-22 #rade:55 #radi:27 #raig:30 #ranc:18 #rand:42 #rapp:50 #rcio:21 #rdid:27 #read:-40
#reck:22 #rega:35 #regr:18 #reno:-22 #repo:72 #reso:-26 #rest:23 #rida:-21 #rita:-19 #rite:22 #rive:49 #rkin:20
#roba:52 #rong:-26 #rota:22 #rote:38 #roth:26 #rson:-22 #rted:24 #rush:29 #said:20 #says:-25 #scra:78 #segu:24
#sell:-60 #sher:21 #shop:-20 #sibl:-31 #sold:184 #some:36 #soon:-21 #spos:-27 #ssed:65 #sses:37 #sted:-18 #stol:76
#stor:34 #sura:31 #swap:47 #take:-23 #tale:94 #tall:-26 #tarr:43 #tede:-21 #teng:-150 #that:109 #them:33 #they:19
#this:-67 #till:-37 #time:-53 #tire:-19 #toda:-44 #tole:55 #took:116 #tory:27 #tota:52 #trab:-20 #trad:112 #trai:47
#tree:23 #treg:38 #ttin:-20 #twic:-29 #uagu:18 #uand:18 #ubby:-27 #uede:-28 #uedo:55 #ueno:48 #ueva:45 #ueve:-22
#uevo:-87 #ught:77 #uier:-24 #uled:21 #umbe:-44 #umer:-37 #unde:24 #unke:19 #unky:28 #uran:25 #used:-27 #ushe:26
#vehi:26 #vend:160 #very:-20 #vewa:22 #vida:24 #ving:-22 #vorc:45 #wago:25 #want:-28 #wapp:39 #went:45 #when:-42
#wice:-29 #will:-38 #with:-31 #woul:-20 #wrec:22 #writ:27 #wron:-26 #wrot:38 #xing:21 #xist:38 #xtin:40 #yard:62
#ymor:72 %again_later:-87 %again_later%agree:-27 %again_later%call_off:29 %again_later%car:-27
%again_later%car_part:-23 %again_later%do_it:42 %again_later%doubt:-30 %again_later%elsewhere:63
%again_later%family:-44 %again_later%gone_car:23 %again_later%how_long:-22 %again_later%money:25
%again_later%pay_day:-20 %again_later%place:-26 %again_later%refuse:-44 %again_later%season:-25
%again_later%shift_it:41 %again_later%start_again:24 %again_later%wrong_one:-22 %agree:-87 %agree%call_off:19
%agree%doubt:23 %agree%family:-25 %agree%refuse:38 %agree%wrong_one:41 %away%call_off:-20 %away%car:28 %bad:-35
%bring:-60 %bring%call_off:-39 %bring%car:49 %bring%fails:22 %bring%family:-20 %bring%gone_car:41 %bring%on_way:-43
%bring%place:-19 %bring%question:-31 %bring%refuse:26 %bring%shift_it:22 %busy:-24 %call_off:57 %call_off%car:195
%call_off%car_part:-59 %call_off%do_it:-98 %call_off%elsewhere:31 %call_off%fails:-20 %call_off%family:-32
%call_off%gone_car:76 %call_off%how_long:-23 %call_off%message:-29 %call_off%money:34 %call_off%noise:-30
%call_off%phone:-37 %call_off%place:-36 %call_off%refuse:-21 %call_off%shift_it:-27 %call_off%staff:54
%call_off%start_again:27 %call_off%wrong_one:89 %car:185 %car%doubt:-23 %car%elsewhere:30 %car%fails:-51
%car%gone_car:200 %car%how_long:29 %car%leave_me:83 %car%message:78 %car%money:29 %car%noise:-21 %car%on_way:45
%car%phone:-33 %car%shake:-22 %car%shift_it:97 %car%who:27 %car_part:-121 %car_part%fails:-40 %car_part%gone_car:-27
%car_part%staff:25 %car_part%wrong_one:-23 %do_it:-134 %do_it%family:-50 %do_it%gone_car:-161 %do_it%leak:18
%do_it%money:63 %do_it%odometer:-24 %do_it%on_way:19 %do_it%question:33 %do_it%start_again:57 %do_it%wrong_one:-42
%doubt:-47 %doubt%on_way:-23 %elsewhere:-28 %elsewhere%gone_car:101 %elsewhere%odometer:-22 %elsewhere%on_way:30
%elsewhere%refuse:33 %elsewhere%shift_it:68 %elsewhere%who:25 %elsewhere%wrong_one:-24 %fails:-61 %fails%family:25
%fails%gone_car:-51 %fails%leave_me:40 %fails%message:23 %fails%odometer:36 %fails%place:-26 %fails%refuse:-21
%family:139 %family%gone_car:43 %family%odometer:59 %family%phone:-32 %family%question:19 %family%wrong_one:19
%gone_car:564 %gone_car%leave_me:34 %gone_car%money:-54 %gone_car%on_way:-24 %gone_car%phone:-26 %gone_car%refuse:40
%gone_car%season:70 %gone_car%shift_it:39 %gone_car%staff:23 %gone_car%thanks:30 %gone_car%wrong_one:-73
%how_long:-27 %how_long%question:-27 %leak%refuse:21 %leave_me%message:34 %leave_me%wrong_one:20 %lift:-22
%machine:-19 %meaning:-56 %message%refuse:-26 %message%wrong_one:-28 %money%question:-42 %money%start_again:61
%noise:-89 %noise%refuse:-24 %odometer%question:25 %odometer%who:24 %on_way:-22 %on_way%shift_it:23 %phone:-125
%phone%staff:-22 %phone%wrong_one:-39 %question:-100 %question%refuse:-24 %question%who:-20 %refuse:-47
%refuse%shift_it:42 %refuse%start_again:-23 %refuse%who:-18 %refuse%wrong_one:62 %season:18 %shake:-39
%shift_it%wrong_one:46 %smoke_smell:-30 %staff%wrong_one:46 %start_again%wrong_one:-19 %thanks:-65 %who%wrong_one:-25
%wrong_one:61 @?:-126 @after_visit:-83 @car:-58 @confirm:-104 @confirm_stop:19 @day:-39 @later:-37 @odometer:47
@offers:-76 @reading:-142 @time:-59 @times:-79 @walk_in:-38 ^_a:-18 ^_bank:96 ^_can:-52 ^_cant:-27 ^_cuanto:-21
^_do:-64 ^_donated:39 ^_el:27 ^_es:-19 ^_ese:19 ^_eso:-19 ^_este:-24 ^_gave:31 ^_got:30 ^_had:-26 ^_how:-20 ^_i:-40
^_im:-42 ^_in:-21 ^_is:-77 ^_it:48 ^_la:23 ^_lo:154 ^_los:20 ^_me:28 ^_my:38 ^_neither:32 ^_no:-136 ^_not:-38
^_quedo:22 ^_se:81 ^_she:20 ^_sold:40 ^_tengo:-45 ^_that:34 ^_the:-32 ^_this:-23 ^_traded:69 ^_we:52 ^_what:-35
^_when:-18 ^_will:-26 ^_yo:-61 ^_you:-43 a:77 a__and:-18 a__car:26 a__no:19 a__now:33 a__one:25 a_car:-62
a_different:23 a_la:75 a_mi:39 a_new:33 accident:62 after:20 after_the:31 agradezco:-33 ahorita:-23 al:58 all:-36
already:-24 an__change:20 an_oil:20 and:55 and__it:41 and_i:24 and_never:19 anda:21 antes:-29 any_more:22 anymore:72
anymore_$:48 aparecio:20 aparecio_$:20 are:-32 asi:29 asi_que:27 ask:-44 at:-34 back:35 back_$:40 back__the:20
baja:26 banco:28 bank:109 be:-27 before:-22 both:37 both_$:19 bought:81 bought_it:81 brother:27 by:-27 call:-24
cambie__una:51 cambie_por:82 came:38 can:-40 can_i:-28 can_my:-28 cant:-50 cant__it:-41 car:67 car_$:-33 car__i:19
car__to:26 car_and:37 car_is:57 car_was:20 care:-27 care__it:-21 care_of:-32 carro_ya:54 cars_$:-34 chocaron:20
compre:35 con__y:19 conozco:-37 conozco_$:-27 cuando:19 cuando_me:20 de:19 de__para:24 de_baja:30 de_mi:-24
de_nuevo:-34 dead:-26 del:23 di:79 di_a:40 di_de:36 dia:-34 did:-27 did_it:-20 died:-66 died__the:-28 died_on:-28
different:19 dime:-20 dinero:-20 divorce:25 do:-86 do__sell:-32 do__work:22 do_it:-43 does_it:-18 donated:47
done:-159 done_$:-72 done__the:-18 done_in:-20 dont:23 dont__a:-74 dont__it:23 dont__that:80 dont__the:28
dont_have:70 dont_own:23 dont_want:-20 dos:35 driveway:22 drop:-18 drop_it:-18 dueno:49 dueno_$:37 el:59 el__lo:24
el__ni:19 el_dueno:25 el_seguro:32 el_total:-32 en:101 en__taller:-31 en_el:52 en_enero:35 en_la:-25 en_otro:-28
ended:25 enero:34 enero_$:31 entregue:18 es_el:-24 es_mio:48 esa:57 ese:154 ese_$:42 ese__lo:53 ese__ya:22
ese_carro:91 ese_ya:27 eso:-20 eso__lo:-23 esta:-23 este:-48 este_numero:-25 ex:139 existe:38 fine_$:-18 fixing:21
for_a:51 for_now:-20 for_that:-34 for_the:-20 found:36 free:-19 frenos:-19 from:24 from_me:25 fue:71 fyi:22 gave:23
gave_it:25 get:-52 get_it:-21 getting:-20 going:-23 gone:177 gone_$:105 got:79 got__done:-21 got__in:38 got__of:120
got_rid:112 got_to:-42 got_totaled:32 grandson:39 guagua:18 hace:22 hacer:-18 had:-47 had__done:-34 had_it:-27 has:28
has_it:44 hasta:-24 have:29 have__car:22 have__no:34 have_a:-36 have_it:24 have_that:32 have_the:70 have_to:-19
he:-18 highway:-25 highway_$:-21 hija:30 hit:18 hizo:-35 hizo_mi:-27 how:-26 hubby:-27 i:-40 i__have:27 i__the:-18
i__to:-26 i_drive:30 i_got:-20 i_have:-44 i_let:22 i_sold:38 iglesia:44 ill:-21 im:-78 im__the:-20 im_not:-23 in:118
in_law:-18 in_ohio:20 in_spring:18 in_the:35 insurance:26 insurance__it:20 into:-25 ir:-18 is:-35 is__total:-22
is_fine:-20 is_gone:124 is_got:-18 is_it:-55 is_my:-19 is_not:36 is_that:-26 is_the:-35 is_totaled:23 it:252 it_$:-23
it__a:40 it__after:34 it__by:-21 it__friday:-23 it__got:-18 it__it:-23 it__me:57 it__more:44 it__not:39 it__the:46
it__to:56 it__totaled:41 it_back:54 it_be:-19 it_died:-29 it_done:-61 it_for:29 it_from:31 it_got:39 it_in:69
it_is:38 it_last:39 it_no:34 it_now:75 it_off:58 it_on:32 it_out:20 it_to:41 it_went:22 jajaja:23 junkyard:28 k:-27
kids:-26 la:135 la__en:21 la__la:27 la__por:54 la_grua:19 la_iglesia:45 lado:-20 las:-31 last:61 last_night:22 le:-39
lease:28 leave:-22 let:28 lets:-19 like:-37 llevo:23 llevo_$:-20 llevo_a:19 llevo_la:20 lo:252 lo__a:134 lo__al:45
lo__de:31 lo__mi:29 lo__por:86 lo__y:22 lo__yo:-19 lo_agradezco:-32 lo_cambie:-27 lo_cambio:19 lo_choque:23 lo_di:73
lo_hizo:-40 lo_llevo:20 lo_que:-21 lo_robaron:41 lo_tiene:35 lo_vendi:88 lo_vendimos:33 lo_voy:-26 long:18 longer:85
longer__it:38 longer__the:46 longer_have:47 los__los:21 los_conozco:-29 los_dos:22 lot:22 make:-41 make__to:-20
make_it:-37 manejo:43 me:-41 me__el:-24 me__la:-28 me__robaron:41 me_la:31 me_lo:24 me_off:21 mecanico:-24
mecanico_$:-18 mi__se:40 mi_carro:-31 mi_hija:34 mine:44 mio:41 more:90 more_$:47 my__says:-20 my_brother:28
my_car:-63 my_ex:65 my_wife:-24 need:-56 neither:32 new:80 new_one:66 ni__conozco:-28 ni_el:19 ni_los:-28 no:-29
no_$:-86 no__carro:-45 no__de:-22 no__esa:22 no__ese:88 no__have:49 no__la:18 no__mio:44 no_es:42 no_existe:38
no_longer:88 no_manejo:42 no_more:67 no_tengo:-66 no_traigo:21 nos:19 not:-46 not_my:-20 now:143 now_$:107 nueva:46
nueva_$:39 nuevo:-64 nuevo_$:-54 number:-44 numero:-37 of:61 of_the:58 off:63 off_$:18 off__the:34 off_me:28
off_the:-20 ohio:20 oil_change:19 ok:-23 old:46 on:-60 on__highway:-25 on__it:-24 on_it:-39 on_the:-33 one:132
one_is:23 ones:21 otra:-19 otro:75 otro_$:89 otro_carro:27 otro_lado:-18 otro_taller:-36 our:18 out:39 out_of:33
own:63 own_a:-35 own_it:52 own_that:52 owns:35 paid:27 para:38 para_otro:21 parking:20 paso:24 paso_a:33 passed:56
perdi:26 perdida:28 perdida_total:19 phone:-26 place:-19 please_$:-19 please__my:23 por:153 por_el:20 por_otro:25
por_una:85 posible:-29 posible_$:-29 puedo:-24 putting:-18 que_ya:20 quedo:79 quit:18 quit_texting:31 rid:112
rid_of:112 robaron:44 said:20 says:-25 scrapped:42 se:75 se__agradezco:-27 se__cambie:-26 se__con:18 se__llevo:65
se__quedo:28 se_fue:36 se_lo:110 se_me:-18 see:-21 seguro:27 sell:-40 shop:-21 so:46 sold:188 sold_$:-19 sold__car:43
sold__the:21 sold_but:27 sold_it:87 sold_that:31 sold_the:35 soon:-19 soy_el:21 stolen:43 su:-18 swapped:39
take_me:25 taller:-43 taller_$:-27 tax_$:-23 tengo:-149 tengo_$:-20 tengo_carro:-44 tengo_otro:25 tengo_que:-22
texting:40 texting_$:35 that:109 that_$:-61 that__is:21 that__sold:21 that_car:72 that_done:-28 that_is:-28
that_one:47 the:119 the__and:46 the__anymore:20 the__of:-30 the__one:34 the_highway:-25 the_new:28 the_old:28
the_total:-21 the_van:52 them:33 there:-24 they:20 they__it:23 this:-67 this_number:-27 tiene:20 till:-23 time:-55
to__it:-35 to__the:-28 to_a:26 to_ask:-26 to_my:89 to_the:55 today:-37 today_$:-35 took:116 took__of:-27
took_care:-27 took_it:71 took_the:74 total:-67 total_$:-35 totaled:94 traded:106 traded__in:42 traded_it:55 traigo:35
truck:18 truck_$:-38 twice:-29 twice_today:-32 una:91 under:19 uno:27 up:39 use:-22 used:-27 used_cars:-29
ustedes:-21 van:64 van_$:42 vehiculo:19 vender:-30 vendi:145 vendi_$:38 vendimos:55 vez:-19 vida:22 voy:-50 voy_a:-38
wagon:25 want:-21 was:34 we:72 we__that:32 we_dont:18 we_have:-24 we_sold:33 went:45 went__the:24 went_to:40
what__the:-23 what_is:-26 when:-37 wife__it:26 will:-38 will_it:-23 with:-30 with_tax:-23 work_on:22 wrecked:23
wrong:-26 wrote:38 wrote_it:41 y:48 ya:71 ya__a:28 ya__cambie:-47 ya__es:55 ya__existe:38 ya__la:23 ya__lleve:-19
ya__lo:-50 ya__me:-21 ya__otro:39 ya__tengo:78 ya__tiene:20 ya__vendi:35 ya_lo:-54 ya_ni:19 ya_no:233 ya_paso:25
ya_se:-51 yo:-85 yo__tengo:-26 yo_ni:-25 yo_no:-34 you:-133 you_$:-19 you__it:-21 you__me:-21 you__my:-18 you__on:21
you__used:-30 you_can:21 you_sell:-33 you_work:22
"""
