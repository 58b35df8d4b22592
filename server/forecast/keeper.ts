import { type Forecasting, foreseeing, type Kept } from '../../shared/cook/index.ts';
import type { Sent } from './cook-thread.ts';

/** More loads than any pit has racks; the one that was asked for longest ago is forgotten first. */
const MOST = 200;

/** Foresees cooks, and keeps of each what it came from, for when only its smoker is news. */
export class Keeper {
  readonly #kept = new Map<string, { readonly key: string; readonly of: Kept }>();

  foresee({ piece, smoker, readings, options, keep }: Sent): Forecasting {
    const known = keep && this.#kept.get(keep.name);
    const before = known && known.key === keep.key ? known.of : undefined;
    const found = foreseeing(piece, smoker, readings, { ...options, before });
    if (!found.ok) return found;
    if (keep) this.#keep(keep, found.kept);
    return { ok: true, forecast: found.kept.forecast };
  }

  #keep({ name, key }: NonNullable<Sent['keep']>, of: Kept): void {
    this.#kept.delete(name);
    this.#kept.set(name, { key, of });
    const [oldest] = this.#kept.keys();
    if (this.#kept.size > MOST && oldest !== undefined) this.#kept.delete(oldest);
  }
}
