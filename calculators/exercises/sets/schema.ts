/** The part of JSON Schema (2020-12) our formats use: the published schema and the check are the same data. */
export interface Schema {
  readonly $schema?: string;
  readonly $id?: string;
  readonly title?: string;
  readonly description?: string;
  readonly type?: 'object' | 'array' | 'string' | 'number' | 'integer' | 'boolean';
  readonly const?: string | number;
  readonly enum?: readonly (string | number)[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly additionalProperties?: boolean | Schema;
  readonly maxProperties?: number;
  readonly items?: Schema;
  readonly prefixItems?: readonly Schema[];
  readonly minItems?: number;
  readonly maxItems?: number;
  readonly pattern?: string;
  readonly minLength?: number;
  readonly maxLength?: number;
  readonly minimum?: number;
  readonly maximum?: number;
}

const patterns = new Map<string, RegExp>();

function matches(pattern: string, text: string): boolean {
  const known = patterns.get(pattern) ?? new RegExp(pattern, 'u');
  patterns.set(pattern, known);
  return known.test(text);
}

/** The first fault of the data against the schema as a sentence; undefined when there is none. */
export function faultOf(data: unknown, schema: Schema, at = 'The file'): string | undefined {
  if (schema.const !== undefined && data !== schema.const)
    return `${at} must be ${JSON.stringify(schema.const)}.`;
  if (schema.enum && !schema.enum.includes(data as string))
    return `${at} must be one of ${schema.enum.join(', ')}.`;
  switch (schema.type) {
    case 'object':
      return objectFault(data, schema, at);
    case 'array':
      return arrayFault(data, schema, at);
    case 'string':
      if (typeof data !== 'string') return `${at} must be text.`;
      // Counted in characters, as the standard counts.
      if (
        schema.maxLength !== undefined &&
        data.length > schema.maxLength &&
        [...data].length > schema.maxLength
      )
        return `${at} is longer than ${schema.maxLength} characters.`;
      if (schema.minLength !== undefined && [...data].length < schema.minLength) return `${at} is too short.`;
      return schema.pattern !== undefined && !matches(schema.pattern, data)
        ? `${at} is not written as it must be.`
        : undefined;
    case 'integer':
    case 'number':
      if (typeof data !== 'number' || !Number.isFinite(data)) return `${at} must be a number.`;
      if (schema.type === 'integer' && !Number.isInteger(data)) return `${at} must be a whole number.`;
      if (data < (schema.minimum ?? -Infinity) || data > (schema.maximum ?? Infinity))
        return `${at} is outside its range.`;
      return undefined;
    case 'boolean':
      return typeof data === 'boolean' ? undefined : `${at} must be true or false.`;
    default:
      return undefined;
  }
}

function objectFault(data: unknown, schema: Schema, at: string): string | undefined {
  if (typeof data !== 'object' || data === null || Array.isArray(data))
    return `${at} must hold names and values.`;
  const record = data as Readonly<Record<string, unknown>>;
  const missing = schema.required?.find((name) => !Object.hasOwn(record, name));
  if (missing !== undefined) return `${at} has no "${missing}".`;
  const names = Object.keys(record);
  if (names.length > (schema.maxProperties ?? Infinity))
    return `${at} holds more than ${schema.maxProperties} entries.`;
  for (const name of names) {
    const own =
      schema.properties && Object.hasOwn(schema.properties, name) ? schema.properties[name] : undefined;
    const rest = schema.additionalProperties;
    if (!own && rest === false) return `${at} has “${shortened(name)}”, which does not belong there.`;
    const against = own ?? (typeof rest === 'object' ? rest : undefined);
    const fault = against && faultOf(record[name], against, `“${shortened(name)}”`);
    if (fault !== undefined) return fault;
  }
  return undefined;
}

function arrayFault(data: unknown, schema: Schema, at: string): string | undefined {
  if (!Array.isArray(data)) return `${at} must be a list.`;
  if (data.length < (schema.minItems ?? 0)) return `${at} has too few entries.`;
  if (data.length > (schema.maxItems ?? Infinity)) return `${at} has more than ${schema.maxItems} entries.`;
  for (const [i, item] of data.entries()) {
    const against = schema.prefixItems?.[i] ?? schema.items;
    const fault = against && faultOf(item, against, `${at}, entry ${i + 1},`);
    if (fault !== undefined) return fault;
  }
  return undefined;
}

const shortened = (name: string): string => (name.length > 40 ? `${name.slice(0, 40)}…` : name);
