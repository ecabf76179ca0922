// The tone of one brick or block. Near by it is asked for by the unit, far off by the face that it
// is seen in: both must give the same.
vec3 unitWash(vec3 wash, float variation, uint seed, int level) {
  uint h = seed * 0x9e3779b1u ^ uint(level) * 0x85ebca77u;
  h = (h ^ h >> 15) * 0x2c1b3c6du;
  h = (h ^ h >> 12) * 0x297a2d39u;
  h ^= h >> 15;
  // Two throws each: most units near the middle, few very light or dark.
  float tone = float((h & 255u) + (h >> 8 & 255u)) / 510.0 - 0.5;
  float warm = float((h >> 16 & 255u) + (h >> 24)) / 510.0 - 0.5;
  return wash * (1.0 + variation * (vec3(tone * 1.7) + vec3(0.35, 0.05, -0.5) * warm));
}
