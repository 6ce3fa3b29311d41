/**
 * A file's ID as 16 bytes in hexadecimal, from any text: four FNV-1a hashes of 32 bits, each started from another
 * number. It tells files apart; it keeps no secret.
 */
export function hashId(text: string): string {
  return [0x811c9dc5, 0x01000193, 0x9e3779b9, 0x85ebca6b].map((start) => hash(text, start)).join('');
}

function hash(text: string, start: number): string {
  let value = start;
  for (let i = 0; i < text.length; i += 1) {
    value ^= text.charCodeAt(i);
    value = Math.imul(value, 0x01000193);
  }
  return (value >>> 0).toString(16).padStart(8, '0').toUpperCase();
}
