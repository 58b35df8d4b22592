import type { LethalityTable } from './lethality-table.ts';
import { meatTables } from './meat-tables.ts';
import { poultryTables } from './poultry-tables.ts';

/** 70 °C for two minutes and what is held to equal it. Its rows are the law rounded up. */
const seventyFor2Min = {
  section: '70 °C for 2 min and its equals',
  source: 'UK Food Standards Agency, cooking advice to caterers',
  edition: 'as repeated on training pages and log sheets; undated',
  sure: 'secondary copy',
  logs: 6,
  points: [
    ['60 °C', '45 min'],
    ['65 °C', '10 min'],
    ['70 °C', '2 min'],
    ['75 °C', '30 s'],
    ['80 °C', '6 s'],
  ],
  law: {
    reference: '70 °C',
    zDegrees: 7.5,
    d: '20 s',
    source: 'six tenfold kills of Listeria in 2 min at 70 °C, z = 7.5 °C; from memory',
  },
} as const satisfies LethalityTable;

/** Every lethality table that a profile may name. */
export const tables = {
  ...meatTables,
  ...poultryTables,
  'celsius-6-log': seventyFor2Min,
} as const satisfies Record<string, LethalityTable>;

export type TableId = keyof typeof tables;
export const tableIds = Object.keys(tables) as TableId[];
