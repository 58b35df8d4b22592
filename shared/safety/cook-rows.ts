import { appendixA } from './meat-tables.ts';
import type { Point, Row } from './row-schema.ts';
import { foodCode } from './sources.ts';

const delaware = 'as adopted in Delaware, Minnesota, Virginia and Wisconsin';

/** 3-401.11(B)(1). Its 17 rows are rows of the FSIS 6.5-log column too. */
export const roastTable: readonly Point[] = [
  { temp: '130 °F', time: '112 min' },
  { temp: '131 °F', time: '89 min' },
  { temp: '133 °F', time: '56 min' },
  { temp: '135 °F', time: '36 min' },
  { temp: '136 °F', time: '28 min' },
  { temp: '138 °F', time: '18 min' },
  { temp: '140 °F', time: '12 min' },
  { temp: '142 °F', time: '8 min' },
  { temp: '144 °F', time: '5 min' },
  { temp: '145 °F', time: '4 min' },
  { temp: '147 °F', time: '134 s' },
  { temp: '149 °F', time: '85 s' },
  { temp: '151 °F', time: '54 s' },
  { temp: '153 °F', time: '34 s' },
  { temp: '155 °F', time: '22 s' },
  { temp: '157 °F', time: '14 s' },
  { temp: '158 °F', time: '0 s' },
];

/** How hot, how long, and what is counted: from the fire to the end of the cook. */
export const cookRows: readonly Row[] = [
  {
    id: 'end-intact',
    rule: 'end-temperature',
    section: '3-401.11(A)(1)',
    what: {
      en: 'End of cooking: whole meat, fish',
      es: 'Fin de la cocción: carne entera, pescado',
    },
    limit: { anyOf: [{ temp: '145 °F', time: '15 s' }] },
    appliesTo: ['intact', 'fish'],
    severity: 'refuse',
    ...foodCode('Minn. R. 4626.0340; Wis. Admin. Code ATCP 75, 2020'),
    corrective: ['keep-cooking', 'discard'],
  },
  {
    id: 'end-roast',
    rule: 'end-temperature',
    section: '3-401.11(B)(1)',
    what: {
      en: 'End of cooking: whole roasts, by the table; the rise after the fire may count',
      es: 'Fin de la cocción: asados enteros, por la tabla; lo que sube al sacarlos cuenta',
    },
    limit: {
      anyOf: roastTable,
    },
    appliesTo: ['roast'],
    severity: 'refuse',
    ...foodCode('S.C. Code Regs. 61-25.3-401 and Florida, which agree'),
    corrective: ['keep-cooking', 'discard'],
  },
  {
    id: 'end-injected',
    rule: 'end-temperature',
    section: '3-401.11(A)(2)',
    what: {
      en: 'End of cooking: injected, needled or ground meat, at the centre',
      es: 'Fin de la cocción: carne inyectada, ablandada o molida, en el centro',
    },
    limit: {
      anyOf: [
        { temp: '155 °F', time: '17 s' },
        { temp: '145 °F', time: '3 min' },
        { temp: '150 °F', time: '1 min' },
        { temp: '158 °F', time: '<1 s' },
      ],
    },
    appliesTo: ['injected', 'ground'],
    severity: 'refuse',
    ...foodCode('2017 text as quoted by Florida inspections (15 s before 2017)'),
    corrective: ['keep-cooking', 'discard'],
  },
  {
    id: 'end-poultry',
    rule: 'end-temperature',
    section: '3-401.11(A)(3)',
    what: {
      en: 'End of cooking: poultry, and anything stuffed',
      es: 'Fin de la cocción: aves y todo lo relleno',
    },
    limit: { anyOf: [{ temp: '165 °F', time: '<1 s' }] },
    appliesTo: ['chicken', 'turkey', 'poultry', 'stuffed'],
    severity: 'refuse',
    ...foodCode('2017 text, from an excerpt (Minn. R. 4626.0340 and Wisconsin have 15 s)'),
    corrective: ['keep-cooking', 'discard'],
  },
  {
    id: 'end-plant',
    rule: 'end-temperature',
    section: '3-401.13',
    what: {
      en: 'End of cooking: vegetables, fruit and beans for hot holding',
      es: 'Fin de la cocción: verduras, fruta y frijoles que se guardan calientes',
    },
    limit: { anyOf: [{ temp: '135 °F', time: '<1 s' }] },
    appliesTo: ['plant'],
    severity: 'refuse',
    ...foodCode('S.C. Code Regs. 61-25'),
    corrective: ['keep-cooking', 'discard'],
  },
  {
    id: 'roast-oven',
    rule: 'roast-oven',
    section: '3-401.11(B)(2)',
    what: {
      en: 'Ovens in which the roast table counts; a dry, cool smoker is none of them',
      es: 'Hornos en los que vale la tabla de asados; un ahumador seco y tibio no es uno',
    },
    limit: {
      ovens: [
        { heat: 'still, dry', pieceUnder: '10 lb', atLeast: '350 °F' },
        { heat: 'still, dry', pieceFrom: '10 lb', atLeast: '250 °F' },
        { heat: 'convection', pieceUnder: '10 lb', atLeast: '325 °F' },
        { heat: 'convection', pieceFrom: '10 lb', atLeast: '250 °F' },
        { heat: 'humid', atMost: '250 °F' },
      ],
    },
    appliesTo: ['intact', 'roast'],
    severity: 'refuse',
    ...foodCode('S.C. Code Regs. 61-25.3-401'),
    corrective: ['keep-cooking', 'ask-the-authority'],
  },
  {
    id: 'first-heat',
    rule: 'first-heat',
    section: '3-401.14',
    what: {
      en: 'Cooked in two goes: the first heat, by a procedure agreed beforehand',
      es: 'Cocción en dos partes: la primera, con permiso previo',
    },
    limit: { within: '60 min' },
    appliesTo: 'any',
    severity: 'refuse',
    ...foodCode(delaware),
    corrective: ['finish-at-full-temperature', 'discard', 'ask-the-authority'],
  },
  {
    id: 'lethality-whole',
    rule: 'lethality',
    section: 'Table 2, p. 35',
    what: { en: 'Kill in whole meat', es: 'Reducción en carne entera' },
    limit: { tables: [{ table: 'fsis-6.5-log' }] },
    appliesTo: ['intact', 'roast'],
    severity: 'refuse',
    ...appendixA,
    corrective: ['keep-cooking', 'discard'],
  },
  {
    id: 'lethality-injected',
    rule: 'lethality',
    section: 'Table 6, p. 59',
    what: {
      en: 'Kill in injected, needled or ground meat',
      es: 'Reducción en carne inyectada, ablandada o molida',
    },
    limit: { tables: [{ table: 'fsis-5-log' }] },
    appliesTo: ['injected', 'ground'],
    severity: 'refuse',
    ...appendixA,
    corrective: ['keep-cooking', 'discard'],
  },
  {
    id: 'lethality-chicken',
    rule: 'lethality',
    section: 'Table 3, p. 37; unknown fat p. 39',
    what: { en: 'Kill in chicken', es: 'Reducción en pollo' },
    limit: {
      tables: [
        { table: 'fsis-chicken-1-percent', fatAtMost: '1 %' },
        { table: 'fsis-chicken-5-percent', fatAtMost: '5 %' },
        { table: 'fsis-chicken-12-percent' },
      ],
    },
    appliesTo: ['chicken'],
    severity: 'refuse',
    ...appendixA,
    corrective: ['keep-cooking', 'discard'],
  },
  {
    id: 'lethality-turkey',
    rule: 'lethality',
    section: 'Table 4, p. 38; unknown fat p. 39',
    what: { en: 'Kill in turkey', es: 'Reducción en pavo' },
    limit: {
      tables: [
        { table: 'fsis-turkey-1-percent', fatAtMost: '1 %' },
        { table: 'fsis-turkey-5-percent', fatAtMost: '5 %' },
        { table: 'fsis-turkey-12-percent' },
      ],
    },
    appliesTo: ['turkey'],
    severity: 'refuse',
    ...appendixA,
    corrective: ['keep-cooking', 'discard'],
  },
  {
    id: 'lethality-poultry',
    rule: 'lethality',
    section: 'Tables 3 and 4; other birds p. 39',
    what: {
      en: 'Kill in other or mixed poultry: the longer of chicken and turkey',
      es: 'Reducción en otras aves o mezclas: lo más largo de pollo y pavo',
    },
    limit: {
      tables: [
        { table: 'fsis-chicken-1-percent', fatAtMost: '1 %' },
        { table: 'fsis-turkey-1-percent', fatAtMost: '1 %' },
        { table: 'fsis-chicken-5-percent', fatAtMost: '5 %' },
        { table: 'fsis-turkey-5-percent', fatAtMost: '5 %' },
        { table: 'fsis-chicken-12-percent' },
        { table: 'fsis-turkey-12-percent' },
      ],
    },
    appliesTo: ['poultry'],
    severity: 'refuse',
    ...appendixA,
    corrective: ['keep-cooking', 'discard'],
  },
];
