// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { NowLine } from '../../../client/parts/now-line.ts';
import { StationWall } from '../../../client/station/station-wall.ts';
import type { Sync } from '../../../client/sync/index.ts';
import type { CommandId, ScreenId, TaskId } from '../../../shared/kernel/index.ts';
import { kilograms } from '../../../shared/kernel/index.ts';
import type { Refusal, StationView } from '../../../shared/view/index.ts';
import type { Language } from '../../../shared/words/index.ts';
import { buttonsOf, drawn, saidOn, tap, tapsWrittenDown } from '../fingers.ts';
import { injectShoulders, NOW, rubRibs, squareRibs, stationView } from '../fixtures.ts';

type Tap = Sync['state']['refused'][number];

const refused = (task: TaskId, refusal: Refusal, kind: 'start' | 'finish' = 'start'): Tap => ({
  command: {
    kind,
    task,
    id: `tap on ${task}` as CommandId,
    personId: null,
    screenId: 'a-screen' as ScreenId,
    tappedAt: NOW,
  },
  refusal,
});

const notHere = { rule: 'not-this-screens' } as const;

/** A wall with these refusals, which go once they are read. */
async function wall(
  taps: readonly Tap[],
  view: StationView = stationView,
  language: Language = 'en',
) {
  const { sync } = tapsWrittenDown({ view, refused: taps });
  const state = sync.state as { view: StationView; refused: readonly Tap[] };
  const element = Object.assign(new StationWall(), { sync, language });
  sync.seen = (id) => {
    state.refused = state.refused.filter(({ command }) => command.id !== id);
    element.requestUpdate();
  };
  document.body.append(element);
  await drawn();
  const passes = async (ms: number) => {
    vi.advanceTimersByTime(ms);
    await drawn();
  };
  return { element, state, passes };
}

const names = (element: Element) => buttonsOf(element).map(([name]) => name);

beforeEach(() => vi.useFakeTimers({ toFake: ['setInterval', 'setTimeout', 'performance'] }));
afterEach(() => {
  vi.useRealTimers();
  document.body.replaceChildren();
});

describe('taps that were refused', () => {
  const three = [rubRibs, injectShoulders, squareRibs].map(({ id }) => refused(id, notHere));

  it('are read one by one, or all of them with one tap', async () => {
    const { element, state } = await wall(three);
    await tap(element, 'seen');
    expect(state.refused).toHaveLength(2);
    await tap(element, 'all 2 seen');
    expect(state.refused).toEqual([]);
    expect(names(element).some((name) => /seen/.test(name))).toBe(false);
  });

  it('have one box where there is one', async () => {
    const { element } = await wall(three.slice(0, 1));
    expect(names(element).filter((name) => /seen/.test(name))).toEqual(['seen']);
  });

  it('have both boxes in Spanish', async () => {
    const { element } = await wall(three, stationView, 'es');
    expect(names(element)).toEqual(expect.arrayContaining(['visto', 'los 3, vistos']));
  });

  it('go by themselves once they say nothing more, with time to read them', async () => {
    const start = refused(rubRibs.id, notHere);
    const { element, state, passes } = await wall([start]);
    expect(saidOn(element)).toContain('This screen may not do that');
    await passes(60_000);
    expect(state.refused).toHaveLength(1);
    const begun = stationView.tasks.map((task) =>
      task.id === rubRibs.id ? { ...task, state: 'running' as const } : task,
    );
    state.view = { ...stationView, tasks: begun };
    await passes(1_000);
    expect(state.refused).toEqual([]);
    expect(saidOn(element)).not.toContain('This screen may not do that');
  });

  it('stand as long as it takes to read them, also where they say nothing at first', async () => {
    const { state, passes } = await wall([refused(squareRibs.id, notHere)]);
    await passes(15_000);
    expect(state.refused).toHaveLength(1);
    await passes(10_000);
    expect(state.refused).toEqual([]);
  });
});

describe('a weight of trim that the hub refused', () => {
  it('says so on the line of the work that fills the tub', async () => {
    const tub = { tub: 'tips', name: { en: 'tips' }, weightKg: kilograms(4), mostKg: kilograms(9) };
    const square = { ...squareRibs, tubs: [{ ...tub, isWeighed: false }] };
    const [other] = stationView.tasks.filter(({ id }) => id !== square.id);
    const weighed: Tap = {
      command: {
        ...{ kind: 'weighTub', batch: square.batch, tub: 'tips', weightKg: kilograms(8) },
        ...{ id: 'a-weight' as CommandId, personId: null, screenId: null, tappedAt: NOW },
      },
      refusal: { rule: 'impossible-amount', weightKg: kilograms(8) },
    };
    const view = { ...stationView, tasks: other ? [square, other] : [square] };
    const { element } = await wall([weighed], view);
    const lines = [...(element.shadowRoot?.querySelectorAll<NowLine>('now-line') ?? [])];
    const said = lines.filter((line) => saidOn(line).includes('cannot be: count or weigh again'));
    expect(said.map(({ task }) => task?.id)).toEqual([square.id]);
    expect(names(element)).toContain('seen');
  });
});
