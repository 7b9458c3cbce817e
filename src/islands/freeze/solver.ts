import { useEffect, useRef, useState } from 'preact/hooks';
import type { Part, Reply, Request } from '../../workers/conduction-work.ts';

export type Meshed = Extract<Reply, { kind: 'mesh' }>;
export type Frozen = Extract<Reply, { kind: 'frozen' }>;

/** What has come of the casting asked for last. An answer stays until the next one replaces it. */
export interface Solved {
  readonly mesh: Meshed;
  readonly frozen: Frozen;
}

export interface Going {
  /** 0 to 1 over both passes. */
  readonly progress: number;
  readonly time: number;
  readonly pass: 'coarse' | 'fine';
}

export interface Solver {
  readonly solved: Solved | undefined;
  readonly going: Going | undefined;
  /** What was asked for last is not what the key stands for now: it is about to be asked. */
  readonly behind: boolean;
  /** The casting as it freezes, before its first answer is there. */
  readonly live:
    { readonly mesh: Meshed; readonly temperature: Float32Array; readonly time: number } | undefined;
  readonly refused: string | undefined;
  readonly stop: () => void;
}

/** So long after the last change the next sum begins, ms: a word is not solved letter by letter. The first waits for nothing. */
const pause = 120;

/** Solves the part that `key` stands for off the main thread, a moment after it has last changed. */
export function useSolver(key: string, part: Part | undefined): Solver {
  const worker = useRef<Worker>(undefined);
  const asked = useRef(0);
  const [askedFor, setAskedFor] = useState('');
  const [solved, setSolved] = useState<Solved>();
  const [going, setGoing] = useState<Going>();
  const [live, setLive] = useState<Solver['live']>();
  const [refused, setRefused] = useState<string>();
  const mesh = useRef<Meshed>(undefined);

  const hear = ({ data }: MessageEvent<Reply>): void => {
    if (data.asked !== asked.current) return;
    if (data.kind === 'mesh') mesh.current = data;
    else if (data.kind === 'going') {
      const share = data.pass === 'coarse' ? 0.1 * data.progress : 0.1 + 0.9 * data.progress;
      setGoing({ progress: share, time: data.time, pass: data.pass });
      if (mesh.current) setLive({ mesh: mesh.current, temperature: data.temperature, time: data.time });
    } else if (data.kind === 'frozen') {
      setSolved({ mesh: mesh.current!, frozen: data });
      setLive(undefined);
      setGoing(data.done ? undefined : { progress: 0.1, time: 0, pass: 'fine' });
    } else {
      setGoing(undefined);
      setLive(undefined);
      setRefused(data.kind === 'refused' ? data.why : 'Stopped. An answer that was ready stays.');
    }
  };
  const begin = (): Worker => {
    if (worker.current) return worker.current;
    const made = new Worker(new URL('../../workers/conduction.ts', import.meta.url), { type: 'module' });
    made.onmessage = hear;
    made.onerror = () => {
      setGoing(undefined);
      setRefused('The sums could not be run in this browser: it must allow workers.');
    };
    worker.current = made;
    return made;
  };
  const tell = (request: Request): void => begin().postMessage(request);

  useEffect(() => {
    if (!part) return undefined;
    if (part.shape.kind === 'voxels') tell({ soon: 'cubes' });
    const wait = setTimeout(
      () => {
        asked.current += 1;
        setRefused(undefined);
        setAskedFor(key);
        setGoing({ progress: 0, time: 0, pass: 'coarse' });
        tell({ asked: asked.current, part });
      },
      asked.current === 0 ? 0 : pause,
    );
    return () => clearTimeout(wait);
  }, [key, part === undefined]);
  useEffect(() => {
    // The worker is fetched and made ready while the page still reads what it is to solve.
    begin();
    if (/shape=(block|square-boss)/.test(location.hash)) tell({ soon: 'cubes' });
    return () => worker.current?.terminate();
  }, []);
  return {
    solved,
    going,
    behind: askedFor !== key,
    live,
    refused,
    stop: () => tell({ stop: asked.current }),
  };
}
