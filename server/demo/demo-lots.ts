import type { AdoptedPlan, Fact } from '../../shared/day/index.ts';
import {
  addDays,
  celsius,
  kilograms,
  type LotId,
  pickBelow,
  seeded,
} from '../../shared/kernel/index.ts';

const SUPPLIERS = ['Elm Street Meats', 'Three Rivers Packing', 'Hollow Oak Farm'];
/** Pieces of a case; a cut of more comes in several. */
const MOST_OF_A_LOT = 16;
const COLD_C = 2;

/**
 * What lay in the cooler of the invented kitchen before its day began, enough for all of it: so
 * that what is cut today can be told from where.
 */
export function demoLots({ built, catalogue }: AdoptedPlan, seed: number): Fact[] {
  const random = seeded(seed);
  let number = 0;
  return built.pull.flatMap(({ cut, pieces, weightKg }, line) => {
    const isMeat = catalogue.cuts.find(({ id }) => id === cut)?.species !== 'plant';
    const supplier = SUPPLIERS[line % SUPPLIERS.length] ?? '';
    return portionsOf(pieces).map((count): Fact => {
      number += 1;
      // A little more or less than the average, as pieces are.
      const share = 0.97 + 0.06 * random();
      return {
        ...{ kind: 'lotCame', lot: `${built.day}-${number}` as LotId, cut, supplier },
        pieces: count,
        weightKg: kilograms(Math.round(((weightKg * count) / pieces) * share * 100) / 100),
        // Whoever takes a case in here reads it, whatever it is of.
        tempC: celsius(COLD_C + (isMeat ? Math.round(10 * random()) / 10 : 0.5)),
        useBy: addDays(built.day, 3 + pickBelow(random, 5)),
        code: `${supplier.slice(0, 1)}${1000 + pickBelow(random, 9000)}`,
      };
    });
  });
}

/** A cut of many pieces in lots of nearly the same size. */
function portionsOf(pieces: number): number[] {
  const count = Math.ceil(pieces / MOST_OF_A_LOT);
  const each = Math.floor(pieces / count);
  return Array.from({ length: count }, (_, n) => each + (n < pieces % count ? 1 : 0));
}
