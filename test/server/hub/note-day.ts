import type { DayRules, RunningDay } from '../../../server/hub/index.ts';
import type { Event } from '../../../shared/day/index.ts';
import { type DayId, type Instant, instant, type PersonId } from '../../../shared/kernel/index.ts';
import type { View } from '../../../shared/view/index.ts';

/**
 * The smallest day a hub can keep: a list of notes. It shows each note to every face, and the
 * minute of the clock, so that time alone changes it too. Some words make it misbehave.
 */
export type NoteDay = { readonly notes: readonly Note[] };
type Note = { readonly text: string; readonly at: Instant; readonly seq: number };

/** What a screen of this day is shown, where a real one has tasks. */
export type NoteView = { readonly at: Instant; readonly notes: readonly string[]; minute: number };
export const asNotes = (view: View) => view as unknown as NoteView;

export const BAD_WORDS = { decide: 'throw in decide', apply: 'throw in apply' };

const fold = (state: NoteDay, event: Event): NoteDay =>
  event.kind === 'noteWritten'
    ? { notes: [...state.notes, { text: event.text, at: event.at, seq: event.seq }] }
    : state;

export const noteRules: DayRules<NoteDay> = {
  empty: () => ({ notes: [] }),
  fold,
  decide(state, command) {
    if (command.kind !== 'note') return { ok: false, refusal: { rule: 'unknown-task' } };
    if (command.text === BAD_WORDS.decide) throw new Error(BAD_WORDS.decide);
    if (state.notes.some(({ text }) => text === command.text)) {
      return { ok: false, refusal: { rule: 'nothing-moves' } };
    }
    return { ok: true, facts: [{ kind: 'noteWritten', text: command.text, task: null }] };
  },
  // A screen that a note names is shown nothing more.
  mayShow: ({ notes }, { screenId }) =>
    notes.some(({ text }) => text === `without ${screenId}`) ? { rule: 'screen-revoked' } : null,
  // A screen is put up where the last note that names it so says.
  placeOf: ({ notes }, screen) =>
    notes.findLast(({ text }) => text.startsWith(`${screen} goes to `))?.text ?? null,
  mayAsk: (_state, { face }) =>
    face.kind === 'station' && face.station === 'silent' ? { rule: 'not-this-screens' } : null,
  personAt: (screen) => (screen === 'with-mara' ? ('mara' as PersonId) : null),
  changedAt: (state) => state.notes.at(-1)?.at ?? instant(0),
  dayOf: () => '2026-11-25' as DayId,
  // A note may begin another day.
  today: ({ notes }) =>
    (notes.findLast(({ text }) => text.startsWith('day '))?.text ?? 'day one') as DayId,
  run: (state, now) => runNotes(state, now),
};

function runNotes(start: NoteDay, startAt: Instant): RunningDay<NoteDay> {
  let state = start;
  let minute = Math.floor(startAt / 60_000);
  return {
    apply({ event, state: after }) {
      if (event.kind === 'noteWritten' && event.text === BAD_WORDS.apply) {
        throw new Error(BAD_WORDS.apply);
      }
      state = after;
    },
    tick(now) {
      const before = minute;
      minute = Math.floor(now / 60_000);
      return minute !== before;
    },
    show(face, now) {
      if (face.kind === 'station' && face.station === 'nowhere') {
        return { ok: false, refusal: { rule: 'unknown-place' } };
      }
      const notes = state.notes.map(({ text }) => text);
      // The smoker shows no clock here, so that there is a face which time does not change.
      const shown: NoteView = { at: now, notes, minute: face.kind === 'smoker' ? 0 : minute };
      return { ok: true, view: shown as unknown as View };
    },
    ifMoved: () => {
      throw new Error('no moves here');
    },
  };
}
