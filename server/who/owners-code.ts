import { isSame, newCode, typedCode } from './secrets.ts';

const LIFE_MS = 10 * 60_000;
const LETTERS = 8;

/**
 * What whoever started the hub reads on its terminal, and types at the screen that is to be the
 * desk. Good once, and not for long.
 */
export type OwnersCode = {
  /** As it is read: two fours. */
  readonly shown: string;
  check(typed: string): 'right' | 'wrong' | 'over';
  /** It has done its work. */
  use(): void;
};

export function createOwnersCode(nowMs: () => number): OwnersCode {
  const code = newCode(LETTERS);
  const endsAtMs = nowMs() + LIFE_MS;
  let isUsed = false;
  return {
    shown: `${code.slice(0, LETTERS / 2)}-${code.slice(LETTERS / 2)}`,
    check(typed) {
      if (isUsed || nowMs() >= endsAtMs) return 'over';
      return isSame(typedCode(typed), code) ? 'right' : 'wrong';
    },
    use: () => {
      isUsed = true;
    },
  };
}
