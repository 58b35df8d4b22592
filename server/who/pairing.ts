import type { ScreenId } from '../../shared/kernel/index.ts';
import type { PairAsked, PairingShown } from '../../shared/protocol/index.ts';
import { isSame, newCode, newToken, typedCode } from './secrets.ts';

/** As short as a walk to the desk allows. */
const CODE_LIFE_MS = 5 * 60_000;
const CODE_LETTERS = 6;
/** More screens than anybody puts up at once. */
const ASKING_MAX = 20;

/** Screens that ask to be let in: each shows a code, and alone knows its secret. */
export type Pairing = {
  /** Null while too many are asking. */
  ask(address: string): PairAsked | null;
  /** Those waiting, for the desk. */
  shown(): readonly PairingShown[];
  has(code: string): boolean;
  /** The screen that shows this code is let in: it may fetch its token. */
  letIn(code: string, screen: ScreenId, token: string): void;
  /** What has come of it, for whoever has the secret. */
  outcome(secret: string): PairOutcome;
};

export type PairOutcome =
  | { readonly is: 'waiting' }
  | { readonly is: 'over' }
  | { readonly is: 'let-in'; readonly screen: ScreenId; readonly token: string };

type Asking = {
  readonly secret: string;
  readonly code: string;
  readonly address: string;
  readonly endsAtMs: number;
  letIn: { readonly screen: ScreenId; readonly token: string } | null;
};

/** @param nowMs a clock that never runs backwards. */
export function createPairing(nowMs: () => number): Pairing {
  let asking: Asking[] = [];

  function alive(): Asking[] {
    asking = asking.filter(({ endsAtMs }) => endsAtMs > nowMs());
    return asking;
  }
  const leftS = ({ endsAtMs }: Asking) => Math.ceil((endsAtMs - nowMs()) / 1000);
  const showing = (code: string) =>
    alive().find((each) => each.letIn === null && isSame(each.code, typedCode(code)));

  return {
    ask(address) {
      if (alive().length >= ASKING_MAX) return null;
      const [secret, code] = [newToken(), newCode(CODE_LETTERS)];
      const one = { secret, code, address, endsAtMs: nowMs() + CODE_LIFE_MS, letIn: null };
      asking.push(one);
      return { secret, code, leftS: leftS(one) };
    },
    shown: () =>
      alive()
        .filter(({ letIn }) => letIn === null)
        .map((each) => ({ code: each.code, address: each.address, leftS: leftS(each) })),
    has: (code) => showing(code) !== undefined,
    letIn(code, screen, token) {
      const one = showing(code);
      if (one) one.letIn = { screen, token };
    },
    outcome(secret) {
      const one = alive().find((each) => isSame(each.secret, secret));
      if (!one) return { is: 'over' };
      // Told as often as it asks: an answer may be lost on its way.
      return one.letIn ? { is: 'let-in', ...one.letIn } : { is: 'waiting' };
    },
  };
}
