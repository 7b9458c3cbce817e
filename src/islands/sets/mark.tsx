import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Library } from '../../../calculators/exercises/answer.ts';
import {
  classRows,
  totals,
  type Marker,
  type Remark,
} from '../../../calculators/exercises/sets/class-table.ts';
import type { Separator } from '../../../calculators/exercises/sets/csv.ts';
import {
  emptyBook,
  readMarkBook,
  rosterFrom,
  withRemark,
  writeMarkBook,
  type MarkBook,
} from '../../../calculators/exercises/sets/mark-book.ts';
import { markerFor } from '../../../calculators/exercises/sets/marking-hand-ins.ts';
import {
  gradedSet,
  type GradedSet,
  type Rules,
  type SetFile,
} from '../../../calculators/exercises/sets/set-file.ts';
import { readKey, type KeyFile } from '../../platform/seal.ts';
import { fileName, saveFile, setFromLink, setFromText } from './carrying.ts';
import { Feedback } from './feedback.tsx';
import { codesIn, createMarking, pieceOf, type Kind, type Piece, type Run } from './marking-run.ts';
import { keepSet, keptFile, keptSets, loadBook, saveBook } from './shelf.ts';
import { ClassTable, TotalsTable } from './tables.tsx';
import { changedModels, workshopFor } from './workshop.ts';
import '../../styles/exercise.css';
import '../../styles/sets.css';

type AnalysisOf = typeof import('./analysis.tsx').Analysis;

interface Bench {
  readonly set: GradedSet;
  readonly library: Library;
  readonly marker: Marker;
}

/** Fetched when the first file of its kind is saved. */
const records = () => import('../../../calculators/exercises/sets/records.ts');

const empty: Run = { attempts: [], refused: [] };

/** Marks hand-ins by hundreds: every mark worked out here from the set. */
export function MarkSets({ bank }: { readonly bank: string }) {
  const [kept, setKept] = useState<readonly GradedSet[]>([]);
  const [benches, setBenches] = useState<readonly Bench[]>([]);
  const [pieces, setPieces] = useState<readonly Piece[]>([]);
  const [keys, setKeys] = useState<readonly KeyFile[]>([]);
  const [book, setBook] = useState<MarkBook>(emptyBook);
  const [run, setRun] = useState<Run>(empty);
  const [done, setDone] = useState<number>();
  const [problems, setProblems] = useState<readonly string[]>([]);
  const [said, setSaid] = useState('');
  const [awake, setAwake] = useState(false);
  const [separator, setSeparator] = useState<Separator>('comma');
  const [keep, setKeep] = useState<Rules['keep']>();
  const [over, setOver] = useState(false);
  const [pasted, setPasted] = useState('');
  const marking = useMemo(createMarking, []);
  useEffect(() => marking.close, []);
  const [Analysis, setAnalysis] = useState<AnalysisOf>();
  // What the class shows comes behind the table.
  useEffect(() => {
    if (run.attempts.length > 0 && !Analysis)
      void import('./analysis.tsx').then((found) => setAnalysis(() => found.Analysis));
  }, [run]);

  const addSet = async (file: SetFile): Promise<void> => {
    const set = gradedSet(file);
    const library = await workshopFor(set);
    const changed = changedModels(set, library);
    if (changed.length > 0)
      setProblems((now) => [
        ...now,
        `“${set.title}” asks ${changed.join(', ')}, which computes otherwise now than when the set was made. Look at those questions yourself.`,
      ]);
    setBenches((now) =>
      now.some((bench) => bench.set.hash === set.hash)
        ? now
        : [...now, { set, library, marker: markerFor(set, library) }],
    );
  };
  useEffect(() => {
    setKept(keptSets());
    setBook(loadBook());
    void setFromLink(location.hash, bank).then(async (found) => {
      if (found?.ok) await addSet(found.value);
      else if (found) setProblems([found.reason]);
      setAwake(true);
    });
  }, []);

  // Whatever comes in, everything is marked again from the files: order does not matter.
  useEffect(() => {
    if (benches.length === 0) return;
    const by = {
      sets: benches.map(({ set }) => set),
      markers: new Map(benches.map(({ set, marker }) => [set.hash, marker])),
      keys,
    };
    if (pieces.length === 0) return marking.prepare(by);
    const began = performance.now();
    setDone(0);
    void marking.run(pieces, by, setDone).then((all) => {
      if (!all) return;
      setRun(all);
      setDone(undefined);
      const seconds = (performance.now() - began) / 1000;
      setSaid(`${all.attempts.length} marked, ${all.refused.length} put aside, in ${seconds.toFixed(1)} s.`);
    });
  }, [pieces, benches, keys]);

  const remember = (next: MarkBook): void => {
    setBook(next);
    if (!saveBook(next))
      setProblems((now) => [...now, 'The mark book is not kept on this device. Save it as a file.']);
  };
  const remark = (one: Remark): void => remember({ ...book, remarks: withRemark(book.remarks, one) });

  /** Sets, keys, mark books and hand-ins may all be dropped together. */
  const take = async (files: Iterable<File>): Promise<void> => {
    const all = [...files];
    setProblems([]);
    const kinds = await marking.kinds(all);
    const handIns: Piece[] = [];
    for (const [at, file] of all.entries()) {
      const kind = kinds[at];
      if (kind === undefined) handIns.push(pieceOf(file));
      else await takeOne(kind, file);
    }
    if (handIns.length > 0) setPieces((now) => [...now, ...handIns]);
  };
  const takeOne = async (kind: Kind, file: File): Promise<void> => {
    const text = await file.text();
    const read = kind === 'set' ? setFromText(text) : kind === 'key' ? readKey(text) : readMarkBook(text);
    if (!read.ok) return setProblems((now) => [...now, `${file.name}: ${read.reason}`]);
    if (kind === 'set') {
      keepSet(read.value as SetFile);
      setKept(keptSets());
      await addSet(read.value as SetFile);
    } else if (kind === 'key') setKeys((now) => [...now, read.value as KeyFile]);
    else {
      remember(read.value as MarkBook);
      setSaid('The mark book is read.');
    }
  };

  const tables = useMemo(() => {
    const byId = Map.groupBy(benches, ({ set }) => set.id);
    return [...byId.values()].map((same) => {
      const newest = [...same].sort((a, b) => b.set.edition - a.set.edition)[0]!;
      const own = run.attempts.filter(({ set }) => set.id === newest.set.id);
      const rows = classRows(own, keep ?? newest.set.rules.keep, book.remarks, book.roster);
      return { ...newest, rows };
    });
  }, [benches, run, book, keep]);
  const files = useRef<HTMLInputElement>(null);
  const save = (what: string, ...file: Parameters<typeof saveFile>): void => {
    saveFile(...file);
    setSaid(`${what} is saved.`);
  };
  const libraries = new Map(benches.map(({ set, library }) => [set.hash, library]));

  return (
    <div class="sets marking" data-awake={awake} data-marking={done !== undefined}>
      <div role="alert">
        {problems.map((text) => (
          <p class="problem" key={text}>
            {text}
          </p>
        ))}
      </div>
      <section
        class="drop on-screen"
        data-over={over}
        aria-label="Files to mark"
        onDragOver={(event) => {
          event.preventDefault();
          setOver(true);
        }}
        onDragLeave={() => setOver(false)}
        onDrop={(event) => {
          event.preventDefault();
          setOver(false);
          void take([...(event.dataTransfer?.files ?? [])]);
        }}
      >
        <p>
          Drop hand-ins here, by hundreds if you like. The set, your key and your mark book may come along.
        </p>
        <p class="deeds">
          <label class="press">
            <input
              ref={files}
              type="file"
              multiple
              class="unseen"
              onChange={({ currentTarget }) => {
                void take([...(currentTarget.files ?? [])]);
                currentTarget.value = '';
              }}
            />
            Choose files
          </label>
          {kept
            .filter((set) => !benches.some((bench) => bench.set.hash === set.hash))
            .map((set) => (
              <button
                type="button"
                key={set.hash}
                onClick={() => {
                  // The button goes once the set is open.
                  files.current?.focus();
                  void addSet(keptFile(set.hash)!);
                }}
              >
                Mark by “<bdi>{set.title}</bdi>”, edition {set.edition}
              </button>
            ))}
        </p>
        <details>
          <summary>Paste codes</summary>
          <label htmlFor="codes">Codes, as they came in a message</label>
          <textarea
            id="codes"
            rows={4}
            value={pasted}
            onInput={({ currentTarget }) => setPasted(currentTarget.value)}
          />
          <button
            type="button"
            onClick={() => {
              const codes = codesIn(pasted);
              if (codes.length === 0) return setSaid('There is no code in that. A code begins with wm1-.');
              setPieces([...pieces, ...codes]);
              setPasted('');
              setSaid(`${codes.length} ${codes.length === 1 ? 'code' : 'codes'} read.`);
            }}
          >
            Mark the codes
          </button>
        </details>
        <details>
          <summary>Roster</summary>
          <label htmlFor="roster">One name a line, or the first column of a table</label>
          <textarea
            id="roster"
            rows={6}
            defaultValue={book.roster.join('\n')}
            onChange={({ currentTarget }) => remember({ ...book, roster: rosterFrom(currentTarget.value) })}
          />
        </details>
        <p class="soft" aria-live="polite">
          {benches.length === 0
            ? 'No set yet: open the file of the set, or choose one above.'
            : `By ${benches.map(({ set }) => `“${set.title}”, edition ${set.edition}`).join('; ')}.`}{' '}
          {pieces.length > 0 && `${pieces.length} ${pieces.length === 1 ? 'hand-in' : 'hand-ins'}.`}{' '}
          {keys.length > 0 && 'Key at hand.'}
        </p>
      </section>
      <p role="status" class="said">
        {done === undefined ? said : `Marking: ${done} of ${pieces.length}`}
      </p>
      {run.refused.length > 0 && (
        <section aria-labelledby="refused" class="on-screen">
          <h2 id="refused">Put aside</h2>
          <ul class="rows">
            {run.refused.map(({ source, why, reason }, at) => (
              <li key={at}>
                <span>
                  <strong>
                    <bdi>{source}</bdi>
                  </strong>{' '}
                  <em>{why}</em>. {reason}
                </span>
              </li>
            ))}
          </ul>
        </section>
      )}
      {run.attempts.length > 0 &&
        tables.map(({ set, rows }) => (
          <section key={set.id} aria-labelledby={`table-${set.id}`}>
            <h2 id={`table-${set.id}`}>
              <bdi>{set.title}</bdi>
            </h2>
            <div class="deeds on-screen">
              <label htmlFor={`keep-${set.id}`}>If handed in twice, count</label>
              <select
                id={`keep-${set.id}`}
                value={keep ?? set.rules.keep}
                onChange={({ currentTarget }) => setKeep(currentTarget.value as Rules['keep'])}
              >
                <option value="first">the first</option>
                <option value="last">the last</option>
                <option value="best">the best</option>
              </select>
              <label htmlFor={`separator-${set.id}`}>Table with</label>
              <select
                id={`separator-${set.id}`}
                value={separator}
                onChange={({ currentTarget }) => setSeparator(currentTarget.value as Separator)}
              >
                <option value="comma">commas</option>
                <option value="semicolon">semicolons</option>
                <option value="tab">tabs</option>
              </select>
              <button
                type="button"
                onClick={() =>
                  void import('../../../calculators/exercises/sets/csv.ts').then(({ classCsv }) =>
                    save(
                      'The table',
                      `${fileName(set.title)}.csv`,
                      classCsv(set, rows, book.remarks, separator),
                      'text/csv',
                    ),
                  )
                }
              >
                Save table
              </button>
              <button
                type="button"
                onClick={() =>
                  void records().then(({ resultsJson }) =>
                    save(
                      'The file of results',
                      `${fileName(set.title, 'results')}.json`,
                      resultsJson(set, rows, run.refused, book.remarks),
                    ),
                  )
                }
              >
                Save results
              </button>
              <button
                type="button"
                onClick={() =>
                  void records().then(({ xapiStatements }) =>
                    save(
                      'The xAPI file',
                      `${fileName(set.title, 'xapi')}.json`,
                      xapiStatements(rows, book.remarks, location.origin),
                    ),
                  )
                }
              >
                Save xAPI
              </button>
              <button
                type="button"
                onClick={() => save('The mark book', 'mark-book.json', writeMarkBook(book))}
              >
                Save mark book
              </button>
            </div>
            <ClassTable set={set} rows={rows} remarks={book.remarks} libraries={libraries} remark={remark} />
            {Analysis && <Analysis set={set} rows={rows} remarks={book.remarks} />}
            <Feedback rows={rows} remarks={book.remarks} libraries={libraries} />
          </section>
        ))}
      {tables.length > 1 && run.attempts.length > 0 && (
        <TotalsTable sets={tables.map(({ set }) => set)} totals={totals(tables, book.remarks)} />
      )}
    </div>
  );
}
