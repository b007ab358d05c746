"""Words that none of our labeled replies hold often, one slip or one space from a frequent word: no typing errors.

Found by trying the 30,000 most frequent words of each language (a published list of frequencies, looked at, not kept).
"""

from __future__ import annotations

SPARED = {
    "en": (
        "airline airway alight attire babysit backdoor backdrop backseat backside baring barley bearer beating "
        "bitten bitter booed booing booklet bookshop booming bowing breakaway breakdown breakout breakthrough bride "
        "brotherhood brunt businessman candid carefree cares cashed chanted chanting charting checklist checkout "
        "chose claws clocks coats comeback cones coveted criss crows daybreak daylight deadline desktop dipping "
        "diver dives diving doorway downfall downright downside downtime downturn drier dries droplets dropout "
        "eater ester ether everyday everytime fallout faraway fiend filed flatten forgave forgets forgetting "
        "forgotten freeman frontline frontman getaway giveaway goodnight goodwill gotten halfback halftime hardy "
        "hater hears hereafter herring heyday hiding hitman homecoming homeowner hometown honesty household "
        "housewife housework however incomes indoor indoors inhuman inline instill insure intake leftover licked "
        "lighthouse lineman linger lively longtime lookout looming looms loosing loving makeover makeshift males "
        "manhood manson mater mindset moles monkeys monsoon moreover motherhood moths mules neatly neighborhood "
        "nerds newfound nightfall nighttime noses noting offend offline offseason offset offside offspring oncoming "
        "ongoing outback outbreak outcome outcomes outdoor outdoors outgoing outlaw outlet outline outlook "
        "outnumber output outright outset overall overcame overcome overcoming overdrive overlook overlooked "
        "overlooking overlooks override overrun oversee overtake overtook overturn overturned overuse parry passive "
        "patty payback payoff payout petty pills pitting pullman rally revere roadway runaway rundown runoff "
        "runtime runway scraped sells sensing setback sewing shale ships shirt sideline simmer slice slowdown snake "
        "snakes snort socks somehow sowing spade spotlight sprung stage stalked stalks stare stared starred stated "
        "stats streetcar swung takeaway takedown takeover tales tested tests textbook thereafter thong threes "
        "threesome throughout throughput thunk tides tiers timeline timeout tipped tiresome tough townhouse trace "
        "traced trick tricks tries triplets trough tuned tuning turnout turnover tying underdog undergoes "
        "undergoing undergone underline undermine underside undertake undertook underway underwent vanish wafer "
        "wager wayside whatnot wholesome widows winger wipes withhold wives workout workplace wrongdoing yearbook"
    ),
    "es": (
        "agora aguda ahorra andadura andaluces aprecio aptos arrastrado asimismo avisado banca bando bendita "
        "bienestar blanda blando borde brinda buscado canela cantas cantos carrio celeste cerda chaco chama chequee "
        "chivo cierro compare conformo conlleva consiente consigue contener contenga contengan contextos contiene "
        "contienen contrae coran cuidad cuneta danando daros decada decile declaro dejas demandan demandar depara "
        "desee detener detenga devuelta devuelvan devuelvo digna echado encierran encuesta enmarca entrara entres "
        "entretener entretiene envolver envuelta escasa escribire esperado estadia estadios estancada estres fiera "
        "forme funde grada gustara hacelo haven infierno influye jovencita ligar llamara macro madame malestar "
        "manco mandarin manejado manjar manso marico medico medios mejorando menor metodo metodos mimos miseria "
        "mocos moros niega niego nieva padece panes pardo pares parra partio pasaje pasao pasara pasatiempo pasea "
        "patos pavos pedro penso perdia peron perron petro pincho pinto podia porra prada prado preciso predio "
        "predios previo previos promo pudieron quehacer quejado queramos queso ratio reojo rogar sabre saldra salta "
        "salto saluda salva semillas senado senoria sente sento separa separar separo seran servida sobrio subasta "
        "suero supero supuse supuso tallado talon tango tarado tarea tarro tejer temer tempo tests tirano tocas "
        "toros trabajado trago trigo unido valor vanos vencer vencio venido venimos verdura verse viena vienes "
        "vuela vuelan vuelco"
    ),
}
