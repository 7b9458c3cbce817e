import erfcxReference from '@stdlib/math-base-special-erfcx';
import { erfcx } from '../../calculators/core/special.ts';
import { unit, type UnitSymbol } from '../../calculators/core/units.ts';
import { elsewhere, inMath, inUcum } from '../core/units-elsewhere.ts';

/** How far one part of the engine is from a general-purpose library that knows nothing of it. */
export interface Agreement {
  readonly id: string;
  readonly what: string;
  readonly library: string;
  readonly points: number;
  /** Greatest relative difference, and where. */
  readonly worst: number;
  readonly at: string;
  readonly allowed: number;
  readonly note: string;
}

function worstOf(pairs: readonly (readonly [at: string, ours: number, theirs: number])[]) {
  let worst = 0;
  let where = '';
  for (const [at, ours, theirs] of pairs) {
    const off = Math.abs(ours / theirs - 1);
    if (off >= worst) [worst, where] = [off, at];
  }
  return { points: pairs.length, worst, at: where };
}

const symbols = Object.keys(elsewhere) as UnitSymbol[];

const unitsBy = (name: 'ucum' | 'math', convert: (from: string, to: string) => number) =>
  worstOf(
    symbols.flatMap((symbol) => {
      const { si, [name]: other } = elsewhere[symbol]!;
      return other === undefined
        ? []
        : [[symbol, unit(symbol).factor, convert(other, si[name === 'ucum' ? 0 : 1])] as const];
    }),
  );

const places = Array.from({ length: 1757 }, (_, i) => -5 + 0.037 * i);

/** Worked when the page is built, and tested: nothing in it is kept by hand. */
export const agreements: readonly Agreement[] = [
  {
    id: 'units-ucum',
    what: 'Factor of every unit that is not coherent in the SI',
    library: '@lhncbc/ucum-lhc, Unified Code for Units of Measure',
    ...unitsBy('ucum', inUcum),
    allowed: 1e-6,
    note: 'Mercury is left out: that code rounds it, three parts in a million apart.',
  },
  {
    id: 'units-mathjs',
    what: 'The same, by a second table of units',
    library: 'mathjs',
    ...unitsBy('math', inMath),
    allowed: 1e-6,
    note: 'The torr is left out: that table rounds it to 133.322 Pa.',
  },
  {
    id: 'erfcx',
    what: 'The scaled error function, which the freezing times with an interface stand on',
    library: '@stdlib/math-base-special-erfcx',
    ...worstOf(places.map((x) => [`x = ${x.toFixed(3)}`, erfcx(x), erfcxReference(x)] as const)),
    allowed: 2e-13,
    note: 'From −5 to 60.',
  },
];
