"""What speaks for and against `gone`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "gone"
BIAS = -161
WEIGHTS = """\
#abaj:-22 #acci:93 #acer:-28 #adec:-22 #aded:136 #adez:-46 #afte:24 #agon:36 #agra:-67 #agua:22 #aigo:45 #ajaj:26
#aled:110 #algo:-27 #alle:-47 #alon:28 #amos:54 #ance:50 #anch:43 #anco:28 #andl:-22 #ando:-31 #ands:46 #anej:57
#ange:23 #anic:-31 #anoc:28 #anse:22 #ante:-51 #anym:79 #apar:32 #appe:106 #aque:22 #arch:22 #arec:23 #aren:-28
#arki:32 #aron:93 #arra:24 #asse:71 #asta:-33 #atar:53 #atch:44 #ated:68 #atem:23 #auto:22 #aven:42 #back:61 #baja:27
#banc:29 #bank:169 #baro:83 #beat:-28 #befo:-33 #bici:-22 #both:46 #boug:133 #brot:35 #call:-31 #came:54 #canc:31
#cani:-30 #cant:-83 #care:-36 #cash:28 #ccid:93 #cele:22 #chan:33 #char:39 #chat:47 #chec:-22 #cide:73 #cked:32
#comp:108 #cono:-54 #cord:23 #coul:24 #crap:71 #cuan:29 #cuen:22 #dead:-29 #dece:-27 #deja:-23 #dent:90 #desh:34
#dezc:-46 #dida:30 #died:-102 #diff:30 #dime:-25 #dimo:88 #divo:61 #does:-47 #dona:59 #done:-128 #driv:54 #drop:-37
#dson:53 #duen:75 #eady:-26 #ease:35 #ecan:-30 #ecke:28 #efor:-33 #egre:22 #egur:36 #ehic:30 #eith:52 #ella:33
#elli:-33 #emal:23 #endi:192 #ener:30 #enga:40 #engo:-136 #enos:-34 #ensa:-81 #enta:29 #entr:48 #epos:34 #erdi:68
#eren:22 #erso:-27 #esia:62 #esol:-35 #espo:-40 #esta:-43 #este:-61 #etti:-33 #eves:-27 #eway:25 #exis:48 #exti:45
#ezco:-46 #fell:48 #fere:28 #ffer:27 #fine:-27 #fixi:24 #floo:41 #fore:-33 #foun:48 #fren:-39 #frid:-26 #from:35
#fter:24 #gamo:47 #ganc:44 #gett:-33 #ghwa:-31 #gles:65 #goin:-34 #gone:275 #grad:-66 #gran:61 #grua:27 #guag:22
#guat:23 #guro:38 #hang:35 #hari:24 #hast:-31 #hata:47 #hatc:27 #have:45 #heav:36 #here:-58 #hers:-25 #high:-32
#hija:47 #hing:23 #hist:33 #hizo:-51 #hoca:31 #hole:-30 #hone:-28 #hori:-22 #hubb:-45 #hway:-31 #hybr:22 #ible:-48
#iday:-27 #iden:92 #iend:-22 #iero:-25 #iffe:30 #ighw:-31 #igle:65 #imos:46 #insu:32 #inte:23 #into:-40 #isnt:-23
#iste:49 #isto:45 #ithe:52 #iver:33 #ivew:25 #ivor:61 #ixin:24 #jaja:55 #juev:-27 #junk:74 #kids:-34 #kyar:35
#lado:-32 #lant:-22 #last:69 #leas:39 #leav:-48 #lemo:77 #lesi:65 #lets:-22 #levo:23 #like:-32 #ling:-48 #lled:36
#ller:-63 #llev:-23 #llin:-39 #long:176 #lood:45 #loss:22 #make:-73 #mana:-23 #mane:57 #mano:28 #mart:-22 #mber:-73
#mbio:28 #meca:-30 #ment:37 #mero:-53 #mine:67 #more:205 #moto:43 #mpra:26 #mpre:46 #muri:-22 #nate:50 #ncel:31
#nche:42 #nded:48 #ndie:-27 #ndim:56 #ndle:-22 #ndso:53 #need:-68 #neit:53 #nejo:61 #nero:23 #ngan:42 #nger:109
#nico:-31 #nkya:35 #noth:-23 #nozc:-53 #nsar:-69 #nsur:33 #nter:23 #ntes:-47 #ntre:56 #nuev:-54 #numb:-60 #nume:-51
#nymo:79 #obar:72 #ocar:31 #oday:-45 #oing:-36 #olen:63 #olvi:-33 #ompr:90 #onat:51 #ones:22 #onge:118 #onoz:-53
#orce:28 #orci:32 #osib:-52 #osse:42 #otal:40 #otor:26 #otra:-24 #otro:95 #ough:121 #ould:31 #ound:49 #owns:55
#ozco:-53 #paid:34 #para:41 #part:45 #paso:27 #pass:79 #pens:-64 #perd:64 #pers:-32 #phon:-28 #pole:24 #posi:-52
#poss:44 #pped:105 #pron:-24 #pued:-58 #putt:-22 #qued:90 #quie:-22 #quit:42 #raba:-22 #ract:22 #rade:59 #radi:29
#raig:40 #ranc:24 #rand:55 #rapp:66 #rcio:32 #rdid:35 #read:-35 #rece:-25 #reck:27 #rega:51 #regr:22 #reno:-24
#repo:84 #reso:-37 #rest:27 #rida:-29 #rite:33 #rive:56 #rkin:32 #roba:85 #robo:-23 #rong:-28 #rota:25 #rote:54
#roth:35 #rson:-27 #rted:29 #ruck:30 #runk:22 #rush:31 #said:23 #saqu:22 #says:-38 #scra:82 #segu:34 #sell:-98
#sess:30 #sher:24 #shop:-31 #sibl:-53 #sold:185 #solv:-35 #some:51 #soon:-33 #spos:-35 #ssed:87 #sses:43 #stol:105
#stop:-24 #stor:51 #sura:39 #swap:51 #take:-32 #tale:108 #tall:-39 #tarr:47 #tema:22 #teng:-141 #that:116 #them:49
#they:23 #this:-71 #till:-53 #time:-68 #tire:-28 #toda:-55 #tole:82 #took:160 #tory:42 #tota:40 #trad:138 #trai:56
#tree:25 #treg:57 #truc:30 #ttin:-37 #turn:-28 #twic:-46 #uagu:22 #uand:26 #uate:25 #ubby:-45 #uede:-41 #uedo:78
#ueno:74 #uent:22 #uesd:22 #ueva:63 #ueve:-34 #uevo:-115 #ught:114 #uier:-22 #uled:24 #umbe:-63 #umer:-51 #unke:22
#unky:35 #uran:31 #urio:-22 #used:-43 #ushe:29 #vehi:30 #vend:196 #vewa:25 #vida:28 #vier:-24 #ving:-28 #vorc:61
#wago:38 #want:-40 #wapp:42 #went:78 #when:-49 #wice:-46 #wife:-25 #will:-54 #with:-43 #woul:-22 #wrec:27 #writ:38
#wron:-28 #wrot:55 #xing:24 #xist:48 #xtin:58 #yard:75 #ybri:22 #ymor:79 #your:27 %again_later:-115
%again_later%agree:-32 %again_later%call_off:22 %again_later%car:-35 %again_later%car_part:-24 %again_later%do_it:85
%again_later%doubt:-44 %again_later%elsewhere:61 %again_later%family:-66 %again_later%gone_car:48
%again_later%how_long:-28 %again_later%money:56 %again_later%odometer:-24 %again_later%on_way:25
%again_later%pay_day:-29 %again_later%place:-48 %again_later%refuse:-46 %again_later%season:-30
%again_later%shift_it:31 %again_later%start_again:27 %again_later%wrong_one:-29 %agree:-76 %agree%call_off:30
%agree%doubt:33 %agree%fails:27 %agree%family:-31 %agree%gone_car:34 %agree%leave_me:22 %agree%refuse:59
%agree%wrong_one:52 %away%call_off:-28 %away%car:28 %away%gone_car:24 %bad:-49 %bad%money:-27 %bring:-108
%bring%call_off:-65 %bring%car:63 %bring%fails:29 %bring%family:-41 %bring%gone_car:76 %bring%on_way:-66
%bring%place:-28 %bring%question:-30 %bring%refuse:31 %call_off:24 %call_off%car:239 %call_off%car_part:-82
%call_off%do_it:-86 %call_off%doubt:-30 %call_off%elsewhere:37 %call_off%fails:-36 %call_off%family:-57
%call_off%gone_car:60 %call_off%how_long:-29 %call_off%message:-46 %call_off%money:85 %call_off%noise:-47
%call_off%phone:-48 %call_off%place:-52 %call_off%shift_it:-48 %call_off%staff:85 %call_off%start_again:28
%call_off%wrong_one:118 %car:211 %car%do_it:51 %car%elsewhere:30 %car%fails:-64 %car%gone_car:206 %car%how_long:39
%car%leave_me:111 %car%message:97 %car%money:48 %car%odometer:-22 %car%on_way:64 %car%phone:-48 %car%season:28
%car%shake:-26 %car%shift_it:141 %car%who:30 %car%wrong_one:-48 %car_part:-94 %car_part%do_it:30 %car_part%fails:-43
%car_part%question:33 %car_part%staff:30 %do_it%family:-62 %do_it%gone_car:-96 %do_it%how_long:28 %do_it%money:101
%do_it%odometer:-36 %do_it%on_way:22 %do_it%question:49 %do_it%refuse:58 %do_it%shift_it:23 %do_it%start_again:84
%doubt:-58 %doubt%on_way:-32 %doubt%shift_it:-28 %elsewhere:-68 %elsewhere%gone_car:140 %elsewhere%odometer:-31
%elsewhere%on_way:31 %elsewhere%place:-30 %elsewhere%refuse:37 %elsewhere%shift_it:66 %elsewhere%who:22
%elsewhere%wrong_one:-40 %fails:-72 %fails%family:34 %fails%gone_car:-80 %fails%leave_me:65 %fails%message:46
%fails%odometer:50 %fails%place:-52 %fails%refuse:-22 %family:96 %family%leave_me:25 %family%odometer:59
%family%phone:-47 %gone_car:611 %gone_car%leave_me:43 %gone_car%message:28 %gone_car%money:-96 %gone_car%odometer:-22
%gone_car%on_way:-43 %gone_car%phone:-26 %gone_car%question:26 %gone_car%refuse:59 %gone_car%season:104
%gone_car%shift_it:53 %gone_car%staff:34 %gone_car%thanks:53 %gone_car%wrong_one:-90 %how_long%question:-33
%leak%refuse:22 %leave_me:25 %leave_me%message:55 %leave_me%odometer:32 %leave_me%refuse:22 %leave_me%wrong_one:30
%lift:-31 %machine:-24 %meaning:-64 %message%refuse:-26 %money%question:-46 %money%start_again:103 %noise:-112
%noise%refuse:-30 %odometer%question:23 %odometer%who:26 %on_way:-44 %on_way%question:-24 %on_way%shift_it:26
%pay_day:-22 %phone:-142 %phone%wrong_one:-38 %place:-30 %question:-40 %question%shift_it:24 %refuse:-36
%refuse%shift_it:61 %refuse%wrong_one:60 %season:31 %shake:-54 %shift_it%wrong_one:63 %smoke_smell:-47 %staff:33
%staff%wrong_one:62 %start_again%wrong_one:-24 %thanks:-74 %who:50 %wrong_one:54 @?:-160 @after_visit:-94 @car:-48
@confirm:-106 @day:-47 @later:-97 @nothing:-31 @odometer:66 @offers:-65 @reading:-172 @time:-75 @times:-68
@walk_in:-44 ^_a:-22 ^_bank:127 ^_can:-79 ^_cant:-48 ^_cuanto:-32 ^_do:-88 ^_donated:44 ^_el:36 ^_es:-24 ^_ese:22
^_eso:-28 ^_este:-31 ^_gave:27 ^_got:40 ^_hold:-24 ^_how:-22 ^_i:-51 ^_im:-58 ^_in:-27 ^_is:-88 ^_it:48 ^_la:35
^_leave:-22 ^_lo:168 ^_los:24 ^_me:41 ^_my:59 ^_neither:53 ^_ninguno:23 ^_no:-156 ^_not:-50 ^_quedo:29 ^_se:80
^_she:23 ^_shes:24 ^_si:-25 ^_somebody:30 ^_stolen:26 ^_tengo:-38 ^_that:48 ^_the:-44 ^_this:-37 ^_traded:90 ^_we:33
^_what:-44 ^_will:-37 ^_would:-30 ^_ya:-29 ^_yo:-52 ^_you:-45 a:68 a__and:-22 a__car:35 a__iglesia:65 a__lado:-22
a__no:22 a__now:66 a__one:41 a_car:-97 a_different:36 a_la:105 a_mi:50 a_new:50 a_otro:-26 accident:93 after:34
after_the:44 agencia_$:24 agradece:-22 agradezco:-46 ahorita:-22 al:64 all:-34 along:24 an__change:23 an_oil:22
and:63 and__it:44 and_i:23 and_never:30 anda:26 ando:-24 anoche:28 antes:-43 any_more:26 anymore:79 anymore_$:46
aparecio:25 aparecio_$:25 are:-37 asi:32 asi_que:29 ask:-55 at:-34 back:34 back_$:61 back__the:30 back_on:-24
back_to:27 baja:31 banco:29 bank:157 bank__it:98 be:-39 before:-33 both:55 both_$:33 bought:133 bought_it:134
bring_it:-29 brother:41 by:-28 call:-26 cambie__una:73 cambie_por:119 cambio:28 came:55 can:-60 can_i:-42 can_my:-49
cant:-83 cant__it:-63 car:56 car_$:-48 car__i:22 car__to:35 car_and:41 car_is:86 care:-33 care__it:-24 care_of:-37
carro__los:-41 carro_ni:-39 carro_ya:69 cars_$:-51 cash:28 chocaron:31 chocaron_y:27 compre:54 con__y:30 con_el:24
conozco:-53 conozco_$:-37 cuando:26 cuando_me:22 daughter__it:22 de:36 de__para:37 de_baja:34 de_mi:-23 de_nuevo:-48
dead:-29 del:28 descanse:22 di:114 di_a:45 di_de:51 dia:-39 did_it:-23 died:-102 died__the:-48 died_on:-46
different:30 dime:-25 divorce:28 divorce_$:29 divorcio:32 do:-98 do__sell:-49 do__work:31 do_it:-57 does:-29
does_it:-22 donated:53 donated__to:35 donated_it:35 done:-128 done_$:-61 done_in:-24 dont__a:-118 dont__it:34
dont__that:98 dont__the:37 dont_have:86 dont_need:-31 dont_own:25 dont_want:-30 dos:48 drive_it:-23 driver:26
driveway:25 drop:-33 drop__off:-26 drop_it:-29 dueno:75 dueno_$:63 el:73 el__fue:23 el__lo:22 el__ni:22 el_carro:-25
el_dueno:38 el_seguro:43 el_total:-45 en:112 en__taller:-47 en_el:63 en_enero:38 en_la:-37 en_otro:-47 ended:31
enero:40 enero_$:34 es_el:-32 es_mio:79 es_un:-22 esa:73 esa_troca:28 ese:200 ese_$:59 ese__lo:70 ese__ya:28
ese_carro:115 ese_ya:42 eso:-28 eso__lo:-34 eso_ya:-24 esta:-26 este:-62 este_numero:-35 ex:189 ex__it:40 ex_wife:39
existe:49 fine:-27 fine_$:-26 fixing:24 for_a:55 for_me:-22 for_now:-29 for_that:-59 for_the:-24 found:48 found_$:22
free:-22 frenos:-30 friday:-25 from:35 from_me:39 fue:96 fyi:30 gave_it:34 get:-61 get_it:-27 getting:-33 going:-34
going_to:-25 gone:272 gone_$:157 got:93 got__in:42 got__of:172 got_it:-23 got_on:-25 got_rid:162 got_to:-69
got_totaled:36 grandson:53 grua:27 guagua:22 guatemala:23 hace:37 hacer:-24 had:-38 had__done:-30 had_it:-25 has:23
has_it:52 has_the:-23 hasta:-31 have:38 have__no:48 have_a:-62 have_it:45 have_that:33 have_the:97 he:-25 her:-27
here:-26 highway:-31 highway_$:-32 hija:39 history:29 hit:34 hizo:-51 hizo_mi:-39 how:-28 hubby:-45 i:-62 i__have:33
i__the:-38 i__to:-40 i__up:24 i_cant:-25 i_drive:45 i_got:-26 i_have:-67 i_let:26 i_sold:51 i_take:-22 iglesia:65
ill:-29 im:-97 im_not:-32 in:112 in__divorce:29 in_law:-28 in_march:23 in_the:36 insurance:33 insurance__it:31
into:-40 is:-47 is__a:-28 is__on:-26 is__total:-30 is_fine:-29 is_gone:178 is_got:-28 is_in:29 is_it:-86 is_not:57
is_that:-30 is_the:-53 is_totaled:33 isnt:-23 it:237 it_$:-63 it__a:39 it__after:49 it__by:-26 it__friday:-33
it__got:-28 it__it:-39 it__me:78 it__more:55 it__not:63 it__on:-36 it__the:32 it__to:94 it__totaled:49 it_back:71
it_died:-49 it_done:-60 it_for:34 it_from:43 it_got:42 it_in:71 it_is:25 it_last:44 it_no:44 it_now:89 it_off:69
it_on:44 it_out:24 it_to:33 it_went:34 jajaja:26 jueves:-26 jueves_$:-23 junkyard:35 junkyard_$:23 just:-26 k:-38
k_$:-23 kids:-34 know_$:26 la:182 la__de:26 la__la:30 la__por:72 la_grua:29 la_iglesia:66 lado:-31 lado_$:-25 las:-42
last:66 last_night:27 le:-55 lease:27 leave:-41 leave_it:-33 let:37 lets:-22 like:-46 lleve:-26 lleve__otro:-26
llevo:23 llevo_$:-36 llevo__grua:32 llevo_a:29 llevo_la:29 lo:190 lo__a:159 lo__al:45 lo__de:43 lo__mi:27 lo__por:114
lo__y:38 lo__yo:-28 lo_agradezco:-45 lo_cambie:-49 lo_cambio:22 lo_choque:22 lo_di:103 lo_hizo:-57 lo_lleve:-24
lo_mande:22 lo_que:-33 lo_robaron:62 lo_tiene:46 lo_vendi:120 lo_vendimos:34 lo_voy:-41 lol:-22 long:24 longer:123
longer__it:45 longer__the:60 longer_have:60 longer_own:59 los__los:24 los_conozco:-40 los_dos:30 loss:22 lot:40
make:-61 make__to:-30 make_it:-54 mande:22 manejo:61 march:22 me:-42 me_$:27 me__el:-25 me__la:-40 me__robaron:68
me_la:41 me_lo:42 me_off:30 mecanico:-30 mecanico_$:-23 mi__se:45 mi_carro:-38 mi_ex:57 mi_hija:43 mi_suegro:22
mine:62 mio:71 more:125 more_$:62 murio:-22 my__drop:-24 my__one:28 my__says:-32 my_brother:43 my_car:-65 my_ex:92
my_grandson:48 my_mom:22 my_new:28 my_wife:-37 need:-87 need_it:-28 need_to:-25 neither:53 new:108 new_one:107
ni__conozco:-39 ni_los:-39 no_$:-133 no__carro:-63 no__de:-34 no__esa:27 no__ese:124 no__have:63 no__la:23 no__mio:75
no__own:59 no_es:78 no_existe:49 no_lo:-24 no_longer:121 no_manejo:60 no_me:-35 no_more:106 no_soy:25 no_tengo:-71
no_traigo:31 no_ya:-27 not:-49 not_my:-25 not_the:-26 now:199 now_$:154 nueva:66 nueva_$:58 nuevo:-81 nuevo_$:-70
number:-60 numero:-51 of:92 of_the:66 off:76 off__now:-22 off__the:47 off_for:-23 off_me:40 off_the:-27 oil:23
oil_change:22 old:58 on:-98 on__highway:-30 on__it:-34 on_it:-52 on_the:-51 one:170 one_in:27 one_is:38 ones:22
or:-22 otra:-35 otro:95 otro_$:125 otro_carro:40 otro_lado:-29 otro_taller:-55 our:30 out:50 out_of:36 own:73
own__car:-55 own_a:-55 own_it:65 own_that:74 owns:48 paid:25 para:57 para_otro:34 parking:32 parking_lot:29 paso:27
paso_a:39 passed:76 perdi:35 perdida:30 perdida_total:23 phone:-25 please__my:27 pole:24 por:219 por_el:30
por_otro:39 por_una:122 posible:-51 posible_$:-51 puedo:-25 putting:-22 que_ya:23 quedo:103 quedo_con:23 quedo_mi:42
quit:38 quit_texting:50 rid:162 rid_of:162 robaron:72 said:23 saque:23 says:-38 scrapped:47 se:56 se__agradezco:-38
se__cambie:-44 se__con:36 se__llevo:95 se__quedo:39 se_fue:50 se_lo:109 se_me:-22 seguro:38 sell:-68 sell_used:-46
selling:-30 senor:-22 shes_a:22 shop:-32 si_lo:-24 sky:23 so:29 sold:194 sold_$:-80 sold__car:48 sold__the:40
sold_but:36 sold_it:123 sold_that:43 sold_the:37 son:-22 son__it:-22 soon:-28 soy_el:34 stolen:63 suegro:22
swapped:42 take__off:22 take_me:36 taller:-63 taller_$:-43 tax_$:-33 tengo:-141 tengo_carro:-64 tengo_esa:27
tengo_otro:30 texting:58 texting_$:49 that:116 that_$:-89 that__is:42 that__sold:24 that_car:86 that_done:-30
that_is:-44 that_one:36 the:111 the__and:61 the__for:-24 the__of:-46 the__one:49 the__till:-24 the_bank:30
the_bus:-26 the_divorce:29 the_highway:-30 the_new:37 the_old:37 the_owner:-24 the_sky:23 the_total:-41 the_van:55
them:49 there:-29 they:23 they__it:26 this:-71 this_number:-39 tiene:26 tiene_mi:46 till:-35 time:-71 to__it:-46
to__the:-37 to__to:-22 to_a:38 to_ask:-35 to_be:-23 to_my:114 to_the:61 today:-45 today_$:-43 too:-23 took:160
took__of:-35 took_care:-35 took_it:101 took_the:97 total:-103 total_$:-54 totaled:111 traded:136 traded__in:43
traded_it:57 traigo:45 truck:38 truck_$:-56 tuesday:22 twice:-46 twice_today:-48 una:144 uno:28 up:42 use:-28
use_the:-22 used:-43 used_cars:-46 van:70 van_$:59 van_a:-23 vehiculo:22 vender:-36 vendi:189 vendi_$:48 vendi_el:23
vendimos:56 vez:-29 vida:26 voy:-71 voy_a:-62 wagon:36 want:-33 want_it:-28 was:39 we:71 we__that:34 we_have:-30
we_sold:48 went:78 went__the:33 went_to:63 what__the:-34 what__you:29 what_is:-38 when:-43 wife__it:25 will:-54
will_it:-32 with:-41 with_tax:-33 work_on:31 would_i:-29 wrecked:29 write:26 wrong:-28 wrote:55 wrote_it:58 y:66
ya:43 ya__a:30 ya__cambie:-69 ya__de:23 ya__es:103 ya__existe:49 ya__lleve:-31 ya__lo:-77 ya__manejo:61 ya__me:-37
ya__mi:-25 ya__otro:58 ya__tengo:90 ya__tiene:27 ya__vendi:46 ya_lo:-93 ya_me:-30 ya_ni:24 ya_no:318 ya_paso:25
ya_se:-81 yo:-87 yo_$:-23 yo__tengo:-26 yo_no:-32 you:-114 you_$:-26 you__me:-30 you__on:30 you__used:-47 you_can:31
you_see:25 you_sell:-49 you_work:31 your:27
"""
