import type { Check, Result, Values } from '../../../calculators/core/model.ts';
import { printQuantity } from '../../../calculators/core/print.ts';
import { habitUnit, type Habit } from '../../../calculators/core/shop-units.ts';
import { fromSI, unit, type UnitSymbol } from '../../../calculators/core/units.ts';

/** What is shown at one moment of the day: one decision, its number, what to tick. */
export interface Screen {
  readonly id: string;
  readonly title: string;
  /** The number to work to, ready to read from two metres. */
  readonly number?: string;
  readonly says: readonly string[];
  /** Things to see with your own eyes before going on. */
  readonly ticks: readonly string[];
  readonly clock?: Clock;
}

/** A time that runs at the bench. `window` must not be passed, `wait` must be. */
export interface Clock {
  readonly kind: 'window' | 'wait';
  readonly seconds: number;
  /** The press that starts it; the same name on a later screen reads the same moment. */
  readonly from: 'out' | 'in' | 'oven';
  readonly start: string;
  /** The press that ends it, and the moment that marks. */
  readonly end?: { readonly name: 'in' | 'released'; readonly says: string };
  readonly over: string;
}

/**
 * A time as the clock beside it runs: in whole seconds, below ten in tenths. One that must not be passed is rounded
 * down, one that must be waited up.
 */
export function seconds(value: unknown, round: (value: number) => number): string | undefined {
  if (typeof value !== 'number' || !Number.isFinite(value)) return undefined;
  const places = value < 10 ? 1 : 0;
  const rounded = round(value * 10 ** places) / 10 ** places;
  return printQuantity(rounded, 's', { figures: `${Math.trunc(rounded)}`.length + places });
}

/**
 * The day of a pour from the worked plan: what the plan decided, in the order it is done. A number that does not
 * apply to this plan leaves its screen out. Numbers are said as the shop does; so must the sentences of the result be.
 */
export function dayScreens(
  inputs: Values,
  { values, checks, notes }: Result,
  habit: Habit = 'metric',
): readonly Screen[] {
  const of = (id: string): Check | undefined => checks.find((check) => check.id === id);
  const why = (...ids: readonly string[]): string[] => ids.flatMap((id) => of(id)?.why ?? []);
  const print = (value: unknown, home: UnitSymbol): string | undefined => {
    if (typeof value !== 'number' || !Number.isFinite(value)) return undefined;
    const said = habitUnit(home, habit);
    // 1135 °C is not 1140 °C to who stands at the furnace.
    const hot = unit(said).kind === 'temperature' && fromSI(value, said) > 1000;
    return printQuantity(value, said, { figures: hot ? 4 : 3 });
  };
  const value = (name: string, home: UnitSymbol): string | undefined => print(values[name], home);
  const failing = checks.filter(({ verdict }) => verdict === 'fails');
  const inKiln = values['kiln.total'] !== undefined;
  const suction = (values['suction'] ?? 0) > 0;
  const screens: (Screen | undefined)[] = [
    {
      id: 'before',
      title: 'Before you light anything',
      says: [
        ...(failing.length === 0
          ? []
          : [
              `The plan says no to ${failing.length === 1 ? 'one thing' : `${failing.length} things`}: ${failing
                .map(({ title }) => title.toLowerCase())
                .join('; ')}. Change the plan, or know why you pour all the same.`,
            ]),
        'The person in charge of the shop decides. When they say stop, stop.',
      ],
      ticks: [
        'Face, hands, legs and feet covered; nothing that melts on the skin',
        `Dry sand lies where the pour happens${value('spill.sand', 'kg') === undefined ? '' : `: ${value('spill.sand', 'kg')}`}`,
        'Floor, tools, ingot mould and ladle are dry and warmed',
        'The way out is free, and somebody knows that you pour',
        'Extraction runs',
      ],
    },
    need(value('charge', 'g'), (number) => ({
      id: 'charge',
      title: 'Weigh the charge',
      number,
      says: why('crucible'),
      ticks: ['Charge weighed, dry and clean', 'Crucible sound: no crack, it rings'],
    })),
    need(print(inputs['mould.temperature'], '°C'), (number) => ({
      id: 'mould',
      title: inKiln ? 'The flask in the kiln' : 'Warm the mould through',
      number,
      says: why('warming', 'dryness', 'flask', 'burnout', 'mould'),
      ticks: [
        inKiln ? 'Burnout done, held at the casting temperature' : 'Its mass has stopped falling: it is dry',
        'A marked place for it beside the furnace',
      ],
      ...(typeof values['oven.time'] === 'number' && {
        clock: {
          kind: 'wait',
          seconds: values['oven.time'],
          from: 'oven',
          start: 'It is in the oven',
          over: 'Warm through, if the oven held its temperature.',
        },
      }),
    })),
    need(value('cope.needed', 'kg'), (number) => ({
      id: 'cope',
      title: 'Weight on the cope, at least',
      number: (values['cope.needed'] ?? 0) > 0 ? number : 'none',
      says: why('lift'),
      ticks: ['The joint is tight all round', 'The weight rests on the flask, not on the sprue'],
    })),
    suction
      ? need(value('gauge.reading', 'kPa'), (reading) => ({
          id: 'gauge',
          title: 'What the gauge must show',
          number: reading.endsWith('inHg') ? reading : `${reading} · ${value('gauge.reading', 'inHg')}`,
          says: why('gauge', 'sand'),
          ticks: [
            'A dry catch pot stands between flask and pump',
            'Valve tried: the air comes back at once',
            'Nobody leans over the flask',
          ],
        }))
      : undefined,
    need(print(inputs['melt.temperature'], '°C'), (number) => ({
      id: 'melt',
      title: 'Leave the furnace at',
      number,
      says: [...why('pour-temperature'), ...why('fume')],
      ticks: ['Temperature measured, not guessed', 'Skimmed', 'Mould, path and helper are ready'],
    })),
    need(seconds(values['melt.window'], Math.floor), (number) => ({
      id: 'pour',
      title: 'Seconds in hand',
      number,
      says: why('seconds'),
      ticks: [],
      clock: {
        kind: 'window',
        seconds: values['melt.window']!,
        from: 'out',
        start: 'Out of the furnace',
        end: { name: 'in', says: 'The metal is in' },
        over: 'Too cold by the sum. Do not pour: back into the furnace, or into the ingot mould.',
      },
    })),
    suction
      ? need(seconds(values['release'], Math.ceil), (number) => ({
          id: 'hold',
          title: 'Hold the suction',
          number,
          says: ['From a full mould. Longer draws metal into the sand, shorter lets go of a soft gate.'],
          ticks: [],
          clock: {
            kind: 'wait',
            seconds: values['release']!,
            from: 'in',
            start: 'The metal is in',
            end: { name: 'released', says: 'Suction is off' },
            over: 'Let the air in.',
          },
        }))
      : undefined,
    need(value('last', 's'), () => ({
      id: 'leave',
      title: 'Leave it alone',
      number: seconds((values['last'] ?? 0) * 3, Math.ceil)!,
      says: [
        `By the sum the last of it is solid after ${value('last', 's')}; three times that is a fair wait, for the sum may be out by two.`,
        'Whole is not cool: sand and flask burn for long after.',
      ],
      ticks: ['Rest of the metal is in the ingot mould, dry and warm', 'Flask stands in its marked place'],
      clock: {
        kind: 'wait',
        seconds: (values['last'] ?? 0) * 3,
        from: 'in',
        start: 'The metal is in',
        over: 'Solid by the sum. Look before you touch.',
      },
    })),
    {
      id: 'after',
      title: 'What came out',
      ...numberOf(value('part.mass', 'g')),
      says: [
        'The plan’s mass of one casting. Weigh it, then weigh it in water.',
        ...(value('weigh.water', 'g') === undefined
          ? []
          : [`A sound one hangs in water at ${value('weigh.water', 'g')}.`]),
        ...notes.slice(-1),
      ],
      ticks: ['Furnace and gas are off', 'Weighed and looked at under a lens', 'Written down below'],
    },
  ];
  return screens.filter((screen) => screen !== undefined);
}

const numberOf = (number: string | undefined): { readonly number?: string } =>
  number === undefined ? {} : { number };

const need = (number: string | undefined, make: (number: string) => Screen): Screen | undefined =>
  number === undefined ? undefined : make(number);
