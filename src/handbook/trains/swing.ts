/** Steps of the reckoning from the end of a swing to the lowest place. */
const STEPS = 400;

/**
 * Beats in an hour of a simple pendulum, found by letting it fall from rest in small steps of time (Runge–Kutta of the
 * fourth order) until it passes the lowest place: half a beat.
 *
 * @param length mm
 * @param gravity m/s²
 * @param swing angle it is let go at, degrees from the upright
 */
export function beatsBySwinging(length: number, gravity: number, swing: number): number {
  const pull = (angle: number): number => (-1000 * gravity * Math.sin(angle)) / length;
  const step = Math.sqrt(length / (1000 * gravity)) / (STEPS / 2);
  let [time, angle, speed] = [0, (swing * Math.PI) / 180, 0];
  for (;;) {
    const [a1, v1] = [speed, pull(angle)];
    const [a2, v2] = [speed + (step / 2) * v1, pull(angle + (step / 2) * a1)];
    const [a3, v3] = [speed + (step / 2) * v2, pull(angle + (step / 2) * a2)];
    const [a4, v4] = [speed + step * v3, pull(angle + step * a3)];
    const fallen = angle + (step / 6) * (a1 + 2 * a2 + 2 * a3 + a4);
    // The rest of the way at the speed it has there: near the lowest place that hardly changes.
    if (fallen <= 0) return 1800 / (time + throughLowest(angle, fallen) * step);
    speed += (step / 6) * (v1 + 2 * v2 + 2 * v3 + v4);
    angle = fallen;
    time += step;
  }
}

/** The share of a step at which the angle passes nought. */
const throughLowest = (before: number, after: number): number => before / (before - after);
