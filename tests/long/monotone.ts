/** More of this gives more (+) or less (−) of what the formula is usually solved for, and why. */
export type Fact = readonly [symbol: string, sense: '+' | '-', why: string, when?: string];

/**
 * What physics or plain counting says of each formula before any equation is read. The sweep holds the
 * formula to it at pairs of points that differ in that one symbol.
 */
export const facts: Readonly<Record<string, readonly Fact[]>> = {
  'charge/crucible-fit': [
    ['rho_l', '+', 'a denser liquid weighs more in the same bowl'],
    ['f', '+', 'a fuller crucible holds more'],
  ],
  'charge/deoxidiser': [
    ['x', '+', 'more to take out of the melt takes more master alloy'],
    ['P', '-', 'a richer master alloy is needed less'],
    ['r', '-', 'what is recovered better is needed less'],
  ],
  'charge/dilute': [['m', '+', 'a larger melt takes more metal to thin']],
  'charge/mass-from-pattern': [
    ['rho_m', '+', 'a denser metal fills the same room with more'],
    ['rho_p', '-', 'a denser pattern of the same mass is smaller'],
    ['s', '-', 'a pattern made large leaves a smaller casting'],
  ],
  'charge/mass-from-volume': [
    ['rho', '+', 'denser metal weighs more'],
    ['V', '+', 'more of it weighs more'],
  ],
  'charge/total': [
    ['m_feeder', '+', 'whatever is poured with the part is melted too'],
    ['w', '+', 'what is lost in melting is put in first'],
  ],
  'charge/volume-by-immersion': [
    ['m_w', '-', 'what loses less weight in water moves less water aside'],
    ['rho_w', '-', 'denser water lifts as much with less of it'],
  ],
  'charge/yield': [['m', '-', 'the same part of a larger pour is a smaller share']],
  'feeding/button': [
    ['H', '+', 'a deeper button holds more heat for its skin'],
    ['T_m', '+', 'a warmer mould takes heat more slowly'],
    ['b', '-', 'a mould that takes heat faster freezes it sooner'],
  ],
  'feeding/chill': [['A_c', '-', 'more chilled skin takes heat faster: the body counts as thinner']],
  'feeding/chill-mass': [
    ['L', '+', 'more heat to take needs more chill'],
    ['T_2', '-', 'a chill that may get hotter takes more heat a gram'],
  ],
  'feeding/demand': [['beta', '+', 'metal that shrinks more on freezing wants more']],
  'feeding/distance': [['T', '+', 'a thicker wall stays open farther']],
  'feeding/distance-bar': [['T', '+', 'a thicker bar stays open farther']],
  'feeding/feeder-by-volume': [['beta', '+', 'what shrinks more needs a larger feeder']],
  'feeding/feeder-size': [['M', '+', 'a slower part needs a slower feeder']],
  'feeding/feeder-volume': [['H', '+', 'a taller cylinder holds more']],
  'feeding/freezing-ratio': [['y', '-', 'a feeder with more to give need not freeze so much later']],
  'feeding/gradient': [
    ['dT', '+', 'a greater difference over the same length is steeper'],
    ['x', '-', 'the same difference over more length is flatter'],
  ],
  'feeding/junction': [['t', '+', 'thicker arms hold a larger ball where they meet']],
  'feeding/junction-corner': [['t', '+', 'thicker arms hold a larger ball where they meet']],
  'feeding/junction-tee': [
    ['s', '+', 'a thicker stem makes a heavier junction'],
    ['t', '+', 'a thicker bar makes a heavier junction', 's <= 2 * t'],
  ],
  'feeding/modulus-chain': [['M_1', '+', 'the next in the chain outlasts the one before']],
  'feeding/neck': [['M', '+', 'a slower part needs a wider neck']],
  'feeding/none': [['V', '+', 'the hole that is left grows with the part']],
  'feeding/volume-rule': [
    ['e', '-', 'a feeder that gives more of itself may be smaller'],
    ['beta', '+', 'what shrinks more needs more'],
  ],
  'filling/back-pressure': [
    ['Q', '+', 'pushing more gas through the wall takes more pressure'],
    ['K', '-', 'an open mould lets it through more easily'],
  ],
  'filling/choke': [
    ['t', '-', 'more time needs less opening'],
    ['h', '-', 'more head drives more through the same opening'],
  ],
  'filling/corner-radius': [
    ['gamma', '+', 'a stronger skin stays rounder'],
    ['h', '-', 'more pressure presses it into the corner'],
    ['p_gas', '+', 'gas in the corner holds it back'],
  ],
  'filling/edge-radius': [
    ['gamma', '+', 'a stronger skin stays rounder'],
    ['dp', '-', 'more pressure presses it into the edge'],
  ],
  'filling/effective-head': [['h', '+', 'a higher sprue is more head']],
  'filling/entry-head': [['dp', '-', 'what suction does, head need not do']],
  'filling/entry-pressure': [['theta', '+', 'a metal that wets less is kept out more']],
  'filling/entry-pressure-round': [['theta', '+', 'a metal that wets less is kept out more']],
  'filling/fall-speed': [['h', '+', 'what falls farther arrives faster']],
  'filling/fill-time': [
    ['l', '+', 'a longer way takes longer'],
    ['v', '-', 'a faster stream takes less'],
  ],
  'filling/fill-time-bottom': [
    ['h_m', '+', 'a taller mould takes longer to rise in'],
    ['A', '-', 'a wider gate fills sooner'],
    ['h_t', '-', 'more head above fills sooner'],
  ],
  'filling/fill-time-top': [
    ['V', '+', 'more to fill takes longer'],
    ['h', '-', 'more head fills sooner'],
  ],
  'filling/flow-length': [
    ['v', '+', 'a faster stream gets farther before it stops'],
    ['M', '+', 'a thicker stream carries more heat for its skin'],
    ['h', '-', 'a better contact takes the heat sooner'],
    ['T_m', '+', 'a warmer mould takes the heat more slowly'],
  ],
  'filling/flow-length-sand': [
    ['M', '+', 'a thicker stream carries more heat for its skin'],
    ['T_m', '+', 'a warmer mould takes the heat more slowly'],
  ],
  'filling/flow-time': [
    ['M', '+', 'a thicker stream carries more heat for its skin'],
    ['dT', '+', 'superheat goes before any of it freezes'],
    ['b', '-', 'a mould that takes heat faster stops it sooner'],
    ['h', '-', 'a better contact stops it sooner'],
    ['T_m', '+', 'a warmer mould stops it later'],
  ],
  'filling/flow-time-interface': [
    ['M', '+', 'a thicker stream carries more heat for its skin'],
    ['h', '-', 'a better contact stops it sooner'],
    ['T_m', '+', 'a warmer mould stops it later'],
  ],
  'filling/gate-speed': [['gamma', '+', 'a stronger skin holds together at a higher speed']],
  'filling/ladle-empty': [
    ['d', '-', 'a wider hole empties it sooner'],
    ['h', '+', 'more in it takes longer'],
  ],
  'filling/losses': [
    ['K', '-', 'every bend costs speed'],
    ['l', '-', 'a longer runner costs speed'],
  ],
  'filling/mass-flow': [['A', '+', 'a wider gate lets more through']],
  'filling/metal-loss': [
    ['t', '+', 'more time in the air cools more'],
    ['epsilon', '+', 'a duller surface radiates more'],
    ['m', '-', 'more metal cools less for the same loss'],
  ],
  'filling/pour-rate': [['t', '-', 'a slower pour is a smaller stream']],
  'filling/preheat-needed': [
    ['t', '+', 'a longer way asks for a warmer mould'],
    ['M', '-', 'a thicker wall asks for less'],
    ['dT', '-', 'hotter metal asks for less'],
  ],
  'filling/reynolds': [['mu', '-', 'a thicker liquid swirls less']],
  'filling/run-loss': [
    ['l', '-', 'it arrives cooler from farther away'],
    ['v', '+', 'it arrives hotter when it runs faster'],
    ['T_m', '+', 'a warmer wall takes less'],
  ],
  'filling/section-speed': [['n', '-', 'more ways share the same stream']],
  'filling/sprue-taper': [['h_2', '-', 'the stream is thinner where it has fallen farther']],
  'filling/velocity': [
    ['h', '+', 'more head drives it faster'],
    ['dp', '+', 'more pressure drives it faster'],
    ['p_cap', '-', 'what resists at the mouth is taken off'],
  ],
  'filling/volume-flow': [['h', '+', 'more head drives more through']],
  'filling/weber': [
    ['v', '+', 'a faster stream breaks its skin'],
    ['gamma', '-', 'a stronger skin holds'],
  ],
  'freezing/biot': [['k', '-', 'a good conductor evens itself out']],
  'freezing/contact-temperature': [
    ['T_1', '+', 'between two bodies, a hotter one makes the meeting hotter'],
    ['T_2', '+', 'between two bodies, a hotter one makes the meeting hotter'],
  ],
  'freezing/cooling-after': [
    ['T_2', '-', 'to cool less takes less time'],
    ['h', '-', 'more air takes heat faster'],
    ['M', '+', 'a thicker body cools more slowly'],
  ],
  'freezing/curvature': [['R', '-', 'a flatter face spreads its heat less']],
  'freezing/fourier': [
    ['t', '+', 'heat gets farther in more time'],
    ['a', '-', 'and through a thinner body sooner'],
  ],
  'freezing/front-root': [
    ['L', '-', 'more latent heat holds the front back'],
    ['T_m', '-', 'a warmer mould holds the front back'],
  ],
  'freezing/front-root-held': [
    ['L', '-', 'more latent heat holds the front back'],
    ['T_0', '-', 'a warmer face holds the front back'],
  ],
  'freezing/front-time': [
    ['s', '+', 'a thicker skin takes longer to grow'],
    ['z', '-', 'a faster front takes less time'],
  ],
  'freezing/heat-balance': [
    ['T_m', '+', 'a warmer mould ends warmer'],
    ['m', '+', 'more metal in the same mould ends hotter'],
    ['T_p', '+', 'hotter metal ends hotter'],
  ],
  'freezing/heat-diffusivity': [['k', '+', 'a better conductor takes heat faster']],
  'freezing/modulus': [['A', '-', 'more skin cools the same body sooner']],
  'freezing/mould-constant': [['b', '-', 'a mould that takes heat faster freezes it sooner']],
  'freezing/mould-mass-ratio': [
    ['T_e', '-', 'a mould that may get hotter need not be so heavy'],
    ['L', '+', 'more heat to take needs more mould'],
    ['T_m', '+', 'a warm mould has less room for heat'],
  ],
  'freezing/mould-temperature': [
    ['T_s', '+', 'a hotter face makes it hotter inside'],
    ['T_i', '+', 'a mould that starts warmer stays warmer'],
  ],
  'freezing/thermal-diffusivity': [['rho', '-', 'more to warm in the same room warms more slowly']],
  'freezing/time-both': [
    ['M', '+', 'a thicker body freezes later'],
    ['h', '-', 'a better contact freezes it sooner'],
    ['b', '-', 'a mould that takes heat faster freezes it sooner'],
    ['T_m', '+', 'a warmer mould freezes it later'],
    ['L', '+', 'more latent heat takes longer to leave'],
  ],
  'freezing/time-both-curved': [
    ['M', '+', 'a thicker body freezes later'],
    ['h_R', '-', 'a mould that spreads the heat outwards takes it faster'],
    ['T_m', '+', 'a warmer mould freezes it later'],
  ],
  'freezing/time-curved': [
    ['M', '+', 'a thicker body freezes later'],
    ['n', '-', 'a rounder body spreads its heat faster'],
    ['R', '+', 'a flatter face spreads its heat less'],
  ],
  'freezing/time-die': [
    ['d', '+', 'a thicker wall freezes later'],
    ['h', '-', 'a better contact freezes it sooner'],
  ],
  'freezing/time-interface': [
    ['M', '+', 'a thicker body freezes later'],
    ['h', '-', 'a better contact freezes it sooner'],
  ],
  'freezing/time-rule': [['M', '+', 'a thicker body freezes later']],
  'freezing/time-sand': [
    ['M', '+', 'a thicker body freezes later'],
    ['b', '-', 'a mould that takes heat faster freezes it sooner'],
    ['T_m', '+', 'a warmer mould freezes it later'],
    ['dT', '+', 'superheat must leave too'],
  ],
  'inspection/density': [['m_w', '+', 'what loses less in water is denser']],
  'inspection/porosity': [['rho', '-', 'what is lighter than it should be has more holes']],
  'inspection/water-density': [['T', '-', 'water thins as it warms from 5 °C on']],
  'investment/vapour-pressure': [['T', '+', 'warmer water evaporates harder']],
  'melting/energy': [
    ['T_p', '+', 'hotter metal has taken more heat'],
    ['m_k', '+', 'a heavier crucible is heated too', 'T_p > T_0'],
  ],
  'melting/fuel': [['eta', '-', 'a better furnace burns less']],
  'melting/gas': [['p', '+', 'more gas above dissolves more']],
  'melting/pour-window': [
    ['eps', '-', 'a brighter surface radiates less and so has longer'],
    ['T_l', '-', 'metal that may get cooler has longer'],
    ['m', '+', 'more metal behind the same surface holds more heat'],
  ],
  'melting/surface-loss': [
    ['T', '+', 'hotter metal loses more'],
    ['eps', '+', 'a duller surface loses more', 'T > T_a'],
  ],
  'melting/time': [['P', '-', 'more power melts sooner']],
  'pattern/allowance-chain': [['s_2', '+', 'each step that shrinks asks for a larger start']],
  'pattern/contraction': [['s', '+', 'metal that shrinks more asks for a larger pattern']],
  'pattern/draft': [['theta', '+', 'a steeper slope leans out farther']],
  'safety/blow-back': [
    ['p_gas', '+', 'more gas throws it higher'],
    ['h', '-', 'more head holds it down'],
  ],
  'safety/burnout-vapour': [['V', '+', 'a larger kiln holds more vapour at the same share']],
  'safety/dilution': [
    ['G', '+', 'more given off is more in the air'],
    ['C_0', '+', 'air that starts worse stays worse'],
  ],
  'safety/dilution-air': [
    ['C', '-', 'a higher limit needs less air'],
    ['C_in', '+', 'air that comes in dirty must come in faster'],
  ],
  'safety/dust': [['C_1', '+', 'more dust is more exposure']],
  'safety/fume': [['T', '+', 'hotter metal gives off more']],
  'safety/mixed-exposure': [['L_1', '-', 'a higher limit is used up less']],
  'safety/quench': [
    ['m', '+', 'more hot metal warms the bath more', 'T > T_e'],
    ['m_w', '-', 'more water warms less', 'T_w < T_e'],
  ],
  'safety/quench-steam': [['T', '+', 'hotter metal boils more']],
  'safety/radiant': [
    ['T', '+', 'hotter metal shines more'],
    ['d', '-', 'farther away it is less', 'T > T_a'],
  ],
  'safety/radiant-time': [['q', '-', 'more heat hurts sooner']],
  'safety/spill': [['A', '-', 'a wider tray holds the same spill shallower']],
  'safety/spill-sand': [['A', '+', 'a wider bed takes more sand']],
  'safety/steam': [['T', '+', 'hotter steam takes more room']],
  'safety/suction-run-out': [['t', '+', 'it runs as long as nobody stops it']],
  'safety/vessel': [['V', '+', 'a larger vessel holds more to burst with']],
  'sand/cake-bending': [
    ['d', '-', 'a thicker cake bends less'],
    ['s', '+', 'a wider span bends more'],
  ],
  'sand/cake-shear': [['P', '-', 'more edge to hold by shares the load']],
  'sand/core-buoyancy': [
    ['rho', '+', 'denser metal lifts more'],
    ['rho_c', '-', 'a heavier core is lifted less'],
  ],
  'sand/lift': [['A', '+', 'more face is pushed harder']],
  'sand/permeability': [['t', '-', 'what passes the same air later is tighter']],
  'sand/reach': [['t', '+', 'heat gets farther in more time']],
  'sand/weight': [
    ['F', '+', 'more lift needs more weight'],
    ['m_c', '-', 'the cope holds some of it down itself'],
  ],
  'vacuum/ambient': [['z', '-', 'there is less air above higher ground']],
  'vacuum/at-cavity': [
    ['dp_g', '+', 'more suction at the gauge is more at the cavity'],
    ['L_d', '-', 'more wall on the way keeps more of it'],
  ],
  'vacuum/force': [['d', '+', 'more face is pressed harder']],
  'vacuum/gauge': [['p_g', '-', 'what the gauge shows is missing inside']],
  'vacuum/head': [['rho', '-', 'the same suction lifts a denser metal less']],
  'vacuum/leak-up': [['t', '-', 'the same rise in more time is a smaller leak']],
  'vacuum/penetration': [['r', '-', 'a wider pore holds less back']],
  'vacuum/pump-down': [
    ['S', '-', 'a stronger pump is sooner done'],
    ['V', '+', 'more to empty takes longer'],
    ['p_2', '-', 'to stop at a higher pressure takes less'],
  ],
  'vacuum/reach-time': [
    ['K', '-', 'an open wall lets suction through sooner'],
    ['V', '+', 'more to empty takes longer'],
  ],
  'vacuum/reservoir': [
    ['p_t', '+', 'a tank less empty ends less empty'],
    ['p_f', '+', 'a flask with more in it ends with more'],
  ],
  'vacuum/standing': [
    ['S', '-', 'a stronger pump holds a lower pressure'],
    ['A_g', '+', 'a larger gap lets the pressure up'],
    ['K', '+', 'an open mould lets the pressure up'],
  ],
};

/** Of models, whose own lists of such facts the sweep keeps to as well. */
export const modelFacts: readonly {
  readonly model: string;
  readonly raise: string;
  readonly answer: string;
  readonly sense: '+' | '-';
  readonly why: string;
}[] = [
  { model: 'charge/liquidus', raise: 'T', answer: 'solid', sense: '-', why: 'warmer alloy is less frozen' },
  {
    model: 'inspection/size',
    raise: 'doubt',
    answer: 'room',
    sense: '-',
    why: 'what is measured badly leaves less room',
  },
  {
    model: 'investment/boil',
    raise: 'p_0',
    answer: 'stalls',
    sense: '+',
    why: 'under more air water boils hotter, at more pressure left',
  },
  {
    model: 'investment/mix',
    raise: 'height',
    answer: 'volume',
    sense: '+',
    why: 'a taller flask holds more',
  },
  {
    model: 'investment/flask-temperature',
    raise: 'T_kiln',
    answer: 'cavity',
    sense: '+',
    why: 'out of a hotter kiln it is hotter',
  },
  { model: 'sand/bulk', raise: 'width', answer: 'sand', sense: '+', why: 'a wider flask takes more sand' },
  {
    model: 'sand/warm-through',
    raise: 'T_oven',
    answer: 'time',
    sense: '-',
    why: 'a hotter oven is sooner done',
  },
  {
    model: 'filling/temperature-chain',
    raise: 'melt.temperature',
    answer: 'end',
    sense: '+',
    why: 'what starts hotter ends hotter',
  },
];
