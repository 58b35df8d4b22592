import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { InstallFacts } from '../../shared/protocol/index.ts';
import type { DeviceKind, Language } from '../../shared/words/index.ts';
import { installWords } from '../../shared/words/index.ts';
import '../parts/choice-strip.ts';
import { Part } from '../parts/part.ts';
import '../parts/qr-code.ts';
import { Spoken } from '../shell/spoken.ts';
import { base, pageHead } from '../theme/index.ts';
import { deviceKind } from './device-kind.ts';
import { installStyle } from './install-style.ts';
import { installFacts, isTrusted, overTls, type Trust } from './trust.ts';

const LOOK_EVERY_MS = 3000;

const KINDS: readonly DeviceKind[] = [
  'ios',
  'android',
  'chromeos',
  'windows',
  'mac',
  'linux',
  'firefox',
];

type Said = { readonly title: string; readonly how: string };

/**
 * How a device comes to trust this kitchen: on the device itself the steps, and on to the screens
 * once they are done; on the hub's machine, or one that trusts it already, codes to be scanned.
 */
@customElement('install-page')
export class InstallPage extends Part {
  static override styles = [base, pageHead, installStyle];

  @property() language: Language = 'en';
  /** Where the device wanted to go. */
  @property() to = '/';
  @property() trust: Trust = 'open';
  @property({ attribute: false }) host = location.host;
  @property({ attribute: false }) kind = deviceKind(navigator);
  @property({ attribute: false }) go = (address: string): void => location.assign(address);
  @state() private facts: InstallFacts | null = null;

  readonly #spoken = new Spoken(this);
  #again: ReturnType<typeof setTimeout> | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.say = { ...this.say, language: this.language };
    void this.#look();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.#again);
  }

  protected override draw() {
    const { say, facts } = this;
    const said = installWords[say.language];
    return html`<header>
        <h1>${said.title}</h1>
        <choice-strip
          .say=${say}
          .name=${this.#spoken.name}
          .choices=${this.#spoken.choices}
        ></choice-strip>
      </header>
      <main>
        ${facts ? this.#body(facts) : html`<p role="status">${this.words.looking}</p>`}
      </main>
      ${
        this.#isAtTheCertificate(facts)
          ? nothing
          : html`<a class="box" href="/">${said.screens}</a>`
      }`;
  }

  /** Nothing but this page can be had before the certificate is. */
  #isAtTheCertificate(facts: InstallFacts | null): boolean {
    return this.trust === 'open' && facts?.fingerprint !== null;
  }

  #body(facts: InstallFacts) {
    const said = installWords[this.say.language];
    const { fingerprint, addresses } = facts;
    const [first] = addresses;
    if (fingerprint !== null && this.trust === 'open') return this.#steps(fingerprint);
    if (fingerprint !== null && first) return this.#codes(fingerprint, first, addresses.slice(1));
    if (first) return this.#only(said.nothingToInstall, `${first}/`);
    if (this.trust === 'open') return this.#only(said.inTheOpen, `http://${this.host}/`);
    return html`<p>${said.alone}</p>
      <ol>
        ${this.#step(said.stopIt)}
        ${this.#step(said.startIt, html`<code>npm start -- --lan</code>`)}
        ${this.#step(said.comeBack)}
      </ol>
      <p class="soft">${said.ifPlain}</p>`;
  }

  #steps(fingerprint: string) {
    const said = installWords[this.say.language];
    const { get, open } = said;
    return html`<p>${said.why}</p>
      <ol class="long">
        ${this.#step(said.found)}
        ${this.#step(get, html`<a class="box" href="/coalface.crt">${get.title}</a>`)}
        ${this.#step(said.compare, html`<p class="print">${fingerprint}</p>`)}
        ${this.#step(
          said.trust,
          html`<div>${this.#devices()}</div>
            <p class="soft">${said.notTried}</p>`,
        )}
        ${this.#step(
          open,
          html`<a class="box" href=${overTls(this.host, this.to)}>${said.goOn}</a>`,
        )}
        ${this.#step(said.toHome)}
      </ol>`;
  }

  /** That of this device is open, and the others wait behind one line. */
  #devices() {
    const { kind } = this;
    const others = KINDS.filter((each) => each !== kind).map((each) => this.#device(each));
    if (!kind) return others;
    return html`${this.#device(kind, true)}
      <details>
        <summary>${installWords[this.say.language].others}</summary>
        ${others}
      </details>`;
  }

  #device(kind: DeviceKind, isThis = false) {
    const { devices, steps } = installWords[this.say.language];
    return html`<details ?open=${isThis}>
      <summary>${devices[kind]}</summary>
      <ol class="how">
        ${steps[kind].map((step) => html`<li>${step}</li>`)}
      </ol>
    </details>`;
  }

  #codes(fingerprint: string, first: string, others: readonly string[]) {
    const said = installWords[this.say.language];
    const plain = `${first.replace(/^https:/, 'http:')}/install.html`;
    return html`<ol class="long">
        ${this.#step(said.join)} ${this.#step(said.scanFirst, this.#code(plain))}
        ${this.#step(said.compareThere, html`<p class="print">${fingerprint}</p>`)}
        ${this.#step(said.scanThen, this.#code(`${first}/`))} ${this.#step(said.letIn)}
        ${this.#step(said.toHome)}
      </ol>
      ${
        others.length > 0 ? html`<p class="soft">${said.alsoAt} ${others.join(' ')}</p>` : nothing
      }`;
  }

  /** There is only the way to the screens. */
  #only(why: string, address: string) {
    const said = installWords[this.say.language];
    return html`<p>${why}</p>
      <ol>
        ${this.#step(said.join)} ${this.#step(said.scanOnly, this.#code(address))}
        ${this.#step(said.letIn)} ${this.#step(said.toHome)}
      </ol>`;
  }

  #step({ title, how }: Said, more: TemplateResult | typeof nothing = nothing) {
    return html`<li class="step">
      <h2>${title}</h2>
      <p>${how}</p>
      ${more}
    </li>`;
  }

  #code(to: string) {
    return html`<qr-code .say=${this.say} .text=${to} .name=${to}></qr-code>
      <p class="print">${to}</p>`;
  }

  async #look(): Promise<void> {
    this.facts ??= await installFacts();
    const mayCome = this.trust === 'open' && this.facts?.fingerprint;
    if (mayCome && (await isTrusted(this.host))) {
      this.go(overTls(this.host, this.to));
      return;
    }
    if (this.isConnected && (mayCome || !this.facts)) {
      this.#again = setTimeout(() => void this.#look(), LOOK_EVERY_MS);
    }
  }
}
