/** How the lines about what a cloth does change it. Shares of one band are looked at together, whichever was typed last. */
import type { LightBand, SourcedValue, ValueSource } from '#shared/cloth.ts';
import type { ClothRecord } from '#shared/records/records.ts';
import { MOST_SHARES } from '#shared/job-file/check-optics.ts';
import { bandName, readShareField, readSpectrum, showShare } from './read-known.ts';
import type { FieldReading } from './read-field.ts';
import type { ShareSide } from '../words/known-words.ts';

type Changes = Partial<ClothRecord>;
type Shares = Readonly<Record<ShareSide, number | null>>;

const SIDES = ['transmittance', 'reflectance', 'street'] as const;

export function sharesOf(cloth: ClothRecord, band: LightBand): Shares {
  const pair = cloth[band];
  return {
    transmittance: pair?.transmittance ?? null,
    reflectance: pair?.reflectance ?? null,
    street: cloth.streetReflectance?.[band] ?? null,
  };
}

/** Which value's source speaks for a share; the street side's is that of the room side. */
export function sourceOf(band: LightBand, side: ShareSide): SourcedValue {
  if (band !== 'visible') return band;
  return side === 'transmittance' ? 'transmittance' : 'reflectance';
}

/** What is typed over a guess or a home measurement is neither any more. */
export function withoutGuess(sources: ClothRecord['sources'], value: SourcedValue): ClothRecord['sources'] {
  const said = sources?.[value];
  return said === 'assumed' || said === 'measured-at-home' ? withSource(sources, value, '') : sources;
}

export function withSource(
  sources: ClothRecord['sources'],
  value: SourcedValue,
  source: ValueSource | '',
): ClothRecord['sources'] {
  const { [value]: _before, ...others } = sources ?? {};
  const after = source === '' ? others : { ...others, [value]: source };
  return Object.keys(after).length === 0 ? null : after;
}

/** Where passed and sent back make more than there is. */
function findTooMuch(shares: Shares): { readonly side: 'reflectance' | 'street'; readonly sum: number } | null {
  const passed = shares.transmittance ?? 0;
  for (const side of ['reflectance', 'street'] as const) {
    const sum = passed + (shares[side] ?? 0);
    if (shares.transmittance !== null && sum > MOST_SHARES) return { side, sum };
  }
  return null;
}

/** Reads one line of a band against the others as they stand. */
export function readShareLine(
  cloth: ClothRecord,
  band: LightBand,
  side: ShareSide,
  text: string,
): FieldReading<number> {
  const reading = readShareField(text);
  if (reading.is !== 'value') return reading;
  const shares = { ...sharesOf(cloth, band), [side]: reading.value };
  const over = findTooMuch(shares);
  if (over === null) return reading;
  const others = [side === 'transmittance' ? shares[over.side] : shares.transmittance].map((each) => each ?? 0);
  const left = 1 - Math.max(...others);
  return {
    is: 'fault',
    wrong: `passed and sent back make ${showShare(over.sum)}, more than the light there is`,
    right: `write ${showShare(left)} or less, or lower the other first`,
  };
}

/** One line was typed; lines of the band that were kept as drafts are tried again. */
export function changeShare(cloth: ClothRecord, band: LightBand, side: ShareSide, text: string): Changes {
  let drafts: ClothRecord['drafts'] = cloth.drafts;
  let shares = sharesOf(cloth, band);
  let told = cloth;
  for (const each of [side, ...SIDES.filter((other) => other !== side)]) {
    const line = `${band}.${each}`;
    const written = each === side ? text : cloth.drafts[line];
    if (written === undefined) continue;
    const reading = readShareLine(told, band, each, written);
    if (reading.is === 'fault') drafts = { ...drafts, [line]: written };
    else {
      drafts = Object.fromEntries(Object.entries(drafts).filter(([name]) => name !== line));
      shares = { ...shares, [each]: reading.is === 'value' ? reading.value : null };
      told = { ...told, ...recordShares(told, band, shares) };
    }
  }
  const isNew = shares[side] !== sharesOf(cloth, band)[side];
  const sources = isNew ? withoutGuess(cloth.sources, sourceOf(band, side)) : cloth.sources;
  const isMeasured = !isNew || band !== 'visible' || side !== 'transmittance';
  const transmittanceWithin = isMeasured ? cloth.transmittanceWithin : null;
  return { drafts, ...recordShares(cloth, band, shares), sources, transmittanceWithin };
}

export function recordShares(cloth: ClothRecord, band: LightBand, shares: Shares): Changes {
  const { transmittance, reflectance, street } = shares;
  const pair = transmittance === null && reflectance === null ? null : { transmittance, reflectance };
  const { [band]: _before, ...others } = cloth.streetReflectance ?? {};
  const streets = street === null ? others : { ...others, [band]: street };
  return { [band]: pair, streetReflectance: Object.keys(streets).length === 0 ? null : streets };
}

export type SpectrumSide = 'transmittance' | 'reflectance';

/** Reads one spectrum against the other: no band passes and sends back more than arrives. */
export function readSpectrumLine(cloth: ClothRecord, side: SpectrumSide, text: string): FieldReading<number[]> {
  const reading = readSpectrum(text);
  if (reading.is !== 'value') return reading;
  const other = cloth.spectra?.[side === 'transmittance' ? 'reflectance' : 'transmittance'] ?? [];
  const over = reading.value.findIndex((share, at) => share + (other[at] ?? 0) > MOST_SHARES);
  if (over < 0) return reading;
  return {
    is: 'fault',
    wrong: `at ${bandName(over)} the two spectra make ${showShare((reading.value[over] ?? 0) + (other[over] ?? 0))}`,
    right: 'lower one of the two there: together they are 100 % at the most',
  };
}

export function changeSpectrum(cloth: ClothRecord, side: SpectrumSide, text: string): Changes {
  const line = `spectra.${side}`;
  const { [line]: _before, ...drafts } = cloth.drafts;
  const reading = readSpectrumLine(cloth, side, text);
  if (reading.is === 'fault') return { drafts: { ...drafts, [line]: text } };
  const sources = withoutGuess(cloth.sources, 'spectra');
  const both = {
    transmittance: null,
    reflectance: null,
    ...cloth.spectra,
    [side]: reading.is === 'value' ? reading.value : null,
  };
  const isEmpty = both.transmittance === null && both.reflectance === null;
  return { drafts, spectra: isEmpty ? null : both, sources };
}

/** A home measurement goes in: null and a fault where what is sent back leaves no room for it. */
export function putMeasured(cloth: ClothRecord, transmittance: number, within: number): Changes | null {
  const shares = { ...sharesOf(cloth, 'visible'), transmittance };
  if (findTooMuch(shares) !== null) return null;
  const { ['visible.transmittance']: _before, ...drafts } = cloth.drafts;
  const { transmittance: source, reflectance = source } = cloth.sources ?? {};
  const kept =
    shares.reflectance === null || reflectance === undefined
      ? cloth.sources
      : withSource(cloth.sources, 'reflectance', reflectance);
  return {
    drafts,
    ...recordShares(cloth, 'visible', shares),
    transmittanceWithin: within,
    sources: withSource(kept, 'transmittance', 'measured-at-home'),
  };
}
