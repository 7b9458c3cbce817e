import { learnerKey } from './learner.ts';
import {
  marksStanding,
  remarkOn,
  totalOf,
  type Attempt,
  type Refused,
  type Remark,
  type Row,
} from './class-table.ts';
import { itemAnalysis, outcomesReached } from './item-analysis.ts';
import { sha256 } from './sha256.ts';
import type { GradedSet } from './set-file.ts';

/** Everything marked, as one file: the table, the analysis, and what was refused. */
export function resultsJson(
  set: GradedSet,
  rows: readonly Row[],
  refused: readonly Refused[],
  remarks: readonly Remark[],
): string {
  const learners = rows.map(({ learner, counted, attempts, stranger }) => ({
    learner,
    ...(stranger && { stranger }),
    handIns: attempts.length,
    ...(counted && {
      source: counted.source,
      edition: counted.set.edition,
      handedIn: counted.handIn.handedIn,
      marks: totalOf(counted, remarks),
      of: counted.set.marks,
      questions: counted.marked.questions.map((question) => ({
        id: question.id,
        state: question.state,
        marks: marksStanding(counted, question, remarks),
        of: question.of,
        workedOut: question.marks,
        seconds: question.seconds,
        ...reasonOf(counted, question.id, remarks),
        parts: question.parts.map(({ id, answer, marked }) => ({
          id,
          answer,
          marks: marked.marks,
          says: marked.says,
        })),
      })),
    }),
  }));
  const results = {
    format: 'warm-mould-results',
    version: 1,
    set: { id: set.id, edition: set.edition, hash: set.hash, title: set.title, marks: set.marks },
    learners,
    questions: itemAnalysis(set, rows, remarks),
    outcomes: outcomesReached(set, rows, remarks),
    refused,
  };
  return `${JSON.stringify(results, null, 2)}\n`;
}

function reasonOf(attempt: Attempt, question: string, remarks: readonly Remark[]) {
  const { reason, comment } = remarkOn(attempt, question, remarks) ?? {};
  return { ...(reason !== undefined && { reason }), ...(comment !== undefined && { comment }) };
}

/** The same event always has the same identifier, so a store that takes it twice keeps it once. */
function statementId(text: string): string {
  const hex = sha256(text);
  const variant = ((Number.parseInt(hex[16]!, 16) & 3) | 8).toString(16);
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-8${hex.slice(13, 16)}-${variant}${hex.slice(17, 20)}-${hex.slice(20, 32)}`;
}

const interactions = {
  number: 'fill-in',
  steps: 'fill-in',
  choice: 'choice',
  diagnose: 'choice',
  order: 'sequencing',
  design: 'other',
  text: 'long-fill-in',
} as const;

/** Statements of the Experience API (1.0.3): one a question answered, one for the whole. For a person to send on. */
export function xapiStatements(rows: readonly Row[], remarks: readonly Remark[], home: string): string {
  const statements = rows.flatMap(({ learner, key, counted }) => {
    if (!counted) return [];
    const { handIn, set, marked } = counted;
    const actor = { objectType: 'Agent', account: { homePage: home, name: learner } };
    const thing = `urn:warm-mould:set:${set.id}:${set.edition}`;
    const base = { actor, timestamp: handIn.handedIn, version: '1.0.3' };
    const score = (marks: number, of: number) => ({
      raw: marks,
      min: 0,
      max: of,
      scaled: of === 0 ? 0 : round(marks / of),
    });
    const answered = marked.questions.flatMap((question) => {
      if (question.state === 'blank') return [];
      const exercise = set.questions.find(({ id }) => id === question.id)!;
      const marks = marksStanding(counted, question, remarks);
      return [
        {
          ...base,
          id: statementId(`${handIn.sum}/${question.id}`),
          verb: { id: 'http://adlnet.gov/expapi/verbs/answered', display: { en: 'answered' } },
          object: {
            objectType: 'Activity',
            id: `${thing}:${question.id}`,
            definition: {
              type: 'http://adlnet.gov/expapi/activities/cmi.interaction',
              interactionType: interactions[exercise.kind],
              name: { en: exercise.title },
            },
          },
          result: {
            response: question.parts.map(({ answer }) => answer).join('[,]'),
            success: marks === question.of,
            score: score(marks, question.of),
            ...(question.seconds > 0 && { duration: `PT${question.seconds}S` }),
          },
          context: { contextActivities: { parent: [{ objectType: 'Activity', id: thing }] } },
        },
      ];
    });
    const marks = totalOf(counted, remarks);
    return [
      ...answered,
      {
        ...base,
        id: statementId(`${handIn.sum}/${key === '' ? learnerKey(learner) : 'whole'}`),
        verb: { id: 'http://adlnet.gov/expapi/verbs/completed', display: { en: 'completed' } },
        object: {
          objectType: 'Activity',
          id: thing,
          definition: { type: 'http://adlnet.gov/expapi/activities/assessment', name: { en: set.title } },
        },
        result: { completion: true, score: score(marks, set.marks) },
      },
    ];
  });
  return `${JSON.stringify(statements, null, 2)}\n`;
}

const round = (share: number): number => Math.round(share * 1e4) / 1e4;
