// npm start: installs, builds, serves on this machine only, and says where.
import { existsSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { built, ready, root } from './install.mjs';

const FIRST_PORT = 4173;
const LAST_PORT = FIRST_PORT + 50;

/** A language's own name, in its own script. */
const ownName = (code) => new Intl.DisplayNames([code], { type: 'language' }).of(code) ?? code;

async function serveOnFreePort(folder) {
  const { serve } = await import('./serve.mjs');
  for (let port = FIRST_PORT; port <= LAST_PORT; port++) {
    try {
      return await serve(() => folder, port);
    } catch (error) {
      if (error.code !== 'EADDRINUSE') throw error;
    }
  }
  throw new Error(`start › port: every port from ${FIRST_PORT} to ${LAST_PORT} is in use`);
}

ready();
console.log('Building …');
if (!built()) {
  console.error('The build failed: its message is above.');
  process.exit(1);
}
const folder = path.join(root, 'build');
const { port } = await serveOnFreePort(folder);
const languages = readdirSync(path.join(root, 'locales')).filter((code) =>
  existsSync(path.join(folder, code, 'index.html')),
);
console.log(`\nBare Toes is served on this machine: http://127.0.0.1:${port}/\n`);
for (const code of languages) console.log(`  http://127.0.0.1:${port}/${code}/  ${ownName(code)}`);
console.log('\nStop it with Ctrl+C. A ward puts the folder build/ on its own web server.');
