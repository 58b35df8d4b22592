import type { Celsius, Seconds, SmokerId } from '../kernel/index.ts';
import { seconds } from '../kernel/index.ts';
import type { Kitchen, Smoker } from '../kitchen/index.ts';
import { rackAreaCm2, rackLoadG } from '../kitchen/index.ts';
import type { CapacityResource, Resource, ResourceId, StateResource } from '../schedule/index.ts';
import { placesToKeep } from './keeping.ts';
import type { Frame } from './order.ts';
import { fireOf, fireState, resourceId } from './resources.ts';
import { boardResources, tableResources } from './tables.ts';

/**
 * What a day asks of a kitchen's states: the set temperatures of each smoker, and the cores that
 * the meat on raw tables must be cooked to.
 */
type Asked = {
  readonly firesC: ReadonlyMap<SmokerId, readonly Celsius[]>;
  readonly coresC: readonly Celsius[];
};

/** Everything of a kitchen that work can wait for. */
export function resourcesOf(frame: Frame, { firesC, coresC }: Asked): Resource[] {
  const { kitchen, hours } = frame;
  const hands = kitchen.crew.map(({ id }) =>
    capacity(resourceId({ kind: 'hand', person: id }), 1, hours.get(id) ?? []),
  );
  const racks = kitchen.smokers.flatMap((smoker) => smoker.racks);
  const slots = racks.flatMap((rack) => [
    capacity(resourceId({ kind: 'slot', slot: rack.slot }), rackAreaCm2(rack)),
    capacity(resourceId({ kind: 'load', slot: rack.slot }), rackLoadG(rack)),
  ]);
  const fires = kitchen.smokers.map((smoker) => fire(smoker, firesC.get(smoker.id) ?? []));
  const boards = boardResources(frame, coresC);
  return [...hands, ...tableResources(frame), ...boards, ...slots, ...fires, ...keeping(kitchen)];
}

function keeping(kitchen: Kitchen): CapacityResource[] {
  const kinds = ['cooler', 'cabinet, whole', 'cabinet, in pans'] as const;
  return kinds
    .flatMap((where) => placesToKeep(kitchen, where).places)
    .filter(({ capacity }) => capacity > 0)
    .map((place) => capacity(place.resource, place.capacity));
}

function capacity(
  id: ResourceId,
  amount: number,
  open?: CapacityResource['open'],
): CapacityResource {
  return { kind: 'capacity', id, capacity: amount, ...(open ? { open } : {}) };
}

/** Cold at first; one set temperature at a time, and time to come from one to another. */
function fire(smoker: Smoker, setsC: readonly Celsius[]): StateResource {
  const states = [...new Set(setsC.map(fireState))];
  const lit = states.map((to) => ({ from: COLD, to, takesS: smoker.preheatS }));
  const changed = states.flatMap((from) =>
    states
      .filter((to) => to !== from)
      .map((to) => ({ from, to, takesS: changeTime(smoker, fireOf(from), fireOf(to)) })),
  );
  return {
    kind: 'state',
    id: resourceId({ kind: 'fire', smoker: smoker.id }),
    initial: COLD,
    changes: [...lit, ...changed],
    defaultChangeS: smoker.preheatS,
  };
}

const COLD = 'cold';

const changeTime = ({ changeCPerS }: Smoker, fromC: Celsius, toC: Celsius): Seconds =>
  seconds(Math.ceil(Math.abs(toC - fromC) / changeCPerS));
