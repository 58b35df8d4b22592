import type { CureMethod, Process, Row } from './row-schema.ts';
import { foodCode, washington, washington2009 } from './sources.ts';

const refuse = { appliesTo: 'any', severity: 'refuse' } as const;

const handbook = {
  section: 'chapter 3',
  source: "FSIS Processing Inspectors' Calculations Handbook",
  edition: '1995, a copy typed anew',
  sure: 'secondary copy',
} as const;

function cure(
  id: string,
  method: CureMethod,
  atMost: `${number} ppm`,
  en: string,
  es: string,
): Row {
  return {
    id: `nitrite-${id}`,
    rule: 'nitrite',
    what: { en: `Nitrite: ${en}`, es: `Nitrito: ${es}` },
    method,
    limit: { atMost },
    ...refuse,
    ...handbook,
    corrective: ['weigh-anew', 'discard'],
  };
}

function variance(id: string, process: Process, en: string, es: string): Row {
  return {
    id: `variance-${id}`,
    rule: 'variance',
    section: '3-502.11',
    what: { en: `${en} needs a variance`, es: `${es} necesita un permiso especial` },
    process,
    limit: { always: true },
    ...refuse,
    ...foodCode('as adopted in Maine, Washington and Michigan'),
    corrective: ['ask-the-authority'],
  };
}

/** What lies above what, what is washed when, and what no kitchen does without leave. */
export const processRows: readonly Row[] = [
  {
    id: 'raw-above-ready',
    rule: 'raw-above-ready',
    section: '3-302.11(A)(1)',
    what: {
      en: 'Nothing raw above food that is past its lethality step',
      es: 'Nada crudo encima de comida ya cocida',
    },
    limit: { always: true },
    ...refuse,
    ...washington2009,
    corrective: ['move-below', 'load-apart'],
  },
  {
    id: 'raw-poultry-above',
    rule: 'raw-poultry-above',
    section: '3-302.11(A)(2)',
    what: {
      en: 'Raw poultry above nothing but raw poultry',
      es: 'Aves crudas encima de nada más que aves crudas',
    },
    limit: { always: true },
    ...refuse,
    source: 'FDA Food Code',
    edition:
      'separation: Wash. Admin. Code 246-215-03306; shelf order: Sioux Falls inspection guide',
    sure: 'secondary copy',
    corrective: ['move-below', 'load-apart'],
  },
  {
    id: 'clean-interval',
    rule: 'clean-interval',
    section: '4-602.11(C)',
    what: {
      en: 'Washing and sanitising a table or tool in use',
      es: 'Lavar y desinfectar mesa o herramienta en uso',
    },
    limit: { within: '4 h' },
    ...refuse,
    ...washington2009,
    corrective: ['wash-and-sanitise'],
  },
  variance('curing', 'curing', 'Curing', 'Curar'),
  variance('smoking', 'smoking to preserve', 'Smoking to preserve', 'Ahumar para conservar'),
  variance(
    'additives',
    'additives to preserve',
    'An additive to preserve',
    'Un aditivo conservador',
  ),
  {
    ...variance('vacuum', 'vacuum bag', 'A vacuum bag', 'Una bolsa al vacío'),
    section: '3-502.11, 3-502.12',
    ...washington,
  },
  cure('comminuted', 'comminuted', '156 ppm', 'ground and cured', 'molido y curado'),
  cure('pumped', 'pumped or immersed', '200 ppm', 'pumped or immersed', 'inyectado o sumergido'),
  cure('dry', 'dry', '625 ppm', 'dry cured', 'curado en seco'),
  cure('bacon-pumped', 'bacon, pumped', '120 ppm', 'bacon, pumped', 'tocino inyectado'),
  cure('bacon-immersed', 'bacon, immersed', '120 ppm', 'bacon, immersed', 'tocino sumergido'),
  cure('bacon-dry', 'bacon, dry', '200 ppm', 'bacon, dry cured', 'tocino curado en seco'),
  {
    id: 'nitrite-at-least',
    rule: 'nitrite-at-least',
    what: {
      en: 'Nitrite, of the green weight, in what is cured and kept chilled',
      es: 'Nitrito, del peso crudo, en lo curado y refrigerado',
    },
    limit: { atLeast: '120 ppm' },
    ...refuse,
    ...handbook,
    section: 'p. 12',
    corrective: ['weigh-anew', 'discard'],
  },
];
