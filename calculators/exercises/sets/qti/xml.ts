/** Text as it stands in XML, in an element or in a quoted attribute. What XML cannot hold at all is left out. */
export const escaped = (text: string): string =>
  text
    .replace(/[^\t\n\r -\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, '')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');

type Attributes = Readonly<Record<string, string | number | boolean | undefined>>;

/** An element from its name, attributes, and what stands in it, which is XML already. */
export function element(name: string, attributes: Attributes = {}, ...inner: readonly string[]): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${escaped(String(value))}"`)
    .join('');
  const content = inner.join('');
  return content === '' ? `<${name}${written}/>` : `<${name}${written}>${content}</${name}>`;
}
