/** Looks up rates in the price book and remembers each one that is needed and that nobody has set. */
import type { Cloth } from '#shared/cloth.ts';
import { multiplyDecimals } from '#shared/decimal.ts';
import type { Decimal } from '#shared/decimal.ts';
import { at } from '#shared/fault.ts';
import { WORKS } from '#shared/labour.ts';
import type { WorkName } from '#shared/labour.ts';
import type { PriceBook } from '#shared/price-book.ts';
import type { LengthRate } from '#shared/rate.ts';
import type { MissingRate } from '#shared/result.ts';
import type { Heading } from '#shared/words.ts';

/** Collects missing rates over a whole job: each is named once, with what it is needed for. */
export class RateBook {
  readonly book: PriceBook;
  readonly #missing = new Map<string, MissingRate>();

  constructor(book: PriceBook) {
    this.book = book;
  }

  get missing(): readonly MissingRate[] {
    return [...this.#missing.values()];
  }

  /** What the cloth costs: its own price, else the price book's. */
  cloth(cloth: Cloth): LengthRate | null {
    return (
      cloth.price ??
      this.#need(this.book.cloth[cloth.id], at('cloth', cloth.id), `the cost of ${cloth.name}, as "6.50/yd"`)
    );
  }

  perWidth(heading: Heading): Decimal | null {
    return this.#need(
      this.book.labour.perWidth[heading] ?? this.#byHour(this.book.labour.hours.perWidth[heading]),
      at('labour.perWidth', heading),
      `what making one width under a ${heading} heading costs, as "38.00"`,
    );
  }

  interlining(): Decimal | null {
    return this.#need(
      this.book.labour.interlining ?? this.#byHour(this.book.labour.hours.interlining),
      'labour.interlining',
      'what interlining adds to making one width, as "9.00"',
    );
  }

  blackout(): Decimal | null {
    return this.#need(
      this.book.labour.blackout ?? this.#byHour(this.book.labour.hours.blackout),
      'labour.blackout',
      'what a blackout adds to making one width, as "6.00"',
    );
  }

  work(name: WorkName): Decimal | null {
    const says = WORKS[name].says;
    return this.#need(
      this.book.labour.works[name] ?? this.#byHour(this.book.labour.hours.works[name]),
      at('labour', name),
      `what this costs: ${says.charAt(0).toLowerCase()}${says.slice(1, -1)}, as "45.00"`,
    );
  }

  /** A rate from hours: null unless both the hours and what an hour costs are entered. */
  #byHour(hours: Decimal | null | undefined): Decimal | null {
    const { hour } = this.book.labour;
    return hours === null || hours === undefined || hour === null ? null : multiplyDecimals(hours, hour);
  }

  #need<T>(rate: T | null | undefined, path: string, says: string): T | null {
    if (rate !== null && rate !== undefined) return rate;
    this.#missing.set(path, { rate: path, says });
    return null;
  }
}
