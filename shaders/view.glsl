// Where the eye is, and how large a pixel is.
uniform mat4 uViewProjection;
uniform vec4 uEye;       // w = 1: the eye; w = 0: the direction towards it (parallel view)
uniform vec2 uViewport;  // pixels
uniform float uPixel;    // a pixel in metres at the target (parallel) or per metre of distance

vec3 towardsEye(vec3 p) { return normalize(uEye.xyz - p * uEye.w); }

// A pixel's size in metres at p.
float pixelAt(vec3 p) { return uEye.w > 0.0 ? distance(uEye.xyz, p) * uPixel : uPixel; }
