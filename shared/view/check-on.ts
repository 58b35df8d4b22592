import { batchNamed, type CheckOn, type Live } from '../day/index.ts';
import type { Text } from '../kernel/index.ts';
import { textOf } from '../kernel/index.ts';

/** What is looked at by name: a batch, a cooler, a table. By its id where the plan has moved on. */
export function checkedThing({ index, state }: Live, on: CheckOn): Text {
  const { kitchen, catalogue } = index.plan;
  const named = (things: readonly { id: string; name: Text }[] | undefined, id: string): Text =>
    things?.find((thing) => thing.id === id)?.name ?? { en: id };
  switch (on.kind) {
    case 'receiving':
      return named(catalogue.cuts, on.cut);
    case 'cold-hold':
      return named(kitchen.coolers, on.cooler);
    case 'thermometer':
      return named(kitchen.thermometers, on.thermometer);
    case 'clean': {
      const station = named(kitchen.stations, on.station);
      return on.table === null ? station : textOf([station], ([name]) => `${name} ${on.table}`);
    }
    default:
      return batchNamed(state, index, on.batch);
  }
}
