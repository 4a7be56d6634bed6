import { readFileSync } from 'node:fs';
import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vitest/config';
import { firstDrawingPlugin, languagesPlugin } from './.ci/languages-plugin.mjs';
import { namedImportsPlugin } from './.ci/named-imports-plugin.mjs';
import { ownBindingsPlugin } from './.ci/own-bindings-plugin.mjs';
import { groups } from './.ci/together.mjs';
import { wardPlugin } from './.ci/ward-plugin.mjs';

/** Of comments only licences stay: what is pure is known by then. */
const COMMENTS = { legal: true, annotation: false, jsdoc: false };

const ROUTES = '.svelte-kit/generated/client-optimized/app.js';

/** Whether a script is the page of a part or of a sign: the router numbers its pages in the list it writes. */
function isNextToLook(asked: string): boolean {
  const page = /nodes\/(\d+)\./.exec(asked)?.[1];
  if (!page) return false;
  const listed = /"[^"]*\/look\/\[part\][^"]*": \[(\d+)/g;
  return [...readFileSync(ROUTES, 'utf8').matchAll(listed)].some(([, number]) => number === page);
}

/** Files that take longest. */
const LONG = /(reference\/play-days|signs\/laws|content\/made-up|notes\/pack|play\/(proven|laws))\.test/;
async function longestFirst() {
  const { BaseSequencer } = await import('vitest/node');
  return class extends BaseSequencer {
    override async sort(files: Parameters<typeof BaseSequencer.prototype.sort>[0]) {
      const sorted = await super.sort(files);
      const isLong = ({ moduleId }: (typeof sorted)[number]) => LONG.test(moduleId);
      return [...sorted.filter(isLong), ...sorted.filter((one) => !isLong(one))];
    }
  };
}

export default defineConfig({
  plugins: [
    wardPlugin(),
    languagesPlugin(),
    firstDrawingPlugin(),
    namedImportsPlugin(),
    ownBindingsPlugin(),
    sveltekit(),
  ],
  // one value a file: a name for each key would be written three times
  json: { namedExports: false },
  build: {
    // A browser that does not know this syntax still has the plain pages: the core path needs no script.
    target: 'es2022',
    // The first page would list every script of every other page; their own pages name what they need. Styles stay
    // listed, and the scripts of what is one tap away: a part's page stood after 1.0 s on a slow phone, with the list 0.7 s.
    modulePreload: {
      resolveDependencies: (asked, files) =>
        isNextToLook(asked) ? files : files.filter((file) => file.endsWith('.css')),
    },
    rollupOptions: {
      output: {
        comments: COMMENTS,
        codeSplitting: { groups },
      },
    },
  },
  worker: { rolldownOptions: { output: { comments: COMMENTS } } },
  test: {
    include: ['tests/{unit,reference,rules}/**/*.test.ts'],
    environment: 'node',
    setupFiles: ['tests/helpers/same-cases.ts'],
    // no test leaves anything behind in a module; reading all of them anew for each file took a third of the time
    isolate: false,
    // a long file that began last would be waited for
    ...(process.env.VITEST ? { sequence: { sequencer: await longestFirst() } } : {}),
    // the usual "one less than there are cores" would leave half of a small machine idle
    maxWorkers: 2,
    // laws try many cases, and a shared machine may be slow: a limit is for tests that hang
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});
