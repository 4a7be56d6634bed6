// What every engine's page can do, made of the three things an engine does in its own way: go, run, press.

const PATIENCE_MS = 60_000;
const EVERY_MS = 150;
const pause = (milliseconds) => new Promise((resolve) => setTimeout(resolve, milliseconds));

/** A journey that an engine cannot walk for a reason of its own. */
export class NotThere extends Error {}

/** Runs in the page: the first element that can be seen, in the middle of the screen. */
export const SEEN = `(selector) => {
  const seen = [...document.querySelectorAll(selector)].find(
    (one) => one.getClientRects().length > 0 && getComputedStyle(one).visibility !== 'hidden',
  );
  seen?.scrollIntoView({ block: 'center', behavior: 'instant' });
  return seen;
}`;

/**
 * @param {{
 *   go: (address: string) => Promise<unknown>,
 *   run: (source: string, words: string) => Promise<string>,
 *   press: (selector: string) => Promise<boolean>,
 *   picture: () => Promise<Buffer>,
 *   close: () => Promise<unknown>,
 * }} engine `run` hands a function's source one text and gives back one; `press` is false where nothing is to be seen
 * @param {string} origin
 */
export function pageOf(engine, origin) {
  /** Runs a function in the page with plain JSON. */
  async function run(what, ...words) {
    const source = `async (words) => JSON.stringify([await (${what})(...JSON.parse(words))])`;
    const [answer] = JSON.parse(await engine.run(source, JSON.stringify(words)));
    return answer ?? undefined;
  }
  async function until(name, attempt, patience = PATIENCE_MS) {
    const end = Date.now() + patience;
    for (let last; ;) {
      try {
        const answer = await attempt();
        if (answer) return answer;
        last = undefined;
      } catch (error) {
        // a page that is just leaving answers nothing
        last = error;
      }
      if (Date.now() > end) throw new Error(`waited for ${name}${last ? `; ${last.message}` : ''}`);
      await pause(EVERY_MS);
    }
  }
  const wait = (name, what, ...words) => until(name, () => run(what, ...words));
  const page = {
    run,
    pause,
    picture: engine.picture,
    close: engine.close,
    /** Waits, with a patience of its own. */
    waitLong: (name, patience, what, ...words) => until(name, () => run(what, ...words), patience),
    wait,
    /** Opens an address of the site and waits until script has taken it over: the page before it has had script, too. */
    async open(address) {
      await run(() => document.documentElement.setAttribute('data-left', '')).catch(() => undefined);
      await engine.go(origin + address);
      await page.sees('html[data-script]:not([data-left])');
    },
    async tap(selector) {
      await until(`${selector} to press`, () => engine.press(selector));
    },
    /** Types as a hand would as far as the page can tell. */
    async fill(selector, text) {
      await page.sees(selector);
      await run(
        (where, value) => {
          const field = document.querySelector(where);
          field.value = value;
          for (const type of ['input', 'change']) field.dispatchEvent(new Event(type, { bubbles: true }));
        },
        selector,
        text,
      );
    },
    text: (selector) => run((where) => document.querySelector(where)?.innerText?.trim(), selector),
    attribute: (selector, name) =>
      run((where, which) => document.querySelector(where)?.getAttribute(which), selector, name),
    count: (selector) => run((where) => document.querySelectorAll(where).length, selector),
    /** Waits until the element is there and takes room. */
    sees: (selector) =>
      wait(
        selector,
        (where) => [...document.querySelectorAll(where)].some((one) => one.getClientRects().length > 0),
        selector,
      ),
    arrives: (ending) => wait(`the page …${ending}`, (end) => location.pathname.endsWith(end), ending),
    /** What went wrong in the pages since they were first opened, as watch.js wrote it down. */
    faults: async () =>
      (await run(() => JSON.parse(sessionStorage.getItem('engine-faults') ?? '[]')).catch(() => [])) ?? [],
  };
  return page;
}
