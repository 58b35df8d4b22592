import { type Language, learnLanguage } from '../../shared/words/index.ts';
import type { Sync } from '../sync/index.ts';
import { remember, type Settings } from './settings.ts';

/** The event by which a page hears that it speaks another language from now on. */
export const SPEAKS = 'coalface-speaks';

/** Goes over to a language once its words are here; without them the page stays as it is. */
async function speak(language: Language): Promise<void> {
  await learnLanguage(language);
  document.documentElement.lang = language;
  dispatchEvent(new CustomEvent<Language>(SPEAKS, { detail: language }));
}

/**
 * Somebody has chosen it at this screen, which stays with it. A word in its address stands before
 * what a device remembers; on somebody's own screen the choice is theirs, and not the device's.
 */
async function choose(language: Language): Promise<void> {
  await speak(language);
  const address = new URL(location.href);
  const { searchParams: words } = address;
  if (!words.has('person')) remember('language', language);
  if (!words.has('language') && !words.has('person')) return;
  words.set('language', language);
  history.replaceState(null, '', address);
}

/** From now on a page goes over to another language where one is asked for. */
export function heedLanguage(): void {
  document.addEventListener('choose-language', (event) => {
    void choose((event as CustomEvent<Language>).detail);
  });
}

/**
 * A screen of somebody's own speaks as its owner does, unless its address says otherwise; what the
 * desk says of it later is newer than that.
 */
export function speakAsOwner(
  sync: Pick<Sync, 'state' | 'subscribe'>,
  { personId, language }: Pick<Settings, 'personId' | 'language'>,
): void {
  if (!personId) return;
  let known: Language | null = null;
  const follow = () => {
    const owner = sync.state.view?.people.find(({ id }) => id === personId);
    const next = owner && (owner.language ?? language);
    if (!next || next === known) return;
    const isFirst = known === null;
    known = next;
    const address = new URL(location.href);
    if (address.searchParams.has('language')) {
      if (isFirst) return;
      address.searchParams.delete('language');
      history.replaceState(null, '', address);
    }
    if (next !== document.documentElement.lang) void speak(next);
  };
  sync.subscribe(follow);
  follow();
}
