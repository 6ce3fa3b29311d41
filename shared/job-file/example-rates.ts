/**
 * The program's example rates, clearly ours: round figures of our own invention that let somebody see three prices
 * before she has entered her own. No published table of workroom rates exists; every result says when these were used.
 */
import type { WirePriceBook } from './wire-practice.ts';

export const EXAMPLE_RATES: WirePriceBook = {
  labour: {
    perWidth: {
      'pinch-pleat': '38.00',
      goblet: '46.00',
      'box-pleat': '42.00',
      'pencil-pleat': '32.00',
      'rod-pocket': '28.00',
      tab: '34.00',
      grommet: '40.00',
      wave: '40.00',
      flat: '28.00',
    },
    interlining: '9.00',
    blackout: '6.00',
    installPerRod: '45.00',
    hour: '50.00',
  },
  cloth: {
    'std-white': '6.50/yd',
    'std-ivory': '6.50/yd',
    'combo-white': '11.00/yd',
    'dim-out': '9.00/yd',
    'blackout-3-pass': '9.50/yd',
    'soft-blackout': '16.00/yd',
    'blackout-napped': '17.50/yd',
    'black-sateen': '7.50/yd',
    'inter-light': '7.00/yd',
    'inter-med': '9.00/yd',
    'inter-heavy': '13.00/yd',
  },
  hardware: { rod: '9.00/ft', bracket: '14.00', ring: '1.50' },
  notions: { headingTape: '1.10/yd', hook: '0.20', weight: '0.45' },
  markup: { cloth: 1.0, hardware: 0.5, notions: 0.5 },
  tax: [{ name: 'Example tax', rate: 0.06, on: ['cloth', 'hardware', 'notions'] }],
  deposit: { share: 0.5 },
  rounding: 'half-up',
};
