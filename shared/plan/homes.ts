import type { StepOf } from '../catalogue/index.ts';
import type { Celsius, SmokerId } from '../kernel/index.ts';
import type { Kitchen, Smoker } from '../kitchen/index.ts';
import { rackAreaCm2 } from '../kitchen/index.ts';
import { laidOf } from './laid.ts';
import type { Homes, Order } from './order.ts';
import { pathLength } from './path.ts';
import { piecesFor } from './weights.ts';

/**
 * A smoker has one fire at a time, so each is given a set temperature to keep, and each temperature
 * of the day a smoker while there is one: that for which most is wanted first, and then by turns
 * that which is shortest of room. It is an aim and no more; where a plan needs it, a fire changes.
 */
export function homesOf(orders: readonly Order[], { smokers }: Pick<Kitchen, 'smokers'>): Homes {
  const asked = [...askedFor(orders)].sort((a, b) => b[1] - a[1] || a[0] - b[0]);
  const given = new Map<Celsius, number>(asked.map(([setC]) => [setC, 0]));
  const homes = new Map<SmokerId, Celsius>();
  for (const { id, racks, coolestC, hottestC } of [...smokers].sort(byArea)) {
    const wants = asked
      .filter(([setC]) => coolestC <= setC && setC <= hottestC)
      .map(([setC, cm2s]) => ({ setC, shortOf: cm2s / (given.get(setC) ?? 0) }));
    const [first, ...others] = wants;
    if (first === undefined) continue;
    const { setC } = others.reduce((a, b) => (b.shortOf > a.shortOf ? b : a), first);
    homes.set(id, setC);
    given.set(setC, (given.get(setC) ?? 0) + areaOf(racks));
  }
  return homes;
}

const areaOf = (racks: Smoker['racks']) => racks.reduce((sum, rack) => sum + rackAreaCm2(rack), 0);
/** The larger first; long pits last, since they help out with more than one heat. */
const byArea = (a: Smoker, b: Smoker) =>
  Number(a.layout === 'long') - Number(b.layout === 'long') || areaOf(b.racks) - areaOf(a.racks);

/** Square centimetres times seconds that the day wants at each set temperature. */
function askedFor(orders: readonly Order[]): Map<Celsius, number> {
  const asked = new Map<Celsius, number>();
  for (const order of orders) {
    for (const { step } of order.steps) {
      if (step.work !== 'place') continue;
      asked.set(step.setC, (asked.get(step.setC) ?? 0) + stayArea(order, step));
    }
  }
  return asked;
}

function stayArea({ cut, dish, demand, steps }: Order, stay: StepOf<'place'>): number {
  const portions = demand.reduce((sum, each) => sum + each, 0);
  const { lengthM, widthM } = laidOf(cut, stay);
  const lastsS = pathLength(steps, stay.spans, 1) ?? 0;
  return piecesFor(cut, dish.portionKg, portions) * lengthM * widthM * 10_000 * lastsS;
}
