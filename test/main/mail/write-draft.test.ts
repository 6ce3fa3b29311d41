import { simpleParser } from 'mailparser';
import { describe, expect, test } from 'vitest';
import { findAddressFault, writeDraft } from '#main/mail/write-draft.ts';
import type { DraftContent } from '#main/mail/write-draft.ts';

const PDF = Buffer.concat([
  Buffer.from('%PDF-1.7\n'),
  Buffer.from(Array.from({ length: 5000 }, (_, index) => index % 256)),
]);
const DRAFT: DraftContent = {
  id: 'draft-1',
  to: 'ada@example.com',
  subject: 'Your proposal 2026-014',
  text: 'Dear Ada,\n\nhere it is.\n',
  date: new Date('2026-11-25T10:42:00Z'),
  attachment: { name: 'Ada Fenn 2026-014.pdf', bytes: PDF },
};

async function parse(draft: DraftContent) {
  const bytes = await writeDraft(draft);
  return { raw: Buffer.from(bytes).toString('latin1'), mail: await simpleParser(Buffer.from(bytes)) };
}

const addresses = (value: unknown) =>
  (value as { value: { address: string; name: string }[] }).value.map(({ address, name }) => ({ address, name }));

describe('a draft read back by another parser (mailparser)', () => {
  test('is unsent, has its date, text and PDF, and neither sender nor hidden recipients', async () => {
    const { raw, mail } = await parse(DRAFT);
    expect(mail.headers.get('x-unsent')).toBe('1');
    expect(mail.date?.toISOString()).toBe('2026-11-25T10:42:00.000Z');
    expect(mail.subject).toBe('Your proposal 2026-014');
    expect(mail.text).toBe('Dear Ada,\n\nhere it is.\n');
    expect(addresses(mail.to)).toEqual([{ address: 'ada@example.com', name: '' }]);
    expect(mail.attachments.map(({ filename, contentType }) => [filename, contentType])).toEqual([
      ['Ada Fenn 2026-014.pdf', 'application/pdf'],
    ]);
    expect(mail.attachments[0]?.content.equals(PDF)).toBe(true);
    expect(mail.bcc).toBeUndefined();
    expect(mail.from).toBeUndefined();
    expect(raw).not.toMatch(/^bcc:/im);
  });

  test('keeps letters of every language, and long names whole', async () => {
    const long = `Zoë Świątek-Łąka ${'very '.repeat(16)}long name`;
    const draft = {
      ...DRAFT,
      to: `"Zoë Świątek, née Müller" <zoe@example.com>, Jörg <joerg@example.com>`,
      subject: `Vorschlag für Wohnzimmer, ½ und 84″, ${'größere Räume, '.repeat(8)}`.trim(),
      text: 'Grüße, Zoë.\n.\nA line that is just a dot, and one that is very long: ' + 'ab '.repeat(400) + '\n',
      attachment: { name: `${long} 2026-014.pdf`, bytes: PDF },
    };
    const { raw, mail } = await parse(draft);
    expect(mail.subject).toBe(draft.subject);
    expect(mail.text).toBe(draft.text);
    expect(addresses(mail.to)).toEqual([
      { address: 'zoe@example.com', name: 'Zoë Świątek, née Müller' },
      { address: 'joerg@example.com', name: 'Jörg' },
    ]);
    expect(mail.attachments[0]?.filename).toBe(draft.attachment.name);
    // RFC 5322, 2.1.1: no line above 998 signs; and nothing but ASCII, which every mail program reads.
    expect(Math.max(...raw.split('\r\n').map((line) => line.length))).toBeLessThanOrEqual(998);
    expect([...raw].every((sign) => sign.charCodeAt(0) < 128)).toBe(true);
  });

  test('waits for an address when none is given', async () => {
    const { mail } = await parse({ ...DRAFT, to: '' });
    expect(mail.to).toBeUndefined();
  });

  test('a line break in the subject adds no header', async () => {
    const { raw, mail } = await parse({ ...DRAFT, subject: 'Hello\r\nBcc: other@example.com' });
    expect(mail.bcc).toBeUndefined();
    expect(raw).not.toMatch(/^bcc:/im);
  });

  test('the same draft gives the same bytes', async () => {
    expect(Buffer.from(await writeDraft(DRAFT)).equals(Buffer.from(await writeDraft(DRAFT)))).toBe(true);
  });
});

test.each([
  ['', null],
  ['ada@example.com', null],
  ['Ada Fenn <ada@example.com>, b@example.com', null],
  ['ada', 'ada'],
  ['ada@', 'ada@'],
  ['ada@example.com, nobody', 'nobody'],
  ['ada@example.com\r\nBcc: x@example.com', 'a line break'],
])('address "%s"', (to, fault) => {
  expect(findAddressFault(to)).toBe(fault);
});
