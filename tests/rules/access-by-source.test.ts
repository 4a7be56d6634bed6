/**
 * Rows of the WCAG table in DEVELOPERS.md that no single page can show, because they say what is nowhere: looked for in
 * everything that is shipped. Source: WCAG 2.2, W3C Recommendation, 2023; the numbers of its criteria stand beside each.
 */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { parse } from 'svelte/compiler';
import { describe, expect, it } from 'vitest';
import { root } from '../helpers/locales.ts';

const filesIn = (folder: string) =>
  readdirSync(path.join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => path.relative(root, path.join(parentPath, name)));
const shipped = [...filesIn('src'), ...filesIn('static')].filter((name) =>
  /\.(svelte|ts|js|css|html|webmanifest|json|svg)$/.test(name),
);
const text = (name: string) => readFileSync(path.join(root, name), 'utf8');
const where = (found: RegExp) => shipped.filter((name) => found.test(text(name)));

describe('nothing that is shipped', () => {
  it('is looked through in part only', () => {
    expect(shipped.length).toBeGreaterThan(300);
    expect(where(/<svelte:head>/).length).toBeGreaterThan(20);
  });

  it('plays sound or film of its own: the one film is the camera’s, muted (1.2.1–1.2.5, 1.4.2)', () => {
    const films = where(/<(audio|video|source|track)\b|new Audio\b|AudioContext/);
    for (const name of films)
      expect([name, /<video bind:this=\{video\}[^>]* muted\b/.test(text(name))]).toEqual([name, true]);
    expect(films.length).toBeGreaterThan(0);
    expect(
      filesIn('static').filter((name) => /\.(mp[34]|m4[av]|ogg|oga|opus|wav|webm|mov)$/i.test(name)),
    ).toEqual([]);
  });

  it('asks for one way to hold the device (1.3.4)', () => {
    expect(
      where(/orientation\s*\.\s*lock|["']?orientation["']?\s*:\s*["'](portrait|landscape|natural)/),
    ).toEqual([]);
  });

  it('draws words into a picture: only the graph of the notes has text, as text (1.4.5)', () => {
    expect(where(/<text\b|['"`]text['"`]\s*,\s*\{[^}]*\bx:/)).toEqual(['src/ui/NotePicture.svelte']);
  });

  it('shows something more while a finger or pointer is over it (1.4.13)', () => {
    // a native title on an element of its own; `title` of a component of ours is a heading
    expect(where(/<[a-z][a-z0-9]*\b[^<>]*\stitle=/)).toEqual([]);
    expect(where(/:hover[^{]*\{[^}]*\b(display|visibility|opacity|content)\s*:/)).toEqual([]);
  });

  it('blinks or moves without end (2.2.2, 2.3.1)', () => {
    expect(where(/animation[^;}]*\binfinite\b|iteration-count|<blink|<marquee|<animate\b/)).toEqual([]);
  });

  it('acts when a finger comes down: one button is held, and letting go ends it; a touch wakes or keeps awake (2.5.2)', () => {
    expect(
      where(/\bon(pointerdown|mousedown|touchstart)\b|['"](pointerdown|mousedown|touchstart)['"]/).sort(),
    ).toEqual([
      'src/routes/_live/Cover.svelte',
      'src/routes/_live/DayDark.svelte',
      'src/ui/LongPress.svelte',
    ]);
  });

  it('reads how the device is moved (2.5.4)', () => {
    expect(
      where(
        /devicemotion|deviceorientation|DeviceMotionEvent|DeviceOrientationEvent|Accelerometer|Gyroscope/,
      ),
    ).toEqual([]);
  });
});

/** A part of a component as its compiler reads it; only what is looked at here. */
interface Part {
  type: string;
  start: number;
  attributes?: { type: string; name: string; value: unknown }[];
  [branch: string]: unknown;
}
const BRANCHES = ['fragment', 'consequent', 'alternate', 'body', 'fallback'];

/** Every element of a component, with the kind of part it stands directly in. */
function elementsOf(name: string): { element: Part; inside: string; line: number }[] {
  const code = text(name);
  const below = (nodes: Part[], inside: string): { element: Part; inside: string; line: number }[] =>
    nodes.flatMap((element) => [
      ...(element.type === 'RegularElement'
        ? [{ element, inside, line: code.slice(0, element.start).split('\n').length }]
        : []),
      ...BRANCHES.flatMap((branch) => {
        const next = element[branch] as { nodes?: Part[] } | null | undefined;
        return next?.nodes ? below(next.nodes, element.type) : [];
      }),
    ]);
  return below(parse(code, { modern: true }).fragment.nodes as unknown as Part[], 'root');
}
const said = ({ attributes }: Part, name: string): string | undefined => {
  const value = attributes?.find((one) => one.type === 'Attribute' && one.name === name)?.value;
  return Array.isArray(value) ? String((value[0] as { data?: string }).data) : undefined;
};

// What comes together with its region is read out by some browsers and not by others. Source: WCAG 2.2, 4.1.3, technique
// ARIA22 (the container has the role before the message comes). Of a warning Core-AAM 1.2 has it told when it is shown.
describe('a message that is no warning', () => {
  /** Regions that stand or go with the whole part of the page around them, not with their words. */
  const WITH_ITS_PART = ['src/routes/_live/DayDoors.svelte', 'src/routes/_live/DeviceFoot.svelte'];
  /** They take the focus, and are read out by that. */
  const takesFocus = (element: Part) => element.attributes?.some(({ name }) => name === 'tabindex') ?? false;
  const regions = where(/role="status"|aria-live="polite"/)
    .filter((name) => name.endsWith('.svelte'))
    .flatMap((name) => elementsOf(name).map((found) => ({ name, ...found })))
    .filter(({ element }) => said(element, 'role') === 'status' || said(element, 'aria-live') === 'polite');

  it('comes into a region that stands before its words (4.1.3)', () => {
    const late = regions
      .filter(({ element, inside }) => /^(If|Each|Key)Block$/.test(inside) && !takesFocus(element))
      .filter(({ name, element }) => said(element, 'class') !== 'announced' && !WITH_ITS_PART.includes(name));
    expect(late.map(({ name, line }) => `${name}:${line}`)).toEqual([]);
    expect(regions.length).toBeGreaterThan(30);
  });

  it('stands empty until then: a region of its own holds its words under a condition', () => {
    const always = regions
      .filter(({ element }) => said(element, 'class') === 'announced')
      .filter(({ element }) => {
        const inside = (element.fragment as { nodes: Part[] }).nodes.filter(({ type }) => type !== 'Text');
        return !inside.every(({ type }) => /^(If|Each|Key)Block$/.test(type));
      });
    expect(always.map(({ name, line }) => `${name}:${line}`)).toEqual([]);
  });
});
