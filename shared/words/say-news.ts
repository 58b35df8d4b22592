import type { Logged, NewsLine } from '../view/index.ts';
import { durationWords } from './amounts.ts';
import { logWords } from './log-words.ts';
import type { Say } from './say.ts';
import { textIn } from './say.ts';
import { sayLogged } from './say-logged.ts';

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
  const words = logWords[say.language].news;
  return [
    toldOf(news, say),
    movedBy(news, most ? [more > 0 ? `${most}, ${words.andMore(more)}` : most] : [], say),
  ];
}

const toldOf = ({ person, said }: NewsLine, say: Say): string =>
  person ? `${person}: ${sayLogged(said, say)}` : sayLogged(said, say);

function movedBy({ said }: NewsLine, moved: readonly string[], say: Say): string {
  if (moved.length === 0 && MOVES_NOTHING.has(said.kind)) return '';
  return ` → ${moved.join('; ') || logWords[say.language].news.nothing}`;
}

/** What it moved, what matters most first: portions, then services, those that lose first. */
function movesOf({ lost, longerS, services, tasks, more }: NewsLine, say: Say): string[] {
  const { later, earlier, gains, loses, ...rest } = logWords[say.language].news;
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
