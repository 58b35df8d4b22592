import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Instant, PersonId } from '../../shared/kernel/index.ts';
import { instant } from '../../shared/kernel/index.ts';
import type { Intent, Mark, Person, Side, TaskView } from '../../shared/view/index.ts';
import { amountBehind, textIn } from '../../shared/words/index.ts';
import { base } from '../theme/index.ts';
import './clock-time.ts';
import './cure-line.ts';
import type { LineHeight } from './line-height.ts';
import { MeasuredLine } from './line-height.ts';
import { howRow, ringLetters, tallyPlace } from './line-how.ts';
import { secondRow, takesTwoRows } from './line-second.ts';
import type { LineRefusal, Strip } from './line-strip.ts';
import './line-strip.ts';
import { nowLineStyles } from './now-line.css.ts';
import { nowLineShapes } from './now-line-shapes.css.ts';
import { Part } from './part.ts';
import './ruled-line.ts';
import { styled } from './styled.ts';
import { type Ring, ringOf } from './tap-ring.ts';

/** Beside the words of a line, in minutes of arc: who, when and the place to tap. */
const BESIDE_WORDS = 390;

/** An open strip that nobody taps closes again, so that it hides nothing. */
const STRIP_MS = 20_000;

/**
 * One line under *Now*: who and when, what, how many, the one thing to mind, its minutes, and the
 * place to tap. It asks for what is to be done (`ask`) and tells which refusal was read (`seen`).
 */
@customElement('now-line')
export class NowLine extends Part {
  static override styles = [base, nowLineStyles, nowLineShapes];

  @property({ attribute: false }) task: TaskView | null = null;
  /** Needs a hand now. */
  @property({ type: Boolean, reflect: true }) due = false;
  @property({ type: Number }) now: Instant = instant(0);
  @property({ attribute: false }) people: readonly Person[] = [];
  /** How far this line's last tap has come; null when the hub has it. */
  @property({ attribute: false }) mark: Mark | null = null;
  /** Pieces that the hub knows of. */
  @property({ type: Number }) kept = 0;
  /** What a finger has just done here and may still undo. */
  @property({ attribute: false }) undo: 'start' | 'finish' | null = null;
  /** For whose hands the panel is set up. */
  @property({ attribute: false }) side: Side | null = null;
  @property({ attribute: false }) refused: LineRefusal | null = null;
  @property({ type: Boolean, reflect: true }) narrow = false;
  /** Letters of the longest title on the wall: all are in one size, whatever their state. */
  @property({ type: Number }) longest = 0;
  /** In half of a foot: the title, one row, the ring; the rest is behind the name. */
  @property({ type: Boolean, reflect: true }) brief = false;
  /** So low that the rows are written small, or so high that they can be larger. */
  @property({ reflect: true }) height: LineHeight = '';
  /** What was opened in it: a pad with digits takes more room. */
  @property({ reflect: true }) opened: 'strip' | 'pad' | null = null;
  @state() private open: Strip | null = null;

  #closing: ReturnType<typeof setTimeout> | undefined;

  readonly #measured = new MeasuredLine(this);

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.#closing);
  }

  protected override willUpdate(): void {
    this.height = this.narrow ? '' : this.#measured.height;
    const isPad = this.open === 'tubs' || this.open === 'cure';
    this.opened = this.refused || !this.open ? null : isPad ? 'pad' : 'strip';
  }

  protected override draw() {
    const { task } = this;
    if (!task) return nothing;
    return html`<span class="bar"></span>
      ${this.#side(task)}
      <div class="what" part="what">${this.#what(task)}</div>
      ${this.#place(task)}
      ${
        task.state === 'running'
          ? html`<ruled-line
              part="beside"
              .startAt=${task.startAt}
              .endAt=${task.endAt}
              .now=${this.now}
            ></ruled-line>`
          : nothing
      }`;
  }

  /** Who and when; the whole of it opens the names. */
  #side(task: TaskView) {
    const { words, say } = this;
    // By when it is to be done, also before it is begun; what runs over its time ends now at best.
    const isDone = task.state === 'done';
    const under = isDone ? words.doneAt : words.doneAbout;
    const endAt = isDone || task.endAt > this.now ? task.endAt : this.now;
    return html`<button
      class="side"
      part="beside"
      aria-expanded=${this.open === 'who'}
      @click=${() => this.#show('who')}
    >
      <b class="who">${this.#nameOf(task.hand) ?? words.anyone}</b>
      <clock-time class="when" .say=${say} .at=${task.startAt}></clock-time>
      <span class="under">
        ${under} <clock-time .say=${say} .at=${endAt} .follows=${task.startAt}></clock-time>
      </span>
    </button>`;
  }

  #what(task: TaskView) {
    const title = textIn(task.title, this.say);
    const { say, side, brief, height, due } = this;
    const { wide, isTall } = this.#measured;
    const room = { wide: wide - BESIDE_WORDS, isFlat: brief && !isTall };
    const seen = { say, side, isNew: this.undo === 'start', ...room };
    // Nothing is begun before its cure is weighed: a row that has no room leaves, and not that one.
    const how = [this.#how(task), secondRow(task, seen)];
    const rows = [this.#cure(task), how, this.#caution(task)];
    const strip = this.refused || this.open ? this.#strip(task) : nothing;
    const size = styled({
      '--chars': String(Math.max(title.length, this.longest)),
      // As if every line had all its rows: what can wait is in no larger letters than the others.
      '--rows': String(due && (height === 'low' || brief) && !takesTwoRows(task, seen) ? 2 : 3),
    });
    const show = ({ detail }: CustomEvent<Strip | null>) => this.#show(detail);
    return html`<div class="page" ${size} @show=${show}>
      <h2>${this.#title(task, title)}</h2>
      ${strip === nothing ? rows : strip}
    </div>`;
  }

  /** A tap on what is to be done shows to which standard, in the language of whose hands do it. */
  #title(task: TaskView, title: string) {
    const { cut, hand } = task;
    // Where a row of its own may have no room.
    const many = this.brief ? amountBehind(title, task, this.#measured, this.say) : '';
    const titled = many ? html`${title} <small>${many}</small>` : title;
    if (cut === null) return titled;
    const { language = this.say.language } = this.people.find(({ id }) => id === hand) ?? {};
    const say = { ...this.say, language };
    return html`<button class="title" @click=${() => this.tell('standard', { cut, say })}>
      ${titled}
    </button>`;
  }

  #how(task: TaskView) {
    return howRow(task, {
      ...this.#counting(task),
      isWeighing: this.open === 'tubs',
      weigh: () => this.#show('tubs'),
    });
  }

  #counting({ id }: TaskView) {
    const { say, kept, brief } = this;
    const count = (done: number) => this.ask({ kind: 'count', task: id, done });
    return { say, kept, isBrief: brief, count };
  }

  #cure({ cure }: TaskView) {
    return cure ? html`<cure-line .say=${this.say} .cure=${cure}></cure-line>` : nothing;
  }

  /** Under all else, however low the line: only where it has no room it leaves. */
  #caution({ caution, state }: TaskView) {
    if (!caution || state === 'done') return nothing;
    return html`<p class="caution">${textIn(caution, this.say)}</p>`;
  }

  #strip(task: TaskView) {
    return html`<line-strip
      .say=${this.say}
      .task=${task}
      .people=${this.people}
      .open=${this.open}
      .refused=${this.refused}
      ?brief=${this.brief}
      @ask=${() => this.#show(null)}
    ></line-strip>`;
  }

  #place(task: TaskView) {
    const letters = `${ringLetters(this.say)}`;
    return html`<div class="place" ${styled({ '--word-letters': letters })}>
      ${this.#ring(task)}
      <div class="acts">${this.#acts(task)}</div>
    </div>`;
  }

  #ring(task: TaskView) {
    const { words } = this;
    const title = words.taskName(textIn(task.title, this.say), this.#nameOf(task.hand));
    const tap = (ring: Ring, word: string, kind: 'start' | 'finish' | 'takeBack', under = '') =>
      html`<tap-ring
        .say=${this.say}
        .ring=${ring}
        .word=${word}
        .under=${under}
        .name=${`${word}: ${title}`}
        @tap=${() => this.#do({ kind, task: task.id })}
      ></tap-ring>`;
    if (this.undo) return tap(ringOf(this.mark, 'filled'), words.undo, 'takeBack');
    if (task.state === 'running') return tap(ringOf(this.mark, 'heavy'), words.finish, 'finish');
    if (task.state === 'ready') return tap(ringOf(this.mark, 'thin'), words.start, 'start');
    return html`<span class="waits">${task.state === 'waiting' ? words.waits : ''}</span>`;
  }

  #acts(task: TaskView) {
    const { words } = this;
    if (this.undo === 'finish' || task.state === 'done') return nothing;
    if (this.brief && this.undo === null) return tallyPlace(task, this.#counting(task));
    if (this.undo === 'start') {
      const finish = () => this.#do({ kind: 'finish', task: task.id });
      return html`<button @click=${finish}>${words.finish}</button>`;
    }
    const asked = task.helpAskedAt !== null;
    const help = () => this.#do({ kind: asked ? 'helpCame' : 'needHelp', task: task.id });
    return html`<button aria-expanded=${this.open === 'late'} @click=${() => this.#show('late')}>
        ${words.late}
      </button>
      <button @click=${help}>${asked ? words.helped : words.help}</button>`;
  }

  #do(intent: Intent): void {
    this.#show(null);
    this.ask(intent);
  }

  /** Shows a strip in place of the small rows, or hides it where it is shown already. */
  #show(strip: Strip | null): void {
    this.open = this.open === strip ? null : strip;
    clearTimeout(this.#closing);
    this.tell('opened', strip);
    if (this.open === 'late' || this.open === 'who' || this.open === 'caution') {
      this.#closing = setTimeout(() => this.#show(null), STRIP_MS);
    }
  }

  #nameOf(hand: PersonId | null): string | null {
    return this.people.find(({ id }) => id === hand)?.name ?? null;
  }
}
