import type { Remark } from './class-table.ts';
import { markBookSchema } from './formats.ts';
import { plainName } from './learner.ts';
import { faultOf } from './schema.ts';
import { laterVersion } from './set-file.ts';
import { parseUntrusted, type Read } from './untrusted.ts';

/** What the instructor decided by hand, kept apart from what is worked out. */
export interface MarkBook {
  readonly remarks: readonly Remark[];
  readonly roster: readonly string[];
}

export const emptyBook: MarkBook = { remarks: [], roster: [] };

export function writeMarkBook({ remarks, roster }: MarkBook): string {
  return `${JSON.stringify({ format: 'warm-mould-mark-book', version: 1, remarks, roster }, null, 2)}\n`;
}

/** Never throws; the reason is a sentence. */
export function readMarkBook(text: string): Read<MarkBook> {
  const parsed = parseUntrusted(text, { characters: 20_000_000, depth: 6 });
  if (!parsed.ok) return parsed;
  const fault =
    laterVersion(parsed.value, 'warm-mould-mark-book', 'a mark book') ??
    faultOf(parsed.value, markBookSchema, 'The mark book');
  if (fault !== undefined) return { ok: false, reason: fault };
  const { remarks, roster } = parsed.value as MarkBook;
  return { ok: true, value: { remarks, roster } };
}

/** The remarks with one put in, in place of an earlier one on the same question of the same learner. */
export function withRemark(remarks: readonly Remark[], remark: Remark): Remark[] {
  const others = remarks.filter(
    ({ set, learner, question }) =>
      set !== remark.set || learner !== remark.learner || question !== remark.question,
  );
  const says = remark.marks !== undefined || remark.comment !== undefined;
  return says ? [...others, remark] : others;
}

/** Names from pasted text: one a line, or the first cell of each line of a table. */
export function rosterFrom(text: string): string[] {
  const names = text
    .slice(0, 400_000)
    .split(/\r?\n/)
    .map((row) =>
      plainName(/^\s*"((?:[^"]|"")*)"/.exec(row)?.[1]?.replaceAll('""', '"') ?? row.split(/[\t;]/)[0]!),
    );
  return [...new Set(names.filter((name) => name !== ''))].slice(0, 2000);
}
