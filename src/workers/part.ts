import { startPart, type Request } from './part-work.ts';

/** Reads and measures parts off the main thread. */
const answer = startPart((reply, move = []) => postMessage(reply, { transfer: move }));

addEventListener('message', ({ data }: MessageEvent<Request>) => answer(data));
