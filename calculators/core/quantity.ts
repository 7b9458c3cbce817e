import { nearest } from './nearest.ts';
import {
  findUnit,
  sameDimension,
  toSI,
  unit,
  unitsLike,
  unitSymbols,
  widthToSI,
  type Quantity,
  type Unit,
  type UnitSymbol,
} from './units.ts';

/** The field a text is typed into: a bare number is in `show`, or in `unit` when there is no other. */
export interface QuantityField {
  readonly unit: UnitSymbol;
  readonly show?: UnitSymbol | undefined;
}

export type Reading =
  | {
      readonly ok: true;
      /** In SI. */
      readonly value: number;
      readonly unit: UnitSymbol;
      /** The number as it stands before the unit. */
      readonly written: number;
      /** Significant figures as written: every digit after the first that is not zero. */
      readonly figures: number;
      /** Half-width in SI, when `± …` was written. */
      readonly spread?: number;
      /** How the text was read, when another reader could doubt it. */
      readonly note?: string;
    }
  | { readonly ok: false; readonly message: string };

/** Other names of a unit, as `unit names`, written as `keyOf` leaves them. */
const aliases = `% percent pct|°C C celsius|°F F fahrenheit|Δ°C dC ΔC|Δ°F dF ΔF|ΔK dK|deg ° degree|in "|ft ' feet|µm micron
|cm³ cc|g gm|lb lbm|oz ounce|ct carat|s sec|h hr|g/cm³ g/cc g/ml kg/l|Pa N/m2|mbar hPa|cfm ft3/min|ozt troyoz oztroy troyounce|dwt pwt|inHg "Hg inofHg inofmercury inchHg inchofmercury inchesHg inchesofHg inchesofmercury
|mmHg mmofHg mmofmercury|L/min lpm
|W/(m·K) W/mC|J/(kg·K) J/kgC|W/(m²·K) W/m2C|J·s^-½/(m²·K) J/(m²·K·√s) W·√s/(m²·K)`;

/** Units that are read, but where a workshop could mean another. */
const remarks: Partial<Record<UnitSymbol, string>> = {
  oz: 'oz is the avoirdupois ounce, 28.35 g; the troy ounce is ozt',
  gr: 'gr is the grain, 0.0648 g; the gram is g',
  ct: 'ct is the carat of mass, 0.2 g',
};

/** Forms with two meanings, each with both and the way out. */
const ambiguous: readonly (readonly [RegExp, string])[] = [
  [/^kt$/, 'kilotonnes or karat: type a mass in kg or a fineness in %'],
  [/^karats?$/, 'a fineness or the carat of mass: type % or ct'],
  [/^(t|ton)s?$/i, 'metric, imperial or US tons: type kg'],
  [/^(gal|gallon|pint|floz)s?$/i, 'imperial or US measure: type L or mL'],
  [/^mils?$/i, 'a thousandth of an inch or a millimetre: type thou or mm'],
  [/^Cal$/, 'calories or kilocalories: type cal or kcal'],
  [/^(psi|bar)[ag]$/i, 'read against vacuum or the ambient: type psi or bar as this field asks for it'],
  [/^M$/, 'metres or minutes: type m or min'],
];

const kinds: readonly (readonly [UnitSymbol, string])[] = [
  ['m', 'a length'],
  ['m²', 'an area'],
  ['m³', 'a volume'],
  ['kg', 'a mass'],
  ['s', 'a time'],
  ['Pa', 'a pressure'],
  ['kg/m³', 'a density'],
  ['m/s', 'a speed'],
  ['N', 'a force'],
  ['J', 'an energy'],
  ['W', 'a power'],
  ['K', 'a temperature'],
  ['ΔK', 'a temperature difference'],
  ['deg', 'an angle'],
  ['darcy', 'a permeability'],
  ['mg/m³', 'dust or fume in air'],
  ['1', 'a plain number or a percentage'],
];

/** Units that share a dimension with others and measure something else: never offered for one another. */
const apart: readonly (readonly string[])[] = [
  ['deg', 'rad'],
  ['darcy', 'AFS'],
  ['mg/m³', 'µg/m³'],
];

const choices = new Map<UnitSymbol, readonly Unit[]>();

/** Units a field of this unit offers: same dimension and kind, and an angle is never a percentage. */
export function unitChoices(symbol: UnitSymbol): readonly Unit[] {
  const known = choices.get(symbol);
  if (known) return known;
  const found = unitsLike(symbol).filter((other) =>
    apart.every((group) => group.includes(other.symbol) === group.includes(symbol)),
  );
  choices.set(symbol, found);
  return found;
}

function whatItIs(symbol: UnitSymbol): string {
  const kind = kinds.find(([like]) => unitChoices(like).some((other) => other.symbol === symbol));
  return kind ? kind[1] : `a number in ${unit(symbol).name}`;
}

/** One spelling for the many ways a unit is typed: no spaces, dots, brackets or raised figures. */
function keyOf(text: string): string {
  const plain = text
    .replace(/º/g, '°')
    .replace(/”|″/g, '"')
    .replace(/’|′/g, "'")
    .normalize('NFKC')
    .replace(/μ/g, 'u')
    .replace(/−/g, '-')
    .replace(/[\s·.*^()]/g, '')
    .replace(/^deg(rees?)?(?=[CFcf])/, '°')
    .replace(/^°(?=celsius|fahrenheit)/i, '');
  const [first = '', ...rest] = plain.split('/');
  return rest.length > 1 ? `${first}/${rest.join('')}` : plain;
}

const nameKey = (text: string): string =>
  keyOf(text)
    .toLowerCase()
    .replace(/meter/g, 'metre')
    .replace(/liter/g, 'litre')
    .replace(/gramme/g, 'gram');

let index: { exact: Map<string, UnitSymbol>; loose: Map<string, UnitSymbol> } | undefined;

function unitIndex(): { exact: Map<string, UnitSymbol>; loose: Map<string, UnitSymbol> } {
  if (index) return index;
  const exact = new Map<string, UnitSymbol>();
  const loose = new Map<string, UnitSymbol>();
  for (const row of aliases.split('|')) {
    const [symbol = '', ...names] = row.trim().split(' ');
    for (const name of names) exact.set(keyOf(name), symbol as UnitSymbol);
  }
  for (const symbol of unitSymbols) exact.set(keyOf(symbol), symbol);
  for (const [key, symbol] of exact) {
    const low = key.toLowerCase();
    if (!loose.has(low)) loose.set(low, symbol);
  }
  for (const symbol of unitSymbols) loose.set(nameKey(unit(symbol).name), symbol);
  index = { exact, loose };
  return index;
}

/** The unit a text names, or a sentence that says why it names none. */
function readUnit(text: string, field: UnitSymbol): UnitSymbol | { message: string } {
  const { exact, loose } = unitIndex();
  const key = keyOf(text);
  const quoted = `“${text.trim()}”`;
  if (/^\p{L}+\.? +\d[\d.,/]* *\p{L}+\.?$/u.test(text.trim()))
    return { message: `${quoted} makes two units of one number: type it in one, such as 1.25 lb or 150 s.` };
  const singular = key.replace(/s$/, '');
  const two = ambiguous.find(([form]) => form.test(key));
  if (two) return { message: `${quoted} could be ${two[1]}.` };
  if (/^(°|deg(rees?)?)$/i.test(key) && unit(field).kind !== 'plain')
    return { message: `${quoted} could be Celsius or Fahrenheit: type °C or °F.` };
  const found = exact.get(key) ?? (key.length > 2 ? exact.get(singular) : undefined);
  if (found) return found;
  const name = nameKey(text);
  for (const form of [name, name.replace(/e?s$/, ''), name.replace(/s$/, ''), name.replace(/s(?=per)/, '')]) {
    const named = loose.get(form);
    // A capital may change a unit a milliard times (mPa, MPa), so only a harmless one is overlooked.
    if (named && (keyOf(named)[0] === key[0] || !/^m/i.test(key) || key.length > 4)) return named;
  }
  if (!/[\p{L}%‰°"']/u.test(key[0] ?? '')) return { message: `${quoted} does not belong to a number.` };
  const near = nearest(
    name,
    [...unitChoices(field).map((other) => keyOf(other.symbol)), ...loose.keys()],
    1,
  )[0];
  const meant = near === undefined ? undefined : (exact.get(near) ?? loose.get(near));
  return {
    message: `No unit ${quoted} here; ${meant ? `the nearest is ${meant}` : field === '1' ? 'type the number alone' : `type it in ${field}`}.`,
  };
}

interface ReadNumber {
  readonly value: number;
  readonly figures: number;
  readonly rest: string;
  readonly doubtable: boolean;
}

const countFigures = (digits: string): number =>
  Math.max(1, digits.replace(/\D/g, '').replace(/^0+/, '').length);

/** The number at the start of a text: fractions, decimal commas, grouping, powers of ten. */
function readNumber(text: string): ReadNumber | { message: string } {
  const signed = /^([-+]?)\s*(.*)$/s.exec(text)!;
  const sign = signed[1] === '-' ? -1 : 1;
  const body = signed[2]!;
  const fraction = /^(?:(\d+)(?: +| *- *))?(\d+) *\/ *(\d+)(?![\d.,])/.exec(body);
  if (fraction) {
    const [all, whole, top, bottom] = fraction;
    const part = Number(top) / Number(bottom);
    if (!Number.isFinite(part)) return { message: 'A fraction cannot have zero below the line.' };
    if (whole !== undefined && part >= 1)
      return { message: `“${all.trim()}” is not a number and a fraction.` };
    return {
      value: sign * (Number(whole ?? 0) + part),
      figures: 4,
      rest: body.slice(all.length),
      doubtable: whole !== undefined,
    };
  }
  const digits = /^(?:\d[\d.,]*(?: \d{3}(?!\d)[\d.,]*)*|[.,]\d+)/.exec(body)?.[0];
  if (digits === undefined) return { message: 'Start with a number, for example' };
  let rest = body.slice(digits.length);
  const marks = digits.replace(/[\d ]/g, '');
  const last = marks.slice(-1);
  let plain = digits.replace(/ /g, '');
  if (marks.length > 1) {
    const other = last === '.' ? ',' : '.';
    const grouped = (mark: string, end: string): boolean =>
      new RegExp(`^\\d{1,3}(\\${mark}\\d{3})+${end}$`).test(plain);
    if (!marks.includes(other) && grouped(last, '')) plain = plain.replaceAll(last, '');
    else if (grouped(other, `\\${last}\\d*`)) plain = plain.replaceAll(other, '').replace(last, '.');
    else return { message: `“${digits.trim()}” has its points and commas where a number has none.` };
  } else if (last === ',') {
    if (/^[1-9]\d{0,2},\d{3}$/.test(digits)) {
      const [a, b] = digits.split(',');
      return { message: `“${digits}” could be ${a}.${b} or ${a}${b}: type it without the comma.` };
    }
    plain = plain.replace(',', '.');
  }
  const figures = countFigures(plain);
  const power = /^(?: *[×x*] *10 *(?:\^ *|(?=[-+]))([-+]?\d+)|[eE]([-+]?\d+))/.exec(rest);
  if (power) {
    plain += `e${power[1] ?? power[2]}`;
    rest = rest.slice(power[0].length);
  }
  if (/^ *\d/.test(rest) && !/^ *1\/[a-z]/i.test(rest))
    return { message: `“${body.trim()}” looks like two numbers: type one.` };
  if (/^ *-+ *\d/.test(rest))
    return { message: 'A range is not read here: type its middle and a spread, such as 15 ± 2 mm.' };
  return {
    value: sign * Number(plain),
    figures,
    rest,
    doubtable: digits.includes(' ') || /,/.test(marks + last) || marks.length > 1,
  };
}

/** The same text with one kind of space, minus, point and raised figure. */
const tidy = (text: string): string =>
  text
    .replace(/[\s\u00a0\u2000-\u200b\u202f\u205f\u3000]+/g, ' ')
    .replace(/[⁰¹²³⁴-⁹⁻⁺]+(?!½)/g, (raised) => `^${raised.normalize('NFKC')}`)
    .replace(
      /(^-?|[\d\s±])([¼-¾⅐-⅞])/g,
      (_, before: string, vulgar: string) => `${before} ${vulgar.normalize('NFKC').replace('⁄', '/')}`,
    )
    .replace(/[−‐‑–]/g, '-')
    .replace(/(\d) ?· ?(?=\d)/g, '$1.')
    .trim();

/** In SI. No quantity of any bench comes near it, and a share of it is still a number. */
const largest = 1e100;

const shortly = (value: number): string => String(Number(value.toPrecision(10)));

/** The difference of a scale, `Δ°C` of `°C`; the unit itself where there is none. */
const differenceOf = (symbol: UnitSymbol): UnitSymbol => findUnit(`Δ${symbol}`)?.symbol ?? symbol;

/**
 * Reads what a person types into a quantity field. Never throws, never gives a number that is not finite
 * and never chooses between two readings: it names both and asks. Temperatures of a difference field are
 * differences, whatever scale letter is typed.
 */
export function readQuantity(text: string, field: QuantityField): Reading {
  const home = field.show ?? field.unit;
  const example = `10 ${home === '1' ? '' : home}`.trim();
  const no = (message: string): Reading => ({ ok: false, message });
  const [main = '', tolerance, more] = tidy(text).split(/ ?(?:±|\+ ?\/ ?-|\+-) ?/);
  if (main === '') return no(`Type a number, for example ${example}.`);
  if (more !== undefined) return no('One ± is enough.');

  const number = readNumber(main);
  if ('message' in number) {
    return no(number.message.endsWith('example') ? `${number.message} ${example}.` : number.message);
  }
  let named = number.rest.trim();
  let spreadText = tolerance;
  if (named === '' && tolerance !== undefined) {
    // `150 ± 2 mm`: the unit after the spread is the unit of both.
    named = /^[\d.,/ ]+(?:[eE][-+]?\d+)?(.*)$/.exec(tolerance)?.[1]?.trim() ?? '';
    if (named === '%' && home !== '%') named = '';
    else spreadText = tolerance.slice(0, tolerance.length - named.length);
  }
  let typed: UnitSymbol = home;
  if (named !== '') {
    const found = readUnit(named, home);
    if (typeof found !== 'string') return no(found.message);
    typed = found;
  }

  const notes: string[] = [];
  const wants = unit(field.unit);
  const got = unit(typed);
  let symbol: UnitSymbol = typed;
  if (got.kind !== wants.kind && sameDimension(got.dimension, wants.dimension)) {
    if (wants.kind === 'temperature')
      return no(`${typed} is a difference; this wants a temperature, for example ${example}.`);
    symbol = differenceOf(typed);
    if (symbol === typed) return no(`This wants a temperature difference, for example ${example}.`);
    notes.push(`${shortly(number.value)} ${typed} read as a difference`);
  } else if (!unitChoices(field.unit).some((other) => other.symbol === typed)) {
    return no(
      `${got.name} measures ${whatItIs(typed)}; this wants ${whatItIs(home)}, for example ${example}.`,
    );
  }

  const value = toSI(number.value, symbol);
  if (!(Math.abs(value) < largest)) return no('That number is too large.');
  if (wants.kind === 'temperature' && value < -1e-9)
    return no(`Nothing is colder than ${absoluteZero(symbol)}.`);
  if (number.doubtable)
    notes.unshift(`${main} → ${shortly(number.value)}${symbol === '1' ? '' : ` ${symbol}`}`);
  const remark = named === '' ? undefined : remarks[symbol];
  if (remark) notes.push(remark);

  let spread: number | undefined;
  if (spreadText !== undefined) {
    const read = spreadOf(spreadText, number.value, symbol);
    if (typeof read !== 'number') return no(read.message);
    spread = read;
    if (symbol === '%' && /%/.test(spreadText)) notes.push(`± ${spreadText} is taken of the value`);
  }
  return {
    ok: true,
    value,
    unit: symbol,
    written: number.value,
    figures: number.figures,
    ...(spread === undefined ? {} : { spread }),
    ...(notes.length === 0 ? {} : { note: notes.join('; ') }),
  };
}

const absoluteZero = (symbol: UnitSymbol): string =>
  symbol === 'K' ? '0 K' : symbol === '°F' ? '−459.67 °F' : '−273.15 °C';

/** Half-width in SI of `2 %` or `0.5 mm` about a value written in `symbol`. A bare number is in `symbol`. */
export function spreadOf(
  text: string,
  written: number,
  symbol: UnitSymbol,
): number | { readonly message: string } {
  const number = readNumber(tidy(text));
  const say = { message: 'Write the spread as ± 2 % or ± 0.5 of the unit.' };
  if ('message' in number || number.value < 0) return say;
  const named = number.rest.trim();
  let width: number;
  if (/^(%|percent|per cent)$/.test(named)) {
    width = widthToSI((Math.abs(written) * number.value) / 100, symbol);
  } else {
    const found = named === '' ? symbol : readUnit(named, symbol);
    if (typeof found !== 'string') return { message: found.message };
    if (!sameDimension(unit(found).dimension, unit(symbol).dimension)) return say;
    width = widthToSI(number.value, found);
  }
  return Number.isFinite(width) ? width : { message: 'That spread is too large.' };
}

/**
 * The half-width in SI that a text such as `2 %` or `0.5 mm` gives a value in SI; `symbol` is the unit the
 * value was written in, since 2 % of 100 °C on the bench is 2 °C. Throws on a text it cannot read.
 */
export function readSpread(text: string, value: number, symbol: UnitSymbol): number {
  // A plain number in code is written with its unit too, `0.05 1`, which nobody types.
  if (/^[\d.]+ 1$/.test(text) && sameDimension(unit(symbol).dimension, unit('1').dimension))
    return parseFloat(text);
  const { factor, offset } = unit(symbol);
  const read = spreadOf(text, (value - offset) / factor, symbol);
  if (typeof read === 'number') return read;
  throw new Error(`"${text}" is not a spread in ${symbol}: ${read.message}`);
}

export interface QuantityFigures {
  /** In SI. */
  readonly value: number;
  readonly unit: UnitSymbol;
  readonly figures: number;
  /** Half of the last written place, in SI. */
  readonly halfDigit: number;
}

/** A quantity written in code or content, with the weight of its written digits. Throws on a bad text. */
export function quantityFigures(text: string): QuantityFigures {
  const parts = /^([-+]?(?:\d+(?:\.(\d+))?|\.(\d+))(?:[eE]([-+]?\d+))?) (.+)$/.exec(text);
  const symbol = parts ? findUnit(parts[5]!)?.symbol : undefined;
  if (!parts || !symbol)
    throw new Error(`"${text}" is not a number, a space and a unit of the table, such as "200 mm"`);
  const decimals = (parts[2] ?? parts[3] ?? '').length - Number(parts[4] ?? 0);
  return {
    value: toSI(Number(parts[1]), symbol),
    unit: symbol,
    figures: countFigures(parts[1]!.replace(/[eE].*/, '')),
    halfDigit: widthToSI(0.5 * 10 ** -decimals, symbol),
  };
}

/** A quantity written in code, in SI: `quantity('200 mm')` is 0.2. */
export function quantity(text: Quantity): number {
  return quantityFigures(text).value;
}
