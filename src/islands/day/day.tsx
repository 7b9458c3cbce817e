import { useEffect, useRef, useState } from 'preact/hooks';
import type { Books } from '../form-entries.ts';
import { readHabit } from '../habit.ts';
import type { PlanReply, PlanRequest } from '../../workers/plan-run.ts';
import { planFromFragment } from '../plan/sharing.ts';
import { loadShelf, type Plan } from '../plan/store.ts';
import { smallPhoto } from '../small-photo.ts';
import { allowSound, maySleep, signal, stayAwake } from './bench-aids.ts';
import { blank, diaryText, loadDiary, printClock, saveDiary, type Diary } from './diary.ts';
import { keepPhotos, mostPhotos, photosOf, type DayPhoto } from './photos.ts';
import { PhotosShown } from './photos-shown.tsx';
import { dayScreens, type Clock, type Screen } from './screens.ts';
import '../../styles/day.css';

export interface DayProps {
  /** Each material's numbers in SI. */
  readonly books: Books;
  readonly planPage: string;
  readonly logPage: string;
  /** The day of the sample as a metric workshop says it, worked when the page was built. */
  readonly first: readonly Screen[];
}

const sample: Plan = { name: 'Lamp shield', texts: {} };
/** The last seconds of a window are counted aloud. */
const near = 5;
/** The screen stays on for a clock shorter than this, in seconds. */
const longWatch = 1800;

/** `crypto.randomUUID` is missing where the site is served over plain http. */
const newId = (): string => `${Date.now().toString(36)}-${Math.random().toString(36).slice(2, 10)}`;

function work(plan: Plan, books: Books): Promise<readonly Screen[]> {
  const habit = readHabit();
  const worker = new Worker(new URL('../../workers/plan-run.ts', import.meta.url), { type: 'module' });
  return new Promise<PlanReply>((resolve, reject) => {
    worker.addEventListener('message', ({ data }: MessageEvent<PlanReply>) => resolve(data));
    worker.addEventListener('error', () => reject(new Error('the plan’s worker did not start')));
    worker.postMessage({ texts: plan.texts, books, habit } satisfies PlanRequest);
  })
    .then((reply) => {
      if (!reply) throw new Error('the plan has no answer');
      return dayScreens(reply.values, reply.result, habit);
    })
    .finally(() => worker.terminate());
}

/** The open plan, one decision a screen, to follow at the bench. What is ticked, timed and written is kept. */
export function PourDay({ books, planPage, logPage, first }: DayProps) {
  const [plans, setPlans] = useState<readonly Plan[]>([]);
  const [plan, setPlan] = useState<Plan>();
  const [screens, setScreens] = useState<readonly Screen[]>([]);
  const [diary, setDiary] = useState<Diary>(blank);
  const [trouble, setTrouble] = useState('');
  const [said, setSaid] = useState('');
  const [photos, setPhotos] = useState<readonly DayPhoto[]>([]);
  /** Puts back what the last press took away. */
  const [undo, setUndo] = useState<() => void>();
  const heading = useRef<HTMLHeadingElement>(null);

  const open = async (next: Plan): Promise<void> => {
    setPlan(next);
    const kept = loadDiary(next.name);
    setDiary(kept);
    setUndo(undefined);
    setSaid('');
    // A browser lets a page sound only after a press, also where it was switched on before.
    if (kept.loud) addEventListener('pointerdown', allowSound, { once: true });
    void photosOf(next.name).then(setPhotos);
    try {
      const known = Object.keys(next.texts).length === 0 && readHabit() === 'metric';
      setScreens(known ? first : await work(next, books));
    } catch {
      setTrouble('This plan could not be worked out. Open it on the plan page and look at what it says.');
    }
  };
  useEffect(() => {
    const { shelf, problems } = loadShelf(sample);
    setPlans(shelf.plans);
    if (problems.length > 0) setTrouble(problems.join(' '));
    void (async () => {
      const shared = (await planFromFragment(location.hash))?.plan;
      if (shared) setPlans((now) => [...now, shared]);
      await open(shared ?? shelf.plans[shelf.open]!);
    })();
    return maySleep;
  }, []);

  if (!plan || screens.length === 0)
    return (
      <p class={trouble === '' ? 'waits' : undefined} role="status">
        {trouble === '' ? 'Working the plan out.' : trouble}
      </p>
    );
  const at = Math.min(diary.at, screens.length - 1);
  const screen = screens[at]!;
  const change = (next: Partial<Diary>): void => {
    const now = { ...diary, ...next, pour: next.pour ?? diary.pour ?? newId() };
    setDiary(now);
    setUndo(undefined);
    if (!saveDiary(plan.name, now)) setTrouble('This device keeps nothing now. Copy the diary at the end.');
  };
  const go = (to: number): void => {
    change({ at: to });
    setSaid('');
    // The heading takes the focus, so that the new screen is read from its top.
    requestAnimationFrame(() => {
      heading.current?.focus({ preventScroll: true });
      document.querySelector('.day')?.scrollIntoView({ block: 'start' });
    });
  };
  const mark = (name: string): void => {
    const before = diary.moments;
    change({ moments: { ...before, [name]: Date.now() } });
    setSaid('');
    // A glove hits the wrong key: a clock begun anew can be put back.
    if (before[name] === undefined) return;
    setSaid('The clock begins again.');
    setUndo(() => () => change({ moments: before }));
  };
  const keepPictures = (put: readonly DayPhoto[], remove: readonly string[] = []): void =>
    void keepPhotos(put, remove).then((problem) => {
      if (problem !== undefined) setTrouble(problem);
    });
  const take = (file: File): void =>
    void smallPhoto(file).then(
      (picture) => {
        const photo = { id: newId(), plan: plan.name, screen: screen.id, at: Date.now(), picture };
        setPhotos((now) => [...now, photo]);
        setUndo(undefined);
        setSaid('The photo is kept with the notes.');
        keepPictures([photo]);
      },
      () => setTrouble('That photo could not be read.'),
    );
  const takeOut = (photo: DayPhoto): void => {
    setPhotos((now) => now.filter(({ id }) => id !== photo.id));
    keepPictures([], [photo.id]);
    setSaid('The photo is taken out.');
    setUndo(() => () => {
      setPhotos((now) => [...now, photo].sort((a, b) => a.at - b.at));
      keepPictures([photo]);
    });
  };
  const beginAnew = (): void => {
    const [before, pictures] = [diary, photos];
    change({ ...blank, pour: newId(), loud: diary.loud });
    setPhotos([]);
    keepPictures(
      [],
      pictures.map(({ id }) => id),
    );
    setSaid('A new pour begins.');
    setUndo(() => () => {
      change(before);
      setPhotos(pictures);
      keepPictures(pictures);
    });
  };
  const left = screen.ticks.filter((tick) => diary.ticks[`${screen.id}:${tick}`] !== true).length;

  return (
    <div class="day">
      <p class="day-where">
        <span>
          {at + 1} of {screens.length}
        </span>
        {plans.length > 1 ? (
          <select
            aria-label="Plan"
            value={String(plans.indexOf(plan))}
            onChange={(event) => void open(plans[Number(event.currentTarget.value)]!)}
          >
            {plans.map((one, i) => (
              <option value={String(i)} selected={one === plan}>
                {one.name}
              </option>
            ))}
          </select>
        ) : (
          <a href={planPage}>{plan.name}</a>
        )}
      </p>
      {trouble !== '' && <p role="alert">{trouble}</p>}
      <section aria-labelledby="day-title">
        <h2 id="day-title" ref={heading} tabIndex={-1}>
          {screen.title}
        </h2>
        {screen.number !== undefined && <p class="day-number">{screen.number}</p>}
        {screen.clock && (
          <Running
            key={screen.id}
            clock={screen.clock}
            moments={diary.moments}
            onMark={mark}
            loud={diary.loud}
          />
        )}
        {screen.says.map((text) => (
          <p>{text}</p>
        ))}
        {screen.ticks.map((tick) => {
          const name = `${screen.id}:${tick}`;
          return (
            <label class="day-tick" key={name}>
              <input
                type="checkbox"
                checked={diary.ticks[name] === true}
                onChange={(event) =>
                  change({ ticks: { ...diary.ticks, [name]: event.currentTarget.checked } })
                }
              />
              <span>{tick}</span>
            </label>
          );
        })}
        <label class="day-note">
          Note
          <textarea
            rows={screen.id === 'after' ? 5 : 2}
            value={diary.notes[screen.id] ?? ''}
            onInput={(event) => change({ notes: { ...diary.notes, [screen.id]: event.currentTarget.value } })}
          />
        </label>
        <PhotosShown
          photos={photos.filter((photo) => photo.screen === screen.id || screen.id === 'after')}
          full={photos.length >= mostPhotos}
          onTake={take}
          onRemove={takeOut}
        />
      </section>
      <div class="day-left">
        <p role="status">{said !== '' ? said : left > 0 ? `${left} not ticked yet.` : ''}</p>
        {undo && (
          <button
            type="button"
            onClick={() => {
              undo();
              setUndo(undefined);
              setSaid('Put back.');
            }}
          >
            Undo
          </button>
        )}
      </div>
      <p class="day-keys">
        <button type="button" aria-disabled={at === 0} onClick={() => at > 0 && go(at - 1)}>
          Back
        </button>
        {at < screens.length - 1 ? (
          <button type="button" class="first" onClick={() => go(at + 1)}>
            Next
          </button>
        ) : (
          <a class="press first" href={`${logPage}#day:plan=${encodeURIComponent(plan.name)}`}>
            Write it into the pour log
          </a>
        )}
      </p>
      <p class="day-aids">
        {screen.id === 'after' && (
          <button
            type="button"
            onClick={() => {
              navigator.clipboard.writeText(diaryText(plan.name, screens, diary, photos.length)).then(
                () => setSaid('The diary is copied.'),
                () => setSaid('This browser does not let it be copied.'),
              );
            }}
          >
            Copy the diary
          </button>
        )}
        <button
          type="button"
          aria-pressed={diary.loud}
          onClick={() => {
            if (!diary.loud) allowSound();
            change({ loud: !diary.loud });
          }}
        >
          Sound and shake
        </button>
        <button type="button" onClick={beginAnew}>
          New pour
        </button>
      </p>
    </div>
  );
}

/** A clock by the time of day, so that a phone that slept shows the right seconds when it wakes. */
function Running(props: {
  readonly clock: Clock;
  readonly moments: Diary['moments'];
  readonly onMark: (name: string) => void;
  readonly loud: boolean;
}) {
  const { clock, moments, onMark, loud } = props;
  const begun = moments[clock.from];
  const ended = clock.end && moments[clock.end.name];
  const runs = begun !== undefined && (ended === undefined || ended < begun);
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    if (!runs) return undefined;
    // Nobody watches an oven for hours.
    if (clock.seconds < longWatch) stayAwake();
    const tick = setInterval(() => setNow(Date.now()), 100);
    return () => clearInterval(tick);
  }, [runs]);
  const gone = begun === undefined ? 0 : ((runs ? Math.max(now, begun) : (ended ?? begun)) - begun) / 1000;
  const left = clock.seconds - gone;
  const second = Math.ceil(left);
  useEffect(() => {
    if (!runs || !loud) return;
    if (second === 0) signal(true);
    else if (second > 0 && second <= near) signal(false);
  }, [second, runs]);
  const state = !runs && begun === undefined ? 'waits' : left <= 0 ? 'over' : left <= near ? 'near' : 'runs';

  return (
    <div class="day-clock" data-kind={clock.kind} data-state={state}>
      {begun === undefined ? (
        <button type="button" class="first" onClick={() => onMark(clock.from)}>
          {clock.start}
        </button>
      ) : (
        <>
          <p class="day-left-time" role="timer">
            {left > 0 ? printClock(left < 10 ? Math.ceil(left) : left) : `+${printClock(-left)}`}
          </p>
          <p class="day-word" role="status">
            {!runs && clock.end
              ? `${clock.end.says}: after ${gone.toFixed(1)} s.`
              : state === 'over'
                ? clock.over
                : clock.kind === 'window'
                  ? 'in hand'
                  : 'to wait'}
          </p>
          {runs && clock.end && (
            <button type="button" class="first" onClick={() => onMark(clock.end!.name)}>
              {clock.end.says}
            </button>
          )}
          <button type="button" onClick={() => onMark(clock.from)}>
            {clock.start}: start again
          </button>
        </>
      )}
    </div>
  );
}
