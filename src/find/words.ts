/** American and old spellings, each to the one used here, as whole words. */
const spellings: readonly (readonly [RegExp, string])[] = [
  [/\bmold/g, 'mould'],
  [/\bgage(s?)\b/g, 'gauge$1'],
  [/\baluminum\b/g, 'aluminium'],
  [/\bvapor/g, 'vapour'],
  [/\bsulf/g, 'sulph'],
  [/\bcolor/g, 'colour'],
  [/\bodor/g, 'odour'],
  [/\bfiber/g, 'fibre'],
  [/\bcenter/g, 'centre'],
  [/\b(\w*)meter(s?)\b/g, '$1metre$2'],
  [/\bliter(s?)\b/g, 'litre$1'],
  [/\bgray\b/g, 'grey'],
  [/\bjewelry\b/g, 'jewellery'],
  [/\bjeweler/g, 'jeweller'],
  [/\bpyrometre/g, 'pyrometer'],
  [/\b(\w{3,})iz(e|es|ed|ing|ation)\b/g, '$1is$2'],
  [/\bdraught/g, 'draft'],
  [/\bplow/g, 'plough'],
  [/\bcarburet/g, 'carburett'],
  [/\bkarat/g, 'carat'],
  [/\btemp(s?)\b/g, 'temperature$1'],
];

/** A Greek letter is written out; `Δp` is also what people type as `dp`. */
const greek: Readonly<Record<string, string>> = {
  α: 'alpha',
  β: 'beta',
  γ: 'gamma',
  δ: 'delta',
  ε: 'epsilon',
  ϵ: 'epsilon',
  η: 'eta',
  θ: 'theta',
  κ: 'kappa',
  λ: 'lambda',
  μ: 'mu',
  µ: 'mu',
  ν: 'nu',
  π: 'pi',
  ρ: 'rho',
  σ: 'sigma',
  τ: 'tau',
  φ: 'phi',
  ω: 'omega',
};

/** Words that say nothing about a page. */
const idle = new Set(
  'a an the of in on at to for from by with and or is are be it its this that my i me we you do does can could may must shall should will would need have has get want what which when how into as if per there'.split(
    ' ',
  ),
);

/** Lower case, one spelling, Greek written out, quotes and accents gone. */
export function folded(text: string): string {
  let plain = text
    .replace(/Δ(?=\S)/g, 'd')
    .replace(/[α-ωϵµ]/g, (letter) => greek[letter] ?? letter)
    .normalize('NFKD')
    .replace(/[\u0300-\u036f'’]/g, '')
    .toLowerCase();
  for (const [pattern, by] of spellings) plain = plain.replace(pattern, by);
  return plain;
}

/** The stem two forms of a word share: `freezing`, `freezes` and `freeze` all end as `freez`. */
export function stem(word: string): string {
  if (word.length < 4 || /\d/.test(word)) return word;
  let short = word;
  if (/(?:ss|us|is)$/.test(short)) return short;
  if (/ies$/.test(short) && short.length > 4) short = `${short.slice(0, -3)}y`;
  else if (/(?:ch|sh|x|s)es$/.test(short)) short = short.slice(0, -2);
  else if (/s$/.test(short)) short = short.slice(0, -1);
  const cut = /^(.*[aeiouy].*?)(?:ing|ed)$/.exec(short)?.[1];
  if (cut !== undefined && cut.length >= 3) short = cut.replace(/([^aeioul])\1$/, '$1');
  return short.length > 4 ? short.replace(/e$/, '') : short;
}

/** The words of a text as they are indexed: folded, stemmed, without the idle ones. */
export function wordsOf(text: string): string[] {
  return (folded(text).match(/[a-z0-9°%]+(?:\.\d+)?/g) ?? []).filter((word) => !idle.has(word)).map(stem);
}

const size =
  /(^|\s)\d+(?:[.,]\d+)?\s*(?:k?pa|m?bar|in ?hg|mmhg|torr|psi|[mc]?m|in|inch(?:es)?|k?g|ozt?|dwt|lb|s|min|h|ml|l|°?[cfk])(?=[\s,?]|$)/gi;

/** A question without the sizes in it, which are its numbers and not its matter; as it was where nothing else is asked. */
export function withoutSizes(typed: string): string {
  const rest = typed.replace(size, '$1');
  return wordsOf(rest).length > 0 ? rest : typed;
}

const mass =
  /(^|\s)[\d.,/]+\s*(?:k?g|grams?|kilos?|ozt?|ounces?|dwt|pennyweights?|lbs?|pounds?)(?=[\s,?]|$)/i;
const suffices = /\b(?:enough|sufficient|suffices?|too little)\b|\bwill\b.*\bdo\b/;
const metals =
  /\b(?:metal|bronze|silver|sterling|gold|brass|gunmetal|copper|aluminium|zinc|tin|pewter|alloy)\b/;
const slurry = /\b(?:investment|plaster|slurry)\b/;
const patterns = /\b(?:wax|resin|pattern)\b/;
const otherStuff = /\b(?:sand|powder|water|wax|resin|weights?|propane|gas|charcoal|flux)\b/;

/**
 * What a question after an amount asks for, in words of the course: whether there is enough metal, unless another
 * stuff is named; how much investment a flask takes; how much metal a wax becomes. What it is for, the seal or the
 * latch, is then not the matter. Nothing for any other question.
 */
export function amountOf(typed: string): string | undefined {
  const plain = folded(typed);
  const enough = suffices.test(plain);
  if ((enough || /\bhow much\b/.test(plain)) && slurry.test(plain)) return 'powder water flask';
  if (enough && !otherStuff.test(plain))
    return mass.test(plain) || metals.test(plain) ? 'enough metal' : undefined;
  return metals.test(plain) && patterns.test(plain) && (mass.test(plain) || /\bhow much\b/.test(plain))
    ? 'wax to metal'
    : undefined;
}

/** A symbol or a unit as one word, whatever stands in it: `V/A`, `T_m`, `m/s²`. */
export function signWord(sign: string): string {
  return `=${folded(sign).replace(/[\s_{}^·]/g, '')}`;
}

/** What was typed, when all of it may be a symbol or a unit. */
export function asSign(typed: string): string | undefined {
  const text = typed.trim();
  return text.length > 0 && text.length <= 9 && !/\s/.test(text) ? signWord(text) : undefined;
}

/** Edits between two words (a swap counts as one), or `limit + 1` when there are more. */
export function edits(a: string, b: string, limit: number): number {
  if (Math.abs(a.length - b.length) > limit) return limit + 1;
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    let least = i;
    for (let j = 1; j <= b.length; j += 1) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let cost = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        cost = Math.min(cost, before[j - 2]! + 1);
      row.push(cost);
      least = Math.min(least, cost);
    }
    if (least > limit) return limit + 1;
    [before, last] = [last, row];
  }
  return last[b.length]!;
}
