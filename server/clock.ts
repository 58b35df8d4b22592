import { type Instant, instant } from '../shared/kernel/index.ts';

/**
 * The hub's time. All durations are in its own milliseconds, which a fast clock makes shorter than
 * the world's.
 */
export type Clock = {
  /** How many times as fast as the world it runs; once, where nothing is said. */
  readonly speed?: number;
  now(): Instant;
  /** Runs once after so long, or as soon as everything under way has had its turn. */
  after(delayMs: number, run: () => void): Stop;
  every(periodMs: number, run: () => void): Stop;
};

export type Stop = () => void;

/** However fast the clock runs, timers leave the machine this long between turns. */
const TURN_MIN_MS = 50;

/** The machine's clock, running `speed` times as fast from the moment it is made. */
export function systemClock(speed = 1): Clock {
  const madeAt = Date.now();
  return {
    speed,
    now: () => instant(Math.round(madeAt + (Date.now() - madeAt) * speed)),
    after(delayMs, run) {
      if (delayMs === 0) {
        const turn = setImmediate(run);
        return () => clearImmediate(turn);
      }
      const timer = setTimeout(run, delayMs / speed);
      return () => clearTimeout(timer);
    },
    every(periodMs, run) {
      const timer = setInterval(run, Math.max(periodMs / speed, TURN_MIN_MS));
      return () => clearInterval(timer);
    },
  };
}

/**
 * A clock that stands still until it is moved; what was asked of it then happens in order of time.
 */
export type ManualClock = Clock & {
  advance(byMs: number): void;
  /** Sets the time without running anything, as when somebody sets the machine's clock. */
  jump(to: Instant): void;
};

export function manualClock(start: Instant): ManualClock {
  type Timer = { dueMs: number; run: () => void; periodMs: number | null };
  let now: number = start;
  /** What timers are held to: it never jumps. */
  let elapsedMs = 0;
  const timers = new Set<Timer>();

  function add(timer: Timer): Stop {
    timers.add(timer);
    return () => timers.delete(timer);
  }

  function nextUntil(endMs: number): Timer | undefined {
    const due = [...timers].filter(({ dueMs }) => dueMs <= endMs);
    return due.sort((a, b) => a.dueMs - b.dueMs)[0];
  }

  return {
    now: () => instant(now),
    after: (delayMs, run) => add({ dueMs: elapsedMs + delayMs, run, periodMs: null }),
    every: (periodMs, run) => add({ dueMs: elapsedMs + periodMs, run, periodMs }),
    advance(byMs) {
      const endMs = elapsedMs + byMs;
      const moveTo = (ms: number) => {
        now += ms - elapsedMs;
        elapsedMs = ms;
      };
      for (let timer = nextUntil(endMs); timer; timer = nextUntil(endMs)) {
        moveTo(timer.dueMs);
        if (timer.periodMs === null) timers.delete(timer);
        else timer.dueMs += timer.periodMs;
        timer.run();
      }
      moveTo(endMs);
    },
    jump: (to) => {
      now = to;
    },
  };
}
