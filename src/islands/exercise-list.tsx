import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { dayOf, dueOf, readReturns } from './again.ts';
import {
  askToLast,
  backUp,
  erase,
  isLasting,
  keptKeys,
  lastSaved,
  noteSaved,
  readBackup,
  restore,
} from './device.ts';
import { fresh, keep, readKept } from './exercise-store.ts';
import { countOf, countWords } from './progress.ts';

export interface Listed {
  readonly id: string;
  readonly title: string;
  readonly lesson: string;
  readonly unit: string;
  /** It draws numbers, so that it comes back with others. */
  readonly draws: boolean;
  /** The address of its own page. */
  readonly href: string;
}

export interface ExerciseListProps {
  readonly exercises: readonly Listed[];
}

/** The log and the photos of pour days are read when they are needed, not before. */
const log = () => import('./log/keep.ts');
const days = () => import('./day/photos.ts');

/** Three that are due, the count on this device, and the one file that holds it all. */
export function ExerciseList({ exercises }: ExerciseListProps): JSX.Element {
  const [due, setDue] = useState<readonly Listed[]>([]);
  const [later, setLater] = useState(0);
  const [count, setCount] = useState('');
  const [says, setSays] = useState('');
  const [sure, setSure] = useState(false);
  const [saved, setSaved] = useState<string>();
  const [lasts, setLasts] = useState(true);
  const [open, setOpen] = useState(false);
  const file = useRef<HTMLInputElement>(null);

  function look(): void {
    const ids = exercises.map(({ id }) => id);
    const returns = readReturns(ids);
    const today = dueOf(returns, dayOf(new Date()));
    setDue(today.slice(0, 3).flatMap((id) => exercises.find((exercise) => exercise.id === id) ?? []));
    setLater(returns.size - Math.min(3, today.length));
    setCount(countWords(countOf(ids)));
    try {
      setSaved(lastSaved(localStorage));
    } catch {
      // A browser that keeps nothing has no copy to be old.
    }
  }
  useEffect(() => {
    look();
    setOpen(location.hash === '#keep');
    void isLasting(navigator.storage).then(setLasts);
  }, []);

  /** It comes back with other numbers and no answer in it. */
  function renew(id: string): void {
    const kept = readKept(id) ?? fresh;
    keep(id, { ...fresh, seed: String(Number(kept.seed) + 1) });
  }

  async function save(): Promise<void> {
    const day = dayOf(new Date());
    const { pours } = await (await log()).readKept();
    const photos = await (await days()).everyPhoto();
    const text = JSON.stringify(backUp(localStorage, day, pours, photos), null, 2);
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
    link.download = `warm-mould-backup-${day}.json`;
    link.click();
    URL.revokeObjectURL(link.href);
    noteSaved(localStorage, day);
    setSaved(day);
    setSays(`Saved as ${link.download}. Keep it somewhere else than on this device.`);
  }

  async function bring(chosen: File | undefined): Promise<void> {
    if (!chosen) return;
    const read = readBackup(await chosen.text());
    if (file.current) file.current.value = '';
    if (!read.ok) return setSays(read.reason);
    const { keepPours } = await log();
    const { readPour } = await import('../../calculators/pour-log/record.ts');
    const { keepPhotos, readPhoto } = await days();
    const pours = (read.backup.pours ?? []).flatMap((pour) => readPour(pour) ?? []);
    const photos = (read.backup.photos ?? []).flatMap((photo) => readPhoto(photo) ?? []);
    const kept = pours.length > 0 ? await keepPours(pours) : undefined;
    const trouble =
      kept?.problem ??
      (photos.length > 0 ? await keepPhotos(photos) : undefined) ??
      restore(localStorage, read.backup);
    const [older, both] = [kept?.older ?? 0, kept?.conflicts.length ?? 0];
    const things = Object.keys(read.backup.kept).length + pours.length + photos.length - older - both;
    const newer = older > 0 ? ` Newer on this device, so left as they are: ${older} of the pours.` : '';
    const split =
      both > 0
        ? ` Changed both here and there, so left as they are: ${both} of the pours. Bring this same file into the pour log to decide each.`
        : '';
    setSays(
      trouble ??
        `Restored ${things} ${things === 1 ? 'thing' : 'things'} saved on ${read.backup.saved}.${newer}${split}`,
    );
    look();
  }

  async function ask(): Promise<void> {
    setSays(await askToLast(navigator.storage));
    setLasts(await isLasting(navigator.storage));
  }

  async function clear(): Promise<void> {
    const { readKept: readLog, keepPours } = await log();
    const { keepPhotos, everyPhoto } = await days();
    const [{ pours }, photos] = [await readLog(), await everyPhoto()];
    if (!sure) {
      setSure(true);
      const things = keptKeys(localStorage).length + pours.length + photos.length;
      return setSays(
        `This erases ${things} kept ${things === 1 ? 'thing' : 'things'}, plans and pours too. Press again to do it.`,
      );
    }
    setSure(false);
    erase(localStorage);
    const ids = (all: readonly { readonly id: string }[]): string[] => all.map(({ id }) => id);
    const trouble =
      (pours.length > 0 ? (await keepPours([], ids(pours))).problem : undefined) ??
      (photos.length > 0 ? await keepPhotos([], ids(photos)) : undefined);
    setSays(trouble ?? 'Erased. Nothing that you put in is left on this device.');
    look();
  }

  return (
    <div>
      <h2 id="again">From earlier</h2>
      {due.length > 0 ? (
        <ul>
          {due.map(({ id, title, lesson, href, draws }) => (
            <li key={id}>
              <a href={href} onClick={() => renew(id)}>
                {title}
              </a>{' '}
              <span class="soft">
                from {lesson}
                {draws && ', with new numbers'}
              </span>
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
      <details id="keep" open={open}>
        <summary>Keep a copy, bring one back, or erase</summary>
        <p>
          What you did is kept on this device only: plans, pours and answers alike. One file holds all of it.
          Bringing a file back replaces what has the same name and leaves the rest.{' '}
          {saved === undefined ? 'No copy has been saved from here yet.' : `Last saved on ${saved}.`}
        </p>
        <p class="needs-script keys">
          <button type="button" onClick={() => void save()}>
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
          {!lasts && (
            <button type="button" onClick={() => void ask()}>
              Ask the browser to keep it
            </button>
          )}
          <button type="button" onClick={() => void clear()} onBlur={() => setSure(false)}>
            {sure ? 'Yes, erase it all' : 'Erase it all'}
          </button>
        </p>
      </details>
      <p role="status">{says}</p>
    </div>
  );
}
