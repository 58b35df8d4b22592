import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Language, Say } from '../../shared/words/index.ts';
import { LANGUAGES } from '../../shared/words/index.ts';
import type { Choice } from '../parts/choice-strip.ts';
import { SPEAKS } from './speak.ts';

type Host = ReactiveControllerHost & HTMLElement & { say: Say };

/** A page that follows no day, and still goes over to the language that is chosen on it. */
export class Spoken implements ReactiveController {
  /** For those who hear it, in whichever language they know. */
  readonly name = 'Language, idioma';
  readonly #host: Host;
  readonly #speaks = (event: Event) => {
    const { detail: language } = event as CustomEvent<Language>;
    this.#host.say = { ...this.#host.say, language };
  };

  constructor(host: Host) {
    this.#host = host;
    host.addController(this);
  }

  hostConnected(): void {
    addEventListener(SPEAKS, this.#speaks);
  }

  hostDisconnected(): void {
    removeEventListener(SPEAKS, this.#speaks);
  }

  /** A box for each language, each by its own name: whoever reads only one finds it. */
  get choices(): Choice[] {
    const host = this.#host;
    return (Object.entries(LANGUAGES) as [Language, string][]).map(([detail, label]) => ({
      label,
      takes: detail === host.say.language,
      choose: () =>
        host.dispatchEvent(
          new CustomEvent('choose-language', { detail, bubbles: true, composed: true }),
        ),
    }));
  }
}
