/** Minutes added up cut by cut, as at the machine: cut, back, index, for each space and each time round. */
export function minutesByCounting(
  teeth: number,
  passes: number,
  cutting: number,
  back: number,
  index: number,
): number {
  let minutes = 0;
  for (let round = 0; round < passes; round++)
    for (let space = 0; space < teeth; space++) {
      minutes += cutting;
      minutes += back;
      minutes += index;
    }
  return minutes;
}
