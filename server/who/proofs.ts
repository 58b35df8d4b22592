import type { PersonId, ScreenId } from '../../shared/kernel/index.ts';

/** So long after the PIN somebody counts as standing at that screen. */
const PROVEN_MS = 5 * 60_000;

/** Who has shown by a PIN to be at which screen: one at a time, and for a few minutes. */
export type Proofs = {
  /** Gives how long it holds, in seconds. */
  prove(screen: ScreenId, person: PersonId): number;
  personAt(screen: ScreenId): PersonId | null;
  /** Their PIN is another now, or none. */
  forget(person: PersonId): void;
  leave(screen: ScreenId): void;
};

/** @param nowMs a clock that never runs backwards. */
export function createProofs(nowMs: () => number): Proofs {
  const proven = new Map<ScreenId, { readonly person: PersonId; readonly untilMs: number }>();
  return {
    prove(screen, person) {
      proven.set(screen, { person, untilMs: nowMs() + PROVEN_MS });
      return PROVEN_MS / 1000;
    },
    personAt(screen) {
      const found = proven.get(screen);
      return found && found.untilMs > nowMs() ? found.person : null;
    },
    forget(person) {
      for (const [screen, proof] of proven) if (proof.person === person) proven.delete(screen);
    },
    leave: (screen) => void proven.delete(screen),
  };
}
