import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { CutId, Instant } from '../../shared/kernel/index.ts';
import type { DeskView, Drawn, Intent, PullRow } from '../../shared/view/index.ts';
import { isOut } from '../../shared/view/index.ts';
import {
  clockOfDay,
  clockTime,
  deliveryWords,
  deskWords,
  sayAllergen,
  sayAmount,
  sayCame,
  sayOut,
  scaleWeight,
  textIn,
  weight,
} from '../../shared/words/index.ts';
import { isOtherMinute } from '../parts/clock-time.ts';
import { Part } from '../parts/part.ts';
import { JustDone } from '../shell/just-done.ts';
import type { Sync } from '../sync/index.ts';
import { base } from '../theme/index.ts';
import './delivery-pad.ts';
import { pullListStyles } from './pull-list.css.ts';

/** What to pull from the cooler and what came of it, and what to mix, on one ruled page. */
@customElement('pull-list')
export class PullList extends Part {
  static override styles = [base, pullListStyles];

  @property({ attribute: false }) sync!: Sync;
  @property({ attribute: false }) view: DeskView | null = null;
  @property({ attribute: false }) marks: Drawn['marks'] = new Map();
  @property({ type: Number, hasChanged: isOtherMinute }) now: Instant | null = null;
  @state() private picked: CutId | null = null;

  readonly #justDone = new JustDone(() => this.requestUpdate());

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#justDone.stop();
  }

  protected override draw() {
    const { view } = this;
    return view ? html`<div>${this.#pull(view)}</div><div>${this.#mixes(view)}</div>` : nothing;
  }

  #pull({ pull }: DeskView) {
    const { say } = this;
    const words = deskWords[say.language];
    const said = deliveryWords[say.language];
    const [still, out] = [pull.filter((row) => !isOut(row)), pull.filter(isOut)];
    return html`<h2>${words.pull}</h2>
      <table>
        <thead>
          <tr>
            <th scope="col"><span class="unseen">${words.pull}</span></th>
            <th scope="col">${words.pieces}</th>
            <th scope="col">${words.weight}</th>
            <th scope="col">${words.outBy}</th>
            <th scope="col">${said.came}</th>
          </tr>
        </thead>
        <tbody>
          ${this.#rows(still)}
        </tbody>
        ${
          out.length === 0
            ? nothing
            : html`<tbody class="out">
                <tr class="over">
                  <th scope="rowgroup" colspan="3">${said.out}</th>
                  <th>${said.since}</th>
                  <th></th>
                </tr>
                ${this.#rows(out)}
              </tbody>`
        }
      </table>`;
  }

  #rows(rows: readonly PullRow[]) {
    return repeat(
      rows,
      ({ cut }) => cut,
      (row) => this.#row(row),
    );
  }

  #row(row: PullRow) {
    const { say, now } = this;
    const { cut, name, pieces, weightKg, byAt, outAt, came } = row;
    const isLate = now !== null && byAt <= now && !isOut(row);
    const said = sayOut(row, now, say);
    const at = (isOut(row) ? outAt : null) ?? byAt;
    return html`<tr class=${isLate ? 'late' : ''}>
        <th scope="row">
          ${textIn(name, say)} ${said ? html`<p class="how">${said}</p>` : nothing}
          ${came ? html`<p>${sayCame(row, came, say)}</p>` : nothing}
        </th>
        <td>${pieces}</td>
        <td>${weight(weightKg, say)}</td>
        <td><time>${now === null ? clockTime(at, say) : clockOfDay(at, now, say)}</time></td>
        <td>${this.#box(row)}</td>
      </tr>
      ${
        this.picked === cut
          ? html`<tr class="pad">
              <td colspan="5">
                <delivery-pad
                  .say=${say}
                  .row=${row}
                  @came=${({ detail }: CustomEvent<Amount>) => this.#keep(cut, detail)}
                  @close=${() => this.#pick(null)}
                ></delivery-pad>
              </td>
            </tr>`
          : nothing
      }`;
  }

  /** Where a finger says what came; for some seconds after, where it takes that back. */
  #box({ cut, name, came }: PullRow) {
    const { say } = this;
    const named = textIn(name, say);
    if (this.#justDone.has(cut)) {
      const undo = () => {
        const back = this.#justDone.take(cut);
        if (back) this.sync.tap(back);
      };
      const label = `${this.words.undo}: ${named}`;
      return html`<button class="takes" aria-label=${label} @click=${undo}>
        ${this.words.undo}
      </button>`;
    }
    const words = deliveryWords[say.language];
    const label = [words.whatCame(named), came && sayAmount(came, say)].filter(Boolean).join(': ');
    return html`<button
      class=${this.marks.get(cut) ?? ''}
      aria-label=${label}
      aria-expanded=${this.picked === cut}
      @click=${() => this.#pick(this.picked === cut ? null : cut)}
    >
      ${came ? sayAmount(came, say) : words.sayIt}
    </button>`;
  }

  #pick(cut: CutId | null): void {
    this.picked = cut;
  }

  #keep(cut: CutId, amount: Amount): void {
    const { id } = this.sync.tap({ kind: 'delivery', cut, ...amount });
    this.#justDone.did(cut, { kind: 'undo', command: id });
    this.#pick(null);
  }

  #mixes({ mixes }: DeskView) {
    const { say } = this;
    const words = deskWords[say.language];
    return html`<h2>${words.mixes}</h2>
      ${mixes.map(({ name, weightKg, parts, allergens }) => {
        const each = parts.map(
          (part) => `${textIn(part.ingredient, say)} ${scaleWeight(part.weightKg, say)}`,
        );
        const listed = allergens.map((allergen) => sayAllergen(allergen, say)).join(', ');
        const named = listed === '' ? null : `${words.allergens}: ${listed}`;
        return html`<section>
          <h3><span>${textIn(name, say)}</span><span>${scaleWeight(weightKg, say)}</span></h3>
          <p>${each.join(' · ')}</p>
          <p>${named ?? words.noAllergens}</p>
        </section>`;
      })}`;
  }
}

type Amount = Omit<Extract<Intent, { kind: 'delivery' }>, 'kind' | 'cut'>;
