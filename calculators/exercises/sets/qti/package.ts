import { gradedSet, type SetFile } from '../set-file.ts';
import { zip } from '../zip.ts';
import { Unsayable } from './expressions.ts';
import { itemFor } from './items.ts';
import { element } from './xml.ts';

export interface QtiPackage {
  readonly files: Readonly<Record<string, string>>;
  readonly bytes: Uint8Array<ArrayBuffer>;
  /** What the standard cannot say of this set, a sentence each. Also in the package as left-out.txt. */
  readonly leftOut: readonly string[];
}

const whole = (root: string): string => `<?xml version="1.0" encoding="UTF-8"?>\n${root}\n`;

/** The set as a QTI 3.0 package: an item for each question, a test over them, a manifest. */
export function qtiPackage(file: SetFile): QtiPackage {
  const set = gradedSet(file);
  const items: Record<string, string> = {};
  const leftOut: string[] = [];
  for (const exercise of set.questions) {
    try {
      items[`items/${exercise.id}.xml`] = itemFor(exercise, set.formulas);
    } catch (error) {
      if (!(error instanceof Unsayable)) throw error;
      leftOut.push(`“${exercise.title}” is not in the package: ${error.message}.`);
    }
  }
  const kinds = new Set(set.questions.flatMap(({ id, kind }) => (`items/${id}.xml` in items ? [kind] : [])));
  const computed = kinds.has('number') || kinds.has('steps');
  if (computed) {
    leftOut.push('The mark of the unit: the number is asked for in a unit that is printed beside the field.');
    leftOut.push('Diagnosed mistakes: a wrong number gets no mark and is not told which way it went.');
    leftOut.push('Numbers by learner: the platform draws them, so they are not those of these pages.');
  }
  if (kinds.has('order')) leftOut.push('Part marks of an order: it is all or nothing.');
  leftOut.push(
    'Hints and worked answers, dates, and the rule for several hand-ins: set these in the platform.',
  );
  const files = {
    'imsmanifest.xml': manifest(file, Object.keys(items)),
    'test.xml': test(file, Object.keys(items)),
    ...items,
    'left-out.txt': `What QTI cannot say of this set:\n\n${leftOut.map((text) => `- ${text}`).join('\n')}\n`,
  };
  return { files, bytes: zip(files), leftOut };
}

const itemId = (path: string): string => path.slice('items/'.length, -'.xml'.length);

function test(file: SetFile, paths: readonly string[]): string {
  return whole(
    element(
      'qti-assessment-test',
      {
        xmlns: 'http://www.imsglobal.org/xsd/imsqtiasi_v3p0',
        identifier: file.id,
        title: file.title,
      },
      element('qti-outcome-declaration', {
        identifier: 'SCORE',
        cardinality: 'single',
        'base-type': 'float',
      }),
      element(
        'qti-test-part',
        { identifier: 'part', 'navigation-mode': 'nonlinear', 'submission-mode': 'simultaneous' },
        element(
          'qti-assessment-section',
          { identifier: 'section', title: file.title, visible: true },
          ...paths.map((path) =>
            element('qti-assessment-item-ref', { identifier: `ref-${itemId(path)}`, href: path }),
          ),
        ),
      ),
      element(
        'qti-outcome-processing',
        {},
        element(
          'qti-set-outcome-value',
          { identifier: 'SCORE' },
          element('qti-sum', {}, element('qti-test-variables', { 'variable-identifier': 'SCORE' })),
        ),
      ),
    ),
  );
}

function manifest(file: SetFile, paths: readonly string[]): string {
  const resource = (identifier: string, type: string, href: string, needs: readonly string[] = []): string =>
    element(
      'resource',
      { identifier, type, href },
      element('file', { href }),
      ...needs.map((identifierref) => element('dependency', { identifierref })),
    );
  return whole(
    element(
      'manifest',
      {
        xmlns: 'http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1',
        identifier: `manifest-${file.id}-${file.edition}`,
      },
      element('metadata', {}, element('schema', {}, 'QTI Package'), element('schemaversion', {}, '3.0.0')),
      element('organizations'),
      element(
        'resources',
        {},
        resource(
          'test',
          'imsqti_test_xmlv3p0',
          'test.xml',
          paths.map((path) => `item-${itemId(path)}`),
        ),
        ...paths.map((path) => resource(`item-${itemId(path)}`, 'imsqti_item_xmlv3p0', path)),
      ),
    ),
  );
}
