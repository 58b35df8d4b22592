import type { Instant } from '../../shared/kernel/index.ts';
import type { Question, QuestionAnswer } from '../../shared/protocol/index.ts';
import type { Face } from '../../shared/view/index.ts';
import { guarded, type Report } from '../report.ts';
import type { DayRules, Kept, RunningDay, Shown } from './rules.ts';

/**
 * The running day, which must go on whatever a rule of it does: a fault of ours is said and
 * survived.
 */
export type Stage<State> = {
  readonly running: RunningDay<State>;
  /** Events that are kept; they are true even if the day stumbles over one. */
  take(kept: readonly Kept<State>[]): void;
  /** Brings the day up to now; true when something shown has changed. */
  tick(): boolean;
  show(face: Face, now: Instant): Shown;
  ifMoved(question: Question): QuestionAnswer;
};

export function createStage<State>({
  rules,
  state,
  now,
  report,
}: {
  readonly rules: DayRules<State>;
  readonly state: () => State;
  readonly now: () => Instant;
  readonly report: Report;
}): Stage<State> {
  let day = rules.run(state(), now());
  return {
    get running() {
      return day;
    },
    take(kept) {
      try {
        for (const each of kept) day.apply(each);
        day.tick(now());
      } catch (fault) {
        report({ level: 'fault', what: 'the running day stumbled and is made anew', fault });
        guarded(report, 'the day could not be made anew', () => {
          day = rules.run(state(), now());
        });
      }
    },
    tick() {
      try {
        return day.tick(now());
      } catch (fault) {
        report({ level: 'fault', what: 'the day could not be brought up to now', fault });
        return false;
      }
    },
    show: (face, at) => day.show(face, at),
    ifMoved(question) {
      try {
        return day.ifMoved(question, now());
      } catch (fault) {
        report({ level: 'fault', what: 'a question could not be answered', question, fault });
        return { ok: false, refusal: { rule: 'hub-fault' } };
      }
    },
  };
}
