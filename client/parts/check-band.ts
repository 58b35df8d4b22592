import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { CommandId, Instant, PersonId } from '../../shared/kernel/index.ts';
import { instant } from '../../shared/kernel/index.ts';
import type { CheckView, Command, Intent, Person } from '../../shared/view/index.ts';
import { checksDue, howOpen, isTooOld } from '../../shared/view/index.ts';
import { checkWords, sayCheckTime, sayMore, sayToDo } from '../../shared/words/index.ts';
import { base } from '../theme/index.ts';
import { RowOfBoxes } from './boxes-in-row.ts';
import './check-pad.ts';
import './choice-strip.ts';
import { Part } from './part.ts';

/** How a check is sent: in the name of a person, who is asked for it. */
export type TapAs = (intent: Intent, person: PersonId | null) => Pick<Command, 'id'>;

const UNDO_MS = 20_000;

/**
 * What is to be looked at now, a box each with what to do there as a verb, what is wrong first;
 * one that is tapped opens in their place. What is due next of the same kind follows by itself, so
 * that a cabinet is read in one go.
 */
@customElement('check-band')
export class CheckBand extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: block;
        border-bottom: var(--line) solid var(--ink);
      }
      .row {
        display: flex;
        flex-wrap: wrap;
        gap: var(--gap);
        align-items: center;
        padding: var(--over-box, calc(4px * var(--arcmin))) var(--edge);
        font-size: var(--small);
      }
      button {
        border: var(--line) solid var(--ink);
        padding: 0 0.5em;
        line-height: 1.1;
        text-align: left;
        max-width: 100%;
      }
      button b {
        display: block;
        font-weight: 800;
      }
      /* What was broken or missed is heavier, over a stroke of brick. */
      .wrong {
        border-width: var(--heavy);
        border-bottom-color: var(--brick);
      }
      /* In a foot, what opens lies over what is above it: nothing there moves under a finger. */
      :host([foot]) {
        border: none;
      }
      :host([foot]:not([over])) .row {
        padding-block: 0;
        flex-wrap: nowrap;
      }
      /* On one line where it has room. */
      :host([foot]) .row > button {
        display: flex;
        align-items: center;
        column-gap: 0.5em;
      }
      :host([foot]) :is(.more, .undo) {
        flex: none;
      }
      :host([foot][over]) {
        position: absolute;
        z-index: 3;
        inset: auto 0 0 0;
        max-height: 100%;
        overflow: auto;
        background: var(--ground);
        border-top: var(--heavy) solid var(--ink);
      }
      .more,
      .undo {
        font-weight: 700;
        text-align: center;
      }
    `,
  ];

  @property({ attribute: false }) checks: readonly CheckView[] = [];
  @property({ attribute: false }) people: readonly Person[] = [];
  @property({ type: Number }) now: Instant = instant(0);
  @property({ attribute: false }) tap: TapAs | null = null;
  /** So many boxes beside each other, where the row has room; the rest is behind one more. */
  @property({ type: Number }) most = 3;
  /** Whether what is open lies over the rest of the screen. */
  @property({ type: Boolean, reflect: true }) over = false;
  @state() private openKey: string | null = null;
  @state() private isWhole = false;
  @state() private undo: CommandId | null = null;

  #forgetting: ReturnType<typeof setTimeout> | undefined;
  readonly #row = new RowOfBoxes(this);

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.#forgetting);
  }

  protected override willUpdate(): void {
    this.hidden = this.#due.length === 0 && this.undo === null && this.openKey === null;
    this.over = this.isWhole || this.openKey !== null;
  }

  get #due(): readonly CheckView[] {
    return checksDue(this.checks, this.now);
  }

  protected override draw() {
    const open = this.checks.find(({ key }) => key === this.openKey);
    if (open) {
      return html`<check-pad
        .say=${this.say}
        .check=${open}
        .people=${this.people}
        .now=${this.now}
        @said=${({ detail }: CustomEvent<Said>) => this.#said(open, detail)}
        @close=${() => this.#open(null)}
      ></check-pad>`;
    }
    const due = this.#due;
    const said = due.slice(0, this.most).map((check) => this.#lines(check));
    const room = this.#row.roomFor(said, [this.#more(due)]);
    const shown = this.isWhole ? due : due.slice(0, room);
    const rest = due.slice(shown.length);
    return html`<div class="row" role="group" aria-label=${checkWords[this.say.language].look}>
      ${shown.map((check) => this.#box(check))}
      ${
        rest.length > 0
          ? html`<button class="more" @click=${() => this.#whole()}>${this.#more(rest)}</button>`
          : nothing
      }
      ${
        this.undo
          ? html`<button class="undo" @click=${() => this.#takeBack()}>${this.words.undo}</button>`
          : nothing
      }
    </div>`;
  }

  #more(rest: readonly CheckView[]): string {
    const old = rest.filter((check) => isTooOld(check, this.now));
    return sayMore(rest.length, old.length, this.say);
  }

  /** What is to be done, and by when. */
  #lines(check: CheckView): readonly [string, string] {
    return [sayToDo(check, this.now, this.say), sayCheckTime(check, this.now, this.say)];
  }

  #box(check: CheckView) {
    const how = howOpen(check, this.now);
    const [what, when] = this.#lines(check);
    const isWrong = how === 'failed' || how === 'missed';
    return html`<button class=${isWrong ? 'wrong' : ''} @click=${() => this.#open(check.key)}>
      <b>${what}</b>${when}
    </button>`;
  }

  #whole(): void {
    this.isWhole = true;
  }

  #open(key: string | null): void {
    this.openKey = key;
    if (key === null) this.isWhole = false;
  }

  #said(check: CheckView, { intent, person }: Said): void {
    const id = this.tap?.(intent, person).id ?? null;
    this.#keepUndo(id);
    const next = this.checks.find(
      ({ key, on, fromAt }) => key !== check.key && on.kind === check.on.kind && fromAt <= this.now,
    );
    this.#open(intent.kind === 'check' && next ? next.key : null);
  }

  #keepUndo(id: CommandId | null): void {
    this.undo = id;
    clearTimeout(this.#forgetting);
    this.#forgetting = setTimeout(() => {
      this.undo = null;
    }, UNDO_MS);
  }

  #takeBack(): void {
    const { undo } = this;
    if (undo) this.tap?.({ kind: 'undo', command: undo }, null);
    this.undo = null;
  }
}

/** A check or what was done about it, and by whom. */
type Said = { readonly intent: Intent; readonly person: PersonId };
