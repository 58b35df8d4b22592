import type { PropertyValues } from 'lit';
import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Celsius, Instant, PersonId } from '../../shared/kernel/index.ts';
import { celsius, fahrenheit, instant, toCelsius } from '../../shared/kernel/index.ts';
import type { CheckView, Intent, Person } from '../../shared/view/index.ts';
import {
  type Doubt,
  doubtOf,
  howOpen,
  isTooOld,
  mayBeBelowZero,
  PROBE_HIGH_C,
  PROBE_LOW_C,
} from '../../shared/view/index.ts';
import type { CheckWords } from '../../shared/words/index.ts';
import {
  checkWords,
  sayAction,
  sayCheck,
  sayCheckRow,
  sayCheckTime,
  sayFelt,
  sayToDo,
  temperature,
  textIn,
} from '../../shared/words/index.ts';
import { base } from '../theme/index.ts';
import { checkPadStyle } from './check-pad.css.ts';
import type { Choice } from './choice-strip.ts';
import './choice-strip.ts';
import { hasDigit, shownTyped } from './digit-keys.ts';
import { Part } from './part.ts';

const MOST_DIGITS = 3;

/**
 * One thing to be looked at: the number that was read, at the end of a cook how it feels, and who
 * looked, which keeps it. Where it is
 * wrong, what its row allows to be done stands before that. A number that was likely read in the
 * other unit is said beside the keys and stays to be mended; nothing is sent. Tells `said` with an
 * intent and a person, or `close`.
 */
@customElement('check-pad')
export class CheckPad extends Part {
  static override styles = [base, checkPadStyle];

  @property({ attribute: false }) check: CheckView | null = null;
  @property({ attribute: false }) people: readonly Person[] = [];
  @property({ type: Number }) now: Instant = instant(0);
  @state() private digits = '';
  @state() private probe = 0;
  @state() private felt: FeelFound | null = null;
  @state() private action: CheckView['allowed'][number] | null = null;
  @state() private asked: Asked | null = null;

  protected override willUpdate(changed: PropertyValues<this>): void {
    const before = changed.get('check');
    if (before && before.key !== this.check?.key) this.#forget();
  }

  protected override draw() {
    const { check, say, now } = this;
    if (!check) return nothing;
    const words = checkWords[say.language];
    const how = howOpen(check, now);
    const isWrong = how === 'failed' || how === 'missed' || check.on.kind === 'discard-time';
    const mayRead = check.hasReading && how !== 'failed' && this.action === null;
    return html`<div class="what">
        <b>${isTooOld(check, now) ? sayToDo(check, now, say) : sayCheck(check, say)}</b>
        ${this.#why(check)}
        ${mayRead ? html`<output>${shownTyped(this.digits)} ${say.temperature}</output>` : nothing}
        ${this.#doubt(words)}
      </div>
      <div class="boxes">
        ${mayRead ? this.#keys(check) : nothing} ${mayRead ? this.#feels(check, words) : nothing}
        ${isWrong ? this.#actions(check, words) : nothing}
        ${this.#probes(check, words, mayRead)} ${this.#names(check, words, isWrong)}
      </div>`;
  }

  /** Till when and what is asked; of what was broken the whole row, with what was found. */
  #why(check: CheckView): string {
    const { now, say } = this;
    const when = sayCheckTime(check, now, say);
    return check.failed ? sayCheckRow(check, say) || when : when;
  }

  #keys({ on }: CheckView) {
    return html`<digit-keys
      .say=${this.say}
      .typed=${this.digits}
      .most=${MOST_DIGITS}
      tenths
      ?signed=${mayBeBelowZero(on.kind)}
      @typed=${({ detail }: CustomEvent<string>) => {
        this.digits = detail;
        this.asked = null;
      }}
      @leave=${() => this.tell('close', null)}
    ></digit-keys>`;
  }

  /** Done is what a hand says it is: the number beside it is a guide. */
  #feels({ feel }: CheckView, words: CheckWords) {
    if (!feel) return nothing;
    const choice = (is: FeelFound): Choice => ({
      label: sayFelt({ words: is === 'there' ? feel.there : feel.notYet }, this.say),
      takes: this.felt === is,
      choose: () => {
        this.felt = is;
        this.asked = null;
      },
    });
    return html`<span class="asks">${words.howFelt}</span>
      <choice-strip
        .say=${this.say}
        .name=${words.howFelt}
        .choices=${[choice('there'), choice('not-yet')]}
      ></choice-strip>`;
  }

  #actions({ allowed }: CheckView, words: CheckWords) {
    const choices = allowed.map((action) => ({
      label: sayAction(action, this.say),
      takes: action === this.action,
      choose: () => {
        this.action = action;
      },
    }));
    return html`<span class="asks">${words.whatWasDone}</span>
      <choice-strip
        .say=${this.say}
        .name=${words.whatWasDone}
        .choices=${choices}
      ></choice-strip>`;
  }

  #probes({ thermometers }: CheckView, words: CheckWords, mayRead: boolean) {
    const probe = thermometers[this.probe % Math.max(1, thermometers.length)];
    if (!mayRead || !probe || thermometers.length < 2) return nothing;
    const choice = {
      label: words.withProbe(textIn(probe.name, this.say)),
      choose: () => {
        this.probe += 1;
      },
    };
    return html`<choice-strip .say=${this.say} .choices=${[choice]}></choice-strip>`;
  }

  /** The name that is tapped keeps it. */
  #names(check: CheckView, words: CheckWords, isWrong: boolean) {
    const here = this.people.filter(({ onShift, isOut }) => onShift && !isOut);
    const names = here.length > 0 ? here : this.people;
    const canKeep = check.hasReading || check.on.kind === 'clean' || this.action !== null;
    const mustAct = isWrong && howOpen(check, this.now) === 'failed' && this.action === null;
    const choices: Choice[] = [
      ...(canKeep && !mustAct
        ? names.map(({ id, name }) => ({ label: name, choose: () => this.#keep(check, id) }))
        : []),
      { label: this.words.leaveIt, choose: () => this.tell('close', null), leaves: true },
    ];
    const who = html`<span class="asks">${words.whoLooked}</span>`;
    return html`${choices.length > 1 ? who : nothing}
      <choice-strip .say=${this.say} .name=${words.whoLooked} .choices=${choices}></choice-strip>`;
  }

  #doubt(words: CheckWords) {
    const { asked, say } = this;
    if (!asked) return nothing;
    if (asked.doubt === 'nothing') return html`<p class="wrong" role="alert">${words.typeIt}</p>`;
    if (asked.doubt === 'feel') return html`<p class="wrong" role="alert">${words.feelIt}</p>`;
    if (asked.doubt.kind === 'impossible') {
      const [low, high] = [PROBE_LOW_C, PROBE_HIGH_C].map((each) => temperature(each, say));
      return html`<p class="wrong" role="alert">${this.words.between(low ?? '', high ?? '')}</p>`;
    }
    const { typedC, otherC } = asked.doubt;
    const choices = [typedC, otherC].flatMap((tempC) =>
      tempC === null
        ? []
        : [
            {
              label: words.itIs(temperature(tempC, say)),
              choose: () => this.#send(asked.check, tempC, asked.person),
            },
          ],
    );
    const typed = `${this.digits} ${say.temperature}`;
    return html`<p class="wrong" role="alert">${words.inOther(typed, temperature(otherC, say))}</p>
      <choice-strip .say=${say} .name=${typed} .choices=${choices}></choice-strip>`;
  }

  #keep(check: CheckView, person: PersonId): void {
    const { action } = this;
    if (action) this.#tell({ kind: 'correct', on: check.on, action }, person);
    else if (!check.hasReading) this.#send(check, null, person);
    else if (!hasDigit(this.digits)) this.asked = { check, person, doubt: 'nothing' };
    else if (check.feel && !this.felt) this.asked = { check, person, doubt: 'feel' };
    else this.#read(check, person);
  }

  #read(check: CheckView, person: PersonId): void {
    const shown = Number(this.digits);
    const unit = this.say.temperature;
    const doubt = doubtOf(shown, unit, check);
    if (doubt) this.asked = { check, person, doubt };
    else this.#send(check, unit === '°F' ? toCelsius(fahrenheit(shown)) : celsius(shown), person);
  }

  #send({ on, thermometers }: CheckView, tempC: Celsius | null, person: PersonId): void {
    const probe = thermometers[this.probe % Math.max(1, thermometers.length)];
    const thermometer = on.kind === 'thermometer' ? on.thermometer : (probe?.id ?? null);
    const felt = this.felt ? { feel: this.felt } : {};
    this.#tell({ kind: 'check', on, tempC, thermometer, ...felt }, person);
  }

  #tell(intent: Intent, person: PersonId): void {
    this.#forget();
    this.tell('said', { intent, person });
  }

  #forget(): void {
    this.digits = '';
    this.felt = null;
    this.action = null;
    this.asked = null;
  }
}

type FeelFound = NonNullable<Extract<Intent, { kind: 'check' }>['feel']>;

type Asked = {
  readonly check: CheckView;
  readonly person: PersonId;
  readonly doubt: Doubt | 'nothing' | 'feel';
};
