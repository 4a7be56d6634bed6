// Serves a built folder on 127.0.0.1, reading each file anew: for `npm start` and for tests that swap builds.
// node .ci/serve.mjs [folder] [port] [plain]; plain: nothing is packed, which a test on the same machine need not wait for
import { createReadStream, existsSync, readFile, statSync } from 'node:fs';
import { createServer } from 'node:http';
import path from 'node:path';
import { pipeline } from 'node:stream';
import { createGzip } from 'node:zlib';

const TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
};

// a file that went away meanwhile, or a reader that did, ends this one answer and not the server
/** Whole, in one go: a page of some thirty small files stands earlier so. */
const send = (file, response) =>
  readFile(file, (error, bytes) => (error ? response.destroy() : response.end(bytes)));
const sendPacked = (file, response) =>
  pipeline(createReadStream(file), createGzip(), response, () => undefined);

/**
 * @param {() => string} folder the folder to serve, asked for at each request
 * @param {number} port 0 for any free one
 * @param {boolean} packs whether texts are packed on their way
 * @returns {Promise<{ port: number, close: () => Promise<void> }>}
 */
export function serve(folder, port = 0, packs = true) {
  const server = createServer((request, response) => {
    const root = path.resolve(folder());
    let name;
    try {
      name = decodeURIComponent(new URL(request.url ?? '/', 'http://127.0.0.1').pathname);
    } catch {
      response.writeHead(400).end();
      return;
    }
    let file = path.join(root, name);
    if (file !== root && !file.startsWith(root + path.sep)) {
      response.writeHead(403).end();
      return;
    }
    if (existsSync(file) && statSync(file).isDirectory()) {
      if (!name.endsWith('/')) {
        response.writeHead(308, { location: `${name}/` }).end();
        return;
      }
      file = path.join(file, 'index.html');
    }
    if (!existsSync(file)) {
      const own = path.join(root, '404.html');
      if (!existsSync(own)) response.writeHead(404, { 'content-type': 'text/plain' }).end('not found');
      else send(own, response.writeHead(404, { 'content-type': TYPES['.html'] }));
      return;
    }
    const extension = path.extname(file);
    const headers = {
      'content-type': TYPES[extension] ?? 'application/octet-stream',
      'cache-control': name.includes('/immutable/') ? 'public, max-age=31536000, immutable' : 'no-cache',
      'x-content-type-options': 'nosniff',
    };
    const zipped = packs && extension !== '.png' && /\bgzip\b/.test(request.headers['accept-encoding'] ?? '');
    response.writeHead(
      200,
      zipped ? { ...headers, 'content-encoding': 'gzip', vary: 'accept-encoding' } : headers,
    );
    if (request.method === 'HEAD') response.end();
    else if (zipped) sendPacked(file, response);
    else send(file, response);
  });
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', () =>
      resolve({
        port: server.address().port,
        close: () => new Promise((done) => (server.closeAllConnections(), server.close(() => done()))),
      }),
    );
  });
}

if (process.argv[1] === import.meta.filename) {
  const { port } = await serve(
    () => process.argv[2] ?? 'build',
    Number(process.argv[3] ?? 4173),
    process.argv[4] !== 'plain',
  );
  console.log(`http://127.0.0.1:${port}/`);
}
