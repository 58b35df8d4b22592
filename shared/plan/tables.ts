import type { StepOf } from '../catalogue/index.ts';
import { celsius, seconds } from '../kernel/index.ts';
import type { Station } from '../kitchen/index.ts';
import type { CapacityResource, Need, StateNeed, StateResource } from '../schedule/index.ts';
import type { Frame, Order } from './order.ts';
import { boardState, resourceId } from './resources.ts';
import { stationOf } from './station.ts';

/** A way to have a table for a step; a step that takes none has one way, with nothing in it. */
export type TableChoice = {
  readonly id: string;
  readonly needs: readonly Need[];
  readonly states: readonly StateNeed[];
};

const NO_TIME_S = seconds(0);
const NO_TABLE: TableChoice = { id: '', needs: [], states: [] };

/**
 * The tables that a step can be done at. Clean tables are alike; a raw one is chosen, since it
 * matters what lay on it before.
 */
export function tablesFor(
  { table, bench, id }: StepOf<'hands'>,
  { kinds }: Order,
  { kitchen, limits }: Frame,
): TableChoice[] {
  const station = stationOf(kitchen, bench);
  if (!table || station.tables === 0) return [NO_TABLE];
  if (station.side === 'clean') {
    const pool = resourceId({ kind: 'table', station: station.id });
    return [{ id: '', needs: [tableNeed(pool)], states: [] }];
  }
  const kind = kinds.get(id);
  const coreC = kind === undefined ? null : limits.coreNeededC(kind);
  return tableNumbers(station).map((number) => {
    const place = { station: station.id, number };
    const board = resourceId({ kind: 'board', ...place });
    return {
      id: ` · ${number}`,
      needs: [tableNeed(resourceId({ kind: 'table', ...place }))],
      states: coreC === null ? [] : [{ resource: board, state: boardState(coreC) }],
    };
  });
}

const tableNeed = (table: Need['oneOf'][number]): Need => ({
  role: 'table',
  amount: 1,
  oneOf: [table],
});

/** How the tables of a station are numbered. @example tableNumbers({ tables: 2 }) //=> [1, 2] */
export const tableNumbers = ({ tables }: Pick<Station, 'tables'>) =>
  Array.from({ length: tables }, (_, n) => n + 1);

/** The tables of a kitchen: those of a clean station as one pool, the raw ones each by itself. */
export function tableResources({ kitchen }: Frame): CapacityResource[] {
  return kitchen.stations.flatMap((station): CapacityResource[] => {
    const { id, side, tables } = station;
    if (tables === 0) return [];
    if (side === 'clean') {
      const pool = resourceId({ kind: 'table', station: id });
      return [{ kind: 'capacity', id: pool, capacity: tables }];
    }
    return tableNumbers(station).map((number) => {
      const table = resourceId({ kind: 'table', station: id, number });
      return { kind: 'capacity', id: table, capacity: 1 };
    });
  });
}

/**
 * What lies on a raw table, by the core that it must be cooked to: upward in that order work goes
 * on at once, downward the table is washed and sanitised first.
 */
export function boardResources({ kitchen }: Frame, coresC: readonly number[]): StateResource[] {
  const rising = [...new Set(coresC)].sort((a, b) => a - b).map((coreC) => celsius(coreC));
  const upward = rising.flatMap((from, index) =>
    rising.slice(index + 1).map((to) => ({
      from: boardState(from),
      to: boardState(to),
      takesS: NO_TIME_S,
    })),
  );
  return kitchen.stations
    .filter(({ side }) => side === 'raw')
    .flatMap((station) =>
      tableNumbers(station).map((number) => ({
        kind: 'state',
        id: resourceId({ kind: 'board', station: station.id, number }),
        changes: upward,
        defaultChangeS: station.washS,
      })),
    );
}
