// How many pages a second a server gives on this machine: nginx as documented, and a plain Node server as a reference.
import { spawn } from 'node:child_process';
import path from 'node:path';
import { once } from 'node:events';
import { load } from './load.mjs';
import { startNginx, whyNoNginx } from './nginx.mjs';

const PAGES = [
  '/en/look/',
  '/en/look/toes/',
  '/en/look/toes/toes-cool/',
  '/es/bell/',
  '/ar/look/',
  '/pl/our-day/',
];
const LOAD = { requests: 6000, atOnce: 32, seconds: 4 };

/** A server of its own process: in ours it would share the time of the asker. */
async function plainNode(build) {
  const child = spawn(process.execPath, [path.join(import.meta.dirname, 'serve.mjs'), build, '0', 'plain'], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const [said] = await once(child.stdout, 'data');
  return { origin: String(said).trim().replace(/\/$/, ''), close: () => child.kill() };
}

const NODE = 'server, plain Node, pages as they are';

async function perSecond(name, origin, headers, reference = NODE) {
  const addresses = PAGES.map((page) => origin + page);
  await load(addresses, { ...LOAD, seconds: 0.5, headers });
  const { answered, failed, seconds } = await load(addresses, { ...LOAD, headers });
  if (failed.length > 0) throw new Error(`bench › ${name}: ${failed.length} failed, the first ${failed[0]}`);
  return { name, value: answered / seconds, unit: 'requests/s', digits: 0, reference };
}

/**
 * The figures of the servers, each with the asker on the same machine.
 * @param {string} build the built folder
 */
export async function serverFigures(build) {
  const figures = [];
  const node = await plainNode(build);
  try {
    figures.push(await perSecond(NODE, node.origin, undefined, 'none'));
  } finally {
    node.close();
  }
  const why = whyNoNginx();
  if (why) {
    console.error(`server, nginx: ${why}`);
    return figures;
  }
  const nginx = await startNginx(build);
  const packed = { 'accept-encoding': 'gzip' };
  try {
    figures.push(
      await perSecond('server, nginx by http, pages as they are', `${nginx.hospital}/toes`),
      await perSecond('server, nginx by http, packed', `${nginx.hospital}/toes`, packed),
      await perSecond('server, nginx by https, packed', nginx.https, packed),
    );
  } finally {
    await nginx.close();
  }
  return figures;
}
