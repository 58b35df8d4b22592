import { ZOOM } from './chart-foot.ts';

/** Of what is in view. */
const PAN_SHARE = 0.15;

type Deeds = {
  /** By a share of what is in view, to what is later. */
  readonly pan: (byShare: number) => void;
  readonly zoom: (factor: number) => void;
  readonly toNow: () => void;
  /** From what is picked to the next, or the one before. */
  readonly step: (by: 1 | -1) => void;
  readonly unpick: () => void;
};

/** What a key does to the chart; null for one that does nothing to it. */
export function keyDeed(key: string, { pan, zoom, toNow, step, unpick }: Deeds) {
  const deeds: Readonly<Record<string, () => void>> = {
    ArrowLeft: () => pan(-PAN_SHARE),
    ArrowRight: () => pan(PAN_SHARE),
    ArrowUp: () => step(-1),
    ArrowDown: () => step(1),
    '+': () => zoom(1 / ZOOM),
    '-': () => zoom(ZOOM),
    Home: toNow,
    Escape: unpick,
  };
  return deeds[key] ?? null;
}
