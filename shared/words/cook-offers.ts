import type { CookOffer } from '../view/index.ts';
import { clockTime, temperature } from './amounts.ts';
import { clockRange } from './clock-range.ts';
import { offerWords } from './offer-words.ts';
import { sayMargin } from './offers.ts';
import type { Say } from './say.ts';
import { textIn } from './say.ts';

type Range = CookOffer['stages'][number]['after'];

/**
 * What would come of it, in short sentences: when it would be loaded, of what waits; each target's
 * range as it would be and as it stands; then what each service has in hand.
 */
export function sayCookOffer({ goesIn, stages, services }: CookOffer, say: Say): string[] {
  const offer = offerWords[say.language];
  const range = ({ p10At, p90At, p50At }: Range) => {
    if (p10At === null || p50At === null) return '–';
    return p90At === null ? `${clockTime(p10At, say)}–` : clockRange(p10At, p90At, say);
  };
  // What is behind it is as it was.
  const open = stages.filter(({ before, after }) => before?.p50At !== after.p50At);
  const cooks = (open.length > 0 ? open : stages).map(({ tempC, before, after }) => {
    const then = `${temperature(tempC, say)}: ${range(after)}`;
    return before ? offer.insteadOf(then, range(before)) : then;
  });
  const served = services.map(({ name, opensAt, beforeS, afterS }) => {
    const service = `${textIn(name, say)} ${clockTime(opensAt, say)}`;
    const after = sayMargin(afterS, say);
    if (Math.abs(afterS - beforeS) < 60) return offer.serviceSame(service, after);
    return offer.serviceChange(service, sayMargin(beforeS, say), after);
  });
  const told = [[...sayGoesIn(goesIn, say), ...cooks].join('; '), served.join('; ')];
  return told.filter((sentence) => sentence !== '');
}

function sayGoesIn(goesIn: CookOffer['goesIn'], say: Say): string[] {
  if (goesIn === null) return [];
  const offer = offerWords[say.language];
  const { at, first } = goesIn;
  const loaded = offer.goesIn(clockTime(at, say));
  if (first === null) return [loaded];
  return [loaded, offer.begins(textIn(first.task.title, say), clockTime(first.at, say))];
}
