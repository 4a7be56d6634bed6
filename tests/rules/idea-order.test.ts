import { describe, expect, it } from 'vitest';
import { IDEA_ORDER, THING_ORDER } from '#content/idea-order.ts';
import { IDEA_IDS, THING_IDS } from '#content/ideas.ts';

// that the first of them never change their places is in tests/reference/play-codes.test.ts
describe('the places of ideas and things in codes', () => {
  it('are there for every idea and every thing, each once, and for nothing else', () => {
    expect([...IDEA_ORDER].sort()).toEqual([...IDEA_IDS].sort());
    expect([...THING_ORDER].sort()).toEqual([...THING_IDS].sort());
  });

  it('cannot be moved by accident while the page runs', () => {
    expect(Object.isFrozen(IDEA_ORDER) && Object.isFrozen(THING_ORDER)).toBe(true);
  });
});
