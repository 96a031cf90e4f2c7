import { problems } from '@ballfirst/contracts/problems';
import type { OpenApiDocument } from '../openapi/document.ts';
import { type Html, html, raw } from './html.ts';
import { schemaWords } from './schema-words.ts';
import { docsStyle } from './style.ts';

type Part = { [key: string]: unknown };
const record = (value: unknown): Part => (typeof value === 'object' && value !== null ? (value as Part) : {});
const list = (value: unknown): unknown[] => (Array.isArray(value) ? value : []);
const text = (value: unknown): string => (typeof value === 'string' ? value : '');
const jsonOf = (part: unknown): unknown => record(record(record(part).content)['application/json']).schema;

const parameterRow = (it: Part): Html =>
  html`<tr><td><code>${text(it.name)}</code></td><td>${text(it.in)}${it.required === true ? ', needed' : ''}</td>
  <td>${raw(schemaWords(it.schema))} ${text(it.description)}</td></tr>`;

const answerRow = ([status, it]: [string, unknown]): Html =>
  html`<tr><td><code>${status}</code></td><td>${text(record(it).description)}</td>
  <td>${jsonOf(it) === undefined ? '' : raw(schemaWords(jsonOf(it)))}</td></tr>`;

const operationSection = (path: string, method: string, it: Part): Html => {
  const parameters = list(it.parameters).map((one) => parameterRow(record(one)));
  const body = jsonOf(it.requestBody);
  return html`<section id="${text(it.operationId)}">
  <h3><code>${method.toUpperCase()} ${path}</code></h3>
  <p>${text(it.summary)} <em>${text(it.description)}</em></p>
  ${parameters.length > 0 ? html`<table><caption>Takes</caption>${parameters}</table>` : ''}
  ${body === undefined ? '' : html`<p>Body: ${raw(schemaWords(body))}</p>`}
  <table><caption>Answers</caption>${Object.entries(record(it.responses)).map(answerRow)}</table>
  </section>`;
};

/** The API for people to read: plain HTML with one style element, no script, nothing from elsewhere. */
export const docsPage = (document: OpenApiDocument, nonce: string): string => {
  const all = Object.entries(document.paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, it]) => ({ path, method, it: record(it) })),
  );
  const tagged = document.tags.map(({ name }) => ({
    name,
    all: all.filter((one) => list(one.it.tags)[0] === name),
  }));
  return String(html`<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
<title>${document.info.title} API</title><style nonce="${nonce}">${raw(docsStyle)}</style></head>
<body><main>
<h1>${document.info.title} API</h1>
${document.info.description.split('\n').map((line) => html`<p>${line}</p>`)}
<p>For programs: <a href="/api/openapi.json">the OpenAPI 3.1 document</a>.</p>
<nav aria-label="Operations">${tagged.map(
    ({ name, all: ops }) =>
      html`<h2>${name}</h2><ul>${ops.map(
        (one) =>
          html`<li><a href="#${text(one.it.operationId)}"><code>${one.method.toUpperCase()} ${one.path}</code></a></li>`,
      )}</ul>`,
  )}</nav>
${tagged.map(({ name, all: ops }) => html`<h2>${name}</h2>${ops.map((one) => operationSection(one.path, one.method, one.it))}`)}
<h2>Problems</h2>
<table>${Object.entries(problems).map(
    ([code, [status, words]]) =>
      html`<tr><td><code>${code}</code></td><td>${String(status)}</td><td>${words}</td></tr>`,
  )}</table>
<h2>Schemas</h2>
${Object.entries(record(document.components.schemas)).map(
  ([name, schema]) =>
    html`<section id="schema-${name}"><h3>${name}</h3>${raw(schemaWords(schema))}</section>`,
)}
</main></body></html>`);
};
