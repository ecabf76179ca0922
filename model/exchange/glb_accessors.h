// The shapes of a GLB file: its arrays, and the rows of the document that say where each thing lies
// in them.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "model/exchange/glb_buffers.h"
#include "model/exchange/glb_groups.h"
#include "model/exchange/glb_layout.h"

namespace model {

// Rows of the document's list of accessors. An accessor's index is how many were added before it.
class GlbAccessors {
 public:
  // `count` items of a view from item `first` on: numbers, or vectors of three. `low` and `high`
  // are the bounds of what is stored there, where the format asks for them.
  void add(GlbView view, size_t first, size_t count, bool vectors, std::span<const float> low = {},
           std::span<const float> high = {});

  // The views that accessors have used, in the order of their numbers.
  const std::vector<GlbView>& views() const { return views_; }
  // "{...},{...}"
  const std::string& rows() const { return rows_; }

 private:
  size_t numberOf(GlbView view);

  std::string rows_;
  std::vector<GlbView> views_;
};

// How many accessors a thing has: positions, normals and indices; a line has positions only, and a
// solid without any area has none, nor a mesh.
size_t accessorsOf(const Element& element);
inline constexpr size_t kAccessorsOfLine = 1;

// Packs every thing, group by group and in each the elements before the strings. Throws
// std::runtime_error when a coordinate is not finite.
void packShapes(const Works& works, const std::vector<GlbGroup>& groups, GlbBuffers& buffers,
                GlbAccessors& accessors);

}  // namespace model
