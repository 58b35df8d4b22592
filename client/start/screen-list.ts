import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { type StartGroup, startWords, textIn } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import type { WhoDoors } from '../shell/who-doors.ts';
import { base } from '../theme/index.ts';
import { groupOf, type Listed } from './listed.ts';
import { screenListStyle, startRows } from './start.css.ts';
import './wall-chooser.ts';
import type { Named } from './wall-chooser.ts';

const TRY_AGAIN_MS = 3000;

/** What is chosen before it can be opened: several stations, or a person and theirs. */
type Chooser = 'several' | 'phone';

/** The screens of this kitchen as boxes to tap, by who stands before them. */
@customElement('screen-list')
export class ScreenList extends Part {
  static override styles = [base, startRows, screenListStyle];

  @property({ attribute: false }) doors: Pick<WhoDoors, 'list'> | null = null;
  @state() private listed: readonly Listed[] | null = null;
  @state() private people: readonly Named[] = [];
  @state() private opened: Chooser | null = null;

  #again: ReturnType<typeof setTimeout> | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    void this.#load();
    void this.#askWho();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.#again);
  }

  protected override draw() {
    const { listed } = this;
    return html`${listed ? nothing : html`<p role="status">${this.words.looking}</p>`}
      <nav>${listed ? this.#screens(listed) : nothing} ${this.#standards()}</nav>`;
  }

  #screens(listed: readonly Listed[]) {
    const of = (group: StartGroup) => listed.filter((each) => groupOf(each) === group);
    const said = startWords[this.say.language];
    const stations = of('stations');
    const page = (group: Exclude<StartGroup, 'stations'>) => {
      const boxes = of(group).map(({ path }) => this.#link(path, said.screens[group]));
      return boxes.length > 0 ? this.#group(group, boxes) : nothing;
    };
    // A station may be called as a screen is; its own shows work to do.
    const others = (['pit', 'pass', 'desk'] as const).map((group) => said.groups[group].name);
    const own = stations.map(({ path, name }) => {
      const called = textIn(name, this.say);
      return this.#link(path, others.includes(called) ? said.workAt(called) : called);
    });
    const several = stations.length > 1 ? this.#opener('several', said.severalStations) : nothing;
    const phone = this.#opener('phone', said.screens.phone);
    return html`${own.length > 0 ? this.#group('stations', [own, several], 'several') : nothing}
      ${page('pit')} ${page('pass')} ${page('desk')}
      ${this.people.length > 0 && own.length > 0 ? this.#group('phone', phone, 'phone') : nothing}`;
  }

  /** No screen of the day, but where whoever is new begins. */
  #standards() {
    const { learn } = startWords[this.say.language].screens;
    return this.#group('learn', this.#link('/standards.html', learn));
  }

  #group(group: StartGroup, boxes: unknown, chooser: Chooser | null = null) {
    const { name, who } = startWords[this.say.language].groups[group];
    const stations = this.listed?.filter((each) => groupOf(each) === 'stations') ?? [];
    return html`<section>
      <div>
        <h3>${name}</h3>
        <p class="why">${who}</p>
      </div>
      <div class="boxes">${boxes}</div>
      ${
        chooser !== null && this.opened === chooser
          ? html`<wall-chooser
              .say=${this.say}
              .stations=${stations}
              .people=${chooser === 'phone' ? this.people : null}
            ></wall-chooser>`
          : nothing
      }
    </section>`;
  }

  #link(path: string, name: string) {
    return html`<a href=${path}>${name}</a>`;
  }

  #opener(chooser: Chooser, name: string) {
    const isOpen = this.opened === chooser;
    const toggle = () => {
      this.opened = isOpen ? null : chooser;
    };
    return html`<button aria-expanded=${isOpen} @click=${toggle}>${name}</button>`;
  }

  async #load(): Promise<void> {
    try {
      const answer = await fetch('/screens.json');
      this.listed = (await answer.json()) as Listed[];
    } catch {
      this.#again = setTimeout(() => this.#load(), TRY_AGAIN_MS);
    }
  }

  /** A hub that lets this device see who is in the crew offers a phone to each of them. */
  async #askWho(): Promise<void> {
    try {
      const answer = await this.doors?.list();
      if (answer?.ok) this.people = answer.who.people;
    } catch {
      // Alone, it has the screens that it knows.
    }
  }
}
