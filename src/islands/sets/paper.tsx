import { useEffect, useState } from 'preact/hooks';
import type { Library } from '../../../calculators/exercises/answer.ts';
import { draftFrom } from '../../../calculators/exercises/sets/building.ts';
import { rosterFrom } from '../../../calculators/exercises/sets/mark-book.ts';
import { gradedSet, type GradedSet, type SetFile } from '../../../calculators/exercises/sets/set-file.ts';
import { fetchBank, longLink, mostInSquare, setFromLink, setFromText, shortLink } from './carrying.ts';
import { Constants, KeySheet, WorkSheet } from './sheets.tsx';
import { keptFile, keptSets } from './shelf.ts';
import { workshopFor } from './workshop.ts';
import '../../styles/exercise.css';
import '../../styles/sets.css';

export interface PaperProps {
  readonly bank: string;
  readonly page: string;
  readonly version: string;
}

interface Open {
  readonly set: GradedSet;
  readonly library: Library;
  /** The square code as SVG, empty where the set does not fit. */
  readonly square: string;
}

async function squareFor(file: SetFile, page: string, bank: string): Promise<string> {
  const long = await longLink(page, file);
  // Only the short link of a set of the course fits a square that a phone reads from paper.
  const short = await fetchBank(bank)
    .then((all) => shortLink(page, draftFrom(file, all), file))
    .catch(() => undefined);
  const link = short ?? long;
  if (link.length > mostInSquare) return '';
  const { renderSVG } = await import('uqr');
  return renderSVG(link, { border: 1 });
}

/** A worksheet for each learner with their own numbers, and the key to it. */
export function PaperSet({ bank, page, version }: PaperProps) {
  const [open, setOpen] = useState<Open>();
  const [kept, setKept] = useState<readonly GradedSet[]>([]);
  const [problem, setProblem] = useState('');
  const [awake, setAwake] = useState(false);
  const [names, setNames] = useState('');
  const [paper, setPaper] = useState<'a4' | 'letter'>('a4');
  const [shows, setShows] = useState<'sheets' | 'key'>('sheets');
  const [worked, setWorked] = useState(true);
  const [formulas, setFormulas] = useState(false);

  const show = async (file: SetFile): Promise<void> => {
    const set = gradedSet(file);
    setOpen({ set, library: await workshopFor(set), square: await squareFor(file, page, bank) });
    setProblem('');
  };
  useEffect(() => {
    setKept(keptSets());
    void setFromLink(location.hash, bank).then(async (found) => {
      if (found?.ok) await show(found.value);
      else if (found) setProblem(found.reason);
      setAwake(true);
    });
  }, []);
  const bring = async (file: File | undefined): Promise<void> => {
    if (!file) return;
    const read = setFromText(file.size > 2_000_000 ? '' : await file.text());
    if (read.ok) await show(read.value);
    else setProblem(read.reason);
  };
  const listed = rosterFrom(names);
  const learners = listed.length > 0 ? listed : ['Sheet 1'];

  return (
    <div class="sets" data-awake={awake}>
      <div role="alert">{problem !== '' && <p class="problem">{problem}</p>}</div>
      <div class="on-screen">
        <p class="deeds">
          <label class="press">
            <input
              type="file"
              class="unseen"
              accept=".json,application/json"
              onChange={({ currentTarget }) => void bring(currentTarget.files?.[0])}
            />
            Open a set
          </label>
          {!open &&
            kept.map((set) => (
              <button type="button" key={set.hash} onClick={() => void show(keptFile(set.hash)!)}>
                “<bdi>{set.title}</bdi>”, edition {set.edition}
              </button>
            ))}
        </p>
        {open && (
          <>
            <label htmlFor="paper-names">A sheet for each of these names, one a line</label>
            <textarea
              id="paper-names"
              rows={4}
              value={names}
              onInput={({ currentTarget }) => setNames(currentTarget.value)}
            />
            <p class="soft">
              {open.set.rules.numbers === 'own'
                ? 'The numbers follow from the name, so a learner has the same ones on paper and in the live set.'
                : 'The set gives everybody the same numbers.'}
            </p>
            <div class="deeds">
              <label htmlFor="paper-shows">Show</label>
              <select
                id="paper-shows"
                value={shows}
                onChange={({ currentTarget }) => setShows(currentTarget.value as typeof shows)}
              >
                <option value="sheets">worksheets</option>
                <option value="key">the key</option>
              </select>
              <label htmlFor="paper-size">Paper</label>
              <select
                id="paper-size"
                value={paper}
                onChange={({ currentTarget }) => setPaper(currentTarget.value as typeof paper)}
              >
                <option value="a4">A4</option>
                <option value="letter">Letter</option>
              </select>
              <label class="tick">
                <input
                  type="checkbox"
                  checked={shows === 'key' ? worked : formulas}
                  onChange={({ currentTarget: { checked } }) =>
                    shows === 'key' ? setWorked(checked) : setFormulas(checked)
                  }
                />{' '}
                {shows === 'key' ? 'worked answers' : 'formulas on the constants sheet'}
              </label>
              <button type="button" class="first" onClick={() => window.print()}>
                Print
              </button>
            </div>
          </>
        )}
      </div>
      {open && (
        <div class="sheets" data-paper={paper}>
          {learners.map((name) =>
            shows === 'key' ? (
              <KeySheet key={name} {...open} name={name} worked={worked} />
            ) : (
              <WorkSheet key={name} {...open} name={name} version={version} named={listed.length > 0} />
            ),
          )}
          {shows === 'sheets' && <Constants set={open.set} formulas={formulas} />}
        </div>
      )}
    </div>
  );
}
