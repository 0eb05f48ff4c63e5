import { createHash } from 'node:crypto';

/** A document as it was printed. */
export interface Printed {
  readonly pdf: Buffer;
  /** Of the bytes, in hexadecimal. */
  readonly sha256: string;
  /** A file that holds the same bytes, where there is one. */
  readonly file?: string;
  /** Whether it was printed before, and not now. */
  readonly kept: boolean;
}

/** Keeps what was printed from run to run. */
export interface PrintStore {
  /**
   * What was printed from the same before; printed now where nothing was.
   *
   * @param dependsOn all that makes one print different from another, its HTML among it; not what the HTML refers to
   * @throws what `print` throws, and nothing else
   */
  printed(dependsOn: readonly string[], print: () => Promise<Buffer>): Promise<Printed>;
}

/** Keeps nothing. */
export const noStore: PrintStore = {
  printed: async (_, print) => {
    const pdf = await print();
    return { pdf, sha256: sha256Of(pdf), kept: false };
  },
};

export function sha256Of(bytes: Uint8Array | string): string {
  return createHash('sha256').update(bytes).digest('hex');
}
