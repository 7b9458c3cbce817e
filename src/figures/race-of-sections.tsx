import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { Dial } from './dial.tsx';
import { figures } from './drawing.ts';

export interface RaceProps {
  readonly heads: readonly number[];
  readonly suctions: readonly number[];
  readonly temperatures: readonly number[];
  readonly sections: readonly {
    readonly name: string;
    readonly speed: readonly (readonly number[])[];
    readonly fills: readonly (readonly number[])[];
    readonly flows: readonly number[];
  }[];
  /** Above this speed, m/s, the surface of the metal folds in. */
  readonly quiet: number;
}

const left = 66;
const right = 396;
const longest = 1.5;

const across = (seconds: number): number => left + ((right - left) * Math.min(seconds, longest)) / longest;

/** Holds with half as much time again in hand. */
function verdictOf(fill: number, flow: number): 'does not enter' | 'fails' | 'close' | 'holds' {
  if (fill === 0) return 'does not enter';
  return flow >= 1.5 * fill ? 'holds' : flow >= fill ? 'close' : 'fails';
}

const shapes = { 'does not enter': '✗', fails: '✗', close: '△', holds: '✓' } as const;

export function RaceOfSections({ heads, suctions, temperatures, sections, quiet }: RaceProps): JSX.Element {
  const [h, setHead] = useState(heads.indexOf(40));
  const [p, setSuction] = useState(0);
  const [t, setTemperature] = useState(temperatures.indexOf(150));
  const now = sections.map(({ name, speed, fills, flows }) => {
    const fill = fills[h]![p]!;
    const flow = flows[t]!;
    return { name, fill, flow, speed: speed[h]![p]!, verdict: verdictOf(fill, flow) };
  });
  const web = now[0]!;
  const fast = Math.max(...now.map(({ speed }) => speed));
  return (
    <>
      <svg
        viewBox="0 0 400 240"
        role="img"
        aria-label={now.map(({ name, verdict }) => `${name}: ${verdict}`).join(', ')}
      >
        <defs>
          <pattern
            id="race-fluid"
            width="6"
            height="6"
            patternUnits="userSpaceOnUse"
            patternTransform="rotate(45)"
          >
            <path d="M0 0V6" stroke="var(--ink)" stroke-width="1" />
          </pattern>
        </defs>
        {[0, 0.5, 1].map((seconds) => (
          <g key={seconds} class="label">
            <path class="rule" d={`M${across(seconds)} 8V214`} />
            <text x={across(seconds)} y="230" text-anchor="middle">
              {seconds} s
            </text>
          </g>
        ))}
        {now.map(({ name, fill, flow, verdict }, i) => {
          const y = 10 + i * 70;
          return (
            <g key={name} class="label">
              <text x="0" y={y + 20}>
                {name}
              </text>
              <text x="0" y={y + 38}>
                <tspan class="strong">
                  {shapes[verdict]} {verdict === 'does not enter' ? 'out' : verdict}
                </tspan>
              </text>
              <rect class="solid" x={left} y={y} width={fill === 0 ? 1.5 : across(fill) - left} height="16" />
              <text x={Math.min(across(fill) + 5, 300)} y={y + 13} class="over">
                {fill === 0 ? 'does not enter' : `${figures(fill)} s to fill`}
                {fill > longest && ' →'}
              </text>
              <rect
                class="ink"
                x={left}
                y={y + 22}
                width={across(flow) - left}
                height="16"
                style={{ fill: 'url(#race-fluid)' }}
              />
              <text x={Math.min(across(flow) + 5, 326)} y={y + 35} class="over">
                {figures(flow)} s fluid
              </text>
            </g>
          );
        })}
      </svg>
      <div class="dials">
        <Dial id="race-head" label="Head of metal" unit="mm" values={heads} at={h} change={setHead} />
        <Dial
          id="race-suction"
          label="Suction at the cavity"
          unit="kPa"
          values={suctions}
          at={p}
          change={setSuction}
        />
        <Dial
          id="race-temperature"
          label="Mould temperature"
          unit="°C"
          values={temperatures}
          at={t}
          change={setTemperature}
        />
      </div>
      <p class="figure-says" role="status">
        {web.fill === 0
          ? 'The web does not fill at all: surface tension holds the metal out, however warm the mould is.'
          : `The web needs ${figures(web.fill)} s and stays fluid ${figures(web.flow)} s: ${web.verdict}.`}
        {fast > quiet &&
          ` Where it runs fastest it goes ${figures(fast)} m/s; above ${figures(quiet)} m/s the surface folds in.`}
      </p>
    </>
  );
}
