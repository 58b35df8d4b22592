import type { Language } from './say.ts';

/** The words for curing salt that two people weigh. */
export type CureWords = {
  /** What is to be weighed, as a place to tap. */
  asked(weight: string, mix: string): string;
  weighed(weight: string, first: string, second: string): string;
  readonly whoWeighs: string;
  readonly whoReads: string;
};

/** @example cureWords.en.whoWeighs //=> 'Who weighs it?' */
export const cureWords: Readonly<Record<Language, CureWords>> = {
  en: {
    asked: (weight, mix) => `two people weigh: ${weight} of ${mix}`,
    weighed: (weight, first, second) => `${weight} weighed by ${first}, and again by ${second}`,
    whoWeighs: 'Who weighs it?',
    whoReads: 'Who reads the scale again?',
  },
  es: {
    asked: (weight, mix) => `la pesan dos: ${weight} de ${mix}`,
    weighed: (weight, first, second) => `${weight} pesados por ${first}, y otra vez por ${second}`,
    whoWeighs: '¿Quién la pesa?',
    whoReads: '¿Quién lee la báscula otra vez?',
  },
};
