import { readFileSync } from 'node:fs';
import path from 'node:path';
import { gzipSync } from 'node:zlib';
import fc from 'fast-check';
import { build } from 'vite';
import { describe, expect, it } from 'vitest';
import { MOMENT_CHOICES } from '#domain/day/choices.ts';
import { FEELINGS } from '#domain/day/feelings.ts';
import { DAY_EVENT_IDS } from '#domain/day/ids.ts';
import { HOLD_UP_CARDS } from '#domain/day/private.ts';
import { EDGE_PICTURES, JOBS, NIGHT_THINGS } from '#domain/day/touch.ts';
import { DAY_SIZE } from '#scene/day/page.ts';
import { DAY_PICTURE_IDS, dayMarkup, drawDay, type DayPictureId } from '#scene/day/pictures.ts';
import { mirrored } from '#scene/parts/points.ts';
import { pointsOf, type Shape } from '#scene/shapes.ts';

const root = path.resolve(import.meta.dirname, '../../..');
const styles = readFileSync(path.join(root, 'src/styles/scene.css'), 'utf8');
const SIDES = ['left', 'right'] as const;

/** Reads the little XML a picture is written in: tags that close in order, attributes in double quotes. */
function parse(xml: string): { name: string; attributes: Record<string, string> }[] {
  const elements: ReturnType<typeof parse> = [];
  const open: string[] = [];
  let read = 0;
  for (const tag of xml.matchAll(/<(\/?)([a-z]+)((?: [a-zA-Z-]+(?:="[^"<>]*")?)*)(\/?)>/g)) {
    // nothing stands between two tags
    expect(tag.index).toBe(read);
    read += tag[0].length;
    const [, closing, name, attributes, alone] = tag as unknown as [string, string, string, string, string];
    if (closing) {
      expect(open.pop()).toBe(name);
      continue;
    }
    const pairs = [...attributes.matchAll(/ ([a-zA-Z-]+)(?:="([^"]*)")?/g)].map((m) => [m[1]!, m[2] ?? '']);
    expect(new Set(pairs.map(([key]) => key)).size).toBe(pairs.length);
    elements.push({ name, attributes: Object.fromEntries(pairs) as Record<string, string> });
    if (!alone) open.push(name);
  }
  expect(read).toBe(xml.length);
  expect(open).toEqual([]);
  return elements;
}

/** The box around all points of some shapes: left, top, right, bottom. */
function around(shapes: readonly Shape[]) {
  const own = shapes.flatMap((s) => pointsOf(s.d));
  const [xs, ys] = [own.map((p) => p.x), own.map((p) => p.y)];
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)] as const;
}

const PREFIXED: [string, readonly string[]][] = [
  ['', DAY_EVENT_IDS],
  ['feel-', FEELINGS],
  ['', EDGE_PICTURES],
  ['job-', JOBS],
  ['card-', HOLD_UP_CARDS],
  ['choose-', Object.values(MOMENT_CHOICES).flat()],
  ['', NIGHT_THINGS],
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
    for (const { d } of shapes) {
      expect(d).toMatch(/^M[\d. ]+([MLCQ][\d. ]+|Z)+$/);
      const own = pointsOf(d);
      expect(own.length).toBeGreaterThan(1);
      expect(own.filter((p) => !(p.x >= 0 && p.x <= DAY_SIZE && p.y >= 0 && p.y <= DAY_SIZE))).toEqual([]);
    }
  });

  it('fills its square, so that it can be read from a pillow', () => {
    const [left, top, right, bottom] = around(drawDay(id));
    expect(Math.max(right - left, bottom - top)).toBeGreaterThanOrEqual(0.85 * DAY_SIZE);
  });

  it('uses colours the style sheet knows, and can be seen', () => {
    for (const { fill, line, weight } of drawDay(id)) {
      expect(fill || line).toBeTruthy();
      if (fill) expect(styles).toContain(`.f-${fill} {`);
      if (line) expect(styles).toContain(`.l-${line} {`);
      if (line && weight !== undefined) expect(weight).toBeGreaterThan(0.8);
    }
  });

  it.each(SIDES)('is one plain drawing: paths in a group, no text, no more than 4.5 kB (%s leg)', (side) => {
    const markup = dayMarkup(id, '', side);
    expect(Buffer.byteLength(markup)).toBeLessThanOrEqual(4500);
    const [svg, ...inside] = parse(markup);
    expect(svg!.name).toBe('svg');
    expect(svg!.attributes['viewBox']).toBe(`0 0 ${DAY_SIZE} ${DAY_SIZE}`);
    expect(inside.filter((e) => e.name !== 'path' && e.name !== 'g')).toEqual([]);
    const classes = inside.flatMap((e) => (e.attributes['class'] ?? '').split(' ')).filter(Boolean);
    for (const one of new Set(classes)) expect(styles).toContain(`.${one} {`);
    const allowed = ['d', 'class', 'stroke', 'stroke-width', 'stroke-dasharray'];
    expect(inside.flatMap((e) => Object.keys(e.attributes)).filter((key) => !allowed.includes(key))).toEqual(
      [],
    );
  });

  it('every shape is in its text as it was drawn: points, fill and line', () => {
    const written = parse(dayMarkup(id, '', 'right')).filter((e) => e.name === 'path');
    const drawn = drawDay(id, 'right');
    expect(written.map((e) => e.attributes['d'])).toEqual(drawn.map((s) => s.d));
    const filled = (e: (typeof written)[number]) => (e.attributes['class'] ?? '').includes('f-');
    expect(written.map(filled)).toEqual(drawn.map((s) => Boolean(s.fill)));
    expect(written.map((e) => e.attributes['stroke'] === 'none')).toEqual(drawn.map((s) => !s.line));
  });

  it('with a name it is a picture that is told, without one it is decoration', () => {
    fc.assert(
      fc.property(fc.string({ minLength: 1 }), (label) => {
        const { attributes } = parse(dayMarkup(id, label))[0]!;
        expect(attributes['role']).toBe('img');
        expect(attributes['aria-hidden']).toBeUndefined();
        const told = attributes['aria-label']!.replaceAll('&lt;', '<')
          .replaceAll('&gt;', '>')
          .replaceAll('&quot;', '"')
          .replaceAll('&amp;', '&');
        expect(told).toBe(label);
      }),
      { numRuns: 8 },
    );
    const { attributes } = parse(dayMarkup(id))[0]!;
    expect(attributes['aria-hidden']).toBe('true');
    expect(attributes['role']).toBeUndefined();
    expect(attributes['aria-label']).toBeUndefined();
  });
});

describe('the pictures of the day together', () => {
  const drawn = (id: DayPictureId, side: 'left' | 'right' = 'left') => drawDay(id, side).map((s) => s.d);

  it('no two share four fifths of what is drawn: they can be told apart', () => {
    const weigh = (parts: string[]) => parts.reduce((sum, part) => sum + part.length, 0);
    const all = DAY_PICTURE_IDS.map((id) => ({ id, parts: new Set(drawn(id)) }));
    const alike = all.flatMap((a, i) =>
      all.slice(i + 1).flatMap((b) => {
        const shared = weigh([...a.parts].filter((part) => b.parts.has(part)));
        return shared > 0.8 * weigh([...new Set([...a.parts, ...b.parts])]) ? [`${a.id} = ${b.id}`] : [];
      }),
    );
    expect(alike).toEqual([]);
  });

  it('the left leg is the right leg mirrored, or no pulled leg is seen and both are one picture', () => {
    const both: DayPictureId[] = [];
    for (const id of DAY_PICTURE_IDS) {
      const [left, right] = [drawn(id, 'left'), drawn(id, 'right')];
      if (left.join() === right.join()) {
        both.push(id);
        continue;
      }
      expect(mirrored(drawDay(id, 'left'), DAY_SIZE).map((s) => s.d)).toEqual(right);
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
    expect(ball('choose-left-hand')).toBeLessThan(DAY_SIZE / 2);
    expect(ball('choose-right-hand')).toBeGreaterThan(DAY_SIZE / 2);
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
    const result = await build({
      root,
      configFile: false,
      logLevel: 'error',
      build: {
        write: false,
        target: 'es2022',
        modulePreload: false,
        rollupOptions: {
          input: path.join(root, 'src/scene/day/pictures.ts'),
          preserveEntrySignatures: 'strict',
        },
      },
    });
    const outputs = (Array.isArray(result) ? result : [result]).flatMap((r) =>
      'output' in r ? r.output : [],
    );
    const code = outputs.map((o) => ('code' in o ? o.code : '')).join('');
    expect(code).toContain('dayMarkup');
    expect(gzipSync(code).length).toBeLessThan(22 * 1024);
  });
});
