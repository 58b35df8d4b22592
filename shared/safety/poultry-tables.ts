import type { LethalityTable } from './lethality-table.ts';
import { appendixA } from './meat-tables.ts';
import type { PrintedTemp, PrintedTime } from './printed.ts';

type Times = readonly [PrintedTime, PrintedTime, PrintedTime];

/**
 * Table 3 (p. 37), chicken: °F, then the times at 1, 5 and 12 % fat. No single law fits: z changes
 * along the column.
 */
const chicken: readonly (readonly [PrintedTemp, ...Times])[] = [
  ['136 °F', '63.3 min', '68.4 min', '81.4 min'],
  ['138 °F', '39.7 min', '43.2 min', '52.9 min'],
  ['140 °F', '25.2 min', '27.5 min', '35 min'],
  ['142 °F', '16.1 min', '17.6 min', '23.5 min'],
  ['144 °F', '10.4 min', '11.4 min', '15.9 min'],
  ['145 °F', '8.4 min', '9.2 min', '13 min'],
  ['146 °F', '6.8 min', '7.4 min', '10.6 min'],
  ['148 °F', '4.4 min', '4.7 min', '6.8 min'],
  ['150 °F', '2.7 min', '2.8 min', '4.2 min'],
  ['152 °F', '1.5 min', '1.6 min', '2.3 min'],
  ['154 °F', '55.9 s', '1 min', '1.1 min'],
  ['155 °F', '44.2 s', '47.7 s', '54.4 s'],
  ['156 °F', '35 s', '37.7 s', '43 s'],
  ['158 °F', '21.9 s', '23.6 s', '26.9 s'],
  ['160 °F', '13.7 s', '14.8 s', '16.9 s'],
  ['161 °F', '10.8 s', '11.7 s', '13.3 s'],
  ['162 °F', '0 s', '0 s', '10.5 s'],
  ['164 °F', '0 s', '0 s', '0 s'],
];

/** Table 4 (p. 38), turkey. */
const turkey: readonly (readonly [PrintedTemp, ...Times])[] = [
  ['136 °F', '64 min', '65.3 min', '70.8 min'],
  ['138 °F', '42.2 min', '43.4 min', '48.5 min'],
  ['140 °F', '28.1 min', '29 min', '33.7 min'],
  ['142 °F', '18.9 min', '19.5 min', '23.7 min'],
  ['144 °F', '12.8 min', '13.2 min', '16.6 min'],
  ['145 °F', '10.5 min', '10.8 min', '13.8 min'],
  ['146 °F', '8.7 min', '8.9 min', '11.5 min'],
  ['148 °F', '5.8 min', '5.9 min', '7.7 min'],
  ['150 °F', '3.8 min', '3.7 min', '4.9 min'],
  ['152 °F', '2.3 min', '2.3 min', '2.8 min'],
  ['154 °F', '1.5 min', '1.5 min', '1.6 min'],
  ['155 °F', '1.2 min', '1.2 min', '1.3 min'],
  ['156 °F', '59 s', '1 min', '1 min'],
  ['158 °F', '38.8 s', '39.6 s', '40.9 s'],
  ['160 °F', '25.6 s', '26.1 s', '26.9 s'],
  ['161 °F', '20.8 s', '21.2 s', '21.9 s'],
  ['162 °F', '16.9 s', '17.2 s', '17.7 s'],
  ['164 °F', '11.1 s', '11.3 s', '11.7 s'],
  ['165 °F', '0 s', '0 s', '0 s'],
];

function column(rows: typeof chicken, section: string, fat: 1 | 2 | 3) {
  const points = rows.map((row) => [row[0], row[fat]] as const);
  return { ...appendixA, section, logs: 7, points } satisfies LethalityTable;
}

export const poultryTables = {
  'fsis-chicken-1-percent': column(chicken, 'Table 3, p. 37, 1 % fat', 1),
  'fsis-chicken-5-percent': column(chicken, 'Table 3, p. 37, 5 % fat', 2),
  'fsis-chicken-12-percent': column(chicken, 'Table 3, p. 37, 12 % fat', 3),
  'fsis-turkey-1-percent': column(turkey, 'Table 4, p. 38, 1 % fat', 1),
  'fsis-turkey-5-percent': column(turkey, 'Table 4, p. 38, 5 % fat', 2),
  'fsis-turkey-12-percent': column(turkey, 'Table 4, p. 38, 12 % fat', 3),
} as const;
