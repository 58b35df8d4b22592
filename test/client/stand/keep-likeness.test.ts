// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { keepLikeness } from '../../../client/stand/keep-likeness.ts';
import type { Sync } from '../../../client/sync/index.ts';
import type { Stood } from '../../../client/worker/likeness.ts';

beforeEach(() => {
  vi.useFakeTimers();
  document.documentElement.lang = 'en';
  document.documentElement.dataset['ground'] = 'night';
});
afterEach(() => {
  vi.useRealTimers();
  document.body.replaceChildren();
});

/** An element that draws this under a root of its own. */
function drawn(name: string, markup: string): HTMLElement {
  const made = document.createElement(name);
  made.attachShadow({ mode: 'open' }).innerHTML = markup;
  return made;
}

const line = (title: string) =>
  drawn(
    'now-line',
    `<button class="side"><b class="who">Ana</b><span class="when">10:20 am</span>
      <span class="under">by ≈ 10:40</span></button>
      <h2>${title}</h2><p class="row"><span>4 racks</span> <tally-strokes>0/4</tally-strokes></p>
      <p class="caution">Cut away from the hand.</p><button>start</button>`,
  );

function stand(...lines: HTMLElement[]): ShadowRoot {
  const wall = drawn('station-wall', '<p class="quiet">Nothing to do here until 11:05</p>');
  const head = drawn('wall-head', '<h1>Trim</h1>');
  head.shadowRoot?.append(drawn('clock-time', '<time>10:21<small> am</small></time>'));
  const root = wall.shadowRoot as ShadowRoot;
  root.append(head, ...lines);
  document.body.append(wall);
  return root;
}

function workers() {
  const heard: Stood[] = [];
  const controller = { postMessage: (stood: Stood) => heard.push(stood) };
  const container = Object.assign(new EventTarget(), { controller: null as unknown });
  return {
    heard,
    container: container as unknown as ServiceWorkerContainer,
    takeOver() {
      container.controller = controller;
      container.dispatchEvent(new Event('controllerchange'));
    },
  };
}

const shows = (view: unknown = {}) => ({ state: { view } }) as unknown as Sync;

/** The words of what was kept last, in one line. */
function wordsOf(heard: readonly Stood[]): string {
  const page = new DOMParser().parseFromString(heard.at(-1)?.stood ?? '', 'text/html');
  return [...page.querySelectorAll('h1, h2, p, ol > li:not(:has(*))')]
    .map(({ textContent }) => textContent)
    .join(' | ');
}

describe('the likeness of a wall', () => {
  it('says whose it is, when it stood, and who does what until when, to what standard', () => {
    stand(line('Trim ribs'));
    const { heard, container, takeOver } = workers();
    takeOver();
    keepLikeness(shows(), container);
    expect(wordsOf(heard)).toBe(
      'Trim | As it stood at 10:21 am | Ana | 10:20 am | by ≈ 10:40 | Trim ribs | 4 racks' +
        ' | Cut away from the hand.',
    );
    expect(heard[0]?.at).toBe(location.href);
    expect(heard[0]?.stood).toContain('data-ground="night"');
  });

  it('says it in the language of its screen', () => {
    stand(line('Recorte'));
    document.documentElement.lang = 'es';
    const { heard, container, takeOver } = workers();
    takeOver();
    keepLikeness(shows(), container);
    expect(wordsOf(heard)).toContain('Como estaba a las 10:21 am');
  });

  it('says that nothing is to be done where nothing is', () => {
    stand();
    const { heard, container, takeOver } = workers();
    takeOver();
    keepLikeness(shows(), container);
    expect(wordsOf(heard)).toContain('Nothing to do here until 11:05');
  });

  it('takes what somebody is called for words, whatever it looks like', () => {
    const root = stand(line(''));
    const title = root.querySelector('now-line')?.shadowRoot?.querySelector('h2');
    title?.append('<img src=x onerror=alert(1)>');
    const { heard, container, takeOver } = workers();
    takeOver();
    keepLikeness(shows(), container);
    expect(heard[0]?.stood).not.toContain('<img');
    expect(wordsOf(heard)).toContain('<img src=x onerror=alert(1)>');
  });

  it('is kept from when there is somebody to keep it, and only when it has changed', () => {
    const root = stand(line('Trim ribs'));
    const { heard, container, takeOver } = workers();
    keepLikeness(shows(), container);
    vi.advanceTimersByTime(20_000);
    expect(heard).toEqual([]);
    takeOver();
    vi.advanceTimersByTime(20_000);
    expect(heard).toHaveLength(1);
    root.append(line('Rub ribs'));
    vi.advanceTimersByTime(5000);
    expect(heard).toHaveLength(2);
    expect(wordsOf(heard)).toContain('Rub ribs');
  });

  it('is not kept of a wall that has no day to show', () => {
    stand();
    const { heard, container, takeOver } = workers();
    takeOver();
    keepLikeness(shows(null), container);
    vi.advanceTimersByTime(20_000);
    expect(heard).toEqual([]);
  });
});
