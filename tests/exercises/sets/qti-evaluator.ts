import { DOMParser, type Element } from '@xmldom/xmldom';

/**
 * An evaluator of QTI 3.0 items for these tests alone: the template and response processing the packages use,
 * written from the standard's description of each element and sharing no code with what writes them. It is not
 * a player: it shows nothing.
 */
export type Value = number | string | boolean | readonly (number | string)[] | null;

export interface Session {
  readonly variables: Map<string, Value>;
  /** The correct response as declared. */
  readonly correct: Map<string, Value>;
  readonly root: Element;
}

export function parse(xml: string): Element {
  const faults: string[] = [];
  const document = new DOMParser({ onError: (_, message) => faults.push(String(message)) }).parseFromString(
    xml,
    'text/xml',
  );
  if (faults.length > 0 || !document.documentElement) throw new Error(faults.join('; '));
  return document.documentElement;
}

export const kids = (element: Element): Element[] =>
  Array.from(element.childNodes).filter((node): node is Element => node.nodeType === 1);
export const all = (element: Element, name: string): Element[] =>
  Array.from(element.getElementsByTagName(name));
const attribute = (element: Element, name: string): string => {
  const value = element.getAttribute(name);
  if (value === null) throw new Error(`<${element.tagName}> has no ${name}`);
  return value;
};

/** Opens an item: declares its variables and carries out its templates with the numbers `draw` gives. */
export function begin(xml: string, draw: (variable: string, most: number) => number): Session {
  const root = parse(xml);
  const session: Session = { variables: new Map(), correct: new Map(), root };
  for (const child of kids(root)) {
    if (!/^qti-(?:response|outcome|template)-declaration$/.test(child.tagName)) continue;
    const identifier = attribute(child, 'identifier');
    if (session.variables.has(identifier)) throw new Error(`${identifier} is declared twice`);
    const type = child.getAttribute('base-type') ?? '';
    session.variables.set(identifier, null);
    const fallback = all(child, 'qti-default-value')[0];
    if (fallback) session.variables.set(identifier, typed(kids(fallback)[0]!.textContent ?? '', type));
    const right = all(child, 'qti-correct-response')[0];
    if (right) {
      const values = kids(right).map((value) => typed(value.textContent ?? '', type) as string);
      session.correct.set(identifier, attribute(child, 'cardinality') === 'single' ? values[0]! : values);
    }
  }
  const processing = kids(root).find(({ tagName }) => tagName === 'qti-template-processing');
  for (const rule of processing ? kids(processing) : []) {
    if (rule.tagName !== 'qti-set-template-value') throw new Error(`unknown <${rule.tagName}>`);
    const identifier = attribute(rule, 'identifier');
    if (!session.variables.has(identifier)) throw new Error(`${identifier} is not declared`);
    session.variables.set(
      identifier,
      evaluate(kids(rule)[0]!, session, (most) => draw(identifier, most)),
    );
  }
  return session;
}

/** Hands in responses and gives the score. */
export function score(session: Session, responses: Readonly<Record<string, Value>>): number {
  for (const [identifier, value] of Object.entries(responses)) {
    if (!session.variables.has(identifier)) throw new Error(`there is no response ${identifier}`);
    session.variables.set(identifier, value);
  }
  const processing = kids(session.root).find(({ tagName }) => tagName === 'qti-response-processing');
  for (const rule of processing ? kids(processing) : []) carryOut(rule, session);
  return session.variables.get('SCORE') as number;
}

function carryOut(rule: Element, session: Session): void {
  if (rule.tagName === 'qti-set-outcome-value') {
    const identifier = attribute(rule, 'identifier');
    if (!session.variables.has(identifier)) throw new Error(`${identifier} is not declared`);
    session.variables.set(identifier, evaluate(kids(rule)[0]!, session));
    return;
  }
  if (rule.tagName !== 'qti-response-condition') throw new Error(`unknown <${rule.tagName}>`);
  for (const branch of kids(rule)) {
    const inner = kids(branch);
    if (branch.tagName !== 'qti-response-else' && evaluate(inner.shift()!, session) !== true) continue;
    for (const one of inner) carryOut(one, session);
    return;
  }
}

function typed(text: string, type: string): Value {
  if (type === 'float' || type === 'integer') {
    const value = Number(text);
    if (text.trim() === '' || Number.isNaN(value)) throw new Error(`"${text}" is not a ${type}`);
    return value;
  }
  return text;
}

const maths: Readonly<Record<string, (x: number) => number>> = {
  abs: Math.abs,
  floor: Math.floor,
  log: Math.log10,
  ln: Math.log,
  exp: Math.exp,
  sin: Math.sin,
  cos: Math.cos,
  tan: Math.tan,
  asin: Math.asin,
  acos: Math.acos,
  atan: Math.atan,
};

function evaluate(e: Element, session: Session, draw?: (most: number) => number): Value {
  const values = (): Value[] => kids(e).map((child) => evaluate(child, session, draw));
  /** Null in, null out, as the standard has it for every numeric operator. */
  const numeric = (work: (numbers: number[]) => Value): Value => {
    const list = values().flatMap((value) => (Array.isArray(value) ? (value as Value[]) : [value]));
    return list.some((value) => value === null) ? null : work(list as number[]);
  };
  switch (e.tagName) {
    case 'qti-base-value':
      return typed(e.textContent ?? '', attribute(e, 'base-type'));
    case 'qti-variable': {
      const identifier = attribute(e, 'identifier');
      if (!session.variables.has(identifier)) throw new Error(`there is no variable ${identifier}`);
      return session.variables.get(identifier)!;
    }
    case 'qti-correct':
      return session.correct.get(attribute(e, 'identifier')) ?? null;
    case 'qti-random-integer':
      return draw!(Number(attribute(e, 'max')));
    case 'qti-ordered':
      return values() as number[];
    case 'qti-index': {
      const n = attribute(e, 'n');
      const at = /^\d+$/.test(n) ? Number(n) : (session.variables.get(n) as number);
      return (values()[0] as number[])[at - 1] ?? null;
    }
    case 'qti-sum':
      return numeric((list) => list.reduce((sum, x) => sum + x, 0));
    case 'qti-product':
      return numeric((list) => list.reduce((sum, x) => sum * x, 1));
    case 'qti-subtract':
      return numeric(([a, b]) => a! - b!);
    case 'qti-divide':
      return numeric(([a, b]) => (b === 0 ? null : a! / b!));
    case 'qti-power':
      return numeric(([a, b]) => {
        const value = a! ** b!;
        return Number.isFinite(value) ? value : null;
      });
    case 'qti-min':
      return numeric((list) => Math.min(...list));
    case 'qti-max':
      return numeric((list) => Math.max(...list));
    case 'qti-math-constant':
      return attribute(e, 'name') === 'pi' ? Math.PI : Math.E;
    case 'qti-math-operator': {
      const work = maths[attribute(e, 'name')];
      if (!work) throw new Error(`unknown operator ${attribute(e, 'name')}`);
      return numeric(([x]) => (Number.isNaN(work(x!)) ? null : work(x!)));
    }
    case 'qti-lte':
      return numeric(([a, b]) => a! <= b!);
    case 'qti-is-null': {
      const [value] = values();
      return value === null || value === '' || (Array.isArray(value) && value.length === 0);
    }
    case 'qti-not': {
      const [value] = values();
      return value === null ? null : !value;
    }
    case 'qti-and': {
      const list = values();
      return list.includes(false) ? false : list.includes(null) ? null : true;
    }
    case 'qti-or': {
      const list = values();
      return list.includes(true) ? true : list.includes(null) ? null : false;
    }
    case 'qti-match': {
      const [a, b] = values();
      const cardinality = Array.isArray(b) ? 'list' : 'single';
      if (a === null || b === null) return null;
      if (cardinality === 'single') return a === b;
      const ordered = all(session.root, 'qti-order-interaction').length > 0;
      const flat = (value: Value): string => {
        const list = [...(value as readonly string[])];
        return (ordered ? list : list.sort()).join('\n');
      };
      return flat(a!) === flat(b!);
    }
    default:
      throw new Error(`unknown <${e.tagName}>`);
  }
}
