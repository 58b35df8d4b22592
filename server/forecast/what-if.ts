import { MODEL_VERSION } from '../../shared/cook/index.ts';
import {
  adoptedFrom,
  askIf,
  type CookOffer,
  cookOffer,
  type DayState,
  earlierOffer,
  type Refusal,
} from '../../shared/day/index.ts';
import type { AskedWhatIf } from '../../shared/protocol/index.ts';
import { liveOf } from '../day-rules.ts';
import type { Hub } from '../hub/index.ts';
import type { CookThread } from './cook-thread.ts';
import type { Forecasts } from './forecasts.ts';

export type AskWhatIf = (
  asked: AskedWhatIf,
) => Promise<
  | { readonly ok: true; readonly offer: CookOffer }
  | { readonly ok: false; readonly refusal: Refusal }
>;

/** Answers what would come of something before it is done; the day itself is left as it is. */
export function askWhatIf(
  hub: Pick<Hub<DayState>, 'running' | 'state'>,
  thread: CookThread,
  forecasts: Pick<Forecasts, 'withHeard'>,
): AskWhatIf {
  return async ({ stay, whatIf }) => {
    const live = hub.state.plan ? liveOf(hub.running) : null;
    if (!live) return { ok: false, refusal: { rule: 'no-plan' } };
    // What has not gone in is no matter of the model: the day alone says when it could.
    if (whatIf.kind === 'earlier') return earlierOffer(live, stay, whatIf.byS);
    const asked = askIf(live, stay, whatIf);
    if (!asked.ok) return asked;
    const found = await thread.foresee(forecasts.withHeard(asked.ask));
    if (!found.ok) return { ok: false, refusal: { rule: 'nothing-foreseen' } };
    const adopted = adoptedFrom(asked.ask, found.forecast, MODEL_VERSION);
    // The day went on meanwhile: it is compared with what it now is.
    const after = liveOf(hub.running);
    if (!after) return { ok: false, refusal: { rule: 'no-plan' } };
    return { ok: true, offer: cookOffer(after, adopted, whatIf) };
  };
}
