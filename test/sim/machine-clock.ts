import type { Clock } from '../../server/clock.ts';
import { instant } from '../../shared/kernel/index.ts';
import type { Agenda } from './agenda.ts';
import { BEGINNING_MS } from './device-clock.ts';
import type { Life } from './life.ts';

/**
 * The clock of the hub's machine, which outlives its processes. All others are held to it, but
 * somebody may set it.
 */
export class MachineClock {
  readonly #agenda: Agenda;
  #setByMs = 0;

  constructor(agenda: Agenda) {
    this.#agenda = agenda;
  }

  nowMs(): number {
    return BEGINNING_MS + this.#agenda.nowMs + this.#setByMs;
  }

  setBy(ms: number): void {
    this.#setByMs += ms;
  }

  /** As one process sees it: its timers end with it. */
  forProcess(life: Life): Clock {
    const agenda = this.#agenda;
    return {
      now: () => instant(Math.round(this.nowMs())),
      after: (delayMs, run) => agenda.after(delayMs, life.guard(run)),
      every(periodMs, run) {
        let callOff = () => {};
        const again = () => {
          callOff = agenda.after(
            periodMs,
            life.guard(() => {
              again();
              run();
            }),
          );
        };
        again();
        return () => callOff();
      },
    };
  }
}
