// Which way imports may point. The house is readable because data flows one way; each rule says what it protects.
// depcruise -c .ci/dependency-cruiser.cjs src

const CODE = '^(src|locales)/';
const PACKAGES = '(^|/)node_modules/';
const DRAWN = '^src/scene/(Thing|TractionScene)[.]svelte$';

/** Of our own folders, `from` may import these and no others. */
const only = (name, from, allowed, comment) => ({
  name,
  severity: 'error',
  comment,
  from: { path: from },
  to: { path: CODE, pathNot: allowed },
});
/** `from` may use these packages and modules of the framework, and no others. */
const packages = (name, from, allowed, comment) => ({
  name,
  severity: 'error',
  comment,
  from: { path: from },
  to: { pathNot: [CODE, ...allowed] },
});

const RUNES = `${PACKAGES}svelte/`;

module.exports = {
  forbidden: [
    {
      name: 'no-circle',
      severity: 'error',
      comment:
        'Two modules that need each other are one module, and the order they start in is chance. A circle closed by a type alone is gone when the code runs.',
      from: {},
      to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
    },
    {
      name: 'found',
      severity: 'error',
      comment:
        'An import that leads nowhere works on one machine only. The framework makes $app, $service-worker and virtual: names.',
      from: {},
      to: {
        couldNotResolve: true,
        pathNot: ['^[$]app/', '^[$]service-worker$', '^virtual:', '[.]/[$]types'],
      },
    },
    {
      name: 'no-vague-folder',
      severity: 'error',
      comment:
        'lib, utils, helpers, managers and services hold anything, so nobody knows what they hold. Name the folder after its job.',
      from: {},
      to: {
        path: '/(lib|libs|util|utils|helper|helpers|manager|managers|service|services)/',
        pathNot: PACKAGES,
      },
    },
    {
      name: 'not-to-routes',
      severity: 'error',
      comment:
        'Routes wire everything and are wired by nothing; a piece two pages share lives in ui/, or in routes/_live where it knows the state.',
      from: { pathNot: '^src/routes/' },
      to: { path: '^src/routes/' },
    },
    {
      name: 'not-to-tests',
      severity: 'error',
      comment: 'What families use never leans on what tests it.',
      from: { path: '^src/' },
      to: { path: '^(tests|[.]ci)/' },
    },
    only(
      'domain-alone',
      '^src/domain/',
      ['^src/domain/'],
      'The rules about urgency must be readable and testable alone: no words, pictures, devices or tables from outside.',
    ),
    packages(
      'domain-no-package',
      '^src/domain/',
      [],
      'What decides whether to ring must not change because a package did: domain uses the language and nothing else.',
    ),
    only(
      'content-tables',
      '^src/content/',
      ['^src/content/', '^src/domain/', '^src/scene/(care/)?spec[.]ts$'],
      'Content is tables: ids and types of the domain, the words of a picture (scene/spec, scene/care/spec), never drawing or pages.',
    ),
    packages('content-no-package', '^src/content/', [], 'Tables need no package.'),
    only(
      'scene-draws',
      '^src/scene/',
      ['^src/scene/', '^src/domain/units[.]ts$'],
      'The drawing knows numbers, not signs or languages: what it shows is told to it in a spec.',
    ),
    packages(
      'scene-no-package',
      '^src/scene/.+[.]ts$',
      [],
      'The drawing is arithmetic: the same spec gives the same picture on every machine.',
    ),
    packages(
      'scene-components',
      DRAWN,
      [RUNES, '^virtual:first-drawing$'],
      'The two components may take the first drawing that the build leaves out of the first load, and nothing else.',
    ),
    only(
      'device-at-the-edge',
      '^src/device/',
      ['^src/device/', '^src/domain/'],
      'Each browser interface sits behind a small one of ours; it knows the types it stores and nothing of pages.',
    ),
    packages(
      'device-its-package',
      '^src/device/',
      [`${PACKAGES}(idb-keyval|uqr|qr)/`],
      'One package stores, one draws codes, one reads them; each is used in one place, which says what it cannot do.',
    ),
    only(
      'state-thin',
      '^src/state/',
      ['^src/(state|device|domain|content)/', '^src/scene/spec[.]ts$'],
      'State joins a domain call with a device call; it knows what can be drawn (scene/spec) but no words and no components.',
    ),
    packages('state-no-package', '^src/state/', [RUNES], 'Only the runes of the framework.'),
    only(
      'ui-props-in-events-out',
      '^src/ui/',
      ['^src/(ui|domain|content|scene|i18n)/'],
      'A component is given what it shows and tells what was tapped; with device or state inside it could not be shown in a test or a print. What must know the state lives in routes/_live.',
    ),
    packages(
      'ui-no-package',
      '^src/ui/',
      [RUNES, '^[$]app/paths$'],
      'Components use the framework and the base of its addresses.',
    ),
    only(
      'i18n-words',
      '^src/i18n/',
      ['^src/i18n/', '^src/domain/(units|text/fold|clock/local)[.]ts$', '^locales/'],
      'Words come from locales and know no page; times come in as domain units and are days there, typed words are folded there.',
    ),
    packages(
      'i18n-its-package',
      '^src/i18n/',
      [
        `${PACKAGES}(i18next|minisearch)/`,
        '^[$]app/environment$',
        '^virtual:(languages|review-of-the-rest)$',
      ],
      'The one translator, the one search, and the list of languages the build makes.',
    ),
    {
      name: 'words-through-i18n',
      severity: 'error',
      comment:
        'Texts are read through i18n, which loads an area at a time and never falls back to another language.',
      from: { path: '^src/', pathNot: '^src/i18n/' },
      to: { path: '^locales/' },
    },
    only(
      'worker-alone',
      '^src/service-worker[.]ts$',
      ['^src/service-worker[.]ts$'],
      'The worker outlives the pages it serves: it shares no code with them that could change under it.',
    ),
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '[.]svelte-kit/' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['svelte', 'import', 'types', 'node', 'default'],
      extensions: ['.ts', '.svelte.ts', '.svelte', '.js', '.mjs', '.json', '.d.ts'],
    },
  },
};
