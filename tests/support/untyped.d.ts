/** Independent libraries that come without types; only what the tests call. */
declare module 'psychrolib' {
  const psychrolib: {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    /** °C, relative humidity 0…1, Pa. */
    GetTWetBulbFromRelHum(tDryBulb: number, relHum: number, pressure: number): number;
    /** m above sea level → Pa. */
    GetStandardAtmPressure(altitude: number): number;
  };
  export default psychrolib;
}
declare module 'js-quantities' {
  interface Qty {
    readonly scalar: number;
    to(unit: string): Qty;
  }
  const Qty: (value: number, unit: string) => Qty;
  export default Qty;
}
declare module 'jstat' {
  const jstat: {
    readonly studentt: { inv(p: number, dof: number): number; pdf(t: number, dof: number): number; cdf(t: number, dof: number): number };
    readonly normal: { cdf(x: number, mean: number, std: number): number; sample(mean: number, std: number): number };
    /** Numbers of 0…1 for all sampling from here on. */
    setRandom(source: () => number): void;
  };
  export default jstat;
}
declare module 'pdfjs-dist/legacy/build/pdf.mjs' {
  interface StructNode {
    readonly role?: string;
    readonly alt?: string;
    readonly children?: readonly StructNode[];
  }
  interface PdfPage {
    /** Left, bottom, right, top in points. */
    readonly view: readonly [number, number, number, number];
    getTextContent(): Promise<{ readonly items: readonly { readonly str?: string; readonly hasEOL?: boolean; readonly transform?: readonly number[]; readonly width?: number }[] }>;
    getStructTree(): Promise<StructNode | null>;
  }
  interface Pdf {
    readonly numPages: number;
    getPage(number: number): Promise<PdfPage>;
    getMarkInfo(): Promise<{ readonly Marked?: boolean } | null>;
    getMetadata(): Promise<{ readonly info: Readonly<Record<string, unknown>> }>;
  }
  export function getDocument(source: { readonly data: Uint8Array; readonly verbosity?: number }): { readonly promise: Promise<Pdf> };
}
declare module '@citation-js/core' {
  interface CslName {
    readonly family?: string;
    readonly given?: string;
    readonly literal?: string;
  }
  interface CslItem {
    readonly id: string;
    readonly type: string;
    readonly title?: string;
    readonly author?: readonly CslName[];
    readonly issued?: { readonly 'date-parts'?: readonly (readonly number[])[] };
    readonly note?: string;
    readonly number?: string;
    readonly DOI?: string;
    readonly volume?: string;
    readonly issue?: string;
    readonly page?: string;
    readonly 'container-title'?: string;
  }
  export class Cite {
    constructor(data: string);
    readonly data: readonly CslItem[];
  }
}
declare module '@citation-js/plugin-bibtex';
declare module '@citation-js/plugin-csl';
