import type { CheckFact, CheckKind, CorrectiveAction, Feel, Live } from '../day/index.ts';
import type { Celsius, Text } from '../kernel/index.ts';
import { checkedThing } from './check-on.ts';

/** What was looked at, or what was done about it, with its subject by name. */
export type LoggedCheck =
  | {
      readonly kind: 'checked';
      readonly check: CheckKind;
      readonly on: Text;
      readonly tempC: Celsius | null;
      readonly feel: Feel | null;
    }
  | {
      readonly kind: 'corrected';
      readonly check: CheckKind;
      readonly on: Text;
      readonly action: CorrectiveAction;
    };

/** A check or a correction as the log tells it. */
export function loggedCheck(live: Live, told: CheckFact): LoggedCheck {
  const check = told.on.kind;
  const on = checkedThing(live, told.on);
  return told.kind === 'checkRecorded'
    ? { kind: 'checked', check, on, tempC: told.tempC, feel: told.feel ?? null }
    : { kind: 'corrected', check, on, action: told.action };
}
