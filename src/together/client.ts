import { options } from 'preact';
import client from '@astrojs/preact/client.js';
import { together } from '../../calculators/core/together.ts';

/** What an island writes keeps numbers with their units too: every piece of text passes here on its way to the page. */
const before = options.vnode;
options.vnode = (vnode) => {
  const { type, props } = vnode as unknown as { type: unknown; props: unknown };
  // A piece of text has no type, and is its own properties. Beside a number it begins with the space.
  if (type === null && typeof props === 'string')
    (vnode as unknown as { props: string }).props = together(props, '0');
  before?.(vnode);
};

export default client;
