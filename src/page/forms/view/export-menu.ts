import { tell } from '../../dialog.js';
import { dropMenu } from '../../drop-menu.js';
import { el } from '../../element.js';
import { download } from '../../server-api.js';
import type { AnswerDetails } from '../model/answer.js';
import type { AnswerPicture } from './answer-picture.js';

/** Takes the answer elsewhere: figures to the clipboard or as CSV, the picture as SVG or PNG. */
export function exportMenu(
  name: string,
  details: () => Promise<AnswerDetails>,
  picture: AnswerPicture,
): HTMLElement {
  return dropMenu('Save as…', 'button', [
    {
      words: 'Figures to the clipboard',
      act: async () => {
        await navigator.clipboard.writeText((await details()).clipboard);
        tell('The figures are in the clipboard: paste them into a spreadsheet.');
      },
    },
    { words: 'Figures as CSV', act: async () => download(`${name}.csv`, (await details()).csv, 'text/csv') },
    { words: 'Picture as SVG', act: () => download(`${name}.svg`, svgText(picture), 'image/svg+xml') },
    { words: 'Picture as PNG', act: async () => download(`${name}.png`, await pngOf(svgText(picture))) },
  ]);
}

/** The picture on a ground of its own, as it stands on the page. @throws Error where there is none */
function svgText(picture: AnswerPicture): string {
  const svg = picture.element.querySelector('svg');
  if (svg === null) throw new Error('this answer has no picture');
  const copy = svg.cloneNode(true) as SVGSVGElement;
  copy.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
  const ground = document.createElementNS('http://www.w3.org/2000/svg', 'rect');
  ground.setAttribute('width', '100%');
  ground.setAttribute('height', '100%');
  ground.setAttribute('fill', getComputedStyle(document.documentElement).getPropertyValue('--sheet').trim());
  copy.prepend(ground);
  return new XMLSerializer().serializeToString(copy);
}

/** Drawn at twice its size, sharp enough for print. */
async function pngOf(svg: string): Promise<Blob> {
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;
  await image.decode();
  const canvas = el('canvas', { width: String(2 * image.width), height: String(2 * image.height) });
  canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
  return new Promise((resolve, reject) =>
    canvas.toBlob((blob) =>
      blob === null ? reject(new Error('the picture cannot be drawn')) : resolve(blob),
    ),
  );
}
