import type { Phrases, Whose } from './phrases.ts';

const by = (person: string | null) => (person ? ` by ${person}` : '');
const whose = ({ person, screen }: Whose) =>
  person === null && screen !== null ? ` on “${screen}”` : by(person);

export const english: Phrases = {
  slot: (smoker, rack) => `${smoker}, rack ${rack}`,
  titled: (title) => `“${title}”`,
  service: {
    inHand: (service, at, time) => `${service} ${at}: ${time} to spare`,
    short: (service, at, time) => `${service} ${at}: ${time} late`,
    onTime: (service, at) => `${service} ${at}: on time, nothing to spare`,
    on: 'is on',
  },
  because: {
    after: (task, wait) => (wait ? `${wait} after ${task}` : `after ${task}`),
    hand: (person) => `waits for ${person}`,
    place: (slot, until) => `${slot} is taken till ${until}`,
    fire: (smoker, until) => `${smoker} changes its fire till ${until}`,
    room: (task, until) => `no room till ${until}: ${task}`,
    shift: (person, from) => `${person} is here from ${from}`,
    plan: (at) => `planned for ${at}`,
    now: 'can start',
    down: (smoker, back) => `${smoker} is down${back ? ` till about ${back}` : ''}`,
    barred: (check) => `barred: ${check}`,
    out: (person, back) => `needs a hand: ${person} is out${back ? ` till about ${back}` : ''}`,
  },
  refusal: {
    noPlan: 'There is no plan for today yet: make one at the desk.',
    unknownTask: 'This task is no longer in the plan: look at the list again.',
    alreadyStarted: (at, who) => `Already started${whose(who)} at ${at}.`,
    alreadyDone: (at, who) => `Already done${whose(who)} at ${at}.`,
    anotherDay: (taps) =>
      `${taps > 1 ? `${taps} taps were` : 'this was'} for another day than the hub’s: not done.`,
    notStarted: 'Not started yet: tap start first.',
    notByHand: (task) =>
      `“${task}” is not tapped: it begins and ends with the hands' work round it.`,
    waitsFor: (before) => `“${before}” comes first and is not done.`,
    alreadyFollowed: (task) => `“${task}” has begun since: undo that first.`,
    countOutOfRange: (done, pieces) => `${done} is not a count from 0 to ${pieces}: count again.`,
    lateOutOfRange: (byTime, most) => `${byTime} late cannot be: say up to ${most}.`,
    notThisScreens: 'This screen may not do that: use the one it belongs to.',
    unknownPerson: 'Nobody of that name is on the crew list: pick a name from the row.',
    lacksSkill: (person, task) =>
      `${person} has not been shown “${task}”: give it to someone who has.`,
    impossibleTemperature: (temp) => `${temp} cannot be: read it again and type it anew.`,
    unknownPlace: 'There is no such place in this kitchen: pick one that is drawn.',
    slotTooSmall: (slot, need, free) =>
      `${slot} has ${free} free and this load takes ${need}: pick another rack.`,
    slotTaken: (slot, task, until) => `${slot} holds “${task}” till ${until}: pick another rack.`,
    rackUnfit: (slot) => `It cannot lie in ${slot}: too small, too weak or not so hot there.`,
    rackTooWeak: (slot, need, free) =>
      `It weighs ${need} and ${slot} bears ${free} more: pick another rack.`,
    drips: (slot, other, limit) => `In ${slot} one would drip on the other, “${other}”: ${limit}.`,
    fireDiffers: (slot, need, is) =>
      `${slot} is kept at ${is} and this load cooks at ${need}: pick a rack with its heat.`,
    offAlready: 'That load is off already: pick one that is in a smoker.',
    inAlready: (at) => `That load went in at ${at}: it cannot go in earlier.`,
    notSoEarly: (most, before) => {
      const why = before === null ? '' : `: it comes after ${before}`;
      return most === null
        ? `It cannot go in earlier than planned${why}.`
        : `It can go in ${most} earlier at most${why}.`;
    },
    nothingForeseen: 'Nothing is foreseen of that load: read its core first.',
    outOfDate: 'The plan has changed since: look at what the move does now.',
    nothingMoves: 'That load is there already: pick another rack.',
    readOnly: (atSeq) =>
      [
        'Nothing can be kept: the log is damaged after entry',
        `${atSeq}. Tell the pitmaster, write on paper.`,
      ].join(' '),
    hubFault: 'The hub failed at this and wrote down why: tell whoever looks after it.',
    badMessage: (where, what) => `Not understood at ${where}: ${what}.`,
  },
};
