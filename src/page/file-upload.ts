import { ask, tell } from './dialog.js';
import { contentsAddress, messageOf, server, ServerError } from './server-api.js';

/** A name the server takes, from what was typed or uploaded. */
export const fileName = (words: string): string =>
  words
    .trim()
    .replace(/[\\/:*?"<>|\0]+/g, ' ')
    .replace(/^\.+/, '')
    .replace(/\s+/g, '-')
    .slice(0, 80);

/** Puts files into the folder; asks before one takes the place of another. */
export async function upload(files: FileList): Promise<void> {
  for (const file of Array.from(files)) {
    try {
      await uploadOne(fileName(file.name), await file.arrayBuffer());
    } catch (error) {
      tell(messageOf(error), 12);
    }
  }
}

async function uploadOne(name: string, content: ArrayBuffer): Promise<void> {
  const body = { type: 'file', format: 'base64', content: base64(new Uint8Array(content)) };
  try {
    await server.put(contentsAddress(name), { ...body, expected_hash: null });
    tell(`${name} is in the folder.`);
  } catch (error) {
    if (!(error instanceof ServerError) || error.status !== 409) throw error;
    const answer = await ask({
      title: `${name} is there already`,
      text: ['A file of this name is in the folder. Which one is to stay?'],
      choices: [
        { value: 'keep', words: 'Keep the one there', first: true },
        { value: 'replace', words: 'Put this one in its place', loses: true },
      ],
    });
    if (answer === 'replace') await server.put(contentsAddress(name), body);
  }
}

function base64(bytes: Uint8Array): string {
  let binary = '';
  for (let at = 0; at < bytes.length; at += 32768)
    binary += String.fromCharCode(...bytes.subarray(at, at + 32768));
  return btoa(binary);
}
