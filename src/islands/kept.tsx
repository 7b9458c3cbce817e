import type { VNode } from 'preact';
import { useMemo } from 'preact/hooks';

/** Made again only when one of these is another than before: a stroke changes one field of a form. */
export function Kept({ on, children }: { readonly on: readonly unknown[]; readonly children: () => VNode }) {
  return useMemo(children, on);
}
