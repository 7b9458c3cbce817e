import { useEffect, useState } from 'preact/hooks';
import { gradedSet, type GradedSet, type SetFile } from '../../../calculators/exercises/sets/set-file.ts';
import { setFromLink, setFromText } from './carrying.ts';
import { forgetSet, keepSet, keptByStart, keptFile, keptSets } from './shelf.ts';
import type { Open, Working } from './working.tsx';
import '../../styles/exercise.css';
import '../../styles/sets.css';

export interface DoProps {
  /** Where the list of exercises is, for a short link. */
  readonly bank: string;
  readonly version: string;
}

/** A graded set as a learner works on it: everything kept at every keystroke, handed in as a file or a code. */
export function DoSet({ bank, version }: DoProps) {
  const [open, setOpen] = useState<Open & { readonly Sheet: typeof Working }>();
  const [kept, setKept] = useState<readonly GradedSet[]>([]);
  const [problem, setProblem] = useState('');
  const [awake, setAwake] = useState(false);

  const show = async (file: SetFile): Promise<void> => {
    const set = gradedSet(file);
    keepSet(file);
    // All that answering and handing in need comes now: the signal may be gone by then.
    try {
      const [{ Working: Sheet }, { workshopFor }] = await Promise.all([
        import('./working.tsx'),
        import('./workshop.ts'),
      ]);
      setOpen({ set, library: await workshopFor(set), Sheet });
    } catch {
      return setProblem('The sheet of this set could not be fetched. Open it again where there is a signal.');
    }
    setProblem('');
  };
  const follow = async (): Promise<void> => {
    const found = await setFromLink(location.hash, bank, keptByStart);
    if (found?.ok) await show(found.value);
    else if (found) setProblem(found.reason);
  };
  useEffect(() => {
    setKept(keptSets());
    void follow().then(() => setAwake(true));
    const listen = (): void => void follow();
    addEventListener('hashchange', listen);
    return () => removeEventListener('hashchange', listen);
  }, []);
  const bring = async (file: File | undefined): Promise<void> => {
    if (!file) return;
    const read = setFromText(file.size > 2_000_000 ? '' : await file.text());
    if (read.ok) await show(read.value);
    else setProblem(read.reason);
  };

  return (
    <div class="sets" data-awake={awake}>
      <div role="alert">{problem !== '' && <p class="problem">{problem}</p>}</div>
      {open ? (
        <open.Sheet key={open.set.hash} set={open.set} library={open.library} version={version} />
      ) : (
        <>
          <p>Open the link your instructor gave you, or the file of the set.</p>
          <p class="deeds">
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
              Open a set
            </label>
          </p>
          {kept.length > 0 && (
            <section aria-labelledby="kept-sets">
              <h2 id="kept-sets">Sets on this device</h2>
              <ul class="rows">
                {kept.map((set) => (
                  <li key={set.hash}>
                    <span id={`kept-${set.hash}`}>
                      <bdi>{set.title}</bdi>, edition {set.edition}, {set.marks} marks
                    </span>
                    <button
                      type="button"
                      aria-describedby={`kept-${set.hash}`}
                      onClick={() => void show(keptFile(set.hash)!)}
                    >
                      Open
                    </button>
                    <button
                      type="button"
                      aria-describedby={`kept-${set.hash}`}
                      onClick={() => {
                        forgetSet(set.hash);
                        setKept(keptSets());
                      }}
                    >
                      Forget
                    </button>
                  </li>
                ))}
              </ul>
            </section>
          )}
        </>
      )}
    </div>
  );
}
