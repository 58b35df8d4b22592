// @vitest-environment happy-dom
import { afterEach, describe, expect, it } from 'vitest';
import { DayClose } from '../../../client/desk/day-close.ts';
import type { PanEndRow } from '../../../client/desk/pan-end.ts';
import { HubAway, type WhoDoors } from '../../../client/shell/who-doors.ts';
import type { BatchId, CommandId, DishId, ServiceId } from '../../../shared/kernel/index.ts';
import { fromPounds, kilograms, must } from '../../../shared/kernel/index.ts';
import type { WhoList } from '../../../shared/protocol/index.ts';
import type { DayEnd, DeskView, PanEnd } from '../../../shared/view/index.ts';
import type { Say } from '../../../shared/words/index.ts';
import { buttonsOf, drawn, saidOn, tap, tapsWrittenDown } from '../fingers.ts';
import { at, ines, stationView, theo } from '../fixtures.ts';

const { zone, clock, temperature, weight, people } = stationView;
const english: Say = { language: 'en', zone, clock, temperature, weight };
const pan: PanEnd = {
  batch: 'ribs-2' as BatchId,
  name: { en: 'Ribs 2', es: 'Costillas 2' },
  left: 14,
  weightKg: fromPounds(12),
  service: { id: 'lunch' as ServiceId, name: { en: 'Lunch', es: 'Almuerzo' }, closesAt: at(-5) },
  heldUntil: at(45),
  keptKg: null,
};
/** Its service is still on. */
const sold: PanEnd = { ...pan, service: { ...pan.service, closesAt: at(90) } };
const quiet: DayEnd = { dishes: [], running: [], goesOn: [], neverBegan: [], smokersDown: [] };
const left = (...pans: PanEnd[]): DayEnd => ({
  ...quiet,
  dishes: [{ dish: 'ribs' as DishId, name: { en: 'Ribs', es: 'Costillas' }, pans }],
});

const list = {
  isOpen: false,
  people: [
    { id: ines, name: 'Ines', hasPin: true, isOwner: true, language: null },
    { id: theo, name: 'Theo', hasPin: false, isOwner: false, language: null },
  ],
  present: null,
} as unknown as WhoList;

async function desk(end: DayEnd, more: Partial<DeskView> = {}, say = english, who = list) {
  const { sync, taps } = tapsWrittenDown();
  const proofs: unknown[] = [];
  const doors = {
    list: async () => ({ ok: true, who }),
    prove: async (asked: { pin: string }) => {
      proofs.push(asked);
      const isRight = asked.pin === '4093';
      return isRight ? { ok: true, forS: 300 } : { ok: false, refusal: { rule: 'wrong-pin' } };
    },
  } as unknown as WhoDoors;
  const view = { people, closed: null, standings: [], ...more, end } as unknown as DeskView;
  const element = Object.assign(new DayClose(), { sync, view, say, doors });
  document.body.append(element);
  await drawn();
  return { element, taps, proofs, doors };
}

/** A kitchen where nobody has a PIN. */
const noPins = {
  ...list,
  people: list.people.map((each) => ({ ...each, hasPin: false, isOwner: false })),
};

const names = (element: Element) => buttonsOf(element).map(([name]) => name);

afterEach(() => document.body.replaceChildren());

/** What has the keyboard, through every shadow root. */
function keyboardOn(): string {
  let on = document.activeElement;
  while (on?.shadowRoot?.activeElement) on = on.shadowRoot.activeElement;
  return on?.textContent?.trim() ?? '';
}

async function press(element: Element, name: string) {
  const [, box] = must(
    buttonsOf(element).find(([each]) => each.startsWith(name)),
    name,
  );
  box.focus();
  box.click();
  await drawn();
}

describe('what is left at the end', () => {
  it('leaves the keyboard where the next thing is, and never nowhere', async () => {
    const { element } = await desk(left(pan));
    await press(element, 'throw out');
    expect(keyboardOn()).toBe('undo');
    await press(element, 'undo');
    expect(keyboardOn()).toBe('throw out');
  });

  it('of what may yet be sold puts the keyboard on what leaves it', async () => {
    const { element } = await desk(left(sold));
    await press(element, 'throw out');
    expect(keyboardOn()).toBe('leave it');
    await press(element, 'leave it');
    expect(keyboardOn()).toBe('throw out');
  });

  it('stands by dish, in portions and weight, and till when it may be held', async () => {
    const { element } = await desk(left(pan));
    expect(saidOn(element)).toMatch(/Ribs 2 14 portions, about 12 lb · may be held till 11:27/);
  });

  it('that was held too long says to look before it is kept', async () => {
    const { element } = await desk(left({ ...pan, heldUntil: at(-1) }));
    expect(saidOn(element)).toContain('held too long: check before you keep it');
  });

  it('is kept at what is planned, or at what the scale says', async () => {
    const { element, taps } = await desk(left(pan));
    await tap(element, 'keep …: Ribs 2');
    await tap(element, 'keep this');
    expect(taps.at(-1)).toMatchObject({ kind: 'carryOver', batch: pan.batch });
    expect(taps.at(-1)).toHaveProperty('weightKg', pan.weightKg);
    const { element: other, taps: others } = await desk(left(pan));
    await tap(other, 'keep …: Ribs 2');
    for (const key of ['9', '.', '5']) await tap(other, key);
    await tap(other, 'keep this');
    expect(others.at(-1)).toHaveProperty('weightKg', fromPounds(9.5));
  });

  it('is thrown out with one tap, which can be undone where the finger was', async () => {
    const { element, taps } = await desk(left(pan));
    await tap(element, 'throw out: Ribs 2');
    await tap(element, 'undo: Ribs 2');
    expect(taps).toMatchObject([
      { kind: 'carryOver', batch: pan.batch, weightKg: 0 },
      { kind: 'undo', command: 'tap-1' },
    ]);
  });

  it('of a service that is still on stands by itself, under till when it is served', async () => {
    const service = { ...pan.service, id: 'breakfast' as ServiceId };
    const first = { ...pan, service, batch: 'ribs-1' as BatchId, name: { en: 'Ribs 1' } };
    const { element } = await desk(left(first, sold));
    const sections = [...(element.shadowRoot?.querySelectorAll('section') ?? [])];
    const stands = sections.map((each) => [
      each.getAttribute('aria-label'),
      [...each.querySelectorAll<PanEndRow>('pan-end')].map(({ pan: { name } }) => name.en),
    ]);
    expect(stands).toEqual([
      ['What is left', ['Ribs 1']],
      ['Lunch is served till 12:12', ['Ribs 2']],
      ['Close the day', []],
    ]);
  });

  it('of a service that is still on is thrown out by no slip: it is asked once more', async () => {
    const { element, taps } = await desk(left(sold));
    await tap(element, 'throw out: Ribs 2');
    expect(taps).toEqual([]);
    expect(saidOn(element)).toContain('Throw out 14 portions, about 12 lb?');
    await tap(element, 'leave it');
    expect(taps).toEqual([]);
    await tap(element, 'throw out: Ribs 2');
    await tap(element, 'throw out');
    expect(taps).toMatchObject([{ kind: 'carryOver', batch: pan.batch, weightKg: 0 }]);
  });

  it.each([
    ['keep …', 'may still be held', at(45)],
    ['throw out', 'was held too long', at(-1)],
  ])('has a heavy “%s” where it %s', async (heavy, _how, heldUntil) => {
    const { element } = await desk(left({ ...pan, heldUntil }));
    const boxes = buttonsOf(element).filter(([name]) => name.endsWith('Ribs 2'));
    const weights = boxes.map(([name, box]) => [name.split(':')[0], box.className === 'takes']);
    expect(weights).toEqual(['throw out', 'keep …'].map((name) => [name, name === heavy]));
  });

  it('says where it went once somebody has said so', async () => {
    const { element } = await desk(
      left({ ...pan, left: 0, keptKg: fromPounds(9.5) }, { ...pan, left: 0, keptKg: kilograms(0) }),
    );
    expect(saidOn(element)).toContain('9.5 lb kept for another day');
    expect(saidOn(element)).toContain('thrown out');
  });
});

describe('closing the day', () => {
  const open: DayEnd = {
    ...left(pan),
    running: [{ title: { en: 'Wrap six shoulders' }, batch: { en: 'Shoulders 2' } }],
    goesOn: [{ en: 'Shoulders 2' }],
    neverBegan: ['Ribs 3', 'Ribs 4', 'Beans', 'Slaw', 'Tips', 'Wings'].map((en) => ({ en })),
    smokersDown: [{ en: 'Smoker B' }],
  };

  it('says before it what still stands open, long lists in short', async () => {
    const { element } = await desk(open, {
      people: people.map((each) => (each.id === theo ? { ...each, isOut: true } : each)),
    });
    const said = saidOn(element);
    expect(said).toContain('Still under way: Wrap six shoulders (Shoulders 2).');
    expect(said).toContain('Down or cold: Smoker B.');
    expect(said).toContain('Still out: Theo.');
    expect(said).toContain('Left, and nobody has said where it goes: Ribs.');
    expect(said).toContain('Goes on into the next day: Shoulders 2.');
    expect(said).toContain('Never began: Ribs 3, Ribs 4, Beans, Slaw, 2 more.');
  });

  it('shows all of what it counts with a tap', async () => {
    const { element } = await desk(open);
    const lists = [...(element.shadowRoot?.querySelectorAll('details') ?? [])];
    expect(lists.map((each) => each.querySelectorAll('li').length)).toEqual([6]);
    expect(lists[0]?.textContent).toContain('Wings');
  });

  it('says first, in one line, what is to be settled before', async () => {
    const { element } = await desk({ ...open, dishes: left(sold).dishes });
    expect(saidOn(element)).toContain(
      'Before the day is closed: Lunch till 12:12, 1 pan to keep or throw out, ' +
        '1 task to finish, 1 smoker down.',
    );
  });

  it('says that nothing does, in the reader’s language', async () => {
    const { element } = await desk(quiet, {}, { ...english, language: 'es' });
    expect(saidOn(element)).toContain('No queda nada abierto: se puede cerrar el día.');
  });

  it('does not say of a day of which something never began that it can be closed', async () => {
    const { element } = await desk({ ...quiet, neverBegan: open.neverBegan });
    expect(saidOn(element)).not.toContain('can be closed');
    const first = element.shadowRoot?.querySelector('.first p')?.textContent;
    expect(first).toBe('Never began: Ribs 3, Ribs 4, Beans, Slaw, 2 more.');
  });

  it('asks nothing more of what is left once it is closed', async () => {
    const { element } = await desk(left(sold));
    await tap(element, 'throw out: Ribs 2');
    const closed = { at: at(0), by: 'Ines', command: 'tap-9' as CommandId };
    element.view = { ...element.view, closed };
    await drawn();
    expect(names(element)).not.toContain('throw out');
  });

  it('takes a name and a second tap where nobody has a PIN', async () => {
    const { element, taps } = await desk(open, {}, english, noPins);
    await tap(element, 'Theo');
    expect(saidOn(element)).toContain('Theo closes the day.');
    expect(taps).toEqual([]);
    await tap(element, 'close it as Theo');
    expect(taps).toEqual([{ kind: 'closeDay', by: theo }]);
  });

  it('asks only those who have a PIN once anybody has one', async () => {
    const { element } = await desk(open);
    expect(names(element)).toContain('Ines');
    expect(names(element)).not.toContain('Theo');
  });

  it('takes the PIN first from somebody who has one, and shows no digit of it', async () => {
    const { element, taps, proofs } = await desk(open);
    await tap(element, 'Ines');
    for (const digit of '4093') await tap(element, digit);
    expect(saidOn(element)).toContain('••••');
    await tap(element, 'I am here');
    expect(proofs).toEqual([{ person: ines, pin: '4093' }]);
    await tap(element, 'close it as Ines');
    expect(taps).toEqual([{ kind: 'closeDay', by: ines }]);
  });

  it('says that a PIN is wrong, and closes nothing', async () => {
    const { element, taps } = await desk(open);
    await tap(element, 'Ines');
    await tap(element, '1');
    await tap(element, 'I am here');
    expect(saidOn(element)).toContain('That is not the PIN of this person');
    expect(names(element)).not.toContain('close it as Ines');
    expect(taps).toEqual([]);
  });

  it.each([
    ['who has just proved to be there', { ...list, present: ines }],
    ['where nobody is asked who they are', { ...list, isOpen: true }],
  ])('asks no PIN of somebody %s', async (_who, who) => {
    const { element, taps } = await desk(open, {}, english, who);
    await tap(element, 'Ines');
    await tap(element, 'close it as Ines');
    expect(taps).toMatchObject([{ kind: 'closeDay', by: ines }]);
  });

  it('asks once more while a service is to come or is on, and says which', async () => {
    const dinner = { name: { en: 'Dinner' }, opensAt: at(60), closesAt: at(300) };
    const lunch = { name: { en: 'Lunch' }, opensAt: at(-60), closesAt: at(20) };
    const standings = [lunch, dinner] as unknown as DeskView['standings'];
    const { element, taps } = await desk(open, { standings }, english, noPins);
    await tap(element, 'Theo');
    await tap(element, 'close it as Theo');
    expect(taps).toEqual([]);
    expect(saidOn(element)).toContain(
      'Still to be served: Lunch till 11:02, Dinner from 11:42. Close the day all the same?',
    );
    await tap(element, 'leave it');
    expect(taps).toEqual([]);
    await tap(element, 'Theo');
    await tap(element, 'close it as Theo');
    await tap(element, 'close it as Theo');
    expect(taps).toEqual([{ kind: 'closeDay', by: theo }]);
  });

  it('is left as it is with one tap', async () => {
    const { element, taps } = await desk(open, {}, english, noPins);
    await tap(element, 'Theo');
    await tap(element, 'leave it');
    expect(taps).toEqual([]);
    expect(names(element)).toContain('Theo');
  });

  it('says so where a PIN cannot be looked at', async () => {
    const { element, doors } = await desk(open);
    Object.assign(doors, { prove: () => Promise.reject(new HubAway('prove')) });
    await tap(element, 'Ines');
    await tap(element, 'I am here');
    expect(saidOn(element)).toContain('a PIN cannot be looked at now');
  });

  it('stands with who did it, and can be taken back', async () => {
    const closed = { at: at(-5), by: 'Ines', command: 'the-close' as CommandId };
    const { element, taps } = await desk(left(pan), { closed });
    expect(saidOn(element)).toContain('The day was closed at 10:37 by Ines.');
    expect(names(element)).toEqual(['take the closing back']);
    await tap(element, 'take the closing back');
    expect(taps).toMatchObject([{ kind: 'undo', command: 'the-close' }]);
  });
});
