import { must } from '../kernel/index.ts';
import type { CheckWords } from './check-band-phrases.ts';
import type { CheckPhrases } from './check-phrases.ts';
import type { HappeningPhrases } from './happening-phrases.ts';
import type { Interface } from './interface.ts';
import type { LogPhrases } from './log-phrases.ts';
import type { Phrases } from './phrases.ts';
import type { Language } from './say.ts';
import type { WhoPhrases } from './who-phrases.ts';

/** What a wall says, in one language. The hub has each; a screen fetches the one that it shows. */
export type Tongue = {
  readonly ui: Interface;
  readonly phrases: Phrases;
  readonly log: LogPhrases;
  readonly happening: HappeningPhrases;
  readonly who: WhoPhrases;
  readonly check: CheckPhrases;
  /** Where something is looked at. */
  readonly band: CheckWords;
};

const learnt = new Map<Language, Tongue>();

/** From now on this language can be said. */
export function learn(language: Language, tongue: Tongue): void {
  learnt.set(language, tongue);
}

/** The words of one kind in each language; a language that was not learnt fails when it is read. */
export function inEach<Key extends keyof Tongue>(
  key: Key,
): Readonly<Record<Language, Tongue[Key]>> {
  const said = (language: Language) => must(learnt.get(language), `words in ${language}`)[key];
  return {
    get en() {
      return said('en');
    },
    get es() {
      return said('es');
    },
  };
}
