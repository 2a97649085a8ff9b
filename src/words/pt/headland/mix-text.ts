import type { mixText as EN } from '../../en/headland/mix-text.ts';
import type { Translated } from '../../translation.ts';

/** What the Loads step and the command line say alike. */
export const mixText: Translated<typeof EN> = {
  areaFrom: { mix: 'como indicado para este tratamento', block: 'da parcela', rows: 'pelas linhas, o seu comprimento e a distância entre elas' },
  volumeFrom: { check: 'como medido na cabeceira', setting: 'como diz a regulação, ainda não medido' },
  groups: {
    conditioners: 'condicionador de água',
    'soluble-powders': 'pó ou grânulos solúveis',
    'dry-powders': 'pó ou grânulos secos',
    'liquid-flowables': 'suspensão líquida',
    emulsifiables: 'emulsionável',
    solutions: 'solução',
    adjuvants: 'adjuvante',
    unknown: 'tipo desconhecido'
  },
  formulations: {
    WP: 'WP, pó molhável',
    WG: 'WG, grânulos dispersíveis',
    DF: 'DF, suspensão seca (dry flowable)',
    SG: 'SG, grânulos solúveis em água',
    SP: 'SP, pó solúvel em água',
    SC: 'SC, suspensão concentrada',
    SE: 'SE, suspo-emulsão',
    F: 'F, suspensão (flowable)',
    ME: 'ME, microemulsão',
    CS: 'CS, suspensão de cápsulas',
    EC: 'EC, concentrado para emulsão',
    EW: 'EW, emulsão de óleo em água',
    OD: 'OD, dispersão em óleo',
    SL: 'SL, solução concentrada',
    adjuvant: 'adjuvante',
    conditioner: 'condicionador de água',
    other: 'outro, não está na lista'
  },
  order: {
    water: (share) => `Água: pelo menos ${share} dela antes do primeiro produto.`,
    agitate: 'Agitação ligada, e assim até o tanque estar vazio.',
    product: (name, group) => `${name} (${group}). Deixe dispersar por completo antes do seguinte.`,
    one: (name, group) => `${name} (${group}).`,
    'fill-up': 'Complete com água até ao que a carga leva e vá pulverizar: não deixe uma calda parada.'
  },
  labelFirst: 'A ordem dos rótulos está primeiro; procure-a em cada um. Onde nada dizem, por esta ordem:',
  orderNotes: [
    'Ordem por tipo de produto: North Dakota State University, 2021. Os condicionadores primeiro, a parte de água e os adjuvantes no fim são prática comum.',
    'Outra ordem em uso agita depois dos produtos molháveis e acaba com os tensioativos; há quem encha o tanque até meio antes de misturar.',
    'Antes de uma mistura que ainda não fez: um ensaio em frasco com a mesma água, e ver se a mistura é permitida.'
  ],
  cautions: [
    'Manusear o concentrado é o passo mais perigoso do dia: equipamento de proteção como diz cada rótulo, água limpa ao alcance, mais ninguém por perto.',
    'Encha com uma mangueira que não possa aspirar de volta. Nunca deixe sozinho um tanque a encher.',
    'Pese numa balança, meça num copo graduado: tampas e marcas do tanque podem errar um décimo.'
  ],
  rinse: {
    tenfold: (water, residual) => `Lave com ${water}: dez vezes os ${residual} que ficam.`,
    tenth: (water) => `Lave com ${water}: um décimo do tanque, porque não se sabe o que fica.`,
    left: (once, thrice) => `Usada de uma vez deixa ${once} da concentração; em três partes, pulverizada cada uma até ao fim, ${thrice}.`,
    out: 'Pulverize a água de lavagem na cultura, diluída e em andamento, conforme o rótulo e a lei local o permitam; nunca num só sítio nem para um esgoto.'
  },
  hours: (h, min) => (h === 0 ? `${min} min` : `${h} h ${min.padStart(2, '0')} min`)
};
