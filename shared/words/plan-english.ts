import type { PlanPhrases } from './plan-phrases.ts';

const pieces = (count: number) => (count === 1 ? '1 piece' : `${count} pieces`);
const portionsOf = (count: number) => (count === 1 ? '1 portion' : `${count} portions`);
const quarters = (count: number) =>
  count === 1 ? '1 quarter of an hour' : `${count} quarters of an hour`;
const places = (count: number) => (count === 1 ? 'place' : 'places');
const are = (count: number) => (count === 1 ? 'is' : 'are');

export const planEnglish: PlanPhrases = {
  quoted: (title) => `“${title}”`,
  unknownWord: (path, found, allowed) => `${path}: found ${found}; allowed: ${allowed}.`,
  closesBeforeOpening: (service, opens, closes) =>
    [
      `${service} opens at ${opens} and closes at ${closes}, which is before it:`,
      'a time after midnight is written 25:00, or 1:00 am +1.',
    ].join(' '),
  salesAfterClosing: (of, counted, open) =>
    `${of}: sales are counted for ${quarters(counted)}, and it is open for ${open}.`,
  portionOverPiece: (of, portion, piece) =>
    `${of}: a portion is ${portion}, and one piece gives ${piece}: make the portion that or less.`,
  noSmoker: (of, set, each, nearest) =>
    [
      `${of}: no smoker can take it at ${set}:`,
      `${each}${nearest === null ? '' : `; nearest: ${nearest}`}.`,
    ].join(' '),
  unfit: {
    notWished: (smoker) => `${smoker} is not among its slots`,
    heat: (smoker, coolest, hottest) => `${smoker} holds ${coolest} to ${hottest}`,
    size: (smoker, needs, most) => `${smoker} has ${most} on a rack and a piece takes ${needs}`,
    weight: (smoker, needs, most) => `${smoker} carries ${most} on a rack and a piece is ${needs}`,
  },
  nearest: {
    heat: (smoker, set) => `${smoker} at ${set}`,
    size: (smoker, most) => `pieces of ${most} or less, in ${smoker}`,
    weight: (smoker, most) => `pieces of ${most} or less, in ${smoker}`,
  },
  noSkill: (of, step, skill, needs, has) =>
    [
      `${of}, “${step}” needs ${needs} with the skill “${skill}”;`,
      `the crew has ${has}: ${needs - has} more must be on it.`,
    ].join(' '),
  handLacksSkill: (of, step, hand, skill) =>
    `${of}, “${step}” is given to ${hand}, who has not been shown “${skill}”.`,
  nobodyThere: (eve, day) =>
    `Nobody of the crew works on ${eve} or ${day}: give them shifts on these days or weekdays.`,
  noShift: (of, step, needs, longest) =>
    longest === null
      ? `${of}, “${step}”: nobody who can do it works on that day or the day before.`
      : [
          `${of}, “${step}” takes ${needs} for one piece; the longest`,
          `anyone who can do it is there in one go is ${longest}.`,
        ].join(' '),
  noStation: (of, step, bench) =>
    `${of}, “${step}” needs a bench for “${bench}”; no station has one.`,
  noRoomToKeep: {
    cooler: (of, step, needs, has) =>
      `${of}, “${step}” needs ${needs} cm² of cooler shelf; there ${are(has)} ${has}.`,
    pans: (of, step, needs, has) =>
      [
        `${of}, “${step}” needs ${needs} pan ${places(needs)} in the cabinets;`,
        `there ${are(has)} ${has}.`,
      ].join(' '),
    whole: (of, step, needs, has) =>
      [
        `${of}, “${step}” needs ${needs} ${places(needs)} for whole pieces`,
        `in the cabinets; there ${are(has)} ${has}.`,
      ].join(' '),
  },
  limitTooShort: (of, from, to, needs, allowed) =>
    [
      `${of}: from “${from}” to “${to}” takes ${needs}`,
      `even for one piece; at most ${allowed} is allowed.`,
    ].join(' '),
  serviceTooEarly: (of, opens, needs, has, can) =>
    [
      `${of} needs ${needs} before it opens at ${opens},`,
      `and there are ${has}: it can open at ${can}.`,
    ].join(' '),
  batchTooLarge: (of, number, many, most, portions) =>
    [
      `${of}: batch ${number} is ${pieces(many)}, and ${most} can be`,
      `made in one go: make it ${portionsOf(portions)} or less, or split it.`,
    ].join(' '),
  batchBegun: (batch, many) =>
    `${batch} has begun, ${pieces(many)} of it: leave it in the plan, and change the others.`,
  notDelivered: (cut, needs, has) =>
    `${cut}: this takes ${pieces(needs)} and ${has} came: ask for fewer, or count what else came.`,
  stepBegun: (batch, step) =>
    `${batch}: “${step}” has begun and could not have come so: leave what came before it as it is.`,
  trimShort: (of, cut, needs, has, portions) =>
    [
      `${of} needs ${needs} of ${cut}, and what it is taken from`,
      `leaves ${has}: that is enough for ${portionsOf(portions)}.`,
    ].join(' '),
  limitsChanged: {
    'no-reason': (from, to) =>
      `kitchen.json: the limits were ${from} on the last day and would be ${to}: say why and who ` +
      'decided it in a new entry of limits.json, as docs/safety.md shows.',
    rewritten: (from, to) =>
      `limits.json: an entry that led to ${from} is gone or other than it was, and the limits ` +
      `would be ${to}: put it back, and add what changed as a new entry at the end.`,
    'other-profile': (_, to) =>
      `limits.json: its last entry leads to another profile than ${to}, which kitchen.json ` +
      'names: name the same in both.',
  },
  limitBroken: (about, limit, asked, found) =>
    [
      `${about} breaks a limit: ${limit}`,
      asked === null ? '' : `; asked ${asked}`,
      found === null ? '.' : `, planned ${found}.`,
    ].join(''),
  conflict: {
    lagsContradict: (tasks, excess) =>
      `The times between ${tasks} cannot all be kept: they are ${excess} too long together.`,
    noResource: (task, amount, most) =>
      `“${task}” needs ${amount} at once of what there is ${most} of.`,
    noRoom: (task, places, from, to, short, by) =>
      [
        `“${task}” finds no room on ${places} between ${from}`,
        `and ${to}: ${short} are lacking, taken by ${by}.`,
      ].join(' '),
    goalTooEarly: (chain, short) => `The chain ${chain} is ${short} too long for its service.`,
    longGoalTooEarly: (links, longest, short) =>
      `A chain of ${links} steps is ${short} too long for its service. Its longest: ${longest}.`,
    malformed: (where, what) => `The plan makes no sense at ${where}: ${what}.`,
  },
};
