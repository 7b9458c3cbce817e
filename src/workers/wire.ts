import type { Wire } from './conduction-halves.ts';

/** Messages over a port, their arrays moved instead of copied where nobody needs them any more. */
export function wireOver<Out extends object, In>(
  port: MessagePort,
): Wire<Out, In> & { readonly cut: () => void } {
  const heard: In[] = [];
  let wanting: ((message: In | undefined) => void) | undefined;
  let isCut = false;
  const tell = (message: In | undefined): void => {
    const to = wanting;
    wanting = undefined;
    to?.(message);
  };
  port.onmessage = ({ data }: MessageEvent<In>) => {
    if (wanting) tell(data);
    else heard.push(data);
  };
  return {
    say: (message) => port.postMessage(message, buffersIn(message)),
    hear: () =>
      new Promise((resolve) => {
        if (heard.length > 0 || isCut) resolve(heard.shift());
        else wanting = resolve;
      }),
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
