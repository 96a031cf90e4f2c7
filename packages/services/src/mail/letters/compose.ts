import { escapeHtml } from './escape-html.ts';

/** A letter without its addresses. */
export type Composed = { readonly subject: string; readonly text: string; readonly html: string };

export type Parts = {
  readonly subject: string;
  /** Who reads it, as they are called. */
  readonly name: string;
  readonly paragraphs: readonly string[];
  /** The sentences of safety: always there where practice or a swing is asked for. */
  readonly cautions?: readonly string[];
  /** The page to go to, its address written out. */
  readonly page: { readonly does: string; readonly url: string };
  readonly academyName: string;
  /** A small line at the end with an address of its own. */
  readonly footer?: { readonly does: string; readonly url: string };
};

/** One line: nothing that a person typed may end a header or start a paragraph. */
const oneLine = (text: string): string => text.replace(/[\p{Cc}\u2028\u2029]+/gu, ' ').trim();

/** Puts a letter together as plain text and as simple HTML: no pictures, nothing that tells us it was read. */
export const compose = (parts: Parts): Composed => {
  const greeting = `Hello ${oneLine(parts.name)},`;
  const paragraphs = parts.paragraphs.map(oneLine);
  const cautions = parts.cautions ?? [];
  const { footer } = parts;
  const { does, url } = parts.page;
  const signed = oneLine(parts.academyName);
  const text = [
    greeting,
    ...paragraphs,
    `${does}:\n${url}`,
    ...(cautions.length === 0 ? [] : [cautions.map((caution) => `- ${caution}`).join('\n')]),
    signed,
    ...(footer === undefined ? [] : [`${footer.does}: ${footer.url}`]),
  ].join('\n\n');
  const p = (words: string): string => `<p>${escapeHtml(words)}</p>`;
  const items = cautions.map((caution) => `<li>${escapeHtml(caution)}</li>`).join('');
  const html = [
    '<!doctype html><html lang="en"><head><meta charset="utf-8"></head><body>',
    p(greeting),
    ...paragraphs.map(p),
    `<p>${escapeHtml(does)}:<br><a href="${escapeHtml(url)}">${escapeHtml(url)}</a></p>`,
    ...(cautions.length === 0 ? [] : [`<ul>${items}</ul>`]),
    p(signed),
    ...(footer === undefined
      ? []
      : [`<p><small><a href="${escapeHtml(footer.url)}">${escapeHtml(footer.does)}</a></small></p>`]),
    '</body></html>',
  ].join('\n');
  return { subject: oneLine(parts.subject), text: `${text}\n`, html: `${html}\n` };
};
