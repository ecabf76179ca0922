// Sun, its shadow, and the open sky, for a drawing: high key, soft, never black.
uniform vec3 uSun;            // towards it
uniform mat4 uShadowMatrix;   // local metres to shadow map, 0..1
uniform sampler2DShadow uShadowMap;
uniform float uShadowTexel;   // a texel in metres; 0: no shadows
uniform sampler2D uSkyMap;    // heights from straight above, 0..1 between uSkyBox's low and high
uniform vec4 uSkyBox;         // x, y of its corner; 1 / width, 1 / depth
uniform vec2 uSkyHeights;     // low, high - low

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

// How much of the sky is seen, from the heights about: dark in corners, digs and under floors.
float openSky(vec3 p, vec3 n) {
  // Off the wall by more than the reach, so that a face is not shaded by what it belongs to.
  vec2 at = (p.xy + n.xy * 0.65 - uSkyBox.xy) * uSkyBox.zw;
  float h = p.z + 0.05;
  float shade = 0.0;
  vec2 reach = uSkyBox.zw * 0.55;
  shade += clamp((uSkyHeights.x + uSkyHeights.y * texture(uSkyMap, at + reach * vec2(1, 0)).r - h), 0.0, 1.2);
  shade += clamp((uSkyHeights.x + uSkyHeights.y * texture(uSkyMap, at + reach * vec2(-0.5, 0.87)).r - h), 0.0, 1.2);
  shade += clamp((uSkyHeights.x + uSkyHeights.y * texture(uSkyMap, at + reach * vec2(-0.5, -0.87)).r - h), 0.0, 1.2);
  return 1.0 - 0.10 * shade;
}

// Linear light to what screens take.
vec3 encoded(vec3 c) {
  return mix(c * 12.92, 1.055 * pow(max(c, vec3(0.0)), vec3(1.0 / 2.4)) - 0.055, step(0.0031308, c));
}
