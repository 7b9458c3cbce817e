import { useEffect, useRef, useState } from 'preact/hooks';
import { printNumber, printQuantity } from '../../../calculators/core/print.ts';
import { fromSI, type UnitSymbol } from '../../../calculators/core/units.ts';
import type { Point } from '../../../calculators/meshes/triangles.ts';
import { bands, toneOf } from '../../workers/part-tones.ts';
import type { Gated, Reply, Request, Seen, Shown, Timed } from '../../workers/part-work.ts';
import { here, mm } from './said.ts';

type Ask = (request: Request) => void;
type Pictures = ReadonlyMap<string, Reply>;

const isDark = (): boolean =>
  matchMedia('(prefers-color-scheme: dark)').matches && !matchMedia('print').matches;

/** A canvas that shows the pixels a worker sent. */
function Pixels(props: {
  readonly picture:
    | { readonly pixels: Uint8ClampedArray<ArrayBuffer>; readonly width: number; readonly height: number }
    | undefined;
  readonly label: string;
}) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const { picture } = props;
  useEffect(() => {
    if (!canvas.current || !picture) return;
    canvas.current.width = picture.width;
    canvas.current.height = picture.height;
    canvas.current
      .getContext('2d')
      ?.putImageData(new ImageData(picture.pixels, picture.width, picture.height), 0, 0);
  }, [picture]);
  return <canvas ref={canvas} role="img" aria-label={props.label} />;
}

/** The values at which the tones change, under the drawing. */
function Scale(props: {
  readonly ends: readonly number[];
  readonly what: string;
  readonly unit: UnitSymbol;
}) {
  const { ends, what, unit } = props;
  return (
    <div class="scale" aria-label={`${what}: the darker, the more`} role="img">
      {Array.from({ length: bands }, (_, n) => (
        <span>
          <i style={{ background: toneOf(n) }} />
          {printNumber(fromSI(ends[n]!, unit), { figures: 2 })}
        </span>
      ))}
      <span class="end">{printQuantity(ends[bands]!, unit, { figures: 2 })}</span>
    </div>
  );
}

const whats: Readonly<Record<Shown, string>> = {
  thick: 'Thickness',
  modulus: 'Modulus',
  run: 'Run from the gate',
  froze: 'Solid after',
};

const sides = [
  ['front', 'From the front', 0, 0],
  ['side', 'From the right', 90, 0],
  ['top', 'From above', 0, 90],
  ['corner', 'From the corner', 35, 28],
] as const;

/** The part to turn, with a cross to set the gate, and four views of it for paper. */
export function Views(props: {
  readonly ask: Ask;
  readonly shown: Shown;
  readonly pictures: Pictures;
  readonly gated: Gated;
  readonly timed: Timed | undefined;
  readonly onGate: (x: number, y: number) => void;
}) {
  const { ask, shown, pictures, gated, timed, onGate } = props;
  const [turn, setTurn] = useState({ yaw: 28, pitch: 32 });
  const [cross, setCross] = useState<{ readonly x: number; readonly y: number }>();
  const box = useRef<HTMLDivElement>(null);
  const drag = useRef<{ x: number; y: number; moved: boolean; id: number }>(undefined);
  const waiting = useRef(false);
  const wanted = useRef(false);
  const main = pictures.get('main') as Seen | undefined;

  const draw = (): void => {
    // One picture is asked for at a time; the next carries the latest turn.
    if (waiting.current) {
      wanted.current = true;
      return;
    }
    waiting.current = true;
    const css = box.current?.clientWidth ?? 480;
    const width = Math.round(Math.min(900, css * Math.min(2, devicePixelRatio || 1)));
    const look = { ...turnNow.current, width, height: Math.round(width * 0.72), dark: isDark() };
    ask({ kind: 'view', look, shown: shownNow.current, name: 'main' });
  };
  const turnNow = useRef(turn);
  turnNow.current = turn;
  const shownNow = useRef(shown);
  shownNow.current = shown;

  useEffect(draw, [turn, shown, gated, timed]);
  useEffect(() => {
    waiting.current = false;
    if (!wanted.current) return;
    wanted.current = false;
    draw();
  }, [main]);
  useEffect(() => {
    for (const [name, , yaw, pitch] of sides)
      ask({ kind: 'view', look: { yaw, pitch, width: 520, height: 390, dark: false }, shown, name });
  }, [shown, gated, timed]);
  useEffect(() => {
    const scheme = matchMedia('(prefers-color-scheme: dark)');
    const again = (): void => draw();
    scheme.addEventListener('change', again);
    addEventListener('resize', again);
    return () => {
      scheme.removeEventListener('change', again);
      removeEventListener('resize', again);
    };
  }, []);

  const turnBy = (yaw: number, pitch: number): void =>
    setTurn((now) => ({
      yaw: (now.yaw + yaw + 360) % 360,
      pitch: Math.max(-90, Math.min(90, now.pitch + pitch)),
    }));
  const place = (event: { clientX: number; clientY: number }): { x: number; y: number } => {
    const area = box.current!.getBoundingClientRect();
    const scale = (main?.width ?? area.width) / area.width;
    return { x: (event.clientX - area.left) * scale, y: (event.clientY - area.top) * scale };
  };
  const onKey = (event: KeyboardEvent): void => {
    const step = event.shiftKey ? 40 : 10;
    const move = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[event.key];
    if (move && main) {
      event.preventDefault();
      setCross((now) => ({
        x: Math.max(0, Math.min(main.width - 1, (now?.x ?? main.width / 2) + step * move[0]!)),
        y: Math.max(0, Math.min(main.height - 1, (now?.y ?? main.height / 2) + step * move[1]!)),
      }));
    } else if ((event.key === 'Enter' || event.key === ' ') && cross) {
      event.preventDefault();
      onGate(cross.x, cross.y);
    } else if (event.key === 'Escape') setCross(undefined);
  };
  const share = (value: number, of: number): string => `${(100 * value) / of}%`;

  return (
    <div class="views">
      <div class="on-screen">
        {/* eslint-disable-next-line jsx-a11y-x/no-noninteractive-element-interactions -- an application takes keys */}
        <div
          ref={box}
          class="stage"
          role="application"
          tabIndex={0}
          aria-label="The part. Arrow keys move a cross, Enter puts the gate there. Buttons below turn it."
          onKeyDown={onKey}
          onPointerDown={(event) => {
            drag.current = { x: event.clientX, y: event.clientY, moved: false, id: event.pointerId };
            event.currentTarget.setPointerCapture(event.pointerId);
          }}
          onPointerMove={(event) => {
            const from = drag.current;
            if (from?.id !== event.pointerId) return;
            const [dx, dy] = [event.clientX - from.x, event.clientY - from.y];
            if (!from.moved && Math.hypot(dx, dy) < 6) return;
            drag.current = { x: event.clientX, y: event.clientY, moved: true, id: from.id };
            turnBy(-dx * 0.6, dy * 0.6);
          }}
          onPointerUp={(event) => {
            if (drag.current?.moved === false) {
              const at = place(event);
              onGate(at.x, at.y);
            }
            drag.current = undefined;
          }}
          onPointerCancel={() => (drag.current = undefined)}
        >
          <Pixels
            picture={main}
            label={`The part, shaded by ${whats[shown].toLowerCase()}: the darker, the more`}
          />
          {main?.marks.map(({ name, x, y, hidden }) => (
            <span
              class="mark"
              data-hidden={hidden}
              style={{ left: share(x, main.width), top: share(y, main.height) }}
            >
              {name}
            </span>
          ))}
          {cross && main && (
            <span
              class="cross"
              style={{ left: share(cross.x, main.width), top: share(cross.y, main.height) }}
            />
          )}
        </div>
        <div class="row" role="group" aria-label="Turn the part">
          <button type="button" onClick={() => turnBy(15, 0)}>
            Turn left
          </button>
          <button type="button" onClick={() => turnBy(-15, 0)}>
            Turn right
          </button>
          <button type="button" onClick={() => turnBy(0, 15)}>
            From higher
          </button>
          <button type="button" onClick={() => turnBy(0, -15)}>
            From lower
          </button>
        </div>
      </div>
      {shown === 'froze' ? (
        timed && <Scale ends={timed.scale} what={whats[shown]} unit="s" />
      ) : (
        <Scale ends={gated.scales[shown]} what={whats[shown]} unit={here('mm')} />
      )}
      <div class="four on-paper">
        {sides.map(([name, label]) => (
          <figure>
            <Pixels picture={pictures.get(name) as Seen | undefined} label={label} />
            <figcaption>{label}</figcaption>
          </figure>
        ))}
      </div>
    </div>
  );
}

const axes = ['from the side', 'from the front', 'from above'] as const;

/** One layer through the part, moved along. */
export function Cuts(props: {
  readonly ask: Ask;
  readonly shown: Shown;
  readonly picture: Reply | undefined;
  readonly extent: Point;
  readonly gated: Gated;
  readonly timed: Timed | undefined;
}) {
  const { ask, shown, gated, timed } = props;
  const [axis, setAxis] = useState<0 | 1 | 2>(2);
  const [share, setShare] = useState(0.5);
  const picture = props.picture?.kind === 'cut' ? props.picture : undefined;
  useEffect(
    () => ask({ kind: 'cut', axis, share, shown, dark: isDark(), widest: 560 }),
    [axis, share, shown, gated, timed],
  );
  const along = mm(picture?.at ?? share * props.extent[axis]);
  return (
    <section class="cut on-screen" aria-labelledby="inside">
      <h2 id="inside">What is inside?</h2>
      <div class="asks">
        <label>
          Cut seen
          <select
            value={String(axis)}
            onChange={(event) => setAxis(Number(event.currentTarget.value) as 0 | 1 | 2)}
          >
            {axes.map((name, n) => (
              <option value={String(n)} selected={n === axis}>
                {name}
              </option>
            ))}
          </select>
        </label>
        <label class="along">
          {along} along
          <input
            type="range"
            min="0"
            max="1"
            step="0.01"
            value={share}
            aria-valuetext={along}
            onInput={(event) => setShare(Number(event.currentTarget.value))}
          />
        </label>
      </div>
      <Pixels picture={picture} label={`A cut ${axes[axis]}, shaded by ${whats[shown].toLowerCase()}`} />
    </section>
  );
}
