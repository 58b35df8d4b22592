/** What has been opened so far, to be closed again in the other order, once. */
export type Closing = {
  add(close: () => void | Promise<void>): void;
  run(): Promise<void>;
};

export function createClosing(): Closing {
  const closers: (() => void | Promise<void>)[] = [];
  return {
    add: (close) => {
      closers.push(close);
    },
    async run() {
      for (let close = closers.pop(); close; close = closers.pop()) await close();
    },
  };
}
