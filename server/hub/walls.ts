import { canonical, type Instant } from '../../shared/kernel/index.ts';
import type {
  Blank,
  OfDay,
  ReadOnly,
  ScreenLink,
  ViewMessage,
} from '../../shared/protocol/index.ts';
import type { Face } from '../../shared/view/index.ts';
import { guarded, type Report } from '../report.ts';
import type { Shown } from './rules.ts';

export type WallParts = {
  readonly epoch: string;
  readonly seq: () => number;
  readonly of: () => OfDay;
  readonly now: () => Instant;
  readonly show: (face: Face, now: Instant) => Shown;
  /** Runs something in a turn of its own. */
  readonly soon: (run: () => void) => void;
  readonly report: Report;
};

/** What a face was last sent. */
type Sheet =
  | { readonly kind: 'view'; readonly message: ViewMessage }
  | { readonly kind: 'blank'; readonly message: Blank };

type Room = { readonly face: Face; readonly links: Set<ScreenLink>; sheet: Sheet | null };

/**
 * The screens that are linked, by what they show. A face is worked out once, however many show it.
 */
export class Walls {
  readonly #parts: WallParts;
  readonly #rooms = new Map<string, Room>();
  /** Faces that show less than has happened. */
  readonly #stale = new Set<Room>();
  #isShowing = false;

  constructor(parts: WallParts) {
    this.#parts = parts;
  }

  get count(): number {
    return this.#links().length;
  }

  join(link: ScreenLink): void {
    this.#roomOf(link.hello.face).links.add(link);
  }

  leave(link: ScreenLink): void {
    const room = this.#roomOf(link.hello.face);
    room.links.delete(link);
    if (room.links.size > 0) return;
    this.#rooms.delete(canonical(room.face));
    this.#stale.delete(room);
  }

  /** What one screen is to show now, sent to it alone. */
  showTo(link: ScreenLink): void {
    const room = this.#roomOf(link.hello.face);
    room.sheet ??= this.#draw(room.face);
    this.#send(link, room.sheet);
  }

  /** Something happened: every screen gets a new view, soon. */
  showAll(): void {
    for (const room of this.#rooms.values()) this.#stale.add(room);
    if (this.#isShowing) return;
    this.#isShowing = true;
    this.#parts.soon(() => this.#showNext());
  }

  /** Time went by: those whose view reads differently now get it. */
  showChanged(): void {
    for (const room of this.#rooms.values()) {
      this.#redraw(room, (next) => room.sheet === null || inkOf(next) !== inkOf(room.sheet));
    }
  }

  tellAll(readOnly: ReadOnly): void {
    for (const link of this.#links()) {
      guarded(this.#parts.report, 'a screen could not be told', () => link.readOnly(readOnly));
    }
  }

  closeAll(): void {
    for (const link of this.#links()) {
      guarded(this.#parts.report, 'a link could not be closed', () => link.close());
    }
  }

  #links(): ScreenLink[] {
    return [...this.#rooms.values()].flatMap(({ links }) => [...links]);
  }

  #roomOf(face: Face): Room {
    const key = canonical(face);
    const room = this.#rooms.get(key) ?? { face, links: new Set(), sheet: null };
    this.#rooms.set(key, room);
    return room;
  }

  /**
   * One face in a turn: while it travels and is drawn the next is worked out, and a tap that comes
   * meanwhile does not wait for all of them.
   */
  #showNext(): void {
    const [room] = this.#stale;
    this.#isShowing = room !== undefined;
    if (!room) return;
    this.#stale.delete(room);
    this.#redraw(room, () => true);
    this.#parts.soon(() => this.#showNext());
  }

  #redraw(room: Room, isWanted: (next: Sheet) => boolean): void {
    guarded(this.#parts.report, `a face could not be drawn: ${canonical(room.face)}`, () => {
      const sheet = this.#draw(room.face);
      if (!isWanted(sheet)) return;
      room.sheet = sheet;
      for (const link of room.links) this.#send(link, sheet);
    });
  }

  #draw(face: Face): Sheet {
    const { epoch, seq, of, show, now } = this.#parts;
    const head = { epoch, seq: seq(), of: of() };
    const shown = show(face, now());
    return shown.ok
      ? { kind: 'view', message: { ...head, view: shown.view } }
      : { kind: 'blank', message: { ...head, refusal: shown.refusal } };
  }

  #send(link: ScreenLink, sheet: Sheet): void {
    guarded(this.#parts.report, `a view could not be sent to ${link.hello.screenId}`, () => {
      if (sheet.kind === 'view') link.view(sheet.message);
      else link.blank(sheet.message);
    });
  }
}

/** All that a screen would draw: everything but the moment it was worked out. */
function inkOf(sheet: Sheet): string {
  if (sheet.kind === 'blank') return JSON.stringify(sheet.message);
  const { at: _at, ...rest } = sheet.message.view;
  return JSON.stringify(rest);
}
