/** One pour as it is kept: the plan it was poured by, what was done, what was found. Numbers in SI, absent when not noted. */
export interface Pour {
  readonly id: string;
  /** `2026-03-14`. */
  readonly day: string;
  readonly plan: { readonly name: string; readonly inputs: Readonly<Record<string, unknown>> };
  /** What the plan said, by its own names: `charge`, `part.mass`, `sections.1.margin`. */
  readonly predicted: Readonly<Record<string, number>>;
  readonly did: Done;
  readonly found: Found;
  /** One mark for each time it was changed, the first when it was made: two copies are told apart by these. */
  readonly marks: readonly string[];
  /** Made up to show how a log looks. */
  readonly invented?: true;
}

export interface Done {
  /** K. */
  readonly metal?: number;
  readonly mould?: number;
  /** Pa below the room. */
  readonly gauge?: number;
  /** s. */
  readonly pouring?: number;
  /** kg weighed out. */
  readonly charge?: number;
}

export interface Found {
  readonly sections: readonly FoundSection[];
  /** kg: the casting, and all other metal that came back. */
  readonly casting?: number;
  readonly rest?: number;
  /** Radius of the sharpest edge that came, m. */
  readonly edge?: number;
  /** kg, the casting hung in water. */
  readonly inWater?: number;
  /** Names from the list of defects. */
  readonly defects: readonly string[];
  readonly note: string;
  /** Pictures as `data:` addresses, made small before they are kept. */
  readonly photos: readonly string[];
}

export interface FoundSection {
  readonly name: string;
  readonly filled: 'full' | 'part' | 'none' | 'not looked at';
  /** Modulus of the section, m, and the time it took to freeze, s, when it was timed. */
  readonly modulus?: number;
  readonly froze?: number;
  /** How far the plan thought it was from not filling: time before it stops flowing over time to fill. */
  readonly margin?: number;
}

export const logFormat = 'warm-mould-pours';
export const logVersion = 1;
/** A log beyond these is none of ours. */
const mostPours = 5000;
const longestText = 4000;
const mostPhotos = 6;
const longestPhoto = 700_000;

export interface ReadLog {
  readonly pours: readonly Pour[];
  readonly problems: readonly string[];
}

export function writeLog(pours: readonly Pour[]): string {
  return `${JSON.stringify({ format: logFormat, version: logVersion, pours }, null, 1)}\n`;
}

/** Pours from the text of a file. Never throws: what cannot be read is left out and said. */
export function readLog(text: string): ReadLog {
  let data: unknown;
  try {
    data = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return { pours: [], problems: ['This is no pour log: the file is not JSON, or it was cut short.'] };
  }
  // A copy of all that these pages keep holds the log too.
  if (
    !isRecord(data) ||
    (data['format'] !== logFormat && data['kind'] !== 'warm-mould-backup') ||
    !Array.isArray(data['pours'])
  )
    return { pours: [], problems: ['This is no pour log of these pages.'] };
  const problems: string[] = [];
  const version = data['version'];
  if (data['format'] === logFormat && typeof version === 'number' && version > logVersion)
    problems.push(
      `The file is version ${version} and this reads ${logVersion}: what is new in it is left out.`,
    );
  const list: unknown[] = data['pours'];
  if (list.length > mostPours) problems.push(`Only the first ${mostPours} pours are read.`);
  const pours = list.slice(0, mostPours).flatMap((one, at): Pour[] => {
    const pour = readPour(one);
    if (!pour) problems.push(`Pour ${at + 1} of the file could not be read and is left out.`);
    return pour ? [pour] : [];
  });
  return { pours, problems };
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const text = (value: unknown, most = longestText): string =>
  typeof value === 'string' ? value.slice(0, most) : '';
const texts = (value: unknown, most: number): string[] =>
  Array.isArray(value) ? value.filter((one): one is string => typeof one === 'string').slice(0, most) : [];

function numbers<const Name extends string>(
  value: unknown,
  names: readonly Name[],
): Partial<Record<Name, number>> {
  const found: Partial<Record<Name, number>> = {};
  if (isRecord(value))
    for (const name of names) {
      const one = value[name];
      if (typeof one === 'number' && Number.isFinite(one)) found[name] = one;
    }
  return found;
}

function plainNumbers(value: unknown): Record<string, number> {
  const entries = isRecord(value) ? Object.entries(value).slice(0, 400) : [];
  return Object.fromEntries(
    entries.filter(
      (entry): entry is [string, number] => typeof entry[1] === 'number' && Number.isFinite(entry[1]),
    ),
  );
}

/** A pour from anything; undefined when it has no name of its own or no day. */
export function readPour(value: unknown): Pour | undefined {
  if (!isRecord(value)) return undefined;
  const { id, day, plan, predicted, did, found, marks } = value;
  if (typeof id !== 'string' || !/^[\w-]{1,60}$/.test(id)) return undefined;
  if (typeof day !== 'string' || !/^\d{4}-\d\d-\d\d$/.test(day)) return undefined;
  const its = isRecord(found) ? found : {};
  const sections = Array.isArray(its['sections']) ? its['sections'].filter(isRecord).slice(0, 40) : [];
  return {
    id,
    day,
    plan: {
      name: text(isRecord(plan) ? plan['name'] : '', 80),
      inputs: isRecord(plan) && isRecord(plan['inputs']) ? plan['inputs'] : {},
    },
    predicted: plainNumbers(predicted),
    did: numbers(did, ['metal', 'mould', 'gauge', 'pouring', 'charge']),
    found: {
      ...numbers(its, ['casting', 'rest', 'edge', 'inWater']),
      sections: sections.map((one) => ({
        name: text(one['name'], 80),
        filled:
          one['filled'] === 'full' || one['filled'] === 'part' || one['filled'] === 'none'
            ? one['filled']
            : 'not looked at',
        ...numbers(one, ['modulus', 'froze', 'margin']),
      })),
      defects: texts(its['defects'], 40).map((one) => one.slice(0, 60)),
      note: text(its['note']),
      photos: texts(its['photos'], mostPhotos).filter(
        (one) =>
          one.length <= longestPhoto && /^data:image\/(?:jpeg|png|webp);base64,[A-Za-z0-9+/=]*$/.test(one),
      ),
    },
    marks: texts(marks, 1000).map((one) => one.slice(0, 40)),
    ...(value['invented'] === true ? { invented: true as const } : {}),
  };
}
