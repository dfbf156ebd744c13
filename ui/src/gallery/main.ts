import { mount } from 'svelte';
import '../tokens.css';
import '../base.css';
import '../parts.css';
import Gallery from './Gallery.svelte';

const target = document.getElementById('app');
if (target) mount(Gallery, { target });
