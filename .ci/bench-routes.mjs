// What each kind of page costs a phone that comes there first, and what of it words and pictures are.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { gzipSync } from 'node:zlib';
import { firstLoad } from './bench-page.mjs';

const KIB = 1024;
const LANGUAGE = 'en';
const ROUTES = 'src/routes/[locale=locale]';
const PARAMETER = /^\[\[?(?:\.\.\.)?(\w+)/;
const gzip = (text) => gzipSync(text, { level: 9 }).length;

/** Routes below the language, as written in src/routes. */
function routesIn(folder, above = '') {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    if (entry.isDirectory()) return routesIn(path.join(folder, entry.name), `${above}/${entry.name}`);
    return entry.name === '+page.svelte' ? [above] : [];
  });
}

/** The first built page of a route, as an address; nothing where none was built. */
function builtPage(root, build, route) {
  let found = [''];
  for (const part of route.split('/').filter(Boolean)) {
    const optional = part.startsWith('[[');
    found = found.flatMap((at) => {
      if (!PARAMETER.test(part)) return [`${at}/${part}`];
      if (optional) return [at];
      const folder = path.join(build, LANGUAGE, at);
      // a name that is a route of its own is not a value of the parameter
      const own = path.join(root, ROUTES, route.split('/[')[0]);
      return existsSync(folder)
        ? readdirSync(folder, { withFileTypes: true })
            .filter((entry) => entry.isDirectory() && !existsSync(path.join(own, entry.name)))
            .map(({ name }) => `${at}/${name}`)
        : [];
    });
  }
  return found.map((at) => `/${LANGUAGE}${at}/`).find((at) => existsSync(path.join(build, at, 'index.html')));
}

/** Every kind of page, as a name, an address and its built file: each route, the languages' chooser, a wrong address. */
function pagesOf(root, build) {
  const routes = routesIn(path.join(root, ROUTES))
    .sort()
    .map((route) => {
      const address = builtPage(root, build, route);
      if (!address) throw new Error(`bench › routes: no page was built for ${route}`);
      return { name: `/${LANGUAGE}${route}`, address, file: path.join(address, 'index.html') };
    });
  return [
    { name: '/', address: '/', file: 'index.html' },
    { name: 'of a wrong address', address: `/${LANGUAGE}/nobody-wrote-this/`, file: '404.html' },
    ...routes,
  ];
}

/** Rows of name, value and unit: for each page its scripts, styles, words, pictures, sum, and the same without scripts. */
export async function routeFigures(root, build, browser, origin) {
  const rows = [];
  for (const { name, address, file } of pagesOf(root, build)) {
    const html = readFileSync(path.join(build, file), 'utf8');
    const pictures = (html.match(/<svg\b[\s\S]*?<\/svg>/g) ?? []).join('');
    const words = html
      .replace(/<(script|style|svg)\b[\s\S]*?<\/\1>/g, '')
      .replace(/<[^>]*>/g, ' ')
      .replace(/\s+/g, ' ');
    const { script, style, total } = await firstLoad(browser, origin + address);
    const plain = await firstLoad(browser, origin + address, { scripts: false });
    const row = (what, value, unit = 'KiB gzip', reference = undefined) =>
      rows.push({ name: `page ${name}, ${what}`, value, unit, digits: 1, reference });
    row('scripts', script / KIB);
    row('styles', style / KIB);
    row('words', gzip(words) / KIB);
    row('pictures', gzip(pictures) / KIB);
    row('in all', total / KIB);
    row('loaded without scripts', plain.total / KIB);
    row('to the same without scripts', total / plain.total, 'times', `page ${name}, loaded without scripts`);
  }
  return rows;
}
