// The outline of a cut face, in ink.
layout(triangle_strip, max_vertices = 4) out;
uniform float uWidth;
out vec3 vPosition;
out float vAcross;

void main() {
  vec3 from, to;
  if (!crossing(from, to)) return;
  float halfWidth = uWidth * 0.5 + 0.5;
  float lift = pixelAt((from + to) * 0.5) * 1.1;
  vec4 a = uViewProjection * vec4(from + towardsEye(from) * lift, 1.0);
  vec4 b = uViewProjection * vec4(to + towardsEye(to) * lift, 1.0);
  for (int i = 0; i < 4; ++i) {
    vec2 corner = vec2(float(i >> 1), float(i & 1) * 2.0 - 1.0);
    gl_Position = thickLine(a, b, corner, halfWidth);
    vPosition = mix(from, to, corner.x);
    vAcross = corner.y * halfWidth * gl_Position.w;
    EmitVertex();
  }
  EndPrimitive();
}
