/** What a graded set without a server does and does not prevent, in plain words. */
export function Honest({ sealed }: { readonly sealed: boolean }) {
  return (
    <details class="honest">
      <summary>What this does and does not prevent</summary>
      <p>
        Everything needed to work out the answers is on your device while you work. The page does not try to
        hide it, it cannot see who is typing, and its clock is your device’s own. Opening and closing dates
        are advice.
      </p>
      <p>
        Marks are worked out again by your instructor from the set, so a mark cannot be sent in. A file
        changed by accident is noticed. Somebody who forges answers with care is not: ask again at the bench.
      </p>
      <p>
        {sealed
          ? 'This hand-in is sealed: only your instructor’s key opens it, whoever carries it. The seal does not say who wrote it.'
          : 'This hand-in is not sealed: whoever gets the file can read the answers in it.'}{' '}
        Nothing leaves this device until you send the file or the code yourself.
      </p>
    </details>
  );
}
