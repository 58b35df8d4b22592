import { type Language, ui } from '../../shared/words/index.ts';
import type { Reader } from '../theme/index.ts';
import { Lift } from './lift.ts';
import { OverLine } from './over-line.ts';
import { followKeys } from './wall-keys.ts';
import { WetGlass } from './wet-glass.ts';
import { WIPE } from './wipe.ts';

/** So long a wall hears nothing while somebody wipes it. */
const WIPE_MS = 20_000;
/** What is said is read in no less. */
const SAID_MS = 1500;

/**
 * Stands between the glass and all that can be tapped: what was not meant is not heard. A desk is
 * worked with a mouse, which is not wet; there only fingers are judged. Where a wall hears nothing
 * for a while, a line over it says so.
 */
export function heedHands(reader: Reader, language: () => Language): void {
  const glass = new WetGlass(fingerPx);
  const line = new OverLine();
  const isJudged = ({ pointerType }: PointerEvent) =>
    pointerType !== '' && (reader === 'standing' || pointerType !== 'mouse');
  const ifJudged = (hear: (event: PointerEvent) => void) => (event: Event) => {
    if (event instanceof PointerEvent && isJudged(event)) hear(event);
  };
  const tell = ({ timeStamp }: Event) => {
    if (glass.restsTillMs <= timeStamp) return;
    const restMs = glass.restsTillMs - performance.now();
    line.showFor(ui[language()].isWiped, Math.max(SAID_MS, restMs));
  };
  const onClick = ifJudged((event) => {
    if (!placeOf(event) || glass.hears(touchOf(event))) return;
    event.preventDefault();
    event.stopImmediatePropagation();
  });
  const lift = new Lift();
  const onDown = ifJudged((event) => {
    const touch = touchOf(event);
    // At a desk a tap may leave a field that is written in, which is the browser's own affair.
    if (reader === 'standing') lift.down(touch, placeOf(event));
    glass.down(touch);
  });
  const up = (scrolled: boolean) =>
    ifJudged((event) => {
      glass.up(event.pointerId, event.timeStamp, scrolled);
      tell(event);
    });
  const onUp = ifJudged((event) => {
    lift.up(touchOf(event));
    up(false)(event);
  });
  // A browser that has scrolled with the finger makes no tap, and lets nothing be called off.
  const onTouchEnd = (event: Event) => {
    const tap = lift.take();
    if (!event.cancelable || !tap || !glass.hears(tap.touch)) return;
    event.preventDefault();
    tap.place.focus({ preventScroll: true });
    tap.place.click();
  };
  const all: readonly (readonly [string, (event: Event) => void])[] = [
    ['pointerdown', onDown],
    ['pointermove', ifJudged((event) => glass.move(touchOf(event)))],
    ['pointerup', onUp],
    ['touchend', onTouchEnd],
    ['pointercancel', (event) => up(isLong())(event)],
    ['click', onClick],
    [WIPE, () => glass.restTill(performance.now() + WIPE_MS)],
    [WIPE, tell],
  ];
  for (const [name, hear] of all) addEventListener(name, hear, { capture: true, passive: false });
  document.body.append(line);
  if (reader === 'standing') followKeys(document);
}

function touchOf(event: PointerEvent) {
  const { pointerId, clientX, clientY, timeStamp, width, height } = event;
  const quick = placeOf(event)?.dataset['quick'] !== undefined;
  const at = { id: pointerId, xPx: clientX, yPx: clientY, atMs: timeStamp };
  return { ...at, quick, acrossPx: Math.max(width, height) };
}

/** The place to tap that an event is about. */
const placeOf = (event: Event): HTMLElement | undefined =>
  event.composedPath().find((each) => each instanceof HTMLButtonElement);

const fingerPx = () =>
  Number.parseFloat(document.documentElement.style.getPropertyValue('--touch')) || 60;

/** A page longer than the glass is scrolled with long strokes. */
const isLong = () => document.documentElement.scrollHeight > innerHeight + 1;
