import type { Role } from '../../shared/day/index.ts';
import { type Right, rights } from '../../shared/protocol/index.ts';

const MARKS = /(<!-- rights -->\n)[\s\S]*?(\n?<!-- \/rights -->)/;

/** `docs/who.md` with the table of rights as the code has it. */
export function withRights(page: string): string {
  return page.replace(MARKS, (_all, from: string) => `${from}${table()}\n<!-- /rights -->`);
}

function table(): string {
  const roles: readonly Role[] = ['wall', 'pit', 'pass', 'desk'];
  const yes = (is: boolean) => (is ? 'yes' : '–');
  const row = ([name, right]: [string, Right]) => [
    `\`${name}\``,
    ...roles.map((role) => yes(right.roles.includes(role))),
    yes(right.isOwnWork),
    yes(right.needsPin),
  ];
  return [
    ['asks for', ...roles, 'own work', 'PIN'],
    Array.from({ length: roles.length + 3 }, () => '---'),
    ...Object.entries(rights).map(row),
  ]
    .map((cells) => `| ${cells.join(' | ')} |`)
    .join('\n');
}
