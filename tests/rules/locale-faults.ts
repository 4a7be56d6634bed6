/**
 * The rules every language file keeps, as functions from texts to faults: one line per fault, none where all
 * is as it must be. Kept apart from the tests so that each rule can be tried on a text that breaks it.
 */
import { dueKeys, sourceKeyOf, type Texts } from '../../.ci/locales.mjs';

/** A text of the translation beside the English text it carries. */
interface Pair {
  readonly key: string;
  readonly text: string;
  readonly source: string;
}

function pairs(texts: Texts, english: Texts): Pair[] {
  return Object.entries(texts).flatMap(([key, text]) => {
    const source = english[sourceKeyOf(key, english) ?? ''];
    return source === undefined ? [] : [{ key, text, source }];
  });
}

/** Every key English has, each plural in all categories of the language, and nothing else. */
export function keyFaults(lang: string, texts: Texts, english: Texts): string[] {
  const due = dueKeys(lang, english);
  return [
    ...due.filter((key) => !(key in texts)).map((key) => `${key}: missing`),
    ...Object.keys(texts)
      .filter((key) => !due.includes(key))
      .map((key) => `${key}: not in English`),
  ];
}

export function emptyFaults(texts: Texts): string[] {
  return Object.entries(texts)
    .filter(([, text]) => text.trim() === '' || text !== text.trim())
    .map(([key, text]) => `${key}: empty or with loose spaces, saw "${text}"`);
}

const placeholdersIn = (text: string) => (text.match(/\{\{.*?\}\}/g) ?? []).sort().join(' ');

export function placeholderFaults(texts: Texts, english: Texts): string[] {
  return pairs(texts, english)
    .filter(({ text, source }) => placeholdersIn(text) !== placeholdersIn(source))
    .map(
      ({ key, text, source }) =>
        `${key}: "${placeholdersIn(source)}" in English, saw "${placeholdersIn(text)}"`,
    );
}

/** A text may hold no markup and no entity: the page sets it as text, and a voice would read it out. */
export function markupFaults(texts: Texts): string[] {
  return Object.entries(texts)
    .filter(([, text]) => /<[a-z/!]|&[a-z#\d]+;|\*\*|\]\(/i.test(text))
    .map(([key, text]) => `${key}: markup in "${text}"`);
}

/**
 * Numbers as words, for languages that write them out. English one and two are left out, they have too many
 * uses; a digit 1 or 2 of English may still become a word elsewhere.
 */
const NUMBER_WORDS: Readonly<Record<string, Readonly<Record<number, RegExp>>>> = {
  en: {
    3: /\b(?:three|third)\b/iu,
    4: /\b(?:four|fourth)\b/iu,
    5: /\b(?:five|fifth)\b/iu,
    6: /\b(?:six|sixth)\b/iu,
    7: /\b(?:seven|seventh)\b/iu,
    8: /\beighth?\b/iu,
    9: /\b(?:nine|ninth)\b/iu,
    10: /\bten(?:th)?\b/iu,
    12: /\b(?:twelve|twelfth)\b/iu,
  },
  es: {
    1: /\b(?:un|una|uno|primer)/iu,
    2: /\b(?:dos|segund)/iu,
    3: /\b(?:tres|tercer)/iu,
    4: /\b(?:cuatro|cuart)/iu,
    5: /\b(?:cinco|quint)/iu,
    6: /\b(?:seis|sext)/iu,
    7: /\b(?:siete|séptim)/iu,
    8: /\b(?:ocho|octav)/iu,
    9: /\b(?:nueve|noven)/iu,
    10: /\bdiez|décim/iu,
    12: /\b(?:doce|duodécim)/iu,
  },
  pl: {
    1: /(?<!\p{L})(?:jeden|jedn|pierwsz|roku|rok|raz)/iu,
    2: /(?<!\p{L})(?:dw[aóoiu]|drug)/iu,
    3: /(?<!\p{L})(?:trzy(?!\p{L})|trzech|trzem|trzeci|troj|trój)/iu,
    4: /(?<!\p{L})(?:czter|czwart|czwor)/iu,
    5: /(?<!\p{L})(?:pięć|pięci|piąt|pięcio)/iu,
    6: /(?<!\p{L})(?:sześć|sześci|szóst)/iu,
    7: /(?<!\p{L})(?:siedem|siedmi|siódm)/iu,
    8: /(?<!\p{L})(?:osiem|ośmi|ósm)/iu,
    9: /(?<!\p{L})dziewi[ęą]/iu,
    10: /(?<!\p{L})dziesi[ęą]/iu,
    12: /(?<!\p{L})(?:dwanaście|dwanaści|dwunast)/iu,
  },
  ar: {
    // one and two live in the noun itself: a year, two years
    1: /واحد|أول|سنة|دقيقة|ساعة|يوم|مرة/u,
    2: /اثن|ثان|\p{L}(?:تين|تان|ين|ان)(?!\p{L})/u,
    3: /ثلاث|ثالث/u,
    4: /أربع|رابع/u,
    5: /خمس|خامس/u,
    6: /(?<!\p{L})(?:ال)?ستّ?ة?(?!\p{L})|سادس/u,
    7: /سبع|سابع/u,
    8: /ثمان|ثامن/u,
    9: /تسع|تاسع/u,
    10: /عشر|عاشر/u,
    12: /(?:اثن|ثاني)\p{L}* عشر/u,
  },
};

function digitsIn(text: string): number[] {
  const latin = text
    .replace(/\{\{.*?\}\}/g, ' ')
    .replace(/[\u0660-\u0669]/g, (digit) => String(digit.charCodeAt(0) - 0x660))
    .replace(/[\u06f0-\u06f9]/g, (digit) => String(digit.charCodeAt(0) - 0x6f0));
  return (latin.match(/\d+/g) ?? []).map(Number);
}

function numbersIn(lang: string, text: string): Set<number> {
  const words = Object.entries(NUMBER_WORDS[lang] ?? {}).filter(([, word]) => word.test(text));
  return new Set([...digitsIn(text), ...words.map(([value]) => Number(value))]);
}

/**
 * A number of the English text stands in the translation, in digits or, where we know them, in words; and a
 * digit of the translation stands in English. A language without a table of words is held to the digits.
 */
export function numberFaults(lang: string, texts: Texts, english: Texts): string[] {
  return pairs(texts, english).flatMap(({ key, text, source }) => {
    const due = lang in NUMBER_WORDS ? numbersIn('en', source) : new Set(digitsIn(source));
    const seen = numbersIn(lang, text);
    const lost = [...due].filter((value) => !seen.has(value));
    const known = numbersIn('en', source);
    const added = digitsIn(text).filter((value) => value > 2 && !known.has(value));
    return [
      ...lost.map((value) => `${key}: number ${value} lost in "${text}"`),
      ...added.map((value) => `${key}: number ${value} not in English, "${text}"`),
    ];
  });
}

/** Words that say no, and words that say leave alone or forbid; a `doNot` text lives on them. */
const NEGATIONS: Readonly<Record<string, { no: RegExp; leave: RegExp }>> = {
  en: {
    no: /\b(?:no|not|nothing|nobody|never|cannot|without)\b/giu,
    leave: /\b(?:leave|keep|only|stay)\b/giu,
  },
  es: {
    no: /(?<!\p{L})(?:no|nada|nadie|ni|sin|nunca|ningun[oa]?|ningún|tampoco)(?!\p{L})/giu,
    leave:
      /(?<!\p{L})(?:deje[ns]?|dejen?los|dejar\p{L}*|solo|sólo|solamente|mantenga[ns]?|siga|prohib\p{L}+)(?!\p{L})/giu,
  },
  pl: {
    no: /(?<!\p{L})(?:nie|bez|nic|niczego|niczym|nikt|nikomu|nikogo|nigdy|żad\p{L}+|ani|brak|niepokoi)(?!\p{L})/giu,
    leave: /(?<!\p{L})(?:zostaw\p{L}*|pozostaw\p{L}*|tylko|wyłącznie|zabroni\p{L}*|zakaz\p{L}*)(?!\p{L})/giu,
  },
  ar: {
    no: /(?<!\p{L})[وف]?(?:لا|لم|لن|ليس|ليست|لستُ?|لسنا|(?:ب?دون\p{L}*)|بلا|غير|ممنوع|ألا|ألّا|ما من|عدم)(?![\p{L}])/gu,
    leave: /(?<!\p{L})[وف]?(?:اترك\p{L}*|فقط|إلا|إلّا|وحده|وحدهم|منع\p{L}*|أبق\p{L}*)(?!\p{L})/gu,
  },
};

const count = (pattern: RegExp, text: string) => text.match(pattern)?.length ?? 0;

/** "Not sure" is "in doubt" in many languages: no denial to keep. */
const NOT_SURE = /\bnot sure\b/giu;

/** Texts whose "no" may become a positive clause, each with its reason. No `doNot` text may stand here. */
const POSITIVE_ELSEWHERE: Readonly<Record<string, string>> = {
  'signs:foot-droops.why': '"it does not like to be pressed" may be "pressing harms it"',
  'signs:details.being-sick/choking': '"cannot get breath" may be "trouble getting breath"',
};

/**
 * A text that says no in English says no in the translation. A `doNot` text also keeps as many prohibitions
 * as English has, each by a "no" or a "leave it".
 * Not: whether the right verb is denied; only a reader of the language can tell.
 */
export function negationFaults(lang: string, texts: Texts, english: Texts): string[] {
  const words = NEGATIONS[lang];
  if (words === undefined) return [`${lang}: no list of negations in tests/rules/locale-faults.ts`];
  const en = NEGATIONS['en']!;
  return pairs(texts, english).flatMap(({ key, text, source }) => {
    if (key in POSITIVE_ELSEWHERE && !key.endsWith('.doNot')) return [];
    const faults: string[] = [];
    if (count(en.no, source.replace(NOT_SURE, '')) > 0 && count(words.no, text) === 0) {
      faults.push(`${key}: "${source}" says no, "${text}" does not`);
    }
    if (key.endsWith('.doNot')) {
      const due = count(en.no, source) + count(/(?<!\bnot )\bleave\b/giu, source);
      const seen = count(words.no, text) + count(words.leave, text);
      if (seen < Math.max(1, due))
        faults.push(`${key}: ${Math.max(1, due)} prohibitions, saw ${seen} in "${text}"`);
    }
    return faults;
  });
}

const SCRIPTS: Readonly<Record<string, RegExp>> = {
  Latn: /\p{Script=Latin}/u,
  Arab: /\p{Script=Arabic}/u,
  Cyrl: /\p{Script=Cyrillic}/u,
  Deva: /\p{Script=Devanagari}/u,
  Beng: /\p{Script=Bengali}/u,
  Ethi: /\p{Script=Ethiopic}/u,
  Guru: /\p{Script=Gurmukhi}/u,
  Taml: /\p{Script=Tamil}/u,
};

/** Names that stay as they are in every script. */
const UNTRANSLATED = /Bare Toes|\{\{.*?\}\}/g;

/** Every letter of a text belongs to the script of its language, the product's name apart. */
export function scriptFaults(lang: string, texts: Texts): string[] {
  const name = new Intl.Locale(lang).maximize().script ?? '';
  const script = SCRIPTS[name];
  if (script === undefined) return [`${lang}: script "${name}" is not in tests/rules/locale-faults.ts`];
  return Object.entries(texts).flatMap(([key, text]) => {
    const strange = [...text.replace(UNTRANSLATED, '')].filter(
      (one) => /\p{L}/u.test(one) && !script.test(one) && !/\p{Script=Common}/u.test(one),
    );
    return strange.length === 0 ? [] : [`${key}: letters "${strange.join('')}" are not ${name}, "${text}"`];
  });
}
