import { type PlanFiles, timesTwice } from '../shared/plan/index.ts';
import { type Language, sayTwice } from '../shared/words/index.ts';
import { sayIn } from './why-not-planned.ts';

/** Which times of a plan come twice that night, a sentence each: the first is taken. */
export function saidTwice(
  { cookPlan, kitchen, catalogue }: PlanFiles,
  language: Language,
): string[] {
  const say = sayIn(language, kitchen);
  const nameOf = (dish: string) =>
    catalogue.dishes.find(({ id }) => id === dish)?.name ?? { en: dish };
  return timesTwice(cookPlan, kitchen.zone).map((twice) => sayTwice(twice, nameOf, say));
}
