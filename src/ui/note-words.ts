/** What a note says, in any language of the site: notes are codes, so two languages say the same. */
import { isUndated } from '#domain/notes/clocks.ts';
import type { Entry } from '#domain/notes/entries.ts';
import { CHOICES, QUESTIONS } from '#domain/notes/kinds.ts';
import type { PooSince, Since, SorenessSummary, SorePoint, Summary } from '#domain/notes/summary.ts';
import type { Instant, Minutes } from '#domain/units.ts';
import {
  clockTime,
  day,
  dayAndTime,
  daysAgo,
  inARow,
  isolated,
  languageName,
  list,
  number,
  ownWords,
  range,
} from '#i18n/format.ts';
import { translate, type Words } from '#i18n/words.ts';
import { notedName, placedName } from './sign-words.ts';

/** One chosen word of a note, such as "half a cup". */
export const choiceWord = (words: Words, kind: string, field: string, value: string): string =>
  translate(words)(`notes:choice.${kind}.${field}.${value}`);

/** A question for the round; the family's own words come back as they are, in quotes, with their language named. */
export function questionText(words: Words, question: { ask?: string; own?: string; in?: string }): string {
  if (question.own !== undefined) {
    const text = ownWords(question.own);
    const language = question.in && languageName(words.locale, question.in);
    return language
      ? translate(words)('notes:question.quotedIn', { text, language })
      : translate(words)('notes:question.quoted', { text });
  }
  const known = QUESTIONS.some((id) => id === question.ask);
  return translate(words)(known ? `notes:question.${question.ask}` : 'notes:unknown');
}

/** That the browser had lost the notes, and when the last of those that came back was written. */
export const broughtBackText = (words: Words, last: Instant, offset: Minutes): string =>
  translate(words)('notes:broughtBack', { time: isolated(dayAndTime(words.locale, last, offset)) });

/** Choices one after another as one sentence: each stands alone elsewhere, with a capital letter. */
const enumerated = (locale: string, choices: readonly string[]): string =>
  inARow(
    locale,
    choices.map((choice, at) => (at ? choice.charAt(0).toLocaleLowerCase(locale) + choice.slice(1) : choice)),
  );

type Sore = Pick<SorePoint, 'value' | 'scale' | 'when'>;
const soreValue = (words: Words, { value, scale }: Sore): string =>
  scale === 'steps'
    ? translate(words)(`notes:sore.steps.${value}`)
    : translate(words)('notes:sore.value', {
        value: isolated(number(words.locale, value)),
        most: isolated(number(words.locale, 10)),
      });

/** How sore it was, and whether lying still or when moved. */
export const sorenessText = (words: Words, sore: Sore): string =>
  enumerated(words.locale, [soreValue(words, sore), translate(words)(`notes:sore.${sore.when}`)]);

/**
 * How fast soreness rose or fell in the last hours, lying still and when moved, and how often medicine was asked for;
 * nothing where too little was noted.
 */
export function soreLines(
  words: Words,
  { slope, asked }: Pick<SorenessSummary, 'slope' | 'asked'>,
): string[] {
  const t = translate(words);
  const lines = (['rest', 'moving'] as const).flatMap((name) => {
    const line = slope[name];
    if (!line) return [];
    const steps = Math.round(10 * line.perHour) / 10;
    const value = t('notes:sore.value', {
      value: isolated(number(words.locale, Math.abs(steps))),
      most: isolated(number(words.locale, line.scale === 'steps' ? 3 : 10)),
    });
    const when = t(`notes:sore.${name}`);
    if (steps === 0) return [t('notes:sum.soreLevel', { when })];
    return [t(steps > 0 ? 'notes:sum.soreUp' : 'notes:sum.soreDown', { when, value })];
  });
  const times = isolated(range(words.locale, asked.low, asked.high));
  return asked.high > 0 ? [...lines, t('notes:sum.asked', { value: times })] : lines;
}

/** Soreness of the last hours in one line: the highest that was noted, and what `soreLines` says of it. */
export const soreText = (words: Words, soreness: SorenessSummary): string =>
  [
    ...soreness.highest.map((sore) =>
      translate(words)('notes:sum.soreHighest', {
        when: translate(words)(`notes:sore.${sore.when}`),
        value: soreValue(words, sore),
      }),
    ),
    ...soreLines(words, soreness),
  ].join(' · ');

/** Cups of the last 24 hours, sips, and drinks of which nobody said how much; nothing where no drink was noted. */
export function drinksText(words: Words, { quarters, sips, unmeasured, from }: Summary['drinks']): string {
  const t = translate(words);
  if (from.length === 0) return '';
  const said = (low: number, high: number) => isolated(range(words.locale, low, high));
  const parts = [t('notes:sum.cups', { value: said(quarters.low / 4, quarters.high / 4) })];
  if (sips.high > 0) parts.push(t('notes:sum.sips', { value: said(sips.low, sips.high) }));
  if (unmeasured.high > 0)
    parts.push(t('notes:sum.unmeasured', { value: said(unmeasured.low, unmeasured.high) }));
  return parts.join(' · ');
}

/** A sign that came again, how often, and whether a nurse looked in between. */
export function repeatText(
  words: Words,
  { sign, high, nurseLookedBetween, notSure }: Summary['repeats'][number],
): string {
  const t = translate(words);
  return inARow(words.locale, [
    t('notes:sum.repeat', { sign: notedName(words, { sign, notSure }), count: high }),
    t(nurseLookedBetween ? 'notes:sum.nurseBetween' : 'notes:sum.noNurseBetween'),
  ]);
}

/** How long ago something was; that nobody knows it, where a clock went back since; nothing where none was noted. */
export function sinceText(words: Words, { last, clockWentBack }: Since): string {
  if (clockWentBack) return translate(words)('notes:sum.sinceUnknown');
  return last ? lengthText(words, last.minutes) : '';
}

/** How long ago the last poo was: days of the calendar, and full 24 hours from the first on; else as `sinceText`. */
export function pooText(words: Words, since: PooSince): string {
  const t = translate(words);
  const { calendarDays, wholeDays, clockWentBack } = since;
  if (clockWentBack) return sinceText(words, since);
  if (calendarDays === undefined || wholeDays === undefined) return '';
  const day = daysAgo(words.locale, calendarDays);
  if (wholeDays < 1) return day;
  const whole = t('notes:sum.pooWhole', { number: isolated(number(words.locale, wholeDays)) });
  return inARow(words.locale, [day, whole]);
}

/** What stands behind the kind's name; empty where the kind says it all. */
function content(words: Words, entry: Entry, all: readonly Entry[]): string {
  const t = translate(words);
  switch (entry.kind) {
    case 'sign':
      return notedName(words, {
        sign: entry.sign,
        details: (entry.details ?? []).map((detail) => `${entry.sign}/${detail}`),
        notSure: entry.answer === 'not-sure',
      });
    case 'look': {
      const answered = (answer: string) =>
        Object.keys(entry.answers).filter((sign) => entry.answers[sign] === answer);
      const seen = ['different', 'not-sure'].flatMap((answer) =>
        answered(answer).map((sign) => `${placedName(words, sign)} (${t(`answer.${answer}`)})`),
      );
      const notLooked = answered('not-looked').length;
      if (notLooked === Object.keys(entry.answers).length) return t('notes:lookNothing');
      const rest = notLooked > 0 ? [t('steps:full.notLooked', { count: notLooked })] : [];
      // what this version does not know has one name, however much of it a stranger's look holds
      return list(words.locale, [...new Set(seen.length ? seen : [t('urgencyShort.none')]), ...rest]);
    }
    case 'sore':
      return sorenessText(words, entry);
    case 'question':
      return questionText(words, entry);
    case 'answer': {
      const question = all.find((other) => other.id === entry.question);
      const what = choiceWord(words, 'answer', 'what', entry.what);
      return question?.kind === 'question' ? `${questionText(words, question)} – ${what}` : what;
    }
    case 'strike': {
      const target = all.find((other) => other.id === entry.strikes);
      return target && target.kind !== 'strike' ? noteText(words, target, all) : t('notes:unknown');
    }
    case 'play':
      return playName(words, entry.idea);
    default: {
      if (!Object.hasOwn(CHOICES, entry.kind)) return '';
      const fields = CHOICES[entry.kind as keyof typeof CHOICES];
      const row = entry as unknown as Record<string, string>;
      return enumerated(
        words.locale,
        Object.keys(fields).map((field) => choiceWord(words, entry.kind, field, row[field]!)),
      );
    }
  }
}

/** What an idea of the library may be called in code; a stranger's words must not be looked up as if they were a place. */
const IDEA_ID = /^[a-z]+(?:-[a-z0-9]+)*$/;

/** The name of an idea of the library; an own idea stands in its own words, set apart. Needs the area `ideas`. */
export function playName(words: Words, idea: string): string {
  if (!IDEA_ID.test(idea)) return ownWords(idea);
  const key = `ideas:${idea}.name`;
  const name = translate(words)(key, { defaultValue: key });
  return name === key ? ownWords(idea) : name;
}

/** A note as one line: its kind, and what it holds. Needs the areas `notes`, `signs`, `look` and `ideas`. */
export function noteText(words: Words, entry: Entry, all: readonly Entry[]): string {
  const kind = translate(words)(`notes:kind.${entry.kind}`);
  const rest = content(words, entry, all);
  return rest ? `${kind}: ${rest}` : kind;
}

/** What was done or said by staff: writing it down is no report, and "no nurse has been told" would be wrong. */
const BY_STAFF: ReadonlySet<Entry['kind']> = new Set([
  'told',
  'nurse-came',
  'nurse-looked',
  'medicine-told',
  'answer',
]);

/** That a note is written down, and when; of all that staff do not know of yet, that no nurse has been told. */
export function writtenText(words: Words, entry: Entry): string {
  // a wash may be the family's
  const byStaff = entry.kind === 'care' ? entry.what !== 'wash' : BY_STAFF.has(entry.kind);
  return translate(words)(byStaff ? 'common:written.only' : 'steps:written.done', {
    time: isolated(clockTime(words.locale, entry.t, entry.off)),
  });
}

/** Notes under the name of their day, in the order in which they are given; one without a time stands under none. */
export function underTheirDays(
  locale: string,
  notes: readonly Entry[],
): { name: string | undefined; entries: Entry[] }[] {
  const groups: { name: string | undefined; entries: Entry[] }[] = [];
  for (const entry of notes) {
    const name = isUndated(entry) ? undefined : day(locale, entry.t, entry.off);
    const last = groups.at(-1);
    if (last && last.name === name) last.entries.push(entry);
    else groups.push({ name, entries: [entry] });
  }
  return groups;
}

/** A length of time in hours and minutes. */
export function lengthText(words: Words, minutes: number): string {
  const t = translate(words);
  const whole = Math.max(0, Math.round(minutes));
  const hours = Math.floor(whole / 60);
  const say = (value: number) => number(words.locale, value);
  return isolated(
    hours > 0
      ? t('notes:sum.hoursMinutes', { hours: say(hours), minutes: say(whole % 60) })
      : t('notes:sum.onlyMinutes', { minutes: say(whole) }),
  );
}

const FIGURES = {
  sore: (words, { soreness }) => soreText(words, soreness),
  drinks: (words, { drinks }) => drinksText(words, drinks),
  wee: (words, { wee }) => sinceText(words, wee),
  poo: (words, { poo }) => pooText(words, poo),
  sleep: (words, { sleep: { longest } }) => (longest ? lengthText(words, longest.minutes) : ''),
} satisfies Record<string, (words: Words, summary: Summary) => string>;
/** A figure of the notes as staff read it, on whichever of their pages; nothing where nothing was noted. */
export const figureText = (words: Words, figure: keyof typeof FIGURES, summary: Summary): string =>
  FIGURES[figure](words, summary);
