import type { SlotId } from '../../shared/kernel/index.ts';
import type { Question, QuestionAnswer } from '../../shared/protocol/index.ts';
import { LinkLost } from '../../shared/protocol/index.ts';
import type {
  Intent,
  LoadDrawing,
  MoveOffer,
  Refusal,
  SmokerView,
} from '../../shared/view/index.ts';

/** How far the moving of a load has come: nothing is moved before it is taken. */
export type Move =
  | { readonly kind: 'none' }
  | { readonly kind: 'picked'; readonly load: LoadDrawing }
  | ({ readonly kind: 'asking' } & Asked)
  | ({ readonly kind: 'offered'; readonly offer: MoveOffer } & Asked)
  | ({ readonly kind: 'refused'; readonly refusal: Refusal } & Asked)
  | ({ readonly kind: 'unheard' } & Asked);

type Asked = { readonly load: LoadDrawing; readonly to: SlotId };

export type MoveFlowPorts = {
  readonly ask: (question: Question) => Promise<QuestionAnswer>;
  readonly tap: (intent: Intent) => void;
  readonly changed: () => void;
};

/**
 * A load is picked, a rack is asked about, the hub says what it would do, a person takes it or
 * leaves it.
 */
export class MoveFlow {
  readonly #ports: MoveFlowPorts;
  #move: Move = { kind: 'none' };
  #asked = 0;

  constructor(ports: MoveFlowPorts) {
    this.#ports = ports;
  }

  get move(): Move {
    return this.#move;
  }

  /** Picks a load; the same one once more lets go of it. */
  pick(load: LoadDrawing): void {
    const held = this.#move.kind === 'none' ? null : this.#move.load;
    const isHeld = held !== null && held.stay === load.stay && held.need === load.need;
    this.#become(isHeld ? { kind: 'none' } : { kind: 'picked', load });
  }

  /** Asks what it would do to put the picked load there. */
  async goal(to: SlotId): Promise<void> {
    if (this.#move.kind === 'none') return;
    const { load } = this.#move;
    this.#become({ kind: 'asking', load, to });
    const asked = this.#asked;
    const answered = await this.#answer(load, to);
    // Another question was put, or the load let go, while this one was under way.
    if (asked === this.#asked) this.#become(answered);
  }

  take(): void {
    if (this.#move.kind !== 'offered') return;
    const { moves, basedOnSeq } = this.#move.offer;
    const slots = moves.map(({ stay, need, to }) => ({ stay, need, to: to.id }));
    this.#ports.tap({ kind: 'moveSlots', moves: slots, basedOnSeq });
    this.#become({ kind: 'none' });
  }

  leave(): void {
    this.#become({ kind: 'none' });
  }

  /**
   * A new view: an offer made before the arrangement changed is asked for anew, a load that is off
   * is let go, one that is picked is shown as it now is.
   */
  see({ arrangedSeq, smokers }: Pick<SmokerView, 'arrangedSeq' | 'smokers'>): void {
    const move = this.#move;
    if (move.kind === 'none') return;
    const { stay, need } = move.load;
    const loads = smokers.flatMap(({ racks }) => racks.flatMap((rack) => rack.loads));
    const shown = loads.find((load) => load.stay === stay && load.need === need);
    if (!shown) this.leave();
    // What is foreseen of it, or read, is as new as the racks show it.
    else if (move.kind === 'picked') this.#move = { kind: 'picked', load: shown };
    else if (move.kind === 'offered' && move.offer.basedOnSeq < arrangedSeq)
      void this.goal(move.to);
  }

  async #answer(load: LoadDrawing, to: SlotId): Promise<Move> {
    const { stay, need } = load;
    try {
      const answer = await this.#ports.ask({ kind: 'ifMoved', stay, need, to });
      return answer.ok
        ? { kind: 'offered', load, to, offer: answer.offer }
        : { kind: 'refused', load, to, refusal: answer.refusal };
    } catch (fault) {
      if (fault instanceof LinkLost) return { kind: 'unheard', load, to };
      throw fault;
    }
  }

  #become(move: Move): void {
    this.#asked += 1;
    this.#move = move;
    this.#ports.changed();
  }
}
