// Reads locales/<lang>/*.json and the review record beside them. Plain Node, so that the build, the tests and
// the translators' command share one reading of both.
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';

const SOURCE_LANGUAGE = 'en';
/** Areas that carry safety texts. A language counts as checked where all of these are signed. */
export const SAFETY_AREAS = ['called', 'common', 'look', 'signs', 'say'];
const REVIEW = 'review.json';
const PLURAL = /_(zero|one|two|few|many|other)$/;

const folder = (root, lang) => path.join(root, 'locales', lang);
const readJson = (file) => JSON.parse(readFileSync(file, 'utf8'));

/** Names of the area files of a language, sorted; empty where the language has no folder. */
export function areasOf(root, lang) {
  if (!existsSync(folder(root, lang))) return [];
  return readdirSync(folder(root, lang))
    .filter((name) => name.endsWith('.json') && name !== REVIEW)
    .map((name) => name.slice(0, -'.json'.length))
    .sort();
}

/** Languages that have at least one area file: English first, then by their code. */
export function languages(root) {
  return readdirSync(path.join(root, 'locales'), { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && areasOf(root, entry.name).length > 0)
    .map((entry) => entry.name)
    .sort((a, b) => Number(b === SOURCE_LANGUAGE) - Number(a === SOURCE_LANGUAGE) || (a < b ? -1 : 1));
}

/** One area's file as it stands, nested; an empty object where the file is not there. */
export function readArea(root, lang, area) {
  const file = path.join(folder(root, lang), `${area}.json`);
  return existsSync(file) ? readJson(file) : {};
}

/**
 * A nested area as one level: {a: {b: 'x'}} becomes {'a.b': 'x'}. Anything that is no text throws.
 */
export function flatten(area, prefix = '') {
  const flat = {};
  for (const [key, value] of Object.entries(area)) {
    const name = prefix + key;
    if (typeof value === 'string') flat[name] = value;
    else if (value !== null && typeof value === 'object' && !Array.isArray(value))
      Object.assign(flat, flatten(value, `${name}.`));
    else throw new Error(`locales › ${name}: a text or a group of texts, saw ${JSON.stringify(value)}`);
  }
  return flat;
}

/** Eight hex digits of SHA-256: enough to see that a text changed, short enough to read in a diff. */
export function sourceHash(text) {
  return createHash('sha256').update(text.normalize('NFC'), 'utf8').digest('hex').slice(0, 8);
}

/** Every text of a language under "area:key". */
export function textsOf(root, lang) {
  const texts = {};
  for (const area of areasOf(root, lang)) {
    for (const [key, text] of Object.entries(flatten(readArea(root, lang, area))))
      texts[`${area}:${key}`] = text;
  }
  return texts;
}

/** The key's stem where it is one form of a plural that English has, else undefined. */
function pluralStem(key, english) {
  const stem = PLURAL.test(key) ? key.replace(PLURAL, '') : undefined;
  return stem !== undefined && `${stem}_other` in english ? stem : undefined;
}

/** The English key whose text a translated key carries: a plural form points at English `_other`. */
export function sourceKeyOf(key, english) {
  if (key in english) return key;
  const stem = pluralStem(key, english);
  return stem === undefined ? undefined : `${stem}_other`;
}

/** Every key a language owes: the English ones, with each plural in all categories of that language. */
export function dueKeys(lang, english) {
  const categories = new Intl.PluralRules(lang).resolvedOptions().pluralCategories;
  const due = new Set();
  for (const key of Object.keys(english)) {
    const stem = pluralStem(key, english);
    if (stem === undefined) due.add(key);
    else for (const category of categories) due.add(`${stem}_${category}`);
  }
  return [...due];
}

/** The review record of a language; empty where none was written yet. */
export function readReview(root, lang) {
  const file = path.join(folder(root, lang), REVIEW);
  return existsSync(file) ? readJson(file) : {};
}

function writeReview(root, lang, record) {
  if (areasOf(root, lang).length === 0) throw new Error(`locales › ${lang}: no such language`);
  writeFileSync(path.join(folder(root, lang), REVIEW), `${JSON.stringify(record, null, 2)}\n`);
}

/** What one key's record says today: unreviewed where nobody signed, stale where a text moved on since. */
function stateOf(record, text, english) {
  return {
    unreviewed: !record?.by,
    stale:
      record !== undefined &&
      (record.source !== sourceHash(english) || (Boolean(record.by) && record.text !== sourceHash(text))),
  };
}

/**
 * For each language and area: {keys, missing, unreviewed, stale, status}. An area is a draft while a key is
 * missing or unsigned, stale where a signed key's English or translation changed, else reviewed.
 */
export function reviewOf(root) {
  const english = textsOf(root, SOURCE_LANGUAGE);
  const all = {};
  for (const lang of languages(root)) {
    const texts = textsOf(root, lang);
    const record = readReview(root, lang);
    const perArea = {};
    for (const key of dueKeys(lang, english)) {
      const area = key.slice(0, key.indexOf(':'));
      const sum = (perArea[area] ??= { keys: 0, missing: 0, unreviewed: 0, stale: 0, status: 'reviewed' });
      sum.keys += 1;
      if (!(key in texts)) {
        sum.missing += 1;
        continue;
      }
      const state = stateOf(record[key], texts[key], english[sourceKeyOf(key, english)]);
      sum.unreviewed += Number(state.unreviewed);
      sum.stale += Number(state.stale);
    }
    for (const sum of Object.values(perArea)) {
      sum.status = sum.missing + sum.unreviewed > 0 ? 'draft' : sum.stale > 0 ? 'stale' : 'reviewed';
    }
    all[lang] = perArea;
  }
  return all;
}

/**
 * Writes or refreshes a language's review record and tells what it did.
 * - A new key gets today's English hash and nobody's signature.
 * - A key that is gone loses its record.
 * - An unsigned key whose translation was rewritten is taken as made from today's English.
 * - An unsigned key whose translation stayed keeps its old English hash: it must show as stale. Name it in
 *   `renew` when the translation is still right.
 * - A signed key is never touched: only a reviewer's `sign` moves it on.
 */
export function stamp(root, lang, { renew = [] } = {}) {
  const english = textsOf(root, SOURCE_LANGUAGE);
  const texts = textsOf(root, lang);
  const before = readReview(root, lang);
  const record = {};
  const done = { added: 0, refreshed: 0, removed: 0, kept: 0 };
  for (const [key, text] of Object.entries(texts)) {
    const sourceKey = sourceKeyOf(key, english);
    if (sourceKey === undefined) continue;
    const fresh = { source: sourceHash(english[sourceKey]), text: sourceHash(text), by: null, on: null };
    const old = before[key];
    const rewritten = old !== undefined && !old.by && (old.text !== fresh.text || renew.includes(key));
    const replace = old === undefined || rewritten;
    done[old === undefined ? 'added' : rewritten ? 'refreshed' : 'kept'] += 1;
    record[key] = replace ? fresh : old;
  }
  done.removed = Object.keys(before).filter((key) => !(key in record)).length;
  writeReview(root, lang, record);
  return done;
}

/**
 * Signs keys of a language after a person has read them: `by` is that person's role, never a name; `on` a date
 * like 2031-05-04. Without `keys`, the whole area.
 */
export function sign(root, lang, { area, keys, by, on }) {
  if (!by?.trim()) throw new Error('locales › sign › by: the role of the reader, saw nothing');
  if (!/^\d{4}-\d{2}-\d{2}$/.test(on ?? '')) throw new Error(`locales › sign › on: YYYY-MM-DD, saw "${on}"`);
  const english = textsOf(root, SOURCE_LANGUAGE);
  const texts = textsOf(root, lang);
  const record = readReview(root, lang);
  const chosen = (keys ?? Object.keys(texts).filter((key) => key.startsWith(`${area}:`))).filter(Boolean);
  if (chosen.length === 0) throw new Error(`locales › sign › area: one of ${lang}'s areas, saw "${area}"`);
  for (const key of chosen) {
    const sourceKey = sourceKeyOf(key, english);
    if (!(key in texts) || sourceKey === undefined)
      throw new Error(`locales › sign › key: no text "${key}" in ${lang}`);
    record[key] = { source: sourceHash(english[sourceKey]), text: sourceHash(texts[key]), by, on };
  }
  writeReview(root, lang, record);
  return chosen.length;
}

/**
 * The languages a ward shows. With `hideUnreviewed`, those whose safety areas are all reviewed; the ward's own
 * language always stays, with its ribbon, or the site would be empty.
 */
export function shownLanguages(root, { hideUnreviewed = false, always = SOURCE_LANGUAGE } = {}) {
  const review = reviewOf(root);
  return languages(root).filter(
    (lang) =>
      !hideUnreviewed ||
      lang === always ||
      SAFETY_AREAS.every((area) => review[lang]?.[area]?.status === 'reviewed'),
  );
}

/** A text as it reads on the page: each placeholder stands for one short word. */
export function readable(text) {
  return text.replace(/\{\{.*?\}\}/g, '5');
}
