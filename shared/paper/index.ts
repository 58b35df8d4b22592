export { firstWanted } from './list-sheet.ts';
export { paperPage } from './page.ts';
export type * from './paper.ts';
export { paperOf } from './paper-of.ts';
export { paperWords } from './words-of.ts';
