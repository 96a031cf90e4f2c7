import type { Letter } from '@ballfirst/services/ports';
import type { SendMailOptions } from 'nodemailer';

/** A letter in the words of nodemailer. Nothing is read from files or addresses: the text is all there is. */
export const mailMessage = (letter: Letter): SendMailOptions => ({
  from: letter.from,
  to: letter.to,
  subject: letter.subject,
  text: letter.text,
  html: letter.html,
  messageId: letter.messageId,
  date: letter.date,
  // RFC 8058: one click in the mail program, no page in between.
  ...(letter.stopUrl === undefined
    ? {}
    : {
        headers: {
          'List-Unsubscribe': `<${letter.stopUrl}>`,
          'List-Unsubscribe-Post': 'List-Unsubscribe=One-Click',
        },
      }),
  disableFileAccess: true,
  disableUrlAccess: true,
});
