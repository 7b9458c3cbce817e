import { useRef } from 'preact/hooks';
import type { Input, ListInput } from '../../calculators/core/model.ts';
import { homeUnit, type Entry } from './entries.ts';
import { isEntry, newRow, readingOf, usualRows, type Cell, type FormRow } from './form-entries.ts';
import { Kept } from './kept.tsx';
import { Group, PlainField, QuantityField, written, type FieldOf, type MaterialName } from './model-form.tsx';

/** A list of rows, each in a fold of its own that says its first sizes. */
export function ListField(
  props: FieldOf & {
    readonly spec: ListInput;
    readonly says: readonly string[];
  },
) {
  const { id, name, spec, form } = props;
  // No `useId`: it would count another way where each field wakes by itself.
  const head = `${id}-${name}-head`;
  const rows = (form[name] as readonly FormRow[] | undefined) ?? usualRows(spec);
  const put = (next: readonly FormRow[], said?: string): void => props.put(name, next, said);
  const full = rows.length >= spec.most;
  const more = useRef<HTMLButtonElement>(null);
  const takeOut = (at: number, title: string): void => {
    // The last row takes its buttons with it, and the hand on the keyboard needs somewhere to stand.
    if (at === rows.length - 1) more.current?.focus();
    put(
      rows.filter((_, i) => i !== at),
      `${title} taken out.`,
    );
  };
  const latest = useRef(rows);
  latest.current = rows;
  const replace = (at: number, cell: string, value: Cell): void =>
    put(latest.current.map((row, i) => (i === at ? { ...row, [cell]: value } : row)));
  return (
    <div class="list" role="group" aria-labelledby={head}>
      <p id={head} class="list-name">
        {spec.name}
      </p>
      {spec.note !== undefined && <p class="says">{spec.note}</p>}
      {props.says.map((text) => (
        <p class="says warning">{text}</p>
      ))}
      {rows.map((row, at) => {
        const title = titleOf(row, spec, at);
        return (
          <Group key={at} name={title} says={digest(row, spec)} wrong={rowWrong(row, spec)}>
            {() => (
              <>
                {asked(row, spec).map(([cell, cellSpec]) => (
                  <Kept key={cell} on={[row[cell], cellSpec, props.withSpread, props.materials]}>
                    {() => (
                      <RowCell
                        id={`${id}-${name}-${at + 1}-${cell}`}
                        spec={cellSpec}
                        value={row[cell]}
                        withSpread={props.withSpread}
                        materials={props.materials}
                        onChange={(value) => replace(at, cell, value)}
                      />
                    )}
                  </Kept>
                ))}
                <p class="row-actions">
                  <button
                    type="button"
                    aria-disabled={full}
                    onClick={() => !full && put([...rows.slice(0, at + 1), row, ...rows.slice(at + 1)])}
                  >
                    Copy {title}
                  </button>
                  <button
                    type="button"
                    aria-disabled={rows.length < 2}
                    onClick={() => rows.length > 1 && takeOut(at, title)}
                  >
                    Take out {title}
                  </button>
                </p>
              </>
            )}
          </Group>
        );
      })}
      <button
        ref={more}
        type="button"
        aria-disabled={full}
        onClick={() => !full && put([...rows, newRow(spec)])}
      >
        {full ? `No more than ${spec.most}` : 'Add one'}
      </button>
    </div>
  );
}

function RowCell(props: {
  readonly id: string;
  readonly spec: Exclude<Input, ListInput>;
  readonly value: Cell | undefined;
  readonly withSpread: boolean;
  readonly materials: readonly MaterialName[];
  readonly onChange: (value: Cell) => void;
}) {
  const { spec, value } = props;
  if (spec.kind === 'quantity') {
    const entry = isEntry(value) ? value : { text: '', unit: homeUnit(spec), spread: '' };
    return (
      <QuantityField
        id={props.id}
        spec={spec}
        entry={entry}
        withSpread={props.withSpread}
        onChange={props.onChange}
      />
    );
  }
  return (
    <PlainField
      id={props.id}
      spec={spec}
      value={typeof value === 'string' || typeof value === 'boolean' ? value : spec.usual}
      materials={props.materials}
      onChange={props.onChange}
    />
  );
}

/** The cells a row asks for, as it stands. */
const asked = (row: FormRow, spec: ListInput): readonly (readonly [string, Exclude<Input, ListInput>])[] =>
  Object.entries(spec.item).filter(([, cell]) => {
    if (cell.kind !== 'quantity' || cell.unless === undefined) return true;
    const { choice, is } = cell.unless;
    return (row[choice] ?? spec.item[choice]?.usual) !== is;
  });

export function titleOf(row: FormRow, spec: ListInput, at: number): string {
  const words = Object.entries(spec.item).find(([, cell]) => cell.kind === 'text')?.[0];
  const text = words === undefined ? undefined : row[words];
  return typeof text === 'string' && text.trim() !== '' ? text.trim() : `Number ${at + 1}`;
}

/** The first sizes of a row, for its closed fold; a count among them would read as one. */
export function digest(row: FormRow, spec: ListInput): string {
  return asked(row, spec)
    .filter(([, cell]) => cell.kind === 'quantity' && cell.unit !== '1')
    .map(([cell]) => row[cell])
    .filter((cell): cell is Entry => isEntry(cell) && cell.text.trim() !== '')
    .slice(0, 3)
    .map(written)
    .join(' × ');
}

function rowWrong(row: FormRow, spec: ListInput): boolean {
  return asked(row, spec).some(([cell, cellSpec]) => {
    const held = row[cell];
    return cellSpec.kind === 'quantity' && isEntry(held) && readingOf(held, cellSpec)?.ok === false;
  });
}
