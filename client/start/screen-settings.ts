import { css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { LANGUAGES, standWords } from '../../shared/words/index.ts';
import '../parts/choice-strip.ts';
import { Part } from '../parts/part.ts';
import type { Setting, Settings } from '../shell/settings.ts';
import { remember } from '../shell/settings.ts';
import type { ChosenGround } from '../theme/index.ts';
import { base } from '../theme/index.ts';

/**
 * What this device knows of itself: how large its glass is and from where it is read, language,
 * ground.
 */
@customElement('screen-settings')
export class ScreenSettings extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: block;
        padding: 0 var(--edge) var(--edge);
        font-size: var(--body);
      }
      h2 {
        font-size: var(--strong);
        font-weight: 800;
        border-bottom: var(--heavy) solid var(--ink);
      }
      .row {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: var(--gap) 1em;
        padding: calc(6px * var(--arcmin)) 0;
        border-bottom: var(--hair) solid var(--pencil);
      }
      .row > :first-child {
        flex: 1 1 12em;
      }
      choice-strip {
        --label-space: normal;
        min-width: 0;
      }
      input {
        width: 4.5em;
        min-height: var(--touch);
        border-bottom: var(--line) solid var(--ink);
        text-align: right;
        font-weight: 700;
      }
      a {
        min-height: var(--touch);
        color: var(--ink);
        font-weight: 800;
        text-decoration: none;
      }
      .said {
        color: var(--soft);
        padding: calc(6px * var(--arcmin)) 0;
      }
    `,
  ];

  @property({ attribute: false }) settings: Settings | null = null;

  protected override willUpdate(): void {
    const language = this.settings?.language ?? 'en';
    this.say = { ...this.say, language };
  }

  protected override draw() {
    const { settings, words } = this;
    if (!settings) return null;
    const { panel, language, ground, fill } = settings;
    const said = standWords[language];
    const grounds: readonly (readonly [ChosenGround, string])[] = [
      ['paper', words.paper],
      ['night', words.night],
      ['clock', said.byClock],
    ];
    const fills = [
      ['', said.asItIs],
      ['glass', said.onFirstTap],
    ] as const;
    const sounds = [
      ['', words.silent],
      ['calls', words.soundsCalls],
    ] as const;
    const { anybody, raw, clean } = words.hands;
    const sides = [
      ['', anybody],
      ['raw', raw],
      ['clean', clean],
    ] as const;
    return html`<h2>${words.thisScreen}</h2>
      ${this.#number('diagonal', words.diagonal, words.inches, panel?.diagonalIn)}
      ${this.#number('distance', words.distance, words.metres, panel?.distanceM)}
      ${panel ? null : html`<p class="said">${words.unmeasured}</p>`}
      ${this.#choice('language', words.language, Object.entries(LANGUAGES), language)}
      ${this.#choice('side', words.handsHere, sides, settings.side ?? '')}
      ${this.#choice('sounds', words.sounds, sounds, settings.sounds ? 'calls' : '')}
      ${this.#choice('ground', words.paperOrNight, grounds, ground)}
      ${this.#choice('fill', said.fillGlass, fills, fill ? 'glass' : '')}
      <a class="row" href="/install.html">${said.bringTablet}</a>`;
  }

  #number(setting: Setting, name: string, unit: string, value: number | undefined) {
    const keep = ({ target }: Event) => this.#keep(setting, (target as HTMLInputElement).value);
    return html`<label class="row">
      <span>${name}</span>
      <input inputmode="decimal" .value=${value ? String(value) : ''} @change=${keep} />
      <span>${unit}</span>
    </label>`;
  }

  #choice(
    setting: Setting,
    name: string,
    all: readonly (readonly [string, string])[],
    chosen: string,
  ) {
    const choices = all.map(([word, label]) => ({
      label,
      takes: word === chosen,
      choose: () => this.#keep(setting, word),
    }));
    return html`<div class="row">
      <span>${name}</span>
      <choice-strip .say=${this.say} .name=${name} .choices=${choices}></choice-strip>
    </div>`;
  }

  /**
   * Ground and letters are laid when a page opens, so it opens anew; both numbers are needed first.
   */
  #keep(setting: Setting, word: string): void {
    remember(setting, word.replace(',', '.'));
    location.reload();
  }
}
