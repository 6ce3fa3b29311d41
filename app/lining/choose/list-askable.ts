/** Every stack that somebody might ask after: unlined, each lining alone, the usual ways to interline, and her own cloth. */
import type { BackCloth, Cloth } from '#shared/cloth.ts';
import type { LiningFamily } from '#shared/words.ts';
import { interliningOf, liningOf } from './list-candidates.ts';
import { STARTER_CLOTH } from '../cloth/starter-cloth.ts';

const ASKED_ALONE: readonly LiningFamily[] = [
  'standard',
  'combination',
  'dim-out',
  'blackout-soft',
  'blackout-3-pass',
  'blackout-napped',
  'black-sateen',
];

/** Room to street; each once. */
export function listAskable(ownCloth: readonly Cloth[]): readonly (readonly BackCloth[])[] {
  const lining = (family: LiningFamily): BackCloth => liningOf(family, ownCloth);
  const medium = interliningOf('medium', ownCloth);
  const standard = lining('standard');
  const own = ownCloth.filter((cloth): cloth is BackCloth => cloth.role === 'lining');
  const all: readonly (readonly BackCloth[])[] = [
    [],
    ...ASKED_ALONE.map((family) => [lining(family)]),
    [STARTER_CLOTH['std-ivory']],
    ...own.map((cloth) => [cloth]),
    [interliningOf('light', ownCloth), standard],
    [medium, standard],
    [interliningOf('heavy', ownCloth), standard],
    [medium, lining('blackout-soft')],
    [medium, lining('black-sateen'), standard],
  ];
  const keyOf = (stack: readonly BackCloth[]): string => stack.map((cloth) => cloth.id).join('+');
  return all.filter((stack, i) => all.findIndex((other) => keyOf(other) === keyOf(stack)) === i);
}
