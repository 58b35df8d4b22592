import { cookRows } from './cook-rows.ts';
import { monitorRows } from './monitor-rows.ts';
import { processRows } from './process-rows.ts';
import { emptied } from './profile.ts';
import type { Point, Row } from './row-schema.ts';
import { tables } from './tables.ts';

const any = { appliesTo: 'any', severity: 'refuse' } as const;

const schedule4 = (read: string) =>
  ({
    source: 'The Food Safety and Hygiene (England) Regulations 2013, Schedule 4',
    edition: read,
    sure: 'secondary copy',
  }) as const;
const asMade = { ...schedule4('as made, SI 2013/2996'), sure: 'primary' } as const;
const wales = schedule4('read in its twin for Wales, SI 2006/31 (W. 5)');

const caterers = {
  source: 'UK caterers’ practice',
  edition: 'none',
  sure: 'common practice',
} as const;

const { section, source, edition, sure, points } = tables['celsius-6-log'];
const seventyFor2Min = { section, source, edition, sure };
const equals: readonly Point[] = points.map(([temp, time]) => ({ temp, time }));

const ownRows: readonly Row[] = [
  {
    id: 'end-any',
    rule: 'end-temperature',
    what: { en: 'End of cooking, at the centre', es: 'Fin de la cocción, en el centro' },
    limit: { anyOf: equals },
    ...any,
    ...seventyFor2Min,
    corrective: ['keep-cooking', 'discard'],
  },
  {
    id: 'lethality-any',
    rule: 'lethality',
    what: { en: 'Kill at the centre', es: 'Reducción en el centro' },
    limit: { tables: [{ table: 'celsius-6-log' }] },
    ...any,
    ...seventyFor2Min,
    corrective: ['keep-cooking', 'discard'],
  },
  {
    id: 'roast-oven',
    rule: 'roast-oven',
    section: 'none',
    what: {
      en: 'Ovens in which time at a temperature counts',
      es: 'Hornos en los que cuenta el tiempo a una temperatura',
    },
    limit: { anyOven: true },
    appliesTo: ['intact', 'roast'],
    severity: 'refuse',
    ...caterers,
    corrective: ['keep-cooking', 'ask-the-authority'],
  },
  {
    id: 'receiving',
    rule: 'receiving',
    section: 'paragraph 2',
    what: { en: 'Chilled food as it comes in', es: 'Lo refrigerado al llegar' },
    limit: { atMost: '8 °C' },
    ...any,
    ...asMade,
    corrective: ['reject-delivery'],
  },
  {
    id: 'cold-hold',
    rule: 'cold-hold',
    section: 'paragraph 2',
    what: { en: 'Cold holding', es: 'Guardar en frío' },
    limit: { atMost: '8 °C' },
    ...any,
    ...asMade,
    corrective: ['chill-at-once', 'discard'],
  },
  {
    id: 'cold-hold-aim',
    rule: 'cold-hold',
    section: 'none',
    what: { en: 'Cold holding, to aim at', es: 'Guardar en frío, lo deseable' },
    limit: { atMost: '5 °C' },
    appliesTo: 'any',
    severity: 'warn',
    ...caterers,
    corrective: ['chill-at-once'],
  },
  {
    id: 'hot-hold',
    rule: 'hot-hold',
    section: 'paragraph 6',
    what: { en: 'Hot holding', es: 'Guardar en caliente' },
    limit: { atLeast: '63 °C' },
    ...any,
    ...wales,
    corrective: ['reheat-at-once', 'discard'],
  },
  {
    id: 'hot-hold-roast',
    rule: 'hot-hold-roast',
    section: 'paragraph 6',
    what: { en: 'Hot holding of a roast', es: 'Guardar caliente un asado' },
    limit: { atLeast: '63 °C' },
    ...any,
    ...wales,
    corrective: ['reheat-at-once', 'discard'],
  },
  {
    id: 'cooling',
    rule: 'cooling',
    section: 'none',
    what: { en: 'Cooling after the cook', es: 'Enfriar después de cocer' },
    limit: { from: '63 °C', stages: [{ to: '8 °C', within: '90 min' }] },
    ...any,
    ...caterers,
    corrective: ['pan-shallower', 'ice-bath', 'discard'],
  },
  {
    id: 'reheat',
    rule: 'reheat',
    section,
    way: 'oven',
    what: {
      en: 'Reheating for hot holding',
      es: 'Recalentar para guardar caliente',
    },
    limit: { anyOf: equals.slice(2) },
    ...any,
    source,
    edition: `${edition}; in Scotland SSI 2006/3, Schedule 4, asks for 82 °C`,
    sure,
    corrective: ['reheat-at-once', 'discard'],
  },
  {
    id: 'out-of-temperature',
    rule: 'out-of-temperature',
    section: 'paragraph 5',
    what: { en: 'Out of the cooler in all', es: 'Fuera del frío en total' },
    limit: { above: '8 °C', within: '4 h' },
    ...any,
    ...schedule4('read in its twin for Northern Ireland, SR 2006/3'),
    corrective: ['serve-now', 'discard'],
  },
  {
    id: 'time-control-cold',
    rule: 'time-control',
    section: 'paragraph 5',
    what: { en: 'On show without chilling, once', es: 'Expuesto sin frío, una sola vez' },
    limit: { startAtMost: '8 °C', within: '4 h' },
    ...any,
    ...schedule4('read in its twin for Northern Ireland, SR 2006/3'),
    corrective: ['serve-now', 'discard'],
  },
  {
    id: 'time-control-hot',
    rule: 'time-control',
    section: 'paragraph 7',
    what: { en: 'On show without heat, once', es: 'Expuesto sin calor, una sola vez' },
    limit: { startAtLeast: '63 °C', within: '2 h' },
    ...any,
    ...wales,
    corrective: ['serve-now', 'discard'],
  },
  {
    id: 'date-mark',
    rule: 'date-mark',
    section: 'none',
    what: {
      en: 'Ready food kept chilled; the day it was made is the first',
      es: 'Comida lista refrigerada; el día en que se hizo es el primero',
    },
    limit: { within: '3 d', at: '8 °C' },
    ...any,
    ...caterers,
    corrective: ['discard'],
  },
  {
    id: 'thermometer-food',
    rule: 'thermometer',
    section: '4-203.11',
    measures: 'food',
    what: { en: 'How true a food thermometer is', es: 'Exactitud del termómetro de alimentos' },
    limit: { within: '1 °C' },
    ...any,
    source: 'FDA Food Code',
    edition: 'Cal. Health & Safety Code 114159; no such figure in the Regulations',
    sure: 'secondary copy',
    corrective: ['adjust-thermometer', 'replace-thermometer'],
  },
];

const own = new Set(ownRows.map(({ id }) => id));

/** Ways of working that hold everywhere; nitrite is limited otherwise here, and left to fill in. */
const shared = [...monitorRows, ...processRows, ...cookRows.filter(({ id }) => id === 'first-heat')]
  .filter(({ id }) => !own.has(id))
  .map((row) => (row.rule.startsWith('nitrite') ? emptied(row) : row));

/** The rows of the profile in °C: hot from 63, cold to 8 by law and 5 by habit. */
export const celsiusRows: readonly Row[] = [...ownRows, ...shared];
