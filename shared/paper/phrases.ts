/** The fixed words of the sheets. What is counted or named comes in already in words. */
export type PaperWords = {
  plan(version: number): string;
  asOf(time: string): string;
  span(from: string, to: string): string;
  to(time: string): string;
  by(time: string): string;
  ready(low: string, high: string): string;
  portions(count: number): string;
  doneWhen(feel: string, core: string | null): string;
  leftOut(count: number): string;
  /** How the marks are used, in one breath. */
  readonly howTo: string;
  /** Who has the last word where a limit is named. */
  readonly overruled: string;
  readonly nothing: string;

  readonly columns: { readonly time: string; readonly what: string; readonly write: string };
  readonly blanks: {
    readonly began: string;
    readonly done: string;
    readonly core: string;
    readonly air: string;
    readonly temperature: string;
    readonly time: string;
    readonly pieces: string;
    readonly weighed: string;
    readonly lot: string;
    readonly by: string;
  };

  readonly dayList: string;
  readonly services: string;
  readonly pull: string;
  readonly mixes: string;
  readonly tubs: string;
  readonly goes: Readonly<Record<'cooked' | 'sausage' | 'rendered' | 'stock' | 'waste', string>>;
  contains(allergens: string): string;
  page: string;
};
