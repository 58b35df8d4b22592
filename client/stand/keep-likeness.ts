import { ui } from '../../shared/words/index.ts';
import type { Sync } from '../sync/index.ts';
import type { Stood } from '../worker/likeness.ts';

const LOOK_EVERY_MS = 5000;

/**
 * Has the service worker keep what stands on a station's wall as plain words, so that a page which
 * is loaded anew shows its hands that, and when it stood, before the first of its scripts has run.
 */
export function keepLikeness(sync: Sync, workers: ServiceWorkerContainer): void {
  let last = '';
  const look = () => {
    const wall = document.querySelector('station-wall')?.shadowRoot;
    const { controller } = workers;
    if (!wall || !controller || !sync.state.view) return;
    const stood = likenessOf(wall);
    if (stood === last) return;
    last = stood;
    controller.postMessage({ at: location.href, stood } satisfies Stood);
  };
  look();
  workers.addEventListener('controllerchange', look);
  setInterval(look, LOOK_EVERY_MS);
}

/** A wall's name, its time and its lines; not what can be tapped, since none of it can be yet. */
function likenessOf(wall: ShadowRoot): string {
  const { lang, dataset, style } = document.documentElement;
  const head = inside(wall, 'wall-head');
  const at = ui[lang === 'es' ? 'es' : 'en'].stoodAt(said(head, 'clock-time'));
  const lines = [...wall.querySelectorAll('now-line')].map(lineOf);
  const likeness = element(
    'div',
    element('header', element('h1', said(head, 'h1')), element('p', at)),
    element('ol', ...(lines.length > 0 ? lines : [element('li', said(wall, '.quiet'))])),
    element('ul', ...[...wall.querySelectorAll('next-row')].map(rowOf)),
  );
  likeness.className = 'likeness';
  // It is drawn anew as something else within a second or two: nobody is to be read it.
  likeness.ariaHidden = 'true';
  likeness.lang = lang;
  likeness.dataset['ground'] = dataset['ground'];
  likeness.dataset['arcmin'] = style.getPropertyValue('--arcmin');
  return likeness.outerHTML;
}

function lineOf({ shadowRoot: line }: Element): HTMLElement {
  const beside = ['.who', '.when', '.under'].map((name) => element('p', said(line, name)));
  const rows = [...(line?.querySelectorAll('.row, .caution') ?? [])].map((row) =>
    element('p', wordsOf(row)),
  );
  const what = element('div', element('h2', said(line, 'h2')), ...rows);
  return element('li', element('div', ...beside), what);
}

const rowOf = ({ shadowRoot: row }: Element) =>
  element('li', element('p', said(row, 'clock-time')), element('p', said(row, '.what')));

/** What is counted or weighed there is in the hands of those who do it. */
const COUNTED = 'tally-strokes, .weigh';

const inside = (from: ParentNode, name: string) => from.querySelector(name)?.shadowRoot ?? null;

function said(from: ParentNode | null, name: string): string {
  const found = from?.querySelector(name);
  return found ? wordsOf(found) : '';
}

/** The words that an element shows, in one line. */
const wordsOf = (shown: Element) => textOf(shown).replace(/\s+/g, ' ').trim();

function textOf(node: Node): string {
  if (node instanceof Text) return node.data;
  if (node instanceof Element && node.matches(COUNTED)) return '';
  return [...((node as Element).shadowRoot ?? node).childNodes].map(textOf).join('');
}

function element(name: string, ...within: (string | Node)[]): HTMLElement {
  const made = document.createElement(name);
  made.append(...within);
  return made;
}
