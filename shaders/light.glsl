// Sun, its shadow, and the open sky, for a drawing: high key, soft, never black.
uniform vec3 uSun;            // towards it
uniform mat4 uShadowMatrix;   // local metres to shadow map, 0..1
uniform sampler2DShadow uShadowMap;
uniform float uShadowTexel;   // a texel in metres; 0: no shadows
uniform sampler2D uSkyMap;    // heights from straight above, 0..1 down from the highest
uniform vec4 uSkyBox;         // x, y of its corner; 1 / width, 1 / depth
uniform vec2 uSkyHeights;     // at depth 0, and by how much it changes to depth 1
uniform float uSkyShade;      // how dark a metre of wall beside makes it

float sunlight(vec3 p, vec3 n) {
  float facing = dot(n, uSun);
  if (uShadowTexel <= 0.0) return max(facing, 0.0);
  // Stepping off the surface along its normal costs less shape than a depth bias does.
  vec3 from = p + n * (uShadowTexel * 1.6);
  vec3 at = (uShadowMatrix * vec4(from, 1.0)).xyz;
  vec2 texel = 0.9 / vec2(textureSize(uShadowMap, 0));
  float lit = texture(uShadowMap, vec3(at.xy + texel * vec2(-0.4, -1.0), at.z)) +
              texture(uShadowMap, vec3(at.xy + texel * vec2(1.0, -0.4), at.z)) +
              texture(uShadowMap, vec3(at.xy + texel * vec2(0.4, 1.0), at.z)) +
              texture(uShadowMap, vec3(at.xy + texel * vec2(-1.0, 0.4), at.z));
  return max(facing, 0.0) * lit * 0.25;
}

float above(vec2 at, float h) {
  return clamp(uSkyHeights.x + uSkyHeights.y * texture(uSkyMap, at).r - h, 0.0, 1.2);
}

// How much of the sky is seen, from the heights about: dark in corners, digs and under floors.
float openSky(vec3 p, vec3 n) {
  // Off the wall by more than the reach, so that a face is not shaded by what it belongs to.
  vec2 at = (p.xy + n.xy * 0.9 - uSkyBox.xy) * uSkyBox.zw;
  float h = p.z + 0.05;
  float shade = 0.0;
  // Three ways out at three distances, so that no one step shows on the ground.
  shade += above(at + uSkyBox.zw * vec2(0.35, 0.1), h);
  shade += above(at + uSkyBox.zw * vec2(-0.35, 0.5), h);
  shade += above(at + uSkyBox.zw * vec2(-0.4, -0.75), h);
  return 1.0 - uSkyShade * shade;
}

// Linear light to what screens take.
vec3 encoded(vec3 c) {
  return mix(c * 12.92, 1.055 * pow(max(c, vec3(0.0)), vec3(1.0 / 2.4)) - 0.055, step(0.0031308, c));
}
