import { together } from '../../calculators/core/together.ts';

/** What is copied or read by a program keeps its spaces. */
const left = /^<(script|style|code|pre|textarea|title|annotation)\b/i;
const parts =
  /<!--[\s\S]*?-->|<(script|style|code|pre|textarea|title|annotation)\b[\s\S]*?<\/\1>|<[/!]?[a-zA-Z](?:[^>"']|"[^"]*"|'[^']*')*>|[^<]+|</gi;

/** A whole page in which numbers stay with their units; tags and their attributes are left as they are. */
export function pageTogether(html: string): string {
  let before = '';
  return html.replace(parts, (part: string) => {
    if (part.startsWith('<')) {
      if (left.test(part)) before = '';
      return part;
    }
    const text = together(part, before);
    before = part;
    return text;
  });
}
