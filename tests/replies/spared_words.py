"""Words that none of our labeled replies hold often, one slip or one space from a frequent word: no typing errors.

Found by trying the 30,000 most frequent words of each language (a published list of frequencies, looked at, not kept).
"""

from __future__ import annotations

SPARED = {
    "en": (
        "airline airway alight attire babysit backdoor backdrop backseat backside baring barley bearer beating "
        "bitten bitter blackwater booed booing booklet bookshop booming booth bowing breakaway breakdown breakout "
        "breakthrough bride bridgewater brotherhood brunt businessman candid carefree cares cashed chanted chanting "
        "charting checklist checkout checkpoint chose claws clocks coats comeback cones counterparts counterpoint "
        "coveted criss crossroads crows daybreak daylight deadline desktop dipping diver dives diving doorway "
        "downfall downright downside downtime downturn drier dries droplets dropout eater ester ether everyday "
        "everytime fallout faraway fiend filed flatten forgave forgets forgetting forgotten freeman frontline "
        "frontman getaway giveaway goodnight goodwill gotten greenhouse halfback halftime hardy hater hears "
        "hereafter herring heyday hiding hitman homecoming homeowner hometown honesty household housewife housework "
        "however incomes indoor indoors inhuman inline instill insure intake lager latte leftover licked lighthouse "
        "lineman linger lively longtime lookout looming looms loosing loving makeover makeshift males "
        "manhood manny manson mater mindset moles monkeys monsoon moreover motherhood moths mules neatly "
        "neighborhood nerds newfound nightfall nighttime noone noses noting offend offline offseason offset "
        "offside offspring oncoming ongoing outback outbreak outcome outcomes outdoor outdoors outgoing outlaw "
        "outlet outline outlook outnumber output outright outset overall overcame overcome overcoming overdrive "
        "overlook overlooked overlooking overlooks override overrun oversee overtake overtook overturn overturned "
        "overuse parry passive patty payback payoff payout petty pills pitting powerhouse powerpoint pullman "
        "quarterfinals rally revere roadway runaway rundown runoff runtime runway scraped screwdriver "
        "sells sensing setback sewing shale ships shirt sideline simmer slice slowdown snake snakes snort socks "
        "somehow sowing spade spotlight sprung stage stalked stalks stare stared starred stated stats stoop "
        "straightforward streetcar superhuman superpower swung takeaway takedown takeover tales tested tests "
        "textbook thereafter thong threes threesome throughout throughput thunk tides tiers timeline timeout tipped "
        "tiresome tough townhouse trace traced trick tricks tries triplets trough tuned tuning turnout turnover "
        "tying underdog underestimate undergoes undergoing undergone underline undermine underside undertake "
        "undertaken undertook underway underwent vanish wafer wager waterfront waterhouse wayside weeds whatnot "
        "wholesome widows winger wipes withhold wives workout workplace worms worthwhile wrongdoing yearbook"
    ),
    "es": (
        "haya alla ciento siento tubo tuvo pizza bienes gotta gota echo hecho habra abra vaca baca valla vaya "
        "cazar casar voto boto vello bello reciente vaso baso varon baron ola hola onda honda rayar rallar pollo poyo "
        "hierro yerro cena sena cebo sebo coser cocer taza tasa risa riza "
        "agora aguda ahorra andadura andaluces aprecio aptos arrastrado asimismo avisado banca bando bendita "
        "bienestar blanda blando borde brinda buscado cambiara canela cantas cantos carrio celeste cerda cesta "
        "chaco chama chequee chivo cierro compare conformo conlleva consiente consigue contener contenga "
        "contengan contextos contiene contienen contrae coran cuidad cuneta danando daros decada decile declaro "
        "dejas demandan demandar depara desee detener detenga devuelta devuelvan devuelvo digna echado encierran "
        "encuesta enmarca entrara entredicho entres entretener entretiene envolver envuelta escasa escribire "
        "esperado estadia estadios estancada estres fiera forme funde grada gustara hacelo haven infierno influye "
        "jajajajajaja jovencita ligar llamara macro madame malestar malla manco mandarin manejado "
        "manjar manso marico mario medico medios mejorando menor metodo metodos mimos miseria "
        "mocos moore moros niega niego nieva padece panes pardo pares parra partio pasaje pasao pasara pasatiempo "
        "pasea patos pavos pedro penso perdia peron perron petro pincho pinto podia porra prada prado preciso "
        "predio predios previo previos promo pudieron quehacer quejado queramos queso quieto ratio reojo "
        "rogar sabre saldra salle salta salto saluda salva semillas senado senoria sente sento separa separar "
        "separo seran serra servida sobrio subasta suero supero supuse supuso tallado talon tango tarado tarea "
        "tarro tejer temer tempo tests tirano tocas toros trabajado trago trigo unido valle valor vanos "
        "vencer vencio venido venimos verdura verse viena vuela vuelan vuelco"
    ),
}
