import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Formula, SymbolSpec } from '../../calculators/core/formula.ts';
import { printQuantity, printWithSpread, unitLabel } from '../../calculators/core/print.ts';
import { habitUnit, type Habit } from '../../calculators/core/shop-units.ts';
import type { Spread } from '../../calculators/core/spread.ts';
import { toSI, type UnitSymbol } from '../../calculators/core/units.ts';
import {
  entryFor,
  entryFromLink,
  entryOf,
  fromFragment,
  homeUnit,
  inUnit,
  readEntry,
  toFragment,
  type Entry,
} from './entries.ts';
import { forgetNumbers, isLarge, keepLarge, keepNumbers, lastNumbers } from './card-memory.ts';
import { Field, sentence, UnitChoice } from './field.tsx';
import { readHabit } from './habit.ts';
import { HabitChoice } from './habit-choice.tsx';
import { Raised } from './raised.tsx';
import { Sign } from './sign.tsx';
import type { Answer } from './solving.ts';

export interface CalculatorProps {
  /** Unique on the page; the fragment of a shared link begins with it. */
  readonly id: string;
  readonly formula: Formula;
  /** Written quantities the calculator starts with and returns to. */
  readonly start: Readonly<Record<string, string>>;
  readonly find: string;
  /** The answer to the start, made at build: the solver is fetched when the reader first reaches for it. */
  readonly first: Answer;
  /** The equation typeset as HTML: as stated under '', rearranged under each symbol where that differs. */
  readonly typeset: Readonly<Record<string, string>>;
  /** The base of the site, for carrying a result to another card. */
  readonly base: string;
  /** It stands on a card of its own and keeps the last numbers put in; in a lesson the text speaks of the example. */
  readonly card?: boolean;
}

interface State {
  readonly find: string;
  readonly entries: Readonly<Record<string, Entry>>;
  readonly withSpread: boolean;
}

type Solver = typeof import('./solving.ts');
type Carry = typeof import('./carry.tsx').Carry;

const onItsWay: Answer = { others: [], warnings: [], reason: 'Being worked out.' };

const signOf = (spec: SymbolSpec, symbol: string): string => spec.sign ?? symbol;

export function Calculator(props: CalculatorProps) {
  const { id, formula, start, find: sought, first, typeset, base, card = false } = props;
  const specs = formula.symbols as Readonly<Record<string, SymbolSpec>>;
  const variables = Object.keys(specs).filter((symbol) => specs[symbol]!.constant === undefined);
  const constants = Object.entries(specs).filter(([, spec]) => spec.constant !== undefined);
  const example = useMemo<State>(
    () => ({
      find: sought,
      entries: Object.fromEntries(variables.map((symbol) => [symbol, entryOf(start[symbol]!)])),
      withSpread: false,
    }),
    [],
  );
  const [state, setState] = useState(example);
  const { find, entries, withSpread } = state;
  const [solver, setSolver] = useState<Solver>();
  const touched = useRef(false);
  const kept = useRef<Record<string, { value: number; spread: number }>>({});
  const shownBefore = useRef({ find: sought, answer: first });
  const [said, setSaid] = useState('');
  const [habit, setHabit] = useState<Habit>('metric');
  const [large, setLarge] = useState(false);
  const [qr, setQr] = useState('');
  const [carry, setCarry] = useState<{ readonly Carry: Carry }>();

  /** The same numbers in the units of a habit. */
  const inHabit = (now: State, wanted: Habit): State => ({
    ...now,
    entries: Object.fromEntries(
      variables.map((symbol) => {
        const [entry, spec] = [now.entries[symbol]!, specs[symbol]!];
        const unit = habitUnit(homeUnit(spec), wanted, spec);
        return [symbol, unit === entry.unit ? entry : inUnit(entry, spec, unit)];
      }),
    ),
  });
  const reach = (): void => {
    if (!solver) void import('./solving.ts').then((module) => setSolver(() => module));
  };
  const change = (next: Partial<State>): void => {
    touched.current = true;
    reach();
    setQr('');
    setState((now) => ({ ...now, ...next }));
  };

  // Before anything typed while the island slept is done again, so that it stands over the link.
  useLayoutEffect(() => {
    const take = (hash: string): boolean => {
      const shared = fromFragment(hash, id);
      if (!shared) return false;
      reach();
      const wanted = shared['find'];
      const fresh = inHabit(example, readHabit());
      setState({
        find: wanted !== undefined && variables.includes(wanted) ? wanted : sought,
        entries: Object.fromEntries(
          variables.map((symbol) => {
            const text = shared[symbol];
            const spec = specs[symbol]!;
            return [
              symbol,
              text === undefined ? fresh.entries[symbol]! : entryFromLink(text, spec, homeUnit(spec)),
            ];
          }),
        ),
        withSpread: Object.values(shared).some((text) => text.includes('±')),
      });
      return true;
    };
    const follow = (): void => void take(location.hash);
    const wanted = readHabit();
    setHabit(wanted);
    setLarge(isLarge());
    if (!take(location.hash)) {
      const last = card ? lastNumbers(id) : undefined;
      if (last !== undefined && take(last))
        setSaid('These are your last numbers. Reset brings the example back.');
      else if (wanted !== 'metric') setState((now) => inHabit(now, wanted));
    }
    addEventListener('hashchange', follow);
    return () => removeEventListener('hashchange', follow);
  }, []);

  useEffect(() => {
    if (!touched.current) return undefined;
    const write = (): void => {
      const fragment = toFragment(id, find, entries, specs);
      history.replaceState(history.state, '', `#${fragment}`);
      if (card) keepNumbers(id, fragment);
    };
    const wait = setTimeout(write, 400);
    return () => clearTimeout(wait);
  }, [find, entries]);

  // The last number that could be read stands in for one that cannot, so the answer stays, greyed.
  const readings = Object.fromEntries(
    variables.map((symbol) => [symbol, readEntry(entries[symbol]!, specs[symbol]!)]),
  );
  const given: Record<string, number> = {};
  const widths: Record<string, number> = {};
  let unread = false;
  for (const symbol of variables) {
    if (symbol === find) continue;
    const reading = readings[symbol]!;
    if (reading.ok) kept.current[symbol] = { value: reading.value, spread: reading.spread ?? 0 };
    else unread = true;
    const last = kept.current[symbol];
    if (!last) continue;
    given[symbol] = last.value;
    if (last.spread > 0) widths[symbol] = last.spread;
  }
  const asked = JSON.stringify([find, given, widths]);
  const units = Object.fromEntries(variables.map((symbol) => [symbol, entries[symbol]!.unit]));
  const answer = useMemo<Answer>(
    // An answer to one symbol is never shown for another while the solver is on its way.
    () =>
      solver
        ? solver.answerOf(formula, given, find, units)
        : shownBefore.current.find === find
          ? shownBefore.current.answer
          : onItsWay,
    [solver, asked, Object.values(units).join()],
  );
  shownBefore.current = { find, answer };
  const { value } = answer;

  const [spreads, setSpreads] = useState<{ asked: string; spread: Spread | undefined }>();
  const uncertain = Object.keys(widths).length > 0 && value !== undefined;
  useEffect(() => {
    if (!solver || !uncertain) return undefined;
    const sampling = solver.formulaSpreadInSteps(formula, given, widths, find);
    let wait = setTimeout(work, 120);
    /** A stretch at a time, so that the next stroke does not wait for two thousand samples. */
    function work(): void {
      const until = performance.now() + 5;
      let step = sampling.next();
      while (!step.done && performance.now() < until) step = sampling.next();
      if (step.done) setSpreads({ asked, spread: step.value });
      else wait = setTimeout(work, 0);
    }
    return () => clearTimeout(wait);
  }, [solver, asked, uncertain]);
  const spread = uncertain && spreads?.asked === asked ? spreads.spread : undefined;

  const found = specs[find]!;
  const shown = entries[find]!.unit;
  const print = (si: number): string =>
    spread ? printWithSpread(si, shown, [spread.low, spread.high]) : printQuantity(si, shown);
  const result = value === undefined ? '' : print(value);
  const spoken = value === undefined ? `No answer. ${answer.reason}` : `${found.name}: ${result}`;

  // Spoken once typing rests, and only after the reader has changed something.
  useEffect(() => {
    if (!touched.current) return undefined;
    const wait = setTimeout(() => setSaid(spoken), 700);
    return () => clearTimeout(wait);
  }, [spoken]);

  const seek = (symbol: string): void => {
    const moved = value === undefined ? entries : { ...entries, [find]: entryFor(value, shown, 4) };
    change({ find: symbol, entries: moved });
  };
  const copy = async (text: string, what: string): Promise<void> => {
    try {
      await navigator.clipboard.writeText(text);
      setSaid(`${what} copied.`);
    } catch {
      setSaid(`Copy it from here: ${text}`);
    }
  };
  const link = (): string => `${location.href.replace(/#.*/, '')}#${toFragment(id, find, entries, specs)}`;
  const showQr = async (): Promise<void> => {
    if (qr !== '') return setQr('');
    const { renderSVG } = await import('uqr');
    setQr(`data:image/svg+xml,${encodeURIComponent(renderSVG(link(), { border: 3 }))}`);
  };
  const reset = (): void => {
    forgetNumbers(id);
    change(habit === 'metric' ? example : inHabit(example, habit));
  };
  const waiting = touched.current && !solver;
  const largest = spread?.shares[0];
  const sign = <Sign text={signOf(found, find)} />;

  return (
    <section
      class={large ? 'calculator large' : 'calculator'}
      data-card={card ? id : undefined}
      aria-label={`Calculator: ${formula.title}`}
      onFocusIn={reach}
      onPointerEnter={reach}
    >
      <label class="seek">
        Find
        <select id={`${id}-find`} value={find} onChange={(event) => seek(event.currentTarget.value)}>
          {variables.map((symbol) => (
            <option
              value={symbol}
              selected={symbol === find}
              disabled={formula.noSolve?.[symbol] !== undefined}
            >
              {specs[symbol]!.name} ({signOf(specs[symbol]!, symbol).replace('_', ' ')})
            </option>
          ))}
        </select>
      </label>

      <div class="fields">
        {variables
          .filter((symbol) => symbol !== find)
          .map((symbol) => {
            const spec = specs[symbol]!;
            // What is said of the last number that could be read is not of the one that stands here.
            const about = readings[symbol]!.ok
              ? answer.warnings.filter((warning) => warning.symbol === symbol)
              : [];
            return (
              <Field
                key={symbol}
                id={`${id}-${symbol}`}
                name={spec.name}
                label={
                  <>
                    <Sign text={signOf(spec, symbol)} /> {spec.name}
                  </>
                }
                spec={spec}
                entry={entries[symbol]!}
                reading={readings[symbol]!}
                withSpread={withSpread}
                warnings={about.map(({ message }) => message)}
                refused={about.some(({ refuses }) => refuses)}
                note={spec.note}
                onChange={(entry) => {
                  if (entry !== entries[symbol])
                    change({
                      entries: { ...entries, [symbol]: entry },
                      withSpread: withSpread || entry.spread !== '',
                    });
                }}
              />
            );
          })}
      </div>
      {constants.length > 0 && (
        <p class="constants">
          {constants.map(([symbol, spec]) => (
            <span key={symbol}>
              <Sign text={signOf(spec, symbol)} /> ={' '}
              {printQuantity(toSI(spec.constant!, spec.unit), spec.unit, { figures: 6 })}
            </span>
          ))}
        </p>
      )}

      <div class="result" data-stale={unread || waiting}>
        <div class="answer">
          <output>
            {sign} {value === undefined ? 'has no answer' : `= ${result}`}
          </output>
          <UnitChoice
            name={found.name}
            of={found.unit}
            value={shown}
            onChange={(unit: UnitSymbol) =>
              change({ entries: { ...entries, [find]: inUnit(entries[find]!, found, unit) } })
            }
          />
        </div>
        <div class="says">
          {unread && <p>From the last numbers that could be read.</p>}
          {answer.reason !== undefined && <p class="wrong">{sentence(answer.reason)}</p>}
          {answer.warnings
            .filter((warning) => warning.symbol === find && warning.message !== answer.reason)
            .map(({ message }) => (
              <p class="warning">{sentence(message)}</p>
            ))}
          {answer.others.length > 0 && (
            <p class="warning">The equation also holds at {answer.others.map(print).join(' and ')}.</p>
          )}
          {largest && (
            <p>
              Most of the spread comes from {specs[largest.name]!.name} ({Math.round(100 * largest.share)} %).
              {spread.answered < 1 &&
                ` ${Math.round(100 * (1 - spread.answered))} % of the trials had no answer.`}
            </p>
          )}
        </div>
      </div>

      <details class="working">
        <summary>Show the working</summary>
        <ol class="steps">
          <li>
            The equation.
            <Typeset html={typeset['']} />
          </li>
          {typeset[find] !== undefined && (
            <li>
              Rearranged.
              <Typeset html={typeset[find]} />
            </li>
          )}
          {answer.numbers === undefined ? (
            <li>It cannot be turned round for this symbol, so values are tried until both sides agree.</li>
          ) : (
            <li>
              With the numbers in,{' '}
              {formula.empirical === true ? 'in the units of the equation' : 'in SI units'}.
              <p class="numbers">
                {sign} = <Raised text={answer.numbers} />
              </p>
            </li>
          )}
          {result !== '' && (
            <li>
              {sign} = {result}
            </li>
          )}
        </ol>
        {spread && spread.shares.length > 1 && (
          <p>
            Spread by input:{' '}
            {spread.shares
              .map(({ name, share }) => `${specs[name]!.name} ${Math.round(100 * share)} %`)
              .join(', ')}
            .
          </p>
        )}
      </details>

      <p class="actions">
        <button type="button" aria-pressed={withSpread} onClick={() => change({ withSpread: !withSpread })}>
          ± spread
        </button>
        <button
          type="button"
          disabled={value === undefined}
          onClick={() => copy(`${signOf(found, find)} = ${result} (${formula.title})`, 'Result')}
        >
          Copy result
        </button>
        <button type="button" onClick={() => copy(link(), 'Link')}>
          Copy link
        </button>
        <button type="button" aria-expanded={qr !== ''} onClick={() => void showQr()}>
          QR code
        </button>
        <button type="button" onClick={reset}>
          Reset
        </button>
        <button
          type="button"
          aria-pressed={large}
          onClick={() => {
            keepLarge(!large);
            setLarge(!large);
          }}
        >
          Large
        </button>
        <HabitChoice
          habit={habit}
          onChange={(wanted) => {
            setHabit(wanted);
            change(inHabit(state, wanted));
          }}
        />
      </p>
      {qr !== '' && (
        <img class="qr" src={qr} alt="QR code of the link to these numbers" width="220" height="220" />
      )}
      <details
        class="carry"
        onToggle={() => void import('./carry.tsx').then(({ Carry }) => setCarry({ Carry }))}
      >
        <summary>Use this in another card</summary>
        {carry && (
          <carry.Carry
            base={base}
            id={formula.id}
            entries={value === undefined ? entries : { ...entries, [find]: entryFor(value, shown, 4) }}
          />
        )}
      </details>
      <p class="status" role="status">
        {said}
      </p>
      {card && (
        <dl class="on-paper beside">
          {variables
            .filter((symbol) => symbol !== find)
            .map((symbol) => {
              const { text, unit, spread: doubt } = entries[symbol]!;
              return (
                <div key={symbol}>
                  <dt>{specs[symbol]!.name}</dt>
                  <dd>
                    {text.trim()} {unitLabel(unit)}
                    {doubt.trim() !== '' && ` ± ${doubt.trim()}`}
                  </dd>
                </div>
              );
            })}
          <div>
            <dt>{found.name}</dt>
            <dd>
              <strong>{result === '' || unread ? 'no answer' : result}</strong>
            </dd>
          </div>
        </dl>
      )}
    </section>
  );
}

function Typeset({ html }: { readonly html: string | undefined }) {
  return <div class="scrolls" tabIndex={0} dangerouslySetInnerHTML={{ __html: html ?? '' }} />;
}
