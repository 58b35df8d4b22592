import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { WhoList } from '../../shared/protocol/index.ts';
import type { Refusal } from '../../shared/view/index.ts';
import { sayRefusal, whoWords } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { readSettings } from '../shell/settings.ts';
import { type WhoDoors, whoDoors } from '../shell/who-doors.ts';
import { base } from '../theme/index.ts';
import './who-people.ts';
import './who-present.ts';
import type { Wish } from './who-screens.ts';
import './who-screens.ts';

const LOOK_EVERY_MS = 2000;

/** The doors of the hub this page came from, with this device's own token. */
const ownDoors = () => whoDoors(readSettings(new URLSearchParams()).token);

/**
 * Screens, those that ask to be let in, people and PINs. It needs the hub's doors, and no view. An
 * open hub lets in everybody: there it is the people alone.
 */
@customElement('desk-who')
export class DeskWho extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: block;
        padding: var(--gap) var(--edge) var(--edge);
      }
      .wrong {
        position: sticky;
        top: 0;
        padding: var(--gap) 0;
        background: var(--ground);
        font-weight: 800;
        border-bottom: var(--heavy) solid var(--ink);
      }
    `,
  ];

  @property({ attribute: false }) doors: WhoDoors = ownDoors();
  /** The code that a phone has read off a screen which asks to be let in. */
  @property({ attribute: false }) scanned: string | null = null;
  @state() private list: WhoList | null = null;
  @state() private wrong: Refusal | null = null;
  @state() private isAway = false;

  #again: ReturnType<typeof setTimeout> | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    void this.#look();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.#again);
  }

  protected override draw() {
    const { list, say, wrong } = this;
    const said = whoWords[say.language];
    return html`${this.isAway ? html`<p role="status">${said.hubAway}</p>` : nothing}
      ${wrong ? html`<p class="wrong" role="alert">${sayRefusal(wrong, say)}</p>` : nothing}
      ${list?.isOpen ? html`<p>${said.isOpen}</p>` : nothing}
      ${list && !list.isOpen ? this.#screens(list) : nothing}
      ${
        list
          ? html`<who-people .say=${say} .list=${list} @wish=${this.#run}></who-people>`
          : nothing
      }`;
  }

  #screens(list: WhoList) {
    const { say } = this;
    return html`<who-present .say=${say} .list=${list} @wish=${this.#run}></who-present>
      <who-screens
        .say=${say}
        .list=${list}
        .scanned=${this.scanned}
        @wish=${this.#run}
      ></who-screens>`;
  }

  readonly #run = async ({ detail: wish }: CustomEvent<Wish>): Promise<void> => {
    try {
      const answer = await wish(this.doors);
      this.wrong = answer.ok ? null : answer.refusal;
      await this.#look();
    } catch {
      this.isAway = true;
    }
  };

  async #look(): Promise<void> {
    clearTimeout(this.#again);
    try {
      const answer = await this.doors.list();
      if (answer.ok) this.list = answer.who;
      else this.wrong = answer.refusal;
      this.isAway = false;
    } catch {
      this.isAway = true;
    }
    clearTimeout(this.#again);
    if (this.isConnected) this.#again = setTimeout(() => void this.#look(), LOOK_EVERY_MS);
  }
}
