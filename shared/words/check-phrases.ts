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
  /** Why it was not kept, and what it keeps from happening. */
  readonly refused: {
    readonly whoChecked: string;
    readonly nothingToCheck: string;
    readonly readingMissing: string;
    readonly nothingToCorrect: string;
    notAllowed(allowed: string): string;
    readonly barred: {
      failed(batch: string, what: string, why: string): string;
      missed(batch: string, what: string, why: string): string;
      discarded(batch: string): string;
    };
    row(what: string, found: string | null, asked: string | null, source: string): string;
  };
};
