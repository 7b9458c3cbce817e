import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { Dial } from './dial.tsx';
import { figures, heat } from './drawing.ts';

export interface FreezeInTimeProps {
  readonly times: readonly number[];
  readonly parts: readonly {
    readonly name: string;
    readonly rule: number;
    readonly time: number;
    readonly shots: readonly (readonly number[])[];
  }[];
  /** Cells of metal, from the middle out; the rest is mould. */
  readonly cells: number;
  readonly solidus: number;
  readonly liquidus: number;
}

/** Dots from the middle to the face of the metal, and to the edge of what is seen of the mould. */
const face = 40;

export function FreezeInTime({ times, parts, cells, solidus, liquidus }: FreezeInTimeProps): JSX.Element {
  const [at, setAt] = useState(Math.round(0.4 * (times.length - 1)));
  const state = (warm: number, time: number): string =>
    times[at]! >= time || warm <= solidus ? 'solid' : warm >= liquidus ? 'liquid' : 'freezing';
  return (
    <>
      <svg
        viewBox="0 0 400 224"
        role="img"
        aria-label={parts
          .map(({ name, shots, time }) => `${name}: the middle is ${state(shots[at]![0]!, time)}`)
          .join('. ')}
      >
        {parts.map(({ name, shots, rule, time }, n) => {
          const now = shots[at]!;
          const middle = 100 + 200 * n;
          const widths = edgesOf(now.length, cells);
          return (
            <g key={name}>
              <clipPath id={`freeze-in-time-${n}`}>
                <rect x={middle - 2 * face} y="4" width={4 * face} height={4 * face - 20} />
              </clipPath>
              <g clip-path={`url(#freeze-in-time-${n})`}>
                {[...now.keys()]
                  .reverse()
                  .map((cell) =>
                    n === 0 ? (
                      <rect
                        class="heat"
                        x={middle - widths[cell]!}
                        y="4"
                        width={2 * widths[cell]!}
                        height={4 * face - 20}
                        style={{ fill: heat(now[cell]!) }}
                      />
                    ) : (
                      <circle
                        class="heat"
                        cx={middle}
                        cy="74"
                        r={widths[cell]!}
                        style={{ fill: heat(now[cell]!) }}
                      />
                    ),
                  )}
              </g>
              {n === 0 ? (
                <path
                  class="ink"
                  d={`M${middle - face} 4v${4 * face - 20}M${middle + face} 4v${4 * face - 20}`}
                />
              ) : (
                <circle class="ink" cx={middle} cy="74" r={face} />
              )}
              <g class="label">
                <text x={middle} y="78" text-anchor="middle" class="over">
                  {state(now[0]!, time)}
                </text>
                <text x={middle} y="96" text-anchor="middle" class="over">
                  {times[at]! >= time ? `after ${figures(time)} s` : `${now[0]} °C`}
                </text>
                <text x={middle} y="166" text-anchor="middle" class="strong">
                  {name}
                </text>
                <text x={middle} y="186" text-anchor="middle">
                  rule {figures(rule)} s
                </text>
                <text x={middle} y="206" text-anchor="middle">
                  solved {figures(time)} s
                </text>
              </g>
            </g>
          );
        })}
      </svg>
      <div class="dials">
        <Dial id="freeze-in-time" label="Time" unit="s" values={times} at={at} change={setAt} />
      </div>
      <p class="figure-says" role="status">
        After {times[at]} s:{' '}
        {parts
          .map(
            ({ name, shots, time }) =>
              `${name.split(',')[0]!.toLowerCase()}, middle ${state(shots[at]![0]!, time)}`,
          )
          .join('; ')}
        .
      </p>
    </>
  );
}

/** Outer edge of each cell in dots: metal evenly, then the mould's cells evenly to twice as far. */
function edgesOf(count: number, cells: number): readonly number[] {
  return Array.from({ length: count }, (_, n) =>
    n < cells ? (face * (n + 1)) / cells : face + (1.05 * face * (n - cells + 1)) / (count - cells),
  );
}
