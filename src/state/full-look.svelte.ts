/** The answers of the full look, kept while the six screens are walked through. */
import { struckIds, type Entry } from '#domain/notes/entries.ts';
import type { SignId } from '#domain/signs/ids.ts';
import type { Answer, Assessment } from '#domain/signs/types.ts';
import type { Result } from '#device/result.ts';
import { LOOKS, signsOfLook } from '#content/signs.ts';
import { assessNow, correctedNow, openNotes, writeNote } from './notes.svelte.ts';

let answers = $state.raw<Readonly<Record<string, Answer>>>({});
let finished: FinishedLook | undefined;
/** A look was begun since the page was loaded: what is called its end afterwards was not written yet. */
let begun = false;

export interface FinishedLook {
  answers: Readonly<Record<string, Answer>>;
  assessment: Assessment;
  /** True where not one question was answered. */
  nothingLooked: boolean;
  written: Result<Entry>;
}

/** What was answered so far, by sign. */
export const lookAnswers = (): Readonly<Record<string, Answer>> => answers;
/** Answers given to these signs, in their order; what nobody answered is not among them. */
export const answersOf = (signs: readonly SignId[]): Answer[] => signs.flatMap((sign) => answers[sign] ?? []);

/** Begins a look in which nothing is answered. */
export function startLook(): void {
  answers = {};
  finished = undefined;
  begun = true;
  void openNotes();
}

/** Goes on with a look whose page was loaded anew: what was answered before is gone, what comes is written. */
export const resumeLook = (): void => {
  begun = true;
};

/** Takes one answer; `not-looked` takes it back. */
export function chooseAnswer(sign: SignId, answer: Answer): void {
  finished = undefined;
  begun = true;
  const { [sign]: _old, ...rest } = answers;
  answers = answer === 'not-looked' ? rest : { ...rest, [sign]: answer };
}

/** A sleeping child was not asked: these are not looked, and never a good mark. */
export function sayAsleep(signs: readonly SignId[]): void {
  for (const sign of signs) chooseAnswer(sign, 'not-looked');
}

/** How urgent is what was answered so far, with everything that is open. */
export const assessLook = (): Assessment => assessNow({ answers });

/**
 * Writes the look down, once; what was not answered is written as not looked. A page that was loaded anew holds no look: it
 * writes nothing and gives the last one, with what is open now; nothing where there is none.
 */
export async function finishLook(): Promise<FinishedLook | undefined> {
  if (finished) return finished;
  await openNotes();
  if (!begun) return lastLook();
  const asked = LOOKS.flatMap(signsOfLook);
  const whole = Object.fromEntries(asked.map((sign) => [sign, answers[sign] ?? ('not-looked' as const)]));
  const nothingLooked = asked.every((sign) => whole[sign] === 'not-looked');
  const assessment = assessLook();
  const written = await writeNote({ kind: 'look', answers: whole });
  finished = { answers: whole, assessment, nothingLooked, written };
  answers = {};
  return finished;
}

function lastLook(): FinishedLook | undefined {
  const notes = correctedNow();
  const struck = struckIds(notes);
  const looks = notes.filter((entry) => entry.kind === 'look').filter(({ id }) => !struck.has(id));
  const last = looks.sort((a, b) => a.t - b.t).at(-1);
  if (!last) return undefined;
  const nothingLooked = Object.values(last.answers).every((answer) => answer === 'not-looked');
  return {
    answers: last.answers,
    assessment: assessNow(),
    nothingLooked,
    written: { ok: true, value: last },
  };
}
