import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { dayOf, dueOf, readReturns } from './again.ts';
import { backUp, erase, keptKeys, readBackup, restore } from './device.ts';
import { fresh, keep, readKept } from './exercise-store.ts';
import { countOf, countWords } from './progress.ts';

export interface Listed {
  readonly id: string;
  readonly title: string;
  readonly lesson: string;
  readonly unit: string;
  /** The address of its own page. */
  readonly href: string;
}

export interface ExerciseListProps {
  readonly exercises: readonly Listed[];
}

/** Three that are due, the count on this device, and the one file that holds it all. */
export function ExerciseList({ exercises }: ExerciseListProps): JSX.Element {
  const [due, setDue] = useState<readonly Listed[]>([]);
  const [later, setLater] = useState(0);
  const [count, setCount] = useState('');
  const [says, setSays] = useState('');
  const [sure, setSure] = useState(false);
  const file = useRef<HTMLInputElement>(null);

  function look(): void {
    const ids = exercises.map(({ id }) => id);
    const returns = readReturns(ids);
    const today = dueOf(returns, dayOf(new Date()));
    setDue(today.slice(0, 3).flatMap((id) => exercises.find((exercise) => exercise.id === id) ?? []));
    setLater(returns.size - Math.min(3, today.length));
    setCount(countWords(countOf(ids)));
  }
  useEffect(look, []);

  /** It comes back with other numbers and no answer in it. */
  function renew(id: string): void {
    const kept = readKept(id) ?? fresh;
    keep(id, { ...fresh, seed: String(Number(kept.seed) + 1) });
  }

  function save(): void {
    const day = dayOf(new Date());
    const text = JSON.stringify(backUp(localStorage, day), null, 2);
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
    link.download = `warm-mould-backup-${day}.json`;
    link.click();
    URL.revokeObjectURL(link.href);
    setSays(`Saved as ${link.download}. Keep it somewhere else than on this device.`);
  }

  async function bring(chosen: File | undefined): Promise<void> {
    if (!chosen) return;
    const read = readBackup(await chosen.text());
    if (file.current) file.current.value = '';
    if (!read.ok) return setSays(read.reason);
    const trouble = restore(localStorage, read.backup);
    const things = Object.keys(read.backup.kept).length;
    setSays(
      trouble ?? `Restored ${things} ${things === 1 ? 'thing' : 'things'} saved on ${read.backup.saved}.`,
    );
    look();
  }

  function clear(): void {
    if (!sure) {
      setSure(true);
      const things = keptKeys(localStorage).length;
      return setSays(
        `This erases ${things} kept ${things === 1 ? 'thing' : 'things'}, plans too. Press again to do it.`,
      );
    }
    setSure(false);
    erase(localStorage);
    setSays('Erased. Nothing of these pages is left on this device.');
    look();
  }

  return (
    <div>
      <h2 id="again">Three from earlier</h2>
      {due.length > 0 ? (
        <ul>
          {due.map(({ id, title, lesson, href }) => (
            <li key={id}>
              <a href={href} onClick={() => renew(id)}>
                {title}
              </a>{' '}
              <span class="soft">from {lesson}, with new numbers</span>
            </li>
          ))}
        </ul>
      ) : (
        <p>
          {later > 0
            ? `Nothing is due today. ${later} will come back another day.`
            : 'Nothing to come back to yet. An exercise you get wrong comes back here after a day, then later each time it is right.'}
        </p>
      )}
      {due.length > 0 && later > 0 && <p class="soft">{later} more will come back later.</p>}
      <p aria-live="polite">{count && `On this device: ${count}.`}</p>
      <details>
        <summary>Keep a copy, bring one back, or erase</summary>
        <p>
          What you did is kept on this device only, plans and answers alike. One file holds all of it.
          Bringing a file back replaces what has the same name and leaves the rest.
        </p>
        <p class="needs-script keys">
          <button type="button" onClick={save}>
            Save a copy
          </button>
          <label class="press">
            Bring a copy back
            <input
              class="unseen"
              ref={file}
              type="file"
              accept="application/json,.json"
              onChange={({ currentTarget }) => void bring(currentTarget.files?.[0])}
            />
          </label>
          <button type="button" onClick={clear} onBlur={() => setSure(false)}>
            {sure ? 'Yes, erase it all' : 'Erase it all'}
          </button>
        </p>
      </details>
      <p role="status">{says}</p>
    </div>
  );
}
