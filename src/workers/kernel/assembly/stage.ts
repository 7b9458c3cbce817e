/**
 * One stage over equal cubes, four cells at a time: the loop of calculators/models/conduction/voxel-kernel.ts,
 * which says what each array is and is what this is compared with. AssemblyScript: numbers here are
 * addresses in bytes, lanes hold single precision.
 */

/** Lane n of a register holds the n-th of four regions, in each of its bytes. */
// prettier-ignore
const spread: v128 = i8x16(0, 0, 0, 0, 1, 1, 1, 1, 2, 2, 2, 2, 3, 3, 3, 3);
// prettier-ignore
const bytes: v128 = i8x16(0, 1, 2, 3, 0, 1, 2, 3, 0, 1, 2, 3, 0, 1, 2, 3);

/** Conductance times what is beyond it less what is here. */
function flow(g: usize, t: usize, here: v128): v128 {
  return f32x4.mul(v128.load(g), f32x4.sub(v128.load(t), here));
}

/** Negated flows from the west: those to the east, one cell on. The one before comes from the four before. */
function toEastBefore(before: v128, here: v128): v128 {
  return i32x4.shuffle(before, here, 3, 4, 5, 6);
}

/**
 * `gains`: eight numbers, kelvin of heat a cell of each region gains in this stage for each watt; after them eight
 * conductances between two cells of that region. `plain` has a byte for four cells: their region where all of them,
 * and all that they touch, are of one stuff that does not melt, else nought. Such four need no conductances from
 * memory. Where nothing melts temperature is heat: `now` and `next` hold the heats of fours with metal among them only,
 * one after another from the first of these cells on. `first` is a multiple of four.
 */
export function stage(
  first: i32,
  count: i32,
  nx: i32,
  plane: i32,
  now: usize,
  next: usize,
  t: usize,
  tNext: usize,
  east: usize,
  north: usize,
  up: usize,
  region: usize,
  plain: usize,
  gains: usize,
  back: f32,
  solidus: f32,
  full: f32,
  inRange: f32,
  inLiquid: f32,
): void {
  const row: usize = 4 * nx;
  const layer: usize = 4 * plane;
  const gainsLow = v128.load(gains);
  const gainsHigh = v128.load(gains, 16);
  const sixteen = i8x16.splat(16);
  const backs = f32x4.splat(back);
  const solidi = f32x4.splat(solidus);
  const fulls = f32x4.splat(full);
  const inRanges = f32x4.splat(inRange);
  const inLiquids = f32x4.splat(inLiquid);
  const nought = f32x4.splat(0);
  const end: usize = 4 * count;
  const start: usize = 4 * first;
  // What flows in from the west of the first cell; at the very first, nothing.
  let before = f32x4.splat(load<f32>(east + start - 4) * (load<f32>(t + start) - load<f32>(t + start - 4)));

  for (let at: usize = start; at < end; at += 16) {
    const place = t + at;
    const here = v128.load(place);
    const beyond = f32x4.sub(v128.load(place, 4), here);
    const stuff: usize = load<u8>(plain + (at >> 4));
    if (stuff) {
      const g = v128.load32_splat(gains + 4 * stuff, 32);
      const toEast = f32x4.mul(g, beyond);
      let inflow = f32x4.sub(toEast, toEastBefore(before, toEast));
      before = toEast;
      inflow = f32x4.add(inflow, f32x4.mul(g, f32x4.sub(v128.load(place - row), here)));
      inflow = f32x4.add(inflow, f32x4.mul(g, f32x4.sub(v128.load(place + row), here)));
      inflow = f32x4.add(inflow, f32x4.mul(g, f32x4.sub(v128.load(place - layer), here)));
      inflow = f32x4.add(inflow, f32x4.mul(g, f32x4.sub(v128.load(place + layer), here)));
      const kept = f32x4.sub(here, f32x4.mul(backs, f32x4.sub(here, v128.load(tNext + at))));
      const gain = v128.load32_splat(gains + 4 * stuff);
      v128.store(tNext + at, f32x4.add(kept, f32x4.mul(gain, inflow)));
      continue;
    }
    const toEast = f32x4.mul(v128.load(east + at), beyond);
    let inflow = f32x4.sub(toEast, toEastBefore(before, toEast));
    before = toEast;
    inflow = f32x4.add(inflow, flow(north + at - row, place - row, here));
    inflow = f32x4.add(inflow, flow(north + at, place + row, here));
    inflow = f32x4.add(inflow, flow(up + at - layer, place - layer, here));
    inflow = f32x4.add(inflow, flow(up + at, place + layer, here));

    const what = i8x16.swizzle(v128.load32_zero(region + (at >> 2)), spread);
    const lookup = i8x16.add(i8x16.shl(what, 2), bytes);
    const gain = v128.or(
      i8x16.swizzle(gainsLow, lookup),
      i8x16.swizzle(gainsHigh, i8x16.sub(lookup, sixteen)),
    );

    const metal = i8x16.eq(what, i8x16.splat(0));
    let e = here;
    let was = v128.load(tNext + at);
    if (!v128.any_true(metal)) {
      const kept = f32x4.sub(e, f32x4.mul(backs, f32x4.sub(e, was)));
      v128.store(tNext + at, f32x4.add(kept, f32x4.mul(gain, inflow)));
      continue;
    }
    e = v128.bitselect(v128.load(now), e, metal);
    was = v128.bitselect(v128.load(next), was, metal);
    const kept = f32x4.sub(e, f32x4.mul(backs, f32x4.sub(e, was)));
    const heat = f32x4.add(kept, f32x4.mul(gain, inflow));
    v128.store(next, heat);
    now += 16;
    next += 16;
    const held = f32x4.pmax(f32x4.pmin(heat, fulls), solidi);
    let molten = f32x4.pmin(heat, solidi);
    molten = f32x4.add(molten, f32x4.mul(inRanges, f32x4.sub(held, solidi)));
    molten = f32x4.add(molten, f32x4.mul(inLiquids, f32x4.pmax(f32x4.sub(heat, fulls), nought)));
    v128.store(tNext + at, v128.bitselect(molten, heat, metal));
  }
}
