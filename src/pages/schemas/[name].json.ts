import { formatSchemas } from '../../../calculators/exercises/sets/formats.ts';

export const getStaticPaths = () =>
  Object.entries(formatSchemas).map(([name, schema]) => ({
    params: { name: `${name}-1` },
    props: { schema },
  }));

/** The published schema of each file format: the very data the pages check against. */
export const GET = ({ props }: { props: { schema: object } }): Response =>
  new Response(`${JSON.stringify(props.schema, null, 2)}\n`, {
    headers: { 'content-type': 'application/json' },
  });
