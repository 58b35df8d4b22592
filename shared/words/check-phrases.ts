import type { CheckKind, CorrectiveAction } from '../view/index.ts';

/** What is looked at and what is done about it, in one language. */
export type CheckPhrases = {
  /** As a noun. */
  readonly kind: Readonly<Record<CheckKind, string>>;
  /** What somebody did, or is to do. */
  readonly action: Readonly<Record<CorrectiveAction, string>>;
  checked(what: string, on: string, temp: string | null, felt: string | null): string;
  /** Where the catalogue has no words of its own for what is not yet so. */
  readonly notYet: string;
  corrected(what: string, on: string, action: string): string;
};
