import { Refusal } from './refusal.ts';
import type { Answer } from './route.ts';

export function notesPage(_wish: Record<string, unknown>): Answer {
  throw new Refusal(501, 'notes');
}
