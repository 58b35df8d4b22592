import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { BatchId, Kilograms, PersonId } from '../../shared/kernel/index.ts';
import type { DeskView, Drawn, PanEnd } from '../../shared/view/index.ts';
import { leftByService } from '../../shared/view/index.ts';
import {
  clockTime,
  closingWords,
  sayAllTheSame,
  sayClosed,
  sayStillOpen,
  sayToSettle,
  textIn,
} from '../../shared/words/index.ts';
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
        display: block;
        padding: 0 var(--edge) var(--edge);
        container-type: inline-size;
      }
      .page {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: 0 calc(2 * var(--edge));
        align-items: start;
      }
      .first {
        grid-column: 1 / -1;
        padding-top: var(--gap);
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: 0 1em;
        min-height: var(--touch);
        font-weight: 700;
      }
      .first p {
        flex: 1 1 12em;
      }
      .first button {
        padding: 0 0.6em;
        border: var(--line) solid var(--ink);
        font-weight: 700;
      }
      h2 {
        font-weight: 800;
        padding: 0.4em 0 0.2em;
        border-bottom: var(--line) solid var(--ink);
      }
      section + section h2 {
        padding-top: 1em;
      }
      .open {
        padding: 0.4em 0;
        font-weight: 600;
      }
      .open > li {
        padding: 0.15em 0;
      }
      summary {
        min-height: var(--touch);
        cursor: pointer;
      }
      details li {
        padding: 0.1em 0 0.1em 1.2em;
      }
      /* What is asked stays in sight however much is left. */
      .closing {
        position: sticky;
        top: 0;
      }
      .closed,
      .none {
        font-weight: 800;
        padding: 0.4em 0;
      }
      .none {
        font-weight: 600;
      }
      /* Beside the rows it needs no way to it. */
      @container (width >= 54em) {
        .page {
          grid-template-columns: repeat(2, minmax(0, 1fr));
        }
        .first button {
          display: none;
        }
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
    const { closed, end } = this.view;
    const words = closingWords[this.say.language];
    return html`<div class="page">
      ${closed ? nothing : this.#first(this.view)}
      <div>${leftByService(end, this.sync.hubNow()).map((group) => this.#group(group))}</div>
      <section class="closing" aria-label=${words.closing}>
        <h2 tabindex="-1">${words.closing}</h2>
        ${this.#open(this.view)} ${closed ? this.#back(closed) : this.#closers()}
      </section>
    </div>`;
  }

  #first({ end, people }: DeskView) {
    const { say } = this;
    return html`<div class="first">
      <p>${sayToSettle(end, people, this.sync.hubNow(), say)}</p>
      <button @click=${this.#goTo}>${closingWords[say.language].closing}</button>
    </div>`;
  }

  readonly #goTo = (): void => {
    const heading = this.renderRoot.querySelector<HTMLElement>('.closing h2');
    heading?.scrollIntoView({ block: 'start' });
    heading?.focus({ preventScroll: true });
  };

  #group({ service, dishes }: ReturnType<typeof leftByService>[number]) {
    const { say } = this;
    const words = closingWords[say.language];
    const heading = service
      ? words.stillOn(textIn(service.name, say), clockTime(service.closesAt, say))
      : words.left;
    return html`<section aria-label=${heading}>
      <h2>${heading}</h2>
      ${dishes.length === 0 ? html`<p class="none">${words.nothingLeft}</p>` : nothing}
      ${repeat(
        dishes,
        ({ dish }) => dish,
        ({ name, pans }) =>
          html`<div role="group" aria-label=${textIn(name, say)}>
            ${repeat(
              pans,
              ({ batch }) => batch,
              (pan) => this.#pan(pan, service !== null),
            )}
          </div>`,
      )}
    </section>`;
  }

  #pan(pan: PanEnd, isOn: boolean) {
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
      ?on=${isOn}
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
    const still = sayStillOpen(end, people, this.say);
    return html`<ul class="open">
      ${still.map(({ said, all }) =>
        all === null
          ? html`<li>${said}</li>`
          : html`<li>
              <details>
                <summary>${said}</summary>
                <ul>
                  ${all.map((name) => html`<li>${name}</li>`)}
                </ul>
              </details>
            </li>`,
      )}
    </ul>`;
  }

  #closers() {
    const close = ({ detail: person }: CustomEvent<PersonId>) =>
      this.sync.tap({ kind: 'closeDay' }, person);
    return html`<who-closes
      .say=${this.say}
      .doors=${this.doors}
      .people=${this.view.people}
      .question=${() => sayAllTheSame(this.view.standings, this.sync.hubNow(), this.say)}
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
