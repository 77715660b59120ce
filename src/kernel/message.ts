/** One message of the Jupyter protocol, without what only a transport knows: frames, signature, routing identities. */
export interface JupyterMessage {
  channel: 'shell' | 'control' | 'stdin' | 'iopub';
  header: Record<string, unknown>;
  parent_header: Record<string, unknown>;
  metadata: Record<string, unknown>;
  content: Record<string, unknown>;
  buffers?: Uint8Array[];
}

/** Rich contents by media type, as in a notebook file: text as a string, JSON as a value, pictures in base64. */
export type MimeBundle = Record<string, unknown>;

/** An output as a notebook file (nbformat 4.5) stores it, and the two notices that change an earlier output. */
export type NbOutput =
  | { output_type: 'stream'; name: 'stdout' | 'stderr'; text: string }
  | {
      output_type: 'display_data';
      data: MimeBundle;
      metadata: Record<string, unknown>;
      transient?: { display_id?: string };
    }
  | {
      output_type: 'update_display_data';
      data: MimeBundle;
      metadata: Record<string, unknown>;
      transient: { display_id: string };
    }
  | {
      output_type: 'execute_result';
      execution_count: number;
      data: MimeBundle;
      metadata: Record<string, unknown>;
    }
  | { output_type: 'error'; ename: string; evalue: string; traceback: string[] }
  | { output_type: 'clear_output'; wait: boolean };
