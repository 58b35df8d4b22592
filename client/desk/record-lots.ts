import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { BatchId } from '../../shared/kernel/index.ts';
import type { LotShown, PullShown, RecordShown } from '../../shared/protocol/index.ts';
import { recordDeskWords, sayDay, textIn, weight } from '../../shared/words/index.ts';
import '../parts/choice-strip.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';
import { recordStyle } from './record-style.ts';

/**
 * What lies in the cooler, and what is cut from it. Tells `cut-from` with a batch and its lots, and
 * `label` with what a label is wanted of.
 */
@customElement('record-lots')
export class RecordLots extends Part {
  static override styles = [
    base,
    recordStyle,
    css`
      /* What it is over what is known of it; how much is left, and its label, beside both. */
      li.lot {
        display: grid;
        grid-template-columns: minmax(0, 1fr) auto auto;
      }
      .lot > .soft {
        grid-area: 2 / 1;
      }
      .lot > :is(.figure, button) {
        grid-row: 1 / 3;
      }
      @media (width < 600px) {
        li.lot {
          grid-template-columns: minmax(0, 1fr) auto;
        }
        .lot > .figure {
          grid-area: 3 / 1;
          text-align: left;
        }
        .lot > button {
          grid-row: 1 / 4;
        }
      }
    `,
  ];

  @property({ attribute: false }) shown!: RecordShown;
  @property({ type: Boolean }) closed = false;
  @state() private picked: BatchId | null = null;

  protected override draw() {
    const { say, shown } = this;
    const words = recordDeskWords[say.language];
    const { lots, pulls } = shown;
    return html`<h2>${words.lots}</h2>
      ${lots.length === 0 ? html`<p>${words.noLots}</p>` : nothing}
      <ul>
        ${fullFirst(lots).map((lot) => this.#lot(lot))}
      </ul>
      <h2>${words.pulls}</h2>
      ${pulls.length === 0 ? html`<p>${words.noPulls}</p>` : nothing}
      <ul>
        ${pulls.map((pull) => this.#pull(pull))}
      </ul>`;
  }

  #lot(lot: LotShown) {
    const { id, name, pieces, leftPieces, isSentBack, weightKg, supplier, useBy } = lot;
    const { say } = this;
    const words = recordDeskWords[say.language];
    const facts = [
      ...[words.cameIn(weight(weightKg, say)), supplier],
      ...(useBy === null ? [] : [`${words.useBy} ${sayDay(useBy, say)}`]),
    ];
    return html`<li class="lot">
      <span class="name">${id} · ${textIn(name, say)}</span>
      <span class="figure">
        ${isSentBack ? words.sentBack : words.left(leftPieces, pieces)}
      </span>
      <span class="soft">${facts.join(' · ')}</span>
      ${this.#label(id, textIn(name, say))}
    </li>`;
  }

  #pull(pull: PullShown) {
    const { say } = this;
    const words = recordDeskWords[say.language];
    const { batch, name, isBegun, lots } = pull;
    const from = lots
      .map(({ lot, pieces }) => `${lot ?? words.nobodyKnows} (${pieces})`)
      .join(', ');
    const pick = () => {
      this.picked = this.picked === batch ? null : batch;
    };
    return html`<li>
        <span class="name">${textIn(name, say)}</span>
        <span>${from}</span>
        ${isBegun ? nothing : html`<span class="soft">${words.toBe}</span>`}
        <button aria-expanded=${this.picked === batch} ?disabled=${this.closed} @click=${pick}>
          ${words.other}
        </button>
        ${isBegun ? this.#label(batch, textIn(name, say)) : nothing}
      </li>
      ${this.picked === batch ? html`<li>${this.#others(pull)}</li>` : nothing}`;
  }

  #label(of: string, name: string) {
    const { label } = recordDeskWords[this.say.language];
    return html`<button
      aria-label=${`${label}: ${of === name ? name : `${of}, ${name}`}`}
      @click=${() => this.tell('label', of)}
    >
      ${label}
    </button>`;
  }

  #others({ batch, name, cut }: PullShown) {
    const { say } = this;
    const words = recordDeskWords[say.language];
    const leave = () => {
      this.picked = null;
    };
    const lots = this.shown.lots.filter((lot) => lot.cut === cut && !lot.isSentBack);
    const choices = lots.map(({ id, leftPieces, pieces }) => ({
      label: `${id} · ${words.left(leftPieces, pieces)}`,
      choose: () => {
        this.tell('cut-from', { batch, lots: [id] });
        leave();
      },
    }));
    const stay = { label: this.words.leaveIt, choose: leave, leaves: true };
    return html`<choice-strip
      .say=${say}
      .name=${`${words.pulls}: ${textIn(name, say)}`}
      .choices=${[...choices, stay]}
    ></choice-strip>`;
  }
}

/** What is used up or went back stands under what one can still cut from. */
const fullFirst = (lots: readonly LotShown[]) =>
  lots.toSorted((a, b) => Number(b.leftPieces > 0) - Number(a.leftPieces > 0));
