import { describe, expect, it } from 'vitest';
import type { Event, WhoFact } from '../../../shared/day/index.ts';
import { emptyDay, fold, openLive } from '../../../shared/day/index.ts';
import type { CommandId, PersonId, ScreenId } from '../../../shared/kernel/index.ts';
import { after, celsius, minutes, must } from '../../../shared/kernel/index.ts';
import type { LogLine } from '../../../shared/view/index.ts';
import { viewOf } from '../../../shared/view/index.ts';
import { sayLogged } from '../../../shared/words/index.ts';
import { handsInOrder, noon, plan, Telling } from '../day/demo.ts';

const first = must(handsInOrder[0], 'a task');
const person = must(plan.kitchen.crew[0], 'a person');
const smoker = must(plan.kitchen.smokers[0], 'a smoker');

function logOf(telling: Telling): readonly LogLine[] {
  const view = viewOf(openLive(telling.state, noon), { kind: 'desk' });
  return view.face === 'desk' ? view.log : [];
}

const english = {
  language: 'en',
  zone: 'America/Chicago',
  clock: '24 h',
  temperature: '°F',
  weight: 'lb',
} as const;

describe('the log of the day', () => {
  it('tells what happened, newest first, with who did it', () => {
    const telling = new Telling();
    telling.ask({ kind: 'start', task: first }, noon, person.id);
    telling.ask({ kind: 'finish', task: first }, after(noon, minutes(5)), person.id);
    const lines = logOf(telling);
    const words = lines.map(({ said }) => sayLogged(said, english).split(':')[0]);
    expect(words).toEqual(['finished', 'started', 'plan 1 taken up']);
    expect(lines[0]?.person).toBe(person.name);
    expect(lines[0]?.at).toBe(after(noon, minutes(5)));
  });

  it('says when it was sent of what a screen kept while it was alone, and of nothing else', () => {
    const telling = new Telling();
    const late = { kind: 'helpAsked', task: first } as const;
    telling.ask({ kind: 'start', task: first }, noon, person.id);
    const sentAt = after(noon, minutes(7));
    const kept = telling.keep(late, noon, person.id);
    telling.state = fold(telling.state, { ...kept, seq: kept.seq + 1, keptAt: sentAt });
    expect(logOf(telling).map((line) => line.sentAt)).toEqual([sentAt, null, null, null]);
    // What the day began with was told of once there was a day to tell it of.
    const before = after(plan.built.origin, minutes(-30));
    telling.state = fold(telling.state, { ...kept, seq: kept.seq + 2, at: before });
    expect(logOf(telling)[0]?.sentAt).toBeNull();
  });

  it('says of a core where the meat lay, so that two loads of a batch are told apart', () => {
    const telling = new Telling();
    // Two loads of one batch, which lie in one rack.
    const stays = plan.built.tasks.filter(({ id }) =>
      id.startsWith('dinner-sliced-brisket-1/stay'),
    );
    for (const { id } of stays) {
      const where = { kind: 'core', stay: id } as const;
      telling.keep({ kind: 'temperatureRead', where, tempC: celsius(80) }, noon, null);
    }
    const [one, other] = logOf(telling).map((line) => sayLogged(line.said, english));
    expect(one).toBe('Sliced brisket · Dinner, load 2 (Long pit, rack 5) read 176 °F');
    expect(other).toBe('Sliced brisket · Dinner, load 1 (Long pit, rack 5) read 176 °F');
  });

  it('goes on over a new plan of the same day', () => {
    const telling = new Telling();
    telling.ask({ kind: 'start', task: first }, noon);
    telling.keep({ kind: 'planAdopted', plan: { ...plan, version: 2 } }, noon, null);
    const kinds = logOf(telling).map(({ said }) => said.kind);
    expect(kinds).toEqual(['plan', 'task', 'plan']);
  });

  it('has a sentence for each thing in English and in Spanish, units and all', () => {
    const telling = new Telling();
    const where = { kind: 'air', smoker: smoker.id } as const;
    telling.keep({ kind: 'temperatureRead', where, tempC: celsius(107.22) }, noon, null);
    telling.keep({ kind: 'noteWritten', text: 'rain', task: null }, noon, null);
    telling.keep({ kind: 'taskRunsLate', task: first, byS: minutes(10) }, noon, null);
    telling.keep({ kind: 'taskGiven', task: first, hand: person.id }, noon, null);
    telling.keep({ kind: 'piecesCounted', task: first, done: 1 }, noon, null);
    const lines = logOf(telling);
    const said = lines.map((line) => sayLogged(line.said, english));
    expect(said).toContain(`${smoker.name.en} read 225 °F`);
    expect(said).toContain('note: rain');
    const enEspanol = lines.map((line) => sayLogged(line.said, { ...english, language: 'es' }));
    expect(enEspanol).toContain('nota: rain');
    for (const [i, sentence] of said.entries()) {
      if (lines[i]?.said.kind !== 'plan') expect(enEspanol[i]).not.toBe(sentence);
    }
  });

  it('tells what nobody planned, and what was undone', () => {
    const telling = new Telling();
    const [batch] = plan.built.batches;
    const { id, dish, service, name } = must(batch, 'a batch');
    const tempC = celsius(50);
    telling.keep({ kind: 'smokerWentDown', smoker: smoker.id, tempC, backAt: null }, noon, null);
    telling.keep({ kind: 'handWentOut', hand: person.id, backAt: null }, noon, null);
    telling.keep({ kind: 'panEmptied', batch: id }, noon, null);
    const sold = telling.keep({ kind: 'portionsSold', service, dish, sold: 6 }, noon, null);
    telling.keep({ kind: 'undone', command: sold.commandId }, noon, null);
    const said = logOf(telling).map((line) => sayLogged(line.said, english));
    const dishName = plan.catalogue.dishes.find((each) => each.id === dish)?.name.en;
    expect(said.slice(0, 5)).toEqual([
      `undone: 6 sold: ${dishName}`,
      `6 sold: ${dishName}`,
      `empty: ${name.en}`,
      `${person.name} is out`,
      `${smoker.name.en} is down at 122 °F`,
    ]);
  });

  it('tells of screens let in, renamed, moved and taken off, of PINs and of who reads what', () => {
    const telling = new Telling();
    const screen = 'by-the-door' as ScreenId;
    const [trim, mix] = plan.kitchen.stations;
    const stations = [must(trim, 'a station').id, must(mix, 'another').id];
    const facts: WhoFact[] = [
      { kind: 'screenPaired', screen, name: 'Door', place: { role: 'wall', stations } },
      { kind: 'screenRenamed', screen, name: 'Window' },
      { kind: 'screenMoved', screen, place: { role: 'pit', stations: [] } },
      { kind: 'pinSet', person: person.id, isOwner: true },
      { kind: 'pinSet', person: person.id, isOwner: false },
      { kind: 'pinCleared', person: person.id },
      { kind: 'languageSet', person: person.id, language: 'es' },
      { kind: 'languageSet', person: person.id, language: null },
      { kind: 'screenRevoked', screen },
    ];
    for (const fact of facts) telling.keep(fact, noon, person.id);
    const lines = logOf(telling).slice(0, facts.length);
    const [first] = plan.kitchen.stations;
    expect(lines.map(({ said }) => sayLogged(said, english)).reverse()).toEqual([
      `screen “Door” let in as wall, ${first?.name.en}, ${mix?.name.en}`,
      'screen now called “Window”',
      'screen “Window” is now pit',
      `PIN set for ${person.name}, who answers for screens and PINs`,
      `PIN set for ${person.name}`,
      `PIN taken from ${person.name}`,
      `${person.name} reads Spanish`,
      `${person.name} reads what the screen speaks`,
      'screen “Window” taken off',
    ]);
    expect(lines.every((line) => line.person === person.name)).toBe(true);
    const spanish = lines.map(({ said }) => sayLogged(said, { ...english, language: 'es' }));
    expect(spanish.at(-1)).toContain('pantalla «Door» admitida como tablero');
  });

  it('tells with the first day what was done before there was one', () => {
    const telling = new Telling();
    const adopted = must(telling.events[0], 'a plan');
    const paired: Event = {
      seq: 1,
      version: adopted.version,
      day: null,
      at: noon,
      keptAt: noon,
      commandId: 'claim' as CommandId,
      personId: null,
      screenId: null,
      kind: 'screenPaired',
      screen: 'office' as ScreenId,
      name: 'Office',
      place: { role: 'desk', stations: [] },
    };
    telling.state = fold(fold(emptyDay(), paired), { ...adopted, seq: 2 });
    const said = logOf(telling).map((line) => sayLogged(line.said, english));
    expect(said).toEqual(['plan 1 taken up', 'screen “Office” let in as desk']);
  });

  it('knows somebody who has left the crew list by their id', () => {
    const telling = new Telling();
    telling.keep({ kind: 'helpAsked', task: first }, noon, 'somebody-gone' as PersonId);
    expect(logOf(telling)[0]?.person).toBe('somebody-gone');
  });
});
