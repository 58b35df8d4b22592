import type { Live } from '../day/index.ts';
import { languageReadBy } from '../day/index.ts';
import { contains } from '../kernel/index.ts';
import type { Person } from './view.ts';

/** The crew at the live day's now: whose shift it is, and who is away till when. */
export function peopleOf(live: Live): Person[] {
  return live.index.plan.kitchen.crew.map((member): Person => {
    const { id, name } = member;
    const language = languageReadBy(live.state.who, member);
    const onShift = live.shiftsOf(id).some((shift) => contains(shift, live.nowS));
    const absence = live.state.happened.out.get(id);
    return {
      ...{ id, name, ...(language && { language }) },
      ...{ onShift, isOut: absence !== undefined, backAt: absence?.backAt ?? null },
    };
  });
}
