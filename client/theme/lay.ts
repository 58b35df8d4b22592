import type { Panel, Scale } from './calibration.ts';
import { assumedScale, deskScale, scaleOf, touchPx } from './calibration.ts';
import { type ChosenGround, type Ground, groundAtHour } from './grounds.ts';
import { tokens } from './tokens.css.ts';

/** Whoever reads a page stands before a wall of work, or sits at a desk. */
export type Reader = 'standing' | 'sitting';

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
  const assumed = reader === 'sitting' ? deskScale : assumedScale;
  const measure = () => setScale(panel ? scaleOf(panel, glassOfScreen()) : assumed(window_()));
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

const window_ = () => ({ widthPx: innerWidth, heightPx: innerHeight });
const glassOfScreen = () => ({ widthPx: screen.width, heightPx: screen.height });
