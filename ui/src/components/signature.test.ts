import { fireEvent, render, screen } from '@testing-library/svelte';
import { expect, it, vi } from 'vitest';
import SignaturePad, { type Stroke } from './SignaturePad.svelte';

const pad = (label: RegExp) => {
  const svg = screen.getByRole('img', { name: label });
  svg.getBoundingClientRect = () => ({ left: 0, top: 0, width: 400, height: 100 }) as DOMRect;
  svg.setPointerCapture = () => undefined;
  return svg;
};
const at = (clientX: number, clientY: number, pointerId = 1) => ({ clientX, clientY, pointerId, button: 0 });

it('keeps a stroke whole, in parts of the pad, and takes the last one back', async () => {
  const onchange = vi.fn((_: Stroke[]) => undefined);
  const view = render(SignaturePad, { strokes: [], onchange });
  const svg = pad(/Sign here/);
  await fireEvent.pointerDown(svg, at(40, 50));
  await fireEvent.pointerMove(svg, at(200, 25));
  await fireEvent.pointerMove(svg, at(900, 25, 2));
  await fireEvent.pointerUp(svg, at(200, 25));
  expect(onchange).toHaveBeenLastCalledWith([
    [
      [0.1, 0.5],
      [0.5, 0.25],
    ],
  ]);
  await view.rerender({ strokes: [[[0, 0]], [[1, 1]]], onchange });
  expect(screen.getByRole('img', { name: 'Signature, as drawn' })).toBeTruthy();
  await fireEvent.click(screen.getByRole('button', { name: 'Take the last stroke back' }));
  expect(onchange).toHaveBeenLastCalledWith([[[0, 0]]]);
  await fireEvent.click(screen.getByRole('button', { name: 'Start anew' }));
  expect(onchange).toHaveBeenLastCalledWith([]);
});

it('keeps no stroke that the phone took away', async () => {
  const onchange = vi.fn((_: Stroke[]) => undefined);
  render(SignaturePad, { strokes: [], onchange });
  const svg = pad(/Sign here/);
  await fireEvent.pointerDown(svg, at(40, 50));
  await fireEvent.pointerCancel(svg, at(60, 50));
  expect(onchange).not.toHaveBeenCalled();
});
