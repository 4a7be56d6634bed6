/**
 * Where the signs and rules come from. `common-practice` is a fact of the trade without a published source;
 * `our-proposal` is a cautious proposal of this project that the ward decides on.
 */
export interface SourceRow {
  /** How a reader finds it; kept in the source's own language. */
  citation: string;
  /** `read` at its source, `quoted` in another publication, `memory` not verified. */
  status: 'read' | 'quoted' | 'memory';
}

export const SOURCES = {
  'boast-10': {
    citation:
      'British Orthopaedic Association, BOAST 10: Diagnosis and management of compartment syndrome of the limbs, July 2014',
    status: 'read',
  },
  'bae-2001': {
    citation:
      'Bae DS, Kadiyala RK, Waters PM. Acute compartment syndrome in children. J Pediatr Orthop 2001;21(5):680–688',
    status: 'read',
  },
  'noonan-2010': {
    citation:
      'Noonan KJ, McCarthy JJ. Compartment syndromes in the pediatric patient. J Pediatr Orthop 2010;30(2 Suppl):S96–S101',
    status: 'read',
  },
  'schn-2014': {
    citation:
      "Sydney Children's Hospitals Network, Practice Guideline: Neurovascular assessment, 0/C/14:9096-01:00, 2014",
    status: 'read',
  },
  'who-2003': {
    citation:
      'World Health Organization, Surgical Care at the District Hospital, 2003, chapter 17.1, skin traction',
    status: 'read',
  },
  'wong-traction': {
    citation: "Wong's Essentials of Pediatric Nursing, box on traction care",
    status: 'read',
  },
  'birch-2024': {
    citation: 'Birch et al. Skin traction and its complications. Injury, 2024',
    status: 'memory',
  },
  'color-awareness': {
    citation:
      'Color awareness, chapter 3, Indiana University Press (open textbook): skin colour change in dark skin',
    status: 'read',
  },
  md0531: {
    citation: 'United States Army, Nursing course MD0531, lesson 1-4: places to see colour change',
    status: 'read',
  },
  'rch-neurovascular': {
    citation: "Royal Children's Hospital Melbourne, nursing guideline: Neurovascular observations",
    status: 'read',
  },
  'parent-worry': {
    citation: 'Published work that a parent’s worry is a true signal of a child getting worse',
    status: 'memory',
  },
  'who-screens-2019': {
    citation:
      'World Health Organization, Guidelines on physical activity, sedentary behaviour and sleep for children under 5 years of age, 2019, ISBN 978-92-4-155053-6: no screen time at one, at most one hour from two to four',
    status: 'quoted',
  },
  'aasm-sleep-2016': {
    citation:
      'Paruthi S et al. Recommended amount of sleep for pediatric populations: a consensus statement of the American Academy of Sleep Medicine. J Clin Sleep Med 2016;12(6):785–786, doi 10.5664/jcsm.5866',
    status: 'read',
  },
} as const satisfies Record<string, SourceRow>;

export type SourceId = keyof typeof SOURCES;
/** Where one sign or rule comes from. */
export type Basis = SourceId | 'common-practice' | 'our-proposal';
