/**
 * Two phones' notes of a stay, made up from a number: the same number, the same notes. Two mixes: `even`, every
 * kind as often as any other, with any content; and `likely`, as two parents might write them at a bed.
 */
import { CHOICES, MARKS, QUESTIONS, WRITERS, type ChoiceKind } from '#domain/notes/kinds.ts';
import { byTime, parseEntry, type Entry } from '#domain/notes/entries.ts';
import { ALL_SIGN_IDS } from '#domain/signs/ids.ts';

/** Numbers as if by chance, from 0 to 1. Source: the generator known as mulberry32, from memory; nothing rests on it. */
export function chance(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

const KINDS = [
  'sign',
  'sore',
  'play',
  'question',
  'strike',
  ...MARKS,
  ...(Object.keys(CHOICES) as ChoiceKind[]),
];
/** How often in a hundred; the rest of the kinds share what is left. */
const LIKELY: readonly (readonly [string, number])[] = [
  ...([
    ['sign', 10],
    ['sore', 16],
    ['drink', 14],
    ['wee', 10],
    ['play', 8],
  ] as const),
  ...([
    ['told', 6],
    ['bell', 6],
    ['nurse-came', 5],
    ['nurse-looked', 6],
    ['medicine-told', 5],
  ] as const),
];
const IDEAS = [
  'voice-story',
  'sound-hunt',
  'song-swap',
  'wave-hello',
  'dot-grid',
  'torch-shadows',
  'listen-book',
];
const FIRST_MINUTE = 29_900_000;

type Mix = 'even' | 'likely';

/** `count` notes of two phones over fourteen days, sorted. */
export function fortnight(count: number, seed: number, mix: Mix): Entry[] {
  const next = chance(seed);
  const below = (n: number) => Math.floor(next() * n);
  const pick = <T>(from: readonly T[]): T => from[below(from.length)]!;
  const kind = (): string => {
    if (mix === 'even') return pick(KINDS);
    let at = next() * 100;
    for (const [name, share] of LIKELY) if ((at -= share) < 0) return name;
    return pick(KINDS);
  };
  const content = (name: string, id: string): Record<string, unknown> => {
    if (Object.hasOwn(CHOICES, name))
      return {
        ...Object.fromEntries(
          Object.entries(CHOICES[name as ChoiceKind]).map(([f, words]) => [f, pick(words)]),
        ),
        ...(name === 'answer' && { question: id }),
      };
    if (name === 'sign') return { sign: pick(ALL_SIGN_IDS), answer: below(5) ? 'different' : 'not-sure' };
    if (name === 'sore') {
      const scale = mix === 'likely' || below(2) ? 'numbers' : 'steps';
      return { value: below(scale === 'numbers' ? 11 : 4), scale, when: pick(['rest', 'moving']) };
    }
    if (name === 'play') return { idea: pick(IDEAS), again: next() < 0.7 };
    if (name === 'question') return { ask: pick(QUESTIONS) };
    if (name === 'strike') return { strikes: id };
    return {};
  };
  const phones = ['3fa91c', 'b07e52'].map((name, i) => ({ name, count: 0, by: WRITERS[i] }));
  const minutes = Array.from({ length: count }, () => FIRST_MINUTE + below(14 * 24 * 60)).sort(
    (a, b) => a - b,
  );
  const entries = minutes.map((t) => {
    const phone = pick(phones);
    const earlier = `${phone.name}-${Math.max(1, phone.count - below(5))}`;
    const name = kind();
    const id = `${phone.name}-${++phone.count}`;
    return parseEntry({ id, t, off: 60, by: phone.by, kind: name, ...content(name, earlier) });
  });
  return entries.sort(byTime);
}
