import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { InstallFacts } from '../../shared/protocol/index.ts';
import type { DeviceKind, Language } from '../../shared/words/index.ts';
import { installWords } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import '../parts/qr-code.ts';
import { base } from '../theme/index.ts';
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

/**
 * How a device comes to trust this kitchen: on the device itself the steps, and on to the screens
 * once they are done; on the hub's machine, or one that trusts it already, codes to be scanned.
 */
@customElement('install-page')
export class InstallPage extends Part {
  static override styles = [base, installStyle];

  @property() language: Language = 'en';
  /** Where the device wanted to go. */
  @property() to = '/';
  @property() trust: Trust = 'open';
  @property({ attribute: false }) host = location.host;
  @property({ attribute: false }) go = (address: string): void => location.assign(address);
  @state() private facts: InstallFacts | null = null;

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
    const said = installWords[this.language];
    return html`<h1>${said.title}</h1>
      ${this.facts ? this.#body(this.facts) : html`<p role="status">${this.words.looking}</p>`}`;
  }

  #body(facts: InstallFacts) {
    const said = installWords[this.language];
    if (facts.addresses.length === 0) return html`<p>${said.onlyHere}</p>`;
    if (facts.fingerprint === null) return html`<p>${said.nothingToInstall}</p>`;
    return this.trust === 'open' ? this.#steps(facts.fingerprint) : this.#codes(facts);
  }

  #steps(fingerprint: string) {
    const said = installWords[this.language];
    return html`<p>${said.why}</p>
      <a class="box" href="/coalface.crt">${said.get}</a>
      <p class="print">${fingerprint}</p>
      <p>${said.compare}</p>
      ${KINDS.map(
        (kind) => html`<details>
          <summary>${said.devices[kind]}</summary>
          <ol>
            ${said.steps[kind].map((step) => html`<li>${step}</li>`)}
          </ol>
        </details>`,
      )}
      <p>${said.onceInstalled}</p>
      <a class="box" href=${overTls(this.host, this.to)}>${said.goOn}</a>`;
  }

  #codes({ fingerprint, addresses }: InstallFacts) {
    const said = installWords[this.language];
    const [first = '', ...others] = addresses;
    const plain = `${first.replace(/^https:/, 'http:')}/install.html`;
    return html`${this.trust === 'trusted' ? html`<p>${said.trusted}</p>` : nothing}
      <div class="codes">
        ${[[said.scanFirst, plain] as const, [said.scanThen, `${first}/`] as const].map(
          ([name, to]) => html`<figure>
            <figcaption>${name}</figcaption>
            <qr-code .say=${this.say} .text=${to} .name=${to}></qr-code>
            <p class="print">${to}</p>
          </figure>`,
        )}
      </div>
      ${others.length > 0 ? html`<p>${said.alsoAt} ${others.join(' ')}</p>` : nothing}
      <p class="print">${fingerprint}</p>
      <p>${said.compare}</p>
      <a class="box" href="/">${said.goOn}</a>`;
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
