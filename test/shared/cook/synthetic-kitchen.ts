import type { CutPrior } from '../../../shared/cook/cut-priors.ts';
import { cutPriors } from '../../../shared/cook/cut-priors.ts';
import { meatProperties } from '../../../shared/cook/meat.ts';
import { vapourPressurePa } from '../../../shared/cook/moist-air.ts';
import { normals } from '../../../shared/cook/normal.ts';
import type { Reading } from '../../../shared/cook/piece.ts';
import type { Sides } from '../../../shared/cook/shape.ts';
import { shapeExponent } from '../../../shared/cook/shape.ts';
import { celsius, metres, type Random, seconds } from '../../../shared/kernel/index.ts';
import { cookSpent, MINUTE_S, type SpentSmoker, type SpentWrap } from './spent-surface.ts';

export const wrapNames = ['none', 'paper', 'foil'] as const;
export const DONE_C = 96;

/** One cook as it truly went, and what the kitchen saw of it. */
export type TrueCook = {
  readonly cut: 'shoulder' | 'brisket';
  readonly wrap: (typeof wrapNames)[number];
  readonly doneS: number;
  readonly wrappedS: number | undefined;
  /** When the plan was to wrap it. */
  readonly wrapAtC: number;
  /** What the tape said. */
  readonly sides: Sides;
  readonly startC: number;
  readonly setC: number;
  /** All that the smoker's thermometer and the core's showed, in order of time. */
  readonly log: readonly { readonly atS: number; readonly tempC: number }[];
  readonly readings: readonly Reading[];
};

/**
 * A kitchen drawn at random, that cooks by the law of a spent surface: a smoker of its own, cuts
 * that come from its own butcher, its own way to wrap; and then, cook by cook, pieces, fires that
 * swing, doors that nobody writes down, hands that are late.
 */
export function syntheticKitchen(random: Random): { readonly cook: () => TrueCook } {
  const normal = normals(random);
  const ratio = (median: number, spread: number) => median * spread ** normal();
  const within = (low: number, high: number) => low + (high - low) * random();

  const smoker: SpentSmoker & { thermometerK: number; swingK: number; setC: number } = {
    filmWPerM2K: ratio(9, 1.25),
    emissivity: within(0.55, 0.9),
    wallsBelowAirK: within(2, 8),
    vapourPa: vapourPressurePa(ratio(0.05, 1.4)),
    thermometerK: 2 * normal(),
    swingK: within(2, 4),
    setC: within(110, 124),
  };
  const wraps: Record<'paper' | 'foil', SpentWrap> = {
    paper: { contactWPerM2K: ratio(80, 1.2), passes: ratio(0.15, 1.4), emissivity: 0.75 },
    foil: {
      contactWPerM2K: ratio(60, 1.2),
      passes: ratio(0.03, 1.5),
      emissivity: within(0.1, 0.3),
    },
  };
  const cuts = {
    shoulder: { thicknessM: 0.1, widthM: 0.18, lengthM: 0.22 },
    brisket: { thicknessM: 0.08, widthM: 0.25, lengthM: 0.4 },
  } as const;
  const wetness = ratio(0.2, 1.3);
  const spentShare = ratio(0.16, 1.2);
  const sharpness = within(5, 9);
  const wrapAtC = within(66, 73);

  function cook(): TrueCook {
    const cut = random() < 0.5 ? 'shoulder' : 'brisket';
    const wrap = wrapNames[Math.floor(random() * wrapNames.length)] ?? 'none';
    const size = 1.08 ** normal();
    const side = (usual: number) => usual * size * 1.06 ** normal();
    const sides = cuts[cut];
    const thicknessM = side(sides.thicknessM);
    const widthM = side(sides.widthM);
    const lengthM = side(sides.lengthM);
    const taped = (value: number) => metres(value * 1.04 ** normal());
    const shape = shapeExponent({
      thicknessM: metres(thicknessM),
      widthM: metres(widthM),
      lengthM: metres(lengthM),
    });
    const prior: CutPrior = cutPriors[cut];
    const meat = meatProperties(prior.composition, celsius(20));
    const halfThicknessM = thicknessM / 2;
    const setC = smoker.setC + 3 * normal();
    const air = fireOf(random, normal, setC, smoker.swingK);
    const startC = within(3, 9);
    const lateS = within(0, 1800);
    let dueS: number | undefined;
    const probeErrorK = 0.5 * normal();
    const course = cookSpent(
      {
        piece: {
          halfThicknessM,
          shape: shape + 0.12 * normal(),
          densityKgPerM3: meat.densityKgPerM3,
          heatCapacityJPerKgK: meat.heatCapacityJPerKgK,
          conductivityWPerMK: meat.conductivityWPerMK * 1.04 ** normal(),
          conductivityPerK: 0.0019,
          startC,
          wetness: wetness * 1.2 ** normal(),
          spentKgPerM2:
            (spentShare * 1.15 ** normal() * meat.densityKgPerM3 * halfThicknessM) / (shape + 1),
          sharpness,
          drawsTogether: within(0.04, 0.12),
          probeDepth: within(0, 0.12),
        },
        smoker,
        airC: (timeS) => air(timeS) + smoker.thermometerK,
        wrap: (coreC, timeS) => {
          if (wrap === 'none') return undefined;
          if (dueS === undefined && coreC + probeErrorK >= wrapAtC) dueS = timeS + lateS;
          return dueS !== undefined && timeS >= dueS ? wraps[wrap] : undefined;
        },
      },
      DONE_C,
    );
    const byProbe = random() < 0.6;
    const everyS = byProbe ? 900 : 60 * Math.round(within(50, 90));
    const readings: Reading[] = [];
    for (let atS = everyS; atS / MINUTE_S < course.coresC.length; atS += everyS) {
      const trueC = course.coresC[Math.round(atS / MINUTE_S)] ?? Number.NaN;
      const tempC = celsius(trueC + (byProbe ? 0.4 : 1.2) * normal());
      readings.push({ atS: seconds(atS), tempC, by: byProbe ? 'probe' : 'hand' });
    }
    const doneS = (course.coresC.length - 1) * MINUTE_S;
    const log = Array.from({ length: Math.floor(doneS / 900) }, (_, i) => {
      const atS = (i + 1) * 900;
      return { atS, tempC: air(atS) + normal() };
    });
    return {
      ...{ cut, wrap, doneS, wrappedS: course.wrappedS, wrapAtC, startC, setC, log, readings },
      sides: { thicknessM: taped(thicknessM), widthM: taped(widthM), lengthM: taped(lengthM) },
    };
  }
  return { cook };
}

/**
 * Air that swings about where it is set, over an hour and a half, and falls when a door is
 * opened.
 */
function fireOf(
  random: Random,
  normal: () => number,
  setC: number,
  swingK: number,
): (timeS: number) => number {
  const everyS = 600;
  const kept = Math.exp(-everyS / 5400);
  const swings: number[] = [swingK * normal()];
  for (let i = 1; i < (72 * 3600) / everyS; i++) {
    const before = swings[i - 1] ?? 0;
    swings.push(kept * before + Math.sqrt(1 - kept * kept) * swingK * normal());
  }
  const doors: { atS: number; openS: number }[] = [];
  for (let atS = 0; atS < 72 * 3600; ) {
    atS += 3600 * (0.5 + 2 * random());
    doors.push({ atS, openS: 60 + 240 * random() });
  }
  return (timeS) => {
    const place = timeS / everyS;
    const index = Math.floor(place);
    const [a = 0, b = 0] = [swings[index], swings[index + 1]];
    let airC = setC + a + (place - index) * (b - a);
    for (const { atS, openS } of doors) {
      const agoS = timeS - atS;
      if (agoS < 0) break;
      const lost = 0.5 * (1 - Math.exp(-openS / 90));
      const left = agoS < openS ? 1 : Math.exp(-(agoS - openS) / 360);
      airC -= (airC - 25) * lost * left;
    }
    return airC;
  };
}
