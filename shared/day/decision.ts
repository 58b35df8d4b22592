import type { Fact } from './event.ts';
import type { Refusal } from './refusal.ts';

/** What a command makes happen, or why it does not. */
export type Decision =
  | { readonly ok: true; readonly facts: readonly Fact[] }
  | { readonly ok: false; readonly refusal: Refusal };

/** The decision that something happens. */
export const happen = (...facts: Fact[]): Decision => ({ ok: true, facts });

/** The decision that nothing does, and why. */
export const refuse = (refusal: Refusal): Decision => ({ ok: false, refusal });
