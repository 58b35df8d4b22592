import type { Live } from '../../shared/day/index.ts';
import { firstWanted, paperOf } from '../../shared/paper/index.ts';
import type { Bettering as Gap } from '../../shared/plan/index.ts';
import { type Language, sayBettering, sayBound } from '../../shared/words/index.ts';
import { gapOf } from '../better-plan.ts';
import { saidTwice } from '../said-twice.ts';
import { allWell, type Command, misused, refused } from './command.ts';
import { activityJson, asJson, moment, servicesJson, weightOf } from './json.ts';
import { planText } from './plan-text.ts';
import {
  type Bettering,
  fileOptions,
  languageOf,
  languageOption,
  liveFrom,
  planFrom,
  secondsOption,
} from './planned.ts';

export const plan: Command = {
  name: 'plan',
  takes: 'FILE|DIR',
  about: 'Works a cook plan out: tasks by time and hand, what to pull and mix, minutes to spare.',
  more: ['FILE is a cook plan; DIR is the folder of a kitchen, with its plans in plans/.'],
  options: [
    { name: 'json', value: null, about: 'As one JSON document, also where it is refused.' },
    secondsOption,
    ...fileOptions,
    languageOption,
  ],
  run: async (asked, shell) => {
    const made = planFrom(asked, shell);
    const isJson = asked.options.has('json');
    if (!made.ok) {
      const { nearest = null, refusals } = made;
      if (isJson) shell.say(asJson({ ...nothingPlanned, refusals, nearest }));
      const lines = [
        ...refusals.map(({ sentence }) => sentence),
        ...(nearest ? [nearest.line] : []),
      ];
      const sentences = isJson ? [] : lines;
      return made.misused ? misused(sentences) : refused(sentences);
    }
    const live = liveFrom(made.plan);
    const language = languageOf(asked.options, made.plan.kitchen);
    const { bettering } = made;
    const gap = gapOf(made.plan);
    const found = { bettering: betteringJson(bettering), quality: qualityJson(gap) };
    if (isJson) shell.say(asJson({ ...planJson(live), ...found }));
    else {
      const twice = saidTwice(made.plan, language);
      const ahead = twice.length > 0 ? [...twice, ''] : [];
      const lines = [
        ...ahead,
        ...said(bettering, language),
        ...(gap ? [sayBound(gap, language), ''] : []),
      ];
      shell.say([planText(paperOf(live, language)), ...lines].join('\n'));
    }
    return allWell;
  },
};

function said(bettering: Bettering | null, language: Language): string[] {
  return bettering ? [sayBettering(bettering.better, bettering.seconds, language)] : [];
}

function betteringJson(bettering: Bettering | null) {
  if (!bettering) return null;
  const { seconds, better } = bettering;
  if (!better) return { seconds, found: false };
  const { before, after, aheadLeastS } = better;
  return { seconds, found: true, before, after, aheadLeastS };
}

/** How far from the best it may be: in sum, and in the mean over all that a service waits for. */
function qualityJson(gap: Gap | null) {
  if (!gap) return null;
  const { after, aheadLeastS, weight } = gap;
  const atMostBetterMin = Math.max(0, Math.ceil((after.aheadS - aheadLeastS) / weight / 60));
  return { aheadS: after.aheadS, aheadLeastS, atMostBetterMin };
}

const nothingPlanned = { activities: [], pull: [], mixes: [], tubs: [], services: [] };

function planJson(live: Live) {
  const { built, hashes, engine, seed } = live.index.plan;
  const { day, zone, batches, tasks, pull, mixes, tubs } = built;
  const inOrder = [...tasks].sort((a, b) => live.timesOf(a.id).startS - live.timesOf(b.id).startS);
  return {
    day,
    zone,
    engine,
    seed,
    hashes,
    activities: inOrder.map((task) => activityJson(live, task)),
    batches: batches.map(({ id, service, dish, cut, pieces, portions, rawKg }) => ({
      ...{ id, service, dish, cut, pieces, portions },
      ...weightOf(rawKg),
    })),
    pull: pull.map(({ cut, pieces, weightKg }) => ({
      cut,
      pieces,
      ...weightOf(weightKg),
      ...moment('by', firstWanted(live, cut), zone),
    })),
    mixes: mixes.map(({ mix, weightKg, parts, allergens }) => ({
      mix,
      ...weightOf(weightKg),
      parts: parts.map((part) => ({ ingredient: part.ingredient.en, ...weightOf(part.weightKg) })),
      allergens,
    })),
    tubs: tubs.map(({ batch, tub, weightKg, goes }) => ({
      ...{ batch, tub, goes },
      ...weightOf(weightKg),
    })),
    services: servicesJson(live),
    refusals: [],
    nearest: null,
  };
}
