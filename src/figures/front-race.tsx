import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { Dial } from './dial.tsx';
import { heat } from './drawing.ts';
import type { FrontRaceProps } from './front-race-numbers.ts';

/** Where each section is drawn, in the order of the sections: middle of its lane, half its width, its label. */
const lanes = [
  { y: 122, half: 9, label: 104, name: 'foot of the frame' },
  { y: 48, half: 4, label: 34, name: 'webs' },
  { y: 122, half: 9, label: 150, name: 'sides' },
  { y: 200, half: 13, label: 232, name: 'lugs' },
  { y: 122, half: 9, label: 104, name: 'top' },
] as const;
/** Why a front stopped, after where. */
const reasons: Readonly<Record<FrontRaceProps['sections'][number]['ended'][number], string>> = {
  filled: 'full',
  froze: 'frozen',
  waited: 'too stiff at its mouth',
  gas: 'held by gas',
  held: 'where the pressure holds it',
  never: 'where no metal came',
};
const across = (mm: number): number => 6 + mm * 4.4;

export function FrontRace({ suctions, times, sections }: FrontRaceProps): JSX.Element {
  const [p, setSuction] = useState(0);
  const [t, setTime] = useState(times.length - 1);
  const now = sections.map((section, i) => ({
    ...section,
    lane: lanes[i]!,
    mm: section.reached[p]![t]!,
    head: section.celsius[p]![t]!,
  }));
  const short = now.filter(({ ended }) => ended[p] !== 'filled');
  const standing = now.filter(({ mm, length, before }) => mm < length - 0.05 && arrived(before));

  /** Whether metal has come to the near end of a section. */
  function arrived(before: number): boolean {
    const feeding = now.find((one) => one.before + one.length === before);
    return before === 0 || (feeding !== undefined && feeding.mm >= feeding.length - 0.05);
  }

  return (
    <>
      <svg
        viewBox="0 0 400 240"
        role="img"
        aria-label={now.map(({ lane, mm, length }) => `${lane.name}: ${mm} of ${length} mm`).join(', ')}
      >
        {[45, 60].map((mm, i) => (
          <path key={mm} class="rule" d={`M${across(mm)} ${lanes[i === 0 ? 1 : 3].y}V122`} />
        ))}
        {now.map(({ name, before, length, lane, mm, head }) => {
          const { y, half } = lane;
          return (
            <g key={name}>
              <rect
                x={across(before)}
                y={y - half}
                width={across(before + mm) - across(before)}
                height={2 * half}
                style={{ fill: heat(head) }}
              />
              <rect
                class="ink"
                x={across(before)}
                y={y - half}
                width={across(before + length) - across(before)}
                height={2 * half}
              />
              <path class="ink" d={`M${across(before + mm)} ${y - half - 3}v${2 * half + 6}`} />
              <text class="label over" x={across(before) + 2} y={lane.label}>
                {lane.name}
                {mm > 0 && ` ${head} °C`}
              </text>
            </g>
          );
        })}
      </svg>
      <div class="dials">
        <Dial
          id="front-suction"
          label="Suction at the cavity"
          unit="kPa"
          values={suctions}
          at={p}
          change={setSuction}
        />
        <Dial id="front-time" label="After the first metal" unit="s" values={times} at={t} change={setTime} />
      </div>
      <p class="figure-says" role="status">
        {t < times.length - 1
          ? `After ${times[t]} s: ${standing.length > 0 ? standing.map(({ lane, mm, length }) => `${lane.name} ${mm} of ${length} mm`).join(', ') : 'all full'}.`
          : short.length === 0
            ? 'Every section fills.'
            : `It stops short: ${short.map(({ lane, mm, length, ended }) => `${lane.name} at ${mm} of ${length} mm, ${reasons[ended[p]!]}`).join('; ')}.`}
      </p>
    </>
  );
}
