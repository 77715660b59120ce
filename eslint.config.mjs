// Lint rules of the whole project: strict and with types. `npm test` fails on any finding.
import tseslint from 'typescript-eslint';

const typescript = ['src/**/*.ts', 'tests/**/*.ts'];

export default tseslint.config(
  {
    ignores: [
      'dist/**',
      'node_modules/**',
      // Written by src/launch/catalogue.mjs.
      'src/recipes/catalogue.ts',
      // Written by src/launch/recipe-interfaces.mjs.
      'src/recipes/interfaces.ts',
      'src/launch/stubs/**',
      // Runs in the browser before anything is loaded, as it stands.
      'src/page/theme-init.js',
    ],
  },
  { linterOptions: { reportUnusedDisableDirectives: 'error' } },
  ...tseslint.configs.strictTypeChecked.map((config) => ({ ...config, files: typescript })),
  {
    files: typescript,
    languageOptions: { parserOptions: { project: './tsconfig.json', tsconfigRootDir: import.meta.dirname } },
    rules: {
      complexity: ['error', 15],
      eqeqeq: 'error',
      '@typescript-eslint/restrict-template-expressions': [
        'error',
        { allowNumber: true, allowBoolean: true },
      ],
      '@typescript-eslint/no-confusing-void-expression': [
        'error',
        { ignoreArrowShorthand: true, ignoreVoidOperator: true },
      ],
      '@typescript-eslint/no-unused-vars': [
        'error',
        { argsIgnorePattern: '^_', varsIgnorePattern: '^_', caughtErrors: 'all', ignoreRestSiblings: true },
      ],
    },
  },
  {
    files: ['src/**/*.ts', 'src/launch/**/*.mjs'],
    rules: {
      'max-lines': ['error', { max: 250 }],
      'max-lines-per-function': ['error', { max: 60, skipBlankLines: true, skipComments: true }],
    },
  },
  {
    // A test states what it knows to be there; an error here is a failed test.
    files: ['tests/**/*.ts'],
    rules: {
      '@typescript-eslint/no-non-null-assertion': 'off',
      '@typescript-eslint/unbound-method': 'off',
      '@typescript-eslint/no-confusing-void-expression': 'off',
    },
  },
  {
    files: ['src/launch/**/*.mjs', 'tests/**/*.mjs', '*.mjs'],
    rules: {
      complexity: ['error', 15],
      eqeqeq: 'error',
      'no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
    },
  },
);
