// Units that are not whole, marked on request: each kind by a colour of its own and by a pattern,
// so that it is told apart without colour too. Colours of Okabe and Ito's set.
uniform float uMarkCuts;  // 1: they are marked

// Kinds are model::Piece: 1 half, 2 three-quarter, 3 closer, 4 cut, 5 split, 6 raked, 7 special.
vec3 markColour(int piece) {
  return piece <= 2   ? vec3(0.871, 0.776, 0.054)
         : piece == 3 ? vec3(0.093, 0.457, 0.815)
         : piece == 4 ? vec3(0.000, 0.168, 0.445)
         : piece == 5 ? vec3(0.604, 0.191, 0.386)
         : piece == 6 ? vec3(0.000, 0.342, 0.171)
                      : vec3(0.791, 0.347, 0.000);
}

float nearestTo(float x, float period) { return x - period * floor(x / period + 0.5); }

float strokes(float x, float period, float px) {
  float width = 0.3 * period;
  float share = clamp((0.5 * width + 0.5 * px - abs(nearestTo(x, period))) / px, 0.0, 1.0);
  return mix(share, 0.3, clamp(2.0 * px / period - 0.5, 0.0, 1.0));
}

vec3 marked(vec3 colour, int piece, vec2 at, float px) {
  if (uMarkCuts < 0.5 || piece == 0) return colour;
  float rise = (at.x + at.y) * 0.7071, fall = (at.x - at.y) * 0.7071;
  float cover = piece <= 2   ? strokes(at.x, 0.036, px)
                : piece == 3 ? strokes(at.x, 0.015, px)
                : piece == 4 ? strokes(rise, 0.024, px)
                : piece == 5 ? strokes(at.y, 0.012, px)
                : piece == 6 ? strokes(fall, 0.024, px)
                             : max(strokes(rise, 0.03, px), strokes(fall, 0.03, px));
  vec3 flat_ = mix(colour, markColour(piece), 0.72);
  return mix(flat_, flat_ * 0.35, cover);
}
