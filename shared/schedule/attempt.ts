import type { Random } from '../kernel/index.ts';
import { must } from '../kernel/index.ts';
import { generate } from './generate.ts';
import type { Attempt, Failure, Generated } from './generated.ts';
import { goalBound } from './goal-bound.ts';
import { mirrored } from './mirror.ts';
import type { Net, Slot } from './net.ts';

/** Placings allowed to one attempt for each activity; most take little more than one. */
const STEPS_PER_ACTIVITY = 12;
/** How much each restart is shaken more than the one before. */
const NOISE_S = 600;

export type Restart = {
  readonly number: number;
  readonly random: Random;
  readonly boostS: ArrayLike<number>;
};

type Slots = readonly (Slot | undefined)[];

/**
 * One attempt, of a kind that its number chooses: two of three plan backward from the goals; the
 * third plans forward from the beginning, and then pulls everything as late as it can be.
 */
export function attempt(net: Net, { number, random, boostS }: Restart): Generated {
  const common = { random, boostS, stepsMost: net.size * STEPS_PER_ACTIVITY };
  const noiseS = Math.max(0, number - 1) * NOISE_S;
  const order = number % 2 === 0 ? 'soonest' : 'urgent';
  if (number % 3 !== 2) return backwardThenForward(net, { ...common, order, noiseS });
  const forward = generate(net, { ...common, order: 'urgent', noiseS });
  if (!forward.ok) return forward;
  const latestFirst = forward.slots.map((slot) => -must(slot, 'placed forward').endS);
  const late = backwardThenForward(net, { ...common, order: latestFirst, noiseS: 0 });
  return late.ok ? late : forward;
}

/**
 * The same placed anew, what is latest first, each as late as it can be now; with noise, in about
 * that order (justification: V. Valls, F. Ballestín and S. Quintanilla, EJOR 165, 2005).
 */
export function placedAgain(net: Net, slots: Slots, noiseS: number, random: Random): Generated {
  const latestFirst = slots.map((slot) => -must(slot, 'placed').endS);
  const boostS = new Float64Array(net.size);
  const stepsMost = net.size * STEPS_PER_ACTIVITY;
  return backwardThenForward(net, { order: latestFirst, noiseS, random, boostS, stepsMost });
}

/** What a goal waits for goes as late as it can be, then the rest as early as it can be. */
function backwardThenForward(net: Net, options: Attempt): Generated {
  const only = goalBound(net);
  const late = generate(mirrored(net), { ...options, only });
  if (!late.ok) return { ok: false, failure: mirroredFailure(late.failure) };
  const placed = mirroredSlots(net, late.slots);
  const order = typeof options.order === 'object' ? 'urgent' : options.order;
  return generate(net, { ...options, order, placed });
}

/** Slots as a mirrored net has them. */
export function mirroredSlots(net: Net, slots: Slots): Slots {
  return slots.map((slot, activity) => {
    if (!slot) return undefined;
    const mode = net.modes[activity]?.find(({ index }) => index === slot.mode.index);
    return {
      mode: must(mode, 'the same modes on both sides of the mirror'),
      // From nought, for the mirror of nought is not minus nought.
      startS: 0 - slot.endS,
      endS: 0 - slot.startS,
      uses: slot.uses,
    };
  });
}

function mirroredFailure({ window, ...failure }: Failure): Failure {
  return {
    ...failure,
    window: {
      startLoS: -window.endHiS,
      startHiS: -window.endLoS,
      endLoS: -window.startHiS,
      endHiS: -window.startLoS,
    },
  };
}
