import type { ViewMessage } from '../../shared/protocol/index.ts';

/** Sends a view to sockets one by one, but turns it into bytes only once for all that get the same in one turn. */
export type FanOut = (socketId: string, message: ViewMessage) => void;

export function createFanOut(sendTo: (socketIds: string[], message: ViewMessage) => void): FanOut {
  const waiting = new Map<ViewMessage, string[]>();

  function flush() {
    for (const [message, socketIds] of waiting) sendTo(socketIds, message);
    waiting.clear();
  }

  return (socketId, message) => {
    if (waiting.size === 0) queueMicrotask(flush);
    const socketIds = waiting.get(message);
    if (socketIds) socketIds.push(socketId);
    else waiting.set(message, [socketId]);
  };
}
