"""Spanish words by kind, under the same names as the English ones; accents left out, as texts are read."""

from __future__ import annotations

KINDS: dict[str, str] = {
    "money": (
        "dinero plata lana feria varo pisto chavos billete peso pesos dolar dolares precio precios costo costos"
        " cuesta cuestan costar costaria cobra cobran cobrar cobraron cobro cobrado factura cuenta cotizacion"
        " presupuesto pago pagar pagando pague pagado paga sale salir saldria gasto gastos gastado caro cara"
        " caros careros barato barata economico descuento cupon deposito reembolso devolucion tarifa centavo"
        " cuanto"
    ),
    "phone": (
        "llamar llame llamen llama llamada llamadas llamenme llameme llamame marcar marque marquen marqueme"
        " marquenme hablar hable hablen hablenme hableme hablame telefono telefonazo cel celular contestar"
        " conteste contestan contesta timbrar timbre voz platicar comunicar comuniquen comuniqueme comunicarme"
    ),
    "staff": (
        "gerente encargado encargada jefe jefa dueno supervisor mecanico asesor asesora tecnico persona humano"
        " alguien muchacho muchachos senorita senor senora gente equipo personal recepcionista"
    ),
    "message": (
        "mensaje mensajes texto textos mensajito mensajitos texteo textear textearme textean notificacion"
        " notificaciones recordatorio recordatorios recado avisos aviso lista spam correo correos sms escriban"
        " escribir escribirme mandan manden mandar mandarme mandando enviar enviarme envien"
    ),
    "leave_me": (
        "alto baja parar pare paren basta salir quitar quiten quiteme quitenme quitame borrar borren borreme"
        " borrenme dejar dejen deje molestar molesten molestando molestia molestan eliminar eliminen sacar saquen"
        " saqueme saquenme bloquear bloqueo suscripcion cancelen harto harta fastidian fastidiar fastidio acoso"
    ),
    "family": (
        "esposa esposo mujer marido hijo hija hijos nino ninos ninas mama papa hermano hermana primo prima tio"
        " tia sobrino sobrina nieto nieta abuela abuelo cunado cunada suegro suegra yerno nuera compadre comadre"
        " amigo amiga vecino vecina novio novia viejo vieja familia patron patrona padrino padrastro"
    ),
    "do_it": (
        "mismo misma solo yo cambie cambio cambiaron cambiamos cambiado hice hicieron hizo hicimos hecho puse"
        " pusieron puso arregle arreglo arreglaron arreglado instale instalaron reemplace hecha hechas listo"
        " lista rellene echo echaron eche resolvi resuelto compuso compusieron compuse reparo repararon cochera"
    ),
    "elsewhere": (
        "taller talleres otro otra lado parte dealer agencia tienda conocido mecanico competencia refaccionaria"
        " llantera vulcanizadora"
    ),
    "gone_car": (
        "vendi vendimos vendio vendido vendiendo vender vendo venta deshice regale regalamos done cambie entregue"
        " devolvi perdida total chocaron choque choco chocado destrozado robaron robo robado yonke yonque"
        " deshuesadero chatarra remate subasta lease quitaron quito embargaron banco trueque nuevo murio fallecio"
        " inundo quemo tengo traspase"
    ),
    "car": (
        "carro coche auto troca camioneta camion van vehiculo mueble nave ranfla pickup sedan carrito troquita motor"
    ),
    "car_part": (
        "freno frenos pedal disco discos balata balatas pastilla pastillas llanta llantas goma gomas rueda ruedas"
        " volante direccion motor transmision clutch embrague suspension amortiguador amortiguadores escape mofle"
        " cofre tablero bateria alternador marcha arranque banda correa manguera radiador rin puerta ventana"
        " vidrio parabrisas limpiaparabrisas plumas escobillas faro faros luz luces foco aceite anticongelante"
        " refrigerante liquido gasolina atras adelante delantera trasera izquierda derecha temperatura aguja"
    ),
    "noise": (
        "ruido ruidos ruidito ruidazo sonido suena suenan sonar rechina rechinan rechinando rechinido chilla"
        " chillan chillido chirria golpe golpea golpeteo truena tronido traquetea traqueteo cascabelea zumba"
        " zumbido silba silbido ronronea rasca raspa raspando tac clac clic cruje rugido ruge ronca"
    ),
    "shake": (
        "vibra vibran vibrar vibrando vibracion tiembla tiemblan temblando temblor brinca brincos brincando"
        " sacude sacudidas jalonea jaloneo jalones bambolea baila bailando tambalea cascabelea tironea titubea"
        " cabecea"
    ),
    "smoke_smell": (
        "humo humea echando vapor huele olor oler quemado quemando quema fuego lumbre llamas incendio calienta"
        " calentando calento calentar sobrecalienta recalienta hirviendo hierve hule tufo apesta"
    ),
    "leak": (
        "gotea goteando gotas gota fuga fugas tira tirando derrama derramando charco mancha manchas escurre"
        " mojado chorrea"
    ),
    "fails": (
        "arranca arrancar arranco prende prender enciende encender apaga apago apagando muere murio quedo quede"
        " tirado varado varada parado falla fallan fallando patina resbala flojo floja duro dura hunde hundido"
        " suave esponjoso jala jalando desvia carga ponchada ponchado ponchadura pinchada pinchazo desinflada"
        " baja clavo tornillo chipote bola rajada reventada prendio prendida prendido roja rojo amarilla parpadea"
        " grua frena frenan agarra agarran bloquea traba"
    ),
    "busy": (
        "ocupado ocupada ocupados trabajo trabajando chamba jale turno turnos doblar extra junta juntas clases"
        " examen examenes apurado apurada atareado agenda lleno llena"
    ),
    "away": (
        "viaje viajando vacaciones fuera ciudad pueblo pais mexico hospital operacion operaron operado cirugia"
        " enfermo enferma gripa covid reposo recuperando embarazo bebe boda funeral velorio lejos rancho"
    ),
    "pay_day": (
        "quincena cobro cobre cobrar paguen pagan sueldo salario aguinaldo impuestos taxes raya reembolso mes cheque"
    ),
    "season": (
        "primavera verano otono invierno navidad semana santa fiestas ano mes meses semanas nieve frio calor posadas"
    ),
    "again_later": (
        "luego despues rato ahorita adelante tarde pronto otro otra vez recuerdeme recuerdenme recordar avisar"
        " aviso esperar espero espere espereme aguanteme aguante pendiente hasta cuando todavia aun proximo"
        " proxima"
    ),
    "doubt": (
        "quiza quizas talvez vez acaso seguro segura creo pienso pensar pensarlo pensando veo ver veremos decidir"
        " duda dudo depende"
    ),
    "refuse": (
        "no nel nop nunca jamas tampoco interesa interesado interesada quiero necesito hace falta ocupo gracias paso"
    ),
    "agree": (
        "si claro ok orale sale va dale vale bueno bien perfecto excelente seguro desde luego supuesto acuerdo"
        " simon arre andale listo confirmo confirmado encantado encantada gusto parece queda quedamos"
    ),
    "thanks": (
        "gracias agradezco agradecido agradecida amable amables bendiga bendiciones dios pague atencion atentos"
        " bonito excelente"
    ),
    "bad": (
        "malo mala malos pesimo pesima terrible horrible grosero grosera groseros mentira mentirosos mintieron"
        " mienten estafa estafadores rateros ratas ladrones robo transa abuso enojado enojada molesto molesta"
        " decepcionado decepcionada queja quejas quejar sucio sucia rayado rayon rayaron golpearon rompieron"
        " manchado grasa verguenza colmo asco basura porqueria inutiles incompetentes demanda demandar abogado"
        " mal servicio"
    ),
    "question": ("que porque cual cuales quien quienes como cuando donde cuanto cuanta"),
    "meaning": (
        "significa significan explicar explique expliqueme expliquen explicame entiendo entender sirve sirven"
        " funcion diferencia razon grave urgente urge peligroso peligro importante importa riesgo preocupar"
        " preocupo desgaste gastada gastadas palabras"
    ),
    "how_long": (
        "tarda tardan tardar tardaria tiempo hora horas minuto minutos rapido rapidito demora demoran dura espera largo"
    ),
    "place": (
        "donde direccion ubicacion ubicados ubicado quedan queda calle esquina cerca junto frente lado llego"
        " llegar domicilio mapa estacionamiento estan cruce avenida"
    ),
    "opening": (
        "abren abre abierto abiertos cierran cierra cerrado cerrados horario horarios atienden domingos sabados"
    ),
    "wrong_one": (
        "equivocado equivocada equivocaron numero conozco conocemos confunden confundieron persona otra alguien"
        " error dueno anterior nuevo mio jamas nunca pertenece"
    ),
    "who": ("quien quienes nombre empresa compania habla escribe manda parte identifiquese"),
    "machine": ("robot maquina bot computadora automatico automatica humano real grabadora ia programa"),
    "start_again": (
        "alta empezar iniciar reanudar activar suscribir suscribirme vuelvan volver seguir sigan quiero mandenme"
        " permiso"
    ),
    "on_way": (
        "trafico camino voy llego llegando tarde tardo retrasado retrasada retraso atorado atorada minutos ahi"
        " saliendo tren choque"
    ),
    "call_off": (
        "cancelar cancele cancelo cancelen cancela puedo podre ire voy ya no emergencia olvidelo anule anular dejemos"
    ),
    "shift_it": (
        "cambiar cambie cambio mover mueva muevan pasar pasarla recorrer reagendar reprogramar otro otra antes"
        " despues temprano vez mejor posponer adelantar"
    ),
    "odometer": ("odometro millas millaje kilometraje kilometros km marca lectura lleva trae"),
    "bring": ("llevar llevo lleve traer traigo paso pasar voy cita agendar agende apartar aparte lugar espacio hueco"),
    "lift": (
        "raite ride aventon transporte prestado prestan prestar espero esperar llaves llave buzon recoger recojo rentar"
    ),
}
