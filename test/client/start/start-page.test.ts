// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { readSettings } from '../../../client/shell/settings.ts';
import { heedLanguage } from '../../../client/shell/speak.ts';
import type { WhoDoors } from '../../../client/shell/who-doors.ts';
import { cameFrom } from '../../../client/start/came-from.ts';
import { StartPage } from '../../../client/start/start-page.ts';
import { buttonsOf, drawn, saidOn, tap } from '../fingers.ts';

const SCREENS = [
  { path: '/station.html?station=trim', name: { en: 'Trim', es: 'Recorte' } },
  { path: '/station.html?station=mix', name: { en: 'Mix bench', es: 'Mezclas' } },
  { path: '/smoker.html', name: { en: 'Smokers' } },
  { path: '/pass.html', name: { en: 'Pass: what is ready' } },
  { path: '/desk.html', name: { en: 'Desk' } },
];

let more: readonly object[] = [];
let weighsIn: 'lb' | 'kg' = 'lb';

heedLanguage();
beforeEach(() => {
  localStorage.clear();
  history.replaceState(null, '', '/');
  vi.stubGlobal('fetch', async (what: string) => {
    const units = { weight: weighsIn, temperature: '°F', clock: '12 h' };
    const standards = { zone: 'UTC', units, cuts: [] };
    return new Response(
      JSON.stringify(what === '/screens.json' ? [...SCREENS, ...more] : standards),
    );
  });
});
afterEach(() => {
  document.body.replaceChildren();
  vi.unstubAllGlobals();
  vi.useRealTimers();
  weighsIn = 'lb';
  more = [];
});

async function page(given: Partial<StartPage> = {}, people: readonly object[] = []) {
  const list = async () => ({ ok: true, who: { people } });
  const doors = { list } as unknown as Pick<WhoDoors, 'list'>;
  const settings = readSettings(new URLSearchParams(location.search));
  const element = Object.assign(new StartPage(), { settings, doors, ...given });
  document.body.append(element);
  await vi.waitFor(() => {
    if (!saidOn(element).includes('corner') && !saidOn(element).includes('esquina')) {
      throw new Error('not yet');
    }
  });
  await drawn();
  return element;
}

const all = (root: Element, selector: string): Element[] => [
  ...(root.shadowRoot?.querySelectorAll(selector) ?? []),
  ...[...(root.shadowRoot?.querySelectorAll('*') ?? [])].flatMap((each) => all(each, selector)),
];
const paths = (element: Element) => all(element, 'a').map((link) => link.getAttribute('href'));

/** Types a number into the field beside these words, and leaves it. */
async function type(element: Element, beside: string, value: string) {
  const label = all(element, 'label').find((each) => each.textContent?.includes(beside));
  const input = label?.querySelector('input');
  if (!input) throw new Error(`no field beside ${beside}`);
  input.value = value;
  input.dispatchEvent(new Event('change'));
  await drawn();
}

const typed = (element: Element) =>
  all(element, 'input').map((input) => (input as HTMLInputElement).value);

describe('whoever puts up a screen', () => {
  it('finds every screen under the word for who stands there', async () => {
    const element = await page();
    const said = saidOn(element);
    for (const group of ['Stations', 'Pit', 'Pass', 'Desk', 'Standards']) {
      expect(said).toContain(group);
    }
    expect(paths(element)).toEqual(expect.arrayContaining(SCREENS.map(({ path }) => path)));
    // The wall of the pass is not called as the station is.
    expect(said).toContain('What is ready');
    expect(said).not.toContain('Pass: what is ready');
  });

  it('tells a station that is called as the pass is from the wall of the pass', async () => {
    const station = { path: '/station.html?station=pass', name: { en: 'Pass', es: 'Pase' } };
    more = [station];
    const element = await page();
    const boxes = () => all(element, 'a').map((link) => link.textContent?.trim());
    expect(boxes()).toEqual(expect.arrayContaining(['Pass: work to do', 'Trim', 'What is ready']));
    expect(boxes()).not.toContain('Pass');
    await tap(element, 'Español');
    await vi.waitFor(() => expect(boxes()).toContain('Pase: trabajo por hacer'));
  });

  it('chooses the language first, and all of the page goes over to it', async () => {
    const element = await page();
    expect(
      buttonsOf(element)
        .slice(0, 2)
        .map(([name]) => name),
    ).toEqual(['English', 'Español']);
    await tap(element, 'Español');
    await vi.waitFor(() => expect(saidOn(element)).toContain('¿Qué pantalla es esta?'));
    await drawn();
    expect(saidOn(element)).toContain('Recorte');
    expect(readSettings(new URLSearchParams()).language).toBe('es');
  });

  it('puts several stations on one wall', async () => {
    const element = await page();
    await tap(element, 'Several on one screen');
    await tap(element, 'Mix bench');
    await tap(element, 'Trim');
    expect(paths(element)).toContain('/station.html?station=mix,trim');
    await tap(element, 'Mix bench');
    expect(paths(element)).not.toContain('/station.html?station=mix,trim');
  });

  it('makes a phone one person’s own, for wherever they work', async () => {
    const element = await page({}, [{ id: 'ines', name: 'Ines' }]);
    const own = () => paths(element).filter((path) => path?.includes('person'));
    await tap(element, 'Choose the person');
    expect(own()).toEqual([]);
    await tap(element, 'Ines');
    expect(own()).toEqual([expect.stringMatching(/station=trim,mix.*&person=ines$/)]);
    await tap(element, 'Trim');
    expect(own()).toEqual([expect.stringMatching(/station=mix.*&person=ines$/)]);
  });

  it('is offered nobody’s phone where the device may not know the crew', async () => {
    expect(saidOn(await page())).not.toContain('Choose the person');
  });
});

describe('how a screen hangs', () => {
  it('is typed in the units of the kitchen, and kept', async () => {
    const element = await page();
    await type(element, 'corner to corner', '43');
    expect(saidOn(element)).toContain('it takes both');
    // What was typed first is still there.
    expect(typed(element)).toEqual(['43', '']);
    await type(element, 'read from', '10');
    expect(saidOn(element)).not.toContain('it takes both');
    expect(typed(element)).toEqual(['43', '10']);
    const { panel } = readSettings(new URLSearchParams());
    expect(panel?.diagonalIn).toBe(43);
    expect(panel?.distanceM).toBeCloseTo(3.048, 3);
  });

  it('is typed in centimeters and meters where meat is weighed in kilograms', async () => {
    weighsIn = 'kg';
    const element = await page();
    await type(element, 'corner to corner', '109,2');
    await type(element, 'read from', '3');
    expect(typed(element)).toEqual(['109.2', '3']);
    expect(readSettings(new URLSearchParams()).panel?.diagonalIn).toBeCloseTo(43, 1);
  });

  it('says where two numbers are no screen', async () => {
    const element = await page();
    await type(element, 'corner to corner', '43');
    await type(element, 'read from', '900');
    expect(saidOn(element)).toContain('No screen is like that');
  });

  it('is what was tapped last, whatever the address said', async () => {
    history.replaceState(null, '', '/?ground=paper');
    const element = await page();
    await tap(element, 'dark');
    expect(location.search).toBe('');
    expect(document.documentElement.dataset['ground']).toBe('night');
    expect(readSettings(new URLSearchParams(location.search)).ground).toBe('night');
  });
});

describe('a cook who came here by mistake', () => {
  const wall = '/station.html?station=trim,mix';

  it('finds the wall again that was here', async () => {
    const from = cameFrom(new URL(`http://hub/#${wall}`));
    expect(from).toBe(wall);
    const element = await page({ from });
    expect(paths(element)).toContain(wall);
    expect(saidOn(element)).toContain('Back to the screen that was here');
  });

  it('who goes away leaves the wall to come back by itself', async () => {
    const element = await page();
    element.remove();
    vi.useFakeTimers();
    const went: string[] = [];
    Object.assign(element, { from: wall, go: (path: string) => went.push(path) });
    document.body.append(element);
    vi.advanceTimersByTime(100_000);
    dispatchEvent(new Event('pointerdown'));
    vi.advanceTimersByTime(100_000);
    expect(went).toEqual([]);
    vi.advanceTimersByTime(100_000);
    expect(went).toEqual([wall]);
  });

  it('is led to no other host, and to nothing that is no wall', () => {
    for (const to of ['//evil.example/station.html', '/desk.html', 'javascript:alert(1)', '']) {
      expect(cameFrom(new URL(`http://hub/#${to}`))).toBeNull();
    }
  });
});
