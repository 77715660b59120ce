import { describe, expect, it } from 'vitest';
import { lineChart } from '../../src/charts/line-chart.js';
import { markPlace } from '../../src/charts/label-layout.js';

const size = [400, 300] as const;

describe('the words of a mark', () => {
  it('stand above the point, toward the middle, where nothing runs there', () => {
    expect(markPlace([50, 100], 'here', [], size)).toEqual({ right: true, above: true });
    expect(markPlace([350, 100], 'here', [], size)).toEqual({ right: false, above: true });
    // A falling line leaves the room above it to the right.
    expect(markPlace([150, 150], 'here', [[[0, 300], [300, 0]]], size)).toEqual({ right: true, above: true }); // prettier-ignore
  });

  it('go below, or to the other side, where a line would run through them', () => {
    // A line rising one in one: to the right and above it is in the way, to the right and below it is not.
    expect(markPlace([150, 150], 'here', [[[0, 0], [300, 300]]], size)).toEqual({ right: true, above: false }); // prettier-ignore
    // A second line that runs below on the right leaves the left, above.
    const below = [[140, 135], [400, 135]] as const; // prettier-ignore
    expect(markPlace([150, 150], 'here', [[[0, 0], [300, 300]], below], size)).toEqual({ right: false, above: true }); // prettier-ignore
    // An upright line close by is in the way above and below.
    expect(markPlace([150, 150], 'here', [[[165, 0], [165, 300]]], size)).toEqual({ right: false, above: true }); // prettier-ignore
  });

  it('never leave the plot: near its floor they stay above', () => {
    expect(markPlace([10, 5], 'here', [[[0, 0], [300, 300]]], size)).toEqual({ right: true, above: true }); // prettier-ignore
    expect(markPlace([0, 0], 'a long name for a point', [[[0, 5], [400, 25]]], size)).toEqual({ right: true, above: true }); // prettier-ignore
  });

  it('are set so in the chart itself', () => {
    const chart = (ys: readonly number[]) =>
      JSON.stringify(
        lineChart({
          x: { title: 'x', values: [0, 4, 10] },
          y: { title: 'y', zero: true },
          series: [{ name: 'a', values: ys }],
          marks: [{ x: 4, y: ys[1] as number, label: 'here' }],
        }),
      );
    expect(chart([0, 4, 10])).toContain('"baseline":"top","dx":8,"dy":7');
    expect(chart([10, 4, 1])).toContain('"baseline":"bottom","dx":8,"dy":-7');
  });
});
