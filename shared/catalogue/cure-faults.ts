import { type FileFault, filePath } from '../kernel/index.ts';
import type { Mix } from './mix-schema.ts';
import type { Catalogue } from './schema.ts';

/** Curing salt whose way of curing is not said would keep to no limit, nor would a cure without. */
export function cureFaults({ mixes }: Catalogue): FileFault[] {
  return mixes.flatMap((mix: Mix, index) => {
    const hasNitrite = mix.parts.some(({ nitrite = 0 }) => nitrite > 0);
    const isCure = mix.cures !== undefined;
    if (hasNitrite === isCure) return [];
    const path = filePath(['mixes', index, 'cures']);
    return hasNitrite
      ? [{ path, found: 'nothing', allowed: 'how it cures: curing salt is among its parts' }]
      : [{ path, found: `"${mix.cures}"`, allowed: 'nothing: no part of it has nitrite in it' }];
  });
}
