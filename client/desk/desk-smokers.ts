import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { SlotId } from '../../shared/kernel/index.ts';
import type { DeskView, Drawn, Intent, LoadDrawing } from '../../shared/view/index.ts';
import { pitRule } from '../../shared/view/index.ts';
import { pitWords } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { laneM } from '../parts/rack-lane.ts';
import '../parts/smoker-cutaway.ts';
import '../smoker/move-foot.ts';
import { SeenSize } from '../shell/seen-size.ts';
import { readSettings } from '../shell/settings.ts';
import { MoveFlow } from '../smoker/move-flow.ts';
import { airOf, coreOf, type Reading, readingPad } from '../smoker/reading.ts';
import { type AskMight, type Might, MightFlow, mightDoor } from '../smoker/what-if.ts';
import type { Sync } from '../sync/index.ts';
import { base } from '../theme/index.ts';

/** In less, racks have their own height and the page is longer than the glass. */
const WIDE_ARCMIN = 1500;
const HIGH_ARCMIN = 900;

/** The smokers at the desk: a load is tapped, then a rack, and the foot says what the move does. */
@customElement('desk-smokers')
export class DeskSmokers extends Part {
  static override styles = [
    base,
    css`
      :host {
        --rack-least: calc(0.6 * var(--touch));
        --rack-gap: calc(10px * var(--arcmin));
        display: grid;
        grid-template-rows: minmax(0, 1fr) auto;
        height: 100%;
      }
      .page {
        display: grid;
        grid-template-rows: minmax(0, 1fr) auto;
        overflow: auto;
        min-height: 0;
      }
      .smokers {
        display: grid;
        grid-template-columns: repeat(auto-fit, minmax(min(100%, 19em), 1fr));
        min-height: 0;
      }
      :host([narrow]) .page {
        grid-template-rows: max-content max-content;
      }
      :host([narrow]) .smokers {
        grid-auto-rows: max-content;
      }
      smoker-cutaway {
        border-left: var(--line) solid var(--ink);
        margin-left: calc(-1 * var(--line));
        border-bottom: var(--hair) solid var(--pencil);
      }
      .pad {
        padding: var(--gap) var(--edge);
        border-top: var(--heavy) solid var(--ink);
      }
      .back p {
        font-weight: 800;
        padding-bottom: var(--gap);
      }
      .known {
        padding: var(--gap) var(--edge);
        font-size: var(--small);
        color: var(--soft);
      }
      move-foot {
        border-top: var(--heavy) solid var(--ink);
        min-height: calc(var(--touch) + 2 * var(--gap));
      }
    `,
  ];

  @property({ attribute: false }) sync!: Sync;
  @property({ attribute: false }) askMight: AskMight = mightDoor(
    readSettings(new URLSearchParams()).token,
  );
  @property({ attribute: false }) view: DeskView | null = null;
  @property({ attribute: false }) marks: Drawn['marks'] = new Map();
  @property({ type: Boolean, reflect: true }) narrow = false;

  @state() private reading: Reading | null = null;

  readonly #size = new SeenSize(this);
  readonly #might = new MightFlow(
    (asked) => this.askMight(asked),
    () => this.requestUpdate(),
  );

  readonly #moving = new MoveFlow({
    ask: (question) => this.sync.ask(question),
    tap: (intent) => this.sync.tap(intent),
    changed: () => this.requestUpdate(),
  });

  protected override willUpdate(): void {
    const { widthPx, heightPx, arcminPx } = this.#size.seen;
    this.narrow = widthPx / arcminPx < WIDE_ARCMIN || heightPx / arcminPx < HIGH_ARCMIN;
    const { view } = this.sync.state;
    if (view?.face === 'desk') this.#moving.see(view);
  }

  protected override draw() {
    const { view } = this;
    if (!view) return nothing;
    return html`<div class="page">
        <div class="smokers">${this.#smokers(view)}</div>
        ${this.#known(view)}
      </div>
      ${this.reading ? this.#pad(this.reading, view) : this.#move()}`;
  }

  #pad(reading: Reading, { endsAt }: DeskView) {
    const { sync, say } = this;
    const next = (asked: Reading | null) => {
      this.reading = asked;
    };
    const keep = (intent: Intent) => sync.tap(intent);
    const pad = readingPad(reading, { say, now: sync.hubNow(), endsAt, keep, next });
    return html`<div class="pad">${pad}</div>`;
  }

  /** How far its forecasts may be believed. */
  #known({ calibration: { cooks, enough } }: DeskView) {
    return html`<p class="known">${pitWords[this.say.language].cooksOnRecord(cooks, enough)}</p>`;
  }

  #move() {
    const { move } = this.#moving;
    if (move.kind === 'none') return nothing;
    return html`<move-foot
      .say=${this.say}
      .move=${move}
      .now=${this.sync.hubNow()}
      .said=${this.#might.said}
      ?narrow=${this.#size.seen.widthPx < 700}
      @take=${() => this.#moving.take()}
      @leave=${() => this.#moving.leave()}
      @core=${({ detail }: CustomEvent<LoadDrawing>) => this.#read(coreOf(detail, this.say))}
      @might=${({ detail }: CustomEvent<Asked>) => {
        void this.#might.ask(detail.load, detail.might, this.say);
      }}
    ></move-foot>`;
  }

  #read(reading: Reading): void {
    this.#moving.leave();
    this.reading = reading;
  }

  #pick(load: LoadDrawing): void {
    this.#might.forget();
    this.reading = null;
    this.#moving.pick(load);
  }

  #smokers({ smokers }: DeskView) {
    const now = this.sync.hubNow();
    const rule = pitRule(smokers, now);
    const wholeM = laneM(smokers);
    const { move } = this.#moving;
    return smokers.map(
      (smoker) => html`<smoker-cutaway
        .say=${this.say}
        .smoker=${smoker}
        .laneM=${wholeM}
        .rule=${rule}
        .now=${now}
        .marks=${this.marks}
        .picked=${move.kind === 'none' ? null : move.load}
        .askedSlot=${'to' in move ? move.to : null}
        ?narrow=${this.narrow}
        @pick=${({ detail }: CustomEvent<LoadDrawing>) => this.#pick(detail)}
        @goal=${({ detail }: CustomEvent<SlotId>) => void this.#moving.goal(detail)}
        @air=${() => this.#read(airOf(smoker, this.say))}
      ></smoker-cutaway>`,
    );
  }
}

type Asked = { readonly load: LoadDrawing; readonly might: Might };
