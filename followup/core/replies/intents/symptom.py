"""`symptom`: something that may be unsafe now is reported; the word lists are in `symptoms.py`. In doubt it is one."""

from __future__ import annotations

from followup.core.replies import symptoms
from followup.core.replies.said import Said

CODE = "symptom"
EXAMPLES: dict[str, tuple[str, ...]] = {
    "en": (
        "the trunk lid opens by itself when i drive", "my hood popped open on the road",
        "brakes feel soft all of a sudden", "theres a grinding noise up front", "car wont start this mornin",
        "yes tues works but it shakes at 60", "got a flat on the way home", "red light came on the dash",
        "smells like burning after i drive", "pedal goes almost to the floor", "i have to pump the brakes to stop",
        "it makes a whirring sound", "its cranking but wont catch", "keeps stalling at lights",
        "steering is super tight all of a sudden", "tire has a bubble in it", "fluid all over my driveway",
        "check engine came on yesterday", "temp needle is in the red", "gas smell in the cabin",
        "its jerking when i hit the gas", "car pulls left real bad", "wheel feels like its gonna fall off",
        "loud bang then it lost power", "hissing under the hood", "clunking over bumps",
        "dash lit up like a xmas tree", "my brakes r going", "had a blowout on 95", "squealing when i stop",
        "the car dies at every red light", "thumping from the back end", "it wont go into gear",
        "transmission slips", "no heat and the gauge is hot", "white smoke out the tailpipe", "airbag light on",
        "brakes squishy", "i hear scraping when i slow down", "my car is making a clicking noise",
        "steering wheel is shaking", "tire blew out this morning", "there's smoke coming from the engine",
        "leaking green stuff", "car died twice today", "the brakes are grinding bad", "abs light is on",
        "loud humming from the back", "it smells like burnt rubber", "the car jerks when shifting",
        "my tail light is out", "rough idle lately", "acceleration feels sluggish", "wheel came loose",
        "the temp light keeps coming on", "car is pulling", "battery light came on", "it stalled in traffic",
        "the pedal feels weird", "exhaust got really loud", "i hit a pothole and now it vibrates",
        "loses power going uphill", "tire is bald and i can see wires", "my car is making noise",
        "theres a weird vibration", "it wont turn over", "brake pedal is soft", "steering is loose",
        "i have a flat", "it smells like smoke", "the engine is knocking", "it's leaking oil bad",
        "my lights are flickering", "trans is slipping", "tire pressure light is on", "car overheated yesterday",
        "it shakes when i brake", "brakes are making a grinding noise", "battery keeps dying",
        "loud squeal when turning", "my gas pedal sticks", "hood popped open while driving",
        "the wheel makes a clicking noise", "there's a hole in my tire", "i feel a wobble at 50",
        "it stalls when i stop", "low oil pressure came up", "burning oil smell", "radiator is leaking",
        "power windows and dash went dead", "it pulls when braking", "wheel bearing is howling",
        "car lunges forward",
    ),
    "es": (
        "el pedal se va hasta el fondo", "hace un ruido feo cuando freno", "no arranca el carro",
        "si el martes, pero le sale humo", "se me poncho una llanta", "la llanta esta baja",
        "vibra mucho el volante", "esta tirando aceite", "se me va pa un lado", "cuando freno brinca el pedal",
        "se le prendio la luz del motor", "huele a gasolina adentro", "se me apago en la carretera",
        "los frenos estan bien bajos", "no agarran bien los frenos", "se esta calentando", "rechinan las balatas",
        "truena algo abajo", "el clutch se patina", "la direccion esta bien dura", "le sale vapor del cofre",
        "me quede tirada con los ninos", "se jalonea cuando acelero", "trae un chipote la llanta", "no da marcha",
        "anda fallando el motor", "no entran los cambios", "me pierde agua", "hace como un zumbido",
        "ya no frena igual", "se prendio el foco del aceite", "el mofle viene colgando", "la rueda se mueve mucho",
        "se me acabaron los frenos", "tiembla todo el carro", "los frenos rechinan mucho", "vibra a 60",
        "la luz del aceite", "se me descargo la bateria", "huele a hule quemado", "tiene fuga de agua",
        "frena raro", "suena como metal", "se apaga el carro solo", "la direccion se traba",
        "la llanta se esta saliendo", "se prende la luz del airbag", "el carro da jalones", "tira humo negro",
        "esta sobrecalentando", "hace clac clac cuando doy vuelta", "no sirve la luz de freno",
        "pierde fuerza en las subidas", "mi carro hace ruido", "vibra cuando freno", "el freno esta suave",
        "tengo una llanta baja", "se escucha un golpeteo", "sale humo por el escape", "la bateria no aguanta",
        "se calienta mucho", "no frena como antes", "tiene una fuga", "el carro se jala",
        "se prende el foco de los frenos", "el motor suena feo", "las luces parpadean", "huele a aceite quemado",
        "no quiere arrancar", "se siente flojo el volante", "la transmision brinca", "pisa uno el freno y se va",
        "anda cascabeleando",
    ),
}  # fmt: skip


def holds(said: Said) -> bool:
    """Whether a symptom is reported that is neither denied nor repaired."""
    return symptoms.reports(said.text, said.asked == "after_visit")
