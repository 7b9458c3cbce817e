/**
 * `npm start` and `npm test`. Runs before anything is installed, on whatever Node the machine has (20 or
 * newer), so it is plain JavaScript over Node's own modules. The steps themselves run through `npm run`,
 * where the newer Node that comes with the packages is first on the path.
 */
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../../', import.meta.url));
const stamp = `${root}node_modules/.installed-from`;
const counts = `${root}test-results/counts`;
const neededNode = [22, 12];

const plans = {
  start: [
    ['build', 'Building the site'],
    ['serve', 'Serving'],
  ],
  test: [
    ['types', 'Types'],
    ['lint', 'Lint'],
    ['format:check', 'Format'],
    ['unit', 'Unit, property and published checks'],
    ['build', 'Site build'],
    ['links', 'Links'],
    ['weights', 'Script of each page against its budget'],
    ['journeys', 'Journeys in a browser'],
  ],
};

/** Runs npm and returns its exit code. The npm that started us is used, on the Node that started it. */
function npm(args, env = {}) {
  const cli = process.env.npm_execpath;
  const [command, first] = cli ? [process.env.npm_node_execpath ?? process.execPath, [cli]] : ['npm', []];
  const done = spawnSync(command, [...first, ...args], {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', ...env },
  });
  if (done.error) throw done.error;
  return done.status ?? 1;
}

/** What an install depends on: the lock file and the kind of machine. */
function wanted() {
  const lock = createHash('sha256')
    .update(readFileSync(`${root}package-lock.json`))
    .digest('hex');
  return `${lock} ${process.platform}-${process.arch}\n`;
}

function install() {
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === wanted()) return 0;
  heading('Installing what is missing');
  const code = npm(['ci', '--no-audit', '--no-fund', '--loglevel=error']);
  if (code === 0) writeFileSync(stamp, wanted());
  return code;
}

/** The Node that `npm run` will find: the packaged one where there is one, else the machine's. */
function toolNode() {
  const packaged = `${root}node_modules/.bin/node`;
  if (!existsSync(packaged) || process.platform === 'win32') return process.versions.node;
  return (
    spawnSync(packaged, ['--version'], { encoding: 'utf8' }).stdout?.trim().replace(/^v/, '') ||
    process.versions.node
  );
}

function newEnough(version) {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  return major > neededNode[0] || (major === neededNode[0] && minor >= neededNode[1]);
}

function heading(text) {
  console.log(`\n== ${text}`);
}

/** Tests passed and failed so far, from the reports the two runners leave behind. */
function tally() {
  const total = { passed: 0, failed: 0 };
  const read = (name, add) => {
    if (existsSync(`${counts}/${name}`)) add(JSON.parse(readFileSync(`${counts}/${name}`, 'utf8')));
  };
  read('unit.json', (report) => {
    total.passed += report.numPassedTests;
    total.failed += report.numFailedTests;
  });
  read('journeys.json', (report) => {
    total.passed += report.stats.expected + report.stats.flaky;
    total.failed += report.stats.unexpected;
  });
  return total;
}

function main(name) {
  const plan = plans[name];
  if (!plan) {
    console.error(`No command "${name ?? ''}". There are two: start and test.`);
    return 2;
  }
  const installed = install();
  if (installed !== 0) {
    console.error('The packages could not be installed; what npm says is above.');
    return installed;
  }
  const node = toolNode();
  if (!newEnough(node)) {
    console.error(
      `This machine's Node is ${node} and no newer one comes packaged for it. Install Node ${neededNode.join('.')} or newer and run the command again.`,
    );
    return 1;
  }
  rmSync(counts, { recursive: true, force: true });
  mkdirSync(counts, { recursive: true });
  let code = 0;
  for (const [step, title] of plan) {
    heading(title);
    code = npm(['run', '-s', step], name === 'test' ? { WARM_MOULD_COUNTS: counts } : {});
    if (code !== 0) {
      if (name === 'test') console.error(`\nStopped at "${title}" (npm run ${step}).`);
      break;
    }
  }
  if (name === 'test') {
    const { passed, failed } = tally();
    console.log(`\n${passed} passed, ${code !== 0 && failed === 0 ? 1 : failed} failed`);
  }
  return code;
}

process.exitCode = main(process.argv[2]);
