import type { Instant } from '../../shared/kernel/index.ts';
import type { OfDay, ScreenLink, ScreenLinkListener } from '../../shared/protocol/index.ts';
import type { View } from '../../shared/view/index.ts';
import { guarded, type Report } from '../report.ts';
import { askOf, onlyOn } from './ask.ts';
import type { Desk } from './desk.ts';
import type { Guests } from './guests.ts';
import type { Asker, DayRules } from './rules.ts';
import type { Stage } from './stage.ts';
import type { Walls } from './walls.ts';

/** All that a screen may have to do with. */
export type Reception<State> = {
  readonly rules: DayRules<State>;
  readonly stage: Stage<State>;
  readonly walls: Walls;
  readonly guests: Guests;
  readonly desk: Desk<State>;
  /** Whether this is the day that the log has come to. */
  readonly isOurs: (of: OfDay, state: State) => boolean;
  readonly now: () => Instant;
  /** What each beat brings besides the time. */
  readonly tell: () => { readonly seq: number; readonly speed: number | undefined };
  readonly report: Report;
};

/** Takes a screen in: shows it its face, or why not, and hears what it asks. */
export function acceptLink<State>(
  link: ScreenLink,
  { rules, stage, walls, guests, desk, isOurs, now, tell, report }: Reception<State>,
): ScreenLinkListener {
  const { screenId } = link.hello;
  const running = () => stage.running;
  const known = { rules, asker: link.hello, running };
  const refusal = guests.come(link);
  const showTo = () =>
    guarded(report, `${screenId} could not be shown its face`, () => {
      // It stays to be told why, and why its taps are not taken.
      if (refusal) guests.turnAway(link, refusal);
      else walls.showTo(link);
    });
  if (!refusal) walls.join(link);
  showTo();
  if (desk.readOnly) link.readOnly(desk.readOnly);
  return {
    // Which screen it is, the link knows; a message cannot say otherwise.
    command: ({ of, ...message }) => {
      const personId = message.personId ?? rules.personAt(screenId);
      const ask = askOf({ ...message, screenId, personId }, known);
      return desk.put(of ? onlyOn(ask, (state) => isOurs(of, state)) : ask);
    },
    question: (question) => (refusal ? { ok: false, refusal } : stage.ifMoved(question)),
    beat: () => {
      const t1 = now();
      return { ...tell(), t1, t2: now() };
    },
    whole: showTo,
    gone: () => {
      guests.go(link);
      if (!refusal) walls.leave(link);
    },
  };
}

/** What a screen may see of its face, without being linked; null where it is nothing. */
export function lookIn<State>(
  asker: Asker,
  state: State,
  { rules, stage, now }: Pick<Reception<State>, 'rules' | 'stage' | 'now'>,
): View | null {
  if (rules.mayShow(state, asker)) return null;
  const shown = stage.show(asker.face, now());
  return shown.ok ? shown.view : null;
}
