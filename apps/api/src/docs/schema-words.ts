import { escapeHtml } from './html.ts';

type Schema = { [key: string]: unknown };
const record = (value: unknown): Schema =>
  typeof value === 'object' && value !== null ? (value as Schema) : {};
const schemas = (value: unknown): unknown[] => (Array.isArray(value) ? value : []);

const reference = (ref: string): string => {
  const name = escapeHtml(ref.split('/').at(-1) ?? '');
  return `<a href="#schema-${name}">${name}</a>`;
};

const limits = (it: Schema): string => {
  const words = [
    ['minimum', 'from'],
    ['maximum', 'to'],
    ['minLength', 'at least'],
    ['maxLength', 'at most'],
    ['minItems', 'at least'],
    ['maxItems', 'at most'],
  ].flatMap(([key = '', word]) => (typeof it[key] === 'number' ? [`${word} ${it[key]}`] : []));
  return words.length > 0 ? ` <small>${words.join(' ')}</small>` : '';
};

/** A JSON schema in HTML words: nested lists for objects, names linked to their own section. */
export const schemaWords = (schema: unknown): string => {
  const it = record(schema);
  if (typeof it.$ref === 'string') return reference(it.$ref);
  const choices = schemas(it.anyOf ?? it.oneOf);
  if (choices.length > 0) return choices.map(schemaWords).join(' or ');
  if (it.const !== undefined) return `<code>${escapeHtml(JSON.stringify(it.const))}</code>`;
  const values = schemas(it.enum);
  if (values.length > 0) return values.map((one) => `<code>${escapeHtml(String(one))}</code>`).join(' ');
  if (it.type === 'array') return `list of ${schemaWords(it.items)}${limits(it)}`;
  if (it.type === 'object') {
    const needed = new Set(schemas(it.required));
    const rows = Object.entries(record(it.properties)).map(
      ([name, part]) =>
        `<li><code>${escapeHtml(name)}</code>${needed.has(name) ? '' : '?'}: ${schemaWords(part)}</li>`,
    );
    return `<ul>${rows.join('')}</ul>`;
  }
  const kind = typeof it.format === 'string' ? it.format : [it.type ?? 'anything'].flat().join(' or ');
  return `${escapeHtml(kind)}${limits(it)}`;
};
