/** The part of the reading library that is used: it comes without types. */
declare module 'dxf' {
  /** What one entity says, by the names that the library gives its groups. */
  export interface RawEntity {
    readonly type: string;
    readonly layer?: string;
    readonly [field: string]: unknown;
  }

  export interface RawDrawing {
    readonly header: { readonly insUnits?: number };
    readonly entities: readonly RawEntity[];
    readonly tables: {
      readonly layers: Readonly<
        Record<string, { readonly flags?: number; readonly colorNumber?: number } | undefined>
      >;
    };
  }

  /** Throws whatever a damaged text leads it into. */
  export function parseString(text: string): RawDrawing;
}
