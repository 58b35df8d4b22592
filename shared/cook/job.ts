/** Work that can be put down between two of its pieces and taken up again. */
export type Job<Result> = {
  /** Goes on until it is done or has to stop; nothing is answered until all is done. */
  readonly advance: (shouldStop: () => boolean) => Result | undefined;
};

/** A job whose pieces lie between the yields of a generator. */
export function jobOf<Result>(work: Generator<void, Result>): Job<Result> {
  let result: Result | undefined;
  return {
    advance: (shouldStop) => {
      while (result === undefined && !shouldStop()) {
        const next = work.next();
        if (next.done) result = next.value;
      }
      return result;
    },
  };
}

/** All of it at once. */
export function finish<Result>(work: Generator<void, Result>): Result {
  for (;;) {
    const next = work.next();
    if (next.done) return next.value;
  }
}
