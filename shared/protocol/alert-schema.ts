import { z } from 'zod';
import type { Instant, ScreenId } from '../kernel/index.ts';
import type { AlertNotice, AlertRate } from '../view/index.ts';
import { name } from './fields.ts';

/** Asked at the door /api/alerts: which screen asks, and whether it is put up to sound. */
export type AlertsAsk = { readonly screen: ScreenId; readonly sounds: boolean };

export type AlertsShown = {
  readonly ok: true;
  readonly notices: readonly AlertNotice[];
  readonly rates: readonly AlertRate[];
  /** When somebody was called last; null where nobody was. */
  readonly calledAt: Instant | null;
  /** Whether the call is to be heard from this screen: one at a time. */
  readonly isHeard: boolean;
};

/** What may be asked at that door. */
export function alertsAskSchema(): z.ZodType<AlertsAsk> {
  return z.strictObject({ screen: name<ScreenId>(), sounds: z.boolean() });
}
