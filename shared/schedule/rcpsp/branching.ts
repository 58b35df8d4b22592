import { cell } from './cell.ts';
import { atLeast, atMost, type Trail } from './trail.ts';

/** A bound to be raised to a value, on trial. */
export type Decision = { readonly bound: number; readonly value: number };

const DECAY = 0.95;
const RESCALE_ABOVE = 1e100;

/** Which variable to decide next, and how. */
export class Branching {
  readonly #activities: number;
  readonly #weight: Float64Array;
  /** Where each variable stood in the best schedule so far; before one, nowhere. */
  #favoured: Int32Array | undefined;
  #step = 1;

  constructor(activities: number, variables: number) {
    this.#activities = activities;
    this.#weight = new Float64Array(variables);
  }

  favour(values: Int32Array): void {
    this.#favoured = values;
  }

  /** Notes that a variable had a part in a contradiction. */
  use(variable: number): void {
    const weight = (this.#weight[variable] ?? 0) + this.#step;
    this.#weight[variable] = weight;
    if (weight <= RESCALE_ABOVE) return;
    for (let i = 0; i < this.#weight.length; i++) {
      this.#weight[i] = (this.#weight[i] ?? 0) / RESCALE_ABOVE;
    }
    this.#step /= RESCALE_ABOVE;
  }

  /** Older contradictions weigh less. */
  age(): void {
    this.#step /= DECAY;
  }

  /** The activity that could start first, there: builds a schedule along time. */
  alongTime(trail: Trail): Decision | undefined {
    let chosen = -1;
    let least = Number.POSITIVE_INFINITY;
    for (let i = 0; i < this.#activities; i++) {
      if (trail.isFixed(i)) continue;
      // Of those that could start first, the one with the least room.
      const key = cell(trail.value, atLeast(i)) - cell(trail.value, atMost(i)) / 4096;
      if (key >= least) continue;
      least = key;
      chosen = i;
    }
    if (chosen === -1) return undefined;
    return { bound: atMost(chosen), value: -cell(trail.value, atLeast(chosen)) };
  }

  /**
   * The variable that lately had the most part in contradictions (as in Chaff): of a start, the
   * earlier half is tried; an order is tried as it was in the best schedule.
   */
  byConflicts(trail: Trail): Decision | undefined {
    let chosen = -1;
    let most = -1;
    for (let i = 0; i < this.#weight.length; i++) {
      const weight = this.#weight[i] ?? 0;
      if (weight <= most || trail.isFixed(i)) continue;
      most = weight;
      chosen = i;
    }
    if (chosen === -1) return undefined;
    const earliest = cell(trail.value, atLeast(chosen));
    const latest = -cell(trail.value, atMost(chosen));
    const isOrderToKeep = chosen >= this.#activities && this.#favoured?.[chosen] === latest;
    if (isOrderToKeep) return { bound: atLeast(chosen), value: latest };
    return { bound: atMost(chosen), value: -((earliest + latest) >> 1) };
  }
}
