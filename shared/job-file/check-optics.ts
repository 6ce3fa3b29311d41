/** What a cloth passes and sends back, checked together: in no band and on no side can it be more than arrives. */
import { LIGHT_BANDS } from '../cloth.ts';
import { at } from '../fault.ts';
import type { CheckTools } from './check-tools.ts';
import type { WireCloth } from './wire-job.ts';

/** Shares that were typed as decimals may sum to a hair above one. */
export const MOST_SHARES = 1 + 1e-9;

type Shares = { readonly transmittance?: number | undefined; readonly reflectance?: number | undefined };

export function checkOptics(
  tools: Pick<CheckTools, 'fault' | 'warn'>,
  cloth: Partial<Omit<WireCloth, 'role' | 'family'>>,
  path: string,
): void {
  const tooMuch = (passed: number, sentBack: number, where: string): void => {
    if (passed + sentBack > MOST_SHARES)
      tools.fault(where, 'transmittance and reflectance make more than 1', 'give shares that sum to 1 at the most');
  };
  const { spectra, streetReflectance: street, transmittanceWithin } = cloth;
  const bands: Readonly<Record<(typeof LIGHT_BANDS)[number], Shares>> = {
    visible: cloth,
    uv: cloth.uv ?? {},
    solar: cloth.solar ?? {},
  };
  for (const band of LIGHT_BANDS) {
    const { transmittance, reflectance } = bands[band];
    const here = band === 'visible' ? path : at(path, band);
    if (transmittance !== undefined && reflectance !== undefined)
      tooMuch(transmittance, reflectance, band === 'visible' ? at(here, 'transmittance') : here);
    if ((transmittance === undefined) !== (reflectance === undefined))
      tools.warn(
        at(here, transmittance === undefined ? 'transmittance' : 'reflectance'),
        'Not given, though the other share of its pair is: it is taken as typical of the family.',
      );
    const sent = street?.[band];
    if (sent === undefined) continue;
    const where = at(at(path, 'streetReflectance'), band);
    if (transmittance === undefined)
      tools.warn(where, 'Without the transmittance beside it, it is held against what is typical of the family.');
    else tooMuch(transmittance, sent, where);
  }
  const over = spectra?.transmittance.findIndex(
    (share, band) => share + (spectra.reflectance[band] ?? 0) > MOST_SHARES,
  );
  if (over !== undefined && over >= 0)
    tools.fault(
      at(path, 'spectra'),
      `transmittance and reflectance make more than 1 at ${400 + 20 * over} nm`,
      'give shares that sum to 1 at the most in every band',
    );
  if (transmittanceWithin !== undefined && cloth.transmittance === undefined)
    tools.warn(at(path, 'transmittanceWithin'), 'Without the transmittance that it belongs to this is not used.');
}
