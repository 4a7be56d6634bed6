/**
 * A child who does not exist, to try the pages with: a girl of six, left leg, leg bandage on, four days and three
 * nights as two grown-ups might note them, in Spanish and Polish. Nobody's stay was taken as a model, and nothing
 * here is how a stay should go. What must be true at every hour is in tests/unit/content/made-up.test.ts.
 */
import { startCard, type BedCard } from '#domain/bed-card/card.ts';
import { isNight, localMinute } from '#domain/clock/night.ts';
import type { Entry, NewEntry } from '#domain/notes/entries.ts';
import type { QuestionId } from '#domain/notes/kinds.ts';
import { DAY_MINUTES, instant, type Instant, type Minutes } from '#domain/units.ts';
import { LOOKS, signsOfLook } from './signs.ts';
import { WARD } from './ward.ts';

type Phone = 'a' | 'b';
/** Of each phone its device id and who holds it. */
const PHONES = {
  a: { device: '5e0d01', by: 'grown-up-a' },
  b: { device: '7f3c42', by: 'grown-up-b' },
} as const;

type Clock = `${number}:${number}`;
/** Day of the stay, counted from 0; time on the wall; what was noted; a name where another note speaks of this one. */
type Row = readonly [day: number, at: Clock, what: NewEntry, name?: string];
interface Line {
  /** Minutes on the wall since midnight before the first day. */
  at: number;
  what: NewEntry;
  name?: string | undefined;
  /** Where it is not the phone at the bed. */
  phone?: Phone;
}

type Of<K extends Entry['kind'], F extends string> =
  Extract<Entry, { kind: K }> extends infer E ? (F extends keyof E ? E[F] : never) : never;
const drink = (amount: Of<'drink', 'amount'>, what: Of<'drink', 'what'>): NewEntry => ({
  kind: 'drink',
  amount,
  what,
});
const food = (amount: Of<'food', 'amount'>): NewEntry => ({ kind: 'food', amount });
const wee = (amount: Of<'wee', 'amount'>): NewEntry => ({ kind: 'wee', into: 'pan', amount });
const poo = (what: Of<'poo', 'what'>): NewEntry => ({ kind: 'poo', what });
const sleep = (what: Of<'sleep', 'what'>): NewEntry => ({ kind: 'sleep', what });
const care = (what: Of<'care', 'what'>): NewEntry => ({ kind: 'care', what });
const visit = (who: Of<'visit', 'who'>): NewEntry => ({ kind: 'visit', who });
const handOver = (what: Of<'bed-note', 'what'>): NewEntry => ({ kind: 'bed-note', what });
const play = (idea: string, again = true): NewEntry => ({ kind: 'play', idea, again });
const mood = (picture: Of<'mood', 'picture'>): NewEntry => ({ kind: 'mood', picture, by: 'child-shown' });
const sore = (value: 0 | 1 | 2 | 3, when: 'rest' | 'moving' = 'rest'): NewEntry => ({
  kind: 'sore',
  value,
  scale: 'steps',
  when,
  by: 'child-shown',
});
const seen = (sign: string): NewEntry => ({ kind: 'sign', sign, answer: 'different' });
const ask = (id: QuestionId): NewEntry => ({ kind: 'question', ask: id });
const TOLD: NewEntry = { kind: 'told' };
const BELL: NewEntry = { kind: 'bell' };
const CAME: NewEntry = { kind: 'nurse-came' };
const LOOKED: NewEntry = { kind: 'nurse-looked' };
const MEDICINE: NewEntry = { kind: 'medicine-told' };
const LOOK: NewEntry = {
  kind: 'look',
  answers: Object.fromEntries(LOOKS.flatMap(signsOfLook).map((sign) => [sign, 'like-usual'])),
};

/** A nurse asks how sore it is and looks, before the medicine that is told of a little later. */
const medicineRound = (day: number, at: Clock, told: Clock, value: 1 | 2): Row[] => [
  [day, at, sore(value)],
  [day, at, LOOKED],
  [day, told, MEDICINE],
];

/** The first hours, in minutes after the child came to the ward. */
const ARRIVAL: readonly (readonly [after: number, what: NewEntry])[] = [
  [0, poo('soft')],
  [12, care('x-ray')],
  [20, sore(2)],
  [25, MEDICINE],
  [34, mood('hiding')],
  [70, care('bandage')],
  [72, sore(3, 'moving')],
  [85, sore(1)],
  [90, LOOK],
];
/** From then on the rows below are taken. */
const SETTLED = 95;

const STORY: readonly Row[] = [
  [0, '09:20', wee('usual')],
  [0, '11:30', play('voice-story')],
  [0, '12:20', food('none')],
  [0, '13:10', sleep('nap')],
  [0, '16:20', visit('family')],
  [0, '17:40', food('some')],
  [0, '17:45', drink('half', 'water')],
  [0, '18:10', mood('curled-up')],
  [0, '18:40', wee('large')],
  [0, '19:40', ask('how-long-in-pull'), 'how-long'],
  [0, '20:20', play('song-swap')],
  [0, '21:05', sleep('fell-asleep')],
  [0, '23:40', sleep('woke')],
  [0, '23:45', wee('usual')],

  [1, '00:10', sleep('fell-asleep')],
  [1, '06:40', sleep('woke')],
  [1, '06:45', wee('large')],
  [1, '07:30', food('some')],
  [1, '08:40', care('round')],
  [1, '08:42', { kind: 'answer', what: 'later', question: 'how-long', by: 'nurse-shown' }],
  ...medicineRound(1, '09:40', '09:45', 2),
  [1, '10:25', sore(1)],
  [1, '10:30', care('bandage')],
  [1, '10:32', sore(3, 'moving')],
  [1, '11:20', wee('usual')],
  [1, '12:20', drink('half', 'water')],
  [1, '15:00', visit('family')],
  [1, '15:10', drink('full', 'other')],
  [1, '15:20', play('puppet-news')],
  [1, '16:20', seen('band-wet')],
  [1, '16:22', TOLD],
  [1, '16:40', LOOKED],
  [1, '16:50', care('sheets')],
  [1, '18:20', mood('fists')],
  // the same cup on both phones, and the family has said so
  [1, '18:55', drink('half', 'water'), 'cup'],
  [1, '18:57', handOver('sleeps-badly')],
  [1, '19:01', drink('half', 'water'), 'cup-again'],
  [1, '19:06', { kind: 'pair', first: 'cup', second: 'cup-again', same: true }],
  [1, '20:15', poo('none-today')],
  [1, '20:50', sleep('fell-asleep')],

  [2, '06:30', sleep('woke')],
  [2, '07:15', drink('full', 'milk')],
  [2, '08:55', { kind: 'question', own: '¿Por qué le da saltos la pierna justo cuando se está durmiendo?' }],
  ...medicineRound(2, '09:40', '09:45', 2),
  [2, '10:25', sore(1)],
  [2, '10:30', care('bandage')],
  [2, '10:32', sore(2, 'moving')],
  [2, '10:50', LOOK],
  [2, '11:15', care('physio')],
  [2, '12:20', drink('full', 'other'), 'not-so-full'],
  [2, '12:22', { kind: 'strike', strikes: 'not-so-full' }],
  [2, '12:22', drink('half', 'other')],
  [2, '13:05', sleep('nap')],
  [2, '14:20', wee('usual')],
  [2, '14:40', visit('play-specialist')],
  [2, '14:45', play('dot-grid')],
  [2, '15:20', drink('quarter', 'other')],
  [2, '16:10', play('card-pairs', false)],
  [2, '17:35', drink('half', 'water')],
  [2, '17:50', { kind: 'asked-for-medicine' }],
  [2, '18:15', wee('large')],
  [2, '18:30', mood('loose')],
  [2, '18:58', handOver('eats-little')],
  [2, '19:20', LOOK],
  ...medicineRound(2, '19:45', '19:50', 2),
  [2, '20:10', poo('none-today')],
  [2, '20:45', sore(1)],
  [2, '20:50', sleep('fell-asleep')],
  [2, '21:40', { kind: 'question', own: 'Kiedy będzie mogła wrócić do przedszkola?' }],

  [3, '03:05', sleep('woke')],
  [3, '03:10', seen('toes-cool')],
  [3, '03:10', BELL],
  [3, '03:14', CAME],
  [3, '03:20', LOOKED],
  [3, '03:25', drink('sip', 'water')],
  [3, '03:55', sleep('fell-asleep')],
  [3, '06:25', sleep('woke')],
  [3, '06:35', wee('usual')],
  [3, '07:10', drink('half', 'milk')],
  [3, '07:20', food('most')],
  [3, '08:40', care('round')],
  ...medicineRound(3, '09:40', '09:45', 2),
  [3, '10:25', sore(0)],
  [3, '10:30', care('bandage')],
  [3, '10:32', sore(1, 'moving')],
  [3, '10:50', LOOK],
  [3, '11:00', drink('half', 'other')],
  [3, '11:20', wee('usual')],
  [3, '12:15', drink('full', 'water')],
  [3, '13:05', sleep('nap')],
  [3, '14:25', wee('large')],
  [3, '14:50', drink('sip', 'water')],
  [3, '15:10', visit('friends')],
  [3, '15:15', play('finger-window')],
  [3, '17:30', food('most')],
  [3, '17:35', drink('half', 'milk')],
  [3, '18:10', wee('usual')],
  [3, '18:25', mood('wide-awake')],
  [3, '18:58', handOver('next-medicine-asked')],
  [3, '19:20', LOOK],
  ...medicineRound(3, '19:45', '19:50', 1),
  [3, '20:10', poo('none-today')],
  [3, '20:45', sore(0)],
  [3, '20:55', sleep('fell-asleep')],

  [4, '02:10', sleep('woke')],
  [4, '02:15', wee('usual')],
  [4, '02:35', sleep('fell-asleep')],
];

const minuteOf = (at: Clock): number => {
  const [hours, mins] = at.split(':').map(Number) as [number, number];
  return hours * 60 + mins;
};
const MORNING = minuteOf('06:00');
const HAND_OVER = minuteOf('19:00');
/** Falling asleep in the evening, the nap, and before waking: the last two of these that are over. */
const LEG_JUMPS = (['06:10', '13:25', '20:58'] as const).map(minuteOf);
const DAYS = [0, 1, 2, 3, 4];

/** The phone at the bed: the first day the one, and every evening the other takes over. */
const atBed = (at: number): Phone => (Math.floor((at - HAND_OVER) / DAY_MINUTES) % 2 ? 'a' : 'b');
const other = (phone: Phone): Phone => (phone === 'a' ? 'b' : 'a');

/**
 * The universal minute of midnight before the first day, and the local minute at which the child came: three nights
 * lie between then and now. Before six in the morning a night is still going on, so the stay began a day earlier.
 */
function beginOf(now: Instant, off: Minutes): { midnight: number; came: number } {
  const minute = localMinute(now, off);
  const early = minute < MORNING;
  return {
    midnight: now - minute - (early ? 4 : 3) * DAY_MINUTES,
    came: early ? minuteOf('16:00') : Math.min(minute, minuteOf('10:30')),
  };
}

/** The last wee by day that both phones noted and nobody has answered for. */
function twinOf(lines: readonly Line[], until: number): Line[] {
  const byDay = lines.filter(({ at, what }) => {
    const minute = at % DAY_MINUTES;
    return what.kind === 'wee' && at <= until && minute >= MORNING && minute < HAND_OVER;
  });
  const last = byDay.at(-1);
  return last ? [{ at: last.at + 4, what: last.what, phone: other(atBed(last.at)) }] : [];
}

/**
 * What the two grown-ups noted until about ten minutes ago, with one sign that a nurse was told of and has not yet
 * looked at. It is made up; whoever shows it says so beside it and keeps it apart from what a family noted.
 *
 * Shape: sorted as `mergeNotes` sorts; 90 to 130 notes of two phones, as `parseEntry` hands them back.
 * Units: universal minutes; every note bears `off`, the local time minus universal time of the place.
 * Not: a place whose clocks are changed meanwhile; nothing that the child's soreness or medicine is to be judged by.
 * Source: our-proposal. The same `now` gives the same notes.
 *
 * @example madeUpNotes(now, minutes(60)).at(-1) // { kind: 'told', t: now - 8, … }, at night { kind: 'bell', … }
 */
export function madeUpNotes(now: Instant, off: Minutes): Entry[] {
  const { midnight, came } = beginOf(now, off);
  const end = now - midnight;
  const lines: Line[] = ARRIVAL.map(([after, what]) => ({ at: came + after, what }));
  for (const [day, clock, what, name] of STORY) {
    const at = day * DAY_MINUTES + minuteOf(clock);
    // later ones would close, or come after, the sign that is open now
    if (at > came + SETTLED && at < end - 15) lines.push({ at, what, name });
  }
  lines.push(...twinOf(lines, end - 25));
  const jumps = DAYS.flatMap((day) => LEG_JUMPS.map((minute) => day * DAY_MINUTES + minute));
  for (const at of jumps.filter((start) => start <= end - 45).slice(-2))
    lines.push({ at, what: seen('leg-jumps') }, { at: at + 20, what: TOLD }, { at: at + 22, what: LOOKED });
  lines.push(
    { at: end - 9, what: seen('slid-down') },
    { at: end - 8, what: isNight(instant(now - 8), off) ? BELL : TOLD },
  );
  return numbered(lines, instant(midnight), off);
}

/** Each phone numbers its notes as it writes them; what names another note gets that note's id. */
function numbered(lines: readonly Line[], midnight: Instant, off: Minutes): Entry[] {
  const counts = { a: 0, b: 0 };
  const ids = new Map<string, string>();
  return [...lines]
    .sort((a, b) => a.at - b.at)
    .map(({ at, what, phone = atBed(at), name }): Entry => {
      const { device, by } = PHONES[phone];
      const id = `${device}-${++counts[phone]}`;
      if (name) ids.set(name, id);
      return { by, ...withIds(what, ids), id, t: instant(midnight + at), off };
    });
}

function withIds(what: NewEntry, ids: ReadonlyMap<string, string>): NewEntry {
  const idOf = (name: string) => {
    const id = ids.get(name);
    if (!id) throw new Error(`content/made-up › ${what.kind}: the name of an earlier note, saw "${name}"`);
    return id;
  };
  if (what.kind === 'strike') return { ...what, strikes: idOf(what.strikes) };
  if (what.kind === 'answer') return { ...what, question: idOf(what.question) };
  if (what.kind === 'pair') return { ...what, first: idOf(what.first), second: idOf(what.second) };
  return what;
}

/**
 * The set-up a nurse might have handed over for the made-up child, after the last leg bandage care that is over.
 * Shape: whole, so `encodeBedCard` takes it; it holds still, so no page asks whether it does.
 * Units: `madeAt` in universal minutes, at most a day and half an hour ago.
 * Not: a proposal for any real child. It holds no weight and no hanging weight.
 * @example madeUpCard(now, minutes(60)).side // 'left'
 */
export function madeUpCard(now: Instant, off: Minutes): BedCard {
  const sinceCare = localMinute(instant(now - 30 - minuteOf('10:40')), off);
  return {
    ...startCard(WARD),
    side: 'left',
    bell: 'button',
    age: { years: 6 },
    head: 'flat',
    atNight: 'grown-up',
    madeAt: instant(now - 30 - sinceCare),
    off,
  };
}
