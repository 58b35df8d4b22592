import type { PropertyValues } from 'lit';
import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { classMap } from 'lit/directives/class-map.js';
import { repeat } from 'lit/directives/repeat.js';
import type { ServiceId } from '../../shared/kernel/index.ts';
import type {
  Drawn,
  Intent,
  Mark,
  PassLine,
  PassView,
  ServiceOutlook,
  View,
} from '../../shared/view/index.ts';
import { passLine } from '../../shared/view/index.ts';
import type { Language } from '../../shared/words/index.ts';
import { clockRange, passWords, sayRefusal, textIn } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { styled } from '../parts/styled.ts';
import '../parts/wall-head.ts';
import { CrewDoor } from '../shell/crew-door.ts';
import { DayController, markOf, worstService } from '../shell/day-controller.ts';
import { JustDone } from '../shell/just-done.ts';
import { notice } from '../shell/notice.ts';
import { SeenSize } from '../shell/seen-size.ts';
import type { Sync } from '../sync/index.ts';
import { base } from '../theme/index.ts';
import { nameFit } from './pass-line.ts';
import './late-line.ts';
import './pass-taps.ts';
import { isLean } from './name-fit.ts';
import { columnsOf, isNarrow, linesOf, nameWidth, pansRows } from './room.ts';
import { whyLate } from './why-late.ts';

const isPass = (view: View): view is PassView => view.face === 'pass';

/** Letters of a head's name that have room on its one line. */
const MOST_NAME = 28;

/** The wall at the holding cabinets: a line for each dish of the service. */
@customElement('pass-wall')
export class PassWall extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        grid-template-rows: auto minmax(0, 1fr) auto;
        height: 100dvh;
        background: var(--ground);
      }
      main {
        overflow: hidden auto;
        min-height: 0;
        display: grid;
        align-content: start;
        --high: calc(84px * var(--arcmin));
        /* As high as its name asks, whatever is said in it: no place to tap moves with a word. */
        grid-auto-rows: minmax(min-content, var(--high));
      }
      /* Read down the first column, then down the other. */
      main.two {
        grid-auto-flow: column;
        grid-auto-columns: minmax(0, 1fr);
        grid-template-rows: repeat(var(--lines), minmax(min-content, 1fr));
        max-height: calc(var(--lines) * var(--high));
      }
      /* News come and go under the lines, in room that is kept for them: no line moves. */
      .over {
        min-height: calc(var(--touch) + var(--line));
      }
      main.full ~ .over {
        --over-box: 2px;
      }
      .quiet {
        padding: var(--edge);
        font-weight: 700;
      }
      /* A phone's page is longer than its glass: what is to be seen at once stands on top. */
      :host([narrow]) {
        height: auto;
        min-height: 100dvh;
        grid-template-rows: auto auto 1fr;
      }
      :host([narrow]) main {
        grid-row: 3;
        grid-auto-rows: minmax(min-content, var(--high));
      }
      :host([narrow]) .over {
        grid-row: 2;
        min-height: 0;
      }
    `,
  ];

  @property({ attribute: false }) sync!: Sync;
  @property() language: Language = 'en';
  @property({ type: Boolean, reflect: true }) narrow = false;

  readonly #size = new SeenSize(this);
  readonly #crew = new CrewDoor(this);
  readonly #justDone = new JustDone(() => this.requestUpdate());
  #day: DayController<PassView> | null = null;

  override connectedCallback(): void {
    super.connectedCallback();
    const { sync, language } = this;
    this.#day ??= new DayController(this, { sync, language, isOurs: isPass });
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#justDone.stop();
  }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    if (this.#day) this.say = this.#day.say;
    this.narrow = isNarrow(this.#size.seen);
  }

  protected override draw() {
    const drawn = this.#day?.drawn ?? null;
    const view = drawn?.view ?? null;
    const crew = this.#crew.offer(view, this.sync, this.say);
    const { seen } = this.#size;
    const columns = columnsOf(seen, view?.dishes.length ?? 0);
    const lines = Math.ceil((view?.dishes.length ?? 1) / columns);
    const outlook = view && worstService(view);
    const [name, now] = [this.#name(view, outlook), this.sync.hubNow()];
    const why = whyLate(outlook, seen, { name, say: this.say, now });
    return html`<wall-head
        .say=${this.say}
        .name=${name}
        .outlook=${outlook}
        .now=${now}
        .others=${crew.choices}
        .asks=${crew.asks}
        ?open=${crew.isOpen}
        @toggle=${this.#crew.toggle}
        ?narrow=${this.narrow}
        tight
        >${why ? this.#late(outlook, why) : nothing}</wall-head
      >
      <main
        tabindex="0"
        class=${classMap({ two: columns > 1, full: !this.narrow && lines > linesOf(seen, 2) })}
        aria-label=${this.#name(view, null)}
        ${styled({ '--lines': `${lines}`, '--pans-rows': `${pansRows(seen, lines)}` })}
      >
        ${this.#page(drawn, columns)}
      </main>
      ${notice({ now: [] }, this)}`;
  }

  #late(outlook: ServiceOutlook | null, why: string) {
    return html`<late-line
      .say=${this.say}
      .outlook=${outlook}
      .why=${why}
      .now=${this.sync.hubNow()}
      ?narrow=${this.narrow}
    ></late-line>`;
  }

  /** For which service it sells; where the head says of that one why it is late, once is enough. */
  #name(view: PassView | null, told: ServiceOutlook | null): string {
    const { pass } = passWords[this.say.language];
    if (!view?.service || (told?.heldBy && told.id === view.service.id)) return pass;
    const { name, opensAt, closesAt } = view.service;
    const named = `${pass} · ${textIn(name, this.say)}`;
    const whole = `${named} ${clockRange(opensAt, closesAt, this.say)}`;
    return this.narrow || whole.length > MOST_NAME ? named : whole;
  }

  #page(drawn: Drawn<PassView> | null, columns: number) {
    const { blank } = this.sync.state;
    if (!drawn) {
      return html`<p class="quiet">${blank ? sayRefusal(blank, this.say) : this.words.looking}</p>`;
    }
    const { service, dishes } = drawn.view;
    if (!service) return html`<p class="quiet">${passWords[this.say.language].noService}</p>`;
    const now = this.sync.hubNow();
    const [short, lines] = [columns > 1, Math.ceil(dishes.length / columns)];
    const words = passWords[this.say.language];
    const page = dishes.map((dish) => {
      const line = passLine(dish, service, now);
      return { line, wide: nameWidth(this.#size.seen, columns, line.ready, words) };
    });
    const lean = page.some(({ line, wide }) => isLean(nameFit(line, { say: this.say, wide })));
    return repeat(
      page,
      ({ line }) => line.dish.dish,
      ({ line, wide }, place) => {
        return html`<pass-line
          .say=${this.say}
          .line=${line}
          .now=${now}
          ?open=${now >= service.opensAt}
          ?narrow=${this.narrow}
          ?short=${short}
          ?lean=${lean}
          .wide=${wide}
          >${this.#taps(line, service.id, {
            mark: markOf(drawn, line.dish.dish),
            short,
            up: place % lines >= lines / 2,
          })}</pass-line
        >`;
      },
    );
  }

  #taps(line: PassLine, service: ServiceId, { mark, short, up }: Shown) {
    const { dish } = line.dish;
    const act = ({ detail }: CustomEvent<Intent>) => {
      const { id } = this.sync.tap(detail);
      // A count is taken back by the count before it, which this screen can draw at once.
      const before = detail.kind === 'sold' && { ...detail, sold: line.dish.sold };
      this.#justDone.did(dish, before || { kind: 'undo', command: id });
    };
    const undo = () => {
      const back = this.#justDone.take(dish);
      if (back) this.sync.tap(back);
    };
    return html`<pass-taps
      .say=${this.say}
      .line=${line}
      .service=${service}
      .mark=${mark}
      ?short=${short}
      ?up=${up}
      ?narrow=${this.narrow}
      ?undoable=${this.#justDone.has(dish)}
      @ask=${act}
      @undo=${undo}
    ></pass-taps>`;
  }
}

type Shown = { readonly mark: Mark | null; readonly short: boolean; readonly up: boolean };
