import { describe, expect, it } from 'vitest';
import { MOMENT_CHOICES } from '#domain/day/choices.ts';
import { FEELINGS } from '#domain/day/feelings.ts';
import { DAY_EVENT_IDS } from '#domain/day/ids.ts';
import { HOLD_UP_CARDS } from '#domain/day/private.ts';
import { EDGE_PICTURES, JOBS } from '#domain/day/touch.ts';
import { SQUARE } from '#scene/things/pen.ts';
import { DAY_PICTURE_IDS, dayMarkup, drawDay, type DayPictureId } from '#scene/day/pictures.ts';
import { mirrored } from '#scene/parts/points.ts';
import { pointsOf } from '#scene/shapes.ts';
import {
  alike,
  around,
  elementsOf,
  isOnePlainDrawing,
  isSeenInKnownColours,
  isToldByItsName,
  packedKiB,
  staysInside,
} from '../../helpers/pictures.ts';

const SIDES = ['left', 'right'] as const;

const PREFIXED: [string, readonly string[]][] = [
  ['', DAY_EVENT_IDS],
  ['feel-', FEELINGS],
  ['', EDGE_PICTURES],
  ['job-', JOBS],
  ['card-', HOLD_UP_CARDS],
  ['choose-', Object.values(MOMENT_CHOICES).flat()],
  // at night nothing else is there
  ['', ['call-button', 'resting-child', 'bedtime-story']],
];

it('whatever a day, a touch, a card or the night may name has its picture', () => {
  const named = PREFIXED.flatMap(([prefix, ids]) => ids.map((id) => prefix + id));
  expect(named.filter((id) => !(DAY_PICTURE_IDS as string[]).includes(id))).toEqual([]);
  // and nothing is drawn that nobody names: twelve days, two doors, sun and moon are left over
  const left = (DAY_PICTURE_IDS as string[]).filter((id) => !named.includes(id));
  const days = Array.from({ length: 12 }, (_, i) => `day-${i + 1}`);
  expect([...left].sort()).toEqual([...days, 'door-closed', 'door-open', 'moon', 'sun'].sort());
});

describe.each(DAY_PICTURE_IDS)('the picture of %s', (id) => {
  it.each(SIDES)('stays inside its square, in absolute lines and curves (%s leg)', (side) => {
    const shapes = drawDay(id, side);
    expect(shapes.length).toBeGreaterThan(1);
    staysInside(shapes, SQUARE, SQUARE);
  });

  it('fills its square, so that it can be read from a pillow', () => {
    const [left, top, right, bottom] = around(drawDay(id));
    expect(Math.max(right - left, bottom - top)).toBeGreaterThanOrEqual(0.85 * SQUARE);
  });

  it('uses colours the style sheet knows, and can be seen', () => {
    isSeenInKnownColours(drawDay(id), 0.8);
  });

  it.each(SIDES)('is one plain drawing: paths in a group, no text, no more than 4.5 kB (%s leg)', (side) => {
    isOnePlainDrawing(dayMarkup(id, '', side), { viewBox: `0 0 ${SQUARE} ${SQUARE}`, bytes: 4500 });
  });

  it('every shape is in its text as it was drawn: points, fill and line', () => {
    const written = elementsOf(dayMarkup(id, '', 'right')).filter((e) => e.name === 'path');
    const drawn = drawDay(id, 'right');
    expect(written.map((e) => e.attributes['d'])).toEqual(drawn.map((s) => s.d));
    const filled = (e: (typeof written)[number]) => (e.attributes['class'] ?? '').includes('f-');
    expect(written.map(filled)).toEqual(drawn.map((s) => Boolean(s.fill)));
    expect(written.map((e) => e.attributes['stroke'] === 'none')).toEqual(drawn.map((s) => !s.line));
  });

  it('with a name it is a picture that is told, without one it is decoration', () => {
    isToldByItsName((name) => dayMarkup(id, name), 8);
  });
});

describe('the pictures of the day together', () => {
  const drawn = (id: DayPictureId, side: 'left' | 'right' = 'left') => drawDay(id, side).map((s) => s.d);

  it('no two share four fifths of what is drawn: they can be told apart', () => {
    expect(
      alike(
        DAY_PICTURE_IDS.map((id) => [id, drawn(id)]),
        0.8,
      ),
    ).toEqual([]);
  });

  it('the left leg is the right leg mirrored, or no pulled leg is seen and both are one picture', () => {
    const both: DayPictureId[] = [];
    for (const id of DAY_PICTURE_IDS) {
      const [left, right] = [drawn(id, 'left'), drawn(id, 'right')];
      if (left.join() === right.join()) {
        both.push(id);
        continue;
      }
      expect(mirrored(drawDay(id, 'left'), SQUARE).map((s) => s.d)).toEqual(right);
    }
    // what shows which leg is pulled: the set-up, and the whole child from above
    for (const id of ['x-ray', 'bandage-care', ...FEELINGS.map((f) => `feel-${f}`)] as DayPictureId[])
      expect(both).not.toContain(id);
    // hands are the child's own: they must never change places
    expect(both).toContain('choose-left-hand');
    expect(both).toContain('choose-right-hand');
    expect(drawn('choose-left-hand')).not.toEqual(drawn('choose-right-hand'));
  });

  it('seen as the child sees its own hands, the left one squeezes at the left', () => {
    const ball = (id: DayPictureId) => {
      const [left, , right] = around(drawDay(id).filter((s) => s.fill === 'band'));
      return (left + right) / 2;
    };
    expect(ball('choose-left-hand')).toBeLessThan(SQUARE / 2);
    expect(ball('choose-right-hand')).toBeGreaterThan(SQUARE / 2);
  });

  it('the hanging weight hangs below the wheel and free of the floor, on its cord', () => {
    const shapes = drawDay('x-ray', 'right');
    const weight = around(shapes.filter((s) => s.fill === 'bag'));
    const posts = around(shapes.filter((s) => s.line === 'frame'));
    expect(weight[3]).toBeLessThan(posts[3] - 4);
    // the head of the bed is lower than its foot end
    const mattress = pointsOf(shapes.find((s) => s.fill === 'mattress')!.d);
    const [head, foot] = [mattress[0]!, mattress[1]!];
    expect(head.x).toBeLessThan(foot.x);
    expect(head.y).toBeGreaterThan(foot.y + 4);
  });

  it('a body picture keeps the pulled leg straight, whatever else it feels', () => {
    const pulled = FEELINGS.map((feeling) => {
      const shapes = drawDay(`feel-${feeling}`, 'right');
      const band = shapes.find((s) => s.fill === 'band')!;
      const cord = shapes.find((s) => s.line === 'cord')!;
      return [band.d, cord.d].join();
    });
    // one leg in one place: only the rest of the child differs
    expect(new Set(pulled).size).toBe(1);
    const [x] = around([drawDay('feel-loose', 'right').find((s) => s.line === 'cord')!]);
    const [left, , right] = around([drawDay('feel-loose', 'right').find((s) => s.fill === 'band')!]);
    expect(Math.abs((left + right) / 2 - x)).toBeLessThan(2);
  });

  it('a day picture is one thing: nobody is in it, and none is richer than another', () => {
    const days = DAY_PICTURE_IDS.filter((id) => id.startsWith('day-'));
    const counts = days.map((id) => drawDay(id).length);
    expect(Math.max(...counts)).toBeLessThanOrEqual(2 * Math.min(...counts));
    const people = days.filter((id) =>
      drawDay(id).some(({ fill, line }) => ['skin', 'hand', 'hair'].some((c) => c === fill || c === line)),
    );
    expect(people).toEqual([]);
  });

  it('weigh less than 22 KiB, drawing code and all', async () => {
    expect(await packedKiB('src/scene/day/pictures.ts', 'dayMarkup')).toBeLessThan(22);
  });
});
