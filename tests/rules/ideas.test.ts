import { describe, expect, it } from 'vitest';
import { IDEA_IDS, IDEAS, THING_IDS } from '#content/ideas.ts';
import { CAUTIONS, KINDS, type Idea } from '#domain/play/types.ts';
import { wordsOf } from '#domain/text/counts.ts';
import { english, everyLanguage } from '../helpers/locales.ts';
import {
  firstMonth,
  forbiddenDeeds,
  formFaults,
  possibleAt,
  quieterFaults,
  safetyFaults,
} from './idea-faults.ts';

/** Ids as they were first shown to families; an id never changes, and none is taken away. */
const SHOWN = `
voice-story whisper-tale three-word-tale chain-tale listen-book sound-hunt song-swap hum-guess clap-echo
finger-drum rain-orchestra playlist-maker song-writing peek-cloth finger-folk hand-walk-rhyme stack-cups
in-and-out mirror-faces soft-book where-is-bear wave-hello slow-bubbles pinwheel-breath candle-fingers
soup-breath box-breath heavy-light safe-place-trip ceiling-map cloud-window bed-is-a-boat dial-the-ouch
cool-glove find-it-sheet counting-cards spot-change tray-memory alphabet-run twenty-asks which-would-you
true-or-made-up opposite-day category-ladder joke-of-the-bed tongue-twist word-teach dot-grid line-on-back
touch-bag smell-jars warm-cloth-hands hand-massage squeeze-friend clay-tray foil-sculpt sticker-street
window-clings torn-paper-picture paper-weave fold-a-beast one-hand-fold big-pasta-line door-sign bed-flag
bandaged-bear doctor-me mini-hospital puppet-news torch-shadows star-ceiling secret-codes number-crunch
crossing-words jigsaw-tray big-piece-puzzle card-pairs patience-cards card-duel board-on-tray noughts-long
half-a-picture blind-draw dictate-draw comic-strip colour-by-mood water-brush finger-window day-film
short-film quiet-game call-home letter-post ward-reporter bed-garden weather-desk bird-tally atlas-trip
recipe-dream count-down-leaf worry-box thank-map silent-signs arm-birds other-foot-abc statue-face
straw-race study-sprint language-drop podcast-self do-nothing big-cards name-the-parts animal-sounds
soft-and-rough follow-the-toy finger-taps same-song feel-the-hum stop-and-go toy-to-bed feed-the-toy
clean-toy who-is-this light-spot give-and-take toy-rides-breath warm-breath palm-press copy-my-face
which-hand under-the-cloth thick-pages find-a-colour name-song day-tell goodnight-round quiet-pat
damp-finger air-drawing hand-phone sock-whisper speaker-story calm-sounds home-voice two-readers two-sides
what-if top-five round-questions hand-in-hand
`
  .trim()
  .split(/\s+/);

const ideaOf = (id: string): Idea | undefined => IDEAS.find((idea) => idea.id === id);
const MONTHS = Array.from({ length: 17 * 12 }, (_, i) => 12 + i);
const one = ideaOf('hand-in-hand')!;
const changed = (change: Partial<Idea>): Idea => ({ ...one, ...change });

describe('the library', () => {
  it('holds at least 136 ideas, each once, and every one that was ever shown', () => {
    expect(IDEAS.length).toBeGreaterThanOrEqual(136);
    expect(new Set(IDEA_IDS).size).toBe(IDEAS.length);
    expect(SHOWN.filter((id) => !IDEA_IDS.some((known) => known === id))).toEqual([]);
    expect(IDEA_IDS.filter((id) => !SHOWN.includes(id))).toEqual([]);
  });

  it('says of every idea all there is to say', () => {
    expect(IDEAS.flatMap((idea) => formFaults(idea, THING_IDS))).toEqual([]);
  });

  it('uses every kind, every thing and every caution', () => {
    expect(KINDS.filter((kind) => !IDEAS.some((idea) => idea.kind === kind))).toEqual([]);
    expect(THING_IDS.filter((thing) => !IDEAS.some((idea) => idea.things.includes(thing)))).toEqual([]);
    expect(CAUTIONS.filter((caution) => !IDEAS.some((idea) => idea.cautions.includes(caution)))).toEqual([]);
  });

  it('names what could hurt wherever the things, the age or the place demand it', () => {
    expect(IDEAS.flatMap(safetyFaults)).toEqual([]);
  });

  it('has for each idea a quieter one that the same child can take up at once', () => {
    expect(IDEAS.flatMap((idea) => quieterFaults(idea, ideaOf))).toEqual([]);
  });

  it('leaves a way out of the loud: from every idea to the quietest in three steps', () => {
    const far = IDEAS.filter((idea) => {
      const first = ideaOf(idea.quietAlt)!;
      const second = ideaOf(first.quietAlt!)!;
      return ![first, second, ideaOf(second.quietAlt!)!].some((i) => i.noise === 0 && i.energy === 1);
    });
    expect(far.map(({ id }) => id)).toEqual([]);
  });
});

describe('a child who lies flat', () => {
  // worst bed of the ward: isolation, lying flat, in each month of childhood from the first birthday
  const thin = (hands: 0 | 1, least: number, of: (idea: Idea) => boolean = () => true) =>
    MONTHS.map((month) => ({ month, count: possibleAt(IDEAS, month, hands).filter(of).length }))
      .filter(({ count }) => count < least)
      .map(({ month, count }) => `${Math.floor(month / 12)} y ${month % 12} m: ${count} of ${least}`);
  const clean = (idea: Idea) => idea.wipe !== 'no';

  it.each([0, 1] as const)('has a dozen ideas at any age with %i hands free', (hands) => {
    expect(thin(hands, 12, clean)).toEqual([]);
  });

  it('has four for a needle and four for bandage care at any age, with no hand at all', () => {
    expect(thin(0, 4, (idea) => idea.moments.includes('needle'))).toEqual([]);
    expect(thin(0, 4, (idea) => idea.moments.includes('bandage'))).toEqual([]);
  });

  it('has four without a sound at any age, with no hand at all', () => {
    expect(thin(0, 4, (idea) => idea.noise === 0)).toEqual([]);
  });

  it('has, under five, 25 ideas with one hand, nothing small and no cord', () => {
    const small = possibleAt(IDEAS, 24, 1).filter(
      (idea) => clean(idea) && !idea.cautions.includes('small-parts') && !idea.cautions.includes('cord'),
    );
    expect(small.length).toBeGreaterThanOrEqual(25);
  });
});

describe('a planted fault is seen:', () => {
  it('nothing is wrong with the idea they are planted in', () => {
    expect([...formFaults(one, THING_IDS), ...safetyFaults(one), ...quieterFaults(one, ideaOf)]).toEqual([]);
  });

  it.each<[string, Partial<Idea>]>([
    ['an id in capitals', { id: 'Hand' }],
    ['a kind nobody knows', { kind: 'sport' as Idea['kind'] }],
    ['minutes the wrong way round', { minutes: [20, 5] }],
    ['minutes of an afternoon', { minutes: [20, 200] }],
    ['no minute', { minutes: [0, 5] }],
    ['an age before the first birthday', { ages: [0, 5] }],
    ['an age of a grown-up', { ages: [3, 18] }],
    ['months of another year', { ages: [1, 4], fromMonths: 30 }],
    ['three hands', { hands: 3 as 2 }],
    ['no energy', { energy: 0 as 1 }],
    ['half a mess', { mess: 0.5 as 1 }],
    ['a noise below none', { noise: -1 as 0 }],
    ['a mind taken up by nothing', { absorbs: 0 as 1 }],
    ['no quieter idea', { quietAlt: undefined as never }],
    ['a thing that is not in the list', { things: ['trampoline'] }],
    ['a caution that is none', { cautions: ['noise' as 'ears'] }],
    ['a caution twice', { cautions: ['ears', 'ears'] }],
  ])('%s', (_name, change) => {
    expect(formFaults(changed(change), THING_IDS)).toHaveLength(1);
  });

  it.each<[string, Partial<Idea>]>([
    ['small parts for a child of two', { ages: [2, 9], cautions: ['small-parts'] }],
    ['a cord for a child of two and a half', { ages: [2, 9], fromMonths: 35, cautions: ['cord'] }],
    ['stickers without their caution', { things: ['stickers'], wipe: 'leave' }],
    [
      'a film heard through a lead',
      { ages: [3, 9], things: ['player'], cautions: ['ears'], noise: 1, dark: false },
    ],
    ['a pen for a child of five alone', { ages: [5, 9], things: ['pen'], who: 'either' }],
    ['a torch without its caution', { things: ['torch'], dark: false }],
    ['a torch in the dark room', { things: ['torch'], cautions: ['light'] }],
    ['scissors and the child alone', { who: 'alone', cautions: ['scissors'] }],
    ['something to throw and no grown-up', { who: 'either', cautions: ['throwing'] }],
    ['a screen under two', { ages: [1, 9], screen: 'yes', cautions: ['screen'], dark: false }],
    ['a screen nobody counts', { ages: [2, 9], screen: 'yes', dark: false }],
    ['a screen in the dark room', { ages: [2, 9], screen: 'yes', cautions: ['screen'] }],
    ['the head up and the legs in reach', { position: 'propped', tray: true, moments: [], suits: [] }],
    ['a tray lying flat', { tray: true, moments: [], suits: [] }],
    ['two hands at a needle', { hands: 2 }],
    ['a hard moment and no wish', { suits: [] }],
    ['two arms that drum', { hands: 2, kind: 'music', moments: [], suits: [] }],
    ['noise in a dark room', { noise: 1 }],
    ['something to look at in a dark room', { needs: ['sight'] }],
    ['nothing used, and thrown away after', { wipe: 'leave' }],
    ['paper wiped clean', { things: ['paper'] }],
    ['what is barred for everyone', { barred: ['balloon'] }],
    ['a loud idea and nobody there', { who: 'alone', noise: 2, dark: false }],
  ])('%s', (_name, change) => {
    expect(safetyFaults(changed(change))).toHaveLength(1);
  });

  it.each<[string, Partial<Idea>]>([
    ['an idea that is not there', { quietAlt: 'silence' }],
    ['itself', { quietAlt: 'hand-in-hand' }],
    ['one that makes noise', { noise: 2, quietAlt: 'finger-folk', ages: [1, 5] }],
    ['one that is livelier', { quietAlt: 'copy-my-face', ages: [1, 4], energy: 1 }],
    ['one for other ages', { quietAlt: 'thank-map' }],
    [
      'one that wants a hand',
      { quietAlt: 'mirror-faces', ages: [1, 6], things: ['mirror'], cautions: ['light'] },
    ],
    ['one with a grown-up', { quietAlt: 'day-tell', ages: [2, 12], who: 'alone' }],
    ['one with something to fetch', { quietAlt: 'cloud-window', ages: [3, 12] }],
    ['one the ward has to allow', { quietAlt: 'hand-massage' }],
    ['one with a caution', { quietAlt: 'soup-breath', ages: [3, 9] }],
  ])('quieter is %s', (_name, change) => {
    expect(quieterFaults(changed(change), ideaOf)).toHaveLength(1);
  });

  it('an idea begins on the birthday or in the month it says', () => {
    expect(firstMonth(changed({ ages: [2, 4] }))).toBe(24);
    expect(firstMonth(changed({ ages: [1, 4], fromMonths: 18 }))).toBe(18);
    const some = [changed({ ages: [1, 4], fromMonths: 18 })];
    const at = (month: number) => possibleAt(some, month, 0).length;
    expect([17, 18, 59, 60].map(at)).toEqual([0, 1, 1, 0]);
  });
});

describe('the words of the ideas', () => {
  const areaOf = (texts: Record<string, string>) =>
    Object.fromEntries(
      Object.entries(texts)
        .filter(([key]) => key.startsWith('ideas:'))
        .map(([key, text]) => [key.slice('ideas:'.length), text]),
    );
  const words = areaOf(english);
  const of = (group: string) => Object.keys(words).filter((key) => key.startsWith(`${group}.`));

  it('give every idea a name and one to three steps, and nothing else', () => {
    const keys = ['name', 'how1', 'how2', 'how3'];
    const wrong = IDEA_IDS.filter((id) => {
      const seen = of(id).map((key) => key.slice(id.length + 1));
      return seen.length < 2 || seen.join() !== keys.slice(0, seen.length).join();
    });
    expect(wrong).toEqual([]);
  });

  it('give every caution and every thing its words, and no words for what is not there', () => {
    const tops = new Set(Object.keys(words).map((key) => key.split('.')[0]!));
    expect([...tops].sort()).toEqual([...IDEA_IDS, 'cautions', 'things'].sort());
    expect(of('cautions').sort()).toEqual(CAUTIONS.map((caution) => `cautions.${caution}`).sort());
    expect(of('things').sort()).toEqual(THING_IDS.map((thing) => `things.${thing}`).sort());
  });

  it('keep an English name to five words, but for one of our own and one that must not send for a basin', () => {
    const long = IDEA_IDS.map((id) => words[`${id}.name`]!).filter((name) => wordsOf(name).length > 5);
    expect(long.sort()).toEqual(['A picture for each day behind us', 'Hand in cool water, in thought']);
  });

  // names of our own where a practitioner would hear one known tool
  it.each([
    ['counting-cards', 'How many windows?'],
    ['bandaged-bear', 'Bandage a soft toy'],
    ['cool-glove', 'Hand in cool water, in thought'],
    ['count-down-leaf', 'A picture for each day behind us'],
    ['colour-by-mood', "Colour today's page"],
    ['water-brush', 'Draw with water'],
    ['language-drop', 'Ten new words'],
  ])('%s is called "%s"', (id, name) => {
    expect(words[`${id}.name`]).toBe(name);
  });

  it.each(everyLanguage)('no two ideas have one name in %s', (_lang, texts) => {
    const names = IDEA_IDS.map((id) => texts[`ideas:${id}.name`]);
    expect(names.filter((name, i) => name === undefined || names.indexOf(name) !== i)).toEqual([]);
  });

  it('let nobody throw, tie, jump, shake, climb, kick or sit up', () => {
    const deeds = Object.fromEntries(Object.entries(words).filter(([key]) => /\.(?:name|how\d)$/.test(key)));
    expect(forbiddenDeeds(deeds)).toEqual([]);
    expect(
      forbiddenDeeds({ a: 'Throw the ball.', b: 'Tie it to the bed.', c: 'Your child sits up.' }),
    ).toHaveLength(3);
  });

  it('call what goes away before sleep a lead, never a cord: that word is for the traction', () => {
    // "cord" is the one word for the cord that pulls; a caution that takes things away must not name it
    expect(words['cautions.cord']).not.toMatch(/\bcord\b/iu);
    expect(words['cautions.above-waist']).toMatch(/\bcord\b/iu);
  });
});
