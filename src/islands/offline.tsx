import { useEffect, useRef, useState } from 'preact/hooks';
import { bytesOf, printBytes, type FileList, type Kept } from '../offline/list.ts';
import { canKeep, keep, kept, letGo, offered, room, scopeOf, toFetch } from '../offline/keep.ts';

export interface OfflineProps {
  readonly base: string;
}

const reasons = {
  full: 'This device has not enough room. What was fetched is removed again, and what was kept before still is.',
  changed: 'The site changed while it was being fetched. Press again to fetch the new one.',
  line: 'The connection broke. Press again: what is here already is not fetched twice.',
  stopped: 'Stopped. What is here already is not fetched twice.',
} as const;

const day = (iso: string): string =>
  new Date(iso).toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });

/** Says whether the course is on this device, and keeps it, renews it or takes it away when told. */
export function Offline({ base }: OfflineProps) {
  const [able, setAble] = useState<boolean>();
  const [here, setHere] = useState<Kept>();
  const [there, setThere] = useState<FileList>();
  const [toGet, setToGet] = useState(0);
  const [got, setGot] = useState<number>();
  const [said, setSaid] = useState('');
  const stop = useRef<AbortController | undefined>(undefined);
  const scope = useRef('');

  const look = async (): Promise<void> => {
    const [has, list] = await Promise.all([kept(scope.current), offered(scope.current)]);
    if (list && 'stop' in list) {
      await letGo(scope.current);
      setHere(undefined);
      setAble(false);
      return;
    }
    setHere(has);
    setThere(list);
    if (list) setToGet(await toFetch(scope.current, list));
  };
  useEffect(() => {
    scope.current = scopeOf(base);
    setAble(canKeep());
    if (canKeep()) void look();
  }, []);

  const fetchAll = async (): Promise<void> => {
    if (!there) return;
    const free = await room();
    if (free !== undefined && free < toGet * 1.1) {
      setSaid(`There is room for ${printBytes(free)}, and ${printBytes(toGet)} are needed.`);
      return;
    }
    void navigator.storage?.persist?.();
    stop.current = new AbortController();
    let bytes = 0;
    setGot(0);
    setSaid('Fetching.');
    const outcome = await keep(scope.current, there, {
      signal: stop.current.signal,
      onBytes: (more) => {
        bytes += more;
        setGot(bytes);
      },
    });
    setGot(undefined);
    await look();
    setSaid(
      outcome.ok
        ? 'The whole course is on this device. It opens without a connection.'
        : reasons[outcome.why],
    );
  };
  const remove = async (): Promise<void> => {
    await letGo(scope.current);
    await look();
    setSaid('Removed from this device. Your plans and answers stay.');
  };

  if (able === undefined) return <p class="offline-state">Looking at this device.</p>;
  if (!able)
    return (
      <p class="offline-state">
        This browser cannot keep the course, or the site is no longer offered for keeping. A private window
        keeps nothing; a plain http address cannot either.
      </p>
    );
  const newer = here && there && there.version !== here.list.version;
  return (
    <div class="offline">
      <p class="offline-state">
        {here ? (
          <>
            <strong>Kept on this device.</strong> Built {day(here.list.built)}, fetched {day(here.since)},{' '}
            {printBytes(bytesOf(here.list))}.
          </>
        ) : there ? (
          <>
            <strong>Not on this device yet.</strong> It takes {printBytes(bytesOf(there))} of its room
            {toGet === bytesOf(there)
              ? `, and about ${printBytes(there.packed)} come over the line.`
              : `; ${printBytes(toGet)} are still to be fetched.`}
          </>
        ) : (
          'Not on this device, and there is no connection to fetch it.'
        )}
      </p>
      {newer && (
        <p>
          A newer version is there, built {day(there.built)}: {printBytes(toGet)} to fetch. The one you have
          stays until the new one is whole.
        </p>
      )}
      {got !== undefined && (
        <p>
          <progress max={Math.max(1, toGet)} value={got} aria-label="Fetched" /> {printBytes(got)} of{' '}
          {printBytes(toGet)}
        </p>
      )}
      <p class="offline-keys">
        {got !== undefined ? (
          <button type="button" onClick={() => stop.current?.abort()}>
            Stop
          </button>
        ) : (
          <>
            {there && (!here || newer) && (
              <button type="button" class="first" onClick={() => void fetchAll()}>
                {newer
                  ? `Fetch the newer version, ${printBytes(toGet)}`
                  : `Keep the whole course, ${printBytes(toGet)}`}
              </button>
            )}
            {here && !newer && (
              <button type="button" onClick={() => void look().then(() => setSaid('Looked.'))}>
                Look for a newer version
              </button>
            )}
            {here && (
              <button type="button" onClick={() => void remove()}>
                Remove from this device
              </button>
            )}
          </>
        )}
      </p>
      <p class="offline-said" role="status">
        {said}
      </p>
    </div>
  );
}
