import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Formula } from '../../../calculators/core/formula.ts';
import type { Values } from '../../../calculators/core/model.ts';
import { printNumber } from '../../../calculators/core/print.ts';
import { numberAt } from '../../../calculators/models/given.ts';
import { celsius, millimetres, percent, placesOf, ranksOf, ruleOf, seconds } from './answer.ts';
import { whyApart } from '../beside-rule.ts';
import { heatStep, type Colours } from './colours.ts';
import { Curves } from './curves.tsx';
import { Map, type Named, type Place } from './map.tsx';
import { cellAt, centreOf, contour, fieldOf, fill, stroke, viewOf, type View } from './picture.ts';
import type { Solved } from './solver.ts';

/** Bands of the order of freezing. */
const bands = 8;

const calm = (): boolean => matchMedia('(prefers-reduced-motion: reduce)').matches;

/** `, 40 % solid` of metal within its freezing range; nothing outside it. */
function solidAt(kelvin: number, solidus: number, liquidus: number): string {
  const part = (liquidus - kelvin) / (liquidus - solidus);
  return part > 0 && part < 1 ? `, ${percent(part)} solid` : '';
}

/** The three questions, each with its sentence, its picture and what may be doubted. */
export function Answers({
  solved,
  values,
  quick,
  stale,
}: {
  readonly solved: Solved;
  readonly values: Values;
  /** The quick rule that stands beside the solver. */
  readonly quick: Formula;
  readonly stale: boolean;
}) {
  const { mesh, frozen } = solved;
  const { result, frames } = frozen;
  const end = result.last?.time ?? result.time;
  const [time, setTime] = useState(0.4 * end);
  const [playing, setPlaying] = useState(false);
  const [probe, setProbe] = useState<Place>();
  const [cut, setCut] = useState(0);
  // Fetched when somebody opens the fold.
  const [Table, setTable] = useState<typeof import('./times-table.tsx').TimesTable>();
  const third = mesh.size[2] > 1;
  const at = Math.min(cut, mesh.size[1] - 1);
  const view = useMemo(() => viewOf(mesh, at, 0.3), [mesh, at]);
  const near = useMemo(() => viewOf(mesh, at, 0.06), [mesh, at]);
  const places = useMemo(() => placesOf(solved), [solved]);
  const ranks = useMemo(() => ranksOf(result.feeding), [solved]);
  const lastCell = result.last?.cell ?? -1;
  const last = lastCell < 0 ? undefined : centreOf(view, lastCell);
  useEffect(() => setTime((now) => Math.min(now, end)), [solved]);

  /** The two pictures beside a time, and how far between them it lies. */
  const between = useMemo(() => {
    let n = 0;
    while (n + 2 < frames.length && frames[n + 1]!.time <= time) n += 1;
    const [a, b] = [frames[n]!, frames[n + 1] ?? frames[n]!];
    const part = b.time > a.time ? Math.min(1, Math.max(0, (time - a.time) / (b.time - a.time))) : 0;
    return (cell: number): number => a.temperature[cell]! * (1 - part) + b.temperature[cell]! * part;
  }, [frames, time]);

  useTicks(playing, (passed) => {
    const next = time + (passed / (calm() ? 9 : 6)) * end;
    setTime(Math.min(end, next));
    if (next >= end) setPlaying(false);
  });

  const [solidus, liquidus] = [numberAt(values, 'metal.solidus'), numberAt(values, 'metal.liquidus')];
  const solidAfter = (cell: number): number =>
    places[cell]! < 0 ? Number.NaN : result.solidus[places[cell]!]!;

  const first = result.solidus.reduce((early, one) => Math.min(early, one), Infinity);

  const drawHeat = (context: CanvasRenderingContext2D, colours: Colours, scale: number): readonly Named[] => {
    fill(context, view, (cell) => colours.heat[heatStep(between(cell))]!);
    const metalOnly = (cell: number): number => (places[cell]! < 0 ? Number.NaN : between(cell));
    return isotherms(context, view, scale, between, metalOnly, solidus, liquidus);
  };
  const drawOrder = (
    context: CanvasRenderingContext2D,
    colours: Colours,
    scale: number,
  ): readonly Named[] => {
    fill(context, near, (cell) => {
      const after = solidAfter(cell);
      if (mesh.region[cell] !== 0) return colours.tint(0);
      return colours.tint(
        0.08 +
          (0.6 * Math.min(bands - 1, Math.floor((bands * (after - first)) / (end - first || 1)))) /
            (bands - 1),
      );
    });
    const field = fieldOf(near, solidAfter);
    return [0.25, 0.5, 0.75].flatMap((part) => {
      const level = first + part * (end - first);
      const line = contour(field, level);
      stroke(context, near, line, colours.ink, scale);
      return named(line, seconds(level), 0.4 + 4 * part);
    });
  };
  const drawFeeding = (context: CanvasRenderingContext2D, colours: Colours): readonly Named[] => {
    fill(context, near, (cell) => {
      const rank = places[cell]! < 0 ? 1 : ranks[places[cell]!]!;
      if (mesh.region[cell] !== 0) return colours.tint(0);
      return colours.tint(Number.isNaN(rank) ? 0.08 : rank < 0.1 ? 0.72 : rank < 0.3 ? 0.36 : 0.08);
    });
    return [];
  };

  const rule = useMemo(() => ruleOf(values, mesh.modulus, quick), [solved]);
  const shared = { view, probe, onProbe: setProbe, stale };
  const probed = probe ?? last;
  const cell = probed ? cellAt(view, ...probed) : 0;
  const least = ranks.indexOf(0);
  const leastAt = least < 0 ? undefined : centreOf(view, result.metal[least]!);
  const told = ([x, y]: Place): string =>
    `${millimetres(x)} mm ${mesh.mirror[0] ? 'from the middle' : 'across'}, ${millimetres(y)} mm up`;
  const times = frames.map((frame) => frame.time);
  const curveOf = (name: string, of: number) => ({
    name,
    temperature: frames.map(({ temperature }) => temperature[of]!),
  });
  const stateAt = (n: number, of: number): string => {
    const kelvin = frames[n]!.temperature[of]!;
    return celsius(kelvin) + (places[of]! >= 0 ? solidAt(kelvin, solidus, liquidus) : '');
  };

  return (
    <div class="found" data-stale={stale}>
      <section aria-labelledby="when">
        <h2 id="when">When did it freeze?</h2>
        <p class="sentence">
          {result.last ? (
            <>
              All of it is solid after <strong>{seconds(end)}</strong>, the first of it after {seconds(first)}
              .
            </>
          ) : (
            <>It was not all solid after {seconds(result.time)}.</>
          )}
        </p>
        <p>
          {mesh.across} cells span the thinnest section, {millimetres(mesh.thickness)} mm: the mesh puts times
          off by up to {percent(mesh.error)}.
          {mesh.across < 4 && ' Ask for four or more before you trust them.'}
          {frozen.moved !== undefined &&
            frozen.done &&
            ` From the coarse answer it moved ${percent(frozen.moved)}.`}{' '}
          Interface and latent heat are less certain than that.
        </p>
        <Map
          {...shared}
          id="map-when"
          label={`Temperature after ${seconds(time)}.`}
          of={between}
          draw={drawHeat}
          last={undefined}
        />
        <Scale solidus={solidus} liquidus={liquidus} />
        <div class="play on-screen">
          <button
            type="button"
            onClick={() => {
              if (time >= end) setTime(0);
              setPlaying(!playing);
            }}
          >
            {playing ? 'Pause' : 'Play'}
          </button>
          <label>
            Time{' '}
            <input
              id="freeze-time"
              type="range"
              min="0"
              max="1000"
              value={Math.round((1000 * time) / end)}
              aria-valuetext={seconds(time)}
              onInput={(event) => {
                setPlaying(false);
                setTime((end * Number(event.currentTarget.value)) / 1000);
              }}
            />
          </label>
          <output for="freeze-time">{seconds(time)}</output>
        </div>
        {third && (
          <div class="play on-screen">
            <label>
              Cut at{' '}
              <input
                id="freeze-cut"
                type="range"
                min="0"
                max={mesh.size[1] - 1}
                value={cut}
                onInput={(event) => setCut(Number(event.currentTarget.value))}
              />
            </label>
            <output for="freeze-cut">{millimetres(mesh.edges[1][at]!)} mm deep</output>
          </div>
        )}
        <p class="probe" role="status">
          {probed && (
            <>
              {probe ? 'Probe' : 'Last place'}, {told(probed)}:{' '}
              {['metal', 'mould', 'chill'][mesh.region[cell]!]}, <strong>{celsius(between(cell))}</strong>{' '}
              after {seconds(time)}
              {places[cell]! >= 0 && solidAt(between(cell), solidus, liquidus)}.
              {places[cell]! >= 0 &&
                ` Begins to freeze after ${seconds(result.liquidus[places[cell]!]!)}, solid after ${seconds(solidAfter(cell))}.`}
            </>
          )}
        </p>
        <Curves
          times={times}
          now={time}
          marks={
            liquidus - solidus > 1
              ? [
                  { name: 'liquidus', temperature: liquidus },
                  { name: 'solidus', temperature: solidus },
                ]
              : [{ name: 'freezes', temperature: liquidus }]
          }
          curves={[
            ...(lastCell >= 0 ? [curveOf('last place', lastCell)] : []),
            ...(probe ? [curveOf('probe', cell)] : []),
          ]}
        />
        <details
          onToggle={() =>
            void import('./times-table.tsx').then(({ TimesTable }) => setTable(() => TimesTable))
          }
        >
          <summary>These temperatures as a table</summary>
          {Table && (
            <Table
              times={times}
              columns={[
                ...(lastCell >= 0 ? [{ name: 'Last place', at: (n: number) => stateAt(n, lastCell) }] : []),
                ...(probe ? [{ name: 'Probe', at: (n: number) => stateAt(n, cell) }] : []),
              ]}
            />
          )}
        </details>
        {rule !== undefined && (
          <p class="rule-says">
            The quick rule says {seconds(rule)} for a modulus of {millimetres(mesh.modulus)} mm; the solver{' '}
            {seconds(end)}. {whyApart('whole', rule, end, { range: liquidus - solidus, error: mesh.error })}
          </p>
        )}
      </section>

      <section aria-labelledby="where-last">
        <h2 id="where-last">Where last?</h2>
        <p class="sentence">
          {last
            ? `Last, at the ✕: ${told(last)}. What shrinks there draws on nothing that is still liquid.`
            : 'Not known: it was not all solid.'}
        </p>
        <Map
          {...shared}
          view={near}
          id="map-last"
          label={`Order of freezing: what stands out most is last${last ? `; last at ${told(last)}` : ''}.`}
          of={solved}
          draw={drawOrder}
          last={last}
        />
        <p class="read">
          The more it stands out from the page, the later it froze. Lines: solid after the time on them.
        </p>
      </section>

      <section aria-labelledby="where-thin">
        <h2 id="where-thin">Where is feeding poor?</h2>
        <p class="sentence">
          {leastAt
            ? `Poorest at ${told(leastAt)}: for how fast it cools, the temperature slopes least there, so liquid metal hardly finds its way in.`
            : 'It freezes at one temperature, so this criterion says nothing.'}
        </p>
        <Map
          {...shared}
          view={near}
          id="map-thin"
          label="Feeding: the tenth that stands out most is fed worst."
          of={solved}
          draw={drawFeeding}
          last={last}
        />
        <p class="read">
          Standing out most: the tenth of the metal with the least gradient over the root of its cooling rate.
          Grey: the next two tenths. It ranks the places of this part; whether there is a pore, and how large,
          it does not say. The criterion was born in steel: a weak hint for bronze and silver.
        </p>
      </section>

      <section aria-labelledby="numbers">
        <h2 id="numbers">The numbers</h2>
        <table>
          <tbody>
            {[
              ['All solid after', result.last ? seconds(end) : 'not yet'],
              ['Last place', last ? told(last) : 'not known'],
              ['Modulus, volume over cooled surface', `${millimetres(mesh.modulus)} mm`],
              ['Hottest the mould has been', celsius(result.hottest[1] ?? Number.NaN)],
              ['Cells', result.cells.toLocaleString('en-GB')],
              ['Cells across the thinnest section', String(mesh.across)],
              ['Error of the mesh, at most', percent(mesh.error)],
              ['Steps, and stages in them', `${result.steps}, ${result.stages}`],
              [
                'Heat made or lost by arithmetic',
                result.drift === 0 ? 'nothing' : printNumber(result.drift, { figures: 1 }),
              ],
              [
                'Solved by',
                {
                  simd: 'compiled code, four at a time',
                  plain: 'plain script',
                  exact: 'plain script, double precision',
                }[mesh.by] ?? mesh.by,
              ],
              ['Solved in', `${Math.round(frozen.took)} ms`],
            ].map(([name, value]) => (
              <tr>
                <th scope="row">{name}</th>
                <td>{value}</td>
              </tr>
            ))}
          </tbody>
        </table>
        <p class="read">
          The cavity is full at once and nothing flows. The mould is dry. No gap opens as the metal shrinks.
          Solid in the sum is not safe to touch.
        </p>
      </section>
    </div>
  );
}

/** Calls with the seconds passed since the call before, while it runs. */
function useTicks(running: boolean, tick: (seconds: number) => void): void {
  const newest = useRef(tick);
  newest.current = tick;
  useEffect(() => {
    if (!running) return undefined;
    // With reduced motion it moves in steps.
    const apart = calm() ? 0.75 : 0;
    let before = performance.now();
    let frame = requestAnimationFrame(function next(now) {
      const passed = (now - before) / 1000;
      if (passed >= apart) {
        before = now;
        newest.current(Math.max(0, passed));
      }
      frame = requestAnimationFrame(next);
    });
    return () => cancelAnimationFrame(frame);
  }, [running]);
}

function isotherms(
  context: CanvasRenderingContext2D,
  view: View,
  scale: number,
  everywhere: (cell: number) => number,
  metalOnly: (cell: number) => number,
  solidus: number,
  liquidus: number,
): readonly Named[] {
  const names: Named[] = [];
  const [whole, metal] = [fieldOf(view, everywhere), fieldOf(view, metalOnly)];
  for (const warm of [100, 200, 400, 600, 800, 1000]) {
    const line = contour(whole, warm + 273.15);
    stroke(context, view, line, warm < 500 ? '#fff6dc' : '#1d1b19', 0.75 * scale);
    if (warm <= 600) names.push(...named(line, `${warm} °C`, -0.7 + warm / 180));
  }
  for (const [name, level] of [
    ['solidus', solidus],
    ['liquidus', liquidus],
  ] as const) {
    const line = contour(metal, level);
    stroke(context, view, line, '#1d1b19', 2 * scale);
    if (name === 'solidus' || liquidus - solidus > 1)
      names.push(...named(line, name, name === 'solidus' ? 4.2 : 5.4));
  }
  return names;
}

/** A name for a line, where it lies farthest out that way, in radians from the right; none for one that is very short. */
function named(
  line: readonly (readonly [number, number, number, number])[],
  name: string,
  way: number,
): readonly Named[] {
  const [first, ...rest] = line;
  if (!first || line.length < 4) return [];
  const far = ([x, y]: readonly number[]): number => x! * Math.cos(way) + y! * Math.sin(way);
  const out = rest.reduce((best, piece) => (far(piece) > far(best) ? piece : best), first);
  return [{ name, at: [out[0], out[1]] }];
}

/** The heat scale, with what freezes where on it. */
function Scale({ solidus, liquidus }: { readonly solidus: number; readonly liquidus: number }) {
  const x = (kelvin: number): number => 10 + (380 * Math.min(1180, Math.max(0, kelvin - 293.15))) / 1180;
  return (
    <svg class="scale" viewBox="0 0 400 40" role="img" aria-label="Heat scale, 20 to 1200 °C">
      <defs>
        <linearGradient id="freeze-heat">
          {[0, 1, 2, 3, 4].map((n) => (
            <stop offset={n / 4} stop-color={`var(--heat-${n})`} />
          ))}
        </linearGradient>
      </defs>
      <rect class="ink" x="10" y="2" width="380" height="14" fill="url(#freeze-heat)" />
      {[solidus, liquidus].map((kelvin) => (
        <path class="ink" d={`M${x(kelvin)} 0V18`} />
      ))}
      {[20, 300, 600, 900, 1200].map((warm, n) => (
        <text x={x(warm + 273.15)} y="32" text-anchor={n === 0 ? 'start' : n === 4 ? 'end' : 'middle'}>
          {warm} °C
        </text>
      ))}
    </svg>
  );
}
