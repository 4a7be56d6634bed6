/** Built sites of a test's own: nobody else rebuilds them, and their server can be taken away. */
import { execFile } from 'node:child_process';
import { createHash } from 'node:crypto';
import { cp, mkdtemp, readFile, readdir, rename, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { promisify } from 'node:util';
import { expect, test as base, type BrowserContext, type Page } from '@playwright/test';
import { serve } from '../../.ci/serve.mjs';
import { root } from './locales.ts';
import { built as underTest } from './pages.ts';

interface Site {
  address: string;
  /** The folder that is served from now on. */
  show(folder: string): void;
  /** No network, and nobody who would answer. */
  goOffline(): Promise<void>;
}

const temporary = () => mkdtemp(path.join(tmpdir(), 'bare-toes-'));
const remove = (folder: string) => rm(folder, { recursive: true, force: true });

export const test = base.extend<
  { site: Site; scratch: () => Promise<string> },
  { old: string; onlyPages: readonly string[] | undefined }
>({
  /** Where a test asks for few pages: what the worker of the copy keeps beside its files. */
  onlyPages: [undefined, { option: true, scope: 'worker' }],
  /** A copy of the build under test. */
  old: [
    async ({ onlyPages }, use) => {
      const folder = await temporary();
      await cp(underTest, folder, { recursive: true });
      if (onlyPages) await keepOnly(folder, onlyPages);
      await use(folder);
      await remove(folder);
    },
    { scope: 'worker' },
  ],
  site: async ({ old, context }, use) => {
    let shown = old;
    let closed = false;
    const server = await serve(() => shown, 0, false);
    const close = async () => {
      if (!closed) await server.close();
      closed = true;
    };
    await use({
      address: `http://127.0.0.1:${server.port}`,
      show: (folder) => (shown = folder),
      goOffline: async () => {
        await context.setOffline(true);
        await close();
      },
    });
    await close();
  },
  /** Folders that are gone after the test. */
  // eslint-disable-next-line no-empty-pattern -- the runner reads what is needed from this pattern
  scratch: async ({}, use) => {
    const made: string[] = [];
    await use(async () => {
      const folder = await temporary();
      made.push(folder);
      return folder;
    });
    await Promise.all(made.map(remove));
  },
});

/**
 * Lets the worker of a built folder keep these pages and no others beside its files: to fill the device with all of
 * them takes most of the time of a test about versions. offline.spec.ts looks at the whole.
 */
async function keepOnly(folder: string, pages: readonly string[]): Promise<void> {
  const file = path.join(folder, 'service-worker.js');
  const code = await readFile(file, 'utf8');
  const listed = /,[a-zA-Z_$]+\+`(\/[a-z][^`]*\/)`/g;
  expect([...code.matchAll(listed)].map(([, page]) => page)).toEqual(expect.arrayContaining([...pages]));
  await writeFile(
    file,
    code.replace(listed, (entry, page: string) => (pages.includes(page) ? entry : '')),
  );
}

const SOURCES = ['.ci', 'locales', 'src', 'static', 'package.json', 'svelte.config.js', 'tsconfig.json'];

/** A copy of what a build is made of, so that the build under test stays as it is. */
async function copySources(folder: string): Promise<void> {
  for (const name of [...SOURCES, 'vite.config.ts'])
    await cp(path.join(root, name), path.join(folder, name), { recursive: true });
  await symlink(path.join(root, 'node_modules'), path.join(folder, 'node_modules'), 'dir');
}

async function built(folder: string, more: Record<string, string> = {}): Promise<string> {
  await promisify(execFile)(process.execPath, [path.join(root, 'node_modules/vite/bin/vite.js'), 'build'], {
    cwd: folder,
    env: { ...process.env, ...more },
    maxBuffer: 1e8,
  });
  return path.join(folder, 'build');
}

/** Builds the sources with a ward's own file, as README › Put it on a ward's server says. */
export async function buildForWard(folder: string, settings: object): Promise<string> {
  await copySources(folder);
  const file = path.join(folder, 'ward-of-a-test.json');
  await writeFile(file, JSON.stringify(settings));
  return built(folder, { BARE_TOES_WARD: file });
}

const hashOf = (script: string) => `'sha256-${createHash('sha256').update(script).digest('base64')}'`;
const inline = (html: string) => [...html.matchAll(/<script>([^]*?)<\/script>/g)].map(([, code]) => code!);

/**
 * A built folder as a ward's next version would be: another number, every script and style under another name, and one text
 * changed. A second build would take a minute; that it differs in just this is looked at in ward.spec.ts, which needs one.
 */
export async function nextVersion(
  from: string,
  folder: string,
  text: string,
  newText: string,
): Promise<void> {
  await cp(from, folder, { recursive: true });
  const [number, chunks] = [await versionOf(from), await chunksIn(from)];
  const scripts = [...chunks].filter((name) => /\.(js|css)$/.test(name));
  const renamed = (name: string) => name.replace(/\.(\w+)$/, '-next.$1');
  const names = new Set(scripts.map((name) => path.posix.basename(name)));
  const named = (code: string) =>
    code
      .replace(/[\w.-]+\.(js|css)\b/g, (name) => (names.has(name) ? renamed(name) : name))
      .replaceAll(number, `${number}0`)
      .replaceAll(text, newText);
  for (const file of await readdir(folder, { recursive: true })) {
    if (!/\.(html|js|css|json)$/.test(file)) continue;
    const code = await readFile(path.join(folder, file), 'utf8');
    let next = named(code);
    // what stands in a page by itself is let run by its sum
    for (const script of inline(code)) next = next.replaceAll(hashOf(script), hashOf(named(script)));
    await writeFile(path.join(folder, file), next);
  }
  for (const name of scripts) await rename(path.join(folder, name), path.join(folder, renamed(name)));
}

/** Every page of a built folder, as an address. */
export async function pagesIn(folder: string): Promise<string[]> {
  const files = await readdir(folder, { recursive: true });
  return files
    .filter((file) => path.basename(file) === 'index.html')
    .map((file) => `/${file.split(path.sep).slice(0, -1).join('/')}/`.replace('//', '/'))
    .sort();
}

export async function chunksIn(folder: string): Promise<Set<string>> {
  const files = await readdir(path.join(folder, '_app/immutable'), { recursive: true });
  return new Set(files.map((file) => `/_app/immutable/${file.split(path.sep).join('/')}`));
}

export const versionOf = async (folder: string): Promise<string> =>
  (JSON.parse(await readFile(path.join(folder, '_app/version.json'), 'utf8')) as { version: string }).version;

export const titleIn = async (folder: string, address: string): Promise<string> => {
  const html = await readFile(path.join(folder, address, 'index.html'), 'utf8');
  return /<title>([^<]*)<\/title>/.exec(html)![1]!;
};

/** Opens the first page of a visit and waits until the device holds all it is to hold. */
export async function visit(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await readyOffline(page);
}

export async function readyOffline(page: Page): Promise<void> {
  await expect(page.locator('[data-offline]')).toHaveAttribute('data-offline', 'ready', { timeout: 50_000 });
}

/** What the device holds: cache name -> addresses. */
export function keptAddresses(page: Page): Promise<Record<string, string[]>> {
  return page.evaluate(async () => {
    const all: Record<string, string[]> = {};
    for (const name of await caches.keys())
      all[name] = (await (await caches.open(name)).keys()).map(({ url }) =>
        url.slice(location.origin.length),
      );
    return all;
  });
}

/** As the browser does when it needs the room: the worker is gone until something wakes it. */
export async function stopWorkers(context: BrowserContext, page: Page): Promise<void> {
  const session = await context.newCDPSession(page);
  await session.send('ServiceWorker.enable');
  await session.send('ServiceWorker.stopAllWorkers');
  await session.detach();
}
