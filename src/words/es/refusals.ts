import type { Language } from '../words.ts';

/** Why there is no figure, and what would bring one. */
export const REFUSALS: Language['refusals'] = {
  'input-out-of-range': '{symbol}: es {value}; debe ser {range}.',
  'not-a-number': 'Estos valores no dan un resultado finito para {formula}. Compruebe si hay extremos.',
  'no-dilute-water': 'La estrategia no conoce el agua en aplicación diluida, y aquí hace falta. Elija una que la conozca.',
  'no-reference-water': 'El porcentaje de la etiqueta necesita su agua de referencia. Tómela de la etiqueta.',
  'no-nozzle-open': 'No hay ninguna boquilla abierta.',
  'no-pressure': 'Con estas tablas de boquillas ninguna presión da ese caudal.',
  'no-outline': 'La copa no tiene contorno: su falda no está por debajo de su cima.',
  'no-section': 'La copa no tiene sección: compruebe altura, falda y ancho.',
  'no-weather': 'Hacen falta temperatura y humedad.',
  'skirt-above-top': 'La falda no está por debajo de la cima.',
  'strategy-without-water': 'La estrategia no indica agua. Indique la propia.',
  'unbound-symbol': 'Falta el valor de {symbol}.',
  'unknown-block': 'No existe la parcela «{id}».',
  'unknown-rung': 'No existe la etapa «{id}».',
  'unknown-machine': 'No existe la máquina «{id}».',
  'unknown-strategy': 'No existe la estrategia «{id}».',
  'unknown-gear': 'La máquina no tiene la marcha de ventilador «{gear}».',
  'unknown-nozzle': 'La tabla de boquillas «{table}» no tiene el calibre «{size}».'
};

export const REFUSED_PLAIN = 'Un valor que hace falta está fuera de los límites.';

/** What a value must be. */
export const RANGES: Language['ranges'] = { above: 'mayor que cero', notNegative: 'cero o más', between: 'de {least} a {most}', finite: 'un número finito' };

/** Fields that the engine names by path. */
export const FIELDS: Language['fields'] = {
  rowSpacingM: 'distancia entre filas',
  treeSpacingM: 'distancia entre árboles',
  bbch: 'estado fenológico',
  pattern: 'recorrido de las calles',
  concentration: 'concentración',
  ownWaterLPerHa: 'agua propia',
  'canopy.heightM': 'altura del árbol',
  'canopy.widthM': 'ancho de copa',
  'canopy.skirtM': 'altura de la falda',
  'canopy.shape': 'forma de la copa',
  'canopy.profile': 'perfil de anchos',
  'canopy.filledFraction': 'parte llena',
  'canopy.missingFraction': 'árboles que faltan',
  'canopy.tallestTenthM': 'décima parte más alta',
  'canopy.ladM2PerM3': 'densidad de área foliar',
  'canopy.usDensityGalPer1000Ft3': 'factor de densidad',
  'setting.speedKmH': 'velocidad',
  'setting.pressureBar': 'presión',
  'setting.ptoRpm': 'régimen de la TDF',
  'setting.gear': 'marcha del ventilador',
  'machine.tankL': 'tanque',
  'machine.outlet': 'salida de aire',
  'label.rate': 'dosis de la etiqueta',
  'label.floor': 'dosis mínima propia',
  'label.adaptation': 'adaptación según la etiqueta',
  'label.maxPerHa': 'máximo de la etiqueta',
  'label.minWaterLPerHa': 'agua mínima de la etiqueta',
  'label.maxWaterLPerHa': 'agua máxima de la etiqueta',
  'label.referenceWaterLPerHa': 'agua de referencia de la etiqueta',
  'day.temperatureC': 'temperatura',
  'day.humidityPct': 'humedad',
  'day.windMPerS': 'viento',
  'day.altitudeM': 'altitud'
};
