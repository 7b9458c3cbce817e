import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Chain, Link } from '../find/connect.ts';
import type { Graph, GraphQuantity } from '../find/graph.ts';
import { fromFragment } from './fragment.ts';
import { Sign } from './sign.tsx';
import '../styles/connect.css';

export interface ConnectProps {
  /** The base of the site, with a slash at its end. */
  readonly base: string;
}

type Finder = (typeof import('../find/connect.ts'))['connect'];

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** What is wanted, what is known, and the chains of formulas between them. */
export function Connect({ base }: ConnectProps) {
  const [graph, setGraph] = useState<Graph>();
  const [find, setFind] = useState<{ readonly connect: Finder }>();
  const [wanted, setWanted] = useState<number>();
  const [known, setKnown] = useState<readonly number[]>([]);
  const [trouble, setTrouble] = useState('');
  const touched = useRef(false);

  useEffect(() => {
    void (async () => {
      try {
        const [{ connect }, answer] = await Promise.all([
          import('../find/connect.ts'),
          fetch(`${base}connect.json`),
        ]);
        const fetched = (await answer.json()) as Graph;
        const named = (name: string): number => fetched.quantities.findIndex((one) => one.name === name);
        const shared = fromFragment(location.hash, 'connect');
        const want = named(shared?.['want'] ?? '');
        setFind({ connect });
        setGraph(fetched);
        if (want >= 0) setWanted(want);
        setKnown(
          (shared?.['know'] ?? '')
            .split('|')
            .map(named)
            .filter((at) => at >= 0),
        );
      } catch {
        setTrouble(
          'The list of formulas could not be fetched. Load the page again when there is a connection.',
        );
      }
    })();
  }, []);

  useEffect(() => {
    if (!touched.current || !graph) return;
    const name = (at: number): string => encodeURIComponent(graph.quantities[at]!.name);
    const want = wanted === undefined ? '' : name(wanted);
    history.replaceState(history.state, '', `#connect:want=${want}&know=${known.map(name).join('|')}`);
  }, [wanted, known]);

  const chains = useMemo<readonly Chain[]>(
    () => (graph && find && wanted !== undefined ? find.connect(graph, new Set(known), wanted) : []),
    [graph, find, wanted, known],
  );
  const change = (act: () => void): void => {
    touched.current = true;
    act();
  };
  if (trouble !== '') return <p role="alert">{trouble}</p>;

  const quantities = graph?.quantities ?? [];
  /** What the formulas that give the wanted thing also ask for: the likeliest to be known. */
  const likely =
    graph && wanted !== undefined
      ? [
          ...new Set(
            graph.relations
              .filter(({ parts }) => parts.some(({ quantity }) => quantity === wanted))
              .flatMap(({ parts }) => parts.map(({ quantity }) => quantity)),
          ),
        ].filter((at) => at !== wanted && !known.includes(at))
      : [];

  return (
    <div class="connect">
      <Choose
        id="connect-want"
        label="I want"
        quantities={quantities}
        taken={known}
        onChoose={(at) => change(() => setWanted(at))}
      />
      {wanted !== undefined && (
        <ul class="picked">
          <li>
            <Picked of={quantities[wanted]!} />
            <button type="button" onClick={() => change(() => setWanted(undefined))}>
              Remove<span class="unseen"> {quantities[wanted]!.name}</span>
            </button>
          </li>
        </ul>
      )}
      <Choose
        id="connect-know"
        label="I know"
        quantities={quantities}
        taken={wanted === undefined ? known : [...known, wanted]}
        onChoose={(at) => change(() => setKnown((now) => [...now, at]))}
      />
      {known.length > 0 && (
        <ul class="picked">
          {known.map((at) => (
            <li key={at}>
              <Picked of={quantities[at]!} />
              <button
                type="button"
                onClick={() => change(() => setKnown((now) => now.filter((other) => other !== at)))}
              >
                Remove<span class="unseen"> {quantities[at]!.name}</span>
              </button>
            </li>
          ))}
        </ul>
      )}
      {likely.length > 0 && (
        <details class="likely" open={known.length === 0}>
          <summary>What its formulas ask for</summary>
          <ul>
            {likely.map((at) => (
              <li key={at}>
                <button type="button" onClick={() => change(() => setKnown((now) => [...now, at]))}>
                  {capital(quantities[at]!.name)}
                </button>
              </li>
            ))}
          </ul>
        </details>
      )}
      <p role="status" class="connect-status">
        {wanted === undefined || known.length === 0
          ? ''
          : chains.length === 0
            ? 'No formula here leads there from what you know. Add what else you know.'
            : `${chains.length} ${chains.length === 1 ? 'way' : 'ways'}, the shortest first.`}
      </p>
      <ol class="chains">
        {chains.map((chain) => (
          <li key={chain.links.map(({ relation }) => relation).join()}>
            <ol class="links">
              {chain.links.map((link) => (
                <LinkRow key={link.relation} link={link} quantities={quantities} base={base} />
              ))}
            </ol>
            <Names before="Also look up or measure" of={chain.lacking} quantities={quantities} />
            <Names before="With a usual value to start from" of={chain.usual} quantities={quantities} />
          </li>
        ))}
      </ol>
    </div>
  );
}

function Picked({ of }: { readonly of: GraphQuantity }) {
  return (
    <span>
      <Sign text={of.sign} /> {of.name}
      {of.unit !== '' && <span class="quiet"> in {of.unit}</span>}
    </span>
  );
}

function LinkRow(props: {
  readonly link: Link;
  readonly quantities: readonly GraphQuantity[];
  readonly base: string;
}) {
  const { link, quantities, base } = props;
  return (
    <li>
      <a href={`${base}formulas/${link.relation}/#${link.relation}:find=${link.symbol}`}>{link.title}</a>
      <span class="quiet">
        {' '}
        gives {quantities[link.gives]!.name} from {link.from.map((at) => quantities[at]!.name).join(', ')}.
      </span>
    </li>
  );
}

function Names(props: {
  readonly before: string;
  readonly of: readonly number[];
  readonly quantities: readonly GraphQuantity[];
}) {
  if (props.of.length === 0) return null;
  return (
    <p class="quiet">
      {props.before}: {props.of.map((at) => props.quantities[at]!.name).join(', ')}.
    </p>
  );
}

/** A field that narrows a list of quantities as the reader types. */
function Choose(props: {
  readonly id: string;
  readonly label: string;
  readonly quantities: readonly GraphQuantity[];
  readonly taken: readonly number[];
  readonly onChoose: (at: number) => void;
}) {
  const [typed, setTyped] = useState('');
  const words = typed.toLowerCase().split(/\s+/).filter(Boolean);
  const fits = props.quantities
    .flatMap(({ name, sign }, at) => {
      if (words.length === 0 || props.taken.includes(at)) return [];
      if (sign === typed.trim()) return [{ at, name, rank: 1 }];
      const low = name.toLowerCase();
      if (!words.every((word) => low.includes(word))) return [];
      return [{ at, name, rank: low.startsWith(words[0]!) ? 0 : 2 }];
    })
    .sort((a, b) => a.rank - b.rank || a.name.length - b.name.length)
    .slice(0, 8);
  return (
    <div class="choose">
      <label for={props.id}>{props.label}</label>
      <input
        id={props.id}
        type="search"
        autocomplete="off"
        autocapitalize="off"
        spellcheck={false}
        placeholder="a word or a symbol"
        value={typed}
        onInput={(event) => setTyped(event.currentTarget.value)}
        onKeyDown={(event) => {
          if (event.key !== 'Enter' || !fits[0]) return;
          event.preventDefault();
          props.onChoose(fits[0].at);
          setTyped('');
        }}
      />
      {fits.length > 0 && (
        <ul class="fits">
          {fits.map(({ at }) => (
            <li key={at}>
              <button
                type="button"
                onClick={() => {
                  props.onChoose(at);
                  setTyped('');
                  document.getElementById(props.id)?.focus();
                }}
              >
                <Picked of={props.quantities[at]!} />
              </button>
            </li>
          ))}
        </ul>
      )}
      {words.length > 0 && fits.length === 0 && <p class="quiet">No quantity is called that.</p>}
    </div>
  );
}
