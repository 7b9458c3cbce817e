import { useEffect, useRef, useState } from 'preact/hooks';
import { printWithSpread, unitLabel } from '../../../calculators/core/print.ts';
import { plural } from '../../../calculators/meshes/unit-guess.ts';
import { lengthUnits, type LengthUnit } from '../../../calculators/meshes/mesh-file.ts';
import type { Point } from '../../../calculators/meshes/triangles.ts';
import type { GateMetal } from '../../../calculators/meshes/gate-metal.ts';
import type {
  Celled,
  Gated,
  Measured,
  Opened,
  Reply,
  Request,
  Settled,
  Shown,
  Timed,
} from '../../workers/part-work.ts';
import type { FreezingMetal, FreezingMould } from './substances.ts';
import { SmallEntry } from '../small-entry.tsx';
import { loadShelf, saveShelf, withPlan } from '../plan/store.ts';
import { planOf, sectionNames } from './into-plan.ts';
import { habit, here, lengthFrom, metres, mm, said, startOf } from './said.ts';
import { Cuts, Views } from './views.tsx';
import '../../styles/part.css';

export interface MetalProps {
  readonly id: string;
  readonly name: string;
  /** SI: value and half-width. */
  readonly density: readonly [number, number];
  /** Contraction allowed for in the pattern, a share. */
  readonly contraction: number;
  /** What freezing needs; undefined where it is not known. */
  readonly freezing: FreezingMetal | undefined;
}

export interface PartProps {
  readonly metals: readonly MetalProps[];
  readonly moulds: readonly FreezingMould[];
  readonly fittings: readonly {
    readonly name: string;
    readonly file: string;
    readonly href: string;
    readonly metal: string;
  }[];
  readonly plan: string;
}

const questions: Readonly<Record<Shown, string>> = {
  thick: 'Where is it thin?',
  modulus: 'Where does it freeze last?',
  run: 'How far must the metal run?',
  froze: 'When is it solid?',
};

/** Metal beside the part. */
type Beside = 'none' | 'gate' | 'button';
const besides: Readonly<Record<Beside, string>> = {
  none: 'nothing: the part alone',
  gate: 'the gate',
  button: 'the gate and a button on it',
};

/** A part from its file to the rows of the plan; the sums run in a worker. */
export function PartFile(props: PartProps) {
  const worker = useRef<Worker>(undefined);
  const listen = useRef<(reply: Reply) => void>(() => undefined);
  const [awake, setAwake] = useState(false);
  const [busy, setBusy] = useState<string>();
  const [done, setDone] = useState(0);
  const [refused, setRefused] = useState<string>();
  const [opened, setOpened] = useState<Opened>();
  const [settled, setSettled] = useState<Settled>();
  const [gated, setGated] = useState<Gated>();
  const [unit, setUnit] = useState<LengthUnit>('millimetre');
  const [drawnAs, setDrawnAs] = useState<'casting' | 'pattern'>('casting');
  const [metal, setMetal] = useState(props.metals[0]!.id);
  const [fineness, setFineness] = useState<'quick' | 'usual' | 'fine'>('usual');
  const [gateWidth, setGateWidth] = useState(() => startOf(0.005));
  const [beside, setBeside] = useState<Beside>('none');
  const [sizes, setSizes] = useState(() => ({
    length: startOf(0.004),
    diameter: startOf(0.014),
    height: startOf(0.012),
  }));
  const [cells, setCells] = useState<Celled>();
  const [timed, setTimed] = useState<Timed>();
  const [solver, setSolver] = useState<typeof import('./freeze-part.tsx')>();
  const [gateAt, setGateAt] = useState<Point | 'heaviest'>('heaviest');
  const [shown, setShown] = useState<Shown>('thick');
  const [over, setOver] = useState(false);
  const [said, setSaid] = useState('');
  const [pictures, setPictures] = useState<ReadonlyMap<string, Reply>>(new Map());
  const chosen = props.metals.find(({ id }) => id === metal)!;

  const ask = (request: Request, move: Transferable[] = []): void => {
    worker.current ??= start();
    worker.current.postMessage(request, move);
  };
  const start = (): Worker => {
    const made = new Worker(new URL('../../workers/part.ts', import.meta.url), { type: 'module' });
    made.onmessage = ({ data }: MessageEvent<Reply>) => listen.current(data);
    made.onerror = () => {
      setBusy(undefined);
      setRefused('This browser stopped while reading the part: most likely it ran out of memory.');
    };
    return made;
  };

  listen.current = (reply) => {
    switch (reply.kind) {
      case 'opened':
        setOpened(reply);
        setUnit(reply.unit);
        settle(reply.unit, drawnAs, fineness, metal);
        break;
      case 'settled':
        setSettled(reply);
        setGateAt('heaviest');
        askGate('heaviest', beside);
        break;
      case 'gated':
        setGated(reply);
        setCells(undefined);
        setTimed(undefined);
        if (shown === 'froze') setShown('modulus');
        setBusy(undefined);
        break;
      case 'cells':
        setCells(reply);
        break;
      case 'timed':
        setTimed(reply);
        break;
      case 'refused':
        setRefused(reply.why);
        setBusy(undefined);
        break;
      case 'progress':
        setDone(reply.done);
        break;
      case 'picked':
        if (reply.at) moveGate(reply.at);
        else setSaid('There is no metal at that place.');
        break;
      case 'view':
      case 'cut':
        setPictures((now) => new Map(now).set(reply.kind === 'view' ? reply.name : 'cut', reply));
        break;
    }
  };

  useEffect(() => {
    setAwake(true);
    return () => worker.current?.terminate();
  }, []);

  function settle(as: LengthUnit, size: typeof drawnAs, how: typeof fineness, of: string): void {
    const contraction = props.metals.find(({ id }) => id === of)!.contraction;
    setBusy('Looking inside');
    setDone(0);
    setGated(undefined);
    ask({ kind: 'settle', unit: as, shrink: size === 'pattern' ? 1 / (1 + contraction) : 1, fineness: how });
  }

  function take(file: Blob, name: string, its = metal): void {
    if (file.size > 600_000_000) {
      setRefused('The file has more than 600 MB, which is not read here. Save it with fewer triangles.');
      return;
    }
    // A part in the middle of its sums hears nothing: its worker is ended and another asked.
    if (busy !== undefined) {
      worker.current?.terminate();
      worker.current = undefined;
    }
    setBusy('Reading');
    setDone(0);
    setRefused(undefined);
    setOpened(undefined);
    setSettled(undefined);
    setGated(undefined);
    setPictures(new Map());
    setMetal(its);
    ask({ kind: 'open-file', file, name });
  }

  async function fetchFitting({ href, file, metal: its }: PartProps['fittings'][number]): Promise<void> {
    setBusy('Fetching');
    try {
      const answer = await fetch(href);
      if (!answer.ok) throw new Error(String(answer.status));
      take(await answer.blob(), file, its);
    } catch {
      setBusy(undefined);
      setRefused('The mill’s own part could not be fetched. Try again when you are connected.');
    }
  }

  function askGate(at: Point | 'heaviest', what: Beside, size = sizes): void {
    const width = metres(gateWidth);
    const gateMetal: GateMetal | undefined =
      what === 'none'
        ? undefined
        : {
            button: what === 'button',
            width,
            length: metres(size.length),
            diameter: metres(size.diameter),
            height: metres(size.height),
          };
    setDone(0);
    ask({ kind: 'gate', at, radius: width / 2, metal: gateMetal });
  }

  function moveGate(at: Point | 'heaviest', what = beside): void {
    setGateAt(at);
    setBusy(what === 'none' ? 'Running from the gate' : 'Adding the gate');
    askGate(at, what);
    setSaid('The gate is moved.');
  }

  function toPlan(): void {
    if (!opened || !settled || !gated) return;
    const first = { name: 'Lamp shield', texts: {} };
    const plan = planOf(opened.name, settled, gated, metal, metres(gateWidth) ** 2, habit);
    const problem = saveShelf(withPlan(loadShelf(first).shelf, plan));
    if (problem !== undefined) setSaid(problem);
    else location.assign(props.plan);
  }

  const ready = opened && settled && gated;
  // The solver's side is fetched once there is a part to freeze.
  useEffect(() => {
    if (ready && !solver) void import('./freeze-part.tsx').then(setSolver);
  }, [ready !== undefined]);
  const open: readonly Shown[] = timed ? ['thick', 'modulus', 'run', 'froze'] : ['thick', 'modulus', 'run'];
  return (
    <div class="part" data-awake={awake} data-ready={ready !== undefined && busy === undefined}>
      <section
        class="drop on-screen"
        data-over={over}
        aria-labelledby="which"
        onDragOver={(event) => {
          event.preventDefault();
          setOver(true);
        }}
        onDragLeave={() => setOver(false)}
        onDrop={(event) => {
          event.preventDefault();
          setOver(false);
          const [file] = event.dataTransfer?.files ?? [];
          if (file) take(file, file.name);
        }}
      >
        <h2 id="which">Which part?</h2>
        <p>
          <label class="press">
            <input
              type="file"
              class="unseen"
              accept=".stl,.obj,.3mf"
              onChange={(event) => {
                const [file] = event.currentTarget.files ?? [];
                if (file) take(file, file.name);
                event.currentTarget.value = '';
              }}
            />
            Choose a file
          </label>{' '}
          or drop one here: STL, OBJ or 3MF.
        </p>
        <p>Or take one of the mill’s fittings:</p>
        <p class="row">
          {props.fittings.map((fitting) => (
            <button type="button" onClick={() => void fetchFitting(fitting)}>
              {fitting.name}
            </button>
          ))}
        </p>
      </section>
      <p class="said on-screen" role="status">
        {busy !== undefined
          ? `${busy}${done > 0 ? `: ${Math.round(100 * done)} of 100` : ''}.`
          : ready
            ? summaryOf(opened, settled, gated)
            : said}
      </p>
      {refused !== undefined && (
        <p class="problems" role="alert">
          {refused}
        </p>
      )}

      {opened && (
        <section aria-labelledby="sound">
          <h2 id="sound">Is the drawing sound?</h2>
          <p>
            “{opened.name}”, {opened.format}, {opened.faces.toLocaleString('en-GB')} triangles. {opened.sure}
          </p>
          {opened.faults.length + opened.notes.length > 0 && (
            <ul>
              {opened.notes.map((note) => (
                <li>{note}</li>
              ))}
              {opened.faults.map(({ says, harmless }) => (
                <li>
                  {!harmless && <strong>Look at this: </strong>}
                  {says}
                </li>
              ))}
            </ul>
          )}
        </section>
      )}

      {opened && (
        <section class="on-screen" aria-labelledby="unit">
          <h2 id="unit">How large is it?</h2>
          <p>
            {!opened.unitSure && <strong>Check this: </strong>}
            {opened.unitSays}
          </p>
          <div class="asks">
            <label>
              Drawn in
              <select
                value={unit}
                onChange={(event) => {
                  const as = event.currentTarget.value as LengthUnit;
                  setUnit(as);
                  settle(as, drawnAs, fineness, metal);
                }}
              >
                {(Object.keys(lengthUnits) as LengthUnit[]).map((one) => (
                  <option value={one} selected={one === unit}>
                    {plural(one)}
                  </option>
                ))}
              </select>
            </label>
            <label>
              Metal
              <select
                value={metal}
                onChange={(event) => {
                  const its = event.currentTarget.value;
                  setMetal(its);
                  if (drawnAs === 'pattern') settle(unit, drawnAs, fineness, its);
                }}
              >
                {props.metals.map(({ id, name }) => (
                  <option value={id} selected={id === metal}>
                    {name}
                  </option>
                ))}
              </select>
            </label>
            <label>
              The file is as large as
              <select
                value={drawnAs}
                onChange={(event) => {
                  const size = event.currentTarget.value as typeof drawnAs;
                  setDrawnAs(size);
                  settle(unit, size, fineness, metal);
                }}
              >
                <option value="casting">the casting</option>
                <option value="pattern">the pattern, contraction added</option>
              </select>
            </label>
            <label>
              Cells
              <select
                value={fineness}
                onChange={(event) => {
                  const how = event.currentTarget.value as typeof fineness;
                  setFineness(how);
                  settle(unit, drawnAs, how, metal);
                }}
              >
                <option value="quick">coarse, quick</option>
                <option value="usual" selected>
                  usual
                </option>
                <option value="fine">fine, slow</option>
              </select>
            </label>
          </div>
        </section>
      )}
      {settled && <Sizes settled={settled} metals={props.metals} chosen={metal} />}

      {ready && (
        <>
          <section class="look" aria-labelledby="look">
            <h2 id="look">{questions[shown]}</h2>
            <div class="row on-screen" role="group" aria-label="Ask of the part">
              {open.map((one) => (
                <button type="button" aria-pressed={one === shown} onClick={() => setShown(one)}>
                  {questions[one]}
                </button>
              ))}
            </div>
            <Views
              key={opened.name}
              ask={ask}
              shown={shown}
              pictures={pictures}
              gated={gated}
              timed={timed}
              onGate={(x, y) => ask({ kind: 'pick', x, y })}
            />
            {shown === 'froze' ? (
              <p class="answer">
                When the solver had each place solid. The numbers are under{' '}
                <a href="#solid">{questions.froze}</a>
              </p>
            ) : (
              <Answer shown={shown} gated={gated} />
            )}
          </section>

          <section class="on-screen" aria-labelledby="gate">
            <h2 id="gate">Where does the metal come in?</h2>
            <p>
              The gate is at the {gated.gate.where}. Press the part in the drawing to move it, or move the
              cross with the arrow keys and press Enter.
            </p>
            <div class="asks">
              <SmallEntry
                id="gate-side"
                label={`Side of the square gate, ${unitLabel(here('mm'))}`}
                value={gateWidth}
                read={lengthFrom}
                put={setGateWidth}
                done={() => moveGate(gateAt)}
              />
              <button type="button" onClick={() => moveGate('heaviest')}>
                Put it at the heaviest place
              </button>
            </div>
            <div class="asks">
              <label>
                Also metal
                <select
                  value={beside}
                  onChange={(event) => {
                    const what = event.currentTarget.value as Beside;
                    setBeside(what);
                    moveGate(gateAt, what);
                  }}
                >
                  {(Object.keys(besides) as Beside[]).map((one) => (
                    <option value={one} selected={one === beside}>
                      {besides[one]}
                    </option>
                  ))}
                </select>
              </label>
              {beside !== 'none' &&
                (
                  [
                    ['length', 'Length of the gate'],
                    ['diameter', 'Button across'],
                    ['height', 'Button high'],
                  ] as const
                ).map(
                  ([key, label]) =>
                    (key === 'length' || beside === 'button') && (
                      <SmallEntry
                        key={key}
                        id={`gate-${key}`}
                        label={`${label}, ${unitLabel(here('mm'))}`}
                        value={sizes[key]}
                        read={lengthFrom}
                        put={(text) => setSizes({ ...sizes, [key]: text })}
                        done={() => moveGate(gateAt)}
                      />
                    ),
                )}
            </div>
            {gated.added && <p>{addedText(gated.added, chosen)}</p>}
          </section>

          <Cuts
            ask={ask}
            shown={shown}
            picture={pictures.get('cut')}
            extent={settled.extent}
            gated={gated}
            timed={timed}
          />
          {solver && chosen.freezing && (
            <solver.FreezePart
              ask={ask}
              gated={gated}
              name={opened.name}
              metal={chosen.freezing}
              moulds={props.moulds}
              fineness={fineness}
              cells={cells}
              timed={timed}
              onShow={() => {
                setShown('froze');
                document.getElementById('look')?.scrollIntoView();
              }}
            />
          )}
          <Rows gated={gated} settled={settled} metal={chosen.name} onPlan={toPlan} />
        </>
      )}
    </div>
  );
}

function addedText(added: NonNullable<Gated['added']>, metal: MetalProps): string {
  const volume = added.stub + added.button;
  const mass = metal.density[0] * volume;
  return [
    `${added.metal.button ? 'Gate and button add' : 'The gate adds'} ${said(volume, 'cm³', { figures: 3 })}, ${said(mass, 'g', { figures: 3 })} in ${metal.name.toLowerCase()}; with the part that is ${said(added.volume, 'cm³', { figures: 3 })}.`,
    'They are in the drawing, in where it freezes last, in the solver and in the plan.',
    added.clash > 0.02
      ? `Look at this: ${added.metal.button ? 'they run' : 'it runs'} into the part. Move the gate or make it longer.`
      : '',
  ]
    .filter(Boolean)
    .join(' ');
}

function summaryOf(opened: Opened, settled: Settled, gated: Gated): string {
  const [thin] = gated.thin;
  const [last] = gated.spots;
  return [
    `${opened.name}: ${said(settled.volume, 'cm³')} of metal, ${settled.extent.map(mm).join(' by ')}.`,
    thin ? `Thinnest ${mm(thin.thick)}, ${thin.where}.` : '',
    last
      ? `Freezes last ${last.body === 'part' ? `at the ${last.where}` : `in the ${last.body}`}, modulus ${mm(last.modulus)}.`
      : '',
    `From the gate the farthest metal runs ${mm(gated.farthest.run)}, to the ${gated.farthest.where}.`,
  ]
    .filter(Boolean)
    .join(' ');
}

function Sizes(props: {
  readonly settled: Settled;
  readonly metals: readonly MetalProps[];
  readonly chosen: string;
}) {
  const { settled, metals, chosen } = props;
  const { volume, volumeSpread, area, extent, balance, seen, parting } = settled;
  const names = ['from the side', 'from the front', 'from above'];
  const best = seen[parting]!;
  const own = metals.find(({ id }) => id === chosen)!;
  const massOf = ({ density: [rho, spread] }: MetalProps): string =>
    printWithSpread(rho * volume, here('g'), Math.hypot(spread * volume, rho * volumeSpread));
  return (
    <section aria-label="Its size">
      <dl class="numbers">
        <div>
          <dt>Length, width, height</dt>
          <dd>{extent.map(mm).join(' × ')}</dd>
        </div>
        <div>
          <dt>Volume</dt>
          <dd>
            {volumeSpread > 1e-4 * volume
              ? printWithSpread(volume, here('cm³'), volumeSpread)
              : said(volume, 'cm³', { figures: 4 })}
          </dd>
        </div>
        <div>
          <dt>Surface</dt>
          <dd>{said(area, 'cm²', { figures: 4 })}</dd>
        </div>
        <div>
          <dt>Modulus of the whole</dt>
          <dd>{mm(volume / area)}</dd>
        </div>
        <div>
          <dt>Mass in {own.name.toLowerCase()}</dt>
          <dd>{massOf(own)}</dd>
        </div>
        <div>
          <dt>Balances at</dt>
          <dd>
            {mm(balance[0])} from the left, {mm(balance[1])} from the front, {mm(balance[2])} up
          </dd>
        </div>
        <div>
          <dt>Area seen</dt>
          <dd>{seen.map(({ area: one }, d) => `${said(one, 'cm²')} ${names[d]!}`).join(', ')}</dd>
        </div>
        <div>
          <dt>Draws best</dt>
          <dd>
            {['to left and right', 'to front and back', 'up and down'][parting]!}
            {best.undercut > 0.015
              ? `, with undercuts under ${Math.round(100 * best.undercut)} % of its outline`
              : ', with no undercut to speak of'}
          </dd>
        </div>
      </dl>
      <details>
        <summary>What it weighs in other metals</summary>
        <table>
          <thead>
            <tr>
              <th scope="col">Metal</th>
              <th scope="col">Mass of one casting</th>
            </tr>
          </thead>
          <tbody>
            {metals.map((one) => (
              <tr>
                <th scope="row">{one.name}</th>
                <td>{massOf(one)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </section>
  );
}

function feedText({ body, modulus, way }: Gated['spots'][number], added: Gated['added']): string {
  if (body !== 'part') return 'It freezes after what it feeds: that is what it is for.';
  const from = added?.metal.button ? 'button' : 'gate';
  return way < 0.94 * modulus
    ? `Its way to the ${from} shuts first: at the narrowest it has ${mm(way)}. Feed it from beside, or move the gate${added ? ' or widen it' : ''}.`
    : `The ${from} can feed it.`;
}

function Answer({ shown, gated }: { readonly shown: Measured; readonly gated: Gated }) {
  if (shown === 'thick')
    return (
      <div class="answer">
        <ol>
          {gated.thin.map(({ thick, where }) => (
            <li>
              <strong>{mm(thick)}</strong> {where}
            </li>
          ))}
        </ol>
        <p class="how">Thickness is the width of the largest ball that fits in the metal there.</p>
      </div>
    );
  if (shown === 'modulus')
    return (
      <div class="answer">
        <ol>
          {gated.spots.map((spot) => (
            <li>
              <strong>{mm(spot.modulus)}</strong> {spot.body === 'part' ? spot.where : `in the ${spot.body}`}.{' '}
              {feedText(spot, gated.added)}
            </li>
          ))}
        </ol>
        <p class="how">
          The modulus is volume over cooled surface, worked at each place: every piece of surface draws the
          same heat, and the metal evens it out over about its own thickness. Time to freeze goes with its
          square.
        </p>
      </div>
    );
  return (
    <div class="answer">
      <p>
        <strong>{mm(gated.farthest.run)}</strong> to the {gated.farthest.where}, through the metal by the
        shortest way.
      </p>
      {gated.apart > 0.001 && (
        <p>
          <strong>Look at this: </strong>
          {Math.max(1, Math.round(100 * gated.apart))} % of the metal is not joined to the gate.
        </p>
      )}
    </div>
  );
}

function Rows(props: {
  readonly gated: Gated;
  readonly settled: Settled;
  readonly metal: string;
  readonly onPlan: () => void;
}) {
  const { gated } = props;
  const { sections } = gated;
  const names = sectionNames(sections, habit);
  return (
    <section aria-labelledby="rows">
      <h2 id="rows">What goes into the plan?</h2>
      <div class="scrolls" tabIndex={0} role="group" aria-label="Sections of the part">
        <table>
          <thead>
            <tr>
              <th scope="col">Section</th>
              <th scope="col">Shape</th>
              <th scope="col">Thick × wide × long</th>
              <th scope="col">Modulus</th>
              <th scope="col">Run</th>
              <th scope="col">Through</th>
            </tr>
          </thead>
          <tbody>
            {sections.map((one, n) => (
              <tr>
                <th scope="row">{names[n]}</th>
                <td>
                  {one.shape}
                  {one.pieces > 1 && `, ${one.pieces} pieces`}
                </td>
                <td>{[one.thickness, one.width, one.length].map(mm).join(' × ')}</td>
                <td>{mm(one.modulus)}</td>
                <td>{mm(one.run)}</td>
                <td>{one.through < 0 ? 'the gate' : names[one.through]}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p>
        Each row has the thickness, the modulus and the volume of its stretch of the part; give them names of
        your own in the plan. Also taken: the volume, the surface, the length, the height, the area seen from
        above, the gate{gated.added && ', the metal in gate and button'}, and {props.metal.toLowerCase()}.
      </p>
      <p class="on-screen">
        <button type="button" class="first" onClick={props.onPlan}>
          Plan this part
        </button>
      </p>
    </section>
  );
}
