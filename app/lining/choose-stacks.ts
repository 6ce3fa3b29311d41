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
import { sayAgainst, stopOf } from './left-out.ts';
import type { Contender } from './left-out.ts';
import { listCandidates } from './list-candidates.ts';
import type { Candidate } from './list-candidates.ts';
import { nameStack } from './name-stack.ts';
import { placeOf } from './place-of-kind.ts';
import { lower } from './say-number.ts';
import { DARK } from './say-readings.ts';
import { isStepUp, sayStep } from './say-step.ts';
import type { Step } from './say-step.ts';
import { sayStrengths, sayWhat } from './say-why.ts';
import { effortsFor } from './tier-effort.ts';
import type { TierEffort } from './tier-effort.ts';
import { costsOf, MUST_BE_DARK, scoreStack, unaskedDarkness, weighNeeds } from './weigh-needs.ts';
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
  /** Nothing speaks against it here that a plainer cloth would not have. */
  readonly isWise: boolean;
  readonly darkensUnasked: boolean;
}

/** May be asked for, but is not thought of by itself (common practice). */
const UNWISE: readonly string[] = ['napped-in-damp', 'interlining-kitchen', 'interlining-damp', 'more-than-it-needs'];

type Tiers = Readonly<Record<Tier, Ranked>>;

/**
 * Chooses three different stacks. A stack with a stop is never one of them. Deterministic: ranked by rounded scores,
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
  const open = fillUp([...unlike, lit, standFor(dim), dim, allowed], wanted.length);
  const efforts = effortsFor(input.face, needs, placeOf(input.treatment.kind));
  const mustBeDark = needs.dark >= MUST_BE_DARK;
  const usual = pickTiers(open, wanted, efforts, mustBeDark, stepOf(input, needs));
  const free = open.filter((each) => !given.has(each.key));
  const chosen = followPurse(input.room.budget ?? null, usual, free, mustBeDark ? DARK : null);
  const explained = (tier: Tier): ChosenStack => explain(tier, chosen, usual[tier], input, needs);
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

function byScore(a: Ranked, b: Ranked): number {
  return b.score - a.score || a.effort - b.effort || compareText(a.key, b.key);
}

/** Two stacks that read alike in everything are one choice. */
function sameJudgement(a: Ranked, b: Ranked): boolean {
  return JSON.stringify([a.judgement.readings, a.stopped]) === JSON.stringify([b.judgement.readings, b.stopped]);
}

function pickAny(open: readonly Ranked[]): Ranked {
  const [first] = open;
  if (first === undefined) throw new Error('no stack without a stop is left to choose from');
  return first;
}

/** What a client would notice between two stacks that read alike in every word. */
const NOTICED = { warmth: 0.02, fade: 0.06, body: 0.5 } as const;

/** Of stacks that a client could not tell apart the one of least effort; `ranked` keeps its order. */
function standFor(ranked: readonly Ranked[]): readonly Ranked[] {
  return ranked.filter((each) => !ranked.some((other) => other.effort < each.effort && readsAlike(each, other)));
}

function readsAlike(a: Ranked, b: Ranked): boolean {
  const [x, y] = [a.judgement, b.judgement];
  const against = ({ advice }: Judgement): string =>
    advice.flatMap(({ level, rule }) => (level === 'caution' || costsOf(rule) > 0 ? [rule] : [])).join();
  const words = (judgement: Judgement): string => READING_NAMES.map((name) => judgement.words[name].words).join();
  return (
    words(x) === words(y) &&
    against(x) === against(y) &&
    (['warmth', 'fade', 'body'] as const).every((name) => Math.abs(x.readings[name] - y.readings[name]) < NOTICED[name])
  );
}

/** Where the first list has fewer than `least`, the first of the next ones are added. */
function fillUp(lists: readonly (readonly Ranked[])[], least: number): readonly Ranked[] {
  const open: Ranked[] = [];
  lists.forEach((list, i) => {
    for (const each of list) if ((i === 0 || open.length < least) && !open.includes(each)) open.push(each);
  });
  return open.sort(byScore);
}

const READING_NAMES = ['light', 'colour', 'warmth', 'fade', 'body'] as const;

type IsStep = (before: Ranked, after: Ranked) => boolean;

function stepOf(input: ChooseInput, needs: Needs): IsStep {
  const [make, place] = [makeOf(input.treatment), placeOf(input.treatment.kind)];
  // A wish that is added later opens no other step.
  const usual = { ...needs, privacy: 0 };
  return (before, after) =>
    after.score >= before.score || isStepUp(before.judgement, after.judgement, usual, make, place);
}

function compareText(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}

/** `open` is ranked, best first. Each tier takes the best of its effort that no tier has and that takes more than the one before. */
function pickTiers(
  open: readonly Ranked[],
  wanted: readonly Tier[],
  efforts: TierEffort,
  mustBeDark: boolean,
  isStep: IsStep,
): Tiers {
  const used = new Set<string>();
  let before = -1;
  let lightBefore = Infinity;
  let last: Ranked | null = null;
  const pick = (tier: Tier, place: number): Ranked => {
    const [from, to] = efforts[tier];
    const free = open.filter((each) => !used.has(each.key));
    // A tier leaves enough above it for those that follow.
    const after = wanted.length - 1 - place;
    const leaves = (each: Ranked): boolean => free.filter((other) => other.effort > each.effort).length >= after;
    const more = free.filter((each) => each.effort > before && leaves(each));
    const steps = more.filter((each) => last === null || isStep(last, each));
    const above = steps.length > 0 ? steps : more;
    const fitting = above.filter((each) => each.effort >= from && each.effort <= to);
    // Where it must be dark, best is never lighter than better.
    const asDark = (most: number): Ranked | undefined => fitting.find((each) => each.judgement.readings.light <= most);
    const darkest = mustBeDark && tier === 'best' ? (asDark(lightBefore) ?? asDark(DARK)) : undefined;
    const least = [...above].sort((a, b) => a.effort - b.effort)[0];
    const found = darkest ?? fitting[0] ?? least ?? free[0] ?? pickAny(open);
    used.add(found.key);
    before = found.effort;
    last = found;
    lightBefore = found.judgement.readings.light;
    return found;
  };
  const picked = new Map(wanted.map((tier, place) => [tier, pick(tier, place)]));
  // A tier that is given stands for itself.
  const taken = (tier: Tier): Ranked => picked.get(tier) ?? pickAny(open);
  const [good, better, best] = [taken('good'), taken('better'), taken('best')];
  if (wanted.length < TIERS.length || isStep(better, best)) return { good, better, best };
  // Nothing rises above better: where something lies between good and it, that is better, and it is best.
  const between = open.find(
    (each) => each.effort > good.effort && each.effort < better.effort && isStep(good, each) && isStep(each, better),
  );
  return between === undefined ? { good, better, best } : { good, better: between, best: better };
}

/** The first by what it does; each that follows by what it adds to the one before. */
function explain(tier: Tier, chosen: Tiers, usual: Ranked, input: ChooseInput, needs: Needs): ChosenStack {
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
  const against = sayAgainst(contender, winners.map(named), {
    use: input.room.use,
    treatment: input.treatment,
    needs: needsOf(input),
  });
  return { behind: left.behind.map((cloth) => cloth.id), why: `${contender.name} was left out: ${against}` };
}
