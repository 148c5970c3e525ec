/** Tells whoever holds this element; the event leaves every shadow root on its way up. */
export function tell(element: HTMLElement, name: string, detail?: unknown): void {
  element.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true }));
}
