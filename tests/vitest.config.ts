import { defineConfig } from 'vitest/config';

const counted = process.env['WARM_MOULD_COUNTS'];

export default defineConfig({
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  test: {
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    reporters:
      counted === undefined ? ['default'] : ['default', ['json', { outputFile: `${counted}/unit.json` }]],
    testTimeout: 20_000,
  },
});
