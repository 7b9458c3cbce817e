/** The colours of the page as a canvas needs them; on paper those of paper, whatever the screen was. */
export interface Colours {
  readonly ink: string;
  readonly paper: string;
  readonly press: string;
  readonly font: string;
  /** 256 steps of the heat scale, 20 to 1200 °C, as ImageData holds them. */
  readonly heat: Uint32Array;
  /** A mix of paper and ink, 0 to 1. */
  readonly tint: (part: number) => number;
}

type Three = readonly [number, number, number];

const heatSteps = ['--heat-0', '--heat-1', '--heat-2', '--heat-3', '--heat-4'];

export function coloursOf(element: Element, onPaper: boolean): Colours {
  const style = getComputedStyle(element);
  const of = (name: string): string => style.getPropertyValue(name).trim();
  const ink = onPaper ? '#000000' : of('--ink');
  const paper = onPaper ? '#ffffff' : of('--paper');
  const [dark, light] = [rgbOf(ink), rgbOf(paper)];
  return {
    ink,
    paper,
    press: onPaper ? '#000000' : of('--press'),
    font: style.fontFamily,
    heat: heatOf(heatSteps.map(of)),
    tint: (part) => packed(mixed(light, dark, part)),
  };
}

let lastHeat: { readonly from: string; readonly steps: Uint32Array } | undefined;

/** Three pictures of a page ask for the same scale, at every moment of a play-back. */
function heatOf(names: readonly string[]): Uint32Array {
  const from = names.join();
  if (lastHeat?.from === from) return lastHeat.steps;
  const ends = names.map((name) => labOf(rgbOf(name)));
  const steps = Uint32Array.from({ length: 256 }, (_, n) => {
    const place = (4 * n) / 255;
    const below = Math.min(3, Math.floor(place));
    return packed(rgbFromLab(mixed(ends[below]!, ends[below + 1]!, place - below)));
  });
  lastHeat = { from, steps };
  return steps;
}

/** `#abc` or `#aabbcc`. */
function rgbOf(hex: string): Three {
  const long = hex.length === 4 ? hex.replace(/[0-9a-f]/gi, '$&$&') : hex;
  const n = Number.parseInt(long.slice(1), 16) || 0;
  return [(n >> 16) & 255, (n >> 8) & 255, n & 255];
}

const packed = ([r, g, b]: Three): number =>
  ((255 << 24) | (Math.round(b) << 16) | (Math.round(g) << 8) | Math.round(r)) >>> 0;

const mixed = (a: Three, b: Three, part: number): Three =>
  [0, 1, 2].map((n) => a[n]! + (b[n]! - a[n]!) * part) as unknown as Three;

/** Ottosson's Oklab, as the style sheets mix the same scale. */
function labOf(rgb: Three): Three {
  const [r, g, b] = rgb.map((n) => {
    const c = n / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  }) as unknown as Three;
  const l = Math.cbrt(0.4122214708 * r + 0.5363325363 * g + 0.0514459929 * b);
  const m = Math.cbrt(0.2119034982 * r + 0.6806995451 * g + 0.1073969566 * b);
  const s = Math.cbrt(0.0883024619 * r + 0.2817188376 * g + 0.6299787005 * b);
  return [
    0.2104542553 * l + 0.793617785 * m - 0.0040720468 * s,
    1.9779984951 * l - 2.428592205 * m + 0.4505937099 * s,
    0.0259040371 * l + 0.7827717662 * m - 0.808675766 * s,
  ];
}

function rgbFromLab([L, a, b]: Three): Three {
  const l = (L + 0.3963377774 * a + 0.2158037573 * b) ** 3;
  const m = (L - 0.1055613458 * a - 0.0638541728 * b) ** 3;
  const s = (L - 0.0894841775 * a - 1.291485548 * b) ** 3;
  const linear: Three = [
    4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s,
    -1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s,
    -0.0041960863 * l - 0.7034186147 * m + 1.707614701 * s,
  ];
  return linear.map((c) => {
    const low = Math.min(1, Math.max(0, c));
    return 255 * (low <= 0.0031308 ? 12.92 * low : 1.055 * low ** (1 / 2.4) - 0.055);
  }) as unknown as Three;
}

/** Place of a temperature, K, on the heat scale. */
export const heatStep = (kelvin: number): number =>
  Math.min(255, Math.max(0, Math.round(((kelvin - 293.15) / 1180) * 255)));
