/** A stream of numbers in [0, 1) that is a function of its seed alone. */
export type Random = () => number;

/**
 * Mulberry32 (Tommy Ettinger, public domain): 32 bits of state, enough for tie-breaks and
 * simulations, never for secrets.
 * @example seeded(1)() === seeded(1)() //=> true
 */
export function seeded(seed: number): Random {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/** A whole number from 0 up to and without `below`. */
export const pickBelow = (random: Random, below: number) => Math.floor(random() * below);
