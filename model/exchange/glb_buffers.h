// Solids and lines packed into the arrays of a GLB file's binary chunk.
#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include "model/geometry/solid.h"

namespace model {

// Where one solid or line lies in the arrays.
struct GlbPart {
  size_t firstVertex = 0, vertexCount = 0;  // into positions
  size_t firstNormal = 0;                   // into normals; solids only
  size_t firstIndex = 0, indexCount = 0;    // into indices16 or indices32
  bool wide = false;                        // indices are in indices32
  std::array<float, 3> low{0, 0, 0}, high{0, 0, 0};
};

// Whether any triangle has an area; only such a solid has something to show.
bool hasArea(const Solid& solid);

// glTF's axes are x east, y up, z south: (x, y, z) of the model becomes (x, z, -y), a turn without
// mirroring, so the winding of triangles stays. Coordinates are metres from `origin`, so that
// single precision is enough.
class GlbBuffers {
 public:
  explicit GlbBuffers(const Vec3& origin) : origin_(origin) {}

  // Room for so many triangles, so that the arrays need not grow and move.
  void reserve(size_t triangles);

  // Every face flat: a corner is shared only by triangles that look the same way. Triangles
  // without area are left out. Throws std::runtime_error when a coordinate is not finite.
  GlbPart add(const Solid& solid);
  GlbPart addLine(const Vec3& a, const Vec3& b);

  std::vector<float> positions, normals;  // three a vertex
  std::vector<std::uint16_t> indices16;
  std::vector<std::uint32_t> indices32;
  std::vector<float> animation;  // key times and scales

 private:
  // A corner of the solid being added: a point as one flat face sees it.
  struct Corner {
    std::uint32_t point;
    std::uint32_t next;  // another one on the same point, or kNone
    Vec3 normal;
  };
  static constexpr std::uint32_t kNone = 0xffffffffu;

  std::uint32_t cornerFor(std::uint32_t point, const Vec3& normal);
  void findCorners(const Solid& solid);
  GlbPart emptyPart() const;
  void store(float* at, const Vec3& position, GlbPart& part) const;

  Vec3 origin_;
  // Kept from one solid to the next only to save making them anew.
  std::vector<std::uint32_t> firstAtPoint_;  // into corners_
  std::vector<Corner> corners_;
  std::vector<std::uint32_t> indices_;
};

}  // namespace model
