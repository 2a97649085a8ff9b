import type { CHANGES as EN_CHANGES, EFFECTS as EN_EFFECTS } from '../../en/spray/advice.ts';
import type { Part } from '../../language.ts';
import type { Translated } from '../../translation.ts';
import type { Template } from '../../words.ts';

/** What the search for settings finds and refuses. */
export const SPRAY_ADVICE: Part = {
  findings: {
    'spray-advice-ribbon-decides': 'Esto da un {off} menos de aire de lo que quiere la regla de la calle, más que el {tolerance} que cuenta como adecuado. Cuelgue antes cintas detrás de la fila: solo vale si todavía se mueven.',
    'spray-advice-ribbon-unruled': 'Esto da menos aire que ahora, y aquí no hay ninguna regla que diga si basta. Cuelgue antes cintas detrás de la fila: solo vale si todavía se mueven.',
    'spray-advice-thinner-bottom': 'El tercio inferior de la copa recibe un {less} menos de la dosis. Si la plaga está ahí, no lo haga.',
    'spray-advice-thinner-middle': 'El tercio medio de la copa recibe un {less} menos de la dosis. Si la plaga está ahí, no lo haga.',
    'spray-advice-thinner-top': 'El tercio superior de la copa recibe un {less} menos de la dosis. Si la plaga está ahí, no lo haga.',
    'spray-advice-no-clear-difference': 'Sin diferencia clara con el ajuste de hoy: lo que gana queda dentro de lo que el modelo no puede distinguir.',
    'spray-advice-remix': 'Los litros cambian de {from} a {to}: calcule de nuevo el caldo y respete el agua y la dosis de la etiqueta.',
    'spray-advice-understated': 'Lo que ahorra menos aire está aquí subestimado: ensayos publicados encontraron pérdidas mucho menores.',
    'spray-advice-check-pressure': 'La bomba gira con la TDF: ajuste de nuevo la presión a {pressure} y mire la agitación.',
    'spray-advice-speed-unseen': 'El modelo no ve ningún efecto de la velocidad de avance. Cada metro de fila recibe un {air} menos de aire: decide la cinta.',
    'spray-advice-today-stands': 'Dentro de los límites de la máquina nada es mejor en una cosa sin ser peor en otra. El ajuste de hoy se mantiene.',
    'spray-advice-holds-litres': 'Esto mantiene el agua donde tiene que estar: {litres} después.',
    'spray-advice-today-stopped': 'El ajuste de hoy no puede usarse tal como está: vea las advertencias. Las propuestas respetan los límites.',
    'spray-advice-none-clear': 'Ningún ajuste de los encontrados es claramente mejor que el de hoy.',
    'spray-advice-classes-unknown': 'La tabla de una boquilla no imprime clases de gota: se tomó para ella un cono hueco habitual. Introduzca las clases de su hoja.',
    'spray-advice-judges': 'Esto ordena ajustes; no es una recomendación. Deciden las cintas, el papel hidrosensible, la etiqueta y las normas locales.'
  },
  refusals: {
    'advice-cancelled': 'La búsqueda se detuvo.',
    'advice-too-windy': 'Hay demasiado viento para pulverizar: no se propone ningún ajuste. Espere, como dicen la etiqueta y las normas locales.',
    'advice-inversion': 'Hay señales de inversión térmica, en la que las gotas finas quedan suspendidas: no se propone ningún ajuste. Espere, como dicen la etiqueta y las normas locales.',
    'advice-drops-dry': 'Hoy las gotas se secan demasiado deprisa: no se propone ningún ajuste. Espere, como dicen la etiqueta y las normas locales.',
    'advice-too-hot': 'Hace demasiado calor para pulverizar: no se propone ningún ajuste. Espere, como dicen la etiqueta y las normas locales.',
    'advice-too-dry': 'El aire está demasiado seco para pulverizar: no se propone ningún ajuste. Espere, como dicen la etiqueta y las normas locales.',
    'advice-below-label-water': 'El ajuste da menos agua de la que quiere la etiqueta, y nada de aquí puede dar más. Suba antes el agua hasta la etiqueta.',
    'advice-stopped': 'Una observación dice parar, y ningún ajuste la elimina. Arregle eso primero.'
  }
};

/** One change, as the subject of a sentence. */
export const CHANGES: Translated<typeof EN_CHANGES> = {
  shut: 'Cerrar {nozzles}',
  open: 'Abrir {nozzles}',
  swivel: 'Girar {nozzles} {turn}',
  size: 'Montar {to} en lugar de {from} en {nozzles} (gota {toClass} en lugar de {fromClass})',
  pressure: 'Ajustar {to} en lugar de {from}',
  gear: 'Poner la marcha de ventilador {to} en lugar de {from}',
  pto: 'Poner la TDF a {to} en lugar de {from}',
  'gear-and-pto': 'Poner la marcha de ventilador {to} a {rpm} en lugar de {from} a {fromRpm}',
  speed: 'Conducir a {to} en lugar de {from}'
};
/** A change of pressure that makes other drops. */
export const PRESSURE_DROPS: Template = ' (gota {toClass} en lugar de {fromClass})';

/** What it does, as the rest of the sentence. */
export const EFFECTS: Translated<typeof EN_EFFECTS> = {
  onTrees: { more: 'pone en los árboles un {share} más de lo pulverizado', less: 'pone en los árboles un {share} menos de lo pulverizado' },
  lost: { more: 'pierde {points} puntos menos', less: 'pierde {points} puntos más' },
  evenness: { more: 'lo reparte de forma más uniforme', less: 'lo reparte de forma menos uniforme' },
  workRate: { more: 'sube la capacidad de trabajo un {share}', less: 'baja la capacidad de trabajo un {share}' },
  none: 'no hace ninguna diferencia clara'
};
