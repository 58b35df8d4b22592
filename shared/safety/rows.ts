import { cookRows } from './cook-rows.ts';
import { holdRows } from './hold-rows.ts';
import { monitorRows } from './monitor-rows.ts';
import { processRows } from './process-rows.ts';
import type { Row } from './row-schema.ts';

/** The rows of the common food-code profile, in °F as the code prints them. */
export const foodCodeRows: readonly Row[] = [
  ...cookRows,
  ...monitorRows,
  ...holdRows,
  ...processRows,
];
