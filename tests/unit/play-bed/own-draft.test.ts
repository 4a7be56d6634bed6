// An own idea while it is written: what is missing is named with its place, and nothing typed is lost.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { IDEAS } from '#content/ideas.ts';
import { readBed } from '#domain/play-bed/bed-store.ts';
import { BARRED } from '#domain/play/types.ts';
import { CAUTION_QUESTIONS } from '#domain/play-bed/bed.ts';
import {
  answersWith,
  draftOf,
  newDraft,
  OWN_GROUPS,
  OWN_QUESTIONS,
  ownOf,
  tickedIn,
  withOwn,
  withoutOwn,
  type OwnDraft,
} from '#domain/play-bed/own-draft.ts';
import { problemOf } from '#domain/play-bed/problem.ts';
import { planDay } from '#domain/play/plan.ts';
import { anyOwn, OWN } from '../../helpers/own-ideas.ts';
import { anyBed, FULL, TYPICAL } from '../../helpers/play-beds.ts';

const placesOf = (draft: OwnDraft) => (ownOf(draft).faults ?? []).map(({ where }) => where);
const FIELDS = ['kind', 'position', 'hands', 'energy', 'noise', 'mess', 'who', 'wipe'] as const;

describe('a draft of an own idea', () => {
  it('opened from an idea is that idea again', () => {
    fc.assert(
      fc.property(anyOwn, (own) => {
        expect(ownOf(draftOf(own))).toEqual({ own, faults: [] });
      }),
    );
  });

  it('with one question open is no idea, and says which question', () => {
    fc.assert(
      fc.property(anyOwn, fc.constantFrom(...OWN_QUESTIONS), (own, question) => {
        const draft = draftOf(own);
        const answers = { ...draft.answers, [question]: undefined };
        expect(ownOf({ ...draft, answers }).own).toBeUndefined();
        expect(placesOf({ ...draft, answers })).toEqual([`own › answers › ${question}`]);
      }),
    );
  });

  it('with one field left out or mistyped is no idea, and says which field', () => {
    fc.assert(
      fc.property(anyOwn, fc.constantFrom(...FIELDS), (own, field) => {
        expect(placesOf({ ...draftOf(own), [field]: undefined })).toEqual([`own › ${field}`]);
      }),
    );
    for (const wrong of [{ least: undefined }, { most: 4 }, { least: 30, most: 20 }, { most: 61 }])
      expect(placesOf({ ...draftOf(OWN), ...wrong })).toEqual(['own › minutes']);
    for (const title of ['', ' ', 'A', 'x'.repeat(61), 'two\nlines'])
      expect(placesOf({ ...draftOf(OWN), title })).toEqual(['own › title']);
  });

  it('that is empty names every field and every question, and is not changed by being asked', () => {
    const draft = Object.freeze(newDraft(TYPICAL)!);
    const before = JSON.stringify(draft);
    expect(placesOf(draft).sort()).toEqual(
      [
        ...['title', 'minutes', ...FIELDS].map((field) => `own › ${field}`),
        ...OWN_QUESTIONS.map((question) => `own › answers › ${question}`),
      ].sort(),
    );
    expect(JSON.stringify(draft)).toBe(before);
  });

  it('asks every question once; a yes is what was ticked, and a no only what somebody said no to', () => {
    expect([...OWN_QUESTIONS].sort()).toEqual(['tray', ...Object.keys(CAUTION_QUESTIONS), ...BARRED].sort());
    const groups = Object.keys(OWN_GROUPS) as (keyof typeof OWN_GROUPS)[];
    const given = fc.option(fc.boolean(), { nil: undefined });
    fc.assert(
      fc.property(
        fc.constantFrom(...groups),
        fc.array(given, { minLength: 21, maxLength: 21 }),
        fc.subarray([...OWN_QUESTIONS]),
        fc.boolean(),
        (group, all, yes, rest) => {
          const asked = OWN_QUESTIONS.filter((question) => OWN_GROUPS[group].some((one) => one === question));
          const answers = Object.fromEntries(OWN_QUESTIONS.map((question, n) => [question, all[n]]));
          const ticked = asked.filter((question) => yes.includes(question));
          const after = answersWith(answers, group, rest ? [...ticked, 'rest'] : ticked);
          for (const question of OWN_QUESTIONS) {
            const answer = ticked.includes(question) || (rest ? false : undefined);
            expect(after[question]).toBe(asked.includes(question) ? answer : answers[question]);
          }
          // the form shows what was ticked; a yes to all leaves nothing open
          const all21 = rest || ticked.length === asked.length;
          expect(tickedIn(after, group)).toEqual(all21 ? [...ticked, 'rest'] : ticked);
        },
      ),
    );
  });

  it('gets a number that nothing at the bed speaks of, as long as there is room for one more', () => {
    fc.assert(
      fc.property(anyBed, (bed) => {
        const draft = newDraft(bed);
        expect(draft === undefined).toBe(bed.own.length >= 8);
        if (!draft) return;
        const { own, faults } = ownOf({ ...draftOf(OWN), id: draft.id });
        expect(faults).toEqual([]);
        expect(JSON.stringify(bed)).not.toContain(`"${draft.id}"`);
        const kept = readBed({ ...bed, own: withOwn(bed, own!) });
        expect(kept.faults).toEqual([]);
        expect(kept.bed!.own).toContainEqual(own);
      }),
    );
  });
});

describe('own ideas at a bed', () => {
  it('taken off leave no word behind, and everything else stays', () => {
    fc.assert(
      fc.property(anyBed, (bed) => {
        const id = bed.own[0]?.id ?? 'own-99';
        const after = { ...bed, ...withoutOwn(bed, id) };
        expect(JSON.stringify(after)).not.toContain(`"${id}"`);
        expect(after.own).toEqual(bed.own.filter((one) => one.id !== id));
        expect(after.plan?.filter(({ idea }) => idea !== id)).toEqual(
          bed.plan?.filter(({ idea }) => idea !== id),
        );
        expect(after.sketch).toEqual(bed.sketch);
        expect(readBed(after).faults).toEqual([]);
      }),
    );
  });

  it('changed keep their number and their place', () => {
    const other = { ...OWN, title: 'Another title' };
    expect(withOwn({ own: [{ ...OWN, id: 'own-1' }, OWN] }, other)).toEqual([{ ...OWN, id: 'own-1' }, other]);
  });

  it('that are liked and possible are planned; with one answer that bars them they are not', () => {
    const own = { ...OWN, id: 'own-1', moments: [] as const, who: 'alone' as const, cautions: [] as const };
    const bed = { ...FULL, child: { ...FULL.child, likes: ['own-1'] }, done: [], pins: [], own: [own] };
    const plannedAt = (mine: typeof bed) => {
      const plan = planDay(problemOf(mine, IDEAS).problem, { steps: 20, tries: 20, nodes: 200 });
      const { placements } = plan.kind === 'plan' ? plan : plan.rest;
      return placements.filter(({ idea }) => idea === 'own-1').length;
    };
    expect(plannedAt(bed)).toBe(1);
    expect(plannedAt({ ...bed, own: [{ ...own, barred: ['throws'] }] })).toBe(0);
  });
});
