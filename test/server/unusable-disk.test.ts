import { expect, it } from 'vitest';
import { unusableDisk } from '../../server/unusable-disk.ts';

it.each([
  ['ENOSPC', '/k: the disk is full: make room on it, and start again.'],
  ['SQLITE_FULL', '/k: the disk is full: make room on it, and start again.'],
  [
    'SQLITE_READONLY_DIRECTORY',
    '/k: it may not be written to: let this user write there, and start again.',
  ],
  ['EROFS', '/k: nothing can be written on its disk: name a folder on another, and start again.'],
])('a start that meets %s says what to do', (code, said) => {
  expect(unusableDisk('/k', Object.assign(new Error('x'), { code }))?.lines).toEqual([said]);
});

it('leaves a fault of ours as it is', () => {
  expect(unusableDisk('/k', new TypeError('x'))).toBeNull();
  expect(unusableDisk('/k', Object.assign(new Error('x'), { code: 'SQLITE_ERROR' }))).toBeNull();
});
