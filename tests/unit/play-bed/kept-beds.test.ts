// The beds of one device, read back: what cannot be read is told by the bed's shape and by its part.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BED_SHAPES } from '#domain/play-bed/bed.ts';
import { readKeptBeds } from '#domain/play-bed/kept-beds.ts';
import { TYPICAL } from '../../helpers/play-beds.ts';

const BED = JSON.parse(JSON.stringify(TYPICAL)) as Record<string, unknown>;
const SECOND = { ...BED, shape: 'star' };

describe('the beds of a device', () => {
  it('come back as they were kept, with the one that was open', () => {
    expect(readKeptBeds({ open: 'star', beds: [BED, SECOND] })).toEqual({
      ...{ open: 'star', unread: [] },
      beds: [TYPICAL, { ...TYPICAL, shape: 'star' }],
    });
    expect(readKeptBeds(undefined)).toEqual({ beds: [], unread: [] });
  });

  it.each([
    ...['rubbish', '{"open":', null, 7, [], {}, { version: 9 }],
    ...[
      { open: 'boat', beds: 'none' },
      { version: 9, open: 'boat', beds: { boat: BED } },
    ],
  ])('that are no beds are all told as unread: %j', (value) => {
    expect(readKeptBeds(value)).toEqual({ beds: [], unread: [{ what: 'all' }] });
  });

  it('never throw, and never pass over in silence what was not taken', () => {
    fc.assert(
      fc.property(fc.array(fc.oneof(fc.anything(), fc.constant(BED))), (rows) => {
        const { beds, unread } = readKeptBeds({ open: 'boat', beds: rows });
        const whole = unread.filter(({ what }) => what === 'bed');
        expect(beds.length + whole.length).toBe(rows.length);
        expect(new Set(beds.map(({ shape }) => shape)).size).toBe(beds.length);
      }),
    );
  });

  it('of two that bear one shape give the first, and tell of the other', () => {
    expect(readKeptBeds({ open: 'boat', beds: [BED, { ...BED, freeHands: 0 }, SECOND] })).toEqual({
      open: 'boat',
      beds: [TYPICAL, { ...TYPICAL, shape: 'star' }],
      unread: [{ what: 'bed', shape: TYPICAL.shape }],
    });
  });

  it('of a bed that is lost tell its shape, and of what stands beside them that it is there', () => {
    fc.assert(
      fc.property(fc.constantFrom(...BED_SHAPES), (shape) => {
        const { beds, unread } = readKeptBeds({
          open: shape,
          beds: [BED, { shape, day: 'rubbish' }, 7],
          more: 1,
        });
        expect(beds).toEqual([TYPICAL]);
        expect(unread).toEqual([{ what: 'around' }, { what: 'bed', shape }, { what: 'bed' }]);
      }),
    );
  });

  it.each([
    [{ freeHands: 'two' }, ['first']],
    [{ child: { ...TYPICAL.child, likes: 7 } }, ['child']],
    [{ room: 7, permissions: 7 }, ['ward']],
    [{ sketch: { ...TYPICAL.sketch, quiet: 7 } }, ['day']],
    [{ sketch: { ...TYPICAL.sketch, moments: 7 } }, ['moments']],
    [{ limits: 7 }, ['limits']],
    [{ fears: 7, loudest: 9 }, ['heeds']],
    [{ own: 7 }, ['own', 'plan']],
    [{ plan: 7, pins: 7, done: 7, history: 7, notToday: 7 }, ['plan']],
    [{ mood: 'good' }, ['more']],
  ])('of a bed with %j tell which part of its page to tick again', (spoilt, parts) => {
    // a like or a place in the plan that names an own idea goes with it
    const { beds, unread } = readKeptBeds({ open: 'boat', beds: [{ ...BED, ...spoilt }, SECOND] });
    expect(beds).toHaveLength(2);
    expect(unread).toEqual([{ what: 'parts', shape: TYPICAL.shape, parts }]);
  });
});
