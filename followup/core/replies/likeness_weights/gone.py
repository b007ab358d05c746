"""What speaks for and against `gone`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "gone"
BIAS = -169
WEIGHTS = """\
#abaj:-27 #acci:91 #acer:-28 #aded:147 #adez:-44 #afte:25 #agon:36 #agra:-63 #ahor:-31 #aigo:45 #ajaj:26 #aled:116
#algo:-27 #alle:-43 #alon:27 #alre:-31 #amos:53 #ance:50 #anch:42 #anco:32 #ando:-31 #ands:47 #anej:57 #anic:-34
#anoc:28 #ante:-49 #anym:93 #apar:32 #appe:111 #aren:-30 #arki:32 #aron:100 #arra:28 #asse:71 #asta:-34 #atar:57
#atch:44 #ated:71 #aven:41 #back:67 #baja:25 #banc:32 #bank:170 #baro:86 #beat:-28 #befo:-33 #both:46 #boug:132
#brot:35 #call:-34 #came:54 #canc:29 #cani:-34 #cant:-81 #care:-34 #cash:28 #ccid:91 #chan:32 #char:39 #chat:50
#cide:72 #cked:34 #comp:108 #cono:-53 #crap:76 #cuan:28 #dead:-31 #deja:-25 #dent:88 #desh:35 #dezc:-44 #dida:36
#died:-100 #diff:30 #dime:-25 #dimo:94 #divo:61 #does:-45 #dona:63 #done:-196 #driv:56 #drop:-36 #dson:53 #duen:74
#eady:-40 #ease:39 #ecan:-34 #ecke:29 #efor:-33 #egur:38 #ehic:31 #eith:52 #ella:33 #elli:-31 #endi:220 #ener:33
#enga:38 #engo:-194 #enos:-34 #ensa:-81 #enta:27 #entr:47 #epos:36 #erdi:74 #erso:-27 #esia:62 #esol:-34 #espo:-40
#esta:-47 #este:-63 #etti:-31 #eves:-25 #eway:26 #exis:51 #exti:46 #ezco:-44 #fell:49 #fere:29 #ffer:27 #fine:-26
#floo:42 #fore:-33 #foun:49 #fren:-39 #frid:-26 #from:36 #fter:25 #gamo:45 #ganc:43 #gett:-31 #ghwa:-29 #gles:64
#goin:-36 #gone:280 #grad:-61 #gran:62 #grua:25 #guro:39 #hang:34 #hari:25 #hast:-32 #hata:50 #hatc:27 #have:54
#heav:34 #here:-59 #high:-31 #hija:50 #hist:33 #hizo:-51 #hoca:33 #hole:-28 #hone:-29 #hori:-30 #hubb:-42 #hway:-29
#ible:-47 #iday:-26 #iden:90 #iend:-25 #iero:-27 #iffe:30 #ighw:-29 #igle:65 #imos:52 #iner:-28 #insu:35 #into:-39
#iste:50 #isto:45 #ithe:51 #iver:33 #ivew:26 #ivor:61 #jaja:56 #juev:-25 #junk:78 #kids:-34 #kyar:38 #lado:-31
#lant:-26 #last:80 #leas:44 #leav:-47 #lemo:77 #lesi:65 #lets:-25 #levo:31 #like:-34 #ling:-48 #lled:36 #ller:-61
#llin:-39 #long:182 #lood:46 #lrea:-31 #make:-72 #mane:56 #mano:31 #mber:-74 #mbio:28 #meca:-34 #ment:38 #mero:-55
#mine:66 #more:219 #moto:43 #mpra:26 #mpre:45 #much:-27 #nate:55 #ncel:29 #nche:40 #nded:49 #ndie:-26 #ndim:63
#ndso:53 #need:-66 #neit:53 #nejo:60 #ngan:40 #nger:115 #nico:-34 #nkya:38 #nozc:-52 #nsar:-67 #nsur:36 #ntes:-45
#ntre:56 #nuev:-59 #numb:-62 #nume:-52 #nymo:93 #obar:75 #ocar:32 #oday:-45 #oing:-38 #olen:65 #olvi:-29 #ompr:89
#onat:55 #onge:124 #onoz:-52 #orce:29 #orci:32 #osib:-50 #osse:45 #otal:54 #otor:26 #otro:104 #ough:120 #ould:27
#ound:50 #owns:54 #ozco:-52 #paid:35 #para:40 #part:48 #paso:27 #pass:78 #pens:-62 #perd:69 #pers:-32 #phon:-29
#posi:-50 #poss:47 #pped:110 #pued:-60 #qued:88 #quie:-30 #quit:42 #raba:-28 #rade:76 #radi:29 #raig:40 #ranc:27
#rand:56 #rapp:69 #rcio:32 #rdid:40 #read:-48 #reck:28 #rega:55 #repo:90 #reso:-36 #rest:27 #rida:-28 #rite:34
#rive:60 #rkin:32 #roba:89 #rong:-31 #rota:25 #rote:54 #roth:35 #rson:-27 #rted:29 #ruck:28 #rush:32 #says:-36
#scra:88 #segu:35 #sell:-98 #sess:33 #shop:-30 #sibl:-52 #sold:211 #solv:-34 #some:50 #soon:-32 #spos:-35 #ssed:90
#sses:46 #stol:107 #stor:53 #sura:42 #swap:53 #take:-29 #tale:114 #tall:-36 #tarr:50 #teng:-201 #that:139 #them:50
#this:-76 #till:-53 #time:-72 #tire:-29 #toda:-55 #tole:83 #took:163 #tory:42 #tota:54 #trad:151 #trai:57 #tree:27
#treg:56 #truc:28 #ttin:-33 #turn:-26 #twic:-45 #uand:26 #uate:25 #ubby:-42 #uede:-41 #uedo:75 #ueno:73 #ueva:62
#ueve:-33 #uevo:-119 #ught:120 #uier:-25 #umbe:-64 #umer:-52 #unky:38 #uran:34 #used:-42 #ushe:30 #vehi:31 #vend:225
#vewa:26 #vida:29 #ving:-29 #vorc:61 #wago:38 #want:-40 #wapp:43 #went:78 #when:-53 #wice:-45 #will:-57 #with:-43
#wrec:28 #writ:39 #wron:-30 #wrot:54 #xist:51 #xtin:58 #yard:78 #ymor:93 #your:30 %again_later:-103
%again_later%agree:-32 %again_later%call_off:27 %again_later%car:-29 %again_later%car_part:-25 %again_later%do_it:86
%again_later%doubt:-45 %again_later%elsewhere:74 %again_later%family:-63 %again_later%gone_car:46
%again_later%how_long:-31 %again_later%money:50 %again_later%on_way:26 %again_later%pay_day:-26
%again_later%place:-44 %again_later%refuse:-49 %again_later%season:-28 %again_later%shift_it:42
%again_later%start_again:32 %again_later%wrong_one:-27 %agree:-85 %agree%call_off:30 %agree%doubt:34 %agree%fails:26
%agree%family:-29 %agree%gone_car:31 %agree%refuse:55 %agree%wrong_one:51 %away%call_off:-28 %away%car:31
%away%gone_car:25 %bad:-53 %bad%money:-26 %bring:-100 %bring%call_off:-65 %bring%car:71 %bring%fails:28
%bring%family:-37 %bring%gone_car:77 %bring%on_way:-66 %bring%place:-27 %bring%question:-33 %bring%refuse:34
%busy:-28 %call_off:49 %call_off%car:262 %call_off%car_part:-85 %call_off%do_it:-112 %call_off%doubt:-30
%call_off%elsewhere:43 %call_off%fails:-33 %call_off%family:-53 %call_off%gone_car:65 %call_off%how_long:-33
%call_off%message:-39 %call_off%money:76 %call_off%noise:-47 %call_off%phone:-50 %call_off%place:-51
%call_off%shift_it:-43 %call_off%staff:85 %call_off%start_again:32 %call_off%wrong_one:123 %car:223 %car%do_it:27
%car%elsewhere:34 %car%fails:-65 %car%gone_car:233 %car%how_long:40 %car%leave_me:113 %car%message:100 %car%money:46
%car%on_way:66 %car%phone:-47 %car%season:31 %car%shake:-28 %car%shift_it:144 %car%who:30 %car%wrong_one:-29
%car_part:-123 %car_part%fails:-52 %car_part%question:31 %car_part%staff:29 %do_it:-117 %do_it%family:-67
%do_it%gone_car:-181 %do_it%how_long:25 %do_it%money:100 %do_it%odometer:-37 %do_it%question:43 %do_it%refuse:45
%do_it%shift_it:29 %do_it%start_again:83 %do_it%wrong_one:-29 %doubt:-59 %doubt%on_way:-33 %doubt%shift_it:-30
%elsewhere:-50 %elsewhere%gone_car:138 %elsewhere%odometer:-32 %elsewhere%on_way:32 %elsewhere%place:-28
%elsewhere%refuse:39 %elsewhere%shift_it:80 %elsewhere%wrong_one:-42 %fails:-83 %fails%family:34 %fails%gone_car:-83
%fails%leave_me:62 %fails%message:45 %fails%odometer:48 %fails%place:-50 %family:135 %family%gone_car:32
%family%leave_me:25 %family%odometer:71 %family%phone:-46 %gone_car:647 %gone_car%leave_me:40 %gone_car%message:32
%gone_car%money:-95 %gone_car%on_way:-38 %gone_car%phone:-30 %gone_car%refuse:52 %gone_car%season:108
%gone_car%shift_it:59 %gone_car%staff:30 %gone_car%thanks:50 %gone_car%wrong_one:-110 %how_long:-31
%how_long%question:-35 %leave_me%message:56 %leave_me%odometer:32 %leave_me%wrong_one:29 %lift:-31 %machine:-25
%meaning:-65 %message%refuse:-26 %money%question:-47 %money%start_again:102 %noise:-118 %noise%refuse:-33
%odometer%who:26 %on_way:-40 %on_way%question:-25 %on_way%shift_it:25 %phone:-153 %phone%wrong_one:-43 %place:-28
%question:-77 %refuse:-45 %refuse%shift_it:63 %refuse%wrong_one:74 %season:37 %shake:-55 %shift_it%wrong_one:66
%smoke_smell:-50 %staff:29 %staff%wrong_one:63 %thanks:-77 %who:43 %wrong_one:63 @?:-167 @after_visit:-104 @car:-78
@confirm:-119 @day:-50 @later:-89 @odometer:72 @offers:-77 @reading:-179 @time:-74 @times:-71 @walk_in:-45 ^_bank:128
^_can:-80 ^_cant:-46 ^_cuanto:-32 ^_do:-95 ^_donated:48 ^_el:38 ^_ese:26 ^_eso:-27 ^_este:-33 ^_gave:36 ^_got:43
^_i:-53 ^_im:-61 ^_in:-25 ^_is:-96 ^_it:58 ^_la:39 ^_lo:197 ^_me:47 ^_my:61 ^_neither:53 ^_no:-174 ^_not:-53
^_quedo:28 ^_se:90 ^_somebody:30 ^_stolen:26 ^_tengo:-58 ^_that:52 ^_the:-45 ^_this:-35 ^_traded:99 ^_we:53
^_what:-47 ^_will:-38 ^_would:-29 ^_yo:-75 ^_you:-51 a:85 a__car:35 a__iglesia:65 a__now:66 a__one:41 a_car:-95
a_different:35 a_la:107 a_mi:54 a_new:51 a_otro:-25 accident:91 after:35 after_the:44 agradezco:-44 ahorita:-30 al:69
all:-41 already:-31 and:69 and__it:45 and_never:30 anda:25 anoche:28 antes:-42 any_more:26 anymore:93 anymore_$:56
are:-40 asi:32 asi_que:30 ask:-54 at:-39 back:40 back_$:61 back__the:31 back_to:28 baja:30 banco:32 bank:158
bank__it:99 be:-48 before:-33 both:55 both_$:33 bought:132 bought_it:132 bring_it:-29 brother:41 by:-34 call:-27
cambie__una:74 cambie_por:121 cambio:28 came:55 can:-63 can_i:-43 can_my:-48 cant:-81 cant__it:-62 car:61 car_$:-49
car__to:34 car_and:43 car_is:84 care:-31 care_of:-35 carro__los:-40 carro_ni:-38 carro_ya:70 cars_$:-50 cash:28
chocaron:33 chocaron_y:29 compre:52 con__y:29 conozco:-52 conozco_$:-36 cuando:26 de:35 de__para:36 de_baja:35
de_nuevo:-48 dead:-31 del:27 di:116 di_a:48 di_de:49 dia:-39 died:-100 died__the:-46 died_on:-44 different:30
dime:-25 divorce:29 divorce_$:30 divorcio:32 do:-110 do__sell:-48 do__work:32 do_it:-63 does:-27 donated:57
donated__to:38 donated_it:38 done:-195 done_$:-90 done_in:-29 dont__a:-115 dont__it:35 dont__that:101 dont__the:40
dont_have:93 dont_need:-29 dont_want:-29 dos:48 driver:25 driveway:26 drop:-32 drop__off:-26 drop_it:-28 dueno:74
dueno_$:62 el:79 el_dueno:37 el_seguro:45 el_total:-43 en:127 en__taller:-44 en_el:65 en_enero:42 en_la:-34
en_otro:-43 ended:31 enero:43 enero_$:37 es_el:-30 es_mio:81 esa:75 esa_troca:28 ese:210 ese_$:59 ese__lo:71
ese__ya:31 ese_carro:122 ese_ya:42 eso:-27 eso__lo:-32 esta:-29 este:-65 este_numero:-35 ex:191 ex__it:43 ex_wife:40
existe:51 fine:-26 fine_$:-25 for_a:60 for_now:-27 for_that:-56 for_the:-25 found:49 frenos:-29 friday:-25 from:36
from_me:39 fue:101 fyi:30 gave_it:35 get:-71 get_it:-30 getting:-31 going:-36 going_to:-26 gone:277 gone_$:162
got:104 got__done:-26 got__in:45 got__of:172 got_on:-25 got_rid:163 got_to:-67 got_totaled:40 grandson:53 grua:25
hace:39 had:-53 had__done:-43 had_it:-35 has:28 has_it:55 hasta:-32 have:48 have__no:48 have_a:-60 have_it:46
have_that:37 have_the:99 highway:-29 highway_$:-31 hija:42 history:29 hit:34 hizo:-51 hizo_mi:-38 how:-30 hubby:-42
i:-70 i__have:34 i__the:-37 i__to:-40 i_cant:-25 i_drive:44 i_got:-25 i_have:-67 i_let:26 i_sold:52 iglesia:65
ill:-31 im:-98 im_not:-31 in:139 in__divorce:30 in_law:-27 in_the:43 insurance:36 insurance__it:31 into:-39 is:-52
is__a:-29 is__on:-26 is__total:-30 is_fine:-28 is_gone:182 is_got:-28 is_in:28 is_it:-88 is_my:-25 is_not:58
is_that:-28 is_the:-52 is_totaled:32 it:272 it_$:-64 it__a:42 it__after:48 it__by:-31 it__friday:-31 it__got:-28
it__it:-38 it__me:79 it__more:55 it__not:63 it__on:-35 it__the:38 it__to:95 it__totaled:53 it_back:72 it_be:-27
it_died:-47 it_done:-80 it_for:39 it_from:43 it_got:45 it_in:80 it_is:31 it_last:45 it_no:43 it_now:93 it_off:70
it_on:43 it_out:25 it_to:42 it_went:34 jajaja:26 jueves:-25 junkyard:38 junkyard_$:26 just:-31 k:-38 kids:-33
know_$:26 la:198 la__de:26 la__la:32 la__por:73 la_grua:28 la_iglesia:66 lado:-29 las:-43 last:77 last_night:27
le:-60 lease:31 leave:-40 leave_it:-33 let:37 lets:-25 like:-48 lleve:-25 lleve__otro:-25 llevo:31 llevo_$:-33
llevo__grua:30 llevo_a:29 llevo_la:29 lo:258 lo__a:169 lo__al:49 lo__de:43 lo__mi:27 lo__por:119 lo__y:40 lo__yo:-26
lo_agradezco:-43 lo_cambie:-43 lo_choque:26 lo_di:104 lo_hizo:-56 lo_llevo:27 lo_mande:25 lo_que:-32 lo_robaron:65
lo_tiene:46 lo_vendi:132 lo_vendimos:37 lo_voy:-40 longer:128 longer__it:46 longer__the:61 longer_have:62
longer_own:60 los_conozco:-39 los_dos:29 lot:41 make:-61 make__to:-29 make_it:-54 mande:25 manejo:60 me:-41
me__la:-40 me__robaron:70 me_la:41 me_lo:48 me_off:32 mecanico:-34 mecanico_$:-26 mi__se:46 mi_carro:-41 mi_ex:56
mi_hija:46 mine:61 mio:74 more:126 more_$:61 my__one:27 my__says:-29 my_brother:42 my_car:-81 my_ex:95 my_grandson:48
my_new:28 my_wife:-36 need:-85 need_it:-27 neither:53 new:110 new_one:106 ni:-25 ni__conozco:-38 ni_los:-38 no_$:-134
no__carro:-63 no__de:-33 no__esa:28 no__ese:126 no__have:65 no__mio:77 no__own:60 no_es:80 no_existe:51 no_longer:126
no_manejo:59 no_me:-34 no_more:105 no_tengo:-92 no_traigo:30 no_ya:-25 not:-53 not_my:-27 not_the:-26 now:210
now_$:162 nueva:65 nueva_$:58 nuevo:-86 nuevo_$:-74 number:-61 numero:-52 of:102 of_the:70 off:81 off__the:47
off_me:39 off_the:-26 old:58 on:-99 on__highway:-29 on__it:-32 on_it:-53 on_the:-50 one:179 one_in:26 one_is:38
otra:-34 otro:104 otro_$:125 otro_carro:40 otro_lado:-27 otro_taller:-52 our:30 out:50 out_of:36 own:74 own__car:-54
own_a:-54 own_it:65 own_that:74 owns:47 paid:25 para:56 para_otro:33 parking:32 parking_lot:29 paso:27 paso_a:39
passed:75 perdi:35 perdida:36 perdida_total:26 phone:-26 please__my:27 por:223 por_el:30 por_otro:40 por_una:122
posible:-49 posible_$:-48 puedo:-27 quedo:102 quedo_mi:42 quit:36 quit_texting:49 rid:163 rid_of:163 robaron:75
says:-36 scrapped:50 se:77 se__agradezco:-36 se__cambie:-41 se__con:36 se__llevo:97 se__quedo:38 se_fue:51 se_lo:123
seguro:39 sell:-69 sell_used:-45 selling:-28 shop:-31 so:32 sold:218 sold_$:-79 sold__car:53 sold__the:39 sold_but:35
sold_it:133 sold_that:46 sold_the:43 soon:-26 soy_el:33 stolen:65 swapped:43 take_me:38 taller:-60 taller_$:-40
tax_$:-31 tengo:-199 tengo_$:-28 tengo_carro:-66 tengo_esa:27 tengo_otro:32 tengo_que:-28 texting:58 texting_$:49
that:139 that_$:-84 that__is:42 that__sold:25 that_car:90 that_done:-38 that_is:-42 that_one:45 the:145 the__and:64
the__of:-42 the__one:48 the_bank:30 the_bus:-25 the_divorce:30 the_highway:-29 the_new:37 the_old:37 the_total:-41
the_van:64 them:50 there:-31 they__it:26 this:-76 this_number:-39 tiene:27 tiene_mi:46 till:-34 time:-73 to__it:-46
to__the:-34 to_a:38 to_ask:-33 to_my:123 to_the:66 today:-44 today_$:-42 took:163 took__of:-33 took_care:-33
took_it:102 took_the:97 total:-95 total_$:-47 totaled:118 traded:148 traded__in:48 traded_it:64 traigo:45 truck:35
truck_$:-57 twice:-45 twice_today:-47 una:142 uno:28 up:44 use:-28 used:-42 used_cars:-44 van:81 van_$:63 vender:-36
vendi:208 vendi_$:52 vendimos:63 vez:-31 vida:27 voy:-71 voy_a:-61 wagon:36 want:-33 want_it:-27 was:44 we:93
we__that:37 we_have:-29 we_sold:51 went:78 went__the:34 went_to:63 what__the:-34 what__you:29 what_is:-39 when:-47
wife__it:26 will:-57 will_it:-34 with:-41 with_tax:-32 work_on:32 would_i:-27 wrecked:29 write:26 wrong:-30 wrote:54
wrote_it:57 y:71 ya:65 ya__a:30 ya__cambie:-69 ya__es:106 ya__existe:51 ya__lleve:-31 ya__lo:-75 ya__manejo:61
ya__me:-35 ya__otro:59 ya__tengo:95 ya__tiene:27 ya__vendi:52 ya_lo:-93 ya_me:-30 ya_ni:25 ya_no:334 ya_paso:25
ya_se:-77 yo:-110 yo__tengo:-34 yo_ni:-32 yo_no:-42 you:-134 you_$:-27 you__me:-30 you__my:-25 you__on:30
you__used:-45 you_can:31 you_see:25 you_sell:-49 you_work:32 your:30
"""
