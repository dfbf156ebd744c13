// The system's own print dialogue over one drawing of ours.

/**
 * Whether there is one here. The web view of Android has the function and no dialogue behind it; it names itself with
 * `; wv)`.
 */
export function canPrint(): boolean {
  return typeof window.print === 'function' && !navigator.userAgent.includes('; wv)');
}

/** Takes away what was printed before; a dialogue that nobody answered may have left it. */
let clear = () => {};

/**
 * Opens it with the drawing alone on a page of its own size, without a margin, so that a label printer gets the label and
 * nothing else.
 */
export function printDrawing(svg: string, widthMm: number, heightMm: number): void {
  clear();
  const page = document.createElement('div');
  page.className = 'printed';
  const root = page.attachShadow({ mode: 'open' });
  root.innerHTML = svg;
  const drawing = root.querySelector('svg');
  drawing?.setAttribute('width', `${widthMm}mm`);
  drawing?.setAttribute('height', `${heightMm}mm`);
  // A sheet made by script, because the page lets no inline style in.
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(`
    .printed { display: none; }
    @page { size: ${widthMm}mm ${heightMm}mm; margin: 0; }
    @media print {
      body > :not(.printed), #app > * { display: none !important; }
      html, body { height: auto; min-height: 0; background: none; }
      .printed { display: block; width: ${widthMm}mm; height: ${heightMm}mm; overflow: hidden; }
    }`);
  document.body.append(page);
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
  clear = () => {
    page.remove();
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== sheet);
    clear = () => {};
  };
  window.addEventListener('afterprint', () => clear(), { once: true });
  window.print();
}
