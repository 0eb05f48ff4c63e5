/** Every step tried on every plate: so many steps must come back to the notch they began in, and not before. */
export function directByTrial(divisions: number, notches: readonly number[]) {
  const serve: { plate: number; step: number }[] = [];
  for (const plate of notches)
    for (let step = 1; step <= plate; step++) if (step * divisions === plate) serve.push({ plate, step });
  return serve;
}

/** The stops of a plate marked one after another, counting notches. */
export function stopsByCounting(divisions: number, step: number): number[] {
  const stops: number[] = [];
  for (let notch = 0; stops.length < divisions; notch++) if (notch % step === 0) stops.push(notch);
  return stops;
}
