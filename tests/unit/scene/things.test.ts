import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { drawThing, THING_IDS, type ThingId } from '#scene/things.ts';
import { SQUARE } from '#scene/things/pen.ts';
import { pointsOf } from '#scene/shapes.ts';

const styles = readFileSync(path.resolve(import.meta.dirname, '../../../src/styles/scene.css'), 'utf8');

describe.each([...THING_IDS])('the small picture %s', (id: ThingId) => {
  const { width, height, shapes } = drawThing(id);

  it('stays inside its square', () => {
    expect([width, height]).toEqual([SQUARE, SQUARE]);
    for (const { d } of shapes) {
      expect(d).not.toMatch(/NaN|Infinity|e-|[^MLCQZ0-9. -]/);
      expect(pointsOf(d).filter((p) => p.x < 0 || p.x > width || p.y < 0 || p.y > height)).toEqual([]);
    }
  });

  it('is drawn in ink with colours the style sheet knows', () => {
    expect(shapes.some((s) => s.line === 'ink')).toBe(true);
    for (const { fill, line } of shapes) {
      if (fill) expect(styles).toContain(`.f-${fill} {`);
      if (line) expect(styles).toContain(`.l-${line} {`);
    }
  });

  it('is light, and the same each time', () => {
    expect(shapes.reduce((sum, s) => sum + s.d.length + 60, 0)).toBeLessThan(9_000);
    expect(drawThing(id).shapes).toEqual(shapes);
  });
});

describe('the small pictures together', () => {
  it('are all different', () => {
    expect(new Set(THING_IDS.map((id) => JSON.stringify(drawThing(id)))).size).toBe(THING_IDS.length);
  });

  it('frame only the call that cannot wait, and frame it thickest', () => {
    const heaviest = (id: ThingId) => Math.max(...drawThing(id).shapes.map((s) => s.weight ?? 0));
    expect(heaviest('call-button-ring-now')).toBeGreaterThan(heaviest('call-button-tell-nurse'));
    expect(heaviest('call-button-ring-now')).toBeGreaterThan(heaviest('call-button-next-visit'));
    expect(heaviest('call-button-ring-now')).toBeGreaterThan(heaviest('call-button-not-sure'));
  });

  it('show the same hand on the same handset, pressed or about to press', () => {
    const [resting, pressed] = [drawThing('call-button'), drawThing('call-button-ring-now')];
    // the press adds its strokes and the frame, and takes nothing away
    expect(pressed.shapes).toHaveLength(resting.shapes.length + 2);
  });
});
