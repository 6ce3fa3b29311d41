/** Good, better and best for one window, chosen from what the room needs and explained by readings. */
import type { BackCloth, Cloth, FaceCloth } from '#shared/cloth.ts';
import type { Judgement } from '#shared/result.ts';
import { TIERS } from '#shared/words.ts';
import type { Tier } from '#shared/words.ts';
import { adviseTier } from './advise-tier.ts';
import type { AdvisedStack } from './advise-tier.ts';
import { makeOf } from './body.ts';
import { followPurse } from './follow-purse.ts';
import type { JudgedOpening, JudgedRoom, JudgedTreatment } from './judge-input.ts';
import { rivalOf, sayAgainst, stopOf } from './left-out.ts';
import type { Contender } from './left-out.ts';
import { listCandidates } from './list-candidates.ts';
import type { Candidate } from './list-candidates.ts';
import { nameStack } from './name-stack.ts';
import { placeOf } from './place-of-kind.ts';
import { lower } from './say-number.ts';
import { DARK } from './say-readings.ts';
import { sayStrengths, sayWhat } from './say-why.ts';
import { effortsFor } from './tier-effort.ts';
import type { TierEffort } from './tier-effort.ts';
import { MUST_BE_DARK, scoreStack, weighNeeds } from './weigh-needs.ts';
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
}

export interface ChosenStacks {
  readonly stacks: Readonly<Record<Tier, ChosenStack>>;
  readonly advised: { readonly tier: Tier; readonly why: string };
  /** The nearest stack that was left out, and why; null when none came near. */
  readonly notChosen: ChosenStack | null;
}

interface Ranked extends Candidate {
  readonly key: string;
  readonly judgement: Judgement;
  readonly score: number;
  readonly stopped: string | null;
}

type Tiers = Readonly<Record<Tier, Ranked>>;

/**
 * Chooses three different stacks. A stack with a stop is never one of them. Deterministic: ranked by rounded scores,
 * then by less effort, then by id. A wish about the purse moves what each tier may take. Of stacks that judge alike the one of less effort stands for all.
 */
export function chooseStacks(input: ChooseInput): ChosenStacks {
  const needs = needsOf(input);
  const ranked = rankCandidates(input, needs);
  const given = new Set(Object.values(input.given ?? {}).map((ids) => ids.join('+')));
  const open = ranked.filter((each) => each.stopped === null);
  const efforts = effortsFor(input.face, needs, placeOf(input.treatment.kind));
  const mustBeDark = needs.dark >= MUST_BE_DARK;
  const usual = pickTiers(open, given, efforts, mustBeDark);
  const free = open.filter((each) => !given.has(each.key));
  const chosen = followPurse(input.room.budget ?? null, usual, free, mustBeDark ? DARK : null);
  const explained = (tier: Tier): ChosenStack => explain(tier, chosen[tier], usual[tier], input, needs);
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
    };
  });
  const byEffort = [...judged].sort((a, b) => a.effort - b.effort || compareText(a.key, b.key));
  const unlike = byEffort.filter((each, i) => byEffort.findIndex((other) => sameJudgement(each, other)) === i);
  return [...unlike].sort((a, b) => b.score - a.score || a.effort - b.effort || compareText(a.key, b.key));
}

/** Two stacks that read alike in everything are one choice. */
function sameJudgement(a: Ranked, b: Ranked): boolean {
  return JSON.stringify([a.judgement.readings, a.stopped]) === JSON.stringify([b.judgement.readings, b.stopped]);
}

function compareText(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}

/** `open` is ranked, best first. Each tier takes the best of its effort that no tier has and that takes more than the one before. */
function pickTiers(
  open: readonly Ranked[],
  given: ReadonlySet<string>,
  efforts: TierEffort,
  mustBeDark: boolean,
): Tiers {
  const used = new Set(given);
  let before = -1;
  let lightBefore = Infinity;
  const pick = (tier: Tier, place: number): Ranked => {
    const [from, to] = efforts[tier];
    const free = open.filter((each) => !used.has(each.key));
    // A tier leaves enough above it for those that follow.
    const after = TIERS.length - 1 - place;
    const leaves = (each: Ranked): boolean => free.filter((other) => other.effort > each.effort).length >= after;
    const above = free.filter((each) => each.effort > before && leaves(each));
    const fitting = above.filter((each) => each.effort >= from && each.effort <= to);
    // Where it must be dark, best is never lighter than better.
    const asDark = (most: number): Ranked | undefined => fitting.find((each) => each.judgement.readings.light <= most);
    const darkest = mustBeDark && tier === 'best' ? (asDark(lightBefore) ?? asDark(DARK)) : undefined;
    const least = [...above].sort((a, b) => a.effort - b.effort)[0];
    const found = darkest ?? fitting[0] ?? least ?? free[0] ?? open[0];
    if (found === undefined) throw new Error('no stack without a stop is left to choose from');
    used.add(found.key);
    before = found.effort;
    lightBefore = found.judgement.readings.light;
    return found;
  };
  const [good, better, best] = TIERS.map(pick);
  if (good === undefined || better === undefined || best === undefined) throw new Error('three tiers are chosen');
  return { good, better, best };
}

const OPENING_WORDS: Readonly<Record<Tier, string>> = {
  good: 'The least that serves',
  better: 'More for the money in',
  best: 'The most for',
};

function explain(tier: Tier, stack: Ranked, usual: Ranked, input: ChooseInput, needs: Needs): ChosenStack {
  const strengths = sayStrengths(stack.judgement, needs, makeOf(input.treatment), placeOf(input.treatment.kind));
  return {
    behind: stack.behind.map((cloth) => cloth.id),
    why: `${OPENING_WORDS[tier]} ${sayWhat(input.room.use, input.treatment.kind)}: ${strengths}.${sayPurse(stack, usual, input)}`,
  };
}

/** What the wish about the purse changed; nothing where it changed nothing. */
function sayPurse(stack: Ranked, usual: Ranked, { face }: ChooseInput): string {
  const name = lower(nameStack(face, usual.behind));
  if (stack.effort < usual.effort) return ` Kept modest, as was wished: ${name} takes more cloth and work.`;
  return stack.effort > usual.effort ? ` A step up from ${name}, as was wished.` : '';
}

function advise(chosen: Tiers, input: ChooseInput): ChosenStacks['advised'] {
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
function nearest(ranked: readonly Ranked[], chosen: Tiers, input: ChooseInput): ChosenStack | null {
  const winners = TIERS.map((tier) => chosen[tier]);
  const taken = [
    ...winners.map((winner) => winner.key),
    ...Object.values(input.given ?? {}).map((ids) => ids.join('+')),
  ];
  const left = ranked.find((each) => !taken.includes(each.key));
  if (left === undefined) return null;
  const named = (each: Ranked): Contender => ({ ...each, name: nameStack(input.face, each.behind) });
  const contender = named(left);
  const against = sayAgainst(contender, rivalOf(contender, winners.map(named)), {
    use: input.room.use,
    treatment: input.treatment,
    needs: needsOf(input),
  });
  return { behind: left.behind.map((cloth) => cloth.id), why: `${contender.name} was left out: ${against}` };
}
