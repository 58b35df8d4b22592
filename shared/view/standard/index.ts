export { type Drawing, type PartDrawn, SHEET } from './drawing.ts';
export {
  type CutStandard,
  type StandardMove,
  type StandardPart,
  type StandardsShown,
  standardsOf,
} from './standards-of.ts';
