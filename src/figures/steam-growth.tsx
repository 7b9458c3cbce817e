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
const scale = 0.5;
const ground = 196;
/** Millimetres, inside: a mug of 75 by 68 holds 0.30 L; a bucket of 190 and 260 by 250 holds 10.0 L. */
const mug = { across: 75 * scale, high: 68 * scale, holds: 0.3, middle: 222 } as const;
const bucket = { foot: 95 * scale, rim: 130 * scale, high: 250 * scale, holds: 10, middle: 330 } as const;

/** Diameter in pixels of a ball that holds so many litres. */
const ball = (litres: number): number => scale * 100 * Math.cbrt((6 * litres) / Math.PI);

const mugLine =
  `M${mug.middle - mug.across / 2} ${ground - mug.high}v${mug.high}h${mug.across}v${-mug.high}z` +
  `m${mug.across} 7h6q5 0 5 5v10q0 5-5 5h-6`;
const bucketLine =
  `M${bucket.middle - bucket.rim} ${ground - bucket.high}L${bucket.middle - bucket.foot} ${ground}` +
  `h${2 * bucket.foot}L${bucket.middle + bucket.rim} ${ground - bucket.high}z` +
  `m0 0q${bucket.rim}-44 ${2 * bucket.rim} 0`;

export function SteamGrowth({ masses, temperatures, litres }: SteamGrowthProps): JSX.Element {
  const [m, setMass] = useState(3);
  const [t, setTemperature] = useState(temperatures.indexOf(1100));
  const mass = masses[m]!;
  const temperature = temperatures[t]!;
  const volume = litres[m]![t]!;
  const d = ball(volume);
  const drop = Math.max(1.5, ball(mass / 1000));
  const mugs = volume / mug.holds;
  const measure =
    volume < bucket.holds / 2 ? `${figures(mugs)} mugs` : `${figures(volume / bucket.holds)} buckets`;
  return (
    <>
      <svg
        viewBox="0 0 400 240"
        role="img"
        aria-label={`${mass} g of water makes ${figures(volume)} L of steam at ${temperature} °C`}
      >
        <rect class="heat" x="40" y={ground} width="152" height="14" style={{ fill: heat(temperature) }} />
        <path class="ink" d={`M40 ${ground}h152v14H40zM0 ${ground}h40M192 ${ground}h208`} />
        <circle class="solid" cx="16" cy={ground - drop / 2} r={drop / 2} />
        <circle class="ink gas" cx="116" cy={ground - d / 2} r={d / 2} />
        <path class="ink" d={mugLine} />
        <path class="ink" d={bucketLine} />
        <g class="label">
          <text x="0" y={ground + 16}>
            drop
          </text>
          <text x="116" y={ground + 30} text-anchor="middle">
            metal, {temperature} °C
          </text>
          <text x="116" y={Math.max(14, ground - d - 6)} text-anchor="middle">
            steam, {figures(volume)} L
          </text>
          <text x={mug.middle + 4} y={ground + 16} text-anchor="middle">
            0.3 L
          </text>
          <text x={bucket.middle} y={ground + 16} text-anchor="middle">
            10 L
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
