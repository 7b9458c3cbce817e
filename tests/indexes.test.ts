import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { indexes, indexText } from '../src/cli/indexes.ts';

describe('the indexes', () => {
  it.each(indexes)(
    'calculators/$name/index.ts lists every file; when it does not, run npm run index',
    (index) => {
      const written = existsSync(index.file) ? readFileSync(index.file, 'utf8') : '';
      expect(written).toBe(indexText(index).content);
    },
  );
});
