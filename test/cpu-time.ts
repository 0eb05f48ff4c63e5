/** Milliseconds that a processor has worked for this process: what else a busy machine does is not among them. */
export function cpuTime(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}
