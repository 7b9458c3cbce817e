import { useEffect, useRef, useState } from 'preact/hooks';
import { mergePours, settled, type Conflict } from '../../../calculators/pour-log/merge.ts';
import { readLog, writeLog, type Pour } from '../../../calculators/pour-log/record.ts';
import type { DayDraft } from '../day/draft.ts';
import { fromFragment } from '../fragment.ts';
import { loadShelf, saveShelf, withOpen } from '../plan/store.ts';
import { keepPours, newMark, onOtherTab, readKept } from './keep.ts';
import type { BookValues } from './learned.tsx';
import '../../styles/log.css';

export interface LogProps {
  /** Where the materials' numbers are fetched from when a plan is taken. */
  readonly books: string;
  readonly book: BookValues;
  /** Names of defects to choose from. */
  readonly defects: readonly { readonly id: string; readonly name: string }[];
}

const download = (text: string, name: string, type: string): void => {
  const url = URL.createObjectURL(new Blob([text], { type }));
  const anchor = document.createElement('a');
  anchor.href = url;
  anchor.download = name;
  anchor.click();
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
};

const byDay = (a: Pour, b: Pour): number => (a.day < b.day ? 1 : a.day > b.day ? -1 : 0);

const sides = {
  file: {
    here: { name: 'On this device', press: 'Keep this device’s' },
    there: { name: 'In the file', press: 'Take the file’s' },
  },
  tab: {
    here: { name: 'In the other tab', press: 'Keep the other tab’s' },
    there: { name: 'As you wrote it', press: 'Take what you wrote' },
  },
} as const;

/** The pours on this device: written down, learned from, carried away and brought back. */
export function PourLog({ book, defects, books }: LogProps) {
  const [pours, setPours] = useState<readonly Pour[]>([]);
  const [awake, setAwake] = useState(false);
  const [problems, setProblems] = useState<readonly string[]>([]);
  const [said, setSaid] = useState('');
  const [conflicts, setConflicts] = useState<readonly (Conflict & { readonly from: 'file' | 'tab' })[]>([]);
  // What the device would not take, for want of room: shown, kept in hand, and tried again with the next change.
  const unkept = useRef<readonly Pour[]>([]);
  const [waiting, setWaiting] = useState(0);
  const [editing, setEditing] = useState<Pour | 'new'>();
  const [draft, setDraft] = useState<DayDraft>();
  const [undo, setUndo] = useState<Pour>();
  // The form and the fits are fetched when there is something to write or to learn from.
  const [forms, setForms] = useState<typeof import('./form.tsx')>();
  const [fits, setFits] = useState<typeof import('./learned.tsx')>();
  const now = useRef(pours);
  now.current = pours;

  const load = async (): Promise<readonly Pour[]> => {
    const kept = await readKept();
    setPours(mergePours(kept.pours, unkept.current).pours);
    if (kept.problem !== undefined) setProblems([kept.problem]);
    return kept.pours;
  };
  /** Someone came from a pour day: its notes and photos are put into the form, to be kept or not. */
  const takeDay = async (kept: readonly Pour[]): Promise<void> => {
    const plan = fromFragment(location.hash, 'day')?.['plan'];
    if (plan === undefined) return;
    const { draftOf, withDraft } = await import('../day/draft.ts');
    const day = await draftOf(plan);
    const before = kept.find(({ id }) => id === day.id);
    setDraft(day);
    setEditing(before ? withDraft(before, day) : 'new');
  };
  const close = (): void => {
    setEditing(undefined);
    setDraft(undefined);
    if (fromFragment(location.hash, 'day')) history.replaceState(history.state, '', location.pathname);
  };
  useEffect(() => {
    void load().then(async (kept) => {
      await takeDay(kept);
      setAwake(true);
    });
    return onOtherTab(() => void load());
  }, []);

  useEffect(() => {
    if (editing !== undefined && !forms) void import('./form.tsx').then(setForms);
  }, [editing]);
  // Who comes from a pour day comes for the form.
  useEffect(() => {
    if (forms && draft) document.querySelector('.pour-form')?.scrollIntoView({ block: 'start' });
  }, [forms, draft]);
  useEffect(() => {
    if (pours.length > 0 && !fits) void import('./learned.tsx').then(setFits);
  }, [pours.length]);

  useEffect(() => {
    if (waiting === 0) return undefined;
    const warn = (event: BeforeUnloadEvent): void => event.preventDefault();
    addEventListener('beforeunload', warn);
    return () => removeEventListener('beforeunload', warn);
  }, [waiting]);

  /** Shows first, keeps next, and says then that it is kept, that it is not, or was changed in another tab meanwhile. */
  async function keep(put: readonly Pour[], message: string, remove: readonly Pour[] = []): Promise<void> {
    const ids = new Set([...put, ...remove].map(({ id }) => id));
    setPours([...now.current.filter(({ id }) => !ids.has(id)), ...put].sort(byDay));
    setSaid('');
    const all = [...unkept.current.filter(({ id }) => !ids.has(id)), ...put];
    const kept = await keepPours(all, remove);
    if (kept.problem === undefined) setSaid(message);
    unkept.current = kept.problem === undefined ? [] : all;
    setWaiting(unkept.current.length);
    setProblems(kept.problem === undefined ? [] : [kept.problem]);
    if (kept.conflicts.length > 0)
      setConflicts((before) => [
        ...before,
        ...kept.conflicts.map((one) => ({ ...one, from: 'tab' as const })),
      ]);
    if (kept.stayed.length > 0)
      setSaid(
        `“${kept.stayed[0]!.plan.name}” was changed in another tab meanwhile, so it stays. Look at it, then take it away again.`,
      );
    if (kept.conflicts.length + kept.stayed.length + kept.older > 0) await load();
  }

  async function bring(there: readonly Pour[]): Promise<void> {
    const merged = mergePours(now.current, there);
    const before = new Map(now.current.map((pour) => [pour.id, pour]));
    const put = merged.pours.filter((pour) => before.get(pour.id) !== pour);
    await keep(
      put,
      `${merged.added} new, ${merged.renewed} brought up to date, ${merged.conflicts.length} to decide.`,
    );
    setConflicts(merged.conflicts.map((one) => ({ ...one, from: 'file' as const })));
  }

  async function read(file: File): Promise<void> {
    if (file.size > 60_000_000) {
      setProblems([`“${file.name}” is far larger than a pour log.`]);
      return;
    }
    const found = readLog(await file.text());
    await bring(found.pours);
    if (found.problems.length > 0) setProblems(found.problems);
  }

  /** Accepted by the reader: the number goes into the plan that is open, where it can be changed back. */
  function useOwn(texts: Readonly<Record<string, string>>, what: string, metal?: string): void {
    const { shelf } = loadShelf({ name: 'Lamp shield', texts: {} });
    const plan = shelf.plans[shelf.open]!;
    const its = typeof plan.texts['metal'] === 'string' ? plan.texts['metal'] : 'silicon-bronze';
    if (metal !== undefined && metal !== its) {
      setSaid(`“${plan.name}” is of another metal, so ${what} does not hold for it. Nothing is changed.`);
      return;
    }
    const problem = saveShelf(withOpen(shelf, { ...plan, texts: { ...plan.texts, ...texts } }));
    setSaid(
      problem ??
        `“${plan.name}” now reckons with ${what}, ${Object.values(texts).join(', ')}. The plan shows the book’s beside it; empty its field there to go back.`,
    );
  }

  const invented = pours.filter((pour) => pour.invented);
  const own = pours.filter((pour) => !pour.invented);
  const day = new Date().toISOString().slice(0, 10);
  return (
    <div class="log" data-awake={awake}>
      {problems.length > 0 && (
        <div class="problems on-screen" role="alert">
          {problems.map((text) => (
            <p>{text}</p>
          ))}
          {waiting > 0 && (
            <button type="button" onClick={() => void keep([], 'Tried again.')}>
              Try again
            </button>
          )}
        </div>
      )}
      <div class="row on-screen">
        <button type="button" class="first" onClick={() => setEditing('new')}>
          Write down a pour
        </button>
        <button
          type="button"
          onClick={() => download(writeLog(pours), `pours-${day}.json`, 'application/json')}
        >
          Export
        </button>
        <button
          type="button"
          onClick={() =>
            void import('../../../calculators/pour-log/csv.ts').then(({ writeCsv }) =>
              download(writeCsv(pours), `pours-${day}.csv`, 'text/csv'),
            )
          }
        >
          Export as a table
        </button>
        <label class="press">
          <input
            type="file"
            class="unseen"
            accept=".json,application/json"
            onChange={(event) => {
              const file = event.currentTarget.files?.[0];
              if (file) void read(file);
              event.currentTarget.value = '';
            }}
          />
          Bring in a log
        </label>
        <button type="button" onClick={() => window.print()}>
          Print
        </button>
        {invented.length > 0 ? (
          <button type="button" onClick={() => void keep([], 'The invented pours are taken away.', invented)}>
            Take the mill’s log away
          </button>
        ) : (
          own.length === 0 && (
            <button
              type="button"
              onClick={() =>
                void import('../../../calculators/pour-log/demo.ts').then(({ demoLog }) =>
                  keep(demoLog(), 'The log of the mill is here: invented, to show what a log gives.'),
                )
              }
            >
              Show the mill’s log
            </button>
          )
        )}
      </div>
      <p class="said on-screen">
        <span role="status">{said}</span>
        {undo && (
          <button
            type="button"
            onClick={() => {
              void keep([undo], 'Undone.');
              setUndo(undefined);
            }}
          >
            Undo
          </button>
        )}
      </p>

      {conflicts.map((conflict) => (
        <section class="conflict" role="group" aria-label="Two copies of one pour">
          <p>
            “{conflict.here.plan.name}” of {conflict.here.day} was changed{' '}
            {conflict.from === 'file' ? 'here and in the file' : 'in another tab while you wrote'}. Which
            stands?
          </p>
          <dl>
            {(['here', 'there'] as const).map((side) => (
              <div>
                <dt>{sides[conflict.from][side].name}</dt>
                <dd>{fits?.lineOf(conflict[side])}</dd>
                <button
                  type="button"
                  onClick={() => {
                    void keep([settled(conflict, side, newMark())], 'Decided.');
                    setConflicts(conflicts.filter((other) => other !== conflict));
                  }}
                >
                  {sides[conflict.from][side].press}
                </button>
              </div>
            ))}
          </dl>
        </section>
      ))}

      {editing !== undefined && forms && (
        <forms.PourForm
          key={editing === 'new' ? 'new' : editing.id}
          pour={editing === 'new' ? undefined : editing}
          draft={editing === 'new' ? draft : undefined}
          defects={defects}
          books={books}
          onClose={close}
          onKeep={(pour) => {
            close();
            void keep([pour], `“${pour.plan.name}” of ${pour.day} is kept.`);
          }}
        />
      )}

      <section aria-labelledby="learned">
        <h2 id="learned">What do your pours teach?</h2>
        {own.length === 0 && invented.length > 0 && (
          <p>
            <strong>Invented:</strong> these numbers come from the made-up log of the mill.
          </p>
        )}
        {pours.length === 0 && (
          <p>Nothing yet. Three weighed pours give your losses, three timed sections your mould constant.</p>
        )}
        {pours.length > 0 && fits && (
          <fits.Learned pours={own.length > 0 ? own : invented} book={book} onUse={useOwn} />
        )}
      </section>

      <section aria-labelledby="pours">
        <h2 id="pours">What was poured?</h2>
        {pours.length === 0 && (
          <p>Nothing yet. Write down what you pour, the failures first: they teach most.</p>
        )}
        <ul class="pours">
          {pours.map((pour) => (
            <li>
              <p>
                <strong>{pour.plan.name}</strong>, {pour.day}
                {pour.invented && ', invented'}. {fits?.lineOf(pour)}
              </p>
              {pour.found.photos.map((photo, n) => (
                <img src={photo} alt={`View ${n + 1} of “${pour.plan.name}”`} width="160" />
              ))}
              <p class="row on-screen">
                <button type="button" onClick={() => setEditing(pour)}>
                  Change
                  <span class="unseen">
                    {' '}
                    “{pour.plan.name}” of {pour.day}
                  </span>
                </button>
                <button
                  type="button"
                  onClick={() => {
                    setUndo(pour);
                    void keep([], `“${pour.plan.name}” of ${pour.day} is taken away.`, [pour]);
                  }}
                >
                  Take away
                  <span class="unseen">
                    {' '}
                    “{pour.plan.name}” of {pour.day}
                  </span>
                </button>
              </p>
            </li>
          ))}
        </ul>
      </section>
    </div>
  );
}
