import type { Live } from '../day/index.ts';
import { contains } from '../kernel/index.ts';
import { newsLine } from './news-line.ts';
import type { Person, ServiceOutlook, ViewHead } from './view.ts';

/** What every face shows: whose kitchen, how it says things, what its services are promised. */
export function viewHead(live: Live): ViewHead {
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
      return outlook ? [{ id, name, opensAt, ...outlook }] : [];
    }),
    news: newsLine(live),
    people: kitchen.crew.map(({ id, name }): Person => {
      const onShift = live.shiftsOf(id).some((shift) => contains(shift, live.nowS));
      return { id, name, onShift, isOut: live.state.happened.out.has(id) };
    }),
  };
}
