import { Ajv2020 } from 'ajv/dist/2020.js';
import { crc32 as zlibCrc } from 'node:zlib';
import { createContext, runInContext } from 'node:vm';
import { describe, expect, it } from 'vitest';
import type { Exercise } from '../../../calculators/exercises/definition.ts';
import { formatSchemas } from '../../../calculators/exercises/sets/formats.ts';
import { qtiPackage } from '../../../calculators/exercises/sets/qti/package.ts';
import { faultOf } from '../../../calculators/exercises/sets/schema.ts';
import { scormFiles } from '../../../calculators/exercises/sets/scorm.ts';
import { crc32, zip } from '../../../calculators/exercises/sets/zip.ts';
import { valuesOf } from '../../../calculators/exercises/variants.ts';
import { classDraft, handInOf, pupils } from './class-of-thirty.ts';
import { fileOf, setOf } from './course-bank.ts';
import {
  exercises,
  expressed,
  files,
  items,
  numberTries,
  packed,
  stepsTries,
  tag,
  variantOf,
} from './qti-course.ts';
import { all, begin, parse, score } from './qti-evaluator.ts';

const places = (exercise: Exercise, turn: number) => {
  const names = 'vary' in exercise ? Object.keys(exercise.vary) : [];
  return (name: string, most: number): number => (turn * 7 + names.indexOf(name) * 3 + turn) % most;
};

const numbersIn = (responses: Readonly<Record<string, string>>): Record<string, number> =>
  Object.fromEntries(Object.entries(responses).map(([name, text]) => [name, Number(text)]));

describe('the QTI package', () => {
  it('holds well-formed items that say what they declare, and lists every exercise it leaves out', () => {
    for (const { files: inside, leftOut, file } of packed) {
      for (const [path, text] of Object.entries(inside))
        if (path.endsWith('.xml')) expect(() => parse(text), path).not.toThrow();
      const missing = file.questions.filter(({ id }) => !items.has(id));
      for (const { exercise } of missing)
        expect(leftOut.some((text) => text.includes(String(exercise['title'])))).toBe(true);
      const manifest = parse(inside['imsmanifest.xml']!);
      for (const resource of all(manifest, 'resource'))
        expect(inside).toHaveProperty([resource.getAttribute('href')!]);
      for (const ref of all(parse(inside['test.xml']!), 'qti-assessment-item-ref'))
        expect(inside).toHaveProperty([ref.getAttribute('href')!]);
    }
    // Models and roots found by trial are the only ones that cannot be said.
    expect(expressed.length).toBeGreaterThan(0.85 * exercises.length);
    for (const exercise of exercises)
      if (!items.has(exercise.id))
        expect(
          JSON.stringify(
            packed.flatMap(({ leftOut }) => leftOut.filter((text) => text.includes(exercise.title))),
          ),
        ).toMatch(/model|trial|erf/);
  });

  it('prints the numbers it draws, with their units', () => {
    const session = begin(items.get('mass-of-the-clapper')!, (_, most) => most);
    const printed = all(session.root, 'qti-printed-variable').map((one) =>
      session.variables.get(one.getAttribute('identifier')!),
    );
    expect(printed).toEqual(['24.5 cm³', '8770 kg/m³']);
  });

  const numbers = expressed.filter((exercise) => exercise.kind === 'number');
  it.each(numbers.map((exercise) => [exercise.id, exercise] as const))(
    '%s scores right and wrong numbers as marking does',
    (id, exercise) => {
      for (let turn = 0; turn < 12; turn += 1) {
        const at = places(exercise, turn);
        const variant = variantOf(exercise, (name) => at(name, valuesOf(exercise.vary[name]!).length));
        const draw = (variable: string, most: number): number => {
          const name = Object.keys(exercise.vary).find((one) => variable === `INDEX_${tag(one)}`)!;
          return at(name, most) + 1;
        };
        const session = begin(items.get(id)!, draw);
        expect(score(session, {})).toBe(0);
        for (const { responses, marks } of numberTries(exercise, variant))
          expect(score(session, numbersIn(responses)), JSON.stringify(responses)).toBe(marks);
      }
    },
  );

  const steps = expressed.filter((exercise) => exercise.kind === 'steps');
  it.each(steps.map((exercise) => [exercise.id, exercise] as const))(
    '%s carries an error forward as marking does',
    (id, exercise) => {
      for (let turn = 0; turn < 12; turn += 1) {
        const at = places(exercise, turn);
        const variant = variantOf(exercise, (name) => at(name, valuesOf(exercise.vary[name]!).length));
        const draw = (variable: string, most: number): number =>
          at(
            Object.keys(exercise.vary).find((one) => variable === `INDEX_${tag(one)}`)!,
            most,
          ) + 1;
        for (const { responses, marks } of stepsTries(exercise, variant))
          expect(score(begin(items.get(id)!, draw), numbersIn(responses)), JSON.stringify(responses)).toBe(
            marks,
          );
      }
    },
  );

  it('scores choices and orders all or nothing', () => {
    const session = (id: string) => begin(items.get(id)!, () => 1);
    expect(score(session('gauge-that-stalls'), { RESPONSE: ['option-4', 'option-1'] })).toBe(2);
    expect(score(session('gauge-that-stalls'), { RESPONSE: ['option-1'] })).toBe(0);
    expect(
      score(session('dressing-in-order'), { RESPONSE: ['item-1', 'item-2', 'item-3', 'item-4', 'item-5'] }),
    ).toBe(2);
    expect(
      score(session('dressing-in-order'), { RESPONSE: ['item-2', 'item-1', 'item-3', 'item-4', 'item-5'] }),
    ).toBe(0);
    expect(score(session('a-path-that-closed'), { RESPONSE: ['option-1', 'option-4'] })).toBe(4);
  });

  it('says what is left out in the package itself, and takes markup in a title for text', () => {
    const file = fileOf(classDraft({ title: '<b>& "spring"' }));
    const { files: inside, leftOut } = qtiPackage(file);
    expect(leftOut.join(' ')).toMatch(/A shield that fills.*model.*unit.*Diagnosed.*order.*Hints/s);
    expect(inside['left-out.txt']).toContain(leftOut[0]);
    expect(parse(inside['test.xml']!).getAttribute('title')).toBe('<b>& "spring"');
    expect(
      parse(inside['items/own-why-warm-the-mould.xml']!).getElementsByTagName(
        'qti-extended-text-interaction',
      ),
    ).toHaveLength(1);
  });
});

describe('a ZIP archive', () => {
  it('has the checks the format asks for', () => {
    const bytes = zip({ 'a.txt': 'Wärme', 'b/c.xml': '<x/>' });
    expect(crc32(Buffer.from('Wärme'))).toBe(zlibCrc(Buffer.from('Wärme')));
    // The check value published with the polynomial.
    expect(crc32(Buffer.from('123456789'))).toBe(0xcbf43926);
    const text = Buffer.from(bytes).toString('latin1');
    expect(text.startsWith('PK\u0003\u0004')).toBe(true);
    expect(text.split('PK\u0001\u0002')).toHaveLength(3);
    const view = new DataView(bytes.buffer);
    expect(view.getUint32(bytes.length - 22, true)).toBe(0x06054b50);
    expect(view.getUint16(bytes.length - 12, true)).toBe(2);
    expect(text.slice(view.getUint32(bytes.length - 6, true)).startsWith('PK\u0001\u0002')).toBe(true);
  });
});

describe('the SCORM package', () => {
  const file = fileOf(classDraft({ title: 'Spring & "test"' }));
  const inside = scormFiles(file, 'https://example.invalid/sets/do/#set=abc');

  it('names its launch page in a manifest of version 1.2', () => {
    const manifest = parse(inside['imsmanifest.xml']!);
    expect(all(manifest, 'schemaversion')[0]!.textContent).toBe('1.2');
    const [resource] = all(manifest, 'resource');
    expect(resource!.getAttribute('adlcp:scormtype')).toBe('sco');
    expect(inside).toHaveProperty([resource!.getAttribute('href')!]);
    for (const one of all(manifest, 'file')) expect(inside).toHaveProperty([one.getAttribute('href')!]);
    expect(inside['index.html']).toContain('src="https://example.invalid/sets/do/#set=abc&amp;report=1"');
  });

  /** A run-time of the platform for this test: it refuses every call out of its order, as the standard asks. */
  function platform() {
    const values: Record<string, string> = { 'cmi.core.lesson_status': 'not attempted' };
    const calls: string[] = [];
    let open = false;
    const API = {
      LMSInitialize: (x: string) => {
        calls.push('init');
        if (open || x !== '') return 'false';
        open = true;
        return 'true';
      },
      LMSGetValue: (name: string) => (open ? (values[name] ?? '') : ''),
      LMSSetValue: (name: string, value: string) => {
        if (!open || typeof value !== 'string') return 'false';
        values[name] = value;
        return 'true';
      },
      LMSCommit: () => {
        calls.push('commit');
        return String(open);
      },
      LMSFinish: () => {
        calls.push('finish');
        open = false;
        return 'true';
      },
    };
    return { API, values, calls };
  }

  function launch(API: unknown) {
    const listeners: Record<string, ((event: unknown) => void)[]> = {};
    const contentWindow = {};
    const top: Record<string, unknown> = { API };
    top['parent'] = top;
    const window: Record<string, unknown> = {
      parent: { parent: top },
      addEventListener: (name: string, listener: (event: unknown) => void) =>
        (listeners[name] ??= []).push(listener),
    };
    const document = {
      getElementById: () => ({ src: 'https://example.invalid/sets/do/#set=abc', contentWindow }),
    };
    runInContext(inside['report.js']!, createContext({ window, document, URL, String, Math }));
    return {
      tell: (data: unknown, from: unknown = contentWindow, origin = 'https://example.invalid') =>
        listeners['message']?.forEach((one) => one({ data, source: from, origin })),
      leave: () => listeners['pagehide']?.forEach((one) => one({})),
    };
  }

  it('reports score and completion once handed in, and nothing else', () => {
    const { API, values, calls } = platform();
    const page = launch(API);
    expect(values['cmi.core.lesson_status']).toBe('incomplete');
    page.tell({ format: 'warm-mould-score', marks: 32, of: 32 }, {});
    page.tell({ format: 'warm-mould-score', marks: 32, of: 32 }, undefined, 'https://elsewhere.invalid');
    page.tell({ format: 'warm-mould-score', marks: 99, of: 32 });
    page.tell('warm-mould-score');
    expect(values['cmi.core.score.raw']).toBeUndefined();
    page.tell({ format: 'warm-mould-score', marks: 29, of: 32 });
    // 29 of 32 is 90.625 of a hundred, written to two places.
    expect(values).toMatchObject({
      'cmi.core.score.raw': '90.63',
      'cmi.core.score.min': '0',
      'cmi.core.score.max': '100',
      'cmi.core.lesson_status': 'completed',
    });
    page.leave();
    page.leave();
    expect(calls.filter((call) => call === 'finish')).toHaveLength(1);
  });

  it('stays quiet where there is no platform', () => {
    expect(() => launch(undefined)).not.toThrow();
  });
});

describe('the published schemas', () => {
  const ajv = new Ajv2020({ strict: false, unicodeRegExp: true });

  it('are valid, and another validator judges files as the pages do', () => {
    const samples: Record<keyof typeof formatSchemas, unknown> = {
      set: files[0],
      'hand-in': handInOf(setOf(classDraft()), pupils[0]!),
      sealed: {
        format: 'warm-mould-sealed',
        version: 1,
        set: { id: 'a', edition: 1, hash: 'a'.repeat(64) },
        key: 'b'.repeat(16),
        from: 'A'.repeat(87),
        iv: 'A'.repeat(16),
        data: '',
      },
      key: {
        format: 'warm-mould-key',
        version: 1,
        public: 'A'.repeat(87),
        private: 'AAAA',
        made: '2026-03-01',
      },
      'mark-book': {
        format: 'warm-mould-mark-book',
        version: 1,
        remarks: [{ set: 'a'.repeat(64), learner: 'Ada', question: 'x', marks: 1 }],
        roster: ['Ada'],
      },
    };
    for (const [name, schema] of Object.entries(formatSchemas)) {
      const validate = ajv.compile(schema);
      const sample = samples[name as keyof typeof samples];
      expect(validate(sample), `${name}: ${JSON.stringify(validate.errors)}`).toBe(true);
      const spoiled = spoil(sample as object);
      for (const bad of spoiled)
        expect(validate(bad), JSON.stringify(bad).slice(0, 200)).toBe(faultOf(bad, schema) === undefined);
      expect(spoiled.some((bad) => !validate(bad))).toBe(true);
    }
  });
});

/** The same with each top field in turn gone, or turned into something else. */
function spoil(sample: object): object[] {
  return Object.keys(sample).flatMap((key) => {
    const { [key]: _, ...rest } = sample as Record<string, unknown>;
    return [
      rest,
      ...[null, 1, 1.5, '', 'x', [], {}, [[]], -1, true].map((value) => ({ ...rest, [key]: value })),
    ];
  });
}
