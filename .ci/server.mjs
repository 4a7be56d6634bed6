// npm run server: builds for the root and for the folder /toes/, and runs the tests of server/ on both.
import { spawnSync } from 'node:child_process';
import path from 'node:path';
import { built, ready, root, toolFile, withSources } from './install.mjs';

ready();
const { whyNoNginx } = await import('./nginx.mjs');
const why = whyNoNginx();
if (why) {
  console.error(why);
  process.exit(1);
}

/** Builds a copy of the sources for a place on the server; the folder it was built in. */
function builtFor(base, sources) {
  const start = performance.now();
  if (!built(sources, { BARE_TOES_BASE: base })) throw new Error(`server › build for ${base || '/'}: failed`);
  console.log(`built for ${base || '/'}: ${((performance.now() - start) / 1000).toFixed(1)} s`);
  return path.join(sources, 'build');
}

const status = withSources((one) =>
  withSources((other) => {
    const folders = {
      BARE_TOES_BUILD: builtFor('', one),
      BARE_TOES_FOLDER_BUILD: builtFor('/toes', other),
    };
    return spawnSync(process.execPath, [toolFile('vitest'), 'run', '-c', '.ci/vitest.server.mjs'], {
      cwd: root,
      env: { ...process.env, ...folders },
      stdio: ['ignore', 'inherit', 'inherit'],
    }).status;
  }),
);
process.exitCode = status ?? 1;
