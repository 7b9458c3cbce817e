import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Formula, SymbolSpec } from '../../calculators/core/formula.ts';
import { printNumber, printQuantity, printWithSpread } from '../../calculators/core/print.ts';
import { rearrange, solve } from '../../calculators/core/solve.ts';
import type { Spread } from '../../calculators/core/spread.ts';
import { substituted } from '../../calculators/core/typeset.ts';
import { fromSI, toSI, type UnitSymbol } from '../../calculators/core/units.ts';
import {
  entryFor,
  entryFromLink,
  entryOf,
  fromFragment,
  homeUnit,
  readEntry,
  toFragment,
  type Entry,
} from './entries.ts';
import { Field, sentence, UnitChoice } from './field.tsx';
import { Sign } from './sign.tsx';

export interface CalculatorProps {
  /** Unique on the page; the fragment of a shared link begins with it. */
  readonly id: string;
  readonly formula: Formula;
  /** Written quantities the calculator starts with and returns to. */
  readonly start: Readonly<Record<string, string>>;
  readonly find: string;
  /** The equation typeset as HTML, as stated (under '') and rearranged for each symbol that can be. */
  readonly typeset: Readonly<Record<string, string>>;
}

interface State {
  readonly find: string;
  readonly entries: Readonly<Record<string, Entry>>;
  readonly withSpread: boolean;
}

const raised = (text: string): string =>
  text.replace(/\^([0-9])(?![\d.])/g, (_, digit: string) => '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(digit)]!);
const signOf = (spec: SymbolSpec, symbol: string): string => spec.sign ?? symbol;

export function Calculator({ id, formula, start, find: sought, typeset }: CalculatorProps) {
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
  const touched = useRef(false);
  const kept = useRef<Record<string, { value: number; spread: number }>>({});
  const [said, setSaid] = useState('');

  const change = (next: Partial<State>): void => {
    touched.current = true;
    setState((now) => ({ ...now, ...next }));
  };

  useEffect(() => {
    const follow = (): void => {
      const shared = fromFragment(location.hash, id);
      if (!shared) return;
      const wanted = shared['find'];
      setState({
        find: wanted !== undefined && variables.includes(wanted) ? wanted : sought,
        entries: Object.fromEntries(
          variables.map((symbol) => {
            const text = shared[symbol];
            const home = example.entries[symbol]!;
            return [
              symbol,
              text === undefined ? home : entryFromLink(text, specs[symbol]!, homeUnit(specs[symbol]!)),
            ];
          }),
        ),
        withSpread: Object.values(shared).some((text) => text.includes('±')),
      });
    };
    follow();
    addEventListener('hashchange', follow);
    return () => removeEventListener('hashchange', follow);
  }, []);

  useEffect(() => {
    if (!touched.current) return undefined;
    const wait = setTimeout(
      () => history.replaceState(history.state, '', `#${toFragment(id, find, entries)}`),
      400,
    );
    return () => clearTimeout(wait);
  }, [find, entries]);

  // The last number that could be read stands in for one that cannot, so the answer stays, greyed.
  const readings = Object.fromEntries(
    variables.map((symbol) => [symbol, readEntry(entries[symbol]!, specs[symbol]!)]),
  );
  const given: Record<string, number> = {};
  const widths: Record<string, number> = {};
  let stale = false;
  for (const symbol of variables) {
    if (symbol === find) continue;
    const reading = readings[symbol]!;
    if (reading.ok) kept.current[symbol] = { value: reading.value, spread: reading.spread ?? 0 };
    else stale = true;
    const last = kept.current[symbol];
    if (!last) continue;
    given[symbol] = last.value;
    if (last.spread > 0) widths[symbol] = last.spread;
  }
  const solved = solve(formula, given, find);
  const uncertain = Object.keys(widths).length > 0;

  const asked = JSON.stringify([find, given, widths]);
  const [answer, setAnswer] = useState<{ asked: string; spread: Spread | undefined }>();
  useEffect(() => {
    if (!uncertain || !solved.ok) return undefined;
    let wanted = true;
    const wait = setTimeout(async () => {
      const { formulaSpread } = await import('../../calculators/core/spread.ts');
      if (wanted) setAnswer({ asked, spread: formulaSpread(formula, given, widths, find) });
    }, 120);
    return () => {
      wanted = false;
      clearTimeout(wait);
    };
  }, [asked]);
  const spread = uncertain && answer?.asked === asked ? answer.spread : undefined;

  const found = specs[find]!;
  const shown = entries[find]!.unit;
  const print = (value: number): string =>
    spread ? printWithSpread(value, shown, [spread.low, spread.high]) : printQuantity(value, shown);
  const result = solved.ok ? print(solved.value) : '';
  const spoken = solved.ok ? `${found.name}: ${result}` : `No answer. ${solved.reason}`;

  // Spoken once typing rests, and only after the reader has changed something.
  useEffect(() => {
    if (!touched.current) return undefined;
    const wait = setTimeout(() => setSaid(spoken), 700);
    return () => clearTimeout(wait);
  }, [spoken]);

  const seek = (symbol: string): void => {
    const moved = solved.ok ? { ...entries, [find]: entryFor(solved.value, shown, 4) } : entries;
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
  const others = solved.ok ? solved.roots.filter((root) => root !== solved.value) : [];
  const notes = solved.warnings.filter((warning) => warning.symbol === find);
  const largest = spread?.shares[0];

  return (
    <section class="calculator" aria-label={`Calculator: ${formula.title}`}>
      <div class="seek">
        <label for={`${id}-find`}>Find</label>
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
      </div>

      <div class="fields">
        {variables
          .filter((symbol) => symbol !== find)
          .map((symbol) => {
            const spec = specs[symbol]!;
            const about = solved.warnings.filter((warning) => warning.symbol === symbol);
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
                onChange={(entry) =>
                  entry !== entries[symbol] &&
                  change({
                    entries: { ...entries, [symbol]: entry },
                    withSpread: withSpread || entry.spread !== '',
                  })
                }
              />
            );
          })}
      </div>
      {constants.length > 0 && (
        <p class="constants">
          {constants.map(([symbol, spec], at) => (
            <>
              {at > 0 && ', '}
              <Sign text={signOf(spec, symbol)} /> ={' '}
              {printQuantity(toSI(spec.constant!, spec.unit), spec.unit, { figures: 6 })}
            </>
          ))}
        </p>
      )}

      <div class="result" data-stale={stale}>
        <div class="answer">
          <output
            for={variables
              .filter((symbol) => symbol !== find)
              .map((symbol) => `${id}-${symbol}`)
              .join(' ')}
          >
            <Sign text={signOf(found, find)} /> {solved.ok ? `= ${result}` : 'has no answer'}
          </output>
          <UnitChoice
            name={found.name}
            of={found.unit}
            value={shown}
            onChange={(unit: UnitSymbol) =>
              change({ entries: { ...entries, [find]: { ...entries[find]!, unit } } })
            }
          />
        </div>
        <div class="says">
          {stale && <p>From the last numbers that could be read.</p>}
          {!solved.ok && <p class="wrong">{sentence(solved.reason)}</p>}
          {notes.map(({ message }) => (
            <p class="warning">{sentence(message)}</p>
          ))}
          {others.length > 0 && (
            <p class="warning">The equation also holds at {others.map(print).join(' and ')}.</p>
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
        <Working
          formula={formula}
          find={find}
          given={given}
          result={result}
          typeset={typeset}
          shown={shown}
        />
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
          disabled={!solved.ok}
          onClick={() => copy(`${signOf(found, find)} = ${result} (${formula.title})`, 'Result')}
        >
          Copy result
        </button>
        <button
          type="button"
          onClick={() => copy(`${location.href.replace(/#.*/, '')}#${toFragment(id, find, entries)}`, 'Link')}
        >
          Copy link
        </button>
        <button type="button" onClick={() => change(example)}>
          Reset
        </button>
      </p>
      <p class="status" role="status">
        {said}
      </p>
    </section>
  );
}

function Working(props: {
  readonly formula: Formula;
  readonly find: string;
  readonly given: Readonly<Record<string, number>>;
  readonly result: string;
  readonly typeset: Readonly<Record<string, string>>;
  readonly shown: UnitSymbol;
}) {
  const { formula, find, given, result, typeset } = props;
  const specs = formula.symbols as Readonly<Record<string, SymbolSpec>>;
  const equation = rearrange(formula, find);
  const number = (symbol: string): string => {
    const spec = specs[symbol]!;
    const value = spec.constant === undefined ? given[symbol] : toSI(spec.constant, spec.unit);
    if (value === undefined) return signOf(spec, symbol);
    const text = printNumber(formula.empirical === true ? fromSI(value, spec.unit) : value, { figures: 4 });
    return text.startsWith('−') || text.includes('×') ? `(${text})` : text;
  };
  const html = (text: string) => <div class="scrolls" dangerouslySetInnerHTML={{ __html: text }} />;
  const stated = typeset[''] ?? '';
  const turned = typeset[find] ?? '';
  return (
    <ol class="steps">
      <li>The equation.{html(stated)}</li>
      {equation ? (
        <>
          {turned !== stated && turned !== '' && <li>Rearranged.{html(turned)}</li>}
          <li>
            With the numbers in, {formula.empirical === true ? 'in the units of the equation' : 'in SI units'}
            .
            <p class="numbers scrolls" tabIndex={0}>
              <Sign text={signOf(specs[find]!, find)} /> = {raised(substituted(equation.right, number))}
            </p>
          </li>
        </>
      ) : (
        <li>It cannot be turned round for this symbol, so values are tried until both sides agree.</li>
      )}
      {result !== '' && (
        <li>
          <Sign text={signOf(specs[find]!, find)} /> = {result}
        </li>
      )}
    </ol>
  );
}
