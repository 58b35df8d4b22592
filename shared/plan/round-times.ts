import type { Seconds, Span } from '../kernel/index.ts';
import { seconds } from '../kernel/index.ts';
import type { Activity, Placement, ResourceId, Schedule } from '../schedule/index.ts';
import type { Upkeep, UpkeepRound } from './built.ts';

/** When a round is wanted, and how far it may be moved: `[fromS, toS]` for its start. */
export type RoundTime = { readonly atS: Seconds; readonly fromS: Seconds; readonly toS: Seconds };

/** Everything that uses a thing, in the order of time. */
type Uses = readonly { readonly placement: Placement; readonly state: string | undefined }[];

/** How often and when a schedule asks for a round of a thing. */
export function roundTimes(
  upkeep: Upkeep,
  round: UpkeepRound,
  schedule: Schedule,
  activities: ReadonlyMap<string, Activity>,
): RoundTime[] {
  const uses = usesOf(upkeep, schedule, activities);
  const takesS = typicalS(round);
  if (round.when === 'between') return washes(uses, takesS);
  return inUse(uses, upkeep.quietS)
    .flatMap((span) => within(span, upkeep, round, takesS))
    .map((atS) => ({
      atS: seconds(Math.max(0, atS)),
      fromS: seconds(Math.max(0, atS - round.earlyS)),
      toS: seconds(atS + round.lateS),
    }))
    .filter(({ toS }) => toS >= 0);
}

/** How long a round typically takes a trained hand. */
export function typicalS({ modes }: Pick<UpkeepRound, 'modes'>): number {
  const length = modes[0]?.length;
  return length?.kind === 'work' ? length.typicalS : 0;
}

/** How long a round typically takes whoever of its hands is slowest at it. */
export function longestS({ modes }: Pick<UpkeepRound, 'modes'>): number {
  return Math.max(
    0,
    ...modes.map(({ length }) => (length.kind === 'work' ? length.typicalS : length.minS)),
  );
}

function within(
  { start, end }: Span<Seconds>,
  { aheadS }: Upkeep,
  { when, everyS }: UpkeepRound,
  takesS: number,
): number[] {
  if (when === 'before') return [start - aheadS - takesS];
  if (when === 'after' || everyS === undefined) return [end];
  const times = Math.max(0, Math.ceil((end - start) / everyS) - 1);
  return Array.from({ length: times }, (_, n) => start + (n + 1) * everyS);
}

/** Stretches in which a thing is in use; shorter gaps than `quietS` belong to them. */
function inUse(uses: Uses, quietS: Seconds): Span<Seconds>[] {
  const spans: Span<Seconds>[] = [];
  for (const { startS, endS } of uses.map(({ placement }) => placement)) {
    const last = spans.at(-1);
    if (last && startS - last.end < quietS) {
      spans[spans.length - 1] = { start: last.start, end: seconds(Math.max(last.end, endS)) };
    } else {
      spans.push({ start: startS, end: endS });
    }
  }
  return spans;
}

/** A table is washed where the meat that comes next may not follow the meat that lay there. */
function washes(uses: Uses, takesS: number): RoundTime[] {
  return uses.flatMap(({ placement, state }, index) => {
    const next = uses[index + 1];
    if (!next || degrees(next.state) >= degrees(state)) return [];
    const fromS = placement.endS;
    return [{ atS: fromS, fromS, toS: seconds(next.placement.startS - takesS) }];
  });
}

/** States of a board are named by the core that the meat must be cooked to. */
const degrees = (state: string | undefined) => Number.parseFloat(state ?? '0');

function usesOf(
  { uses, board }: Upkeep,
  { placements }: Schedule,
  activities: ReadonlyMap<string, Activity>,
): Uses {
  const things: ReadonlySet<ResourceId> = new Set(uses);
  return placements
    .filter((placement) => placement.uses.some(({ resource }) => things.has(resource)))
    .map((placement) => ({ placement, state: stateOn(placement, board, activities) }))
    .sort((a, b) => a.placement.startS - b.placement.startS);
}

function stateOn(
  { activity, mode }: Placement,
  board: ResourceId | null,
  activities: ReadonlyMap<string, Activity>,
): string | undefined {
  const states = activities.get(activity)?.modes.find(({ id }) => id === mode)?.states ?? [];
  return states.find(({ resource }) => resource === board)?.state;
}
