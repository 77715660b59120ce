import { InputError, inspectValue } from './input-error.js';

/** Goes along a text once, matching sticky expressions: its time grows with the length and no faster. */
export class TextReader {
  #at = 0;
  constructor(readonly text: string) {}

  match(sticky: RegExp): string | undefined {
    sticky.lastIndex = this.#at;
    const found = sticky.exec(this.text);
    if (!found) return undefined;
    this.#at = sticky.lastIndex;
    return found[0];
  }

  peek(c: string): boolean {
    return this.text[this.#at] === c;
  }

  rest(): string {
    return this.text.slice(this.#at).trim();
  }

  /** `12,5` is read as 12.5. `1,250` is 1.25 to one reader and 1250 to another: it is asked about. @throws InputError */
  #decimalComma(whole: string): number | undefined {
    if (!/^\d+$/.test(whole)) return undefined;
    const decimals = this.match(/,\d{1,40}(?![\d,.])/y)?.slice(1);
    if (decimals === undefined) return undefined;
    const unit = this.rest() === '' ? '' : ` ${this.rest()}`;
    if (decimals.length === 3 && /^[1-9]\d{0,2}$/.test(whole)) {
      const written = inspectValue(`${whole},${decimals}${unit}`);
      const asDecimal = `${Number(`${whole}.${decimals}`)}${unit}`;
      const asThousands = `${whole}${decimals}${unit}`;
      throw new InputError(
        `got ${written}, which has two readings; write ${inspectValue(asDecimal)} or ${inspectValue(asThousands)}`,
      );
    }
    return Number(`${whole}.${decimals}`);
  }

  /** A decimal number, a fraction, or a whole number and a fraction (35 7/16, 35-7/16). */
  number(): number | undefined {
    const sign = this.match(/[+-] ?/y)?.startsWith('-') ? -1 : 1;
    const fraction = this.match(/\d{1,15} ?\/ ?\d{1,9}(?![\d.])/y);
    if (fraction) return sign * divide(fraction);
    const decimal = this.match(/(?:\d{1,40}(?:\.\d{0,40})?|\.\d{1,40})(?:[eE][+-]?\d{1,4}(?![a-zA-Z]))?/y);
    if (decimal === undefined) return undefined;
    const comma = this.#decimalComma(decimal);
    if (comma !== undefined) return sign * comma;
    const n = Number(decimal);
    if (/^\d+$/.test(decimal)) {
      const extra = this.match(/[ -]\d{1,9} ?\/ ?\d{1,9}(?![\d.])/y);
      if (extra) return sign * (n + divide(extra.slice(1)));
    }
    return sign * n;
  }
}

function divide(fraction: string): number {
  const [a, b] = fraction.split('/').map(Number) as [number, number];
  if (b === 0)
    throw new InputError(`got the fraction ${inspectValue(fraction)}, takes one whose lower number is not 0`);
  return a / b;
}
