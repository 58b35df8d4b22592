import type { Instant, Kilograms, LocalDay, Seconds } from '../kernel/index.ts';
import type { PlanOffer, Text } from '../view/index.ts';
import { clockTime, durationWords, weight } from './amounts.ts';
import { las } from './at-clock.ts';
import type { Say } from './say.ts';
import { textIn } from './say.ts';
import { sayDay } from './say-day.ts';

type Phrases = {
  anew(batches: string): string;
  batch(name: string, before: number | null, after: number | null): string;
  service(name: string, before: string, after: string): string;
  serviceSame(name: string, margin: string): string;
  inHand(duration: string): string;
  short(duration: string): string;
  readonly none: string;
  others(tasks: number): string;
  readonly nothing: string;
  readonly fits: string;
  kept(dish: string, portions: number, weight: string, at: string): string;
  /** Of what may not be used yet. */
  readonly cools: string;
  until(portions: number, day: string): string;
  readonly notCounted: string;
  nearest(dishes: string): string;
  portions(service: string, dish: string, portions: number): string;
  earliest(services: string): string;
  opens(service: string, at: string): string;
};

const portionsOf = (count: number) => (count === 1 ? '1 portion' : `${count} portions`);
const porcionesDe = (count: number) => (count === 1 ? '1 porción' : `${count} porciones`);

const english: Phrases = {
  anew: (batches) => `Planned anew: ${batches}`,
  batch: (name, before, after) => {
    if (after === null) return `${name} dropped`;
    if (before === null) return `${name} added, ${portionsOf(after)}`;
    return before === after ? name : `${name} ${before} → ${portionsOf(after)}`;
  },
  service: (name, before, after) => `${name}: ${before} → ${after}`,
  serviceSame: (name, margin) => `${name} stays at ${margin}`,
  inHand: (duration) => `${duration} to spare`,
  short: (duration) => `${duration} late`,
  none: 'nothing to do',
  others: (tasks) => `${tasks} ${tasks === 1 ? 'task' : 'tasks'} of other batches move`,
  nothing: 'nothing else moves',
  fits: 'It fits.',
  kept: (dish, portions, weight, at) => {
    const were = portions === 1 ? 'was' : 'were';
    return `${dish}: ${portionsOf(portions)} (${weight}) ${were} kept, ${at}`;
  },
  until: (_, day) => `use or throw away by the end of ${day}`,
  cools: 'It still cools: not before its check is kept.',
  notCounted: 'No plan counts on what was kept: it has to be heated again first.',
  nearest: (dishes) => `The most that was found to fit: ${dishes}.`,
  portions: (service, dish, portions) => `${service}, ${dish}: ${portionsOf(portions)}`,
  earliest: (services) => `The earliest that was found to fit: ${services}.`,
  opens: (service, at) => `${service} opens at ${at}`,
};

const spanish: Phrases = {
  anew: (batches) => `Se planea de nuevo: ${batches}`,
  batch: (name, before, after) => {
    if (after === null) return `${name} se quita`;
    if (before === null) return `${name} se agrega, ${porcionesDe(after)}`;
    return before === after ? name : `${name} ${before} → ${porcionesDe(after)}`;
  },
  service: (name, before, after) => `${name}: ${before} → ${after}`,
  serviceSame: (name, margin) => `${name} sigue con ${margin}`,
  inHand: (duration) => `${duration} de margen`,
  short: (duration) => `${duration} de retraso`,
  none: 'nada que hacer',
  others: (tasks) =>
    tasks === 1 ? 'se mueve 1 tarea de otras tandas' : `se mueven ${tasks} tareas de otras tandas`,
  nothing: 'nada más se mueve',
  fits: 'Cabe.',
  kept: (dish, portions, weight, at) => {
    const set = portions === 1 ? 'se apartó' : 'se apartaron';
    return `${dish}: ${set} ${porcionesDe(portions)} (${weight}), ${at}`;
  },
  until: (portions, day) =>
    `${portions === 1 ? 'úsela o tírela' : 'úselas o tírelas'} antes de que acabe el ${day}`,
  cools: 'Aún se enfría: anote antes su revisión.',
  notCounted: 'Ningún plan cuenta con lo apartado: antes hay que recalentarlo.',
  nearest: (dishes) => `Lo más que se halló que cabe: ${dishes}.`,
  portions: (service, dish, portions) => `${service}, ${dish}: ${porcionesDe(portions)}`,
  earliest: (services) => `Lo más temprano que se halló que cabe: ${services}.`,
  opens: (service, at) => `${service} abre a ${las(at)}`,
};

/** @example planDeskWords.en.fits //=> 'It fits.' */
export const planDeskWords = { en: english, es: spanish } as const;

/** What a changed plan does to the running day: what is planned anew, who gains, what moves. */
export function sayPlanOffer(offer: PlanOffer, say: Say): string[] {
  const words = planDeskWords[say.language];
  const { batches, services, tasksChanged } = offer;
  const named = batches.map(({ name, before, after }) =>
    words.batch(textIn(name, say), before, after),
  );
  const margin = (inHandS: Seconds | null) => {
    if (inHandS === null) return words.none;
    const duration = durationWords(inHandS);
    return inHandS < 0 ? words.short(duration) : words.inHand(duration);
  };
  const lines = services.map(({ name, beforeS, afterS }) => {
    const isSame = beforeS !== null && afterS !== null && Math.abs(afterS - beforeS) < 60;
    if (isSame) return words.serviceSame(textIn(name, say), margin(afterS));
    return words.service(textIn(name, say), margin(beforeS), margin(afterS));
  });
  return [
    ...(named.length > 0 ? [`${words.anew(named.join('; '))}.`] : []),
    `${[...lines, tasksChanged > 0 ? words.others(tasksChanged) : words.nothing].join('; ')}.`,
  ];
}

/** What is said of a plan for another day than the running one, where nothing stands against it. */
export const sayPlanFits = ({ language }: Pick<Say, 'language'>): string =>
  planDeskWords[language].fits;

/** What would fit, of dishes that were asked for more of. */
export function sayNearestPlan(
  dishes: readonly {
    readonly serviceName: Text;
    readonly dishName: Text;
    readonly portions: number;
  }[],
  say: Say,
): string {
  const words = planDeskWords[say.language];
  const named = dishes.map(({ serviceName, dishName, portions }) =>
    words.portions(textIn(serviceName, say), textIn(dishName, say), portions),
  );
  return words.nearest(named.join('; '));
}

/** When services could open that were asked for sooner. */
export function sayNearestTimes(
  services: readonly { readonly name: Text; readonly opensAt: Instant }[],
  say: Say,
): string {
  const words = planDeskWords[say.language];
  const named = services.map(({ name, opensAt }) =>
    words.opens(textIn(name, say), clockTime(opensAt, say)),
  );
  return words.earliest(named.join('; '));
}

/** Food of a day before, when it was made and kept, and the last day on which it may be used. */
type Kept = {
  readonly dish: Text;
  readonly madeOn: string;
  readonly portions: number;
  readonly weightKg: Kilograms;
  readonly at: Instant;
  readonly lastDay: LocalDay | null;
  readonly isCooling: boolean;
};

/** What days before kept, a line for each, and what a plan makes of it; none where nothing was. */
export function sayKept(kept: readonly Kept[], say: Say): string[] {
  const words = planDeskWords[say.language];
  const lines = kept.map(({ dish, portions, weightKg, at, lastDay, madeOn, isCooling }) => {
    const when = `${sayDay(madeOn, say)}, ${clockTime(at, say)}`;
    const named = words.kept(textIn(dish, say), portions, weight(weightKg, say), when);
    const until = lastDay === null ? '' : `; ${words.until(portions, sayDay(lastDay, say))}`;
    return `${named}${until}.${isCooling ? ` ${words.cools}` : ''}`;
  });
  return lines.length > 0 ? [...lines, words.notCounted] : [];
}
