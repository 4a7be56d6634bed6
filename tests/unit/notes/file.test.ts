import { crc32 } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseEntry, type Entry } from '#domain/notes/entries.ts';
import { LARGEST_FILE, MOST_NOTES, readNotesFile, writeNotesFile } from '#domain/notes/file.ts';
import { depthOf } from '#domain/notes/plain.ts';
import { anyNote } from '../../helpers/entries.ts';
import { chance, fortnight } from '../../helpers/fortnight.ts';
import { anyStored } from '../../helpers/notes.ts';
import { cases } from '../../helpers/same-cases.ts';

const read = (text: string): Entry[] => {
  const result = readNotesFile(text);
  if (!result.ok) throw new Error(`asked for notes, saw ${result.reason} at ${result.where}`);
  return result.entries;
};
const file = (change: object, entries = fortnight(5, 1, 'even')) =>
  JSON.stringify({ ...(JSON.parse(writeNotesFile(entries)) as object), ...change });

describe('a file of notes', () => {
  test('comes back exactly: every kind, odd ids, own words, unknown and damaged ones', () => {
    fc.assert(
      fc.property(fc.array(anyNote, { maxLength: 8 }), (entries) => {
        expect(JSON.stringify(read(writeNotesFile(entries)))).toBe(JSON.stringify(entries));
      }),
      { numRuns: cases(1000) },
    );
  });

  test('can always be written and read, whatever the store handed out', () => {
    fc.assert(
      fc.property(fc.array(anyStored, { maxLength: 4 }), (values) => {
        const entries = values.map(parseEntry);
        expect(read(writeNotesFile(entries)).map((entry) => entry.id)).toEqual(
          entries.map((entry) => entry.id),
        );
      }),
      { numRuns: cases(500) },
    );
    const deep = JSON.parse('['.repeat(200) + ']'.repeat(200)) as unknown;
    expect(read(writeNotesFile([parseEntry({ id: 'a-1', t: 1, kind: 'song', deep })]))).toHaveLength(1);
  });

  test('tells a person what it is in its first lines', () => {
    const lines = writeNotesFile(fortnight(3, 1, 'even')).split('\n');
    expect(lines.slice(1, 4)).toEqual(['  "format": "bare-toes-notes",', '  "version": 1,', '  "count": 3,']);
    expect(lines.filter((line) => line.startsWith('    {'))).toHaveLength(3);
  });

  test('its check is what the machine itself sums up over each row and its end, always in eight digits', () => {
    const checks = Array.from({ length: 64 }, (_, n) => {
      const entries = [n, n + 1].map((t) => parseEntry({ id: `a-${t}`, t, off: 0, kind: 'bell' }));
      const rows = entries.map((entry) => `${JSON.stringify(entry)}\n`).join('');
      const check = crc32(Buffer.from(rows, 'utf16le')).toString(16).padStart(8, '0');
      expect(JSON.parse(writeNotesFile(entries))).toMatchObject({ check });
      return check;
    });
    // one in sixteen begins with a zero
    expect(checks.some((check) => check.startsWith('0'))).toBe(true);
  });

  test('survives other blanks, other line ends and a mark in front', () => {
    const entries = fortnight(30, 4, 'even');
    const text = writeNotesFile(entries);
    for (const other of [
      text.replaceAll('\n', '\r\n'),
      `\ufeff${text}`,
      JSON.stringify(JSON.parse(text)),
      JSON.stringify(JSON.parse(text), null, '\t'),
    ])
      expect(read(other)).toEqual(entries);
  });

  test('a change in any note is found', () => {
    const text = writeNotesFile(fortnight(12, 2, 'even'));
    const from = text.indexOf('"entries"') + 12;
    fc.assert(
      fc.property(
        fc.integer({ min: from, max: text.length - 8 }),
        fc.constantFrom(...'0127abz'),
        (at, sign) => {
          fc.pre(text[at] !== sign && /[0-9a-z]/.test(text[at]!));
          expect(readNotesFile(text.slice(0, at) + sign + text.slice(at + 1)).ok).toBe(false);
        },
      ),
      { numRuns: cases(1000) },
    );
  });

  test('cut off anywhere it is damaged or foreign, never half read', () => {
    const text = writeNotesFile(fortnight(6, 3, 'even')).trimEnd();
    for (let length = 0; length < text.length; length++)
      expect(readNotesFile(text.slice(0, length)).ok).toBe(false);
    expect(readNotesFile(text.slice(0, -1))).toEqual({ ok: false, reason: 'damaged', where: 'file' });
  });
});

describe('a file that is refused says why and where', () => {
  test.each([
    ['', 'foreign', 'file'],
    ['hello', 'foreign', 'file'],
    ['null', 'foreign', 'file'],
    ['"hello"', 'foreign', 'file'],
    ['7', 'foreign', 'file'],
    ['[]', 'foreign', 'file'],
    ['{}', 'foreign', 'format'],
    ['{"__proto__":{"format":"bare-toes-notes"}}', 'foreign', 'format'],
    ['['.repeat(100_000), 'foreign', 'file › depth'],
    [' '.repeat(LARGEST_FILE + 1), 'too-large', 'file'],
    [() => file({ version: 2 }), 'too-new', 'version'],
    [() => file({ version: 0 }), 'damaged', 'version'],
    [() => file({ version: '1' }), 'damaged', 'version'],
    [() => file({ entries: {} }), 'damaged', 'entries'],
    [() => file({ entries: new Array(100_001).fill(0) }), 'too-large', 'entries'],
    [() => file({ count: 6 }), 'damaged', 'count'],
    [() => file({ check: '00000000' }), 'damaged', 'check'],
    [() => file({ entries: fortnight(5, 2, 'even') }), 'damaged', 'check'],
  ])('%#', (written, reason, where) => {
    const text = typeof written === 'string' ? written : written();
    expect(readNotesFile(text)).toEqual({ ok: false, reason, where });
  });

  test('as large, as deep and as many as may be is read; one more of each is not', () => {
    const text = writeNotesFile(fortnight(5, 1, 'even'));
    expect(readNotesFile(text.padEnd(LARGEST_FILE)).ok).toBe(true);
    expect(readNotesFile(text.padEnd(LARGEST_FILE + 1))).toMatchObject({
      reason: 'too-large',
      where: 'file',
    });
    const nested = (depth: number) =>
      file({ more: JSON.parse('['.repeat(depth) + ']'.repeat(depth)) as unknown });
    expect(readNotesFile(nested(59)).ok).toBe(true);
    expect(readNotesFile(nested(60))).toMatchObject({ reason: 'foreign', where: 'file › depth' });
    const bell = (_: unknown, i: number) => parseEntry({ id: `a-${i}`, t: 1, off: 0, kind: 'bell' });
    const most = Array.from({ length: MOST_NOTES }, bell);
    expect(read(writeNotesFile(most))).toHaveLength(MOST_NOTES);
    expect(() => writeNotesFile([...most, bell(0, MOST_NOTES)])).toThrow(`saw ${MOST_NOTES + 1}`);
    expect(readNotesFile(file({ entries: new Array(MOST_NOTES + 1).fill(0) }))).toMatchObject({
      reason: 'too-large',
      where: 'entries',
    });
  });

  test('few long notes: a file is written up to the last letter that is read', () => {
    const songs = (letters: number) =>
      Array.from({ length: 31 }, (_, i) => {
        const raw = 'x'.repeat(Math.min(99_000, Math.max(0, letters - 99_000 * i)));
        return parseEntry({ id: `a-${i}`, t: 1, off: 0, kind: 'song', raw });
      });
    const room = LARGEST_FILE - writeNotesFile(songs(0)).length;
    const text = writeNotesFile(songs(room));
    expect(text).toHaveLength(LARGEST_FILE);
    expect(read(text)).toHaveLength(31);
    expect(() => writeNotesFile(songs(room + 1))).toThrow(`saw 31 in ${LARGEST_FILE + 1}`);
  });

  test('a file that would be too large is not written', () => {
    const words = 'ß'.repeat(140);
    const many = Array.from({ length: 30_000 }, (_, i) =>
      parseEntry({ id: `a-${i}`, t: i, off: 0, kind: 'question', own: words }),
    );
    expect(() => writeNotesFile(many)).toThrow('saw 30000');
  });

  test('names of the machine’s own do no harm', () => {
    const look =
      '{"id":"__proto__","t":5,"off":0,"kind":"look","answers":{"__proto__":"different","constructor":"different"}}';
    const entry = parseEntry(JSON.parse(look));
    const back = read(writeNotesFile([entry]));
    expect(JSON.stringify(back)).toBe(JSON.stringify([entry]));
    expect(({} as Record<string, unknown>)['different']).toBeUndefined();
  });

  test('a hundred thousand spoilt files: no crash, and nothing but the notes is read', () => {
    const entries = fortnight(4, 5, 'even');
    const text = writeNotesFile(entries);
    const whole = JSON.stringify(entries);
    const next = chance(31);
    const below = (n: number) => Math.floor(next() * n);
    const signs = '{}[]",:0123456789abcdefghtrue\\ \n\u0000😀-.';
    let refused = 0;
    const runs = cases(100_000);
    for (let run = 0; run < runs; run++) {
      let spoilt = text;
      for (let change = 0; change <= below(4); change++) {
        const at = below(spoilt.length);
        const to = at + below(12);
        spoilt = [
          () => spoilt.slice(0, at),
          () => spoilt.slice(0, at) + spoilt.slice(to),
          () => spoilt.slice(0, to) + spoilt.slice(at),
          () => spoilt.slice(0, at) + signs[below(signs.length)]! + spoilt.slice(at + 1),
          () => spoilt.slice(0, at) + signs[below(signs.length)]! + spoilt.slice(at),
        ][below(20) === 0 ? 0 : 1 + below(4)]!();
      }
      const result = readNotesFile(spoilt);
      // blanks, or a field of the head that nobody reads, may change: the notes may not
      if (result.ok && JSON.stringify(result.entries) !== whole) throw new Error(`read ${spoilt}`);
      refused += Number(!result.ok);
    }
    expect(refused).toBeGreaterThan(runs * 0.8);
  });
});

test('depth counts brackets outside quotes only', () => {
  fc.assert(
    fc.property(fc.jsonValue({ maxDepth: 5 }), (value) => {
      const depth = (part: unknown): number =>
        typeof part === 'object' && part !== null
          ? 1 + Math.max(0, ...Object.values(part as object).map(depth))
          : 0;
      expect(depthOf(JSON.stringify(value))).toBe(depth(value));
    }),
  );
  expect(depthOf('["[[[\\"[[", {}]')).toBe(2);
});
