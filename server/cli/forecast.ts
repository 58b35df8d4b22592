import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import {
  askIn,
  type Forecast,
  type ForecastAsk,
  forecast as foresee,
  readForecastFile,
} from '../../shared/cook/index.ts';
import { readJsonText, type Seconds } from '../../shared/kernel/index.ts';
import {
  type Language,
  sayCookDoubts,
  sayCookFault,
  sayForecast,
} from '../../shared/words/index.ts';
import { columns } from './columns.ts';
import { allWell, type Command, refused } from './command.ts';
import { asJson } from './json.ts';
import { LANGUAGES, languageOption } from './planned.ts';
import { cannot, faulty, type Refused } from './refusal.ts';

export const forecast: Command = {
  name: 'forecast',
  takes: 'FILE',
  about: 'When a piece will be how warm, from what is known of it: ranges, and the model’s curve.',
  more: [
    'FILE says what the piece, its smoker and the readings are; docs/schema/forecast.schema.json',
    'has all that can be in it. Times count from when the piece went in.',
  ],
  options: [
    { name: 'json', value: null, about: 'As one JSON document, also where it is refused.' },
    { ...languageOption, about: 'Usually English.' },
  ],
  run: async ({ path, options }, { folder, say }) => {
    const language = LANGUAGES.find((one) => one === options.get('language')) ?? 'en';
    const isJson = options.has('json');
    const found = foreseen(path, folder, language);
    if (!found.ok) {
      const { refusals } = found;
      if (isJson) say(asJson({ ...nothingForeseen, refusals }));
      return refused(isJson ? [] : refusals.map(({ sentence }) => sentence));
    }
    say(isJson ? asJson(asDocument(found, language)) : asText(found, language));
    return allWell;
  },
};

type Foreseen = {
  readonly ok: true;
  readonly ask: ForecastAsk;
  readonly forecast: Forecast;
  readonly unit: '°F' | '°C';
};

function foreseen(path: string, folder: string, language: Language): Foreseen | Refused {
  const read = textOf(path, folder);
  if (!read.ok) return read;
  const file = readForecastFile(read.json);
  if (!file.ok) return faulty(file.problems.map((fault) => ({ file: path, ...fault })));
  const ask = askIn(file.value);
  const found = foresee(ask.piece, ask.smoker, ask.readings, ask.options);
  // A person gets degrees as the file has them.
  const unit = read.text.includes('°F') ? '°F' : '°C';
  if (found.ok) return { ok: true, ask, forecast: found.forecast, unit };
  return cannot(
    found.faults.map((fault) => ({
      ...fault,
      sentence: sayCookFault(fault, { language, temperature: unit }),
    })),
  );
}

type TextRead = { readonly ok: true; readonly text: string; readonly json: unknown } | Refused;

function textOf(path: string, folder: string): TextRead {
  try {
    const text = readFileSync(resolve(folder, path), 'utf8');
    const json = readJsonText(text);
    if (!json.ok) return faulty(json.problems.map((fault) => ({ file: path, ...fault })));
    return { ok: true, text, json: json.value };
  } catch (fault) {
    const isMissing = (fault as NodeJS.ErrnoException).code === 'ENOENT';
    const found = isMissing ? 'no such file' : (fault as Error).message;
    return faulty([{ file: path, path: '(the whole file)', found, allowed: 'a JSON file' }]);
  }
}

const nothingForeseen = { targets: [], curve: [], fan: [] };

const inHours = (timeS: Seconds | undefined) =>
  timeS === undefined ? null : Math.round((timeS / 3600) * 1e4) / 1e4;
const figures = (value: number) => Math.round(value * 1e4) / 1e4;

/** Times in hours since the piece went in; null for never. */
function asDocument({ ask, forecast: made }: Foreseen, language: Language) {
  const { modelVersion, seed, members, leftOut, isCalibrated, lastReadingS } = made;
  return {
    ...{ modelVersion, seed, members, leftOut, isCalibrated },
    doubts: sayCookDoubts(made, { language }),
    now_h: inHours(ask.options.nowS),
    lastReading_h: inHours(lastReadingS),
    targets: made.targets.map(({ id, tempC, way, p10S, p50S, p90S, never }) => ({
      ...{ id, tempC, way },
      ...{ p10_h: inHours(p10S), p50_h: inHours(p50S), p90_h: inHours(p90S) },
      never: figures(never),
    })),
    curve: made.curve.map(({ atS, coreC, surfaceC, evaporatedShare }) => ({
      t_h: inHours(atS),
      core_c: figures(coreC),
      surface_c: figures(surfaceC),
      evaporated: figures(evaporatedShare),
    })),
    fan: made.fan.map(({ atS, p10C, p50C, p90C }) => ({
      t_h: inHours(atS),
      ...{ p10_c: figures(p10C), p50_c: figures(p50C), p90_c: figures(p90C) },
    })),
    refusals: [],
  };
}

function asText({ forecast: made, unit }: Foreseen, language: Language): string {
  const { targets, curve } = sayForecast(made, { language, temperature: unit });
  const doubts = sayCookDoubts(made, { language });
  return `${[...columns(targets), '', ...columns(curve), '', ...doubts].join('\n')}\n`;
}
