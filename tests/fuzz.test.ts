import { describe, expect, it } from 'vitest';
import { fuzz } from './long/fuzz.ts';
import { readers } from './long/parsers.ts';

/** `npm run -s fuzz` puts a million to each. */
const inputs = 10_000;

describe.each(readers.map((reader) => [reader.name, reader] as const))('%s', (_name, reader) => {
  it(`is read or refused in words, ${inputs} times`, async () => {
    expect(await fuzz(reader, inputs)).toEqual([]);
  }, 600_000);
});
