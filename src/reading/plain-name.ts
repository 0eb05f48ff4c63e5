const PLAIN = /^[^\p{C}\\/:*?"<>|.\s](?:[^\p{C}\\/:*?"<>|]{0,78}[^\p{C}\\/:*?"<>|.\s])?$/u;
/** Names that Windows keeps for devices, whatever ending they have. */
const DEVICE = /^(?:con|prn|aux|nul|com\d|lpt\d)\s*(?:\.|$)/i;

/**
 * Whether a name can be that of a file or folder on every system, and stays where it is put: no path, nothing but
 * dots, no name of a device; 80 characters at most.
 */
export function isPlainName(name: string): boolean {
  return PLAIN.test(name) && !DEVICE.test(name);
}

/** Whether a path names a device on one of its steps, or another machine, or says how it is to be fetched. */
export function leadsAstray(path: string): boolean {
  return /^[\\/]{2}|^[a-z][a-z\d+.-]+:/i.test(path) || path.split(/[\\/]/).some((step) => DEVICE.test(step));
}
