import { drawingStyle } from './drawing-style.js';

const LEFT_OUT = '.hit, .focus, .register, .opened';
const SPOKEN = /^(data-|aria-|role$|tabindex$)/;

/**
 * A drawing as it stands, as the address of a picture that needs nothing else: for a page where scripts do not run. Its
 * inks are those of light paper.
 */
export function pictureAddress(drawing: SVGSVGElement): string {
  const copy = drawing.cloneNode(true) as SVGSVGElement;
  for (const each of copy.querySelectorAll(LEFT_OUT)) each.remove();
  for (const each of [copy, ...copy.querySelectorAll('*')]) {
    for (const { name } of [...each.attributes]) if (SPOKEN.test(name)) each.removeAttribute(name);
  }
  const comments = document.createNodeIterator(copy, NodeFilter.SHOW_COMMENT);
  for (let each = comments.nextNode(); each !== null; each = comments.nextNode()) (each as Comment).remove();
  const style = document.createElementNS('http://www.w3.org/2000/svg', 'style');
  style.textContent = (drawingStyle.cssText.split('@media')[0] ?? '').replaceAll(':host', 'svg').replaceAll(/\s+/g, ' ');
  copy.prepend(style);
  const text = new XMLSerializer().serializeToString(copy).replaceAll(/>\s+</g, '><').replaceAll('"', "'");
  return `data:image/svg+xml,${text.replaceAll(/[%#<>&\n]/g, encodeURIComponent)}`;
}
