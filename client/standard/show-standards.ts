import type { CutId } from '../../shared/kernel/index.ts';
import { learnLanguage, type Say } from '../../shared/words/index.ts';
import { readStandards } from './standards.ts';

/** Which cut's standard is asked for, and how it is to be said. */
export type StandardAsked = { readonly cut: CutId; readonly say: Say };

/** After the first ink: what is fetched now can be opened when the hub is gone. */
const FETCHED_AFTER_MS = 15_000;

/** From now on this page lays a cut's standard over itself wherever one is asked for. */
export function showStandards(): void {
  document.addEventListener('standard', (event) => {
    void open((event as CustomEvent<StandardAsked>).detail);
  });
  setTimeout(() => void fetchAhead(), FETCHED_AFTER_MS);
}

async function open({ cut, say }: StandardAsked): Promise<void> {
  const [{ StandardSheet }] = await Promise.all([
    import('./standard-sheet.ts'),
    learnLanguage(say.language),
  ]);
  document.querySelector('standard-sheet')?.remove();
  const sheet = new StandardSheet();
  sheet.cut = cut;
  sheet.say = say;
  document.body.append(sheet);
}

async function fetchAhead(): Promise<void> {
  await import('./standard-sheet.ts');
  await readStandards();
}
