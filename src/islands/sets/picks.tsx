import type { Bank, Pick } from '../../../calculators/exercises/sets/building.ts';

interface PicksProps {
  readonly bank: Bank | undefined;
  readonly picks: readonly Pick[];
  readonly change: (picks: Pick[]) => void;
}

/** What is in the set, in order, each with its marks and tolerance. */
export function Picks({ bank, picks, change }: PicksProps) {
  const put = (at: number, part: Partial<Pick>): void =>
    change(picks.map((pick, i) => (i === at ? { ...pick, ...part } : pick)));
  const move = (at: number, to: number): void => {
    if (to < 0 || to >= picks.length) return;
    const next = [...picks];
    const [pick] = next.splice(at, 1);
    next.splice(to, 0, pick!);
    change(next);
  };
  const all = picks.reduce((sum, pick) => sum + (pick.marks ?? Number(dataOf(bank, pick)['marks'] ?? 0)), 0);
  return (
    <section aria-labelledby="picks">
      <h2 id="picks">In the set</h2>
      <p class="soft">
        {picks.length} questions, {all} marks
      </p>
      <ol class="rows picks">
        {picks.map((pick, at) => {
          const data = dataOf(bank, pick);
          const title = String(data['title'] ?? pick.id);
          const computed = data['kind'] === 'number' || data['kind'] === 'steps';
          return (
            <li key={pick.id}>
              <span>
                {at + 1}. {title}
              </span>
              <div>
                <label htmlFor={`marks-${pick.id}`}>Marks</label>{' '}
                <input
                  id={`marks-${pick.id}`}
                  type="number"
                  min={1}
                  max={100}
                  value={pick.marks ?? Number(data['marks'] ?? 1)}
                  onChange={({ currentTarget }) => {
                    const marks = Math.round(Number(currentTarget.value));
                    if (marks >= 1 && marks <= 100) put(at, { marks });
                  }}
                />
              </div>
              {computed && (
                <div class="tolerance">
                  <label htmlFor={`tolerance-${pick.id}`}>Tolerance</label>{' '}
                  <input
                    id={`tolerance-${pick.id}`}
                    type="text"
                    autocomplete="off"
                    value={pick.tolerance ?? String(data['tolerance'] ?? '2 %')}
                    onChange={({ currentTarget }) => {
                      // A share; a width in a unit is kept where the exercise has one.
                      const share = /^\s*(\d+(?:[.,]\d+)?)\s*%?\s*$/
                        .exec(currentTarget.value)?.[1]
                        ?.replace(',', '.');
                      if (share !== undefined && Number(share) > 0 && Number(share) <= 50)
                        put(at, { tolerance: `${share} %` });
                      else currentTarget.value = pick.tolerance ?? String(data['tolerance'] ?? '2 %');
                    }}
                  />
                </div>
              )}
              <button
                type="button"
                aria-label={`Move up: ${title}`}
                disabled={at === 0}
                onClick={() => move(at, at - 1)}
              >
                ↑
              </button>
              <button
                type="button"
                aria-label={`Move down: ${title}`}
                disabled={at === picks.length - 1}
                onClick={() => move(at, at + 1)}
              >
                ↓
              </button>
              <button
                type="button"
                aria-label={`Take out: ${title}`}
                onClick={() => change(picks.filter((_, i) => i !== at))}
              >
                Take out
              </button>
            </li>
          );
        })}
      </ol>
    </section>
  );
}

const dataOf = (bank: Bank | undefined, pick: Pick): Readonly<Record<string, unknown>> =>
  pick.own ?? bank?.exercises.find(({ id }) => id === pick.id)?.exercise ?? {};
