import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { figures } from './drawing.ts';

export interface JunctionProps {
  readonly cases: readonly {
    readonly name: string;
    /** Left and lower edge, width and height in mm, and when it was solid, s. */
    readonly cells: readonly (readonly [number, number, number, number, number])[];
    readonly arm: number;
    readonly last: { readonly x: number; readonly y: number; readonly time: number };
  }[];
}

/** Dots to a millimetre. */
const scale = 9.5;
const across = (x: number): number => 200 + scale * x;
const up = (y: number): number => 182 - scale * y;

export function JunctionAndChill({ cases }: JunctionProps): JSX.Element {
  const [chosen, setChosen] = useState(0);
  const { name, cells, last, arm } = cases[chosen]!;
  const latest = Math.max(...cases.map((one) => one.last.time));
  const earliest = Math.min(...cells.map((cell) => cell[4]));
  const tone = (time: number): string => {
    const part = Math.round(8 + (60 * (time - Math.min(earliest, arm))) / (latest - Math.min(earliest, arm)));
    return `color-mix(in oklab, var(--ink) ${Math.min(70, Math.max(6, part))}%, var(--paper))`;
  };
  const [x, y] = [last.x, last.y];
  return (
    <>
      <svg
        viewBox="0 0 400 250"
        role="img"
        aria-label={`${name}: the last place is ${x.toFixed(1)} mm from the middle and ${y.toFixed(1)} mm up, solid after ${figures(last.time)} s; the middle of an arm after ${figures(arm)} s`}
      >
        {([1, -1] as const).map((side) =>
          cells.map(([left, low, width, height, time]) => (
            <rect
              x={side > 0 ? across(left) : across(-left - width)}
              y={up(low + height)}
              width={scale * width + 0.4}
              height={scale * height + 0.4}
              shape-rendering="crispEdges"
              style={{ fill: tone(time) }}
            />
          )),
        )}
        <path
          class="ink"
          d={`M${across(-16)} ${up(0)}H${across(16)}V${up(4)}H${across(2)}V${up(18)}H${across(-2)}V${up(4)}H${across(-16)}Z`}
        />
        {chosen === 1 && (
          <>
            <rect class="ink" x={across(-4)} y={up(0)} width={8 * scale} height={6 * scale} />
            <text class="label" x="200" y={up(-3)} text-anchor="middle">
              chill
            </text>
          </>
        )}
        <path
          class="ink"
          stroke-width="2.5"
          d={`M${across(x) - 6} ${up(y) - 6}l12 12M${across(x) + 6} ${up(y) - 6}l-12 12`}
        />
        <g class="label">
          <text class="over" x={across(x) + 12} y={up(y) + 5}>
            last, {figures(last.time)} s
          </text>
          <text class="over" x={across(9.5)} y={up(1.5)} text-anchor="start">
            {figures(arm)} s
          </text>
        </g>
      </svg>
      <fieldset class="choice needs-script">
        <legend class="unseen">The junction</legend>
        {cases.map((one, n) => (
          <label key={one.name}>
            <input
              type="radio"
              name="junction-and-chill"
              checked={n === chosen}
              onChange={() => setChosen(n)}
            />
            {one.name}
          </label>
        ))}
      </fieldset>
      <p class="figure-says" role="status">
        {chosen === 0
          ? `Where the webs meet it is solid ${figures(last.time - arm)} s after the middle of an arm. What shrinks there in that time draws on nothing.`
          : `The chill ends that: the last place is now ${y.toFixed(0)} mm up, solid after ${figures(last.time)} s.`}
      </p>
    </>
  );
}
