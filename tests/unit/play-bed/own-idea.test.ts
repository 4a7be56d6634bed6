// An idea of a play specialist's own: what it may be, and that no answer makes it more dangerous than one of the library.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { OwnIdea } from '#domain/play-bed/bed.ts';
import { faultsOfOwn, ideaOf, readOwn } from '#domain/play-bed/own-idea.ts';
import { brokenIn, needsGrownUp } from '#domain/play/feasible.ts';
import { BARRED } from '#domain/play/types.ts';
import { vetted } from '#domain/play/vet.ts';
import { anyOwn, OWN, QUESTIONS } from '../../helpers/own-ideas.ts';
import { madeUpDay } from '../../helpers/play-days.ts';
import { safetyFaults } from '../../rules/idea-faults.ts';

const changed = (change: Partial<Record<keyof OwnIdea, unknown>>): unknown => ({ ...OWN, ...change });
const day = madeUpDay(3);
const windows = [false, true].flatMap((propped) =>
  day.windows.map((window) => ({ ...window, propped, grownUp: true })),
);
const childOf = (ageMonths: number, more: Partial<typeof day.child> = {}) => ({
  ...day,
  eating: true,
  child: { ...day.child, ageMonths, mouths: false, never: [], lacks: [], ...more },
});
/** Whether any window at all, with a grown-up and in both positions, would take it. */
const mayStand = (own: OwnIdea, ageMonths: number, more: Partial<typeof day.child> = {}) =>
  windows.some((window) => !brokenIn(childOf(ageMonths, more), ideaOf(own), window).length);

describe('an own idea', () => {
  it('is read as it was written, whatever it is', () => {
    fc.assert(
      fc.property(anyOwn, (own) => {
        expect(faultsOfOwn(own)).toEqual([]);
        expect(readOwn(own)).toEqual(own);
        expect(readOwn(JSON.parse(JSON.stringify(own)))).toEqual(own);
      }),
    );
  });

  it('is an idea that the planner can read', () => {
    fc.assert(
      fc.property(anyOwn, (own) => {
        const { problem, faults } = vetted({ ...day, ideas: [ideaOf(own)] });
        expect(faults).toEqual([]);
        expect(problem.ideas).toEqual([ideaOf(own)]);
      }),
    );
  });

  it('keeps what every idea of the library keeps, as far as nobody else can know it better', () => {
    // who is there is the planner's rule; which wish it serves follows from the moments
    const heldElsewhere =
      /and no grown-up|and nobody who cuts|loud and alone|at a hard moment|nothing about shaking|wipe/;
    fc.assert(
      fc.property(anyOwn, (own) => {
        const faults = safetyFaults(ideaOf({ ...own, barred: [] }));
        expect(faults.filter((fault) => !heldElsewhere.test(fault) && !fault.includes('lying flat'))).toEqual(
          [],
        );
      }),
    );
  });

  it('with one answer that bars it stands nowhere, at no age', () => {
    for (const barred of BARRED)
      for (let months = 12; months < 216; months += 6)
        expect(mayStand({ ...OWN, barred: [barred] }, months)).toBe(false);
    expect(ideaOf({ ...OWN, barred: ['balloon', 'throws'] }).barred).toEqual(['balloon', 'throws']);
    expect(mayStand(OWN, 84)).toBe(true);
  });

  it('with small parts or a cord is for nobody under three, with a screen for nobody under two', () => {
    for (const [answer, first] of [
      ['small-parts', 36],
      ['cord', 36],
      ['screen', 24],
    ] as const)
      for (let months = 12; months < 216; months++)
        expect(mayStand({ ...OWN, moments: [], cautions: [answer] }, months), `${answer} ${months}`).toBe(
          months >= first,
        );
    expect(mayStand({ ...OWN, cautions: ['small-parts'] }, 84, { mouths: true })).toBe(false);
    expect(ideaOf({ ...OWN, kind: 'screen' })).toMatchObject({ screen: 'yes', ages: [2, 17] });
  });

  it('never asks for less care when one more question is answered with yes', () => {
    fc.assert(
      fc.property(
        anyOwn,
        fc.constantFrom(...QUESTIONS),
        fc.integer({ min: 12, max: 215 }),
        (own, more, age) => {
          const careful = { ...own, cautions: [...new Set([...own.cautions, more])] };
          for (const window of windows) {
            const before = brokenIn(childOf(age), ideaOf(own), window);
            expect(brokenIn(childOf(age), ideaOf(careful), window)).toEqual(expect.arrayContaining(before));
          }
          expect(needsGrownUp(ideaOf(careful), age) || !needsGrownUp(ideaOf(own), age)).toBe(true);
        },
      ),
    );
  });

  it('on the tray stands neither lying flat nor at a hard moment', () => {
    const own: OwnIdea = { ...OWN, tray: true, position: 'both', moments: ['needle', 'bandage'] };
    expect(ideaOf(own).cautions).toContain('above-waist');
    for (const window of windows) {
      const broken = brokenIn(childOf(84), ideaOf(own), window);
      expect(broken.includes('H3')).toBe(!window.propped);
      expect(broken.includes('H10')).toBe(window.kind === 'hard');
    }
  });

  it('suits both wishes at a hard moment, and none where it is for no such moment', () => {
    fc.assert(
      fc.property(anyOwn, (own) => {
        expect(ideaOf(own).suits).toEqual(own.moments.length ? ['watch', 'look-away'] : []);
      }),
    );
  });
});

describe('what is wrong with an own idea', () => {
  it('is named field by field when nothing is there', () => {
    expect(
      faultsOfOwn({})
        .map(({ where }) => where)
        .sort(),
    ).toEqual(
      Object.keys(OWN)
        .map((field) => `own › ${field}`)
        .sort(),
    );
  });

  it.each(Object.keys(OWN) as (keyof OwnIdea)[])(
    'is named when %s is missing or of another kind',
    (field) => {
      for (const value of [undefined, null, {}, 3.5, 'zzz!', -1, Number.NaN, 1e300, ['zzz'], [OWN]]) {
        const faults = faultsOfOwn(changed({ [field]: value }));
        const places = faults.map(({ where }) => where);
        // one text is as good a title as another
        if (field === 'title' && value === 'zzz!') expect(faults).toEqual([]);
        else expect(places.length === 1 && places[0]!.startsWith(`own › ${field}`), String(value)).toBe(true);
      }
    },
  );

  it.each<[string, Partial<Record<keyof OwnIdea, unknown>>, string]>([
    ['a title of one letter', { title: 'A' }, 'own › title'],
    ['a title of spaces', { title: ' '.repeat(9) }, 'own › title'],
    ['a title nobody can see', { title: '\u200b\u200d\u2060\u00ad' }, 'own › title'],
    ['a title of 61 letters', { title: 'a'.repeat(61) }, 'own › title'],
    ['two lines', { title: 'one\ntwo' }, 'own › title'],
    ['a tab', { title: 'one\ttwo' }, 'own › title'],
    ['a nought', { title: 'one\u0000two' }, 'own › title'],
    ['a line separator', { title: 'one\u2028two' }, 'own › title'],
    ['half a character', { title: 'one\ud83dtwo' }, 'own › title'],
    ['an override of direction', { title: 'one\u202etwo' }, 'own › title'],
    ['an embedding of direction', { title: 'one\u202btwo' }, 'own › title'],
    ['an isolate that is never closed', { title: 'one\u2067two' }, 'own › title'],
    ['another id', { id: 'voice-story' }, 'own › id'],
    ['an id counted from nought', { id: 'own-0' }, 'own › id'],
    ['minutes the wrong way round', { minutes: [20, 10] }, 'own › minutes'],
    ['four minutes', { minutes: [4, 10] }, 'own › minutes'],
    ['more than an hour', { minutes: [10, 61] }, 'own › minutes'],
    ['a third number of minutes', { minutes: [10, 20, 30] }, 'own › minutes'],
    ['a third moment', { moments: ['needle', 'other'] }, 'own › moments › 2'],
    ['a caution twice', { cautions: ['cord', 'cord'] }, 'own › cautions › 2'],
    ['a caution nobody asks about', { cautions: ['shaking'] }, 'own › cautions › 1'],
    ['a bar nobody knows', { barred: ['kite'] }, 'own › barred › 1'],
  ])('%s is seen', (_, change, where) => {
    const faults = faultsOfOwn(changed(change));
    expect(faults.map((fault) => fault.where)).toEqual([where]);
    expect(faults[0]!.rule).not.toBe('');
    expect(readOwn(changed(change))).toBeUndefined();
  });

  it('leaves sixty characters of any writing a title, and drops spaces at its ends', () => {
    expect(readOwn(changed({ title: '🐋'.repeat(60) }))?.title).toBe('🐋'.repeat(60));
    expect(readOwn(changed({ title: '  قصة عن البحر ' }))?.title).toBe('قصة عن البحر');
    expect(faultsOfOwn(changed({ title: '画画' }))).toEqual([]);
  });

  it('is named for anything at all, and nothing of it is inherited', () => {
    fc.assert(
      fc.property(
        fc.anything({ withBigInt: true, withDate: true, withMap: true, withNullPrototype: true }),
        (value) => {
          expect(faultsOfOwn(value).length).toBeGreaterThan(0);
          expect(readOwn(value)).toBeUndefined();
        },
      ),
    );
    expect(readOwn(Object.create(OWN))).toBeUndefined();
    expect(readOwn(JSON.parse(`{"__proto__": ${JSON.stringify(OWN)}}`))).toBeUndefined();
    expect(readOwn(changed({ title: OWN.title, ['more' as 'id']: 1 }))).toBeUndefined();
  });

  it('never quotes more than a line of what was seen', () => {
    let deep: unknown = 1;
    for (let n = 0; n < 100_000; n++) deep = [deep];
    for (const value of ['x'.repeat(1e6), deep, { deep }, Array.from({ length: 1e5 }, () => deep)])
      for (const field of Object.keys(OWN))
        expect(JSON.stringify(faultsOfOwn(changed({ [field]: value }))).length).toBeLessThan(9000);
  });
});
