import type { ActivityId, Instant, Seconds } from '../kernel/index.ts';
import { unreachable } from '../kernel/index.ts';
import type { PlanRefusal, Unfit } from '../plan/index.ts';
import type { Conflict, ResourceId } from '../schedule/index.ts';
import type { Text } from '../view/index.ts';
import { clockTime, durationWords, temperature, weight } from './amounts.ts';
import { planEnglish } from './plan-english.ts';
import type { PlanPhrases } from './plan-phrases.ts';
import { planSpanish } from './plan-spanish.ts';
import type { Say } from './say.ts';
import { textIn } from './say.ts';

const languages = { en: planEnglish, es: planSpanish } as const satisfies Record<
  string,
  PlanPhrases
>;

/** Why a cook plan cannot be worked out, in one plain sentence with its amounts. */
export function sayPlanRefusal(refusal: PlanRefusal, say: Say): string {
  const words = languages[say.language];
  switch (refusal.rule) {
    case 'unknown-word':
      return words.unknownWord(refusal.path, refusal.found, refusal.allowed);
    case 'closes-before-opening':
      return words.closesBeforeOpening(textIn(refusal.service, say), refusal.opens, refusal.closes);
    case 'sales-after-closing':
      return words.salesAfterClosing(dishOf(refusal, say), refusal.counted, refusal.open);
    case 'portion-over-piece':
      return words.portionOverPiece(
        dishOf(refusal, say),
        weight(refusal.portionKg, say),
        weight(refusal.pieceGivesKg, say),
      );
    case 'no-smoker': {
      const each = refusal.smokers.map((unfit) => sayUnfit(unfit, words.unfit, say));
      return words.noSmoker(dishOf(refusal, say), temperature(refusal.setC, say), each.join('; '));
    }
    case 'limit-too-short':
      return words.limitTooShort(
        dishOf(refusal, say),
        textIn(refusal.from, say),
        textIn(refusal.to, say),
        durationWords(refusal.needS),
        durationWords(refusal.allowedS),
      );
    case 'service-too-early':
      return words.serviceTooEarly(
        dishOf(refusal, say),
        refusal.opens,
        durationWords(refusal.needS),
        durationWords(refusal.hasS),
      );
    default:
      return sayStepRefusal(refusal, words, say);
  }
}

type StepRule = 'no-skill' | 'hand-lacks-skill' | 'no-shift' | 'no-station' | 'no-room-to-keep';

function sayStepRefusal(
  refusal: Extract<PlanRefusal, { rule: StepRule }>,
  words: PlanPhrases,
  say: Say,
): string {
  const of = dishOf(refusal, say);
  const step = textIn(refusal.step, say);
  switch (refusal.rule) {
    case 'no-skill':
      return words.noSkill(of, step, textIn(refusal.skill, say), refusal.needs, refusal.has);
    case 'hand-lacks-skill':
      return words.handLacksSkill(of, step, refusal.hand, textIn(refusal.skill, say));
    case 'no-shift': {
      const { needS, longestS } = refusal;
      return words.noShift(of, step, durationWords(needS), durationWords(longestS));
    }
    case 'no-station':
      return words.noStation(of, step, textIn(refusal.bench, say));
    case 'no-room-to-keep':
      return words.noRoomToKeep[refusal.where](of, step, refusal.needs, refusal.has);
    default:
      return unreachable(refusal);
  }
}

function dishOf(refusal: { readonly service: Text; readonly dish: Text }, say: Say): string {
  return `${textIn(refusal.service, say)}, ${textIn(refusal.dish, say)}`;
}

function sayUnfit(unfit: Unfit, words: PlanPhrases['unfit'], say: Say): string {
  const smoker = textIn(unfit.smoker, say);
  switch (unfit.why) {
    case 'not-wished':
      return words.notWished(smoker);
    case 'heat':
      return words.heat(smoker, temperature(unfit.coolestC, say), temperature(unfit.hottestC, say));
    case 'size':
      return words.size(smoker, area(unfit.needs), area(unfit.most));
    case 'weight':
      return words.weight(smoker, `${unfit.needs} kg`, `${unfit.most} kg`);
    default:
      return unreachable(unfit);
  }
}

const area = (cm2: number) => `${Math.round(cm2)} cm²`;

/** What the subjects of a conflict are called; the schedule itself knows no names. */
export type ConflictNames = {
  readonly task: (id: ActivityId) => Text;
  readonly resource: (id: ResourceId) => Text;
  readonly at: (fromOriginS: Seconds) => Instant;
};

/** Why hands, slots and time do not suffice for a plan, in one plain sentence with its amounts. */
export function sayConflict(conflict: Conflict, names: ConflictNames, say: Say): string {
  const { conflict: words, quoted } = languages[say.language];
  const task = (id: ActivityId) => textIn(names.task(id), say);
  const listed = (ids: readonly ActivityId[]) => unique(ids.map((id) => quoted(task(id))));
  switch (conflict.kind) {
    case 'lags-contradict': {
      const tasks = listed(conflict.activities).join(', ');
      return words.lagsContradict(tasks, durationWords(conflict.excessS));
    }
    case 'no-resource':
      return words.noResource(task(conflict.activity), conflict.amount, conflict.most);
    case 'no-room': {
      const { window, resources, blockedBy, shortS } = conflict;
      const places = unique(resources.map((id) => textIn(names.resource(id), say)));
      const [from, to] = [window.start, window.end].map((s) => clockTime(names.at(s), say));
      const by = listed(blockedBy).slice(0, 3).join(', ') || '–';
      return words.noRoom(
        task(conflict.activity),
        places.join(', '),
        from ?? '',
        to ?? '',
        durationWords(shortS),
        by,
      );
    }
    case 'goal-too-early':
      return words.goalTooEarly(listed(conflict.chain).join(' → '), durationWords(conflict.shortS));
    case 'malformed':
      return words.malformed(conflict.where, conflict.what);
    default:
      return unreachable(conflict);
  }
}

const unique = (texts: readonly string[]) => [...new Set(texts)];
