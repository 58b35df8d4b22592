import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import { type Instant, instant } from '../shared/kernel/index.ts';
import { type Clock, systemClock } from './clock.ts';

const FILE = 'clock.json';

/**
 * From `realMs` on, when it showed `shownMs`, the clock runs `speed` times as fast as the world.
 */
const anchorSchema = z.strictObject({ realMs: z.int(), shownMs: z.int(), speed: z.number() });
type Anchor = z.infer<typeof anchorSchema>;

/**
 * The clock of a folder. One that once ran fast goes on from where it would be by now, also while
 * no hub was running, so that the times in its log never lie ahead of it.
 */
export function keptClock(folder: string, speed: number, real: () => number = Date.now): Clock {
  const file = join(folder, FILE);
  const before = readAnchor(file);
  if (before === null && speed === 1) return systemClock();
  const shownMs = before === null ? real() : shownBy(before, real());
  const anchor: Anchor = { realMs: real(), shownMs, speed };
  if (before?.speed !== speed) writeFileSync(file, `${JSON.stringify(anchor)}\n`);
  const now = (): Instant => instant(shownBy(anchor, real()));
  return { ...systemClock(speed), now };
}

/** Has the clock of a folder show something else than it is, from now on. */
export function setKeptClock(folder: string, shown: Instant): void {
  const anchor: Anchor = { realMs: Date.now(), shownMs: shown, speed: 1 };
  writeFileSync(join(folder, FILE), `${JSON.stringify(anchor)}\n`);
}

const shownBy = ({ realMs, shownMs, speed }: Anchor, nowMs: number) =>
  Math.round(shownMs + (nowMs - realMs) * speed);

function readAnchor(file: string): Anchor | null {
  try {
    return anchorSchema.parse(JSON.parse(readFileSync(file, 'utf8')));
  } catch {
    return null;
  }
}
