import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import {
  kindNamed,
  kinds,
  profiles,
  readLog,
  type SafetyReport,
  safetyOfProbes,
} from '../../shared/safety/index.ts';
import { saySafety } from '../../shared/words/index.ts';
import { columns } from './columns.ts';
import { type Asked, allWell, type Command, misused, refused } from './command.ts';
import { asJson } from './json.ts';
import { LANGUAGES, languageOption } from './planned.ts';
import { cannot, makesNoSense, type Refused } from './refusal.ts';
import { notRead } from './unusable.ts';

const profileIds = profiles.map(({ id }) => id);

export const safety: Command = {
  name: 'safety',
  takes: 'LOG',
  about: 'What a thermometer’s log shows: kill, time at a temperature, coming up, cooling.',
  more: [
    'LOG is a file of time,temperature lines; docs/safety.md says how it is written and reckoned.',
    'It judges no food: local code and the licensed authority overrule it.',
  ],
  options: [
    { name: 'kind', value: 'KIND', about: `What it is: ${kinds.join(', ')}. Must be said.` },
    {
      name: 'profile',
      value: 'PROFILE',
      about: `Whose limits; usually ${profileIds[0]}.`,
      oneOf: profileIds,
    },
    {
      name: 'unit',
      value: 'F|C',
      about: 'Of temperatures whose column does not say it.',
      oneOf: ['F', 'C'],
    },
    { name: 'error-f', value: 'DEGREES', about: 'How far off the thermometer may be, in °F.' },
    { name: 'fat', value: 'PERCENT', about: 'Of poultry; unknown fat takes the fattest column.' },
    { name: 'json', value: null, about: 'As one JSON document, also where it is refused.' },
    { ...languageOption, about: 'Usually English.' },
  ],
  run: async (asked, { folder, say }) => {
    const isJson = asked.options.has('json');
    const found = reported(asked, folder);
    if (!found.ok) {
      if (isJson) say(asJson({ ...nothingFound, refusals: found.refusals }));
      const complaints = isJson ? [] : found.refusals.map(({ sentence }) => sentence);
      return found.misused ? misused(complaints) : refused(complaints);
    }
    say(isJson ? asJson(asDocument(found)) : asText(found, asked));
    return allWell;
  },
};

type Found = {
  readonly ok: true;
  readonly report: SafetyReport;
  readonly remarks: readonly string[];
};

function reported({ path, options }: Asked, folder: string): Found | Refused {
  const kind = kindOf(options.get('kind'));
  if (!kind.ok) return kind;
  const errorF = amountOf(options, 'error-f', 20);
  if (!errorF.ok) return errorF;
  const fat = amountOf(options, 'fat', 100);
  if (!fat.ok) return fat;
  const text = textOf(path, folder);
  if (!text.ok) return text;
  const unit = options.get('unit');
  const log = readLog(text.text, unit === undefined ? {} : { unit: unit === 'F' ? '°F' : '°C' });
  if (!log.ok) return cannot(log.faults.map((fault) => ({ rule: 'log-fault', ...fault })));
  const profile = profiles.find(({ id }) => id === options.get('profile')) ?? profiles[0];
  if (profile === undefined) return cannot([]);
  const report = safetyOfProbes(log.probes, kind.kind, profile, {
    ...(errorF.value === undefined ? {} : { errorK: errorF.value / 1.8 }),
    ...(fat.value === undefined ? {} : { fatPercent: fat.value }),
  });
  return { ok: true, report, remarks: log.remarks.map(({ sentence }) => sentence) };
}

type KindRead =
  | { readonly ok: true; readonly kind: Parameters<typeof safetyOfProbes>[1] }
  | Refused;

function kindOf(word: string | undefined): KindRead {
  const named = kindNamed(word ?? '');
  if (named.ok) return named;
  const found = word === undefined ? 'nothing' : `“${word}”`;
  const hint = named.meant === undefined ? '' : ` Did you mean ${named.meant}?`;
  const sentence = `--kind: found ${found}; allowed: ${named.allowed.join(', ')}.${hint}`;
  return makesNoSense({ rule: 'no-such-kind', sentence });
}

type AmountRead = { readonly ok: true; readonly value: number | undefined } | Refused;

/** A thermometer further off than twenty degrees is not one; fat is a part of a hundred. */
function amountOf(options: Asked['options'], name: string, most: 20 | 100): AmountRead {
  const said = options.get(name);
  if (said === undefined) return { ok: true, value: undefined };
  const value = Number(said);
  if (said.trim() !== '' && value >= 0 && value <= most) return { ok: true, value };
  const sentence = `--${name}: found ${said}; allowed: a number from 0 to ${most}, such as 1.5.`;
  return makesNoSense({ rule: 'no-number', sentence });
}

function textOf(
  path: string,
  folder: string,
): { readonly ok: true; readonly text: string } | Refused {
  try {
    return { ok: true, text: readFileSync(resolve(folder, path), 'utf8') };
  } catch (fault) {
    return cannot([{ rule: 'not-there', sentence: notRead(path, fault), path }]);
  }
}

const nothingFound = { lethality_log: null, dwell_met: null, come_up_h: null, cooling: null };

/** The record, with of each broken row what names it. */
function asDocument({ report, remarks }: Found) {
  const broken = report.broken.map(({ row, measured, limit }) => {
    const { id, what, section, source, edition } = row;
    return { id, what: what.en, section, source, edition, measured, limit };
  });
  return { ...report, broken, remarks, refusals: [] };
}

function asText({ report, remarks }: Found, { options }: Asked): string {
  const language = LANGUAGES.find((one) => one === options.get('language')) ?? 'en';
  const isCelsius = report.profile === 'celsius';
  const said = saySafety(report, { language, temperature: isCelsius ? '°C' : '°F' });
  const list = (lines: readonly string[]) => (lines.length > 0 ? ['', ...lines] : []);
  const head = `${report.kind}, ${report.profile} ${report.profile_version}`;
  const lines = [head, ...columns(said.rows), ...list(said.broken)];
  return `${[...lines, ...list([...said.warnings, ...remarks])].join('\n')}\n`;
}
