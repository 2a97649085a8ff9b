import type { adviceScreen as EN } from '../../en/spray/advice-screen.ts';
import type { Translated } from '../../translation.ts';

/** Labels of the search for better settings. */
export const adviceScreen: Translated<typeof EN> = {
  title: '¿Mejores ajustes?',
  line: 'Boquillas, su giro, gotas, aire y velocidad dentro de los límites de la máquina',
  intro: 'Busca ajustes de esta máquina que pongan más en los árboles, de forma más uniforme y con menos pérdidas, con los litros por hectárea de hoy o menos. No se cambia nada antes de que usted lo diga.',
  start: 'Buscar mejores ajustes',
  again: 'Buscar de nuevo',
  searching: 'Buscando …',
  part: (done) => `${done} hecho`,
  stop: 'Detener',
  stopped: 'Detenida.',
  failed: 'No se pudo hacer aquí la búsqueda. Vuelva a cargar la página.',
  outdated: 'El ajuste ha cambiado desde entonces: lo que figura aquí es del anterior.',
  looked: (settings) => `${settings} ajustes mirados.`,
  front: 'Qué se puede conseguir',
  frontNote: 'Ninguno de estos es mejor que otro en todo. Debajo de cada cifra, su cambio respecto a hoy; ≈ es sin diferencia clara.',
  today: 'hoy',
  columns: { setting: 'ajuste', trees: 'en los árboles', lost: 'perdido', cv: 'CV', rate: 'capacidad de trabajo' },
  plotTrees: 'en los árboles →',
  plotLost: 'perdido ↑',
  noClear: 'sin diferencia clara',
  plan: (n, names) => (names ? `Ajuste ${n}: ${names}` : `Ajuste ${n}`),
  names: {
    'most-on-trees': 'más en los árboles',
    'least-lost': 'menos perdido',
    'most-even': 'más uniforme',
    fastest: 'más rápido',
    'fewest-changes': 'menos cambios'
  },
  all: (effects) => `Todo junto: ${effects}.`,
  steps: 'Paso a paso',
  volume: (litres) => `Pulveriza ${litres}.`,
  use: 'Usar este ajuste',
  useOf: (name) => `Usar: ${name}`,
  inUse: 'Es el ajuste actual',
  used: (name) => `Ajustado: ${name}. Compruebe las cintas y el papel antes de pulverizar una parcela con él.`,
  undo: 'Deshacer'
};
