/** Good, better and best for one window, chosen from what the room needs and explained by readings. */
import type { BackCloth, Cloth, FaceCloth } from '#shared/cloth.ts';
import type { Judgement } from '#shared/result.ts';
import { TIERS } from '#shared/words.ts';
import type { Tier } from '#shared/words.ts';
import { adviseTier } from './advise-tier.ts';
import type { AdvisedStack } from './advise-tier.ts';
import { standFor } from './alike-stacks.ts';
import { makeOf } from '../body.ts';
import { followPurse } from './follow-purse.ts';
import { keepHonest } from './keep-honest.ts';
import type { JudgedOpening, JudgedRoom, JudgedTreatment } from '../judge-input.ts';
import { sayAgainst, stopOf } from './left-out.ts';
import type { Contender } from './left-out.ts';
import { listCandidates } from './list-candidates.ts';
import { nameStack } from '../say/name-stack.ts';
import { pickTiers } from './pick-tiers.ts';
import type { IsStep } from './pick-tiers.ts';
import { placeOf } from '../place-of-kind.ts';
import { byScore, compareText } from './ranked-stack.ts';
import type { Ranked, RankedTiers } from './ranked-stack.ts';
import { lower } from '../say/say-number.ts';
import { DARK } from '../say/say-readings.ts';
import { isStepUp, sayStep } from '../say/say-step.ts';
import type { Step } from '../say/say-step.ts';
import { sayStrengths, sayWhat } from '../say/say-why.ts';
import { effortsFor } from './tier-effort.ts';
import { MUST_BE_DARK, onlyDims, scoreStack, unaskedDarkness, weighNeeds } from './weigh-needs.ts';
import type { Needs } from './weigh-needs.ts';

export interface ChooseInput {
  readonly face: FaceCloth;
  readonly room: JudgedRoom;
  readonly opening: JudgedOpening;
  readonly treatment: JudgedTreatment;
  /** The job's own cloth: a white lining or interlining of hers stands in for the generic of its family. */
  readonly ownCloth: readonly Cloth[];
  /** Judges one stack at this window. */
  readonly judge: (behind: readonly BackCloth[]) => Judgement;
  /** Tiers that are given already, by cloth id: they are not chosen again for another. */
  readonly given?: Readonly<Partial<Record<Tier, readonly string[]>>>;
}

export interface ChosenStack {
  /** Cloth ids behind the face, room to street. */
  readonly behind: readonly string[];
  readonly why: string;
  /** The option that it repeats, where no step above that one is worth offering. */
  readonly sameAs?: Tier;
}

export interface ChosenStacks {
  readonly stacks: Readonly<Record<Tier, ChosenStack>>;
  readonly advised: { readonly tier: Tier; readonly why: string };
  /** The nearest stack that was left out, and why; null when none came near. */
  readonly notChosen: ChosenStack | null;
}

/** May be asked for, but is not thought of by itself (common practice). */
const UNWISE: readonly string[] = [
  'napped-in-damp',
  'interlining-kitchen',
  'interlining-damp',
  'more-than-it-needs',
  'lining-behind-sheer',
];

/**
 * Chooses three stacks, or fewer where fewer are honest. A stack with a stop is never one of them. Deterministic: ranked by rounded scores,
 * then by less effort, then by id. A wish about the purse moves what each tier may take. Of stacks that judge alike the one of less effort stands for all.
 */
export function chooseStacks(input: ChooseInput): ChosenStacks {
  const needs = needsOf(input);
  const ranked = rankCandidates(input, needs);
  const given = new Set(Object.values(input.given ?? {}).map((ids) => ids.join('+')));
  const allowed = ranked.filter((each) => each.stopped === null && !given.has(each.key));
  const wise = allowed.filter((each) => each.isWise);
  // What takes daylight that nobody gave away comes last: what rises above the others, and the lightest of it first.
  const lit = wise.filter((each) => !each.darkensUnasked);
  const most = Math.max(0, ...lit.map((each) => each.effort));
  const dim = [...wise].sort(
    (a, b) =>
      Number(b.effort > most) - Number(a.effort > most) || b.judgement.readings.light - a.judgement.readings.light,
  );
  const wanted = TIERS.filter((tier) => input.given?.[tier] === undefined);
  // Of a cornice the padding is chosen, thin or thick, and no light tells two of them apart.
  const unlike = placeOf(input.treatment.kind) === 'board' ? [] : [standFor(lit)];
  const found = fillUp([...unlike, lit, standFor(dim), dim, allowed], wanted.length);
  // A sheer has one honest stack: where that is given already, there is nothing else to take.
  const open = found.length > 0 ? found : ranked.filter((each) => each.stopped === null);
  const efforts = effortsFor(input.face, needs, placeOf(input.treatment.kind));
  const mustBeDark = needs.dark >= MUST_BE_DARK;
  const usual = pickTiers(open, wanted, efforts, mustBeDark, stepOf(input, needs));
  const free = open.filter((each) => !given.has(each.key));
  const moved = followPurse(input.room.budget ?? null, usual, free, mustBeDark ? DARK : null);
  const { tiers: chosen, same } = keepHonest(
    moved,
    wanted,
    (stack, before) => idleOf(stack, before, input, needs) !== null,
  );
  const explained = (tier: Tier): ChosenStack => {
    const repeats = same[tier];
    if (repeats === undefined) return explain(tier, chosen, usual[tier], input, needs);
    const { as, instead } = repeats;
    const why = idleOf(instead, chosen[as], input, needs) ?? '';
    return { behind: chosen[as].behind.map((cloth) => cloth.id), why: `Nothing more is offered. ${why}`, sameAs: as };
  };
  const stacks = { good: explained('good'), better: explained('better'), best: explained('best') };
  return { stacks, advised: advise(chosen, input), notChosen: nearest(ranked, chosen, input) };
}

/** What this window asks of its stack. */
export function needsOf(input: Pick<ChooseInput, 'room' | 'opening' | 'face' | 'treatment'>): Needs {
  return weighNeeds(input.room, input.opening, input.face, placeOf(input.treatment.kind));
}

function rankCandidates(input: ChooseInput, needs: Needs): readonly Ranked[] {
  const make = makeOf(input.treatment);
  const place = placeOf(input.treatment.kind);
  const judged = listCandidates(input.face, input.treatment, input.ownCloth).map((candidate) => {
    const judgement = input.judge(candidate.behind);
    return {
      ...candidate,
      key: candidate.behind.map((cloth) => cloth.id).join('+'),
      judgement,
      score: scoreStack(judgement, needs, make, candidate.behind, place),
      stopped: stopOf(judgement)?.says ?? null,
      isWise: !judgement.advice.some(({ rule }) => UNWISE.includes(rule)),
      darkensUnasked: unaskedDarkness(needs, candidate.behind, make, place) > 0,
    };
  });
  const byEffort = [...judged].sort((a, b) => a.effort - b.effort || compareText(a.key, b.key));
  const unlike = byEffort.filter((each, i) => byEffort.findIndex((other) => sameJudgement(each, other)) === i);
  return [...unlike].sort(byScore);
}

/** Two stacks that read alike in everything are one choice. */
function sameJudgement(a: Ranked, b: Ranked): boolean {
  return JSON.stringify([a.judgement.readings, a.stopped]) === JSON.stringify([b.judgement.readings, b.stopped]);
}

/** Where the first list has fewer than `least`, the first of the next ones are added. */
function fillUp(lists: readonly (readonly Ranked[])[], least: number): readonly Ranked[] {
  const open: Ranked[] = [];
  lists.forEach((list, i) => {
    for (const each of list) if ((i === 0 || open.length < least) && !open.includes(each)) open.push(each);
  });
  return open.sort(byScore);
}

function stepOf(input: ChooseInput, needs: Needs): IsStep {
  const [make, place] = [makeOf(input.treatment), placeOf(input.treatment.kind)];
  // A wish that is added later opens no other step.
  const usual = { ...needs, privacy: 0 };
  return (before, after) =>
    after.score >= before.score || isStepUp(before.judgement, after.judgement, usual, make, place);
}

/** The first by what it does; each that follows by what it adds to the one before. */
function explain(tier: Tier, chosen: RankedTiers, usual: Ranked, input: ChooseInput, needs: Needs): ChosenStack {
  const stack = chosen[tier];
  const before = TIERS[TIERS.indexOf(tier) - 1];
  const [make, place] = [makeOf(input.treatment), placeOf(input.treatment.kind)];
  const what = sayWhat(input.room.use, input.treatment.kind);
  const told = (each: Ranked): Step => ({ name: nameStack(input.face, each.behind), judgement: each.judgement });
  const why =
    before === undefined
      ? `The least that serves ${what}: ${sayStrengths(stack.judgement, needs, make, place)}.`
      : sayStep(told(chosen[before]), told(stack), needs, make, place);
  return { behind: stack.behind.map((cloth) => cloth.id), why: `${why}${sayPurse(stack, usual, input)}` };
}

/** Why a stack is no step worth offering after another; null where it is one. */
function idleOf(stack: Ranked, before: Ranked, { face, room, treatment }: ChooseInput, needs: Needs): string | null {
  const [make, place] = [makeOf(treatment), placeOf(treatment.kind)];
  const name = nameStack(face, stack.behind);
  const unwise = stack.judgement.advice.find(({ rule }) => UNWISE.includes(rule));
  if (unwise?.rule === 'more-than-it-needs') return `${name} is ${lower(unwise.says)}`;
  if (unwise !== undefined) return unwise.says;
  // A dim-out against the sun is a step that many take; a blackout has to be asked for.
  if (stack.darkensUnasked && !onlyDims(stack.behind))
    return `${name} darkens ${sayWhat(room.use, treatment.kind)}, and nobody asked for darkness.`;
  if (isStepUp(before.judgement, stack.judgement, needs, make, place)) return null;
  return `${name} takes more cloth or work and adds little that is asked here.`;
}

/** What the wish about the purse changed; nothing where it changed nothing. */
function sayPurse(stack: Ranked, usual: Ranked, { face }: ChooseInput): string {
  const name = lower(nameStack(face, usual.behind));
  if (stack.effort < usual.effort) return ` Kept modest, as was wished: ${name} takes more cloth and work.`;
  return stack.effort > usual.effort ? ` A step up from ${name}, as was wished.` : '';
}

function advise(chosen: RankedTiers, input: ChooseInput): ChosenStacks['advised'] {
  const asked = (tier: Tier): AdvisedStack => ({
    behind: chosen[tier].behind,
    title: nameStack(input.face, chosen[tier].behind),
    judgement: chosen[tier].judgement,
  });
  return adviseTier({
    face: input.face,
    room: input.room,
    opening: input.opening,
    treatment: input.treatment,
    tiers: { good: asked('good'), better: asked('better'), best: asked('best') },
  });
}

/** The best of those left out, and what spoke against it. */
function nearest(ranked: readonly Ranked[], chosen: RankedTiers, input: ChooseInput): ChosenStack | null {
  const winners = TIERS.map((tier) => chosen[tier]);
  const taken = [
    ...winners.map((winner) => winner.key),
    ...Object.values(input.given ?? {}).map((ids) => ids.join('+')),
  ];
  const left = ranked.find((each) => !taken.includes(each.key));
  if (left === undefined) return null;
  const named = (each: Ranked): Contender => ({ ...each, name: nameStack(input.face, each.behind) });
  const contender = named(left);
  const against = sayAgainst(contender, winners.map(named), {
    use: input.room.use,
    treatment: input.treatment,
    needs: needsOf(input),
  });
  return { behind: left.behind.map((cloth) => cloth.id), why: `${contender.name} was left out: ${against}` };
}
