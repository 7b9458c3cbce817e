import { useEffect, useRef, useState } from 'preact/hooks';
import { printNumber, printQuantity } from '../../../calculators/core/print.ts';
import { timeBoth } from '../../../calculators/formulas/freezing/time-both.ts';
import type { Reply as SolverReply, Request as SolverRequest } from '../../workers/conduction-work.ts';
import type { Body, Celled, Gated, Request, Timed } from '../../workers/part-work.ts';
import { ruleTime, soaked, whyApart } from '../beside-rule.ts';
import { degrees, here, hot, kelvin, mm } from './said.ts';
import type { FreezingMetal, FreezingMould } from './substances.ts';

const seconds = (value: number): string => printQuantity(value, 's', { figures: 2 });
const deep = { least: 0.002, most: 0.04 } as const;
/** Cells with their mould, by how finely the part is looked at; a device with little memory is asked for fewer. */
const wanted = { quick: 150_000, usual: 700_000, fine: 2_000_000 } as const;
const mostCells = (fineness: keyof typeof wanted): number => {
  const memory = (navigator as { readonly deviceMemory?: number } | undefined)?.deviceMemory ?? 4;
  return wanted[fineness] * Math.min(1, Math.max(0.25, memory / 4));
};

export const placeIn = ({ body, where }: { readonly body: Body; readonly where: string }): string =>
  body === 'part' ? where : `in the ${body}`;

interface Going {
  readonly pass: 'coarse' | 'fine';
  readonly share: number;
}

/** The part as it is drawn, handed to the solver: when it is solid, where last, and what the quick rule says beside it. */
export function FreezePart(props: {
  readonly ask: (request: Request, move?: Transferable[]) => void;
  readonly gated: Gated;
  readonly name: string;
  readonly metal: FreezingMetal;
  readonly moulds: readonly FreezingMould[];
  readonly fineness: keyof typeof wanted;
  /** What the part's own worker answered last. */
  readonly cells: Celled | undefined;
  readonly timed: Timed | undefined;
  readonly onShow: () => void;
}) {
  const { ask, gated, metal, moulds, cells, timed } = props;
  const [mouldId, setMouldId] = useState(moulds[0]!.id);
  const mould = moulds.find(({ id }) => id === mouldId) ?? moulds[0]!;
  const [pour, setPour] = useState(degrees(metal.pour));
  const [cold, setCold] = useState(degrees(423.15));
  const [going, setGoing] = useState<Going>();
  const [refused, setRefused] = useState('');
  const [error, setError] = useState(0);
  /** What the answer on show was asked with. */
  const [of, setOf] = useState<{ pour: number; cold: number; mould: FreezingMould; metal: FreezingMetal }>();
  const worker = useRef<Worker>(undefined);
  const asked = useRef(0);
  const end = (): void => {
    worker.current?.terminate();
    worker.current = undefined;
  };
  useEffect(() => setPour(degrees(metal.pour)), [metal]);
  useEffect(() => {
    setOf(undefined);
    setGoing(undefined);
    end();
  }, [gated, metal]);
  useEffect(() => end, []);

  const begin = (): void => {
    const [poured, start] = [kelvin(pour), kelvin(cold)];
    setOf(undefined);
    if (Number.isNaN(poured + start)) {
      setRefused(`Both temperatures are numbers, for example ${hot(1423.15)} and ${hot(423.15)}.`);
      return;
    }
    if (!(poured > metal.solidus)) {
      setRefused(`The metal must be poured hotter than its solidus, ${hot(metal.solidus)}.`);
      return;
    }
    if (!(start > 200 && start < metal.solidus)) {
      setRefused(`The mould must be cooler than the metal’s solidus, ${hot(metal.solidus)}.`);
      return;
    }
    if (start > mould.limit) {
      setRefused(`${mould.name} may be no hotter than ${hot(mould.limit)}.`);
      return;
    }
    setRefused('');
    const heaviest = Math.max(...gated.spots.map(({ modulus }) => modulus));
    const time = ruleTime(timeBoth, heaviest, metal, mould, poured, start) ?? 30;
    // Twice as deep as heat soaks and a little is enough: what comes back from farther out is less than a hundredth.
    const wall = Math.min(deep.most, Math.max(deep.least, 2.2 * soaked(mould, time)));
    setGoing({ pass: 'coarse', share: 0 });
    setOf({ pour: poured, cold: start, mould, metal });
    ask({ kind: 'cells', wall, most: mostCells(props.fineness) });
  };

  useEffect(() => {
    if (!cells || !of) return;
    end();
    asked.current += 1;
    const made = new Worker(new URL('../../workers/conduction.ts', import.meta.url), { type: 'module' });
    worker.current = made;
    made.onerror = () => {
      setGoing(undefined);
      setRefused('The sums could not be run in this browser: it must allow workers.');
    };
    made.onmessage = ({ data }: MessageEvent<SolverReply>) => {
      if (data.kind === 'mesh') setError(data.error);
      else if (data.kind === 'going') setGoing({ pass: data.pass, share: data.progress });
      else if (data.kind === 'frozen') {
        const { metal: list, solidus } = data.result;
        ask({ kind: 'times', pass: data.pass, cells: list, solid: solidus }, [list.buffer, solidus.buffer]);
        setGoing(data.done ? undefined : { pass: 'fine', share: 0 });
        if (data.result.last === undefined)
          setRefused(
            'It was not solid right through when the sums ended: the mould is too warm or too small.',
          );
        if (data.done) end();
      } else {
        setGoing(undefined);
        setRefused(data.kind === 'refused' ? data.why : 'Stopped.');
      }
    };
    const { pour: _, ...own } = of.metal;
    // The metal weighs what the part weighs, however the cells round it.
    const weighed = { ...own, rho: own.rho * cells.weigh };
    made.postMessage({
      asked: asked.current,
      part: {
        shape: { kind: 'cells', coarse: cells.coarse, fine: cells.fine },
        metal: weighed,
        others: [{ name: 'mould', k: of.mould.k, rhoc: of.mould.rhoc, h: of.mould.h }],
        start: [of.pour, of.cold],
        most: 4e6,
      },
    } satisfies SolverRequest);
  }, [cells]);

  return (
    <section aria-labelledby="solid">
      <h2 id="solid">When is it solid?</h2>
      <div class="asks on-screen">
        <label>
          Mould
          <select value={mould.id} onChange={(event) => setMouldId(event.currentTarget.value)}>
            {moulds.map(({ id, name }) => (
              <option value={id} selected={id === mould.id}>
                {name}
              </option>
            ))}
          </select>
        </label>
        <label>
          Mould at the pour, {here('°C')}
          <input
            type="text"
            inputMode="decimal"
            autocomplete="off"
            value={cold}
            onInput={(event) => setCold(event.currentTarget.value)}
          />
        </label>
        <label>
          Metal as it fills, {here('°C')}
          <input
            type="text"
            inputMode="decimal"
            autocomplete="off"
            value={pour}
            onInput={(event) => setPour(event.currentTarget.value)}
          />
        </label>
        <button type="button" aria-disabled={going !== undefined} onClick={() => !going && begin()}>
          Follow the heat
        </button>
        {going && (
          <button
            type="button"
            onClick={() => {
              end();
              setGoing(undefined);
            }}
          >
            Stop
          </button>
        )}
      </div>
      <p role="status" class="said on-screen">
        {going
          ? going.pass === 'coarse'
            ? 'Solving, a coarse answer first.'
            : `Solving finer: ${Math.round(100 * going.share)} of 100.`
          : refused}
      </p>
      {timed && of && (
        <Answer timed={timed} of={of} error={error} gated={gated} cells={cells} onShow={props.onShow} />
      )}
    </section>
  );
}

function Answer(props: {
  readonly timed: Timed;
  readonly of: { pour: number; cold: number; mould: FreezingMould; metal: FreezingMetal };
  readonly error: number;
  readonly gated: Gated;
  readonly cells: Celled | undefined;
  readonly onShow: () => void;
}) {
  const { timed, of, error, gated, cells } = props;
  const { last, places } = timed;
  const rule = (modulus: number): number | undefined =>
    ruleTime(timeBoth, modulus, of.metal, of.mould, of.pour, of.cold);
  const range = of.metal.liquidus - of.metal.solidus;
  const heaviest = gated.spots[0];
  const atLast = rule(last.modulus);
  return (
    <div class="answer">
      <p>
        All of it is solid after <strong>{seconds(last.solid)}</strong>, last{' '}
        {last.body === 'part' ? `at the ${last.where}` : placeIn(last)}. The cells may put that off by up to{' '}
        {printNumber(100 * error, { figures: 2 })} %
        {timed.pass === 'coarse' ? '; a finer answer follows' : ''}.
      </p>
      {heaviest && (
        <p>
          By modulus the last is{' '}
          {heaviest.body === 'part' ? `the heavy place at the ${heaviest.where}` : placeIn(heaviest)},{' '}
          {mm(heaviest.modulus)}
          {rule(heaviest.modulus) === undefined ? '' : `, after ${seconds(rule(heaviest.modulus)!)}`}.{' '}
          {heaviest.body === last.body && (heaviest.body !== 'part' || heaviest.where === last.where)
            ? 'Both name the same place.'
            : 'They do not name the same place: heat also runs through the metal from heavy to thin, which a modulus cannot tell. Trust the solver on the order.'}{' '}
          {atLast === undefined ? '' : whyApart('place', atLast, last.solid, { range, error })}
        </p>
      )}
      {!gated.added && (
        <p>
          Gate and button are left out. Add them under <em>Where does the metal come in?</em> to see whether
          they stay open longer than what they feed.
        </p>
      )}
      {cells && cells.across < 3 && (
        <p>
          <strong>Look at this: </strong>the thinnest section has only{' '}
          {printNumber(cells.across, { figures: 2 })} cells across. Its own time is rough.
        </p>
      )}
      <p class="on-screen">
        <button type="button" onClick={props.onShow}>
          Show it in the drawing
        </button>
      </p>
      <div class="scrolls" tabIndex={0} role="group" aria-label="Solver and rule, place by place">
        <table>
          <thead>
            <tr>
              <th scope="col">Place</th>
              <th scope="col">Modulus there</th>
              <th scope="col">Quick rule</th>
              <th scope="col">Solver</th>
              <th scope="col">Why they differ</th>
            </tr>
          </thead>
          <tbody>
            {[...places]
              .sort((a, b) => b.solid - a.solid)
              .map((one) => {
                const quick = rule(one.modulus);
                return (
                  <tr>
                    <th scope="row">
                      {one.name}, {placeIn(one)}
                    </th>
                    <td>{mm(one.modulus)}</td>
                    <td>{quick === undefined ? '' : seconds(quick)}</td>
                    <td>{seconds(one.solid)}</td>
                    <td class="why">
                      {quick === undefined ? '' : whyApart('place', quick, one.solid, { range, error })}
                    </td>
                  </tr>
                );
              })}
          </tbody>
        </table>
      </div>
    </div>
  );
}
