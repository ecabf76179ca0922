// Every face of every standing thing.
layout(location = 0) in vec3 aPosition;
layout(location = 1) in vec3 aNormal;
layout(location = 2) in vec2 aTimes;
layout(location = 3) in uvec2 aWhat;  // element, material

uniform samplerBuffer uElements;  // two texels each: bond start and direction; kind
uniform usamplerBuffer uLeaves;   // see viewer/leaf_table.h
uniform vec4 uWash[32];           // by material: rgb, coursed
uniform vec4 uJoint[32];          // rgb, width
uniform vec4 uPattern[32];        // period along, period up, stagger, variation
uniform float uStage;
uniform int uSelected;
uniform int uNewest;
// Of the sheet at the end of what grows, which lies where that begins; else nothing.
uniform vec3 uShift;
uniform vec2 uTimesShift;

const float kNewest = 0.5;  // of the tint of what is selected

invariant gl_Position;  // the depth of depth.vert, to the last bit
out vec3 vPosition;
flat out vec3 vNormal;
flat out vec3 vWash;
flat out vec4 vJoint;
flat out vec4 vPattern;
flat out vec4 vFrame;
flat out vec4 vState;
flat out uvec4 vRows;
flat out uvec4 vColumns;

void main() {
  vec3 position = aPosition + uShift;
  gl_Position = uViewProjection * vec4(position, 1.0);
  vPosition = position;
  clipAt(position, aTimes + uTimesShift);
  vNormal = aNormal;
  int material = int(aWhat.y & 31u);
  bool cut = (aWhat.y & 256u) != 0u;
  bool front = (aWhat.y & 512u) != 0u;
  // Topsoil seen from above is grass; its look follows the materials.
  if (material == 1 && aNormal.z > 0.3 && !front) material = 31;
  int element = int(aWhat.x);
  vWash = uWash[material].rgb;
  vJoint = uJoint[material];
  vPattern = uPattern[material];
  vFrame = texelFetch(uElements, element * 2);
  // Bond phase, or 2 + its leaf's first texel; quiet; soil, or less its material; thickness.
  vec4 kind = texelFetch(uElements, element * 2 + 1);
  // Ground is neither new nor old; buildings that stand already are quieter than anything. What is
  // taken away in this stage is this stage's work as much as what is built, and its front is where
  // the work is.
  bool goes = front || aTimes.y < uStage + 1.0;
  float now = kind.z > 0.5 ? 0.9 : goes ? 1.0 : kind.y > 0.5 ? -0.4 : aTimes.x >= uStage ? 1.0 : 0.0;
  vState = vec4(kind.x + 2.0 * uWash[material].a, cut ? 1.0 : 0.0, now,
                element == uSelected ? 1.0 : element == uNewest ? kNewest : 0.0);
  vRows = vColumns = uvec4(0u);
  if (kind.x < 2.0) return;
  // A leaf that is laid unit by unit.
  int leaf = int(kind.x) - 2;
  vRows = texelFetch(uLeaves, leaf);
  vColumns = texelFetch(uLeaves, leaf + 1);
  vec4 mean = uintBitsToFloat(texelFetch(uLeaves, leaf + 3));
  vPattern = vec4(mean.xy, uintBitsToFloat(texelFetch(uLeaves, leaf + 2).z), uPattern[material].w);
  vJoint.w = mean.z;
  vState.x = -1.0;
}
