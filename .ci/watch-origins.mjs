// Over the whole browser run: what is not on this machine goes through a proxy of ours, which answers nothing and writes
// down what was asked of it. One request of our own shows that it sees what there is to see; any other fails the run.
import { createServer } from 'node:http';
import { chromium } from '@playwright/test';
import { launchOptions } from './browser.mjs';

const OWN = 'seen-by-the-watch.invalid';

export default async function watch() {
  const asked = [];
  const refuse = (what, end) => {
    asked.push(what);
    end();
  };
  const server = createServer((request, response) =>
    refuse(`${request.method} ${request.url}`, () => response.writeHead(403).end()),
  );
  server.on('connect', (request, socket) =>
    refuse(`CONNECT ${request.url}`, () => socket.end('HTTP/1.1 403 Forbidden\r\n\r\n')),
  );
  await new Promise((resolve) => server.listen(0, '127.0.0.1', resolve));
  // the browsers of the run are started by processes that are started after this
  process.env.BARE_TOES_WATCH = `http://127.0.0.1:${server.address().port}`;

  const browser = await chromium.launch(launchOptions());
  try {
    const page = await browser.newPage();
    await page.goto(`http://${OWN}/`).catch(() => undefined);
    await page.goto(`https://${OWN}/`).catch(() => undefined);
  } finally {
    await browser.close();
  }
  const own = asked.filter((what) => what.includes(OWN)).length;
  if (own < 2) throw new Error(`watch › other origins: ${own} of our own 2 requests were seen`);
  return async () => {
    server.closeAllConnections();
    await new Promise((resolve) => server.close(resolve));
    const foreign = asked.filter((what) => !what.includes(OWN));
    if (foreign.length > 0)
      throw new Error(`watch › other origins: ${foreign.length} requests, the first ${foreign[0]}`);
    console.log(`other origins: nothing was asked of any; ${own} requests of our own were seen`);
  };
}
