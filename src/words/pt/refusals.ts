import type { Language } from '../words.ts';

/** Why there is no figure, and what would bring one. */
export const REFUSALS: Language['refusals'] = {
  'input-out-of-range': '{symbol}: é {value}; tem de ser {range}.',
  'not-a-number': 'Estes valores não dão um resultado finito para {formula}. Verifique se há extremos.',
  'no-dilute-water': 'A estratégia não conhece a água em aplicação diluída, que aqui é precisa. Escolha uma que a conheça.',
  'no-reference-water': 'A percentagem do rótulo precisa da sua água de referência. Indique-a a partir do rótulo.',
  'no-nozzle-open': 'Nenhum bico está aberto.',
  'no-pressure': 'Nenhuma pressão dá esse caudal com estas tabelas de bicos.',
  'no-outline': 'A copa não tem contorno: a saia não está abaixo do topo.',
  'no-section': 'A copa não tem secção: verifique altura, saia e largura.',
  'no-weather': 'São precisas a temperatura e a humidade.',
  'skirt-above-top': 'A saia não está abaixo do topo.',
  'strategy-without-water': 'A estratégia não indica água. Indique a sua.',
  'unbound-symbol': 'Falta o valor de {symbol}.',
  'unknown-block': 'Não existe a parcela “{id}”.',
  'unknown-rung': 'Não existe a etapa “{id}”.',
  'unknown-machine': 'Não existe a máquina “{id}”.',
  'unknown-strategy': 'Não existe a estratégia “{id}”.',
  'unknown-gear': 'A máquina não tem a marcha do ventilador “{gear}”.',
  'unknown-nozzle': 'A tabela de bicos “{table}” não tem o calibre “{size}”.'
};

export const REFUSED_PLAIN = 'Um valor de que isto precisa está fora dos limites.';

/** What a value must be. */
export const RANGES: Language['ranges'] = { above: 'maior que zero', notNegative: 'zero ou mais', between: '{least} a {most}', finite: 'um número finito' };

/** Fields that the engine names by path. */
export const FIELDS: Language['fields'] = {
  rowSpacingM: 'distância entre linhas',
  treeSpacingM: 'distância entre árvores',
  bbch: 'estado fenológico',
  pattern: 'modo de passagem',
  concentration: 'concentração',
  ownWaterLPerHa: 'água própria',
  'canopy.heightM': 'altura da árvore',
  'canopy.widthM': 'largura da copa',
  'canopy.skirtM': 'altura da saia',
  'canopy.shape': 'forma da copa',
  'canopy.profile': 'perfil de larguras',
  'canopy.filledFraction': 'parte preenchida',
  'canopy.missingFraction': 'árvores em falta',
  'canopy.tallestTenthM': 'décimo mais alto',
  'canopy.ladM2PerM3': 'densidade de área foliar',
  'canopy.usDensityGalPer1000Ft3': 'fator de densidade',
  'setting.speedKmH': 'velocidade',
  'setting.pressureBar': 'pressão',
  'setting.ptoRpm': 'rotação da TDF',
  'setting.gear': 'marcha do ventilador',
  'machine.tankL': 'tanque',
  'machine.outlet': 'saída de ar',
  'label.rate': 'dose do rótulo',
  'label.floor': 'dose mínima própria',
  'label.adaptation': 'adaptação segundo o rótulo',
  'label.maxPerHa': 'máximo do rótulo',
  'label.minWaterLPerHa': 'água mínima do rótulo',
  'label.maxWaterLPerHa': 'água máxima do rótulo',
  'label.referenceWaterLPerHa': 'água de referência do rótulo',
  'day.temperatureC': 'temperatura',
  'day.humidityPct': 'humidade',
  'day.windMPerS': 'vento',
  'day.altitudeM': 'altitude'
};
