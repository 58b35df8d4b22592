import { unreachable } from '../kernel/index.ts';
import type { Logged } from '../view/index.ts';
import { clockTime, durationWords, temperature, weight } from './amounts.ts';
import { sayLoggedCheck } from './check-words.ts';
import { sayLimits, sayWhyLimits } from './limits-words.ts';
import type { LogPhrases } from './log-phrases.ts';
import { logWords } from './log-words.ts';
import { saySlot } from './reasons.ts';
import { roleWords } from './role-words.ts';
import type { Say } from './say.ts';
import { textIn } from './say.ts';
import { scaleWeight } from './scale-weight.ts';
import { someOf } from './some-of.ts';

/**
 * What happened, as a sentence.
 * @example sayLogged({ kind: 'plan', version: 2, takesBack: null }, say) //=> 'plan 2 taken up'
 */
export function sayLogged(said: Logged, say: Say): string {
  const words = logWords[say.language];
  switch (said.kind) {
    case 'plan':
      return said.takesBack === null
        ? words.plan(said.version)
        : words.planBack(said.version, said.takesBack);
    case 'limits':
      return words.limits(sayLimits(said.from), sayLimits(said.to), sayWhyLimits(said.changes));
    case 'task':
      return words.task[said.what](sayDeed(said, say));
    case 'counted':
      return words.counted(sayDeed(said, say), said.done, said.pieces);
    case 'late':
      return words.late(sayDeed(said, say), durationWords(said.byS));
    case 'given':
      return words.given(sayDeed(said, say), said.to);
    case 'read':
      return words.read(
        said.load === null
          ? textIn(said.where, say)
          : words.load(textIn(said.where, say), said.load),
        said.slot && saySlot(said.slot, say),
        temperature(said.tempC, say),
      );
    case 'moved':
      return said.moves.map((move) => sayMove(move, words, say)).join('; ');
    case 'mended':
      return words.mended(said.tasks);
    case 'note':
      return words.note(said.text, said.about && textIn(said.about, say));
    case 'checked':
    case 'corrected':
      return sayLoggedCheck(said, say);
    case 'screen':
    case 'pin':
    case 'language':
      return sayWho(said, words, say);
    default:
      return sayHappening(said, words, say);
  }
}

type Happening = Exclude<
  Logged,
  {
    kind:
      | 'plan'
      | 'limits'
      | 'task'
      | 'counted'
      | 'late'
      | 'given'
      | 'read'
      | 'moved'
      | 'mended'
      | 'note'
      | 'checked'
      | 'corrected'
      | 'screen'
      | 'pin'
      | 'language';
  }
>;

function sayHappening(said: Happening, { happening: words }: LogPhrases, say: Say): string {
  const temp = 'tempC' in said && said.tempC !== null ? temperature(said.tempC, say) : '';
  const back = 'backAt' in said && said.backAt !== null ? clockTime(said.backAt, say) : null;
  switch (said.kind) {
    case 'smokerWentDown':
      return words.down(textIn(said.smoker, say), temp, back);
    case 'smokerRunsCold':
      return words.cold(textIn(said.smoker, say), temp);
    case 'smokerCameUp':
      return words.up(textIn(said.smoker, say), temp);
    case 'doorOpened': {
      const lasted = said.openS === 0 ? null : durationWords(said.openS);
      return words.door(textIn(said.smoker, say), lasted);
    }
    case 'handWentOut':
      return words.out(said.hand, back);
    case 'handCameIn':
      return words.in(said.hand);
    case 'deliveryCame':
      return words.delivery(textIn(said.cut, say), said.pieces, weight(said.weightKg, say));
    case 'lotCame': {
      const amount = weight(said.weightKg, say);
      const read = said.tempC === null ? null : temp;
      return words.lot(said.lot, textIn(said.cut, say), amount, said.supplier, read);
    }
    case 'batchCutFrom':
      return words.cutFrom(textIn(said.batch, say), someOf(said.lots, say));
    case 'tubWeighed': {
      const amount = weight(said.weightKg, say);
      return words.tub(textIn(said.tub, say), textIn(said.batch, say), amount);
    }
    case 'cureWeighed': {
      const { mix, batch, weightKg, first, second } = said;
      const amount = scaleWeight(weightKg, say);
      return words.cure(textIn(mix, say), amount, textIn(batch, say), [first, second]);
    }
    case 'portionsSold':
      return words.sold(textIn(said.dish, say), said.sold);
    case 'dishSoldOut':
      return words.soldOut(textIn(said.dish, say));
    case 'panEmptied':
      return words.emptied(textIn(said.batch, say));
    case 'leftCarriedOver':
      return words.carried(
        textIn(said.batch, say),
        said.weightKg > 0 ? weight(said.weightKg, say) : null,
      );
    case 'dayClosed': {
      const goesOn = said.goesOn.map((batch) => textIn(batch, say));
      return words.closed(goesOn.length > 0 ? someOf(goesOn, say) : null);
    }
    case 'undone':
      return words.undone(said.what && sayLogged(said.what, say));
    default:
      return unreachable(said);
  }
}

type Who = Extract<Logged, { kind: 'screen' | 'pin' | 'language' }>;

function sayWho(said: Who, { who: words }: LogPhrases, say: Say): string {
  switch (said.what) {
    case 'screenPaired':
    case 'screenMoved': {
      const named = said.stations.map((station) => textIn(station, say)).join(', ');
      const place = [roleWords[say.language][said.role], named].filter(Boolean).join(', ');
      return said.what === 'screenPaired'
        ? words.paired(said.name, place)
        : words.moved(said.name, place);
    }
    case 'screenRenamed':
      return words.renamed(said.name);
    case 'screenRevoked':
      return words.revoked(said.name);
    case 'pinSet':
      return words.pinSet(said.of, said.isOwner);
    case 'pinCleared':
      return words.pinCleared(said.of);
    case 'languageSet':
      return words.languageSet(said.of, said.language);
    default:
      return unreachable(said);
  }
}

type Move = Extract<Logged, { kind: 'moved' }>['moves'][number];
type Deed = Pick<Extract<Logged, { kind: 'task' }>, 'title' | 'batch'>;

const sayMove = ({ batch, to }: Move, words: LogPhrases, say: Say) =>
  words.moved(textIn(batch, say), saySlot(to, say));

const sayDeed = ({ title, batch }: Deed, say: Say) =>
  `${textIn(title, say)} (${textIn(batch, say)})`;
