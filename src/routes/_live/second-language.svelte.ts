/** The other language of a page that speaks two: the ward's beside the family's. */
import { WARD } from '#content/ward.ts';
import { LOCALES } from '#i18n/locales.ts';
import { loadWords, type Area, type Words } from '#i18n/words.ts';
import { currentFamily, loadFamily } from '#state/family.svelte.ts';

export interface SecondLanguage {
  /** The ward's words first where they are there; the page's own alone until then. */
  both(): readonly Words[];
  /** The page's words first, for what the family reads and a nurse shows them. */
  ownFirst(): readonly Words[];
  code(): string | undefined;
  /** What a list shows as chosen: the page's own language where it stands alone. */
  shown(): string | undefined;
  options(): { value: string; label: string }[];
  /** Takes another language; with the page's own it stands alone. */
  choose(code: string): Promise<void>;
  /** To be called in the browser: takes what was chosen before, the ward's language, or another than the page's. */
  start(): void;
}

/** What was chosen last stays from page to page. */
let chosen: string | undefined;

/**
 * The other language beside a page's own; nothing is loaded before `start`.
 * Shape: `own` gives the words of the page, `areas` are loaded in the other language.
 */
export function secondLanguage(own: () => Words, areas: readonly Area[]): SecondLanguage {
  let code = $state<string | undefined>(undefined);
  let words = $state.raw<Words | undefined>(undefined);
  let picked = $state(chosen);

  async function take(wanted: string) {
    code = wanted;
    const loaded = await loadWords(wanted, areas);
    if (code === wanted) words = loaded;
  }
  const ward = () => currentFamily().wardLanguage ?? WARD.wardLanguage;
  const other = () => (words && words.locale !== own().locale ? words : undefined);
  /** Where the page speaks the ward's language, another stands beside it only when somebody wants it. */
  const alone = () => (picked ?? ward()) === own().locale;
  return {
    code: () => code,
    shown: () => (alone() ? own().locale : code),
    options: () =>
      LOCALES.filter((row) => row.code !== own().locale).map((row) => ({ value: row.code, label: row.name })),
    both() {
      const beside = other();
      if (!beside || alone()) return [own()];
      // staff read their own language first
      return own().locale === ward() ? [own(), beside] : [beside, own()];
    },
    ownFirst() {
      const beside = other();
      return beside ? [own(), beside] : [own()];
    },
    choose(wanted) {
      picked = chosen = wanted;
      return wanted === own().locale ? Promise.resolve() : take(wanted);
    },
    start() {
      // a page opened by its address is there before the layout has read what this phone keeps
      loadFamily();
      const wanted = [chosen, ward(), ...LOCALES.map((row) => row.code)].find(
        (candidate) =>
          candidate !== undefined &&
          candidate !== own().locale &&
          LOCALES.some((row) => row.code === candidate),
      );
      if (wanted) void take(wanted);
    },
  };
}
