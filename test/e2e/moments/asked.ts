import type { Instant } from '../../../shared/kernel/index.ts';
import type { PassView, SmokerView, StationView, View } from '../../../shared/view/index.ts';
import { handChange, passLine } from '../../../shared/view/index.ts';
import type { Language, Say } from '../../../shared/words/index.ts';
import { clockTime, textIn, ui } from '../../../shared/words/index.ts';
import type { SeenText, SeenWall } from './seen.ts';

// What whoever stands before a wall has to be told at once: what now, how much, to what standard,
// by when, who; at the pass how much is ready, how long it may be held, what lands, what runs out.

const sayOf = ({ zone, clock, temperature, weight }: View, language: Language): Say => ({
  language,
  zone,
  clock,
  temperature,
  weight,
});

/** What it leaves out of what is asked of it. */
export function missingOn(seen: SeenWall, view: View, language: Language): string[] {
  const say = sayOf(view, language);
  if (view.face === 'pass') return missingAtPass(seen, view, say);
  if (view.face === 'desk') return [];
  const smokers = view.face === 'smoker' ? missingInSmokers(seen, view, say) : [];
  return [...smokers, ...missingUnderNow(seen, view, say)];
}

/** The time without the half of the day, which may be known from beside it. */
const onClock = (at: Instant, say: Say) => clockTime(at, say).replace(/ [ap]m$/, '');

/** What is said of each line of work, dish or rack, from the top of the page. */
function linesOn({ texts }: SeenWall, kind: string): (readonly SeenText[])[] {
  const lines = [...new Set(texts.map(({ line }) => line))].filter((line) => line.startsWith(kind));
  return lines.map((each) => texts.filter(({ line }) => line === each));
}

const wordsOf = (texts: readonly SeenText[]) => texts.map(({ text }) => text).join('\n');

function missingUnderNow(
  seen: SeenWall,
  { tasks, at }: StationView | SmokerView,
  say: Say,
): string[] {
  return linesOn(seen, 'now-line').flatMap((on) => {
    const words = wordsOf(on);
    const title = on.find(({ element }) => /^(?:button\.title|h2)/.test(element))?.text;
    const same = tasks.filter((task) => textIn(task.title, say) === title);
    const [start, end] = on.filter(({ element }) => element === 'time').map(({ text }) => text);
    const task =
      same.find(({ startAt, hand }) => onClock(startAt, say) === start && hand !== null) ?? same[0];
    if (!title || !task) return [`a line without a task: ${words}`];
    const { hand, pieces, weightKg, check, state, endAt } = task;
    // While it is looked at: what hand and eye are to find.
    const mind = state === 'running' ? (check?.feel ?? task.mind) : (task.mind ?? check?.feel);
    const amount = pieces > 1 || weightKg > 0 ? /\d+ \p{L}+|\d (?:lb|oz|kg|g)\b/u : /./;
    const byWhen = onClock(state === 'running' && endAt < at ? at : endAt, say);
    const change = state === 'ready' ? handChange(task, null) : null;
    const isTold = state === 'done' || !mind || words.includes(textIn(mind, say));
    return [
      ...(hand && !on.some(({ element }) => element.startsWith('b.who')) ? ['who?'] : []),
      ...(amount.test(words) || task.thing ? [] : ['how much?']),
      ...(isTold ? [] : ['to what standard?']),
      ...(change && !words.includes(ui[say.language].handChange[change]) ? ['clean hands?'] : []),
      ...(end === byWhen ? [] : [`by when? ${byWhen}, not ${end}`]),
    ].map((what) => `${title}: ${what}`);
  });
}

/** Of what lies in a smoker: how many of what, and what is next done to it, from when to when. */
function missingInSmokers(seen: SeenWall, { smokers }: SmokerView, say: Say): string[] {
  const racks = smokers.flatMap((smoker) => smoker.racks);
  const shown = linesOn(seen, 'rack-lane').map(wordsOf);
  return racks.flatMap(({ loads }, i) => {
    const words = shown[i] ?? '';
    const here = loads.filter((load) => load.here);
    return here.flatMap(({ piece, next, outAt }) => {
      const [one, many] = [piece.one, piece.many].map((name) => textIn(name, say));
      const same = here.filter((load) => textIn(load.piece.many, say) === many);
      const told = [...words.matchAll(new RegExp(`(\\d+)\\s+(?:${many}|${one})`, 'g'))];
      const sum = told.reduce((all, [, figure]) => all + Number(figure), 0);
      const lies = same.reduce((all, { pieces }) => all + pieces, 0);
      const by = onClock(next ? next.highAt : outAt, say);
      return [
        ...(sum === lies ? [] : [`how many ${many}? ${lies}, not ${sum}: ${words}`]),
        ...(words.includes(by) ? [] : [`till when? ${many}: ${words}`]),
        ...(!next || words.includes(textIn(next.title, say))
          ? []
          : [`for what? ${many}: ${words}`]),
      ];
    });
  });
}

function missingAtPass(seen: SeenWall, { service, dishes, at }: PassView, say: Say): string[] {
  if (!service) return [];
  const shown = linesOn(seen, 'pass-line').map(wordsOf);
  const isShort = shown.length > 7;
  return dishes.flatMap((dish) => {
    const { ready, pans, next, runsOut } = passLine(dish, service, at);
    const name = textIn(dish.name, say);
    const words = shown.find((line) => line.startsWith(name)) ?? '';
    const has = (what: string, time: Instant) =>
      words.includes(onClock(time, say)) ? [] : [`${what} ${onClock(time, say)}`];
    const held = pans.find(
      ({ pan }) => !pan.barred && pan.heldUntil !== null && pan.heldUntil > at,
    );
    const barred = pans.some(({ pan }) => pan.barred);
    const pressed = barred || runsOut !== null || dish.soldOutAt !== null;
    // Where there is no room for all of it what presses comes first.
    const rest =
      isShort && pressed ? [] : held?.pan.heldUntil ? has('held till', held.pan.heldUntil) : [];
    const lands = next && !(isShort && (pressed || held)) ? has('lands', next.readyHighAt) : [];
    // Of what runs out before the next is ready, or of what may not go out, both are said.
    const isGap = next !== null && runsOut !== null && runsOut.at < next.readyAt;
    const again = isShort && isGap && ready > 0 ? has('is there again', next.readyAt) : [];
    const out = runsOut && !(isShort && barred) ? has('runs out', runsOut.at) : [];
    return [
      ...(new RegExp(`(?:^|\\n)${ready}(?:\\n|$)`).test(words) ? [] : [`${ready} ready?`]),
      ...rest,
      ...lands,
      ...again,
      ...out,
    ].map((what) => `${name}: ${what}`);
  });
}
