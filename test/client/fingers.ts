import type { Sync } from '../../client/sync/index.ts';
import type { CommandId, PersonId, ScreenId } from '../../shared/kernel/index.ts';
import type { Command, Intent } from '../../shared/view/index.ts';
import { NOW } from './fixtures.ts';

/** Parts inside parts draw one after another. */
export async function drawn() {
  for (let turns = 0; turns < 40; turns++) await Promise.resolve();
}

/** Every button of an element and of the parts in it, by what a screen reader says of it. */
export function buttonsOf(element: Element): [string, HTMLElement][] {
  return partsOf(element).flatMap((each): [string, HTMLElement][] =>
    each instanceof HTMLElement && each.tagName === 'BUTTON' ? [[nameOf(each), each]] : [],
  );
}

/** All elements in it, through every shadow root, in their order. */
function partsOf(element: Element): Element[] {
  const inside = [...(element.shadowRoot?.querySelectorAll('*') ?? [])];
  return inside.flatMap((each) => [each, ...partsOf(each)]);
}

const nameOf = (button: HTMLElement) =>
  (button.getAttribute('aria-label') ?? button.textContent ?? '').replace(/\s+/g, ' ').trim();

/** Taps the first button whose name begins so. */
export async function tap(element: Element, name: string) {
  const all = buttonsOf(element);
  const found = all.find(([each]) => each.startsWith(name));
  if (!found) throw new Error(`no "${name}" among ${all.map(([each]) => each).join(' | ')}`);
  found[1].click();
  await drawn();
}

/** All that is written on an element and on the parts in it. */
export const saidOn = (element: Element): string =>
  [element, ...partsOf(element)]
    .map((each) => [...(each.shadowRoot?.childNodes ?? [])].map(wordsOf).join(' '))
    .join(' ')
    .replace(/\s+/g, ' ');

const wordsOf = (node: Node) => (node instanceof HTMLStyleElement ? '' : (node.textContent ?? ''));

/** A sync that writes down what was tapped; each tap's id is its number. */
export function tapsWrittenDown(state: Partial<Sync['state']> = {}) {
  const taps: (Intent & { readonly by: PersonId | null })[] = [];
  const sync = {
    state: { view: null, pending: [], refused: [], aloneSince: null, readOnly: null, ...state },
    hubNow: () => NOW,
    subscribe: () => () => {},
    tap(intent: Intent, by: PersonId | null = null): Command {
      taps.push({ ...intent, by });
      const id = `tap-${taps.length}` as CommandId;
      return { ...intent, id, personId: by, screenId: 'a-screen' as ScreenId, tappedAt: NOW };
    },
  } as unknown as Sync;
  return { sync, taps };
}
