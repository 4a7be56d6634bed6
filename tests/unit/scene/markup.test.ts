import { describe, expect, test } from 'vitest';
import { SIGN_IDS } from '#domain/signs/ids.ts';
import { sceneMarkup, thingMarkup } from '#scene/markup.ts';
import { drawScene } from '#scene/paths.ts';
import { pointsOf } from '#scene/shapes.ts';
import { drawThing } from '#scene/things.ts';
import type { SceneSpec } from '#scene/spec.ts';
import { signSpecs } from '#ui/sign-specs.ts';

const paths = (markup: string) => [...markup.matchAll(/ d="([^"]*)"/g)].map((match) => match[1]!);

describe('a picture as text', () => {
  test.each(SIGN_IDS)('%s: every point is where it was drawn, to a quarter of a unit', (sign) => {
    for (const spec of Object.values(signSpecs(sign, {})!) as SceneSpec[]) {
      const written = paths(sceneMarkup(spec, ''));
      const { shapes } = drawScene(spec);
      expect(written).toHaveLength(shapes.length);
      shapes.forEach(({ d }, i) => {
        expect(written[i]!.replace(/[^A-Z]/g, '')).toBe(d.replace(/[^A-Z]/g, ''));
        const [drawn, sent] = [pointsOf(d), pointsOf(written[i]!)];
        const off = drawn.map((p, k) => Math.max(Math.abs(p.x - sent[k]!.x), Math.abs(p.y - sent[k]!.y)));
        expect(Math.max(...off)).toBeLessThan(0.26);
      });
    }
  });

  test('small things keep their tenths', () => {
    expect(paths(thingMarkup('call-button', ''))).toEqual(drawThing('call-button').shapes.map((s) => s.d));
    expect(paths(thingMarkup('call-button', '')).join('')).toMatch(/\.[1-46-9]/);
  });

  test('a name is escaped', () => {
    expect(thingMarkup('call-button', '"<&>"')).toContain('aria-label="&quot;&lt;&amp;&gt;&quot;"');
  });
});
