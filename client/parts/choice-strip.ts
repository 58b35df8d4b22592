import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { base } from '../theme/index.ts';
import { Part } from './part.ts';

export type Choice = {
  readonly label: string;
  /** What it is called where its label is only a sign. */
  readonly name?: string;
  readonly choose: () => void;
  /** Drawn dashed: leaves things as they are. */
  readonly leaves?: boolean;
  /** Drawn heavy: does what the sentence beside says. */
  readonly takes?: boolean;
};

/**
 * Boxes in a row, drawn where the finger is; no dialog. One is tapped, or the last, which leaves
 * things be.
 */
@customElement('choice-strip')
export class ChoiceStrip extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: flex;
        align-items: center;
        gap: var(--gap);
        flex-wrap: wrap;
      }
      button {
        border: var(--line) solid var(--ink);
        padding: 0 0.6em;
        min-height: var(--touch);
        font-weight: 700;
        white-space: var(--label-space, nowrap);
        line-height: 1.05;
        text-align: center;
      }
      :host([said])::before {
        content: attr(aria-label);
      }
      .leaves {
        border-style: dashed;
        font-weight: 600;
      }
      .takes {
        border-width: var(--heavy);
        font-weight: 800;
      }
    `,
  ];

  /** What the boxes are about, for a screen reader, and written before them where it is `said`. */
  @property() name = '';
  @property({ attribute: false }) choices: readonly Choice[] = [];

  override connectedCallback(): void {
    super.connectedCallback();
    this.role = 'group';
  }

  protected override willUpdate(): void {
    this.ariaLabel = this.name;
  }

  protected override draw() {
    return this.choices.map(
      ({ label, name, choose, leaves = false, takes = false }) =>
        html`<button
          class=${[leaves && 'leaves', takes && 'takes'].filter(Boolean).join(' ')}
          aria-label=${name ?? nothing}
          @click=${choose}
        >
          ${label}
        </button>`,
    );
  }
}
