import type { Piece, Smoker, Stay, WrapName } from '../cook/index.ts';
import type {
  Celsius,
  Instant,
  Seconds,
  ServiceId,
  SlotId,
  TaskId,
  Text,
} from '../kernel/index.ts';
import { celsius, must } from '../kernel/index.ts';
import type { AdoptedForecast, ForeseenStage } from './adopted-forecast.ts';
import { movesTo } from './arrangement.ts';
import { type CookAsk, cookAskOf, smokerFor } from './cook-ask.ts';
import { forecastOf } from './foreseen.ts';
import { ifMoved } from './if-moved.ts';
import type { Live } from './live.ts';
import { outlooksOn } from './outlook.ts';
import type { PlanIndex } from './plan-index.ts';
import type { Refusal } from './refusal.ts';
import type { DayState } from './state.ts';
import { loadKey } from './state.ts';
import { tellForeseen } from './told.ts';

/** What might be done about a load in the fire, before anybody does it. */
export type WhatIf =
  /** The fire is set so much hotter, or below nought cooler, and stays so. */
  | { readonly kind: 'fire'; readonly byK: number }
  | { readonly kind: 'wrap'; readonly wrap: Exclude<WrapName, 'none'> }
  | { readonly kind: 'move'; readonly to: SlotId };

/** What would come of it: for the load itself, and for what is promised. */
export type CookOffer = {
  readonly basedOnSeq: number;
  readonly stages: readonly {
    readonly stage: TaskId;
    readonly tempC: Celsius;
    /** As it stands; null where nothing does. */
    readonly before: Range | null;
    readonly after: Range;
  }[];
  readonly services: readonly {
    readonly id: ServiceId;
    readonly name: Text;
    readonly opensAt: Instant;
    readonly beforeS: Seconds;
    readonly afterS: Seconds;
  }[];
};

type Range = Pick<ForeseenStage, 'p10At' | 'p50At' | 'p90At' | 'never'>;

export type AskedIf =
  | { readonly ok: true; readonly ask: CookAsk }
  | { readonly ok: false; readonly refusal: Refusal };

/** What is to be asked of the model about it; a refusal where nothing is foreseen of the load. */
export function askIf(live: Live, stay: TaskId, whatIf: WhatIf): AskedIf {
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

/** What the day would be with that forecast, beside what it is; nothing of it is kept. */
export function cookOffer(live: Live, found: AdoptedForecast, whatIf: WhatIf): CookOffer {
  const { state, index, now } = live;
  const { stay } = found;
  const slots = new Map(state.slots);
  if (whatIf.kind === 'move') slots.set(loadKey(stay, 0), whatIf.to);
  const forecasts = new Map(state.forecasts).set(stay, [found]);
  const tried = live.timeline.fork();
  const then: DayState = { ...state, slots, forecasts };
  if (whatIf.kind === 'move') tried.moved(movesTo(then, index, [stay]));
  tellForeseen(tried, then, stay, now);
  const [before, after] = [outlooksOn(live.timeline, index), outlooksOn(tried, index)];
  const stands = forecastOf(state, stay);
  return {
    basedOnSeq: state.seq,
    stages: found.stages.map((each) => {
      const was = stands?.stages.find(({ stage }) => stage === each.stage);
      const { stage, tempC } = each;
      return { stage, tempC, before: was ? rangeOf(was) : null, after: rangeOf(each) };
    }),
    services: index.plan.built.services.flatMap(({ id, name, opensAt }) => {
      const [was, is] = [before.get(id), after.get(id)];
      if (!was || !is) return [];
      return [{ id, name, opensAt, beforeS: was.inHandS, afterS: is.inHandS }];
    }),
  };
}

const rangeOf = ({ p10At, p50At, p90At, never }: ForeseenStage): Range => ({
  ...{ p10At, p50At, p90At, never },
});
