import { useRef, useState } from 'preact/hooks';
import type { Sheet } from './squares.ts';
import { emptyTee, sheetSize } from './squares.ts';

const brushes = ['metal', 'mould', 'chill'] as const;
const { width, height } = sheetSize;

/** Squared paper to draw on: by pointer, or by arrow keys and space. */
export function Grid(props: {
  readonly sheet: Sheet;
  readonly turned: boolean;
  readonly says: readonly string[];
  readonly onChange: (sheet: Sheet) => void;
}) {
  const { sheet } = props;
  const [brush, setBrush] = useState(0);
  const [at, setAt] = useState<readonly [number, number]>([12, 8]);
  const [focused, setFocused] = useState(false);
  const before = useRef<readonly Sheet[]>([]);
  const drawing = useRef(false);

  const paint = ([i, j]: readonly [number, number], fresh: boolean): void => {
    if (sheet.squares[i + width * j] === brush) return;
    if (fresh) before.current = [...before.current.slice(-29), sheet];
    const squares = sheet.squares.slice();
    squares[i + width * j] = brush;
    props.onChange({ ...sheet, squares });
  };
  const squareAt = (event: PointerEvent): readonly [number, number] => {
    const box = (event.currentTarget as Element).getBoundingClientRect();
    const of = (part: number, count: number): number =>
      Math.min(count - 1, Math.max(0, Math.floor(part * count)));
    return [
      of((event.clientX - box.left) / box.width, width),
      of((box.bottom - event.clientY) / box.height, height),
    ];
  };
  const [ci, cj] = at;
  const here = brushes[sheet.squares[ci + width * cj] ?? 1] ?? 'mould';
  return (
    <div class="grid">
      <fieldset class="brushes">
        <legend>Draw with</legend>
        {brushes.map((name, n) => (
          <label key={name}>
            <input type="radio" name="brush" checked={brush === n} onChange={() => setBrush(n)} />
            {name}
          </label>
        ))}
      </fieldset>
      <svg
        viewBox={`0 0 ${width} ${height}`}
        role="application"
        aria-roledescription="squared paper"
        aria-label={`Squared paper, ${width} by ${height}. Column ${ci + 1}, row ${cj + 1} from below: ${here}. Arrow keys move, space draws with ${brushes[brush] ?? ''}.`}
        tabIndex={0}
        onFocus={() => setFocused(true)}
        onBlur={() => setFocused(false)}
        onKeyDown={(event) => {
          const way = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] }[
            event.key
          ];
          if (way)
            setAt([
              Math.min(width - 1, Math.max(0, ci + way[0]!)),
              Math.min(height - 1, Math.max(0, cj + way[1]!)),
            ]);
          else if (event.key === ' ' || event.key === 'Enter') paint(at, true);
          else return;
          event.preventDefault();
        }}
        onPointerDown={(event) => {
          drawing.current = true;
          event.currentTarget.setPointerCapture(event.pointerId);
          const square = squareAt(event);
          setAt(square);
          paint(square, true);
        }}
        onPointerMove={(event) => drawing.current && paint(squareAt(event), false)}
        onPointerUp={() => (drawing.current = false)}
        onPointerCancel={() => (drawing.current = false)}
      >
        {[...sheet.squares].map((region, n) =>
          region === 1 ? null : (
            <rect
              key={n}
              class={brushes[region] ?? ''}
              x={n % width}
              y={height - 1 - Math.floor(n / width)}
              width="1"
              height="1"
            />
          ),
        )}
        <path
          class="rule"
          d={[
            ...Array.from({ length: width + 1 }, (_, n) => `M${n} 0V${height}`),
            ...Array.from({ length: height + 1 }, (_, n) => `M0 ${n}H${width}`),
          ].join('')}
        />
        {props.turned && <path class="axis" d={`M0 0V${height}`} />}
        {focused && <rect class="cursor" x={ci} y={height - 1 - cj} width="1" height="1" />}
      </svg>
      {props.says.map((text) => (
        <p class="wrong" role="alert">
          {text.charAt(0).toUpperCase() + text.slice(1)}.
        </p>
      ))}
      <p class="deeds">
        <button
          type="button"
          onClick={() => {
            const last = before.current.at(-1);
            if (!last) return;
            before.current = before.current.slice(0, -1);
            props.onChange(last);
          }}
        >
          Undo
        </button>
        <button
          type="button"
          onClick={() => {
            before.current = [...before.current, sheet];
            props.onChange({ ...sheet, squares: sheet.squares.map(() => 1) });
          }}
        >
          Clear the paper
        </button>
        <button
          type="button"
          onClick={() => {
            before.current = [...before.current, sheet];
            props.onChange(emptyTee());
          }}
        >
          Start from a T
        </button>
      </p>
    </div>
  );
}
