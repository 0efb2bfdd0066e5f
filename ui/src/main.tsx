import { render } from 'preact';
import { App } from './App.tsx';
import { session } from './state/here.ts';
import { listenForUndo } from './state/keys.ts';
import './styles/colours.css';
import './styles/base.css';
import './styles/layout.css';
import './styles/states.css';
import './styles/headline.css';
import './styles/findings.css';
import './styles/parts.css';
import './styles/drawing.css';
import './styles/chain.css';
import './styles/controls.css';
import './styles/charts.css';
import './styles/inputs.css';
import './styles/mechanism.css';
import './styles/spread.css';
import './styles/sheets.css';
import './styles/space.css';
import './styles/print.css';

const root = document.getElementById('page');
if (root) {
  render(<App />, root);
  listenForUndo(window);
  void session.load();
}
