import { describe, expect, it } from 'vitest';
import {
  entryFor,
  entryFromLink,
  entryOf,
  fromFragment,
  inUnit,
  mayBeNegative,
  negated,
  readEntry,
  settled,
  stepped,
  toFragment,
  withSpread,
  type Entry,
  type EntrySpec,
} from '../../src/islands/entries.ts';
import type { UnitSymbol } from '../../calculators/core/units.ts';

const head: EntrySpec = { unit: 'm', show: 'mm', range: [0, 1], usual: 0.04 };
const suction: EntrySpec = { unit: 'Pa', show: 'kPa', range: [-101325, 101325] };
const mould: EntrySpec = { unit: 'K', show: '°C', range: [273.15, 1473.15] };

const value = (entry: Entry, spec: EntrySpec): number => {
  const reading = readEntry(entry, spec);
  if (!reading.ok) throw new Error(reading.message);
  return reading.value;
};

describe('an entry', () => {
  it('starts from a written quantity', () => {
    expect(entryOf('150 mm')).toEqual({ text: '150', unit: 'mm', spread: '' });
    expect(value(entryOf('150 mm'), head)).toBeCloseTo(0.15, 12);
  });

  it('reads a bare number in the unit beside it, and a typed unit over it', () => {
    expect(value({ text: '2', unit: 'in', spread: '' }, head)).toBeCloseTo(0.0508, 12);
    expect(value({ text: '2 cm', unit: 'in', spread: '' }, head)).toBeCloseTo(0.02, 12);
  });

  it('moves a typed unit and spread to their own places once typing is done', () => {
    expect(settled({ text: '1,5 in', unit: 'mm', spread: '' }, head)).toEqual({
      text: '1.5',
      unit: 'in',
      spread: '',
    });
    expect(settled({ text: '40 ± 5 %', unit: 'mm', spread: '' }, head)).toMatchObject({
      text: '40',
      spread: '5 %',
    });
    expect(settled({ text: '40 mm ± 5', unit: 'mm', spread: '' }, head)).toEqual({
      text: '40',
      unit: 'mm',
      spread: '5',
    });
    expect(settled({ text: '40mm', unit: 'mm', spread: '2 %' }, head)).toEqual({
      text: '40',
      unit: 'mm',
      spread: '2 %',
    });
  });

  it.each(['40', '1,234', 'forty', '5e-4', '1 3/8', ''])('leaves %s as it was typed', (text) => {
    const entry: Entry = { text, unit: 'mm', spread: '' };
    expect(settled(entry, head)).toBe(entry);
  });

  it('keeps its value through any change of unit and back', () => {
    const there = inUnit(entryOf('40 mm'), head, 'ft');
    expect(there.text).toBe('0.131');
    expect(value(there, head)).toBeCloseTo(0.04, 15);
    const back = inUnit(there, head, 'mm');
    expect(back.text).toBe('40');
    expect(value(back, head)).toBeCloseTo(0.04, 15);
  });

  it.each<[string, string, string]>([
    ['46.9 g', 'oz', '1.65'],
    ['46.90 g', 'oz', '1.654'],
    ['5 g', 'dwt', '3.22'],
    ['1654.35 g', 'oz', '58.3555'],
    ['25.4 g', 'ct', '127'],
    ['1.654348814 oz', 'g', '46.9'],
  ])('shows %s in %s as %s, and again as it was typed', (typed, symbol, shown) => {
    const mass: EntrySpec = { unit: 'kg', show: 'g' };
    const entry = entryOf(typed);
    const turned = inUnit(entry, mass, symbol as UnitSymbol);
    expect(turned.text).toBe(shown);
    expect(value(turned, mass)).toBe(value(entry, mass));
    expect(inUnit(turned, mass, entry.unit)).toEqual(entry);
    expect(inUnit(inUnit(turned, mass, 'kg'), mass, entry.unit)).toEqual(entry);
    // Through a link as well.
    const link = fromFragment(toFragment('a/b', 'x', { m: turned }, { m: mass }), 'a/b')!['m']!;
    expect(entryFromLink(link, mass, 'g')).toEqual(turned);
  });

  it('carries a result to ten figures and shows four', () => {
    const mass: EntrySpec = { unit: 'kg', show: 'g' };
    const found = entryFor(0.04690123456, 'g', 4);
    expect(found.text).toBe('46.9');
    const link = fromFragment(toFragment('a/b', 'x', { m: found }, { m: mass }), 'a/b')!['m']!;
    expect(link).toBe('46.90123456g~g');
    const there = entryFromLink(link, mass, 'g');
    expect(there.text).toBe('46.9');
    expect(value(there, mass)).toBeCloseTo(0.04690123456, 15);
  });

  it('keeps the number where only its spread is written anew', () => {
    const turned = inUnit(entryOf('46.9 g'), { unit: 'kg' }, 'oz');
    const doubted = withSpread(turned, '0.1');
    expect(value(doubted, { unit: 'kg' })).toBeCloseTo(0.0469, 15);
    expect(readEntry(doubted, { unit: 'kg' })).toMatchObject({ spread: (0.1 * 0.45359237) / 16 });
  });

  it('takes a bare spread along, and leaves a percentage', () => {
    const wide = inUnit({ text: '1000', unit: '°C', spread: '20' }, mould, '°F');
    expect(wide.text).toBe('1832');
    expect(wide.spread).toBe('36');
    expect(inUnit({ text: '1000', unit: '°C', spread: '2 %' }, mould, '°F').spread).toBe('2 %');
  });

  it('changes only the unit of a text that cannot be read', () => {
    expect(inUnit({ text: 'forty', unit: 'mm', spread: '' }, head, 'in')).toEqual({
      text: 'forty',
      unit: 'in',
      spread: '',
    });
  });

  it.each<[string, 1 | -1, string]>([
    ['150 mm', 1, '160'],
    ['150 mm', -1, '140'],
    ['0.7 1', 1, '0.71'],
    ['2.805 kPa', 1, '2.9'],
    ['7520 kg/m³', -1, '7400'],
    ['9 mm', -1, '8.9'],
  ])('steps %s by %d to %s', (text, direction, expected) => {
    const entry = entryOf(text);
    expect(stepped(entry, { unit: entry.unit }, direction).text).toBe(expected);
  });

  it('steps from zero by the size of what is usual', () => {
    expect(stepped(entryOf('0 mm'), head, 1).text).toBe('1');
  });

  it('has a sign button only where a number below zero makes sense', () => {
    expect(mayBeNegative(head, 'mm')).toBe(false);
    expect(mayBeNegative(suction, 'kPa')).toBe(true);
    expect(mayBeNegative(mould, '°C')).toBe(false);
    expect(mayBeNegative({ unit: 'K' }, '°C')).toBe(true);
    expect(negated(entryOf('5 kPa')).text).toBe('-5');
    expect(negated({ text: '−5', unit: 'kPa', spread: '' }).text).toBe('5');
  });
});

describe('a bare ±', () => {
  const width = (entry: Entry, spec: EntrySpec): number | undefined => {
    const reading = readEntry(entry, spec);
    if (!reading.ok) throw new Error(reading.message);
    return reading.spread;
  };
  const lengths = ['mm', 'in', 'ft'] as const;

  it('in the text is in the unit of its number, whatever the field shows', () => {
    for (const unit of lengths)
      for (const text of ['2 in ± 0.1', '2 ± 0.1 in', '2" ± 0.1']) {
        const entry: Entry = { text, unit, spread: '' };
        // One inch is 25.4 mm: NIST Special Publication 811, Appendix B.8.
        expect(width(entry, head)).toBeCloseTo(0.00254, 12);
        expect(settled(entry, head)).toEqual({ text: '2', unit: 'in', spread: '0.1' });
      }
  });

  it('beside a bare number is in the unit of the field', () => {
    expect(width({ text: '50', unit: 'mm', spread: '0.5' }, head)).toBeCloseTo(0.0005, 12);
    expect(width({ text: '2', unit: 'in', spread: '0.5' }, head)).toBeCloseTo(0.0127, 12);
  });

  it('that stood in millimetres stays so when inches are typed over the number, and is shown', () => {
    const entry: Entry = { text: '2 in', unit: 'mm', spread: '0.5' };
    expect(readEntry(entry, head)).toMatchObject({ spread: 0.0005, note: '± 0.5 mm' });
    expect(settled(entry, head)).toEqual({ text: '2', unit: 'in', spread: '0.0197' });
    expect(inUnit(entry, head, 'mm')).toMatchObject({ text: '50.8', spread: '0.5' });
    expect(stepped(entry, head, 1)).toMatchObject({ unit: 'in', spread: '0.0197' });
    const degrees: Entry = { text: '1800 °F', unit: '°C', spread: '10' };
    expect(readEntry(degrees, mould)).toMatchObject({ spread: 10, note: '± 10 °C' });
    expect(settled(degrees, mould)).toEqual({ text: '1800', unit: '°F', spread: '18' });
  });

  it('counts before the one that stood in its field', () => {
    expect(settled({ text: '40 ± 3', unit: 'mm', spread: '0.5' }, head)).toEqual({
      text: '40',
      unit: 'mm',
      spread: '3',
    });
  });

  it('with a unit of its own leaves the number in the unit of its field', () => {
    const entry: Entry = { text: '2', unit: 'in', spread: '0.5 mm' };
    expect(value(entry, head)).toBeCloseTo(0.0508, 12);
    expect(width(entry, head)).toBeCloseTo(0.0005, 12);
  });

  it('written as a fraction goes along with the unit', () => {
    expect(inUnit({ text: '2', unit: 'in', spread: '1/16' }, head, 'mm').spread).toBe('1.6');
  });

  it('reads the same before and after its field is left, and from a link, in every unit', () => {
    for (const unit of lengths)
      for (const text of ['40', '2 in', '5 cm', '40 ± 1', '2 in ± 0.1', '1 3/8 in'])
        for (const spread of ['', '0.5', '1/16', '2 %', '0.5 mm']) {
          const entry: Entry = { text, unit, spread };
          const before = width(entry, head);
          const after = settled(entry, head);
          const link = fromFragment(`#${toFragment('a/b', 'v', { h: entry }, { h: head })}`, 'a/b');
          for (const later of [after, entryFromLink(link!['h']!, head, 'mm')]) {
            expect(value(later, head)).toBeCloseTo(value(entry, head), 9);
            if (before === undefined) expect(width(later, head)).toBeUndefined();
            else expect(width(later, head)! / before).toBeCloseTo(1, 2);
          }
        }
  });
});

describe('a shared link', () => {
  const entries = {
    v: entryOf('1 m/s'),
    h: { text: '40', unit: 'mm', spread: '5 %' },
    C: entryOf('0.7 1'),
    T: { text: '-5', unit: '°C', spread: '' },
  } as const;

  it('is a fragment with an =, so that it is no anchor', () => {
    expect(toFragment('filling/velocity', 'v', entries)).toBe(
      'filling/velocity:find=v&h=40mm±5%20%25&C=0.7&T=-5°C',
    );
  });

  it('comes back as it went, encoded by the browser or not', () => {
    const fragment = toFragment('a/b', 'v', entries);
    for (const hash of [`#${fragment}`, `#${encodeURI(fragment).replaceAll('%25', '%')}`]) {
      const found = fromFragment(hash, 'a/b');
      expect(found).toMatchObject({ find: 'v', C: '0.7', T: '-5°C' });
      expect(entryFromLink(found!['h']!, head, 'mm')).toEqual({ text: '40', unit: 'mm', spread: '5 %' });
    }
  });

  it('keeps a plain number plain among percentages, and a unit off the figures before it', () => {
    const yieldOf: EntrySpec = { unit: '1', show: '%', range: [0, 1] };
    const growth: EntrySpec = { unit: '1/K', range: [0, 1] };
    const written = toFragment(
      'a/b',
      'v',
      { y: { text: '0.5', unit: '1', spread: '' }, a: { text: '6', unit: '1/K', spread: '' } },
      { y: yieldOf, a: growth },
    );
    const found = fromFragment(`#${written}`, 'a/b')!;
    expect(value(entryFromLink(found['y']!, yieldOf, '%'), yieldOf)).toBe(0.5);
    expect(value(entryFromLink(found['a']!, growth, '1/K'), growth)).toBe(6);
  });

  it('belongs to one calculator', () => {
    expect(fromFragment('#a/b:find=v', 'a/c')).toBeUndefined();
    expect(fromFragment('#symbols', 'a/b')).toBeUndefined();
    expect(fromFragment('', 'a/b')).toBeUndefined();
  });

  it('leaves out what is mangled', () => {
    expect(fromFragment('#a/b:h=%E0%A4%A&C=0.7&=3&x', 'a/b')).toEqual({ C: '0.7' });
  });

  it('shows what cannot be read as it came', () => {
    const entry = entryFromLink('many', head, 'mm');
    expect(entry.text).toBe('many');
    expect(readEntry(entry, head).ok).toBe(false);
  });
});

describe('a number found', () => {
  it('becomes an entry without losing itself', () => {
    const entry = entryFor(1 / 3, 'm', 4);
    expect(entry.text).toBe('0.3333');
    expect(value(entry, head)).toBe(1 / 3);
  });
});
