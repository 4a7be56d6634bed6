/**
 * Every kind of page on a phone in use, with notes, a card, a plan and a day: where the keyboard comes to, one stop after
 * the other; what headings, links and fields are called; and that neither reaching nor choosing does more than it says.
 * Narrow in English, wide in Arabic, so that rows and columns are met in both directions.
 */
import { expect, test, type Page } from '@playwright/test';
import { encodeBedCard } from '#domain/bed-card/code.ts';
import { CARD } from '../helpers/bed-cards.ts';
import { fortnight } from '../helpers/fortnight.ts';
import { leaveNotes } from '../helpers/kept-notes.ts';
import { kindsOf } from '../helpers/pages.ts';
import { FULL } from '../helpers/play-beds.ts';
import { toldOf, type Told } from '../helpers/spoken.ts';

const NOW = new Date('2026-11-25T11:40:00Z');

/** What script keeps on the page between two calls. */
interface Walk {
  stops: Element[];
  address: string;
  history: number;
}
declare global {
  interface Window {
    walk: Walk;
  }
}

/** A phone in the middle of a stay, as it is found again on each page whatever was chosen on the one before. */
async function inUse(page: Page): Promise<void> {
  await page.clock.setFixedTime(NOW);
  await leaveNotes(page, fortnight(60, 3, 'likely'), { id: '3fa91c', count: 60 });
  await page.addInitScript(
    (kept) => {
      localStorage.clear();
      for (const [name, value] of Object.entries(kept))
        localStorage.setItem(`bare-toes:${name}`, JSON.stringify(value));
    },
    {
      play: { open: FULL.shape, beds: [FULL] },
      card: { code: encodeBedCard(CARD) },
      family: { role: 'grown-up', side: 'left', light: 'day' },
    },
  );
}

/** Presses Tab from the top of the page past its last stop; what it came to lies in `window.walk`. */
async function tabThrough(page: Page): Promise<void> {
  const presses = await page.evaluate(async () => {
    // a page that was opened at a place of its own goes there once more when script has come
    await new Promise((done) => requestIdleCallback(done));
    const walk: Walk = { stops: [], address: location.href, history: history.length };
    window.walk = walk;
    addEventListener('focusin', ({ target }) => walk.stops.push(target as Element), true);
    const all = [...document.querySelectorAll<HTMLElement>('a, button, input, select, textarea, summary')];
    // a time or a date is typed in parts, each a stop of its own
    const parts = document.querySelectorAll('input[type="time"], input[type="date"]').length * 4;
    return all.filter((one) => one.checkVisibility()).length + parts + 4;
  });
  // one after the other, without waiting for each to be told
  await Promise.all(Array.from({ length: presses }, () => page.keyboard.press('Tab')));
}

/** Stops that do not come in the order in which the page is written and read; what no key comes to. */
const outOfOrder = (page: Page) =>
  page.evaluate(() => {
    const { stops: walked } = window.walk;
    const again = walked.indexOf(walked[0]!, 1);
    const round = again > 0 ? walked.slice(0, again) : walked;
    // an address that names a place begins there, and comes round to the top
    const top = round.findIndex(
      (one) => one.compareDocumentPosition(round[0]!) & Node.DOCUMENT_POSITION_FOLLOWING,
    );
    const stops = top > 0 ? [...round.slice(top), ...round.slice(0, top)] : round;
    const told = (one: Element) => one.outerHTML.replace(/\s+/g, ' ').slice(0, 90);
    const found: string[] = [];
    // what is pressed stands for what has the focus: a label for its field
    const partOf = (one: Element) => (one as HTMLInputElement).labels?.[0] ?? one;
    /** Stays on the screen, or comes there only with the focus: has no place in the order of what is seen. */
    const apart = (one: Element) => {
      for (let at: Element | null = one; at; at = at.parentElement) {
        const { position, clipPath } = getComputedStyle(at);
        if (position === 'fixed' || position === 'sticky' || clipPath === 'inset(50%)') return true;
      }
      return one.matches('.skip');
    };
    /** The two parts below what holds both: a row or a column is compared as a whole, not its ends. */
    const branches = (one: Element, other: Element): [Element, Element] => {
      let [a, above] = [one, one.parentElement!];
      while (!above.contains(other)) [a, above] = [above, above.parentElement!];
      let b = other;
      while (b.parentElement !== above) b = b.parentElement!;
      const seen = (branch: Element, end: Element) => (branch.getClientRects().length ? branch : end);
      return [seen(a, one), seen(b, other)];
    };
    stops.forEach((stop, at) => {
      const before = stops[at - 1];
      if (!before) return;
      if (!(before.compareDocumentPosition(stop) & Node.DOCUMENT_POSITION_FOLLOWING))
        return found.push(`before what stands above it in the page: ${told(stop)}`);
      if (apart(before) || apart(stop)) return;
      const [a, b] = branches(partOf(before), partOf(stop));
      const [from, to] = [[...a.getClientRects()].at(-1)!, b.getClientRects()[0]!];
      const below = to.top >= from.bottom - 2;
      const beside = to.bottom > from.top + 2;
      const onward =
        getComputedStyle(a.parentElement!).direction === 'rtl'
          ? to.right <= from.left + 2
          : to.left >= from.right - 2;
      if (!below && !(beside && onward)) found.push(`back or up: ${told(before)} → ${told(stop)}`);
    });
    // the child's own pages and the chooser have no bar
    if (document.querySelector('.bar')) {
      if (!stops[0]?.matches('.skip'))
        found.push(`the first stop is no way past the bar: ${told(stops[0]!)}`);
      if (!stops[1]?.matches('.bar')) found.push(`the bar is not the second stop: ${told(stops[1]!)}`);
    }
    const reached = new Set(stops);
    const inGroup = (one: HTMLInputElement) =>
      one.type === 'radio' &&
      stops.some(
        (stop) => stop instanceof HTMLInputElement && stop.type === 'radio' && stop.name === one.name,
      );
    for (const one of document.querySelectorAll<HTMLInputElement>(
      'a[href], button, input, select, textarea, summary',
    ))
      if (one.checkVisibility({ visibilityProperty: true }) && !one.disabled)
        if (!one.closest('svg, [inert]') && !reached.has(one) && !inGroup(one))
          found.push(`no key comes to ${told(one)}`);
    return { found, stops: stops.length, bar: document.querySelector('a.bar') !== null };
  });

/** What changed on the page by itself: its address, the way back, something laid over it. */
const surprises = (page: Page, what: string) =>
  page.evaluate((when) => {
    const { address, history: length } = window.walk;
    return [
      ...(location.href === address ? [] : [`${when}: the address is ${location.href}`]),
      ...(history.length === length ? [] : [`${when}: the way back is longer`]),
      ...[...document.querySelectorAll('dialog[open], [popover]:popover-open')].map(
        (over) => `${when}: ${over.outerHTML.slice(0, 80)} opened`,
      ),
    ];
  }, what);

/** Takes every answer, ticks every box, picks every choice and types into every field; names those that take the focus away. */
const chooseAll = (page: Page) =>
  page.evaluate(async () => {
    const taken: string[] = [];
    const all = document.querySelectorAll<HTMLInputElement | HTMLSelectElement>('input, select, textarea');
    let chosen = 0;
    for (const one of all) {
      if (!one.isConnected || !one.checkVisibility() || one.disabled) continue;
      chosen++;
      one.focus();
      if (one instanceof HTMLSelectElement) one.selectedIndex = one.options.length - 1;
      else if (/radio|checkbox/.test(one.type)) one.click();
      else if (/number|range/.test(one.type)) one.value = one.max || '1';
      else if (one.type === 'text' || one.type === 'search') one.value = 'a';
      if (!/radio|checkbox/.test(one.type))
        for (const event of ['input', 'change']) one.dispatchEvent(new Event(event, { bubbles: true }));
      // once what follows from it has come; a timer of nothing would wait for more
      await new Promise((done) => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = done;
        port2.postMessage('');
      });
      if (document.activeElement !== one)
        taken.push(
          `choosing moves the focus to ${document.activeElement?.outerHTML.slice(0, 60)}: ${one.outerHTML.slice(0, 90)}`,
        );
    }
    return { taken, chosen };
  });

/** Words that say nothing by themselves. */
const BARE =
  /^(more|read more|show more|here|click here|next|back|on|go|go on|open|see|show|this|link|details|yes|no)\W*$/i;
/** What is pressed, ticked or filled in, as Chromium names it. */
const FIELDS = new Set(
  'button radio checkbox switch combobox textbox searchbox slider spinbutton DisclosureTriangle InputTime Date'.split(
    ' ',
  ),
);

const NAMED = new Set([...FIELDS, 'heading', 'link']);

/** Headings, links and fields without a name, with one that says nothing, or with one that another bears. */
function unclear(told: readonly Told[]): string[] {
  const found: string[] = [];
  const leads = new Map<string, string>();
  const borne = new Set<string>();
  for (const { role, name, url, groups } of told) {
    if (!name) found.push(`${role} without a name in ${groups.join(' › ')}`);
    if (role === 'link') {
      if (BARE.test(name)) found.push(`link "${name}"`);
      if (leads.has(name) && leads.get(name) !== url)
        found.push(`"${name}" leads to ${url} and ${leads.get(name)}`);
      leads.set(name, url ?? '');
    }
    const whole = [role, ...groups, name].join(' › ');
    if (FIELDS.has(role) && borne.has(whole)) found.push(`twice: ${whole}`);
    borne.add(whole);
  }
  return found;
}

/** Opens a page as it stands once nothing more comes by itself; it tells so itself: asked again and again, each took longer. */
async function open(page: Page, address: string): Promise<void> {
  await page.goto(address, { waitUntil: 'commit' });
  await page.evaluate(
    () =>
      new Promise<void>((done) => {
        const look = () => {
          const stands =
            document.readyState === 'complete' &&
            document.documentElement.dataset.script !== undefined &&
            document.querySelector('h1') !== null &&
            // the part of the foot that asks the device comes by itself
            (!document.querySelector('footer') || document.querySelector('footer input') !== null) &&
            document.querySelector('[data-note="writing"]') === null;
          if (!stands) return;
          changes.disconnect();
          done();
        };
        const changes = new MutationObserver(look);
        changes.observe(document, { subtree: true, childList: true, attributes: true });
        addEventListener('load', look);
        look();
      }),
  );
}

const PAGES = (language: string) => ['/', `/${language}/look/full/2/`, ...kindsOf(language)];
/** With BARE_TOES_WHOLE=yes (`npm run access`) every kind in each reading direction; else in one of them. */
const WHOLE = process.env.BARE_TOES_WHOLE === 'yes';
const SHARES = 2;
for (const share of WHOLE ? [0, 1] : [0])
  test(`every kind of page (${share + 1} of ${SHARES}): the keyboard follows the page, each name says what it is, nothing happens before a press`, async ({
    page,
  }) => {
    await inUse(page);
    const session = await page.context().newCDPSession(page);
    const wrong: string[] = [];
    const counted = { stops: 0, named: 0, chosen: 0 };
    const barless: string[] = [];
    for (const address of PAGES('en').filter((_, at) => at % SHARES === share)) {
      const add = (found: readonly string[]) => wrong.push(...found.map((line) => `${address} ${line}`));
      await open(page, address);
      await tabThrough(page);
      const order = await outOfOrder(page);
      add(order.found);
      add(await surprises(page, 'reached'));
      await page.evaluate(() => document.querySelectorAll('details').forEach((fold) => (fold.open = true)));
      const told = (await toldOf(session)).filter(({ role }) => NAMED.has(role));
      add(unclear(told));
      const { taken, chosen } = await chooseAll(page);
      add(taken);
      add(await surprises(page, 'chosen'));
      if (!order.bar) barless.push(address);
      counted.stops += order.stops;
      counted.named += told.length;
      counted.chosen += chosen;
    }
    expect(wrong).toEqual([]);
    expect(barless.filter((one) => !/^\/$|\/our-day\/($|call\/|story\/)/.test(one))).toEqual([]);
    // enough was met for that to mean something
    expect(counted.stops).toBeGreaterThan(400);
    expect(counted.named).toBeGreaterThan(600);
    expect(counted.chosen).toBeGreaterThan(100);
  });

test('from the right, on a wide screen: the keyboard follows the page on the other kinds', async ({
  page,
}) => {
  await inUse(page);
  await page.setViewportSize({ width: 820, height: 1180 });
  const wrong: string[] = [];
  let stops = 0;
  for (const address of PAGES('ar').filter((_, at) => WHOLE || at % SHARES === 1)) {
    await open(page, address);
    await tabThrough(page);
    const order = await outOfOrder(page);
    wrong.push(...order.found.map((line) => `${address} ${line}`));
    stops += order.stops;
  }
  expect(wrong).toEqual([]);
  expect(stops).toBeGreaterThan(400);
});
