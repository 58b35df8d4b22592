import { tzOffset } from '@date-fns/tz';
import { meant } from './fault.ts';
import type { Instant } from './instant.ts';
import { instant } from './instant.ts';

/** A calendar day as the kitchen's wall shows it, `2026-11-25`. */
export type LocalDay = string;
/**
 * A wall-clock time, `17:00`. Hours from 24 up mean the next day: `26:30` is half past two at
 * night.
 */
export type WallTime = string;

/**
 * What the wall clock of `zone` shows at `at`.
 * @example wallTime(instant(0), 'UTC') //=> { day: '1970-01-01', time: '00:00' }
 */
export function wallTime(at: Instant, zone: string): { day: LocalDay; time: WallTime } {
  const asUtc = new Date(at + offsetMs(at, zone)).toISOString();
  return { day: asUtc.slice(0, 10), time: asUtc.slice(11, 16) };
}

/**
 * Whether the time-zone table knows `zone` as a place. An abbreviation is none: "EST" never has
 * summer time.
 */
export function isZone(zone: string): boolean {
  return (zone.includes('/') || zone === 'UTC') && Number.isFinite(offsetMs(0, zone));
}

/** The zone that was likely meant: of a city by its name alone, or the one spelt most like it. */
export function nearestZone(written: string): string | undefined {
  const zones = Intl.supportedValuesOf('timeZone');
  const city = written.trim().toLowerCase().replace(/ /g, '_');
  return zones.find((zone) => zone.toLowerCase().endsWith(`/${city}`)) ?? meant(written, zones);
}

const dayMs = 86_400_000;

/** A stretch of time in which the clock of a zone is not changed, and by how much it is ahead. */
export type SteadyClock = {
  readonly zone: string;
  readonly fromAt: Instant;
  readonly toAt: Instant;
  readonly aheadMs: number;
};

const STEADY_BEFORE_MS = dayMs;
const STEADY_AFTER_MS = 3 * dayMs;

/**
 * The clock of `zone` from a day before `at` to three days after; null where it is changed
 * meanwhile. Looked at every half day: no clock is changed there and back within that.
 */
export function steadyClock(zone: string, at: Instant): SteadyClock | null {
  const [fromAt, toAt] = [instant(at - STEADY_BEFORE_MS), instant(at + STEADY_AFTER_MS)];
  const aheadMs = offsetMs(at, zone);
  for (let seen: number = fromAt; seen <= toAt; seen += dayMs / 2) {
    if (offsetMs(seen, zone) !== aheadMs) return null;
  }
  return { zone, fromAt, toAt, aheadMs };
}

const recalled = new Map<string, SteadyClock>();

/**
 * Takes a clock's word for what the time-zone table would say. To read the table for the first time
 * takes a browser longer than to draw a wall.
 */
export function recallClock(clock: SteadyClock): void {
  recalled.set(clock.zone, clock);
}

/** By how much the clock of `zone` is ahead. */
export function offsetMs(at: number, zone: string): number {
  const clock = recalled.get(zone);
  if (clock && at >= clock.fromAt && at < clock.toAt) return clock.aheadMs;
  return tzOffset(zone, new Date(at)) * 60_000;
}
