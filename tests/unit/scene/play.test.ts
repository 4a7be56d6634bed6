import { readFileSync } from 'node:fs';
import path from 'node:path';
import { gzipSync } from 'node:zlib';
import { build } from 'vite';
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

const root = path.resolve(import.meta.dirname, '../../..');
const styles = readFileSync(path.join(root, 'src/styles/scene.css'), 'utf8');
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
    for (const { d } of picture.shapes) {
      expect(d).toMatch(/^M[\d. ]+([MLCQ][\d. ]+|Z)+$/);
      const own = pointsOf(d);
      expect(own.length).toBeGreaterThan(0);
      expect(own.filter((p) => !(p.x >= 0 && p.x <= 120 && p.y >= 0 && p.y <= 120))).toEqual([]);
    }
  });

  it('uses colours the style sheet knows, and can be seen', () => {
    for (const { fill, line, weight } of picture.shapes) {
      expect(fill || line).toBeTruthy();
      if (fill) expect(styles).toContain(`.f-${fill} {`);
      if (line) expect(styles).toContain(`.l-${line} {`);
      if (line) expect(weight).toBeGreaterThan(0.7);
    }
  });

  it('is light, and holds no text', () => {
    expect(Buffer.byteLength(markup)).toBeLessThanOrEqual(4500);
    expect(markup).toMatch(/^<svg[^<>]*><g[^<>]*>(<path [^<>]*\/>)+<\/g><\/svg>$/);
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
    const drawn = IDEA_PICTURE_IDS.map((id) => ({
      id,
      parts: new Set(drawIdea(id).shapes.map((s) => JSON.stringify(s))),
    }));
    const weigh = (parts: string[]) => parts.reduce((sum, part) => sum + part.length, 0);
    const alike = drawn.flatMap((a, i) =>
      drawn.slice(i + 1).flatMap((b) => {
        const shared = weigh([...a.parts].filter((part) => b.parts.has(part)));
        return shared > 0.9 * weigh([...new Set([...a.parts, ...b.parts])]) ? [`${a.id} = ${b.id}`] : [];
      }),
    );
    expect(alike).toEqual([]);
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

  it('a name is escaped', () => {
    expect(ideaMarkup('hand-in-hand', '"<&>"')).toContain('aria-label="&quot;&lt;&amp;&gt;&quot;"');
    expect(ideaMarkup('hand-in-hand', '"<&>"')).toContain('role="img"');
  });

  it('an idea only for older children shows the older child', () => {
    // the eyes of an older child stand higher in the face
    const eyes = (id: 'two-sides' | 'hum-guess') =>
      drawIdea(id).shapes.find((s) => s.line === 'white' && !s.fill && s.weight! > 4)!;
    expect(pointsOf(eyes('two-sides').d)[0]!.y).toBeLessThan(pointsOf(eyes('hum-guess').d)[0]!.y);
  });

  it('weigh at most 26 KiB, drawing code and all', async () => {
    const result = await build({
      root,
      configFile: false,
      logLevel: 'error',
      build: {
        write: false,
        target: 'es2022',
        modulePreload: false,
        rollupOptions: {
          input: path.join(root, 'src/scene/play/markup.ts'),
          preserveEntrySignatures: 'strict',
        },
      },
    });
    const outputs = (Array.isArray(result) ? result : [result]).flatMap((r) =>
      'output' in r ? r.output : [],
    );
    const code = outputs.map((o) => ('code' in o ? o.code : '')).join('');
    expect(code).toContain('ideaMarkup');
    expect(gzipSync(code).length).toBeLessThanOrEqual(26 * 1024);
  });
});
