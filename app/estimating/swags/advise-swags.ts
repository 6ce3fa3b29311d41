/** What a swag's proportion, grain and lining call for: advice that changes no figure. */
import type { BackCloth, FaceCloth } from '#shared/cloth.ts';
import type { Advice } from '#shared/result.ts';
import type { SwagsTreatment } from '#shared/treatments/swags.ts';
import type { Say } from '../say.ts';
import { adviseCascade, adviseDepth, adviseOver } from '../top-treatment/advise-top.ts';
import type { CutSwags } from './lay-swags.ts';
import { pieceOnBias } from './piece-on-bias.ts';

export function adviseSwags(
  swags: SwagsTreatment,
  cut: CutSwags,
  face: FaceCloth,
  behind: readonly BackCloth[],
  say: Say,
): Advice[] {
  const { swags: making } = swags.practice;
  const tooLarge = cut.row.width > making.biasWidest || swags.finishedLength > making.biasDeepest;
  const lined = behind.some((layer) => layer.role === 'lining');
  const onBias = cut.onBias ? [face, ...behind] : behind;
  const pieced = onBias
    .filter((cloth) => pieceOnBias(cut.flat, cloth).corner > 0)
    .map((cloth) => `${cloth.name} (${say.length(cloth.usableWidth)} ${say.unit} wide)`);
  const rules: readonly (Advice & { readonly when: boolean })[] = [
    {
      when: swags.onBias === true && tooLarge,
      rule: 'swag-too-large-for-bias',
      level: 'caution',
      says: `A swag ${say.length(cut.row.width)} wide and ${say.length(swags.finishedLength)} deep is large for the bias: up to ${say.length(making.biasWidest)} by ${say.length(making.biasDeepest)} is usual.`,
      rests: 'practice: widest and deepest swag on the bias',
    },
    {
      when: swags.onBias === false && !tooLarge,
      rule: 'swag-straight',
      level: 'caution',
      says: 'A swag on the straight grain folds stiffly: cut it on the bias.',
      rests: 'common practice: swags are cut on the bias',
    },
    {
      when: cut.onBias && face.repeat !== null,
      rule: 'bias-turns-pattern',
      level: 'note',
      says: 'On the bias the pattern stands at 45 degrees: show the client a sample held so.',
      rests: 'common practice',
    },
    {
      when: pieced.length > 0,
      rule: 'swag-pieced',
      level: 'note',
      says: `On the bias a swag spans ${say.length(pieceOnBias(cut.flat, face).span)} ${say.unit}, more than ${pieced.join(' and ')}: its lower corners are pieced, the seams in the folds at its ends.`,
      rests: 'the flat swag across 45 degrees against the usable width',
    },
    {
      when: cut.tails.length > 0 && !lined && swags.contrast === null,
      rule: 'tails-show-back',
      level: 'caution',
      says: 'Cascades and jabots show their lining: unlined they show the back of the face.',
      rests: 'common practice: tails are lined, best in a contrast',
    },
  ];
  return [
    ...adviseDepth('swag', swags.finishedLength, swags.dropOf, making, say),
    ...(swags.cascades ? adviseCascade(swags.cascades.longest, swags.dropOf, say) : []),
    ...adviseOver(swags.returns, swags.over, making.overClearance, say),
    ...rules.filter(({ when }) => when).map(({ rule, level, says, rests }) => ({ rule, level, says, rests })),
  ];
}
