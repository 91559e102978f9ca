// A signature drawn by finger, pen or mouse, sent as whole numbers: strokes of points, 0 to 1000 across and 0 to 300 down.
const MOST_POINTS = 4000;
addEventListener('DOMContentLoaded', () => {
  const box = document.querySelector('[data-signing]');
  if (!box) return;
  const pad = box.querySelector('canvas'), field = box.querySelector('[name=strokes]'), ink = pad.getContext('2d');
  const manners = [...document.querySelectorAll('[name=manner]')];
  let strokes = [];
  try { strokes = JSON.parse(field.value || '[]'); } catch { strokes = []; }
  let drawing = false;
  box.hidden = false;

  const draw = () => {
    ink.clearRect(0, 0, pad.width, pad.height);
    ink.strokeStyle = '#111111'; ink.lineWidth = 5; ink.lineCap = 'round'; ink.lineJoin = 'round';
    for (const stroke of strokes) {
      ink.beginPath();
      stroke.forEach(([x, y], i) => i ? ink.lineTo(x, y) : ink.moveTo(x, y));
      if (stroke.length === 1) ink.lineTo(stroke[0][0] + 1, stroke[0][1]);
      ink.stroke();
    }
  };
  const point = event => {
    const seen = pad.getBoundingClientRect();
    const within = (value, most) => Math.max(0, Math.min(most, Math.round(value)));
    return [within((event.clientX - seen.left) * pad.width / seen.width, pad.width),
      within((event.clientY - seen.top) * pad.height / seen.height, pad.height)];
  };
  const choose = manner => manners.forEach(one => { if (one.value === manner) one.checked = true; });

  pad.addEventListener('pointerdown', event => {
    if (!event.isPrimary) return;
    event.preventDefault();
    pad.setPointerCapture(event.pointerId);
    drawing = true;
    choose('DRAWN');
    strokes.push([point(event)]);
    draw();
  });
  pad.addEventListener('pointermove', event => {
    if (!drawing || !event.isPrimary || strokes.reduce((sum, stroke) => sum + stroke.length, 0) >= MOST_POINTS) return;
    strokes[strokes.length - 1].push(point(event));
    draw();
  });
  const lift = () => {
    if (!drawing) return;
    drawing = false;
    field.value = JSON.stringify(strokes);
  };
  pad.addEventListener('pointerup', lift);
  pad.addEventListener('pointercancel', lift);
  box.querySelector('[data-clear]').addEventListener('click', () => {
    strokes = [];
    field.value = '';
    draw();
  });
  draw();
});
