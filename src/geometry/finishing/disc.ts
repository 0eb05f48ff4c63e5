/** Mass of a disc with a round hole in its middle, g; lengths mm, density g/cm³. */
export function discMass(diameter: number, thickness: number, hole: number, density: number): number {
  const [outer, inner] = [diameter / 2, hole / 2];
  const cubicCentimetres = (Math.PI * (outer - inner) * (outer + inner) * thickness) / 1000;
  return cubicCentimetres * density;
}

/** Rise of a face against an optical flat over so many interference bands, in the unit of the wavelength. */
export function riseOverBands(bands: number, wavelength: number): number {
  // Light goes down through the gap and up again: a gap wider by half a wavelength makes the next band.
  const perBand = wavelength / 2;
  return bands * perBand;
}
