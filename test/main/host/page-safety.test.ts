import { describe, expect, it } from 'vitest';
import { pagePolicy, writeDisposition, writeSafeHeaders } from '#main/host/page-safety.ts';
import { readPaperPath } from '#main/host/paper-path.ts';

describe('headers', () => {
  it('allow no inline script, no plugin and no other origin', () => {
    const rules = new Map(pagePolicy.split('; ').map((rule) => [rule.split(' ')[0], rule]));
    expect(rules.get('default-src')).toBe("default-src 'none'");
    expect(rules.get('script-src')).toBe("script-src 'self'");
    expect(rules.get('connect-src')).toBe("connect-src 'self'");
    expect(rules.get('object-src')).toBe("object-src 'none'");
    expect(pagePolicy).not.toMatch(/https?:|\*|unsafe-eval/);
  });

  it('carry the policy on pages and not on papers', () => {
    expect(writeSafeHeaders('text/html; charset=utf-8')).toHaveProperty('content-security-policy', pagePolicy);
    expect(writeSafeHeaders('application/pdf')).not.toHaveProperty('content-security-policy');
    expect(writeSafeHeaders('application/pdf')).toHaveProperty('x-content-type-options', 'nosniff');
  });

  // The form of RFC 6266 section 5, with the encoding of RFC 8187 section 3.2.3.
  it.each([
    ['Proposal.pdf', `attachment; filename="Proposal.pdf"; filename*=UTF-8''Proposal.pdf`],
    ['Małgorzata é.pdf', `attachment; filename="Ma_gorzata _.pdf"; filename*=UTF-8''Ma%C5%82gorzata%20%C3%A9.pdf`],
    ['a"b\\c\r\n(1).pdf', `attachment; filename="a_b_c__(1).pdf"; filename*=UTF-8''a%22b%5Cc%0D%0A%281%29.pdf`],
  ])('name the file %j', (name, expected) => {
    expect(writeDisposition('attachment', name)).toBe(expected);
  });
});

describe('the path of a paper', () => {
  it('has a kind and an id', () => {
    expect(readPaperPath('/papers/proposal/01HZX-9_a')).toEqual({ kind: 'proposal', id: '01HZX-9_a' });
  });

  it.each([
    '/papers/proposal',
    '/papers/proposal/',
    '/papers/proposal/../x',
    '/papers/a/b/c',
    '/paper/a/b',
    '/papers/A/b',
  ])('is not %s', (pathname) => {
    expect(readPaperPath(pathname)).toBeNull();
  });
});
