import type { Kilograms, LotId, Text } from '../kernel/index.ts';
import { kilograms, seconds, wallTime } from '../kernel/index.ts';
import { impossibleAmount } from './came-amounts.ts';
import { brokenBy } from './check-limits.ts';
import type { CommandHead } from './command.ts';
import { type Decision, happen, refuse } from './decision.ts';
import { begunAt, drawsOf } from './draws.ts';
import type { Fact } from './event.ts';
import { limitsOf } from './limits-of.ts';
import type { Lot, LotIntent, Received } from './lot.ts';
import { oddLot } from './odd-delivery.ts';
import type { PlanIndex } from './plan-index.ts';
import { isPlausibleCore } from './readings.ts';
import { sentBackIn } from './sent-back.ts';
import type { DayState } from './state.ts';

type Asked<K extends LotIntent['kind']> = CommandHead & Extract<LotIntent, { kind: K }>;

/**
 * A lot that came. Once there is as much of its cut as the pull list asks for, that stands against
 * the line; before, more may be on its way, and nobody is told that it is short.
 */
export function decideReceive(
  state: DayState,
  index: PlanIndex,
  command: Asked<'receive'>,
): Decision {
  const { cut, pieces, weightKg, supplier, tempC, useBy, code, tappedAt } = command;
  const { catalogue, kitchen, built } = index.plan;
  const bought = catalogue.cuts.find(({ id, takenFrom }) => id === cut && !takenFrom);
  if (!bought) return refuse({ rule: 'not-of-this-day' });
  const impossible = impossibleAmount(pieces, weightKg);
  if (impossible) return impossible;
  if (pieces === 0) return refuse({ rule: 'impossible-amount', amount: pieces });
  if (tempC !== null && !isPlausibleCore(tempC)) {
    return refuse({ rule: 'impossible-temperature', tempC });
  }
  const today = wallTime(tappedAt, kitchen.zone).day;
  if (useBy !== null && useBy < today) return refuse({ rule: 'past-use-by', useBy });
  const received = { cut, pieces, weightKg, supplier, tempC, useBy, code };
  const line = built.pull.find((each) => each.cut === cut);
  const odd = oddLot(received, {
    ...{ eachKg: bought.weightKg.typical, listed: line?.pieces ?? null },
    ...{ temperature: kitchen.units.temperature, today },
  });
  if (odd.length > 0 && !command.isSo && !cameTooWarm(index, received)) {
    return refuse({ rule: 'odd-delivery', cut: bought.name, odd });
  }
  const lot = nextLot(state);
  const came: Fact = { kind: 'lotCame', lot, ...received };
  const all = allOf(state, cut, { pieces, weightKg });
  if (!line || all.pieces < line.pieces) return happen(came);
  return happen(came, { kind: 'deliveryCame', cut, ...all });
}

/** What bars its cut is kept at once, however odd it is: nobody may read that it was refused. */
function cameTooWarm({ plan }: PlanIndex, { cut, tempC }: Received): boolean {
  const profile = limitsOf(plan);
  const read = { on: { kind: 'receiving', cut }, food: null, tempC, tookS: seconds(0) } as const;
  return profile !== null && brokenBy(profile, read) !== null;
}

/**
 * The day and its number on it, which is never given twice: of what was undone a label may be on
 * a shelf.
 */
function nextLot({ day, story }: DayState): LotId {
  const before = story.filter(({ kind }) => kind === 'lotCame').length;
  return `${day}-${before + 1}` as LotId;
}

type Amount = { readonly pieces: number; readonly weightKg: Kilograms };

/** With what the days before have left of the cut, and without what went back. */
function allOf(state: DayState, cut: string, more: Amount): Amount {
  const back = sentBackIn(state);
  return [...state.happened.lots.values()]
    .filter((lot) => lot.cut === cut && !back.has(lot.id))
    .reduce(
      (sum, { leftPieces, pieces, weightKg }) => ({
        pieces: sum.pieces + leftPieces,
        weightKg: kilograms(sum.weightKg + (weightKg * leftPieces) / pieces),
      }),
      more,
    );
}

/** A person says which lots a batch was cut from, or is to be. */
export function decideCutFrom(
  state: DayState,
  index: PlanIndex,
  { batch: id, lots, tappedAt }: Asked<'cutFrom'>,
): Decision {
  const batch = index.batches.get(id);
  if (!batch || batch.bought === null) return refuse({ rule: 'not-of-this-day' });
  const at = begunAt(state, id) ?? tappedAt;
  const { day } = wallTime(at, index.plan.kitchen.zone);
  for (const name of lots) {
    const lot = state.happened.lots.get(name);
    if (!lot) return refuse({ rule: 'unknown-lot', lot: name });
    if (lot.cut !== batch.bought) {
      return refuse({ rule: 'lot-of-another-cut', lot: name, cut: cutName(index, lot) });
    }
    if (sentBackIn(state).has(name)) return refuse({ rule: 'lot-sent-back', lot: name });
    if (lot.at > at) return refuse({ rule: 'lot-not-here-yet', lot: name, at: lot.at });
    if (lot.useBy !== null && lot.useBy < day) {
      return refuse({ rule: 'past-use-by', useBy: lot.useBy });
    }
    if (!isLeftFor(state, name, id)) return refuse({ rule: 'lot-used-up', lot: name });
  }
  return happen({ kind: 'batchCutFrom', batch: id, lots });
}

const cutName = ({ plan }: PlanIndex, { cut }: Lot): Text =>
  plan.catalogue.cuts.find(({ id }) => id === cut)?.name ?? { en: cut };

/** Whether anything is left of it, but for what others were said to be cut from it. */
function isLeftFor(state: DayState, lot: LotId, batch: string): boolean {
  const { cutFrom } = state.happened;
  const others = drawsOf(state).filter(
    (draw) =>
      draw.lot === lot && draw.batch !== batch && (cutFrom.get(draw.batch) ?? []).includes(lot),
  );
  const used = others.reduce((sum, { pieces }) => sum + pieces, 0);
  return (state.happened.lots.get(lot)?.leftPieces ?? 0) > used;
}
