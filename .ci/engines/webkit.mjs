// WebKit as Debian builds it: WebKitWebDriver drives the small browser that comes with the library, on a screen of its own.
import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { Builder } from 'selenium-webdriver';
import { freePort } from '../free-port.mjs';
import { pageOf, SEEN } from './page.mjs';

const DRIVER = '/usr/bin/WebKitWebDriver';
const SCREEN = '/usr/bin/Xvfb';
const START_MS = 30_000;

/** The small browser lies in a folder named by machine and version. */
function browserPlace() {
  for (const machine of existsSync('/usr/lib') ? readdirSync('/usr/lib') : []) {
    if (!machine.endsWith('-linux-gnu')) continue;
    for (const version of ['webkitgtk-6.0', 'webkit2gtk-4.1', 'webkit2gtk-4.0']) {
      const place = path.join('/usr/lib', machine, version, 'MiniBrowser');
      if (existsSync(place)) return place;
    }
  }
  return undefined;
}

export const name = 'WebKit';
export const onDebian = 'apt-get install webkit2gtk-driver xvfb';
/** What is not installed, in a sentence; nothing where all is there. */
export function missing() {
  if (!existsSync(DRIVER)) return 'WebKitWebDriver is not installed';
  if (!browserPlace()) return 'the browser that WebKitWebDriver drives is not installed';
  return existsSync(SCREEN) ? undefined : 'Xvfb, the screen it is shown on, is not installed';
}

/** A screen nobody looks at; it chooses its own number. */
async function screen() {
  const child = spawn(SCREEN, ['-displayfd', '1', '-screen', '0', '1280x1024x24', '-nolisten', 'tcp'], {
    stdio: ['ignore', 'pipe', 'ignore'],
  });
  // walks that break off must not leave a screen behind
  process.once('exit', () => child.kill());
  const display = await new Promise((resolve, reject) => {
    const late = setTimeout(() => reject(new Error('Xvfb did not start')), START_MS);
    child.stdout.once('data', (data) => (clearTimeout(late), resolve(`:${String(data).trim()}`)));
    child.once('exit', () => (clearTimeout(late), reject(new Error('Xvfb ended'))));
  });
  return { child, display };
}

/** Starts the engine on a screen of this size, in a time zone; its `phone` opens a page with a memory of its own. */
export async function start({ width, height, zone }) {
  const home = mkdtempSync(path.join(tmpdir(), 'bare-toes-webkit-'));
  const { child: shown, display } = await screen();
  const port = await freePort();
  const child = spawn(DRIVER, [`--port=${port}`, '--replace-on-new-session'], {
    env: {
      ...process.env,
      ...{ HOME: home, XDG_RUNTIME_DIR: home, TZ: zone, DISPLAY: display, GDK_BACKEND: 'x11' },
      // no graphics card is asked for: the pages are drawn by the processor
      ...{ LIBGL_ALWAYS_SOFTWARE: '1', NO_AT_BRIDGE: '1' },
      // its sandbox cannot be built by root or inside a container; only this site's own pages are opened
      ...(process.getuid?.() === 0 ? { WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS: '1' } : {}),
    },
    stdio: 'ignore',
  });
  process.once('exit', () => child.kill());

  async function session() {
    const options = { binary: browserPlace(), args: ['--automation'] };
    const capabilities = {
      ...{ browserName: 'MiniBrowser' },
      'webkitgtk:browserOptions': options,
    };
    const late = Date.now() + START_MS;
    for (;;)
      try {
        return await new Builder()
          .usingServer(`http://127.0.0.1:${port}`)
          .withCapabilities(capabilities)
          .build();
      } catch (error) {
        if (Date.now() > late) throw error;
        await new Promise((resolve) => setTimeout(resolve, 300));
      }
  }

  /** Each phone is a session of its own: nothing of an earlier one is kept. */
  async function phone(origin) {
    const driver = await session();
    const engine = {
      go: (address) => driver.get(address),
      run: (source, words) =>
        driver
          .executeAsyncScript(
            `const done = arguments[1];
             (${source})(arguments[0]).then((value) => done({ value }), (error) => done({ error: String(error) }));`,
            words,
          )
          .then(({ value, error }) => {
            if (error !== undefined) throw new Error(error);
            return value;
          }),
      async press(selector) {
        const seen = await driver.executeScript(`return (${SEEN})(arguments[0])`, selector);
        if (!seen) return false;
        await seen.click();
        return true;
      },
      picture: async () => Buffer.from(await driver.takeScreenshot(), 'base64'),
      close: () => driver.quit(),
    };
    await driver.manage().setTimeouts({ script: 60_000, pageLoad: 60_000 });
    await withoutBar(driver);
    await sized(driver, width, height);
    return pageOf(engine, origin);
  }

  const first = await session();
  const version = (await first.getCapabilities()).get('browserVersion');
  await first.quit();
  return {
    version,
    phone,
    async stop() {
      for (const one of [child, shown]) one.kill();
      rmSync(home, { recursive: true, force: true, maxRetries: 5 });
    },
  };
}

/** The small browser's own bar of buttons is wider than a phone: a page may open a window without one, if pressed. */
async function withoutBar(driver) {
  const [first] = await driver.getAllWindowHandles();
  await driver.get('about:blank');
  await driver.executeScript(`
    const button = document.body.appendChild(document.createElement('button'));
    button.textContent = 'open';
    button.onclick = () => open('about:blank', 'phone', 'toolbar=no,location=no,menubar=no,width=300,height=300');
  `);
  await driver.findElement({ css: 'button' }).click();
  const second = async () => (await driver.getAllWindowHandles()).find((one) => one !== first);
  await driver
    .switchTo()
    .window(await driver.wait(second, START_MS, 'WebKit opened no window without a bar'));
}

/** The window grows until the page in it has the size of a phone. */
async function sized(driver, width, height) {
  const inner = () => driver.executeScript('return [innerWidth, innerHeight]');
  const setTo = (wide, high) => driver.manage().window().setRect({ x: 0, y: 0, width: wide, height: high });
  await setTo(width, height);
  const [wide, high] = await inner();
  await setTo(width + width - wide, height + height - high);
}
