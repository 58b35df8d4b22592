import { html } from 'lit';
import type { LetInAsk, WhoList } from '../../shared/protocol/index.ts';
import type { Say } from '../../shared/words/index.ts';
import { textIn, whoWords } from '../../shared/words/index.ts';

/** What a screen is to be: what the desk fills in to let it in, or to change it. */
export type Named = Pick<LetInAsk, 'name' | 'place'>;

const ROLES = ['wall', 'pit', 'pass', 'desk'] as const;

/** Fields for the name of a screen, its role and its stations; `named` is what stands there now. */
export function placeFields(stations: WhoList['stations'], named: Named | null, say: Say) {
  const words = whoWords[say.language];
  const role = named?.place.role ?? 'wall';
  return html`<label>
      ${words.nameOfScreen}
      <input name="name" required maxlength="40" .defaultValue=${named?.name ?? ''} />
    </label>
    <label>
      ${words.role}
      <select name="role">
        ${ROLES.map(
          (each) => html`<option value=${each} ?selected=${each === role}>
            ${words.roles[each]}
          </option>`,
        )}
      </select>
    </label>
    <fieldset aria-label=${words.stations}>
      ${stations.map(
        ({ id, name }) => html`<label>
          <input
            type="checkbox"
            name="station"
            value=${id}
            ?checked=${named?.place.stations.includes(id) ?? false}
          />
          ${textIn(name, say)}
        </label>`,
      )}
    </fieldset>`;
}

/** What was filled in. A desk belongs to no station. */
export function readPlace(form: HTMLFormElement, stations: WhoList['stations']): Named {
  const typed = new FormData(form);
  const role = ROLES.find((each) => each === typed.get('role')) ?? 'wall';
  const picked = new Set(typed.getAll('station').map(String));
  const theirs = stations.filter(({ id }) => picked.has(id)).map(({ id }) => id);
  const place = { role, stations: role === 'desk' ? [] : theirs };
  return { name: String(typed.get('name') ?? ''), place };
}
