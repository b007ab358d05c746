"""What speaks for and against `gone`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "gone"
BIAS = -184
WEIGHTS = """\
#abaj:-30 #acci:99 #acer:-35 #aded:163 #adez:-50 #afte:25 #agon:40 #agra:-72 #ahor:-41 #aigo:50 #ajaj:30 #aled:131
#algo:-30 #alle:-52 #alon:30 #alre:-35 #amos:54 #anan:-25 #ance:54 #anch:43 #anco:34 #anda:27 #ande:28 #andl:-27
#ando:-37 #ands:52 #anej:61 #ange:28 #anic:-38 #anoc:31 #anse:26 #ante:-54 #anym:97 #apar:30 #appe:128 #arch:25
#aren:-33 #arki:36 #aron:108 #arra:31 #asse:79 #asta:-41 #atar:65 #atch:48 #ated:78 #atem:26 #ater:-27 #aule:42
#auto:27 #aven:57 #back:78 #baja:29 #bajo:-25 #banc:34 #bank:189 #baro:93 #beat:-31 #befo:-38 #bici:-25 #both:52
#bott:31 #boug:147 #brot:29 #call:-40 #came:72 #canc:28 #cani:-39 #cant:-89 #care:-40 #cars:-36 #cash:32 #ccid:100
#chan:38 #char:46 #chat:57 #chec:-27 #cide:77 #cked:38 #comp:116 #cono:-57 #cord:26 #crap:87 #cuan:31 #culo:25
#dead:-37 #dece:-26 #deja:-30 #dent:96 #desh:40 #dezc:-50 #dida:38 #died:-105 #diff:32 #dime:-28 #dimo:101 #dine:-27
#divo:70 #does:-52 #dona:70 #done:-232 #driv:57 #drop:-36 #dson:60 #duen:81 #eady:-46 #ease:40 #eate:-25 #ecan:-39
#ecke:33 #efor:-38 #egre:33 #egur:42 #ehic:33 #eith:52 #ella:39 #elli:-34 #emal:26 #endi:243 #ener:42 #enga:38
#engo:-213 #enos:-35 #ensa:-92 #enta:37 #entr:46 #epos:42 #equi:-27 #erdi:81 #erso:-29 #esia:69 #esol:-36 #espo:-45
#esta:-45 #este:-72 #etti:-31 #eves:-28 #eway:33 #exis:55 #exti:47 #ezco:-50 #fell:58 #fere:31 #ffer:29 #fine:-27
#fire:27 #fixi:28 #floo:47 #fore:-39 #foun:57 #fren:-40 #frid:-31 #from:36 #fter:25 #gamo:46 #ganc:44 #gett:-31
#ghwa:-30 #gles:72 #goin:-49 #gone:286 #grad:-70 #gran:66 #grua:30 #guag:26 #guat:26 #guro:44 #hang:39 #hari:29
#hast:-36 #hata:57 #hatc:31 #haul:32 #have:70 #heav:37 #here:-65 #hicu:25 #high:-31 #hija:58 #hist:38 #hizo:-53
#hoca:36 #hole:-31 #hone:-32 #hori:-41 #hubb:-45 #hway:-30 #ible:-48 #icul:25 #iday:-31 #iden:99 #iend:-25 #iero:-27
#iffe:32 #ighw:-30 #igle:73 #imos:56 #iner:-32 #iniv:26 #insu:42 #into:-44 #iste:53 #isto:52 #ithe:52 #ivan:26
#iver:36 #ivew:31 #ivoc:-26 #ivor:70 #ixin:28 #jaja:69 #juev:-28 #junk:91 #kids:-37 #kyar:45 #lado:-35 #lant:-27
#last:101 #leas:38 #leav:-52 #lemo:82 #lesi:73 #lets:-27 #leva:-26 #levo:30 #like:-38 #ling:-53 #lled:39 #ller:-69
#llin:-43 #long:189 #lood:52 #lrea:-35 #make:-77 #mana:-30 #mane:60 #mano:30 #mber:-80 #mbio:32 #meca:-39 #ment:42
#mero:-63 #mine:71 #mini:26 #more:227 #moto:49 #mpra:30 #mpre:48 #much:-29 #nate:61 #ncel:28 #nche:41 #nded:54
#ndie:-29 #ndim:70 #ndle:-27 #ndso:60 #need:-66 #neit:54 #nejo:64 #nero:25 #neta:25 #ngan:41 #nger:121 #nico:-39
#niva:26 #nkya:45 #nozc:-56 #nsar:-77 #nsur:42 #ntes:-49 #ntre:56 #nuev:-65 #numb:-66 #nume:-60 #nymo:97 #obar:81
#ocad:-25 #ocar:36 #oday:-49 #ohio:27 #oing:-52 #olen:75 #olvi:-31 #ompr:96 #onat:61 #onet:25 #onge:130 #onoz:-56
#orce:35 #orci:35 #orit:-35 #osib:-52 #osse:53 #otal:59 #otor:30 #otro:114 #otto:31 #ough:132 #ould:31 #ound:60
#owns:58 #ozco:-56 #paid:41 #para:43 #part:54 #paso:32 #pass:87 #pens:-71 #perd:75 #pers:-35 #phon:-32 #pole:27
#posi:-53 #poss:56 #pped:126 #pued:-66 #qued:95 #quie:-32 #quit:39 #quiv:-26 #raba:-32 #ract:26 #rade:80 #radi:31
#raig:44 #ranc:33 #rand:59 #rapp:79 #rcio:35 #rdid:43 #read:-55 #rece:-27 #reck:31 #rega:57 #regr:33 #repo:107
#reso:-38 #rest:32 #rida:-34 #rita:-35 #rite:38 #rive:65 #rkin:35 #roba:96 #robo:-25 #rong:-33 #rota:28 #rote:58
#roth:29 #rson:-29 #rted:33 #ruck:42 #rush:36 #said:26 #saqu:25 #says:-45 #scra:100 #segu:40 #sell:-103 #sess:39
#sher:27 #shop:-34 #sibl:-54 #sold:215 #solv:-36 #some:56 #soon:-33 #spos:-39 #ssed:101 #sses:54 #ster:28 #stol:119
#stor:61 #sura:49 #swap:62 #take:-35 #tale:128 #tall:-41 #tarr:57 #teng:-220 #that:144 #them:62 #they:25 #this:-82
#till:-66 #time:-80 #tire:-34 #toda:-61 #tole:92 #took:181 #tory:48 #tota:59 #trab:-25 #trad:165 #trai:64 #tree:32
#treg:57 #truc:42 #ttin:-35 #ttom:31 #turn:-30 #twic:-50 #uagu:26 #uand:27 #uate:28 #ubby:-45 #uede:-44 #uedo:79
#ueno:80 #ueva:67 #ueve:-38 #uevo:-128 #ught:137 #uier:-26 #uivo:-26 #uled:44 #umbe:-68 #umer:-60 #unke:26 #unky:45
#uran:40 #used:-40 #ushe:34 #vehi:33 #vend:245 #vewa:31 #vida:33 #vier:-26 #ving:-35 #voca:-25 #vorc:70 #wago:42
#want:-40 #wapp:51 #went:95 #were:-31 #when:-61 #wice:-50 #will:-64 #with:-46 #wrec:31 #writ:44 #wron:-33 #wrot:59
#xing:28 #xist:55 #xtin:61 #yard:89 #year:33 #ymor:97 #your:25 %again_later:-133 %again_later%agree:-36
%again_later%call_off:25 %again_later%car:-34 %again_later%car_part:-26 %again_later%do_it:94 %again_later%doubt:-51
%again_later%elsewhere:79 %again_later%family:-75 %again_later%gone_car:61 %again_later%how_long:-32
%again_later%money:49 %again_later%on_way:32 %again_later%pay_day:-32 %again_later%place:-48 %again_later%refuse:-59
%again_later%season:-36 %again_later%shift_it:42 %again_later%start_again:37 %again_later%wrong_one:-29 %agree:-97
%agree%call_off:33 %agree%doubt:37 %agree%fails:28 %agree%family:-31 %agree%gone_car:31 %agree%leave_me:27
%agree%refuse:57 %agree%wrong_one:57 %away%call_off:-26 %away%car:35 %away%gone_car:30 %bad:-61 %bad%money:-30
%bring:-107 %bring%call_off:-69 %bring%car:81 %bring%elsewhere:27 %bring%fails:30 %bring%family:-40
%bring%gone_car:86 %bring%leave_me:27 %bring%message:29 %bring%on_way:-73 %bring%place:-29 %bring%question:-40
%bring%refuse:36 %busy:-30 %call_off:60 %call_off%car:293 %call_off%car_part:-96 %call_off%do_it:-124
%call_off%doubt:-35 %call_off%elsewhere:54 %call_off%fails:-41 %call_off%family:-62 %call_off%gone_car:81
%call_off%how_long:-38 %call_off%leave_me:31 %call_off%message:-37 %call_off%money:81 %call_off%noise:-53
%call_off%pay_day:-25 %call_off%phone:-55 %call_off%place:-57 %call_off%refuse:-26 %call_off%shift_it:-43
%call_off%staff:94 %call_off%start_again:39 %call_off%wrong_one:128 %car:245 %car%do_it:42 %car%elsewhere:40
%car%fails:-79 %car%gone_car:277 %car%how_long:36 %car%leave_me:123 %car%message:110 %car%money:49 %car%noise:-26
%car%on_way:70 %car%phone:-51 %car%refuse:30 %car%season:31 %car%shake:-32 %car%shift_it:167 %car%who:34
%car_part:-133 %car_part%fails:-60 %car_part%gone_car:-28 %car_part%question:36 %car_part%staff:32 %do_it:-116
%do_it%family:-68 %do_it%gone_car:-194 %do_it%how_long:28 %do_it%money:109 %do_it%odometer:-37 %do_it%question:56
%do_it%refuse:52 %do_it%shift_it:39 %do_it%start_again:88 %do_it%wrong_one:-36 %doubt:-72 %doubt%on_way:-37
%doubt%shift_it:-34 %elsewhere:-57 %elsewhere%gone_car:153 %elsewhere%odometer:-29 %elsewhere%on_way:38
%elsewhere%place:-31 %elsewhere%refuse:43 %elsewhere%shift_it:86 %elsewhere%who:27 %elsewhere%wrong_one:-49
%fails:-97 %fails%family:37 %fails%gone_car:-90 %fails%leave_me:65 %fails%message:45 %fails%odometer:49
%fails%place:-56 %fails%refuse:-26 %family:142 %family%gone_car:45 %family%leave_me:32 %family%odometer:74
%family%phone:-51 %gone_car:705 %gone_car%leave_me:54 %gone_car%message:52 %gone_car%money:-106
%gone_car%odometer:-26 %gone_car%on_way:-45 %gone_car%phone:-35 %gone_car%refuse:63 %gone_car%season:117
%gone_car%shift_it:67 %gone_car%staff:27 %gone_car%thanks:55 %gone_car%wrong_one:-108 %how_long:-42
%how_long%question:-38 %leak%refuse:26 %leak%wrong_one:25 %leave_me:32 %leave_me%message:73 %leave_me%odometer:36
%leave_me%wrong_one:35 %lift:-40 %machine:-30 %meaning:-74 %message%refuse:-37 %message%wrong_one:-25
%money%question:-52 %money%start_again:110 %money%wrong_one:27 %noise:-133 %noise%refuse:-38 %odometer%question:28
%odometer%who:30 %on_way:-45 %on_way%question:-28 %on_way%shift_it:30 %phone:-169 %phone%staff:-26
%phone%wrong_one:-48 %place:-30 %question:-80 %question%shift_it:26 %refuse:-56 %refuse%shift_it:71
%refuse%wrong_one:70 %season:45 %shake:-64 %shift_it%wrong_one:73 %smoke_smell:-47 %staff:28 %staff%wrong_one:65
%start_again%wrong_one:-27 %thanks:-85 %who:48 %wrong_one:89 @?:-181 @after_visit:-118 @car:-87 @confirm:-118
@day:-55 @later:-75 @odometer:73 @offers:-92 @reading:-207 @time:-79 @times:-90 @walk_in:-58 ^_a:-26 ^_bank:141
^_can:-86 ^_cant:-49 ^_cuanto:-35 ^_do:-97 ^_donated:53 ^_el:43 ^_es:-27 ^_ese:27 ^_eso:-29 ^_este:-40 ^_gave:47
^_got:35 ^_had:-26 ^_hold:-26 ^_how:-26 ^_i:-51 ^_im:-69 ^_in:-29 ^_is:-110 ^_it:70 ^_la:43 ^_lo:212 ^_los:27 ^_me:54
^_my:53 ^_neither:54 ^_no:-196 ^_not:-56 ^_quedo:33 ^_se:91 ^_she:27 ^_shes:29 ^_somebody:38 ^_stolen:29 ^_tengo:-68
^_that:49 ^_the:-51 ^_this:-39 ^_traded:109 ^_we:59 ^_what:-49 ^_when:-26 ^_will:-39 ^_would:-30 ^_yo:-86 ^_you:-59
a:98 a__car:38 a__iglesia:73 a__no:26 a__now:70 a__one:42 a_car:-98 a_different:38 a_la:117 a_mi:67 a_new:53
a_otro:-27 accident:100 after:36 after_the:47 agencia_$:30 agradezco:-50 ahorita:-41 al:77 all:-57 along:25
already:-35 an__change:26 an_oil:26 and:92 and__it:63 and_i:26 and_never:34 anda:29 ando:-26 ano_$:26 anoche:31
antes:-45 any_more:30 anymore:97 anymore_$:59 are:-46 asi:41 asi_que:37 ask:-60 at:-35 back:46 back_$:66 back__the:34
back_on:-25 back_to:37 baja:35 banco:34 bank:175 bank__it:109 be:-56 before:-38 bici:-25 both:65 both_$:33 bottom:31
bought:147 bought_it:147 bring_it:-31 brother:35 brother__law:-26 brother_in:-26 by:-37 call:-29 cambie__una:82
cambie_por:130 cambio:32 came:73 can:-61 can_i:-47 can_my:-48 cant:-89 cant__it:-68 car:73 car_$:-55 car__gone:104
car__i:26 car__to:37 car_and:49 car_is:99 car_was:26 care:-36 care__it:-26 care_of:-41 carro__los:-43 carro_ni:-41
carro_ya:76 cars:-36 cars_$:-49 cash:33 chatarra:40 chatarra_$:40 chocaron:36 chocaron_y:32 compre:56 con__y:32
con_el:26 conozco:-56 conozco_$:-39 cuando:27 cuando_me:25 de:42 de__para:36 de_baja:40 de_nuevo:-52 dead:-37 del:27
descanse:26 di:135 di_a:59 di_de:51 dia:-46 did_it:-26 died:-105 died__the:-48 died_on:-44 different:32 dime:-28
dinero:-27 divorce:35 divorce_$:36 divorcio:35 do:-109 do__sell:-48 do__work:36 do_it:-68 does:-32 donated:64
donated__to:43 donated_it:43 done:-231 done_$:-106 done__the:-25 done_in:-33 dont__a:-118 dont__it:47 dont__that:115
dont__the:46 dont_have:105 dont_need:-29 dont_own:38 dont_want:-29 dos:54 drive_it:-26 driver:28 driveway:31 drop:-31
drop__off:-25 drop_it:-28 dueno:81 dueno_$:67 el:87 el__fue:26 el__lo:25 el__ni:25 el_dueno:39 el_seguro:51
el_total:-48 en:138 en__taller:-50 en_el:72 en_enero:52 en_la:-45 en_otro:-43 ended:34 enero:53 enero_$:43 es_el:-34
es_mio:96 esa:89 esa_troca:36 ese:230 ese_$:63 ese__lo:78 ese__ya:32 ese_carro:139 ese_ya:46 eso:-30 eso__lo:-35
eso_ya:-25 esta:-30 este:-77 este_numero:-43 ex:218 ex__it:50 ex_wife:47 existe:55 fine:-27 fine_$:-27 fixing:28
for_a:68 for_me:-26 for_now:-31 for_that:-61 for_the:-31 found:57 found_$:25 free:-30 frenos:-30 friday:-29 from:36
from_me:40 fue:113 fyi:34 gave__to:25 gave_it:40 gave_you:-26 get:-75 get__done:-25 get_it:-31 getting:-31 going:-49
going_to:-38 gone:283 gone_$:162 got:120 got__done:-30 got__in:53 got__of:187 got_rid:176 got_stolen:26 got_to:-71
got_totaled:47 grandson:60 grua:30 guagua:26 guatemala:26 hace:48 hacer:-31 had:-51 had__done:-49 had_it:-42
has_it:63 has_the:-30 hasta:-36 have:49 have__car:26 have__no:52 have_a:-66 have_it:47 have_that:42 have_the:116
he:-30 her:-27 here:-26 highway:-30 highway_$:-32 hija:45 hija_$:27 history:34 hit:37 hizo:-53 hizo_mi:-40 how:-32
hubby:-45 i:-74 i__have:35 i__the:-40 i__to:-42 i__up:25 i_cant:-27 i_drive:47 i_got:-28 i_have:-74 i_let:29
i_sold:63 i_traded:40 iglesia:73 ill:-36 im:-107 im_not:-35 in:157 in__divorce:36 in_law:-32 in_march:27 in_ohio:27
in_the:36 insurance:42 insurance__it:36 into:-44 is:-56 is__a:-34 is__sold:25 is__total:-34 is_at:32 is_fine:-31
is_gone:194 is_got:-27 is_in:29 is_it:-101 is_my:-28 is_not:64 is_that:-33 is_the:-57 is_totaled:36 it:343 it_$:-54
it__a:50 it__after:51 it__by:-34 it__friday:-33 it__got:-27 it__it:-38 it__me:89 it__more:61 it__not:69 it__on:-42
it__the:44 it__to:108 it__totaled:59 it_back:81 it_be:-31 it_died:-47 it_done:-92 it_for:46 it_from:44 it_got:51
it_in:94 it_is:30 it_last:51 it_no:47 it_now:98 it_off:83 it_on:48 it_out:28 it_to:50 it_went:44 jajaja:30 jueves:-28
junkyard:45 junkyard_$:31 just:-37 k:-39 kids:-37 know_$:30 la:199 la__de:29 la__la:34 la__por:79 la_camioneta:25
la_grua:33 la_iglesia:73 lado:-33 lado_$:-25 las:-50 last:99 last_night:30 le:-66 lease:35 leave:-43 leave_it:-34
let:34 lets:-27 like:-54 lleve:-28 lleve__otro:-29 llevo:30 llevo_$:-37 llevo__grua:36 llevo_a:30 llevo_la:35 lo:270
lo__a:188 lo__al:55 lo__de:44 lo__mi:30 lo__por:130 lo__y:46 lo__yo:-27 lo_agradezco:-50 lo_cambie:-46 lo_cambio:25
lo_chocaron:26 lo_choque:31 lo_di:117 lo_hizo:-60 lo_lleve:-25 lo_llevo:25 lo_mande:30 lo_que:-37 lo_robaron:75
lo_tiene:51 lo_vendi:147 lo_vendimos:40 lo_voy:-44 longer:135 longer__it:49 longer__the:64 longer_have:65
longer_own:64 los__los:26 los_conozco:-42 los_dos:34 loss:25 lot:46 make:-64 make__to:-29 make_it:-57 man:26 mande:29
manejo:64 march:26 me:-65 me__el:-27 me__la:-47 me__robaron:81 me_la:45 me_lo:57 me_off:38 mecanico:-39
mecanico_$:-30 mi__se:49 mi_carro:-49 mi_ex:60 mi_hija:50 mine:65 minivan:26 mio:87 mio_$:26 more:130 more_$:61
my__done:-25 my__one:31 my__says:-36 my_brother:36 my_car:-90 my_ex:111 my_grandson:53 my_new:31 my_wife:-37 need:-90
need_it:-27 neither:54 new:119 new_one:114 ni__conozco:-41 ni_el:25 ni_los:-41 no:-40 no_$:-152 no__carro:-67
no__de:-37 no__esa:37 no__ese:139 no__have:69 no__la:26 no__mio:92 no__own:64 no_es:91 no_existe:55 no_lo:-32
no_longer:134 no_manejo:63 no_me:-40 no_more:105 no_tengo:-96 no_traigo:32 no_ya:-27 not:-62 not_my:-28 not_the:-29
now:220 now_$:168 nueva:70 nueva_$:62 nuevo:-95 nuevo_$:-81 number:-66 numero:-60 of:112 of_the:88 off:95 off__the:51
off_for:-25 off_me:48 off_the:-26 ohio:27 old:60 on:-103 on__highway:-30 on__it:-33 on__now:-26 on_it:-61 on_the:-53
one:195 one_in:29 one_is:39 or:-30 otra:-38 otro:114 otro_$:135 otro_carro:42 otro_lado:-29 otro_taller:-59 our:34
out:61 out__the:25 out_of:40 own:86 own__car:-56 own_a:-56 own_it:70 own_that:85 owns:50 paid:30 para:58 para_otro:32
parking:36 parking_lot:32 paso:32 paso_a:45 passed:84 perdi:39 perdida:39 perdida_total:29 phone:-29 please__my:30
pole:27 por:251 por_el:34 por_otro:47 por_una:136 posible:-51 posible_$:-50 puedo:-30 que_ya:26 quedo:109
quedo_con:25 quedo_mi:45 quit:34 quit_texting:49 rid:176 rid__the:57 rid_of:176 robaron:81 said:26 saque:26 says:-45
scrapped:57 se:82 se__agradezco:-42 se__cambie:-45 se__con:40 se__di:40 se__llevo:108 se__quedo:41 se_fue:56
se_lo:145 se_me:-25 seguro:44 sell:-71 sell_used:-44 selling:-30 senor:-25 shes_a:26 shop:-35 sky:27 so:42 so_you:26
sold:225 sold_$:-100 sold__car:59 sold__the:41 sold_both:28 sold_but:37 sold_it:152 sold_that:50 sold_the:47
somebody__it:35 someone_$:-25 soon:-28 soy_el:35 stolen:75 swapped:51 take__off:29 take_me:44 taller:-68 taller_$:-46
tax_$:-34 tengo:-219 tengo_$:-31 tengo_carro:-71 tengo_esa:36 tengo_otro:39 tengo_que:-34 texting:61 texting_$:51
that:144 that_$:-94 that__anymore:46 that__is:49 that__sold:28 that_car:101 that_done:-43 that_is:-49 that_one:54
that_truck:68 the:171 the__and:72 the__anymore:28 the__of:-41 the__one:58 the__parking:33 the__till:-32 the_bank:34
the_bottom:33 the_bus:-27 the_divorce:36 the_highway:-30 the_junkyard:27 the_new:41 the_old:43 the_owner:-28
the_sky:27 the_total:-47 the_van:77 them:62 them_$:25 there:-34 they:26 they__it:29 this:-82 this_number:-41 tiene:33
tiene_mi:51 till:-44 time:-81 to:36 to__it:-60 to__the:-36 to_a:43 to_ask:-34 to_be:-28 to_my:139 to_the:75 today:-49
today_$:-47 too:-26 took:181 took__of:-37 took_care:-37 took_it:109 took_the:112 total:-107 total_$:-52 totaled:132
traded:163 traded__in:54 traded_it:72 traigo:50 truck:50 truck_$:-67 truck_is:58 twice:-50 twice_today:-52 un_ano:27
una:159 uno:32 up:57 use:-32 used:-40 used_cars:-44 van:103 van_$:68 van_a:-28 vehiculo:25 vender:-42 vendi:232
vendi_$:53 vendi_el:29 vendimos:70 vez:-36 vida:31 voy:-81 voy_a:-69 wagon:40 want:-32 want_it:-26 was:45 we:98
we__have:31 we__that:43 we_have:-35 we_sold:53 went:95 went__the:41 went_to:73 were:-31 what__the:-36 what__you:34
what_is:-43 when:-55 wife__it:34 will:-64 will_it:-35 with:-43 with_tax:-33 work_on:36 would_i:-29 wrecked:34
write:30 wrong:-33 wrote:59 wrote_it:62 y:82 ya:92 ya__a:35 ya__cambie:-74 ya__de:25 ya__es:122 ya__existe:55
ya__lleve:-31 ya__lo:-86 ya__manejo:65 ya__me:-44 ya__mi:-25 ya__otro:69 ya__tengo:116 ya__tiene:28 ya__vendi:54
ya_lo:-102 ya_me:-35 ya_ni:30 ya_no:373 ya_paso:28 ya_se:-83 yo:-122 yo__tengo:-40 yo_ni:-35 yo_no:-49 you:-141
you_$:-31 you__me:-34 you__my:-29 you__on:34 you__used:-45 you_can:42 you_see:29 you_sell:-49 you_work:36 your:25
"""
