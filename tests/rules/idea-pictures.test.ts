import { describe, expect, it } from 'vitest';
import { IDEAS, IDEA_IDS, THING_IDS } from '#content/ideas.ts';
import { PLAY_THINGS } from '#scene/play/compose.ts';
import { IDEA_PICTURE_IDS, OLDER_CHILD } from '#scene/play/ideas.ts';

// The drawing knows no content, so the two lists are held equal here.
describe('the pictures of the library', () => {
  it('every idea has a picture, and every picture an idea', () => {
    expect([...IDEA_PICTURE_IDS].sort()).toEqual([...IDEA_IDS].sort());
  });

  it('every thing to be fetched has a picture, and every picture a thing', () => {
    expect(Object.keys(PLAY_THINGS).sort()).toEqual([...THING_IDS].sort());
  });

  it('the older child is drawn for the ideas that begin at nine or later', () => {
    const older = IDEAS.filter((idea) => idea.ages[0] >= 9).map((idea) => idea.id);
    expect([...OLDER_CHILD].sort()).toEqual(older.sort());
  });
});
