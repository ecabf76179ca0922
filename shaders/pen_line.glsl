// An ink line between two points, of a steady width in pixels, less what is kept out of it. All
// lines end in ink.frag.
layout(triangle_strip, max_vertices = 4) out;
noperspective out float vAcross;  // pixels from the middle of the line
noperspective out float vAlong;   // pixels from where it begins
flat out vec3 vLine;              // half width in pixels, strength, selected

// What is seen, as fractions of the line.
float gFrom = 0.0, gTo = 1.0;

// Cuts off where a value is below zero that goes evenly from a to b.
void keep(float a, float b) {
  if (a < 0.0 && b < 0.0) gTo = -1.0;
  else if (a < 0.0) gFrom = max(gFrom, a / (a - b));
  else if (b < 0.0) gTo = min(gTo, a / (a - b));
}
vec2 pixelsOf(vec4 p) { return p.xy / max(p.w, 1e-3) * uViewport * 0.5; }

const float kMoment = 1e-5;  // what goes now is gone

void drawLine(vec4 from, vec4 to, float width, float strength, float selected) {
  if (gTo <= gFrom) return;
  vec4 a = mix(from, to, gFrom), b = mix(from, to, gTo);
  float halfWidth = width * 0.5 + 0.5;  // and a feather
  float reach = distance(pixelsOf(from), pixelsOf(to));
  for (int i = 0; i < 4; ++i) {
    vec2 corner = vec2(float(i >> 1), float(i & 1) * 2.0 - 1.0);
    gl_Position = thickLine(a, b, corner, halfWidth);
    vAcross = corner.y * halfWidth;
    vAlong = reach * mix(gFrom, gTo, corner.x);
    vLine = vec3(width * 0.5, strength, selected);
    EmitVertex();
  }
  EndPrimitive();
}
