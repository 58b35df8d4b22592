import type { Language } from './say.ts';

/** The sentences of the day's log; who and which screen stand beside them. */
export type LogPhrases = {
  plan(version: number): string;
  planBack(version: number, takenBack: number): string;
  limits(from: string, to: string, why: string): string;
  readonly task: Record<
    | 'taskStarted'
    | 'taskFinished'
    | 'startTakenBack'
    | 'finishTakenBack'
    | 'helpAsked'
    | 'helpCame',
    (task: string) => string
  >;
  counted(task: string, done: number, pieces: number): string;
  late(task: string, by: string): string;
  given(task: string, to: string): string;
  load(batch: string, place: number): string;
  read(where: string, slot: string | null, temp: string): string;
  moved(batch: string, to: string): string;
  mended(tasks: number): string;
  note(text: string, about: string | null): string;
  readonly who: {
    paired(name: string, place: string): string;
    moved(name: string, place: string): string;
    renamed(name: string): string;
    revoked(name: string): string;
    pinSet(person: string, isOwner: boolean): string;
    pinCleared(person: string): string;
    /** Null: whatever the screen speaks. */
    languageSet(person: string, language: Language | null): string;
  };
  readonly happening: {
    down(smoker: string, temp: string, back: string | null): string;
    cold(smoker: string, temp: string): string;
    up(smoker: string, temp: string): string;
    /** Nothing where it was not open after all. */
    door(smoker: string, lasted: string | null): string;
    out(hand: string, back: string | null): string;
    in(hand: string): string;
    delivery(cut: string, pieces: number, weight: string): string;
    lot(lot: string, cut: string, weight: string, supplier: string, temp: string | null): string;
    cutFrom(batch: string, lots: string): string;
    cure(mix: string, weight: string, batch: string, by: readonly [string, string]): string;
    tub(tub: string, batch: string, weight: string): string;
    sold(dish: string, sold: number): string;
    soldOut(dish: string): string;
    emptied(batch: string): string;
    /** Nothing of it is kept where there is no weight. */
    carried(batch: string, weight: string | null): string;
    closed(goesOn: string | null): string;
    undone(what: string | null): string;
  };
  /** Where a screen was alone: it came later than it happened. */
  sentAt(time: string): string;
  readonly nothing: string;
  /** What a decision moved. */
  readonly news: {
    later(task: string, by: string): string;
    earlier(task: string, by: string): string;
    more(count: number): string;
    /** Of whatever moves, where one of it was named. */
    andMore(count: number): string;
    gains(service: string, by: string): string;
    loses(service: string, by: string): string;
    lost(batch: string, portions: number): string;
    longer(by: string): string;
    readonly nothing: string;
  };
};
