/** A code for job files from the name: `Larch stripe` gives `larch-stripe`, or `larch-stripe-2` when that is taken. */
export function codeFor(name: string, taken: readonly string[]): string {
  const base =
    name
      .toLowerCase()
      .normalize('NFKD')
      .replace(/\p{M}/gu, '')
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-+|-+$/g, '')
      .slice(0, 60) || 'cloth';
  let code = base;
  for (let count = 2; taken.includes(code); count += 1) code = `${base}-${count}`;
  return code;
}
