import { describe, expect, it } from 'vitest';
import type { Intent } from '../../../shared/day/index.ts';
import { openLive } from '../../../shared/day/index.ts';
import type { CommandId, TaskId } from '../../../shared/kernel/index.ts';
import { after, kilograms, must, seconds } from '../../../shared/kernel/index.ts';
import { overlay, type StationView, viewOf } from '../../../shared/view/index.ts';
import { plan, Telling } from '../day/demo.ts';

const { built, catalogue } = plan;
const at = (timeS: number) => after(built.origin, seconds(timeS));
const by = must(plan.kitchen.crew[0], 'somebody').id;

/** The step of a batch of ribs that ends its trimming, by the catalogue of the demo. */
const ribs = must(
  built.batches.find(({ cut }) => cut === 'spare-ribs'),
  'ribs',
);
const route = must(
  catalogue.routes.find(({ id }) => id === ribs.route),
  'their route',
);
const last = must(
  route.steps.find(({ leaves }) => leaves === 'trimmed'),
  'the last of the trimming',
).id;
const of = (step: string) =>
  must(
    built.tasks.find((task) => task.batch === ribs.id && task.step === step),
    step,
  );
const { id: task, station } = of(last);

/** Everything before the sorting is done, and that runs. */
function trimmed(): Telling {
  const day = new Telling();
  let n = 10;
  for (const step of route.steps.slice(
    0,
    route.steps.findIndex(({ id }) => id === last),
  )) {
    const before = built.tasks.find((each) => each.batch === ribs.id && each.step === step.id);
    if (!before) continue;
    day.keep({ kind: 'taskStarted', task: before.id, hand: by }, at(n), by);
    day.keep({ kind: 'taskFinished', task: before.id }, at(n + 1), by);
    n += 2;
  }
  day.keep({ kind: 'taskStarted', task, hand: by }, at(n), by);
  return day;
}

const viewAt = (day: Telling) =>
  viewOf(openLive(day.state, at(600)), { kind: 'station', station }) as StationView;
const tubsOn = (view: StationView, id: TaskId) => view.tasks.find((each) => each.id === id)?.tubs;
const weigh = (tub: string, kg: number): Intent => ({
  ...{ kind: 'weighTub', batch: ribs.id, tub, weightKg: kilograms(kg) },
});

describe('the wall of a table where a batch is trimmed', () => {
  it('has its tubs at the task that ends the trimming, and at no other', () => {
    const view = viewAt(trimmed());
    const planned = built.tubs.filter(({ batch }) => batch === ribs.id);
    expect(tubsOn(view, task)).toEqual(
      planned.map(({ tub, name, weightKg }) => ({
        ...{ tub, name, weightKg, isWeighed: false, mostKg: ribs.rawKg },
      })),
    );
    const others = view.tasks.filter(({ id, batch }) => batch === ribs.id && id !== task);
    expect(others.map(({ tubs }) => tubs)).toEqual(others.map(() => undefined));
  });

  it('says what the scale showed, and leaves so much less for the other tubs', () => {
    const day = trimmed();
    const [first, ...others] = must(tubsOn(viewAt(day), task), 'tubs');
    expect(day.ask(weigh(must(first, 'a tub').tub, 2), at(500), by).ok).toBe(true);
    const [weighed, ...rest] = must(tubsOn(viewAt(day), task), 'tubs');
    expect(weighed).toMatchObject({ weightKg: 2, isWeighed: true, mostKg: ribs.rawKg });
    expect(rest.map(({ mostKg }) => mostKg)).toEqual(others.map(() => ribs.rawKg - 2));
  });

  it('lets the hub take whatever it lets a hand type, and nothing more', () => {
    const day = trimmed();
    const [first, second] = must(tubsOn(viewAt(day), task), 'tubs');
    day.ask(weigh(must(first, 'a tub').tub, 3), at(500), by);
    const { tub, mostKg } = must(tubsOn(viewAt(day), task)?.[1], 'another');
    expect(tub).toBe(second?.tub);
    expect(day.ask(weigh(tub, mostKg + 0.01), at(501), by)).toMatchObject({
      ...{ ok: false, refusal: { rule: 'impossible-amount' } },
    });
    expect(day.ask(weigh(tub, mostKg - 1e-9), at(502), by).ok).toBe(true);
  });

  it('shows a tub as weighed before the hub has answered, as the hub will', () => {
    const day = trimmed();
    const hub = viewAt(day);
    const taps = must(tubsOn(hub, task), 'tubs').map(({ tub }, n) => ({
      command: {
        ...weigh(tub, n + 1),
        ...{ id: `c${n}` as CommandId, personId: by, screenId: null, tappedAt: at(600) },
      },
      mark: 'here' as const,
    }));
    const { view, marks } = overlay(hub, taps);
    for (const { command } of taps) expect(day.ask(command, at(600), by).ok).toBe(true);
    const near = (tubs: ReturnType<typeof tubsOn>) =>
      tubs?.map(({ tub, weightKg, isWeighed, mostKg }) => ({
        ...{ tub, weightKg, isWeighed, mostKg: Math.round(mostKg * 1e6) },
      }));
    expect(near(tubsOn(view, task))).toEqual(near(tubsOn(viewAt(day), task)));
    expect(marks.get(ribs.id)).toBe('here');
  });
});
