const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text as it may stand in an element or a quoted attribute of HTML. */
export const escapeHtml = (text: string): string =>
  text.replace(/[&<>"']/g, (sign) => entities[sign] ?? sign);
