import { describe, expect, it } from 'vitest';
import { leastSize, parseWindowPlace, placeWindow, usualSize } from '#main/shell/window-place.ts';

const laptop = { x: 0, y: 25, width: 1440, height: 875 };
const beside = { x: 1440, y: 0, width: 1920, height: 1080 };

describe('where the window opens', () => {
  it.each([
    ['at the usual size on the first start', null, [laptop], { ...usualSize, maximized: false }],
    [
      'where it was',
      { x: 100, y: 60, width: 1200, height: 700, maximized: false },
      [laptop],
      { x: 100, y: 60, width: 1200, height: 700, maximized: false },
    ],
    [
      'on the second screen where it was',
      { x: 1700, y: 40, width: 1500, height: 900, maximized: true },
      [laptop, beside],
      { x: 1700, y: 40, width: 1500, height: 900, maximized: true },
    ],
    [
      'at the usual size when the second screen is gone',
      { x: 1700, y: 40, width: 1500, height: 900, maximized: true },
      [laptop],
      { ...usualSize, maximized: true },
    ],
    [
      'at the usual size when its title bar is above the screen',
      { x: 100, y: -200, width: 1200, height: 700, maximized: false },
      [laptop],
      { ...usualSize, maximized: false },
    ],
    [
      'no larger than the screen',
      { x: 0, y: 25, width: 4000, height: 3000, maximized: false },
      [laptop],
      { x: 0, y: 25, width: 1440, height: 875, maximized: false },
    ],
    [
      'no smaller than can be used',
      { x: 0, y: 25, width: 10, height: 10, maximized: false },
      [{ ...laptop, x: -1000, width: 3000 }],
      // Ten units of width cannot be gripped, so the place is not taken over.
      { ...usualSize, maximized: false },
    ],
    [
      'widened to what can be used',
      { x: 0, y: 25, width: 300, height: 100, maximized: false },
      [laptop],
      { x: 0, y: 25, width: leastSize.width, height: leastSize.height, maximized: false },
    ],
  ] as const)('%s', (_name, saved, areas, expected) => {
    expect(placeWindow(saved, areas)).toEqual(expected);
  });

  it.each([
    '',
    '{',
    'null',
    '[]',
    '{"x":1}',
    '{"x":1,"y":2,"width":"3","height":4}',
    '{"x":1.5,"y":2,"width":3,"height":4}',
  ])('takes no place from a file that holds %j', (text) => {
    expect(parseWindowPlace(text)).toBeNull();
  });

  it('reads back what it writes', () => {
    const place = { x: -5, y: 0, width: 1000, height: 700, maximized: true };
    expect(parseWindowPlace(JSON.stringify(place))).toEqual(place);
  });
});
