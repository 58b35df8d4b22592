import type { PropertyValues } from 'lit';
import { css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { PersonId, TaskId } from '../../shared/kernel/index.ts';
import type { Drawn, Side, StationPage, StationView, View } from '../../shared/view/index.ts';
import { stationPage } from '../../shared/view/index.ts';
import type { Language } from '../../shared/words/index.ts';
import { sayRefusal, textIn } from '../../shared/words/index.ts';
import '../parts/next-row.ts';
import '../parts/then-foot.ts';
import '../parts/wall-head.ts';
import { CrewDoor } from '../shell/crew-door.ts';
import { DayController, worstService } from '../shell/day-controller.ts';
import { nothingToDo, notice } from '../shell/notice.ts';
import { OverHeight } from '../shell/over-height.ts';
import { SeenSize } from '../shell/seen-size.ts';
import { Touched } from '../shell/touched.ts';
import { Wall } from '../shell/wall.ts';
import { workLine } from '../shell/work-line.ts';
import type { Sync } from '../sync/index.ts';
import { base } from '../theme/index.ts';
import { isNarrow, isTight, linesOf, roomOf, wallUnder } from './room.ts';

const isStation = (view: View): view is StationView => view.face === 'station';

/** The wall of a station: Now, Next and Then, read from top to bottom like a page. */
@customElement('station-wall')
export class StationWall extends Wall {
  static override styles = [
    base,
    css`
      :host {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        grid-template-rows: auto auto minmax(0, 1fr) auto auto;
        height: 100dvh;
        overflow: hidden;
        background: var(--ground);
      }
      :host([narrow]) {
        height: auto;
        min-height: 100dvh;
        grid-template-rows: auto auto 1fr auto auto;
      }
      .now {
        display: grid;
        grid-auto-rows: minmax(0, 1fr);
        min-height: 0;
      }
      :host([narrow]) .now {
        grid-auto-rows: minmax(min-content, 1fr);
      }
      .quiet {
        align-self: center;
        padding: var(--edge);
        font-size: var(--figure);
        font-weight: 800;
      }
      .next {
        border-bottom: var(--line) solid var(--ink);
        font-size: var(--body);
        --row-height: max(var(--touch), calc(40px * var(--arcmin)));
      }
      then-foot {
        min-height: calc(38px * var(--arcmin));
      }
    `,
  ];

  @property({ attribute: false }) sync!: Sync;
  @property() language: Language = 'en';
  @property({ attribute: false }) side: Side | null = null;
  /** Whose it is, if it is anybody's own. */
  @property({ attribute: false }) own: PersonId | null = null;
  @property({ type: Boolean, reflect: true }) narrow = false;

  readonly #size = new SeenSize(this);
  readonly #over = new OverHeight(this, 'wall-head, .over');
  readonly #crew = new CrewDoor(this);
  readonly #touched = new Touched(() => this.requestUpdate());
  #day: DayController<StationView> | null = null;

  override connectedCallback(): void {
    super.connectedCallback();
    const { sync, language } = this;
    this.#day ??= new DayController(this, { sync, language, isOurs: isStation });
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#touched.stop();
  }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    if (this.#day) this.say = this.#day.say;
    this.narrow = isNarrow(this.#size.seen);
  }

  protected override updated(): void {
    const { view, blank } = this.sync.state;
    // What last stood gives way to what stands, not to a wall that is still looking for it.
    if (view || blank) document.querySelector('.likeness')?.remove();
  }

  protected override draw() {
    const drawn = this.#day?.drawn ?? null;
    return html`${this.#head(drawn)} ${drawn ? this.#page(drawn) : this.#nothing()}`;
  }

  #head(drawn: Drawn<StationView> | null) {
    const { say, narrow } = this;
    const named = drawn?.view.stations ?? [];
    const places = named.map((station) => textIn(station.name, say)).join(' · ');
    const owner = drawn?.view.people.find(({ id }) => id === this.own);
    const name = owner?.name ?? places;
    const crew = this.#crew.offer(drawn?.view ?? null, this.sync, say);
    return html`<wall-head
      .say=${say}
      .name=${name}
      .outlook=${drawn && worstService(drawn.view)}
      .now=${this.sync.hubNow()}
      .others=${crew.choices}
      .asks=${crew.asks}
      ?open=${crew.isOpen}
      @toggle=${this.#crew.toggle}
      ?narrow=${narrow}
      ?tight=${isTight(this.#size.seen)}
    ></wall-head>`;
  }

  #nothing() {
    const { blank } = this.sync.state;
    return html`${notice({ now: [] }, this)}
      <p class="quiet">${blank ? sayRefusal(blank, this.say) : this.words.looking}</p>`;
  }

  #page(drawn: Drawn<StationView>) {
    const { say, narrow } = this;
    const page = this.#fill(drawn.view);
    const pick = ({ detail }: CustomEvent<TaskId>) => this.#touched.picked(detail);
    return html`${notice(page, this)}
      <main class="now" aria-label=${this.words.nowBand}>${this.#now(page, drawn)}</main>
      <section class="next" aria-label=${this.words.nextBand}>
        ${repeat(
          page.next,
          ({ id }) => id,
          (task, row) => html`<next-row
            .say=${say}
            .task=${task}
            .people=${drawn.view.people}
            .now=${this.sync.hubNow()}
            ?first=${row === 0}
            ?narrow=${narrow}
            @pick=${pick}
          ></next-row>`,
        )}
      </section>
      <then-foot
        .say=${say}
        .tasks=${page.further}
        .now=${this.sync.hubNow()}
        .later=${page.laterCount}
        @pick=${pick}
      ></then-foot>`;
  }

  /** First how many lines stand under *Now*, then what they leave room for. */
  #fill(view: StationView): StationPage {
    const { held } = this.#touched;
    const now = this.sync.hubNow();
    const wall = wallUnder(this.#size.seen, this.#over.px);
    const lines = { now: linesOf(wall), next: 0, further: 0 };
    const first = stationPage(view, now, { room: lines, held });
    return stationPage(view, now, { room: roomOf(wall, first.now.length), held });
  }

  #now(page: StationPage, drawn: Drawn<StationView>) {
    if (page.now.length === 0) return html`<p class="quiet">${nothingToDo(page, this)}</p>`;
    const { sync, say, narrow } = this;
    const longest = Math.max(...page.now.map(({ task }) => textIn(task.title, say).length));
    const work = { sync, say, narrow, drawn, touched: this.#touched, longest, side: this.side };
    return repeat(
      page.now,
      ({ task }) => task.id,
      (line) => workLine(line, work),
    );
  }
}
