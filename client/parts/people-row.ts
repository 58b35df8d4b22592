import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { PersonId } from '../../shared/kernel/index.ts';
import type { Person } from '../../shared/view/index.ts';
import type { Choice } from './choice-strip.ts';
import './choice-strip.ts';
import { Part } from './part.ts';

/**
 * The names a task can be given to: who is on shift and has been shown it, without whoever has it.
 * Tells `person`.
 */
@customElement('people-row')
export class PeopleRow extends Part {
  static override styles = css`
    :host {
      display: flex;
      flex-wrap: wrap;
      gap: var(--gap) calc(3 * var(--gap));
    }
  `;

  @property({ attribute: false }) people: readonly Person[] = [];
  /** Who has been shown the work. */
  @property({ attribute: false }) among: readonly PersonId[] = [];
  @property({ attribute: false }) except: PersonId | null = null;
  /** Boxes behind the names, which nothing is given to. */
  @property({ attribute: false }) others: readonly Choice[] = [];

  protected override draw() {
    const names = this.people
      .filter(({ id, onShift, isOut }) => onShift && !isOut && this.among.includes(id))
      .filter(({ id }) => id !== this.except)
      .map(({ id, name }) => ({ label: name, choose: () => this.tell('person', id) }));
    const strip = (name: string, choices: readonly Choice[]) =>
      html`<choice-strip
        ?said=${name}
        .say=${this.say}
        .name=${name}
        .choices=${choices}
      ></choice-strip>`;
    return html`${names.length > 0 ? strip(this.words.giveTo, names) : nothing}
    ${strip('', this.others)}`;
  }
}
