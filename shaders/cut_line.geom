// The outline of a cut face, in ink, less what the clock or the section hides of it.
uniform float uWidth;

void main() {
  vec3 from, to;
  if (!crossing(from, to)) return;
  if (uCutKind != 0) {
    float a = timeAt(uPlacedFront, uPlacedTimes, from), b = timeAt(uPlacedFront, uPlacedTimes, to);
    keep(uTime - a, uTime - b);
  }
  if (uCutKind != 1) {
    float a = timeAt(uRemovedFront, uRemovedTimes, from);
    float b = timeAt(uRemovedFront, uRemovedTimes, to);
    keep(a - uTime - kMoment, b - uTime - kMoment);
  }
  if (uCutKind != 2) keep(-dot(uSection, vec4(from, 1.0)), -dot(uSection, vec4(to, 1.0)));
  float lift = pixelAt((from + to) * 0.5) * 1.1;
  drawLine(uViewProjection * vec4(from + towardsEye(from) * lift, 1.0),
           uViewProjection * vec4(to + towardsEye(to) * lift, 1.0), uWidth, 1.0, 0.0);
}
