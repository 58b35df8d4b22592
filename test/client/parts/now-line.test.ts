// @vitest-environment happy-dom
import { afterEach, describe, expect, it } from 'vitest';
import { inkToCome } from '../../../client/parts/ink.ts';
import { NextRow } from '../../../client/parts/next-row.ts';
import { NowLine } from '../../../client/parts/now-line.ts';
import { type CommandId, celsius, kilograms, type SlotId } from '../../../shared/kernel/index.ts';
import type { Intent, TaskView } from '../../../shared/view/index.ts';
import { saidOn } from '../fingers.ts';
import { at, injectShoulders, NOW, squareRibs, stationView } from '../fixtures.ts';

const { people, zone, clock, temperature, weight } = stationView;

async function line(task: TaskView, more: Partial<NowLine> = {}) {
  const element = Object.assign(new NowLine(), {
    task,
    people,
    now: NOW,
    say: { language: 'en', zone, clock, temperature, weight },
    ...more,
  });
  const asked: Intent[] = [];
  element.addEventListener('ask', (event) => asked.push((event as CustomEvent<Intent>).detail));
  document.body.append(element);
  await drawn();
  return { element, asked };
}

/** Parts inside parts draw one after another. */
async function drawn() {
  for (let turns = 0; turns < 20; turns++) await Promise.resolve();
}

/** Every button of the line and of the parts in it, by what a screen reader says of it. */
function buttons(root: ShadowRoot | null): [string, HTMLElement][] {
  const all = [...(root?.querySelectorAll<HTMLElement>('*') ?? [])];
  return all.flatMap((each): [string, HTMLElement][] => [
    ...(each.tagName === 'BUTTON' ? [[nameOf(each), each] as [string, HTMLElement]] : []),
    ...buttons(each.shadowRoot),
  ]);
}

const nameOf = (button: HTMLElement) =>
  (button.getAttribute('aria-label') ?? button.textContent ?? '').replace(/\s+/g, ' ').trim();

async function tap(element: NowLine, name: string) {
  const found = buttons(element.shadowRoot).find(([each]) => each.startsWith(name));
  if (!found) throw new Error(`no "${name}" among ${buttons(element.shadowRoot).map(([n]) => n)}`);
  found[1].click();
  await told();
}

const names = (element: NowLine) => buttons(element.shadowRoot).map(([name]) => name);

/** Taps the button of exactly that name. */
async function choose(element: NowLine, name: string) {
  buttons(element.shadowRoot)
    .find(([each]) => each === name)?.[1]
    .click();
  await told();
}

/** What a finger did is told when its ink has been seen. */
async function told() {
  await inkToCome();
  await drawn();
}

afterEach(() => document.body.replaceChildren());

describe('a line under Now', () => {
  it('asks for the standard of its cut when its title is tapped', async () => {
    const { element } = await line(squareRibs);
    const asked: unknown[] = [];
    element.addEventListener('standard', (event) => asked.push((event as CustomEvent).detail));
    await tap(element, 'Square spare ribs');
    expect(asked).toMatchObject([{ cut: 'spare-ribs', say: { language: 'en' } }]);
  });

  it('has no such place to tap where the work is about no food', async () => {
    const { element } = await line({ ...squareRibs, cut: null });
    expect(names(element)).not.toContain('Square spare ribs');
  });

  it('is started by the first tap, named for whoever hears it', async () => {
    const { element, asked } = await line(injectShoulders);
    await tap(element, 'start: Inject six shoulders, Theo');
    expect(asked).toEqual([{ kind: 'start', task: injectShoulders.id }]);
  });

  it('is finished by the next', async () => {
    const { element, asked } = await line(squareRibs);
    await tap(element, 'finish: Square spare ribs, Ines');
    expect(asked).toEqual([{ kind: 'finish', task: squareRibs.id }]);
  });

  it('offers to undo where the finger was, and to finish beside', async () => {
    const { element, asked } = await line(squareRibs, { undo: 'start' });
    await tap(element, 'undo: Square spare ribs');
    await tap(element, 'finish');
    expect(asked.map(({ kind }) => kind)).toEqual(['takeBack', 'finish']);
  });

  it('takes a double tap of a wet finger for one', async () => {
    const { element, asked } = await line(injectShoulders);
    await tap(element, 'start:');
    await tap(element, 'start:');
    expect(asked).toHaveLength(1);
  });

  it('counts one more piece at a tap on the tally', async () => {
    const { element, asked } = await line(squareRibs);
    await tap(element, 'count one slab more: 12 of 20 done');
    expect(asked).toEqual([{ kind: 'count', task: squareRibs.id, done: 13 }]);
  });

  it('takes off a stroke that was one too many', async () => {
    const { element, asked } = await line(squareRibs);
    await tap(element, 'Ines');
    await tap(element, 'one slab fewer');
    expect(asked).toEqual([{ kind: 'count', task: squareRibs.id, done: 11 }]);
  });

  it('counts a tray at a tap, and the last for what lies on it', async () => {
    const trays = { ...squareRibs, pieces: 10, trayHolds: 4, counted: 4 };
    const { element, asked } = await line(trays);
    await tap(element, 'count one tray of 4 more: 4 of 10 done');
    element.task = { ...trays, counted: 8 };
    await drawn();
    await tap(element, 'count one tray of 2 more: 8 of 10 done');
    expect(asked).toMatchObject([{ done: 8 }, { done: 10 }]);
    expect(saidOn(element)).toContain('2 trays');
  });

  it('takes back a tray', async () => {
    const { element, asked } = await line({
      ...squareRibs,
      ...{ pieces: 10, trayHolds: 4, counted: 10 },
    });
    await tap(element, 'Ines');
    await tap(element, 'one tray of 2 fewer');
    expect(asked).toEqual([{ kind: 'count', task: squareRibs.id, done: 8 }]);
  });

  it('asks how late, in its own place, and closes again', async () => {
    const { element, asked } = await line(squareRibs);
    await tap(element, 'late');
    await tap(element, '+10 min');
    expect(asked).toEqual([{ kind: 'late', task: squareRibs.id, byS: 600 }]);
    expect(names(element)).not.toContain('+10 min');
  });

  it('is given to a hand on shift, never to the one that has it', async () => {
    const { element, asked } = await line(squareRibs);
    await tap(element, 'Ines');
    expect(names(element)).toContain('Theo');
    expect(names(element)).not.toContain('Mara');
    await tap(element, 'Theo');
    expect(asked).toEqual([{ kind: 'giveTo', task: squareRibs.id, hand: 'theo' }]);
  });

  it('asks for help, and lets the call be cleared', async () => {
    const asking = { ...squareRibs, helpAskedAt: NOW };
    const before = await line(squareRibs);
    await tap(before.element, 'help');
    const after = await line(asking);
    await tap(after.element, 'helped');
    expect([...before.asked, ...after.asked].map(({ kind }) => kind)).toEqual([
      'needHelp',
      'helpCame',
    ]);
  });

  it('says why a tap was refused until it is read', async () => {
    const id = 'tap-1' as CommandId;
    const refused = { id, refusal: { rule: 'not-started' }, unread: 1 } as const;
    const { element } = await line(squareRibs, { refused });
    const read: CommandId[] = [];
    element.addEventListener('seen', (event) => read.push((event as CustomEvent).detail));
    await tap(element, 'seen');
    expect(read).toEqual([id]);
  });

  it('says at which smoker, and on which of its racks', async () => {
    const racks = ['1', '2'].map((rack) => ({
      id: `a/${rack}` as SlotId,
      smoker: { en: 'Smoker A' },
      rack,
    }));
    const { element } = await line({ ...squareRibs, racks });
    expect(saidOn(element).replaceAll('\u00a0', ' ')).toContain('Smoker A, rack 1, 2');
  });

  it('has nothing to start while it waits', async () => {
    const { element } = await line({ ...squareRibs, state: 'waiting' });
    expect(names(element).some((name) => name.startsWith('start'))).toBe(false);
  });

  it('that cannot be drawn says so in its own place', async () => {
    const broken = { ...squareRibs, title: null } as unknown as TaskView;
    const reported: unknown[] = [];
    globalThis.reportError = (fault) => reported.push(fault);
    const { element } = await line(broken);
    expect(element.shadowRoot?.textContent).toContain('could not be drawn');
    expect(reported).toHaveLength(1);
  });
});

describe('a line whose work cures', () => {
  const cure = { mix: { en: 'Cure' }, weightKg: kilograms(0.048), weighed: null };
  const [one, two] = people.filter(({ onShift, isOut }) => onShift && !isOut);
  if (!one || !two) throw new Error('two people of the fixture are there');

  it('asks who weighs, who reads the scale again, and what it shows', async () => {
    const { element, asked } = await line({ ...squareRibs, cure });
    await tap(element, 'two people weigh: 1.7 oz of Cure');
    await choose(element, one.name);
    expect(names(element)).not.toContain(one.name);
    await choose(element, two.name);
    for (const key of ['1', '.', '8']) await choose(element, key);
    await tap(element, 'keep');
    expect(asked).toEqual([
      {
        ...{ kind: 'weighCure', task: squareRibs.id, first: one.id, second: two.id },
        // An ounce is 28.349523125 g by definition (international pound of 1959).
        weightKg: expect.closeTo(1.8 * 0.028349523125, 9),
      },
    ]);
  });

  it('keeps nothing without a number', async () => {
    const { element, asked } = await line({ ...squareRibs, cure });
    await tap(element, 'two people weigh');
    await choose(element, one.name);
    await choose(element, two.name);
    await tap(element, 'keep');
    expect(asked).toEqual([]);
  });

  it('says who weighed it once two have', async () => {
    const weighed = { weightKg: kilograms(0.048), first: one.name, second: two.name };
    const { element } = await line({ ...squareRibs, cure: { ...cure, weighed } });
    const said = element.shadowRoot?.querySelector('cure-line')?.shadowRoot?.textContent;
    expect(said).toContain(`1.7 oz weighed by ${one.name}, and again by ${two.name}`);
    expect(names(element).some((name) => name.startsWith('two people weigh'))).toBe(false);
  });
});

describe('the line of a probe', () => {
  const probe: TaskView = {
    ...squareRibs,
    mind: { en: 'In the flat, from the side' },
    check: { feel: { en: 'It slides in as into butter' }, coreAtLeastC: celsius(95) },
  };
  const said = async (task: TaskView) => saidOn((await line(task)).element);

  it('says where it goes, then what the hand is to find, and the number as a guide', async () => {
    const before = await said({ ...probe, state: 'ready' });
    expect(before).toContain('In the flat, from the side');
    const during = await said({ ...probe, state: 'running' });
    expect(during).toContain('It slides in as into butter');
    expect(during.replaceAll('\u00a0', ' ')).toContain('guide 203 °F');
  });

  it('says of what is held that its number is a limit', async () => {
    const check = { ...probe.check, feel: { en: 'Hot' }, of: 'holding' } as const;
    const held = await said({ ...probe, check });
    expect(held.replaceAll('\u00a0', ' ')).toContain('≥ 203 °F');
  });

  it('says of what cools how cold it is to be, and by when', async () => {
    const limit = { atLeastC: null, atMostC: celsius(21.1), byAt: at(90) };
    const check = { feel: { en: 'Lukewarm' }, coreAtMostC: celsius(25), of: 'cooling' } as const;
    const cools = await said({ ...probe, check, limit });
    expect(cools.replaceAll('\u00a0', ' ')).toMatch(/≤ 70 °F by \d+:\d\d/);
  });

  it('says of what is set out hot how hot it has to be', async () => {
    const { check: _, ...task } = probe;
    const limit = { atLeastC: celsius(57.3), atMostC: null, byAt: null };
    expect((await said({ ...task, limit })).replaceAll('\u00a0', ' ')).toContain('≥ 135 °F');
  });
});

describe('the caution of a line', () => {
  const caution = { en: 'Hot racks: dry mitts' };
  const careful = { ...injectShoulders, caution };

  it.each([
    ['a line', {}],
    ['a low line', { height: 'low' as const }],
    ['a brief line', { brief: true }],
    ['a line that asks for help', { task: { ...careful, helpAskedAt: NOW } }],
  ])('is the last row of %s, which leaves only where it has no room', async (_, more) => {
    const { element } = await line(careful, more);
    const page = element.shadowRoot?.querySelector('.page');
    expect(page?.lastElementChild?.textContent).toBe(caution.en);
  });

  it('is behind the name too, for where it has left', async () => {
    const { element } = await line(careful, { brief: true });
    await tap(element, 'Theo');
    await tap(element, 'careful');
    expect(saidOn(element)).toContain(caution.en);
    await tap(element, 'close');
    expect(names(element)).not.toContain('close');
  });

  it('is over with the work', async () => {
    const { element } = await line({ ...careful, state: 'done' });
    await tap(element, 'Theo');
    expect(names(element)).not.toContain('careful');
    expect(saidOn(element)).not.toContain(caution.en);
  });
});

describe('the line of what has no pieces', () => {
  it('says how heavy it is, and has nothing to count', async () => {
    const ground = { ...squareRibs, byWeight: true, weightKg: kilograms(3.72) } as const;
    const { element } = await line({ ...ground, state: 'running' });
    expect(saidOn(element).replaceAll('\u00a0', ' ')).toContain('8.2 lb');
    expect(saidOn(element)).not.toContain('slabs');
    expect(element.shadowRoot?.querySelector('tally-strokes')).toBeNull();
  });
});

describe('the line of a mix', () => {
  const mix = { name: { en: 'rib rub' }, weightKg: kilograms(0.2665) };
  const said = async (task: TaskView) =>
    saidOn((await line(task)).element).replaceAll('\u00a0', ' ');

  it('says first what goes on the scale, and then for how many', async () => {
    expect(await said({ ...squareRibs, side: 'clean', mix })).toContain(
      'Rib rub, 9.4 oz · for 20 slabs',
    );
  });

  it('has no pieces to count while it is weighed, and on meat it does', async () => {
    const tallies = async (side: 'clean' | 'raw') => {
      const { element } = await line({ ...squareRibs, side, mix, state: 'running' });
      return element.shadowRoot?.querySelectorAll('tally-strokes').length;
    };
    expect([await tallies('clean'), await tallies('raw')]).toEqual([0, 1]);
  });

  it('says in a row under Next what goes on the scale', async () => {
    const saidNext = async (side: 'clean' | 'raw') => {
      const say = { language: 'en', zone, clock, temperature, weight } as const;
      const row = Object.assign(new NextRow(), { say, task: { ...squareRibs, side, mix } });
      document.body.append(row);
      await drawn();
      return saidOn(row).replaceAll('\u00a0', ' ');
    };
    expect(await saidNext('clean')).toContain('9.4 oz');
    expect(await saidNext('raw')).toContain('20 slabs');
  });

  it('says first what is in the hand where the mix goes on meat', async () => {
    expect(await said({ ...squareRibs, side: 'raw', mix })).toMatch(/20 slabs.*rib rub, 9\.4 oz/);
  });
});
