/** Where the page's requests go and where its pages are: a notebook server, or the page itself in a site without one. */
export interface PageBackend {
  fetch(input: RequestInfo | URL, init?: RequestInit): Promise<Response>;
  readonly WebSocket: typeof WebSocket;
  /** Whether requests carry the key of a run of the server. */
  readonly keyed: boolean;
  readonly homeAddress: string;
  notebookAddress(path: string): string;
  /** The path of the notebook that this page shows. */
  openNotebook(): string;
  /** A file of the page's own build. */
  assetAddress(name: string): string;
  referenceAddress(recipe: string): string;
  /** One sentence at the foot of the first page. */
  readonly placeWords: string;
}
