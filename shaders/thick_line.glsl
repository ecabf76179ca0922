// A line of a width in pixels, as a quad. corner: x 0..1 along, y -1..1 across.
vec4 thickLine(vec4 a, vec4 b, vec2 corner, float halfWidth) {
  const float kNear = 1e-3;  // w in front of the eye; a line through the eye's plane is cut there
  if (a.w < kNear) a = mix(a, b, clamp((kNear - a.w) / max(b.w - a.w, 1e-9), 0.0, 1.0));
  if (b.w < kNear) b = mix(b, a, clamp((kNear - b.w) / max(a.w - b.w, 1e-9), 0.0, 1.0));
  vec2 along = (b.xy / b.w - a.xy / a.w) * uViewport;
  along = dot(along, along) > 1e-12 ? normalize(along) : vec2(1.0, 0.0);
  vec2 across = vec2(-along.y, along.x);
  vec4 at = mix(a, b, corner.x);
  // Half a width longer at both ends, so that lines close at corners.
  vec2 off = (across * corner.y + along * (corner.x * 2.0 - 1.0) * 0.5) * halfWidth;
  at.xy += off * 2.0 / uViewport * at.w;
  return at;
}
