import type { Command, SlotMove } from '../day/index.ts';
import type { SlotId, TaskId } from '../kernel/index.ts';
import { after, seconds } from '../kernel/index.ts';
import type { LoadDrawing, SmokerDrawing } from './view.ts';

type WithSmokers = { readonly smokers: readonly SmokerDrawing[] };

/**
 * The key of a load in `Drawn.marks`. @example loadMark('ribs-1/stay' as TaskId, 0) //=>
 * 'ribs-1/stay#0'
 */
export const loadMark = (stay: TaskId, need: number) => `${stay}#${need}`;

/** A reading of air or core, where it will be shown. */
export function layReading<V extends WithSmokers>(
  view: V,
  command: Extract<Command, { kind: 'reading' }>,
): V {
  const { where, tempC, tappedAt: at } = command;
  if (where.kind === 'core') {
    return withLoads(view, (load) =>
      load.stay === where.stay ? { ...load, lastCore: { tempC, at } } : load,
    );
  }
  const smokers = view.smokers.map((smoker) => {
    if (smoker.id !== where.smoker) return smoker;
    // Who has read it is not asked to.
    const { unread: _, ...read } = smoker;
    return { ...read, lastAir: { tempC, at, trendCPerHour: smoker.lastAir?.trendCPerHour ?? 0 } };
  });
  return { ...view, smokers };
}

/** An opened door, where it will be shown; what was not open is the hub's to take off. */
export function layDoor<V extends WithSmokers>(
  view: V,
  { smoker: id, openS, tappedAt }: Extract<Command, { kind: 'doorOpen' }>,
): V {
  if (openS === 0) return view;
  const openedAt = after(tappedAt, seconds(-openS));
  const smokers = view.smokers.map((smoker) =>
    smoker.id === id ? { ...smoker, openedAt } : smoker,
  );
  return { ...view, smokers };
}

/** Loads in the slots that a finger gave them. */
export function layMoves<V extends WithSmokers>(view: V, moves: readonly SlotMove[]): V {
  const goal = new Map<string, SlotId>(
    moves.map(({ stay, need, to }) => [loadMark(stay, need), to]),
  );
  const goalOf = ({ stay, need }: LoadDrawing) => goal.get(loadMark(stay, need));
  const racks = view.smokers.flatMap((smoker) => smoker.racks);
  const moved = racks.flatMap((rack) => rack.loads).filter((load) => goalOf(load) !== undefined);
  if (moved.length === 0) return view;
  const smokers = view.smokers.map((smoker) => ({
    ...smoker,
    racks: smoker.racks.map((rack) => ({
      ...rack,
      loads: [
        ...rack.loads.filter((load) => goalOf(load) === undefined),
        ...moved.filter((load) => goalOf(load) === rack.slot.id),
      ].sort((a, b) => a.inAt - b.inAt),
    })),
  }));
  return { ...view, smokers };
}

function withLoads<V extends WithSmokers>(view: V, change: (load: LoadDrawing) => LoadDrawing): V {
  const smokers = view.smokers.map((smoker) => ({
    ...smoker,
    racks: smoker.racks.map((rack) => ({ ...rack, loads: rack.loads.map(change) })),
  }));
  return { ...view, smokers };
}
