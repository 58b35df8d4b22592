import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { ScreenId } from '../../shared/kernel/index.ts';
import { instant } from '../../shared/kernel/index.ts';
import type { ListedScreen, PairingShown, WhoList } from '../../shared/protocol/index.ts';
import { clockTime, textIn, whoWords } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import type { WhoDoors } from '../shell/who-doors.ts';
import { base } from '../theme/index.ts';
import { formStyle } from './form-style.ts';
import { placeFields, readPlace } from './who-place.ts';
import { whoStyle } from './who-style.ts';

/** Something the desk wants of a door; whoever listens runs it and says what came of it. */
export type Wish = (doors: WhoDoors) => Promise<Awaited<ReturnType<WhoDoors['rename']>>>;

/**
 * The screens of the hub, and those that ask to be let in. Tells `wish`. Each line is kept with its
 * screen: what is typed for one must not stand beside another when a line above it goes.
 */
@customElement('who-screens')
export class WhoScreens extends Part {
  static override styles = [base, formStyle, whoStyle];

  @property({ attribute: false }) list!: WhoList;
  /** The one of those that ask which somebody stands before. */
  @property({ attribute: false }) scanned: string | null = null;
  @state() private changing: ScreenId | null = null;
  @state() private revoking: ScreenId | null = null;

  private get said() {
    return whoWords[this.say.language];
  }

  protected override draw() {
    const { said, scanned } = this;
    const { screens } = this.list;
    const isScanned = ({ code }: PairingShown) => code === scanned;
    const asking = [...this.list.asking].sort(
      (a, b) => Number(isScanned(b)) - Number(isScanned(a)),
    );
    return html`<section aria-label=${said.asking}>
        <h2>${said.asking}</h2>
        ${asking.length === 0 ? html`<p class="row soft">${said.nobodyAsks}</p>` : nothing}
        <ul>
          ${repeat(
            asking,
            ({ code }) => code,
            (each) => this.#asking(each),
          )}
        </ul>
      </section>
      <section aria-label=${said.screens}>
        <h2>${said.screens}</h2>
        <ul>
          ${repeat(
            screens,
            ({ id }) => id,
            (each) => this.#screen(each),
          )}
        </ul>
      </section>`;
  }

  #asking({ code, address }: PairingShown) {
    const { said, say } = this;
    const { stations } = this.list;
    const letIn = (event: SubmitEvent) => {
      event.preventDefault();
      const asked = { code, ...readPlace(event.target as HTMLFormElement, stations) };
      this.#wish((doors) => doors.letIn(asked));
    };
    return html`<li class=${code === this.scanned ? 'scanned' : ''}>
      <span class="code">${code.slice(0, 3)} ${code.slice(3)}</span>
      <span class="soft">${said.askedFrom(address)}</span>
      <form @submit=${letIn}>
        ${placeFields(stations, null, say)}
        <button class="takes">${said.letIn}</button>
      </form>
    </li>`;
  }

  #screen(screen: ListedScreen) {
    const { said } = this;
    const { id, name } = screen;
    if (this.changing === id) return this.#change(screen);
    return html`<li>
      <span class="name">${name}</span>
      <span>${this.#where(screen)}</span>
      <span class="soft">${this.#seen(screen)}</span>
      <button @click=${() => this.#open(id)}>${said.change}</button>
      ${
        this.revoking === id
          ? html`<button class="takes" @click=${() => this.#revoke(id)}>
                ${said.reallyTakeOff(name)}
              </button>
              <button class="leaves" @click=${() => this.#open(null)}>${said.leaveIt}</button>`
          : html`<button @click=${() => this.#ponder(id)}>${said.takeOff}</button>`
      }
    </li>`;
  }

  #change(screen: ListedScreen) {
    const { said, say } = this;
    const { stations } = this.list;
    const keep = (event: SubmitEvent) => {
      event.preventDefault();
      const { name, place } = readPlace(event.target as HTMLFormElement, stations);
      this.#open(null);
      this.#wish(async (doors) => {
        const { id } = screen;
        const renamed = name === screen.name ? null : await doors.rename({ screen: id, name });
        if (renamed && !renamed.ok) return renamed;
        const isThere = JSON.stringify(place) === JSON.stringify(screen.place);
        return isThere ? { ok: true } : doors.move({ screen: id, place });
      });
    };
    return html`<li>
      <form @submit=${keep}>
        ${placeFields(stations, screen, say)}
        <button class="takes">${said.keep}</button>
        <button type="button" class="leaves" @click=${() => this.#open(null)}>
          ${said.leaveIt}
        </button>
      </form>
    </li>`;
  }

  #where({ place }: ListedScreen): string {
    const names = this.list.stations
      .filter(({ id }) => place.stations.includes(id))
      .map(({ name }) => textIn(name, this.say));
    return [this.said.roles[place.role], ...names].join(', ');
  }

  #seen({ isHere, isThisOne, seenAtMs }: ListedScreen): string {
    const { said, say } = this;
    if (isThisOne) return said.thisOne;
    if (isHere) return said.here;
    return seenAtMs === null ? said.neverSeen : said.lastSeen(clockTime(instant(seenAtMs), say));
  }

  #open(id: ScreenId | null): void {
    this.changing = id;
    this.revoking = null;
  }

  #ponder(id: ScreenId): void {
    this.changing = null;
    this.revoking = id;
  }

  #revoke(screen: ScreenId): void {
    this.#open(null);
    this.#wish((doors) => doors.revoke({ screen }));
  }

  #wish(wish: Wish): void {
    this.tell('wish', wish);
  }
}
