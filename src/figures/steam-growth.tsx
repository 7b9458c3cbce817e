import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { Dial } from './dial.tsx';
import { figures, heat } from './drawing.ts';

export interface SteamGrowthProps {
  readonly masses: readonly number[];
  readonly temperatures: readonly number[];
  readonly litres: readonly (readonly number[])[];
}

/** Pixels to a millimetre: everything in the drawing is to this one scale. */
const scale = 0.55;
const ground = 196;
const mug = 0.3;
const bucket = 10;

/** Diameter in pixels of a ball that holds so many litres. */
const ball = (litres: number): number => scale * 100 * Math.cbrt((6 * litres) / Math.PI);

export function SteamGrowth({ masses, temperatures, litres }: SteamGrowthProps): JSX.Element {
  const [m, setMass] = useState(3);
  const [t, setTemperature] = useState(temperatures.indexOf(1100));
  const mass = masses[m]!;
  const temperature = temperatures[t]!;
  const volume = litres[m]![t]!;
  const d = ball(volume);
  const drop = Math.max(1.5, ball(mass / 1000));
  const mugs = volume / mug;
  const measure = volume < bucket / 2 ? `${figures(mugs)} mugs` : `${figures(volume / bucket)} buckets`;
  return (
    <>
      <svg
        viewBox="0 0 400 240"
        role="img"
        aria-label={`${mass} g of water makes ${figures(volume)} L of steam at ${temperature} °C`}
      >
        <rect class="heat" x="56" y={ground} width="176" height="16" style={{ fill: heat(temperature) }} />
        <path class="ink" d={`M56 ${ground}h176v16H56zM0 ${ground}h56M232 ${ground}h168`} />
        <circle class="solid" cx="20" cy={ground - drop / 2} r={drop / 2} />
        <circle class="ink gas" cx="144" cy={ground - d / 2} r={d / 2} />
        <path
          class="ink"
          d={`M250 ${ground - 52}v46q0 6 6 6h32q6 0 6-6v-46zM294 ${ground - 42}h8q6 0 6 6v16q0 6-6 6h-8`}
        />
        <path class="ink" d={`M316 ${ground - 143}l10 143h60l12-143zM316 ${ground - 143}q41-40 82 0`} />
        <g class="label">
          <text x="20" y={ground + 16} text-anchor="middle">
            drop
          </text>
          <text x="144" y={ground + 32} text-anchor="middle">
            metal, {temperature} °C
          </text>
          <text x="144" y={Math.max(14, ground - d - 6)} text-anchor="middle">
            steam, {figures(volume)} L
          </text>
          <text x="272" y={ground + 16} text-anchor="middle">
            mug 0.3 L
          </text>
          <text x="357" y={ground + 32} text-anchor="middle">
            bucket 10 L
          </text>
        </g>
      </svg>
      <div class="dials">
        <Dial id="steam-mass" label="Trapped water" unit="g" values={masses} at={m} change={setMass} />
        <Dial
          id="steam-temperature"
          label="Temperature of the metal"
          unit="°C"
          values={temperatures}
          at={t}
          change={setTemperature}
        />
      </div>
      <p class="figure-says" role="status">
        {mass} g of water becomes {figures(volume)} L of steam at {temperature} °C:{' '}
        {figures((volume * 1000) / mass)} times the room it had, {measure}.
      </p>
    </>
  );
}
