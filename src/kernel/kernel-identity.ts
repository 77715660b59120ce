/** The kernel's name and language, as kernelspecs, replies and notebook files state them. */
import { compilerVersion } from './dist-path.js';

export const kernelName = 'reckoner';
export const displayName = "Joiner's Reckoner (TypeScript)";

/** `language_info` of the protocol and of notebook files. The keys are sorted, as files keep them. */
export const languageInfo = {
  codemirror_mode: { name: 'javascript', typescript: true },
  file_extension: '.ts',
  mimetype: 'text/typescript',
  name: 'typescript',
  nbconvert_exporter: 'script',
  pygments_lexer: 'typescript',
  version: compilerVersion(),
} as const;

/** What a notebook file says of this kernel. */
export const kernelMetadata = {
  kernelspec: { display_name: displayName, language: 'typescript', name: kernelName },
  language_info: languageInfo,
} as const;
