// Where recipes look for it; the quantities below need it too.
export { attempt } from '../quantities/attempt.js';
