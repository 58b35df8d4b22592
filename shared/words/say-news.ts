import type { Logged, NewsLine } from '../view/index.ts';
import { durationWords } from './amounts.ts';
import type { Language, Say } from './say.ts';
import { textIn } from './say.ts';
import { sayLogged } from './say-logged.ts';

type NewsWords = {
  later(task: string, by: string): string;
  earlier(task: string, by: string): string;
  more(count: number): string;
  gains(service: string, by: string): string;
  loses(service: string, by: string): string;
  lost(batch: string, portions: number): string;
  longer(by: string): string;
  readonly nothing: string;
};

const words: Readonly<Record<Language, NewsWords>> = {
  en: {
    later: (task, by) => `${task} ${by} later`,
    earlier: (task, by) => `${task} ${by} earlier`,
    more: (count) => `${count} more ${count === 1 ? 'task' : 'tasks'}`,
    gains: (service, by) => `${service} gains ${by}`,
    loses: (service, by) => `${service} loses ${by}`,
    lost: (batch, portions) =>
      `${portions} ${portions === 1 ? 'portion' : 'portions'} fewer of ${batch}`,
    longer: (by) => `trimming takes ${by} longer`,
    nothing: 'no time moves',
  },
  es: {
    later: (task, by) => `${task}: ${by} más tarde`,
    earlier: (task, by) => `${task}: ${by} antes`,
    more: (count) => `${count} ${count === 1 ? 'tarea' : 'tareas'} más`,
    gains: (service, by) => `${service} gana ${by}`,
    loses: (service, by) => `${service} pierde ${by}`,
    lost: (batch, portions) =>
      `${portions} ${portions === 1 ? 'porción' : 'porciones'} menos de ${batch}`,
    longer: (by) => `limpiar lleva ${by} más`,
    nothing: 'ningún horario cambia',
  },
};

/** What is over moves no time: to say so each time would say nothing. */
const MOVES_NOTHING: ReadonlySet<Logged['kind']> = new Set([
  'dishSoldOut',
  'leftCarriedOver',
  'dayClosed',
]);

/** Who decided what, and all that it moved. */
export function sayNews(news: NewsLine, say: Say): string {
  return toldOf(news, say) + movedBy(news, movesOf(news, say), say);
}

/**
 * The same in one line, in two halves: what was decided, and what that cost or gained most with how
 * much more there is to say. Where a line is too short the second is to stay whole.
 */
export function sayNewsInShort(news: NewsLine, say: Say): readonly [told: string, moved: string] {
  const [most, ...others] = movesOf(news, say);
  const more = others.length - (news.more > 0 ? 1 : 0) + news.more;
  return [
    toldOf(news, say),
    movedBy(news, most ? [more > 0 ? `${most} … +${more}` : most] : [], say),
  ];
}

const toldOf = ({ person, said }: NewsLine, say: Say): string =>
  person ? `${person}: ${sayLogged(said, say)}` : sayLogged(said, say);

function movedBy({ said }: NewsLine, moved: readonly string[], say: Say): string {
  if (moved.length === 0 && MOVES_NOTHING.has(said.kind)) return '';
  return ` → ${moved.join('; ') || words[say.language].nothing}`;
}

/** What it moved, what matters most first: portions, then services, those that lose first. */
function movesOf({ lost, longerS, services, tasks, more }: NewsLine, say: Say): string[] {
  const { later, earlier, gains, loses, ...rest } = words[say.language];
  return [
    ...lost.map(({ batch, portions }) => rest.lost(textIn(batch, say), portions)),
    ...(longerS >= 60 ? [rest.longer(durationWords(longerS))] : []),
    ...[...services]
      .sort((a, b) => a.byS - b.byS)
      .map(({ name, byS }) => (byS > 0 ? gains : loses)(textIn(name, say), durationWords(byS))),
    ...tasks.map(({ title, batch, byS }) =>
      (byS > 0 ? later : earlier)(
        `${textIn(title, say)} (${textIn(batch, say)})`,
        durationWords(byS),
      ),
    ),
    ...(more > 0 ? [rest.more(more)] : []),
  ];
}
