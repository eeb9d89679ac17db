// Shows one sheet in a browser: ?sheet=name, with &lang, &text, &motion as the kiosk would set them on the root.
import { createElement } from 'react';
import { createRoot } from 'react-dom/client';
import '#app/_ui/style/look.css';
import './sheets.css';
import { sheets } from './sheets.tsx';

const asked = new URLSearchParams(window.location.search);
const sheet = sheets[asked.get('sheet') ?? ''];
if (!sheet) throw new Error(`no such sheet; there are ${Object.keys(sheets).join(', ')}`);

const root = document.documentElement;
for (const name of ['text', 'motion', 'screen', 'reach']) {
  const wanted = asked.get(name);
  if (wanted) root.dataset[name] = wanted;
}
root.lang = asked.get('lang') ?? 'en';
root.dir = root.lang === 'ar' ? 'rtl' : 'ltr';

createRoot(document.getElementById('root') ?? document.body).render(createElement(sheet));
