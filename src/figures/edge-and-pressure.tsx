import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { Dial } from './dial.tsx';
import { figures } from './drawing.ts';

export interface EdgeProps {
  readonly heads: readonly number[];
  readonly suctions: readonly number[];
  /** Millimetres, by head and suction. */
  readonly edge: readonly (readonly number[])[];
  readonly corner: readonly (readonly number[])[];
}

/** Pixels to a millimetre in the drawing of the corner. */
const scale = 120;
const wall = 24;
const floor = 196;
const box = { left: 262, right: 388, top: 24, foot: 186 } as const;
const most = 0.9;

export function EdgeAndPressure({ heads, suctions, edge, corner }: EdgeProps): JSX.Element {
  const [h, setHead] = useState(heads.indexOf(40));
  const [p, setSuction] = useState(0);
  const r = edge[h]![p]!;
  const bend = r * scale;
  const last = suctions.at(-1)!;
  const x = (suction: number): number => box.left + ((box.right - box.left) * suction) / last;
  const y = (radius: number): number => box.foot - ((box.foot - box.top) * radius) / most;
  const curve = suctions
    .map((suction, i) => `${i === 0 ? 'M' : 'L'}${x(suction)} ${y(edge[h]![i]!)}`)
    .join('');
  return (
    <>
      <svg
        viewBox="0 0 400 240"
        role="img"
        aria-label={`A head of ${heads[h]} mm and ${suctions[p]} kPa leave a radius of ${figures(r)} mm on the edge`}
      >
        <defs>
          <pattern
            id="edge-sand"
            width="7"
            height="7"
            patternUnits="userSpaceOnUse"
            patternTransform="rotate(45)"
          >
            <path d="M0 0V7" stroke="var(--edge)" stroke-width="1" />
          </pattern>
        </defs>
        <path d={`M2 20H${wall}V${floor}H216v22H2z`} style={{ fill: 'url(#edge-sand)' }} />
        <path class="ink" d={`M${wall} 20V${floor}H216`} />
        <path
          class="solid"
          d={`M${wall} 20V${floor - bend}A${bend} ${bend} 0 0 0 ${wall + bend} ${floor}H216V20z`}
        />
        <g class="label">
          <text x="120" y="60" text-anchor="middle" class="on-metal">
            metal
          </text>
          <text x="120" y="212" text-anchor="middle" class="over">
            sand
          </text>
          <text x="120" y="90" text-anchor="middle" class="on-metal">
            r = {figures(r)} mm
          </text>
          <path class="ink" d={`M${216 - scale / 2} 226v6h${scale / 2}v-6`} />
          <text x={212 - scale / 2} y="235" text-anchor="end">
            0.5 mm
          </text>
          <path class="ink" d={`M${box.left} ${box.top}V${box.foot}H${box.right}`} />
          {[0, 0.4, 0.8].map((radius) => (
            <text key={radius} x={box.left - 5} y={y(radius) + 4.5} text-anchor="end">
              {radius}
            </text>
          ))}
          {[0, 25, 50].map((suction) => (
            <text key={suction} x={x(suction)} y={box.foot + 16} text-anchor="middle">
              {suction}
            </text>
          ))}
          <text x={(box.left + box.right) / 2} y={box.foot + 34} text-anchor="middle">
            suction, kPa
          </text>
          <text x={box.left - 10} y="14">
            radius, mm
          </text>
        </g>
        <path class="ink" d={curve} />
        <circle class="solid" cx={x(suctions[p]!)} cy={y(r)} r="5" />
      </svg>
      <div class="dials">
        <Dial id="edge-head" label="Head of metal" unit="mm" values={heads} at={h} change={setHead} />
        <Dial
          id="edge-suction"
          label="Suction at the cavity"
          unit="kPa"
          values={suctions}
          at={p}
          change={setSuction}
        />
      </div>
      <p class="figure-says" role="status">
        The edge comes out with a radius of {figures(r)} mm; a corner where three faces meet with{' '}
        {figures(corner[h]![p]!)} mm.
      </p>
    </>
  );
}
