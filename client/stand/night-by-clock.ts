import { groundAtHour, layGround } from '../theme/index.ts';

const LOOK_EVERY_MS = 60_000;

type Kitchen = {
  /** UTC milliseconds by the hub's clock. */
  readonly nowMs: () => number;
  /** The kitchen's own; null before it is known. */
  readonly zone: () => string | null;
};

/** Lays paper by day and char by night, by the kitchen's clock and not the device's. */
export function nightByClock({ nowMs, zone }: Kitchen): void {
  let known: string | null = null;
  let hourIn: Intl.DateTimeFormat | null = null;
  const look = () => {
    const now = zone();
    if (now === null) return;
    if (now !== known || !hourIn) {
      known = now;
      hourIn = new Intl.DateTimeFormat('en', { hour: 'numeric', hourCycle: 'h23', timeZone: now });
    }
    layGround(groundAtHour(Number(hourIn.format(nowMs()))));
  };
  setInterval(look, LOOK_EVERY_MS);
  look();
}
