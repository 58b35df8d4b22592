import type { ViewMessage } from '../../shared/protocol/index.ts';

/**
 * Sends a view to sockets one by one, but turns it into bytes only once for all that get the same
 * in a row.
 */
export type FanOut = (socketId: string, message: ViewMessage) => void;

export function createFanOut(sendTo: (socketIds: string[], message: ViewMessage) => void): FanOut {
  let gathering: { readonly message: ViewMessage; readonly socketIds: string[] } | null = null;

  function flush() {
    if (gathering) sendTo(gathering.socketIds, gathering.message);
    gathering = null;
  }

  return (socketId, message) => {
    // Not kept till the last view is worked out: while this one travels and is drawn, that goes on.
    if (gathering?.message !== message) flush();
    if (gathering === null) queueMicrotask(flush);
    gathering ??= { message, socketIds: [] };
    gathering.socketIds.push(socketId);
  };
}
