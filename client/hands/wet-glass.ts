/** Something that touches the glass. Pixels are CSS pixels, times those of the page's own clock. */
export type Touch = {
  readonly id: number;
  readonly xPx: number;
  readonly yPx: number;
  readonly atMs: number;
  /** Its larger diameter, as far as the panel says. */
  readonly acrossPx?: number;
  /** On a place that is meant to be tapped again and again: a digit, a tally. */
  readonly quick?: boolean;
};

type Contact = Touch & {
  readonly isAlone: boolean;
  readonly wentPx: number;
  readonly gone: boolean;
};

/** Two taps of one wet finger come closer together than this; the second is not meant. */
const TWICE_MS = 700;
/** On a place to count at: no finger comes down twice so soon (from memory: six taps a second). */
const BOUNCE_MS = 80;
/** No hand goes from one place to the next, and means it, in so little (judged, no source). */
const PACE_MS = 300;
/** More places than these in a second are a cloth; so are two long strokes. Judged, no source. */
const WIPE_PLACES = 5;
const WIPE_STROKES = 2;
const WIPE_MS = 1000;
/** After a wipe, nothing is heard before the glass was left alone for so long. */
const REST_MS = 800;
/** A contact of which nothing more is heard, not even its end, counts no longer. */
const STUCK_MS = 3000;
/** In fingers: what is wider is a palm or a cloth. */
const PALM = 2.5;

/**
 * Tells a tap that is meant from what water, gloves, a second finger or a cloth do to the glass. It
 * is told of all that touches it, and asked before a tap is heard.
 */
export class WetGlass {
  readonly #fingerPx: () => number;
  #contacts: readonly Contact[] = [];
  #heard: Touch | null = null;
  #restsTillMs = Number.NEGATIVE_INFINITY;

  /** `fingerPx`: how wide a place to tap is on this glass. */
  constructor(fingerPx: () => number) {
    this.#fingerPx = fingerPx;
  }

  /** Until then nothing is heard, unless it is touched again. */
  get restsTillMs(): number {
    return this.#restsTillMs;
  }

  /** Somebody says that they wipe it. */
  restTill(atMs: number): void {
    this.#restsTillMs = atMs;
  }

  down(touch: Touch): void {
    const others = this.#contacts.filter(({ id }) => id !== touch.id);
    const lying = others.filter(({ atMs, gone }) => !gone && touch.atMs - atMs < STUCK_MS);
    const fresh = others
      .filter(({ atMs, gone }) => touch.atMs - atMs < (gone ? WIPE_MS : STUCK_MS))
      .map((other) => (other.gone ? other : { ...other, isAlone: false }));
    this.#contacts = [...fresh, { ...touch, isAlone: lying.length === 0, wentPx: 0, gone: false }];
    this.#see(touch.atMs);
  }

  move({ id, xPx, yPx }: Pick<Touch, 'id' | 'xPx' | 'yPx'>): void {
    this.#change(id, (contact) => ({
      ...contact,
      wentPx: Math.max(contact.wentPx, Math.hypot(xPx - contact.xPx, yPx - contact.yPx)),
    }));
  }

  /** `scrolled`: the page moved with it, as a page that is longer than the glass may. */
  up(id: number, atMs: number, scrolled = false): void {
    this.#change(id, (contact) => ({
      ...contact,
      gone: true,
      wentPx: scrolled ? 0 : contact.wentPx,
    }));
    this.#see(atMs);
  }

  /** Whether a tap that the browser made of its last contact is meant. */
  hears(tap: Touch): boolean {
    if (tap.atMs < this.#restsTillMs || !this.#isMeant(tap)) return false;
    this.#heard = tap;
    return true;
  }

  #isMeant(tap: Touch): boolean {
    const fingerPx = this.#fingerPx();
    const own = this.#contacts.findLast(({ id }) => id === tap.id);
    if (own && (!own.isAlone || own.wentPx > fingerPx)) return false;
    if ((own?.acrossPx ?? 0) > PALM * fingerPx) return false;
    const heard = this.#heard;
    const sinceMs = heard ? tap.atMs - heard.atMs : Number.POSITIVE_INFINITY;
    const isSamePlace = heard !== null && apart(heard, tap) <= fingerPx;
    if (isSamePlace && sinceMs < (tap.quick ? BOUNCE_MS : TWICE_MS)) return false;
    return !own || !this.#isHasty(own, fingerPx);
  }

  /** Whether something came down elsewhere a moment before; from key to key a hand is quicker. */
  #isHasty(own: Contact, fingerPx: number): boolean {
    return this.#contacts.some(
      (other) =>
        own.atMs - other.atMs < PACE_MS &&
        !(own.quick && other.quick) &&
        apart(own, other) > fingerPx,
    );
  }

  #see(atMs: number): void {
    const fingerPx = this.#fingerPx();
    const late = this.#contacts.filter((each) => atMs - each.atMs < WIPE_MS);
    const strokes = late.filter(({ wentPx, gone }) => gone && wentPx > 2 * fingerPx);
    const places: Contact[] = [];
    for (const each of late) {
      if (!each.quick && places.every((place) => apart(place, each) > fingerPx)) places.push(each);
    }
    const isWiped = places.length >= WIPE_PLACES || strokes.length >= WIPE_STROKES;
    const goesOn = atMs < this.#restsTillMs;
    if (isWiped || goesOn) this.#restsTillMs = Math.max(this.#restsTillMs, atMs + REST_MS);
  }

  #change(id: number, change: (contact: Contact) => Contact): void {
    this.#contacts = this.#contacts.map((each) => (each.id === id ? change(each) : each));
  }
}

const apart = (a: Touch, b: Touch) => Math.hypot(a.xPx - b.xPx, a.yPx - b.yPx);
