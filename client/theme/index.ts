export {
  assumedScale,
  deskScale,
  type Glass,
  type Panel,
  type Scale,
  scaleOf,
  touchPx,
  writtenLarger,
} from './calibration.ts';
export { type ChosenGround, type Ground, groundAtHour, grounds, type Inks } from './grounds.ts';
export { lay, layGround, type Reader } from './lay.ts';
export { pageHead } from './page-head.css.ts';
export { base, CAP_HEIGHT, LETTERS, LETTERS_ARCMIN, tokens } from './tokens.css.ts';
