export { dayRecordPage, type PrintedDay } from './day-record.ts';
export { type LabelPrint, labelsPage } from './labels.ts';
export { stationLikeness } from './likeness.ts';
export { firstWanted } from './list-sheet.ts';
export { lotRecordPage } from './lot-record.ts';
export { paperPage } from './page.ts';
export type * from './paper.ts';
export { paperOf } from './paper-of.ts';
export { paperWords } from './words-of.ts';
