/** What a page's operators refer to by name: fonts, opacities, gradients. Each is written once and kept under its key. */
import { PDFName } from 'pdf-lib';
import type { PDFContext, PDFDict, PDFFont, PDFPage } from 'pdf-lib';
import type { Rgb } from './paint-colour.ts';

export interface AxialGradient {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
  readonly from: Rgb;
  readonly to: Rgb;
}

export interface PageResources {
  readonly font: (font: PDFFont) => PDFName;
  readonly opacity: (value: number) => PDFName;
  /** A gradient in page coordinates, flat beyond its ends. */
  readonly gradient: (gradient: AxialGradient) => PDFName;
}

export function makeResources(page: PDFPage, context: PDFContext): PageResources {
  const groups = { Font: context.obj({}), ExtGState: context.obj({}), Shading: context.obj({}) };
  page.node.set(PDFName.of('Resources'), context.obj(groups));
  const names = new Map<string, PDFName>();
  const keep = (group: PDFDict, prefix: string, key: string, make: () => Parameters<PDFDict['set']>[1]): PDFName => {
    const known = names.get(`${prefix} ${key}`);
    if (known !== undefined) return known;
    const name = PDFName.of(`${prefix}${group.keys().length + 1}`);
    group.set(name, make());
    names.set(`${prefix} ${key}`, name);
    return name;
  };
  return {
    font: (font) => keep(groups.Font, 'F', font.ref.toString(), () => font.ref),
    opacity: (value) =>
      keep(groups.ExtGState, 'G', String(value), () => context.obj({ Type: 'ExtGState', ca: value, CA: value })),
    gradient: (gradient) =>
      keep(groups.Shading, 'S', JSON.stringify(gradient), () =>
        context.register(
          context.obj({
            ShadingType: 2,
            ColorSpace: 'DeviceRGB',
            Coords: [gradient.x1, gradient.y1, gradient.x2, gradient.y2],
            Extend: [true, true],
            Function: { FunctionType: 2, Domain: [0, 1], N: 1, C0: [...gradient.from], C1: [...gradient.to] },
          }),
        ),
      ),
  };
}
