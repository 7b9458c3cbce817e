import { describe, expect, it } from 'vitest';
import { command, type Files } from '../../src/cli/command.ts';

function filesWith(
  contents: Record<string, string> = {},
): Files & { readonly written: Record<string, string> } {
  const written: Record<string, string> = {};
  return {
    written,
    read: (path) =>
      path in contents ? Promise.resolve(contents[path]!) : Promise.reject(new Error('no such file')),
    write: (path, text) => {
      written[path] = text;
      return Promise.resolve();
    },
  };
}

const run = (args: readonly string[], contents?: Record<string, string>) =>
  command(args, filesWith(contents));

describe('the command line', () => {
  it('takes a list of rows as one word', async () => {
    const rows =
      '[{"name": "Frame", "thickness": "4.5 mm", "width": "4.5 mm", "length": "45 mm", "speed": "0.3 m/s"}]';
    const answer = await run(['solve', 'filling/temperature-chain', `runs=${rows}`]);
    expect(answer.out).toMatch(/after the last section: [\d ]+ °C/);
  });

  it('says why there is no answer, and counts it as none', async () => {
    const answer = await run(['solve', 'freezing/transient', 'half-thickness=0 mm']);
    expect(answer).toMatchObject({ code: 1 });
    expect(answer.out).toContain('Half the thickness');
  });

  it('prints how it is called, and counts a bare call as a wrong one', async () => {
    expect(await run(['--help'])).toMatchObject({ code: 0 });
    expect((await run([])).code).toBe(2);
    expect((await run(['help'])).out).toContain('solve ID');
  });

  it('lists formulas and models, or those that mention a word', async () => {
    const { out = '' } = await run(['list']);
    expect(out).toMatch(/^filling\/velocity +Speed/m);
    expect(out).toMatch(/^pour-plan +Pour plan/m);
    expect((await run(['list', 'no such thing'])).code).toBe(1);
  });

  it('shows a formula with its equation, and a model with what it takes', async () => {
    expect((await run(['show', 'filling/velocity'])).out).toContain(
      'v = C * sqrt(2 * (g * h + (dp - p_cap) / rho))',
    );
    expect((await run(['show', 'pour-plan'])).out).toContain('mould.temperature');
  });

  it.each([
    [['show', 'filling/velocty'], 'did you mean "filling/velocity"'],
    [['shwo', 'filling/velocity'], 'did you mean "show"'],
    [['solve', 'filling/velocity', 'hh=40 mm'], 'has no symbol "hh"'],
    [['solve', 'filling/velocity', 'h=40 kg'], 'h: kilogram measures a mass'],
    [['solve', 'filling/velocity', 'h'], 'is not NAME=QUANTITY'],
    [['solve', 'filling/velocity', '--for', 'q'], 'cannot solve filling/velocity for "q"'],
    [['solve', 'filling/velocity', '--input', 'gone.json'], 'cannot read gone.json'],
    [['solve', 'filling/velocity', '--jsn'], 'did you mean "json"'],
    [['solve', 'constructor'], 'no formula or model "constructor"'],
    [['solve', 'filling/temperature-chain', 'runs=frame'], 'runs is a list: write it as rows'],
    [['plan'], 'which plan?'],
    [['plan', 'gone.json'], 'cannot read gone.json'],
  ])('answers %j with exit code 2 and the remedy', async (args, message) => {
    const answer = await run(args);
    expect(answer.code).toBe(2);
    expect(answer.error).toContain(message);
  });

  it('solves from words and from a file alike', async () => {
    // √(2 × 9.80665 × 0.2) = 1.98057 by hand.
    const words = await run([
      'solve',
      'filling/velocity',
      'C=1',
      'h=200 mm',
      'dp=0 Pa',
      'p_cap=0 Pa',
      '--for',
      'v',
    ]);
    expect(words.out).toContain('v = 1.981 m/s');
    expect(words.out).toContain('taken as usual: rho');
    const file = await run(['solve', 'filling/velocity', '--input', 'a.json', '--json'], {
      'a.json': '{"C": 1, "h": "20 cm", "dp": "0 kPa", "p_cap": "0 kPa"}',
    });
    expect((JSON.parse(file.out ?? '') as { value: number }).value).toBeCloseTo(1.98057, 5);
  });

  it('carries the doubt of an input to the answer', async () => {
    const { out = '' } = await run(['solve', 'vacuum/head', 'dp=15 kPa ± 1 kPa']);
    expect(out).toMatch(/\(\S+ to \S+\)/);
    expect(out).toContain('spread mostly from dp (100 %)');
  });

  it('answers with exit code 1 when these numbers have no answer', async () => {
    const answer = await run(['solve', 'filling/velocity', 'h=1 mm', 'dp=0 Pa', 'p_cap=3 kPa', '--for', 'v']);
    expect(answer.code).toBe(1);
    expect(answer.error).toContain('does not enter');
  });

  it('works a plan from a file, says what it could not read, and writes it where asked', async () => {
    const plan = {
      format: 'warm-mould-plan',
      version: 1,
      name: 'Shield',
      inputs: { head: '60 mm', colour: 'red' },
    };
    const files = filesWith({ 'p.json': JSON.stringify(plan) });
    const { out = '' } = await command(['plan', 'p.json'], files);
    expect(out).toMatch(/^Shield\n/);
    expect(out).toContain('colour');
    expect(out).toContain('Seconds in hand');
    expect(await command(['plan', 'p.json', '--json', '--out', 'q.json'], files)).toMatchObject({ code: 0 });
    expect((JSON.parse(files.written['q.json'] ?? '') as { name: string }).name).toBe('Shield');
    expect(await run(['plan', 'p.json'], { 'p.json': 'not json' })).toMatchObject({ code: 2 });
  });
});
