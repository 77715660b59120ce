import { templateSheets, type TemplateOptions, type TemplateSheets } from '../../notes/template-sheets.js';
import { dangerLines } from '../piece-text.js';
import type { PieceView } from '../piece-view.js';
import { jointTemplates } from '../pictures/piece-pictures.js';

/** The joints of a piece at full size; what makes the piece unsafe stands on every sheet. */
export const pieceTemplates = (piece: PieceView, options: TemplateOptions): TemplateSheets =>
  templateSheets(jointTemplates(piece.graph), {
    title: piece.name,
    ...options,
    warnings: [...dangerLines(piece), ...(options.warnings ?? [])],
  });
