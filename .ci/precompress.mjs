// Leaves a packed copy beside each text of a built folder, so that a server need not pack on each request.
// node .ci/precompress.mjs [folder]; part of `npm run build`
import { readFileSync, readdirSync, rmSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { promisify } from 'node:util';
import { brotliCompress, constants, gzip } from 'node:zlib';

const TEXTS = /\.(html|js|css|json|svg|webmanifest)$/;
export const PACKED = /\.(gz|br)$/;
/** Changed by hand on the server in an emergency: a packed copy beside it would go on saying the old. */
const BY_HAND = 'offline-switch.json';
/** Below, what is saved is less than what a packet holds anyway. */
const WORTH_BYTES = 400;
const AT_ONCE = 4;

const zip = promisify(gzip);
const brotli = promisify(brotliCompress);
/** Full effort on all pages takes half a minute for a tenth of their size: scripts and styles only. */
const effortFor = (name) => (/\.(js|css)$/.test(name) ? 11 : 5);

/**
 * Packs every text of a folder; copies of an earlier build are gone afterwards.
 * @param {string} folder
 * @param {{ brotli?: boolean }} [kinds]
 * @returns {Promise<{ files: number, bytes: number, gz: number, br: number }>} bytes before, and as packed
 */
export async function precompress(folder, kinds = {}) {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => path.join(entry.parentPath, entry.name));
  for (const file of files.filter((name) => PACKED.test(name))) rmSync(file);
  const texts = files.filter(
    (name) => TEXTS.test(name) && path.basename(name) !== BY_HAND && statSync(name).size >= WORTH_BYTES,
  );
  const sum = { files: texts.length, bytes: 0, gz: 0, br: 0 };
  const put = (file, kind, packed) => {
    writeFileSync(`${file}.${kind}`, packed);
    // a server tells by the time whether a browser's copy is still the same
    utimesSync(`${file}.${kind}`, statSync(file).atime, statSync(file).mtime);
    sum[kind] += packed.length;
  };
  const waiting = [...texts];
  const hand = async () => {
    for (let file = waiting.pop(); file; file = waiting.pop()) {
      const content = readFileSync(file);
      sum.bytes += content.length;
      put(file, 'gz', await zip(content, { level: constants.Z_BEST_COMPRESSION }));
      if (kinds.brotli === false) continue;
      const params = {
        [constants.BROTLI_PARAM_MODE]: constants.BROTLI_MODE_TEXT,
        [constants.BROTLI_PARAM_QUALITY]: effortFor(file),
        [constants.BROTLI_PARAM_SIZE_HINT]: content.length,
      };
      put(file, 'br', await brotli(content, { params }));
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, hand));
  return sum;
}

if (process.argv[1] === import.meta.filename) {
  const start = performance.now();
  const { files, bytes, gz, br } = await precompress(process.argv[2] ?? 'build');
  const mb = (value) => `${(value / 1e6).toFixed(1)} MB`;
  const seconds = ((performance.now() - start) / 1000).toFixed(1);
  console.log(`packed ${files} files of ${mb(bytes)}: gzip ${mb(gz)}, brotli ${mb(br)}, ${seconds} s`);
}
