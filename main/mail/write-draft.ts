/**
 * A mail that nobody has sent yet, as a file that mail programs open for writing (X-Unsent), with one PDF attached. It
 * has no sender and no hidden recipients: the program that opens it fills in its own.
 */
import MailComposer from 'nodemailer/lib/mail-composer';
import addressparser from 'nodemailer/lib/addressparser';

export interface DraftContent {
  /** Names this draft for good; the same content and id give the same bytes. */
  readonly id: string;
  /** As typed: one address, several with commas, or nothing yet. */
  readonly to: string;
  readonly subject: string;
  readonly text: string;
  readonly date: Date;
  readonly attachment: { readonly name: string; readonly bytes: Uint8Array };
}

/** The bytes of an `.eml` file (RFC 5322, RFC 2045). */
export async function writeDraft(draft: DraftContent): Promise<Uint8Array> {
  const composer = new MailComposer({
    headers: { 'X-Unsent': '1' },
    to: draft.to,
    subject: draft.subject,
    text: draft.text,
    date: draft.date,
    messageId: `<${draft.id}@draft.invalid>`,
    baseBoundary: draft.id,
    attachments: [
      { filename: draft.attachment.name, content: Buffer.from(draft.attachment.bytes), contentType: 'application/pdf' },
    ],
    disableFileAccess: true,
    disableUrlAccess: true,
  });
  const built = composer.compile();
  built.keepBcc = false;
  return new Promise((resolve, reject) => {
    built.build((error, message) => {
      if (error) reject(error);
      else resolve(message);
    });
  });
}

/** The first thing in `to` that is no mail address, or null. Nothing at all is no fault: a draft may wait for it. */
export function findAddressFault(to: string): string | null {
  if (to.trim() === '') return null;
  if (/[\r\n]/.test(to)) return 'a line break';
  const found = addressparser(to, { flatten: true }).find(({ address }) => !/^[^\s@,;<>]+@[^\s@,;<>]+$/.test(address));
  return found === undefined ? null : found.address || found.name || to;
}
