import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { Instant, PersonId } from '../../shared/kernel/index.ts';
import type { CheckView, DeskView, Intent } from '../../shared/view/index.ts';
import { howOpen } from '../../shared/view/index.ts';
import {
  checkWords,
  clockTime,
  sayCheck,
  sayCheckRow,
  sayCheckTime,
  sayLimitsHeld,
  textIn,
} from '../../shared/words/index.ts';
import '../parts/check-pad.ts';
import { Part } from '../parts/part.ts';
import type { Sync } from '../sync/index.ts';
import { base } from '../theme/index.ts';

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
      li > button {
        display: grid;
        width: 100%;
        grid-template-columns: 5.5em minmax(0, 2fr) minmax(0, 3fr) 6em;
        gap: 0 1em;
        align-items: center;
        line-height: 1.15;
      }
      .at,
      .what {
        font-weight: 800;
      }
      .row,
      .where {
        font-size: var(--small);
        color: var(--soft);
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
          grid-template-columns: 5em minmax(0, 1fr);
        }
        .row,
        .where {
          grid-column: 2;
        }
      }
    `,
  ];

  @property({ attribute: false }) sync!: Sync;
  @property({ attribute: false }) view!: DeskView;
  /** A check stays where it was opened, though its time is over: what is typed into it does too. */
  @state() private opened: { readonly key: string; readonly how: HowOpen } | null = null;

  protected override draw() {
    const words = checkWords[this.say.language];
    const now = this.sync.hubNow();
    const { checks } = this.view;
    if (checks.length === 0) return [html`<p class="quiet">${words.nothingOpen}</p>`, this.#held()];
    return [
      ...GROUPS.map((how) => {
        const own = checks
          .filter((check) => this.#howOpen(check, now) === how)
          .toSorted((a, b) => atOf(a) - atOf(b));
        if (own.length === 0) return nothing;
        const isWrong = how === 'failed' || how === 'missed';
        return html`<section class=${isWrong ? 'wrong' : ''}>
        <h2>${words.stands[how]}</h2>
        <ul>
          ${repeat(
            own,
            ({ key }) => key,
            (check) => this.#line(check),
          )}
        </ul>
      </section>`;
      }),
      this.#held(),
    ];
  }

  #howOpen(check: CheckView, now: Instant): HowOpen {
    return check.key === this.opened?.key ? this.opened.how : howOpen(check, now);
  }

  /** By which limits all of it goes, and who said why where they are the kitchen's own. */
  #held() {
    const said = sayLimitsHeld(this.view.limits, this.say);
    return html`<p class="held">${said.join(' ')}</p>`;
  }

  #line(check: CheckView) {
    const { say } = this;
    const now = this.sync.hubNow();
    const isOpen = check.key === this.opened?.key;
    const at = atOf(check);
    const by = check.failed?.by;
    const where = checkWords[say.language].at(textIn(check.station, say));
    return html`<li>
      <button
        aria-expanded=${isOpen}
        @click=${() => {
          this.opened = isOpen ? null : { key: check.key, how: howOpen(check, now) };
        }}
      >
        <span class="at">${clockTime(at, say)}</span>
        <span class="what">${sayCheck(check, say)}</span>
        <span class="row">${sayCheckRow(check, say) || sayCheckTime(check, now, say)}</span>
        <span class="where">${[where, by].filter(Boolean).join(' · ')}</span>
      </button>
      ${isOpen ? this.#pad(check) : nothing}
    </li>`;
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
