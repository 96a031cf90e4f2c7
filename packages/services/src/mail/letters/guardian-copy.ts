import type { Composed } from './compose.ts';
import { escapeHtml } from './escape-html.ts';

/** The same letter for the guardian of a junior: nobody writes to a minor unseen. */
export const guardianCopy = (
  letter: Composed,
  of: { readonly guardianName: string; readonly studentName: string },
): Composed => {
  const note = `Hello ${of.guardianName}, this is a copy of what we wrote to ${of.studentName}, because you are the guardian.`;
  return {
    subject: `Copy for the guardian: ${letter.subject}`,
    text: `${note}\n\n${letter.text}`,
    html: letter.html.replace('<body>', () => `<body>\n<p>${escapeHtml(note)}</p>\n<hr>`),
  };
};
