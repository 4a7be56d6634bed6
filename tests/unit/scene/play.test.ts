import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { drawPlayThing, PLAY_THINGS, type PlayThingId } from '#scene/play/compose.ts';
import { drawIdea, IDEA_PICTURE_IDS } from '#scene/play/ideas.ts';
import { drawMoment, MOMENT_PICTURE_IDS } from '#scene/play/moments.ts';
import { ideaMarkup, momentMarkup, playThingMarkup } from '#scene/play/markup.ts';
import { MARKS } from '#scene/play/marks.ts';
import { ON_PAPER } from '#scene/play/on-paper.ts';
import { PROPS } from '#scene/play/props.ts';
import { SMALL } from '#scene/play/small.ts';
import { pointsOf, type Picture } from '#scene/shapes.ts';
import {
  alike,
  isOnePlainDrawing,
  isSeenInKnownColours,
  isToldByItsName,
  packedKiB,
  staysInside,
} from '../../helpers/pictures.ts';

const root = path.resolve(import.meta.dirname, '../../..');
const things = Object.keys(PLAY_THINGS) as PlayThingId[];

/** Every play picture by a name of its own, as numbers and as text. */
const pictures: [string, Picture, string][] = [
  ...IDEA_PICTURE_IDS.map((id): [string, Picture, string] => [id, drawIdea(id), ideaMarkup(id, '')]),
  ...MOMENT_PICTURE_IDS.map((id): [string, Picture, string] => [
    `moment ${id}`,
    drawMoment(id),
    momentMarkup(id, ''),
  ]),
  ...things.map((id): [string, Picture, string] => [
    `thing ${id}`,
    drawPlayThing(id),
    playThingMarkup(id, ''),
  ]),
];
const drawnBy = ({ shapes }: Picture) => shapes.map((s) => s.d).join('|');

describe.each(pictures)('the play picture %s', (_, picture, markup) => {
  it('stays inside its square, in absolute lines and curves', () => {
    expect([picture.width, picture.height]).toEqual([120, 120]);
    expect(picture.shapes.length).toBeGreaterThan(1);
    staysInside(picture.shapes, 120, 120);
  });

  it('uses colours the style sheet knows, and can be seen', () => {
    isSeenInKnownColours(picture.shapes, 0.7);
  });

  it('is light, and holds no text', () => {
    isOnePlainDrawing(markup, { viewBox: '0 0 120 120', bytes: 4500 });
    expect(markup).toContain('aria-hidden="true"');
  });
});

describe('the play pictures together', () => {
  it('no two are the same drawing', () => {
    const seen = new Map<string, string[]>();
    for (const [name, picture] of pictures)
      seen.set(drawnBy(picture), [...(seen.get(drawnBy(picture)) ?? []), name]);
    expect([...seen.values()].filter((names) => names.length > 1)).toEqual([]);
  });

  it('no two ideas share nine tenths of what is drawn: they can be told apart', () => {
    expect(
      alike(
        IDEA_PICTURE_IDS.map((id) => [id, drawIdea(id).shapes.map((s) => JSON.stringify(s))]),
        0.9,
      ),
    ).toEqual([]);
  });

  it('nothing drawn is left unused', () => {
    // a small drawing of no picture would be sent to every family for nothing
    const table = ['ideas.ts', 'moments.ts']
      .map((file) => readFileSync(path.join(root, 'src/scene/play', file), 'utf8'))
      .join('');
    const small = [SMALL, MARKS, ON_PAPER, PROPS].flatMap((drawings) => Object.keys(drawings));
    expect(small.filter((id) => !table.includes(`['${id}',`))).toEqual([]);
  });

  it('every point of a drawing is in its text', () => {
    for (const [, picture, markup] of pictures)
      expect([...markup.matchAll(/ d="([^"]*)"/g)].map((m) => m[1])).toEqual(picture.shapes.map((s) => s.d));
  });

  it('a line without a fill stays unfilled, a fill without a line stays unlined', () => {
    for (const [, { shapes }, markup] of pictures) {
      const paths = markup.match(/<path [^>]*>/g)!;
      shapes.forEach(({ fill, line }, i) => {
        expect(paths[i]!.includes('class="f-')).toBe(Boolean(fill));
        expect(paths[i]!.includes('stroke="none"')).toBe(!line);
      });
    }
  });

  it('no cord is drawn: games stay away from the pulled leg', () => {
    // the colour belongs to the cord alone, in every picture that shows it
    const own = pictures.filter(([, { shapes }]) =>
      shapes.some(({ fill, line }) => fill === 'cord' || line === 'cord'),
    );
    expect(own.map(([name]) => name)).toEqual([]);
  });

  it('with a name it is a picture that is told, without one it is decoration', () => {
    isToldByItsName((name) => ideaMarkup('hand-in-hand', name), 12);
  });

  it('an idea only for older children shows the older child', () => {
    // the eyes of an older child stand higher in the face
    const eyes = (id: 'two-sides' | 'hum-guess') =>
      drawIdea(id).shapes.find((s) => s.line === 'white' && !s.fill && s.weight! > 4)!;
    expect(pointsOf(eyes('two-sides').d)[0]!.y).toBeLessThan(pointsOf(eyes('hum-guess').d)[0]!.y);
  });

  it('weigh at most 26 KiB, drawing code and all', async () => {
    expect(await packedKiB('src/scene/play/markup.ts', 'ideaMarkup')).toBeLessThanOrEqual(26);
  });
});
