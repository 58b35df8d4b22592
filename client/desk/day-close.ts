import { css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { BatchId, Kilograms, PersonId } from '../../shared/kernel/index.ts';
import type { DayEnd, DeskView, Drawn, PanEnd } from '../../shared/view/index.ts';
import { closingWords, sayClosed, sayStillOpen, textIn } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { JustDone } from '../shell/just-done.ts';
import { readSettings } from '../shell/settings.ts';
import { type WhoDoors, whoDoors } from '../shell/who-doors.ts';
import type { Sync } from '../sync/index.ts';
import { base } from '../theme/index.ts';
import './pan-end.ts';
import './who-closes.ts';

/** The doors of the hub this page came from, with this device's own token. */
const ownDoors = () => whoDoors(readSettings(new URLSearchParams()).token);

/** The end of the day: what is left and where it goes, what stands open, and who closes it. */
@customElement('day-close')
export class DayClose extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: grid;
        grid-template-columns: repeat(auto-fit, minmax(min(100%, 26em), 1fr));
        gap: 0 calc(2 * var(--edge));
        padding: 0 var(--edge) var(--edge);
        align-items: start;
      }
      h2 {
        font-weight: 800;
        padding: 0.4em 0 0.2em;
        border-bottom: var(--line) solid var(--ink);
      }
      ul {
        padding: 0.4em 0;
      }
      li {
        padding: 0.15em 0;
        font-weight: 600;
      }
      /* What is asked stays in sight however much is left. */
      .closing {
        position: sticky;
        top: 0;
      }
      .closed {
        font-weight: 800;
        padding: 0.4em 0;
      }
    `,
  ];

  @property({ attribute: false }) sync!: Sync;
  @property({ attribute: false }) view!: DeskView;
  @property({ attribute: false }) marks: Drawn['marks'] = new Map();
  @property({ attribute: false }) doors: WhoDoors = ownDoors();

  readonly #justDone = new JustDone(() => this.requestUpdate());

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#justDone.stop();
  }

  protected override draw() {
    const { closed } = this.view;
    const words = closingWords[this.say.language];
    return html`<section aria-label=${words.left}>
        <h2>${words.left}</h2>
        ${this.#dishes(this.view.end)}
      </section>
      <section class="closing" aria-label=${words.closing}>
        <h2>${words.closing}</h2>
        ${this.#open(this.view)} ${closed ? this.#back(closed) : this.#closers()}
      </section>`;
  }

  #dishes({ dishes }: DayEnd) {
    const { say } = this;
    if (dishes.length === 0) return html`<p>${closingWords[say.language].nothingLeft}</p>`;
    return repeat(
      dishes,
      ({ dish }) => dish,
      ({ name, pans }) =>
        html`<div role="group" aria-label=${textIn(name, say)}>
          ${repeat(
            pans,
            ({ batch }) => batch,
            (pan) => this.#pan(pan),
          )}
        </div>`,
    );
  }

  #pan(pan: PanEnd) {
    const { batch } = pan;
    const undo = () => {
      const back = this.#justDone.take(batch);
      if (back) this.sync.tap(back);
    };
    return html`<pan-end
      .say=${this.say}
      .pan=${pan}
      .now=${this.sync.hubNow()}
      .mark=${this.marks.get(batch) ?? null}
      ?closed=${this.view.closed !== null}
      ?undoable=${this.#justDone.has(batch)}
      @carry=${({ detail }: CustomEvent<Kilograms>) => this.#carry(batch, detail)}
      @undo=${undo}
    ></pan-end>`;
  }

  #carry(batch: BatchId, weightKg: Kilograms): void {
    const { id } = this.sync.tap({ kind: 'carryOver', batch, weightKg });
    this.#justDone.did(batch, { kind: 'undo', command: id });
  }

  #open({ end, people }: DeskView) {
    return html`<ul>
      ${sayStillOpen(end, people, this.say).map((sentence) => html`<li>${sentence}</li>`)}
    </ul>`;
  }

  #closers() {
    const close = ({ detail: person }: CustomEvent<PersonId>) =>
      this.sync.tap({ kind: 'closeDay' }, person);
    return html`<who-closes
      .say=${this.say}
      .doors=${this.doors}
      .people=${this.view.people}
      @close-day=${close}
    ></who-closes>`;
  }

  #back(closed: NonNullable<DeskView['closed']>) {
    const { say } = this;
    const { openAgain } = closingWords[say.language];
    const undo = () => void this.sync.tap({ kind: 'undo', command: closed.command });
    return html`<p class="closed">${sayClosed(closed, say)}</p>
      <choice-strip
        .say=${say}
        .name=${openAgain}
        .choices=${[{ label: openAgain, choose: undo }]}
      ></choice-strip>`;
  }
}
