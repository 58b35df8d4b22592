import type { ActivityId, Celsius, Instant, Metres, Seconds } from '../kernel/index.ts';
import { METRES_PER_INCH, unreachable } from '../kernel/index.ts';
import type { PlanRefusal, Unfit } from '../plan/index.ts';
import type { Conflict, ResourceId } from '../schedule/index.ts';
import type { Text } from '../view/index.ts';
import { clockTime, durationWords, temperature, weight } from './amounts.ts';
import { sayLimits } from './limits-words.ts';
import { longestOf } from './longest-links.ts';
import { planEnglish } from './plan-english.ts';
import type { PlanPhrases } from './plan-phrases.ts';
import { planSpanish } from './plan-spanish.ts';
import type { Say } from './say.ts';
import { textIn } from './say.ts';
import { sayDay } from './say-day.ts';
import { shownClock } from './typed-clock.ts';

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
    case 'nobody-there':
      return words.nobodyThere(sayDay(refusal.eve, say), sayDay(refusal.day, say));
    case 'closes-before-opening':
      return words.closesBeforeOpening(
        textIn(refusal.service, say),
        shownClock(refusal.opens, say),
        shownClock(refusal.closes, say),
      );
    case 'sales-after-closing':
      return words.salesAfterClosing(dishOf(refusal, say), refusal.counted, refusal.open);
    case 'portion-over-piece':
      return words.portionOverPiece(
        dishOf(refusal, say),
        weight(refusal.portionKg, say),
        weight(refusal.pieceGivesKg, say),
      );
    case 'no-smoker': {
      const { setC, smokers } = refusal;
      const each = smokers.map((unfit) => sayUnfit(unfit, words.unfit, say)).join('; ');
      const nearest = sayNearest(smokers, setC, words.nearest, say);
      return words.noSmoker(dishOf(refusal, say), temperature(setC, say), each, nearest);
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
      return sayTooEarly(refusal, words, say);
    case 'batch-too-large': {
      const { number, pieces, most, portions } = refusal;
      return words.batchTooLarge(dishOf(refusal, say), number, pieces, most, portions);
    }
    case 'batch-begun':
      return words.batchBegun(textIn(refusal.batch, say), refusal.pieces);
    case 'not-delivered':
      return words.notDelivered(textIn(refusal.cut, say), refusal.needs, refusal.has);
    case 'step-begun':
      return words.stepBegun(textIn(refusal.batch, say), textIn(refusal.step, say));
    case 'trim-short':
      return words.trimShort(
        dishOf(refusal, say),
        textIn(refusal.cut, say),
        weight(refusal.needKg, say),
        weight(refusal.hasKg, say),
        refusal.portions,
      );
    case 'limits-changed':
      return words.limitsChanged[refusal.why](sayLimits(refusal.from), sayLimits(refusal.to));
    case 'limit-broken':
      return sayBroken(refusal, words, say);
    default:
      return sayStepRefusal(refusal, words, say);
  }
}

function sayTooEarly(
  refusal: Extract<PlanRefusal, { rule: 'service-too-early' }>,
  words: PlanPhrases,
  say: Say,
): string {
  const { opens, needS, hasS, canOpenAt } = refusal;
  return words.serviceTooEarly(
    dishOf(refusal, say),
    shownClock(opens, say),
    durationWords(needS),
    durationWords(hasS),
    clockTime(canOpenAt, say),
  );
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
      const longest = longestS > 0 ? durationWords(longestS) : null;
      return words.noShift(of, step, durationWords(needS), longest);
    }
    case 'no-station':
      return words.noStation(of, step, textIn(refusal.bench, say));
    case 'no-room-to-keep':
      return words.noRoomToKeep[refusal.where](of, step, refusal.needs, refusal.has);
    default:
      return unreachable(refusal);
  }
}

type LimitBroken = Extract<PlanRefusal, { rule: 'limit-broken' }>;

function sayBroken(refusal: LimitBroken, words: PlanPhrases, say: Say): string {
  const { row, asked, found } = refusal;
  const limit = `${textIn(row.what, say)} (${row.section}, ${row.source}, ${row.edition})`;
  return words.limitBroken(aboutLimit(refusal, words, say), limit, asked, found);
}

function aboutLimit(
  { service, dish, step, thing }: LimitBroken,
  words: PlanPhrases,
  say: Say,
): string {
  const plain = [service, dish, thing].flatMap((text) => (text ? textIn(text, say) : []));
  return [...plain, ...(step ? [words.quoted(textIn(step, say))] : [])].join(', ');
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
      return words.size(smoker, length(unfit.needs, say), length(unfit.most, say));
    case 'weight':
      return words.weight(smoker, weight(unfit.needs, say), weight(unfit.most, say));
    default:
      return unreachable(unfit);
  }
}

/** Kitchens that weigh in pounds measure in inches. */
function length(lengthM: Metres, say: Pick<Say, 'weight'>): string {
  if (say.weight === 'kg') return `${Math.round(lengthM * 100)} cm`;
  return `${Math.round(lengthM / METRES_PER_INCH)} in`;
}

/** What the smoker that comes nearest could take: first a lower fire, then a smaller piece. */
function sayNearest(
  smokers: readonly Unfit[],
  setC: Celsius,
  words: PlanPhrases['nearest'],
  say: Say,
): string | null {
  const away = (unfit: Unfit): number => {
    if (unfit.why === 'not-wished') return Number.POSITIVE_INFINITY;
    if (unfit.why !== 'heat') return 1000 * (unfit.needs / unfit.most);
    return Math.min(Math.abs(unfit.coolestC - setC), Math.abs(unfit.hottestC - setC));
  };
  const [first, ...others] = smokers;
  if (first === undefined) return null;
  const nearest = others.reduce((best, one) => (away(one) < away(best) ? one : best), first);
  const smoker = textIn(nearest.smoker, say);
  if (nearest.why === 'not-wished') return null;
  if (nearest.why === 'size') return words.size(smoker, length(nearest.most, say));
  if (nearest.why === 'weight') return words.weight(smoker, weight(nearest.most, say));
  const canC = setC < nearest.coolestC ? nearest.coolestC : nearest.hottestC;
  return words.heat(smoker, temperature(canC, say));
}

/** What the subjects of a conflict are called; the schedule itself knows no names. */
export type ConflictNames = {
  readonly task: (id: ActivityId) => Text;
  readonly resource: (id: ResourceId) => Text;
  readonly at: (fromOriginS: Seconds) => Instant;
  /** How long it takes at the least. */
  readonly takesS: (id: ActivityId) => Seconds;
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
    case 'goal-too-early': {
      const short = durationWords(conflict.shortS);
      const { told, links } = longestOf(conflict.chain, names.takesS);
      if (told.length === links) return words.goalTooEarly(listed(told).join(' → '), short);
      const each = told.map((id) => `${quoted(task(id))} ${durationWords(names.takesS(id))}`);
      return words.longGoalTooEarly(links, each.join(' → '), short);
    }
    case 'malformed':
      return words.malformed(conflict.where, conflict.what);
    default:
      return unreachable(conflict);
  }
}

const unique = (texts: readonly string[]) => [...new Set(texts)];
