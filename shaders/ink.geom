// Edges as ink lines of a steady width. What the clock or the section hides is cut off here: both
// change evenly along a line, so that no fragment needs to ask.
layout(lines) in;
layout(triangle_strip, max_vertices = 4) out;
in vec4 vClip[];
in vec3 vAt[];
in vec2 vMoments[];
in vec4 vPen[];

uniform float uWidth;  // pixels
uniform float uFaint;  // 1: what is coming, whatever the clock says
uniform float uStrength;

noperspective out float vAcross;  // pixels from the middle of the line
flat out vec3 vLine;              // half width in pixels, strength, selected

// What is seen, as fractions of the line.
float gFrom = 0.0, gTo = 1.0;

// Cuts off where a value is below zero that goes evenly from a to b.
void keep(float a, float b) {
  if (a < 0.0 && b < 0.0) gTo = -1.0;
  else if (a < 0.0) gFrom = max(gFrom, a / (a - b));
  else if (b < 0.0) gTo = min(gTo, a / (a - b));
}

void main() {
  if (max(vPen[0].w, vPen[1].w) < 0.5) return;
  if (uFaint < 0.5) {
    const float kMoment = 1e-5;  // what goes now is gone
    keep(uTime - vMoments[0].x, uTime - vMoments[1].x);
    keep(vMoments[0].y - uTime - kMoment, vMoments[1].y - uTime - kMoment);
  }
  keep(-dot(uSection, vec4(vAt[0], 1.0)), -dot(uSection, vec4(vAt[1], 1.0)));
  if (gTo <= gFrom) return;
  vec4 a = mix(vClip[0], vClip[1], gFrom), b = mix(vClip[0], vClip[1], gTo);
  float width = vPen[0].x * uWidth;
  float halfWidth = width * 0.5 + 0.5;  // and a feather
  for (int i = 0; i < 4; ++i) {
    vec2 corner = vec2(float(i >> 1), float(i & 1) * 2.0 - 1.0);
    gl_Position = thickLine(a, b, corner, halfWidth);
    vAcross = corner.y * halfWidth;
    vLine = vec3(width * 0.5, min(1.0, width) * vPen[0].y * uStrength, vPen[0].z);
    EmitVertex();
  }
  EndPrimitive();
}
