"""English words by kind: what stands for the same thing counts together when a text is compared with others.

A kind is no meaning. `bucks`, `dollars` and `invoice` are of one kind; the fitted weights say what the kind speaks
for. Endings (`s`, `ed`, `ing`) need not be listed.
"""

from __future__ import annotations

KINDS: dict[str, str] = {
    "money": (
        "money buck bucks dollar dollars cash price prices pricey priced cost costs costly charge charged charges"
        " fee fees bill bills billed invoice quote quoted estimate payment pay paying paid expense expensive"
        " cheap cheaper affordable afford budget funds wallet bank rate rates total owe owed refund deposit"
        " credit debit discount coupon deal kidney fortune broke damage dough grand penny pennies cents tab"
        " overcharge overcharged ripoff"
    ),
    "phone": (
        "call calls called calling phone phoned phones telephone ring rang dial dialed buzz holler voicemail"
        " landline cell mobile talk talked speak spoke spoken conversation voice hear hearing answer answered"
        " pick picked"
    ),
    "staff": (
        "manager boss supervisor owner advisor tech technician mechanic person human somebody someone anyone"
        " receptionist rep representative guy guys folks people team staff service desk department"
    ),
    "message": (
        "text texts texted texting message messages messaged messaging sms notification notifications reminder"
        " reminders reminded alert alerts spam list subscription subscribed robocall robotext inbox thread emails"
        " email mail"
    ),
    "leave_me": (
        "stop quit end cease remove removed unsubscribe opt block blocked blocking alone leave bother bothering"
        " harass harassing pester pestering bugging annoying annoyed lose delete deleted scrub erase desist"
        " enough knock spamming"
    ),
    "family": (
        "wife husband hubby son daughter kid kids child children mom mother dad father brother sister cousin"
        " uncle aunt nephew niece grandson granddaughter grandkid grandma grandpa roommate friend buddy neighbor"
        " boyfriend girlfriend fiance ex inlaw inlaws stepson stepdad fam family parents grandfather grandmother"
        " pal bestie"
    ),
    "do_it": (
        "myself himself herself ourselves driveway garage diy installed install swapped swap replaced replace"
        " changed change fixed fix did done handled serviced service performed topped filled flushed rotated"
        " knocked put took finished completed sorted"
    ),
    "elsewhere": (
        "dealer dealership elsewhere competitor shop store parts warehouse place another other somewhere somebody"
        " downtown town across mobile independent chain"
    ),
    "gone_car": (
        "sold sell selling traded trade totaled totalled wrecked wreck junked junk junkyard scrapped scrap"
        " donated donate stolen stole repossessed repo gave given gifted lease leased returned turned crushed"
        " auction auctioned buyer salvage insurance upgraded retired dead died deceased crashed flooded burned"
        " impounded"
    ),
    "car": (
        "car cars truck van suv sedan coupe pickup minivan vehicle ride wagon hatchback auto engine motor beater"
        " clunker wheels her she rig whip"
    ),
    "car_part": (
        "brake brakes pedal rotor rotors pad pads tire tires wheel wheels steering engine motor transmission"
        " clutch gear gears suspension shock shocks strut struts axle exhaust muffler tailpipe hood dash"
        " dashboard battery alternator starter belt hose radiator hubcap fender bumper door window windshield"
        " wiper wipers headlight light lights lamp gauge temp temperature oil coolant antifreeze fluid fuel gas"
        " rear front left right driver passenger trunk ac heater vent vents sidewall tread rim valve underneath"
        " undercarriage"
    ),
    "noise": (
        "noise noises noisy sound sounds sounding grind grinding squeal squealing squeak squeaking squeaky"
        " screech screeching clunk clunking clank clanking rattle rattling knock knocking tick ticking click"
        " clicking thump thumping thud bang banging pop popping hum humming whine whining whistle whistling roar"
        " roaring growl growling scrape scraping rub rubbing hiss hissing rumble rumbling chirp chirping howl"
        " howling loud crunch crunching clatter whirring whir buzzing groan groaning moan moaning womp"
    ),
    "shake": (
        "shake shakes shaking shaky vibrate vibrates vibrating vibration vibrations wobble wobbles wobbling"
        " wobbly shimmy shudder shudders shuddering jerk jerks jerking jerky bounce bouncing bouncy pulse pulsing"
        " pulsating tremble judder lurch lurching lurches hesitate hesitates hesitating stutter stuttering"
        " sputter sputtering stumbles bucking surging"
    ),
    "smoke_smell": (
        "smoke smoking smoky fumes steam steaming smell smells smelling smelled stink stinks odor burning burnt"
        " burn fire flames flame overheat overheating overheated hot boiling boil boiled melted rotten rubber"
        " sweet whiff clouds"
    ),
    "leak": (
        "leak leaks leaking leaky drip drips dripping puddle puddles spot spots pool wet dribble gushing spilling"
        " stain underneath driveway"
    ),
    "fails": (
        "wont start starts starting crank cranks cranking stall stalls stalled stalling die dies died dying dead"
        " quit stuck stranded jump jumped breakdown fails failed failing slipping slips sluggish soft spongy"
        " sponge mushy sinks sinking floor stiff loose pull pulls pulling drift drifts drifting veer veers"
        " veering wander wanders flat bulge bubble bulging nail screw puncture punctured blowout shredded cord"
        " cords crack cracked low lit red amber yellow orange glowing blinking flashing flicker flickering"
        " warning weak grabby locks locking smoking tow towed"
    ),
    "busy": (
        "busy swamped slammed hectic crazy work working job shift shifts overtime deadline meeting meetings class"
        " classes exam exams finals schedule booked full packed tied snowed"
    ),
    "away": (
        "town vacation trip travel traveling travelling away abroad overseas deployed deployment cruise holiday"
        " holidays hospital surgery recovering sick ill flu covid broke leg cast funeral wedding baby maternity"
        " quarantine out"
    ),
    "pay_day": (
        "payday paycheck check paid salary bonus tax taxes refund commission stipend pension unemployment loan month"
    ),
    "season": (
        "spring summer fall autumn winter snow season warmer thaw christmas thanksgiving easter year month months weeks"
    ),
    "again_later": (
        "later eventually someday sometime soon another again remind reminder back touch circle follow ping"
        " holler wait waiting hold holding postpone delay rain raincheck pause until til till after once whenever"
    ),
    "doubt": (
        "maybe perhaps possibly probably unsure sure guess think thinking consider decide undecided idk dunno mull"
    ),
    "refuse": (
        "no nope nah not never pass refuse decline skip unnecessary uninterested interested need want dont wont"
        " rather forget nevermind nvm thanks"
    ),
    "agree": (
        "yes yeah yep yup sure ok absolutely definitely certainly indeed affirmative perfect works sounds good"
        " great fine deal cool alright awesome wonderful lovely please gladly totally bet word aye roger copy"
        " 10-4 confirmed confirm suits lets"
    ),
    "thanks": (
        "thanks thank thankful appreciate appreciated grateful obliged cheers blessed bless kind sweet welcome"
        " best wonderful gracious nice"
    ),
    "bad": (
        "bad terrible awful horrible worst poor rude unprofessional ridiculous joke scam crooks thieves liars"
        " lied lie lying dishonest cheated cheat mad angry furious upset disappointed disappointing unacceptable"
        " disgusted disgusting dirty filthy greasy scratched scratch scratches dent dented broke broken ruined"
        " careless sloppy incompetent pathetic shady unhappy sucks crap garbage trash mess complaint complain"
        " review lawyer sue nuts outrageous insane stupid useless wtf damn hell"
    ),
    "question": ("what why how when where which who whom whose"),
    "meaning": (
        "mean means meaning explain explained explanation understand understood purpose difference between reason"
        " worry worried concern concerned serious urgent dangerous safe risk risky important matter matters bad"
        " severe wear worn thin english plain jargon"
    ),
    "how_long": (
        "long hour hours minute minutes quick quickly fast day half afternoon turnaround duration takes wait"
        " waiting stuck lunch"
    ),
    "place": (
        "where address located location street road corner across near nearby behind beside building directions"
        " map parking lot exit highway downtown mall plaza gps turn moved"
    ),
    "opening": (
        "open opens opened opening close closes closed closing hours doors unlock lock sundays saturdays weekends"
        " weekend"
    ),
    "wrong_one": (
        "wrong number mistake mistaken incorrect person someone else different dont own owned never belong"
        " belongs previous former new got had used stranger confused mixed"
    ),
    "who": ("who name company business calling called identify identity whos behind sender"),
    "machine": ("bot robot machine automated computer ai human real program recording chatbot"),
    "start_again": (
        "start resume subscribe sign signed rejoin join restart permission again back unblock reactivate allow"
    ),
    "on_way": (
        "traffic way running late behind stuck minutes arrive arriving eta accident train detour almost there"
        " soon hang coming leaving omw"
    ),
    "call_off": (
        "cancel cancelled canceled canceling scratch bail back drop scrap void call off make cant longer emergency"
    ),
    "shift_it": (
        "move moved moving reschedule switch change push bump swap earlier later different another instead sooner"
        " postpone shift bring forward"
    ),
    "odometer": ("odometer mileage miles reading mi clock dash"),
    "bring": ("bring come drop stop swing visit appointment slot spot fit squeeze book schedule set put"),
    "lift": ("ride lift shuttle loaner rental borrow taxi wait waiting lobby key keys dropbox pickup"),
}
