import { type ManualClock, manualClock } from '../../../server/clock.ts';
import { type Hub, openHub } from '../../../server/hub/index.ts';
import type { ReportLine } from '../../../server/report.ts';
import { type EventLog, type MemoryDisk, openMemoryLog } from '../../../server/store/index.ts';
import {
  type CommandId,
  type Instant,
  instant,
  type ScreenId,
  type StationId,
} from '../../../shared/kernel/index.ts';
import {
  type Blank,
  type CommandMessage,
  PROTOCOL,
  type ReadOnly,
  type ScreenLink,
  type ViewMessage,
  type Wanted,
} from '../../../shared/protocol/index.ts';
import type { Face } from '../../../shared/view/index.ts';
import { type NoteDay, noteRules } from './note-day.ts';

export const START = instant(Date.UTC(2026, 10, 25, 7));

export type Setting = {
  readonly hub: Hub<NoteDay>;
  readonly clock: ManualClock;
  readonly reports: ReportLine[];
};

let epochs = 0;

/** A hub of notes on a disk in memory, with a clock in our hand. */
export async function openNotes(
  disk: MemoryDisk,
  { at = START, log = openMemoryLog(disk) as EventLog } = {},
): Promise<Setting> {
  const clock = manualClock(at);
  const reports: ReportLine[] = [];
  epochs += 1;
  const hub = await openHub({
    log,
    rules: noteRules,
    clock,
    epoch: `epoch-${epochs}`,
    report: (line) => reports.push(line),
  });
  return { hub, clock, reports };
}

/** Lets everything that waits on promises or on the end of the turn happen, at one instant. */
export async function settle(clock: ManualClock) {
  for (let turn = 0; turn < 10; turn++) {
    clock.advance(0);
    await new Promise(setImmediate);
  }
}

export type SeenLink = ScreenLink & {
  readonly views: ViewMessage[];
  readonly blanks: Blank[];
  readonly readOnlys: ReadOnly[];
  readonly wanteds: Wanted[];
  isClosed: boolean;
};

/** A link that writes down what it was told. */
export function seenLink(face: Face = trim, name = 'screen-1'): SeenLink {
  const link: SeenLink = {
    hello: { protocol: PROTOCOL, screenId: name as ScreenId, face },
    views: [],
    blanks: [],
    readOnlys: [],
    wanteds: [],
    isClosed: false,
    view: (message) => link.views.push(message),
    blank: (message) => link.blanks.push(message),
    reload: () => {},
    readOnly: (message) => link.readOnlys.push(message),
    wanted: (message) => link.wanteds.push(message),
    close: () => {
      link.isClosed = true;
    },
  };
  return link;
}

export const station = (name: string): Face => ({ kind: 'station', station: name as StationId });
export const trim = station('trim');

let commands = 0;

export function noteCommand(
  text: string,
  { id = `note-${++commands}`, tappedAt = START as Instant } = {},
): CommandMessage {
  return {
    kind: 'note',
    id: id as CommandId,
    personId: null,
    screenId: null,
    tappedAt,
    text,
    task: null,
  };
}
