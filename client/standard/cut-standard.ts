import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { CutStandard, StandardPart } from '../../shared/view/index.ts';
import { standardWords, textIn, weight } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';
import './cut-drawing.ts';
import './cut-training.ts';

/** One cut's sheet: the drawing, what comes off and what stays, how it looks when it is right. */
@customElement('cut-standard')
export class CutStandardSheet extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: block;
        container-type: inline-size;
        padding: var(--gap) var(--edge);
        font-size: var(--small);
        line-height: 1.25;
      }
      .sheet {
        display: grid;
        gap: var(--gap) var(--edge);
        align-content: start;
      }
      @container (width >= 40em) {
        .sheet {
          grid-template-columns: minmax(0, 1.1fr) minmax(0, 1fr);
        }
        h2,
        cut-training {
          grid-column: 1 / -1;
        }
      }
      @container (width >= 80em) {
        .sheet {
          grid-template-columns: minmax(0, 1.2fr) minmax(0, 1fr) minmax(0, 1fr);
        }
        cut-training {
          grid-column: auto;
        }
      }
      h2,
      h3,
      p,
      ol {
        margin: 0;
        padding: 0;
      }
      h2 {
        font-size: var(--strong);
        font-weight: 800;
      }
      h3 {
        font-size: var(--small);
        font-weight: 800;
        border-bottom: var(--line) solid var(--ink);
        margin-top: 0.5em;
      }
      h3:first-child {
        margin-top: 0;
      }
      ol {
        list-style: none;
      }
      li {
        display: grid;
        grid-template-columns: 1.4em minmax(0, 1fr);
      }
      .why {
        display: block;
        font-weight: 500;
      }
      /* The line is heavy, and is to touch neither these words nor the next ones. */
      .right {
        padding-bottom: 0.25em;
        font-weight: 800;
        line-height: 1.5;
        text-decoration: underline;
        text-decoration-thickness: var(--heavy);
        text-underline-offset: 0.22em;
      }
      .caution {
        font-weight: 800;
      }
      .soft {
        padding-top: 0.5em;
        color: var(--soft);
        font-weight: 500;
      }
      @media print {
        :host {
          font-size: 11pt;
        }
        h3 {
          font-size: 11pt;
        }
      }
    `,
  ];

  @property({ attribute: false }) standard: CutStandard | null = null;

  protected override draw() {
    const { standard, say } = this;
    if (!standard) return nothing;
    const said = standardWords[say.language];
    return html`<div class="sheet">
      <h2 tabindex="-1">${said.standard(textIn(standard.name, say))}</h2>
      <div>
        <cut-drawing .say=${say} .standard=${standard}></cut-drawing>
        ${this.#amounts(standard)}
      </div>
      <div>${this.#words(standard)}</div>
      ${this.#moves(standard)}
    </div>`;
  }

  #amounts({ piece, weightKg, trimYield }: CutStandard) {
    const { say } = this;
    const said = standardWords[say.language];
    const percent = (share: number) => Math.round(share * 100);
    const { low, high } = weightKg;
    return html`<p>
      ${said.weighs(textIn(piece.one, say), weight(low, say), weight(high, say))};
      ${said.left(percent(trimYield.low), percent(trimYield.high))}.
    </p>`;
  }

  #words({ off, stays, right, caution }: CutStandard) {
    const { say } = this;
    const said = standardWords[say.language];
    const list = (title: string, parts: readonly StandardPart[]) =>
      parts.length === 0
        ? nothing
        : html`<h3>${title}</h3>
            <ol>
              ${parts.map(
                ({ figure, name, why }) => html`<li>
                  <b>${figure ?? '–'}</b>
                  <span>
                    <b>${textIn(name, say)}</b>
                    <span class="why">${textIn(why, say)}</span>
                  </span>
                </li>`,
              )}
            </ol>`;
    return html`${off.length === 0 ? html`<p>${said.none}</p>` : nothing}
    ${list(said.off, off)} ${list(said.stays, stays)}
    ${
      right
        ? html`<h3>${said.right}</h3>
            <p class="right">${textIn(right, say)}</p>`
        : nothing
    }
    ${
      caution
        ? html`<h3>${said.caution}</h3>
            <p class="caution">${textIn(caution, say)}</p>`
        : nothing
    }
      <p class="soft">${said.overrule}</p>`;
  }

  #moves({ ways }: CutStandard) {
    const { say } = this;
    const [way] = ways.filter(({ moves }) => moves.length > 0);
    if (!way) return nothing;
    return html`<cut-training .say=${say} .moves=${way.moves}></cut-training>`;
  }
}
