/** One sign on one page: written down once, assessed with all that is open, answered by the bell. */
import { byTime, struckIds, type Entry, type NewEntry } from '#domain/notes/entries.ts';
import { openCall, tracedSightings, type OpenCall } from '#domain/notes/sightings.ts';
import type { SignId } from '#domain/signs/ids.ts';
import type { Answer, Assessment } from '#domain/signs/types.ts';
import type { DeviceFailure } from '#device/result.ts';
import {
  assessNow,
  correctedNow,
  isKept,
  landed,
  notesFailure,
  openNotes,
  writeNote,
  type Written,
} from './notes.svelte.ts';
import { currentMoment, readMoment } from './now.svelte.ts';

export interface Seen {
  sign: SignId;
  answer: string;
  detail: string | undefined;
}

type NoteStatus =
  | { state: 'writing' }
  | { state: 'written'; entry: Entry }
  | { state: 'not-written'; reason: DeviceFailure; copy: string }
  | { state: 'taken-back' };

/** What was tapped on the page of a sign beside the sign itself; each is a note of its own. */
type Tap = 'bell' | 'told' | 'nurse-looked' | 'mistake';

export interface Reporting {
  /** What became of the sign's own note. */
  status(): NoteStatus;
  /** What was tapped and could not be written, and why: the sign's own note may well be there. */
  unwritten(): readonly { tap: Tap; reason: DeviceFailure }[];
  assessment(): Assessment | undefined;
  /** The press of the button, or word to a nurse, that is still unanswered. */
  call(): OpenCall | undefined;
  /** Whether this sign still waits for a nurse. */
  isOpen(): boolean;
  /** The note that a nurse looked, written since this sign was reported here. */
  looked(): Entry | undefined;
  /** The same sign once more, after a nurse looked: a sighting of its own, open at once. */
  reportAgain(): void;
  /** Another sign or answer on the same page. */
  report(seen: Seen): void;
  note(kind: 'bell' | 'told' | 'nurse-looked'): void;
  takeBack(): void;
  /** "A nurse looked" was tapped by mistake: what it closed is open again. */
  takeBackLook(): void;
  stop(): void;
}

/** Opening the same page again within this many minutes is not seeing it again. */
const SAME_SIGHT_MINUTES = 2;
/** A page that goes on in another language is the one it was for so long, whatever became of its note. */
const SAME_PAGE_MINUTES = 60;

const keyOf = (seen: Seen) => `${seen.sign}/${seen.answer}`;
const isSame = (entry: Entry, seen: Seen): entry is Extract<Entry, { kind: 'sign' }> =>
  entry.kind === 'sign' &&
  entry.sign === seen.sign &&
  entry.answer === answerOf(seen) &&
  (seen.detail === undefined || (entry.details ?? []).includes(seen.detail));
const answerOf = (seen: Seen): 'different' | 'not-sure' =>
  seen.answer === 'not-sure' ? 'not-sure' : 'different';

const openSightings = () =>
  tracedSightings(correctedNow(), currentMoment()).filter(({ lookedAt }) => lookedAt === undefined);

function noteOf(seen: Seen): NewEntry {
  const note = { kind: 'sign' as const, sign: seen.sign as string, answer: answerOf(seen) };
  return seen.detail ? { ...note, details: [seen.detail] } : note;
}

/**
 * Begins to report a sign on its page: it is written down once, whatever the page does. Stop it when the page goes.
 * Shape: `goesOn` where the same page was open just now in another language.
 */
export function startReporting(first: Seen, goesOn = false): Reporting {
  let seen = $state.raw(first);
  let noted = $state.raw<NoteStatus>({ state: 'writing' });
  // a note that was late, and landed on the device after all, is written
  let status = $derived.by((): NoteStatus => {
    const entry =
      noted.state === 'written' ? noted.entry : noted.state === 'not-written' && landed(noted.copy);
    if (!entry) return noted;
    const struck = refused.some(({ copy }) => {
      const late = landed(copy);
      return late?.kind === 'strike' && late.strikes === entry.id;
    });
    return struck ? { state: 'taken-back' } : { state: 'written', entry };
  });
  /** The last of each kind of tap. */
  let refused = $state.raw<readonly { tap: Tap; reason: DeviceFailure; copy: string }[]>([]);
  let ready = $state(false);
  let stopped = false;
  let started = '';
  // a look that was there before this report closes nothing of it, whatever its time says
  let earlierLooks: readonly string[] = [];

  /** Every "a nurse looked" that was not taken back, in order of time. */
  function looks(): Entry[] {
    const struck = struckIds(correctedNow());
    return correctedNow().filter(({ id, kind }) => kind === 'nurse-looked' && !struck.has(id));
  }

  const kept = (entry: Entry): NoteStatus =>
    // a note that could not be kept is there for as long as the page, and is never called written
    isKept(entry)
      ? { state: 'written', entry }
      : { state: 'not-written', reason: notesFailure() ?? 'broken', copy: entry.id };

  /** The note of this page in the language it was read in before: neither seen again nor waiting again. */
  function noteBefore(wanted: Seen, now: number): Entry | undefined {
    const before = correctedNow().filter(
      (entry) => isSame(entry, wanted) && Math.abs(now - entry.t) < SAME_PAGE_MINUTES,
    );
    return before.sort(byTime).at(-1);
  }

  async function begin(wanted: Seen) {
    await openNotes();
    if (stopped || keyOf(wanted) !== keyOf(seen)) return;
    ready = true;
    const now = readMoment();
    const before = goesOn ? noteBefore(wanted, now) : undefined;
    goesOn = false;
    if (before) {
      earlierLooks = looks().flatMap(({ id, t }) => (t < before.t ? [id] : []));
      noted = struckIds(correctedNow()).has(before.id) ? { state: 'taken-back' } : kept(before);
      return;
    }
    earlierLooks = looks().map(({ id }) => id);
    const open = openSightings();
    const recent = correctedNow().find(
      (entry) =>
        isSame(entry, wanted) &&
        open.some(({ note }) => note === entry.id) &&
        // a jump of the leg counts each time; other signs stay one sighting until a nurse has looked
        // (before the clock went back is not just now)
        (wanted.sign !== 'leg-jumps' || Math.abs(now - entry.t) < SAME_SIGHT_MINUTES),
    );
    if (recent) {
      noted = kept(recent);
      return;
    }
    const written = await writeNote(noteOf(wanted));
    noted = written.ok
      ? { state: 'written', entry: written.value }
      : { state: 'not-written', reason: written.reason, copy: written.copy };
  }

  function answered(tap: Tap, written: Written) {
    const others = refused.filter((one) => one.tap !== tap);
    refused = written.ok ? others : [...others, { tap, reason: written.reason, copy: written.copy }];
  }

  const answers = (): Record<string, Answer> =>
    status.state === 'taken-back' || looked() ? {} : { [seen.sign]: answerOf(seen) };
  const details = () => (seen.detail && Object.keys(answers()).length ? [`${seen.sign}/${seen.detail}`] : []);

  /** A nurse looked since it was reported here, and nobody has reported it since. */
  function looked(): Entry | undefined {
    if (status.state !== 'written' || openSightings().some(({ sign }) => sign === seen.sign))
      return undefined;
    return looks().find(({ id }) => !earlierLooks.includes(id));
  }

  function report(next: Seen) {
    if (keyOf(next) === started) return;
    started = keyOf(next);
    seen = next;
    noted = { state: 'writing' };
    refused = [];
    void begin(next);
  }
  report(first);

  return {
    status: () => status,
    unwritten: () => refused.filter(({ copy }) => !landed(copy)),
    assessment: () => (ready ? assessNow({ answers: answers(), details: details() }) : undefined),
    call: () =>
      openCall(correctedNow(), 'bell', currentMoment()) ?? openCall(correctedNow(), 'told', currentMoment()),
    isOpen: () => status.state === 'written' && !looked(),
    looked,
    reportAgain() {
      noted = { state: 'writing' };
      void begin(seen);
    },
    report,
    note(kind) {
      void writeNote({ kind }).then((written) => answered(kind, written));
    },
    takeBack() {
      if (status.state !== 'written') return;
      void writeNote({ kind: 'strike', strikes: status.entry.id }).then((written) => {
        // what could not be taken back stays written, and counts
        if (written.ok) noted = { state: 'taken-back' };
        answered('mistake', written);
      });
    },
    takeBackLook() {
      const look = looked();
      if (look)
        void writeNote({ kind: 'strike', strikes: look.id }).then((written) => answered('mistake', written));
    },
    stop() {
      stopped = true;
    },
  };
}
