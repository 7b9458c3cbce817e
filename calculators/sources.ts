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
  estimate: {
    authors: 'Warm Mould',
    title: 'Estimates made for this course',
    year: '2026',
    where: 'The method stands beside each number',
  },
  'trade-practice': {
    authors: 'Founders and jewellers',
    title: 'Common practice of the trade',
    year: '',
    where: 'Handed down; no single work. Try it on your own bench before you rely on it',
  },
  'makers-data': {
    authors: 'Makers of metals, moulds and instruments',
    title: 'Data sheets',
    year: '',
    where: 'No single one is meant: the sheet of the material in your hand comes first',
  },
  'copper-development': {
    authors: 'Copper Development Association',
    title: 'Data sheets of cast and wrought copper alloys',
    year: '',
    where: 'Copper Development Association, New York',
  },
  'crc-handbook': {
    authors: 'Haynes, W. M. (ed.)',
    title: 'CRC Handbook of Chemistry and Physics',
    year: '2014',
    where: 'CRC Press, 95th ed.',
  },
  janaf: {
    authors: 'Chase, M. W. (ed.)',
    title: 'NIST-JANAF Thermochemical Tables',
    year: '1998',
    where: 'Journal of Physical and Chemical Reference Data, Monograph 9, 4th ed.',
  },
  dinsdale: {
    authors: 'Dinsdale, A. T.',
    title: 'SGTE data for pure elements',
    year: '1991',
    where: 'Calphad 15, 317–425',
    doi: '10.1016/0364-5916(91)90030-N',
  },
  'assael-copper': {
    authors: 'Assael, M. J.; et al.',
    title: 'Reference data for the density and viscosity of liquid copper and liquid tin',
    year: '2010',
    where: 'Journal of Physical and Chemical Reference Data 39, 033105',
    doi: '10.1063/1.3467496',
  },
  'assael-silver': {
    authors: 'Assael, M. J.; et al.',
    title:
      'Reference data for the density and viscosity of liquid antimony, bismuth, lead, nickel and silver',
    year: '2012',
    where: 'High Temperatures – High Pressures 41, 161–184',
  },
  'assael-conductivity': {
    authors: 'Assael, M. J.; et al.',
    title:
      'Reference correlations for the thermal conductivity of liquid copper, gallium, indium, iron, lead, nickel and tin',
    year: '2017',
    where: 'High Temperatures – High Pressures 46, 391–416',
  },
  smithells: {
    authors: 'Brandes, E. A.; Brook, G. B. (eds.)',
    title: 'Smithells Metals Reference Book',
    year: '1992',
    where: 'Butterworth-Heinemann, 7th ed.',
  },
  'campbell-castings': {
    authors: 'Campbell, J.',
    title: 'Castings',
    year: '2003',
    where: 'Butterworth-Heinemann, 2nd ed.',
  },
  'iida-guthrie': {
    authors: 'Iida, T.; Guthrie, R. I. L.',
    title: 'The Physical Properties of Liquid Metals',
    year: '1988',
    where: 'Oxford University Press',
  },
  kalpakjian: {
    authors: 'Kalpakjian, S.; Schmid, S. R.',
    title: 'Manufacturing Engineering and Technology',
    year: '2006',
    where: 'Pearson, 5th ed.',
  },
  'mills-monaghan-keene': {
    authors: 'Mills, K. C.; Monaghan, B. J.; Keene, B. J.',
    title: 'Thermal conductivities of molten metals: Part 1, pure metals',
    year: '1996',
    where: 'International Materials Reviews 41, 209–242',
    doi: '10.1179/imr.1996.41.6.209',
  },
  keene: {
    authors: 'Keene, B. J.',
    title: 'Review of data for the surface tension of pure metals',
    year: '1993',
    where: 'International Materials Reviews 38, 157–192',
    doi: '10.1179/imr.1993.38.4.157',
  },
  'mills-alloys': {
    authors: 'Mills, K. C.',
    title: 'Recommended Values of Thermophysical Properties for Selected Commercial Alloys',
    year: '2002',
    where: 'Woodhead',
  },
  'asm-2': {
    authors: 'ASM International',
    title:
      'ASM Handbook, volume 2: Properties and Selection: Nonferrous Alloys and Special-Purpose Materials',
    year: '1990',
    where: 'ASM International',
  },
  'asm-15': {
    authors: 'ASM International',
    title: 'ASM Handbook, volume 15: Casting',
    year: '1988',
    where: 'ASM International',
  },
  'heine-loper-rosenthal': {
    authors: 'Heine, R. W.; Loper, C. R.; Rosenthal, P. C.',
    title: 'Principles of Metal Casting',
    year: '1967',
    where: 'McGraw-Hill, 2nd ed.',
  },
  'foundrymans-handbook': {
    authors: 'Brown, J. R. (ed.)',
    title: "Foundryman's Handbook",
    year: '1994',
    where: 'Butterworth-Heinemann, 10th ed.',
  },
  'en-12524': {
    authors: 'European Committee for Standardization',
    title: 'EN 12524: Building materials and products. Hygrothermal properties. Tabulated design values',
    year: '2000',
    where: 'CEN',
  },
  'en-12844': {
    authors: 'European Committee for Standardization',
    title: 'EN 12844: Zinc and zinc alloys. Castings. Specifications',
    year: '1998',
    where: 'CEN',
  },
  'en-1982': {
    authors: 'European Committee for Standardization',
    title: 'EN 1982: Copper and copper alloys. Ingots and castings',
    year: '2017',
    where: 'CEN',
  },
  'iso-7490': {
    authors: 'International Organization for Standardization',
    title: 'ISO 7490: Dental gypsum-bonded casting investments',
    year: '2000',
    where: 'ISO',
  },
  'vdi-heat-atlas': {
    authors: 'VDI-Gesellschaft Verfahrenstechnik und Chemieingenieurwesen (ed.)',
    title: 'VDI Heat Atlas',
    year: '2010',
    where: 'Springer, 2nd ed.',
  },
  ashrae: {
    authors: 'ASHRAE',
    title: 'ASHRAE Handbook: Fundamentals',
    year: '2013',
    where: 'American Society of Heating, Refrigerating and Air-Conditioning Engineers',
  },
  massalski: {
    authors: 'Massalski, T. B. (ed.)',
    title: 'Binary Alloy Phase Diagrams',
    year: '1990',
    where: 'ASM International, 2nd ed.',
  },
  westermann: {
    authors: 'Jütz, H.; Scharkus, E.',
    title: 'Westermann Tables for the Metal Trade',
    year: '2006',
    where: 'New Age International, 2nd ed.',
  },
  dooley: {
    authors: 'Dooley, W. H.',
    title: 'Applied Science for Metal Workers',
    year: '1919',
    where: 'Ronald Press',
  },
  'cost-507': {
    authors: 'Ansara, I.; Dinsdale, A. T.; Rand, M. H. (eds.)',
    title: 'COST 507: Thermochemical Database for Light Metal Alloys',
    year: '1998',
    where: 'European Commission, EUR 18499 EN',
  },
  'hayes-ag-cu': {
    authors: 'Hayes, F. H.; Lukas, H. L.; Effenberg, G.; Petzow, G.',
    title: 'A thermodynamic optimisation of the Cu–Ag–Pb system',
    year: '1986',
    where: 'Zeitschrift für Metallkunde 77, 749–754',
  },
  'shim-cu-sn': {
    authors: 'Shim, J.-H.; Oh, C.-S.; Lee, B.-J.; Lee, D. N.',
    title: 'Thermodynamic assessment of the Cu–Sn system',
    year: '1996',
    where: 'Zeitschrift für Metallkunde 87, 205–212',
  },
  'getty-bronze': {
    authors: 'Getty Conservation Institute',
    title: 'Guidelines for the technical study of bronze sculpture',
    year: '',
    where: 'getty.edu/publications/bronze-guidelines',
  },
  'nist-solder': {
    authors: 'National Institute of Standards and Technology',
    title: 'Phase diagrams and computational thermodynamics: solder systems, Ag–Cu',
    year: '',
    where: 'metallurgy.nist.gov/phase/solder',
  },
  'tprc-expansion': {
    authors: 'Touloukian, Y. S.; Kirby, R. K.; Taylor, R. E.; Desai, P. D.',
    title: 'Thermophysical Properties of Matter, volume 12: Thermal Expansion, Metallic Elements and Alloys',
    year: '1975',
    where: 'IFI/Plenum',
  },
  mendeleev: {
    authors: 'Mentel, Ł. M.',
    title: 'mendeleev: a Python resource for properties of chemical elements, ions and isotopes',
    year: '2014',
    where: 'Open-source library, read at a fixed version',
  },
  'open-element-data': {
    authors: 'Contributors to an open-source table of the elements',
    title: 'Periodic table as data, version 2.0.5',
    year: '2023',
    where: 'Open-source package, Apache licence',
  },
  'costa-kenisarin': {
    authors: 'Costa, S. C.; Kenisarin, M.',
    title: 'A review of metallic materials for latent heat thermal energy storage',
    year: '2022',
    where: 'Renewable and Sustainable Energy Reviews 154, 111812',
    doi: '10.1016/j.rser.2021.111812',
  },
  'gypsum-breakdown': {
    authors: 'Matsuya, S.; Yamane, M.',
    title: 'Decomposition of gypsum bonded investments',
    year: '1981',
    where: 'Journal of Dental Research 60, 1418–1423',
  },
  sahin: {
    authors: 'Şahin, H. M.; Kocatepe, K.; Kayıkcı, R.; Akar, N.',
    title:
      'Determination of unidirectional heat transfer coefficient during unsteady-state solidification at metal casting–chill interface',
    year: '2006',
    where: 'Energy Conversion and Management 47, 19–34',
  },
  'clay-graphite-test': {
    authors: 'ATBU Journal of Science, Technology and Education',
    title: 'Potentials of graphite as a material for the production of crucibles',
    year: '',
    where: 'African Journals Online, article 243793, abstract',
  },
  'kell-water': {
    authors: 'Kell, G. S.',
    title: 'Density, thermal expansivity, and compressibility of liquid water from 0° to 150 °C',
    year: '1975',
    where: 'Journal of Chemical and Engineering Data 20, 97–105',
    doi: '10.1021/je60064a005',
  },
  'iapws-95': {
    authors: 'International Association for the Properties of Water and Steam',
    title: 'IAPWS formulation 1995 for ordinary water, and release on surface tension',
    year: '1995',
    where: 'IAPWS',
  },
  'nist-xray': {
    authors: 'Hubbell, J. H.; Seltzer, S. M.',
    title: 'Tables of X-ray mass attenuation coefficients, NISTIR 5632',
    year: '1995',
    where: 'National Institute of Standards and Technology, table 1, densities of the elements',
  },
  'hse-molten-metal': {
    authors: 'Health and Safety Executive',
    title: 'Molten metals: safety topics and safety alerts',
    year: '2021',
    where: 'HSE, hse.gov.uk/moltenmetals (alert dated 25 January 2021)',
  },
  'castings-alert': {
    authors: 'Cast Metals Federation with the Health and Safety Executive',
    title: 'Molten metal explosion alert',
    year: '2021',
    where: 'Cast Metals Federation, 31 March 2021',
  },
  'burns-first-aid': {
    authors: 'British Burn Association',
    title: 'Cool, call and cover: first aid for burns, as given by an NHS burns centre',
    year: '2015',
    where: 'Queen Victoria Hospital NHS Foundation Trust, qvh.nhs.uk (read November 2026)',
  },
  'osha-silica': {
    authors: 'Occupational Safety and Health Administration',
    title: 'Respirable crystalline silica, 29 CFR 1910.1053',
    year: '2016',
    where: 'US Department of Labor (limit read in trade and safety pages, November 2026)',
  },
  'osha-zinc-oxide': {
    authors: 'Occupational Safety and Health Administration',
    title: 'Chemical sampling information: zinc oxide fume',
    year: 'undated',
    where: 'osha.gov, CH_277000 (read November 2026)',
  },
  'osha-carbon-monoxide': {
    authors: 'Occupational Safety and Health Administration',
    title: 'Chemical sampling information: carbon monoxide',
    year: 'undated',
    where: 'osha.gov, CH_225610 (read November 2026)',
  },
  eh40: {
    authors: 'Health and Safety Executive',
    title: 'EH40/2005 Workplace exposure limits',
    year: '2020',
    where: 'HSE, 4th ed.',
  },
  'jewellers-silicosis': {
    authors: 'Murgia, N.; and others',
    title: 'An old threat in a new setting: high prevalence of silicosis among jewelry workers',
    year: '2007',
    where: 'American Journal of Industrial Medicine 50 (8), 577–583',
    doi: '10.1002/ajim.20490',
  },
  'its-90': {
    authors: 'Preston-Thomas, H.',
    title: 'The International Temperature Scale of 1990 (ITS-90)',
    year: '1990',
    where: 'Metrologia 27, 3–10',
    doi: '10.1088/0026-1394/27/1/002',
  },
} as const satisfies Record<string, Source>;

export type SourceKey = keyof typeof sources;
