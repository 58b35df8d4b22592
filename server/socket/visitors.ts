/** Counts who is connected from which address, so that one of them cannot use up the hub. */
export function createVisitors(perAddressMax: number) {
  const counts = new Map<string, number>();
  return {
    hasRoom: (address: string) => (counts.get(address) ?? 0) < perAddressMax,
    come(address: string) {
      counts.set(address, (counts.get(address) ?? 0) + 1);
    },
    go(address: string) {
      const left = (counts.get(address) ?? 0) - 1;
      if (left > 0) counts.set(address, left);
      else counts.delete(address);
    },
  };
}
