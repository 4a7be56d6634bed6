/** Which modules share a script (.ci/together.mjs): a name that no module bears any more would only seem to hold. */
import { readdirSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { groups, TOGETHER } from '../../.ci/together.mjs';
import { root } from '../helpers/locales.ts';

const modules = readdirSync(path.join(root, 'src'), { recursive: true, encoding: 'utf8' })
  .filter((name) => !name.endsWith('.json'))
  .map((name) => `${root}/src/${name}`);
const named = Object.values(TOGETHER).flat();

describe('modules that share a script', () => {
  it('are there, each named once', () => {
    const ours = named.filter((name) => name.startsWith('/src/'));
    expect(ours.length).toBeGreaterThan(80);
    for (const name of ours)
      expect([name, modules.filter((one) => one.includes(name)).length]).toEqual([name, 1]);
    expect(new Set(named).size).toBe(named.length);
  });

  it('are looked for in turn: what the first page needs belongs to its own file', () => {
    const order = [...groups].sort((a, b) => b.priority - a.priority);
    expect(order.map(({ name }) => name)).toEqual(['first', ...Object.keys(TOGETHER)]);
    const [first] = order;
    const isFirst = (id: string) => first!.test instanceof RegExp && first!.test.test(id);
    expect(modules.filter(isFirst).length).toBeGreaterThan(20);
    for (const name of named) expect([name, isFirst(`${root}${name}svelte`)]).toEqual([name, false]);
  });
});
