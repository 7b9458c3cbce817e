import { useEffect, useMemo, useState } from 'preact/hooks';
import { draftFrom, setFrom, type Bank, type Draft } from '../../../calculators/exercises/sets/building.ts';
import { makeKey, readKey, writeKey } from '../../platform/seal.ts';
import { fetchBank, fileName, saveFile, setFromText, today } from './carrying.ts';
import { Choosing, type Words } from './choosing.tsx';
import { GiveOut } from './give-out.tsx';
import { OwnQuestion } from './own-question.tsx';
import { Picks } from './picks.tsx';
import { Preview } from './preview.tsx';
import { RulesForm } from './rules-form.tsx';
import { full, loadDrafts, saveDrafts, type KeptDraft } from './shelf.ts';
import '../../styles/exercise.css';
import '../../styles/sets.css';

export interface BuildProps {
  readonly bank: string;
  readonly words: Words;
  /** Addresses of the pages beside this one. */
  readonly pages: { readonly do: string; readonly paper: string; readonly exercises: string };
}

function newDraft(): KeptDraft {
  const letters = 'abcdefghijkmnpqrstuvwxyz23456789';
  const drawn = crypto.getRandomValues(new Uint8Array(8));
  return {
    id: `set-${Array.from(drawn, (byte) => letters[byte % letters.length]).join('')}`,
    edition: 1,
    title: '',
    note: '',
    asks: 'Your name',
    rules: { numbers: 'own', feedback: 'after', hints: true, worked: true, keep: 'last' },
    picks: [],
  };
}

/** Builds graded sets out of the exercises of the course and questions of one's own. */
export function BuildSet({ bank: bankAddress, words, pages }: BuildProps) {
  const [bank, setBank] = useState<Bank>();
  const [drafts, setDrafts] = useState<readonly KeptDraft[]>([]);
  const [at, setAt] = useState(0);
  const [problem, setProblem] = useState('');
  const [said, setSaid] = useState('');
  const [awake, setAwake] = useState(false);
  const [gone, setGone] = useState<KeptDraft>();

  useEffect(() => {
    const kept = loadDrafts();
    setDrafts(kept.length > 0 ? kept : [newDraft()]);
    fetchBank(bankAddress).then(setBank, (error: unknown) =>
      setProblem(error instanceof Error ? error.message : ''),
    );
    setAwake(true);
  }, []);
  const draft = drafts[at];
  const built = useMemo(() => (bank && draft ? setFrom(draft, bank) : undefined), [bank, draft]);
  if (!draft)
    return (
      <div class="sets waits" data-awake={awake}>
        <p>One moment.</p>
      </div>
    );

  const store = (next: readonly KeptDraft[], open = at): void => {
    setDrafts(next);
    setAt(open);
    if (!saveDrafts(next)) setProblem(full);
  };
  /** Once it has gone out, a change makes the next edition: hand-ins of the old one are marked by the old one. */
  const change = (part: Partial<Draft>): void => {
    const { given, ...open } = draft;
    const next: KeptDraft = { ...open, ...part, edition: draft.edition + (given === undefined ? 0 : 1) };
    if (given !== undefined)
      setSaid(`This is now edition ${next.edition}. Hand-ins of the earlier one are still marked by it.`);
    store(drafts.map((one, i) => (i === at ? next : one)));
  };
  const givenOut = (hash: string): void => {
    if (draft.given !== hash) store(drafts.map((one, i) => (i === at ? { ...one, given: hash } : one)));
  };
  const makeSeal = async (): Promise<void> => {
    const key = await makeKey(today());
    saveFile(`${fileName(draft.title || 'set', 'key')}.json`, writeKey(key));
    change({ seal: key.public });
    setSaid('The key file is saved. Keep it as you keep the mark book: without it no sealed hand-in opens.');
  };
  const useSeal = async (file: File | undefined): Promise<void> => {
    if (!file) return;
    const read = readKey(file.size > 10_000 ? '' : await file.text());
    if (!read.ok) return setProblem(read.reason);
    setProblem('');
    change({ seal: read.value.public });
    setSaid(`Hand-ins are sealed to your key of ${read.value.made}.`);
  };
  const bring = async (file: File | undefined): Promise<void> => {
    if (!file || !bank) return;
    const read = setFromText(file.size > 2_000_000 ? '' : await file.text());
    if (!read.ok) return setProblem(read.reason);
    store([...drafts, { ...draftFrom(read.value, bank), given: read.value.hash }], drafts.length);
    setSaid(`“${nameOf(read.value)}” is open.`);
  };

  return (
    <div class="sets" data-awake={awake && bank !== undefined}>
      <div role="alert">{problem !== '' && <p class="problem">{problem}</p>}</div>
      <div class="deeds">
        <label htmlFor="set-open">Open</label>
        <select
          id="set-open"
          value={String(at)}
          onChange={({ currentTarget }) => setAt(Number(currentTarget.value))}
        >
          {drafts.map(({ id, title, edition }, i) => (
            <option key={`${id} ${i}`} value={String(i)} selected={i === at}>
              {nameOf({ title })}, edition {edition}
            </option>
          ))}
        </select>
        <button
          type="button"
          onClick={() => {
            store([...drafts, newDraft()], drafts.length);
            setSaid('A new set is open.');
          }}
        >
          New
        </button>
        <button
          type="button"
          onClick={() => {
            const title = `${draft.title} copy`.trim();
            const copy = { ...withoutGiven(draft), id: newDraft().id, edition: 1, title };
            store([...drafts, copy], drafts.length);
            setSaid(`“${title}” is open.`);
          }}
        >
          Copy
        </button>
        <button
          type="button"
          onClick={() => {
            const rest = drafts.filter((_, i) => i !== at);
            setGone(draft);
            store(rest.length > 0 ? rest : [newDraft()], 0);
            setSaid(`“${nameOf(draft)}” is deleted. It can be brought back.`);
          }}
        >
          Delete
        </button>
        {gone && (
          <button
            type="button"
            onClick={() => {
              setGone(undefined);
              store([...drafts, gone], drafts.length);
              setSaid(`“${nameOf(gone)}” is back.`);
              document.getElementById('set-open')?.focus();
            }}
          >
            Bring “<bdi>{nameOf(gone)}</bdi>” back
          </button>
        )}
        <label class="press">
          <input
            type="file"
            class="unseen"
            accept=".json,application/json"
            onChange={({ currentTarget }) => {
              void bring(currentTarget.files?.[0]);
              currentTarget.value = '';
            }}
          />
          Open a file
        </label>
      </div>
      <p role="status" class="said">
        {said}
      </p>
      <RulesForm
        draft={draft}
        change={change}
        makeSeal={() => void makeSeal()}
        useSeal={(file) => void useSeal(file)}
      />
      <div class="builder">
        {bank ? (
          <Choosing
            bank={bank}
            words={words}
            picks={draft.picks}
            page={(id) => `${pages.exercises}${id}/`}
            add={(ids) => change({ picks: [...draft.picks, ...ids.map((id) => ({ id }))] })}
          />
        ) : (
          <p>The exercises are on their way.</p>
        )}
        <Picks key={draft.id} bank={bank} picks={draft.picks} change={(picks) => change({ picks })} />
      </div>
      {bank && (
        <OwnQuestion
          bank={bank}
          taken={draft.picks.map(({ id }) => id)}
          add={(pick) => change({ picks: [...draft.picks, pick] })}
        />
      )}
      {built &&
        (built.ok ? (
          <>
            <Preview file={built.value} />
            <GiveOut
              draft={draft}
              file={built.value}
              pages={pages}
              given={() => givenOut(built.value.hash)}
            />
          </>
        ) : (
          <p>{built.reason}</p>
        ))}
    </div>
  );
}

const nameOf = ({ title }: Pick<Draft, 'title'>): string => title || 'Set without a title';

function withoutGiven({ given: _, ...draft }: KeptDraft): Draft {
  return draft;
}
