// What never reaches the piece, by the way a finish is put on: rows of data/application-loss.various.csv.
import { number } from '../../units/format-quantity.js';
import type { Trace } from '../../engine/trace.js';
import { tableRows, type DataRow } from '../../materials/data-tables.js';

/** Ways of putting finish on: the rows of the table. */
export const methods = [
  'brush or roller',
  'HVLP spray',
  'airless spray',
  'air-assisted airless spray',
  'cup gun spray',
] as const;

/** The loss of a method, the middle of its printed range, as a share of what leaves the tin; none without a method. */
export function lossOf(method: (typeof methods)[number] | undefined, trace: Trace): number {
  if (method === undefined) return 0;
  const row = tableRows('application-loss.various').find((r) => r.text('method') === method) as DataRow;
  const [low, high] = [row.number('loss_low_pct') as number, row.number('loss_high_pct') as number];
  const middle = (low + high) / 2;
  const printed =
    low === high
      ? `${String(low)} %`
      : `printed ${String(low)} to ${String(high)} %, the middle ${String(middle)} %`;
  if (row.text('meaning') === 'addition') {
    // An addition of a to what is needed is a / (1 + a) of what leaves the tin.
    trace.note(
      `Loss with ${method}: ${printed} is added to what the surface takes, as the source means it.`,
      row.citation,
    );
    return middle / (100 + middle);
  }
  trace.note(
    `Loss with ${method}: ${printed} of what leaves the tin is lost, so the amount is divided by ${String((100 - middle) / 100)}.`,
    row.citation,
  );
  return middle / 100;
}

/** A loss that the user gives, as a share of what leaves the tin: 10 % divides by 0.9. */
export function givenLoss(loss: number, trace: Trace): number {
  if (loss > 0 && !trace.silent)
    trace.note(
      `Loss as given: ${number(loss * 100)} % of what leaves the tin is lost, so the amount is divided by ${number(1 - loss)}.`,
    );
  return loss;
}
