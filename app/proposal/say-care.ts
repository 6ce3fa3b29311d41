/** How a finished stack is cleaned, in a few words: by its most delicate layer. The maker's label decides. */
import type { PaperReading } from './proposal-paper.ts';
import type { Stack } from './show-stack.ts';

/** Fibres that water spoils as a rule (common practice). */
const DRY_FIBRES = ['silk', 'wool', 'viscose', 'rayon', 'acetate', 'mohair', 'cashmere'];

export function sayCare({ face, behind }: Stack): PaperReading {
  const label = 'care';
  // Interlining is for dry cleaning (common practice), and so are silk and velvet.
  const interlined = behind.some((layer) => layer.role === 'interlining');
  const delicate = face.family === 'silk' || face.family === 'velvet' || holdsDryFibre(face.content);
  if (interlined || delicate) return { label, words: 'dry clean', figure: '' };
  const known = [face, ...behind].every((cloth) => cloth.content !== null);
  return { label, words: known ? 'washes, as its label says' : 'as its label says', figure: '' };
}

function holdsDryFibre(content: Stack['face']['content']): boolean {
  return Object.keys(content ?? {}).some((fibre) => DRY_FIBRES.includes(fibre.toLowerCase()));
}
