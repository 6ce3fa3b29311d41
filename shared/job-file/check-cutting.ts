/** What the schema of `cutting` cannot see: names that nobody knows or that meet twice, lengths that make no sense. */
import { isUnlistedBolt } from '../cutting.ts';
import { at } from '../fault.ts';
import { LONGEST, LONGEST_RUN } from '../length.ts';
import type { Ticks } from '../length.ts';
import { CLOTH_ROLES } from '../words.ts';
import type { CheckTools } from './check-tools.ts';
import { wireCutting } from './wire-cutting.ts';
import type { WireCutting } from './wire-cutting.ts';
import { nearestWord } from './tell-faults.ts';

/** `treatments`: every path that there is, `Nursery/East window/Panels`. What does not fit the schema is told there. */
export function checkCutting(tools: CheckTools, given: unknown, treatments: readonly string[]): void {
  const parsed = wireCutting.safeParse(given ?? {});
  if (!parsed.success) return;
  const supplies = checkSupplies(tools, parsed.data);
  checkFlaws(tools, parsed.data, supplies);
  checkPlaced(tools, parsed.data, supplies, treatments);
}

/** Names of the bolts and remnants listed, by cloth. */
interface Supplies {
  readonly bolts: ReadonlyMap<string, readonly string[]>;
  readonly remnants: ReadonlyMap<string, readonly string[]>;
}

function checkSupplies(tools: CheckTools, cutting: WireCutting): Supplies {
  const names = new Map<string, string>();
  const check = (kind: 'bolts' | 'remnants'): Map<string, string[]> => {
    const byCloth = new Map<string, string[]>();
    (cutting[kind] ?? []).forEach((each, index) => {
      const path = at(at('cutting', kind), index);
      tools.checkId(each.cloth, at(path, 'cloth'), CLOTH_ROLES);
      const key = JSON.stringify([each.cloth, each.name]);
      const before = names.get(key);
      if (before !== undefined)
        tools.fault(at(path, 'name'), `"${each.name}" is also the name of ${before}`, 'give each its own name');
      names.set(key, path);
      const most = kind === 'bolts' ? LONGEST_RUN : LONGEST;
      checkAbove(tools, each.length, at(path, 'length'), 'give a length above 0', most);
      tools.length(each.startsAt, at(path, 'startsAt'));
      byCloth.set(each.cloth, [...(byCloth.get(each.cloth) ?? []), each.name]);
    });
    return byCloth;
  };
  const found = { bolts: check('bolts'), remnants: check('remnants') };
  (cutting.remnants ?? []).forEach((each, index) =>
    checkAbove(
      tools,
      each.width,
      at(at('cutting.remnants', index), 'width'),
      'give a width above 0, or leave it out',
      LONGEST,
    ),
  );
  return found;
}

function checkAbove(
  tools: CheckTools,
  value: number | string | undefined,
  path: string,
  right: string,
  most: Ticks,
): void {
  if (tools.length(value, path, most) === 0) tools.fault(path, 'is zero', right);
}

function checkOn(tools: CheckTools, cloth: string, on: string, path: string, { bolts, remnants }: Supplies): void {
  const known = [...(bolts.get(cloth) ?? []), ...(remnants.get(cloth) ?? [])];
  if (known.includes(on) || (!bolts.has(cloth) && isUnlistedBolt(on))) return;
  const names = bolts.has(cloth) ? known : ['bolt 1', ...known];
  tools.fault(path, `"${on}" is no bolt or remnant of "${cloth}"`, `give one of ${names.join(', ')}`);
}

function checkFlaws(tools: CheckTools, cutting: WireCutting, supplies: Supplies): void {
  (cutting.flaws ?? []).forEach((flaw, index) => {
    const path = at('cutting.flaws', index);
    tools.checkId(flaw.cloth, at(path, 'cloth'), CLOTH_ROLES);
    checkOn(tools, flaw.cloth, flaw.on, at(path, 'on'), supplies);
    const [from, to] = [
      tools.length(flaw.from, at(path, 'from'), LONGEST_RUN),
      tools.length(flaw.to, at(path, 'to'), LONGEST_RUN),
    ];
    if (from !== null && to !== null && to <= from)
      tools.fault(at(path, 'to'), 'is where it begins or before', `give more than ${tools.say(from)}`);
  });
}

function checkPlaced(tools: CheckTools, cutting: WireCutting, supplies: Supplies, treatments: readonly string[]): void {
  const seen = new Set<string>();
  (cutting.fixed ?? []).forEach((fixed, index) => {
    const path = at('cutting.fixed', index);
    tools.checkId(fixed.cloth, at(path, 'cloth'), CLOTH_ROLES);
    checkOn(tools, fixed.cloth, fixed.on, at(path, 'on'), supplies);
    tools.length(fixed.at, at(path, 'at'), LONGEST_RUN);
    tools.length(fixed.x, at(path, 'x'));
    if (!treatments.includes(fixed.treatment)) {
      const near = nearestWord(fixed.treatment, treatments);
      const right = near === null ? 'give room, opening and treatment with / between' : `did you mean ${near}?`;
      tools.fault(at(path, 'treatment'), `"${fixed.treatment}" is no treatment of this job`, right);
    }
    const key = JSON.stringify([fixed.cloth, fixed.treatment, fixed.cut]);
    if (seen.has(key)) tools.fault(at(path, 'cut'), 'is fixed twice', 'fix it in one place');
    seen.add(key);
  });
}
