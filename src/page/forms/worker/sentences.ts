type Raw = Readonly<Record<string, unknown>>;

const number = (raw: Raw, name: string): number => {
  const value = raw[name];
  return typeof value === 'number' ? value : 0;
};
const plural = (n: number, one: string, many: string): string => (n === 1 ? one : many);

/** The answer of a recipe as a pattern: `{name}` stands for the figure of that name, without its sign. Undefined where none fits. */
export const sentences: Readonly<Record<string, (raw: Raw) => string | undefined>> = {
  movementAcross: (raw) => {
    const change = number(raw, 'change');
    if (change === 0) return 'It will keep its width of {finalWidth}.';
    return `It will ${change < 0 ? 'shrink' : 'grow'} by about {change}, from {low} to {high}; afterwards it is {finalWidth} wide.`;
  },
  stripCount: (raw) => {
    const slabs = raw['slabs'];
    const count = Array.isArray(slabs) ? slabs.length : 1;
    return `You need {strips} strips${count > 1 ? `, glued first as ${count} slabs that pass the thicknesser` : ''}. {spare} to spare.`;
  },
  clampPlan: (raw) =>
    `Set {clamps} clamps, one every {spacing}.${raw['reachOk'] === false ? ' They do not reach.' : ''}`,
  glueQuantity: () => 'Have {mass} of glue at hand: {volume}.',
  pieceWeight: () => 'It weighs {mass}.',
  topSag: (raw) =>
    raw['ok'] === true
      ? 'It holds: it sags {sag}, and {allowed} is allowed.'
      : 'It does not hold: it sags {sag}, and {allowed} is allowed.',
  finishQuantity: (raw) =>
    `You need {volume}: buy {tins} ${plural(number(raw, 'tins'), 'tin', 'tins')}, with {spare} left over.`,
  tipping: () => '{verdict}: it takes {forceToTip} to tip it.',
  equilibriumMoisture: () => 'The wood comes to {moisture}.',
  humidityFor: () => undefined,
  woodDensity: () => 'It weighs {density}.',
  planingTime: () => undefined,
};
