/**
 * Length of a simple pendulum that swings through its lowest place so many times an hour, in small swings.
 *
 * @param gravity m/s²
 * @returns mm, from where it bends to the centre of oscillation
 */
export function pendulumLength(beatsPerHour: number, gravity: number): number {
  const radiansPerSecond = (Math.PI * beatsPerHour) / 3600; // a beat is half a turn of the phase
  return (1000 * gravity) / radiansPerSecond ** 2;
}
