/**
 * The page for an address that is none: a server shows it in place of its own words (error_page in nginx). It stands at
 * any depth, so its links name the whole path, and it fetches nothing: what it needs is in it.
 */
import { thingMarkup } from 'virtual:first-drawing';
import { LOCALES, type LocaleRow } from '#i18n/locales.ts';
import { loadArea, loadWords } from '#i18n/words.ts';
import { escape } from '#scene/escape.ts';
import styles from '../../styles/index.css?inline';

export const prerender = true;
export const trailingSlash = 'never';

const POLICY =
  "default-src 'none'; img-src 'self'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";
const STYLES = `${styles} .thing { display: block; inline-size: 8.5rem; background: var(--judge); } main { padding-block: 1rem; } ul { list-style: none; padding: 0; }`;

async function inLanguage({ code, direction }: LocaleRow, base: string): Promise<string> {
  const [common, pages, { review }] = await Promise.all([
    loadArea(code, 'common'),
    loadArea(code, 'pages'),
    loadWords(code, ['pages']),
  ]);
  const draft = review === 'reviewed' ? '' : `\n<span class="small">${escape(common.review[review])}</span>`;
  const link = (address: string, words: string) =>
    `<a class="button" href="${base}/${code}/${address}">${escape(words)}</a>`;
  return `<li class="box" lang="${code}" dir="${direction}">
<strong>${escape(pages.missing.title)}</strong>
<span>${escape(common.bar.worried)}</span>
${link('bell/', common.areas.bell)}
${link('look/', common.areas.look)}
${link('#choose', common.home)}${draft}
</li>`;
}

export async function GET({ url }) {
  const base = url.pathname.slice(0, url.pathname.lastIndexOf('/'));
  const languages = await Promise.all(LOCALES.map((row) => inLanguage(row, base)));
  const page = `<!doctype html>
<html lang="${LOCALES[0]!.code}" dir="${LOCALES[0]!.direction}" data-light="day">
<head>
<meta charset="utf-8" />
<meta name="viewport" content="width=device-width, initial-scale=1" />
<meta name="color-scheme" content="light dark" />
<meta name="referrer" content="no-referrer" />
<meta name="robots" content="noindex" />
<meta http-equiv="content-security-policy" content="${POLICY}" />
<title>Bare Toes</title>
<link rel="icon" href="${base}/icon.svg" type="image/svg+xml" />
<style>${STYLES}</style>
</head>
<body>
<main class="page">
<h1>Bare Toes</h1>
<span class="thing">${thingMarkup('call-button', '')}</span>
<ul class="stack">
${languages.join('\n')}
</ul>
</main>
</body>
</html>
`;
  return new Response(page, { headers: { 'content-type': 'text/html' } });
}
