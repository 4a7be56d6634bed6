// The sheet at the bed's end: the whole plan is on it, in order of time, and nothing that is about medicine.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { IDEAS } from '#content/ideas.ts';
import { eventKind } from '#domain/play-bed/bed.ts';
import { momentCard } from '#domain/play-bed/moments.ts';
import { daySheet, MOST_PLACES, stepsOnce, type SheetRow } from '#domain/play-bed/sheet.ts';
import type { Placement } from '#domain/play/types.ts';
import { anyBed, FULL, TYPICAL } from '../../helpers/play-beds.ts';

const placedIn = (rows: readonly SheetRow[]) =>
  rows.flatMap((row) => (row.kind === 'idea' ? [row.placement] : row.kind === 'moment' ? row.kept : []));
const key = ({ idea, window, from, minutes }: Placement) => [idea, window, from, minutes].join();

describe('the sheet at the bed’s end', () => {
  it('holds all that is planned and every hard moment, each once, whatever the day', () => {
    fc.assert(
      fc.property(anyBed, (bed) => {
        const { rows } = daySheet(bed, IDEAS);
        expect(placedIn(rows).map(key).sort()).toEqual((bed.plan ?? []).map(key).sort());
        expect(rows.flatMap((row) => (row.kind === 'moment' ? [row.moment] : []))).toEqual(
          [...bed.sketch.moments].sort((a, b) => a.from - b.from),
        );
      }),
    );
  });

  it('stands in order of time, and what is kept for a moment stands with it', () => {
    fc.assert(
      fc.property(anyBed, (bed) => {
        const { rows } = daySheet(bed, IDEAS);
        const starts = rows.map(({ from }) => from);
        expect(starts).toEqual([...starts].sort((a, b) => a - b));
        for (const row of rows)
          if (row.kind === 'moment') for (const { window } of row.kept) expect(window).toBe(row.moment.id);
      }),
    );
  });

  it('never says when medicine is given, and holds every other event once: among the rows, or all together', () => {
    fc.assert(
      fc.property(anyBed, (bed) => {
        const { rows, together } = daySheet(bed, IDEAS);
        const inRows = rows.filter((row) => row.kind === 'event');
        const open = bed.sketch.events.filter(({ id }) => !/^medicine(-|$)/.test(id));
        const ids = (list: readonly { id: string }[]) => list.map(({ id }) => id).sort();
        expect(ids([...inRows, ...together])).toEqual(ids(open));
        expect(Math.min(inRows.length, together.length)).toBe(0);
        const starts = together.map(({ from }) => from);
        expect(starts).toEqual([...starts].sort((a, b) => a - b));
        const places = rows.length + rows.flatMap((row) => (row.kind === 'moment' ? row.kept : [])).length;
        if (inRows.length) expect(places).toBeLessThanOrEqual(MOST_PLACES);
        if (together.length) expect(places + together.length).toBeGreaterThan(MOST_PLACES);
      }),
    );
    // a day with medicine in it, so that the law above is about something
    expect(TYPICAL.sketch.events.some(({ id }) => eventKind(id) === 'medicine')).toBe(true);
  });

  it('has room for every event of a typical day but those of medicine', () => {
    const { rows, together } = daySheet(TYPICAL, IDEAS);
    expect(together).toEqual([]);
    expect(rows.filter(({ kind }) => kind === 'event')).toHaveLength(8);
    // and the same day planned full has them all, too
    expect(daySheet(FULL, IDEAS).together).toHaveLength(8);
  });

  it('names three likes and three nevers at most, and only what was ticked', () => {
    fc.assert(
      fc.property(anyBed, (bed) => {
        const { likes, never } = daySheet(bed, IDEAS);
        for (const [shown, ticked] of [
          [likes, bed.child.likes],
          [never, bed.child.never],
        ] as const) {
          expect(shown.length).toBe(Math.min(3, ticked.length));
          for (const word of shown) expect(ticked).toContain(word);
        }
      }),
    );
  });

  it('says each caution of what is planned once, those of own ideas among them', () => {
    const plan = [
      { idea: 'own-1', window: 'w-0930', from: 570, minutes: 15 },
      { idea: 'short-film', window: 'w-1400', from: 840, minutes: 15 },
      { idea: 'listen-book', window: 'w-1500', from: 900, minutes: 15 },
    ];
    const bed = { ...TYPICAL, own: [{ ...TYPICAL.own[0]!, cautions: ['water' as const] }], plan };
    const { cautions } = daySheet(bed, IDEAS);
    const film = IDEAS.find(({ id }) => id === 'short-film')!;
    const book = IDEAS.find(({ id }) => id === 'listen-book')!;
    expect([...cautions].sort()).toEqual([...new Set(['water', ...film.cautions, ...book.cautions])].sort());
    expect(film.cautions.some((caution) => book.cautions.includes(caution))).toBe(true);
    expect(daySheet({ ...bed, plan: [] }, IDEAS).cautions).toEqual([]);
  });

  it('says what is done at a hard moment but for medicine, and names no idea for all of them at once', () => {
    fc.assert(
      fc.property(anyBed, (bed) => {
        const { card } = daySheet(bed, IDEAS);
        const whole = momentCard(bed.child.ageMonths);
        const ids = (steps: readonly { id: string }[]) => steps.map(({ id }) => id);
        for (const phase of ['before', 'during', 'after'] as const) {
          const rest = whole[phase].filter(({ id }) => ids(card[phase]).includes(id));
          expect(ids(card[phase])).toEqual(ids(rest));
          // what needs no idea is said at every bed, but for medicine, pictures to show and a sticker in a small mouth
          const gone = whole[phase]
            .filter(({ ideas }) => !ideas.length)
            .filter((step) => !rest.includes(step));
          for (const id of ids(gone)) {
            expect(['ask-medicine-time', 'three-pictures', 'sticker-on-page']).toContain(id);
            if (id === 'sticker-on-page') expect(bed.child.mouths).toBe(true);
          }
        }
        expect(ids([...card.before, ...card.after])).not.toContain('ask-medicine-time');
        expect(ids(card.before)).not.toContain('three-pictures');
        expect(ids(card.during)).toContain('never-held-down-by-family');
        expect(card.during.filter(({ ideas }) => ideas.length)).toEqual([]);
      }),
    );
  });

  it('says of each hard moment what is true of that one: what is kept, what may be started, or that nothing fits', () => {
    const met = new Set<string>();
    fc.assert(
      fc.property(anyBed, (bed) => {
        const { moments, rows } = daySheet(bed, IDEAS);
        const inRows = rows.flatMap((row) => (row.kind === 'moment' ? [row] : []));
        expect(moments.map(({ moment }) => moment.id)).toEqual(inRows.map(({ moment }) => moment.id));
        moments.forEach(({ kept, steps, nothingFits }, at) => {
          expect(kept).toBe(inRows[at]!.kept.length > 0);
          if (kept) expect([steps, nothingFits]).toEqual([[], false]);
          met.add(kept ? 'kept' : nothingFits ? 'nothing' : 'open');
          if (steps.length) met.add('steps');
        });
        // on the sheet a step is said once for all moments at which it is the same, and for no other
        const once = stepsOnce(moments);
        const told = ({ id, possible }: { id: string; possible: readonly string[] }) =>
          [id, ...possible].join(' ');
        expect(new Set(once.map(({ step }) => told(step))).size).toBe(once.length);
        for (const one of moments)
          expect(
            once
              .filter((group) => group.moments.includes(one))
              .map(({ step }) => told(step))
              .sort(),
          ).toEqual(one.steps.map(told).sort());
        if (new Set(moments.map(({ kept }) => kept)).size > 1) met.add('both');
      }),
      { numRuns: 150 },
    );
    expect([...met].sort()).toEqual(['both', 'kept', 'nothing', 'open', 'steps']);
  });
});
