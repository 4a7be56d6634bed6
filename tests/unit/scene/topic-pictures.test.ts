import { describe, expect, it } from 'vitest';
import { mirrored } from '#scene/parts/points.ts';
import { TOPIC_VIEW, type SetUpPart } from '#scene/topics/page.ts';
import { drawTopic, TOPIC_PICTURE_IDS, topicMarkup, type TopicPictureId } from '#scene/topics/pictures.ts';
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

// the order of the ward's list of topics
const TOPICS =
  'why-pull before-it-goes-on my-set-up first-hour six-looks calling soreness first-night toilet-in-bed ' +
  'eating-lying toes-bare your-hands-off wash-bandage-day sheets bandage-wet poo wee-drink skin-heel ' +
  'move-the-rest sleep boredom sad-angry pain-of-care brothers-sisters visitors school x-ray-trip ' +
  'doctors-round your-own-body parents-too what-next coming-out going-home';

it('every topic of the list has its picture, in the order of the list', () => {
  expect(TOPIC_PICTURE_IDS).toEqual(TOPICS.split(' '));
});

describe.each(TOPIC_PICTURE_IDS)('the picture of %s', (id) => {
  it.each(SIDES)('stays inside its page, in absolute lines and curves (%s leg)', (side) => {
    const shapes = drawTopic(id, side);
    expect(shapes.length).toBeGreaterThan(8);
    staysInside(shapes, TOPIC_VIEW.width, TOPIC_VIEW.height);
  });

  it('uses colours the style sheet knows, and can be seen', () => {
    isSeenInKnownColours(
      drawTopic(id, 'left').filter((s) => !s.reach),
      0.8,
    );
  });

  it.each(SIDES)('is one plain drawing: paths in groups, no text, no more than 9 kB (%s leg)', (side) => {
    isOnePlainDrawing(topicMarkup(id, '', side), {
      viewBox: '0 0 400 300',
      bytes: 9000,
      also: ['data-part-name'],
    });
  });

  it('every point of the drawing is in its text', () => {
    const written = elementsOf(topicMarkup(id, '', 'right')).filter((e) => e.name === 'path');
    expect(written.map((e) => e.attributes['d'])).toEqual(drawTopic(id, 'right').map((s) => s.d));
  });

  it('with a name it is a picture that is told, without one it is decoration', () => {
    isToldByItsName((name) => topicMarkup(id, name), 12);
  });
});

describe('the pictures of topics together', () => {
  // a clock and the order of the looks are not mirrored, only what is seen of the leg
  const OF_A_SIDE: TopicPictureId[] = ['first-hour', 'six-looks'];
  const drawn = (id: TopicPictureId, side: 'left' | 'right' = 'left') => drawTopic(id, side).map((s) => s.d);

  it('no two share nine tenths of what is drawn: they can be told apart', () => {
    expect(
      alike(
        TOPIC_PICTURE_IDS.map((id) => [id, drawn(id)]),
        0.9,
      ),
    ).toEqual([]);
  });

  it('the left leg is the right leg mirrored, or no pulled leg is seen and both are one picture', () => {
    const same: TopicPictureId[] = [];
    for (const id of TOPIC_PICTURE_IDS) {
      const [left, right] = [drawn(id), drawn(id, 'right')];
      if (left.join() === right.join()) {
        same.push(id);
        // a bandage, plate, cord or weight of one leg is never shown to a family of the other
        expect(drawTopic(id, 'left').filter((s) => s.fill === 'plate' && s.part)).toEqual([]);
        expect(drawTopic(id, 'left').filter((s) => s.line === 'cord' || s.line === 'band-shade')).toEqual([]);
      } else if (!OF_A_SIDE.includes(id)) {
        const back = mirrored(drawTopic(id, 'left'), TOPIC_VIEW.width).map((s) => s.d);
        expect(back).toEqual(right);
      }
    }
    expect(same).not.toContain('my-set-up');
    expect(same.length).toBeGreaterThan(0);
  });

  it('a clock runs clockwise for both legs', () => {
    const clock = (side: 'left' | 'right') => drawn('first-hour', side).slice(0, 3);
    expect(clock('left')).toEqual(clock('right'));
    expect(drawn('first-hour', 'left')).not.toEqual(drawn('first-hour', 'right'));
  });

  const PARTS: SetUpPart[] = [
    'bandage',
    'foot-plate',
    'cord',
    'wheel',
    'load',
    'foot-end',
    'heel-pad',
    'call-button',
  ];

  it('each part of the set-up is drawn, is named in the text, and can be met by a finger', () => {
    const markup = topicMarkup('my-set-up', '');
    expect(new Set([...markup.matchAll(/data-part-name="([^"]*)"/g)].map((m) => m[1]))).toEqual(
      new Set(PARTS),
    );
    const shapes = drawTopic('my-set-up', 'left');
    for (const part of PARTS) {
      const own = shapes.filter((s) => s.part === part);
      const seen = around(own.filter((s) => !s.reach));
      const met = around(own.filter((s) => s.reach));
      expect(met[2] - met[0]).toBeGreaterThanOrEqual(36);
      expect(met[3] - met[1]).toBeGreaterThanOrEqual(36);
      // what answers lies over what is drawn
      expect(Math.max(seen[0], met[0])).toBeLessThan(Math.min(seen[2], met[2]));
      expect(Math.max(seen[1], met[1])).toBeLessThan(Math.min(seen[3], met[3]));
    }
  });

  it('the middle of a part answers with that part: what lies over it is no other', () => {
    const shapes = drawTopic('my-set-up', 'left').filter((s) => s.reach);
    for (const [i, { d, part }] of shapes.entries()) {
      const [left, top, right, bottom] = around([{ d }]);
      const [x, y] = [(left + right) / 2, (top + bottom) / 2];
      for (const over of shapes.slice(i + 1)) {
        const box = around([over]);
        const hit = x > box[0] && x < box[2] && y > box[1] && y < box[3];
        expect(hit ? `${over.part} over ${part}` : '').toBe('');
      }
    }
  });

  it('only the picture of the set-up answers a touch', () => {
    for (const id of TOPIC_PICTURE_IDS)
      expect([id, topicMarkup(id, '').includes('spot-reach')]).toEqual([id, id === 'my-set-up']);
  });

  it('the hanging weight hangs free of floor and edge wherever bed and weight are drawn whole', () => {
    for (const id of TOPIC_PICTURE_IDS) {
      const load = drawTopic(id, 'right').filter((s) => s.part === 'load' && s.fill === 'bag');
      const floor = drawTopic(id, 'right').filter((s) => s.part === 'load' && s.fill === 'band-shade');
      if (load.length === 0 || floor.length === 0) continue;
      const [, , , bottom] = around(load);
      const [, ground] = around(floor);
      expect([id, bottom < ground - 10]).toEqual([id, true]);
    }
  });

  it('weigh less than 30 KiB, drawing code and all', async () => {
    expect(await packedKiB('src/scene/topics/pictures.ts', 'topicMarkup')).toBeLessThan(30);
  });
});
