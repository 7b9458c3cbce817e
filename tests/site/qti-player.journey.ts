import { createRequire } from 'node:module';
import { expect, test, type Page } from '@playwright/test';
import type { Exercise } from '../../calculators/exercises/definition.ts';
import {
  expressed,
  items,
  numberTries,
  stepsTries,
  tag,
  variantOf,
  type Try,
} from '../exercises/sets/qti-course.ts';
import { onDesk } from './site.ts';

/**
 * The items of every exercise of the course in somebody else's QTI 3 player: it draws the numbers, is answered in
 * its own fields, and has to come to the marks that marking gives.
 */
const require = createRequire(import.meta.url);
const player = require.resolve('qti3-item-player/dist/qti3Player.umd.min.js');
const vue = createRequire(player).resolve('vue/dist/vue.min.js');

interface Variable {
  readonly identifier: string;
  readonly value: unknown;
}
interface State {
  readonly responseVariables: readonly Variable[];
  readonly outcomeVariables: readonly Variable[];
  readonly templateVariables: readonly Variable[];
}

/** What the page of the player holds between calls. */
interface Stage {
  load: (xml: string, state?: object) => Promise<State>;
  score: () => Promise<number>;
}

async function openPlayer(page: Page): Promise<void> {
  await page.setContent('<div id="stage"></div>');
  await page.addScriptTag({ path: vue });
  await page.addScriptTag({ path: player });
  await page.evaluate(() => {
    interface Player {
      loadItemFromXml: (xml: string, configuration: object) => void;
      endAttempt: (target: string) => void;
    }
    const own = window as unknown as {
      Vue: new (options: object) => unknown;
      qti3Player: object & { default?: object };
      stage: Stage;
    };
    console.log = () => undefined;
    let ready: (done?: unknown) => void;
    let ended: (state: State) => void;
    let played: Player;
    let turn = 0;
    new own.Vue({
      el: '#stage',
      components: { player: own.qti3Player.default ?? own.qti3Player },
      template:
        '<player suppress-alert-messages suppress-invalid-response-messages @notifyQti3PlayerReady="open" @notifyQti3ItemReady="loaded" @notifyQti3EndAttemptCompleted="scored"/>',
      methods: {
        open: (one: Player) => (played = one),
        loaded: () => ready(),
        scored: ({ state }: { state: State }) => ended(state),
      },
    });
    const soon = <T>(begin: (done: (value: T) => void) => void): Promise<T> =>
      new Promise((done, fail) => {
        begin(done);
        setTimeout(() => fail(new Error('the player does not answer')), 20_000);
      });
    const end = (): Promise<State> =>
      soon((done) => {
        ended = done;
        played.endAttempt('');
      });
    own.stage = {
      load: async (xml, state) => {
        await soon<unknown>((done) => {
          ready = done;
          const sessionControl = { max_attempts: 0, show_feedback: false, validate_responses: false };
          // The same text again would not be drawn again.
          played.loadItemFromXml(xml + ' '.repeat((turn += 1)), {
            guid: String(performance.now()),
            status: 'interacting',
            sessionControl,
            ...(state && { state }),
          });
        });
        return end();
      },
      score: async () => {
        const { outcomeVariables } = await end();
        return Number(outcomeVariables.find(({ identifier }) => identifier === 'SCORE')?.value);
      },
    };
  });
}

const load = (page: Page, id: string, state?: object): Promise<State> =>
  page.evaluate(([xml, before]) => (window as unknown as { stage: Stage }).stage.load(xml, before), [
    items.get(id)!,
    state,
  ] as const);

/** Types into the fields of the item one after another, empties the rest, and ends the attempt: once for each try. */
const typeAll = (page: Page, fields: readonly string[], tries: readonly Try[]): Promise<number[]> =>
  page.evaluate(
    async ([names, all]) => {
      const scores: number[] = [];
      for (const { responses } of all) {
        const inputs = [...document.querySelectorAll<HTMLInputElement>('#qti-item-container input')];
        if (inputs.length !== names.length) throw new Error(`${inputs.length} fields for ${names.join()}`);
        for (const [at, input] of inputs.entries()) {
          input.value = responses[names[at]!] ?? '';
          for (const type of ['input', 'change', 'blur'])
            input.dispatchEvent(new Event(type, { bubbles: true }));
        }
        scores.push(await (window as unknown as { stage: Stage }).stage.score());
      }
      return scores;
    },
    [fields, tries] as const,
  );

/** The numbers the player drew, as the variant they are. */
function drawn(exercise: Exercise, { templateVariables }: State) {
  const of = (identifier: string): unknown =>
    templateVariables.find((one) => one.identifier === identifier)?.value;
  return variantOf(exercise, (name) => Number(of(`INDEX_${tag(name)}`)) - 1);
}

test.describe.configure({ mode: 'default', timeout: 600_000 });

test(
  'somebody else’s player scores every number of the course as marking does',
  { tag: onDesk },
  async ({ page }) => {
    await openPlayer(page);
    let tried = 0;
    for (const exercise of expressed) {
      if (exercise.kind !== 'number' && exercise.kind !== 'steps') continue;
      const variant = drawn(exercise, await load(page, exercise.id));
      const tries: Try[] = [
        { responses: {}, marks: 0 },
        ...(exercise.kind === 'number' ? numberTries(exercise, variant) : stepsTries(exercise, variant)),
      ];
      const fields =
        exercise.kind === 'number' ? ['RESPONSE'] : exercise.parts.map(({ id }) => `RESPONSE_${tag(id)}`);
      const scores = await typeAll(page, fields, tries);
      for (const [at, { responses, marks }] of tries.entries())
        expect
          .soft(
            scores[at],
            `${exercise.id} with ${JSON.stringify(responses)} for ${JSON.stringify(variant.given)}`,
          )
          .toBe(marks);
      tried += tries.length;
    }
    expect(tried).toBeGreaterThan(1000);
    test.info().annotations.push({ type: 'measured', description: `${tried} answers` });
  },
);

test('somebody else’s player scores choices and orders all or nothing', { tag: onDesk }, async ({ page }) => {
  await openPlayer(page);
  const score = () => page.evaluate(() => (window as unknown as { stage: Stage }).stage.score());
  for (const exercise of expressed) {
    if (exercise.kind === 'choice' || exercise.kind === 'diagnose') {
      const right = exercise.options.flatMap((option, at) => (option.right ? [at] : []));
      const wrong = exercise.options.findIndex((option) => !option.right);
      for (const [chosen, marks] of [
        [right, exercise.marks],
        [[wrong], 0],
        [[], 0],
        ...(right.length > 1
          ? ([
              [right.slice(1), 0],
              [[...right, wrong], 0],
            ] as const)
          : []),
      ] as const) {
        await load(page, exercise.id);
        // One event for each option pressed, as a person would; the player shuffles them.
        await page.evaluate(
          (ids) => {
            for (const id of ids)
              document.querySelector<HTMLElement>(`#qti-item-container [data-identifier="${id}"]`)!.click();
          },
          chosen.map((at) => `option-${at + 1}`),
        );
        expect.soft(await score(), `${exercise.id} with ${chosen.join()}`).toBe(marks);
      }
    }
    if (exercise.kind === 'order') {
      const ids = exercise.items.map((_, at) => `item-${at + 1}`);
      const swapped = [ids[1]!, ids[0]!, ...ids.slice(2)];
      for (const [value, marks] of [
        [ids, exercise.marks],
        [swapped, 0],
      ] as const) {
        // Dragging is the player's own affair: the order comes in as the state of an attempt begun earlier.
        const fresh = await load(page, exercise.id);
        await load(page, exercise.id, {
          ...fresh,
          contextVariables: [],
          responseVariables: fresh.responseVariables.map((one) =>
            one.identifier === 'RESPONSE' ? { ...one, value, state: { order: ids } } : one,
          ),
        });
        expect.soft(await score(), `${exercise.id} in ${value.join()}`).toBe(marks);
      }
    }
  }
});
