import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { RecordShown } from '../../shared/protocol/index.ts';
import type { CheckView, DeskView, Refusal } from '../../shared/view/index.ts';
import { recordDeskWords, sayRefusal } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import type { Sync } from '../sync/index.ts';
import { base } from '../theme/index.ts';
import './record-days.ts';
import { keepFile } from './keep-file.ts';
import { type RecordDoors, recordDoors } from './record-doors.ts';
import './record-lots.ts';
import './record-receive.ts';
import './record-trace.ts';
import './record-trim.ts';

const cameTooWarm = ({ on, failed }: CheckView) => on.kind === 'receiving' && failed !== null;

/** Lots as they come and go, where one went, and the days as they are on record. */
@customElement('desk-record')
export class DeskRecord extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: grid;
        grid-template-columns: repeat(auto-fit, minmax(min(100%, 27em), 1fr));
        gap: 0 calc(2 * var(--edge));
        padding: 0 var(--edge) var(--edge);
        align-items: start;
      }
      .wrong {
        grid-column: 1 / -1;
        padding: var(--gap) 0;
        font-weight: 800;
        border-bottom: var(--heavy) solid var(--ink);
      }
    `,
  ];

  @property({ attribute: false }) sync!: Sync;
  @property({ attribute: false }) view!: DeskView;
  @property({ attribute: false }) doors: RecordDoors = recordDoors();
  /** Whose way is to be shown at once, as by a label's code. */
  @property() lot: string | null = null;
  @state() private shown: RecordShown | null = null;
  @state() private wrong: Refusal | 'away' | null = null;

  /** The last thing that happened when it was last asked for. */
  #seenSeq = -1;
  #looks = 0;

  protected override willUpdate(): void {
    const seq = this.view.log[0]?.seq ?? 0;
    if (seq === this.#seenSeq) return;
    this.#seenSeq = seq;
    void this.#look();
  }

  protected override draw() {
    const { say, shown, sync, doors, view } = this;
    return html`${this.#fault()}
      ${
        shown
          ? html`<div>
              <record-receive
                .say=${say}
                .cuts=${shown.cuts}
                .now=${() => sync.hubNow()}
                .broken=${view.checks.filter(cameTooWarm)}
                ?closed=${view.closed !== null}
                @came=${({ detail }: CustomEvent) => void sync.tap({ kind: 'receive', ...detail })}
              ></record-receive>
              <record-lots
                .say=${say}
                .shown=${shown}
                ?closed=${view.closed !== null}
                @cut-from=${({ detail }: CustomEvent) =>
                  void sync.tap({ kind: 'cutFrom', ...detail })}
                @label=${({ detail }: CustomEvent<string>) => void this.#print(detail)}
              ></record-lots>
              <record-trim
                .say=${say}
                .trim=${shown.trim}
                ?closed=${view.closed !== null}
                @weighed=${({ detail }: CustomEvent) =>
                  void sync.tap({ kind: 'weighTub', ...detail })}
              ></record-trim>
            </div>
            <div>
              <record-trace
                .say=${say}
                .doors=${doors}
                .lots=${shown.lots}
                .lot=${this.lot}
                .now=${() => sync.hubNow()}
                @found=${({ detail }: CustomEvent<string>) =>
                  void sync.tap({ kind: 'note', text: detail, task: null })}
              ></record-trace>
              <record-days .say=${say} .doors=${doors} .shown=${shown}></record-days>
            </div>`
          : nothing
      }`;
  }

  #fault() {
    const { say, wrong } = this;
    if (wrong === null) return nothing;
    const said = wrong === 'away' ? recordDeskWords[say.language].hubAway : sayRefusal(wrong, say);
    return html`<p class="wrong" role="alert">${said}</p>`;
  }

  /** A lot is found under the day on which it came, a batch under today. */
  async #print(only: string): Promise<void> {
    const day = /^(\d{4}-\d\d-\d\d)-\d+$/.exec(only)?.[1] ?? this.view.day;
    const { language } = this.say;
    const asked = {
      as: 'labels',
      from: day,
      to: day,
      language,
      only,
      at: location.origin,
    } as const;
    try {
      const answer = await this.doors.sheet(asked);
      this.wrong = answer.ok ? null : answer.refusal;
      if (answer.ok) keepFile(answer);
    } catch {
      this.wrong = 'away';
    }
  }

  /** Answers may overtake each other: what was asked for last is what stands there. */
  async #look(): Promise<void> {
    this.#looks += 1;
    const look = this.#looks;
    const answer = await this.doors.show().catch(() => 'away' as const);
    if (look !== this.#looks) return;
    if (answer !== 'away' && answer.ok) this.shown = answer;
    this.wrong = answer === 'away' ? 'away' : answer.ok ? null : answer.refusal;
  }
}
