// The clock of one thing at any point of it, for faces that have no vertices of their own.
uniform vec4 uPlacedFront;   // direction, low
uniform vec3 uPlacedTimes;   // high, from, to
uniform vec4 uRemovedFront;
uniform vec3 uRemovedTimes;
uniform int uCutKind;        // 0 placed, 1 removed, 2 section

float timeAt(vec4 front, vec3 times, vec3 p) {
  float f = (dot(front.xyz, p) - front.w) / max(times.x - front.w, 1e-6);
  return mix(times.y, times.z, clamp(f, 0.0, 1.0));
}

// Whether the fill of a cut is there, given that what it fills is.
bool hereNow(vec3 p) {
  if (uCutKind != 0 && uTime < timeAt(uPlacedFront, uPlacedTimes, p)) return false;
  if (uCutKind != 1 && uTime >= timeAt(uRemovedFront, uRemovedTimes, p)) return false;
  return uCutKind == 2 || !cutAway(p);
}
