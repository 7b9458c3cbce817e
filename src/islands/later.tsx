import { hydrate, render, type ComponentChildren, type HTMLAttributes, type VNode } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';

/** Milliseconds of work without a pause. Four times as slow, a pause still comes within what a hand does not notice. */
const stretch = 3;

let waiting: readonly (() => void)[] = [];
let running: Promise<void> | undefined;

const pause = (): Promise<void> => new Promise((done) => setTimeout(done, 0));

/** What asks for a turn within this one is a piece of it, and comes next. */
function takeOne(): void {
  const [job, ...rest] = waiting;
  waiting = [];
  try {
    job?.();
  } catch (error) {
    // One piece that cannot wake must not keep the others asleep.
    reportError(error);
  }
  waiting = [...waiting, ...rest];
}

async function work(): Promise<void> {
  while (waiting.length > 0) {
    await pause();
    const until = performance.now() + stretch;
    do takeOne();
    while (waiting.length > 0 && performance.now() < until);
  }
  running = undefined;
}

/** Does this in a task of its own, after what waits already. */
export function inTurn(job: () => void): void {
  waiting = [...waiting, job];
  running ??= work();
}

/** When everything that waits for its turn has had it. */
export const turnsTaken = async (): Promise<void> => {
  await running;
};

export const atBuild = typeof document === 'undefined';
const asItIs = { __html: '' };

export interface LaterProps extends Omit<HTMLAttributes<HTMLElement>, 'children' | 'ref'> {
  readonly as?: 'div' | 'li' | 'section';
  /** Made again only when one of these is another than before. */
  readonly on: readonly unknown[];
  readonly children: () => VNode;
  readonly [data: `data-${string}`]: string;
}

/**
 * A piece of a large island that stays in the page as it was built until its turn comes, and wakes in a task of its
 * own: the page answers in between. What is made in the browser is there at once.
 */
export function Later({ as: Tag = 'div', on, children, ...own }: LaterProps) {
  const box = useRef<HTMLElement>(null);
  const put = useRef<(make: () => VNode) => void>(undefined);
  useLayoutEffect(() => {
    if (put.current) return put.current(children);
    const element = box.current!;
    const draw = (make: () => VNode): void => render(make(), element);
    if (element.firstChild === null) {
      put.current = draw;
      return draw(children);
    }
    let last = children;
    put.current = (make) => {
      last = make;
    };
    inTurn(() => {
      if (box.current !== element) return;
      // First as it stands in the page, since waking only takes over what is there.
      hydrate(children(), element);
      put.current = draw;
      if (last !== children) draw(last);
    });
  }, on as unknown[]);
  useLayoutEffect(() => {
    const element = box.current!;
    return () => render(null, element);
  }, []);
  const inner: { children?: ComponentChildren; dangerouslySetInnerHTML?: { __html: string } } = atBuild
    ? { children: children() }
    : { dangerouslySetInnerHTML: asItIs };
  return <Tag ref={box as never} {...(own as object)} {...inner} />;
}
