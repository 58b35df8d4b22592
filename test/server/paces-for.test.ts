import { expect, it } from 'vitest';
import { pacesFor } from '../../server/paces-for.ts';
import type { RouteId, StepId } from '../../shared/kernel/index.ts';
import { sayPaces } from '../../shared/words/index.ts';
import { plan, Telling } from '../shared/day/demo.ts';

const of = { route: 'spare-ribs' as RouteId, step: 'square' as StepId };
const state = { ...new Telling().state, handTimes: [{ ...of, ratios: Array(8).fill(1.25) }] };

it('plans another day by how fast hands have been, and leaves the running one alone', () => {
  const pace = { ...of, times: 8, low: 1.25, typical: 1.25, high: 1.25 };
  expect(pacesFor('2026-12-24', state)).toEqual({ paces: [pace] });
  expect(pacesFor(plan.built.day, state)).toEqual({});
});

it('says at the desk how much of a plan goes by it', () => {
  expect(sayPaces(1, 'en')).toBe('One step is as long as hands here have taken.');
  expect(sayPaces(3, 'es')).toBe('3 pasos duran lo que han tardado las manos aquí.');
});
