import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Kind } from '../find/document.ts';
import type { Found, Search } from '../find/search.ts';
import { fromFragment } from './fragment.ts';
import { keysOff, setKeysOff } from './keys.ts';
import '../styles/find.css';

export interface FindProps {
  /** The base of the site, with a slash at its end. */
  readonly base: string;
}

const said: Readonly<Record<Kind, string>> = {
  formula: 'Formula',
  model: 'Model',
  lesson: 'Lesson',
  material: 'Material',
  term: 'Term',
  defect: 'Defect',
  exercise: 'Exercise',
  page: 'Page',
};

const shown = 12;
/** Rows drawn at the key itself, beside a keyboard on a phone; the others once typing rests for so many milliseconds. */
const atOnce = { phone: 3, desk: 7 } as const;
const rest = 450;
const [fieldId, keyId] = ['find-field', 'find-key'];

/** One field over everything on these pages. The index is fetched when the reader first reaches for it. */
export function Find({ base }: FindProps) {
  const [typed, setTyped] = useState('');
  const [rested, setRested] = useState('');
  const [search, setSearch] = useState<{ readonly run: Search }>();
  const [trouble, setTrouble] = useState('');
  const [quiet, setQuiet] = useState(false);
  const asked = useRef(false);
  const first = useRef<number>(atOnce.phone);
  const field = useRef<HTMLInputElement>(null);
  const list = useRef<HTMLOListElement>(null);

  const reach = async (): Promise<void> => {
    if (asked.current) return;
    asked.current = true;
    try {
      const [{ searchOf }, answer] = await Promise.all([
        import('../find/search.ts'),
        fetch(`${base}find.json`),
      ]);
      if (!answer.ok) throw new Error(String(answer.status));
      const run = searchOf((await answer.json()) as Parameters<typeof searchOf>[0]);
      setSearch({ run });
      setTrouble('');
    } catch {
      asked.current = false;
      setTrouble(
        'The index could not be fetched. Type again when there is a connection, or use the lists below.',
      );
    }
  };

  useEffect(() => {
    setQuiet(keysOff());
    if (matchMedia('(min-width: 48rem)').matches) first.current = atOnce.desk;
    const follow = (): void => {
      const text = fromFragment(location.hash, 'find')?.['q'];
      if (text === undefined) return;
      setTyped(text);
      void reach();
    };
    follow();
    field.current?.focus({ preventScroll: true });
    addEventListener('hashchange', follow);
    return () => removeEventListener('hashchange', follow);
  }, []);

  useEffect(() => {
    const wait = setTimeout(() => {
      setRested(typed);
      if (typed === '' && location.hash === '') return;
      history.replaceState(
        history.state,
        '',
        typed === '' ? location.pathname : `#find:q=${encodeURIComponent(typed)}`,
      );
    }, rest);
    return () => clearTimeout(wait);
  }, [typed]);

  const found: readonly Found[] = useMemo(() => (search ? search.run(typed, shown) : []), [search, typed]);
  const whole = rested === typed;
  const links = (): HTMLAnchorElement[] => [...(list.current?.querySelectorAll('a') ?? [])];
  const move = (event: KeyboardEvent, by: 1 | -1): void => {
    const all = links();
    const next = all.indexOf(document.activeElement as HTMLAnchorElement) + by;
    event.preventDefault();
    setRested(typed);
    if (next < 0) field.current?.focus();
    else all[Math.min(next, all.length - 1)]?.focus();
  };
  const now =
    trouble !== ''
      ? trouble
      : typed.trim() === ''
        ? ''
        : !search
          ? 'Fetching the index.'
          : found.length === 0
            ? `Nothing found for “${typed.trim()}”. Try another word for it, or fewer.`
            : found.length === shown
              ? `The ${shown} nearest.`
              : `${found.length} found.`;
  // Read out when typing rests, not at every key.
  const status = useRef('');
  if (whole || trouble !== '') status.current = now;

  return (
    <search
      class="find"
      onKeyDown={(event) => {
        if (event.key === 'ArrowDown') move(event, 1);
        if (event.key === 'ArrowUp' && document.activeElement !== field.current) move(event, -1);
      }}
    >
      <form
        onSubmit={(event) => {
          event.preventDefault();
          links()[0]?.click();
        }}
      >
        <label htmlFor={fieldId}>What are you looking for?</label>
        <input
          ref={field}
          id={fieldId}
          type="search"
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          enterkeyhint="go"
          maxLength={120}
          value={typed}
          onFocus={() => void reach()}
          onInput={(event) => {
            setTyped(event.currentTarget.value);
            void reach();
          }}
        />
      </form>
      <p class="find-status" role="status">
        {status.current}
      </p>
      <ol ref={list} class="found">
        {(whole ? found : found.slice(0, first.current)).map(({ kind, title, path, says }, at) => (
          // By place, not by page: at a key the texts of a row change, and the row stays.
          <li key={at}>
            <a href={`${base}${path}`}>
              <span class="found-kind">{said[kind]}</span>
              <strong>{title}</strong>
              <span class="found-says">{says}</span>
            </a>
          </li>
        ))}
      </ol>
      <div class="find-key">
        <input
          id={keyId}
          type="checkbox"
          checked={!quiet}
          onChange={(event) => {
            setKeysOff(!event.currentTarget.checked);
            setQuiet(!event.currentTarget.checked);
          }}
        />
        <label htmlFor={keyId}>
          The key <kbd>/</kbd> opens this page from every other
        </label>
      </div>
    </search>
  );
}
