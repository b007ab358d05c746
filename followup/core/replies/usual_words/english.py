"""Usual English words of replies: made by `python -m tests.replies.fit_words`."""

OFTEN = """\
the it i me you a my to is in on and at for do that no can this be of what not how so im have yes friday are got one
there its out but when off please up after thursday ill need with day time like car back whats now your was dont all
would get or by monday call about we th just week from again if last stop long take phone tomorrow work next much
before ok could u come did will an any good still am does morning then number tuesday done over cant thanks late
thing had who open gonna text want oil new id wrong guys go coming wait sure ask wont cancel first lol make already
thank right brakes cost saturday never way as more today too been put sorry these two truck month only sold see thats
has know appointment bring fine down lets someone say texts tires why something yall home instead texting till
wednesday which left anything drive hours leave thurs where days light quit shop free tire were change let hour same
came drop noon says check k price somebody theres afternoon ring til around wheel early every works front going maybe
pls brake place another tell think end later person give guy under yeah those went bad them they here keep both hit
sunday lunch sedan since than took set better changed many sat start other tues anymore gotta great night turn even
list should yep messages nah nobody talk look may mean own pm three behind kids miles old service ive past ride
engine job thousand driving fri wed half pick said once school until wife fixed garage waiting her june well noise
rather red remind cars else isnt kid ya people stuck ten whole between mon nope steering weeks away care charge n
shift street told try weekend battery bill doing he money road tho while getting second twice whos blue driveway gas
his run smoke spring though w april hold myself pass really address fluid lost yesterday four into running either
forget pedal real soon through book ever gone husband min oh she doesnt em fall flat gave longer mind move none
nothing reminders shes ur year also close dash door march mine replaced stuff lot minutes send sounds white yet belt
boss bus grinding hey house key needs remove times youre break found happy mechanic slow sometime son summer wipers
goes lights side sign tax broke ones room slot asking daughter enough low paid seat sit some use keys manager office
pads quarter quick schedule smells town actually didnt due earlier hundred lift neither us used alignment anyway best
bit deal everything feels find fix hard little message nine rear total traded unsubscribe whenever dead dealer desk
died exactly few hood idea kindly looking man mom moved scratch tmrw totaled youve five floor ish leaving line loaner
mornings pay ready sooner speak spot swing top whatever ahead alright baby feel forgot mother name oclock parking
refund dad dog help labor law push runs sending traffic turned air booking brother calendar comes couldnt filter
guess keeps making our smoking st talking without appt called hows live must plan possible pull season smell takes
thx whichever bout card chance charged church folks gets plz r thru tonight whoever appreciate business human
interested leaking nice owner sick somewhere thought train trip van because bucks closed coffee dear dollars doors
elsewhere hi inspection january lease looked looks mondays nd neighbor park parts perfect problem quote read skip
sound switch warranty box christmas eight ex far fell fyi hang hear highway hot kind makes near round saturdays sell
shut six started swapped temp third tight very water wiper bank coolant drives explain fridays hes him rd rn shakes
sitting swap thursdays winter wouldnt write asked bike booked burning cabin contact cool cousin depends different
fella finished hospital insurance invoice lady made might months needed o paying wasnt able being big class evening
figure forty happens july life meant middle october overnight owe part payday pulls squeal station taken telephone
thinking turns yup almost buddy cause flush gimme lobby matter minute nephew okay pickup rubber show state store
suits sundays sweet thirty timing unless weds wise worse accident anytime bridge btw busy cell clock company drove
easier empty ends fee fire idle lock loose loud love mileage odometer opt puddle repair rolled roughly rude sir
straight tomorrows visit wheels arm bought bump buy customer dentist eleven exit foot heads maam meeting november
passed point records reply save sent shall soft speed stopped tech ty uncle urgent vacation wednesdays wet wheres
windshield alone asap august b barely cold corner couple dangerous expect forever kinda lake leaks lovely machine
messaging power radio reschedule safe serious shuttle snow supposed tow wifes worth years across beat bird black
bless bumper delete estimate family full game grab grandson hmm ice info miss moms moving nail needle pulled pulling
reads scrap sister squeeze starts stay stolen trade wagon wonderful worst add ago airport always building clunk
college crazy decided finish fleet funeral god grease green handled happen headlights heard high hits idk inside itd
itself leak location lose nights option parked prefer promised reach retired reverse rid rotation sharp sheet
shoulder spare surgery tread type vehicle wanna word working wrote yea zero aint along anyhow auto boat click clutch
count counter cut double easter elses gauge haha hands itll kill locked north nuts opening pop pretty putting quoted
ran receive robot rotors saw shaking shudders sitter steam suit thanksgiving wk worries afford ahi airbag answer ate
ballpark bay bother cash checking choose country covered crashed damage december discount dot driver dry each extra
fit follow gear gift hair havent hello hrs interstate jury lemme lit loaners located metal missing moneys news picked
picture pump roll scrapped scratched september serpentine shake slide somethings sorted squeak talked things threw
tie trailer transmission tree trucks trunk tuesdays typing usually walk wanted wifi worn yellow young yours annoying
awful belongs bug bulb burned case catch charging checks computer county crank date deep donated dripping drops
everywhere feed filled finals funny gps heading hill hills holding hurt junkyard lately losing mall mi mins mm
mothers motor nearly needing normal overslept permission play plug probably q rain rate recall rent rest rim scraping
shifts showing sits super swamped system tailpipe tired trust ugh update wallet window wires absolutely afraid alarm
ball bet blew blinking blocked bone bot bowling budget cancelled cap cards changing cheaper choice closing clunking
code confirmed congratulations consent coupon crack cruise curious dealers dealership difference dinner dropping dude
duty easy ended entrance er eta fast february flight golf greasy hanging hate heater held history holidays honestly
hubby hubcap jerks kept leaves limp literally mil minivan mph notifications nudge plenty pothole practice quiet
revoke ridiculous rolling rotated seats serviced simon smooth squealing sticker ta terrible thatd theyre topped touch
tractor wants weird wow wrecked ac affirmative against alley axle babysitter beater beer bells blessed block blocking
boot bottom brand brought bumps buzz calling cat cease changes cheers comin costs crew crooked crossing daughters
dawn definitely delayed deployed digits dim eat except favor feet fifty fixing flashing flu following friend gracias
happening hasnt head heck hell hissing hose joke jug jump knocked knocking landline league less lube lug lunchtime
main meaning meh memorial mistake mornin nite noises nose omw outside outta overcharged owns paper party passenger
pink popped prices rears reason remember reminder roads roof roommate rough rush saved saving seen senior shimmies
shoot shot shows sleep soonest sort squeaks stalled telling thatll tue turning twenty twist undo uphill voice waited
weekends whys win windows wish withdraw wobble youd account afternoons anybody anywhere area aside automated
available awesome backing bail base bearing bonus bright bringing bubble burnt burst butter carpool caught chemo
chief circle claim clicks clinic clue correct coupons covid cross curb dads daycare deer dent dies dime directions
dirty ditch divorce dollar downtown dragging during english exhaust eyes feb flickers forgive forward freeway girl
hand hardly harvest heat hiring hole holiday holler hon huh hung indeed interest je joint junk laid lamp laptop
laughed lied liked lil living mad mail mailbox matters means mid mobile moment most numbers nut ohio overheating pa
paperwork pedals period ping pressure purrs re receipt restart rides rock screw sec seeing shocks shops short sisters
size slammed stalls stays strike synthetic tail tank tap teach texted their thumbs together towed treated trouble
twins underneath wedding whens won wreck yo youll yourself
"""
OTHERS = """\
abouts above abroad absolutly accelerate accelerates acceleration accent accept access according accountant accounted
accounts acepto acordarme actual added adding addy adjunta adjusted adjuster admit advance advanced advantage
advertise advertised advise advised advisor aerobics affair affect affirm afirma afirmativo afterthree afterward
afterwards agarra agency agendame agendar agent ages agree agreeable agreed aight airline airway alarming alarms alas
alaska alegre alerts alight aligned alignments alive alla allergic allergy allow allowed allows alrdy alredy alrighty
alrm alter alternator although amanecio amanezco amarillo amazing amber amble ambos amigo amigos amount amused
anchors andamos angels angielsku anglais animo ankle anniversary annoyed answered answering answers antifreeze
antiques anulela anyday anyone anyways apart apologies apologised apologize apologized apology appalling apparently
apple appliance apply appointments appreciated approval approx approximately apps apreciado apunten apunto arent
armrest arms army arrange arranged arranging arre arreglan arrepenti arrive arrow arthritis arvo asdf asdfgh asdfjkl
asdkjf asdkjh asdkjhasd ashamed ashtray asks asleep atcha atras attached attack attempts attend attended attending
attire attitude auction audio aunt aunts authorize autocorrect automatic automatically automobile autumn avail
avisando avoid awaiting awning awsome axed axles ayudan babe babes babies babys babysit backdoor backdrop backfires
backs backseat backside backup backwards bacon badger bailed baker bakery balance balanced balancing bald baled
balloon banana banda bandwidth bang bangs bankruptcy banshee barbecue barber baring barking barley barn barring bars
bartend bartholomew baseball basement basic basically basis bath bathroom bathrooms batterys beams beans bear beard
bearer bears beast beating beaucoup become bedroom beep beeping beers beforehand beforethe begging begin beginning
believe belive bell belong belonged below belts beltway bend bender besides betcha betrayed bible bicycle bicycles
bigger biggers bikes billed bills bingo birds birthday bite bites bitte bitten bitter blackwater blades blah blame
blank blast blasts blessings blind blinked blinker blinkers blinks blnikers blocks blood blow blowing blowout blows
bluetooth bluish board boats body bogs bogus boiled boiler boils bolt bomb boned bonjou bonjour bonnet booed booing
bookkeeper booklet books bookshop boom boomer booming boop boost boosted booth border born borreme botch botched
bothered bottle bounced bounces bouncing bouts bowing boxed boxes boyfriend boys brain braking branch bravo bread
breakaway breakdown breakfast breakout breaks breakthrough breath breathe brick bride bridgewater brings brisket brit
brokeee broken brotherhood brothers brown bruh brunt brush btwn bucket bucking buddys buena buff bugging buggy bugs
bukb bulbs bulge bulges bull bullet bumped bumpers bunch bundle bureau burger buried burn burner bushing bushings
businessman bust button buttons buyback buyer buying buzzes bypass cabal caballo cable caged caigo cake calander
calendars calender caliper callback callme calls calves calving camp camper campers campfire campus canada canal
canals cancela canceled cancelela cancelemos cancellation cancelling cancels candid candle candles cannot cans
capisco captain carcass carefree careros cares carfs carl carless carpet carport carried carrier carros carry carseat
cart cartoon carts cashed cashier casserole cast casts catalytic catches cemetery cent center central cereal
certainly certificates certified chafa chain chair chairs chale champ chances chanted chanting chao chaos charger
chargers charges charity charm charting chat chatgpt cheap cheapest cheated checkbook checked checklist checkout
checkpoint checkup cheered chemistry chemos cheque chevere chewed chewing chickened chickenpox chickens child chill
chime chip chips chiropractor chirp chirping chirps chocolate choir chose chosen chunk ciento cigarette cigarettes
circled circles circus cita city clamp clank clanking clanks claro clash classes classy clatter clavadas claws clean
cleaner cleaning clear clearance cleared clearky clearly clears cleats clicked clicking clients cliff climbing climbs
clipped clocks clonk closer closes closest clothes cloud clouds clowns club clunks coach coaching coal coast coasted
coat coats coffees coin coins collect color colored colors columbus comadre combine comeback comma commit commitment
communication commuter compa compadre compared complaiing complain complained complaints complete completed
completely complicated compran comprends concrete condition conditioning cones confirm confirmadisimo confirmado
confirmation confirmations confirmo conflict conflicts conforme confrim confrimo confuse confused congrats conked
conmigo connect consider console construction consumer contacted contacting contacts content contenta contentisimo
continue contract control convencio convenience convenient conversation converter converters convinced cook cooked
cools copper cops copy cord cords corduroy core corn corners cornfield correcto corresponding corte cortenle cosmetic
costing couch cough coughing coughs couldve counterparts counterpoint counties coupe coupes course court courtesy
courthouse cousins cover covering covers coveted coworker cows coyote cpme crabwise cracked cranberry cranking cranks
crap crash crashing crawling crawls creaks cream credito creek creep creeping creeps creepy cricket crime criminal
crisis criss crooks crops crossed crossroads crows crumbs crunch crushed crusher crutches crying crypto cuadramos
cuando cuatro cube cucumber cuente cuenten culture cumpleanos cupholder cure cured curiosity current currently
curtain curve custody custom customers cuts cutting cylinders daisies damaged dame damnit dance dandy dang danger
dangerously dangling dare dark darlene dart darts dashboard dashcam database dates datos dave dawg daybreak dayer
daylight daytime deadline deaf deak dealing deals dealt death debit deceased decent decide decides decirle deck
decline deductible dejela dejenlo dejenlos delante delay dele deleted delining delivered delivery delphine dementia
demoro denied denise dental dented dents denver department depende deploying deployment deposit depth desapuntame
desapunteme describe desert desire desist desktop despues desuscribir detail detailing details detectors detour
deutsch development device diagnosing diagnosis diagnostic diagnostics dial dialed dialysis dice diciembre diesel
diesels diet diff differential digan digging digit diner dinged dinging dings dinners dios dipping dips dipstick
dirtier disability disagreement disappeared disappearing disappointed discontinue discounts discuss disgrace
disgraceful dishonest dishwasher dislike display disposed dispute dissapointed distance distribution disturb
dithering diver dives diving dizzy doable docking doctor doctors dogs doin doke dokey doki dokie doky dolares donate
donut donuts doom doornail doorway dopo dorm doubled doubles doubt doubtful downfall downhill download downpour
downright downshift downside downsized downtime downturn drag draggin dragon drain drained dramatic drank drawbridge
dreadful dream drier dries drifting drifts drill drinking drips drivable driven drivers driveways drivin droid
droplets dropout dropped drowned drowning drunk dryer drying ducks dumb dump dunno duro dusk dusted dying eagle
eagles earliest earn earned earring ears earth ease easiest eater eating edge eeny efectivamente efecto effort eggs
ehhh eighteen eights eighty eithers elbow electric electrics elevator email emailed emails emergencies emergency
emissions emphasized empties encantada enchilada ending engage engaged engines england englisch enjoy entendi
enterado entirely episodes erase ernie errands error errrrr esas esos espanol especially essay esta establishment
estamos estare estate ester estimado estrellas estupendo ether evacuated evacuating evenings eventually everybody
everyday everyone everytime exact exam example exams excellent exciting exclamation exist expected expensive
experience expert explained explicame exploded expressly extended extension extremely eyeballs facetime factory
fading fail failed failing fails fair fairgrounds fake falar fallout falls faltar falto fantastic faraway farm
farmers fart fashioned faster fatal fate father faucet fault favore favorite feeding feeling feliz fellas fellow felt
fender ferry fetch fever fewer fiberglass fiction field fiend fierce fierro fifteen fifteenth fifth fight figuring
file filed files fill fills film filters filthy final finally finance financially financing finde finding finger
fingerprints fingers fires firme fish fits fitted fitting fixin flagging flake flame flap flashes flashlight flatbed
flats flatten flawless flew flexible flicker flickering flies flip floats flood flooded florida florist flossing flow
flower fluids flushed flushing flying foam focus foggiest fogging foggy folded folding follows food fool foolin
football force forgave forgets forgetting forgotten fork form former foto fourth frame frankly frayed freebie freeman
freezing freight fresh fridge friendly friends fries frimorning frontline frontman fronts frosts froze fryer frying
fuel fumes fuming funcionan funds furious furloughed furnace furnish further fuse fussy future gallon garbage garcias
gary gasket gaskets gasoline gassed gate gaurd gears gearshift generous genie gente gerald german getaway gettin
ghosted giant girlfriend girls giveaway given gives giving glad gladly glasses glazed glove glovebox gloves glowing
goal goat goats goin gold golden goodbye goodness goodnight goodwill goody google goose gosh gotten gouge grabbing
grabs grace graciassss graduate graduated graduation grain grand grandbaby grandchildren granddaughter grandkid
grandkids grandma grandmas grandmother grandpa grandsons granny grass grasshopper grateful gravel gravelly graveyards
gravy grax gray greenhouse greenish greeting greg grief grill grime grind grinds grindy grip groan groans groceries
grocery ground growing growl growling growls grudge grumble grumbly grump grumpy guam guaranteed guard guards guest
gumball gunshot gurgling gurgly gustaria gusttan guts guyslock guzzler habit hablame hablo hacerlo hafta hagale
hagamosle hahahaha hail haircut hairdresser halfback halftime halfway halloween halt hammers hamstring handbrake
handed handle handles handprint handprints handy hangin happened happier harassing harassment harder hardy harm hash
hatch hatchback hater haul hauled hauler haulin hauling haunt haunted haveanything having hazard hazmat headache
headaches headlamp headlamps headlight headliner healed heals heap hearing hearings hears heart hearts heated heaven
heavens heavy hecho hecj hedge heic helicopter helping herd hereafter hereby heres herring hers hesitates hesitating
heyday hhhhhhhhhhg hiccup hiccups hidden hiding hieu higher hike hime himself hips hire hiss hisses hitch hitches
hitman hittin hjkl hmmmm hoje holder holds holla hombre homecoming homeowner hometown homework honest honesty honey
honor hook hope hopefully hopeless hoping hops horn horoscope horrible horse horses horseshoe hospice hostage hounded
household housewife housework howd however howl howling howls howmuch howw htaes http https hubbys hubcaps hubs
humanly humming humor hump hums hundreds hungover hunk hunting hunts hurricane hurry husbands hwat hybrid hybrids
icon ideal ideas identify identity ides idles idling ignition ignore ignored illegal image imagen imaginary
immediately imoortant important impossible impounded impressed impressive inch inches inclined include included
includes including income incomes incoming inconsiderate inconvenience inconvenient indoor indoors induction inhuman
inline inner inquire insane insomnia inspected inspections installed instill instructions insulin insulins insure
intake intend interior interiors internet intersection interval interview inventory involve involved irritating issue
issues italiano item itemized items jack jacked jackknifed jaja jajaja jajajaja jale jalo jamas jammed jeez jefa jefe
jeje jejeje jerking jerry jingle jitterbug jjjkk jobs jobsite joints joking jose joven jsjsjs judge judgment juggle
jugs juice jumped jumping jumps junked kangaroo karate karens keeping kein kettle keyboard khong kick kicked kicks
kidding kiddo kiddos kidney kien kiero kijan killed killing kills kilometers kinder kinds kissed kitchen kitten kkkk
kmart knee knees knew knit knitting knob knock knocks knowing knowledge known knows knuckle ladder ladies lager lags
lambs land landed landing landlord landlords landmark lands landscaping lane lasted latch latest latet latte latter
laughing laundromat lawn lawnmower lawnmowers laws lawyer laying lazy lead leaked leaky leans learn learner leased
leasing least leek leese leftover legal legally legged legit legos legs leider lemon lend length lengthwise lens
leque letdown letters letting level levels lever lfiesaver library librarys license licked lifesaver lifetime lighter
lighthouse likely limit limited limits limping limps linda lindos lined lineman lines lineup linger link lion
lipstick listed listen listens listing listings lists littlest lively lives livid lkjn lkjsdf llamas load loaded
loads loan locations locking locksmith lollipop longest longs longtime lookin lookout looming looms loosen loosing
lope lord loses loss lottery louder loudly lounge loved loving lower lowest luck luegooo lugnuts lugs lump lunes
lunges lurched lurches lurching lying machines madness magnet mailed mailer mailing maintenance makeover makeshift
malas males mama manage manana mandnado mando manejado manejando manhood manito manner manners manny mans manson
manual manufacturer maple maps marathon marbles marcame marge marginal mark marker market marketing marketplace marks
marlene marquenme marrigae marshmallow martes mass match mate mater mats mattress meannig meantime meantnot meanwhile
measure measured measurement measurements mechanics median mediante medio mediodia meeny meet meetings meltdown
melted melts member memphis menos mensagem mention mentioned menu merci mercy merry meses mess messed metallic meter
mexico mice microbio midday midnight mientras mier miercoels miercols mighty migraine mija mike mile military milk
milked mill millimeters million mindset mints mirror mirrors misc mised misread missed mistaken mitten mixed mixer
mmhm moaned moaning moans mode model moles molesten moments moneywise monitor monitored monkeys monsoon mont mood
moose morbid moreover morn morrow mosey mostly motel motherhood moths motorbike motorcycle motorcycles motos mountain
mountains mounted mouse mouth movers moves movie mower mowers msging msgs muffler mules mull multi mural muscle
museum mushier mushy music musica mustve mutch mute mwen mycket myth nagged nags nailed nails nailsdone named names
nanay nashville navidad navy nearer nearest neatly necessary neck needles neednt negative negativo neighborhood
neighborly neighbors nelly nemore nerds nerve nervous nest neutral nevermind newborn newfound nextweek nicely nicht
nickel nickels nicu niece nieces nightfall nightmare nighttime nines ninety ningna ninth nitido nobodys nodded noisy
nomas nombe nones nonsense nonstop noodle noone noonish nooo noooo normally noses nosy notch notchy note noted notes
nothankyou nothin nothings notice noticed notices noting notion noviembre nowhere nuestro nuisance numb numero nurse
object objection obliged obnoxious obrigado obvio obviously occasion odds odometers odor offend offer offered
offering officer offline offseason offset offshore offside offspring often oiga oils oily okey okeydokey okie older
olvidalo olvidelo ombe onces oncoming oneself ongoing online onto onward onwards oops opened openings opens opera
operator opinion opted opting options optout orange order ordered orders oregon others otherwise ouch ought ours
ourselves outback outbreak outcome outcomes outdoor outdoors outfit outgoing outlaw outlet outlets outline outlive
outlook outnumber output outright outset oven overall overbilled overcame overcome overcoming overdrive overdue
overheated overkill overlook overlooked overlooking overlooks overpass override overrun overseas oversee overspending
overtake overtime overtook overturn overturned overuse owed owes owls owned owners pacific pacifier pack package
packed packing padded paddys page painless paint pair pale pancake pancaked pancakes panel pants panyol papa parade
parallel parcero pardon parece pareja parenle parent parental parks parkway parle parole parrot parry parted
particulars partner pasas pascua paso passes passing passive password pastel patch patched path patience patient
patricks patty pawned payback paycheck paydays payin payment payments payoff payout pays peace peach peek peeling
peep pegged pencil pennies percent pereza perfectly performed perhaps permanently pero persona personal persuaded
pester pestered pestering petes petey petrol petty pharmacy phoned phones phoning photo photos physical physio
pickles picks pickthe pickups pics pictures pienso piezas piggy piglet pigs pillow pills pinch pinned pintan pipe
piper pipes pirate pitch pitting pizza places plain plane planned planner planning plans plant plastic plate plates
playing playoffs pleas pleased pleasure plis plow plowed plugged plugs plumber plumbers plus pocket podadoras
podiatrist pointing poisoning poking polarizados polarizan pole police polite politely polka ponchada ponen ponytail
poodle poof pool poor popcorn popping pops porfa porfas porfavor porfis porq posponla poss possession possibility
possibly posso post posted postpone pounds pour poured pouring powerhouse powerpoint powers pray prayer prayers
prblems preciate preferably preference preferred prende prepaid preschool present presente presets presidents press
presses pressing pressured prestan presupuesto pretend prevent previous previously priced pricey pricier pricing
print private prize prob probation problema problems probs procedure procession procrastinating procrastinator
professional programmed prolly promise promises promos protect provide provided proxima prueba public puffing puffs
puked puking pullin pullman pulsates pulses pulsing pumps punch punk puntualito purchase purpose purring pushed
pushing pushy puttin quality quarry quart quarterfinals quarts quejas question questions quickens quicker quickie
quid quiero quietest quits quitting quiz qwerty racer racing rack racket radiator raffle rainbow raincheck rained
raining rains rainy raise rally ramen ramp ramps ranch rang range rates rattle rattles rattling reached reaching
reactivate reading reagendeme reaired realistic rearrange rearranging reasoning reasons rebook rebuilt recalled
recalls received reception receptionist recharge recheck reciben recibido recio recipient recital reckon recognize
recomienda recommendation recommended record recorramosla recover recovering recycle recycled recycling reddish redo
redone reduced reeked reeks refrain refused refuses regalado regardless regards register registration regret
regretfully regrets regular regulator rehab rehearsal rehearses reinstate relationship release relief relocated
relocating remembering remembers reminding remote removed removing remuevanme renewed reno rental rents repairs
replace replacement replacing replied replies repo repod repoed report reported reporting repossesed repossessed
representative request require resched rescheduled resent reservation reservemela reservoir reset reshuffle
respectfully respond responder responds response restore resubscribe resume retail retiring retract retriever return
returned returning returns revere reversa review reviews revisit revs rhythmic rich rideshare riding rifled righteo
righto rims ripoff ripped ripples rise riser rises risking risky riunione river rmap roadside roadway roars robbed
robbery robo robots rocks rode rodeo rodriguez roger rollin rolls rong roomate roommates roosters root rosalind roses
roster rotate rotates rotating rotations rotor rotten roundabout route routine rozumiem rubbing rubs ruined rumble
rumbles rumbling runaround runaway rundown runnin runoff runtime runway rushing rust rusted rusty sabadito sabbatical
sabria sacred safely sags sailboat sailed sailing salamat sale sales salon salt saludame salvage sandwich sank sarah
sarcastic satan saterday satisfactory satisfied sats sauce saves savings saying scale scam scare scared scary scene
scheduled schedules schools schreiben scoot scooter scooters scorching scrape scraped scrapyard scratches scream
screaming screams screech screeches screen screens screne screwdriver scrivo scrub scuffed scusi sdfghj sealed seals
seasons seatbelt seconds secretary secretarys sedans seems seep seepage sees seized selected selled selling sells
semana semester semi sender sendin sends senile seniors senor sense sensing sensor separately sequestered seriously
services servido setback setting settle settled settlement seven seventeen sewing shadow shady shaken shakin shale
shame shant shape shaped share sheep shell shepherd shield shifter shifting shimmy shimmys shin shine shiny ship
shipped shipping ships shirt shirts shocker shoe shoes shook shoots shopping shortest shortly shoulda shouldnt shout
shoved shovel showed shower showings shredded shrugged shudder shuddering shuffle shuts sideline sides sidewall
sideways siga siganme sighed sight sightseeing signal signals signed significa signs sigo siii siiii silence silenced
silent silly simmer simple simply single sings sink sinks sipi siri sirree sirven site sittin sixteenth skate
skateboard skidding skiing skinned skipping slack slacks slam slamming slams slapping slash sleeping slept slice
slick slicks slid slides slightest sling slip slipping slips sloppy slots slowdown slowest slowly slows sluggish
slushie smacked small smelled smelling smidge smoked smokes smoldering smoothly smth snacks snake snakes snapped
sneak sneer sniffed snippy snooze snore snort snotty snowbird snowbirding snowed snowing snows soaked soap soaps
sobres soccer socket socks soda softer solid somebodys someday somehow someones someplace sometimebetween sometimes
somewhat song sons sooo soot sore sorting sorts soul south sowing spaced spade spam spamming spark sparks sparrows
speaking specials speedo speeds spelled spend spending spent spiked spilled spits spitting splash splendid spokane
spoke spoken spokes sponge spongey spongy sponsor spotlight spots spotted sprayed spraying spread spreche sprung
squawk squeaking squeaky squeals squeezed squeezing squiggly squirt squish squishing squishy stabbing stadium staff
stage stahp stain stalked stalks stalling standing stands standstill star stare stared starred stars starter starting
startup stated states stations stats status stayed staying stead steady steal steaming steams steep steered steers
stench step stepping steve stick stickers sticks stiff stimulus stink stinks stipend stirring stitches stock stole
stomach stomp stomped stood stoop stopall stoplight stopping stops storage storing storm story straighten
straightforward stranded strands strangers strangled strawberries streaking streetcar stress strings stripped strobe
stroke strollers strong struck strut struts student students study stupid submission subscribe subscription subway
such sudden sugar suited summons sundown sunglasses suns sunup superhuman superpower superstitious supervisor supper
suppertime supplies supply support suppose surges surprise surprises surrendered surveys survive suspended swamp
sweaters sweetheart swell swim swimming switchboard switched swollen swore swung symbol syrup systems table tablet
tack tacos tactics tags tailgate taillight tailpipes takeaway takedown takeoff takeover taking tales talkin talks
tall talleres tambien tape tapping tardecito tardy tarp taste taught taxes taxi teacher teachers teams teapot tear
technically technician techs teenage teenager teenagers tells temperature tempranisimo temps tenant tender tengo tenn
tennish tens tent tenth term terribly tested tests texas textbook texteen thankyou theatre theirs therapy thereafter
thereby thermometer thermos thermostat thick thickness thin thingy thinkin thirteenth thks thong thou thoughtful
thousands thread threads threes threesome thrilled throttle throughout throughput throw throwing thrusday thud thump
thumping thunk thur thursdayd tick ticked ticket tickets ticking tickled tides tied tiers tighten tightened tilted
tilts timeline timeout tina tinny tint tiny tipo tipped tiresome title tjat tmrow toast toasty tock todays toddler
toddlers todo todos toma tomatoes tommorow tomorow tone tonite tonya tool tools topping tops torn totally touched
touches tough toward towards towel tower towing townhouse tpms trace traced track tracks traction trading traffics
trail trailers training trains trampoline trans transfer transferring translate transmisiones transport trash trated
traveling treasure treat treating trembles triangle trick tricks tricky tried tries trim triple triplets tripping
trips trolley trooper trough trout true trusted trying tuanis tubes tucson tudo tuition tulsa tune tuned tuning turbo
turkey turnaround turnout turnover turnpike twelfth twelve twentieth twin twisted twisting twxtos txting tyan tying
typed typical typo tyre tyres tysm ughhh ugly umbrella unacceptable unavailable unbelievable unbook uncancel uncles
underdog underestimate undergoes undergoing undergone underground underline undermine underside understand
understanding understood undertake undertaken undertook underwater underway underwent unfollow unfortunately unhappy
union university unknown unlimited unlock unlocked unlocking unmute unos unpause unprofessional unreal unschedule
unseen unstop unstoppable unsub unsubscribed unwanted unwell upholstery upselling upset upsold urge urselves usados
useful useless using usual utah vaaaa vacations vacuumed vague validate valve vamonos vamos vanish vanished vanishing
vans vape vegan vegas vehicles velocidad vemos vender vendieron vending vent vents verdict verification verify
vermont version verstehe veterans vetoed vets vfdn vibrates vibrating vibration video vidrios viernes view vinny
violently vision visited visiting visits voicemail voicemails void voltage vote votre voucher wachamos wafer waffle
wager wagons waitlist waits wake waking waldo walked walking walks wall wallows wanda wander wanders wanting
warehouse warm warmer warms warning warped warrior wash washboard washed washer washing waste wasted watch watched
waterfront waterhouse wave waves ways wayside wayyy waze weak weaned wear wearing weather weave weeds weekday
weekdays weekly weeping weight wekdays welcome welded wensday werent werk west weve whatcha whatd whatev whatevers
whatll whatnot whatsoever whdn wheelbarrow wheelchair whenevs wheni whereabouts whered wherever whether whichevers
whiff whine whines whining whirring whistle whistles whistling whoevers wholesome whom whoooo whoops whooshing whose
whyd whyyyy wicked wide widow widows wiggle wilco wild wildfire wildfires willing windshields winger winking winner
winters wipe wiped wipes wire wiring wishes wishing withdrawn withhold within wives wizard wjat wobbes wobbles
wobbling wobbly woke woman womp wondering woods woohoo words workday worked workin workout workplace workshop world
worm worms worried worry worrying worthwhile wouldit wouldve wrapped wrapper wraps wrecker wreckers wrench wrenches
wrist writeoff writing written wrongdoing wyoming xmas yank yard yeap yearbook yego yellowish yellowstone yeppers
yesm yess yessir yesss yessss yikes yourselves youtu youtube youuuu yuppers zelle zeros zone zzzz
"""
