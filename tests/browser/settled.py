"""When a page has come to rest: its kernel has answered all it was asked, no timer is due, and nothing moves any more.

A fixed wait is too long on a quick machine and too short on a busy one, so the page itself is watched from its start.
"""

WATCH_FROM_THE_START = """() => {
  const SOON = 250;  // ms: a timer that is due later, such as that of "Waiting for the kernel", is not waited for
  const asked = new Map();  // each request that a kernel has not finished, by its id: the socket it went through
  const timers = new Map();  // each timer that is due soon: who set it
  const scripts = new Set();  // anywidget makes an address for the script of a control, and ends it when it is loaded
  const fetched = new Set();
  const rest = window.shopRest = {asked, timers, scripts, fetched, heard: 0};

  // Of a message to or from a kernel: the parts that begin with its channel, header and the header it answers.
  // https://jupyter-server.readthedocs.io/en/latest/developers/websocket-protocols.html, "v1.kernel.websocket..."
  function read(data) {
    if (typeof data === 'string') {
      const {header, parent_header: parent, content} = JSON.parse(data);
      return {header, parent, content};
    }
    const buffer = ArrayBuffer.isView(data) ? data.slice().buffer : data;
    const view = new DataView(buffer);
    const starts = Array.from({length: view.getUint32(0, true)}, (_, number) => view.getUint32(8 + 8 * number, true));
    const part = (number) => JSON.parse(new TextDecoder().decode(buffer.slice(starts[number], starts[number + 1])));
    return {header: part(1), parent: part(2), content: part(4)};
  }

  const known = new WeakSet();
  const forget = (socket) => {
    for (const [id, through] of asked) if (through === socket) asked.delete(id);
  };
  const send = WebSocket.prototype.send;
  WebSocket.prototype.send = function (data) {
    if (/\\/api\\/kernels\\/.*\\/channels/.test(this.url)) {
      if (!known.has(this)) {
        known.add(this);
        this.addEventListener('close', () => forget(this));
        this.addEventListener('message', (event) => {
          const {header, parent, content} = read(event.data);
          if (header.msg_type !== 'status') return;
          rest.heard += 1;
          if (content.execution_state === 'idle') asked.delete(parent.msg_id);
          if (['restarting', 'dead'].includes(content.execution_state)) forget(this);
        });
      }
      const {header} = read(data);
      if (header.msg_type !== 'input_reply') asked.set(header.msg_id, this);
    }
    return send.call(this, data);
  };

  const {setTimeout: later, clearTimeout: never} = window;
  window.setTimeout = (does, pause = 0, ...given) => {
    if (pause > SOON || typeof does !== 'function') return later(does, pause, ...given);
    const timer = later((...those) => { timers.delete(timer); does(...those); }, pause, ...given);
    timers.set(timer, new Error(`${pause} ms`));
    return timer;
  };
  // Either may end a timer: https://html.spec.whatwg.org/multipage/timers-and-user-prompts.html#dom-clearinterval
  window.clearTimeout = window.clearInterval = (timer) => { timers.delete(timer); never(timer); };

  const {createObjectURL: name, revokeObjectURL: end} = URL;
  URL.createObjectURL = (what) => {
    const address = name.call(URL, what);
    if (what.type === 'text/javascript') scripts.add(address);
    return address;
  };
  URL.revokeObjectURL = (address) => { scripts.delete(address); end.call(URL, address); };

  const {fetch} = window;
  window.fetch = (...wanted) => {
    const coming = fetch(...wanted);
    fetched.add(coming);
    const done = () => fetched.delete(coming);
    coming.then(done, done);
    return coming;
  };
}"""
"""Goes before every script of a page: keeps what is on its way to its kernels or its server, and what is due soon."""

AT_REST = """(limit) => new Promise((settled, failed) => {
  const FRAMES = 3;
  // Timers that follow one another, or were ended unseen, while for so long nothing is asked and nothing changes.
  const IDLE = {frames: 60, ms: 2_000};
  const {heard, ...awaited} = window.shopRest, begun = performance.now();
  if (!heard) failed(new Error('no kernel of this page was heard'));
  let quiet = 0, still = 0, since = begun;
  const stir = () => { quiet = still = 0; since = performance.now(); };
  const watcher = new MutationObserver(stir);
  watcher.observe(document, {childList: true, subtree: true, attributes: true, characterData: true});
  const look = () => {
    const open = Object.entries(awaited).filter(([, some]) => some.size).map(([what]) => what);
    if (open.some((what) => what !== 'timers')) stir();
    else still += 1;
    quiet = open.length ? 0 : quiet + 1;
    const now = performance.now(), spent = Math.round(now - begun);
    const rests = quiet > FRAMES || (still > IDLE.frames && now - since > IDLE.ms);
    if (!rests && spent < limit) {
      requestAnimationFrame(look);
      return;
    }
    watcher.disconnect();
    if (rests) settled(spent);
    else {
      const lines = ({stack}) => stack.split('\\n').toSpliced(1, 1).slice(0, 4).join(' ');
      const who = [...awaited.timers.values()].slice(0, 5).map(lines);
      const what = [...(still > 1 ? [] : ['the page moves']), ...open].join(', ');
      failed(new Error([`no rest in ${limit} ms: ${what}`, ...who].join('\\n')));
    }
  };
  requestAnimationFrame(look);
})"""
"""Waits for some frames in which nothing moved while nothing was on its way, or for two seconds in which nothing but
timers went on; gives how many ms that took."""
