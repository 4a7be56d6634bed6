/** What every drawn picture keeps, whatever it shows: read from its shapes and from its text. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { gzipSync } from 'node:zlib';
import fc from 'fast-check';
import { build } from 'vite';
import { expect } from 'vitest';
import { pointsOf, type Shape } from '#scene/shapes.ts';

const root = path.resolve(import.meta.dirname, '../..');
const styles = readFileSync(path.join(root, 'src/styles/scene.css'), 'utf8');

/** The box around all points of some shapes: left, top, right, bottom. */
export function around(shapes: readonly Pick<Shape, 'd'>[]) {
  const own = shapes.flatMap((s) => pointsOf(s.d));
  const [xs, ys] = [own.map((p) => p.x), own.map((p) => p.y)];
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)] as const;
}

/** Every point lies on the page, and every path is made of absolute lines and curves. */
export function staysInside(shapes: readonly Shape[], width: number, height: number): void {
  for (const { d } of shapes) {
    expect(d).toMatch(/^M[\d. ]+([MLCQ][\d. ]+|Z)+$/);
    const own = pointsOf(d);
    expect(own.length).toBeGreaterThan(1);
    expect(own.filter((p) => !(p.x >= 0 && p.x <= width && p.y >= 0 && p.y <= height))).toEqual([]);
  }
}

/** Each shape is filled or lined, in colours that the style sheet has, and no line is too thin to be seen. */
export function isSeenInKnownColours(shapes: readonly Shape[], thinnest: number): void {
  for (const { fill, line, weight } of shapes) {
    expect(fill || line).toBeTruthy();
    if (fill) expect(styles).toContain(`.f-${fill} {`);
    if (line) expect(styles).toContain(`.l-${line} {`);
    if (line && weight !== undefined) expect(weight).toBeGreaterThan(thinnest);
  }
}

interface Element {
  name: string;
  attributes: Record<string, string>;
}

/** Reads the little XML a picture is written in: tags that close in order, attributes in double quotes. */
export function elementsOf(xml: string): Element[] {
  const elements: Element[] = [];
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

const DRAWN_WITH = ['d', 'class', 'stroke', 'stroke-width', 'stroke-dasharray'];

/** Paths in groups, in classes that the style sheet has, of bounded size, and nothing else: no text, no style. */
export function isOnePlainDrawing(
  markup: string,
  { viewBox, bytes, also = [] }: { viewBox: string; bytes: number; also?: readonly string[] },
): void {
  expect(Buffer.byteLength(markup)).toBeLessThanOrEqual(bytes);
  const [svg, ...inside] = elementsOf(markup);
  expect(svg!.name).toBe('svg');
  expect(svg!.attributes['viewBox']).toBe(viewBox);
  expect(inside.filter((e) => e.name !== 'path' && e.name !== 'g')).toEqual([]);
  const classes = inside.flatMap((e) => (e.attributes['class'] ?? '').split(' ')).filter(Boolean);
  for (const one of new Set(classes)) expect(styles).toContain(`.${one} {`);
  const allowed = [...DRAWN_WITH, ...also];
  expect(inside.flatMap((e) => Object.keys(e.attributes)).filter((key) => !allowed.includes(key))).toEqual(
    [],
  );
}

/** With a name, whatever it holds, a picture is told by it; without one it is decoration. */
export function isToldByItsName(markupOf: (name: string) => string, numRuns: number): void {
  fc.assert(
    fc.property(fc.string({ minLength: 1 }), (name) => {
      const { attributes } = elementsOf(markupOf(name))[0]!;
      expect(attributes['role']).toBe('img');
      expect(attributes['aria-hidden']).toBeUndefined();
      const told = attributes['aria-label']!.replaceAll('&lt;', '<')
        .replaceAll('&gt;', '>')
        .replaceAll('&quot;', '"')
        .replaceAll('&amp;', '&');
      expect(told).toBe(name);
    }),
    { numRuns },
  );
  const { attributes } = elementsOf(markupOf(''))[0]!;
  expect(attributes['aria-hidden']).toBe('true');
  expect(attributes['role']).toBeUndefined();
  expect(attributes['aria-label']).toBeUndefined();
}

/** Pairs that share more than a share of what is drawn, as "a = b". Units: `most` from 0 to 1, by length of text. */
export function alike(pictures: readonly (readonly [id: string, parts: readonly string[]])[], most: number) {
  const weigh = (parts: readonly string[]) => parts.reduce((sum, part) => sum + part.length, 0);
  const all = pictures.map(([id, parts]) => ({ id, parts: new Set(parts) }));
  return all.flatMap((a, i) =>
    all.slice(i + 1).flatMap((b) => {
      const shared = weigh([...a.parts].filter((part) => b.parts.has(part)));
      return shared > most * weigh([...new Set([...a.parts, ...b.parts])]) ? [`${a.id} = ${b.id}`] : [];
    }),
  );
}

/**
 * How much drawing code is sent for one module, packed; what it must bring is looked for in it.
 *
 * Units: KiB after gzip.
 */
export async function packedKiB(file: string, brings: string): Promise<number> {
  const result = await build({
    root,
    configFile: false,
    logLevel: 'error',
    build: {
      write: false,
      target: 'es2022',
      modulePreload: false,
      rollupOptions: { input: path.join(root, file), preserveEntrySignatures: 'strict' },
    },
  });
  const outputs = (Array.isArray(result) ? result : [result]).flatMap((r) => ('output' in r ? r.output : []));
  const code = outputs.map((o) => ('code' in o ? o.code : '')).join('');
  expect(code).toContain(brings);
  return gzipSync(code).length / 1024;
}
