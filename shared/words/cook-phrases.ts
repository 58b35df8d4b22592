/** What a language needs to say why a cook cannot be foreseen. Arguments are already in words. */
export type CookPhrases = {
  sides: Record<'thickness' | 'width' | 'length', string>;
  impossibleSize(side: string, size: string): string;
  parts: Record<'water' | 'protein' | 'fat' | 'ash' | 'carbohydrate', string>;
  impossibleShare(part: string, share: string): string;
  compositionDoesNotSum(sum: string): string;
  impossibleStart(temp: string): string;
  noFirstStay: string;
  staysOutOfOrder(number: number): string;
  impossibleAir(temp: string): string;
  logOutOfOrder(at: string): string;
  targetAboveFire(target: string, temp: string, hottest: string): string;
  readingBeforeStart(before: string): string;
  readingAfterNow(at: string): string;
  impossibleReading(at: string, temp: string): string;
  noBalance(members: number): string;
  /** Over the columns of a forecast. */
  heads: {
    readonly target: string;
    readonly p10: string;
    readonly p50: string;
    readonly p90: string;
    readonly never: string;
    readonly at: string;
    readonly core: string;
    readonly surface: string;
    readonly evaporated: string;
  };
  /** What is not as sure as it looks. */
  notCalibrated: string;
  leftOut(leftOut: number, members: number): string;
};
