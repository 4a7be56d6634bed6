/** This phone's notes: read once, added to, kept in step with other tabs. */
import { correctedNotes } from '#domain/notes/clocks.ts';
import { mergeNotes, type Entry, type NewEntry } from '#domain/notes/entries.ts';
import { openSigns } from '#domain/notes/open.ts';
import { reportOf } from '#domain/notes/report.ts';
import { assess } from '#domain/signs/assess.ts';
import { summarise } from '#domain/notes/summarise.ts';
import type { Summary, SummarySettings } from '#domain/notes/summary.ts';
import type { Assessment, Context, Report } from '#domain/signs/types.ts';
import { browserNoteStore, type NoteStore } from '#device/note-store.ts';
import type { DeviceFailure, Result } from '#device/result.ts';
import { DAY_MINUTES, type Instant } from '#domain/units.ts';
import { SIGN_ROWS } from '#content/signs.ts';
import { bedsideWard } from './bedside.svelte.ts';
import { currentFamily } from './family.svelte.ts';
import { currentMoment, offsetAt, readMoment } from './now.svelte.ts';

let store: NoteStore | undefined;
let entries = $state.raw<readonly Entry[]>([]);
let loaded = $state(false);
let failure = $state<DeviceFailure | undefined>(undefined);
let lost = $state(false);
let broughtBack = $state<Instant | undefined>(undefined);

/** Every note of this page, as it was written. */
export const currentNotes = (): readonly Entry[] => entries;
/** Whether this device's notes were read, or could not be. */
export const notesLoaded = (): boolean => loaded;
/** Why the last reading or writing did not go through. */
export const notesFailure = (): DeviceFailure | undefined => failure;
/**
 * Notes that were written down are no longer there, and nobody erased them here: the browser was emptied under the page.
 * They stay on the page for as long as it is open, can be sent on from it, and are not written a second time: whoever
 * emptied the browser may have meant it.
 */
export const notesLost = (): boolean => lost;

/**
 * The browser had lost the notes, and they came back from their copy: when the last of them was written. Nothing once
 * that is longer ago than any page looks back.
 */
export const lastBroughtBack = (): Instant | undefined =>
  broughtBack !== undefined && currentMoment() - broughtBack <= LOOKED_BACK ? broughtBack : undefined;
const LOOKED_BACK = 7 * DAY_MINUTES;

async function readNotes(): Promise<void> {
  const before = entries;
  const read = await store?.readAll();
  if (!read) return;
  failure = read.ok ? undefined : read.reason;
  // a failed read never hides what is already on the page
  if (read.ok) {
    broughtBack = store?.broughtBack();
    const there = new Set(read.value.map(({ id }) => id));
    lost = before.some((entry) => isKept(entry) && !there.has(entry.id));
    entries = mergeNotes(entries, read.value);
  }
  loaded = true;
}

/** Opens the notes of this phone; safe to call again. */
export async function openNotes(): Promise<void> {
  if (!store) {
    store = browserNoteStore();
    store.onChange((what) => (what === 'erased' ? forget() : void readNotes()));
  }
  await readNotes();
}

/** What became of a note: it is there, or it is not, and this page holds a copy by that id. */
export type Written = { ok: true; value: Entry } | { ok: false; reason: DeviceFailure; copy: string };

/**
 * Writes one note down. The page says "written" only when this says ok; until then, and when it is not, the note
 * still counts on this page for as long as it is open. A note that lands after all takes the place of that copy.
 */
export async function writeNote(note: NewEntry): Promise<Written> {
  const at = readMoment();
  const offset = offsetAt(at);
  store ??= browserNoteStore();
  const { writer } = currentFamily();
  const signed: NewEntry = writer ? { ...note, by: writer } : note;
  const copy = `page-${(unkept += 1)}`;
  const written = await store.append(signed, at, offset, (entry) => {
    late = { ...late, [copy]: entry };
    entries = mergeNotes(
      entries.filter(({ id }) => id !== copy),
      [entry],
    );
    failure = undefined;
  });
  if (written.ok) {
    failure = undefined;
    const others = entries.length > 0;
    entries = mergeNotes(entries, [written.value]);
    // a phone that begins to count anew beside notes of this page may have been emptied
    if (others && written.value.id.endsWith('-1')) await readNotes();
    return written;
  }
  const entry = late[copy];
  if (entry) return { ok: true, value: entry };
  failure = written.reason;
  entries = mergeNotes(entries, [{ id: copy, t: at, off: offset, ...signed } as Entry]);
  return { ...written, copy };
}
let unkept = 0;
/** Notes that landed on the device after their time, by the copy that stood for them on this page. */
let late = $state.raw<Readonly<Record<string, Entry>>>({});
/** The note that landed on the device after all, in place of this copy. */
export const landed = (copy: string): Entry | undefined => late[copy];

/** Adds the other phone's notes: all of them or none. `ok` gives those that were new here. */
export async function takeNotes(notes: readonly Entry[]): Promise<Result<Entry[]>> {
  store ??= browserNoteStore();
  const added = await store.addAll(notes);
  if (added.ok) entries = mergeNotes(entries, notes);
  else failure = added.reason;
  return added;
}

/** This phone's own name in the notes, where it has written any. */
export async function ownDevice(): Promise<{ id: string; count: number } | undefined> {
  store ??= browserNoteStore();
  const found = await store.device();
  return found.ok ? found.value : undefined;
}

function forget(): void {
  entries = [];
  failure = undefined;
  lost = false;
  broughtBack = undefined;
}

/** Erases every note on this device; `ok` means that the store was found empty afterwards. */
export async function eraseNotes(): Promise<Result<true>> {
  store ??= browserNoteStore();
  const erased = await store.clear();
  if (erased.ok) forget();
  return erased;
}

/** Notes that could not be kept carry this device name: they go when the page goes. */
export const isKept = (entry: Entry): boolean => !entry.id.startsWith('page-');

/** The notes with wrong clocks set right, as every page shows and counts them. */
export const correctedNow = (): readonly Entry[] => corrected;
const corrected = $derived(correctedNotes(entries));

function settingsNow(): SummarySettings {
  const { under3, canTell } = currentFamily();
  return {
    offsetMinutes: offsetAt(currentMoment()),
    child: { under3, canTell },
    signs: SIGN_ROWS,
    ward: bedsideWard(),
    lookOf: LOOK_OF,
  };
}
const LOOK_OF = Object.fromEntries(Object.entries(SIGN_ROWS).map(([id, row]) => [id, row.look]));

/** What the notes add up to now. */
export const summaryNow = (): Summary => summarise(entries, currentMoment(), settingsNow());

/** How urgent is everything that is still open, with these answers beside it? */
export function assessNow(report: Pick<Report, 'answers' | 'details'> = {}): Assessment {
  const now = currentMoment();
  const { under3, canTell } = currentFamily();
  const context: Context = {
    now,
    offsetMinutes: offsetAt(now),
    child: { under3, canTell },
    signs: SIGN_ROWS,
    ward: bedsideWard(),
  };
  return assess({ ...report, ...reportOf(entries, context) }, context);
}

/** Signs that wait for a nurse: what was reported, and what the soreness notes say by themselves (R17–R19). */
export function openNow(): string[] {
  const reported = openSigns(correctedNow(), currentMoment());
  const noted = assessNow()
    .because.filter(({ rule }) => rule === 'R17' || rule === 'R18' || rule === 'R19')
    .flatMap(({ signs }) => signs);
  return [...reported, ...noted.filter((sign, at) => !reported.includes(sign) && noted.indexOf(sign) === at)];
}

/** Does something wait for which the button is to be pressed now? It comes before any game. */
export const ringsNow = (): boolean => openNow().length > 0 && assessNow().urgency === 'ring-now';
