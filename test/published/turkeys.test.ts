import { describe, expect, it } from 'vitest';
import { smokerPriors } from '../../shared/cook/index.ts';
import { meaningOf } from '../../shared/cook/prior.ts';

/**
 * "Modeling heat transfer during oven roasting of unstuffed turkeys" (Chang, Carpenter and Toledo
 * 1998, abstract): the whole of convection and radiation in a still oven of 162.8 °C, fitted to
 * birds of 5.9 to 10.4 kg, is 19.252 W/m²K.
 */
describe('a whole bird in a still oven', () => {
  it('takes up heat as the priors of a smoker without a fan have it, within a seventh', () => {
    const { unknowns, wallsBelowAirK } = smokerPriors.draught;
    const skinK = 85 + 273.15;
    const wallsK = 162.8 - wallsBelowAirK + 273.15;
    const glow = 5.670374419e-8 * (skinK + wallsK) * (skinK ** 2 + wallsK ** 2);
    const whole = meaningOf(unknowns.film, 0) + meaningOf(unknowns.emissivity, 0) * glow;
    expect(Math.abs(whole / 19.252 - 1)).toBeLessThan(1 / 7);
  });
});

/**
 * "Estimation of heat transfer coefficients of cooked boneless ham" (Ryland and others 2006,
 * RURALS 1:1, abstract): 5 to 20 W/m²K are to be expected of a 5 lb ham that cools in moving air;
 * 9.11 were found.
 */
describe('a ham that cools', () => {
  it('gives off its heat within what the priors of a smoker allow', () => {
    const { film } = smokerPriors.draught.unknowns;
    expect(meaningOf(film, -2)).toBeGreaterThan(5);
    expect(meaningOf(film, 2)).toBeLessThan(20);
    expect(meaningOf(film, 0)).toBeCloseTo(9.11, 0);
  });
});
