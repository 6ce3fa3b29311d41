/** What the checks beyond the schema share: one list of faults and warnings, lengths in the file's unit, known cloth. */
import { at } from '../fault.ts';
import type { Fault, Warning } from '../fault.ts';
import { formatLength } from '../format-length.ts';
import { LONGEST } from '../length.ts';
import type { LengthUnit, Ticks } from '../length.ts';
import { parseLength } from '../parse-length.ts';
import { GENERIC_CLOTH_IDS } from '../words.ts';
import type { ClothRole } from '../words.ts';
import { nearestWord } from './tell-faults.ts';

export type KnownRole = ClothRole | 'unknown';

/** What is known of the place of a treatment while it is checked. */
export interface CheckedPlace {
  readonly ceiling: Ticks | null;
  readonly sill: Ticks | null;
  readonly width: Ticks | null;
  readonly height: Ticks | null;
  /** The first level that a patterned treatment of the room gives. */
  readonly patternLevel: Ticks | null;
  /** Some treatment of the room gives a level, if wrongly. */
  readonly levelIsTold: boolean;
}

export class CheckTools {
  readonly unit: LengthUnit;
  readonly faults: Fault[] = [];
  readonly warnings: Warning[] = [];
  /** Role of every cloth id that may be named. */
  readonly roles = new Map<string, KnownRole>(
    GENERIC_CLOTH_IDS.map((id) => [id, id.startsWith('inter') ? 'interlining' : 'lining']),
  );

  constructor(unit: LengthUnit) {
    this.unit = unit;
  }

  fault(path: string, wrong: string, right: string): void {
    this.faults.push({ path, wrong, right });
  }

  warn(path: string, says: string): void {
    this.warnings.push({ path, says });
  }

  /** In the file's unit; null when it is not there, or is told as a fault. */
  length(value: number | string | null | undefined, path: string, most: Ticks = LONGEST): Ticks | null {
    if (value === undefined || value === null) return null;
    const parsed = parseLength(String(value), this.unit, most);
    if (parsed.ok) return parsed.ticks;
    const numeric = typeof value === 'number';
    this.fault(
      path,
      numeric ? `${value} ${this.unit} cannot be a length here` : parsed.wrong,
      numeric ? `give less than ${formatLength(most, this.unit)}` : parsed.right,
    );
    return null;
  }

  say(length: number): string {
    return `${formatLength(length, this.unit)} ${this.unit}`;
  }

  /** Tells siblings of one name or id. */
  tellTwice(list: readonly unknown[], path: string, key: 'name' | 'id'): void {
    const seen = new Map<string, number>();
    list.forEach((item, index) => {
      const value: unknown =
        typeof item === 'object' && item !== null ? (item as Record<string, unknown>)[key] : undefined;
      if (typeof value !== 'string') return;
      const before = seen.get(value);
      if (before === undefined) seen.set(value, index);
      else
        this.fault(
          at(at(path, index), key),
          `"${value}" is also the ${key} of ${at(path, before)}`,
          `give each its own ${key}`,
        );
    });
  }

  /** Tells an id that nobody listed, or one of another role than is wanted here. */
  checkId(id: string, path: string, wanted: readonly ClothRole[]): void {
    const role = this.roles.get(id);
    if (role === 'unknown') return;
    if (role === undefined) {
      const known = [...this.roles].filter(([, each]) => wanted.some((one) => one === each)).map(([each]) => each);
      this.fault(path, `"${id}" is not listed under cloth`, adviseId(id, known));
    } else if (!wanted.includes(role)) {
      this.fault(
        path,
        `"${id}" is ${role === 'interlining' ? 'an interlining' : `a ${role}`}`,
        wanted.includes('face') ? 'give a face cloth here' : 'give linings and interlinings here',
      );
    }
  }
}

function adviseId(id: string, known: readonly string[]): string {
  const near = nearestWord(id, known);
  if (near !== null) return `did you mean ${near}? Else list it under cloth`;
  return known.length === 0 ? 'list it under cloth' : `list it under cloth, or give one of ${known.join(', ')}`;
}
