import type { Celsius } from '../kernel/index.ts';

/** What meat is made of, as shares of its weight. */
export type Composition = {
  readonly water: number;
  readonly protein: number;
  readonly fat: number;
  readonly ash: number;
  readonly carbohydrate?: number;
};

/** How meat takes up and passes on heat. */
export type MeatProperties = {
  readonly conductivityWPerMK: number;
  readonly heatCapacityJPerKgK: number;
  readonly densityKgPerM3: number;
};

/** By how much the shares may miss one: food tables round, and leave a little unexplained. */
export const COMPOSITION_SLACK = 0.02;

/** A quadratic in the temperature in °C. */
type Quadratic = readonly [number, number, number];

/**
 * Choi and Okos 1986, -40 to 150 °C: conductivity in W/mK, heat capacity in kJ/kgK, density in
 * kg/m³. Public copies carry slips: water's 4.1762 as 4.1289, fat's -2.7604e-4 with a lost sign
 * or power.
 */
const components = {
  water: {
    k: [0.57109, 1.7625e-3, -6.7036e-6],
    cp: [4.1762, -9.0864e-5, 5.4731e-6],
    rho: [997.18, 3.1439e-3, -3.7574e-3],
  },
  protein: {
    k: [0.17881, 1.1958e-3, -2.7178e-6],
    cp: [2.0082, 1.2089e-3, -1.3129e-6],
    rho: [1329.9, -0.5184, 0],
  },
  fat: {
    k: [0.18071, -2.7604e-4, -1.7749e-7],
    cp: [1.9842, 1.4733e-3, -4.8008e-6],
    rho: [925.59, -0.41757, 0],
  },
  carbohydrate: {
    k: [0.20141, 1.3874e-3, -4.3312e-6],
    cp: [1.5488, 1.9625e-3, -5.9399e-6],
    rho: [1599.1, -0.31046, 0],
  },
  ash: {
    k: [0.32962, 1.4011e-3, -2.9069e-6],
    cp: [1.0926, 1.8896e-3, -3.6817e-6],
    rho: [2423.8, -0.28063, 0],
  },
} as const satisfies Record<keyof Composition, Record<'k' | 'cp' | 'rho', Quadratic>>;

const at = ([a, b, c]: Quadratic, temp: number) => a + temp * (b + temp * c);

/**
 * The sum of the shares, which is one but for rounding.
 * @example wholeOf({ water: 1, protein: 0, fat: 0, ash: 0 }) //=> 1
 */
export function wholeOf({ water, protein, fat, ash, carbohydrate = 0 }: Composition): number {
  return water + protein + fat + ash + carbohydrate;
}

/**
 * Meat's properties from what it is made of, unfrozen: heat by weight, density by volume,
 * conductivity by volume side by side (Choi and Okos 1986; the mixing after Singh and Heldman).
 * @example meatProperties({ water: 0.73, protein: 0.21, fat: 0.05, ash: 0.01 },
 * celsius(20)).densityKgPerM3 //=> 1051.6
 */
export function meatProperties(composition: Composition, temp: Celsius): MeatProperties {
  const whole = wholeOf(composition);
  let capacity = 0;
  let volume = 0;
  let conductance = 0;
  for (const [name, { k, cp, rho }] of Object.entries(components)) {
    const share = (composition[name as keyof Composition] ?? 0) / whole;
    const part = share / at(rho, temp);
    capacity += share * at(cp, temp);
    volume += part;
    conductance += part * at(k, temp);
  }
  return {
    conductivityWPerMK: conductance / volume,
    heatCapacityJPerKgK: 1000 * capacity,
    densityKgPerM3: 1 / volume,
  };
}
