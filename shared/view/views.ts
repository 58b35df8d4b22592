import type { DeskView } from './desk-view.ts';
import type { PassView } from './pass-view.ts';
import type { SmokerView, StationView } from './view.ts';

/**
 * The day as one screen may see it. Everything a screen draws is here or is computed from here by
 * this room's pure functions; no screen decides anything.
 */
export type View = WorkView | PassView | DeskView;

/** A face with the lines of its own hands' work. */
export type WorkView = StationView | SmokerView;

/** @example isWork(view) ? view.tasks : [] */
export const isWork = (view: View): view is WorkView => 'tasks' in view;
