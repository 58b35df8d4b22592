export { csvOf } from './csv.ts';
export { type AmendedRow, type CheckRow, type DayEvidence, evidenceOf } from './evidence.ts';
export { type Label, labelsOf } from './labels.ts';
export type * from './record.ts';
export { recordOf } from './record-of.ts';
export { type DayTold, type TableName, tables, traceTable } from './tables.ts';
export { type LotShare, type LotTrace, lotsOfBatch, lotsOfService, traceOf } from './trace.ts';
