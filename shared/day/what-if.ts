import type { Piece, Smoker, Stay, WrapName } from '../cook/index.ts';
import type { Seconds, SlotId, TaskId } from '../kernel/index.ts';
import { celsius, must } from '../kernel/index.ts';
import { type CookAsk, cookAskOf, smokerFor } from './cook-ask.ts';
import { ifMoved } from './if-moved.ts';
import type { Live } from './live.ts';
import type { PlanIndex } from './plan-index.ts';
import type { Refusal } from './refusal.ts';
import type { DayState } from './state.ts';

/** What might be done about a load in the fire, before anybody does it. */
export type WhatIf =
  /** The fire is set so much hotter, or below nought cooler, and stays so. */
  | { readonly kind: 'fire'; readonly byK: number }
  | { readonly kind: 'wrap'; readonly wrap: Exclude<WrapName, 'none'> }
  | { readonly kind: 'move'; readonly to: SlotId }
  /** It has not gone in, and goes in so much sooner than it is expected to. */
  | { readonly kind: 'earlier'; readonly byS: Seconds };

/** What is asked of the model; when a load goes in, the day alone can say. */
export type WhatIfInFire = Exclude<WhatIf, { kind: 'earlier' }>;

export type AskedIf =
  | { readonly ok: true; readonly ask: CookAsk }
  | { readonly ok: false; readonly refusal: Refusal };

/** What is to be asked of the model about it; a refusal where nothing is foreseen of the load. */
export function askIf(live: Live, stay: TaskId, whatIf: WhatIfInFire): AskedIf {
  const { state, index, now } = live;
  const ask = cookAskOf(state, index, stay, now);
  if (!ask) return { ok: false, refusal: { rule: 'nothing-foreseen' } };
  switch (whatIf.kind) {
    case 'fire':
      return { ok: true, ask: hotter(ask, whatIf.byK) };
    case 'wrap':
      return { ok: true, ask: changed(ask, { ...lastStay(ask), wrap: whatIf.wrap }) };
    case 'move': {
      const moved = ifMoved(live, { stay, need: 0, to: whatIf.to });
      if (!moved.ok) return moved;
      return { ok: true, ask: elsewhere(ask, smokerThere(state, index, ask, whatIf.to)) };
    }
  }
}

function smokerThere(state: DayState, index: PlanIndex, { stay }: CookAsk, to: SlotId): Smoker {
  return must(smokerFor(state, index, stay, to), to);
}

const withHeat = (smoker: Smoker, byK: number): Smoker => ({
  ...smoker,
  setC: celsius(smoker.setC + byK),
});

/** Where it lies now burns hotter from now on. */
function hotter(ask: CookAsk, byK: number): CookAsk {
  const { piece } = ask;
  const here = lastStay(ask).place;
  if (here.kind === 'home') return { ...ask, smoker: withHeat(ask.smoker, byK) };
  const stays = piece.stays.map((stay): Stay => {
    if (stay.place !== here || here.kind !== 'smoker') return stay;
    return { ...stay, place: { kind: 'smoker', smoker: withHeat(here.smoker, byK) } };
  });
  return { ...ask, piece: { ...piece, stays } };
}

/** The last stay that has begun. */
function lastStay({ piece }: CookAsk): Stay {
  return must(
    piece.stays.findLast(({ from }) => from.by === 'time'),
    'a first stay',
  );
}

/** From now on it is so; a wrap that was yet to come is done with it. */
function changed(ask: CookAsk, stay: Stay): CookAsk {
  const { piece, options } = ask;
  const begun = piece.stays.filter(({ from }) => from.by === 'time');
  const now: Stay = { ...stay, from: { by: 'time', atS: options.nowS } };
  const next: Piece = { ...piece, stays: [...begun, now] };
  return { ...ask, piece: next };
}

/** From now on it lies there; what was meant to be put round it still is, there. */
function elsewhere(ask: CookAsk, smoker: Smoker): CookAsk {
  const { piece, options } = ask;
  const place = { kind: 'smoker', smoker } as const;
  const begun = piece.stays.filter(({ from }) => from.by === 'time');
  const moved: Stay = { ...lastStay(ask), place, from: { by: 'time', atS: options.nowS } };
  const toCome = piece.stays.filter(({ from }) => from.by === 'core').map((s) => ({ ...s, place }));
  return { ...ask, piece: { ...piece, stays: [...begun, moved, ...toCome] } };
}
