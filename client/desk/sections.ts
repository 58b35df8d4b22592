import { html } from 'lit';
import type { DeskView, Drawn } from '../../shared/view/index.ts';
import type { DeskSectionName, Say } from '../../shared/words/index.ts';
import { oddSayer, sayOddRefused } from '../../shared/words/index.ts';
import type { Sync } from '../sync/index.ts';
import './day-close.ts';
import './day-log.ts';
import './day-paper.ts';
import './desk-safety.ts';
import './desk-smokers.ts';
import './mend-day.ts';
import './plan-editor.ts';
import './pull-list.ts';
import './record-desk.ts';
import './time-chart.ts';
import './who.ts';

// What comes is written down here and nowhere else, and refused here.
oddSayer.say = sayOddRefused;

/** What the desk hands to each of its sections. */
export type Desk = {
  readonly sync: Sync;
  /** This device's own taps are laid over it. */
  readonly view: DeskView;
  /** How far they have come. */
  readonly marks: Drawn['marks'];
  readonly say: Say;
  /** What of the section the address names: `2026-11-28-2` of `#record/2026-11-28-2`. */
  readonly of: string | null;
};

export type Section = {
  readonly name: DeskSectionName;
  draw(desk: Desk): unknown;
  /** What stands there also before there is a plan. */
  bare?(say: Say): unknown;
};

/** The sections of the desk, in the order of their tabs. */
export const sections: readonly Section[] = [
  {
    name: 'day',
    draw: ({ sync, view, say }) =>
      html`<time-chart .view=${view} .say=${say} .now=${sync.hubNow()}>
        <day-paper slot="foot" .say=${say}></day-paper>
      </time-chart>`,
  },
  {
    name: 'smokers',
    draw: ({ sync, view, say, marks }) =>
      html`<desk-smokers .sync=${sync} .view=${view} .marks=${marks} .say=${say}></desk-smokers>`,
  },
  {
    name: 'safety',
    draw: ({ sync, view, say }) =>
      html`<desk-safety .sync=${sync} .view=${view} .say=${say}></desk-safety>`,
  },
  {
    name: 'pull',
    draw: ({ sync, view, say, marks }) =>
      html`<pull-list
        .sync=${sync}
        .view=${view}
        .marks=${marks}
        .say=${say}
        .now=${sync.hubNow()}
      ></pull-list>`,
  },
  {
    name: 'mend',
    draw: ({ sync, view, say }) =>
      html`<mend-day .view=${view} .say=${say} .now=${sync.hubNow()}></mend-day>`,
  },
  {
    name: 'plan',
    draw: ({ view, say }) =>
      html`<plan-editor .version=${view.planVersion} .say=${say}></plan-editor>`,
  },
  {
    name: 'close',
    draw: ({ sync, view, say, marks }) =>
      html`<day-close .sync=${sync} .view=${view} .marks=${marks} .say=${say}></day-close>`,
  },
  {
    name: 'record',
    draw: ({ sync, view, say, of }) =>
      html`<desk-record .sync=${sync} .view=${view} .say=${say} .lot=${of}></desk-record>`,
  },
  {
    name: 'log',
    draw: ({ view, say }) => html`<day-log .lines=${view.log} .say=${say}></day-log>`,
  },
  {
    name: 'who',
    draw: ({ say, of }) => who(say, of),
    bare: (say) => who(say, null),
  },
];

function who(say: Say, scanned: string | null) {
  return html`<desk-who .say=${say} .scanned=${scanned}></desk-who>`;
}
