// Rules for reading and for purity. Run from the root: eslint -c .ci/eslint.config.mjs .
import path from 'node:path';
import svelte from 'eslint-plugin-svelte';
import { configs as typescript, parser } from 'typescript-eslint';
import svelteConfig from '../svelte.config.js';

const root = path.resolve(import.meta.dirname, '..');

// ESLint's own recommended rules, for what the type checker does not see anyway.
const OWN_RULES = Object.fromEntries(
  (
    'constructor-super for-direction no-async-promise-executor no-case-declarations no-class-assign ' +
    'no-compare-neg-zero no-cond-assign no-constant-binary-expression no-constant-condition no-control-regex ' +
    'no-debugger no-delete-var no-dupe-else-if no-duplicate-case no-empty no-empty-character-class ' +
    'no-empty-pattern no-ex-assign no-extra-boolean-cast no-fallthrough no-global-assign no-invalid-regexp ' +
    'no-irregular-whitespace no-loss-of-precision no-misleading-character-class no-prototype-builtins ' +
    'no-regex-spaces no-self-assign no-sparse-arrays no-unexpected-multiline no-unreachable ' +
    'no-unsafe-finally no-unsafe-optional-chaining no-useless-backreference no-useless-catch ' +
    'no-useless-escape require-yield use-isnan valid-typeof eqeqeq no-var prefer-const'
  )
    .split(' ')
    .map((rule) => [rule, 'error']),
);

const PURE = ['src/domain/**/*.ts', 'src/content/**/*.ts', 'src/scene/**/*.ts'];
const WHY_PURE = 'Domain, content and the drawing are pure: time, chance and devices are handed in.';
const IMPURE_GLOBALS = [
  ...['Date', 'console', 'setTimeout', 'setInterval', 'setImmediate', 'queueMicrotask', 'performance'],
  ...['fetch', 'XMLHttpRequest', 'WebSocket', 'crypto', 'indexedDB', 'localStorage', 'sessionStorage'],
  ...['window', 'document', 'navigator', 'location', 'history', 'screen', 'self', 'globalThis', 'process'],
  ...['requestAnimationFrame', 'matchMedia', 'getComputedStyle', 'alert', 'confirm', 'prompt'],
];

export default [
  { ignores: ['build/', '.svelte-kit/', 'node_modules/', 'test-results/', 'coverage/'] },
  ...typescript.recommended,
  ...svelte.configs.recommended,
  {
    languageOptions: {
      ecmaVersion: 2022,
      parserOptions: { tsconfigRootDir: root },
    },
    linterOptions: { reportUnusedDisableDirectives: 'error' },
    rules: {
      ...OWN_RULES,
      '@typescript-eslint/no-explicit-any': 'error',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
    },
  },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: { parserOptions: { parser, svelteConfig, extraFileExtensions: ['.svelte'] } },
    rules: {
      // runes: a prop or state is often written in the template only
      'prefer-const': 'off',
      // every address comes from ui/paths.ts, which puts the base in front; tests open every link of every page
      'svelte/no-navigation-without-resolve': 'off',
      'no-restricted-syntax': [
        'error',
        {
          selector: "SvelteElement[kind='html'] > SvelteStartTag > SvelteSpreadAttribute",
          message:
            'One attribute spread over an element brings 2 KiB of svelte into the first load: write it out.',
        },
      ],
    },
  },
  {
    files: ['src/scene/*.svelte'],
    // the markup is made by scene/markup.ts from numbers and token names; its one text, the label, is escaped there
    rules: { 'svelte/no-at-html-tags': 'off' },
  },
  { files: ['src/**'], rules: { 'no-console': 'error' } },
  {
    files: PURE,
    rules: {
      'no-restricted-globals': ['error', ...IMPURE_GLOBALS.map((name) => ({ name, message: WHY_PURE }))],
      'no-restricted-properties': ['error', { object: 'Math', property: 'random', message: WHY_PURE }],
      'no-restricted-syntax': [
        'error',
        {
          selector: "MemberExpression[property.name='toLocaleString']",
          message: 'Words and numbers for people are made in i18n.',
        },
        {
          selector: "MemberExpression[object.name='Intl']",
          message: 'Words and numbers for people are made in i18n.',
        },
        { selector: 'ImportExpression', message: 'A pure module is whole when it is imported.' },
      ],
    },
  },
  {
    // read by the browser before anything else, as it stands
    files: ['static/**/*.js'],
    languageOptions: { sourceType: 'script', ecmaVersion: 5 },
    rules: { 'no-var': 'off', '@typescript-eslint/no-unused-vars': ['error', { caughtErrors: 'none' }] },
  },
];
