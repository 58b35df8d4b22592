import { seconds, unreachable } from '../kernel/index.ts';
import type { Conflicting, Demand } from '../schedule/index.ts';
import { durationWords } from './amounts.ts';
import type { Language, Say } from './say.ts';
import { textIn } from './say.ts';
import type { ConflictNames } from './say-plan.ts';

/** Which few of the things that a plan asks for cannot all be kept, in one sentence. */
export function sayConflicting(conflicting: Conflicting, names: ConflictNames, say: Say): string {
  const { cannot, demands, advice } = sayConflictList(conflicting, names, say);
  return `${cannot} ${demands.join('; ')}. ${advice}`;
}

/** The same as a list: what is said of these, each of them, and what to do about it. */
export function sayConflictList(conflicting: Conflicting, names: ConflictNames, say: Say) {
  const words = PHRASES[say.language];
  const { demands, isProven, isSmallest } = conflicting;
  return {
    cannot: isProven ? words.cannotAll : words.noPlanKeeps,
    demands: [...new Set(demands.map((demand) => sayDemand(demand, names, say)))],
    advice: isSmallest ? words.giveUpOne : words.perhapsFewer,
  };
}

function sayDemand(demand: Demand, names: ConflictNames, say: Say): string {
  const words = PHRASES[say.language];
  const task = (id: Parameters<ConflictNames['task']>[0]) => `“${textIn(names.task(id), say)}”`;
  switch (demand.kind) {
    case 'goal':
      return words.goal(task(demand.activity));
    case 'deadline':
      return words.deadline(task(demand.activity));
    case 'release':
      return words.release(task(demand.activity));
    case 'longest':
      return words.longest(task(demand.activity));
    case 'most': {
      const { from, to, maxS } = demand.lag;
      return words.most(task(from.activity), task(to.activity), durationWords(maxS ?? seconds(0)));
    }
    case 'need':
      return words.need(task(demand.activity));
    case 'state':
      return words.state(task(demand.activity));
    case 'clash': {
      const { upper, lower } = demand.clash;
      return words.clash(task(upper.activity), task(lower.activity));
    }
    case 'hours':
      return words.hours(textIn(names.resource(demand.resource), say));
    default:
      return unreachable(demand);
  }
}

type Phrases = {
  readonly cannotAll: string;
  readonly noPlanKeeps: string;
  readonly giveUpOne: string;
  readonly perhapsFewer: string;
  goal(task: string): string;
  deadline(task: string): string;
  release(task: string): string;
  longest(task: string): string;
  most(first: string, then: string, most: string): string;
  need(task: string): string;
  state(task: string): string;
  clash(upper: string, lower: string): string;
  hours(who: string): string;
};

const PHRASES: Record<Language, Phrases> = {
  en: {
    cannotAll: 'These cannot all be kept, whatever else is planned:',
    noPlanKeeps: 'No plan was found that keeps all of these:',
    giveUpOne: 'Give way in one of them.',
    perhapsFewer: 'Not all of them may be needed for that.',
    goal: (task) => `${task} is due for its service`,
    deadline: (task) => `${task} has to be over in time`,
    release: (task) => `${task} cannot begin sooner`,
    longest: (task) => `${task} lasts no longer than it may`,
    most: (first, then, most) => `at most ${most} between ${first} and ${then}`,
    need: (task) => `${task} needs its hand or its place`,
    state: (task) => `${task} needs its fire`,
    clash: (upper, lower) => `${upper} may not drip on ${lower}`,
    hours: (who) => `the hours of ${who}`,
  },
  es: {
    cannotAll: 'Esto no se puede cumplir todo, se planee como se planee:',
    noPlanKeeps: 'No se encontró un plan que cumpla todo esto:',
    giveUpOne: 'Ceda en una de estas cosas.',
    perhapsFewer: 'Puede que no todas hagan falta para eso.',
    goal: (task) => `${task} debe estar para su servicio`,
    deadline: (task) => `${task} debe acabar a tiempo`,
    release: (task) => `${task} no puede empezar antes`,
    longest: (task) => `${task} no dura más de lo que puede`,
    most: (first, then, most) => `máximo ${most} entre ${first} y ${then}`,
    need: (task) => `${task} necesita su persona o su lugar`,
    state: (task) => `${task} necesita su fuego`,
    clash: (upper, lower) => `${upper} no debe gotear sobre ${lower}`,
    hours: (who) => `las horas de ${who}`,
  },
};
