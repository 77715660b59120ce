/** A thing on the page that holds one input. `value` is undefined where nothing is written. */
export interface Control {
  readonly element: HTMLElement;
  value(): unknown;
}
