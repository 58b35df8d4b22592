import type { Instant, PersonId } from '../kernel/index.ts';
import { type StationView, stationPage, type TaskView } from '../view/index.ts';
import {
  amountOf,
  amountsOf,
  clockAhead,
  clockTime,
  HALF_DAY_MS,
  mindedOf,
  pressingOf,
  type Say,
  sayNextWhy,
  sayNothingToDo,
  textIn,
  ui,
} from '../words/index.ts';
import { escaped } from './markup.ts';

/** What any glass has room for in the letters of a likeness: lines, and rows under them. */
const ROOM = { now: 3, next: 3, further: 0 };

/**
 * A station's wall in plain words, nothing of it to be tapped: for its page until that has drawn
 * the wall itself. As markup, of the form that a wall leaves of itself.
 */
export function stationLikeness(
  view: StationView,
  {
    now,
    say,
    own = null,
  }: { readonly now: Instant; readonly say: Say; readonly own?: PersonId | null },
): string {
  const page = stationPage(view, now, { room: ROOM, held: new Set() });
  const lines = page.now.map(({ task }) => nowLine(task, { view, now, say }));
  const nothing = () => sayNothingToDo({ ...page, ...view, isFireCalled: false }, now, say);
  const head = [said('h1', nameOf(view, own, say)), said('p', stoodAt(now, say))];
  const parts = [
    within('header', ...head),
    within('ol', ...(lines.length > 0 ? lines : [said('li', nothing())])),
    within('ul', ...page.next.map((task) => nextRow(task, { view, now, say }))),
  ];
  return `<div class="likeness" aria-hidden="true" lang="${say.language}">${parts.join('')}</div>`;
}

const within = (name: string, ...inside: readonly string[]) =>
  `<${name}>${inside.join('')}</${name}>`;

const said = (name: string, words: string) => within(name, escaped(words));

/** Whose it is, if it is anybody's own; else where it hangs. */
const nameOf = ({ people, stations }: StationView, own: PersonId | null, say: Say) =>
  people.find(({ id }) => id === own)?.name ??
  stations.map(({ name }) => textIn(name, say)).join(' · ');

const stoodAt = (now: Instant, say: Say) => ui[say.language].stoodAt(clockTime(now, say));

type Seen = { readonly view: StationView; readonly now: Instant; readonly say: Say };

function nowLine(task: TaskView, { view, now, say }: Seen): string {
  const words = ui[say.language];
  const who = view.people.find(({ id }) => id === task.hand)?.name ?? words.anyone;
  const isDone = task.state === 'done';
  // What runs over its time ends now at best.
  const endAt = isDone || task.endAt > now ? task.endAt : now;
  const under = isDone ? words.doneAt : words.doneAbout;
  const by = `${under} ${followingClock(endAt, task.startAt, say)}`;
  const beside = [who, clockTime(task.startAt, say), by].map((each) => said('p', each));
  const rows = rowsOf(task, say).map((row) => said('p', row));
  return within(
    'li',
    within('div', ...beside),
    within('div', said('h2', textIn(task.title, say)), ...rows),
  );
}

/** A time that stands right under another one: on the same half of the day, that is known. */
function followingClock(at: Instant, follows: Instant, say: Say): string {
  const [time = '', half] = clockTime(at, say).split(' ');
  const isSaid = at - follows < HALF_DAY_MS && clockTime(follows, say).endsWith(`${half}`);
  return half && !isSaid ? `${time} ${half}` : time;
}

/** How much, what is to be minded, and what can hurt. */
function rowsOf(task: TaskView, say: Say): string[] {
  const pressing = pressingOf(task, { say, side: null, isNew: false });
  const minded = mindedOf(task, say);
  const mind =
    pressing && pressing.how !== 'mind'
      ? [[pressing.said, minded].filter(Boolean).join(pressing.how === 'plain' ? '. ' : ' ')]
      : [pressing?.said ?? '', minded];
  const caution = task.caution && task.state !== 'done' ? textIn(task.caution, say) : '';
  return [amountsOf(task, say), ...mind, caution].filter((row) => row !== '');
}

function nextRow(task: TaskView, { view, now, say }: Seen): string {
  const thing = task.thing && textIn(task.thing, say);
  const many = [amountOf(task, say), thing].filter(Boolean).join(' · ');
  const what = [textIn(task.title, say), many, sayNextWhy(task, view.people, say)];
  return within(
    'li',
    said('p', clockAhead(task.startAt, now, say)),
    said('p', what.filter(Boolean).join(' ')),
  );
}
