import type { BatchId, CommandId } from '../../../shared/kernel/index.ts';
import { celsius, minutes, seconds } from '../../../shared/kernel/index.ts';
import type { CheckView, NewsLine } from '../../../shared/view/index.ts';
import { at, NOW, stationView } from '../../client/fixtures.ts';
import type { Shown } from '../state.ts';

const { people, services } = stationView;
const outlook = services[0];
const command = 'c' as CommandId;
const choose = () => {};
const boxes = [
  { label: '30 min · 11:12', choose },
  { label: '1 h · 11:42', choose, takes: true },
  { label: '✓', name: 'seen', choose },
  { label: 'leave it', choose, leaves: true },
];

const news: NewsLine = {
  command,
  at: at(-1),
  person: 'Theo',
  said: {
    kind: 'smokerWentDown',
    smoker: { en: 'Smoker B', es: 'Ahumador B' },
    tempC: celsius(60),
    backAt: at(60),
  },
  tasks: [
    {
      title: { en: 'Load ribs', es: 'Cargar costillas' },
      batch: { en: 'Ribs 1', es: 'Costillas 1' },
      byS: minutes(40),
    },
  ],
  more: 12,
  services: [{ name: { en: 'Dinner', es: 'Cena' }, byS: minutes(-65) }],
  lost: [],
  longerS: seconds(0),
  canBeUndone: true,
};

const called = {
  notices: [
    {
      first: {
        ...{ key: 'k', cause: 'c', who: people[1]?.id, name: 'Theo', byAt: at(12) },
        asks: { kind: 'check', check: 'hot-hold', thing: { en: 'Ribs 1', es: 'Costillas 1' } },
      },
      more: 2,
    },
  ],
  rates: [{ name: 'Theo', lastHour: 3, mostInTenMin: 2 }],
};

const ribs: CheckView = {
  on: { kind: 'hot-hold', batch: 'ribs' as BatchId },
  key: 'hot-hold ribs',
  thing: { en: 'Ribs 1', es: 'Costillas 1' },
  station: { en: 'Pass', es: 'Pase' },
  asked: '135 °F',
  atLeastC: celsius(57.22),
  atMostC: null,
  hasReading: true,
  fromAt: at(-20),
  dueAt: at(-10),
  lateAt: at(20),
  breach: {
    row: {
      id: 'hot-hold',
      what: { en: 'Hot holding', es: 'Mantener caliente' },
      section: '3-501.16(A)(1)',
      source: 'FDA Food Code',
      edition: '2022',
    },
    asked: '135 °F',
    found: null,
  },
  failed: null,
  isMending: false,
  allowed: ['reheat-at-once', 'discard'],
  thermometers: [],
};
const failed = { ...ribs, failed: { at: at(-4), by: 'Ines' } };
const missed = { ...ribs, lateAt: at(-3) };
const notKeptRule = { rule: 'already-done', at: at(-3), by: people[0] } as const;

export const wall: readonly Shown[] = [
  {
    part: 'wall-head',
    states: [
      head('to spare', { outlook }),
      head('on time', { outlook: outlook && { ...outlook, inHandS: seconds(0) } }),
      head('short', { outlook: outlook && { ...outlook, inHandS: minutes(-25) } }),
      head('who goes out', { outlook, others: boxes, asks: 'Ines: back when?', open: true }),
      { ...head('on a phone', { outlook, narrow: true }), wide: 460 },
    ],
  },
  {
    part: 'wall-notice',
    states: [
      { name: 'alone', given: { aloneSince: at(-6), kept: 0 } },
      { name: 'alone with taps', given: { aloneSince: at(-6), kept: 3 } },
      { name: 'keeps nothing', given: { failing: true } },
      { name: 'read only', given: { readOnly: { atSeq: 812, why: 'altered' } } },
      { name: 'closed', given: { closed: { at: at(-2), by: 'Theo', command } } },
      {
        name: 'a tap was refused',
        given: {
          stray: { id: command, title: 'Rub ribs', refusal: notKeptRule, unread: 2 },
        },
      },
    ],
  },
  {
    part: 'alert-line',
    states: [
      { name: 'somebody is called', given: { shown: called } },
      { name: 'with how often', given: { shown: called, rates: true } },
    ],
  },
  {
    part: 'news-line',
    states: [
      { name: 'in short', given: { news } },
      { name: 'whole', given: { news, isWhole: true } },
      { name: 'not to be undone', given: { news: { ...news, canBeUndone: false } } },
    ],
  },
  {
    part: 'service-line',
    states: [{ name: 'to spare', given: { outlook } }],
  },
  {
    part: 'choice-strip',
    states: [{ name: 'each box', given: { name: 'boxes', choices: boxes } }],
  },
  {
    part: 'digit-keys',
    states: [
      { name: 'empty', given: { typed: '' } },
      { name: 'with a point', given: { typed: '4', point: true } },
      { name: 'below zero too', given: { typed: '-4', signed: true } },
    ],
  },
  {
    part: 'key-pad',
    states: [
      { name: 'empty', given: { name: 'Smoker A', besides: boxes.slice(0, 1) } },
      {
        name: 'no thermometer shows that',
        given: { name: 'Smoker A', digits: '999', isWrong: true },
      },
    ],
  },
  {
    part: 'check-band',
    states: [
      { name: 'due', given: { checks: [ribs], people, now: NOW } },
      { name: 'missed', given: { checks: [missed], people, now: NOW } },
      { name: 'found wrong', given: { checks: [failed], people, now: NOW } },
      { name: 'more than it shows', given: { checks: many(), people, now: NOW, most: 2 } },
    ],
  },
  {
    part: 'check-pad',
    states: [
      { name: 'a number is asked', given: { check: ribs, people, now: NOW } },
      { name: 'a number is typed', given: { check: ribs, people, now: NOW, digits: '141' } },
      { name: 'what was done is asked', given: { check: failed, people, now: NOW } },
    ],
  },
];

function head(name: string, given: object) {
  const named = { name: 'Trim table', now: NOW };
  return { name, given: { ...named, ...given } };
}

function many(): CheckView[] {
  return ['1', '2', '3', '4'].map((number) => ({ ...ribs, key: number }));
}
