// A face of a leaf, from the table of its bond (viewer/leaf_table.h): the very units that unit.vert
// draws. One fetch finds the course, another the unit.
uniform usamplerBuffer uLeaves;

struct InLeaf {
  float z, s;    // metres from the table's origins
  uint seed;     // of the unit there
  int level;     // of its underside
  int piece;     // model::Piece
  vec4 joints;   // z of the joint below what lies over it, its thickness; s and width of the cross joint
};

const float kTenth = 1e-4;  // the table's unit, metres

// `at` is a little inside the leaf, so that ends and tops belong to the unit behind them.
InLeaf inLeaf(uvec4 rows, uvec4 columns, float z, float s, bool back) {
  InLeaf f;
  f.z = z - float(int(rows.x)) * kTenth;
  f.s = s - float(int(columns.x)) * kTenth;
  int levels = int(rows.z);
  int cell = clamp(int(f.z / (float(rows.y) * kTenth)), 0, levels - 1);
  if (back && (columns.w & 0x80000000u) != 0u) cell += levels;
  uvec4 row = texelFetch(uLeaves, int(rows.w) + cell);
  float over = float(row.x) * kTenth, bed = float(row.y & 0x3ffu) * kTenth;
  bool above = f.z > over - 0.5 * bed;
  int underside = int(row.x) - (above ? 0 : int(row.y >> 10));
  int column = clamp(int(f.s / (float(columns.y) * kTenth)), 0, int(columns.z) - 1);
  uvec4 at = texelFetch(uLeaves, int(above ? row.w : row.z) + column);
  float next = float(at.x & 0xfffffu) * kTenth, joint = float(at.x >> 20) * kTenth;
  bool after = f.s > next - 0.5 * joint;
  uint unit = after ? at.z : at.y;
  f.joints = vec4(over, bed, next, joint);
  // A unit that is split, and what lies over it.
  int split = int(after ? at.w >> 12 & 0xfffu : at.w & 0xfffu);
  if (split > 0) {
    float cut = float(underside + split) * kTenth, thin = float(at.w >> 24) * kTenth;
    if (f.z > cut - 0.5 * thin) underside += split;
    if (abs(f.z - cut) < abs(f.z - over + 0.5 * bed)) f.joints.xy = vec2(cut, thin);
  }
  f.seed = unit & 0xfffffu;
  f.piece = int(unit >> 20 & 7u);
  f.level = int(rows.x) + underside;
  return f;
}

// The share of a pixel from x - px/2 to x + px/2 that a joint takes which ends at `end`.
float jointShare(float x, float px, float end, float width) {
  return clamp(min(end, x + 0.5 * px) - max(end - width, x - 0.5 * px), 0.0, px) / px;
}
