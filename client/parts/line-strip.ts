import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { CommandId, PersonId } from '../../shared/kernel/index.ts';
import { minutes } from '../../shared/kernel/index.ts';
import type { Person, Refusal, TaskView } from '../../shared/view/index.ts';
import { tallyOf } from '../../shared/view/index.ts';
import { sayRefusal, textIn, unbroken, weight } from '../../shared/words/index.ts';
import { base } from '../theme/index.ts';
import type { Choice } from './choice-strip.ts';
import './choice-strip.ts';
import './cure-pad.ts';
import './note-pad.ts';
import { Part } from './part.ts';
import './people-row.ts';
import type { Weighed } from './scale-pad.ts';
import './scale-pad.ts';
import { seenChoices } from './seen-choices.ts';

/** A tap on this line that the hub refused. */
export type LineRefusal = {
  readonly id: CommandId;
  readonly refusal: Refusal;
  /** How many refusals nobody has read yet on the whole screen, this one among them. */
  readonly unread: number;
};

/** What a line can open in place of its small rows. */
export type Strip = 'late' | 'who' | 'note' | 'cure' | 'tubs' | 'caution';

const LATE_MIN = [5, 10, 15];

/**
 * What is opened in a line, where the finger is: how much later, to whom, a note; or why a tap was
 * refused, which comes first. It asks for what is chosen (`ask`), tells what to show instead
 * (`show`), which refusal was read (`seen`), or that all were (`all-seen`).
 */
@customElement('line-strip')
export class LineStrip extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: block;
        font-size: var(--small);
        padding-top: calc(3px * var(--arcmin));
      }
      .told {
        display: flex;
        align-items: center;
        gap: var(--gap);
        font-weight: 700;
      }
    `,
  ];

  @property({ attribute: false }) task: TaskView | null = null;
  @property({ attribute: false }) people: readonly Person[] = [];
  @property({ attribute: false }) open: Strip | null = null;
  @property({ attribute: false }) refused: LineRefusal | null = null;
  /** The line has no places of its own for late and help. */
  @property({ type: Boolean }) brief = false;

  protected override draw() {
    const { task, refused } = this;
    if (refused) return this.#refusal(refused);
    if (!task) return nothing;
    switch (this.open) {
      case 'late':
        return this.#late(task);
      case 'who':
        return this.#who(task);
      case 'note':
        return html`<note-pad
          .say=${this.say}
          @note=${({ detail }: CustomEvent<string>) =>
            this.ask({ kind: 'note', task: task.id, text: detail })}
          @close=${() => this.tell('show', null)}
        ></note-pad>`;
      case 'cure':
        return html`<cure-pad
          .say=${this.say}
          .task=${task}
          .people=${this.people}
          @close=${() => this.tell('show', null)}
        ></cure-pad>`;
      case 'tubs':
        return this.#tubs(task);
      case 'caution':
        return this.#caution(task);
      default:
        return nothing;
    }
  }

  /** The tub that is tapped keeps it; the pad stays for the next until all are weighed. */
  #tubs({ batch, batchName, tubs = [] }: TaskView) {
    const { say, words } = this;
    const keeps = tubs.map(({ tub, name, weightKg, isWeighed, mostKg }) => ({
      label: `${textIn(name, say)} ${isWeighed ? '' : '≈\u00a0'}${unbroken(weight(weightKg, say))}`,
      ...{ of: tub, mostKg },
    }));
    const keep = ({ detail: { of: tub, weightKg } }: CustomEvent<Weighed>) => {
      this.ask({ kind: 'weighTub', batch, tub, weightKg });
      if (tubs.some((each) => !each.isWeighed && each.tub !== tub)) this.tell('show', 'tubs');
    };
    return html`<scale-pad
      .say=${say}
      .asks=${words.whichTub(textIn(batchName, say))}
      .keeps=${keeps}
      @weighed=${keep}
      @close=${() => this.tell('show', null)}
    ></scale-pad>`;
  }

  #refusal(refused: LineRefusal) {
    const choices = seenChoices(refused, this.words, (name, id) => this.tell(name, id));
    return html`<div class="told">
      <span>${sayRefusal(refused.refusal, this.say)}</span>
      ${this.#choices(this.words.seen, choices)}
    </div>`;
  }

  #caution({ caution }: TaskView) {
    return html`<div class="told">
      <span>${caution && textIn(caution, this.say)}</span>
      ${this.#choices('', [this.#close])}
    </div>`;
  }

  #late(task: TaskView) {
    const choices = LATE_MIN.map((min) => ({
      label: this.words.laterBy(min),
      choose: () => this.ask({ kind: 'late', task: task.id, byS: minutes(min) }),
    }));
    return this.#choices(this.words.late, [...choices, this.#close]);
  }

  #who(task: TaskView) {
    const takeBack = {
      label: this.words.takeBack,
      choose: () => this.ask({ kind: 'takeBack', task: task.id }),
    };
    const note = { label: this.words.note, choose: () => this.tell('show', 'note') };
    const asked = task.helpAskedAt !== null;
    const late = { label: this.words.late, choose: () => this.tell('show', 'late') };
    const weigh = { label: this.words.weigh, choose: () => this.tell('show', 'tubs') };
    const help = {
      label: asked ? this.words.helped : this.words.help,
      choose: () => this.ask({ kind: asked ? 'helpCame' : 'needHelp', task: task.id }),
    };
    const careful = { label: this.words.careful, choose: () => this.tell('show', 'caution') };
    const others = [
      // Where the work can hurt is one tap away also where the line has no room for it.
      ...(task.caution && task.state !== 'done' ? [careful] : []),
      ...(this.brief ? [late, help] : []),
      ...(this.brief && task.tubs && task.state === 'running' ? [weigh] : []),
      ...(task.counted > 0 ? [this.#oneLess(task)] : []),
      ...(task.state === 'running' ? [takeBack] : []),
      note,
    ];
    return html`<people-row
      .say=${this.say}
      .people=${this.people}
      .among=${task.shownTo}
      .except=${task.hand}
      .others=${[...others, this.#close]}
      @person=${({ detail }: CustomEvent<PersonId>) =>
        this.ask({ kind: 'giveTo', task: task.id, hand: detail })}
    ></people-row>`;
  }

  /** The tally only adds; a stroke too many is taken off here. */
  #oneLess(task: TaskView): Choice {
    const { before } = tallyOf(task, 0);
    const { words, say } = this;
    const one = task.trayHolds ? words.trayOf(task.counted - before) : textIn(task.piece.one, say);
    return {
      label: words.countLess(one),
      choose: () => this.ask({ kind: 'count', task: task.id, done: before }),
    };
  }

  get #close(): Choice {
    return { label: this.words.close, choose: () => this.tell('show', null), leaves: true };
  }

  #choices(name: string, choices: readonly Choice[]) {
    return html`<choice-strip .say=${this.say} .name=${name} .choices=${choices}></choice-strip>`;
  }
}
