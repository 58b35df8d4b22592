import type { PersonId, ScreenId, Seconds, SlotId, TaskId, Instant } from '../kernel/index.ts';

/** Why a command was not taken, as data; `shared/words` makes the sentence. */
export type Refusal =
  | { readonly rule: 'no-plan' }
  | { readonly rule: 'unknown-task'; readonly task: TaskId }
  | { readonly rule: 'already-started'; readonly task: TaskId; readonly at: Instant; readonly by: PersonId | null }
  | { readonly rule: 'already-done'; readonly task: TaskId; readonly at: Instant; readonly by: PersonId | null }
  | { readonly rule: 'not-started'; readonly task: TaskId }
  /** Something must come first: `task` waits for `before`, which is not done. */
  | { readonly rule: 'waits-for'; readonly task: TaskId; readonly before: TaskId }
  /** What follows has already begun, so this cannot be taken back. */
  | { readonly rule: 'already-followed'; readonly task: TaskId; readonly by: TaskId }
  | { readonly rule: 'count-out-of-range'; readonly task: TaskId; readonly done: number; readonly pieces: number }
  | { readonly rule: 'not-yours'; readonly screen: ScreenId | null; readonly task: TaskId | null }
  | { readonly rule: 'unknown-person'; readonly person: PersonId }
  | { readonly rule: 'lacks-skill'; readonly person: PersonId; readonly task: TaskId }
  | { readonly rule: 'impossible-temperature'; readonly tempC: number }
  | { readonly rule: 'unknown-place' }
  | { readonly rule: 'slot-too-small'; readonly slot: SlotId; readonly needCm2: number; readonly freeCm2: number; readonly until: Instant }
  | { readonly rule: 'slot-taken'; readonly slot: SlotId; readonly by: TaskId; readonly until: Instant }
  | { readonly rule: 'fire-differs'; readonly slot: SlotId; readonly needC: number; readonly isC: number }
  | { readonly rule: 'off-already'; readonly task: TaskId }
  /** The plan changed between the question and the taking. */
  | { readonly rule: 'out-of-date'; readonly basedOnSeq: number; readonly seq: number }
  | { readonly rule: 'breaks-limit'; readonly task: TaskId; readonly reason: string; readonly overS: Seconds }
  | { readonly rule: 'read-only'; readonly atSeq: number }
  | { readonly rule: 'bad-message'; readonly where: string; readonly what: string };
