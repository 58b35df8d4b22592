import { type Instant, instant } from '../../shared/kernel/index.ts';
import type {
  Answer,
  BeatAnswer,
  CommandMessage,
  ReadOnly,
  ScreenLink,
  ScreenLinkListener,
} from '../../shared/protocol/index.ts';
import type { Clock } from '../clock.ts';
import { guarded, type Report } from '../report.ts';
import type { EventLog } from '../store/index.ts';
import { askOf, askToKeep, type Brought } from './ask.ts';
import { type Book, openBook } from './book.ts';
import { createDesk, type Desk } from './desk.ts';
import type { DayRules } from './rules.ts';
import { createStage, type Stage } from './stage.ts';
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
  /** Takes a screen in; it is shown its face at once. */
  accept(link: ScreenLink): ScreenLinkListener;
  /** A command that came over no link. */
  command(command: CommandMessage): Promise<Answer>;
  bring(brought: Brought): Promise<Answer>;
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
};

/** Opens the log, folds the day, and goes on from there. */
export async function openHub<State>(parts: HubParts<State>): Promise<Hub<State>> {
  const { log, rules, clock, epoch, report } = parts;
  const book: Book<State> = await openBook({
    ...parts,
    onKept: (kept) => {
      stage.take(kept);
      walls.showAll();
    },
  });
  const { openedAt } = book;
  const now = steady(clock, openedAt);
  if (openedAt !== null && openedAt > clock.now()) {
    const last = new Date(openedAt).toISOString();
    report({ level: 'warning', what: 'the log is ahead of this machine’s clock', last });
  }
  const stage = createStage({ rules, state: () => book.state, now, report });
  const running = () => stage.running;
  const walls = new Walls({
    epoch,
    seq: () => book.seq,
    now,
    show: stage.show,
    soon: (run) => clock.after(0, run),
    report,
  });
  const stopTicking = clock.every(TICK_MS, () => {
    if (stage.tick()) walls.showChanged();
  });
  const desk = createDesk({
    book,
    clock,
    now,
    onReadOnly: (readOnly) => walls.tellAll(readOnly),
    report,
  });
  const tell = () => ({ seq: book.seq, speed: clock.speed });
  return {
    get state() {
      return book.state;
    },
    get health() {
      return { epoch, seq: book.seq, screens: walls.count, readOnly: desk.readOnly };
    },
    accept: (link) => acceptLink(link, { rules, stage, walls, desk, now, tell, report }),
    command: (command) => desk.put(askOf(command, { rules, face: null, running })),
    bring: (brought) => desk.put(askToKeep(brought)),
    rest: desk.idle,
    async close() {
      stopTicking();
      await desk.idle();
      walls.closeAll();
      await log.close();
    },
  };
}

function acceptLink<State>(
  link: ScreenLink,
  {
    rules,
    stage,
    walls,
    desk,
    now,
    tell,
    report,
  }: {
    readonly rules: DayRules<State>;
    readonly stage: Stage<State>;
    readonly walls: Walls;
    readonly desk: Desk<State>;
    readonly now: () => Instant;
    /** What each beat brings besides the time. */
    readonly tell: () => Pick<BeatAnswer, 'seq' | 'speed'>;
    readonly report: Report;
  },
): ScreenLinkListener {
  const { face, screenId } = link.hello;
  const running = () => stage.running;
  const showTo = () =>
    guarded(report, `${screenId} could not be shown its face`, () => walls.showTo(link));
  walls.join(link);
  showTo();
  if (desk.readOnly) link.readOnly(desk.readOnly);
  return {
    // Which screen it is, the link knows; a message cannot say otherwise.
    command: (message) => desk.put(askOf({ ...message, screenId }, { rules, face, running })),
    question: stage.ifMoved,
    beat: () => {
      const t1 = now();
      return { ...tell(), t1, t2: now() };
    },
    whole: showTo,
    gone: () => walls.leave(link),
  };
}

/**
 * The clock's time, but never earlier than it was before: not after the machine's clock was set
 * back, nor last time.
 */
function steady(clock: Clock, notBefore: Instant | null): () => Instant {
  let latest = notBefore ?? instant(0);
  return () => {
    latest = instant(Math.max(latest, clock.now()));
    return latest;
  };
}
