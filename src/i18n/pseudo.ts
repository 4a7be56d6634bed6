/** Pseudo-languages for development: every word marked and stretched, placeholders kept. */
const ACCENTS: Readonly<Record<string, string>> = {
  a: 'å',
  e: 'ē',
  i: 'î',
  o: 'ö',
  u: 'û',
  c: 'ç',
  n: 'ñ',
  s: 'š',
  t: 'ţ',
  y: 'ý',
  A: 'Å',
  E: 'Ē',
  I: 'Î',
  O: 'Ö',
  U: 'Û',
  C: 'Ç',
  N: 'Ñ',
  S: 'Š',
  T: 'Ţ',
  Y: 'Ý',
};

function stretch(text: string): string {
  const parts = text.split(/(\{\{.*?\}\})/);
  const marked = parts.map((part) =>
    part.startsWith('{{') ? part : part.replace(/[a-z]/gi, (c) => ACCENTS[c] ?? c),
  );
  return `[${marked.join('')} ${'·'.repeat(Math.ceil(text.length * 0.3))}]`;
}

/** English words, changed all through: `en-XA` stretched, `en-XB` set from right to left. */
export function pseudo<T>(words: T, locale: string): T {
  if (typeof words === 'string') return (locale === 'en-XB' ? `\u202e${words}\u202c` : stretch(words)) as T;
  if (typeof words !== 'object' || words === null) return words;
  return Object.fromEntries(Object.entries(words).map(([key, value]) => [key, pseudo(value, locale)])) as T;
}
