import { MediaQuery } from 'svelte/reactivity';

/** Whether there is room for a panel beside the sheet; the same width at which `Sheet` draws one. */
export const desk = new MediaQuery('(min-width: 1000px)');
