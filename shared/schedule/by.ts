/** What a time hangs on, where that is not an arc. */
export const BY = {
  fact: -1,
  /** A release, a deadline, a goal, the horizon. */
  hard: -2,
  /** The published time, or what it has yielded to. */
  plan: -3,
  now: -4,
  /** The far end, on the near end and the shortest length. */
  length: -5,
  /** Somebody holds it for now. */
  held: -6,
} as const;

/** From no node. */
export const NOWHERE = -1;
