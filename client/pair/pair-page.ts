import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Refusal } from '../../shared/view/index.ts';
import type { Language } from '../../shared/words/index.ts';
import { sayRefusal, whoWords } from '../../shared/words/index.ts';
import '../parts/choice-strip.ts';
import { Part } from '../parts/part.ts';
import { Spoken } from '../shell/spoken.ts';
import type { WhoDoors } from '../shell/who-doors.ts';
import { base, pageHead } from '../theme/index.ts';
import type { ComingIn } from './coming-in.ts';
import { comeIn, take } from './coming-in.ts';

/** What a screen shows that nobody has let in yet: its code, as large as the glass. */
@customElement('pair-page')
export class PairPage extends Part {
  static override styles = [
    base,
    pageHead,
    css`
      :host {
        display: grid;
        grid-template-rows: auto 1fr auto;
        grid-template-columns: minmax(0, 1fr);
        min-height: 100dvh;
        padding: var(--gap) var(--edge) var(--edge);
        background: var(--ground);
      }
      h1 {
        font-size: var(--strong);
        font-weight: 800;
      }
      choice-strip {
        font-size: var(--small);
      }
      main {
        align-self: center;
      }
      output {
        display: block;
        font-size: min(17vw, 52vh);
        font-weight: 800;
        line-height: 1.05;
        letter-spacing: 0.04em;
        white-space: nowrap;
      }
      output span + span {
        margin-left: 0.22em;
      }
      .say {
        font-size: var(--figure);
        font-weight: 800;
        max-width: 32ch;
      }
      figure {
        margin: var(--gap) 0;
        display: flex;
        align-items: center;
        gap: var(--gap);
      }
      qr-code {
        flex: none;
        width: min(24vh, 40vw);
      }
      .soft {
        color: var(--soft);
      }
      form {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: var(--gap);
        padding-top: var(--gap);
      }
      details {
        border-top: var(--line) solid var(--ink);
      }
      summary {
        display: flex;
        align-items: center;
        min-height: var(--touch);
        margin-top: var(--gap);
        text-decoration: underline;
        text-underline-offset: 0.15em;
        cursor: pointer;
      }
      input {
        min-height: var(--touch);
        border-bottom: var(--line) solid var(--ink);
        font-weight: 700;
        width: 10em;
      }
      .code {
        text-transform: uppercase;
      }
      button {
        border: var(--heavy) solid var(--ink);
        font-weight: 800;
        padding: 0 0.6em;
      }
      .wrong {
        flex-basis: 100%;
        font-weight: 700;
      }
    `,
  ];

  @property() language: Language = 'en';
  @property({ attribute: false }) doors!: WhoDoors;
  @property() origin = location.origin;
  @property({ attribute: false }) keep: (token: string) => boolean = () => false;
  @property({ attribute: false }) go: (path: string) => void = () => {};
  @state() private now: ComingIn = { is: 'looking' };
  @state() private wrong: Refusal | null = null;

  readonly #spoken = new Spoken(this);
  #stop: AbortController | null = null;

  override connectedCallback(): void {
    super.connectedCallback();
    this.say = { ...this.say, language: this.language };
    this.#stop = new AbortController();
    void comeIn({
      doors: this.doors,
      keep: (token) => this.keep(token),
      go: (path) => this.go(path),
      show: this.#show,
      rest: (ms) => new Promise((resolve) => setTimeout(resolve, ms)),
      signal: this.#stop.signal,
    });
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#stop?.abort();
  }

  protected override draw() {
    const words = whoWords[this.say.language];
    return html`<header>
        <h1>${words.letThisIn}</h1>
        <choice-strip
          .say=${this.say}
          .name=${this.#spoken.name}
          .choices=${this.#spoken.choices}
        ></choice-strip>
      </header>
      <main>${this.#what()}</main>
      <details ?open=${this.now.is === 'unclaimed'}>
        <summary>${words.haveOwnersCode}</summary>
        <form @submit=${this.#claim}>
        <label>
          ${words.ownersCode}
          <input class="code" name="code" required autocomplete="off" maxlength="12" />
        </label>
        <label>
          ${words.nameOfScreen}
          <input name="name" required maxlength="40" .defaultValue=${words.deskName} />
        </label>
        <button>${words.claim}</button>
        ${this.wrong ? html`<p class="wrong" role="alert">${this.#said(this.wrong)}</p>` : nothing}
      </form>
      </details>`;
  }

  readonly #show = (now: ComingIn): void => {
    this.now = now;
  };

  #what() {
    const words = whoWords[this.say.language];
    const { now } = this;
    switch (now.is) {
      case 'looking':
        return html`<p class="say">${this.words.looking}</p>`;
      case 'away':
        return html`<p class="say" role="status">${words.hubAway}</p>`;
      case 'forgetful':
        return html`<p class="say" role="alert">${words.forgetful}</p>`;
      case 'unclaimed':
        return html`<p class="say">${words.unclaimed}</p>`;
      case 'refused':
        return html`<p class="say" role="status">${this.#said(now.refusal)}</p>`;
      default:
        void import('../parts/qr-code.ts');
        return html`<output aria-label=${[...now.code].join(' ')}>
            <span>${now.code.slice(0, 3)}</span><span>${now.code.slice(3)}</span>
          </output>
          <p class="say">${words.showAtDesk}</p>
          ${this.#toScan(now.code)}
          <p class="soft">${words.codeLasts(Math.ceil(now.leftS / 60))}</p>`;
    }
  }

  /** A phone finds this hub under the address by which this screen does, unless that is local. */
  #toScan(code: string) {
    if (isLocal(this.origin)) return nothing;
    const words = whoWords[this.say.language];
    return html`<figure>
      <qr-code .text=${`${this.origin}/desk.html#who/${code}`} .name=${words.orScan}></qr-code>
      <figcaption>${words.orScan}</figcaption>
    </figure>`;
  }

  #said(refusal: Refusal): string {
    return sayRefusal(refusal, this.say);
  }

  readonly #claim = async (event: SubmitEvent): Promise<void> => {
    event.preventDefault();
    const typed = new FormData(event.target as HTMLFormElement);
    const [code, name] = [String(typed.get('code')), String(typed.get('name'))];
    try {
      const answer = await this.doors.claim({ code, name });
      if (answer.ok) take(answer, { keep: this.keep, go: this.go, show: this.#show });
      else this.wrong = answer.refusal;
    } catch {
      this.now = { is: 'away' };
    }
  };
}

const isLocal = (origin: string) =>
  ['localhost', '127.0.0.1', '[::1]'].includes(new URL(origin).hostname);
