import { type Celsius, celsius, type Metres } from '../kernel/index.ts';

/** Sea level, the standard atmosphere. */
export const SEA_LEVEL_PA = 101_325;

/** Weight of a mole of water over that of dry air: 18.015268 / 28.966 (ASHRAE Fundamentals). */
const WATER_TO_AIR = 0.621945;

const KELVIN = 273.15;

/**
 * The pressure of the standard atmosphere at a height (ASHRAE Fundamentals 2017, ch. 1, eq. 3).
 * @example pressureAtPa(metres(1600)) //=> 83,436 Pa
 */
export function pressureAtPa(altitude: Metres): number {
  return SEA_LEVEL_PA * (1 - 2.25577e-5 * altitude) ** 5.2559;
}

/**
 * The pressure of saturated vapour over water, or over ice below 0 °C, from -100 to 200 °C: Hyland
 * and Wexler 1983, as in ASHRAE Fundamentals 2017, ch. 1, eqs. 5 and 6.
 * @example saturationPressurePa(celsius(100)) //=> 101,419 Pa
 */
export function saturationPressurePa(temp: Celsius): number {
  const t = temp + KELVIN;
  if (temp < 0) {
    const series = -9.677843e-3 + t * (6.2215701e-7 + t * (2.0747825e-9 - t * 9.484024e-13));
    return Math.exp(-5674.5359 / t + 6.3925247 + t * series + 4.1635019 * Math.log(t));
  }
  const series = -4.8640239e-2 + t * (4.1764768e-5 - t * 1.4452093e-8);
  return Math.exp(-5800.2206 / t + 1.3914993 + t * series + 6.5459673 * Math.log(t));
}

/** Heat that a kilogram of water takes to evaporate, in joules: linear, within 0.4 % to 120 °C. */
export function latentHeatJPerKg(tempC: number): number {
  return 2.501e6 - 2361 * tempC;
}

/**
 * The share of the air's pressure that its vapour holds up, in Pa.
 * @example vapourPressurePa(0) //=> 0
 */
export function vapourPressurePa(humidityRatio: number, pressurePa = SEA_LEVEL_PA): number {
  return (pressurePa * humidityRatio) / (WATER_TO_AIR + humidityRatio);
}

/**
 * Kilograms of vapour to a kilogram of dry air. Infinite where there is nothing but vapour.
 * @example humidityRatio(2338.8) //=> 0.014696
 */
export function humidityRatio(vapourPa: number, pressurePa = SEA_LEVEL_PA): number {
  if (vapourPa >= pressurePa) return Number.POSITIVE_INFINITY;
  return (WATER_TO_AIR * vapourPa) / (pressurePa - vapourPa);
}

/**
 * What a thermometer in a wet sock shows, the thermodynamic wet bulb (ASHRAE Fundamentals 2017,
 * ch. 1, eqs. 33 and 35). Nothing where air so warm cannot hold so much water.
 * @example wetBulbC(celsius(110), 0.02) //=> 40.44 °C
 */
export function wetBulbC(
  air: Celsius,
  ratio: number,
  pressurePa = SEA_LEVEL_PA,
): Celsius | undefined {
  if (vapourPressurePa(ratio, pressurePa) > saturationPressurePa(air)) return undefined;
  let low = -100;
  let high: number = air;
  // Fifty halvings of at most 300 K are finer than a double can tell.
  for (let halving = 0; halving < 50; halving++) {
    const middle = (low + high) / 2;
    if (ratioAtWetBulb(air, middle, pressurePa) < ratio) low = middle;
    else high = middle;
  }
  return celsius((low + high) / 2);
}

/**
 * The humidity ratio of air from its temperature and its wet bulb. Nothing where the wet bulb is
 * the warmer of the two, or so cold that no air could be so dry.
 * @example humidityFromWetBulb(celsius(110), celsius(40.44)) //=> 0.0200
 */
export function humidityFromWetBulb(
  air: Celsius,
  wetBulb: Celsius,
  pressurePa = SEA_LEVEL_PA,
): number | undefined {
  if (wetBulb > air) return undefined;
  const ratio = ratioAtWetBulb(air, wetBulb, pressurePa);
  return ratio >= 0 ? ratio : undefined;
}

/**
 * Above the boiling point a wet bulb would need endless vapour; the search then turns back down.
 */
function ratioAtWetBulb(air: number, wetBulb: number, pressurePa: number): number {
  const saturated = humidityRatio(saturationPressurePa(celsius(wetBulb)), pressurePa);
  if (saturated === Number.POSITIVE_INFINITY) return saturated;
  return wetBulb >= 0
    ? ((2501 - 2.326 * wetBulb) * saturated - 1.006 * (air - wetBulb)) /
        (2501 + 1.86 * air - 4.186 * wetBulb)
    : ((2830 - 0.24 * wetBulb) * saturated - 1.006 * (air - wetBulb)) /
        (2830 + 1.86 * air - 2.1 * wetBulb);
}
