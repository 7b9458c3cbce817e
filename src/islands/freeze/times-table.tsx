import { seconds } from './answer.ts';

/** So many of a row of things, evenly, the first and the last with them. */
const pick = (count: number, most: number): number[] =>
  count <= most
    ? Array.from({ length: count }, (_, n) => n)
    : Array.from({ length: most }, (_, n) => Math.round((n * (count - 1)) / (most - 1)));

/** Temperatures in time, nine moments of them. */
export function TimesTable({
  times,
  columns,
}: {
  readonly times: readonly number[];
  /** What stands in a column at the n-th of the times. */
  readonly columns: readonly { readonly name: string; readonly at: (n: number) => string }[];
}) {
  return (
    <div class="scrolls" tabIndex={0} role="region" aria-label="Temperatures in time">
      <table>
        <thead>
          <tr>
            <th scope="col">After</th>
            {columns.map(({ name }) => (
              <th scope="col">{name}</th>
            ))}
          </tr>
        </thead>
        <tbody>
          {pick(times.length, 9).map((n) => (
            <tr>
              <th scope="row">{seconds(times[n]!)}</th>
              {columns.map(({ at }) => (
                <td>{at(n)}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
