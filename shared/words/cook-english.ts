import type { CookPhrases } from './cook-phrases.ts';

export const cookEnglish: CookPhrases = {
  sides: { thickness: 'thickness', width: 'width', length: 'length' },
  impossibleSize: (side, size) => `No piece has a ${side} of ${size}: from 0.5 cm to 2 m is one.`,
  parts: {
    water: 'water',
    protein: 'protein',
    fat: 'fat',
    ash: 'ash',
    carbohydrate: 'carbohydrate',
  },
  impossibleShare: (part, share) => `No meat is ${share} ${part}: a share is from 0 to 1.`,
  compositionDoesNotSum: (sum) => `The parts of the meat sum to ${sum}; they must sum to 1.`,
  impossibleStart: (temp) =>
    `A piece at ${temp} cannot go in: ice must thaw first, and what boils is cooked.`,
  noFirstStay: 'Where the piece is when it goes in is not said.',
  staysOutOfOrder: (number) =>
    `Stay ${number}, where it goes in being the first, begins before the one above it.`,
  impossibleAir: (temp) => `No smoker and no room has air of ${temp}.`,
  logOutOfOrder: (at) => `The entry of the air at ${at} stands after a later one.`,
  targetAboveFire: (target, temp, hottest) =>
    `Target “${target}” of ${temp} is above the fire: the hottest air is ${hottest}.`,
  readingBeforeStart: (before) => `A reading was taken ${before} before the piece went in.`,
  readingAfterNow: (at) => `The reading at ${at} lies after now.`,
  impossibleReading: (at, temp) => `No core shows ${temp}, as the reading at ${at} says.`,
  noBalance: (members) =>
    `Too few of ${members} cooks tried find a balance of heat and water: the numbers cannot be.`,
  heads: {
    target: 'Target',
    p10: '1 in 10 after',
    p50: 'half after',
    p90: '9 in 10 after',
    never: 'never',
    at: 'After',
    core: 'Core',
    surface: 'Surface',
    evaporated: 'Evaporated',
  },
  notCalibrated: 'Not yet calibrated here.',
  leftOut: (leftOut, members) =>
    `${leftOut} of ${members} cooks tried found no balance and count for nothing.`,
};
