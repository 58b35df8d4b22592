import { canonical, type Instant } from '../../shared/kernel/index.ts';
import type { Blank, ReadOnly, ScreenLink, ViewMessage } from '../../shared/protocol/index.ts';
import type { Face } from '../../shared/view/index.ts';
import { guarded, type Report } from '../report.ts';
import type { Shown } from './rules.ts';

/** The screens that are linked, by what they show. A face is worked out once, however many show it. */
export type Walls = {
  readonly count: number;
  join(link: ScreenLink): void;
  leave(link: ScreenLink): void;
  /** What one screen is to show now, sent to it alone. */
  showTo(link: ScreenLink): void;
  /** Something happened: every screen gets a new view. */
  showAll(): void;
  /** Time went by: those whose view is another now get it. */
  showChanged(): void;
  tellAll(readOnly: ReadOnly): void;
  closeAll(): void;
};

export type WallParts = {
  readonly epoch: string;
  readonly seq: () => number;
  readonly now: () => Instant;
  readonly show: (face: Face, now: Instant) => Shown;
  readonly report: Report;
};

/** What a face was last sent. */
type Sheet =
  | { readonly kind: 'view'; readonly message: ViewMessage }
  | { readonly kind: 'blank'; readonly message: Blank };

type Room = { readonly face: Face; readonly links: Set<ScreenLink>; sheet: Sheet | null };

export function createWalls({ epoch, seq, now, show, report }: WallParts): Walls {
  const rooms = new Map<string, Room>();
  const all = () => [...rooms.values()].flatMap(({ links }) => [...links]);

  function roomOf(face: Face): Room {
    const key = canonical(face);
    const room = rooms.get(key) ?? { face, links: new Set(), sheet: null };
    rooms.set(key, room);
    return room;
  }

  function draw(face: Face): Sheet {
    const shown = show(face, now());
    return shown.ok
      ? { kind: 'view', message: { epoch, seq: seq(), view: shown.view } }
      : { kind: 'blank', message: { epoch, seq: seq(), refusal: shown.refusal } };
  }

  function send(link: ScreenLink, sheet: Sheet) {
    guarded(report, `a view could not be sent to ${link.hello.screenId}`, () => {
      if (sheet.kind === 'view') link.view(sheet.message);
      else link.blank(sheet.message);
    });
  }

  function eachRoom(run: (room: Room) => void) {
    for (const room of rooms.values()) {
      guarded(report, `a face could not be drawn: ${canonical(room.face)}`, () => run(room));
    }
  }

  function redraw(room: Room, isWanted: (next: Sheet) => boolean) {
    const sheet = draw(room.face);
    if (!isWanted(sheet)) return;
    room.sheet = sheet;
    for (const link of room.links) send(link, sheet);
  }

  return {
    get count() {
      return all().length;
    },
    join: (link) => {
      roomOf(link.hello.face).links.add(link);
    },
    leave: (link) => {
      const room = roomOf(link.hello.face);
      room.links.delete(link);
      if (room.links.size === 0) rooms.delete(canonical(room.face));
    },
    showTo: (link) => {
      const room = roomOf(link.hello.face);
      room.sheet ??= draw(room.face);
      send(link, room.sheet);
    },
    showAll: () => eachRoom((room) => redraw(room, () => true)),
    showChanged: () =>
      eachRoom((room) =>
        redraw(room, (next) => room.sheet === null || inkOf(next) !== inkOf(room.sheet)),
      ),
    tellAll: (readOnly) => {
      for (const link of all()) {
        guarded(report, 'a screen could not be told', () => link.readOnly(readOnly));
      }
    },
    closeAll: () => {
      for (const link of all()) {
        guarded(report, 'a link could not be closed', () => link.close());
      }
    },
  };
}

/** All that a screen would draw: everything but the moment it was worked out. */
function inkOf(sheet: Sheet): string {
  if (sheet.kind === 'blank') return JSON.stringify(sheet.message);
  const { at: _at, ...rest } = sheet.message.view;
  return JSON.stringify(rest);
}
