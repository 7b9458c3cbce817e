import { useEffect, useState } from 'preact/hooks';
import type { Library } from '../../../calculators/exercises/answer.ts';
import type { Given } from '../../../calculators/exercises/sets/hand-in.ts';
import { plainName, variantFor } from '../../../calculators/exercises/sets/learner.ts';
import { markerFor } from '../../../calculators/exercises/sets/marking-hand-ins.ts';
import { gradedSet, type GradedSet, type SetFile } from '../../../calculators/exercises/sets/set-file.ts';
import { Question } from './question.tsx';
import { workshopFor } from './workshop.ts';

/** The set as one learner will see it, with the worked answers. */
export function Preview({ file }: { readonly file: SetFile }) {
  const [name, setName] = useState('Ada Brook');
  const [open, setOpen] = useState(false);
  const [shown, setShown] = useState<{ readonly set: GradedSet; readonly library: Library }>();
  const [answers, setAnswers] = useState<Readonly<Record<string, Given>>>({});
  useEffect(() => {
    if (!open) return;
    const set = gradedSet(file);
    void workshopFor(set).then((library) => setShown({ set, library }));
  }, [file, open]);
  const learner = plainName(name) || 'Ada Brook';
  const marked = shown && markerFor(shown.set, shown.library)({ learner, answers });
  return (
    <details class="preview" onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>Preview as a learner</summary>
      {open && (
        <>
          <label htmlFor="preview-name">{file.asks}</label>
          <input
            id="preview-name"
            type="text"
            autocomplete="off"
            value={name}
            onInput={({ currentTarget }) => setName(currentTarget.value)}
          />
          {shown?.set.questions.map((exercise, at) => (
            <section
              key={exercise.id}
              class="set-question exercise"
              aria-labelledby={`q-${exercise.id}-title`}
            >
              <Question
                set={shown.set}
                number={at + 1}
                exercise={exercise}
                variant={variantFor(shown.set, learner, exercise)}
                library={shown.library}
                given={answers[exercise.id] ?? {}}
                marked={marked?.questions[at]?.state === 'blank' ? undefined : marked?.questions[at]}
                hints
                worked
                change={(given) => setAnswers({ ...answers, [exercise.id]: given })}
              />
            </section>
          ))}
        </>
      )}
    </details>
  );
}
