/**
 * The sentences that a language must have. Each takes words already put in the reader's language
 * and units, so that a translation is one file and knows nothing of the day.
 */
/** Who did something, or else on which screen it was done; both may be unknown. */
export type Whose = { readonly person: string | null; readonly screen: string | null };

export type Phrases = {
  slot(smoker: string, rack: string): string;
  /** The whole line of a task, inside a sentence. */
  titled(title: string): string;
  readonly service: {
    inHand(service: string, at: string, time: string): string;
    short(service: string, at: string, time: string): string;
    onTime(service: string, at: string): string;
    /** In the place of when it opens, once it has. */
    readonly on: string;
  };
  readonly because: {
    after(task: string, wait: string | null): string;
    hand(person: string): string;
    place(slot: string, until: string): string;
    fire(smoker: string, until: string): string;
    room(task: string, until: string): string;
    shift(person: string, from: string): string;
    plan(at: string): string;
    readonly now: string;
    down(smoker: string, back: string | null): string;
    out(person: string, back: string | null): string;
    barred(check: string): string;
  };
  readonly refusal: {
    readonly noPlan: string;
    readonly unknownTask: string;
    alreadyStarted(at: string, by: Whose): string;
    alreadyDone(at: string, by: Whose): string;
    anotherDay(taps: number): string;
    readonly notStarted: string;
    notByHand(task: string): string;
    waitsFor(before: string): string;
    alreadyFollowed(by: string): string;
    countOutOfRange(done: number, pieces: number): string;
    lateOutOfRange(by: string, most: string): string;
    readonly notThisScreens: string;
    readonly unknownPerson: string;
    lacksSkill(person: string, task: string): string;
    impossibleTemperature(temp: string): string;
    readonly unknownPlace: string;
    slotTooSmall(slot: string, need: string, free: string): string;
    slotTaken(slot: string, by: string, until: string): string;
    fireDiffers(slot: string, need: string, is: string): string;
    rackUnfit(slot: string): string;
    rackTooWeak(slot: string, need: string, free: string): string;
    drips(slot: string, other: string, limit: string): string;
    readonly offAlready: string;
    inAlready(at: string): string;
    /** Nothing for `most` where it cannot be earlier at all, for `before` where nothing is. */
    notSoEarly(most: string | null, before: string | null): string;
    readonly nothingForeseen: string;
    readonly outOfDate: string;
    readonly nothingMoves: string;
    readOnly(atSeq: number): string;
    hubFault: string;
    badMessage(where: string, what: string): string;
  };
};
