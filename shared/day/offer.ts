import type { Instant, Seconds, ServiceId, TaskId, Text } from '../kernel/index.ts';
import type { SlotName } from '../plan/index.ts';

/** What a slot move would do, before it is taken. */
export type MoveOffer = {
  readonly basedOnSeq: number;
  /** The load that was asked for first, then those that make room for it. */
  readonly moves: readonly MovedLoad[];
  readonly services: readonly {
    readonly id: ServiceId;
    readonly name: Text;
    readonly opensAt: Instant;
    readonly beforeS: Seconds;
    readonly afterS: Seconds;
  }[];
  /** Tasks whose start moves by a minute or more. */
  readonly tasksChanged: number;
  /** Which side the fat goes to, where the move changes it. */
  readonly fatSide: 'down' | 'up' | null;
  /** The smoker it goes to, where by the plan nobody has lit it by then. */
  readonly unlit: { readonly name: Text; readonly preheatS: Seconds } | null;
};

export type MovedLoad = {
  readonly stay: TaskId;
  readonly need: number;
  readonly batchName: Text;
  readonly pieces: number;
  readonly piece: { readonly one: Text; readonly many: Text };
  readonly from: SlotName;
  readonly to: SlotName;
};
