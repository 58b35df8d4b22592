import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { startWords, textIn } from '../../shared/words/index.ts';
import '../parts/choice-strip.ts';
import type { Choice } from '../parts/choice-strip.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';
import { type Listed, pathTo, stationOf } from './listed.ts';

export type Named = { readonly id: string; readonly name: string };

/** Which stations a screen shows, and on a phone whose it is. */
@customElement('wall-chooser')
export class WallChooser extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: grid;
        gap: var(--gap);
        padding-bottom: var(--gap);
      }
      h3 {
        font-weight: 700;
      }
      a {
        justify-self: start;
        display: flex;
        align-items: center;
        min-height: var(--touch);
        padding: 0 0.8em;
        border: var(--heavy) solid var(--ink);
        color: var(--ink);
        font-weight: 800;
        text-decoration: none;
      }
    `,
  ];

  @property({ attribute: false }) stations: readonly Listed[] = [];
  /** Those who may have a phone of their own here; null: the screen is nobody's own. */
  @property({ attribute: false }) people: readonly Named[] | null = null;
  @state() private person: string | null = null;
  /** Null as long as none was tapped: what is one person's own shows them wherever they work. */
  @state() private chosen: readonly string[] | null = null;

  protected override draw() {
    const { say, people, stations, person } = this;
    const chosen = this.chosen ?? (people ? stations.map(stationOf) : []);
    const said = startWords[say.language];
    const names = people?.map(
      ({ id, name }): Choice => ({
        label: name,
        takes: id === person,
        choose: () => {
          this.person = id;
        },
      }),
    );
    const places = stations.map((listed): Choice => {
      const station = stationOf(listed);
      const isChosen = chosen.includes(station);
      return {
        label: textIn(listed.name, say),
        takes: isChosen,
        choose: () => {
          this.chosen = isChosen ? chosen.filter((each) => each !== station) : [...chosen, station];
        },
      };
    });
    const isWhole = chosen.length > 0 && (people === null || person !== null);
    return html`${names ? this.#question(said.whosePhone, names) : nothing}
      ${this.#question(said.whichStations, places)}
      ${isWhole ? html`<a href=${pathTo(chosen, person)}>${said.openIt}</a>` : nothing}`;
  }

  #question(name: string, choices: readonly Choice[]) {
    return html`<h3>${name}</h3>
      <choice-strip .say=${this.say} .name=${name} .choices=${choices}></choice-strip>`;
  }
}
