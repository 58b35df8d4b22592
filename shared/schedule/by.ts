/** What a time hangs on, where that is not an arc. */
export const BY = {
  fact: -1,
  /** A release, a deadline, a goal, the horizon. */
  hard: -2,
  plan: -3,
  now: -4,
  /** The far end, on the near end and the shortest length. */
  length: -5,
  /** A published end that yielded, so that the wait is not too long. */
  most: -6,
  /** A published time that yielded to a maximum lag: this, less the number of the ceiling. */
  ceiling: -7,
} as const;

/** From no node. */
export const NOWHERE = -1;
