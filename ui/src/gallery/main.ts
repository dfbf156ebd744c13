import { mount } from 'svelte';
import '../tokens.css';
import '../base.css';
import '../parts.css';
import { speak } from '../words/words';
import Gallery from './Gallery.svelte';

await speak('en');

const target = document.getElementById('app');
if (target) mount(Gallery, { target });
