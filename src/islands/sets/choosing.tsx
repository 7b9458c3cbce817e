import { useState } from 'preact/hooks';
import type { Bank, Pick } from '../../../calculators/exercises/sets/building.ts';

/** What kinds and difficulties are called on the site. */
export interface Words {
  readonly kinds: Readonly<Record<string, string>>;
  readonly difficulties: Readonly<Record<string, string>>;
}

interface ChoosingProps {
  readonly bank: Bank;
  readonly words: Words;
  readonly picks: readonly Pick[];
  /** Where each exercise has its page. */
  readonly page: (id: string) => string;
  readonly add: (ids: readonly string[]) => void;
}

/** So many questions fit in a set, and so many are added at one press. */
const most = 60;
const atOnce = 20;

/** The exercises of the course, by unit, lesson, outcome, kind, difficulty, or a word of title, outcome or question. */
export function Choosing({ bank, words, picks, page, add }: ChoosingProps) {
  const [unit, setUnit] = useState('');
  const [lesson, setLesson] = useState('');
  const [outcome, setOutcome] = useState('');
  const [kind, setKind] = useState('');
  const [difficulty, setDifficulty] = useState('');
  const [word, setWord] = useState('');
  const units = [...new Set(bank.exercises.map((one) => one.unit))];
  const lessons = new Set(
    bank.exercises.filter((one) => unit === '' || one.unit === unit).map((one) => one.lesson),
  );
  /** The outcomes of the unit or lesson, or of all; each stands beside the lesson it belongs to. */
  const outcomes = new Map(
    bank.exercises
      .filter((one) => (unit === '' || one.unit === unit) && (lesson === '' || one.lesson === lesson))
      .map((one) => [one.outcome, `${one.outcome} (${one.lesson})`]),
  );
  const wanted = word.trim().toLowerCase();
  const found = bank.exercises.filter(
    ({ unit: of, lesson: taught, outcome: reached, exercise }) =>
      (unit === '' || of === unit) &&
      (lesson === '' || taught === lesson) &&
      (outcome === '' || reached === outcome) &&
      (kind === '' || exercise['kind'] === kind) &&
      (difficulty === '' || String(exercise['difficulty']) === difficulty) &&
      (wanted === '' ||
        `${String(exercise['title'])} ${reached} ${String(exercise['question'])}`
          .toLowerCase()
          .includes(wanted)),
  );
  const fresh = found.map(({ id }) => id).filter((id) => !picks.some((pick) => pick.id === id));
  const select = (
    id: string,
    label: string,
    value: string,
    set: (value: string) => void,
    options: readonly (readonly [string, string])[],
  ) => (
    <div>
      <label htmlFor={id}>{label}</label>
      <select id={id} value={value} onChange={({ currentTarget }) => set(currentTarget.value)}>
        <option value="">all</option>
        {options.map(([key, text]) => (
          <option key={key} value={key}>
            {text}
          </option>
        ))}
      </select>
    </div>
  );
  return (
    <section aria-labelledby="choosing">
      <h2 id="choosing">Choose exercises</h2>
      <div class="filters">
        {select(
          'by-unit',
          'Unit',
          unit,
          (one) => {
            setUnit(one);
            setLesson('');
            setOutcome('');
          },
          units.map((one) => [one, one] as const),
        )}
        {select(
          'by-lesson',
          'Lesson',
          lesson,
          (one) => {
            setLesson(one);
            setOutcome('');
          },
          [...lessons].map((one) => [one, one] as const),
        )}
        {select('by-outcome', 'Outcome', outcome, setOutcome, [...outcomes])}
        {select('by-kind', 'Kind', kind, setKind, Object.entries(words.kinds))}
        {select('by-difficulty', 'Difficulty', difficulty, setDifficulty, Object.entries(words.difficulties))}
        <div>
          <label htmlFor="by-word">Word</label>
          <input
            id="by-word"
            type="text"
            autocomplete="off"
            value={word}
            onInput={({ currentTarget }) => setWord(currentTarget.value)}
          />
        </div>
      </div>
      <p class="soft" role="status">
        {found.length} of {bank.exercises.length}. A title opens the exercise in a new tab.
      </p>
      <p>
        <a href="#picks">Past the list, to what is in the set</a>
      </p>
      {fresh.length > 1 && fresh.length <= Math.min(atOnce, most - picks.length) && (
        <p>
          <button
            type="button"
            onClick={() => {
              add(fresh);
              // The button goes with what it added.
              document.getElementById('picks')?.focus();
            }}
          >
            Add these {fresh.length}
          </button>
        </p>
      )}
      <ul class="rows choosable">
        {found.map(({ id, exercise, outcome: reached, lesson: taught }) => {
          const taken = picks.some((pick) => pick.id === id);
          const title = String(exercise['title']);
          return (
            <li key={id}>
              <span>
                <a href={page(id)} target="_blank">
                  {title}
                </a>
                <br />
                <span class="soft">
                  {words.kinds[String(exercise['kind'])]},{' '}
                  {words.difficulties[String(exercise['difficulty'])]}, {String(exercise['marks'])}{' '}
                  {exercise['marks'] === 1 ? 'mark' : 'marks'}. {taught}: {reached}
                </span>
              </span>
              <button
                type="button"
                aria-disabled={taken || picks.length >= most}
                aria-label={`${taken ? 'In it' : 'Add'} ${title}`}
                onClick={() => !taken && picks.length < most && add([id])}
              >
                {taken ? 'In it' : 'Add'}
              </button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
