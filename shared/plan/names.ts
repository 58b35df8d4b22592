import type { PersonId, SlotId, SmokerId, TaskId, Text } from '../kernel/index.ts';

/**
 * A thing with the name a person knows it by. Reasons and refusals carry these, so that a sentence
 * can be made of them anywhere and for ever, also when the plan has moved on.
 */
export type TaskName = {
  readonly id: TaskId;
  readonly title: Text;
  /** In a word or two, where its step has them. */
  readonly short?: Text;
};
export type PersonName = { readonly id: PersonId; readonly name: string };
export type SmokerName = { readonly id: SmokerId; readonly name: Text };
/** One rack: `smoker` as it is called, `rack` as it is marked. */
export type SlotName = { readonly id: SlotId; readonly smoker: Text; readonly rack: string };
