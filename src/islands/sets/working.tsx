import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Library } from '../../../calculators/exercises/answer.ts';
import {
  pack,
  receive,
  shortHandIn,
  withSum,
  writeHandIn,
  type Given,
  type HandIn,
} from '../../../calculators/exercises/sets/hand-in.ts';
import { learnerKey, plainName, variantFor } from '../../../calculators/exercises/sets/learner.ts';
import {
  isBlank,
  markerFor,
  type MarkedHandIn,
} from '../../../calculators/exercises/sets/marking-hand-ins.ts';
import type { GradedSet } from '../../../calculators/exercises/sets/set-file.ts';
import { deflate, inflate } from '../../platform/deflate.ts';
import { seal } from '../../platform/seal.ts';
import { copyText, fileName, saveFile } from './carrying.ts';
import { useClock } from './clock.ts';
import { Honest } from './honest.tsx';
import { photographFrom } from './photograph.ts';
import { Question } from './question.tsx';
import {
  full,
  keepLearner,
  lastLearner,
  loadWork,
  readWork,
  savePhoto,
  saveWork,
  storedWork,
  withTheirs,
  workKey,
  type Work,
} from './shelf.ts';

export interface Open {
  readonly set: GradedSet;
  readonly library: Library;
}

/** A set that is open: who works on it, then its sheet. */
export function Working({ set, library, version }: Open & { readonly version: string }) {
  const [typed, setTyped] = useState(() => lastLearner(set.hash));
  const [name, setName] = useState('');
  const [unsigned, setUnsigned] = useState(false);
  const { rules } = set;
  const dates = [
    ...(rules.opens === undefined ? [] : [`opens ${rules.opens}`]),
    ...(rules.closes === undefined ? [] : [`closes ${rules.closes}`]),
  ];
  const begin = (): void => {
    const plain = plainName(typed);
    setUnsigned(plain === '');
    if (plain === '') return;
    keepLearner(set.hash, plain);
    setName(plain);
  };
  return (
    <>
      <header class="set-head">
        <h2>
          <bdi>{set.title}</bdi>
        </h2>
        <p class="soft">
          {set.questions.length} {set.questions.length === 1 ? 'question' : 'questions'}, {set.marks}{' '}
          {set.marks === 1 ? 'mark' : 'marks'}, edition {set.edition}
          {dates.length > 0 && `, ${dates.join(', ')} (advice: nothing here can hold you to it)`}
        </p>
        {set.note !== undefined && set.note.split(/\n\s*\n/).map((text) => <p key={text}>{text}</p>)}
        <p>
          {rules.numbers === 'own'
            ? 'The numbers are your own: they follow from what you write below, the same on every device.'
            : 'Everybody has the same numbers.'}{' '}
          {rules.feedback === 'at-once'
            ? 'You may check each answer as you go.'
            : rules.feedback === 'after'
              ? 'You see how you did once you have handed in.'
              : 'Your instructor tells you how you did.'}{' '}
          Of several hand-ins the {rules.keep} one counts.
        </p>
        <Honest sealed={set.seal !== undefined} />
      </header>
      <form
        class="signing"
        method="dialog"
        onSubmit={(event) => {
          event.preventDefault();
          begin();
        }}
      >
        <label htmlFor="learner">{set.asks}</label>
        <div class="deeds">
          <input
            id="learner"
            type="text"
            autocomplete="off"
            maxLength={120}
            value={typed}
            onInput={({ currentTarget }) => setTyped(currentTarget.value)}
          />
          <button type="submit" class={name === '' ? 'first' : undefined}>
            {name === '' ? 'Begin' : 'Change'}
          </button>
        </div>
        <div role="alert">{unsigned && <p class="problem">Fill in the line above first.</p>}</div>
        <p class="soft">Nothing else is asked about you. It stays on this device until you hand in.</p>
        <p role="status" class="unseen">
          {name !== '' && `The questions for ${name} follow.`}
        </p>
      </form>
      {name !== '' && (
        <Sheet key={learnerKey(name)} set={set} library={library} name={name} version={version} />
      )}
    </>
  );
}

interface SheetProps extends Open {
  readonly name: string;
  readonly version: string;
}

function Sheet({ set, library, name, version }: SheetProps) {
  const key = learnerKey(name);
  const [work, setWork] = useState<Work>(() => loadWork(set.hash, key) ?? { learner: name, answers: {} });
  const [problem, setProblem] = useState('');
  const [said, setSaid] = useState('');
  const [code, setCode] = useState('');
  const [checked, setChecked] = useState<readonly string[]>([]);
  const [result, setResult] = useState<MarkedHandIn>();
  const now = useRef(work);
  const mark = useMemo(() => markerFor(set, library), [set, library]);
  const variants = useMemo(
    () => set.questions.map((exercise) => variantFor(set, name, exercise)),
    [set, name],
  );

  /** False once the store had no room: then it is older than what stands here. */
  const kept = useRef(true);
  const change = (next: Work): void => {
    now.current = next;
    setWork(next);
    kept.current = saveWork(set.hash, key, next);
    setProblem(kept.current ? '' : full);
  };
  const changeOne = (id: string, given: Given): void => {
    const mine = { ...now.current, answers: { ...now.current.answers, [id]: given } };
    change(kept.current ? withTheirs(mine, storedWork(set.hash, key), id) : mine);
  };
  const answer = (id: string, given: Given): void => {
    changeOne(id, given);
    setChecked((ids) => ids.filter((one) => one !== id));
    setResult(undefined);
    setCode('');
  };
  useEffect(() => {
    const other = (event: StorageEvent): void => {
      if (event.key !== workKey(set.hash, key)) return;
      const theirs = readWork(event.newValue);
      if (!theirs) return;
      // The other tab has the newest answers; photographs stand apart.
      const whole = loadWork(set.hash, key) ?? theirs;
      now.current = whole;
      setWork(whole);
    };
    addEventListener('storage', other);
    return () => removeEventListener('storage', other);
  }, []);
  const turn = useClock((id, seconds) => {
    const given = now.current.answers[id] ?? {};
    changeOne(id, { ...given, seconds: Math.min(1_000_000, (given.seconds ?? 0) + seconds) });
  });

  const handIn = (): HandIn => {
    turn(undefined);
    const answers = Object.entries(now.current.answers).filter(([id]) =>
      set.questions.some((one) => one.id === id),
    );
    return withSum({
      format: 'warm-mould-hand-in',
      version: 1,
      set: { id: set.id, edition: set.edition, hash: set.hash },
      learner: name,
      library: version,
      handedIn: new Date().toISOString(),
      answers: Object.fromEntries(answers),
    });
  };
  const finish = async (): Promise<void> => {
    const sent = handIn();
    const text = writeHandIn(sent);
    const short = shortHandIn(sent, set);
    const sealed = set.seal;
    const file = sealed === undefined ? text : `${JSON.stringify(await seal(text, sent.set, sealed))}\n`;
    saveFile(`${fileName(set.title, name)}.json`, file);
    setCode(
      await pack(sealed === undefined ? short : JSON.stringify(await seal(short, sent.set, sealed)), deflate),
    );
    change({ ...now.current, handedIn: sent.handedIn });
    const marked = mark(sent);
    if (set.rules.feedback !== 'never') setResult(marked);
    if (/[&#]report=1/.test(location.hash) && window.parent !== window)
      window.parent.postMessage({ format: 'warm-mould-score', marks: marked.marks, of: marked.of }, '*');
    setSaid('Your hand-in is saved as a file. Send it to your instructor.');
  };
  const bringBack = async (file: File | undefined): Promise<void> => {
    if (!file) return;
    if (file.size > 16_000_000) return setProblem('That file is too large to be saved work.');
    const read = await receive(await file.text(), [set], { inflate });
    if (!read.ok) return setProblem(read.reason);
    if (learnerKey(read.handIn.learner) !== key) return setProblem('That file bears another name.');
    for (const [id, { photo }] of Object.entries(read.handIn.answers)) savePhoto(set.hash, key, id, photo);
    change({ learner: name, answers: read.handIn.answers });
    setSaid('Your saved work is back.');
  };
  const blank = set.questions.filter((exercise) => isBlank(exercise, work.answers[exercise.id] ?? {}));
  const after = result !== undefined && set.rules.feedback !== 'never';
  const atOnce = set.rules.feedback === 'at-once';
  const single = after || checked.length > 0 ? mark({ learner: name, answers: work.answers }) : undefined;

  return (
    <form
      method="dialog"
      onSubmit={(event) => event.preventDefault()}
      onFocusOut={(event) => {
        if (!(event.relatedTarget instanceof Node && event.currentTarget.contains(event.relatedTarget)))
          turn(undefined);
      }}
    >
      {set.questions.map((exercise, at) => {
        const given = work.answers[exercise.id] ?? {};
        const shown = after || (atOnce && checked.includes(exercise.id));
        return (
          <section
            key={exercise.id}
            class="set-question exercise"
            aria-labelledby={`q-${exercise.id}-title`}
            onFocusIn={() => turn(exercise.id)}
          >
            <Question
              set={set}
              number={at + 1}
              exercise={exercise}
              variant={variants[at]!}
              library={library}
              given={given}
              marked={shown ? single?.questions[at] : undefined}
              hints={set.rules.hints}
              worked={set.rules.worked && shown}
              change={(next, moved) => {
                answer(exercise.id, next);
                if (moved !== undefined) setSaid(moved);
              }}
            />
            <Extras
              id={exercise.id}
              given={given}
              change={(next) => answer(exercise.id, next)}
              photograph={(photo) => {
                if (!savePhoto(set.hash, key, exercise.id, photo)) setProblem(full);
              }}
              say={setProblem}
            />
            {atOnce && (
              <p class="deeds">
                <button type="button" onClick={() => setChecked([...checked, exercise.id])}>
                  Check
                </button>
              </p>
            )}
          </section>
        );
      })}
      <section class="handing-in" aria-labelledby="hand-in">
        <h2 id="hand-in">Hand in</h2>
        <p>
          {blank.length === 0
            ? 'Every question has an answer.'
            : `Not answered: ${blank.map((exercise) => set.questions.indexOf(exercise) + 1).join(', ')}.`}{' '}
          {work.handedIn !== undefined &&
            `Last handed in ${new Date(work.handedIn).toLocaleString('en-GB')}.`}
        </p>
        <p class="deeds">
          <button type="button" class="first" onClick={() => void finish()}>
            Hand in
          </button>
          <button
            type="button"
            onClick={() => {
              saveFile(`${fileName(set.title, name, 'work')}.json`, writeHandIn(handIn()));
              setSaid('Your work is saved as a file. It is not handed in.');
            }}
          >
            Save my work
          </button>
          <label class="press">
            <input
              type="file"
              class="unseen"
              accept=".json,application/json"
              onChange={({ currentTarget }) => {
                void bringBack(currentTarget.files?.[0]);
                currentTarget.value = '';
              }}
            />
            Bring my work back
          </label>
        </p>
        {code !== '' && (
          <div class="code">
            <label htmlFor="hand-in-code">The same as a code, without photographs</label>
            <textarea id="hand-in-code" readOnly rows={4} value={code} />
            <button
              type="button"
              onClick={() =>
                void copyText(code).then((done) =>
                  setSaid(done ? 'Code copied.' : 'Mark the code and copy it.'),
                )
              }
            >
              Copy the code
            </button>
          </div>
        )}
        {result && (
          <p class="outcome">
            {result.marks} of {result.of} marks
            {result.waiting > 0 && `, and ${result.waiting} more wait for your instructor`}. Your instructor’s
            count stands.
          </p>
        )}
      </section>
      <p role="status" class="said">
        {said}
      </p>
      <div role="alert">{problem !== '' && <p class="problem">{problem}</p>}</div>
    </form>
  );
}

interface ExtrasProps {
  readonly id: string;
  readonly given: Given;
  readonly change: (given: Given) => void;
  readonly photograph: (photo: Given['photo']) => void;
  readonly say: (problem: string) => void;
}

/** Working typed or photographed. */
function Extras({ id, given, change, photograph, say }: ExtrasProps) {
  const take = async (file: File | undefined): Promise<void> => {
    if (!file) return;
    const photo = await photographFrom(file);
    if (typeof photo === 'string') return say(photo);
    photograph(photo);
    change({ ...given, photo });
  };
  return (
    <details class="working">
      <summary>Your working</summary>
      <label htmlFor={`q-${id}-working`}>Lines with the numbers in</label>
      <textarea
        id={`q-${id}-working`}
        rows={4}
        maxLength={5000}
        value={given.working ?? ''}
        onInput={({ currentTarget: { value } }) => change({ ...given, working: value })}
      />
      <p class="deeds">
        <label class="press">
          <input
            type="file"
            class="unseen"
            accept="image/*"
            onChange={({ currentTarget }) => void take(currentTarget.files?.[0])}
          />
          {given.photo ? 'Another photograph' : 'Photograph'}
        </label>
        {given.photo && (
          <button
            type="button"
            onClick={() => {
              photograph(undefined);
              const { photo: _, ...rest } = given;
              change(rest);
            }}
          >
            Take it off
          </button>
        )}
      </p>
      {given.photo && (
        <p class="soft">
          A photograph of {Math.round((given.photo.bytes.length * 0.75) / 1000)} kB is attached.
        </p>
      )}
    </details>
  );
}
