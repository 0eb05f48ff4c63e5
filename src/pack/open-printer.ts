import type { Printer, PrinterOptions } from '../print/printer.js';
import { copyAssets } from '../sheets/assets.js';

/** The room that prints. It is slow to load, and left out where nothing is printed. */
export const printing = () => import('../print/printer.js');

/**
 * A printer, and all that sheets refer to in its folder.
 *
 * @throws {MachineError} when there is no browser; {Error} when the folder cannot be written to
 */
export async function openPrinter(
  workFolder: string,
  { Printer: Press }: Awaited<ReturnType<typeof printing>>,
  options: Omit<PrinterOptions, 'workFolder'>,
): Promise<Printer> {
  const assets = copyAssets(workFolder);
  assets.catch(() => undefined); // told below
  const printer = await Press.open({ workFolder, ...options });
  try {
    await assets;
    return printer;
  } catch (error) {
    await printer.close();
    throw error;
  }
}
