// What lint checks, passed by flag: `eslint -c build/eslint.config.js .`
import { createNodeResolver, importX } from 'eslint-plugin-import-x';
import svelte from 'eslint-plugin-svelte';
import path from 'node:path';
import tseslint from 'typescript-eslint';
import { walls } from './walls.js';

const root = path.dirname(import.meta.dirname);
const code = ['**/*.ts', '**/*.svelte', '**/*.mjs', '**/*.js'];
const typed = ['**/*.ts'];
const pure = ['app/**/*.ts', 'shared/**/*.ts'];

const throughArguments = 'Pure floor: time, chance and locale come in as arguments.';
/** Names whose answer depends on the moment, the machine or the place: the same input would give another output. */
const impureNames = ['Intl', 'performance', 'crypto', 'fetch', 'setTimeout', 'setInterval', 'console'].map((name) => ({
  name,
  message: throughArguments,
}));
const impureProperties = [
  { object: 'Date', property: 'now', message: throughArguments },
  { object: 'Math', property: 'random', message: throughArguments },
  ...['toLocaleString', 'toLocaleDateString', 'toLocaleTimeString', 'toLocaleUpperCase', 'toLocaleLowerCase'].map(
    (property) => ({ property, message: throughArguments }),
  ),
  { property: 'localeCompare', message: throughArguments },
];
const impureSyntax = [
  { selector: "NewExpression[callee.name='Date'][arguments.length=0]", message: throughArguments },
  { selector: "CallExpression[callee.name='Date']", message: throughArguments },
];
/** Node runs the TypeScript files as they are, by leaving the types out. */
const unerasableSyntax = [
  { selector: 'TSEnumDeclaration', message: 'Node runs these files as they are: no enums.' },
  { selector: 'TSParameterProperty', message: 'Node runs these files as they are: no parameter properties.' },
  { selector: 'TSModuleDeclaration[global!=true]', message: 'Node runs these files as they are: no namespaces.' },
];
const inlineRoundings = ['round', 'ceil', 'floor', 'trunc'].map((property) => ({
  object: 'Math',
  property,
  message: 'Rounding is a named function in a file named round*.ts.',
}));

export default tseslint.config(
  { ignores: ['node_modules/**', 'out/**', 'dist/**', 'release/**', 'coverage/**', 'test-results/**'] },
  { linterOptions: { noInlineConfig: true, reportUnusedDisableDirectives: 'error' } },

  { files: typed, extends: [tseslint.configs.strictTypeChecked] },
  { files: ['**/*.svelte'], extends: [tseslint.configs.strict, svelte.configs.recommended, svelte.configs.prettier] },
  {
    files: typed,
    languageOptions: {
      parser: tseslint.parser,
      parserOptions: { projectService: true, tsconfigRootDir: root, extraFileExtensions: ['.svelte'] },
    },
  },
  { files: ['**/*.svelte'], languageOptions: { parserOptions: { parser: tseslint.parser } } },

  {
    files: code,
    plugins: { walls, 'import-x': importX },
    settings: {
      // Components are leaves here: cycles are looked for among code files.
      'import-x/extensions': ['.ts', '.js', '.mjs'],
      'import-x/parsers': { '@typescript-eslint/parser': ['.ts'] },
      'import-x/resolver-next': [createNodeResolver({ extensions: ['.ts', '.js', '.mjs', '.svelte', '.json'] })],
    },
    rules: {
      'walls/imports': 'error',
      'import-x/no-cycle': ['error', { ignoreExternal: true }],
      'import-x/no-self-import': 'error',
      'import-x/no-duplicates': 'error',
      eqeqeq: 'error',
      'no-var': 'error',
      'prefer-const': 'error',
      'object-shorthand': 'error',
      'no-nested-ternary': 'error',
      'no-empty': 'error',
      'no-debugger': 'error',
      'no-constant-condition': 'error',
      'no-unsafe-finally': 'error',
      'no-unreachable': 'error',
      'no-param-reassign': 'error',
      'no-restricted-syntax': ['error', ...unerasableSyntax],
    },
  },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    rules: {
      // Svelte's own way to write props and state is `let`.
      'prefer-const': 'off',
      // It takes the words that explain an ignore for names of warnings; svelte-check judges the warnings themselves.
      'svelte/no-unused-svelte-ignore': 'off',
    },
  },
  {
    files: typed,
    rules: {
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/switch-exhaustiveness-check': ['error', { considerDefaultExhaustiveForUnions: true }],
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
      // Numbers and known strings read well in a template.
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true, allowBoolean: true }],
      // `return answer(...)` of a function that gives nothing ends a branch in one line.
      '@typescript-eslint/no-confusing-void-expression': 'off',
      // An async function without await keeps an interface's promise, and turns a throw into a rejection.
      '@typescript-eslint/require-await': 'off',
      // Texts are walked letter by letter on purpose; no emoji stands in a measurement.
      '@typescript-eslint/no-misused-spread': 'off',
      // `string & {}` beside named texts keeps an editor's suggestions.
      '@typescript-eslint/no-redundant-type-constituents': 'off',
      // A type parameter that stands once may still tie a callback to what it is given.
      '@typescript-eslint/no-unnecessary-type-parameters': 'off',
      // Electron declares what its classes' functions return more widely than this rule can follow.
      '@typescript-eslint/no-unsafe-class-instance-assignment': 'off',
      '@typescript-eslint/only-throw-error': 'error',
      '@typescript-eslint/prefer-promise-reject-errors': 'error',
    },
  },

  {
    files: pure,
    rules: {
      'no-restricted-globals': ['error', ...impureNames],
      'no-restricted-properties': ['error', ...impureProperties],
      'no-restricted-syntax': ['error', ...unerasableSyntax, ...impureSyntax],
    },
  },
  {
    files: ['app/**/*.ts'],
    ignores: ['app/**/round*.ts'],
    rules: { 'no-restricted-properties': ['error', ...impureProperties, ...inlineRoundings] },
  },
  {
    files: ['test/**/*.ts'],
    rules: {
      // Tests hand over what is wrong on purpose, and know what is there.
      '@typescript-eslint/no-non-null-assertion': 'off',
      '@typescript-eslint/no-unsafe-assignment': 'off',
      '@typescript-eslint/no-unsafe-member-access': 'off',
      '@typescript-eslint/no-unsafe-argument': 'off',
      '@typescript-eslint/no-unsafe-call': 'off',
      '@typescript-eslint/no-unsafe-return': 'off',
    },
  },
);
