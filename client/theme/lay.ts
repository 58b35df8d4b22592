import type { Panel, Scale } from './calibration.ts';
import {
  assumedScale,
  deskScale,
  isPhone,
  scaleOf,
  touchPx,
  writtenLarger,
} from './calibration.ts';
import { type ChosenGround, type Ground, groundAtHour } from './grounds.ts';
import { tokens } from './tokens.css.ts';

/**
 * Whoever reads a page stands before a wall of work, sits at a desk, or puts up a screen: with a
 * hand on its glass, from however far it will be read.
 */
export type Reader = 'standing' | 'sitting' | 'near';

/**
 * Lays ground, ink and letters over the page, and keeps the letters right when the window changes.
 */
export function lay(
  { panel, ground }: { panel: Panel | null; ground: ChosenGround },
  reader: Reader = 'standing',
): void {
  const { styleSheet } = tokens;
  if (styleSheet) document.adoptedStyleSheets = [...document.adoptedStyleSheets, styleSheet];
  layGround(ground === 'clock' ? groundAtHour(new Date().getHours()) : ground);
  const assumed = reader === 'standing' ? assumedScale : deskScale;
  const measured = reader === 'near' ? null : panel;
  const measure = () => {
    const scale = measured ? scaleOf(measured, glassOfScreen()) : assumed(wholeWindow());
    setScale(writtenLarger(scale, lettersPx() / USUAL_LETTERS_PX));
  };
  measure();
  addEventListener('resize', measure);
}

/** Changes the ground under what is drawn. */
export function layGround(ground: Ground): void {
  const { dataset, style } = document.documentElement;
  if (dataset['ground'] === ground) return;
  dataset['ground'] = ground;
  // What the browser draws itself, a calendar's sign or a scroll bar, is to be seen on either.
  style.colorScheme = ground === 'night' ? 'dark' : 'light';
}

function setScale(scale: Scale): void {
  const { style } = document.documentElement;
  style.setProperty('--arcmin', scale.arcminPx.toFixed(4));
  style.setProperty('--touch', `${touchPx(scale, window_()).toFixed(1)}px`);
}

/** What browsers write in unless their reader has set another size. */
const USUAL_LETTERS_PX = 16;

/** What this browser is set to write in. */
function lettersPx(): number {
  const probe = document.body.appendChild(document.createElement('span'));
  probe.style.fontSize = 'medium';
  const { fontSize } = getComputedStyle(probe);
  probe.remove();
  return Number.parseFloat(fontSize) || USUAL_LETTERS_PX;
}

/**
 * With its frame, which stays when a reader zooms: letters that followed the page would be made
 * small again by as much as they were zoomed. A phone has no frame, and zooms in another way.
 */
function wholeWindow() {
  const widthPx = Math.max(innerWidth, outerWidth);
  const whole = { widthPx, heightPx: Math.max(innerHeight, outerHeight) };
  return isPhone(whole) ? window_() : whole;
}
const window_ = () => ({ widthPx: innerWidth, heightPx: innerHeight });
const glassOfScreen = () => ({ widthPx: screen.width, heightPx: screen.height });
