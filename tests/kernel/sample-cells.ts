// A session and its outputs, for the tests of this folder.
import {
  createSession,
  type CellOutcome,
  type CellSession,
  type NbOutput,
} from '../../src/kernel/session.js';

export interface Ran extends CellOutcome {
  outputs: NbOutput[];
  text: string;
  result: string | undefined;
}

export async function openNotebook(
  cwd: string,
): Promise<{ session: CellSession; run(code: string): Promise<Ran> }> {
  const session = await createSession({ cwd });
  return {
    session,
    async run(code) {
      const outputs: NbOutput[] = [];
      const outcome = await session.run(code, (output) => outputs.push(output));
      const text = outputs.map((o) => (o.output_type === 'stream' ? o.text : '')).join('');
      const shown = outputs.find((o) => o.output_type === 'execute_result');
      return {
        ...outcome,
        outputs,
        text,
        result: shown?.output_type === 'execute_result' ? String(shown.data['text/plain']) : undefined,
      };
    },
  };
}
