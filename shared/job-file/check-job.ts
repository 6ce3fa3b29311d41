/**
 * What a schema cannot see: names that meet twice, ids that nobody listed, numbers that contradict each other. Walks
 * whatever can be walked, so that one broken treatment does not hide the fault in the next.
 */
import * as z from 'zod';
import { at } from '../fault.ts';
import type { Fault, Warning } from '../fault.ts';
import { formatLength } from '../format-length.ts';
import { LONGEST } from '../length.ts';
import type { LengthUnit, Ticks } from '../length.ts';
import { parseLength } from '../parse-length.ts';
import { CLOTH_ROLES, GENERIC_CLOTH_IDS } from '../words.ts';
import type { ClothRole } from '../words.ts';
import { nearestWord } from './tell-faults.ts';
import { clothBase, wireOpening, wirePanels, wireProposalHead, wireRoom, UNITS } from './wire-job.ts';
import type { WireCloth } from './wire-job.ts';

interface Found {
  readonly faults: Fault[];
  readonly warnings: Warning[];
}

/** The shape of a job as far as it can be walked without believing any of it. */
const LOOSE = z.record(z.string(), z.unknown());
type Loose = z.infer<typeof LOOSE>;

/** The fields of `shape` that parse by themselves; what does not is left out, and has been told by the schema. */
function readable<T extends z.ZodRawShape>(shape: T, item: Loose): { [K in keyof T]?: z.infer<T[K]> } {
  const found: Record<string, unknown> = {};
  for (const [key, schema] of Object.entries(shape)) {
    const parsed = z.safeParse(schema, item[key]);
    if (parsed.success) found[key] = parsed.data;
  }
  return found as { [K in keyof T]?: z.infer<T[K]> };
}

/** Faults and warnings of a job file beyond its schema. `given` may be anything. */
export function checkJob(given: unknown): Found {
  const found: Found = { faults: [], warnings: [] };
  const job = LOOSE.safeParse(given);
  if (!job.success) return found;
  const unit = UNITS.find((each) => each === job.data['units']) ?? 'in';
  const check = new JobCheck(unit, found);
  check.readAll(job.data['cloth'], job.data['rooms'], job.data['proposal']);
  return found;
}

const CLOTH_SHAPE = clothBase;
const ROOM_SHAPE = { ceiling: wireRoom.shape.ceiling };
const { width, height, sill, at: left } = wireOpening.shape;
const OPENING_SHAPE = { width, height, sill, at: left };
const PANELS_SHAPE = wirePanels.shape;
type PanelsParts = ReturnType<typeof readable<typeof PANELS_SHAPE>>;

function listOf(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}

class JobCheck {
  readonly #unit: LengthUnit;
  readonly #found: Found;
  /** Role of every id that may be named. */
  readonly #roles = new Map<string, ClothRole | 'unknown'>(
    GENERIC_CLOTH_IDS.map((id) => [id, id.startsWith('inter') ? 'interlining' : 'lining']),
  );

  constructor(unit: LengthUnit, found: Found) {
    this.#unit = unit;
    this.#found = found;
  }

  readAll(cloth: unknown, rooms: unknown, proposal: unknown): void {
    this.#readCloth(listOf(cloth));
    this.#tellTwice(listOf(rooms), 'rooms', 'name');
    listOf(rooms).forEach((room, index) => this.#readRoom(room, at('rooms', index)));
    const head = wireProposalHead.safeParse(proposal);
    if (
      head.success &&
      head.data.date !== undefined &&
      head.data.validUntil !== undefined &&
      head.data.validUntil < head.data.date
    )
      this.#fault(
        'proposal.validUntil',
        `${head.data.validUntil} lies before the proposal's date`,
        `give ${head.data.date} or later`,
      );
  }

  #fault(path: string, wrong: string, right: string): void {
    this.#found.faults.push({ path, wrong, right });
  }

  #warn(path: string, says: string): void {
    this.#found.warnings.push({ path, says });
  }

  #length(value: number | string | null | undefined, path: string): Ticks | null {
    if (value === undefined || value === null) return null;
    const parsed = parseLength(String(value), this.#unit);
    if (parsed.ok) return parsed.ticks;
    const numeric = typeof value === 'number';
    this.#fault(
      path,
      numeric ? `${value} ${this.#unit} cannot be a length here` : parsed.wrong,
      numeric ? `give less than ${formatLength(LONGEST, this.#unit)}` : parsed.right,
    );
    return null;
  }

  #say(length: number): string {
    return `${formatLength(length, this.#unit)} ${this.#unit}`;
  }

  #tellTwice(list: readonly unknown[], path: string, key: 'name' | 'id'): void {
    const seen = new Map<string, number>();
    list.forEach((item, index) => {
      const value: unknown =
        typeof item === 'object' && item !== null ? (item as Record<string, unknown>)[key] : undefined;
      if (typeof value !== 'string') return;
      const before = seen.get(value);
      if (before === undefined) seen.set(value, index);
      else
        this.#fault(
          at(at(path, index), key),
          `"${value}" is also the ${key} of ${at(path, before)}`,
          `give each its own ${key}`,
        );
    });
  }

  #readCloth(list: readonly unknown[]): void {
    this.#tellTwice(list, 'cloth', 'id');
    list.forEach((item, index) => {
      const cloth = LOOSE.safeParse(item);
      if (!cloth.success) return;
      const { id, role } = cloth.data;
      if (typeof id === 'string') this.#roles.set(id, CLOTH_ROLES.find((each) => each === role) ?? 'unknown');
      this.#checkCloth(readable(CLOTH_SHAPE, cloth.data), at('cloth', index));
    });
  }

  #checkCloth(cloth: Partial<Omit<WireCloth, 'role' | 'family'>>, path: string): void {
    const width = this.#length(cloth.width, at(path, 'width'));
    const usable = this.#length(cloth.usableWidth, at(path, 'usableWidth'));
    if (width === 0) this.#fault(at(path, 'width'), 'is zero', 'give the width of the cloth, for example 54');
    if (usable === 0) this.#fault(at(path, 'usableWidth'), 'is zero', 'give the width between seams, or leave it out');
    if (width !== null && usable !== null && usable > width)
      this.#fault(at(path, 'usableWidth'), 'is more than the width', `give ${this.#say(width)} or less`);
    const vertical = this.#length(cloth.repeat?.vertical, at(path, 'repeat.vertical'));
    this.#length(cloth.repeat?.horizontal, at(path, 'repeat.horizontal'));
    const match = cloth.repeat?.match;
    if ((match === 'straight' || match === 'half-drop') && (vertical === null || vertical === 0))
      this.#fault(
        at(path, 'repeat.vertical'),
        `is ${vertical === 0 ? 'zero' : 'missing'}, yet the pattern matches`,
        'give the vertical repeat, or "match": "none"',
      );
    const tooMuch = (optics: { transmittance: number; reflectance: number }, where: string): void => {
      if (optics.transmittance + optics.reflectance > 1 + 1e-9)
        this.#fault(where, 'transmittance and reflectance make more than 1', 'give shares that sum to 1 at the most');
    };
    if (cloth.transmittance !== undefined && cloth.reflectance !== undefined)
      tooMuch({ transmittance: cloth.transmittance, reflectance: cloth.reflectance }, at(path, 'transmittance'));
    if ((cloth.transmittance === undefined) !== (cloth.reflectance === undefined))
      this.#warn(
        at(path, cloth.transmittance === undefined ? 'reflectance' : 'transmittance'),
        'Transmittance and reflectance belong together: one alone is not used, and typical values are.',
      );
    if (cloth.uv) tooMuch(cloth.uv, at(path, 'uv'));
    if (cloth.solar) tooMuch(cloth.solar, at(path, 'solar'));
    if (cloth.content) {
      const shares = Object.values(cloth.content);
      const sum = shares.reduce((total, share) => total + share, 0);
      if (shares.some((share) => !(share >= 0)))
        this.#fault(at(path, 'content'), 'has a share below 0', 'give per cent from 0 to 100');
      else if (Math.abs(sum - 100) > 0.01)
        this.#fault(at(path, 'content'), `sums to ${sum}`, 'give shares that sum to 100');
    }
    if (width !== null && width > 0 && (width < 8128 * 12 || width > 8128 * 140))
      this.#warn(at(path, 'width'), `${this.#say(width)} is an unusual width for cloth.`);
  }

  #readRoom(item: unknown, path: string): void {
    const room = LOOSE.safeParse(item);
    if (!room.success) return;
    const openings = listOf(room.data['openings']);
    this.#tellTwice(openings, at(path, 'openings'), 'name');
    const ceiling = this.#length(readable(ROOM_SHAPE, room.data).ceiling, at(path, 'ceiling'));
    openings.forEach((opening, index) => this.#readOpening(opening, at(at(path, 'openings'), index), ceiling));
  }

  #readOpening(item: unknown, path: string, ceiling: Ticks | null): void {
    const opening = LOOSE.safeParse(item);
    if (!opening.success) return;
    const treatments = listOf(opening.data['treatments']);
    this.#tellTwice(treatments, at(path, 'treatments'), 'name');
    const sizes = readable(OPENING_SHAPE, opening.data);
    const width = this.#length(sizes.width, at(path, 'width'));
    const height = this.#length(sizes.height, at(path, 'height'));
    const sill = this.#length(sizes.sill, at(path, 'sill'));
    this.#length(sizes.at, at(path, 'at'));
    if (width === 0) this.#fault(at(path, 'width'), 'is zero', 'give the width of the opening');
    if (height === 0) this.#fault(at(path, 'height'), 'is zero', 'give the height of the opening');
    if (ceiling !== null && ceiling > 0 && height !== null && sill !== null && sill + height > ceiling)
      this.#fault(
        at(path, 'height'),
        `sill and height reach ${this.#say(sill + height)}, above the ceiling at ${this.#say(ceiling)}`,
        'measure sill, height and ceiling again',
      );
    treatments.forEach((each, index) => {
      const treatment = LOOSE.safeParse(each);
      if (!treatment.success) return;
      const where = at(at(path, 'treatments'), index);
      const parts = readable(PANELS_SHAPE, treatment.data);
      this.#readStacks(parts, where);
      this.#checkTreatment(parts, where, ceiling);
    });
  }

  #readStacks(treatment: PanelsParts, path: string): void {
    for (const [tier, stack] of Object.entries(treatment.stacks ?? {})) {
      const where = at(at(path, 'stacks'), tier);
      if (stack.face !== undefined) this.#checkId(stack.face, at(where, 'face'), ['face']);
      stack.behind.forEach((id, index) => this.#checkId(id, at(at(where, 'behind'), index), ['lining', 'interlining']));
    }
  }

  #checkId(id: string, path: string, roles: readonly ClothRole[]): void {
    const role = this.#roles.get(id);
    const known = [...this.#roles]
      .filter(([, each]) => each !== 'unknown' && roles.includes(each))
      .map(([each]) => each);
    if (role === 'unknown') return;
    if (role === undefined) {
      this.#fault(path, `"${id}" is not listed under cloth`, adviseId(id, known));
    } else if (!roles.includes(role)) {
      this.#fault(
        path,
        `"${id}" is ${role === 'interlining' ? 'an interlining' : `a ${role}`}`,
        roles.includes('face') ? 'give a face cloth here' : 'give linings and interlinings here',
      );
    }
  }

  #checkTreatment(treatment: PanelsParts, path: string, ceiling: Ticks | null): void {
    if (treatment.face !== undefined) this.#checkId(treatment.face, at(path, 'face'), ['face']);
    const rod = this.#length(treatment.rodWidth, at(path, 'rodWidth'));
    const length = this.#length(treatment.finishedLength, at(path, 'finishedLength'));
    const overlap = this.#length(treatment.overlap, at(path, 'overlap'));
    const sides =
      typeof treatment.return === 'object'
        ? [
            this.#length(treatment.return.left, at(path, 'return.left')),
            this.#length(treatment.return.right, at(path, 'return.right')),
          ]
        : [this.#length(treatment.return, at(path, 'return'))];
    this.#length(treatment.mount?.above, at(path, 'mount.above'));
    if (rod === 0) this.#fault(at(path, 'rodWidth'), 'is zero', 'give the rod face, bracket to bracket');
    if (length === 0)
      this.#fault(at(path, 'finishedLength'), 'is zero', 'give the length from the top of the heading to the hem');
    if (overlap !== null && overlap > 0 && treatment.arrangement !== undefined && treatment.arrangement !== 'pair')
      this.#fault(
        at(path, 'overlap'),
        `is ${this.#say(overlap)} on ${treatment.arrangement} panels`,
        'only a pair overlaps: give 0 or leave it out',
      );
    if (treatment.arrangement === 'single' && sides.length === 2 && sides.every((side) => side !== null && side > 0))
      this.#fault(at(path, 'return'), 'has two sides on a single panel', 'give the one return it has; the other is 0');
    if (
      treatment.fullness !== undefined &&
      treatment.fullness !== null &&
      treatment.widths !== undefined &&
      treatment.widths !== null
    )
      this.#fault(at(path, 'widths'), 'is given beside fullness', 'give either fullness or widths');
    if (rod !== null && rod > 0) {
      for (const side of sides)
        if (side !== null && side > rod)
          this.#fault(
            at(path, 'return'),
            `${this.#say(side)} is more than the rod`,
            `give less than ${this.#say(rod)}`,
          );
      if (overlap !== null && overlap > rod)
        this.#fault(
          at(path, 'overlap'),
          `${this.#say(overlap)} is more than the rod`,
          `give less than ${this.#say(rod)}`,
        );
    }
    this.#warnUnlikely(treatment, path, { rod, length, overlap, ceiling });
  }

  #warnUnlikely(
    treatment: PanelsParts,
    path: string,
    sizes: { rod: Ticks | null; length: Ticks | null; overlap: Ticks | null; ceiling: Ticks | null },
  ): void {
    const { rod, length, ceiling } = sizes;
    if (treatment.return === undefined) this.#warn(at(path, 'return'), 'No return is given: 0 is taken.');
    if (treatment.overlap === undefined && treatment.arrangement === 'pair')
      this.#warn(at(path, 'overlap'), 'No overlap is given: 0 is taken.');
    if (length !== null && ceiling !== null && ceiling > 0 && length > ceiling)
      this.#warn(
        at(path, 'finishedLength'),
        `${this.#say(length)} is longer than the room is high (${this.#say(ceiling)}).`,
      );
    if (length !== null && length > 0 && length < 8128 * 12)
      this.#warn(at(path, 'finishedLength'), `${this.#say(length)} is very short for panels.`);
    if (rod !== null && rod > 8128 * 400) this.#warn(at(path, 'rodWidth'), `${this.#say(rod)} is a very long rod.`);
    if (sizes.overlap !== null && sizes.overlap > 8128 * 8)
      this.#warn(
        at(path, 'overlap'),
        `${this.#say(sizes.overlap)} is a large overlap: it is the whole overlap at the centre, not each side.`,
      );
  }
}

function adviseId(id: string, known: readonly string[]): string {
  const near = nearestWord(id, known);
  if (near !== null) return `did you mean ${near}? Else list it under cloth`;
  return known.length === 0 ? 'list it under cloth' : `list it under cloth, or give one of ${known.join(', ')}`;
}
