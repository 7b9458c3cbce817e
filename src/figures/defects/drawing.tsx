import type { ComponentChildren, JSX } from 'preact';

/** A section through a casting and its mould, 160 × 110, with the one sentence that says what to see. */
export interface Drawing {
  readonly says: string;
  readonly lines: JSX.Element;
}

interface Shape {
  readonly d: string;
}

/** The hatch of sand and the stipple of investment, once on the page. */
export function SandAndInvestment(): JSX.Element {
  return (
    <svg width="0" height="0" style={{ position: 'absolute' }} aria-hidden="true">
      <defs>
        <pattern
          id="defect-sand"
          width="4.5"
          height="4.5"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <path d="M0 0V4.5" stroke="var(--edge)" stroke-width="0.8" />
        </pattern>
        <pattern id="defect-investment" width="5" height="5" patternUnits="userSpaceOnUse">
          <circle cx="1.2" cy="1.2" r="0.6" fill="var(--edge)" />
          <circle cx="3.7" cy="3.7" r="0.6" fill="var(--edge)" />
        </pattern>
      </defs>
    </svg>
  );
}

export function DefectDrawing({
  id,
  drawing: { says, lines },
}: {
  id: string;
  drawing: Drawing;
}): JSX.Element {
  return (
    <>
      <svg viewBox="0 0 160 110" role="img" aria-labelledby={`${id}-drawn`}>
        {lines}
      </svg>
      <figcaption id={`${id}-drawn`}>{says}</figcaption>
    </>
  );
}

/** Sand, all over unless a shape is given. */
export function Sand({ d = 'M2 2H158V108H2z' }: Partial<Shape>): JSX.Element {
  return <path d={d} style={{ fill: 'url(#defect-sand)' }} />;
}

export function Investment({ d = 'M2 2H158V108H2z' }: Partial<Shape>): JSX.Element {
  return <path d={d} style={{ fill: 'url(#defect-investment)' }} />;
}

export function Metal({ d }: Shape): JSX.Element {
  return <path class="solid" d={d} fill-rule="evenodd" />;
}

/** What is hollow: a hole in the metal. */
export function Hollow({ d }: Shape): JSX.Element {
  return <path class="open" d={d} />;
}

/** A part of the cavity that stayed empty: blank, with the face of the mould as its line. */
export function Cavity({ d }: Shape): JSX.Element {
  return (
    <>
      <path class="open" d={d} />
      <path class="ink" d={d} />
    </>
  );
}

/** Round hollows: x, y, radius. */
export function Rounds({
  at,
  kind = 'open',
}: {
  at: readonly (readonly [number, number, number])[];
  kind?: 'open' | 'solid' | 'other' | 'ink';
}): JSX.Element {
  return (
    <>
      {at.map(([x, y, r]) => (
        <circle key={`${x} ${y}`} class={kind} cx={x} cy={y} r={r} />
      ))}
    </>
  );
}

/** A line in the metal. */
export function Seam({ d, dashed }: Shape & { dashed?: boolean }): JSX.Element {
  return <path class={dashed ? 'seam dashed' : 'seam'} d={d} />;
}

export function Ink({ d, dashed }: Shape & { dashed?: boolean }): JSX.Element {
  return <path class={dashed ? 'ink dashed' : 'ink'} d={d} />;
}

export function Label({
  x,
  y,
  metal,
  children,
}: {
  x: number;
  y: number;
  metal?: boolean;
  children: ComponentChildren;
}): JSX.Element {
  return (
    <text class={metal ? 'label on-metal' : 'label over'} x={x} y={y} text-anchor="middle">
      {children}
    </text>
  );
}
