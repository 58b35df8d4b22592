import type { Brand } from './brand.ts';

/** Made once by the client for each command; everything else is named from it. */
export type CommandId = Brand<string, 'command'>;
export type PersonId = Brand<string, 'person'>;
export type ScreenId = Brand<string, 'screen'>;
/** A kitchen's working day, named by the local date its first service falls on. */
export type DayId = Brand<string, 'day'>;

export type CutId = Brand<string, 'cut'>;
/** What came of one cut at one time, `2026-11-28-2`: the day and its number on it. */
export type LotId = Brand<string, 'lot'>;
export type DishId = Brand<string, 'dish'>;
export type RouteId = Brand<string, 'route'>;
export type StepId = Brand<string, 'step'>;
export type MixId = Brand<string, 'mix'>;
/** A kind of working place, `trim`, that a route asks for and a kitchen's stations offer. */
export type BenchId = Brand<string, 'bench'>;
export type SkillId = Brand<string, 'skill'>;

export type SmokerId = Brand<string, 'smoker'>;
/** One rack of one smoker, `a/2`: the place a batch, or a part of it, is cooked. */
export type SlotId = Brand<string, 'slot'>;
export type StationId = Brand<string, 'station'>;
export type CabinetId = Brand<string, 'cabinet'>;
export type CoolerId = Brand<string, 'cooler'>;
/** One that is carried about, as it is marked. */
export type ThermometerId = Brand<string, 'thermometer'>;

export type ServiceId = Brand<string, 'service'>;
export type BatchId = Brand<string, 'batch'>;
/** A step of one batch, `ribs-1/rub`: an activity to the schedule, a task to a person. */
export type TaskId = Brand<string, 'task'>;
/** To the schedule every step is an activity, whatever it is about. */
export type ActivityId = TaskId;
