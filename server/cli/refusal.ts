import type { FolderFault } from '../folder/index.ts';
import { faultLine } from '../folder/index.ts';

/** Why something cannot be: the rule it breaks, a sentence for a person, and the data of both. */
export type Refusal = {
  readonly rule: string;
  readonly sentence: string;
  readonly [data: string]: unknown;
};

/** What came of reading; `misused` where the command line asked for what makes no sense. */
export type Refused = {
  readonly ok: false;
  readonly misused: boolean;
  readonly refusals: readonly Refusal[];
};

export const cannot = (refusals: readonly Refusal[]): Refused => ({
  ok: false,
  misused: false,
  refusals,
});

export const makesNoSense = (refusal: Refusal): Refused => ({
  ok: false,
  misused: true,
  refusals: [refusal],
});

/** The faults of files, each with its place, what was found and what is allowed. */
export const faulty = (faults: readonly FolderFault[]): Refused =>
  cannot(faults.map((fault) => ({ rule: 'file-fault', sentence: faultLine(fault), ...fault })));
