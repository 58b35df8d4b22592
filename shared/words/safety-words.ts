import { celsius, seconds } from '../kernel/index.ts';
import type { Broken, SafetyReport, SafetyWarning } from '../safety/index.ts';
import { durationWords, temperature } from './amounts.ts';
import type { Language, Say } from './say.ts';

type Words = {
  readonly highest: string;
  readonly kill: string;
  readonly logs: (logs: string, needed: string) => string;
  readonly dwell: string;
  readonly end: string;
  readonly kept: string;
  readonly notKept: string;
  readonly notCredited: string;
  readonly comeUp: string;
  readonly unknown: string;
  readonly cooling: string;
  readonly coolings: Readonly<Record<SafetyReport['cooling']['state'], string>>;
  readonly stages: (first: string, total: string) => string;
  readonly broken: (what: string, found: string | null, asked: string | null) => string;
  readonly warnings: Readonly<Record<SafetyWarning['warning'], string>>;
};

const english: Words = {
  highest: 'Warmest, at the coldest point',
  kill: 'Kill',
  logs: (logs, needed) => `${logs} log, ${needed} asked`,
  dwell: 'Time at a temperature',
  end: 'End of the cook, by the profile',
  kept: 'kept',
  notKept: 'not kept',
  notCredited: 'not credited: this oven is none of those in the profile',
  comeUp: 'Coming up',
  unknown: 'not in these readings',
  cooling: 'Cooling',
  coolings: { none: 'nothing was cooled', met: 'kept', missed: 'not kept', open: 'still going on' },
  stages: (first, total) => `first stage ${first}, in all ${total}`,
  broken: (what, found, asked) =>
    `${what}${found ? `: found ${found}` : ''}${asked ? `, asked ${asked}` : ''}`,
  warnings: {
    'come-up-long': 'It came up slowly: see the row.',
    'come-up-began-before': 'It was warm already at the first reading: coming up is not in them.',
    'oven-unsaid': 'No oven was named, and it decides whether time at a temperature counts.',
    'error-unsaid': 'No error of the thermometer was named, so none was counted.',
    'few-readings': 'There are few readings.',
    silences: 'There are silences between the readings: only a part of them was counted.',
    'low-schedule': 'It was never above 135 °F: those printed times are not sure for every germ.',
    interrupted: 'The cook was interrupted.',
    'cooling-began-before': 'It was cooling already at the first reading.',
  },
};

const spanish: Words = {
  highest: 'Lo más caliente, en el punto más frío',
  kill: 'Muerte de gérmenes',
  logs: (logs, needed) => `${logs} log, se piden ${needed}`,
  dwell: 'Tiempo a una temperatura',
  end: 'Fin de la cocción, por el perfil',
  kept: 'cumplido',
  notKept: 'no cumplido',
  notCredited: 'no cuenta: este horno no está entre los del perfil',
  comeUp: 'Subida',
  unknown: 'no está en estas lecturas',
  cooling: 'Enfriado',
  coolings: { none: 'no se enfrió nada', met: 'cumplido', missed: 'no cumplido', open: 'sigue' },
  stages: (first, total) => `primera etapa ${first}, en total ${total}`,
  broken: (what, found, asked) =>
    `${what}${found ? `: hubo ${found}` : ''}${asked ? `, se pide ${asked}` : ''}`,
  warnings: {
    'come-up-long': 'Subió despacio: vea el límite.',
    'come-up-began-before': 'Ya estaba caliente en la primera lectura: falta la subida.',
    'oven-unsaid': 'No se dijo el horno, y de él depende si cuenta el tiempo a una temperatura.',
    'error-unsaid': 'No se dijo el error del termómetro: no se contó ninguno.',
    'few-readings': 'Hay pocas lecturas.',
    silences: 'Hay silencios entre las lecturas: solo se contó una parte.',
    'low-schedule': 'Nunca pasó de 135 °F: esos tiempos no son seguros para todo germen.',
    interrupted: 'La cocción se interrumpió.',
    'cooling-began-before': 'Ya se enfriaba en la primera lectura.',
  },
};

const words: Readonly<Record<Language, Words>> = { en: english, es: spanish };

type SafetySay = Pick<Say, 'language' | 'temperature'>;

/** What readings show: rows of a name and a finding, then each broken limit, then what to know. */
export function saySafety(report: SafetyReport, say: SafetySay) {
  const w = words[say.language];
  const { kept, notKept } = w;
  const { lethality_log: logs, lethality_needed_log: needed, cooling } = report;
  const tenths = (value: number) => value.toFixed(1);
  const inHours = (h: number | null) => (h === null ? w.unknown : durationWords(seconds(h * 3600)));
  const dwell = report.dwell_met ? kept : report.dwell_credited === false ? w.notCredited : notKept;
  const stages = w.stages(inHours(cooling.stage1_h), inHours(cooling.total_h));
  const state = w.coolings[cooling.state];
  return {
    rows: [
      [w.highest, temperature(celsius(report.highest_c), say)],
      ...(logs === null || needed === null ? [] : [[w.kill, w.logs(tenths(logs), tenths(needed))]]),
      [w.dwell, dwell],
      [w.end, report.end_met ? kept : notKept],
      [w.comeUp, inHours(report.come_up_h)],
      [w.cooling, cooling.state === 'none' ? state : `${state}: ${stages}`],
    ],
    broken: report.broken.map((broken) => sayBroken(broken, w, say.language)),
    warnings: report.warnings.map(({ warning }) => w.warnings[warning]),
  };
}

function sayBroken({ row, measured, limit }: Broken, w: Words, language: Language): string {
  const amount = (it: Broken['measured']) => it && `${Math.round(it.value * 10) / 10} ${it.unit}`;
  const what = language === 'es' ? (row.what.es ?? row.what.en) : row.what.en;
  const from = [row.section, row.source, row.edition].filter(Boolean).join(', ');
  return `${w.broken(what, amount(measured), amount(limit))} (${from}).`;
}
