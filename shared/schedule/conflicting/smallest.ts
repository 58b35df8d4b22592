/** Whether these cannot all be; `undefined` where that is not to be found out any more. */
export type Cannot<T> = (all: readonly T[]) => boolean | undefined;

export type Smallest<T> = {
  readonly left: readonly T[];
  /** Whether each of them was seen to be needed. */
  readonly isSmallest: boolean;
};

/**
 * As few of these as still cannot all be, given that all together cannot: halves are tried before
 * their parts, so that few are asked about where few are left (QuickXplain: U. Junker, AAAI 2004).
 * Of what is not found out, nothing is left out.
 */
export function smallest<T>(all: readonly T[], cannot: Cannot<T>): Smallest<T> {
  let isSmallest = true;
  const among = (given: readonly T[], isNew: boolean, choice: readonly T[]): readonly T[] => {
    if (isNew) {
      const already = cannot(given);
      if (already) return [];
      if (already === undefined) isSmallest = false;
    }
    if (choice.length <= 1) return choice;
    const half = Math.ceil(choice.length / 2);
    const [first, second] = [choice.slice(0, half), choice.slice(half)];
    const ofSecond = among([...given, ...first], first.length > 0, second);
    const ofFirst = among([...given, ...ofSecond], ofSecond.length > 0, first);
    return [...ofFirst, ...ofSecond];
  };
  const left = among([], false, all);
  return { left, isSmallest };
}
