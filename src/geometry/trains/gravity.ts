/** The earth of WGS 84, by the four constants that define it: m, none, m³/s² with the atmosphere, rad/s. */
const RADIUS = 6_378_137;
const FLATTENING = 1 / 298.257223563;
const MASS = 3.986004418e14;
const SPIN = 7.292115e-5;

/**
 * Gravity at sea level by latitude: that of a turning ellipsoid of which the surface is everywhere level.
 *
 * @param latitude degrees, −90 to 90, as a map gives it
 * @returns m/s²
 */
export function gravityAt(latitude: number): number {
  const polar = RADIUS * (1 - FLATTENING);
  const second = Math.sqrt(RADIUS ** 2 - polar ** 2) / polar; // second eccentricity
  const spin = (SPIN ** 2 * RADIUS ** 2 * polar) / MASS;
  const arc = Math.atan(second);
  const potential = ((1 + 3 / second ** 2) * arc - 3 / second) / 2;
  const slope = 3 * (1 + 1 / second ** 2) * (1 - arc / second) - 1;
  const share = (second * slope) / potential;
  const equator = (MASS / (RADIUS * polar)) * (1 - spin - (spin * share) / 6);
  const pole = (MASS / RADIUS ** 2) * (1 + (spin * share) / 3);
  const angle = (latitude * Math.PI) / 180;
  const [along, up] = [RADIUS * Math.cos(angle) ** 2, polar * Math.sin(angle) ** 2];
  return (equator * along + pole * up) / Math.sqrt(RADIUS * along + polar * up);
}
