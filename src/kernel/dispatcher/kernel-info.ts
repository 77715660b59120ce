import { packageVersion } from '../dist-path.js';
import { languageInfo } from '../kernel-identity.js';

/** The reply to kernel_info_request. */
export const kernelInfo = {
  status: 'ok',
  protocol_version: '5.3',
  implementation: 'reckoner',
  implementation_version: packageVersion,
  banner: `Joiner's Reckoner ${packageVersion}: TypeScript cells, Node ${process.version.slice(1)}`,
  language_info: languageInfo,
  help_links: [],
  debugger: false,
  supported_features: [] as string[],
};
