import { balance, type Tip, type Wet } from './balance.ts';
import { carry, cooler, inOrder, startFlows } from './flow.ts';
import { beyondEach, pocketAhead, pocketPressure, springsBackTo } from './gas.ts';
import { leftIn, neverCame } from './left.ts';
import { entryResistance, heldTo, pushAt, type Pour } from './pour.ts';
import type { Ending, Front, Moment, Race } from './race.ts';
import { stuffOf } from './stuff.ts';
import { heatTaken } from './wall.ts';
import { wayFinder } from './ways.ts';

const mostSteps = 20_000;
/** No step takes more than this share of the heat a front has before it stops. */
const heatStep = 0.04;

/**
 * Follows the metal from the gate through a tree of channels until every front has ended. Pressure, inertia,
 * friction, mouths and gas give the speeds (`balance`); parcels of metal travel with the flow and give heat to the
 * wall by how long each place has been covered (`cooler`); a front stops when its head is too solid, when the
 * pressure holds it no farther, or at the end. SI throughout. The sizes in `pour` must have been looked at.
 */
export function follow(pour: Pour, keep = false): Race {
  const { channels, metal, mould, drive } = pour;
  const stuff = stuffOf(metal);
  const flows = startFlows(pour);
  const order = inOrder(pour);
  const cool = cooler(pour, stuff);
  const outside = drive.ambient - drive.suction;
  const beyond = beyondEach(pour);
  const limits = channels.map((channel) => heldTo(pour, channel));
  const fronts: (Front | undefined)[] = channels.map(() => undefined);
  const history: Moment[] = [];
  const hot = Math.max(metal.gate - mould.temperature, 1e-9);
  const taken = heatTaken(mould.b, mould.h);
  const best = Math.max(
    ...channels.flatMap((channel) => [pushAt(pour, channel, 0), pushAt(pour, channel, channel.length)]),
  );
  const free = Math.sqrt((2 * Math.max(best, 1e-6)) / metal.rho);
  const headOf = (c: number): number => flows[c]!.metal.heats[0] ?? stuff.gate;
  const speedOf = (c: number): number => flows[c]!.Q / (channels[c]!.area * channels[c]!.alike);
  const wayTo = wayFinder(channels);
  let time = 0;
  let steps = 0;
  let poured = 0;
  let given = 0;
  let dt = Math.min(...flows.map(({ cell }) => cell)) / free;

  function end(c: number, ended: Ending, stood = flows[c]!.x, when = time, heat = headOf(c)): void {
    const channel = channels[c]!;
    const flow = flows[c]!;
    const reached = ended === 'gas' ? springsBackTo(pour, channel, beyond[c]!, stood, flow.gas) : stood;
    const resists = entryResistance(channel, metal);
    const used = stuff.gate - heat;
    fronts[c] = {
      ended,
      reached,
      entered: flow.passed[0] ?? Number.NaN,
      time: when,
      temperature: stuff.temperature(heat),
      solid: stuff.solid(heat),
      speed: speedOf(c),
      spare: used > 0 ? (stuff.gate - stuff.stop) / used : Number.POSITIVE_INFINITY,
      pressure: pushAt(pour, channel, reached) + resists,
      resists,
    };
    if (ended === 'filled') {
      flow.phase = 'full';
      for (const child of channel.children) {
        const next = flows[child]!;
        next.phase = 'front';
        next.gas = flow.gas;
        next.passed.push(time);
        if (limits[child] === 0) end(child, 'held');
      }
    } else {
      flow.phase = 'stopped';
    }
    // Metal behind a front that stops keeps its momentum, and so does metal that goes on into the next channel.
    if (ended !== 'filled' || channel.children.length === 0) flow.Q = 0;
  }

  /** Stops every front that is fed through this channel, which no longer passes metal. */
  function choke(c: number): void {
    for (const [i, channel] of channels.entries()) {
      if (!channel.path.includes(c) || flows[i]!.phase !== 'front') continue;
      end(i, whyFrozen(i));
    }
  }

  function whyFrozen(c: number): Ending {
    const flow = flows[c]!;
    const net = pushAt(pour, channels[c]!, flow.x);
    if (flow.gas - outside > 0.5 * net) return 'gas';
    return flow.x > 0 ? 'froze' : 'waited';
  }

  const running = (): number[] => order.filter((c) => flows[c]!.phase === 'front');

  for (const c of running()) if (limits[c] === 0) end(c, 'held');
  if (keep) note();
  for (let at = running(); at.length > 0 && steps < mostSteps; at = running()) {
    steps += 1;
    const tried = flowsFor(at, dt, speedsOf(at));
    dt = tried.dt;
    const before = at.map((c) => ({ x: flows[c]!.x, heat: headOf(c) }));
    for (const [i, c] of at.entries()) {
      const Q = tried.Q[i]!;
      flows[c]!.gas = pocketPressure(tried.tips[i]!.pocket, flows[c]!.gas, outside, Q, dt)[0];
    }
    share(at, tried.Q);
    poured += dt * flows.reduce((sum, { Q }, c) => sum + (channels[c]!.parent < 0 ? Q : 0), 0);
    carry(pour, flows, order, time, dt, stuff.gate);
    given += cool(flows, time, dt);
    time += dt;
    for (const [i, c] of at.entries()) stopIfStiff(c, before[i]!.x, before[i]!.heat);
    for (const [c, { phase, metal: parcels }] of flows.entries())
      if (phase === 'full' && Math.min(...parcels.heats) <= stuff.stop) choke(c);
    for (const c of at) {
      const { x, phase } = flows[c]!;
      if (phase !== 'front' || x < limits[c]! * (1 - 1e-9)) continue;
      end(c, limits[c]! < channels[c]!.length ? 'held' : 'filled');
    }
    const still = running();
    // Where a front has just ended, the pressure it drew off may still move the others.
    const settled = still.length === at.length && still.every((c) => flows[c]!.Q === 0 && atRest(c));
    if (settled) for (const c of still) end(c, whyStill(c));
    if (keep) note();
    dt = nextStep(running());
  }
  for (const c of running()) end(c, whyStill(c));

  /** A front that stands, with the gas ahead of it neither gathering nor leaving. */
  function atRest(c: number): boolean {
    const { conductance } = pocketAhead(pour, channels[c]!, beyond[c]!, flows[c]!.x);
    return conductance === 0 || Math.abs(flows[c]!.gas - outside) < 1;
  }

  function whyStill(c: number): Ending {
    return flows[c]!.gas - outside > 1 ? 'gas' : 'held';
  }

  function stopIfStiff(c: number, x: number, heat: number): void {
    const now = headOf(c);
    if (now > stuff.stop || flows[c]!.metal.heats.length === 0) return;
    const part = heat > now ? Math.min(1, Math.max(0, (heat - stuff.stop) / (heat - now))) : 1;
    end(c, whyFrozen(c), x + part * (flows[c]!.x - x), time - (1 - part) * dt, stuff.stop);
  }

  /** Flows of the fronts, and through every channel on the way to them. */
  function share(at: readonly number[], Q: readonly number[]): void {
    for (const flow of flows) flow.Q = 0;
    for (const [i, c] of at.entries()) for (const on of channels[c]!.path) flows[on]!.Q += Q[i]!;
  }

  function speedsOf(at: readonly number[]): number[] {
    return at.map((c) => {
      const { area, alike } = channels[c]!;
      return Math.max(flows[c]!.Q, 0.1 * free * area * alike);
    });
  }

  function flowsFor(
    at: readonly number[],
    wanted: number,
    guess: readonly number[],
  ): { Q: number[]; dt: number; tips: Tip[] } {
    const wet = wayTo(at).map(({ c, feeds, widens }): Wet => {
      const { x, Q, phase } = flows[c]!;
      return { channel: channels[c]!, feeds, x, before: Q, heads: phase === 'front' ? 1 : widens };
    });
    const tips = at.map((c): Tip => {
      const channel = channels[c]!;
      const { x, gas } = flows[c]!;
      return {
        drive: pushAt(pour, channel, x) + outside,
        pocket: pocketAhead(pour, channel, beyond[c]!, x),
        pressure: gas,
      };
    });
    let step = wanted;
    for (let again = 0; ; again += 1) {
      const { rho, mu } = metal;
      const Q = balance(wet, tips, { rho, mu, outside, dt: step, most: drive.flow }, guess);
      const ahead = at.map(
        (c, i) => (Q[i]! * step) / (channels[c]!.area * channels[c]!.alike * flows[c]!.cell),
      );
      const most = Math.max(...ahead);
      if (most <= 1.25 || again >= 8) return { Q, dt: clipped(at, Q, step), tips };
      step /= Math.max(1.2, most);
    }
  }

  /** The step, shortened so that the first front to come to its end comes there exactly. */
  function clipped(at: readonly number[], Q: readonly number[], step: number): number {
    return at.reduce((least, c, i) => {
      const { area, alike } = channels[c]!;
      const left = (limits[c]! - flows[c]!.x) * area * alike;
      return Q[i]! > 0 ? Math.min(least, left / Q[i]!) : least;
    }, step);
  }

  function nextStep(at: readonly number[]): number {
    return at.reduce(
      (least, c) => Math.min(least, patience(c), flows[c]!.cell / Math.max(speedOf(c), 1e-12)),
      Math.max(2 * dt, 1e-7),
    );
  }

  /** The longest step the heat allows: the head of the stream lies on wall covered no longer than it takes to pass. */
  function patience(c: number): number {
    const { area, rim, side } = channels[c]!;
    const contact = Math.min(dt, side / Math.max(speedOf(c), 1e-12));
    const rate = (taken(contact) / contact) * hot * (rim / area);
    return (heatStep * metal.rho * (stuff.gate - stuff.stop)) / rate;
  }

  function note(): void {
    history.push({
      time,
      reached: flows.map(({ x }) => x),
      temperature: flows.map((_, c) => stuff.temperature(headOf(c))),
      speed: flows.map((_, c) => speedOf(c)),
    });
  }

  return {
    fronts: fronts.map((front, c) => front ?? neverCame(pour, c)),
    time,
    steps,
    poured,
    brought: metal.rho * poured * stuff.gate,
    given,
    history,
    ...leftIn(pour, flows, stuff),
  };
}
