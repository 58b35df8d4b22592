// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { PlanDoors } from '../../../client/desk/plan-doors.ts';
import { PlanEditor } from '../../../client/desk/plan-editor.ts';
import type { CookPlan, PlanShown } from '../../../shared/protocol/index.ts';
import type { Say } from '../../../shared/words/index.ts';

const english: Say = {
  language: 'en',
  zone: 'UTC',
  clock: '24 h',
  temperature: '°C',
  weight: 'kg',
};

const planOf = (portions: number, day = '2026-11-25') =>
  ({
    day,
    services: [
      {
        id: 'noon',
        name: { en: 'Noon' },
        opens: '12:00',
        closes: '14:00',
        dishes: [
          {
            dish: 'ribs',
            sales: { by: 'shape', portions, shape: 'even' },
            choices: {},
            hands: {},
          },
        ],
      },
    ],
  }) as unknown as CookPlan;

const shown: PlanShown = {
  plan: planOf(20),
  menu: {
    dishes: [{ id: 'ribs', name: { en: 'Ribs', es: 'Costillas' }, choices: [], steps: [] }],
    people: [],
    slots: [],
  },
  days: ['2026-11-18', '2026-11-25'],
  runs: '2026-11-25',
  canUndo: true,
  kept: [],
  batches: [],
};

/** In how many steps what was taken was bettered. */
const taking: unknown[] = [];

type Answers = Partial<Record<keyof PlanDoors, unknown>>;

/** An editor at doors that answer so, and what they were asked. */
async function editor(answers: Answers = {}, say = english) {
  const asked: [string, unknown][] = [];
  const usual: Answers = {
    show: { ok: true, ...shown },
    nearest: { ok: true, nearest: null },
    conflict: { ok: true, conflict: null },
    better: { ok: true, fits: true, lines: ['It fits.'] },
  };
  const doors = new Proxy({} as PlanDoors, {
    get: (_doors, door: keyof PlanDoors) => async (it: unknown, steps: unknown) => {
      asked.push([door, it]);
      if (door === 'take') taking.push(steps);
      return { ...usual, ...answers }[door];
    },
  });
  const element = Object.assign(new PlanEditor(), { doors, say });
  document.body.append(element);
  await drawn();
  return { element, asked };
}

async function drawn() {
  for (let turns = 0; turns < 60; turns++) await Promise.resolve();
}

/** Typing pauses, and the hub is asked. */
async function pause() {
  vi.advanceTimersByTime(1_000);
  await drawn();
}

function all<Found extends Element>(root: Element, selector: string): Found[] {
  const inside = root.shadowRoot ?? root;
  const parts = [...inside.querySelectorAll('*')].filter((each) => each.shadowRoot);
  return [
    ...inside.querySelectorAll<Found>(selector),
    ...parts.flatMap((part) => all<Found>(part, selector)),
  ];
}

const said = (element: Element) =>
  all(element, 'p, li, strong')
    .map((each) => each.textContent ?? '')
    .join(' ')
    .replace(/\s+/g, ' ');

async function tap(element: Element, label: RegExp) {
  const found = all<HTMLButtonElement>(element, 'button').find((each) =>
    label.test(each.textContent ?? ''),
  );
  if (!found) throw new Error(`no ${label}`);
  found.click();
  await drawn();
}

async function type(element: Element, selector: string, value: string, event = 'input') {
  const [field] = all<HTMLInputElement>(element, selector);
  if (!field) throw new Error(`no ${selector}`);
  field.value = value;
  field.dispatchEvent(new Event(event));
  await drawn();
}

beforeEach(() => vi.useFakeTimers());
afterEach(() => {
  taking.length = 0;
  document.body.replaceChildren();
  localStorage.clear();
  vi.useRealTimers();
});

describe('the plan editor', () => {
  it('says that it is looking, not that a plan runs, while the hub has not shown one', async () => {
    const { element } = await editor({ show: new Promise(() => {}) });
    expect(said(element)).toMatch(/Looking/);
    expect(said(element)).not.toMatch(/As it runs/);
    expect(all(element, 'button')).toEqual([]);
  });

  it('asks once more where what the same person asked elsewhere came first', async () => {
    const answers: Answers = { draft: { ok: true, fits: false, stale: true, lines: [] } };
    const { element, asked } = await editor(answers);
    await type(element, 'input[type=number]', '30');
    await pause();
    expect(said(element)).toContain('Trying it');
    answers.draft = { ok: true, fits: true, lines: ['It fits.'] };
    await pause();
    expect(said(element)).toContain('It fits.');
    expect(asked.filter(([door]) => door === 'draft').map(([, plan]) => plan)).toContainEqual(
      planOf(30),
    );
  });

  it('says what does not fit and what would, and writes that where it is wished', async () => {
    const line = 'The most that was found to fit: Noon, Ribs: 44 portions.';
    const { element, asked } = await editor({
      draft: { ok: true, fits: false, lines: ['Ribs: the trim table is full.'] },
      nearest: { ok: true, nearest: { line, plan: planOf(44) } },
    });
    await type(element, 'input[type=number]', '200');
    await pause();
    expect(asked.slice(-3)).toMatchObject([
      ['draft', planOf(200)],
      ['nearest', planOf(200)],
      ['conflict', planOf(200)],
    ]);
    expect(said(element)).toContain('Ribs: the trim table is full.');
    expect(said(element)).toContain(line);
    await tap(element, /Write that instead/);
    expect(all<HTMLInputElement>(element, 'input[type=number]')[0]?.value).toBe('44');
    expect(said(element)).not.toContain(line);
    await pause();
    expect(asked.filter(([door]) => door === 'draft').at(-1)).toEqual(['draft', planOf(44)]);
  });

  it('takes a plan that fits, and offers to take it back', async () => {
    const { element, asked } = await editor({
      draft: { ok: true, fits: true, lines: ['Planned anew: Ribs.'] },
      take: { ok: true, fits: true, taken: true, lines: [] },
      undo: { ok: true, fits: true, taken: true, lines: [] },
    });
    await type(element, 'input[type=number]', '30');
    await pause();
    await tap(element, /Take this plan/);
    expect(asked).toContainEqual(['take', planOf(30)]);
    expect(localStorage.getItem('coalface typed plan')).toBeNull();
    await tap(element, /Undo the last change/);
    expect(asked.map(([door]) => door)).toContain('undo');
  });

  it('says that it takes a PIN, keeps what is typed, and leads to where the PIN is', async () => {
    const { element } = await editor({
      draft: { ok: true, fits: true, lines: [] },
      take: { ok: false, refusal: { rule: 'needs-pin' } },
    });
    await type(element, 'input[type=number]', '30');
    await pause();
    await tap(element, /Take this plan/);
    expect(said(element)).toContain('That takes a PIN');
    expect(all<HTMLAnchorElement>(element, 'a').map((each) => each.getAttribute('href'))).toEqual([
      '#who',
    ]);
    expect(all<HTMLInputElement>(element, 'input[type=number]')[0]?.value).toBe('30');
  });

  it('lists which few things cannot all be, after it has said what does not fit', async () => {
    const conflict = {
      cannot: 'No plan was found that keeps all of these:',
      demands: ['“Ribs: Serve” is due for its service', 'the hours of Ana'],
      advice: 'Give way in one of them.',
    };
    const { element } = await editor({
      draft: { ok: true, fits: false, lines: ['“Ribs: Rub” finds no room on Ana.'] },
      conflict: { ok: true, conflict },
    });
    await type(element, 'input[type=number]', '200');
    await pause();
    expect(said(element)).toMatch(/finds no room.*No plan was found.*the hours of Ana.*Give way/);
  });

  it('shows a plan that fits at once, and a better one when it is found, to be taken', async () => {
    const lines = ['It fits.'];
    const better = { line: 'Proven best, to the minute.', isBest: true, steps: 200 };
    const { element, asked } = await editor({
      draft: { ok: true, fits: true, lines },
      better: { ok: true, fits: true, lines, better },
      take: { ok: true, fits: true, taken: true, lines },
    });
    await type(element, 'input[type=number]', '21');
    await pause();
    expect(asked.filter(([door]) => door === 'better')).toHaveLength(1);
    expect(said(element)).toContain('Proven best, to the minute.');
    await tap(element, /Take this plan/);
    expect(taking).toEqual([200]);
  });

  it('copies a plan to the next week, and the plan of another day to this one', async () => {
    const { element, asked } = await editor({ draft: { ok: true, fits: true, lines: [] } });
    await tap(element, /Copy to Wed, Dec 2/);
    await pause();
    expect(asked.slice(-2)).toEqual([
      ['draft', planOf(20, '2026-12-02')],
      ['better', planOf(20, '2026-12-02')],
    ]);
    const [select] = all<HTMLSelectElement>(element, 'plan-day select');
    expect([...(select?.options ?? [])].map(({ value }) => value)).toContain('2026-11-18');
    await type(element, 'plan-day select', '2026-11-18', 'change');
    await pause();
    expect(asked.slice(-3)).toEqual([
      ['show', '2026-11-18'],
      ['draft', planOf(20, '2026-12-02')],
      ['better', planOf(20, '2026-12-02')],
    ]);
  });

  it('names in the row of a dish what is not made as usual, and what usual is', async () => {
    const way = (id: string, name: string, usual: string, ...options: string[]) => ({
      id,
      name: { en: name },
      usual,
      options: options.map((each) => ({ id: each, name: { en: each }, reason: { en: 'why' } })),
    });
    const choices = [
      way('set', 'Set', 'short', 'short', 'overnight'),
      way('wrap', 'Wrap', 'paper', 'none', 'paper'),
    ];
    const [ribs] = shown.menu.dishes;
    const plan = structuredClone(planOf(20)) as unknown as {
      services: [{ dishes: [{ choices: object }] }];
    };
    plan.services[0].dishes[0].choices = { set: 'overnight' };
    const menu = { ...shown.menu, dishes: [{ ...ribs, choices }] };
    const { element, asked } = await editor({ show: { ok: true, ...shown, plan, menu } });
    const [ways] = all(element, '.ways');
    expect(ways?.textContent).toMatch(/Set: overnight\s+usual \(Wrap: paper\)/);
    expect(all(element, 'plan-ways select')).toEqual([]);
    await tap(element, /Details/);
    const are = all(element, 'plan-ways option[selected]').map((each) => each.textContent?.trim());
    expect(are.slice(0, 2)).toEqual(['overnight', 'usual (paper)']);
    await tap(element, /Drop Ribs/);
    await pause();
    const drafted = asked.find(([door]) => door === 'draft')?.[1] as CookPlan;
    expect(drafted.services[0]?.dishes).toEqual([]);
  });

  it('shows the first of many things in the way, and the others behind one tap', async () => {
    const lines = ['First.', 'Second.', 'Third.', 'Fourth.'];
    const { element } = await editor({ draft: { ok: true, fits: false, lines } });
    await type(element, 'input[type=number]', '200');
    await pause();
    expect(all(element, 'summary').map((each) => each.textContent)).toEqual([
      '2 more that are in the way',
    ]);
    const folded = all(element, 'details li').map((each) => each.textContent);
    expect(folded).toEqual(['Third.', 'Fourth.']);
  });

  it('says all of it in Spanish', async () => {
    const { element } = await editor(
      { draft: { ok: true, fits: false, lines: ['Lleno.'] }, take: null },
      { ...english, language: 'es' },
    );
    await type(element, 'input[type=number]', '200');
    await pause();
    expect(said(element)).toContain('No cabe:');
    const buttons = all(element, 'button').map((each) => each.textContent?.trim());
    expect(buttons).toContain('Usar este plan');
    expect(buttons).toContain('Copiar a mié, 2 dic');
  });
});
