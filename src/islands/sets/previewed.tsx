import { useEffect, useState } from 'preact/hooks';
import type { Library } from '../../../calculators/exercises/answer.ts';
import type { Given } from '../../../calculators/exercises/sets/hand-in.ts';
import { plainName, variantFor } from '../../../calculators/exercises/sets/learner.ts';
import { markerFor } from '../../../calculators/exercises/sets/marking-hand-ins.ts';
import { gradedSet, type GradedSet, type SetFile } from '../../../calculators/exercises/sets/set-file.ts';
import { Question } from './question.tsx';
import { workshopFor } from './workshop.ts';

/** The set with the numbers of one learner, and the worked answers. */
export function Previewed({ file }: { readonly file: SetFile }) {
  const [name, setName] = useState('Ada Brook');
  const [shown, setShown] = useState<{ readonly set: GradedSet; readonly library: Library }>();
  const [answers, setAnswers] = useState<Readonly<Record<string, Given>>>({});
  useEffect(() => {
    const set = gradedSet(file);
    void workshopFor(set).then((library) => setShown({ set, library }));
  }, [file]);
  const learner = plainName(name) || 'Ada Brook';
  const marked = shown && markerFor(shown.set, shown.library)({ learner, answers });
  return (
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
        <section key={exercise.id} class="set-question exercise" aria-labelledby={`q-${exercise.id}-title`}>
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
  );
}
