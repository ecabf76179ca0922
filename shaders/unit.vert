// One brick or block, or the mortar about it, out of 16 bytes: see viewer/unit_instance.h. Which
// corner of it this is says the index: corner of its profile seen from the wall's face, 3 bits; 8 at
// the back; the face, from 16 on.
layout(location = 0) in uvec4 aUnit;
layout(location = 1) in vec2 aRake;

uniform samplerBuffer uElements;
uniform usamplerBuffer uLeaves;
uniform vec4 uWash[32];
uniform vec4 uJoint[32];
uniform vec4 uPattern[32];
uniform float uStage;
uniform int uSelected;
uniform int uSelectedUnit;
uniform int uNewestUnit;
uniform int uFirstUnit;   // of this call
uniform int uRaked;       // 1: those that are cut to a rake, 0: all others
uniform int uMortar;      // 1: the mortar
uniform float uUnitPixel; // size of a pixel from which leaves are drawn flat

out vec3 vPosition;
flat out vec3 vNormal;
flat out vec3 vWash;
flat out vec4 vJoint;
flat out vec4 vPattern;
flat out vec4 vFrame;
flat out vec4 vState;
flat out uvec4 vRows;
flat out uvec4 vColumns;

const float kTenth = 1e-4;
const float kNewest = 0.5;     // of the tint of what is selected
const float kRecess = 0.0035;   // of the mortar behind the face: common practice, no source
const float kIntoJoint = 0.015; // mortar reaches so far, into the unit next to it

vec4 leafFloats(int leaf, int texel) { return uintBitsToFloat(texelFetch(uLeaves, leaf + texel)); }

void main() {
  int piece = int(aUnit.w >> 20 & 7u);
  float appears = uintBitsToFloat(aUnit.z);
  int element = int(aUnit.w & 0xfffffu);
  vec4 frame = texelFetch(uElements, element * 2);
  vec4 kind = texelFetch(uElements, element * 2 + 1);
  int leaf = int(kind.x) - 2;
  uvec4 rows = texelFetch(uLeaves, leaf), columns = texelFetch(uLeaves, leaf + 1);
  vec4 how = leafFloats(leaf, 2);  // skews, side of the inside, usual bed
  vec4 depth = leafFloats(leaf, 4 + int(aUnit.w >> 23 & 7u));

  int s0q = int(columns.x) + int(aUnit.x & 0xfffffu), z0q = int(rows.x) + int(aUnit.y & 0x3ffffu);
  float s0 = float(s0q) * kTenth, z0 = float(z0q) * kTenth;
  float s1 = s0 + float(aUnit.x >> 20 | aUnit.y >> 30 << 12) * kTenth;
  float z1 = z0 + float(aUnit.y >> 18 & 0xfffu) * kTenth;
  vec2 along = frame.zw, inward = vec2(-along.y, along.x) * how.z;
  float d0 = depth.x, d1 = depth.y;
  vec2 rake = aRake;
  vec2 middle = frame.xy + along * (0.5 * (s0 + s1));
  float pixel = pixelAt(vec3(middle, z0));
  bool start = (aUnit.w & 0x4000000u) != 0u, end = (aUnit.w & 0x8000000u) != 0u;
  float bed = (aUnit.w & 0x10000000u) != 0u ? leafFloats(leaf, 3).w : how.w;
  // Far off a unit takes its joints with it and is painted as the flat face will be, which smooths
  // what is smaller than pixels.
  bool far = pixel > uUnitPixel;
  if (far) {
    s0 -= start ? kIntoJoint : 0.0;
    s1 += end ? kIntoJoint : 0.0;
    z0 -= bed;
  } else if (uMortar != 0) {
    // Shallower towards where leaves are drawn flat, so that nothing jumps there; never so shallow
    // that the faces meet in the depth buffer.
    float recess = mix(kRecess, 0.0008, smoothstep(0.4, 1.0, pixel / max(uUnitPixel, 1e-6)));
    recess = clamp(pixel * 0.2, recess, 0.02);
    d0 = depth.z == depth.x ? depth.x + recess : depth.z;
    d1 = depth.w == depth.y ? depth.y - recess : depth.w;
    s0 += start ? -kIntoJoint : recess;
    s1 += end ? kIntoJoint : -recess;
    z0 -= bed + 0.001;
    z1 -= 0.0005;
    rake -= 0.0005;
  }
  // The profile: along the bottom, up, and back over the top in two.
  vec2 at[5] = vec2[5](vec2(s0, z0), vec2(s1, z0), vec2(s1, z1), vec2(0.5 * (s0 + s1), z1), vec2(s0, z1));
  if (uRaked != 0) {
    float fall = rake.y - rake.x, reach = max(s1 - s0, 1e-4);
    at[2].y = clamp(rake.y, z0, z1);
    at[4].y = clamp(rake.x, z0, z1);
    bool turns = (rake.x > z1) != (rake.y > z1);
    at[3] = turns ? vec2(s0 + reach * (z1 - rake.x) / fall, z1) : 0.5 * (at[2] + at[4]);
    // Where the slope comes down to the bed.
    float foot = s0 + reach * clamp((z0 - rake.x) / (abs(fall) < 1e-6 ? 1.0 : fall), 0.0, 1.0);
    if (rake.y < z0) at[1].x = at[2].x = foot;
    if (rake.x < z0) at[0].x = at[4].x = foot;
  }
  int corner = gl_VertexID & 7, face = gl_VertexID >> 4;
  if (how.z < 0.0) {
    // The wall runs the other way round: swap the ends, so that faces keep their fronts outside.
    corner = corner == 0 ? 1 : corner == 1 ? 0 : corner == 2 ? 4 : corner == 4 ? 2 : corner;
    face = face == 3 ? 6 : face == 6 ? 3 : face == 4 ? 5 : face == 5 ? 4 : face;
  }
  bool back = (gl_VertexID & 8) != 0;
  vec2 p = at[corner];
  float d = back ? d1 : d0;
  bool mitredStart = (aUnit.w & 0x20000000u) != 0u, mitredEnd = (aUnit.w & 0x40000000u) != 0u;
  if (mitredStart && (corner == 0 || corner == 4)) p.x += (d - depth.x) * how.x;
  if (mitredEnd && (corner == 1 || corner == 2)) p.x += (d - depth.x) * how.y;
  vec3 position = vec3(frame.xy + along * p.x + inward * d, p.y);

  // In the wall's own directions: along, inward, up.
  vec3 own = face == 0 ? vec3(0, -1, 0) : face == 1 ? vec3(0, 1, 0) : face == 2 ? vec3(0, 0, -1)
           : face == 3 ? (mitredEnd ? normalize(vec3(1, -how.y, 0)) : vec3(1, 0, 0))
           : face == 6 ? (mitredStart ? normalize(vec3(-1, how.x, 0)) : vec3(-1, 0, 0)) : vec3(0, 0, 1);
  if (uRaked != 0 && (face == 4 || face == 5)) {
    vec2 slope = face == 4 ? at[2] - at[3] : at[3] - at[4];
    own = normalize(vec3(-slope.y, 0, slope.x + 1e-6));
  }
  vNormal = vec3(along * own.x + inward * own.y, own.z);

  int material = int(-kind.z);
  vec4 joint = uJoint[material], pattern = uPattern[material];
  vWash = uMortar != 0 ? joint.rgb
                       : unitWash(uWash[material].rgb, pattern.w,
                                  (uint(s0q) ^ columns.w) & 0xfffffu, z0q);
  vJoint = joint;
  vPattern = vec4(0);
  vFrame = frame;
  float now = appears >= uStage ? 1.0 : 0.0;
  bool selected = uSelectedUnit >= 0 ? uFirstUnit + gl_InstanceID == uSelectedUnit : element == uSelected;
  float tint = selected ? 1.0 : uNewestUnit >= 0 && uFirstUnit + gl_InstanceID == uNewestUnit ? kNewest : 0.0;
  vState = vec4(-2.0 - float(uMortar != 0 ? 0 : piece), 0.0, now, uMortar == 0 ? tint : 0.0);
  vRows = vColumns = uvec4(0u);
  if (far) {
    vec4 mean = leafFloats(leaf, 3);
    vWash = uWash[material].rgb;
    vJoint.w = mean.z;
    vPattern = vec4(mean.xy, how.z, pattern.w);
    vState.x = -1.0;
    vRows = rows;
    vColumns = columns;
  }
  vPosition = position;
  gl_Position = uViewProjection * vec4(position, 1.0);
  clipAt(position, vec2(appears, 1e30));
  // Not laid yet, or the other call's.
  bool other = (piece == 6) != (uRaked != 0) || (far && uMortar != 0);
  if (appears > uTime || other) gl_Position = vec4(2.0, 2.0, 2.0, 1.0);
}
