import { assert, seeded } from '../kernel/index.ts';
import { type Belief, unlearned } from './belief.ts';
import { CookRun } from './cook-run.ts';
import type { Matrix } from './matrix.ts';
import { draw, momentsOf, normals } from './normal.ts';
import type { Reading } from './piece.ts';
import { errorAtLast, observedIn, shownS, telling } from './readings.ts';
import type { Scene } from './scene.ts';
import { UPDATES, update } from './smoother.ts';
import { Thermometer } from './thermometer.ts';
import { readAt } from './trace.ts';

/** What the members of an ensemble came to. */
export type Ensemble = {
  /** What was believed of all unknowns before the readings, and after them. */
  readonly before: Belief;
  readonly after: Belief;
  /** The unknowns of the members, one row each. */
  readonly rows: Matrix;
  /** How the fire of each strays from now on, as a standard normal number. */
  readonly strays: readonly number[];
  /** Members that found no balance or no end. They count for nothing. */
  readonly leftOut: number;
  /** One row a member: when it passes each target, infinity for never. */
  readonly passagesS: readonly (readonly number[])[];
  /** One row a member: what its thermometer shows at each of the times asked for. */
  readonly showsC: readonly (readonly number[])[];
};

export type Question = {
  readonly seed: number;
  readonly members: number;
  /** Where a member that has not passed its targets is given up. */
  readonly endS: number;
  readonly timesS: readonly number[];
};

/** With fewer members than this nothing can be said of so many unknowns. */
const FEWEST_MEMBERS = 40;

/** How the fire strays, and how the model errs, now and later: unknowns that no reading teaches. */
const OWN = 3;

/** Apart from all that a load's own stream decides. */
const FELL = 104_729;

/**
 * Brings an ensemble to the readings of a piece and runs it on to its targets. Each of its pieces
 * of work is the run of one member. Nothing comes of it where too few members find their balance.
 */
export function* assimilate(
  scene: Scene,
  readings: readonly Reading[],
  question: Question,
): Generator<void, Ensemble | undefined> {
  const { seed, members } = question;
  assert(members >= FEWEST_MEMBERS, `${members} members`);
  const normal = normals(seeded(seed));
  const run = new CookRun();
  const before = scene.belief();
  const rows = draw(before, members, normal);
  const owns = draw(unlearned(OWN), members, normal);
  // A stream of its own: a fire that was read all along has the forecast that it had.
  const fells = draw(unlearned(1), members, normals(seeded(seed + FELL)));
  const told = telling(readings);
  const taught = told.length === 0 ? rows : yield* brought(scene, rows, told, run, normal);
  const known = scene.piece.targets.map((target) => shownS(target, readings));
  const watch = new Thermometer(told, scene.piece.targets, known, errorAtLast(told));

  const found: (readonly number[])[] = [];
  const strays: number[] = [];
  const passagesS: number[][] = [];
  const showsC: number[][] = [];
  for (const [index, row] of taught.entries()) {
    const [driftZ = 0, nowZ = 0, laterZ = 0] = owns[index] ?? [];
    watch.begin(nowZ, laterZ);
    if (run.run(scene.cook(row, driftZ, fells[index]?.[0]), question.endS, watch)) {
      found.push(row);
      strays.push(driftZ);
      passagesS.push([...watch.passagesS]);
      showsC.push(readAt(run, run.coresC, question.timesS));
    }
    yield;
  }
  if (found.length < FEWEST_MEMBERS) return undefined;
  const leftOut = members - found.length;
  const after = momentsOf(found);
  return { before, after, rows: found, strays, leftOut, passagesS, showsC };
}

/** Members moved towards what was read; those that find no balance are dropped on the way. */
function* brought(
  scene: Scene,
  drawn: Matrix,
  readings: readonly Reading[],
  run: CookRun,
  normal: () => number,
): Generator<void, Matrix> {
  const watch = new Thermometer(readings, [], [], errorAtLast([]));
  const observed = observedIn(readings);
  let rows = drawn;
  for (let step = 0; step < UPDATES; step++) {
    const found: (readonly number[])[] = [];
    const foreseen: number[][] = [];
    for (const row of rows) {
      watch.begin(0, 0);
      if (run.run(scene.cook(row, 0), watch.markS, watch)) {
        found.push(row);
        foreseen.push([...watch.foreseenC]);
      }
      yield;
    }
    if (found.length < FEWEST_MEMBERS) return [];
    rows = update(found, foreseen, observed, normal);
  }
  return rows;
}
