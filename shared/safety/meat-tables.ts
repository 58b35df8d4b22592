import type { LethalityTable } from './lethality-table.ts';
import type { PrintedTemp, PrintedTime } from './printed.ts';

export const appendixA = {
  source: 'FSIS Cooking Guideline for Meat and Poultry Products (Revised Appendix A)',
  edition: 'FSIS-GD-2021-14, 14 December 2021',
  sure: 'primary',
} as const;

/**
 * FSIS prints no formula. D at 150 °F = 0.1715 min with z = 10 °F, rounded up to the printed unit,
 * gives back all rows of the 6.5-log column and 26 of 28 of the 5-log one; the published worksheet
 * has 0.172 min.
 */
const law = {
  reference: '150 °F',
  zDegrees: 10,
  d: '0.1715 min',
  source: 'fitted to the 6.5-log column of Table 2',
} as const;

/**
 * Table 2 (p. 35) and Table 6 (p. 59) side by side: °F, then 6.5-log, 7-log and 5-log as printed.
 */
const rows: readonly (readonly [PrintedTemp, PrintedTime, PrintedTime, PrintedTime])[] = [
  ['130 °F', '112 min', '121 min', '86 min'],
  ['131 °F', '89 min', '97 min', '69 min'],
  ['132 °F', '71 min', '77 min', '55 min'],
  ['133 °F', '56 min', '62 min', '44 min'],
  ['134 °F', '45 min', '47 min', '35 min'],
  ['135 °F', '36 min', '37 min', '28 min'],
  ['136 °F', '28 min', '32 min', '22 min'],
  ['137 °F', '23 min', '24 min', '18 min'],
  ['138 °F', '18 min', '19 min', '14 min'],
  ['139 °F', '15 min', '15 min', '11 min'],
  ['140 °F', '12 min', '12 min', '9 min'],
  ['141 °F', '9 min', '10 min', '7 min'],
  ['142 °F', '8 min', '8 min', '6 min'],
  ['143 °F', '6 min', '6 min', '5 min'],
  ['144 °F', '5 min', '5 min', '4 min'],
  ['145 °F', '4 min', '4 min', '3 min'],
  ['146 °F', '169 s', '182 s', '130 s'],
  ['147 °F', '134 s', '144 s', '103 s'],
  ['148 °F', '107 s', '115 s', '82 s'],
  ['149 °F', '85 s', '91 s', '65 s'],
  ['150 °F', '67 s', '72 s', '52 s'],
  ['151 °F', '54 s', '58 s', '41 s'],
  ['152 °F', '43 s', '46 s', '33 s'],
  ['153 °F', '34 s', '37 s', '26 s'],
  ['154 °F', '27 s', '29 s', '21 s'],
  ['155 °F', '22 s', '23 s', '17 s'],
  ['156 °F', '17 s', '19 s', '14 s'],
  ['157 °F', '14 s', '15 s', '11 s'],
  ['158 °F', '0 s', '0 s', '0 s'],
];

export const meatTables = {
  'fsis-6.5-log': {
    ...appendixA,
    section: 'Table 2, p. 35',
    logs: 6.5,
    points: rows.map(([temp, time]) => [temp, time] as const),
    law,
  },
  'fsis-7-log': {
    ...appendixA,
    section: 'Table 2, p. 35',
    logs: 7,
    points: rows.map(([temp, , time]) => [temp, time] as const),
    law,
  },
  'fsis-5-log': {
    ...appendixA,
    section: 'Table 6, p. 59',
    logs: 5,
    points: rows.map(([temp, , , time]) => [temp, time] as const),
    law,
  },
} as const satisfies Record<string, LethalityTable>;
