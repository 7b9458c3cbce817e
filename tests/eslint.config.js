import js from '@eslint/js';
import astro from 'eslint-plugin-astro';
import a11y from 'eslint-plugin-jsx-a11y-x';
import { defineConfig } from 'eslint/config';
import tseslint from 'typescript-eslint';

export default defineConfig(
  { ignores: ['dist/', '.astro/', 'node_modules/', 'test-results/', 'playwright-report/', 'coverage/'] },
  js.configs.recommended,
  ...tseslint.configs.strict,
  ...tseslint.configs.stylistic,
  ...astro.configs['flat/recommended'],
  ...astro.configs['flat/jsx-a11y-recommended'],
  {
    files: ['**/*.{ts,tsx}'],
    languageOptions: {
      parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname + '/..' },
    },
    rules: {
      '@typescript-eslint/await-thenable': 'error',
      '@typescript-eslint/no-floating-promises': 'error',
      '@typescript-eslint/no-misused-promises': [
        'error',
        { checksVoidReturn: { attributes: false, arguments: false } },
      ],
      '@typescript-eslint/restrict-template-expressions': [
        'error',
        { allowNumber: true, allowBoolean: true },
      ],
      '@typescript-eslint/switch-exhaustiveness-check': [
        'error',
        { considerDefaultExhaustiveForUnions: true },
      ],
    },
  },
  { files: ['src/**/*.tsx'], ...a11y.configs.recommended },
  // A box that scrolls must take the focus, or the keyboard cannot scroll it.
  { files: ['src/**/*.tsx'], rules: { 'jsx-a11y-x/no-noninteractive-tabindex': 'off' } },
  { files: ['src/**/*.astro'], rules: { 'astro/jsx-a11y/no-noninteractive-tabindex': 'off' } },
  {
    rules: {
      eqeqeq: 'error',
      'no-implied-eval': 'error',
      'no-eval': 'error',
      'no-new-func': 'error',
      // The strictest TypeScript setting asks for process.env['NAME'].
      '@typescript-eslint/dot-notation': 'off',
      '@typescript-eslint/no-dynamic-delete': 'off',
      '@typescript-eslint/consistent-type-definitions': 'off',
      // An index inside a loop over that array is known to be there; the compiler cannot know it.
      '@typescript-eslint/no-non-null-assertion': 'off',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
    },
  },
  {
    files: ['calculators/**/*.ts'],
    rules: {
      'no-restricted-syntax': [
        'error',
        { selector: 'ExportDefaultDeclaration', message: 'Named exports only.' },
        { selector: 'TSEnumDeclaration', message: 'Use a union of strings.' },
      ],
      'no-console': 'error',
    },
  },
  {
    files: ['src/cli/**', 'tests/**', '*.mjs'],
    languageOptions: { globals: { process: 'readonly', console: 'readonly', URL: 'readonly' } },
  },
);
