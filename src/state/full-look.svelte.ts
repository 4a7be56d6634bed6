/** The answers of the full look, kept while the six screens are walked through. */
import type { Entry } from '#domain/notes/entries.ts';
import type { SignId } from '#domain/signs/ids.ts';
import type { Answer, Assessment } from '#domain/signs/types.ts';
import type { Result } from '#device/result.ts';
import { LOOKS, signsOfLook } from '#content/signs.ts';
import { assessNow, openNotes, writeNote } from './notes.svelte.ts';

let answers = $state.raw<Readonly<Record<string, Answer>>>({});
let finished: FinishedLook | undefined;

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
  void openNotes();
}

/** Takes one answer; `not-looked` takes it back. */
export function chooseAnswer(sign: SignId, answer: Answer): void {
  finished = undefined;
  const { [sign]: _old, ...rest } = answers;
  answers = answer === 'not-looked' ? rest : { ...rest, [sign]: answer };
}

/** A sleeping child was not asked: these are not looked, and never a good mark. */
export function sayAsleep(signs: readonly SignId[]): void {
  for (const sign of signs) chooseAnswer(sign, 'not-looked');
}

/** How urgent is what was answered so far, with everything that is open. */
export const assessLook = (): Assessment => assessNow({ answers });

/** Writes the look down, once; what was not answered is written as not looked. */
export async function finishLook(): Promise<FinishedLook> {
  if (finished) return finished;
  await openNotes();
  const asked = LOOKS.flatMap(signsOfLook);
  const whole = Object.fromEntries(asked.map((sign) => [sign, answers[sign] ?? ('not-looked' as const)]));
  const nothingLooked = asked.every((sign) => whole[sign] === 'not-looked');
  const assessment = assessLook();
  const written = await writeNote({ kind: 'look', answers: whole });
  finished = { answers: whole, assessment, nothingLooked, written };
  answers = {};
  return finished;
}
