/**
 * File names that every system takes. Windows forbids most (learn.microsoft.com, "Naming Files, Paths, and Namespaces"):
 * some signs, names of devices, a dot or space at the end. A name part may hold 255 bytes on Linux and 255 UTF-16 units on
 * Windows and macOS; we stay well under, since the whole path has limits too.
 */
const LONGEST_BYTES = 120;
const DEVICE = /^(con|prn|aux|nul|conin\$|conout\$|com[0-9¹²³]|lpt[0-9¹²³])$/i;

/**
 * `text` as a file or folder name, letters of every language kept. `ending` is added with its dot (`.pdf`); `otherwise`
 * stands where nothing usable is left of the text.
 */
export function makeFileName(text: string, otherwise: string, ending = ''): string {
  const plain = text
    .normalize('NFC')
    .replace(/[\p{Cc}\p{Cf}\p{Co}\p{Cn}\p{Cs}]/gu, ' ')
    .replace(/[<>:"/\\|?*]/g, '-')
    .replace(/\s+/g, ' ');
  const cut = trimEnds(shorten(trimEnds(plain), LONGEST_BYTES - Buffer.byteLength(ending)));
  const name = cut === '' ? otherwise : cut;
  // A device's name counts with any ending: "nul.txt" is the device too.
  const stem = name.split('.')[0] ?? '';
  return `${DEVICE.test(stem.trim()) ? `_${name}` : name}${ending}`;
}

/** No dot in front (hidden on Unix), no dot or space at the end (dropped by Windows). */
function trimEnds(text: string): string {
  return text.replace(/^[. ]+/, '').replace(/[. ]+$/, '');
}

/** As many whole letters as fit into `bytes` of UTF-8. */
function shorten(text: string, bytes: number): string {
  let short = '';
  let size = 0;
  for (const letter of text) {
    size += Buffer.byteLength(letter);
    if (size > bytes) return short;
    short += letter;
  }
  return short;
}
