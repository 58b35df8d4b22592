import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { withRights } from '../../../docs/schema/rights.ts';
import { root } from '../../../server/fingerprint.mjs';
import type { Role, ScreenRecord } from '../../../shared/day/index.ts';
import { instant, type ScreenId, type StationId } from '../../../shared/kernel/index.ts';
import { rights, roleOf, whyNotShown } from '../../../shared/protocol/index.ts';
import type { Face } from '../../../shared/view/index.ts';

const [trim, fire, line] = ['trim', 'fire', 'line'] as [StationId, StationId, StationId];
const at = (station: StationId): Face => ({ kind: 'station', station });
const smoker: Face = { kind: 'smoker' };
const desk: Face = { kind: 'desk' };

function screen(role: Role, stations: StationId[] = [], revoked = false): ScreenRecord {
  const revokedAt = revoked ? instant(1) : null;
  return {
    id: 's' as ScreenId,
    name: 's',
    place: { role, stations },
    pairedAt: instant(0),
    revokedAt,
  };
}
const mayShow = (who: ScreenRecord, face: Face) =>
  whyNotShown(who, face, face.kind === 'station' && face.station === fire) === null;

describe('a screen', () => {
  it('of a wall shows its stations and nothing else', () => {
    const wall = screen('wall', [trim, line]);
    expect([at(trim), at(line)].every((face) => mayShow(wall, face))).toBe(true);
    expect([at(fire), smoker, desk].some((face) => mayShow(wall, face))).toBe(false);
  });

  it('of a wall shows several stations at once only where all of them are its own', () => {
    const both: Face = { kind: 'station', station: trim, beside: [line] };
    expect(mayShow(screen('wall', [line, trim]), both)).toBe(true);
    expect(mayShow(screen('wall', [trim]), both)).toBe(false);
    expect(mayShow(screen('desk'), both)).toBe(true);
  });

  it('of the pit shows the smokers, and the stations that are at the pit', () => {
    const pit = screen('pit');
    expect([smoker, at(fire)].every((face) => mayShow(pit, face))).toBe(true);
    expect([at(trim), desk].some((face) => mayShow(pit, face))).toBe(false);
  });

  it('of the desk shows everything', () => {
    expect([at(trim), at(fire), smoker, desk].every((face) => mayShow(screen('desk'), face))).toBe(
      true,
    );
  });

  it('that nobody let in, or that was taken off, shows nothing', () => {
    expect(whyNotShown(undefined, desk, false)).toEqual({ rule: 'screen-unknown' });
    expect(whyNotShown(screen('desk', [], true), desk, false)).toEqual({ rule: 'screen-revoked' });
  });

  it('asks as what it shows', () => {
    expect([at(trim), smoker, desk].map((face) => roleOf(face, false))).toEqual([
      'wall',
      'pit',
      'desk',
    ]);
    expect(roleOf(at(fire), true)).toBe('pit');
  });
});

describe('the table of rights', () => {
  it('lets the desk ask for everything', () => {
    for (const { roles } of Object.values(rights)) expect(roles).toContain('desk');
  });

  it('stands in docs/who.md as it stands in the code: npm run schemas writes it', () => {
    const page = readFileSync(join(root, 'docs/who.md'), 'utf8');
    expect(page).toContain('| `start` | yes |');
    expect(withRights(page)).toBe(page);
  });
});
