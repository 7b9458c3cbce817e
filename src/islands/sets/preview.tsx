import { useState } from 'preact/hooks';
import type { SetFile } from '../../../calculators/exercises/sets/set-file.ts';
import type { Previewed } from './previewed.tsx';

/** The set as one learner will see it; what that takes is fetched when it is opened. */
export function Preview({ file }: { readonly file: SetFile }) {
  const [shown, setShown] = useState<{ readonly As: typeof Previewed }>();
  const open = async (): Promise<void> => setShown({ As: (await import('./previewed.tsx')).Previewed });
  return (
    <details class="preview" onToggle={({ currentTarget }) => void (currentTarget.open && !shown && open())}>
      <summary>Preview as a learner</summary>
      {shown && <shown.As file={file} />}
    </details>
  );
}
