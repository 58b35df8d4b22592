/**
 * The Food Code as states adopted it. The 2022 text itself was not read, so every row says whose
 * copy it was read in.
 * @example foodCode('Minn. R. 4626.0340').sure //=> 'secondary copy'
 */
export const foodCode = (edition: string) =>
  ({ source: 'FDA Food Code', edition, sure: 'secondary copy' }) as const;

export const wisconsin = foodCode(
  'Wis. Admin. Code ATCP 75, Appendix, in force from 1 August 2020',
);
export const washington = foodCode('Wash. Admin. Code 246-215, in force from 1 March 2022');
export const washington2009 = foodCode('2009 text as adopted in Wash. Admin. Code 246-215, 2013');
