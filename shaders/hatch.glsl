// Fills of cut faces, told apart without colour: after ISO 128 and BS 1192 practice. Coordinates
// are metres in the plane of the cut; `s` is the spacing at which strokes stay readable.
uniform int uHatch;  // viewer::Hatch

float stroke(float d, float period, float width, float px) {
  return lineCover(nearestTo(d, period), width, px);
}

float hatchCover(vec2 q, float s, float px) {
  float rise = (q.x + q.y) * 0.7071, fall = (q.x - q.y) * 0.7071;
  float w = max(0.05 * s, 0.45 * px);
  if (uHatch == 1) return stroke(rise, s, w, px);
  if (uHatch == 2) return max(stroke(rise, s * 1.8, w, px), stroke(rise + s * 0.45, s * 1.8, w, px));
  if (uHatch == 3) {
    // Dots and the odd triangle of stone.
    vec2 cell = floor(q / s), in_ = q - (cell + 0.5) * s;
    vec2 shift = vec2(toneOf(cell), toneOf(cell + 17.0)) * s * 0.6;
    vec2 d = in_ - shift;
    float dot_ = clamp((0.055 * s - length(d)) / px + 0.5, 0.0, 1.0);
    float side = max(abs(d.x) * 0.866 + d.y * 0.5, -d.y) - 0.13 * s;
    float stone = clamp((w - abs(side)) / px + 0.5, 0.0, 1.0);
    return toneOf(cell + 5.0) > 0.22 ? stone : dot_;
  }
  if (uHatch == 4) {
    // Groups of three strokes; every other patch leans the other way.
    float patch_ = s * 3.0;
    vec2 cell = floor(vec2(rise, fall) / patch_);
    vec2 in_ = vec2(rise, fall) - cell * patch_;
    bool turned = mod(cell.x + cell.y, 2.0) > 0.5;
    float d = turned ? in_.y : in_.x, along = turned ? in_.x : in_.y;
    float inside = step(0.08 * patch_, along) * step(along, 0.92 * patch_);
    return stroke(d - s * 0.5, s, w, px) * inside;
  }
  if (uHatch == 5) {
    // Broken stones: the walls between scattered points.
    vec2 g = q / (s * 1.2);
    vec2 cell = floor(g);
    float first = 9.0, second = 9.0;
    for (int i = 0; i < 9; ++i) {
      vec2 c = cell + vec2(float(i % 3) - 1.0, float(i / 3) - 1.0);
      vec2 at = c + 0.5 + vec2(toneOf(c), toneOf(c + 31.0)) * 0.8;
      float d = distance(g, at);
      second = min(second, max(first, d));
      first = min(first, d);
    }
    return clamp((w - (second - first) * s * 0.6) / px + 0.5, 0.0, 1.0);
  }
  if (uHatch == 6) {
    // Loops of quilt.
    float x = nearestTo(q.x, s * 1.4) / s;
    float wave = abs(nearestTo(q.y + x * x * s * 0.9, s * 1.0));
    return clamp((w - abs(wave - 0.25 * s)) / px + 0.5, 0.0, 1.0);
  }
  if (uHatch == 7) {
    float bend = q.y + 0.22 * s * sin(q.x / s * 1.7);
    return stroke(bend + 0.25 * q.x, s * 0.6, w, px);
  }
  if (uHatch == 8) return stroke(rise, s * 0.5, w, px);
  return uHatch == 9 ? 1.0 : 0.0;
}
