import { celsius, seconds } from './answer.ts';

export interface Curve {
  readonly name: string;
  /** K, at the times of the figure. */
  readonly temperature: readonly number[];
}

const [left, right, top, bottom] = [46, 392, 12, 176];

/** Temperature against time, a line a place, labelled at its end; the liquidus and solidus across. */
export function Curves(props: {
  readonly times: readonly number[];
  readonly curves: readonly Curve[];
  readonly marks: readonly { readonly name: string; readonly temperature: number }[];
  readonly now: number;
}) {
  const { times, curves, marks } = props;
  const end = times.at(-1) ?? 1;
  const all = curves.flatMap(({ temperature }) => temperature);
  const high = Math.max(...all, ...marks.map(({ temperature }) => temperature));
  const low = Math.min(...all, 293.15);
  const x = (time: number): number => left + ((right - left) * time) / end;
  const y = (kelvin: number): number => bottom - ((bottom - top) * (kelvin - low)) / (high - low);
  return (
    <svg
      class="curves"
      viewBox="0 0 400 200"
      role="img"
      aria-label={curves
        .map(
          ({ name, temperature }) =>
            `${name}: from ${celsius(temperature[0]!)} to ${celsius(temperature.at(-1)!)}`,
        )
        .join('; ')}
    >
      {marks.map(({ name, temperature }, n) => (
        <g key={name}>
          <path class="rule" d={`M${left} ${y(temperature)}H${right}`} />
          <text x={right} y={y(temperature) + (n === 0 ? -4 : 13)} text-anchor="end">
            {name} {celsius(temperature)}
          </text>
        </g>
      ))}
      <path class="ink" d={`M${left} ${top}V${bottom}H${right}`} />
      <path class="rule" d={`M${x(props.now)} ${top}V${bottom}`} />
      {curves.map(({ name, temperature }, n) => (
        <path
          key={name}
          class={n === 0 ? 'curve' : 'curve second'}
          d={temperature
            .map((kelvin, at) => `${at === 0 ? 'M' : 'L'}${x(times[at]!).toFixed(1)} ${y(kelvin).toFixed(1)}`)
            .join('')}
        />
      ))}
      {curves.map(({ name, temperature }, n) => {
        const at = Math.round((n === 0 ? 0.3 : 0.62) * (times.length - 1));
        return (
          <text class="over" x={x(times[at]!)} y={y(temperature[at]!) + (n === 0 ? -8 : 18)}>
            {name}
          </text>
        );
      })}
      {[high, low].map((kelvin) => (
        <text x={left - 4} y={y(kelvin) + 4} text-anchor="end">
          {Math.round(kelvin - 273.15)}
        </text>
      ))}
      <text x={left} y="194">
        0
      </text>
      <text x={right} y="194" text-anchor="end">
        {seconds(end)}
      </text>
    </svg>
  );
}
