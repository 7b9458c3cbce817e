import type { Values } from '../../core/model.ts';
import type { Metal, Stuff } from '../conduction/substance.ts';
import { numberAt } from '../given.ts';

/** A number, or another where it is left open. */
export const open = (given: Values, name: string, otherwise: number): number => {
  const value = numberAt(given, name);
  return Number.isNaN(value) ? otherwise : value;
};

/** The metal of the inputs. */
export function metalOf(given: Values): Metal {
  const k = numberAt(given, 'metal.k');
  const c = numberAt(given, 'metal.c');
  const base = numberAt(given, 'metal.base');
  return {
    k: { solid: k, liquid: open(given, 'metal.k.liquid', k) },
    rho: numberAt(given, 'metal.rho'),
    c: { solid: c, liquid: open(given, 'metal.c.liquid', c) },
    latent: numberAt(given, 'metal.L'),
    solidus: numberAt(given, 'metal.solidus'),
    liquidus: numberAt(given, 'metal.liquidus'),
    ...(!Number.isNaN(base) && { base }),
  };
}

/** Mould, chill, flask and gap of the inputs: regions 1 to 4. */
export function othersOf(given: Values): readonly Stuff[] {
  const stuff = (name: string, said: string): Stuff => ({
    name: said,
    k: numberAt(given, `${name}.k`),
    rhoc: numberAt(given, `${name}.rhoc`),
    h: numberAt(given, `${name}.h`),
  });
  const rhoc = numberAt(given, 'mould.rho') * numberAt(given, 'mould.c');
  return [
    {
      name: 'mould',
      k: numberAt(given, 'mould.k'),
      rhoc: open(given, 'mould.rhoc', rhoc),
      h: numberAt(given, 'h_interface'),
    },
    stuff('chill', 'chill'),
    stuff('flask', 'flask'),
    stuff('gap', 'air gap'),
  ];
}
