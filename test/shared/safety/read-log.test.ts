import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LogOptions } from '../../../shared/safety/index.ts';
import { isOtherUnit, readLog } from '../../../shared/safety/index.ts';
import { walk } from './series.ts';

const faults = (text: string, options?: LogOptions) => {
  const read = readLog(text, options);
  return read.ok ? [] : read.faults.map(({ kind, line }) => `${kind} ${line}`);
};
const sentences = (text: string) => {
  const read = readLog(text);
  return (read.ok ? read.remarks : read.faults).map(({ sentence }) => sentence);
};
const firstProbe = (text: string, options?: LogOptions) => {
  const read = readLog(text, options);
  if (!read.ok) throw new Error(read.faults.map(({ sentence }) => sentence).join(' '));
  return (read.probes[0] ?? []).map(({ atS, tempC }) => [atS, Math.round(tempC * 100) / 100]);
};

describe('a log', () => {
  it.each([
    'time,temperature_F',
    'time,temperature (°F)',
    'Minutes,Temp F',
    'time,tempF',
    'elapsed_min,F',
    'date time,internal_f',
    'elapsed minutes;core [F]',
    'time\ttemperature Fahrenheit',
    '"time","degF temp_F"',
  ])('is read in °F under the header %s', (header) => {
    const separator = header.includes(';') ? ';' : header.includes('\t') ? '\t' : ',';
    const lines = [header, `0${separator}131`, `5${separator}140`];
    expect(firstProbe(lines.join('\r\n'))).toEqual([
      [0, 55],
      [300, 60],
    ]);
  });

  it.each(['time,temperature_c', 'time,temperature (°C)', 'time,celsius', 'time,core C'])(
    'is read in °C under the header %s',
    (header) => {
      expect(firstProbe(`${header}\n0,55\n5,60\n`)).toEqual([
        [0, 55],
        [300, 60],
      ]);
    },
  );

  it('has its times in minutes, or in the unit its header names, or as dates', () => {
    const at = (header: string, one: string, two: string) =>
      firstProbe(`${header},temp_C\n${one},55\n${two},60`).map(([atS]) => atS);
    expect(at('time', '0', '1.5')).toEqual([0, 90]);
    expect(at('hours', '0', '1.5')).toEqual([0, 5400]);
    expect(at('time (s)', '0', '1.5')).toEqual([0, 1.5]);
    expect(at('time', '1970-01-02T00:00Z', '1970-01-02T01:00:30+00:00')).toEqual([86_400, 90_030]);
    expect(at('time', '1970-01-02T02:00+02:00', '1970-01-01T20:00:30-0400')).toEqual([
      86_400, 86_430,
    ]);
    expect(at('time', '1970-01-02 00:00', '1970-01-02 00:01')).toEqual([86_400, 86_460]);
  });

  it('may have decimal commas where semicolons part its cells', () => {
    expect(firstProbe('Minuten time;temp_C\n0;55,5\n1,5;60')).toEqual([
      [0, 55.5],
      [90, 60],
    ]);
  });

  it('has a series for each probe, and none for the air', () => {
    const read = readLog(
      'time,probe 1 (°C),pit temp (°C),probe 2 (°C)\n0,50,110,55\n1,51,110,\n2,52,111,56',
    );
    expect(read).toMatchObject({ ok: true, probes: [{ length: 3 }, { length: 2 }] });
  });

  it('keeps every temperature and time as it was written', () => {
    const steps = fc.array(fc.integer({ min: -90, max: 90 }), { minLength: 1, maxLength: 30 });
    fc.assert(
      fc.property(steps, (tenths) => {
        const temps = walk(1400, tenths);
        fc.pre(temps.every((temp) => 320 <= temp && temp <= 2100));
        const lines = temps.map((temp, index) => `${index},${temp / 10}`);
        const read = readLog(`time,temp_F\n${lines.join('\n')}`);
        const [probe = []] = read.ok ? read.probes : [];
        expect(probe.map(({ tempC }) => Math.round(tempC * 18 + 320))).toEqual(temps);
        expect(probe.map(({ atS }) => atS)).toEqual(temps.map((_, index) => index * 60));
      }),
    );
  });
});

describe('a log that cannot be right', () => {
  it('does not say its unit: nobody guesses it, but a person may say it', () => {
    const text = 'time,temperature\n0,131\n5,140';
    expect(sentences(text)).toEqual([
      'The column "temperature" does not say whether it is in °C or °F; ' +
        'name it "temperature_F" or "temperature_C".',
    ]);
    expect(firstProbe(text, { unit: '°F' })).toHaveLength(2);
  });

  it('has no header', () => {
    expect(faults('0,131\n5,140')).toEqual(['columns 1']);
  });

  it('has a 74 among °F that was read in °C', () => {
    expect(sentences('time,temp_F\n0,150\n5,160\n10,74\n15,166')).toEqual([
      'Line 4 says 74 °F beside 160 and 166; was it read in °C (74 °C is 165 °F)?',
    ]);
    expect(faults('time,temp_F\n0,150\n5,160\n10,74')).toEqual(['unit 4']);
  });

  it('has a 165 among °C that was read in °F', () => {
    expect(sentences('time,temp_C\n0,70\n5,72\n10,165\n15,75')).toEqual([
      'Line 4 says 165 °C beside 72 and 75; was it read in °F (165 °F is 74 °C)?',
    ]);
  });

  it('has a whole column of °C under °F, which a person may overrule', () => {
    const text = 'time,temp_F\n0,5\n60,40\n120,74\n180,74';
    expect(sentences(text)).toEqual([
      'The highest reading is 74 °F, and no cook ends there; was the column read in °C?',
    ]);
    expect(faults(text, { unit: '°F' })).toEqual([]);
  });

  it('has a whole column of °F under °C', () => {
    expect(faults('time,temp_C\n0,140\n1,150\n2,160')).toEqual(['unit 0']);
  });

  it('cooled in earnest: a low last reading long after is no doubt', () => {
    expect(faults('time,temp_F\n0,165\n120,74')).toEqual([]);
  });

  it.each(['0,900', '0,-60'])('has a temperature that no probe shows: %s', (line) => {
    expect(faults(`time,temp_F\n${line}\n1,140\n2,150\n3,160`)).toEqual(['impossible 2']);
  });

  it('goes back in time, or stands still', () => {
    expect(sentences('time,temp_F\n0,140\n5,150\n3,160\n5,165')).toEqual([
      'Line 4 is earlier than line 3.',
      'Line 5 is at the same time as line 3.',
    ]);
  });

  it.each(['soon', '25:00', '2026-02-30T10:00', '2026-11-25T10:61', ''])(
    'has "%s" for a time',
    (time) => {
      expect(faults(`time,temp_F\n0,140\n${time},150`)).toEqual(['time 3']);
    },
  );

  it('mixes ways of writing the time', () => {
    expect(faults('time,temp_F\n2026-11-25T10:00Z,140\n2026-11-25T10:05,150')).toEqual(['time 3']);
    expect(faults('time,temp_F\n0,140\n2026-11-25T10:05,150')).toEqual(['time 3']);
  });

  it.each(['hot', '', '1e9', '74 °C'])('has "%s" for a temperature', (temp) => {
    expect(faults(`time,temp_F\n0,140\n5,${temp}`)).toEqual(['number 3']);
  });

  it('is told all of it at once, in the order of its lines', () => {
    expect(faults('time,temp_F\nx,140\n1,hot\n2,900\n3,150\n2,160')).toEqual([
      'time 2',
      'number 3',
      'impossible 4',
      'order 6',
    ]);
  });

  it.each(['time,temp_F', 'time,temp_F\n0,140', 'time,core C,probe C\n0,50,\n1,50,', ''])(
    'is too short: %j',
    (text) => {
      expect(readLog(text).ok).toBe(false);
    },
  );
});

describe('one number at the desk', () => {
  it('is doubted where it would fit what was read before in the other unit alone', () => {
    expect(isOtherUnit(74, '°F', [163])).toBe(true);
    expect(isOtherUnit(165, '°C', [72])).toBe(true);
    expect(isOtherUnit(165, '°F', [163])).toBe(false);
    expect(isOtherUnit(74, '°F', [90])).toBe(false);
    expect(isOtherUnit(74, '°F', [])).toBe(false);
  });
});

describe('a silence', () => {
  it('is remarked upon, and read over', () => {
    const read = readLog('time,temp_F\n0,140\n5,150\n95,160');
    expect(read).toMatchObject({ ok: true, remarks: [{ kind: 'silence', line: 4 }] });
    expect(sentences('time,temp_F\n0,140\n5,150\n95,160')).toEqual([
      'Between line 3 and line 4 nothing was read for 90 min; ' +
        '10 min of it count, at the lower reading.',
    ]);
  });
});
