import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { Instant, PersonId } from '../../shared/kernel/index.ts';
import type { CheckView, DeskView, Intent } from '../../shared/view/index.ts';
import { howOpen } from '../../shared/view/index.ts';
import {
  checkDeskWords,
  checkWords,
  clockTime,
  sayAsked,
  sayCheck,
  sayCheckRow,
  sayLast,
  sayLimitsHeld,
  textIn,
} from '../../shared/words/index.ts';
import '../parts/check-pad.ts';
import { Part } from '../parts/part.ts';
import type { Sync } from '../sync/index.ts';
import { base } from '../theme/index.ts';
import { KeepsFocus } from './keeps-focus.ts';

const GROUPS = ['failed', 'missed', 'due', 'later'] as const;
type HowOpen = (typeof GROUPS)[number];

/** When it was found broken, or till when it has to be looked at: what stands before its line. */
const atOf = ({ failed, lateAt }: CheckView) => failed?.at ?? lateAt;

/** All that is to be looked at or put right, whoever's it is: what is broken first. */
@customElement('desk-safety')
export class DeskSafety extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: block;
        padding: 0 var(--edge) var(--edge);
      }
      h2 {
        font-weight: 800;
        padding: 0.5em 0 0.2em;
        border-bottom: var(--line) solid var(--ink);
      }
      .wrong h2 {
        border-bottom: var(--heavy) solid var(--brick);
      }
      li {
        border-bottom: var(--hair) solid var(--pencil);
      }
      h3 {
        padding-top: 0.8em;
        font-weight: 800;
        border-bottom: var(--hair) solid var(--ink);
      }
      li > button {
        display: grid;
        width: 100%;
        grid-template-columns: 6.5em minmax(0, 5fr) minmax(0, 3fr) minmax(0, 5fr) 7em;
        gap: 0 1em;
        align-items: center;
        line-height: 1.15;
      }
      .at,
      .what {
        font-weight: 800;
      }
      .row,
      .last,
      .rule {
        font-size: var(--small);
        color: var(--soft);
      }
      .row {
        color: var(--ink);
        font-weight: 600;
      }
      /* What is found wrong is told whole. */
      .wrong .row {
        grid-column: 3 / 5;
      }
      .does {
        padding: 0.35em 0.5em;
        border: var(--line) solid var(--ink);
        font-weight: 700;
        text-align: center;
      }
      .held {
        padding: 0.9em 0;
        font-size: var(--small);
        color: var(--soft);
      }
      .quiet {
        padding: 0.6em 0;
        font-weight: 700;
      }
      check-pad {
        padding: 0.3em 0 0.6em;
      }
      @media (max-width: 700px) {
        li > button {
          grid-template-columns: 5.5em minmax(0, 1fr);
          padding-block: 0.3em;
        }
        :is(.row, .wrong .row, .last, .does) {
          grid-column: 2;
        }
        .does {
          justify-self: start;
        }
      }
    `,
  ];

  @property({ attribute: false }) sync!: Sync;
  @property({ attribute: false }) view!: DeskView;
  /** A check stays where it was opened, though its time is over: what is typed into it does too. */
  @state() private opened: { readonly key: string; readonly how: HowOpen } | null = null;

  constructor() {
    super();
    new KeepsFocus(this, 'li');
  }

  protected override draw() {
    const words = checkDeskWords[this.say.language];
    const now = this.sync.hubNow();
    const { checks } = this.view;
    if (checks.length === 0) return [html`<p class="quiet">${words.nothingOpen}</p>`, this.#held()];
    const of = (how: HowOpen) =>
      checks
        .filter((check) => this.#howOpen(check, now) === how)
        .toSorted((a, b) => atOf(a) - atOf(b));
    return [...GROUPS.map((how) => this.#group(how, of(how))), this.#held()];
  }

  /** What is due now is said also where nothing is: that is what one comes here for. */
  #group(how: HowOpen, own: readonly CheckView[]) {
    const { language } = this.say;
    if (own.length === 0 && how !== 'due') return nothing;
    const isWrong = how === 'failed' || how === 'missed';
    const none = html`<p class="quiet">${checkDeskWords[language].nothingDue}</p>`;
    return html`<section class=${isWrong ? 'wrong' : ''}>
      <h2>${checkDeskWords[language].stands[how]}</h2>
      ${own.length === 0 ? none : isWrong ? this.#lines(own, isWrong) : this.#byPlace(own)}
    </section>`;
  }

  /** One walk does all of one place; what is soonest there says which walk is the next. */
  #byPlace(own: readonly CheckView[]) {
    const { say } = this;
    const places = [...new Set(own.map(({ station }) => textIn(station, say)))];
    // By its name: what is typed in one place stays where another comes to stand before it.
    return repeat(
      places,
      (place) => place,
      (place) => html`<h3>${place}</h3>
        ${this.#lines(
          own.filter(({ station }) => textIn(station, say) === place),
          false,
        )}`,
    );
  }

  #lines(own: readonly CheckView[], isWrong: boolean) {
    return html`<ul>
      ${repeat(
        own,
        ({ key }) => key,
        (check) => this.#line(check, isWrong),
      )}
    </ul>`;
  }

  #howOpen(check: CheckView, now: Instant): HowOpen {
    return check.key === this.opened?.key ? this.opened.how : howOpen(check, now);
  }

  /** By which limits all of it goes, and who said why where they are the kitchen's own. */
  #held() {
    const said = sayLimitsHeld(this.view.limits, this.say);
    return html`<p class="held">${said.join(' ')}</p>`;
  }

  #line(check: CheckView, isWrong: boolean) {
    const { say } = this;
    const now = this.sync.hubNow();
    const { key, failed, fromAt } = check;
    const isOpen = key === this.opened?.key;
    const time = clockTime(atOf(check), say);
    const words = checkDeskWords[say.language];
    const last = this.view.looked.find((each) => each.key === key) ?? null;
    const where = isWrong && words.at(textIn(check.station, say));
    const asked = (failed && sayCheckRow(check, say)) || sayAsked(check, say);
    const beside = [asked, where, failed?.by].filter(Boolean).join(' · ');
    return html`<li>
      <button
        aria-expanded=${isOpen}
        @click=${() => {
          this.opened = isOpen ? null : { key, how: howOpen(check, now) };
        }}
      >
        <span class="at">${failed ? time : checkWords[say.language].by(time)}</span>
        <span class="what">${sayCheck(check, say)}</span>
        <span class="row">${beside}</span>
        ${isWrong ? nothing : html`<span class="last">${sayLast(check, last, say)}</span>`}
        ${fromAt <= now ? html`<span class="does">${words.writeIt}</span>` : nothing}
      </button>
      ${isOpen ? this.#opened(check) : nothing}
    </li>`;
  }

  /** By which rule it is asked, with its clause: for whoever wants to read it up. */
  #opened(check: CheckView) {
    const rule = check.failed ? '' : sayCheckRow(check, this.say);
    return [this.#pad(check), rule ? html`<p class="rule">${rule}</p>` : nothing];
  }

  #pad(check: CheckView) {
    return html`<check-pad
      .say=${this.say}
      .check=${check}
      .people=${this.view.people}
      .now=${this.sync.hubNow()}
      @said=${({ detail }: CustomEvent<{ intent: Intent; person: PersonId }>) => {
        this.opened = null;
        this.sync.tap(detail.intent, detail.person);
      }}
      @close=${() => {
        this.opened = null;
      }}
    ></check-pad>`;
  }
}
