// @vitest-environment happy-dom
import { afterEach, describe, expect, it } from 'vitest';
import { DeskWho } from '../../../client/desk/who.ts';
import { HubAway, type WhoDoors } from '../../../client/shell/who-doors.ts';
import type { PersonId, ScreenId, StationId } from '../../../shared/kernel/index.ts';
import type { WhoAnswer, WhoList } from '../../../shared/protocol/index.ts';
import type { Say } from '../../../shared/words/index.ts';

const [trim, line] = ['trim', 'line'] as [StationId, StationId];
const english: Say = {
  language: 'en',
  zone: 'UTC',
  clock: '24 h',
  temperature: '°C',
  weight: 'kg',
};

const list: WhoList = {
  isOpen: false,
  screens: [
    {
      id: 'office' as ScreenId,
      name: 'Office',
      place: { role: 'desk', stations: [] },
      isHere: true,
      seenAtMs: 0,
      isThisOne: true,
    },
    {
      id: 'wall' as ScreenId,
      name: 'By the door',
      place: { role: 'wall', stations: [trim] },
      isHere: false,
      seenAtMs: Date.UTC(2026, 10, 25, 9, 30),
      isThisOne: false,
    },
  ],
  asking: [{ code: 'K7QD4M', address: '192.0.2.7', leftS: 200 }],
  people: [
    { id: 'ines' as PersonId, name: 'Ines', hasPin: true, isOwner: true, language: 'es' },
    { id: 'theo' as PersonId, name: 'Theo', hasPin: false, isOwner: false, language: null },
  ],
  stations: [
    { id: trim, name: { en: 'Trim table', es: 'Mesa' } },
    { id: line, name: { en: 'Line' } },
  ],
  present: null,
  needsOwner: true,
};

/** Doors that write down what was asked of them. */
async function desk(
  shown: Partial<WhoList> = {},
  { answer = { ok: true } as WhoAnswer<object>, say = english } = {},
) {
  const asked: [string, unknown][] = [];
  const doors = new Proxy({} as WhoDoors, {
    get: (_doors, door: string) => async (it: unknown) => {
      if (door === 'list') return { ok: true, who: { ...list, ...shown } };
      asked.push([door, it]);
      return answer;
    },
  });
  const element = Object.assign(new DeskWho(), { doors, say });
  document.body.append(element);
  await drawn();
  return { element, asked };
}

async function drawn() {
  for (let turns = 0; turns < 40; turns++) await Promise.resolve();
}

function all<Found extends Element>(root: Element, selector: string): Found[] {
  const inside = root.shadowRoot ?? root;
  return [
    ...inside.querySelectorAll<Found>(selector),
    ...[...inside.querySelectorAll('who-present, who-people, who-screens')].flatMap((part) =>
      all<Found>(part, selector),
    ),
  ];
}

const said = (element: Element) =>
  [element, ...all(element, 'who-present, who-people, who-screens')]
    .map((each) => each.shadowRoot?.textContent ?? '')
    .join(' ')
    .replace(/\s+/g, ' ');

async function tap(element: Element, label: string, nth = 0) {
  const found = all<HTMLButtonElement>(element, 'button').filter(
    (each) => each.textContent?.trim() === label,
  )[nth];
  if (!found) throw new Error(`no "${label}" in ${said(element)}`);
  found.click();
  await drawn();
}

async function send(form: HTMLFormElement) {
  form.dispatchEvent(new Event('submit', { cancelable: true }));
  await drawn();
}

const formWith = (element: Element, selector: string): HTMLFormElement => {
  const found = all<HTMLFormElement>(element, 'form').find((form) => form.querySelector(selector));
  if (!found) throw new Error(`no form with ${selector}`);
  return found;
};

afterEach(() => document.body.replaceChildren());

describe('the list of screens', () => {
  it('says of each what it is, where it belongs, and when it was last there', async () => {
    const { element } = await desk();
    expect(said(element)).toContain('Office desk this one');
    expect(said(element)).toContain('By the door wall, Trim table last here 09:30');
  });

  it('lets in a screen under the name and at the place that was filled in', async () => {
    const { element, asked } = await desk();
    expect(said(element)).toContain('K7Q D4M from 192.0.2.7');
    const form = formWith(element, 'select[name=role]');
    Object.assign(form.querySelector('[name=name]') ?? {}, { value: 'Second wall' });
    Object.assign(form.querySelector(`[value=${line}]`) ?? {}, { checked: true });
    await send(form);
    const place = { role: 'wall', stations: [line] };
    expect(asked).toEqual([['letIn', { code: 'K7QD4M', name: 'Second wall', place }]]);
  });

  it('asks anew for the next screen once the one above it is in', async () => {
    const second = { code: 'PKLN3F', address: '192.0.2.8', leftS: 200 };
    const shown: { asking: WhoList['asking'] } = { asking: [...list.asking, second] };
    const { element } = await desk(shown);
    const form = formWith(element, 'select[name=role]');
    Object.assign(form.querySelector('[name=name]') ?? {}, { value: 'Second wall' });
    Object.assign(form.querySelector(`[value=${line}]`) ?? {}, { checked: true });
    shown.asking = [second];
    await send(form);
    expect(said(element)).not.toContain('K7Q D4M');
    const next = new FormData(formWith(element, 'select[name=role]'));
    expect([next.get('name'), next.getAll('station')]).toEqual(['', []]);
  });

  it('has the screen first whose code a phone has scanned, whoever asked before', async () => {
    const second = { code: 'PKLN3F', address: '192.0.2.8', leftS: 200 };
    const { element } = await desk({ asking: [...list.asking, second] });
    expect(said(element).indexOf('K7Q D4M')).toBeLessThan(said(element).indexOf('PKL N3F'));
    element.scanned = 'PKLN3F';
    await drawn();
    expect(said(element).indexOf('PKL N3F')).toBeLessThan(said(element).indexOf('K7Q D4M'));
  });

  it('takes a screen off only at the second tap', async () => {
    const { element, asked } = await desk();
    await tap(element, 'take off', 1);
    expect(asked).toEqual([]);
    await tap(element, 'leave it');
    await tap(element, 'take off', 1);
    await tap(element, 'take By the door off now');
    expect(asked).toEqual([['revoke', { screen: 'wall' }]]);
  });

  it('renames without moving, and moves without renaming', async () => {
    const { element, asked } = await desk({ asking: [] });
    await tap(element, 'change', 1);
    const renaming = formWith(element, 'select[name=role]');
    Object.assign(renaming.querySelector('[name=name]') ?? {}, { value: 'Window' });
    await send(renaming);
    await tap(element, 'change', 1);
    const moving = formWith(element, 'select[name=role]');
    Object.assign(moving.querySelector(`[value=${line}]`) ?? {}, { checked: true });
    await send(moving);
    expect(asked).toEqual([
      ['rename', { screen: 'wall', name: 'Window' }],
      ['move', { screen: 'wall', place: { role: 'wall', stations: [trim, line] } }],
    ]);
  });
});

describe('the people', () => {
  it('prove to be there by name and PIN, and the PIN does not stay on the glass', async () => {
    const { element, asked } = await desk();
    const form = formWith(element, 'select[name=person]');
    const field = form.querySelector<HTMLInputElement>('[name=pin]');
    Object.assign(field ?? {}, { value: '4093' });
    await send(form);
    expect(asked).toEqual([['prove', { person: 'ines', pin: '4093' }]]);
    expect(field?.value).toBe('');
    expect(field?.type).toBe('password');
  });

  it('are shown who of them is there, and leave with a tap', async () => {
    const { element, asked } = await desk({ present: 'ines' as PersonId });
    await tap(element, 'leave');
    expect(asked).toEqual([['leave', undefined]]);
  });

  it('get a PIN, with or without the right to answer for the hub', async () => {
    const { element, asked } = await desk();
    await tap(element, 'set a PIN', 1);
    const form = formWith(element, '[name=owner]');
    Object.assign(form.querySelector('[name=pin]') ?? {}, { value: '5820' });
    await send(form);
    expect(asked).toEqual([['setPin', { person: 'theo', pin: '5820', isOwner: false }]]);
  });

  it('are shown with what each reads, which is chosen beside the name', async () => {
    const { element, asked } = await desk();
    const chosen = () =>
      all<HTMLSelectElement>(element, 'select[aria-label$=" reads"]').map((each) => [
        each.getAttribute('aria-label'),
        each.value,
      ]);
    expect(chosen()).toEqual([
      ['Ines reads', 'es'],
      ['Theo reads', ''],
    ]);
    for (const [nth, value] of [
      [1, 'es'],
      [0, ''],
    ] as const) {
      const field = all<HTMLSelectElement>(element, 'select[aria-label$=" reads"]')[nth];
      Object.assign(field ?? {}, { value });
      field?.dispatchEvent(new Event('change'));
      await drawn();
    }
    expect(asked).toEqual([
      ['setLanguage', { person: 'theo', language: 'es' }],
      ['setLanguage', { person: 'ines', language: null }],
    ]);
    // What the hub has is shown, and not what was tapped.
    expect(chosen()).toEqual([
      ['Ines reads', 'es'],
      ['Theo reads', ''],
    ]);
  });

  it('are told that nobody answers for the hub yet', async () => {
    const { element } = await desk({ needsOwner: false });
    expect(said(element)).toContain('Nobody has an owner’s PIN yet');
  });
});

describe('the section', () => {
  it.each([
    [english, 'Only someone with an owner’s PIN may do that'],
    [{ ...english, language: 'es' } as Say, 'Solo quien tiene un PIN de responsable'],
  ])('says in words why something was refused', async (say, words) => {
    const answer = { ok: false, refusal: { rule: 'needs-owner' } } as const;
    const { element } = await desk({ present: 'ines' as PersonId }, { answer, say });
    await tap(element, say.language === 'en' ? 'leave' : 'salir');
    expect(said(element)).toContain(words);
  });

  it('says of an open hub that it asks nobody, and lists no screens and PINs', async () => {
    const { element } = await desk({ isOpen: true, screens: [], asking: [] });
    expect(said(element)).toContain('No screen is asked here who it is');
    expect(all(element, 'who-screens')).toEqual([]);
    expect(said(element)).not.toContain('PIN');
    expect(all(element, 'select[aria-label$=" reads"]')).toHaveLength(2);
  });

  it('says so while the hub is away', async () => {
    const doors = { list: () => Promise.reject(new HubAway('who')) } as unknown as WhoDoors;
    const element = Object.assign(new DeskWho(), { doors, say: english });
    document.body.append(element);
    await drawn();
    expect(said(element)).toContain('The hub does not answer');
  });
});
