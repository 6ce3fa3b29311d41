import './state/plain-zod.ts';
import './look/fonts.css';
import './look/tokens.css';
import './look/base.css';
import { mount } from 'svelte';
import Page from './Page.svelte';
import { watchClosing } from './state/closing.ts';

watchClosing();
const target = document.getElementById('app');
if (target === null) throw new Error('index.html has no element "app"');
mount(Page, { target });
