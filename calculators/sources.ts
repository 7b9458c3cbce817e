/** The one bibliography. A key of this object is a type, so a citation to a work that is not listed does not compile. */
export interface Source {
  readonly authors: string;
  readonly title: string;
  readonly year: string;
  /** Publisher, journal with volume and pages, or body that issues it. */
  readonly where: string;
  readonly doi?: string;
}

export const sources = {
  'ghosh-mallik': {
    authors: 'Ghosh, A.; Mallik, A. K.',
    title: 'Manufacturing Science',
    year: '2010',
    where: 'Affiliated East-West Press, 2nd ed., ch. 2 (worked examples read in an open textbook companion)',
  },
  groover: {
    authors: 'Groover, M. P.',
    title: 'Fundamentals of Modern Manufacturing',
    year: '2010',
    where: 'Wiley, 4th ed., ch. 10 and 11',
  },
  campbell: {
    authors: 'Campbell, J.',
    title: 'Complete Casting Handbook',
    year: '2015',
    where: 'Butterworth-Heinemann, 2nd ed.',
  },
  flemings: { authors: 'Flemings, M. C.', title: 'Solidification Processing', year: '1974', where: 'McGraw-Hill' },
  'poirier-geiger': {
    authors: 'Poirier, D. R.; Geiger, G. H.',
    title: 'Transport Phenomena in Materials Processing',
    year: '1994',
    where: 'TMS',
  },
  incropera: {
    authors: 'Incropera, F. P.; DeWitt, D. P.; Bergman, T. L.; Lavine, A. S.',
    title: 'Fundamentals of Heat and Mass Transfer',
    year: '2007',
    where: 'Wiley, 6th ed.',
  },
  cengel: {
    authors: 'Çengel, Y. A.',
    title: 'Heat Transfer: A Practical Approach',
    year: '2003',
    where: 'McGraw-Hill, 2nd ed. (worked examples read in an open textbook companion)',
  },
  'carslaw-jaeger': {
    authors: 'Carslaw, H. S.; Jaeger, J. C.',
    title: 'Conduction of Heat in Solids',
    year: '1959',
    where: 'Oxford University Press, 2nd ed.',
  },
  'nist-sp811': {
    authors: 'Thompson, A.; Taylor, B. N.',
    title: 'Guide for the Use of the International System of Units (SI), NIST Special Publication 811',
    year: '2008',
    where: 'National Institute of Standards and Technology, Appendix B',
  },
  'iso-2533': {
    authors: 'International Organization for Standardization',
    title: 'ISO 2533: Standard Atmosphere',
    year: '1975',
    where: 'ISO',
  },
  'rao-manufacturing': {
    authors: 'Rao, P. N.',
    title: 'Manufacturing Technology: Foundry, Forming and Welding',
    year: '2013',
    where: 'McGraw-Hill Education, 4th ed.',
  },
  esposito: { authors: 'Esposito, A.', title: 'Fluid Power with Applications', year: '2009', where: 'Pearson, 7th ed.' },
  'timoshenko-plates': {
    authors: 'Timoshenko, S.; Woinowsky-Krieger, S.',
    title: 'Theory of Plates and Shells',
    year: '1959',
    where: 'McGraw-Hill, 2nd ed.',
  },
  'young-budynas': {
    authors: 'Young, W. C.; Budynas, R. G.',
    title: "Roark's Formulas for Stress and Strain",
    year: '2002',
    where: 'McGraw-Hill, 7th ed.',
  },
} as const satisfies Record<string, Source>;

export type SourceKey = keyof typeof sources;
