import { describe, expect, it } from 'vitest';
import { must } from '../../../shared/kernel/index.ts';
import { readKitchen } from '../../../shared/kitchen/index.ts';
import { plain, spoilt } from '../plan/three-elms.ts';

/** What is said of the demo's kitchen with these places changed. */
function problemsWith(changes: Readonly<Record<string, unknown>>) {
  const read = readKitchen(spoilt(plain.kitchen, changes));
  return read.ok ? [] : read.problems;
}

describe('reading a kitchen', () => {
  it('names the slots of a smoker from the top down', () => {
    const read = readKitchen(plain.kitchen);
    const smoker = must(read.ok ? read.value.smokers[0] : null, JSON.stringify(read));
    expect(smoker.racks.map(({ slot }) => slot)).toEqual(['a/1', 'a/2', 'a/3', 'a/4']);
    expect(smoker.racks[0]?.label).toBe('1');
    expect(smoker.hottestC).toBeCloseTo(162.78, 2);
  });

  it('says all that is wrong at once', () => {
    const problems = problemsWith({
      zone: 'America/Chicargo',
      'smokers[0].heat': 'bellow',
      'smokers[1].racks[0].holds': 80,
      'crew[0].shifts[0].from': '2 pm',
      'crew[1].id': 'marcus',
      'units.clock': '12h',
    });
    expect(problems).toEqual([
      {
        path: 'zone',
        found: '"America/Chicargo"',
        allowed: 'a time zone such as "America/Chicago"',
        meant: 'America/Chicago',
      },
      { path: 'units.clock', found: '"12h"', allowed: 'one of: 12 h, 24 h', meant: '12 h' },
      {
        path: 'smokers[0].heat',
        found: '"bellow"',
        allowed: 'one of: below, above, side',
        meant: 'below',
      },
      {
        path: 'smokers[1].racks[0].holds',
        found: '80',
        allowed: 'a weight such as "12 lb", "2 lb 8 oz" or "1.2 kg"',
      },
      {
        path: 'crew[0].shifts[0].from',
        found: '"2 pm"',
        allowed: 'a wall-clock time such as "17:00"; from "24:00" on it is the day after',
        meant: '14:00',
      },
      { path: 'crew[1].id', found: '"marcus"', allowed: 'a name that is given only once' },
    ]);
  });

  it('wants a shift to end after it begins, and says how a morning is written', () => {
    const [problem] = problemsWith({
      'crew[2].shifts[0].to': '06:00',
    });
    expect(problem?.path).toBe('crew[2].shifts[0].to');
    expect(problem?.allowed).toContain('"30:00" is 6:00');
  });

  it('wants a break inside its shift', () => {
    const [problem] = problemsWith({
      'crew[0].shifts[0].breaks[0].from': '09:00',
    });
    expect(problem?.path).toBe('crew[0].shifts[0].breaks[0]');
  });

  it('wants a smoker to be hottest at its hottest', () => {
    const [problem] = problemsWith({
      'smokers[0].coolest': '400 °F',
    });
    expect(problem?.path).toBe('smokers[0].hottest');
  });
});
