import { type Random, seeded } from '../kernel/index.ts';
import { type Belief, unlearned } from './belief.ts';
import { CookRun } from './cook-run.ts';
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

/** How the fire strays, and how the model errs, now and later: unknowns that no reading teaches. */
const OWN = 3;

/** With fewer members than this nothing can be said of so many unknowns. */
const FEWEST = 40;

/**
 * Brings an ensemble to the readings of a piece and runs it on to its targets. Each of its pieces
 * of work is the run of one member. Nothing comes of it where too few members find their balance.
 */
export function* assimilate(
  scene: Scene,
  all: readonly Reading[],
  { seed, members, endS, timesS }: Question,
): Generator<void, Ensemble | undefined> {
  const random: Random = seeded(seed);
  const normal = normals(random);
  const before = scene.belief();
  const readings = telling(all);
  const run = new CookRun();
  let rows = draw(before, members, normal);
  const owns = draw(unlearned(OWN), members, normal);

  const toReadings = new Thermometer(readings, [], [], errorAtLast([]));
  const observed = observedIn(readings);
  for (let step = 0; readings.length > 0 && step < UPDATES; step++) {
    const foreseen: number[][] = [];
    const found: number[][] = [];
    for (const row of rows) {
      toReadings.begin(0, 0);
      if (run.run(scene.cook(row, 0), toReadings.markS, toReadings)) {
        found.push(row);
        foreseen.push([...toReadings.foreseenC]);
      }
      yield;
    }
    if (found.length < FEWEST) return undefined;
    rows = update(found, foreseen, observed, normal);
  }

  const toTargets = new Thermometer(
    readings,
    scene.piece.targets,
    scene.piece.targets.map((target) => shownS(target, all)),
    errorAtLast(readings),
  );
  const passagesS: number[][] = [];
  const showsC: number[][] = [];
  const found: number[][] = [];
  for (const [index, row] of rows.entries()) {
    const [driftZ = 0, nowZ = 0, laterZ = 0] = owns[index] ?? [];
    toTargets.begin(nowZ, laterZ);
    if (run.run(scene.cook(row, driftZ), endS, toTargets)) {
      found.push(row);
      passagesS.push([...toTargets.passagesS]);
      showsC.push(readAt(run, run.coresC, timesS));
    }
    yield;
  }
  if (found.length < FEWEST) return undefined;
  const leftOut = members - found.length;
  return { before, after: momentsOf(found), leftOut, passagesS, showsC };
}
