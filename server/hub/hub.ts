import { type Instant, instant, type ScreenId } from '../../shared/kernel/index.ts';
import type {
  Answer,
  CommandMessage,
  ReadOnly,
  ScreenLink,
  ScreenLinkListener,
} from '../../shared/protocol/index.ts';
import type { View } from '../../shared/view/index.ts';
import type { Clock } from '../clock.ts';
import { guarded, type Report } from '../report.ts';
import type { Broken, EventLog, Mark } from '../store/index.ts';
import { acceptLink, lookIn } from './accept.ts';
import { type Ask, askOf, askToKeep, type Brought } from './ask.ts';
import { type Book, openBook, type Start } from './book.ts';
import { createDesk } from './desk.ts';
import { type Attending, createGuests } from './guests.ts';
import { ofDays } from './of-day.ts';
import type { Asker, DayRules, Kept, RunningDay } from './rules.ts';
import { createStage } from './stage.ts';
import { Walls } from './walls.ts';

/** How often the expected times are brought up to the clock. */
const TICK_MS = 5_000;

/**
 * One kitchen's hub: it decides, keeps, and tells. What carries its words is none of its business.
 */
export type Hub<State> = {
  /** The day as kept so far. */
  readonly state: State;
  readonly health: Health;
  /** The day with its expected times, as it runs; to be looked at in the same turn. */
  readonly running: RunningDay<State>;
  /** Takes a screen in; it is shown its face at once. */
  accept(link: ScreenLink): ScreenLinkListener;
  /** What a screen may see of its face just now, without being linked; null where it is nothing. */
  look(asker: Asker): View | null;
  /** A command that came over no link. */
  command(command: CommandMessage): Promise<Answer>;
  bring(brought: Brought): Promise<Answer>;
  /** Tells whenever something was kept; it must not throw, nor take long. */
  heed(listen: () => void): void;
  /** From now on tells of each screen that comes and goes. */
  attend(attending: Attending): void;
  /** When the last entry was kept that was there at the opening; null where none was. */
  readonly openedAt: Instant | null;
  /** Entries up to here were not read at the opening; null where all were. */
  readonly openedFrom: Mark | null;
  /** What was found of the log since: now nothing more is kept, and every screen says so. */
  damaged(broken: Broken): void;
  /** Anything else that is to be decided on the day as it then is. */
  put(ask: Ask<State>): Promise<Answer>;
  /** Those linked now. */
  readonly screens: ReadonlySet<ScreenId>;
  /** Resolves when all that was asked so far is kept and answered. */
  rest(): Promise<void>;
  /** Lets what is under way be kept, then lets the screens and the log go. */
  close(): Promise<void>;
};

export type Health = {
  readonly epoch: string;
  readonly seq: number;
  readonly screens: number;
  readonly readOnly: ReadOnly | null;
};

export type HubParts<State> = {
  readonly log: EventLog;
  readonly rules: DayRules<State>;
  readonly clock: Clock;
  /** Never used before for this log. */
  readonly epoch: string;
  readonly report: Report;
  /** What the log comes to up to some entry; left out: it is read from its first. */
  readonly start?: Start<State> | null;
  /** Told of every event once, in order: those read at the opening, and each that is kept. */
  readonly witness?: (kept: Kept<State>) => void;
};

/** Opens the log, folds the day, and goes on from there. */
export async function openHub<State>(parts: HubParts<State>): Promise<Hub<State>> {
  const { log, rules, clock, epoch, report, witness = () => {} } = parts;
  const see = (kept: Kept<State>) => guarded(report, 'a witness stumbled', () => witness(kept));
  const listeners: (() => void)[] = [];
  const book: Book<State> = await openBook({
    ...parts,
    onRead: see,
    onKept: (kept) => {
      kept.forEach(see);
      stage.take(kept);
      guests.lookAgain();
      walls.showAll();
      for (const listen of listeners) guarded(report, 'a listener stumbled', listen);
    },
  });
  const { of, isOurs } = ofDays(book, rules);
  const now = steady(clock, book.openedAt, report);
  const stage = createStage({ rules, state: () => book.state, now, report });
  const running = () => stage.running;
  const walls = new Walls({
    epoch,
    seq: () => book.seq,
    of,
    now,
    show: stage.show,
    soon: (run) => clock.after(0, run),
    report,
  });
  const guests = createGuests({
    mayShow: (hello) => rules.mayShow(book.state, hello),
    placeOf: ({ screenId }) => rules.placeOf(book.state, screenId),
    turnAway: (link, refusal) => link.blank({ epoch, seq: book.seq, of: of(), refusal }),
    report,
  });
  const stopTicking = clock.every(TICK_MS, () => {
    if (stage.tick()) walls.showChanged();
  });
  const keeping = { book, clock, now, report };
  const desk = createDesk({ ...keeping, onReadOnly: (readOnly) => walls.tellAll(readOnly) });
  const tell = () => ({ seq: book.seq, speed: clock.speed });
  const reception = { rules, stage, walls, guests, desk, isOurs, now, tell, report };
  return {
    get state() {
      return book.state;
    },
    get health() {
      return { epoch, seq: book.seq, screens: walls.count, readOnly: desk.readOnly };
    },
    get running() {
      return running();
    },
    accept: (link) => acceptLink(link, reception),
    look: (asker) => lookIn(asker, book.state, reception),
    command: (command) => desk.put(askOf(command, { rules, asker: null, running })),
    bring: (brought) => desk.put(askToKeep(brought)),
    heed: (listen) => void listeners.push(listen),
    attend: guests.attend,
    openedAt: book.openedAt,
    openedFrom: book.openedFrom,
    damaged: desk.damaged,
    put: desk.put,
    get screens() {
      return guests.screens;
    },
    rest: desk.idle,
    async close() {
      stopTicking();
      await desk.idle();
      walls.closeAll();
      await log.close();
    },
  };
}

/**
 * The clock's time, but never earlier than it was before: not after the machine's clock was set
 * back, nor last time.
 */
function steady(clock: Clock, notBefore: Instant | null, report: Report): () => Instant {
  if (notBefore !== null && notBefore > clock.now()) {
    const last = new Date(notBefore).toISOString();
    report({ level: 'warning', what: 'the log is ahead of this machine’s clock', last });
  }
  let latest = notBefore ?? instant(0);
  return () => {
    latest = instant(Math.max(latest, clock.now()));
    return latest;
  };
}
