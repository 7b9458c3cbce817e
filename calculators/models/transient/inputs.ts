import type { Input, QuantityInput } from '../../core/model.ts';

type Fields = Readonly<Record<string, Input>>;

const length = (name: string, usual: number, more: Partial<QuantityInput> = {}): QuantityInput => ({
  kind: 'quantity',
  name,
  unit: 'm',
  show: 'mm',
  range: [0, 0.06],
  why: 'small castings',
  usual,
  ...more,
});

const made = {
  metal: 'metal',
  mould: 'mould',
  chill: 'chill',
  flask: 'flask',
  gap: 'air gap',
} as const;

const what: Input = { kind: 'choice', name: 'made of', options: made, usual: 'metal' };
const across = { range: [0.001, 0.06] } as const;

const shape: Fields = {
  geometry: {
    kind: 'choice',
    name: 'shape',
    options: {
      plate: 'plate, cooled on both faces',
      cylinder: 'long round bar',
      sphere: 'ball',
      section: 'section of rectangles',
      voxels: 'body of boxes',
    },
    usual: 'plate',
    first: true,
  },
  'half-thickness': length('half the thickness, of a plate', 0.002, {
    range: [0.0002, 0.03],
    first: true,
    group: 'Shape',
  }),
  radius: length('radius, of a bar or ball', 0.004, { range: [0.0002, 0.03], first: true, group: 'Shape' }),
  turned: {
    kind: 'flag',
    name: 'the section is turned about x = 0',
    note: 'Otherwise it goes on for ever across the paper.',
    usual: true,
    group: 'Shape',
  },
  rectangles: {
    kind: 'list',
    name: 'rectangles of the section',
    note: 'Each by its lower left corner; a later one lies over an earlier one.',
    group: 'Shape',
    most: 40,
    item: {
      what,
      x: length('left edge', 0),
      y: length('lower edge', 0),
      width: length('width', 0.004, across),
      height: length('height', 0.008, across),
    },
    usual: [{ what: 'metal', x: 0, y: 0, width: 0.004, height: 0.008 }],
  },
  boxes: {
    kind: 'list',
    name: 'boxes of the body',
    note: 'Each by its nearest lower left corner; a later one lies over an earlier one.',
    group: 'Shape',
    most: 40,
    item: {
      what,
      x: length('left edge', 0),
      y: length('near edge', 0),
      z: length('lower edge', 0),
      width: length('width, along x', 0.006, across),
      depth: length('depth, along y', 0.006, across),
      height: length('height, along z', 0.006, across),
    },
    usual: [{ what: 'metal', x: 0, y: 0, z: 0, width: 0.006, depth: 0.006, height: 0.006 }],
  },
  'mirror.x': {
    kind: 'flag',
    name: 'x = 0 is a plane of symmetry',
    note: 'What is drawn is half of the part. A turned section always ends there.',
    usual: true,
    group: 'Shape',
  },
  'mirror.y': { kind: 'flag', name: 'y = 0 is a plane of symmetry', usual: true, group: 'Shape' },
  'mirror.z': { kind: 'flag', name: 'z = 0 is a plane of symmetry', usual: true, group: 'Shape' },
};

const ofMetal = { kind: 'quantity', group: 'Metal', why: 'the casting metals lie here' } as const;
const metal: Fields = {
  metal: { kind: 'material', role: 'metal', name: 'metal', usual: 'silicon-bronze', first: true },
  'metal.initial': {
    ...ofMetal,
    name: 'metal as it fills the mould',
    unit: 'K',
    show: '°C',
    range: [300, 2000],
    usual: 1366.15,
    from: { input: 'metal', property: 'pour.lowest' },
    first: true,
  },
  'metal.k': {
    ...ofMetal,
    name: 'conductivity of the metal',
    unit: 'W/(m·K)',
    range: [10, 450],
    usual: 55,
    from: { input: 'metal', property: 'conductivity.solid' },
  },
  'metal.k.liquid': {
    ...ofMetal,
    name: 'conductivity of the liquid',
    unit: 'W/(m·K)',
    range: [10, 450],
    note: 'Left open: as the solid.',
  },
  'metal.rho': {
    ...ofMetal,
    name: 'density of the metal as it fills the mould',
    unit: 'kg/m³',
    range: [1500, 22000],
    usual: 7520,
    from: { input: 'metal', property: 'density.liquid' },
    note: 'The cavity holds what liquid weighs. With a feeder that makes up the shrinkage, take the solid’s.',
  },
  'metal.c': {
    ...ofMetal,
    name: 'specific heat of the metal',
    unit: 'J/(kg·K)',
    range: [100, 1300],
    usual: 435,
    from: { input: 'metal', property: 'heat.solid' },
  },
  'metal.c.liquid': {
    ...ofMetal,
    name: 'specific heat of the liquid',
    unit: 'J/(kg·K)',
    range: [100, 1500],
    note: 'Left open: as the solid.',
  },
  'metal.L': {
    ...ofMetal,
    name: 'latent heat',
    unit: 'J/kg',
    show: 'kJ/kg',
    range: [20_000, 600_000],
    usual: 190_000,
    from: { input: 'metal', property: 'latent' },
    note: 'The largest doubt of the metal.',
  },
  'metal.solidus': {
    ...ofMetal,
    name: 'solidus',
    unit: 'K',
    show: '°C',
    range: [400, 1800],
    usual: 1133.15,
    from: { input: 'metal', property: 'solidus' },
  },
  'metal.liquidus': {
    ...ofMetal,
    name: 'liquidus',
    unit: 'K',
    show: '°C',
    range: [400, 1800],
    usual: 1243.15,
    from: { input: 'metal', property: 'liquidus' },
    note: 'Equal to the solidus: it freezes at one temperature.',
  },
  'metal.base': {
    ...ofMetal,
    name: 'melting point of the base metal',
    unit: 'K',
    show: '°C',
    range: [450, 2000],
    note: 'With it the share solid follows the lever rule; left open, it falls evenly over the range.',
  },
};

const ofMould = {
  kind: 'quantity',
  group: 'Mould',
  why: 'the moulds of the workshop, from plaster to steel, lie here',
} as const;
const mould: Fields = {
  mould: { kind: 'material', role: 'mould', name: 'mould', usual: 'dry-silica-sand', first: true },
  'mould.initial': {
    ...ofMould,
    name: 'mould at the pour',
    unit: 'K',
    show: '°C',
    range: [253, 1100],
    usual: 293.15,
    first: true,
  },
  'mould.k': {
    ...ofMould,
    name: 'conductivity of the mould',
    unit: 'W/(m·K)',
    range: [0.1, 150],
    usual: 0.607,
    from: { input: 'mould', property: 'conductivity' },
  },
  'mould.rho': {
    ...ofMould,
    name: 'density of the mould',
    unit: 'kg/m³',
    range: [500, 9000],
    usual: 1500,
    from: { input: 'mould', property: 'density.bulk' },
  },
  'mould.c': {
    ...ofMould,
    name: 'specific heat of the mould',
    unit: 'J/(kg·K)',
    range: [300, 1500],
    usual: 1130,
    from: { input: 'mould', property: 'heat' },
  },
  'mould.rhoc': {
    ...ofMould,
    name: 'heat capacity of a volume of mould',
    unit: 'J/(m³·K)',
    range: [2e5, 5e6],
    note: 'Left open: density times specific heat.',
  },
  h_interface: {
    ...ofMould,
    name: 'interface coefficient',
    unit: 'W/(m²·K)',
    range: [50, 20_000],
    usual: 700,
    from: { input: 'mould', property: 'interface' },
    note: 'The largest doubt of a thin section.',
  },
  'mould.radius': {
    ...ofMould,
    name: 'outside of the mould, from the middle',
    unit: 'm',
    show: 'mm',
    range: [0.001, 0.3],
    note: 'For plate, bar and ball. Left open: so far out that its outside stays cool.',
  },
  'mould.wall': {
    ...ofMould,
    name: 'mould around the part',
    unit: 'm',
    show: 'mm',
    range: [0.002, 0.1],
    note: 'For section and body. Left open: so thick that its outside stays cool.',
  },
};

const ofOthers = { kind: 'quantity', group: 'Chill, flask, gap', why: 'metals and air lie here' } as const;
const stuffOf = (name: keyof typeof made, k: number, rhoc: number, h: number): Fields => ({
  [`${name}.k`]: {
    ...ofOthers,
    name: `conductivity of the ${made[name]}`,
    unit: 'W/(m·K)',
    range: [0.02, 450],
    usual: k,
  },
  [`${name}.rhoc`]: {
    ...ofOthers,
    name: `heat capacity of a volume of ${made[name]}`,
    unit: 'J/(m³·K)',
    range: [300, 5e6],
    usual: rhoc,
  },
  [`${name}.h`]: {
    ...ofOthers,
    name: `interface coefficient of the ${made[name]}`,
    unit: 'W/(m²·K)',
    range: [50, 20_000],
    usual: h,
    note: 'An estimate.',
  },
});
const others: Fields = {
  ...stuffOf('chill', 40, 3.6e6, 2000),
  'chill.initial': {
    ...ofOthers,
    name: 'chill at the pour',
    unit: 'K',
    show: '°C',
    range: [253, 1100],
    usual: 293.15,
  },
  ...stuffOf('flask', 40, 3.6e6, 1000),
  ...stuffOf('gap', 0.1, 1000, 20_000),
};

const outside: Fields = {
  outside: {
    kind: 'choice',
    name: 'outside of the mould',
    options: {
      insulated: 'lets no heat out',
      held: 'held at a temperature',
      air: 'stands in air',
    },
    usual: 'insulated',
    group: 'Outside',
  },
  'outside.temperature': {
    kind: 'quantity',
    name: 'temperature outside',
    unit: 'K',
    show: '°C',
    range: [253, 350],
    why: 'a workshop',
    usual: 293.15,
    group: 'Outside',
  },
  'outside.h': {
    kind: 'quantity',
    name: 'coefficient of the air alone',
    unit: 'W/(m²·K)',
    range: [2, 50],
    why: 'from still air to a fan',
    usual: 8,
    note: 'An estimate; radiation is counted beside it.',
    group: 'Outside',
  },
  'outside.emissivity': {
    kind: 'quantity',
    name: 'emissivity of the outside',
    unit: '1',
    range: [0, 1],
    why: 'a share of the whole',
    usual: 0.9,
    group: 'Outside',
  },
};

const mesh: Fields = {
  cells: {
    kind: 'quantity',
    name: 'cells across',
    note: 'Across the half-thickness or radius; across the thinnest rectangle or box.',
    unit: '1',
    range: [2, 64],
    why: 'fewer say little, more take long',
    usual: 8,
    group: 'Mesh',
  },
  most: {
    kind: 'quantity',
    name: 'most cells in all',
    note: 'Past it the sum is refused, with the spacing that would fit. Allow more when you can wait.',
    unit: '1',
    range: [500, 4000],
    why: 'more take longer than a moment',
    usual: 4000,
    group: 'Mesh',
  },
  until: {
    kind: 'quantity',
    name: 'stop at this time',
    note: 'Left open: when all is solid.',
    unit: 's',
    range: [0.1, 10_000],
    why: 'small castings',
    group: 'Mesh',
  },
};

export const inputs: Fields = { ...shape, ...metal, ...mould, ...others, ...outside, ...mesh };
