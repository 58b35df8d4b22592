import { html } from 'lit';
import type { DeskView } from '../../shared/view/index.ts';
import type { DeskSectionName, Say } from '../../shared/words/index.ts';
import type { Sync } from '../sync/index.ts';
import './day-log.ts';
import './pull-list.ts';
import './time-chart.ts';

/** What the desk hands to each of its sections. */
export type Desk = {
  readonly sync: Sync;
  /** This device's own taps are laid over it. */
  readonly view: DeskView;
  readonly say: Say;
};

export type Section = { readonly name: DeskSectionName; draw(desk: Desk): unknown };

/** The sections of the desk, in the order of their tabs. */
export const sections: readonly Section[] = [
  {
    name: 'day',
    draw: ({ sync, view, say }) =>
      html`<time-chart .view=${view} .say=${say} .now=${sync.hubNow()}></time-chart>`,
  },
  {
    name: 'pull',
    draw: ({ view, say }) => html`<pull-list .view=${view} .say=${say}></pull-list>`,
  },
  {
    name: 'log',
    draw: ({ view, say }) => html`<day-log .lines=${view.log} .say=${say}></day-log>`,
  },
];
