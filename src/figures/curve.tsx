import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { CurveFormula } from './curve-exact.ts';
import type { Axis, CurveProps, Line } from './curve-numbers.ts';
import { Dial } from './dial.tsx';
import { figures, spaced, withinDecades } from './drawing.ts';

const frame = { left: 54, top: 26, foot: 192, width: 400 } as const;
/** Room right of the lines for the words at their ends: a letter of these sizes is about this wide. */
const letterWidth = 7.4;
const rightOf = (lines: readonly Line[]): number => {
  const longest = Math.max(...lines.map(({ label }) => label.length));
  return Math.min(318, frame.width - 8 - letterWidth * longest);
};

/** Lines are told apart by their dashes and by the word at their end, never by colour. */
const dashes = ['', '7 4', '2 4', '10 3 2 3'] as const;

const place = (value: number, { low, high, log }: Axis): number =>
  log ? Math.log(value / low) / Math.log(high / low) : (value - low) / (high - low);

const amount = (value: number | string, { unit }: Axis): string =>
  `${plain(value)}${unit && `\u00a0${unit}`}`;

const plain = (value: number | string): string => String(value).replace('-', '−');

const titled = ({ name, unit }: Axis): string => (unit === '' ? name : `${name}, ${unit}`);

/** Lines between the written places of a logarithmic axis, to read off between them on paper. */
const finePlaces = ({ low, high, log, ticks }: Axis): number[] =>
  log ? withinDecades(low, high, [1, 2, 3, 4, 5, 6, 7, 8, 9]).filter((place) => !ticks.includes(place)) : [];

/** One number of a formula against another, a line for each of a few settings, read at a place the hand chooses. */
export function Curve({ exact, ...props }: CurveProps & { readonly exact?: CurveFormula }): JSX.Element {
  const { id, x, y } = props;
  const [{ steps, lines, at }, setDrawn] = useState({ steps: props.steps, lines: props.lines, at: props.at });
  const setAt = (next: number): void => setDrawn((drawn) => ({ ...drawn, at: next }));
  /** A number typed between two steps becomes one more of them, worked when it is asked for. */
  const exactly = async (wanted: number): Promise<boolean> => {
    try {
      const { withPlace } = await import('./curve-exact.ts');
      setDrawn(withPlace(props, exact!, wanted));
      return true;
    } catch {
      return false;
    }
  };
  const box = { ...frame, right: rightOf(lines) };
  const across = (value: number): number => box.left + (box.right - box.left) * place(value, x);
  const up = (value: number): number => box.foot - (box.foot - box.top) * place(value, y);
  const pathOf = ({ values }: Line): string => {
    let pen = 'M';
    return values
      .map((value, i) => {
        if (value === null || (y.log && value <= 0)) {
          pen = 'M';
          return '';
        }
        const part = `${pen}${across(steps[i]!).toFixed(1)} ${up(value).toFixed(1)}`;
        pen = 'L';
        return part;
      })
      .join('');
  };
  const ends = lines.map(({ values }) => up(values.findLast((value) => value !== null) ?? y.low));
  const labels = spaced(ends, 15, box.foot);
  const read = lines.map(({ label, values }) => {
    const value = values[at] ?? null;
    return `${label && `${label} gives `}${value === null ? 'no answer' : amount(value === 0 ? 0 : figures(value, 3), y)}`;
  });
  /** A finger or a pointer on the drawing moves the reading to the nearest place. */
  const point = (event: PointerEvent & { readonly currentTarget: SVGSVGElement }): void => {
    if (event.pointerType === 'mouse' && event.buttons !== 1) return;
    const { left, width } = event.currentTarget.getBoundingClientRect();
    const wanted = ((event.clientX - left) / width) * frame.width;
    const away = steps.map((step) => Math.abs(across(step) - wanted));
    setAt(away.indexOf(Math.min(...away)));
  };
  const says = `At ${amount(steps[at]!, x)}, ${y.name}: ${read.join('; ')}.`;
  return (
    <>
      <svg
        viewBox="0 0 400 240"
        role="img"
        aria-label={`${y.name} against ${x.name}. ${says}`}
        onPointerDown={point}
        onPointerMove={point}
      >
        <g class="label">
          <path
            class="rule fine"
            d={[
              ...[...x.ticks, ...finePlaces(x)].map((place) => `M${across(place)} ${box.top}V${box.foot}`),
              ...finePlaces(y).map((place) => `M${box.left} ${up(place)}H${box.right}`),
            ].join('')}
          />
          {y.ticks.map((tick) => (
            <g key={tick}>
              <path class="rule" d={`M${box.left} ${up(tick)}H${box.right}`} />
              <text x={box.left - 6} y={up(tick) + 4.5} text-anchor="end">
                {plain(tick)}
              </text>
            </g>
          ))}
          {x.ticks.map((tick) => (
            <g key={tick}>
              <path class="rule" d={`M${across(tick)} ${box.foot}v5`} />
              <text x={across(tick)} y={box.foot + 19} text-anchor="middle">
                {plain(tick)}
              </text>
            </g>
          ))}
          <text x="4" y="14">
            {titled(y)}
          </text>
          <text x={(box.left + box.right) / 2} y="234" text-anchor="middle">
            {titled(x)}
          </text>
        </g>
        <path class="ink" d={`M${box.left} ${box.top}V${box.foot}H${box.right}`} />
        {lines.map((line, i) => (
          <g key={line.label} class="label">
            <path class="ink" stroke-dasharray={dashes[i % dashes.length]} d={pathOf(line)} />
            {line.label !== '' && (
              <text x={box.right + 6} y={labels[i]! + 4.5}>
                {line.label}
              </text>
            )}
          </g>
        ))}
        <path class="mark" d={`M${across(steps[at]!)} ${box.top}V${box.foot}`} />
        {lines.map(({ label, values }) => {
          const value = values[at] ?? null;
          return value === null || (y.log && value <= 0) ? null : (
            <circle key={label} class="solid" cx={across(steps[at]!)} cy={up(value)} r="5" />
          );
        })}
      </svg>
      <div class="dials">
        <Dial
          id={`${id}-dial`}
          label={x.name}
          unit={x.unit}
          values={steps}
          at={at}
          change={setAt}
          {...(exact && { exactly })}
        />
      </div>
      <p class="figure-says" role="status">
        {says}
      </p>
    </>
  );
}
