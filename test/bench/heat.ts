import { parseArgs } from 'node:util';
import { AirCurve } from '../../shared/cook/air-curve.ts';
import { CookRun, type Watch } from '../../shared/cook/cook-run.ts';
import { cutPriors } from '../../shared/cook/cut-priors.ts';
import { draw, normals } from '../../shared/cook/normal.ts';
import type { Piece, Smoker } from '../../shared/cook/piece.ts';
import { Scene } from '../../shared/cook/scene.ts';
import { smokerPriors } from '../../shared/cook/smoker-priors.ts';
import { celsius, metres, seconds, seeded } from '../../shared/kernel/index.ts';
import { modelTheta } from '../shared/cook/plain-cook.ts';
import { bodies, exponentOf, theta } from '../shared/cook/series.ts';

const BIOTS = [0.1, 0.2, 0.5, 1, 2, 5, 10];
const FOURIERS = [0.05, 0.06, 0.08, 0.1, 0.15, 0.2, 0.3, 0.5, 0.75, 1, 1.5, 2, 3, 5];
const HOURS_S = 12 * 3600;
const DONE_C = celsius(96);
const PIECES = 200;
const MEMBERS = 80;

/**
 * The heat model at the grid and the steps of the product: its worst error in θ against the
 * series of ten terms, at core and surface; the time of one cook of twelve hours; and that of
 * many members of many pieces, to their last target. With `--shape slab|cylinder|sphere --biot B
 * --fo F` one point of it.
 */
export async function bench(args: string[]): Promise<Record<string, unknown>> {
  const text = { type: 'string' } as const;
  const { values } = parseArgs({ args, options: { shape: text, biot: text, fo: text } });
  if (values.shape !== undefined) return onePoint(values.shape, values.biot, values.fo);
  const errors = bodies.map((body) => {
    const worst = { core: 0, surface: 0 };
    for (const biot of BIOTS) {
      for (const fourier of FOURIERS) {
        const found = modelTheta(exponentOf(body), biot, fourier);
        const off = (value: number, depth: number) =>
          Math.abs(value - theta(body, biot, fourier, depth));
        worst.core = Math.max(worst.core, off(found.core, 0));
        worst.surface = Math.max(worst.surface, off(found.surface, 1));
      }
    }
    console.log(JSON.stringify({ shape: body, core: worst.core, surface: worst.surface }));
    return Math.max(worst.core, worst.surface);
  });
  return {
    max_theta_error: Math.max(...errors),
    cook_ms: cookMs(),
    fleet_s: fleetS(),
  };
}

function onePoint(shape: string, biot?: string, fourier?: string): Record<string, unknown> {
  const body = bodies.find((name) => name === shape);
  const [b, f] = [Number(biot), Number(fourier)];
  if (body === undefined || !(b > 0) || !(f > 0)) {
    throw new Error(`Say --shape ${bodies.join('|')} --biot B --fo F, with B and F above 0.`);
  }
  const { core, surface } = modelTheta(exponentOf(body), b, f);
  return { theta: core, theta_surface: surface, series: theta(body, b, f) };
}

const shoulder: Piece = {
  cut: cutPriors.shoulder,
  sides: { thicknessM: metres(0.1), widthM: metres(0.18), lengthM: metres(0.22) },
  startC: celsius(5),
  stays: [{ from: { by: 'time', atS: seconds(0) }, place: { kind: 'home' }, wrap: 'none' }],
  targets: [{ id: 'done', tempC: DONE_C, way: 'rising' }],
};

const smoker: Smoker = {
  id: 'smoker',
  prior: smokerPriors.draught,
  setC: celsius(110),
  log: [],
  doors: [],
};

function cookMs(): number {
  const scene = new Scene(shoulder, smoker, { nowS: 0 });
  const cook = scene.cook(scene.belief().mean, 0);
  const run = new CookRun();
  for (let warm = 0; warm < 500; warm++) run.run(cook, HOURS_S);
  const rounds = 1000;
  const startMs = performance.now();
  for (let round = 0; round < rounds; round++) run.run(cook, HOURS_S);
  return (performance.now() - startMs) / rounds;
}

/**
 * Pieces of several thicknesses, each in its own swinging fire, every member until its core is
 * done.
 */
function fleetS(): number {
  const normal = normals(seeded(1));
  const run = new CookRun();
  const startMs = performance.now();
  for (let piece = 0; piece < PIECES; piece++) {
    const thicknessM = metres(0.06 + 0.06 * (piece / PIECES));
    const scene = new Scene({ ...shoulder, sides: { ...shoulder.sides, thicknessM } }, smoker, {
      nowS: 0,
    });
    const air = new AirCurve(
      Array.from({ length: 96 }, (_, i) => ({ atS: i * 900, tempC: 110 + 3 * normal() })),
    );
    for (const z of draw(scene.belief(), MEMBERS, normal)) {
      const cook = scene.cook(z, 0);
      const stages = cook.stages.map((stage) => ({ ...stage, air }));
      run.run({ ...cook, stages }, 36 * 3600, untilDone());
    }
  }
  return (performance.now() - startMs) / 1000;
}

/** Until the core shows the end temperature. */
function untilDone(): Watch {
  let coreC = 0;
  return {
    markS: 0,
    shownC: (_, modelC) => {
      coreC = modelC;
      return modelC;
    },
    isOver: () => coreC >= DONE_C,
  };
}
