// The translators' check: what is missing, unchecked or out of date in each language, and how hard it reads.
// npm run languages
// npm run languages -- --stamp pl [--renew look:intro.toes]      after adding or rewriting texts
// npm run languages -- --sign pl --area look --by "children's nurse" [--key look:intro.toes] [--on 2031-05-04]
// npm run languages -- --only pl                                 one language
import path from 'node:path';
import { runnerImport } from 'vite';
import { syllable } from 'syllable';
import { areasOf, flatten, languages, readable, readArea, reviewOf, sign, stamp } from './locales.mjs';

const root = path.resolve(import.meta.dirname, '..');

/** Every value given for an option, so that --key may stand more than once. */
function options(name) {
  return process.argv.flatMap((word, i) =>
    word === `--${name}` && process.argv[i + 1] ? [process.argv[i + 1]] : [],
  );
}
const option = (name) => options(name)[0];

async function textModules() {
  const load = async (file) =>
    (
      await runnerImport(path.join(root, 'src/domain/text', file), {
        root,
        configFile: false,
        logLevel: 'error',
      })
    ).module;
  const [counts, syllables, measures, bands] = await Promise.all(
    ['counts.ts', 'syllables.ts', 'measures.ts', 'bands.ts'].map(load),
  );
  return { ...counts, ...syllables, ...measures, ...bands };
}

const one = (value) => value.toFixed(1);

/** How hard an area reads, in one line; each language by the measure made for it, else by sentence length. */
function readability(lang, texts, t) {
  // a label ("Toes") is no sentence and would make the pool look easier than it is
  const sentences = texts.map(readable).filter((text) => /[.!?؟]$/u.test(text));
  if (sentences.length === 0) return 'no sentences';
  const pool = sentences.join(' ');
  const { mean, longest } = t.sentenceLengths(t.sentenceWordCounts(pool));
  const length = `mean ${one(mean)}, longest ${longest} words`;
  if (lang === 'en') {
    const grade = (text) => t.fleschKincaidGrade(t.countText(text, syllable));
    // a text of three words has any grade: only texts of some length are named as the hardest
    const long = sentences.filter((text) => t.wordsOf(text).length >= 8);
    const worst = (long.length > 0 ? long : sentences).reduce((a, b) => (grade(b) > grade(a) ? b : a));
    return `grade ${one(grade(pool))}; hardest ${one(grade(worst))} "${worst}"; ${length}`;
  }
  if (lang === 'es') {
    const value = t.szigriszt(t.countText(pool, t.syllablesEs));
    return `INFLESZ ${one(value)} ${t.inflesz(value)}; ${length}`;
  }
  if (lang === 'pl') {
    const value = t.fogPl(t.countText(pool, t.syllablesPl));
    return `FOG ${one(value)} ${t.fogPlBand(value)}; ${length}`;
  }
  const by = t.sentencesOf(pool).reduce((a, b) => (t.wordsOf(b).length > t.wordsOf(a).length ? b : a));
  return `${length}: "${by}"`;
}

async function report() {
  const t = await textModules();
  const review = reviewOf(root);
  for (const lang of languages(root)) {
    if (option('only') && option('only') !== lang) continue;
    const areas = Object.entries(review[lang]);
    const sum = (name) => areas.reduce((total, [, area]) => total + area[name], 0);
    console.log(
      `\n${lang}: ${sum('keys')} keys, ${sum('missing')} missing, ${sum('unreviewed')} unreviewed, ${sum('stale')} stale`,
    );
    for (const [area, state] of areas) {
      console.log(
        `  ${area.padEnd(8)} ${state.status.padEnd(8)} ${state.keys} keys, ${state.missing} missing, ` +
          `${state.unreviewed} unreviewed, ${state.stale} stale`,
      );
      const texts = areasOf(root, lang).includes(area)
        ? Object.values(flatten(readArea(root, lang, area)))
        : [];
      if (texts.length > 0) console.log(`           ${readability(lang, texts, t)}`);
    }
  }
}

function act() {
  for (const lang of options('stamp')) {
    const done = stamp(root, lang, { renew: options('renew') });
    console.log(
      `${lang}: ${done.added} added, ${done.refreshed} refreshed, ${done.removed} removed, ${done.kept} kept as they were`,
    );
  }
  for (const lang of options('sign')) {
    const keys = options('key');
    const count = sign(root, lang, {
      area: option('area'),
      keys: keys.length > 0 ? keys : undefined,
      by: option('by'),
      on: option('on') ?? new Date().toISOString().slice(0, 10),
    });
    console.log(`${lang}: ${count} texts signed by ${option('by')}`);
  }
}

try {
  act();
} catch (error) {
  console.error(error.message);
  process.exit(1);
}
await report();
