// Which modules share a script. A file costs a phone more than the few bytes in it, so what is loaded together anyway
// is one file; what only some pages need stays out, or they would carry what they never use. So does what is imported
// when it is needed, if it has styles: SvelteKit would then leave the styles of its file out of the pages as they lie on
// the server (tests/e2e/without-script.spec.ts).

const files = (folder, names) => names.split(' ').map((name) => `/src/${folder}/${name}.`);

/** Modules of every first page. Notes, rules, the drawing and codes are not among them: they come when needed. */
const FIRST = new RegExp(
  [
    'node_modules/(?!(uqr|qr|idb-keyval|minisearch)/)|preload-helper|rolldown/runtime',
    'src/i18n/(?!called|word-files|format|find|since)|src/content/(parts|second-steps)|src/domain/(units|clock/night|bed-card/holds)',
    'src/ui/(BellBar|Ribbon|paths|child-spec)|src/routes/_live/(PageFoot|WaitingReports)',
    'src/scene/(Thing|TractionScene|spec)|src/state/(family|now)',
    'src/device/(preferences|clock|has-notes|note-place|came-back)',
    // the styles of both layouts, and of what one of them loads late and two pages at once
    'src/styles/index|src/(routes/(\\[locale=locale\\]/)?\\+layout|ui/LongPress)\\.svelte\\?.*style',
  ].join('|'),
);

/** Later files, by the beginnings of their modules' paths; a module belongs to the first that names or needs it. */
export const TOGETHER = {
  asked: [...files('content', 'signs'), ...files('domain/signs', 'ids'), ...files('ui', 'sign-words')],
  ward: [
    ...files('content', 'ward'),
    ...files('device', 'places result'),
    ...files('domain/clock', 'calendar local'),
    ...files('domain/notes', 'kinds'),
    ...files('i18n', 'format'),
    ...files('state', 'bedside'),
  ],
  fields: [
    ...files('routes/_live', 'NotWritten'),
    ...files('ui', 'Chips ChipSet ClockBehind Fold OutlineMark Picker Whose'),
  ],
  notes: [
    '/node_modules/idb-keyval/',
    ...files('device', 'in-time note-copy note-store note-table'),
    ...files(
      'domain/notes',
      'clocks entries open order pairs plain repeats report sightings sleep strong summarise',
    ),
    ...files('domain/signs', 'assess over-time rules urgency'),
    ...files('state', 'notes'),
  ],
  reports: files('ui', 'Reasons SecondStep UrgencyBanner reason-words'),
  card: [
    ...files('device', 'card-place json-place'),
    ...files('domain/bed-card', 'card code letters limits version-1'),
    ...files('domain/notes', 'check-sum coder'),
    ...files('state', 'card'),
  ],
  said: files('ui', 'SayBlock say'),
  signs: [
    ...files('content', 'sign-pictures'),
    ...files('device', 'address'),
    ...files('ui', 'PicturePair sign-specs'),
  ],
  paper: [
    ...files('routes/_live', 'PaperLanguages SecondPicker second-language'),
    ...files('ui', 'SheetDraft TwoLanguages'),
  ],
  written: [...files('domain/notes', 'waiting'), ...files('ui', 'note-words')],
  day: [
    ...files('content', 'ideas'),
    ...files('domain/day', 'book kept-day modes tiles wall'),
    ...files('scene', 'PlayPicture'),
    ...files('state', 'play'),
    ...files('ui', 'TimeField plan-words play-words'),
  ],
  childsDay: [
    ...files('domain/day', 'grown-up medicine'),
    ...files('routes/_live', 'DayDark DayKeys DaySpeak'),
    ...files('scene', 'DayPicture'),
    ...files('state', 'day'),
    ...files('ui', 'DayEdge TilePicture day-words'),
  ],
  play: [
    ...files('domain/play-bed', 'answers clash'),
    ...files('routes/_live', 'IdeaAnswers NothingByMouth PlanOutgrown PlayAlerts WhichBed'),
    ...files('ui', 'BedShape IdeaCard IdeaDetails bed-words'),
  ],
  planning: [
    ...files('domain/play', 'impossible model vet'),
    ...files('domain/play-bed', 'choose offer open-moments'),
    ...files('routes/_live', 'CameUp PlanTaken'),
    ...files('ui', 'OpenMoment'),
  ],
};

/** The groups as Rolldown wants them: the first has precedence. */
export const groups = [
  { name: 'first', test: FIRST },
  ...Object.entries(TOGETHER).map(([name, paths]) => ({
    name,
    test: (id) => paths.some((path) => id.includes(path)),
  })),
].map((group, at, all) => ({ ...group, priority: all.length - at }));
