/** A request the server turns down: status and one line that says what was wrong, what was got and what is taken. */
export class HttpError extends Error {
  constructor(
    readonly status: number,
    message: string,
    /** More for a program to read, for example the hash now on disk. */
    readonly detail: Readonly<Record<string, unknown>> = {},
  ) {
    super(message);
    this.name = 'HttpError';
  }
}
