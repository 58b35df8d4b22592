import { appendixA } from './meat-tables.ts';
import type { Row } from './row-schema.ts';
import { foodCode } from './sources.ts';

/** How the numbers themselves are taken: where the probe sits, how often, how true it is. */
export const monitorRows: readonly Row[] = [
  {
    id: 'come-up',
    rule: 'come-up',
    section: 'Come-up time, p. 23-24; hams and brisket, scientific gap 6, p. 48',
    what: {
      en: 'Coming up to heat; a big cut may take longer, and then look twice',
      es: 'Subida de temperatura; una pieza grande puede tardar más: mírela dos veces',
    },
    limit: { from: '50 °F', to: '130 °F', within: '6 h' },
    appliesTo: 'any',
    severity: 'warn',
    ...appendixA,
    corrective: ['ask-the-authority'],
  },
  {
    id: 'probe-at-centre',
    rule: 'probe-at-centre',
    section: 'Come-up time, p. 23-24',
    what: {
      en: 'Injected, needled, ground or stuffed: the temperature at the centre counts',
      es: 'Inyectada, ablandada, molida o rellena: cuenta la temperatura del centro',
    },
    limit: { always: true },
    appliesTo: ['injected', 'ground', 'stuffed'],
    severity: 'refuse',
    ...appendixA,
    corrective: ['probe-the-centre'],
  },
  {
    id: 'sample-interval',
    rule: 'sample-interval',
    section: 'none',
    what: {
      en: 'Of a longer silence between two readings only so much counts, at the lower one',
      es: 'De un silencio más largo entre dos lecturas solo cuenta esto, a la más baja',
    },
    limit: { within: '10 min' },
    appliesTo: 'any',
    severity: 'warn',
    source: 'chosen here',
    edition: 'none',
    sure: 'common practice',
    corrective: [],
  },
  {
    id: 'thermometer-food',
    rule: 'thermometer',
    section: '4-203.11',
    what: { en: 'How true a food thermometer is', es: 'Exactitud del termómetro de alimentos' },
    measures: 'food',
    limit: { within: '2 °F' },
    appliesTo: 'any',
    severity: 'refuse',
    ...foodCode('Cal. Health & Safety Code 114159; Sioux Falls city code'),
    corrective: ['adjust-thermometer', 'replace-thermometer'],
  },
  {
    id: 'thermometer-air',
    rule: 'thermometer',
    section: '4-203.12',
    what: { en: 'How true an air thermometer is', es: 'Exactitud del termómetro de ambiente' },
    measures: 'air',
    limit: { within: '3 °F' },
    appliesTo: 'any',
    severity: 'refuse',
    ...foodCode(
      'Sioux Falls city code, which prints 2 °C beside it; the code has 1.5 °C, from memory',
    ),
    corrective: ['adjust-thermometer', 'replace-thermometer'],
  },
];
