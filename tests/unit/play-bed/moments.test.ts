// The card for a hard moment: for every month of childhood, only ideas that are for that age and that moment.
import { describe, expect, it } from 'vitest';
import { IDEAS } from '#content/ideas.ts';
import plans from '#locales/en/plans.json' with { type: 'json' };
import { MOMENT_AGES, momentAge, momentCard, type MomentCard } from '#domain/play-bed/moments.ts';
import type { Idea } from '#domain/play/types.ts';

const MONTHS = Array.from({ length: 17 * 12 }, (_, n) => 12 + n);
const ideaOf = (id: string): Idea | undefined => IDEAS.find((idea) => idea.id === id);
const stepsOf = (card: MomentCard) => [...card.before, ...card.during, ...card.after];
const isForAge = (idea: Idea, month: number) =>
  month >= (idea.fromMonths ?? 12 * idea.ages[0]) && month < 12 * (idea.ages[1] + 1);

describe('the card for a hard moment', () => {
  it.each(MONTHS.filter((month) => month % 12 === 0 || month < 36))(
    'at %i months names only ideas for that age',
    (month) => {
      const wrong = stepsOf(momentCard(month)).flatMap(({ ideas }) =>
        ideas.filter((id) => !ideaOf(id) || !isForAge(ideaOf(id)!, month)),
      );
      expect(wrong).toEqual([]);
    },
  );

  it('has, before and during it, only ideas that are marked for hard moments and hold still with it', () => {
    for (const month of MONTHS) {
      const { before, during } = momentCard(month);
      for (const id of [...before, ...during].flatMap(({ ideas }) => ideas)) {
        expect(ideaOf(id)!.moments.length, id).toBeGreaterThan(0);
        expect(ideaOf(id)!.tray || ideaOf(id)!.hands > 1, id).toBe(false);
      }
    }
  });

  it('has ideas during it at every age, for the needle and for bandage care', () => {
    for (const month of MONTHS)
      for (const moment of ['needle', 'bandage'] as const)
        expect(
          momentCard(month).during.some(({ ideas }) =>
            ideas.some((id) => ideaOf(id)!.moments.includes(moment)),
          ),
          `${month} ${moment}`,
        ).toBe(true);
  });

  it('says at every age that one person talks and that nobody of the family holds the child down', () => {
    for (const month of MONTHS) {
      const during = momentCard(month).during.map(({ id }) => id);
      expect(during).toContain('one-person-talks');
      expect(during).toContain('never-held-down-by-family');
    }
  });

  it('has medicine asked about before it at every age, and says nothing more of it', () => {
    // Source: design 1-job, scene 14: asked for, told where not yet given
    for (const month of MONTHS) {
      const ids = stepsOf(momentCard(month)).map(({ id }) => id);
      expect(ids.filter((id) => id.includes('medicine'))).toEqual(['ask-medicine-time']);
      expect(momentCard(month).before.map(({ id }) => id)).toContain('ask-medicine-time');
    }
  });

  it('has words of its own for each card: one age, one card', () => {
    for (const month of MONTHS)
      for (const other of [month - 1, 12, 215])
        expect(momentAge(month) === momentAge(other)).toBe(
          JSON.stringify(momentCard(month)) === JSON.stringify(momentCard(other)),
        );
    for (const { age, fromMonths } of MOMENT_AGES) expect(momentAge(fromMonths)).toBe(age);
    expect(new Set(MONTHS.map(momentAge)).size).toBe(MOMENT_AGES.length);
  });

  it('has something to do before and after at every age, each step once', () => {
    for (const month of MONTHS) {
      const { before, during, after } = momentCard(month);
      for (const steps of [before, during, after]) expect(steps.length).toBeGreaterThan(0);
      const ids = stepsOf({ before, during, after }).map(({ id }) => id);
      expect(new Set(ids).size).toBe(ids.length);
    }
  });

  it('changes on the third, sixth, ninth and thirteenth birthday and at no other time', () => {
    // Source: design 4-play, 5.7: 1–2, 3–5, 6–8, 9–12, 13–17 years
    const changes = MONTHS.filter(
      (month) => JSON.stringify(momentCard(month)) !== JSON.stringify(momentCard(month - 1)),
    );
    expect(changes).toEqual([36, 72, 108, 156]);
  });

  it('asks something of the child from three years on, and before that of grown-ups alone', () => {
    for (const month of MONTHS) {
      const doers = stepsOf(momentCard(month)).map(({ who }) => who);
      expect(doers.includes('child')).toBe(month >= 36);
      if (month < 36) expect(new Set(doers)).toEqual(new Set(['grown-up']));
    }
  });

  it('gives a card to an age that nobody can have: the nearest, or the one with most help', () => {
    expect(momentCard(0)).toEqual(momentCard(12));
    expect(momentCard(-1)).toEqual(momentCard(12));
    expect(momentCard(Number.NaN)).toEqual(momentCard(12));
    expect(momentCard(999)).toEqual(momentCard(215));
  });

  it('has words for every step, and no words for a step that is in no card', () => {
    const used = new Set(MONTHS.flatMap((month) => stepsOf(momentCard(month)).map(({ id }) => id)));
    expect([...used].sort()).toEqual(Object.keys(plans.step).sort());
  });
});
