import { useEffect, useState } from 'preact/hooks';
import { habitUnit, type Habit } from '../../../calculators/core/shop-units.ts';
import type { Books, Form, Inputs } from '../form-entries.ts';
import { inputLine } from '../input-line.ts';
import type { MaterialName } from '../model-form.tsx';

const months = 'January February March April May June July August September October November December'.split(
  ' ',
);

/** The browser's own words for a day take it longer to fetch than the whole plan takes to wake. */
const dayOf = (now: Date): string => `${now.getDate()} ${months[now.getMonth()]} ${now.getFullYear()}`;

/** The head of the sheet for the shop wall: name, day, version, and the way back with its numbers. */
export function Paper(props: {
  readonly name: string;
  readonly version: string;
  readonly qr: { readonly link: string; readonly svg: string } | undefined;
  readonly habit: Habit;
}) {
  const [day, setDay] = useState('');
  useEffect(() => {
    const stamp = (): void => setDay(dayOf(new Date()));
    stamp();
    addEventListener('beforeprint', stamp);
    return () => removeEventListener('beforeprint', stamp);
  }, []);
  const { name, version, qr, habit } = props;
  const [degrees, mass] = [habitUnit('°C', habit), habitUnit('g', habit)];
  return (
    <div class="paper on-paper">
      {qr !== undefined && qr.svg !== '' && (
        <div
          class="qr"
          role="img"
          aria-label="Square code with the address of this plan"
          dangerouslySetInnerHTML={{ __html: qr.svg }}
        />
      )}
      <div>
        <p class="paper-name">{name}</p>
        <p>
          {day}. Version {version}.{qr !== undefined && ' The square opens this plan with its numbers.'}
        </p>
        <p class="found">
          Poured on ……………… Mould ……… {degrees} Metal ……… {degrees} Gauge ……… Weighed ……… {mass}
        </p>
      </div>
    </div>
  );
}

/** The inputs on paper: the questions asked first, and whatever else was changed. */
export function PaperInputs(props: {
  readonly inputs: Inputs;
  readonly form: Form;
  readonly books: Books;
  readonly materials: readonly MaterialName[];
}) {
  const { inputs, form, books, materials } = props;
  const names = Object.keys(inputs).filter((name) => inputs[name]!.first || form[name] !== undefined);
  return (
    <>
      <h3>Worked from</h3>
      <dl>
        {names.map((name) => (
          <div>
            <dt>{inputs[name]!.name}</dt> <dd>{inputLine(name, inputs, form, books, materials)}</dd>
          </div>
        ))}
      </dl>
      <p>Every other number stands at its usual value or at its material’s.</p>
    </>
  );
}
