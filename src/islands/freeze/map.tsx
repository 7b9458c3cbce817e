import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { coloursOf, type Colours } from './colours.ts';
import { cellAt, outline, stroke, toDots, type View } from './picture.ts';

export type Place = readonly [x: number, y: number];

/** A word and the place it is written at. */
export interface Named {
  readonly name: string;
  readonly at: Place;
}

export interface MapProps {
  readonly id: string;
  /** What the picture shows, in a sentence, for who does not see it. */
  readonly label: string;
  readonly view: View;
  /** Changes when the picture does. */
  readonly of: unknown;
  /** Gives back what is to be written on it: that comes over the outline. */
  readonly draw: (context: CanvasRenderingContext2D, colours: Colours, scale: number) => readonly Named[];
  readonly probe: Place | undefined;
  readonly onProbe: (place: Place) => void;
  /** Where it froze last. */
  readonly last: Place | undefined;
  readonly stale: boolean;
}

const waiting = new Set<() => void>();

/** Draws when the page has answered the reader, each picture by itself; gives back how to call it off. */
function soon(draw: () => void): () => void {
  const next = (): void => {
    const [first] = waiting;
    if (!first) return;
    waiting.delete(first);
    if (waiting.size > 0) setTimeout(next);
    first();
  };
  if (waiting.size === 0) setTimeout(next);
  waiting.add(draw);
  return () => waiting.delete(draw);
}

/** A picture of the cut. The probe follows the pointer, or the arrow keys by cells. */
export function Map(props: MapProps) {
  const { view, probe, last } = props;
  const canvas = useRef<HTMLCanvasElement>(null);
  const [wide, setWide] = useState(0);
  const [onPaper, setOnPaper] = useState(false);
  const shape = (view.right - view.left) / (view.top - view.bottom);

  useEffect(() => {
    const element = canvas.current!;
    const seen = new ResizeObserver(() => setWide(element.clientWidth));
    seen.observe(element);
    const before = (): void => setOnPaper(true);
    const after = (): void => setOnPaper(false);
    const dark = matchMedia('(prefers-color-scheme: dark)');
    const repaint = (): void => setWide((now) => now + 1e-6);
    addEventListener('beforeprint', before);
    addEventListener('afterprint', after);
    dark.addEventListener('change', repaint);
    return () => {
      seen.disconnect();
      removeEventListener('beforeprint', before);
      removeEventListener('afterprint', after);
      dark.removeEventListener('change', repaint);
    };
  }, []);

  const edges = useMemo(() => outline(view), [view]);
  const paint = (): void => {
    const element = canvas.current!;
    const scale = Math.min(2, devicePixelRatio || 1);
    element.width = Math.round(wide * scale);
    element.height = Math.round((wide * scale) / shape);
    const context = element.getContext('2d');
    if (!context) return;
    const colours = coloursOf(element, onPaper);
    // A sheet shows it about half as large as the screen.
    const size = onPaper ? 2 * scale : scale;
    const names = props.draw(context, colours, size);
    stroke(context, view, edges, colours.ink, 1.5 * size);
    for (const { name, at } of names) {
      const dots = toDots(element, view);
      label(context, name, dots.x(at[0]) + 3 * size, dots.y(at[1]), colours, size);
    }
    if (last) cross(context, view, last, colours, size, 'last');
    if (probe) cross(context, view, probe, colours, size, '');
  };
  useLayoutEffect(() => {
    if (wide < 1) return undefined;
    if (!onPaper) return soon(paint);
    // The printer does not wait.
    paint();
    return undefined;
  }, [wide, onPaper, props.of, view, probe, last]);

  const placeOf = ({ offsetX, offsetY, currentTarget }: PointerEvent): Place => {
    const { clientWidth, clientHeight } = currentTarget as HTMLCanvasElement;
    return [
      view.left + ((view.right - view.left) * offsetX) / clientWidth,
      view.top - ((view.top - view.bottom) * offsetY) / clientHeight,
    ];
  };
  const step = (dx: number, dy: number): void => {
    const from = probe ?? last ?? [(view.left + view.right) / 2, (view.bottom + view.top) / 2];
    const cell = cellAt(view, ...from);
    const nx = view.mesh.size[0];
    const j = view.v === 1 ? Math.floor(cell / nx) : Math.floor(cell / (nx * view.mesh.size[1]));
    const width = (edges: Float64Array, n: number): number => edges[n + 1]! - edges[n]!;
    props.onProbe([
      clamp(from[0] + dx * width(view.mesh.edges[0], cell % nx), view.left, view.right),
      clamp(from[1] + dy * width(view.mesh.edges[view.v], j), view.bottom, view.top),
    ]);
  };
  return (
    // eslint-disable-next-line jsx-a11y-x/no-noninteractive-element-interactions -- moved about in by keys: an application
    <div
      class="map"
      id={props.id}
      role="application"
      aria-roledescription="picture with a probe"
      aria-label={`${props.label} Move the probe with the arrow keys.`}
      tabIndex={0}
      data-stale={props.stale}
      onKeyDown={(event) => {
        const way = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] }[
          event.key
        ];
        if (!way) return;
        event.preventDefault();
        step(way[0]!, way[1]!);
      }}
    >
      <canvas
        ref={canvas}
        style={{ aspectRatio: String(shape), maxWidth: `min(100%, ${Math.round(26 * shape)}rem)` }}
        onPointerDown={(event) => props.onProbe(placeOf(event))}
        onPointerMove={(event) =>
          (event.pointerType === 'mouse' || event.buttons > 0) && props.onProbe(placeOf(event))
        }
      />
    </div>
  );
}

const clamp = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));

function cross(
  context: CanvasRenderingContext2D,
  view: View,
  [x, y]: Place,
  { ink, paper, font }: Colours,
  scale: number,
  word: string,
): void {
  const dots = toDots(context.canvas, view);
  const [cx, cy, arm] = [dots.x(x), dots.y(y), 8 * scale];
  for (const [colour, width] of [
    [paper, 5],
    [ink, 2],
  ] as const) {
    context.beginPath();
    if (word === '') {
      context.arc(cx, cy, 0.75 * arm, 0, 2 * Math.PI);
    } else {
      context.moveTo(cx - arm, cy - arm);
      context.lineTo(cx + arm, cy + arm);
      context.moveTo(cx + arm, cy - arm);
      context.lineTo(cx - arm, cy + arm);
    }
    context.strokeStyle = colour;
    context.lineWidth = width * scale;
    context.stroke();
  }
  if (word !== '') label(context, word, cx + arm + 3 * scale, cy, { ink, paper, font }, scale);
}

/** A word on the picture, with a rim of paper. */
function label(
  context: CanvasRenderingContext2D,
  text: string,
  x: number,
  y: number,
  { ink, paper, font }: Pick<Colours, 'ink' | 'paper' | 'font'>,
  scale: number,
): void {
  context.font = `600 ${14 * scale}px ${font}`;
  const { width } = context.measureText(text);
  context.textBaseline = 'middle';
  context.lineJoin = 'round';
  context.strokeStyle = paper;
  context.lineWidth = 4 * scale;
  context.fillStyle = ink;
  const from = clamp(x, 2 * scale, context.canvas.width - width - 2 * scale);
  const at = clamp(y, 9 * scale, context.canvas.height - 9 * scale);
  context.strokeText(text, from, at);
  context.fillText(text, from, at);
}
