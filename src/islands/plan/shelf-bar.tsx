import type { Shelf } from './store.ts';

export interface ShelfBarProps {
  readonly shelf: Shelf;
  readonly onOpen: (at: number) => void;
  readonly onName: (name: string) => void;
  /** The name is settled: an empty one gets a name again. */
  readonly onNamed: () => void;
  readonly onNew: () => void;
  readonly onCopy: () => void;
  readonly onDelete: () => void;
  readonly onExport: () => void;
  readonly onImport: (file: File) => void;
  readonly onShare: () => void;
  readonly onPrint: () => void;
}

/** The plans on this device: which one is open, its name, and what can be done with it. */
export function ShelfBar(props: ShelfBarProps) {
  const { shelf } = props;
  const open = shelf.plans[shelf.open]!;
  return (
    <>
      <div class="which">
        <label htmlFor="plan-open">Open</label>
        <select
          id="plan-open"
          value={String(shelf.open)}
          onChange={(event) => props.onOpen(Number(event.currentTarget.value))}
        >
          {shelf.plans.map(({ name }, at) => (
            <option value={String(at)} selected={at === shelf.open}>
              {name || 'Plan without a name'}
            </option>
          ))}
        </select>
      </div>
      <div class="which">
        <label htmlFor="plan-name">Name</label>
        <input
          id="plan-name"
          type="text"
          autocomplete="off"
          maxLength={60}
          value={open.name}
          onInput={(event) => props.onName(event.currentTarget.value)}
          onBlur={props.onNamed}
        />
      </div>
      <div class="deeds">
        <button type="button" onClick={props.onNew}>
          New
        </button>
        <button type="button" onClick={props.onCopy}>
          Copy
        </button>
        <button type="button" onClick={props.onDelete}>
          Delete
        </button>
        <button type="button" onClick={props.onExport}>
          Export file
        </button>
        <label class="press">
          <input
            type="file"
            class="unseen"
            accept=".json,application/json"
            onChange={(event) => {
              const file = event.currentTarget.files?.[0];
              if (file) props.onImport(file);
              event.currentTarget.value = '';
            }}
          />
          Import file
        </label>
        <button type="button" onClick={props.onShare}>
          Share link
        </button>
        <button type="button" onClick={props.onPrint}>
          Print
        </button>
      </div>
    </>
  );
}
