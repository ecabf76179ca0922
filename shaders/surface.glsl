// The colour of a face of a material, in sun and shade.
uniform vec4 uCourse;    // x: level that courses count from; y: a pixel's hatch spacing, metres
uniform vec3 uInk;
uniform vec3 uPaper;
uniform vec4 uAccent;    // rgb, amount
uniform vec4 uLevel;     // rgb of the level plane's line; w: 1 when it is shown
uniform float uLevelAt;

struct Face {
  vec3 p, n;
  vec3 wash;
  vec4 joint;    // rgb, width
  vec4 pattern;  // period along, period up, stagger, variation; of a leaf not stagger but its side
  vec4 frame;    // where the bond starts, which way it runs
  // Bond phase + 2 when coursed, or -1 for a leaf, or -2 less its piece for a unit; cut face; built
  // now; selected.
  vec4 state;
  uvec4 rows, columns;  // of a leaf, from its table
};

// Coverage of a line of half width w round x = 0 by a pixel of width px; fades where lines run
// together, so that nothing crawls.
float lineCover(float x, float w, float px) {
  return clamp((w + 0.5 * px - abs(x)) / px, 0.0, 1.0) * min(1.0, 2.0 * w / px);
}

// How much of a pixel of width px is taken by bands of width w at every period, centred on zero:
// the exact share, so that fine courses stay even instead of crawling.
float bandCover(float x, float period, float w, float px) {
  vec2 ends = vec2(x - 0.5 * px, x + 0.5 * px) + 0.5 * w;
  vec2 turns = floor(ends / period);
  vec2 sum = turns * w + min(ends - turns * period, vec2(w));
  return (sum.y - sum.x) / px;
}

// A pixel's reach in x, whichever way the lines of equal x run on the screen.
float slope(float x) { return length(vec2(dFdx(x), dFdy(x))); }

float toneOf(vec2 cell) {
  vec2 h = fract(cell * vec2(0.7548777, 0.5698403));
  return fract((h.x + 0.31) * (h.y + 0.17) * 43.7 + h.x * 7.3) - 0.5;
}

// The bond of a leaf.
vec3 leafColour(Face f) {
  const float kInside = 0.005;  // so far in the unit begins whose end or top this is
  vec2 along = f.frame.zw, inward = vec2(-along.y, along.x) * f.pattern.z;
  vec2 at = vec2(dot(f.p.xy - f.frame.xy, along), f.p.z);
  vec2 px = max(vec2(slope(at.x), slope(at.y)), vec2(1e-5));
  vec2 q = at - kInside * vec2(dot(f.n.xy, along), f.n.z);
  InLeaf in_ = inLeaf(f.rows, f.columns, q.y, q.x, dot(f.n.xy, inward) > 0.5);
  vec2 size = px / f.pattern.xy;
  // Under two pixels to a course nothing can be told apart; single units go sooner.
  float courses = clamp((0.56 - size.y) / 0.16, 0.0, 1.0);
  vec2 fade = clamp(1.6 - 3.2 * size, 0.0, 1.0);
  vec2 mean = f.joint.w / f.pattern.xy;
  vec3 wash = unitWash(f.wash, f.pattern.w * fade.x * fade.y, in_.seed, in_.level);
  wash = marked(wash, in_.piece, at, max(px.x, px.y));
  float across = mix(mean.y, jointShare(in_.z, px.y, in_.joints.x, in_.joints.y), courses);
  float upright = mix(mean.x, jointShare(in_.s, px.x, in_.joints.z, in_.joints.w), fade.x * courses);
  return mix(wash, f.joint.rgb, across + upright - across * upright);
}

vec3 patterned(Face f) {
  if (f.state.x < -1.5) {
    vec2 at = vec2(dot(f.p.xy - f.frame.xy, f.frame.zw), f.p.z);
    return marked(f.wash, int(-1.5 - f.state.x), at, max(max(slope(at.x), slope(at.y)), 1e-5));
  }
  if (f.state.x < -0.5) return leafColour(f);
  bool level = abs(f.n.z) > 0.9;
  bool coursed = f.state.x >= 2.0;
  vec2 along = level ? f.frame.zw : normalize(vec2(-f.n.y, f.n.x) + vec2(1e-6, 0.0));
  vec2 from = f.p.xy - f.frame.xy;
  float u = dot(from, along);
  float up = (f.p.z - uCourse.x) * inversesqrt(max(1e-4, 1.0 - f.n.z * f.n.z));
  float v = level ? dot(from, vec2(-along.y, along.x)) : up;
  vec2 px = max(vec2(slope(u), level && coursed ? 1e-4 : slope(v)), vec2(1e-5));
  if (level && coursed) v = (floor((f.p.z - uCourse.x - f.joint.w) / f.pattern.y) + 0.5) * f.pattern.y;
  vec2 period = max(f.pattern.xy, vec2(1e-4));
  float row = floor(v / period.y);
  float odd = mod(row + f.state.x, 2.0);
  u += f.joint.w * 0.5 - f.pattern.z * period.x * odd;
  v += f.joint.w * 0.5;
  vec2 size = px / period;
  // Under two pixels to a course nothing can be told apart; single units go sooner.
  float courses = clamp((0.56 - size.y) / 0.16, 0.0, 1.0);
  vec2 fade = clamp(1.6 - 3.2 * size, 0.0, 1.0);
  // Speckle without joints is for far off: close to, its cells would show as squares.
  if (f.joint.w <= 0.0 && f.pattern.z <= 0.0) fade *= clamp(12.0 * size - 0.2, 0.0, 1.0);
  float tone = f.pattern.w * toneOf(vec2(floor(u / period.x), row)) * fade.x * fade.y;
  vec2 mean = f.joint.w / period;
  float across = mix(mean.y, bandCover(v, period.y, f.joint.w, px.y), courses);
  float upright = mix(mean.x, bandCover(u, period.x, f.joint.w, px.x), fade.x * courses);
  float joint = f.joint.w > 0.0 ? across + upright - across * upright : 0.0;
  return mix(f.wash * (1.0 + tone), f.joint.rgb, joint);
}

// The cut sides of the block of ground, as earth is drawn: groups of three short strokes at 45
// degrees on every side, every other group the other way.
vec3 cutEarth(Face f) {
  vec2 along = normalize(vec2(-f.n.y, f.n.x) + vec2(1e-6, 0.0));
  float run = dot(f.p.xy, along);
  vec2 q = vec2(run + f.p.z, run - f.p.z) * 0.7071;
  vec2 px = max(vec2(slope(q.x), slope(q.y)), vec2(1e-5));
  float s = uCourse.y * 1.25, group = 3.0 * s;
  vec2 cell = floor(q / group);
  vec2 part = q - cell * group;
  bool turned = mod(cell.x + cell.y, 2.0) > 0.5;
  float d = turned ? part.y : part.x, end = turned ? part.x : part.y;
  float wide = turned ? px.y : px.x, soft = turned ? px.x : px.y;
  float reach = clamp((0.42 * group - abs(end - 0.5 * group)) / soft + 0.5, 0.0, 1.0);
  // As wide as the pen, however obliquely the side is seen.
  float cover = bandCover(d - 0.5 * s, s, clamp(1.3 * wide, 0.04 * s, 0.2 * s), wide) * reach;
  // Seen along the side the strokes run together: then the tone that they make.
  cover = mix(0.11, cover, clamp((0.7 - max(wide, soft * 0.5) / s) / 0.35, 0.0, 1.0));
  return mix(f.wash, f.wash * 0.42, cover * 0.8);
}

vec3 shaded(Face f) {
  vec3 colour = f.state.y > 0.5 ? cutEarth(f) : patterned(f);
  // What stands already takes a step towards the paper, so that what is made or taken away now stands
  // out; not so far that a material could be taken for another.
  float grey = dot(colour, vec3(0.30, 0.59, 0.11));
  float old = 1.0 - f.state.z;
  colour = mix(mix(colour, vec3(grey), 0.08 * old), uPaper, 0.11 * old);
  colour = mix(colour, uAccent.rgb, f.state.w * uAccent.a);
  float sun = f.state.y > 0.5 ? 0.72 * max(dot(f.n, uSun), 0.0) + 0.25 : sunlight(f.p, f.n);
  float sky = (0.54 + 0.08 * f.n.z) * (f.state.y > 0.5 ? 1.0 : openSky(f.p, f.n));
  vec3 lit = colour * (vec3(0.96, 0.98, 1.06) * sky + vec3(1.05, 1.0, 0.92) * 0.57 * sun);
  float z = f.p.z - uLevelAt;
  float line = uLevel.w * clamp(1.6 - abs(z) / max(fwidth(f.p.z), 1e-4), 0.0, 1.0);
  return mix(lit, uLevel.rgb, line);
}
