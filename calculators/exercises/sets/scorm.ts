import { element, escaped } from './qti/xml.ts';
import type { SetFile } from './set-file.ts';
import { zip } from './zip.ts';

/**
 * A thin SCORM 1.2 package: one page that shows the set where it lives, and tells the platform score and
 * completion when the learner hands in. `link` opens the set; its part after `#` holds the whole set.
 */
export function scormPackage(file: SetFile, link: string): Uint8Array<ArrayBuffer> {
  return zip(scormFiles(file, link));
}

export function scormFiles(file: SetFile, link: string): Record<string, string> {
  const address = `${link}&report=1`;
  return {
    'imsmanifest.xml': manifest(file),
    'index.html': `<!doctype html>
<html lang="en-GB">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(file.title)}</title>
<style>html, body, iframe { width: 100%; height: 100%; margin: 0; border: 0 }</style>
<iframe id="set" title="${escaped(file.title)}" src="${escaped(address)}"></iframe>
<script src="report.js"></script>
</html>
`,
    'report.js': report,
  };
}

function manifest(file: SetFile): string {
  return `<?xml version="1.0" encoding="UTF-8"?>\n${element(
    'manifest',
    {
      identifier: `manifest-${file.id}-${file.edition}`,
      version: '1.0',
      xmlns: 'http://www.imsproject.org/xsd/imscp_rootv1p1p2',
      'xmlns:adlcp': 'http://www.adlnet.org/xsd/adlcp_rootv1p2',
    },
    element('metadata', {}, element('schema', {}, 'ADL SCORM'), element('schemaversion', {}, '1.2')),
    element(
      'organizations',
      { default: 'organization' },
      element(
        'organization',
        { identifier: 'organization' },
        element('title', {}, escaped(file.title)),
        element(
          'item',
          { identifier: 'item', identifierref: 'resource' },
          element('title', {}, escaped(file.title)),
        ),
      ),
    ),
    element(
      'resources',
      {},
      element(
        'resource',
        { identifier: 'resource', type: 'webcontent', 'adlcp:scormtype': 'sco', href: 'index.html' },
        element('file', { href: 'index.html' }),
        element('file', { href: 'report.js' }),
      ),
    ),
  )}\n`;
}

/** The platform's object stands in a window above or in the one that opened this; it is looked for as the standard says. */
const report = `(function () {
  'use strict';
  function findApi(from) {
    for (var steps = 0; from && steps < 10; steps += 1) {
      if (from.API) return from.API;
      if (from.parent === from) break;
      from = from.parent;
    }
    return null;
  }
  var api = findApi(window) || (window.opener ? findApi(window.opener) : null);
  if (!api) return;
  var frame = document.getElementById('set');
  var origin = new URL(frame.src).origin;
  var open = String(api.LMSInitialize('')) === 'true';
  if (open && api.LMSGetValue('cmi.core.lesson_status') === 'not attempted') {
    api.LMSSetValue('cmi.core.lesson_status', 'incomplete');
    api.LMSCommit('');
  }
  window.addEventListener('message', function (event) {
    var data = event.data;
    if (!open || event.source !== frame.contentWindow || event.origin !== origin) return;
    if (!data || data.format !== 'warm-mould-score') return;
    if (!(data.of > 0 && data.marks >= 0 && data.marks <= data.of)) return;
    api.LMSSetValue('cmi.core.score.min', '0');
    api.LMSSetValue('cmi.core.score.max', '100');
    api.LMSSetValue('cmi.core.score.raw', String(Math.round((10000 * data.marks) / data.of) / 100));
    api.LMSSetValue('cmi.core.lesson_status', 'completed');
    api.LMSCommit('');
  });
  window.addEventListener('pagehide', function () {
    if (open) api.LMSFinish('');
    open = false;
  });
})();
`;
