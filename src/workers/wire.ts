import type { Wire } from './conduction-halves.ts';

/** A wire, and its end: what comes in for it, and that nothing more will. */
export interface WireEnd<Out, In> extends Wire<Out, In> {
  readonly heard: (message: In) => void;
  readonly cut: () => void;
}

/** Messages by whatever way `send` goes, their arrays moved and not copied: who sends them has no more use for them. */
export function wireOver<Out extends object, In>(
  send: (message: Out, moved: ArrayBuffer[]) => void,
): WireEnd<Out, In> {
  const waiting: In[] = [];
  let wanted: ((message: In | undefined) => void) | undefined;
  let isCut = false;
  const tell = (message: In | undefined): boolean => {
    const to = wanted;
    wanted = undefined;
    to?.(message);
    return to !== undefined;
  };
  return {
    say: (message) => send(message, buffersIn(message)),
    hear: () =>
      new Promise((resolve) => {
        if (waiting.length > 0 || isCut) resolve(waiting.shift());
        else wanted = resolve;
      }),
    heard: (message) => {
      if (!tell(message)) waiting.push(message);
    },
    cut: () => {
      isCut = true;
      tell(undefined);
    },
  };
}

/** The memory of the arrays that stand first in a message. */
export function buffersIn(message: object): ArrayBuffer[] {
  return Object.values(message).flatMap((each: unknown) =>
    each instanceof Float32Array && each.length > 0 ? [each.buffer as ArrayBuffer] : [],
  );
}
