/** Text that is HTML already; everything else is escaped where it is put in. */
export class Html {
  readonly #text: string;
  constructor(text: string) {
    this.#text = text;
  }
  toString(): string {
    return this.#text;
  }
}

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

export const escapeHtml = (text: string): string => text.replace(/[&<>"']/g, (it) => entities[it] ?? it);

type Piece = string | Html | readonly Html[];

const written = (piece: Piece): string => {
  if (typeof piece === 'string') return escapeHtml(piece);
  return piece instanceof Html ? String(piece) : piece.map(String).join('');
};

/** HTML from a template: what is put in is escaped unless it is HTML itself. */
export const html = (strings: TemplateStringsArray, ...pieces: readonly Piece[]): Html =>
  new Html(strings.reduce((text, string, at) => text + written(pieces[at - 1] ?? '') + string));

export const raw = (text: string): Html => new Html(text);
