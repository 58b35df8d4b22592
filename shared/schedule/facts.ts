import { UNBOUND } from './live-net.ts';
import { at } from './network.ts';

/** Where an activity is in its life. */
export const WAITING = 0;
export const RUNNING = 1;
export const DONE = 2;

/** What has happened, and what is now known of lengths; the projection is a function of these. */
export class Facts {
  readonly stage: Uint8Array;
  readonly startS: Int32Array;
  readonly endS: Int32Array;
  readonly minS: Int32Array;
  readonly maxS: Int32Array;
  /** Its finish was told without its start. */
  readonly unseen: Uint8Array;
  /** So long what waits is held, whatever asks it to start; `UNBOUND` where it is not. */
  readonly heldS: Int32Array;
  nowS: number;

  constructor(minS: Int32Array, maxS: Int32Array, nowS: number) {
    const size = minS.length;
    this.stage = new Uint8Array(size);
    this.startS = new Int32Array(size);
    this.endS = new Int32Array(size);
    this.unseen = new Uint8Array(size);
    this.heldS = new Int32Array(size).fill(UNBOUND);
    this.minS = minS;
    this.maxS = maxS;
    this.nowS = nowS;
  }

  started(activity: number, atS: number): void {
    this.startS[activity] = atS;
    this.unseen[activity] = 0;
    if (this.stage[activity] === DONE) {
      this.endS[activity] = Math.max(atS, at(this.endS, activity));
    } else this.stage[activity] = RUNNING;
  }

  /** `expectedS`: when it was expected to start; asked only where its start was never told. */
  finished(activity: number, atS: number, expectedS: () => number): void {
    if (this.stage[activity] === WAITING) {
      this.startS[activity] = Math.min(expectedS(), atS);
      this.unseen[activity] = 1;
    }
    this.endS[activity] = Math.max(at(this.startS, activity), atS);
    this.stage[activity] = DONE;
  }

  takenBack(activity: number): void {
    const wasRunning = this.stage[activity] === DONE && this.unseen[activity] === 0;
    this.unseen[activity] = 0;
    this.stage[activity] = wasRunning ? RUNNING : WAITING;
  }

  lengthIs(activity: number, totalS: number, isWork: boolean): void {
    this.minS[activity] = totalS;
    this.maxS[activity] = isWork ? totalS : Math.max(totalS, at(this.maxS, activity));
  }

  passedTo(nowS: number): void {
    this.nowS = Math.max(this.nowS, nowS);
  }

  /** Holds these until then and nothing else; answers with what is held otherwise than before. */
  hold(until: ReadonlyMap<number, number>): number[] {
    const changed: number[] = [];
    this.heldS.forEach((wasS, activity) => {
      const isS = until.get(activity) ?? UNBOUND;
      if (wasS !== isS) changed.push(activity);
      this.heldS[activity] = isS;
    });
    return changed;
  }

  copy(): Facts {
    const copy = new Facts(this.minS.slice(), this.maxS.slice(), this.nowS);
    copy.stage.set(this.stage);
    copy.startS.set(this.startS);
    copy.endS.set(this.endS);
    copy.unseen.set(this.unseen);
    copy.heldS.set(this.heldS);
    return copy;
  }
}
