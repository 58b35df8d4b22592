import {
  type AdoptedPlan,
  EVENT_VERSION,
  emptyDay,
  fold,
  type Live,
  openLive,
} from '../../shared/day/index.ts';
import {
  type CommandId,
  type DayId,
  type Instant,
  isLocalDay,
  must,
} from '../../shared/kernel/index.ts';
import type { Kitchen } from '../../shared/kitchen/index.ts';
import type { Language } from '../../shared/words/index.ts';
import { makePlan, type PlanMade } from '../adopt.ts';
import { type Bettered, betterPlan } from '../better-plan.ts';
import { type Nearest, nearestOf } from '../nearest.ts';
import { whatCannotBe, whyNotPlanned } from '../why-not-planned.ts';
import type { Asked, Option, Shell } from './command.ts';
import { readKitchenFiles } from './kitchen-files.ts';
import { cannot, makesNoSense, type Refusal, type Refused } from './refusal.ts';

export type Planned =
  | {
      readonly ok: true;
      readonly plan: AdoptedPlan;
      /** What looking for a better plan came to; null where it was not asked for. */
      readonly bettering: Bettering | null;
    }
  | (Refused & { readonly nearest?: Nearest | null });

/** `better` is null where the first plan was the best that was found. */
export type Bettering = { readonly seconds: number; readonly better: Bettered | null };

export const LANGUAGES: readonly Language[] = ['en', 'es'];

export const languageOption: Option = {
  name: 'language',
  value: 'en|es',
  about: 'Usually the first language of the kitchen.',
  oneOf: LANGUAGES,
};

export const dayOption: Option = {
  name: 'day',
  value: 'YYYY-MM-DD',
  about: 'Which plan of a folder; usually the one that is due.',
};

/** Every way to say where the files of a plan are. */
export const fileOptions: readonly Option[] = [
  {
    name: 'kitchen',
    value: 'FILE',
    about: 'Usually kitchen.json beside the plan, or one folder up.',
  },
  { name: 'catalogue', value: 'FILE', about: 'Usually catalogue.json, looked for alike.' },
  dayOption,
];

export const secondsOption: Option = {
  name: 'seconds',
  value: 'N',
  about: 'For so long a better plan is looked for: food that stands about less.',
};

/** Reads the files that are asked about and works them out, as the hub would. */
export function planFrom({ path, options }: Asked, { folder, now }: Shell): Planned {
  const day = options.get('day');
  const wrong = wrongDay(day) ?? wrongSeconds(options.get('seconds'));
  if (wrong) return wrong;
  const kitchen = options.get('kitchen');
  const catalogue = options.get('catalogue');
  const read = readKitchenFiles({ path, kitchen, catalogue, day, folder }, now());
  if (!read.ok) return read;
  const made = makePlan(read.files, 1);
  if (made.ok) return bettered(made.plan, options.get('seconds'));
  const language = languageOf(options, read.files.kitchen);
  const why = whyNot(made, read.files.kitchen, language);
  // A plan that cannot be worked out at all says itself what could.
  if (made.why === 'refused') return why;
  const asked = { files: read.files, before: null, state: null, now: now(), language };
  return { ...why, nearest: nearestOf(asked) };
}

/** A time that is none, or null where there is nothing to object. */
function wrongSeconds(asked: string | undefined): Refused | null {
  if (asked === undefined || (Number(asked) > 0 && Number.isFinite(Number(asked)))) return null;
  const sentence = `--seconds: found ${asked}; allowed: a number above 0.`;
  return makesNoSense({ rule: 'not-a-number', sentence });
}

function bettered(plan: AdoptedPlan, asked: string | undefined): Planned {
  if (asked === undefined) return { ok: true, plan, bettering: null };
  const seconds = Number(asked);
  const untilMs = performance.now() + seconds * 1_000;
  const better = betterPlan(plan, () => performance.now() >= untilMs);
  return { ok: true, plan: better?.plan ?? plan, bettering: { seconds, better } };
}

/** A day that is none, or null where there is nothing to object. */
export function wrongDay(day: string | undefined): Refused | null {
  if (day === undefined || isLocalDay(day)) return null;
  const sentence = `--day: found ${day}; allowed: a day such as 2026-11-25.`;
  return makesNoSense({ rule: 'not-a-day', sentence, day });
}

/** The language that was asked for, else the kitchen's first. */
export function languageOf(
  options: Asked['options'],
  { languages }: Pick<Kitchen, 'languages'>,
): Language {
  const said = options.get('language');
  return LANGUAGES.find((language) => language === said) ?? languages[0] ?? 'en';
}

function whyNot(
  made: Extract<PlanMade, { ok: false }>,
  kitchen: Kitchen,
  language: Language,
): Refused {
  const sentences = whyNotPlanned(made, { ...kitchen, languages: [language] });
  const reasons =
    made.why === 'refused'
      ? made.refusals
      : made.conflicts.map(({ kind, ...conflict }) => ({ rule: kind, ...conflict }));
  const said = reasons.map(({ rule, ...data }, index) => ({
    rule,
    sentence: must(sentences[index], rule),
    ...data,
  }));
  return cannot([...said, ...fewReasons(made, kitchen, language)]);
}

/** For so long it is looked for which few of the things asked for cannot all be. */
const FEW_REASONS_MS = 8_000;
const FEW = 12;

function fewReasons(
  made: Extract<PlanMade, { ok: false }>,
  kitchen: Kitchen,
  language: Language,
): Refusal[] {
  if (made.why === 'refused') return [];
  const untilMs = performance.now() + FEW_REASONS_MS;
  const isOver = () => performance.now() >= untilMs;
  const few = whatCannotBe(made, kitchen, language, isOver);
  // A list that nobody can read tells nobody anything.
  if (!few?.conflicting.isSmallest || few.conflicting.demands.length > FEW) return [];
  return [{ rule: 'cannot-all', sentence: few.sentence, ...few.conflicting }];
}

/** A plan as a day in which nothing has happened yet. */
export function liveFrom(plan: AdoptedPlan, at: Instant = plan.built.origin): Live {
  const day = plan.built.day as DayId;
  const head = { seq: 1, version: EVENT_VERSION, day, at, keptAt: at } as const;
  const by = { commandId: 'plan' as CommandId, personId: null, screenId: null };
  return openLive(fold(emptyDay(), { ...head, ...by, kind: 'planAdopted', plan }), at);
}
