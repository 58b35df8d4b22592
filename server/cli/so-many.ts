/** @example soMany(1, 'entry', 'entries') //=> '1 entry' */
export const soMany = (count: number, one: string, many: string): string =>
  `${count} ${count === 1 ? one : many}`;
