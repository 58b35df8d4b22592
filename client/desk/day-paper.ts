import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { deskWords, recordDeskWords, sayRefusal } from '../../shared/words/index.ts';
import '../parts/choice-strip.ts';
import { Part } from '../parts/part.ts';
import { readSettings } from '../shell/settings.ts';
import { base } from '../theme/index.ts';
import { keepFile } from './keep-file.ts';
import { type PlanDoors, planDoors } from './plan-doors.ts';

/** A box that takes the day away on paper: sheets by station, for when every screen is dark. */
@customElement('day-paper')
export class DayPaper extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: flex;
        align-items: center;
        gap: 0.6em;
      }
      p {
        max-width: 16em;
      }
      choice-strip {
        font-size: var(--body);
        white-space: nowrap;
      }
    `,
  ];

  /** Left out: those of the hub that this page came from, with this device's own token. */
  @property({ attribute: false }) doors: Pick<PlanDoors, 'paper'> = planDoors({
    token: readSettings(new URLSearchParams()).token,
    language: () => this.say.language,
  });
  @state() private said: string | null = null;

  protected override draw() {
    const { said, say } = this;
    const { onPaper } = deskWords[say.language];
    const choices = [{ label: onPaper, choose: () => void this.#take() }];
    return html`<p role="status">${said ?? nothing}</p>
      <choice-strip .say=${say} .name=${onPaper} .choices=${choices}></choice-strip>`;
  }

  async #take(): Promise<void> {
    const { say } = this;
    try {
      const answer = await this.doors.paper();
      if (answer.ok) keepFile(answer);
      this.said = answer.ok
        ? deskWords[say.language].paperKept(answer.name)
        : sayRefusal(answer.refusal, say);
    } catch {
      this.said = recordDeskWords[say.language].hubAway;
    }
  }
}
