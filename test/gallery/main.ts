import { lay } from '../../client/theme/index.ts';
import { englishTongue } from '../../shared/words/english-tongue.ts';
import type { Say } from '../../shared/words/index.ts';
import { pitWords } from '../../shared/words/index.ts';
import { offerWords } from '../../shared/words/offer-words.ts';
import { learn } from '../../shared/words/tongue.ts';
import { parts } from './parts.ts';
import type { Shown, State } from './state.ts';
import { longerTable, stretchedTexts, stretchedWords } from './stretch.ts';

// Nothing here moves by itself: no clock, no sync, no hub.

const address = new URLSearchParams(location.search);
const language = address.get('language') === 'es' ? 'es' : 'en';
const isLong = address.has('long');
const only = address.get('part');

/** One language as each of two kitchens would have it said. */
const say: Say = {
  language,
  zone: 'America/Denver',
  ...(language === 'es'
    ? { clock: '24 h', temperature: '°C', weight: 'kg' }
    : { clock: '12 h', temperature: '°F', weight: 'lb' }),
};

document.documentElement.lang = language;
lay({ panel: null, ground: address.get('ground') === 'night' ? 'night' : 'paper' });
if (isLong) {
  learn('en', stretchedWords(englishTongue));
  for (const words of [pitWords, offerWords]) Object.assign(words, longerTable(words));
}
// Small enough that all of it is looked at soon, and large enough that every stroke is seen.
const scale = new CSSStyleSheet();
scale.replaceSync(':root { --arcmin: 0.55 !important; --touch: 34px !important }');
document.adoptedStyleSheets.push(scale);
document.body.style.height = 'auto';
document.body.append(...parts.filter(({ part }) => !only || part === only).map(drawn));
document.body.dataset['drawn'] = '';

function drawn({ part, states }: Shown): HTMLElement {
  const section = document.createElement('section');
  section.id = part;
  section.style.cssText = 'display: flow-root; padding: 8px; width: fit-content';
  section.append(said('h2', part), ...states.flatMap((state) => figure(part, state)));
  return section;
}

function figure(part: string, { name, given, wide = 900, high }: State): HTMLElement[] {
  const element = document.createElement(part);
  Object.assign(element, { say }, isLong ? stretchedTexts(given) : given);
  const frame = document.createElement('div');
  const size = (arcmin: number) => `calc(${arcmin}px * var(--arcmin))`;
  frame.style.cssText = `width: ${size(wide)}; position: relative; display: grid;
    grid-template: ${high ? size(high) : 'auto'} / minmax(0, 1fr)`;
  frame.append(element);
  return [said('p', name), frame];
}

function said(tag: string, words: string): HTMLElement {
  const element = Object.assign(document.createElement(tag), { textContent: words });
  element.style.cssText = 'font-size: 12px; font-weight: 600; margin: 10px 0 4px';
  return element;
}
