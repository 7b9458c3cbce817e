import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { parseEquation } from '../../../calculators/core/expression.ts';
import type { Formula, SymbolSpec } from '../../../calculators/core/formula.ts';
import type { Check, Output, Step, Verdict } from '../../../calculators/core/model.ts';
import { printNumber, printQuantity, printWithSpread } from '../../../calculators/core/print.ts';
import { rearrange } from '../../../calculators/core/solve.ts';
import { substituted } from '../../../calculators/core/typeset.ts';
import { fromSI, toSI, type UnitSymbol } from '../../../calculators/core/units.ts';
import type { Outcome } from '../../workers/plan-outcome.ts';
import { sentence } from '../field.tsx';
import type { UnitOf } from '../form-entries.ts';
import { Raised } from '../raised.tsx';

/** A formula as the working needs it. */
export type Equation = Pick<Formula, 'id' | 'title' | 'equation' | 'empirical'> & {
  readonly symbols: Readonly<
    Record<string, Pick<SymbolSpec, 'name' | 'sign' | 'unit' | 'show' | 'constant' | 'stress'>>
  >;
};
export type Equations = Readonly<Record<string, Equation>>;

const shapes: Readonly<Record<Verdict, string>> = {
  holds: 'M3 10.5 8 15.5 17 4.5',
  close: 'M10 3 18 17H2Z',
  fails: 'M4 4 16 16M16 4 4 16',
};

const words: Readonly<Record<Verdict, string>> = { holds: 'holds', close: 'close', fails: 'fails' };

export function VerdictMark({ verdict }: { readonly verdict: Verdict }) {
  return (
    <span class="verdict" data-verdict={verdict}>
      <svg viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">
        <path
          d={shapes[verdict]}
          fill="none"
          stroke="currentColor"
          stroke-width="2.5"
          stroke-linejoin="round"
        />
      </svg>{' '}
      {words[verdict]}
    </span>
  );
}

/** One decision: the verdict, the number, the reason, what would have to change, and the working behind a press. */
export function Decision(props: WorkedProps & { readonly check: Check }) {
  const { check, outcome, nameOf } = props;
  const steps = outcome.result.steps.filter(({ id }) => check.steps?.includes(id));
  const main = outcome.result.steps.find(({ id, value }) => id === check.shows && value !== undefined);
  const spread = main && outcome.spreads[main.id];
  // What hangs on no number, as lead in the metal, is no matter of chance.
  const chance = check.levers.length > 0 ? outcome.chances[check.id] : undefined;
  const fails = check.verdict === 'fails';
  const changes = fails ? outcome.changes[check.id] : undefined;
  return (
    <>
      <VerdictMark verdict={check.verdict} />
      <h3>{check.title}</h3>
      <p class="number">
        {main && (
          <>
            <span class="what">{nameOf(main.id)}</span> <span class="amount">{amountOf(main, props)}</span>
          </>
        )}{' '}
        {chance !== undefined && <span class="chance">holds in {chanceText(chance)}</span>}
      </p>
      <p class="why">{sentence(check.why)}</p>
      {fails && (
        <div class="change">
          <p>What would have to change</p>
          {changes === undefined ? (
            <p class="waits">Being worked out.</p>
          ) : (
            <ul>
              {changes.map((text) => (
                <li>{sentence(text)}</li>
              ))}
            </ul>
          )}
        </div>
      )}
      {steps.length > 0 && (
        <Working of={check.title} steps={steps} {...props}>
          {spread && spread.main.length > 0 && (
            <p>
              Most of the spread of this number comes from{' '}
              {listed(spread.main.map((name) => nameOf(name).toLowerCase()))}.
            </p>
          )}
        </Working>
      )}
    </>
  );
}

export interface WorkedProps {
  readonly outcome: Outcome;
  readonly equations: Equations;
  /** Where cards stand: `/formulas/`. */
  readonly cards: string;
  readonly outputs: Readonly<Record<string, Output>>;
  /** The name of an input or of a number of the plan. */
  readonly nameOf: (name: string) => string;
  /** The unit the shop says a number in, from the one at home. */
  readonly saidIn: UnitOf;
  /** The outcome is the one in the page as it was built, with its working for readers without script. */
  readonly built: boolean;
}

const atBuild = typeof document === 'undefined';

function Working(
  props: WorkedProps & {
    readonly of: string;
    readonly steps: readonly Step[];
    readonly children?: ComponentChildren;
  },
) {
  const details = useRef<HTMLDetailsElement>(null);
  const [open, setOpen] = useState(false);
  // It may have been opened before the page woke.
  useEffect(() => setOpen(details.current?.open === true), []);
  const written = (): ComponentChildren => (
    <>
      <ol class="steps">
        {props.steps.map((step) => (
          <StepLine key={step.id} {...props} step={step} />
        ))}
      </ol>
      {props.children}
    </>
  );
  return (
    <details ref={details} class="working" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        Working<span class="unseen">: {props.of}</span>
      </summary>
      {open ? (
        <div key="open">{written()}</div>
      ) : (
        props.built &&
        (atBuild ? (
          <div key="built">{written()}</div>
        ) : (
          // What is in the page stays there as it is: to wake is then to touch a tenth as much.
          <div key="built" dangerouslySetInnerHTML={{ __html: '' }} />
        ))
      )}
    </details>
  );
}

/** A number that decides nothing by itself but is worked to: the charge, the length of the pattern. */
export function NumberRow(props: WorkedProps & { readonly name: string }) {
  const { name, outcome, nameOf } = props;
  const step = outcome.result.steps.find(({ id }) => id === name);
  if (step?.value === undefined) return <></>;
  return (
    <>
      <p class="number">
        <span class="what">{nameOf(name)}</span> <span class="amount">{amountOf(step, props)}</span>
      </p>
      <Working of={nameOf(name)} steps={[step]} {...props} />
    </>
  );
}

const listed = (items: readonly string[]): string =>
  items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;

/** `93 of 100`: never more certain than the samples are. */
export function chanceText(chance: number): string {
  const of = Math.round(100 * chance);
  if (of >= 100) return 'more than 99 of 100';
  return of <= 0 ? 'fewer than 1 of 100' : `${of} of 100`;
}

/** The unit of the bench: the plan's own for the number, else the formula's. */
function benchUnit(step: Step, output: Output | undefined, found: SymbolSpec | undefined): UnitSymbol {
  const plain = step.unit === 'Pa' ? 'kPa' : step.unit;
  return output?.show ?? found?.show ?? plain ?? output?.unit ?? '1';
}

function amountOf(
  step: Step,
  { outcome, equations, outputs, saidIn }: Pick<WorkedProps, 'outcome' | 'equations' | 'outputs' | 'saidIn'>,
): string {
  const output = outputs[step.id];
  const found = equations[step.formula ?? '']?.symbols[step.find ?? ''];
  const home = benchUnit(step, output, found);
  const spread = outcome.spreads[step.id];
  const written = (unit: UnitSymbol): string =>
    spread ? printWithSpread(step.value!, unit, [spread.low, spread.high]) : printQuantity(step.value!, unit);
  // The form asks for suction in kilopascals; many gauges show inches of mercury.
  return home === 'inHg' && saidIn('kPa') === 'kPa'
    ? `${written('kPa')}, ${printQuantity(step.value!, 'inHg')}`
    : written(saidIn(home, output ?? found));
}

const signOf = (spec: SymbolSpec | undefined, symbol: string): string =>
  (spec?.sign ?? symbol).replace(/_/g, ' ');

let equationsHere: Readonly<Record<string, string>> | undefined;

/** The equation of a formula as HTML. They stand in the page as a text, which costs nothing until it is read. */
function typeset(id: string): string {
  equationsHere ??= JSON.parse(document.getElementById('equations')?.textContent ?? '{}') as Readonly<
    Record<string, string>
  >;
  return equationsHere[id] ?? '';
}

function StepLine(props: WorkedProps & { readonly step: Step }) {
  const { step, cards, saidIn } = props;
  const equation = props.equations[step.formula ?? ''];
  const [html, setHtml] = useState('');
  useEffect(() => {
    if (equation) setHtml(typeset(equation.id));
  }, [equation?.id]);
  const specs = (equation?.symbols ?? {}) as Readonly<Record<string, SymbolSpec>>;
  const find = step.find ?? '';
  const given = step.given ?? {};
  const turned = equation && step.find !== undefined ? rearrange(equation as Formula, find) : undefined;
  const number = (symbol: string): string => {
    const spec = specs[symbol];
    const value = spec?.constant === undefined ? given[symbol] : toSI(spec.constant, spec.unit);
    if (value === undefined) return signOf(spec, symbol);
    const text = printNumber(equation?.empirical === true && spec ? fromSI(value, spec.unit) : value, {
      figures: 4,
    });
    return text.startsWith('−') || text.includes('×') ? `(${text})` : text;
  };
  const sign = (symbol: string): string => signOf(specs[symbol], symbol);
  return (
    <li>
      {equation ? <a href={`${cards}${equation.id}/`}>{step.title}</a> : step.title}
      {equation &&
        (html === '' ? (
          <p class="numbers scrolls" tabIndex={0}>
            <Raised text={plainEquation(equation, sign)} />
          </p>
        ) : (
          <div
            class="scrolls"
            tabIndex={0}
            role="group"
            aria-label="Equation"
            dangerouslySetInnerHTML={{ __html: html }}
          />
        ))}
      {turned && (
        <p class="numbers scrolls" tabIndex={0}>
          {sign(find)} = <Raised text={substituted(turned.right, number)} />
        </p>
      )}
      {equation && (
        <p class="given">
          {Object.entries(given)
            .filter(([symbol]) => symbol !== find && specs[symbol])
            .map(([symbol, value]) => {
              const spec = specs[symbol]!;
              return `${spec.name} ${printQuantity(value, saidIn(spec.show ?? spec.unit, spec))}`;
            })
            .join(', ')}
        </p>
      )}
      {step.value !== undefined && (
        <p class="comes">
          = <strong>{amountOf(step, props)}</strong>
        </p>
      )}
      {step.note !== undefined && <p>{sentence(step.note)}</p>}
    </li>
  );
}

function plainEquation({ equation }: Equation, sign: (symbol: string) => string): string {
  const { left, right } = parseEquation(equation);
  return `${substituted(left, sign)} = ${substituted(right, sign)}`;
}
