// Edges as ink lines of a steady width.
layout(lines) in;
layout(triangle_strip, max_vertices = 4) out;
in vec4 vClip[];
in vec3 vAt[];
in vec2 vMoments[];
in vec4 vPen[];

uniform float uWidth;  // pixels

uniform float uStrength;

#ifndef STILL
out vec3 vPosition;
out vec2 vTimes;
#endif
noperspective out float vAcross;  // pixels from the middle of the line
flat out vec3 vLine;              // half width in pixels, strength, selected

void main() {
  if (max(vPen[0].w, vPen[1].w) < 0.5) return;
  float width = vPen[0].x * uWidth;
  float halfWidth = width * 0.5 + 0.5;  // and a feather
  for (int i = 0; i < 4; ++i) {
    vec2 corner = vec2(float(i >> 1), float(i & 1) * 2.0 - 1.0);
    gl_Position = thickLine(vClip[0], vClip[1], corner, halfWidth);
#ifndef STILL
    vPosition = mix(vAt[0], vAt[1], corner.x);
    vTimes = mix(vMoments[0], vMoments[1], corner.x);
#endif
    vAcross = corner.y * halfWidth;
    vLine = vec3(width * 0.5, min(1.0, width) * vPen[0].y * uStrength, vPen[0].z);
    EmitVertex();
  }
  EndPrimitive();
}
