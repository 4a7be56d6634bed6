/**
 * The places of ideas and things in codes of a plan (domain/play-bed/travel.ts). The tables in ideas.ts may be sorted
 * anew; these lists grow at their ends only. What stands in them once stands there for ever, or old codes would name
 * another idea.
 */
import type { IdeaId, ThingId } from './ideas.ts';

/** Every idea of the library, in the order in which they came to it. */
// prettier-ignore
export const IDEA_ORDER: readonly IdeaId[] = Object.freeze([
  'voice-story', 'whisper-tale', 'three-word-tale', 'chain-tale', 'listen-book', 'sound-hunt', 'song-swap',
  'hum-guess', 'clap-echo', 'finger-drum', 'rain-orchestra', 'playlist-maker', 'song-writing',
  'peek-cloth', 'finger-folk', 'hand-walk-rhyme', 'stack-cups', 'in-and-out', 'mirror-faces', 'soft-book',
  'where-is-bear', 'wave-hello', 'slow-bubbles', 'pinwheel-breath', 'candle-fingers', 'soup-breath',
  'box-breath', 'heavy-light', 'safe-place-trip', 'ceiling-map', 'cloud-window', 'bed-is-a-boat',
  'dial-the-ouch', 'cool-glove', 'find-it-sheet', 'counting-cards', 'spot-change', 'tray-memory',
  'alphabet-run', 'twenty-asks', 'which-would-you', 'true-or-made-up', 'opposite-day', 'category-ladder',
  'joke-of-the-bed', 'tongue-twist', 'word-teach', 'dot-grid', 'line-on-back', 'touch-bag', 'smell-jars',
  'warm-cloth-hands', 'hand-massage', 'squeeze-friend', 'clay-tray', 'foil-sculpt', 'sticker-street',
  'window-clings', 'torn-paper-picture', 'paper-weave', 'fold-a-beast', 'one-hand-fold', 'big-pasta-line',
  'door-sign', 'bed-flag', 'bandaged-bear', 'doctor-me', 'mini-hospital', 'puppet-news', 'torch-shadows',
  'star-ceiling', 'secret-codes', 'number-crunch', 'crossing-words', 'jigsaw-tray', 'big-piece-puzzle',
  'card-pairs', 'patience-cards', 'card-duel', 'board-on-tray', 'noughts-long', 'half-a-picture',
  'blind-draw', 'dictate-draw', 'comic-strip', 'colour-by-mood', 'water-brush', 'finger-window',
  'day-film', 'short-film', 'quiet-game', 'call-home', 'letter-post', 'ward-reporter', 'bed-garden',
  'weather-desk', 'bird-tally', 'atlas-trip', 'recipe-dream', 'count-down-leaf', 'worry-box', 'thank-map',
  'silent-signs', 'arm-birds', 'other-foot-abc', 'statue-face', 'straw-race', 'study-sprint',
  'language-drop', 'podcast-self', 'do-nothing', 'big-cards', 'name-the-parts', 'animal-sounds',
  'soft-and-rough', 'follow-the-toy', 'finger-taps', 'same-song', 'feel-the-hum', 'stop-and-go',
  'toy-to-bed', 'feed-the-toy', 'clean-toy', 'who-is-this', 'light-spot', 'give-and-take',
  'toy-rides-breath', 'warm-breath', 'palm-press', 'copy-my-face', 'which-hand', 'under-the-cloth',
  'thick-pages', 'find-a-colour', 'name-song', 'day-tell', 'goodnight-round', 'quiet-pat', 'damp-finger',
  'air-drawing', 'hand-phone', 'sock-whisper', 'speaker-story', 'calm-sounds', 'home-voice', 'two-readers',
  'two-sides', 'what-if', 'top-five', 'round-questions', 'hand-in-hand',
] as const);

/** Every thing, in the order in which they came. */
// prettier-ignore
export const THING_ORDER: readonly ThingId[] = Object.freeze([
  'atlas', 'big-puzzle', 'blocks', 'board-book', 'board-game', 'book', 'box', 'bubbles', 'card', 'cards',
  'clings', 'cloth', 'cloth-book', 'cress', 'cups', 'dough', 'figures', 'foil', 'glue-stick', 'jars',
  'jigsaw', 'mirror', 'net', 'paper', 'paper-strips', 'pasta', 'pen', 'pencils', 'phone', 'photos',
  'picture-cards', 'pillowcase', 'pinwheel', 'player', 'print', 'raised-card', 'school-things', 'screen',
  'sock', 'soft-blocks', 'soft-squeeze', 'soft-strips', 'soft-toy', 'speaker', 'stickers', 'straws',
  'tape', 'torch', 'toy-kit', 'tray', 'tray-things', 'water-sheet', 'window', 'wipe-board',
] as const);
