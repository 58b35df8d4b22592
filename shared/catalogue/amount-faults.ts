import { type FileFault, filePath, shown } from '../kernel/index.ts';
import type { Cut } from './cut-schema.ts';
import type { Catalogue } from './schema.ts';

/** Amounts that can be read and cannot be: of nothing no pieces are reckoned. */
export function amountFaults({ cuts, dishes }: Catalogue): FileFault[] {
  return [
    ...dishes.flatMap(({ portionKg }, index) =>
      aboveNought(portionKg, ['dishes', index, 'portion']),
    ),
    ...cuts.flatMap(cutFaults),
  ];
}

function cutFaults({ weightKg, footprint, yields }: Cut, index: number): FileFault[] {
  const here = (...keys: readonly string[]) => ['cuts', index, ...keys];
  return [
    ...aboveNought(weightKg.low, here('weight', 'low')),
    ...aboveNought(footprint.lengthM, here('footprint', 'length')),
    ...aboveNought(footprint.widthM, here('footprint', 'width')),
    ...(['trim', 'cook', 'carve'] as const).flatMap((step) =>
      aboveNought(yields[step].low, here('yields', step, 'low')),
    ),
    // A pot takes up water, so that more may come out of it than went in; a knife only takes off.
    ...(['trim', 'carve'] as const).flatMap((step) =>
      noMoreThanAll(yields[step].high, here('yields', step, 'high')),
    ),
  ];
}

type Path = readonly PropertyKey[];

const aboveNought = (amount: number, path: Path): FileFault[] =>
  amount > 0 ? [] : [{ path: filePath(path), found: 'nought', allowed: 'more than nought' }];

function noMoreThanAll(share: number, path: Path): FileFault[] {
  if (share <= 1) return [];
  const found = shown(`${Math.round(share * 1000) / 10} %`);
  return [{ path: filePath(path), found, allowed: '"100 %" or less' }];
}
