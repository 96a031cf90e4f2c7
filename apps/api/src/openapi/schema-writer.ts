import { z } from 'zod';
import { namedSchemas } from './named-schemas.ts';

export type JsonSchema = { [key: string]: unknown };

/** JSON.parse by way of a reviver: `#/$defs/X` becomes `#/components/schemas/X`. */
const pointToComponents = (schema: object): JsonSchema =>
  JSON.parse(JSON.stringify(schema), (key, value) =>
    key === '$ref' && typeof value === 'string' ? value.replace('#/$defs/', '#/components/schemas/') : value,
  );

/**
 * Turns zod into JSON Schema 2020-12 (the dialect of OpenAPI 3.1) and collects the named schemas it meets.
 * The input side is written: replies have no transforms, and a reply may gain fields without breaking its readers.
 */
export const createSchemaWriter = () => {
  const components: Record<string, JsonSchema> = {};
  const write = (schema: z.ZodType): JsonSchema => {
    const {
      $schema: _dialect,
      $defs,
      ...own
    } = z.toJSONSchema(schema, {
      metadata: namedSchemas,
      io: 'input',
      override: ({ jsonSchema }) => {
        if (jsonSchema.minimum === Number.MIN_SAFE_INTEGER) delete jsonSchema.minimum;
        if (jsonSchema.maximum === Number.MAX_SAFE_INTEGER) delete jsonSchema.maximum;
        if (jsonSchema.format !== undefined) delete jsonSchema.pattern;
        delete jsonSchema.id;
      },
    });
    for (const [id, part] of Object.entries($defs ?? {})) components[id] = pointToComponents(part);
    const id = namedSchemas.get(schema)?.id;
    if (id === undefined || '$ref' in own) return pointToComponents(own);
    components[id] = pointToComponents(own);
    return { $ref: `#/components/schemas/${id}` };
  };
  const collected = (): Record<string, JsonSchema> =>
    Object.fromEntries(Object.entries(components).sort(([a], [b]) => (a < b ? -1 : 1)));
  return { write, collected };
};
export type SchemaWriter = ReturnType<typeof createSchemaWriter>;
