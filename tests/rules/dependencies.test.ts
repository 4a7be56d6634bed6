/** Other people's code: few packages reach a family, each is pinned, and each has its reason in DEVELOPERS.md. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';

const root = path.resolve(import.meta.dirname, '../..');
const read = (file: string) => readFileSync(path.join(root, file), 'utf8');
interface Manifest {
  dependencies: Record<string, string>;
  devDependencies: Record<string, string>;
}
interface Locked {
  version: string;
  resolved?: string;
  integrity?: string;
  dependencies?: Record<string, string>;
  hasInstallScript?: boolean;
  dev?: boolean;
}
const { dependencies, devDependencies } = JSON.parse(read('package.json')) as Manifest;
const asked = { ...dependencies, ...devDependencies };
const locked = (JSON.parse(read('package-lock.json')) as { packages: Record<string, Locked> }).packages;
const inLock = (name: string) => locked[`node_modules/${name}`];

describe('packages', () => {
  it('are pinned to one version each, and the lock holds that one with its check sum', () => {
    expect(Object.keys(asked).length).toBeGreaterThan(10);
    for (const [name, version] of Object.entries(asked)) {
      expect(version, name).toMatch(/^\d+\.\d+\.\d+$/);
      expect(inLock(name)?.version, name).toBe(version);
    }
    const unchecked = Object.entries(locked).filter(([name, row]) => name !== '' && !row.integrity);
    expect(unchecked.map(([name]) => name)).toEqual([]);
  });

  it('that reach a family are few, and bring no others with them', () => {
    const shipped = Object.keys(dependencies);
    expect(shipped.length).toBeLessThanOrEqual(5);
    for (const name of shipped) {
      expect(inLock(name)?.dependencies ?? {}, name).toEqual({});
      expect(inLock(name)?.hasInstallScript, name).toBeUndefined();
    }
    // a peer that only the build has stands among those of the build
    const lockedForUse = Object.entries(locked)
      .filter(([place, row]) => place.startsWith('node_modules/') && !row.dev && !('optional' in row))
      .map(([place]) => place.slice('node_modules/'.length))
      .filter((name) => !(name in devDependencies));
    expect(lockedForUse.sort()).toEqual(shipped.sort());
  });

  it('each stand in DEVELOPERS.md with a reason, and none stands there that is gone', () => {
    const text = read('DEVELOPERS.md');
    const table = text.slice(text.indexOf('## Dependencies'), text.indexOf('Versions are exact'));
    const rows = table
      .split('\n')
      .filter((line) => line.startsWith('| ') && !/^\| (package|---)/.test(line))
      .map((line) =>
        line
          .slice(1, -1)
          .split('|')
          .map((cell) => cell.trim()),
      );
    const SHORT: Record<string, string> = {
      'adapter-static': '@sveltejs/adapter-static',
      '@sveltejs/kit 2': '@sveltejs/kit',
    };
    const told = rows.flatMap(([names]) => names!.split(', ').map((name) => SHORT[name] ?? name));
    expect(told.filter((name) => !(name in asked))).toEqual([]);
    expect(
      Object.keys(asked)
        .filter((name) => !told.includes(name))
        .sort(),
    ).toEqual([]);
    for (const [names, reason] of rows) expect(reason?.length, names).toBeGreaterThan(3);
  });
});
