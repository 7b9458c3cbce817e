import type { Citation } from './core/formula.ts';
import type { Quantity } from './core/units.ts';

/** Who sets the limit: law in the United States, Great Britain and the European Union, advice from NIOSH. */
export type Setter = 'US' | 'US advice' | 'GB' | 'EU';

export type LimitKind = 'eight hours' | 'fifteen minutes' | 'ceiling' | 'action level' | 'danger to life';

export interface SafetyLimit {
  readonly agent: string;
  /** Where a small caster meets it. */
  readonly from: string;
  readonly setBy: Setter;
  readonly kind: LimitKind;
  /** In the air one breathes; ppm by volume. */
  readonly value: Quantity;
  readonly source: Citation;
  /** Day the limit was read at its source; absent when it is recalled, and then it must be looked up. */
  readonly read?: string;
  readonly note?: string;
}

/** Limits change. After this many days a page says that the figure wants checking. */
export const daysLimitsStayFresh = 365;

const day = '2026-11-25';
const silica = 'quartz and cristobalite in sand, investment and parting dust';
const zinc = 'brass, gunmetal, zinc additions';
const copper = 'every copper alloy held too hot';
const lead = 'leaded gunmetal, free-cutting brass, old fittings';
const carbonMonoxide = 'charcoal, graphite, rich flames, wax and oil burning out';
const sulphurDioxide = 'gypsum investment heated too far';
const cadmium = 'plated scrap, old silver solder';
const beryllium = 'beryllium-copper springs and tools';

/**
 * Limits for what a small caster breathes, by country, each with its source. They are shown to teach and are
 * no substitute for the law of the place: a page that shows one shows its source and its date beside it.
 */
export const safetyLimits: readonly SafetyLimit[] = [
  {
    agent: 'respirable crystalline silica',
    from: silica,
    setBy: 'US',
    kind: 'eight hours',
    value: '50 µg/m³',
    source: { key: 'osha-silica', at: '§1910.1053(c)', how: 'read' },
    read: day,
  },
  {
    agent: 'respirable crystalline silica',
    from: silica,
    setBy: 'US',
    kind: 'action level',
    value: '25 µg/m³',
    source: { key: 'osha-silica', at: '§1910.1053(b)', how: 'read' },
    read: day,
  },
  {
    agent: 'respirable crystalline silica',
    from: silica,
    setBy: 'GB',
    kind: 'eight hours',
    value: '0.1 mg/m³',
    source: {
      key: 'eh40',
      at: 'table 1, silica, respirable crystalline; read in a trade briefing',
      how: 'read',
    },
    read: day,
  },
  {
    agent: 'respirable crystalline silica',
    from: silica,
    setBy: 'EU',
    kind: 'eight hours',
    value: '0.1 mg/m³',
    source: { key: 'eu-silica', at: 'annex III', how: 'memory' },
  },
  {
    agent: 'zinc oxide fume',
    from: zinc,
    setBy: 'US',
    kind: 'eight hours',
    value: '5 mg/m³',
    source: { key: 'osha-zinc-oxide', at: 'exposure limits', how: 'read' },
    read: day,
    note: 'Fume fever has been seen at and below this.',
  },
  {
    agent: 'zinc oxide fume',
    from: zinc,
    setBy: 'US advice',
    kind: 'fifteen minutes',
    value: '10 mg/m³',
    source: { key: 'osha-zinc-oxide', at: 'exposure limits, NIOSH', how: 'read' },
    read: day,
  },
  {
    agent: 'zinc oxide fume',
    from: zinc,
    setBy: 'US advice',
    kind: 'danger to life',
    value: '500 mg/m³',
    source: { key: 'niosh-guide', at: 'zinc oxide', how: 'memory' },
  },
  {
    agent: 'copper fume',
    from: copper,
    setBy: 'US',
    kind: 'eight hours',
    value: '0.1 mg/m³',
    source: { key: 'niosh-copper-fume', at: 'OSHA limit', how: 'read' },
    read: day,
  },
  {
    agent: 'copper fume',
    from: copper,
    setBy: 'GB',
    kind: 'eight hours',
    value: '0.2 mg/m³',
    source: { key: 'eh40', at: 'table 1, copper, fume', how: 'memory' },
  },
  {
    agent: 'lead',
    from: lead,
    setBy: 'US',
    kind: 'eight hours',
    value: '50 µg/m³',
    source: { key: 'osha-lead', at: '§1910.1025(c)', how: 'read' },
    read: day,
  },
  {
    agent: 'lead',
    from: lead,
    setBy: 'US',
    kind: 'action level',
    value: '30 µg/m³',
    source: { key: 'osha-lead', at: '§1910.1025(b)', how: 'memory' },
  },
  {
    agent: 'lead',
    from: lead,
    setBy: 'GB',
    kind: 'eight hours',
    value: '0.15 mg/m³',
    source: { key: 'gb-lead', at: 'occupational exposure limit', how: 'read' },
    read: day,
    note: 'Under review. Blood lead counts as well; under-18s and women who may bear children have lower levels.',
  },
  {
    agent: 'lead',
    from: lead,
    setBy: 'EU',
    kind: 'eight hours',
    value: '0.03 mg/m³',
    source: { key: 'eu-lead', at: 'annex III', how: 'read' },
    read: day,
    note: 'Member states carry it into their own law.',
  },
  {
    agent: 'carbon monoxide',
    from: carbonMonoxide,
    setBy: 'US',
    kind: 'eight hours',
    value: '50 ppm',
    source: { key: 'osha-carbon-monoxide', at: 'exposure limits', how: 'read' },
    read: day,
  },
  {
    agent: 'carbon monoxide',
    from: carbonMonoxide,
    setBy: 'US advice',
    kind: 'eight hours',
    value: '35 ppm',
    source: { key: 'osha-carbon-monoxide', at: 'exposure limits, NIOSH', how: 'read' },
    read: day,
  },
  {
    agent: 'carbon monoxide',
    from: carbonMonoxide,
    setBy: 'US advice',
    kind: 'ceiling',
    value: '200 ppm',
    source: { key: 'osha-carbon-monoxide', at: 'exposure limits, NIOSH', how: 'read' },
    read: day,
  },
  {
    agent: 'carbon monoxide',
    from: carbonMonoxide,
    setBy: 'US advice',
    kind: 'danger to life',
    value: '1200 ppm',
    source: { key: 'niosh-guide', at: 'carbon monoxide', how: 'memory' },
  },
  {
    agent: 'carbon monoxide',
    from: carbonMonoxide,
    setBy: 'GB',
    kind: 'eight hours',
    value: '20 ppm',
    source: { key: 'eh40', at: 'table 1, carbon monoxide; read in a data set of limits', how: 'read' },
    read: day,
  },
  {
    agent: 'carbon monoxide',
    from: carbonMonoxide,
    setBy: 'GB',
    kind: 'fifteen minutes',
    value: '100 ppm',
    source: { key: 'eh40', at: 'table 1, carbon monoxide', how: 'memory' },
  },
  {
    agent: 'carbon monoxide',
    from: carbonMonoxide,
    setBy: 'EU',
    kind: 'eight hours',
    value: '20 ppm',
    source: { key: 'eu-indicative', at: 'annex, carbon monoxide', how: 'memory' },
  },
  {
    agent: 'sulphur dioxide',
    from: sulphurDioxide,
    setBy: 'US',
    kind: 'eight hours',
    value: '5 ppm',
    source: { key: 'osha-sulphur-dioxide', at: 'OSHA limit', how: 'read' },
    read: day,
  },
  {
    agent: 'sulphur dioxide',
    from: sulphurDioxide,
    setBy: 'US advice',
    kind: 'fifteen minutes',
    value: '5 ppm',
    source: { key: 'osha-sulphur-dioxide', at: 'NIOSH limits', how: 'read' },
    read: day,
  },
  {
    agent: 'sulphur dioxide',
    from: sulphurDioxide,
    setBy: 'GB',
    kind: 'eight hours',
    value: '0.5 ppm',
    source: { key: 'eh40', at: 'table 1, sulphur dioxide', how: 'memory' },
  },
  {
    agent: 'sulphur dioxide',
    from: sulphurDioxide,
    setBy: 'EU',
    kind: 'eight hours',
    value: '0.5 ppm',
    source: { key: 'eu-indicative', at: 'annex, sulphur dioxide', how: 'memory' },
  },
  {
    agent: 'cadmium',
    from: cadmium,
    setBy: 'US',
    kind: 'eight hours',
    value: '5 µg/m³',
    source: { key: 'osha-cadmium', at: '§1910.1027(c)', how: 'read' },
    read: day,
    note: 'Never melt what may hold it.',
  },
  {
    agent: 'cadmium',
    from: cadmium,
    setBy: 'EU',
    kind: 'eight hours',
    value: '1 µg/m³',
    source: { key: 'eu-carcinogens', at: 'annex III, with 4 µg/m³ until 11 July 2027', how: 'memory' },
  },
  {
    agent: 'beryllium',
    from: beryllium,
    setBy: 'US',
    kind: 'eight hours',
    value: '0.2 µg/m³',
    source: { key: 'osha-beryllium', at: '§1910.1024(c)', how: 'read' },
    read: day,
    note: 'Never melt, grind or sand it.',
  },
  {
    agent: 'beryllium',
    from: beryllium,
    setBy: 'EU',
    kind: 'eight hours',
    value: '0.2 µg/m³',
    source: { key: 'eu-carcinogens', at: 'annex III', how: 'memory' },
  },
  {
    agent: 'silver, metal and fume',
    from: 'silver held too hot',
    setBy: 'US',
    kind: 'eight hours',
    value: '0.01 mg/m³',
    source: { key: 'osha-1910-1000', at: 'table Z-1', how: 'memory' },
  },
  {
    agent: 'tin, inorganic',
    from: 'bronze and pewter',
    setBy: 'US',
    kind: 'eight hours',
    value: '2 mg/m³',
    source: { key: 'osha-1910-1000', at: 'table Z-1', how: 'memory' },
  },
  {
    agent: 'acrolein',
    from: 'smoke of wax and oil',
    setBy: 'US',
    kind: 'eight hours',
    value: '0.1 ppm',
    source: { key: 'osha-1910-1000', at: 'table Z-1', how: 'memory' },
  },
  {
    agent: 'acrolein',
    from: 'smoke of wax and oil',
    setBy: 'US advice',
    kind: 'danger to life',
    value: '2 ppm',
    source: { key: 'niosh-guide', at: 'acrolein', how: 'memory' },
  },
];
