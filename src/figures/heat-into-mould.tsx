import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { Dial } from './dial.tsx';
import { figures, heat, spaced } from './drawing.ts';

export interface HeatIntoMouldProps {
  readonly charges: readonly number[];
  readonly moulds: readonly number[];
  readonly starts: readonly number[];
  readonly common: readonly (readonly (readonly number[])[])[];
  readonly contact: readonly number[];
  readonly pouring: number;
}

const foot = 226;
const top = 14;

/** Height on the thermometer of a temperature in °C. */
const height = (celsius: number): number => foot - ((foot - top) * celsius) / 1200;

/** Side in pixels of a square whose area stands for so many kilograms. */
const side = (kilograms: number): number => 78 * Math.sqrt(kilograms);

export function HeatIntoMould(props: HeatIntoMouldProps): JSX.Element {
  const { charges, moulds, starts, common, contact, pouring } = props;
  const [m, setCharge] = useState(charges.indexOf(47));
  const [k, setMould] = useState(moulds.indexOf(1.2));
  const [s, setStart] = useState(starts.indexOf(20));
  const charge = charges[m]!;
  const mould = moulds[k]!;
  const start = starts[s]!;
  const end = common[m]![k]![s]!;
  const face = contact[s]!;
  const big = side(mould);
  const small = side(charge / 1000);
  const middle = 100;
  const marks = [
    { celsius: start, text: `mould, ${start} °C` },
    { celsius: end, text: `all at last, ${figures(end, 3)} °C` },
    { celsius: face, text: `face at once, ${face} °C` },
    { celsius: pouring, text: `metal, ${pouring} °C` },
  ];
  const places = spaced(
    marks.map(({ celsius }) => -height(celsius)),
    18,
  ).map((place) => -place);
  return (
    <>
      <svg
        viewBox="0 0 400 240"
        role="img"
        aria-label={`${charge} g of metal in ${mould} kg of sand at ${start} °C: the face jumps to ${face} °C, all ends at ${figures(end, 3)} °C`}
      >
        <defs>
          <pattern
            id="heat-sand"
            width="7"
            height="7"
            patternUnits="userSpaceOnUse"
            patternTransform="rotate(45)"
          >
            <path d="M0 0V7" stroke="var(--edge)" stroke-width="1" />
          </pattern>
        </defs>
        <g transform={`translate(${middle} 120)`}>
          <rect
            class="ink"
            x={-big / 2}
            y={-big / 2}
            width={big}
            height={big}
            style={{ fill: 'url(#heat-sand)' }}
          />
          <rect class="solid" x={-small / 2} y={-small / 2} width={small} height={small} />
        </g>
        <g class="label">
          <text x={middle} y={Math.min(236, 136 + big / 2)} text-anchor="middle">
            {charge} g in {mould} kg
          </text>
        </g>
        {marks.map(({ celsius }) => (
          <path key={celsius} class="ink" d={`M214 ${height(celsius)}h18`} />
        ))}
        {scaleSteps.map((celsius) => (
          <rect
            key={celsius}
            class="heat"
            x="216"
            y={height(celsius + 50)}
            width="12"
            height={height(celsius) - height(celsius + 50) + 0.5}
            style={{ fill: heat(celsius + 25) }}
          />
        ))}
        <path class="ink" d={`M216 ${top}h12V${foot}h-12z`} />
        <g class="label">
          {marks.map(({ celsius, text }, i) => (
            <g key={text}>
              <path class="lead" d={`M228 ${height(celsius)}L244 ${places[i]!}`} />
              <text x="248" y={places[i]! + 4.5}>
                {text}
              </text>
            </g>
          ))}
        </g>
      </svg>
      <div class="dials">
        <Dial id="heat-charge" label="Metal" unit="g" values={charges} at={m} change={setCharge} />
        <Dial id="heat-mould" label="Sand" unit="kg" values={moulds} at={k} change={setMould} />
        <Dial id="heat-start" label="Mould at the pour" unit="°C" values={starts} at={s} change={setStart} />
      </div>
      <p class="figure-says" role="status">
        {charge} g of metal warms {mould} kg of sand from {start} to {figures(end, 3)} °C. The face of the
        sand does not wait for that: it jumps to {face} °C at once.
      </p>
    </>
  );
}

const scaleSteps = Array.from({ length: 24 }, (_, i) => i * 50);
