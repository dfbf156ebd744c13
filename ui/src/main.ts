import { mount } from 'svelte';
import './tokens.css';
import './base.css';
import './parts.css';
import App from './App.svelte';
import { backend } from './backend';

const target = document.getElementById('app');
if (target) mount(App, { target, props: { backend } });
