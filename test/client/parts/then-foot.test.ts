// @vitest-environment happy-dom
import { afterEach, expect, it } from 'vitest';
import { NextRow } from '../../../client/parts/next-row.ts';
import { ThenFoot } from '../../../client/parts/then-foot.ts';
import { drawn } from '../fingers.ts';
import { NOW, stationView, task } from '../fixtures.ts';

const { zone, clock, temperature, weight } = stationView;
const say = { language: 'en', zone, clock, temperature, weight } as const;

const overdue = task('a/wood', 'Feed wood', [-2, 3], { state: 'ready' });
const runs = task('a/check', 'Check', [-5, 9], { state: 'running' });
const soon = task('a/load', 'Load', [2, 5], { state: 'ready' });
const waits = task('a/wrap', 'Wrap', [0, 5], { state: 'waiting' });

afterEach(() => document.body.replaceChildren());

async function minded(element: ThenFoot | NextRow): Promise<string[]> {
  document.body.append(element);
  await drawn();
  const due = [...(element.shadowRoot?.querySelectorAll('.due') ?? [])];
  return due.map(({ textContent }) => textContent?.replace(/\s+/g, ' ').trim() ?? '');
}

it('minds under Then what runs or is past due, and nothing that is to come or waits', async () => {
  const tasks = [overdue, runs, soon, waits];
  expect(await minded(Object.assign(new ThenFoot(), { say, tasks, now: NOW }))).toEqual([
    expect.stringContaining('Feed wood'),
    expect.stringContaining('Check'),
  ]);
});

it('minds the same in a row under Next', async () => {
  const rows = [overdue, soon, waits].map((each) =>
    minded(Object.assign(new NextRow(), { say, task: each, now: NOW })),
  );
  expect(await Promise.all(rows)).toEqual([['Feed wood'], [], []]);
});
