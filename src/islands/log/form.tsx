import { useEffect, useState } from 'preact/hooks';
import { plainNumber, unitLabel } from '../../../calculators/core/print.ts';
import { readQuantity } from '../../../calculators/core/quantity.ts';
import { habitUnit } from '../../../calculators/core/shop-units.ts';
import { fromSI, type UnitSymbol } from '../../../calculators/core/units.ts';
import type { Found, FoundSection, Pour } from '../../../calculators/pour-log/record.ts';
import type { DayDraft } from '../day/draft.ts';
import { readHabit } from '../habit.ts';
import { loadShelf } from '../plan/store.ts';
import { smallPhoto } from '../small-photo.ts';
import { newMark } from './keep.ts';

interface Asked {
  readonly name: string;
  readonly label: string;
  /** At home; a shop writes it down in its own. */
  readonly unit: UnitSymbol;
  readonly in: 'did' | 'found';
}

const asked: readonly Asked[] = [
  { name: 'metal', label: 'Metal at the pour', unit: '°C', in: 'did' },
  { name: 'mould', label: 'Mould at the pour', unit: '°C', in: 'did' },
  { name: 'gauge', label: 'Suction at the gauge', unit: 'kPa', in: 'did' },
  { name: 'pouring', label: 'Poured in', unit: 's', in: 'did' },
  { name: 'charge', label: 'Charge weighed out', unit: 'g', in: 'did' },
  { name: 'casting', label: 'Casting', unit: 'g', in: 'found' },
  { name: 'rest', label: 'All other metal', unit: 'g', in: 'found' },
  { name: 'edge', label: 'Sharpest edge, radius', unit: 'mm', in: 'found' },
  { name: 'inWater', label: 'Casting in water', unit: 'g', in: 'found' },
];

const fills: readonly FoundSection['filled'][] = ['not looked at', 'full', 'part', 'none'];
const fillWords = {
  'not looked at': 'not looked at',
  full: 'filled',
  part: 'filled in part',
  none: 'not filled',
};

interface Row {
  readonly name: string;
  readonly filled: FoundSection['filled'];
  readonly modulus: string;
  readonly froze: string;
  readonly margin: string;
  /** The section these texts were made from. */
  readonly from?: FoundSection;
}

const shown = (si: number | undefined, unit: UnitSymbol): string =>
  si === undefined ? '' : plainNumber(fromSI(si, unit), { figures: 4 });

const rowOf = (one: FoundSection, length: UnitSymbol): Row => ({
  name: one.name,
  filled: one.filled,
  modulus: shown(one.modulus, length),
  froze: shown(one.froze, 's'),
  margin: shown(one.margin, '1'),
  from: one,
});

const emptyRow: Row = { name: '', filled: 'not looked at', modulus: '', froze: '', margin: '' };
const mostPhotos = 6;

/** What a text says in SI: nothing when it is empty, a sentence when it is no number. One left as it stood is `was`. */
function read(text: string, unit: UnitSymbol, label: string, was?: number): number | undefined | string {
  if (text.trim() === '') return undefined;
  if (was !== undefined && text === shown(was, unit)) return was;
  const reading = readQuantity(text, { unit, show: unit });
  return reading.ok ? reading.value : `${label}: ${reading.message}`;
}

/** One pour to write down; a plan of this device lends its name, its numbers and its sections. */
export function PourForm(props: {
  readonly pour: Pour | undefined;
  /** A followed pour that is not in the log yet. */
  readonly draft: DayDraft | undefined;
  readonly defects: readonly { readonly id: string; readonly name: string }[];
  readonly books: string;
  readonly onClose: () => void;
  readonly onKeep: (pour: Pour) => void;
}) {
  const { pour, draft } = props;
  const [plans] = useState(() => loadShelf({ name: 'Lamp shield', texts: {} }).shelf.plans);
  const [plan, setPlan] = useState(pour?.plan ?? { name: draft?.plan ?? '', inputs: {} });
  const [predicted, setPredicted] = useState(pour?.predicted ?? {});
  const [taken, setTaken] = useState(-1);
  const [day, setDay] = useState(pour?.day ?? draft?.day ?? new Date().toISOString().slice(0, 10));
  const [habit] = useState(readHabit);
  const length = habitUnit('mm', habit);
  const before = ({ name, in: place }: Asked): number | undefined =>
    (pour?.[place] as Readonly<Record<string, number | undefined>> | undefined)?.[name];
  const [texts, setTexts] = useState<Readonly<Record<string, string>>>(() =>
    Object.fromEntries(asked.map((one) => [one.name, shown(before(one), habitUnit(one.unit, habit))])),
  );
  const rowsOf = (sections: readonly FoundSection[]): readonly Row[] =>
    sections.map((one) => rowOf(one, length));
  const [rows, setRows] = useState<readonly Row[]>(pour ? rowsOf(pour.found.sections) : [emptyRow]);
  const [defects, setDefects] = useState<readonly string[]>(pour?.found.defects ?? []);
  const [note, setNote] = useState(pour?.found.note ?? draft?.note ?? '');
  const [photos, setPhotos] = useState<readonly string[]>(pour?.found.photos ?? draft?.photos ?? []);
  const [begunOpen] = useState(note !== '' || photos.length > 0 || defects.length > 0);
  const [wrong, setWrong] = useState<readonly string[]>([]);

  async function takePlan(at: number): Promise<void> {
    const chosen = plans[at];
    if (!chosen) return;
    setTaken(at);
    setPlan({ name: chosen.name, inputs: chosen.texts });
    const books = await fetch(props.books)
      .then((answer) => (answer.ok ? answer.json() : {}))
      .catch(() => ({}));
    const { predictionOf } = await import('./prediction.ts');
    const found = predictionOf(chosen.texts, books as never);
    setPredicted(found.values);
    if (found.sections.length > 0) setRows(rowsOf(found.sections));
  }

  useEffect(() => {
    if (!pour && draft) void takePlan(plans.findIndex(({ name }) => name === draft.plan));
  }, []);

  function keep(): void {
    const problems: string[] = [];
    const number = (text: string, unit: UnitSymbol, label: string, was?: number): number | undefined => {
      const value = read(text, unit, label, was);
      // In SI, where no temperature lies below nought either.
      if (value === undefined || (typeof value === 'number' && value >= 0)) return value;
      problems.push(typeof value === 'string' ? value : `${label}: below nought.`);
      return undefined;
    };
    const some = (entries: readonly (readonly [string, number | undefined])[]): Record<string, number> =>
      Object.fromEntries(entries.filter((entry): entry is [string, number] => entry[1] !== undefined));
    const of = (place: Asked['in']): Record<string, number> =>
      some(
        asked
          .filter((one) => one.in === place)
          .map((one) => {
            const unit = habitUnit(one.unit, habit);
            return [one.name, number(texts[one.name] ?? '', unit, one.label, before(one))] as const;
          }),
      );
    const sections = rows
      .filter(({ name }) => name.trim() !== '')
      .map((row) => ({
        name: row.name.trim(),
        filled: row.filled,
        ...some([
          ['modulus', number(row.modulus, length, `${row.name}, modulus`, row.from?.modulus)],
          ['froze', number(row.froze, 's', `${row.name}, time to freeze`, row.from?.froze)],
          ['margin', number(row.margin, '1', `${row.name}, margin`, row.from?.margin)],
        ]),
      }));
    if (plan.name.trim() === '') problems.push('The part needs a name.');
    if (!/^\d{4}-\d\d-\d\d$/.test(day)) problems.push('The day is missing.');
    const did = of('did');
    const found: Found = { ...of('found'), sections, defects, note, photos };
    const { charge } = did;
    const { casting = 0, rest = 0 } = found;
    if (charge !== undefined && casting + rest > 1.02 * charge)
      problems.push('More metal came back than was weighed out: check the three masses.');
    setWrong(problems);
    if (problems.length > 0) return;
    props.onKeep({
      id: pour?.id ?? draft?.id ?? crypto.randomUUID(),
      day,
      plan,
      predicted,
      did,
      found,
      marks: [...(pour?.marks ?? []), newMark()],
      ...(pour?.invented ? { invented: true as const } : {}),
    });
  }

  const setRow = (at: number, change: Partial<Row>): void =>
    setRows(rows.map((row, n) => (n === at ? { ...row, ...change } : row)));

  return (
    <form
      class="pour-form on-screen"
      aria-label={pour ? 'Change a pour' : 'Write down a pour'}
      onSubmit={(event) => {
        event.preventDefault();
        keep();
      }}
    >
      <div class="asks">
        <label>
          Take a plan of this device
          <select onChange={(event) => void takePlan(Number(event.currentTarget.value))}>
            <option value="-1">{pour ? 'as it is kept' : 'none'}</option>
            {plans.map(({ name }, n) => (
              <option value={String(n)} selected={n === taken}>
                {name}
              </option>
            ))}
          </select>
        </label>
        <label>
          Part
          <input
            type="text"
            value={plan.name}
            onInput={(event) => setPlan({ ...plan, name: event.currentTarget.value.slice(0, 80) })}
          />
        </label>
        <label>
          Day
          <input type="date" value={day} onInput={(event) => setDay(event.currentTarget.value)} />
        </label>
      </div>
      {(['did', 'found'] as const).map((place) => (
        <fieldset>
          <legend>{place === 'did' ? 'What did you do?' : 'What came out?'}</legend>
          <div class="asks">
            {asked
              .filter((one) => one.in === place)
              .map(({ name, label, unit }) => (
                <label>
                  {label}, {unitLabel(habitUnit(unit, habit))}
                  <input
                    type="text"
                    inputMode="decimal"
                    autocomplete="off"
                    value={texts[name]}
                    onInput={(event) => setTexts({ ...texts, [name]: event.currentTarget.value })}
                  />
                </label>
              ))}
          </div>
        </fieldset>
      ))}
      <fieldset>
        <legend>Which sections filled?</legend>
        {rows.map((row, at) => (
          <div class="asks section" role="group" aria-label={row.name || `Section ${at + 1}`}>
            <label>
              Section
              <input
                type="text"
                value={row.name}
                onInput={(event) => setRow(at, { name: event.currentTarget.value })}
              />
            </label>
            <label>
              It was
              <select
                value={row.filled}
                onChange={(event) =>
                  setRow(at, { filled: event.currentTarget.value as FoundSection['filled'] })
                }
              >
                {fills.map((one) => (
                  <option value={one} selected={one === row.filled}>
                    {fillWords[one]}
                  </option>
                ))}
              </select>
            </label>
            {(
              [
                ['froze', 'Solid after, s'],
                ['modulus', `Modulus, ${length}`],
                ['margin', 'Margin planned'],
              ] as const
            ).map(([name, label]) => (
              <label>
                {label}
                <input
                  type="text"
                  inputMode="decimal"
                  autocomplete="off"
                  value={row[name]}
                  onInput={(event) => setRow(at, { [name]: event.currentTarget.value })}
                />
              </label>
            ))}
          </div>
        ))}
        <button type="button" onClick={() => setRows([...rows, emptyRow])}>
          Another section
        </button>
      </fieldset>
      <details open={begunOpen}>
        <summary>Note, photos, defects</summary>
        <label>
          Note
          <textarea value={note} onInput={(event) => setNote(event.currentTarget.value.slice(0, 4000))} />
        </label>
        <p class="row">
          <label class="press">
            <input
              type="file"
              class="unseen"
              accept="image/*"
              onChange={(event) => {
                const file = event.currentTarget.files?.[0];
                if (file)
                  void smallPhoto(file).then(
                    (photo) => setPhotos((now) => [...now, photo].slice(0, mostPhotos)),
                    () => setWrong(['That photo could not be read.']),
                  );
                event.currentTarget.value = '';
              }}
            />
            Add a photo
          </label>
          {photos.map((photo, n) => (
            <button type="button" onClick={() => setPhotos(photos.filter((_, at) => at !== n))}>
              Take photo {n + 1} out
              <img src={photo} alt="" width="60" />
            </button>
          ))}
        </p>
        <div class="defects">
          {props.defects.map(({ id, name }) => (
            <label>
              <input
                type="checkbox"
                checked={defects.includes(id)}
                onChange={(event) =>
                  setDefects(
                    event.currentTarget.checked ? [...defects, id] : defects.filter((one) => one !== id),
                  )
                }
              />{' '}
              {name}
            </label>
          ))}
        </div>
      </details>
      {wrong.length > 0 && (
        <div class="problems" role="alert">
          {wrong.map((text) => (
            <p>{text}</p>
          ))}
        </div>
      )}
      <p class="row">
        <button type="submit" class="first">
          Keep this pour
        </button>
        <button type="button" onClick={props.onClose}>
          Close without keeping
        </button>
      </p>
    </form>
  );
}
