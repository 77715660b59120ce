import { compilerVersion, packageVersion } from '../dist-path.js';

/** The reply to kernel_info_request. */
export const kernelInfo = {
  status: 'ok',
  protocol_version: '5.3',
  implementation: 'reckoner',
  implementation_version: packageVersion,
  banner: `Joiner's Reckoner ${packageVersion}: TypeScript cells, Node ${process.version.slice(1)}`,
  language_info: {
    name: 'typescript',
    version: compilerVersion(),
    mimetype: 'text/typescript',
    file_extension: '.ts',
    pygments_lexer: 'typescript',
    codemirror_mode: { name: 'javascript', typescript: true },
    nbconvert_exporter: 'script',
  },
  help_links: [],
  debugger: false,
  supported_features: [] as string[],
};
