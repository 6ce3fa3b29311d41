/** Where one is, in the address: back and forward of the browser work, and a reload stays. */
import { PLACES } from '../words/shell-words.ts';
import type { PlaceName } from '../words/shell-words.ts';

export type Spot =
  | { readonly place: PlaceName; readonly id: string | null }
  | {
      readonly place: 'project';
      readonly id: string;
      readonly sheet: 'worksheet' | 'proposal' | 'cutting';
      readonly opening: string | null;
    };

export function readAddress(hash: string): Spot {
  const [first = '', second = '', third = ''] = hash.replace(/^#\/?/, '').split('/').map(decodeURIComponent);
  if (first === 'project' && second !== '')
    return third === 'proposal' || third === 'cutting'
      ? { place: 'project', id: second, sheet: third, opening: null }
      : { place: 'project', id: second, sheet: 'worksheet', opening: third === '' ? null : third };
  const place = PLACES.find((each) => each.place === first)?.place ?? 'clients';
  return { place, id: second === '' ? null : second };
}

export function writeAddress(spot: Spot): string {
  const steps =
    spot.place === 'project'
      ? ['project', spot.id, spot.sheet === 'worksheet' ? spot.opening : spot.sheet]
      : [spot.place, spot.id];
  return `#/${steps
    .filter((step): step is string => step !== null)
    .map(encodeURIComponent)
    .join('/')}`;
}

export class Route {
  spot: Spot = $state.raw(readAddress(window.location.hash));

  constructor() {
    window.addEventListener('hashchange', () => {
      this.spot = readAddress(window.location.hash);
    });
  }

  go(spot: Spot): void {
    window.location.hash = writeAddress(spot);
    this.spot = spot;
  }

  /** Moves without a step in the history: choosing a window is not going somewhere. */
  turnTo(spot: Spot): void {
    window.history.replaceState(null, '', writeAddress(spot));
    this.spot = spot;
  }
}
