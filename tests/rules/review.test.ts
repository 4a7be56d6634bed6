import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  dueKeys,
  readReview,
  reviewOf,
  SAFETY_AREAS,
  shownLanguages,
  sign,
  sourceHash,
  stamp,
} from '../../.ci/locales.mjs';
import { english, everyLanguage, root } from '../helpers/locales.ts';

const READER = { by: "children's nurse", on: '2031-05-04' };

describe.each(everyLanguage)('the review record of %s', (lang, texts) => {
  const record = readReview(root, lang);

  it('names only texts that are there', () => {
    expect(Object.keys(record).filter((key) => !(key in texts))).toEqual([]);
  });

  it('has two hashes, and both a role and a date or neither', () => {
    for (const [key, entry] of Object.entries(record)) {
      expect(Object.keys(entry), key).toEqual(['source', 'text', 'by', 'on']);
      expect(`${entry.source} ${entry.text}`, key).toMatch(/^[0-9a-f]{8} [0-9a-f]{8}$/);
      expect(entry.by === null, key).toBe(entry.on === null);
      if (entry.on !== null) expect(entry.on, key).toMatch(/^\d{4}-\d{2}-\d{2}$/);
    }
  });

  it('counts every text that is due', () => {
    const sum = Object.values(reviewOf(root)[lang]!).reduce((total, area) => total + area.keys, 0);
    expect(sum).toBe(dueKeys(lang, english).length);
  });
});

describe('a made-up house of languages', () => {
  let house = '';
  const write = (lang: string, area: string, texts: object) => {
    mkdirSync(path.join(house, 'locales', lang), { recursive: true });
    writeFileSync(path.join(house, 'locales', lang, `${area}.json`), JSON.stringify(texts));
  };
  const state = (lang: string, area = 'look') => reviewOf(house)[lang]![area];

  beforeEach(() => {
    house = mkdtempSync(path.join(tmpdir(), 'languages-'));
    for (const area of SAFETY_AREAS) {
      write('en', area, {
        toes: 'Toes',
        minutes_one: '{{count}} minute',
        minutes_other: '{{count}} minutes',
      });
      write('pl', area, {
        toes: 'Palce stopy',
        minutes_one: '{{count}} minuta',
        minutes_few: '{{count}} minuty',
        minutes_many: '{{count}} minut',
        minutes_other: '{{count}} minuty',
      });
    }
  });
  afterEach(() => rmSync(house, { recursive: true }));

  const signAll = (lang: string) => {
    for (const area of SAFETY_AREAS) sign(house, lang, { area, ...READER });
  };

  it('hashes like everybody else', () => {
    // SHA-256 of "abc" begins ba7816bf: FIPS 180-2, appendix B.1
    expect(sourceHash('abc')).toBe('ba7816bf');
    expect(sourceHash('fr\u00eda')).toBe(sourceHash('fri\u0301a'));
  });

  it('without a record all is a draft', () => {
    expect(state('pl')).toEqual({ keys: 5, missing: 0, unreviewed: 5, stale: 0, status: 'draft' });
    expect(state('en')).toEqual({ keys: 3, missing: 0, unreviewed: 3, stale: 0, status: 'draft' });
  });

  it('stamping signs nothing', () => {
    expect(stamp(house, 'pl')).toEqual({ added: 5 * SAFETY_AREAS.length, refreshed: 0, removed: 0, kept: 0 });
    expect(state('pl')).toMatchObject({ unreviewed: 5, stale: 0, status: 'draft' });
    expect(readReview(house, 'pl')['look:minutes_few']).toEqual({
      source: sourceHash('{{count}} minutes'),
      text: sourceHash('{{count}} minuty'),
      by: null,
      on: null,
    });
  });

  it('stamping twice changes nothing', () => {
    stamp(house, 'pl');
    const file = path.join(house, 'locales/pl/review.json');
    const first = readFileSync(file, 'utf8');
    expect(stamp(house, 'pl')).toMatchObject({ added: 0, refreshed: 0, kept: 5 * SAFETY_AREAS.length });
    expect(readFileSync(file, 'utf8')).toBe(first);
  });

  it('a signed area is reviewed; one new text makes it a draft again', () => {
    signAll('pl');
    expect(state('pl')).toEqual({ keys: 5, missing: 0, unreviewed: 0, stale: 0, status: 'reviewed' });
    write('en', 'look', {
      toes: 'Toes',
      heel: 'Heel',
      minutes_one: '{{count}} minute',
      minutes_other: '{{count}} minutes',
    });
    expect(state('pl')).toMatchObject({ keys: 6, missing: 1, status: 'draft' });
  });

  it('an English text that changes makes the signed translation stale, with all plural forms that carry it', () => {
    signAll('pl');
    write('en', 'look', {
      toes: 'Bare toes',
      minutes_one: '{{count}} minute',
      minutes_other: '{{count}} whole minutes',
    });
    expect(state('pl')).toMatchObject({ unreviewed: 0, stale: 4, status: 'stale' });
    expect(state('pl', 'say')).toMatchObject({ status: 'reviewed' });
  });

  it('a signed translation that changes is stale, and stamping does not launder it', () => {
    signAll('pl');
    write('pl', 'look', {
      toes: 'Palce',
      minutes_one: '{{count}} minuta',
      minutes_few: '{{count}} minuty',
      minutes_many: '{{count}} minut',
      minutes_other: '{{count}} minuty',
    });
    expect(state('pl')).toMatchObject({ stale: 1, status: 'stale' });
    stamp(house, 'pl', { renew: ['look:toes'] });
    expect(state('pl')).toMatchObject({ stale: 1, status: 'stale' });
    sign(house, 'pl', { keys: ['look:toes'], ...READER });
    expect(state('pl')).toMatchObject({ stale: 0, status: 'reviewed' });
  });

  it('an unsigned text stays stale until it is rewritten or named as still right', () => {
    stamp(house, 'pl');
    write('en', 'look', {
      toes: 'Bare toes',
      minutes_one: '{{count}} minute',
      minutes_other: '{{count}} minutes',
    });
    stamp(house, 'pl');
    expect(state('pl')).toMatchObject({ unreviewed: 5, stale: 1 });
    expect(stamp(house, 'pl', { renew: ['look:toes'] })).toMatchObject({ refreshed: 1 });
    expect(state('pl')).toMatchObject({ unreviewed: 5, stale: 0, status: 'draft' });
  });

  it('a text that is gone leaves the record', () => {
    stamp(house, 'pl');
    write('pl', 'look', { toes: 'Palce stopy' });
    expect(stamp(house, 'pl')).toMatchObject({ removed: 4 });
  });

  it('signs with a role and a date only', () => {
    expect(() => sign(house, 'pl', { area: 'look', by: ' ', on: '2031-05-04' })).toThrow('role');
    expect(() => sign(house, 'pl', { area: 'look', by: 'nurse', on: 'today' })).toThrow('YYYY-MM-DD');
    expect(() => sign(house, 'pl', { area: 'ear', ...READER })).toThrow('ear');
    expect(() => stamp(house, 'xx')).toThrow('no such language');
    expect(() => sign(house, 'pl', { keys: ['look:ear'], ...READER })).toThrow('look:ear');
  });

  it('a ward that hides unreviewed languages shows those whose safety areas are all signed, and its own', () => {
    expect(shownLanguages(house)).toEqual(['en', 'pl']);
    expect(shownLanguages(house, { hideUnreviewed: true })).toEqual(['en']);
    expect(shownLanguages(house, { hideUnreviewed: true, always: 'pl' })).toEqual(['pl']);
    signAll('pl');
    expect(shownLanguages(house, { hideUnreviewed: true })).toEqual(['en', 'pl']);
    write('en', 'say', { toes: 'New', minutes_one: '{{count}} minute', minutes_other: '{{count}} minutes' });
    expect(shownLanguages(house, { hideUnreviewed: true })).toEqual(['en']);
  });
});
