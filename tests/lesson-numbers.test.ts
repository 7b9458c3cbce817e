import { readdirSync, readFileSync } from 'node:fs';
import { load } from 'js-yaml';
import { describe, expect, it } from 'vitest';
import { quantityFigures } from '../calculators/core/quantity.ts';
import { findUnit, fromSI, type Quantity } from '../calculators/core/units.ts';
import { formulaOf } from '../src/lesson/lookup.ts';
import { workedFormula } from '../src/lesson/working.ts';
import { accounted } from './lesson-numbers.ts';

/**
 * No lesson states a number with a unit that comes from nowhere. It is accounted for where it stands in a paragraph
 * with a `<Cite>`, in a `<Worked>` or a `<Value>`, when some component of the lesson is given it or works it out to the
 * figures written, or when `lesson-numbers.ts` says where it is from. A wrong option of a `<Predict>` states nothing.
 */
interface Stated {
  /** `0.055 cm³`, as it stands. */
  readonly text: string;
  readonly value: number;
  readonly unit: string;
  readonly figures: string;
}

const words: Readonly<Record<string, string>> = {
  degrees: '°C', degree: '°C', seconds: 's', second: 's', minutes: 'min', hours: 'h', grams: 'g', litres: 'L',
  kilograms: 'kg', millimetres: 'mm', metres: 'm', weeks: 'week', days: 'day',
}; // prettier-ignore
const units =
  '°C|Δ°C|°F|K|%|‰|ppm|mm²|mm³|mm|cm²|cm³|cm|µm|m²/s|m³/h|m³|m²|m/s²|m/s|m|kg/m³|g/cm³|mg/m³|kg|mg|g|kJ/kg|kJ|MJ|kWh|J/[^\\s,.;]+|J|kW/m²|W/[^\\s,.;]+|kW|W|N/m|N|kPa|MPa|mbar|Pa|bar|inHg|mmHg|psi|L/min|L/s|mL|L|min|ms|s/mm²|s|h|' +
  Object.keys(words).join('|');
const number = '\\d+(?:[\\u202f ,]\\d{3})*(?:\\.\\d+)?';
const stated = new RegExp(
  `(?<![\\w.,/−-])(${number}(?:(?: to | and | or | by |–|-)${number})*) (${units})(?![\\w/²³])`,
  'gu',
);

/** Every number with a unit in a text, each end of a range by itself. */
function numbersIn(text: string): Stated[] {
  return [...text.matchAll(stated)].flatMap(([, amounts = '', unit = '']) =>
    amounts.split(/ to | and | or | by |–|-/).map((part) => {
      const figures = part.replace(/[\u202f ,]/g, '');
      return { text: `${part} ${unit}`, value: Number(figures), unit: words[unit] ?? unit, figures };
    }),
  );
}

interface Component {
  readonly tag: string;
  readonly text: string;
  readonly inside: string;
}

const attributes = `(?:[^>"'{]|"[^"]*"|'[^']*'|\\{(?:[^{}]|\\{(?:[^{}]|\\{[^{}]*\\})*\\})*\\})*`;
const componentsOf = (body: string, tags: string): Component[] =>
  [...body.matchAll(new RegExp(`<(${tags})\\b(${attributes})(?:/>|(?<!/)>([\\s\\S]*?)</\\1>)`, 'g'))].map(
    ([, tag = '', text = '', inside = '']) => ({ tag, text, inside }),
  );

const attribute = (text: string, name: string): string | undefined =>
  new RegExp(`\\b${name}="([^"]*)"`).exec(text)?.[1];
const given = (text: string): Record<string, Quantity> => {
  const found = /\bgiven=\{(\{[\s\S]*?\})\}/.exec(text)?.[1];
  return found === undefined ? {} : (load(found.replace(/,(\s*\})/, '$1')) as Record<string, Quantity>);
};

/** The answers of the lesson's sums, in SI. */
function answersOf(body: string): number[] {
  return componentsOf(body, 'Worked|Value|Calculator').flatMap(({ text }) => {
    const [id, find] = [attribute(text, 'formula'), attribute(text, 'find')];
    if (id === undefined || find === undefined) return [];
    return [workedFormula(formulaOf(id, 'a lesson'), given(text), find, 'a lesson').value];
  });
}

/** Whether a number in SI rounds to what is stated, in its unit. */
function roundsTo({ value, unit, figures }: Stated, si: number): boolean {
  const symbol = unit === '°C' || findUnit(unit) ? unit : undefined;
  if (symbol === undefined) return false;
  const half = 0.5 * 10 ** -(figures.split('.')[1]?.length ?? 0);
  const near = (shown: number): boolean => Math.abs(shown - value) <= half * (1 + 1e-9);
  return near(fromSI(si, symbol)) || (symbol === '°C' && near(si));
}

/** What the lesson's own text, stripped of all that accounts for itself, still states. */
function unaccounted(slug: string, body: string): string[] {
  const quoted = [...body.matchAll(/['"](-?[\d.]+ [^'"\s]+)['"]/g)].flatMap(([, text = '']) => {
    try {
      return [quantityFigures(text), quantityFigures(text.replace(' °C', ' Δ°C'))].map(({ value }) => value);
    } catch {
      return [];
    }
  });
  const known = [...quoted, ...answersOf(body)];
  const plain = body
    .replace(/^---[\s\S]*?\n---\n/, '')
    .replace(new RegExp(`<Worked\\b${attributes}>[\\s\\S]*?</Worked>`, 'g'), '\n\n')
    .replace(new RegExp(`<Value\\b${attributes}/>`, 'g'), '')
    .replace(
      new RegExp(`<(?:Curve|Calculator|Figure|Exercise|Formula)\\b(${attributes})/>`, 'g'),
      (_, text: string) => `\n\n${attribute(text, 'caption') ?? ''}\n\n`,
    )
    .replace(/<Predict\b([\s\S]*?)\n>/g, (_, text: string) => {
      const options = (/options=\{(\[[\s\S]*?\])\}/.exec(text)?.[1] ?? '[]').replace(/,(\s*\])/, '$1');
      const right = Number(/answer=\{(\d)\}/.exec(text)?.[1]);
      return `${attribute(text, 'question') ?? ''}\n\n${(load(options) as string[])[right] ?? ''}\n\n`;
    })
    // A table and the line of sources behind it are one.
    .replace(/<Table\b[\s\S]*?<\/Table>\s*/g, (table) => `${table.replace(/\n\s*\n/g, '\n').trimEnd()} `)
    .replace(/(<Table\b[\s\S]*?<\/Table> )/g, (table) => table.replaceAll('\n', ' '));
  const blocks = plain.split(/\n\s*\n|\n(?=\s*(?:- |\d+\. ))/);
  const cited = new Set(
    blocks
      .filter((block) => block.includes('<Cite'))
      .flatMap((block) => numbersIn(block).map(({ text }) => text)),
  );
  const own = accounted[slug] ?? {};
  const open = blocks
    .filter((block) => !block.includes('<Cite'))
    .flatMap(numbersIn)
    .filter((one) => !cited.has(one.text) && !(one.text in own) && !known.some((si) => roundsTo(one, si)));
  return [...new Set(open.map(({ text }) => text))];
}

const folder = new URL('../content/lessons/', import.meta.url);
const lessons = readdirSync(folder)
  .filter((name) => name.endsWith('.mdx'))
  .map((name) => [name.replace('.mdx', ''), readFileSync(new URL(name, folder), 'utf8')] as const);

describe('a number with a unit', () => {
  it('is found in a text, a range end by end, and not in a word', () => {
    expect(numbersIn('From 15 to 25 °C, 7 by 8 mm, 1,500 m and 36 000 J; 2–4 mm, 3 men, 5 mmx.').map(({ text }) => text)).toEqual([
      '15 °C', '25 °C', '7 mm', '8 mm', '1,500 m', '36 000 J', '2 mm', '4 mm',
    ]); // prettier-ignore
  });

  it('that comes from nowhere is caught, and one that is given, cited or worked out is not', () => {
    const worked = `<Value formula="charge/mass-from-volume" given={{ rho: '8360 kg/m³', V: '5.6 cm³' }} find="m" />`;
    expect(unaccounted('none', `It weighs 91 g.\n\n${worked}`)).toEqual(['91 g']);
    expect(unaccounted('none', `It weighs 46.8 g in 5.6 cm³.\n\n${worked}`)).toEqual([]);
    expect(unaccounted('none', `It weighs 91 g. <Cite key="x" at="y" how="memory" />`)).toEqual([]);
  });

  it.each(lessons)('in %s is computed, cited, given, or listed with where it is from', (slug, body) => {
    expect(unaccounted(slug, body)).toEqual([]);
  });

  const worked = Object.entries(accounted).flatMap(([slug, list]) =>
    Object.entries(list).flatMap(([text, origin]) =>
      typeof origin === 'string' ? [] : [[slug, text, origin.is] as const],
    ),
  );
  it.each(worked)('that %s states, %s, comes out when it is worked', (_, text, is) => {
    expect(Math.abs(is() / parseFloat(text) - 1)).toBeLessThan(0.125);
  });

  it('is not listed for nothing', () => {
    const idle = lessons.flatMap(([slug, body]) =>
      Object.keys(accounted[slug] ?? {})
        .filter((text) => !numbersIn(body).some((one) => one.text === text))
        .map((text) => `${slug}: ${text}`),
    );
    expect(idle).toEqual([]);
  });
});
