import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { DeskView } from '../../shared/view/index.ts';
import { deskWords, textIn, weight } from '../../shared/words/index.ts';
import '../parts/clock-time.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';

/** What to pull from the cooler and what to mix, on one ruled page. */
@customElement('pull-list')
export class PullList extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: grid;
        grid-template-columns: repeat(auto-fit, minmax(min(100%, 24em), 1fr));
        gap: 0 calc(2 * var(--edge));
        padding: 0 var(--edge) var(--edge);
      }
      h2 {
        font-weight: 800;
        padding-top: 0.5em;
      }
      table {
        width: 100%;
        border-collapse: collapse;
      }
      th {
        font-size: var(--small);
        font-weight: 600;
        color: var(--soft);
        text-align: right;
        vertical-align: bottom;
        border-bottom: var(--line) solid var(--ink);
      }
      tbody th {
        font-size: inherit;
        font-weight: 700;
        color: var(--ink);
        border-bottom: none;
      }
      td {
        text-align: right;
        white-space: nowrap;
        padding-left: 0.8em;
      }
      th:first-child {
        text-align: left;
      }
      tr {
        border-bottom: var(--hair) solid var(--pencil);
        line-height: 1.5;
      }
      section {
        padding: 0.4em 0;
        border-bottom: var(--hair) solid var(--pencil);
      }
      section:first-of-type {
        border-top: var(--line) solid var(--ink);
      }
      h3 {
        display: flex;
        justify-content: space-between;
        font-weight: 700;
      }
      p {
        font-size: var(--small);
        font-weight: 600;
        color: var(--soft);
      }
    `,
  ];

  @property({ attribute: false }) view: DeskView | null = null;

  protected override draw() {
    const { view } = this;
    return view ? html`<div>${this.#pull(view)}</div><div>${this.#mixes(view)}</div>` : nothing;
  }

  #pull({ pull }: DeskView) {
    const { say } = this;
    const words = deskWords[say.language];
    return html`<h2>${words.pull}</h2>
      <table>
        <thead>
          <tr>
            <th scope="col"><span class="unseen">${words.pull}</span></th>
            <th scope="col">${words.pieces}</th>
            <th scope="col">${words.weight}</th>
            <th scope="col">${words.outBy}</th>
          </tr>
        </thead>
        <tbody>
          ${pull.map(
            ({ name, pieces, weightKg, byAt }) => html`<tr>
              <th scope="row">${textIn(name, say)}</th>
              <td>${pieces}</td>
              <td>${weight(weightKg, say)}</td>
              <td><clock-time .say=${say} .at=${byAt}></clock-time></td>
            </tr>`,
          )}
        </tbody>
      </table>`;
  }

  #mixes({ mixes }: DeskView) {
    const { say } = this;
    const words = deskWords[say.language];
    return html`<h2>${words.mixes}</h2>
      ${mixes.map(({ name, weightKg, parts, allergens }) => {
        const each = parts.map(
          (part) => `${textIn(part.ingredient, say)} ${weight(part.weightKg, say)}`,
        );
        const named = allergens.length > 0 ? `${words.allergens}: ${allergens.join(', ')}` : null;
        return html`<section>
          <h3><span>${textIn(name, say)}</span><span>${weight(weightKg, say)}</span></h3>
          <p>${each.join(' · ')}</p>
          <p>${named ?? words.noAllergens}</p>
        </section>`;
      })}`;
  }
}
