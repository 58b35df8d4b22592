import type { Live } from '../day/index.ts';
import { isLate } from '../day/index.ts';
import type { StationId } from '../kernel/index.ts';
import { instant, must } from '../kernel/index.ts';
import { checksAt } from './check-view.ts';
import { heldBy } from './held-by.ts';
import { newsLine } from './news-line.ts';
import { peopleOf } from './people.ts';
import type { ClosedDay, ServiceOutlook, ViewHead } from './view.ts';

/**
 * What every face shows: whose kitchen, how it says things, what its services are promised, and
 * what is to be looked at at its stations; at all where none are named.
 */
export function viewHead(live: Live, stations: ReadonlySet<StationId> | null = null): ViewHead {
  const { kitchen, built } = live.index.plan;
  return {
    seq: live.state.seq,
    arrangedSeq: live.state.arrangedSeq,
    at: live.now,
    zone: built.zone,
    clock: kitchen.units.clock,
    temperature: kitchen.units.temperature,
    weight: kitchen.units.weight,
    services: built.services.flatMap(({ id, name, opensAt }): ServiceOutlook[] => {
      const outlook = live.outlookOf(id);
      if (!outlook) return [];
      const { inHandS, hangsOn } = outlook;
      const held = hangsOn && isLate(inHandS) ? { heldBy: heldBy(live, hangsOn) } : {};
      return [{ id, name, opensAt, inHandS, hangsOn, ...held }];
    }),
    news: newsLine(live),
    endsAt: instant(Math.max(...built.services.map(({ closesAt }) => closesAt))),
    closed: closedDay(live),
    people: peopleOf(live),
    checks: checksAt(live, stations),
  };
}

function closedDay({ state, index }: Live): ClosedDay | null {
  const { closed } = state.happened;
  if (!closed) return null;
  const told = state.story.findLast(({ kind }) => kind === 'dayClosed');
  const by = index.plan.kitchen.crew.find(({ id }) => id === closed.by)?.name ?? null;
  return { at: closed.at, by, command: must(told, 'what closed the day').commandId };
}
