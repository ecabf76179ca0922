// Fans from one point in the plane: drawn an odd number of times, a pixel is inside.
layout(triangle_strip, max_vertices = 3) out;
uniform vec3 uAnchor;
out vec3 vPosition;

void put(vec3 p) {
  vPosition = p;
  gl_Position = uViewProjection * vec4(p, 1.0);
  EmitVertex();
}

void main() {
  vec3 from, to;
  if (!crossing(from, to)) return;
  put(uAnchor);
  put(from);
  put(to);
  EndPrimitive();
}
