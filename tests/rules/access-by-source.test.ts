/**
 * Rows of the WCAG table in DEVELOPERS.md that no single page can show, because they say what is nowhere: looked for in
 * everything that is shipped. Source: WCAG 2.2, W3C Recommendation, 2023; the numbers of its criteria stand beside each.
 */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
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

  it('reads how the device is moved (2.5.4)', () => {
    expect(
      where(
        /devicemotion|deviceorientation|DeviceMotionEvent|DeviceOrientationEvent|Accelerometer|Gyroscope/,
      ),
    ).toEqual([]);
  });
});
