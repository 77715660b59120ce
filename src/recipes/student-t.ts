/**
 * Share of Student's t distribution within ±t, by the finite series for whole degrees of freedom in θ = atan(t / √ν).
 * Source: Abramowitz & Stegun, Handbook of Mathematical Functions, 26.7.3 (ν odd) and 26.7.4 (ν even).
 */
function shareWithin(angle: number, degrees: number): number {
  const [sine, cosine] = [Math.sin(angle), Math.cos(angle)];
  const odd = degrees % 2 === 1;
  if (degrees === 1) return (2 * angle) / Math.PI;
  let term = odd ? cosine : 1;
  let sum = term;
  for (let k = odd ? 3 : 2; k <= degrees - 2; k += 2) {
    term *= ((k - 1) / k) * cosine * cosine;
    sum += term;
  }
  return odd ? (2 / Math.PI) * (angle + sine * sum) : sine * sum;
}

/**
 * The value that Student's t stays below with the given probability.
 * @param probability between 0 and 1, both excluded
 * @param degrees degrees of freedom, a whole number from 1
 */
export function studentTQuantile(probability: number, degrees: number): number {
  if (probability < 0.5) return -studentTQuantile(1 - probability, degrees);
  const share = 2 * probability - 1;
  let [low, high] = [0, Math.PI / 2];
  for (;;) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) return Math.sqrt(degrees) * Math.tan(low);
    if (shareWithin(middle, degrees) < share) low = middle;
    else high = middle;
  }
}
