import { describe, expect, it } from 'vitest';
import { chosenOptions, chosenSteps } from '../../shared/catalogue/index.ts';
import { must, toFahrenheit } from '../../shared/kernel/index.ts';
import { filesWith } from '../shared/plan/three-elms.ts';

/**
 * FDA Food Code, chapter 3, in °F as printed. The 2022 edition itself was not read; beside each row
 * is the copy that was: a state's adoption of it. Local code and the licensed authority overrule.
 */
const rows = {
  // 3-401.11(A)(1), for 15 s: Minnesota Rules 4626.0340.
  intact: 145,
  // 3-401.11(A)(2), for 17 s (15 s before 2017): Florida inspection text quoting the code.
  injected: 155,
  // 3-501.16(A)(1): Delaware Food Code.
  hotHold: 135,
  // 3-501.16(A)(2): Delaware Food Code.
  coldHold: 41,
  // 3-501.19(B), hours out of temperature control: Georgia; Washington WAC 246-215.
  outOfControlH: 4,
} as const;

const { routes } = filesWith().catalogue;
const routeOf = (cut: string) =>
  must(
    routes.find((route) => route.cut === cut),
    cut,
  );
const stepsOf = (cut: string, said: Record<string, string> = {}) =>
  chosenSteps(routeOf(cut), chosenOptions(routeOf(cut), said)).map(({ step }) => step);

/** The core that the last check before taking off asks for, in °F. */
function endF(cut: string, said: Record<string, string> = {}): number {
  const checks = stepsOf(cut, said).flatMap((step) =>
    step.work === 'hands' && step.check?.coreAtLeastC !== undefined
      ? [step.check.coreAtLeastC]
      : [],
  );
  return toFahrenheit(must(checks.at(-1), 'a check'));
}

describe('the ends of the two routes lie above the code’s', () => {
  it('ribs: intact meat, 145 °F for 15 s', () => {
    expect(endF('spare-ribs')).toBeGreaterThan(rows.intact);
  });

  it.each(['slice', 'pull'])(
    'shoulder, injected, to %s: 155 °F for 17 s at the centre',
    (finish) => {
      expect(endF('shoulder', { moisture: 'inject', finish })).toBeGreaterThan(rows.injected);
    },
  );
});

describe('what waits, waits at the code’s temperatures', () => {
  const waits = routes.flatMap(({ steps }) => steps.filter((step) => step.work === 'wait'));

  it('hot: the person is told 135 °F or above wherever a cabinet holds', () => {
    const held = waits.filter(
      (step) => step.work === 'wait' && step.keep?.in.startsWith('cabinet'),
    );
    expect(held).toHaveLength(4);
    for (const { mind } of held) expect(mind?.en).toContain(`${rows.hotHold} °F or above`);
  });

  it('cold: the person is told 41 °F or below wherever raw meat rests overnight', () => {
    const cold = waits.filter((step) => step.work === 'wait' && step.keep?.in === 'cooler');
    expect(cold).toHaveLength(3);
    for (const { mind } of cold) expect(mind?.en).toContain(`${rows.coldHold} °F or below`);
  });

  it('out of the cooler: no route leaves raw meat out for four hours', () => {
    const limits = routes.flatMap(({ limits }) =>
      limits.filter(({ from, reason }) => reason === 'safety' && /pull|drain/.test(from.step)),
    );
    expect(limits.length).toBeGreaterThan(4);
    for (const { atMostS } of limits) expect(atMostS).toBeLessThan(rows.outOfControlH * 3600);
  });
});
