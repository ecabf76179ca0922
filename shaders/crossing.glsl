layout(triangles) in;
in vec4 vAt[];

// The line in which the plane crosses this triangle. Each end is worked out from the lower point to
// the higher, whichever way the triangle runs, so that neighbours agree to the last bit.
bool crossing(out vec3 from, out vec3 to) {
  int found = 0;
  vec3 ends[2];
  for (int i = 0; i < 3; ++i) {
    vec4 a = vAt[i], b = vAt[(i + 1) % 3];
    if ((a.w > 0.0) == (b.w > 0.0)) continue;
    vec4 low = a.w > 0.0 ? b : a, high = a.w > 0.0 ? a : b;
    ends[found++] = mix(low.xyz, high.xyz, low.w / (low.w - high.w));
  }
  from = ends[0];
  to = ends[1];
  return found == 2;
}
