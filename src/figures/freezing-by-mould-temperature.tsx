import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { Dial } from './dial.tsx';
import { figures } from './drawing.ts';

export interface FreezingProps {
  readonly temperatures: readonly number[];
  readonly moulds: readonly {
    readonly name: string;
    readonly h: number;
    readonly limit: number;
    readonly sections: readonly {
      readonly name: string;
      readonly perfect: readonly number[];
      readonly both: readonly number[];
    }[];
  }[];
}

const ticks = [0.1, 1, 10, 100, 1000];
const left = 52;

/** A place on the axis of time, 0.1 to 1000 s, each step of ten as wide as the last. */
const across = (seconds: number): number => left + 84 * Math.log10(seconds / 0.1);

export function FreezingByMouldTemperature({ temperatures, moulds }: FreezingProps): JSX.Element {
  const [which, setWhich] = useState(0);
  const [t, setTemperature] = useState(temperatures.indexOf(150));
  const mould = moulds[which]!;
  const celsius = temperatures[t]!;
  const web = mould.sections[0]!;
  const gain = (times: readonly number[]): string => figures(times[t]! / times[0]!, 3);
  return (
    <>
      <svg
        viewBox="0 0 400 240"
        role="img"
        aria-label={`In ${mould.name} at ${celsius} °C the web freezes in ${figures(web.perfect[t]!)} s with perfect contact, ${figures(web.both[t]!)} s with the face counted`}
      >
        {ticks.map((seconds) => (
          <g key={seconds} class="label">
            <path class="rule" d={`M${across(seconds)} 8V206`} />
            <text x={across(seconds)} y="222" text-anchor={seconds === 1000 ? 'end' : 'middle'}>
              {seconds} s
            </text>
          </g>
        ))}
        {mould.sections.map(({ name, perfect, both }, i) => {
          const y = 14 + i * 64;
          const now = [perfect[t]!, both[t]!] as const;
          return (
            <g key={name} class="label">
              <text x="0" y={y + 26}>
                {name}
              </text>
              {now.map((seconds, row) => (
                <g key={row}>
                  <rect
                    class={row === 0 ? 'ink open' : 'solid'}
                    x={left}
                    y={y + row * 22}
                    width={across(seconds) - left}
                    height="15"
                  />
                  <text x={Math.min(across(seconds) + 5, 296)} y={y + row * 22 + 12.5} class="over">
                    {figures(seconds)} s{i === 0 && (row === 0 ? ', perfect contact' : ', face counted')}
                  </text>
                </g>
              ))}
              <path class="mark" d={`M${across(perfect[0]!)} ${y - 3}v21M${across(both[0]!)} ${y + 19}v21`} />
            </g>
          );
        })}
      </svg>
      <fieldset class="choice needs-script">
        <legend>Mould</legend>
        {moulds.map(({ name }, i) => (
          <label key={name}>
            <input type="radio" name="freezing-mould" checked={i === which} onChange={() => setWhich(i)} />{' '}
            {name}
          </label>
        ))}
      </fieldset>
      <div class="dials">
        <Dial
          id="freezing-temperature"
          label="Mould temperature"
          unit="°C"
          values={temperatures}
          at={t}
          change={setTemperature}
        />
      </div>
      <p class="figure-says" role="status">
        {celsius === temperatures[0]
          ? `A cold mould of ${mould.name}: the short lines mark where each bar stands now.`
          : `From ${temperatures[0]} to ${celsius} °C in ${mould.name} the web has ${gain(web.perfect)} times as long with perfect contact, ${gain(web.both)} times with the face counted.`}
        {celsius > mould.limit &&
          ` The mould itself is past its ${mould.limit} °C: it fails before it helps.`}
      </p>
    </>
  );
}
