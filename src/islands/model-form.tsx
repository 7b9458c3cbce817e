import type { ComponentChildren } from 'preact';
import { useRef, useState } from 'preact/hooks';
import type {
  ChoiceInput,
  FlagInput,
  MaterialInput,
  QuantityInput,
  TextInput,
} from '../../calculators/core/model.ts';
import { unitLabel } from '../../calculators/core/print.ts';
import { rangeEnd, warningsFor } from '../../calculators/core/solve.ts';
import { toSI, type UnitSymbol } from '../../calculators/core/units.ts';
import { homeUnit, type Entry } from './entries.ts';
import { Field } from './field.tsx';
import {
  bookEntry,
  entryIn,
  isYours,
  readingOf,
  unreadable,
  type Books,
  type Form,
  type Held,
  type Inputs,
} from './form-entries.ts';
import { Kept } from './kept.tsx';
import type { Later } from './later.tsx';
import type { ListField } from './list-field.tsx';
import { Sign } from './sign.tsx';
import '../styles/model-form.css';

export interface MaterialName {
  readonly id: string;
  readonly role: string;
  readonly name: string;
}

export interface ModelFormProps {
  /** Unique on the page; ids of fields begin with it. */
  readonly id: string;
  readonly inputs: Inputs;
  readonly form: Form;
  readonly books: Books;
  readonly materials: readonly MaterialName[];
  readonly withSpread: boolean;
  /** `said` when the change can be undone and should be told: a row removed. */
  readonly onChange: (form: Form, said?: string) => void;
  /** What the calculation says about an input, by its name. */
  readonly problems?: Readonly<Record<string, readonly string[]>>;
  /** The heading the folded groups stand under, of the rank the page has there. */
  readonly more?: ComponentChildren;
  /** Each field wakes in its turn, in this. */
  readonly late?: typeof Later;
  /** What draws a list of rows; a form that has none leaves it out, and its page is the lighter for it. */
  readonly rows?: typeof ListField;
}

/** The form of any model: what is asked first stands open, the rest is folded by group. */
export function ModelForm(props: ModelFormProps) {
  const { inputs, form, books } = props;
  // A field that is not made again still changes the form as it stands now.
  const latest = useRef(props);
  latest.current = props;
  const put = useRef((name: string, held: Held | undefined, said?: string): void => {
    const { [name]: _, ...rest } = latest.current.form;
    latest.current.onChange(held === undefined ? rest : { ...rest, [name]: held }, said);
  }).current;
  const names = Object.keys(inputs);
  const asked = names.filter((name) => inputs[name]!.first);
  const folded = names.filter((name) => !inputs[name]!.first);
  const groups = [...new Set(folded.map((name) => inputs[name]!.group ?? 'More'))];
  const bad = new Set(unreadable(inputs, form, books).map(({ input }) => input));
  const one = (name: string) => {
    const spec = inputs[name]!;
    const material = spec.kind === 'quantity' && spec.from ? form[spec.from.input] : undefined;
    const on = [
      form[name],
      material,
      props.withSpread,
      props.problems?.[name],
      inputs,
      books,
      props.materials,
    ];
    const made = () => <InputField {...props} name={name} put={put} />;
    return props.late ? (
      <props.late key={name} class="later" on={on}>
        {made}
      </props.late>
    ) : (
      <Kept key={name} on={on}>
        {made}
      </Kept>
    );
  };
  return (
    <div class="model-form">
      <div class="asked">{(asked.length > 0 ? asked : names).map(one)}</div>
      {asked.length > 0 && groups.length > 0 && (
        <div class="groups">
          {props.more}
          {groups.map((group) => {
            const of = folded.filter((name) => (inputs[name]!.group ?? 'More') === group);
            const yours = of.filter((name) => {
              const spec = inputs[name]!;
              return (
                spec.kind === 'quantity' && isYours(form[name], spec, bookEntry(spec, inputs, form, books))
              );
            }).length;
            const wrong = of.filter((name) => bad.has(name)).length;
            return (
              <Group
                key={group}
                name={group}
                says={[
                  `${of.length}`,
                  ...(yours > 0 ? [`${yours} yours`] : []),
                  ...(wrong > 0 ? [`${wrong} cannot be read`] : []),
                ].join(', ')}
                wrong={wrong > 0}
              >
                {() => of.map(one)}
              </Group>
            );
          })}
        </div>
      )}
    </div>
  );
}

/** A fold whose fields are made when it is first opened: most readers never open most of them. */
export function Group(props: {
  readonly name: string;
  readonly says: string;
  readonly wrong: boolean;
  readonly children: () => ComponentChildren;
}) {
  const [seen, setSeen] = useState(false);
  return (
    <details class="group" onToggle={(event) => event.currentTarget.open && setSeen(true)}>
      <summary>
        {props.name}
        <span class={props.wrong ? 'count wrong' : 'count'}>{props.says}</span>
      </summary>
      {seen && <div class="asked">{props.children()}</div>}
    </details>
  );
}

export interface FieldOf extends Omit<ModelFormProps, 'onChange'> {
  readonly name: string;
  readonly put: (name: string, held: Held | undefined, said?: string) => void;
}

function InputField(props: FieldOf) {
  const { id, inputs, form, books, name, problems } = props;
  const spec = inputs[name]!;
  const put = (held: Held | undefined): void => props.put(name, held);
  const says = problems?.[name] ?? [];
  if (spec.kind === 'list') {
    if (!props.rows)
      throw new Error(`${id}: "${name}" is a list, and the form was given no rows to draw it.`);
    return <props.rows {...props} spec={spec} says={says} />;
  }
  if (spec.kind !== 'quantity') {
    const held = form[name];
    const value = typeof held === 'string' || typeof held === 'boolean' ? held : spec.usual;
    return (
      <PlainField
        id={`${id}-${name}`}
        spec={spec}
        value={value}
        materials={props.materials}
        says={says}
        onChange={put}
      />
    );
  }
  const book = bookEntry(spec, inputs, form, books);
  const yours = isYours(form[name], spec, book);
  const chosen = spec.from && chosenName(spec.from.input, props);
  return (
    <div class="with-book">
      <QuantityField
        id={`${id}-${name}`}
        spec={spec}
        entry={entryIn(name, spec, inputs, form, books)}
        withSpread={props.withSpread}
        says={says}
        book={book}
        onChange={put}
      />
      {spec.from && (
        <p class="book">
          {yours ? (
            <>
              <strong class="yours">Yours.</strong>{' '}
              <button type="button" onClick={() => put(undefined)}>
                {book ? `Back to ${written(book)}` : 'Clear'}
                <span class="unseen"> for {spec.name}</span>
              </button>
            </>
          ) : book ? (
            `From the material: ${chosen}.`
          ) : (
            `No number known for ${chosen}: type your own.`
          )}
        </p>
      )}
    </div>
  );
}

function chosenName(
  input: string,
  { inputs, form, materials }: Pick<ModelFormProps, 'inputs' | 'form' | 'materials'>,
): string {
  const held = form[input];
  const spec = inputs[input];
  const id = typeof held === 'string' ? held : spec?.kind === 'material' ? spec.usual : '';
  return materials.find((material) => material.id === id)?.name ?? id;
}

/** `154 kJ/kg`: an entry as it reads, without its spread. */
export const written = ({ text, unit: symbol }: Entry): string =>
  `${text.replace('-', '−')} ${unitLabel(symbol)}`.trim();

/** The spread as it stands beside a number whose `±` field is not shown. */
export function spreadOf({ spread, unit: symbol }: Entry): string {
  const text = spread.trim().replace('Δ', '');
  if (text === '') return '';
  return /[a-z%°µ]/i.test(text) ? `± ${text}` : `± ${text} ${unitLabel(symbol)}`.trim();
}

export function QuantityField(props: {
  readonly id: string;
  readonly spec: QuantityInput;
  readonly entry: Entry;
  readonly withSpread: boolean;
  readonly says?: readonly string[];
  readonly book?: Entry | undefined;
  readonly onChange: (entry: Entry) => void;
}) {
  const { spec, entry } = props;
  const reading = readingOf(entry, spec, props.book);
  const about = reading?.ok ? warningsFor({ ...spec, show: entry.unit }, spec.name, reading.value) : [];
  const spread = props.withSpread ? '' : spreadOf(entry);
  return (
    <Field
      id={props.id}
      name={spec.name}
      label={
        <>
          {spec.sign !== undefined && (
            <>
              <Sign text={spec.sign} />{' '}
            </>
          )}
          {spec.name}
        </>
      }
      spec={spec}
      entry={entry}
      reading={
        reading ?? { ok: true, value: 0, unit: homeUnit(spec), written: 0, figures: 1, note: 'Left open.' }
      }
      withSpread={props.withSpread}
      warnings={[...about.map(({ message }) => message), ...(props.says ?? [])]}
      refused={about.some(({ refuses }) => refuses)}
      note={[spread, spec.note ?? rangeText(spec, entry.unit)].filter(Boolean).join('. ')}
      onChange={(next) => next !== entry && props.onChange(next)}
    />
  );
}

/** For a number without a note of its own: where it usually lies, in the unit beside it. */
function rangeText(spec: QuantityInput, symbol: UnitSymbol): string {
  if (!spec.range) return '';
  const at = (value: number): string => rangeEnd(toSI(value, spec.unit), symbol);
  return `Between ${at(spec.range[0])} and ${at(spec.range[1])} ${unitLabel(symbol)}`.trim() + '.';
}

type PlainInput = ChoiceInput | MaterialInput | FlagInput | TextInput;

export function PlainField(props: {
  readonly id: string;
  readonly spec: PlainInput;
  readonly value: string | boolean;
  readonly materials: readonly MaterialName[];
  readonly says?: readonly string[];
  readonly onChange: (value: string | boolean) => void;
}) {
  const { id, spec, value, onChange } = props;
  const says = `${id}-says`;
  const below = (
    <div id={says} class="says">
      {(props.says ?? []).map((text) => (
        <p class="warning">{text}</p>
      ))}
      {spec.note !== undefined && <p class="note">{spec.note}</p>}
    </div>
  );
  if (spec.kind === 'flag') {
    return (
      <div class="field flag">
        <label for={id}>
          <input
            id={id}
            type="checkbox"
            checked={value === true}
            aria-describedby={says}
            onChange={(event) => onChange(event.currentTarget.checked)}
          />
          {spec.name}
        </label>
        {below}
      </div>
    );
  }
  const text = String(value);
  const options =
    spec.kind === 'choice'
      ? Object.entries(spec.options)
      : spec.kind === 'material'
        ? props.materials
            .filter(({ role }) => role === spec.role)
            .map(({ id: key, name }) => [key, name] as const)
        : [];
  const known = options.some(([key]) => key === text);
  return (
    <div class="field">
      <label for={id}>{spec.name}</label>
      {spec.kind === 'text' ? (
        <input
          id={id}
          type="text"
          autocomplete="off"
          value={text}
          aria-describedby={says}
          onInput={(event) => onChange(event.currentTarget.value)}
        />
      ) : (
        <select
          id={id}
          value={text}
          aria-describedby={says}
          onChange={(event) => onChange(event.currentTarget.value)}
        >
          {!known && <option value={text}>{text === '' ? 'choose' : `${text} (not known here)`}</option>}
          {options.map(([key, name]) => (
            <option value={key} selected={key === text}>
              {name}
            </option>
          ))}
        </select>
      )}
      {below}
    </div>
  );
}
