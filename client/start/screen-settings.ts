import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { startWords } from '../../shared/words/index.ts';
import '../parts/choice-strip.ts';
import { Part } from '../parts/part.ts';
import type { Setting, Settings } from '../shell/settings.ts';
import { readSettings, remember, storedWord } from '../shell/settings.ts';
import { readStandards } from '../standard/standards.ts';
import { base, groundAtHour, layGround } from '../theme/index.ts';
import './glass-fields.ts';
import { startRows } from './start.css.ts';

type Options = readonly (readonly [word: string, label: string])[];

/**
 * What this device knows of itself beside its language: how large its glass is and from where it is
 * read, whose hands tap it, its ground.
 */
@customElement('screen-settings')
export class ScreenSettings extends Part {
  static override styles = [
    base,
    startRows,
    css`
      choice-strip {
        --label-space: normal;
        min-width: 0;
      }
      a {
        display: flex;
        align-items: center;
        min-height: var(--touch);
        color: var(--ink);
        font-weight: 800;
      }
    `,
  ];

  @property({ attribute: false }) settings: Settings | null = null;
  /** In the units of the kitchen, once it has said them. */
  @state() private weight: 'lb' | 'kg' | null = null;

  override connectedCallback(): void {
    super.connectedCallback();
    void readStandards().then((shown) => {
      this.weight = shown?.units.weight ?? this.say.weight;
    });
  }

  protected override draw() {
    const { settings, say } = this;
    if (!settings) return nothing;
    const said = startWords[say.language];
    const { ground, fill, side, sounds } = settings;
    const { anybody, raw, clean } = said.hands;
    const sides: Options = [
      ['', anybody],
      ['raw', raw],
      ['clean', clean],
    ];
    const grounds: Options = [
      ['paper', said.light],
      ['night', said.dark],
      ['clock', said.byClock],
    ];
    const fills: Options = [
      ['', said.no],
      ['glass', said.onFirstTap],
    ];
    const rings: Options = [
      ['', said.silent],
      ['calls', said.soundsCalls],
    ];
    return html`${this.#glass(settings)}
      ${this.#choice('side', said.whoseHands, sides, side ?? '', said.whyHands)}
      ${this.#choice('ground', said.lightOrDark, grounds, ground, said.whyByClock)}
      ${this.#choice('fill', said.fullScreen, fills, fill ? 'glass' : '', said.whyFull)}
      ${this.#choice('sounds', said.sounds, rings, sounds ? 'calls' : '')}
      <a href="/install.html">${said.bringTablet}</a>`;
  }

  #glass({ panel }: Settings) {
    const { weight } = this;
    const said = startWords[this.say.language];
    return html`<section>
      <div>
        <h3>${said.size}</h3>
        <p class="why">${said.whyMeasure}</p>
      </div>
      ${
        weight
          ? html`<glass-fields
              .say=${{ ...this.say, weight }}
              .diagonal=${panel ? String(panel.diagonalIn) : storedWord('diagonal')}
              .distance=${panel ? String(panel.distanceM) : storedWord('distance')}
              .measured=${panel !== null}
              @keep=${({ detail }: CustomEvent<{ setting: Setting; word: string }>) =>
                this.#keep(detail.setting, detail.word)}
            ></glass-fields>`
          : nothing
      }
    </section>`;
  }

  #choice(setting: Setting, name: string, all: Options, chosen: string, why = '') {
    const choices = all.map(([word, label]) => ({
      label,
      takes: word === chosen,
      choose: () => this.#keep(setting, word),
    }));
    return html`<section>
      <div>
        <h3>${name}</h3>
        ${why ? html`<p class="why">${why}</p>` : nothing}
      </div>
      <choice-strip .say=${this.say} .name=${name} .choices=${choices}></choice-strip>
    </section>`;
  }

  /** A word in the address would stand before what is chosen now. */
  #keep(setting: Setting, word: string): void {
    remember(setting, word);
    const address = new URL(location.href);
    address.searchParams.delete(setting);
    history.replaceState(null, '', address);
    const settings = readSettings(address.searchParams);
    this.settings = settings;
    const { ground } = settings;
    layGround(ground === 'clock' ? groundAtHour(new Date().getHours()) : ground);
  }
}
