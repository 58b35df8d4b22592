import type { StepOf } from '../catalogue/index.ts';
import type { PersonId, Seconds, SkillId } from '../kernel/index.ts';
import { seconds } from '../kernel/index.ts';
import type { CrewMember, Kitchen } from '../kitchen/index.ts';
import type { Length, Mode, Need } from '../schedule/index.ts';
import { resourceId } from './resources.ts';
import type { TableChoice } from './tables.ts';

/**
 * Hands that do a step equally fast; `factor` is how many times as long as a trained hand takes.
 */
export type Team = { readonly factor: number; readonly people: readonly CrewMember[] };

/**
 * Who can do a step, the fastest first; with a wish, only the teams that the wished hand is of.
 * Within a team those come first who can do little else, so that a rare skill stays free for the
 * work that needs it.
 */
export function teamsFor(
  kitchen: Kitchen,
  { skill, hands }: Pick<StepOf<'hands'>, 'skill' | 'hands'>,
  wished?: PersonId,
): Team[] {
  const people = kitchen.crew
    .map((person) => ({ person, factor: factorOf(person, skill) }))
    .filter(({ factor }) => Number.isFinite(factor))
    .sort((a, b) => a.person.trained.length - b.person.trained.length);
  const factors = [...new Set(people.map(({ factor }) => factor))].sort((a, b) => a - b);
  const teams = factors
    .map((factor) => ({
      factor,
      people: people.filter((one) => one.factor <= factor).map(({ person }) => person),
    }))
    .filter((team) => team.people.length >= hands);
  if (wished === undefined) return teams;
  return teams.filter((team) => team.people.some(({ id }) => id === wished)).slice(0, 1);
}

function factorOf(person: CrewMember, skill: SkillId | undefined): number {
  if (skill === undefined || person.trained.includes(skill)) return 1;
  return person.learning.includes(skill) ? person.learningFactor : Number.POSITIVE_INFINITY;
}

/** A mode for each team and table: the same work at its own pace. */
export function handModes(
  step: Pick<StepOf<'hands'>, 'time' | 'hands'>,
  pieces: number,
  teams: readonly Team[],
  {
    tables,
    wished,
  }: { readonly tables: readonly TableChoice[]; readonly wished: PersonId | undefined },
): Mode[] {
  return teams.flatMap(({ factor, people }) => {
    const everybody = people.map(({ id }) => id);
    const hands = Array.from({ length: step.hands }, (_, index): Need => {
      const who = index === 0 && wished !== undefined ? [wished] : everybody;
      const oneOf = who.map((person) => resourceId({ kind: 'hand', person }));
      return { role: 'hand', amount: 1, oneOf };
    });
    const pace = factor === 1 ? 'trained' : `learning × ${factor}`;
    return tables.map((table) => ({
      id: `${pace}${table.id}`,
      length: workLength(step, pieces, factor),
      needs: [...hands, ...table.needs],
      states: table.states,
    }));
  });
}

/** The length of a step for so many pieces, with its spread. */
export function workLength(
  { time }: Pick<StepOf<'hands' | 'fire'>, 'time'>,
  pieces: number,
  factor = 1,
): Extract<Length, { kind: 'work' }> {
  const times = (time.per === 'piece' ? pieces : 1) * factor;
  const { low, typical, high } = time.takesS;
  const scaled = (length: Seconds) => seconds(Math.round(length * times));
  return { kind: 'work', typicalS: scaled(typical), lowS: scaled(low), highS: scaled(high) };
}
