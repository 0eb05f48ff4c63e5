/** What one cut takes, and how often it is taken. */
export interface Cuts {
  readonly teeth: number;
  /** Travel of the slide for one cut, mm. */
  readonly travel: number;
  /** mm/min */
  readonly feedPerMin: number;
  readonly returnMinutes: number;
  readonly indexMinutes: number;
  /** Times round the wheel. */
  readonly passes: number;
  /** Wheels in the stack. */
  readonly blanks: number;
}

/** Minutes at the machine: each time round, each space is cut, the slide brought back, and the work indexed. */
export function cuttingTime({ teeth, passes, blanks, ...cut }: Cuts) {
  const oneCut = cut.travel / cut.feedPerMin + cut.returnMinutes + cut.indexMinutes;
  const perTooth = passes * oneCut;
  const minutes = teeth * perTooth;
  return { minutes, minutesPerWheel: minutes / blanks, perTooth };
}
