import { lengthUnits, type LengthUnit } from './mesh-file.ts';

/** Longest sides of what is cast at a bench, m. */
const usual = [0.008, 0.4] as const;
const order: readonly LengthUnit[] = ['millimetre', 'inch', 'centimetre', 'metre'];

/** The unit a drawing is most likely in, and why, said aloud; a file of STL or OBJ does not know its own. */
export function guessUnit(longest: number): {
  readonly unit: LengthUnit;
  readonly says: string;
  readonly sure: boolean;
} {
  const fits = order.filter((unit) => {
    const size = longest * lengthUnits[unit];
    return size >= usual[0] && size <= usual[1];
  });
  const unit = fits[0] ?? 'millimetre';
  const other = order.find((one) => one !== unit && fits.includes(one));
  const inUnit = (one: LengthUnit): string => sizeText(longest * lengthUnits[one]);
  const written = `The file has no unit. Its longest side is ${plain(longest)}`;
  if (fits.length === 0)
    return {
      unit,
      sure: false,
      says: `${written}: in millimetres ${inUnit('millimetre')}, in inches ${inUnit('inch')}, in metres ${inUnit('metre')}. None is the size of a bench casting, so say which it is.`,
    };
  if (other === undefined)
    return {
      unit,
      sure: true,
      says: `${written}, and only in ${plural(unit)} is that a bench casting: ${inUnit(unit)}. So it is taken as ${plural(unit)}.`,
    };
  return {
    unit,
    sure: unit === 'millimetre' && longest >= 20,
    says: `${written}: ${inUnit(unit)} in ${plural(unit)}, ${inUnit(other)} in ${plural(other)}. It is taken as ${plural(unit)}; measure one side of the part to be sure.`,
  };
}

const plain = (x: number): string => String(Number(x.toPrecision(3)));

/** A length in metres as it is said at the bench. */
export function sizeText(metres: number): string {
  if (metres >= 1) return `${plain(metres)} m`;
  if (metres < 1e-4) return `${plain(metres * 1e6)} µm`;
  return `${plain(metres * 1000)} mm`;
}

export const plural = (unit: LengthUnit): string =>
  unit === 'inch' ? 'inches' : unit === 'foot' ? 'feet' : `${unit}s`;
