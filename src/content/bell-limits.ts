/**
 * What a ward's own words about the call button may not say. They stand beside the program's, which always stay; still
 * nothing on that page may hold a hand back. Read when the site is built and in tests, never sent to a phone.
 */
import { folded } from '#domain/text/fold.ts';

export const BELL_TEXTS = ['where', 'say'] as const;
/** `where` the button is and how it looks; what to `say` when somebody answers. */
export type BellWords = Partial<Record<(typeof BELL_TEXTS)[number], string>>;

const LONGEST = 120;
const SHORTEST = 3;

/**
 * A language's words by what they would do. With a star: every word that begins so. Broad on purpose: a place, a colour
 * and a name need none of these, and a sentence can be said in another way.
 */
interface Limits {
  script: RegExp;
  /** Words that deny, put a condition or a time, or weigh a worry: each can turn "press" into "do not press". */
  holdsBack: string;
  /** Words that reassure. */
  reassures: string;
  /** Words of the load, the leg and of medicine: this place is for the button. */
  elsewhere: string;
  /** Small words that are written together with the next. */
  joined: readonly string[];
}

const LIMITS: Readonly<Record<string, Limits>> = {
  en: {
    script: /\p{Script=Latin}/u,
    holdsBack:
      'no not nothing never none nobody neither nor cannot cant dont doesnt isnt arent wont shouldnt mustnt neednt ' +
      'couldnt without only unless except* instead wait* until till later before after while during if when whenever ' +
      'once first rather avoid* stop* refrain* forbid* forbad* prohibit* allow* permit* less least rarely seldom ' +
      'sparing* limit* emergenc* urgen* serious* sever* important real really busy disturb* bother* sleep* asleep ' +
      'night* day days daytime hour hours minute* morning evening try need needs needed must should another other',
    reassures:
      'fine safe safely safety normal* ok okay well alright healthy harmless worry worries worried calm relax* perfect*',
    elsewhere:
      'bandage* cord cords weight* load* leg legs thigh* knee* heel* plate wheel* traction medic* drug* dose* tablet* ' +
      'pill* syrup painkill* loosen* tighten* lift* untie* unwrap* pull*',
    joined: [],
  },
  es: {
    script: /\p{Script=Latin}/u,
    holdsBack:
      'no nunca jamas nada nadie ningun* tampoco ni sin solo solamente unicamente salvo excepto menos esper* hasta ' +
      'despues luego antes mientras si cuando primero mejor evit* abste* prohib* permit* limit* urgen* emergenc* ' +
      'grave* serio* seria* importante* realmente necesari* necesit* deb* noche* dia dias hora horas minuto* manana ' +
      'tarde* molest* ocupad* duerm* dormid* otro otra otros otras vez veces trate intente',
    reassures: 'bien segur* normal* tranquil* calm* preocup* perfect* sano sana',
    elsewhere:
      'venda vendas vendaje* cuerda* cordon* pesa pesas peso pesos carga* pierna* muslo* rodilla* talon* rueda* placa* ' +
      'traccion medic* farmac* dosis pastilla* jarabe* afloj* apret* levant* desat* quit* tire tirar',
    joined: [],
  },
  pl: {
    script: /\p{Script=Latin}/u,
    holdsBack:
      'nie bez nic niczego nikt nikogo nigdy zadn* ani tylko wylacznie jedynie chyba oprocz zamiast czeka* poczeka* ' +
      'zaczeka* dopoki dopiero pozniej potem przed zanim podczas jesli jezeli gdy gdyby kiedy najpierw lepiej unika* ' +
      'przesta* zakaz* zabran* zabron* zabrania* wolno ogranicz* nagl* pilne* pilny* pilna* powazn* wazn* naprawde ' +
      'koniecz* potrzeb* trzeba musi* powin* noc* dzien* dni* godzin* minut* rano wieczor* przeszkadza* zajet* spi ' +
      'spia inny inna inne prosze-nie raz razy',
    reassures: 'dobrze porzadku bezpiecz* normaln* spokoj* martw* zdrow* idealn*',
    elsewhere:
      'bandaz* opatrun* linka linki linke link* ciezar* obciaz* noga nogi noge nodze udo uda kolano pieta kolko kolka ' +
      'plytka plytki wyciag* lek leki leku lekow lekarstw* dawk* tablet* syrop* poluz* podnie* podnos* odwia* pociag*',
    joined: [],
  },
  ar: {
    script: /\p{Script=Arabic}/u,
    holdsBack:
      'لا لم لن ليس ليست ليسوا لستم بدون دون بلا غير ممنوع* يمنع* عدم فقط الا سوى انتظ* انتظار إذا اذا لو إن عندما حين حينما ' +
      'متى قبل بعد حتى لاحقا أولا أثناء خلال تجنب* توقف* كفوا امتنع* يسمح* مسموح* طارئ* طوارئ عاجل* خطير* مهم* ضروري* ' +
      'يجب ليل* نهار* يوم* ساعة ساعات دقيقة دقائق صباح* مساء* إزعاج* تزعج* مشغول* نائم* نوم مرة مرات آخر أخرى ما',
    reassures: 'بخير سليم* طبيعي* آمن* أمان* جيد* اطمئن* قلق* هدوء تقلق* ممتاز*',
    elsewhere:
      'ضماد* رباط* حبل* ثقل* أثقال وزن* أوزان حمل ساق* رجل* فخذ* ركبة كعب* عجلة لوح* شد دواء* أدوية جرعة* جرعات حبة حبوب ' +
      'قرص* مسكن* شراب ارفع* فك* أرخ*',
    joined: ['', 'و', 'ف'].flatMap((and) =>
      ['', 'ب', 'ل', 'ك', 'ال', 'بال', 'كال', 'لل'].map((to) => and + to),
    ),
  },
};

const KINDS = ['holdsBack', 'reassures', 'elsewhere'] as const;
const RULES: Readonly<Record<(typeof KINDS)[number], string>> = {
  holdsBack: 'no word that says no, only, when, later or how bad it must be',
  reassures: 'no word that reassures',
  elsewhere: 'no word of the leg, the load or medicine',
};

/** A word with and without the small words that are written together with it. */
const formsOf = (word: string, joined: readonly string[]): string[] => [
  word,
  ...joined.filter((small) => word.startsWith(small)).map((small) => word.slice(small.length)),
];

const wordsIn = (text: string): string[] =>
  folded(text)
    // an apostrophe holds a word together: "don't" is one
    .replace(/['’ʼ`]/g, '')
    .split(/[^\p{L}\p{N}]+/u)
    .filter(Boolean);

interface List {
  whole: ReadonlySet<string>;
  stems: readonly string[];
}
function listOf(words: string): List {
  const entries = words
    .split(' ')
    .map((entry) => ({ text: folded(entry.replace('*', '')), stem: entry.endsWith('*') }));
  return {
    whole: new Set(entries.filter(({ stem }) => !stem).map(({ text }) => text)),
    stems: entries.filter(({ stem }) => stem).map(({ text }) => text),
  };
}
const LISTS = new Map(
  Object.entries(LIMITS).flatMap(([language, limits]) =>
    KINDS.map((kind) => [`${language} ${kind}`, listOf(limits[kind])] as const),
  ),
);

const barred = ({ whole, stems }: List, word: string): boolean =>
  whole.has(word) || stems.some((stem) => word.startsWith(stem));

/**
 * What is wrong with a ward's own words about its call button; nothing where they may stand.
 *
 * Shape: a language and a text -> one rule a fault, in words for whoever wrote the file.
 * Not: whether it is true, or good to read. A list cannot know every way to say "do not": a second person reads it.
 *
 * @example bellFaults('en', 'Press only at night.') // ['no word that says no, only, …: "only", "night"']
 */
export function bellFaults(language: string, text: string): string[] {
  const limits = Object.hasOwn(LIMITS, language) ? LIMITS[language] : undefined;
  if (!limits) return [`a language with a list of words in content/bell-limits.ts, none for ${language}`];
  const faults: string[] = [];
  if (text !== text.trim() || text.length < SHORTEST || text.length > LONGEST)
    faults.push(`${SHORTEST} to ${LONGEST} letters without loose spaces`);
  // a number is read as a time, a limit or a dose; marks could hide a word from the lists
  if (/[^\p{L}\p{M}\p{Zs}.,:;!'’()،؛–-]/u.test(text))
    faults.push('letters and plain marks of a sentence, no numbers, no question');
  if ([...text].some((sign) => /\p{L}/u.test(sign) && !limits.script.test(sign)))
    faults.push('letters of its own language');
  const words = wordsIn(text);
  for (const kind of KINDS) {
    const list = LISTS.get(`${language} ${kind}`)!;
    const seen = words.filter((word) => formsOf(word, limits.joined).some((one) => barred(list, one)));
    if (seen.length > 0) faults.push(`${RULES[kind]}: ${seen.map((word) => `"${word}"`).join(', ')}`);
  }
  return faults;
}
