// Firefox speaks WebDriver BiDi itself: no program stands between. The library's connection carries the commands.
import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import Connection from 'selenium-webdriver/bidi/index.js';
import { pageOf, SEEN } from './page.mjs';

const PLACES = [process.env.BARE_TOES_FIREFOX, '/usr/bin/firefox-esr', '/usr/bin/firefox'];
const START_MS = 120_000;
/** Nothing asks the network but the page; bars to scroll lie over the page, as on a phone. */
const SETTINGS = {
  'app.normandy.enabled': false,
  'app.update.enabled': false,
  'browser.shell.checkDefaultBrowser': false,
  'datareporting.policy.dataSubmissionEnabled': false,
  'network.captive-portal-service.enabled': false,
  'network.connectivity-service.enabled': false,
  'toolkit.telemetry.enabled': false,
  'ui.useOverlayScrollbars': 1,
};

const place = () => PLACES.find((one) => one && existsSync(one));
export const name = 'Firefox';
export const onDebian = 'apt-get install firefox-esr';
/** What is not installed, in a sentence; nothing where all is there. */
export const missing = () => (place() ? undefined : 'no Firefox is installed');

/** The address Firefox says it listens on. */
function addressOf(child) {
  return new Promise((resolve, reject) => {
    let said = '';
    const late = setTimeout(() => reject(new Error(`Firefox did not listen: ${said}`)), START_MS);
    child.once('exit', () => (clearTimeout(late), reject(new Error(`Firefox ended: ${said}`))));
    child.stderr.on('data', (data) => {
      said += data;
      const found = /WebDriver BiDi listening on (ws:\S+)/.exec(said);
      if (!found) return;
      clearTimeout(late);
      resolve(found[1]);
    });
  });
}

/** Starts the engine on a screen of this size, in a time zone; its `phone` opens a page with a memory of its own. */
export async function start({ width, height, zone }) {
  const profile = mkdtempSync(path.join(tmpdir(), 'bare-toes-firefox-'));
  const lines = Object.entries(SETTINGS).map((row) => `user_pref(${row.map((one) => JSON.stringify(one))});`);
  writeFileSync(path.join(profile, 'user.js'), lines.join('\n'));
  const child = spawn(
    place(),
    ['--headless', '--no-remote', '--profile', profile, '--remote-debugging-port', '0'],
    { env: { ...process.env, HOME: profile, TZ: zone }, stdio: ['ignore', 'ignore', 'pipe'] },
  );
  // walks that break off must not leave a browser behind
  process.once('exit', () => child.kill());
  const ended = new Promise((resolve) => child.once('exit', resolve));
  const connection = new Connection(`${await addressOf(child)}/session`);
  async function send(method, params = {}) {
    const answer = await connection.send({ method, params });
    if (answer.type === 'error') throw new Error(`${method}: ${answer.message}`);
    return answer.result;
  }
  // the connection waits half a minute for an answer; on a busy machine a session may begin after that
  let begun = false;
  for (let tries = 0; tries < 6 && !begun; tries += 1)
    begun = await send('session.new', { capabilities: {} }).then(
      () => true,
      () => send('browser.getUserContexts').then(Boolean, () => false),
    );
  if (!begun) throw new Error('Firefox began no session');
  const version = /[\d.]+\w*/.exec(spawnSync(place(), ['--version'], { encoding: 'utf8' }).stdout)?.[0];

  async function phone(origin) {
    const { userContext } = await send('browser.createUserContext');
    const { context } = await send('browsingContext.create', { type: 'tab', userContext });
    await send('browsingContext.setViewport', { context, viewport: { width, height } });
    const call = async (source, words) => {
      const answer = await send('script.callFunction', {
        functionDeclaration: source,
        awaitPromise: true,
        target: { context },
        arguments: [{ type: 'string', value: words }],
      });
      if (answer.type === 'exception') throw new Error(answer.exceptionDetails.text);
      return answer.result;
    };
    const engine = {
      // every page is waited for by what is seen in it
      go: (url) => send('browsingContext.navigate', { context, url, wait: 'none' }),
      run: async (source, words) => (await call(source, words)).value,
      async press(selector) {
        const { sharedId } = await call(SEEN, selector);
        if (!sharedId) return false;
        const element = { type: 'element', element: { sharedId } };
        await send('input.performActions', {
          context,
          actions: [
            {
              ...{ type: 'pointer', id: 'finger', parameters: { pointerType: 'touch' } },
              actions: [
                { type: 'pointerMove', x: 0, y: 0, origin: element },
                { type: 'pointerDown', button: 0 },
                { type: 'pointerUp', button: 0 },
              ],
            },
          ],
        });
        return true;
      },
      async picture() {
        const { data } = await send('browsingContext.captureScreenshot', { context });
        return Buffer.from(data, 'base64');
      },
      async close() {
        await send('browsingContext.close', { context });
        await send('browser.removeUserContext', { userContext });
      },
    };
    return pageOf(engine, origin);
  }

  return {
    version: version ?? 'of unknown version',
    phone,
    async stop() {
      await send('browser.close').catch(() => child.kill());
      const late = setTimeout(() => child.kill('SIGKILL'), 10_000);
      await ended;
      clearTimeout(late);
      await connection.close().catch(() => undefined);
      rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
    },
  };
}
