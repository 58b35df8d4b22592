import { describe, expect, it } from 'vitest';
import { makePlan } from '../../../server/adopt.ts';
import { demoFiles } from '../../../server/demo/index.ts';
import { starterFiles } from '../../../server/starter/index.ts';
import { instant, must } from '../../../shared/kernel/index.ts';
import { readPlanFiles } from '../../../shared/plan/index.ts';

const NOW = instant(Date.parse('2026-11-25T21:00:00Z'));
const ZONE = 'America/Chicago';

/** The rounds of each smoker that are done before it is used, in the order of the day. */
function beforeUse(files: Parameters<typeof readPlanFiles>[0]) {
  const read = readPlanFiles(files);
  const made = read.ok ? makePlan(read.value, 1) : null;
  const { built, schedule } = must(made?.ok ? made.plan : null, 'a plan');
  const tasks = new Map(built.tasks.map((task) => [String(task.id), task]));
  const at = schedule.placements.flatMap(({ activity, startS, endS }) => {
    const task = tasks.get(activity);
    return task ? [{ batch: String(task.batch), step: String(task.step), startS, endS }] : [];
  });
  return built.upkeep.map(({ id, rounds }) => ({
    order: rounds.filter(({ when }) => when === 'before').map(({ task }) => String(task.step)),
    done: at.filter(({ batch }) => batch === id).sort((a, b) => a.startS - b.startS),
  }));
}

describe('what is done before a smoker is used', () => {
  it.each([
    ['the small kitchen', starterFiles(NOW, ZONE, 'three dishes')],
    ['the demo', demoFiles(NOW, ZONE)],
  ])(
    'follows the order of the catalogue: no fire over a full grease tray, in %s',
    (_name, files) => {
      const things = beforeUse(files).filter(({ order }) => order.length > 1);
      let pairs = 0;
      for (const { order, done } of things) {
        const before = done.filter(({ step }) => order.includes(step));
        for (const [index, one] of before.entries()) {
          const next = before[index + 1];
          if (next === undefined || order.indexOf(next.step) <= order.indexOf(one.step)) continue;
          pairs += 1;
          expect(one.endS).toBeLessThanOrEqual(next.startS);
        }
        // Each use begins with the first of them.
        expect(before.map(({ step }) => step).slice(0, 2)).toEqual(order.slice(0, 2));
      }
      expect(pairs).toBeGreaterThan(1);
    },
  );
});
