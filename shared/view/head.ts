import type { Live } from '../day/index.ts';
import { contains } from '../kernel/index.ts';
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
    services: built.services
      .filter(({ closesAt }) => live.now < closesAt)
      .map(({ id, name, opensAt }): ServiceOutlook => {
        const { inHandS, hangsOn } = live.outlookOf(id);
        return { id, name, opensAt, inHandS, hangsOn };
      }),
    people: kitchen.crew.map(({ id, name }): Person => {
      const onShift = live.shiftsOf(id).some((shift) => contains(shift, live.nowS));
      return { id, name, onShift };
    }),
  };
}
