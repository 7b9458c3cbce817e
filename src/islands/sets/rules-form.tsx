import type { Draft } from '../../../calculators/exercises/sets/building.ts';
import type { Rules } from '../../../calculators/exercises/sets/set-file.ts';

interface RulesFormProps {
  readonly draft: Draft;
  readonly change: (part: Partial<Draft>) => void;
  readonly makeSeal: () => void;
  readonly useSeal: (file: File | undefined) => void;
}

/** Title, signing, numbers, feedback, dates and the seal. */
export function RulesForm({ draft, change, makeSeal, useSeal }: RulesFormProps) {
  const { rules } = draft;
  const rule = (part: Partial<Rules>): void => change({ rules: { ...rules, ...part } });
  const date = (name: 'opens' | 'closes', value: string): void => {
    const { [name]: _, ...rest } = rules;
    change({ rules: value === '' ? rest : { ...rest, [name]: value } });
  };
  const tick = (name: 'hints' | 'worked', label: string) => (
    <label class="tick">
      <input
        type="checkbox"
        checked={rules[name]}
        onChange={({ currentTarget }) => rule({ [name]: currentTarget.checked })}
      />
      {label}
    </label>
  );
  return (
    <>
      <div class="fields">
        <div>
          <label htmlFor="set-title">Title</label>
          <input
            id="set-title"
            type="text"
            maxLength={120}
            autocomplete="off"
            value={draft.title}
            onInput={({ currentTarget }) => change({ title: currentTarget.value })}
          />
        </div>
        <div>
          <label htmlFor="set-asks">What a learner signs with</label>
          <input
            id="set-asks"
            type="text"
            maxLength={120}
            autocomplete="off"
            value={draft.asks}
            onInput={({ currentTarget }) => change({ asks: currentTarget.value })}
          />
        </div>
        <div>
          <label htmlFor="set-numbers">Numbers</label>
          <select
            id="set-numbers"
            value={rules.numbers}
            onChange={({ currentTarget }) => rule({ numbers: currentTarget.value as Rules['numbers'] })}
          >
            <option value="own">each learner’s own</option>
            <option value="same">the same for all</option>
          </select>
        </div>
        <div>
          <label htmlFor="set-feedback">Feedback</label>
          <select
            id="set-feedback"
            value={rules.feedback}
            onChange={({ currentTarget }) => rule({ feedback: currentTarget.value as Rules['feedback'] })}
          >
            <option value="at-once">at once, answer by answer</option>
            <option value="after">after handing in</option>
            <option value="never">from me only</option>
          </select>
        </div>
        <div>
          <label htmlFor="set-keep">If handed in twice, count</label>
          <select
            id="set-keep"
            value={rules.keep}
            onChange={({ currentTarget }) => rule({ keep: currentTarget.value as Rules['keep'] })}
          >
            <option value="first">the first</option>
            <option value="last">the last</option>
            <option value="best">the best</option>
          </select>
        </div>
        <div>
          {tick('hints', 'Hints')}
          {tick('worked', 'Worked answers, with the feedback')}
        </div>
        <div>
          <label htmlFor="set-opens">Opens (advice)</label>
          <input
            id="set-opens"
            type="date"
            value={rules.opens ?? ''}
            onChange={({ currentTarget }) => date('opens', currentTarget.value)}
          />
        </div>
        <div>
          <label htmlFor="set-closes">Closes (advice)</label>
          <input
            id="set-closes"
            type="date"
            value={rules.closes ?? ''}
            onChange={({ currentTarget }) => date('closes', currentTarget.value)}
          />
        </div>
      </div>
      <p class="soft">
        Dates are shown and not enforced: a page without a server cannot hold anybody to them.
      </p>
      <div role="status">
        {rules.opens !== undefined && rules.closes !== undefined && rules.closes < rules.opens && (
          <p class="problem">It closes before it opens: look at the two dates.</p>
        )}
      </div>
      <div>
        <label htmlFor="set-note">A word to the learners</label>
        <textarea
          id="set-note"
          rows={2}
          maxLength={2000}
          value={draft.note}
          onInput={({ currentTarget }) => change({ note: currentTarget.value })}
        />
      </div>
      <p class="deeds">
        {draft.seal === undefined ? (
          <>
            <button type="button" onClick={makeSeal}>
              Seal hand-ins to a new key
            </button>
            <label class="press">
              <input
                type="file"
                class="unseen"
                accept=".json,application/json"
                onChange={({ currentTarget }) => {
                  useSeal(currentTarget.files?.[0]);
                  currentTarget.value = '';
                }}
              />
              Seal to a key I have
            </label>
          </>
        ) : (
          <>
            <span>Hand-ins are sealed to your key.</span>
            <button type="button" onClick={() => change({ seal: undefined })}>
              Do not seal
            </button>
          </>
        )}
      </p>
      <p class="soft">
        Sealed, a hand-in can travel by mail or a shared folder and only your key file opens it. The key is
        saved as a file first. Lose it and the hand-ins stay shut.
      </p>
    </>
  );
}
