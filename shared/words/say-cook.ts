import type { Fault, Forecast } from '../cook/index.ts';
import { type Seconds, seconds, unreachable } from '../kernel/index.ts';
import { durationWords, temperature } from './amounts.ts';
import { cookEnglish } from './cook-english.ts';
import type { CookPhrases } from './cook-phrases.ts';
import { cookSpanish } from './cook-spanish.ts';
import type { Say } from './say.ts';

const languages = { en: cookEnglish, es: cookSpanish } as const satisfies Record<
  string,
  CookPhrases
>;

type SayCook = Pick<Say, 'language' | 'temperature'>;

/** Why a cook cannot be foreseen, in one plain sentence with its amounts. */
export function sayCookFault(fault: Fault, say: SayCook): string {
  const words = languages[say.language];
  const shown = (share: number) => String(Math.round(share * 1000) / 1000);
  switch (fault.rule) {
    case 'impossible-size':
      return words.impossibleSize(words.sides[fault.side], `${shown(fault.sizeM * 100)} cm`);
    case 'impossible-share':
      return words.impossibleShare(words.parts[fault.part], shown(fault.share));
    case 'composition-does-not-sum':
      return words.compositionDoesNotSum(shown(fault.sum));
    case 'impossible-start':
      return words.impossibleStart(temperature(fault.tempC, say));
    case 'no-first-stay':
      return words.noFirstStay;
    case 'stays-out-of-order':
      return words.staysOutOfOrder(fault.index + 1);
    case 'impossible-air':
      return words.impossibleAir(temperature(fault.tempC, say));
    case 'log-out-of-order':
      return words.logOutOfOrder(durationWords(fault.atS));
    case 'target-above-fire': {
      const [temp, hottest] = [fault.tempC, fault.hottestC].map((c) => temperature(c, say));
      return words.targetAboveFire(fault.target, temp ?? '', hottest ?? '');
    }
    case 'reading-before-start':
      return words.readingBeforeStart(lasting(fault.atS));
    case 'reading-after-now':
      return words.readingAfterNow(durationWords(fault.atS));
    case 'impossible-reading':
      return words.impossibleReading(durationWords(fault.atS), temperature(fault.tempC, say));
    case 'no-balance':
      return words.noBalance(fault.members);
    default:
      return unreachable(fault);
  }
}

/** Half a minute is still before. */
const lasting = (atS: Seconds) => durationWords(seconds(Math.max(60, -atS)));

/** What makes a forecast less sure than it looks, a sentence each. */
export function sayCookDoubts(
  { isCalibrated, leftOut, members }: Pick<Forecast, 'isCalibrated' | 'leftOut' | 'members'>,
  { language }: Pick<Say, 'language'>,
): string[] {
  const words = languages[language];
  return [
    ...(isCalibrated ? [] : [words.notCalibrated]),
    ...(leftOut === 0 ? [] : [words.leftOut(leftOut, members + leftOut)]),
  ];
}

const HOUR_S = 3600;

/** A forecast as rows of words under their heads; times since the piece went in. */
export function sayForecast(
  { targets, curve }: Pick<Forecast, 'targets' | 'curve'>,
  say: SayCook,
): { readonly targets: string[][]; readonly curve: string[][] } {
  const { heads } = languages[say.language];
  const time = (timeS: Seconds | undefined) => (timeS === undefined ? '–' : durationWords(timeS));
  const share = (value: number) => `${Math.round(value * 100)} %`;
  const rows = targets.map(({ id, tempC, p10S, p50S, p90S, never }) => [
    `${id} ${temperature(tempC, say)}`,
    ...[p10S, p50S, p90S].map(time),
    share(never),
  ]);
  const hourly = curve.filter(({ atS }) => atS % HOUR_S === 0);
  return {
    targets: [[heads.target, heads.p10, heads.p50, heads.p90, heads.never], ...rows],
    curve: [
      [heads.at, heads.core, heads.surface, heads.evaporated],
      ...hourly.map(({ atS, coreC, surfaceC, evaporatedShare }) => [
        durationWords(atS),
        temperature(coreC, say),
        temperature(surfaceC, say),
        share(evaporatedShare),
      ]),
    ],
  };
}
