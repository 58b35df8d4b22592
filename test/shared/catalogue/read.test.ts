import { describe, expect, it } from 'vitest';
import { readCatalogue } from '../../../shared/catalogue/index.ts';
import { must } from '../../../shared/kernel/index.ts';
import { plain, spoilt } from '../plan/three-elms.ts';

/** What is said of the demo's catalogue with these places changed. */
function problemsWith(changes: Readonly<Record<string, unknown>>) {
  const read = readCatalogue(spoilt(plain.catalogue, changes));
  return read.ok ? [] : read.problems;
}

describe('reading a catalogue', () => {
  it('takes kitchen units and keeps SI inside', () => {
    const read = readCatalogue(plain.catalogue);
    const ribs = must(read.ok ? read.value.cuts[0] : null, JSON.stringify(read));
    expect(ribs.weightKg.typical).toBeCloseTo(4.2 * 0.45359237, 9);
    expect(ribs.footprint.lengthM).toBeCloseTo(0.3302, 9);
    expect(ribs.yields.trim.typical).toBeCloseTo(0.7, 9);
  });

  it('says all that is wrong at once: where, what was found, what is allowed', () => {
    const problems = problemsWith({
      'cuts[0].weight.low': '3.5',
      'cuts[0].footprint.length': undefined,
      'cuts[0].footprint.lenght': '13 in',
      'routes[0].steps[1].work': 'hand',
      'routes[1].steps[1].skill': 'kinfe',
      'dishes[0].cut': 'spareribs',
    });
    expect(problems).toEqual([
      {
        path: 'cuts[0].weight.low',
        found: '"3.5"',
        allowed: 'a weight such as "12 lb", "2 lb 8 oz" or "1.2 kg"',
      },
      {
        path: 'cuts[0].footprint.length',
        found: 'nothing',
        allowed: 'a length such as "24 in" or "61 cm"',
      },
      {
        path: 'cuts[0].footprint.lenght',
        found: '"lenght"',
        allowed: 'one of: length, width',
        meant: 'length',
      },
      {
        path: 'routes[0].steps[1].work',
        found: '"hand"',
        allowed: 'one of: hands, fire, wait, place, serve',
        meant: 'hands',
      },
      {
        path: 'dishes[0].cut',
        found: '"spareribs"',
        allowed: expect.stringMatching(/^one of: spare-ribs, shoulder, /),
        meant: 'spare-ribs',
      },
      {
        path: 'routes[1].steps[1].skill',
        found: '"kinfe"',
        allowed: 'one of: knife, mix, pit, carve',
        meant: 'knife',
      },
    ]);
  });

  it('wants a range to rise', () => {
    const [problem] = problemsWith({ 'cuts[0].yields.cook.low': '90 %' });
    expect(problem?.path).toBe('cuts[0].yields.cook');
    expect(problem?.allowed).toBe('low, typical and high in rising order');
  });

  it('wants the options that steps speak of to be options of the route', () => {
    const problems = problemsWith({
      'routes[0].choices[2].usual': 'papr',
      'routes[0].steps[wrap-foil].when': { wrap: ['tin'] },
      'routes[0].steps[rub].when': { rap: ['paper'] },
    });
    expect(problems.map(({ found, meant }) => [found, meant])).toEqual([
      ['"papr"', 'paper'],
      ['"rap"', 'wrap'],
      ['"tin"', undefined],
    ]);
  });

  it('wants steps in an order that they can be done in', () => {
    const [problem] = problemsWith({ 'routes[0].steps[0].after': ['rub'] });
    expect(problem?.path).toBe('routes[0].steps[0].after[0]');
    expect(problem?.allowed).toBe('a step that is listed before this one');
  });

  it('finds the way of choosing that leaves a route without its end', () => {
    const [problem] = problemsWith({
      'routes[0].steps[serve].when': { wrap: ['paper', 'foil'] },
    });
    expect(problem?.allowed).toContain('one end, a step with work "serve"');
    expect(problem?.allowed).toContain('wrap: none');
  });

  it('finds a stay whose end a choice takes away', () => {
    const problems = problemsWith({ 'routes[0].steps[stay].spans.to.step': 'wrap-foil' });
    expect(problems.length).toBeGreaterThan(0);
    expect(problems.every(({ found }) => found === 'wrap-foil')).toBe(true);
  });

  it('wants the route of a dish to be for its cut', () => {
    const [problem] = problemsWith({ 'dishes[0].route': 'shoulder-boneless' });
    expect(problem).toEqual({
      path: 'dishes[0].route',
      found: '"shoulder-boneless"',
      allowed: 'a route for "spare-ribs": ribs-squared',
    });
  });

  it('refuses what is no catalogue at all in words', () => {
    const read = readCatalogue('ribs');
    expect(read.ok ? [] : read.problems).toEqual([
      { path: '(the whole file)', found: '"ribs"', allowed: 'an object { … }' },
    ]);
  });
});
