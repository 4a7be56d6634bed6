/**
 * Words and characters that no family may meet, as functions from texts to faults. The lists of words lie beside
 * this file, one for each language, in forbidden/.
 */
import type { Texts } from '../../.ci/locales.mjs';

export interface Forbidden {
  /** Words that calm where nobody may: plain pieces of lower-case text, or /…/ for a regular expression. */
  readonly reassurance: readonly string[];
  /** Regular expressions: a family told to loosen, tighten, lift, remove, pull or move. */
  readonly handling: readonly string[];
  /** Things only staff observe: pulse, refill of small vessels, seconds. As in `reassurance`. */
  readonly observations: readonly string[];
}

type Kind = keyof Forbidden;
const KINDS: readonly Kind[] = ['reassurance', 'handling', 'observations'];

/** What is wrong with the list itself. An empty list, or one that hits everything, could never help. */
export function listFaults(list: Forbidden): string[] {
  return KINDS.flatMap((kind) => {
    const entries = list[kind];
    if (!Array.isArray(entries) || entries.length === 0) return [`${kind}: empty`];
    return entries.flatMap((entry: string) => {
      const pattern = patternOf(kind, entry);
      if (entry.trim() === '' || pattern.test('')) return [`${kind}: "${entry}" hits every text`];
      const plain = kind !== 'handling' && !isPattern(entry);
      return plain && entry !== entry.toLowerCase() ? [`${kind}: "${entry}" is not lower case`] : [];
    });
  });
}

const isPattern = (entry: string) => entry.length > 2 && entry.startsWith('/') && entry.endsWith('/');
const literal = (entry: string) => entry.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

function patternOf(kind: Kind, entry: string): RegExp {
  if (kind === 'handling') return new RegExp(entry, 'iu');
  return new RegExp(isPattern(entry) ? entry.slice(1, -1) : literal(entry), 'iu');
}

/** Every forbidden word found, with the key and the text it stands in. */
export function forbiddenFaults(list: Forbidden, texts: Texts): string[] {
  return KINDS.flatMap((kind) =>
    list[kind].flatMap((entry) => {
      const pattern = patternOf(kind, entry);
      return Object.entries(texts)
        .filter(([, text]) => pattern.test(text.normalize('NFC')))
        .map(([key, text]) => `${key}: ${kind} "${entry.slice(0, 60)}" in "${text}"`);
    }),
  );
}

// Ticks and crosses of a form, hands, hearts, stars and shields of praise; emoji of every kind.
const GLYPHS =
  /[\u2611-\u2612\u2713-\u2718\u2605-\u2606\u2661-\u2665\u{1f5f8}-\u{1f5f9}\u{1f44d}\u{1f44e}\u26e8\u{1f6e1}]/u;
const PLAIN_PICTOGRAPHS = /[©®™↔↕]/gu;

/** A tick, a thumb or any emoji: a glyph that says "done", "good" or "funny" where nobody may say so. */
export function glyphFaults(name: string, text: string): string[] {
  const rest = text.replace(PLAIN_PICTOGRAPHS, '');
  const seen = [...rest].filter(
    (one) => GLYPHS.test(one) || /\p{Extended_Pictographic}|\p{Regional_Indicator}|\ufe0f/u.test(one),
  );
  return seen.length === 0 ? [] : [`${name}: ${[...new Set(seen)].join(' ')}`];
}

/**
 * Names of pain, fever, cramp and bowel medicines in the letters of our languages, by their stems. Not a full
 * list: it catches the ones a family is likely to have at home or to hear on a ward.
 */
const MEDICINES =
  /(?:paracetamol|acetaminophen|acetaminof|ibuprof|naproxen|metamizol|diclofenac|diklofenak|aspirin|aspiryn|salicyl|morphin|morfin|codein|kodein|tramadol|fentanyl|fentanil|oxycod|oksykod|ketamin|diazepam|midazolam|lorazepam|baclofen|baklofen|lactulos|laktuloz|macrogol|makrogol|heparin|باراسيتامول|أسيتامينوفين|بروفين|أسبرين|مورفين|كودايين|كودين|ترامادول|فنتانيل|كيتامين|ديازيبام|ميدازولام|لاكتولوز|هيبارين)/iu;

/** An amount as a dose is written, in Latin, Cyrillic or Arabic letters. */
const DOSES =
  /[\d٠-٩}]\s?(?:mg|mcg|µg|ug|ml|cc|mg\/kg|мг|мл|ملغ\p{L}*|ملجم|مجم|مل|ميلي\p{L}*|milig\p{L}*|millig\p{L}*|mili?l\p{L}*|drops|gotas|kropl\p{L}*|tablet\p{L}*|pastill\p{L}*|comprimid\p{L}*)(?!\p{L})/iu;

export function medicineFaults(texts: Texts): string[] {
  return Object.entries(texts)
    .filter(([, text]) => MEDICINES.test(text) || DOSES.test(text))
    .map(([key, text]) => `${key}: a medicine or a dose in "${text}"`);
}

/** English has one word for each thing, so that picture, button and sentence say the same. */
const OTHER_NAMES: readonly (readonly [RegExp, string])[] = [
  [/(?<!hanging |body )\bweights?\b/iu, 'hanging weight'],
  [/\b(?:load|sandbag|bag)\b/iu, 'hanging weight'],
  [/\b(?:rope|string|line(?= of traction))\b/iu, 'cord'],
  [/\bpulley/iu, 'wheel'],
  [/\b(?:footplate|spreader|foot board)\b/iu, 'foot plate'],
  // a child may bandage a soft toy; that is the name of a play idea
  [/(?<!leg )\bbandages?\b(?! a soft toy)/iu, 'leg bandage'],
  [/\b(?:bell|buzzer|handset)\b/iu, 'call button'],
];

export function oneWordFaults(texts: Texts): string[] {
  return OTHER_NAMES.flatMap(([pattern, word]) =>
    Object.entries(texts)
      // the name of a placeholder is not shown
      .filter(([, text]) => pattern.test(text.replaceAll(/\{\{\w+\}\}/gu, '')))
      .map(([key, text]) => `${key}: say "${word}", saw "${text}"`),
  );
}
