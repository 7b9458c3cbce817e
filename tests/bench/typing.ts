/**
 * `npm run -s bench:typing`, after a build: what a digit typed into a calculator costs the page itself, in the
 * packaged Chromium slowed down six times by its own protocol. Opens each kind of calculator, types, and
 * prints what the main thread spent: until the answer is drawn, and afterwards once the hand rests. Nothing
 * passes or fails on time.
 */
import { fileURLToPath } from 'node:url';
import { chromium, type CDPSession, type Page } from '@playwright/test';
import { serveFolder } from '../../src/cli/static-server.ts';
import { findBrowser } from '../site/browser.ts';

const slowed = 6;
const strokes = 12;

interface Kind {
  readonly name: string;
  readonly path: string;
  /** The field typed into, by its name. */
  readonly field: RegExp;
  readonly awake: string;
  /** Numbers begin with this, and a digit is put to it. */
  readonly text: string;
  readonly withSpread?: boolean;
}

const card = (path: string, field: RegExp, text: string, more: Partial<Kind> = {}): Kind => ({
  name: path,
  path: `formulas/${path}/`,
  field,
  awake: 'astro-island:not([ssr]) .calculator',
  text,
  ...more,
});

const model = (path: string, field: RegExp, text: string): Kind => ({
  ...card(path, field, text),
  awake: 'astro-island:not([ssr]) .model-card',
});

const spread = (path: string, field: RegExp, text: string): Kind =>
  card(path, field, text, { name: `${path}, with a spread`, withSpread: true });

const kinds: readonly Kind[] = [
  card('filling/velocity', /head of metal/i, '4'),
  card('freezing/time-both-curved', /interface/i, '10'),
  card('vacuum/standing', /./, '1'),
  card('filling/flow-time', /interface/i, '10'),
  spread('filling/velocity', /head of metal/i, '4'),
  spread('freezing/time-both-curved', /interface/i, '10'),
  model('investment/schedule', /flask diameter/i, '7'),
  model('investment/centre-lag', /./, '7'),
  model('freezing/section-race', /./, '1'),
  { name: 'the plan', path: 'plan/', field: /head of metal/i, awake: '.plan[data-awake="true"]', text: '4' },
];

interface Spent {
  readonly script: number;
  readonly layout: number;
  readonly all: number;
}

async function spentSoFar(session: CDPSession): Promise<Spent> {
  const { metrics } = await session.send('Performance.getMetrics');
  const of = (name: string): number => 1000 * (metrics.find((one) => one.name === name)?.value ?? 0);
  return {
    script: of('ScriptDuration'),
    layout: of('LayoutDuration') + of('RecalcStyleDuration'),
    all: of('TaskDuration'),
  };
}

const less = (a: Spent, b: Spent): Spent => ({
  script: a.script - b.script,
  layout: a.layout - b.layout,
  all: a.all - b.all,
});

/** Two frames on: what a stroke asks for at once is then worked and drawn. */
const drawn = (page: Page): Promise<void> =>
  page.evaluate(
    () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => done()))),
  );

const middle = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1]!;

/** What the slow-down comes to here: a fixed sum with it over the same without. On a busy machine it is more. */
async function trueSlowing(page: Page, session: CDPSession): Promise<number> {
  const sum = async (rate: number): Promise<number> => {
    await session.send('Emulation.setCPUThrottlingRate', { rate });
    const spent: number[] = [];
    for (let i = 0; i < 7; i += 1) {
      const before = await spentSoFar(session);
      await page.evaluate(() => {
        let x = 0;
        for (let k = 0; k < 3e6; k += 1) x += Math.sqrt(k);
        return x;
      });
      spent.push(less(await spentSoFar(session), before).all);
    }
    return middle(spent);
  };
  const free = await sum(1);
  return (await sum(slowed)) / free;
}

async function typeInto(page: Page, session: CDPSession, kind: Kind): Promise<void> {
  await page.goto(kind.path);
  const field = page.getByRole('textbox', { name: kind.field }).first();
  await field.click();
  await page.locator(kind.awake).first().waitFor();
  if (kind.withSpread) {
    await page.getByRole('button', { name: '± spread', exact: true }).first().click();
    for (const one of await page.getByRole('textbox', { name: /^± ?spread of/ }).all())
      await one.fill('10 %');
  }
  await field.fill(kind.text);
  await page.waitForTimeout(1500);
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  const slowing = await trueSlowing(page, session);
  const atOnce: Spent[] = [];
  const later: Spent[] = [];
  for (let i = 0; i < strokes; i += 1) {
    const before = await spentSoFar(session);
    await page.keyboard.press(i % 2 === 0 ? String(1 + (i % 9)) : 'Backspace');
    await drawn(page);
    const after = await spentSoFar(session);
    await page.waitForTimeout(1400);
    atOnce.push(less(after, before));
    later.push(less(await spentSoFar(session), after));
  }
  const says = (list: readonly Spent[]): string =>
    (['script', 'layout', 'all'] as const)
      .map((name) =>
        middle(list.map((one) => one[name]))
          .toFixed(1)
          .padStart(7),
      )
      .join('');
  const most = Math.max(...atOnce.map(({ script }) => script)).toFixed(1);
  console.log(`${says(atOnce)} ${most.padStart(7)}  ${says(later)}   ${slowing.toFixed(1)} ×   ${kind.name}`);
}

const { executablePath, args, env } = await findBrowser();
const site = await serveFolder(fileURLToPath(new URL('../../dist', import.meta.url)), { base: '/' });
const browser = await chromium.launch({ executablePath, args, ...(env && { env }) });
console.log(
  `\nA digit typed, ms of the main thread at ${slowed} × slow-down, the middle of ${strokes} (wanted: 16 ms of script)`,
);
console.log('   until it is drawn               once the hand rests');
console.log(' script layout    all    most   script layout    all    slowed');
const only = process.argv[2];
for (const kind of kinds.filter(({ name }) => only === undefined || name.includes(only))) {
  const context = await browser.newContext({ baseURL: site.address, viewport: { width: 360, height: 780 } });
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  try {
    await typeInto(page, session, kind);
  } catch (error) {
    console.log(`${kind.name}: ${String(error).split('\n')[0]}`);
  }
  await context.close();
}
await browser.close();
await site.close();
