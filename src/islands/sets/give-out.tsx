import { useEffect, useState } from 'preact/hooks';
import type { Draft } from '../../../calculators/exercises/sets/building.ts';
import { writeSet, type SetFile } from '../../../calculators/exercises/sets/set-file.ts';
import { copyText, fileName, longLink, mostInSquare, saveFile, shortLink } from './carrying.ts';
import { full, keepSet } from './shelf.ts';

interface GiveOutProps {
  readonly draft: Draft;
  readonly file: SetFile;
  readonly pages: { readonly do: string; readonly paper: string };
  readonly given: () => void;
}

/** Every way the set leaves the page: as a file, a link, a square code, paper, or a package for a learning platform. */
export function GiveOut({ draft, file, pages, given }: GiveOutProps) {
  // What was done is said beside the buttons: the head of the page is far away.
  const [said, say] = useState('');
  const [square, setSquare] = useState('');
  const [link, setLink] = useState('');
  const [left, setLeft] = useState<readonly string[]>([]);
  useEffect(() => {
    say('');
    setSquare('');
    setLink('');
    setLeft([]);
  }, [file.hash]);
  const name = fileName(file.title, file.edition > 1 ? `edition ${file.edition}` : '');
  const gone = (what: string): void => {
    given();
    say(keepSet(file) ? `${what} It is kept here too, for marking.` : `${what} ${full}`);
  };
  const copy = async (address: string, what: string): Promise<void> => {
    setLink(address);
    gone(
      (await copyText(address))
        ? `${what} copied: ${address.length} signs.`
        : `${what} below: copy it from there.`,
    );
  };
  const short = (): Promise<string | undefined> => shortLink(pages.do, draft, file);
  const showSquare = async (): Promise<void> => {
    const address = (await short()) ?? (await longLink(pages.do, file));
    setLink(address);
    if (address.length > mostInSquare)
      return say(
        'The set is too large for a square code. Give out the link or the file: a question of your own does not fit.',
      );
    const { renderSVG } = await import('uqr');
    setSquare(renderSVG(address, { border: 2 }));
    gone('The square code opens the set.');
  };
  const paper = async (): Promise<void> => {
    keepSet(file);
    given();
    location.href = await longLink(pages.paper, file);
  };
  const qti = async (): Promise<void> => {
    const { qtiPackage } = await import('../../../calculators/exercises/sets/qti/package.ts');
    const { bytes, leftOut } = qtiPackage(file);
    saveFile(`${name}-qti.zip`, bytes, 'application/zip');
    setLeft(leftOut);
    gone('The QTI package is saved.');
  };
  const scorm = async (): Promise<void> => {
    const { scormPackage } = await import('../../../calculators/exercises/sets/scorm.ts');
    saveFile(`${name}-scorm.zip`, scormPackage(file, await longLink(pages.do, file)), 'application/zip');
    gone(
      'The SCORM package is saved. It opens this site inside the platform and reports score and completion.',
    );
  };
  return (
    <section aria-labelledby="give-out">
      <h2 id="give-out">Give it out</h2>
      <p class="deeds">
        <button
          type="button"
          class="first"
          onClick={() => {
            saveFile(`${name}.json`, writeSet(file));
            gone('The file of the set is saved.');
          }}
        >
          Save the file
        </button>
        <button
          type="button"
          onClick={() =>
            void short().then(async (address) =>
              copy(
                address ?? (await longLink(pages.do, file)),
                address === undefined ? 'Long link' : 'Short link',
              ),
            )
          }
        >
          Copy a link
        </button>
        <button
          type="button"
          onClick={() => void longLink(pages.do, file).then((address) => copy(address, 'Long link'))}
        >
          Copy the long link
        </button>
        <button type="button" onClick={() => void showSquare()}>
          Square code
        </button>
        <button type="button" onClick={() => void paper()}>
          Paper
        </button>
        <button type="button" onClick={() => void qti()}>
          QTI package
        </button>
        <button type="button" onClick={() => void scorm()}>
          SCORM package
        </button>
      </p>
      <p role="status">{said}</p>
      <p class="soft">
        A short link names the exercises and builds the set again from this site. A long link and the file
        carry everything, also after these pages have changed. Keep the file: it is what hand-ins are marked
        by.
      </p>
      {square !== '' && (
        <div
          class="square"
          role="img"
          aria-label="Square code that opens the set"
          dangerouslySetInnerHTML={{ __html: square }}
        />
      )}
      {link !== '' && (
        <>
          <label htmlFor="set-link">Link</label>
          <textarea id="set-link" readOnly rows={3} value={link} />
        </>
      )}
      {left.length > 0 && (
        <>
          <p>What the QTI package cannot say, so that it is left out:</p>
          <ul>
            {left.map((text) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}
