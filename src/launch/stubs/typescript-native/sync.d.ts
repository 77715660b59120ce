// Stands for the native compiler's client where a clone builds its declarations without the packages for tests; `npm test` checks
// against the client itself.
/* eslint-disable @typescript-eslint/no-explicit-any */
export const API: any;
export type API = any;
export const DiagnosticCategory: any;
export type Diagnostic = any;
export type Project = any;
export type Snapshot = any;
