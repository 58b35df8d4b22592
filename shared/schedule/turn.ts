/** When activities are in turn, by number: who starts earlier goes before. */
export type Turn = {
  readonly startS: ArrayLike<number>;
  readonly endS: ArrayLike<number>;
  /** Among equals: an order that keeps the lags. */
  readonly rank: ArrayLike<number>;
};

/** Those who share something, in turn. */
export function inTurn<User extends { readonly activity: number }>(
  users: readonly User[],
  { startS, endS, rank }: Turn,
): User[] {
  const of = (values: ArrayLike<number>, { activity }: User) => values[activity] ?? 0;
  return users
    .slice()
    .sort(
      (a, b) =>
        of(startS, a) - of(startS, b) || of(endS, a) - of(endS, b) || of(rank, a) - of(rank, b),
    );
}
