import { useState } from 'preact/hooks';
import { checkVariant } from '../../../calculators/exercises/check.ts';
import { readExercise } from '../../../calculators/exercises/reading.ts';
import type { Bank, Pick } from '../../../calculators/exercises/sets/building.ts';
import type { SymbolSpec } from '../../../calculators/core/formula.ts';
import type { KeptFormula } from '../../../calculators/exercises/sets/set-file.ts';
import { drawVariant } from '../../../calculators/exercises/variants.ts';
import { fileName } from './carrying.ts';

interface OwnQuestionProps {
  readonly bank: Bank;
  readonly taken: readonly string[];
  readonly add: (pick: Pick) => void;
}

const source = { key: 'nist-sp811', at: '', how: 'common practice' } as const;

/** A question of the instructor's own: a formula with ranges and wording, or words to be marked by hand. */
export function OwnQuestion({ bank, taken, add }: OwnQuestionProps) {
  const [kind, setKind] = useState<'text' | 'number'>('text');
  const [title, setTitle] = useState('');
  const [question, setQuestion] = useState('');
  const [rubric, setRubric] = useState('');
  const [marks, setMarks] = useState('3');
  const [formulaId, setFormulaId] = useState('');
  const [find, setFind] = useState('');
  const [given, setGiven] = useState<Readonly<Record<string, string>>>({});
  const [mistake, setMistake] = useState('');
  const [mistakeSays, setMistakeSays] = useState('');
  const [problems, setProblems] = useState<readonly string[]>([]);
  const [said, setSaid] = useState('');
  const formula = Object.hasOwn(bank.formulas, formulaId) ? bank.formulas[formulaId] : undefined;
  const symbols = Object.entries<SymbolSpec>(formula?.symbols ?? {}).filter(
    ([, { constant }]) => constant === undefined,
  );
  const sought = find || symbols[0]?.[0] || '';

  /** What is not filled in yet, a sentence each. */
  const missing = (): string[] => {
    const number = Number(marks);
    const all: (readonly [boolean, string])[] = [
      [title.trim() === '', 'Give the question a title.'],
      [question.trim() === '', 'Write its wording.'],
      [
        !(Number.isInteger(number) && number >= 1 && number <= 100),
        'Marks are a whole number from 1 to 100.',
      ],
      [kind === 'text' && rubric.trim() === '', 'Say what you look for, one point a line.'],
      [kind === 'number' && !formula, 'Choose the formula that works it out.'],
      [mistake.trim() !== '' && mistakeSays.trim() === '', 'Write what to say to the wrong way.'],
    ];
    const open = symbols.filter(([name]) => name !== sought && (given[name] ?? '').trim() === '');
    return [
      ...all.flatMap(([is, says]) => (is ? [says] : [])),
      ...(kind === 'number' && open.length > 0
        ? [`Give a value for ${open.map(([, { name }]) => name).join('; ')}.`]
        : []),
    ];
  };
  const put = (): void => {
    setSaid('');
    const open = missing();
    if (open.length > 0) return setProblems(open);
    const base = {
      title: title.trim(),
      kind,
      outcome: `own-${fileName(title)}`,
      marks: Math.round(Number(marks)),
      difficulty: 1,
      question: question.trim(),
    };
    const ranges = Object.entries(given).filter(([name, text]) => name !== sought && text.trim() !== '');
    const data =
      kind === 'text'
        ? {
            ...base,
            rubric: rubric
              .split('\n')
              .map((row) => row.trim())
              .filter((row) => row !== ''),
          }
        : {
            ...base,
            formula: formulaId,
            find: sought,
            given: Object.fromEntries(ranges.map(([name, text]) => [name, spread(text)[0]!])),
            vary: Object.fromEntries(
              ranges.flatMap(([name, text]) => (spread(text).length > 1 ? [[name, spread(text)]] : [])),
            ),
            mistakes: mistake.trim() === '' ? [] : [{ equation: mistake.trim(), says: mistakeSays.trim() }],
          };
    let id = `own-${fileName(title)}`;
    while (taken.includes(id)) id = `${id}-2`;
    const found = faults(id, data, bank.formulas);
    setProblems(found);
    if (found.length > 0) return;
    add({ id, own: data, outcome: title.trim() });
    setSaid(`“${title.trim()}” is in the set.`);
    // Empty again, so that a second press does not put the same question in twice.
    for (const empty of [setTitle, setQuestion, setRubric, setMistake, setMistakeSays]) empty('');
    setGiven({});
  };

  return (
    <details class="own-question">
      <summary>A question of your own</summary>
      <form
        method="dialog"
        onSubmit={(event) => {
          event.preventDefault();
          put();
        }}
      >
        <div class="fields">
          <div>
            <label htmlFor="own-kind">Answered with</label>
            <select
              id="own-kind"
              value={kind}
              onChange={({ currentTarget }) => setKind(currentTarget.value as typeof kind)}
            >
              <option value="text">words, marked by you</option>
              <option value="number">a number, worked out by a formula</option>
            </select>
          </div>
          <div>
            <label htmlFor="own-title">Title</label>
            <input
              id="own-title"
              type="text"
              maxLength={100}
              autocomplete="off"
              value={title}
              onInput={({ currentTarget }) => setTitle(currentTarget.value)}
            />
          </div>
          <div>
            <label htmlFor="own-marks">Marks</label>
            <input
              id="own-marks"
              type="number"
              min={1}
              max={100}
              value={marks}
              onInput={({ currentTarget }) => setMarks(currentTarget.value)}
            />
          </div>
        </div>
        <label htmlFor="own-wording">Wording</label>
        <textarea
          id="own-wording"
          rows={3}
          maxLength={2000}
          value={question}
          onInput={({ currentTarget }) => setQuestion(currentTarget.value)}
        />
        {kind === 'text' ? (
          <>
            <label htmlFor="own-rubric">What you look for, one point a line</label>
            <textarea
              id="own-rubric"
              rows={3}
              value={rubric}
              onInput={({ currentTarget }) => setRubric(currentTarget.value)}
            />
          </>
        ) : (
          <>
            <p class="soft">A sign in curly brackets prints that number with its unit: {'{h}'}.</p>
            <div class="fields">
              <div>
                <label htmlFor="own-formula">Formula</label>
                <select
                  id="own-formula"
                  value={formulaId}
                  onChange={({ currentTarget }) => setFormulaId(currentTarget.value)}
                >
                  <option value="">choose</option>
                  {Object.entries(bank.formulas).map(([id, one]) => (
                    <option key={id} value={id}>
                      {one.title}
                    </option>
                  ))}
                </select>
              </div>
              {formula && (
                <div>
                  <label htmlFor="own-find">Asked for</label>
                  <select
                    id="own-find"
                    value={sought}
                    onChange={({ currentTarget }) => setFind(currentTarget.value)}
                  >
                    {symbols.map(([name, spec]) => (
                      <option key={name} value={name}>
                        {spec.name}
                      </option>
                    ))}
                  </select>
                </div>
              )}
            </div>
            {formula && (
              <div class="fields">
                {symbols
                  .filter(([name]) => name !== sought)
                  .map(([name, spec]) => (
                    <div key={name}>
                      <label htmlFor={`own-given-${name}`}>
                        {`{${name}}`} {spec.name}
                      </label>
                      <input
                        id={`own-given-${name}`}
                        type="text"
                        autocomplete="off"
                        placeholder={`one, or several with ;${unitWords(spec)}`}
                        value={given[name] ?? ''}
                        onInput={({ currentTarget }) => setGiven({ ...given, [name]: currentTarget.value })}
                      />
                    </div>
                  ))}
                <div>
                  <label htmlFor="own-mistake">A wrong way you expect, as an equation</label>
                  <input
                    id="own-mistake"
                    type="text"
                    autocomplete="off"
                    value={mistake}
                    onInput={({ currentTarget }) => setMistake(currentTarget.value)}
                  />
                </div>
                <div>
                  <label htmlFor="own-says">What to say to it</label>
                  <input
                    id="own-says"
                    type="text"
                    autocomplete="off"
                    value={mistakeSays}
                    onInput={({ currentTarget }) => setMistakeSays(currentTarget.value)}
                  />
                </div>
              </div>
            )}
          </>
        )}
        <div role="alert">
          {problems.map((text) => (
            <p class="problem" key={text}>
              {text}
            </p>
          ))}
        </div>
        <p class="deeds">
          <button type="submit">Put it in the set</button>
          <span role="status">{said}</span>
        </p>
      </form>
    </details>
  );
}

const unitWords = ({ show, unit }: SymbolSpec): string =>
  unit === '1' && !show ? '' : ` in ${show ?? unit}`;

/** `40 mm; 60 mm` is a list; one quantity is given to all. */
const spread = (text: string): string[] =>
  text
    .split(';')
    .map((one) => one.trim())
    .filter((one) => one !== '');

/** What is wrong with it, by the same checks the exercises of the course pass, for the numbers of some learners. */
function faults(id: string, data: object, formulas: Readonly<Record<string, KeptFormula>>): string[] {
  try {
    const exercise = readExercise(id, data, { leastMistakes: 0 });
    const library = {
      formula: (name: string) =>
        Object.hasOwn(formulas, name)
          ? { ...formulas[name]!, id: name, answers: '', assumes: [], examples: [], source }
          : undefined,
      model: () => undefined,
    };
    const all = Array.from({ length: 20 }, (_, at) =>
      checkVariant(exercise, drawVariant(exercise, String(at)), library),
    );
    return [...new Set(all.flat())];
  } catch (error) {
    return [error instanceof Error ? error.message.replace(/^exercise "[^"]*": /, '') : String(error)];
  }
}
